//! What is chosen once and remembered: the units of everything shown, and the colours.

use yew::prelude::*;

use super::segments::{Group, segments};
use crate::page::reducer::Dispatch;
use crate::page::state::{Action, Settings, Theme};
use crate::quantity::Units;

/// The settings, in a fold.
pub fn settings_fold(settings: Settings, dispatch: &Dispatch) -> Html {
    let Settings { units, theme } = settings;
    let choose_units = {
        let dispatch = dispatch.clone();
        Callback::from(move |key: &'static str| dispatch.dispatch(Action::Use(Units::of_key(key))))
    };
    let choose_theme = {
        let dispatch = dispatch.clone();
        Callback::from(move |key: &'static str| dispatch.dispatch(Action::Wear(Theme::of_key(key))))
    };
    let group = |id: &'static str| Group { id: id.into(), name: id, by: None, wrong: false };
    let of_units = Units::ALL.map(|units| (units.key(), units.label()));
    let of_themes = Theme::ALL.map(|theme| (theme.key(), theme.label()));
    html! {
        <details class="settings">
            <summary>{ "Display" }</summary>
            <div class="settings-inside">
                <fieldset>
                    <legend>{ "Units of everything shown" }</legend>
                    { segments(&group("setting-units"), &of_units, units.key(), &choose_units) }
                </fieldset>
                <fieldset>
                    <legend>{ "Colours" }</legend>
                    { segments(&group("setting-theme"), &of_themes, theme.key(), &choose_theme) }
                </fieldset>
            </div>
        </details>
    }
}
