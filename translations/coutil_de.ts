<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AlterationPlaces</name>
    <message>
        <source>at the %1</source>
        <comment>level</comment>
        <translation>auf Höhe %1</translation>
    </message>
    <message>
        <source>at %1</source>
        <comment>level of the maker&apos;s own</comment>
        <translation>auf Höhe %1</translation>
    </message>
    <message>
        <source>the waist</source>
        <comment>seam position 0</comment>
        <translation>der Taille</translation>
    </message>
    <message>
        <source>%1, %2 from its front end</source>
        <translation>%1, %2 vom vorderen Ende</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>seam at a seam position</comment>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>panel %1, %2 from its front end</source>
        <translation>Teil %1, %2 vom vorderen Ende</translation>
    </message>
    <message>
        <source>%1 over the waist</source>
        <translation>%1 über der Taille</translation>
    </message>
    <message>
        <source>%1 under the waist</source>
        <translation>%1 unter der Taille</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 nach oben</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 nach unten</translation>
    </message>
    <message>
        <source>%1 towards the back</source>
        <translation>%1 nach hinten</translation>
    </message>
    <message>
        <source>%1 towards the front</source>
        <translation>%1 nach vorn</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two ways of one move</comment>
        <translation>%1 und %2</translation>
    </message>
</context>
<context>
    <name>AlterationSentence</name>
    <message>
        <source>nothing</source>
        <comment>amount</comment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1 taken in</source>
        <translation>%1 enger</translation>
    </message>
    <message>
        <source>%1 let out</source>
        <translation>%1 weiter</translation>
    </message>
    <message>
        <source>%1 in</source>
        <comment>taken in</comment>
        <translation>%1 enger</translation>
    </message>
    <message>
        <source>%1 out</source>
        <comment>let out</comment>
        <translation>%1 weiter</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>amount at a seam position</comment>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>seam: readings</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>panel %1: closed by %2 at %3</source>
        <translation>Teil %1: um %2 geschlossen (%3)</translation>
    </message>
    <message>
        <source>panel %1: opened by %2 at %3</source>
        <translation>Teil %1: um %2 geöffnet (%3)</translation>
    </message>
    <message>
        <source>%1, hinged at %2</source>
        <translation>%1, gedreht um %2</translation>
    </message>
    <message>
        <source>%1, slit %2 long</source>
        <translation>%1, Schlitz %2 lang</translation>
    </message>
    <message>
        <source>shortened %1 %2</source>
        <comment>length, place</comment>
        <translation>%1 kürzer %2</translation>
    </message>
    <message>
        <source>lengthened %1 %2</source>
        <comment>length, place</comment>
        <translation>%1 länger %2</translation>
    </message>
    <message>
        <source>%1, from %2 to nothing at %3</source>
        <translation>%1, von %2 auslaufend bis %3</translation>
    </message>
    <message>
        <source>lowered %1 at %2</source>
        <translation>%1 tiefer bei %2</translation>
    </message>
    <message>
        <source>raised %1 at %2</source>
        <translation>%1 höher bei %2</translation>
    </message>
    <message>
        <source>moved %1</source>
        <translation>%1 versetzt</translation>
    </message>
    <message>
        <source>bust points %1 further apart</source>
        <translation>Brustpunkte %1 weiter auseinander</translation>
    </message>
    <message>
        <source>bust points %1 closer together</source>
        <translation>Brustpunkte %1 näher zusammen</translation>
    </message>
    <message>
        <source>not moved</source>
        <translation>nicht versetzt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>level: moves</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>panel %1: upper end of %2 %3</source>
        <translation>Teil %1: oberes Ende von %2 %3</translation>
    </message>
    <message>
        <source>panel %1: lower end of %2 %3</source>
        <translation>Teil %1: unteres Ende von %2 %3</translation>
    </message>
    <message>
        <source>panel %1: handle %2 of curve %3 of %4 %5</source>
        <translation>Teil %1: Griff %2 der Kurve %3 von %4 %5</translation>
    </message>
    <message>
        <source>panel %1: split by a new seam, %2 from the front end of the bottom edge, %3 at the top edge</source>
        <translation>Teil %1: durch eine neue Naht geteilt, %2 vom vorderen Ende der Unterkante, %3 an der Oberkante</translation>
    </message>
    <message>
        <source>%1 given up, its panels joined</source>
        <translation>%1 entfällt, ihre Teile werden eins</translation>
    </message>
    <message>
        <source>both sides made equal, halfway between them</source>
        <translation>beide Seiten gleich gemacht, in der Mitte zwischen ihnen</translation>
    </message>
    <message>
        <source>both sides made as the left one</source>
        <translation>beide Seiten wie die linke gemacht</translation>
    </message>
    <message>
        <source>both sides made as the right one</source>
        <translation>beide Seiten wie die rechte gemacht</translation>
    </message>
    <message>
        <source>other style</source>
        <translation>andere Machart</translation>
    </message>
    <message>
        <source>new measurements</source>
        <translation>neue Maße</translation>
    </message>
    <message>
        <source>other style: %1</source>
        <translation>andere Machart: %1</translation>
    </message>
    <message>
        <source>new measurements of %1</source>
        <translation>neue Maße vom %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>alteration, side</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>AlterationWords</name>
    <message>
        <source>shape a seam</source>
        <translation>Naht formen</translation>
    </message>
    <message>
        <source>open or close a panel</source>
        <translation>Teil öffnen oder schließen</translation>
    </message>
    <message>
        <source>lengthen or shorten</source>
        <translation>verlängern oder kürzen</translation>
    </message>
    <message>
        <source>reshape an edge</source>
        <translation>Kante neu formen</translation>
    </message>
    <message>
        <source>move a level</source>
        <translation>Querlinie versetzen</translation>
    </message>
    <message>
        <source>move a corner</source>
        <translation>Ecke versetzen</translation>
    </message>
    <message>
        <source>move a curve handle</source>
        <translation>Kurvengriff versetzen</translation>
    </message>
    <message>
        <source>split a panel</source>
        <translation>Teil teilen</translation>
    </message>
    <message>
        <source>join two panels</source>
        <translation>zwei Teile verbinden</translation>
    </message>
    <message>
        <source>make both sides equal</source>
        <translation>beide Seiten gleich machen</translation>
    </message>
    <message>
        <source>change the style</source>
        <translation>Machart ändern</translation>
    </message>
    <message>
        <source>take new measurements</source>
        <translation>neue Maße nehmen</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation>abgesteckt</translation>
    </message>
    <message>
        <source>opened</source>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>raise</source>
        <translation>höher</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>tiefer</translation>
    </message>
    <message>
        <source>longer</source>
        <translation>länger</translation>
    </message>
    <message>
        <source>shorter</source>
        <translation>kürzer</translation>
    </message>
    <message>
        <source>bust point higher</source>
        <translation>Brustpunkt höher</translation>
    </message>
    <message>
        <source>bust point lower</source>
        <translation>Brustpunkt tiefer</translation>
    </message>
    <message>
        <source>bust point wider</source>
        <translation>Brustpunkte weiter auseinander</translation>
    </message>
    <message>
        <source>gapes</source>
        <translation>steht ab</translation>
    </message>
    <message>
        <source>cuts in</source>
        <translation>schneidet ein</translation>
    </message>
    <message>
        <source>bone pokes</source>
        <translation>Stab drückt</translation>
    </message>
    <message>
        <source>both sides</source>
        <translation>beide Seiten</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 links</translation>
    </message>
    <message>
        <source>%1 right</source>
        <translation>%1 rechts</translation>
    </message>
</context>
<context>
    <name>AskUser</name>
    <message>
        <source>Folios (*.coutil)</source>
        <translation>Mappen (*.coutil)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>This folio has unsaved changes.</source>
        <translation>Diese Mappe hat ungespeicherte Änderungen.</translation>
    </message>
    <message>
        <source>The folio of %1 has unsaved changes.</source>
        <translation>Die Mappe von %1 hat ungespeicherte Änderungen.</translation>
    </message>
    <message>
        <source>Save them before it is closed?</source>
        <translation>Vor dem Schließen speichern?</translation>
    </message>
    <message>
        <source>Close without saving</source>
        <translation>Schließen ohne zu speichern</translation>
    </message>
    <message>
        <source>Open a folio</source>
        <translation>Mappe öffnen</translation>
    </message>
    <message>
        <source>Save the folio</source>
        <translation>Mappe speichern</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation>Fotos (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>Attach photos</source>
        <translation>Fotos anhängen</translation>
    </message>
</context>
<context>
    <name>ChangeSheet</name>
    <message>
        <source>Change sheet: %1</source>
        <translation>Änderungsbogen: %1</translation>
    </message>
    <message>
        <source>up to %1 from the old line</source>
        <translation>bis %1 von der alten Linie</translation>
    </message>
    <message>
        <source>Unchanged and not printed: panels %1.</source>
        <translation>Unverändert und nicht gedruckt: Schnittteile %1.</translation>
    </message>
    <message>
        <source>No longer there: panels %1.</source>
        <translation>Nicht mehr vorhanden: Schnittteile %1.</translation>
    </message>
    <message>
        <source>a new panel</source>
        <translation>ein neues Schnittteil</translation>
    </message>
    <message>
        <source>Only what changed from %1 to %2. Cut a piece out along its dashed box, lay it on the same panel of the paper master so that grain, levels and waist marks meet and the thin line covers the old one, pin it, and go over the new line.</source>
        <translation>Nur was sich von %1 zu %2 geändert hat. Ein Stück am gestrichelten Kasten ausschneiden, so auf dasselbe Schnittteil des Schnitts aus Papier legen, dass Fadenlauf, Querlinien und Taillenzeichen zusammentreffen und die dünne Linie die alte deckt, feststecken und die neue Linie nachziehen.</translation>
    </message>
</context>
<context>
    <name>CheckText</name>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>%1: no problems</source>
        <translation>%1: keine Probleme</translation>
    </message>
    <message>
        <source>%1: estimated: %2 %3, give or take %4 (%5)</source>
        <translation>%1: geschätzt: %2 %3 ± %4 (%5)</translation>
    </message>
    <message>
        <source>The file is whole.</source>
        <translation>Die Datei ist unversehrt.</translation>
    </message>
    <message>
        <source>%1: errors that were accepted when revision %2 was confirmed (%3): %4</source>
        <translation>%1: Fehler, die beim Bestätigen von Stand %2 hingenommen wurden (%3): %4</translation>
    </message>
    <message>
        <source>%1: drawing of panel %2: at most %3 mm off</source>
        <translation>%1: Zeichnung von Schnittteil %2: höchstens %3 mm daneben</translation>
    </message>
</context>
<context>
    <name>CommandLine</name>
    <message>
        <source>prints problems of the pattern; looks whether the file is whole</source>
        <translation>nennt Probleme des Schnitts; prüft, ob die Datei unversehrt ist</translation>
    </message>
    <message>
        <source>the readings of one day</source>
        <translation>die Maße eines Tages</translation>
    </message>
    <message>
        <source>the decisions for the garment</source>
        <translation>die Machart des Stücks</translation>
    </message>
    <message>
        <source>put one measurement or style entry (ease.waist=-40) over the files; may be repeated</source>
        <translation>ein Maß oder einen Eintrag der Machart (ease.waist=-40) über die Dateien legen; mehrfach erlaubt</translation>
    </message>
    <message>
        <source>the kind of block</source>
        <translation>die Art des Grundschnitts</translation>
    </message>
    <message>
        <source>what the garment is called (Corset)</source>
        <translation>wie das Stück heißt (Corset)</translation>
    </message>
    <message>
        <source>what a new folio calls the client (the name of the file)</source>
        <translation>wie eine neue Mappe die Kundin nennt (Name der Datei)</translation>
    </message>
    <message>
        <source>the folio: a new one, or one that gets another garment</source>
        <translation>die Mappe: eine neue, oder eine, die ein weiteres Stück bekommt</translation>
    </message>
    <message>
        <source>drafts a block from measurements into a folio</source>
        <translation>konstruiert einen Grundschnitt nach Maßen in eine Mappe</translation>
    </message>
    <message>
        <source>[OPTION ...]</source>
        <translation>[OPTION ...]</translation>
    </message>
    <message>
        <source>coutil [F.coutil]    opens the window, with a folio if one is named</source>
        <translation>coutil [F.coutil]    öffnet das Fenster, mit einer Mappe, wenn eine genannt ist</translation>
    </message>
    <message>
        <source>coutil COMMAND --help tells the options of one command.</source>
        <translation>coutil BEFEHL --help nennt die Optionen eines Befehls.</translation>
    </message>
    <message>
        <source>Exit: 0 done; 1 check found problems; 2 wrong input or call, nothing written; 3 a file can&apos;t be read or is damaged.</source>
        <translation>Rückgabe: 0 fertig; 1 check fand Probleme; 2 falsche Eingabe oder falscher Aufruf, nichts geschrieben; 3 eine Datei ist unlesbar oder beschädigt.</translation>
    </message>
    <message>
        <source>prints client, measurement sets, garments and timeline</source>
        <translation>nennt Kundin, Maßsätze, Stücke und Zeitleiste</translation>
    </message>
    <message>
        <source>prints the master: all panels of one revision</source>
        <translation>gibt den Gesamtschnitt aus: alle Schnittteile eines Standes</translation>
    </message>
    <message>
        <source>which garment, when the folio has several</source>
        <translation>welches Stück, wenn die Mappe mehrere hat</translation>
    </message>
    <message>
        <source>the date to use, so that a run can be repeated to the byte</source>
        <translation>das Datum, damit sich ein Lauf Byte für Byte wiederholen lässt</translation>
    </message>
    <message>
        <source>leave the client&apos;s name out</source>
        <translation>den Namen der Kundin weglassen</translation>
    </message>
    <message>
        <source>the file to write (standard output)</source>
        <translation>die Datei, die geschrieben wird (Standardausgabe)</translation>
    </message>
    <message>
        <source>as JSON</source>
        <translation>als JSON</translation>
    </message>
    <message>
        <source>as SVG, in true millimetres</source>
        <translation>als SVG, in wahren Millimetern</translation>
    </message>
    <message>
        <source>as DXF, layers after ASTM D6673</source>
        <translation>als DXF, Lagen nach ASTM D6673</translation>
    </message>
    <message>
        <source>show this help</source>
        <translation>diese Hilfe zeigen</translation>
    </message>
    <message>
        <source>A4, A3, A0, Letter, Legal, Tabloid, a roll, or 200x300 in mm</source>
        <translation>A4, A3, A0, Letter, Legal, Tabloid, eine Rolle oder 200x300 in mm</translation>
    </message>
    <message>
        <source>turn the paper (whichever way needs fewer sheets)</source>
        <translation>Papier quer (sonst, was weniger Blätter braucht)</translation>
    </message>
    <message>
        <source>keep the paper upright</source>
        <translation>Papier hochkant</translation>
    </message>
    <message>
        <source>what the printer leaves white (10)</source>
        <translation>was der Drucker weiß lässt (10)</translation>
    </message>
    <message>
        <source>what neighbouring sheets share (10)</source>
        <translation>wie weit sich Nachbarblätter überlappen (10)</translation>
    </message>
    <message>
        <source>correction of the printer across the paper (1)</source>
        <translation>Korrektur des Druckers quer zum Papier (1)</translation>
    </message>
    <message>
        <source>correction of the printer along the paper (1)</source>
        <translation>Korrektur des Druckers längs des Papiers (1)</translation>
    </message>
    <message>
        <source>print the mirrored twin of every pair as well</source>
        <translation>gegengleiche Teile mitdrucken</translation>
    </message>
    <message>
        <source>where the search for fewer sheets starts</source>
        <translation>Anfangswert der Suche nach weniger Blättern</translation>
    </message>
    <message>
        <source>how long it searches; 0 takes the quick layout</source>
        <translation>wie lange gesucht wird; 0 nimmt die schnelle Anordnung</translation>
    </message>
    <message>
        <source>the PDF to write</source>
        <translation>das PDF, das geschrieben wird</translation>
    </message>
    <message>
        <source>writes the sheets to print at home, true to scale</source>
        <translation>schreibt die Blätter zum Ausdrucken, maßstabsgetreu</translation>
    </message>
    <message>
        <source>prints the tracings: panels with allowances and marks, to cut</source>
        <translation>gibt die Schnittkopien aus: Schnittteile mit Nahtzugaben und Zeichen, zum Zuschneiden</translation>
    </message>
    <message>
        <source>the alterations to add</source>
        <translation>die Änderungen, die dazukommen</translation>
    </message>
    <message>
        <source>new readings: the block is drafted from them and every alteration applied again</source>
        <translation>neue Maße: der Grundschnitt wird daraus gezeichnet und jede Änderung wieder angewendet</translation>
    </message>
    <message>
        <source>another style, in the same way</source>
        <translation>eine andere Machart, ebenso</translation>
    </message>
    <message>
        <source>what they are for: a number (a pencil begins from it), pencil or latest (latest)</source>
        <translation>wofür sie gelten: eine Nummer (davon beginnt ein Bleistiftstand), pencil oder latest (latest)</translation>
    </message>
    <message>
        <source>adds alterations to the pencil</source>
        <translation>fügt dem Bleistiftstand Änderungen hinzu</translation>
    </message>
    <message>
        <source>tells what is different between two revisions</source>
        <translation>sagt, worin sich zwei Stände unterscheiden</translation>
    </message>
    <message>
        <source>what the revision is about (what was altered, in words)</source>
        <translation>worum es bei dem Stand geht (was geändert wurde, in Worten)</translation>
    </message>
    <message>
        <source>who confirms</source>
        <translation>wer bestätigt</translation>
    </message>
    <message>
        <source>confirm although errors stand, and why</source>
        <translation>bestätigen, obwohl Fehler offen sind, und warum</translation>
    </message>
    <message>
        <source>goes over the pencil in ink; prints the new revision&apos;s number</source>
        <translation>zieht den Bleistiftstand mit Tinte nach; gibt die Nummer des neuen Standes aus</translation>
    </message>
    <message>
        <source>the marks of the fitting</source>
        <translation>die Marken der Anprobe</translation>
    </message>
    <message>
        <source>records a fitting and draws what its marks ask for in pencil</source>
        <translation>hält eine Anprobe fest und zeichnet mit Bleistift, was ihre Marken verlangen</translation>
    </message>
    <message>
        <source>a number, pencil or latest (latest)</source>
        <translation>eine Nummer, pencil oder latest (latest)</translation>
    </message>
    <message>
        <source>which pencil, when there are several (the newest)</source>
        <translation>welcher Bleistiftstand, wenn es mehrere gibt (der neueste)</translation>
    </message>
    <message>
        <source>as pages to print: drawing, girths, figures</source>
        <translation>als Seiten zum Drucken: Zeichnung, Umfänge, Zahlen</translation>
    </message>
    <message>
        <source>compare an SVG that came back from another program</source>
        <translation>vergleicht eine SVG-Datei, die aus einem anderen Programm zurückkam</translation>
    </message>
    <message>
        <source>draw the mirrored twin of every pair as well</source>
        <translation>zu jedem Paar auch das gespiegelte Teil zeichnen</translation>
    </message>
    <message>
        <source>what the beam or blade takes away (0), up to 2</source>
        <translation>was Strahl oder Klinge wegnimmt (0), bis 2</translation>
    </message>
    <message>
        <source>one big page as large as the layout, in place of a paper</source>
        <translation>eine große Seite, so groß wie die Anordnung, statt eines Papiers</translation>
    </message>
    <message>
        <source>cutting lines only, in order, for a laser or a cutter</source>
        <translation>nur Schnittlinien, in Reihenfolge, für Laser oder Schneidplotter</translation>
    </message>
</context>
<context>
    <name>ComparePages</name>
    <message>
        <source>Figures</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>%1: figures</source>
        <translation>%1: Zahlen</translation>
    </message>
    <message>
        <source>Alterations between the two</source>
        <translation>Änderungen zwischen beiden</translation>
    </message>
    <message>
        <source>printed %1</source>
        <translation>gedruckt am %1</translation>
    </message>
    <message>
        <source>Girth against height, %1; dots: the body</source>
        <translation>Umfang über der Höhe, %1; Punkte: der Körper</translation>
    </message>
    <message>
        <source>drawn at 1 : %1; not for cutting</source>
        <translation>gezeichnet 1 : %1; nicht zum Zuschneiden</translation>
    </message>
    <message>
        <source>drawn at 1 : %1, differences %2 times as large; not for cutting</source>
        <translation>gezeichnet 1 : %1, Unterschiede %2-mal so groß; nicht zum Zuschneiden</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>%1 (A)</source>
        <comment>level</comment>
        <translation>%1 (A)</translation>
    </message>
    <message>
        <source>%1 (B)</source>
        <comment>level</comment>
        <translation>%1 (B)</translation>
    </message>
</context>
<context>
    <name>CompareScene</name>
    <message>
        <source>%1: only in %2</source>
        <translation>%1: nur in %2</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>%1: the same in both</source>
        <translation>%1: in beiden gleich</translation>
    </message>
    <message>
        <source>%1: %2 apart at most, at %3</source>
        <translation>%1: höchstens %2 auseinander, bei %3</translation>
    </message>
    <message>
        <source>%1: %2 apart at most</source>
        <translation>%1: höchstens %2 auseinander</translation>
    </message>
    <message>
        <source>%1: A %2, B %3 (%4)</source>
        <translation>%1: A %2, B %3 (%4)</translation>
    </message>
    <message>
        <source>%1 (A)</source>
        <comment>level</comment>
        <translation>%1 (A)</translation>
    </message>
    <message>
        <source>%1 (B)</source>
        <comment>level</comment>
        <translation>%1 (B)</translation>
    </message>
    <message>
        <source>differences drawn %1 times as large</source>
        <translation>Unterschiede %1-mal so groß gezeichnet</translation>
    </message>
</context>
<context>
    <name>ComparedFigures</name>
    <message>
        <source>pencil</source>
        <translation>Bleistift</translation>
    </message>
    <message>
        <source>revision %1, %2</source>
        <translation>Stand %1, %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>alteration, revision</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2): %3</source>
        <comment>alteration, revision, reason</comment>
        <translation>%1 (%2): %3</translation>
    </message>
    <message>
        <source>only in A: %1</source>
        <translation>nur in A: %1</translation>
    </message>
    <message>
        <source>only in B: %1</source>
        <translation>nur in B: %1</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>A</source>
        <comment>older of two revisions</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>B</source>
        <comment>newer of two revisions</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>Girths as if both sides were so, %1</source>
        <translation>Umfänge, als wären beide Seiten so, %1</translation>
    </message>
    <message>
        <source>Girths, %1</source>
        <translation>Umfänge, %1</translation>
    </message>
    <message>
        <source>level</source>
        <translation>Querlinie</translation>
    </message>
    <message>
        <source>body</source>
        <translation>Körper</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Seams: how much the right is wider, %1</source>
        <translation>Nähte: um so viel ist rechts weiter, %1</translation>
    </message>
    <message>
        <source>Seams: how much B is wider, %1</source>
        <translation>Nähte: um so viel ist B weiter, %1</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>most</source>
        <translation>max.</translation>
    </message>
    <message>
        <source>at</source>
        <translation>bei</translation>
    </message>
    <message>
        <source>Edges: how far they lie apart at most, %1</source>
        <translation>Kanten: so weit liegen sie höchstens auseinander, %1</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>apart</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>panel, edge</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Edge heights, %1</source>
        <translation>Höhen der Kanten, %1</translation>
    </message>
    <message>
        <source>where</source>
        <translation>wo</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>top or bottom edge, seam</comment>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>Areas, %1</source>
        <translation>Flächen, %1</translation>
    </message>
    <message>
        <source>panel</source>
        <translation>Schnittteil</translation>
    </message>
    <message>
        <source>sq in</source>
        <translation>Quadratzoll</translation>
    </message>
