<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>BeatRow</name>
    <message numerus="yes">
        <source>%n beats in the bar</source>
        <translation>
            <numerusform>%n beat in the bar</numerusform>
            <numerusform>%n beats in the bar</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LogMisses</name>
    <message numerus="yes">
        <source>%n misses</source>
        <translation>
            <numerusform>%n miss</numerusform>
            <numerusform>%n misses</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PassageRow</name>
    <message numerus="yes">
        <source>secure on %n days</source>
        <translation>
            <numerusform>secure on %n day</numerusform>
            <numerusform>secure on %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>secure on %1 of %n days</source>
        <translation>
            <numerusform>secure on %1 of %n day</numerusform>
            <numerusform>secure on %1 of %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PausePanel</name>
    <message numerus="yes">
        <source>%n runs went by without a key. If you were not listening to every note, say no: they count for nothing and their climbs are taken back.</source>
        <translation>
            <numerusform>%n run went by without a key. If you were not listening to every note, say no: it counts for nothing and its climb is taken back.</numerusform>
            <numerusform>%n runs went by without a key. If you were not listening to every note, say no: they count for nothing and their climbs are taken back.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Scale</name>
    <message numerus="yes">
        <source>%n flats</source>
        <translation>
            <numerusform>%n flat</numerusform>
            <numerusform>%n flats</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sharps</source>
        <translation>
            <numerusform>%n sharp</numerusform>
            <numerusform>%n sharps</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TodayCard</name>
    <message numerus="yes">
        <source>%n not saved yet</source>
        <comment>marks</comment>
        <translation>
            <numerusform>%n not saved yet</numerusform>
            <numerusform>%n not saved yet</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>piolo::models::Formatter</name>
    <message numerus="yes">
        <source>%n notches</source>
        <translation>
            <numerusform>%n notch</numerusform>
            <numerusform>%n notches</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in %n days</source>
        <translation>
            <numerusform>in %n day</numerusform>
            <numerusform>in %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>%n day ago</numerusform>
            <numerusform>%n days ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n passages</source>
        <translation>
            <numerusform>%n passage</numerusform>
            <numerusform>%n passages</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>piolo::models::StageFigures</name>
    <message numerus="yes">
        <source>Secure at the target on %1 of %n days.</source>
        <translation>
            <numerusform>Secure at the target on %1 of %n day.</numerusform>
            <numerusform>Secure at the target on %1 of %n days.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>piolo::models::TodayFigures</name>
    <message numerus="yes">
        <source>yes, on %n days</source>
        <translation>
            <numerusform>yes, on %n day</numerusform>
            <numerusform>yes, on %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>on %1 of %n days</source>
        <translation>
            <numerusform>on %1 of %n day</numerusform>
            <numerusform>on %1 of %n days</numerusform>
        </translation>
    </message>
</context>
</TS>
