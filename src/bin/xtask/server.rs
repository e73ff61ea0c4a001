//! A server for the files of one folder, on this machine only.

use std::convert::Infallible;
use std::net::{Ipv4Addr, SocketAddr};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::thread::JoinHandle;

use http::{HeaderName, HeaderValue, Method, Request, Response, StatusCode, header};
use http_body_util::Full;
use hyper::body::{Bytes, Incoming};
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper_util::rt::TokioIo;
use tokio::net::TcpListener;
use tokio::sync::oneshot;

use super::run::Done;

/// Where the page is served unless another port is asked for.
pub const PORT: u16 = 8642;

/// What every answer carries: no guessing of types, no frame of somebody else around the page, and a
/// question to the server before a copy is used.
const HEADERS: [(HeaderName, &str); 3] = [
    (header::CACHE_CONTROL, "no-cache"),
    (header::CONTENT_SECURITY_POLICY, "frame-ancestors 'none'"),
    (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
];

/// Serves a folder until it is dropped.
pub struct Server {
    address: SocketAddr,
    /// Dropped before the thread is waited for: that ends it.
    running: Option<oneshot::Sender<Infallible>>,
    thread: Option<JoinHandle<()>>,
}

impl Server {
    /// Serves `folder` on 127.0.0.1; port 0 takes any free one.
    pub fn start(folder: &Path, port: u16) -> Done<Self> {
        // Where links lead is decided once: nothing outside is served, however it is asked for.
        let folder = folder.canonicalize().map_err(|problem| format!("{}: {problem}", folder.display()))?;
        // All connections are tasks of one thread, so none waits until another is closed.
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
        let listening = runtime.block_on(TcpListener::bind((Ipv4Addr::LOCALHOST, port)))?;
        let address = listening.local_addr()?;
        let (running, ended) = oneshot::channel();
        let thread = std::thread::Builder::new().spawn(move || {
            runtime.block_on(async {
                tokio::select! {
                    () = accept(&listening, folder.into()) => {}
                    _ = ended => {}
                }
            });
        })?;
        Ok(Self { address, running: Some(running), thread: Some(thread) })
    }

    /// The address to open: `http://127.0.0.1:8642/`.
    pub fn address(&self) -> String {
        format!("http://{}/", self.address)
    }

    /// Serves until the process is ended.
    pub fn wait(mut self) {
        self.thread.take().map(JoinHandle::join);
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.running = None;
        self.thread.take().map(JoinHandle::join);
    }
}

async fn accept(listening: &TcpListener, folder: Arc<Path>) {
    loop {
        let Ok((stream, _)) = listening.accept().await else {
            // Too many are open: those that close make room.
            tokio::time::sleep(std::time::Duration::from_millis(20)).await;
            continue;
        };
        let folder = Arc::clone(&folder);
        let answering = service_fn(move |request| {
            let answer = answer(&request, &folder);
            async { Ok::<_, Infallible>(answer) }
        });
        // One that is closed half-way is the browser's business, not a problem of ours.
        tokio::spawn(async {
            drop(http1::Builder::new().serve_connection(TokioIo::new(stream), answering).await)
        });
    }
}

fn answer(request: &Request<Incoming>, folder: &Path) -> Response<Full<Bytes>> {
    const TEXT: &str = "text/plain; charset=utf-8";
    if !matches!(*request.method(), Method::GET | Method::HEAD) {
        return response("Only GET and HEAD.\n".into(), TEXT, StatusCode::METHOD_NOT_ALLOWED);
    }
    let found = file_of(request.uri().path(), folder)
        .and_then(|path| Some((std::fs::read(&path).ok()?, media_type(&path))));
    match found {
        Some((body, media)) => response(body.into(), media, StatusCode::OK),
        None => response("Not here.\n".into(), TEXT, StatusCode::NOT_FOUND),
    }
}

fn response(body: Bytes, media: &'static str, status: StatusCode) -> Response<Full<Bytes>> {
    let mut response = Response::new(Full::new(body));
    *response.status_mut() = status;
    for (name, value) in HEADERS.into_iter().chain([(header::CONTENT_TYPE, media)]) {
        response.headers_mut().insert(name, HeaderValue::from_static(value));
    }
    response
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
