<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
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
