//! Starting the worker, from the page.

use gloo_file::ObjectUrl;
use gloo_utils::{document, window};
use js_sys::Array;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    Blob, BlobPropertyBag, HtmlLinkElement, MessageEvent, Response, Worker, WorkerOptions, WorkerType,
};

use super::told::Told;
use crate::quantity::Units;

/// A worker that assesses a list. It ends when this is dropped.
pub struct Work {
    worker: Worker,
    _script: ObjectUrl,
    _told: Closure<dyn Fn(MessageEvent)>,
    _failed: Closure<dyn Fn(JsValue)>,
}

/// What the worker does with the first message: it starts the program with the module that comes in it.
const STARTER: &str = "\nonmessage = ({ data }) => { onmessage = null; initSync({ module: data }); };\n";

impl Work {
    /// Starts a worker on a list, its results in these units, and gives it to `started`; `None` where the browser starts none. What it
    /// tells goes to `told`; none where it stopped.
    pub fn start(
        list: Blob,
        units: Units,
        told: impl Fn(Option<Told>) + Clone + 'static,
        started: impl FnOnce(Option<Self>) + 'static,
    ) {
        spawn_local(async move {
            let work = async {
                let (script, kind) = script().await?;
                Self::of(&script, kind, &Array::of2(&list, &units.key().into()), told).ok()
            };
            started(work.await);
        });
    }

    fn of(
        script: &str,
        kind: WorkerType,
        asked: &Array,
        told: impl Fn(Option<Told>) + Clone + 'static,
    ) -> Result<Self, JsValue> {
        let media = BlobPropertyBag::new();
        media.set_type("text/javascript");
        let parts = Array::of2(&script.into(), &STARTER.into());
        let script = Blob::new_with_str_sequence_and_options(&parts, &media)?;
        let script = ObjectUrl::from(gloo_file::Blob::from(script));
        let options = WorkerOptions::new();
        options.set_type(kind);
        let worker = Worker::new_with_options(&script, &options)?;
        let failed = {
            let told = told.clone();
            Closure::<dyn Fn(JsValue)>::new(move |_| told(None))
        };
        let told = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            told(Some(Told::from_message(&event.data())))
        });
        worker.set_onmessage(Some(told.as_ref().unchecked_ref()));
        worker.set_onerror(Some(failed.as_ref().unchecked_ref()));
        worker.post_message(&wasm_bindgen::module())?;
        worker.post_message(asked)?;
        Ok(Self { worker, _script: script, _told: told, _failed: failed })
    }
}

impl Drop for Work {
    fn drop(&mut self) {
        self.worker.terminate();
    }
}

/// The script of this program: a file beside the page, which the page names to have it loaded early; or,
/// in the page that is one file, a script in it, which is no module: from disk some browsers refuse one.
async fn script() -> Option<(String, WorkerType)> {
    let found = |css: &str| document().query_selector(css).ok().flatten();
    match found("link[rel=modulepreload]") {
        Some(link) => {
            let address = link.unchecked_into::<HtmlLinkElement>().href();
            let response: Response =
                JsFuture::from(window().fetch_with_str(&address)).await.ok()?.unchecked_into();
            Some((JsFuture::from(response.text().ok()?).await.ok()?.as_string()?, WorkerType::Module))
        }
        None => Some((found("script[type=module]")?.text_content()?, WorkerType::Classic)),
    }
}
