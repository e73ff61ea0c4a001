//! Finding and replacing elements in the HTML that Trunk writes, and the policy that goes into it.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use lol_html::html_content::ContentType;
use lol_html::{RewriteStrSettings, element, rewrite_str, text};
use sha2::{Digest, Sha256};

use super::run::Done;

/// One element of a page.
#[derive(Debug, PartialEq, Clone)]
pub struct Element {
    /// Its attributes, with empty values for those without a value.
    attributes: Vec<(String, String)>,
    /// What stands between the start tag and the end tag; empty for elements without an end tag.
    pub text: String,
}

impl Element {
    /// The value of an attribute; empty for one without a value.
    pub fn attribute(&self, name: &str) -> Option<&str> {
        self.attributes.iter().find(|(found, _)| found == name).map(|(_, value)| value.as_str())
    }

    /// Whether the attribute is there with this value.
    pub fn has(&self, name: &str, value: &str) -> bool {
        self.attribute(name) == Some(value)
    }
}

/// Every element of this name, in their order.
pub fn elements(html: &str, name: &str) -> Done<Vec<Element>> {
    let found = std::cell::RefCell::new(Vec::<Element>::new());
    rewrite_str(
        html,
        RewriteStrSettings::new()
            .append_element_content_handler(element!(name, |element| {
                let attributes = element.attributes().iter().map(|it| (it.name(), it.value())).collect();
                found.borrow_mut().push(Element { attributes, text: String::new() });
                Ok(())
            }))
            .append_element_content_handler(text!(name, |chunk| {
                if let Some(last) = found.borrow_mut().last_mut() {
                    last.text.push_str(chunk.as_str());
                }
                Ok(())
            })),
    )?;
    Ok(found.into_inner())
}

/// The page with each element of this name replaced by what `by` says; `None` leaves it as it is.
pub fn replace(html: &str, name: &str, by: impl FnMut(&Element) -> Done<Option<String>>) -> Done<String> {
    let news: Vec<Option<String>> = elements(html, name)?.iter().map(by).collect::<Done<_>>()?;
    let mut news = news.into_iter();
    Ok(rewrite_str(
        html,
        RewriteStrSettings::new().append_element_content_handler(element!(name, |element| {
            if let Some(new) = news.next().flatten() {
                element.replace(&new, ContentType::Html);
            }
            Ok(())
        })),
    )?)
}

/// How a policy names a script or style that stands in the page: `'sha256-…'`.
pub fn policy_hash(text: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(Sha256::digest(text)))
}

/// The page under a content security policy, which allows the scripts and styles that stand in it and
/// what `rules` adds: with it in place, the browser itself keeps any request from leaving the page.
pub fn with_policy(html: &str, script_sources: &[&str], rules: &str) -> Done<String> {
    let inline = elements(html, "script")?.into_iter().filter(|script| {
        script.attribute("src").is_none() && matches!(script.attribute("type"), None | Some("module"))
    });
    let mut scripts: Vec<String> = inline.map(|script| policy_hash(&script.text)).collect();
    scripts.extend(script_sources.iter().map(|source| (*source).to_owned()));
    let styles: Vec<String> =
        elements(html, "style")?.into_iter().map(|style| policy_hash(&style.text)).collect();
    let policy = format!(
        "default-src 'none'; script-src {}; style-src {}; base-uri 'none'; form-action 'none'; {rules}",
        scripts.join(" "),
        styles.join(" ")
    );
    // Behind the character set, which must be among the first bytes.
    let mut placed = false;
    let page = rewrite_str(
        html,
        RewriteStrSettings::new().append_element_content_handler(element!("meta[charset]", |meta| {
            placed = true;
            let policy = format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">");
            meta.after(&policy, ContentType::Html);
            Ok(())
        })),
    )?;
    if placed { Ok(page) } else { Err("index.html names no character set".into()) }
}

/// A script without the remarks that stand on lines of their own, and without indents.
pub fn without_comments(script: &str) -> String {
    let mut remark = false;
    let lines = script.lines().map(str::trim).map(|line| {
        if !remark && !line.starts_with("/**") {
            return if line.starts_with("//") { "" } else { line };
        }
        let end = line.split_once("*/");
        remark = end.is_none();
        end.map_or("", |(_, behind)| behind.trim())
    });
    lines.filter(|line| !line.is_empty()).collect::<Vec<_>>().join("\n")
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: &str = r#"<head><meta charset=utf-8><link rel=icon href="a.svg" /><link rel="stylesheet" href='b.css'></head>
        <script type="module">let a = 1 < 2;</script><scripture></scripture><script src="c.js" async></script>"#;

    #[test]
    fn elements_are_found_with_their_attributes() {
        let links = elements(PAGE, "link").unwrap();
        assert_eq!(links.len(), 2);
        assert!(links[0].has("rel", "icon") && links[0].has("href", "a.svg"));
        assert!(links[1].has("href", "b.css"));
        let scripts = elements(PAGE, "script").unwrap();
        assert_eq!(scripts[0].text, "let a = 1 < 2;");
        assert!(scripts[1].has("async", "") && scripts[1].attribute("type").is_none());
        assert_eq!(scripts.len(), 2);
    }

    #[test]
    fn replacing_nothing_changes_nothing() {
        assert_eq!(replace(PAGE, "script", |_| Ok(None)).unwrap(), PAGE);
        let bare = replace(PAGE, "script", |_| Ok(Some(String::new()))).unwrap();
        assert!(elements(&bare, "script").unwrap().is_empty() && bare.contains("<scripture>"));
    }

    #[test]
    fn remarks_go_and_the_script_stays() {
        let script =
            "/** One.\n * let b = 2;\n */\n/** x */ let c = 0;\nlet a = 1; // kept\n    // gone\n  a += 2;\n";
        assert_eq!(without_comments(script), "let c = 0;\nlet a = 1; // kept\na += 2;");
    }

    #[test]
    fn the_policy_names_the_hash_of_each_script_in_the_page() {
        // The example of the policy standard itself, CSP level 3.
        assert_eq!(
            policy_hash("alert('Hello, world.');"),
            "'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='"
        );
        let page = with_policy(PAGE, &["'self'"], "").unwrap();
        assert!(page.contains(&policy_hash("let a = 1 < 2;")));
    }
}
