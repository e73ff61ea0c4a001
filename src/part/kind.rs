//! The kinds of part, by the names the trade gives them, and what each kind is.

use std::fmt;

use crate::source::{Document, document};

/// What a kind of part is, whatever its size: one row a kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Row {
    key: &'static str,
    name: &'static str,
    form: Form,
    thread: Threaded,
    has_length: bool,
    steel: UsualSteel,
    metric: &'static Document,
    inch: &'static Document,
}

/// The form of a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// A head, or an eye, on a shank: bolts and screws.
    Bolt,
    /// A bar without a head: rods, studs, set screws, bows.
    Bar,
    /// A nut.
    Nut,
    /// A washer, flat or sprung.
    Washer,
    /// An open ring that springs into a groove.
    Ring,
    /// A pin.
    Pin,
    /// Anything else: only its area and its mass are known.
    Other,
}

/// Whether a part has a thread, and what that thread goes into.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Threaded {
    /// A thread outside, for a nut or a tapped hole.
    Outside,
    /// A thread inside.
    Inside,
    /// A thread outside that cuts or forms its own mate: no nut takes it, and its size is no
    /// machine thread's.
    Forming,
    /// No thread: its size is that of the thread, the shaft or the hole it goes on or into.
    Not,
}

/// The steel a kind of part usually has, where the order does not say.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum UsualSteel {
    /// By its grade or property class.
    ByGrade,
    /// Case-hardened: a hard skin over a softer core.
    CaseHardened,
    /// Spring steel, hardened through.
    Spring,
}

