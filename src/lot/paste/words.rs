//! The words that stand above columns and before lines, in the languages that gauges write.
//!
//! In small letters, between bars, as [`super::names`] makes a name plain.

/// Lines and columns that condense readings, or limit them, and are none.
pub const SUMMARIES: &str = "mean|x̄|x̅|ø|∅|std|stdev|std dev|sd|s|sx|sigma|σ|μ|cov|cv|coefficient of variation|variance|\
    range|median|mode|count|n|no of readings|number of readings|readings taken|lsl|usl|lcl|ucl|nominal|target|aim|set|\
    set value|setpoint|required|requirement|cp|cpk|result|highest|lowest|high|low|sum|total|\
    soll|sollmaß|vorgabe|nennwert|nennmaß|zielwert|anzahl|messwerte gesamt|streuung|spannweite|varianz|summe|\
    variationskoeffizient|vark|mw|stabw|std abw|stdabw|og|ug|osg|usg|\
    nombre|étendue|somme|consigne|cible|valeur cible|écart type|\
    número|cantidad|rango|suma|objetivo|valor objetivo|conteggio|numero|intervallo|somma|obiettivo|\
    aantal|spreiding|som|streefwaarde|richtwaarde|antal|summa|börvärde|liczba|suma|rozstęp";

/// Words at the beginning or the end of a name that say the same, whatever stands beside them.
pub const SUMMARY_ENDS: &str = "mean|average|avg|ave|deviation|dev|stdev|variance|median|limit|limits|spec|specification|\
    tolerance|tol|minimum|maximum|min|max|mini|maxi|total|target|nominal|\
    mittel|mittelwert|mittelwerte|durchschnitt|standardabweichung|abweichung|abw|sollwert|sollwerte|grenzwert|grenze|\
    grenzwerte|untergrenze|obergrenze|toleranz|toleranzgrenze|mindestwert|höchstwert|mindestdicke|kleinstwert|größtwert|\
    kleinster|größter|mindest|\
    moyenne|moyen|médiane|écart|limite|limites|tolérance|seuil|\
    media|promedio|desviación|estándar|límite|límites|tolerancia|mínimo|máximo|mediana|\
    deviazione|tolleranza|minimo|massimo|média|desvio|tolerância|\
    gemiddelde|standaardafwijking|afwijking|grenswaarde|ondergrens|bovengrens|tolerantie|\
    medelvärde|medel|standardavvikelse|avvikelse|gräns|tolerans|gjennomsnitt|gennemsnit|\
    średnia|odchylenie|tolerancja";

/// What an export says of itself above its readings.
pub const PARTICULARS: &str = "batch|order|lot|customer|gauge|probe|serial|serial number|serial no|operator|inspector|file|\
    program|profile|date|time|page|job|report|calibration|drawing|supplier|material|coating|standard|class|unit|units|model|\
    name|zero|comment|remark|\
    charge|auftrag|los|kunde|gerät|messgerät|sonde|prüfer|datei|datum|uhrzeit|zeit|seite|bericht|zeichnung|lieferant|\
    werkstoff|norm|einheit|bemerkung|kommentar|\
    commande|client|appareil|opérateur|heure|unité|remarque|pedido|cliente|operador|fecha|hora|unidad|comentario";

/// Columns that say when.
pub const MOMENTS: &str =
    "date|time|timestamp|date time|datum|uhrzeit|zeit|zeitstempel|heure|fecha|hora|data|ora";

/// Columns that number or name, and do not measure.
pub const IDENTITIES: &str = "no|nr|number|id|#|№|serial|item|article|part|piece|pc|bolt|nut|washer|screw|stud|rod|sample|\
    specimen|position|pos|row|line|index|idx|test|lot|batch|heat|cast|charge|order|job|drawing|place|location|probe|gauge|\
    operator|inspector|measurement no|reading no|article no|part no|sample no|serial no|heat no|batch no|lot no|order no|\
    basket|rack|barrel|tank|line no|po|coil|code|tag|\
    nummer|lfd nr|lfd|laufende nummer|teil|stück|schraube|mutter|scheibe|probe nr|teil nr|messung nr|muster|zeile|los|\
    auftrag|schmelze|korb|prüfer|ort|stelle|messstelle|\
    numéro|pièce|vis|écrou|rondelle|échantillon|repère|ligne|número|núm|pieza|tornillo|tuerca|arandela|muestra|\
    pezzo|vite|dado|rondella|campione|stuk|bout|moer|ring|monster|skruv|mutter";

