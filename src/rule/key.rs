//! The names of the rules.

macro_rules! keys {
    ($($(#[$doc:meta])* $variant:ident: $key:literal,)+) => {
        /// The name of a rule.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Key {
            $($(#[$doc])* $variant,)+
        }

        impl Key {
            /// Every key, in the order of [`super::RULES`].
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];
            /// How many there are.
            pub const COUNT: usize = Self::ALL.len();

            /// Stable key for programs that read the answer.
            pub const fn key(self) -> &'static str {
                match self { $(Self::$variant => $key),+ }
            }
        }
    };
}

keys! {
    /// ASTM F2329: no hot-dip coating from 40 HRC.
    F2329Ban: "f2329-ban",
    /// ASTM F2329: no hot-dip coating of case-hardened fasteners.
    F2329CaseHardened: "f2329-case-hardened",
    /// Common practice: no hot-dip above 39 HRC.
    PracticeHotDip: "practice-hot-dip",
    /// ASTM F436 provides for its washers hot-dip coated.
    F436HotDip: "f436-hot-dip",
    /// ISO 10684: bolts to class 10.9, nuts to class 12.
    Iso10684Scope: "iso10684-scope",
    /// ASTM F3125: grade A490 is not hot-dipped.
    F3125HotDip: "f3125-hot-dip",
    /// ASTM F2329: risk of hydrogen embrittlement from 33 HRC.
    F2329Risk: "f2329-risk",
    /// ASTM A143: of concern above 1100 MPa.
    A143Strength: "a143-strength",
    /// ISO 10684: cleaning from 320 HV.
    Iso10684Cleaning: "iso10684-cleaning",
    /// ISO 10684: stress relief of what was work-hardened.
    Iso10684Relief: "iso10684-relief",
    /// ASTM A143: strain-age embrittlement at tight cold bends.
    A143Bend: "a143-bend",
    /// Bolt makers advise against galvanizing these grades.
    MakersAdvice: "makers-advice",
    /// ASTM F3125: grade A490 is not mechanically coated.
    F3125Mechanical: "f3125-mechanical",
    /// ASTM B695: stress relief above 1000 MPa.
    B695Relief: "b695-relief",
    /// ASTM B695: which cleaners keep hydrogen out.
    B695Cleaning: "b695-cleaning",
    /// Above 40 HRC the barrel is chosen to avoid embrittlement, and some is still possible.
    MechanicalHydrogen: "mechanical-hydrogen",
    /// Common practice has plated parts of 45 HRC in the barrel.
    PracticeMechanical: "practice-mechanical",
    /// ASTM A490: no coating, before F3125.
    A490Electroplated: "a490-electroplated",
    /// ISO 2081, earlier edition: no electroplating above 1500 MPa.
    Iso2081Strength: "iso2081-strength",
    /// Common practice: stress relief above 1000 MPa before plating.
    PracticeRelief: "practice-relief",
    /// ASTM B849: stress relief from 1000 MPa.
    B849Relief: "b849-relief",
    /// ASTM B633: stress relief above 1000 MPa.
    B633Relief: "b633-relief",
    /// ASTM F1941: cleaning from 40 HRC and of case-hardened parts.
    F1941Cleaning: "f1941-cleaning",
    /// ASTM B850: bake by strength.
    B850Bake: "b850-bake",
    /// ASTM B633: bake from 1200 MPa.
    B633Bake: "b633-bake",
    /// ASTM F1941: bake above 39 HRC.
    F1941Bake: "f1941-bake",
    /// ASTM F1941, earlier editions: bake from 40 HRC.
    F1941BakeEarlier: "f1941-bake-earlier",
    /// ISO 4042:2018: bake from 390 HV.
    Iso4042Bake: "iso4042-bake",
    /// ISO 4042:1999: process test above 320 HV.
    Iso4042Investigate: "iso4042-investigate",
    /// ISO 4042:1999: written agreement above 365 HV.
    Iso4042Agree: "iso4042-agree",
    /// Above 39 HRC electroplating is more than usual.
    PracticeElectroplated: "practice-electroplated",
    /// The order does not say the steel.
    SteelNotSaid: "steel-not-said",
    /// No conversion table reaches the steel.
    HardnessUnknown: "hardness-unknown",
    /// The least hardness is said, and the greatest is not.
    GreatestNotSaid: "greatest-not-said",
    /// ISO 10684: no high-temperature bath for class 10.9 from M27.
    HighBath: "high-bath",
    /// The bath's own range.
    Bath: "bath",
    /// The heat of the bath against the temper.
    Temper: "temper",
    /// ASTM A574 checks its temper at a heat of its own.
    A574Check: "a574-check",
    /// The temper of a tempered steel is not known.
    TemperUnknown: "temper-unknown",
    /// Metric below M8, or a pitch below 1.25 mm.
    BelowM8: "below-m8",
    /// ISO 10684 covers coarse threads.
    FinePitch: "fine-pitch",
    /// Coarse inch threads below 3/8 in.
    BelowThreeEighths: "below-three-eighths",
    /// M8 and M10 carry reduced loads.
    ReducedLoads: "reduced-loads",
    /// ISO 4042 agrees the thickness of parts longer than 15 diameters.
    BeyondTable2: "beyond-table-2",
    /// The order does not say the size.
    SizeNotSaid: "size-not-said",
    /// The length that was said is less than the thread is thick.
    LengthUnlikely: "length-unlikely",
    /// The coated thread goes together.
    Assembles: "assembles",
    /// No tapped nut is published for the thread.
    NotPublished: "not-published",
    /// The limits of the thread are not known.
    FitUnknown: "fit-unknown",
    /// How another part goes together is not known.
    OtherFit: "other-fit",
    /// The class of the nut that was written does not take the coat.
    WrittenNut: "written-nut",
    /// Enough of the thread is left.
    Overlap: "overlap",
    /// A nut tapped over and a bolt cut under are not put together.
    Mating: "mating",
    /// Flat parts come out of the kettle stuck together.
    WashersStick: "washers-stick",
    /// The beads keep flat parts apart.
    BeadsPart: "beads-part",
    /// Flat parts nest in a plating barrel.
    WashersNest: "washers-nest",
    /// A nylon patch over mechanical zinc.
    NylonPatch: "nylon-patch",
    /// A nylon patch melts in the kettle.
    PatchAfterDip: "patch-after-dip",
    /// Nylon melts in the zinc of the kettle.
    NylonInsert: "nylon-insert",
    /// It forms its own thread: no nut belongs to it.
    OwnThread: "own-thread",
    /// Heavier than about a pound.
    Heavy: "heavy",
    /// Longer than a barrel takes.
    LongForBarrel: "long-for-barrel",
    /// Longer than two metres.
    LongForKettle: "long-for-kettle",
    /// In water, in soil or elsewhere outside air no years are given.
    NotInAir: "not-in-air",
    /// It touches another metal, for which zinc is used up.
    OtherMetal: "other-metal",
    /// Zinc bears no more heat in service.
    HotPlace: "hot-place",
    /// The steel is used at such a temperature.
    SteelInService: "steel-in-service",
    /// The coat lasts the years wanted.
    Lasts: "lasts",
    /// Years are wanted and nobody said where.
    PlaceNotSaid: "place-not-said",
    /// A thin coat outdoors, and nobody said for how long.
    ThinOutdoors: "thin-outdoors",
    /// No years are wanted: the class follows the place.
    ClassForPlace: "class-for-place",
    /// The coats that the document of a structural bolt lists.
    StructuralCoating: "structural-coating",
    /// The lubricant on zinc-coated nuts of structural bolts.
    StructuralLubricant: "structural-lubricant",
    /// A structural assembly as one matched lot.
    StructuralLot: "structural-lot",
    /// A structural assembly coated by one process.
    StructuralOneProcess: "structural-one-process",
    /// When the nut of a structural bolt is tapped.
    StructuralTapping: "structural-tapping",
    /// The rotational-capacity test.
    RotationalCapacity: "rotational-capacity",
    /// The washer of a structural assembly, and where it goes.
    StructuralWasher: "structural-washer",
    /// No second use of a structural bolt that was pretensioned.
    StructuralReuse: "structural-reuse",
    /// A class of hot-dip that its document has for another size.
    ClassOfAnotherSize: "class-of-another-size",
    /// The coat is no thicker than is taken at most.
    AtMost: "at-most",
    /// What the document of a grade advises about its coats.
    AdvisedAgainst: "advised-against",
    /// The nut that goes on the bolt, by name.
    NutByName: "nut-by-name",
    /// Zinc on steels for hot service.
    HotService: "hot-service",
    /// The nut that is named beside the bolt.
    NutForBolt: "nut-for-bolt",
    /// The washer that is named beside a structural bolt.
    WasherForBolt: "washer-for-bolt",
    /// Bolt and nut carry together what the bolt carries.
    Carries: "carries",
}
