//! The whole page as one HTML file, which opens from disk.
//!
//! From disk a browser runs no external module and fetches nothing, but it runs modules that stand
//! in the page: so the glue goes in as a script, the program as gzip in base64, and the policy
//! allows nothing else at all.

use std::io::Write;
use std::path::{Path, PathBuf};

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use flate2::{Compression, write::GzEncoder};

use super::html::{elements, replace, with_policy};
use super::run::{Done, read, read_text, step, write};
use super::size::Budget;

/// By this the script is known that says why there is no page.
const GUARD: &str = "kettle-and-barrel-stopped";

/// What the file may weigh with the program as it is.
const RAW: Budget = Budget { what: "one file, the program as it is", goal: 1_800_000, reached: 3_552_000 };
/// The same with the program packed by gzip: half of it.
const PACKED: Budget =
    Budget { what: "one file, the program packed by gzip", goal: 900_000, reached: 1_497_700 };

/// Writes the whole page as one file beside the built page, and holds it against its budget.
pub fn bundle(dist: &Path) -> Done<PathBuf> {
    let file = dist.join(super::offline::ONE_FILE);
    step("bundle the page into one file", || {
        let program = read(&only(dist, "wasm")?)?;
        let page = one_file(dist, &program)?;
        let packed = page.len();
        write(&file, page)?;
        println!("{}", file.display());
        let raw = packed - base64_length(gzip(&program)?.len()) + base64_length(program.len());
        RAW.hold(raw)?;
        PACKED.hold(packed)
    })?;
    Ok(file)
}

fn one_file(dist: &Path, program: &[u8]) -> Done<String> {
    let page = read_text(&dist.join("index.html"))?;
    let glue = read_text(&only(dist, "js")?)?;
    let start = exported(&glue).ok_or("the glue of wasm-bindgen has no default export")?;
    if glue.contains("import ") && glue.contains("./snippets/") {
        return Err("the glue of wasm-bindgen imports a snippet: one file cannot hold it".into());
    }

    let gone = |it: bool| Ok(it.then(String::new));
    let page = replace(&page, "meta", |meta| gone(meta.has("http-equiv", "Content-Security-Policy")))?;
    let page = replace(&page, "link", |link| match (link.attribute("rel"), link.attribute("href")) {
        (Some("stylesheet"), Some(href)) => {
            Ok(Some(format!("<style>{}</style>", read_text(&dist.join(href))?)))
        }
        (Some("icon"), Some(href)) if href.ends_with(".svg") => {
            let icon = STANDARD.encode(read(&dist.join(href))?);
            Ok(Some(format!("<link rel=icon href=\"data:image/svg+xml;base64,{icon}\">")))
        }
        // Preloads, the manifest and icons for a home screen are for a page that has a host.
        _ => Ok(Some(String::new())),
    })?;
    // So is the registration of the service worker; what says why there is no page stays.
    let page = replace(&page, "script", |script| gone(!script.text.contains(GUARD)))?;
    let (before, after) = page.rsplit_once("</body>").ok_or("index.html has no </body>")?;
    let packed = STANDARD.encode(gzip(program)?);
    let glue = plain(&glue).replace("</script", "<\\/script");
    let page = format!(
        "{before}<script type=\"text/plain\" id=\"program\">{packed}</script><script type=\"module\">{glue}\n{}\
         </script></body>{after}",
        starter(&start)
    );
    debug_assert_eq!(elements(&page, "script")?.len(), 3);
    with_policy(&page, &["'wasm-unsafe-eval'"], "img-src data:; worker-src blob:")
}

/// The script that unpacks the program and starts it. In a worker, whose script this is as well, the page
/// sends the program.
fn starter(start: &str) -> String {
    format!(
        "if (globalThis.document) (async () => {{\n\
         const packed = Uint8Array.from(atob(document.getElementById(\"program\").textContent), c => c.charCodeAt(0));\n\
         const program = new Blob([packed]).stream().pipeThrough(new DecompressionStream(\"gzip\"));\n\
         await {start}({{ module_or_path: new Response(program, {{ headers: {{ \"content-type\": \"application/wasm\" }} }}) }});\n\
         }})();\n"
    )
}

/// The glue as a plain script: the worker of a page from disk is refused modules by some browsers.
fn plain(glue: &str) -> String {
    let (script, _exports) = glue.rsplit_once("export").unwrap_or((glue, ""));
    script.replace("import.meta.url", "location.href")
}

/// The name that the glue exports as its default: the function that starts the program.
fn exported(glue: &str) -> Option<String> {
    let is_word = |letter: char| letter.is_alphanumeric() || matches!(letter, '_' | '$');
    let name = match glue.split_once(" as default") {
        Some((before, _)) => before.rsplit(|letter| !is_word(letter)).next()?,
        None => glue.split_once("export default ")?.1.split(|letter| !is_word(letter)).next()?,
    };
    (!name.is_empty() && name != "function").then(|| name.to_owned())
}

/// The one file of this kind that Trunk wrote.
fn only(dist: &Path, extension: &str) -> Done<PathBuf> {
    let mut found = super::offline::files(dist)?;
    found.retain(|file| file.extension().is_some_and(|found| found == extension));
    match found.as_slice() {
        [one] => Ok(one.clone()),
        several => {
            Err(format!("one .{extension} file was expected in dist, there are {}", several.len()).into())
        }
    }
}

fn gzip(content: &[u8]) -> Done<Vec<u8>> {
    let mut writer = GzEncoder::new(Vec::new(), Compression::best());
    writer.write_all(content)?;
    Ok(writer.finish()?)
}

fn base64_length(bytes: usize) -> usize {
    bytes.div_ceil(3) * 4
}

#[cfg(test)]
mod tests {
    use super::exported;

    #[test]
    fn the_start_of_the_glue_is_found_however_it_is_exported() {
        assert_eq!(exported("export { initSync, __wbg_init as default };").as_deref(), Some("__wbg_init"));
        assert_eq!(exported("export{a as b,$c as default}").as_deref(), Some("$c"));
        assert_eq!(exported("export default __wbg_init;").as_deref(), Some("__wbg_init"));
        assert_eq!(exported("const a = 1;"), None);
    }
}
