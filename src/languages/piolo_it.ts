<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="it" sourcelanguage="en">
<context>
    <name></name>
    <message id="accents.from-meter">
        <source>Follow the meter</source>
        <translation>Secondo il metro</translation>
    </message>
    <message id="accents.title">
        <source>Accents, beat by beat</source>
        <translation>Accenti, movimento per movimento</translation>
    </message>
    <message id="beat.dotted-half">
        <source>dotted half</source>
        <translation>metà puntata</translation>
    </message>
    <message id="beat.dotted-quarter">
        <source>dotted quarter</source>
        <translation>quarto puntato</translation>
    </message>
    <message id="beat.eighth">
        <source>eighth</source>
        <translation>ottavo</translation>
    </message>
    <message id="beat.half">
        <source>half</source>
        <translation>metà</translation>
    </message>
    <message id="beat.quarter">
        <source>quarter</source>
        <translation>quarto</translation>
    </message>
    <message id="beat.tempo">
        <source>%1 = %2</source>
        <translation>%1 = %2</translation>
    </message>
    <message id="breaks.bar">
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message id="breaks.by-bar">
        <source>by bar</source>
        <translation>per battuta</translation>
    </message>
    <message id="breaks.by-bar-and-beat">
        <source>by bar and beat</source>
        <translation>per battuta e movimento</translation>
    </message>
    <message id="breaks.by-missed-bar">
        <source>by bar, only bars with misses</source>
        <translation>per battuta, solo battute con errori</translation>
    </message>
    <message id="breaks.by-worst-bar" numerus="yes">
        <source>by bar, the %n worst</source>
        <translation>
            <numerusform>per battuta, le %n peggiori</numerusform>
            <numerusform>per battuta, le %n peggiori</numerusform>
        </translation>
    </message>
    <message id="breaks.counted">
        <source>%1 in %2, %3</source>
        <translation>%1 in %2, %3</translation>
    </message>
    <message id="breaks.counted-elsewhere">
        <source>%1; the place of %2 is unknown</source>
        <translation>%1; di %2 non si conosce il punto</translation>
    </message>
    <message id="breaks.drill">
        <source>Drill it</source>
        <translation>Studia</translation>
    </message>
    <message id="breaks.empty">
        <source>Your misses appear here, by bar and beat.</source>
        <translation>Qui compaiono i tuoi errori, per battuta e movimento.</translation>
    </message>
    <message id="breaks.in-parts">
        <source>Split in %1</source>
        <translation>Dividi in %1</translation>
    </message>
    <message id="breaks.in-parts.hint">
        <source>Makes a passage of each part; a part ends on the beat where the next one begins</source>
        <translation>Crea un passaggio da ogni parte; una parte finisce sul movimento con cui comincia la successiva</translation>
    </message>
    <message id="breaks.last-bar-first">
        <source>Last bar first</source>
        <translation>Prima l&apos;ultima battuta</translation>
    </message>
    <message id="breaks.last-bar-first.hint">
        <source>Makes passages of the last bar, the last two bars, and so on</source>
        <translation>Crea passaggi dall&apos;ultima battuta, dalle ultime due e così via</translation>
    </message>
    <message id="breaks.made">
        <source>Created “%1”</source>
        <translation>Creato «%1»</translation>
    </message>
    <message id="breaks.made-of">
        <source>New passage: %1</source>
        <translation>Nuovo passaggio: %1</translation>
    </message>
    <message id="breaks.made-parts">
        <source>Created %1, starting with “%2”</source>
        <translation>Creati %1, il primo è «%2»</translation>
    </message>
    <message id="breaks.misses" numerus="yes">
        <source>%n misses</source>
        <translation>
            <numerusform>%n errore</numerusform>
            <numerusform>%n errori</numerusform>
        </translation>
    </message>
    <message id="breaks.no-miss">
        <source>No misses so far.</source>
        <translation>Finora nessun errore.</translation>
    </message>
    <message id="breaks.none-counted">
        <source>No run has counted so far.</source>
        <translation>Finora nessuna ripetizione è stata contata.</translation>
    </message>
    <message id="breaks.not-played">
        <source>Not played yet.</source>
        <translation>Non ancora suonato.</translation>
    </message>
    <message id="breaks.reason">
        <source>Most misses happen there.</source>
        <translation>Lì si concentra la maggior parte degli errori.</translation>
    </message>
    <message id="breaks.reason-run-up">
        <source>Most misses happen there; one bar of run-up is included.</source>
        <translation>Lì si concentra la maggior parte degli errori; è compresa una battuta di rincorsa.</translation>
    </message>
    <message id="breaks.title">
        <source>Where it breaks</source>
        <translation>Dove si inceppa</translation>
    </message>
    <message id="breaks.where">
        <source>Where “%1” breaks</source>
        <translation>Dove si inceppa «%1»</translation>
    </message>
    <message id="care.authority">
        <source>Your teacher, your doctor and the rules where you practise come first.</source>
        <translation>Vengono prima il tuo insegnante, il tuo medico e le regole del luogo dove studi.</translation>
    </message>
    <message id="care.gradually">
        <source>Increase your minutes gradually: a little more each week, no sudden jumps, and a break well before you need one.</source>
        <translation>Aumenta i minuti di studio poco per volta: ogni settimana un po&apos; di più, niente salti, e una pausa ben prima di averne bisogno.</translation>
    </message>
    <message id="care.headphones">
        <source>Keep headphones low: your instrument is loud already, and Piolo does not know how loud it is at your ear.</source>
        <translation>Tieni basse le cuffie: il tuo strumento suona già forte, e Piolo non sa quanto sia forte al tuo orecchio.</translation>
    </message>
    <message id="care.pain">
        <source>If you feel pain, tingling or numbness, stop and see a professional before you play on.</source>
        <translation>Se senti dolore, formicolio o intorpidimento, fermati e rivolgiti a uno specialista prima di riprendere.</translation>
    </message>
    <message id="care.rest">
        <source>Rest your lip and your ears, and also the thumb that carries the instrument.</source>
        <translation>Fai riposare il labbro e le orecchie, e anche il pollice che regge lo strumento.</translation>
    </message>
    <message id="care.title">
        <source>Take care of yourself</source>
        <translation>Abbi cura di te</translation>
    </message>
    <message id="click-form.bars-off">
        <source>Bars without</source>
        <translation>Battute senza</translation>
    </message>
    <message id="click-form.bars-on">
        <source>Bars with click</source>
        <translation>Battute con clic</translation>
    </message>
    <message id="click-form.breath-below">
        <source>Only below</source>
        <translation>Solo sotto</translation>
    </message>
    <message id="click-form.breath-below.any">
        <source>any tempo</source>
        <translation>ogni tempo</translation>
    </message>
    <message id="click-form.breaths">
        <source>Wait for breath before</source>
        <translation>Respiro prima di</translation>
    </message>
    <message id="click-form.breaths.example">
        <source>43, 45:3, 47:1+2</source>
        <translation>43, 45:3, 47:1+2</translation>
    </message>
    <message id="click-form.change">
        <source>Change where the click sounds</source>
        <translation>Cambia dove suona il clic</translation>
    </message>
    <message id="click-form.hint">
        <source>The bars go on while the click is silent. For a breath, enter a bar or bar:beat, then + and the beats to wait. Another random seed picks other silent bars and beats.</source>
        <translation>Le battute continuano mentre il clic tace. Per un punto di respiro scrivi battuta o battuta:movimento, poi + e i movimenti di attesa. Con un altro numero casuale tacciono altre battute e altri movimenti.</translation>
    </message>
    <message id="click-form.lost-beats">
        <source>Silent beats, %</source>
        <translation>Movimenti muti, %</translation>
    </message>
    <message id="click-form.on">
        <source>Click on</source>
        <translation>Clic su</translation>
    </message>
    <message id="click-form.seed">
        <source>Random seed</source>
        <translation>Numero casuale</translation>
    </message>
    <message id="click-form.silent-bars">
        <source>Silent bars, %</source>
        <translation>Battute mute, %</translation>
    </message>
    <message id="click-form.straight">
        <source>straight</source>
        <translation>dritto</translation>
    </message>
    <message id="click-form.swing">
        <source>Swing</source>
        <translation>Swing</translation>
    </message>
    <message id="click-form.swung">
        <source>Swung notes</source>
        <translation>Note in swing</translation>
    </message>
    <message id="click.accents-by-hand">
        <source>custom accents</source>
        <translation>accenti personalizzati</translation>
    </message>
    <message id="click.bars-in-turn">
        <source>alternating: %1 bars with the click, %2 without</source>
        <translation>battute alternate: %1 con il clic, %2 senza</translation>
    </message>
    <message id="click.beats-left-out">
        <source>%1 of 100 beats silent</source>
        <translation>movimenti muti: %1 su 100</translation>
    </message>
    <message id="click.breath-at-places" numerus="yes">
        <source>waits for breath at %n places</source>
        <translation>
            <numerusform>aspetta il respiro in %n punto</numerusform>
            <numerusform>aspetta il respiro in %n punti</numerusform>
        </translation>
    </message>
    <message id="click.breath-below">
        <source>%1 below %2</source>
        <translation>%1, solo sotto %2</translation>
    </message>
    <message id="click.down">
        <source>Down to %1</source>
        <translation>Giù a %1</translation>
    </message>
    <message id="click.downbeats">
        <source>downbeats only</source>
        <translation>solo il battere</translation>
    </message>
    <message id="click.eighths">
        <source>eighths</source>
        <translation>ottavi</translation>
    </message>
    <message id="click.every-beat">
        <source>every beat</source>
        <translation>ogni movimento</translation>
    </message>
    <message id="click.half-strong">
        <source>half strong</source>
        <translation>mezzo forte</translation>
    </message>
    <message id="click.is">
        <source>%1 =</source>
        <translation>%1 =</translation>
    </message>
    <message id="click.keep">
        <source>Make a passage of this</source>
        <translation>Fanne un passaggio</translation>
    </message>
    <message id="click.not-logged">
        <source>Nothing here is logged</source>
        <translation>Niente di questo va nel diario</translation>
    </message>
    <message id="click.now">
        <source>Click %1</source>
        <translation>Clic %1</translation>
    </message>
    <message id="click.off-beats">
        <source>off-beats only</source>
        <translation>solo contrattempi</translation>
    </message>
    <message id="click.plain">
        <source>plain</source>
        <translation>debole</translation>
    </message>
    <message id="click.silent">
        <source>silent</source>
        <translation>muto</translation>
    </message>
    <message id="click.silent-bars">
        <source>%1 of 100 bars silent</source>
        <translation>battute mute: %1 su 100</translation>
    </message>
    <message id="click.sixteenths">
        <source>sixteenths</source>
        <translation>sedicesimi</translation>
    </message>
    <message id="click.strong">
        <source>strong</source>
        <translation>forte</translation>
    </message>
    <message id="click.swing">
        <source>swing %1 in %2</source>
        <translation>swing %1 (%2)</translation>
    </message>
    <message id="click.tap">
        <source>Tap</source>
        <translation>Batti</translation>
    </message>
    <message id="click.tempo">
        <source>Tempo, in beats per minute</source>
        <translation>Tempo in movimenti al minuto</translation>
    </message>
    <message id="click.title">
        <source>Just a click</source>
        <translation>Solo il clic</translation>
    </message>
    <message id="click.two-and-four">
        <source>2 and 4 only</source>
        <translation>solo 2 e 4</translation>
    </message>
    <message id="click.up">
        <source>Up to %1</source>
        <translation>Su a %1</translation>
    </message>
    <message id="click.without-bars">
        <source>without bars</source>
        <translation>senza battute</translation>
    </message>
    <message id="closing.cancel">
        <source>Cancel</source>
        <translation>Annulla</translation>
    </message>
    <message id="closing.confirm">
        <source>Close</source>
        <translation>Chiudi</translation>
    </message>
    <message id="closing.title">
        <source>Not everything is saved yet</source>
        <translation>Non è ancora tutto salvato</translation>
    </message>
    <message id="closing.unsaved" numerus="yes">
        <source>%n marks are not in the practice folder yet. If you close the window now, they are kept on this machine and saved at the next start.</source>
        <translation>
            <numerusform>%n segno non è ancora nella cartella di studio. Se chiudi ora la finestra, resta su questo computer e viene salvato al prossimo avvio.</numerusform>
            <numerusform>%n segni non sono ancora nella cartella di studio. Se chiudi ora la finestra, restano su questo computer e vengono salvati al prossimo avvio.</numerusform>
        </translation>
    </message>
    <message id="curve.all">
        <source>All</source>
        <translation>Tutto</translation>
    </message>
    <message id="curve.along">
        <source>Axis</source>
        <translation>Asse</translation>
    </message>
    <message id="curve.by-day">
        <source>Tempo by day</source>
        <translation>Tempo per giorno</translation>
    </message>
    <message id="curve.by-run">
        <source>Tempo by run</source>
        <translation>Tempo per ripetizione</translation>
    </message>
    <message id="curve.closer">
        <source>Zoom in</source>
        <translation>Ingrandisci</translation>
    </message>
    <message id="curve.days">
        <source>days</source>
        <translation>giorni</translation>
    </message>
    <message id="curve.due">
        <source>due</source>
        <translation>scadenza</translation>
    </message>
    <message id="curve.empty">
        <source>The curve starts with your first run.</source>
        <translation>La curva comincia con la tua prima ripetizione.</translation>
    </message>
    <message id="curve.farther">
        <source>Zoom out</source>
        <translation>Riduci</translation>
    </message>
    <message id="curve.file">
        <source>File name (.svg, .png, .pdf or .csv)</source>
        <translation>Nome del file (.svg, .png, .pdf o .csv)</translation>
    </message>
    <message id="curve.leave">
        <source>Cancel</source>
        <translation>Annulla</translation>
    </message>
    <message id="curve.none">
        <source>No curve yet</source>
        <translation>Ancora nessuna curva</translation>
    </message>
    <message id="curve.point.clean">
        <source>clean</source>
        <translation>pulita</translation>
    </message>
    <message id="curve.point.clean-try">
        <source>a clean try at the target</source>
        <translation>una prova pulita al tempo obiettivo</translation>
    </message>
    <message id="curve.point.day">
        <source>%1: %2, at %3, %4</source>
        <translation>%1: %2, a %3, %4</translation>
    </message>
    <message id="curve.point.heard">
        <source>%1 at %2 of %3</source>
        <translation>%1 a %2 di %3</translation>
    </message>
    <message id="curve.point.missed">
        <source>missed</source>
        <translation>con errore</translation>
    </message>
    <message id="curve.point.missed-try">
        <source>a missed try at the target</source>
        <translation>una prova con errore al tempo obiettivo</translation>
    </message>
    <message id="curve.point.of-clean">
        <source>%1 of %2 clean</source>
        <translation>%1 di %2 pulite</translation>
    </message>
    <message id="curve.point.run">
        <source>%1: run %2, %3, at %4, %5</source>
        <translation>%1: ripetizione %2, %3, a %4, %5</translation>
    </message>
    <message id="curve.point.secure">
        <source>secure</source>
        <translation>sicuro</translation>
    </message>
    <message id="curve.runs">
        <source>runs</source>
        <translation>ripetizioni</translation>
    </message>
    <message id="curve.save">
        <source>Save…</source>
        <translation>Salva…</translation>
    </message>
    <message id="curve.save-file">
        <source>Save</source>
        <translation>Salva</translation>
    </message>
    <message id="curve.saved">
        <source>saved as %1</source>
        <translation>salvato come %1</translation>
    </message>
    <message id="curve.spoken">
        <source>Tempo curves: %1</source>
        <translation>Curve del tempo: %1</translation>
    </message>
    <message id="curve.spoken.keys">
        <source>Plus and Minus zoom. Left and Right scroll; with Shift they go from run to run. Up and Down change the passage.</source>
        <translation>Più e Meno ingrandiscono e riducono. Freccia sinistra e destra scorrono; con Maiusc vanno da una ripetizione all&apos;altra. Freccia su e giù cambiano passaggio.</translation>
    </message>
    <message id="curve.target">
        <source>target</source>
        <translation>obiettivo</translation>
    </message>
    <message id="curve.tempo">
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message id="difference.accents">
        <source>accents</source>
        <translation>accenti</translation>
    </message>
    <message id="difference.articulation">
        <source>articulation</source>
        <translation>articolazione</translation>
    </message>
    <message id="difference.bars">
        <source>bars</source>
        <translation>battute</translation>
    </message>
    <message id="difference.bars-off">
        <source>bars without the click</source>
        <translation>battute senza clic</translation>
    </message>
    <message id="difference.bars-on">
        <source>bars with the click</source>
        <translation>battute con il clic</translation>
    </message>
    <message id="difference.beat">
        <source>beat</source>
        <translation>movimento</translation>
    </message>
    <message id="difference.beats-left-out">
        <source>silent beats per hundred</source>
        <translation>movimenti muti su cento</translation>
    </message>
    <message id="difference.breath">
        <source>beats of breath</source>
        <translation>movimenti di respiro</translation>
    </message>
    <message id="difference.breath-below">
        <source>waits below</source>
        <translation>respiro solo sotto</translation>
    </message>
    <message id="difference.breaths">
        <source>waits for breath</source>
        <translation>punti di respiro</translation>
    </message>
    <message id="difference.change">
        <source>%1: %2 → %3</source>
        <translation>%1: %2 → %3</translation>
    </message>
    <message id="difference.clean-runs">
        <source>clean runs</source>
        <translation>ripetizioni pulite</translation>
    </message>
    <message id="difference.click-on">
        <source>click on</source>
        <translation>clic su</translation>
    </message>
    <message id="difference.climb">
        <source>climb</source>
        <translation>salita</translation>
    </message>
    <message id="difference.composer">
        <source>composer</source>
        <translation>compositore</translation>
    </message>
    <message id="difference.count-in">
        <source>count-in bars</source>
        <translation>battute a vuoto</translation>
    </message>
    <message id="difference.differs">
        <source>different</source>
        <translation>diverso</translation>
    </message>
    <message id="difference.drop">
        <source>drop</source>
        <translation>discesa</translation>
    </message>
    <message id="difference.due">
        <source>due date</source>
        <translation>scadenza</translation>
    </message>
    <message id="difference.fingering">
        <source>fingering</source>
        <translation>diteggiatura</translation>
    </message>
    <message id="difference.first-bar">
        <source>first bar</source>
        <translation>prima battuta</translation>
    </message>
    <message id="difference.floor">
        <source>floor</source>
        <translation>minimo</translation>
    </message>
    <message id="difference.gentle">
        <source>gentle near the target</source>
        <translation>dolce vicino all&apos;obiettivo</translation>
    </message>
    <message id="difference.group">
        <source>notes per group</source>
        <translation>note per gruppo</translation>
    </message>
    <message id="difference.groups">
        <source>groups</source>
        <translation>gruppi</translation>
    </message>
    <message id="difference.instrument">
        <source>instrument</source>
        <translation>strumento</translation>
    </message>
    <message id="difference.key">
        <source>key</source>
        <translation>tonalità</translation>
    </message>
    <message id="difference.landing">
        <source>landing note</source>
        <translation>nota d&apos;arrivo</translation>
    </message>
    <message id="difference.meter">
        <source>meter</source>
        <translation>metro</translation>
    </message>
    <message id="difference.name">
        <source>name</source>
        <translation>nome</translation>
    </message>
    <message id="difference.new">
        <source>new</source>
        <translation>nuovo</translation>
    </message>
    <message id="difference.none">
        <source>none</source>
        <translation>vuoto</translation>
    </message>
    <message id="difference.notation">
        <source>printed notes</source>
        <translation>note stampate</translation>
    </message>
    <message id="difference.notes">
        <source>notes</source>
        <translation>note</translation>
    </message>
    <message id="difference.notes-per-beat">
        <source>notes per beat</source>
        <translation>note per movimento</translation>
    </message>
    <message id="difference.origin">
        <source>made from passage</source>
        <translation>ricavato dal passaggio</translation>
    </message>
    <message id="difference.pattern">
        <source>order of notes</source>
        <translation>ordine delle note</translation>
    </message>
    <message id="difference.pick-up">
        <source>pick-up</source>
        <translation>anacrusi</translation>
    </message>
    <message id="difference.piece">
        <source>piece</source>
        <translation>brano</translation>
    </message>
    <message id="difference.range">
        <source>range</source>
        <translation>estensione</translation>
    </message>
    <message id="difference.removed">
        <source>removed here</source>
        <translation>rimosso qui</translation>
    </message>
    <message id="difference.rhythm">
        <source>rhythm</source>
        <translation>ritmo</translation>
    </message>
    <message id="difference.same">
        <source>the same</source>
        <translation>uguale</translation>
    </message>
    <message id="difference.scale">
        <source>scale</source>
        <translation>scala</translation>
    </message>
    <message id="difference.scale-kind">
        <source>kind of scale</source>
        <translation>tipo di scala</translation>
    </message>
    <message id="difference.seed">
        <source>random seed</source>
        <translation>numero casuale</translation>
    </message>
    <message id="difference.silent-bars">
        <source>silent bars per hundred</source>
        <translation>battute mute su cento</translation>
    </message>
    <message id="difference.start">
        <source>start</source>
        <translation>partenza</translation>
    </message>
    <message id="difference.step">
        <source>steps in</source>
        <translation>passi in</translation>
    </message>
    <message id="difference.subdivision">
        <source>pulses per beat</source>
        <translation>note per movimento</translation>
    </message>
    <message id="difference.swing">
        <source>swing</source>
        <translation>swing</translation>
    </message>
    <message id="difference.swung">
        <source>swung notes</source>
        <translation>note in swing</translation>
    </message>
    <message id="difference.target">
        <source>target</source>
        <translation>obiettivo</translation>
    </message>
    <message id="difference.tempo">
        <source>tempo</source>
        <translation>tempo</translation>
    </message>
    <message id="difference.transposition">
        <source>transposition in semitones</source>
        <translation>trasposizione in semitoni</translation>
    </message>
    <message id="drill.articulation">
        <source>Articulation</source>
        <translation>Articolazione</translation>
    </message>
    <message id="drill.aside.note">
        <source>aside: changes nothing</source>
        <translation>a parte: non cambia nulla</translation>
    </message>
    <message id="drill.beat.bar">
        <source>bar %1</source>
        <translation>battuta %1</translation>
    </message>
    <message id="drill.beat.breathe">
        <source>breathe</source>
        <translation>respira</translation>
    </message>
    <message id="drill.beat.count-in">
        <source>count-in</source>
        <translation>a vuoto</translation>
    </message>
    <message id="drill.beat.counted">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="drill.beat.of">
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message id="drill.beat.pick-up">
        <source>pick-up</source>
        <translation>anacrusi</translation>
    </message>
    <message id="drill.best">
        <source>Best: %1</source>
        <translation>Record: %1</translation>
    </message>
    <message id="drill.best.item">
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message id="drill.by-hand">
        <source>set by hand, from the next run</source>
        <translation>a mano, dalla prossima ripetizione</translation>
    </message>
    <message id="drill.choose-passage">
        <source>Choose a passage first.</source>
        <translation>Prima scegli un passaggio.</translation>
    </message>
    <message id="drill.count-in">
        <source>%1-bar count-in</source>
        <translation>%1 battute a vuoto</translation>
    </message>
    <message id="drill.curve.spoken">
        <source>Tempo curve for the last 14 days, target %1</source>
        <translation>Curva del tempo degli ultimi 14 giorni, obiettivo %1</translation>
    </message>
    <message id="drill.edit">
        <source>Edit passage</source>
        <translation>Modifica passaggio</translation>
    </message>
    <message id="drill.faster">
        <source>Faster</source>
        <translation>Accelera</translation>
    </message>
    <message id="drill.felt-as">
        <source>felt as %1</source>
        <translation>sentito: %1</translation>
    </message>
    <message id="drill.felt-beat">
        <source>Felt beat</source>
        <translation>Movimento sentito</translation>
    </message>
    <message id="drill.find-tempo">
        <source>Find your tempo, from %1 down</source>
        <translation>Trova il tempo da %1</translation>
    </message>
    <message id="drill.finding">
        <source>Finding your tempo, from %1 down.</source>
        <translation>Ricerca del tuo tempo, da %1 in giù.</translation>
    </message>
    <message id="drill.found">
        <source>Found today: %1, from %2 down.</source>
        <translation>Trovato oggi: %1, partendo da %2.</translation>
    </message>
    <message id="drill.half-tempo">
        <source>At half tempo, %1</source>
        <translation>Metà tempo, %1</translation>
    </message>
    <message id="drill.hear">
        <source>Hear it first</source>
        <translation>Prima ascolta</translation>
    </message>
    <message id="drill.hear-with-click">
        <source>with the click</source>
        <translation>con il clic</translation>
    </message>
    <message id="drill.hear-with-click.hint">
        <source>Hear it with the click</source>
        <translation>Ascolta con il clic</translation>
    </message>
    <message id="drill.how-to-play">
        <source>How to play it</source>
        <translation>Come suonarlo</translation>
    </message>
    <message id="drill.in-context">
        <source>In context</source>
        <translation>Nel contesto</translation>
    </message>
    <message id="drill.in-context.note">
        <source>in context: changes nothing</source>
        <translation>nel contesto: non cambia nulla</translation>
    </message>
    <message id="drill.new-day">
        <source>a new day: you left off at %1</source>
        <translation>nuovo giorno: eri a %1</translation>
    </message>
    <message id="drill.next">
        <source>Next passage</source>
        <translation>Prossimo passaggio</translation>
    </message>
    <message id="drill.next-scale">
        <source>Next scale</source>
        <translation>Prossima scala</translation>
    </message>
    <message id="drill.no-count-in">
        <source>no count-in</source>
        <translation>senza battute a vuoto</translation>
    </message>
    <message id="drill.one-bar-count-in">
        <source>one-bar count-in</source>
        <translation>battuta a vuoto</translation>
    </message>
    <message id="drill.only-heard">
        <source>%1 · just listening: nothing counts</source>
        <translation>%1 · solo ascolto: non conta</translation>
    </message>
    <message id="drill.play-now">
        <source>Play it another way</source>
        <translation>Suona in altro modo</translation>
    </message>
    <message id="drill.rhythm">
        <source>Rhythm</source>
        <translation>Ritmo</translation>
    </message>
    <message id="drill.sitting" numerus="yes">
        <source>%n runs: %1</source>
        <translation>
            <numerusform>%n ripetizione: %1</numerusform>
            <numerusform>%n ripetizioni: %1</numerusform>
        </translation>
    </message>
    <message id="drill.sitting.to-log">
        <source>%1; opens the log</source>
        <translation>%1; apre il diario</translation>
    </message>
    <message id="drill.sitting.where">
        <source>%1 in %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message id="drill.slower">
        <source>Slower</source>
        <translation>Rallenta</translation>
    </message>
    <message id="drill.start">
        <source>Start</source>
        <translation>Inizia</translation>
    </message>
    <message id="drill.stop-listening">
        <source>Stop listening</source>
        <translation>Ferma l&apos;ascolto</translation>
    </message>
    <message id="drill.streak.spoken">
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message id="drill.summary">
        <source>%1 · %2 · %3 · %4</source>
        <translation>%1 · %2 · %3 · %4</translation>
    </message>
    <message id="drill.take-back">
        <source>Take back</source>
        <translation>Annulla</translation>
    </message>
    <message id="drill.target">
        <source>target %1 ↑</source>
        <translation>obiettivo %1 ↑</translation>
    </message>
    <message id="drill.to-passages">
        <source>Go to passages</source>
        <translation>Vai ai passaggi</translation>
    </message>
    <message id="drill.try">
        <source>Try once at %1</source>
        <translation>Prova a %1</translation>
    </message>
    <message id="drill.try.note">
        <source>a try: changes nothing</source>
        <translation>una prova: non cambia nulla</translation>
    </message>
    <message id="drill.verdict.clean">
        <source>Clean</source>
        <translation>Pulita</translation>
    </message>
    <message id="drill.verdict.clean-up">
        <source>Clean: up to %1</source>
        <translation>Pulita: sali a %1</translation>
    </message>
    <message id="drill.verdict.found">
        <source>Found: %1</source>
        <translation>Trovato: %1</translation>
    </message>
    <message id="drill.verdict.missed">
        <source>Missed</source>
        <translation>Errore</translation>
    </message>
    <message id="drill.verdict.nothing">
        <source>Nothing to take back</source>
        <translation>Nulla da annullare</translation>
    </message>
    <message id="drill.verdict.put-back">
        <source>Put back</source>
        <translation>Ripristinato</translation>
    </message>
    <message id="drill.verdict.secure">
        <source>Secure at %1</source>
        <translation>Sicuro a %1</translation>
    </message>
    <message id="drill.verdict.taken-back">
        <source>Taken back</source>
        <translation>Annullato</translation>
    </message>
    <message id="drill.way-back">
        <source>Back to %1</source>
        <translation>Torna a %1</translation>
    </message>
    <message id="drill.without-click">
        <source>Without the click</source>
        <translation>Senza clic</translation>
    </message>
    <message id="drill.without-click.note">
        <source>without the click: changes nothing</source>
        <translation>senza clic: non cambia nulla</translation>
    </message>
    <message id="fault.E101">
        <source>is not a verb; write %1, or see piolo --help</source>
        <translation>non è un comando; scrivi %1, o vedi piolo --help</translation>
    </message>
    <message id="fault.E102">
        <source>is not a valid option; see %1 --help</source>
        <translation>non è un&apos;opzione valida; vedi %1 --help</translation>
    </message>
    <message id="fault.E103">
        <source>is missing; add it, for example %1</source>
        <translation>manca; aggiungilo, per esempio %1</translation>
    </message>
    <message id="fault.E104">
        <source>needs a value; write one after it, for example %1</source>
        <translation>richiede un valore; scrivine uno dopo, per esempio %1</translation>
    </message>
    <message id="fault.E105">
        <source>&quot;%1&quot; is not a whole number; write digits only, for example %2</source>
        <translation>«%1» non è un numero intero; scrivi solo cifre, per esempio %2</translation>
    </message>
    <message id="fault.E106">
        <source>&quot;%1&quot; is not a valid tempo; write 10 to 400 with at most three decimals, for example 72.5</source>
        <translation>«%1» non è un tempo valido; scrivi da 10 a 400 con al massimo tre decimali, per esempio 72.5</translation>
    </message>
    <message id="fault.E107">
        <source>&quot;%1&quot; is not a valid meter; write 1 to 32 over 1, 2, 4, 8 or 16, for example 7/8</source>
        <translation>«%1» non è un metro valido; scrivi da 1 a 32 sopra 1, 2, 4, 8 o 16, per esempio 7/8</translation>
    </message>
    <message id="fault.E108">
        <source>&quot;%1&quot; is not a valid beat; write 1/2, 1/4, 3/8, 1/8 or 3/4</source>
        <translation>«%1» non è un movimento valido; scrivi 1/2, 1/4, 3/8, 1/8 o 3/4</translation>
    </message>
    <message id="fault.E109">
        <source>a bar of %2 does not divide into %1 beats; choose a shorter beat or another meter</source>
        <translation>una battuta di %2 non si divide in movimenti di %1; scegli un movimento più corto o un altro metro</translation>
    </message>
    <message id="fault.E110">
        <source>&quot;%1&quot; does not group a bar of %2; write groups that fill it and begin on beats, as 2+2+3 fills 7/8 in eighths</source>
        <translation>«%1» non divide in gruppi una battuta di %2; scrivi gruppi che la riempiono e cominciano sui movimenti, come 2+2+3 riempie 7/8 in ottavi</translation>
    </message>
    <message id="fault.E111">
        <source>&quot;%1&quot; is not a valid subdivision; write 1 to 8 pulses per beat</source>
        <translation>«%1» non è una suddivisione valida; scrivi da 1 a 8 note per movimento</translation>
    </message>
    <message id="fault.E112">
        <source>&quot;%1&quot; is not a click voice; choose %2</source>
        <translation>«%1» non è un suono del clic; scegli %2</translation>
    </message>
    <message id="fault.E113">
        <source>%1 is out of range; choose %2 to %3</source>
        <translation>%1 è fuori dai limiti; scegli da %2 a %3</translation>
    </message>
    <message id="fault.E114">
        <source>%1 is above the %2 of %3; lower the one or raise the other</source>
        <translation>%1 è sopra %3, che è %2; abbassa l&apos;uno o alza l&apos;altro</translation>
    </message>
    <message id="fault.E115">
        <source>&quot;%1&quot; is not a valid choice here; write %2</source>
        <translation>«%1» non è una scelta valida qui; scrivi %2</translation>
    </message>
    <message id="fault.E116">
        <source>&quot;%1&quot; is not a kind of file that can be written here; let the name end in %2</source>
        <translation>«%1» non è un tipo di file che si possa scrivere qui; il nome deve finire in %2</translation>
    </message>
    <message id="fault.E117">
        <source>no passage has the id or title &quot;%1&quot;; check the spelling and the folder</source>
        <translation>nessun passaggio ha il codice o il titolo «%1»; controlla l&apos;ortografia e la cartella</translation>
    </message>
    <message id="fault.E118">
        <source>&quot;%1&quot; is the title of more than one passage; give an id instead: %2</source>
        <translation>«%1» è il titolo di più passaggi; indica invece un codice: %2</translation>
    </message>
    <message id="fault.E119">
        <source>is one word too many; leave it out, or see %1 --help</source>
        <translation>è una parola di troppo; toglila, o vedi %1 --help</translation>
    </message>
    <message id="fault.E120">
        <source>&quot;%1&quot; does not give the accents of a bar of %2 beats; write strong, group, plain or silent for each beat, separated by commas</source>
        <translation>«%1» non indica gli accenti di una battuta di %2 movimenti; scrivi strong, group, plain o silent per ogni movimento, separati da virgole</translation>
    </message>
    <message id="fault.E121">
        <source>&quot;%1&quot; is not a valid swing; write long:short from 1:1 to 3:1, for example 2:1</source>
        <translation>«%1» non è uno swing valido; scrivi lunga:breve da 1:1 a 3:1, come 2:1</translation>
    </message>
    <message id="fault.E122">
        <source>the beat has no pairs of eighths or sixteenths to swing; divide it into an even number of them with --subdivision</source>
        <translation>il movimento non ha coppie di ottavi o sedicesimi per lo swing; dividilo con --subdivision in un numero pari</translation>
    </message>
    <message id="fault.E123">
        <source>&quot;%1&quot; does not give breath places in bars 1 to %2 of %3 beats; write BAR:BEAT:BEATS after the first beat, in order, for example 4:3:1,8:1:2</source>
        <translation>«%1» non indica punti di respiro nelle battute da 1 a %2 di %3 movimenti; scrivi BATTUTA:MOVIMENTO:MOVIMENTI dopo il primo movimento, in ordine, come 4:3:1,8:1:2</translation>
    </message>
    <message id="fault.E124">
        <source>a bar of one beat has no beat 2; count it in shorter beats with --beat</source>
        <translation>una battuta di un movimento non ha il secondo; contala in movimenti più corti con --beat</translation>
    </message>
    <message id="fault.E125">
        <source>%1 pages are more than the %2 that a picture holds; give a name that ends in .pdf</source>
        <translation>%1 pagine sono più delle %2 che un&apos;immagine contiene; dai un nome che finisce in .pdf</translation>
    </message>
    <message id="fault.E126">
        <source>&quot;%1&quot; is not a valid key; write a letter from A to G, with flat or sharp, for example &quot;E flat&quot;</source>
        <translation>«%1» non è una tonalità valida; scrivi una lettera da A a G, con flat o sharp, per esempio «E flat»</translation>
    </message>
    <message id="fault.E127">
        <source>&quot;%1&quot; is not a valid note; write a letter, its sharps or flats and the octave, for example Bb3 or F#6</source>
        <translation>«%1» non è una nota valida; scrivi una lettera, i suoi diesis o bemolli e l&apos;ottava, per esempio Bb3 o F#6</translation>
    </message>
    <message id="fault.E128">
        <source>%1 has no tonic from %2 to %3; give a wider range or another key</source>
        <translation>%1 non ha una tonica da %2 a %3; indica un&apos;estensione più ampia, o un&apos;altra tonalità</translation>
    </message>
    <message id="fault.E130">
        <source>&quot;%1&quot; is not a part of this score; write the number or the name of one of its %2 (piolo bars FILE lists them)</source>
        <translation>«%1» non è una parte di questa partitura; scrivi il numero o il nome di una delle sue %2 (piolo bars FILE le elenca)</translation>
    </message>
    <message id="fault.E131">
        <source>&quot;%1&quot; is not a bar of this part from there on; write a bar from %2 to %3, the earlier one first</source>
        <translation>«%1» da lì in poi non è una battuta di questa parte; scrivi una battuta da %2 a %3, prima la precedente</translation>
    </message>
    <message id="fault.E201">
        <source>&quot;%1&quot; is not a valid mark; write clean, miss, back, or tempo and a number</source>
        <translation>«%1» non è un segno valido; scrivi clean, miss, back, oppure tempo e un numero</translation>
    </message>
    <message id="fault.E202">
        <source>&quot;%1&quot; is not a valid tempo; write 10 to 400 with at most three decimals, for example tempo 72.5</source>
        <translation>«%1» non è un tempo valido; scrivi da 10 a 400 con al massimo tre decimali, per esempio tempo 72.5</translation>
    </message>
    <message id="fault.E203">
        <source>the line is not a JSON object; it is kept but not counted, so fix it by hand or leave it</source>
        <translation>la riga non è un oggetto JSON; viene conservata ma non contata, quindi correggila a mano o lasciala così</translation>
    </message>
    <message id="fault.E204">
        <source>the key &quot;%1&quot; is missing; the line is kept but not counted, so fix it by hand or leave it</source>
        <translation>manca la chiave «%1»; la riga viene conservata ma non contata, quindi correggila a mano o lasciala così</translation>
    </message>
    <message id="fault.E205">
        <source>the key &quot;%1&quot; has an impossible value[: %2]; the line is kept but not counted, so fix it by hand or leave it</source>
        <translation>la chiave «%1» ha un valore impossibile[: %2]; la riga viene conservata ma non contata, quindi correggila a mano o lasciala così</translation>
    </message>
    <message id="fault.E206">
        <source>the line is in a newer format[ (%1)]; it is kept but not counted, so use a newer Piolo</source>
        <translation>la riga è di un formato più recente[ (%1)]; viene conservata ma non contata, quindi usa un Piolo più recente</translation>
    </message>
    <message id="fault.E207">
        <source>&quot;%1&quot; is an unknown kind of fact; the line is kept but not counted, so use a newer Piolo</source>
        <translation>«%1» è un tipo di voce sconosciuto; la riga viene conservata ma non contata, quindi usa un Piolo più recente</translation>
    </message>
    <message id="fault.E208">
        <source>the last line was cut short; it is kept but not counted, so wait until the whole file has been copied</source>
        <translation>l&apos;ultima riga è tronca; viene conservata ma non contata, quindi aspetta che il file sia copiato per intero</translation>
    </message>
    <message id="fault.E209">
        <source>the id %1 is used for two different facts; only one of them is counted, so remove the wrong line by hand</source>
        <translation>il codice %1 è usato per due voci diverse; ne conta solo una, quindi elimina a mano la riga sbagliata</translation>
    </message>
    <message id="fault.E210">
        <source>the line is not UTF-8 text; it is kept but not counted, so fix it by hand or leave it</source>
        <translation>la riga non è testo UTF-8; viene conservata ma non contata, quindi correggila a mano o lasciala così</translation>
    </message>
    <message id="fault.E211">
        <source>the line is longer than 65536 bytes; it is not counted, so shorten it or remove it</source>
        <translation>la riga supera i 65536 byte; non viene contata, quindi accorciala o eliminala</translation>
    </message>
    <message id="fault.E212">
        <source>the id %1 is used here but not recorded anywhere; copy the journal files of all devices into the folder</source>
        <translation>il codice %1 è usato qui ma non è registrato da nessuna parte; copia nella cartella i file del diario di tutti i dispositivi</translation>
    </message>
    <message id="fault.E213">
        <source>this is not a WAV file with one channel in float32; give one that piolo click wrote</source>
        <translation>questo non è un file WAV a un canale in float32; indicane uno scritto da piolo click</translation>
    </message>
    <message id="fault.E214">
        <source>the line is not as it was written; it is kept but not counted, so restore it from a copy or remove its &quot;sum&quot;</source>
        <translation>la riga non è come fu scritta; viene conservata ma non contata, quindi ripristinala da una copia o elimina il suo &quot;sum&quot;</translation>
    </message>
    <message id="fault.E215">
        <source>facts dated in the future: %1, up to %2; if a clock was wrong, correct the dates in the practice log</source>
        <translation>voci con una data futura: %1, fino al %2; se un orologio era sbagliato, correggi le date nel diario di studio</translation>
    </message>
    <message id="fault.E216">
        <source>the file has more faults than are listed: %1; correct those above and check it again</source>
        <translation>il file ha più errori di quelli elencati: ancora %1; correggi quelli sopra e controllalo di nuovo</translation>
    </message>
    <message id="fault.E217">
        <source>the number %1 of device %2 is used for two facts; two programs wrote as the same device, so keep each device&apos;s own state directory to itself</source>
        <translation>il numero %1 del dispositivo %2 è usato per due voci; due programmi hanno scritto come lo stesso dispositivo, quindi lascia a ogni dispositivo la sua cartella di stato</translation>
    </message>
    <message id="fault.E221">
        <source>this is not a passage file, or it was cut short; nothing was imported, so have it sent again</source>
        <translation>questo non è un file di passaggi, o è tronco; non si è importato nulla, quindi fattelo rimandare</translation>
    </message>
    <message id="fault.E222">
        <source>the key &quot;%1&quot; is missing; nothing was imported, so fix the file by hand or have it sent again</source>
        <translation>manca la chiave «%1»; non si è importato nulla, quindi correggi il file a mano o fattelo rimandare</translation>
    </message>
    <message id="fault.E223">
        <source>the key &quot;%1&quot; has an impossible value[: %2]; nothing was imported, so fix the file by hand or have it sent again</source>
        <translation>la chiave «%1» ha un valore impossibile[: %2]; non si è importato nulla, quindi correggi il file a mano o fattelo rimandare</translation>
    </message>
    <message id="fault.E224">
        <source>the file is in a newer format[ (%1)]; nothing was imported, so use a newer Piolo</source>
        <translation>il file è di un formato più recente[ (%1)]; non si è importato nulla, quindi usa un Piolo più recente</translation>
    </message>
    <message id="fault.E225">
        <source>the id %1 appears here for the second time; nothing was imported, so remove one of the two by hand</source>
        <translation>il codice %1 compare qui per la seconda volta; non si è importato nulla, quindi elimina a mano uno dei due</translation>
    </message>
    <message id="fault.E226">
        <source>the passage &quot;%1&quot; belongs to a piece that is not in the file[ (%2)]; nothing was imported, so have it sent again with its piece</source>
        <translation>il passaggio «%1» appartiene a un brano che non è nel file[ (%2)]; non si è importato nulla, quindi fattelo rimandare con il suo brano</translation>
    </message>
    <message id="fault.E227">
        <source>this is more than a passage file can hold[ (%1)]; split it into several files, or shorten its names</source>
        <translation>è più di quanto contenga un file di passaggi[ (%1)]; dividilo in più file, o accorcia i nomi</translation>
    </message>
    <message id="fault.E241">
        <source>this is not a MusicXML score; save it as MusicXML in the program it was written with</source>
        <translation>questa non è una partitura MusicXML; salvala come MusicXML nel programma con cui è stata scritta</translation>
    </message>
    <message id="fault.E242">
        <source>the score is stored bar by bar across all parts (score-timewise); save it part by part (score-partwise)</source>
        <translation>la partitura è salvata battuta per battuta attraverso tutte le parti (score-timewise); salvala parte per parte (score-partwise)</translation>
    </message>
    <message id="fault.E243">
        <source>the XML is cut short or damaged here[ (%1)]; save the score again, or have it sent again</source>
        <translation>qui l&apos;XML si interrompe o è danneggiato[ (%1)]; salva di nuovo la partitura, o fattela rimandare</translation>
    </message>
    <message id="fault.E244">
        <source>the element &quot;%1&quot; has an impossible value[: %2]; save the score again, or fix it by hand</source>
        <translation>l&apos;elemento «%1» ha un valore impossibile[: %2]; salva di nuovo la partitura, o correggila a mano</translation>
    </message>
    <message id="fault.E245">
        <source>the element &quot;%1&quot; is missing[ in &quot;%2&quot;]; save the score again, or fix it by hand</source>
        <translation>manca l&apos;elemento «%1»[ in «%2»]; salva di nuovo la partitura, o correggila a mano</translation>
    </message>
    <message id="fault.E246">
        <source>this is more than a score may hold[ (%1)]; save only the part that you want to practise</source>
        <translation>è più di quanto possa avere una partitura[ (%1)]; salva solo la parte che vuoi studiare</translation>
    </message>
    <message id="fault.E247">
        <source>the compressed file is damaged or was cut short; have it sent again, or save it uncompressed</source>
        <translation>il file compresso è danneggiato o tronco; fattelo rimandare, o salvalo non compresso</translation>
    </message>
    <message id="fault.E248">
        <source>the compressed file has no score in the place it names[ (%1)]; save it again, or uncompressed</source>
        <translation>il file compresso non ha una partitura nel punto che indica[ (%1)]; salvalo di nuovo, o non compresso</translation>
    </message>
    <message id="fault.E249">
        <source>the file declares entities of its own in its DOCTYPE, which Piolo does not read; save the score again</source>
        <translation>il file dichiara nel suo DOCTYPE entità proprie, che Piolo non legge; salva di nuovo la partitura</translation>
    </message>
    <message id="fault.E250">
        <source>the text is not in the encoding that it declares, or in one that Piolo does not read; save the score as UTF-8 or UTF-16</source>
        <translation>il testo non ha la codifica che dice, o ne ha una che Piolo non legge; salva la partitura come UTF-8 o UTF-16</translation>
    </message>
    <message id="fault.E251">
        <source>bar %1 has a %2, so the bars you picked are not played straight through; pick bars on one side of it</source>
        <translation>la battuta %1 ha un segno (%2) per cui le battute scelte non si suonano di seguito; scegli battute prima o dopo</translation>
    </message>
    <message id="fault.E252">
        <source>the %2 changes in bar %1, and a passage has only one; pick bars on one side of it</source>
        <translation>nella battuta %1 cambia qualcosa (%2) che in un passaggio resta uguale; scegli battute prima o dopo</translation>
    </message>
    <message id="fault.E253">
        <source>bar %1 has a meter that Piolo cannot count[ (%2)]; pick other bars</source>
        <translation>la battuta %1 ha un metro che Piolo non può contare[ (%2)]; scegli altre battute</translation>
    </message>
    <message id="fault.E254">
        <source>bar %1 is not a whole bar: it holds %2 in %3; pick bars on one side of it</source>
        <translation>la battuta %1 non è intera: ha %2 in %3; scegli battute prima o dopo</translation>
    </message>
    <message id="fault.E255">
        <source>bars %1 to %2 are not 1 to 999 whole bars; pick more or fewer</source>
        <translation>le battute da %1 a %2 non sono da 1 a 999 battute intere; scegline di più o di meno</translation>
    </message>
    <message id="fault.E261">
        <source>cannot be felt in that beat: %1 would not come out even; change it first</source>
        <translation>non si può sentire in quel movimento: %1 non tornerebbe; cambialo prima</translation>
    </message>
    <message id="fault.E265">
        <source>the notes of &quot;%1&quot; are not known; pick its bars from a score in MusicXML, with piolo bars or in the window</source>
        <translation>le note di «%1» non si conoscono; scegli le sue battute da una partitura MusicXML, con piolo bars o nella finestra</translation>
    </message>
    <message id="fault.E270">
        <source>bar %1: a note lies outside the bars of the passage and cannot be written as MusicXML; make the passage longer, or pick its bars again</source>
        <translation>battuta %1: una nota sta fuori dalle battute del passaggio e non si può scrivere come MusicXML; allunga il passaggio, o scegli di nuovo le sue battute</translation>
    </message>
    <message id="fault.E271">
        <source>bar %1: a note begins while another one sounds and cannot be written as MusicXML; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>battuta %1: una nota comincia mentre un&apos;altra suona e non si può scrivere come MusicXML; esporta il passaggio come .piolo.json, che lo conserva com&apos;è</translation>
    </message>
    <message id="fault.E272">
        <source>bar %1: a note is shorter than any note value and cannot be written as MusicXML; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>battuta %1: una nota è più breve di ogni figura e non si può scrivere come MusicXML; esporta il passaggio come .piolo.json, che lo conserva com&apos;è</translation>
    </message>
    <message id="fault.E273">
        <source>the written %1 sounds as MIDI number %2, which is not how its part is transposed; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>il %1 scritto suona come numero MIDI %2, e non è così che è trasposta la sua parte; esporta il passaggio come .piolo.json, che lo conserva com&apos;è</translation>
    </message>
    <message id="fault.E281">
        <source>this is not a PNG, JPEG or PDF; save or scan the music as one of these</source>
        <translation>questo non è un PNG, JPEG o PDF; salva o scansiona lo spartito in uno di questi formati</translation>
    </message>
    <message id="fault.E282">
        <source>the picture is damaged or was cut short[ (%1)]; save it again, or have it sent again</source>
        <translation>l&apos;immagine è danneggiata o tronca[ (%1)]; salvala di nuovo, o fattela rimandare</translation>
    </message>
    <message id="fault.E283">
        <source>this is more than a picture of music may hold[ (%1)]; scan or save the page by itself, or smaller</source>
        <translation>è più di quanto possa avere l&apos;immagine di uno spartito[ (%1)]; scansiona o salva la pagina da sola, o più piccola</translation>
    </message>
    <message id="fault.E284">
        <source>the PDF needs a password; save it without one</source>
        <translation>il PDF chiede una password; salvalo senza</translation>
    </message>
    <message id="fault.E285">
        <source>the PDF has no page %1; choose 1 to %2</source>
        <translation>il PDF non ha una pagina %1; scegli da 1 a %2</translation>
    </message>
    <message id="fault.E286">
        <source>page %1 took too long to draw; save it as a picture in another program</source>
        <translation>la pagina %1 ha richiesto troppo tempo; salvala come immagine in un altro programma</translation>
    </message>
    <message id="fault.E287">
        <source>the picture needs more memory than is allowed, or is damaged; save it anew, as a smaller picture</source>
        <translation>l&apos;immagine richiede più memoria di quanta è consentita o è danneggiata; salvala di nuovo, più piccola</translation>
    </message>
    <message id="fault.E301">
        <source>cannot be read[ (%1)]; check the name and its permissions</source>
        <translation>non si può leggere[ (%1)]; controlla il nome e i permessi</translation>
    </message>
    <message id="fault.E302">
        <source>cannot be written[ (%1)]; check the folder and its permissions</source>
        <translation>non si può scrivere[ (%1)]; controlla la cartella e i permessi</translation>
    </message>
    <message id="fault.E303">
        <source>the folder cannot be created[ (%1)]; choose another or check its permissions</source>
        <translation>la cartella non si può creare[ (%1)]; scegline un&apos;altra o controlla i permessi</translation>
    </message>
    <message id="fault.E304">
        <source>the sound would be larger than 4 GiB; ask for fewer bars or a lower rate</source>
        <translation>il suono supererebbe i 4 GiB; chiedi meno battute o una frequenza più bassa</translation>
    </message>
    <message id="fault.E305">
        <source>another window is using this practice folder, so nothing is recorded here; go on there, or close it and open this one again</source>
        <translation>un&apos;altra finestra usa questa cartella di studio, perciò qui non si registra nulla; continua lì, o chiudila e riapri questa</translation>
    </message>
    <message id="fault.E306">
        <source>this is not a practice folder; give the path of one</source>
        <translation>questa non è una cartella di studio; indica il percorso di una</translation>
    </message>
    <message id="fault.E307">
        <source>the disk is full; make room and try again</source>
        <translation>il disco è pieno; fai spazio e riprova</translation>
    </message>
    <message id="fault.E308">
        <source>there is no display to open the window on; start Piolo in a graphical session, or see piolo --help for what works without one</source>
        <translation>non c&apos;è uno schermo su cui aprire la finestra; avvia Piolo in una sessione grafica, o vedi con piolo --help che cosa funziona senza</translation>
    </message>
    <message id="fault.E321">
        <source>a window has this folder open; close it and try again</source>
        <translation>una finestra ha aperta questa cartella; chiudila e riprova</translation>
    </message>
    <message id="fault.E322">
        <source>the folder has no passages and no pieces; give the path of the practice folder that has them</source>
        <translation>la cartella non ha passaggi né brani; indica il percorso della cartella di studio che li contiene</translation>
    </message>
    <message id="fault.E323">
        <source>not everything could be saved in time; check the disk and import the file again, since what is already saved counts only once</source>
        <translation>non si è potuto salvare tutto in tempo; controlla il disco e importa di nuovo il file, perché ciò che è già salvato conta una volta sola</translation>
    </message>
    <message id="fault.E324">
        <source>the practice folder has been moved or removed; put it back, and the marks still waiting will be saved</source>
        <translation>la cartella di studio è stata spostata o rimossa; rimettila al suo posto e ciò che ancora attende viene salvato</translation>
    </message>
    <message id="fault.E325">
        <source>this is a link, a pipe or a device, not a file; move it away, and the marks still waiting will be saved in a new file</source>
        <translation>questo è un collegamento, una pipe o un dispositivo, non un file; spostalo e ciò che ancora attende viene salvato in un nuovo file</translation>
    </message>
    <message id="fault.E326">
        <source>the disk has not confirmed the last marks; check the disk, and leave this window open until they are saved</source>
        <translation>il disco non ha confermato gli ultimi segni; controllalo e lascia aperta questa finestra finché sono salvati</translation>
    </message>
    <message id="fault.E327">
        <source>the state directory is on a disk without locks, so practice can be read but not recorded; set XDG_STATE_HOME to a folder on a local disk</source>
        <translation>la cartella di stato è su un disco senza blocchi, quindi lo studio si può leggere ma non registrare; imposta XDG_STATE_HOME su una cartella di un disco locale</translation>
    </message>
    <message id="fault.E328">
        <source>HOME is not set, so there is no place for settings and practice; set HOME to your home folder and start again</source>
        <translation>HOME non è impostata, quindi non c&apos;è posto per impostazioni e studio; imposta HOME sulla tua cartella personale e riavvia</translation>
    </message>
    <message id="fault.E401">
        <source>no sound: the click goes on silently; connect a device or choose one in the settings, and you will hear it again from the next bar</source>
        <translation>nessun suono: il clic continua in silenzio; collega un dispositivo o scegline uno nelle impostazioni, e dalla prossima battuta lo senti di nuovo</translation>
    </message>
    <message id="fault.E403">
        <source>the sound is lost: the click goes on silently; restart Piolo to hear it again; nothing recorded is lost</source>
        <translation>il suono si è perso: il clic continua in silenzio; riavvia Piolo per sentirlo di nuovo; nulla di ciò che è registrato va perso</translation>
    </message>
    <message id="fault.E404">
        <source>the computer fell behind: key presses delayed: %1, beats not shown: %2; close other programs; no mark was lost</source>
        <translation>il computer è rimasto indietro: pressioni che hanno dovuto aspettare: %1, movimenti non mostrati: %2; chiudi altri programmi; nessun segno è andato perso</translation>
    </message>
    <message id="files.changes">
        <source>What this file would change</source>
        <translation>Che cosa cambierebbe con questo file</translation>
    </message>
    <message id="files.choose">
        <source>Choose…</source>
        <translation>Scegli…</translation>
    </message>
    <message id="files.edited-here">
        <source>▲ edited here since import</source>
        <translation>▲ modificato qui dopo l&apos;importazione</translation>
    </message>
    <message id="files.empty">
        <source>This file contains no passages.</source>
        <translation>Questo file non contiene passaggi.</translation>
    </message>
    <message id="files.export">
        <source>Export</source>
        <translation>Esporta</translation>
    </message>
    <message id="files.export.file">
        <source>File name (.piolo.json)</source>
        <translation>Nome del file (.piolo.json)</translation>
    </message>
    <message id="files.export.hint">
        <source>Passages and their pieces for another player, without anything you played.</source>
        <translation>Passaggi con i loro brani da dare ad altri, senza ciò che hai suonato.</translation>
    </message>
    <message id="files.export.tick">
        <source>Tick the passages to export.</source>
        <translation>Spunta i passaggi da esportare.</translation>
    </message>
    <message id="files.export.write">
        <source>Export file</source>
        <translation>Esporta il file</translation>
    </message>
    <message id="files.figures">
        <source>%1 new, %2 the same, %3 different or removed here</source>
        <translation>%1 nuovi, %2 uguali, %3 diversi o rimossi qui</translation>
    </message>
    <message id="files.import">
        <source>Import</source>
        <translation>Importa</translation>
    </message>
    <message id="files.kind.all">
        <source>All files</source>
        <translation>Tutti i file</translation>
    </message>
    <message id="files.kind.curves">
        <source>Tempo curves</source>
        <translation>Curve del tempo</translation>
    </message>
    <message id="files.kind.passages">
        <source>Passages</source>
        <translation>Passaggi</translation>
    </message>
    <message id="files.kind.picture">
        <source>Pictures and PDFs</source>
        <translation>Immagini e PDF</translation>
    </message>
    <message id="files.kind.score">
        <source>MusicXML</source>
        <translation>MusicXML</translation>
    </message>
    <message id="files.kind.sheet">
        <source>Sheet</source>
        <translation>Foglio</translation>
    </message>
    <message id="files.not-yet">
        <source>Nothing is imported until you have seen what would change.</source>
        <translation>Non si importa nulla prima che tu abbia visto che cosa cambierebbe.</translation>
    </message>
    <message id="files.open">
        <source>Open</source>
        <translation>Apri</translation>
    </message>
    <message id="files.open.file">
        <source>File (.piolo.json), or drop it here</source>
        <translation>File (.piolo.json), o trascinalo qui</translation>
    </message>
    <message id="files.passage">
        <source>%1: “%2”</source>
        <translation>%1: «%2»</translation>
    </message>
    <message id="files.piece">
        <source>%1: the piece “%2”</source>
        <translation>%1: il brano «%2»</translation>
    </message>
    <message id="files.reading">
        <source>Reading…</source>
        <translation>Lettura…</translation>
    </message>
    <message id="files.replaces">
        <source>There is a file of that name. “%1” replaces it.</source>
        <translation>Esiste già un file con questo nome. «%1» lo sostituisce.</translation>
    </message>
    <message id="files.save">
        <source>Save</source>
        <translation>Salva</translation>
    </message>
    <message id="files.take">
        <source>Import</source>
        <translation>Importa</translation>
    </message>
    <message id="files.taken">
        <source>%1 added, %2 replaced from the file, %3 left unchanged.</source>
        <translation>%1 aggiunti, %2 sostituiti dal file, %3 lasciati invariati.</translation>
    </message>
    <message id="files.tick-all">
        <source>Tick all that differ</source>
        <translation>Spunta tutto ciò che è diverso</translation>
    </message>
    <message id="files.tick-none">
        <source>Untick all</source>
        <translation>Togli tutte le spunte</translation>
    </message>
    <message id="files.tick.hint">
        <source>Ticked items are replaced from the file; the others stay as they are. New items are added.</source>
        <translation>Ciò che è spuntato viene sostituito dal file; il resto rimane com&apos;è. Ciò che è nuovo si aggiunge.</translation>
    </message>
    <message id="files.title">
        <source>Passage files</source>
        <translation>File di passaggi</translation>
    </message>
    <message id="files.unchanged">
        <source>You already have everything in this file: nothing would change.</source>
        <translation>Hai già tutto ciò che è in questo file: non cambierebbe nulla.</translation>
    </message>
    <message id="files.what-to-do">
        <source>What to do</source>
        <translation>Che cosa fare</translation>
    </message>
    <message id="form.about-climb">
        <source>at %1, about %2 to the next climb if nine in ten are clean</source>
        <translation>a %1 circa %2 fino alla prossima salita, con nove pulite su dieci</translation>
    </message>
    <message id="form.about-secure">
        <source>at the target, about %1 to a full streak if nine in ten are clean</source>
        <translation>al tempo obiettivo circa %1 per una serie piena, con nove pulite su dieci</translation>
    </message>
    <message id="form.accent">
        <source>Beat %1: %2</source>
        <translation>Movimento %1: %2</translation>
    </message>
    <message id="form.articulation">
        <source>Articulation</source>
        <translation>Articolazione</translation>
    </message>
    <message id="form.bars">
        <source>Bars</source>
        <translation>Battute</translation>
    </message>
    <message id="form.bars.open">
        <source>open</source>
        <translation>libere</translation>
    </message>
    <message id="form.beat">
        <source>Beat</source>
        <translation>Movimento</translation>
    </message>
    <message id="form.bpm">
        <source>BPM</source>
        <translation>BPM</translation>
    </message>
    <message id="form.breath">
        <source>Breath (beats)</source>
        <translation>Mov. di respiro</translation>
    </message>
    <message id="form.clean-runs">
        <source>Clean in a row</source>
        <translation>Pulite di fila</translation>
    </message>
    <message id="form.click">
        <source>Click: %1</source>
        <translation>Clic: %1</translation>
    </message>
    <message id="form.click.every-beat">
        <source>Click: every beat, following the meter</source>
        <translation>Clic: ogni movimento, secondo il metro</translation>
    </message>
    <message id="form.climb">
        <source>then climb</source>
        <translation>poi sali di</translation>
    </message>
    <message id="form.count-in">
        <source>Count-in (bars)</source>
        <translation>Battute a vuoto</translation>
    </message>
    <message id="form.discard">
        <source>Discard changes</source>
        <translation>Scarta le modifiche</translation>
    </message>
    <message id="form.drill">
        <source>Drill it</source>
        <translation>Studia</translation>
    </message>
    <message id="form.drop">
        <source>A miss drops</source>
        <translation>Errore: scendi di</translation>
    </message>
    <message id="form.edit-piece">
        <source>Edit the piece: name, instrument, due date</source>
        <translation>Modifica il brano: nome, strumento, scadenza</translation>
    </message>
    <message id="form.fault.above-start">
        <source>no higher than the start, %1</source>
        <translation>non più alto della partenza, %1</translation>
    </message>
    <message id="form.fault.beat">
        <source>this beat does not fill a bar in this meter</source>
        <translation>questo movimento non riempie una battuta di questo metro</translation>
    </message>
    <message id="form.fault.below-start">
        <source>no lower than the start, %1</source>
        <translation>non più basso della partenza, %1</translation>
    </message>
    <message id="form.fault.breaths">
        <source>places in order, such as 43, 45:3 or 47:1+2; at most %1</source>
        <translation>punti in ordine, come 43, 45:3 o 47:1+2; al massimo %1</translation>
    </message>
    <message id="form.fault.groups">
        <source>groups that fill the bar and begin on beats, such as 2+2+3</source>
        <translation>gruppi che riempiono la battuta e cominciano sui movimenti, come 2+2+3</translation>
    </message>
    <message id="form.fault.letters">
        <source>at most %1 characters</source>
        <translation>al massimo %1 caratteri</translation>
    </message>
    <message id="form.fault.meter">
        <source>a meter such as 4/4, 6/8 or 7/8</source>
        <translation>un metro come 4/4, 6/8 o 7/8</translation>
    </message>
    <message id="form.fault.pick-up">
        <source>a length such as 1/8 or 1/4, or leave it empty</source>
        <translation>una durata come 1/8 o 1/4, o lascia vuoto</translation>
    </message>
    <message id="form.fault.pick-up-too-long">
        <source>a pick-up must be shorter than a bar</source>
        <translation>un&apos;anacrusi deve essere più breve di una battuta</translation>
    </message>
    <message id="form.fault.swing">
        <source>a ratio from 1:1 to 3:1, such as 2:1 or 3:2</source>
        <translation>un rapporto da 1:1 a 3:1, come 2:1 o 3:2</translation>
    </message>
    <message id="form.fault.tempo">
        <source>a tempo from 10 to 400, such as 84 or 72.5</source>
        <translation>un tempo da 10 a 400, come 84 o 72,5</translation>
    </message>
    <message id="form.fault.too-long">
        <source>too long to save</source>
        <translation>troppo lungo da salvare</translation>
    </message>
    <message id="form.fault.whole">
        <source>a whole number from %1 to %2</source>
        <translation>un numero intero da %1 a %2</translation>
    </message>
    <message id="form.fingering">
        <source>Fingering</source>
        <translation>Diteggiatura</translation>
    </message>
    <message id="form.fingering.example">
        <source>side key for the B flat, left hand first</source>
        <translation>chiave laterale per il Si bemolle, prima la sinistra</translation>
    </message>
    <message id="form.first-bar">
        <source>First bar</source>
        <translation>Da battuta</translation>
    </message>
    <message id="form.floor">
        <source>Never below</source>
        <translation>Mai sotto</translation>
    </message>
    <message id="form.gentle">
        <source>Gentle near the target: there, a miss drops by one climb; at the target, only the second miss in a row drops</source>
        <translation>Dolce vicino all&apos;obiettivo: lì un errore costa solo una salita; al tempo obiettivo costa solo il secondo di fila</translation>
    </message>
    <message id="form.group">
        <source>Notes per group</source>
        <translation>Note per gruppo</translation>
    </message>
    <message id="form.groups">
        <source>Groups</source>
        <translation>Gruppi</translation>
    </message>
    <message id="form.groups.none">
        <source>none</source>
        <translation>nessuno</translation>
    </message>
    <message id="form.landing">
        <source>Landing note</source>
        <translation>Nota d&apos;arrivo</translation>
    </message>
    <message id="form.made-of">
        <source>Made from “%1”.</source>
        <translation>Ricavato da «%1».</translation>
    </message>
    <message id="form.made-of-another">
        <source>Made from another passage.</source>
        <translation>Ricavato da un altro passaggio.</translation>
    </message>
    <message id="form.meter">
        <source>Meter</source>
        <translation>Metro</translation>
    </message>
    <message id="form.name">
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message id="form.new">
        <source>New passage</source>
        <translation>Nuovo passaggio</translation>
    </message>
    <message id="form.new-piece">
        <source>New piece…</source>
        <translation>Nuovo brano…</translation>
    </message>
    <message id="form.none">
        <source>none</source>
        <translation>niente</translation>
    </message>
    <message id="form.notches">
        <source>notches</source>
        <translation>tacche</translation>
    </message>
    <message id="form.on-its-own">
        <source>No piece</source>
        <translation>Nessun brano</translation>
    </message>
    <message id="form.open-ended">
        <source>Open-ended: I end each run</source>
        <translation>Fine libera: chiudo io ogni ripetizione</translation>
    </message>
    <message id="form.pick-up">
        <source>Pick-up</source>
        <translation>Anacrusi</translation>
    </message>
    <message id="form.piece">
        <source>Piece</source>
        <translation>Brano</translation>
    </message>
    <message id="form.play-through">
        <source>Play the piece through</source>
        <translation>Suona il brano intero</translation>
    </message>
    <message id="form.remove">
        <source>Remove</source>
        <translation>Togli</translation>
    </message>
    <message id="form.rhythm">
        <source>Rhythm</source>
        <translation>Ritmo</translation>
    </message>
    <message id="form.rule.take">
        <source>Use %1 in a row</source>
        <translation>Usa %1 di fila</translation>
    </message>
    <message id="form.run">
        <source>%1 per run · %2 · %3 to a full streak at the target with no misses.</source>
        <translation>%1 per ripetizione · %2 · %3 per una serie piena al tempo obiettivo, senza errori.</translation>
    </message>
    <message id="form.run-long">
        <source>A run of %1 is long: shorter parts come clean sooner.</source>
        <translation>Una ripetizione di %1 è lunga: parti più corte vengono pulite prima.</translation>
    </message>
    <message id="form.run-long-streak">
        <source>A run of %1 is long for %2 in a row: %3 are enough.</source>
        <translation>Una ripetizione di %1 è lunga per %2 di fila: ne bastano %3.</translation>
    </message>
    <message id="form.run-open">
        <source>You end each run yourself · %1.</source>
        <translation>Chiudi tu ogni ripetizione · %1.</translation>
    </message>
    <message id="form.save">
        <source>Save</source>
        <translation>Salva</translation>
    </message>
    <message id="form.save-and-drill">
        <source>Save and drill</source>
        <translation>Salva e studia</translation>
    </message>
    <message id="form.saved">
        <source>✓ saved as %1</source>
        <translation>✓ salvato come %1</translation>
    </message>
    <message id="form.settles">
        <source>The tempo settles where about %1 of runs are clean.</source>
        <translation>Il tempo si assesta dove circa il %1 delle ripetizioni è pulito.</translation>
    </message>
    <message id="form.start">
        <source>Start at</source>
        <translation>Parti da</translation>
    </message>
    <message id="form.step">
        <source>Steps in</source>
        <translation>Passi in</translation>
    </message>
    <message id="form.subdivision">
        <source>Subdivision</source>
        <translation>Suddivisione</translation>
    </message>
    <message id="form.target">
        <source>Target</source>
        <translation>Obiettivo</translation>
    </message>
    <message id="form.unsaved">
        <source>not saved yet</source>
        <translation>non ancora salvato</translation>
    </message>
    <message id="help.back">
        <source>Back</source>
        <translation>Indietro</translation>
    </message>
    <message id="help.care.title">
        <source>Take care of yourself</source>
        <translation>Abbi cura di te</translation>
    </message>
    <message id="help.care.why.breaks">
        <source>An information sheet for students by two professional bodies (NASM and PAMA) advises breaks, a warm-up, a daily limit and no sudden increase.</source>
        <translation>Un foglio informativo per studenti di due associazioni di settore (NASM e PAMA) consiglia pause, riscaldamento, un limite al giorno e nessun aumento improvviso.</translation>
    </message>
    <message id="help.care.why.complaints">
        <source>Of 442 music students with no complaint from playing, about half had one within a year; fatigue and a change in how active they were raised the risk (Cruder and others 2023).</source>
        <translation>Di 442 studenti di musica senza disturbi legati allo strumento, circa la metà ne ebbe entro un anno; la stanchezza e un cambiamento nell&apos;attività fisica aumentavano il rischio (Cruder e altri 2023).</translation>
    </message>
    <message id="help.care.why.loudness">
        <source>Of 40 students, about half would have exceeded the daily limit for sound exposure from their own practice alone (Phillips and Mace 2008).</source>
        <translation>Di 40 studenti, circa la metà avrebbe superato la dose sonora giornaliera con il solo studio individuale (Phillips e Mace 2008).</translation>
    </message>
    <message id="help.chapters">
        <source>Chapters</source>
        <translation>Capitoli</translation>
    </message>
    <message id="help.click.key.faster">
        <source>one beat per minute faster</source>
        <translation>un movimento al minuto più veloce</translation>
    </message>
    <message id="help.click.key.open">
        <source>open this from the passages and the drill</source>
        <translation>aprilo dai passaggi e dallo studio</translation>
    </message>
    <message id="help.click.key.slower">
        <source>one beat per minute slower</source>
        <translation>un movimento al minuto più lento</translation>
    </message>
    <message id="help.click.key.start">
        <source>start and stop</source>
        <translation>inizia e ferma</translation>
    </message>
    <message id="help.click.key.tap">
        <source>tap the beat; the second tap is a tempo</source>
        <translation>batti il movimento; dal secondo colpo è un tempo</translation>
    </message>
    <message id="help.click.title">
        <source>Just a click</source>
        <translation>Solo il clic</translation>
    </message>
    <message id="help.click.what.free">
        <source>A click without a passage. Type the tempo, tap it or step to it, and choose the meter and the subdivision. All of this can change while it sounds: tempo and subdivision follow at the next beat, the meter at the next bar.</source>
        <translation>Un clic senza passaggio. Scrivi il tempo, battilo o arrivaci a passi, e scegli il metro e la suddivisione. Tutto può cambiare mentre suona: tempo e suddivisione seguono dal prossimo movimento, il metro dalla prossima battuta.</translation>
    </message>
    <message id="help.click.what.goes-on">
        <source>It goes on while you look at other screens, until you stop it or start to play something. Nothing is logged. “Make a passage of this” opens the form of a new passage with its tempo, meter and subdivision.</source>
        <translation>Continua mentre guardi altre schermate, finché lo fermi o cominci a suonare qualcosa. Niente va nel diario. «Fanne un passaggio» apre il modulo di un nuovo passaggio con tempo, metro e suddivisione.</translation>
    </message>
    <message id="help.click.why.taps">
        <source>The tempo is read from your last nine taps, and one tap at the wrong moment hardly moves it. A pause of more than two seconds begins again. In the drill, press the large tempo to type or tap one. With a single pedal, a press starts the click, each further press is a tap, and holding the pedal stops it.</source>
        <translation>Il tempo viene dagli ultimi nove colpi, e uno fuori posto lo sposta appena. Dopo una pausa di più di due secondi si ricomincia. Nello studio tocca il tempo grande per scriverlo o batterlo. Con un solo pedale, la prima pressione avvia il clic, ogni altra è un colpo, e tenendolo premuto il clic si ferma.</translation>
    </message>
    <message id="help.drill.key.clean">
        <source>mark an open-ended run clean and end it</source>
        <translation>chiudi come pulita una ripetizione a fine libera</translation>
    </message>
    <message id="help.drill.key.hear">
        <source>hear the passage first, if its bars came from a score</source>
        <translation>ascolta prima il passaggio, se le battute vengono da una partitura</translation>
    </message>
    <message id="help.drill.key.miss">
        <source>start; while the click runs, mark a miss</source>
        <translation>inizia; mentre suona il clic, segna un errore</translation>
    </message>
    <message id="help.drill.key.next">
        <source>open the next passage, while stopped</source>
        <translation>il prossimo passaggio, da fermo</translation>
    </message>
    <message id="help.drill.key.pedal">
        <source>everything: one press starts or marks a miss, two presses take back the last mark; hold it to stop the click or, while stopped, to open the next passage</source>
        <translation>tutto: una pressione avvia o segna un errore, due annullano l&apos;ultimo segno; tenendolo premuto fermi il clic o, da fermo, apri il prossimo passaggio</translation>
    </message>
    <message id="help.drill.key.stop">
        <source>stop</source>
        <translation>ferma</translation>
    </message>
    <message id="help.drill.key.take-back">
        <source>take back the last mark; after a stop, it can be put back</source>
        <translation>annulla l&apos;ultimo segno; da fermo si può ripristinare</translation>
    </message>
    <message id="help.drill.key.tempo">
        <source>change the tempo, while stopped</source>
        <translation>cambia il tempo, da fermo</translation>
    </message>
    <message id="help.drill.key.try">
        <source>try once at the target</source>
        <translation>una prova al tempo obiettivo</translation>
    </message>
    <message id="help.drill.key.up-down">
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message id="help.drill.title">
        <source>Drill</source>
        <translation>Studio</translation>
    </message>
    <message id="help.drill.what.cycle">
        <source>Count-in, run, breath, and again. A run that reaches its last bar without a miss is clean; you need not mark it. A miss drops the tempo, but never below the floor. As many clean runs in a row as the rule asks for are a full streak: it climbs one rung, but never past the target. After a miss or a climb, you count from nothing again.</source>
        <translation>Battute a vuoto, ripetizione, respiro, e da capo. Una ripetizione che arriva all&apos;ultima battuta senza un errore è pulita; non devi segnarla. Un errore fa scendere il tempo, ma mai sotto il minimo. Tante ripetizioni pulite di fila quante ne chiede la regola sono una serie piena: fa salire di un piolo, ma mai oltre l&apos;obiettivo. Dopo un errore o una salita si ricomincia a contare da zero.</translation>
    </message>
    <message id="help.drill.what.late">
        <source>Pressed late? If you press in the breath after a clean run, that run still becomes a miss.</source>
        <translation>Hai premuto tardi? Se premi durante il respiro dopo una ripetizione pulita, quella diventa comunque un errore.</translation>
    </message>
    <message id="help.drill.what.secure">
        <source>A full streak at the target counts as secure. A passage that was secure on three different days is fully secure. A new day starts two rungs below your last full streak. You can change both in the settings.</source>
        <translation>Una serie piena al tempo obiettivo conta come sicura. Un passaggio che è stato sicuro in tre giorni diversi è del tutto sicuro. Un nuovo giorno comincia due pioli sotto la tua ultima serie piena. Puoi cambiare entrambe le cose nelle impostazioni.</translation>
    </message>
    <message id="help.drill.what.ways">
        <source>Felt beat: quarter = 60 and eighth = 120 are the same speed; if you choose another beat, all tempi are converted and your clean runs in a row stay. Find your tempo: name one you think you can play, and each miss lowers it until a full streak has found yours. A try, and runs without the click, in context or at half tempo, change nothing. Each articulation has its own best.</source>
        <translation>Movimento sentito: quarto = 60 e ottavo = 120 sono la stessa velocità; se scegli un altro movimento, tutti i tempi vengono convertiti e le pulite di fila restano. Trova il tuo tempo: indicane uno che pensi di saper suonare, e ogni errore lo abbassa finché una serie piena non trova il tuo. Una prova, e le ripetizioni senza clic, nel contesto o a metà tempo, non cambiano nulla. Ogni articolazione ha il suo record.</translation>
    </message>
    <message id="help.drill.why.climbing">
        <source>Climbing step by step is customary, but has not been shown to beat other orders of tempi: among sixty school wind players, a steady climb, full tempo and both in turn made no significant difference (Henley 2001). The rule keeps the number of misses low and the record honest.</source>
        <translation>Salire passo per passo è consuetudine, ma non è dimostrato che sia meglio di altri ordini di tempi: fra sessanta studenti di strumenti a fiato la salita costante, il tempo di esecuzione e l&apos;alternanza dei due non fecero una differenza significativa (Henley 2001). La regola limita gli errori e tiene onesto il diario.</translation>
    </message>
    <message id="help.drill.why.full-streak">
        <source>A full streak is not proof: five clean runs out of five only show, at 95% confidence, that more than 54 of 100 runs are clean.</source>
        <translation>Una serie piena non è una prova: cinque pulite su cinque mostrano soltanto, con il 95% di confidenza, che sono pulite più di 54 ripetizioni su 100.</translation>
    </message>
    <message id="help.drill.why.going-on">
        <source>Going on after the first success helps you keep what you learned, to a moderate degree and in many kinds of tasks (Driskell, Willis and Copper 1992); how much it helps in music is not known.</source>
        <translation>Continuare dopo il primo successo aiuta a conservare ciò che si è imparato, in misura moderata e in compiti di molti tipi (Driskell, Willis e Copper 1992); quanto nella musica non si sa.</translation>
    </message>
    <message id="help.drill.why.staircase">
        <source>Drop and climb form a staircase like those used in hearing tests. It settles where a certain share of runs is clean, and the size of drop and climb decides that share: with five in a row, drop 4 and climb 2, about 92 of 100 (Levitt 1971, Kaernbach 1991, García-Pérez 1998). The formula assumes a player who neither tires nor learns.</source>
        <translation>Discesa e salita formano una scala come quelle degli esami dell&apos;udito. Si assesta dove è pulita una certa parte delle ripetizioni, e quanta sia lo decide la misura di discesa e salita: con cinque di fila, discesa 4 e salita 2, circa 92 su 100 (Levitt 1971, Kaernbach 1991, García-Pérez 1998). La formula presuppone una persona che suonando non si stanca e non impara.</translation>
    </message>
    <message id="help.drill.why.tempo-heard">
        <source>A change of tempo of less than about three per cent is hard to hear (Drake and Botte 1993). That is why short cues announce a climb and a drop.</source>
        <translation>Un cambio di tempo inferiore a circa il tre per cento si sente a fatica (Drake e Botte 1993). Per questo segnali brevi annunciano salita e discesa.</translation>
    </message>
    <message id="help.esc">
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message id="help.files.title">
        <source>Passage files</source>
        <translation>File di passaggi</translation>
    </message>
    <message id="help.files.what.carry">
        <source>A passage file carries passages from a teacher to a student. It holds passages and their pieces, but nothing of what was played. Before you import anything, you see what would change.</source>
        <translation>Un file di passaggi porta passaggi dall&apos;insegnante all&apos;allievo. Contiene passaggi e i loro brani, ma nulla di ciò che è stato suonato. Prima di importare vedi che cosa cambierebbe.</translation>
    </message>
    <message id="help.files.what.edited">
        <source>Anything you have edited since you imported it is marked, so that a new version from your teacher does not replace your own work unnoticed. Importing the same file twice changes nothing.</source>
        <translation>Ciò che hai modificato dopo l&apos;importazione è contrassegnato, così una nuova versione del tuo insegnante non sostituisce il tuo lavoro senza che tu lo veda. Importare due volte lo stesso file non cambia nulla.</translation>
    </message>
    <message id="help.keys.line">
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message id="help.keys.title">
        <source>Keys</source>
        <translation>Tasti</translation>
    </message>
    <message id="help.log.key.along">
        <source>on the curve: scroll; with Shift, from run to run</source>
        <translation>sulla curva: scorri; con Maiusc, da una ripetizione all&apos;altra</translation>
    </message>
    <message id="help.log.key.along.keys">
        <source>Left, Right</source>
        <translation>Freccia sinistra, freccia destra</translation>
    </message>
    <message id="help.log.key.breaks">
        <source>make a passage of the bars that break</source>
        <translation>crea un passaggio dalle battute in cui si inceppa</translation>
    </message>
    <message id="help.log.key.day">
        <source>in the minutes: the figures of a day</source>
        <translation>nei minuti: i dati di un giorno</translation>
    </message>
    <message id="help.log.key.days">
        <source>move through the days</source>
        <translation>scorri i giorni</translation>
    </message>
    <message id="help.log.key.days.keys">
        <source>PgUp, PgDown, Home, End</source>
        <translation>Pag↑, Pag↓, Inizio, Fine</translation>
    </message>
    <message id="help.log.key.line">
        <source>on the curve: the next passage; in the list: the next line</source>
        <translation>sulla curva: il prossimo passaggio; nella lista: la prossima riga</translation>
    </message>
    <message id="help.log.key.line.keys">
        <source>Up, Down</source>
        <translation>Freccia su, freccia giù</translation>
    </message>
    <message id="help.log.key.zoom">
        <source>on the curve: zoom in, zoom out, show all</source>
        <translation>sulla curva: ingrandisci, riduci, mostra tutto</translation>
    </message>
    <message id="help.log.key.zoom.keys">
        <source>Plus, Minus, 0</source>
        <translation>Più, Meno, 0</translation>
    </message>
    <message id="help.log.title">
        <source>Practice log</source>
        <translation>Diario di studio</translation>
    </message>
    <message id="help.log.what.curve">
        <source>The curve shows your tempo by day or by run. “Where it breaks” shows the misses of a passage by bar and beat. It can make a smaller passage of the worst bars, with one bar of run-up.</source>
        <translation>La curva mostra il tuo tempo per giorno o per ripetizione. «Dove si inceppa» mostra gli errori di un passaggio per battuta e movimento. Dalle battute peggiori può creare un passaggio più piccolo, con una battuta di rincorsa.</translation>
    </message>
    <message id="help.log.what.everything">
        <source>Everything that happened, day by day: each run with its tempo, its mark and the place of a miss; tempi you set by hand; run-throughs; your notes. Open a line to change a mark, write a note or take a run back. What you took back can be put back.</source>
        <translation>Tutto ciò che è successo, giorno per giorno: ogni ripetizione con il suo tempo, il suo segno e il punto di un errore; i tempi impostati a mano; le filate; le tue note. Apri una riga per cambiare un segno, scrivere una nota o annullare una ripetizione. Ciò che hai annullato si può ripristinare.</translation>
    </message>
    <message id="help.log.what.folder">
        <source>The log is in the practice folder on this computer and nowhere else. Nothing is sent anywhere. Copy the folder, or let your own file-sync service copy it, and you have everything.</source>
        <translation>Il diario è nella cartella di studio su questo computer e da nessun&apos;altra parte. Nulla viene inviato. Copia la cartella, o affidala alla tua sincronizzazione dei file, e hai tutto.</translation>
    </message>
    <message id="help.log.what.worst">
        <source>At the top are this week and last week, and the passages that went worst in the last two weeks, with the reason. Choose one to see only it.</source>
        <translation>In alto ci sono questa settimana e la scorsa, e i passaggi andati peggio nelle ultime due settimane, con il motivo. Scegline uno per vedere solo quello.</translation>
    </message>
    <message id="help.log.why.days-apart">
        <source>Practising on separate days helps you keep what you learned (Simmons 2012). A break of minutes is only rest: up to a quarter of an hour made no difference to beginners at the piano who were tested five minutes later (Wiseheart, D&apos;Souza and Chae 2017). Piolo accepts one missed day now and then and points out two in a row; that is our choice.</source>
        <translation>Studiare in giorni diversi aiuta a conservare ciò che si è imparato (Simmons 2012). I minuti in mezzo sono solo riposo: pause fino a un quarto d&apos;ora non fecero differenza per principianti di pianoforte messi alla prova cinque minuti dopo (Wiseheart, D&apos;Souza e Chae 2017). Per Piolo un giorno saltato ogni tanto va bene, due di fila li fa notare; è una nostra scelta.</translation>
    </message>
    <message id="help.log.why.reaction">
        <source>You hear a slip before you press the key, so each miss is moved back by your reaction time. A quarter of a second is a guess; you can set your own in the settings.</source>
        <translation>Senti uno sbaglio prima di premere il tasto: perciò ogni errore è spostato indietro del tuo tempo di reazione. Un quarto di secondo è una stima; nelle impostazioni puoi mettere il tuo.</translation>
    </message>
    <message id="help.paper.title">
        <source>Practice on paper</source>
        <translation>Studio su carta</translation>
    </message>
    <message id="help.paper.what.print">
        <source>Print a ladder for each passage, tick it in pencil where you have no screen, and enter the sheet later. The rule is then applied to its marks as if you had played them here, on the day that you enter.</source>
        <translation>Stampa una scala per ogni passaggio, spuntala a matita dove non hai uno schermo, e registra il foglio più tardi. La regola elabora allora i segni come se li avessi suonati qui, nel giorno che indichi.</translation>
    </message>
    <message id="help.paper.why.earlier-day">
        <source>You cannot enter runs for a day before the last day in the passage&apos;s log: what the rule has done since then is not undone.</source>
        <translation>Non puoi registrare ripetizioni per un giorno prima dell&apos;ultimo nel diario del passaggio: ciò che la regola ha fatto da allora non viene annullato.</translation>
    </message>
    <message id="help.paper.why.order">
        <source>A sheet shows how many, but not in which order, so on each rung misses count before circles.</source>
        <translation>Un foglio mostra quanti, ma non in che ordine: perciò su ogni piolo gli errori contano prima dei cerchi.</translation>
    </message>
    <message id="help.passages.key.list">
        <source>move from passage to passage in the list</source>
        <translation>di passaggio in passaggio nella lista</translation>
    </message>
    <message id="help.passages.key.list.keys">
        <source>Up, Down</source>
        <translation>Freccia su, freccia giù</translation>
    </message>
    <message id="help.passages.key.save">
        <source>drill the chosen passage; in its form, save it first</source>
        <translation>studia il passaggio scelto; nel modulo, prima lo salva</translation>
    </message>
    <message id="help.passages.title">
        <source>Passages</source>
        <translation>Passaggi</translation>
    </message>
    <message id="help.passages.what.form">
        <source>The bars, a start and a target are enough; the rest has sensible defaults. The form shows how long a run takes, and about how many runs a full streak needs.</source>
        <translation>Bastano battute, partenza e obiettivo; il resto ha valori predefiniti sensati. Il modulo mostra quanto dura una ripetizione, e quante ne servono all&apos;incirca per una serie piena.</translation>
    </message>
    <message id="help.passages.what.gentle">
        <source>Gentle near the target: there, a miss drops by one climb; at the target, only the second miss in a row drops.</source>
        <translation>Dolce vicino all&apos;obiettivo: lì un errore costa solo una salita; al tempo obiettivo costa solo il secondo di fila.</translation>
    </message>
    <message id="help.passages.what.list">
        <source>All your passages, by the next due date of their piece, by how long they have rested, or by how far they are from the target. Choose one to see its page: the music, how it has gone, where it breaks and what comes next. Edit opens its form.</source>
        <translation>Tutti i tuoi passaggi, ordinati per la prossima scadenza del brano, per quanto tempo sono rimasti fermi o per quanto sono lontani dall’obiettivo. Scegline uno per vedere la sua pagina: la musica, com’è andata, dove si inceppa e che cosa viene dopo. «Modifica» apre il suo modulo.</translation>
    </message>
    <message id="help.passages.why.about-runs">
        <source>The number of runs is calculated for a player who plays nine in ten clean and neither tires nor learns. It is not a promise.</source>
        <translation>Il numero di ripetizioni è calcolato per chi ne suona pulite nove su dieci e non si stanca né impara. Non è una promessa.</translation>
    </message>
    <message id="help.passages.why.short">
        <source>Short passages come clean sooner: in a long one, a single bad bar spoils the whole run. Splitting a passage where it breaks is common practice; we know no source for it.</source>
        <translation>I passaggi corti vengono puliti prima: in uno lungo una sola battuta sbagliata rovina tutta la ripetizione. Dividere un passaggio dove si inceppa è pratica comune; non ne conosciamo una fonte.</translation>
    </message>
    <message id="help.picture.key.edge">
        <source>select the next edge, and then the whole frame again</source>
        <translation>scegli il bordo successivo, e poi di nuovo la cornice intera</translation>
    </message>
    <message id="help.picture.key.edge.keys">
        <source>Space</source>
        <translation>Spazio</translation>
    </message>
    <message id="help.picture.key.leave">
        <source>cancel your changes</source>
        <translation>annulla le modifiche</translation>
    </message>
    <message id="help.picture.key.leave.keys">
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message id="help.picture.key.move">
        <source>move the frame or the selected edge; with Shift, in larger steps</source>
        <translation>sposta la cornice o il bordo scelto; con Maiusc a passi più grandi</translation>
    </message>
    <message id="help.picture.key.move.keys">
        <source>Arrow keys</source>
        <translation>Frecce</translation>
    </message>
    <message id="help.picture.key.scroll">
        <source>scroll the page</source>
        <translation>scorri la pagina</translation>
    </message>
    <message id="help.picture.key.scroll.keys">
        <source>PgUp, PgDown</source>
        <translation>Pag↑, Pag↓</translation>
    </message>
    <message id="help.picture.title">
        <source>A picture of the music</source>
        <translation>Un&apos;immagine dello spartito</translation>
    </message>
    <message id="help.picture.what.add">
        <source>Add a photo, a scan or a PDF page of your part, and put the frame around the passage. While you drill, you see what is in the frame. The picture is copied into the practice folder.</source>
        <translation>Aggiungi una foto, una scansione o una pagina PDF della tua parte, e metti la cornice attorno al passaggio. Mentre studi vedi ciò che è nella cornice. L&apos;immagine viene copiata nella cartella di studio.</translation>
    </message>
    <message id="help.picture.why.eyes">
        <source>Your eyes stay on the music: you see only the bars of the passage, as large as space allows. This is common practice; we know no source for it. Copy only music that you are allowed to copy.</source>
        <translation>Gli occhi restano sulla parte: solo le battute del passaggio, grandi quanto lo spazio permette. È pratica comune; non ne conosciamo una fonte. Copia solo spartiti che ti è permesso copiare.</translation>
    </message>
    <message id="help.run-through.key.end">
        <source>mark the last note</source>
        <translation>segna l&apos;ultima nota</translation>
    </message>
    <message id="help.run-through.key.give-up">
        <source>give up</source>
        <translation>interrompi</translation>
    </message>
    <message id="help.run-through.key.start">
        <source>start; then mark each stop</source>
        <translation>inizia; poi segna ogni stop</translation>
    </message>
    <message id="help.run-through.key.take-back">
        <source>take back the last stop</source>
        <translation>annulla l&apos;ultimo stop</translation>
    </message>
    <message id="help.run-through.title">
        <source>Run-through</source>
        <translation>Filata</translation>
    </message>
    <message id="help.run-through.what.whole">
        <source>Play a whole piece without the click, from start to finish. You start from the form of any passage of that piece. Where the music stops, press the key and play on. The clock guesses the bar; you can correct it before you save the run-through.</source>
        <translation>Suona un brano intero senza clic, dall&apos;inizio alla fine. Si parte dal modulo di un passaggio di quel brano. Dove la musica si ferma, premi il tasto e vai avanti. L&apos;orologio stima la battuta; puoi correggerla prima di salvare la filata.</translation>
    </message>
    <message id="help.run-through.why.hides">
        <source>A run-through shows what the click hides: where the piece breaks when nothing leads. If the bar of a stop is unknown, the stop may have been anywhere, and it counts against every passage of the piece.</source>
        <translation>Una filata mostra ciò che il clic nasconde: dove il brano si inceppa quando nulla guida. Se la battuta di uno stop non è nota, può essere stato ovunque, e conta contro ogni passaggio del brano.</translation>
    </message>
    <message id="help.run-through.why.kept">
        <source>A passage holds as long as the last two run-throughs did not stop in it. Two is our choice, without a source: few enough to play, and more than luck.</source>
        <translation>Un passaggio tiene finché le ultime due filate non si sono fermate lì dentro. Due è una nostra scelta, senza fonte: poche abbastanza da suonarle, e più di un colpo di fortuna.</translation>
    </message>
    <message id="help.scales.key.drill">
        <source>drill the cell</source>
        <translation>studia la casella</translation>
    </message>
    <message id="help.scales.key.drill.keys">
        <source>Return, Space</source>
        <translation>Invio, Spazio</translation>
    </message>
    <message id="help.scales.key.move">
        <source>move from cell to cell</source>
        <translation>di casella in casella</translation>
    </message>
    <message id="help.scales.key.move.keys">
        <source>Arrow keys</source>
        <translation>Frecce</translation>
    </message>
    <message id="help.scales.key.suggested">
        <source>go to the suggested cell</source>
        <translation>la casella proposta</translation>
    </message>
    <message id="help.scales.key.suggested.keys">
        <source>Home</source>
        <translation>Inizio</translation>
    </message>
    <message id="help.scales.title">
        <source>Scales</source>
        <translation>Scale</translation>
    </message>
    <message id="help.scales.what.grid">
        <source>One kind of scale in all twelve keys, and each key from quarters to septuplets. A cell shows its best tempo with a full streak; an empty cell has not been played yet. Below the grid, the selected cell is put into words. You drill a cell like any passage.</source>
        <translation>Un tipo di scala in tutte le dodici tonalità, e ogni tonalità dai quarti alle settimine. Una casella mostra il suo tempo migliore con serie piena; una vuota non è stata ancora suonata. Sotto la griglia la casella scelta è spiegata a parole. Una casella si studia come qualsiasi passaggio.</translation>
    </message>
    <message id="help.scales.what.new-cell">
        <source>A new cell starts two notches below the best of its nearest neighbour. Its end is arranged so that the last note falls on a beat; the card tells you how.</source>
        <translation>Una casella nuova parte due tacche sotto il record della casella più vicina. La sua fine è sistemata in modo che l&apos;ultima nota cada su un movimento; la scheda ti dice come.</translation>
    </message>
    <message id="help.scales.what.suggested">
        <source>Piolo suggests the next cell and tells you why. Of the cells not played today, it is the one played longest ago, if that is a week or more; otherwise one that you have never played; otherwise the one furthest below the best of its row. You decide.</source>
        <translation>Piolo propone la prossima casella e ti dice perché. Fra quelle che oggi non hai suonato è quella ferma da più tempo, se è una settimana o più; altrimenti una che non hai mai suonato; altrimenti quella più lontana dal record della sua riga. Decidi tu.</translation>
    </message>
    <message id="help.scales.why.days-apart">
        <source>Separate days help: of twenty-nine musicians learning nine notes on a keyboard, only those who came back after a day, rather than after minutes or hours, were more accurate the second time (Simmons 2012).</source>
        <translation>Giorni diversi aiutano: di ventinove musicisti che imparavano nove note su una tastiera, la seconda volta furono più precisi solo quelli tornati dopo un giorno, non dopo minuti od ore (Simmons 2012).</translation>
    </message>
    <message id="help.scales.why.fast-clicks">
        <source>Nobody can keep in step with single clicks faster than about eight to ten per second (Repp 2006). In small notes, follow the beat.</source>
        <translation>Nessuno riesce ad andare a tempo con singoli clic più veloci di circa otto-dieci al secondo (Repp 2006). Con i valori piccoli segui il movimento.</translation>
    </message>
    <message id="help.scales.why.look-alikes">
        <source>Similar material late in the evening may cost you: in one study of sixty musicians, a second, similar melody took away the overnight gain.</source>
        <translation>Cose simili la sera tardi possono costarti: in uno studio con sessanta musicisti una seconda melodia simile annullò il guadagno della notte.</translation>
    </message>
    <message id="help.scales.why.mixed-order">
        <source>A mixed order can help later: forty-one beginners on the clarinet finished their practice equally well, but a day later those who had practised in mixed order were faster, though not more accurate (Stambaugh 2011). One session with nineteen beginners on clarinet and saxophone showed no effect of the order (a study at Rhode Island College). That is why the mixed order is optional.</source>
        <translation>Un ordine misto può aiutare più tardi: quarantuno principianti al clarinetto finirono lo studio alla pari, ma un giorno dopo erano più veloci, anche se non più precisi, quelli che avevano studiato in ordine misto (Stambaugh 2011). Una seduta con diciannove principianti di clarinetto e sassofono non mostrò effetti dell&apos;ordine (uno studio del Rhode Island College). Perciò l&apos;ordine misto è facoltativo.</translation>
    </message>
    <message id="help.score.title">
        <source>A passage from a score</source>
        <translation>Un passaggio da una partitura</translation>
    </message>
    <message id="help.score.what.reads">
        <source>Piolo reads a MusicXML score, shows its parts and takes the bars that you pick: their meter, their tempo mark and their notes, so that you can hear the passage first.</source>
        <translation>Piolo legge una partitura in MusicXML, mostra le sue parti e prende le battute che scegli: il metro, l&apos;indicazione di tempo e le note, così puoi prima ascoltare il passaggio.</translation>
    </message>
    <message id="help.score.what.where">
        <source>Choose the file, type its path, or drop it on the card.</source>
        <translation>Scegli il file, scrivi il percorso o trascinalo sulla scheda.</translation>
    </message>
    <message id="help.score.why.model">
        <source>School wind players who heard a model did better in rhythm and gained more tempo, whatever the order of their tempi (Henley 2001).</source>
        <translation>Gli studenti di strumenti a fiato che ascoltarono un modello migliorarono nel ritmo e guadagnarono più tempo, qualunque fosse l&apos;ordine dei loro tempi (Henley 2001).</translation>
    </message>
    <message id="help.score.why.straight">
        <source>Bars that contain a repeat or a change of meter are refused rather than guessed at: a passage is played straight through.</source>
        <translation>Piolo rifiuta le battute con un ritornello o un cambio di metro invece di tirare a indovinare: un passaggio si suona di seguito.</translation>
    </message>
    <message id="help.set.key.mark">
        <source>starts; while the click runs, marks a miss</source>
        <translation>avvia; mentre suona il clic, segna un errore</translation>
    </message>
    <message id="help.set.what.marks">
        <source>Runs are logged under their own passage, by its own rule, as in the drill. A miss that you mark before the next passage&apos;s first note counts for the run before.</source>
        <translation>Ogni ripetizione viene registrata nel suo passaggio, con la sua regola, come nello studio. Un errore che segni prima della prima nota del passaggio seguente vale per la ripetizione precedente.</translation>
    </message>
    <message id="help.set.what.stop">
        <source>When you stop, one line for each passage says how its runs went.</source>
        <translation>Quando ti fermi, una riga per ogni passaggio dice com&apos;è andata.</translation>
    </message>
    <message id="help.set.what.tones">
        <source>Before its count-in, each passage is announced by as many short, soft tones as its place in the set, and its title is shown in large letters.</source>
        <translation>Prima delle battute a vuoto ogni passaggio è annunciato da tanti suoni brevi e morbidi quanti ne dice il suo numero, e il suo titolo appare in grande.</translation>
    </message>
    <message id="help.set.what.turns">
        <source>A set takes two to four passages in turn: so many runs or minutes of each, round and round until you stop. A turn ends with a run, never inside one.</source>
        <translation>Da due a quattro passaggi si alternano: tante ripetizioni o tanti minuti ciascuno, a rotazione, finché non ti fermi. Il cambio avviene alla fine di una ripetizione, mai a metà.</translation>
    </message>
    <message id="help.set.why.studies">
        <source>Ten clarinettists practised one piece at a stretch and another in turns of three minutes. Where judges rated the two differently, the turns were ahead, though not for every judge. Of 41 beginners, those who had practised in mixed order played faster a day later, but no more accurately. Another study of beginners found no difference.</source>
        <translation>Dieci clarinettisti studiarono un brano tutto di seguito e un altro a turni di tre minuti. Dove i giudici votarono in modo diverso, erano avanti i turni, ma non per tutti i giudici. Di 41 principianti, quelli che avevano studiato in ordine misto il giorno dopo suonavano più veloci, ma non più precisi. Un altro studio con principianti non trovò differenze.</translation>
    </message>
    <message id="help.set.why.tomorrow">
        <source>Judge it by the first run tomorrow, not by the last one today.</source>
        <translation>Giudica dalla prima ripetizione di domani, non dall&apos;ultima di oggi.</translation>
    </message>
    <message id="help.settings.title">
        <source>Settings</source>
        <translation>Impostazioni</translation>
    </message>
    <message id="help.settings.what.belongs">
        <source>Sound, appearance, language and keys belong to this computer; the practice settings travel with the practice folder.</source>
        <translation>Suono, aspetto, lingua e tasti appartengono a questo computer; le impostazioni di studio viaggiano con la cartella di studio.</translation>
    </message>
    <message id="help.settings.what.keys">
        <source>Any key can do any task: choose the task, then press the key. A pedal or a MIDI switch is a key like any other. A single pedal can do everything: one press starts or marks a miss, two presses take back the last mark; hold it to stop the click or, while stopped, to open the next passage.</source>
        <translation>Ogni tasto può fare qualunque compito: scegli il compito, poi premi il tasto. Un pedale o un interruttore MIDI è un tasto come gli altri. Un solo pedale può fare tutto: una pressione avvia o segna un errore, due annullano l&apos;ultimo segno; tenendolo premuto fermi il clic o, da fermo, apri il prossimo passaggio.</translation>
    </message>
    <message id="help.settings.why.choices">
        <source>Three days until a passage is secure, four seconds to breathe after a miss, a quarter of a second from a slip to the key: these are our choices, and you can change them. We know that separate days help (Simmons 2012), but not how many are best.</source>
        <translation>Tre giorni perché un passaggio sia sicuro, quattro secondi per respirare dopo un errore, un quarto di secondo dallo sbaglio al tasto: sono scelte nostre, e puoi cambiarle. Che giorni diversi aiutino si sa (Simmons 2012), ma non quanti siano meglio.</translation>
    </message>
    <message id="help.settings.why.level">
        <source>The click starts low. Your instrument is louder, and that is fine: choose a sharper voice rather than a higher volume. Two metres from the screen the click is softer than beside it, and your own tone covers part of it. Piolo cannot know how loud it is in your room. So let your ears decide: hold a long note as loud as usual with the click on, and set the volume so that you just hear it. When you change voice or volume, a short bar lets you hear the change.</source>
        <translation>Il clic parte piano. Il tuo strumento è più forte, e va bene così: scegli un suono più tagliente invece di alzare il volume. A due metri dallo schermo il clic è più debole che accanto, e il tuo suono ne copre una parte. Quanto sia forte nella tua stanza, Piolo non può saperlo. Lascia decidere alle orecchie: con il clic acceso tieni una nota lunga, forte come al solito, e regola il volume in modo da sentirlo appena. Quando cambi suono o volume, una breve battuta ti fa sentire la differenza.</translation>
    </message>
    <message id="help.sources">
        <source>Sources</source>
        <translation>Fonti</translation>
    </message>
    <message id="help.sources.hint">
        <source>What we say about these sources is in their abstracts or opening pages.</source>
        <translation>Ciò che qui ne diciamo sta nei loro riassunti o nelle prime pagine.</translation>
    </message>
    <message id="help.start.key.control">
        <source>go to the next control, and back</source>
        <translation>al comando successivo, e indietro</translation>
    </message>
    <message id="help.start.key.control.keys">
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Maiusc+Tab</translation>
    </message>
    <message id="help.start.key.help">
        <source>help for the current screen, while the click is stopped</source>
        <translation>guida alla schermata attuale, mentre il clic tace</translation>
    </message>
    <message id="help.start.key.press">
        <source>press the focused control</source>
        <translation>premi il comando scelto</translation>
    </message>
    <message id="help.start.key.press.keys">
        <source>Return, Space</source>
        <translation>Invio, Spazio</translation>
    </message>
    <message id="help.start.title">
        <source>From slow to the whole piece</source>
        <translation>Da lento al brano intero</translation>
    </message>
    <message id="help.start.what.piolo">
        <source>Piolo helps you get a hard passage clean. Choose a tempo at which nothing goes wrong, and play the passage again and again. You touch one key, and only for a miss: the tempo follows how cleanly you play.</source>
        <translation>Piolo ti aiuta a rendere pulito un passaggio difficile. Scegli un tempo a cui non sbagli nulla, e suona il passaggio più e più volte. Tocchi un solo tasto, e solo per un errore: il tempo segue quanto suoni pulito.</translation>
    </message>
    <message id="help.start.what.stages">
        <source>A passage goes through five stages: slow with the click, secure at the target, without the click, in context with two more bars on each side, and in run-throughs of the piece. When your log supports the next stage, the drill screen says why. You decide, and you can go back.</source>
        <translation>Un passaggio attraversa cinque tappe: lento con il clic, sicuro al tempo obiettivo, senza clic, nel contesto con altre due battute per lato, e nelle filate del brano. Quando il tuo diario suggerisce la tappa successiva, la schermata «Studio» dice perché. Decidi tu, e puoi tornare indietro.</translation>
    </message>
    <message id="help.start.why.few-misses">
        <source>How well a passage was kept overnight was linked to how few repetitions were wrong, not to how long or how often it was played: seventeen pianists, three bars (Duke, Simmons and Cash 2009). That is why Piolo aims for few misses, and counts clean runs rather than minutes.</source>
        <translation>Quanto un passaggio restava dopo una notte andava di pari passo con quanto poche ripetizioni erano sbagliate, non con quanto a lungo o quanto spesso era suonato: diciassette pianisti, tre battute (Duke, Simmons e Cash 2009). Per questo Piolo punta a pochi errori, e conta le ripetizioni pulite, non i minuti.</translation>
    </message>
    <message id="help.start.why.slow">
        <source>Nearly all players say that they practise slowly (Allingham and Wöllner 2022): that shows what is usual, not what works. They also see its pitfalls, such as movements that differ from fast ones (2023). That is why you can always try a run at the target.</source>
        <translation>Quasi tutti quelli che suonano dicono di studiare lentamente (Allingham e Wöllner 2022): questo mostra che cosa è abituale, non che cosa funziona. Ne vedono anche le insidie, come movimenti diversi da quelli veloci (2023). Per questo puoi sempre provare una ripetizione al tempo obiettivo.</translation>
    </message>
    <message id="help.title">
        <source>Help</source>
        <translation>Guida</translation>
    </message>
    <message id="help.what">
        <source>What it is for</source>
        <translation>A che cosa serve</translation>
    </message>
    <message id="help.why">
        <source>Why it works this way</source>
        <translation>Perché funziona così</translation>
    </message>
    <message id="instrument.alto-saxophone">
        <source>alto saxophone</source>
        <translation>sassofono contralto</translation>
    </message>
    <message id="instrument.baritone-saxophone">
        <source>baritone saxophone</source>
        <translation>sassofono baritono</translation>
    </message>
    <message id="instrument.bass-clarinet">
        <source>bass clarinet</source>
        <translation>clarinetto basso</translation>
    </message>
    <message id="instrument.bassoon">
        <source>bassoon</source>
        <translation>fagotto</translation>
    </message>
    <message id="instrument.clarinet-a">
        <source>clarinet in A</source>
        <translation>clarinetto in La</translation>
    </message>
    <message id="instrument.clarinet-b-flat">
        <source>clarinet in B flat</source>
        <translation>clarinetto in Si♭</translation>
    </message>
    <message id="instrument.clarinet-e-flat">
        <source>clarinet in E flat</source>
        <translation>clarinetto in Mi♭</translation>
    </message>
    <message id="instrument.cornet">
        <source>cornet</source>
        <translation>cornetta</translation>
    </message>
    <message id="instrument.english-horn">
        <source>English horn</source>
        <translation>corno inglese</translation>
    </message>
    <message id="instrument.euphonium">
        <source>euphonium</source>
        <translation>eufonio</translation>
    </message>
    <message id="instrument.euphonium-treble">
        <source>euphonium in treble clef</source>
        <translation>eufonio in chiave di violino</translation>
    </message>
    <message id="instrument.flugelhorn">
        <source>flugelhorn</source>
        <translation>flicorno soprano</translation>
    </message>
    <message id="instrument.flute">
        <source>flute</source>
        <translation>flauto</translation>
    </message>
    <message id="instrument.horn-f">
        <source>horn in F</source>
        <translation>corno in Fa</translation>
    </message>
    <message id="instrument.oboe">
        <source>oboe</source>
        <translation>oboe</translation>
    </message>
    <message id="instrument.piccolo">
        <source>piccolo</source>
        <translation>ottavino</translation>
    </message>
    <message id="instrument.soprano-saxophone">
        <source>soprano saxophone</source>
        <translation>sassofono soprano</translation>
    </message>
    <message id="instrument.tenor-saxophone">
        <source>tenor saxophone</source>
        <translation>sassofono tenore</translation>
    </message>
    <message id="instrument.trombone">
        <source>trombone</source>
        <translation>trombone</translation>
    </message>
    <message id="instrument.trumpet-b-flat">
        <source>trumpet in B flat</source>
        <translation>tromba in Si♭</translation>
    </message>
    <message id="instrument.trumpet-c">
        <source>trumpet in C</source>
        <translation>tromba in Do</translation>
    </message>
    <message id="instrument.tuba">
        <source>tuba</source>
        <translation>tuba</translation>
    </message>
    <message id="instruments.as-in">
        <source>as in “%1”</source>
        <translation>come in «%1»</translation>
    </message>
    <message id="instruments.clarinets">
        <source>Clarinets</source>
        <translation>Clarinetti</translation>
    </message>
    <message id="instruments.double-reeds">
        <source>Double reeds</source>
        <translation>Ance doppie</translation>
    </message>
    <message id="instruments.flutes">
        <source>Flutes</source>
        <translation>Flauti</translation>
    </message>
    <message id="instruments.high-brass">
        <source>High brass</source>
        <translation>Ottoni acuti</translation>
    </message>
    <message id="instruments.low-brass">
        <source>Low brass</source>
        <translation>Ottoni gravi</translation>
    </message>
    <message id="instruments.none">
        <source>No instrument has “%1” in its name.</source>
        <translation>Nessuno strumento ha «%1» nel nome.</translation>
    </message>
    <message id="instruments.saxophones">
        <source>Saxophones</source>
        <translation>Sassofoni</translation>
    </message>
    <message id="instruments.search">
        <source>Search: any part of the name</source>
        <translation>Cerca: una parte qualsiasi del nome</translation>
    </message>
    <message id="keys.action-keys">
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message id="keys.action.back">
        <source>Take back the last mark</source>
        <translation>Annulla l&apos;ultimo segno</translation>
    </message>
    <message id="keys.action.clean">
        <source>Mark clean in open-ended runs; in a run-through: the last note</source>
        <translation>Con fine libera: segna pulita; in una filata: ultima nota</translation>
    </message>
    <message id="keys.action.click">
        <source>Open “Just a click”</source>
        <translation>Apri «Solo il clic»</translation>
    </message>
    <message id="keys.action.faster">
        <source>Faster, while stopped</source>
        <translation>Più veloce, da fermo</translation>
    </message>
    <message id="keys.action.hear">
        <source>Hear the passage first, while stopped</source>
        <translation>Ascolta prima il passaggio, da fermo</translation>
    </message>
    <message id="keys.action.miss">
        <source>Start; while the click runs: mark a miss; in a run-through: mark a stop</source>
        <translation>Inizia; mentre suona il clic: segna un errore; in una filata: segna uno stop</translation>
    </message>
    <message id="keys.action.next">
        <source>Next passage, while stopped</source>
        <translation>Prossimo passaggio, da fermo</translation>
    </message>
    <message id="keys.action.pedal">
        <source>One pedal for everything: press, hold, press twice</source>
        <translation>Un pedale per tutto: premi, tieni, premi due volte</translation>
    </message>
    <message id="keys.action.save">
        <source>In a passage&apos;s form: save and drill</source>
        <translation>Nel modulo di un passaggio: salva e studia</translation>
    </message>
    <message id="keys.action.slower">
        <source>Slower, while stopped</source>
        <translation>Più lento, da fermo</translation>
    </message>
    <message id="keys.action.stop">
        <source>Stop the click; give up a run-through</source>
        <translation>Ferma il clic; interrompi una filata</translation>
    </message>
    <message id="keys.action.stretch">
        <source>In the log: make a passage of the bars that break</source>
        <translation>Nel diario: crea un passaggio dalle battute in cui si inceppa</translation>
    </message>
    <message id="keys.action.tap">
        <source>In “Just a click”: tap the tempo</source>
        <translation>In «Solo il clic»: batti il tempo</translation>
    </message>
    <message id="keys.action.try">
        <source>Try once at the target</source>
        <translation>Una prova al tempo obiettivo</translation>
    </message>
    <message id="keys.add">
        <source>Add a key</source>
        <translation>Aggiungi tasto</translation>
    </message>
    <message id="keys.add.spoken">
        <source>%1: add a key</source>
        <translation>%1: aggiungi un tasto</translation>
    </message>
    <message id="keys.chip">
        <source>%1  ✕</source>
        <translation>%1  ✕</translation>
    </message>
    <message id="keys.chip.remove">
        <source>Remove %1</source>
        <translation>Rimuovi %1</translation>
    </message>
    <message id="keys.done">
        <source>✓ %1</source>
        <translation>✓ %1</translation>
    </message>
    <message id="keys.full">
        <source>%1 was removed: an action has at most %2 keys.</source>
        <translation>%1 è stato rimosso: un&apos;azione ha al massimo %2 tasti.</translation>
    </message>
    <message id="keys.held">
        <source>%1 held</source>
        <translation>%1 tenuto premuto</translation>
    </message>
    <message id="keys.kept">
        <source>%1 stays: it is the last key for “%2”. Add another key first.</source>
        <translation>%1 resta: è l&apos;ultimo tasto per «%2». Prima aggiungine un altro.</translation>
    </message>
    <message id="keys.last">
        <source>%1 is the last key for “%2”. Give that action another key first.</source>
        <translation>%1 è l&apos;ultimo tasto per «%2». Prima dai a questa azione un altro tasto.</translation>
    </message>
    <message id="keys.midi.controller">
        <source>MIDI: controller %1, channel %2</source>
        <translation>MIDI: controller %1, canale %2</translation>
    </message>
    <message id="keys.midi.listening">
        <source>Listening to %1. Press the switch.</source>
        <translation>In ascolto di %1. Premi l&apos;interruttore.</translation>
    </message>
    <message id="keys.midi.none">
        <source>MIDI is not available: this system has no MIDI sequencer. A pedal that acts as a keyboard still works.</source>
        <translation>Il MIDI non è disponibile: questo sistema non ha un sequencer MIDI. Un pedale che fa da tastiera funziona comunque.</translation>
    </message>
    <message id="keys.midi.note">
        <source>MIDI: note %1, channel %2</source>
        <translation>MIDI: nota %1, canale %2</translation>
    </message>
    <message id="keys.midi.program">
        <source>MIDI: program %1, channel %2</source>
        <translation>MIDI: programma %1, canale %2</translation>
    </message>
    <message id="keys.midi.unplugged">
        <source>No MIDI input is connected. Connect one, then press the switch.</source>
        <translation>Nessun ingresso MIDI è collegato. Collegane uno, poi premi l&apos;interruttore.</translation>
    </message>
    <message id="keys.moved-from">
        <source>%1 is no longer a key for “%2”.</source>
        <translation>%1 non è più un tasto per «%2».</translation>
    </message>
    <message id="keys.moved-to">
        <source>%1 is now a key for “%2”.</source>
        <translation>%1 ora è un tasto per «%2».</translation>
    </message>
    <message id="keys.none">
        <source>no key</source>
        <translation>nessun tasto</translation>
    </message>
    <message id="keys.press">
        <source>Press a key…</source>
        <translation>Premi un tasto…</translation>
    </message>
    <message id="keys.press.spoken">
        <source>%1: press a key now, or Esc to cancel</source>
        <translation>%1: premi ora un tasto, o Esc per annullare</translation>
    </message>
    <message id="keys.removed">
        <source>%1 is no longer a key for “%2”.</source>
        <translation>%1 non è più un tasto per «%2».</translation>
    </message>
    <message id="keys.reset">
        <source>Restore default keys</source>
        <translation>Ripristina i tasti predefiniti</translation>
    </message>
    <message id="keys.set.left-right">
        <source>Left and Right arrows</source>
        <translation>Frecce sinistra e destra</translation>
    </message>
    <message id="keys.set.one-pedal">
        <source>A single pedal, PgDown</source>
        <translation>Un solo pedale, Pag↓</translation>
    </message>
    <message id="keys.set.pages">
        <source>PgUp and PgDown</source>
        <translation>Pag↑ e Pag↓</translation>
    </message>
    <message id="keys.set.space-return">
        <source>Space and Return</source>
        <translation>Spazio e Invio</translation>
    </message>
    <message id="keys.set.up-down">
        <source>Up and Down arrows</source>
        <translation>Frecce su e giù</translation>
    </message>
    <message id="keys.take-over">
        <source>Reassign</source>
        <translation>Riassegna</translation>
    </message>
    <message id="keys.taken">
        <source>%1 is already used for “%2”. Press it again to reassign it, or press another key, or Esc.</source>
        <translation>%1 è già usato per «%2». Premilo di nuovo per riassegnarlo, o premi un altro tasto, o Esc.</translation>
    </message>
    <message id="keys.twice">
        <source>%1 twice</source>
        <translation>%1 due volte</translation>
    </message>
    <message id="keys.unchanged">
        <source>You already use these keys.</source>
        <translation>Usi già questi tasti.</translation>
    </message>
    <message id="keys.warning">
        <source>▲ %1</source>
        <translation>▲ %1</translation>
    </message>
    <message id="ladder.best">
        <source>best</source>
        <translation>record</translation>
    </message>
    <message id="ladder.now">
        <source>current tempo, %1</source>
        <translation>tempo attuale, %1</translation>
    </message>
    <message id="ladder.spoken">
        <source>Tempo ladder</source>
        <translation>Scala dei tempi</translation>
    </message>
    <message id="ladder.start">
        <source>start</source>
        <translation>partenza</translation>
    </message>
    <message id="ladder.target">
        <source>target</source>
        <translation>obiettivo</translation>
    </message>
    <message id="log.bad-lines">
        <source>Some lines of the practice log could not be read and were left as they are: %1</source>
        <translation>Alcune righe del diario di studio non sono leggibili e sono rimaste com&apos;erano: %1</translation>
    </message>
    <message id="log.dates.ahead" numerus="yes">
        <source>%n entries are dated in the future, up to %1. Was a clock wrong?</source>
        <translation>
            <numerusform>%n voce ha una data futura: %1. Un orologio era sbagliato?</numerusform>
            <numerusform>%n voci hanno una data futura, fino al %1. Un orologio era sbagliato?</numerusform>
        </translation>
    </message>
    <message id="log.dates.day">
        <source>When did you last play then?</source>
        <translation>Quando hai suonato l’ultima volta?</translation>
    </message>
    <message id="log.dates.done">
        <source>Dates corrected</source>
        <translation>Date corrette</translation>
    </message>
    <message id="log.dates.put-right">
        <source>Correct dates</source>
        <translation>Correggi le date</translation>
    </message>
    <message id="log.dates.undo">
        <source>Undo</source>
        <translation>Annulla</translation>
    </message>
    <message id="log.day.figures">
        <source>%1 · %2 of %3 clean</source>
        <translation>%1 · %2 di %3 pulite</translation>
    </message>
    <message id="log.day.heading">
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message id="log.day.no-practice">
        <source>%1: no practice</source>
        <translation>%1: niente studio</translation>
    </message>
    <message id="log.day.time">
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message id="log.day.time-and-runs">
        <source>%1: %2, %3 of %4 clean</source>
        <translation>%1: %2, %3 di %4 pulite</translation>
    </message>
    <message id="log.days">
        <source>Days</source>
        <translation>Giorni</translation>
    </message>
    <message id="log.days-missed">
        <source>You have not practised for %1 days. A few minutes today are enough to pick up the thread.</source>
        <translation>Da %1 giorni niente studio. Oggi bastano pochi minuti per riprendere il filo.</translation>
    </message>
    <message id="log.days-missed-before">
        <source>You did not practise for %1 days in a row from %2. You have been back since, and that counts.</source>
        <translation>Niente studio per %1 giorni di fila, da %2. Poi hai ripreso, ed è questo che conta.</translation>
    </message>
    <message id="log.empty">
        <source>You have not played anything yet. Every run you drill appears here, day by day.</source>
        <translation>Non hai ancora suonato nulla. Ogni ripetizione che studi compare qui, giorno per giorno.</translation>
    </message>
    <message id="log.entry.edit-note">
        <source>Edit note</source>
        <translation>Modifica la nota</translation>
    </message>
    <message id="log.entry.keep">
        <source>Save</source>
        <translation>Salva</translation>
    </message>
    <message id="log.entry.leave">
        <source>Cancel</source>
        <translation>Annulla</translation>
    </message>
    <message id="log.entry.line">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="log.entry.note">
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message id="log.entry.note.spoken">
        <source>Note on %1</source>
        <translation>Nota: %1</translation>
    </message>
    <message id="log.entry.note.title">
        <source>Note on this run</source>
        <translation>Nota su questa ripetizione</translation>
    </message>
    <message id="log.entry.run">
        <source>the run at %1, %2</source>
        <translation>ripetizione delle %1, %2</translation>
    </message>
    <message id="log.entry.run-of">
        <source>run %1 of %2 at %3, %4</source>
        <translation>ripetizione %1 di %2 delle %3, %4</translation>
    </message>
    <message id="log.entry.run-through">
        <source>the run-through at %1</source>
        <translation>filata delle %1</translation>
    </message>
    <message id="log.entry.take-back">
        <source>Take back</source>
        <translation>Annulla</translation>
    </message>
    <message id="log.entry.take-back.spoken">
        <source>Take back %1</source>
        <translation>Annulla: %1</translation>
    </message>
    <message id="log.entry.tempo">
        <source>the tempo %1 set at %2</source>
        <translation>tempo %1, impostato alle %2</translation>
    </message>
    <message id="log.entry.was-clean">
        <source>It was clean</source>
        <translation>Era pulita</translation>
    </message>
    <message id="log.entry.was-clean.spoken">
        <source>It was clean: %1</source>
        <translation>Era pulita: %1</translation>
    </message>
    <message id="log.entry.was-missed">
        <source>It was a miss</source>
        <translation>Era un errore</translation>
    </message>
    <message id="log.entry.was-missed.spoken">
        <source>It was a miss: %1</source>
        <translation>Era un errore: %1</translation>
    </message>
    <message id="log.filter.every-passage">
        <source>all passages</source>
        <translation>tutti i passaggi</translation>
    </message>
    <message id="log.filter.every-piece">
        <source>all pieces</source>
        <translation>tutti i brani</translation>
    </message>
    <message id="log.filter.everything">
        <source>everything</source>
        <translation>tutto</translation>
    </message>
    <message id="log.filter.first-day">
        <source>all time</source>
        <translation>da sempre</translation>
    </message>
    <message id="log.filter.kind">
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message id="log.filter.months">
        <source>3 months</source>
        <translation>3 mesi</translation>
    </message>
    <message id="log.filter.passage">
        <source>Passage</source>
        <translation>Passaggio</translation>
    </message>
    <message id="log.filter.piece">
        <source>Piece</source>
        <translation>Brano</translation>
    </message>
    <message id="log.filter.run-through">
        <source>run-through</source>
        <translation>filata</translation>
    </message>
    <message id="log.filter.since">
        <source>Period</source>
        <translation>Periodo</translation>
    </message>
    <message id="log.filter.week">
        <source>7 days</source>
        <translation>7 giorni</translation>
    </message>
    <message id="log.filter.weeks">
        <source>4 weeks</source>
        <translation>4 settimane</translation>
    </message>
    <message id="log.filter.year">
        <source>1 year</source>
        <translation>1 anno</translation>
    </message>
    <message id="log.line.a-try">
        <source>a try</source>
        <translation>una prova</translation>
    </message>
    <message id="log.line.aside">
        <source>aside</source>
        <translation>a parte</translation>
    </message>
    <message id="log.line.at-tempo">
        <source>at %1</source>
        <translation>a %1</translation>
    </message>
    <message id="log.line.bar">
        <source>bar %1</source>
        <translation>battuta %1</translation>
    </message>
    <message id="log.line.bars">
        <source>bars %1</source>
        <translation>battute %1</translation>
    </message>
    <message id="log.line.bars-unknown">
        <source>bars unknown</source>
        <translation>battute ignote</translation>
    </message>
    <message id="log.line.by-hand">
        <source>set by hand</source>
        <translation>impostato a mano</translation>
    </message>
    <message id="log.line.clean">
        <source>clean</source>
        <translation>pulita</translation>
    </message>
    <message id="log.line.climbs">
        <source>climbs to %1</source>
        <translation>sale a %1</translation>
    </message>
    <message id="log.line.corrected">
        <source>%1, changed afterwards</source>
        <translation>%1, cambiata dopo</translation>
    </message>
    <message id="log.line.count-clean">
        <source>%1 clean</source>
        <translation>pulite: %1</translation>
    </message>
    <message id="log.line.count-missed">
        <source>%1 missed</source>
        <translation>con errore: %1</translation>
    </message>
    <message id="log.line.count-void">
        <source>%1 not counted</source>
        <translation>non contate: %1</translation>
    </message>
    <message id="log.line.drops">
        <source>drops to %1</source>
        <translation>scende a %1</translation>
    </message>
    <message id="log.line.figures">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="log.line.given-up">
        <source>given up</source>
        <translation>interrotta</translation>
    </message>
    <message id="log.line.in-a-row">
        <source>%1 clean in a row</source>
        <translation>pulite di fila: %1</translation>
    </message>
    <message id="log.line.in-context">
        <source>in context</source>
        <translation>nel contesto</translation>
    </message>
    <message id="log.line.missed">
        <source>missed</source>
        <translation>con errore</translation>
    </message>
    <message id="log.line.missed-late">
        <source>missed, marked afterwards</source>
        <translation>con errore, segnato dopo</translation>
    </message>
    <message id="log.line.more">
        <source>%1 …</source>
        <translation>%1 …</translation>
    </message>
    <message id="log.line.moves-nothing">
        <source>%1: changes nothing</source>
        <translation>%1: non cambia nulla</translation>
    </message>
    <message id="log.line.named">
        <source>start of the search for the tempo</source>
        <translation>inizio della ricerca del tempo</translation>
    </message>
    <message id="log.line.new-day">
        <source>new day; left at %1</source>
        <translation>nuovo giorno, lasciato a %1</translation>
    </message>
    <message id="log.line.offer-taken">
        <source>suggestion accepted</source>
        <translation>proposta accettata</translation>
    </message>
    <message id="log.line.on-paper">
        <source>on paper</source>
        <translation>su carta</translation>
    </message>
    <message id="log.line.paper">
        <source>paper</source>
        <translation>carta</translation>
    </message>
    <message id="log.line.removed">
        <source>%1 (removed)</source>
        <translation>%1 (rimosso)</translation>
    </message>
    <message id="log.line.run">
        <source>run</source>
        <translation>ripetizione</translation>
    </message>
    <message id="log.line.run-through">
        <source>%1, run-through</source>
        <translation>%1, filata</translation>
    </message>
    <message id="log.line.secure">
        <source>secure</source>
        <translation>sicuro</translation>
    </message>
    <message id="log.line.stays">
        <source>stays at %1</source>
        <translation>resta a %1</translation>
    </message>
    <message id="log.line.tempo-set">
        <source>tempo set</source>
        <translation>tempo impostato</translation>
    </message>
    <message id="log.line.try">
        <source>try</source>
        <translation>prova</translation>
    </message>
    <message id="log.line.void">
        <source>not counted</source>
        <translation>non conta</translation>
    </message>
    <message id="log.line.void-sound">
        <source>not counted: the sound was lost</source>
        <translation>non conta: audio interrotto</translation>
    </message>
    <message id="log.line.void-stopped">
        <source>not counted: stopped</source>
        <translation>non conta: fermata</translation>
    </message>
    <message id="log.line.void-tempo">
        <source>not counted: the tempo changed during the run</source>
        <translation>non conta: tempo cambiato a metà</translation>
    </message>
    <message id="log.line.without-click">
        <source>without the click</source>
        <translation>senza clic</translation>
    </message>
    <message id="log.mark.clean">
        <source>clean: %1</source>
        <translation>pulita: %1</translation>
    </message>
    <message id="log.mark.clean-unmarked">
        <source>clean: automatic</source>
        <translation>pulita: automatica</translation>
    </message>
    <message id="log.mark.missed">
        <source>miss: %1</source>
        <translation>errore: %1</translation>
    </message>
    <message id="log.mark.stop">
        <source>stop: %1</source>
        <translation>stop: %1</translation>
    </message>
    <message id="log.more" numerus="yes">
        <source>Show more (%n left)</source>
        <translation>
            <numerusform>Mostra altro (ancora %n)</numerusform>
            <numerusform>Mostra altro (ancora %n)</numerusform>
        </translation>
    </message>
    <message id="log.never-two-days-missed">
        <source>No two days missed in a row in four weeks; one now and then is fine.</source>
        <translation>In quattro settimane mai due giorni saltati di fila; uno ogni tanto va bene.</translation>
    </message>
    <message id="log.no-day-missed">
        <source>You have not missed a day since you began.</source>
        <translation>Nemmeno un giorno saltato dall&apos;inizio.</translation>
    </message>
    <message id="log.no-day-missed-lately">
        <source>You have not missed a day in four weeks.</source>
        <translation>Nemmeno un giorno saltato in quattro settimane.</translation>
    </message>
    <message id="log.none-found">
        <source>No entries match these filters.</source>
        <translation>Nessuna voce corrisponde a questi filtri.</translation>
    </message>
    <message id="log.title">
        <source>Practice log</source>
        <translation>Diario di studio</translation>
    </message>
    <message id="log.week.figures">
        <source>%1, %2, %3 clean</source>
        <translation>%1, %2, %3 pulite</translation>
    </message>
    <message id="log.week.last">
        <source>Last week: %1</source>
        <translation>Settimana scorsa: %1</translation>
    </message>
    <message id="log.week.this">
        <source>This week: %1</source>
        <translation>Questa settimana: %1</translation>
    </message>
    <message id="log.worst.clean">
        <source>%1 of %2 clean</source>
        <translation>%1 di %2 pulite</translation>
    </message>
    <message id="log.worst.clean-and-bar">
        <source>%1, most misses in bar %2</source>
        <translation>%1, errori soprattutto a battuta %2</translation>
    </message>
    <message id="log.worst.spoken">
        <source>%1: %2; shows only this passage</source>
        <translation>%1: %2; mostra solo questo passaggio</translation>
    </message>
    <message id="log.worst.title">
        <source>Needs most work (last two weeks)</source>
        <translation>Da lavorare di più (ultime due settimane)</translation>
    </message>
    <message id="manner.as-written">
        <source>as written</source>
        <translation>come scritto</translation>
    </message>
    <message id="manner.double-tongued">
        <source>double-tongued</source>
        <translation>doppio staccato</translation>
    </message>
    <message id="manner.in-groups">
        <source>in groups</source>
        <translation>a gruppi</translation>
    </message>
    <message id="manner.in-groups-of">
        <source>in groups of %1</source>
        <translation>a gruppi di %1</translation>
    </message>
    <message id="manner.long-short">
        <source>long and short</source>
        <translation>lunga-breve</translation>
    </message>
    <message id="manner.short-long">
        <source>short and long</source>
        <translation>breve-lunga</translation>
    </message>
    <message id="manner.slur-three-tongue-one">
        <source>slur three, tongue one</source>
        <translation>3 legate, 1 staccata</translation>
    </message>
    <message id="manner.slur-two-tongue-two">
        <source>slur two, tongue two</source>
        <translation>2 legate, 2 staccate</translation>
    </message>
    <message id="manner.slurred">
        <source>all slurred</source>
        <translation>tutto legato</translation>
    </message>
    <message id="manner.staccato">
        <source>staccato</source>
        <translation>staccato secco</translation>
    </message>
    <message id="manner.tongue-one-slur-three">
        <source>tongue one, slur three</source>
        <translation>1 staccata, 3 legate</translation>
    </message>
    <message id="manner.tongued">
        <source>all tongued</source>
        <translation>tutto staccato</translation>
    </message>
    <message id="meter.beats" numerus="yes">
        <source>%n beats in the bar</source>
        <translation>
            <numerusform>%n movimento nella battuta</numerusform>
            <numerusform>%n movimenti nella battuta</numerusform>
        </translation>
    </message>
    <message id="minutes.drilled">
        <source>drilled</source>
        <translation>studio</translation>
    </message>
    <message id="minutes.most">
        <source>most: %1 min</source>
        <translation>massimo: %1 min</translation>
    </message>
    <message id="minutes.other-runs">
        <source>other runs</source>
        <translation>altre</translation>
    </message>
    <message id="minutes.run-throughs">
        <source>run-throughs</source>
        <translation>filate</translation>
    </message>
    <message id="minutes.spoken">
        <source>Minutes per day, four weeks</source>
        <translation>Minuti al giorno, quattro settimane</translation>
    </message>
    <message id="minutes.title">
        <source>Minutes per day</source>
        <translation>Minuti al giorno</translation>
    </message>
    <message id="minutes.today">
        <source>today</source>
        <translation>oggi</translation>
    </message>
    <message id="minutes.weeks-ago">
        <source>4 weeks ago</source>
        <translation>4 settimane fa</translation>
    </message>
    <message id="nav.help">
        <source>Help</source>
        <translation>Guida</translation>
    </message>
    <message id="nav.log">
        <source>Log</source>
        <translation>Diario</translation>
    </message>
    <message id="nav.now">
        <source>Back to %1</source>
        <translation>Torna a %1</translation>
    </message>
    <message id="nav.passages">
        <source>Passages</source>
        <translation>Passaggi</translation>
    </message>
    <message id="nav.paused">
        <source>%1: paused</source>
        <translation>%1: in pausa</translation>
    </message>
    <message id="nav.scales">
        <source>Scales</source>
        <translation>Scale</translation>
    </message>
    <message id="nav.screens">
        <source>Screens</source>
        <translation>Schermate</translation>
    </message>
    <message id="nav.settings">
        <source>Settings</source>
        <translation>Impostazioni</translation>
    </message>
    <message id="nav.today">
        <source>%1 today</source>
        <translation>%1 oggi</translation>
    </message>
    <message id="note.a">
        <source>A</source>
        <translation>La</translation>
    </message>
    <message id="note.a-flat">
        <source>A♭</source>
        <translation>La♭</translation>
    </message>
    <message id="note.a-sharp">
        <source>A♯</source>
        <translation>La♯</translation>
    </message>
    <message id="note.b">
        <source>B</source>
        <translation>Si</translation>
    </message>
    <message id="note.b-flat">
        <source>B♭</source>
        <translation>Si♭</translation>
    </message>
    <message id="note.b-sharp">
        <source>B♯</source>
        <translation>Si♯</translation>
    </message>
    <message id="note.c">
        <source>C</source>
        <translation>Do</translation>
    </message>
    <message id="note.c-flat">
        <source>C♭</source>
        <translation>Do♭</translation>
    </message>
    <message id="note.c-sharp">
        <source>C♯</source>
        <translation>Do♯</translation>
    </message>
    <message id="note.d">
        <source>D</source>
        <translation>Re</translation>
    </message>
    <message id="note.d-flat">
        <source>D♭</source>
        <translation>Re♭</translation>
    </message>
    <message id="note.d-sharp">
        <source>D♯</source>
        <translation>Re♯</translation>
    </message>
    <message id="note.e">
        <source>E</source>
        <translation>Mi</translation>
    </message>
    <message id="note.e-flat">
        <source>E♭</source>
        <translation>Mi♭</translation>
    </message>
    <message id="note.e-sharp">
        <source>E♯</source>
        <translation>Mi♯</translation>
    </message>
    <message id="note.f">
        <source>F</source>
        <translation>Fa</translation>
    </message>
    <message id="note.f-flat">
        <source>F♭</source>
        <translation>Fa♭</translation>
    </message>
    <message id="note.f-sharp">
        <source>F♯</source>
        <translation>Fa♯</translation>
    </message>
    <message id="note.g">
        <source>G</source>
        <translation>Sol</translation>
    </message>
    <message id="note.g-flat">
        <source>G♭</source>
        <translation>Sol♭</translation>
    </message>
    <message id="note.g-sharp">
        <source>G♯</source>
        <translation>Sol♯</translation>
    </message>
    <message id="number.eight">
        <source>eight</source>
        <translation>otto</translation>
    </message>
    <message id="number.eleven">
        <source>eleven</source>
        <translation>undici</translation>
    </message>
    <message id="number.five">
        <source>five</source>
        <translation>cinque</translation>
    </message>
    <message id="number.four">
        <source>four</source>
        <translation>quattro</translation>
    </message>
    <message id="number.nine">
        <source>nine</source>
        <translation>nove</translation>
    </message>
    <message id="number.one">
        <source>one</source>
        <translation>1</translation>
    </message>
    <message id="number.seven">
        <source>seven</source>
        <translation>sette</translation>
    </message>
    <message id="number.six">
        <source>six</source>
        <translation>sei</translation>
    </message>
    <message id="number.ten">
        <source>ten</source>
        <translation>dieci</translation>
    </message>
    <message id="number.three">
        <source>three</source>
        <translation>tre</translation>
    </message>
    <message id="number.twelve">
        <source>twelve</source>
        <translation>dodici</translation>
    </message>
    <message id="number.two">
        <source>two</source>
        <translation>due</translation>
    </message>
    <message id="page.curve">
        <source>Tempo curve</source>
        <translation>Curva del tempo</translation>
    </message>
    <message id="page.edit">
        <source>Edit</source>
        <translation>Modifica</translation>
    </message>
    <message id="page.next" numerus="yes">
        <source>%n more clean runs in a row, then %1.</source>
        <translation>
            <numerusform>Ancora %n ripetizione pulita, poi %1.</numerusform>
            <numerusform>Ancora %n ripetizioni pulite di fila, poi %1.</numerusform>
        </translation>
    </message>
    <message id="page.notes">
        <source>Notes on the piece</source>
        <translation>Note sul brano</translation>
    </message>
    <message id="page.stage">
        <source>Stage: %1</source>
        <translation>Tappa: %1</translation>
    </message>
    <message id="page.standing">
        <source>of %1 · %2</source>
        <translation>di %1 · %2</translation>
    </message>
    <message id="paper.enter">
        <source>Enter a sheet</source>
        <translation>Registra un foglio</translation>
    </message>
    <message id="paper.enter.choose-passage">
        <source>Choose a passage on the left first.</source>
        <translation>Prima scegli un passaggio a sinistra.</translation>
    </message>
    <message id="paper.enter.count">
        <source>%1 clean, %2 missed</source>
        <translation>%1 pulite, %2 con errore</translation>
    </message>
    <message id="paper.enter.day">
        <source>Day you played it</source>
        <translation>Giorno in cui hai suonato</translation>
    </message>
    <message id="paper.enter.done" numerus="yes">
        <source>%n runs were added to the log.</source>
        <translation>
            <numerusform>%n ripetizione aggiunta al diario.</numerusform>
            <numerusform>%n ripetizioni aggiunte al diario.</numerusform>
        </translation>
    </message>
    <message id="paper.enter.fault.before">
        <source>not before %1, the last day in its log; the rule goes on from there</source>
        <translation>non prima di %1, l&apos;ultimo giorno nel suo diario; da lì continua la regola</translation>
    </message>
    <message id="paper.enter.fault.day">
        <source>a date such as %1</source>
        <translation>una data come %1</translation>
    </message>
    <message id="paper.enter.fault.future">
        <source>this day is in the future</source>
        <translation>questo giorno è nel futuro</translation>
    </message>
    <message id="paper.enter.fault.tempo">
        <source>a tempo from 10 to 400</source>
        <translation>un tempo da 10 a 400</translation>
    </message>
    <message id="paper.enter.keep">
        <source>Save to log</source>
        <translation>Salva nel diario</translation>
    </message>
    <message id="paper.enter.lowest">
        <source>Lowest tempo on the sheet</source>
        <translation>Tempo più basso sul foglio</translation>
    </message>
    <message id="paper.enter.misses">
        <source>misses</source>
        <translation>errori</translation>
    </message>
    <message id="paper.enter.misses-first">
        <source>On each rung, misses count before circles.</source>
        <translation>Su ogni piolo gli errori contano prima dei cerchi.</translation>
    </message>
    <message id="paper.enter.misses.spoken">
        <source>Misses at %1</source>
        <translation>Errori a %1</translation>
    </message>
    <message id="paper.enter.of">
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message id="paper.enter.result">
        <source>%1: see the result above.</source>
        <translation>%1: il risultato è qui sopra.</translation>
    </message>
    <message id="paper.enter.result.best">
        <source>Best with a full streak</source>
        <translation>Record con serie piena</translation>
    </message>
    <message id="paper.enter.result.best.none">
        <source>none yet</source>
        <translation>ancora nessuno</translation>
    </message>
    <message id="paper.enter.result.secures">
        <source>Full streaks at the target</source>
        <translation>Serie piene al tempo obiettivo</translation>
    </message>
    <message id="paper.enter.result.streak">
        <source>Clean in a row</source>
        <translation>Pulite di fila</translation>
    </message>
    <message id="paper.enter.result.streak.of">
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message id="paper.enter.result.tempo">
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message id="paper.enter.rungs">
        <source>Rungs of the sheet</source>
        <translation>Pioli del foglio</translation>
    </message>
    <message id="paper.enter.take-back">
        <source>Take all back</source>
        <translation>Annulla tutto</translation>
    </message>
    <message id="paper.enter.target">
        <source>%1 ◆</source>
        <translation>%1 ◆</translation>
    </message>
    <message id="paper.enter.target.spoken">
        <source>%1, the target</source>
        <translation>%1, l&apos;obiettivo</translation>
    </message>
    <message id="paper.enter.tempo">
        <source>tempo</source>
        <translation>tempo</translation>
    </message>
    <message id="paper.enter.ticked">
        <source>circles ticked</source>
        <translation>cerchi spuntati</translation>
    </message>
    <message id="paper.enter.ticked.spoken">
        <source>Circles ticked at %1</source>
        <translation>Cerchi spuntati a %1</translation>
    </message>
    <message id="paper.print">
        <source>Print a sheet</source>
        <translation>Stampa un foglio</translation>
    </message>
    <message id="paper.print.a4">
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message id="paper.print.file">
        <source>File name (.pdf, .svg or .png)</source>
        <translation>Nome del file (.pdf, .svg o .png)</translation>
    </message>
    <message id="paper.print.hint">
        <source>Print a ladder for each passage, from its current tempo to its target, with a circle for each clean run, and tick it in pencil.</source>
        <translation>Stampa una scala per ogni passaggio, dal tempo attuale all&apos;obiettivo, con un cerchio per ogni ripetizione pulita, e spuntala a matita.</translation>
    </message>
    <message id="paper.print.letter">
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message id="paper.print.most">
        <source>At most %1 passages fit on one sheet.</source>
        <translation>In un foglio stanno al massimo %1 passaggi.</translation>
    </message>
    <message id="paper.print.one-page">
        <source>%1 on one page</source>
        <translation>%1 su una pagina</translation>
    </message>
    <message id="paper.print.pages">
        <source>%1 on %2 pages</source>
        <translation>%1 su %2 pagine</translation>
    </message>
    <message id="paper.print.paper">
        <source>Paper</source>
        <translation>Carta</translation>
    </message>
    <message id="paper.print.save">
        <source>Save sheet</source>
        <translation>Salva il foglio</translation>
    </message>
    <message id="paper.print.tick">
        <source>Tick the passages to print.</source>
        <translation>Spunta i passaggi da stampare.</translation>
    </message>
    <message id="paper.title">
        <source>Practice on paper</source>
        <translation>Studio su carta</translation>
    </message>
    <message id="paper.what-to-do">
        <source>What to do</source>
        <translation>Che cosa fare</translation>
    </message>
    <message id="parts.back">
        <source>Back</source>
        <translation>Indietro</translation>
    </message>
    <message id="parts.close">
        <source>Close</source>
        <translation>Chiudi</translation>
    </message>
    <message id="parts.fold.closed">
        <source>%1, closed</source>
        <translation>%1, chiuso</translation>
    </message>
    <message id="parts.fold.open">
        <source>%1, open</source>
        <translation>%1, aperto</translation>
    </message>
    <message id="parts.label-value">
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message id="parts.name-key">
        <source>%1, key %2</source>
        <translation>%1, tasto %2</translation>
    </message>
    <message id="parts.sign-word">
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message id="passages.by-climb">
        <source>furthest from target</source>
        <translation>più lontano dall&apos;obiettivo</translation>
    </message>
    <message id="passages.by-date">
        <source>next due date</source>
        <translation>prossima scadenza</translation>
    </message>
    <message id="passages.by-rest">
        <source>longest rested</source>
        <translation>fermo da più tempo</translation>
    </message>
    <message id="passages.date-days">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="passages.files">
        <source>Passage files</source>
        <translation>File di passaggi</translation>
    </message>
    <message id="passages.from-score">
        <source>From a score</source>
        <translation>Da partitura</translation>
    </message>
    <message id="passages.hide-removed">
        <source>Hide removed passages</source>
        <translation>Nascondi i passaggi rimossi</translation>
    </message>
    <message id="passages.line">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="passages.more">
        <source>More</source>
        <translation>Altro</translation>
    </message>
    <message id="passages.new">
        <source>New passage</source>
        <translation>Nuovo passaggio</translation>
    </message>
    <message id="passages.none">
        <source>No passages yet. Create your first with the form on the right.</source>
        <translation>Ancora nessun passaggio. Crea il primo con il modulo a destra.</translation>
    </message>
    <message id="passages.none-found">
        <source>No passage contains all of these words.</source>
        <translation>Nessun passaggio contiene tutte queste parole.</translation>
    </message>
    <message id="passages.not-played">
        <source>not played yet</source>
        <translation>non ancora suonato</translation>
    </message>
    <message id="passages.of-target">
        <source>of %1</source>
        <translation>di %1</translation>
    </message>
    <message id="passages.on-its-own">
        <source>No piece</source>
        <translation>Nessun brano</translation>
    </message>
    <message id="passages.on-its-own.inline">
        <source>no piece</source>
        <translation>nessun brano</translation>
    </message>
    <message id="passages.on-paper">
        <source>On paper</source>
        <translation>Su carta</translation>
    </message>
    <message id="passages.order">
        <source>Sort by</source>
        <translation>Ordina per</translation>
    </message>
    <message id="passages.played">
        <source>played %1</source>
        <translation>suonato %1</translation>
    </message>
    <message id="passages.removed">
        <source>removed</source>
        <translation>rimosso</translation>
    </message>
    <message id="passages.removed.notice">
        <source>“%1” was removed.</source>
        <translation>«%1» è stato rimosso.</translation>
    </message>
    <message id="passages.restore">
        <source>Undo</source>
        <translation>Annulla</translation>
    </message>
    <message id="passages.search">
        <source>Search</source>
        <translation>Cerca</translation>
    </message>
    <message id="passages.secure" numerus="yes">
        <source>secure on %n days</source>
        <translation>
            <numerusform>sicuro in %n giorno</numerusform>
            <numerusform>sicuro in %n giorni</numerusform>
        </translation>
    </message>
    <message id="passages.secure-so-far" numerus="yes">
        <source>secure on %1 of %n days</source>
        <translation>
            <numerusform>sicuro in %1 giorno su %n</numerusform>
            <numerusform>sicuro in %1 giorni su %n</numerusform>
        </translation>
    </message>
    <message id="passages.show-removed">
        <source>Show removed passages</source>
        <translation>Mostra i passaggi rimossi</translation>
    </message>
    <message id="passages.spoken">
        <source>%1, %2, %3: at %4 of %5, %6, %7</source>
        <translation>%1, %2, %3: a %4 di %5, %6, %7</translation>
    </message>
    <message id="passages.title">
        <source>Passages</source>
        <translation>Passaggi</translation>
    </message>
    <message id="pause.drops.title">
        <source>Two drops below the start</source>
        <translation>Due discese sotto la partenza</translation>
    </message>
    <message id="pause.easier">
        <source>Make it easier for a while: fewer bars, a slower tempo, or a rest. Practising the mistake does not help.</source>
        <translation>Rendilo più facile per un po&apos;: meno battute, un tempo più lento o una pausa. Ripetere l&apos;errore non serve.</translation>
    </message>
    <message id="pause.fewer-bars">
        <source>Fewer bars</source>
        <translation>Meno battute</translation>
    </message>
    <message id="pause.go-on">
        <source>Continue anyway</source>
        <translation>Continua così</translation>
    </message>
    <message id="pause.half-tempo">
        <source>Half tempo: %1</source>
        <translation>Metà tempo: %1</translation>
    </message>
    <message id="pause.misses.title">
        <source>Three misses without a clean run</source>
        <translation>Tre errori senza una ripetizione pulita</translation>
    </message>
    <message id="pause.no">
        <source>No</source>
        <translation>No</translation>
    </message>
    <message id="pause.rest">
        <source>Take a rest</source>
        <translation>Fai una pausa</translation>
    </message>
    <message id="pause.stop">
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message id="pause.unmarked" numerus="yes">
        <source>%n runs went by without a key press. If you were not listening to every note, choose No: the runs then do not count, and their climbs are taken back.</source>
        <translation>
            <numerusform>%n ripetizione è passata senza che tu premessi un tasto. Se non ascoltavi ogni nota, scegli No: allora non conta, e la sua salita viene annullata.</numerusform>
            <numerusform>%n ripetizioni sono passate senza che tu premessi un tasto. Se non ascoltavi ogni nota, scegli No: allora non contano, e le loro salite vengono annullate.</numerusform>
        </translation>
    </message>
    <message id="pause.unmarked.title">
        <source>Were these runs clean?</source>
        <translation>Queste ripetizioni erano pulite?</translation>
    </message>
    <message id="pause.yes">
        <source>Yes, continue</source>
        <translation>Sì, avanti</translation>
    </message>
    <message id="pedal.hint">
        <source>Keys that start the click and, while it runs, mark a miss: %1. Do you have a page turner pedal? Press the button here, then the pedal. A MIDI switch works too; see the settings.</source>
        <translation>Tasti che avviano il clic e, mentre suona, segnano un errore: %1. Hai un pedale voltapagina? Fai clic qui sul pulsante, poi premi il pedale. Va bene anche un interruttore MIDI; vedi le impostazioni.</translation>
    </message>
    <message id="pedal.press">
        <source>Press the pedal now (Esc to cancel)</source>
        <translation>Premi ora il pedale (Esc per annullare)</translation>
    </message>
    <message id="pedal.title">
        <source>One key, or a pedal</source>
        <translation>Un tasto, o un pedale</translation>
    </message>
    <message id="pedal.use">
        <source>Use my pedal</source>
        <translation>Usa il mio pedale</translation>
    </message>
    <message id="picks.all">
        <source>All</source>
        <translation>Tutti</translation>
    </message>
    <message id="picks.all.spoken">
        <source>Tick all passages</source>
        <translation>Spunta tutti i passaggi</translation>
    </message>
    <message id="picks.and-scales">
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message id="picks.empty">
        <source>No passages yet.</source>
        <translation>Ancora nessun passaggio.</translation>
    </message>
    <message id="picks.item">
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message id="picks.none">
        <source>None</source>
        <translation>Nessuno</translation>
    </message>
    <message id="picks.none.spoken">
        <source>Untick all passages</source>
        <translation>Togli tutte le spunte</translation>
    </message>
    <message id="picks.of">
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message id="picks.scales" numerus="yes">
        <source>%n scales</source>
        <translation>
            <numerusform>%n scala</numerusform>
            <numerusform>%n scale</numerusform>
        </translation>
    </message>
    <message id="picks.spoken">
        <source>Passages to tick</source>
        <translation>Passaggi da spuntare</translation>
    </message>
    <message id="picks.with-scales">
        <source>Scales too (%1)</source>
        <translation>Anche le scale (%1)</translation>
    </message>
    <message id="picture.add">
        <source>Add a picture of the music</source>
        <translation>Aggiungi un&apos;immagine dello spartito</translation>
    </message>
    <message id="picture.after-saving">
        <source>once the passage is saved</source>
        <translation>quando il passaggio è salvato</translation>
    </message>
    <message id="picture.another">
        <source>Another picture</source>
        <translation>Altra immagine</translation>
    </message>
    <message id="picture.back-to-form">
        <source>Back to the form</source>
        <translation>Torna al modulo</translation>
    </message>
    <message id="picture.bottom">
        <source>bottom</source>
        <translation>basso</translation>
    </message>
    <message id="picture.crop">
        <source>Crop or change the picture</source>
        <translation>Ritaglia o cambia l&apos;immagine</translation>
    </message>
    <message id="picture.crop.spoken">
        <source>The page with its frame. The arrow keys move %1.</source>
        <translation>La pagina con la sua cornice. Le frecce muovono %1.</translation>
    </message>
    <message id="picture.done">
        <source>Done</source>
        <translation>Fatto</translation>
    </message>
    <message id="picture.edge">
        <source>What the arrow keys move</source>
        <translation>Che cosa muovono le frecce</translation>
    </message>
    <message id="picture.edge.bottom">
        <source>the bottom edge</source>
        <translation>il bordo in basso</translation>
    </message>
    <message id="picture.edge.frame">
        <source>the whole frame</source>
        <translation>la cornice intera</translation>
    </message>
    <message id="picture.edge.left">
        <source>the left edge</source>
        <translation>il bordo a sinistra</translation>
    </message>
    <message id="picture.edge.right">
        <source>the right edge</source>
        <translation>il bordo a destra</translation>
    </message>
    <message id="picture.edge.top">
        <source>the top edge</source>
        <translation>il bordo in alto</translation>
    </message>
    <message id="picture.file">
        <source>File</source>
        <translation>File</translation>
    </message>
    <message id="picture.file.hint">
        <source>A PNG or JPEG, or a PDF from which you choose a page. Choose the file, type its path, or drop it here. It is copied into the practice folder.</source>
        <translation>Un PNG o JPEG, o un PDF di cui scegli una pagina. Scegli il file, scrivi il percorso o trascinalo qui. Viene copiato nella cartella di studio.</translation>
    </message>
    <message id="picture.frame">
        <source>frame</source>
        <translation>cornice</translation>
    </message>
    <message id="picture.frame.spoken">
        <source>%1 to %2% across, %3 to %4% down</source>
        <translation>in largo da %1 a %2 %, in alto da %3 a %4 %</translation>
    </message>
    <message id="picture.hint">
        <source>Drag the frame around the passage, or use the arrow keys to move the part that is selected here: Shift for larger steps, Space for the next edge.</source>
        <translation>Trascina la cornice attorno al passaggio, o sposta con le frecce la parte scelta qui: Maiusc per passi più grandi, Spazio per il bordo successivo.</translation>
    </message>
    <message id="picture.keep">
        <source>Use this part</source>
        <translation>Usa questo ritaglio</translation>
    </message>
    <message id="picture.leave">
        <source>Cancel</source>
        <translation>Annulla</translation>
    </message>
    <message id="picture.left">
        <source>left</source>
        <translation>sinistra</translation>
    </message>
    <message id="picture.missing">
        <source>The picture of the music in the practice folder cannot be read. Add it again, or remove it here.</source>
        <translation>L&apos;immagine dello spartito nella cartella di studio non si può leggere. Aggiungila di nuovo, o rimuovila qui.</translation>
    </message>
    <message id="picture.of-passage">
        <source>the page of “%1”</source>
        <translation>la pagina di «%1»</translation>
    </message>
    <message id="picture.or-page">
        <source>Or use a page that this piece already has</source>
        <translation>O una pagina che questo brano ha già</translation>
    </message>
    <message id="picture.page">
        <source>Page (of %1)</source>
        <translation>Pagina (di %1)</translation>
    </message>
    <message id="picture.read-only">
        <source>This window can only read the practice folder.</source>
        <translation>Questa finestra può solo leggere la cartella di studio.</translation>
    </message>
    <message id="picture.reading">
        <source>Reading…</source>
        <translation>Lettura…</translation>
    </message>
    <message id="picture.remove">
        <source>Remove</source>
        <translation>Rimuovi</translation>
    </message>
    <message id="picture.restore">
        <source>Undo removal</source>
        <translation>Annulla la rimozione</translation>
    </message>
    <message id="picture.right">
        <source>right</source>
        <translation>destra</translation>
    </message>
    <message id="picture.spoken">
        <source>The music of the passage</source>
        <translation>Lo spartito del passaggio</translation>
    </message>
    <message id="picture.take">
        <source>Add</source>
        <translation>Aggiungi</translation>
    </message>
    <message id="picture.take-page">
        <source>Use this page</source>
        <translation>Usa questa pagina</translation>
    </message>
    <message id="picture.title">
        <source>Music for “%1”</source>
        <translation>Spartito di «%1»</translation>
    </message>
    <message id="picture.top">
        <source>top</source>
        <translation>alto</translation>
    </message>
    <message id="picture.unreadable">
        <source>The picture of the music in the practice folder cannot be read.</source>
        <translation>L&apos;immagine dello spartito nella cartella di studio non si può leggere.</translation>
    </message>
    <message id="picture.whole-page">
        <source>Whole page</source>
        <translation>Pagina intera</translation>
    </message>
    <message id="piece.bars">
        <source>Total bars</source>
        <translation>Battute totali</translation>
    </message>
    <message id="piece.bars.unknown">
        <source>unknown</source>
        <translation>ignote</translation>
    </message>
    <message id="piece.composer">
        <source>Composer</source>
        <translation>Compositore</translation>
    </message>
    <message id="piece.due">
        <source>Due</source>
        <translation>Scadenza</translation>
    </message>
    <message id="piece.due.none">
        <source>no date</source>
        <translation>nessuna</translation>
    </message>
    <message id="piece.fault.due">
        <source>a date such as %1, or leave it empty</source>
        <translation>una data come %1, o lascia vuoto</translation>
    </message>
    <message id="piece.fault.letters">
        <source>at most %1 characters</source>
        <translation>al massimo %1 caratteri</translation>
    </message>
    <message id="piece.fault.meter">
        <source>a meter such as 4/4, 6/8 or 7/8, or leave it empty</source>
        <translation>un metro come 4/4, 6/8 o 7/8, o lascia vuoto</translation>
    </message>
    <message id="piece.fault.name">
        <source>the piece needs a name</source>
        <translation>il brano ha bisogno di un nome</translation>
    </message>
    <message id="piece.fault.tempo">
        <source>a tempo from 10 to 400, or leave it empty</source>
        <translation>un tempo da 10 a 400, o lascia vuoto</translation>
    </message>
    <message id="piece.fault.too-long">
        <source>too long to save</source>
        <translation>troppo lungo da salvare</translation>
    </message>
    <message id="piece.fault.whole">
        <source>a whole number from %1 to %2</source>
        <translation>un numero intero da %1 a %2</translation>
    </message>
    <message id="piece.fault.whole-or-none">
        <source>a whole number up to %1, or leave it empty</source>
        <translation>un numero intero fino a %1, o lascia vuoto</translation>
    </message>
    <message id="piece.instrument">
        <source>Instrument</source>
        <translation>Strumento</translation>
    </message>
    <message id="piece.instrument.example">
        <source>Clarinet in B♭</source>
        <translation>Clarinetto in Si♭</translation>
    </message>
    <message id="piece.meter">
        <source>Meter of the piece</source>
        <translation>Metro del brano</translation>
    </message>
    <message id="piece.meter.example">
        <source>4/4</source>
        <translation>4/4</translation>
    </message>
    <message id="piece.meter.unknown">
        <source>unknown; run-throughs then show no bars</source>
        <translation>ignoto; le filate allora non mostrano le battute</translation>
    </message>
    <message id="piece.name">
        <source>Name of the piece</source>
        <translation>Nome del brano</translation>
    </message>
    <message id="piece.notes">
        <source>Notes</source>
        <translation>Appunti</translation>
    </message>
    <message id="piece.tempo">
        <source>Tempo of the piece, %1 =</source>
        <translation>Tempo del brano intero, %1 =</translation>
    </message>
    <message id="piece.transposition">
        <source>Transposition (semitones)</source>
        <translation>Trasposizione (semitoni)</translation>
    </message>
    <message id="piece.transposition.example">
        <source>−2 for a clarinet in B♭</source>
        <translation>−2 per un clarinetto in Si♭</translation>
    </message>
    <message id="playing.spoken">
        <source>The click is running. Mark a miss: %1. Stop: %2.</source>
        <translation>Il clic suona. Con %1 segni un errore, con %2 fermi.</translation>
    </message>
    <message id="playing.stop">
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message id="playing.target">
        <source>%1 ↑</source>
        <translation>%1 ↑</translation>
    </message>
    <message id="practice.day-opens">
        <source>A new day starts</source>
        <translation>Un nuovo giorno comincia</translation>
    </message>
    <message id="practice.hint">
        <source>These settings travel with the practice folder.</source>
        <translation>Queste impostazioni viaggiano con la cartella di studio.</translation>
    </message>
    <message id="practice.millis">
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message id="practice.pause">
        <source>Without a key press, pause and ask after</source>
        <translation>Dopo quante ripetizioni senza tasto Piolo si ferma e chiede</translation>
    </message>
    <message id="practice.pause.never">
        <source>never</source>
        <translation>mai</translation>
    </message>
    <message id="practice.play-on">
        <source>Play on after a miss: the run goes on, and the tempo drops only once</source>
        <translation>Vai avanti dopo un errore: si arriva in fondo, e il tempo scende una volta sola</translation>
    </message>
    <message id="practice.reaction">
        <source>Reaction time, from slip to key (a guess: set your own)</source>
        <translation>Tempo di reazione, dallo sbaglio al tasto (una stima: metti il tuo)</translation>
    </message>
    <message id="practice.read-only">
        <source>Another window is using this practice folder, so you cannot change this here.</source>
        <translation>Un&apos;altra finestra usa questa cartella di studio: qui non si può cambiare.</translation>
    </message>
    <message id="practice.rest">
        <source>After a miss, breathe and read for at least</source>
        <translation>Dopo un errore, respira e leggi per almeno</translation>
    </message>
    <message id="practice.rest.none">
        <source>no pause</source>
        <translation>nessuna pausa</translation>
    </message>
    <message id="practice.secure-days">
        <source>A passage is fully secure after being secure on</source>
        <translation>Un passaggio è del tutto sicuro se lo è stato in</translation>
    </message>
    <message id="practice.title">
        <source>Practice</source>
        <translation>Studio</translation>
    </message>
    <message id="rest.note">
        <source>You have been playing for a good while: give your ears and lip a rest. If you feel pain, tingling or numbness, stop and see a professional.</source>
        <translation>Suoni già da un bel po&apos;: fai riposare orecchie e labbro. Se senti dolore, formicolio o intorpidimento, fermati e rivolgiti a uno specialista.</translation>
    </message>
    <message id="rest.read">
        <source>Got it</source>
        <translation>Ho capito</translation>
    </message>
    <message id="rule.each">
        <source>a miss drops %1, each clean run climbs %2</source>
        <translation>un errore −%1, ogni ripetizione pulita +%2</translation>
    </message>
    <message id="rule.gentle">
        <source>%1, gentle near the target</source>
        <translation>%1, dolce vicino all&apos;obiettivo</translation>
    </message>
    <message id="rule.notches" numerus="yes">
        <source>%n notches</source>
        <translation>
            <numerusform>%n tacca</numerusform>
            <numerusform>%n tacche</numerusform>
        </translation>
    </message>
    <message id="rule.streak">
        <source>a miss drops %1, %2 clean in a row climb %3</source>
        <translation>un errore −%1, %2 pulite di fila +%3</translation>
    </message>
    <message id="run-through.about-bar">
        <source>about bar %1</source>
        <translation>battuta %1 circa</translation>
    </message>
    <message id="run-through.bar-stops">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="run-through.bar-unknown">
        <source>unknown</source>
        <translation>ignota</translation>
    </message>
    <message id="run-through.bars-guessed">
        <source>The clock guessed the bars. Correct them, and clear any that you do not know.</source>
        <translation>Le battute sono stimate con l&apos;orologio. Correggile, o lascia vuoto ciò che non sai.</translation>
    </message>
    <message id="run-through.choose-piece">
        <source>Choose a piece first.</source>
        <translation>Prima scegli un brano.</translation>
    </message>
    <message id="run-through.day-length">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="run-through.discard">
        <source>Discard</source>
        <translation>Scarta</translation>
    </message>
    <message id="run-through.earlier">
        <source>Run-throughs so far</source>
        <translation>Filate finora</translation>
    </message>
    <message id="run-through.fault.bar">
        <source>a bar number up to %1, or leave it empty</source>
        <translation>il numero di una battuta fino a %1, o lascia vuoto</translation>
    </message>
    <message id="run-through.give-up">
        <source>Give up</source>
        <translation>Interrompi</translation>
    </message>
    <message id="run-through.hint">
        <source>Play the whole piece without the click. When you come to a stop, press the key and play on.</source>
        <translation>Suona tutto il brano senza clic. Dove ti fermi, premi il tasto e vai avanti.</translation>
    </message>
    <message id="run-through.keep">
        <source>Save to log</source>
        <translation>Salva nel diario</translation>
    </message>
    <message id="run-through.last-note">
        <source>Last note</source>
        <translation>Ultima nota</translation>
    </message>
    <message id="run-through.no-stop">
        <source>no stop</source>
        <translation>nessuno stop</translation>
    </message>
    <message id="run-through.none">
        <source>None yet.</source>
        <translation>Ancora nessuna.</translation>
    </message>
    <message id="run-through.now">
        <source>Whole piece %1</source>
        <translation>Brano intero %1</translation>
    </message>
    <message id="run-through.now-review">
        <source>Whole piece: not saved yet</source>
        <translation>Brano intero: non ancora salvato</translation>
    </message>
    <message id="run-through.start">
        <source>Start</source>
        <translation>Inizia</translation>
    </message>
    <message id="run-through.stop">
        <source>Mark a stop</source>
        <translation>Segna uno stop</translation>
    </message>
    <message id="run-through.stop-bar">
        <source>Stop at %1, bar</source>
        <translation>Stop a %1, battuta</translation>
    </message>
    <message id="run-through.stops" numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n stop</numerusform>
            <numerusform>%n stop</numerusform>
        </translation>
    </message>
    <message id="run-through.time-stops">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="run-through.title">
        <source>%1, from start to finish</source>
        <translation>%1, dall&apos;inizio alla fine</translation>
    </message>
    <message id="run-through.unfinished">
        <source>%1, unfinished</source>
        <translation>%1, incompleta</translation>
    </message>
    <message id="scale.ending.comma">
        <source>, </source>
        <translation>, </translation>
    </message>
    <message id="scale.ending.over">
        <source>it goes %1 notes above the last tonic and comes back</source>
        <translation>va %1 note oltre l&apos;ultima tonica e torna</translation>
    </message>
    <message id="scale.ending.over-one">
        <source>it goes one note above the last tonic and comes back</source>
        <translation>va una nota oltre l&apos;ultima tonica e torna</translation>
    </message>
    <message id="scale.ending.sentence">
        <source>To end on a beat, %1.</source>
        <translation>Per finire su un movimento, %1.</translation>
    </message>
    <message id="scale.ending.tonic-twice">
        <source>the last tonic is played twice</source>
        <translation>l&apos;ultima tonica si suona due volte</translation>
    </message>
    <message id="scale.ending.top-twice">
        <source>the top note is played twice</source>
        <translation>la nota più alta si suona due volte</translation>
    </message>
    <message id="scale.ending.under">
        <source>it goes %1 notes below the last tonic and comes back</source>
        <translation>va %1 note sotto l&apos;ultima tonica e torna</translation>
    </message>
    <message id="scale.ending.under-one">
        <source>it goes one note below the last tonic and comes back</source>
        <translation>va una nota sotto l&apos;ultima tonica e torna</translation>
    </message>
    <message id="scale.kind.altered">
        <source>Altered</source>
        <translation>Alterata</translation>
    </message>
    <message id="scale.kind.altered.in">
        <source>%1 altered</source>
        <translation>%1 alterata</translation>
    </message>
    <message id="scale.kind.augmented">
        <source>Augmented arpeggio</source>
        <translation>Arpeggio aumentato</translation>
    </message>
    <message id="scale.kind.augmented.in">
        <source>%1 augmented arpeggio</source>
        <translation>Arpeggio di %1 aumentato</translation>
    </message>
    <message id="scale.kind.bebop-dominant">
        <source>Bebop dominant</source>
        <translation>Bebop dominante</translation>
    </message>
    <message id="scale.kind.bebop-dominant.in">
        <source>%1 bebop dominant</source>
        <translation>%1 bebop dominante</translation>
    </message>
    <message id="scale.kind.bebop-major">
        <source>Bebop major</source>
        <translation>Bebop maggiore</translation>
    </message>
    <message id="scale.kind.bebop-major.in">
        <source>%1 bebop major</source>
        <translation>%1 bebop maggiore</translation>
    </message>
    <message id="scale.kind.bebop-minor">
        <source>Bebop minor</source>
        <translation>Bebop minore</translation>
    </message>
    <message id="scale.kind.bebop-minor.in">
        <source>%1 bebop minor</source>
        <translation>%1 bebop minore</translation>
    </message>
    <message id="scale.kind.blues">
        <source>Blues</source>
        <translation>Blues</translation>
    </message>
    <message id="scale.kind.blues.in">
        <source>%1 blues</source>
        <translation>%1 blues</translation>
    </message>
    <message id="scale.kind.chromatic">
        <source>Chromatic</source>
        <translation>Cromatica</translation>
    </message>
    <message id="scale.kind.chromatic.in">
        <source>chromatic from %1</source>
        <translation>Cromatica da %1</translation>
    </message>
    <message id="scale.kind.diminished-half">
        <source>Diminished, half step first</source>
        <translation>Diminuita, prima il semitono</translation>
    </message>
    <message id="scale.kind.diminished-half.in">
        <source>%1 diminished, half step first</source>
        <translation>%1 diminuita, prima il semitono</translation>
    </message>
    <message id="scale.kind.diminished-seventh">
        <source>Diminished seventh arpeggio</source>
        <translation>Arpeggio di settima diminuita</translation>
    </message>
    <message id="scale.kind.diminished-seventh.in">
        <source>%1 diminished seventh arpeggio</source>
        <translation>Arpeggio di %1, settima diminuita</translation>
    </message>
    <message id="scale.kind.diminished-whole">
        <source>Diminished, whole step first</source>
        <translation>Diminuita, prima il tono</translation>
    </message>
    <message id="scale.kind.diminished-whole.in">
        <source>%1 diminished, whole step first</source>
        <translation>%1 diminuita, prima il tono</translation>
    </message>
    <message id="scale.kind.dominant-seventh">
        <source>Dominant seventh arpeggio</source>
        <translation>Arpeggio di settima di dominante</translation>
    </message>
    <message id="scale.kind.dominant-seventh.in">
        <source>%1 dominant seventh arpeggio</source>
        <translation>Arpeggio di %1, settima di dominante</translation>
    </message>
    <message id="scale.kind.dorian">
        <source>Dorian</source>
        <translation>Dorica</translation>
    </message>
    <message id="scale.kind.dorian.in">
        <source>%1 dorian</source>
        <translation>%1 dorica</translation>
    </message>
    <message id="scale.kind.half-diminished">
        <source>Half-diminished arpeggio</source>
        <translation>Arpeggio semidiminuito</translation>
    </message>
    <message id="scale.kind.half-diminished.in">
        <source>%1 half-diminished arpeggio</source>
        <translation>Arpeggio di %1 semidiminuito</translation>
    </message>
    <message id="scale.kind.harmonic-minor">
        <source>Harmonic minor</source>
        <translation>Minore armonica</translation>
    </message>
    <message id="scale.kind.harmonic-minor.in">
        <source>%1 harmonic minor</source>
        <translation>%1 minore armonica</translation>
    </message>
    <message id="scale.kind.jazz-minor">
        <source>Melodic minor, jazz</source>
        <translation>Minore melodica, jazz</translation>
    </message>
    <message id="scale.kind.jazz-minor.in">
        <source>%1 jazz minor</source>
        <translation>%1 minore jazz</translation>
    </message>
    <message id="scale.kind.locrian">
        <source>Locrian</source>
        <translation>Locria</translation>
    </message>
    <message id="scale.kind.locrian.in">
        <source>%1 locrian</source>
        <translation>%1 locria</translation>
    </message>
    <message id="scale.kind.lydian">
        <source>Lydian</source>
        <translation>Lidia</translation>
    </message>
    <message id="scale.kind.lydian-dominant">
        <source>Lydian dominant</source>
        <translation>Lidia dominante</translation>
    </message>
    <message id="scale.kind.lydian-dominant.in">
        <source>%1 lydian dominant</source>
        <translation>%1 lidia dominante</translation>
    </message>
    <message id="scale.kind.lydian.in">
        <source>%1 lydian</source>
        <translation>%1 lidia</translation>
    </message>
    <message id="scale.kind.major">
        <source>Major</source>
        <translation>Maggiore</translation>
    </message>
    <message id="scale.kind.major-arpeggio">
        <source>Major arpeggio</source>
        <translation>Arpeggio maggiore</translation>
    </message>
    <message id="scale.kind.major-arpeggio.in">
        <source>%1 major arpeggio</source>
        <translation>Arpeggio di %1 maggiore</translation>
    </message>
    <message id="scale.kind.major-pentatonic">
        <source>Major pentatonic</source>
        <translation>Pentatonica maggiore</translation>
    </message>
    <message id="scale.kind.major-pentatonic.in">
        <source>%1 major pentatonic</source>
        <translation>%1 pentatonica maggiore</translation>
    </message>
    <message id="scale.kind.major.in">
        <source>%1 major</source>
        <translation>%1 maggiore</translation>
    </message>
    <message id="scale.kind.melodic-minor">
        <source>Melodic minor, classical</source>
        <translation>Minore melodica, classica</translation>
    </message>
    <message id="scale.kind.melodic-minor.in">
        <source>%1 melodic minor</source>
        <translation>%1 minore melodica</translation>
    </message>
    <message id="scale.kind.minor-arpeggio">
        <source>Minor arpeggio</source>
        <translation>Arpeggio minore</translation>
    </message>
    <message id="scale.kind.minor-arpeggio.in">
        <source>%1 minor arpeggio</source>
        <translation>Arpeggio di %1 minore</translation>
    </message>
    <message id="scale.kind.minor-pentatonic">
        <source>Minor pentatonic</source>
        <translation>Pentatonica minore</translation>
    </message>
    <message id="scale.kind.minor-pentatonic.in">
        <source>%1 minor pentatonic</source>
        <translation>%1 pentatonica minore</translation>
    </message>
    <message id="scale.kind.mixolydian">
        <source>Mixolydian</source>
        <translation>Misolidia</translation>
    </message>
    <message id="scale.kind.mixolydian.in">
        <source>%1 mixolydian</source>
        <translation>%1 misolidia</translation>
    </message>
    <message id="scale.kind.natural-minor">
        <source>Natural minor (aeolian)</source>
        <translation>Minore naturale (eolia)</translation>
    </message>
    <message id="scale.kind.natural-minor.in">
        <source>%1 natural minor</source>
        <translation>%1 minore naturale</translation>
    </message>
    <message id="scale.kind.phrygian">
        <source>Phrygian</source>
        <translation>Frigia</translation>
    </message>
    <message id="scale.kind.phrygian.in">
        <source>%1 phrygian</source>
        <translation>%1 frigia</translation>
    </message>
    <message id="scale.kind.whole-tone">
        <source>Whole tone</source>
        <translation>Esatonale</translation>
    </message>
    <message id="scale.kind.whole-tone.in">
        <source>whole tone from %1</source>
        <translation>Esatonale da %1</translation>
    </message>
    <message id="scale.order.fifths">
        <source>by fifths</source>
        <translation>per quinte</translation>
    </message>
    <message id="scale.order.fourths">
        <source>by fourths</source>
        <translation>per quarte</translation>
    </message>
    <message id="scale.order.random">
        <source>random</source>
        <translation>casuale</translation>
    </message>
    <message id="scale.order.semitones">
        <source>by semitones</source>
        <translation>per semitoni</translation>
    </message>
    <message id="scale.pattern.fourths">
        <source>In fourths</source>
        <translation>Per quarte</translation>
    </message>
    <message id="scale.pattern.fourths.in">
        <source>%1 in fourths</source>
        <translation>%1 per quarte</translation>
    </message>
    <message id="scale.pattern.in-order">
        <source>In order</source>
        <translation>In ordine</translation>
    </message>
    <message id="scale.pattern.in-order.in">
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message id="scale.pattern.thirds">
        <source>In thirds</source>
        <translation>Per terze</translation>
    </message>
    <message id="scale.pattern.thirds.in">
        <source>%1 in thirds</source>
        <translation>%1 per terze</translation>
    </message>
    <message id="scale.pattern.turns-of-four">
        <source>In turns of four</source>
        <translation>A gruppi di quattro</translation>
    </message>
    <message id="scale.pattern.turns-of-four.in">
        <source>%1 in turns of four</source>
        <translation>%1 a gruppi di quattro</translation>
    </message>
    <message id="scale.pattern.turns-of-three">
        <source>In turns of three</source>
        <translation>A gruppi di tre</translation>
    </message>
    <message id="scale.pattern.turns-of-three.in">
        <source>%1 in turns of three</source>
        <translation>%1 a gruppi di tre</translation>
    </message>
    <message id="scale.range.one-octave">
        <source>One octave</source>
        <translation>Un&apos;ottava</translation>
    </message>
    <message id="scale.range.one-octave.in">
        <source>one octave</source>
        <translation>un&apos;ottava</translation>
    </message>
    <message id="scale.range.two-octaves">
        <source>Two octaves</source>
        <translation>Due ottave</translation>
    </message>
    <message id="scale.range.two-octaves.in">
        <source>two octaves</source>
        <translation>due ottave</translation>
    </message>
    <message id="scale.range.whole">
        <source>The whole range</source>
        <translation>Tutta l&apos;estensione</translation>
    </message>
    <message id="scale.range.whole.in">
        <source>the whole range</source>
        <translation>tutta l&apos;estensione</translation>
    </message>
    <message id="scale.signature.empty">
        <source>no sharps or flats</source>
        <translation>senza diesis né bemolli</translation>
    </message>
    <message id="scale.signature.flats" numerus="yes">
        <source>%n flats</source>
        <translation>
            <numerusform>%n bemolle</numerusform>
            <numerusform>%n bemolli</numerusform>
        </translation>
    </message>
    <message id="scale.signature.none">
        <source>no key signature: accidentals are written beside the notes</source>
        <translation>senza armatura: le alterazioni sono scritte accanto alle note</translation>
    </message>
    <message id="scale.signature.sharps" numerus="yes">
        <source>%n sharps</source>
        <translation>
            <numerusform>%n diesis</numerusform>
            <numerusform>%n diesis</numerusform>
        </translation>
    </message>
    <message id="scale.title">
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message id="scales.altissimo">
        <source>Altissimo: it goes up to %1, and your highest note is %2. “The whole range” stays within your notes.</source>
        <translation>Sovracuti: sale fino a %1, e la tua nota più alta è %2. «Tutta l&apos;estensione» resta entro le tue note.</translation>
    </message>
    <message id="scales.cell">
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message id="scales.cell.below">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="scales.cell.days-short">
        <source>%1 d</source>
        <translation>%1 g</translation>
    </message>
    <message id="scales.cell.in-words">
        <source>Best %1, %2, played %3.</source>
        <translation>Record %1, %2, suonata %3.</translation>
    </message>
    <message id="scales.cell.in-words-no-best">
        <source>No best yet: %1, played %2.</source>
        <translation>Ancora nessun record: %1, suonata %2.</translation>
    </message>
    <message id="scales.cell.never">
        <source>not played yet</source>
        <translation>non ancora suonata</translation>
    </message>
    <message id="scales.cell.next">
        <source>next: %1</source>
        <translation>prossima: %1</translation>
    </message>
    <message id="scales.cell.not-played">
        <source>%1: not played yet</source>
        <translation>%1: non ancora suonata</translation>
    </message>
    <message id="scales.cell.secure">
        <source>✓ Secure at the target.</source>
        <translation>✓ Sicura al tempo obiettivo.</translation>
    </message>
    <message id="scales.cell.spoken">
        <source>%1: best %2, %3, played %4</source>
        <translation>%1: record %2, %3, suonata %4</translation>
    </message>
    <message id="scales.cell.spoken-no-best">
        <source>%1: no best yet (%2), %3, %4</source>
        <translation>%1: ancora nessun record (%2), %3, %4</translation>
    </message>
    <message id="scales.cell.streak">
        <source>%1/%2</source>
        <translation>%1/%2</translation>
    </message>
    <message id="scales.cell.title">
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message id="scales.drill">
        <source>Drill it</source>
        <translation>Studia</translation>
    </message>
    <message id="scales.drill.key">
        <source>Return</source>
        <translation>Invio</translation>
    </message>
    <message id="scales.goes-on">
        <source>Continues at %1.</source>
        <translation>Si continua a %1.</translation>
    </message>
    <message id="scales.grid">
        <source>Grid</source>
        <translation>Griglia</translation>
    </message>
    <message id="scales.grid.spoken">
        <source>Twelve keys by seven subdivisions. The arrow keys select a cell, Return drills it.</source>
        <translation>Dodici tonalità per sette suddivisioni. Le frecce scelgono una casella, Invio la studia.</translation>
    </message>
    <message id="scales.hear">
        <source>Hear it first</source>
        <translation>Prima ascolta</translation>
    </message>
    <message id="scales.instrument">
        <source>Instrument</source>
        <translation>Strumento</translation>
    </message>
    <message id="scales.instrument.highest">
        <source>Highest note, as written</source>
        <translation>Nota più alta, come scritta</translation>
    </message>
    <message id="scales.instrument.hint">
        <source>Scales are written for this instrument, in its clef and range. The setting travels with the practice folder.</source>
        <translation>Le scale si scrivono per questo strumento, nella sua chiave e nella sua estensione. L&apos;impostazione viaggia con la cartella di studio.</translation>
    </message>
    <message id="scales.instrument.lowest">
        <source>Lowest note, as written</source>
        <translation>Nota più bassa, come scritta</translation>
    </message>
    <message id="scales.instrument.name">
        <source>Instrument</source>
        <translation>Strumento</translation>
    </message>
    <message id="scales.instrument.octave-hint">
        <source>Octave 4 begins at middle C. If you have a high F♯ key, a low A, or notes above the usual range, set what you play.</source>
        <translation>L&apos;ottava 4 comincia dal Do centrale. Se hai la chiave del Fa♯ acuto, il La grave o note oltre l&apos;estensione solita, imposta ciò che suoni.</translation>
    </message>
    <message id="scales.instrument.read-only">
        <source>Another window is using this practice folder, so you cannot change this here.</source>
        <translation>Un&apos;altra finestra usa questa cartella di studio: qui non si può cambiare.</translation>
    </message>
    <message id="scales.instrument.redraw">
        <source>Shuffle the keys again</source>
        <translation>Mescola di nuovo le tonalità</translation>
    </message>
    <message id="scales.instrument.title">
        <source>Your instrument</source>
        <translation>Il tuo strumento</translation>
    </message>
    <message id="scales.instrument.to-grid">
        <source>Show grid</source>
        <translation>Mostra la griglia</translation>
    </message>
    <message id="scales.key.sounds">
        <source>%1, sounds as %2</source>
        <translation>%1, suona come %2</translation>
    </message>
    <message id="scales.keys">
        <source>Keys</source>
        <translation>Tonalità</translation>
    </message>
    <message id="scales.keys-hint">
        <source>Keys as written for the %1; the sounding key is below.</source>
        <translation>Tonalità scritte per %1; sotto, come suonano.</translation>
    </message>
    <message id="scales.kind">
        <source>Kind of scale</source>
        <translation>Tipo di scala</translation>
    </message>
    <message id="scales.next.first">
        <source>Next: the first key in the slowest notes.</source>
        <translation>Prossima: la prima tonalità nelle note più lente.</translation>
    </message>
    <message id="scales.next.furthest">
        <source>Next: its best is furthest below the best of its row.</source>
        <translation>Prossima: il suo record è il più lontano dal record della sua riga.</translation>
    </message>
    <message id="scales.next.never">
        <source>Next: the first cell not played yet; no other has waited a week.</source>
        <translation>Prossima: la prima mai suonata; nessuna è ferma da una settimana.</translation>
    </message>
    <message id="scales.next.oldest">
        <source>Next: not played for %1, longer than any other.</source>
        <translation>Prossima: non suonata da %1, più di ogni altra.</translation>
    </message>
    <message id="scales.no-tonic">
        <source>Your range does not contain this tonic: choose another key, or widen your range.</source>
        <translation>La tua estensione non contiene questa tonica: scegli un&apos;altra tonalità, o allarga l&apos;estensione.</translation>
    </message>
    <message id="scales.not-played">
        <source>Not played yet.</source>
        <translation>Non ancora suonata.</translation>
    </message>
    <message id="scales.notes">
        <source>%1 to the beat</source>
        <translation>%1 per movimento</translation>
    </message>
    <message id="scales.order">
        <source>Order of keys</source>
        <translation>Ordine delle tonalità</translation>
    </message>
    <message id="scales.pattern">
        <source>Order of notes</source>
        <translation>Ordine delle note</translation>
    </message>
    <message id="scales.range">
        <source>Range</source>
        <translation>Estensione</translation>
    </message>
    <message id="scales.range-of-notes">
        <source>Your range</source>
        <translation>La tua estensione</translation>
    </message>
    <message id="scales.shown">
        <source>View</source>
        <translation>Vista</translation>
    </message>
    <message id="scales.starts-from">
        <source>Start at %1, two notches below your best in %2.</source>
        <translation>Parti da %1, due tacche sotto il tuo record in %2.</translation>
    </message>
    <message id="scales.starts-slow">
        <source>Start at %1, slow enough to make no mistakes.</source>
        <translation>Parti da %1, abbastanza lento da non fare errori.</translation>
    </message>
    <message id="scales.title">
        <source>Scales</source>
        <translation>Scale</translation>
    </message>
    <message id="scales.two-sentences">
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message id="scales.weeks">
        <source>Weeks</source>
        <translation>Settimane</translation>
    </message>
    <message id="scales.weeks.cell">
        <source>%1, week of %2: %3</source>
        <translation>%1, settimana del %2: %3</translation>
    </message>
    <message id="scales.weeks.hint">
        <source>Runs of each key, in all kinds and subdivisions for this instrument. A week begins on Monday.</source>
        <translation>Ripetizioni di ogni tonalità, in tutti i tipi e le suddivisioni per questo strumento. La settimana comincia di lunedì.</translation>
    </message>
    <message id="scales.weeks.title">
        <source>Keys by week</source>
        <translation>Tonalità per settimana</translation>
    </message>
    <message id="scales.write">
        <source>Write as %1</source>
        <translation>Scrivi come %1</translation>
    </message>
    <message id="score.bars">
        <source>bars %1 to %2</source>
        <translation>battute da %1 a %2</translation>
    </message>
    <message id="score.figures">
        <source>%1 · %2 · %3 · %4</source>
        <translation>%1 · %2 · %3 · %4</translation>
    </message>
    <message id="score.file">
        <source>File</source>
        <translation>File</translation>
    </message>
    <message id="score.from-bar">
        <source>From bar</source>
        <translation>Da battuta</translation>
    </message>
    <message id="score.hint">
        <source>MusicXML (.musicxml, .xml, .mxl), as notation programs export it. Choose the file, type its path, or drop it here.</source>
        <translation>MusicXML (.musicxml, .xml, .mxl), come lo esportano i programmi di notazione. Scegli il file, scrivi il percorso o trascinalo qui.</translation>
    </message>
    <message id="score.no-tempo">
        <source>no tempo mark</source>
        <translation>nessuna indicazione di tempo</translation>
    </message>
    <message id="score.no-title">
        <source>(no title)</source>
        <translation>(senza titolo)</translation>
    </message>
    <message id="score.notes" numerus="yes">
        <source>%n notes</source>
        <translation>
            <numerusform>%n nota</numerusform>
            <numerusform>%n note</numerusform>
        </translation>
    </message>
    <message id="score.part">
        <source>Part</source>
        <translation>Parte</translation>
    </message>
    <message id="score.part-number">
        <source>part %1</source>
        <translation>parte %1</translation>
    </message>
    <message id="score.read">
        <source>Open</source>
        <translation>Apri</translation>
    </message>
    <message id="score.take">
        <source>Use these bars</source>
        <translation>Usa queste battute</translation>
    </message>
    <message id="score.title">
        <source>A passage from a score</source>
        <translation>Un passaggio da una partitura</translation>
    </message>
    <message id="score.title-composer">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="score.to-bar">
        <source>To bar</source>
        <translation>A battuta</translation>
    </message>
    <message id="score.too-many-notes">
        <source>%1, too many to save</source>
        <translation>%1, troppe da salvare</translation>
    </message>
    <message id="set.about">
        <source>Two to four passages, round and round, while your hands stay on the instrument. Short tones announce each one: one tone for the first, two for the second.</source>
        <translation>Da due a quattro passaggi a rotazione, senza mai lasciare lo strumento. Brevi suoni annunciano ognuno: uno il primo, due il secondo.</translation>
    </message>
    <message id="set.by-minutes">
        <source>Minutes</source>
        <translation>Minuti</translation>
    </message>
    <message id="set.by-runs">
        <source>Runs</source>
        <translation>Ripetizioni</translation>
    </message>
    <message id="set.few">
        <source>Tick two to four passages, in the order in which you want to play them.</source>
        <translation>Spunta da due a quattro passaggi, nell&apos;ordine in cui vuoi suonarli.</translation>
    </message>
    <message id="set.full">
        <source>Four at most: untick one first.</source>
        <translation>Al massimo quattro: prima togli una spunta.</translation>
    </message>
    <message id="set.length">
        <source>How long each is played</source>
        <translation>Quanto si suona ciascuno</translation>
    </message>
    <message id="set.minutes-each" numerus="yes">
        <source>%n minutes each</source>
        <translation>
            <numerusform>%n minuto</numerusform>
            <numerusform>%n minuti</numerusform>
        </translation>
    </message>
    <message id="set.no-run">
        <source>no run finished</source>
        <translation>nessuna ripetizione completata</translation>
    </message>
    <message id="set.picked">
        <source>%1, number %2</source>
        <translation>%1, numero %2</translation>
    </message>
    <message id="set.place">
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message id="set.result">
        <source>%1 · tempo now %2</source>
        <translation>%1 · ora a %2</translation>
    </message>
    <message id="set.runs-each" numerus="yes">
        <source>%n runs each</source>
        <translation>
            <numerusform>%n ripetizione</numerusform>
            <numerusform>%n ripetizioni</numerusform>
        </translation>
    </message>
    <message id="set.title">
        <source>In turn</source>
        <translation>A rotazione</translation>
    </message>
    <message id="set.turn">
        <source>%1 · next: %2</source>
        <translation>%1 · poi: %2</translation>
    </message>
    <message id="set.turn-spoken">
        <source>Now %1: %2</source>
        <translation>Ora %1: %2</translation>
    </message>
    <message id="settings.damaged">
        <source>Your settings were damaged and have been reset; the old file was kept. %1</source>
        <translation>Le tue impostazioni erano danneggiate e sono state reimpostate; il vecchio file è stato conservato. %1</translation>
    </message>
    <message id="settings.day-opening.as-left">
        <source>Where you left off</source>
        <translation>Da dove avevi lasciato</translation>
    </message>
    <message id="settings.day-opening.below">
        <source>Two rungs below the last full streak</source>
        <translation>Due pioli sotto l&apos;ultima serie piena</translation>
    </message>
    <message id="settings.day-opening.start">
        <source>At the start tempo</source>
        <translation>Dal tempo di partenza</translation>
    </message>
    <message id="settings.keys">
        <source>Your keys</source>
        <translation>I tuoi tasti</translation>
    </message>
    <message id="settings.keys.hint">
        <source>Click a key below to remove it. Tab, Return on a button, the arrow keys in a list and Esc in a form work as in any other program; you cannot change them.</source>
        <translation>Fai clic su un tasto qui sotto per rimuoverlo. Tab, Invio su un pulsante, le frecce in una lista ed Esc in un modulo funzionano come in ogni altro programma; non si possono cambiare.</translation>
    </message>
    <message id="settings.language">
        <source>Language</source>
        <translation>Lingua</translation>
    </message>
    <message id="settings.language.hint">
        <source>Text, numbers and dates on the screen. Files are the same in every language.</source>
        <translation>Testi, numeri e date sullo schermo. I file sono uguali in ogni lingua.</translation>
    </message>
    <message id="settings.language.system">
        <source>Use system setting</source>
        <translation>Impostazione di sistema</translation>
    </message>
    <message id="settings.looks">
        <source>Appearance</source>
        <translation>Aspetto</translation>
    </message>
    <message id="settings.looks.dark">
        <source>Dark</source>
        <translation>Scuro</translation>
    </message>
    <message id="settings.looks.light">
        <source>Light</source>
        <translation>Chiaro</translation>
    </message>
    <message id="settings.looks.system">
        <source>Use system setting</source>
        <translation>Impostazione di sistema</translation>
    </message>
    <message id="settings.title">
        <source>Settings</source>
        <translation>Impostazioni</translation>
    </message>
    <message id="settings.voice.dry">
        <source>Dry: short and plain</source>
        <translation>Secco: corto e semplice</translation>
    </message>
    <message id="settings.voice.metal">
        <source>Metal: the sharpest</source>
        <translation>Metallo: il più tagliente</translation>
    </message>
    <message id="settings.voice.reed">
        <source>Reed: edgy</source>
        <translation>Ancia: pungente</translation>
    </message>
    <message id="settings.voice.wood">
        <source>Wood: warm</source>
        <translation>Legno: caldo</translation>
    </message>
    <message id="sheet.continued">
        <source>%1, continued</source>
        <translation>%1, continua</translation>
    </message>
    <message id="sheet.day">
        <source>Day</source>
        <translation>Giorno</translation>
    </message>
    <message id="sheet.gentle">
        <source>Near the target, a miss drops by one climb; at the target, only the second in a row drops.</source>
        <translation>Vicino all&apos;obiettivo un errore costa solo una salita; al tempo obiettivo solo il secondo di fila.</translation>
    </message>
    <message id="sheet.how-to">
        <source>Climb from the bottom. Tick a circle for each clean run. For a miss, mark the box and rub out that rung&apos;s ticks.</source>
        <translation>Sali dal basso. Spunta un cerchio per ogni ripetizione pulita. Un errore è un tratto nella casella e cancella le spunte di quel piolo.</translation>
    </message>
    <message id="sheet.misses">
        <source>misses</source>
        <translation>errori</translation>
    </message>
    <message id="sheet.notes">
        <source>Notes</source>
        <translation>Appunti</translation>
    </message>
    <message id="sheet.page">
        <source>page %1 of %2</source>
        <translation>pagina %1 di %2</translation>
    </message>
    <message id="sheet.rule">
        <source>The rule: %1.</source>
        <translation>La regola: %1.</translation>
    </message>
    <message id="sheet.target">
        <source>target</source>
        <translation>obiettivo</translation>
    </message>
    <message id="sheet.tempi">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="sheet.tempi-to-target">
        <source>%1, to %2 · %3</source>
        <translation>%1, fino a %2 · %3</translation>
    </message>
    <message id="sound.delay">
        <source>For wireless headphones: delay the beat on the screen and the marks by</source>
        <translation>Per le cuffie senza filo: ritarda sullo schermo movimenti e segni di</translation>
    </message>
    <message id="sound.dropouts">
        <source>The sound has dropped out %1 since you opened Piolo: the computer was too busy. Closing other programs helps.</source>
        <translation>Il suono si è interrotto %1 da quando hai aperto Piolo: il computer era sovraccarico. Chiudere altri programmi aiuta.</translation>
    </message>
    <message id="sound.dropouts.once">
        <source>once</source>
        <translation>una volta</translation>
    </message>
    <message id="sound.dropouts.times">
        <source>%1 times</source>
        <translation>%1 volte</translation>
    </message>
    <message id="sound.layer.all">
        <source>Everything</source>
        <translation>Tutto</translation>
    </message>
    <message id="sound.layer.beats">
        <source>Beats</source>
        <translation>Movimenti</translation>
    </message>
    <message id="sound.layer.count-in">
        <source>Count-in</source>
        <translation>Battute a vuoto</translation>
    </message>
    <message id="sound.layer.cues">
        <source>Cues</source>
        <translation>Segnali</translation>
    </message>
    <message id="sound.layer.downbeats">
        <source>Downbeats</source>
        <translation>Battere</translation>
    </message>
    <message id="sound.layer.groups">
        <source>Groups</source>
        <translation>Gruppi</translation>
    </message>
    <message id="sound.layer.notes">
        <source>Notes (hear it first)</source>
        <translation>Note da ascoltare</translation>
    </message>
    <message id="sound.layer.subdivisions">
        <source>Subdivisions</source>
        <translation>Suddivisioni</translation>
    </message>
    <message id="sound.level.hint">
        <source>Set the volume where you play: start the click, go to your place and hold a long note as loud as usual. You should just hear the click. If you cannot, try a sharper voice before a higher volume. On headphones, start low and stay low.</source>
        <translation>Regola il volume dal posto in cui suoni: avvia il clic, mettiti al tuo posto e tieni una nota lunga, forte come al solito. Il clic deve sentirsi appena. Se non si sente, prova un suono più tagliente prima di alzare il volume. In cuffia parti piano e resta piano.</translation>
    </message>
    <message id="sound.level.mute">
        <source>Mute</source>
        <translation>Muto</translation>
    </message>
    <message id="sound.level.mute.spoken">
        <source>%1, mute</source>
        <translation>%1, muto</translation>
    </message>
    <message id="sound.level.muted">
        <source>muted</source>
        <translation>muto</translation>
    </message>
    <message id="sound.level.spoken">
        <source>%1, level</source>
        <translation>%1, volume</translation>
    </message>
    <message id="sound.more">
        <source>More: levels of beats, count-in and cues</source>
        <translation>Altro: livelli di movimenti, battute a vuoto e segnali</translation>
    </message>
    <message id="sound.output">
        <source>Sound output</source>
        <translation>Uscita audio</translation>
    </message>
    <message id="sound.output.system">
        <source>System default</source>
        <translation>Predefinita del sistema</translation>
    </message>
    <message id="sound.output.unplugged">
        <source>%1 (not connected)</source>
        <translation>%1 (non collegato)</translation>
    </message>
    <message id="sound.title">
        <source>Sound</source>
        <translation>Suono</translation>
    </message>
    <message id="sound.voice">
        <source>Click voice</source>
        <translation>Suono del clic</translation>
    </message>
    <message id="sound.volume">
        <source>Volume</source>
        <translation>Volume</translation>
    </message>
    <message id="staff.bass">
        <source>bass clef</source>
        <translation>chiave di basso</translation>
    </message>
    <message id="staff.double-flat">
        <source> double flat</source>
        <translation> doppio bemolle</translation>
    </message>
    <message id="staff.double-sharp">
        <source> double sharp</source>
        <translation> doppio diesis</translation>
    </message>
    <message id="staff.flat">
        <source> flat</source>
        <translation> bemolle</translation>
    </message>
    <message id="staff.notes" numerus="yes">
        <source>%n notes</source>
        <translation>
            <numerusform>%n nota</numerusform>
            <numerusform>%n note</numerusform>
        </translation>
    </message>
    <message id="staff.sharp">
        <source> sharp</source>
        <translation> diesis</translation>
    </message>
    <message id="staff.spoken">
        <source>Staff: %1, %2 from %3 to %4, %5, %6</source>
        <translation>Rigo: %1, %2 da %3 a %4, %5, %6</translation>
    </message>
    <message id="staff.treble">
        <source>treble clef</source>
        <translation>chiave di violino</translation>
    </message>
    <message id="stage.in-context">
        <source>in context</source>
        <translation>nel contesto</translation>
    </message>
    <message id="stage.next">
        <source>Next stage: %1</source>
        <translation>Prossima tappa: %1</translation>
    </message>
    <message id="stage.run-throughs">
        <source>in run-throughs</source>
        <translation>nelle filate</translation>
    </message>
    <message id="stage.secure">
        <source>secure at the target</source>
        <translation>sicuro al tempo obiettivo</translation>
    </message>
    <message id="stage.slow">
        <source>slow with the click</source>
        <translation>lento con il clic</translation>
    </message>
    <message id="stage.standing.full-streak">
        <source>You had a full streak at the target.</source>
        <translation>Hai avuto una serie piena al tempo obiettivo.</translation>
    </message>
    <message id="stage.standing.in-context">
        <source>Clean in a row in context, on one day: %1 of %2.</source>
        <translation>Pulite di fila nel contesto, in un giorno: %1 di %2.</translation>
    </message>
    <message id="stage.standing.next-full-streak">
        <source>Next: a full streak at the target.</source>
        <translation>Prossimo passo: una serie piena al tempo obiettivo.</translation>
    </message>
    <message id="stage.standing.run-throughs">
        <source>Run-throughs in a row without a stop here: %1 of %2.</source>
        <translation>Filate di fila senza uno stop qui: %1 di %2.</translation>
    </message>
    <message id="stage.standing.secure" numerus="yes">
        <source>Secure at the target on %1 of %n days.</source>
        <translation>
            <numerusform>Sicuro al tempo obiettivo in %1 giorno su %n.</numerusform>
            <numerusform>Sicuro al tempo obiettivo in %1 giorni su %n.</numerusform>
        </translation>
    </message>
    <message id="stage.standing.without-click">
        <source>Clean in a row without the click, on one day: %1 of %2.</source>
        <translation>Pulite di fila senza clic, in un giorno: %1 di %2.</translation>
    </message>
    <message id="stage.title">
        <source>Stage</source>
        <translation>Tappa</translation>
    </message>
    <message id="stage.without-click">
        <source>without the click</source>
        <translation>senza clic</translation>
    </message>
    <message id="start.close">
        <source>Close</source>
        <translation>Chiudi</translation>
    </message>
    <message id="start.failed">
        <source>Piolo cannot start</source>
        <translation>Impossibile avviare Piolo</translation>
    </message>
    <message id="subdivision.dotted-halves">
        <source>dotted halves</source>
        <translation>metà puntate</translation>
    </message>
    <message id="subdivision.dotted-quarters">
        <source>dotted quarters</source>
        <translation>quarti puntati</translation>
    </message>
    <message id="subdivision.duplets">
        <source>duplets</source>
        <translation>duine</translation>
    </message>
    <message id="subdivision.eighth-triplets">
        <source>eighth triplets</source>
        <translation>terzine di ottavi</translation>
    </message>
    <message id="subdivision.eighths">
        <source>eighths</source>
        <translation>ottavi</translation>
    </message>
    <message id="subdivision.halves">
        <source>halves</source>
        <translation>metà</translation>
    </message>
    <message id="subdivision.quadruplets">
        <source>quadruplets</source>
        <translation>quartine</translation>
    </message>
    <message id="subdivision.quarter-triplets">
        <source>quarter triplets</source>
        <translation>terzine di quarti</translation>
    </message>
    <message id="subdivision.quarters">
        <source>quarters</source>
        <translation>quarti</translation>
    </message>
    <message id="subdivision.quintuplets">
        <source>quintuplets</source>
        <translation>quintine</translation>
    </message>
    <message id="subdivision.septuplets">
        <source>septuplets</source>
        <translation>settimine</translation>
    </message>
    <message id="subdivision.sextuplets">
        <source>sextuplets</source>
        <translation>sestine</translation>
    </message>
    <message id="subdivision.sixteenth-triplets">
        <source>sixteenth triplets</source>
        <translation>terzine di sedicesimi</translation>
    </message>
    <message id="subdivision.sixteenths">
        <source>sixteenths</source>
        <translation>sedicesimi</translation>
    </message>
    <message id="subdivision.thirty-seconds">
        <source>thirty-seconds</source>
        <translation>trentaduesimi</translation>
    </message>
    <message id="subdivision.to-the-beat">
        <source>%1 to the beat</source>
        <translation>%1 per movimento</translation>
    </message>
    <message id="subdivision.triplets">
        <source>triplets</source>
        <translation>terzine</translation>
    </message>
    <message id="switch.bounce">
        <source>Ignore a second contact within</source>
        <translation>Ignora un secondo contatto entro</translation>
    </message>
    <message id="switch.held">
        <source>Counts as held after</source>
        <translation>Conta come tenuto dopo</translation>
    </message>
    <message id="switch.hint">
        <source>Most pedals act as a keyboard. Choose what yours sends, and your keys are set to match; MIDI switches stay as they are.</source>
        <translation>La maggior parte dei pedali fa da tastiera. Scegli che cosa manda il tuo, e i tuoi tasti vengono impostati di conseguenza; gli interruttori MIDI restano come sono.</translation>
    </message>
    <message id="switch.millis">
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message id="switch.one-pedal">
        <source>A single pedal can do everything: one press starts or marks a miss, two presses take back the last mark; hold it to stop the click or, while stopped, to open the next passage.</source>
        <translation>Un solo pedale può fare tutto: una pressione avvia o segna un errore, due annullano l&apos;ultimo segno; tenendolo premuto fermi il clic o, da fermo, apri il prossimo passaggio.</translation>
    </message>
    <message id="switch.press">
        <source>Press it now (Esc to cancel)</source>
        <translation>Premilo ora (Esc per annullare)</translation>
    </message>
    <message id="switch.sends">
        <source>What the pedal sends</source>
        <translation>Che cosa manda il pedale</translation>
    </message>
    <message id="switch.title">
        <source>Pedals and switches</source>
        <translation>Pedali e interruttori</translation>
    </message>
    <message id="switch.twice">
        <source>Counts as two presses within</source>
        <translation>Conta come due pressioni entro</translation>
    </message>
    <message id="switch.use-midi">
        <source>Use one MIDI switch for everything</source>
        <translation>Un interruttore MIDI per tutto</translation>
    </message>
    <message id="switch.use-pedal">
        <source>Use one pedal for everything</source>
        <translation>Un pedale per tutto</translation>
    </message>
    <message id="taken-back.clean">
        <source>clean run at %1</source>
        <translation>ripetizione pulita a %1</translation>
    </message>
    <message id="taken-back.doubt" numerus="yes">
        <source>%n runs that were not clean</source>
        <translation>
            <numerusform>%n ripetizione non pulita</numerusform>
            <numerusform>%n ripetizioni non pulite</numerusform>
        </translation>
    </message>
    <message id="taken-back.late">
        <source>miss after the run at %1</source>
        <translation>errore dopo la ripetizione a %1</translation>
    </message>
    <message id="taken-back.line">
        <source>Taken back: %1</source>
        <translation>Annullato: %1</translation>
    </message>
    <message id="taken-back.mark">
        <source>changed mark of the run at %1</source>
        <translation>segno cambiato della ripetizione a %1</translation>
    </message>
    <message id="taken-back.missed">
        <source>miss at %1</source>
        <translation>errore a %1</translation>
    </message>
    <message id="taken-back.missed-in">
        <source>miss at %1, %2</source>
        <translation>errore a %1, %2</translation>
    </message>
    <message id="taken-back.put-back">
        <source>Put it back</source>
        <translation>Ripristina</translation>
    </message>
    <message id="taken-back.run-through">
        <source>run-through</source>
        <translation>filata</translation>
    </message>
    <message id="taken-back.tempo">
        <source>tempo %1</source>
        <translation>tempo %1</translation>
    </message>
    <message id="taken-back.void">
        <source>run at %1 that did not count</source>
        <translation>ripetizione a %1 che non contava</translation>
    </message>
    <message id="today.unsaved" numerus="yes">
        <source>%n not saved yet</source>
        <translation>
            <numerusform>%n non ancora salvato</numerusform>
            <numerusform>%n non ancora salvati</numerusform>
        </translation>
    </message>
    <message id="welcome.bars">
        <source>Number of bars</source>
        <translation>Numero di battute</translation>
    </message>
    <message id="welcome.drill">
        <source>Start drilling</source>
        <translation>Inizia a studiare</translation>
    </message>
    <message id="welcome.first-bar">
        <source>First bar</source>
        <translation>Prima battuta</translation>
    </message>
    <message id="welcome.hint">
        <source>Enter the bars that go wrong, and a start tempo at which nothing does. The rest has sensible defaults; you can change it later.</source>
        <translation>Inserisci le battute che non ti vengono, e un tempo di partenza a cui non sbagli nulla. Il resto ha valori predefiniti sensati; puoi cambiarlo dopo.</translation>
    </message>
    <message id="welcome.meter">
        <source>Meter</source>
        <translation>Metro</translation>
    </message>
    <message id="welcome.name">
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message id="welcome.other-ways">
        <source>Other ways to begin</source>
        <translation>Altri modi per iniziare</translation>
    </message>
    <message id="welcome.passage">
        <source>The passage</source>
        <translation>Il passaggio</translation>
    </message>
    <message id="welcome.start">
        <source>Start at</source>
        <translation>Parti da</translation>
    </message>
    <message id="welcome.subdivision">
        <source>Subdivision</source>
        <translation>Suddivisione</translation>
    </message>
    <message id="welcome.target">
        <source>Target</source>
        <translation>Obiettivo</translation>
    </message>
    <message id="welcome.title">
        <source>Your first passage</source>
        <translation>Il tuo primo passaggio</translation>
    </message>
    <message id="window.name">
        <source>Piolo</source>
        <translation>Piolo</translation>
    </message>
    <message id="window.title">
        <source>%1 – Piolo</source>
        <translation>%1 – Piolo</translation>
    </message>
    <message id="words.bar">
        <source>bar %1</source>
        <translation>battuta %1</translation>
    </message>
    <message id="words.bar-beat">
        <source>%1, beat %2</source>
        <translation>%1, movimento %2</translation>
    </message>
    <message id="words.bars">
        <source>bars %1–%2</source>
        <translation>battute %1–%2</translation>
    </message>
    <message id="words.date">
        <source>d MMMM</source>
        <translation>d MMMM</translation>
    </message>
    <message id="words.date-with-year">
        <source>d MMMM yyyy</source>
        <translation>d MMMM yyyy</translation>
    </message>
    <message id="words.days" numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n giorno</numerusform>
            <numerusform>%n giorni</numerusform>
        </translation>
    </message>
    <message id="words.days-ago" numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>%n giorno fa</numerusform>
            <numerusform>%n giorni fa</numerusform>
        </translation>
    </message>
    <message id="words.from-bar">
        <source>from bar %1</source>
        <translation>da battuta %1</translation>
    </message>
    <message id="words.hours">
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message id="words.hours-minutes">
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message id="words.in-a-row">
        <source>%1 of %2 clean in a row</source>
        <translation>%1 di %2 pulite di fila</translation>
    </message>
    <message id="words.in-days" numerus="yes">
        <source>in %n days</source>
        <translation>
            <numerusform>tra %n giorno</numerusform>
            <numerusform>tra %n giorni</numerusform>
        </translation>
    </message>
    <message id="words.in-one-line">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="words.millis">
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message id="words.minutes">
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message id="words.minutes-seconds">
        <source>%1 min %2 s</source>
        <translation>%1 min %2 s</translation>
    </message>
    <message id="words.of-hundred">
        <source>%1%</source>
        <translation>%1%</translation>
    </message>
    <message id="words.passages" numerus="yes">
        <source>%n passages</source>
        <translation>
            <numerusform>%n passaggio</numerusform>
            <numerusform>%n passaggi</numerusform>
        </translation>
    </message>
    <message id="words.runs" numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n ripetizione</numerusform>
            <numerusform>%n ripetizioni</numerusform>
        </translation>
    </message>
    <message id="words.seconds">
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message id="words.tempo-line">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="words.time">
        <source>HH:mm</source>
        <translation>HH:mm</translation>
    </message>
    <message id="words.today">
        <source>today</source>
        <translation>oggi</translation>
    </message>
    <message id="words.tomorrow">
        <source>tomorrow</source>
        <translation>domani</translation>
    </message>
    <message id="words.weekday-date">
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message id="words.yesterday">
        <source>yesterday</source>
        <translation>ieri</translation>
    </message>
</context>
</TS>
