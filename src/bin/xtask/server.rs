//! A server for the files of one folder, on this machine only.

use std::net::{Ipv4Addr, SocketAddr};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::thread::JoinHandle;

use tiny_http::{Header, Method, Request, Response};

use super::run::Done;

/// Where the page is served unless another port is asked for.
pub const PORT: u16 = 8642;

/// Threads that answer: a browser that asks for one file may wait with reading another.
const THREADS: usize = 8;

/// What every answer carries: no guessing of types, no frame of somebody else around the page, and a
/// question to the server before a copy is used.
const HEADERS: [(&str, &str); 3] = [
    ("Cache-Control", "no-cache"),
    ("Content-Security-Policy", "frame-ancestors 'none'"),
    ("X-Content-Type-Options", "nosniff"),
];

/// Serves a folder until it is dropped.
pub struct Server {
    address: SocketAddr,
    listening: Arc<tiny_http::Server>,
    threads: Vec<JoinHandle<()>>,
}

impl Server {
    /// Serves `folder` on 127.0.0.1; port 0 takes any free one.
    pub fn start(folder: &Path, port: u16) -> Done<Self> {
        let listening =
            Arc::new(tiny_http::Server::http((Ipv4Addr::LOCALHOST, port)).map_err(|it| it.to_string())?);
        let address = listening.server_addr().to_ip().ok_or("the server has no address")?;
        // Where links lead is decided once: nothing outside is served, however it is asked for.
        let folder = folder.canonicalize().map_err(|problem| format!("{}: {problem}", folder.display()))?;
        let mut server = Self { address, listening, threads: Vec::new() };
        for _ in 0..THREADS {
            let (listening, folder) = (Arc::clone(&server.listening), folder.clone());
            server.threads.push(std::thread::Builder::new().spawn(move || {
                for request in listening.incoming_requests() {
                    // One that is closed half-way is the browser's business, not a problem of ours.
                    drop(answer(request, &folder));
                }
            })?);
        }
        Ok(server)
    }

    /// The address to open: `http://127.0.0.1:8642/`.
    pub fn address(&self) -> String {
        format!("http://{}/", self.address)
    }

    /// Serves until the process is ended.
    pub fn wait(mut self) {
        self.threads.drain(..).for_each(|thread| drop(thread.join()));
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        // Each wakes one of them.
        self.threads.iter().for_each(|_| self.listening.unblock());
        self.threads.drain(..).for_each(|thread| drop(thread.join()));
    }
}

fn answer(request: Request, folder: &Path) -> std::io::Result<()> {
    const TEXT: &str = "text/plain; charset=utf-8";
    if !matches!(request.method(), Method::Get | Method::Head) {
        return request.respond(response(b"Only GET and HEAD.\n".to_vec(), TEXT, 405));
    }
    let found =
        file_of(request.url(), folder).and_then(|path| Some((std::fs::read(&path).ok()?, media_type(&path))));
    let response = match found {
        Some((body, media)) => response(body, media, 200),
        None => response(b"Not here.\n".to_vec(), TEXT, 404),
    };
    request.respond(response)
}

fn response(body: Vec<u8>, media: &str, status: u16) -> Response<std::io::Cursor<Vec<u8>>> {
    let response = Response::from_data(body).with_status_code(status).with_chunked_threshold(usize::MAX);
    HEADERS.iter().copied().chain([("Content-Type", media)]).fold(response, |response, (name, value)| {
        match Header::from_bytes(name, value) {
            Ok(header) => response.with_header(header),
            Err(()) => response,
        }
    })
}

/// The file a request asks for; none outside the folder, also not by a link in it.
fn file_of(target: &str, folder: &Path) -> Option<PathBuf> {
    let path = target.split(['?', '#']).next()?.strip_prefix('/')?;
    // The build writes plain names only, so there is nothing to decode.
    let file = folder.join(if path.is_empty() { "index.html" } else { path }).canonicalize().ok()?;
    file.starts_with(folder).then_some(file)
}

fn media_type(path: &Path) -> &'static str {
    match path.extension().and_then(|extension| extension.to_str()).unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "wasm" => "application/wasm",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "webmanifest" => "application/manifest+json",
        "json" => "application/json",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_request_stays_inside_the_folder() -> Done {
        let outside = std::env::temp_dir().join(format!("kettle-barrel-served-{}", std::process::id()));
        let folder = outside.join("dist");
        std::fs::create_dir_all(&folder)?;
        let folder = folder.canonicalize()?;
        std::fs::write(folder.join("index.html"), "page")?;
        std::fs::write(folder.join("page.js"), "script")?;
        std::fs::write(outside.join("secret.txt"), "secret")?;
        assert_eq!(file_of("/", &folder), Some(folder.join("index.html")));
        assert_eq!(file_of("/page.js?new#top", &folder), Some(folder.join("page.js")));
        for target in ["/../secret.txt", "//etc/passwd", "page.js", "/missing.js"] {
            assert_eq!(file_of(target, &folder), None, "{target}");
        }
        #[cfg(unix)]
        {
            std::os::unix::fs::symlink(outside.join("secret.txt"), folder.join("link.txt"))?;
            assert_eq!(file_of("/link.txt", &folder), None);
        }
        Ok(std::fs::remove_dir_all(outside)?)
    }
}
