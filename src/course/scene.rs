//! Scenes: where a question of this kind comes up. Texts of our own.

use super::random::Random;

/// Scenes by the calculator they lead to.
const SCENES: [(&str, &[&str]); 12] = [
    (
        "coat",
        &[
            "A certificate states the coat in one unit and the order in another.",
            "An inspector has a reading and a drawing has a mass on the area.",
            "Two platers quote the same coat, each in a unit of his own.",
        ],
    ),
    (
        "oversize-tap",
        &[
            "A tapping shop asks how much room the zinc needs before it sets its machines.",
            "Nuts and bolts came from two makers, and the first pair did not turn together.",
            "A buyer wants to know whether the coat on offer still assembles.",
        ],
    ),
    (
        "coat-room",
        &[
            "Before the order goes out, somebody has to write down the classes of bolt and nut.",
            "A drawing names the coat and forgets the thread.",
            "The shelf holds several classes, and the coat decides which of them fit.",
        ],
    ),
    (
        "thread-strength",
        &[
            "A bolt was tightened until something gave way, and nobody had reckoned what.",
            "The nut was tapped over for the zinc; the designer asks what that cost.",
            "A pair of bolt and nut goes to the test bench next week.",
        ],
    ),
    (
        "gauges",
        &[
            "The gauge room asks for limits before and after the coat.",
            "A new tap has to be ordered today.",
            "An operator holds a GO gauge that does not go, and asks whether it should.",
        ],
    ),
    (
        "hydrogen",
        &[
            "A lot is to be pickled on Monday, and its steel is written on the box.",
            "A customer asks why the offer mentions an oven.",
            "The lab hands over a hardness, and the shop wants to know what follows.",
        ],
    ),
    (
        "tempering",
        &[
            "A galvanizer reads his bath and wonders about the temper of the bolts.",
            "A certificate gives the temper, the kettle its own heat.",
            "Bolts came out of the bath softer than they went in, and somebody asks why.",
        ],
    ),
    (
        "powder",
        &[
            "An operator loads the barrel and needs to know what to weigh in.",
            "A load is planned for the night shift, which has only the sheet.",
            "The powder is nearly out: will it do for this load?",
        ],
    ),
    (
        "kettle",
        &[
            "The foreman asks what this load will take out of the kettle.",
            "An offer is to be reckoned by the zinc it takes.",
            "At the end of the week the zinc bought and the zinc shipped are compared.",
        ],
    ),
    (
        "life",
        &[
            "A customer asks how long the coat will last where the parts stand.",
            "A guarantee is to be written, and nobody should promise too much.",
            "Last year's bolts show red; were they ever thick enough?",
        ],
    ),
    (
        "lot",
        &[
            "A lot stands at the door, and the gauge has been round.",
            "The inspector has written the readings on the back of the delivery note.",
            "The customer and the plater have both measured, and the numbers are here.",
        ],
    ),
    (
        "salt-spray",
        &[
            "An order asks for hours in the salt spray.",
            "A data sheet names hours, and the buyer wants to see where they come from.",
            "Two finishes are compared by what their standards promise.",
        ],
    ),
];

/// A scene for a calculator.
pub fn scene(calculator: &str, random: &mut Random) -> &'static str {
    let (_, scenes) = SCENES.iter().find(|(id, _)| *id == calculator).unwrap_or(&SCENES[0]);
    random.pick(scenes).copied().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    #[test]
    fn every_calculator_has_its_scenes() {
        for entry in crate::calculator::REGISTER {
            assert!(super::SCENES.iter().any(|(id, _)| *id == entry.about.id), "{}", entry.about.id);
        }
    }
}
