<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message id="accents.from-meter">
        <source>As the meter says</source>
        <translation>Wie die Taktart sagt</translation>
    </message>
    <message id="accents.title">
        <source>Accents, beat by beat</source>
        <translation>Betonungen, Schlag für Schlag</translation>
    </message>
    <message id="beat.dotted-half">
        <source>dotted half</source>
        <translation>punktierte Halbe</translation>
    </message>
    <message id="beat.dotted-quarter">
        <source>dotted quarter</source>
        <translation>punktiertes Viertel</translation>
    </message>
    <message id="beat.eighth">
        <source>eighth</source>
        <translation>Achtel</translation>
    </message>
    <message id="beat.half">
        <source>half</source>
        <translation>Halbe</translation>
    </message>
    <message id="beat.quarter">
        <source>quarter</source>
        <translation>Viertel</translation>
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
        <translation>nach Takten</translation>
    </message>
    <message id="breaks.by-bar-and-beat">
        <source>by bar and beat</source>
        <translation>nach Takt und Schlag</translation>
    </message>
    <message id="breaks.drill">
        <source>Drill it</source>
        <translation>Üben</translation>
    </message>
    <message id="breaks.empty">
        <source>Misses are gathered here, by bar and beat.</source>
        <translation>Hier sammeln sich die Fehler, nach Takt und Schlag.</translation>
    </message>
    <message id="breaks.in-parts">
        <source>In %1 parts</source>
        <translation>In %1 Teilen</translation>
    </message>
    <message id="breaks.in-parts.hint">
        <source>Makes passages of its parts, each landing on the beat with which the next begins</source>
        <translation>Macht Stellen aus ihren Teilen; jeder endet auf dem Schlag, mit dem der nächste beginnt</translation>
    </message>
    <message id="breaks.last-bar-first">
        <source>Last bar first</source>
        <translation>Letzter Takt zuerst</translation>
    </message>
    <message id="breaks.last-bar-first.hint">
        <source>Makes passages of the last bar, the last two, and so on</source>
        <translation>Macht Stellen aus dem letzten Takt, den letzten zwei und so weiter</translation>
    </message>
    <message id="breaks.made">
        <source>Made: “%1”</source>
        <translation>Gemacht: „%1“</translation>
    </message>
    <message id="breaks.made-of">
        <source>New passage: %1</source>
        <translation>Neue Stelle: %1</translation>
    </message>
    <message id="breaks.made-parts">
        <source>%1 made, the first: “%2”</source>
        <translation>%1 gemacht, die erste: „%2“</translation>
    </message>
    <message id="breaks.misses" numerus="yes">
        <source>%n misses</source>
        <translation>
            <numerusform>%n Fehler</numerusform>
            <numerusform>%n Fehler</numerusform>
        </translation>
    </message>
    <message id="breaks.no-miss">
        <source>Not one miss so far.</source>
        <translation>Bisher kein einziger Fehler.</translation>
    </message>
    <message id="breaks.not-played">
        <source>Not played yet.</source>
        <translation>Noch nicht gespielt.</translation>
    </message>
    <message id="breaks.one-miss">
        <source>1 miss</source>
        <translation>1 Fehler</translation>
    </message>
    <message id="breaks.reason">
        <source>Most misses fall there.</source>
        <translation>Die meisten Fehler fallen dort.</translation>
    </message>
    <message id="breaks.reason-run-up">
        <source>Most misses fall there; it has a bar to run up.</source>
        <translation>Die meisten Fehler fallen dort; mit einem Takt Anlauf.</translation>
    </message>
    <message id="breaks.title">
        <source>Where it breaks</source>
        <translation>Wo es bricht</translation>
    </message>
    <message id="breaks.told">
        <source>%1 in %2, %3</source>
        <translation>%1 in %2, %3</translation>
    </message>
    <message id="breaks.told-elsewhere">
        <source>%1; the place of %2 is not known</source>
        <translation>%1; bei %2 ist der Ort nicht bekannt</translation>
    </message>
    <message id="breaks.where">
        <source>Where “%1” breaks</source>
        <translation>Wo „%1“ bricht</translation>
    </message>
    <message id="care.authority">
        <source>Your teacher, your doctor and the rules of the place where you practise come first.</source>
        <translation>Was deine Lehrkraft, deine Ärztin oder dein Arzt und die Regeln an deinem Übeort sagen, geht vor.</translation>
    </message>
    <message id="care.gradually">
        <source>Add minutes gradually: a little more each week, no sudden jumps, a break well before you need one.</source>
        <translation>Steigere die Minuten nach und nach: jede Woche ein wenig mehr, keine Sprünge, und eine Pause, lange bevor du sie brauchst.</translation>
    </message>
    <message id="care.headphones">
        <source>Keep headphones low: the horn is loud already, and this program does not know how loud it is at your ear.</source>
        <translation>Halte Kopfhörer leise: Das Instrument ist schon laut, und dieses Programm weiß nicht, wie laut es an deinem Ohr ist.</translation>
    </message>
    <message id="care.pain">
        <source>Pain, tingling or numbness means stop, and see a professional before you play on.</source>
        <translation>Schmerz, Kribbeln oder Taubheit heißt aufhören, und vor dem Weiterspielen fachlichen Rat holen.</translation>
    </message>
    <message id="care.rest">
        <source>Rest your lip and your ears. Rest the thumb that carries the instrument, too.</source>
        <translation>Schone Lippe und Ohren, und auch den Daumen, der das Instrument trägt.</translation>
    </message>
    <message id="care.title">
        <source>Take care of yourself</source>
        <translation>Gib auf dich acht</translation>
    </message>
    <message id="click-form.bars-off">
        <source>Bars without</source>
        <translation>Takte ohne</translation>
    </message>
    <message id="click-form.bars-on">
        <source>Bars with click</source>
        <translation>Takte mit Klick</translation>
    </message>
    <message id="click-form.breath-below">
        <source>Only below</source>
        <translation>Nur unter</translation>
    </message>
    <message id="click-form.breath-below.any">
        <source>any tempo</source>
        <translation>jedes Tempo</translation>
    </message>
    <message id="click-form.breaths">
        <source>Wait for breath before</source>
        <translation>Auf Atem warten vor</translation>
    </message>
    <message id="click-form.breaths.example">
        <source>43, 45:3, 47:1+2</source>
        <translation>43, 45:3, 47:1+2</translation>
    </message>
    <message id="click-form.change">
        <source>Change where the click sounds</source>
        <translation>Ändern, wo der Klick erklingt</translation>
    </message>
    <message id="click-form.hint">
        <source>The bars go on while the click is silent. Breath: bar, bar:beat, and +beats to wait. Another chance number, other silent bars and beats.</source>
        <translation>Die Takte laufen weiter, während der Klick schweigt. Atem: Takt, Takt:Schlag, und +Schläge Wartezeit. Andere Zufallszahl, andere stumme Takte und Schläge.</translation>
    </message>
    <message id="click-form.lost-beats">
        <source>Lost beats, %</source>
        <translation>Stumme Schläge, %</translation>
    </message>
    <message id="click-form.on">
        <source>Click on</source>
        <translation>Klick auf</translation>
    </message>
    <message id="click-form.seed">
        <source>Chance number</source>
        <translation>Zufallszahl</translation>
    </message>
    <message id="click-form.silent-bars">
        <source>Silent bars, %</source>
        <translation>Stumme Takte, %</translation>
    </message>
    <message id="click-form.straight">
        <source>straight</source>
        <translation>gerade</translation>
    </message>
    <message id="click-form.swing">
        <source>Swing</source>
        <translation>Swing</translation>
    </message>
    <message id="click-form.swung">
        <source>Swung notes</source>
        <translation>Geswingte Noten</translation>
    </message>
    <message id="click.accents-by-hand">
        <source>accents by hand</source>
        <translation>Betonungen von Hand</translation>
    </message>
    <message id="click.bars-in-turn">
        <source>bars in turn: %1 with the click, %2 without</source>
        <translation>im Wechsel: %1 Takte mit Klick, %2 ohne</translation>
    </message>
    <message id="click.beats-left-out">
        <source>%1 beats of 100 left out</source>
        <translation>%1 von 100 Schlägen stumm</translation>
    </message>
    <message id="click.breath-at-one-place">
        <source>waits for breath at 1 place</source>
        <translation>wartet an 1 Stelle auf den Atem</translation>
    </message>
    <message id="click.breath-at-places">
        <source>waits for breath at %1 places</source>
        <translation>wartet an %1 Stellen auf den Atem</translation>
    </message>
    <message id="click.breath-below">
        <source>%1 below %2</source>
        <translation>%1 unter %2</translation>
    </message>
    <message id="click.downbeats">
        <source>downbeats only</source>
        <translation>nur die Eins</translation>
    </message>
    <message id="click.eighths">
        <source>eighths</source>
        <translation>Achteln</translation>
    </message>
    <message id="click.every-beat">
        <source>every beat</source>
        <translation>jeder Schlag</translation>
    </message>
    <message id="click.half-strong">
        <source>half strong</source>
        <translation>halbstark</translation>
    </message>
    <message id="click.off-beats">
        <source>off-beats only</source>
        <translation>nur zwischen den Schlägen</translation>
    </message>
    <message id="click.plain">
        <source>plain</source>
        <translation>unbetont</translation>
    </message>
    <message id="click.silent">
        <source>silent</source>
        <translation>stumm</translation>
    </message>
    <message id="click.silent-bars">
        <source>%1 bars of 100 silent</source>
        <translation>%1 von 100 Takten stumm</translation>
    </message>
    <message id="click.sixteenths">
        <source>sixteenths</source>
        <translation>Sechzehnteln</translation>
    </message>
    <message id="click.strong">
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message id="click.swing">
        <source>swing %1 in %2</source>
        <translation>Swing %1 in %2</translation>
    </message>
    <message id="click.two-and-four">
        <source>2 and 4 only</source>
        <translation>nur 2 und 4</translation>
    </message>
    <message id="curve.all">
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message id="curve.along">
        <source>Along</source>
        <translation>Achse</translation>
    </message>
    <message id="curve.by-day">
        <source>Tempo by day</source>
        <translation>Tempo nach Tagen</translation>
    </message>
    <message id="curve.by-run">
        <source>Tempo by run</source>
        <translation>Tempo nach Durchläufen</translation>
    </message>
    <message id="curve.closer">
        <source>Closer</source>
        <translation>Näher</translation>
    </message>
    <message id="curve.days">
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message id="curve.due">
        <source>due</source>
        <translation>Termin</translation>
    </message>
    <message id="curve.empty">
        <source>The curve begins with the first run.</source>
        <translation>Die Kurve beginnt mit dem ersten Durchlauf.</translation>
    </message>
    <message id="curve.farther">
        <source>Farther</source>
        <translation>Weiter weg</translation>
    </message>
    <message id="curve.file">
        <source>File, ending in .svg, .png, .pdf or .csv</source>
        <translation>Datei mit der Endung .svg, .png, .pdf oder .csv</translation>
    </message>
    <message id="curve.leave">
        <source>Leave it</source>
        <translation>Doch nicht</translation>
    </message>
    <message id="curve.none">
        <source>No curve yet</source>
        <translation>Noch keine Kurve</translation>
    </message>
    <message id="curve.point.clean">
        <source>clean</source>
        <translation>sauber</translation>
    </message>
    <message id="curve.point.clean-try">
        <source>a clean try at the target</source>
        <translation>ein sauberer Versuch am Ziel</translation>
    </message>
    <message id="curve.point.day">
        <source>%1: %2, at %3, %4</source>
        <translation>%1: %2, bei %3, %4</translation>
    </message>
    <message id="curve.point.heard">
        <source>%1 at %2 of %3</source>
        <translation>%1 bei %2 von %3</translation>
    </message>
    <message id="curve.point.missed">
        <source>missed</source>
        <translation>mit Fehler</translation>
    </message>
    <message id="curve.point.missed-try">
        <source>a missed try at the target</source>
        <translation>ein Versuch am Ziel mit Fehler</translation>
    </message>
    <message id="curve.point.of-clean">
        <source>%1 of %2 clean</source>
        <translation>%1 von %2 sauber</translation>
    </message>
    <message id="curve.point.run">
        <source>%1: run %2, %3, at %4, %5</source>
        <translation>%1: Durchlauf %2, %3, bei %4, %5</translation>
    </message>
    <message id="curve.point.secure">
        <source>secure</source>
        <translation>sicher</translation>
    </message>
    <message id="curve.runs">
        <source>runs</source>
        <translation>Durchläufe</translation>
    </message>
    <message id="curve.save">
        <source>Save…</source>
        <translation>Speichern…</translation>
    </message>
    <message id="curve.save-file">
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message id="curve.saved">
        <source>saved as %1</source>
        <translation>gespeichert als %1</translation>
    </message>
    <message id="curve.spoken">
        <source>Curves of tempo: %1</source>
        <translation>Tempokurven: %1</translation>
    </message>
    <message id="curve.spoken.keys">
        <source>Plus and minus zoom, Left and Right move, with Shift they read run by run, Up and Down change the passage.</source>
        <translation>Plus und Minus zoomen, Links und Rechts verschieben, mit Umschalt lesen sie Durchlauf für Durchlauf, Auf und Ab wechseln die Stelle.</translation>
    </message>
    <message id="curve.target">
        <source>target</source>
        <translation>Ziel</translation>
    </message>
    <message id="curve.tempo">
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message id="difference.accents">
        <source>accents</source>
        <translation>Betonungen</translation>
    </message>
    <message id="difference.articulation">
        <source>articulation</source>
        <translation>Artikulation</translation>
    </message>
    <message id="difference.bars">
        <source>bars</source>
        <translation>Takte</translation>
    </message>
    <message id="difference.bars-off">
        <source>bars without the click</source>
        <translation>Takte ohne Klick</translation>
    </message>
    <message id="difference.bars-on">
        <source>bars with the click</source>
        <translation>Takte mit Klick</translation>
    </message>
    <message id="difference.beat">
        <source>beat</source>
        <translation>Schlag</translation>
    </message>
    <message id="difference.beats-left-out">
        <source>beats left out of a hundred</source>
        <translation>stumme Schläge von hundert</translation>
    </message>
    <message id="difference.breath">
        <source>beats of breath</source>
        <translation>Schläge zum Atmen</translation>
    </message>
    <message id="difference.breath-below">
        <source>waits below</source>
        <translation>wartet unter</translation>
    </message>
    <message id="difference.breaths">
        <source>waits for breath</source>
        <translation>wartet auf Atem</translation>
    </message>
    <message id="difference.change">
        <source>%1: %2 → %3</source>
        <translation>%1: %2 → %3</translation>
    </message>
    <message id="difference.clean-runs">
        <source>clean runs</source>
        <translation>saubere Durchläufe</translation>
    </message>
    <message id="difference.click-on">
        <source>click on</source>
        <translation>Klick auf</translation>
    </message>
    <message id="difference.climb">
        <source>climb</source>
        <translation>Anstieg</translation>
    </message>
    <message id="difference.composer">
        <source>composer</source>
        <translation>Komponist/in</translation>
    </message>
    <message id="difference.count-in">
        <source>bars of count-in</source>
        <translation>Einzähltakte</translation>
    </message>
    <message id="difference.differs">
        <source>differs</source>
        <translation>anders</translation>
    </message>
    <message id="difference.drop">
        <source>drop</source>
        <translation>Abstieg</translation>
    </message>
    <message id="difference.due">
        <source>date</source>
        <translation>Termin</translation>
    </message>
    <message id="difference.fingering">
        <source>fingering</source>
        <translation>Griffe</translation>
    </message>
    <message id="difference.first-bar">
        <source>first bar</source>
        <translation>erster Takt</translation>
    </message>
    <message id="difference.floor">
        <source>floor</source>
        <translation>Untergrenze</translation>
    </message>
    <message id="difference.gentle">
        <source>gentle near the target</source>
        <translation>sanft nahe am Ziel</translation>
    </message>
    <message id="difference.group">
        <source>notes to a group</source>
        <translation>Noten je Gruppe</translation>
    </message>
    <message id="difference.groups">
        <source>groups</source>
        <translation>Gruppen</translation>
    </message>
    <message id="difference.instrument">
        <source>instrument</source>
        <translation>Instrument</translation>
    </message>
    <message id="difference.key">
        <source>key</source>
        <translation>Tonart</translation>
    </message>
    <message id="difference.landing">
        <source>landing note</source>
        <translation>Schlussnote</translation>
    </message>
    <message id="difference.meter">
        <source>meter</source>
        <translation>Taktart</translation>
    </message>
    <message id="difference.name">
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message id="difference.new">
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message id="difference.none">
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message id="difference.notation">
        <source>printed notes</source>
        <translation>gedruckte Noten</translation>
    </message>
    <message id="difference.notes">
        <source>notes</source>
        <translation>Noten</translation>
    </message>
    <message id="difference.notes-per-beat">
        <source>notes to the beat</source>
        <translation>Noten je Schlag</translation>
    </message>
    <message id="difference.origin">
        <source>made of passage</source>
        <translation>aus Stelle</translation>
    </message>
    <message id="difference.pattern">
        <source>order of notes</source>
        <translation>Folge der Töne</translation>
    </message>
    <message id="difference.pick-up">
        <source>pick-up</source>
        <translation>Auftakt</translation>
    </message>
    <message id="difference.piece">
        <source>piece</source>
        <translation>Stück</translation>
    </message>
    <message id="difference.range">
        <source>range</source>
        <translation>Umfang</translation>
    </message>
    <message id="difference.removed">
        <source>removed here</source>
        <translation>hier entfernt</translation>
    </message>
    <message id="difference.rhythm">
        <source>rhythm</source>
        <translation>Rhythmus</translation>
    </message>
    <message id="difference.same">
        <source>the same</source>
        <translation>gleich</translation>
    </message>
    <message id="difference.scale">
        <source>scale</source>
        <translation>Tonleiter</translation>
    </message>
    <message id="difference.scale-kind">
        <source>kind of scale</source>
        <translation>Art der Tonleiter</translation>
    </message>
    <message id="difference.seed">
        <source>number for chance</source>
        <translation>Zufallszahl</translation>
    </message>
    <message id="difference.silent-bars">
        <source>silent bars of a hundred</source>
        <translation>stumme Takte von hundert</translation>
    </message>
    <message id="difference.start">
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message id="difference.step">
        <source>steps in</source>
        <translation>Schritte in</translation>
    </message>
    <message id="difference.subdivision">
        <source>pulses to the beat</source>
        <translation>Noten je Schlag</translation>
    </message>
    <message id="difference.swing">
        <source>swing</source>
        <translation>Swing</translation>
    </message>
    <message id="difference.swung">
        <source>swung notes</source>
        <translation>geswingte Noten</translation>
    </message>
    <message id="difference.target">
        <source>target</source>
        <translation>Ziel</translation>
    </message>
    <message id="difference.tempo">
        <source>tempo</source>
        <translation>Tempo</translation>
    </message>
    <message id="difference.transposition">
        <source>transposition in semitones</source>
        <translation>Transposition in Halbtönen</translation>
    </message>
    <message id="drill.articulation">
        <source>Articulation</source>
        <translation>Artikulation</translation>
    </message>
    <message id="drill.articulation.notes">
        <source>notes</source>
        <translation>Noten</translation>
    </message>
    <message id="drill.aside.note">
        <source>aside: moves nothing</source>
        <translation>nebenher: bewegt nichts</translation>
    </message>
    <message id="drill.beat.bar">
        <source>bar %1</source>
        <translation>Takt %1</translation>
    </message>
    <message id="drill.beat.breathe">
        <source>breathe</source>
        <translation>atmen</translation>
    </message>
    <message id="drill.beat.count-in">
        <source>count-in</source>
        <translation>Einzähler</translation>
    </message>
    <message id="drill.best">
        <source>Best: %1</source>
        <translation>Bestes: %1</translation>
    </message>
    <message id="drill.best.item">
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message id="drill.by-hand">
        <source>set by hand, from the next run</source>
        <translation>von Hand gesetzt, ab dem nächsten Durchlauf</translation>
    </message>
    <message id="drill.choose-passage">
        <source>Choose a passage first.</source>
        <translation>Wähle erst eine Stelle.</translation>
    </message>
    <message id="drill.count-in">
        <source>%1 bars count-in</source>
        <translation>%1 Takte Einzähler</translation>
    </message>
    <message id="drill.curve">
        <source>Tempo, last 14 days</source>
        <translation>Tempo, letzte 14 Tage</translation>
    </message>
    <message id="drill.curve.spoken">
        <source>Curve of the tempo over the last 14 days, target %1</source>
        <translation>Kurve des Tempos der letzten 14 Tage, Ziel %1</translation>
    </message>
    <message id="drill.edit">
        <source>Edit passage</source>
        <translation>Stelle bearbeiten</translation>
    </message>
    <message id="drill.faster">
        <source>Faster</source>
        <translation>Schneller</translation>
    </message>
    <message id="drill.felt-as">
        <source>felt as %1</source>
        <translation>gefühlt in %1</translation>
    </message>
    <message id="drill.felt-beat">
        <source>Felt beat</source>
        <translation>Gefühlter Schlag</translation>
    </message>
    <message id="drill.figures">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="drill.find-tempo">
        <source>Find the tempo, from %1 down</source>
        <translation>Tempo suchen, ab %1 abwärts</translation>
    </message>
    <message id="drill.finding">
        <source>Looking for your tempo: you named %1.</source>
        <translation>Dein Tempo wird gesucht: genannt hast du %1.</translation>
    </message>
    <message id="drill.found">
        <source>Found today: %1; you named %2.</source>
        <translation>Heute gefunden: %1; genannt hast du %2.</translation>
    </message>
    <message id="drill.half-tempo">
        <source>At half tempo, %1</source>
        <translation>Halbes Tempo, %1</translation>
    </message>
    <message id="drill.hear">
        <source>Hear it first</source>
        <translation>Erst anhören</translation>
    </message>
    <message id="drill.hear-with-click">
        <source>with the click</source>
        <translation>mit dem Klick</translation>
    </message>
    <message id="drill.hear-with-click.hint">
        <source>Hear it with the click</source>
        <translation>Mit dem Klick anhören</translation>
    </message>
    <message id="drill.in-context">
        <source>In context</source>
        <translation>Im Zusammenhang</translation>
    </message>
    <message id="drill.in-context.note">
        <source>in context: moves nothing</source>
        <translation>im Zusammenhang: bewegt nichts</translation>
    </message>
    <message id="drill.new-day">
        <source>a new day: left at %1</source>
        <translation>ein neuer Tag: zuletzt bei %1</translation>
    </message>
    <message id="drill.next">
        <source>Next passage</source>
        <translation>Nächste Stelle</translation>
    </message>
    <message id="drill.no-count-in">
        <source>no count-in</source>
        <translation>kein Einzähler</translation>
    </message>
    <message id="drill.one-bar-count-in">
        <source>one bar count-in</source>
        <translation>ein Takt Einzähler</translation>
    </message>
    <message id="drill.only-heard">
        <source>%1 · only heard: nothing counts</source>
        <translation>%1 · nur gehört: zählt nicht</translation>
    </message>
    <message id="drill.other-ways">
        <source>Other ways</source>
        <translation>Andere Arten</translation>
    </message>
    <message id="drill.rhythm">
        <source>Rhythm</source>
        <translation>Rhythmus</translation>
    </message>
    <message id="drill.rhythm.short">
        <source>rhythm</source>
        <translation>Rhythmus</translation>
    </message>
    <message id="drill.slower">
        <source>Slower</source>
        <translation>Langsamer</translation>
    </message>
    <message id="drill.start">
        <source>Start</source>
        <translation>Los</translation>
    </message>
    <message id="drill.stop-listening">
        <source>Stop listening</source>
        <translation>Nicht mehr anhören</translation>
    </message>
    <message id="drill.streak.spoken">
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message id="drill.summary">
        <source>%1 · %2 · %3 · %4</source>
        <translation>%1 · %2 · %3 · %4</translation>
    </message>
    <message id="drill.take-back">
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message id="drill.target">
        <source>target %1 ↑</source>
        <translation>Ziel %1 ↑</translation>
    </message>
    <message id="drill.to-passages">
        <source>To the passages</source>
        <translation>Zu den Stellen</translation>
    </message>
    <message id="drill.try">
        <source>One try at %1</source>
        <translation>Versuch bei %1</translation>
    </message>
    <message id="drill.try.note">
        <source>a try: moves nothing</source>
        <translation>ein Versuch: bewegt nichts</translation>
    </message>
    <message id="drill.verdict.clean">
        <source>Clean</source>
        <translation>Sauber</translation>
    </message>
    <message id="drill.verdict.clean-up">
        <source>Clean: up to %1</source>
        <translation>Sauber: hinauf auf %1</translation>
    </message>
    <message id="drill.verdict.found">
        <source>Found: %1</source>
        <translation>Gefunden: %1</translation>
    </message>
    <message id="drill.verdict.missed">
        <source>Missed</source>
        <translation>Fehler</translation>
    </message>
    <message id="drill.verdict.nothing">
        <source>Nothing to take back</source>
        <translation>Nichts zurückzunehmen</translation>
    </message>
    <message id="drill.verdict.secure">
        <source>Secure at %1</source>
        <translation>Sicher bei %1</translation>
    </message>
    <message id="drill.verdict.taken-back">
        <source>Taken back</source>
        <translation>Zurückgenommen</translation>
    </message>
    <message id="drill.without-click">
        <source>Without the click</source>
        <translation>Ohne Klick</translation>
    </message>
    <message id="drill.without-click.note">
        <source>without the click: moves nothing</source>
        <translation>ohne Klick: bewegt nichts</translation>
    </message>
    <message id="fault.E101">
        <source>is no verb; write %1, or see piolo --help</source>
        <translation>ist kein Befehl; schreib %1, oder sieh piolo --help</translation>
    </message>
    <message id="fault.E102">
        <source>is no option here; see %1 --help</source>
        <translation>gibt es hier nicht; siehe %1 --help</translation>
    </message>
    <message id="fault.E103">
        <source>is missing; add it, for example %1</source>
        <translation>fehlt; füge es hinzu, zum Beispiel %1</translation>
    </message>
    <message id="fault.E104">
        <source>has no value; write one after it, for example %1</source>
        <translation>hat keinen Wert; schreib einen dahinter, zum Beispiel %1</translation>
    </message>
    <message id="fault.E105">
        <source>&quot;%1&quot; is no whole number; write digits only, for example %2</source>
        <translation>„%1“ ist keine ganze Zahl; schreib nur Ziffern, zum Beispiel %2</translation>
    </message>
    <message id="fault.E106">
        <source>&quot;%1&quot; is no tempo; write 10 to 400 with at most three decimals, for example 72.5</source>
        <translation>„%1“ ist kein Tempo; schreib 10 bis 400 mit höchstens drei Nachkommastellen, zum Beispiel 72.5</translation>
    </message>
    <message id="fault.E107">
        <source>&quot;%1&quot; is no meter that can be counted; write 1 to 32 over 1, 2, 4, 8 or 16, for example 7/8</source>
        <translation>„%1“ ist keine Taktart, die sich zählen lässt; schreib 1 bis 32 über 1, 2, 4, 8 oder 16, zum Beispiel 7/8</translation>
    </message>
    <message id="fault.E108">
        <source>&quot;%1&quot; is no beat; write 1/2, 1/4, 3/8, 1/8 or 3/4</source>
        <translation>„%1“ ist kein Schlag; schreib 1/2, 1/4, 3/8, 1/8 oder 3/4</translation>
    </message>
    <message id="fault.E109">
        <source>a bar of %2 is no whole number of %1 beats; choose a shorter beat or another meter</source>
        <translation>ein Takt %2 ist keine ganze Zahl von Schlägen %1; wähle einen kürzeren Schlag oder eine andere Taktart</translation>
    </message>
    <message id="fault.E110">
        <source>&quot;%1&quot; are no groups of a %2 bar; write groups that fill it and begin on beats, as 2+2+3 fills 7/8 in eighths</source>
        <translation>„%1“ sind keine Gruppen eines Takts %2; schreib Gruppen, die ihn füllen und auf Schlägen beginnen, so wie 2+2+3 einen 7/8 in Achteln füllt</translation>
    </message>
    <message id="fault.E111">
        <source>&quot;%1&quot; is no subdivision; write 1 to 8 pulses to the beat</source>
        <translation>„%1“ ist keine Unterteilung; schreib 1 bis 8 Noten je Schlag</translation>
    </message>
    <message id="fault.E112">
        <source>&quot;%1&quot; is no voice; choose %2</source>
        <translation>„%1“ ist keine Stimme; wähle %2</translation>
    </message>
    <message id="fault.E113">
        <source>%1 is out of range; choose %2 to %3</source>
        <translation>%1 liegt außerhalb; wähle %2 bis %3</translation>
    </message>
    <message id="fault.E114">
        <source>%1 is above the %2 of %3; lower the one or raise the other</source>
        <translation>%1 liegt über %3, und das ist %2; senke das eine oder heb das andere</translation>
    </message>
    <message id="fault.E115">
        <source>&quot;%1&quot; does not fit here; write %2</source>
        <translation>„%1“ passt hier nicht; schreib %2</translation>
    </message>
    <message id="fault.E116">
        <source>&quot;%1&quot; names no kind of file that is written here; let the name end in %2</source>
        <translation>„%1“ nennt keine Art von Datei, die hier geschrieben wird; der Name muss enden auf %2</translation>
    </message>
    <message id="fault.E117">
        <source>no passage has the id or title &quot;%1&quot;; check the spelling and the folder</source>
        <translation>keine Stelle hat die Kennung oder den Titel „%1“; prüfe Schreibweise und Ordner</translation>
    </message>
    <message id="fault.E118">
        <source>&quot;%1&quot; is the title of more than one passage; name one by its id: %2</source>
        <translation>„%1“ ist der Titel mehrerer Stellen; nenne eine mit ihrer Kennung: %2</translation>
    </message>
    <message id="fault.E119">
        <source>is a word too many; leave it out, or see %1 --help</source>
        <translation>ist ein Wort zu viel; lass es weg, oder siehe %1 --help</translation>
    </message>
    <message id="fault.E120">
        <source>&quot;%1&quot; are no accents of a bar of %2 beats; write strong, group, plain or silent for each beat, with commas between</source>
        <translation>„%1“ sind keine Betonungen eines Takts mit %2 Schlägen; schreib für jeden Schlag strong, group, plain oder silent, mit Kommas dazwischen</translation>
    </message>
    <message id="fault.E121">
        <source>&quot;%1&quot; is no swing; write long:short from 1:1 to 3:1, as in 2:1</source>
        <translation>„%1“ ist kein Swing; schreib lang:kurz von 1:1 bis 3:1, etwa 2:1</translation>
    </message>
    <message id="fault.E122">
        <source>the beat has no pairs of eighths or sixteenths to swing; divide it into an even number of them with --subdivision</source>
        <translation>der Schlag hat keine Paare von Achteln oder Sechzehnteln für den Swing; teile ihn mit --subdivision in eine gerade Zahl davon</translation>
    </message>
    <message id="fault.E123">
        <source>&quot;%1&quot; are no breath places in bars 1 to %2 of %3 beats; write BAR:BEAT:BEATS after the first beat, in order, as in 4:3:1,8:1:2</source>
        <translation>„%1“ sind keine Atemstellen in den Takten 1 bis %2 mit %3 Schlägen; schreib TAKT:SCHLAG:SCHLÄGE nach dem ersten Schlag, der Reihe nach, etwa 4:3:1,8:1:2</translation>
    </message>
    <message id="fault.E124">
        <source>a bar of one beat has no beat 2; count it in shorter beats with --beat</source>
        <translation>ein Takt mit einem Schlag hat keinen zweiten; zähle ihn mit --beat in kürzeren Schlägen</translation>
    </message>
    <message id="fault.E125">
        <source>%1 pages are more than the %2 that a picture holds; give a name that ends in .pdf</source>
        <translation>%1 Seiten sind mehr als die %2, die ein Bild fasst; gib einen Namen, der auf .pdf endet</translation>
    </message>
    <message id="fault.E126">
        <source>&quot;%1&quot; is no key; write a letter from A to G, with flat or sharp, for example &quot;E flat&quot;</source>
        <translation>„%1“ ist keine Tonart; schreib einen Buchstaben von A bis G, mit flat oder sharp, zum Beispiel „E flat“</translation>
    </message>
    <message id="fault.E127">
        <source>&quot;%1&quot; is no note; write a letter, its sharps or flats and the octave, for example Bb3 or F#6</source>
        <translation>„%1“ ist kein Ton; schreib einen Buchstaben, seine Kreuze oder Been und die Oktave, zum Beispiel Bb3 oder F#6</translation>
    </message>
    <message id="fault.E128">
        <source>%1 has no tonic from %2 to %3; give a wider range, or another key</source>
        <translation>%1 hat keinen Grundton von %2 bis %3; gib einen größeren Umfang an, oder eine andere Tonart</translation>
    </message>
    <message id="fault.E130">
        <source>&quot;%1&quot; is no part of this score; write the number or the name of one of its %2, piolo bars FILE lists them</source>
        <translation>„%1“ ist keine Stimme dieser Partitur; schreib Nummer oder Namen einer ihrer %2, piolo bars DATEI nennt sie</translation>
    </message>
    <message id="fault.E131">
        <source>&quot;%1&quot; is no bar of this part from there on; its bars go from %2 to %3, write one of them, the earlier one first</source>
        <translation>„%1“ ist von dort an kein Takt dieser Stimme; ihre Takte gehen von %2 bis %3, schreib einen davon, den früheren zuerst</translation>
    </message>
    <message id="fault.E201">
        <source>&quot;%1&quot; is no mark; write clean, miss, back, or tempo and a number</source>
        <translation>„%1“ ist keine Markierung; schreib clean, miss, back, oder tempo und eine Zahl</translation>
    </message>
    <message id="fault.E202">
        <source>&quot;%1&quot; is no tempo; write 10 to 400 with at most three decimals, for example tempo 72.5</source>
        <translation>„%1“ ist kein Tempo; schreib 10 bis 400 mit höchstens drei Nachkommastellen, zum Beispiel tempo 72.5</translation>
    </message>
    <message id="fault.E203">
        <source>the line is no JSON object; it is kept and not counted, mend it by hand or leave it</source>
        <translation>die Zeile ist kein JSON-Objekt; sie wird aufbewahrt und nicht gezählt, bessere sie von Hand aus oder lass sie</translation>
    </message>
    <message id="fault.E204">
        <source>the key &quot;%1&quot; is missing; the line is kept and not counted, mend it by hand or leave it</source>
        <translation>der Schlüssel „%1“ fehlt; die Zeile wird aufbewahrt und nicht gezählt, bessere sie von Hand aus oder lass sie</translation>
    </message>
    <message id="fault.E205">
        <source>the key &quot;%1&quot; has a value that cannot be[: %2]; the line is kept and not counted, mend it by hand or leave it</source>
        <translation>der Schlüssel „%1“ hat einen unmöglichen Wert[: %2]; die Zeile wird aufbewahrt und nicht gezählt, bessere sie von Hand aus oder lass sie</translation>
    </message>
    <message id="fault.E206">
        <source>the line is of a newer format[ (%1)]; it is kept and not counted, use a newer Piolo</source>
        <translation>die Zeile hat ein neueres Format[ (%1)]; sie wird aufbewahrt und nicht gezählt, nimm ein neueres Piolo</translation>
    </message>
    <message id="fault.E207">
        <source>&quot;%1&quot; is a kind of fact that is not known; the line is kept and not counted, use a newer Piolo</source>
        <translation>„%1“ ist eine unbekannte Art von Eintrag; die Zeile wird aufbewahrt und nicht gezählt, nimm ein neueres Piolo</translation>
    </message>
    <message id="fault.E208">
        <source>the last line was cut short; it is kept and not counted, wait until the file has been copied whole</source>
        <translation>die letzte Zeile ist abgeschnitten; sie wird aufbewahrt und nicht gezählt, warte, bis die Datei ganz kopiert ist</translation>
    </message>
    <message id="fault.E209">
        <source>the id %1 stands for two different facts; one of them is counted, take the wrong line out by hand</source>
        <translation>die Kennung %1 steht für zwei verschiedene Einträge; einer davon zählt, nimm die falsche Zeile von Hand heraus</translation>
    </message>
    <message id="fault.E210">
        <source>the line is not UTF-8 text; it is kept and not counted, mend it by hand or leave it</source>
        <translation>die Zeile ist kein UTF-8-Text; sie wird aufbewahrt und nicht gezählt, bessere sie von Hand aus oder lass sie</translation>
    </message>
    <message id="fault.E211">
        <source>the line is longer than 65536 bytes; it is not counted, shorten it or take it out</source>
        <translation>die Zeile ist länger als 65536 Bytes; sie zählt nicht, kürze sie oder nimm sie heraus</translation>
    </message>
    <message id="fault.E212">
        <source>the id %1 is named here and recorded nowhere; bring the journal files of all devices into the folder</source>
        <translation>die Kennung %1 wird hier genannt und ist nirgends aufgezeichnet; bring die Tagebuchdateien aller Geräte in den Ordner</translation>
    </message>
    <message id="fault.E213">
        <source>this is no WAV file of one channel in float32; give one as piolo click writes it</source>
        <translation>dies ist keine WAV-Datei mit einem Kanal in float32; gib eine an, wie piolo click sie schreibt</translation>
    </message>
    <message id="fault.E214">
        <source>the line is not as it was written; it is kept and not counted, put it back from a copy or take its &quot;sum&quot; out</source>
        <translation>die Zeile ist nicht, wie sie geschrieben wurde; sie wird aufbewahrt und nicht gezählt, hol sie aus einer Kopie zurück oder nimm ihr &quot;sum&quot; heraus</translation>
    </message>
    <message id="fault.E221">
        <source>this is no passage file, or one that was cut short; nothing was taken from it, have it sent again</source>
        <translation>dies ist keine Stellendatei, oder eine abgeschnittene; nichts wurde daraus übernommen, lass sie noch einmal schicken</translation>
    </message>
    <message id="fault.E222">
        <source>the key &quot;%1&quot; is missing; nothing was taken from the file, mend it by hand or have it sent again</source>
        <translation>der Schlüssel „%1“ fehlt; nichts wurde aus der Datei übernommen, bessere sie von Hand aus oder lass sie noch einmal schicken</translation>
    </message>
    <message id="fault.E223">
        <source>the key &quot;%1&quot; has a value that cannot be[: %2]; nothing was taken from the file, mend it by hand or have it sent again</source>
        <translation>der Schlüssel „%1“ hat einen unmöglichen Wert[: %2]; nichts wurde aus der Datei übernommen, bessere sie von Hand aus oder lass sie noch einmal schicken</translation>
    </message>
    <message id="fault.E224">
        <source>the file is of a newer format[ (%1)]; nothing was taken from it, use a newer Piolo</source>
        <translation>die Datei hat ein neueres Format[ (%1)]; nichts wurde daraus übernommen, nimm ein neueres Piolo</translation>
    </message>
    <message id="fault.E225">
        <source>the id %1 stands here for the second time; nothing was taken from the file, take one of the two out by hand</source>
        <translation>die Kennung %1 steht hier zum zweiten Mal; nichts wurde aus der Datei übernommen, nimm eines der beiden von Hand heraus</translation>
    </message>
    <message id="fault.E226">
        <source>the passage &quot;%1&quot; belongs to a piece that is not in the file[ (%2)]; nothing was taken from it, have it sent again with its piece</source>
        <translation>die Stelle „%1“ gehört zu einem Stück, das nicht in der Datei ist[ (%2)]; nichts wurde daraus übernommen, lass sie mit ihrem Stück schicken</translation>
    </message>
    <message id="fault.E227">
        <source>this is more than a passage file holds[ (%1)]; make several files of it, or shorten its names</source>
        <translation>das ist mehr, als eine Stellendatei fasst[ (%1)]; mach mehrere Dateien daraus, oder kürze die Namen</translation>
    </message>
    <message id="fault.E241">
        <source>this is no MusicXML score; save it as MusicXML in the program that it was written with</source>
        <translation>dies ist keine Partitur in MusicXML; speichere sie als MusicXML in dem Programm, mit dem sie geschrieben wurde</translation>
    </message>
    <message id="fault.E242">
        <source>the score goes bar by bar through all parts (score-timewise); save it part by part (score-partwise)</source>
        <translation>die Partitur geht Takt für Takt durch alle Stimmen (score-timewise); speichere sie Stimme für Stimme (score-partwise)</translation>
    </message>
    <message id="fault.E243">
        <source>the XML breaks off or is damaged here[ (%1)]; save the score anew, or have it sent again</source>
        <translation>das XML bricht hier ab oder ist beschädigt[ (%1)]; speichere die Partitur neu, oder lass sie noch einmal schicken</translation>
    </message>
    <message id="fault.E244">
        <source>the element &quot;%1&quot; holds what cannot be[: %2]; save the score anew, or mend it by hand</source>
        <translation>das Element „%1“ enthält Unmögliches[: %2]; speichere die Partitur neu, oder bessere sie von Hand aus</translation>
    </message>
    <message id="fault.E245">
        <source>the element &quot;%1&quot; is missing[ in &quot;%2&quot;]; save the score anew, or mend it by hand</source>
        <translation>das Element „%1“ fehlt[ in „%2“]; speichere die Partitur neu, oder bessere sie von Hand aus</translation>
    </message>
    <message id="fault.E246">
        <source>this is more than a score may hold[ (%1)]; save the part that is to be practised by itself</source>
        <translation>das ist mehr, als eine Partitur haben darf[ (%1)]; speichere den Teil, der geübt werden soll, für sich</translation>
    </message>
    <message id="fault.E247">
        <source>the packed file is damaged or was cut short; have it sent again, or save it unpacked</source>
        <translation>die gepackte Datei ist beschädigt oder abgeschnitten; lass sie noch einmal schicken, oder speichere sie ungepackt</translation>
    </message>
    <message id="fault.E248">
        <source>the packed file has no score at the place that it names[ (%1)]; save it anew, or unpacked</source>
        <translation>die gepackte Datei hat an der genannten Stelle keine Partitur[ (%1)]; speichere sie neu, oder ungepackt</translation>
    </message>
    <message id="fault.E249">
        <source>the file declares names of its own in its DOCTYPE, which are not read; save the score anew</source>
        <translation>die Datei erklärt in ihrem DOCTYPE eigene Namen, die nicht gelesen werden; speichere die Partitur neu</translation>
    </message>
    <message id="fault.E250">
        <source>the text is not in the encoding that it says, or in one that is not read; save the score as UTF-8 or UTF-16</source>
        <translation>der Text hat nicht die Kodierung, die er angibt, oder eine, die nicht gelesen wird; speichere die Partitur als UTF-8 oder UTF-16</translation>
    </message>
    <message id="fault.E251">
        <source>bar %1 has a %2, so that the bars picked are not played straight through; pick bars on one side of it</source>
        <translation>Takt %1 hat ein Zeichen (%2), mit dem die gewählten Takte nicht geradewegs gespielt werden; wähle Takte auf einer Seite davon</translation>
    </message>
    <message id="fault.E252">
        <source>the %2 changes in bar %1, and a passage has one; pick bars on one side of it</source>
        <translation>in Takt %1 wechselt etwas (%2), das in einer Stelle gleich bleibt; wähle Takte auf einer Seite davon</translation>
    </message>
    <message id="fault.E253">
        <source>bar %1 has a meter that cannot be counted here[ (%2)]; pick other bars</source>
        <translation>Takt %1 hat eine Taktart, die sich hier nicht zählen lässt[ (%2)]; wähle andere Takte</translation>
    </message>
    <message id="fault.E254">
        <source>bar %1 is no whole bar: it holds %2 in %3; pick bars on one side of it</source>
        <translation>Takt %1 ist kein ganzer Takt: Er hat %2 in %3; wähle Takte auf einer Seite davon</translation>
    </message>
    <message id="fault.E255">
        <source>bars %1 to %2 are no 1 to 999 whole bars; pick more, or fewer</source>
        <translation>Takte %1 bis %2 sind nicht 1 bis 999 ganze Takte; wähle mehr oder weniger</translation>
    </message>
    <message id="fault.E261">
        <source>cannot be felt in that beat: %1 would not come out even; change it first</source>
        <translation>lässt sich in diesem Schlag nicht fühlen: %1 ginge nicht auf; ändere das zuerst</translation>
    </message>
    <message id="fault.E265">
        <source>the notes of &quot;%1&quot; are not known; pick its bars from a score in MusicXML, with piolo bars or in the window</source>
        <translation>die Noten von „%1“ sind nicht bekannt; wähle die Takte aus einer Partitur in MusicXML, mit piolo bars oder im Fenster</translation>
    </message>
    <message id="fault.E270">
        <source>bar %1: a note lies outside the bars of the passage and cannot be written as MusicXML; make the passage longer, or pick its bars anew</source>
        <translation>Takt %1: eine Note liegt außerhalb der Takte der Stelle und lässt sich nicht als MusicXML schreiben; mach die Stelle länger, oder wähle ihre Takte neu</translation>
    </message>
    <message id="fault.E271">
        <source>bar %1: a note begins while another sounds and cannot be written as MusicXML; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>Takt %1: eine Note beginnt, während eine andere klingt, und lässt sich nicht als MusicXML schreiben; exportiere die Stelle als .piolo.json, darin bleibt sie, wie sie ist</translation>
    </message>
    <message id="fault.E272">
        <source>bar %1: a note is shorter than any note value and cannot be written as MusicXML; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>Takt %1: eine Note ist kürzer als jeder Notenwert und lässt sich nicht als MusicXML schreiben; exportiere die Stelle als .piolo.json, darin bleibt sie, wie sie ist</translation>
    </message>
    <message id="fault.E273">
        <source>the written %1 sounds as MIDI number %2, transposed otherwise than its part; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>das notierte %1 klingt als MIDI-Nummer %2, anders transponiert als seine Stimme; exportiere die Stelle als .piolo.json, darin bleibt sie, wie sie ist</translation>
    </message>
    <message id="fault.E281">
        <source>this is no PNG, JPEG or PDF; save or scan the music as one of them</source>
        <translation>dies ist kein PNG, JPEG oder PDF; speichere oder scanne die Noten als eines davon</translation>
    </message>
    <message id="fault.E282">
        <source>the picture is damaged or was cut short[ (%1)]; save it anew, or have it sent again</source>
        <translation>das Bild ist beschädigt oder abgeschnitten[ (%1)]; speichere es neu, oder lass es noch einmal schicken</translation>
    </message>
    <message id="fault.E283">
        <source>this is more than a picture of music may hold[ (%1)]; scan or save the page by itself, or smaller</source>
        <translation>das ist mehr, als ein Bild von Noten haben darf[ (%1)]; scanne oder speichere die Seite für sich, oder kleiner</translation>
    </message>
    <message id="fault.E284">
        <source>the PDF asks for a password; save it without one</source>
        <translation>das PDF verlangt ein Kennwort; speichere es ohne</translation>
    </message>
    <message id="fault.E285">
        <source>the PDF has no page %1; choose 1 to %2</source>
        <translation>das PDF hat keine Seite %1; wähle 1 bis %2</translation>
    </message>
    <message id="fault.E286">
        <source>page %1 took too long to draw; save it as a picture in another program</source>
        <translation>Seite %1 zu zeichnen dauerte zu lange; speichere sie in einem anderen Programm als Bild</translation>
    </message>
    <message id="fault.E301">
        <source>cannot be read[ (%1)]; check the name and its permissions</source>
        <translation>lässt sich nicht lesen[ (%1)]; prüfe den Namen und die Rechte</translation>
    </message>
    <message id="fault.E302">
        <source>cannot be written[ (%1)]; check the folder and its permissions</source>
        <translation>lässt sich nicht schreiben[ (%1)]; prüfe den Ordner und seine Rechte</translation>
    </message>
    <message id="fault.E303">
        <source>the folder cannot be made[ (%1)]; choose another or check its permissions</source>
        <translation>der Ordner lässt sich nicht anlegen[ (%1)]; wähle einen anderen oder prüfe seine Rechte</translation>
    </message>
    <message id="fault.E304">
        <source>the sound would be larger than 4 GiB; ask for fewer bars or a lower rate</source>
        <translation>der Ton wäre größer als 4 GiB; nimm weniger Takte oder eine niedrigere Abtastrate</translation>
    </message>
    <message id="fault.E305">
        <source>another window writes to this practice folder: nothing is recorded here; go on there, or close it and open this one again</source>
        <translation>ein anderes Fenster schreibt in diesen Übeordner: hier wird nichts aufgezeichnet; mach dort weiter, oder schließ es und öffne dieses neu</translation>
    </message>
    <message id="fault.E306">
        <source>this is no practice folder; name a folder</source>
        <translation>dies ist kein Übeordner; nenne einen Ordner</translation>
    </message>
    <message id="fault.E307">
        <source>the disk is full; make room and try again</source>
        <translation>die Platte ist voll; schaff Platz und versuch es noch einmal</translation>
    </message>
    <message id="fault.E308">
        <source>there is no display to open the window on; start it in a graphical session, or see piolo --help for what works without one</source>
        <translation>es gibt keinen Bildschirm für das Fenster; starte es in einer grafischen Sitzung, oder sieh mit piolo --help, was ohne geht</translation>
    </message>
    <message id="fault.E321">
        <source>a window has this folder open; close it and try again</source>
        <translation>ein Fenster hat diesen Ordner offen; schließ es und versuch es noch einmal</translation>
    </message>
    <message id="fault.E322">
        <source>the folder holds no passages and no pieces; name the practice folder they are in</source>
        <translation>der Ordner hat keine Stellen und keine Stücke; nenne den Übeordner, in dem sie sind</translation>
    </message>
    <message id="fault.E323">
        <source>not everything could be saved in time; look after the disk and import the file again, what is saved counts once</source>
        <translation>nicht alles ließ sich rechtzeitig speichern; sieh nach der Platte und hol die Datei noch einmal, Gespeichertes zählt nur einmal</translation>
    </message>
    <message id="fault.E401">
        <source>no sound: the click goes on silently; connect a device or choose one in the settings, it is heard again from the next bar</source>
        <translation>kein Ton: der Klick läuft stumm weiter; schließ ein Gerät an oder wähle eines in den Einstellungen, ab dem nächsten Takt hörst du ihn wieder</translation>
    </message>
    <message id="fault.E403">
        <source>the sound is lost: the click goes on silently; start Piolo again to hear it, nothing recorded is lost</source>
        <translation>der Ton ist weg: der Klick läuft stumm weiter; starte Piolo neu, um ihn zu hören, von den Aufzeichnungen geht nichts verloren</translation>
    </message>
    <message id="fault.E404">
        <source>the computer fell behind: keys that had to wait %1, beats not shown %2; close other programs, no mark was lost</source>
        <translation>der Rechner kam nicht nach: Tasten, die warten mussten: %1, nicht gezeigte Schläge: %2; schließ andere Programme, keine Markierung ging verloren</translation>
    </message>
    <message id="files.back-to-form">
        <source>Back to the form</source>
        <translation>Zurück zum Formular</translation>
    </message>
    <message id="files.changes">
        <source>What the file would change</source>
        <translation>Was die Datei ändern würde</translation>
    </message>
    <message id="files.edited-here">
        <source>▲ edited here since it was imported</source>
        <translation>▲ hier bearbeitet, seit es übernommen wurde</translation>
    </message>
    <message id="files.empty">
        <source>There is nothing in this file.</source>
        <translation>In dieser Datei ist nichts.</translation>
    </message>
    <message id="files.export">
        <source>Write a file</source>
        <translation>Datei schreiben</translation>
    </message>
    <message id="files.export.file">
        <source>File, ending in .piolo.json</source>
        <translation>Datei mit der Endung .piolo.json</translation>
    </message>
    <message id="files.export.hint">
        <source>Passages and their pieces for another player; nothing of what was played is in the file.</source>
        <translation>Stellen und ihre Stücke für jemand anderen; nichts von dem, was gespielt wurde, steht in der Datei.</translation>
    </message>
    <message id="files.export.tick">
        <source>Tick the passages to write.</source>
        <translation>Hake die Stellen an, die in die Datei sollen.</translation>
    </message>
    <message id="files.export.write">
        <source>Write the file</source>
        <translation>Datei schreiben</translation>
    </message>
    <message id="files.figures">
        <source>%1 new, %2 the same, %3 different or removed here</source>
        <translation>%1 neu, %2 gleich, %3 anders oder hier entfernt</translation>
    </message>
    <message id="files.import">
        <source>Take from a file</source>
        <translation>Aus Datei holen</translation>
    </message>
    <message id="files.not-yet">
        <source>Nothing is taken before you have seen what it would change.</source>
        <translation>Nichts wird übernommen, bevor du gesehen hast, was es ändern würde.</translation>
    </message>
    <message id="files.open">
        <source>Look into it</source>
        <translation>Hineinsehen</translation>
    </message>
    <message id="files.open.file">
        <source>File (.piolo.json): type its place or drop it here</source>
        <translation>Datei (.piolo.json): Ort eintippen oder hierher ziehen</translation>
    </message>
    <message id="files.passage">
        <source>%1: “%2”</source>
        <translation>%1: „%2“</translation>
    </message>
    <message id="files.piece">
        <source>%1: the piece “%2”</source>
        <translation>%1: das Stück „%2“</translation>
    </message>
    <message id="files.reading">
        <source>Reading …</source>
        <translation>Liest …</translation>
    </message>
    <message id="files.take">
        <source>Take it</source>
        <translation>Übernehmen</translation>
    </message>
    <message id="files.taken">
        <source>%1 added, %2 as in the file now, %3 left as they were.</source>
        <translation>%1 hinzugefügt, %2 jetzt wie in der Datei, %3 gelassen, wie sie waren.</translation>
    </message>
    <message id="files.tick-all">
        <source>Tick all that differ</source>
        <translation>Alles Abweichende anhaken</translation>
    </message>
    <message id="files.tick-none">
        <source>Tick none</source>
        <translation>Nichts anhaken</translation>
    </message>
    <message id="files.tick.hint">
        <source>What has no tick stays as it is here; what has one becomes as in the file. What is new is added.</source>
        <translation>Was keinen Haken hat, bleibt hier, wie es ist; was einen hat, wird wie in der Datei. Neues kommt hinzu.</translation>
    </message>
    <message id="files.title">
        <source>Passage files</source>
        <translation>Stellendateien</translation>
    </message>
    <message id="files.unchanged">
        <source>Everything in this file is here already: nothing would change.</source>
        <translation>Alles in dieser Datei ist schon hier: Nichts würde sich ändern.</translation>
    </message>
    <message id="files.what-to-do">
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message id="form.about-climb">
        <source>at %1 about %2 to the next climb at nine clean in ten</source>
        <translation>bei %1 etwa %2 bis zum nächsten Anstieg, wenn neun von zehn sauber sind</translation>
    </message>
    <message id="form.about-secure">
        <source>at the target about %1 to a full row at nine clean in ten</source>
        <translation>am Ziel etwa %1 bis zur vollen Serie, wenn neun von zehn sauber sind</translation>
    </message>
    <message id="form.accent">
        <source>Beat %1: %2</source>
        <translation>Schlag %1: %2</translation>
    </message>
    <message id="form.articulation">
        <source>Articulation</source>
        <translation>Artikulation</translation>
    </message>
    <message id="form.bars">
        <source>Bars</source>
        <translation>Takte</translation>
    </message>
    <message id="form.bars.open">
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message id="form.beat">
        <source>Beat</source>
        <translation>Schlag</translation>
    </message>
    <message id="form.bpm">
        <source>BPM</source>
        <translation>BPM</translation>
    </message>
    <message id="form.breath">
        <source>Breath, beats</source>
        <translation>Atem, Schläge</translation>
    </message>
    <message id="form.clean-runs">
        <source>Clean in a row</source>
        <translation>Sauber in Folge</translation>
    </message>
    <message id="form.click">
        <source>The click: %1</source>
        <translation>Der Klick: %1</translation>
    </message>
    <message id="form.click.every-beat">
        <source>The click: every beat, as the meter says</source>
        <translation>Der Klick: jeder Schlag, wie die Taktart sagt</translation>
    </message>
    <message id="form.climb">
        <source>then climb</source>
        <translation>dann steigen um</translation>
    </message>
    <message id="form.count-in">
        <source>Count-in, bars</source>
        <translation>Einzähltakte</translation>
    </message>
    <message id="form.discard">
        <source>Throw away changes</source>
        <translation>Änderungen verwerfen</translation>
    </message>
    <message id="form.drill">
        <source>Drill it</source>
        <translation>Üben</translation>
    </message>
    <message id="form.drop">
        <source>A miss drops</source>
        <translation>Ein Fehler senkt um</translation>
    </message>
    <message id="form.edit-piece">
        <source>Change the piece itself: its name, instrument, date</source>
        <translation>Das Stück selbst ändern: Name, Instrument, Termin</translation>
    </message>
    <message id="form.fault.above-start">
        <source>at most the start, %1</source>
        <translation>höchstens der Start, %1</translation>
    </message>
    <message id="form.fault.beat">
        <source>this beat does not fill a bar of that meter</source>
        <translation>dieser Schlag füllt keinen Takt dieser Taktart</translation>
    </message>
    <message id="form.fault.below-start">
        <source>at least the start, %1</source>
        <translation>mindestens der Start, %1</translation>
    </message>
    <message id="form.fault.breaths">
        <source>places in their order, such as 43, 45:3 or 47:1+2; at most %1</source>
        <translation>Stellen der Reihe nach, etwa 43, 45:3 oder 47:1+2; höchstens %1</translation>
    </message>
    <message id="form.fault.groups">
        <source>groups that fill the bar and begin on beats, such as 2+2+3</source>
        <translation>Gruppen, die den Takt füllen und auf Schlägen beginnen, etwa 2+2+3</translation>
    </message>
    <message id="form.fault.letters">
        <source>at most %1 letters</source>
        <translation>höchstens %1 Buchstaben</translation>
    </message>
    <message id="form.fault.meter">
        <source>a meter such as 4/4, 6/8 or 7/8</source>
        <translation>eine Taktart wie 4/4, 6/8 oder 7/8</translation>
    </message>
    <message id="form.fault.pick-up">
        <source>a length such as 1/8 or 1/4, or nothing</source>
        <translation>eine Länge wie 1/8 oder 1/4, oder nichts</translation>
    </message>
    <message id="form.fault.pick-up-too-long">
        <source>a pick-up is shorter than a bar</source>
        <translation>ein Auftakt ist kürzer als ein Takt</translation>
    </message>
    <message id="form.fault.swing">
        <source>a ratio from 1:1 to 3:1, such as 2:1 or 3:2</source>
        <translation>ein Verhältnis von 1:1 bis 3:1, etwa 2:1 oder 3:2</translation>
    </message>
    <message id="form.fault.tempo">
        <source>a tempo from 10 to 400, such as 84 or 72.5</source>
        <translation>ein Tempo von 10 bis 400, etwa 84 oder 72,5</translation>
    </message>
    <message id="form.fault.too-long">
        <source>too long to be kept</source>
        <translation>zu lang zum Behalten</translation>
    </message>
    <message id="form.fault.whole">
        <source>a whole number from %1 to %2</source>
        <translation>eine ganze Zahl von %1 bis %2</translation>
    </message>
    <message id="form.fingering">
        <source>Fingering</source>
        <translation>Griffe</translation>
    </message>
    <message id="form.fingering.example">
        <source>side key for the B flat, left hand first</source>
        <translation>Seitenklappe fürs B, links zuerst</translation>
    </message>
    <message id="form.first-bar">
        <source>First bar</source>
        <translation>Erster Takt</translation>
    </message>
    <message id="form.floor">
        <source>Never below</source>
        <translation>Nie unter</translation>
    </message>
    <message id="form.gentle">
        <source>Gentle near the target: a miss drops one climb there; at the target only the second in a row drops</source>
        <translation>Sanft nahe am Ziel: ein Fehler senkt dort um einen Anstieg; am Ziel senkt erst der zweite in Folge</translation>
    </message>
    <message id="form.group">
        <source>Notes in a group</source>
        <translation>Noten je Gruppe</translation>
    </message>
    <message id="form.groups">
        <source>Groups</source>
        <translation>Gruppen</translation>
    </message>
    <message id="form.landing">
        <source>Landing note</source>
        <translation>Schlussnote</translation>
    </message>
    <message id="form.made-of">
        <source>Made of “%1”.</source>
        <translation>Aus „%1“ gemacht.</translation>
    </message>
    <message id="form.made-of-another">
        <source>Made of another passage.</source>
        <translation>Aus einer anderen Stelle gemacht.</translation>
    </message>
    <message id="form.meter">
        <source>Meter</source>
        <translation>Taktart</translation>
    </message>
    <message id="form.name">
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message id="form.new">
        <source>A new passage</source>
        <translation>Eine neue Stelle</translation>
    </message>
    <message id="form.new-piece">
        <source>A new piece…</source>
        <translation>Ein neues Stück…</translation>
    </message>
    <message id="form.none">
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message id="form.notches">
        <source>notches</source>
        <translation>Rasten</translation>
    </message>
    <message id="form.on-its-own">
        <source>On its own</source>
        <translation>Für sich</translation>
    </message>
    <message id="form.open-ended">
        <source>Open-ended: I end each run</source>
        <translation>Offenes Ende: ich beende jeden Durchlauf</translation>
    </message>
    <message id="form.pick-up">
        <source>Pick-up</source>
        <translation>Auftakt</translation>
    </message>
    <message id="form.piece">
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message id="form.play-through">
        <source>Play the piece through</source>
        <translation>Stück durchspielen</translation>
    </message>
    <message id="form.remove">
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message id="form.rhythm">
        <source>Rhythm</source>
        <translation>Rhythmus</translation>
    </message>
    <message id="form.rule.take">
        <source>Take %1 in a row</source>
        <translation>Nimm %1 in Folge</translation>
    </message>
    <message id="form.run">
        <source>%1 a run · %2 · %3 to a full row at the target with no miss at all.</source>
        <translation>%1 je Durchlauf · %2 · %3 bis zur vollen Serie am Ziel, ganz ohne Fehler.</translation>
    </message>
    <message id="form.run-long">
        <source>A run of %1 is long: shorter parts come clean sooner.</source>
        <translation>Ein Durchlauf von %1 ist lang: Kürzere Teile werden eher sauber.</translation>
    </message>
    <message id="form.run-long-streak">
        <source>A run of %1 is long for %2 in a row: %3 would do.</source>
        <translation>Ein Durchlauf von %1 ist lang für %2 in Folge: %3 reichen.</translation>
    </message>
    <message id="form.run-open">
        <source>You end each run yourself · %1.</source>
        <translation>Du beendest jeden Durchlauf selbst · %1.</translation>
    </message>
    <message id="form.save">
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message id="form.save-and-drill">
        <source>Save and drill</source>
        <translation>Speichern und üben</translation>
    </message>
    <message id="form.saved">
        <source>✓ saved as %1</source>
        <translation>✓ gespeichert als %1</translation>
    </message>
    <message id="form.settles">
        <source>About %1 runs will be clean where this settles.</source>
        <translation>Etwa %1 Durchläufe werden sauber sein, wo sich das einpendelt.</translation>
    </message>
    <message id="form.start">
        <source>Start at</source>
        <translation>Start bei</translation>
    </message>
    <message id="form.step">
        <source>Steps in</source>
        <translation>Schritte in</translation>
    </message>
    <message id="form.subdivision">
        <source>Subdivision</source>
        <translation>Unterteilung</translation>
    </message>
    <message id="form.target">
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message id="form.unsaved">
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
    <message id="help.back">
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message id="help.care.title">
        <source>Take care of yourself</source>
        <translation>Gib auf dich acht</translation>
    </message>
    <message id="help.care.why.breaks">
        <source>Breaks, a warm-up, a daily limit and no sudden increase are what a sheet for students of two professional bodies advises (NASM and PAMA).</source>
        <translation>Pausen, Aufwärmen, eine Grenze für den Tag und keine plötzliche Steigerung: das rät ein Blatt zweier Fachverbände für Studierende (NASM und PAMA).</translation>
    </message>
    <message id="help.care.why.complaints">
        <source>Of 442 music students without a complaint from playing about half had one within a year; fatigue and a change in how active they were raised the risk (Cruder and others 2023).</source>
        <translation>Von 442 Musikstudierenden ohne Beschwerden vom Spielen hatte binnen eines Jahres etwa die Hälfte welche; Müdigkeit und eine Änderung darin, wie viel sie sich bewegten, erhöhten das Risiko (Cruder und andere 2023).</translation>
    </message>
    <message id="help.care.why.loudness">
        <source>Of forty students about half would have passed a day&apos;s dose of sound by their own practice alone (Phillips and Mace 2008).</source>
        <translation>Von vierzig Studierenden hätte etwa die Hälfte allein durch das eigene Üben die Tagesdosis an Schall überschritten (Phillips und Mace 2008).</translation>
    </message>
    <message id="help.chapters">
        <source>Chapters</source>
        <translation>Kapitel</translation>
    </message>
    <message id="help.drill.key.clean">
        <source>end an open-ended run clean</source>
        <translation>einen Durchlauf mit offenem Ende sauber beenden</translation>
    </message>
    <message id="help.drill.key.hear">
        <source>hear the passage first, where its bars came from a score</source>
        <translation>die Stelle erst anhören, wenn ihre Takte aus einer Partitur kommen</translation>
    </message>
    <message id="help.drill.key.miss">
        <source>start; while the click runs, mark a miss</source>
        <translation>Start; während der Klick läuft: ein Fehler</translation>
    </message>
    <message id="help.drill.key.next">
        <source>the next passage, while stopped</source>
        <translation>die nächste Stelle, im Stand</translation>
    </message>
    <message id="help.drill.key.pedal">
        <source>everything: a press starts or marks a miss, two presses take back; held, it stops the click, and while stopped it opens the next passage</source>
        <translation>alles: ein Druck startet oder markiert einen Fehler, zwei nehmen zurück; gehalten stoppt es den Klick, und im Stand öffnet es die nächste Stelle</translation>
    </message>
    <message id="help.drill.key.stop">
        <source>stop</source>
        <translation>anhalten</translation>
    </message>
    <message id="help.drill.key.take-back">
        <source>take back the last mark</source>
        <translation>die letzte Markierung zurücknehmen</translation>
    </message>
    <message id="help.drill.key.tempo">
        <source>the tempo up and down, while stopped</source>
        <translation>das Tempo hinauf und hinunter, im Stand</translation>
    </message>
    <message id="help.drill.key.try">
        <source>one try at the target</source>
        <translation>ein Versuch am Ziel</translation>
    </message>
    <message id="help.drill.key.up-down">
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message id="help.drill.title">
        <source>Drill</source>
        <translation>Üben</translation>
    </message>
    <message id="help.drill.what.cycle">
        <source>Count-in, run, breath, and again. A run that reaches its last bar without a miss is clean by itself. A miss drops the tempo, never below the floor; a full row of clean runs climbs one step, never past the target. A miss or a climb starts the row again.</source>
        <translation>Einzähler, Durchlauf, Atem, und von vorn. Ein Durchlauf, der ohne Fehler seinen letzten Takt erreicht, ist von selbst sauber. Ein Fehler senkt das Tempo, nie unter die Untergrenze; eine volle Serie sauberer Durchläufe steigt um einen Schritt, nie über das Ziel. Nach einem Fehler oder Anstieg beginnt die Serie neu.</translation>
    </message>
    <message id="help.drill.what.late">
        <source>Pressed late? A press in the breath after a clean run makes that run a miss after all.</source>
        <translation>Zu spät gedrückt? Ein Druck in der Atempause nach einem sauberen Durchlauf macht ihn doch noch zu einem mit Fehler.</translation>
    </message>
    <message id="help.drill.what.secure">
        <source>A full row at the target counts as secure. Secure on three different days, and the passage is secure as a whole. A new day opens two rungs below the last full row. The settings change both.</source>
        <translation>Eine volle Serie am Ziel zählt als sicher. An drei verschiedenen Tagen sicher, und die Stelle ist es im Ganzen. Ein neuer Tag beginnt zwei Sprossen unter der letzten vollen Serie. Beides ändern die Einstellungen.</translation>
    </message>
    <message id="help.drill.what.ways">
        <source>Felt as: quarter = 60 and eighth = 120 are one speed; another beat turns everything over and keeps your row. Find the tempo: name one you think you can play, and each miss drops until a full row has found yours. A try, and runs without the click, in context or at half tempo, move nothing. Each articulation has a best of its own.</source>
        <translation>Gefühlt in: Viertel = 60 und Achtel = 120 sind dieselbe Geschwindigkeit; ein anderer Schlag rechnet alles um und behält deine Serie. Tempo suchen: nenne eines, das du dir zutraust, und jeder Fehler senkt es, bis eine volle Serie deines gefunden hat. Ein Versuch sowie Durchläufe ohne Klick, im Zusammenhang oder im halben Tempo bewegen nichts. Jede Artikulation hat ihr eigenes Bestes.</translation>
    </message>
    <message id="help.drill.why.climbing">
        <source>Climbing step by step is customary. It is not shown to beat other orders of tempi: among sixty school wind players a steady climb, the full tempo and both in turn made no significant difference (Henley 2001). The rule makes for few misses and an honest record.</source>
        <translation>Schrittweise zu steigern ist üblich. Dass es andere Reihenfolgen der Tempi übertrifft, ist nicht gezeigt: bei sechzig Schülerinnen und Schülern an Blasinstrumenten machten stetiges Steigern, volles Tempo und beides im Wechsel keinen bedeutsamen Unterschied (Henley 2001). Die Regel sorgt für wenige Fehler und ein ehrliches Protokoll.</translation>
    </message>
    <message id="help.drill.why.full-streak">
        <source>A full row is no proof: five clean of five only say, at 95 %, that more than 54 of 100 runs are clean.</source>
        <translation>Eine volle Serie ist kein Beweis: fünf von fünf sauber sagt, zu 95 %, nur, dass mehr als 54 von 100 Durchläufen sauber sind.</translation>
    </message>
    <message id="help.drill.why.going-on">
        <source>Going on after the first success helps to keep what was learned, to a moderate degree and in many kinds of tasks (Driskell, Willis and Copper 1992); how much in music is not known.</source>
        <translation>Nach dem ersten Erfolg weiterzuüben hilft, Gelerntes zu behalten, in mäßigem Grad und bei vielerlei Aufgaben (Driskell, Willis und Copper 1992); wie sehr in der Musik, ist nicht bekannt.</translation>
    </message>
    <message id="help.drill.why.staircase">
        <source>Drop and climb make a staircase as hearing tests use it. It settles about where so many runs are clean as its steps decide: with five in a row, drop 4 and climb 2, about 92 of 100 (Levitt 1971, Kaernbach 1991, García-Pérez 1998). The formula supposes a player who neither tires nor learns.</source>
        <translation>Abstieg und Anstieg bilden eine Treppe, wie Hörprüfungen sie verwenden. Sie pendelt sich etwa da ein, wo so viele Durchläufe sauber sind, wie ihre Schritte es bestimmen: mit fünf in Folge, Abstieg 4 und Anstieg 2 etwa 92 von 100 (Levitt 1971, Kaernbach 1991, García-Pérez 1998). Die Formel setzt jemanden voraus, der weder ermüdet noch dazulernt.</translation>
    </message>
    <message id="help.drill.why.tempo-heard">
        <source>A change of tempo below about three in a hundred is hard to hear (Drake and Botte 1993). So a climb and a drop are told by short signals.</source>
        <translation>Eine Tempoänderung unter etwa drei von hundert ist schwer zu hören (Drake und Botte 1993). Darum sagen kurze Signale einen Anstieg und einen Abstieg an.</translation>
    </message>
    <message id="help.esc">
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message id="help.files.title">
        <source>Passage files</source>
        <translation>Stellendateien</translation>
    </message>
    <message id="help.files.what.carry">
        <source>Carry passages from a teacher to a student: a file holds passages and their pieces, and nothing of what was played. Before anything is taken from one you see what it would change.</source>
        <translation>Bringt Stellen von der Lehrkraft zu Schülerin und Schüler: eine Datei enthält Stellen und ihre Stücke, und nichts von dem, was gespielt wurde. Bevor etwas daraus übernommen wird, siehst du, was es ändern würde.</translation>
    </message>
    <message id="help.files.what.edited">
        <source>What you have edited since it came is marked, so that a new version of your teacher&apos;s does not cover your own work unseen. The same file twice changes nothing.</source>
        <translation>Was du bearbeitet hast, seit es kam, ist gekennzeichnet, damit eine neue Fassung deiner Lehrkraft nicht ungesehen deine eigene Arbeit überdeckt. Dieselbe Datei zweimal ändert nichts.</translation>
    </message>
    <message id="help.keys.line">
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message id="help.keys.title">
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message id="help.log.key.along">
        <source>on the curve: move along; with Shift run by run</source>
        <translation>auf der Kurve: verschieben; mit Umschalt Durchlauf für Durchlauf</translation>
    </message>
    <message id="help.log.key.along.keys">
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message id="help.log.key.breaks">
        <source>makes a passage of the bars that break</source>
        <translation>macht eine Stelle aus den Takten, die brechen</translation>
    </message>
    <message id="help.log.key.days">
        <source>through the days</source>
        <translation>durch die Tage</translation>
    </message>
    <message id="help.log.key.days.keys">
        <source>PgUp, PgDown, Home, End</source>
        <translation>Bild auf, Bild ab, Pos1, Ende</translation>
    </message>
    <message id="help.log.key.line">
        <source>on the curve: the next passage; in the list: the next line</source>
        <translation>auf der Kurve: die nächste Stelle; in der Liste: die nächste Zeile</translation>
    </message>
    <message id="help.log.key.line.keys">
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message id="help.log.key.zoom">
        <source>on the curve: closer, farther, all of it</source>
        <translation>auf der Kurve: näher, weiter weg, alles</translation>
    </message>
    <message id="help.log.key.zoom.keys">
        <source>Plus, minus, 0</source>
        <translation>Plus, Minus, 0</translation>
    </message>
    <message id="help.log.title">
        <source>Practice log</source>
        <translation>Übetagebuch</translation>
    </message>
    <message id="help.log.what.curve">
        <source>The curve shows the tempo by day or by run. Where it breaks shows the misses of a passage by bar and beat, and makes a smaller passage of the worst bars, with a bar to run up.</source>
        <translation>Die Kurve zeigt das Tempo nach Tagen oder nach Durchläufen. Wo es bricht zeigt die Fehler einer Stelle nach Takt und Schlag und macht aus den schlimmsten Takten eine kleinere Stelle, mit einem Takt Anlauf.</translation>
    </message>
    <message id="help.log.what.everything">
        <source>Everything that happened, day by day: every run with its tempo, its mark and where a miss fell; tempi set by hand; run-throughs; your own notes. Marks taken back stay as taken back.</source>
        <translation>Alles, was geschah, Tag für Tag: jeder Durchlauf mit seinem Tempo, seiner Markierung und dem Ort eines Fehlers; von Hand gesetzte Tempi; Gesamtdurchläufe; deine Notizen. Zurückgenommenes bleibt als zurückgenommen stehen.</translation>
    </message>
    <message id="help.log.what.folder">
        <source>It is written to the practice folder on this computer and nowhere else. Nothing is sent away. Copy the folder, or let your own file sync carry it, and all is there.</source>
        <translation>Es steht im Übeordner auf diesem Rechner und sonst nirgends. Nichts wird verschickt. Kopiere den Ordner, oder lass ihn von deinem eigenen Dateiabgleich mitnehmen, und alles ist da.</translation>
    </message>
    <message id="help.log.why.days-apart">
        <source>Days apart help to keep what was learned (Simmons 2012). Minutes apart are a rest: pauses up to a quarter of an hour changed nothing for beginners at the piano, tested five minutes later (Wiseheart, D&apos;Souza and Chae 2017). One day missed now and then is told as fine, two in a row are told; that is our choice.</source>
        <translation>Abstand von Tagen hilft, Gelerntes zu behalten (Simmons 2012). Minuten dazwischen sind eine Pause: bis zu einer Viertelstunde änderte bei Anfängern am Klavier nichts, fünf Minuten später geprüft (Wiseheart, D&apos;Souza und Chae 2017). Ein ausgelassener Tag ab und zu gilt als in Ordnung, zwei in Folge werden gemeldet; das ist unsere Wahl.</translation>
    </message>
    <message id="help.log.why.reaction">
        <source>You hear a slip first and press after: each miss is put back by your reaction time. A quarter of a second is a guess; the settings have your own.</source>
        <translation>Du hörst einen Patzer erst und drückst danach: jeder Fehler wird um deine Reaktionszeit zurückversetzt. Eine Viertelsekunde ist geschätzt; deine eigene steht in den Einstellungen.</translation>
    </message>
    <message id="help.paper.title">
        <source>Practice on paper</source>
        <translation>Üben auf Papier</translation>
    </message>
    <message id="help.paper.what.print">
        <source>Print a ladder for each passage, tick it in pencil where there is no screen, and enter the sheet later: the rule goes through its marks as if they had been played here, on the day that you give.</source>
        <translation>Druck eine Leiter für jede Stelle, hake sie mit Bleistift ab, wo kein Bildschirm ist, und trag das Blatt später ein: die Regel geht durch seine Zeichen, als wären sie hier gespielt worden, an dem Tag, den du angibst.</translation>
    </message>
    <message id="help.paper.why.earlier-day">
        <source>Runs of an earlier day go in no earlier than the last day of the passage&apos;s log: what the rule has done since is not undone.</source>
        <translation>Durchläufe eines früheren Tages kommen frühestens auf den letzten Tag im Tagebuch der Stelle: was die Regel seither tat, wird nicht rückgängig gemacht.</translation>
    </message>
    <message id="help.paper.why.order">
        <source>A sheet says how many, not in which order: on each rung misses count before circles.</source>
        <translation>Ein Blatt sagt, wie viele, nicht in welcher Reihenfolge: auf jeder Sprosse zählen Fehler vor Kreisen.</translation>
    </message>
    <message id="help.passages.key.list">
        <source>from passage to passage in the list</source>
        <translation>in der Liste von Stelle zu Stelle</translation>
    </message>
    <message id="help.passages.key.list.keys">
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message id="help.passages.key.save">
        <source>save what the form holds, and drill it</source>
        <translation>speichern, was im Formular steht, und üben</translation>
    </message>
    <message id="help.passages.title">
        <source>Passages</source>
        <translation>Stellen</translation>
    </message>
    <message id="help.passages.what.form">
        <source>Its bars, a start and a target are enough; the rest has a good beginning. The form says how long a run takes, and about how many runs a full row asks for.</source>
        <translation>Takte, Start und Ziel genügen; der Rest hat einen guten Anfang. Das Formular sagt, wie lange ein Durchlauf dauert und etwa wie viele Durchläufe eine volle Serie braucht.</translation>
    </message>
    <message id="help.passages.what.gentle">
        <source>Gentle near the target: a miss there drops one climb, and at the target only the second in a row drops.</source>
        <translation>Sanft nahe am Ziel: dort senkt ein Fehler um einen Anstieg, und am Ziel erst der zweite in Folge.</translation>
    </message>
    <message id="help.passages.what.list">
        <source>All your passages: by the next date of their piece, by how long they have rested, or by how far they have to climb. The form beside the list holds what the chosen one is made of: bars, meter, tempi, rule, click, and how it is played.</source>
        <translation>Alle deine Stellen: nach dem nächsten Termin ihres Stücks, danach, wie lange sie geruht haben, oder wie weit sie zu steigen haben. Das Formular daneben enthält, woraus die gewählte besteht: Takte, Taktart, Tempi, Regel, Klick und wie sie gespielt wird.</translation>
    </message>
    <message id="help.passages.why.about-runs">
        <source>About how many runs: this is arithmetic for a player of whose runs nine in ten are clean, who neither tires nor learns. It is no promise.</source>
        <translation>Etwa wie viele Durchläufe: das ist gerechnet für jemanden, der neun von zehn sauber spielt und weder ermüdet noch dazulernt. Es ist kein Versprechen.</translation>
    </message>
    <message id="help.passages.why.short">
        <source>Short passages come clean sooner: in a long one a single bad bar brings the whole run down. Cutting a passage where it breaks is common practice, with no source.</source>
        <translation>Kurze Stellen werden eher sauber: in einer langen reißt ein einziger schlechter Takt den ganzen Durchlauf herunter. Eine Stelle dort zu teilen, wo sie bricht, ist gängige Praxis, ohne Quelle.</translation>
    </message>
    <message id="help.picture.key.edge">
        <source>the next edge, and the whole frame again</source>
        <translation>die nächste Kante, und wieder der ganze Rahmen</translation>
    </message>
    <message id="help.picture.key.edge.keys">
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message id="help.picture.key.leave">
        <source>leave it as it was</source>
        <translation>lassen, wie es war</translation>
    </message>
    <message id="help.picture.key.leave.keys">
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message id="help.picture.key.move">
        <source>move the frame, or the edge that is chosen; with Shift in larger steps</source>
        <translation>bewegen den Rahmen oder die gewählte Kante; mit Umschalt in größeren Schritten</translation>
    </message>
    <message id="help.picture.key.move.keys">
        <source>Arrow keys</source>
        <translation>Pfeiltasten</translation>
    </message>
    <message id="help.picture.key.scroll">
        <source>scroll the page</source>
        <translation>die Seite rollen</translation>
    </message>
    <message id="help.picture.key.scroll.keys">
        <source>PgUp, PgDown</source>
        <translation>Bild auf, Bild ab</translation>
    </message>
    <message id="help.picture.title">
        <source>A picture of the music</source>
        <translation>Ein Bild der Noten</translation>
    </message>
    <message id="help.picture.what.add">
        <source>Take in a photo, a scan or a PDF page of your part, and put the frame around the passage: what is in the frame is shown while you drill. The picture is copied into the practice folder.</source>
        <translation>Nimm ein Foto, einen Scan oder eine PDF-Seite deiner Stimme auf, und leg den Rahmen um die Stelle: was im Rahmen ist, wird beim Üben gezeigt. Das Bild wird in den Übeordner kopiert.</translation>
    </message>
    <message id="help.picture.why.eyes">
        <source>The eyes stay on the part: the bars of the passage alone, as large as there is room for. This is common practice, with no source. Copy only music that you may copy.</source>
        <translation>Die Augen bleiben auf der Stimme: nur die Takte der Stelle, so groß, wie Platz ist. Das ist gängige Praxis, ohne Quelle. Kopiere nur Noten, die du kopieren darfst.</translation>
    </message>
    <message id="help.run-through.key.end">
        <source>the last note</source>
        <translation>der letzte Ton</translation>
    </message>
    <message id="help.run-through.key.give-up">
        <source>give up</source>
        <translation>abbrechen</translation>
    </message>
    <message id="help.run-through.key.start">
        <source>start; then: the music stopped here</source>
        <translation>Start; danach: hier stockte die Musik</translation>
    </message>
    <message id="help.run-through.key.take-back">
        <source>take the last stop back</source>
        <translation>den letzten Halt zurücknehmen</translation>
    </message>
    <message id="help.run-through.title">
        <source>Run-through</source>
        <translation>Gesamtdurchlauf</translation>
    </message>
    <message id="help.run-through.what.whole">
        <source>A whole piece without the click, from start to finish; the way there is in the form of a passage of that piece. Press the key where the music stops, and play on. The clock guesses the bar, and you put it right before the run-through is kept.</source>
        <translation>Ein ganzes Stück ohne Klick, von Anfang bis Ende; der Weg dorthin steht im Formular einer Stelle dieses Stücks. Drück die Taste, wo die Musik stockt, und spiel weiter. Die Uhr rät den Takt, und du stellst ihn richtig, bevor der Durchlauf behalten wird.</translation>
    </message>
    <message id="help.run-through.why.hides">
        <source>It shows what the click hides: where the piece breaks when nothing leads. A stop at a bar that is not known may have been anywhere, and counts against every passage of the piece.</source>
        <translation>Er zeigt, was der Klick verbirgt: wo das Stück bricht, wenn nichts führt. Ein Halt in einem unbekannten Takt kann überall gewesen sein und zählt gegen jede Stelle des Stücks.</translation>
    </message>
    <message id="help.run-through.why.kept">
        <source>A passage is kept while the newest two run-throughs did not stop in it. Two is our choice, with no source: few enough to be played, more than luck.</source>
        <translation>Eine Stelle bleibt, solange die neuesten zwei Gesamtdurchläufe nicht in ihr stockten. Zwei ist unsere Wahl, ohne Quelle: wenig genug zum Spielen, mehr als Glück.</translation>
    </message>
    <message id="help.scales.key.drill">
        <source>drill the cell</source>
        <translation>das Feld üben</translation>
    </message>
    <message id="help.scales.key.drill.keys">
        <source>Return, Space</source>
        <translation>Eingabe, Leertaste</translation>
    </message>
    <message id="help.scales.key.move">
        <source>from cell to cell</source>
        <translation>von Feld zu Feld</translation>
    </message>
    <message id="help.scales.key.move.keys">
        <source>Arrow keys</source>
        <translation>Pfeiltasten</translation>
    </message>
    <message id="help.scales.key.suggested">
        <source>the cell that is proposed</source>
        <translation>das vorgeschlagene Feld</translation>
    </message>
    <message id="help.scales.key.suggested.keys">
        <source>Home</source>
        <translation>Pos1</translation>
    </message>
    <message id="help.scales.title">
        <source>Scales</source>
        <translation>Tonleitern</translation>
    </message>
    <message id="help.scales.what.grid">
        <source>One kind of scale in all twelve keys, and each key from quarters to septuplets. Every cell shows its best tempo with a full row; an empty one has not been played yet. A cell is drilled like any passage.</source>
        <translation>Eine Art Tonleiter in allen zwölf Tonarten, und jede Tonart von Vierteln bis Septolen. Jedes Feld zeigt sein bestes Tempo mit voller Serie; ein leeres wurde noch nicht gespielt. Ein Feld wird geübt wie jede Stelle.</translation>
    </message>
    <message id="help.scales.what.new-cell">
        <source>A new cell starts from the best of its nearest neighbour, two notches down. Its end is arranged so that the last note falls on a beat; the card says how.</source>
        <translation>Ein neues Feld beginnt beim Besten seines nächsten Nachbarn, zwei Rasten tiefer. Sein Ende ist so eingerichtet, dass der letzte Ton auf einen Schlag fällt; die Karte sagt, wie.</translation>
    </message>
    <message id="help.scales.what.suggested">
        <source>One cell is proposed as the next, with its reason: of those not played today the one played longest ago, when that is a week or more; else one that was never played; else the one furthest below the best of its row. You decide.</source>
        <translation>Ein Feld wird als nächstes vorgeschlagen, mit Begründung: von denen, die heute noch nicht gespielt wurden, das am längsten zurückliegende, wenn es eine Woche oder länger her ist; sonst eines, das noch nie gespielt wurde; sonst das, das am weitesten unter dem Besten seiner Reihe liegt. Du entscheidest.</translation>
    </message>
    <message id="help.scales.why.days-apart">
        <source>Days apart help: of twenty-nine musicians learning nine notes on a keyboard only those who came back after a day, not after minutes or hours, were more accurate the second time (Simmons 2012).</source>
        <translation>Abstand von Tagen hilft: von neunundzwanzig Musikern, die neun Töne auf einer Tastatur lernten, waren beim zweiten Mal nur die genauer, die nach einem Tag wiederkamen, nicht nach Minuten oder Stunden (Simmons 2012).</translation>
    </message>
    <message id="help.scales.why.fast-clicks">
        <source>Nobody keeps in step with single clicks faster than about eight to ten a second (Repp 2006): in small notes follow the beat.</source>
        <translation>Schneller als etwa acht bis zehn in der Sekunde hält niemand mit einzelnen Klicks Schritt (Repp 2006): Folge in kleinen Noten dem Schlag.</translation>
    </message>
    <message id="help.scales.why.look-alikes">
        <source>Look-alikes last in the evening may cost: a second, similar melody took away the gain of the night in one study with sixty musicians.</source>
        <translation>Ähnliches zuletzt am Abend kann kosten: eine zweite, ähnliche Melodie nahm in einer Untersuchung mit sechzig Musikern den Gewinn der Nacht.</translation>
    </message>
    <message id="help.scales.why.mixed-order">
        <source>Mixed order can help later: forty-one beginners on the clarinet ended their practice alike, and a day later those who had practised in mixed order were faster, though no more accurate (Stambaugh 2011). One session with nineteen beginners on clarinet and saxophone showed no effect of the order (a study at Rhode Island College). So the mix is an offer.</source>
        <translation>Gemischte Reihenfolge kann später helfen: einundvierzig Anfänger an der Klarinette beendeten das Üben gleich gut, und einen Tag später waren die schneller, die gemischt geübt hatten, wenn auch nicht genauer (Stambaugh 2011). Eine Sitzung mit neunzehn Anfängern an Klarinette und Saxophon zeigte keine Wirkung der Reihenfolge (eine Arbeit am Rhode Island College). Darum ist die Mischung ein Angebot.</translation>
    </message>
    <message id="help.score.title">
        <source>A passage from a music file</source>
        <translation>Eine Stelle aus einer Notendatei</translation>
    </message>
    <message id="help.score.what.reads">
        <source>Reads a score in MusicXML, shows its parts, and takes the bars that you pick: their meter, their tempo mark, and their notes, so that the passage can be heard first.</source>
        <translation>Liest eine Partitur in MusicXML, zeigt ihre Stimmen und nimmt die Takte, die du wählst: ihre Taktart, ihre Tempoangabe und ihre Noten, damit die Stelle erst angehört werden kann.</translation>
    </message>
    <message id="help.score.what.where">
        <source>Type where the file is, or drop it on the card.</source>
        <translation>Tippe ein, wo die Datei ist, oder zieh sie auf die Karte.</translation>
    </message>
    <message id="help.score.why.model">
        <source>School wind players who heard a model did better in rhythm and gained more tempo, in whatever order they practised their tempi (Henley 2001).</source>
        <translation>Schülerinnen und Schüler an Blasinstrumenten, die ein Vorbild hörten, wurden im Rhythmus besser und gewannen mehr Tempo, in welcher Reihenfolge der Tempi sie auch übten (Henley 2001).</translation>
    </message>
    <message id="help.score.why.straight">
        <source>Bars with a repeat inside, or with a change of meter, are refused rather than guessed: a passage is played straight through.</source>
        <translation>Takte mit einer Wiederholung darin oder mit einem Taktwechsel werden abgelehnt statt geraten: eine Stelle wird geradewegs durchgespielt.</translation>
    </message>
    <message id="help.settings.title">
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message id="help.settings.what.belongs">
        <source>Sound, looks, language and keys belong to this computer; how the drill goes travels with the practice folder.</source>
        <translation>Ton, Aussehen, Sprache und Tasten gehören zu diesem Rechner; wie das Üben geht, wandert mit dem Übeordner mit.</translation>
    </message>
    <message id="help.settings.what.keys">
        <source>Any key can do any of the work: choose what it is to do, then press it; a pedal or a MIDI switch is a key like any other. One pedal alone can do everything: a press starts or marks a miss, two presses take back; held, it stops the click, and while stopped it opens the next passage.</source>
        <translation>Jede Taste kann jede Arbeit tun: wähle, was sie tun soll, und drück sie dann; ein Pedal oder ein MIDI-Schalter ist eine Taste wie jede andere. Ein Pedal allein kann alles: ein Druck startet oder markiert einen Fehler, zwei nehmen zurück; gehalten stoppt es den Klick, und im Stand öffnet es die nächste Stelle.</translation>
    </message>
    <message id="help.settings.why.choices">
        <source>Three days to be secure, four seconds to breathe after a miss, a quarter of a second from a slip to the key: these are our choices, and yours to change. That days apart help is known (Simmons 2012); how many are best is not.</source>
        <translation>Drei Tage bis sicher, vier Sekunden zum Atmen nach einem Fehler, eine Viertelsekunde vom Patzer zur Taste: das haben wir gewählt, und du kannst es ändern. Dass Abstand von Tagen hilft, ist bekannt (Simmons 2012); wie viele am besten sind, nicht.</translation>
    </message>
    <message id="help.settings.why.level">
        <source>The level of the click starts low. Your instrument is louder, and that is well so: choose a sharper voice rather than more level.</source>
        <translation>Der Pegel des Klicks beginnt niedrig. Dein Instrument ist lauter, und das ist gut so: wähle lieber eine schärfere Stimme als mehr Pegel.</translation>
    </message>
    <message id="help.sources">
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message id="help.sources.hint">
        <source>What is said of them here stands in their abstracts or opening pages.</source>
        <translation>Was hier von ihnen gesagt wird, steht in ihren Zusammenfassungen oder auf ihren ersten Seiten.</translation>
    </message>
    <message id="help.start.key.control">
        <source>from one control to the next, and back</source>
        <translation>von einem Bedienelement zum nächsten, und zurück</translation>
    </message>
    <message id="help.start.key.control.keys">
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message id="help.start.key.help">
        <source>help for the screen you are on, while the click is still</source>
        <translation>Hilfe zum Bildschirm, auf dem du bist, solange der Klick ruht</translation>
    </message>
    <message id="help.start.key.press">
        <source>press the control</source>
        <translation>das Bedienelement drücken</translation>
    </message>
    <message id="help.start.key.press.keys">
        <source>Return, Space</source>
        <translation>Eingabe, Leertaste</translation>
    </message>
    <message id="help.start.title">
        <source>From slow to the whole piece</source>
        <translation>Von langsam bis zum ganzen Stück</translation>
    </message>
    <message id="help.start.what.piolo">
        <source>Piolo gets a hard passage clean. Choose a tempo at which nothing goes wrong, play it again and again, and touch one key, and only for a miss: the tempo follows how cleanly you play.</source>
        <translation>Piolo macht eine schwere Stelle sauber. Wähle ein Tempo, in dem nichts schiefgeht, spiel sie wieder und wieder, und berühre eine einzige Taste, und nur bei einem Fehler: das Tempo folgt danach, wie sauber du spielst.</translation>
    </message>
    <message id="help.start.what.stages">
        <source>A passage goes through five stages: slow with the click, secure at the target, without the click, in its context with two bars on either side, and in run-throughs of the piece. When the log speaks for the next stage the drill says why; you decide, and may go back.</source>
        <translation>Eine Stelle geht durch fünf Etappen: langsam mit Klick, am Ziel sicher, ohne Klick, im Zusammenhang mit zwei Takten auf jeder Seite, und in Gesamtdurchläufen des Stücks. Wenn das Tagebuch für die nächste Etappe spricht, sagt das Üben, warum; du entscheidest, und kannst zurückgehen.</translation>
    </message>
    <message id="help.start.why.few-misses">
        <source>How well a passage was kept overnight went with how few repetitions were wrong, not with how long or how often it was played: seventeen pianists on three bars (Duke, Simmons and Cash 2009). So misses are kept few, and what counts is clean runs, not minutes.</source>
        <translation>Wie gut eine Stelle über Nacht behalten wurde, hing damit zusammen, wie wenige Durchläufe falsch waren, nicht damit, wie lange oder wie oft sie gespielt wurde: siebzehn Pianistinnen und Pianisten an drei Takten (Duke, Simmons und Cash 2009). Darum bleiben die Fehler wenige, und es zählen saubere Durchläufe, nicht Minuten.</translation>
    </message>
    <message id="help.start.why.slow">
        <source>Nearly every player reports slow practice (Allingham and Wöllner 2022): that says what is usual, not what works. Players also see its pitfalls, such as movements that differ from fast ones (2023). So a try at the target is always at hand.</source>
        <translation>Fast alle, die spielen, geben an, langsam zu üben (Allingham und Wöllner 2022): das sagt, was üblich ist, nicht was wirkt. Gesehen werden auch Tücken, etwa Bewegungen, die anders sind als die schnellen (2023). Darum ist ein Versuch am Ziel immer zur Hand.</translation>
    </message>
    <message id="help.title">
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message id="help.what">
        <source>What it is for</source>
        <translation>Wozu es da ist</translation>
    </message>
    <message id="help.why">
        <source>Why it does that</source>
        <translation>Warum es das tut</translation>
    </message>
    <message id="instrument.alto-saxophone">
        <source>alto saxophone</source>
        <translation>Altsaxophon</translation>
    </message>
    <message id="instrument.baritone-saxophone">
        <source>baritone saxophone</source>
        <translation>Baritonsaxophon</translation>
    </message>
    <message id="instrument.bass-clarinet">
        <source>bass clarinet</source>
        <translation>Bassklarinette</translation>
    </message>
    <message id="instrument.bassoon">
        <source>bassoon</source>
        <translation>Fagott</translation>
    </message>
    <message id="instrument.clarinet-a">
        <source>clarinet in A</source>
        <translation>Klarinette in A</translation>
    </message>
    <message id="instrument.clarinet-b-flat">
        <source>clarinet in B flat</source>
        <translation>Klarinette in B</translation>
    </message>
    <message id="instrument.clarinet-e-flat">
        <source>clarinet in E flat</source>
        <translation>Klarinette in Es</translation>
    </message>
    <message id="instrument.cornet">
        <source>cornet</source>
        <translation>Kornett</translation>
    </message>
    <message id="instrument.english-horn">
        <source>English horn</source>
        <translation>Englischhorn</translation>
    </message>
    <message id="instrument.euphonium">
        <source>euphonium</source>
        <translation>Euphonium</translation>
    </message>
    <message id="instrument.euphonium-treble">
        <source>euphonium in treble clef</source>
        <translation>Euphonium im Violinschlüssel</translation>
    </message>
    <message id="instrument.flugelhorn">
        <source>flugelhorn</source>
        <translation>Flügelhorn</translation>
    </message>
    <message id="instrument.flute">
        <source>flute</source>
        <translation>Flöte</translation>
    </message>
    <message id="instrument.horn-f">
        <source>horn in F</source>
        <translation>Horn in F</translation>
    </message>
    <message id="instrument.oboe">
        <source>oboe</source>
        <translation>Oboe</translation>
    </message>
    <message id="instrument.piccolo">
        <source>piccolo</source>
        <translation>Piccoloflöte</translation>
    </message>
    <message id="instrument.soprano-saxophone">
        <source>soprano saxophone</source>
        <translation>Sopransaxophon</translation>
    </message>
    <message id="instrument.tenor-saxophone">
        <source>tenor saxophone</source>
        <translation>Tenorsaxophon</translation>
    </message>
    <message id="instrument.trombone">
        <source>trombone</source>
        <translation>Posaune</translation>
    </message>
    <message id="instrument.trumpet-b-flat">
        <source>trumpet in B flat</source>
        <translation>Trompete in B</translation>
    </message>
    <message id="instrument.trumpet-c">
        <source>trumpet in C</source>
        <translation>Trompete in C</translation>
    </message>
    <message id="instrument.tuba">
        <source>tuba</source>
        <translation>Tuba</translation>
    </message>
    <message id="keys.action-keys">
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message id="keys.action.back">
        <source>Take back the last mark</source>
        <translation>Letzte Markierung zurücknehmen</translation>
    </message>
    <message id="keys.action.clean">
        <source>Clean, in open-ended runs; in a run-through: the last note</source>
        <translation>Sauber, bei offenem Ende; im Gesamtdurchlauf: der letzte Ton</translation>
    </message>
    <message id="keys.action.faster">
        <source>Faster, while stopped</source>
        <translation>Schneller, im Stand</translation>
    </message>
    <message id="keys.action.hear">
        <source>Hear the passage&apos;s notes first, while stopped</source>
        <translation>Die Noten der Stelle erst anhören, im Stand</translation>
    </message>
    <message id="keys.action.miss">
        <source>Start; while the click runs: a miss; in a run-through: a stop here</source>
        <translation>Start; während der Klick läuft: ein Fehler; im Gesamtdurchlauf: hier ein Halt</translation>
    </message>
    <message id="keys.action.next">
        <source>The next passage, while stopped</source>
        <translation>Die nächste Stelle, im Stand</translation>
    </message>
    <message id="keys.action.pedal">
        <source>One pedal for all: press, hold, press twice</source>
        <translation>Ein Pedal für alles: drücken, halten, zweimal drücken</translation>
    </message>
    <message id="keys.action.save">
        <source>In a passage&apos;s form: save and drill</source>
        <translation>Im Formular einer Stelle: speichern und üben</translation>
    </message>
    <message id="keys.action.slower">
        <source>Slower, while stopped</source>
        <translation>Langsamer, im Stand</translation>
    </message>
    <message id="keys.action.stop">
        <source>Stop the click; give a run-through up</source>
        <translation>Klick anhalten; einen Gesamtdurchlauf abbrechen</translation>
    </message>
    <message id="keys.action.stretch">
        <source>In the log: a passage of the bars that break</source>
        <translation>Im Tagebuch: eine Stelle aus den Takten, die brechen</translation>
    </message>
    <message id="keys.action.try">
        <source>Try one run at the target</source>
        <translation>Ein Versuch am Ziel</translation>
    </message>
    <message id="keys.add">
        <source>Add a key</source>
        <translation>Taste dazu</translation>
    </message>
    <message id="keys.add.spoken">
        <source>%1: add a key</source>
        <translation>%1: eine Taste dazu</translation>
    </message>
    <message id="keys.chip">
        <source>%1  ✕</source>
        <translation>%1  ✕</translation>
    </message>
    <message id="keys.chip.remove">
        <source>Take %1 away</source>
        <translation>%1 wegnehmen</translation>
    </message>
    <message id="keys.done">
        <source>✓ %1</source>
        <translation>✓ %1</translation>
    </message>
    <message id="keys.full">
        <source>%1 gave way: %2 keys at most.</source>
        <translation>%1 musste weichen: höchstens %2 Tasten.</translation>
    </message>
    <message id="keys.held">
        <source>%1 held</source>
        <translation>%1 gehalten</translation>
    </message>
    <message id="keys.kept">
        <source>%1 stays: it is the last key for “%2”. Add another one first.</source>
        <translation>%1 bleibt: Es ist die letzte Taste für „%2“. Gib erst eine weitere dazu.</translation>
    </message>
    <message id="keys.last">
        <source>%1 is the last key for “%2”. Give that another key first.</source>
        <translation>%1 ist die letzte Taste für „%2“. Gib dem erst eine andere.</translation>
    </message>
    <message id="keys.midi.controller">
        <source>MIDI: controller %1, channel %2</source>
        <translation>MIDI: Controller %1, Kanal %2</translation>
    </message>
    <message id="keys.midi.listening">
        <source>Listening to %1. Press the switch.</source>
        <translation>Hört auf %1. Drück den Schalter.</translation>
    </message>
    <message id="keys.midi.none">
        <source>MIDI cannot be heard here: this system has no MIDI sequencer. A pedal that acts as a keyboard works.</source>
        <translation>MIDI lässt sich hier nicht hören: Dieses System hat keinen MIDI-Sequencer. Ein Pedal, das sich wie eine Tastatur verhält, geht.</translation>
    </message>
    <message id="keys.midi.note">
        <source>MIDI: note %1, channel %2</source>
        <translation>MIDI: Note %1, Kanal %2</translation>
    </message>
    <message id="keys.midi.program">
        <source>MIDI: program %1, channel %2</source>
        <translation>MIDI: Programm %1, Kanal %2</translation>
    </message>
    <message id="keys.midi.unplugged">
        <source>No MIDI input is plugged in yet. Plug it in, then press the switch.</source>
        <translation>Noch ist kein MIDI-Eingang eingesteckt. Steck ihn ein, dann drück den Schalter.</translation>
    </message>
    <message id="keys.moved-from">
        <source>%1 has left “%2”.</source>
        <translation>%1 gehört nicht mehr zu „%2“.</translation>
    </message>
    <message id="keys.moved-to">
        <source>%1 now does this: “%2”.</source>
        <translation>%1 tut jetzt dies: „%2“.</translation>
    </message>
    <message id="keys.none">
        <source>no key</source>
        <translation>keine Taste</translation>
    </message>
    <message id="keys.press">
        <source>Press a key…</source>
        <translation>Drücke eine Taste…</translation>
    </message>
    <message id="keys.press.spoken">
        <source>%1: press a key now, Esc gives up</source>
        <translation>%1: drücke jetzt eine Taste, Esc bricht ab</translation>
    </message>
    <message id="keys.removed">
        <source>%1 no longer does this: “%2”.</source>
        <translation>%1 tut dies nicht mehr: „%2“.</translation>
    </message>
    <message id="keys.reset">
        <source>The usual keys again</source>
        <translation>Wieder die üblichen Tasten</translation>
    </message>
    <message id="keys.set.left-right">
        <source>Left and Right arrows</source>
        <translation>Pfeile links und rechts</translation>
    </message>
    <message id="keys.set.one-pedal">
        <source>One pedal alone, PageDown</source>
        <translation>Ein Pedal allein, Bild ab</translation>
    </message>
    <message id="keys.set.pages">
        <source>PageUp and PageDown</source>
        <translation>Bild auf und Bild ab</translation>
    </message>
    <message id="keys.set.space-return">
        <source>Space and Return</source>
        <translation>Leertaste und Eingabe</translation>
    </message>
    <message id="keys.set.up-down">
        <source>Up and Down arrows</source>
        <translation>Pfeile auf und ab</translation>
    </message>
    <message id="keys.take-over">
        <source>Take it over</source>
        <translation>Übernehmen</translation>
    </message>
    <message id="keys.taken">
        <source>%1 is taken: “%2”. Press it again to take it over, another key, or Esc.</source>
        <translation>%1 ist vergeben: „%2“. Drück sie noch einmal, um sie zu übernehmen, eine andere Taste oder Esc.</translation>
    </message>
    <message id="keys.twice">
        <source>%1 twice</source>
        <translation>%1 zweimal</translation>
    </message>
    <message id="keys.unchanged">
        <source>These are your keys already.</source>
        <translation>Das sind deine Tasten schon.</translation>
    </message>
    <message id="keys.warning">
        <source>▲ %1</source>
        <translation>▲ %1</translation>
    </message>
    <message id="ladder.best">
        <source>best</source>
        <translation>Bestes</translation>
    </message>
    <message id="ladder.now">
        <source>present tempo, %1</source>
        <translation>jetziges Tempo, %1</translation>
    </message>
    <message id="ladder.spoken">
        <source>Ladder of tempi</source>
        <translation>Tempoleiter</translation>
    </message>
    <message id="ladder.start">
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message id="ladder.target">
        <source>target</source>
        <translation>Ziel</translation>
    </message>
    <message id="log.bad-lines">
        <source>Some lines of the practice log could not be read and were left as they are: %1</source>
        <translation>Einige Zeilen des Übetagebuchs waren nicht lesbar und blieben, wie sie sind: %1</translation>
    </message>
    <message id="log.day.figures">
        <source>%1 · %2 of %3 clean</source>
        <translation>%1 · %2 von %3 sauber</translation>
    </message>
    <message id="log.day.heading">
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message id="log.day.no-practice">
        <source>%1: no practice</source>
        <translation>%1: nicht geübt</translation>
    </message>
    <message id="log.day.time">
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message id="log.day.time-and-runs">
        <source>%1: %2, %3 of %4 clean</source>
        <translation>%1: %2, %3 von %4 sauber</translation>
    </message>
    <message id="log.days">
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message id="log.days-missed">
        <source>No practice for %1 days now. A few minutes today are enough to pick up the thread.</source>
        <translation>Seit %1 Tagen nicht geübt. Ein paar Minuten heute reichen, um den Faden wieder aufzunehmen.</translation>
    </message>
    <message id="log.days-missed-before">
        <source>No practice on %1 days in a row from %2. You have been back since: that counts.</source>
        <translation>An %1 Tagen hintereinander nicht geübt, ab %2. Seither bist du zurück: Das zählt.</translation>
    </message>
    <message id="log.empty">
        <source>Nothing played yet. Every run you drill is written down here, day by day.</source>
        <translation>Noch nichts gespielt. Jeder Durchlauf, den du übst, wird hier aufgeschrieben, Tag für Tag.</translation>
    </message>
    <message id="log.entry.edit-note">
        <source>Change the note</source>
        <translation>Notiz ändern</translation>
    </message>
    <message id="log.entry.keep">
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message id="log.entry.leave">
        <source>Leave it</source>
        <translation>Doch nicht</translation>
    </message>
    <message id="log.entry.line">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="log.entry.note">
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message id="log.entry.note.spoken">
        <source>Note on the run of %1</source>
        <translation>Notiz zum Durchlauf um %1</translation>
    </message>
    <message id="log.entry.note.title">
        <source>Note on this run</source>
        <translation>Notiz zu diesem Durchlauf</translation>
    </message>
    <message id="log.entry.take-back">
        <source>Take back…</source>
        <translation>Zurücknehmen…</translation>
    </message>
    <message id="log.entry.take-back.confirm">
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message id="log.entry.take-back.hint">
        <source>It will count as never played, and cannot be brought back.</source>
        <translation>Es zählt dann als nie gespielt und lässt sich nicht zurückholen.</translation>
    </message>
    <message id="log.entry.take-back.spoken">
        <source>Take back the entry of %1</source>
        <translation>Eintrag von %1 zurücknehmen</translation>
    </message>
    <message id="log.filter.every-passage">
        <source>every passage</source>
        <translation>alle Stellen</translation>
    </message>
    <message id="log.filter.every-piece">
        <source>every piece</source>
        <translation>alle Stücke</translation>
    </message>
    <message id="log.filter.everything">
        <source>everything</source>
        <translation>alles</translation>
    </message>
    <message id="log.filter.first-day">
        <source>from the first day</source>
        <translation>vom ersten Tag an</translation>
    </message>
    <message id="log.filter.kind">
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message id="log.filter.months">
        <source>3 months</source>
        <translation>3 Monate</translation>
    </message>
    <message id="log.filter.passage">
        <source>Passage</source>
        <translation>Stelle</translation>
    </message>
    <message id="log.filter.piece">
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message id="log.filter.run-through">
        <source>run-through</source>
        <translation>Gesamtdurchlauf</translation>
    </message>
    <message id="log.filter.since">
        <source>How far back</source>
        <translation>Wie weit zurück</translation>
    </message>
    <message id="log.filter.week">
        <source>7 days</source>
        <translation>7 Tage</translation>
    </message>
    <message id="log.filter.weeks">
        <source>4 weeks</source>
        <translation>4 Wochen</translation>
    </message>
    <message id="log.filter.year">
        <source>a year</source>
        <translation>ein Jahr</translation>
    </message>
    <message id="log.line.a-try">
        <source>a try</source>
        <translation>ein Versuch</translation>
    </message>
    <message id="log.line.aside">
        <source>aside</source>
        <translation>nebenher</translation>
    </message>
    <message id="log.line.at-tempo">
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message id="log.line.bar">
        <source>bar %1</source>
        <translation>Takt %1</translation>
    </message>
    <message id="log.line.bars">
        <source>bars %1</source>
        <translation>Takte %1</translation>
    </message>
    <message id="log.line.bars-unknown">
        <source>bars not known</source>
        <translation>Takte nicht bekannt</translation>
    </message>
    <message id="log.line.by-hand">
        <source>set by hand</source>
        <translation>von Hand gesetzt</translation>
    </message>
    <message id="log.line.clean">
        <source>clean</source>
        <translation>sauber</translation>
    </message>
    <message id="log.line.climbs">
        <source>climbs to %1</source>
        <translation>steigt auf %1</translation>
    </message>
    <message id="log.line.count-clean">
        <source>%1 clean</source>
        <translation>%1 sauber</translation>
    </message>
    <message id="log.line.count-missed">
        <source>%1 missed</source>
        <translation>%1 mit Fehler</translation>
    </message>
    <message id="log.line.count-void">
        <source>%1 not counted</source>
        <translation>%1 ungezählt</translation>
    </message>
    <message id="log.line.day-opens">
        <source>where the day opens</source>
        <translation>wo der Tag beginnt</translation>
    </message>
    <message id="log.line.drops">
        <source>drops to %1</source>
        <translation>sinkt auf %1</translation>
    </message>
    <message id="log.line.figures">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="log.line.given-up">
        <source>given up</source>
        <translation>abgebrochen</translation>
    </message>
    <message id="log.line.in-a-row">
        <source>%1 clean in a row</source>
        <translation>%1 sauber in Folge</translation>
    </message>
    <message id="log.line.in-context">
        <source>in its context</source>
        <translation>im Zusammenhang</translation>
    </message>
    <message id="log.line.missed">
        <source>missed</source>
        <translation>mit Fehler</translation>
    </message>
    <message id="log.line.missed-late">
        <source>missed, told afterwards</source>
        <translation>mit Fehler, nachträglich gesagt</translation>
    </message>
    <message id="log.line.more">
        <source>%1 …</source>
        <translation>%1 …</translation>
    </message>
    <message id="log.line.moves-nothing">
        <source>%1: moves nothing</source>
        <translation>%1: bewegt nichts</translation>
    </message>
    <message id="log.line.named">
        <source>named: the search for the tempo begins</source>
        <translation>genannt: die Suche nach dem Tempo beginnt</translation>
    </message>
    <message id="log.line.offer-taken">
        <source>an offer taken</source>
        <translation>ein Angebot angenommen</translation>
    </message>
    <message id="log.line.on-paper">
        <source>on paper</source>
        <translation>auf Papier</translation>
    </message>
    <message id="log.line.paper">
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message id="log.line.removed">
        <source>%1 (removed)</source>
        <translation>%1 (entfernt)</translation>
    </message>
    <message id="log.line.run">
        <source>run</source>
        <translation>Durchlauf</translation>
    </message>
    <message id="log.line.run-through">
        <source>%1, run-through</source>
        <translation>%1, Gesamtdurchlauf</translation>
    </message>
    <message id="log.line.secure">
        <source>secure</source>
        <translation>sicher</translation>
    </message>
    <message id="log.line.stays">
        <source>stays at %1</source>
        <translation>bleibt bei %1</translation>
    </message>
    <message id="log.line.tempo-set">
        <source>tempo set</source>
        <translation>Tempo gesetzt</translation>
    </message>
    <message id="log.line.try">
        <source>try</source>
        <translation>Versuch</translation>
    </message>
    <message id="log.line.void">
        <source>not counted</source>
        <translation>zählt nicht</translation>
    </message>
    <message id="log.line.void-sound">
        <source>not counted: the sound was lost</source>
        <translation>zählt nicht: der Ton war weg</translation>
    </message>
    <message id="log.line.void-stopped">
        <source>not counted: stopped</source>
        <translation>zählt nicht: angehalten</translation>
    </message>
    <message id="log.line.void-tempo">
        <source>not counted: the tempo was changed</source>
        <translation>zählt nicht: das Tempo wurde geändert</translation>
    </message>
    <message id="log.line.without-click">
        <source>without the click</source>
        <translation>ohne Klick</translation>
    </message>
    <message id="log.mark.clean">
        <source>clean: %1</source>
        <translation>sauber: %1</translation>
    </message>
    <message id="log.mark.clean-unmarked">
        <source>clean: by itself at the last bar</source>
        <translation>sauber: von selbst mit dem letzten Takt</translation>
    </message>
    <message id="log.mark.missed">
        <source>a miss: %1</source>
        <translation>Fehler: %1</translation>
    </message>
    <message id="log.mark.stop">
        <source>stop: %1</source>
        <translation>Halt: %1</translation>
    </message>
    <message id="log.never-two-days-missed">
        <source>Never two days missed in a row in four weeks: one now and then is fine.</source>
        <translation>In vier Wochen nie zwei Tage hintereinander ausgelassen: einer ab und zu ist in Ordnung.</translation>
    </message>
    <message id="log.no-day-missed">
        <source>Not a day missed since you began.</source>
        <translation>Seit dem Anfang keinen Tag ausgelassen.</translation>
    </message>
    <message id="log.no-day-missed-lately">
        <source>Not a day missed in four weeks.</source>
        <translation>In vier Wochen keinen Tag ausgelassen.</translation>
    </message>
    <message id="log.none-found">
        <source>Nothing of that kind in that time.</source>
        <translation>Nichts dergleichen in dieser Zeit.</translation>
    </message>
    <message id="log.title">
        <source>Practice log</source>
        <translation>Übetagebuch</translation>
    </message>
    <message id="manner.as-written">
        <source>as written</source>
        <translation>wie notiert</translation>
    </message>
    <message id="manner.double-tongued">
        <source>double-tongued</source>
        <translation>mit Doppelzunge</translation>
    </message>
    <message id="manner.in-groups">
        <source>in groups</source>
        <translation>in Gruppen</translation>
    </message>
    <message id="manner.in-groups-of">
        <source>in groups of %1</source>
        <translation>in Gruppen zu %1</translation>
    </message>
    <message id="manner.long-short">
        <source>long and short</source>
        <translation>lang und kurz</translation>
    </message>
    <message id="manner.short-long">
        <source>short and long</source>
        <translation>kurz und lang</translation>
    </message>
    <message id="manner.slur-three-tongue-one">
        <source>slur three, tongue one</source>
        <translation>drei gebunden, eine gestoßen</translation>
    </message>
    <message id="manner.slur-two-tongue-two">
        <source>slur two, tongue two</source>
        <translation>zwei gebunden, zwei gestoßen</translation>
    </message>
    <message id="manner.slurred">
        <source>all slurred</source>
        <translation>alles gebunden</translation>
    </message>
    <message id="manner.staccato">
        <source>staccato</source>
        <translation>staccato</translation>
    </message>
    <message id="manner.tongue-one-slur-three">
        <source>tongue one, slur three</source>
        <translation>eine gestoßen, drei gebunden</translation>
    </message>
    <message id="manner.tongued">
        <source>all tongued</source>
        <translation>alles gestoßen</translation>
    </message>
    <message id="meter.beats" numerus="yes">
        <source>%n beats in the bar</source>
        <translation>
            <numerusform>%n Schlag im Takt</numerusform>
            <numerusform>%n Schläge im Takt</numerusform>
        </translation>
    </message>
    <message id="minutes.drilled">
        <source>drilled</source>
        <translation>geübt</translation>
    </message>
    <message id="minutes.most">
        <source>most: %1 min</source>
        <translation>höchstens: %1 min</translation>
    </message>
    <message id="minutes.other-runs">
        <source>other runs</source>
        <translation>andere</translation>
    </message>
    <message id="minutes.run-throughs">
        <source>run-throughs</source>
        <translation>Gesamtdurchläufe</translation>
    </message>
    <message id="minutes.spoken">
        <source>Minutes a day, four weeks</source>
        <translation>Minuten am Tag, vier Wochen</translation>
    </message>
    <message id="minutes.title">
        <source>Minutes a day</source>
        <translation>Minuten am Tag</translation>
    </message>
    <message id="minutes.today">
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message id="minutes.weeks-ago">
        <source>4 weeks ago</source>
        <translation>vor 4 Wochen</translation>
    </message>
    <message id="nav.drill">
        <source>Drill</source>
        <translation>Üben</translation>
    </message>
    <message id="nav.help">
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message id="nav.log">
        <source>Log</source>
        <translation>Tagebuch</translation>
    </message>
    <message id="nav.passages">
        <source>Passages</source>
        <translation>Stellen</translation>
    </message>
    <message id="nav.scales">
        <source>Scales</source>
        <translation>Tonleitern</translation>
    </message>
    <message id="nav.screens">
        <source>Screens</source>
        <translation>Bildschirme</translation>
    </message>
    <message id="nav.settings">
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message id="nav.today">
        <source>%1 today</source>
        <translation>%1 heute</translation>
    </message>
    <message id="note.a">
        <source>A</source>
        <translation>A</translation>
    </message>
    <message id="note.a-flat">
        <source>A♭</source>
        <translation>As</translation>
    </message>
    <message id="note.a-sharp">
        <source>A♯</source>
        <translation>Ais</translation>
    </message>
    <message id="note.b">
        <source>B</source>
        <translation>H</translation>
    </message>
    <message id="note.b-flat">
        <source>B♭</source>
        <translation>B</translation>
    </message>
    <message id="note.b-sharp">
        <source>B♯</source>
        <translation>His</translation>
    </message>
    <message id="note.c">
        <source>C</source>
        <translation>C</translation>
    </message>
    <message id="note.c-flat">
        <source>C♭</source>
        <translation>Ces</translation>
    </message>
    <message id="note.c-sharp">
        <source>C♯</source>
        <translation>Cis</translation>
    </message>
    <message id="note.d">
        <source>D</source>
        <translation>D</translation>
    </message>
    <message id="note.d-flat">
        <source>D♭</source>
        <translation>Des</translation>
    </message>
    <message id="note.d-sharp">
        <source>D♯</source>
        <translation>Dis</translation>
    </message>
    <message id="note.e">
        <source>E</source>
        <translation>E</translation>
    </message>
    <message id="note.e-flat">
        <source>E♭</source>
        <translation>Es</translation>
    </message>
    <message id="note.e-sharp">
        <source>E♯</source>
        <translation>Eis</translation>
    </message>
    <message id="note.f">
        <source>F</source>
        <translation>F</translation>
    </message>
    <message id="note.f-flat">
        <source>F♭</source>
        <translation>Fes</translation>
    </message>
    <message id="note.f-sharp">
        <source>F♯</source>
        <translation>Fis</translation>
    </message>
    <message id="note.g">
        <source>G</source>
        <translation>G</translation>
    </message>
    <message id="note.g-flat">
        <source>G♭</source>
        <translation>Ges</translation>
    </message>
    <message id="note.g-sharp">
        <source>G♯</source>
        <translation>Gis</translation>
    </message>
    <message id="number.eight">
        <source>eight</source>
        <translation>acht</translation>
    </message>
    <message id="number.eleven">
        <source>eleven</source>
        <translation>elf</translation>
    </message>
    <message id="number.five">
        <source>five</source>
        <translation>fünf</translation>
    </message>
    <message id="number.four">
        <source>four</source>
        <translation>vier</translation>
    </message>
    <message id="number.nine">
        <source>nine</source>
        <translation>neun</translation>
    </message>
    <message id="number.one">
        <source>one</source>
        <translation>1</translation>
    </message>
    <message id="number.seven">
        <source>seven</source>
        <translation>sieben</translation>
    </message>
    <message id="number.six">
        <source>six</source>
        <translation>sechs</translation>
    </message>
    <message id="number.ten">
        <source>ten</source>
        <translation>zehn</translation>
    </message>
    <message id="number.three">
        <source>three</source>
        <translation>drei</translation>
    </message>
    <message id="number.twelve">
        <source>twelve</source>
        <translation>zwölf</translation>
    </message>
    <message id="number.two">
        <source>two</source>
        <translation>zwei</translation>
    </message>
    <message id="paper.back-to-form">
        <source>Back to the form</source>
        <translation>Zurück zum Formular</translation>
    </message>
    <message id="paper.enter">
        <source>Enter a sheet</source>
        <translation>Blatt eintragen</translation>
    </message>
    <message id="paper.enter.choose-passage">
        <source>Choose a passage on the left first.</source>
        <translation>Wähle erst links eine Stelle.</translation>
    </message>
    <message id="paper.enter.count">
        <source>%1 clean, %2 missed</source>
        <translation>%1 sauber, %2 mit Fehler</translation>
    </message>
    <message id="paper.enter.day">
        <source>Day it was played</source>
        <translation>Tag, an dem gespielt wurde</translation>
    </message>
    <message id="paper.enter.done">
        <source>%1 runs are in the log.</source>
        <translation>%1 Durchläufe stehen im Tagebuch.</translation>
    </message>
    <message id="paper.enter.done-one">
        <source>1 run is in the log.</source>
        <translation>1 Durchlauf steht im Tagebuch.</translation>
    </message>
    <message id="paper.enter.fault.before">
        <source>not before %1, the last day in its log: the rule goes on from there</source>
        <translation>nicht vor %1, dem letzten Tag in ihrem Tagebuch: Von dort geht die Regel weiter</translation>
    </message>
    <message id="paper.enter.fault.day">
        <source>a date such as %1</source>
        <translation>ein Datum wie %1</translation>
    </message>
    <message id="paper.enter.fault.future">
        <source>this day is still to come</source>
        <translation>dieser Tag kommt erst noch</translation>
    </message>
    <message id="paper.enter.fault.tempo">
        <source>a tempo from 10 to 400</source>
        <translation>ein Tempo von 10 bis 400</translation>
    </message>
    <message id="paper.enter.keep">
        <source>Keep it in the log</source>
        <translation>Ins Tagebuch übernehmen</translation>
    </message>
    <message id="paper.enter.lowest">
        <source>Lowest tempo on the sheet</source>
        <translation>Tiefstes Tempo auf dem Blatt</translation>
    </message>
    <message id="paper.enter.misses">
        <source>misses</source>
        <translation>Fehler</translation>
    </message>
    <message id="paper.enter.misses-first">
        <source>On each rung misses count before circles.</source>
        <translation>Auf jeder Sprosse zählen Fehler vor Kreisen.</translation>
    </message>
    <message id="paper.enter.misses.spoken">
        <source>Misses at %1</source>
        <translation>Fehler bei %1</translation>
    </message>
    <message id="paper.enter.of">
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message id="paper.enter.result">
        <source>%1: what comes of it stands above.</source>
        <translation>%1: was daraus wird, steht oben.</translation>
    </message>
    <message id="paper.enter.result.best">
        <source>Best with a full streak</source>
        <translation>Bestes mit voller Serie</translation>
    </message>
    <message id="paper.enter.result.best.none">
        <source>none yet</source>
        <translation>noch nichts</translation>
    </message>
    <message id="paper.enter.result.secures">
        <source>Full streaks at the target</source>
        <translation>Volle Serien am Ziel</translation>
    </message>
    <message id="paper.enter.result.streak">
        <source>Clean in a row</source>
        <translation>Sauber in Folge</translation>
    </message>
    <message id="paper.enter.result.streak.of">
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message id="paper.enter.result.tempo">
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message id="paper.enter.rungs">
        <source>Rungs of the sheet</source>
        <translation>Sprossen des Blatts</translation>
    </message>
    <message id="paper.enter.take-back">
        <source>Take it all back</source>
        <translation>Alles zurücknehmen</translation>
    </message>
    <message id="paper.enter.target">
        <source>%1 ◆</source>
        <translation>%1 ◆</translation>
    </message>
    <message id="paper.enter.target.spoken">
        <source>%1, the target</source>
        <translation>%1, das Ziel</translation>
    </message>
    <message id="paper.enter.tempo">
        <source>tempo</source>
        <translation>Tempo</translation>
    </message>
    <message id="paper.enter.ticked">
        <source>circles ticked</source>
        <translation>abgehakte Kreise</translation>
    </message>
    <message id="paper.enter.ticked.spoken">
        <source>Circles ticked at %1</source>
        <translation>Abgehakte Kreise bei %1</translation>
    </message>
    <message id="paper.print">
        <source>Print a sheet</source>
        <translation>Blatt drucken</translation>
    </message>
    <message id="paper.print.a4">
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message id="paper.print.file">
        <source>File, ending in .pdf, .svg or .png</source>
        <translation>Datei mit der Endung .pdf, .svg oder .png</translation>
    </message>
    <message id="paper.print.hint">
        <source>A ladder for each passage, from its present tempo to its target, with a circle for every clean run: print it and tick it in pencil.</source>
        <translation>Eine Leiter für jede Stelle, vom jetzigen Tempo bis zum Ziel, mit einem Kreis für jeden sauberen Durchlauf: drucken und mit Bleistift abhaken.</translation>
    </message>
    <message id="paper.print.letter">
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message id="paper.print.most">
        <source>At most %1 passages go on one sheet.</source>
        <translation>Höchstens %1 Stellen passen auf ein Blatt.</translation>
    </message>
    <message id="paper.print.one-page">
        <source>%1 on one page</source>
        <translation>%1 auf einer Seite</translation>
    </message>
    <message id="paper.print.pages">
        <source>%1 on %2 pages</source>
        <translation>%1 auf %2 Seiten</translation>
    </message>
    <message id="paper.print.paper">
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message id="paper.print.save">
        <source>Save the sheet</source>
        <translation>Blatt speichern</translation>
    </message>
    <message id="paper.print.tick">
        <source>Tick the passages to print.</source>
        <translation>Hake die Stellen an, die gedruckt werden sollen.</translation>
    </message>
    <message id="paper.title">
        <source>Practice on paper</source>
        <translation>Üben auf Papier</translation>
    </message>
    <message id="paper.what-to-do">
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message id="parts.label-value">
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message id="parts.name-key">
        <source>%1, key %2</source>
        <translation>%1, Taste %2</translation>
    </message>
    <message id="parts.sign-word">
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message id="passages.by-climb">
        <source>most to climb</source>
        <translation>am weitesten vom Ziel</translation>
    </message>
    <message id="passages.by-date">
        <source>next date</source>
        <translation>nächster Termin</translation>
    </message>
    <message id="passages.by-rest">
        <source>longest rested</source>
        <translation>am längsten geruht</translation>
    </message>
    <message id="passages.date-days">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="passages.files">
        <source>Passage files</source>
        <translation>Stellendateien</translation>
    </message>
    <message id="passages.from-score">
        <source>From a music file</source>
        <translation>Aus einer Notendatei</translation>
    </message>
    <message id="passages.line">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="passages.new">
        <source>New passage</source>
        <translation>Neue Stelle</translation>
    </message>
    <message id="passages.none">
        <source>No passages yet: the form on the right makes the first.</source>
        <translation>Noch keine Stellen: Das Formular rechts macht die erste.</translation>
    </message>
    <message id="passages.none-found">
        <source>No passage has all of these words.</source>
        <translation>Keine Stelle hat alle diese Wörter.</translation>
    </message>
    <message id="passages.not-played">
        <source>not played yet</source>
        <translation>noch nicht gespielt</translation>
    </message>
    <message id="passages.of-target">
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message id="passages.on-its-own">
        <source>On its own</source>
        <translation>Für sich</translation>
    </message>
    <message id="passages.on-its-own.inline">
        <source>on its own</source>
        <translation>für sich</translation>
    </message>
    <message id="passages.on-paper">
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message id="passages.order">
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message id="passages.played">
        <source>played %1</source>
        <translation>gespielt: %1</translation>
    </message>
    <message id="passages.removed">
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message id="passages.removed.notice">
        <source>“%1” is removed.</source>
        <translation>„%1“ ist entfernt.</translation>
    </message>
    <message id="passages.restore">
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message id="passages.search">
        <source>Search by piece, name, bars or note</source>
        <translation>Suche nach Stück, Name, Takten oder Notenwert</translation>
    </message>
    <message id="passages.secure" numerus="yes">
        <source>secure on %n days</source>
        <translation>
            <numerusform>sicher an %n Tag</numerusform>
            <numerusform>sicher an %n Tagen</numerusform>
        </translation>
    </message>
    <message id="passages.secure-so-far" numerus="yes">
        <source>secure on %1 of %n days</source>
        <translation>
            <numerusform>sicher an %1 von %n Tag</numerusform>
            <numerusform>sicher an %1 von %n Tagen</numerusform>
        </translation>
    </message>
    <message id="passages.show-removed">
        <source>Show removed ones</source>
        <translation>Entfernte zeigen</translation>
    </message>
    <message id="passages.spoken">
        <source>%1, %2, %3: at %4 of %5, %6, %7</source>
        <translation>%1, %2, %3: bei %4 von %5, %6, %7</translation>
    </message>
    <message id="passages.title">
        <source>Passages</source>
        <translation>Stellen</translation>
    </message>
    <message id="pause.drops.title">
        <source>Two steps down from the start</source>
        <translation>Zwei Schritte unter den Start</translation>
    </message>
    <message id="pause.easier">
        <source>Make it easier for a while: a shorter stretch, a slower tempo, or a rest. It is no use to practise the mistake.</source>
        <translation>Mach es eine Weile leichter: weniger Takte, ein langsameres Tempo oder eine Pause. Den Fehler zu üben nützt nichts.</translation>
    </message>
    <message id="pause.fewer-bars">
        <source>Fewer bars</source>
        <translation>Weniger Takte</translation>
    </message>
    <message id="pause.go-on">
        <source>Go on as it is</source>
        <translation>So weitermachen</translation>
    </message>
    <message id="pause.half-tempo">
        <source>Half tempo: %1</source>
        <translation>Halbes Tempo: %1</translation>
    </message>
    <message id="pause.misses.title">
        <source>Three misses without a clean run</source>
        <translation>Drei Fehler ohne einen sauberen Durchlauf</translation>
    </message>
    <message id="pause.no">
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message id="pause.rest">
        <source>A rest</source>
        <translation>Pause</translation>
    </message>
    <message id="pause.stop">
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message id="pause.unmarked" numerus="yes">
        <source>%n runs went by without a key. If you were not listening to every note, say no: they count for nothing and their climbs are taken back.</source>
        <translation>
            <numerusform>%n Durchlauf verging ohne Taste. Wenn du nicht auf jeden Ton gehört hast, sag nein: Er zählt dann nicht, und sein Anstieg wird zurückgenommen.</numerusform>
            <numerusform>%n Durchläufe vergingen ohne Taste. Wenn du nicht auf jeden Ton gehört hast, sag nein: Sie zählen dann nicht, und ihre Anstiege werden zurückgenommen.</numerusform>
        </translation>
    </message>
    <message id="pause.unmarked.title">
        <source>Were these runs clean?</source>
        <translation>Waren diese Durchläufe sauber?</translation>
    </message>
    <message id="pause.yes">
        <source>Yes, go on</source>
        <translation>Ja, weiter</translation>
    </message>
    <message id="pedal.hint">
        <source>%1 starts the click, and marks a miss while it runs. Have you a page turner pedal? Press the button here, then the pedal. A MIDI switch works as well; the settings have more.</source>
        <translation>%1 startet den Klick und markiert einen Fehler, solange er läuft. Hast du ein Blätterpedal? Drück hier den Knopf, dann das Pedal. Ein MIDI-Schalter geht auch; mehr steht in den Einstellungen.</translation>
    </message>
    <message id="pedal.press">
        <source>Press the pedal now (Esc gives up)</source>
        <translation>Drück jetzt das Pedal (Esc bricht ab)</translation>
    </message>
    <message id="pedal.title">
        <source>One key, or a pedal</source>
        <translation>Eine Taste oder ein Pedal</translation>
    </message>
    <message id="pedal.use">
        <source>Use my pedal</source>
        <translation>Mein Pedal benutzen</translation>
    </message>
    <message id="picks.all">
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message id="picks.all.spoken">
        <source>Tick all passages</source>
        <translation>Alle Stellen anhaken</translation>
    </message>
    <message id="picks.empty">
        <source>No passages yet.</source>
        <translation>Noch keine Stellen.</translation>
    </message>
    <message id="picks.item">
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message id="picks.none">
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message id="picks.none.spoken">
        <source>Tick no passage</source>
        <translation>Keine Stelle anhaken</translation>
    </message>
    <message id="picks.of">
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message id="picks.spoken">
        <source>Passages to tick</source>
        <translation>Stellen zum Anhaken</translation>
    </message>
    <message id="picture.add">
        <source>Add a picture of the music</source>
        <translation>Bild der Noten dazu</translation>
    </message>
    <message id="picture.after-saving">
        <source>once the passage is saved</source>
        <translation>sobald die Stelle gespeichert ist</translation>
    </message>
    <message id="picture.another">
        <source>Another picture</source>
        <translation>Anderes Bild</translation>
    </message>
    <message id="picture.back-to-form">
        <source>Back to the form</source>
        <translation>Zurück zum Formular</translation>
    </message>
    <message id="picture.bottom">
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message id="picture.crop">
        <source>Crop or change the picture</source>
        <translation>Bild zuschneiden oder wechseln</translation>
    </message>
    <message id="picture.crop.spoken">
        <source>The page with its frame. The arrow keys move %1.</source>
        <translation>Die Seite mit ihrem Rahmen. Die Pfeiltasten bewegen %1.</translation>
    </message>
    <message id="picture.done">
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message id="picture.edge">
        <source>What the arrow keys move</source>
        <translation>Was die Pfeiltasten bewegen</translation>
    </message>
    <message id="picture.edge.bottom">
        <source>the bottom edge</source>
        <translation>die untere Kante</translation>
    </message>
    <message id="picture.edge.frame">
        <source>the whole frame</source>
        <translation>den ganzen Rahmen</translation>
    </message>
    <message id="picture.edge.left">
        <source>the left edge</source>
        <translation>die linke Kante</translation>
    </message>
    <message id="picture.edge.right">
        <source>the right edge</source>
        <translation>die rechte Kante</translation>
    </message>
    <message id="picture.edge.top">
        <source>the top edge</source>
        <translation>die obere Kante</translation>
    </message>
    <message id="picture.file">
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message id="picture.file.hint">
        <source>A PNG or JPEG, or a PDF of which you choose a page. Type where it is, or drop it here. It is copied into the practice folder.</source>
        <translation>Ein PNG oder JPEG, oder ein PDF, aus dem du eine Seite wählst. Tippe den Ort ein, oder zieh die Datei hierher. Sie wird in den Übeordner kopiert.</translation>
    </message>
    <message id="picture.frame">
        <source>frame</source>
        <translation>Rahmen</translation>
    </message>
    <message id="picture.frame.spoken">
        <source>across %1 to %2 %, down %3 to %4 %</source>
        <translation>quer %1 bis %2 %, von oben %3 bis %4 %</translation>
    </message>
    <message id="picture.hint">
        <source>Drag the frame around the passage, or move what is picked here with the arrow keys: Shift for larger steps, Space for the next edge.</source>
        <translation>Zieh den Rahmen um die Stelle, oder bewege mit den Pfeiltasten, was hier gewählt ist: mit Umschalt in größeren Schritten, Leertaste für die nächste Kante.</translation>
    </message>
    <message id="picture.keep">
        <source>Keep this part</source>
        <translation>Diesen Teil behalten</translation>
    </message>
    <message id="picture.leave">
        <source>Leave as it was</source>
        <translation>Lassen, wie es war</translation>
    </message>
    <message id="picture.left">
        <source>left</source>
        <translation>links</translation>
    </message>
    <message id="picture.missing">
        <source>The picture of the music cannot be read from the practice folder. Take it in again, or remove it here.</source>
        <translation>Das Bild der Noten lässt sich im Übeordner nicht lesen. Nimm es neu auf, oder entferne es hier.</translation>
    </message>
    <message id="picture.of-passage">
        <source>the page of “%1”</source>
        <translation>die Seite von „%1“</translation>
    </message>
    <message id="picture.or-page">
        <source>Or a page that this piece has already</source>
        <translation>Oder eine Seite, die dieses Stück schon hat</translation>
    </message>
    <message id="picture.page">
        <source>Page, of %1</source>
        <translation>Seite, von %1</translation>
    </message>
    <message id="picture.reading">
        <source>Reading …</source>
        <translation>Liest …</translation>
    </message>
    <message id="picture.remove">
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message id="picture.restore">
        <source>Take the removal back</source>
        <translation>Doch nicht entfernen</translation>
    </message>
    <message id="picture.right">
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message id="picture.spoken">
        <source>The music of the passage</source>
        <translation>Die Noten der Stelle</translation>
    </message>
    <message id="picture.take">
        <source>Take it</source>
        <translation>Übernehmen</translation>
    </message>
    <message id="picture.take-page">
        <source>Take this page</source>
        <translation>Diese Seite nehmen</translation>
    </message>
    <message id="picture.title">
        <source>The music of “%1”</source>
        <translation>Die Noten von „%1“</translation>
    </message>
    <message id="picture.top">
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message id="picture.unreadable">
        <source>The picture of the music cannot be read from the practice folder.</source>
        <translation>Das Bild der Noten lässt sich im Übeordner nicht lesen.</translation>
    </message>
    <message id="picture.whole-page">
        <source>Whole page</source>
        <translation>Ganze Seite</translation>
    </message>
    <message id="piece.bars">
        <source>Bars in all</source>
        <translation>Takte insgesamt</translation>
    </message>
    <message id="piece.bars.unknown">
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message id="piece.composer">
        <source>Composer</source>
        <translation>Komponist/in</translation>
    </message>
    <message id="piece.due">
        <source>Due</source>
        <translation>Termin</translation>
    </message>
    <message id="piece.due.none">
        <source>no date</source>
        <translation>kein Termin</translation>
    </message>
    <message id="piece.fault.due">
        <source>a date such as %1, or nothing</source>
        <translation>ein Datum wie %1, oder nichts</translation>
    </message>
    <message id="piece.fault.letters">
        <source>at most %1 letters</source>
        <translation>höchstens %1 Buchstaben</translation>
    </message>
    <message id="piece.fault.meter">
        <source>a meter such as 4/4, 6/8 or 7/8, or nothing</source>
        <translation>eine Taktart wie 4/4, 6/8 oder 7/8, oder nichts</translation>
    </message>
    <message id="piece.fault.name">
        <source>the piece needs a name</source>
        <translation>das Stück braucht einen Namen</translation>
    </message>
    <message id="piece.fault.tempo">
        <source>a tempo from 10 to 400, or nothing</source>
        <translation>ein Tempo von 10 bis 400, oder nichts</translation>
    </message>
    <message id="piece.fault.too-long">
        <source>too long to be kept</source>
        <translation>zu lang zum Behalten</translation>
    </message>
    <message id="piece.fault.whole">
        <source>a whole number, %1 to %2</source>
        <translation>eine ganze Zahl, %1 bis %2</translation>
    </message>
    <message id="piece.fault.whole-or-none">
        <source>a whole number up to %1, or nothing</source>
        <translation>eine ganze Zahl bis %1, oder nichts</translation>
    </message>
    <message id="piece.instrument">
        <source>Played on</source>
        <translation>Gespielt auf</translation>
    </message>
    <message id="piece.instrument.example">
        <source>Clarinet in B♭</source>
        <translation>Klarinette in B</translation>
    </message>
    <message id="piece.meter">
        <source>Meter of the piece</source>
        <translation>Taktart des Stücks</translation>
    </message>
    <message id="piece.meter.example">
        <source>4/4</source>
        <translation>4/4</translation>
    </message>
    <message id="piece.meter.unknown">
        <source>not known; a run-through then tells no bars</source>
        <translation>nicht bekannt; ein Gesamtdurchlauf nennt dann keine Takte</translation>
    </message>
    <message id="piece.name">
        <source>The piece&apos;s name</source>
        <translation>Name des Stücks</translation>
    </message>
    <message id="piece.notes">
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message id="piece.tempo">
        <source>Whole-piece tempo, %1 =</source>
        <translation>Tempo des ganzen Stücks, %1 =</translation>
    </message>
    <message id="piece.transposition">
        <source>Sounds by semitones</source>
        <translation>Klingt, in Halbtönen</translation>
    </message>
    <message id="piece.transposition.example">
        <source>−2 for a clarinet in B♭</source>
        <translation>−2 für eine Klarinette in B</translation>
    </message>
    <message id="playing.spoken">
        <source>The click runs. %1 marks a miss, %2 stops.</source>
        <translation>Der Klick läuft. %1 markiert einen Fehler, %2 hält an.</translation>
    </message>
    <message id="playing.stop">
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message id="playing.target">
        <source>%1 ↑</source>
        <translation>%1 ↑</translation>
    </message>
    <message id="practice.day-opens">
        <source>A new day begins</source>
        <translation>Ein neuer Tag beginnt</translation>
    </message>
    <message id="practice.hint">
        <source>These travel with the practice folder.</source>
        <translation>Das wandert mit dem Übeordner mit.</translation>
    </message>
    <message id="practice.millis">
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message id="practice.pause">
        <source>Without a key, pause and ask after</source>
        <translation>Ohne Taste anhalten und fragen nach</translation>
    </message>
    <message id="practice.pause.never">
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message id="practice.play-on">
        <source>Play on after a miss: the run goes to its end and drops once</source>
        <translation>Nach einem Fehler weiterspielen: der Durchlauf geht bis zum Ende und senkt einmal</translation>
    </message>
    <message id="practice.reaction">
        <source>From a slip to the key (a guess: set your own)</source>
        <translation>Vom Patzer zur Taste (geschätzt: stell deinen Wert ein)</translation>
    </message>
    <message id="practice.read-only">
        <source>Another window writes to this practice folder: these cannot be changed here.</source>
        <translation>Ein anderes Fenster schreibt in diesen Übeordner: Hier lässt sich das nicht ändern.</translation>
    </message>
    <message id="practice.rest">
        <source>After a miss, breathe and read for at least</source>
        <translation>Nach einem Fehler zum Atmen und Lesen mindestens</translation>
    </message>
    <message id="practice.rest.none">
        <source>no pause</source>
        <translation>keine Pause</translation>
    </message>
    <message id="practice.secure-days">
        <source>A passage is secure when it was secure on</source>
        <translation>Sicher ist eine Stelle, wenn sie es war: so viele Tage</translation>
    </message>
    <message id="practice.title">
        <source>Practice</source>
        <translation>Üben</translation>
    </message>
    <message id="rest.note">
        <source>You have played for a good while: give ears and lip a rest. Pain, tingling or numbness means stop and see a professional.</source>
        <translation>Du spielst schon eine ganze Weile: gönn Ohren und Lippe eine Pause. Schmerz, Kribbeln oder Taubheit heißt aufhören und fachlichen Rat holen.</translation>
    </message>
    <message id="rest.read">
        <source>Read</source>
        <translation>Gelesen</translation>
    </message>
    <message id="rule.each">
        <source>a miss drops %1, each clean run climbs %2</source>
        <translation>ein Fehler −%1, jeder saubere Durchlauf +%2</translation>
    </message>
    <message id="rule.gentle">
        <source>%1, gentle near the target</source>
        <translation>%1, sanft nahe am Ziel</translation>
    </message>
    <message id="rule.notches" numerus="yes">
        <source>%n notches</source>
        <translation>
            <numerusform>%n Raste</numerusform>
            <numerusform>%n Rasten</numerusform>
        </translation>
    </message>
    <message id="rule.one-notch">
        <source>1 notch</source>
        <translation>1 Raste</translation>
    </message>
    <message id="rule.streak">
        <source>a miss drops %1, %2 clean in a row climb %3</source>
        <translation>ein Fehler −%1, %2 sauber in Folge +%3</translation>
    </message>
    <message id="run-through.about-bar">
        <source>about bar %1</source>
        <translation>etwa Takt %1</translation>
    </message>
    <message id="run-through.bar-stops">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="run-through.bar-unknown">
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message id="run-through.bars-guessed">
        <source>The bars are a guess, by the clock. Put them right, or leave out what you do not know.</source>
        <translation>Die Takte sind nach der Uhr geschätzt. Stell sie richtig, oder lass weg, was du nicht weißt.</translation>
    </message>
    <message id="run-through.choose-piece">
        <source>Choose a piece first.</source>
        <translation>Wähle erst ein Stück.</translation>
    </message>
    <message id="run-through.day-length">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="run-through.discard">
        <source>Throw it away</source>
        <translation>Verwerfen</translation>
    </message>
    <message id="run-through.earlier">
        <source>Run-throughs so far</source>
        <translation>Bisherige Gesamtdurchläufe</translation>
    </message>
    <message id="run-through.fault.bar">
        <source>a bar&apos;s number up to %1, or nothing</source>
        <translation>eine Taktzahl bis %1, oder nichts</translation>
    </message>
    <message id="run-through.give-up">
        <source>Give up</source>
        <translation>Abbrechen</translation>
    </message>
    <message id="run-through.hint">
        <source>Play the whole piece without the click. Where you come to a stop, press the key and play on.</source>
        <translation>Spiel das ganze Stück ohne Klick. Wo du hängen bleibst, drück die Taste und spiel weiter.</translation>
    </message>
    <message id="run-through.keep">
        <source>Keep it in the log</source>
        <translation>Ins Tagebuch übernehmen</translation>
    </message>
    <message id="run-through.last-note">
        <source>The last note</source>
        <translation>Der letzte Ton</translation>
    </message>
    <message id="run-through.no-stop">
        <source>no stop</source>
        <translation>kein Halt</translation>
    </message>
    <message id="run-through.none">
        <source>None yet.</source>
        <translation>Noch keiner.</translation>
    </message>
    <message id="run-through.one-stop">
        <source>1 stop</source>
        <translation>1 Halt</translation>
    </message>
    <message id="run-through.start">
        <source>Start</source>
        <translation>Los</translation>
    </message>
    <message id="run-through.stop">
        <source>A stop here</source>
        <translation>Hier ein Halt</translation>
    </message>
    <message id="run-through.stop-bar">
        <source>Stop at %1, bar</source>
        <translation>Halt bei %1, Takt</translation>
    </message>
    <message id="run-through.stops">
        <source>%1 stops</source>
        <translation>%1 Halte</translation>
    </message>
    <message id="run-through.time-stops">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="run-through.title">
        <source>%1, from start to finish</source>
        <translation>%1, von Anfang bis Ende</translation>
    </message>
    <message id="run-through.unfinished">
        <source>%1, not to the end</source>
        <translation>%1, nicht bis zum Ende</translation>
    </message>
    <message id="scale.ending.comma">
        <source>, </source>
        <translation>, </translation>
    </message>
    <message id="scale.ending.over">
        <source>it goes %1 notes over the last tonic and comes back</source>
        <translation>geht sie %1 Töne über den letzten Grundton und kommt zurück</translation>
    </message>
    <message id="scale.ending.over-one">
        <source>it goes one note over the last tonic and comes back</source>
        <translation>geht sie einen Ton über den letzten Grundton und kommt zurück</translation>
    </message>
    <message id="scale.ending.sentence">
        <source>To end on a beat, %1.</source>
        <translation>Um auf einem Schlag zu enden, %1.</translation>
    </message>
    <message id="scale.ending.tonic-twice">
        <source>the last tonic is played twice</source>
        <translation>erklingt der letzte Grundton zweimal</translation>
    </message>
    <message id="scale.ending.top-twice">
        <source>the top note is played twice</source>
        <translation>erklingt der oberste Ton zweimal</translation>
    </message>
    <message id="scale.ending.under">
        <source>it goes %1 notes under the last tonic and comes back</source>
        <translation>geht sie %1 Töne unter den letzten Grundton und kommt zurück</translation>
    </message>
    <message id="scale.ending.under-one">
        <source>it goes one note under the last tonic and comes back</source>
        <translation>geht sie einen Ton unter den letzten Grundton und kommt zurück</translation>
    </message>
    <message id="scale.kind.altered">
        <source>Altered</source>
        <translation>Alteriert</translation>
    </message>
    <message id="scale.kind.altered.in">
        <source>%1 altered</source>
        <translation>%1 alteriert</translation>
    </message>
    <message id="scale.kind.augmented">
        <source>Augmented arpeggio</source>
        <translation>Übermäßiger Dreiklang, gebrochen</translation>
    </message>
    <message id="scale.kind.augmented.in">
        <source>%1 augmented arpeggio</source>
        <translation>%1 übermäßiger Dreiklang, gebrochen</translation>
    </message>
    <message id="scale.kind.bebop-dominant">
        <source>Bebop dominant</source>
        <translation>Bebop, Dominante</translation>
    </message>
    <message id="scale.kind.bebop-dominant.in">
        <source>%1 bebop dominant</source>
        <translation>%1 Bebop, Dominante</translation>
    </message>
    <message id="scale.kind.bebop-major">
        <source>Bebop major</source>
        <translation>Bebop, Dur</translation>
    </message>
    <message id="scale.kind.bebop-major.in">
        <source>%1 bebop major</source>
        <translation>%1 Bebop, Dur</translation>
    </message>
    <message id="scale.kind.bebop-minor">
        <source>Bebop minor</source>
        <translation>Bebop, Moll</translation>
    </message>
    <message id="scale.kind.bebop-minor.in">
        <source>%1 bebop minor</source>
        <translation>%1 Bebop, Moll</translation>
    </message>
    <message id="scale.kind.blues">
        <source>Blues</source>
        <translation>Blues</translation>
    </message>
    <message id="scale.kind.blues.in">
        <source>%1 blues</source>
        <translation>%1 Blues</translation>
    </message>
    <message id="scale.kind.chromatic">
        <source>Chromatic</source>
        <translation>Chromatisch</translation>
    </message>
    <message id="scale.kind.chromatic.in">
        <source>chromatic from %1</source>
        <translation>chromatisch ab %1</translation>
    </message>
    <message id="scale.kind.diminished-half">
        <source>Diminished, half step first</source>
        <translation>Vermindert, Halbton zuerst</translation>
    </message>
    <message id="scale.kind.diminished-half.in">
        <source>%1 diminished, half step first</source>
        <translation>%1 vermindert, Halbton zuerst</translation>
    </message>
    <message id="scale.kind.diminished-seventh">
        <source>Diminished seventh arpeggio</source>
        <translation>Verminderter Septakkord, gebrochen</translation>
    </message>
    <message id="scale.kind.diminished-seventh.in">
        <source>%1 diminished seventh arpeggio</source>
        <translation>%1 verminderter Septakkord, gebrochen</translation>
    </message>
    <message id="scale.kind.diminished-whole">
        <source>Diminished, whole step first</source>
        <translation>Vermindert, Ganzton zuerst</translation>
    </message>
    <message id="scale.kind.diminished-whole.in">
        <source>%1 diminished, whole step first</source>
        <translation>%1 vermindert, Ganzton zuerst</translation>
    </message>
    <message id="scale.kind.dominant-seventh">
        <source>Dominant seventh arpeggio</source>
        <translation>Dominantseptakkord, gebrochen</translation>
    </message>
    <message id="scale.kind.dominant-seventh.in">
        <source>%1 dominant seventh arpeggio</source>
        <translation>%1 Dominantseptakkord, gebrochen</translation>
    </message>
    <message id="scale.kind.dorian">
        <source>Dorian</source>
        <translation>Dorisch</translation>
    </message>
    <message id="scale.kind.dorian.in">
        <source>%1 dorian</source>
        <translation>%1 dorisch</translation>
    </message>
    <message id="scale.kind.half-diminished">
        <source>Half-diminished arpeggio</source>
        <translation>Halbverminderter Akkord, gebrochen</translation>
    </message>
    <message id="scale.kind.half-diminished.in">
        <source>%1 half-diminished arpeggio</source>
        <translation>%1 halbverminderter Akkord, gebrochen</translation>
    </message>
    <message id="scale.kind.harmonic-minor">
        <source>Harmonic minor</source>
        <translation>Harmonisches Moll</translation>
    </message>
    <message id="scale.kind.harmonic-minor.in">
        <source>%1 harmonic minor</source>
        <translation>%1-Moll, harmonisch</translation>
    </message>
    <message id="scale.kind.jazz-minor">
        <source>Melodic minor, jazz</source>
        <translation>Melodisches Moll, Jazz</translation>
    </message>
    <message id="scale.kind.jazz-minor.in">
        <source>%1 jazz minor</source>
        <translation>%1-Moll, melodisch (Jazz)</translation>
    </message>
    <message id="scale.kind.locrian">
        <source>Locrian</source>
        <translation>Lokrisch</translation>
    </message>
    <message id="scale.kind.locrian.in">
        <source>%1 locrian</source>
        <translation>%1 lokrisch</translation>
    </message>
    <message id="scale.kind.lydian">
        <source>Lydian</source>
        <translation>Lydisch</translation>
    </message>
    <message id="scale.kind.lydian-dominant">
        <source>Lydian dominant</source>
        <translation>Lydisch-dominant</translation>
    </message>
    <message id="scale.kind.lydian-dominant.in">
        <source>%1 lydian dominant</source>
        <translation>%1 lydisch-dominant</translation>
    </message>
    <message id="scale.kind.lydian.in">
        <source>%1 lydian</source>
        <translation>%1 lydisch</translation>
    </message>
    <message id="scale.kind.major">
        <source>Major</source>
        <translation>Dur</translation>
    </message>
    <message id="scale.kind.major-arpeggio">
        <source>Major arpeggio</source>
        <translation>Durdreiklang, gebrochen</translation>
    </message>
    <message id="scale.kind.major-arpeggio.in">
        <source>%1 major arpeggio</source>
        <translation>%1-Durdreiklang, gebrochen</translation>
    </message>
    <message id="scale.kind.major-pentatonic">
        <source>Major pentatonic</source>
        <translation>Durpentatonik</translation>
    </message>
    <message id="scale.kind.major-pentatonic.in">
        <source>%1 major pentatonic</source>
        <translation>%1-Durpentatonik</translation>
    </message>
    <message id="scale.kind.major.in">
        <source>%1 major</source>
        <translation>%1-Dur</translation>
    </message>
    <message id="scale.kind.melodic-minor">
        <source>Melodic minor, classical</source>
        <translation>Melodisches Moll, klassisch</translation>
    </message>
    <message id="scale.kind.melodic-minor.in">
        <source>%1 melodic minor</source>
        <translation>%1-Moll, melodisch</translation>
    </message>
    <message id="scale.kind.minor-arpeggio">
        <source>Minor arpeggio</source>
        <translation>Molldreiklang, gebrochen</translation>
    </message>
    <message id="scale.kind.minor-arpeggio.in">
        <source>%1 minor arpeggio</source>
        <translation>%1-Molldreiklang, gebrochen</translation>
    </message>
    <message id="scale.kind.minor-pentatonic">
        <source>Minor pentatonic</source>
        <translation>Mollpentatonik</translation>
    </message>
    <message id="scale.kind.minor-pentatonic.in">
        <source>%1 minor pentatonic</source>
        <translation>%1-Mollpentatonik</translation>
    </message>
    <message id="scale.kind.mixolydian">
        <source>Mixolydian</source>
        <translation>Mixolydisch</translation>
    </message>
    <message id="scale.kind.mixolydian.in">
        <source>%1 mixolydian</source>
        <translation>%1 mixolydisch</translation>
    </message>
    <message id="scale.kind.natural-minor">
        <source>Natural minor (aeolian)</source>
        <translation>Natürliches Moll (äolisch)</translation>
    </message>
    <message id="scale.kind.natural-minor.in">
        <source>%1 natural minor</source>
        <translation>%1-Moll, natürlich</translation>
    </message>
    <message id="scale.kind.phrygian">
        <source>Phrygian</source>
        <translation>Phrygisch</translation>
    </message>
    <message id="scale.kind.phrygian.in">
        <source>%1 phrygian</source>
        <translation>%1 phrygisch</translation>
    </message>
    <message id="scale.kind.whole-tone">
        <source>Whole tone</source>
        <translation>Ganzton</translation>
    </message>
    <message id="scale.kind.whole-tone.in">
        <source>whole tone from %1</source>
        <translation>Ganzton ab %1</translation>
    </message>
    <message id="scale.order.fifths">
        <source>By fifths</source>
        <translation>In Quinten</translation>
    </message>
    <message id="scale.order.fourths">
        <source>By fourths</source>
        <translation>In Quarten</translation>
    </message>
    <message id="scale.order.random">
        <source>Drawn by lot</source>
        <translation>Ausgelost</translation>
    </message>
    <message id="scale.order.semitones">
        <source>By semitones</source>
        <translation>In Halbtönen</translation>
    </message>
    <message id="scale.pattern.fourths">
        <source>In fourths</source>
        <translation>In Quarten</translation>
    </message>
    <message id="scale.pattern.fourths.in">
        <source>%1 in fourths</source>
        <translation>%1 in Quarten</translation>
    </message>
    <message id="scale.pattern.in-order">
        <source>In order</source>
        <translation>Der Reihe nach</translation>
    </message>
    <message id="scale.pattern.in-order.in">
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message id="scale.pattern.thirds">
        <source>In thirds</source>
        <translation>In Terzen</translation>
    </message>
    <message id="scale.pattern.thirds.in">
        <source>%1 in thirds</source>
        <translation>%1 in Terzen</translation>
    </message>
    <message id="scale.pattern.turns-of-four">
        <source>In turns of four</source>
        <translation>In Vierergruppen</translation>
    </message>
    <message id="scale.pattern.turns-of-four.in">
        <source>%1 in turns of four</source>
        <translation>%1 in Vierergruppen</translation>
    </message>
    <message id="scale.pattern.turns-of-three">
        <source>In turns of three</source>
        <translation>In Dreiergruppen</translation>
    </message>
    <message id="scale.pattern.turns-of-three.in">
        <source>%1 in turns of three</source>
        <translation>%1 in Dreiergruppen</translation>
    </message>
    <message id="scale.range.one-octave">
        <source>One octave</source>
        <translation>Eine Oktave</translation>
    </message>
    <message id="scale.range.one-octave.in">
        <source>one octave</source>
        <translation>eine Oktave</translation>
    </message>
    <message id="scale.range.two-octaves">
        <source>Two octaves</source>
        <translation>Zwei Oktaven</translation>
    </message>
    <message id="scale.range.two-octaves.in">
        <source>two octaves</source>
        <translation>zwei Oktaven</translation>
    </message>
    <message id="scale.range.whole">
        <source>The whole range</source>
        <translation>Der ganze Umfang</translation>
    </message>
    <message id="scale.range.whole.in">
        <source>the whole range</source>
        <translation>der ganze Umfang</translation>
    </message>
    <message id="scale.signature.empty">
        <source>no sharps or flats</source>
        <translation>ohne Vorzeichen</translation>
    </message>
    <message id="scale.signature.flats" numerus="yes">
        <source>%n flats</source>
        <translation>
            <numerusform>%n B</numerusform>
            <numerusform>%n Been</numerusform>
        </translation>
    </message>
    <message id="scale.signature.none">
        <source>no key signature: its accidentals stand at the notes</source>
        <translation>ohne Vorzeichnung: die Vorzeichen stehen bei den Noten</translation>
    </message>
    <message id="scale.signature.one-flat">
        <source>1 flat</source>
        <translation>1 B</translation>
    </message>
    <message id="scale.signature.one-sharp">
        <source>1 sharp</source>
        <translation>1 Kreuz</translation>
    </message>
    <message id="scale.signature.sharps" numerus="yes">
        <source>%n sharps</source>
        <translation>
            <numerusform>%n Kreuz</numerusform>
            <numerusform>%n Kreuze</numerusform>
        </translation>
    </message>
    <message id="scale.title">
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message id="scales.altissimo">
        <source>Altissimo: it goes up to %1, and your highest note is %2. The whole range stays inside.</source>
        <translation>Über deinem Umfang: es geht bis %1 hinauf, und dein höchster Ton ist %2. Der ganze Umfang bleibt darin.</translation>
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
        <translation>%1 T</translation>
    </message>
    <message id="scales.cell.never">
        <source>not played yet</source>
        <translation>noch nicht gespielt</translation>
    </message>
    <message id="scales.cell.next">
        <source>next: %1</source>
        <translation>als Nächstes: %1</translation>
    </message>
    <message id="scales.cell.not-played">
        <source>%1: not played yet</source>
        <translation>%1: noch nicht gespielt</translation>
    </message>
    <message id="scales.cell.spoken">
        <source>%1: best %2, %3, played %4</source>
        <translation>%1: Bestes %2, %3, gespielt: %4</translation>
    </message>
    <message id="scales.cell.spoken-no-best">
        <source>%1: no best yet (%2), %3, %4</source>
        <translation>%1: noch kein Bestes (%2), %3, %4</translation>
    </message>
    <message id="scales.cell.streak">
        <source>%1/%2</source>
        <translation>%1/%2</translation>
    </message>
    <message id="scales.cell.title">
        <source>%1 in %2</source>
        <translation>%1, %2</translation>
    </message>
    <message id="scales.drill">
        <source>Drill it</source>
        <translation>Üben</translation>
    </message>
    <message id="scales.drill.key">
        <source>Return</source>
        <translation>Eingabetaste</translation>
    </message>
    <message id="scales.goes-on">
        <source>Goes on at %1.</source>
        <translation>Weiter geht es bei %1.</translation>
    </message>
    <message id="scales.grid">
        <source>Grid</source>
        <translation>Raster</translation>
    </message>
    <message id="scales.grid.spoken">
        <source>Twelve keys by seven subdivisions. The arrow keys choose, Return drills.</source>
        <translation>Zwölf Tonarten mal sieben Unterteilungen. Die Pfeiltasten wählen, die Eingabetaste übt.</translation>
    </message>
    <message id="scales.hear">
        <source>Hear it first</source>
        <translation>Erst anhören</translation>
    </message>
    <message id="scales.instrument">
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message id="scales.instrument.choose">
        <source>Choose yours</source>
        <translation>Wähle deines</translation>
    </message>
    <message id="scales.instrument.highest">
        <source>Highest note, as written</source>
        <translation>Höchster Ton, wie notiert</translation>
    </message>
    <message id="scales.instrument.hint">
        <source>Scales are written for it, in its clef and range. This travels with the practice folder.</source>
        <translation>Tonleitern werden dafür notiert, in seinem Schlüssel und Umfang. Das wandert mit dem Übeordner mit.</translation>
    </message>
    <message id="scales.instrument.lowest">
        <source>Lowest note, as written</source>
        <translation>Tiefster Ton, wie notiert</translation>
    </message>
    <message id="scales.instrument.name">
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message id="scales.instrument.octave-hint">
        <source>Octave 4 begins at middle C. A saxophone with a high F♯ key, a baritone with a low A, notes above the usual range: set what you play.</source>
        <translation>Oktave 4 beginnt beim eingestrichenen C. Ein Saxophon mit Hoch-Fis-Klappe, ein Bariton mit tiefem A, Töne über dem üblichen Umfang: stell ein, was du spielst.</translation>
    </message>
    <message id="scales.instrument.read-only">
        <source>Another window writes to this practice folder: these cannot be changed here.</source>
        <translation>Ein anderes Fenster schreibt in diesen Übeordner: Hier lässt sich das nicht ändern.</translation>
    </message>
    <message id="scales.instrument.redraw">
        <source>Draw another order of keys</source>
        <translation>Eine andere Reihenfolge auslosen</translation>
    </message>
    <message id="scales.instrument.title">
        <source>Your instrument</source>
        <translation>Dein Instrument</translation>
    </message>
    <message id="scales.instrument.to-grid">
        <source>To the grid</source>
        <translation>Zum Raster</translation>
    </message>
    <message id="scales.key.sounds">
        <source>%1, sounds as %2</source>
        <translation>%1, klingt als %2</translation>
    </message>
    <message id="scales.keys">
        <source>keys</source>
        <translation>Tonarten</translation>
    </message>
    <message id="scales.keys-hint">
        <source>Keys as written for the %1; how they sound stands below them.</source>
        <translation>Tonarten notiert für %1, darunter klingend.</translation>
    </message>
    <message id="scales.kind">
        <source>Kind of scale</source>
        <translation>Art der Tonleiter</translation>
    </message>
    <message id="scales.next.first">
        <source>Next: the first key in the slowest notes. Nothing was played yet.</source>
        <translation>Als Nächstes: die erste Tonart in den langsamsten Noten. Noch wurde nichts gespielt.</translation>
    </message>
    <message id="scales.next.furthest">
        <source>Next: its best lies furthest below the best of its row.</source>
        <translation>Als Nächstes: ihr Bestes liegt am weitesten unter dem Besten ihrer Reihe.</translation>
    </message>
    <message id="scales.next.never">
        <source>Next: the first that was never played, and nothing is older than a week.</source>
        <translation>Als Nächstes: das erste nie gespielte Feld, und nichts ist älter als eine Woche.</translation>
    </message>
    <message id="scales.next.oldest">
        <source>Next: not played for %1, the longest of all.</source>
        <translation>Als Nächstes: %1 nicht gespielt, am längsten von allen.</translation>
    </message>
    <message id="scales.no-tonic">
        <source>Your range has no such tonic: choose another key, or set your range wider.</source>
        <translation>Dein Umfang hat keinen solchen Grundton: wähle eine andere Tonart, oder stell den Umfang weiter.</translation>
    </message>
    <message id="scales.not-played">
        <source>Not played yet.</source>
        <translation>Noch nicht gespielt.</translation>
    </message>
    <message id="scales.notes">
        <source>%1 to the beat</source>
        <translation>%1 je Schlag</translation>
    </message>
    <message id="scales.order">
        <source>Order of the keys</source>
        <translation>Folge der Tonarten</translation>
    </message>
    <message id="scales.pattern">
        <source>Order of its notes</source>
        <translation>Folge ihrer Töne</translation>
    </message>
    <message id="scales.played">
        <source>Played %1, %2.</source>
        <translation>Gespielt: %1, %2.</translation>
    </message>
    <message id="scales.range">
        <source>How far it goes</source>
        <translation>Wie weit sie geht</translation>
    </message>
    <message id="scales.shown">
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message id="scales.starts-from">
        <source>Start at %1: your best in %2, two notches down.</source>
        <translation>Start bei %1: dein Bestes in %2, zwei Rasten tiefer.</translation>
    </message>
    <message id="scales.starts-slow">
        <source>Start at %1: slow enough to make no mistakes; change it in the drill.</source>
        <translation>Start bei %1: langsam genug für keinen Fehler; im Üben lässt es sich ändern.</translation>
    </message>
    <message id="scales.title">
        <source>Scales</source>
        <translation>Tonleitern</translation>
    </message>
    <message id="scales.two-sentences">
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message id="scales.weeks">
        <source>Weeks</source>
        <translation>Wochen</translation>
    </message>
    <message id="scales.weeks.cell">
        <source>%1, week of %2: %3</source>
        <translation>%1, Woche vom %2: %3</translation>
    </message>
    <message id="scales.weeks.hint">
        <source>How many runs of each key, in all kinds and subdivisions of this instrument. A week begins on Monday.</source>
        <translation>Wie viele Durchläufe jeder Tonart, in allen Arten und Unterteilungen dieses Instruments. Eine Woche beginnt am Montag.</translation>
    </message>
    <message id="scales.weeks.title">
        <source>Keys by weeks</source>
        <translation>Tonarten nach Wochen</translation>
    </message>
    <message id="scales.write">
        <source>Write it as %1</source>
        <translation>Schreib sie als %1</translation>
    </message>
    <message id="score.back-to-form">
        <source>Back to the form</source>
        <translation>Zurück zum Formular</translation>
    </message>
    <message id="score.bars">
        <source>bars %1 to %2</source>
        <translation>Takte %1 bis %2</translation>
    </message>
    <message id="score.figures">
        <source>%1 · %2 · %3 · %4</source>
        <translation>%1 · %2 · %3 · %4</translation>
    </message>
    <message id="score.file">
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message id="score.from-bar">
        <source>From bar</source>
        <translation>Von Takt</translation>
    </message>
    <message id="score.hint">
        <source>MusicXML (.musicxml, .xml, .mxl), as notation programs export it. Type where it is, or drop it here.</source>
        <translation>MusicXML (.musicxml, .xml, .mxl), wie Notensatzprogramme es ausgeben. Tippe den Ort ein, oder zieh die Datei hierher.</translation>
    </message>
    <message id="score.no-tempo">
        <source>no tempo marked</source>
        <translation>kein Tempo angegeben</translation>
    </message>
    <message id="score.no-title">
        <source>(no title)</source>
        <translation>(ohne Titel)</translation>
    </message>
    <message id="score.notes">
        <source>%1 notes</source>
        <translation>%1 Noten</translation>
    </message>
    <message id="score.one-note">
        <source>1 note</source>
        <translation>1 Note</translation>
    </message>
    <message id="score.part">
        <source>Part</source>
        <translation>Stimme</translation>
    </message>
    <message id="score.part-number">
        <source>part %1</source>
        <translation>Stimme %1</translation>
    </message>
    <message id="score.read">
        <source>Read it</source>
        <translation>Lesen</translation>
    </message>
    <message id="score.take">
        <source>Take these bars</source>
        <translation>Diese Takte nehmen</translation>
    </message>
    <message id="score.title">
        <source>A passage from a music file</source>
        <translation>Eine Stelle aus einer Notendatei</translation>
    </message>
    <message id="score.title-composer">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="score.to-bar">
        <source>To bar</source>
        <translation>Bis Takt</translation>
    </message>
    <message id="score.too-many-notes">
        <source>%1, too many to be kept</source>
        <translation>%1, zu viele zum Behalten</translation>
    </message>
    <message id="settings.day-opening.as-left">
        <source>Where it was left</source>
        <translation>Wo er aufgehört hat</translation>
    </message>
    <message id="settings.day-opening.below">
        <source>Two rungs below the last full row</source>
        <translation>Zwei Sprossen unter der letzten vollen Serie</translation>
    </message>
    <message id="settings.day-opening.start">
        <source>At the start tempo</source>
        <translation>Beim Starttempo</translation>
    </message>
    <message id="settings.keys">
        <source>Your keys</source>
        <translation>Deine Tasten</translation>
    </message>
    <message id="settings.keys.hint">
        <source>A press on a key takes it away. Tab, Return on a button, the arrows in a list and Esc in a form work as in any other program, and stay.</source>
        <translation>Ein Druck auf eine Taste nimmt sie weg. Tab, Eingabe auf einem Knopf, die Pfeile in einer Liste und Esc in einem Formular tun, was sie überall tun, und bleiben.</translation>
    </message>
    <message id="settings.language">
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message id="settings.language.hint">
        <source>Words, numbers and dates on the screen. Files are the same in every language.</source>
        <translation>Wörter, Zahlen und Daten auf dem Bildschirm. Dateien sind in jeder Sprache gleich.</translation>
    </message>
    <message id="settings.language.system">
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message id="settings.looks">
        <source>Looks</source>
        <translation>Aussehen</translation>
    </message>
    <message id="settings.looks.dark">
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message id="settings.looks.light">
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message id="settings.looks.system">
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message id="settings.title">
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message id="settings.voice.dry">
        <source>Dry: short and plain</source>
        <translation>Trocken: kurz und schlicht</translation>
    </message>
    <message id="settings.voice.metal">
        <source>Metal: the sharpest</source>
        <translation>Metall: am schärfsten</translation>
    </message>
    <message id="settings.voice.reed">
        <source>Reed: edgy</source>
        <translation>Rohrblatt: scharf</translation>
    </message>
    <message id="settings.voice.wood">
        <source>Wood: warm</source>
        <translation>Holz: warm</translation>
    </message>
    <message id="sheet.continued">
        <source>%1, continued</source>
        <translation>%1, Fortsetzung</translation>
    </message>
    <message id="sheet.day">
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message id="sheet.gentle">
        <source>Near the target a miss drops one climb; at it, the second of two running.</source>
        <translation>Nahe am Ziel senkt ein Fehler um einen Anstieg; am Ziel erst der zweite in Folge.</translation>
    </message>
    <message id="sheet.how-to">
        <source>Climb from the bottom. A clean run ticks a circle; a miss is a stroke in the box and rubs out that rung&apos;s ticks.</source>
        <translation>Steige von unten hinauf. Ein sauberer Durchlauf hakt einen Kreis ab; ein Fehler ist ein Strich im Kasten und löscht die Haken dieser Sprosse.</translation>
    </message>
    <message id="sheet.misses">
        <source>misses</source>
        <translation>Fehler</translation>
    </message>
    <message id="sheet.notes">
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message id="sheet.page">
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message id="sheet.rule">
        <source>The rule: %1.</source>
        <translation>Die Regel: %1.</translation>
    </message>
    <message id="sheet.target">
        <source>target</source>
        <translation>Ziel</translation>
    </message>
    <message id="sheet.tempi">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="sheet.tempi-to-target">
        <source>%1, to %2 · %3</source>
        <translation>%1, bis %2 · %3</translation>
    </message>
    <message id="sound.delay">
        <source>Wireless headphones are late: move the picture of the beat, and the marks, later by</source>
        <translation>Funkkopfhörer sind spät: Bild des Schlags und Markierungen später um</translation>
    </message>
    <message id="sound.dropouts">
        <source>The sound has broken off %1 since Piolo was opened: the computer was too busy. Closing other programs helps.</source>
        <translation>Der Ton ist %1 abgerissen, seit Piolo geöffnet wurde: Der Rechner war zu beschäftigt. Andere Programme zu schließen hilft.</translation>
    </message>
    <message id="sound.dropouts.none">
        <source>The sound has not broken off since Piolo was opened.</source>
        <translation>Der Ton ist nicht abgerissen, seit Piolo geöffnet wurde.</translation>
    </message>
    <message id="sound.dropouts.once">
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message id="sound.dropouts.times">
        <source>%1 times</source>
        <translation>%1-mal</translation>
    </message>
    <message id="sound.layer.all">
        <source>Everything</source>
        <translation>Alles</translation>
    </message>
    <message id="sound.layer.beats">
        <source>Beats</source>
        <translation>Schläge</translation>
    </message>
    <message id="sound.layer.count-in">
        <source>Count-in</source>
        <translation>Einzähler</translation>
    </message>
    <message id="sound.layer.cues">
        <source>Short signals</source>
        <translation>Kurze Signale</translation>
    </message>
    <message id="sound.layer.downbeats">
        <source>Downbeats</source>
        <translation>Die Eins</translation>
    </message>
    <message id="sound.layer.groups">
        <source>Groups</source>
        <translation>Gruppen</translation>
    </message>
    <message id="sound.layer.notes">
        <source>Notes heard first</source>
        <translation>Noten zum Anhören</translation>
    </message>
    <message id="sound.layer.subdivisions">
        <source>Subdivisions</source>
        <translation>Unterteilungen</translation>
    </message>
    <message id="sound.level.hint">
        <source>Your horn is louder than the click, and that is well so: choose a sharper voice rather than more level. The level starts low; keep it there on headphones.</source>
        <translation>Dein Instrument ist lauter als der Klick, und das ist gut so: Wähle lieber eine schärfere Stimme als mehr Pegel. Der Pegel beginnt niedrig; lass ihn mit Kopfhörern so.</translation>
    </message>
    <message id="sound.level.mute">
        <source>Mute</source>
        <translation>Stumm</translation>
    </message>
    <message id="sound.level.mute.spoken">
        <source>%1, mute</source>
        <translation>%1, stumm</translation>
    </message>
    <message id="sound.level.muted">
        <source>muted</source>
        <translation>stumm</translation>
    </message>
    <message id="sound.level.spoken">
        <source>%1, level</source>
        <translation>%1, Pegel</translation>
    </message>
    <message id="sound.output">
        <source>Sound comes out of</source>
        <translation>Der Ton kommt aus</translation>
    </message>
    <message id="sound.output.system">
        <source>The system&apos;s own choice</source>
        <translation>Was das System wählt</translation>
    </message>
    <message id="sound.output.unplugged">
        <source>%1 (not plugged in)</source>
        <translation>%1 (nicht eingesteckt)</translation>
    </message>
    <message id="sound.title">
        <source>Sound</source>
        <translation>Ton</translation>
    </message>
    <message id="sound.voice">
        <source>Voice of the click</source>
        <translation>Stimme des Klicks</translation>
    </message>
    <message id="staff.bass">
        <source>bass clef</source>
        <translation>Bassschlüssel</translation>
    </message>
    <message id="staff.double-flat">
        <source> double flat</source>
        <translation> Doppel-B</translation>
    </message>
    <message id="staff.double-sharp">
        <source> double sharp</source>
        <translation> Doppelkreuz</translation>
    </message>
    <message id="staff.flat">
        <source> flat</source>
        <translation> Be</translation>
    </message>
    <message id="staff.notes">
        <source>%1 notes</source>
        <translation>%1 Noten</translation>
    </message>
    <message id="staff.one-note">
        <source>one note</source>
        <translation>eine Note</translation>
    </message>
    <message id="staff.sharp">
        <source> sharp</source>
        <translation> Kreuz</translation>
    </message>
    <message id="staff.spoken">
        <source>Staff: %1, %2 from %3 to %4, %5, %6</source>
        <translation>Notensystem: %1, %2 von %3 bis %4, %5, %6</translation>
    </message>
    <message id="staff.treble">
        <source>treble clef</source>
        <translation>Violinschlüssel</translation>
    </message>
    <message id="stage.in-context">
        <source>in context</source>
        <translation>im Zusammenhang</translation>
    </message>
    <message id="stage.next">
        <source>On to: %1</source>
        <translation>Weiter zu: %1</translation>
    </message>
    <message id="stage.run-throughs">
        <source>in run-throughs</source>
        <translation>in Gesamtdurchläufen</translation>
    </message>
    <message id="stage.secure">
        <source>secure at the target</source>
        <translation>am Ziel sicher</translation>
    </message>
    <message id="stage.slow">
        <source>slow with the click</source>
        <translation>langsam mit Klick</translation>
    </message>
    <message id="stage.spoken">
        <source>Stage of this passage</source>
        <translation>Etappe dieser Stelle</translation>
    </message>
    <message id="stage.standing.full-streak">
        <source>There was a full streak at the target.</source>
        <translation>Am Ziel gab es eine volle Serie.</translation>
    </message>
    <message id="stage.standing.in-context">
        <source>Clean in a row in context, on one day: %1 of %2.</source>
        <translation>Sauber in Folge im Zusammenhang, an einem Tag: %1 von %2.</translation>
    </message>
    <message id="stage.standing.next-full-streak">
        <source>Next: a full streak at the target.</source>
        <translation>Als Nächstes: eine volle Serie am Ziel.</translation>
    </message>
    <message id="stage.standing.run-throughs">
        <source>Run-throughs in a row without a stop here: %1 of %2.</source>
        <translation>Gesamtdurchläufe in Folge ohne Halt hier: %1 von %2.</translation>
    </message>
    <message id="stage.standing.secure" numerus="yes">
        <source>Secure at the target on %1 of %n days.</source>
        <translation>
            <numerusform>Am Ziel sicher an %1 von %n Tag.</numerusform>
            <numerusform>Am Ziel sicher an %1 von %n Tagen.</numerusform>
        </translation>
    </message>
    <message id="stage.standing.without-click">
        <source>Clean in a row without the click, on one day: %1 of %2.</source>
        <translation>Sauber in Folge ohne Klick, an einem Tag: %1 von %2.</translation>
    </message>
    <message id="stage.title">
        <source>Stage</source>
        <translation>Etappe</translation>
    </message>
    <message id="stage.without-click">
        <source>without the click</source>
        <translation>ohne Klick</translation>
    </message>
    <message id="subdivision.dotted-halves">
        <source>dotted halves</source>
        <translation>punktierte Halbe</translation>
    </message>
    <message id="subdivision.dotted-quarters">
        <source>dotted quarters</source>
        <translation>punktierte Viertel</translation>
    </message>
    <message id="subdivision.duplets">
        <source>duplets</source>
        <translation>Duolen</translation>
    </message>
    <message id="subdivision.eighth-triplets">
        <source>eighth triplets</source>
        <translation>Achteltriolen</translation>
    </message>
    <message id="subdivision.eighths">
        <source>eighths</source>
        <translation>Achtel</translation>
    </message>
    <message id="subdivision.halves">
        <source>halves</source>
        <translation>Halbe</translation>
    </message>
    <message id="subdivision.quadruplets">
        <source>quadruplets</source>
        <translation>Quartolen</translation>
    </message>
    <message id="subdivision.quarter-triplets">
        <source>quarter triplets</source>
        <translation>Vierteltriolen</translation>
    </message>
    <message id="subdivision.quarters">
        <source>quarters</source>
        <translation>Viertel</translation>
    </message>
    <message id="subdivision.quintuplets">
        <source>quintuplets</source>
        <translation>Quintolen</translation>
    </message>
    <message id="subdivision.septuplets">
        <source>septuplets</source>
        <translation>Septolen</translation>
    </message>
    <message id="subdivision.sextuplets">
        <source>sextuplets</source>
        <translation>Sextolen</translation>
    </message>
    <message id="subdivision.sixteenth-triplets">
        <source>sixteenth triplets</source>
        <translation>Sechzehnteltriolen</translation>
    </message>
    <message id="subdivision.sixteenths">
        <source>sixteenths</source>
        <translation>Sechzehntel</translation>
    </message>
    <message id="subdivision.thirty-seconds">
        <source>thirty-seconds</source>
        <translation>Zweiunddreißigstel</translation>
    </message>
    <message id="subdivision.to-the-beat">
        <source>%1 to the beat</source>
        <translation>%1 je Schlag</translation>
    </message>
    <message id="subdivision.triplets">
        <source>triplets</source>
        <translation>Triolen</translation>
    </message>
    <message id="switch.bounce">
        <source>It bounces: again within</source>
        <translation>Prellt: wieder binnen</translation>
    </message>
    <message id="switch.held">
        <source>Held, when it is down for</source>
        <translation>Gehalten, ab</translation>
    </message>
    <message id="switch.hint">
        <source>Most pedals act as a keyboard. What does yours send? Your keys are set to match; MIDI switches stay as they are.</source>
        <translation>Die meisten Pedale verhalten sich wie eine Tastatur. Was sendet deines? Deine Tasten werden danach eingestellt; MIDI-Schalter bleiben, wie sie sind.</translation>
    </message>
    <message id="switch.millis">
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message id="switch.one-pedal">
        <source>One pedal alone does everything: a press starts, and marks a miss while the click runs; two presses take back; held, it stops the click, and while stopped it opens the next passage.</source>
        <translation>Ein Pedal allein tut alles: ein Druck startet und markiert einen Fehler, solange der Klick läuft; zwei nehmen zurück; gehalten stoppt es den Klick, und im Stand öffnet es die nächste Stelle.</translation>
    </message>
    <message id="switch.press">
        <source>Press it now (Esc gives up)</source>
        <translation>Drück es jetzt (Esc bricht ab)</translation>
    </message>
    <message id="switch.sends">
        <source>What the pedal sends</source>
        <translation>Was das Pedal sendet</translation>
    </message>
    <message id="switch.title">
        <source>Pedals and switches</source>
        <translation>Pedale und Schalter</translation>
    </message>
    <message id="switch.twice">
        <source>Two presses, within</source>
        <translation>Zwei Drücke, binnen</translation>
    </message>
    <message id="switch.use-midi">
        <source>Use one MIDI switch for all</source>
        <translation>Ein MIDI-Schalter für alles</translation>
    </message>
    <message id="switch.use-pedal">
        <source>Use one pedal for all</source>
        <translation>Ein Pedal für alles</translation>
    </message>
    <message id="today.best">
        <source>Best with a full streak</source>
        <translation>Bestes mit voller Serie</translation>
    </message>
    <message id="today.clean-runs">
        <source>Clean runs today</source>
        <translation>Heute sauber</translation>
    </message>
    <message id="today.log">
        <source>Practice log</source>
        <translation>Übetagebuch</translation>
    </message>
    <message id="today.none">
        <source>none yet</source>
        <translation>noch nichts</translation>
    </message>
    <message id="today.of">
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message id="today.played">
        <source>Played today</source>
        <translation>Heute gespielt</translation>
    </message>
    <message id="today.read-only">
        <source>not recorded</source>
        <translation>nicht aufgezeichnet</translation>
    </message>
    <message id="today.saved">
        <source>✓ saved</source>
        <translation>✓ gespeichert</translation>
    </message>
    <message id="today.secure">
        <source>Secure</source>
        <translation>Sicher</translation>
    </message>
    <message id="today.secure-on" numerus="yes">
        <source>on %1 of %n days</source>
        <translation>
            <numerusform>an %1 von %n Tag</numerusform>
            <numerusform>an %1 von %n Tagen</numerusform>
        </translation>
    </message>
    <message id="today.secure-yes" numerus="yes">
        <source>yes, on %n days</source>
        <translation>
            <numerusform>ja, an %n Tag</numerusform>
            <numerusform>ja, an %n Tagen</numerusform>
        </translation>
    </message>
    <message id="today.title">
        <source>Where you stand</source>
        <translation>Wo du stehst</translation>
    </message>
    <message id="today.unsaved" numerus="yes">
        <source>%n not saved yet</source>
        <translation>
            <numerusform>%n noch nicht gespeichert</numerusform>
            <numerusform>%n noch nicht gespeichert</numerusform>
        </translation>
    </message>
    <message id="welcome.bars">
        <source>How many bars</source>
        <translation>Wie viele Takte</translation>
    </message>
    <message id="welcome.drill">
        <source>To the drill</source>
        <translation>Zum Üben</translation>
    </message>
    <message id="welcome.first-bar">
        <source>First bar</source>
        <translation>Erster Takt</translation>
    </message>
    <message id="welcome.hint">
        <source>Take the bars that go wrong, and start at a tempo where nothing does. The rest has a good beginning and can be changed later.</source>
        <translation>Nimm die Takte, die schiefgehen, und fang in einem Tempo an, in dem nichts schiefgeht. Der Rest hat einen guten Anfang und lässt sich später ändern.</translation>
    </message>
    <message id="welcome.meter">
        <source>Meter</source>
        <translation>Taktart</translation>
    </message>
    <message id="welcome.name">
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message id="welcome.passage">
        <source>The passage</source>
        <translation>Die Stelle</translation>
    </message>
    <message id="welcome.start">
        <source>Start at</source>
        <translation>Start bei</translation>
    </message>
    <message id="welcome.subdivision">
        <source>Subdivision</source>
        <translation>Unterteilung</translation>
    </message>
    <message id="welcome.target">
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message id="welcome.title">
        <source>Your first passage</source>
        <translation>Deine erste Stelle</translation>
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
        <translation>Takt %1</translation>
    </message>
    <message id="words.bar-beat">
        <source>%1, beat %2</source>
        <translation>%1, Schlag %2</translation>
    </message>
    <message id="words.bars">
        <source>bars %1–%2</source>
        <translation>Takte %1–%2</translation>
    </message>
    <message id="words.date">
        <source>d MMMM</source>
        <translation>d. MMMM</translation>
    </message>
    <message id="words.date-with-year">
        <source>d MMMM yyyy</source>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message id="words.days" numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message id="words.days-ago" numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>vor %n Tag</numerusform>
            <numerusform>vor %n Tagen</numerusform>
        </translation>
    </message>
    <message id="words.from-bar">
        <source>from bar %1</source>
        <translation>ab Takt %1</translation>
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
        <translation>%1 von %2 sauber in Folge</translation>
    </message>
    <message id="words.in-days" numerus="yes">
        <source>in %n days</source>
        <translation>
            <numerusform>in %n Tag</numerusform>
            <numerusform>in %n Tagen</numerusform>
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
        <translation>%1 von 100</translation>
    </message>
    <message id="words.one-day">
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message id="words.one-passage">
        <source>1 passage</source>
        <translation>1 Stelle</translation>
    </message>
    <message id="words.one-run">
        <source>1 run</source>
        <translation>1 Durchlauf</translation>
    </message>
    <message id="words.passages" numerus="yes">
        <source>%n passages</source>
        <translation>
            <numerusform>%n Stelle</numerusform>
            <numerusform>%n Stellen</numerusform>
        </translation>
    </message>
    <message id="words.runs" numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n Durchlauf</numerusform>
            <numerusform>%n Durchläufe</numerusform>
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
        <translation>heute</translation>
    </message>
    <message id="words.tomorrow">
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message id="words.weekday-date">
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message id="words.yesterday">
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
</context>
</TS>