</context>
<context>
    <name>ComparedStates</name>
    <message>
        <source>%1: %2</source>
        <comment>garment, revision</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>linke Seite</translation>
    </message>
    <message>
        <source>A: %1</source>
        <translation>A: %1</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>rechte Seite</translation>
    </message>
    <message>
        <source>B: %1</source>
        <translation>B: %1</translation>
    </message>
    <message>
        <source>%1: left against right</source>
        <translation>%1: links gegen rechts</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <translation>%1 gegen %2</translation>
    </message>
</context>
<context>
    <name>DemoSinger</name>
    <message>
        <source>Leonore, soprano</source>
        <translation>Leonore, Sopran</translation>
    </message>
    <message>
        <source>An invented singer to try things with</source>
        <translation>Eine erfundene Sängerin zum Ausprobieren</translation>
    </message>
    <message>
        <source>Corset for act two</source>
        <translation>Korsett, 2. Akt</translation>
    </message>
</context>
<context>
    <name>FitScene</name>
    <message>
        <source>Drag along the seam: where the mark was read</source>
        <translation>Entlang der Naht ziehen: wo die Marke abgelesen wurde</translation>
    </message>
    <message>
        <source>Drag along the seam: where the change ends above</source>
        <translation>Entlang der Naht ziehen: wo die Änderung oben endet</translation>
    </message>
    <message>
        <source>Drag along the seam: where the change ends below</source>
        <translation>Entlang der Naht ziehen: wo die Änderung unten endet</translation>
    </message>
    <message>
        <source>Drag across: how much each panel gives</source>
        <translation>Quer ziehen: wie viel jedes Teil gibt</translation>
    </message>
    <message>
        <source>Drag along the edge: where the change ends to the front</source>
        <translation>Entlang der Kante ziehen: wo die Änderung vorn endet</translation>
    </message>
    <message>
        <source>Drag along the edge: where the change ends to the back</source>
        <translation>Entlang der Kante ziehen: wo die Änderung hinten endet</translation>
    </message>
</context>
<context>
    <name>FittingPaper</name>
    <message>
        <source>You need somebody to help you. Never pin or cut on yourself, and never while you wear it without help.</source>
        <translation>Sie brauchen jemanden, der hilft. Stecken oder schneiden Sie nie an sich selbst, und nie ohne Hilfe, während Sie das Probemodell tragen.</translation>
    </message>
    <message>
        <source>Tie a tape around your waist over the mock-up&apos;s waist line. Close it in front, lace it evenly, snug but easy. Stand, sit down, breathe in deep, lift your arms.</source>
        <translation>Vorn schließen, gleichmäßig schnüren, anliegend, aber bequem. Ein Band um die Taille binden, auf der Taillenlinie des Probemodells. Stehen, sich setzen, tief einatmen, die Arme heben.</translation>
    </message>
    <message>
        <source>Too loose at a seam: pinch the cloth there until it lies flat and pin it along the seam. Use pins with large heads, points away from the body, a hand or a piece of card between pin and skin.</source>
        <translation>An einer Naht zu weit: den Stoff dort abheben, bis er glatt liegt, und längs der Naht abstecken. Nadeln mit großen Köpfen, Spitzen vom Körper weg, eine Hand oder ein Stück Karton zwischen Nadel und Haut.</translation>
    </message>
    <message>
        <source>Too tight at a seam: take the mock-up OFF or unlace it, cut the stitches of that seam open, only along the seam, only as far as it is tight, with blunt scissors and away from the body. Lace again: the seam gapes by what is missing.</source>
        <translation>An einer Naht zu eng: das Probemodell AUSZIEHEN, die Stiche dieser Naht auftrennen, nur längs der Naht und nur so weit, wie es spannt, mit stumpfer Schere und vom Körper weg. Wieder schnüren: die Naht klafft um das, was fehlt.</translation>
    </message>
    <message>
        <source>Measure at the levels of the table. Pinned: the width of the pinched fold laid flat, times two. Opened: the width of the gap. Write every figure into the table; a line through a row where it fits well.</source>
        <translation>An den Querlinien der Tabelle messen. Abgesteckt: die Breite der flach gelegten Falte, mal zwei. Aufgetrennt: die Breite des Spalts. Jede Zahl in die Tabelle schreiben; wo es gut sitzt, einen Strich durch die Zeile.</translation>
    </message>
    <message>
        <source>Take photographs from the front, the back and both sides, with the tape around the waist. Leave all pins in, and send everything back.</source>
        <translation>Von vorn, von hinten und von beiden Seiten fotografieren, mit dem Band um die Taille. Alle Nadeln stecken lassen und alles zurückschicken.</translation>
    </message>
    <message>
        <source>Stop at once and unlace at pain, numbness, tingling, dizziness or short breath. Do not wear the mock-up longer than twenty minutes, and not after a meal. With a weak heart or lungs, high blood pressure, a fresh wound or a child expected: not without your doctor&apos;s word, which goes before anything on this sheet.</source>
        <translation>Bei Schmerz, Taubheit, Kribbeln, Schwindel oder Atemnot sofort aufhören und aufschnüren. Das Probemodell nicht länger als zwanzig Minuten tragen und nicht nach dem Essen. Bei schwachem Herzen oder schwacher Lunge, hohem Blutdruck, frischer Wunde oder Schwangerschaft nur nach Rat Ihrer Ärztin oder Ihres Arztes; dieser Rat geht allem auf diesem Blatt vor.</translation>
    </message>
    <message>
        <source>Please send it back by %1.</source>
        <translation>Bitte zurückschicken bis %1.</translation>
    </message>
    <message>
        <source>Tried on</source>
        <translation>Anprobiert am</translation>
    </message>
    <message>
        <source>Who helped</source>
        <translation>Geholfen hat</translation>
    </message>
    <message>
        <source>Your remarks: where does it gape, cut in or poke? Is the upper edge too high or too low, in front, at the side, at the back? Can you sit?</source>
        <translation>Ihre Bemerkungen: Wo steht es ab, schneidet ein oder sticht? Ist die Oberkante zu hoch oder zu tief, vorn, an der Seite, hinten? Können Sie sitzen?</translation>
    </message>
    <message>
        <source>Fitting sheet for the mock-up</source>
        <translation>Anprobebogen zum Probemodell</translation>
    </message>
    <message>
        <source>%1, %2 above the waist</source>
        <translation>%1, %2 über der Taille</translation>
    </message>
    <message>
        <source>%1, %2 below the waist</source>
        <translation>%1, %2 unter der Taille</translation>
    </message>
    <message>
        <source>Seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>Measured at</source>
        <translation>Gemessen an</translation>
    </message>
    <message>
        <source>left, in %1</source>
        <translation>links, in %1</translation>
    </message>
    <message>
        <source>right, in %1</source>
        <translation>rechts, in %1</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation>abgesteckt</translation>
    </message>
    <message>
        <source>opened</source>
        <translation>aufgetrennt</translation>
    </message>
    <message>
        <source>How wide does the lacing stand open, in %1?</source>
        <translation>Wie weit steht die Schnürung offen, in %1?</translation>
    </message>
    <message>
        <source>One half of the mock-up from outside, front on the left, small and NOT to scale: the numbers of panels and seams, and the levels to measure at.</source>
        <translation>Eine Hälfte des Probemodells von außen, vorn ist links, klein und NICHT maßstäblich: die Nummern der Teile und Nähte und die Querlinien, an denen gemessen wird.</translation>
    </message>
</context>
<context>
    <name>FolioText</name>
    <message>
        <source>Measurements of %1:</source>
        <translation>Maße vom %1:</translation>
    </message>
    <message>
        <source>Measurements of %1, taken by %2:</source>
        <translation>Maße vom %1, gemessen von %2:</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>Garment %1, begun on %2: %3 panels a half</source>
        <translation>Stück %1, begonnen am %2: %3 Schnittteile je Hälfte</translation>
    </message>
    <message>
        <source>Client: %1</source>
        <translation>Kundin: %1</translation>
    </message>
    <message>
        <source>revision %1</source>
        <translation>Stand %1</translation>
    </message>
    <message>
        <source>, from revision %1</source>
        <translation>, aus Stand %1</translation>
    </message>
    <message>
        <source>, confirmed by %1</source>
        <translation>, bestätigt von %1</translation>
    </message>
    <message numerus="yes">
        <source>fitting of the pencil, %n mark(s)</source>
        <translation>
            <numerusform>Anprobe des Bleistiftstandes, %n Marke</numerusform>
            <numerusform>Anprobe des Bleistiftstandes, %n Marken</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>fitting of revision %1, %n mark(s)</source>
        <translation>
            <numerusform>Anprobe von Stand %1, %n Marke</numerusform>
            <numerusform>Anprobe von Stand %1, %n Marken</numerusform>
        </translation>
    </message>
    <message>
        <source>pencil</source>
        <translation>Bleistift</translation>
    </message>
    <message>
        <source>pencil “%1”</source>
        <translation>Bleistift „%1“</translation>
    </message>
    <message>
        <source>, from the measurements of %1</source>
        <translation>, nach den Maßen vom %1</translation>
    </message>
    <message numerus="yes">
        <source>, %n alteration(s)</source>
        <translation>
            <numerusform>, %n Änderung</numerusform>
            <numerusform>, %n Änderungen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Garment</name>
    <message>
        <source>Corset</source>
        <translation>Korsett</translation>
    </message>
</context>
<context>
    <name>HistorySteps</name>
    <message>
        <source>Second pencil</source>
        <translation>Zweiter Bleistift</translation>
    </message>
    <message>
        <source>Rub out: %1</source>
        <translation>Ausradieren: %1</translation>
    </message>
    <message>
        <source>New garment from a revision</source>
        <translation>Neues Stück aus einem Stand</translation>
    </message>
    <message>
        <source>Name the pencil</source>
        <translation>Bleistift benennen</translation>
    </message>
</context>
<context>
    <name>LineKindWords</name>
    <message>
        <source>Cutting lines</source>
        <translation>Schnittlinien</translation>
    </message>
    <message>
        <source>Sewing lines</source>
        <translation>Nahtlinien</translation>
    </message>
    <message>
        <source>Notches</source>
        <translation>Passzeichen</translation>
    </message>
    <message>
        <source>Grain lines</source>
        <translation>Fadenlauf</translation>
    </message>
    <message>
        <source>Folds</source>
        <translation>Stoffbrüche</translation>
    </message>
    <message>
        <source>Levels</source>
        <translation>Querlinien</translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>Tunnel</translation>
    </message>
    <message>
        <source>Eyelets</source>
        <translation>Ösen</translation>
    </message>
    <message>
        <source>Busk studs</source>
        <translation>Schließenknöpfe</translation>
    </message>
    <message>
        <source>Waist tape</source>
        <translation>Taillenband</translation>
    </message>
    <message>
        <source>Match numbers</source>
        <translation>Passnummern</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Beschriftung</translation>
    </message>
    <message>
        <source>Joins of the sheets</source>
        <translation>Blattkanten</translation>
    </message>
</context>
<context>
    <name>MarkForms</name>
    <message>
        <source>%1, at a seam</source>
        <comment>pinned</comment>
        <translation>%1, an einer Naht</translation>
    </message>
    <message>
        <source>tuck pinned inside a panel</source>
        <translation>Fältchen in einem Teil abgesteckt</translation>
    </message>
    <message>
        <source>slit cut into a panel</source>
        <translation>Schlitz in ein Teil geschnitten</translation>
    </message>
    <message>
        <source>top or bottom edge raised</source>
        <translation>Ober- oder Unterkante höher</translation>
    </message>
    <message>
        <source>top or bottom edge lowered</source>
        <translation>Ober- oder Unterkante tiefer</translation>
    </message>
</context>
<context>
    <name>MarkWords</name>
    <message>
        <source>%1 at %2</source>
        <comment>seam at a seam position</comment>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>inside panel %1, %2</source>
        <translation>in Teil %1, %2</translation>
    </message>
    <message>
        <source>slit %1 long in panel %2 from the %3, %4 from its front end</source>
        <translation>Schlitz von %1 in Teil %2, %3, %4 vom vorderen Ende</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>top or bottom edge, at a seam or panel</comment>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>pinned 8 mm</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>place: pinned 8 mm</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>MeasureScene</name>
    <message>
        <source>The panels draw themselves once the needed readings are there</source>
        <translation>Die Schnittteile zeichnen sich, sobald die nötigen Maße da sind</translation>
    </message>
</context>
<context>
    <name>MeasurementGroups</name>
    <message>
        <source>Girths</source>
        <translation>Umfänge</translation>
    </message>
    <message>
        <source>Heights from the waist</source>
        <translation>Höhen ab Taille</translation>
    </message>
    <message>
        <source>Widths and lengths</source>
        <translation>Breiten und Längen</translation>
    </message>
