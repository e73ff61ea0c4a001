//! A form takes what people write, says what is wrong, and never disturbs who is typing.

use crate::harness::key::ENTER;
use crate::harness::{Done, in_chromium, in_every_engine};

#[test]
fn a_unit_typed_behind_the_number_moves_the_choice_and_the_choice_moves_the_result() -> Done {
    in_every_engine(|page| {
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.text_holds("#answer", "353.4")?;
        page.fill("#field-coat", "1,25 oz/ft2")?;
        page.until("document.querySelector('select.units').value === 'oz/ft²'")?;
        page.text_holds("#answer", "381.4")?;
        page.text_holds("#field-coat-read", "1.25 oz/ft²")?;
        page.choose("select.units", "mil")?;
        page.until("document.querySelector('#field-coat').value === '1,25'")?;
        page.text_holds("#answer", "1.250\u{a0}mil")
    })
}

#[test]
fn a_result_that_no_longer_belongs_to_the_inputs_is_not_shown() -> Done {
    in_chromium(|page| {
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.fill("#field-coat", "five")?;
        page.text_holds("#answer", "No result")?;
        page.until("!document.querySelector('.detail').textContent")?;
        page.text_holds("#field-coat-problem", "“five” is not a number")?;
        page.until("document.querySelector('#field-coat').getAttribute('aria-invalid') === 'true'")?;
        page.until("document.querySelector('#field-coat').getAttribute('aria-describedby').includes('field-coat-problem')")?;
        page.until("document.querySelector('#field-coat').value === 'five'")?;
        page.click("#answer a")?;
        page.until("document.activeElement.id === 'field-coat'")
    })
}

#[test]
fn what_could_mean_two_numbers_is_not_guessed() -> Done {
    in_chromium(|page| {
        page.open("#1/coat")?;
        page.fill("#field-coat", "1,234")?;
        page.text_holds("#field-coat-problem", "could mean 1.234 or 1234")?;
        page.until("document.querySelector('#field-coat').value === '1,234'")
    })
}

#[test]
fn an_empty_field_is_not_a_problem() -> Done {
    in_chromium(|page| {
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.click(".example button")?;
        page.until("document.querySelector('#field-coat').value === ''")?;
        page.until("!document.querySelector('#answer')")?;
        page.choose("#field-factor", "own")?;
        page.text_holds("#answer", "Still to fill in")?;
        // Longer than the page waits before it complains.
        std::thread::sleep(std::time::Duration::from_millis(1200));
        page.until("document.querySelectorAll('[aria-invalid], .problem').length === 0")
    })
}

#[test]
fn another_unit_converts_what_stands_in_the_field_and_says_so() -> Done {
    in_chromium(|page| {
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.choose("select.units", "mil")?;
        page.until("document.querySelector('#field-coat').value === '1.9685'")?;
        page.text_holds("#field-coat-read", "Converted from 50 µm")?;
        page.text_holds("#answer", "1.969\u{a0}mil")?;
        page.choose("select.units", "µm")?;
        page.until("document.querySelector('#field-coat').value === '50'")
    })
}

#[test]
fn units_are_chosen_once_and_remembered() -> Done {
    in_chromium(|page| {
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.text_holds("#answer", "353.4\u{a0}g/m²")?;
        page.click(".settings summary")?;
        page.click("#setting-units-inch")?;
        page.text_holds("#answer", "1.158\u{a0}oz/ft²")?;
        page.open("#1/powder")?;
        page.until("document.documentElement.dataset.theme === 'device'")?;
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.text_holds("#answer", "1.158\u{a0}oz/ft²")?;
        page.open("#1/coat")?;
        page.until("document.querySelector('select.units').value === 'mil'")?;
        page.click(".settings summary")?;
        page.click("#setting-units")?;
        page.click("#setting-theme-sun")?;
        page.until("getComputedStyle(document.body).backgroundColor === 'rgb(255, 255, 255)'")
    })
}

#[test]
fn a_formula_is_copied_as_text_that_means_the_same() -> Done {
    in_chromium(|page| {
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.click(".working li summary")?;
        let copied = page.value(
            "(() => { getSelection().selectAllChildren(document.querySelector('.working li .sum')); return getSelection().toString(); })()",
        )?;
        let copied = copied.as_str().unwrap_or_default().to_owned();
        if copied.contains(" = ") && copied.matches("353").count() == 1 {
            Ok(())
        } else {
            Err(format!("the working is copied as {copied:?}").into())
        }
    })
}