macro_rules! kinds {
    ($($(#[$doc:meta])* $variant:ident: $key:literal, $name:literal,
        $form:ident, $thread:ident, $length:literal, $steel:ident, $metric:ident, $inch:ident;)+) => {
        /// A kind of part.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum Kind {
            $($(#[$doc])* $variant,)+
        }

        impl Kind {
            /// All kinds in the order of the trade: bolts, screws, studs, nuts, washers, rings and
            /// pins, anything else.
            pub const ALL: [Self; [$($key),+].len()] = [$(Self::$variant),+];

            const fn row(self) -> Row {
                match self {
                    $(Self::$variant => Row {
                        key: $key,
                        name: $name,
                        form: Form::$form,
                        thread: Threaded::$thread,
                        has_length: $length,
                        steel: UsualSteel::$steel,
                        metric: &document::$metric,
                        inch: &document::$inch,
                    },)+
                }
            }
        }
    };
}

// Key, name, form, thread, whether a length is stated, usual steel, and the documents that give
// the sizes for metric and for inch threads.
kinds! {
    /// Hexagon head bolt, threaded over a part of its length.
    HexBolt: "hex-bolt", "hex bolt", Bolt, Outside, true, ByGrade, ISO_4014, ASME_B18_2_1;
    /// Hexagon head bolt with the wide head of a structural one, of other steels.
    HeavyHexBolt: "heavy-hex-bolt", "heavy hex bolt", Bolt, Outside, true, ByGrade, ASME_B18_2_3_6M, ASME_B18_2_1;
    /// Hexagon structural bolt for preloading, of the system HR.
    HrBolt: "hr-bolt", "hexagon structural bolt, system HR", Bolt, Outside, true, ByGrade, EN_14399_3, EN_14399_3;
    /// Heavy hex structural bolt.
    StructuralBolt: "structural-bolt", "heavy hex structural bolt", Bolt, Outside, true, ByGrade, EN_14399_4, ASME_B18_2_6;
    /// Hexagon head with a flange below it.
    FlangeBolt: "flange-bolt", "flange bolt", Bolt, Outside, true, ByGrade, EN_1665, ASME_B18_2_1;
    /// Square head.
    SquareBolt: "square-bolt", "square head bolt", Bolt, Outside, true, ByGrade, OWN, ASME_B18_2_1;
    /// Round head on a square neck.
    CarriageBolt: "carriage-bolt", "carriage bolt", Bolt, Outside, true, ByGrade, ISO_8677, ASME_B18_5;
    /// An eye in place of a head.
    EyeBolt: "eye-bolt", "eye bolt", Bolt, Outside, true, ByGrade, DIN_444, ASME_B18_15;
    /// A bar bent to a bow and threaded at both ends.
    UBolt: "u-bolt", "U-bolt", Bar, Outside, true, ByGrade, DIN_3570, ASME_B18_31_5;
    /// Hexagon head screw, threaded to the head.
    HexScrew: "hex-screw", "hex screw, threaded to the head", Bolt, Outside, true, ByGrade, ISO_4017, ASME_B18_2_1;
    /// Hexagon socket head cap screw.
    SocketScrew: "socket-screw", "socket head cap screw", Bolt, Outside, true, ByGrade, ISO_4762, ASME_B18_3;
    /// Countersunk head with a hexagon socket.
    CountersunkScrew: "countersunk-screw", "countersunk socket screw", Bolt, Outside, true, ByGrade, ISO_10642, ASME_B18_3;
    /// Button head with a hexagon socket.
    ButtonScrew: "button-screw", "button head socket screw", Bolt, Outside, true, ByGrade, ISO_7380, ASME_B18_3;
    /// Set screw with a hexagon socket, without a head.
    SetScrew: "set-screw", "set screw", Bar, Outside, true, ByGrade, ISO_4026, ASME_B18_3;
    /// Machine screw with a slotted or recessed head.
    MachineScrew: "machine-screw", "machine screw", Bolt, Outside, true, ByGrade, ISO_7045, ASME_B18_6_3;
    /// Tapping screw: it forms its own thread in sheet.
    TappingScrew: "tapping-screw", "tapping screw", Bolt, Forming, true, CaseHardened, ISO_7049, ASME_B18_6_4;
    /// Drywall screw with a bugle head.
    DrywallScrew: "drywall-screw", "drywall screw", Bolt, Forming, true, CaseHardened, EN_14566, ASTM_C1002;
    /// Thread-forming screw: it rolls a machine thread into a plain hole.
    FormingScrew: "forming-screw", "thread-forming screw", Bolt, Forming, true, CaseHardened, DIN_7500, DIN_7500;
    /// Lag screw, coach screw: a hexagon head on a wood thread.
    LagScrew: "lag-screw", "lag screw", Bolt, Forming, true, ByGrade, DIN_571, ASME_B18_2_1;
    /// Wood screw with a slotted or recessed head, not hardened.
    WoodScrew: "wood-screw", "wood screw", Bolt, Forming, true, ByGrade, DIN_97, ASME_B18_6_1;
    /// Chipboard or deck screw: hardened, for wood without a hole before it.
    ChipboardScrew: "chipboard-screw", "chipboard or deck screw", Bolt, Forming, true, CaseHardened, EN_14592, EN_14592;
    /// Screw that cuts its thread into concrete.
    ConcreteScrew: "concrete-screw", "concrete screw", Bolt, Forming, true, CaseHardened, OWN, OWN;
    /// Hanger bolt: a wood thread at one end, a machine thread for a nut at the other.
    HangerBolt: "hanger-bolt", "hanger bolt", Bar, Outside, true, ByGrade, OWN, OWN;
    /// Stud, threaded over its whole length.
    Stud: "stud", "stud", Bar, Outside, true, ByGrade, DIN_976, ASME_B18_31_2;
    /// Stud with a thread at each end, the one for a tapped hole.
    DoubleEndStud: "double-end-stud", "double end stud", Bar, Outside, true, ByGrade, DIN_939, ASME_B18_31_2;
    /// Threaded rod.
    Rod: "rod", "threaded rod", Bar, Outside, true, ByGrade, DIN_976, ASME_B18_31_3;
    /// Anchor rod.
    AnchorRod: "anchor-rod", "anchor rod", Bar, Outside, true, ByGrade, ASTM_F1554, ASTM_F1554;
    /// Anchor bolt bent at its end to an L or a J.
    BentAnchor: "bent-anchor", "bent anchor bolt", Bar, Outside, true, ByGrade, DIN_529, ASTM_F1554;
    /// A bolt or screw with a machine thread, and a head that no kind here has.
    OtherBolt: "other-bolt", "bolt of another shape", Bolt, Outside, true, ByGrade, OWN, OWN;
    /// Hexagon nut.
    HexNut: "hex-nut", "hex nut", Nut, Inside, false, ByGrade, ISO_4032, ASME_B18_2_2;
    /// Heavy hex nut.
    HeavyHexNut: "heavy-hex-nut", "heavy hex nut", Nut, Inside, false, ByGrade, ASME_B18_2_4_6M, ASME_B18_2_2;
    /// Hexagon nut with a flange.
    FlangeNut: "flange-nut", "flange nut", Nut, Inside, false, ByGrade, ISO_4161, ASME_B18_2_2;
    /// Square nut.
    SquareNut: "square-nut", "square nut", Nut, Inside, false, ByGrade, DIN_557, ASME_B18_2_2;
    /// Prevailing torque nut.
    LockNut: "lock-nut", "lock nut, prevailing torque", Nut, Inside, false, ByGrade, ISO_7040, ASME_B18_16_6;
    /// Thin hexagon nut, jam nut.
    ThinNut: "thin-nut", "thin nut", Nut, Inside, false, ByGrade, ISO_4035, ASME_B18_2_2;
    /// Long nut that joins two rods.
    CouplingNut: "coupling-nut", "coupling nut", Nut, Inside, true, ByGrade, DIN_6334, ASME_B18_2_2;
    /// A nut with a machine thread, and a body that no kind here has.
    OtherNut: "other-nut", "nut of another shape", Nut, Inside, false, ByGrade, OWN, OWN;
    /// Plain washer: ISO 7089 for metric threads, ASTM F436 for inch threads.
    Washer: "washer", "plain washer", Washer, Not, false, ByGrade, ISO_7089, ASTM_F436;
    /// Wide plain washer: ISO 7093-1 for metric threads, type A wide for inch threads.
    WideWasher: "wide-washer", "wide plain washer", Washer, Not, false, ByGrade, ISO_7093_1, ASME_B18_22_1;
    /// Narrow plain washer: type A narrow for inch threads.
    NarrowWasher: "narrow-washer", "narrow plain washer", Washer, Not, false, ByGrade, ISO_7092, ASME_B18_21_1;
    /// Spring lock washer: one turn of a helix.
    SpringWasher: "spring-washer", "spring lock washer", Washer, Not, false, Spring, DIN_127, ASME_B18_21_1;
    /// Conical spring washer.
    ConicalWasher: "conical-washer", "conical spring washer", Washer, Not, false, Spring, DIN_6796, ASME_B18_21_1;
    /// Toothed lock washer.
    ToothedWasher: "toothed-washer", "toothed lock washer", Washer, Not, false, Spring, DIN_6797, ASME_B18_21_1;
    /// A washer for a bolt, of a shape that no kind here has.
    OtherWasher: "other-washer", "washer of another shape", Washer, Not, false, ByGrade, OWN, OWN;
    /// Retaining ring for a shaft.
    RetainingRing: "retaining-ring", "retaining ring", Ring, Not, false, Spring, DIN_471, ASME_B18_27;
    /// Retaining ring for a bore.
    InternalRing: "internal-ring", "retaining ring for a bore", Ring, Not, false, Spring, DIN_472, ASME_B18_27;
    /// Snap ring of wire or of even section.
    SnapRing: "snap-ring", "snap ring", Ring, Not, false, Spring, ISO_464, ASME_B18_27;
    /// Cotter pin, split.
    CotterPin: "cotter-pin", "cotter pin", Pin, Not, true, ByGrade, ISO_1234, ASME_B18_8_1;
    /// Slotted spring pin.
    SpringPin: "spring-pin", "spring pin", Pin, Not, true, Spring, ISO_8752, ASME_B18_8_2;
    /// Clevis pin.
    ClevisPin: "clevis-pin", "clevis pin", Pin, Not, true, ByGrade, ISO_2341, ASME_B18_8_1;
    /// Parallel pin, dowel pin.
    ParallelPin: "parallel-pin", "parallel pin", Pin, Not, true, ByGrade, ISO_2338, ASME_B18_8_2;
    /// Any other part, by its own name: its area and mass are the user's.
    Other: "other", "other part", Other, Not, false, ByGrade, OWN, OWN;
}

#[allow(
    clippy::indexing_slicing,
    reason = "evaluated when it is compiled: a place beyond the end is no build"
)]
static KEYS_WITH_LENGTH: [&str; Kind::ALL.len() + 1] = {
    let mut keys = [""; Kind::ALL.len() + 1];
    let mut at = 0;
    while at < Kind::ALL.len() {
        if Kind::ALL[at].has_length() {
            keys[at] = Kind::ALL[at].key();
        }
        at += 1;
    }
    keys
};