</context>
<context>
    <name>MeasurementWords</name>
    <message>
        <source>Bust girth</source>
        <translation>Brustumfang</translation>
    </message>
    <message>
        <source>Under-bust girth</source>
        <translation>Unterbrustumfang</translation>
    </message>
    <message>
        <source>Upper chest girth</source>
        <translation>Oberbrustumfang</translation>
    </message>
    <message>
        <source>Waist girth</source>
        <translation>Taillenumfang</translation>
    </message>
    <message>
        <source>Top hip girth</source>
        <translation>Umfang hohe Hüfte</translation>
    </message>
    <message>
        <source>Hip girth</source>
        <translation>Hüftumfang</translation>
    </message>
    <message>
        <source>Neck base girth</source>
        <translation>Halsansatzumfang</translation>
    </message>
    <message>
        <source>Shoulder length</source>
        <translation>Schulterlänge</translation>
    </message>
    <message>
        <source>Across back width</source>
        <translation>Rückenbreite</translation>
    </message>
    <message>
        <source>Across front width</source>
        <translation>Vorderbreite</translation>
    </message>
    <message>
        <source>Scye depth</source>
        <translation>Armlochtiefe</translation>
    </message>
    <message>
        <source>Back neck to waist</source>
        <translation>Rückenlänge</translation>
    </message>
    <message>
        <source>Front neck to waist</source>
        <translation>Halsgrube bis Taille</translation>
    </message>
    <message>
        <source>Side neck to bust point</source>
        <translation>Brusttiefe</translation>
    </message>
    <message>
        <source>Side neck over bust to waist</source>
        <translation>Vordere Länge</translation>
    </message>
    <message>
        <source>Bust point width</source>
        <translation>Brustpunktabstand</translation>
    </message>
    <message>
        <source>Side waist to hip</source>
        <translation>Seitenlänge Taille–Hüfte</translation>
    </message>
    <message>
        <source>Upper arm girth</source>
        <translation>Oberarmumfang</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Körperhöhe</translation>
    </message>
    <message>
        <source>Front bust arc</source>
        <translation>Vorderer Brustbogen</translation>
    </message>
    <message>
        <source>Waist to under-bust</source>
        <translation>Taille bis Unterbrust</translation>
    </message>
    <message>
        <source>Waist to bust</source>
        <translation>Taille bis Brust</translation>
    </message>
    <message>
        <source>Waist to armpit</source>
        <translation>Taille bis Achsel</translation>
    </message>
    <message>
        <source>Waist to high hip</source>
        <translation>Taille bis hohe Hüfte</translation>
    </message>
    <message>
        <source>Waist to hip</source>
        <translation>Taille bis Hüfte</translation>
    </message>
    <message>
        <source>Waist to lap</source>
        <translation>Taille bis Schoß</translation>
    </message>
    <message>
        <source>Tape level around the fullest part of the bust, over the bra she will wear or none. Easy, not tight; let her breathe out.</source>
        <translation>Maßband waagerecht um die stärkste Stelle der Brust, über dem BH, der später getragen wird, oder ohne. Locker, nicht stramm; ausatmen lassen.</translation>
    </message>
    <message>
        <source>Tape level around the ribs right under the breasts, snug, at the end of a breath out.</source>
        <translation>Maßband waagerecht um die Rippen, direkt unter der Brust, anliegend, am Ende des Ausatmens.</translation>
    </message>
    <message>
        <source>Tape under the arms and over the top of the breasts, level at the back. Arms hang down.</source>
        <translation>Maßband unter den Achseln durch und oberhalb der Brust entlang, im Rücken waagerecht. Arme hängen lassen.</translation>
    </message>
    <message>
        <source>Tie a string around the narrowest place and let it settle; measure along it, snug but not laced in. Leave the string on for the heights.</source>
        <translation>Ein Taillenband um die schmalste Stelle binden und sich setzen lassen; daran entlang messen, anliegend, nicht geschnürt. Das Band für die Höhen umlassen.</translation>
    </message>
    <message>
        <source>Tape level around the top of the hip bones, over the belly. Note how far below the waist string it lies.</source>
        <translation>Maßband waagerecht um die Oberkante der Hüftknochen und über den Bauch. Notieren, wie weit es unter dem Taillenband liegt.</translation>
    </message>
    <message>
        <source>Tape level around the fullest part of hips and seat, feet together. Note how far below the waist string it lies.</source>
        <translation>Maßband waagerecht um die stärkste Stelle von Hüfte und Gesäß, Füße zusammen. Notieren, wie weit es unter dem Taillenband liegt.</translation>
    </message>
    <message>
        <source>Tape around the root of the neck: over the bone at the back, past both sides, through the hollow in front.</source>
        <translation>Maßband um den Halsansatz: hinten über den Halswirbel, an beiden Seiten vorbei, vorn durch die Halsgrube.</translation>
    </message>
    <message>
        <source>From the side of the neck, where a necklace lies, along the shoulder to its outer bone.</source>
        <translation>Vom Halsansatz an der Seite, wo eine Kette liegt, auf der Schulter entlang bis zum äußeren Schulterknochen.</translation>
    </message>
    <message>
        <source>Straight across the back from arm crease to arm crease, halfway between shoulder and armpit.</source>
        <translation>Quer über den Rücken von Armansatz zu Armansatz, auf halber Höhe zwischen Schulter und Achsel.</translation>
    </message>
    <message>
        <source>Straight across the front from arm crease to arm crease, halfway between shoulder and armpit.</source>
        <translation>Quer über die Vorderseite von Armansatz zu Armansatz, auf halber Höhe zwischen Schulter und Achsel.</translation>
    </message>
    <message>
        <source>Down the middle of the back, from the bone at the neck to a tape held level under the arms.</source>
        <translation>In der hinteren Mitte vom Halswirbel abwärts bis zu einem Maßband, das waagerecht unter den Achseln liegt.</translation>
    </message>
    <message>
        <source>Down the middle of the back, from the bone at the neck to the waist string, following the hollow.</source>
        <translation>In der hinteren Mitte vom Halswirbel bis zum Taillenband, der Wölbung folgend.</translation>
    </message>
    <message>
        <source>Down the middle of the front, from the hollow of the neck to the waist string, laid flat between the breasts.</source>
        <translation>In der vorderen Mitte von der Halsgrube bis zum Taillenband, zwischen den Brüsten flach angelegt.</translation>
    </message>
    <message>
        <source>From the side of the neck straight down to the bust point.</source>
        <translation>Vom Halsansatz an der Seite gerade abwärts bis zum Brustpunkt.</translation>
    </message>
    <message>
        <source>From the side of the neck over the bust point and on to the waist string, close under the breast.</source>
        <translation>Vom Halsansatz an der Seite über den Brustpunkt bis zum Taillenband, unter der Brust anliegend.</translation>
    </message>
    <message>
        <source>Straight across from one bust point to the other, without dipping between them.</source>
        <translation>Waagerecht von Brustpunkt zu Brustpunkt, ohne dazwischen einzusinken.</translation>
    </message>
    <message>
        <source>Down the side over the curve of the hip, from the waist string to the level of the hip girth.</source>
        <translation>An der Seite über die Hüftwölbung, vom Taillenband bis zur Höhe des Hüftumfangs.</translation>
    </message>
    <message>
        <source>Around the fullest part of the upper arm, arm hanging, muscle at ease.</source>
        <translation>Um die stärkste Stelle des Oberarms, Arm hängend, Muskel locker.</translation>
    </message>
    <message>
        <source>Standing straight without shoes, back to a wall, from the floor to the top of the head.</source>
        <translation>Aufrecht ohne Schuhe, Rücken zur Wand, vom Boden bis zum Scheitel.</translation>
    </message>
    <message>
        <source>Over the fullest part of the bust, from side seam to side seam: the front&apos;s part of the bust girth. Agree first where the side seams run.</source>
        <translation>Über die stärkste Stelle der Brust von Seitennaht zu Seitennaht: der vordere Teil des Brustumfangs. Vorher den Verlauf der Seitennähte festlegen.</translation>
    </message>
    <message>
        <source>At the front, straight up from the waist string to the crease under the breast. Measure the height, not along a curve.</source>
        <translation>Vorn senkrecht vom Taillenband bis zur Falte unter der Brust. Die Höhe messen, nicht der Wölbung nach.</translation>
    </message>
    <message>
        <source>Straight up from the waist string to the height of the bust point: hold a ruler upright beside her.</source>
        <translation>Senkrecht vom Taillenband bis zur Höhe des Brustpunkts: ein Lineal aufrecht danebenhalten.</translation>
    </message>
    <message>
        <source>At the side, straight up from the waist string to a pencil held level under the arm.</source>
        <translation>An der Seite senkrecht vom Taillenband bis zu einem Stift, der waagerecht unter der Achsel liegt.</translation>
    </message>
    <message>
        <source>At the side, straight down from the waist string to where the top hip girth was taken.</source>
        <translation>An der Seite senkrecht vom Taillenband abwärts bis dorthin, wo die hohe Hüfte gemessen wurde.</translation>
    </message>
    <message>
        <source>At the side, straight down from the waist string to where the hip girth was taken.</source>
        <translation>An der Seite senkrecht vom Taillenband abwärts bis dorthin, wo der Hüftumfang gemessen wurde.</translation>
    </message>
    <message>
        <source>Seated upright on a hard chair: from the waist string down the front to the lap. The corset&apos;s front must not be longer.</source>
        <translation>Aufrecht auf einem harten Stuhl sitzend: vom Taillenband vorn bis zum Schoß. Länger darf das Korsett vorn nicht sein.</translation>
    </message>
</context>
<context>
    <name>MeasuringPaper</name>
    <message>
        <source>Please let somebody measure you: alone the tape slips. You need a soft tape, a string for the waist and a pencil. Wear what you will wear under the corset, stand easily, breathe quietly. The tape lies on the skin and does not press in. Write every figure as the tape shows it, take each one twice, and never round. What you cannot take, leave empty. Those with a star are needed.</source>
        <translation>Bitte lassen Sie sich messen: allein verrutscht das Maßband. Sie brauchen ein weiches Maßband, eine Schnur für die Taille und einen Bleistift. Tragen Sie, was Sie unter dem Korsett tragen werden, stehen Sie locker, atmen Sie ruhig. Das Band liegt auf der Haut und drückt nicht ein. Jede Zahl so aufschreiben, wie das Band sie zeigt, jede zweimal nehmen, nie runden. Was nicht zu messen ist, leer lassen. Die mit Stern werden gebraucht.</translation>
    </message>
    <message>
        <source>All figures in inches, to the nearest 1/8.</source>
        <translation>Alle Maße in Zoll, auf 1/8 genau.</translation>
    </message>
    <message>
        <source>All figures in %1; one tenth of a centimetre counts.</source>
        <translation>Alle Maße in %1; ein Zehntel Zentimeter zählt.</translation>
    </message>
    <message>
        <source>Measured on</source>
        <translation>Gemessen am</translation>
    </message>
    <message>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message>
        <source>Anything the maker should know: one hip or shoulder higher, a wound or a scar, an illness of the heart or the lungs, a child expected. If you are unsure whether you may be laced, ask your doctor first.</source>
        <translation>Was noch wichtig ist: eine Hüfte oder Schulter höher, eine Wunde oder Narbe, eine Krankheit von Herz oder Lunge, eine Schwangerschaft. Wenn Sie unsicher sind, ob Sie geschnürt werden dürfen, fragen Sie zuerst ärztlich nach.</translation>
    </message>
    <message>
        <source>Measuring sheet</source>
        <translation>Maßbogen</translation>
    </message>
</context>
<context>
    <name>Papers</name>
    <message>
        <source>revision %1</source>
        <translation>Stand %1</translation>
    </message>
    <message>
        <source>Measuring sheet</source>
        <translation>Maßbogen</translation>
    </message>
    <message>
        <source>Fitting sheet</source>
        <translation>Anprobebogen</translation>
    </message>
    <message>
        <source>Change sheet</source>
        <translation>Änderungsbogen</translation>
    </message>
    <message>
        <source>printed %1</source>
        <translation>gedruckt %1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
</context>
<context>
    <name>PatternFigures</name>
    <message>
        <source>panel %1</source>
        <translation>Schnittteil %1</translation>
    </message>
    <message>
        <source>%1: %2 on %3, %4 on %5</source>
        <translation>%1: %2 an %3, %4 an %5</translation>
    </message>
    <message>
        <source>Seam %1</source>
        <translation>Naht %1</translation>
    </message>
    <message>
        <source>above the waist</source>
        <translation>über der Taille</translation>
    </message>
    <message>
        <source>below the waist</source>
        <translation>unter der Taille</translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <translation>%1 von %2: %3</translation>
    </message>
    <message>
        <source>above the waist: %1</source>
        <translation>über der Taille: %1</translation>
    </message>
    <message>
        <source>below the waist: %1</source>
        <translation>unter der Taille: %1</translation>
    </message>
    <message>
        <source>Level %1, %2 %3</source>
        <translation>Querlinie %1, %2 %3</translation>
    </message>
    <message>
        <source>Level %1</source>
        <translation>Querlinie %1</translation>
    </message>
    <message>
        <source>body: %1</source>
        <translation>Körper: %1</translation>
    </message>
    <message>
        <source>target: %1</source>
        <translation>Soll: %1</translation>
    </message>
    <message>
        <source>pattern: %1</source>
        <translation>Schnitt: %1</translation>
    </message>
    <message>
        <source>lacing gap in it: %1</source>
        <translation>darin Schnürlücke: %1</translation>
    </message>
    <message>
        <source>%1 sq in</source>
        <translation>%1 in²</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>width at %1 %2</source>
        <translation>Breite %1 %2</translation>
    </message>
    <message>
        <source>area %1</source>
        <translation>Fläche %1</translation>
    </message>
