//! Every published document this project draws on, named once.

use super::{Document, Family};

macro_rules! documents {
    ($($family:ident: {$($(#[$doc:meta])* $constant:ident: $name:literal, $about:literal;)+})+) => {
        $($(
            $(#[$doc])*
            #[doc = $about]
            pub static $constant: Document = Document { name: $name, about: $about, family: Family::$family };
        )+)+
        /// All of them, in the order of this file.
        pub static ALL: &[&Document] = &[$($(&$constant),+),+];
    };
}

documents! {
    None: {
        TRADE: "Common practice", "rules of the trade that no document states";
        PROJECT: "Assumption of this calculator", "a default where no published value was found";
        MASS_LIST: "Public list of piece masses", "masses of fasteners by size, under the headings of their standards";
        OWN: "Your own value", "a value the user gave in place of a published one";
        ARITHMETIC: "Arithmetic", "geometry and exact unit factors";
    }

    Iso: {
        ISO_261: "ISO 261", "diameters and pitches of ISO metric threads";
        ISO_724: "ISO 724", "basic dimensions of ISO metric threads";
        ISO_965_1: "ISO 965-1:1998", "tolerances of ISO metric threads";
        ISO_965_2: "ISO 965-2", "limits of size of common ISO metric threads";
        ISO_965_4: "ISO 965-4:1998", "limits of size of bolts to be hot-dip galvanized";
        ISO_965_5: "ISO 965-5:1998", "limits of size of nuts tapped over size for galvanized bolts";
        ISO_898_1_1999: "ISO 898-1:1999", "mechanical properties of bolts, earlier edition";
        ISO_898_1: "ISO 898-1", "mechanical properties of bolts, screws and studs";
        ISO_898_2_1992: "ISO 898-2:1992", "mechanical properties of nuts, earlier edition";
        ISO_898_5: "ISO 898-5", "mechanical properties of set screws";
        ISO_898_2: "ISO 898-2:2012", "mechanical properties of nuts";
        ISO_10684: "ISO 10684:2004", "hot-dip galvanized fasteners";
        ISO_1461: "ISO 1461:2009", "hot-dip galvanized articles";
        ISO_4042_1999: "ISO 4042:1999", "electroplated fasteners, earlier edition";
        ISO_4042_2018: "ISO 4042:2018", "electroplated fasteners";
        ISO_19598: "ISO 19598", "electroplated zinc and its passivates without hexavalent chromium";
        ISO_12683: "ISO 12683:2004", "mechanically deposited zinc";
        ISO_2081: "ISO 2081", "electroplated zinc on iron or steel";
        ISO_9588: "ISO 9588:2007", "post-coating treatments against hydrogen";
        ISO_16224: "ISO/TR 16224:2012", "strength of bolt and nut assemblies";
        ISO_18265: "ISO 18265", "conversion of hardness values";
        ISO_9223: "ISO 9223:2012", "corrosivity of atmospheres";
        ISO_9224: "ISO 9224:2012", "guiding values for long-term corrosion";
        ISO_14713_1: "ISO 14713-1", "protection against corrosion by zinc coatings";
        ISO_14713_2: "ISO 14713-2", "hot-dip galvanizing: design and steels";
        ISO_2602: "ISO 2602", "estimation of the mean, confidence interval";
        ISO_1460: "ISO 1460", "mass of hot-dip coats by stripping and weighing";
        ISO_1463: "ISO 1463", "thickness of coats under the microscope";
        ISO_2178: "ISO 2178", "thickness of coats on magnetic metals, magnetic method";
        ISO_11844: "ISO 11844-1", "low corrosivity of indoor atmospheres";
        ISO_1502: "ISO 1502:1996", "gauges of ISO metric threads and gauging";
        ISO_2306: "ISO 2306", "drills before tapping";
        ISO_2857: "ISO 2857", "taps for metric threads of classes 4H to 8H and 4G to 6G";
        ISO_14657: "ISO 14657", "zinc-coated steel for the reinforcement of concrete";
        EN_12501: "EN 12501", "corrosion likelihood in soil";
        EN_12502_3: "EN 12502-3", "corrosion of galvanized steel in water systems";
        EN_14399_1: "EN 14399-1", "preloaded structural bolting, general requirements";
        EN_14399_2: "EN 14399-2:2015", "preloaded structural bolting, suitability for preloading";
        EN_14399_3: "EN 14399-3", "preloaded structural bolting, system HR";
        EN_14399_4: "EN 14399-4", "preloaded structural bolting, system HV";
        EN_14399_6: "EN 14399-6", "preloaded structural bolting, plain chamfered washers";
        EN_1995_1_1: "EN 1995-1-1", "timber structures, corrosion of fasteners";
        PD_6484: "PD 6484", "corrosion at contacts of two metals";
        ISO_4014: "ISO 4014", "hexagon head bolts";
        ISO_4017: "ISO 4017", "hexagon head screws";
        ISO_4032: "ISO 4032", "hexagon regular nuts";
        ISO_4033: "ISO 4033", "hexagon high nuts";
        ISO_4035: "ISO 4035", "hexagon thin nuts, chamfered";
        ISO_4762: "ISO 4762", "hexagon socket head cap screws";
        ISO_7089: "ISO 7089", "plain washers";
        ISO_464: "ISO 464", "rolling bearings, snap rings";
        ISO_1234: "ISO 1234", "split pins";
        ISO_1478: "ISO 1478", "tapping screw threads";
        ISO_2338: "ISO 2338", "parallel pins, unhardened";
        ISO_2341: "ISO 2341", "clevis pins with head";
        ISO_4026: "ISO 4026", "hexagon socket set screws with flat point";
        ISO_4161: "ISO 4161", "hexagon nuts with flange";
        ISO_4162: "ISO 4162", "hexagon flange bolts, small series";
        ISO_7040: "ISO 7040", "prevailing torque type hexagon nuts with non-metallic insert";
        ISO_7045: "ISO 7045", "pan head screws with cross recess";
        ISO_7049: "ISO 7049", "cross-recessed pan head tapping screws";
        ISO_7092: "ISO 7092", "plain washers, small series";
        ISO_7093_1: "ISO 7093-1", "plain washers, large series";
        ISO_7380: "ISO 7380-1", "hexagon socket button head screws";
        ISO_8677: "ISO 8677", "cup head square neck bolts";
        ISO_8752: "ISO 8752", "slotted spring-type straight pins, heavy duty";
        ISO_10642: "ISO 10642", "hexagon socket countersunk head screws";
        EN_1665: "EN 1665", "hexagon bolts with flange, heavy series";
        EN_14592: "EN 14592", "timber structures, dowel-type fasteners";
        EN_14566: "EN 14566", "mechanical fasteners for gypsum plasterboard";
        DIN_97: "DIN 97", "slotted countersunk wood screws";
        DIN_127: "DIN 127", "spring lock washers";
        DIN_444: "DIN 444", "eye bolts";
        DIN_471: "DIN 471", "retaining rings for shafts";
        DIN_472: "DIN 472", "retaining rings for bores";
        DIN_529: "DIN 529", "masonry and foundation bolts";
        DIN_557: "DIN 557", "square nuts";
        DIN_571: "DIN 571", "hexagon head wood screws";
        DIN_939: "DIN 939", "studs, metal end of about 1.25 d";
        DIN_976: "DIN 976", "stud bolts and threaded rods";
        DIN_3570: "DIN 3570", "U-bolts for pipes";
        DIN_6334: "DIN 6334", "hexagon nuts of a height of 3 d";
        DIN_6796: "DIN 6796", "conical spring washers";
        DIN_6797: "DIN 6797", "toothed lock washers";
        DIN_7500: "DIN 7500", "thread-forming screws";
        ISO_2702: "ISO 2702", "heat-treated steel tapping screws, mechanical properties";
        ISO_3269: "ISO 3269", "acceptance inspection of fasteners";
        AS_NZS_1214: "AS/NZS 1214:2016", "hot-dip galvanized fasteners (ISO 10684, modified)";
        BS_729: "BS 729:1971", "hot-dip galvanized coatings, earlier British practice";
    }

    Astm: {
        ASME_B1_1: "ASME B1.1", "unified inch screw threads";
        ASME_B1_2: "ASME B1.2", "gages and gaging for unified inch threads";
        ASME_B1_3: "ASME B1.3", "screw thread gaging systems";
        ASME_B1_13M: "ASME B1.13M", "metric screw threads, M profile";
        ASME_B18_2_1: "ASME B18.2.1", "hex bolts, hex and lag screws, inch";
        ASME_B18_2_2: "ASME B18.2.2", "hex nuts, inch";
        ASME_B18_2_3_6M: "ASME B18.2.3.6M", "heavy hex bolts, metric";
        ASME_B18_2_6: "ASME B18.2.6", "structural bolts, nuts and washers, inch";
        ASME_B18_2_4_6M: "ASME B18.2.4.6M", "heavy hex nuts, metric";
        ASME_B18_3: "ASME B18.3", "socket cap, shoulder and set screws, inch";
        ASME_B18_5: "ASME B18.5", "round head bolts, inch";
        ASME_B18_6_1: "ASME B18.6.1", "wood screws, inch";
        ASME_B18_6_3: "ASME B18.6.3", "machine screws and tapping screws, inch";
        ASME_B18_6_4: "ASME B18.6.4", "tapping screws, inch";
        ASME_B18_8_1: "ASME B18.8.1", "clevis pins and cotter pins";
        ASME_B18_8_2: "ASME B18.8.2", "taper, dowel, straight, grooved and spring pins";
        ASME_B18_15: "ASME B18.15", "forged eyebolts";
        ASME_B18_16_6: "ASME B18.16.6", "prevailing torque locknuts, non-metallic insert";
        ASME_B18_21_1: "ASME B18.21.1", "washers, inch";
        ASME_B18_22_1: "ASME B18.22.1", "plain washers, inch";
        ASME_B18_27: "ASME B18.27", "retaining rings";
        ASME_B18_31_2: "ASME B18.31.2", "continuous and double-end studs, inch";
        ASME_B18_31_3: "ASME B18.31.3", "threaded rods, inch";
        ASME_B18_31_5: "ASME B18.31.5", "bent bolts, inch";
        ASME_B94_9: "ASME B94.9", "taps";
        FED_STD_H28: "FED-STD-H28/2B", "unified threads for federal services";

        AISC_360: "AISC 360", "structural steel buildings";
        RCSC: "RCSC Specification", "structural joints with high-strength bolts";
        ASTM_A123: "ASTM A123/A123M", "hot-dip galvanized iron and steel products";
        ASTM_A143: "ASTM A143/A143M", "safeguarding against embrittlement of hot-dip galvanized steel";
        ASTM_A153: "ASTM A153/A153M-16", "hot-dip zinc on iron and steel hardware";
        ASTM_A193: "ASTM A193", "bolting for high temperature service";
        ASTM_A194: "ASTM A194", "nuts for high pressure or temperature service";
        ASTM_A307: "ASTM A307", "carbon steel bolts, 60 ksi";
        ASTM_A325: "ASTM A325", "structural bolts, before F3125";
        ASTM_A354: "ASTM A354", "quenched and tempered alloy steel bolts";
        ASTM_A385: "ASTM A385/A385M", "providing high-quality zinc coatings, hot-dip";
        ASTM_A449: "ASTM A449", "hex cap screws, bolts and studs, heat treated";
        ASTM_A490: "ASTM A490/A490M", "structural bolts of 150 ksi, before F3125";
        ASTM_A563: "ASTM A563", "carbon and alloy steel nuts, inch";
        ASTM_A563M: "ASTM A563M", "carbon and alloy steel nuts, metric";
        ASTM_A574: "ASTM A574-17", "alloy steel socket head cap screws";
        ASTM_A574_OLD: "ASTM A574 (before 2017)", "alloy steel socket head cap screws, earlier editions";
        ASTM_A653: "ASTM A653/A653M", "galvanized steel sheet";
        ASTM_A90: "ASTM A90/A90M", "mass of zinc coats by stripping and weighing";
        ASTM_B117: "ASTM B117", "operating salt spray apparatus";
        ASTM_B487: "ASTM B487", "thickness of coats under the microscope";
        ASTM_B499: "ASTM B499", "thickness of coats by the magnetic method";
        ASTM_B571: "ASTM B571", "adhesion of metallic coatings";
        ASTM_B602: "ASTM B602", "attribute sampling of coatings";
        ASTM_B633: "ASTM B633", "electrodeposited zinc on iron and steel";
        ASTM_B659: "ASTM B659", "guide to measuring the thickness of coatings";
        ASTM_B695: "ASTM B695", "mechanically deposited zinc";
        ASTM_B849: "ASTM B849", "treatment before coating against hydrogen";
        ASTM_B850: "ASTM B850-98", "treatment after coating against hydrogen";
        ASTM_C1002: "ASTM C1002", "self-piercing tapping screws for gypsum panels";
        ASTM_E140: "ASTM E140", "hardness conversion tables for metals";
        ASTM_E29: "ASTM E29", "significant digits in test data";
        ASTM_E178: "ASTM E178", "dealing with outlying observations";
        ASTM_E376: "ASTM E376", "thickness by magnetic or eddy-current gauges";
        ASTM_F436: "ASTM F436", "hardened steel washers";
        ASTM_F844: "ASTM F844", "washers, steel, plain, unhardened";
        ASTM_F1136: "ASTM F1136", "zinc and aluminium flake on fasteners";
        ASTM_F1137: "ASTM F1137", "phosphate and oil on fasteners";
        ASTM_F1470: "ASTM F1470", "sampling of fasteners";
        ASTM_F1554: "ASTM F1554", "anchor bolts, 36, 55 and 105 ksi yield";
        ASTM_F1941: "ASTM F1941/F1941M", "electrodeposited coatings on threaded fasteners";
        ASTM_F2329: "ASTM F2329-05", "hot-dip zinc on bolts, screws, washers, nuts";
        ASTM_F3125: "ASTM F3125", "high strength structural bolts";
        SAE_J429: "SAE J429", "inch fasteners, mechanical requirements";
        SAE_J995: "SAE J995", "inch nuts, mechanical requirements";
        SAE_USCAR_5: "SAE/USCAR-5", "avoiding hydrogen embrittlement of steel";
        SAE_J417: "SAE J417", "hardness tests and conversions";
    }

    None: {
        ASTM_STP_175: "ASTM STP 175", "zinc panels outdoors, 1930 to 1954";
        STUDENT_T: "Handbook of Mathematical Functions, 26.7", "the t distribution";
        HOLLOMON_JAFFE: "Hollomon and Jaffe 1945", "time and temperature in tempering steel";
        ALEXANDER_1977: "Alexander 1977", "stripping strength of threaded assemblies";
        ASM_TEMPER: "ASM Metals Handbook", "properties of quenched and tempered steels";
        MACHINERYS_HANDBOOK: "Machinery's Handbook", "threads, coatings on threads, tables";
        BICKFORD: "Bickford, Bolted Joints, 4th ed.", "stress and shear areas of metric threads";
        FINISHING_GUIDEBOOK: "Finishing industry guidebook", "mechanical plating and galvanizing";
        CORROSION_HANDBOOK: "ASM Handbook, corrosion volume", "mechanical plating equipment";
        PROCESS_TEXT: "Trade descriptions of the process", "barrels, beads, chemistry";
        BOLT_MAKERS_TEXT: "Bolt makers' published guidance", "which grades they advise to galvanize";
        ENCYCLOPEDIA: "Encyclopedia article", "mechanical plating";
        TAP_MAKERS_TEXT: "Tap makers' published data", "limits of taps, drills before them";
        GAUGE_MAKERS_TEXT: "Gauge makers' published guidance", "how thread gauges are used";
        IRC: "International Residential Code", "houses: fasteners in treated wood";
        GALVANIZING_TEXT: "Galvanizing trade association articles", "coat density, thickness and life";
        PLANT_TEXT: "Galvanizers and plant makers", "descriptions of their process";
        PLANT_GUIDANCE: "Public guidance for galvanizing plants", "process guidance and safety";
        FLUX_PAPER: "Finishing journal, August 2003", "control of hot-dip galvanizing flux";
    }
}
