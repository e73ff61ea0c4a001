//! Why a piece of a line is not used: the reason names what is wrong with it, and what to write.

use kettle_barrel::order::reading;

#[test]
fn what_is_not_used_says_why() {
    let mut wrong = Vec::new();
    for (line, text, words) in [
        // Steels and their classes.
        ("M16x60 8.8 bolts class 7 100 pcs", "class 7", "a bolt has two numbers"),
        ("M16x60 8.8 bolts with nuts class 7 100 pcs", "class 7", "not among those of nuts"),
        ("M16x60 8.8 mech zinc bolts with nuts, class 8, 100 pcs", "class 8", "“B695 class 8”"),
        ("3/4-10 x 3 bolts grade 9 100 pcs", "grade 9", "grade 9 is not among the steels"),
        ("3/4-10 nuts grade 9 100 pcs", "grade 9", "grade 9 of nuts (SAE J995)"),
        ("M20x90 grade 8 bolts 100 pcs", "grade 8", "is for inch threads"),
        ("A193 B16 stud 3/4 x 4 100 pcs", "A193 B16", "not among the steels known here"),
        ("A193 studs 3/4 x 4 100 pcs", "A193", "which grade of A193?"),
        ("3/4-10 x 3 bolts grade D 100 pcs", "grade D", "a grade of which document?"),
        ("3/4-10 nuts A563 E 100 pcs", "A563", "which grade of A563?"),
        ("M16 nuts class 8, F436, 100 pcs", "F436", "a grade of washers"),
        ("3/4 washers, A563 DH, 100 pcs", "A563 DH", "a grade of nuts"),
        ("bolts M20x80 8.8, nuts class 8 300 HV", "300 HV", "said by its grade"),
        ("M20x80 8.8 bolts with nuts 900 MPa", "900 MPa", "the strength of what comes with the bolt"),
        ("M20x80 8.8 bolts 45 HRC", "45 HRC", "which of the two is right"),
        ("M20x80 8.8 bolts 45 HRC", "8.8", "which of the two is right"),
        ("M20x80 8.8 bolts 28 HRC", "28 HRC", "said by its grade"),
        ("M20x80 8.8 bolts 10.9", "10.9", "one of two: 8.8 or 10.9?"),
        ("M20x80 8.8 bolts 10.9", "8.8", "one of two: 8.8 or 10.9?"),
        ("3/4-10 x 3 bolts gr 5, gr 8", "gr 5", "one of two: gr 5 or gr 8?"),
        ("M20x80 10.9 bolts with nut class 8, nut class 10", "class 8", "class 8 or class 10?"),
        ("M20x80 8.8 bolts mech galv class 40 or class 55", "class 55", "the first is judged"),
        ("M20x80 8.8 bolts mech galv class 40 or 55 500 pcs", "55", "the first is judged"),
        ("M16 nuts class 8 or 10 500 pcs", "10", "one of two: class 8 or 10?"),
        ("8 M20x80 8.8 bolts with 16 nuts each", "16", "16 to each, or 16 in all?"),
        ("M20x80 8.8 bolts HDG, nuts zinc plated", "zinc plated", "judged with one finish"),
        ("M12x50 bolts 130 ksi yield HDG", "130 ksi yield", "write the tensile strength"),
        ("says 10.9 but drawing 8.8, M20x90 bolts", "8.8", "one of two: 10.9 or 8.8?"),
        ("M20x80 8.8 bolts min 320 HV", "min 320 HV", "255 HV at least"),
        ("M20x80 8.8 bolts min 900 MPa", "min 900 MPa", "which of the two?"),
        ("M20x80 10.9 bolts 800 MPa", "800 MPa", "which of the two?"),
        ("M20x80 8.8 bolts 830 MPa", "830 MPa", "said by its grade"),
        ("5/8-11 x 4 studs B7 or B16 HDG", "B16", "one of two: B7 or B16?"),
        // Another coat, none, or one of a zone alone.
        ("M20x80 8.8 bolts HDG, no zinc on threads", "no zinc on threads", "a zone without zinc?"),
        ("M20x80 8.8 bolts HDG, threads masked", "threads masked", "a zone without zinc?"),
        ("M20x80 8.8 bolts HDG 85 µm min", "85 µm min", "agree another thickness"),
        ("M20x80 8.8 bolts zinc plated, Zn-Ni", "Zn-Ni", "which of the two is wanted?"),
        ("M20x80 8.8 bolts black, later HDG by others", "HDG", "put on by others"),
        ("M20x80 8.8 bolts uncoated, for galvanizing", "uncoated", "which of the two?"),
        ("M20x80 used bolts 8.8 HDG", "used", "used parts?"),
        ("Line 1: 50 M20x60 8.8 bolts; Line 2: 90 M20 nuts", "nuts", "a second order"),
        ("A325 3/4 x 2 with DTIs HDG", "DTIs", "no part known here"),
        // What it is for.
        ("M12x50 8.8 bolts for rod ends", "rod", "write it as a line of its own"),
        ("M12x50 8.8 bolts between flange and wall", "flange", "what it is for"),
        ("M12x50 8.8 bolts for HDG flange", "HDG", "the finish of what it joins"),
        ("M12x50 8.8 bolts flange width 150", "flange", "write flange bolt"),
        ("W 1/2 x 2 bolt", "W 1/2", "only M and unified threads"),
        ("M12x50 8.8 HDG with DIN 985 nuts", "nuts", "write it as a line of its own"),
        // Times that are no life, and places.
        ("M20x80 8.8 bolts HDG C3 stored 2 years", "stored 2 years", "no life"),
        ("M20x80 8.8 bolts HDG C3 inspected every 2 years", "inspected every 2 years", "no life"),
        ("M20x80 8.8 bolts HDG C3 lasted only 2 years", "lasted only 2 years", "no life"),
        ("M20x80 8.8 bolts HDG C3 rust found after 3 years", "after 3 years", "no life"),
        ("M20x80 8.8 bolts HDG C3 in use for the last 10 years", "10 years", "no life"),
        ("M20x80 8.8 bolts HDG C3 10 years, 15 years", "10 years", "write 10 years alone if"),
        ("M20x80 8.8 bolts HDG C3 at least 15 years, ideally 25 years", "25 years", "the 15 years that are"),
        ("M20x80 8.8 bolts HDG C3 30 years, pump life 5 years", "5 years", "The 30 years are taken"),
        ("M20x80 8.8 bolts HDG, roughness 6-10 µm", "6-10 µm", "write zinc beside it"),
        ("M20x80 8.8 bolts mech galv B695 class 55, 55-80 µm", "55-80 µm", "has less than 55 µm"),
        ("M20x80 8.8 bolts HDG C3 coating 15 yrs, structure 50 yrs", "50 yrs", "The 15 years are taken"),
        ("M20x80 8.8 bolts zinc C2 6 months", "6 months", "write it in years"),
        ("M20x80 8.8 bolts HDG C3 min", "min", "a harsher place as well?"),
        // Threads and their classes.
        ("M20x100 8.8 HDG U/M EA", "U/M", "no mark of a bolt cut under"),
        ("shoulder screw 3/8 x 1 5/16-18", "3/8", "the diameter of the shoulder"),
        ("M20 x 60 M16 bolts 8.8", "M16", "contradicts the thread M20"),
        ("M20 nuts 6g class 8", "6g", "a class of bolts"),
        ("M20x80 8.8 bolts 6H", "6H", "a class of nuts"),
        ("hex bolts 6g 8.8", "6g", "of which thread?"),
        ("3/4-10 nuts 6H DH", "6H", "of the other system"),
        ("M20-6g x 80 8.8 bolts 6e", "6e", "contradicts the class 6g"),
        ("M20x80 8.8 bolts not overtapped", "not overtapped", "nuts that are not ordered here"),
        ("nuts not overtapped class 8", "not overtapped", "the nut of which thread?"),
        ("M16x2 x 60 8.8 bolts, pitch 1.5", "pitch 1.5", "contradicts the thread M16"),
        ("1/2 x 2 gr 5 bolts 17 tpi", "17 tpi", "does not exist"),
        ("8.8 bolts with pitch 1.5", "pitch 1.5", "of which thread?"),
        ("M20 x 60 8.8 bolts fine", "fine", "which pitch: "),
        // Lengths and other measures.
        ("5/8-11 x 30 hex bolt gr 5", "x 30", "30 mm or 30 in"),
        ("hex bolts 8.8 x 60 HDG", "x 60", "of millimetres or of inches?"),
        ("retaining ring 5.5 mm 100 pcs", "5.5 mm", "no ring of this size"),
        ("M16 nuts class 8 60 mm", "60 mm", "has no length"),
        ("M16 x 45 A490 TCB 300 pcs", "x 45", "the length of another part"),
        ("M20x60 8.8 bolts 5x30", "5x30", "write 150 pcs if that is all"),
        ("6x30 zinc 500 pcs", "6x30", "two measures of what?"),
        ("M20 x 5 8.8 bolts", "x 5", "a length of 5 mm or 5 m"),
        ("M16x60x38 8.8 HDG", "x38", "write 38 pcs if it counts"),
        // Coats.
        ("M20x80 8.8 HDG, measured 38 µm", "measured 38 µm", "the lot check"),
        ("bolts for HDG structure, M16x60 8.8", "HDG", "the finish of what it joins"),
        ("M16x60 8.8 bolts, nuts HDG in stock", "HDG", "in stock already"),
        ("M16x60 8.8 bolts HDG, if HDG is not allowed call", "not allowed", "which finish is wanted then?"),
        ("M20x90 8.8 bolts B695 class 40 50 µm", "50 µm", "less than 50 µm: which of the two?"),
        ("M20x90 8.8 bolts B695 120 µm", "120 µm", "no class asks for 120 µm"),
        ("M20x90 8.8 bolts 50 µm", "50 µm", "of which coat?"),
        ("M20x90 8.8 bolts zinc flake 8 µm", "8 µm", "whoever applies that coat"),
        ("M20x90 8.8 bolts zinc 50 µm", "50 µm", "hot-dip or mechanical: write which"),
        ("M20x90 8.8 bolts HDG 55 µm", "55 µm", "hot-dip has one class for a size"),
        ("M10x40 8.8 bolts Fe/Zn 7", "Fe/Zn 7", "no class of 7 µm"),
        ("M20x90 8.8 bolts ISO 10684:2015", "ISO 10684:2015", "the edition of 2004"),
        // Numbers of pieces.
        ("DIN 471 20 100 pcs", "20 100 pcs", "a size of 20 and 100 pieces"),
        ("A194 7 200 pcs M20 nuts", "7 200 pcs", "“A194 7” and 200 pieces"),
        ("5/8 x 2 hex bolts 8 200 pcs", "8 200 pcs", "grade 8 and 200 pieces"),
        ("rod M20 8 200 pcs", "8 200 pcs", "a length of 8 and 200 pieces"),
        ("nuts M20 8 200 pcs HDG", "8 200 pcs", "class 8 and 200 pieces"),
        ("class 8 nuts M20 8 200 pcs C3", "8 200 pcs", "class 8 and 200 pieces"),
        ("M20x90 8.8 bolts HDG 50 200 pcs", "50 200 pcs", "a coat of 50 µm and 200 pieces"),
        ("M20x90 8.8 bolts mech zinc 50 200 pcs", "50 200 pcs", "class 50 and 200 pieces"),
        ("M20x90 8.8 bolts plated 8 200 pcs", "8 200 pcs", "a coat of 8 µm and 200 pieces"),
        ("M20x90 8.8 bolts C3 20 200 pcs", "20 200 pcs", "20 years and 200 pieces"),
        ("3/4 x 3 bolts A325 1 200 pcs", "1 200 pcs", "type 1 and 200 pieces"),
        ("hex bolt M16x60 galv 8 200 pcs", "8 200 pcs", "a coat of 8 µm and 200 pieces"),
        ("M20x90 8.8 bolts mech zinc 8 200 pcs", "8 200 pcs", "class 8 and 200 pieces"),
        ("M16x60 8.8 bolts with nuts 10 500 sets", "10 500 sets", "a nut of class 10 and 500 pieces"),
        ("M16x60 8.8 bolts ISO 7089 16 200 sets", "16 200 sets", "a size of 16 and 200 pieces"),
        ("M16x60 8.8 bolts with nut 8 pcs", "8 pcs", "a nut of class 8, or 8 pieces"),
        // Weights.
        ("M16x60 8.8 bolts HDG 0.12 kg each", "0.12 kg each", "computed from its shape"),
        ("M16x60 8.8 bolts HDG 25 kg boxes", "25 kg boxes", "the weight of one box"),
        ("M16x60 8.8 bolts HDG 20 boxes 25 kg", "25 kg", "of one box, or of all"),
        ("M16x60 8.8 bolts HDG 20 x 25 kg", "20 x 25 kg", "so many of so much"),
        // What was done after hardening.
        // What may not be wanted.
        ("M16x60 8.8 bolts without zork HDG", "HDG", "wanted, or not"),
        ("M16x60 8.8 bolts HDG, zork or zinc plated", "HDG", "a word is not known"),
        ("3\" x 1/2\" lag screws HDG", "3\" x 1/2\"", "Write the size first"),
    ] {
        let reading = reading::read(line);
        let why = reading.not_used().find(|(piece, _)| *piece == text).map(|(_, why)| why.to_owned());
        // A number and its unit do not part.
        if !why.as_ref().is_some_and(|why| why.replace('\u{a0}', " ").contains(words)) {
            wrong.push(format!("{line}: {text}: {why:?}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
