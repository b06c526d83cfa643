<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="it" sourcelanguage="en">
<context>
    <name></name>
    <message id="accents.from-meter">
        <source>As the meter says</source>
        <translation>Come dice il metro</translation>
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
    <message id="breaks.drill">
        <source>Drill it</source>
        <translation>Studia</translation>
    </message>
    <message id="breaks.empty">
        <source>Misses are gathered here, by bar and beat.</source>
        <translation>Qui si raccolgono gli errori, per battuta e movimento.</translation>
    </message>
    <message id="breaks.in-parts">
        <source>In %1 parts</source>
        <translation>In %1 parti</translation>
    </message>
    <message id="breaks.in-parts.hint">
        <source>Makes passages of its parts, each landing on the beat with which the next begins</source>
        <translation>Crea passaggi delle sue parti; ognuna arriva sul movimento con cui comincia la successiva</translation>
    </message>
    <message id="breaks.last-bar-first">
        <source>Last bar first</source>
        <translation>Prima l&apos;ultima battuta</translation>
    </message>
    <message id="breaks.last-bar-first.hint">
        <source>Makes passages of the last bar, the last two, and so on</source>
        <translation>Crea passaggi dell&apos;ultima battuta, delle ultime due e così via</translation>
    </message>
    <message id="breaks.made">
        <source>Made: “%1”</source>
        <translation>Fatto: «%1»</translation>
    </message>
    <message id="breaks.made-of">
        <source>New passage: %1</source>
        <translation>Nuovo passaggio: %1</translation>
    </message>
    <message id="breaks.made-parts">
        <source>%1 made, the first: “%2”</source>
        <translation>%1 fatti, il primo: «%2»</translation>
    </message>
    <message id="breaks.misses" numerus="yes">
        <source>%n misses</source>
        <translation>
            <numerusform>%n errore</numerusform>
            <numerusform>%n errori</numerusform>
        </translation>
    </message>
    <message id="breaks.no-miss">
        <source>Not one miss so far.</source>
        <translation>Finora nemmeno un errore.</translation>
    </message>
    <message id="breaks.not-played">
        <source>Not played yet.</source>
        <translation>Non ancora suonato.</translation>
    </message>
    <message id="breaks.one-miss">
        <source>1 miss</source>
        <translation>1 errore</translation>
    </message>
    <message id="breaks.reason">
        <source>Most misses fall there.</source>
        <translation>Lì cade la maggior parte degli errori.</translation>
    </message>
    <message id="breaks.reason-run-up">
        <source>Most misses fall there; it has a bar to run up.</source>
        <translation>Lì cade la maggior parte degli errori; c&apos;è una battuta di rincorsa.</translation>
    </message>
    <message id="breaks.title">
        <source>Where it breaks</source>
        <translation>Dove si rompe</translation>
    </message>
    <message id="breaks.told">
        <source>%1 in %2, %3</source>
        <translation>%1 in %2, %3</translation>
    </message>
    <message id="breaks.told-elsewhere">
        <source>%1; the place of %2 is not known</source>
        <translation>%1; di %2 non si sa il punto</translation>
    </message>
    <message id="breaks.where">
        <source>Where “%1” breaks</source>
        <translation>Dove si rompe «%1»</translation>
    </message>
    <message id="care.authority">
        <source>Your teacher, your doctor and the rules of the place where you practise come first.</source>
        <translation>Vengono prima il tuo insegnante, il tuo medico e le regole del luogo dove studi.</translation>
    </message>
    <message id="care.gradually">
        <source>Add minutes gradually: a little more each week, no sudden jumps, a break well before you need one.</source>
        <translation>Aumenta i minuti poco per volta: ogni settimana un po&apos; di più, niente salti, e una pausa ben prima di averne bisogno.</translation>
    </message>
    <message id="care.headphones">
        <source>Keep headphones low: the horn is loud already, and this program does not know how loud it is at your ear.</source>
        <translation>Tieni basse le cuffie: lo strumento è già forte, e questo programma non sa quanto è forte al tuo orecchio.</translation>
    </message>
    <message id="care.pain">
        <source>Pain, tingling or numbness means stop, and see a professional before you play on.</source>
        <translation>Dolore, formicolio o intorpidimento vuol dire fermarsi, e sentire uno specialista prima di riprendere.</translation>
    </message>
    <message id="care.rest">
        <source>Rest your lip and your ears. Rest the thumb that carries the instrument, too.</source>
        <translation>Fai riposare labbro e orecchie, e anche il pollice che regge lo strumento.</translation>
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
        <translation>Aspetta il respiro prima di</translation>
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
        <source>The bars go on while the click is silent. Breath: bar, bar:beat, and +beats to wait. Another chance number, other silent bars and beats.</source>
        <translation>Le battute proseguono mentre il clic tace. Respiro: battuta, battuta:movimento, e +movimenti di attesa. Altro numero del caso, altre battute e altri movimenti muti.</translation>
    </message>
    <message id="click-form.lost-beats">
        <source>Lost beats, %</source>
        <translation>Movimenti muti, %</translation>
    </message>
    <message id="click-form.on">
        <source>Click on</source>
        <translation>Clic su</translation>
    </message>
    <message id="click-form.seed">
        <source>Chance number</source>
        <translation>Numero del caso</translation>
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
        <source>accents by hand</source>
        <translation>accenti a mano</translation>
    </message>
    <message id="click.bars-in-turn">
        <source>bars in turn: %1 with the click, %2 without</source>
        <translation>battute a turno: %1 con il clic, %2 senza</translation>
    </message>
    <message id="click.beats-left-out">
        <source>%1 beats of 100 left out</source>
        <translation>%1 movimenti su 100 muti</translation>
    </message>
    <message id="click.breath-at-one-place">
        <source>waits for breath at 1 place</source>
        <translation>aspetta il respiro in 1 punto</translation>
    </message>
    <message id="click.breath-at-places">
        <source>waits for breath at %1 places</source>
        <translation>aspetta il respiro in %1 punti</translation>
    </message>
    <message id="click.breath-below">
        <source>%1 below %2</source>
        <translation>%1 sotto %2</translation>
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
    <message id="click.off-beats">
        <source>off-beats only</source>
        <translation>solo i contrattempi</translation>
    </message>
    <message id="click.plain">
        <source>plain</source>
        <translation>semplice</translation>
    </message>
    <message id="click.silent">
        <source>silent</source>
        <translation>muto</translation>
    </message>
    <message id="click.silent-bars">
        <source>%1 bars of 100 silent</source>
        <translation>%1 battute su 100 mute</translation>
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
        <translation>swing %1 in %2</translation>
    </message>
    <message id="click.two-and-four">
        <source>2 and 4 only</source>
        <translation>solo 2 e 4</translation>
    </message>
    <message id="curve.all">
        <source>All</source>
        <translation>Tutto</translation>
    </message>
    <message id="curve.along">
        <source>Along</source>
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
        <source>Closer</source>
        <translation>Più vicino</translation>
    </message>
    <message id="curve.days">
        <source>days</source>
        <translation>giorni</translation>
    </message>
    <message id="curve.due">
        <source>due</source>
        <translation>entro</translation>
    </message>
    <message id="curve.empty">
        <source>The curve begins with the first run.</source>
        <translation>La curva comincia con la prima ripetizione.</translation>
    </message>
    <message id="curve.farther">
        <source>Farther</source>
        <translation>Più lontano</translation>
    </message>
    <message id="curve.file">
        <source>File, ending in .svg, .png, .pdf or .csv</source>
        <translation>File che finisce in .svg, .png, .pdf o .csv</translation>
    </message>
    <message id="curve.leave">
        <source>Leave it</source>
        <translation>Lascia stare</translation>
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
        <translation>una prova pulita all&apos;obiettivo</translation>
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
        <translation>una prova con errore all&apos;obiettivo</translation>
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
        <source>Curves of tempo: %1</source>
        <translation>Curve del tempo: %1</translation>
    </message>
    <message id="curve.spoken.keys">
        <source>Plus and minus zoom, Left and Right move, with Shift they read run by run, Up and Down change the passage.</source>
        <translation>Più e meno ingrandiscono e riducono, Sinistra e Destra spostano, con Maiusc leggono ripetizione per ripetizione, Su e Giù cambiano passaggio.</translation>
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
        <translation>battute senza il clic</translation>
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
        <source>beats left out of a hundred</source>
        <translation>movimenti muti su cento</translation>
    </message>
    <message id="difference.breath">
        <source>beats of breath</source>
        <translation>movimenti di respiro</translation>
    </message>
    <message id="difference.breath-below">
        <source>waits below</source>
        <translation>aspetta sotto</translation>
    </message>
    <message id="difference.breaths">
        <source>waits for breath</source>
        <translation>aspetta il respiro</translation>
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
        <source>bars of count-in</source>
        <translation>battute di conteggio</translation>
    </message>
    <message id="difference.differs">
        <source>differs</source>
        <translation>diverso</translation>
    </message>
    <message id="difference.drop">
        <source>drop</source>
        <translation>discesa</translation>
    </message>
    <message id="difference.due">
        <source>date</source>
        <translation>data</translation>
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
        <source>notes to a group</source>
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
        <translation>nessuno</translation>
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
        <source>notes to the beat</source>
        <translation>note per movimento</translation>
    </message>
    <message id="difference.origin">
        <source>made of passage</source>
        <translation>fatto dal passaggio</translation>
    </message>
    <message id="difference.pattern">
        <source>order of notes</source>
        <translation>ordine delle note</translation>
    </message>
    <message id="difference.pick-up">
        <source>pick-up</source>
        <translation>levare</translation>
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
        <translation>tolto qui</translation>
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
        <source>number for chance</source>
        <translation>numero del caso</translation>
    </message>
    <message id="difference.silent-bars">
        <source>silent bars of a hundred</source>
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
        <source>pulses to the beat</source>
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
    <message id="drill.articulation.notes">
        <source>notes</source>
        <translation>note</translation>
    </message>
    <message id="drill.aside.note">
        <source>aside: moves nothing</source>
        <translation>a parte: non muove nulla</translation>
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
        <translation>conteggio</translation>
    </message>
    <message id="drill.best">
        <source>Best: %1</source>
        <translation>Migliore: %1</translation>
    </message>
    <message id="drill.best.item">
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message id="drill.by-hand">
        <source>set by hand, from the next run</source>
        <translation>messo a mano, dalla prossima ripetizione</translation>
    </message>
    <message id="drill.choose-passage">
        <source>Choose a passage first.</source>
        <translation>Prima scegli un passaggio.</translation>
    </message>
    <message id="drill.count-in">
        <source>%1 bars count-in</source>
        <translation>%1 battute prima</translation>
    </message>
    <message id="drill.curve">
        <source>Tempo, last 14 days</source>
        <translation>Tempo, ultimi 14 giorni</translation>
    </message>
    <message id="drill.curve.spoken">
        <source>Curve of the tempo over the last 14 days, target %1</source>
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
        <translation>sentito in %1</translation>
    </message>
    <message id="drill.felt-beat">
        <source>Felt beat</source>
        <translation>Movimento sentito</translation>
    </message>
    <message id="drill.figures">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="drill.find-tempo">
        <source>Find the tempo, from %1 down</source>
        <translation>Trova il tempo, da %1 in giù</translation>
    </message>
    <message id="drill.finding">
        <source>Looking for your tempo: you named %1.</source>
        <translation>Si cerca il tuo tempo: hai detto %1.</translation>
    </message>
    <message id="drill.found">
        <source>Found today: %1; you named %2.</source>
        <translation>Trovato oggi: %1; avevi detto %2.</translation>
    </message>
    <message id="drill.half-tempo">
        <source>At half tempo, %1</source>
        <translation>A metà tempo, %1</translation>
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
    <message id="drill.in-context">
        <source>In context</source>
        <translation>Nel contesto</translation>
    </message>
    <message id="drill.in-context.note">
        <source>in context: moves nothing</source>
        <translation>nel contesto: non muove nulla</translation>
    </message>
    <message id="drill.new-day">
        <source>a new day: left at %1</source>
        <translation>un nuovo giorno: rimasto a %1</translation>
    </message>
    <message id="drill.next">
        <source>Next passage</source>
        <translation>Passaggio seguente</translation>
    </message>
    <message id="drill.no-count-in">
        <source>no count-in</source>
        <translation>nessun conteggio</translation>
    </message>
    <message id="drill.one-bar-count-in">
        <source>one bar count-in</source>
        <translation>una battuta prima</translation>
    </message>
    <message id="drill.only-heard">
        <source>%1 · only heard: nothing counts</source>
        <translation>%1 · solo ascolto: non conta nulla</translation>
    </message>
    <message id="drill.other-ways">
        <source>Other ways</source>
        <translation>Altri modi</translation>
    </message>
    <message id="drill.rhythm">
        <source>Rhythm</source>
        <translation>Ritmo</translation>
    </message>
    <message id="drill.rhythm.short">
        <source>rhythm</source>
        <translation>ritmo</translation>
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
        <translation>Smetti di ascoltare</translation>
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
        <source>Take it back</source>
        <translation>Annulla</translation>
    </message>
    <message id="drill.target">
        <source>target %1 ↑</source>
        <translation>obiettivo %1 ↑</translation>
    </message>
    <message id="drill.to-passages">
        <source>To the passages</source>
        <translation>Ai passaggi</translation>
    </message>
    <message id="drill.try">
        <source>One try at %1</source>
        <translation>Prova a %1</translation>
    </message>
    <message id="drill.try.note">
        <source>a try: moves nothing</source>
        <translation>una prova: non muove nulla</translation>
    </message>
    <message id="drill.verdict.clean">
        <source>Clean</source>
        <translation>Pulita</translation>
    </message>
    <message id="drill.verdict.clean-up">
        <source>Clean: up to %1</source>
        <translation>Pulita: su a %1</translation>
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
    <message id="drill.verdict.secure">
        <source>Secure at %1</source>
        <translation>Sicuro a %1</translation>
    </message>
    <message id="drill.verdict.taken-back">
        <source>Taken back</source>
        <translation>Annullato</translation>
    </message>
    <message id="drill.without-click">
        <source>Without the click</source>
        <translation>Senza il clic</translation>
    </message>
    <message id="drill.without-click.note">
        <source>without the click: moves nothing</source>
        <translation>senza il clic: non muove nulla</translation>
    </message>
    <message id="fault.E101">
        <source>is no verb; write %1, or see piolo --help</source>
        <translation>non è un comando; scrivi %1, o vedi piolo --help</translation>
    </message>
    <message id="fault.E102">
        <source>is no option here; see %1 --help</source>
        <translation>qui non c&apos;è; vedi %1 --help</translation>
    </message>
    <message id="fault.E103">
        <source>is missing; add it, for example %1</source>
        <translation>manca; aggiungilo, per esempio %1</translation>
    </message>
    <message id="fault.E104">
        <source>has no value; write one after it, for example %1</source>
        <translation>non ha un valore; scrivine uno dopo, per esempio %1</translation>
    </message>
    <message id="fault.E105">
        <source>&quot;%1&quot; is no whole number; write digits only, for example %2</source>
        <translation>«%1» non è un numero intero; scrivi solo cifre, per esempio %2</translation>
    </message>
    <message id="fault.E106">
        <source>&quot;%1&quot; is no tempo; write 10 to 400 with at most three decimals, for example 72.5</source>
        <translation>«%1» non è un tempo; scrivi da 10 a 400 con al massimo tre decimali, per esempio 72.5</translation>
    </message>
    <message id="fault.E107">
        <source>&quot;%1&quot; is no meter that can be counted; write 1 to 32 over 1, 2, 4, 8 or 16, for example 7/8</source>
        <translation>«%1» non è un metro che si possa contare; scrivi da 1 a 32 sopra 1, 2, 4, 8 o 16, per esempio 7/8</translation>
    </message>
    <message id="fault.E108">
        <source>&quot;%1&quot; is no beat; write 1/2, 1/4, 3/8, 1/8 or 3/4</source>
        <translation>«%1» non è un movimento; scrivi 1/2, 1/4, 3/8, 1/8 o 3/4</translation>
    </message>
    <message id="fault.E109">
        <source>a bar of %2 is no whole number of %1 beats; choose a shorter beat or another meter</source>
        <translation>una battuta di %2 non è un numero intero di movimenti di %1; scegli un movimento più corto o un altro metro</translation>
    </message>
    <message id="fault.E110">
        <source>&quot;%1&quot; are no groups of a %2 bar; write groups that fill it and begin on beats, as 2+2+3 fills 7/8 in eighths</source>
        <translation>«%1» non sono gruppi di una battuta di %2; scrivi gruppi che la riempiono e cominciano sui movimenti, come 2+2+3 riempie 7/8 in ottavi</translation>
    </message>
    <message id="fault.E111">
        <source>&quot;%1&quot; is no subdivision; write 1 to 8 pulses to the beat</source>
        <translation>«%1» non è una suddivisione; scrivi da 1 a 8 note per movimento</translation>
    </message>
    <message id="fault.E112">
        <source>&quot;%1&quot; is no voice; choose %2</source>
        <translation>«%1» non è una voce; scegli %2</translation>
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
        <source>&quot;%1&quot; does not fit here; write %2</source>
        <translation>«%1» qui non va; scrivi %2</translation>
    </message>
    <message id="fault.E116">
        <source>&quot;%1&quot; names no kind of file that is written here; let the name end in %2</source>
        <translation>«%1» non indica un tipo di file che qui si scrive; fai finire il nome in %2</translation>
    </message>
    <message id="fault.E117">
        <source>no passage has the id or title &quot;%1&quot;; check the spelling and the folder</source>
        <translation>nessun passaggio ha il codice o il titolo «%1»; controlla come è scritto e la cartella</translation>
    </message>
    <message id="fault.E118">
        <source>&quot;%1&quot; is the title of more than one passage; name one by its id: %2</source>
        <translation>«%1» è il titolo di più passaggi; indicane uno con il suo codice: %2</translation>
    </message>
    <message id="fault.E119">
        <source>is a word too many; leave it out, or see %1 --help</source>
        <translation>è una parola di troppo; lasciala via, o vedi %1 --help</translation>
    </message>
    <message id="fault.E120">
        <source>&quot;%1&quot; are no accents of a bar of %2 beats; write strong, group, plain or silent for each beat, with commas between</source>
        <translation>«%1» non sono accenti di una battuta di %2 movimenti; scrivi strong, group, plain o silent per ogni movimento, separati da virgole</translation>
    </message>
    <message id="fault.E121">
        <source>&quot;%1&quot; is no swing; write long:short from 1:1 to 3:1, as in 2:1</source>
        <translation>«%1» non è uno swing; scrivi lunga:breve da 1:1 a 3:1, come 2:1</translation>
    </message>
    <message id="fault.E122">
        <source>the beat has no pairs of eighths or sixteenths to swing; divide it into an even number of them with --subdivision</source>
        <translation>il movimento non ha coppie di ottavi o sedicesimi per lo swing; dividilo con --subdivision in un numero pari</translation>
    </message>
    <message id="fault.E123">
        <source>&quot;%1&quot; are no breath places in bars 1 to %2 of %3 beats; write BAR:BEAT:BEATS after the first beat, in order, as in 4:3:1,8:1:2</source>
        <translation>«%1» non sono punti di respiro nelle battute da 1 a %2 di %3 movimenti; scrivi BATTUTA:MOVIMENTO:MOVIMENTI dopo il primo movimento, in ordine, come 4:3:1,8:1:2</translation>
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
        <source>&quot;%1&quot; is no key; write a letter from A to G, with flat or sharp, for example &quot;E flat&quot;</source>
        <translation>«%1» non è una tonalità; scrivi una lettera da A a G, con flat o sharp, per esempio «E flat»</translation>
    </message>
    <message id="fault.E127">
        <source>&quot;%1&quot; is no note; write a letter, its sharps or flats and the octave, for example Bb3 or F#6</source>
        <translation>«%1» non è una nota; scrivi una lettera, i suoi diesis o bemolli e l&apos;ottava, per esempio Bb3 o F#6</translation>
    </message>
    <message id="fault.E128">
        <source>%1 has no tonic from %2 to %3; give a wider range, or another key</source>
        <translation>%1 non ha una tonica da %2 a %3; dai un&apos;estensione più ampia, o un&apos;altra tonalità</translation>
    </message>
    <message id="fault.E130">
        <source>&quot;%1&quot; is no part of this score; write the number or the name of one of its %2, piolo bars FILE lists them</source>
        <translation>«%1» non è una parte di questa partitura; scrivi il numero o il nome di una delle sue %2, piolo bars FILE le elenca</translation>
    </message>
    <message id="fault.E131">
        <source>&quot;%1&quot; is no bar of this part from there on; its bars go from %2 to %3, write one of them, the earlier one first</source>
        <translation>«%1» da lì in poi non è una battuta di questa parte; le sue battute vanno da %2 a %3, scrivine una, prima la precedente</translation>
    </message>
    <message id="fault.E201">
        <source>&quot;%1&quot; is no mark; write clean, miss, back, or tempo and a number</source>
        <translation>«%1» non è un segno; scrivi clean, miss, back, oppure tempo e un numero</translation>
    </message>
    <message id="fault.E202">
        <source>&quot;%1&quot; is no tempo; write 10 to 400 with at most three decimals, for example tempo 72.5</source>
        <translation>«%1» non è un tempo; scrivi da 10 a 400 con al massimo tre decimali, per esempio tempo 72.5</translation>
    </message>
    <message id="fault.E203">
        <source>the line is no JSON object; it is kept and not counted, mend it by hand or leave it</source>
        <translation>la riga non è un oggetto JSON; viene conservata e non contata, correggila a mano o lasciala</translation>
    </message>
    <message id="fault.E204">
        <source>the key &quot;%1&quot; is missing; the line is kept and not counted, mend it by hand or leave it</source>
        <translation>manca la chiave «%1»; la riga viene conservata e non contata, correggila a mano o lasciala</translation>
    </message>
    <message id="fault.E205">
        <source>the key &quot;%1&quot; has a value that cannot be[: %2]; the line is kept and not counted, mend it by hand or leave it</source>
        <translation>la chiave «%1» ha un valore impossibile[: %2]; la riga viene conservata e non contata, correggila a mano o lasciala</translation>
    </message>
    <message id="fault.E206">
        <source>the line is of a newer format[ (%1)]; it is kept and not counted, use a newer Piolo</source>
        <translation>la riga è di un formato più recente[ (%1)]; viene conservata e non contata, usa un Piolo più recente</translation>
    </message>
    <message id="fault.E207">
        <source>&quot;%1&quot; is a kind of fact that is not known; the line is kept and not counted, use a newer Piolo</source>
        <translation>«%1» è un tipo di voce sconosciuto; la riga viene conservata e non contata, usa un Piolo più recente</translation>
    </message>
    <message id="fault.E208">
        <source>the last line was cut short; it is kept and not counted, wait until the file has been copied whole</source>
        <translation>l&apos;ultima riga è tronca; viene conservata e non contata, aspetta che il file sia copiato per intero</translation>
    </message>
    <message id="fault.E209">
        <source>the id %1 stands for two different facts; one of them is counted, take the wrong line out by hand</source>
        <translation>il codice %1 sta per due voci diverse; una conta, togli a mano la riga sbagliata</translation>
    </message>
    <message id="fault.E210">
        <source>the line is not UTF-8 text; it is kept and not counted, mend it by hand or leave it</source>
        <translation>la riga non è testo UTF-8; viene conservata e non contata, correggila a mano o lasciala</translation>
    </message>
    <message id="fault.E211">
        <source>the line is longer than 65536 bytes; it is not counted, shorten it or take it out</source>
        <translation>la riga supera i 65536 byte; non viene contata, accorciala o toglila</translation>
    </message>
    <message id="fault.E212">
        <source>the id %1 is named here and recorded nowhere; bring the journal files of all devices into the folder</source>
        <translation>il codice %1 è nominato qui e non è registrato da nessuna parte; porta nella cartella i file del diario di tutti i dispositivi</translation>
    </message>
    <message id="fault.E213">
        <source>this is no WAV file of one channel in float32; give one as piolo click writes it</source>
        <translation>questo non è un file WAV a un canale in float32; dai uno come lo scrive piolo click</translation>
    </message>
    <message id="fault.E214">
        <source>the line is not as it was written; it is kept and not counted, put it back from a copy or take its &quot;sum&quot; out</source>
        <translation>la riga non è come fu scritta; viene conservata e non contata, rimettila da una copia o togli il suo &quot;sum&quot;</translation>
    </message>
    <message id="fault.E221">
        <source>this is no passage file, or one that was cut short; nothing was taken from it, have it sent again</source>
        <translation>questo non è un file di passaggi, o è tronco; non se n&apos;è preso nulla, fattelo rimandare</translation>
    </message>
    <message id="fault.E222">
        <source>the key &quot;%1&quot; is missing; nothing was taken from the file, mend it by hand or have it sent again</source>
        <translation>manca la chiave «%1»; non si è preso nulla dal file, correggilo a mano o fattelo rimandare</translation>
    </message>
    <message id="fault.E223">
        <source>the key &quot;%1&quot; has a value that cannot be[: %2]; nothing was taken from the file, mend it by hand or have it sent again</source>
        <translation>la chiave «%1» ha un valore impossibile[: %2]; non si è preso nulla dal file, correggilo a mano o fattelo rimandare</translation>
    </message>
    <message id="fault.E224">
        <source>the file is of a newer format[ (%1)]; nothing was taken from it, use a newer Piolo</source>
        <translation>il file è di un formato più recente[ (%1)]; non se n&apos;è preso nulla, usa un Piolo più recente</translation>
    </message>
    <message id="fault.E225">
        <source>the id %1 stands here for the second time; nothing was taken from the file, take one of the two out by hand</source>
        <translation>il codice %1 compare qui per la seconda volta; non si è preso nulla dal file, togli a mano uno dei due</translation>
    </message>
    <message id="fault.E226">
        <source>the passage &quot;%1&quot; belongs to a piece that is not in the file[ (%2)]; nothing was taken from it, have it sent again with its piece</source>
        <translation>il passaggio «%1» appartiene a un brano che non è nel file[ (%2)]; non se n&apos;è preso nulla, fattelo rimandare con il suo brano</translation>
    </message>
    <message id="fault.E227">
        <source>this is more than a passage file holds[ (%1)]; make several files of it, or shorten its names</source>
        <translation>è più di quanto contenga un file di passaggi[ (%1)]; fanne più file, o accorcia i nomi</translation>
    </message>
    <message id="fault.E241">
        <source>this is no MusicXML score; save it as MusicXML in the program that it was written with</source>
        <translation>questa non è una partitura MusicXML; salvala come MusicXML nel programma con cui è stata scritta</translation>
    </message>
    <message id="fault.E242">
        <source>the score goes bar by bar through all parts (score-timewise); save it part by part (score-partwise)</source>
        <translation>la partitura va battuta per battuta attraverso tutte le parti (score-timewise); salvala parte per parte (score-partwise)</translation>
    </message>
    <message id="fault.E243">
        <source>the XML breaks off or is damaged here[ (%1)]; save the score anew, or have it sent again</source>
        <translation>qui l&apos;XML si interrompe o è danneggiato[ (%1)]; salva di nuovo la partitura, o fattela rimandare</translation>
    </message>
    <message id="fault.E244">
        <source>the element &quot;%1&quot; holds what cannot be[: %2]; save the score anew, or mend it by hand</source>
        <translation>l&apos;elemento «%1» contiene qualcosa di impossibile[: %2]; salva di nuovo la partitura, o correggila a mano</translation>
    </message>
    <message id="fault.E245">
        <source>the element &quot;%1&quot; is missing[ in &quot;%2&quot;]; save the score anew, or mend it by hand</source>
        <translation>manca l&apos;elemento «%1»[ in «%2»]; salva di nuovo la partitura, o correggila a mano</translation>
    </message>
    <message id="fault.E246">
        <source>this is more than a score may hold[ (%1)]; save the part that is to be practised by itself</source>
        <translation>è più di quanto possa avere una partitura[ (%1)]; salva da sola la parte da studiare</translation>
    </message>
    <message id="fault.E247">
        <source>the packed file is damaged or was cut short; have it sent again, or save it unpacked</source>
        <translation>il file compresso è danneggiato o tronco; fattelo rimandare, o salvalo non compresso</translation>
    </message>
    <message id="fault.E248">
        <source>the packed file has no score at the place that it names[ (%1)]; save it anew, or unpacked</source>
        <translation>il file compresso non ha una partitura nel punto che indica[ (%1)]; salvalo di nuovo, o non compresso</translation>
    </message>
    <message id="fault.E249">
        <source>the file declares names of its own in its DOCTYPE, which are not read; save the score anew</source>
        <translation>il file dichiara nomi propri nel suo DOCTYPE, che non vengono letti; salva di nuovo la partitura</translation>
    </message>
    <message id="fault.E250">
        <source>the text is not in the encoding that it says, or in one that is not read; save the score as UTF-8 or UTF-16</source>
        <translation>il testo non ha la codifica che dice, o ne ha una che non si legge; salva la partitura come UTF-8 o UTF-16</translation>
    </message>
    <message id="fault.E251">
        <source>bar %1 has a %2, so that the bars picked are not played straight through; pick bars on one side of it</source>
        <translation>la battuta %1 ha un segno (%2) per cui le battute scelte non si suonano di seguito; scegli battute da un lato di essa</translation>
    </message>
    <message id="fault.E252">
        <source>the %2 changes in bar %1, and a passage has one; pick bars on one side of it</source>
        <translation>nella battuta %1 cambia qualcosa (%2) che in un passaggio resta uguale; scegli battute da un lato di essa</translation>
    </message>
    <message id="fault.E253">
        <source>bar %1 has a meter that cannot be counted here[ (%2)]; pick other bars</source>
        <translation>la battuta %1 ha un metro che qui non si può contare[ (%2)]; scegli altre battute</translation>
    </message>
    <message id="fault.E254">
        <source>bar %1 is no whole bar: it holds %2 in %3; pick bars on one side of it</source>
        <translation>la battuta %1 non è intera: ha %2 in %3; scegli battute da un lato di essa</translation>
    </message>
    <message id="fault.E255">
        <source>bars %1 to %2 are no 1 to 999 whole bars; pick more, or fewer</source>
        <translation>le battute da %1 a %2 non sono da 1 a 999 battute intere; scegline di più o di meno</translation>
    </message>
    <message id="fault.E261">
        <source>cannot be felt in that beat: %1 would not come out even; change it first</source>
        <translation>non si può sentire in quel movimento: %1 non tornerebbe; cambialo prima</translation>
    </message>
    <message id="fault.E265">
        <source>the notes of &quot;%1&quot; are not known; pick its bars from a score in MusicXML, with piolo bars or in the window</source>
        <translation>le note di «%1» non sono note; scegli le sue battute da una partitura MusicXML, con piolo bars o nella finestra</translation>
    </message>
    <message id="fault.E270">
        <source>bar %1: a note lies outside the bars of the passage and cannot be written as MusicXML; make the passage longer, or pick its bars anew</source>
        <translation>battuta %1: una nota sta fuori dalle battute del passaggio e non si può scrivere come MusicXML; allunga il passaggio, o scegli di nuovo le sue battute</translation>
    </message>
    <message id="fault.E271">
        <source>bar %1: a note begins while another sounds and cannot be written as MusicXML; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>battuta %1: una nota comincia mentre un&apos;altra suona e non si può scrivere come MusicXML; esporta il passaggio come .piolo.json, che lo conserva com&apos;è</translation>
    </message>
    <message id="fault.E272">
        <source>bar %1: a note is shorter than any note value and cannot be written as MusicXML; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>battuta %1: una nota è più breve di ogni figura e non si può scrivere come MusicXML; esporta il passaggio come .piolo.json, che lo conserva com&apos;è</translation>
    </message>
    <message id="fault.E273">
        <source>the written %1 sounds as MIDI number %2, transposed otherwise than its part; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>il %1 scritto suona come numero MIDI %2, trasposto diversamente dalla sua parte; esporta il passaggio come .piolo.json, che lo conserva com&apos;è</translation>
    </message>
    <message id="fault.E281">
        <source>this is no PNG, JPEG or PDF; save or scan the music as one of them</source>
        <translation>questo non è un PNG, JPEG o PDF; salva o scansiona la musica in uno di questi</translation>
    </message>
    <message id="fault.E282">
        <source>the picture is damaged or was cut short[ (%1)]; save it anew, or have it sent again</source>
        <translation>l&apos;immagine è danneggiata o tronca[ (%1)]; salvala di nuovo, o fattela rimandare</translation>
    </message>
    <message id="fault.E283">
        <source>this is more than a picture of music may hold[ (%1)]; scan or save the page by itself, or smaller</source>
        <translation>è più di quanto possa avere un&apos;immagine di musica[ (%1)]; scansiona o salva la pagina da sola, o più piccola</translation>
    </message>
    <message id="fault.E284">
        <source>the PDF asks for a password; save it without one</source>
        <translation>il PDF chiede una parola d&apos;ordine; salvalo senza</translation>
    </message>
    <message id="fault.E285">
        <source>the PDF has no page %1; choose 1 to %2</source>
        <translation>il PDF non ha una pagina %1; scegli da 1 a %2</translation>
    </message>
    <message id="fault.E286">
        <source>page %1 took too long to draw; save it as a picture in another program</source>
        <translation>la pagina %1 ha richiesto troppo tempo; salvala come immagine in un altro programma</translation>
    </message>
    <message id="fault.E301">
        <source>cannot be read[ (%1)]; check the name and its permissions</source>
        <translation>non si può leggere[ (%1)]; controlla il nome e i suoi permessi</translation>
    </message>
    <message id="fault.E302">
        <source>cannot be written[ (%1)]; check the folder and its permissions</source>
        <translation>non si può scrivere[ (%1)]; controlla la cartella e i suoi permessi</translation>
    </message>
    <message id="fault.E303">
        <source>the folder cannot be made[ (%1)]; choose another or check its permissions</source>
        <translation>la cartella non si può creare[ (%1)]; scegline un&apos;altra o controlla i suoi permessi</translation>
    </message>
    <message id="fault.E304">
        <source>the sound would be larger than 4 GiB; ask for fewer bars or a lower rate</source>
        <translation>il suono supererebbe i 4 GiB; chiedi meno battute o una frequenza più bassa</translation>
    </message>
    <message id="fault.E305">
        <source>another window writes to this practice folder: nothing is recorded here; go on there, or close it and open this one again</source>
        <translation>un&apos;altra finestra scrive in questa cartella di studio: qui non si registra nulla; continua là, o chiudila e riapri questa</translation>
    </message>
    <message id="fault.E306">
        <source>this is no practice folder; name a folder</source>
        <translation>questa non è una cartella di studio; indica una cartella</translation>
    </message>
    <message id="fault.E307">
        <source>the disk is full; make room and try again</source>
        <translation>il disco è pieno; fai spazio e riprova</translation>
    </message>
    <message id="fault.E308">
        <source>there is no display to open the window on; start it in a graphical session, or see piolo --help for what works without one</source>
        <translation>non c&apos;è uno schermo su cui aprire la finestra; avvialo in una sessione grafica, o vedi con piolo --help che cosa funziona senza</translation>
    </message>
    <message id="fault.E321">
        <source>a window has this folder open; close it and try again</source>
        <translation>una finestra ha aperta questa cartella; chiudila e riprova</translation>
    </message>
    <message id="fault.E322">
        <source>the folder holds no passages and no pieces; name the practice folder they are in</source>
        <translation>la cartella non ha passaggi né brani; indica la cartella di studio in cui sono</translation>
    </message>
    <message id="fault.E323">
        <source>not everything could be saved in time; look after the disk and import the file again, what is saved counts once</source>
        <translation>non si è potuto salvare tutto in tempo; controlla il disco e importa di nuovo il file, ciò che è salvato conta una volta sola</translation>
    </message>
    <message id="fault.E401">
        <source>no sound: the click goes on silently; connect a device or choose one in the settings, it is heard again from the next bar</source>
        <translation>nessun suono: il clic continua in silenzio; collega un dispositivo o scegline uno nelle impostazioni, dalla prossima battuta si sente di nuovo</translation>
    </message>
    <message id="fault.E403">
        <source>the sound is lost: the click goes on silently; start Piolo again to hear it, nothing recorded is lost</source>
        <translation>il suono si è perso: il clic continua in silenzio; riavvia Piolo per sentirlo, nulla di ciò che è registrato va perso</translation>
    </message>
    <message id="fault.E404">
        <source>the computer fell behind: keys that had to wait %1, beats not shown %2; close other programs, no mark was lost</source>
        <translation>il computer è rimasto indietro: tasti che hanno dovuto aspettare %1, movimenti non mostrati %2; chiudi altri programmi, nessun segno è andato perso</translation>
    </message>
    <message id="files.back-to-form">
        <source>Back to the form</source>
        <translation>Torna al modulo</translation>
    </message>
    <message id="files.changes">
        <source>What the file would change</source>
        <translation>Che cosa cambierebbe il file</translation>
    </message>
    <message id="files.edited-here">
        <source>▲ edited here since it was imported</source>
        <translation>▲ modificato qui dopo l&apos;importazione</translation>
    </message>
    <message id="files.empty">
        <source>There is nothing in this file.</source>
        <translation>In questo file non c&apos;è nulla.</translation>
    </message>
    <message id="files.export">
        <source>Write a file</source>
        <translation>Scrivi un file</translation>
    </message>
    <message id="files.export.file">
        <source>File, ending in .piolo.json</source>
        <translation>File che finisce in .piolo.json</translation>
    </message>
    <message id="files.export.hint">
        <source>Passages and their pieces for another player; nothing of what was played is in the file.</source>
        <translation>Passaggi e i loro brani per un&apos;altra persona; nel file non c&apos;è nulla di ciò che è stato suonato.</translation>
    </message>
    <message id="files.export.tick">
        <source>Tick the passages to write.</source>
        <translation>Segna i passaggi da scrivere.</translation>
    </message>
    <message id="files.export.write">
        <source>Write the file</source>
        <translation>Scrivi il file</translation>
    </message>
    <message id="files.figures">
        <source>%1 new, %2 the same, %3 different or removed here</source>
        <translation>%1 nuovi, %2 uguali, %3 diversi o tolti qui</translation>
    </message>
    <message id="files.import">
        <source>Take from a file</source>
        <translation>Prendi da un file</translation>
    </message>
    <message id="files.not-yet">
        <source>Nothing is taken before you have seen what it would change.</source>
        <translation>Non si prende nulla prima che tu abbia visto che cosa cambierebbe.</translation>
    </message>
    <message id="files.open">
        <source>Look into it</source>
        <translation>Guarda dentro</translation>
    </message>
    <message id="files.open.file">
        <source>File (.piolo.json): type its place or drop it here</source>
        <translation>File (.piolo.json): scrivi dov&apos;è o trascinalo qui</translation>
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
        <source>Reading …</source>
        <translation>Lettura …</translation>
    </message>
    <message id="files.take">
        <source>Take it</source>
        <translation>Prendi</translation>
    </message>
    <message id="files.taken">
        <source>%1 added, %2 as in the file now, %3 left as they were.</source>
        <translation>%1 aggiunti, %2 ora come nel file, %3 lasciati com&apos;erano.</translation>
    </message>
    <message id="files.tick-all">
        <source>Tick all that differ</source>
        <translation>Segna tutto ciò che è diverso</translation>
    </message>
    <message id="files.tick-none">
        <source>Tick none</source>
        <translation>Non segnare nulla</translation>
    </message>
    <message id="files.tick.hint">
        <source>What has no tick stays as it is here; what has one becomes as in the file. What is new is added.</source>
        <translation>Ciò che non ha il segno resta com&apos;è qui; ciò che lo ha diventa come nel file. Ciò che è nuovo si aggiunge.</translation>
    </message>
    <message id="files.title">
        <source>Passage files</source>
        <translation>File di passaggi</translation>
    </message>
    <message id="files.unchanged">
        <source>Everything in this file is here already: nothing would change.</source>
        <translation>Tutto ciò che è in questo file c&apos;è già: non cambierebbe nulla.</translation>
    </message>
    <message id="files.what-to-do">
        <source>What to do</source>
        <translation>Che cosa fare</translation>
    </message>
    <message id="form.about-climb">
        <source>at %1 about %2 to the next climb at nine clean in ten</source>
        <translation>a %1 circa %2 fino alla prossima salita, con nove pulite su dieci</translation>
    </message>
    <message id="form.about-secure">
        <source>at the target about %1 to a full row at nine clean in ten</source>
        <translation>all&apos;obiettivo circa %1 per una serie piena, con nove pulite su dieci</translation>
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
        <translation>aperto</translation>
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
        <source>Breath, beats</source>
        <translation>Mov. di respiro</translation>
    </message>
    <message id="form.clean-runs">
        <source>Clean in a row</source>
        <translation>Pulite di fila</translation>
    </message>
    <message id="form.click">
        <source>The click: %1</source>
        <translation>Il clic: %1</translation>
    </message>
    <message id="form.click.every-beat">
        <source>The click: every beat, as the meter says</source>
        <translation>Il clic: ogni movimento, come dice il metro</translation>
    </message>
    <message id="form.climb">
        <source>then climb</source>
        <translation>poi sali di</translation>
    </message>
    <message id="form.count-in">
        <source>Count-in, bars</source>
        <translation>Battute prima</translation>
    </message>
    <message id="form.discard">
        <source>Throw away changes</source>
        <translation>Butta le modifiche</translation>
    </message>
    <message id="form.drill">
        <source>Drill it</source>
        <translation>Studia</translation>
    </message>
    <message id="form.drop">
        <source>A miss drops</source>
        <translation>Un errore fa scendere</translation>
    </message>
    <message id="form.edit-piece">
        <source>Change the piece itself: its name, instrument, date</source>
        <translation>Cambia il brano stesso: nome, strumento, data</translation>
    </message>
    <message id="form.fault.above-start">
        <source>at most the start, %1</source>
        <translation>al massimo la partenza, %1</translation>
    </message>
    <message id="form.fault.beat">
        <source>this beat does not fill a bar of that meter</source>
        <translation>questo movimento non riempie una battuta di quel metro</translation>
    </message>
    <message id="form.fault.below-start">
        <source>at least the start, %1</source>
        <translation>almeno la partenza, %1</translation>
    </message>
    <message id="form.fault.breaths">
        <source>places in their order, such as 43, 45:3 or 47:1+2; at most %1</source>
        <translation>punti in ordine, come 43, 45:3 o 47:1+2; al massimo %1</translation>
    </message>
    <message id="form.fault.groups">
        <source>groups that fill the bar and begin on beats, such as 2+2+3</source>
        <translation>gruppi che riempiono la battuta e cominciano sui movimenti, come 2+2+3</translation>
    </message>
    <message id="form.fault.letters">
        <source>at most %1 letters</source>
        <translation>al massimo %1 lettere</translation>
    </message>
    <message id="form.fault.meter">
        <source>a meter such as 4/4, 6/8 or 7/8</source>
        <translation>un metro come 4/4, 6/8 o 7/8</translation>
    </message>
    <message id="form.fault.pick-up">
        <source>a length such as 1/8 or 1/4, or nothing</source>
        <translation>una durata come 1/8 o 1/4, o niente</translation>
    </message>
    <message id="form.fault.pick-up-too-long">
        <source>a pick-up is shorter than a bar</source>
        <translation>un levare è più corto di una battuta</translation>
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
        <source>too long to be kept</source>
        <translation>troppo lungo per essere tenuto</translation>
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
        <source>Gentle near the target: a miss drops one climb there; at the target only the second in a row drops</source>
        <translation>Dolce vicino all&apos;obiettivo: lì un errore fa scendere di una salita; all&apos;obiettivo solo il secondo di fila</translation>
    </message>
    <message id="form.group">
        <source>Notes in a group</source>
        <translation>Note per gruppo</translation>
    </message>
    <message id="form.groups">
        <source>Groups</source>
        <translation>Gruppi</translation>
    </message>
    <message id="form.landing">
        <source>Landing note</source>
        <translation>Nota d&apos;arrivo</translation>
    </message>
    <message id="form.made-of">
        <source>Made of “%1”.</source>
        <translation>Fatto da «%1».</translation>
    </message>
    <message id="form.made-of-another">
        <source>Made of another passage.</source>
        <translation>Fatto da un altro passaggio.</translation>
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
        <source>A new passage</source>
        <translation>Un nuovo passaggio</translation>
    </message>
    <message id="form.new-piece">
        <source>A new piece…</source>
        <translation>Un nuovo brano…</translation>
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
        <source>On its own</source>
        <translation>Per conto suo</translation>
    </message>
    <message id="form.open-ended">
        <source>Open-ended: I end each run</source>
        <translation>Senza fine: chiudo io ogni ripetizione</translation>
    </message>
    <message id="form.pick-up">
        <source>Pick-up</source>
        <translation>Levare</translation>
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
        <source>Take %1 in a row</source>
        <translation>Prendine %1 di fila</translation>
    </message>
    <message id="form.run">
        <source>%1 a run · %2 · %3 to a full row at the target with no miss at all.</source>
        <translation>%1 a ripetizione · %2 · %3 per una serie piena all&apos;obiettivo senza nessun errore.</translation>
    </message>
    <message id="form.run-long">
        <source>A run of %1 is long: shorter parts come clean sooner.</source>
        <translation>Una ripetizione di %1 è lunga: parti più corte riescono pulite prima.</translation>
    </message>
    <message id="form.run-long-streak">
        <source>A run of %1 is long for %2 in a row: %3 would do.</source>
        <translation>Una ripetizione di %1 è lunga per %2 di fila: ne basterebbero %3.</translation>
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
        <source>About %1 runs will be clean where this settles.</source>
        <translation>Circa %1 ripetizioni saranno pulite dove la cosa si assesta.</translation>
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
        <source>Breaks, a warm-up, a daily limit and no sudden increase are what a sheet for students of two professional bodies advises (NASM and PAMA).</source>
        <translation>Pause, riscaldamento, un limite al giorno e nessun aumento improvviso: è ciò che consiglia un foglio per studenti di due associazioni di settore (NASM e PAMA).</translation>
    </message>
    <message id="help.care.why.complaints">
        <source>Of 442 music students without a complaint from playing about half had one within a year; fatigue and a change in how active they were raised the risk (Cruder and others 2023).</source>
        <translation>Di 442 studenti di musica senza disturbi da strumento circa la metà ne ebbe entro un anno; la stanchezza e un cambiamento nell&apos;attività fisica aumentavano il rischio (Cruder e altri 2023).</translation>
    </message>
    <message id="help.care.why.loudness">
        <source>Of forty students about half would have passed a day&apos;s dose of sound by their own practice alone (Phillips and Mace 2008).</source>
        <translation>Di quaranta studenti circa la metà avrebbe superato la dose di suono di un giorno con il solo studio individuale (Phillips e Mace 2008).</translation>
    </message>
    <message id="help.chapters">
        <source>Chapters</source>
        <translation>Capitoli</translation>
    </message>
    <message id="help.drill.key.clean">
        <source>end an open-ended run clean</source>
        <translation>chiudi pulita una ripetizione senza fine</translation>
    </message>
    <message id="help.drill.key.hear">
        <source>hear the passage first, where its bars came from a score</source>
        <translation>prima ascolta il passaggio, se le battute vengono da una partitura</translation>
    </message>
    <message id="help.drill.key.miss">
        <source>start; while the click runs, mark a miss</source>
        <translation>inizia; mentre suona il clic, segna un errore</translation>
    </message>
    <message id="help.drill.key.next">
        <source>the next passage, while stopped</source>
        <translation>il passaggio seguente, da fermo</translation>
    </message>
    <message id="help.drill.key.pedal">
        <source>everything: a press starts or marks a miss, two presses take back; held, it stops the click, and while stopped it opens the next passage</source>
        <translation>tutto: una pressione avvia o segna un errore, due annullano; tenuto, ferma il clic, e da fermo apre il passaggio seguente</translation>
    </message>
    <message id="help.drill.key.stop">
        <source>stop</source>
        <translation>ferma</translation>
    </message>
    <message id="help.drill.key.take-back">
        <source>take back the last mark</source>
        <translation>annulla l&apos;ultimo segno</translation>
    </message>
    <message id="help.drill.key.tempo">
        <source>the tempo up and down, while stopped</source>
        <translation>il tempo su e giù, da fermo</translation>
    </message>
    <message id="help.drill.key.try">
        <source>one try at the target</source>
        <translation>una prova all&apos;obiettivo</translation>
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
        <source>Count-in, run, breath, and again. A run that reaches its last bar without a miss is clean by itself. A miss drops the tempo, never below the floor; a full row of clean runs climbs one step, never past the target. A miss or a climb starts the row again.</source>
        <translation>Conteggio, ripetizione, respiro, e da capo. Una ripetizione che arriva all&apos;ultima battuta senza un errore è pulita da sola. Un errore fa scendere il tempo, mai sotto il minimo; una serie piena di ripetizioni pulite sale di un passo, mai oltre l&apos;obiettivo. Un errore o una salita fa ricominciare la serie.</translation>
    </message>
    <message id="help.drill.what.late">
        <source>Pressed late? A press in the breath after a clean run makes that run a miss after all.</source>
        <translation>Premuto tardi? Un tasto premuto nel respiro dopo una ripetizione pulita la rende comunque un errore.</translation>
    </message>
    <message id="help.drill.what.secure">
        <source>A full row at the target counts as secure. Secure on three different days, and the passage is secure as a whole. A new day opens two rungs below the last full row. The settings change both.</source>
        <translation>Una serie piena all&apos;obiettivo conta come sicura. Sicuro in tre giorni diversi, e il passaggio lo è del tutto. Un nuovo giorno comincia due pioli sotto l&apos;ultima serie piena. Le impostazioni cambiano entrambe le cose.</translation>
    </message>
    <message id="help.drill.what.ways">
        <source>Felt as: quarter = 60 and eighth = 120 are one speed; another beat turns everything over and keeps your row. Find the tempo: name one you think you can play, and each miss drops until a full row has found yours. A try, and runs without the click, in context or at half tempo, move nothing. Each articulation has a best of its own.</source>
        <translation>Sentito in: quarto = 60 e ottavo = 120 sono la stessa velocità; un altro movimento converte tutto e mantiene la serie. Trova il tempo: dì quello che pensi di saper suonare, e ogni errore lo abbassa finché una serie piena ha trovato il tuo. Una prova, e le ripetizioni senza clic, nel contesto o a metà tempo, non muovono nulla. Ogni articolazione ha un suo migliore.</translation>
    </message>
    <message id="help.drill.why.climbing">
        <source>Climbing step by step is customary. It is not shown to beat other orders of tempi: among sixty school wind players a steady climb, the full tempo and both in turn made no significant difference (Henley 2001). The rule makes for few misses and an honest record.</source>
        <translation>Salire passo per passo è consuetudine. Non è dimostrato che superi altri ordini di tempi: fra sessanta studenti di strumenti a fiato la salita costante, il tempo pieno e l&apos;alternanza dei due non fecero differenza significativa (Henley 2001). La regola porta a pochi errori e a un diario onesto.</translation>
    </message>
    <message id="help.drill.why.full-streak">
        <source>A full row is no proof: five clean of five only say, at 95 %, that more than 54 of 100 runs are clean.</source>
        <translation>Una serie piena non è una prova: cinque pulite su cinque dicono soltanto, al 95 %, che sono pulite più di 54 ripetizioni su 100.</translation>
    </message>
    <message id="help.drill.why.going-on">
        <source>Going on after the first success helps to keep what was learned, to a moderate degree and in many kinds of tasks (Driskell, Willis and Copper 1992); how much in music is not known.</source>
        <translation>Continuare dopo il primo successo aiuta a conservare ciò che si è imparato, in misura moderata e in compiti di molti tipi (Driskell, Willis e Copper 1992); quanto nella musica non si sa.</translation>
    </message>
    <message id="help.drill.why.staircase">
        <source>Drop and climb make a staircase as hearing tests use it. It settles about where so many runs are clean as its steps decide: with five in a row, drop 4 and climb 2, about 92 of 100 (Levitt 1971, Kaernbach 1991, García-Pérez 1998). The formula supposes a player who neither tires nor learns.</source>
        <translation>Discesa e salita formano una scala come quella delle prove d&apos;udito. Si assesta all&apos;incirca dove è pulita la parte di ripetizioni che i suoi passi decidono: con cinque di fila, discesa 4 e salita 2, circa 92 su 100 (Levitt 1971, Kaernbach 1991, García-Pérez 1998). La formula suppone chi suona senza stancarsi né imparare.</translation>
    </message>
    <message id="help.drill.why.tempo-heard">
        <source>A change of tempo below about three in a hundred is hard to hear (Drake and Botte 1993). So a climb and a drop are told by short signals.</source>
        <translation>Un cambio di tempo sotto circa tre su cento si sente a fatica (Drake e Botte 1993). Perciò segnali brevi annunciano salita e discesa.</translation>
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
        <source>Carry passages from a teacher to a student: a file holds passages and their pieces, and nothing of what was played. Before anything is taken from one you see what it would change.</source>
        <translation>Porta passaggi dall&apos;insegnante all&apos;allievo: un file contiene passaggi e i loro brani, e nulla di ciò che è stato suonato. Prima che se ne prenda qualcosa vedi che cosa cambierebbe.</translation>
    </message>
    <message id="help.files.what.edited">
        <source>What you have edited since it came is marked, so that a new version of your teacher&apos;s does not cover your own work unseen. The same file twice changes nothing.</source>
        <translation>Ciò che hai modificato da quando è arrivato è segnato, così una nuova versione del tuo insegnante non copre il tuo lavoro senza che tu lo veda. Lo stesso file due volte non cambia nulla.</translation>
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
        <source>on the curve: move along; with Shift run by run</source>
        <translation>sulla curva: scorri; con Maiusc ripetizione per ripetizione</translation>
    </message>
    <message id="help.log.key.along.keys">
        <source>Left, Right</source>
        <translation>Sinistra, Destra</translation>
    </message>
    <message id="help.log.key.breaks">
        <source>makes a passage of the bars that break</source>
        <translation>fa un passaggio delle battute che si rompono</translation>
    </message>
    <message id="help.log.key.days">
        <source>through the days</source>
        <translation>attraverso i giorni</translation>
    </message>
    <message id="help.log.key.days.keys">
        <source>PgUp, PgDown, Home, End</source>
        <translation>Pag su, Pag giù, Inizio, Fine</translation>
    </message>
    <message id="help.log.key.line">
        <source>on the curve: the next passage; in the list: the next line</source>
        <translation>sulla curva: il passaggio seguente; nella lista: la riga seguente</translation>
    </message>
    <message id="help.log.key.line.keys">
        <source>Up, Down</source>
        <translation>Su, Giù</translation>
    </message>
    <message id="help.log.key.zoom">
        <source>on the curve: closer, farther, all of it</source>
        <translation>sulla curva: più vicino, più lontano, tutto</translation>
    </message>
    <message id="help.log.key.zoom.keys">
        <source>Plus, minus, 0</source>
        <translation>Più, meno, 0</translation>
    </message>
    <message id="help.log.title">
        <source>Practice log</source>
        <translation>Diario di studio</translation>
    </message>
    <message id="help.log.what.curve">
        <source>The curve shows the tempo by day or by run. Where it breaks shows the misses of a passage by bar and beat, and makes a smaller passage of the worst bars, with a bar to run up.</source>
        <translation>La curva mostra il tempo per giorno o per ripetizione. Dove si rompe mostra gli errori di un passaggio per battuta e movimento, e fa delle battute peggiori un passaggio più piccolo, con una battuta di rincorsa.</translation>
    </message>
    <message id="help.log.what.everything">
        <source>Everything that happened, day by day: every run with its tempo, its mark and where a miss fell; tempi set by hand; run-throughs; your own notes. Marks taken back stay as taken back.</source>
        <translation>Tutto ciò che è successo, giorno per giorno: ogni ripetizione con il suo tempo, il suo segno e il punto di un errore; i tempi messi a mano; le filate; le tue note. I segni annullati restano come annullati.</translation>
    </message>
    <message id="help.log.what.folder">
        <source>It is written to the practice folder on this computer and nowhere else. Nothing is sent away. Copy the folder, or let your own file sync carry it, and all is there.</source>
        <translation>È scritto nella cartella di studio su questo computer e da nessun&apos;altra parte. Nulla viene spedito. Copia la cartella, o lascia che la porti la tua sincronizzazione dei file, e c&apos;è tutto.</translation>
    </message>
    <message id="help.log.why.days-apart">
        <source>Days apart help to keep what was learned (Simmons 2012). Minutes apart are a rest: pauses up to a quarter of an hour changed nothing for beginners at the piano, tested five minutes later (Wiseheart, D&apos;Souza and Chae 2017). One day missed now and then is told as fine, two in a row are told; that is our choice.</source>
        <translation>La distanza di giorni aiuta a conservare ciò che si è imparato (Simmons 2012). I minuti in mezzo sono riposo: pause fino a un quarto d&apos;ora non cambiarono nulla per principianti al pianoforte, provati cinque minuti dopo (Wiseheart, D&apos;Souza e Chae 2017). Un giorno saltato ogni tanto va bene, due di fila vengono detti; è una nostra scelta.</translation>
    </message>
    <message id="help.log.why.reaction">
        <source>You hear a slip first and press after: each miss is put back by your reaction time. A quarter of a second is a guess; the settings have your own.</source>
        <translation>Prima senti uno sbaglio e poi premi: ogni errore è spostato indietro del tuo tempo di reazione. Un quarto di secondo è una stima; nelle impostazioni metti il tuo.</translation>
    </message>
    <message id="help.paper.title">
        <source>Practice on paper</source>
        <translation>Studio su carta</translation>
    </message>
    <message id="help.paper.what.print">
        <source>Print a ladder for each passage, tick it in pencil where there is no screen, and enter the sheet later: the rule goes through its marks as if they had been played here, on the day that you give.</source>
        <translation>Stampa una scala per ogni passaggio, segnala a matita dove non c&apos;è uno schermo, e riporta il foglio più tardi: la regola passa per i suoi segni come se fossero stati suonati qui, nel giorno che dici.</translation>
    </message>
    <message id="help.paper.why.earlier-day">
        <source>Runs of an earlier day go in no earlier than the last day of the passage&apos;s log: what the rule has done since is not undone.</source>
        <translation>Le ripetizioni di un giorno passato non vanno prima dell&apos;ultimo giorno nel diario del passaggio: ciò che la regola ha fatto da allora non si disfa.</translation>
    </message>
    <message id="help.paper.why.order">
        <source>A sheet says how many, not in which order: on each rung misses count before circles.</source>
        <translation>Un foglio dice quanti, non in che ordine: su ogni piolo gli errori contano prima dei cerchi.</translation>
    </message>
    <message id="help.passages.key.list">
        <source>from passage to passage in the list</source>
        <translation>di passaggio in passaggio nella lista</translation>
    </message>
    <message id="help.passages.key.list.keys">
        <source>Up, Down</source>
        <translation>Su, Giù</translation>
    </message>
    <message id="help.passages.key.save">
        <source>save what the form holds, and drill it</source>
        <translation>salva ciò che è nel modulo, e studialo</translation>
    </message>
    <message id="help.passages.title">
        <source>Passages</source>
        <translation>Passaggi</translation>
    </message>
    <message id="help.passages.what.form">
        <source>Its bars, a start and a target are enough; the rest has a good beginning. The form says how long a run takes, and about how many runs a full row asks for.</source>
        <translation>Bastano battute, partenza e obiettivo; il resto ha un buon inizio. Il modulo dice quanto dura una ripetizione, e circa quante ne chiede una serie piena.</translation>
    </message>
    <message id="help.passages.what.gentle">
        <source>Gentle near the target: a miss there drops one climb, and at the target only the second in a row drops.</source>
        <translation>Dolce vicino all&apos;obiettivo: lì un errore fa scendere di una salita, e all&apos;obiettivo solo il secondo di fila.</translation>
    </message>
    <message id="help.passages.what.list">
        <source>All your passages: by the next date of their piece, by how long they have rested, or by how far they have to climb. The form beside the list holds what the chosen one is made of: bars, meter, tempi, rule, click, and how it is played.</source>
        <translation>Tutti i tuoi passaggi: per prossima data del brano, per quanto tempo sono stati fermi, o per quanto devono salire. Il modulo accanto contiene ciò di cui è fatto quello scelto: battute, metro, tempi, regola, clic e come si suona.</translation>
    </message>
    <message id="help.passages.why.about-runs">
        <source>About how many runs: this is arithmetic for a player of whose runs nine in ten are clean, who neither tires nor learns. It is no promise.</source>
        <translation>Circa quante ripetizioni: è un calcolo per chi ne suona pulite nove su dieci, e non si stanca né impara. Non è una promessa.</translation>
    </message>
    <message id="help.passages.why.short">
        <source>Short passages come clean sooner: in a long one a single bad bar brings the whole run down. Cutting a passage where it breaks is common practice, with no source.</source>
        <translation>I passaggi corti riescono puliti prima: in uno lungo una sola battuta storta rovina tutta la ripetizione. Tagliare un passaggio dove si rompe è pratica comune, senza fonte.</translation>
    </message>
    <message id="help.picture.key.edge">
        <source>the next edge, and the whole frame again</source>
        <translation>il bordo seguente, e di nuovo la cornice intera</translation>
    </message>
    <message id="help.picture.key.edge.keys">
        <source>Space</source>
        <translation>Spazio</translation>
    </message>
    <message id="help.picture.key.leave">
        <source>leave it as it was</source>
        <translation>lascia com&apos;era</translation>
    </message>
    <message id="help.picture.key.leave.keys">
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message id="help.picture.key.move">
        <source>move the frame, or the edge that is chosen; with Shift in larger steps</source>
        <translation>muovono la cornice, o il bordo scelto; con Maiusc a passi più grandi</translation>
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
        <translation>Pag su, Pag giù</translation>
    </message>
    <message id="help.picture.title">
        <source>A picture of the music</source>
        <translation>Un&apos;immagine della musica</translation>
    </message>
    <message id="help.picture.what.add">
        <source>Take in a photo, a scan or a PDF page of your part, and put the frame around the passage: what is in the frame is shown while you drill. The picture is copied into the practice folder.</source>
        <translation>Prendi una foto, una scansione o una pagina PDF della tua parte, e metti la cornice attorno al passaggio: ciò che è nella cornice si vede mentre studi. L&apos;immagine viene copiata nella cartella di studio.</translation>
    </message>
    <message id="help.picture.why.eyes">
        <source>The eyes stay on the part: the bars of the passage alone, as large as there is room for. This is common practice, with no source. Copy only music that you may copy.</source>
        <translation>Gli occhi restano sulla parte: solo le battute del passaggio, grandi quanto lo spazio permette. È pratica comune, senza fonte. Copia solo musica che puoi copiare.</translation>
    </message>
    <message id="help.run-through.key.end">
        <source>the last note</source>
        <translation>l&apos;ultima nota</translation>
    </message>
    <message id="help.run-through.key.give-up">
        <source>give up</source>
        <translation>rinuncia</translation>
    </message>
    <message id="help.run-through.key.start">
        <source>start; then: the music stopped here</source>
        <translation>inizia; poi: qui la musica si è fermata</translation>
    </message>
    <message id="help.run-through.key.take-back">
        <source>take the last stop back</source>
        <translation>annulla l&apos;ultimo stop</translation>
    </message>
    <message id="help.run-through.title">
        <source>Run-through</source>
        <translation>Filata</translation>
    </message>
    <message id="help.run-through.what.whole">
        <source>A whole piece without the click, from start to finish; the way there is in the form of a passage of that piece. Press the key where the music stops, and play on. The clock guesses the bar, and you put it right before the run-through is kept.</source>
        <translation>Un brano intero senza il clic, dall&apos;inizio alla fine; ci si arriva dal modulo di un passaggio di quel brano. Premi il tasto dove la musica si ferma, e suona avanti. L&apos;orologio indovina la battuta, e tu la correggi prima che la filata sia tenuta.</translation>
    </message>
    <message id="help.run-through.why.hides">
        <source>It shows what the click hides: where the piece breaks when nothing leads. A stop at a bar that is not known may have been anywhere, and counts against every passage of the piece.</source>
        <translation>Mostra ciò che il clic nasconde: dove il brano si rompe quando nulla guida. Uno stop in una battuta non nota può essere stato ovunque, e conta contro ogni passaggio del brano.</translation>
    </message>
    <message id="help.run-through.why.kept">
        <source>A passage is kept while the newest two run-throughs did not stop in it. Two is our choice, with no source: few enough to be played, more than luck.</source>
        <translation>Un passaggio resta finché le ultime due filate non si sono fermate lì dentro. Due è una nostra scelta, senza fonte: abbastanza poche da suonarle, più della fortuna.</translation>
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
        <source>from cell to cell</source>
        <translation>di casella in casella</translation>
    </message>
    <message id="help.scales.key.move.keys">
        <source>Arrow keys</source>
        <translation>Frecce</translation>
    </message>
    <message id="help.scales.key.suggested">
        <source>the cell that is proposed</source>
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
        <source>One kind of scale in all twelve keys, and each key from quarters to septuplets. Every cell shows its best tempo with a full row; an empty one has not been played yet. A cell is drilled like any passage.</source>
        <translation>Un tipo di scala in tutte le dodici tonalità, e ogni tonalità dai quarti alle settimine. Ogni casella mostra il suo tempo migliore con serie piena; una vuota non è stata ancora suonata. Una casella si studia come ogni passaggio.</translation>
    </message>
    <message id="help.scales.what.new-cell">
        <source>A new cell starts from the best of its nearest neighbour, two notches down. Its end is arranged so that the last note falls on a beat; the card says how.</source>
        <translation>Una casella nuova parte dal migliore della vicina più prossima, due tacche sotto. La sua fine è fatta in modo che l&apos;ultima nota cada su un movimento; la scheda dice come.</translation>
    </message>
    <message id="help.scales.what.suggested">
        <source>One cell is proposed as the next, with its reason: of those not played today the one played longest ago, when that is a week or more; else one that was never played; else the one furthest below the best of its row. You decide.</source>
        <translation>Una casella è proposta come prossima, con il motivo: fra quelle non suonate oggi quella suonata da più tempo, se è una settimana o più; altrimenti una mai suonata; altrimenti quella più lontana dal migliore della sua riga. Decidi tu.</translation>
    </message>
    <message id="help.scales.why.days-apart">
        <source>Days apart help: of twenty-nine musicians learning nine notes on a keyboard only those who came back after a day, not after minutes or hours, were more accurate the second time (Simmons 2012).</source>
        <translation>La distanza di giorni aiuta: di ventinove musicisti che imparavano nove note su una tastiera, la seconda volta furono più precisi solo quelli tornati dopo un giorno, non dopo minuti od ore (Simmons 2012).</translation>
    </message>
    <message id="help.scales.why.fast-clicks">
        <source>Nobody keeps in step with single clicks faster than about eight to ten a second (Repp 2006): in small notes follow the beat.</source>
        <translation>Nessuno tiene il passo con singoli clic più veloci di circa otto-dieci al secondo (Repp 2006): nelle note piccole segui il movimento.</translation>
    </message>
    <message id="help.scales.why.look-alikes">
        <source>Look-alikes last in the evening may cost: a second, similar melody took away the gain of the night in one study with sixty musicians.</source>
        <translation>Cose simili per ultime la sera possono costare: in uno studio con sessanta musicisti una seconda melodia simile tolse il guadagno della notte.</translation>
    </message>
    <message id="help.scales.why.mixed-order">
        <source>Mixed order can help later: forty-one beginners on the clarinet ended their practice alike, and a day later those who had practised in mixed order were faster, though no more accurate (Stambaugh 2011). One session with nineteen beginners on clarinet and saxophone showed no effect of the order (a study at Rhode Island College). So the mix is an offer.</source>
        <translation>L&apos;ordine misto può aiutare più tardi: quarantuno principianti al clarinetto finirono lo studio alla pari, e un giorno dopo erano più veloci, anche se non più precisi, quelli che avevano studiato in ordine misto (Stambaugh 2011). Una seduta con diciannove principianti di clarinetto e sassofono non mostrò effetti dell&apos;ordine (uno studio del Rhode Island College). Perciò la mescolanza è un&apos;offerta.</translation>
    </message>
    <message id="help.score.title">
        <source>A passage from a music file</source>
        <translation>Un passaggio da un file di musica</translation>
    </message>
    <message id="help.score.what.reads">
        <source>Reads a score in MusicXML, shows its parts, and takes the bars that you pick: their meter, their tempo mark, and their notes, so that the passage can be heard first.</source>
        <translation>Legge una partitura in MusicXML, mostra le sue parti e prende le battute che scegli: il metro, l&apos;indicazione di tempo e le note, così che il passaggio si possa prima ascoltare.</translation>
    </message>
    <message id="help.score.what.where">
        <source>Type where the file is, or drop it on the card.</source>
        <translation>Scrivi dov&apos;è il file, o trascinalo sulla scheda.</translation>
    </message>
    <message id="help.score.why.model">
        <source>School wind players who heard a model did better in rhythm and gained more tempo, in whatever order they practised their tempi (Henley 2001).</source>
        <translation>Gli studenti di strumenti a fiato che ascoltarono un modello migliorarono nel ritmo e guadagnarono più tempo, in qualunque ordine di tempi studiassero (Henley 2001).</translation>
    </message>
    <message id="help.score.why.straight">
        <source>Bars with a repeat inside, or with a change of meter, are refused rather than guessed: a passage is played straight through.</source>
        <translation>Le battute con un ritornello dentro, o con un cambio di metro, vengono rifiutate invece che indovinate: un passaggio si suona di seguito.</translation>
    </message>
    <message id="help.settings.title">
        <source>Settings</source>
        <translation>Impostazioni</translation>
    </message>
    <message id="help.settings.what.belongs">
        <source>Sound, looks, language and keys belong to this computer; how the drill goes travels with the practice folder.</source>
        <translation>Suono, aspetto, lingua e tasti appartengono a questo computer; come va lo studio viaggia con la cartella di studio.</translation>
    </message>
    <message id="help.settings.what.keys">
        <source>Any key can do any of the work: choose what it is to do, then press it; a pedal or a MIDI switch is a key like any other. One pedal alone can do everything: a press starts or marks a miss, two presses take back; held, it stops the click, and while stopped it opens the next passage.</source>
        <translation>Ogni tasto può fare qualunque lavoro: scegli che cosa deve fare, poi premilo; un pedale o un interruttore MIDI è un tasto come gli altri. Un solo pedale può fare tutto: una pressione avvia o segna un errore, due annullano; tenuto, ferma il clic, e da fermo apre il passaggio seguente.</translation>
    </message>
    <message id="help.settings.why.choices">
        <source>Three days to be secure, four seconds to breathe after a miss, a quarter of a second from a slip to the key: these are our choices, and yours to change. That days apart help is known (Simmons 2012); how many are best is not.</source>
        <translation>Tre giorni per essere sicuro, quattro secondi per respirare dopo un errore, un quarto di secondo dallo sbaglio al tasto: sono scelte nostre, e puoi cambiarle. Che la distanza di giorni aiuti si sa (Simmons 2012); quanti siano meglio, no.</translation>
    </message>
    <message id="help.settings.why.level">
        <source>The level of the click starts low. Your instrument is louder, and that is well so: choose a sharper voice rather than more level.</source>
        <translation>Il livello del clic parte basso. Il tuo strumento è più forte, ed è bene così: scegli una voce più tagliente invece di più livello.</translation>
    </message>
    <message id="help.sources">
        <source>Sources</source>
        <translation>Fonti</translation>
    </message>
    <message id="help.sources.hint">
        <source>What is said of them here stands in their abstracts or opening pages.</source>
        <translation>Ciò che qui se ne dice sta nei loro riassunti o nelle prime pagine.</translation>
    </message>
    <message id="help.start.key.control">
        <source>from one control to the next, and back</source>
        <translation>da un comando al seguente, e indietro</translation>
    </message>
    <message id="help.start.key.control.keys">
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Maiusc+Tab</translation>
    </message>
    <message id="help.start.key.help">
        <source>help for the screen you are on, while the click is still</source>
        <translation>guida alla schermata in cui sei, mentre il clic tace</translation>
    </message>
    <message id="help.start.key.press">
        <source>press the control</source>
        <translation>premi il comando</translation>
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
        <source>Piolo gets a hard passage clean. Choose a tempo at which nothing goes wrong, play it again and again, and touch one key, and only for a miss: the tempo follows how cleanly you play.</source>
        <translation>Piolo rende pulito un passaggio difficile. Scegli un tempo in cui nulla va storto, suonalo ancora e ancora, e tocca un solo tasto, e solo per un errore: il tempo segue quanto suoni pulito.</translation>
    </message>
    <message id="help.start.what.stages">
        <source>A passage goes through five stages: slow with the click, secure at the target, without the click, in its context with two bars on either side, and in run-throughs of the piece. When the log speaks for the next stage the drill says why; you decide, and may go back.</source>
        <translation>Un passaggio attraversa cinque tappe: lento con il clic, sicuro all&apos;obiettivo, senza il clic, nel contesto con due battute per lato, e nelle filate del brano. Quando il diario parla per la tappa seguente, lo studio dice perché; decidi tu, e puoi tornare indietro.</translation>
    </message>
    <message id="help.start.why.few-misses">
        <source>How well a passage was kept overnight went with how few repetitions were wrong, not with how long or how often it was played: seventeen pianists on three bars (Duke, Simmons and Cash 2009). So misses are kept few, and what counts is clean runs, not minutes.</source>
        <translation>Quanto un passaggio restava dopo una notte andava con quanto poche ripetizioni erano sbagliate, non con quanto a lungo o quanto spesso era suonato: diciassette pianisti su tre battute (Duke, Simmons e Cash 2009). Perciò gli errori restano pochi, e contano le ripetizioni pulite, non i minuti.</translation>
    </message>
    <message id="help.start.why.slow">
        <source>Nearly every player reports slow practice (Allingham and Wöllner 2022): that says what is usual, not what works. Players also see its pitfalls, such as movements that differ from fast ones (2023). So a try at the target is always at hand.</source>
        <translation>Quasi tutti quelli che suonano dicono di studiare lentamente (Allingham e Wöllner 2022): questo dice che cosa si usa, non che cosa funziona. Se ne vedono anche le insidie, come movimenti diversi da quelli veloci (2023). Perciò una prova all&apos;obiettivo è sempre a portata di mano.</translation>
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
        <source>Why it does that</source>
        <translation>Perché fa così</translation>
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
    <message id="keys.action-keys">
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message id="keys.action.back">
        <source>Take back the last mark</source>
        <translation>Annulla l&apos;ultimo segno</translation>
    </message>
    <message id="keys.action.clean">
        <source>Clean, in open-ended runs; in a run-through: the last note</source>
        <translation>Pulita, nelle ripetizioni senza fine; in una filata: l&apos;ultima nota</translation>
    </message>
    <message id="keys.action.faster">
        <source>Faster, while stopped</source>
        <translation>Più veloce, da fermo</translation>
    </message>
    <message id="keys.action.hear">
        <source>Hear the passage&apos;s notes first, while stopped</source>
        <translation>Prima ascolta le note del passaggio, da fermo</translation>
    </message>
    <message id="keys.action.miss">
        <source>Start; while the click runs: a miss; in a run-through: a stop here</source>
        <translation>Inizia; mentre suona il clic: un errore; in una filata: uno stop qui</translation>
    </message>
    <message id="keys.action.next">
        <source>The next passage, while stopped</source>
        <translation>Il passaggio seguente, da fermo</translation>
    </message>
    <message id="keys.action.pedal">
        <source>One pedal for all: press, hold, press twice</source>
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
        <source>Stop the click; give a run-through up</source>
        <translation>Ferma il clic; interrompi una filata</translation>
    </message>
    <message id="keys.action.stretch">
        <source>In the log: a passage of the bars that break</source>
        <translation>Nel diario: un passaggio delle battute che si rompono</translation>
    </message>
    <message id="keys.action.try">
        <source>Try one run at the target</source>
        <translation>Una prova all&apos;obiettivo</translation>
    </message>
    <message id="keys.add">
        <source>Add a key</source>
        <translation>Altro tasto</translation>
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
        <source>Take %1 away</source>
        <translation>Togli %1</translation>
    </message>
    <message id="keys.done">
        <source>✓ %1</source>
        <translation>✓ %1</translation>
    </message>
    <message id="keys.full">
        <source>%1 gave way: %2 keys at most.</source>
        <translation>%1 ha ceduto il posto: al massimo %2 tasti.</translation>
    </message>
    <message id="keys.held">
        <source>%1 held</source>
        <translation>%1 tenuto</translation>
    </message>
    <message id="keys.kept">
        <source>%1 stays: it is the last key for “%2”. Add another one first.</source>
        <translation>%1 resta: è l&apos;ultimo tasto per «%2». Prima aggiungine un altro.</translation>
    </message>
    <message id="keys.last">
        <source>%1 is the last key for “%2”. Give that another key first.</source>
        <translation>%1 è l&apos;ultimo tasto per «%2». Dagliene prima un altro.</translation>
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
        <source>MIDI cannot be heard here: this system has no MIDI sequencer. A pedal that acts as a keyboard works.</source>
        <translation>Qui il MIDI non si può sentire: questo sistema non ha un sequencer MIDI. Un pedale che fa da tastiera funziona.</translation>
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
        <source>No MIDI input is plugged in yet. Plug it in, then press the switch.</source>
        <translation>Ancora nessun ingresso MIDI collegato. Collegalo, poi premi l&apos;interruttore.</translation>
    </message>
    <message id="keys.moved-from">
        <source>%1 has left “%2”.</source>
        <translation>%1 ha lasciato «%2».</translation>
    </message>
    <message id="keys.moved-to">
        <source>%1 now does this: “%2”.</source>
        <translation>%1 ora fa questo: «%2».</translation>
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
        <source>%1: press a key now, Esc gives up</source>
        <translation>%1: premi ora un tasto, Esc rinuncia</translation>
    </message>
    <message id="keys.removed">
        <source>%1 no longer does this: “%2”.</source>
        <translation>%1 non fa più questo: «%2».</translation>
    </message>
    <message id="keys.reset">
        <source>The usual keys again</source>
        <translation>Di nuovo i tasti soliti</translation>
    </message>
    <message id="keys.set.left-right">
        <source>Left and Right arrows</source>
        <translation>Frecce sinistra e destra</translation>
    </message>
    <message id="keys.set.one-pedal">
        <source>One pedal alone, PageDown</source>
        <translation>Un solo pedale, Pag giù</translation>
    </message>
    <message id="keys.set.pages">
        <source>PageUp and PageDown</source>
        <translation>Pag su e Pag giù</translation>
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
        <source>Take it over</source>
        <translation>Prendilo</translation>
    </message>
    <message id="keys.taken">
        <source>%1 is taken: “%2”. Press it again to take it over, another key, or Esc.</source>
        <translation>%1 è già preso: «%2». Premilo di nuovo per prenderlo, un altro tasto, o Esc.</translation>
    </message>
    <message id="keys.twice">
        <source>%1 twice</source>
        <translation>%1 due volte</translation>
    </message>
    <message id="keys.unchanged">
        <source>These are your keys already.</source>
        <translation>Questi sono già i tuoi tasti.</translation>
    </message>
    <message id="keys.warning">
        <source>▲ %1</source>
        <translation>▲ %1</translation>
    </message>
    <message id="ladder.best">
        <source>best</source>
        <translation>migliore</translation>
    </message>
    <message id="ladder.now">
        <source>present tempo, %1</source>
        <translation>tempo attuale, %1</translation>
    </message>
    <message id="ladder.spoken">
        <source>Ladder of tempi</source>
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
        <translation>Alcune righe del diario di studio non si sono potute leggere e sono rimaste com&apos;erano: %1</translation>
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
        <source>No practice for %1 days now. A few minutes today are enough to pick up the thread.</source>
        <translation>Da %1 giorni niente studio. Oggi bastano pochi minuti per riprendere il filo.</translation>
    </message>
    <message id="log.days-missed-before">
        <source>No practice on %1 days in a row from %2. You have been back since: that counts.</source>
        <translation>Niente studio per %1 giorni di fila, da %2. Poi sei tornato a suonare: è questo che conta.</translation>
    </message>
    <message id="log.empty">
        <source>Nothing played yet. Every run you drill is written down here, day by day.</source>
        <translation>Ancora nulla. Ogni ripetizione che studi viene scritta qui, giorno per giorno.</translation>
    </message>
    <message id="log.entry.edit-note">
        <source>Change the note</source>
        <translation>Cambia la nota</translation>
    </message>
    <message id="log.entry.keep">
        <source>Keep</source>
        <translation>Tieni</translation>
    </message>
    <message id="log.entry.leave">
        <source>Leave it</source>
        <translation>Lascia stare</translation>
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
        <source>Note on the run of %1</source>
        <translation>Nota sulla ripetizione delle %1</translation>
    </message>
    <message id="log.entry.note.title">
        <source>Note on this run</source>
        <translation>Nota su questa ripetizione</translation>
    </message>
    <message id="log.entry.take-back">
        <source>Take back…</source>
        <translation>Annulla…</translation>
    </message>
    <message id="log.entry.take-back.confirm">
        <source>Take it back</source>
        <translation>Annulla</translation>
    </message>
    <message id="log.entry.take-back.hint">
        <source>It will count as never played, and cannot be brought back.</source>
        <translation>Conterà come mai suonata, e non si potrà riavere.</translation>
    </message>
    <message id="log.entry.take-back.spoken">
        <source>Take back the entry of %1</source>
        <translation>Annulla la voce delle %1</translation>
    </message>
    <message id="log.filter.every-passage">
        <source>every passage</source>
        <translation>tutti i passaggi</translation>
    </message>
    <message id="log.filter.every-piece">
        <source>every piece</source>
        <translation>tutti i brani</translation>
    </message>
    <message id="log.filter.everything">
        <source>everything</source>
        <translation>tutto</translation>
    </message>
    <message id="log.filter.first-day">
        <source>from the first day</source>
        <translation>dal primo giorno</translation>
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
        <source>How far back</source>
        <translation>Quanto indietro</translation>
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
        <source>a year</source>
        <translation>un anno</translation>
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
        <source>bars not known</source>
        <translation>battute non note</translation>
    </message>
    <message id="log.line.by-hand">
        <source>set by hand</source>
        <translation>messo a mano</translation>
    </message>
    <message id="log.line.clean">
        <source>clean</source>
        <translation>pulita</translation>
    </message>
    <message id="log.line.climbs">
        <source>climbs to %1</source>
        <translation>sale a %1</translation>
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
    <message id="log.line.day-opens">
        <source>where the day opens</source>
        <translation>dove comincia il giorno</translation>
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
        <translation>serie pulita di %1</translation>
    </message>
    <message id="log.line.in-context">
        <source>in its context</source>
        <translation>nel contesto</translation>
    </message>
    <message id="log.line.missed">
        <source>missed</source>
        <translation>con errore</translation>
    </message>
    <message id="log.line.missed-late">
        <source>missed, told afterwards</source>
        <translation>con errore, detto dopo</translation>
    </message>
    <message id="log.line.more">
        <source>%1 …</source>
        <translation>%1 …</translation>
    </message>
    <message id="log.line.moves-nothing">
        <source>%1: moves nothing</source>
        <translation>%1: non muove nulla</translation>
    </message>
    <message id="log.line.named">
        <source>named: the search for the tempo begins</source>
        <translation>detto: comincia la ricerca del tempo</translation>
    </message>
    <message id="log.line.offer-taken">
        <source>an offer taken</source>
        <translation>un&apos;offerta accettata</translation>
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
        <translation>%1 (tolto)</translation>
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
        <translation>tempo messo</translation>
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
        <translation>non conta: il suono si è perso</translation>
    </message>
    <message id="log.line.void-stopped">
        <source>not counted: stopped</source>
        <translation>non conta: fermata</translation>
    </message>
    <message id="log.line.void-tempo">
        <source>not counted: the tempo was changed</source>
        <translation>non conta: il tempo è stato cambiato</translation>
    </message>
    <message id="log.line.without-click">
        <source>without the click</source>
        <translation>senza il clic</translation>
    </message>
    <message id="log.mark.clean">
        <source>clean: %1</source>
        <translation>pulita: %1</translation>
    </message>
    <message id="log.mark.clean-unmarked">
        <source>clean: by itself at the last bar</source>
        <translation>pulita: da sola all&apos;ultima battuta</translation>
    </message>
    <message id="log.mark.missed">
        <source>a miss: %1</source>
        <translation>un errore: %1</translation>
    </message>
    <message id="log.mark.stop">
        <source>stop: %1</source>
        <translation>stop: %1</translation>
    </message>
    <message id="log.never-two-days-missed">
        <source>Never two days missed in a row in four weeks: one now and then is fine.</source>
        <translation>In quattro settimane mai due giorni saltati di fila: uno ogni tanto va bene.</translation>
    </message>
    <message id="log.no-day-missed">
        <source>Not a day missed since you began.</source>
        <translation>Nemmeno un giorno saltato dall&apos;inizio.</translation>
    </message>
    <message id="log.no-day-missed-lately">
        <source>Not a day missed in four weeks.</source>
        <translation>Nemmeno un giorno saltato in quattro settimane.</translation>
    </message>
    <message id="log.none-found">
        <source>Nothing of that kind in that time.</source>
        <translation>Nulla del genere in questo periodo.</translation>
    </message>
    <message id="log.title">
        <source>Practice log</source>
        <translation>Diario di studio</translation>
    </message>
    <message id="manner.as-written">
        <source>as written</source>
        <translation>come scritto</translation>
    </message>
    <message id="manner.double-tongued">
        <source>double-tongued</source>
        <translation>con doppio staccato</translation>
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
        <translation>lunga e breve</translation>
    </message>
    <message id="manner.short-long">
        <source>short and long</source>
        <translation>breve e lunga</translation>
    </message>
    <message id="manner.slur-three-tongue-one">
        <source>slur three, tongue one</source>
        <translation>tre legate, una articolata</translation>
    </message>
    <message id="manner.slur-two-tongue-two">
        <source>slur two, tongue two</source>
        <translation>due legate, due articolate</translation>
    </message>
    <message id="manner.slurred">
        <source>all slurred</source>
        <translation>tutto legato</translation>
    </message>
    <message id="manner.staccato">
        <source>staccato</source>
        <translation>staccato</translation>
    </message>
    <message id="manner.tongue-one-slur-three">
        <source>tongue one, slur three</source>
        <translation>una articolata, tre legate</translation>
    </message>
    <message id="manner.tongued">
        <source>all tongued</source>
        <translation>tutto articolato</translation>
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
        <source>Minutes a day, four weeks</source>
        <translation>Minuti al giorno, quattro settimane</translation>
    </message>
    <message id="minutes.title">
        <source>Minutes a day</source>
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
    <message id="nav.drill">
        <source>Drill</source>
        <translation>Studio</translation>
    </message>
    <message id="nav.help">
        <source>Help</source>
        <translation>Guida</translation>
    </message>
    <message id="nav.log">
        <source>Log</source>
        <translation>Diario</translation>
    </message>
    <message id="nav.passages">
        <source>Passages</source>
        <translation>Passaggi</translation>
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
    <message id="paper.back-to-form">
        <source>Back to the form</source>
        <translation>Torna al modulo</translation>
    </message>
    <message id="paper.enter">
        <source>Enter a sheet</source>
        <translation>Riporta un foglio</translation>
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
        <source>Day it was played</source>
        <translation>Giorno in cui è stato suonato</translation>
    </message>
    <message id="paper.enter.done">
        <source>%1 runs are in the log.</source>
        <translation>%1 ripetizioni sono nel diario.</translation>
    </message>
    <message id="paper.enter.done-one">
        <source>1 run is in the log.</source>
        <translation>1 ripetizione è nel diario.</translation>
    </message>
    <message id="paper.enter.fault.before">
        <source>not before %1, the last day in its log: the rule goes on from there</source>
        <translation>non prima di %1, l&apos;ultimo giorno nel suo diario: da lì continua la regola</translation>
    </message>
    <message id="paper.enter.fault.day">
        <source>a date such as %1</source>
        <translation>una data come %1</translation>
    </message>
    <message id="paper.enter.fault.future">
        <source>this day is still to come</source>
        <translation>questo giorno deve ancora venire</translation>
    </message>
    <message id="paper.enter.fault.tempo">
        <source>a tempo from 10 to 400</source>
        <translation>un tempo da 10 a 400</translation>
    </message>
    <message id="paper.enter.keep">
        <source>Keep it in the log</source>
        <translation>Tieni nel diario</translation>
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
        <source>On each rung misses count before circles.</source>
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
        <source>%1: what comes of it stands above.</source>
        <translation>%1: ciò che ne viene sta qui sopra.</translation>
    </message>
    <message id="paper.enter.result.best">
        <source>Best with a full streak</source>
        <translation>Migliore con serie piena</translation>
    </message>
    <message id="paper.enter.result.best.none">
        <source>none yet</source>
        <translation>ancora nulla</translation>
    </message>
    <message id="paper.enter.result.secures">
        <source>Full streaks at the target</source>
        <translation>Serie piene all&apos;obiettivo</translation>
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
        <source>Take it all back</source>
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
        <translation>cerchi segnati</translation>
    </message>
    <message id="paper.enter.ticked.spoken">
        <source>Circles ticked at %1</source>
        <translation>Cerchi segnati a %1</translation>
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
        <source>File, ending in .pdf, .svg or .png</source>
        <translation>File che finisce in .pdf, .svg o .png</translation>
    </message>
    <message id="paper.print.hint">
        <source>A ladder for each passage, from its present tempo to its target, with a circle for every clean run: print it and tick it in pencil.</source>
        <translation>Una scala per ogni passaggio, dal tempo attuale all&apos;obiettivo, con un cerchio per ogni ripetizione pulita: stampala e segnala a matita.</translation>
    </message>
    <message id="paper.print.letter">
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message id="paper.print.most">
        <source>At most %1 passages go on one sheet.</source>
        <translation>Al massimo %1 passaggi stanno su un foglio.</translation>
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
        <source>Save the sheet</source>
        <translation>Salva il foglio</translation>
    </message>
    <message id="paper.print.tick">
        <source>Tick the passages to print.</source>
        <translation>Segna i passaggi da stampare.</translation>
    </message>
    <message id="paper.title">
        <source>Practice on paper</source>
        <translation>Studio su carta</translation>
    </message>
    <message id="paper.what-to-do">
        <source>What to do</source>
        <translation>Che cosa fare</translation>
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
        <source>most to climb</source>
        <translation>più lontano dall&apos;obiettivo</translation>
    </message>
    <message id="passages.by-date">
        <source>next date</source>
        <translation>prossima data</translation>
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
        <source>From a music file</source>
        <translation>Da un file di musica</translation>
    </message>
    <message id="passages.line">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="passages.new">
        <source>New passage</source>
        <translation>Nuovo passaggio</translation>
    </message>
    <message id="passages.none">
        <source>No passages yet: the form on the right makes the first.</source>
        <translation>Ancora nessun passaggio: il modulo a destra crea il primo.</translation>
    </message>
    <message id="passages.none-found">
        <source>No passage has all of these words.</source>
        <translation>Nessun passaggio ha tutte queste parole.</translation>
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
        <source>On its own</source>
        <translation>Per conto suo</translation>
    </message>
    <message id="passages.on-its-own.inline">
        <source>on its own</source>
        <translation>per conto suo</translation>
    </message>
    <message id="passages.on-paper">
        <source>On paper</source>
        <translation>Su carta</translation>
    </message>
    <message id="passages.order">
        <source>Order</source>
        <translation>Ordine</translation>
    </message>
    <message id="passages.played">
        <source>played %1</source>
        <translation>suonato %1</translation>
    </message>
    <message id="passages.removed">
        <source>removed</source>
        <translation>tolto</translation>
    </message>
    <message id="passages.removed.notice">
        <source>“%1” is removed.</source>
        <translation>«%1» è stato tolto.</translation>
    </message>
    <message id="passages.restore">
        <source>Take it back</source>
        <translation>Annulla</translation>
    </message>
    <message id="passages.search">
        <source>Search by piece, name, bars or note</source>
        <translation>Cerca per brano, nome, battute o figura</translation>
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
        <source>Show removed ones</source>
        <translation>Mostra quelli tolti</translation>
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
        <source>Two steps down from the start</source>
        <translation>Due passi sotto la partenza</translation>
    </message>
    <message id="pause.easier">
        <source>Make it easier for a while: a shorter stretch, a slower tempo, or a rest. It is no use to practise the mistake.</source>
        <translation>Per un po&apos; fallo più facile: un tratto più corto, un tempo più lento o una pausa. Studiare l&apos;errore non serve.</translation>
    </message>
    <message id="pause.fewer-bars">
        <source>Fewer bars</source>
        <translation>Meno battute</translation>
    </message>
    <message id="pause.go-on">
        <source>Go on as it is</source>
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
        <source>A rest</source>
        <translation>Una pausa</translation>
    </message>
    <message id="pause.stop">
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message id="pause.unmarked" numerus="yes">
        <source>%n runs went by without a key. If you were not listening to every note, say no: they count for nothing and their climbs are taken back.</source>
        <translation>
            <numerusform>%n ripetizione è passata senza un tasto. Se non ascoltavi ogni nota, di&apos; di no: non conta nulla e la sua salita viene annullata.</numerusform>
            <numerusform>%n ripetizioni sono passate senza un tasto. Se non ascoltavi ogni nota, di&apos; di no: non contano nulla e le loro salite vengono annullate.</numerusform>
        </translation>
    </message>
    <message id="pause.unmarked.title">
        <source>Were these runs clean?</source>
        <translation>Queste ripetizioni erano pulite?</translation>
    </message>
    <message id="pause.yes">
        <source>Yes, go on</source>
        <translation>Sì, avanti</translation>
    </message>
    <message id="pedal.hint">
        <source>%1 starts the click, and marks a miss while it runs. Have you a page turner pedal? Press the button here, then the pedal. A MIDI switch works as well; the settings have more.</source>
        <translation>%1 avvia il clic, e mentre suona segna un errore. Hai un pedale voltapagine? Premi qui il pulsante, poi il pedale. Va bene anche un interruttore MIDI; le impostazioni hanno altro.</translation>
    </message>
    <message id="pedal.press">
        <source>Press the pedal now (Esc gives up)</source>
        <translation>Premi ora il pedale (Esc rinuncia)</translation>
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
        <translation>Segna tutti i passaggi</translation>
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
        <source>Tick no passage</source>
        <translation>Non segnare nessun passaggio</translation>
    </message>
    <message id="picks.of">
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message id="picks.spoken">
        <source>Passages to tick</source>
        <translation>Passaggi da segnare</translation>
    </message>
    <message id="picture.add">
        <source>Add a picture of the music</source>
        <translation>Aggiungi un&apos;immagine della musica</translation>
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
        <source>A PNG or JPEG, or a PDF of which you choose a page. Type where it is, or drop it here. It is copied into the practice folder.</source>
        <translation>Un PNG o JPEG, o un PDF di cui scegli una pagina. Scrivi dov&apos;è, o trascinalo qui. Viene copiato nella cartella di studio.</translation>
    </message>
    <message id="picture.frame">
        <source>frame</source>
        <translation>cornice</translation>
    </message>
    <message id="picture.frame.spoken">
        <source>across %1 to %2 %, down %3 to %4 %</source>
        <translation>in largo da %1 a %2 %, in alto da %3 a %4 %</translation>
    </message>
    <message id="picture.hint">
        <source>Drag the frame around the passage, or move what is picked here with the arrow keys: Shift for larger steps, Space for the next edge.</source>
        <translation>Trascina la cornice attorno al passaggio, o muovi con le frecce ciò che è scelto qui: Maiusc per passi più grandi, Spazio per il bordo seguente.</translation>
    </message>
    <message id="picture.keep">
        <source>Keep this part</source>
        <translation>Tieni questa parte</translation>
    </message>
    <message id="picture.leave">
        <source>Leave as it was</source>
        <translation>Lascia com&apos;era</translation>
    </message>
    <message id="picture.left">
        <source>left</source>
        <translation>sinistra</translation>
    </message>
    <message id="picture.missing">
        <source>The picture of the music cannot be read from the practice folder. Take it in again, or remove it here.</source>
        <translation>L&apos;immagine della musica non si può leggere dalla cartella di studio. Prendila di nuovo, o toglila qui.</translation>
    </message>
    <message id="picture.of-passage">
        <source>the page of “%1”</source>
        <translation>la pagina di «%1»</translation>
    </message>
    <message id="picture.or-page">
        <source>Or a page that this piece has already</source>
        <translation>O una pagina che questo brano ha già</translation>
    </message>
    <message id="picture.page">
        <source>Page, of %1</source>
        <translation>Pagina, di %1</translation>
    </message>
    <message id="picture.reading">
        <source>Reading …</source>
        <translation>Lettura …</translation>
    </message>
    <message id="picture.remove">
        <source>Remove</source>
        <translation>Togli</translation>
    </message>
    <message id="picture.restore">
        <source>Take the removal back</source>
        <translation>Non togliere più</translation>
    </message>
    <message id="picture.right">
        <source>right</source>
        <translation>destra</translation>
    </message>
    <message id="picture.spoken">
        <source>The music of the passage</source>
        <translation>La musica del passaggio</translation>
    </message>
    <message id="picture.take">
        <source>Take it</source>
        <translation>Prendi</translation>
    </message>
    <message id="picture.take-page">
        <source>Take this page</source>
        <translation>Prendi questa pagina</translation>
    </message>
    <message id="picture.title">
        <source>The music of “%1”</source>
        <translation>La musica di «%1»</translation>
    </message>
    <message id="picture.top">
        <source>top</source>
        <translation>alto</translation>
    </message>
    <message id="picture.unreadable">
        <source>The picture of the music cannot be read from the practice folder.</source>
        <translation>L&apos;immagine della musica non si può leggere dalla cartella di studio.</translation>
    </message>
    <message id="picture.whole-page">
        <source>Whole page</source>
        <translation>Pagina intera</translation>
    </message>
    <message id="piece.bars">
        <source>Bars in all</source>
        <translation>Battute in tutto</translation>
    </message>
    <message id="piece.bars.unknown">
        <source>not known</source>
        <translation>non noto</translation>
    </message>
    <message id="piece.composer">
        <source>Composer</source>
        <translation>Compositore</translation>
    </message>
    <message id="piece.due">
        <source>Due</source>
        <translation>Entro</translation>
    </message>
    <message id="piece.due.none">
        <source>no date</source>
        <translation>nessuna data</translation>
    </message>
    <message id="piece.fault.due">
        <source>a date such as %1, or nothing</source>
        <translation>una data come %1, o niente</translation>
    </message>
    <message id="piece.fault.letters">
        <source>at most %1 letters</source>
        <translation>al massimo %1 lettere</translation>
    </message>
    <message id="piece.fault.meter">
        <source>a meter such as 4/4, 6/8 or 7/8, or nothing</source>
        <translation>un metro come 4/4, 6/8 o 7/8, o niente</translation>
    </message>
    <message id="piece.fault.name">
        <source>the piece needs a name</source>
        <translation>il brano ha bisogno di un nome</translation>
    </message>
    <message id="piece.fault.tempo">
        <source>a tempo from 10 to 400, or nothing</source>
        <translation>un tempo da 10 a 400, o niente</translation>
    </message>
    <message id="piece.fault.too-long">
        <source>too long to be kept</source>
        <translation>troppo lungo per essere tenuto</translation>
    </message>
    <message id="piece.fault.whole">
        <source>a whole number, %1 to %2</source>
        <translation>un numero intero, da %1 a %2</translation>
    </message>
    <message id="piece.fault.whole-or-none">
        <source>a whole number up to %1, or nothing</source>
        <translation>un numero intero fino a %1, o niente</translation>
    </message>
    <message id="piece.instrument">
        <source>Played on</source>
        <translation>Suonato su</translation>
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
        <source>not known; a run-through then tells no bars</source>
        <translation>non noto; una filata allora non dice le battute</translation>
    </message>
    <message id="piece.name">
        <source>The piece&apos;s name</source>
        <translation>Nome del brano</translation>
    </message>
    <message id="piece.notes">
        <source>Notes</source>
        <translation>Appunti</translation>
    </message>
    <message id="piece.tempo">
        <source>Whole-piece tempo, %1 =</source>
        <translation>Tempo del brano intero, %1 =</translation>
    </message>
    <message id="piece.transposition">
        <source>Sounds by semitones</source>
        <translation>Suona, in semitoni</translation>
    </message>
    <message id="piece.transposition.example">
        <source>−2 for a clarinet in B♭</source>
        <translation>−2 per un clarinetto in Si♭</translation>
    </message>
    <message id="playing.spoken">
        <source>The click runs. %1 marks a miss, %2 stops.</source>
        <translation>Il clic suona. %1 segna un errore, %2 ferma.</translation>
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
        <source>A new day begins</source>
        <translation>Un nuovo giorno comincia</translation>
    </message>
    <message id="practice.hint">
        <source>These travel with the practice folder.</source>
        <translation>Queste viaggiano con la cartella di studio.</translation>
    </message>
    <message id="practice.millis">
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message id="practice.pause">
        <source>Without a key, pause and ask after</source>
        <translation>Senza un tasto, fermati e chiedi dopo</translation>
    </message>
    <message id="practice.pause.never">
        <source>never</source>
        <translation>mai</translation>
    </message>
    <message id="practice.play-on">
        <source>Play on after a miss: the run goes to its end and drops once</source>
        <translation>Suona avanti dopo un errore: la ripetizione va fino in fondo e scende una volta</translation>
    </message>
    <message id="practice.reaction">
        <source>From a slip to the key (a guess: set your own)</source>
        <translation>Dallo sbaglio al tasto (una stima: metti la tua)</translation>
    </message>
    <message id="practice.read-only">
        <source>Another window writes to this practice folder: these cannot be changed here.</source>
        <translation>Un&apos;altra finestra scrive in questa cartella di studio: qui non si può cambiare.</translation>
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
        <source>A passage is secure when it was secure on</source>
        <translation>Un passaggio è sicuro quando lo è stato per</translation>
    </message>
    <message id="practice.title">
        <source>Practice</source>
        <translation>Studio</translation>
    </message>
    <message id="rest.note">
        <source>You have played for a good while: give ears and lip a rest. Pain, tingling or numbness means stop and see a professional.</source>
        <translation>Suoni già da un bel po&apos;: fai riposare orecchie e labbro. Dolore, formicolio o intorpidimento vuol dire fermarsi e sentire uno specialista.</translation>
    </message>
    <message id="rest.read">
        <source>Read</source>
        <translation>Letto</translation>
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
    <message id="rule.one-notch">
        <source>1 notch</source>
        <translation>1 tacca</translation>
    </message>
    <message id="rule.streak">
        <source>a miss drops %1, %2 clean in a row climb %3</source>
        <translation>un errore −%1, %2 pulite di fila +%3</translation>
    </message>
    <message id="run-through.about-bar">
        <source>about bar %1</source>
        <translation>circa battuta %1</translation>
    </message>
    <message id="run-through.bar-stops">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="run-through.bar-unknown">
        <source>not known</source>
        <translation>non nota</translation>
    </message>
    <message id="run-through.bars-guessed">
        <source>The bars are a guess, by the clock. Put them right, or leave out what you do not know.</source>
        <translation>Le battute sono una stima, a orologio. Correggile, o lascia vuoto ciò che non sai.</translation>
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
        <source>Throw it away</source>
        <translation>Buttala</translation>
    </message>
    <message id="run-through.earlier">
        <source>Run-throughs so far</source>
        <translation>Filate finora</translation>
    </message>
    <message id="run-through.fault.bar">
        <source>a bar&apos;s number up to %1, or nothing</source>
        <translation>il numero di una battuta fino a %1, o niente</translation>
    </message>
    <message id="run-through.give-up">
        <source>Give up</source>
        <translation>Rinuncia</translation>
    </message>
    <message id="run-through.hint">
        <source>Play the whole piece without the click. Where you come to a stop, press the key and play on.</source>
        <translation>Suona tutto il brano senza il clic. Dove ti fermi, premi il tasto e suona avanti.</translation>
    </message>
    <message id="run-through.keep">
        <source>Keep it in the log</source>
        <translation>Tieni nel diario</translation>
    </message>
    <message id="run-through.last-note">
        <source>The last note</source>
        <translation>L&apos;ultima nota</translation>
    </message>
    <message id="run-through.no-stop">
        <source>no stop</source>
        <translation>nessuno stop</translation>
    </message>
    <message id="run-through.none">
        <source>None yet.</source>
        <translation>Ancora nessuna.</translation>
    </message>
    <message id="run-through.one-stop">
        <source>1 stop</source>
        <translation>1 stop</translation>
    </message>
    <message id="run-through.start">
        <source>Start</source>
        <translation>Inizia</translation>
    </message>
    <message id="run-through.stop">
        <source>A stop here</source>
        <translation>Uno stop qui</translation>
    </message>
    <message id="run-through.stop-bar">
        <source>Stop at %1, bar</source>
        <translation>Stop a %1, battuta</translation>
    </message>
    <message id="run-through.stops">
        <source>%1 stops</source>
        <translation>%1 stop</translation>
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
        <source>%1, not to the end</source>
        <translation>%1, non fino alla fine</translation>
    </message>
    <message id="scale.ending.comma">
        <source>, </source>
        <translation>, </translation>
    </message>
    <message id="scale.ending.over">
        <source>it goes %1 notes over the last tonic and comes back</source>
        <translation>va %1 note oltre l&apos;ultima tonica e torna</translation>
    </message>
    <message id="scale.ending.over-one">
        <source>it goes one note over the last tonic and comes back</source>
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
        <source>it goes %1 notes under the last tonic and comes back</source>
        <translation>va %1 note sotto l&apos;ultima tonica e torna</translation>
    </message>
    <message id="scale.ending.under-one">
        <source>it goes one note under the last tonic and comes back</source>
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
        <translation>%1 arpeggio aumentato</translation>
    </message>
    <message id="scale.kind.bebop-dominant">
        <source>Bebop dominant</source>
        <translation>Bebop di dominante</translation>
    </message>
    <message id="scale.kind.bebop-dominant.in">
        <source>%1 bebop dominant</source>
        <translation>%1 bebop di dominante</translation>
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
        <translation>cromatica da %1</translation>
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
        <translation>%1 arpeggio di settima diminuita</translation>
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
        <translation>%1 arpeggio di settima di dominante</translation>
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
        <translation>%1 arpeggio semidiminuito</translation>
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
        <translation>%1 arpeggio maggiore</translation>
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
        <translation>%1 arpeggio minore</translation>
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
        <translation>esatonale da %1</translation>
    </message>
    <message id="scale.order.fifths">
        <source>By fifths</source>
        <translation>Per quinte</translation>
    </message>
    <message id="scale.order.fourths">
        <source>By fourths</source>
        <translation>Per quarte</translation>
    </message>
    <message id="scale.order.random">
        <source>Drawn by lot</source>
        <translation>A sorte</translation>
    </message>
    <message id="scale.order.semitones">
        <source>By semitones</source>
        <translation>Per semitoni</translation>
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
        <source>no key signature: its accidentals stand at the notes</source>
        <translation>senza armatura: le alterazioni stanno alle note</translation>
    </message>
    <message id="scale.signature.one-flat">
        <source>1 flat</source>
        <translation>1 bemolle</translation>
    </message>
    <message id="scale.signature.one-sharp">
        <source>1 sharp</source>
        <translation>1 diesis</translation>
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
        <source>Altissimo: it goes up to %1, and your highest note is %2. The whole range stays inside.</source>
        <translation>Sovracuti: si sale fino a %1, e la tua nota più alta è %2. Tutta l&apos;estensione resta dentro.</translation>
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
    <message id="scales.cell.never">
        <source>not played yet</source>
        <translation>non ancora suonato</translation>
    </message>
    <message id="scales.cell.next">
        <source>next: %1</source>
        <translation>prossima: %1</translation>
    </message>
    <message id="scales.cell.not-played">
        <source>%1: not played yet</source>
        <translation>%1: non ancora suonata</translation>
    </message>
    <message id="scales.cell.spoken">
        <source>%1: best %2, %3, played %4</source>
        <translation>%1: migliore %2, %3, suonata %4</translation>
    </message>
    <message id="scales.cell.spoken-no-best">
        <source>%1: no best yet (%2), %3, %4</source>
        <translation>%1: ancora senza migliore (%2), %3, %4</translation>
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
        <source>Goes on at %1.</source>
        <translation>Si continua a %1.</translation>
    </message>
    <message id="scales.grid">
        <source>Grid</source>
        <translation>Griglia</translation>
    </message>
    <message id="scales.grid.spoken">
        <source>Twelve keys by seven subdivisions. The arrow keys choose, Return drills.</source>
        <translation>Dodici tonalità per sette suddivisioni. Le frecce scelgono, Invio studia.</translation>
    </message>
    <message id="scales.hear">
        <source>Hear it first</source>
        <translation>Prima ascolta</translation>
    </message>
    <message id="scales.instrument">
        <source>Instrument</source>
        <translation>Strumento</translation>
    </message>
    <message id="scales.instrument.choose">
        <source>Choose yours</source>
        <translation>Scegli il tuo</translation>
    </message>
    <message id="scales.instrument.highest">
        <source>Highest note, as written</source>
        <translation>Nota più alta, come scritta</translation>
    </message>
    <message id="scales.instrument.hint">
        <source>Scales are written for it, in its clef and range. This travels with the practice folder.</source>
        <translation>Le scale si scrivono per lui, nella sua chiave e nella sua estensione. Questo viaggia con la cartella di studio.</translation>
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
        <source>Octave 4 begins at middle C. A saxophone with a high F♯ key, a baritone with a low A, notes above the usual range: set what you play.</source>
        <translation>L&apos;ottava 4 comincia dal Do centrale. Un sassofono con la chiave del Fa♯ acuto, un baritono con il La grave, note oltre l&apos;estensione solita: metti ciò che suoni.</translation>
    </message>
    <message id="scales.instrument.read-only">
        <source>Another window writes to this practice folder: these cannot be changed here.</source>
        <translation>Un&apos;altra finestra scrive in questa cartella di studio: qui non si può cambiare.</translation>
    </message>
    <message id="scales.instrument.redraw">
        <source>Draw another order of keys</source>
        <translation>Sorteggia un altro ordine</translation>
    </message>
    <message id="scales.instrument.title">
        <source>Your instrument</source>
        <translation>Il tuo strumento</translation>
    </message>
    <message id="scales.instrument.to-grid">
        <source>To the grid</source>
        <translation>Alla griglia</translation>
    </message>
    <message id="scales.key.sounds">
        <source>%1, sounds as %2</source>
        <translation>%1, suona come %2</translation>
    </message>
    <message id="scales.keys">
        <source>keys</source>
        <translation>tonalità</translation>
    </message>
    <message id="scales.keys-hint">
        <source>Keys as written for the %1; how they sound stands below them.</source>
        <translation>Tonalità scritte per %1; sotto, come suonano.</translation>
    </message>
    <message id="scales.kind">
        <source>Kind of scale</source>
        <translation>Tipo di scala</translation>
    </message>
    <message id="scales.next.first">
        <source>Next: the first key in the slowest notes. Nothing was played yet.</source>
        <translation>Prossima: la prima tonalità nelle note più lente. Finora non è stato suonato nulla.</translation>
    </message>
    <message id="scales.next.furthest">
        <source>Next: its best lies furthest below the best of its row.</source>
        <translation>Prossima: il suo migliore è il più lontano dal migliore della sua riga.</translation>
    </message>
    <message id="scales.next.never">
        <source>Next: the first that was never played, and nothing is older than a week.</source>
        <translation>Prossima: la prima mai suonata, e nulla è più vecchio di una settimana.</translation>
    </message>
    <message id="scales.next.oldest">
        <source>Next: not played for %1, the longest of all.</source>
        <translation>Prossima: non suonata da %1, più di tutte.</translation>
    </message>
    <message id="scales.no-tonic">
        <source>Your range has no such tonic: choose another key, or set your range wider.</source>
        <translation>La tua estensione non ha questa tonica: scegli un&apos;altra tonalità, o allarga l&apos;estensione.</translation>
    </message>
    <message id="scales.not-played">
        <source>Not played yet.</source>
        <translation>Non ancora suonato.</translation>
    </message>
    <message id="scales.notes">
        <source>%1 to the beat</source>
        <translation>%1 per movimento</translation>
    </message>
    <message id="scales.order">
        <source>Order of the keys</source>
        <translation>Ordine delle tonalità</translation>
    </message>
    <message id="scales.pattern">
        <source>Order of its notes</source>
        <translation>Ordine delle note</translation>
    </message>
    <message id="scales.played">
        <source>Played %1, %2.</source>
        <translation>Suonata %1, %2.</translation>
    </message>
    <message id="scales.range">
        <source>How far it goes</source>
        <translation>Fin dove va</translation>
    </message>
    <message id="scales.shown">
        <source>What is shown</source>
        <translation>Che cosa si vede</translation>
    </message>
    <message id="scales.starts-from">
        <source>Start at %1: your best in %2, two notches down.</source>
        <translation>Parti da %1: il tuo migliore in %2, due tacche sotto.</translation>
    </message>
    <message id="scales.starts-slow">
        <source>Start at %1: slow enough to make no mistakes; change it in the drill.</source>
        <translation>Parti da %1: abbastanza lento da non fare errori; nello studio si può cambiare.</translation>
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
        <source>How many runs of each key, in all kinds and subdivisions of this instrument. A week begins on Monday.</source>
        <translation>Quante ripetizioni di ogni tonalità, in tutti i tipi e le suddivisioni di questo strumento. La settimana comincia di lunedì.</translation>
    </message>
    <message id="scales.weeks.title">
        <source>Keys by weeks</source>
        <translation>Tonalità per settimane</translation>
    </message>
    <message id="scales.write">
        <source>Write it as %1</source>
        <translation>Scrivila come %1</translation>
    </message>
    <message id="score.back-to-form">
        <source>Back to the form</source>
        <translation>Torna al modulo</translation>
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
        <source>MusicXML (.musicxml, .xml, .mxl), as notation programs export it. Type where it is, or drop it here.</source>
        <translation>MusicXML (.musicxml, .xml, .mxl), come lo esportano i programmi di notazione. Scrivi dov&apos;è, o trascinalo qui.</translation>
    </message>
    <message id="score.no-tempo">
        <source>no tempo marked</source>
        <translation>nessun tempo indicato</translation>
    </message>
    <message id="score.no-title">
        <source>(no title)</source>
        <translation>(senza titolo)</translation>
    </message>
    <message id="score.notes">
        <source>%1 notes</source>
        <translation>%1 note</translation>
    </message>
    <message id="score.one-note">
        <source>1 note</source>
        <translation>1 nota</translation>
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
        <source>Read it</source>
        <translation>Leggi</translation>
    </message>
    <message id="score.take">
        <source>Take these bars</source>
        <translation>Prendi queste battute</translation>
    </message>
    <message id="score.title">
        <source>A passage from a music file</source>
        <translation>Un passaggio da un file di musica</translation>
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
        <source>%1, too many to be kept</source>
        <translation>%1, troppe per essere tenute</translation>
    </message>
    <message id="settings.day-opening.as-left">
        <source>Where it was left</source>
        <translation>Da dove era rimasto</translation>
    </message>
    <message id="settings.day-opening.below">
        <source>Two rungs below the last full row</source>
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
        <source>A press on a key takes it away. Tab, Return on a button, the arrows in a list and Esc in a form work as in any other program, and stay.</source>
        <translation>Premendo un tasto lo togli. Tab, Invio su un pulsante, le frecce in una lista ed Esc in un modulo fanno come in ogni altro programma, e restano.</translation>
    </message>
    <message id="settings.language">
        <source>Language</source>
        <translation>Lingua</translation>
    </message>
    <message id="settings.language.hint">
        <source>Words, numbers and dates on the screen. Files are the same in every language.</source>
        <translation>Parole, numeri e date sullo schermo. I file sono uguali in ogni lingua.</translation>
    </message>
    <message id="settings.language.system">
        <source>As the system</source>
        <translation>Come il sistema</translation>
    </message>
    <message id="settings.looks">
        <source>Looks</source>
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
        <source>As the system</source>
        <translation>Come il sistema</translation>
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
        <translation>Metallo: il più acuto</translation>
    </message>
    <message id="settings.voice.reed">
        <source>Reed: edgy</source>
        <translation>Ancia: tagliente</translation>
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
        <source>Near the target a miss drops one climb; at it, the second of two running.</source>
        <translation>Vicino all&apos;obiettivo un errore fa scendere di una salita; all&apos;obiettivo solo il secondo di fila.</translation>
    </message>
    <message id="sheet.how-to">
        <source>Climb from the bottom. A clean run ticks a circle; a miss is a stroke in the box and rubs out that rung&apos;s ticks.</source>
        <translation>Sali dal basso. Una ripetizione pulita segna un cerchio; un errore è un tratto nella casella e cancella i segni di quel piolo.</translation>
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
        <source>Wireless headphones are late: move the picture of the beat, and the marks, later by</source>
        <translation>Le cuffie senza filo ritardano: sposta più tardi l&apos;immagine del movimento e i segni di</translation>
    </message>
    <message id="sound.dropouts">
        <source>The sound has broken off %1 since Piolo was opened: the computer was too busy. Closing other programs helps.</source>
        <translation>Il suono si è interrotto %1 da quando Piolo è aperto: il computer era troppo occupato. Aiuta chiudere altri programmi.</translation>
    </message>
    <message id="sound.dropouts.none">
        <source>The sound has not broken off since Piolo was opened.</source>
        <translation>Il suono non si è interrotto da quando Piolo è aperto.</translation>
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
        <translation>Conteggio</translation>
    </message>
    <message id="sound.layer.cues">
        <source>Short signals</source>
        <translation>Segnali brevi</translation>
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
        <source>Notes heard first</source>
        <translation>Note da ascoltare prima</translation>
    </message>
    <message id="sound.layer.subdivisions">
        <source>Subdivisions</source>
        <translation>Suddivisioni</translation>
    </message>
    <message id="sound.level.hint">
        <source>Your horn is louder than the click, and that is well so: choose a sharper voice rather than more level. The level starts low; keep it there on headphones.</source>
        <translation>Il tuo strumento è più forte del clic, ed è bene così: scegli una voce più tagliente invece di più livello. Il livello parte basso; in cuffia lascialo così.</translation>
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
        <translation>%1, livello</translation>
    </message>
    <message id="sound.output">
        <source>Sound comes out of</source>
        <translation>Il suono esce da</translation>
    </message>
    <message id="sound.output.system">
        <source>The system&apos;s own choice</source>
        <translation>La scelta del sistema</translation>
    </message>
    <message id="sound.output.unplugged">
        <source>%1 (not plugged in)</source>
        <translation>%1 (non collegato)</translation>
    </message>
    <message id="sound.title">
        <source>Sound</source>
        <translation>Suono</translation>
    </message>
    <message id="sound.voice">
        <source>Voice of the click</source>
        <translation>Voce del clic</translation>
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
    <message id="staff.notes">
        <source>%1 notes</source>
        <translation>%1 note</translation>
    </message>
    <message id="staff.one-note">
        <source>one note</source>
        <translation>una nota</translation>
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
        <source>On to: %1</source>
        <translation>Avanti: %1</translation>
    </message>
    <message id="stage.run-throughs">
        <source>in run-throughs</source>
        <translation>nelle filate</translation>
    </message>
    <message id="stage.secure">
        <source>secure at the target</source>
        <translation>sicuro all&apos;obiettivo</translation>
    </message>
    <message id="stage.slow">
        <source>slow with the click</source>
        <translation>lento con il clic</translation>
    </message>
    <message id="stage.spoken">
        <source>Stage of this passage</source>
        <translation>Tappa di questo passaggio</translation>
    </message>
    <message id="stage.standing.full-streak">
        <source>There was a full streak at the target.</source>
        <translation>All&apos;obiettivo c&apos;è stata una serie piena.</translation>
    </message>
    <message id="stage.standing.in-context">
        <source>Clean in a row in context, on one day: %1 of %2.</source>
        <translation>Pulite di fila nel contesto, in un giorno: %1 di %2.</translation>
    </message>
    <message id="stage.standing.next-full-streak">
        <source>Next: a full streak at the target.</source>
        <translation>Il prossimo passo: una serie piena all&apos;obiettivo.</translation>
    </message>
    <message id="stage.standing.run-throughs">
        <source>Run-throughs in a row without a stop here: %1 of %2.</source>
        <translation>Filate di fila senza uno stop qui: %1 di %2.</translation>
    </message>
    <message id="stage.standing.secure" numerus="yes">
        <source>Secure at the target on %1 of %n days.</source>
        <translation>
            <numerusform>Sicuro all&apos;obiettivo in %1 giorno su %n.</numerusform>
            <numerusform>Sicuro all&apos;obiettivo in %1 giorni su %n.</numerusform>
        </translation>
    </message>
    <message id="stage.standing.without-click">
        <source>Clean in a row without the click, on one day: %1 of %2.</source>
        <translation>Pulite di fila senza il clic, in un giorno: %1 di %2.</translation>
    </message>
    <message id="stage.title">
        <source>Stage</source>
        <translation>Tappa</translation>
    </message>
    <message id="stage.without-click">
        <source>without the click</source>
        <translation>senza il clic</translation>
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
        <source>It bounces: again within</source>
        <translation>Rimbalza: di nuovo entro</translation>
    </message>
    <message id="switch.held">
        <source>Held, when it is down for</source>
        <translation>Tenuto, da</translation>
    </message>
    <message id="switch.hint">
        <source>Most pedals act as a keyboard. What does yours send? Your keys are set to match; MIDI switches stay as they are.</source>
        <translation>La maggior parte dei pedali fa da tastiera. Che cosa manda il tuo? I tuoi tasti vengono messi di conseguenza; gli interruttori MIDI restano come sono.</translation>
    </message>
    <message id="switch.millis">
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message id="switch.one-pedal">
        <source>One pedal alone does everything: a press starts, and marks a miss while the click runs; two presses take back; held, it stops the click, and while stopped it opens the next passage.</source>
        <translation>Un solo pedale fa tutto: una pressione avvia, e segna un errore mentre suona il clic; due annullano; tenuto, ferma il clic, e da fermo apre il passaggio seguente.</translation>
    </message>
    <message id="switch.press">
        <source>Press it now (Esc gives up)</source>
        <translation>Premilo ora (Esc rinuncia)</translation>
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
        <source>Two presses, within</source>
        <translation>Due pressioni, entro</translation>
    </message>
    <message id="switch.use-midi">
        <source>Use one MIDI switch for all</source>
        <translation>Un interruttore MIDI per tutto</translation>
    </message>
    <message id="switch.use-pedal">
        <source>Use one pedal for all</source>
        <translation>Un pedale per tutto</translation>
    </message>
    <message id="today.best">
        <source>Best with a full streak</source>
        <translation>Migliore con serie piena</translation>
    </message>
    <message id="today.clean-runs">
        <source>Clean runs today</source>
        <translation>Pulite oggi</translation>
    </message>
    <message id="today.log">
        <source>Practice log</source>
        <translation>Diario di studio</translation>
    </message>
    <message id="today.none">
        <source>none yet</source>
        <translation>ancora nulla</translation>
    </message>
    <message id="today.of">
        <source>%1 of %2</source>
        <translation>%1 di %2</translation>
    </message>
    <message id="today.played">
        <source>Played today</source>
        <translation>Suonato oggi</translation>
    </message>
    <message id="today.read-only">
        <source>not recorded</source>
        <translation>non registrato</translation>
    </message>
    <message id="today.saved">
        <source>✓ saved</source>
        <translation>✓ salvato</translation>
    </message>
    <message id="today.secure">
        <source>Secure</source>
        <translation>Sicuro</translation>
    </message>
    <message id="today.secure-on" numerus="yes">
        <source>on %1 of %n days</source>
        <translation>
            <numerusform>in %1 giorno su %n</numerusform>
            <numerusform>in %1 giorni su %n</numerusform>
        </translation>
    </message>
    <message id="today.secure-yes" numerus="yes">
        <source>yes, on %n days</source>
        <translation>
            <numerusform>sì, in %n giorno</numerusform>
            <numerusform>sì, in %n giorni</numerusform>
        </translation>
    </message>
    <message id="today.title">
        <source>Where you stand</source>
        <translation>A che punto sei</translation>
    </message>
    <message id="today.unsaved" numerus="yes">
        <source>%n not saved yet</source>
        <translation>
            <numerusform>%n non ancora salvato</numerusform>
            <numerusform>%n non ancora salvati</numerusform>
        </translation>
    </message>
    <message id="welcome.bars">
        <source>How many bars</source>
        <translation>Quante battute</translation>
    </message>
    <message id="welcome.drill">
        <source>To the drill</source>
        <translation>Allo studio</translation>
    </message>
    <message id="welcome.first-bar">
        <source>First bar</source>
        <translation>Prima battuta</translation>
    </message>
    <message id="welcome.hint">
        <source>Take the bars that go wrong, and start at a tempo where nothing does. The rest has a good beginning and can be changed later.</source>
        <translation>Prendi le battute che vanno storte, e parti da un tempo in cui nulla va storto. Il resto ha un buon inizio e si può cambiare dopo.</translation>
    </message>
    <message id="welcome.meter">
        <source>Meter</source>
        <translation>Metro</translation>
    </message>
    <message id="welcome.name">
        <source>Name</source>
        <translation>Nome</translation>
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
        <source>%1 of 100</source>
        <translation>%1 su 100</translation>
    </message>
    <message id="words.one-day">
        <source>1 day</source>
        <translation>1 giorno</translation>
    </message>
    <message id="words.one-passage">
        <source>1 passage</source>
        <translation>1 passaggio</translation>
    </message>
    <message id="words.one-run">
        <source>1 run</source>
        <translation>1 ripetizione</translation>
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