impl Kind {
    /// The keys of the kinds that have a length; the rest of the list stays the empty key, which asks
    /// for the length as long as no kind is chosen.
    pub const KEYS_WITH_LENGTH: &'static [&'static str] = &KEYS_WITH_LENGTH;

    /// Stable key for links.
    pub const fn key(self) -> &'static str {
        self.row().key
    }

    /// The kind of that key.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.key() == key)
    }

    /// What the trade calls it.
    pub const fn name(self) -> &'static str {
        self.row().name
    }

    /// Its form.
    pub const fn form(self) -> Form {
        self.row().form
    }

    /// Whether it has a thread, and of what sort.
    pub const fn threaded(self) -> Threaded {
        self.row().thread
    }

    /// Whether the part has a length that must be stated.
    pub const fn has_length(self) -> bool {
        self.row().has_length
    }

    /// The steel it usually has.
    pub const fn usual_steel(self) -> UsualSteel {
        self.row().steel
    }

    /// The document that gives its sizes.
    pub const fn document(self, metric: bool) -> &'static Document {
        if metric { self.row().metric } else { self.row().inch }
    }

    /// Whether it is a nut.
    pub const fn is_nut(self) -> bool {
        matches!(self.form(), Form::Nut)
    }

    /// Whether it is a washer, flat or sprung.
    pub const fn is_washer(self) -> bool {
        matches!(self.form(), Form::Washer)
    }

    /// Whether it is an open ring.
    pub const fn is_ring(self) -> bool {
        matches!(self.form(), Form::Ring)
    }

    /// Whether it is thin and flat, so that a heap of it sticks or hooks together.
    pub const fn is_flat(self) -> bool {
        self.is_washer() || self.is_ring()
    }

    /// Whether a nut or a tapped hole belongs to it: a machine thread, outside or inside.
    pub const fn has_mate(self) -> bool {
        matches!(self.threaded(), Threaded::Outside | Threaded::Inside)
    }

    /// Whether it is a screw that is driven into a tapped hole and not into a nut.
    pub const fn goes_into_a_tapped_hole(self) -> bool {
        matches!(
            self,
            Self::SocketScrew
                | Self::CountersunkScrew
                | Self::ButtonScrew
                | Self::SetScrew
                | Self::MachineScrew
        )
    }

    /// Whether it is a structural bolt, which goes with heavy nuts.
    pub const fn is_structural(self) -> bool {
        matches!(self, Self::StructuralBolt | Self::HrBolt)
    }

    /// Whether a thread of it goes into wood.
    pub const fn goes_into_wood(self) -> bool {
        matches!(self, Self::LagScrew | Self::WoodScrew | Self::ChipboardScrew | Self::HangerBolt)
    }

    /// Whether it is a bar that may be metres long: a rod, a stud, an anchor.
    pub const fn is_rod(self) -> bool {
        matches!(self, Self::Rod | Self::Stud | Self::AnchorRod | Self::BentAnchor)
    }
}

impl fmt::Display for Kind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}