#[test]
fn a_field_stays_the_same_element_while_others_come_and_go() -> Done {
    in_every_engine(|page| {
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.script("document.querySelector('#field-coat').marked = true", serde_json::json!([]))?;
        page.choose("#field-factor", "own")?;
        page.wait_for("#field-own_factor")?;
        page.fill("#field-own_factor", "seven")?;
        page.wait_for("#field-own_factor-problem")?;
        page.script("document.querySelector('#field-own_factor').marked = true", serde_json::json!([]))?;
        page.fill("#field-coat", "1 1/8 mil")?;
        page.wait_for("#field-coat-read")?;
        page.fill("#field-coat", "many")?;
        page.wait_for("#field-coat-problem")?;
        page.until("document.querySelector('#field-coat').marked && document.querySelector('#field-own_factor').marked")?;
        page.until("document.activeElement.id === 'field-coat'")?;
        // What is not asked for the moment is kept.
        page.choose("#field-factor", "a123")?;
        page.until("!document.querySelector('#field-own_factor')")?;
        page.choose("#field-factor", "own")?;
        page.until("document.querySelector('#field-own_factor').value === 'seven'")
    })
}

#[test]
fn typing_in_the_middle_of_a_text_keeps_the_caret_there() -> Done {
    in_every_engine(|page| {
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.script(
            "const field = document.querySelector('#field-coat'); field.focus(); field.setSelectionRange(1, 1)",
            serde_json::json!([]),
        )?;
        page.type_over("12")?;
        page.until("document.querySelector('#field-coat').value === '5120'")?;
        page.until("document.querySelector('#field-coat').selectionStart === 3")
    })
}

#[test]
fn the_answer_is_told_once_after_a_pause() -> Done {
    in_chromium(|page| {
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.until("document.querySelector('output').textContent === ''")?;
        page.fill("#field-coat", "54")?;
        page.until("document.querySelector('output').textContent.includes('381.6')")?;
        page.until("document.querySelectorAll('output').length === 1")
    })
}

#[test]
fn readings_are_counted_one_by_one_taken_back_and_found_again() -> Done {
    in_every_engine(|page| {
        page.open("#1/lot?standard=iso1461&per_article=5&quantity=300")?;
        let next = |place: &str| page.text_becomes("[for=next-reading]", &format!("Next reading: {place}"));
        next("article 1, reading 1 of 5")?;
        for reading in ["52", "48,5", "51", "50", "49", "53"] {
            page.fill("#next-reading", reading)?;
            page.press(&[ENTER])?;
            page.until("document.querySelector('#next-reading').value === ''")?;
        }
        next("article 2, reading 2 of 5")?;
        page.until("document.querySelector('#field-readings').value === '52 48,5 51 50 49\\n53'")?;
        page.until("document.activeElement.id === 'next-reading'")?;
        // What is no reading stays where it can be put right.
        page.fill("#next-reading", "abc")?;
        page.press(&[ENTER])?;
        page.text_holds("#next-problem", "abc")?;
        page.until("document.querySelector('#next-reading').value === 'abc'")?;
        // The answer above may still be moving what stands below it.
        page.value("document.querySelector('.next-reading > button').click()")?;
        next("article 2, reading 1 of 5")?;
        // The window is closed; another one opens the bare calculator.
        page.open("#coat")?;
        page.text_becomes("h1", "Coat thickness and mass")?;
        page.open("")?;
        page.visit("#lot")?;
        page.text_holds(".earlier-readings", "52 48,5 51 50 49")?;
        page.click(".earlier-readings a")?;
        page.until("document.querySelector('#field-readings').value === '52 48,5 51 50 49'")?;
        page.until("document.querySelector('#field-per_article').value === '5'")?;
        // The window is closed with the last key, before its picture is drawn.
        page.value(
            "(() => { const readings = document.querySelector('#field-readings'); readings.value += ' 55'; \
             readings.dispatchEvent(new Event('input', { bubbles: true })); location.assign('about:blank'); })()",
        )?;
        page.open("#coat")?;
        page.text_becomes("h1", "Coat thickness and mass")?;
        page.open("")?;
        page.visit("#lot")?;
        page.text_holds(".earlier-readings", "51 50 49 55")
    })
}

#[test]
fn a_reading_is_kept_where_the_page_is_left_behind_its_picture_and_before_anything_else() -> Done {
    in_every_engine(|page| {
        page.open("#1/lot?standard=iso1461&per_article=5&quantity=300&readings=52+51")?;
        // The clock runs away: what follows a rendering is put off, as it is where a machine is busy.
        page.value(
            "(() => { let late = Date.now(); Date.now = () => late += 100; \
             const readings = document.querySelector('#field-readings'); readings.value += ' 55'; \
             readings.dispatchEvent(new Event('input', { bubbles: true })); \
             new MutationObserver((_, shown) => { shown.disconnect(); dispatchEvent(new Event('pagehide')); \
             window.kept = localStorage.getItem('kettle-and-barrel readings'); }) \
             .observe(document.querySelector('[for=next-reading]'), { subtree: true, characterData: true }); })()",
        )?;
        page.until("new URLSearchParams(window.kept?.split('?')[1]).get('readings')?.startsWith('52 51 55')")
    })
}