</context>
<context>
    <name>ProblemSentence</name>
    <message>
        <source>[{subject}: ]“{text}” is not a length; write it like 96, 37 3/4 in or 32.5 cm.</source>
        <translation>[{subject}: ]„{text}“ ist keine Länge; so schreiben: 96, 37 3/4 in oder 32,5 cm.</translation>
    </message>
    <message>
        <source>[{subject}: ]{text} is less than nothing; write a length without a minus sign.</source>
        <translation>[{subject}: ]{text} ist kleiner als null; Länge ohne Minuszeichen schreiben.</translation>
    </message>
    <message>
        <source>[{subject}: ]“{text}” is far longer than anything that can be sewn; check the figure and its unit.</source>
        <translation>[{subject}: ]„{text}“ ist weit länger als alles, was sich nähen lässt; Zahl und Einheit prüfen.</translation>
    </message>
    <message>
        <source>[Panel {panel}: ]the allowance swallows a corner of the sewing line[ ({value:fine})]; give this edge a narrower allowance or make the panel wider there.</source>
        <translation>[Schnittteil {panel}: ]Die Nahtzugabe verschluckt eine Ecke der Nahtlinie[ ({value:fine})]; dieser Kante eine schmalere Nahtzugabe geben oder das Schnittteil dort verbreitern.</translation>
    </message>
    <message>
        <source>[Panel {panel}: ]the cutting line comes nearer to the sewing line than asked[ ({value:fine} instead of {limit:fine})]; change the allowance of this edge or smooth the line there.</source>
        <translation>[Schnittteil {panel}: ]Die Schnittlinie kommt der Nahtlinie näher als verlangt[ ({value:fine} statt {limit:fine})]; die Nahtzugabe dieser Kante ändern oder die Linie dort glätten.</translation>
    </message>
    <message>
        <source>[Panel {panel}: ]the cutting line lies farther from the sewing line than asked[ ({value:fine} instead of {limit:fine})]; change the allowance of this edge or smooth the line there.</source>
        <translation>[Schnittteil {panel}: ]Die Schnittlinie liegt weiter von der Nahtlinie entfernt als verlangt[ ({value:fine} statt {limit:fine})]; die Nahtzugabe dieser Kante ändern oder die Linie dort glätten.</translation>
    </message>
    <message>
        <source>[Panel {panel}: ]the outline has a gap; draw the lines there until they meet.</source>
        <translation>[Schnittteil {panel}: ]Der Umriss hat eine Lücke; die Linien dort verlängern, bis sie sich treffen.</translation>
    </message>
    <message>
        <source>[Panel {panel}: ]the outline crosses itself; take less in here, or give the panel more width.</source>
        <translation>[Schnittteil {panel}: ]Der Umriss überschneidet sich; hier weniger abnehmen oder dem Schnittteil mehr Breite geben.</translation>
    </message>
    <message>
        <source>{subject} is missing[ (or {detail} in its place)]; measure it and type it in, nothing can be drafted without it.</source>
        <translation>{subject} fehlt[ (oder stattdessen {detail})]; messen und eintragen, ohne dieses Maß entsteht kein Schnitt.</translation>
    </message>
    <message>
        <source>{subject} cannot be {value}: bodies lie between {lowest} and {highest}; check the figure and its unit.</source>
        <translation>{subject} kann nicht {value} sein: Körpermaße liegen zwischen {lowest} und {highest}; Zahl und Einheit prüfen.</translation>
    </message>
    <message>
        <source>{subject} of {value} is unusual:[ going by {detail},] {expected} give or take {spread} is expected; measure again, or keep it if it is right.</source>
        <translation>{subject} mit {value} ist ungewöhnlich:[ nach {detail}] {expected} ± {spread} zu erwarten; nachmessen, oder lassen, wenn es stimmt.</translation>
    </message>
    <message>
        <source>{subject} of {value} is rare: it usually lies between {lowest} and {highest}; measure again, or keep it if it is right.</source>
        <translation>{subject} mit {value} ist selten: meist zwischen {lowest} und {highest}; nachmessen, oder lassen, wenn es stimmt.</translation>
    </message>
    <message>
        <source>{subject} ({value}) does not agree with {detail} ({other}): it should be more than {lowest}; measure both again.</source>
        <translation>{subject} ({value}) passt nicht zu {detail} ({other}): mehr als {lowest} zu erwarten; beide nachmessen.</translation>
    </message>
    <message>
        <source>{subject} ({value}) does not agree with {detail} ({other}): it should be less than {highest}; measure both again.</source>
        <translation>{subject} ({value}) passt nicht zu {detail} ({other}): weniger als {highest} zu erwarten; beide nachmessen.</translation>
    </message>
    <message>
        <source>{path}: there is no measurement of this name[; did you mean “{text}”?]</source>
        <translation>{path}: Ein Maß dieses Namens gibt es nicht[; war „{text}“ gemeint?]</translation>
    </message>
    <message>
        <source>{subject} is {value}, but must be {lowest}; change it in the style.</source>
        <translation>{subject}: {value}, muss aber {lowest} sein; in der Machart ändern.</translation>
    </message>
    <message>
        <source>{subject}[ is {value}][, but must lie between {lowest} and {highest}]; change it in the style.</source>
        <translation>{subject}[: {value}][, muss aber zwischen {lowest} und {highest} liegen]; in der Machart ändern.</translation>
    </message>
    <message>
        <source>{subject}: “{text}” cannot be used here; name seams and edges as this block has them, and every level of your own once.</source>
        <translation>{subject}: „{text}“ ist hier nicht brauchbar; Nähte und Kanten nennen, wie dieser Grundschnitt sie hat, und jede eigene Querlinie nur einmal.</translation>
    </message>
    <message>
        <source>[Panel {panel} ]is too narrow at {subject}[: {value} where {limit} is the least]; use fewer panels, less reduction, or a smaller lacing gap.</source>
        <translation>[Schnittteil {panel}: ]Zu schmal auf der Querlinie {subject}[: {value}, mindestens {limit} nötig]; weniger Schnittteile, weniger Reduktion oder eine kleinere Schnürlücke wählen.</translation>
    </message>
    <message>
        <source>The levels {subject} and {detail} lie too close together or in the wrong order[ ({value} apart, at least {limit} needed)]; measure their heights again.</source>
        <translation>Die Querlinien {subject} und {detail} liegen zu dicht beieinander oder in falscher Folge[ (Abstand {value}, mindestens {limit} nötig)]; ihre Höhen nachmessen.</translation>
    </message>
    <message>
        <source>{subject}[ at {detail}] cannot end {value} from the waist[: between {lowest} and {highest} is possible]; change this height in the style.</source>
        <translation>{subject}[, {detail}]: Ein Abstand von {value} zur Taille geht nicht[, möglich ist zwischen {lowest} und {highest}]; diese Höhe in der Machart ändern.</translation>
    </message>
    <message>
        <source>The waist is reduced by {value}[ ({percent})], for practised wearers only[ above {limit}]: reduce less, or lace with care and stop at pain, numbness or short breath.</source>
        <translation>Die Taille wird um {value}[ ({percent})] reduziert, nur für Geübte[ über {limit}]: weniger reduzieren oder behutsam schnüren und bei Schmerz, Taubheit oder Atemnot aufhören.</translation>
    </message>
    <message>
        <source>Seam {subject}: the two edges differ in length[ by {difference:fine}][ ({value:fine} and {other:fine})]; correct one of them so that they can be sewn together.</source>
        <translation>Naht {subject}: Die beiden Kanten sind verschieden lang[, Unterschied {difference:fine}][ ({value:fine} und {other:fine})]; eine davon berichtigen, damit sie sich zusammennähen lassen.</translation>
    </message>
    <message>
        <source>[The {detail} ]is not one smooth line across seam {subject}[ but bends by {value}]; smooth it there.</source>
        <translation>[{detail}: ]Keine glatte Linie über Naht {subject}[, sie knickt um {value}]; dort glätten.</translation>
    </message>
    <message>
        <source>There is no paper called “{detail}”; choose A4, A3, A0, Letter, Legal, Tabloid or a roll, or write a size in mm like 200x300.</source>
        <translation>Ein Papier „{detail}“ gibt es nicht; A4, A3, A0, Letter, Legal, Tabloid oder eine Rolle wählen oder ein Format in mm schreiben, etwa 200x300.</translation>
    </message>
    <message>
        <source>The paper[ {detail}] leaves too little room inside its margins[: {value}, and at least {limit} is needed]; choose a larger paper or smaller margins.</source>
        <translation>Das Papier[ {detail}] lässt innerhalb der Ränder zu wenig Platz[: {value}, mindestens {limit} nötig]; größeres Papier oder schmalere Ränder wählen.</translation>
    </message>
    <message>
        <source>This would take {value} sheets[ of {detail}], more than {limit}; choose a larger paper.</source>
        <translation>Das ergäbe {value} Blätter[ {detail}], mehr als {limit}; größeres Papier wählen.</translation>
    </message>
    <message>
        <source>{path}: there is no such file; check the name and the folder.</source>
        <translation>{path}: Diese Datei gibt es nicht; Namen und Ordner prüfen.</translation>
    </message>
    <message>
        <source>{path}: the file cannot be read[ ({text})]; check that you may open it.</source>
        <translation>{path}: Die Datei lässt sich nicht lesen[ ({text})]; Leserechte prüfen.</translation>
    </message>
    <message>
        <source>{path}: nothing can be written here[ ({text})]; choose another folder or name.</source>
        <translation>{path}: Hier lässt sich nichts schreiben[ ({text})]; anderen Ordner oder Namen wählen.</translation>
    </message>
    <message>
        <source>{path}: this is not a folio of Coutil; open a file that ends in .coutil.</source>
        <translation>{path}: Das ist keine Mappe von Coutil; eine Datei öffnen, die auf .coutil endet.</translation>
    </message>
    <message>
        <source>{path}: the folio is damaged[ ({text})]; nothing was changed, use your last copy of it.</source>
        <translation>{path}: Die Mappe ist beschädigt[ ({text})]; nichts wurde geändert, die letzte Sicherung verwenden.</translation>
    </message>
    <message>
        <source>{path}: a newer version of Coutil wrote this folio[ (format {file}, this program reads up to {program})]; update the program to open it.</source>
        <translation>{path}: Eine neuere Version von Coutil hat diese Mappe geschrieben[ (Format {file}, dieses Programm liest bis {program})]; zum Öffnen das Programm aktualisieren.</translation>
    </message>
    <message>
        <source>{path}: there is no room left on the disk; nothing was changed, make room and save again.</source>
        <translation>{path}: Auf dem Datenträger ist kein Platz mehr; nichts wurde geändert, Platz schaffen und erneut speichern.</translation>
    </message>
    <message>
        <source>The folio has no garment called “{path}”[; it has {text}].</source>
        <translation>Die Mappe hat kein Stück „{path}“[; vorhanden: {text}].</translation>
    </message>
    <message>
        <source>The garment has no revision “{path}”[; it has {text}].</source>
        <translation>Das Stück hat keinen Stand „{path}“[; vorhanden: {text}].</translation>
    </message>
    <message>
        <source>{path}: “{text}” is not a date; write it as year-month-day, like 2026-03-02.</source>
        <translation>{path}: „{text}“ ist kein Datum; als Jahr-Monat-Tag schreiben, etwa 2026-03-02.</translation>
    </message>
    <message>
        <source>The text is no valid JSON[ from line {line}, column {column} on]; look there for a missing or extra comma, quote or bracket, or a number too large.</source>
        <translation>Der Text ist kein gültiges JSON[ ab Zeile {line}, Spalte {column}]; dort auf fehlende oder überzählige Kommas, Anführungszeichen oder Klammern und auf zu große Zahlen achten.</translation>
    </message>
    <message>
        <source>The text is larger or nested deeper than anything this program writes ({path} {value}, at most {highest}); check that it is the right file.</source>
        <translation>Der Text ist größer oder tiefer verschachtelt als alles, was dieses Programm schreibt ({path} {value}, höchstens {highest}); prüfen, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <source>{path} stands twice in the text; remove one of them.</source>
        <translation>{path} steht zweimal im Text; eins davon löschen.</translation>
    </message>
    <message>
        <source>{path} is missing; add it.</source>
        <translation>{path} fehlt; bitte ergänzen.</translation>
    </message>
    <message>
        <source>This is not a file of the kind “{text}”; choose another file, or add the entries &quot;coutil&quot;: &quot;{text}&quot; and &quot;version&quot;: 1.</source>
        <translation>Das ist keine Datei der Art „{text}“; andere Datei wählen oder die Einträge &quot;coutil&quot;: &quot;{text}&quot; und &quot;version&quot;: 1 ergänzen.</translation>
    </message>
    <message>
        <source>version[ is {text} and] must be 1; write the file in that format, or update the program.</source>
        <translation>version[ ist {text},] muss 1 sein; die Datei in diesem Format schreiben oder das Programm aktualisieren.</translation>
    </message>
    <message>
        <source>{path}: there is no such key[; did you mean “{text}”?]</source>
        <translation>{path}: Diesen Schlüssel gibt es nicht[; war „{text}“ gemeint?]</translation>
    </message>
    <message>
        <source>{path} cannot be “{text}”; correct the value.</source>
        <translation>{path} kann nicht „{text}“ sein; den Wert berichtigen.</translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a text in quotes.</source>
        <translation>{path} ist {text}, muss aber ein Text in Anführungszeichen sein.</translation>
    </message>
    <message>
        <source>{path} is {text}, but must be true or false, without quotes.</source>
        <translation>{path} ist {text}, muss aber true oder false sein, ohne Anführungszeichen.</translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a number without quotes.</source>
        <translation>{path} ist {text}, muss aber eine Zahl ohne Anführungszeichen sein.</translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a whole number.</source>
        <translation>{path} ist {text}, muss aber eine ganze Zahl sein.</translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a list of numbers, with commas, in square brackets.</source>
        <translation>{path} ist {text}, muss aber eine Liste von Zahlen mit Kommas in eckigen Klammern sein.</translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a number, or a length in quotes like &quot;30 1/4 in&quot;.</source>
        <translation>{path} ist {text}, muss aber eine Zahl oder eine Länge in Anführungszeichen sein, etwa &quot;30 1/4 in&quot;.</translation>
    </message>
    <message>
        <source>{path} is {text}, but must be names with values in braces.</source>
        <translation>{path} ist {text}, müssen aber Namen mit Werten in geschweiften Klammern sein.</translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a list of entries in braces.</source>
        <translation>{path} ist {text}, muss aber eine Liste von Einträgen in geschweiften Klammern sein.</translation>
    </message>
    <message>
        <source>{path} must be one of these, in quotes: {text}.</source>
        <translation>{path} muss eins hiervon sein, in Anführungszeichen: {text}.</translation>
    </message>
    <message>
        <source>The folio has a garment called “{path}” already; choose another name.</source>
        <translation>Die Mappe hat schon ein Stück „{path}“; anderen Namen wählen.</translation>
    </message>
    <message>
        <source>There is no call “{path}”[ (perhaps “{text}”)]; coutil --help lists them.</source>
        <translation>Einen Befehl „{path}“ gibt es nicht[ (vielleicht „{text}“)]; coutil --help nennt alle.</translation>
    </message>
    <message>
        <source>The call {path} needs {text}; coutil --help shows how.</source>
        <translation>Der Befehl {path} braucht {text}; coutil --help zeigt, wie.</translation>
    </message>
    <message>
        <source>There is no option “{path}”[ for {text}]; coutil --help lists the options.</source>
        <translation>Eine Option „{path}“ gibt es nicht[ für {text}]; coutil --help nennt die Optionen.</translation>
    </message>
    <message>
        <source>Option {path} cannot be “{text}”[: it must lie between {lowest} and {highest}]; coutil --help shows what it takes.</source>
        <translation>Die Option {path} kann nicht „{text}“ sein[: sie muss zwischen {lowest} und {highest} liegen]; coutil --help zeigt, was sie nimmt.</translation>
    </message>
    <message>
        <source>Option {path} needs a value after it[: {text}].</source>
        <translation>Nach der Option {path} fehlt ein Wert[: {text}].</translation>
    </message>
    <message>
        <source>Option {path} is there twice; leave one of them out.</source>
        <translation>Die Option {path} steht zweimal da; eine davon weglassen.</translation>
    </message>
    <message>
        <source>Options {path} and {text} exclude each other; leave one of them out.</source>
        <translation>Die Optionen {path} und {text} schließen einander aus; eine davon weglassen.</translation>
    </message>
    <message>
        <source>“{path}” is one word too many[ for {text}]; leave it out, or put quotes around a name with blanks.</source>
        <translation>„{path}“ ist ein Wort zu viel[ für {text}]; weglassen, oder einen Namen mit Leerzeichen in Anführungszeichen setzen.</translation>
    </message>
    <message>
        <source>There is no display to open a window on; coutil --help lists the calls that need none.</source>
        <translation>Kein Bildschirm da, um ein Fenster zu öffnen; coutil --help nennt die Befehle, die keinen brauchen.</translation>
    </message>
    <message>
        <source>{path}: this is a folio of Coutil and is never written over; choose another name.</source>
        <translation>{path}: Das ist eine Mappe von Coutil und wird nie überschrieben; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>The file is empty; choose another one, or write it anew.</source>
        <translation>Die Datei ist leer; eine andere wählen oder sie neu schreiben.</translation>
    </message>
    <message>
        <source>Option {path} needs a new folio, but this one exists already (garments in it: {garments}); leave the option out or choose a new file.</source>
        <translation>Die Option {path} verlangt eine neue Mappe, diese gibt es aber schon (Stücke darin: {garments}); die Option weglassen oder eine neue Datei wählen.</translation>
    </message>
    <message>
        <source>“{subject}” does not fit this pattern and was left out[: there is no {detail}]; name a place that is there, or switch it off.</source>
        <translation>„{subject}“ passt nicht auf diesen Schnitt und wurde ausgelassen[: {detail} gibt es nicht]; einen vorhandenen Ort nennen oder die Änderung ausschalten.</translation>
    </message>
    <message>
        <source>“{subject}”[ at {detail}] asks for too much and was left out[: {value} where {limit} is the most]; use a smaller amount, or share it out.</source>
        <translation>„{subject}“[ bei {detail}] verlangt zu viel und wurde ausgelassen[: {value}, höchstens {limit}]; einen kleineren Betrag nehmen oder ihn verteilen.</translation>
    </message>
    <message>
        <source>“{subject}”: {detail} cannot be used; type a sound figure there.</source>
        <translation>„{subject}“: {detail} ist nicht brauchbar; dort einen sinnvollen Wert eingeben.</translation>
    </message>
    <message>
        <source>With “{subject}”[ at {detail}] the pattern does not hold[ in panel {panel}], so it was left out; use a smaller amount, or share it out.</source>
        <translation>Mit „{subject}“[ bei {detail}] geht der Schnitt[ in Teil {panel}] nicht mehr auf, daher wurde es ausgelassen; einen kleineren Betrag nehmen oder ihn verteilen.</translation>
    </message>
    <message>
        <source>The mark “{subject}” lies outside the pattern[: there is no {detail}]; give it a place on the revision that was tried.</source>
        <translation>Die Marke „{subject}“ liegt außerhalb des Schnitts[: {detail} gibt es nicht]; ihr einen Ort auf dem anprobierten Stand geben.</translation>
    </message>
    <message>
        <source>Seam {subject}[ in panel {panel}] is too curved for a channel in its own allowance[: {value} off the straight in 100 mm, {limit} is the most]; plan a tape there.</source>
        <translation>Naht {subject}[ in Teil {panel}] ist zu stark gebogen für einen Tunnel in der eigenen Nahtzugabe[: {value} Abweichung von der Geraden auf 100 mm, höchstens {limit}]; dort ein Band vorsehen.</translation>
    </message>
    <message>
        <source>[Panel {panel}: ]{subject} has a kink[ of {value}, more than {limit}]; smooth the line there, or let it stand with a reason.</source>
        <translation>[Teil {panel}: ]{subject} hat einen Knick[ von {value}, mehr als {limit}]; die Linie dort glätten oder mit Begründung stehen lassen.</translation>
    </message>
    <message>
        <source>{subject} measures {value}[, the style asks for {target}][ ({difference} off)]; check that the fitting asked for it.</source>
        <translation>{subject} misst {value}[, die Machart verlangt {target}][ (Unterschied {difference})]; prüfen, ob die Anprobe das verlangt hat.</translation>
    </message>
    <message>
        <source>Left and right differ, so the centre front is cut as two panels with a seam in place of the fold; make both sides equal to have the fold again.</source>
        <translation>Links und rechts unterscheiden sich, daher wird die vordere Mitte als zwei Teile mit einer Naht statt des Bruchs zugeschnitten; beide Seiten gleich machen, um wieder im Bruch zuzuschneiden.</translation>
    </message>
    <message>
        <source>Revision {path}[ of {text}] is not what was confirmed: the file was changed from outside or is damaged; open a copy from before.</source>
        <translation>Stand {path}[ von {text}] ist nicht, was bestätigt wurde: die Datei wurde von außen geändert oder ist beschädigt; eine frühere Kopie öffnen.</translation>
    </message>
    <message>
        <source>Revision {path}[ of {text}] began from a revision that is not in this file; open a copy from before.</source>
        <translation>Stand {path}[ von {text}] geht von einem Stand aus, der nicht in dieser Datei ist; eine frühere Kopie öffnen.</translation>
    </message>
    <message>
        <source>The pencil has errors that stand[: {text}]; mend them, or say why it is to be confirmed all the same.</source>
        <translation>Der Bleistiftstand hat offene Fehler[: {text}]; sie beheben oder begründen, warum er trotzdem bestätigt werden soll.</translation>
    </message>
    <message>
        <source>[{subject} has ]no pencil; begin one from a revision first.</source>
        <translation>[{subject} hat ]keinen Bleistiftstand; zuerst von einem bestätigten Stand aus einen beginnen.</translation>
    </message>
    <message>
        <source>[Revision {path}: ]today’s drafting rules would draw it up to {value:fine} differently[ in panel {panel}]; it stays and prints as it was confirmed.</source>
        <translation>[Stand {path}: ]die heutigen Konstruktionsregeln würden ihn um bis zu {value:fine} anders zeichnen[ (Teil {panel})]; er bleibt und druckt, wie er bestätigt wurde.</translation>
    </message>
    <message>
        <source>There is no fitting “{path}”[; there is {text}].</source>
        <translation>Es gibt keine Anprobe „{path}“[; vorhanden: {text}].</translation>
    </message>
    <message>
        <source>{path} is not a picture that can be read; choose a JPEG or PNG file.</source>
        <translation>{path} ist kein lesbares Bild; eine JPEG- oder PNG-Datei wählen.</translation>
    </message>
    <message>
        <source>{path} is too large[ ({text})]; choose a smaller picture.</source>
        <translation>{path} ist zu groß[ ({text})]; ein kleineres Bild wählen.</translation>
    </message>
    <message>
        <source>Neighbouring sheets cannot share {value}[: choose an overlap between {lowest} and {highest}, or a larger paper].</source>
        <translation>Benachbarte Blätter können nicht {value} gemeinsam haben[: Wähle eine Überlappung zwischen {lowest} und {highest} oder größeres Papier].</translation>
    </message>
    <message>
        <source>The margin cannot be {value}[: choose one between {lowest} and {highest}].</source>
        <translation>Der Rand kann nicht {value} sein[: Wähle einen zwischen {lowest} und {highest}].</translation>
    </message>
    <message>
        <source>A side of the paper is {value} long[: choose a paper with sides between {lowest} and {highest}].</source>
        <translation>Eine Seite des Papiers ist {value} lang[: Wähle Papier mit Seiten zwischen {lowest} und {highest}].</translation>
    </message>
    <message>
        <source>A correction of {value} ({subject}) is more than a printer is off[: it must lie between {lowest} and {highest}]; measure the square again and print at 100 %.</source>
        <translation>Eine Korrektur von {value} ({subject}) ist mehr, als ein Drucker abweicht[: Sie muss zwischen {lowest} und {highest} liegen]; miss das Quadrat noch einmal und drucke mit 100 %.</translation>
    </message>
    <message>
        <source>Along the seam {detail} that was given up, the two edges lay up to {value} apart, and the joined panel is as much wider there; take it in at the seams beside it.</source>
        <translation>Entlang der aufgegebenen Naht {detail} lagen die beiden Kanten bis zu {value} auseinander, und um so viel ist das verbundene Teil dort weiter; nimm es an den Nähten daneben ein.</translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a list of pairs of numbers, each pair in square brackets of its own.</source>
        <translation>{path} ist {text}, muss aber eine Liste von Zahlenpaaren sein, jedes Paar in eigenen eckigen Klammern.</translation>
    </message>
    <message>
        <source>{path} is {text}, but must be a list of texts in quotes, in square brackets.</source>
        <translation>{path} ist {text}, muss aber eine Liste von Texten in Anführungszeichen sein, in eckigen Klammern.</translation>
    </message>
    <message>
        <source>The girth at {subject}[ is {value:fine} on the panels, not {target:fine} as the girth table says]; draft the garment again.</source>
        <translation>Umfang auf der Querlinie {subject}[: {value:fine} in den Teilen, nicht {target:fine} wie in der Umfangstabelle]; das Kleidungsstück neu zeichnen lassen.</translation>
    </message>
    <message>
        <source>Left and right differ[ by {value}] at {subject}[ of panel {panel}]; check that this is meant, or make both sides equal.</source>
        <translation>Links und rechts unterscheiden sich bei {subject}[ von Teil {panel}][ um {value}]; prüfen, ob das gewollt ist, oder beide Seiten gleich machen.</translation>
    </message>
    <message>
        <source>Nothing changed[ between {subject}][ and {detail}]: there is nothing to print.</source>
        <translation>Nichts hat sich geändert[ zwischen {subject}][ und {detail}]: es gibt nichts zu drucken.</translation>
    </message>
    <message>
        <source>{path}: not saved, because revision {revision} of {text}, which was confirmed in this file elsewhere, would be lost; save under another name.</source>
        <translation>{path}: nicht gespeichert, denn Stand {revision} von {text}, der anderswo in dieser Datei bestätigt wurde, ginge verloren; unter anderem Namen speichern.</translation>
    </message>
    <message>
        <source>Revision {revision}: by today’s drafting rules “{subject}”[ at {detail}] does not fit any more; the revision stays and prints as it was confirmed.</source>
        <translation>Stand {revision}: nach den heutigen Konstruktionsregeln passt „{subject}“[ ({detail})] nicht mehr; der Stand bleibt und druckt, wie er bestätigt wurde.</translation>
    </message>
    <message>
        <source>[Revision {path}: ]it cannot be drafted by today’s rules; it stays and prints as it was confirmed.</source>
        <translation>[Stand {path}: ]er lässt sich nach den heutigen Regeln nicht konstruieren; er bleibt und druckt, wie er bestätigt wurde.</translation>
    </message>
    <message>
        <source>[Revision {path}: ]today’s drafting rules would not give it the same panels and edges[, panel {panel} among them]; it stays and prints as it was confirmed.</source>
        <translation>[Stand {path}: ]die heutigen Konstruktionsregeln ergäben nicht dieselben Teile und Kanten[, darunter Teil {panel}]; er bleibt und druckt, wie er bestätigt wurde.</translation>
    </message>
    <message>
        <source>Making-up: “{path}” cannot be {value}[: choose one between {lowest} and {highest}].</source>
        <translation>Verarbeitung: „{path}“ kann nicht {value} sein[: einen Wert zwischen {lowest} und {highest} wählen].</translation>
    </message>
    <message>
        <source>Making-up: “{path}” is not in this pattern[ ({text})]; choose another channel or panel, or take the choice out.</source>
        <translation>Verarbeitung: „{path}“ gibt es in diesem Schnitt nicht[ ({text})]; einen anderen Tunnel oder ein anderes Teil wählen oder die Festlegung streichen.</translation>
    </message>
    <message>
        <source>There is no room for the channel “{path}”[ in panel {panel}][: it would be {value} long and needs {limit}]; switch it off or move it.</source>
        <translation>Für den Tunnel „{path}“ ist kein Platz[ in Teil {panel}][: er wäre {value} lang und braucht {limit}]; ihn weglassen oder verlegen.</translation>
    </message>
    <message>
        <source>{subject} is too curved to be folded to a channel[: {value} off the straight, {limit} is the most]; choose tape for “{path}”.</source>
        <translation>{subject} ist zu stark gebogen, um zum Tunnel umgelegt zu werden[: {value} neben der Geraden, höchstens {limit}]; für „{path}“ Band wählen.</translation>
    </message>
    <message>
        <source>The allowance of “{path}” is {value}, and its channel needs {limit}; leave it to the channel, or choose tape.</source>
        <translation>Die Nahtzugabe von „{path}“ beträgt {value}, ihr Tunnel braucht {limit}; sie dem Tunnel überlassen oder Band wählen.</translation>
    </message>
    <message>
        <source>The channel “{path}” has room for a bone of {value}, and {limit} is the shortest of its kind; switch the channel off, or choose another bone.</source>
        <translation>Im Tunnel „{path}“ ist Platz für ein Stäbchen von {value}, das kürzeste seiner Art hat {limit}; den Tunnel weglassen oder ein anderes Stäbchen wählen.</translation>
    </message>
    <message>
        <source>The channel “{path}” bends to a radius of {value}, too much for this kind of bone ({limit}); choose a bone that bends sideways.</source>
        <translation>Der Tunnel „{path}“ biegt sich auf einen Radius von {value}, zu viel für diese Art Stäbchen ({limit}); eines wählen, das sich seitlich biegt.</translation>
    </message>
    <message>
        <source>No stock length is known for the bones of “{path}”; add the rods or the reel they are cut from.</source>
        <translation>Für die Stäbchen von „{path}“ ist keine Lagerlänge bekannt; die Stangen oder die Rolle angeben, von der sie geschnitten werden.</translation>
    </message>
    <message>
        <source>A piece of {value} cannot be cut from stock of {limit}; choose a longer stock length or a reel.</source>
        <translation>Ein Stück von {value} lässt sich nicht aus {limit} schneiden; eine längere Lagerlänge oder eine Rolle wählen.</translation>
    </message>
    <message>
        <source>The laced edges share {value}, and the eyelets need at least {limit}; choose a smaller pitch or shorter distances at the ends.</source>
        <translation>Die Schnürkanten haben gemeinsam {value}, die Ösen brauchen mindestens {limit}; einen kleineren Abstand oder kürzere Enden wählen.</translation>
    </message>
    <message>
        <source>The eyelets with a bone on both sides have {value}[ on panel {panel}] and need {limit}; choose narrower bones, or move the column.</source>
        <translation>Die Ösen mit je einem Stäbchen auf beiden Seiten haben {value}[ auf Teil {panel}] und brauchen {limit}; schmalere Stäbchen wählen oder die Ösenreihe versetzen.</translation>
    </message>
    <message>
        <source>The front edge has room for a busk of {value}, and the shortest in stock has {limit}; choose a shorter busk, less clearance or another front.</source>
        <translation>An der vorderen Kante ist Platz für ein Planchet von {value}, das kürzeste am Lager hat {limit}; ein kürzeres Planchet, weniger Abstand oder einen anderen Vorderverschluss wählen.</translation>
    </message>
    <message>
        <source>The waist does not cross panel {panel}, so the waist tape cannot be caught there; look at its edges at the waist.</source>
        <translation>Die Taille läuft nicht durch Teil {panel}, das Taillenband lässt sich dort nicht mitfassen; seine Kanten an der Taille ansehen.</translation>
    </message>
    <message>
        <source>Layer “{path}” asks for “{text}”, which this pattern does not have; correct the layer.</source>
        <translation>Die Lage „{path}“ verlangt „{text}“, das dieser Schnitt nicht hat; die Lage berichtigen.</translation>
    </message>
    <message>
        <source>There is no layer “{path}” in this garment; choose one of its layers.</source>
        <translation>Die Lage „{path}“ gibt es in diesem Stück nicht; eine seiner Lagen wählen.</translation>
    </message>
    <message>
        <source>The label of panel {panel} does not fit clear of its lines; make it smaller or move it.</source>
        <translation>Die Beschriftung von Teil {panel} passt nicht zwischen seine Linien; sie kleiner machen oder verschieben.</translation>
    </message>
    <message>
        <source>The allowance at a corner of {subject}[ in panel {panel}] does not lie flat when it is folded; make it narrower there.</source>
        <translation>Die Zugabe an einer Ecke von {subject}[ in Teil {panel}] liegt umgelegt nicht flach; sie dort schmaler machen.</translation>
    </message>
    <message>
        <source>The drawing cannot be read[ at “{text}”][ from line {line} on]; save it again as plain SVG, or write it anew with coutil trace.</source>
        <translation>Die Zeichnung ist nicht lesbar[ bei „{text}“][ ab Zeile {line}]; noch einmal als einfaches SVG speichern oder mit coutil trace neu schreiben.</translation>
    </message>
    <message>
        <source>No panel of Coutil is in this drawing; give an SVG that coutil pattern or coutil trace wrote, with its groups as they were.</source>
        <translation>In dieser Zeichnung ist kein Schnittteil von Coutil; eine SVG-Datei angeben, die coutil pattern oder coutil trace geschrieben hat, mit ihren Gruppen, wie sie waren.</translation>
    </message>
    <message>
        <source>The drawing is larger or nested deeper than anything this program writes ({path} {value}, at most {highest}); check that it is the right file.</source>
        <translation>Die Zeichnung ist größer oder tiefer verschachtelt als alles, was dieses Programm schreibt ({path} {value}, höchstens {highest}); prüfen, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <source>Panel {panel} is not in the drawing; write the drawing anew before it is cut.</source>
        <translation>Schnittteil {panel} fehlt in der Zeichnung; die Zeichnung neu schreiben, bevor danach geschnitten wird.</translation>
    </message>
    <message>
        <source>The drawing has a panel {panel} that this revision has not; check that both are of the same garment and revision.</source>
        <translation>Die Zeichnung hat ein Schnittteil {panel}, das es in diesem Stand nicht gibt; prüfen, ob beide zum selben Stück und Stand gehören.</translation>
    </message>
    <message>
        <source>Panel {panel} of the drawing lies up to {value:fine} off this revision, more than {limit:fine}; look there before it is cut.</source>
        <translation>Schnittteil {panel} der Zeichnung liegt bis zu {value:fine} neben diesem Stand, mehr als {limit:fine}; dort nachsehen, bevor danach geschnitten wird.</translation>
    </message>
    <message>
        <source>Panel {panel} is drawn at {percent} of its size; open the drawing in millimetres, without fitting it to a page, and save it again.</source>
        <translation>Schnittteil {panel} ist auf {percent} seiner Größe gezeichnet; die Zeichnung in Millimetern öffnen, ohne sie an eine Seite anzupassen, und neu speichern.</translation>
    </message>