/// Columns that measure something else than a coat.
pub const OTHERS: &str = "temperature|temp|humidity|rh|pressure|hardness|hrc|hv|hb|hrb|torque|force|load|weight|mass|length|\
    diameter|dia|width|height|depth|roughness|gloss|ph|time|duration|seconds|minutes|speed|current|voltage|signal|frequency|\
    density|angle|age|year|price|quantity|qty|size|temperatur|feuchte|luftfeuchte|luftfeuchtigkeit|druck|härte|drehmoment|\
    kraft|gewicht|masse|länge|durchmesser|breite|höhe|tiefe|rauheit|zeit|dauer|menge|größe|\
    température|humidité|dureté|couple|poids|longueur|diamètre|temperatura|humedad|dureza|peso|longitud|diámetro";

/// Columns that hold the thickness of a coat by their name.
pub const THICKNESSES: &str = "thickness|thicknesses|coat|coating|zinc|plating|galvanizing|dft|\
    dicke|schichtdicke|schicht|zinkschicht|überzug|überzugsdicke|zink|auflage|zinkauflage|épaisseur|revêtement|\
    espesor|recubrimiento|capa|spessore|rivestimento|espessura|dikte|laagdikte|laag|tjocklek|skikt|tykkelse|grubość";

/// Columns that hold readings by their name, unless another is named better.
pub const READINGS: &str = "reading|readings|value|values|measurement|measurements|measured|actual|ist|istwert|wert|werte|messwert|messwerte|\
    messung|messungen|einzelwert|anzeige|mesure|mesures|valeur|valeurs|lectura|lecturas|valor|medida|medición|misura|\
    lettura|valore|leitura|meting|waarde|mätning|värde|måling|pomiar|wynik";

/// Names of columns that hold readings side by side, once they are numbered: `R1`, `Spot 2`.
pub const NUMBERED: &str = "r|m|x|d|p|pt|spot|point|face|flat|side|end|location|loc|place|position|pos|test|\
    mp|messpunkt|punkt|seite|fläche|stelle|messstelle|punto|";

/// Names of columns that hold readings side by side: places on an article, or their order.
pub const PLACES: &str = "first|second|third|fourth|fifth|head|shank|thread|top|bottom|left|right|middle|centre|center|\
    end|ends|bolt end|end of bolt|end of the bolt|end face|flat|flats|head flat|head flats|nut flat|nut flats|\
    top of head|face|faces|head face|bearing face|washer face|edge|rim|\
    kopf|schaft|gewinde|oben|unten|links|rechts|mitte|ende|stirn|stirnfläche|flanke|flanken|schlüsselfläche|\
    schlüsselflächen|auflagefläche|kopffläche|scheibenfläche|rand|kante";

/// Words that a gauge or a person writes in the place of a reading.
pub const NO_READING: &str = "bare|ol|o l|over|overload|overrange|low|under|underrange|inf|infinity|err|error|fail|failed|\
    missing|lost|none|nil|void|nan|invalid|blank|rust|rusty|uncoated|unreadable|\
    fehler|überlauf|blank|kein zink|keine|rost|fehlt|nu|manque|erreur|desnudo|falta";

/// Lines that give the mean of readings, and no limit.
pub const MEANS: &str =
    "mean|average|avg|ave|x̄|x̅|ø|mittel|mittelwert|durchschnitt|moyenne|media|promedio|gemiddelde|medelvärde";

/// Lines that give how many readings there are.
pub const COUNTS: &str =
    "n|count|no of readings|number of readings|readings taken|anzahl|anzahl messwerte|messwerte gesamt";

/// Columns that name articles, and on which articles may have been measured.
pub const ARTICLES: &str = "bolt|nut|washer|screw|stud|rod|schraube|mutter|scheibe|vis|écrou|rondelle|tornillo|tuerca|\
    arandela|vite|dado|rondella|bout|moer|ring|skruv";
