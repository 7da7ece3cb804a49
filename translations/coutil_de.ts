<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AskUser</name>
    <message>
        <source>Folios (*.coutil)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This folio has unsaved changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folio of %1 has unsaved changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save them before it is closed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close without saving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a folio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the folio</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottomEdgePart</name>
    <message>
        <source>Shape of the bottom edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pointed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dipped over the hip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge at the centre front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge at the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge at the centre back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClosurePart</name>
    <message>
        <source>%1, %2 in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Panels a half</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Busk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lacing gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number of panels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front closure</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DemoSinger</name>
    <message>
        <source>Leonore, soprano</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An invented singer to try things with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corset for act two</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DraftBench</name>
    <message>
        <source>Problems</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Panels and closures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Girths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge, up from the waist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge, down from the waist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pencil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No garment on the table. Open the demo singer, start a new client or open a folio.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to draft yet. The Measure bench (key 1) asks for the measurements that are still missing.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EstimateList</name>
    <message>
        <source>%1 about %2 ± %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything was measured.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FolioFiles</name>
    <message>
        <source>Saved as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recovered as it was at the last change. Save it to keep it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>client</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FrontPartsPart</name>
    <message>
        <source>Part of seam %1 taken from the panel in front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split of seam %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Garment</name>
    <message>
        <source>Corset</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GarmentLine</name>
    <message>
        <source>Name of the garment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Client without a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no garment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Garment: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose, add or rename a garment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New garment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Rename garment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New garment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename garment to %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GirthTable</name>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laced this tightly: stop at pain, numbness or short breath. Not when pregnant, after surgery, with hernia, reflux, lung or heart trouble, an implanted device, or still growing; ask a doctor. Not for sleep or exercise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ease at the level %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The waist is taken in by %1, %2 % of the body.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The waist has %1 of ease, %2 % of the body.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JobLine</name>
    <message>
        <source>Unit of lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The unit that lengths are shown in and typed in when none is named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lengths in %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KeySheet</name>
    <message>
        <source>Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 2 3 4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure, Draft, Trace, Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt 1 to Alt 4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same while typing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next field, next part of the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F1 or ?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new client</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open a folio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save under another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one step of the unit: 1 mm, 1/16 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift, Alt with them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ten times, a tenth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back to what stood there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter, Tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>12 + 3/8 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sums, fractions and units may be typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fit everything in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+ and -</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zoom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zoom about the pointer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space or middle drag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next panel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next edge of the panel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let go</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LengthField</name>
    <message>
        <source>was %1 %2</source>
        <comment>a figure with its unit</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LevelGapsPart</name>
    <message>
        <source>Lacing gap at the level %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Unsaved work was found: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New client</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>position: across, up</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MeasureBench</name>
    <message>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the reading; up and down change it by a step, Enter goes on to the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the tape goes: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usually %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MeasureHead</name>
    <message>
        <source>without a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a name or a label of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who held the tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A copy of these measurements, taken today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New measurement set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Client</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draft from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measurement set the garment is drafted from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note of the measurements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Client %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draft from the measurements of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken on %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MeasureScene</name>
    <message>
        <source>pencil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The panels draw themselves once the needed readings are there</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MeasurementGroups</name>
    <message>
        <source>Girths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights from the waist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widths and lengths</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MeasurementRow</name>
    <message>
        <source>estimated ± %1, the average</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated ± %1, from %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one of two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MeasurementWords</name>
    <message>
        <source>Bust girth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under-bust girth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper chest girth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waist girth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top hip girth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hip girth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neck base girth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoulder length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across back width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across front width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scye depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back neck to waist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front neck to waist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side neck to bust point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side neck over bust to waist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bust point width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side waist to hip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper arm girth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front bust arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waist to under-bust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waist to bust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waist to armpit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waist to high hip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waist to hip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waist to lap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape level around the fullest part of the bust, over the bra she will wear or none. Easy, not tight; let her breathe out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape level around the ribs right under the breasts, snug, at the end of a breath out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape under the arms and over the top of the breasts, level at the back. Arms hang down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tie a string around the narrowest place and let it settle; measure along it, snug but not laced in. Leave the string on for the heights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape level around the top of the hip bones, over the belly. Note how far below the waist string it lies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape level around the fullest part of hips and seat, feet together. Note how far below the waist string it lies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape around the root of the neck: over the bone at the back, past both sides, through the hollow in front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the side of the neck, where a necklace lies, along the shoulder to its outer bone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight across the back from arm crease to arm crease, halfway between shoulder and armpit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight across the front from arm crease to arm crease, halfway between shoulder and armpit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down the middle of the back, from the bone at the neck to a tape held level under the arms.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down the middle of the back, from the bone at the neck to the waist string, following the hollow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down the middle of the front, from the hollow of the neck to the waist string, laid flat between the breasts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the side of the neck straight down to the bust point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the side of the neck over the bust point and on to the waist string, close under the breast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight across from one bust point to the other, without dipping between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down the side over the curve of the hip, from the waist string to the level of the hip girth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Around the fullest part of the upper arm, arm hanging, muscle at ease.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standing straight without shoes, back to a wall, from the floor to the top of the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the fullest part of the bust, from side seam to side seam: the front&apos;s part of the bust girth. Agree first where the side seams run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the front, straight up from the waist string to the crease under the breast. Measure the height, not along a curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight up from the waist string to the height of the bust point: hold a ruler upright beside her.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the side, straight up from the waist string to a pencil held level under the arm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the side, straight down from the waist string to where the top hip girth was taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the side, straight down from the waist string to where the hip girth was taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seated upright on a hard chair: from the waist string down the front to the lap. The corset&apos;s front must not be longer.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MessageBar</name>
    <message>
        <source>Close this message</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MorePart</name>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 % is the panel&apos;s usual width; the others give way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What each seam takes in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shares of the suppression in per cent. Change one and the others of its row follow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken from the panel in front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rest of the seam&apos;s share comes from the panel behind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights at single seams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the seam from the waist mark: up for the top, down for the bottom edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lacing gap at single levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave empty for an even gap. An uneven gap hides a wrong girth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights over the waist; below it with a minus.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OwnLevelsPart</name>
    <message>
        <source>Add a level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of own level %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of a level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height of own level %1 over the waist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height of a level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove own level %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove a level</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PanelSharesPart</name>
    <message>
        <source>Front&apos;s share of the width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front&apos;s share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the width, where the front bust arc was not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative width of panel %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: </source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PickedFigures</name>
    <message>
        <source>Click a panel, or press Tab on the table, for its figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picked panel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Panel %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Area</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProblemLine</name>
    <message>
        <source>Error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProblemList</name>
    <message>
        <source>No problems.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProblemSentence</name>
    <message>
        <source>[{subject}: ]“{text}” is not a length; write it like 96, 37 3/4 in or 32.5 cm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>[{subject}: ]{text} is less than nothing; write a length without a minus sign.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>[{subject}: ]“{text}” is far longer than anything that can be sewn; check the figure and its unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>[Panel {panel}: ]the allowance swallows a corner of the sewing line[ ({value:fine})]; give this edge a narrower allowance or make the panel wider there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>[Panel {panel}: ]the cutting line comes nearer to the sewing line than asked[ ({value:fine} instead of {limit:fine})]; change the allowance of this edge or smooth the line there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>[Panel {panel}: ]the cutting line lies farther from the sewing line than asked[ ({value:fine} instead of {limit:fine})]; change the allowance of this edge or smooth the line there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>[Panel {panel}: ]the outline has a gap; draw the lines there until they meet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>[Panel {panel}: ]the outline crosses itself; take less in here, or give the panel more width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject} is missing[ (or {detail} in its place)]; measure it and type it in, nothing can be drafted without it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject} cannot be {value}: bodies lie between {lowest} and {highest}; check the figure and its unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject} of {value} is unusual:[ going by {detail},] {expected} give or take {spread} is expected; measure again, or keep it if it is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject} of {value} is rare: it usually lies between {lowest} and {highest}; measure again, or keep it if it is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject} ({value}) does not agree with {detail} ({other}): it should be more than {lowest}; measure both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject} ({value}) does not agree with {detail} ({other}): it should be less than {highest}; measure both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path}: there is no measurement of this name[; did you mean “{text}”?]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject} is {value}, but must be {lowest}; change it in the style.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject}[ is {value}][, but must lie between {lowest} and {highest}]; change it in the style.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject}: “{text}” cannot be used here; name seams and edges as this block has them, and every level of your own once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>[Panel {panel} ]is too narrow at {subject}[: {value} where {limit} is the least]; use fewer panels, less reduction, or a smaller lacing gap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The levels {subject} and {detail} lie too close together or in the wrong order[ ({value} apart, at least {limit} needed)]; measure their heights again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject}[ at {detail}] cannot end {value} from the waist[: between {lowest} and {highest} is possible]; change this height in the style.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The waist is reduced by {value}[ ({percent})], for practised wearers only[ above {limit}]: reduce less, or lace with care and stop at pain, numbness or short breath.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The girth at {subject}[ is {value:fine} on the pattern instead of {target:fine}]; look at the seams there and correct them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seam {subject}: the two edges differ in length[ by {difference:fine}][ ({value:fine} and {other:fine})]; correct one of them so that they can be sewn together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>[The {detail} ]is not one smooth line across seam {subject}[ but bends by {value}]; smooth it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no paper called “{detail}”; choose A4, A3, A0, Letter, Legal, Tabloid or a roll, or write a size in mm like 200x300.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The paper[ {detail}] leaves too little room inside its margins[: {value}, and at least {limit} is needed]; choose a larger paper or smaller margins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{subject} is {value}[, but must lie between {lowest} and {highest}]; change it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This would take {value} sheets[ of {detail}], more than {limit}; choose a larger paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path}: there is no such file; check the name and the folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path}: the file cannot be read[ ({text})]; check that you may open it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path}: nothing can be written here[ ({text})]; choose another folder or name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path}: this is not a folio of Coutil; open a file that ends in .coutil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path}: the folio is damaged[ ({text})]; nothing was changed, use your last copy of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path}: a newer version of Coutil wrote this folio[ (format {file}, this program reads up to {program})]; update the program to open it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path}: there is no room left on the disk; nothing was changed, make room and save again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folio has no garment called “{path}”[; it has {text}].</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The garment has no revision “{path}”[; it has {text}].</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path}: “{text}” is not a date; write it as year-month-day, like 2026-03-02.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text is no valid JSON[ from line {line}, column {column} on]; look there for a missing or extra comma, quote or bracket, or a number too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text is larger or nested deeper than anything this program writes ({path} {value}, at most {highest}); check that it is the right file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} stands twice in the text; remove one of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is missing; add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not a file of the kind “{text}”; choose another file, or add the entries &quot;coutil&quot;: &quot;{text}&quot; and &quot;version&quot;: 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version[ is {text} and] must be 1; write the file in that format, or update the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path}: there is no such key[; did you mean “{text}”?]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} cannot be “{text}”; correct the value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a text in quotes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is {text}, but must be true or false, without quotes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a number without quotes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a list of numbers, with commas, in square brackets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a number, or a length in quotes like &quot;30 1/4 in&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is {text}, but must be names with values in braces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a list of entries in braces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} must be one of these, in quotes: {text}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no call “{subject}”[; did you mean “{detail}”?] coutil --help lists them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The call {subject} needs {detail}; coutil --help shows how.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no option “{subject}”[ for {detail}]; coutil --help lists the options.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Option {subject} cannot be “{detail}”[: it must lie between {lowest} and {highest}]; coutil --help shows what it takes.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Recovery</name>
    <message>
        <source>Client without a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, never saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, from %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SeamSharesPart</name>
    <message>
        <source>Share of seam %1 at the level %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of seam %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShareField</name>
    <message>
        <source> %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Sheets</name>
    <message>
        <source>If a side is off, type the correction into the program and print this page again: correction = 100 divided by what you measured in mm (99.5 measured: %1). One figure goes across the short side of the paper, one along its long side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This page was made with corrections %1 (across) and %2 (along). If it is still off, multiply these by the new figure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated, not measured; measure before cutting good cloth:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, likely within %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure this page first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print at 100 % (actual size), never fit to page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print this page alone first. Measure the square with a ruler in both directions, across and upwards: each side must be 100 mm, give or take half a millimetre. Or measure both bars: 4 in. Print the rest only when both directions are right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Joining: cut off the left and the upper edge of a sheet along its frame wherever it has a neighbour there. Lay it on the neighbour&apos;s dashed line so that crosses meet and the two halves of each numbered mark make one. Tape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet map, %1 sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pencil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>revision %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one mirrored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mirrored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>panel %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sew a mock-up from these sheets before cutting good cloth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pencil: this state is not confirmed and may still change.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SingleHeightsPart</name>
    <message>
        <source>Top edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seam %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge at seam %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge at seam %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SliderLengthField</name>
    <message>
        <source>%1, slider</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StartScreen</name>
    <message>
        <source>Drafts boned bodices and corsets to measure and prints them true to scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a new client</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type her measurements; the panels draw themselves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a folio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A client&apos;s file, or drop one here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the demo singer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An invented soprano of an operetta, to look around</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program ended before it could be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recover %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stays where it is; the File menu finds it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recent folios</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folios that you open or save will stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the list of recent folios</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StatusLine</name>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>problems %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n problem(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StylePart</name>
    <message>
        <source>Shape</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StyleWords</name>
    <message>
        <source>Block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Panels per half</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lacing gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lacing gap by level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge at centre front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge at the bust seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge at the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge at centre back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge at centre front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge at the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom edge at centre back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front&apos;s share of the width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Panel widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shares of the seams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part taken from the panel in front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Levels of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seam allowance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowance at the openings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowance at top and bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowance of one edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height at a seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n panel(s) on the table</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Table, panel %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table, sheet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click picks, wheel zooms, space and drag moves the table, F shows all</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TopEdgePart</name>
    <message>
        <source>Shape of the top edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweetheart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pointed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge at the centre front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bust seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge at the bust seam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge at the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top edge at the centre back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TradeWords</name>
    <message>
        <source>upper chest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under-bust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high hip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seam %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in</source>
        <comment>inch</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WindowMenus</name>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Folio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New client</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Unsaved work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the &amp;demo singer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;garment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;name garment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fit everything in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Wheel pans instead of zooming</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;System</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Clear this list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None was found</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>coutil</name>
    <message>
        <source>panel %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 on %3, %4 on %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seam %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above the waist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below the waist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above the waist: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below the waist: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level %1, %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pattern: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lacing gap in it: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sq in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width at %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>area %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
