<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>FolioText</name>
    <message numerus="yes">
        <source>fitting of the pencil, %n mark(s)</source>
        <translation>
            <numerusform>fitting of the pencil, %n mark</numerusform>
            <numerusform>fitting of the pencil, %n marks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>fitting of revision %1, %n mark(s)</source>
        <translation>
            <numerusform>fitting of revision %1, %n mark</numerusform>
            <numerusform>fitting of revision %1, %n marks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n alteration(s)</source>
        <translation>
            <numerusform>, %n alteration</numerusform>
            <numerusform>, %n alterations</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TimelineWords</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s)</source>
        <translation>
            <numerusform>%n mark</numerusform>
            <numerusform>%n marks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coutil::CutList</name>
    <message numerus="yes">
        <source>%n piece(s) in all</source>
        <translation>
            <numerusform>%n piece in all</numerusform>
            <numerusform>%n pieces in all</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coutil::PrintBench</name>
    <message numerus="yes">
        <source>Looking for fewer sheets: %n so far</source>
        <translation>
            <numerusform>Looking for fewer sheets: %n so far</numerusform>
            <numerusform>Looking for fewer sheets: %n so far</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of %1 and the first page</source>
        <translation>
            <numerusform>%n sheet of %1 and the first page</numerusform>
            <numerusform>%n sheets of %1 and the first page</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>; %n saved by the search</source>
        <translation>
            <numerusform>; %n saved by the search</numerusform>
            <numerusform>; %n saved by the search</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of %1</source>
        <translation>
            <numerusform>%n sheet of %1</numerusform>
            <numerusform>%n sheets of %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coutil::SheetMap</name>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n sheet</numerusform>
            <numerusform>%n sheets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coutil::StatusLine</name>
    <message numerus="yes">
        <source>%n problem(s)</source>
        <translation>
            <numerusform>%n problem</numerusform>
            <numerusform>%n problems</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coutil::Table</name>
    <message numerus="yes">
        <source>%n panel(s) on the table</source>
        <translation>
            <numerusform>%n panel on the table</numerusform>
            <numerusform>%n panels on the table</numerusform>
        </translation>
    </message>
</context>
</TS>
