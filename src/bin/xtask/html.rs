//! Finding and replacing elements in the HTML that Trunk writes.
//!
//! Not a parser for any HTML: attributes are quoted or bare words, and neither comments nor scripts
//! hold tags of the names looked for.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

use super::run::Done;

/// One element of a page.
#[derive(Debug, PartialEq, Clone, Copy)]
pub struct Element<'a> {
    /// The start tag: `<script src="page.js">`.
    pub tag: &'a str,
    /// What stands between the start tag and the end tag; empty for elements without an end tag.
    pub text: &'a str,
}

impl<'a> Element<'a> {
    /// The value of an attribute; empty for one without a value.
    pub fn attribute(self, name: &str) -> Option<&'a str> {
        let mut rest = self.tag.trim_end_matches('>').trim_end_matches(" /");
        rest = rest.split_once(char::is_whitespace)?.1.trim_start();
        while !rest.is_empty() {
            let end = rest.find(|letter: char| letter == '=' || letter.is_whitespace()).unwrap_or(rest.len());
            let (found, after) = rest.split_at(end);
            let (value, after) = match after.strip_prefix('=') {
                None => ("", after),
                Some(value) => match value.chars().next() {
                    Some(quote @ ('"' | '\'')) => value.get(1..)?.split_once(quote)?,
                    _ => value.split_once(char::is_whitespace).unwrap_or((value, "")),
                },
            };
            if found.eq_ignore_ascii_case(name) {
                return Some(value);
            }
            rest = after.trim_start();
        }
        None
    }

    /// Whether the attribute is there with this value.
    pub fn has(self, name: &str, value: &str) -> bool {
        self.attribute(name) == Some(value)
    }
}

/// Every element of this name, in their order.
pub fn elements<'a>(html: &'a str, name: &str) -> Vec<Element<'a>> {
    let mut found = Vec::new();
    each(html, name, |element, _, _| found.push(element));
    found
}

/// The page with each element of this name replaced by what `by` says; `None` leaves it as it is.
pub fn replace(html: &str, name: &str, mut by: impl FnMut(Element<'_>) -> Option<String>) -> String {
    let mut made = String::with_capacity(html.len());
    let end = each(html, name, |element, before, whole| {
        made.push_str(before);
        match by(element) {
            Some(new) => made.push_str(&new),
            None => made.push_str(whole),
        }
    });
    made.push_str(end);
    made
}

/// Calls `visit` with each element, the text since the last one, and the whole of the element.
/// Returns the text after the last one.
fn each<'a>(html: &'a str, name: &str, mut visit: impl FnMut(Element<'a>, &'a str, &'a str)) -> &'a str {
    let (open, close) = (format!("<{name}"), format!("</{name}>"));
    let void = matches!(name, "link" | "meta");
    let mut rest = html;
    let mut from = 0;
    while let Some(start) = rest.get(from..).and_then(|text| text.find(&open)).map(|at| at + from) {
        let (before, element) = rest.split_at(start);
        let Some(tag_end) = element.find('>').map(|at| at + 1) else { break };
        let (tag, after) = element.split_at(tag_end);
        if !tag.split_at(open.len()).1.starts_with([' ', '\n', '\t', '/', '>']) {
            from = start + open.len();
            continue;
        }
        let end = if void { None } else { after.find(&close) };
        let (text, whole) = match end {
            Some(end) => (after.split_at(end).0, element.split_at(tag_end + end + close.len()).0),
            None => ("", tag),
        };
        visit(Element { tag, text }, before, whole);
        rest = element.split_at(whole.len()).1;
        from = 0;
    }
    rest
}

/// How a policy names a script or style that stands in the page: `'sha256-…'`.
pub fn policy_hash(text: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(Sha256::digest(text)))
}

/// The page under a content security policy, which allows the scripts and styles that stand in it and
/// what `rules` adds: with it in place, the browser itself keeps any request from leaving the page.
pub fn with_policy(html: &str, script_sources: &[&str], rules: &str) -> Done<String> {
    let inline = elements(html, "script").into_iter().filter(|script| {
        script.attribute("src").is_none() && matches!(script.attribute("type"), None | Some("module"))
    });
    let mut scripts: Vec<String> = inline.map(|script| policy_hash(script.text)).collect();
    scripts.extend(script_sources.iter().map(|source| (*source).to_owned()));
    let styles: Vec<String> =
        elements(html, "style").into_iter().map(|style| policy_hash(style.text)).collect();
    let policy = format!(
        "default-src 'none'; script-src {}; style-src {}; base-uri 'none'; form-action 'none'; {rules}",
        scripts.join(" "),
        styles.join(" ")
    );
    // Behind the character set, which must be among the first bytes; the start tag of the head may
    // have been minified away.
    let charset = elements(html, "meta").into_iter().find(|meta| meta.attribute("charset").is_some());
    let charset = charset.ok_or("index.html names no character set")?.tag;
    let meta = format!("{charset}<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">");
    Ok(html.replacen(charset, &meta, 1))
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
        let links = elements(PAGE, "link");
        assert_eq!(links.len(), 2);
        assert!(links[0].has("rel", "icon") && links[0].has("href", "a.svg"));
        assert!(links[1].has("href", "b.css"));
        let scripts = elements(PAGE, "script");
        assert_eq!(scripts[0].text, "let a = 1 < 2;");
        assert!(scripts[1].has("async", "") && scripts[1].attribute("type").is_none());
        assert_eq!(scripts.len(), 2);
    }

    #[test]
    fn replacing_nothing_changes_nothing() {
        assert_eq!(replace(PAGE, "script", |_| None), PAGE);
        let bare = replace(PAGE, "script", |_| Some(String::new()));
        assert!(elements(&bare, "script").is_empty() && bare.contains("<scripture>"));
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