</context>
<context>
    <name>Projector</name>
    <message>
        <source>screen</source>
        <translation>Bildschirm</translation>
    </message>
</context>
<context>
    <name>Recovery</name>
    <message>
        <source>Client without a name</source>
        <translation>Kundin ohne Namen</translation>
    </message>
    <message>
        <source>%1, %2, never saved</source>
        <translation>%1, %2, nie gespeichert</translation>
    </message>
    <message>
        <source>%1, %2, from %3</source>
        <translation>%1, %2, aus %3</translation>
    </message>
</context>
<context>
    <name>RevisionWords</name>
    <message>
        <source>revision %1, %2</source>
        <translation>Stand %1, %2</translation>
    </message>
    <message>
        <source>pencil</source>
        <translation>Bleistift</translation>
    </message>
    <message>
        <source>pencil “%1”</source>
        <translation>Bleistift „%1“</translation>
    </message>
</context>
<context>
    <name>Sheets</name>
    <message>
        <source>If a side is off, type what you measured into the Print bench and print this page again. On the command line give the correction: 100 divided by what you measured in mm (99.5 measured: %1). One figure goes across the short side of the paper, one along its long side.</source>
        <translation>Weicht eine Seite ab, das gemessene Maß beim Drucken eintragen und diese Seite neu drucken. Auf der Befehlszeile die Korrektur angeben: 100 geteilt durch das gemessene Maß in mm (99,5 gemessen: %1). Eine Zahl gilt für die kurze Seite des Papiers, eine für die lange.</translation>
    </message>
    <message>
        <source>This page was made with corrections %1 (across) and %2 (along). If it is still off, the Print bench builds on them; on the command line multiply them by the new figure.</source>
        <translation>Diese Seite entstand mit den Korrekturen %1 (quer) und %2 (längs). Weicht sie noch ab, rechnet das Programm beim Drucken darauf weiter; auf der Befehlszeile sie mit der neuen Zahl malnehmen.</translation>
    </message>
    <message>
        <source>Estimated, not measured; measure before cutting good cloth:</source>
        <translation>Geschätzt, nicht gemessen; vor dem Zuschnitt in gutem Stoff nachmessen:</translation>
    </message>
    <message>
        <source>%1: %2, likely within %3</source>
        <translation>%1: %2, wahrscheinlich auf %3 genau</translation>
    </message>
    <message>
        <source>Measure this page first</source>
        <translation>Zuerst diese Seite nachmessen</translation>
    </message>
    <message>
        <source>Print at 100 % (actual size), never fit to page</source>
        <translation>Mit 100 % drucken (tatsächliche Größe), nie an die Seite anpassen</translation>
    </message>
    <message>
        <source>Print this page alone first. Measure the square with a ruler in both directions, across and upwards: each side must be 100 mm, give or take half a millimetre. Or measure both bars: 4 in. Print the rest only when both directions are right.</source>
        <translation>Zuerst nur diese Seite drucken. Das Quadrat mit einem Lineal in beiden Richtungen nachmessen, quer und hoch: jede Seite muss 100 mm lang sein, auf einen halben Millimeter genau. Oder beide Balken messen: 4 in. Den Rest erst drucken, wenn beide Richtungen stimmen.</translation>
    </message>
    <message>
        <source>Joining: cut off the left and the upper edge of a sheet along its frame wherever it has a neighbour there. Lay it on the neighbour&apos;s dashed line so that crosses meet and the two halves of each numbered mark make one. Tape.</source>
        <translation>Kleben: Den linken und den oberen Rand eines Blattes am Rahmen abschneiden, wo dort ein Nachbar liegt. Auf die gestrichelte Linie des Nachbarn legen, sodass die Kreuze sich decken und die Hälften jedes nummerierten Zeichens eins ergeben. Festkleben.</translation>
    </message>
    <message>
        <source>100 mm</source>
        <translation>100 mm</translation>
    </message>
    <message>
        <source>4 in</source>
        <translation>4 in</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Sheet %1</source>
        <translation>Blatt %1</translation>
    </message>
    <message>
        <source>Sheet map, %1 sheets</source>
        <translation>Klebeplan, Blätter: %1</translation>
    </message>
    <message>
        <source>pencil</source>
        <translation>Bleistift</translation>
    </message>
    <message>
        <source>revision %1</source>
        <translation>Stand %1</translation>
    </message>
    <message>
        <source>cut %1</source>
        <translation>%1× zuschneiden</translation>
    </message>
    <message>
        <source>one mirrored</source>
        <translation>einmal gegengleich</translation>
    </message>
    <message>
        <source>mirrored</source>
        <translation>gegengleich</translation>
    </message>
    <message>
        <source>on the fold</source>
        <translation>im Stoffbruch</translation>
    </message>
    <message>
        <source>panel %1</source>
        <translation>Schnittteil %1</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>Fadenlauf</translation>
    </message>
    <message>
        <source>Sew a mock-up from these sheets before cutting good cloth.</source>
        <translation>Vor dem Zuschnitt in gutem Stoff nach diesen Blättern ein Probemodell nähen.</translation>
    </message>
    <message>
        <source>Pencil: this state is not confirmed and may still change.</source>
        <translation>Bleistift: Dieser Stand ist nicht bestätigt und kann sich noch ändern.</translation>
    </message>
    <message>
        <source>Before you cut anything: measure the square with a ruler in both directions, across and upwards: each side must be 100 mm, give or take half a millimetre. Or measure both bars: 4 in. Cut only when both directions are right.</source>
        <translation>Vor dem Zuschneiden: Miss das Quadrat mit dem Lineal in beiden Richtungen, quer und aufwärts: Jede Seite muss 100 mm lang sein, auf einen halben Millimeter genau. Oder miss beide Balken: 4 in. Schneide erst zu, wenn beide Richtungen stimmen.</translation>
    </message>
    <message>
        <source>One big page</source>
        <translation>Eine große Seite</translation>
    </message>
</context>
<context>
    <name>StyleWords</name>
    <message>
        <source>Block</source>
        <translation>Grundschnitt</translation>
    </message>
    <message>
        <source>Panels per half</source>
        <translation>Schnittteile je Hälfte</translation>
    </message>
    <message>
        <source>Lacing gap</source>
        <translation>Schnürlücke</translation>
    </message>
    <message>
        <source>Lacing gap by level</source>
        <translation>Schnürlücke je Querlinie</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>Zugabe</translation>
    </message>
    <message>
        <source>Front closure</source>
        <translation>Vorderer Verschluss</translation>
    </message>
    <message>
        <source>Top edge</source>
        <translation>Oberkante</translation>
    </message>
    <message>
        <source>Top edge at centre front</source>
        <translation>Oberkante an der vorderen Mitte</translation>
    </message>
    <message>
        <source>Top edge at the bust seam</source>
        <translation>Oberkante an der Brustnaht</translation>
    </message>
    <message>
        <source>Top edge at the side</source>
        <translation>Oberkante an der Seite</translation>
    </message>
    <message>
        <source>Top edge at centre back</source>
        <translation>Oberkante an der hinteren Mitte</translation>
    </message>
    <message>
        <source>Bottom edge</source>
        <translation>Unterkante</translation>
    </message>
    <message>
        <source>Bottom edge at centre front</source>
        <translation>Unterkante an der vorderen Mitte</translation>
    </message>
    <message>
        <source>Bottom edge at the side</source>
        <translation>Unterkante an der Seite</translation>
    </message>
    <message>
        <source>Bottom edge at centre back</source>
        <translation>Unterkante an der hinteren Mitte</translation>
    </message>
    <message>
        <source>Front&apos;s share of the width</source>
        <translation>Anteil des Vorderteils an der Weite</translation>
    </message>
    <message>
        <source>Panel widths</source>
        <translation>Breiten der Schnittteile</translation>
    </message>
    <message>
        <source>Shares of the seams</source>
        <translation>Anteile der Nähte</translation>
    </message>
    <message>
        <source>Part taken from the panel in front</source>
        <translation>Anteil aus dem vorderen Schnittteil</translation>
    </message>
    <message>
        <source>Levels of your own</source>
        <translation>Eigene Querlinien</translation>
    </message>
    <message>
        <source>Allowance</source>
        <translation>Nahtzugabe</translation>
    </message>
    <message>
        <source>Seam allowance</source>
        <translation>Nahtzugabe an den Nähten</translation>
    </message>
    <message>
        <source>Allowance at the openings</source>
        <translation>Nahtzugabe an den Öffnungen</translation>
    </message>
    <message>
        <source>Allowance at top and bottom</source>
        <translation>Nahtzugabe oben und unten</translation>
    </message>
    <message>
        <source>Allowance of one edge</source>
        <translation>Nahtzugabe einer Kante</translation>
    </message>
    <message>
        <source>Height at a seam</source>
        <translation>Höhe an einer Naht</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>TimelineWords</name>
    <message>
        <source>posted fitting, %1</source>
        <translation>Anprobe per Post, %1</translation>
    </message>
    <message>
        <source>fitting, %1</source>
        <translation>Anprobe, %1</translation>
    </message>
    <message>
        <source>block, %1</source>
        <translation>Grundschnitt, %1</translation>
    </message>
    <message>
        <source>%1, begun %2</source>
        <translation>%1, begonnen %2</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>aus %1</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>confirmed by %1</source>
        <translation>bestätigt von %1</translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s)</source>
        <translation>
            <numerusform>%n Marke</numerusform>
            <numerusform>%n Marken</numerusform>
        </translation>
    </message>
    <message>
        <source>read by %1</source>
        <translation>abgelesen von %1</translation>
    </message>
    <message>
        <source>nothing changed yet</source>
        <translation>noch nichts geändert</translation>
    </message>
    <message>
        <source>pencil</source>
        <translation>Bleistift</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Grundschnitt</translation>
    </message>
    <message>
        <source>rev %1</source>
        <translation>Stand %1</translation>
    </message>
    <message>
        <source>fitting</source>
        <translation>Anprobe</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>date on the timeline</comment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>date on the timeline</comment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>shown on the table</source>
        <translation>liegt auf dem Tisch</translation>
    </message>
</context>
<context>
    <name>TracingScene</name>
    <message>
        <source>%1 of panel %2
sewing line: %3
allowance: %4</source>
        <translation>%1 von Schnittteil %2
Nahtlinie: %3
Nahtzugabe: %4</translation>
    </message>
    <message>
        <source>cut %1 on the fold</source>
        <translation>%1× zuschneiden im Stoffbruch</translation>
    </message>
    <message>
        <source>cut 2, one mirrored</source>
        <translation>2× zuschneiden, einmal gegengleich</translation>
    </message>
    <message>
        <source>cut %1, half mirrored</source>
        <translation>%1× zuschneiden, die Hälfte gegengleich</translation>
    </message>
    <message>
        <source>cut %1</source>
        <translation>%1× zuschneiden</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>TradeWords</name>
    <message>
        <source>upper chest</source>
        <translation>Oberbrust</translation>
    </message>
    <message>
        <source>bust</source>
        <translation>Brust</translation>
    </message>
    <message>
        <source>under-bust</source>
        <translation>Unterbrust</translation>
    </message>
    <message>
        <source>waist</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>high hip</source>
        <translation>hohe Hüfte</translation>
    </message>
    <message>
        <source>hip</source>
        <translation>Hüfte</translation>
    </message>
    <message>
        <source>top edge</source>
        <translation>Oberkante</translation>
    </message>
    <message>
        <source>bottom edge</source>
        <translation>Unterkante</translation>
    </message>
    <message>
        <source>centre front</source>
        <translation>vordere Mitte</translation>
    </message>
    <message>
        <source>centre back</source>
        <translation>hintere Mitte</translation>
    </message>
    <message>
        <source>seam %1</source>
        <translation>Naht %1</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>in</source>
        <comment>inch</comment>
        <translation>in</translation>
    </message>
</context>
<context>
    <name>coutil::AllowancePart</name>
    <message>
        <source>Seams</source>
        <translation>Nähte</translation>
    </message>
    <message>
        <source>Allowance at seams</source>
        <translation>Nahtzugabe an den Nähten</translation>
    </message>
    <message>
        <source>Openings</source>
        <translation>Öffnungen</translation>
    </message>
    <message>
        <source>Allowance at openings</source>
        <translation>Nahtzugabe an den Öffnungen</translation>
    </message>
    <message>
        <source>Edges</source>
        <translation>Kanten</translation>
    </message>
    <message>
        <source>Allowance at edges that are not bound</source>
        <translation>Nahtzugabe an Kanten ohne Einfassung</translation>
    </message>
    <message>
        <source>Top edge is bound</source>
        <translation>Oberkante eingefasst</translation>
    </message>
    <message>
        <source>Bottom edge is bound</source>
        <translation>Unterkante eingefasst</translation>
    </message>
    <message>
        <source>A bound edge is cut on the sewing line.</source>
        <translation>Eine eingefasste Kante wird auf der Nahtlinie zugeschnitten.</translation>
    </message>
</context>
<context>
    <name>coutil::BottomEdgePart</name>
    <message>
        <source>Shape of the bottom edge</source>
        <translation>Form der Unterkante</translation>
    </message>
    <message>
        <source>Straight</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Curved</source>
        <translation>Geschwungen</translation>
    </message>
    <message>
        <source>Pointed</source>
        <translation>Mit Schneppe</translation>
    </message>
    <message>
        <source>Dipped over the hip</source>
        <translation>Über der Hüfte tiefer</translation>
    </message>
    <message>
        <source>Bottom edge shape</source>
        <translation>Form der Unterkante</translation>
    </message>
    <message>
        <source>Centre front</source>
        <translation>Vordere Mitte</translation>
    </message>
    <message>
        <source>Bottom edge at the centre front</source>
        <translation>Unterkante an der vorderen Mitte</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Bottom edge at the side</source>
        <translation>Unterkante an der Seite</translation>
    </message>
    <message>
        <source>Centre back</source>
        <translation>Hintere Mitte</translation>
    </message>
    <message>
        <source>Bottom edge at the centre back</source>
        <translation>Unterkante an der hinteren Mitte</translation>
    </message>
</context>
<context>
    <name>coutil::CalibrationSquare</name>
    <message>
        <source>Square to be measured</source>
        <translation>Quadrat zum Nachmessen</translation>
    </message>
    <message>
        <source>Arrow keys move its right and its upper edge.</source>
        <translation>Pfeiltasten verschieben seine rechte und seine obere Kante.</translation>
    </message>
