//! The yardstick of the page: one text field and one output, made with the same framework and tools.

fn main() {
    #[cfg(target_arch = "wasm32")]
    page::mount();
    #[cfg(not(target_arch = "wasm32"))]
    println!("This is the yardstick of the page: `cargo xtask speed` runs it in a browser.");
}

#[cfg(target_arch = "wasm32")]
mod page {
    use web_sys::HtmlInputElement;
    use yew::prelude::*;

    pub fn mount() {
        yew::Renderer::<Page>::new().render();
    }

    #[component]
    fn Page() -> Html {
        let text = use_state(|| AttrValue::Static("1"));
        let oninput = {
            let text = text.clone();
            Callback::from(move |event: InputEvent| {
                text.set(event.target_unchecked_into::<HtmlInputElement>().value().into());
            })
        };
        html! {
            <>
                <input id="field-yardstick" value={(*text).clone()} {oninput} />
                <output class="detail">{ (*text).clone() }</output>
            </>
        }
    }
}
