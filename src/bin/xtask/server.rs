//! A server for the files of one folder, on this machine only.

use std::io::{BufRead, BufReader, Read, Write};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::{Component, Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread::JoinHandle;
use std::time::Duration;

/// Where the page is served unless another port is asked for.
pub const PORT: u16 = 8642;

/// Serves a folder until it is dropped.
pub struct Server {
    address: SocketAddr,
    stopped: Arc<AtomicBool>,
    thread: Option<JoinHandle<()>>,
}

impl Server {
    /// Serves `folder` on 127.0.0.1; port 0 takes any free one.
    pub fn start(folder: &Path, port: u16) -> std::io::Result<Self> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, port))?;
        let address = listener.local_addr()?;
        let stopped = Arc::new(AtomicBool::new(false));
        let folder = folder.to_path_buf();
        let thread = std::thread::spawn({
            let stopped = Arc::clone(&stopped);
            move || {
                for stream in listener.incoming() {
                    if stopped.load(Ordering::SeqCst) {
                        return;
                    }
                    let Ok(stream) = stream else { continue };
                    let folder = folder.clone();
                    // A browser opens connections before it needs them: each gets its own thread.
                    // One that is closed half-way is the browser's business, not a problem of ours.
                    std::thread::spawn(move || drop(answer(stream, &folder)));
                }
            }
        });
        Ok(Self { address, stopped, thread: Some(thread) })
    }

    /// The address to open: `http://127.0.0.1:8642/`.
    pub fn address(&self) -> String {
        format!("http://{}/", self.address)
    }

    /// Serves until the process is ended.
    pub fn wait(mut self) {
        if let Some(thread) = self.thread.take() {
            drop(thread.join());
        }
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.stopped.store(true, Ordering::SeqCst);
        // Wakes the thread that waits for a connection, so that it sees that it is to stop.
        drop(TcpStream::connect(self.address));
        if let Some(thread) = self.thread.take() {
            drop(thread.join());
        }
    }
}

fn answer(mut stream: TcpStream, folder: &Path) -> std::io::Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(30)))?;
    let mut request = String::new();
    let mut head = BufReader::new(stream.try_clone()?.take(16_384));
    head.read_line(&mut request)?;
    let mut line = String::new();
    while head.read_line(&mut line)? > 2 {
        line.clear();
    }
    let mut words = request.split(' ');
    let (method, target) = (words.next().unwrap_or_default(), words.next().unwrap_or_default());
    let found =
        file_of(target, folder).and_then(|path| Some((media_type(&path), std::fs::read(&path).ok()?)));
    let (status, media, body) = match (method, found) {
        ("GET" | "HEAD", Some((media, body))) => ("200 OK", media, body),
        ("GET" | "HEAD", None) => ("404 Not Found", "text/plain; charset=utf-8", b"Not here.\n".to_vec()),
        _ => ("405 Method Not Allowed", "text/plain; charset=utf-8", b"Only GET and HEAD.\n".to_vec()),
    };
    write!(
        stream,
        "HTTP/1.1 {status}\r\nContent-Type: {media}\r\nContent-Length: {}\r\n\
         Cache-Control: no-cache\r\nX-Content-Type-Options: nosniff\r\nConnection: close\r\n\r\n",
        body.len()
    )?;
    if method != "HEAD" {
        stream.write_all(&body)?;
    }
    stream.flush()
}

/// The file a request asks for; none outside the folder.
fn file_of(target: &str, folder: &Path) -> Option<PathBuf> {
    let path = target.split(['?', '#']).next()?.strip_prefix('/')?;
    // The build writes plain names only, so there is nothing to decode.
    let relative = Path::new(if path.is_empty() { "index.html" } else { path });
    let plain = relative.components().all(|part| matches!(part, Component::Normal(_)));
    plain.then(|| folder.join(relative))
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
    fn a_request_stays_inside_the_folder() {
        let folder = Path::new("dist");
        assert_eq!(file_of("/", folder), Some("dist/index.html".into()));
        assert_eq!(file_of("/page.js?new#top", folder), Some("dist/page.js".into()));
        assert_eq!(file_of("/../Cargo.toml", folder), None);
        assert_eq!(file_of("//etc/passwd", folder), None);
        assert_eq!(file_of("page.js", folder), None);
    }
}