</context>
<context>
    <name>coutil::CalibrationTool</name>
    <message>
        <source>Side of the square</source>
        <translation>Seite des Quadrats</translation>
    </message>
    <message>
        <source>Measured across</source>
        <translation>Gemessen quer</translation>
    </message>
    <message>
        <source>Measured up</source>
        <translation>Gemessen hoch</translation>
    </message>
    <message>
        <source>Take the measures</source>
        <translation>Maße übernehmen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Measure the square on the table, across and up, from the middle of one line to the middle of the other, and type both. Or drag its edges until it fits the side; arrow keys move them when the square has the keyboard. Esc: done.</source>
        <translation>Messen Sie das Quadrat auf dem Tisch, quer und hoch, von der Mitte der einen Linie zur Mitte der anderen, und tippen Sie beides ein. Oder ziehen Sie seine Kanten, bis es der Seite entspricht; mit den Pfeiltasten geht es, wenn das Quadrat die Tastatur hat. Esc: fertig.</translation>
    </message>
    <message>
        <source>A square of this side does not fit the screen. Type another side.</source>
        <translation>Ein Quadrat dieser Seite passt nicht auf den Bildschirm. Tippen Sie eine andere Seite ein.</translation>
    </message>
    <message>
        <source>Two measures are needed: the square&apos;s width and its height on the table.</source>
        <translation>Zwei Maße werden gebraucht: Breite und Höhe des Quadrats auf dem Tisch.</translation>
    </message>
    <message>
        <source>No projector throws a square of this size. Measure again, and look at the unit.</source>
        <translation>Kein Projektor wirft ein Quadrat dieser Größe. Messen Sie noch einmal und achten Sie auf die Einheit.</translation>
    </message>
    <message>
        <source>Taken. Measure once more: both must be %1 now.</source>
        <translation>Übernommen. Messen Sie noch einmal nach: Beides muss jetzt %1 sein.</translation>
    </message>
    <message>
        <source>Drag until the square is %1 across and up on the table. Esc: done.</source>
        <translation>Ziehen Sie, bis das Quadrat auf dem Tisch quer und hoch %1 misst. Esc: fertig.</translation>
    </message>
</context>
<context>
    <name>coutil::ClosurePart</name>
    <message>
        <source>%1, %2 in all</source>
        <translation>%1, insgesamt %2</translation>
    </message>
    <message>
        <source>Panels a half</source>
        <translation>Teile je Hälfte</translation>
    </message>
    <message>
        <source>Busk</source>
        <translation>Planchet</translation>
    </message>
    <message>
        <source>On the fold</source>
        <translation>Im Stoffbruch</translation>
    </message>
    <message>
        <source>Seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>Centre front</source>
        <translation>Vordere Mitte</translation>
    </message>
    <message>
        <source>Lacing gap</source>
        <translation>Schnürlücke</translation>
    </message>
    <message>
        <source>Number of panels</source>
        <translation>Anzahl der Schnittteile</translation>
    </message>
    <message>
        <source>Front closure</source>
        <translation>Vorderer Verschluss</translation>
    </message>
</context>
<context>
    <name>coutil::CompareBench</name>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Girth against height</source>
        <translation>Umfang über der Höhe</translation>
    </message>
    <message>
        <source>Altered between the two</source>
        <translation>Zwischen beiden geändert</translation>
    </message>
    <message>
        <source>One revision: nothing to compare yet. Fit it, confirm it, and what changed since then shows here. The two sides of one pattern can be compared already.</source>
        <translation>Ein Stand: noch nichts zu vergleichen. Anprobieren, bestätigen, und was sich seither geändert hat, steht hier. Die beiden Seiten eines Schnitts lassen sich schon jetzt vergleichen.</translation>
    </message>
    <message>
        <source>Left and right are the same.</source>
        <translation>Links und rechts sind gleich.</translation>
    </message>
    <message>
        <source>Both are the same.</source>
        <translation>Beide sind gleich.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Save the comparison</source>
        <translation>Vergleich speichern</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Comparison written to %1.</source>
        <translation>Vergleich nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>The comparison is with the printer.</source>
        <translation>Der Vergleich ist beim Drucker.</translation>
    </message>
    <message>
        <source>Save as SVG…</source>
        <translation>Als SVG speichern…</translation>
    </message>
    <message>
        <source>Change sheet…</source>
        <translation>Änderungsbogen…</translation>
    </message>
    <message>
        <source>Only what changed from A to B, true to scale, to redraw a pattern that was printed.</source>
        <translation>Nur was sich von A nach B geändert hat, in wahrer Größe, um einen gedruckten Schnitt nachzuzeichnen.</translation>
    </message>
    <message>
        <source>SVG files (*.svg)</source>
        <translation>SVG-Dateien (*.svg)</translation>
    </message>
</context>
<context>
    <name>coutil::CompareChart</name>
    <message>
        <source>Girth against height</source>
        <translation>Umfang über der Höhe</translation>
    </message>
    <message>
        <source>%1: body %2, left %3, right %4</source>
        <comment>height</comment>
        <translation>%1: Körper %2, links %3, rechts %4</translation>
    </message>
    <message>
        <source>%1: body %2, A %3, B %4</source>
        <comment>height</comment>
        <translation>%1: Körper %2, A %3, B %4</translation>
    </message>
    <message>
        <source>dots: the body; point at a height to read it</source>
        <translation>Punkte: der Körper; auf eine Höhe zeigen, um sie abzulesen</translation>
    </message>
</context>
<context>
    <name>coutil::CompareChoices</name>
    <message>
        <source>Swap A and B</source>
        <translation>A und B tauschen</translation>
    </message>
    <message>
        <source>two revisions</source>
        <translation>zwei Stände</translation>
    </message>
    <message>
        <source>left against right</source>
        <translation>links gegen rechts</translation>
    </message>
    <message>
        <source>over each other</source>
        <translation>übereinander</translation>
    </message>
    <message>
        <source>side by side</source>
        <translation>nebeneinander</translation>
    </message>
    <message>
        <source>as large as they are</source>
        <translation>so groß, wie sie sind</translation>
    </message>
    <message>
        <source>5 times as large</source>
        <translation>5-mal so groß</translation>
    </message>
    <message>
        <source>10 times as large</source>
        <translation>10-mal so groß</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>What is compared</source>
        <translation>Was verglichen wird</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>A, the first to compare</source>
        <translation>A, der erste Stand</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>B, the second to compare</source>
        <translation>B, der zweite Stand</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>How both are shown</source>
        <translation>Wie beide gezeigt werden</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Unterschiede</translation>
    </message>
    <message>
        <source>How large differences are drawn</source>
        <translation>Wie groß Unterschiede gezeichnet werden</translation>
    </message>
</context>
<context>
    <name>coutil::ConfirmDialog</name>
    <message>
        <source>Confirm revision %1 of %2</source>
        <translation>Stand %1 von %2 bestätigen</translation>
    </message>
    <message>
        <source>The pencil is gone over in ink and becomes revision %1. Its outlines, measurements, style and alterations, the date, the name and the note never change again, and undo does not go back over it. What comes later begins as a new pencil. The folio is saved at once.</source>
        <translation>Der Bleistift wird mit Tinte nachgezogen und wird Stand %1. Umrisse, Maße, Machart und Änderungen, Datum, Name und Notiz ändern sich nie mehr, und Rückgängig geht nicht darüber hinaus. Was danach kommt, beginnt mit einem neuen Bleistift. Die Mappe wird sofort gespeichert.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Confirmed by</source>
        <translation>Bestätigt von</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>&amp;Datum</translation>
    </message>
    <message>
        <source>Confirmed &amp;by</source>
        <translation>Bestätigt &amp;von</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>Problems that stand</source>
        <translation>Offene Probleme</translation>
    </message>
    <message>
        <source>Errors stand. Go back and mend them, or write why it is confirmed all the same:</source>
        <translation>Es gibt offene Fehler. Zurückgehen und sie beheben, oder begründen, warum trotzdem bestätigt wird:</translation>
    </message>
    <message>
        <source>Why it is confirmed although errors stand</source>
        <translation>Warum trotz offener Fehler bestätigt wird</translation>
    </message>
    <message>
        <source>&amp;Confirm revision %1</source>
        <translation>Stand %1 &amp;bestätigen</translation>
    </message>
</context>
<context>
    <name>coutil::Confirming</name>
    <message>
        <source>Block from the measurements of %1</source>
        <translation>Grundschnitt nach den Maßen vom %1</translation>
    </message>
    <message>
        <source>Confirmed and saved as %1.</source>
        <translation>Bestätigt und gespeichert als %1.</translation>
    </message>
    <message>
        <source>Confirmed as %1, but not in a file yet: save the folio to keep it.</source>
        <translation>Bestätigt als %1, aber noch in keiner Datei: die Mappe speichern, um ihn zu behalten.</translation>
    </message>
</context>
<context>
    <name>coutil::CorrectionPart</name>
    <message>
        <source>Use</source>
        <translation>Anwenden</translation>
    </message>
    <message>
        <source>No correction</source>
        <translation>Ohne Korrektur</translation>
    </message>
    <message>
        <source>Print the first page alone and measure its 100 mm square. The paper is held upright.</source>
        <translation>Zuerst nur die erste Seite drucken und ihr Quadrat von 100 mm nachmessen, Papier hochkant gehalten.</translation>
    </message>
    <message>
        <source>Measured across</source>
        <translation>Quer gemessen</translation>
    </message>
    <message>
        <source>Measured up</source>
        <translation>Hoch gemessen</translation>
    </message>
    <message>
        <source>Use the measured correction</source>
        <translation>Gemessene Korrektur anwenden</translation>
    </message>
    <message>
        <source>No correction is in force for %1.</source>
        <translation>Für %1 gilt keine Korrektur.</translation>
    </message>
    <message>
        <source>In force for %1: %2 % across, %3 % up.</source>
        <translation>Für %1 gilt: quer %2 %, hoch %3 %.</translation>
    </message>
</context>
<context>
    <name>coutil::CutList</name>
    <message>
        <source>Panel %1: %2</source>
        <translation>Schnittteil %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) in all</source>
        <translation>
            <numerusform>%n Zuschnitt insgesamt</numerusform>
            <numerusform>%n Zuschnitte insgesamt</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coutil::DraftBench</name>
    <message>
        <source>Problems</source>
        <translation>Probleme</translation>
    </message>
    <message>
        <source>Panels and closures</source>
        <translation>Schnittteile und Verschlüsse</translation>
    </message>
    <message>
        <source>Girths</source>
        <translation>Umfänge</translation>
    </message>
    <message>
        <source>Top edge, up from the waist</source>
        <translation>Oberkante, ab Taille nach oben</translation>
    </message>
    <message>
        <source>Bottom edge, down from the waist</source>
        <translation>Unterkante, ab Taille nach unten</translation>
    </message>
    <message>
        <source>Estimates</source>
        <translation>Schätzungen</translation>
    </message>
    <message>
        <source>Draft</source>
        <translation>Konstruieren</translation>
    </message>
</context>
<context>
    <name>coutil::EdgeAllowancePart</name>
    <message>
        <source>Allowance at %1 of panel %2</source>
        <translation>Nahtzugabe: %1 von Schnittteil %2</translation>
    </message>
    <message>
        <source>Picked panel</source>
        <translation>Gewähltes Schnittteil</translation>
    </message>
    <message>
        <source>Panel %1</source>
        <translation>Schnittteil %1</translation>
    </message>
    <message>
        <source>Click a panel, or press Tab on the table, to give its edges allowances of their own.</source>
        <translation>Ein Schnittteil anklicken oder auf dem Tisch Tab drücken, um seinen Kanten eigene Nahtzugaben zu geben.</translation>
    </message>
    <message>
        <source>Leave a field empty to follow the rules above.</source>
        <translation>Ein leeres Feld folgt den Angaben oben.</translation>
    </message>
</context>
<context>
    <name>coutil::EstimateList</name>
    <message>
        <source>%1 about %2 ± %3</source>
        <translation>%1 etwa %2 ± %3</translation>
    </message>
    <message>
        <source>, from %1</source>
        <translation>, aus %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Everything was measured.</source>
        <translation>Alles ist gemessen.</translation>
    </message>
</context>
<context>
    <name>coutil::FitAlterationList</name>
    <message>
        <source>%1 (%2)</source>
        <comment>alteration, why</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Left and right differ. Make both sides equal again:</source>
        <translation>Links und rechts sind verschieden. Beide Seiten wieder gleich machen:</translation>
    </message>
    <message>
        <source>Mean of both</source>
        <translation>Mittel aus beiden</translation>
    </message>
    <message>
        <source>Both sides equal, the mean of both</source>
        <translation>Beide Seiten gleich, Mittel aus beiden</translation>
    </message>
    <message>
        <source>As left</source>
        <translation>Wie links</translation>
    </message>
    <message>
        <source>Both sides equal, as the left</source>
        <translation>Beide Seiten gleich, wie die linke</translation>
    </message>
    <message>
        <source>As right</source>
        <translation>Wie rechts</translation>
    </message>
    <message>
        <source>Both sides equal, as the right</source>
        <translation>Beide Seiten gleich, wie die rechte</translation>
    </message>
    <message>
        <source>No alterations yet.</source>
        <translation>Noch keine Änderungen.</translation>
    </message>
    <message>
        <source>%1: counts</source>
        <translation>%1: gilt</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
</context>
<context>
    <name>coutil::FitBench</name>
    <message>
        <source>Fit</source>
        <translation>Anprobieren</translation>
    </message>
    <message>
        <source>record a fitting</source>
        <translation>Anprobe aufnehmen</translation>
    </message>
    <message>
        <source>remove a fitting</source>
        <translation>Anprobe entfernen</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>Marke %1</translation>
    </message>
    <message>
        <source>remove a mark</source>
        <translation>Marke entfernen</translation>
    </message>
    <message>
        <source>attach photos</source>
        <translation>Fotos anhängen</translation>
    </message>
    <message>
        <source>remove a photo</source>
        <translation>Foto entfernen</translation>
    </message>
    <message>
        <source>Fitting</source>
        <translation>Anprobe</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Marken</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Alterations of the pencil</source>
        <translation>Änderungen des Bleistiftstands</translation>
    </message>
    <message>
        <source>Problems</source>
        <translation>Probleme</translation>
    </message>
    <message>
        <source>switch an alteration on</source>
        <translation>Änderung einschalten</translation>
    </message>
    <message>
        <source>switch an alteration off</source>
        <translation>Änderung ausschalten</translation>
    </message>
    <message>
        <source>remove an alteration</source>
        <translation>Änderung entfernen</translation>
    </message>
    <message>
        <source>make both sides equal</source>
        <translation>beide Seiten gleich machen</translation>
    </message>
    <message>
        <source>set a problem aside</source>
        <translation>Problem zurückstellen</translation>
    </message>
    <message>
        <source>take a problem back</source>
        <translation>Problem zurückholen</translation>
    </message>
    <message>
        <source>A confirmed revision is on the table; the first mark begins a pencil over it.</source>
        <translation>Ein bestätigter Stand liegt auf dem Tisch; die erste Marke beginnt darüber einen Bleistiftstand.</translation>
    </message>
    <message>
        <source>Pick a mark in the list, then click the spot on the photo it was read from.</source>
        <translation>Eine Marke in der Liste wählen, dann die Stelle auf dem Foto anklicken, an der sie abgelesen wurde.</translation>
    </message>
    <message>
        <source>A click ties this spot to the mark: %1.</source>
        <translation>Ein Klick verbindet diese Stelle mit der Marke: %1.</translation>
    </message>
    <message>
        <source>%1 · a click marks it here</source>
        <translation>%1 · ein Klick setzt hier eine Marke</translation>
    </message>
    <message>
        <source>drag on %1</source>
        <translation>Ziehen an %1</translation>
    </message>
</context>
<context>
    <name>coutil::FitFadeField</name>
    <message>
        <source>%1: carried %2</source>
        <comment>Fades above over: carried to the edge</comment>
        <translation>%1: durchgezogen %2</translation>
    </message>
</context>
<context>
    <name>coutil::FitHead</name>
    <message>
        <source>posted</source>
        <translation>mit der Post</translation>
    </message>
    <message>
        <source>in person</source>
        <translation>persönlich</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>how it was fitted</source>
        <translation>Art der Anprobe</translation>
    </message>
    <message>
        <source>date of the fitting</source>
        <translation>Datum der Anprobe</translation>
    </message>
    <message>
        <source>what was tried on</source>
        <translation>was anprobiert wurde</translation>
    </message>
    <message>
        <source>who read the fitting</source>
        <translation>wer abgelesen hat</translation>
    </message>
    <message>
        <source>note of the fitting</source>
        <translation>Notiz zur Anprobe</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>New fitting</source>
        <translation>Neue Anprobe</translation>
    </message>
    <message>
        <source>Remove this fitting</source>
        <translation>Diese Anprobe entfernen</translation>
    </message>
    <message>
        <source>Fitting</source>
        <translation>Anprobe</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Anprobiert</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>Tried</source>
        <translation>Probiert wurde</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Abgelesen von</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Something else is on the table than was tried on: marks are kept here, but nothing is drawn from them.</source>
        <translation>Auf dem Tisch liegt etwas anderes, als anprobiert wurde: Marken bleiben hier vermerkt, aber nichts wird aus ihnen gezeichnet.</translation>
    </message>
    <message>
        <source>Show what was tried</source>
        <translation>Zeigen, was anprobiert wurde</translation>
    </message>
    <message>
        <source>Print the fitting sheet to post…</source>
        <translation>Anprobebogen zum Verschicken drucken …</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>fitting: date, how</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>a pencil that is no more</source>
        <translation>ein Bleistiftstand, den es nicht mehr gibt</translation>
    </message>
</context>
<context>
    <name>coutil::FitMarkEditor</name>
    <message>
        <source>Mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>New mark</source>
        <translation>Neue Marke</translation>
    </message>
    <message>
        <source>Picked mark</source>
        <translation>Gewählte Marke</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Next mark</source>
        <translation>Nächste Marke</translation>
    </message>
</context>
<context>
    <name>coutil::FitMarkLine</name>
    <message>
        <source>%1: %2</source>
        <comment>place: pinned</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Off: kept, but nothing is drawn from it</source>
        <translation>Aus: bleibt vermerkt, aber nichts wird daraus gezeichnet</translation>
    </message>
    <message>
        <source>%1: counts</source>
        <translation>%1: gilt</translation>
    </message>
    <message>
        <source>Amount, %1</source>
        <translation>Betrag, %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Remove this mark</source>
        <translation>Diese Marke entfernen</translation>
    </message>
</context>
<context>
    <name>coutil::FitMarkList</name>
    <message>
        <source>No marks yet. Click a seam on the table where it was pinned or cut open, and type the amount.</source>
        <translation>Noch keine Marken. Auf dem Tisch eine Naht dort anklicken, wo sie abgesteckt oder aufgeschnitten wurde, und den Betrag eintippen.</translation>
    </message>
</context>
<context>
    <name>coutil::FitPhotoPart</name>
    <message>
        <source>JPEG or PNG. A copy is kept in the folio, without the place it was taken at.</source>
        <translation>JPEG oder PNG. Eine Kopie bleibt in der Mappe, ohne den Ort der Aufnahme.</translation>
    </message>
    <message>
        <source>Attach photos…</source>
        <translation>Fotos anhängen …</translation>
    </message>
    <message>
        <source>Photo %1, show it large</source>
        <translation>Foto %1, groß zeigen</translation>
    </message>
</context>
<context>
    <name>coutil::FitPhotoView</name>
    <message>
        <source>Remove photo</source>
        <translation>Foto entfernen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
</context>
<context>
    <name>coutil::FitPlaceFields</name>
    <message>
        <source>Edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>Seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>Up from the waist</source>
        <translation>Von der Taille aufwärts</translation>
    </message>
    <message>
        <source>Length of the slit</source>
        <translation>Länge des Schlitzes</translation>
    </message>
    <message>
        <source>panel %1</source>
        <translation>Teil %1</translation>
    </message>
    <message>
        <source>a height</source>
        <translation>eine Höhe</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>From its front end</source>
        <translation>Vom vorderen Ende</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>%1 (not here)</source>
        <translation>%1 (hier nicht)</translation>
    </message>
</context>
<context>
    <name>coutil::FitProblemLine</name>
    <message>
        <source>Why it may stand</source>
        <translation>Warum es so bleiben darf</translation>
    </message>
    <message>
        <source>Set aside: %1</source>
        <translation>Zurückgestellt: %1</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Set aside…</source>
        <translation>Zurückstellen …</translation>
    </message>
</context>
<context>
    <name>coutil::FitProblemPart</name>
    <message>
        <source>No problems.</source>
        <translation>Keine Probleme.</translation>
    </message>
