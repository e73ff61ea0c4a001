//! The page, as Trunk builds it for the browser.

#[cfg(target_arch = "wasm32")]
mod page {
    use web_sys::HtmlInputElement;
    use yew::prelude::*;

    /// Stands in for the page: one text field and one output.
    #[component]
    pub fn Page() -> Html {
        let text = use_state(String::new);
        let oninput = {
            let text = text.clone();
            Callback::from(move |event: InputEvent| {
                text.set(event.target_unchecked_into::<HtmlInputElement>().value())
            })
        };
        html! {
            <main>
                <h1>{ "Kettle & Barrel" }</h1>
                <label for="text">{ "Text" }</label>
                <input id="text" value={(*text).clone()} {oninput} />
                <output>{ (*text).clone() }</output>
            </main>
        }
    }

    /// Puts the page into the element that `index.html` keeps for it.
    pub fn mount() {
        let document = web_sys::window().and_then(|window| window.document());
        if let Some(root) = document.and_then(|document| document.get_element_by_id("page")) {
            yew::Renderer::<Page>::with_root(root).render();
        }
    }
}

fn main() {
    #[cfg(target_arch = "wasm32")]
    page::mount();
    #[cfg(not(target_arch = "wasm32"))]
    println!("This is the page's program: it runs in a browser. See it with `cargo xtask serve`.");
}
