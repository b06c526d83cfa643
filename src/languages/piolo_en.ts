<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name></name>
    <message id="accents.from-meter">
        <source></source>
        <translation>Follow the meter</translation>
    </message>
    <message id="accents.title">
        <source></source>
        <translation>Accents, beat by beat</translation>
    </message>
    <message id="beat.dotted-half">
        <source></source>
        <translation>dotted half</translation>
    </message>
    <message id="beat.dotted-quarter">
        <source></source>
        <translation>dotted quarter</translation>
    </message>
    <message id="beat.eighth">
        <source></source>
        <translation>eighth</translation>
    </message>
    <message id="beat.half">
        <source></source>
        <translation>half</translation>
    </message>
    <message id="beat.quarter">
        <source></source>
        <translation>quarter</translation>
    </message>
    <message id="beat.tempo">
        <source></source>
        <translatorcomment>a beat unit&apos;s sign = its beats per minute</translatorcomment>
        <translation>%1 = %2</translation>
    </message>
    <message id="breaks.bar">
        <source></source>
        <translation>%1: %2</translation>
    </message>
    <message id="breaks.by-bar">
        <source></source>
        <translation>by bar</translation>
    </message>
    <message id="breaks.by-bar-and-beat">
        <source></source>
        <translation>by bar and beat</translation>
    </message>
    <message id="breaks.by-missed-bar">
        <source></source>
        <translation>by bar, only bars with misses</translation>
    </message>
    <message id="breaks.by-worst-bar" numerus="yes">
        <source></source>
        <translation>
            <numerusform>by bar, the %n worst</numerusform>
            <numerusform>by bar, the %n worst</numerusform>
        </translation>
    </message>
    <message id="breaks.counted">
        <source></source>
        <translation>%1 in %2, %3</translation>
    </message>
    <message id="breaks.counted-elsewhere">
        <source></source>
        <translation>%1; the place of %2 is unknown</translation>
    </message>
    <message id="breaks.drill">
        <source></source>
        <translation>Drill it</translation>
    </message>
    <message id="breaks.empty">
        <source></source>
        <translation>Your misses appear here, by bar and beat.</translation>
    </message>
    <message id="breaks.in-parts">
        <source></source>
        <translation>Split in %1</translation>
    </message>
    <message id="breaks.in-parts.hint">
        <source></source>
        <translation>Makes a passage of each part; a part ends on the beat where the next one begins</translation>
    </message>
    <message id="breaks.last-bar-first">
        <source></source>
        <translation>Last bar first</translation>
    </message>
    <message id="breaks.last-bar-first.hint">
        <source></source>
        <translation>Makes passages of the last bar, the last two bars, and so on</translation>
    </message>
    <message id="breaks.made">
        <source></source>
        <translation>Created “%1”</translation>
    </message>
    <message id="breaks.made-of">
        <source></source>
        <translation>New passage: %1</translation>
    </message>
    <message id="breaks.made-parts">
        <source></source>
        <translation>Created %1, starting with “%2”</translation>
    </message>
    <message id="breaks.misses" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n miss</numerusform>
            <numerusform>%n misses</numerusform>
        </translation>
    </message>
    <message id="breaks.no-miss">
        <source></source>
        <translation>No misses so far.</translation>
    </message>
    <message id="breaks.none-counted">
        <source></source>
        <translation>No run has counted so far.</translation>
    </message>
    <message id="breaks.not-played">
        <source></source>
        <translation>Not played yet.</translation>
    </message>
    <message id="breaks.reason">
        <source></source>
        <translation>Most misses happen there.</translation>
    </message>
    <message id="breaks.reason-run-up">
        <source></source>
        <translation>Most misses happen there; one bar of run-up is included.</translation>
    </message>
    <message id="breaks.title">
        <source></source>
        <translation>Where it breaks</translation>
    </message>
    <message id="breaks.where">
        <source></source>
        <translation>Where “%1” breaks</translation>
    </message>
    <message id="care.authority">
        <source></source>
        <translation>Your teacher, your doctor and the rules where you practise come first.</translation>
    </message>
    <message id="care.gradually">
        <source></source>
        <translation>Increase your minutes gradually: a little more each week, no sudden jumps, and a break well before you need one.</translation>
    </message>
    <message id="care.headphones">
        <source></source>
        <translation>Keep headphones low: your instrument is loud already, and Piolo does not know how loud it is at your ear.</translation>
    </message>
    <message id="care.pain">
        <source></source>
        <translation>If you feel pain, tingling or numbness, stop and see a professional before you play on.</translation>
    </message>
    <message id="care.rest">
        <source></source>
        <translation>Rest your lip and your ears, and also the thumb that carries the instrument.</translation>
    </message>
    <message id="care.title">
        <source></source>
        <translation>Take care of yourself</translation>
    </message>
    <message id="click-form.bars-off">
        <source></source>
        <translation>Bars without</translation>
    </message>
    <message id="click-form.bars-on">
        <source></source>
        <translation>Bars with click</translation>
    </message>
    <message id="click-form.breath-below">
        <source></source>
        <translation>Only below</translation>
    </message>
    <message id="click-form.breath-below.any">
        <source></source>
        <translation>any tempo</translation>
    </message>
    <message id="click-form.breaths">
        <source></source>
        <translation>Wait for breath before</translation>
    </message>
    <message id="click-form.breaths.example">
        <source></source>
        <translation>43, 45:3, 47:1+2</translation>
    </message>
    <message id="click-form.change">
        <source></source>
        <translation>Change where the click sounds</translation>
    </message>
    <message id="click-form.hint">
        <source></source>
        <translation>The bars go on while the click is silent. For a breath, enter a bar or bar:beat, then + and the beats to wait. Another random seed picks other silent bars and beats.</translation>
    </message>
    <message id="click-form.lost-beats">
        <source></source>
        <translation>Silent beats, %</translation>
    </message>
    <message id="click-form.on">
        <source></source>
        <translation>Click on</translation>
    </message>
    <message id="click-form.seed">
        <source></source>
        <translation>Random seed</translation>
    </message>
    <message id="click-form.silent-bars">
        <source></source>
        <translation>Silent bars, %</translation>
    </message>
    <message id="click-form.straight">
        <source></source>
        <translation>straight</translation>
    </message>
    <message id="click-form.swing">
        <source></source>
        <translation>Swing</translation>
    </message>
    <message id="click-form.swung">
        <source></source>
        <translation>Swung notes</translation>
    </message>
    <message id="click.accents-by-hand">
        <source></source>
        <translation>custom accents</translation>
    </message>
    <message id="click.bars-in-turn">
        <source></source>
        <translation>alternating: %1 bars with the click, %2 without</translation>
    </message>
    <message id="click.beats-left-out">
        <source></source>
        <translation>%1 of 100 beats silent</translation>
    </message>
    <message id="click.breath-at-places" numerus="yes">
        <source></source>
        <translation>
            <numerusform>waits for breath at %n place</numerusform>
            <numerusform>waits for breath at %n places</numerusform>
        </translation>
    </message>
    <message id="click.breath-below">
        <source></source>
        <translation>%1 below %2</translation>
    </message>
    <message id="click.down">
        <source></source>
        <translation>Down to %1</translation>
    </message>
    <message id="click.downbeats">
        <source></source>
        <translation>downbeats only</translation>
    </message>
    <message id="click.eighths">
        <source></source>
        <translation>eighths</translation>
    </message>
    <message id="click.every-beat">
        <source></source>
        <translation>every beat</translation>
    </message>
    <message id="click.half-strong">
        <source></source>
        <translation>half strong</translation>
    </message>
    <message id="click.is">
        <source></source>
        <translation>%1 =</translation>
    </message>
    <message id="click.keep">
        <source></source>
        <translation>Make a passage of this</translation>
    </message>
    <message id="click.not-logged">
        <source></source>
        <translation>Nothing here is logged</translation>
    </message>
    <message id="click.now">
        <source></source>
        <translation>Click %1</translation>
    </message>
    <message id="click.off-beats">
        <source></source>
        <translation>off-beats only</translation>
    </message>
    <message id="click.plain">
        <source></source>
        <translation>plain</translation>
    </message>
    <message id="click.silent">
        <source></source>
        <translation>silent</translation>
    </message>
    <message id="click.silent-bars">
        <source></source>
        <translation>%1 of 100 bars silent</translation>
    </message>
    <message id="click.sixteenths">
        <source></source>
        <translation>sixteenths</translation>
    </message>
    <message id="click.strong">
        <source></source>
        <translation>strong</translation>
    </message>
    <message id="click.swing">
        <source></source>
        <translation>swing %1 in %2</translation>
    </message>
    <message id="click.tap">
        <source></source>
        <translation>Tap</translation>
    </message>
    <message id="click.tempo">
        <source></source>
        <translation>Tempo, in beats per minute</translation>
    </message>
    <message id="click.title">
        <source></source>
        <translation>Just a click</translation>
    </message>
    <message id="click.two-and-four">
        <source></source>
        <translation>2 and 4 only</translation>
    </message>
    <message id="click.up">
        <source></source>
        <translation>Up to %1</translation>
    </message>
    <message id="click.without-bars">
        <source></source>
        <translation>without bars</translation>
    </message>
    <message id="closing.cancel">
        <source></source>
        <translation>Cancel</translation>
    </message>
    <message id="closing.confirm">
        <source></source>
        <translation>Close</translation>
    </message>
    <message id="closing.title">
        <source></source>
        <translation>Not everything is saved yet</translation>
    </message>
    <message id="closing.unsaved" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n mark is not in the practice folder yet. If you close the window now, it is kept on this machine and saved at the next start.</numerusform>
            <numerusform>%n marks are not in the practice folder yet. If you close the window now, they are kept on this machine and saved at the next start.</numerusform>
        </translation>
    </message>
    <message id="curve.all">
        <source></source>
        <translation>All</translation>
    </message>
    <message id="curve.along">
        <source></source>
        <translation>Axis</translation>
    </message>
    <message id="curve.by-day">
        <source></source>
        <translation>Tempo by day</translation>
    </message>
    <message id="curve.by-run">
        <source></source>
        <translation>Tempo by run</translation>
    </message>
    <message id="curve.closer">
        <source></source>
        <translation>Zoom in</translation>
    </message>
    <message id="curve.days">
        <source></source>
        <translation>days</translation>
    </message>
    <message id="curve.due">
        <source></source>
        <translation>due</translation>
    </message>
    <message id="curve.empty">
        <source></source>
        <translation>The curve starts with your first run.</translation>
    </message>
    <message id="curve.farther">
        <source></source>
        <translation>Zoom out</translation>
    </message>
    <message id="curve.file">
        <source></source>
        <translation>File name (.svg, .png, .pdf or .csv)</translation>
    </message>
    <message id="curve.leave">
        <source></source>
        <translation>Cancel</translation>
    </message>
    <message id="curve.none">
        <source></source>
        <translation>No curve yet</translation>
    </message>
    <message id="curve.point.clean">
        <source></source>
        <translation>clean</translation>
    </message>
    <message id="curve.point.clean-try">
        <source></source>
        <translation>a clean try at the target</translation>
    </message>
    <message id="curve.point.day">
        <source></source>
        <translation>%1: %2, at %3, %4</translation>
    </message>
    <message id="curve.point.heard">
        <source></source>
        <translation>%1 at %2 of %3</translation>
    </message>
    <message id="curve.point.missed">
        <source></source>
        <translation>missed</translation>
    </message>
    <message id="curve.point.missed-try">
        <source></source>
        <translation>a missed try at the target</translation>
    </message>
    <message id="curve.point.of-clean">
        <source></source>
        <translation>%1 of %2 clean</translation>
    </message>
    <message id="curve.point.run">
        <source></source>
        <translation>%1: run %2, %3, at %4, %5</translation>
    </message>
    <message id="curve.point.secure">
        <source></source>
        <translation>secure</translation>
    </message>
    <message id="curve.runs">
        <source></source>
        <translation>runs</translation>
    </message>
    <message id="curve.save">
        <source></source>
        <translation>Save…</translation>
    </message>
    <message id="curve.save-file">
        <source></source>
        <translation>Save</translation>
    </message>
    <message id="curve.saved">
        <source></source>
        <translation>saved as %1</translation>
    </message>
    <message id="curve.spoken">
        <source></source>
        <translation>Tempo curves: %1</translation>
    </message>
    <message id="curve.spoken.keys">
        <source></source>
        <translation>Plus and Minus zoom. Left and Right scroll; with Shift they go from run to run. Up and Down change the passage.</translation>
    </message>
    <message id="curve.target">
        <source></source>
        <translation>target</translation>
    </message>
    <message id="curve.tempo">
        <source></source>
        <translation>Tempo</translation>
    </message>
    <message id="difference.accents">
        <source></source>
        <translation>accents</translation>
    </message>
    <message id="difference.articulation">
        <source></source>
        <translation>articulation</translation>
    </message>
    <message id="difference.bars">
        <source></source>
        <translation>bars</translation>
    </message>
    <message id="difference.bars-off">
        <source></source>
        <translation>bars without the click</translation>
    </message>
    <message id="difference.bars-on">
        <source></source>
        <translation>bars with the click</translation>
    </message>
    <message id="difference.beat">
        <source></source>
        <translation>beat</translation>
    </message>
    <message id="difference.beats-left-out">
        <source></source>
        <translation>silent beats per hundred</translation>
    </message>
    <message id="difference.breath">
        <source></source>
        <translation>beats of breath</translation>
    </message>
    <message id="difference.breath-below">
        <source></source>
        <translation>waits below</translation>
    </message>
    <message id="difference.breaths">
        <source></source>
        <translation>waits for breath</translation>
    </message>
    <message id="difference.change">
        <source></source>
        <translation>%1: %2 → %3</translation>
    </message>
    <message id="difference.clean-runs">
        <source></source>
        <translation>clean runs</translation>
    </message>
    <message id="difference.click-on">
        <source></source>
        <translation>click on</translation>
    </message>
    <message id="difference.climb">
        <source></source>
        <translation>climb</translation>
    </message>
    <message id="difference.composer">
        <source></source>
        <translation>composer</translation>
    </message>
    <message id="difference.count-in">
        <source></source>
        <translation>count-in bars</translation>
    </message>
    <message id="difference.differs">
        <source></source>
        <translation>different</translation>
    </message>
    <message id="difference.drop">
        <source></source>
        <translation>drop</translation>
    </message>
    <message id="difference.due">
        <source></source>
        <translation>due date</translation>
    </message>
    <message id="difference.fingering">
        <source></source>
        <translation>fingering</translation>
    </message>
    <message id="difference.first-bar">
        <source></source>
        <translation>first bar</translation>
    </message>
    <message id="difference.floor">
        <source></source>
        <translation>floor</translation>
    </message>
    <message id="difference.gentle">
        <source></source>
        <translation>gentle near the target</translation>
    </message>
    <message id="difference.group">
        <source></source>
        <translation>notes per group</translation>
    </message>
    <message id="difference.groups">
        <source></source>
        <translation>groups</translation>
    </message>
    <message id="difference.instrument">
        <source></source>
        <translation>instrument</translation>
    </message>
    <message id="difference.key">
        <source></source>
        <translation>key</translation>
    </message>
    <message id="difference.landing">
        <source></source>
        <translation>landing note</translation>
    </message>
    <message id="difference.meter">
        <source></source>
        <translation>meter</translation>
    </message>
    <message id="difference.name">
        <source></source>
        <translation>name</translation>
    </message>
    <message id="difference.new">
        <source></source>
        <translation>new</translation>
    </message>
    <message id="difference.none">
        <source></source>
        <translation>none</translation>
    </message>
    <message id="difference.notation">
        <source></source>
        <translation>printed notes</translation>
    </message>
    <message id="difference.notes">
        <source></source>
        <translation>notes</translation>
    </message>
    <message id="difference.notes-per-beat">
        <source></source>
        <translation>notes per beat</translation>
    </message>
    <message id="difference.origin">
        <source></source>
        <translation>made from passage</translation>
    </message>
    <message id="difference.pattern">
        <source></source>
        <translation>order of notes</translation>
    </message>
    <message id="difference.pick-up">
        <source></source>
        <translation>pick-up</translation>
    </message>
    <message id="difference.piece">
        <source></source>
        <translation>piece</translation>
    </message>
    <message id="difference.range">
        <source></source>
        <translation>range</translation>
    </message>
    <message id="difference.removed">
        <source></source>
        <translation>removed here</translation>
    </message>
    <message id="difference.rhythm">
        <source></source>
        <translation>rhythm</translation>
    </message>
    <message id="difference.same">
        <source></source>
        <translation>the same</translation>
    </message>
    <message id="difference.scale">
        <source></source>
        <translation>scale</translation>
    </message>
    <message id="difference.scale-kind">
        <source></source>
        <translation>kind of scale</translation>
    </message>
    <message id="difference.seed">
        <source></source>
        <translation>random seed</translation>
    </message>
    <message id="difference.silent-bars">
        <source></source>
        <translation>silent bars per hundred</translation>
    </message>
    <message id="difference.start">
        <source></source>
        <translation>start</translation>
    </message>
    <message id="difference.step">
        <source></source>
        <translation>steps in</translation>
    </message>
    <message id="difference.subdivision">
        <source></source>
        <translation>pulses per beat</translation>
    </message>
    <message id="difference.swing">
        <source></source>
        <translation>swing</translation>
    </message>
    <message id="difference.swung">
        <source></source>
        <translation>swung notes</translation>
    </message>
    <message id="difference.target">
        <source></source>
        <translation>target</translation>
    </message>
    <message id="difference.tempo">
        <source></source>
        <translation>tempo</translation>
    </message>
    <message id="difference.transposition">
        <source></source>
        <translation>transposition in semitones</translation>
    </message>
    <message id="drill.articulation">
        <source></source>
        <translation>Articulation</translation>
    </message>
    <message id="drill.aside.note">
        <source></source>
        <translation>aside: changes nothing</translation>
    </message>
    <message id="drill.beat.bar">
        <source></source>
        <translation>bar %1</translation>
    </message>
    <message id="drill.beat.breathe">
        <source></source>
        <translation>breathe</translation>
    </message>
    <message id="drill.beat.count-in">
        <source></source>
        <translation>count-in</translation>
    </message>
    <message id="drill.beat.counted">
        <source></source>
        <translation>%1 · %2</translation>
    </message>
    <message id="drill.beat.of">
        <source></source>
        <translation>%1 of %2</translation>
    </message>
    <message id="drill.beat.pick-up">
        <source></source>
        <translation>pick-up</translation>
    </message>
    <message id="drill.best">
        <source></source>
        <translation>Best: %1</translation>
    </message>
    <message id="drill.best.item">
        <source></source>
        <translatorcomment>articulation, tempo</translatorcomment>
        <translation>%1 %2</translation>
    </message>
    <message id="drill.by-hand">
        <source></source>
        <translation>set by hand, from the next run</translation>
    </message>
    <message id="drill.choose-passage">
        <source></source>
        <translation>Choose a passage first.</translation>
    </message>
    <message id="drill.count-in">
        <source></source>
        <translation>%1-bar count-in</translation>
    </message>
    <message id="drill.curve.spoken">
        <source></source>
        <translation>Tempo curve for the last 14 days, target %1</translation>
    </message>
    <message id="drill.edit">
        <source></source>
        <translation>Edit passage</translation>
    </message>
    <message id="drill.faster">
        <source></source>
        <translation>Faster</translation>
    </message>
    <message id="drill.felt-as">
        <source></source>
        <translation>felt as %1</translation>
    </message>
    <message id="drill.felt-beat">
        <source></source>
        <translation>Felt beat</translation>
    </message>
    <message id="drill.find-tempo">
        <source></source>
        <translation>Find your tempo, from %1 down</translation>
    </message>
    <message id="drill.finding">
        <source></source>
        <translation>Finding your tempo, from %1 down.</translation>
    </message>
    <message id="drill.found">
        <source></source>
        <translation>Found today: %1, from %2 down.</translation>
    </message>
    <message id="drill.half-tempo">
        <source></source>
        <translation>At half tempo, %1</translation>
    </message>
    <message id="drill.hear">
        <source></source>
        <translation>Hear it first</translation>
    </message>
    <message id="drill.hear-with-click">
        <source></source>
        <translation>with the click</translation>
    </message>
    <message id="drill.hear-with-click.hint">
        <source></source>
        <translation>Hear it with the click</translation>
    </message>
    <message id="drill.how-to-play">
        <source></source>
        <translation>How to play it</translation>
    </message>
    <message id="drill.in-context">
        <source></source>
        <translation>In context</translation>
    </message>
    <message id="drill.in-context.note">
        <source></source>
        <translation>in context: changes nothing</translation>
    </message>
    <message id="drill.new-day">
        <source></source>
        <translation>a new day: you left off at %1</translation>
    </message>
    <message id="drill.next">
        <source></source>
        <translation>Next passage</translation>
    </message>
    <message id="drill.next-scale">
        <source></source>
        <translation>Next scale</translation>
    </message>
    <message id="drill.no-count-in">
        <source></source>
        <translation>no count-in</translation>
    </message>
    <message id="drill.one-bar-count-in">
        <source></source>
        <translation>one-bar count-in</translation>
    </message>
    <message id="drill.only-heard">
        <source></source>
        <translation>%1 · just listening: nothing counts</translation>
    </message>
    <message id="drill.play-now">
        <source></source>
        <translation>Play it another way</translation>
    </message>
    <message id="drill.rhythm">
        <source></source>
        <translation>Rhythm</translation>
    </message>
    <message id="drill.sitting" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n run: %1</numerusform>
            <numerusform>%n runs: %1</numerusform>
        </translation>
    </message>
    <message id="drill.sitting.to-log">
        <source></source>
        <translation>%1; opens the log</translation>
    </message>
    <message id="drill.sitting.where">
        <source></source>
        <translation>%1 in %2</translation>
    </message>
    <message id="drill.slower">
        <source></source>
        <translation>Slower</translation>
    </message>
    <message id="drill.start">
        <source></source>
        <translation>Start</translation>
    </message>
    <message id="drill.stop-listening">
        <source></source>
        <translation>Stop listening</translation>
    </message>
    <message id="drill.streak.spoken">
        <source></source>
        <translatorcomment>clean runs in a row so far, needed</translatorcomment>
        <translation>%1 of %2</translation>
    </message>
    <message id="drill.summary">
        <source></source>
        <translatorcomment>meter · bars · count-in · rule</translatorcomment>
        <translation>%1 · %2 · %3 · %4</translation>
    </message>
    <message id="drill.take-back">
        <source></source>
        <translation>Take back</translation>
    </message>
    <message id="drill.target">
        <source></source>
        <translatorcomment>further up</translatorcomment>
        <translation>target %1 ↑</translation>
    </message>
    <message id="drill.to-passages">
        <source></source>
        <translation>Go to passages</translation>
    </message>
    <message id="drill.try">
        <source></source>
        <translation>Try once at %1</translation>
    </message>
    <message id="drill.try.note">
        <source></source>
        <translation>a try: changes nothing</translation>
    </message>
    <message id="drill.verdict.clean">
        <source></source>
        <translation>Clean</translation>
    </message>
    <message id="drill.verdict.clean-up">
        <source></source>
        <translation>Clean: up to %1</translation>
    </message>
    <message id="drill.verdict.found">
        <source></source>
        <translation>Found: %1</translation>
    </message>
    <message id="drill.verdict.missed">
        <source></source>
        <translation>Missed</translation>
    </message>
    <message id="drill.verdict.nothing">
        <source></source>
        <translation>Nothing to take back</translation>
    </message>
    <message id="drill.verdict.put-back">
        <source></source>
        <translation>Put back</translation>
    </message>
    <message id="drill.verdict.secure">
        <source></source>
        <translation>Secure at %1</translation>
    </message>
    <message id="drill.verdict.taken-back">
        <source></source>
        <translation>Taken back</translation>
    </message>
    <message id="drill.way-back">
        <source></source>
        <translation>Back to %1</translation>
    </message>
    <message id="drill.without-click">
        <source></source>
        <translation>Without the click</translation>
    </message>
    <message id="drill.without-click.note">
        <source></source>
        <translation>without the click: changes nothing</translation>
    </message>
    <message id="files.changes">
        <source></source>
        <translation>What this file would change</translation>
    </message>
    <message id="files.choose">
        <source></source>
        <translation>Choose…</translation>
    </message>
    <message id="files.edited-here">
        <source></source>
        <translation>▲ edited here since import</translation>
    </message>
    <message id="files.empty">
        <source></source>
        <translation>This file contains no passages.</translation>
    </message>
    <message id="files.export">
        <source></source>
        <translation>Export</translation>
    </message>
    <message id="files.export.file">
        <source></source>
        <translation>File name (.piolo.json)</translation>
    </message>
    <message id="files.export.hint">
        <source></source>
        <translation>Passages and their pieces for another player, without anything you played.</translation>
    </message>
    <message id="files.export.tick">
        <source></source>
        <translation>Tick the passages to export.</translation>
    </message>
    <message id="files.export.write">
        <source></source>
        <translation>Export file</translation>
    </message>
    <message id="files.figures">
        <source></source>
        <translation>%1 new, %2 the same, %3 different or removed here</translation>
    </message>
    <message id="files.import">
        <source></source>
        <translation>Import</translation>
    </message>
    <message id="files.kind.all">
        <source></source>
        <translation>All files</translation>
    </message>
    <message id="files.kind.curves">
        <source></source>
        <translation>Tempo curves</translation>
    </message>
    <message id="files.kind.passages">
        <source></source>
        <translation>Passages</translation>
    </message>
    <message id="files.kind.picture">
        <source></source>
        <translation>Pictures and PDFs</translation>
    </message>
    <message id="files.kind.score">
        <source></source>
        <translation>MusicXML</translation>
    </message>
    <message id="files.kind.sheet">
        <source></source>
        <translation>Sheet</translation>
    </message>
    <message id="files.not-yet">
        <source></source>
        <translation>Nothing is imported until you have seen what would change.</translation>
    </message>
    <message id="files.open">
        <source></source>
        <translation>Open</translation>
    </message>
    <message id="files.open.file">
        <source></source>
        <translation>File (.piolo.json), or drop it here</translation>
    </message>
    <message id="files.passage">
        <source></source>
        <translation>%1: “%2”</translation>
    </message>
    <message id="files.piece">
        <source></source>
        <translation>%1: the piece “%2”</translation>
    </message>
    <message id="files.reading">
        <source></source>
        <translation>Reading…</translation>
    </message>
    <message id="files.replaces">
        <source></source>
        <translation>There is a file of that name. “%1” replaces it.</translation>
    </message>
    <message id="files.save">
        <source></source>
        <translation>Save</translation>
    </message>
    <message id="files.take">
        <source></source>
        <translation>Import</translation>
    </message>
    <message id="files.taken">
        <source></source>
        <translation>%1 added, %2 replaced from the file, %3 left unchanged.</translation>
    </message>
    <message id="files.tick-all">
        <source></source>
        <translation>Tick all that differ</translation>
    </message>
    <message id="files.tick-none">
        <source></source>
        <translation>Untick all</translation>
    </message>
    <message id="files.tick.hint">
        <source></source>
        <translation>Ticked items are replaced from the file; the others stay as they are. New items are added.</translation>
    </message>
    <message id="files.title">
        <source></source>
        <translation>Passage files</translation>
    </message>
    <message id="files.unchanged">
        <source></source>
        <translation>You already have everything in this file: nothing would change.</translation>
    </message>
    <message id="files.what-to-do">
        <source></source>
        <translation>What to do</translation>
    </message>
    <message id="form.about-climb">
        <source></source>
        <translation>at %1, about %2 to the next climb if nine in ten are clean</translation>
    </message>
    <message id="form.about-secure">
        <source></source>
        <translation>at the target, about %1 to a full streak if nine in ten are clean</translation>
    </message>
    <message id="form.accent">
        <source></source>
        <translation>Beat %1: %2</translation>
    </message>
    <message id="form.articulation">
        <source></source>
        <translation>Articulation</translation>
    </message>
    <message id="form.bars">
        <source></source>
        <translation>Bars</translation>
    </message>
    <message id="form.bars.open">
        <source></source>
        <translation>open</translation>
    </message>
    <message id="form.beat">
        <source></source>
        <translation>Beat</translation>
    </message>
    <message id="form.bpm">
        <source></source>
        <translation>BPM</translation>
    </message>
    <message id="form.breath">
        <source></source>
        <translation>Breath (beats)</translation>
    </message>
    <message id="form.clean-runs">
        <source></source>
        <translation>Clean in a row</translation>
    </message>
    <message id="form.click">
        <source></source>
        <translation>Click: %1</translation>
    </message>
    <message id="form.click.every-beat">
        <source></source>
        <translation>Click: every beat, following the meter</translation>
    </message>
    <message id="form.climb">
        <source></source>
        <translation>then climb</translation>
    </message>
    <message id="form.count-in">
        <source></source>
        <translation>Count-in (bars)</translation>
    </message>
    <message id="form.discard">
        <source></source>
        <translation>Discard changes</translation>
    </message>
    <message id="form.drill">
        <source></source>
        <translation>Drill it</translation>
    </message>
    <message id="form.drop">
        <source></source>
        <translation>A miss drops</translation>
    </message>
    <message id="form.edit-piece">
        <source></source>
        <translation>Edit the piece: name, instrument, due date</translation>
    </message>
    <message id="form.fault.above-start">
        <source></source>
        <translation>no higher than the start, %1</translation>
    </message>
    <message id="form.fault.beat">
        <source></source>
        <translation>this beat does not fill a bar in this meter</translation>
    </message>
    <message id="form.fault.below-start">
        <source></source>
        <translation>no lower than the start, %1</translation>
    </message>
    <message id="form.fault.breaths">
        <source></source>
        <translation>places in order, such as 43, 45:3 or 47:1+2; at most %1</translation>
    </message>
    <message id="form.fault.groups">
        <source></source>
        <translation>groups that fill the bar and begin on beats, such as 2+2+3</translation>
    </message>
    <message id="form.fault.letters">
        <source></source>
        <translation>at most %1 characters</translation>
    </message>
    <message id="form.fault.meter">
        <source></source>
        <translation>a meter such as 4/4, 6/8 or 7/8</translation>
    </message>
    <message id="form.fault.pick-up">
        <source></source>
        <translation>a length such as 1/8 or 1/4, or leave it empty</translation>
    </message>
    <message id="form.fault.pick-up-too-long">
        <source></source>
        <translation>a pick-up must be shorter than a bar</translation>
    </message>
    <message id="form.fault.swing">
        <source></source>
        <translation>a ratio from 1:1 to 3:1, such as 2:1 or 3:2</translation>
    </message>
    <message id="form.fault.tempo">
        <source></source>
        <translation>a tempo from 10 to 400, such as 84 or 72.5</translation>
    </message>
    <message id="form.fault.too-long">
        <source></source>
        <translation>too long to save</translation>
    </message>
    <message id="form.fault.whole">
        <source></source>
        <translation>a whole number from %1 to %2</translation>
    </message>
    <message id="form.fingering">
        <source></source>
        <translation>Fingering</translation>
    </message>
    <message id="form.fingering.example">
        <source></source>
        <translation>side key for the B flat, left hand first</translation>
    </message>
    <message id="form.first-bar">
        <source></source>
        <translation>First bar</translation>
    </message>
    <message id="form.floor">
        <source></source>
        <translation>Never below</translation>
    </message>
    <message id="form.gentle">
        <source></source>
        <translation>Gentle near the target: there, a miss drops by one climb; at the target, only the second miss in a row drops</translation>
    </message>
    <message id="form.group">
        <source></source>
        <translation>Notes per group</translation>
    </message>
    <message id="form.groups">
        <source></source>
        <translation>Groups</translation>
    </message>
    <message id="form.groups.none">
        <source></source>
        <translation>none</translation>
    </message>
    <message id="form.landing">
        <source></source>
        <translation>Landing note</translation>
    </message>
    <message id="form.made-of">
        <source></source>
        <translation>Made from “%1”.</translation>
    </message>
    <message id="form.made-of-another">
        <source></source>
        <translation>Made from another passage.</translation>
    </message>
    <message id="form.meter">
        <source></source>
        <translation>Meter</translation>
    </message>
    <message id="form.name">
        <source></source>
        <translation>Name</translation>
    </message>
    <message id="form.new">
        <source></source>
        <translation>New passage</translation>
    </message>
    <message id="form.new-piece">
        <source></source>
        <translation>New piece…</translation>
    </message>
    <message id="form.none">
        <source></source>
        <translation>none</translation>
    </message>
    <message id="form.notches">
        <source></source>
        <translation>notches</translation>
    </message>
    <message id="form.on-its-own">
        <source></source>
        <translation>No piece</translation>
    </message>
    <message id="form.open-ended">
        <source></source>
        <translation>Open-ended: I end each run</translation>
    </message>
    <message id="form.pick-up">
        <source></source>
        <translation>Pick-up</translation>
    </message>
    <message id="form.piece">
        <source></source>
        <translation>Piece</translation>
    </message>
    <message id="form.play-through">
        <source></source>
        <translation>Play the piece through</translation>
    </message>
    <message id="form.remove">
        <source></source>
        <translation>Remove</translation>
    </message>
    <message id="form.rhythm">
        <source></source>
        <translation>Rhythm</translation>
    </message>
    <message id="form.rule.take">
        <source></source>
        <translation>Use %1 in a row</translation>
    </message>
    <message id="form.run">
        <source></source>
        <translation>%1 per run · %2 · %3 to a full streak at the target with no misses.</translation>
    </message>
    <message id="form.run-long">
        <source></source>
        <translation>A run of %1 is long: shorter parts come clean sooner.</translation>
    </message>
    <message id="form.run-long-streak">
        <source></source>
        <translation>A run of %1 is long for %2 in a row: %3 are enough.</translation>
    </message>
    <message id="form.run-open">
        <source></source>
        <translation>You end each run yourself · %1.</translation>
    </message>
    <message id="form.save">
        <source></source>
        <translation>Save</translation>
    </message>
    <message id="form.save-and-drill">
        <source></source>
        <translation>Save and drill</translation>
    </message>
    <message id="form.saved">
        <source></source>
        <translation>✓ saved as %1</translation>
    </message>
    <message id="form.settles">
        <source></source>
        <translation>The tempo settles where about %1 of runs are clean.</translation>
    </message>
    <message id="form.start">
        <source></source>
        <translation>Start at</translation>
    </message>
    <message id="form.step">
        <source></source>
        <translation>Steps in</translation>
    </message>
    <message id="form.subdivision">
        <source></source>
        <translation>Subdivision</translation>
    </message>
    <message id="form.target">
        <source></source>
        <translation>Target</translation>
    </message>
    <message id="form.unsaved">
        <source></source>
        <translation>not saved yet</translation>
    </message>
    <message id="help.back">
        <source></source>
        <translation>Back</translation>
    </message>
    <message id="help.care.title">
        <source></source>
        <translation>Take care of yourself</translation>
    </message>
    <message id="help.care.why.breaks">
        <source></source>
        <translation>An information sheet for students by two professional bodies (NASM and PAMA) advises breaks, a warm-up, a daily limit and no sudden increase.</translation>
    </message>
    <message id="help.care.why.complaints">
        <source></source>
        <translation>Of 442 music students with no complaint from playing, about half had one within a year; fatigue and a change in how active they were raised the risk (Cruder and others 2023).</translation>
    </message>
    <message id="help.care.why.loudness">
        <source></source>
        <translation>Of 40 students, about half would have exceeded the daily limit for sound exposure from their own practice alone (Phillips and Mace 2008).</translation>
    </message>
    <message id="help.chapters">
        <source></source>
        <translation>Chapters</translation>
    </message>
    <message id="help.click.key.faster">
        <source></source>
        <translation>one beat per minute faster</translation>
    </message>
    <message id="help.click.key.open">
        <source></source>
        <translation>open this from the passages and the drill</translation>
    </message>
    <message id="help.click.key.slower">
        <source></source>
        <translation>one beat per minute slower</translation>
    </message>
    <message id="help.click.key.start">
        <source></source>
        <translation>start and stop</translation>
    </message>
    <message id="help.click.key.tap">
        <source></source>
        <translation>tap the beat; the second tap is a tempo</translation>
    </message>
    <message id="help.click.title">
        <source></source>
        <translation>Just a click</translation>
    </message>
    <message id="help.click.what.free">
        <source></source>
        <translation>A click without a passage. Type the tempo, tap it or step to it, and choose the meter and the subdivision. All of this can change while it sounds: tempo and subdivision follow at the next beat, the meter at the next bar.</translation>
    </message>
    <message id="help.click.what.goes-on">
        <source></source>
        <translation>It goes on while you look at other screens, until you stop it or start to play something. Nothing is logged. “Make a passage of this” opens the form of a new passage with its tempo, meter and subdivision.</translation>
    </message>
    <message id="help.click.why.taps">
        <source></source>
        <translation>The tempo is read from your last nine taps, and one tap at the wrong moment hardly moves it. A pause of more than two seconds begins again. In the drill, press the large tempo to type or tap one. With a single pedal, a press starts the click, each further press is a tap, and holding the pedal stops it.</translation>
    </message>
    <message id="help.drill.key.clean">
        <source></source>
        <translation>mark an open-ended run clean and end it</translation>
    </message>
    <message id="help.drill.key.hear">
        <source></source>
        <translation>hear the passage first, if its bars came from a score</translation>
    </message>
    <message id="help.drill.key.miss">
        <source></source>
        <translation>start; while the click runs, mark a miss</translation>
    </message>
    <message id="help.drill.key.next">
        <source></source>
        <translation>open the next passage, while stopped</translation>
    </message>
    <message id="help.drill.key.pedal">
        <source></source>
        <translation>everything: one press starts or marks a miss, two presses take back the last mark; hold it to stop the click or, while stopped, to open the next passage</translation>
    </message>
    <message id="help.drill.key.stop">
        <source></source>
        <translation>stop</translation>
    </message>
    <message id="help.drill.key.take-back">
        <source></source>
        <translation>take back the last mark; after a stop, it can be put back</translation>
    </message>
    <message id="help.drill.key.tempo">
        <source></source>
        <translation>change the tempo, while stopped</translation>
    </message>
    <message id="help.drill.key.try">
        <source></source>
        <translation>try once at the target</translation>
    </message>
    <message id="help.drill.key.up-down">
        <source></source>
        <translatorcomment>keys for up; keys for down</translatorcomment>
        <translation>%1; %2</translation>
    </message>
    <message id="help.drill.title">
        <source></source>
        <translation>Drill</translation>
    </message>
    <message id="help.drill.what.cycle">
        <source></source>
        <translation>Count-in, run, breath, and again. A run that reaches its last bar without a miss is clean; you need not mark it. A miss drops the tempo, but never below the floor. As many clean runs in a row as the rule asks for are a full streak: it climbs one rung, but never past the target. After a miss or a climb, you count from nothing again.</translation>
    </message>
    <message id="help.drill.what.late">
        <source></source>
        <translation>Pressed late? If you press in the breath after a clean run, that run still becomes a miss.</translation>
    </message>
    <message id="help.drill.what.secure">
        <source></source>
        <translation>A full streak at the target counts as secure. A passage that was secure on three different days is fully secure. A new day starts two rungs below your last full streak. You can change both in the settings.</translation>
    </message>
    <message id="help.drill.what.ways">
        <source></source>
        <translation>Felt beat: quarter = 60 and eighth = 120 are the same speed; if you choose another beat, all tempi are converted and your clean runs in a row stay. Find your tempo: name one you think you can play, and each miss lowers it until a full streak has found yours. A try, and runs without the click, in context or at half tempo, change nothing. Each articulation has its own best.</translation>
    </message>
    <message id="help.drill.why.climbing">
        <source></source>
        <translation>Climbing step by step is customary, but has not been shown to beat other orders of tempi: among sixty school wind players, a steady climb, full tempo and both in turn made no significant difference (Henley 2001). The rule keeps the number of misses low and the record honest.</translation>
    </message>
    <message id="help.drill.why.full-streak">
        <source></source>
        <translation>A full streak is not proof: five clean runs out of five only show, at 95% confidence, that more than 54 of 100 runs are clean.</translation>
    </message>
    <message id="help.drill.why.going-on">
        <source></source>
        <translation>Going on after the first success helps you keep what you learned, to a moderate degree and in many kinds of tasks (Driskell, Willis and Copper 1992); how much it helps in music is not known.</translation>
    </message>
    <message id="help.drill.why.staircase">
        <source></source>
        <translation>Drop and climb form a staircase like those used in hearing tests. It settles where a certain share of runs is clean, and the size of drop and climb decides that share: with five in a row, drop 4 and climb 2, about 92 of 100 (Levitt 1971, Kaernbach 1991, García-Pérez 1998). The formula assumes a player who neither tires nor learns.</translation>
    </message>
    <message id="help.drill.why.tempo-heard">
        <source></source>
        <translation>A change of tempo of less than about three per cent is hard to hear (Drake and Botte 1993). That is why short cues announce a climb and a drop.</translation>
    </message>
    <message id="help.esc">
        <source></source>
        <translation>Esc</translation>
    </message>
    <message id="help.files.title">
        <source></source>
        <translation>Passage files</translation>
    </message>
    <message id="help.files.what.carry">
        <source></source>
        <translation>A passage file carries passages from a teacher to a student. It holds passages and their pieces, but nothing of what was played. Before you import anything, you see what would change.</translation>
    </message>
    <message id="help.files.what.edited">
        <source></source>
        <translation>Anything you have edited since you imported it is marked, so that a new version from your teacher does not replace your own work unnoticed. Importing the same file twice changes nothing.</translation>
    </message>
    <message id="help.keys.line">
        <source></source>
        <translatorcomment>keys: what they do</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message id="help.keys.title">
        <source></source>
        <translation>Keys</translation>
    </message>
    <message id="help.log.key.along">
        <source></source>
        <translation>on the curve: scroll; with Shift, from run to run</translation>
    </message>
    <message id="help.log.key.along.keys">
        <source></source>
        <translation>Left, Right</translation>
    </message>
    <message id="help.log.key.breaks">
        <source></source>
        <translation>make a passage of the bars that break</translation>
    </message>
    <message id="help.log.key.day">
        <source></source>
        <translation>in the minutes: the figures of a day</translation>
    </message>
    <message id="help.log.key.days">
        <source></source>
        <translation>move through the days</translation>
    </message>
    <message id="help.log.key.days.keys">
        <source></source>
        <translation>PgUp, PgDown, Home, End</translation>
    </message>
    <message id="help.log.key.line">
        <source></source>
        <translation>on the curve: the next passage; in the list: the next line</translation>
    </message>
    <message id="help.log.key.line.keys">
        <source></source>
        <translation>Up, Down</translation>
    </message>
    <message id="help.log.key.zoom">
        <source></source>
        <translation>on the curve: zoom in, zoom out, show all</translation>
    </message>
    <message id="help.log.key.zoom.keys">
        <source></source>
        <translation>Plus, Minus, 0</translation>
    </message>
    <message id="help.log.title">
        <source></source>
        <translation>Practice log</translation>
    </message>
    <message id="help.log.what.curve">
        <source></source>
        <translation>The curve shows your tempo by day or by run. “Where it breaks” shows the misses of a passage by bar and beat. It can make a smaller passage of the worst bars, with one bar of run-up.</translation>
    </message>
    <message id="help.log.what.everything">
        <source></source>
        <translation>Everything that happened, day by day: each run with its tempo, its mark and the place of a miss; tempi you set by hand; run-throughs; your notes. Open a line to change a mark, write a note or take a run back. What you took back can be put back.</translation>
    </message>
    <message id="help.log.what.folder">
        <source></source>
        <translation>The log is in the practice folder on this computer and nowhere else. Nothing is sent anywhere. Copy the folder, or let your own file-sync service copy it, and you have everything.</translation>
    </message>
    <message id="help.log.what.worst">
        <source></source>
        <translation>At the top are this week and last week, and the passages that went worst in the last two weeks, with the reason. Choose one to see only it.</translation>
    </message>
    <message id="help.log.why.days-apart">
        <source></source>
        <translation>Practising on separate days helps you keep what you learned (Simmons 2012). A break of minutes is only rest: up to a quarter of an hour made no difference to beginners at the piano who were tested five minutes later (Wiseheart, D&apos;Souza and Chae 2017). Piolo accepts one missed day now and then and points out two in a row; that is our choice.</translation>
    </message>
    <message id="help.log.why.reaction">
        <source></source>
        <translation>You hear a slip before you press the key, so each miss is moved back by your reaction time. A quarter of a second is a guess; you can set your own in the settings.</translation>
    </message>
    <message id="help.paper.title">
        <source></source>
        <translation>Practice on paper</translation>
    </message>
    <message id="help.paper.what.print">
        <source></source>
        <translation>Print a ladder for each passage, tick it in pencil where you have no screen, and enter the sheet later. The rule is then applied to its marks as if you had played them here, on the day that you enter.</translation>
    </message>
    <message id="help.paper.why.earlier-day">
        <source></source>
        <translation>You cannot enter runs for a day before the last day in the passage&apos;s log: what the rule has done since then is not undone.</translation>
    </message>
    <message id="help.paper.why.order">
        <source></source>
        <translation>A sheet shows how many, but not in which order, so on each rung misses count before circles.</translation>
    </message>
    <message id="help.passages.key.list">
        <source></source>
        <translation>move from passage to passage in the list</translation>
    </message>
    <message id="help.passages.key.list.keys">
        <source></source>
        <translation>Up, Down</translation>
    </message>
    <message id="help.passages.key.save">
        <source></source>
        <translation>drill the chosen passage; in its form, save it first</translation>
    </message>
    <message id="help.passages.title">
        <source></source>
        <translation>Passages</translation>
    </message>
    <message id="help.passages.what.form">
        <source></source>
        <translation>The bars, a start and a target are enough; the rest has sensible defaults. The form shows how long a run takes, and about how many runs a full streak needs.</translation>
    </message>
    <message id="help.passages.what.gentle">
        <source></source>
        <translation>Gentle near the target: there, a miss drops by one climb; at the target, only the second miss in a row drops.</translation>
    </message>
    <message id="help.passages.what.list">
        <source></source>
        <translation>All your passages, by the next due date of their piece, by how long they have rested, or by how far they are from the target. Choose one to see its page: the music, how it has gone, where it breaks and what comes next. Edit opens its form.</translation>
    </message>
    <message id="help.passages.why.about-runs">
        <source></source>
        <translation>The number of runs is calculated for a player who plays nine in ten clean and neither tires nor learns. It is not a promise.</translation>
    </message>
    <message id="help.passages.why.short">
        <source></source>
        <translation>Short passages come clean sooner: in a long one, a single bad bar spoils the whole run. Splitting a passage where it breaks is common practice; we know no source for it.</translation>
    </message>
    <message id="help.picture.key.edge">
        <source></source>
        <translation>select the next edge, and then the whole frame again</translation>
    </message>
    <message id="help.picture.key.edge.keys">
        <source></source>
        <translation>Space</translation>
    </message>
    <message id="help.picture.key.leave">
        <source></source>
        <translation>cancel your changes</translation>
    </message>
    <message id="help.picture.key.leave.keys">
        <source></source>
        <translation>Esc</translation>
    </message>
    <message id="help.picture.key.move">
        <source></source>
        <translation>move the frame or the selected edge; with Shift, in larger steps</translation>
    </message>
    <message id="help.picture.key.move.keys">
        <source></source>
        <translation>Arrow keys</translation>
    </message>
    <message id="help.picture.key.scroll">
        <source></source>
        <translation>scroll the page</translation>
    </message>
    <message id="help.picture.key.scroll.keys">
        <source></source>
        <translation>PgUp, PgDown</translation>
    </message>
    <message id="help.picture.title">
        <source></source>
        <translation>A picture of the music</translation>
    </message>
    <message id="help.picture.what.add">
        <source></source>
        <translation>Add a photo, a scan or a PDF page of your part, and put the frame around the passage. While you drill, you see what is in the frame. The picture is copied into the practice folder.</translation>
    </message>
    <message id="help.picture.why.eyes">
        <source></source>
        <translation>Your eyes stay on the music: you see only the bars of the passage, as large as space allows. This is common practice; we know no source for it. Copy only music that you are allowed to copy.</translation>
    </message>
    <message id="help.run-through.key.end">
        <source></source>
        <translation>mark the last note</translation>
    </message>
    <message id="help.run-through.key.give-up">
        <source></source>
        <translation>give up</translation>
    </message>
    <message id="help.run-through.key.start">
        <source></source>
        <translation>start; then mark each stop</translation>
    </message>
    <message id="help.run-through.key.take-back">
        <source></source>
        <translation>take back the last stop</translation>
    </message>
    <message id="help.run-through.title">
        <source></source>
        <translation>Run-through</translation>
    </message>
    <message id="help.run-through.what.whole">
        <source></source>
        <translation>Play a whole piece without the click, from start to finish. You start from the form of any passage of that piece. Where the music stops, press the key and play on. The clock guesses the bar; you can correct it before you save the run-through.</translation>
    </message>
    <message id="help.run-through.why.hides">
        <source></source>
        <translation>A run-through shows what the click hides: where the piece breaks when nothing leads. If the bar of a stop is unknown, the stop may have been anywhere, and it counts against every passage of the piece.</translation>
    </message>
    <message id="help.run-through.why.kept">
        <source></source>
        <translation>A passage holds as long as the last two run-throughs did not stop in it. Two is our choice, without a source: few enough to play, and more than luck.</translation>
    </message>
    <message id="help.scales.key.drill">
        <source></source>
        <translation>drill the cell</translation>
    </message>
    <message id="help.scales.key.drill.keys">
        <source></source>
        <translation>Return, Space</translation>
    </message>
    <message id="help.scales.key.move">
        <source></source>
        <translation>move from cell to cell</translation>
    </message>
    <message id="help.scales.key.move.keys">
        <source></source>
        <translation>Arrow keys</translation>
    </message>
    <message id="help.scales.key.suggested">
        <source></source>
        <translation>go to the suggested cell</translation>
    </message>
    <message id="help.scales.key.suggested.keys">
        <source></source>
        <translation>Home</translation>
    </message>
    <message id="help.scales.title">
        <source></source>
        <translation>Scales</translation>
    </message>
    <message id="help.scales.what.grid">
        <source></source>
        <translation>One kind of scale in all twelve keys, and each key from quarters to septuplets. A cell shows its best tempo with a full streak; an empty cell has not been played yet. Below the grid, the selected cell is put into words. You drill a cell like any passage.</translation>
    </message>
    <message id="help.scales.what.new-cell">
        <source></source>
        <translation>A new cell starts two notches below the best of its nearest neighbour. Its end is arranged so that the last note falls on a beat; the card tells you how.</translation>
    </message>
    <message id="help.scales.what.suggested">
        <source></source>
        <translation>Piolo suggests the next cell and tells you why. Of the cells not played today, it is the one played longest ago, if that is a week or more; otherwise one that you have never played; otherwise the one furthest below the best of its row. You decide.</translation>
    </message>
    <message id="help.scales.why.days-apart">
        <source></source>
        <translation>Separate days help: of twenty-nine musicians learning nine notes on a keyboard, only those who came back after a day, rather than after minutes or hours, were more accurate the second time (Simmons 2012).</translation>
    </message>
    <message id="help.scales.why.fast-clicks">
        <source></source>
        <translation>Nobody can keep in step with single clicks faster than about eight to ten per second (Repp 2006). In small notes, follow the beat.</translation>
    </message>
    <message id="help.scales.why.look-alikes">
        <source></source>
        <translation>Similar material late in the evening may cost you: in one study of sixty musicians, a second, similar melody took away the overnight gain.</translation>
    </message>
    <message id="help.scales.why.mixed-order">
        <source></source>
        <translation>A mixed order can help later: forty-one beginners on the clarinet finished their practice equally well, but a day later those who had practised in mixed order were faster, though not more accurate (Stambaugh 2011). One session with nineteen beginners on clarinet and saxophone showed no effect of the order (a study at Rhode Island College). That is why the mixed order is optional.</translation>
    </message>
    <message id="help.score.title">
        <source></source>
        <translation>A passage from a score</translation>
    </message>
    <message id="help.score.what.reads">
        <source></source>
        <translation>Piolo reads a MusicXML score, shows its parts and takes the bars that you pick: their meter, their tempo mark and their notes, so that you can hear the passage first.</translation>
    </message>
    <message id="help.score.what.where">
        <source></source>
        <translation>Choose the file, type its path, or drop it on the card.</translation>
    </message>
    <message id="help.score.why.model">
        <source></source>
        <translation>School wind players who heard a model did better in rhythm and gained more tempo, whatever the order of their tempi (Henley 2001).</translation>
    </message>
    <message id="help.score.why.straight">
        <source></source>
        <translation>Bars that contain a repeat or a change of meter are refused rather than guessed at: a passage is played straight through.</translation>
    </message>
    <message id="help.set.key.mark">
        <source></source>
        <translation>starts; while the click runs, marks a miss</translation>
    </message>
    <message id="help.set.what.marks">
        <source></source>
        <translation>Runs are logged under their own passage, by its own rule, as in the drill. A miss that you mark before the next passage&apos;s first note counts for the run before.</translation>
    </message>
    <message id="help.set.what.stop">
        <source></source>
        <translation>When you stop, one line for each passage says how its runs went.</translation>
    </message>
    <message id="help.set.what.tones">
        <source></source>
        <translation>Before its count-in, each passage is announced by as many short, soft tones as its place in the set, and its title is shown in large letters.</translation>
    </message>
    <message id="help.set.what.turns">
        <source></source>
        <translation>A set takes two to four passages in turn: so many runs or minutes of each, round and round until you stop. A turn ends with a run, never inside one.</translation>
    </message>
    <message id="help.set.why.studies">
        <source></source>
        <translation>Ten clarinettists practised one piece at a stretch and another in turns of three minutes. Where judges rated the two differently, the turns were ahead, though not for every judge. Of 41 beginners, those who had practised in mixed order played faster a day later, but no more accurately. Another study of beginners found no difference.</translation>
    </message>
    <message id="help.set.why.tomorrow">
        <source></source>
        <translation>Judge it by the first run tomorrow, not by the last one today.</translation>
    </message>
    <message id="help.settings.title">
        <source></source>
        <translation>Settings</translation>
    </message>
    <message id="help.settings.what.belongs">
        <source></source>
        <translation>Sound, appearance, language and keys belong to this computer; the practice settings travel with the practice folder.</translation>
    </message>
    <message id="help.settings.what.keys">
        <source></source>
        <translation>Any key can do any task: choose the task, then press the key. A pedal or a MIDI switch is a key like any other. A single pedal can do everything: one press starts or marks a miss, two presses take back the last mark; hold it to stop the click or, while stopped, to open the next passage.</translation>
    </message>
    <message id="help.settings.why.choices">
        <source></source>
        <translation>Three days until a passage is secure, four seconds to breathe after a miss, a quarter of a second from a slip to the key: these are our choices, and you can change them. We know that separate days help (Simmons 2012), but not how many are best.</translation>
    </message>
    <message id="help.settings.why.level">
        <source></source>
        <translation>The click starts low. Your instrument is louder, and that is fine: choose a sharper voice rather than a higher volume. Two metres from the screen the click is softer than beside it, and your own tone covers part of it. Piolo cannot know how loud it is in your room. So let your ears decide: hold a long note as loud as usual with the click on, and set the volume so that you just hear it. When you change voice or volume, a short bar lets you hear the change.</translation>
    </message>
    <message id="help.sources">
        <source></source>
        <translation>Sources</translation>
    </message>
    <message id="help.sources.hint">
        <source></source>
        <translation>What we say about these sources is in their abstracts or opening pages.</translation>
    </message>
    <message id="help.start.key.control">
        <source></source>
        <translation>go to the next control, and back</translation>
    </message>
    <message id="help.start.key.control.keys">
        <source></source>
        <translation>Tab, Shift+Tab</translation>
    </message>
    <message id="help.start.key.help">
        <source></source>
        <translation>help for the current screen, while the click is stopped</translation>
    </message>
    <message id="help.start.key.press">
        <source></source>
        <translation>press the focused control</translation>
    </message>
    <message id="help.start.key.press.keys">
        <source></source>
        <translation>Return, Space</translation>
    </message>
    <message id="help.start.title">
        <source></source>
        <translation>From slow to the whole piece</translation>
    </message>
    <message id="help.start.what.piolo">
        <source></source>
        <translation>Piolo helps you get a hard passage clean. Choose a tempo at which nothing goes wrong, and play the passage again and again. You touch one key, and only for a miss: the tempo follows how cleanly you play.</translation>
    </message>
    <message id="help.start.what.stages">
        <source></source>
        <translation>A passage goes through five stages: slow with the click, secure at the target, without the click, in context with two more bars on each side, and in run-throughs of the piece. When your log supports the next stage, the drill screen says why. You decide, and you can go back.</translation>
    </message>
    <message id="help.start.why.few-misses">
        <source></source>
        <translation>How well a passage was kept overnight was linked to how few repetitions were wrong, not to how long or how often it was played: seventeen pianists, three bars (Duke, Simmons and Cash 2009). That is why Piolo aims for few misses, and counts clean runs rather than minutes.</translation>
    </message>
    <message id="help.start.why.slow">
        <source></source>
        <translation>Nearly all players say that they practise slowly (Allingham and Wöllner 2022): that shows what is usual, not what works. They also see its pitfalls, such as movements that differ from fast ones (2023). That is why you can always try a run at the target.</translation>
    </message>
    <message id="help.title">
        <source></source>
        <translation>Help</translation>
    </message>
    <message id="help.what">
        <source></source>
        <translation>What it is for</translation>
    </message>
    <message id="help.why">
        <source></source>
        <translation>Why it works this way</translation>
    </message>
    <message id="instrument.alto-saxophone">
        <source></source>
        <translation>alto saxophone</translation>
    </message>
    <message id="instrument.baritone-saxophone">
        <source></source>
        <translation>baritone saxophone</translation>
    </message>
    <message id="instrument.bass-clarinet">
        <source></source>
        <translation>bass clarinet</translation>
    </message>
    <message id="instrument.bassoon">
        <source></source>
        <translation>bassoon</translation>
    </message>
    <message id="instrument.clarinet-a">
        <source></source>
        <translation>clarinet in A</translation>
    </message>
    <message id="instrument.clarinet-b-flat">
        <source></source>
        <translation>clarinet in B flat</translation>
    </message>
    <message id="instrument.clarinet-e-flat">
        <source></source>
        <translation>clarinet in E flat</translation>
    </message>
    <message id="instrument.cornet">
        <source></source>
        <translation>cornet</translation>
    </message>
    <message id="instrument.english-horn">
        <source></source>
        <translation>English horn</translation>
    </message>
    <message id="instrument.euphonium">
        <source></source>
        <translation>euphonium</translation>
    </message>
    <message id="instrument.euphonium-treble">
        <source></source>
        <translation>euphonium in treble clef</translation>
    </message>
    <message id="instrument.flugelhorn">
        <source></source>
        <translation>flugelhorn</translation>
    </message>
    <message id="instrument.flute">
        <source></source>
        <translation>flute</translation>
    </message>
    <message id="instrument.horn-f">
        <source></source>
        <translation>horn in F</translation>
    </message>
    <message id="instrument.oboe">
        <source></source>
        <translation>oboe</translation>
    </message>
    <message id="instrument.piccolo">
        <source></source>
        <translation>piccolo</translation>
    </message>
    <message id="instrument.soprano-saxophone">
        <source></source>
        <translation>soprano saxophone</translation>
    </message>
    <message id="instrument.tenor-saxophone">
        <source></source>
        <translation>tenor saxophone</translation>
    </message>
    <message id="instrument.trombone">
        <source></source>
        <translation>trombone</translation>
    </message>
    <message id="instrument.trumpet-b-flat">
        <source></source>
        <translation>trumpet in B flat</translation>
    </message>
    <message id="instrument.trumpet-c">
        <source></source>
        <translation>trumpet in C</translation>
    </message>
    <message id="instrument.tuba">
        <source></source>
        <translation>tuba</translation>
    </message>
    <message id="instruments.as-in">
        <source></source>
        <translation>as in “%1”</translation>
    </message>
    <message id="instruments.clarinets">
        <source></source>
        <translation>Clarinets</translation>
    </message>
    <message id="instruments.double-reeds">
        <source></source>
        <translation>Double reeds</translation>
    </message>
    <message id="instruments.flutes">
        <source></source>
        <translation>Flutes</translation>
    </message>
    <message id="instruments.high-brass">
        <source></source>
        <translation>High brass</translation>
    </message>
    <message id="instruments.low-brass">
        <source></source>
        <translation>Low brass</translation>
    </message>
    <message id="instruments.none">
        <source></source>
        <translation>No instrument has “%1” in its name.</translation>
    </message>
    <message id="instruments.saxophones">
        <source></source>
        <translation>Saxophones</translation>
    </message>
    <message id="instruments.search">
        <source></source>
        <translation>Search: any part of the name</translation>
    </message>
    <message id="keys.action-keys">
        <source></source>
        <translatorcomment>action: its keys</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message id="keys.action.back">
        <source></source>
        <translation>Take back the last mark</translation>
    </message>
    <message id="keys.action.clean">
        <source></source>
        <translation>Mark clean in open-ended runs; in a run-through: the last note</translation>
    </message>
    <message id="keys.action.click">
        <source></source>
        <translation>Open “Just a click”</translation>
    </message>
    <message id="keys.action.faster">
        <source></source>
        <translation>Faster, while stopped</translation>
    </message>
    <message id="keys.action.hear">
        <source></source>
        <translation>Hear the passage first, while stopped</translation>
    </message>
    <message id="keys.action.miss">
        <source></source>
        <translation>Start; while the click runs: mark a miss; in a run-through: mark a stop</translation>
    </message>
    <message id="keys.action.next">
        <source></source>
        <translation>Next passage, while stopped</translation>
    </message>
    <message id="keys.action.pedal">
        <source></source>
        <translation>One pedal for everything: press, hold, press twice</translation>
    </message>
    <message id="keys.action.save">
        <source></source>
        <translation>In a passage&apos;s form: save and drill</translation>
    </message>
    <message id="keys.action.slower">
        <source></source>
        <translation>Slower, while stopped</translation>
    </message>
    <message id="keys.action.stop">
        <source></source>
        <translation>Stop the click; give up a run-through</translation>
    </message>
    <message id="keys.action.stretch">
        <source></source>
        <translation>In the log: make a passage of the bars that break</translation>
    </message>
    <message id="keys.action.tap">
        <source></source>
        <translation>In “Just a click”: tap the tempo</translation>
    </message>
    <message id="keys.action.try">
        <source></source>
        <translation>Try once at the target</translation>
    </message>
    <message id="keys.add">
        <source></source>
        <translation>Add a key</translation>
    </message>
    <message id="keys.add.spoken">
        <source></source>
        <translation>%1: add a key</translation>
    </message>
    <message id="keys.chip">
        <source></source>
        <translation>%1  ✕</translation>
    </message>
    <message id="keys.chip.remove">
        <source></source>
        <translation>Remove %1</translation>
    </message>
    <message id="keys.done">
        <source></source>
        <translation>✓ %1</translation>
    </message>
    <message id="keys.full">
        <source></source>
        <translation>%1 was removed: an action has at most %2 keys.</translation>
    </message>
    <message id="keys.held">
        <source></source>
        <translation>%1 held</translation>
    </message>
    <message id="keys.kept">
        <source></source>
        <translation>%1 stays: it is the last key for “%2”. Add another key first.</translation>
    </message>
    <message id="keys.last">
        <source></source>
        <translation>%1 is the last key for “%2”. Give that action another key first.</translation>
    </message>
    <message id="keys.midi.controller">
        <source></source>
        <translation>MIDI: controller %1, channel %2</translation>
    </message>
    <message id="keys.midi.listening">
        <source></source>
        <translation>Listening to %1. Press the switch.</translation>
    </message>
    <message id="keys.midi.none">
        <source></source>
        <translation>MIDI is not available: this system has no MIDI sequencer. A pedal that acts as a keyboard still works.</translation>
    </message>
    <message id="keys.midi.note">
        <source></source>
        <translation>MIDI: note %1, channel %2</translation>
    </message>
    <message id="keys.midi.program">
        <source></source>
        <translation>MIDI: program %1, channel %2</translation>
    </message>
    <message id="keys.midi.unplugged">
        <source></source>
        <translation>No MIDI input is connected. Connect one, then press the switch.</translation>
    </message>
    <message id="keys.moved-from">
        <source></source>
        <translation>%1 is no longer a key for “%2”.</translation>
    </message>
    <message id="keys.moved-to">
        <source></source>
        <translation>%1 is now a key for “%2”.</translation>
    </message>
    <message id="keys.none">
        <source></source>
        <translation>no key</translation>
    </message>
    <message id="keys.press">
        <source></source>
        <translation>Press a key…</translation>
    </message>
    <message id="keys.press.spoken">
        <source></source>
        <translation>%1: press a key now, or Esc to cancel</translation>
    </message>
    <message id="keys.removed">
        <source></source>
        <translation>%1 is no longer a key for “%2”.</translation>
    </message>
    <message id="keys.reset">
        <source></source>
        <translation>Restore default keys</translation>
    </message>
    <message id="keys.set.left-right">
        <source></source>
        <translation>Left and Right arrows</translation>
    </message>
    <message id="keys.set.one-pedal">
        <source></source>
        <translation>A single pedal, PgDown</translation>
    </message>
    <message id="keys.set.pages">
        <source></source>
        <translation>PgUp and PgDown</translation>
    </message>
    <message id="keys.set.space-return">
        <source></source>
        <translation>Space and Return</translation>
    </message>
    <message id="keys.set.up-down">
        <source></source>
        <translation>Up and Down arrows</translation>
    </message>
    <message id="keys.take-over">
        <source></source>
        <translation>Reassign</translation>
    </message>
    <message id="keys.taken">
        <source></source>
        <translation>%1 is already used for “%2”. Press it again to reassign it, or press another key, or Esc.</translation>
    </message>
    <message id="keys.twice">
        <source></source>
        <translation>%1 twice</translation>
    </message>
    <message id="keys.unchanged">
        <source></source>
        <translation>You already use these keys.</translation>
    </message>
    <message id="keys.warning">
        <source></source>
        <translation>▲ %1</translation>
    </message>
    <message id="ladder.best">
        <source></source>
        <translation>best</translation>
    </message>
    <message id="ladder.now">
        <source></source>
        <translation>current tempo, %1</translation>
    </message>
    <message id="ladder.spoken">
        <source></source>
        <translation>Tempo ladder</translation>
    </message>
    <message id="ladder.start">
        <source></source>
        <translation>start</translation>
    </message>
    <message id="ladder.target">
        <source></source>
        <translation>target</translation>
    </message>
    <message id="log.bad-lines">
        <source></source>
        <translation>Some lines of the practice log could not be read and were left as they are: %1</translation>
    </message>
    <message id="log.dates.ahead" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n entry is dated in the future: %1. Was a clock wrong?</numerusform>
            <numerusform>%n entries are dated in the future, up to %1. Was a clock wrong?</numerusform>
        </translation>
    </message>
    <message id="log.dates.day">
        <source></source>
        <translation>When did you last play then?</translation>
    </message>
    <message id="log.dates.done">
        <source></source>
        <translation>Dates corrected</translation>
    </message>
    <message id="log.dates.put-right">
        <source></source>
        <translation>Correct dates</translation>
    </message>
    <message id="log.dates.undo">
        <source></source>
        <translation>Undo</translation>
    </message>
    <message id="log.day.figures">
        <source></source>
        <translatorcomment>time played · clean runs of all</translatorcomment>
        <translation>%1 · %2 of %3 clean</translation>
    </message>
    <message id="log.day.heading">
        <source></source>
        <translation>%1, %2</translation>
    </message>
    <message id="log.day.no-practice">
        <source></source>
        <translation>%1: no practice</translation>
    </message>
    <message id="log.day.time">
        <source></source>
        <translation>%1: %2</translation>
    </message>
    <message id="log.day.time-and-runs">
        <source></source>
        <translation>%1: %2, %3 of %4 clean</translation>
    </message>
    <message id="log.days">
        <source></source>
        <translation>Days</translation>
    </message>
    <message id="log.days-missed">
        <source></source>
        <translation>You have not practised for %1 days. A few minutes today are enough to pick up the thread.</translation>
    </message>
    <message id="log.days-missed-before">
        <source></source>
        <translation>You did not practise for %1 days in a row from %2. You have been back since, and that counts.</translation>
    </message>
    <message id="log.empty">
        <source></source>
        <translation>You have not played anything yet. Every run you drill appears here, day by day.</translation>
    </message>
    <message id="log.entry.edit-note">
        <source></source>
        <translation>Edit note</translation>
    </message>
    <message id="log.entry.keep">
        <source></source>
        <translation>Save</translation>
    </message>
    <message id="log.entry.leave">
        <source></source>
        <translation>Cancel</translation>
    </message>
    <message id="log.entry.line">
        <source></source>
        <translation>%1 · %2</translation>
    </message>
    <message id="log.entry.note">
        <source></source>
        <translation>Note</translation>
    </message>
    <message id="log.entry.note.spoken">
        <source></source>
        <translation>Note on %1</translation>
    </message>
    <message id="log.entry.note.title">
        <source></source>
        <translation>Note on this run</translation>
    </message>
    <message id="log.entry.run">
        <source></source>
        <translation>the run at %1, %2</translation>
    </message>
    <message id="log.entry.run-of">
        <source></source>
        <translation>run %1 of %2 at %3, %4</translation>
    </message>
    <message id="log.entry.run-through">
        <source></source>
        <translation>the run-through at %1</translation>
    </message>
    <message id="log.entry.take-back">
        <source></source>
        <translation>Take back</translation>
    </message>
    <message id="log.entry.take-back.spoken">
        <source></source>
        <translation>Take back %1</translation>
    </message>
    <message id="log.entry.tempo">
        <source></source>
        <translation>the tempo %1 set at %2</translation>
    </message>
    <message id="log.entry.was-clean">
        <source></source>
        <translation>It was clean</translation>
    </message>
    <message id="log.entry.was-clean.spoken">
        <source></source>
        <translation>It was clean: %1</translation>
    </message>
    <message id="log.entry.was-missed">
        <source></source>
        <translation>It was a miss</translation>
    </message>
    <message id="log.entry.was-missed.spoken">
        <source></source>
        <translation>It was a miss: %1</translation>
    </message>
    <message id="log.filter.every-passage">
        <source></source>
        <translation>all passages</translation>
    </message>
    <message id="log.filter.every-piece">
        <source></source>
        <translation>all pieces</translation>
    </message>
    <message id="log.filter.everything">
        <source></source>
        <translation>everything</translation>
    </message>
    <message id="log.filter.first-day">
        <source></source>
        <translation>all time</translation>
    </message>
    <message id="log.filter.kind">
        <source></source>
        <translation>Kind</translation>
    </message>
    <message id="log.filter.months">
        <source></source>
        <translation>3 months</translation>
    </message>
    <message id="log.filter.passage">
        <source></source>
        <translation>Passage</translation>
    </message>
    <message id="log.filter.piece">
        <source></source>
        <translation>Piece</translation>
    </message>
    <message id="log.filter.run-through">
        <source></source>
        <translation>run-through</translation>
    </message>
    <message id="log.filter.since">
        <source></source>
        <translation>Period</translation>
    </message>
    <message id="log.filter.week">
        <source></source>
        <translation>7 days</translation>
    </message>
    <message id="log.filter.weeks">
        <source></source>
        <translation>4 weeks</translation>
    </message>
    <message id="log.filter.year">
        <source></source>
        <translation>1 year</translation>
    </message>
    <message id="log.line.a-try">
        <source></source>
        <translation>a try</translation>
    </message>
    <message id="log.line.aside">
        <source></source>
        <translation>aside</translation>
    </message>
    <message id="log.line.at-tempo">
        <source></source>
        <translation>at %1</translation>
    </message>
    <message id="log.line.bar">
        <source></source>
        <translation>bar %1</translation>
    </message>
    <message id="log.line.bars">
        <source></source>
        <translation>bars %1</translation>
    </message>
    <message id="log.line.bars-unknown">
        <source></source>
        <translation>bars unknown</translation>
    </message>
    <message id="log.line.by-hand">
        <source></source>
        <translation>set by hand</translation>
    </message>
    <message id="log.line.clean">
        <source></source>
        <translation>clean</translation>
    </message>
    <message id="log.line.climbs">
        <source></source>
        <translation>climbs to %1</translation>
    </message>
    <message id="log.line.corrected">
        <source></source>
        <translation>%1, changed afterwards</translation>
    </message>
    <message id="log.line.count-clean">
        <source></source>
        <translation>%1 clean</translation>
    </message>
    <message id="log.line.count-missed">
        <source></source>
        <translation>%1 missed</translation>
    </message>
    <message id="log.line.count-void">
        <source></source>
        <translation>%1 not counted</translation>
    </message>
    <message id="log.line.drops">
        <source></source>
        <translation>drops to %1</translation>
    </message>
    <message id="log.line.figures">
        <source></source>
        <translation>%1 · %2</translation>
    </message>
    <message id="log.line.given-up">
        <source></source>
        <translation>given up</translation>
    </message>
    <message id="log.line.in-a-row">
        <source></source>
        <translation>%1 clean in a row</translation>
    </message>
    <message id="log.line.in-context">
        <source></source>
        <translation>in context</translation>
    </message>
    <message id="log.line.missed">
        <source></source>
        <translation>missed</translation>
    </message>
    <message id="log.line.missed-late">
        <source></source>
        <translation>missed, marked afterwards</translation>
    </message>
    <message id="log.line.more">
        <source></source>
        <translation>%1 …</translation>
    </message>
    <message id="log.line.moves-nothing">
        <source></source>
        <translatorcomment>what a run was played for</translatorcomment>
        <translation>%1: changes nothing</translation>
    </message>
    <message id="log.line.named">
        <source></source>
        <translation>start of the search for the tempo</translation>
    </message>
    <message id="log.line.new-day">
        <source></source>
        <translation>new day; left at %1</translation>
    </message>
    <message id="log.line.offer-taken">
        <source></source>
        <translation>suggestion accepted</translation>
    </message>
    <message id="log.line.on-paper">
        <source></source>
        <translation>on paper</translation>
    </message>
    <message id="log.line.paper">
        <source></source>
        <translation>paper</translation>
    </message>
    <message id="log.line.removed">
        <source></source>
        <translation>%1 (removed)</translation>
    </message>
    <message id="log.line.run">
        <source></source>
        <translation>run</translation>
    </message>
    <message id="log.line.run-through">
        <source></source>
        <translation>%1, run-through</translation>
    </message>
    <message id="log.line.secure">
        <source></source>
        <translation>secure</translation>
    </message>
    <message id="log.line.stays">
        <source></source>
        <translation>stays at %1</translation>
    </message>
    <message id="log.line.tempo-set">
        <source></source>
        <translation>tempo set</translation>
    </message>
    <message id="log.line.try">
        <source></source>
        <translation>try</translation>
    </message>
    <message id="log.line.void">
        <source></source>
        <translation>not counted</translation>
    </message>
    <message id="log.line.void-sound">
        <source></source>
        <translation>not counted: the sound was lost</translation>
    </message>
    <message id="log.line.void-stopped">
        <source></source>
        <translation>not counted: stopped</translation>
    </message>
    <message id="log.line.void-tempo">
        <source></source>
        <translation>not counted: the tempo changed during the run</translation>
    </message>
    <message id="log.line.without-click">
        <source></source>
        <translation>without the click</translation>
    </message>
    <message id="log.mark.clean">
        <source></source>
        <translation>clean: %1</translation>
    </message>
    <message id="log.mark.clean-unmarked">
        <source></source>
        <translation>clean: automatic</translation>
    </message>
    <message id="log.mark.missed">
        <source></source>
        <translation>miss: %1</translation>
    </message>
    <message id="log.mark.stop">
        <source></source>
        <translation>stop: %1</translation>
    </message>
    <message id="log.more" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Show more (%n left)</numerusform>
            <numerusform>Show more (%n left)</numerusform>
        </translation>
    </message>
    <message id="log.never-two-days-missed">
        <source></source>
        <translation>No two days missed in a row in four weeks; one now and then is fine.</translation>
    </message>
    <message id="log.no-day-missed">
        <source></source>
        <translation>You have not missed a day since you began.</translation>
    </message>
    <message id="log.no-day-missed-lately">
        <source></source>
        <translation>You have not missed a day in four weeks.</translation>
    </message>
    <message id="log.none-found">
        <source></source>
        <translation>No entries match these filters.</translation>
    </message>
    <message id="log.title">
        <source></source>
        <translation>Practice log</translation>
    </message>
    <message id="log.week.figures">
        <source></source>
        <translation>%1, %2, %3 clean</translation>
    </message>
    <message id="log.week.last">
        <source></source>
        <translation>Last week: %1</translation>
    </message>
    <message id="log.week.this">
        <source></source>
        <translation>This week: %1</translation>
    </message>
    <message id="log.worst.clean">
        <source></source>
        <translation>%1 of %2 clean</translation>
    </message>
    <message id="log.worst.clean-and-bar">
        <source></source>
        <translation>%1, most misses in bar %2</translation>
    </message>
    <message id="log.worst.spoken">
        <source></source>
        <translation>%1: %2; shows only this passage</translation>
    </message>
    <message id="log.worst.title">
        <source></source>
        <translation>Needs most work (last two weeks)</translation>
    </message>
    <message id="manner.as-written">
        <source></source>
        <translation>as written</translation>
    </message>
    <message id="manner.double-tongued">
        <source></source>
        <translation>double-tongued</translation>
    </message>
    <message id="manner.in-groups">
        <source></source>
        <translation>in groups</translation>
    </message>
    <message id="manner.in-groups-of">
        <source></source>
        <translation>in groups of %1</translation>
    </message>
    <message id="manner.long-short">
        <source></source>
        <translation>long and short</translation>
    </message>
    <message id="manner.short-long">
        <source></source>
        <translation>short and long</translation>
    </message>
    <message id="manner.slur-three-tongue-one">
        <source></source>
        <translation>slur three, tongue one</translation>
    </message>
    <message id="manner.slur-two-tongue-two">
        <source></source>
        <translation>slur two, tongue two</translation>
    </message>
    <message id="manner.slurred">
        <source></source>
        <translation>all slurred</translation>
    </message>
    <message id="manner.staccato">
        <source></source>
        <translation>staccato</translation>
    </message>
    <message id="manner.tongue-one-slur-three">
        <source></source>
        <translation>tongue one, slur three</translation>
    </message>
    <message id="manner.tongued">
        <source></source>
        <translation>all tongued</translation>
    </message>
    <message id="meter.beats" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n beat in the bar</numerusform>
            <numerusform>%n beats in the bar</numerusform>
        </translation>
    </message>
    <message id="minutes.drilled">
        <source></source>
        <translation>drilled</translation>
    </message>
    <message id="minutes.most">
        <source></source>
        <translation>most: %1 min</translation>
    </message>
    <message id="minutes.other-runs">
        <source></source>
        <translation>other runs</translation>
    </message>
    <message id="minutes.run-throughs">
        <source></source>
        <translation>run-throughs</translation>
    </message>
    <message id="minutes.spoken">
        <source></source>
        <translation>Minutes per day, four weeks</translation>
    </message>
    <message id="minutes.title">
        <source></source>
        <translation>Minutes per day</translation>
    </message>
    <message id="minutes.today">
        <source></source>
        <translation>today</translation>
    </message>
    <message id="minutes.weeks-ago">
        <source></source>
        <translation>4 weeks ago</translation>
    </message>
    <message id="nav.help">
        <source></source>
        <translation>Help</translation>
    </message>
    <message id="nav.log">
        <source></source>
        <translation>Log</translation>
    </message>
    <message id="nav.now">
        <source></source>
        <translation>Back to %1</translation>
    </message>
    <message id="nav.passages">
        <source></source>
        <translation>Passages</translation>
    </message>
    <message id="nav.paused">
        <source></source>
        <translation>%1: paused</translation>
    </message>
    <message id="nav.scales">
        <source></source>
        <translation>Scales</translation>
    </message>
    <message id="nav.screens">
        <source></source>
        <translation>Screens</translation>
    </message>
    <message id="nav.settings">
        <source></source>
        <translation>Settings</translation>
    </message>
    <message id="nav.today">
        <source></source>
        <translation>%1 today</translation>
    </message>
    <message id="note.a">
        <source></source>
        <translation>A</translation>
    </message>
    <message id="note.a-flat">
        <source></source>
        <translation>A♭</translation>
    </message>
    <message id="note.a-sharp">
        <source></source>
        <translation>A♯</translation>
    </message>
    <message id="note.b">
        <source></source>
        <translation>B</translation>
    </message>
    <message id="note.b-flat">
        <source></source>
        <translation>B♭</translation>
    </message>
    <message id="note.b-sharp">
        <source></source>
        <translation>B♯</translation>
    </message>
    <message id="note.c">
        <source></source>
        <translation>C</translation>
    </message>
    <message id="note.c-flat">
        <source></source>
        <translation>C♭</translation>
    </message>
    <message id="note.c-sharp">
        <source></source>
        <translation>C♯</translation>
    </message>
    <message id="note.d">
        <source></source>
        <translation>D</translation>
    </message>
    <message id="note.d-flat">
        <source></source>
        <translation>D♭</translation>
    </message>
    <message id="note.d-sharp">
        <source></source>
        <translation>D♯</translation>
    </message>
    <message id="note.e">
        <source></source>
        <translation>E</translation>
    </message>
    <message id="note.e-flat">
        <source></source>
        <translation>E♭</translation>
    </message>
    <message id="note.e-sharp">
        <source></source>
        <translation>E♯</translation>
    </message>
    <message id="note.f">
        <source></source>
        <translation>F</translation>
    </message>
    <message id="note.f-flat">
        <source></source>
        <translation>F♭</translation>
    </message>
    <message id="note.f-sharp">
        <source></source>
        <translation>F♯</translation>
    </message>
    <message id="note.g">
        <source></source>
        <translation>G</translation>
    </message>
    <message id="note.g-flat">
        <source></source>
        <translation>G♭</translation>
    </message>
    <message id="note.g-sharp">
        <source></source>
        <translation>G♯</translation>
    </message>
    <message id="number.eight">
        <source></source>
        <translation>eight</translation>
    </message>
    <message id="number.eleven">
        <source></source>
        <translation>eleven</translation>
    </message>
    <message id="number.five">
        <source></source>
        <translation>five</translation>
    </message>
    <message id="number.four">
        <source></source>
        <translation>four</translation>
    </message>
    <message id="number.nine">
        <source></source>
        <translation>nine</translation>
    </message>
    <message id="number.one">
        <source></source>
        <translation>one</translation>
    </message>
    <message id="number.seven">
        <source></source>
        <translation>seven</translation>
    </message>
    <message id="number.six">
        <source></source>
        <translation>six</translation>
    </message>
    <message id="number.ten">
        <source></source>
        <translation>ten</translation>
    </message>
    <message id="number.three">
        <source></source>
        <translation>three</translation>
    </message>
    <message id="number.twelve">
        <source></source>
        <translation>twelve</translation>
    </message>
    <message id="number.two">
        <source></source>
        <translation>two</translation>
    </message>
    <message id="page.curve">
        <source></source>
        <translation>Tempo curve</translation>
    </message>
    <message id="page.edit">
        <source></source>
        <translation>Edit</translation>
    </message>
    <message id="page.next" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n more clean run, then %1.</numerusform>
            <numerusform>%n more clean runs in a row, then %1.</numerusform>
        </translation>
    </message>
    <message id="page.notes">
        <source></source>
        <translation>Notes on the piece</translation>
    </message>
    <message id="page.stage">
        <source></source>
        <translation>Stage: %1</translation>
    </message>
    <message id="page.standing">
        <source></source>
        <translation>of %1 · %2</translation>
    </message>
    <message id="paper.enter">
        <source></source>
        <translation>Enter a sheet</translation>
    </message>
    <message id="paper.enter.choose-passage">
        <source></source>
        <translation>Choose a passage on the left first.</translation>
    </message>
    <message id="paper.enter.count">
        <source></source>
        <translation>%1 clean, %2 missed</translation>
    </message>
    <message id="paper.enter.day">
        <source></source>
        <translation>Day you played it</translation>
    </message>
    <message id="paper.enter.done" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n run was added to the log.</numerusform>
            <numerusform>%n runs were added to the log.</numerusform>
        </translation>
    </message>
    <message id="paper.enter.fault.before">
        <source></source>
        <translation>not before %1, the last day in its log; the rule goes on from there</translation>
    </message>
    <message id="paper.enter.fault.day">
        <source></source>
        <translation>a date such as %1</translation>
    </message>
    <message id="paper.enter.fault.future">
        <source></source>
        <translation>this day is in the future</translation>
    </message>
    <message id="paper.enter.fault.tempo">
        <source></source>
        <translation>a tempo from 10 to 400</translation>
    </message>
    <message id="paper.enter.keep">
        <source></source>
        <translation>Save to log</translation>
    </message>
    <message id="paper.enter.lowest">
        <source></source>
        <translation>Lowest tempo on the sheet</translation>
    </message>
    <message id="paper.enter.misses">
        <source></source>
        <translation>misses</translation>
    </message>
    <message id="paper.enter.misses-first">
        <source></source>
        <translation>On each rung, misses count before circles.</translation>
    </message>
    <message id="paper.enter.misses.spoken">
        <source></source>
        <translation>Misses at %1</translation>
    </message>
    <message id="paper.enter.of">
        <source></source>
        <translation>%1 of %2</translation>
    </message>
    <message id="paper.enter.result">
        <source></source>
        <translation>%1: see the result above.</translation>
    </message>
    <message id="paper.enter.result.best">
        <source></source>
        <translation>Best with a full streak</translation>
    </message>
    <message id="paper.enter.result.best.none">
        <source></source>
        <translation>none yet</translation>
    </message>
    <message id="paper.enter.result.secures">
        <source></source>
        <translation>Full streaks at the target</translation>
    </message>
    <message id="paper.enter.result.streak">
        <source></source>
        <translation>Clean in a row</translation>
    </message>
    <message id="paper.enter.result.streak.of">
        <source></source>
        <translation>%1 of %2</translation>
    </message>
    <message id="paper.enter.result.tempo">
        <source></source>
        <translation>Tempo</translation>
    </message>
    <message id="paper.enter.rungs">
        <source></source>
        <translation>Rungs of the sheet</translation>
    </message>
    <message id="paper.enter.take-back">
        <source></source>
        <translation>Take all back</translation>
    </message>
    <message id="paper.enter.target">
        <source></source>
        <translatorcomment>the target&apos;s tempo</translatorcomment>
        <translation>%1 ◆</translation>
    </message>
    <message id="paper.enter.target.spoken">
        <source></source>
        <translation>%1, the target</translation>
    </message>
    <message id="paper.enter.tempo">
        <source></source>
        <translation>tempo</translation>
    </message>
    <message id="paper.enter.ticked">
        <source></source>
        <translation>circles ticked</translation>
    </message>
    <message id="paper.enter.ticked.spoken">
        <source></source>
        <translation>Circles ticked at %1</translation>
    </message>
    <message id="paper.print">
        <source></source>
        <translation>Print a sheet</translation>
    </message>
    <message id="paper.print.a4">
        <source></source>
        <translation>A4</translation>
    </message>
    <message id="paper.print.file">
        <source></source>
        <translation>File name (.pdf, .svg or .png)</translation>
    </message>
    <message id="paper.print.hint">
        <source></source>
        <translation>Print a ladder for each passage, from its current tempo to its target, with a circle for each clean run, and tick it in pencil.</translation>
    </message>
    <message id="paper.print.letter">
        <source></source>
        <translation>Letter</translation>
    </message>
    <message id="paper.print.most">
        <source></source>
        <translation>At most %1 passages fit on one sheet.</translation>
    </message>
    <message id="paper.print.one-page">
        <source></source>
        <translation>%1 on one page</translation>
    </message>
    <message id="paper.print.pages">
        <source></source>
        <translation>%1 on %2 pages</translation>
    </message>
    <message id="paper.print.paper">
        <source></source>
        <translation>Paper</translation>
    </message>
    <message id="paper.print.save">
        <source></source>
        <translation>Save sheet</translation>
    </message>
    <message id="paper.print.tick">
        <source></source>
        <translation>Tick the passages to print.</translation>
    </message>
    <message id="paper.title">
        <source></source>
        <translation>Practice on paper</translation>
    </message>
    <message id="paper.what-to-do">
        <source></source>
        <translation>What to do</translation>
    </message>
    <message id="parts.back">
        <source></source>
        <translation>Back</translation>
    </message>
    <message id="parts.close">
        <source></source>
        <translation>Close</translation>
    </message>
    <message id="parts.fold.closed">
        <source></source>
        <translation>%1, closed</translation>
    </message>
    <message id="parts.fold.open">
        <source></source>
        <translation>%1, open</translation>
    </message>
    <message id="parts.label-value">
        <source></source>
        <translatorcomment>label: what is chosen</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message id="parts.name-key">
        <source></source>
        <translation>%1, key %2</translation>
    </message>
    <message id="parts.sign-word">
        <source></source>
        <translatorcomment>sign, word</translatorcomment>
        <translation>%1 %2</translation>
    </message>
    <message id="passages.by-climb">
        <source></source>
        <translation>furthest from target</translation>
    </message>
    <message id="passages.by-date">
        <source></source>
        <translation>next due date</translation>
    </message>
    <message id="passages.by-rest">
        <source></source>
        <translation>longest rested</translation>
    </message>
    <message id="passages.date-days">
        <source></source>
        <translatorcomment>a date · days until it</translatorcomment>
        <translation>%1 · %2</translation>
    </message>
    <message id="passages.files">
        <source></source>
        <translation>Passage files</translation>
    </message>
    <message id="passages.from-score">
        <source></source>
        <translation>From a score</translation>
    </message>
    <message id="passages.hide-removed">
        <source></source>
        <translation>Hide removed passages</translation>
    </message>
    <message id="passages.line">
        <source></source>
        <translation>%1 · %2</translation>
    </message>
    <message id="passages.more">
        <source></source>
        <translation>More</translation>
    </message>
    <message id="passages.new">
        <source></source>
        <translation>New passage</translation>
    </message>
    <message id="passages.none">
        <source></source>
        <translation>No passages yet. Create your first with the form on the right.</translation>
    </message>
    <message id="passages.none-found">
        <source></source>
        <translation>No passage contains all of these words.</translation>
    </message>
    <message id="passages.not-played">
        <source></source>
        <translation>not played yet</translation>
    </message>
    <message id="passages.of-target">
        <source></source>
        <translatorcomment>the tempo now, of the target</translatorcomment>
        <translation>of %1</translation>
    </message>
    <message id="passages.on-its-own">
        <source></source>
        <translation>No piece</translation>
    </message>
    <message id="passages.on-its-own.inline">
        <source></source>
        <translation>no piece</translation>
    </message>
    <message id="passages.on-paper">
        <source></source>
        <translation>On paper</translation>
    </message>
    <message id="passages.order">
        <source></source>
        <translation>Sort by</translation>
    </message>
    <message id="passages.played">
        <source></source>
        <translation>played %1</translation>
    </message>
    <message id="passages.removed">
        <source></source>
        <translation>removed</translation>
    </message>
    <message id="passages.removed.notice">
        <source></source>
        <translation>“%1” was removed.</translation>
    </message>
    <message id="passages.restore">
        <source></source>
        <translation>Undo</translation>
    </message>
    <message id="passages.search">
        <source></source>
        <translation>Search</translation>
    </message>
    <message id="passages.secure" numerus="yes">
        <source></source>
        <translation>
            <numerusform>secure on %n day</numerusform>
            <numerusform>secure on %n days</numerusform>
        </translation>
    </message>
    <message id="passages.secure-so-far" numerus="yes">
        <source></source>
        <translation>
            <numerusform>secure on %1 of %n day</numerusform>
            <numerusform>secure on %1 of %n days</numerusform>
        </translation>
    </message>
    <message id="passages.show-removed">
        <source></source>
        <translation>Show removed passages</translation>
    </message>
    <message id="passages.spoken">
        <source></source>
        <translatorcomment>title, piece, bars, tempo, target, streak, standing</translatorcomment>
        <translation>%1, %2, %3: at %4 of %5, %6, %7</translation>
    </message>
    <message id="passages.title">
        <source></source>
        <translation>Passages</translation>
    </message>
    <message id="pause.drops.title">
        <source></source>
        <translation>Two drops below the start</translation>
    </message>
    <message id="pause.easier">
        <source></source>
        <translation>Make it easier for a while: fewer bars, a slower tempo, or a rest. Practising the mistake does not help.</translation>
    </message>
    <message id="pause.fewer-bars">
        <source></source>
        <translation>Fewer bars</translation>
    </message>
    <message id="pause.go-on">
        <source></source>
        <translation>Continue anyway</translation>
    </message>
    <message id="pause.half-tempo">
        <source></source>
        <translation>Half tempo: %1</translation>
    </message>
    <message id="pause.misses.title">
        <source></source>
        <translation>Three misses without a clean run</translation>
    </message>
    <message id="pause.no">
        <source></source>
        <translation>No</translation>
    </message>
    <message id="pause.rest">
        <source></source>
        <translation>Take a rest</translation>
    </message>
    <message id="pause.stop">
        <source></source>
        <translation>Stop</translation>
    </message>
    <message id="pause.unmarked" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n run went by without a key press. If you were not listening to every note, choose No: the run then does not count, and its climb is taken back.</numerusform>
            <numerusform>%n runs went by without a key press. If you were not listening to every note, choose No: the runs then do not count, and their climbs are taken back.</numerusform>
        </translation>
    </message>
    <message id="pause.unmarked.title">
        <source></source>
        <translation>Were these runs clean?</translation>
    </message>
    <message id="pause.yes">
        <source></source>
        <translation>Yes, continue</translation>
    </message>
    <message id="pedal.hint">
        <source></source>
        <translation>Keys that start the click and, while it runs, mark a miss: %1. Do you have a page turner pedal? Press the button here, then the pedal. A MIDI switch works too; see the settings.</translation>
    </message>
    <message id="pedal.press">
        <source></source>
        <translation>Press the pedal now (Esc to cancel)</translation>
    </message>
    <message id="pedal.title">
        <source></source>
        <translation>One key, or a pedal</translation>
    </message>
    <message id="pedal.use">
        <source></source>
        <translation>Use my pedal</translation>
    </message>
    <message id="picks.all">
        <source></source>
        <translation>All</translation>
    </message>
    <message id="picks.all.spoken">
        <source></source>
        <translation>Tick all passages</translation>
    </message>
    <message id="picks.and-scales">
        <source></source>
        <translation>%1, %2</translation>
    </message>
    <message id="picks.empty">
        <source></source>
        <translation>No passages yet.</translation>
    </message>
    <message id="picks.item">
        <source></source>
        <translatorcomment>title (piece)</translatorcomment>
        <translation>%1 (%2)</translation>
    </message>
    <message id="picks.none">
        <source></source>
        <translation>None</translation>
    </message>
    <message id="picks.none.spoken">
        <source></source>
        <translation>Untick all passages</translation>
    </message>
    <message id="picks.of">
        <source></source>
        <translatorcomment>3 of 7 passages</translatorcomment>
        <translation>%1 of %2</translation>
    </message>
    <message id="picks.scales" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n scale</numerusform>
            <numerusform>%n scales</numerusform>
        </translation>
    </message>
    <message id="picks.spoken">
        <source></source>
        <translation>Passages to tick</translation>
    </message>
    <message id="picks.with-scales">
        <source></source>
        <translation>Scales too (%1)</translation>
    </message>
    <message id="picture.add">
        <source></source>
        <translation>Add a picture of the music</translation>
    </message>
    <message id="picture.after-saving">
        <source></source>
        <translation>once the passage is saved</translation>
    </message>
    <message id="picture.another">
        <source></source>
        <translation>Another picture</translation>
    </message>
    <message id="picture.back-to-form">
        <source></source>
        <translation>Back to the form</translation>
    </message>
    <message id="picture.bottom">
        <source></source>
        <translation>bottom</translation>
    </message>
    <message id="picture.crop">
        <source></source>
        <translation>Crop or change the picture</translation>
    </message>
    <message id="picture.crop.spoken">
        <source></source>
        <translation>The page with its frame. The arrow keys move %1.</translation>
    </message>
    <message id="picture.done">
        <source></source>
        <translation>Done</translation>
    </message>
    <message id="picture.edge">
        <source></source>
        <translation>What the arrow keys move</translation>
    </message>
    <message id="picture.edge.bottom">
        <source></source>
        <translation>the bottom edge</translation>
    </message>
    <message id="picture.edge.frame">
        <source></source>
        <translation>the whole frame</translation>
    </message>
    <message id="picture.edge.left">
        <source></source>
        <translation>the left edge</translation>
    </message>
    <message id="picture.edge.right">
        <source></source>
        <translation>the right edge</translation>
    </message>
    <message id="picture.edge.top">
        <source></source>
        <translation>the top edge</translation>
    </message>
    <message id="picture.file">
        <source></source>
        <translation>File</translation>
    </message>
    <message id="picture.file.hint">
        <source></source>
        <translation>A PNG or JPEG, or a PDF from which you choose a page. Choose the file, type its path, or drop it here. It is copied into the practice folder.</translation>
    </message>
    <message id="picture.frame">
        <source></source>
        <translation>frame</translation>
    </message>
    <message id="picture.frame.spoken">
        <source></source>
        <translation>%1 to %2% across, %3 to %4% down</translation>
    </message>
    <message id="picture.hint">
        <source></source>
        <translation>Drag the frame around the passage, or use the arrow keys to move the part that is selected here: Shift for larger steps, Space for the next edge.</translation>
    </message>
    <message id="picture.keep">
        <source></source>
        <translation>Use this part</translation>
    </message>
    <message id="picture.leave">
        <source></source>
        <translation>Cancel</translation>
    </message>
    <message id="picture.left">
        <source></source>
        <translation>left</translation>
    </message>
    <message id="picture.missing">
        <source></source>
        <translation>The picture of the music in the practice folder cannot be read. Add it again, or remove it here.</translation>
    </message>
    <message id="picture.of-passage">
        <source></source>
        <translation>the page of “%1”</translation>
    </message>
    <message id="picture.or-page">
        <source></source>
        <translation>Or use a page that this piece already has</translation>
    </message>
    <message id="picture.page">
        <source></source>
        <translation>Page (of %1)</translation>
    </message>
    <message id="picture.read-only">
        <source></source>
        <translation>This window can only read the practice folder.</translation>
    </message>
    <message id="picture.reading">
        <source></source>
        <translation>Reading…</translation>
    </message>
    <message id="picture.remove">
        <source></source>
        <translation>Remove</translation>
    </message>
    <message id="picture.restore">
        <source></source>
        <translation>Undo removal</translation>
    </message>
    <message id="picture.right">
        <source></source>
        <translation>right</translation>
    </message>
    <message id="picture.spoken">
        <source></source>
        <translation>The music of the passage</translation>
    </message>
    <message id="picture.take">
        <source></source>
        <translation>Add</translation>
    </message>
    <message id="picture.take-page">
        <source></source>
        <translation>Use this page</translation>
    </message>
    <message id="picture.title">
        <source></source>
        <translation>Music for “%1”</translation>
    </message>
    <message id="picture.top">
        <source></source>
        <translation>top</translation>
    </message>
    <message id="picture.unreadable">
        <source></source>
        <translation>The picture of the music in the practice folder cannot be read.</translation>
    </message>
    <message id="picture.whole-page">
        <source></source>
        <translation>Whole page</translation>
    </message>
    <message id="piece.bars">
        <source></source>
        <translation>Total bars</translation>
    </message>
    <message id="piece.bars.unknown">
        <source></source>
        <translation>unknown</translation>
    </message>
    <message id="piece.composer">
        <source></source>
        <translation>Composer</translation>
    </message>
    <message id="piece.due">
        <source></source>
        <translation>Due</translation>
    </message>
    <message id="piece.due.none">
        <source></source>
        <translation>no date</translation>
    </message>
    <message id="piece.fault.due">
        <source></source>
        <translation>a date such as %1, or leave it empty</translation>
    </message>
    <message id="piece.fault.letters">
        <source></source>
        <translation>at most %1 characters</translation>
    </message>
    <message id="piece.fault.meter">
        <source></source>
        <translation>a meter such as 4/4, 6/8 or 7/8, or leave it empty</translation>
    </message>
    <message id="piece.fault.name">
        <source></source>
        <translation>the piece needs a name</translation>
    </message>
    <message id="piece.fault.tempo">
        <source></source>
        <translation>a tempo from 10 to 400, or leave it empty</translation>
    </message>
    <message id="piece.fault.too-long">
        <source></source>
        <translation>too long to save</translation>
    </message>
    <message id="piece.fault.whole">
        <source></source>
        <translation>a whole number from %1 to %2</translation>
    </message>
    <message id="piece.fault.whole-or-none">
        <source></source>
        <translation>a whole number up to %1, or leave it empty</translation>
    </message>
    <message id="piece.instrument">
        <source></source>
        <translation>Instrument</translation>
    </message>
    <message id="piece.instrument.example">
        <source></source>
        <translation>Clarinet in B♭</translation>
    </message>
    <message id="piece.meter">
        <source></source>
        <translation>Meter of the piece</translation>
    </message>
    <message id="piece.meter.example">
        <source></source>
        <translation>4/4</translation>
    </message>
    <message id="piece.meter.unknown">
        <source></source>
        <translation>unknown; run-throughs then show no bars</translation>
    </message>
    <message id="piece.name">
        <source></source>
        <translation>Name of the piece</translation>
    </message>
    <message id="piece.notes">
        <source></source>
        <translation>Notes</translation>
    </message>
    <message id="piece.tempo">
        <source></source>
        <translation>Tempo of the piece, %1 =</translation>
    </message>
    <message id="piece.transposition">
        <source></source>
        <translation>Transposition (semitones)</translation>
    </message>
    <message id="piece.transposition.example">
        <source></source>
        <translation>−2 for a clarinet in B♭</translation>
    </message>
    <message id="playing.spoken">
        <source></source>
        <translation>The click is running. Mark a miss: %1. Stop: %2.</translation>
    </message>
    <message id="playing.stop">
        <source></source>
        <translation>Stop</translation>
    </message>
    <message id="playing.target">
        <source></source>
        <translatorcomment>the target, further up</translatorcomment>
        <translation>%1 ↑</translation>
    </message>
    <message id="practice.day-opens">
        <source></source>
        <translation>A new day starts</translation>
    </message>
    <message id="practice.hint">
        <source></source>
        <translation>These settings travel with the practice folder.</translation>
    </message>
    <message id="practice.millis">
        <source></source>
        <translation>%1 ms</translation>
    </message>
    <message id="practice.pause">
        <source></source>
        <translation>Without a key press, pause and ask after</translation>
    </message>
    <message id="practice.pause.never">
        <source></source>
        <translation>never</translation>
    </message>
    <message id="practice.play-on">
        <source></source>
        <translation>Play on after a miss: the run goes on, and the tempo drops only once</translation>
    </message>
    <message id="practice.reaction">
        <source></source>
        <translation>Reaction time, from slip to key (a guess: set your own)</translation>
    </message>
    <message id="practice.read-only">
        <source></source>
        <translation>Another window is using this practice folder, so you cannot change this here.</translation>
    </message>
    <message id="practice.rest">
        <source></source>
        <translation>After a miss, breathe and read for at least</translation>
    </message>
    <message id="practice.rest.none">
        <source></source>
        <translation>no pause</translation>
    </message>
    <message id="practice.secure-days">
        <source></source>
        <translation>A passage is fully secure after being secure on</translation>
    </message>
    <message id="practice.title">
        <source></source>
        <translation>Practice</translation>
    </message>
    <message id="rest.note">
        <source></source>
        <translation>You have been playing for a good while: give your ears and lip a rest. If you feel pain, tingling or numbness, stop and see a professional.</translation>
    </message>
    <message id="rest.read">
        <source></source>
        <translation>Got it</translation>
    </message>
    <message id="rule.each">
        <source></source>
        <translation>a miss drops %1, each clean run climbs %2</translation>
    </message>
    <message id="rule.gentle">
        <source></source>
        <translatorcomment>the rule</translatorcomment>
        <translation>%1, gentle near the target</translation>
    </message>
    <message id="rule.notches" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n notch</numerusform>
            <numerusform>%n notches</numerusform>
        </translation>
    </message>
    <message id="rule.streak">
        <source></source>
        <translation>a miss drops %1, %2 clean in a row climb %3</translation>
    </message>
    <message id="run-through.about-bar">
        <source></source>
        <translation>about bar %1</translation>
    </message>
    <message id="run-through.bar-stops">
        <source></source>
        <translatorcomment>bar · stops</translatorcomment>
        <translation>%1 · %2</translation>
    </message>
    <message id="run-through.bar-unknown">
        <source></source>
        <translation>unknown</translation>
    </message>
    <message id="run-through.bars-guessed">
        <source></source>
        <translation>The clock guessed the bars. Correct them, and clear any that you do not know.</translation>
    </message>
    <message id="run-through.choose-piece">
        <source></source>
        <translation>Choose a piece first.</translation>
    </message>
    <message id="run-through.day-length">
        <source></source>
        <translatorcomment>day · length</translatorcomment>
        <translation>%1 · %2</translation>
    </message>
    <message id="run-through.discard">
        <source></source>
        <translation>Discard</translation>
    </message>
    <message id="run-through.earlier">
        <source></source>
        <translation>Run-throughs so far</translation>
    </message>
    <message id="run-through.fault.bar">
        <source></source>
        <translation>a bar number up to %1, or leave it empty</translation>
    </message>
    <message id="run-through.give-up">
        <source></source>
        <translation>Give up</translation>
    </message>
    <message id="run-through.hint">
        <source></source>
        <translation>Play the whole piece without the click. When you come to a stop, press the key and play on.</translation>
    </message>
    <message id="run-through.keep">
        <source></source>
        <translation>Save to log</translation>
    </message>
    <message id="run-through.last-note">
        <source></source>
        <translation>Last note</translation>
    </message>
    <message id="run-through.no-stop">
        <source></source>
        <translation>no stop</translation>
    </message>
    <message id="run-through.none">
        <source></source>
        <translation>None yet.</translation>
    </message>
    <message id="run-through.now">
        <source></source>
        <translation>Whole piece %1</translation>
    </message>
    <message id="run-through.now-review">
        <source></source>
        <translation>Whole piece: not saved yet</translation>
    </message>
    <message id="run-through.start">
        <source></source>
        <translation>Start</translation>
    </message>
    <message id="run-through.stop">
        <source></source>
        <translation>Mark a stop</translation>
    </message>
    <message id="run-through.stop-bar">
        <source></source>
        <translation>Stop at %1, bar</translation>
    </message>
    <message id="run-through.stops" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n stop</numerusform>
            <numerusform>%n stops</numerusform>
        </translation>
    </message>
    <message id="run-through.time-stops">
        <source></source>
        <translatorcomment>time · stops</translatorcomment>
        <translation>%1 · %2</translation>
    </message>
    <message id="run-through.title">
        <source></source>
        <translation>%1, from start to finish</translation>
    </message>
    <message id="run-through.unfinished">
        <source></source>
        <translation>%1, unfinished</translation>
    </message>
    <message id="scale.ending.comma">
        <source></source>
        <translation>, </translation>
    </message>
    <message id="scale.ending.over">
        <source></source>
        <translation>it goes %1 notes above the last tonic and comes back</translation>
    </message>
    <message id="scale.ending.over-one">
        <source></source>
        <translation>it goes one note above the last tonic and comes back</translation>
    </message>
    <message id="scale.ending.sentence">
        <source></source>
        <translation>To end on a beat, %1.</translation>
    </message>
    <message id="scale.ending.tonic-twice">
        <source></source>
        <translation>the last tonic is played twice</translation>
    </message>
    <message id="scale.ending.top-twice">
        <source></source>
        <translation>the top note is played twice</translation>
    </message>
    <message id="scale.ending.under">
        <source></source>
        <translation>it goes %1 notes below the last tonic and comes back</translation>
    </message>
    <message id="scale.ending.under-one">
        <source></source>
        <translation>it goes one note below the last tonic and comes back</translation>
    </message>
    <message id="scale.kind.altered">
        <source></source>
        <translation>Altered</translation>
    </message>
    <message id="scale.kind.altered.in">
        <source></source>
        <translation>%1 altered</translation>
    </message>
    <message id="scale.kind.augmented">
        <source></source>
        <translation>Augmented arpeggio</translation>
    </message>
    <message id="scale.kind.augmented.in">
        <source></source>
        <translation>%1 augmented arpeggio</translation>
    </message>
    <message id="scale.kind.bebop-dominant">
        <source></source>
        <translation>Bebop dominant</translation>
    </message>
    <message id="scale.kind.bebop-dominant.in">
        <source></source>
        <translation>%1 bebop dominant</translation>
    </message>
    <message id="scale.kind.bebop-major">
        <source></source>
        <translation>Bebop major</translation>
    </message>
    <message id="scale.kind.bebop-major.in">
        <source></source>
        <translation>%1 bebop major</translation>
    </message>
    <message id="scale.kind.bebop-minor">
        <source></source>
        <translation>Bebop minor</translation>
    </message>
    <message id="scale.kind.bebop-minor.in">
        <source></source>
        <translation>%1 bebop minor</translation>
    </message>
    <message id="scale.kind.blues">
        <source></source>
        <translation>Blues</translation>
    </message>
    <message id="scale.kind.blues.in">
        <source></source>
        <translation>%1 blues</translation>
    </message>
    <message id="scale.kind.chromatic">
        <source></source>
        <translation>Chromatic</translation>
    </message>
    <message id="scale.kind.chromatic.in">
        <source></source>
        <translation>chromatic from %1</translation>
    </message>
    <message id="scale.kind.diminished-half">
        <source></source>
        <translation>Diminished, half step first</translation>
    </message>
    <message id="scale.kind.diminished-half.in">
        <source></source>
        <translation>%1 diminished, half step first</translation>
    </message>
    <message id="scale.kind.diminished-seventh">
        <source></source>
        <translation>Diminished seventh arpeggio</translation>
    </message>
    <message id="scale.kind.diminished-seventh.in">
        <source></source>
        <translation>%1 diminished seventh arpeggio</translation>
    </message>
    <message id="scale.kind.diminished-whole">
        <source></source>
        <translation>Diminished, whole step first</translation>
    </message>
    <message id="scale.kind.diminished-whole.in">
        <source></source>
        <translation>%1 diminished, whole step first</translation>
    </message>
    <message id="scale.kind.dominant-seventh">
        <source></source>
        <translation>Dominant seventh arpeggio</translation>
    </message>
    <message id="scale.kind.dominant-seventh.in">
        <source></source>
        <translation>%1 dominant seventh arpeggio</translation>
    </message>
    <message id="scale.kind.dorian">
        <source></source>
        <translation>Dorian</translation>
    </message>
    <message id="scale.kind.dorian.in">
        <source></source>
        <translation>%1 dorian</translation>
    </message>
    <message id="scale.kind.half-diminished">
        <source></source>
        <translation>Half-diminished arpeggio</translation>
    </message>
    <message id="scale.kind.half-diminished.in">
        <source></source>
        <translation>%1 half-diminished arpeggio</translation>
    </message>
    <message id="scale.kind.harmonic-minor">
        <source></source>
        <translation>Harmonic minor</translation>
    </message>
    <message id="scale.kind.harmonic-minor.in">
        <source></source>
        <translation>%1 harmonic minor</translation>
    </message>
    <message id="scale.kind.jazz-minor">
        <source></source>
        <translation>Melodic minor, jazz</translation>
    </message>
    <message id="scale.kind.jazz-minor.in">
        <source></source>
        <translation>%1 jazz minor</translation>
    </message>
    <message id="scale.kind.locrian">
        <source></source>
        <translation>Locrian</translation>
    </message>
    <message id="scale.kind.locrian.in">
        <source></source>
        <translation>%1 locrian</translation>
    </message>
    <message id="scale.kind.lydian">
        <source></source>
        <translation>Lydian</translation>
    </message>
    <message id="scale.kind.lydian-dominant">
        <source></source>
        <translation>Lydian dominant</translation>
    </message>
    <message id="scale.kind.lydian-dominant.in">
        <source></source>
        <translation>%1 lydian dominant</translation>
    </message>
    <message id="scale.kind.lydian.in">
        <source></source>
        <translation>%1 lydian</translation>
    </message>
    <message id="scale.kind.major">
        <source></source>
        <translation>Major</translation>
    </message>
    <message id="scale.kind.major-arpeggio">
        <source></source>
        <translation>Major arpeggio</translation>
    </message>
    <message id="scale.kind.major-arpeggio.in">
        <source></source>
        <translation>%1 major arpeggio</translation>
    </message>
    <message id="scale.kind.major-pentatonic">
        <source></source>
        <translation>Major pentatonic</translation>
    </message>
    <message id="scale.kind.major-pentatonic.in">
        <source></source>
        <translation>%1 major pentatonic</translation>
    </message>
    <message id="scale.kind.major.in">
        <source></source>
        <translation>%1 major</translation>
    </message>
    <message id="scale.kind.melodic-minor">
        <source></source>
        <translation>Melodic minor, classical</translation>
    </message>
    <message id="scale.kind.melodic-minor.in">
        <source></source>
        <translation>%1 melodic minor</translation>
    </message>
    <message id="scale.kind.minor-arpeggio">
        <source></source>
        <translation>Minor arpeggio</translation>
    </message>
    <message id="scale.kind.minor-arpeggio.in">
        <source></source>
        <translation>%1 minor arpeggio</translation>
    </message>
    <message id="scale.kind.minor-pentatonic">
        <source></source>
        <translation>Minor pentatonic</translation>
    </message>
    <message id="scale.kind.minor-pentatonic.in">
        <source></source>
        <translation>%1 minor pentatonic</translation>
    </message>
    <message id="scale.kind.mixolydian">
        <source></source>
        <translation>Mixolydian</translation>
    </message>
    <message id="scale.kind.mixolydian.in">
        <source></source>
        <translation>%1 mixolydian</translation>
    </message>
    <message id="scale.kind.natural-minor">
        <source></source>
        <translation>Natural minor (aeolian)</translation>
    </message>
    <message id="scale.kind.natural-minor.in">
        <source></source>
        <translation>%1 natural minor</translation>
    </message>
    <message id="scale.kind.phrygian">
        <source></source>
        <translation>Phrygian</translation>
    </message>
    <message id="scale.kind.phrygian.in">
        <source></source>
        <translation>%1 phrygian</translation>
    </message>
    <message id="scale.kind.whole-tone">
        <source></source>
        <translation>Whole tone</translation>
    </message>
    <message id="scale.kind.whole-tone.in">
        <source></source>
        <translation>whole tone from %1</translation>
    </message>
    <message id="scale.order.fifths">
        <source></source>
        <translation>by fifths</translation>
    </message>
    <message id="scale.order.fourths">
        <source></source>
        <translation>by fourths</translation>
    </message>
    <message id="scale.order.random">
        <source></source>
        <translation>random</translation>
    </message>
    <message id="scale.order.semitones">
        <source></source>
        <translation>by semitones</translation>
    </message>
    <message id="scale.pattern.fourths">
        <source></source>
        <translation>In fourths</translation>
    </message>
    <message id="scale.pattern.fourths.in">
        <source></source>
        <translation>%1 in fourths</translation>
    </message>
    <message id="scale.pattern.in-order">
        <source></source>
        <translation>In order</translation>
    </message>
    <message id="scale.pattern.in-order.in">
        <source></source>
        <translation>%1</translation>
    </message>
    <message id="scale.pattern.thirds">
        <source></source>
        <translation>In thirds</translation>
    </message>
    <message id="scale.pattern.thirds.in">
        <source></source>
        <translation>%1 in thirds</translation>
    </message>
    <message id="scale.pattern.turns-of-four">
        <source></source>
        <translation>In turns of four</translation>
    </message>
    <message id="scale.pattern.turns-of-four.in">
        <source></source>
        <translation>%1 in turns of four</translation>
    </message>
    <message id="scale.pattern.turns-of-three">
        <source></source>
        <translation>In turns of three</translation>
    </message>
    <message id="scale.pattern.turns-of-three.in">
        <source></source>
        <translation>%1 in turns of three</translation>
    </message>
    <message id="scale.range.one-octave">
        <source></source>
        <translation>One octave</translation>
    </message>
    <message id="scale.range.one-octave.in">
        <source></source>
        <translation>one octave</translation>
    </message>
    <message id="scale.range.two-octaves">
        <source></source>
        <translation>Two octaves</translation>
    </message>
    <message id="scale.range.two-octaves.in">
        <source></source>
        <translation>two octaves</translation>
    </message>
    <message id="scale.range.whole">
        <source></source>
        <translation>The whole range</translation>
    </message>
    <message id="scale.range.whole.in">
        <source></source>
        <translation>the whole range</translation>
    </message>
    <message id="scale.signature.empty">
        <source></source>
        <translation>no sharps or flats</translation>
    </message>
    <message id="scale.signature.flats" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n flat</numerusform>
            <numerusform>%n flats</numerusform>
        </translation>
    </message>
    <message id="scale.signature.none">
        <source></source>
        <translation>no key signature: accidentals are written beside the notes</translation>
    </message>
    <message id="scale.signature.sharps" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n sharp</numerusform>
            <numerusform>%n sharps</numerusform>
        </translation>
    </message>
    <message id="scale.title">
        <source></source>
        <translatorcomment>a scale, its range, its subdivision</translatorcomment>
        <translation>%1, %2, %3</translation>
    </message>
    <message id="scales.altissimo">
        <source></source>
        <translation>Altissimo: it goes up to %1, and your highest note is %2. “The whole range” stays within your notes.</translation>
    </message>
    <message id="scales.cell">
        <source></source>
        <translatorcomment>a key, a subdivision</translatorcomment>
        <translation>%1, %2</translation>
    </message>
    <message id="scales.cell.below">
        <source></source>
        <translation>%1 · %2</translation>
    </message>
    <message id="scales.cell.days-short">
        <source></source>
        <translatorcomment>days since it was played</translatorcomment>
        <translation>%1 d</translation>
    </message>
    <message id="scales.cell.in-words">
        <source></source>
        <translation>Best %1, %2, played %3.</translation>
    </message>
    <message id="scales.cell.in-words-no-best">
        <source></source>
        <translation>No best yet: %1, played %2.</translation>
    </message>
    <message id="scales.cell.never">
        <source></source>
        <translation>not played yet</translation>
    </message>
    <message id="scales.cell.next">
        <source></source>
        <translation>next: %1</translation>
    </message>
    <message id="scales.cell.not-played">
        <source></source>
        <translation>%1: not played yet</translation>
    </message>
    <message id="scales.cell.secure">
        <source></source>
        <translation>✓ Secure at the target.</translation>
    </message>
    <message id="scales.cell.spoken">
        <source></source>
        <translation>%1: best %2, %3, played %4</translation>
    </message>
    <message id="scales.cell.spoken-no-best">
        <source></source>
        <translation>%1: no best yet (%2), %3, %4</translation>
    </message>
    <message id="scales.cell.streak">
        <source></source>
        <translatorcomment>streak of clean runs</translatorcomment>
        <translation>%1/%2</translation>
    </message>
    <message id="scales.cell.title">
        <source></source>
        <translatorcomment>a scale in a subdivision</translatorcomment>
        <translation>%1 in %2</translation>
    </message>
    <message id="scales.drill">
        <source></source>
        <translation>Drill it</translation>
    </message>
    <message id="scales.drill.key">
        <source></source>
        <translation>Return</translation>
    </message>
    <message id="scales.goes-on">
        <source></source>
        <translation>Continues at %1.</translation>
    </message>
    <message id="scales.grid">
        <source></source>
        <translation>Grid</translation>
    </message>
    <message id="scales.grid.spoken">
        <source></source>
        <translation>Twelve keys by seven subdivisions. The arrow keys select a cell, Return drills it.</translation>
    </message>
    <message id="scales.hear">
        <source></source>
        <translation>Hear it first</translation>
    </message>
    <message id="scales.instrument">
        <source></source>
        <translation>Instrument</translation>
    </message>
    <message id="scales.instrument.highest">
        <source></source>
        <translation>Highest note, as written</translation>
    </message>
    <message id="scales.instrument.hint">
        <source></source>
        <translation>Scales are written for this instrument, in its clef and range. The setting travels with the practice folder.</translation>
    </message>
    <message id="scales.instrument.lowest">
        <source></source>
        <translation>Lowest note, as written</translation>
    </message>
    <message id="scales.instrument.name">
        <source></source>
        <translation>Instrument</translation>
    </message>
    <message id="scales.instrument.octave-hint">
        <source></source>
        <translation>Octave 4 begins at middle C. If you have a high F♯ key, a low A, or notes above the usual range, set what you play.</translation>
    </message>
    <message id="scales.instrument.read-only">
        <source></source>
        <translation>Another window is using this practice folder, so you cannot change this here.</translation>
    </message>
    <message id="scales.instrument.redraw">
        <source></source>
        <translation>Shuffle the keys again</translation>
    </message>
    <message id="scales.instrument.title">
        <source></source>
        <translation>Your instrument</translation>
    </message>
    <message id="scales.instrument.to-grid">
        <source></source>
        <translation>Show grid</translation>
    </message>
    <message id="scales.key.sounds">
        <source></source>
        <translation>%1, sounds as %2</translation>
    </message>
    <message id="scales.keys">
        <source></source>
        <translation>Keys</translation>
    </message>
    <message id="scales.keys-hint">
        <source></source>
        <translation>Keys as written for the %1; the sounding key is below.</translation>
    </message>
    <message id="scales.kind">
        <source></source>
        <translation>Kind of scale</translation>
    </message>
    <message id="scales.next.first">
        <source></source>
        <translation>Next: the first key in the slowest notes.</translation>
    </message>
    <message id="scales.next.furthest">
        <source></source>
        <translation>Next: its best is furthest below the best of its row.</translation>
    </message>
    <message id="scales.next.never">
        <source></source>
        <translation>Next: the first cell not played yet; no other has waited a week.</translation>
    </message>
    <message id="scales.next.oldest">
        <source></source>
        <translation>Next: not played for %1, longer than any other.</translation>
    </message>
    <message id="scales.no-tonic">
        <source></source>
        <translation>Your range does not contain this tonic: choose another key, or widen your range.</translation>
    </message>
    <message id="scales.not-played">
        <source></source>
        <translation>Not played yet.</translation>
    </message>
    <message id="scales.notes">
        <source></source>
        <translation>%1 to the beat</translation>
    </message>
    <message id="scales.order">
        <source></source>
        <translation>Order of keys</translation>
    </message>
    <message id="scales.pattern">
        <source></source>
        <translation>Order of notes</translation>
    </message>
    <message id="scales.range">
        <source></source>
        <translation>Range</translation>
    </message>
    <message id="scales.range-of-notes">
        <source></source>
        <translation>Your range</translation>
    </message>
    <message id="scales.shown">
        <source></source>
        <translation>View</translation>
    </message>
    <message id="scales.starts-from">
        <source></source>
        <translation>Start at %1, two notches below your best in %2.</translation>
    </message>
    <message id="scales.starts-slow">
        <source></source>
        <translation>Start at %1, slow enough to make no mistakes.</translation>
    </message>
    <message id="scales.title">
        <source></source>
        <translation>Scales</translation>
    </message>
    <message id="scales.two-sentences">
        <source></source>
        <translatorcomment>two sentences</translatorcomment>
        <translation>%1 %2</translation>
    </message>
    <message id="scales.weeks">
        <source></source>
        <translation>Weeks</translation>
    </message>
    <message id="scales.weeks.cell">
        <source></source>
        <translation>%1, week of %2: %3</translation>
    </message>
    <message id="scales.weeks.hint">
        <source></source>
        <translation>Runs of each key, in all kinds and subdivisions for this instrument. A week begins on Monday.</translation>
    </message>
    <message id="scales.weeks.title">
        <source></source>
        <translation>Keys by week</translation>
    </message>
    <message id="scales.write">
        <source></source>
        <translation>Write as %1</translation>
    </message>
    <message id="score.bars">
        <source></source>
        <translation>bars %1 to %2</translation>
    </message>
    <message id="score.figures">
        <source></source>
        <translatorcomment>bars · meter · tempo · notes</translatorcomment>
        <translation>%1 · %2 · %3 · %4</translation>
    </message>
    <message id="score.file">
        <source></source>
        <translation>File</translation>
    </message>
    <message id="score.from-bar">
        <source></source>
        <translation>From bar</translation>
    </message>
    <message id="score.hint">
        <source></source>
        <translation>MusicXML (.musicxml, .xml, .mxl), as notation programs export it. Choose the file, type its path, or drop it here.</translation>
    </message>
    <message id="score.no-tempo">
        <source></source>
        <translation>no tempo mark</translation>
    </message>
    <message id="score.no-title">
        <source></source>
        <translation>(no title)</translation>
    </message>
    <message id="score.notes" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n note</numerusform>
            <numerusform>%n notes</numerusform>
        </translation>
    </message>
    <message id="score.part">
        <source></source>
        <translation>Part</translation>
    </message>
    <message id="score.part-number">
        <source></source>
        <translation>part %1</translation>
    </message>
    <message id="score.read">
        <source></source>
        <translation>Open</translation>
    </message>
    <message id="score.take">
        <source></source>
        <translation>Use these bars</translation>
    </message>
    <message id="score.title">
        <source></source>
        <translation>A passage from a score</translation>
    </message>
    <message id="score.title-composer">
        <source></source>
        <translatorcomment>title · composer</translatorcomment>
        <translation>%1 · %2</translation>
    </message>
    <message id="score.to-bar">
        <source></source>
        <translation>To bar</translation>
    </message>
    <message id="score.too-many-notes">
        <source></source>
        <translatorcomment>notes</translatorcomment>
        <translation>%1, too many to save</translation>
    </message>
    <message id="set.about">
        <source></source>
        <translation>Two to four passages, round and round, while your hands stay on the instrument. Short tones announce each one: one tone for the first, two for the second.</translation>
    </message>
    <message id="set.by-minutes">
        <source></source>
        <translation>Minutes</translation>
    </message>
    <message id="set.by-runs">
        <source></source>
        <translation>Runs</translation>
    </message>
    <message id="set.few">
        <source></source>
        <translation>Tick two to four passages, in the order in which you want to play them.</translation>
    </message>
    <message id="set.full">
        <source></source>
        <translation>Four at most: untick one first.</translation>
    </message>
    <message id="set.length">
        <source></source>
        <translation>How long each is played</translation>
    </message>
    <message id="set.minutes-each" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n minute each</numerusform>
            <numerusform>%n minutes each</numerusform>
        </translation>
    </message>
    <message id="set.no-run">
        <source></source>
        <translation>no run finished</translation>
    </message>
    <message id="set.picked">
        <source></source>
        <translation>%1, number %2</translation>
    </message>
    <message id="set.place">
        <source></source>
        <translation>%1 of %2</translation>
    </message>
    <message id="set.result">
        <source></source>
        <translation>%1 · tempo now %2</translation>
    </message>
    <message id="set.runs-each" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n run each</numerusform>
            <numerusform>%n runs each</numerusform>
        </translation>
    </message>
    <message id="set.title">
        <source></source>
        <translation>In turn</translation>
    </message>
    <message id="set.turn">
        <source></source>
        <translation>%1 · next: %2</translation>
    </message>
    <message id="set.turn-spoken">
        <source></source>
        <translation>Now %1: %2</translation>
    </message>
    <message id="settings.damaged">
        <source></source>
        <translation>Your settings were damaged and have been reset; the old file was kept. %1</translation>
    </message>
    <message id="settings.day-opening.as-left">
        <source></source>
        <translation>Where you left off</translation>
    </message>
    <message id="settings.day-opening.below">
        <source></source>
        <translation>Two rungs below the last full streak</translation>
    </message>
    <message id="settings.day-opening.start">
        <source></source>
        <translation>At the start tempo</translation>
    </message>
    <message id="settings.keys">
        <source></source>
        <translation>Your keys</translation>
    </message>
    <message id="settings.keys.hint">
        <source></source>
        <translation>Click a key below to remove it. Tab, Return on a button, the arrow keys in a list and Esc in a form work as in any other program; you cannot change them.</translation>
    </message>
    <message id="settings.language">
        <source></source>
        <translation>Language</translation>
    </message>
    <message id="settings.language.hint">
        <source></source>
        <translation>Text, numbers and dates on the screen. Files are the same in every language.</translation>
    </message>
    <message id="settings.language.system">
        <source></source>
        <translatorcomment>the language</translatorcomment>
        <translation>Use system setting</translation>
    </message>
    <message id="settings.looks">
        <source></source>
        <translation>Appearance</translation>
    </message>
    <message id="settings.looks.dark">
        <source></source>
        <translation>Dark</translation>
    </message>
    <message id="settings.looks.light">
        <source></source>
        <translation>Light</translation>
    </message>
    <message id="settings.looks.system">
        <source></source>
        <translation>Use system setting</translation>
    </message>
    <message id="settings.title">
        <source></source>
        <translation>Settings</translation>
    </message>
    <message id="settings.voice.dry">
        <source></source>
        <translation>Dry: short and plain</translation>
    </message>
    <message id="settings.voice.metal">
        <source></source>
        <translation>Metal: the sharpest</translation>
    </message>
    <message id="settings.voice.reed">
        <source></source>
        <translation>Reed: edgy</translation>
    </message>
    <message id="settings.voice.wood">
        <source></source>
        <translation>Wood: warm</translation>
    </message>
    <message id="sheet.continued">
        <source></source>
        <translation>%1, continued</translation>
    </message>
    <message id="sheet.day">
        <source></source>
        <translation>Day</translation>
    </message>
    <message id="sheet.gentle">
        <source></source>
        <translation>Near the target, a miss drops by one climb; at the target, only the second in a row drops.</translation>
    </message>
    <message id="sheet.how-to">
        <source></source>
        <translation>Climb from the bottom. Tick a circle for each clean run. For a miss, mark the box and rub out that rung&apos;s ticks.</translation>
    </message>
    <message id="sheet.misses">
        <source></source>
        <translation>misses</translation>
    </message>
    <message id="sheet.notes">
        <source></source>
        <translation>Notes</translation>
    </message>
    <message id="sheet.page">
        <source></source>
        <translation>page %1 of %2</translation>
    </message>
    <message id="sheet.rule">
        <source></source>
        <translation>The rule: %1.</translation>
    </message>
    <message id="sheet.target">
        <source></source>
        <translation>target</translation>
    </message>
    <message id="sheet.tempi">
        <source></source>
        <translation>%1 · %2</translation>
    </message>
    <message id="sheet.tempi-to-target">
        <source></source>
        <translation>%1, to %2 · %3</translation>
    </message>
    <message id="sound.delay">
        <source></source>
        <translation>For wireless headphones: delay the beat on the screen and the marks by</translation>
    </message>
    <message id="sound.dropouts">
        <source></source>
        <translation>The sound has dropped out %1 since you opened Piolo: the computer was too busy. Closing other programs helps.</translation>
    </message>
    <message id="sound.dropouts.once">
        <source></source>
        <translation>once</translation>
    </message>
    <message id="sound.dropouts.times">
        <source></source>
        <translation>%1 times</translation>
    </message>
    <message id="sound.layer.all">
        <source></source>
        <translation>Everything</translation>
    </message>
    <message id="sound.layer.beats">
        <source></source>
        <translation>Beats</translation>
    </message>
    <message id="sound.layer.count-in">
        <source></source>
        <translation>Count-in</translation>
    </message>
    <message id="sound.layer.cues">
        <source></source>
        <translation>Cues</translation>
    </message>
    <message id="sound.layer.downbeats">
        <source></source>
        <translation>Downbeats</translation>
    </message>
    <message id="sound.layer.groups">
        <source></source>
        <translation>Groups</translation>
    </message>
    <message id="sound.layer.notes">
        <source></source>
        <translation>Notes (hear it first)</translation>
    </message>
    <message id="sound.layer.subdivisions">
        <source></source>
        <translation>Subdivisions</translation>
    </message>
    <message id="sound.level.hint">
        <source></source>
        <translation>Set the volume where you play: start the click, go to your place and hold a long note as loud as usual. You should just hear the click. If you cannot, try a sharper voice before a higher volume. On headphones, start low and stay low.</translation>
    </message>
    <message id="sound.level.mute">
        <source></source>
        <translation>Mute</translation>
    </message>
    <message id="sound.level.mute.spoken">
        <source></source>
        <translation>%1, mute</translation>
    </message>
    <message id="sound.level.muted">
        <source></source>
        <translation>muted</translation>
    </message>
    <message id="sound.level.spoken">
        <source></source>
        <translation>%1, level</translation>
    </message>
    <message id="sound.more">
        <source></source>
        <translation>More: levels of beats, count-in and cues</translation>
    </message>
    <message id="sound.output">
        <source></source>
        <translation>Sound output</translation>
    </message>
    <message id="sound.output.system">
        <source></source>
        <translation>System default</translation>
    </message>
    <message id="sound.output.unplugged">
        <source></source>
        <translation>%1 (not connected)</translation>
    </message>
    <message id="sound.title">
        <source></source>
        <translation>Sound</translation>
    </message>
    <message id="sound.voice">
        <source></source>
        <translation>Click voice</translation>
    </message>
    <message id="sound.volume">
        <source></source>
        <translation>Volume</translation>
    </message>
    <message id="staff.bass">
        <source></source>
        <translation>bass clef</translation>
    </message>
    <message id="staff.double-flat">
        <source></source>
        <translatorcomment>after a letter</translatorcomment>
        <translation> double flat</translation>
    </message>
    <message id="staff.double-sharp">
        <source></source>
        <translatorcomment>after a letter</translatorcomment>
        <translation> double sharp</translation>
    </message>
    <message id="staff.flat">
        <source></source>
        <translatorcomment>after a letter</translatorcomment>
        <translation> flat</translation>
    </message>
    <message id="staff.notes" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n note</numerusform>
            <numerusform>%n notes</numerusform>
        </translation>
    </message>
    <message id="staff.sharp">
        <source></source>
        <translatorcomment>after a letter</translatorcomment>
        <translation> sharp</translation>
    </message>
    <message id="staff.spoken">
        <source></source>
        <translatorcomment>bars, notes, lowest, highest, signature, clef</translatorcomment>
        <translation>Staff: %1, %2 from %3 to %4, %5, %6</translation>
    </message>
    <message id="staff.treble">
        <source></source>
        <translation>treble clef</translation>
    </message>
    <message id="stage.in-context">
        <source></source>
        <translation>in context</translation>
    </message>
    <message id="stage.next">
        <source></source>
        <translation>Next stage: %1</translation>
    </message>
    <message id="stage.run-throughs">
        <source></source>
        <translation>in run-throughs</translation>
    </message>
    <message id="stage.secure">
        <source></source>
        <translation>secure at the target</translation>
    </message>
    <message id="stage.slow">
        <source></source>
        <translation>slow with the click</translation>
    </message>
    <message id="stage.standing.full-streak">
        <source></source>
        <translation>You had a full streak at the target.</translation>
    </message>
    <message id="stage.standing.in-context">
        <source></source>
        <translation>Clean in a row in context, on one day: %1 of %2.</translation>
    </message>
    <message id="stage.standing.next-full-streak">
        <source></source>
        <translation>Next: a full streak at the target.</translation>
    </message>
    <message id="stage.standing.run-throughs">
        <source></source>
        <translation>Run-throughs in a row without a stop here: %1 of %2.</translation>
    </message>
    <message id="stage.standing.secure" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Secure at the target on %1 of %n day.</numerusform>
            <numerusform>Secure at the target on %1 of %n days.</numerusform>
        </translation>
    </message>
    <message id="stage.standing.without-click">
        <source></source>
        <translation>Clean in a row without the click, on one day: %1 of %2.</translation>
    </message>
    <message id="stage.title">
        <source></source>
        <translation>Stage</translation>
    </message>
    <message id="stage.without-click">
        <source></source>
        <translation>without the click</translation>
    </message>
    <message id="start.close">
        <source></source>
        <translation>Close</translation>
    </message>
    <message id="start.failed">
        <source></source>
        <translation>Piolo cannot start</translation>
    </message>
    <message id="subdivision.dotted-halves">
        <source></source>
        <translation>dotted halves</translation>
    </message>
    <message id="subdivision.dotted-quarters">
        <source></source>
        <translation>dotted quarters</translation>
    </message>
    <message id="subdivision.duplets">
        <source></source>
        <translation>duplets</translation>
    </message>
    <message id="subdivision.eighth-triplets">
        <source></source>
        <translation>eighth triplets</translation>
    </message>
    <message id="subdivision.eighths">
        <source></source>
        <translation>eighths</translation>
    </message>
    <message id="subdivision.halves">
        <source></source>
        <translation>halves</translation>
    </message>
    <message id="subdivision.quadruplets">
        <source></source>
        <translation>quadruplets</translation>
    </message>
    <message id="subdivision.quarter-triplets">
        <source></source>
        <translation>quarter triplets</translation>
    </message>
    <message id="subdivision.quarters">
        <source></source>
        <translation>quarters</translation>
    </message>
    <message id="subdivision.quintuplets">
        <source></source>
        <translation>quintuplets</translation>
    </message>
    <message id="subdivision.septuplets">
        <source></source>
        <translation>septuplets</translation>
    </message>
    <message id="subdivision.sextuplets">
        <source></source>
        <translation>sextuplets</translation>
    </message>
    <message id="subdivision.sixteenth-triplets">
        <source></source>
        <translation>sixteenth triplets</translation>
    </message>
    <message id="subdivision.sixteenths">
        <source></source>
        <translation>sixteenths</translation>
    </message>
    <message id="subdivision.thirty-seconds">
        <source></source>
        <translation>thirty-seconds</translation>
    </message>
    <message id="subdivision.to-the-beat">
        <source></source>
        <translation>%1 to the beat</translation>
    </message>
    <message id="subdivision.triplets">
        <source></source>
        <translation>triplets</translation>
    </message>
    <message id="switch.bounce">
        <source></source>
        <translation>Ignore a second contact within</translation>
    </message>
    <message id="switch.held">
        <source></source>
        <translation>Counts as held after</translation>
    </message>
    <message id="switch.hint">
        <source></source>
        <translation>Most pedals act as a keyboard. Choose what yours sends, and your keys are set to match; MIDI switches stay as they are.</translation>
    </message>
    <message id="switch.millis">
        <source></source>
        <translation>%1 ms</translation>
    </message>
    <message id="switch.one-pedal">
        <source></source>
        <translation>A single pedal can do everything: one press starts or marks a miss, two presses take back the last mark; hold it to stop the click or, while stopped, to open the next passage.</translation>
    </message>
    <message id="switch.press">
        <source></source>
        <translation>Press it now (Esc to cancel)</translation>
    </message>
    <message id="switch.sends">
        <source></source>
        <translation>What the pedal sends</translation>
    </message>
    <message id="switch.title">
        <source></source>
        <translation>Pedals and switches</translation>
    </message>
    <message id="switch.twice">
        <source></source>
        <translation>Counts as two presses within</translation>
    </message>
    <message id="switch.use-midi">
        <source></source>
        <translation>Use one MIDI switch for everything</translation>
    </message>
    <message id="switch.use-pedal">
        <source></source>
        <translation>Use one pedal for everything</translation>
    </message>
    <message id="taken-back.clean">
        <source></source>
        <translation>clean run at %1</translation>
    </message>
    <message id="taken-back.doubt" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n run that was not clean</numerusform>
            <numerusform>%n runs that were not clean</numerusform>
        </translation>
    </message>
    <message id="taken-back.late">
        <source></source>
        <translation>miss after the run at %1</translation>
    </message>
    <message id="taken-back.line">
        <source></source>
        <translation>Taken back: %1</translation>
    </message>
    <message id="taken-back.mark">
        <source></source>
        <translation>changed mark of the run at %1</translation>
    </message>
    <message id="taken-back.missed">
        <source></source>
        <translation>miss at %1</translation>
    </message>
    <message id="taken-back.missed-in">
        <source></source>
        <translation>miss at %1, %2</translation>
    </message>
    <message id="taken-back.put-back">
        <source></source>
        <translation>Put it back</translation>
    </message>
    <message id="taken-back.run-through">
        <source></source>
        <translation>run-through</translation>
    </message>
    <message id="taken-back.tempo">
        <source></source>
        <translation>tempo %1</translation>
    </message>
    <message id="taken-back.void">
        <source></source>
        <translation>run at %1 that did not count</translation>
    </message>
    <message id="today.unsaved" numerus="yes">
        <source></source>
        <translatorcomment>marks</translatorcomment>
        <translation>
            <numerusform>%n not saved yet</numerusform>
            <numerusform>%n not saved yet</numerusform>
        </translation>
    </message>
    <message id="welcome.bars">
        <source></source>
        <translation>Number of bars</translation>
    </message>
    <message id="welcome.drill">
        <source></source>
        <translation>Start drilling</translation>
    </message>
    <message id="welcome.first-bar">
        <source></source>
        <translation>First bar</translation>
    </message>
    <message id="welcome.hint">
        <source></source>
        <translation>Enter the bars that go wrong, and a start tempo at which nothing does. The rest has sensible defaults; you can change it later.</translation>
    </message>
    <message id="welcome.meter">
        <source></source>
        <translation>Meter</translation>
    </message>
    <message id="welcome.name">
        <source></source>
        <translation>Name</translation>
    </message>
    <message id="welcome.other-ways">
        <source></source>
        <translation>Other ways to begin</translation>
    </message>
    <message id="welcome.passage">
        <source></source>
        <translation>The passage</translation>
    </message>
    <message id="welcome.start">
        <source></source>
        <translation>Start at</translation>
    </message>
    <message id="welcome.subdivision">
        <source></source>
        <translation>Subdivision</translation>
    </message>
    <message id="welcome.target">
        <source></source>
        <translation>Target</translation>
    </message>
    <message id="welcome.title">
        <source></source>
        <translation>Your first passage</translation>
    </message>
    <message id="window.name">
        <source></source>
        <translation>Piolo</translation>
    </message>
    <message id="window.title">
        <source></source>
        <translation>%1 – Piolo</translation>
    </message>
    <message id="words.bar">
        <source></source>
        <translation>bar %1</translation>
    </message>
    <message id="words.bar-beat">
        <source></source>
        <translatorcomment>bar 43, beat 3</translatorcomment>
        <translation>%1, beat %2</translation>
    </message>
    <message id="words.bars">
        <source></source>
        <translation>bars %1–%2</translation>
    </message>
    <message id="words.date">
        <source></source>
        <translatorcomment>a date of this year</translatorcomment>
        <translation>d MMMM</translation>
    </message>
    <message id="words.date-with-year">
        <source></source>
        <translatorcomment>a date of another year</translatorcomment>
        <translation>d MMMM yyyy</translation>
    </message>
    <message id="words.days" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message id="words.days-ago" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n day ago</numerusform>
            <numerusform>%n days ago</numerusform>
        </translation>
    </message>
    <message id="words.from-bar">
        <source></source>
        <translation>from bar %1</translation>
    </message>
    <message id="words.hours">
        <source></source>
        <translation>%1 h</translation>
    </message>
    <message id="words.hours-minutes">
        <source></source>
        <translation>%1 h %2 min</translation>
    </message>
    <message id="words.in-a-row">
        <source></source>
        <translation>%1 of %2 clean in a row</translation>
    </message>
    <message id="words.in-days" numerus="yes">
        <source></source>
        <translation>
            <numerusform>in %n day</numerusform>
            <numerusform>in %n days</numerusform>
        </translation>
    </message>
    <message id="words.in-one-line">
        <source></source>
        <translation>%1 · %2</translation>
    </message>
    <message id="words.millis">
        <source></source>
        <translation>%1 ms</translation>
    </message>
    <message id="words.minutes">
        <source></source>
        <translation>%1 min</translation>
    </message>
    <message id="words.minutes-seconds">
        <source></source>
        <translation>%1 min %2 s</translation>
    </message>
    <message id="words.of-hundred">
        <source></source>
        <translation>%1%</translation>
    </message>
    <message id="words.passages" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n passage</numerusform>
            <numerusform>%n passages</numerusform>
        </translation>
    </message>
    <message id="words.runs" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
    <message id="words.seconds">
        <source></source>
        <translation>%1 s</translation>
    </message>
    <message id="words.tempo-line">
        <source></source>
        <translatorcomment>tempo mark · subdivision</translatorcomment>
        <translation>%1 · %2</translation>
    </message>
    <message id="words.time">
        <source></source>
        <translatorcomment>a time</translatorcomment>
        <translation>HH:mm</translation>
    </message>
    <message id="words.today">
        <source></source>
        <translation>today</translation>
    </message>
    <message id="words.tomorrow">
        <source></source>
        <translation>tomorrow</translation>
    </message>
    <message id="words.weekday-date">
        <source></source>
        <translatorcomment>day of the week, date</translatorcomment>
        <translation>%1, %2</translation>
    </message>
    <message id="words.yesterday">
        <source></source>
        <translation>yesterday</translation>
    </message>
</context>
</TS>