</context>
<context>
    <name>coutil::FitShapePart</name>
    <message>
        <source>The panel in front gives</source>
        <translation>Das vordere Teil gibt</translation>
    </message>
    <message>
        <source>Front panel gives</source>
        <translation>Vorderes Teil gibt</translation>
    </message>
    <message>
        <source>Fades above over</source>
        <translation>Läuft oben aus über</translation>
    </message>
    <message>
        <source>Fades below over</source>
        <translation>Läuft unten aus über</translation>
    </message>
    <message>
        <source>share of the panels</source>
        <translation>Anteil der Teile</translation>
    </message>
    <message>
        <source>to the edge</source>
        <translation>bis zur Kante</translation>
    </message>
    <message>
        <source>Change of %1</source>
        <translation>Änderung: %1</translation>
    </message>
    <message>
        <source>Fades to the front over</source>
        <translation>Läuft nach vorn aus über</translation>
    </message>
    <message>
        <source>to the centre</source>
        <translation>bis zur Mitte</translation>
    </message>
    <message>
        <source>Fades to the back over</source>
        <translation>Läuft nach hinten aus über</translation>
    </message>
</context>
<context>
    <name>coutil::FitWelcome</name>
    <message>
        <source>No fitting yet</source>
        <translation>Noch keine Anprobe</translation>
    </message>
    <message>
        <source>A fitting is one trying-on of the mock-up. Where it is loose it is pinned smaller; where it is tight it is cut open. You measure the pins and the gaps, type them here where they are, and see the new line in pencil over the old one.</source>
        <translation>Eine Anprobe ist ein Anprobieren des Probemodells. Wo es zu weit ist, wird es enger gesteckt; wo es spannt, wird es aufgeschnitten. Sie messen, was abgesteckt ist und wie weit es klafft, tippen es hier an Ort und Stelle ein und sehen die neue Linie mit Bleistift über der alten.</translation>
    </message>
    <message>
        <source>The client may fit it far away: post the fitting sheet with the mock-up. It shows how to pin and cut, and has room for every reading.</source>
        <translation>Die Kundin kann weit weg anprobieren: den Anprobebogen mit dem Probemodell verschicken. Er zeigt, wie gesteckt und geschnitten wird, und hat Platz für jede Ablesung.</translation>
    </message>
    <message>
        <source>Print the fitting sheet to post…</source>
        <translation>Anprobebogen zum Verschicken drucken …</translation>
    </message>
    <message>
        <source>Record a fitting</source>
        <translation>Anprobe aufnehmen</translation>
    </message>
</context>
<context>
    <name>coutil::FolioFiles</name>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>Recovered as it was at the last change. Save it to keep it.</source>
        <translation>Wiederhergestellt, Stand der letzten Änderung. Zum Behalten speichern.</translation>
    </message>
    <message>
        <source>client</source>
        <translation>Kundin</translation>
    </message>
</context>
<context>
    <name>coutil::FrontPartsPart</name>
    <message>
        <source>Part of seam %1 taken from the panel in front</source>
        <translation>Anteil von Naht %1 aus dem vorderen Schnittteil</translation>
    </message>
    <message>
        <source>%1: </source>
        <translation>%1: </translation>
    </message>
    <message>
        <source>Split of seam %1</source>
        <translation>Aufteilung von Naht %1</translation>
    </message>
</context>
<context>
    <name>coutil::GarmentLine</name>
    <message>
        <source>Name of the garment</source>
        <translation>Name des Stücks</translation>
    </message>
    <message>
        <source>Client without a name</source>
        <translation>Kundin ohne Namen</translation>
    </message>
    <message>
        <source>no garment</source>
        <translation>kein Stück</translation>
    </message>
    <message>
        <source>Garment: %1</source>
        <translation>Stück: %1</translation>
    </message>
    <message>
        <source>&amp;New garment</source>
        <translation>&amp;Neues Stück</translation>
    </message>
    <message>
        <source>&amp;Rename garment</source>
        <translation>Stück &amp;umbenennen</translation>
    </message>
    <message>
        <source>New garment</source>
        <translation>Neues Stück</translation>
    </message>
    <message>
        <source>Rename garment to %1</source>
        <translation>Stück umbenennen in %1</translation>
    </message>
    <message>
        <source>%1: choose, add or rename a garment</source>
        <translation>%1: Stück wählen, hinzufügen oder umbenennen</translation>
    </message>
</context>
<context>
    <name>coutil::GirthTable</name>
    <message>
        <source>Body</source>
        <translation>Körper</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>Zugabe</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Soll</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Laced this tightly: stop at pain, numbness or short breath. Not when pregnant, after surgery, with hernia, reflux, lung or heart trouble, an implanted device, or still growing; ask a doctor. Not for sleep or exercise.</source>
        <translation>So eng geschnürt: bei Schmerz, Taubheit oder Atemnot sofort aufschnüren. Nicht bei Schwangerschaft, nach Operationen, bei Eingeweidebruch, Reflux, Lungen- oder Herzleiden, mit Implantat oder im Wachstum; ärztlichen Rat einholen. Nicht zum Schlafen oder beim Sport.</translation>
    </message>
    <message>
        <source>Ease at the level %1</source>
        <translation>Zugabe, Querlinie %1</translation>
    </message>
    <message>
        <source>The waist is taken in by %1, %2 % of the body.</source>
        <translation>Die Taille wird um %1 reduziert, %2 % des Körpermaßes.</translation>
    </message>
    <message>
        <source>The waist has %1 of ease, %2 % of the body.</source>
        <translation>Die Taille hat %1 Zugabe, %2 % des Körpermaßes.</translation>
    </message>
    <message>
        <source>Estimated, not measured: ± %1</source>
        <translation>Geschätzt, nicht gemessen: ± %1</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
</context>
<context>
    <name>coutil::HistoryActions</name>
    <message>
        <source>&amp;Confirm…</source>
        <translation>&amp;Bestätigen …</translation>
    </message>
    <message>
        <source>New &amp;pencil from this revision</source>
        <translation>Neuer B&amp;leistift aus diesem Stand</translation>
    </message>
    <message>
        <source>New pencil</source>
        <translation>Neuer Bleistift</translation>
    </message>
    <message>
        <source>&amp;Second pencil beside this one</source>
        <translation>&amp;Zweiter Bleistift daneben</translation>
    </message>
    <message>
        <source>Name the penc&amp;il</source>
        <translation>Bleistift be&amp;nennen</translation>
    </message>
    <message>
        <source>R&amp;ub out the pencil</source>
        <translation>Bleistift aus&amp;radieren</translation>
    </message>
    <message>
        <source>Start a garment &amp;from this revision</source>
        <translation>&amp;Stück aus diesem Stand beginnen</translation>
    </message>
    <message>
        <source>C&amp;ompare with</source>
        <translation>&amp;Vergleichen mit</translation>
    </message>
    <message>
        <source>&amp;Show what was tried on</source>
        <translation>&amp;Zeigen, was anprobiert wurde</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Zeigen</translation>
    </message>
    <message>
        <source>Nothing to compare with yet</source>
        <translation>Noch nichts zum Vergleichen</translation>
    </message>
    <message>
        <source>Choose another revision or pencil than the one shown to compare the two.</source>
        <translation>Zum Vergleichen einen anderen Stand oder Bleistift wählen als den gezeigten.</translation>
    </message>
</context>
<context>
    <name>coutil::JobLine</name>
    <message>
        <source>Unit of lengths</source>
        <translation>Längeneinheit</translation>
    </message>
    <message>
        <source>The unit that lengths are shown in and typed in when none is named</source>
        <translation>Einheit, in der Längen angezeigt und ohne Angabe einer Einheit eingegeben werden</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>inch</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (Taste %2)</translation>
    </message>
    <message>
        <source>Lengths in %1</source>
        <translation>Längen in %1</translation>
    </message>
</context>
<context>
    <name>coutil::KeySheet</name>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>the same while typing</source>
        <translation>dasselbe während der Eingabe</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>next field, next part of the window</source>
        <translation>nächstes Feld, nächster Teil des Fensters</translation>
    </message>
    <message>
        <source>F1 or ?</source>
        <translation>F1 oder ?</translation>
    </message>
    <message>
        <source>this sheet</source>
        <translation>diese Übersicht</translation>
    </message>
    <message>
        <source>Folio</source>
        <translation>Mappe</translation>
    </message>
    <message>
        <source>new client</source>
        <translation>neue Kundin</translation>
    </message>
    <message>
        <source>open a folio</source>
        <translation>Mappe öffnen</translation>
    </message>
    <message>
        <source>save</source>
        <translation>speichern</translation>
    </message>
    <message>
        <source>save under another name</source>
        <translation>unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>rückgängig</translation>
    </message>
    <message>
        <source>redo</source>
        <translation>wiederholen</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Pfeil auf, Pfeil ab</translation>
    </message>
    <message>
        <source>one step of the unit: 1 mm, 1/16 in</source>
        <translation>ein Schritt der Einheit: 1 mm, 1/16 in</translation>
    </message>
    <message>
        <source>Shift, Alt with them</source>
        <translation>dazu Umschalt, Alt</translation>
    </message>
    <message>
        <source>ten times, a tenth</source>
        <translation>das Zehnfache, ein Zehntel</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>back to what stood there</source>
        <translation>zurück zum vorigen Wert</translation>
    </message>
    <message>
        <source>Enter, Tab</source>
        <translation>Eingabe, Tab</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>12 + 3/8 in</source>
        <translation>12 + 3/8 in</translation>
    </message>
    <message>
        <source>sums, fractions and units may be typed</source>
        <translation>Summen, Brüche und Einheiten sind erlaubt</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>F</source>
        <translation>F</translation>
    </message>
    <message>
        <source>fit everything in</source>
        <translation>alles zeigen</translation>
    </message>
    <message>
        <source>+ and -</source>
        <translation>+ und -</translation>
    </message>
    <message>
        <source>zoom</source>
        <translation>Maßstab ändern</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Mausrad</translation>
    </message>
    <message>
        <source>zoom about the pointer</source>
        <translation>Maßstab um den Zeiger ändern</translation>
    </message>
    <message>
        <source>Space or middle drag</source>
        <translation>Leertaste oder mittlere Maustaste, ziehen</translation>
    </message>
    <message>
        <source>pan</source>
        <translation>verschieben</translation>
    </message>
    <message>
        <source>next panel</source>
        <translation>nächstes Schnittteil</translation>
    </message>
    <message>
        <source>next edge of the panel</source>
        <translation>nächste Kante des Schnittteils</translation>
    </message>
    <message>
        <source>let go</source>
        <translation>Auswahl aufheben</translation>
    </message>
    <message>
        <source>rename the garment</source>
        <translation>das Stück umbenennen</translation>
    </message>
    <message>
        <source>export the sheets as PDF</source>
        <translation>die Blätter als PDF ausgeben</translation>
    </message>
    <message>
        <source>print the sheets</source>
        <translation>die Blätter drucken</translation>
    </message>
    <message>
        <source>confirm the pencil</source>
        <translation>den Bleistift bestätigen</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Zeitleiste</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <source>next entry</source>
        <translation>nächster Eintrag</translation>
    </message>
    <message>
        <source>Enter or click</source>
        <translation>Eingabe oder Klick</translation>
    </message>
    <message>
        <source>show it on the table</source>
        <translation>auf dem Tisch zeigen</translation>
    </message>
    <message>
        <source>C or Ctrl click</source>
        <translation>C oder Strg-Klick</translation>
    </message>
    <message>
        <source>compare with what is shown</source>
        <translation>mit dem Gezeigten vergleichen</translation>
    </message>
    <message>
        <source>1 2 3 4 5</source>
        <translation>1 2 3 4 5</translation>
    </message>
    <message>
        <source>Measure, Draft, Fit, Trace, Print</source>
        <translation>Maßnehmen, Konstruieren, Anprobieren, Abkopieren, Drucken</translation>
    </message>
    <message>
        <source>Alt 1 to Alt 5</source>
        <translation>Alt 1 bis Alt 5</translation>
    </message>
    <message>
        <source>the tracings on a projector</source>
        <translation>die Schnittkopien am Projektor</translation>
    </message>
</context>
<context>
    <name>coutil::Kind</name>
    <message>
        <source>where the change ends</source>
        <translation>wo die Änderung endet</translation>
    </message>
</context>
<context>
    <name>coutil::LengthField</name>
    <message>
        <source>was %1 %2</source>
        <comment>a figure with its unit</comment>
        <translation>war %1 %2</translation>
    </message>
</context>
<context>
    <name>coutil::LevelGapsPart</name>
    <message>
        <source>Lacing gap at the level %1</source>
        <translation>Schnürlücke, Querlinie %1</translation>
    </message>
</context>
<context>
    <name>coutil::MainWindow</name>
    <message>
        <source>Unsaved work was found: %1.</source>
        <translation>Ungespeicherte Arbeit gefunden: %1.</translation>
    </message>
    <message>
        <source>Recover</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>New client</source>
        <translation>Neue Kundin</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>position: across, up</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Not saved: another program has changed %1 since it was opened here. Save under another name to keep both, or save anyway and lose what the other program wrote.</source>
        <translation>Nicht gespeichert: Ein anderes Programm hat %1 geändert, seit die Mappe hier geöffnet wurde. Unter anderem Namen speichern, um beides zu behalten, oder trotzdem speichern und verlieren, was das andere Programm geschrieben hat.</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter …</translation>
    </message>
    <message>
        <source>Save anyway</source>
        <translation>Trotzdem speichern</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>A pencil begins from %1; the revision itself stays as it is.</source>
        <translation>Aus %1 beginnt ein Bleistift; der Stand selbst bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>Show revision</source>
        <translation>Stand zeigen</translation>
    </message>
</context>
<context>
    <name>coutil::MeasureBench</name>
    <message>
        <source>Measure</source>
        <translation>Maßnehmen</translation>
    </message>
    <message>
        <source>Type the reading; up and down change it by a step, Enter goes on to the next</source>
        <translation>Maß eintippen; Pfeil auf und ab ändern es um einen Schritt, Eingabe geht weiter zum nächsten</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 taken out</source>
        <translation>%1 entfernt</translation>
    </message>
    <message>
        <source>Where the tape goes: %1</source>
        <translation>So liegt das Maßband: %1</translation>
    </message>
    <message>
        <source>Usually %1 to %2</source>
        <translation>Meist %1 bis %2</translation>
    </message>
</context>
<context>
    <name>coutil::MeasureHead</name>
    <message>
        <source>without a date</source>
        <translation>ohne Datum</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>New set</source>
        <translation>Neuer Satz</translation>
    </message>
    <message>
        <source>a name or a label of your own</source>
        <translation>Name oder eigenes Kürzel</translation>
    </message>
    <message>
        <source>who held the tape</source>
        <translation>wer das Maßband hielt</translation>
    </message>
    <message>
        <source>A copy of these measurements, taken today</source>
        <translation>Kopie dieser Maße mit dem heutigen Datum</translation>
    </message>
    <message>
        <source>New measurement set</source>
        <translation>Neuer Maßsatz</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Kundin</translation>
    </message>
    <message>
        <source>Draft from</source>
        <translation>Schnitt nach</translation>
    </message>
    <message>
        <source>Taken on</source>
        <translation>Gemessen am</translation>
    </message>
    <message>
        <source>Taken by</source>
        <translation>Gemessen von</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Measurement set the garment is drafted from</source>
        <translation>Maßsatz, nach dem das Stück konstruiert wird</translation>
    </message>
    <message>
        <source>Taken by %1</source>
        <translation>Gemessen von %1</translation>
    </message>
    <message>
        <source>Note of the measurements</source>
        <translation>Notiz zu den Maßen</translation>
    </message>
    <message>
        <source>Client %1</source>
        <translation>Kundin %1</translation>
    </message>
    <message>
        <source>Draft from the measurements of %1</source>
        <translation>Konstruieren nach den Maßen vom %1</translation>
    </message>
    <message>
        <source>Taken on %1</source>
        <translation>Gemessen am %1</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>how a day is written</comment>
        <translation>d. MMM yyyy</translation>
    </message>
</context>
<context>
    <name>coutil::MeasurementRow</name>
    <message>
        <source>estimated ± %1, the average</source>
        <translation>geschätzt ± %1, Durchschnitt</translation>
    </message>
    <message>
        <source>estimated ± %1, from %2</source>
        <translation>geschätzt ± %1, aus %2</translation>
    </message>
    <message>
        <source>one of two</source>
        <translation>eins von zwei</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
</context>
<context>
    <name>coutil::MessageBar</name>
    <message>
        <source>Close this message</source>
        <translation>Meldung schließen</translation>
    </message>
</context>
<context>
    <name>coutil::MorePart</name>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Widths</source>
        <translation>Breiten</translation>
    </message>
    <message>
        <source>100 % is the panel&apos;s usual width; the others give way.</source>
        <translation>100 % ist die übliche Breite des Schnittteils; die übrigen gleichen aus.</translation>
    </message>
    <message>
        <source>What each seam takes in</source>
        <translation>Was jede Naht abnimmt</translation>
    </message>
    <message>
        <source>Shares of the suppression in per cent. Change one and the others of its row follow.</source>
        <translation>Anteile an der Abnahme in Prozent. Ändert sich einer, folgen die übrigen der Zeile.</translation>
    </message>
    <message>
        <source>Taken from the panel in front</source>
        <translation>Abnahme am vorderen Schnittteil</translation>
    </message>
    <message>
        <source>The rest of the seam&apos;s share comes from the panel behind.</source>
        <translation>Der Rest des Nahtanteils kommt aus dem hinteren Schnittteil.</translation>
    </message>
    <message>
        <source>Heights at single seams</source>
        <translation>Höhen an einzelnen Nähten</translation>
    </message>
    <message>
        <source>Along the seam from the waist mark: up for the top, down for the bottom edge.</source>
        <translation>Auf der Naht ab Taillenzeichen: aufwärts für die Oberkante, abwärts für die Unterkante.</translation>
    </message>
    <message>
        <source>Lacing gap at single levels</source>
        <translation>Schnürlücke an einzelnen Querlinien</translation>
    </message>
    <message>
        <source>Leave empty for an even gap. An uneven gap hides a wrong girth.</source>
        <translation>Leer lassen für eine gleichmäßige Lücke. Eine ungleiche verdeckt einen falschen Umfang.</translation>
    </message>
    <message>
        <source>Own levels</source>
        <translation>Eigene Querlinien</translation>
    </message>
    <message>
        <source>Heights over the waist; below it with a minus.</source>
        <translation>Höhen über der Taille; darunter mit Minus.</translation>
    </message>
</context>
<context>
    <name>coutil::OwnLevelsPart</name>
    <message>
        <source>Add a level</source>
        <translation>Querlinie hinzufügen</translation>
    </message>
    <message>
        <source>level %1</source>
        <translation>Querlinie %1</translation>
    </message>
    <message>
        <source>Name of own level %1</source>
        <translation>Name der eigenen Querlinie %1</translation>
    </message>
    <message>
        <source>Name of a level</source>
        <translation>Name einer Querlinie</translation>
    </message>
    <message>
        <source>Height of own level %1 over the waist</source>
        <translation>Höhe der eigenen Querlinie %1 über der Taille</translation>
    </message>
    <message>
        <source>Height of a level</source>
        <translation>Höhe einer Querlinie</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove own level %1</source>
        <translation>Eigene Querlinie %1 entfernen</translation>
    </message>
    <message>
        <source>Remove a level</source>
        <translation>Querlinie entfernen</translation>
    </message>
</context>
<context>
    <name>coutil::PanelSharesPart</name>
    <message>
        <source>Front&apos;s share of the width</source>
        <translation>Anteil des Vorderteils an der Weite</translation>
    </message>
    <message>
        <source>Front&apos;s share</source>
        <translation>Anteil vorn</translation>
    </message>
    <message>
        <source>of the width, where the front bust arc was not measured</source>
        <translation>der Weite, solange der vordere Brustbogen nicht gemessen ist</translation>
    </message>
    <message>
        <source>Relative width of panel %1</source>
        <translation>Verhältnis der Breite von Schnittteil %1</translation>
    </message>
    <message>
        <source>%1: </source>
        <translation>%1: </translation>
    </message>
