<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message id="accents.from-meter">
        <source>Follow the meter</source>
        <translation>Nach der Taktart</translation>
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
    <message id="breaks.by-missed-bar">
        <source>by bar, only bars with misses</source>
        <translation>nach Takten, nur Takte mit Fehlern</translation>
    </message>
    <message id="breaks.by-worst-bar" numerus="yes">
        <source>by bar, the %n worst</source>
        <translation>
            <numerusform>nach Takten, die %n schlimmsten</numerusform>
            <numerusform>nach Takten, die %n schlimmsten</numerusform>
        </translation>
    </message>
    <message id="breaks.counted">
        <source>%1 in %2, %3</source>
        <translation>%1 auf %2, %3</translation>
    </message>
    <message id="breaks.counted-elsewhere">
        <source>%1; the place of %2 is unknown</source>
        <translation>%1; bei %2 ist der Ort unbekannt</translation>
    </message>
    <message id="breaks.drill">
        <source>Drill it</source>
        <translation>Üben</translation>
    </message>
    <message id="breaks.empty">
        <source>Your misses appear here, by bar and beat.</source>
        <translation>Hier erscheinen deine Fehler, nach Takt und Schlag.</translation>
    </message>
    <message id="breaks.in-parts">
        <source>Split in %1</source>
        <translation>In %1 teilen</translation>
    </message>
    <message id="breaks.in-parts.hint">
        <source>Makes a passage of each part; a part ends on the beat where the next one begins</source>
        <translation>Macht aus jedem Teil eine Stelle; ein Teil endet auf dem Schlag, mit dem der nächste beginnt</translation>
    </message>
    <message id="breaks.last-bar-first">
        <source>Last bar first</source>
        <translation>Letzter Takt zuerst</translation>
    </message>
    <message id="breaks.last-bar-first.hint">
        <source>Makes passages of the last bar, the last two bars, and so on</source>
        <translation>Macht Stellen aus dem letzten Takt, den letzten zwei Takten und so weiter</translation>
    </message>
    <message id="breaks.made">
        <source>Created “%1”</source>
        <translation>„%1“ angelegt</translation>
    </message>
    <message id="breaks.made-of">
        <source>New passage: %1</source>
        <translation>Neue Stelle: %1</translation>
    </message>
    <message id="breaks.made-parts">
        <source>Created %1, starting with “%2”</source>
        <translation>%1 angelegt, als erste „%2“</translation>
    </message>
    <message id="breaks.misses" numerus="yes">
        <source>%n misses</source>
        <translation>
            <numerusform>%n Fehler</numerusform>
            <numerusform>%n Fehler</numerusform>
        </translation>
    </message>
    <message id="breaks.no-miss">
        <source>No misses so far.</source>
        <translation>Bisher keine Fehler.</translation>
    </message>
    <message id="breaks.none-counted">
        <source>No run has counted so far.</source>
        <translation>Bisher hat kein Durchlauf gezählt.</translation>
    </message>
    <message id="breaks.not-played">
        <source>Not played yet.</source>
        <translation>Noch nicht gespielt.</translation>
    </message>
    <message id="breaks.reason">
        <source>Most misses happen there.</source>
        <translation>Dort passieren die meisten Fehler.</translation>
    </message>
    <message id="breaks.reason-run-up">
        <source>Most misses happen there; one bar of run-up is included.</source>
        <translation>Dort passieren die meisten Fehler; ein Takt Anlauf ist dabei.</translation>
    </message>
    <message id="breaks.title">
        <source>Where it breaks</source>
        <translation>Wo es hakt</translation>
    </message>
    <message id="breaks.where">
        <source>Where “%1” breaks</source>
        <translation>Wo „%1“ hakt</translation>
    </message>
    <message id="care.authority">
        <source>Your teacher, your doctor and the rules where you practise come first.</source>
        <translation>Was deine Lehrkraft, deine Ärztin oder dein Arzt sagt und welche Regeln an deinem Übeort gelten, geht vor.</translation>
    </message>
    <message id="care.gradually">
        <source>Increase your minutes gradually: a little more each week, no sudden jumps, and a break well before you need one.</source>
        <translation>Steigere deine Übezeit nach und nach: jede Woche ein wenig mehr, keine Sprünge, und eine Pause, lange bevor du sie brauchst.</translation>
    </message>
    <message id="care.headphones">
        <source>Keep headphones low: your instrument is loud already, and Piolo does not know how loud it is at your ear.</source>
        <translation>Stell Kopfhörer leise: Dein Instrument ist ohnehin laut, und Piolo weiß nicht, wie laut es an deinem Ohr ist.</translation>
    </message>
    <message id="care.pain">
        <source>If you feel pain, tingling or numbness, stop and see a professional before you play on.</source>
        <translation>Bei Schmerzen, Kribbeln oder Taubheitsgefühl hör auf und hol dir fachlichen Rat, bevor du weiterspielst.</translation>
    </message>
    <message id="care.rest">
        <source>Rest your lip and your ears, and also the thumb that carries the instrument.</source>
        <translation>Gönn Lippe und Ohren Ruhe, und auch dem Daumen, der das Instrument trägt.</translation>
    </message>
    <message id="care.title">
        <source>Take care of yourself</source>
        <translation>Pass auf dich auf</translation>
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
        <translation>Atempause vor</translation>
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
        <source>The bars go on while the click is silent. For a breath, enter a bar or bar:beat, then + and the beats to wait. Another random seed picks other silent bars and beats.</source>
        <translation>Die Takte laufen weiter, während der Klick schweigt. Für eine Atemstelle gib Takt oder Takt:Schlag ein, dann + und die Schläge Wartezeit. Eine andere Zufallszahl wählt andere stumme Takte und Schläge.</translation>
    </message>
    <message id="click-form.lost-beats">
        <source>Silent beats, %</source>
        <translation>Stumme Schläge, %</translation>
    </message>
    <message id="click-form.on">
        <source>Click on</source>
        <translation>Klick auf</translation>
    </message>
    <message id="click-form.seed">
        <source>Random seed</source>
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
        <source>custom accents</source>
        <translation>eigene Betonungen</translation>
    </message>
    <message id="click.bars-in-turn">
        <source>alternating: %1 bars with the click, %2 without</source>
        <translation>Takte im Wechsel: %1 mit Klick, %2 ohne</translation>
    </message>
    <message id="click.beats-left-out">
        <source>%1 of 100 beats silent</source>
        <translation>%1 von 100 Schlägen stumm</translation>
    </message>
    <message id="click.breath-at-places" numerus="yes">
        <source>waits for breath at %n places</source>
        <translation>
            <numerusform>wartet an %n Atemstelle</numerusform>
            <numerusform>wartet an %n Atemstellen</numerusform>
        </translation>
    </message>
    <message id="click.breath-below">
        <source>%1 below %2</source>
        <translation>%1, nur unter %2</translation>
    </message>
    <message id="click.down">
        <source>Down to %1</source>
        <translation>Hinunter auf %1</translation>
    </message>
    <message id="click.downbeats">
        <source>downbeats only</source>
        <translation>nur die Eins</translation>
    </message>
    <message id="click.eighths">
        <source>eighths</source>
        <translation>Achtel</translation>
    </message>
    <message id="click.every-beat">
        <source>every beat</source>
        <translation>jeder Schlag</translation>
    </message>
    <message id="click.half-strong">
        <source>half strong</source>
        <translation>halb betont</translation>
    </message>
    <message id="click.is">
        <source>%1 =</source>
        <translation>%1 =</translation>
    </message>
    <message id="click.keep">
        <source>Make a passage of this</source>
        <translation>Daraus eine Stelle machen</translation>
    </message>
    <message id="click.not-logged">
        <source>Nothing here is logged</source>
        <translation>Nichts davon kommt ins Tagebuch</translation>
    </message>
    <message id="click.now">
        <source>Click %1</source>
        <translation>Klick %1</translation>
    </message>
    <message id="click.off-beats">
        <source>off-beats only</source>
        <translation>nur Offbeats</translation>
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
        <source>%1 of 100 bars silent</source>
        <translation>%1 von 100 Takten stumm</translation>
    </message>
    <message id="click.sixteenths">
        <source>sixteenths</source>
        <translation>Sechzehntel</translation>
    </message>
    <message id="click.strong">
        <source>strong</source>
        <translation>betont</translation>
    </message>
    <message id="click.swing">
        <source>swing %1 in %2</source>
        <translation>Swing %1 (%2)</translation>
    </message>
    <message id="click.tap">
        <source>Tap</source>
        <translation>Klopfen</translation>
    </message>
    <message id="click.tempo">
        <source>Tempo, in beats per minute</source>
        <translation>Tempo in Schlägen pro Minute</translation>
    </message>
    <message id="click.title">
        <source>Just a click</source>
        <translation>Nur der Klick</translation>
    </message>
    <message id="click.two-and-four">
        <source>2 and 4 only</source>
        <translation>nur 2 und 4</translation>
    </message>
    <message id="click.up">
        <source>Up to %1</source>
        <translation>Hinauf auf %1</translation>
    </message>
    <message id="click.without-bars">
        <source>without bars</source>
        <translation>ohne Takte</translation>
    </message>
    <message id="closing.cancel">
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message id="closing.confirm">
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message id="closing.title">
        <source>Not everything is saved yet</source>
        <translation>Noch ist nicht alles gespeichert</translation>
    </message>
    <message id="closing.unsaved" numerus="yes">
        <source>%n marks are not in the practice folder yet. If you close the window now, they are kept on this machine and saved at the next start.</source>
        <translation>
            <numerusform>%n Markierung ist noch nicht im Übeordner. Wenn du das Fenster jetzt schließt, bleibt sie auf diesem Gerät und wird beim nächsten Start gespeichert.</numerusform>
            <numerusform>%n Markierungen sind noch nicht im Übeordner. Wenn du das Fenster jetzt schließt, bleiben sie auf diesem Gerät und werden beim nächsten Start gespeichert.</numerusform>
        </translation>
    </message>
    <message id="curve.all">
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message id="curve.along">
        <source>Axis</source>
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
        <source>Zoom in</source>
        <translation>Vergrößern</translation>
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
        <source>The curve starts with your first run.</source>
        <translation>Die Kurve beginnt mit deinem ersten Durchlauf.</translation>
    </message>
    <message id="curve.farther">
        <source>Zoom out</source>
        <translation>Verkleinern</translation>
    </message>
    <message id="curve.file">
        <source>File name (.svg, .png, .pdf or .csv)</source>
        <translation>Dateiname (.svg, .png, .pdf oder .csv)</translation>
    </message>
    <message id="curve.leave">
        <source>Cancel</source>
        <translation>Abbrechen</translation>
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
        <translation>ein sauberer Versuch im Zieltempo</translation>
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
        <translation>ein Versuch im Zieltempo mit Fehler</translation>
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
        <source>Tempo curves: %1</source>
        <translation>Tempokurven: %1</translation>
    </message>
    <message id="curve.spoken.keys">
        <source>Plus and Minus zoom. Left and Right scroll; with Shift they go from run to run. Up and Down change the passage.</source>
        <translation>Plus und Minus zoomen. Pfeil links und rechts verschieben; mit Umschalt springen sie von Durchlauf zu Durchlauf. Pfeil auf und ab wechseln die Stelle.</translation>
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
        <source>silent beats per hundred</source>
        <translation>stumme Schläge von hundert</translation>
    </message>
    <message id="difference.breath">
        <source>beats of breath</source>
        <translation>Schläge Atempause</translation>
    </message>
    <message id="difference.breath-below">
        <source>waits below</source>
        <translation>Atempause unter</translation>
    </message>
    <message id="difference.breaths">
        <source>waits for breath</source>
        <translation>Atemstellen</translation>
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
        <source>count-in bars</source>
        <translation>Einzähltakte</translation>
    </message>
    <message id="difference.differs">
        <source>different</source>
        <translation>anders</translation>
    </message>
    <message id="difference.drop">
        <source>drop</source>
        <translation>Abstieg</translation>
    </message>
    <message id="difference.due">
        <source>due date</source>
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
        <source>notes per group</source>
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
        <translation>leer</translation>
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
        <source>notes per beat</source>
        <translation>Noten je Schlag</translation>
    </message>
    <message id="difference.origin">
        <source>made from passage</source>
        <translation>aus der Stelle</translation>
    </message>
    <message id="difference.pattern">
        <source>order of notes</source>
        <translation>Tonfolge</translation>
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
        <source>random seed</source>
        <translation>Zufallszahl</translation>
    </message>
    <message id="difference.silent-bars">
        <source>silent bars per hundred</source>
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
        <source>pulses per beat</source>
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
    <message id="drill.aside.note">
        <source>aside: changes nothing</source>
        <translation>nebenher: ändert nichts</translation>
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
    <message id="drill.beat.counted">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="drill.beat.of">
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message id="drill.beat.pick-up">
        <source>pick-up</source>
        <translation>Auftakt</translation>
    </message>
    <message id="drill.best">
        <source>Best: %1</source>
        <translation>Bestwerte: %1</translation>
    </message>
    <message id="drill.best.item">
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message id="drill.by-hand">
        <source>set by hand, from the next run</source>
        <translation>von Hand, ab dem nächsten Durchlauf</translation>
    </message>
    <message id="drill.choose-passage">
        <source>Choose a passage first.</source>
        <translation>Wähle erst eine Stelle.</translation>
    </message>
    <message id="drill.count-in">
        <source>%1-bar count-in</source>
        <translation>%1 Takte Einzähler</translation>
    </message>
    <message id="drill.curve.spoken">
        <source>Tempo curve for the last 14 days, target %1</source>
        <translation>Tempokurve der letzten 14 Tage, Ziel %1</translation>
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
        <translation>gefühlt: %1</translation>
    </message>
    <message id="drill.felt-beat">
        <source>Felt beat</source>
        <translation>Gefühlter Schlag</translation>
    </message>
    <message id="drill.find-tempo">
        <source>Find your tempo, from %1 down</source>
        <translation>Tempo suchen ab %1</translation>
    </message>
    <message id="drill.finding">
        <source>Finding your tempo, from %1 down.</source>
        <translation>Dein Tempo wird gesucht, ab %1 abwärts.</translation>
    </message>
    <message id="drill.found">
        <source>Found today: %1, from %2 down.</source>
        <translation>Heute gefunden: %1, ab %2 abwärts.</translation>
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
    <message id="drill.how-to-play">
        <source>How to play it</source>
        <translation>So wird gespielt</translation>
    </message>
    <message id="drill.in-context">
        <source>In context</source>
        <translation>Im Kontext</translation>
    </message>
    <message id="drill.in-context.note">
        <source>in context: changes nothing</source>
        <translation>im Kontext: ändert nichts</translation>
    </message>
    <message id="drill.new-day">
        <source>a new day: you left off at %1</source>
        <translation>neuer Tag: zuletzt bei %1</translation>
    </message>
    <message id="drill.next">
        <source>Next passage</source>
        <translation>Nächste Stelle</translation>
    </message>
    <message id="drill.next-scale">
        <source>Next scale</source>
        <translation>Nächste Tonleiter</translation>
    </message>
    <message id="drill.no-count-in">
        <source>no count-in</source>
        <translation>ohne Einzähler</translation>
    </message>
    <message id="drill.one-bar-count-in">
        <source>one-bar count-in</source>
        <translation>ein Takt Einzähler</translation>
    </message>
    <message id="drill.only-heard">
        <source>%1 · just listening: nothing counts</source>
        <translation>%1 · nur Anhören: zählt nicht</translation>
    </message>
    <message id="drill.play-now">
        <source>Play it another way</source>
        <translation>Anders spielen</translation>
    </message>
    <message id="drill.rhythm">
        <source>Rhythm</source>
        <translation>Rhythmus</translation>
    </message>
    <message id="drill.sitting" numerus="yes">
        <source>%n runs: %1</source>
        <translation>
            <numerusform>%n Durchlauf: %1</numerusform>
            <numerusform>%n Durchläufe: %1</numerusform>
        </translation>
    </message>
    <message id="drill.sitting.to-log">
        <source>%1; opens the log</source>
        <translation>%1; öffnet das Tagebuch</translation>
    </message>
    <message id="drill.sitting.where">
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
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
        <translation>Anhören beenden</translation>
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
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message id="drill.target">
        <source>target %1 ↑</source>
        <translation>Ziel %1 ↑</translation>
    </message>
    <message id="drill.to-passages">
        <source>Go to passages</source>
        <translation>Zu den Stellen</translation>
    </message>
    <message id="drill.try">
        <source>Try once at %1</source>
        <translation>Versuch bei %1</translation>
    </message>
    <message id="drill.try.note">
        <source>a try: changes nothing</source>
        <translation>ein Versuch: ändert nichts</translation>
    </message>
    <message id="drill.verdict.clean">
        <source>Clean</source>
        <translation>Sauber</translation>
    </message>
    <message id="drill.verdict.clean-up">
        <source>Clean: up to %1</source>
        <translation>Sauber: hoch auf %1</translation>
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
    <message id="drill.verdict.put-back">
        <source>Put back</source>
        <translation>Wiederhergestellt</translation>
    </message>
    <message id="drill.verdict.secure">
        <source>Secure at %1</source>
        <translation>Sicher bei %1</translation>
    </message>
    <message id="drill.verdict.taken-back">
        <source>Taken back</source>
        <translation>Zurückgenommen</translation>
    </message>
    <message id="drill.way-back">
        <source>Back to %1</source>
        <translation>Zurück zu %1</translation>
    </message>
    <message id="drill.without-click">
        <source>Without the click</source>
        <translation>Ohne Klick</translation>
    </message>
    <message id="drill.without-click.note">
        <source>without the click: changes nothing</source>
        <translation>ohne Klick: ändert nichts</translation>
    </message>
    <message id="fault.E101">
        <source>is not a verb; write %1, or see piolo --help</source>
        <translation>ist kein Befehl; schreib %1, oder siehe piolo --help</translation>
    </message>
    <message id="fault.E102">
        <source>is not a valid option; see %1 --help</source>
        <translation>ist keine gültige Option; siehe %1 --help</translation>
    </message>
    <message id="fault.E103">
        <source>is missing; add it, for example %1</source>
        <translation>fehlt; füg es hinzu, zum Beispiel %1</translation>
    </message>
    <message id="fault.E104">
        <source>needs a value; write one after it, for example %1</source>
        <translation>braucht einen Wert; schreib einen dahinter, zum Beispiel %1</translation>
    </message>
    <message id="fault.E105">
        <source>&quot;%1&quot; is not a whole number; write digits only, for example %2</source>
        <translation>„%1“ ist keine ganze Zahl; schreib nur Ziffern, zum Beispiel %2</translation>
    </message>
    <message id="fault.E106">
        <source>&quot;%1&quot; is not a valid tempo; write 10 to 400 with at most three decimals, for example 72.5</source>
        <translation>„%1“ ist kein gültiges Tempo; schreib 10 bis 400 mit höchstens drei Nachkommastellen, zum Beispiel 72.5</translation>
    </message>
    <message id="fault.E107">
        <source>&quot;%1&quot; is not a valid meter; write 1 to 32 over 1, 2, 4, 8 or 16, for example 7/8</source>
        <translation>„%1“ ist keine gültige Taktart; schreib 1 bis 32 über 1, 2, 4, 8 oder 16, zum Beispiel 7/8</translation>
    </message>
    <message id="fault.E108">
        <source>&quot;%1&quot; is not a valid beat; write 1/2, 1/4, 3/8, 1/8 or 3/4</source>
        <translation>„%1“ ist kein gültiger Schlag; schreib 1/2, 1/4, 3/8, 1/8 oder 3/4</translation>
    </message>
    <message id="fault.E109">
        <source>a bar of %2 does not divide into %1 beats; choose a shorter beat or another meter</source>
        <translation>ein %2-Takt lässt sich nicht in Schläge von %1 teilen; wähle einen kürzeren Schlag oder eine andere Taktart</translation>
    </message>
    <message id="fault.E110">
        <source>&quot;%1&quot; does not group a bar of %2; write groups that fill it and begin on beats, as 2+2+3 fills 7/8 in eighths</source>
        <translation>„%1“ teilt keinen %2-Takt in Gruppen; schreib Gruppen, die ihn füllen und auf Schlägen beginnen, so wie 2+2+3 einen 7/8-Takt in Achteln füllt</translation>
    </message>
    <message id="fault.E111">
        <source>&quot;%1&quot; is not a valid subdivision; write 1 to 8 pulses per beat</source>
        <translation>„%1“ ist keine gültige Unterteilung; schreib 1 bis 8 Noten je Schlag</translation>
    </message>
    <message id="fault.E112">
        <source>&quot;%1&quot; is not a click voice; choose %2</source>
        <translation>„%1“ ist kein Klang des Klicks; wähle %2</translation>
    </message>
    <message id="fault.E113">
        <source>%1 is out of range; choose %2 to %3</source>
        <translation>%1 liegt außerhalb der Grenzen; wähle %2 bis %3</translation>
    </message>
    <message id="fault.E114">
        <source>%1 is above the %2 of %3; lower the one or raise the other</source>
        <translation>%1 liegt über %3, und das ist %2; senke das eine oder erhöhe das andere</translation>
    </message>
    <message id="fault.E115">
        <source>&quot;%1&quot; is not a valid choice here; write %2</source>
        <translation>„%1“ kann hier nicht gewählt werden; schreib %2</translation>
    </message>
    <message id="fault.E116">
        <source>&quot;%1&quot; is not a kind of file that can be written here; let the name end in %2</source>
        <translation>Dateien dieser Art („%1“) können hier nicht geschrieben werden; der Name muss auf %2 enden</translation>
    </message>
    <message id="fault.E117">
        <source>no passage has the id or title &quot;%1&quot;; check the spelling and the folder</source>
        <translation>keine Stelle hat die Kennung oder den Titel „%1“; prüfe Schreibweise und Ordner</translation>
    </message>
    <message id="fault.E118">
        <source>&quot;%1&quot; is the title of more than one passage; give an id instead: %2</source>
        <translation>„%1“ ist der Titel mehrerer Stellen; gib stattdessen eine Kennung an: %2</translation>
    </message>
    <message id="fault.E119">
        <source>is one word too many; leave it out, or see %1 --help</source>
        <translation>ist ein Wort zu viel; lass es weg, oder siehe %1 --help</translation>
    </message>
    <message id="fault.E120">
        <source>&quot;%1&quot; does not give the accents of a bar of %2 beats; write strong, group, plain or silent for each beat, separated by commas</source>
        <translation>„%1“ gibt nicht die Betonungen eines Takts mit %2 Schlägen an; schreib für jeden Schlag strong, group, plain oder silent, durch Kommas getrennt</translation>
    </message>
    <message id="fault.E121">
        <source>&quot;%1&quot; is not a valid swing; write long:short from 1:1 to 3:1, for example 2:1</source>
        <translation>„%1“ ist kein gültiger Swing; schreib lang:kurz von 1:1 bis 3:1, etwa 2:1</translation>
    </message>
    <message id="fault.E122">
        <source>the beat has no pairs of eighths or sixteenths to swing; divide it into an even number of them with --subdivision</source>
        <translation>der Schlag hat keine Paare von Achteln oder Sechzehnteln für den Swing; teile ihn mit --subdivision in eine gerade Zahl davon</translation>
    </message>
    <message id="fault.E123">
        <source>&quot;%1&quot; does not give breath places in bars 1 to %2 of %3 beats; write BAR:BEAT:BEATS after the first beat, in order, for example 4:3:1,8:1:2</source>
        <translation>„%1“ gibt keine Atemstellen in den Takten 1 bis %2 mit %3 Schlägen an; schreib TAKT:SCHLAG:SCHLÄGE nach dem ersten Schlag, der Reihe nach, etwa 4:3:1,8:1:2</translation>
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
        <source>&quot;%1&quot; is not a valid key; write a letter from A to G, with flat or sharp, for example &quot;E flat&quot;</source>
        <translation>„%1“ ist keine gültige Tonart; schreib einen Buchstaben von A bis G, mit flat oder sharp, zum Beispiel „E flat“</translation>
    </message>
    <message id="fault.E127">
        <source>&quot;%1&quot; is not a valid note; write a letter, its sharps or flats and the octave, for example Bb3 or F#6</source>
        <translation>„%1“ ist kein gültiger Ton; schreib einen Buchstaben, seine Kreuze oder B und die Oktave, zum Beispiel Bb3 oder F#6</translation>
    </message>
    <message id="fault.E128">
        <source>%1 has no tonic from %2 to %3; give a wider range or another key</source>
        <translation>%1 hat keinen Grundton von %2 bis %3; gib einen größeren Umfang an, oder eine andere Tonart</translation>
    </message>
    <message id="fault.E130">
        <source>&quot;%1&quot; is not a part of this score; write the number or the name of one of its %2 (piolo bars FILE lists them)</source>
        <translation>„%1“ ist keine Stimme dieser Partitur; schreib Nummer oder Namen einer ihrer %2 (piolo bars DATEI nennt sie)</translation>
    </message>
    <message id="fault.E131">
        <source>&quot;%1&quot; is not a bar of this part from there on; write a bar from %2 to %3, the earlier one first</source>
        <translation>„%1“ ist von dort an kein Takt dieser Stimme; schreib einen Takt von %2 bis %3, den früheren zuerst</translation>
    </message>
    <message id="fault.E201">
        <source>&quot;%1&quot; is not a valid mark; write clean, miss, back, or tempo and a number</source>
        <translation>„%1“ ist keine gültige Markierung; schreib clean, miss, back, oder tempo und eine Zahl</translation>
    </message>
    <message id="fault.E202">
        <source>&quot;%1&quot; is not a valid tempo; write 10 to 400 with at most three decimals, for example tempo 72.5</source>
        <translation>„%1“ ist kein gültiges Tempo; schreib 10 bis 400 mit höchstens drei Nachkommastellen, zum Beispiel tempo 72.5</translation>
    </message>
    <message id="fault.E203">
        <source>the line is not a JSON object; it is kept but not counted, so fix it by hand or leave it</source>
        <translation>die Zeile ist kein JSON-Objekt; sie wird aufbewahrt, aber nicht gezählt, also korrigiere sie von Hand oder lass sie so</translation>
    </message>
    <message id="fault.E204">
        <source>the key &quot;%1&quot; is missing; the line is kept but not counted, so fix it by hand or leave it</source>
        <translation>der Schlüssel „%1“ fehlt; die Zeile wird aufbewahrt, aber nicht gezählt, also korrigiere sie von Hand oder lass sie so</translation>
    </message>
    <message id="fault.E205">
        <source>the key &quot;%1&quot; has an impossible value[: %2]; the line is kept but not counted, so fix it by hand or leave it</source>
        <translation>der Schlüssel „%1“ hat einen unmöglichen Wert[: %2]; die Zeile wird aufbewahrt, aber nicht gezählt, also korrigiere sie von Hand oder lass sie so</translation>
    </message>
    <message id="fault.E206">
        <source>the line is in a newer format[ (%1)]; it is kept but not counted, so use a newer Piolo</source>
        <translation>die Zeile hat ein neueres Format[ (%1)]; sie wird aufbewahrt, aber nicht gezählt, also verwende ein neueres Piolo</translation>
    </message>
    <message id="fault.E207">
        <source>&quot;%1&quot; is an unknown kind of fact; the line is kept but not counted, so use a newer Piolo</source>
        <translation>„%1“ ist eine unbekannte Art von Eintrag; die Zeile wird aufbewahrt, aber nicht gezählt, also verwende ein neueres Piolo</translation>
    </message>
    <message id="fault.E208">
        <source>the last line was cut short; it is kept but not counted, so wait until the whole file has been copied</source>
        <translation>die letzte Zeile ist abgeschnitten; sie wird aufbewahrt, aber nicht gezählt, also warte, bis die Datei ganz kopiert ist</translation>
    </message>
    <message id="fault.E209">
        <source>the id %1 is used for two different facts; only one of them is counted, so remove the wrong line by hand</source>
        <translation>die Kennung %1 wird für zwei verschiedene Einträge benutzt; nur einer davon zählt, also entferne die falsche Zeile von Hand</translation>
    </message>
    <message id="fault.E210">
        <source>the line is not UTF-8 text; it is kept but not counted, so fix it by hand or leave it</source>
        <translation>die Zeile ist kein UTF-8-Text; sie wird aufbewahrt, aber nicht gezählt, also korrigiere sie von Hand oder lass sie so</translation>
    </message>
    <message id="fault.E211">
        <source>the line is longer than 65536 bytes; it is not counted, so shorten it or remove it</source>
        <translation>die Zeile ist länger als 65536 Bytes; sie wird nicht gezählt, also kürze oder entferne sie</translation>
    </message>
    <message id="fault.E212">
        <source>the id %1 is used here but not recorded anywhere; copy the journal files of all devices into the folder</source>
        <translation>die Kennung %1 wird hier benutzt, ist aber nirgends aufgezeichnet; kopiere die Tagebuchdateien aller Geräte in den Ordner</translation>
    </message>
    <message id="fault.E213">
        <source>this is not a WAV file with one channel in float32; give one that piolo click wrote</source>
        <translation>dies ist keine WAV-Datei mit einem Kanal in float32; gib eine an, die piolo click geschrieben hat</translation>
    </message>
    <message id="fault.E214">
        <source>the line is not as it was written; it is kept but not counted, so restore it from a copy or remove its &quot;sum&quot;</source>
        <translation>die Zeile ist nicht so, wie sie geschrieben wurde; sie wird aufbewahrt, aber nicht gezählt, also stell sie aus einer Kopie wieder her oder entferne ihr &quot;sum&quot;</translation>
    </message>
    <message id="fault.E215">
        <source>facts dated in the future: %1, up to %2; if a clock was wrong, correct the dates in the practice log</source>
        <translation>Einträge mit einem Datum in der Zukunft: %1, bis %2; falls eine Uhr falsch ging, berichtige die Daten im Übetagebuch</translation>
    </message>
    <message id="fault.E216">
        <source>the file has more faults than are listed: %1; correct those above and check it again</source>
        <translation>die Datei hat mehr Fehler als hier aufgeführt: noch %1; korrigiere die oberen und prüfe sie dann noch einmal</translation>
    </message>
    <message id="fault.E217">
        <source>the number %1 of device %2 is used for two facts; two programs wrote as the same device, so keep each device&apos;s own state directory to itself</source>
        <translation>die Nummer %1 des Geräts %2 wird für zwei Einträge benutzt; zwei Programme haben als dasselbe Gerät geschrieben, also lass jedem Gerät sein eigenes Zustandsverzeichnis</translation>
    </message>
    <message id="fault.E221">
        <source>this is not a passage file, or it was cut short; nothing was imported, so have it sent again</source>
        <translation>dies ist keine Stellendatei, oder sie ist abgeschnitten; nichts wurde importiert, also lass sie noch einmal schicken</translation>
    </message>
    <message id="fault.E222">
        <source>the key &quot;%1&quot; is missing; nothing was imported, so fix the file by hand or have it sent again</source>
        <translation>der Schlüssel „%1“ fehlt; nichts wurde importiert, also korrigiere die Datei von Hand oder lass sie noch einmal schicken</translation>
    </message>
    <message id="fault.E223">
        <source>the key &quot;%1&quot; has an impossible value[: %2]; nothing was imported, so fix the file by hand or have it sent again</source>
        <translation>der Schlüssel „%1“ hat einen unmöglichen Wert[: %2]; nichts wurde importiert, also korrigiere die Datei von Hand oder lass sie noch einmal schicken</translation>
    </message>
    <message id="fault.E224">
        <source>the file is in a newer format[ (%1)]; nothing was imported, so use a newer Piolo</source>
        <translation>die Datei hat ein neueres Format[ (%1)]; nichts wurde importiert, also verwende ein neueres Piolo</translation>
    </message>
    <message id="fault.E225">
        <source>the id %1 appears here for the second time; nothing was imported, so remove one of the two by hand</source>
        <translation>die Kennung %1 steht hier zum zweiten Mal; nichts wurde importiert, also entferne eine von beiden von Hand</translation>
    </message>
    <message id="fault.E226">
        <source>the passage &quot;%1&quot; belongs to a piece that is not in the file[ (%2)]; nothing was imported, so have it sent again with its piece</source>
        <translation>die Stelle „%1“ gehört zu einem Stück, das nicht in der Datei ist[ (%2)]; nichts wurde importiert, also lass sie noch einmal mit ihrem Stück schicken</translation>
    </message>
    <message id="fault.E227">
        <source>this is more than a passage file can hold[ (%1)]; split it into several files, or shorten its names</source>
        <translation>das ist mehr, als eine Stellendatei fasst[ (%1)]; teile sie in mehrere Dateien auf oder kürze die Namen</translation>
    </message>
    <message id="fault.E241">
        <source>this is not a MusicXML score; save it as MusicXML in the program it was written with</source>
        <translation>dies ist keine Partitur in MusicXML; speichere sie als MusicXML in dem Programm, mit dem sie geschrieben wurde</translation>
    </message>
    <message id="fault.E242">
        <source>the score is stored bar by bar across all parts (score-timewise); save it part by part (score-partwise)</source>
        <translation>die Partitur ist Takt für Takt über alle Stimmen gespeichert (score-timewise); speichere sie Stimme für Stimme (score-partwise)</translation>
    </message>
    <message id="fault.E243">
        <source>the XML is cut short or damaged here[ (%1)]; save the score again, or have it sent again</source>
        <translation>das XML endet hier zu früh oder ist beschädigt[ (%1)]; speichere die Partitur neu oder lass sie noch einmal schicken</translation>
    </message>
    <message id="fault.E244">
        <source>the element &quot;%1&quot; has an impossible value[: %2]; save the score again, or fix it by hand</source>
        <translation>das Element „%1“ hat einen unmöglichen Wert[: %2]; speichere die Partitur neu oder korrigiere sie von Hand</translation>
    </message>
    <message id="fault.E245">
        <source>the element &quot;%1&quot; is missing[ in &quot;%2&quot;]; save the score again, or fix it by hand</source>
        <translation>das Element „%1“ fehlt[ in „%2“]; speichere die Partitur neu oder korrigiere sie von Hand</translation>
    </message>
    <message id="fault.E246">
        <source>this is more than a score may hold[ (%1)]; save only the part that you want to practise</source>
        <translation>das ist mehr, als eine Partitur haben darf[ (%1)]; speichere nur den Teil, den du üben willst</translation>
    </message>
    <message id="fault.E247">
        <source>the compressed file is damaged or was cut short; have it sent again, or save it uncompressed</source>
        <translation>die komprimierte Datei ist beschädigt oder abgeschnitten; lass sie noch einmal schicken oder speichere sie unkomprimiert</translation>
    </message>
    <message id="fault.E248">
        <source>the compressed file has no score in the place it names[ (%1)]; save it again, or uncompressed</source>
        <translation>die komprimierte Datei hat an der genannten Stelle keine Partitur[ (%1)]; speichere sie neu oder unkomprimiert</translation>
    </message>
    <message id="fault.E249">
        <source>the file declares entities of its own in its DOCTYPE, which Piolo does not read; save the score again</source>
        <translation>die Datei deklariert in ihrem DOCTYPE eigene Entitäten, die Piolo nicht liest; speichere die Partitur neu</translation>
    </message>
    <message id="fault.E250">
        <source>the text is not in the encoding that it declares, or in one that Piolo does not read; save the score as UTF-8 or UTF-16</source>
        <translation>der Text hat nicht die Kodierung, die er angibt, oder eine, die Piolo nicht liest; speichere die Partitur als UTF-8 oder UTF-16</translation>
    </message>
    <message id="fault.E251">
        <source>bar %1 has a %2, so the bars you picked are not played straight through; pick bars on one side of it</source>
        <translation>Takt %1 hat ein Zeichen (%2), mit dem die gewählten Takte nicht glatt durchgespielt werden; wähle Takte davor oder danach</translation>
    </message>
    <message id="fault.E252">
        <source>the %2 changes in bar %1, and a passage has only one; pick bars on one side of it</source>
        <translation>in Takt %1 wechselt etwas (%2), das in einer Stelle gleich bleibt; wähle Takte davor oder danach</translation>
    </message>
    <message id="fault.E253">
        <source>bar %1 has a meter that Piolo cannot count[ (%2)]; pick other bars</source>
        <translation>Takt %1 hat eine Taktart, die Piolo nicht zählen kann[ (%2)]; wähle andere Takte</translation>
    </message>
    <message id="fault.E254">
        <source>bar %1 is not a whole bar: it holds %2 in %3; pick bars on one side of it</source>
        <translation>Takt %1 ist kein ganzer Takt: Er hat %2 in %3; wähle Takte davor oder danach</translation>
    </message>
    <message id="fault.E255">
        <source>bars %1 to %2 are not 1 to 999 whole bars; pick more or fewer</source>
        <translation>die Takte %1 bis %2 sind nicht 1 bis 999 ganze Takte; wähle mehr oder weniger</translation>
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
        <source>bar %1: a note lies outside the bars of the passage and cannot be written as MusicXML; make the passage longer, or pick its bars again</source>
        <translation>Takt %1: eine Note liegt außerhalb der Takte der Stelle und lässt sich nicht als MusicXML schreiben; mach die Stelle länger, oder wähle ihre Takte neu</translation>
    </message>
    <message id="fault.E271">
        <source>bar %1: a note begins while another one sounds and cannot be written as MusicXML; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>Takt %1: eine Note beginnt, während eine andere klingt, und lässt sich nicht als MusicXML schreiben; exportiere die Stelle als .piolo.json, darin bleibt sie, wie sie ist</translation>
    </message>
    <message id="fault.E272">
        <source>bar %1: a note is shorter than any note value and cannot be written as MusicXML; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>Takt %1: eine Note ist kürzer als jeder Notenwert und lässt sich nicht als MusicXML schreiben; exportiere die Stelle als .piolo.json, darin bleibt sie, wie sie ist</translation>
    </message>
    <message id="fault.E273">
        <source>the written %1 sounds as MIDI number %2, which is not how its part is transposed; export the passage as .piolo.json, which keeps it as it is</source>
        <translation>das notierte %1 klingt als MIDI-Nummer %2, und so ist seine Stimme nicht transponiert; exportiere die Stelle als .piolo.json, darin bleibt sie, wie sie ist</translation>
    </message>
    <message id="fault.E281">
        <source>this is not a PNG, JPEG or PDF; save or scan the music as one of these</source>
        <translation>dies ist kein PNG, JPEG oder PDF; speichere oder scanne die Noten als eines davon</translation>
    </message>
    <message id="fault.E282">
        <source>the picture is damaged or was cut short[ (%1)]; save it again, or have it sent again</source>
        <translation>das Bild ist beschädigt oder abgeschnitten[ (%1)]; speichere es neu oder lass es noch einmal schicken</translation>
    </message>
    <message id="fault.E283">
        <source>this is more than a picture of music may hold[ (%1)]; scan or save the page by itself, or smaller</source>
        <translation>das ist mehr, als ein Bild von Noten haben darf[ (%1)]; scanne oder speichere die Seite einzeln oder kleiner</translation>
    </message>
    <message id="fault.E284">
        <source>the PDF needs a password; save it without one</source>
        <translation>das PDF braucht ein Kennwort; speichere es ohne</translation>
    </message>
    <message id="fault.E285">
        <source>the PDF has no page %1; choose 1 to %2</source>
        <translation>das PDF hat keine Seite %1; wähle 1 bis %2</translation>
    </message>
    <message id="fault.E286">
        <source>page %1 took too long to draw; save it as a picture in another program</source>
        <translation>Seite %1 zu zeichnen dauerte zu lange; speichere sie in einem anderen Programm als Bild</translation>
    </message>
    <message id="fault.E287">
        <source>the picture needs more memory than is allowed, or is damaged; save it anew, as a smaller picture</source>
        <translation>das Bild braucht mehr Speicher als erlaubt oder ist beschädigt; speichere es neu, als kleineres Bild</translation>
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
        <source>the folder cannot be created[ (%1)]; choose another or check its permissions</source>
        <translation>der Ordner lässt sich nicht anlegen[ (%1)]; wähle einen anderen oder prüfe seine Rechte</translation>
    </message>
    <message id="fault.E304">
        <source>the sound would be larger than 4 GiB; ask for fewer bars or a lower rate</source>
        <translation>der Ton wäre größer als 4 GiB; nimm weniger Takte oder eine niedrigere Abtastrate</translation>
    </message>
    <message id="fault.E305">
        <source>another window is using this practice folder, so nothing is recorded here; go on there, or close it and open this one again</source>
        <translation>ein anderes Fenster benutzt diesen Übeordner, darum wird hier nichts aufgezeichnet; mach dort weiter, oder schließ es und öffne dieses neu</translation>
    </message>
    <message id="fault.E306">
        <source>this is not a practice folder; give the path of one</source>
        <translation>dies ist kein Übeordner; gib den Pfad eines solchen an</translation>
    </message>
    <message id="fault.E307">
        <source>the disk is full; make room and try again</source>
        <translation>die Platte ist voll; schaff Platz und versuch es noch einmal</translation>
    </message>
    <message id="fault.E308">
        <source>there is no display to open the window on; start Piolo in a graphical session, or see piolo --help for what works without one</source>
        <translation>es gibt keinen Bildschirm für das Fenster; starte Piolo in einer grafischen Sitzung; piolo --help zeigt, was ohne sie geht</translation>
    </message>
    <message id="fault.E321">
        <source>a window has this folder open; close it and try again</source>
        <translation>ein Fenster hat diesen Ordner offen; schließ es und versuch es noch einmal</translation>
    </message>
    <message id="fault.E322">
        <source>the folder has no passages and no pieces; give the path of the practice folder that has them</source>
        <translation>der Ordner hat keine Stellen und keine Stücke; gib den Pfad des Übeordners an, in dem sie sind</translation>
    </message>
    <message id="fault.E323">
        <source>not everything could be saved in time; check the disk and import the file again, since what is already saved counts only once</source>
        <translation>nicht alles ließ sich rechtzeitig speichern; prüfe die Platte und importiere die Datei noch einmal, denn schon Gespeichertes zählt nur einmal</translation>
    </message>
    <message id="fault.E324">
        <source>the practice folder has been moved or removed; put it back, and the marks still waiting will be saved</source>
        <translation>der Übeordner wurde verschoben oder entfernt; leg ihn zurück, dann wird gespeichert, was noch wartet</translation>
    </message>
    <message id="fault.E325">
        <source>this is a link, a pipe or a device, not a file; move it away, and the marks still waiting will be saved in a new file</source>
        <translation>das ist ein Link, eine Pipe oder ein Gerät, keine Datei; verschieb es, dann wird in einer neuen Datei gespeichert, was noch wartet</translation>
    </message>
    <message id="fault.E326">
        <source>the disk has not confirmed the last marks; check the disk, and leave this window open until they are saved</source>
        <translation>der Datenträger hat das zuletzt Markierte nicht bestätigt; prüf ihn und lass dieses Fenster offen, bis alles gespeichert ist</translation>
    </message>
    <message id="fault.E327">
        <source>the state directory is on a disk without locks, so practice can be read but not recorded; set XDG_STATE_HOME to a folder on a local disk</source>
        <translation>das Zustandsverzeichnis liegt auf einem Datenträger ohne Sperren, daher lässt sich das Üben lesen, aber nicht aufzeichnen; setze XDG_STATE_HOME auf einen Ordner auf einer lokalen Platte</translation>
    </message>
    <message id="fault.E328">
        <source>HOME is not set, so there is no place for settings and practice; set HOME to your home folder and start again</source>
        <translation>HOME ist nicht gesetzt, daher gibt es keinen Platz für Einstellungen und Übungen; setze HOME auf deinen Benutzerordner und starte noch einmal</translation>
    </message>
    <message id="fault.E401">
        <source>no sound: the click goes on silently; connect a device or choose one in the settings, and you will hear it again from the next bar</source>
        <translation>kein Ton: Der Klick läuft stumm weiter; schließ ein Gerät an oder wähle eines in den Einstellungen, und ab dem nächsten Takt hörst du ihn wieder</translation>
    </message>
    <message id="fault.E403">
        <source>the sound is lost: the click goes on silently; restart Piolo to hear it again; nothing recorded is lost</source>
        <translation>der Ton ist weg: Der Klick läuft stumm weiter; starte Piolo neu, um ihn wieder zu hören; von den Aufzeichnungen geht nichts verloren</translation>
    </message>
    <message id="fault.E404">
        <source>the computer fell behind: key presses delayed: %1, beats not shown: %2; close other programs; no mark was lost</source>
        <translation>der Rechner kam nicht nach: Tastendrücke, die warten mussten: %1, nicht gezeigte Schläge: %2; schließ andere Programme; keine Markierung ging verloren</translation>
    </message>
    <message id="files.changes">
        <source>What this file would change</source>
        <translation>Was die Datei ändern würde</translation>
    </message>
    <message id="files.choose">
        <source>Choose…</source>
        <translation>Auswählen…</translation>
    </message>
    <message id="files.edited-here">
        <source>▲ edited here since import</source>
        <translation>▲ seit dem Import hier bearbeitet</translation>
    </message>
    <message id="files.empty">
        <source>This file contains no passages.</source>
        <translation>Diese Datei enthält keine Stellen.</translation>
    </message>
    <message id="files.export">
        <source>Export</source>
        <translation>Exportieren</translation>
    </message>
    <message id="files.export.file">
        <source>File name (.piolo.json)</source>
        <translation>Dateiname (.piolo.json)</translation>
    </message>
    <message id="files.export.hint">
        <source>Passages and their pieces for another player, without anything you played.</source>
        <translation>Stellen und ihre Stücke zum Weitergeben, ohne das, was du gespielt hast.</translation>
    </message>
    <message id="files.export.tick">
        <source>Tick the passages to export.</source>
        <translation>Hake die Stellen an, die du exportieren willst.</translation>
    </message>
    <message id="files.export.write">
        <source>Export file</source>
        <translation>Datei exportieren</translation>
    </message>
    <message id="files.figures">
        <source>%1 new, %2 the same, %3 different or removed here</source>
        <translation>%1 neu, %2 gleich, %3 anders oder hier entfernt</translation>
    </message>
    <message id="files.import">
        <source>Import</source>
        <translation>Importieren</translation>
    </message>
    <message id="files.kind.all">
        <source>All files</source>
        <translation>Alle Dateien</translation>
    </message>
    <message id="files.kind.curves">
        <source>Tempo curves</source>
        <translation>Tempokurven</translation>
    </message>
    <message id="files.kind.passages">
        <source>Passages</source>
        <translation>Stellen</translation>
    </message>
    <message id="files.kind.picture">
        <source>Pictures and PDFs</source>
        <translation>Bilder und PDFs</translation>
    </message>
    <message id="files.kind.score">
        <source>MusicXML</source>
        <translation>MusicXML</translation>
    </message>
    <message id="files.kind.sheet">
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message id="files.not-yet">
        <source>Nothing is imported until you have seen what would change.</source>
        <translation>Nichts wird importiert, bevor du gesehen hast, was sich ändern würde.</translation>
    </message>
    <message id="files.open">
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message id="files.open.file">
        <source>File (.piolo.json), or drop it here</source>
        <translation>Datei (.piolo.json), oder zieh sie hierher</translation>
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
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message id="files.replaces">
        <source>There is a file of that name. “%1” replaces it.</source>
        <translation>Eine Datei mit diesem Namen gibt es schon. „%1“ ersetzt sie.</translation>
    </message>
    <message id="files.save">
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message id="files.take">
        <source>Import</source>
        <translation>Importieren</translation>
    </message>
    <message id="files.taken">
        <source>%1 added, %2 replaced from the file, %3 left unchanged.</source>
        <translation>%1 hinzugefügt, %2 aus der Datei ersetzt, %3 unverändert gelassen.</translation>
    </message>
    <message id="files.tick-all">
        <source>Tick all that differ</source>
        <translation>Alles Abweichende anhaken</translation>
    </message>
    <message id="files.tick-none">
        <source>Untick all</source>
        <translation>Alle Haken entfernen</translation>
    </message>
    <message id="files.tick.hint">
        <source>Ticked items are replaced from the file; the others stay as they are. New items are added.</source>
        <translation>Angehaktes wird durch die Fassung der Datei ersetzt; alles andere bleibt, wie es ist. Neues kommt hinzu.</translation>
    </message>
    <message id="files.title">
        <source>Passage files</source>
        <translation>Stellendateien</translation>
    </message>
    <message id="files.unchanged">
        <source>You already have everything in this file: nothing would change.</source>
        <translation>Du hast schon alles aus dieser Datei: Nichts würde sich ändern.</translation>
    </message>
    <message id="files.what-to-do">
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message id="form.about-climb">
        <source>at %1, about %2 to the next climb if nine in ten are clean</source>
        <translation>bei %1 etwa %2 bis zum nächsten Anstieg, wenn neun von zehn sauber sind</translation>
    </message>
    <message id="form.about-secure">
        <source>at the target, about %1 to a full streak if nine in ten are clean</source>
        <translation>im Zieltempo etwa %1 bis zur vollen Serie, wenn neun von zehn sauber sind</translation>
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
        <source>Breath (beats)</source>
        <translation>Atem (Schläge)</translation>
    </message>
    <message id="form.clean-runs">
        <source>Clean in a row</source>
        <translation>Sauber in Folge</translation>
    </message>
    <message id="form.click">
        <source>Click: %1</source>
        <translation>Klick: %1</translation>
    </message>
    <message id="form.click.every-beat">
        <source>Click: every beat, following the meter</source>
        <translation>Klick: jeder Schlag, nach der Taktart</translation>
    </message>
    <message id="form.climb">
        <source>then climb</source>
        <translation>dann steigen um</translation>
    </message>
    <message id="form.count-in">
        <source>Count-in (bars)</source>
        <translation>Einzähltakte</translation>
    </message>
    <message id="form.discard">
        <source>Discard changes</source>
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
        <source>Edit the piece: name, instrument, due date</source>
        <translation>Stück bearbeiten: Name, Instrument, Termin</translation>
    </message>
    <message id="form.fault.above-start">
        <source>no higher than the start, %1</source>
        <translation>nicht höher als der Start, %1</translation>
    </message>
    <message id="form.fault.beat">
        <source>this beat does not fill a bar in this meter</source>
        <translation>dieser Schlag füllt keinen Takt dieser Taktart</translation>
    </message>
    <message id="form.fault.below-start">
        <source>no lower than the start, %1</source>
        <translation>nicht niedriger als der Start, %1</translation>
    </message>
    <message id="form.fault.breaths">
        <source>places in order, such as 43, 45:3 or 47:1+2; at most %1</source>
        <translation>Atemstellen der Reihe nach, etwa 43, 45:3 oder 47:1+2; höchstens %1</translation>
    </message>
    <message id="form.fault.groups">
        <source>groups that fill the bar and begin on beats, such as 2+2+3</source>
        <translation>Gruppen, die den Takt füllen und auf Schlägen beginnen, etwa 2+2+3</translation>
    </message>
    <message id="form.fault.letters">
        <source>at most %1 characters</source>
        <translation>höchstens %1 Zeichen</translation>
    </message>
    <message id="form.fault.meter">
        <source>a meter such as 4/4, 6/8 or 7/8</source>
        <translation>eine Taktart wie 4/4, 6/8 oder 7/8</translation>
    </message>
    <message id="form.fault.pick-up">
        <source>a length such as 1/8 or 1/4, or leave it empty</source>
        <translation>eine Länge wie 1/8 oder 1/4, oder leer lassen</translation>
    </message>
    <message id="form.fault.pick-up-too-long">
        <source>a pick-up must be shorter than a bar</source>
        <translation>ein Auftakt muss kürzer als ein Takt sein</translation>
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
        <source>too long to save</source>
        <translation>zu lang zum Speichern</translation>
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
        <translation>Seitenklappe fürs B, erst die linke Hand</translation>
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
        <source>Gentle near the target: there, a miss drops by one climb; at the target, only the second miss in a row drops</source>
        <translation>Sanft nahe am Ziel: Dort kostet ein Fehler nur einen Anstieg; im Zieltempo erst der zweite in Folge</translation>
    </message>
    <message id="form.group">
        <source>Notes per group</source>
        <translation>Noten je Gruppe</translation>
    </message>
    <message id="form.groups">
        <source>Groups</source>
        <translation>Gruppen</translation>
    </message>
    <message id="form.groups.none">
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message id="form.landing">
        <source>Landing note</source>
        <translation>Schlussnote</translation>
    </message>
    <message id="form.made-of">
        <source>Made from “%1”.</source>
        <translation>Entstanden aus „%1“.</translation>
    </message>
    <message id="form.made-of-another">
        <source>Made from another passage.</source>
        <translation>Entstanden aus einer anderen Stelle.</translation>
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
        <source>New passage</source>
        <translation>Neue Stelle</translation>
    </message>
    <message id="form.new-piece">
        <source>New piece…</source>
        <translation>Neues Stück…</translation>
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
        <source>No piece</source>
        <translation>Kein Stück</translation>
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
        <source>Use %1 in a row</source>
        <translation>%1 in Folge verwenden</translation>
    </message>
    <message id="form.run">
        <source>%1 per run · %2 · %3 to a full streak at the target with no misses.</source>
        <translation>%1 pro Durchlauf · %2 · %3 bis zur vollen Serie im Zieltempo, ganz ohne Fehler.</translation>
    </message>
    <message id="form.run-long">
        <source>A run of %1 is long: shorter parts come clean sooner.</source>
        <translation>Ein Durchlauf von %1 ist lang: Kürzere Teile werden eher sauber.</translation>
    </message>
    <message id="form.run-long-streak">
        <source>A run of %1 is long for %2 in a row: %3 are enough.</source>
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
        <source>The tempo settles where about %1 of runs are clean.</source>
        <translation>Das Tempo pendelt sich da ein, wo etwa %1 der Durchläufe sauber sind.</translation>
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
        <translation>Pass auf dich auf</translation>
    </message>
    <message id="help.care.why.breaks">
        <source>An information sheet for students by two professional bodies (NASM and PAMA) advises breaks, a warm-up, a daily limit and no sudden increase.</source>
        <translation>Ein Merkblatt zweier Fachverbände für Studierende (NASM und PAMA) rät zu Pausen, Aufwärmen, einer Grenze für den Tag und keiner plötzlichen Steigerung.</translation>
    </message>
    <message id="help.care.why.complaints">
        <source>Of 442 music students with no complaint from playing, about half had one within a year; fatigue and a change in how active they were raised the risk (Cruder and others 2023).</source>
        <translation>Von 442 Musikstudierenden ohne Beschwerden durch das Spielen bekam etwa die Hälfte binnen eines Jahres welche; Müdigkeit und ein verändertes Maß an Bewegung erhöhten das Risiko (Cruder und andere 2023).</translation>
    </message>
    <message id="help.care.why.loudness">
        <source>Of 40 students, about half would have exceeded the daily limit for sound exposure from their own practice alone (Phillips and Mace 2008).</source>
        <translation>Von 40 Studierenden hätte etwa die Hälfte allein durch das eigene Üben die Tagesdosis an Schall überschritten (Phillips und Mace 2008).</translation>
    </message>
    <message id="help.chapters">
        <source>Chapters</source>
        <translation>Kapitel</translation>
    </message>
    <message id="help.click.key.faster">
        <source>one beat per minute faster</source>
        <translation>einen Schlag pro Minute schneller</translation>
    </message>
    <message id="help.click.key.open">
        <source>open this from the passages and the drill</source>
        <translation>von den Stellen und vom Üben aus hierher</translation>
    </message>
    <message id="help.click.key.slower">
        <source>one beat per minute slower</source>
        <translation>einen Schlag pro Minute langsamer</translation>
    </message>
    <message id="help.click.key.start">
        <source>start and stop</source>
        <translation>starten und anhalten</translation>
    </message>
    <message id="help.click.key.tap">
        <source>tap the beat; the second tap is a tempo</source>
        <translation>den Schlag klopfen; ab dem zweiten Mal ist es ein Tempo</translation>
    </message>
    <message id="help.click.title">
        <source>Just a click</source>
        <translation>Nur der Klick</translation>
    </message>
    <message id="help.click.what.free">
        <source>A click without a passage. Type the tempo, tap it or step to it, and choose the meter and the subdivision. All of this can change while it sounds: tempo and subdivision follow at the next beat, the meter at the next bar.</source>
        <translation>Ein Klick ohne Stelle. Das Tempo tippst oder klopfst du, oder du gehst schrittweise hin; Taktart und Unterteilung wählst du. Alles lässt sich ändern, während es klickt: Tempo und Unterteilung folgen beim nächsten Schlag, die Taktart beim nächsten Takt.</translation>
    </message>
    <message id="help.click.what.goes-on">
        <source>It goes on while you look at other screens, until you stop it or start to play something. Nothing is logged. “Make a passage of this” opens the form of a new passage with its tempo, meter and subdivision.</source>
        <translation>Er läuft weiter, während du andere Bildschirme ansiehst, bis du ihn anhältst oder etwas zu spielen beginnst. Nichts davon kommt ins Tagebuch. „Daraus eine Stelle machen“ öffnet das Formular einer neuen Stelle mit Tempo, Taktart und Unterteilung.</translation>
    </message>
    <message id="help.click.why.taps">
        <source>The tempo is read from your last nine taps, and one tap at the wrong moment hardly moves it. A pause of more than two seconds begins again. In the drill, press the large tempo to type or tap one. With a single pedal, a press starts the click, each further press is a tap, and holding the pedal stops it.</source>
        <translation>Das Tempo ergibt sich aus den letzten neun Schlägen, die du klopfst; einer zum falschen Zeitpunkt verschiebt es kaum. Nach einer Pause von mehr als zwei Sekunden beginnt die Zählung neu. Beim Üben kannst du das große Tempo antippen und es eingeben oder klopfen. Mit einem einzigen Pedal startet der erste Druck den Klick, jeder weitere ist ein Schlag, und Halten stoppt ihn.</translation>
    </message>
    <message id="help.drill.key.clean">
        <source>mark an open-ended run clean and end it</source>
        <translation>einen Durchlauf mit offenem Ende sauber beenden</translation>
    </message>
    <message id="help.drill.key.hear">
        <source>hear the passage first, if its bars came from a score</source>
        <translation>die Stelle erst anhören, wenn ihre Takte aus einer Partitur kommen</translation>
    </message>
    <message id="help.drill.key.miss">
        <source>start; while the click runs, mark a miss</source>
        <translation>starten; während der Klick läuft: einen Fehler markieren</translation>
    </message>
    <message id="help.drill.key.next">
        <source>open the next passage, while stopped</source>
        <translation>die nächste Stelle, wenn der Klick ruht</translation>
    </message>
    <message id="help.drill.key.pedal">
        <source>everything: one press starts or marks a miss, two presses take back the last mark; hold it to stop the click or, while stopped, to open the next passage</source>
        <translation>alles: ein Druck startet oder markiert einen Fehler, zwei nehmen die letzte Markierung zurück; Halten stoppt den Klick oder öffnet, wenn er ruht, die nächste Stelle</translation>
    </message>
    <message id="help.drill.key.stop">
        <source>stop</source>
        <translation>anhalten</translation>
    </message>
    <message id="help.drill.key.take-back">
        <source>take back the last mark; after a stop, it can be put back</source>
        <translation>die letzte Markierung zurücknehmen; nach dem Anhalten lässt sie sich wiederherstellen</translation>
    </message>
    <message id="help.drill.key.tempo">
        <source>change the tempo, while stopped</source>
        <translation>das Tempo ändern, wenn der Klick ruht</translation>
    </message>
    <message id="help.drill.key.try">
        <source>try once at the target</source>
        <translation>ein Versuch im Zieltempo</translation>
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
        <source>Count-in, run, breath, and again. A run that reaches its last bar without a miss is clean; you need not mark it. A miss drops the tempo, but never below the floor. As many clean runs in a row as the rule asks for are a full streak: it climbs one rung, but never past the target. After a miss or a climb, you count from nothing again.</source>
        <translation>Einzähler, Durchlauf, Atempause, und von vorn. Ein Durchlauf, der ohne Fehler seinen letzten Takt erreicht, ist sauber; du musst ihn nicht markieren. Ein Fehler senkt das Tempo, aber nie unter die Untergrenze. So viele Durchläufe sauber in Folge, wie die Regel verlangt, sind eine volle Serie: Sie bringt dich eine Sprosse höher, aber nie über das Ziel hinaus. Nach einem Fehler oder Anstieg zählst du wieder von null.</translation>
    </message>
    <message id="help.drill.what.late">
        <source>Pressed late? If you press in the breath after a clean run, that run still becomes a miss.</source>
        <translation>Zu spät gedrückt? Drückst du in der Atempause nach einem sauberen Durchlauf, wird er doch noch zum Fehler.</translation>
    </message>
    <message id="help.drill.what.secure">
        <source>A full streak at the target counts as secure. A passage that was secure on three different days is fully secure. A new day starts two rungs below your last full streak. You can change both in the settings.</source>
        <translation>Eine volle Serie im Zieltempo zählt als sicher. Eine Stelle, die an drei verschiedenen Tagen sicher war, gilt als ganz sicher. Ein neuer Tag beginnt zwei Sprossen unter deiner letzten vollen Serie. Beides kannst du in den Einstellungen ändern.</translation>
    </message>
    <message id="help.drill.what.ways">
        <source>Felt beat: quarter = 60 and eighth = 120 are the same speed; if you choose another beat, all tempi are converted and your clean runs in a row stay. Find your tempo: name one you think you can play, and each miss lowers it until a full streak has found yours. A try, and runs without the click, in context or at half tempo, change nothing. Each articulation has its own best.</source>
        <translation>Gefühlter Schlag: Viertel = 60 und Achtel = 120 sind gleich schnell; wählst du einen anderen Schlag, werden alle Tempi umgerechnet, und was sauber in Folge war, zählt weiter. Dein Tempo suchen: Nenne eines, das du dir zutraust, und jeder Fehler senkt es, bis eine volle Serie deines gefunden hat. Ein Versuch sowie Durchläufe ohne Klick, im Kontext oder im halben Tempo ändern nichts. Jede Artikulation hat ihren eigenen Bestwert.</translation>
    </message>
    <message id="help.drill.why.climbing">
        <source>Climbing step by step is customary, but has not been shown to beat other orders of tempi: among sixty school wind players, a steady climb, full tempo and both in turn made no significant difference (Henley 2001). The rule keeps the number of misses low and the record honest.</source>
        <translation>Schrittweise zu steigern ist üblich, aber nicht nachweislich besser als andere Reihenfolgen der Tempi: Bei sechzig Schülerinnen und Schülern an Blasinstrumenten machten stetiges Steigern, volles Tempo und beides im Wechsel keinen signifikanten Unterschied (Henley 2001). Die Regel sorgt für wenige Fehler und ein ehrliches Tagebuch.</translation>
    </message>
    <message id="help.drill.why.full-streak">
        <source>A full streak is not proof: five clean runs out of five only show, at 95% confidence, that more than 54 of 100 runs are clean.</source>
        <translation>Eine volle Serie ist kein Beweis: Fünf von fünf sauber zeigt, mit 95 % Sicherheit, nur, dass mehr als 54 von 100 Durchläufen sauber sind.</translation>
    </message>
    <message id="help.drill.why.going-on">
        <source>Going on after the first success helps you keep what you learned, to a moderate degree and in many kinds of tasks (Driskell, Willis and Copper 1992); how much it helps in music is not known.</source>
        <translation>Nach dem ersten Erfolg weiterzuüben hilft, Gelerntes zu behalten, in mäßigem Umfang und bei vielerlei Aufgaben (Driskell, Willis und Copper 1992); wie sehr in der Musik, ist nicht bekannt.</translation>
    </message>
    <message id="help.drill.why.staircase">
        <source>Drop and climb form a staircase like those used in hearing tests. It settles where a certain share of runs is clean, and the size of drop and climb decides that share: with five in a row, drop 4 and climb 2, about 92 of 100 (Levitt 1971, Kaernbach 1991, García-Pérez 1998). The formula assumes a player who neither tires nor learns.</source>
        <translation>Abstieg und Anstieg bilden eine Treppe, wie Hörtests sie verwenden. Sie pendelt sich da ein, wo ein bestimmter Anteil der Durchläufe sauber ist; wie groß er ist, bestimmen Abstieg und Anstieg: mit fünf in Folge, Abstieg 4 und Anstieg 2 etwa 92 von 100 (Levitt 1971, Kaernbach 1991, García-Pérez 1998). Die Formel setzt jemanden voraus, der weder ermüdet noch dazulernt.</translation>
    </message>
    <message id="help.drill.why.tempo-heard">
        <source>A change of tempo of less than about three per cent is hard to hear (Drake and Botte 1993). That is why short cues announce a climb and a drop.</source>
        <translation>Eine Tempoänderung unter etwa drei Prozent ist schwer zu hören (Drake und Botte 1993). Darum kündigen kurze Signale einen Anstieg und einen Abstieg an.</translation>
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
        <source>A passage file carries passages from a teacher to a student. It holds passages and their pieces, but nothing of what was played. Before you import anything, you see what would change.</source>
        <translation>Eine Stellendatei bringt Stellen von der Lehrkraft zur Schülerin oder zum Schüler. Sie enthält Stellen und ihre Stücke, aber nichts von dem, was gespielt wurde. Bevor du etwas importierst, siehst du, was sich ändern würde.</translation>
    </message>
    <message id="help.files.what.edited">
        <source>Anything you have edited since you imported it is marked, so that a new version from your teacher does not replace your own work unnoticed. Importing the same file twice changes nothing.</source>
        <translation>Was du seit dem Import bearbeitet hast, ist gekennzeichnet, damit eine neue Fassung deiner Lehrkraft nicht unbemerkt deine eigene Arbeit ersetzt. Dieselbe Datei zweimal zu importieren ändert nichts.</translation>
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
        <source>on the curve: scroll; with Shift, from run to run</source>
        <translation>auf der Kurve: verschieben; mit Umschalt von Durchlauf zu Durchlauf</translation>
    </message>
    <message id="help.log.key.along.keys">
        <source>Left, Right</source>
        <translation>Pfeil links, Pfeil rechts</translation>
    </message>
    <message id="help.log.key.breaks">
        <source>make a passage of the bars that break</source>
        <translation>eine Stelle aus den Takten machen, in denen es hakt</translation>
    </message>
    <message id="help.log.key.day">
        <source>in the minutes: the figures of a day</source>
        <translation>bei den Minuten: die Zahlen eines Tages</translation>
    </message>
    <message id="help.log.key.days">
        <source>move through the days</source>
        <translation>durch die Tage blättern</translation>
    </message>
    <message id="help.log.key.days.keys">
        <source>PgUp, PgDown, Home, End</source>
        <translation>Bild ↑, Bild ↓, Pos1, Ende</translation>
    </message>
    <message id="help.log.key.line">
        <source>on the curve: the next passage; in the list: the next line</source>
        <translation>auf der Kurve: die nächste Stelle; in der Liste: die nächste Zeile</translation>
    </message>
    <message id="help.log.key.line.keys">
        <source>Up, Down</source>
        <translation>Pfeil auf, Pfeil ab</translation>
    </message>
    <message id="help.log.key.zoom">
        <source>on the curve: zoom in, zoom out, show all</source>
        <translation>auf der Kurve: vergrößern, verkleinern, alles zeigen</translation>
    </message>
    <message id="help.log.key.zoom.keys">
        <source>Plus, Minus, 0</source>
        <translation>Plus, Minus, 0</translation>
    </message>
    <message id="help.log.title">
        <source>Practice log</source>
        <translation>Übetagebuch</translation>
    </message>
    <message id="help.log.what.curve">
        <source>The curve shows your tempo by day or by run. “Where it breaks” shows the misses of a passage by bar and beat. It can make a smaller passage of the worst bars, with one bar of run-up.</source>
        <translation>Die Kurve zeigt dein Tempo nach Tagen oder nach Durchläufen. „Wo es hakt“ zeigt die Fehler einer Stelle nach Takt und Schlag. Aus den schlimmsten Takten lässt sich dort eine kleinere Stelle machen, mit einem Takt Anlauf.</translation>
    </message>
    <message id="help.log.what.everything">
        <source>Everything that happened, day by day: each run with its tempo, its mark and the place of a miss; tempi you set by hand; run-throughs; your notes. Open a line to change a mark, write a note or take a run back. What you took back can be put back.</source>
        <translation>Alles, was geschah, Tag für Tag: jeder Durchlauf mit seinem Tempo, seiner Markierung und dem Ort eines Fehlers; von Hand gesetzte Tempi; Gesamtdurchläufe; deine Notizen. Öffne eine Zeile, um eine Markierung zu ändern, eine Notiz zu schreiben oder einen Durchlauf zurückzunehmen. Was du zurückgenommen hast, lässt sich wiederherstellen.</translation>
    </message>
    <message id="help.log.what.folder">
        <source>The log is in the practice folder on this computer and nowhere else. Nothing is sent anywhere. Copy the folder, or let your own file-sync service copy it, and you have everything.</source>
        <translation>Das Tagebuch liegt im Übeordner auf diesem Rechner und sonst nirgends. Nichts wird verschickt. Kopiere den Ordner oder überlass ihn deiner eigenen Dateisynchronisierung, und du hast alles.</translation>
    </message>
    <message id="help.log.what.worst">
        <source>At the top are this week and last week, and the passages that went worst in the last two weeks, with the reason. Choose one to see only it.</source>
        <translation>Oben stehen diese und die letzte Woche und die Stellen, die in den letzten zwei Wochen am schlechtesten gingen, mit dem Grund. Wähle eine, um nur sie zu sehen.</translation>
    </message>
    <message id="help.log.why.days-apart">
        <source>Practising on separate days helps you keep what you learned (Simmons 2012). A break of minutes is only rest: up to a quarter of an hour made no difference to beginners at the piano who were tested five minutes later (Wiseheart, D&apos;Souza and Chae 2017). Piolo accepts one missed day now and then and points out two in a row; that is our choice.</source>
        <translation>An verschiedenen Tagen zu üben hilft, Gelerntes zu behalten (Simmons 2012). Minuten dazwischen sind nur Erholung: Pausen bis zu einer Viertelstunde machten keinen Unterschied bei Anfängern am Klavier, die fünf Minuten später getestet wurden (Wiseheart, D&apos;Souza und Chae 2017). Ein ausgelassener Tag ab und zu ist für Piolo in Ordnung, auf zwei in Folge weist es hin; das ist unsere Wahl.</translation>
    </message>
    <message id="help.log.why.reaction">
        <source>You hear a slip before you press the key, so each miss is moved back by your reaction time. A quarter of a second is a guess; you can set your own in the settings.</source>
        <translation>Du hörst einen Patzer, bevor du die Taste drückst; darum wird jeder Fehler um deine Reaktionszeit zurückgerechnet. Eine Viertelsekunde ist geschätzt; in den Einstellungen kannst du deine eigene eintragen.</translation>
    </message>
    <message id="help.paper.title">
        <source>Practice on paper</source>
        <translation>Üben auf Papier</translation>
    </message>
    <message id="help.paper.what.print">
        <source>Print a ladder for each passage, tick it in pencil where you have no screen, and enter the sheet later. The rule is then applied to its marks as if you had played them here, on the day that you enter.</source>
        <translation>Drucke für jede Stelle eine Leiter, hake sie mit Bleistift ab, wo du keinen Bildschirm hast, und trag das Blatt später ein. Die Regel geht dann die Markierungen durch, als hättest du hier gespielt, an dem Tag, den du angibst.</translation>
    </message>
    <message id="help.paper.why.earlier-day">
        <source>You cannot enter runs for a day before the last day in the passage&apos;s log: what the rule has done since then is not undone.</source>
        <translation>Durchläufe lassen sich nicht für einen Tag vor dem letzten Tag im Tagebuch der Stelle eintragen: Was die Regel seither getan hat, wird nicht rückgängig gemacht.</translation>
    </message>
    <message id="help.paper.why.order">
        <source>A sheet shows how many, but not in which order, so on each rung misses count before circles.</source>
        <translation>Ein Blatt zeigt, wie viele, aber nicht in welcher Reihenfolge; darum zählen auf jeder Sprosse Fehler vor Kreisen.</translation>
    </message>
    <message id="help.passages.key.list">
        <source>move from passage to passage in the list</source>
        <translation>in der Liste von Stelle zu Stelle</translation>
    </message>
    <message id="help.passages.key.list.keys">
        <source>Up, Down</source>
        <translation>Pfeil auf, Pfeil ab</translation>
    </message>
    <message id="help.passages.key.save">
        <source>drill the chosen passage; in its form, save it first</source>
        <translation>die gewählte Stelle üben; im Formular wird sie vorher gespeichert</translation>
    </message>
    <message id="help.passages.title">
        <source>Passages</source>
        <translation>Stellen</translation>
    </message>
    <message id="help.passages.what.form">
        <source>The bars, a start and a target are enough; the rest has sensible defaults. The form shows how long a run takes, and about how many runs a full streak needs.</source>
        <translation>Takte, Start und Ziel genügen; der Rest ist sinnvoll voreingestellt. Das Formular zeigt, wie lange ein Durchlauf dauert und etwa wie viele Durchläufe eine volle Serie braucht.</translation>
    </message>
    <message id="help.passages.what.gentle">
        <source>Gentle near the target: there, a miss drops by one climb; at the target, only the second miss in a row drops.</source>
        <translation>Sanft nahe am Ziel: Dort kostet ein Fehler nur einen Anstieg; im Zieltempo erst der zweite in Folge.</translation>
    </message>
    <message id="help.passages.what.list">
        <source>All your passages, by the next due date of their piece, by how long they have rested, or by how far they are from the target. Choose one to see its page: the music, how it has gone, where it breaks and what comes next. Edit opens its form.</source>
        <translation>Alle deine Stellen, sortiert nach dem nächsten Termin ihres Stücks, danach, wie lange sie geruht haben, oder danach, wie weit sie noch vom Ziel entfernt sind. Wähle eine aus, und du siehst ihre Seite: die Noten, den Verlauf, wo sie hakt und was als Nächstes kommt. „Bearbeiten“ öffnet ihr Formular.</translation>
    </message>
    <message id="help.passages.why.about-runs">
        <source>The number of runs is calculated for a player who plays nine in ten clean and neither tires nor learns. It is not a promise.</source>
        <translation>Die Zahl der Durchläufe ist für jemanden berechnet, der neun von zehn sauber spielt und weder ermüdet noch dazulernt. Sie ist kein Versprechen.</translation>
    </message>
    <message id="help.passages.why.short">
        <source>Short passages come clean sooner: in a long one, a single bad bar spoils the whole run. Splitting a passage where it breaks is common practice; we know no source for it.</source>
        <translation>Kurze Stellen werden eher sauber: In einer langen verdirbt ein einziger schlechter Takt den ganzen Durchlauf. Eine Stelle dort zu teilen, wo es hakt, ist gängige Praxis; eine Quelle dafür kennen wir nicht.</translation>
    </message>
    <message id="help.picture.key.edge">
        <source>select the next edge, and then the whole frame again</source>
        <translation>die nächste Kante wählen und dann wieder den ganzen Rahmen</translation>
    </message>
    <message id="help.picture.key.edge.keys">
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message id="help.picture.key.leave">
        <source>cancel your changes</source>
        <translation>deine Änderungen verwerfen</translation>
    </message>
    <message id="help.picture.key.leave.keys">
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message id="help.picture.key.move">
        <source>move the frame or the selected edge; with Shift, in larger steps</source>
        <translation>den Rahmen oder die gewählte Kante bewegen; mit Umschalt in größeren Schritten</translation>
    </message>
    <message id="help.picture.key.move.keys">
        <source>Arrow keys</source>
        <translation>Pfeiltasten</translation>
    </message>
    <message id="help.picture.key.scroll">
        <source>scroll the page</source>
        <translation>die Seite scrollen</translation>
    </message>
    <message id="help.picture.key.scroll.keys">
        <source>PgUp, PgDown</source>
        <translation>Bild ↑, Bild ↓</translation>
    </message>
    <message id="help.picture.title">
        <source>A picture of the music</source>
        <translation>Ein Bild der Noten</translation>
    </message>
    <message id="help.picture.what.add">
        <source>Add a photo, a scan or a PDF page of your part, and put the frame around the passage. While you drill, you see what is in the frame. The picture is copied into the practice folder.</source>
        <translation>Füge ein Foto, einen Scan oder eine PDF-Seite deiner Stimme hinzu und leg den Rahmen um die Stelle. Beim Üben siehst du, was im Rahmen ist. Das Bild wird in den Übeordner kopiert.</translation>
    </message>
    <message id="help.picture.why.eyes">
        <source>Your eyes stay on the music: you see only the bars of the passage, as large as space allows. This is common practice; we know no source for it. Copy only music that you are allowed to copy.</source>
        <translation>Die Augen bleiben in den Noten: nur die Takte der Stelle, so groß, wie Platz ist. Das ist gängige Praxis; eine Quelle dafür kennen wir nicht. Kopiere nur Noten, die du kopieren darfst.</translation>
    </message>
    <message id="help.run-through.key.end">
        <source>mark the last note</source>
        <translation>den letzten Ton markieren</translation>
    </message>
    <message id="help.run-through.key.give-up">
        <source>give up</source>
        <translation>abbrechen</translation>
    </message>
    <message id="help.run-through.key.start">
        <source>start; then mark each stop</source>
        <translation>starten; danach jeden Hänger markieren</translation>
    </message>
    <message id="help.run-through.key.take-back">
        <source>take back the last stop</source>
        <translation>den letzten Hänger zurücknehmen</translation>
    </message>
    <message id="help.run-through.title">
        <source>Run-through</source>
        <translation>Gesamtdurchlauf</translation>
    </message>
    <message id="help.run-through.what.whole">
        <source>Play a whole piece without the click, from start to finish. You start from the form of any passage of that piece. Where the music stops, press the key and play on. The clock guesses the bar; you can correct it before you save the run-through.</source>
        <translation>Spiel ein ganzes Stück ohne Klick, von Anfang bis Ende. Du beginnst im Formular einer Stelle dieses Stücks. Wo du hängen bleibst, drück die Taste und spiel weiter. Die Uhr schätzt den Takt; du kannst ihn berichtigen, bevor du den Gesamtdurchlauf speicherst.</translation>
    </message>
    <message id="help.run-through.why.hides">
        <source>A run-through shows what the click hides: where the piece breaks when nothing leads. If the bar of a stop is unknown, the stop may have been anywhere, and it counts against every passage of the piece.</source>
        <translation>Ein Gesamtdurchlauf zeigt, was der Klick verbirgt: wo es im Stück hakt, wenn nichts führt. Ist der Takt eines Hängers nicht bekannt, kann er überall gewesen sein und zählt gegen jede Stelle des Stücks.</translation>
    </message>
    <message id="help.run-through.why.kept">
        <source>A passage holds as long as the last two run-throughs did not stop in it. Two is our choice, without a source: few enough to play, and more than luck.</source>
        <translation>Eine Stelle sitzt, solange sie in den letzten zwei Gesamtdurchläufen keinen Hänger hatte. Zwei ist unsere Wahl, ohne Quelle: wenige genug, um sie zu spielen, und mehr als Glück.</translation>
    </message>
    <message id="help.scales.key.drill">
        <source>drill the cell</source>
        <translation>das Feld üben</translation>
    </message>
    <message id="help.scales.key.drill.keys">
        <source>Return, Space</source>
        <translation>Return, Leertaste</translation>
    </message>
    <message id="help.scales.key.move">
        <source>move from cell to cell</source>
        <translation>von Feld zu Feld</translation>
    </message>
    <message id="help.scales.key.move.keys">
        <source>Arrow keys</source>
        <translation>Pfeiltasten</translation>
    </message>
    <message id="help.scales.key.suggested">
        <source>go to the suggested cell</source>
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
        <source>One kind of scale in all twelve keys, and each key from quarters to septuplets. A cell shows its best tempo with a full streak; an empty cell has not been played yet. Below the grid, the selected cell is put into words. You drill a cell like any passage.</source>
        <translation>Eine Art Tonleiter in allen zwölf Tonarten, und jede Tonart von Vierteln bis Septolen. Ein Feld zeigt sein bestes Tempo mit voller Serie; ein leeres wurde noch nicht gespielt. Unter dem Raster steht das gewählte Feld in Worten. Ein Feld übst du wie jede Stelle.</translation>
    </message>
    <message id="help.scales.what.new-cell">
        <source>A new cell starts two notches below the best of its nearest neighbour. Its end is arranged so that the last note falls on a beat; the card tells you how.</source>
        <translation>Ein neues Feld beginnt zwei Rasten unter dem Bestwert seines nächsten Nachbarn. Sein Ende ist so eingerichtet, dass der letzte Ton auf einen Schlag fällt; die Karte sagt dir, wie.</translation>
    </message>
    <message id="help.scales.what.suggested">
        <source>Piolo suggests the next cell and tells you why. Of the cells not played today, it is the one played longest ago, if that is a week or more; otherwise one that you have never played; otherwise the one furthest below the best of its row. You decide.</source>
        <translation>Piolo schlägt das nächste Feld vor und sagt dir, warum. Von den Feldern, die du heute noch nicht gespielt hast, ist es das, das am längsten ruht, wenn es eine Woche oder länger ist; sonst eines, das du noch nie gespielt hast; sonst das, das am weitesten unter dem Bestwert seiner Zeile liegt. Du entscheidest.</translation>
    </message>
    <message id="help.scales.why.days-apart">
        <source>Separate days help: of twenty-nine musicians learning nine notes on a keyboard, only those who came back after a day, rather than after minutes or hours, were more accurate the second time (Simmons 2012).</source>
        <translation>Getrennte Tage helfen: Von neunundzwanzig Musikern, die neun Töne auf einer Tastatur lernten, waren beim zweiten Mal nur die genauer, die nach einem Tag wiederkamen, nicht nach Minuten oder Stunden (Simmons 2012).</translation>
    </message>
    <message id="help.scales.why.fast-clicks">
        <source>Nobody can keep in step with single clicks faster than about eight to ten per second (Repp 2006). In small notes, follow the beat.</source>
        <translation>Schneller als etwa acht bis zehn in der Sekunde hält niemand mit einzelnen Klicks Schritt (Repp 2006). Richte dich bei kleinen Notenwerten nach dem Schlag.</translation>
    </message>
    <message id="help.scales.why.look-alikes">
        <source>Similar material late in the evening may cost you: in one study of sixty musicians, a second, similar melody took away the overnight gain.</source>
        <translation>Ähnliches spät am Abend kann dich etwas kosten: In einer Untersuchung mit sechzig Musikern machte eine zweite, ähnliche Melodie den Gewinn über Nacht zunichte.</translation>
    </message>
    <message id="help.scales.why.mixed-order">
        <source>A mixed order can help later: forty-one beginners on the clarinet finished their practice equally well, but a day later those who had practised in mixed order were faster, though not more accurate (Stambaugh 2011). One session with nineteen beginners on clarinet and saxophone showed no effect of the order (a study at Rhode Island College). That is why the mixed order is optional.</source>
        <translation>Eine gemischte Reihenfolge kann später helfen: Einundvierzig Anfänger an der Klarinette beendeten das Üben gleich gut, aber einen Tag später waren die schneller, die gemischt geübt hatten, wenn auch nicht genauer (Stambaugh 2011). Eine Sitzung mit neunzehn Anfängern an Klarinette und Saxophon zeigte keine Wirkung der Reihenfolge (eine Arbeit am Rhode Island College). Darum kannst du wählen, ob du mischst.</translation>
    </message>
    <message id="help.score.title">
        <source>A passage from a score</source>
        <translation>Eine Stelle aus einer Partitur</translation>
    </message>
    <message id="help.score.what.reads">
        <source>Piolo reads a MusicXML score, shows its parts and takes the bars that you pick: their meter, their tempo mark and their notes, so that you can hear the passage first.</source>
        <translation>Piolo liest eine Partitur in MusicXML, zeigt ihre Stimmen und nimmt die Takte, die du wählst: ihre Taktart, ihre Tempoangabe und ihre Noten, damit du die Stelle erst anhören kannst.</translation>
    </message>
    <message id="help.score.what.where">
        <source>Choose the file, type its path, or drop it on the card.</source>
        <translation>Wähle die Datei aus, tippe ihren Pfad ein oder zieh sie auf die Karte.</translation>
    </message>
    <message id="help.score.why.model">
        <source>School wind players who heard a model did better in rhythm and gained more tempo, whatever the order of their tempi (Henley 2001).</source>
        <translation>Schülerinnen und Schüler an Blasinstrumenten, die ein Vorbild hörten, wurden im Rhythmus besser und gewannen mehr Tempo, unabhängig von der Reihenfolge ihrer Tempi (Henley 2001).</translation>
    </message>
    <message id="help.score.why.straight">
        <source>Bars that contain a repeat or a change of meter are refused rather than guessed at: a passage is played straight through.</source>
        <translation>Takte mit einer Wiederholung oder einem Taktwechsel lehnt Piolo ab, statt zu raten: Eine Stelle wird glatt durchgespielt.</translation>
    </message>
    <message id="help.set.key.mark">
        <source>starts; while the click runs, marks a miss</source>
        <translation>startet; während der Klick läuft, markiert sie einen Fehler</translation>
    </message>
    <message id="help.set.what.marks">
        <source>Runs are logged under their own passage, by its own rule, as in the drill. A miss that you mark before the next passage&apos;s first note counts for the run before.</source>
        <translation>Jeder Durchlauf wird bei seiner Stelle eingetragen, nach ihrer eigenen Regel, wie beim Üben. Ein Fehler, den du vor dem ersten Ton der nächsten Stelle markierst, zählt für den Durchlauf davor.</translation>
    </message>
    <message id="help.set.what.stop">
        <source>When you stop, one line for each passage says how its runs went.</source>
        <translation>Wenn du anhältst, sagt eine Zeile zu jeder Stelle, wie ihre Durchläufe waren.</translation>
    </message>
    <message id="help.set.what.tones">
        <source>Before its count-in, each passage is announced by as many short, soft tones as its place in the set, and its title is shown in large letters.</source>
        <translation>Vor ihrem Einzähler kündigt sich jede Stelle mit so vielen kurzen, weichen Tönen an, wie es ihrer Nummer entspricht, und ihr Titel steht groß auf dem Bildschirm.</translation>
    </message>
    <message id="help.set.what.turns">
        <source>A set takes two to four passages in turn: so many runs or minutes of each, round and round until you stop. A turn ends with a run, never inside one.</source>
        <translation>Zwei bis vier Stellen wechseln sich ab: so viele Durchläufe oder Minuten von jeder, immer reihum, bis du anhältst. Gewechselt wird am Ende eines Durchlaufs, nie mittendrin.</translation>
    </message>
    <message id="help.set.why.studies">
        <source>Ten clarinettists practised one piece at a stretch and another in turns of three minutes. Where judges rated the two differently, the turns were ahead, though not for every judge. Of 41 beginners, those who had practised in mixed order played faster a day later, but no more accurately. Another study of beginners found no difference.</source>
        <translation>Zehn Klarinettisten übten ein Stück in einem Zug und ein anderes im Wechsel, je drei Minuten. Wo die Jury verschieden urteilte, lag das Abwechseln vorn, aber nicht bei allen Juroren. Von 41 Anfängern spielten die, die in gemischter Reihenfolge geübt hatten, einen Tag später schneller, aber nicht genauer. Eine andere Studie mit Anfängern fand keinen Unterschied.</translation>
    </message>
    <message id="help.set.why.tomorrow">
        <source>Judge it by the first run tomorrow, not by the last one today.</source>
        <translation>Urteile nach dem ersten Durchlauf morgen, nicht nach dem letzten heute.</translation>
    </message>
    <message id="help.settings.title">
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message id="help.settings.what.belongs">
        <source>Sound, appearance, language and keys belong to this computer; the practice settings travel with the practice folder.</source>
        <translation>Ton, Erscheinungsbild, Sprache und Tasten gehören zu diesem Rechner; die Einstellungen zum Üben wandern mit dem Übeordner mit.</translation>
    </message>
    <message id="help.settings.what.keys">
        <source>Any key can do any task: choose the task, then press the key. A pedal or a MIDI switch is a key like any other. A single pedal can do everything: one press starts or marks a miss, two presses take back the last mark; hold it to stop the click or, while stopped, to open the next passage.</source>
        <translation>Jede Taste kann jede Aufgabe übernehmen: Wähle die Aufgabe und drück dann die Taste. Ein Pedal oder ein MIDI-Schalter ist eine Taste wie jede andere. Ein Pedal allein kann alles: Ein Druck startet oder markiert einen Fehler, zwei nehmen die letzte Markierung zurück; Halten stoppt den Klick oder öffnet, wenn er ruht, die nächste Stelle.</translation>
    </message>
    <message id="help.settings.why.choices">
        <source>Three days until a passage is secure, four seconds to breathe after a miss, a quarter of a second from a slip to the key: these are our choices, and you can change them. We know that separate days help (Simmons 2012), but not how many are best.</source>
        <translation>Drei Tage, bis eine Stelle sicher ist, vier Sekunden zum Atmen nach einem Fehler, eine Viertelsekunde vom Patzer zur Taste: Das haben wir gewählt, und du kannst es ändern. Dass getrennte Tage helfen, ist bekannt (Simmons 2012), aber nicht, wie viele am besten sind.</translation>
    </message>
    <message id="help.settings.why.level">
        <source>The click starts low. Your instrument is louder, and that is fine: choose a sharper voice rather than a higher volume. Two metres from the screen the click is softer than beside it, and your own tone covers part of it. Piolo cannot know how loud it is in your room. So let your ears decide: hold a long note as loud as usual with the click on, and set the volume so that you just hear it. When you change voice or volume, a short bar lets you hear the change.</source>
        <translation>Der Klick beginnt leise. Dein Instrument ist lauter, und das ist in Ordnung: Wähle lieber einen schärferen Klang als mehr Lautstärke. Zwei Meter vom Bildschirm entfernt klingt der Klick leiser als direkt daneben, und dein eigener Ton verdeckt einen Teil davon. Wie laut er in deinem Raum ist, kann Piolo nicht wissen. Lass also deine Ohren entscheiden: Halte zum Klick einen Ton so laut wie sonst auch und stell die Lautstärke so ein, dass du ihn gerade noch hörst. Änderst du Klang oder Lautstärke, hörst du die Änderung in einem kurzen Takt.</translation>
    </message>
    <message id="help.sources">
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message id="help.sources.hint">
        <source>What we say about these sources is in their abstracts or opening pages.</source>
        <translation>Was wir hier über sie sagen, steht in ihren Zusammenfassungen oder auf ihren ersten Seiten.</translation>
    </message>
    <message id="help.start.key.control">
        <source>go to the next control, and back</source>
        <translation>zum nächsten Bedienelement und zurück</translation>
    </message>
    <message id="help.start.key.control.keys">
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message id="help.start.key.help">
        <source>help for the current screen, while the click is stopped</source>
        <translation>Hilfe zum aktuellen Bildschirm, solange der Klick ruht</translation>
    </message>
    <message id="help.start.key.press">
        <source>press the focused control</source>
        <translation>das ausgewählte Bedienelement betätigen</translation>
    </message>
    <message id="help.start.key.press.keys">
        <source>Return, Space</source>
        <translation>Return, Leertaste</translation>
    </message>
    <message id="help.start.title">
        <source>From slow to the whole piece</source>
        <translation>Von langsam bis zum ganzen Stück</translation>
    </message>
    <message id="help.start.what.piolo">
        <source>Piolo helps you get a hard passage clean. Choose a tempo at which nothing goes wrong, and play the passage again and again. You touch one key, and only for a miss: the tempo follows how cleanly you play.</source>
        <translation>Piolo hilft dir, eine schwere Stelle sauber zu bekommen. Wähle ein Tempo, in dem nichts schiefgeht, und spiel die Stelle wieder und wieder. Du drückst nur eine Taste, und nur bei einem Fehler: Das Tempo richtet sich danach, wie sauber du spielst.</translation>
    </message>
    <message id="help.start.what.stages">
        <source>A passage goes through five stages: slow with the click, secure at the target, without the click, in context with two more bars on each side, and in run-throughs of the piece. When your log supports the next stage, the drill screen says why. You decide, and you can go back.</source>
        <translation>Eine Stelle geht durch fünf Etappen: langsam mit Klick, im Zieltempo sicher, ohne Klick, im Kontext mit zwei Takten mehr auf jeder Seite, und in Gesamtdurchläufen des Stücks. Wenn dein Tagebuch die nächste Etappe nahelegt, sagt der Bildschirm „Üben“, warum. Du entscheidest, und du kannst zurückgehen.</translation>
    </message>
    <message id="help.start.why.few-misses">
        <source>How well a passage was kept overnight was linked to how few repetitions were wrong, not to how long or how often it was played: seventeen pianists, three bars (Duke, Simmons and Cash 2009). That is why Piolo aims for few misses, and counts clean runs rather than minutes.</source>
        <translation>Wie gut eine Stelle über Nacht behalten wurde, hing damit zusammen, wie wenige Durchläufe falsch waren, nicht damit, wie lange oder wie oft sie gespielt wurde: siebzehn Pianistinnen und Pianisten, drei Takte (Duke, Simmons und Cash 2009). Darum hält Piolo die Zahl der Fehler klein und zählt saubere Durchläufe, nicht Minuten.</translation>
    </message>
    <message id="help.start.why.slow">
        <source>Nearly all players say that they practise slowly (Allingham and Wöllner 2022): that shows what is usual, not what works. They also see its pitfalls, such as movements that differ from fast ones (2023). That is why you can always try a run at the target.</source>
        <translation>Fast alle, die ein Instrument spielen, geben an, langsam zu üben (Allingham und Wöllner 2022): Das zeigt, was üblich ist, nicht was wirkt. Sie sehen auch Tücken, etwa Bewegungen, die anders sind als die schnellen (2023). Darum kannst du jederzeit einen Durchlauf im Zieltempo versuchen.</translation>
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
        <source>Why it works this way</source>
        <translation>Warum es so funktioniert</translation>
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
    <message id="instruments.as-in">
        <source>as in “%1”</source>
        <translation>wie in „%1“</translation>
    </message>
    <message id="instruments.clarinets">
        <source>Clarinets</source>
        <translation>Klarinetten</translation>
    </message>
    <message id="instruments.double-reeds">
        <source>Double reeds</source>
        <translation>Doppelrohrblatt</translation>
    </message>
    <message id="instruments.flutes">
        <source>Flutes</source>
        <translation>Flöten</translation>
    </message>
    <message id="instruments.high-brass">
        <source>High brass</source>
        <translation>Hohes Blech</translation>
    </message>
    <message id="instruments.low-brass">
        <source>Low brass</source>
        <translation>Tiefes Blech</translation>
    </message>
    <message id="instruments.none">
        <source>No instrument has “%1” in its name.</source>
        <translation>Kein Instrument hat „%1“ im Namen.</translation>
    </message>
    <message id="instruments.saxophones">
        <source>Saxophones</source>
        <translation>Saxophone</translation>
    </message>
    <message id="instruments.search">
        <source>Search: any part of the name</source>
        <translation>Suchen: ein beliebiger Teil des Namens</translation>
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
        <source>Mark clean in open-ended runs; in a run-through: the last note</source>
        <translation>Bei offenem Ende: sauber markieren; im Gesamtdurchlauf: letzter Ton</translation>
    </message>
    <message id="keys.action.click">
        <source>Open “Just a click”</source>
        <translation>„Nur der Klick“ öffnen</translation>
    </message>
    <message id="keys.action.faster">
        <source>Faster, while stopped</source>
        <translation>Schneller, wenn der Klick ruht</translation>
    </message>
    <message id="keys.action.hear">
        <source>Hear the passage first, while stopped</source>
        <translation>Die Stelle erst anhören, wenn der Klick ruht</translation>
    </message>
    <message id="keys.action.miss">
        <source>Start; while the click runs: mark a miss; in a run-through: mark a stop</source>
        <translation>Start; während der Klick läuft: Fehler markieren; im Gesamtdurchlauf: Hänger markieren</translation>
    </message>
    <message id="keys.action.next">
        <source>Next passage, while stopped</source>
        <translation>Nächste Stelle, wenn der Klick ruht</translation>
    </message>
    <message id="keys.action.pedal">
        <source>One pedal for everything: press, hold, press twice</source>
        <translation>Ein Pedal für alles: drücken, halten, zweimal drücken</translation>
    </message>
    <message id="keys.action.save">
        <source>In a passage&apos;s form: save and drill</source>
        <translation>Im Formular einer Stelle: speichern und üben</translation>
    </message>
    <message id="keys.action.slower">
        <source>Slower, while stopped</source>
        <translation>Langsamer, wenn der Klick ruht</translation>
    </message>
    <message id="keys.action.stop">
        <source>Stop the click; give up a run-through</source>
        <translation>Klick anhalten; Gesamtdurchlauf abbrechen</translation>
    </message>
    <message id="keys.action.stretch">
        <source>In the log: make a passage of the bars that break</source>
        <translation>Im Tagebuch: eine Stelle aus den Takten machen, in denen es hakt</translation>
    </message>
    <message id="keys.action.tap">
        <source>In “Just a click”: tap the tempo</source>
        <translation>In „Nur der Klick“: das Tempo klopfen</translation>
    </message>
    <message id="keys.action.try">
        <source>Try once at the target</source>
        <translation>Ein Versuch im Zieltempo</translation>
    </message>
    <message id="keys.add">
        <source>Add a key</source>
        <translation>Weitere Taste</translation>
    </message>
    <message id="keys.add.spoken">
        <source>%1: add a key</source>
        <translation>%1: weitere Taste hinzufügen</translation>
    </message>
    <message id="keys.chip">
        <source>%1  ✕</source>
        <translation>%1  ✕</translation>
    </message>
    <message id="keys.chip.remove">
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message id="keys.done">
        <source>✓ %1</source>
        <translation>✓ %1</translation>
    </message>
    <message id="keys.full">
        <source>%1 was removed: an action has at most %2 keys.</source>
        <translation>%1 wurde entfernt: Eine Aktion hat höchstens %2 Tasten.</translation>
    </message>
    <message id="keys.held">
        <source>%1 held</source>
        <translation>%1 gehalten</translation>
    </message>
    <message id="keys.kept">
        <source>%1 stays: it is the last key for “%2”. Add another key first.</source>
        <translation>%1 bleibt: Es ist die letzte Taste für „%2“. Füge erst eine andere hinzu.</translation>
    </message>
    <message id="keys.last">
        <source>%1 is the last key for “%2”. Give that action another key first.</source>
        <translation>%1 ist die letzte Taste für „%2“. Gib dieser Aktion erst eine andere.</translation>
    </message>
    <message id="keys.midi.controller">
        <source>MIDI: controller %1, channel %2</source>
        <translation>MIDI: Controller %1, Kanal %2</translation>
    </message>
    <message id="keys.midi.listening">
        <source>Listening to %1. Press the switch.</source>
        <translation>Wartet auf %1. Drück den Schalter.</translation>
    </message>
    <message id="keys.midi.none">
        <source>MIDI is not available: this system has no MIDI sequencer. A pedal that acts as a keyboard still works.</source>
        <translation>MIDI ist nicht verfügbar: Dieses System hat keinen MIDI-Sequencer. Ein Pedal, das sich wie eine Tastatur verhält, funktioniert trotzdem.</translation>
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
        <source>No MIDI input is connected. Connect one, then press the switch.</source>
        <translation>Kein MIDI-Eingang ist angeschlossen. Schließ einen an und drück dann den Schalter.</translation>
    </message>
    <message id="keys.moved-from">
        <source>%1 is no longer a key for “%2”.</source>
        <translation>%1 ist keine Taste mehr für „%2“.</translation>
    </message>
    <message id="keys.moved-to">
        <source>%1 is now a key for “%2”.</source>
        <translation>%1 ist jetzt eine Taste für „%2“.</translation>
    </message>
    <message id="keys.none">
        <source>no key</source>
        <translation>keine Taste</translation>
    </message>
    <message id="keys.press">
        <source>Press a key…</source>
        <translation>Drück eine Taste…</translation>
    </message>
    <message id="keys.press.spoken">
        <source>%1: press a key now, or Esc to cancel</source>
        <translation>%1: jetzt eine Taste drücken, oder Esc zum Abbrechen</translation>
    </message>
    <message id="keys.removed">
        <source>%1 is no longer a key for “%2”.</source>
        <translation>%1 ist keine Taste mehr für „%2“.</translation>
    </message>
    <message id="keys.reset">
        <source>Restore default keys</source>
        <translation>Standardtasten wiederherstellen</translation>
    </message>
    <message id="keys.set.left-right">
        <source>Left and Right arrows</source>
        <translation>Pfeile links und rechts</translation>
    </message>
    <message id="keys.set.one-pedal">
        <source>A single pedal, PgDown</source>
        <translation>Ein einzelnes Pedal, Bild ↓</translation>
    </message>
    <message id="keys.set.pages">
        <source>PgUp and PgDown</source>
        <translation>Bild ↑ und Bild ↓</translation>
    </message>
    <message id="keys.set.space-return">
        <source>Space and Return</source>
        <translation>Leertaste und Return</translation>
    </message>
    <message id="keys.set.up-down">
        <source>Up and Down arrows</source>
        <translation>Pfeile auf und ab</translation>
    </message>
    <message id="keys.take-over">
        <source>Reassign</source>
        <translation>Neu zuweisen</translation>
    </message>
    <message id="keys.taken">
        <source>%1 is already used for “%2”. Press it again to reassign it, or press another key, or Esc.</source>
        <translation>%1 ist schon vergeben: „%2“. Drück noch einmal, um die Taste neu zuzuweisen, oder drück eine andere Taste, oder Esc.</translation>
    </message>
    <message id="keys.twice">
        <source>%1 twice</source>
        <translation>%1 zweimal</translation>
    </message>
    <message id="keys.unchanged">
        <source>You already use these keys.</source>
        <translation>Du benutzt diese Tasten schon.</translation>
    </message>
    <message id="keys.warning">
        <source>▲ %1</source>
        <translation>▲ %1</translation>
    </message>
    <message id="ladder.best">
        <source>best</source>
        <translation>Bestwert</translation>
    </message>
    <message id="ladder.now">
        <source>current tempo, %1</source>
        <translation>aktuelles Tempo, %1</translation>
    </message>
    <message id="ladder.spoken">
        <source>Tempo ladder</source>
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
    <message id="log.dates.ahead" numerus="yes">
        <source>%n entries are dated in the future, up to %1. Was a clock wrong?</source>
        <translation>
            <numerusform>%n Eintrag trägt ein Datum in der Zukunft: %1. Ging eine Uhr falsch?</numerusform>
            <numerusform>%n Einträge tragen ein Datum in der Zukunft, bis %1. Ging eine Uhr falsch?</numerusform>
        </translation>
    </message>
    <message id="log.dates.day">
        <source>When did you last play then?</source>
        <translation>Wann hast du damals zuletzt gespielt?</translation>
    </message>
    <message id="log.dates.done">
        <source>Dates corrected</source>
        <translation>Daten berichtigt</translation>
    </message>
    <message id="log.dates.put-right">
        <source>Correct dates</source>
        <translation>Daten berichtigen</translation>
    </message>
    <message id="log.dates.undo">
        <source>Undo</source>
        <translation>Rückgängig</translation>
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
        <source>You have not practised for %1 days. A few minutes today are enough to pick up the thread.</source>
        <translation>Seit %1 Tagen nicht geübt. Ein paar Minuten heute reichen, um den Faden wieder aufzunehmen.</translation>
    </message>
    <message id="log.days-missed-before">
        <source>You did not practise for %1 days in a row from %2. You have been back since, and that counts.</source>
        <translation>Ab dem %2 hast du an %1 Tagen hintereinander nicht geübt. Seitdem bist du wieder dabei, und das zählt.</translation>
    </message>
    <message id="log.empty">
        <source>You have not played anything yet. Every run you drill appears here, day by day.</source>
        <translation>Du hast noch nichts gespielt. Jeder Durchlauf, den du übst, erscheint hier, Tag für Tag.</translation>
    </message>
    <message id="log.entry.edit-note">
        <source>Edit note</source>
        <translation>Notiz bearbeiten</translation>
    </message>
    <message id="log.entry.keep">
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message id="log.entry.leave">
        <source>Cancel</source>
        <translation>Abbrechen</translation>
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
        <source>Note on %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message id="log.entry.note.title">
        <source>Note on this run</source>
        <translation>Notiz zu diesem Durchlauf</translation>
    </message>
    <message id="log.entry.run">
        <source>the run at %1, %2</source>
        <translation>Durchlauf um %1, %2</translation>
    </message>
    <message id="log.entry.run-of">
        <source>run %1 of %2 at %3, %4</source>
        <translation>Durchlauf %1 von %2 um %3, %4</translation>
    </message>
    <message id="log.entry.run-through">
        <source>the run-through at %1</source>
        <translation>Gesamtdurchlauf um %1</translation>
    </message>
    <message id="log.entry.take-back">
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message id="log.entry.take-back.spoken">
        <source>Take back %1</source>
        <translation>Zurücknehmen: %1</translation>
    </message>
    <message id="log.entry.tempo">
        <source>the tempo %1 set at %2</source>
        <translation>Tempo %1, gesetzt um %2</translation>
    </message>
    <message id="log.entry.was-clean">
        <source>It was clean</source>
        <translation>War sauber</translation>
    </message>
    <message id="log.entry.was-clean.spoken">
        <source>It was clean: %1</source>
        <translation>War sauber: %1</translation>
    </message>
    <message id="log.entry.was-missed">
        <source>It was a miss</source>
        <translation>War ein Fehler</translation>
    </message>
    <message id="log.entry.was-missed.spoken">
        <source>It was a miss: %1</source>
        <translation>War ein Fehler: %1</translation>
    </message>
    <message id="log.filter.every-passage">
        <source>all passages</source>
        <translation>alle Stellen</translation>
    </message>
    <message id="log.filter.every-piece">
        <source>all pieces</source>
        <translation>alle Stücke</translation>
    </message>
    <message id="log.filter.everything">
        <source>everything</source>
        <translation>alles</translation>
    </message>
    <message id="log.filter.first-day">
        <source>all time</source>
        <translation>gesamte Zeit</translation>
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
        <source>Period</source>
        <translation>Zeitraum</translation>
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
        <source>1 year</source>
        <translation>1 Jahr</translation>
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
        <source>bars unknown</source>
        <translation>Takte unbekannt</translation>
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
    <message id="log.line.corrected">
        <source>%1, changed afterwards</source>
        <translation>%1, nachträglich geändert</translation>
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
        <translation>%1 nicht gezählt</translation>
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
        <source>in context</source>
        <translation>im Kontext</translation>
    </message>
    <message id="log.line.missed">
        <source>missed</source>
        <translation>mit Fehler</translation>
    </message>
    <message id="log.line.missed-late">
        <source>missed, marked afterwards</source>
        <translation>mit Fehler, nachträglich markiert</translation>
    </message>
    <message id="log.line.more">
        <source>%1 …</source>
        <translation>%1 …</translation>
    </message>
    <message id="log.line.moves-nothing">
        <source>%1: changes nothing</source>
        <translation>%1: ändert nichts</translation>
    </message>
    <message id="log.line.named">
        <source>start of the search for the tempo</source>
        <translation>Beginn der Temposuche</translation>
    </message>
    <message id="log.line.new-day">
        <source>new day; left at %1</source>
        <translation>neuer Tag, zuletzt %1</translation>
    </message>
    <message id="log.line.offer-taken">
        <source>suggestion accepted</source>
        <translation>Vorschlag angenommen</translation>
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
        <translation>zählt nicht: Ton ausgefallen</translation>
    </message>
    <message id="log.line.void-stopped">
        <source>not counted: stopped</source>
        <translation>zählt nicht: angehalten</translation>
    </message>
    <message id="log.line.void-tempo">
        <source>not counted: the tempo changed during the run</source>
        <translation>zählt nicht: Tempo unterwegs geändert</translation>
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
        <source>clean: automatic</source>
        <translation>sauber: automatisch</translation>
    </message>
    <message id="log.mark.missed">
        <source>miss: %1</source>
        <translation>Fehler: %1</translation>
    </message>
    <message id="log.mark.stop">
        <source>stop: %1</source>
        <translation>Stopp: %1</translation>
    </message>
    <message id="log.more" numerus="yes">
        <source>Show more (%n left)</source>
        <translation>
            <numerusform>Mehr anzeigen (noch %n)</numerusform>
            <numerusform>Mehr anzeigen (noch %n)</numerusform>
        </translation>
    </message>
    <message id="log.never-two-days-missed">
        <source>No two days missed in a row in four weeks; one now and then is fine.</source>
        <translation>In vier Wochen nie zwei Tage hintereinander ausgelassen; einer ab und zu ist in Ordnung.</translation>
    </message>
    <message id="log.no-day-missed">
        <source>You have not missed a day since you began.</source>
        <translation>Von Anfang an keinen Tag ausgelassen.</translation>
    </message>
    <message id="log.no-day-missed-lately">
        <source>You have not missed a day in four weeks.</source>
        <translation>In vier Wochen keinen Tag ausgelassen.</translation>
    </message>
    <message id="log.none-found">
        <source>No entries match these filters.</source>
        <translation>Keine Einträge passen zu diesen Filtern.</translation>
    </message>
    <message id="log.title">
        <source>Practice log</source>
        <translation>Übetagebuch</translation>
    </message>
    <message id="log.week.figures">
        <source>%1, %2, %3 clean</source>
        <translation>%1, %2, %3 sauber</translation>
    </message>
    <message id="log.week.last">
        <source>Last week: %1</source>
        <translation>Letzte Woche: %1</translation>
    </message>
    <message id="log.week.this">
        <source>This week: %1</source>
        <translation>Diese Woche: %1</translation>
    </message>
    <message id="log.worst.clean">
        <source>%1 of %2 clean</source>
        <translation>%1 von %2 sauber</translation>
    </message>
    <message id="log.worst.clean-and-bar">
        <source>%1, most misses in bar %2</source>
        <translation>%1, die meisten Fehler in Takt %2</translation>
    </message>
    <message id="log.worst.spoken">
        <source>%1: %2; shows only this passage</source>
        <translation>%1: %2; zeigt nur diese Stelle</translation>
    </message>
    <message id="log.worst.title">
        <source>Needs most work (last two weeks)</source>
        <translation>Braucht am meisten Arbeit (letzte zwei Wochen)</translation>
    </message>
    <message id="manner.as-written">
        <source>as written</source>
        <translation>wie notiert</translation>
    </message>
    <message id="manner.double-tongued">
        <source>double-tongued</source>
        <translation>Doppelzunge</translation>
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
        <translation>lang-kurz</translation>
    </message>
    <message id="manner.short-long">
        <source>short and long</source>
        <translation>kurz-lang</translation>
    </message>
    <message id="manner.slur-three-tongue-one">
        <source>slur three, tongue one</source>
        <translation>3 gebunden, 1 gestoßen</translation>
    </message>
    <message id="manner.slur-two-tongue-two">
        <source>slur two, tongue two</source>
        <translation>2 gebunden, 2 gestoßen</translation>
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
        <translation>1 gestoßen, 3 gebunden</translation>
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
        <translation>Maximum: %1 min</translation>
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
        <source>Minutes per day, four weeks</source>
        <translation>Minuten pro Tag, vier Wochen</translation>
    </message>
    <message id="minutes.title">
        <source>Minutes per day</source>
        <translation>Minuten pro Tag</translation>
    </message>
    <message id="minutes.today">
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message id="minutes.weeks-ago">
        <source>4 weeks ago</source>
        <translation>vor 4 Wochen</translation>
    </message>
    <message id="nav.help">
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message id="nav.log">
        <source>Log</source>
        <translation>Tagebuch</translation>
    </message>
    <message id="nav.now">
        <source>Back to %1</source>
        <translation>Zurück zu %1</translation>
    </message>
    <message id="nav.passages">
        <source>Passages</source>
        <translation>Stellen</translation>
    </message>
    <message id="nav.paused">
        <source>%1: paused</source>
        <translation>%1: Pause</translation>
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
    <message id="page.curve">
        <source>Tempo curve</source>
        <translation>Tempokurve</translation>
    </message>
    <message id="page.edit">
        <source>Edit</source>
        <translation>Bearbeiten</translation>
    </message>
    <message id="page.next" numerus="yes">
        <source>%n more clean runs in a row, then %1.</source>
        <translation>
            <numerusform>Noch %n sauberer Durchlauf, dann %1.</numerusform>
            <numerusform>Noch %n saubere Durchläufe in Folge, dann %1.</numerusform>
        </translation>
    </message>
    <message id="page.notes">
        <source>Notes on the piece</source>
        <translation>Notizen zum Stück</translation>
    </message>
    <message id="page.stage">
        <source>Stage: %1</source>
        <translation>Etappe: %1</translation>
    </message>
    <message id="page.standing">
        <source>of %1 · %2</source>
        <translation>von %1 · %2</translation>
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
        <source>Day you played it</source>
        <translation>Tag, an dem du gespielt hast</translation>
    </message>
    <message id="paper.enter.done" numerus="yes">
        <source>%n runs were added to the log.</source>
        <translation>
            <numerusform>%n Durchlauf steht jetzt im Tagebuch.</numerusform>
            <numerusform>%n Durchläufe stehen jetzt im Tagebuch.</numerusform>
        </translation>
    </message>
    <message id="paper.enter.fault.before">
        <source>not before %1, the last day in its log; the rule goes on from there</source>
        <translation>nicht vor %1, dem letzten Tag in ihrem Tagebuch; von dort geht die Regel weiter</translation>
    </message>
    <message id="paper.enter.fault.day">
        <source>a date such as %1</source>
        <translation>ein Datum wie %1</translation>
    </message>
    <message id="paper.enter.fault.future">
        <source>this day is in the future</source>
        <translation>dieser Tag liegt in der Zukunft</translation>
    </message>
    <message id="paper.enter.fault.tempo">
        <source>a tempo from 10 to 400</source>
        <translation>ein Tempo von 10 bis 400</translation>
    </message>
    <message id="paper.enter.keep">
        <source>Save to log</source>
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
        <source>On each rung, misses count before circles.</source>
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
        <source>%1: see the result above.</source>
        <translation>%1: das Ergebnis steht oben.</translation>
    </message>
    <message id="paper.enter.result.best">
        <source>Best with a full streak</source>
        <translation>Bestwert mit voller Serie</translation>
    </message>
    <message id="paper.enter.result.best.none">
        <source>none yet</source>
        <translation>noch keiner</translation>
    </message>
    <message id="paper.enter.result.secures">
        <source>Full streaks at the target</source>
        <translation>Volle Serien im Zieltempo</translation>
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
        <source>Take all back</source>
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
        <source>File name (.pdf, .svg or .png)</source>
        <translation>Dateiname (.pdf, .svg oder .png)</translation>
    </message>
    <message id="paper.print.hint">
        <source>Print a ladder for each passage, from its current tempo to its target, with a circle for each clean run, and tick it in pencil.</source>
        <translation>Drucke für jede Stelle eine Leiter, vom aktuellen Tempo bis zum Ziel, mit einem Kreis für jeden sauberen Durchlauf, und hake sie mit Bleistift ab.</translation>
    </message>
    <message id="paper.print.letter">
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message id="paper.print.most">
        <source>At most %1 passages fit on one sheet.</source>
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
        <source>Save sheet</source>
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
    <message id="parts.back">
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message id="parts.close">
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message id="parts.fold.closed">
        <source>%1, closed</source>
        <translation>%1, zugeklappt</translation>
    </message>
    <message id="parts.fold.open">
        <source>%1, open</source>
        <translation>%1, aufgeklappt</translation>
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
        <source>furthest from target</source>
        <translation>am weitesten vom Ziel</translation>
    </message>
    <message id="passages.by-date">
        <source>next due date</source>
        <translation>nächster Termin</translation>
    </message>
    <message id="passages.by-rest">
        <source>longest rested</source>
        <translation>lange nicht gespielt</translation>
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
        <source>From a score</source>
        <translation>Aus Partitur</translation>
    </message>
    <message id="passages.hide-removed">
        <source>Hide removed passages</source>
        <translation>Entfernte Stellen ausblenden</translation>
    </message>
    <message id="passages.line">
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message id="passages.more">
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message id="passages.new">
        <source>New passage</source>
        <translation>Neue Stelle</translation>
    </message>
    <message id="passages.none">
        <source>No passages yet. Create your first with the form on the right.</source>
        <translation>Noch keine Stellen. Leg mit dem Formular rechts deine erste an.</translation>
    </message>
    <message id="passages.none-found">
        <source>No passage contains all of these words.</source>
        <translation>Keine Stelle enthält alle diese Wörter.</translation>
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
        <source>No piece</source>
        <translation>Kein Stück</translation>
    </message>
    <message id="passages.on-its-own.inline">
        <source>no piece</source>
        <translation>kein Stück</translation>
    </message>
    <message id="passages.on-paper">
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message id="passages.order">
        <source>Sort by</source>
        <translation>Sortieren nach</translation>
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
        <source>“%1” was removed.</source>
        <translation>„%1“ wurde entfernt.</translation>
    </message>
    <message id="passages.restore">
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message id="passages.search">
        <source>Search</source>
        <translation>Suchen</translation>
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
        <source>Show removed passages</source>
        <translation>Entfernte Stellen zeigen</translation>
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
        <source>Two drops below the start</source>
        <translation>Zwei Abstiege unter den Start</translation>
    </message>
    <message id="pause.easier">
        <source>Make it easier for a while: fewer bars, a slower tempo, or a rest. Practising the mistake does not help.</source>
        <translation>Mach es eine Weile leichter: weniger Takte, ein langsameres Tempo oder eine Pause. Den Fehler zu üben hilft nicht.</translation>
    </message>
    <message id="pause.fewer-bars">
        <source>Fewer bars</source>
        <translation>Weniger Takte</translation>
    </message>
    <message id="pause.go-on">
        <source>Continue anyway</source>
        <translation>So weitermachen</translation>
    </message>
    <message id="pause.half-tempo">
        <source>Half tempo: %1</source>
        <translation>Halbes Tempo: %1</translation>
    </message>
    <message id="pause.misses.title">
        <source>Three misses without a clean run</source>
        <translation>Drei Fehler, kein sauberer Durchlauf</translation>
    </message>
    <message id="pause.no">
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message id="pause.rest">
        <source>Take a rest</source>
        <translation>Pause machen</translation>
    </message>
    <message id="pause.stop">
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message id="pause.unmarked" numerus="yes">
        <source>%n runs went by without a key press. If you were not listening to every note, choose No: the runs then do not count, and their climbs are taken back.</source>
        <translation>
            <numerusform>%n Durchlauf verging ohne Tastendruck. Wenn du nicht auf jeden Ton gehört hast, wähle Nein: Er zählt dann nicht, und sein Anstieg wird zurückgenommen.</numerusform>
            <numerusform>%n Durchläufe vergingen ohne Tastendruck. Wenn du nicht auf jeden Ton gehört hast, wähle Nein: Sie zählen dann nicht, und ihre Anstiege werden zurückgenommen.</numerusform>
        </translation>
    </message>
    <message id="pause.unmarked.title">
        <source>Were these runs clean?</source>
        <translation>Waren diese Durchläufe sauber?</translation>
    </message>
    <message id="pause.yes">
        <source>Yes, continue</source>
        <translation>Ja, weiter</translation>
    </message>
    <message id="pedal.hint">
        <source>Keys that start the click and, while it runs, mark a miss: %1. Do you have a page turner pedal? Press the button here, then the pedal. A MIDI switch works too; see the settings.</source>
        <translation>Tasten, die den Klick starten und, solange er läuft, einen Fehler markieren: %1. Hast du ein Blätterpedal? Klick hier auf die Schaltfläche und drück dann das Pedal. Ein MIDI-Schalter geht auch; siehe Einstellungen.</translation>
    </message>
    <message id="pedal.press">
        <source>Press the pedal now (Esc to cancel)</source>
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
    <message id="picks.and-scales">
        <source>%1, %2</source>
        <translation>%1, %2</translation>
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
        <source>Untick all passages</source>
        <translation>Alle Haken entfernen</translation>
    </message>
    <message id="picks.of">
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message id="picks.scales" numerus="yes">
        <source>%n scales</source>
        <translation>
            <numerusform>%n Tonleiter</numerusform>
            <numerusform>%n Tonleitern</numerusform>
        </translation>
    </message>
    <message id="picks.spoken">
        <source>Passages to tick</source>
        <translation>Stellen zum Anhaken</translation>
    </message>
    <message id="picks.with-scales">
        <source>Scales too (%1)</source>
        <translation>Auch Tonleitern (%1)</translation>
    </message>
    <message id="picture.add">
        <source>Add a picture of the music</source>
        <translation>Bild der Noten hinzufügen</translation>
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
        <source>A PNG or JPEG, or a PDF from which you choose a page. Choose the file, type its path, or drop it here. It is copied into the practice folder.</source>
        <translation>Ein PNG oder JPEG oder ein PDF, aus dem du eine Seite wählst. Wähle die Datei aus, tippe ihren Pfad ein oder zieh sie hierher. Sie wird in den Übeordner kopiert.</translation>
    </message>
    <message id="picture.frame">
        <source>frame</source>
        <translation>Rahmen</translation>
    </message>
    <message id="picture.frame.spoken">
        <source>%1 to %2% across, %3 to %4% down</source>
        <translation>quer %1 bis %2 %, von oben %3 bis %4 %</translation>
    </message>
    <message id="picture.hint">
        <source>Drag the frame around the passage, or use the arrow keys to move the part that is selected here: Shift for larger steps, Space for the next edge.</source>
        <translation>Zieh den Rahmen um die Stelle oder bewege mit den Pfeiltasten den Teil, der hier gewählt ist: Umschalt für größere Schritte, Leertaste für die nächste Kante.</translation>
    </message>
    <message id="picture.keep">
        <source>Use this part</source>
        <translation>Ausschnitt verwenden</translation>
    </message>
    <message id="picture.leave">
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message id="picture.left">
        <source>left</source>
        <translation>links</translation>
    </message>
    <message id="picture.missing">
        <source>The picture of the music in the practice folder cannot be read. Add it again, or remove it here.</source>
        <translation>Das Bild der Noten im Übeordner lässt sich nicht lesen. Füge es noch einmal hinzu oder entferne es hier.</translation>
    </message>
    <message id="picture.of-passage">
        <source>the page of “%1”</source>
        <translation>die Seite von „%1“</translation>
    </message>
    <message id="picture.or-page">
        <source>Or use a page that this piece already has</source>
        <translation>Oder eine Seite, die dieses Stück schon hat</translation>
    </message>
    <message id="picture.page">
        <source>Page (of %1)</source>
        <translation>Seite (von %1)</translation>
    </message>
    <message id="picture.read-only">
        <source>This window can only read the practice folder.</source>
        <translation>Dieses Fenster kann den Übeordner nur lesen.</translation>
    </message>
    <message id="picture.reading">
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message id="picture.remove">
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message id="picture.restore">
        <source>Undo removal</source>
        <translation>Entfernen rückgängig machen</translation>
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
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message id="picture.take-page">
        <source>Use this page</source>
        <translation>Diese Seite verwenden</translation>
    </message>
    <message id="picture.title">
        <source>Music for “%1”</source>
        <translation>Noten für „%1“</translation>
    </message>
    <message id="picture.top">
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message id="picture.unreadable">
        <source>The picture of the music in the practice folder cannot be read.</source>
        <translation>Das Bild der Noten im Übeordner lässt sich nicht lesen.</translation>
    </message>
    <message id="picture.whole-page">
        <source>Whole page</source>
        <translation>Ganze Seite</translation>
    </message>
    <message id="piece.bars">
        <source>Total bars</source>
        <translation>Takte insgesamt</translation>
    </message>
    <message id="piece.bars.unknown">
        <source>unknown</source>
        <translation>unbekannt</translation>
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
        <source>a date such as %1, or leave it empty</source>
        <translation>ein Datum wie %1, oder leer lassen</translation>
    </message>
    <message id="piece.fault.letters">
        <source>at most %1 characters</source>
        <translation>höchstens %1 Zeichen</translation>
    </message>
    <message id="piece.fault.meter">
        <source>a meter such as 4/4, 6/8 or 7/8, or leave it empty</source>
        <translation>eine Taktart wie 4/4, 6/8 oder 7/8, oder leer lassen</translation>
    </message>
    <message id="piece.fault.name">
        <source>the piece needs a name</source>
        <translation>das Stück braucht einen Namen</translation>
    </message>
    <message id="piece.fault.tempo">
        <source>a tempo from 10 to 400, or leave it empty</source>
        <translation>ein Tempo von 10 bis 400, oder leer lassen</translation>
    </message>
    <message id="piece.fault.too-long">
        <source>too long to save</source>
        <translation>zu lang zum Speichern</translation>
    </message>
    <message id="piece.fault.whole">
        <source>a whole number from %1 to %2</source>
        <translation>eine ganze Zahl von %1 bis %2</translation>
    </message>
    <message id="piece.fault.whole-or-none">
        <source>a whole number up to %1, or leave it empty</source>
        <translation>eine ganze Zahl bis %1, oder leer lassen</translation>
    </message>
    <message id="piece.instrument">
        <source>Instrument</source>
        <translation>Instrument</translation>
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
        <source>unknown; run-throughs then show no bars</source>
        <translation>unbekannt; Gesamtdurchläufe zeigen dann keine Takte</translation>
    </message>
    <message id="piece.name">
        <source>Name of the piece</source>
        <translation>Name des Stücks</translation>
    </message>
    <message id="piece.notes">
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message id="piece.tempo">
        <source>Tempo of the piece, %1 =</source>
        <translation>Tempo des ganzen Stücks, %1 =</translation>
    </message>
    <message id="piece.transposition">
        <source>Transposition (semitones)</source>
        <translation>Transposition (Halbtöne)</translation>
    </message>
    <message id="piece.transposition.example">
        <source>−2 for a clarinet in B♭</source>
        <translation>−2 für eine Klarinette in B</translation>
    </message>
    <message id="playing.spoken">
        <source>The click is running. Mark a miss: %1. Stop: %2.</source>
        <translation>Der Klick läuft. Mit %1 markierst du einen Fehler, mit %2 hältst du an.</translation>
    </message>
    <message id="playing.stop">
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message id="playing.target">
        <source>%1 ↑</source>
        <translation>%1 ↑</translation>
    </message>
    <message id="practice.day-opens">
        <source>A new day starts</source>
        <translation>Ein neuer Tag beginnt</translation>
    </message>
    <message id="practice.hint">
        <source>These settings travel with the practice folder.</source>
        <translation>Diese Einstellungen wandern mit dem Übeordner mit.</translation>
    </message>
    <message id="practice.millis">
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message id="practice.pause">
        <source>Without a key press, pause and ask after</source>
        <translation>Durchläufe ohne Tastendruck, bis Piolo anhält und nachfragt</translation>
    </message>
    <message id="practice.pause.never">
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message id="practice.play-on">
        <source>Play on after a miss: the run goes on, and the tempo drops only once</source>
        <translation>Nach einem Fehler weiterspielen: Der Durchlauf geht bis zum Ende, und das Tempo sinkt nur einmal</translation>
    </message>
    <message id="practice.reaction">
        <source>Reaction time, from slip to key (a guess: set your own)</source>
        <translation>Reaktionszeit, vom Patzer zur Taste (geschätzt: stell deine ein)</translation>
    </message>
    <message id="practice.read-only">
        <source>Another window is using this practice folder, so you cannot change this here.</source>
        <translation>Ein anderes Fenster benutzt diesen Übeordner; darum lässt sich das hier nicht ändern.</translation>
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
        <source>A passage is fully secure after being secure on</source>
        <translation>Sichere Tage, bis eine Stelle ganz sicher ist</translation>
    </message>
    <message id="practice.title">
        <source>Practice</source>
        <translation>Üben</translation>
    </message>
    <message id="rest.note">
        <source>You have been playing for a good while: give your ears and lip a rest. If you feel pain, tingling or numbness, stop and see a professional.</source>
        <translation>Du spielst schon eine ganze Weile: Gönn Ohren und Lippe eine Pause. Bei Schmerzen, Kribbeln oder Taubheitsgefühl hör auf und hol dir fachlichen Rat.</translation>
    </message>
    <message id="rest.read">
        <source>Got it</source>
        <translation>Verstanden</translation>
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
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message id="run-through.bars-guessed">
        <source>The clock guessed the bars. Correct them, and clear any that you do not know.</source>
        <translation>Die Takte sind nach der Uhr geschätzt. Berichtige sie, oder lass leer, was du nicht weißt.</translation>
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
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message id="run-through.earlier">
        <source>Run-throughs so far</source>
        <translation>Bisherige Gesamtdurchläufe</translation>
    </message>
    <message id="run-through.fault.bar">
        <source>a bar number up to %1, or leave it empty</source>
        <translation>eine Taktzahl bis %1, oder leer lassen</translation>
    </message>
    <message id="run-through.give-up">
        <source>Give up</source>
        <translation>Abbrechen</translation>
    </message>
    <message id="run-through.hint">
        <source>Play the whole piece without the click. When you come to a stop, press the key and play on.</source>
        <translation>Spiel das ganze Stück ohne Klick. Wo du hängen bleibst, drück die Taste und spiel weiter.</translation>
    </message>
    <message id="run-through.keep">
        <source>Save to log</source>
        <translation>Ins Tagebuch übernehmen</translation>
    </message>
    <message id="run-through.last-note">
        <source>Last note</source>
        <translation>Letzter Ton</translation>
    </message>
    <message id="run-through.no-stop">
        <source>no stop</source>
        <translation>kein Hänger</translation>
    </message>
    <message id="run-through.none">
        <source>None yet.</source>
        <translation>Noch keiner.</translation>
    </message>
    <message id="run-through.now">
        <source>Whole piece %1</source>
        <translation>Ganzes Stück %1</translation>
    </message>
    <message id="run-through.now-review">
        <source>Whole piece: not saved yet</source>
        <translation>Ganzes Stück: noch nicht übernommen</translation>
    </message>
    <message id="run-through.start">
        <source>Start</source>
        <translation>Los</translation>
    </message>
    <message id="run-through.stop">
        <source>Mark a stop</source>
        <translation>Hänger markieren</translation>
    </message>
    <message id="run-through.stop-bar">
        <source>Stop at %1, bar</source>
        <translation>Hänger bei %1, Takt</translation>
    </message>
    <message id="run-through.stops" numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n Hänger</numerusform>
            <numerusform>%n Hänger</numerusform>
        </translation>
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
        <source>%1, unfinished</source>
        <translation>%1, nicht bis zum Ende</translation>
    </message>
    <message id="scale.ending.comma">
        <source>, </source>
        <translation>, </translation>
    </message>
    <message id="scale.ending.over">
        <source>it goes %1 notes above the last tonic and comes back</source>
        <translation>geht sie %1 Töne über den letzten Grundton und kommt zurück</translation>
    </message>
    <message id="scale.ending.over-one">
        <source>it goes one note above the last tonic and comes back</source>
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
        <source>it goes %1 notes below the last tonic and comes back</source>
        <translation>geht sie %1 Töne unter den letzten Grundton und kommt zurück</translation>
    </message>
    <message id="scale.ending.under-one">
        <source>it goes one note below the last tonic and comes back</source>
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
        <translation>Bebop dominant</translation>
    </message>
    <message id="scale.kind.bebop-dominant.in">
        <source>%1 bebop dominant</source>
        <translation>%1 Bebop dominant</translation>
    </message>
    <message id="scale.kind.bebop-major">
        <source>Bebop major</source>
        <translation>Bebop-Dur</translation>
    </message>
    <message id="scale.kind.bebop-major.in">
        <source>%1 bebop major</source>
        <translation>%1 Bebop-Dur</translation>
    </message>
    <message id="scale.kind.bebop-minor">
        <source>Bebop minor</source>
        <translation>Bebop-Moll</translation>
    </message>
    <message id="scale.kind.bebop-minor.in">
        <source>%1 bebop minor</source>
        <translation>%1 Bebop-Moll</translation>
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
        <translation>Ganztonleiter</translation>
    </message>
    <message id="scale.kind.whole-tone.in">
        <source>whole tone from %1</source>
        <translation>Ganztonleiter ab %1</translation>
    </message>
    <message id="scale.order.fifths">
        <source>by fifths</source>
        <translation>in Quinten</translation>
    </message>
    <message id="scale.order.fourths">
        <source>by fourths</source>
        <translation>in Quarten</translation>
    </message>
    <message id="scale.order.random">
        <source>random</source>
        <translation>zufällig</translation>
    </message>
    <message id="scale.order.semitones">
        <source>by semitones</source>
        <translation>in Halbtönen</translation>
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
            <numerusform>%n B</numerusform>
        </translation>
    </message>
    <message id="scale.signature.none">
        <source>no key signature: accidentals are written beside the notes</source>
        <translation>ohne Vorzeichnung: Versetzungszeichen stehen bei den Noten</translation>
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
        <source>Altissimo: it goes up to %1, and your highest note is %2. “The whole range” stays within your notes.</source>
        <translation>Über deinem Umfang: Sie geht bis %1 hinauf, und dein höchster Ton ist %2. „Der ganze Umfang“ bleibt innerhalb deiner Töne.</translation>
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
    <message id="scales.cell.in-words">
        <source>Best %1, %2, played %3.</source>
        <translation>Bestwert %1, %2, gespielt %3.</translation>
    </message>
    <message id="scales.cell.in-words-no-best">
        <source>No best yet: %1, played %2.</source>
        <translation>Noch kein Bestwert: %1, gespielt %2.</translation>
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
    <message id="scales.cell.secure">
        <source>✓ Secure at the target.</source>
        <translation>✓ Sicher im Zieltempo.</translation>
    </message>
    <message id="scales.cell.spoken">
        <source>%1: best %2, %3, played %4</source>
        <translation>%1: Bestwert %2, %3, gespielt: %4</translation>
    </message>
    <message id="scales.cell.spoken-no-best">
        <source>%1: no best yet (%2), %3, %4</source>
        <translation>%1: noch kein Bestwert (%2), %3, %4</translation>
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
        <translation>Return</translation>
    </message>
    <message id="scales.goes-on">
        <source>Continues at %1.</source>
        <translation>Weiter geht es bei %1.</translation>
    </message>
    <message id="scales.grid">
        <source>Grid</source>
        <translation>Raster</translation>
    </message>
    <message id="scales.grid.spoken">
        <source>Twelve keys by seven subdivisions. The arrow keys select a cell, Return drills it.</source>
        <translation>Zwölf Tonarten mal sieben Unterteilungen. Die Pfeiltasten wählen ein Feld, Return übt es.</translation>
    </message>
    <message id="scales.hear">
        <source>Hear it first</source>
        <translation>Erst anhören</translation>
    </message>
    <message id="scales.instrument">
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message id="scales.instrument.highest">
        <source>Highest note, as written</source>
        <translation>Höchster Ton, wie notiert</translation>
    </message>
    <message id="scales.instrument.hint">
        <source>Scales are written for this instrument, in its clef and range. The setting travels with the practice folder.</source>
        <translation>Tonleitern werden für dieses Instrument notiert, in seinem Schlüssel und Umfang. Die Einstellung wandert mit dem Übeordner mit.</translation>
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
        <source>Octave 4 begins at middle C. If you have a high F♯ key, a low A, or notes above the usual range, set what you play.</source>
        <translation>Oktave 4 beginnt beim eingestrichenen C. Wenn du eine Hoch-Fis-Klappe, ein tiefes A oder Töne über dem üblichen Umfang hast, stell ein, was du spielst.</translation>
    </message>
    <message id="scales.instrument.read-only">
        <source>Another window is using this practice folder, so you cannot change this here.</source>
        <translation>Ein anderes Fenster benutzt diesen Übeordner; darum lässt sich das hier nicht ändern.</translation>
    </message>
    <message id="scales.instrument.redraw">
        <source>Shuffle the keys again</source>
        <translation>Tonarten neu mischen</translation>
    </message>
    <message id="scales.instrument.title">
        <source>Your instrument</source>
        <translation>Dein Instrument</translation>
    </message>
    <message id="scales.instrument.to-grid">
        <source>Show grid</source>
        <translation>Raster zeigen</translation>
    </message>
    <message id="scales.key.sounds">
        <source>%1, sounds as %2</source>
        <translation>%1, klingt als %2</translation>
    </message>
    <message id="scales.keys">
        <source>Keys</source>
        <translation>Tonarten</translation>
    </message>
    <message id="scales.keys-hint">
        <source>Keys as written for the %1; the sounding key is below.</source>
        <translation>Tonarten notiert für %1, darunter klingend.</translation>
    </message>
    <message id="scales.kind">
        <source>Kind of scale</source>
        <translation>Art der Tonleiter</translation>
    </message>
    <message id="scales.next.first">
        <source>Next: the first key in the slowest notes.</source>
        <translation>Als Nächstes: die erste Tonart in den langsamsten Noten.</translation>
    </message>
    <message id="scales.next.furthest">
        <source>Next: its best is furthest below the best of its row.</source>
        <translation>Als Nächstes: sein Bestwert liegt am weitesten unter dem Bestwert seiner Zeile.</translation>
    </message>
    <message id="scales.next.never">
        <source>Next: the first cell not played yet; no other has waited a week.</source>
        <translation>Als Nächstes: das erste noch nie gespielte Feld; keines ruht seit einer Woche.</translation>
    </message>
    <message id="scales.next.oldest">
        <source>Next: not played for %1, longer than any other.</source>
        <translation>Als Nächstes: %1 nicht gespielt, länger als alle anderen.</translation>
    </message>
    <message id="scales.no-tonic">
        <source>Your range does not contain this tonic: choose another key, or widen your range.</source>
        <translation>Dein Umfang enthält diesen Grundton nicht: Wähle eine andere Tonart, oder erweitere den Umfang.</translation>
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
        <source>Order of keys</source>
        <translation>Reihenfolge der Tonarten</translation>
    </message>
    <message id="scales.pattern">
        <source>Order of notes</source>
        <translation>Tonfolge</translation>
    </message>
    <message id="scales.range">
        <source>Range</source>
        <translation>Umfang</translation>
    </message>
    <message id="scales.range-of-notes">
        <source>Your range</source>
        <translation>Dein Umfang</translation>
    </message>
    <message id="scales.shown">
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message id="scales.starts-from">
        <source>Start at %1, two notches below your best in %2.</source>
        <translation>Start bei %1, zwei Rasten unter deinem Bestwert in %2.</translation>
    </message>
    <message id="scales.starts-slow">
        <source>Start at %1, slow enough to make no mistakes.</source>
        <translation>Beginne bei %1; da geht nichts schief.</translation>
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
        <source>Runs of each key, in all kinds and subdivisions for this instrument. A week begins on Monday.</source>
        <translation>Durchläufe jeder Tonart, in allen Arten und Unterteilungen für dieses Instrument. Eine Woche beginnt am Montag.</translation>
    </message>
    <message id="scales.weeks.title">
        <source>Keys by week</source>
        <translation>Tonarten nach Wochen</translation>
    </message>
    <message id="scales.write">
        <source>Write as %1</source>
        <translation>Als %1 notieren</translation>
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
        <source>MusicXML (.musicxml, .xml, .mxl), as notation programs export it. Choose the file, type its path, or drop it here.</source>
        <translation>MusicXML (.musicxml, .xml, .mxl), wie Notensatzprogramme es exportieren. Wähle die Datei aus, tippe ihren Pfad ein oder zieh sie hierher.</translation>
    </message>
    <message id="score.no-tempo">
        <source>no tempo mark</source>
        <translation>keine Tempoangabe</translation>
    </message>
    <message id="score.no-title">
        <source>(no title)</source>
        <translation>(ohne Titel)</translation>
    </message>
    <message id="score.notes" numerus="yes">
        <source>%n notes</source>
        <translation>
            <numerusform>%n Note</numerusform>
            <numerusform>%n Noten</numerusform>
        </translation>
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
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message id="score.take">
        <source>Use these bars</source>
        <translation>Diese Takte verwenden</translation>
    </message>
    <message id="score.title">
        <source>A passage from a score</source>
        <translation>Eine Stelle aus einer Partitur</translation>
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
        <source>%1, too many to save</source>
        <translation>%1, zu viele zum Speichern</translation>
    </message>
    <message id="set.about">
        <source>Two to four passages, round and round, while your hands stay on the instrument. Short tones announce each one: one tone for the first, two for the second.</source>
        <translation>Zwei bis vier Stellen reihum, während die Hände am Instrument bleiben. Kurze Töne kündigen jede an: einer die erste, zwei die zweite.</translation>
    </message>
    <message id="set.by-minutes">
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message id="set.by-runs">
        <source>Runs</source>
        <translation>Durchläufe</translation>
    </message>
    <message id="set.few">
        <source>Tick two to four passages, in the order in which you want to play them.</source>
        <translation>Hake zwei bis vier Stellen an, in der Reihenfolge, in der du sie spielen willst.</translation>
    </message>
    <message id="set.full">
        <source>Four at most: untick one first.</source>
        <translation>Höchstens vier: Entferne zuerst ein Häkchen.</translation>
    </message>
    <message id="set.length">
        <source>How long each is played</source>
        <translation>Wie lange jede gespielt wird</translation>
    </message>
    <message id="set.minutes-each" numerus="yes">
        <source>%n minutes each</source>
        <translation>
            <numerusform>je %n Minute</numerusform>
            <numerusform>je %n Minuten</numerusform>
        </translation>
    </message>
    <message id="set.no-run">
        <source>no run finished</source>
        <translation>kein Durchlauf beendet</translation>
    </message>
    <message id="set.picked">
        <source>%1, number %2</source>
        <translation>%1, Nummer %2</translation>
    </message>
    <message id="set.place">
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message id="set.result">
        <source>%1 · tempo now %2</source>
        <translation>%1 · Tempo jetzt %2</translation>
    </message>
    <message id="set.runs-each" numerus="yes">
        <source>%n runs each</source>
        <translation>
            <numerusform>je %n Durchlauf</numerusform>
            <numerusform>je %n Durchläufe</numerusform>
        </translation>
    </message>
    <message id="set.title">
        <source>In turn</source>
        <translation>Im Wechsel</translation>
    </message>
    <message id="set.turn">
        <source>%1 · next: %2</source>
        <translation>%1 · danach: %2</translation>
    </message>
    <message id="set.turn-spoken">
        <source>Now %1: %2</source>
        <translation>Jetzt %1: %2</translation>
    </message>
    <message id="settings.damaged">
        <source>Your settings were damaged and have been reset; the old file was kept. %1</source>
        <translation>Deine Einstellungen waren beschädigt und wurden zurückgesetzt; die alte Datei ist noch da. %1</translation>
    </message>
    <message id="settings.day-opening.as-left">
        <source>Where you left off</source>
        <translation>Wo du aufgehört hast</translation>
    </message>
    <message id="settings.day-opening.below">
        <source>Two rungs below the last full streak</source>
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
        <source>Click a key below to remove it. Tab, Return on a button, the arrow keys in a list and Esc in a form work as in any other program; you cannot change them.</source>
        <translation>Klicke unten auf eine Taste, um sie zu entfernen. Tab, Return auf einer Schaltfläche, die Pfeiltasten in einer Liste und Esc in einem Formular funktionieren wie in jedem anderen Programm; sie lassen sich nicht ändern.</translation>
    </message>
    <message id="settings.language">
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message id="settings.language.hint">
        <source>Text, numbers and dates on the screen. Files are the same in every language.</source>
        <translation>Texte, Zahlen und Daten auf dem Bildschirm. Dateien sind in jeder Sprache gleich.</translation>
    </message>
    <message id="settings.language.system">
        <source>Use system setting</source>
        <translation>Systemeinstellung</translation>
    </message>
    <message id="settings.looks">
        <source>Appearance</source>
        <translation>Erscheinungsbild</translation>
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
        <source>Use system setting</source>
        <translation>Systemeinstellung</translation>
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
        <source>Near the target, a miss drops by one climb; at the target, only the second in a row drops.</source>
        <translation>Nahe am Ziel kostet ein Fehler nur einen Anstieg; im Zieltempo erst der zweite in Folge.</translation>
    </message>
    <message id="sheet.how-to">
        <source>Climb from the bottom. Tick a circle for each clean run. For a miss, mark the box and rub out that rung&apos;s ticks.</source>
        <translation>Steige von unten hinauf. Hake für jeden sauberen Durchlauf einen Kreis ab. Ein Fehler ist ein Strich im Kästchen und löscht die Haken dieser Sprosse.</translation>
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
        <source>For wireless headphones: delay the beat on the screen and the marks by</source>
        <translation>Für Funkkopfhörer: Schlaganzeige und Markierungen verzögern um</translation>
    </message>
    <message id="sound.dropouts">
        <source>The sound has dropped out %1 since you opened Piolo: the computer was too busy. Closing other programs helps.</source>
        <translation>Der Ton hat %1 ausgesetzt, seit du Piolo geöffnet hast: Der Rechner war überlastet. Andere Programme zu schließen hilft.</translation>
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
        <source>Cues</source>
        <translation>Signale</translation>
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
        <source>Notes (hear it first)</source>
        <translation>Noten zum Anhören</translation>
    </message>
    <message id="sound.layer.subdivisions">
        <source>Subdivisions</source>
        <translation>Unterteilungen</translation>
    </message>
    <message id="sound.level.hint">
        <source>Set the volume where you play: start the click, go to your place and hold a long note as loud as usual. You should just hear the click. If you cannot, try a sharper voice before a higher volume. On headphones, start low and stay low.</source>
        <translation>Stell die Lautstärke dort ein, wo du spielst: Starte den Klick, geh an deinen Platz und halte einen Ton so laut wie sonst auch. Den Klick sollst du dabei gerade noch hören. Wenn nicht, nimm erst einen schärferen Klang und dann mehr Lautstärke. Mit Kopfhörern: leise anfangen und leise bleiben.</translation>
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
        <translation>%1, Lautstärke</translation>
    </message>
    <message id="sound.more">
        <source>More: levels of beats, count-in and cues</source>
        <translation>Mehr: Schläge, Einzähler und Signale einzeln</translation>
    </message>
    <message id="sound.output">
        <source>Sound output</source>
        <translation>Tonausgabe</translation>
    </message>
    <message id="sound.output.system">
        <source>System default</source>
        <translation>Systemstandard</translation>
    </message>
    <message id="sound.output.unplugged">
        <source>%1 (not connected)</source>
        <translation>%1 (nicht angeschlossen)</translation>
    </message>
    <message id="sound.title">
        <source>Sound</source>
        <translation>Ton</translation>
    </message>
    <message id="sound.voice">
        <source>Click voice</source>
        <translation>Klang des Klicks</translation>
    </message>
    <message id="sound.volume">
        <source>Volume</source>
        <translation>Lautstärke</translation>
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
    <message id="staff.notes" numerus="yes">
        <source>%n notes</source>
        <translation>
            <numerusform>%n Note</numerusform>
            <numerusform>%n Noten</numerusform>
        </translation>
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
        <translation>im Kontext</translation>
    </message>
    <message id="stage.next">
        <source>Next stage: %1</source>
        <translation>Nächste Etappe: %1</translation>
    </message>
    <message id="stage.run-throughs">
        <source>in run-throughs</source>
        <translation>in Gesamtdurchläufen</translation>
    </message>
    <message id="stage.secure">
        <source>secure at the target</source>
        <translation>im Zieltempo sicher</translation>
    </message>
    <message id="stage.slow">
        <source>slow with the click</source>
        <translation>langsam mit Klick</translation>
    </message>
    <message id="stage.standing.full-streak">
        <source>You had a full streak at the target.</source>
        <translation>Du hattest eine volle Serie im Zieltempo.</translation>
    </message>
    <message id="stage.standing.in-context">
        <source>Clean in a row in context, on one day: %1 of %2.</source>
        <translation>Sauber in Folge im Kontext, an einem Tag: %1 von %2.</translation>
    </message>
    <message id="stage.standing.next-full-streak">
        <source>Next: a full streak at the target.</source>
        <translation>Als Nächstes: eine volle Serie im Zieltempo.</translation>
    </message>
    <message id="stage.standing.run-throughs">
        <source>Run-throughs in a row without a stop here: %1 of %2.</source>
        <translation>Gesamtdurchläufe in Folge ohne Hänger hier: %1 von %2.</translation>
    </message>
    <message id="stage.standing.secure" numerus="yes">
        <source>Secure at the target on %1 of %n days.</source>
        <translation>
            <numerusform>Im Zieltempo sicher an %1 von %n Tag.</numerusform>
            <numerusform>Im Zieltempo sicher an %1 von %n Tagen.</numerusform>
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
    <message id="start.close">
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message id="start.failed">
        <source>Piolo cannot start</source>
        <translation>Piolo kann nicht starten</translation>
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
        <source>Ignore a second contact within</source>
        <translation>Zweiten Kontakt ignorieren innerhalb von</translation>
    </message>
    <message id="switch.held">
        <source>Counts as held after</source>
        <translation>Gilt als gehalten nach</translation>
    </message>
    <message id="switch.hint">
        <source>Most pedals act as a keyboard. Choose what yours sends, and your keys are set to match; MIDI switches stay as they are.</source>
        <translation>Die meisten Pedale verhalten sich wie eine Tastatur. Wähle, was deines sendet, und deine Tasten werden danach eingestellt; MIDI-Schalter bleiben, wie sie sind.</translation>
    </message>
    <message id="switch.millis">
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message id="switch.one-pedal">
        <source>A single pedal can do everything: one press starts or marks a miss, two presses take back the last mark; hold it to stop the click or, while stopped, to open the next passage.</source>
        <translation>Ein Pedal allein kann alles: Ein Druck startet oder markiert einen Fehler, zwei nehmen die letzte Markierung zurück; Halten stoppt den Klick oder öffnet, wenn er ruht, die nächste Stelle.</translation>
    </message>
    <message id="switch.press">
        <source>Press it now (Esc to cancel)</source>
        <translation>Jetzt drücken (Esc bricht ab)</translation>
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
        <source>Counts as two presses within</source>
        <translation>Gilt als zweimal gedrückt innerhalb von</translation>
    </message>
    <message id="switch.use-midi">
        <source>Use one MIDI switch for everything</source>
        <translation>Ein MIDI-Schalter für alles</translation>
    </message>
    <message id="switch.use-pedal">
        <source>Use one pedal for everything</source>
        <translation>Ein Pedal für alles</translation>
    </message>
    <message id="taken-back.clean">
        <source>clean run at %1</source>
        <translation>sauberer Durchlauf bei %1</translation>
    </message>
    <message id="taken-back.doubt" numerus="yes">
        <source>%n runs that were not clean</source>
        <translation>
            <numerusform>%n Durchlauf, der nicht sauber war</numerusform>
            <numerusform>%n Durchläufe, die nicht sauber waren</numerusform>
        </translation>
    </message>
    <message id="taken-back.late">
        <source>miss after the run at %1</source>
        <translation>Fehler nach dem Durchlauf bei %1</translation>
    </message>
    <message id="taken-back.line">
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message id="taken-back.mark">
        <source>changed mark of the run at %1</source>
        <translation>geänderte Markierung des Durchlaufs bei %1</translation>
    </message>
    <message id="taken-back.missed">
        <source>miss at %1</source>
        <translation>Fehler bei %1</translation>
    </message>
    <message id="taken-back.missed-in">
        <source>miss at %1, %2</source>
        <translation>Fehler bei %1, %2</translation>
    </message>
    <message id="taken-back.put-back">
        <source>Put it back</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message id="taken-back.run-through">
        <source>run-through</source>
        <translation>Gesamtdurchlauf</translation>
    </message>
    <message id="taken-back.tempo">
        <source>tempo %1</source>
        <translation>Tempo %1</translation>
    </message>
    <message id="taken-back.void">
        <source>run at %1 that did not count</source>
        <translation>Durchlauf bei %1, der nicht zählte</translation>
    </message>
    <message id="today.unsaved" numerus="yes">
        <source>%n not saved yet</source>
        <translation>
            <numerusform>%n noch nicht gespeichert</numerusform>
            <numerusform>%n noch nicht gespeichert</numerusform>
        </translation>
    </message>
    <message id="welcome.bars">
        <source>Number of bars</source>
        <translation>Anzahl der Takte</translation>
    </message>
    <message id="welcome.drill">
        <source>Start drilling</source>
        <translation>Jetzt üben</translation>
    </message>
    <message id="welcome.first-bar">
        <source>First bar</source>
        <translation>Erster Takt</translation>
    </message>
    <message id="welcome.hint">
        <source>Enter the bars that go wrong, and a start tempo at which nothing does. The rest has sensible defaults; you can change it later.</source>
        <translation>Gib die Takte ein, die schiefgehen, und ein Starttempo, in dem nichts schiefgeht. Der Rest ist sinnvoll voreingestellt; du kannst ihn später ändern.</translation>
    </message>
    <message id="welcome.meter">
        <source>Meter</source>
        <translation>Taktart</translation>
    </message>
    <message id="welcome.name">
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message id="welcome.other-ways">
        <source>Other ways to begin</source>
        <translation>Anders anfangen</translation>
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
        <translation>%1 %</translation>
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