</context>
<context>
    <name>coutil::PaperDialog</name>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als PDF &amp;speichern …</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Picture of the page</source>
        <translation>Bild der Seite</translation>
    </message>
    <message>
        <source>Page &amp;back</source>
        <translation>Seite &amp;zurück</translation>
    </message>
    <message>
        <source>Page &amp;forth</source>
        <translation>Seite &amp;vor</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Changed since</source>
        <translation>Geändert seit</translation>
    </message>
    <message>
        <source>Back by</source>
        <translation>Zurück bis</translation>
    </message>
    <message>
        <source>Day it should be back</source>
        <translation>Tag der Rücksendung</translation>
    </message>
    <message>
        <source>Client&apos;s name on it</source>
        <translation>Mit dem Namen der Kundin</translation>
    </message>
    <message>
        <source>There is only one revision: nothing to compare it with yet.</source>
        <translation>Es gibt nur einen Stand: noch ist nichts zu vergleichen.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Save the paper</source>
        <translation>Bogen speichern</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>%1 written to %2.</source>
        <translation>%1 nach %2 geschrieben.</translation>
    </message>
    <message>
        <source>This printer leaves %1 at the edge of the paper: something will be missing there. Save as PDF and print it elsewhere.</source>
        <translation>Dieser Drucker lässt am Papierrand %1 frei: dort würde etwas fehlen. Als PDF speichern und anderswo drucken.</translation>
    </message>
    <message>
        <source>The %1 is with the printer.</source>
        <translation>%1: an den Drucker gegeben.</translation>
    </message>
</context>
<context>
    <name>coutil::PaperPart</name>
    <message>
        <source>Print the mirrored twin of every pair too</source>
        <translation>Gegengleiche Teile mitdrucken</translation>
    </message>
    <message>
        <source>Own size</source>
        <translation>Eigenes Format</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Own paper, across</source>
        <translation>Eigenes Papier, quer</translation>
    </message>
    <message>
        <source>Own paper, up</source>
        <translation>Eigenes Papier, hoch</translation>
    </message>
    <message>
        <source>Whichever needs fewer</source>
        <translation>Was weniger braucht</translation>
    </message>
    <message>
        <source>Upright</source>
        <translation>Hochformat</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Querformat</translation>
    </message>
    <message>
        <source>Orientation</source>
        <translation>Ausrichtung</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>Overlap</source>
        <translation>Überlappung</translation>
    </message>
</context>
<context>
    <name>coutil::PickedFigures</name>
    <message>
        <source>Click a panel, or press Tab on the table, for its figures.</source>
        <translation>Ein Schnittteil anklicken oder auf dem Tisch Tab drücken, um seine Maße zu sehen.</translation>
    </message>
    <message>
        <source>Picked panel</source>
        <translation>Gewähltes Schnittteil</translation>
    </message>
    <message>
        <source>Panel %1</source>
        <translation>Schnittteil %1</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Darüber</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>Darunter</translation>
    </message>
    <message>
        <source>Width at %1</source>
        <translation>Breite: %1</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Fläche</translation>
    </message>
</context>
<context>
    <name>coutil::PrintBench</name>
    <message numerus="yes">
        <source>Looking for fewer sheets: %n so far</source>
        <translation>
            <numerusform>Suche nach weniger Blättern: bisher %n</numerusform>
            <numerusform>Suche nach weniger Blättern: bisher %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Looking for fewer sheets</source>
        <translation>Suche nach weniger Blättern</translation>
    </message>
    <message>
        <source>No sheets: there is nothing to cut yet.</source>
        <translation>Keine Blätter: Noch gibt es nichts zuzuschneiden.</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of %1 and the first page</source>
        <translation>
            <numerusform>%n Blatt %1 und die erste Seite</numerusform>
            <numerusform>%n Blatt %1 und die erste Seite</numerusform>
        </translation>
    </message>
    <message>
        <source>, paper across</source>
        <translation>, Querformat</translation>
    </message>
    <message>
        <source>, paper upright</source>
        <translation>, Hochformat</translation>
    </message>
    <message numerus="yes">
        <source>; %n saved by the search</source>
        <translation>
            <numerusform>; %n durch die Suche gespart</numerusform>
            <numerusform>; %n durch die Suche gespart</numerusform>
        </translation>
    </message>
    <message>
        <source>Click a sheet to see it as it will print.</source>
        <translation>Ein Blatt anklicken, um es wie gedruckt zu sehen.</translation>
    </message>
    <message>
        <source>First page, to be printed and measured alone.</source>
        <translation>Erste Seite: allein drucken und nachmessen.</translation>
    </message>
    <message>
        <source>Sheet %1.</source>
        <translation>Blatt %1.</translation>
    </message>
    <message>
        <source>Print the client&apos;s name on the sheets</source>
        <translation>Namen der Kundin aufdrucken</translation>
    </message>
    <message>
        <source>Whole drawing</source>
        <translation>Ganze Zeichnung</translation>
    </message>
    <message>
        <source>Enough</source>
        <translation>Genug</translation>
    </message>
    <message>
        <source>Stop looking for fewer sheets</source>
        <translation>Suche nach weniger Blättern beenden</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Stop writing the sheets</source>
        <translation>Schreiben der Blätter abbrechen</translation>
    </message>
    <message>
        <source>Export PDF...</source>
        <translation>PDF schreiben …</translation>
    </message>
    <message>
        <source>Print...</source>
        <translation>Drucken …</translation>
    </message>
    <message>
        <source>Print the first page...</source>
        <translation>Erste Seite drucken …</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Correction of the printer</source>
        <translation>Korrektur des Druckers</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Export the sheets</source>
        <translation>Blätter als PDF schreiben</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Writing the sheets</source>
        <translation>Blätter werden geschrieben</translation>
    </message>
    <message>
        <source>This printer leaves %1 at the edge of the paper. Set the margin to at least that, or lines will be missing.</source>
        <translation>Dieser Drucker lässt am Papierrand %1 frei. Den Rand mindestens so breit einstellen, sonst fehlen Linien.</translation>
    </message>
    <message>
        <source>Printing</source>
        <translation>Druckt</translation>
    </message>
    <message>
        <source>Stopped; nothing was written.</source>
        <translation>Abgebrochen; nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>The sheets are with the printer.</source>
        <translation>Die Blätter sind beim Drucker.</translation>
    </message>
    <message>
        <source>Sheets written to %1. Print at 100 %, actual size.</source>
        <translation>Blätter geschrieben nach %1. Mit 100 % drucken (tatsächliche Größe).</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of %1</source>
        <translation>
            <numerusform>%n Blatt %1</numerusform>
            <numerusform>%n Blätter %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Sheet %1, with the square to measure first.</source>
        <translation>Blatt %1, mit dem Quadrat, das zuerst gemessen wird.</translation>
    </message>
    <message>
        <source>One big page, %1 wide and %2 high</source>
        <translation>Eine große Seite, %1 breit und %2 hoch</translation>
    </message>
</context>
<context>
    <name>coutil::ProblemLine</name>
    <message>
        <source>Error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>coutil::ProblemList</name>
    <message>
        <source>No problems.</source>
        <translation>Keine Probleme.</translation>
    </message>
</context>
<context>
    <name>coutil::ProjectorPart</name>
    <message>
        <source>Project…</source>
        <translation>Projizieren …</translation>
    </message>
    <message>
        <source>The tracings at true scale over a whole screen, for a projector over the cutting table</source>
        <translation>Die Schnittkopien in wahrer Größe auf einem ganzen Bildschirm, für einen Projektor über dem Zuschneidetisch</translation>
    </message>
    <message>
        <source>Screen of the projector</source>
        <translation>Bildschirm des Projektors</translation>
    </message>
</context>
<context>
    <name>coutil::ProjectorView</name>
    <message>
        <source>Projector</source>
        <translation>Projektor</translation>
    </message>
    <message>
        <source>Tracings at true scale</source>
        <translation>Schnittkopien in wahrer Größe</translation>
    </message>
    <message>
        <source>NOT CALIBRATED: press C before anything is cut.</source>
        <translation>NICHT ABGEGLICHEN: C drücken, bevor etwas zugeschnitten wird.</translation>
    </message>
    <message>
        <source>Panel %1, %2.</source>
        <translation>Schnittteil %1, %2.</translation>
    </message>
    <message>
        <source>Turned over.</source>
        <translation>Gewendet.</translation>
    </message>
    <message>
        <source>Turned by %1°.</source>
        <translation>Gedreht um %1°.</translation>
    </message>
    <message>
        <source>Tab: next panel</source>
        <translation>Tab: nächstes Schnittteil</translation>
    </message>
    <message>
        <source>O: this panel only</source>
        <translation>O: nur dieses Schnittteil</translation>
    </message>
    <message>
        <source>arrows: move %1 (Shift 10 times, Alt a tenth)</source>
        <translation>Pfeile: verschieben um %1 (Umschalt das Zehnfache, Alt ein Zehntel)</translation>
    </message>
    <message>
        <source>R: turn 15° (Shift clockwise, Alt 1°)</source>
        <translation>R: drehen um 15° (Umschalt im Uhrzeigersinn, Alt 1°)</translation>
    </message>
    <message>
        <source>M: turn over</source>
        <translation>M: wenden</translation>
    </message>
    <message>
        <source>0: straight</source>
        <translation>0: gerade</translation>
    </message>
    <message>
        <source>I: invert</source>
        <translation>I: umkehren</translation>
    </message>
    <message>
        <source>+ −: line %1 px</source>
        <translation>+ −: Linie %1 px</translation>
    </message>
    <message>
        <source>L: which lines</source>
        <translation>L: welche Linien</translation>
    </message>
    <message>
        <source>G: grid</source>
        <translation>G: Raster</translation>
    </message>
    <message>
        <source>C: calibrate</source>
        <translation>C: abgleichen</translation>
    </message>
    <message>
        <source>H: hide this line</source>
        <translation>H: diese Zeile ausblenden</translation>
    </message>
    <message>
        <source>Esc: leave</source>
        <translation>Esc: verlassen</translation>
    </message>
    <message>
        <source>S: next screen</source>
        <translation>S: nächster Bildschirm</translation>
    </message>
</context>
<context>
    <name>coutil::SeamSharesPart</name>
    <message>
        <source>Share of seam %1 at the level %2</source>
        <translation>Anteil von Naht %1, Querlinie %2</translation>
    </message>
    <message>
        <source>Share of seam %1</source>
        <translation>Anteil von Naht %1</translation>
    </message>
</context>
<context>
    <name>coutil::ShareField</name>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
</context>
<context>
    <name>coutil::SheetMap</name>
    <message>
        <source>Sheet map</source>
        <translation>Klebeplan</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n Blatt</numerusform>
            <numerusform>%n Blätter</numerusform>
        </translation>
    </message>
    <message>
        <source>First page: map and test square</source>
        <translation>Erste Seite: Klebeplan und Prüfquadrat</translation>
    </message>
    <message>
        <source>Whole drawing</source>
        <translation>Ganze Zeichnung</translation>
    </message>
    <message>
        <source>First page</source>
        <translation>Erste Seite</translation>
    </message>
    <message>
        <source>Sheet %1</source>
        <translation>Blatt %1</translation>
    </message>
</context>
<context>
    <name>coutil::SingleHeightsPart</name>
    <message>
        <source>Top edge</source>
        <translation>Oberkante</translation>
    </message>
    <message>
        <source>Bottom edge</source>
        <translation>Unterkante</translation>
    </message>
    <message>
        <source>Seam %1</source>
        <translation>Naht %1</translation>
    </message>
    <message>
        <source>Top edge at seam %1</source>
        <translation>Oberkante an Naht %1</translation>
    </message>
    <message>
        <source>Bottom edge at seam %1</source>
        <translation>Unterkante an Naht %1</translation>
    </message>
</context>
<context>
    <name>coutil::SliderLengthField</name>
    <message>
        <source>%1, slider</source>
        <translation>%1, Schieber</translation>
    </message>
</context>
<context>
    <name>coutil::StartScreen</name>
    <message>
        <source>Drafts boned bodices and corsets to measure and prints them true to scale.</source>
        <translation>Konstruiert Mieder und Korsetts nach Maß und druckt sie maßstabsgetreu.</translation>
    </message>
    <message>
        <source>Start a new client</source>
        <translation>Neue Kundin anlegen</translation>
    </message>
    <message>
        <source>Type her measurements; the panels draw themselves</source>
        <translation>Maße eintippen; die Schnittteile zeichnen sich von selbst</translation>
    </message>
    <message>
        <source>Open a folio</source>
        <translation>Mappe öffnen</translation>
    </message>
    <message>
        <source>A client&apos;s file, or drop one here</source>
        <translation>Datei einer Kundin, oder eine hierher ziehen</translation>
    </message>
    <message>
        <source>Open the demo singer</source>
        <translation>Beispielsängerin öffnen</translation>
    </message>
    <message>
        <source>An invented soprano of an operetta, to look around</source>
        <translation>Ein erfundener Operettensopran, zum Umsehen</translation>
    </message>
    <message>
        <source>Unsaved work was found</source>
        <translation>Ungespeicherte Arbeit gefunden</translation>
    </message>
    <message>
        <source>The program ended before it could be saved.</source>
        <translation>Das Programm endete, bevor sie gespeichert war.</translation>
    </message>
    <message>
        <source>Recover</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Recover %1</source>
        <translation>%1 wiederherstellen</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Liegen lassen</translation>
    </message>
    <message>
        <source>Leave %1</source>
        <translation>%1 liegen lassen</translation>
    </message>
    <message>
        <source>Recent folios</source>
        <translation>Zuletzt benutzte Mappen</translation>
    </message>
    <message>
        <source>Folios that you open or save will stand here.</source>
        <translation>Hier stehen geöffnete und gespeicherte Mappen.</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Clear the list of recent folios</source>
        <translation>Liste der zuletzt benutzten Mappen leeren</translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation>fehlt: %1</translation>
    </message>
    <message>
        <source>It stays where it is; the Folio menu finds it again</source>
        <translation>Sie bleibt, wo sie ist; das Menü Mappe findet sie wieder</translation>
    </message>
</context>
<context>
    <name>coutil::StatusLine</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>problems %1</source>
        <translation>Probleme %1</translation>
    </message>
    <message numerus="yes">
        <source>%n problem(s)</source>
        <translation>
            <numerusform>%n Problem</numerusform>
            <numerusform>%n Probleme</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coutil::StylePart</name>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
</context>
<context>
    <name>coutil::Table</name>
    <message>
        <source>Table</source>
        <translation>Tisch</translation>
    </message>
    <message numerus="yes">
        <source>%n panel(s) on the table</source>
        <translation>
            <numerusform>%n Schnittteil auf dem Tisch</numerusform>
            <numerusform>%n Schnittteile auf dem Tisch</numerusform>
        </translation>
    </message>
    <message>
        <source>Table, panel %1</source>
        <translation>Tisch, Schnittteil %1</translation>
    </message>
    <message>
        <source>Table, sheet %1</source>
        <translation>Tisch, Blatt %1</translation>
    </message>
    <message>
        <source>Click picks, wheel zooms, space and drag moves the table, F shows all</source>
        <translation>Klick wählt, Mausrad ändert den Maßstab, Leertaste und Ziehen verschiebt, F zeigt alles</translation>
    </message>
</context>
<context>
    <name>coutil::TableBench</name>
    <message>
        <source>No garment on the table. Open the demo singer, start a new client or open a folio.</source>
        <translation>Kein Stück auf dem Tisch. Beispielsängerin öffnen, neue Kundin anlegen oder eine Mappe öffnen.</translation>
    </message>
    <message>
        <source>Nothing to draft yet. The Measure bench (key 1) asks for the measurements that are still missing.</source>
        <translation>Noch nichts zu konstruieren. Beim Maßnehmen (Taste 1) steht, welche Maße noch fehlen.</translation>
    </message>
</context>
<context>
    <name>coutil::TimelineStrip</name>
    <message>
        <source>Confirm…</source>
        <translation>Bestätigen …</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Zeitleiste</translation>
    </message>
    <message>
        <source>Go over the pencil in ink: dated, numbered, never changed again</source>
        <translation>Den Bleistift mit Tinte nachziehen: datiert, nummeriert, nie mehr geändert</translation>
    </message>
    <message>
        <source>Name of the pencil</source>
        <translation>Name des Bleistifts</translation>
    </message>
</context>
<context>
    <name>coutil::TopEdgePart</name>
    <message>
        <source>Shape of the top edge</source>
        <translation>Form der Oberkante</translation>
    </message>
    <message>
        <source>Straight</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Curved</source>
        <translation>Geschwungen</translation>
    </message>
    <message>
        <source>Sweetheart</source>
        <translation>Herzform</translation>
    </message>
    <message>
        <source>Pointed</source>
        <translation>Spitz</translation>
    </message>
    <message>
        <source>Top edge shape</source>
        <translation>Form der Oberkante</translation>
    </message>
    <message>
        <source>Centre front</source>
        <translation>Vordere Mitte</translation>
    </message>
    <message>
        <source>Top edge at the centre front</source>
        <translation>Oberkante an der vorderen Mitte</translation>
    </message>
    <message>
        <source>Bust seam</source>
        <translation>Brustnaht</translation>
    </message>
    <message>
        <source>Top edge at the bust seam</source>
        <translation>Oberkante an der Brustnaht</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Top edge at the side</source>
        <translation>Oberkante an der Seite</translation>
    </message>
    <message>
        <source>Centre back</source>
        <translation>Hintere Mitte</translation>
    </message>
    <message>
        <source>Top edge at the centre back</source>
        <translation>Oberkante an der hinteren Mitte</translation>
    </message>
</context>
<context>
    <name>coutil::TraceBench</name>
    <message>
        <source>Problems</source>
        <translation>Probleme</translation>
    </message>
    <message>
        <source>Allowances</source>
        <translation>Nahtzugaben</translation>
    </message>
    <message>
        <source>To cut</source>
        <translation>Zuschneiden</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Abkopieren</translation>
    </message>
    <message>
        <source>On the cutting table</source>
        <translation>Auf dem Zuschneidetisch</translation>
    </message>
</context>
<context>
    <name>coutil::WindowMenus</name>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;Folio</source>
        <translation>&amp;Mappe</translation>
    </message>
    <message>
        <source>&amp;New client</source>
        <translation>&amp;Neue Kundin</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt benutzt</translation>
    </message>
    <message>
        <source>&amp;Unsaved work</source>
        <translation>&amp;Ungespeicherte Arbeit</translation>
    </message>
    <message>
        <source>Open the &amp;demo singer</source>
        <translation>&amp;Beispielsängerin öffnen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter …</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Be&amp;enden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>New &amp;garment</source>
        <translation>Neues &amp;Stück</translation>
    </message>
    <message>
        <source>Re&amp;name garment</source>
        <translation>Stück &amp;umbenennen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Fit everything in</source>
        <translation>&amp;Alles zeigen</translation>
    </message>
    <message>
        <source>&amp;Wheel pans instead of zooming</source>
        <translation>Mausrad &amp;verschiebt, statt den Maßstab zu ändern</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <source>&amp;System</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keine</translation>
    </message>
    <message>
        <source>&amp;Clear this list</source>
        <translation>Liste &amp;leeren</translation>
    </message>
    <message>
        <source>None was found</source>
        <translation>Keine gefunden</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>&amp;Export sheets as PDF…</source>
        <translation>Blätter als PDF &amp;ausgeben …</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>&amp;Garment</source>
        <translation>&amp;Stück</translation>
    </message>
    <message>
        <source>&amp;Measuring sheet…</source>
        <translation>&amp;Maßbogen …</translation>
    </message>
    <message>
        <source>&amp;Fitting sheet…</source>
        <translation>&amp;Anprobebogen …</translation>
    </message>
    <message>
        <source>C&amp;hange sheet…</source>
        <translation>Ä&amp;nderungsbogen …</translation>
    </message>
    <message>
        <source>&amp;Projector…</source>
        <translation>&amp;Projektor …</translation>
    </message>
</context>
</TS>
