<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>Alarm</name>
        <message>
            <source>now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>earlier</source>
            <translation>vorhin</translation>
        </message>
        <message>
            <source>not seen yet (A)</source>
            <translation>noch nicht quittiert (A)</translation>
        </message>
        <message>
            <source>ALARM:</source>
            <translation>ALARM:</translation>
        </message>
        <message>
            <source>silent for {time}</source>
            <translation>stumm für {time}</translation>
        </message>
        <message>
            <source>Below the triple point</source>
            <translation>Unter dem Tripelpunkt</translation>
        </message>
        <message>
            <source>Dry ice</source>
            <translation>Trockeneis</translation>
        </message>
        <message>
            <source>No data</source>
            <translation>Keine Daten</translation>
        </message>
        <message>
            <source>Pressure too high</source>
            <translation>Druck zu hoch</translation>
        </message>
        <message>
            <source>Vent line</source>
            <translation>Ablassleitung</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>Manometer</translation>
        </message>
        <message>
            <source>Close the vent</source>
            <translation>Ablass schließen</translation>
        </message>
        <message>
            <source>Not recording</source>
            <translation>Keine Aufzeichnung</translation>
        </message>
    </context>
    <context>
        <name>Banner</name>
        <message>
            <source>REPLAY: a recording, not the gauge</source>
            <translation>WIEDERGABE: eine Aufzeichnung, nicht das Manometer</translation>
        </message>
        <message>
            <source>CLASS: an exercise, not a vent</source>
            <translation>UNTERRICHT: eine Übung, kein Ablassen</translation>
        </message>
        <message>
            <source>SIMULATED: invented readings</source>
            <translation>SIMULIERT: erfundene Messwerte</translation>
        </message>
    </context>
    <context>
        <name>Blind</name>
        <message>
            <source>Help is hidden until the answer is given. B shows prompt, verdict and help.</source>
            <translation>Die Hilfe bleibt verborgen, bis die Antwort gegeben ist. B zeigt Anweisung, Urteil und Hilfe.</translation>
        </message>
        <message>
            <source>Prompt and verdict are hidden. B shows them.</source>
            <translation>Anweisung und Urteil sind verborgen. B zeigt sie.</translation>
        </message>
        <message>
            <source>name hidden (B)</source>
            <translation>Name verdeckt (B)</translation>
        </message>
    </context>
    <context>
        <name>Calibrate</name>
        <message>
            <source>Lay a ruler on the screen and make the bar 100 mm long.</source>
            <translation>Ein Lineal auf den Schirm legen und den Balken 100 mm lang machen.</translation>
        </message>
    </context>
    <context>
        <name>Charge</name>
        <message>
            <source>full of liquid</source>
            <translation>voll Flüssigkeit</translation>
        </message>
        <message>
            <source>liquid and vapour</source>
            <translation>Flüssigkeit und Dampf</translation>
        </message>
        <message>
            <source>vapour only</source>
            <translation>nur Dampf</translation>
        </message>
        <message>
            <source>dry ice</source>
            <translation>Trockeneis</translation>
        </message>
        <message>
            <source>not known yet</source>
            <translation>noch nicht bekannt</translation>
        </message>
        <message>
            <source>no leak-by seen</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>kein Durchlass gesehen</translation>
        </message>
        <message>
            <source>leak-by suspected</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Durchlass vermutet</translation>
        </message>
        <message>
            <source>leak-by not determined</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Durchlass nicht bestimmt</translation>
        </message>
    </context>
    <context>
        <name>Class</name>
        <message>
            <source>Leave the class? This run and its score are lost.</source>
            <translation>Übung verlassen? Dieser Lauf und seine Wertung gehen verloren.</translation>
        </message>
        <message>
            <source>Committed {said}. Space goes on.</source>
            <translation>Festgelegt {said}. Leertaste: weiter.</translation>
        </message>
        <message>
            <source>The truth has been shown: a prediction doesn&apos;t count any more.</source>
            <translation>Die Wahrheit wurde schon gezeigt: eine Vorhersage zählt nicht mehr.</translation>
        </message>
        <message>
            <source>first run</source>
            <translation>erster Lauf</translation>
        </message>
        <message>
            <source>vent valve {percent} % open</source>
            <translation>Ablassventil {percent} % offen</translation>
        </message>
        <message>
            <source>vent valve CLOSED</source>
            <translation>Ablassventil ZU</translation>
        </message>
        <message>
            <source>paused</source>
            <translation>angehalten</translation>
        </message>
        <message>
            <source>What is inside now? Decide before the trace goes on.</source>
            <translation>Was ist jetzt drin? Legen Sie sich fest, bevor es weitergeht.</translation>
        </message>
        <message>
            <source>random section {seed}</source>
            <translation>Zufallsabschnitt {seed}</translation>
        </message>
        <message>
            <source>{words}: write yes or no</source>
            <translation>{words}: yes oder no schreiben</translation>
        </message>
        <message>
            <source>{words}: write a number</source>
            <translation>{words}: eine Zahl schreiben</translation>
        </message>
        <message>
            <source>Practise: simulated sections</source>
            <translation>Üben: simulierte Abschnitte</translation>
        </message>
        <message>
            <source>Run again beside the first: change one thing</source>
            <translation>Noch einmal neben dem ersten: eine Sache ändern</translation>
        </message>
        <message>
            <source>exercises</source>
            <translation>Übungen</translation>
        </message>
        <message>
            <source>Random section</source>
            <translation>Zufallsabschnitt</translation>
        </message>
        <message>
            <source>what to change</source>
            <translation>was sich ändert</translation>
        </message>
        <message>
            <source>its value, or the seed</source>
            <translation>sein Wert, oder die Startzahl</translation>
        </message>
        <message>
            <source>A section drawn at random; the same seed gives the same section again.</source>
            <translation>Ein zufällig gezogener Abschnitt; dieselbe Startzahl ergibt denselben Abschnitt.</translation>
        </message>
        <message>
            <source>seed</source>
            <translation>Startzahl</translation>
        </message>
        <message>
            <source>Watch: {what}</source>
            <translation>Achten auf: {what}</translation>
        </message>
        <message>
            <source>The seed is a whole number.</source>
            <translation>Die Startzahl ist eine ganze Zahl.</translation>
        </message>
        <message>
            <source>Preparing the section… the first time takes up to a minute.</source>
            <translation>Abschnitt wird vorbereitet… beim ersten Mal bis zu einer Minute.</translation>
        </message>
        <message>
            <source>cannot be told yet</source>
            <translation>noch nicht zu sagen</translation>
        </message>
        <message>
            <source>at {time}: {answer}</source>
            <translation>bei {time}: {answer}</translation>
        </message>
        <message>
            <source>Really inside: {pressure}</source>
            <translation>Wirklich drin: {pressure}</translation>
        </message>
        <message>
            <source>Liquid {liquid}, dry ice {ice}, vapour {vapour}</source>
            <translation>Flüssigkeit {liquid}, Trockeneis {ice}, Dampf {vapour}</translation>
        </message>
        <message>
            <source>Gas {gas}, dry metal {dry}, wet metal {wet}</source>
            <translation>Gas {gas}, trockenes Metall {dry}, benetztes Metall {wet}</translation>
        </message>
        <message>
            <source>Dry ice in the vent hose: {mass}</source>
            <translation>Trockeneis im Ablassschlauch: {mass}</translation>
        </message>
        <message>
            <source>CO2 in oil and desiccant: {mass}</source>
            <translation>CO2 in Öl und Trockenmittel: {mass}</translation>
        </message>
        <message>
            <source>The gauge showed {pressure}.</source>
            <translation>Das Manometer zeigte {pressure}.</translation>
        </message>
        <message>
            <source>The program said: {state}. {reason}</source>
            <translation>Das Programm sagte: {state}. {reason}</translation>
        </message>
        <message>
            <source>The class said: {said}.</source>
            <translation>Die Klasse sagte: {said}.</translation>
        </message>
        <message>
            <source>The class did not commit itself.</source>
            <translation>Die Klasse hat sich nicht festgelegt.</translation>
        </message>
        <message>
            <source>Expected: {words}</source>
            <translation>Zu erwarten: {words}</translation>
        </message>
        <message>
            <source>A novice says: {words}</source>
            <translation>Ein Anfänger sagt: {words}</translation>
        </message>
        <message>
            <source>What decides: {words}</source>
            <translation>Was entscheidet: {words}</translation>
        </message>
        <message>
            <source>Talk about: {words}</source>
            <translation>Besprechen: {words}</translation>
        </message>
        <message>
            <source>SIMULATED PRACTICE: not a job, nothing was vented</source>
            <translation>SIMULIERTE ÜBUNG: kein Auftrag, nichts wurde abgelassen</translation>
        </message>
        <message>
            <source>Changed:</source>
            <translation>Geändert:</translation>
        </message>
        <message>
            <source>dry ice</source>
            <translation>Trockeneis</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>Flüssigkeit</translation>
        </message>
        <message>
            <source>vapour</source>
            <translation>Dampf</translation>
        </message>
        <message>
            <source>nothing: as it is</source>
            <translation>nichts: wie er ist</translation>
        </message>
        <message>
            <source>Change one thing:</source>
            <translation>Eines ändern:</translation>
        </message>
        <message>
            <source>chosen</source>
            <translation>gewählt</translation>
        </message>
        <message>
            <source>Leak-by {flow}</source>
            <translation>Durchlass {flow}</translation>
        </message>
    </context>
    <context>
        <name>Command</name>
        <message>
            <source>Run again</source>
            <translation>Noch einmal</translation>
        </message>
        <message>
            <source>Show prompts</source>
            <translation>Anweisungen zeigen</translation>
        </message>
        <message>
            <source>Score sheet</source>
            <translation>Auswertung</translation>
        </message>
        <message>
            <source>Test sound</source>
            <translation>Ton prüfen</translation>
        </message>
        <message>
            <source>Withdraw note</source>
            <translation>Notiz widerrufen</translation>
        </message>
        <message>
            <source>Theme</source>
            <translation>Farben</translation>
        </message>
        <message>
            <source>Units</source>
            <translation>Einheiten</translation>
        </message>
        <message>
            <source>Text size</source>
            <translation>Textgröße</translation>
        </message>
        <message>
            <source>Full screen</source>
            <translation>Vollbild</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Sprache</translation>
        </message>
        <message>
            <source>Job</source>
            <translation>Auftrag</translation>
        </message>
        <message>
            <source>Quit</source>
            <translation>Beenden</translation>
        </message>
        <message>
            <source>Screen size</source>
            <translation>Schirmgröße</translation>
        </message>
        <message>
            <source>Tour</source>
            <translation>Rundgang</translation>
        </message>
        <message>
            <source>Blind replay</source>
            <translation>Blind wiedergeben</translation>
        </message>
        <message>
            <source>Compare a vent</source>
            <translation>Vergleichen</translation>
        </message>
        <message>
            <source>Nothing to compare</source>
            <translation>Nichts zu vergleichen</translation>
        </message>
        <message>
            <source>{name} has no hold to compare; nothing was changed.</source>
            <translation>{name} hat keinen Halt zum Vergleichen; nichts wurde geändert.</translation>
        </message>
        <message>
            <source>Save picture</source>
            <translation>Bild sichern</translation>
        </message>
        <message>
            <source>Save drawing</source>
            <translation>Zeichnung sichern</translation>
        </message>
        <message>
            <source>Save readings</source>
            <translation>Messwerte sichern</translation>
        </message>
        <message>
            <source>Saved: {path}</source>
            <translation>Gesichert: {path}</translation>
        </message>
        <message>
            <source>Could not be written: {path}</source>
            <translation>Nicht zu schreiben: {path}</translation>
        </message>
        <message>
            <source>Undo note</source>
            <translation>Notiz rückgängig</translation>
        </message>
    </context>
    <context>
        <name>Connect</name>
        <message>
            <source>Section</source>
            <translation>Abschnitt</translation>
        </message>
        <message>
            <source>Volume of the section, litres</source>
            <translation>Volumen des Abschnitts, Liter</translation>
        </message>
        <message>
            <source>Altitude, m</source>
            <translation>Höhe, m</translation>
        </message>
        <message>
            <source>Gauge full scale, with unit</source>
            <translation>Messbereichsende, mit Einheit</translation>
        </message>
        <message>
            <source>Gauge accuracy, % of full scale</source>
            <translation>Genauigkeit, % vom Endwert</translation>
        </message>
        <message>
            <source>Gauge reads open to air, with unit</source>
            <translation>Anzeige an Luft, mit Einheit</translation>
        </message>
        <message>
            <source>Relief setting, with unit</source>
            <translation>Sicherheitsventil, mit Einheit</translation>
        </message>
        <message>
            <source>Insulated: yes, or no for bare metal</source>
            <translation>Isoliert: ja als yes, blankes Metall als no</translation>
        </message>
        <message>
            <source>Highest allowed pressure, with unit</source>
            <translation>Höchster Druck PS, mit Einheit</translation>
        </message>
        <message>
            <source>{field} (optional)</source>
            <translation>{field} (freiwillig)</translation>
        </message>
        <message>
            <source>e.g. {example}</source>
            <translation>z. B. {example}</translation>
        </message>
        <message>
            <source>Connect a gauge</source>
            <translation>Manometer verbinden</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>Folder for recordings</source>
            <translation>Ordner für Aufzeichnungen</translation>
        </message>
        <message>
            <source>Opening…</source>
            <translation>Wird geöffnet…</translation>
        </message>
        <message>
            <source>Test the source</source>
            <translation>Quelle prüfen</translation>
        </message>
        <message>
            <source>Columns, if it sends no names</source>
            <translation>Spalten, falls keine Namen kommen</translation>
        </message>
        <message>
            <source>Stop the test</source>
            <translation>Prüfung beenden</translation>
        </message>
        <message>
            <source>The section</source>
            <translation>Der Abschnitt</translation>
        </message>
        <message>
            <source>The source</source>
            <translation>Die Quelle</translation>
        </message>
        <message>
            <source>The test was stopped; the source is free again</source>
            <translation>Die Prüfung wurde beendet; die Quelle ist wieder frei</translation>
        </message>
        <message>
            <source>Changed: test the source again</source>
            <translation>Geändert: Quelle noch einmal prüfen</translation>
        </message>
        <message>
            <source>The test is over; test again</source>
            <translation>Die Prüfung ist zu Ende; noch einmal prüfen</translation>
        </message>
    </context>
    <context>
        <name>Core</name>
        <message>
            <source>No hold in the record: nothing shows what is inside.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Kein Halt in der Aufzeichnung: nichts zeigt, was darin ist.</translation>
        </message>
        <message>
            <source>Vapour only was shown, but no longer stands: {reason}</source>
            <translation>Nur Dampf war gezeigt, gilt aber nicht mehr: {reason}</translation>
        </message>
        <message>
            <source>the gauge is at the top of its range</source>
            <translation>das Manometer ist am Ende seines Bereichs</translation>
        </message>
        <message>
            <source>the reading has not changed for {time}, though it used to show noise</source>
            <translation>der Messwert steht seit {time}, obwohl er vorher rauschte</translation>
        </message>
        <message>
            <source>the reading jumped by {jump} with the vent closed</source>
            <translation>der Messwert sprang um {jump} bei geschlossenem Ablass</translation>
        </message>
        <message>
            <source>No verdict: {fault}. Close the vent and compare with the mechanical gauge.</source>
            <translation>Kein Urteil: {fault}. Ablass schließen und mit dem mechanischen Manometer vergleichen.</translation>
        </message>
        <message>
            <source>A 16 or 25 bar gauge behind an isolating valve, opened below its range, is better.</source>
            <translation>Besser ist ein Manometer bis 16 oder 25 bar hinter einem Absperrventil, das erst unterhalb seines Bereichs geöffnet wird.</translation>
        </message>
        <message>
            <source>A plan advises. Only the gauge and the holds say what is left inside.</source>
            <translation>Ein Plan rät nur. Erst Manometer und Halte sagen, was noch drin ist.</translation>
        </message>
        <message>
            <source>About {liquid} of liquid is in it already: vented straight down it would leave about {ice} of dry ice behind a gauge at zero. Hold above the triple point and boil it out.</source>
            <translation>Etwa {liquid} Flüssigkeit sind schon darin: ohne Halt abgelassen blieben etwa {ice} Trockeneis hinter einem Manometer auf null. Über dem Tripelpunkt halten und auskochen.</translation>
        </message>
        <message>
            <source>About {liquid} of liquid is left at the stop pressure, {stop}: vented straight down it would leave about {ice} of dry ice behind a gauge at zero. Hold above the triple point and boil it out.</source>
            <translation>Beim Stoppdruck, {stop}, sind noch etwa {liquid} Flüssigkeit übrig: ohne Halt abgelassen blieben etwa {ice} Trockeneis hinter einem Manometer auf null. Über dem Tripelpunkt halten und auskochen.</translation>
        </message>
        <message>
            <source>Air</source>
            <translation>Luft</translation>
        </message>
        <message>
            <source>All of it in the room is {total} when mixed, above the IDLH of {limit}: nobody may be in the room, and the vent must lead outdoors.</source>
            <translation>Alles im Raum gibt gemischt {total}, mehr als der IDLH von {limit}: niemand darf im Raum sein, und der Ablass muss ins Freie führen.</translation>
        </message>
        <message>
            <source>All of it in the room is {total} when mixed, above the {name} of {limit} ({averaged}): lead the vent outdoors.</source>
            <translation>Alles im Raum gibt gemischt {total}, mehr als {name} von {limit} ({averaged}): den Ablass ins Freie führen.</translation>
        </message>
        <message>
            <source>Altitude not given: sea level, {pressure}, is assumed.</source>
            <translation>Höhe nicht angegeben: Meereshöhe, {pressure}, wird angenommen.</translation>
        </message>
        <message>
            <source>An oxygen meter is not a CO2 alarm: at 40 000 ppm CO2, immediately dangerous, it still shows about {oxygen} oxygen. Wear a CO2 meter.</source>
            <translation>Ein Sauerstoffmessgerät ist kein CO2-Warner: bei 40 000 ppm CO2, unmittelbar gefährlich, zeigt es noch etwa {oxygen} Sauerstoff. CO2-Messgerät tragen.</translation>
        </message>
        <message>
            <source>Assumed</source>
            <translation>Angenommen</translation>
        </message>
        <message>
            <source>Boiling liquid at the stop pressure is at {temperature}, colder than the rated minimum of {metals}: never repressurise or strike it until it has warmed.</source>
            <translation>Siedende Flüssigkeit hat beim Stoppdruck {temperature}, kälter als die zulässige Mindesttemperatur von {metals}: nie wieder unter Druck setzen und nie darauf schlagen, bevor es warm ist.</translation>
        </message>
        <message>
            <source>CO2 equivalent</source>
            <translation>CO2-Äquivalent</translation>
        </message>
        <message>
            <source>CO2 in it</source>
            <translation>CO2 darin</translation>
        </message>
        <message>
            <source>Gauge range and class not given.</source>
            <translation>Bereich und Klasse des Manometers nicht angegeben.</translation>
        </message>
        <message>
            <source>If it is left shut</source>
            <translation>Wenn es geschlossen bleibt</translation>
        </message>
        <message>
            <source>It ends at {end} and the section holds {charge}: it would be damaged.</source>
            <translation>Es endet bei {end}, und im Abschnitt stehen {charge}: es würde beschädigt.</translation>
        </message>
        <message>
            <source>It ends at {end}, below the stop pressure: it can&apos;t show it.</source>
            <translation>Es endet bei {end}, unter dem Stoppdruck: es kann ihn nicht zeigen.</translation>
        </message>
        <message>
            <source>Liquid fraction not given: {share} of the volume is assumed.</source>
            <translation>Flüssigkeitsanteil nicht angegeben: {share} des Volumens wird angenommen.</translation>
        </message>
        <message>
            <source>Liquid-full: there is no vapour space, and warming raises the pressure {slope} for each kelvin. Open a relief path before anything else.</source>
            <translation>Ganz voll Flüssigkeit: es gibt keinen Dampfraum, und Erwärmen erhöht den Druck um {slope} je Kelvin. Vor allem anderen einen Entlastungsweg öffnen.</translation>
        </message>
        <message>
            <source>Nitrogen, {now}. Leave it still; the standing-pressure test judges it. Nitrogen smothers: air the place before the section is opened.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Stickstoff, {now}. In Ruhe lassen; die Standdruckprüfung beurteilt es. Stickstoff erstickt: den Raum lüften, bevor der Abschnitt geöffnet wird.</translation>
        </message>
        <message>
            <source>No liquid is planned for; the holds must still show it. Cores, oil and low legs hold CO2 that a plan can&apos;t see.</source>
            <translation>Geplant ist ohne Flüssigkeit; die Halte müssen es dennoch zeigen. Kerne, Öl und tiefe Stränge halten CO2, das ein Plan nicht sieht.</translation>
        </message>
        <message>
            <source>No room was given: vent outdoors, away from intakes, doors, pits and low ground.</source>
            <translation>Kein Raum angegeben: ins Freie ablassen, fern von Ansaugöffnungen, Türen, Gruben und Senken.</translation>
        </message>
        <message>
            <source>Outside surface not given: a cylinder eight diameters long is assumed.</source>
            <translation>Außenfläche nicht angegeben: ein Zylinder von acht Durchmessern Länge wird angenommen.</translation>
        </message>
        <message>
            <source>Oxygen would still read {oxygen} then.</source>
            <translation>Sauerstoff zeigte dann noch {oxygen}.</translation>
        </message>
        <message>
            <source>Section</source>
            <translation>Abschnitt</translation>
        </message>
        <message>
            <source>Shut in, this charge reaches the relief setting after {kelvin} of warming, before it is as warm as its surroundings: never leave it shut in unwatched.</source>
            <translation>Eingeschlossen erreicht diese Füllung nach {kelvin} Erwärmung den Ansprechdruck der Sicherung, bevor sie so warm ist wie ihre Umgebung: nie unbeobachtet eingeschlossen lassen.</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Achtung</translation>
        </message>
        <message>
            <source>The charge is already at or below the stop pressure, {stop}: do not vent it while liquid may be there; let it warm first.</source>
            <translation>Die Füllung steht schon auf oder unter dem Stoppdruck, {stop}: nicht ablassen, solange Flüssigkeit darin sein kann; erst warm werden lassen.</translation>
        </message>
        <message>
            <source>The charge is at {temperature}, colder than the rated minimum of {metals}: never repressurise or strike it until it has warmed.</source>
            <translation>Die Füllung hat {temperature}, kälter als die zulässige Mindesttemperatur von {metals}: nie wieder unter Druck setzen und nie darauf schlagen, bevor es warm ist.</translation>
        </message>
        <message>
            <source>After what warming this charge reaches the relief setting is not known here: take it that it does, and never leave it shut in unwatched.</source>
            <translation>Nach welcher Erwärmung diese Füllung den Ansprechdruck erreicht, ist hier nicht bekannt: davon ausgehen, dass sie es tut, und sie nie unbeobachtet eingeschlossen lassen.</translation>
        </message>
        <message>
            <source>The charge is below the triple point: no liquid can exist there, and what is not vapour is dry ice. Do not shut it in: when it warms it reaches the boiling pressure of the surroundings, and hundreds of bar where it fills half the section or more. Keep it vented at both ends until it has sublimed.</source>
            <translation>Die Füllung liegt unter dem Tripelpunkt: Flüssigkeit kann es dort nicht geben, und was nicht Dampf ist, ist Trockeneis. Nicht einschließen: Beim Erwärmen erreicht es den Siededruck der Umgebung, und Hunderte bar, wo es den halben Abschnitt oder mehr füllt. An beiden Enden offen halten, bis es sublimiert ist.</translation>
        </message>
        <message>
            <source>The charge stands above 75 % of its scale.</source>
            <translation>Die Füllung steht über 75 % seiner Skala.</translation>
        </message>
        <message>
            <source>The charge&apos;s pressure is at or above the relief setting: expect it to lift.</source>
            <translation>Der Druck der Füllung liegt auf oder über dem Ansprechdruck der Sicherung: damit rechnen, dass sie öffnet.</translation>
        </message>
        <message>
            <source>The gauge&apos;s class is +-{error}: {share} of the {margin} kept above the triple point.</source>
            <translation>Die Klasse des Manometers macht +-{error} aus: {share} der {margin}, die über dem Tripelpunkt bleiben.</translation>
        </message>
        <message>
            <source>The liquid swells and fills the section after {kelvin} of warming, at {temperature}; from there every kelvin adds several bar.</source>
            <translation>Die Flüssigkeit dehnt sich aus und füllt den Abschnitt nach {kelvin} Erwärmung, bei {temperature}; von da an bringt jedes Kelvin mehrere bar.</translation>
        </message>
        <message>
            <source>The pressure is above the critical pressure, {critical} absolute: vapour and liquid can&apos;t be told apart and the charge is not known. Bring it down in the plant first.</source>
            <translation>Der Druck liegt über dem kritischen Druck, {critical} absolut: Dampf und Flüssigkeit sind nicht zu unterscheiden, und die Füllung ist nicht bekannt. Erst in der Anlage absenken.</translation>
        </message>
        <message>
            <source>The stop pressure had to be raised for it.</source>
            <translation>Der Stoppdruck musste dafür angehoben werden.</translation>
        </message>
        <message>
            <source>The surroundings are no warmer than liquid at the stop pressure: nothing boils it out, and a quiet hold proves nothing.</source>
            <translation>Die Umgebung ist nicht wärmer als Flüssigkeit beim Stoppdruck: nichts kocht sie aus, und ein ruhiger Halt beweist nichts.</translation>
        </message>
        <message>
            <source>The vent is open and the pressure stands at {now}: a plug of dry ice, a shut valve, a gauge cut off, or liquid that boils as fast as it leaves. Close the vent; keep out of line with hose and cover; no flame, no blows.</source>
            <translation>Der Ablass ist offen und der Druck steht bei {now}: ein Pfropfen aus Trockeneis, ein geschlossenes Ventil, ein abgetrenntes Manometer oder Flüssigkeit, die so schnell siedet, wie sie austritt. Ablass schließen; nicht in der Linie von Schlauch und Deckel stehen; keine Flamme, keine Schläge.</translation>
        </message>
        <message>
            <source>The volume may be {share} more or less, and every mass with it.</source>
            <translation>Das Volumen kann {share} größer oder kleiner sein, und jede Masse mit ihm.</translation>
        </message>
        <message>
            <source>Unmixed it lies on the floor: up to {most} in the lowest half metre, above the {name} of {limit} ({averaged}). Nobody kneels or sits there; mind pits and stairs down.</source>
            <translation>Ungemischt liegt es am Boden: bis zu {most} im untersten halben Meter, mehr als {name} von {limit} ({averaged}). Dort kniet oder sitzt niemand; auf Gruben und Treppen nach unten achten.</translation>
        </message>
        <message>
            <source>Vent</source>
            <translation>Ablass</translation>
        </message>
        <message>
            <source>What is left</source>
            <translation>Was übrig bleibt</translation>
        </message>
        <message>
            <source>a quiet gauge only means that little heat comes in</source>
            <translation>ein ruhiges Manometer heißt nur, dass wenig Wärme hineinkommt</translation>
        </message>
        <message>
            <source>about {snow} of it turns to snow at the outlet and can plug it; keep the section above the stop pressure, hose restrained and bonded, nobody downhill</source>
            <translation>etwa {snow} davon werden am Austritt zu Schnee und können ihn verstopfen; den Abschnitt über dem Stoppdruck halten, Schlauch gesichert und geerdet, niemand hangabwärts</translation>
        </message>
        <message>
            <source>air changes per hour</source>
            <translation>der Luftwechsel je Stunde</translation>
        </message>
        <message>
            <source>all of it in {room}</source>
            <translation>alles in {room}</translation>
        </message>
        <message>
            <source>austenitic stainless 304L / 316L</source>
            <translation>austenitischer Edelstahl 304L / 316L</translation>
        </message>
        <message>
            <source>boiling there at</source>
            <translation>siedet dort bei</translation>
        </message>
        <message>
            <source>carbon steel A106 / A53 grade B</source>
            <translation>Kohlenstoffstahl A106 / A53 Grade B</translation>
        </message>
        <message>
            <source>clear to {limit} in</source>
            <translation>auf {limit} geklärt in</translation>
        </message>
        <message>
            <source>copper</source>
            <translation>Kupfer</translation>
        </message>
        <message>
            <source>drain the liquid from a low point, outdoors only</source>
            <translation>Flüssigkeit an einem Tiefpunkt ablassen, nur im Freien</translation>
        </message>
        <message>
            <source>dry ice if straight down</source>
            <translation>Trockeneis ohne Halt</translation>
        </message>
        <message>
            <source>exceeded on the floor; {limit}</source>
            <translation>am Boden überschritten; {limit}</translation>
        </message>
        <message>
            <source>exceeded; {limit}</source>
            <translation>überschritten; {limit}</translation>
        </message>
        <message>
            <source>fresh air, if vented indoors</source>
            <translation>Frischluft beim Ablass innen</translation>
        </message>
        <message>
            <source>gauge</source>
            <translation>Manometer</translation>
        </message>
        <message>
            <source>give the charge&apos;s temperature or its pressure before the vent: one of them, not both</source>
            <translation>Temperatur oder Druck der Füllung vor dem Ablassen angeben: eines davon, nicht beides</translation>
        </message>
        <message>
            <source>heat to boil it out</source>
            <translation>Wärme zum Auskochen</translation>
        </message>
        <message>
            <source>hold and vent in short bursts while ambient heat boils it, bare pipe, its metal as cold as the liquid (warmer metal boils some of it sooner)</source>
            <translation>halten und in kurzen Stößen ablassen, während Umgebungswärme sie siedet, blankes Rohr, Metall so kalt wie die Flüssigkeit (wärmeres Metall siedet einen Teil früher)</translation>
        </message>
        <message>
            <source>immediately dangerous</source>
            <translation>unmittelbar gefährlich</translation>
        </message>
        <message>
            <source>it stays below that when mixed</source>
            <translation>gemischt bleibt es darunter</translation>
        </message>
        <message>
            <source>kept; {limit}</source>
            <translation>eingehalten; {limit}</translation>
        </message>
        <message>
            <source>limit {limit}</source>
            <translation>Grenzwert {limit}</translation>
        </message>
        <message>
            <source>liquid at the stop pressure</source>
            <translation>Flüssigkeit beim Stoppdruck</translation>
        </message>
        <message>
            <source>liquid-full</source>
            <translation>ganz voll Flüssigkeit</translation>
        </message>
        <message>
            <source>liquid-full, after</source>
            <translation>voll Flüssigkeit, nach</translation>
        </message>
        <message>
            <source>low-temperature steel A333 grade 6</source>
            <translation>kaltzäher Stahl A333 Grade 6</translation>
        </message>
        <message>
            <source>metal too cold there</source>
            <translation>dort zu kaltes Metall</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keines</translation>
        </message>
        <message>
            <source>none of those compared</source>
            <translation>keines der verglichenen</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>of it dry ice</source>
            <translation>davon Trockeneis</translation>
        </message>
        <message>
            <source>of it liquid</source>
            <translation>davon flüssig</translation>
        </message>
        <message>
            <source>pressure per kelvin not known at this temperature</source>
            <translation>Druck je Kelvin bei dieser Temperatur nicht bekannt</translation>
        </message>
        <message>
            <source>relief setting</source>
            <translation>Ansprechdruck</translation>
        </message>
        <message>
            <source>several bar</source>
            <translation>um mehrere bar</translation>
        </message>
        <message>
            <source>stop at</source>
            <translation>Stopp bei</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>the ambient temperature</source>
            <translation>die Umgebungstemperatur</translation>
        </message>
        <message>
            <source>the charge pressure</source>
            <translation>der Druck der Füllung</translation>
        </message>
        <message>
            <source>the charge temperature</source>
            <translation>die Temperatur der Füllung</translation>
        </message>
        <message>
            <source>the discharge coefficient</source>
            <translation>der Ausflusskoeffizient</translation>
        </message>
        <message>
            <source>the liquid fraction (by volume)</source>
            <translation>der Flüssigkeitsanteil (am Volumen)</translation>
        </message>
        <message>
            <source>the metal stays at the boiling temperature: never repressurise it, never strike it</source>
            <translation>das Metall bleibt auf Siedetemperatur: nie wieder unter Druck setzen, nie darauf schlagen</translation>
        </message>
        <message>
            <source>the relief setting</source>
            <translation>der Ansprechdruck</translation>
        </message>
        <message>
            <source>the room</source>
            <translation>der Raum</translation>
        </message>
        <message>
            <source>the same, insulated pipe</source>
            <translation>ebenso, gedämmtes Rohr</translation>
        </message>
        <message>
            <source>the vent bore</source>
            <translation>die Ablassbohrung</translation>
        </message>
        <message>
            <source>the volume</source>
            <translation>das Volumen</translation>
        </message>
        <message>
            <source>this charge fills it at</source>
            <translation>diese Füllung füllt es bei</translation>
        </message>
        <message>
            <source>this charge, after</source>
            <translation>diese Füllung, nach</translation>
        </message>
        <message>
            <source>this log is simulated and the job is not: it would become practice that can&apos;t be signed; choose the real log</source>
            <translation>dieses Protokoll ist simuliert, der Auftrag nicht: er würde zur Übung, die nicht unterschrieben werden kann; das echte Protokoll wählen</translation>
        </message>
        <message>
            <source>this section</source>
            <translation>dieser Abschnitt</translation>
        </message>
        <message>
            <source>time to the stop pressure</source>
            <translation>Zeit bis zum Stoppdruck</translation>
        </message>
        <message>
            <source>triple point here</source>
            <translation>Tripelpunkt hier</translation>
        </message>
        <message>
            <source>unmixed, lowest 0.5 m</source>
            <translation>ungemischt, untere 0,5 m</translation>
        </message>
        <message>
            <source>vent open or watched: a shut section climbs; no flame; not hotter than the hand bears</source>
            <translation>Ablass offen oder beobachtet: ein geschlossener Abschnitt steigt; keine Flamme; nicht heißer als die Hand verträgt</translation>
        </message>
        <message>
            <source>vented by then</source>
            <translation>bis dahin abgelassen</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>warm air on the low points, {heat} into the metal</source>
            <translation>Warmluft auf die Tiefpunkte, {heat} ins Metall</translation>
        </message>
        <message>
            <source>while vented, ventilated</source>
            <translation>beim Ablassen, gelüftet</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} Tage</translation>
        </message>
        <message>
            <source>{kelvin} of warming</source>
            <translation>{kelvin} Erwärmung</translation>
        </message>
        <message>
            <source>{mass} ({share} by volume)</source>
            <translation>{mass} ({share} des Volumens)</translation>
        </message>
        <message>
            <source>{mass}, at {temperature}</source>
            <translation>{mass}, bei {temperature}</translation>
        </message>
        <message>
            <source>{name} must be a number from {low} to {high}, not {value}</source>
            <translation>{name} muss eine Zahl von {low} bis {high} sein, nicht {value}</translation>
        </message>
        <message>
            <source>{now} is below the triple point ({triple}) and liquid was not excluded: it turns to dry ice. Close the vent and hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>{now} liegt unter dem Tripelpunkt ({triple}) und Flüssigkeit war nicht ausgeschlossen: sie wird zu Trockeneis. Ablass schließen und halten.</translation>
        </message>
        <message>
            <source>{now}: {above} above the stop pressure of {stop}. Vapour from the top, slowly.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>{now}: {above} über dem Stoppdruck von {stop}. Dampf von oben, langsam.</translation>
        </message>
        <message>
            <source>{temperature} is above the critical temperature of {critical}: there is no liquid surface and no saturation pressure, so neither the charge nor anything that follows from it is known. Let it cool first.</source>
            <translation>{temperature} liegt über der kritischen Temperatur von {critical}: es gibt keinen Flüssigkeitsspiegel und keinen Sättigungsdruck, also ist weder die Füllung bekannt noch etwas, das aus ihr folgt. Erst abkühlen lassen.</translation>
        </message>
        <message>
            <source>{time} through {bore}, fully open, at the least</source>
            <translation>{time} durch {bore}, ganz offen, mindestens</translation>
        </message>
        <message>
            <source>{time}; poorly mixed {poor}</source>
            <translation>{time}; schlecht gemischt {poor}</translation>
        </message>
        <message>
            <source>{value} is no reading of {quantity}: it lies between {least} and {most}. Read the instrument again.</source>
            <translation>{value} ist kein möglicher Messwert ({quantity}): er liegt zwischen {least} und {most}. Das Messgerät noch einmal ablesen.</translation>
        </message>
        <message>
            <source>{way}, not before {time}</source>
            <translation>{way}, nicht vor {time}</translation>
        </message>
        <message>
            <source>{now}, closed in. With meter, second person, hose, outlet and protection in order: vent vapour from the top, slowly, to {stop}.</source>
            <translation>{now}, eingeschlossen. Wenn Messgerät, zweite Person, Schlauch, Austritt und Schutz in Ordnung sind: Dampf von oben langsam bis {stop} ablassen.</translation>
        </message>
        <message>
            <source>The hold has begun: leave the vent shut and everything still.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Der Halt hat begonnen: Ablass geschlossen und alles in Ruhe lassen.</translation>
        </message>
        <message>
            <source>no pressure</source>
            <translation>kein Druck</translation>
        </message>
        <message>
            <source>No reading has come yet; rely on the mechanical gauge.</source>
            <translation>Noch kein Messwert; auf das mechanische Manometer verlassen.</translation>
        </message>
        <message>
            <source>Readings have stopped: close the vent and read the mechanical gauge; if it rises, vent.</source>
            <translation>Es kommen keine Messwerte mehr: Ablass schließen und das mechanische Manometer ablesen; steigt es, ablassen.</translation>
        </message>
        <message>
            <source>Closed in at {now}, over {limit}: 90 % of the lowest of relief setting, rated pressure and gauge range.</source>
            <translation>Eingeschlossen bei {now}, über {limit}: 90 % vom niedrigsten aus Ansprechdruck des Sicherheitsventils, zulässigem Druck und Manometerbereich.</translation>
        </message>
        <message>
            <source>The pressure stands at the triple point ({now}) with the vent open: liquid is freezing. Close the vent; keep out of line with hose and cover; never strike a plug.</source>
            <translation>Der Druck steht am Tripelpunkt ({now}) bei offenem Ablass: Flüssigkeit gefriert. Ablass schließen; nicht in der Linie von Schlauch und Deckel stehen; nie auf einen Pfropfen schlagen.</translation>
        </message>
        <message>
            <source>At {now} without a verdict before: snow can lie under a gauge at zero. Leave the vented side open, let it warm, keep out of line; a gauge at zero is no proof.</source>
            <translation>Bei {now} ohne Urteil davor: unter null am Manometer kann Schnee liegen. Ablassseite offen lassen, warm werden lassen, nicht in der Linie stehen; null am Manometer ist kein Beweis.</translation>
        </message>
        <message>
            <source>At {now} after vapour only. Open both bleeds and leave them open; CO2 meter at the low spots; keep out of line of the cover. Then the site&apos;s own procedure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Bei {now} nach „nur Dampf“. Beide Entlüftungen öffnen und offen lassen; CO2-Messgerät an die tiefen Stellen; nicht in der Linie des Deckels stehen. Dann die Anweisung der Anlage.</translation>
        </message>
        <message>
            <source>Near 1 bar g ({now}): close and watch for a climb to {triple}, the sign of dry ice.</source>
            <translation>Nahe 1 bar g ({now}): schließen und auf einen Anstieg bis {triple} achten, das Zeichen für Trockeneis.</translation>
        </message>
        <message>
            <source>Now {now}. On to zero.</source>
            <translation>Jetzt {now}. Weiter auf null.</translation>
        </message>
        <message>
            <source>Now {now}. Stop near 1 bar g and hold for dry ice; a stand near {triple} means dry ice.</source>
            <translation>Jetzt {now}. Nahe 1 bar g anhalten und auf Trockeneis halten; ein Stehen nahe {triple} heißt Trockeneis.</translation>
        </message>
        <message>
            <source>{now}{rate}; stop pressure {stop}, triple point {triple}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>{now}{rate}; Stoppdruck {stop}, Tripelpunkt {triple}.</translation>
        </message>
        <message>
            <source>{now}. A steep rise would mean liquid-full; {time} to see it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>{now}. Ein steiler Anstieg hieße voll Flüssigkeit; {time}, um es zu sehen.</translation>
        </message>
        <message>
            <source>Open both bleeds and leave them open; keep out of line of the cover.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Beide Entlüftungen öffnen und offen lassen; nicht in der Linie des Deckels stehen.</translation>
        </message>
        <message>
            <source>hold {number} starts</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Halt {number} beginnt</translation>
        </message>
        <message>
            <source>no reading for more than {time}</source>
            <translation>seit mehr als {time} kein Messwert</translation>
        </message>
        <message>
            <source>readings stopped</source>
            <translation>keine Messwerte mehr</translation>
        </message>
        <message>
            <source>readings are back; a verdict starts from here</source>
            <translation>Messwerte sind wieder da; ein Urteil beginnt ab hier</translation>
        </message>
        <message>
            <source>vapour only no longer stands: {why}</source>
            <translation>„nur Dampf“ gilt nicht mehr: {why}</translation>
        </message>
        <message>
            <source>hold {number}: {why}; its evidence starts anew</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Halt {number}: {why}; sein Nachweis beginnt neu</translation>
        </message>
        <message>
            <source>check the gauge: {fault}</source>
            <translation>Manometer prüfen: {fault}</translation>
        </message>
        <message>
            <source>the clock ran backwards</source>
            <translation>die Uhr lief rückwärts</translation>
        </message>
        <message>
            <source>no reading for {time}: close the vent and read the mechanical gauge</source>
            <translation>seit {time} kein Messwert: Ablass schließen und das mechanische Manometer ablesen</translation>
        </message>
        <message>
            <source>Not known yet: {why}, so the hold&apos;s evidence starts anew.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Noch nicht bekannt: {why}, der Nachweis des Halts beginnt neu.</translation>
        </message>
        <message>
            <source>the metal at {now} is below its rated minimum of {least}: no blows, no repressurising until it has warmed</source>
            <translation>das Metall mit {now} ist unter seiner zulässigen Mindesttemperatur von {least}: keine Schläge, kein Druck darauf, bis es warm ist</translation>
        </message>
        <message>
            <source>below the local triple point with vapour only standing: watch for the shelf</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>unter dem örtlichen Tripelpunkt, „nur Dampf“ gilt: auf die Stufe achten</translation>
        </message>
        <message>
            <source>ALARM: below the local triple point before vapour only was shown; liquid left turns to dry ice</source>
            <translation>ALARM: unter dem örtlichen Tripelpunkt, bevor „nur Dampf“ gezeigt war; Restflüssigkeit wird zu Trockeneis</translation>
        </message>
        <message>
            <source>hold {number} ends: {charge}. {reason}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Halt {number} endet: {charge}. {reason}</translation>
        </message>
        <message>
            <source>hold {number}: {charge}. {reason}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Halt {number}: {charge}. {reason}</translation>
        </message>
        <message>
            <source>the pressure stands at the triple point</source>
            <translation>der Druck steht am Tripelpunkt</translation>
        </message>
        <message>
            <source>the clock ran backwards; the hold starts anew</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>die Uhr lief rückwärts; der Halt beginnt neu</translation>
        </message>
        <message>
            <source>vent open</source>
            <translation>Ablass offen</translation>
        </message>
        <message>
            <source>vent open, found from the pressure</source>
            <translation>Ablass offen, am Druck erkannt</translation>
        </message>
        <message>
            <source>vent closed</source>
            <translation>Ablass geschlossen</translation>
        </message>
        <message>
            <source>vent closed, found from the pressure</source>
            <translation>Ablass geschlossen, am Druck erkannt</translation>
        </message>
        <message>
            <source>dry ice: {reason}</source>
            <translation>Trockeneis: {reason}</translation>
        </message>
        <message>
            <source>dry ice shows</source>
            <translation>Trockeneis zeigt sich</translation>
        </message>
        <message>
            <source>line {line}: {reason}</source>
            <translation>Zeile {line}: {reason}</translation>
        </message>
        <message>
            <source>the gauge shows no value: {cell}</source>
            <translation>das Manometer zeigt keinen Wert: {cell}</translation>
        </message>
        <message>
            <source>the hold shows liquid</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>der Halt zeigt Flüssigkeit</translation>
        </message>
        <message>
            <source>the gauge was out of range</source>
            <translation>das Manometer war außerhalb seines Bereichs</translation>
        </message>
        <message>
            <source>flow into the section is suspected</source>
            <translation>Zufluss in den Abschnitt vermutet</translation>
        </message>
        <message>
            <source>the hold no longer shows it</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>der Halt zeigt es nicht mehr</translation>
        </message>
        <message>
            <source>the two gauges differ by {difference}</source>
            <translation>die zwei Manometer weichen um {difference} voneinander ab</translation>
        </message>
        <message>
            <source>the vent is open and the pressure does not fall: a plug, a gauge cut off, or liquid that boils as fast as it leaves</source>
            <translation>der Ablass ist offen und der Druck fällt nicht: ein Pfropfen, ein abgetrenntes Manometer oder Flüssigkeit, die so schnell siedet, wie sie austritt</translation>
        </message>
        <message>
            <source>the pressure stands at the triple point with the vent open: liquid is freezing</source>
            <translation>der Druck steht bei offenem Ablass am Tripelpunkt: Flüssigkeit gefriert</translation>
        </message>
        <message>
            <source>rising between {least} and {most}</source>
            <translation>Anstieg zwischen {least} und {most}</translation>
        </message>
        <message>
            <source>{inside}: after {time} the pressure still rises {slope} and {why}.</source>
            <translation>{inside}: nach {time} steigt der Druck noch {slope}, und {why}.</translation>
        </message>
        <message>
            <source>Not known yet: {between}; liquid would keep up {least} or more{given}.</source>
            <translation>Noch nicht bekannt: {between}; Flüssigkeit würde mindestens {least} halten{given}.</translation>
        </message>
        <message>
            <source>Hold on; if it does not settle, vent to the stop pressure and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Weiter halten; beruhigt es sich nicht, bis zum Stoppdruck ablassen und erneut halten.</translation>
        </message>
        <message>
            <source>the clamp is only {drive} from saturation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>der Anlegefühler liegt nur {drive} von der Sättigung</translation>
        </message>
        <message>
            <source>dry metal that warms gives at most {most}</source>
            <translation>trockenes Metall, das warm wird, gibt höchstens {most}</translation>
        </message>
        <message>
            <source>{inside}: {pressure} and rising {slope} is more than gas warming from {start} can reach ({bound}).</source>
            <translation>{inside}: {pressure} und ein Anstieg von {slope} sind mehr, als Gas beim Erwärmen von {start} erreichen kann ({bound}).</translation>
        </message>
        <message>
            <source>Not known yet: {time} into the hold; the first rise is gas warming in every case.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Noch nicht bekannt: {time} im Halt; der erste Anstieg ist in jedem Fall Gas, das sich erwärmt.</translation>
        </message>
        <message>
            <source>Keep holding.</source>
            <translation>Weiter halten.</translation>
        </message>
        <message>
            <source>Not known: the reading has not moved since the vent closed; a gauge that is cut off looks the same. Crack the vent and see it answer.</source>
            <translation>Nicht bekannt: der Messwert hat sich seit dem Schließen nicht bewegt; ein abgetrenntes Manometer sieht genauso aus. Ablass kurz öffnen und sehen, ob es antwortet.</translation>
        </message>
        <message>
            <source>Crack the vent and see the gauge answer.</source>
            <translation>Ablass kurz öffnen und sehen, ob das Manometer antwortet.</translation>
        </message>
        <message>
            <source>Not known: {pressure} is too near the triple point to tell a quiet gas from melting dry ice.</source>
            <translation>Nicht bekannt: {pressure} ist zu nah am Tripelpunkt, um ruhiges Gas von schmelzendem Trockeneis zu unterscheiden.</translation>
        </message>
        <message>
            <source>Keep holding: dry ice that has melted lets the pressure climb on.</source>
            <translation>Weiter halten: ist Trockeneis geschmolzen, steigt der Druck weiter.</translation>
        </message>
        <message>
            <source>Not known: {between}, but the section has been below the triple point, and dry ice that melts swallows the heat that would show liquid.</source>
            <translation>Nicht bekannt: {between}, aber der Abschnitt war unter dem Tripelpunkt, und schmelzendes Trockeneis schluckt die Wärme, die Flüssigkeit zeigen würde.</translation>
        </message>
        <message>
            <source>Warm the lowest point {drive} above saturation and hold 5 min.</source>
            <translation>Den tiefsten Punkt auf {drive} über Sättigung erwärmen und 5 min halten.</translation>
        </message>
        <message>
            <source>Not known: rising about {slope}, less than the {gain} that the metal&apos;s warming gives shut-in gas by itself: an outward leak may hide boiling.</source>
            <translation>Nicht bekannt: Anstieg etwa {slope}, weniger als die {gain}, die allein die Erwärmung des Metalls eingeschlossenem Gas gibt: ein Leck nach außen kann Sieden verdecken.</translation>
        </message>
        <message>
            <source>Vapour only: this hold has shown it, and after {time} nothing speaks against it: rising about {slope}, and liquid above the allowable amount would keep up {least} or more ({source}).</source>
            <translation>Nur Dampf: dieser Halt hat es gezeigt, und nach {time} spricht nichts dagegen: Anstieg etwa {slope}; Flüssigkeit über der zulässigen Menge würde mindestens {least} halten ({source}).</translation>
        </message>
        <message>
            <source>Prove the vent and the joints tight, and hold again.</source>
            <translation>Ablass und Verbindungen auf Dichtheit prüfen und erneut halten.</translation>
        </message>
        <message>
            <source>Not known yet: {between}, but the curve is not that of a closed section left alone.</source>
            <translation>Noch nicht bekannt: {between}, aber die Kurve ist nicht die eines geschlossenen, ruhenden Abschnitts.</translation>
        </message>
        <message>
            <source>Leave the section still and hold again.</source>
            <translation>Den Abschnitt in Ruhe lassen und erneut halten.</translation>
        </message>
        <message>
            <source>Not known: {between}, but it rose to {pressure} first; gas rises less from the same pressure the next time, liquid as much again.</source>
            <translation>Nicht bekannt: {between}, aber zuvor stieg er auf {pressure}; Gas steigt vom selben Druck beim nächsten Mal weniger, Flüssigkeit wieder so viel.</translation>
        </message>
        <message>
            <source>Vent to the stop pressure and hold again: the rise must be smaller.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Bis zum Stoppdruck ablassen und erneut halten: der Anstieg muss kleiner sein.</translation>
        </message>
        <message>
            <source>The clamp is {drive} above saturation: warm the lowest point to {wanted} above it and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Der Anlegefühler liegt {drive} über Sättigung: den tiefsten Punkt auf {wanted} darüber erwärmen und erneut halten.</translation>
        </message>
        <message>
            <source>Put a clamp on the lowest point, or say that the metal is bare.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Einen Anlegefühler an den tiefsten Punkt setzen, oder angeben, dass das Metall blank ist.</translation>
        </message>
        <message>
            <source>Not known: {between}, and with no metal shown warm this hold has no power; insulated liquid can rise as slowly as {least}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Nicht bekannt: {between}, und ohne nachweislich warmes Metall hat dieser Halt keine Aussagekraft; gedämmte Flüssigkeit kann so langsam steigen wie {least}.</translation>
        </message>
        <message>
            <source>Vapour only: after {time} the pressure rises at most {most}; liquid above the allowable amount would keep up {least} or more{given}.</source>
            <translation>Nur Dampf: nach {time} steigt der Druck höchstens {most}; Flüssigkeit über der zulässigen Menge würde mindestens {least} halten{given}.</translation>
        </message>
        <message>
            <source>Not known: {between}, and the clamp cools though the vent is shut, or the upper one is at saturation: what is near it may boil.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Nicht bekannt: {between}, und der Anlegefühler wird kälter, obwohl der Ablass zu ist, oder der obere ist auf Sättigung: was bei ihm liegt, kann sieden.</translation>
        </message>
        <message>
            <source>Hold on until both clamps stand or warm.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Weiter halten, bis beide Anlegefühler stehen oder wärmer werden.</translation>
        </message>
        <message>
            <source>{most}, {part} of it the metal&apos;s warming</source>
            <translation>{most}, davon {part} durch die Erwärmung des Metalls</translation>
        </message>
        <message>
            <source>Flow past a closed valve suspected: {here_slope} near {here} and {there_slope} near {there} are one mass flow at two pressures; boiling would change, unless the liquid takes in little heat.</source>
            <translation>Durchlass an einem geschlossenen Ventil vermutet: {here_slope} nahe {here} und {there_slope} nahe {there} sind derselbe Massenstrom bei zwei Drücken; Sieden würde sich ändern, außer die Flüssigkeit nimmt kaum Wärme auf.</translation>
        </message>
        <message>
            <source>the pressure is higher than it was shown for; something came in</source>
            <translation>der Druck ist höher als der, für den es gezeigt war; etwas kam herein</translation>
        </message>
        <message>
            <source>the vent valve is said to be shut while the section is vented; from here it is found from the pressure</source>
            <translation>das Ablassventil gilt als geschlossen, während der Abschnitt abgelassen wird; ab hier wird es aus dem Druck erschlossen</translation>
        </message>
        <message>
            <source>the pressure rises with the vent open</source>
            <translation>der Druck steigt bei offenem Ablass</translation>
        </message>
        <message>
            <source>Not known: {between}, but no clamp shows the lowest metal warm; boiling in balance with an outward leak stands as still, and after a vent it climbs back to {pressure}.</source>
            <translation>Nicht bekannt: {between}, aber kein Anlegefühler zeigt das tiefste Metall warm; Sieden im Gleichgewicht mit einem Leck nach außen steht ebenso still und steigt nach einem Ablass wieder auf {pressure}.</translation>
        </message>
        <message>
            <source>Put a clamp on the lowest point, or vent to the stop pressure and hold again: it must stay lower.</source>
            <translation>Einen Anlegefühler an den tiefsten Punkt setzen, oder bis zum Stoppdruck ablassen und erneut halten: der Druck muss tiefer bleiben.</translation>
        </message>
        <message>
            <source>the gauge does not answer the vent</source>
            <translation>das Manometer antwortet nicht auf den Ablass</translation>
        </message>
        <message>
            <source>A vent that is open to the air can&apos;t stand at {now}: the gauge, its plug or its datum is wrong. Read the mechanical gauge.</source>
            <translation>Ein Ablass, der zur Luft offen ist, kann nicht bei {now} stehen: Manometer, Stecker oder Bezug stimmen nicht. Das mechanische Manometer ablesen.</translation>
        </message>
        <message>
            <source>No hold near 1 bar g was made: snow can lie under a gauge at zero.</source>
            <translation>Nahe 1 bar g wurde nicht gehalten: Unter einem Manometer auf null kann Schnee liegen.</translation>
        </message>
        <message>
            <source>the lowest metal is at saturation</source>
            <translation>das tiefste Metall ist auf Sättigung</translation>
        </message>
        <message>
            <source>The clamp&apos;s reading never changes, and metal cools in a vent: see that it is alive and on the lowest metal; touched, it must move.</source>
            <translation>Der Wert des Anlegefühlers ändert sich nie, und Metall kühlt bei jedem Ablass ab: prüfen, ob er lebt und am tiefsten Metall sitzt; berührt muss er sich bewegen.</translation>
        </message>
        <message>
            <source>The clamp has jumped, as one that hangs in the air does: fix it to the lowest point again.</source>
            <translation>Der Anlegefühler ist gesprungen, wie einer, der in der Luft hängt: wieder an der tiefsten Stelle befestigen.</translation>
        </message>
        <message>
            <source>Flow past a closed valve suspected: it rises {late_slope} near {late}, as {early_slope} near {early} before, though the lowest metal is only {late_drive} above saturation now and was {early_drive}; boiling would fade.</source>
            <translation>Durchlass an einem geschlossenen Ventil vermutet: Es steigt {late_slope} nahe {late}, wie vorher {early_slope} nahe {early}, obwohl das tiefste Metall jetzt nur {late_drive} über der Sättigung liegt und {early_drive} lag; Sieden würde nachlassen.</translation>
        </message>
        <message>
            <source>{count} holds in a row rose alike, and what boils dwindles: see that the isolation valves are shut and tight before venting again.</source>
            <translation>{count} Haltezeiten nacheinander stiegen gleich, und was siedet, wird weniger: vor dem nächsten Ablass prüfen, ob die Absperrventile zu und dicht sind.</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Flüssigkeit</translation>
        </message>
        <message>
            <source>Liquid or leak-by</source>
            <translation>Flüssigkeit oder Durchlass</translation>
        </message>
        <message>
            <source>Hold on for {time} more: two pressures tell liquid from flow past a valve.</source>
            <translation>Noch {time} halten: Zwei Drücke unterscheiden Flüssigkeit von Durchlass an einem Ventil.</translation>
        </message>
        <message>
            <source>the lowest metal is {drive} above saturation</source>
            <translation>das tiefste Metall liegt {drive} über Sättigung</translation>
        </message>
        <message>
            <source>the metal is bare</source>
            <translation>das Metall ist blank</translation>
        </message>
        <message>
            <source>{time}, within {width} of it</source>
            <translation>{time}, innerhalb von {width}</translation>
        </message>
        <message>
            <source>level for {time} after rising {rise}</source>
            <translation>{time} gleichbleibend nach einem Anstieg von {rise}</translation>
        </message>
        <message>
            <source>Liquid-full: the closed section rises {detail}, far faster than liquid with vapour above it can; open the vent path at once.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>Voll Flüssigkeit: der geschlossene Abschnitt steigt {detail}, viel schneller, als Flüssigkeit mit Dampf darüber es kann; den Ablassweg sofort öffnen.</translation>
        </message>
        <message>
            <source>Not vented yet: a closed charge at saturation says nothing of how much liquid there is.</source>
            <translation>Noch nicht abgelassen: eine geschlossene Füllung bei Sättigung sagt nichts darüber, wie viel Flüssigkeit da ist.</translation>
        </message>
        <message>
            <source>{slope}, {steepness} per kelvin</source>
            <translation>{slope}, {steepness} je Kelvin</translation>
        </message>
        <message>
            <source>Not vented yet; rising {slope}: heat, or flow past a valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Noch nicht abgelassen; steigt {slope}: Wärme, oder Durchlass an einem Ventil.</translation>
        </message>
        <message>
            <source>Not known yet: rising between {least} and {most} at {pressure}; dry ice would go on climbing to the triple point.</source>
            <translation>Noch nicht bekannt: Anstieg zwischen {least} und {most} bei {pressure}; Trockeneis würde weiter bis zum Tripelpunkt steigen.</translation>
        </message>
        <message>
            <source>Nitrogen: a standing-pressure test, judged as one (see the job or report); nothing here tells of CO2.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Stickstoff: eine Standdruckprüfung, als solche beurteilt (siehe Auftrag oder Bericht); nichts hier sagt etwas über CO2.</translation>
        </message>
        <message>
            <source>Not known: {fault}, so the hold proves nothing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Nicht bekannt: {fault}, der Halt beweist also nichts.</translation>
        </message>
        <message>
            <source>Dry ice: the pressure climbed to the triple point and stands there ({shelf}). Keep the vented side open, warm gently, keep clear; no time alone ends it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Trockeneis: der Druck stieg bis zum Tripelpunkt und steht dort ({shelf}). Ablassseite offen lassen, sanft erwärmen, Abstand halten; keine Zeit allein beendet es.</translation>
        </message>
        <message>
            <source>closed, before the first vent</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>geschlossen, vor dem ersten Ablassen</translation>
        </message>
        <message>
            <source>the closed time before the vent ends: {reason}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>die geschlossene Zeit vor dem Ablassen endet: {reason}</translation>
        </message>
        <message>
            <source>Vapour only: together with the holds before, at most {share} of the {least} that liquid above the allowable amount would keep up{given}; this hold, after {time}, shows {rising}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Nur Dampf: mit den früheren Halten zusammen höchstens {share} der {least}, die Flüssigkeit über der zulässigen Menge halten würde{given}; dieser Halt zeigt nach {time} {rising}.</translation>
        </message>
        <message>
            <source>Not known: {between}, quieter than liquid, but nothing shows that the vent is shut; a vent that carries off what boils stands as still.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Nicht bekannt: {between}, ruhiger als Flüssigkeit, aber nichts zeigt, dass der Ablass zu ist; trägt er ab, was siedet, steht der Druck ebenso still.</translation>
        </message>
        <message>
            <source>Say when the vent is opened and when it is closed, and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Angeben, wann der Ablass geöffnet und geschlossen wird, und noch einmal halten.</translation>
        </message>
        <message>
            <source>Not known yet: {between}; a small loss by a leak, which would hide boiling, is not excluded.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Noch nicht bekannt: {between}; ein kleiner Verlust durch ein Leck, der Sieden verbergen würde, ist nicht ausgeschlossen.</translation>
        </message>
        <message>
            <source>Hold on; a longer hold, or one more like it, narrows it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Weiter halten; ein längerer Halt oder noch einer grenzt es ein.</translation>
        </message>
        <message>
            <source>Hold on: boiling that gathers pace will show.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Weiter halten: Sieden, das schneller wird, zeigt sich.</translation>
        </message>
        <message>
            <source>Not known: rising at most {most}, but faster now than before; what warms dry gas fades, and only boiling gathers pace.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Nicht bekannt: Anstieg höchstens {most}, aber jetzt schneller als vorher; was trockenes Gas erwärmt, klingt ab, nur Sieden wird schneller.</translation>
        </message>
        <message>
            <source>Hold on; if it does not settle, vent to the stop pressure and hold again. Give the section&apos;s volume: in a small one liquid would show more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Weiter halten; beruhigt es sich nicht, bis zum Stoppdruck ablassen und erneut halten. Das Volumen des Abschnitts angeben: in einem kleinen würde sich Flüssigkeit deutlicher zeigen.</translation>
        </message>
        <message>
            <source>Not known: {between}, but the hold before lost pressure, or gained less than its metal&apos;s warming gives: an outward leak may hide boiling.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Nicht bekannt: {between}, aber der vorige Halt verlor Druck oder gewann weniger, als die Erwärmung seines Metalls gibt: ein Leck nach außen kann Sieden verdecken.</translation>
        </message>
        <message>
            <source>Not known: a gauge that stands at {pressure} can sit over dry ice; what it gives off leaves by a joint that leaks or a vent not quite shut.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Nicht bekannt: eine Anzeige, die bei {pressure} steht, kann über Trockeneis liegen; was es abgibt, entweicht durch eine undichte Stelle oder einen nicht ganz geschlossenen Ablass.</translation>
        </message>
        <message>
            <source>Keep the vented side open and warm the lowest point; only a tight section well above zero can show it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Ablassseite offen lassen und den tiefsten Punkt erwärmen; nur ein dichter Abschnitt deutlich über null kann es zeigen.</translation>
        </message>
        <message>
            <source>Half of the simulated sections that rise like this are not boiled off before {time}; with {power} W of gentle warmth on the low point, not before {warmed}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: boil off</translatorcomment>
            <translation>Die Hälfte der simulierten Abschnitte, die so ansteigen, ist nicht vor {time} ausgesiedet; mit {power} W milder Wärme am tiefsten Punkt nicht vor {warmed}.</translation>
        </message>
        <message>
            <source>Not known: {between}, but it rose to {pressure}, further than gas as warm as the clamp ({clamp}) can: something boiled, and may yet.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Nicht bekannt: {between}, aber er stieg auf {pressure}, weiter, als Gas es kann, das so warm ist wie der Anlegefühler ({clamp}): etwas ist gesiedet und siedet vielleicht noch.</translation>
        </message>
        <message>
            <source>Not known: {between}, but a hold before showed that {lost} or more leaves the section; with that added, the {least} of liquid is not excluded.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Nicht bekannt: {between}, aber ein früherer Halt zeigte, dass {lost} oder mehr den Abschnitt verlässt; das hinzugezählt sind die {least} von Flüssigkeit nicht ausgeschlossen.</translation>
        </message>
        <message>
            <source>Say whether the metal is insulated: were it bare, liquid would keep up {least}, and this hold would decide.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Angeben, ob das Metall isoliert ist: wäre es blank, hielte Flüssigkeit {least} aufrecht, und dieser Halt würde entscheiden.</translation>
        </message>
        <message>
            <source>Not known yet: {time} into the hold; one before fell or gained too little, and before {needed} boiling in balance with a leak can&apos;t be told from quiet.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Noch nicht bekannt: {time} im Halt; ein früherer fiel oder gewann zu wenig, und vor {needed} lässt sich Sieden im Gleichgewicht mit einem Leck nicht von Ruhe unterscheiden.</translation>
        </message>
        <message>
            <source>{time} s without the rise of gas shut in</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>{time} s ohne den Anstieg eingeschlossenen Gases</translation>
        </message>
        <message>
            <source>Not known yet: {time} into a hold that began below the triple point; dry ice would climb to {triple} and stand there.</source>
            <translation>Noch nicht bekannt: {time} in einer Haltezeit, die unter dem Tripelpunkt begann; Trockeneis würde auf {triple} steigen und dort stehen.</translation>
        </message>
        <message>
            <source>, with metal {drive} above the triple point</source>
            <translation>, mit Metall {drive} über dem Tripelpunkt</translation>
        </message>
        <message>
            <source>No dry ice shows: {time} at {pressure}{given}, rising at most {most}; dry ice would give {least} or more.</source>
            <translation>Kein Trockeneis zu sehen: {time} bei {pressure}{given}, Anstieg höchstens {most}; Trockeneis gäbe mindestens {least}.</translation>
        </message>
        <message>
            <source>Dry ice was seen and nothing shows it gone: {pressure}, rising {slope} (snow there is at {snow}).</source>
            <translation>Trockeneis wurde gesehen und nichts zeigt, dass es weg ist: {pressure}, Anstieg {slope} (Schnee hat dort {snow}).</translation>
        </message>
        <message>
            <source>Dry ice</source>
            <translation>Trockeneis</translation>
        </message>
        <message>
            <source>Dry ice, or flow past a closed valve</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Trockeneis, oder Durchlass an einem geschlossenen Ventil</translation>
        </message>
        <message>
            <source>{found}: below the triple point at {pressure} and still climbing {slope} after {time}; metal warming gives at most {most} (snow there is at {snow}).</source>
            <translation>{found}: unter dem Tripelpunkt bei {pressure} und nach {time} noch {slope} Anstieg; die Erwärmung des Metalls gibt höchstens {most} (Schnee hat dort {snow}).</translation>
        </message>
        <message>
            <source>Not known yet: the hold has just begun; the first rise is gas warming in every case.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Noch nicht bekannt: der Halt hat gerade begonnen; der erste Anstieg ist in jedem Fall Gas, das sich erwärmt.</translation>
        </message>
        <message>
            <source>Not known: the closed section loses pressure ({slope}); an outward leak or a vent not shut can hide boiling. Prove the vent shut and hold again.</source>
            <translation>Nicht bekannt: der geschlossene Abschnitt verliert Druck ({slope}); ein Leck nach außen oder ein nicht ganz geschlossener Ablass kann Sieden verbergen. Nachweisen, dass der Ablass zu ist, und erneut halten.</translation>
        </message>
        <message>
            <source>Hold on to {pressure} before venting again; mild warmth on the low point speeds it.</source>
            <translation>Bis {pressure} weiter halten, bevor wieder abgelassen wird; milde Wärme am tiefen Punkt beschleunigt es.</translation>
        </message>
        <message>
            <source>Hold on to {pressure}: two pressures tell liquid from flow past a valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Bis {pressure} weiter halten: zwei Drücke unterscheiden Flüssigkeit von Durchlass an einem Ventil.</translation>
        </message>
        <message>
            <source>pressure</source>
            <translation>Druck</translation>
        </message>
        <message>
            <source>pressure with the vent shut and no metal as cold as dry ice</source>
            <translation>Druck bei geschlossenem Ablass und ohne Metall so kalt wie Trockeneis</translation>
        </message>
        <message>
            <source>pressure above the triple point</source>
            <translation>Druck über dem Tripelpunkt</translation>
        </message>
        <message>
            <source>pressure above the stop pressure</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Druck über dem Stoppdruck</translation>
        </message>
        <message>
            <source>pressure rise</source>
            <translation>Druckanstieg</translation>
        </message>
        <message>
            <source>line temperature</source>
            <translation>Rohrtemperatur</translation>
        </message>
        <message>
            <source>upper temperature</source>
            <translation>obere Temperatur</translation>
        </message>
        <message>
            <source>ambient temperature</source>
            <translation>Umgebungstemperatur</translation>
        </message>
        <message>
            <source>coldest clamp above the metal&apos;s minimum</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>kältester Anlegefühler über dem Minimum des Metalls</translation>
        </message>
        <message>
            <source>lowest clamp above saturation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>tiefster Anlegefühler über Sättigung</translation>
        </message>
        <message>
            <source>CO2 in the air</source>
            <translation>CO2 in der Luft</translation>
        </message>
        <message>
            <source>gauge open to air off zero by</source>
            <translation>Nullabweichung des Manometers an der Luft</translation>
        </message>
        <message>
            <source>vacuum</source>
            <translation>Vakuum</translation>
        </message>
        <message>
            <source>hold running</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Halt läuft</translation>
        </message>
        <message>
            <source>latest holds in a row that show vapour only</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>letzte Halte nacheinander, die nur Dampf zeigen</translation>
        </message>
        <message>
            <source>latest low hold rules dry ice out</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>letzter Halt bei niedrigem Druck schließt Trockeneis aus</translation>
        </message>
        <message>
            <source>standing-pressure test says tight</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Standdruckprüfung sagt dicht</translation>
        </message>
        <message>
            <source>vacuum-rise test says tight and dry</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: vacuum rise</translatorcomment>
            <translation>Vakuumanstiegsprüfung sagt dicht und trocken</translation>
        </message>
        <message>
            <source>, steady for {time}</source>
            <translation>, {time} lang stetig</translation>
        </message>
        <message>
            <source>at least {value}</source>
            <translation>mindestens {value}</translation>
        </message>
        <message>
            <source>at most {value}</source>
            <translation>höchstens {value}</translation>
        </message>
        <message>
            <source>{low} and {high}</source>
            <translation>{low} und {high}</translation>
        </message>
        <message>
            <source>write down: {what}</source>
            <translation>aufschreiben: {what}</translation>
        </message>
        <message>
            <source>still shut on the isolation list: {valves}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>auf der Absperrliste noch geschlossen: {valves}</translation>
        </message>
        <message>
            <source>the isolation list is empty: name each valve</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>die Absperrliste ist leer: jedes Ventil nennen</translation>
        </message>
        <message>
            <source>Simulated readings: this job is practice and can&apos;t be signed.</source>
            <translation>Simulierte Messwerte: dieser Auftrag ist Übung und kann nicht unterschrieben werden.</translation>
        </message>
        <message>
            <source>give the name of the person who does this</source>
            <translation>den Namen der Person angeben, die das tut</translation>
        </message>
        <message>
            <source>too long: {most} characters at most</source>
            <translation>zu lang: höchstens {most} Zeichen</translation>
        </message>
        <message>
            <source>that confirmation belongs to a later step</source>
            <translation>diese Bestätigung gehört zu einem späteren Schritt</translation>
        </message>
        <message>
            <source>write something, or leave the entry alone</source>
            <translation>etwas eintragen, oder das Feld lassen</translation>
        </message>
        <message>
            <source>name the valve</source>
            <translation>das Ventil nennen</translation>
        </message>
        <message>
            <source>{quantity}: must come from readings here</source>
            <translation>{quantity}: muss hier aus Messwerten kommen</translation>
        </message>
        <message>
            <source>{value} does not meet: {condition}</source>
            <translation>{value} erfüllt nicht: {condition}</translation>
        </message>
        <message>
            <source>the job has ended; nothing is left to do</source>
            <translation>der Auftrag ist beendet; es ist nichts mehr zu tun</translation>
        </message>
        <message>
            <source>not yet: {lacks}</source>
            <translation>noch nicht: {lacks}</translation>
        </message>
        <message>
            <source>the job has ended; nothing is left to skip</source>
            <translation>der Auftrag ist beendet; es ist nichts mehr auszulassen</translation>
        </message>
        <message>
            <source>&apos;{step}&apos; can&apos;t be skipped</source>
            <translation>„{step}“ kann nicht ausgelassen werden</translation>
        </message>
        <message>
            <source>write something</source>
            <translation>etwas schreiben</translation>
        </message>
        <message>
            <source>give a reason</source>
            <translation>einen Grund angeben</translation>
        </message>
        <message>
            <source>no venting yet: {lacks}</source>
            <translation>noch nicht ablassen: {lacks}</translation>
        </message>
        <message>
            <source>Close the vent until this is confirmed again.</source>
            <translation>Ablass schließen, bis dies wieder bestätigt ist.</translation>
        </message>
        <message>
            <source>Left out before the joint is broken: {steps}</source>
            <translation>Vor dem Lösen der Verbindung ausgelassen: {steps}</translation>
        </message>
        <message>
            <source>Stop pressure {kept}: {below} below it with liquid inside, {triple} of them below the triple point.</source>
            <translation>Stoppdruck {kept}: {below} darunter mit Flüssigkeit darin, davon {triple} unter dem Tripelpunkt.</translation>
        </message>
        <message>
            <source>kept</source>
            <translation>gehalten</translation>
        </message>
        <message>
            <source>NOT KEPT</source>
            <translation>NICHT GEHALTEN</translation>
        </message>
        <message>
            <source>Dry ice made: {mass} at most.</source>
            <translation>Trockeneis gebildet: höchstens {mass}.</translation>
        </message>
        <message>
            <source>Left inside at the end: {left} of liquid and dry ice (allowable {allowable}).</source>
            <translation>Am Ende darin: {left} Flüssigkeit und Trockeneis (zulässig {allowable}).</translation>
        </message>
        <message>
            <source>CO2 vented: {mass} in {time}.</source>
            <translation>CO2 abgelassen: {mass} in {time}.</translation>
        </message>
        <message>
            <source>You said: {state}. That was {judged}.</source>
            <translation>Sie sagten: {state}. Das war {judged}.</translation>
        </message>
        <message>
            <source>right</source>
            <translation>richtig</translation>
        </message>
        <message>
            <source>WRONG</source>
            <translation>FALSCH</translation>
        </message>
        <message>
            <source>DANGEROUS: the section was taken for empty with liquid or dry ice inside.</source>
            <translation>GEFÄHRLICH: der Abschnitt wurde mit Flüssigkeit oder Trockeneis darin für leer gehalten.</translation>
        </message>
        <message>
            <source>subcooled liquid</source>
            <translation>voll Flüssigkeit</translation>
        </message>
        <message>
            <source>two phase</source>
            <translation>Flüssigkeit und Dampf</translation>
        </message>
        <message>
            <source>solid present</source>
            <translation>Trockeneis</translation>
        </message>
        <message>
            <source>undetermined</source>
            <translation>nicht bestimmt</translation>
        </message>
        <message>
            <source>readings come {time} late</source>
            <translation>Messwerte kommen {time} zu spät</translation>
        </message>
        <message>
            <source>this program has a fault; use the mechanical gauge</source>
            <translation>dieses Programm hat einen Fehler; das mechanische Manometer benutzen</translation>
        </message>
        <message>
            <source>more data than can be shown in time: {rows} rows were passed over</source>
            <translation>mehr Daten, als rechtzeitig gezeigt werden können: {rows} Zeilen übergangen</translation>
        </message>
        <message>
            <source>source lost: {reason}</source>
            <translation>Quelle verloren: {reason}</translation>
        </message>
        <message>
            <source>source back: {label}</source>
            <translation>Quelle wieder da: {label}</translation>
        </message>
        <message>
            <source>cut short by another program</source>
            <translation>von einem anderen Programm gekürzt</translation>
        </message>
        <message>
            <source>replaced by another file</source>
            <translation>durch eine andere Datei ersetzt</translation>
        </message>
        <message>
            <source>not open</source>
            <translation>nicht offen</translation>
        </message>
        <message>
            <source>disconnected</source>
            <translation>getrennt</translation>
        </message>
        <message>
            <source>no answer ({wrong})</source>
            <translation>keine Antwort ({wrong})</translation>
        </message>
        <message>
            <source>no answer</source>
            <translation>keine Antwort</translation>
        </message>
        <message>
            <source>disconnected ({error})</source>
            <translation>getrennt ({error})</translation>
        </message>
        <message>
            <source>{label}: {what}; check the cable, the program keeps trying</source>
            <translation>{label}: {what}; Kabel prüfen, das Programm versucht es weiter</translation>
        </message>
        <message>
            <source>not connected</source>
            <translation>nicht verbunden</translation>
        </message>
        <message>
            <source>the server closed the connection</source>
            <translation>der Server hat die Verbindung geschlossen</translation>
        </message>
        <message>
            <source>Dry ice: the pressure came down to the triple point and stands there ({freezing}): the vent is open, and liquid freezes. Keep it open, warm gently, keep clear; no time alone ends it.</source>
            <translation>Trockeneis: der Druck fiel bis zum Tripelpunkt und steht dort ({freezing}): der Ablass ist offen, und Flüssigkeit gefriert. Offen lassen, sanft erwärmen, Abstand halten; keine Zeit allein beendet es.</translation>
        </message>
        <message>
            <source>temperature {change} explains {effect}; loss {loss} over {time}</source>
            <translation>Temperatur {change} erklärt {effect}; Verlust {loss} über {time}</translation>
        </message>
        <message>
            <source>{loss} ({lower} to {upper}, 95 %)</source>
            <translation>{loss} ({lower} bis {upper}, 95 %)</translation>
        </message>
        <message>
            <source>Can&apos;t tell yet: {seen}, {limit} allowed.</source>
            <translation>Noch nicht zu sagen: {seen}, {limit} zulässig.</translation>
        </message>
        <message>
            <source>Hold longer: the bound narrows with time; steadier temperature helps.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Länger halten: die Grenze wird mit der Zeit enger; ruhigere Temperatur hilft.</translation>
        </message>
        <message>
            <source>{loss} without bounds</source>
            <translation>{loss} ohne Grenzen</translation>
        </message>
        <message>
            <source>fewer than 10 readings</source>
            <translation>weniger als 10 Messwerte</translation>
        </message>
        <message>
            <source>Record pressure and clamp.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Druck und Anlegefühler aufzeichnen.</translation>
        </message>
        <message>
            <source>no clamp reading beside every pressure: the temperature can&apos;t be told from a leak</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>nicht neben jedem Druck ein Anlegefühlerwert: Temperatur und Leck sind nicht zu trennen</translation>
        </message>
        <message>
            <source>Put a clamp on the section, in the shade, and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Einen Anlegefühler im Schatten an den Abschnitt setzen und erneut halten.</translation>
        </message>
        <message>
            <source>no test pressure, or it is gone: less than 0.5 bar above the air</source>
            <translation>kein Prüfdruck, oder er ist weg: weniger als 0,5 bar über der Luft</translation>
        </message>
        <message>
            <source>Raise the pressure and hold again.</source>
            <translation>Den Druck erhöhen und erneut halten.</translation>
        </message>
        <message>
            <source>The pressure wanders too slowly to bound a loss in {time}.</source>
            <translation>Der Druck wandert zu langsam, um in {time} einen Verlust einzugrenzen.</translation>
        </message>
        <message>
            <source>Hold longer.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Länger halten.</translation>
        </message>
        <message>
            <source>Still settling: the loss is not the same in both halves; {seen}.</source>
            <translation>Noch nicht beruhigt: der Verlust ist in beiden Hälften nicht gleich; {seen}.</translation>
        </message>
        <message>
            <source>Wait until the heat of filling has gone and the sun is off the pipe.</source>
            <translation>Warten, bis die Füllwärme weg ist und keine Sonne auf das Rohr scheint.</translation>
        </message>
        <message>
            <source>The pressure rises more than the temperature explains: {seen}. Gas flows in past a valve, or the clamp does not show the gas; an inflow hides a leak.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Der Druck steigt mehr, als die Temperatur erklärt: {seen}. Gas strömt durch ein Ventil ein, oder der Anlegefühler zeigt nicht das Gas; ein Zufluss verbirgt ein Leck.</translation>
        </message>
        <message>
            <source>Shut off the supply or double block, move the clamp, hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Den Zulauf absperren oder doppelt absperren, den Anlegefühler versetzen, erneut halten.</translation>
        </message>
        <message>
            <source>Leaking: {seen}, {limit} allowed.</source>
            <translation>Undicht: {seen}, {limit} zulässig.</translation>
        </message>
        <message>
            <source>Find the leak, mend, repeat.</source>
            <translation>Das Leck suchen, beheben, wiederholen.</translation>
        </message>
        <message>
            <source>Tight within the limit: {seen}, {limit} allowed.</source>
            <translation>Dicht innerhalb der Grenze: {seen}, {limit} zulässig.</translation>
        </message>
        <message>
            <source>Not known: {why}.</source>
            <translation>Nicht bekannt: {why}.</translation>
        </message>
        <message>
            <source>the pressure never moved: such a trace is also what a shut gauge valve gives</source>
            <translation>der Druck hat sich nie bewegt: so eine Kurve gibt auch ein geschlossenes Manometerventil</translation>
        </message>
        <message>
            <source>Bleed a little, see the gauge follow, and hold again.</source>
            <translation>Ein wenig entlüften, sehen, dass das Manometer folgt, und erneut halten.</translation>
        </message>
        <message>
            <source>The pressure never moved beyond its noise: such a trace is also what a shut gauge valve gives.</source>
            <translation>Der Druck hat sich nie über sein Rauschen hinaus bewegt: so eine Kurve gibt auch ein geschlossenes Manometerventil.</translation>
        </message>
        <message>
            <source>The pressure jumps up by {jump} within a minute: gas let in hides a leak.</source>
            <translation>Der Druck springt innerhalb einer Minute um {jump} nach oben: eingelassenes Gas verdeckt ein Leck.</translation>
        </message>
        <message>
            <source>Shut off and take off the supply, then hold again.</source>
            <translation>Die Zufuhr absperren und abnehmen, dann erneut halten.</translation>
        </message>
        <message>
            <source>The two gauges part by {change} during the test: one does not show this section.</source>
            <translation>Die beiden Manometer gehen während der Prüfung um {change} auseinander: eines zeigt diesen Abschnitt nicht.</translation>
        </message>
        <message>
            <source>Check both gauges and their valves, then hold again.</source>
            <translation>Beide Manometer und ihre Ventile prüfen, dann erneut halten.</translation>
        </message>
        <message>
            <source>Test within that range.</source>
            <translation>Innerhalb dieses Bereichs prüfen.</translation>
        </message>
        <message>
            <source>So far no loss above what is allowed, but only for {time}.</source>
            <translation>Bisher kein Verlust über dem Zulässigen, aber erst seit {time}.</translation>
        </message>
        <message>
            <source>Hold at least {time} more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Noch mindestens {time} halten.</translation>
        </message>
        <message>
            <source>{begin} to {end} in {time}</source>
            <translation>{begin} bis {end} in {time}</translation>
        </message>
        <message>
            <source>{micron} micron ({pascal}, {millibar})</source>
            <translation>{micron} Mikron ({pascal}, {millibar})</translation>
        </message>
        <message>
            <source>{rate} micron/min ({lower} to {upper})</source>
            <translation>{rate} Mikron/min ({lower} bis {upper})</translation>
        </message>
        <message>
            <source>Too few independent readings to judge: {course}.</source>
            <translation>Zu wenige unabhängige Messwerte für ein Urteil: {course}.</translation>
        </message>
        <message>
            <source>Hold {time} more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Noch {time} halten.</translation>
        </message>
        <message>
            <source>Limit kept: {course}, {limit} allowed; late rise {rate}; water on this metal would go to {water}.</source>
            <translation>Grenze eingehalten: {course}, {limit} zulässig; später Anstieg {rate}; Wasser auf diesem Metall ginge bis {water}.</translation>
        </message>
        <message>
            <source>{rate} micron/min without bounds</source>
            <translation>{rate} Mikron/min ohne Grenzen</translation>
        </message>
        <message>
            <source>The gauge never moved: {course}; a gauge that is shut off looks the same.</source>
            <translation>Das Vakuummeter hat sich nie bewegt: {course}; ein abgesperrtes sieht genauso aus.</translation>
        </message>
        <message>
            <source>Let the gauge see the pump once, then hold again.</source>
            <translation>Das Vakuummeter einmal die Pumpe sehen lassen, dann erneut halten.</translation>
        </message>
        <message>
            <source>The vacuum rose to {high} and fell back to {low}: the pump was on again, or gauge or metal cooled.</source>
            <translation>Das Vakuum stieg auf {high} und fiel auf {low} zurück: die Vakuumpumpe lief wieder, oder Vakuummeter oder Metall wurden kälter.</translation>
        </message>
        <message>
            <source>Shut the valve to the pump once and hold; give the time when it was shut.</source>
            <translation>Das Ventil zur Vakuumpumpe einmal schließen und halten; angeben, wann es geschlossen wurde.</translation>
        </message>
        <message>
            <source>The limit is kept ({course}), but the rise levels as it does over ice on metal colder than the clamp: not shown dry.</source>
            <translation>Der Grenzwert ist eingehalten ({course}), aber der Anstieg flacht ab wie über Eis auf Metall, das kälter als der Anlegefühler ist: nicht als trocken gezeigt.</translation>
        </message>
        <message>
            <source>Measure the coldest metal and give its temperature, or evacuate again.</source>
            <translation>Das kälteste Metall messen und seine Temperatur angeben, oder erneut evakuieren.</translation>
        </message>
        <message>
            <source>The vacuum has not risen at all: {course}; with the pump still on it stands so too.</source>
            <translation>Das Vakuum ist gar nicht gestiegen: {course}; bei noch laufender Pumpe steht es ebenso.</translation>
        </message>
        <message>
            <source>Shut the valve to the pump, see the vacuum rise a little, and hold on.</source>
            <translation>Das Ventil zur Pumpe schließen, das Vakuum ein wenig steigen sehen und weiter halten.</translation>
        </message>
        <message>
            <source>The pressure falls: {course}. The pump is not shut off, or gauge or metal cools.</source>
            <translation>Der Druck fällt: {course}. Die Pumpe ist nicht abgesperrt, oder Vakuummeter oder Metall kühlt ab.</translation>
        </message>
        <message>
            <source>Shut the valve to the pump and begin again.</source>
            <translation>Das Ventil zur Pumpe schließen und neu beginnen.</translation>
        </message>
        <message>
            <source>Moisture: {course}, levels near the water vapour pressure of the coldest metal, {water} at {coldest} (a hot-wire gauge shows up to twice as much).</source>
            <translation>Feuchte: {course}, wird nahe dem Wasserdampfdruck des kältesten Metalls flach, {water} bei {coldest} (ein Hitzdraht-Vakuummeter zeigt bis zum Doppelten).</translation>
        </message>
        <message>
            <source>Warm the metal, sweep with dry nitrogen, evacuate again.</source>
            <translation>Das Metall erwärmen, mit trockenem Stickstoff spülen, erneut evakuieren.</translation>
        </message>
        <message>
            <source>Leak: {course}, straight at {rate} and no bend.</source>
            <translation>Leck: {course}, gerade mit {rate} und ohne Biegung.</translation>
        </message>
        <message>
            <source>Find it with nitrogen pressure; look at hoses and the pump valve first.</source>
            <translation>Mit Stickstoffdruck suchen; zuerst Schläuche und Pumpenventil ansehen.</translation>
        </message>
        <message>
            <source>on metal this cold that is dry ice or CO2 out of oil or sieve, not water</source>
            <translation>auf so kaltem Metall ist das Trockeneis oder CO2 aus Öl oder Sieb, nicht Wasser</translation>
        </message>
        <message>
            <source>not the water vapour pressure of the metal: outgassing, oil or CO2 left</source>
            <translation>nicht der Wasserdampfdruck des Metalls: Ausgasen, Öl oder restliches CO2</translation>
        </message>
        <message>
            <source>without the metal&apos;s temperature moisture can&apos;t be ruled out</source>
            <translation>ohne die Temperatur des Metalls ist Feuchte nicht auszuschließen</translation>
        </message>
        <message>
            <source>Levels too high: {course}; {what}.</source>
            <translation>Wird zu hoch flach: {course}; {what}.</translation>
        </message>
        <message>
            <source>Evacuate again; a smaller rise the second time confirms outgassing.</source>
            <translation>Erneut evakuieren; ein kleinerer Anstieg beim zweiten Mal bestätigt Ausgasen.</translation>
        </message>
        <message>
            <source>The rise began at {begin}, above {limit}.</source>
            <translation>Der Anstieg begann bei {begin}, über {limit}.</translation>
        </message>
        <message>
            <source>Evacuate further, then shut the pump off.</source>
            <translation>Weiter evakuieren, dann die Pumpe absperren.</translation>
        </message>
        <message>
            <source>So far {course}.</source>
            <translation>Bisher {course}.</translation>
        </message>
        <message>
            <source>Above {limit}: {course}, and the curve is still bending.</source>
            <translation>Über {limit}: {course}, und die Kurve biegt sich noch.</translation>
        </message>
        <message>
            <source>Hold longer: straight on is a leak, levelling is moisture or outgassing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Länger halten: gerade weiter ist ein Leck, flach werden ist Feuchte oder Ausgasen.</translation>
        </message>
        <message>
            <source>Below {limit}, but still rising at {rate}: {course}.</source>
            <translation>Unter {limit}, aber steigt noch mit {rate}: {course}.</translation>
        </message>
        <message>
            <source>Hold longer: straight on is a leak, levelling is outgassing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Länger halten: gerade weiter ist ein Leck, flach werden ist Ausgasen.</translation>
        </message>
        <message>
            <source>The limit is kept ({course}), but without the metal&apos;s temperature dry is not shown.</source>
            <translation>Die Grenze ist eingehalten ({course}), aber ohne die Temperatur des Metalls ist trocken nicht gezeigt.</translation>
        </message>
        <message>
            <source>Put a clamp on the coldest metal or give its temperature.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Einen Anlegefühler an das kälteste Metall setzen oder seine Temperatur angeben.</translation>
        </message>
        <message>
            <source>The limit is kept ({course}), but ice on metal at {coldest} has only {water}: not shown dry.</source>
            <translation>Die Grenze ist eingehalten ({course}), aber Eis auf Metall von {coldest} hat nur {water}: nicht trocken gezeigt.</translation>
        </message>
        <message>
            <source>Warm the metal and repeat.</source>
            <translation>Das Metall erwärmen und wiederholen.</translation>
        </message>
        <message>
            <source>Not known: fewer than 20 vacuum readings since the pump was shut off.</source>
            <translation>Nicht bekannt: weniger als 20 Vakuumwerte seit dem Absperren der Pumpe.</translation>
        </message>
        <message>
            <source>Record the vacuum gauge for the whole test.</source>
            <translation>Das Vakuummeter während der ganzen Prüfung aufzeichnen.</translation>
        </message>
        <message>
            <source>{volume} for each {kg} vented</source>
            <translation>{volume} je abgelassenes {kg}</translation>
        </message>
        <message>
            <source>{volume} for each {kg} vented; {flow} with the vent fully open</source>
            <translation>{volume} je abgelassenes {kg}; {flow} bei ganz offenem Ablass</translation>
        </message>
        <message>
            <source>Fully open, the vent falls {fall} a minute on average: throttle it to {slow} to {calm} a minute over the last {end}.</source>
            <translation>Ganz offen fällt der Ablass im Mittel {fall} in der Minute: auf den letzten {end} auf {slow} bis {calm} in der Minute drosseln.</translation>
        </message>
        <message>
            <source>vapour only</source>
            <translation>nur Dampf</translation>
        </message>
        <message>
            <source>it refuses to answer ({wrong})</source>
            <translation>es weist die Anfrage ab ({wrong})</translation>
        </message>
        <message>
            <source>{step}: the air may hold {limit} ppm of CO2. Over a working day the limit is 5000.</source>
            <translation>{step}: Die Luft darf {limit} ppm CO2 enthalten. Über einen Arbeitstag sind 5000 ppm die Grenze.</translation>
        </message>
        <message>
            <source>No time shut is watched before the vent: a valve may pass unseen.</source>
            <translation>Vor dem Ablass wird keine geschlossene Zeit beobachtet: Ein undichtes Ventil bleibt vielleicht unbemerkt.</translation>
        </message>
        <message>
            <source>No zero of the gauge is asked for before the vent.</source>
            <translation>Vor dem Ablass wird der Nullpunkt des Manometers nicht verlangt.</translation>
        </message>
        <message>
            <source>One hold that shows vapour only is enough: no second is asked for.</source>
            <translation>Ein Halt, der nur Dampf zeigt, genügt: Ein zweiter wird nicht verlangt.</translation>
        </message>
        <message>
            <source>No low hold has to rule dry ice out before the joint is broken.</source>
            <translation>Kein Halt bei niedrigem Druck muss Trockeneis ausschließen, bevor die Verbindung gelöst wird.</translation>
        </message>
        <message>
            <source>The metal&apos;s minimum temperature is not asked for before it is pressurised.</source>
            <translation>Die Mindesttemperatur des Metalls wird nicht verlangt, bevor es unter Druck gesetzt wird.</translation>
        </message>
        <message>
            <source>, falling {fall}</source>
            <translation>, fällt {fall}</translation>
        </message>
        <message>
            <source>air pressure here</source>
            <translation>Luftdruck hier</translation>
        </message>
        <message>
            <source>the metal&apos;s lowest rated temperature</source>
            <translation>die tiefste zulässige Temperatur des Metalls</translation>
        </message>
    </context>
    <context>
        <name>Events</name>
        <message>
            <source>{count} rows lost, lines {first} to {last}: {reason}</source>
            <translation>{count} Zeilen verloren, Zeilen {first} bis {last}: {reason}</translation>
        </message>
        <message>
            <source>{count} rows lost: {reason}</source>
            <translation>{count} Zeilen verloren: {reason}</translation>
        </message>
        <message>
            <source>; the evidence of the hold starts anew</source>
            <translation>; der Nachweis des Halts beginnt neu</translation>
        </message>
        <message>
            <source>Before the vent: {why}; the evidence starts anew</source>
            <translation>Vor dem Ablassen: {why}; der Nachweis beginnt neu</translation>
        </message>
    </context>
    <context>
        <name>Exercises</name>
        <message>
            <source>Vapour only, warm metal</source>
            <translation>Nur Dampf, warmes Metall</translation>
        </message>
        <message>
            <source>Strainer section S-1, 10 litres, bare steel, shut in since the morning. The metal is some 50 K warmer than CO2 at the stop pressure. Vent to the stop pressure, close, and watch.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Filterabschnitt S-1, 10 Liter, blanker Stahl, seit dem Morgen abgesperrt. Das Metall ist rund 50 K wärmer als CO2 beim Stoppdruck. Bis zum Stoppdruck ablassen, schließen, beobachten.</translation>
        </message>
        <message>
            <source>How fast the rise dies away, and how much smaller it is the second time.</source>
            <translation>Wie schnell der Anstieg abklingt, und wie viel kleiner er beim zweiten Mal ist.</translation>
        </message>
        <message>
            <source>About half a bar in the first minute, then flat; the second hold rises far less.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Etwa ein halbes bar in der ersten Minute, dann flach; der zweite Halt steigt viel weniger.</translation>
        </message>
        <message>
            <source>It rises, so there is liquid: vents needlessly, or lower than the stop pressure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Es steigt, also ist Flüssigkeit da: lässt unnötig ab, oder tiefer als den Stoppdruck.</translation>
        </message>
        <message>
            <source>What would the trace do in minute 8 if a cup of liquid were left? Compare with exercise 2.</source>
            <translation>Was täte die Kurve in Minute 8, wenn eine Tasse Flüssigkeit übrig wäre? Mit Übung 2 vergleichen.</translation>
        </message>
        <message>
            <source>Vent back to the same start and hold again: warmed gas hardly rises any more.</source>
            <translation>Auf denselben Anfang ablassen und erneut halten: warmes Gas steigt kaum noch.</translation>
        </message>
        <message>
            <source>One per cent of liquid left</source>
            <translation>Ein Prozent Flüssigkeit übrig</translation>
        </message>
        <message>
            <source>The neighbour of exercise 1: the same 10 litres of bare steel. It held liquid and has been vented; about one per cent of its volume is still liquid, in the bottom of the strainer.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: strainer</translatorcomment>
            <translation>Der Nachbar von Übung 1: dieselben 10 Liter blanker Stahl. Er hielt Flüssigkeit und wurde abgelassen; etwa ein Prozent seines Volumens ist noch Flüssigkeit, unten im Filter.</translation>
        </message>
        <message>
            <source>The first minute looks like exercise 1. Minutes 3 to 8 do not.</source>
            <translation>Die erste Minute sieht aus wie Übung 1. Die Minuten 3 bis 8 nicht.</translation>
        </message>
        <message>
            <source>A first minute like gas, then a steady climb of hundreds of millibar a minute.</source>
            <translation>Eine erste Minute wie Gas, dann ein stetiger Anstieg von Hunderten Millibar je Minute.</translation>
        </message>
        <message>
            <source>The same first minute as exercise 1, so it is gas.</source>
            <translation>Dieselbe erste Minute wie Übung 1, also Gas.</translation>
        </message>
        <message>
            <source>At which minute could you first tell this trace from exercise 1? Why not earlier?</source>
            <translation>Ab welcher Minute ließ sich diese Kurve von Übung 1 unterscheiden? Warum nicht früher?</translation>
        </message>
        <message>
            <source>Wait: the late slope. Or vent again: the climb comes back as steep.</source>
            <translation>Warten: die späte Steigung. Oder noch einmal ablassen: der Anstieg kommt genauso steil wieder.</translation>
        </message>
        <message>
            <source>Ten per cent of liquid left</source>
            <translation>Zehn Prozent Flüssigkeit übrig</translation>
        </message>
        <message>
            <source>The same section once more, now with ten per cent of its volume liquid: ten times as much as in exercise 2. Commit yourself before the trace goes on: will it rise faster or slower?</source>
            <translation>Noch einmal derselbe Abschnitt, jetzt mit zehn Prozent seines Volumens flüssig: zehnmal so viel wie in Übung 2. Vorher festlegen, ehe die Kurve weitergeht: steigt es schneller oder langsamer?</translation>
        </message>
        <message>
            <source>The first minute, against exercise 2.</source>
            <translation>Die erste Minute, gegen Übung 2.</translation>
        </message>
        <message>
            <source>A slower first minute than with one per cent: more liquid has more to warm.</source>
            <translation>Eine langsamere erste Minute als mit einem Prozent: mehr Flüssigkeit muss warm werden.</translation>
        </message>
        <message>
            <source>Less rise, so less liquid.</source>
            <translation>Weniger Anstieg, also weniger Flüssigkeit.</translation>
        </message>
        <message>
            <source>Which part of the trace tells how much liquid is left? (None does: only that it is there.)</source>
            <translation>Welcher Teil der Kurve sagt, wie viel Flüssigkeit übrig ist? (Keiner: nur, dass sie da ist.)</translation>
        </message>
        <message>
            <source>None on the pressure alone: weigh, or vent and count what comes.</source>
            <translation>Keiner am Druck allein: wiegen, oder ablassen und zählen, was kommt.</translation>
        </message>
        <message>
            <source>Liquid left, and all metal as cold as it</source>
            <translation>Flüssigkeit übrig, und alles Metall so kalt wie sie</translation>
        </message>
        <message>
            <source>A 50 litre insulated section after a long, slow vent on a cold day. Frost all over. The gauge stands still.</source>
            <translation>Ein gedämmter Abschnitt von 50 Litern nach langem, langsamem Ablassen an einem kalten Tag. Überall Reif. Das Manometer steht still.</translation>
        </message>
        <message>
            <source>How far the metal is above the saturation temperature of the pressure.</source>
            <translation>Wie weit das Metall über der Sättigungstemperatur des Drucks liegt.</translation>
        </message>
        <message>
            <source>Next to no rise in ten minutes, with kilograms of liquid inside.</source>
            <translation>Fast kein Anstieg in zehn Minuten, mit Kilogramm Flüssigkeit darin.</translation>
        </message>
        <message>
            <source>Flat, so empty.</source>
            <translation>Flach, also leer.</translation>
        </message>
        <message>
            <source>What heat could have boiled any liquid here? What would have to be warm?</source>
            <translation>Welche Wärme hätte hier Flüssigkeit sieden lassen können? Was müsste warm sein?</translation>
        </message>
        <message>
            <source>Bring heat to the low points and hold again; until then the test has no power.</source>
            <translation>Wärme an die tiefen Punkte bringen und erneut halten; bis dahin hat die Prüfung keine Aussagekraft.</translation>
        </message>
        <message>
            <source>The supply valve leaks by</source>
            <translation>Das Zulaufventil lässt durch</translation>
        </message>
        <message>
            <source>Strainer section S-4. Nobody mentions that the isolation valve on the supply side has a scratch on its seat: a tenth of a gram a second comes past.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Filterabschnitt S-4. Niemand erwähnt, dass das Absperrventil im Zulauf einen Kratzer im Sitz hat: ein Zehntel Gramm je Sekunde kommt durch.</translation>
        </message>
        <message>
            <source>Is the rise straight? Is it as steep at another pressure?</source>
            <translation>Ist der Anstieg gerade? Ist er bei anderem Druck gleich steil?</translation>
        </message>
        <message>
            <source>Straight from the first minutes on, and as steep from 9 bar g as from 5.</source>
            <translation>Gerade von den ersten Minuten an, und von 9 bar g so steil wie von 5.</translation>
        </message>
        <message>
            <source>Liquid boiling: keeps venting for an hour, while the leak refills the section.</source>
            <translation>Siedende Flüssigkeit: lässt eine Stunde lang ab, während der Durchlass den Abschnitt füllt.</translation>
        </message>
        <message>
            <source>Which of liquid and leak gets slower at a higher pressure, and why?</source>
            <translation>Was von Flüssigkeit und Durchlass wird bei höherem Druck langsamer, und warum?</translation>
        </message>
        <message>
            <source>Hold at a second pressure; block and bleed the supply.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, bleed</translatorcomment>
            <translation>Bei einem zweiten Druck halten; den Zulauf doppelt absperren und zwischenentlüften.</translation>
        </message>
        <message>
            <source>Vented to 1 bar g with liquid left</source>
            <translation>Mit Rest an Flüssigkeit auf 1 bar g abgelassen</translation>
        </message>
        <message>
            <source>Somebody was in a hurry and vented straight to 1 bar g. Then the valve was closed, and now the pressure climbs and comes to rest at a little over 4 bar g.</source>
            <translation>Jemand hatte es eilig und ließ gleich bis 1 bar g ab. Dann wurde das Ventil geschlossen, und nun steigt der Druck und bleibt bei etwas über 4 bar g stehen.</translation>
        </message>
        <message>
            <source>Where the pressure lingers on the way down, and where it comes to rest on the way up.</source>
            <translation>Wo der Druck auf dem Weg hinab verweilt, und wo er auf dem Weg hinauf stehen bleibt.</translation>
        </message>
        <message>
            <source>A shelf near 4.2 bar g both ways; it stays there for a quarter of an hour and more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Eine Stufe nahe 4,2 bar g in beiden Richtungen; sie bleibt eine Viertelstunde und länger.</translation>
        </message>
        <message>
            <source>It has stabilised, so it is safe.</source>
            <translation>Es hat sich stabilisiert, also ist es sicher.</translation>
        </message>
        <message>
            <source>What pins the pressure at one value? What happens when the last dry ice has melted?</source>
            <translation>Was hält den Druck auf einem Wert fest? Was geschieht, wenn das letzte Trockeneis geschmolzen ist?</translation>
        </message>
        <message>
            <source>Compare the resting pressure with the local triple point; wait, with the vent side open.</source>
            <translation>Den Ruhedruck mit dem örtlichen Tripelpunkt vergleichen; warten, mit offener Ablassseite.</translation>
        </message>
        <message>
            <source>Dry ice at zero on the gauge</source>
            <translation>Trockeneis bei null am Manometer</translation>
        </message>
        <message>
            <source>The gauge shows 0.0 bar g. The bleed was open all night and has just been closed. There is frost on the low point, and on nothing else.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Das Manometer zeigt 0,0 bar g. Die Entlüftung war die ganze Nacht offen und wurde gerade geschlossen. Reif liegt am tiefen Punkt und sonst nirgends.</translation>
        </message>
        <message>
            <source>The climb after closing, and the temperature of the low point.</source>
            <translation>Der Anstieg nach dem Schließen, und die Temperatur des tiefen Punkts.</translation>
        </message>
        <message>
            <source>From zero the pressure climbs along the sublimation line towards 4.2 bar g.</source>
            <translation>Von null steigt der Druck entlang der Sublimationslinie auf 4,2 bar g zu.</translation>
        </message>
        <message>
            <source>Zero means empty: open it.</source>
            <translation>Null heißt leer: öffnen.</translation>
        </message>
        <message>
            <source>What pressure has dry ice at -78 degC? What would the gauge show if the bleed stayed open?</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Welchen Druck hat Trockeneis bei -78 °C? Was zeigte das Manometer, wenn die Entlüftung offen bliebe?</translation>
        </message>
        <message>
            <source>Close the bleed and watch for some minutes; feel for frost at the low point.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Die Entlüftung schließen und einige Minuten beobachten; am tiefen Punkt nach Reif fühlen.</translation>
        </message>
        <message>
            <source>The gauge is shut off</source>
            <translation>Das Manometer ist abgesperrt</translation>
        </message>
        <message>
            <source>The valve at the gauge hose was bumped shut while the vent was closed. Liquid is left in the section.</source>
            <translation>Das Ventil am Manometerschlauch wurde zugestoßen, während der Ablass geschlossen war. Im Abschnitt ist noch Flüssigkeit.</translation>
        </message>
        <message>
            <source>The noise of the reading; what a short mini-vent does to it.</source>
            <translation>Das Rauschen des Messwerts; was ein kurzes Ablassen mit ihm macht.</translation>
        </message>
        <message>
            <source>A trace without any movement, not even noise; a mini-vent does not move it.</source>
            <translation>Eine Kurve ohne jede Bewegung, nicht einmal Rauschen; ein kurzes Ablassen bewegt sie nicht.</translation>
        </message>
        <message>
            <source>A perfect hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ein perfekter Halt.</translation>
        </message>
        <message>
            <source>What does a real gauge on a real section never do?</source>
            <translation>Was tut ein echtes Manometer an einem echten Abschnitt nie?</translation>
        </message>
        <message>
            <source>Crack the vent for two seconds: a gauge that sees the section moves.</source>
            <translation>Den Ablass zwei Sekunden öffnen: ein Manometer, das den Abschnitt sieht, bewegt sich.</translation>
        </message>
        <message>
            <source>An oil-rich strainer</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: strainer</translatorcomment>
            <translation>Ein ölreicher Filter</translation>
        </message>
        <message>
            <source>Section S-8 sits low behind an oil trap that was never drained. The liquid is gone, but the oil in the strainer still holds CO2.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, strainer</translatorcomment>
            <translation>Abschnitt S-8 liegt tief hinter einem Ölfang, der nie geleert wurde. Die Flüssigkeit ist weg, aber das Öl im Filter hält noch CO2.</translation>
        </message>
        <message>
            <source>A slow curved tail, and how it shrinks from hold to hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ein langsamer gebogener Ausläufer, und wie er von Halt zu Halt schrumpft.</translation>
        </message>
        <message>
            <source>A tail that bends, well below saturation, and smaller after each vent.</source>
            <translation>Ein Ausläufer, der sich biegt, weit unter Sättigung, und nach jedem Ablassen kleiner.</translation>
        </message>
        <message>
            <source>Liquid is still there. Or: the supply valve leaks.</source>
            <translation>Es ist noch Flüssigkeit da. Oder: das Zulaufventil lässt durch.</translation>
        </message>
        <message>
            <source>Which of liquid, leak and oil gives less every time? Why is it still not clear?</source>
            <translation>Was von Flüssigkeit, Durchlass und Öl gibt jedes Mal weniger? Warum ist es noch nicht klar?</translation>
        </message>
        <message>
            <source>Vent again and hold: a source that runs down is neither liquid nor leak.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Noch einmal ablassen und halten: eine Quelle, die versiegt, ist weder Flüssigkeit noch Durchlass.</translation>
        </message>
        <message>
            <source>A gauge that reads high, at 2000 m</source>
            <translation>Ein Manometer, das zu viel zeigt, in 2000 m Höhe</translation>
        </message>
        <message>
            <source>A mountain site at 2000 m. The gauge reads 0.3 bar high, nobody took its zero, and the card on the wall was printed for sea level: stop at 5.2 bar g.</source>
            <translation>Eine Anlage in den Bergen auf 2000 m. Das Manometer zeigt 0,3 bar zu viel, niemand hat seine Null geprüft, und die Karte an der Wand gilt für Meereshöhe: Stopp bei 5,2 bar g.</translation>
        </message>
        <message>
            <source>The true distance from the triple point when the gauge shows 5.2 bar g.</source>
            <translation>Der wahre Abstand zum Tripelpunkt, wenn das Manometer 5,2 bar g zeigt.</translation>
        </message>
        <message>
            <source>The gauge shows 5.2 bar g; the section is only half a bar above the triple point.</source>
            <translation>Das Manometer zeigt 5,2 bar g; der Abschnitt liegt nur ein halbes bar über dem Tripelpunkt.</translation>
        </message>
        <message>
            <source>I have a full bar of margin.</source>
            <translation>Ich habe ein ganzes bar Abstand.</translation>
        </message>
        <message>
            <source>Where is the triple point on a gauge at 2000 m? (4.39 bar g, not 4.17.)</source>
            <translation>Wo liegt der Tripelpunkt auf einem Manometer in 2000 m Höhe? (4,39 bar g, nicht 4,17.)</translation>
        </message>
        <message>
            <source>Open the gauge to air and read its zero; give the altitude before the vent.</source>
            <translation>Das Manometer zur Luft öffnen und seine Null ablesen; die Höhe vor dem Ablassen angeben.</translation>
        </message>
        <message>
            <source>Vacuum on a wet section</source>
            <translation>Vakuum an einem feuchten Abschnitt</translation>
        </message>
        <message>
            <source>The core was changed in the rain. The pump runs, the vacuum gauge stops falling; the pump is shut off and the gauge rises.</source>
            <translation>Der Kern wurde im Regen gewechselt. Die Pumpe läuft, das Vakuummeter fällt nicht weiter; die Pumpe wird abgestellt und es steigt.</translation>
        </message>
        <message>
            <source>Where the pressure bends and comes to rest, and what the metal&apos;s temperature says to it.</source>
            <translation>Wo der Druck abbiegt und stehen bleibt, und was die Temperatur des Metalls dazu sagt.</translation>
        </message>
        <message>
            <source>It rests near the saturation pressure of water at the metal&apos;s temperature: 10 to 20 mbar.</source>
            <translation>Er bleibt nahe dem Sättigungsdruck von Wasser bei der Temperatur des Metalls stehen: 10 bis 20 mbar.</translation>
        </message>
        <message>
            <source>There is a leak: looks for it for an hour.</source>
            <translation>Da ist ein Leck: sucht eine Stunde danach.</translation>
        </message>
        <message>
            <source>What does a leak do that water does not? (It goes on in a straight line.)</source>
            <translation>Was tut ein Leck, was Wasser nicht tut? (Es geht in gerader Linie weiter.)</translation>
        </message>
        <message>
            <source>Warm the section: water rises with it; a leak does not care.</source>
            <translation>Den Abschnitt erwärmen: Wasser steigt mit; ein Leck kümmert das nicht.</translation>
        </message>
        <message>
            <source>Nitrogen standing test in the sun</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Standprüfung mit Stickstoff in der Sonne</translation>
        </message>
        <message>
            <source>The section stands under nitrogen at 50 bar g for its standing-pressure test. It was filled in the cool morning; now the sun is on it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Der Abschnitt steht für seine Standdruckprüfung unter Stickstoff bei 50 bar g. Er wurde am kühlen Morgen gefüllt; jetzt scheint die Sonne darauf.</translation>
        </message>
        <message>
            <source>Pressure and temperature together.</source>
            <translation>Druck und Temperatur zusammen.</translation>
        </message>
        <message>
            <source>Two bar more in an hour, with no gas added: the metal has warmed by ten kelvin.</source>
            <translation>Zwei bar mehr in einer Stunde, ohne dass Gas dazukam: das Metall ist um zehn Kelvin wärmer.</translation>
        </message>
        <message>
            <source>The supply leaks in. Or, when it cools: the section leaks.</source>
            <translation>Der Zulauf lässt durch. Oder, wenn es kühlt: der Abschnitt leckt.</translation>
        </message>
        <message>
            <source>What is left of the rise when it is corrected for temperature?</source>
            <translation>Was bleibt vom Anstieg, wenn er auf die Temperatur berichtigt ist?</translation>
        </message>
        <message>
            <source>Correct for the gas temperature with a real-gas factor; wait for the evening.</source>
            <translation>Mit der Gastemperatur und einem Realgasfaktor berichtigen; auf den Abend warten.</translation>
        </message>
        <message>
            <source>The vent valve leaks out</source>
            <translation>Das Ablassventil lässt nach außen durch</translation>
        </message>
        <message>
            <source>Insulated section S-5 with kilograms of liquid. The vent valve is closed, but a grain sits on its seat: what boils leaves through it.</source>
            <translation>Gedämmter Abschnitt S-5 mit Kilogramm Flüssigkeit. Das Ablassventil ist zu, aber ein Korn liegt auf dem Sitz: was siedet, entweicht dort.</translation>
        </message>
        <message>
            <source>Frost and sound at the vent outlet while the gauge stands still.</source>
            <translation>Reif und Geräusch am Austritt, während das Manometer still steht.</translation>
        </message>
        <message>
            <source>A quiet gauge: what leaks out is what boils off.</source>
            <translation>Ein ruhiges Manometer: was hinausleckt, ist, was siedet.</translation>
        </message>
        <message>
            <source>Quiet, so empty.</source>
            <translation>Ruhig, also leer.</translation>
        </message>
        <message>
            <source>What are the two ways for a gauge to stand still above liquid?</source>
            <translation>Auf welche zwei Arten kann ein Manometer über Flüssigkeit still stehen?</translation>
        </message>
        <message>
            <source>Test the outlet for flow; cap it and hold again.</source>
            <translation>Den Austritt auf Strömung prüfen; verschließen und erneut halten.</translation>
        </message>
        <message>
            <source>Shut in liquid-full</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>Voll Flüssigkeit abgesperrt</translation>
        </message>
        <message>
            <source>Both valves of section S-3 were closed on liquid. It is two kelvin warmer than the liquid was. Nothing else has happened yet.</source>
            <translation>Beide Ventile von Abschnitt S-3 wurden auf Flüssigkeit geschlossen. Er ist zwei Kelvin wärmer, als die Flüssigkeit war. Sonst ist noch nichts geschehen.</translation>
        </message>
        <message>
            <source>Bar per minute before the first vent, and what opening does.</source>
            <translation>Bar je Minute vor dem ersten Ablassen, und was das Öffnen tut.</translation>
        </message>
        <message>
            <source>The gauge climbs bars in a minute; on opening it drops to saturation at once.</source>
            <translation>Das Manometer steigt um mehrere bar in der Minute; beim Öffnen fällt es sofort auf Sättigung.</translation>
        </message>
        <message>
            <source>The supply valve leaks: looks for the leak first.</source>
            <translation>Das Zulaufventil lässt durch: sucht zuerst das Leck.</translation>
        </message>
        <message>
            <source>Ten bar for one kelvin: how long until the relief valve lifts?</source>
            <translation>Zehn bar für ein Kelvin: wie lange, bis das Sicherheitsventil öffnet?</translation>
        </message>
        <message>
            <source>None: open the vent path at once.</source>
            <translation>Keiner: den Ablassweg sofort öffnen.</translation>
        </message>
        <message>
            <source>Air in the section</source>
            <translation>Luft im Abschnitt</translation>
        </message>
        <message>
            <source>Section S-6 was opened last week and not evacuated well. There is a bar of air in it besides the CO2, and liquid.</source>
            <translation>Abschnitt S-6 wurde letzte Woche geöffnet und schlecht evakuiert. Außer CO2 ist ein bar Luft darin, und Flüssigkeit.</translation>
        </message>
        <message>
            <source>Pressure against the saturation pressure of the coldest metal.</source>
            <translation>Druck gegen den Sättigungsdruck des kältesten Metalls.</translation>
        </message>
        <message>
            <source>The gauge stands above the saturation pressure of the liquid&apos;s temperature.</source>
            <translation>Das Manometer steht über dem Sättigungsdruck zur Temperatur der Flüssigkeit.</translation>
        </message>
        <message>
            <source>Above saturation, so it must be liquid-full. Or: subcooled, so no boiling to fear.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>Über Sättigung, also voll Flüssigkeit. Oder: unterkühlt, also kein Sieden zu fürchten.</translation>
        </message>
        <message>
            <source>Which sign of liquid does air leave alone? (The late slope.)</source>
            <translation>Welches Zeichen von Flüssigkeit lässt Luft unberührt? (Die späte Steigung.)</translation>
        </message>
        <message>
            <source>Vent and hold again: air leaves with the vapour; liquid does not.</source>
            <translation>Noch einmal ablassen und halten: Luft geht mit dem Dampf; Flüssigkeit nicht.</translation>
        </message>
        <message>
            <source>Metal colder than the liquid</source>
            <translation>Metall kälter als die Flüssigkeit</translation>
        </message>
        <message>
            <source>An hour ago the section was vented too low and stopped in time; since then liquid has come back in. The metal is still colder than the liquid.</source>
            <translation>Vor einer Stunde wurde der Abschnitt zu tief abgelassen und rechtzeitig angehalten; seither kam wieder Flüssigkeit herein. Das Metall ist noch kälter als die Flüssigkeit.</translation>
        </message>
        <message>
            <source>The delay: nothing happens at first.</source>
            <translation>Die Verzögerung: zuerst geschieht nichts.</translation>
        </message>
        <message>
            <source>Hardly a rise in the first minute or two, then it comes.</source>
            <translation>Kaum ein Anstieg in den ersten ein, zwei Minuten, dann kommt er.</translation>
        </message>
        <message>
            <source>A minute without a rise: empty.</source>
            <translation>Eine Minute ohne Anstieg: leer.</translation>
        </message>
        <message>
            <source>Where did the heat go in the first two minutes?</source>
            <translation>Wohin ging die Wärme in den ersten zwei Minuten?</translation>
        </message>
        <message>
            <source>Hold longer; a clamp at the low point colder than saturation voids the hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, clamp</translatorcomment>
            <translation>Länger halten; ein Anlegefühler am tiefen Punkt, der kälter als Sättigung ist, macht den Halt ungültig.</translation>
        </message>
        <message>
            <source>Liquid through the drain: the hose plugs</source>
            <translation>Flüssigkeit durch den Ablauf: der Schlauch verstopft</translation>
        </message>
        <message>
            <source>The vent hose was put on the low drain, because it was nearer. Liquid comes, and turns to snow in the hose.</source>
            <translation>Der Ablassschlauch wurde an den tiefen Ablauf gesetzt, weil der näher war. Es kommt Flüssigkeit, und sie wird im Schlauch zu Schnee.</translation>
        </message>
        <message>
            <source>The flow dies with the valve open; the pressure stays.</source>
            <translation>Die Strömung stirbt bei offenem Ventil; der Druck bleibt.</translation>
        </message>
        <message>
            <source>The pressure stops falling, tens of bar above zero, with the valve open.</source>
            <translation>Der Druck fällt nicht weiter, Dutzende bar über null, bei offenem Ventil.</translation>
        </message>
        <message>
            <source>The flow has stopped, so it is empty.</source>
            <translation>Die Strömung hat aufgehört, also ist es leer.</translation>
        </message>
        <message>
            <source>On which side of the plug is the pressure? Where do you stand?</source>
            <translation>Auf welcher Seite des Pfropfens ist der Druck? Wo stehen Sie?</translation>
        </message>
        <message>
            <source>Leave the valve open, keep clear, wait; vent from the top.</source>
            <translation>Das Ventil offen lassen, Abstand halten, warten; von oben ablassen.</translation>
        </message>
        <message>
            <source>dry metal c</source>
            <translation>trockenes Metall °C</translation>
        </message>
        <message>
            <source>wet metal c</source>
            <translation>benetztes Metall °C</translation>
        </message>
        <message>
            <source>liquid fraction</source>
            <translation>Flüssigkeitsanteil</translation>
        </message>
        <message>
            <source>nitrogen bar</source>
            <translation>Stickstoff bar</translation>
        </message>
        <message>
            <source>oil kg</source>
            <translation>Öl kg</translation>
        </message>
        <message>
            <source>solid kg</source>
            <translation>Trockeneis kg</translation>
        </message>
        <message>
            <source>water kg</source>
            <translation>Wasser kg</translation>
        </message>
        <message>
            <source>noise</source>
            <translation>Rauschen</translation>
        </message>
        <message>
            <source>step</source>
            <translation>Auflösung</translation>
        </message>
        <message>
            <source>stuck from s</source>
            <translation>hängt ab s</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>Einheit</translation>
        </message>
        <message>
            <source>zero</source>
            <translation>Null</translation>
        </message>
        <message>
            <source>leak by g per s</source>
            <translation>Durchlass g/s</translation>
        </message>
        <message>
            <source>leak out bore mm</source>
            <translation>Leck nach außen, Bohrung mm</translation>
        </message>
        <message>
            <source>supply liquid</source>
            <translation>Zulauf flüssig</translation>
        </message>
        <message>
            <source>altitude</source>
            <translation>Höhe angegeben</translation>
        </message>
        <message>
            <source>insulated</source>
            <translation>gedämmt</translation>
        </message>
        <message>
            <source>volume l</source>
            <translation>Volumen L</translation>
        </message>
        <message>
            <source>altitude m</source>
            <translation>Höhe m</translation>
        </message>
        <message>
            <source>ambient c</source>
            <translation>Umgebung °C</translation>
        </message>
        <message>
            <source>pump l per min</source>
            <translation>Pumpe L/min</translation>
        </message>
        <message>
            <source>low point</source>
            <translation>tiefer Punkt</translation>
        </message>
        <message>
            <source>plugs</source>
            <translation>verstopft</translation>
        </message>
    </context>
    <context>
        <name>Fault</name>
        <message>
            <source>Display fault: close the vent</source>
            <translation>Anzeigefehler: Ablass schließen</translation>
        </message>
        <message>
            <source>Display fault</source>
            <translation>Anzeigefehler</translation>
        </message>
        <message>
            <source>Read the mechanical gauge; if it rises, vent. Readings are still being taken and recorded.</source>
            <translation>Mechanisches Manometer ablesen; steigt es, ablassen. Messwerte werden weiter genommen und aufgezeichnet.</translation>
        </message>
        <message>
            <source>This program has a fault: {error}</source>
            <translation>Dieses Programm hat einen Fehler: {error}</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Noch einmal</translation>
        </message>
        <message>
            <source>Start page</source>
            <translation>Startseite</translation>
        </message>
    </context>
    <context>
        <name>Guide</name>
        <message>
            <source>Read the reveal, then More: run again with one thing changed.</source>
            <translation>Auflösung lesen, dann Mehr: noch einmal mit einer Änderung.</translation>
        </message>
        <message>
            <source>Press Reveal (R) to see what was really inside.</source>
            <translation>Auflösung (R) zeigt, was wirklich drin war.</translation>
        </message>
        <message>
            <source>Press Space to let the time go; - and + change its speed.</source>
            <translation>Leertaste lässt die Zeit laufen; - und + ändern das Tempo.</translation>
        </message>
        <message>
            <source>Open the vent (O), a quarter a touch, and watch the margin.</source>
            <translation>Ablass öffnen (O), je ein Viertel, und den Abstand beobachten.</translation>
        </message>
        <message>
            <source>The pressure falls. Slow down near the stop line.</source>
            <translation>Der Druck fällt. Nahe der Stopplinie langsamer werden.</translation>
        </message>
        <message>
            <source>Near the stop line: close the vent (C).</source>
            <translation>Nahe der Stopplinie: Ablass schließen (C).</translation>
        </message>
        <message>
            <source>Is it flat or still rising? Commit yourself: Predict (G).</source>
            <translation>Flach oder noch steigend? Festlegen: Vorhersage (G).</translation>
        </message>
        <message>
            <source>Hold: leave the vent shut and watch how the rise dies away, or not.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Halten: Ablass zu lassen und sehen, ob der Anstieg abklingt.</translation>
        </message>
        <message>
            <source>Below the triple point: liquid that was left is dry ice now. Leave the vent shut and watch whether the pressure comes back.</source>
            <translation>Unter dem Tripelpunkt: Flüssigkeit, die noch da war, ist jetzt Trockeneis. Den Ablass geschlossen lassen und beobachten, ob der Druck zurückkommt.</translation>
        </message>
        <message>
            <source>Below the triple point: liquid that is left turns to dry ice. This vent has gone too far: close it at once (C).</source>
            <translation>Unter dem Tripelpunkt: Flüssigkeit, die noch da ist, wird zu Trockeneis. Dieser Ablass ging zu weit: sofort schließen (C).</translation>
        </message>
        <message>
            <source>Below the stop line: close the vent at once (C).</source>
            <translation>Unter der Stopplinie: den Ablass sofort schließen (C).</translation>
        </message>
    </context>
    <context>
        <name>Job</name>
        <message>
            <source>Typed words are not kept yet. End without them?</source>
            <translation>Getippte Worte sind noch nicht behalten. Ohne sie beenden?</translation>
        </message>
        <message>
            <source>Log of the test</source>
            <translation>Protokoll der Prüfung</translation>
        </message>
        <message>
            <source>Readings (*.csv)</source>
            <translation>Messwerte (*.csv)</translation>
        </message>
        <message>
            <source>Signed, digest </source>
            <translation>Unterschrieben, Prüfsumme </translation>
        </message>
        <message>
            <source>Report: </source>
            <translation>Bericht: </translation>
        </message>
        <message>
            <source>SIMULATED PRACTICE: never signed</source>
            <translation>SIMULIERTE ÜBUNG: nie unterschrieben</translation>
        </message>
        <message>
            <source>Your name</source>
            <translation>Ihr Name</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Verlassen</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>Weglegen</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Step back</source>
            <translation>Schritt zurück</translation>
        </message>
        <message>
            <source>Skip</source>
            <translation>Auslassen</translation>
        </message>
        <message>
            <source>Report</source>
            <translation>Bericht</translation>
        </message>
        <message>
            <source>Sign</source>
            <translation>Unterschreiben</translation>
        </message>
        <message>
            <source>Step done</source>
            <translation>Schritt erledigt</translation>
        </message>
        <message>
            <source>Every step has ended</source>
            <translation>Alle Schritte sind beendet</translation>
        </message>
        <message>
            <source>Write your name first (top right).</source>
            <translation>Zuerst Ihren Namen schreiben (oben rechts).</translation>
        </message>
        <message>
            <source>Typed and not kept yet: “{words}”. Keep it, or clear it.</source>
            <translation>Getippt und noch nicht behalten: „{words}“. Behalten oder löschen.</translation>
        </message>
        <message>
            <source>Why is this step left out? Enter keeps it</source>
            <translation>Warum entfällt dieser Schritt? Enter behält es</translation>
        </message>
        <message>
            <source>Why one step back? Enter keeps it</source>
            <translation>Warum einen Schritt zurück? Enter behält es</translation>
        </message>
        <message>
            <source>Why is it taken back? Enter keeps it</source>
            <translation>Warum wird es zurückgenommen? Enter behält es</translation>
        </message>
        <message>
            <source>Note for the record. Enter keeps it</source>
            <translation>Notiz fürs Protokoll. Enter behält sie</translation>
        </message>
        <message>
            <source>Your role, such as technician. Enter signs</source>
            <translation>Ihre Rolle, etwa Techniker. Enter unterschreibt</translation>
        </message>
        <message>
            <source>Do</source>
            <translation>Tun</translation>
        </message>
        <message>
            <source>Caution</source>
            <translation>Vorsicht</translation>
        </message>
        <message>
            <source>What goes wrong here</source>
            <translation>Was hier schiefgeht</translation>
        </message>
        <message>
            <source>Sign: the one who did the work, and the supervisor.</source>
            <translation>Unterschreiben: wer die Arbeit getan hat, und die Aufsicht.</translation>
        </message>
        <message>
            <source>This was practice: it is reported as it is and never signed.</source>
            <translation>Das war Übung: sie wird berichtet, wie sie ist, und nie unterschrieben.</translation>
        </message>
        <message>
            <source>Report: writes the record as PDF into the job&apos;s folder. Read it.</source>
            <translation>Bericht: schreibt das Protokoll als PDF in den Ordner des Auftrags. Lesen.</translation>
        </message>
        <message>
            <source>Note: adds what is missing. Step back: opens the last step again.</source>
            <translation>Notiz: ergänzt, was fehlt. Schritt zurück: öffnet den letzten Schritt wieder.</translation>
        </message>
        <message>
            <source>Put away: closes the job. “Open a job” brings it back.</source>
            <translation>Weglegen: schließt den Auftrag. „Auftrag öffnen“ holt ihn zurück.</translation>
        </message>
        <message>
            <source>What is left to do</source>
            <translation>Was noch zu tun ist</translation>
        </message>
        <message>
            <source>Read off</source>
            <translation>Ablesen</translation>
        </message>
        <message>
            <source>Write a plain number, such as 450 or 0.05.</source>
            <translation>Eine einfache Zahl schreiben, etwa 450 oder 0,05.</translation>
        </message>
        <message>
            <source>not judged yet</source>
            <translation>noch nicht beurteilt</translation>
        </message>
        <message>
            <source>no fresh reading</source>
            <translation>kein frischer Messwert</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Behalten</translation>
        </message>
        <message>
            <source> (if there is any)</source>
            <translation> (falls vorhanden)</translation>
        </message>
        <message>
            <source>I saw the gauge move</source>
            <translation>Ich sah das Manometer sich bewegen</translation>
        </message>
        <message>
            <source>Judge a log of this test</source>
            <translation>Protokoll dieser Prüfung beurteilen</translation>
        </message>
        <message>
            <source>Valve</source>
            <translation>Ventil</translation>
        </message>
        <message>
            <source>Lock</source>
            <translation>Schloss</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Schild</translation>
        </message>
        <message>
            <source>Shut, locked, tagged</source>
            <translation>Zu, gesperrt, beschildert</translation>
        </message>
        <message>
            <source>Open again</source>
            <translation>Wieder offen</translation>
        </message>
        <message>
            <source>A job: plan, vent, prove, work, test, record</source>
            <translation>Ein Auftrag: planen, ablassen, nachweisen, arbeiten, prüfen, festhalten</translation>
        </message>
        <message>
            <source>Section</source>
            <translation>Abschnitt</translation>
        </message>
        <message>
            <source>Site</source>
            <translation>Standort</translation>
        </message>
        <message>
            <source>Unit or room</source>
            <translation>Anlage oder Raum</translation>
        </message>
        <message>
            <source>Drawing and revision</source>
            <translation>Zeichnung und Revision</translation>
        </message>
        <message>
            <source>Work to be done</source>
            <translation>Auszuführende Arbeit</translation>
        </message>
        <message>
            <source>Technician</source>
            <translation>Techniker</translation>
        </message>
        <message>
            <source>Technician&apos;s certificate</source>
            <translation>Nachweis des Technikers</translation>
        </message>
        <message>
            <source>Second person</source>
            <translation>Zweite Person</translation>
        </message>
        <message>
            <source>Supervisor</source>
            <translation>Aufsicht</translation>
        </message>
        <message>
            <source>Gauge: name, serial number</source>
            <translation>Manometer: Name, Seriennummer</translation>
        </message>
        <message>
            <source>Gauge: class and range</source>
            <translation>Manometer: Klasse und Bereich</translation>
        </message>
        <message>
            <source>Gauge: calibrated on</source>
            <translation>Manometer: kalibriert am</translation>
        </message>
        <message>
            <source>Put the job&apos;s folder in</source>
            <translation>Ordner des Auftrags in</translation>
        </message>
        <message>
            <source>Your site&apos;s steps (TOML), empty for the usual</source>
            <translation>Schritte Ihres Standorts (TOML), leer: die üblichen</translation>
        </message>
        <message>
            <source>Open a job</source>
            <translation>Auftrag öffnen</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Beginnen</translation>
        </message>
        <message>
            <source>Give the section and at least one name.</source>
            <translation>Abschnitt und mindestens einen Namen angeben.</translation>
        </message>
        <message>
            <source>A job&apos;s folder</source>
            <translation>Ordner eines Auftrags</translation>
        </message>
        <message>
            <source>triple point </source>
            <translation>Tripelpunkt </translation>
        </message>
        <message>
            <source>No readings come: look at the mechanical gauge.</source>
            <translation>Es kommen keine Messwerte: aufs mechanische Manometer sehen.</translation>
        </message>
        <message>
            <source>, lock {name}</source>
            <translation>, Schloss {name}</translation>
        </message>
        <message>
            <source>, tag {name}</source>
            <translation>, Schild {name}</translation>
        </message>
        <message>
            <source>shut</source>
            <translation>zu</translation>
        </message>
        <message>
            <source>open</source>
            <translation>offen</translation>
        </message>
        <message>
            <source>Tight</source>
            <translation>Dicht</translation>
        </message>
        <message>
            <source>Leaking</source>
            <translation>Undicht</translation>
        </message>
        <message>
            <source>Not known yet</source>
            <translation>Noch nicht bekannt</translation>
        </message>
        <message>
            <source>Tight and dry</source>
            <translation>Dicht und trocken</translation>
        </message>
        <message>
            <source>Leak</source>
            <translation>Leck</translation>
        </message>
        <message>
            <source>Moisture</source>
            <translation>Feuchte</translation>
        </message>
        <message>
            <source>Outgassing</source>
            <translation>Ausgasen</translation>
        </message>
        <message>
            <source>Take it</source>
            <translation>Übernehmen</translation>
        </message>
        <message>
            <source>Not this job&apos;s</source>
            <translation>Gehört nicht dazu</translation>
        </message>
        <message>
            <source>A vent is live. Is it this job&apos;s: take its readings?</source>
            <translation>Ein Ablass läuft. Gehört er zu diesem Auftrag: Messwerte übernehmen?</translation>
        </message>
        <message>
            <source>SIMULATED readings come. Take them into this job? It is practice from then on and can&apos;t be signed.</source>
            <translation>SIMULIERTE Messwerte kommen. In diesen Auftrag übernehmen? Er ist von da an Übung und kann nicht unterschrieben werden.</translation>
        </message>
        <message>
            <source>Show it</source>
            <translation>Zeigen</translation>
        </message>
        <message>
            <source>{count} missing. First: {what}</source>
            <translation>{count} fehlen. Zuerst: {what}</translation>
        </message>
        <message>
            <source>Missing: {what}</source>
            <translation>Es fehlt: {what}</translation>
        </message>
        <message>
            <source>Nothing is missing here: Step done ends this step.</source>
            <translation>Hier fehlt nichts: „Schritt erledigt“ beendet den Schritt.</translation>
        </message>
        <message>
            <source>The steps of this site ask less than those of the program.</source>
            <translation>Die Schritte dieser Anlage verlangen weniger als die des Programms.</translation>
        </message>
    </context>
    <context>
        <name>Key</name>
        <message>
            <source>Back</source>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Shorter</source>
            <translation>Kürzer</translation>
        </message>
        <message>
            <source>Longer</source>
            <translation>Länger</translation>
        </message>
        <message>
            <source>Start</source>
            <translation>Start</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Verlassen</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Öffnen</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Slower</source>
            <translation>Langsam</translation>
        </message>
        <message>
            <source>Faster</source>
            <translation>Schnell</translation>
        </message>
        <message>
            <source>Predict</source>
            <translation>Vorhersage</translation>
        </message>
        <message>
            <source>View</source>
            <translation>Ansicht</translation>
        </message>
        <message>
            <source>Reveal</source>
            <translation>Auflösung</translation>
        </message>
        <message>
            <source>More</source>
            <translation>Mehr</translation>
        </message>
        <message>
            <source>Zoom</source>
            <translation>Zoom</translation>
        </message>
        <message>
            <source>Why?</source>
            <translation>Warum?</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>Pause</source>
            <translation>Pause</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Beginnen</translation>
        </message>
        <message>
            <source>Connect</source>
            <translation>Verbinden</translation>
        </message>
        <message>
            <source>Vent open</source>
            <translation>Offen</translation>
        </message>
        <message>
            <source>Vent closed</source>
            <translation>Zu</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Gesehen</translation>
        </message>
        <message>
            <source>Silence</source>
            <translation>Stumm</translation>
        </message>
        <message>
            <source>Play</source>
            <translation>Spielen</translation>
        </message>
        <message>
            <source>Previous</source>
            <translation>Voriges</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>Nächstes</translation>
        </message>
        <message>
            <source>End tour</source>
            <translation>Rundgang beenden</translation>
        </message>
    </context>
    <context>
        <name>Keyboard</name>
        <message>
            <source>Space</source>
            <translation>Leertaste</translation>
        </message>
        <message>
            <source>Ctrl</source>
            <translation>Strg</translation>
        </message>
    </context>
    <context>
        <name>Live</name>
        <message>
            <source>End the vent and its record?</source>
            <translation>Ablassen und Aufzeichnung beenden?</translation>
        </message>
        <message>
            <source>End</source>
            <translation>Beenden</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>Ctrl+L: back to the vent</source>
            <translation>Strg+L: zurück zum Ablassen</translation>
        </message>
    </context>
    <context>
        <name>Loading</name>
        <message>
            <source>UNCHECKED</source>
            <translation>UNGEPRÜFT</translation>
        </message>
        <message>
            <source>UNCHECKED: {percent} % of the rows checked</source>
            <translation>UNGEPRÜFT: {percent} % der Zeilen geprüft</translation>
        </message>
        <message>
            <source>The trace as it stands in the file, for looking only: no verdict, no saving yet.</source>
            <translation>Der Verlauf, wie er in der Datei steht, nur zum Ansehen: noch kein Urteil, kein Speichern.</translation>
        </message>
        <message>
            <source>Reading {name} row by row: {percent} % of {size} MB checked…</source>
            <translation>{name} wird Zeile für Zeile gelesen: {percent} % von {size} MB geprüft…</translation>
        </message>
        <message>
            <source>Reading {name}, {size} MB…</source>
            <translation>{name} wird gelesen, {size} MB…</translation>
        </message>
    </context>
    <context>
        <name>Note</name>
        <message>
            <source>Note for the record (empty: a mark)</source>
            <translation>Notiz für die Aufzeichnung (leer: eine Marke)</translation>
        </message>
        <message>
            <source>Keep (Enter)</source>
            <translation>Behalten (Enter)</translation>
        </message>
        <message>
            <source>Note on the moment {time}</source>
            <translation>Notiz zum Zeitpunkt {time}</translation>
        </message>
        <message>
            <source>Your name</source>
            <translation>Ihr Name</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Behalten</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>Weglegen</translation>
        </message>
        <message>
            <source>This replay has no file beside which to keep it</source>
            <translation>Diese Wiedergabe hat keine Datei, neben der sie liegen könnte</translation>
        </message>
        <message>
            <source>Note {number}: {words}</source>
            <translation>Notiz {number}: {words}</translation>
        </message>
        <message>
            <source>The last change of the notes is undone</source>
            <translation>Die letzte Änderung der Notizen ist zurückgenommen</translation>
        </message>
        <message>
            <source>No change of the notes to undo</source>
            <translation>Keine Änderung der Notizen zurückzunehmen</translation>
        </message>
        <message>
            <source>Kept; it shows when the replay is no longer blind</source>
            <translation>Behalten; sie erscheint, wenn die Wiedergabe nicht mehr blind ist</translation>
        </message>
        <message>
            <source>Note kept: {path}</source>
            <translation>Notiz behalten: {path}</translation>
        </message>
        <message>
            <source>Write a few words first</source>
            <translation>Bitte erst ein paar Worte schreiben</translation>
        </message>
        <message>
            <source>Note removed. Ctrl+Z brings it back</source>
            <translation>Notiz entfernt. Ctrl+Z holt sie zurück</translation>
        </message>
        <message>
            <source>Your words stay in the line</source>
            <translation>Ihre Worte bleiben in der Zeile</translation>
        </message>
    </context>
    <context>
        <name>Plan</name>
        <message>
            <source>Volume, litres</source>
            <translation>Volumen, Liter</translation>
        </message>
        <message>
            <source>Liquid, % of volume</source>
            <translation>Flüssigkeit, Vol.-%</translation>
        </message>
        <message>
            <source>Altitude, m</source>
            <translation>Höhe, m</translation>
        </message>
        <message>
            <source>Gauge accuracy, %</source>
            <translation>Genauigkeit, %</translation>
        </message>
        <message>
            <source>Vent bore, mm</source>
            <translation>Ablassbohrung, mm</translation>
        </message>
        <message>
            <source>Room, m³</source>
            <translation>Raum, m³</translation>
        </message>
        <message>
            <source>Air changes an hour</source>
            <translation>Luftwechsel je Stunde</translation>
        </message>
        <message>
            <source>{field} not given: {value} is assumed.</source>
            <translation>{field} fehlt: {value} ist angenommen.</translation>
        </message>
        <message>
            <source>{field}: {words} is not a number.</source>
            <translation>{field}: {words} ist keine Zahl.</translation>
        </message>
        <message>
            <source>Stop at {stop} (triple point {triple})</source>
            <translation>Stopp bei {stop} (Tripelpunkt {triple})</translation>
        </message>
        <message>
            <source>Dry ice if vented straight down: {mass}</source>
            <translation>Trockeneis bei Ablassen in einem Zug: {mass}</translation>
        </message>
        <message>
            <source>Stop pressure not before {time}, fully open</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Stoppdruck nicht vor {time}, ganz offen</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keines</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} Tage</translation>
        </message>
        <message>
            <source>Charge, {unit}</source>
            <translation>Füllung, {unit}</translation>
        </message>
        <message>
            <source>or charge, {unit}</source>
            <translation>oder Füllung, {unit}</translation>
        </message>
        <message>
            <source>Gauge range, {unit}</source>
            <translation>Messbereich, {unit}</translation>
        </message>
        <message>
            <source>Surroundings, {unit}</source>
            <translation>Umgebung, {unit}</translation>
        </message>
        <message>
            <source>Relief setting, {unit}</source>
            <translation>Sicherheitsventil, {unit}</translation>
        </message>
        <message>
            <source>Give the volume of the section, and the charge&apos;s {warmth} or {pressure}.</source>
            <translation>Volumen des Abschnitts angeben, dazu {warmth} oder {pressure} der Füllung.</translation>
        </message>
    </context>
    <context>
        <name>Plot</name>
        <message>
            <source>rise, {unit}</source>
            <translation>Anstieg, {unit}</translation>
        </message>
        <message>
            <source>time since the vent closed</source>
            <translation>Zeit seit dem Schließen</translation>
        </message>
        <message>
            <source>hold {number}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Halt {number}</translation>
        </message>
        <message>
            <source>before the vent</source>
            <translation>vor dem Ablassen</translation>
        </message>
        <message>
            <source>{name}, before the vent</source>
            <translation>{name}, vor dem Ablassen</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>Flüssigkeit</translation>
        </message>
        <message>
            <source>vapour</source>
            <translation>Dampf</translation>
        </message>
        <message>
            <source>dry ice</source>
            <translation>Trockeneis</translation>
        </message>
        <message>
            <source>triple point</source>
            <translation>Tripelpunkt</translation>
        </message>
        <message>
            <source>stop</source>
            <translation>Stopp</translation>
        </message>
        <message>
            <source>stop in {early} to {late} ({percent} %)</source>
            <translation>Stopp in {early} bis {late} ({percent} %)</translation>
        </message>
        <message>
            <source>liquid and vapour</source>
            <translation>Flüssigkeit und Dampf</translation>
        </message>
        <message>
            <source>dry ice and vapour</source>
            <translation>Trockeneis und Dampf</translation>
        </message>
        <message>
            <source>critical point</source>
            <translation>kritischer Punkt</translation>
        </message>
        <message>
            <source>heat content, kJ/kg</source>
            <translation>Enthalpie, kJ/kg</translation>
        </message>
        <message>
            <source>heat content, Btu/lb</source>
            <translation>Enthalpie, Btu/lb</translation>
        </message>
        <message>
            <source>{value} = boiling liquid at {temperature}</source>
            <translation>{value} = siedende Flüssigkeit bei {temperature}</translation>
        </message>
        <message>
            <source>Measured: pressure, metal.</source>
            <translation>Gemessen: Druck, Metall.</translation>
        </message>
        <message>
            <source>Line: vapour assumed as warm as the metal.</source>
            <translation>Linie: Dampf angenommen so warm wie Metall.</translation>
        </message>
        <message>
            <source>Dots: saturated vapour assumed.</source>
            <translation>Punkte: Sattdampf angenommen.</translation>
        </message>
        <message>
            <source>now: share not measured</source>
            <translation>jetzt: Anteil nicht gemessen</translation>
        </message>
        <message>
            <source>vapour by the metal temperature</source>
            <translation>Dampf nach der Metalltemperatur</translation>
        </message>
        <message>
            <source>saturated vapour assumed</source>
            <translation>Sattdampf angenommen</translation>
        </message>
        <message>
            <source>if vapour only</source>
            <translation>falls nur Dampf</translation>
        </message>
        <message>
            <source>least with liquid left</source>
            <translation>mindestens, falls noch Flüssigkeit</translation>
        </message>
    </context>
    <context>
        <name>Prompt</name>
        <message>
            <source>Vent</source>
            <translation>Ablassen</translation>
        </message>
        <message>
            <source>Close the vent and hold</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Schließen und halten</translation>
        </message>
        <message>
            <source>Keep holding</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Weiter halten</translation>
        </message>
        <message>
            <source>Vent again</source>
            <translation>Wieder ablassen</translation>
        </message>
        <message>
            <source>Vapour only: vent to zero</source>
            <translation>Nur Dampf: bis null ablassen</translation>
        </message>
        <message>
            <source>Dry ice: hold, keep clear</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Trockeneis: halten, Abstand</translation>
        </message>
        <message>
            <source>Open the bleeds at both ends</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Entlüftungen an beiden Enden öffnen</translation>
        </message>
        <message>
            <source>Vent now</source>
            <translation>Jetzt ablassen</translation>
        </message>
        <message>
            <source>Check the isolation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Absperrung prüfen</translation>
        </message>
        <message>
            <source>Check the vent line</source>
            <translation>Ablassleitung prüfen</translation>
        </message>
        <message>
            <source>Check the gauge</source>
            <translation>Manometer prüfen</translation>
        </message>
        <message>
            <source>No data: close the vent</source>
            <translation>Keine Daten: Ablass schließen</translation>
        </message>
        <message>
            <source>Wait</source>
            <translation>Warten</translation>
        </message>
        <message>
            <source>No data</source>
            <translation>Keine Daten</translation>
        </message>
        <message>
            <source>Stop: dry ice forming</source>
            <translation>Stopp: Trockeneis entsteht</translation>
        </message>
        <message>
            <source>Dry ice possible</source>
            <translation>Trockeneis möglich</translation>
        </message>
        <message>
            <source>Close now: below the triple point</source>
            <translation>Jetzt schließen: unter dem Tripelpunkt</translation>
        </message>
        <message>
            <source>Close: hold for dry ice</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Schließen: auf Trockeneis halten</translation>
        </message>
        <message>
            <source>Wait: watch the closed section</source>
            <translation>Warten: Abschnitt beobachten</translation>
        </message>
        <message>
            <source>Vent when ready</source>
            <translation>Ablassen, wenn bereit</translation>
        </message>
        <message>
            <source>Hold for dry ice</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Auf Trockeneis halten</translation>
        </message>
        <message>
            <source>Liquid or leak-by: vent again</source>
            <translation>Flüssigkeit oder Durchlass: wieder ablassen</translation>
        </message>
        <message>
            <source>Liquid or leak-by: keep holding</source>
            <translation>Flüssigkeit oder Durchlass: weiter halten</translation>
        </message>
        <message>
            <source>Liquid: vent again</source>
            <translation>Flüssigkeit: wieder ablassen</translation>
        </message>
        <message>
            <source>Liquid: keep holding</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Flüssigkeit: weiter halten</translation>
        </message>
        <message>
            <source>Open the vent slowly and watch the margin above the triple point. Fall slowly for the last 10 bar. The prompt to close comes early enough for your hand to reach the valve; do not wait for the stop line itself.</source>
            <translation>Ablass langsam öffnen und den Abstand über dem Tripelpunkt beobachten. Die letzten 10 bar langsam fallen lassen. Die Anweisung zum Schließen kommt früh genug für die Hand am Ventil; nicht auf die Stopplinie selbst warten.</translation>
        </message>
        <message>
            <source>Shut the vent valve now and leave everything still. Below the triple point liquid turns to dry ice, and a gauge at zero would no longer prove anything.</source>
            <translation>Ablassventil jetzt schließen und alles in Ruhe lassen. Unter dem Tripelpunkt wird Flüssigkeit zu Trockeneis, und ein Manometer auf null beweist dann nichts mehr.</translation>
        </message>
        <message>
            <source>Leave the valve shut. The first minute is gas warming up in every case; only the later slope, and the next hold, tell liquid from gas. The time left is the earliest that the hold can decide, not a time after which the section is empty.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ventil geschlossen lassen. In der ersten Minute erwärmt sich immer das Gas; erst die spätere Steigung und der nächste Halt trennen Flüssigkeit von Gas. Die Restzeit ist das Früheste, was der Halt entscheiden kann, nicht eine Zeit, nach der der Abschnitt leer ist.</translation>
        </message>
        <message>
            <source>Liquid is indicated, or this hold could not exclude it. Vent from here back down towards the stop pressure, never lower, then hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, stop pressure</translatorcomment>
            <translation>Flüssigkeit ist angezeigt, oder dieser Halt konnte sie nicht ausschließen. Von hier wieder bis zum Stoppdruck ablassen, nie tiefer, dann erneut halten.</translation>
        </message>
        <message>
            <source>The hold shows no liquid above its detection limit. Vent down, stop near 1 bar gauge and hold for dry ice, then go on to zero. Watch for a shelf at the triple point: if the fall stalls there, close and treat it as dry ice.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Der Halt zeigt keine Flüssigkeit über seiner Nachweisgrenze. Ablassen, nahe 1 bar Überdruck anhalten und auf Trockeneis halten, dann weiter auf null. Auf eine Stufe am Tripelpunkt achten: stockt der Fall dort, schließen und als Trockeneis behandeln.</translation>
        </message>
        <message>
            <source>Dry ice is indicated or not excluded. Keep out of line of hose and cover: pressure may stand on both sides of a plug. The sentence under the prompt says whether the vented side stays open. Let ambient heat work; never strike, blow out or warm a plug. Snow that is shut in can rise far above the rated pressure: watch the gauge. No time alone ends this hold, and a gauge at zero is not proof of empty.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Trockeneis ist angezeigt oder nicht ausgeschlossen. Nicht in der Linie von Schlauch und Deckel stehen: auf beiden Seiten eines Pfropfens kann Druck sein. Der Satz unter der Anweisung sagt, ob die Ablassseite offen bleibt. Umgebungswärme wirken lassen; einen Pfropfen nie schlagen, ausblasen oder erwärmen. Eingeschlossener Schnee kann weit über den zulässigen Druck steigen: Manometer beobachten. Keine Zeit allein beendet diesen Halt, und null auf dem Manometer ist kein Beweis für leer.</translation>
        </message>
        <message>
            <source>Open the bleeds at both ends and leave them open. A plug between the gauge and the section hides pressure. This is a reading, not permission to open.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Entlüftungen an beiden Enden öffnen und offen lassen. Ein Pfropfen zwischen Manometer und Abschnitt verbirgt Druck. Das ist ein Messwert, keine Erlaubnis zum Öffnen.</translation>
        </message>
        <message>
            <source>The closed-in pressure is near a limit, or rises as a liquid-full section does. Open the vent now; stand clear of the outlet.</source>
            <translation>Der eingeschlossene Druck ist nahe einer Grenze oder steigt wie in einem flüssigkeitsvollen Abschnitt. Ablass jetzt öffnen; Abstand zum Austritt halten.</translation>
        </message>
        <message>
            <source>Pressure rises in a way that points to flow past a closed isolation valve. Re-seat and lock the valves, or double block and bleed. Venting alone will not end it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed, isolation</translatorcomment>
            <translation>Der Druck steigt so, dass ein Durchlass am geschlossenen Absperrventil zu vermuten ist. Ventile neu schließen und sichern, oder doppelt absperren und zwischenentlüften. Ablassen allein beendet es nicht.</translation>
        </message>
        <message>
            <source>The vent is open but the pressure does not fall: a plug of dry ice in the vent line, or the shelf at the triple point. Close the vent. Do not look into, strike or heat the outlet.</source>
            <translation>Der Ablass ist offen, aber der Druck fällt nicht: ein Pfropfen aus Trockeneis in der Leitung oder die Stufe am Tripelpunkt. Ablass schließen. Nicht in den Austritt sehen, nicht schlagen, nicht erhitzen.</translation>
        </message>
        <message>
            <source>The gauge shows values that a live section would not, or has reached its limit. Compare with the mechanical gauge; check the line to the gauge for a plug.</source>
            <translation>Das Manometer zeigt Werte, die ein Abschnitt nicht zeigen würde, oder ist am Bereichsende. Mit dem mechanischen Manometer vergleichen; Leitung zum Manometer auf einen Pfropfen prüfen.</translation>
        </message>
        <message>
            <source>Close the vent. Read the mechanical gauge. If it rises, vent. Nothing shown before the gap holds any longer: the hold starts again when readings are back.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ablass schließen. Mechanisches Manometer ablesen. Steigt es, ablassen. Nichts von vor der Lücke gilt noch: der Halt beginnt neu, wenn wieder Messwerte kommen.</translation>
        </message>
        <message>
            <source>Nothing to do before the vent starts.</source>
            <translation>Vor dem Ablassen ist nichts zu tun.</translation>
        </message>
        <message>
            <source>What would you do now?</source>
            <translation>Was würden Sie jetzt tun?</translation>
        </message>
    </context>
    <context>
        <name>Replay</name>
        <message>
            <source>reading the record: {percent} %</source>
            <translation>Aufzeichnung wird gelesen: {percent} %</translation>
        </message>
        <message>
            <source>rows lost: {count}</source>
            <translation>verlorene Zeilen: {count}</translation>
        </message>
        <message>
            <source>cut off at the end</source>
            <translation>am Ende abgeschnitten</translation>
        </message>
        <message>
            <source>the record could not be judged to its end: {error}</source>
            <translation>die Aufzeichnung konnte nicht bis zum Ende beurteilt werden: {error}</translation>
        </message>
    </context>
    <context>
        <name>Samples</name>
        <message>
            <source>Simulated vents: invented readings, replayed at ten times speed</source>
            <translation>Simulierte Vorgänge: erfundene Messwerte, zehnfache Geschwindigkeit</translation>
        </message>
        <message>
            <source>Liquid left, bare steel</source>
            <translation>Flüssigkeit übrig, blanker Stahl</translation>
        </message>
        <message>
            <source>Vapour only</source>
            <translation>Nur Dampf</translation>
        </message>
        <message>
            <source>Liquid left, insulated</source>
            <translation>Flüssigkeit übrig, gedämmt</translation>
        </message>
        <message>
            <source>Liquid left, quiet pressure</source>
            <translation>Flüssigkeit übrig, ruhiger Druck</translation>
        </message>
        <message>
            <source>A valve leaks by</source>
            <translation>Ein Ventil lässt durch</translation>
        </message>
        <message>
            <source>Dry ice</source>
            <translation>Trockeneis</translation>
        </message>
        <message>
            <source>Shut in full of liquid</source>
            <translation>Voll Flüssigkeit eingesperrt</translation>
        </message>
        <message>
            <source>At 1600 m, gauge in psig</source>
            <translation>Auf 1600 m, Manometer in psig</translation>
        </message>
        <message>
            <source>Valve not recorded</source>
            <translation>Ventil nicht aufgezeichnet</translation>
        </message>
        <message>
            <source>From another logger</source>
            <translation>Von einem anderen Logger</translation>
        </message>
    </context>
    <context>
        <name>Source</name>
        <message>
            <source>opening</source>
            <translation>wird geöffnet</translation>
        </message>
        <message>
            <source>waiting for readings</source>
            <translation>wartet auf Messwerte</translation>
        </message>
        <message>
            <source>live</source>
            <translation>live</translation>
        </message>
        <message>
            <source>readings come late</source>
            <translation>Messwerte kommen verspätet</translation>
        </message>
        <message>
            <source>source lost</source>
            <translation>Quelle verloren</translation>
        </message>
        <message>
            <source>not readable</source>
            <translation>nicht lesbar</translation>
        </message>
        <message>
            <source>the stream has ended</source>
            <translation>der Datenstrom ist zu Ende</translation>
        </message>
        <message>
            <source>refused</source>
            <translation>abgewiesen</translation>
        </message>
        <message>
            <source>this program has a fault</source>
            <translation>dieses Programm hat einen Fehler</translation>
        </message>
    </context>
    <context>
        <name>SourceTest</name>
        <message>
            <source>how the newest row is read</source>
            <translation>wie die neueste Zeile gelesen wird</translation>
        </message>
        <message>
            <source>The newest row is read as</source>
            <translation>Die neueste Zeile wird gelesen als</translation>
        </message>
        <message>
            <source>Lines as they came</source>
            <translation>Zeilen, wie sie kamen</translation>
        </message>
        <message>
            <source>name the columns in the field above</source>
            <translation>die Spalten im Feld oben benennen</translation>
        </message>
        <message>
            <source>Opening the source…</source>
            <translation>Quelle wird geöffnet…</translation>
        </message>
        <message>
            <source>The source is open; waiting for the first line…</source>
            <translation>Die Quelle ist offen; warte auf die erste Zeile…</translation>
        </message>
        <message>
            <source>Data comes but no line ends: check baud rate and that the instrument ends its lines</source>
            <translation>Daten kommen, aber keine Zeile endet: Baudrate prüfen, und ob das Gerät seine Zeilen abschließt</translation>
        </message>
        <message>
            <source>The names of the columns came, but no reading under them yet</source>
            <translation>Die Namen der Spalten kamen, aber noch kein Messwert darunter</translation>
        </message>
        <message>
            <source>Data comes but it is no text: check baud rate, parity and cable</source>
            <translation>Daten kommen, aber es ist kein Text: Baudrate, Parität und Kabel prüfen</translation>
        </message>
        <message>
            <source>Lines come but no pressure column: type what each value is into the field above, such as {example}</source>
            <translation>Zeilen kommen, aber keine Druckspalte: im Feld oben angeben, was jeder Wert ist, etwa {example}</translation>
        </message>
        <message>
            <source>Lines come but a job would refuse them: {reason}</source>
            <translation>Zeilen kommen, aber ein Auftrag würde sie ablehnen: {reason}</translation>
        </message>
        <message>
            <source>Lines come but none is a reading: {reason}</source>
            <translation>Zeilen kommen, aber keine ist ein Messwert: {reason}</translation>
        </message>
        <message>
            <source>Readings arrive, {rate}: pressure {pressure}</source>
            <translation>Messwerte kommen, {rate}: Druck {pressure}</translation>
        </message>
        <message>
            <source>Readings arrive, {rate}: pressure {pressure}, but {rejected} of {lines} lines are none: {reason}</source>
            <translation>Messwerte kommen, {rate}: Druck {pressure}, aber {rejected} von {lines} Zeilen sind keine: {reason}</translation>
        </message>
        <message>
            <source>Readings arrive too slowly, one in {interval} s; a job needs one at least every 2 s</source>
            <translation>Messwerte kommen zu langsam, einer in {interval} s; ein Auftrag braucht mindestens alle 2 s einen</translation>
        </message>
        <message>
            <source>Readings have stopped: check cable and instrument. The last was {pressure}, {age} s ago</source>
            <translation>Messwerte bleiben aus: Kabel und Gerät prüfen. Der letzte war {pressure}, vor {age} s</translation>
        </message>
        <message>
            <source>Reading what the file holds so far…</source>
            <translation>Lese, was die Datei bisher enthält…</translation>
        </message>
        <message>
            <source>The file can be read ({readings} readings) but nothing is added to it: is the other program recording?</source>
            <translation>Die Datei ist lesbar ({readings} Messwerte), aber nichts kommt hinzu: zeichnet das andere Programm auf?</translation>
        </message>
        <message>
            <source>The source has gone: {lost}</source>
            <translation>Die Quelle ist weg: {lost}</translation>
        </message>
        <message>
            <source>The stream has ended after {readings} readings</source>
            <translation>Der Datenstrom endete nach {readings} Messwerten</translation>
        </message>
        <message>
            <source>The file is empty: is the other program recording?</source>
            <translation>Die Datei ist leer: zeichnet das andere Programm auf?</translation>
        </message>
        <message>
            <source>The address answers but nothing comes: check that the instrument is on and sends</source>
            <translation>Die Adresse antwortet, aber nichts kommt: prüfen, ob das Gerät an ist und sendet</translation>
        </message>
        <message>
            <source>The port opens but nothing comes: check baud rate, cable, and that the instrument is on and sends</source>
            <translation>Der Anschluss öffnet, aber nichts kommt: Baudrate und Kabel prüfen, und ob das Gerät an ist und sendet</translation>
        </message>
        <message>
            <source>the first one</source>
            <translation>der erste</translation>
        </message>
        <message>
            <source>many a second</source>
            <translation>viele je Sekunde</translation>
        </message>
        <message>
            <source>{rate} a second</source>
            <translation>{rate} je Sekunde</translation>
        </message>
        <message>
            <source>one in {interval} s</source>
            <translation>einer in {interval} s</translation>
        </message>
        <message>
            <source>age not known: the readings lay in the file before</source>
            <translation>Alter unbekannt: die Messwerte lagen schon in der Datei</translation>
        </message>
        <message>
            <source>{lines} lines, {readings} readings, {rejected} not understood</source>
            <translation>{lines} Zeilen, {readings} Messwerte, {rejected} nicht verstanden</translation>
        </message>
        <message>
            <source>not used</source>
            <translation>nicht verwendet</translation>
        </message>
        <message>
            <source>reply {reply}</source>
            <translation>Antwort {reply}</translation>
        </message>
        <message>
            <source>names of the columns</source>
            <translation>Namen der Spalten</translation>
        </message>
        <message>
            <source>about the section</source>
            <translation>über den Abschnitt</translation>
        </message>
        <message>
            <source>as it came: {bytes}</source>
            <translation>wie es kam: {bytes}</translation>
        </message>
        <message>
            <source>time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>pressure</source>
            <translation>Druck</translation>
        </message>
        <message>
            <source>second gauge</source>
            <translation>zweites Manometer</translation>
        </message>
        <message>
            <source>line temperature</source>
            <translation>Leitungstemperatur</translation>
        </message>
        <message>
            <source>upper temperature</source>
            <translation>obere Temperatur</translation>
        </message>
        <message>
            <source>air temperature</source>
            <translation>Lufttemperatur</translation>
        </message>
        <message>
            <source>vent valve</source>
            <translation>Ablassventil</translation>
        </message>
        <message>
            <source>vacuum</source>
            <translation>Vakuum</translation>
        </message>
        <message>
            <source>CO2 in the room</source>
            <translation>CO2 im Raum</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>check sum</source>
            <translation>Prüfsumme</translation>
        </message>
        <message>
            <source>empty</source>
            <translation>leer</translation>
        </message>
        <message>
            <source>open</source>
            <translation>offen</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>geschlossen</translation>
        </message>
        <message>
            <source>right</source>
            <translation>stimmt</translation>
        </message>
        <message>
            <source>neither open nor closed</source>
            <translation>weder offen noch geschlossen</translation>
        </message>
        <message>
            <source>no number</source>
            <translation>keine Zahl</translation>
        </message>
        <message>
            <source>out of range</source>
            <translation>außerhalb des Bereichs</translation>
        </message>
        <message>
            <source>{rows} rows too fast to be taken</source>
            <translation>{rows} Zeilen zu schnell</translation>
        </message>
        <message>
            <source>The device answers but refuses ({exception}): check the unit number and the register map</source>
            <translation>Das Gerät antwortet, weist aber ab ({exception}): Gerätenummer (unit) und Registerliste prüfen</translation>
        </message>
    </context>
    <context>
        <name>Spoken</name>
        <message>
            <source>alarms</source>
            <translation>Alarme</translation>
        </message>
        <message>
            <source>events</source>
            <translation>Ereignisse</translation>
        </message>
        <message>
            <source>headroom above the triple point</source>
            <translation>Abstand über dem Tripelpunkt</translation>
        </message>
        <message>
            <source>pressure against heat content</source>
            <translation>Druck über Wärmeinhalt</translation>
        </message>
        <message>
            <source>holds over each other</source>
            <translation>Halte übereinander</translation>
        </message>
        <message>
            <source>pressure against temperature</source>
            <translation>Druck über Temperatur</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>name of the writer, may be empty</source>
            <translation>Name des Schreibers, darf leer bleiben</translation>
        </message>
        <message>
            <source>plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>plan in full</source>
            <translation>Plan vollständig</translation>
        </message>
        <message>
            <source>place in the recording</source>
            <translation>Stelle in der Aufzeichnung</translation>
        </message>
        <message>
            <source>section: nothing known yet</source>
            <translation>Abschnitt: noch nichts bekannt</translation>
        </message>
        <message>
            <source>section: {state}</source>
            <translation>Abschnitt: {state}</translation>
        </message>
        <message>
            <source>age of the newest reading</source>
            <translation>Alter des neuesten Messwerts</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>recording</source>
            <translation>Aufzeichnung</translation>
        </message>
        <message>
            <source>sound</source>
            <translation>Ton</translation>
        </message>
        <message>
            <source>source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>pressure and temperature against time</source>
            <translation>Druck und Temperatur über der Zeit</translation>
        </message>
        <message>
            <source>margin</source>
            <translation>Abstand</translation>
        </message>
        <message>
            <source>pressure</source>
            <translation>Druck</translation>
        </message>
    </context>
    <context>
        <name>Start</name>
        <message>
            <source>Open a recorded vent</source>
            <translation>Aufzeichnung öffnen</translation>
        </message>
        <message>
            <source>A readings log, from this program or another logger.</source>
            <translation>Messwerte aus diesem Programm oder einem anderen Logger.</translation>
        </message>
        <message>
            <source>Try a sample</source>
            <translation>Beispiel ansehen</translation>
        </message>
        <message>
            <source>Simulated vents that ship with the program, replayed.</source>
            <translation>Simulierte Vorgänge, die dem Programm beiliegen.</translation>
        </message>
        <message>
            <source>Connect a gauge</source>
            <translation>Manometer verbinden</translation>
        </message>
        <message>
            <source>Watch a live vent with prompts, and record it.</source>
            <translation>Live mit Anweisungen verfolgen und aufzeichnen.</translation>
        </message>
        <message>
            <source>Plan a vent</source>
            <translation>Ablassen planen</translation>
        </message>
        <message>
            <source>Charge, stop pressure, dry ice, room and time beforehand.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Füllung, Stoppdruck, Trockeneis, Raum und Zeit vorab.</translation>
        </message>
        <message>
            <source>Practise</source>
            <translation>Üben</translation>
        </message>
        <message>
            <source>Work the valve of a simulated section; alone or with a class.</source>
            <translation>Das Ventil eines simulierten Abschnitts bedienen, allein oder im Unterricht.</translation>
        </message>
        <message>
            <source>A job</source>
            <translation>Ein Auftrag</translation>
        </message>
        <message>
            <source>Step by step from the permit to the signed record.</source>
            <translation>Schritt für Schritt vom Freigabeschein zum Protokoll.</translation>
        </message>
        <message>
            <source>Beside you while a trapped CO2 section is vented: what is left inside, how sure, and what to do next.</source>
            <translation>Neben Ihnen, während ein abgesperrter CO2-Abschnitt abgelassen wird: was noch drin ist, wie sicher, und was zu tun ist.</translation>
        </message>
        <message>
            <source>It advises from gauge readings. It never says that a section is safe to open: your procedure, your permit and the mechanical gauge decide.</source>
            <translation>Es rät anhand von Messwerten. Es sagt nie, dass ein Abschnitt gefahrlos zu öffnen ist: Ihr Verfahren, Ihr Freigabeschein und das mechanische Manometer entscheiden.</translation>
        </message>
    </context>
    <context>
        <name>Status</name>
        <message>
            <source>recording; disk nearly full</source>
            <translation>zeichnet auf; Platte fast voll</translation>
        </message>
        <message>
            <source>recording: {lines} lines</source>
            <translation>Aufzeichnung: {lines} Zeilen</translation>
        </message>
        <message>
            <source>NO SOUND</source>
            <translation>KEIN TON</translation>
        </message>
        <message>
            <source>recording</source>
            <translation>zeichnet auf</translation>
        </message>
        <message>
            <source>NOT RECORDING</source>
            <translation>KEINE AUFZEICHNUNG</translation>
        </message>
    </context>
    <context>
        <name>Steps</name>
        <message>
            <source>Open a CO2 section for work and return it to service</source>
            <translation>Einen CO2-Abschnitt für Arbeiten öffnen und wieder in Betrieb nehmen</translation>
        </message>
        <message>
            <source>Plan and brief</source>
            <translation>Planen und einweisen</translation>
        </message>
        <message>
            <source>Mark the section on the drawing: every valve, check valve, solenoid, regulator, relief valve, low point, top vent and oil pocket.</source>
            <translation>Den Abschnitt in der Zeichnung markieren: jedes Ventil, Rückschlagventil, Magnetventil, jeden Regler, jedes Sicherheitsventil, jeden tiefen Punkt, oberen Ablass und Ölsack.</translation>
        </message>
        <message>
            <source>Run the plan: charge, stop pressure for this altitude and gauge, room concentration if all of it is let out.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Den Plan rechnen: Füllung, Stoppdruck für diese Höhe und dieses Manometer, Raumkonzentration, falls alles austritt.</translation>
        </message>
        <message>
            <source>Agree who watches the gauge, who works the valve, the way out and the hand signals.</source>
            <translation>Absprechen, wer das Manometer beobachtet, wer das Ventil bedient, den Fluchtweg und die Handzeichen.</translation>
        </message>
        <message>
            <source>Cavities and check-valve pockets are trapped volumes of their own: the gauge can&apos;t see them. Plan a bleed for each.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Hohlräume und Taschen an Rückschlagventilen sind eigene eingeschlossene Volumen: das Manometer sieht sie nicht. Für jedes eine Entlüftung einplanen.</translation>
        </message>
        <message>
            <source>The relief path must not be isolated with the section. Find the relief valve of this section and keep its way open.</source>
            <translation>Der Entlastungsweg darf nicht mit dem Abschnitt abgesperrt werden. Das Sicherheitsventil dieses Abschnitts suchen und seinen Weg offen halten.</translation>
        </message>
        <message>
            <source>Liquid shut between two valves rises by 7 to 16 bar per kelvin.</source>
            <translation>Flüssigkeit zwischen zwei geschlossenen Ventilen steigt um 7 bis 16 bar je Kelvin.</translation>
        </message>
        <message>
            <source>A solenoid and a check valve in a row hide a trapped volume that nobody marked.</source>
            <translation>Ein Magnetventil und ein Rückschlagventil hintereinander verbergen ein eingeschlossenes Volumen, das niemand markiert hat.</translation>
        </message>
        <message>
            <source>The relief valve sits on the other side of a valve that will be shut.</source>
            <translation>Das Sicherheitsventil sitzt auf der anderen Seite eines Ventils, das geschlossen wird.</translation>
        </message>
        <message>
            <source>Permit number</source>
            <translation>Nummer des Erlaubnisscheins</translation>
        </message>
        <message>
            <source>Heaters, fans and defrost on this section, and how they are locked off</source>
            <translation>Heizungen, Ventilatoren und Abtauung an diesem Abschnitt, und wie sie gesperrt sind</translation>
        </message>
        <message>
            <source>Isolate, lock and tag</source>
            <translation>Absperren, sichern, beschildern</translation>
        </message>
        <message>
            <source>Lock off pump, compressor, fans, heaters and hot-gas defrost.</source>
            <translation>Pumpe, Verdichter, Ventilatoren, Heizungen und Heißgasabtauung sperren.</translation>
        </message>
        <message>
            <source>Shut the liquid supply valve first, let the plant pull the section down, then shut the outlet. Never shut both ends on liquid.</source>
            <translation>Zuerst das Flüssigkeitsventil im Zulauf schließen, die Anlage den Abschnitt absaugen lassen, dann den Auslass schließen. Nie beide Enden auf Flüssigkeit schließen.</translation>
        </message>
        <message>
            <source>Write down each valve by name, lock it, tag it.</source>
            <translation>Jedes Ventil mit Namen aufschreiben, sperren, beschildern.</translation>
        </message>
        <message>
            <source>A relief path must not be isolated with the section.</source>
            <translation>Ein Entlastungsweg darf nicht mit dem Abschnitt abgesperrt werden.</translation>
        </message>
        <message>
            <source>Stepper and solenoid valves hold in one direction only: shut the hand valve as well.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Schrittmotor- und Magnetventile halten nur in einer Richtung: auch das Handventil schließen.</translation>
        </message>
        <message>
            <source>If the pressure rises faster than 2 bar/min or passes 0.9 of the rated pressure, open the vent at once.</source>
            <translation>Steigt der Druck schneller als 2 bar/min oder über 0,9 des zulässigen Drucks, sofort den Ablass öffnen.</translation>
        </message>
        <message>
            <source>Trapped liquid bursts a gasket within minutes; a gauge outside that pocket shows nothing.</source>
            <translation>Eingeschlossene Flüssigkeit sprengt in Minuten eine Dichtung; ein Manometer außerhalb dieser Tasche zeigt nichts.</translation>
        </message>
        <message>
            <source>A defrost or a controller opens a valve while the section is being vented.</source>
            <translation>Eine Abtauung oder ein Regler öffnet ein Ventil, während der Abschnitt abgelassen wird.</translation>
        </message>
        <message>
            <source>Every valve on the isolation list is shut, locked and tagged</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Jedes Ventil der Absperrliste ist geschlossen, gesperrt und beschildert</translation>
        </message>
        <message>
            <source>The section&apos;s relief path is not isolated with the section</source>
            <translation>Der Entlastungsweg des Abschnitts ist nicht mit dem Abschnitt abgesperrt</translation>
        </message>
        <message>
            <source>Prove the isolation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Die Absperrung nachweisen</translation>
        </message>
        <message>
            <source>Watch the pressure for 2 to 5 minutes with the clamp reading.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Den Druck 2 bis 5 Minuten mit dem Anlegefühler beobachten.</translation>
        </message>
        <message>
            <source>Pressure that follows the metal: tight. A straight rise that ignores the temperature: a supply valve passes.</source>
            <translation>Druck, der dem Metall folgt: dicht. Ein gerader Anstieg, der die Temperatur nicht beachtet: ein Zulaufventil lässt durch.</translation>
        </message>
        <message>
            <source>A valve that passes refills the section while the cover is off: double block and bleed, or stop the job.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Ein Ventil mit Durchlass füllt den Abschnitt wieder, während der Deckel ab ist: doppelt absperren und zwischenentlüften, oder die Arbeit abbrechen.</translation>
        </message>
        <message>
            <source>0.1 g/s past a supply valve looks like liquid boiling in a 10 litre section.</source>
            <translation>0,1 g/s Durchlass an einem Zulaufventil sieht in einem Abschnitt von 10 Litern aus wie siedende Flüssigkeit.</translation>
        </message>
        <message>
            <source>No closed time was seen: check that the readings arrive and that the vent is shut.</source>
            <translation>Es war keine geschlossene Zeit zu sehen: prüfen, ob Messwerte ankommen und der Ablass zu ist.</translation>
        </message>
        <message>
            <source>The pressure keeps rising: open the vent, find the valve that passes.</source>
            <translation>Der Druck steigt weiter: Ablass öffnen, das Ventil mit Durchlass suchen.</translation>
        </message>
        <message>
            <source>People, air and hose</source>
            <translation>Menschen, Luft und Schlauch</translation>
        </message>
        <message>
            <source>Go through the five points on the spot, with the second person present.</source>
            <translation>Die fünf Punkte an Ort und Stelle durchgehen, die zweite Person ist dabei.</translation>
        </message>
        <message>
            <source>Tie the hose down at its end and every metre. Bond it: blown snow charges it.</source>
            <translation>Den Schlauch am Ende und jeden Meter festbinden. Erden: geblasener Schnee lädt ihn auf.</translation>
        </message>
        <message>
            <source>An oxygen alarm is not a CO2 alarm: at 40 000 ppm CO2 it still reads 20.1 %, above its 19.5 % alarm.</source>
            <translation>Ein Sauerstoffalarm ist kein CO2-Alarm: bei 40 000 ppm CO2 zeigt er noch 20,1 %, über seiner Alarmschwelle von 19,5 %.</translation>
        </message>
        <message>
            <source>Cold CO2 is over twice as heavy as air: it lies in pits, wells and docks and runs down stairs.</source>
            <translation>Kaltes CO2 ist über zweimal so schwer wie Luft: es liegt in Gruben, Schächten und Laderampen und läuft Treppen hinab.</translation>
        </message>
        <message>
            <source>No flame and no heat gun on a closed section; no spark near a snow jet.</source>
            <translation>Keine Flamme und keine Heißluftpistole an einem geschlossenen Abschnitt; kein Funke nahe einem Schneestrahl.</translation>
        </message>
        <message>
            <source>A loose hose whips: 140 N of thrust from a 6.3 mm bore at 35 bar g.</source>
            <translation>Ein loser Schlauch peitscht: 140 N Schub aus 6,3 mm Bohrung bei 35 bar g.</translation>
        </message>
        <message>
            <source>The wind takes the cloud to an air intake or under a door.</source>
            <translation>Der Wind trägt die Wolke zu einer Luftansaugung oder unter einer Tür durch.</translation>
        </message>
        <message>
            <source>CO2 meter on at the breathing zone, and low spots measured (an oxygen alarm is not a CO2 meter)</source>
            <translation>CO2-Messgerät in Atemhöhe an, tiefe Stellen gemessen (ein Sauerstoffalarm ist kein CO2-Messgerät)</translation>
        </message>
        <message>
            <source>Second person in sight, knows the way out and does not come in after anybody without breathing apparatus</source>
            <translation>Zweite Person in Sicht, kennt den Fluchtweg und geht niemandem ohne Atemschutzgerät nach</translation>
        </message>
        <message>
            <source>Hose tied down at its end and every metre, and bonded</source>
            <translation>Schlauch am Ende und jeden Meter festgebunden, und geerdet</translation>
        </message>
        <message>
            <source>Outlet away from air intakes, pits, doors and people</source>
            <translation>Austritt fern von Luftansaugungen, Gruben, Türen und Menschen</translation>
        </message>
        <message>
            <source>Face, hand and ear protection on</source>
            <translation>Gesichts-, Hand- und Gehörschutz angelegt</translation>
        </message>
        <message>
            <source>The air is above 5000 ppm or nobody measured it: leave, ventilate, find out why.</source>
            <translation>Die Luft liegt über 5000 ppm oder niemand hat gemessen: hinausgehen, lüften, die Ursache suchen.</translation>
        </message>
        <message>
            <source>Connect the gauge and check its zero</source>
            <translation>Das Manometer anschließen und seine Null prüfen</translation>
        </message>
        <message>
            <source>Connect gauges and vent at the top, vapour port. Take out core depressors, check-valve couplers and sight strainers.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: strainer</translatorcomment>
            <translation>Manometer und Ablass oben am Dampfanschluss anschließen. Ventilstößel, Kupplungen mit Rückschlagventil und Siebe herausnehmen.</translation>
        </message>
        <message>
            <source>Open the gauge to air once, note what it shows, give the altitude or the barometer.</source>
            <translation>Das Manometer einmal zur Luft öffnen, notieren, was es zeigt, Höhe oder Barometerstand angeben.</translation>
        </message>
        <message>
            <source>Purge the hose with the section&apos;s own vapour and see both gauges move when the valve is cracked.</source>
            <translation>Den Schlauch mit dem eigenen Dampf des Abschnitts spülen und sehen, dass sich beide Manometer bewegen, wenn das Ventil kurz geöffnet wird.</translation>
        </message>
        <message>
            <source>Throttle at the open end. Anything narrower downstream is where a plug forms.</source>
            <translation>Am offenen Ende drosseln. Wo es danach enger wird, bildet sich ein Pfropfen.</translation>
        </message>
        <message>
            <source>A gauge that shows 0.3 bar too much at 2000 m leaves half of the margin.</source>
            <translation>Ein Manometer, das in 2000 m Höhe 0,3 bar zu viel zeigt, lässt die Hälfte des Abstands übrig.</translation>
        </message>
        <message>
            <source>Keep out of line with plugs, caps and covers.</source>
            <translation>Nicht in der Linie von Stopfen, Kappen und Deckeln stehen.</translation>
        </message>
        <message>
            <source>A coupler with a check valve becomes the plug.</source>
            <translation>Eine Kupplung mit Rückschlagventil wird zum Pfropfen.</translation>
        </message>
        <message>
            <source>The gauge&apos;s own valve is shut: a perfectly quiet trace that means nothing.</source>
            <translation>Das eigene Ventil des Manometers ist zu: eine völlig ruhige Kurve, die nichts bedeutet.</translation>
        </message>
        <message>
            <source>The gauge was seen to move when the valve was cracked</source>
            <translation>Das Manometer hat sich sichtbar bewegt, als das Ventil kurz geöffnet wurde</translation>
        </message>
        <message>
            <source>Zero not noted or off by more than 0.1 bar: change the gauge.</source>
            <translation>Null nicht notiert oder um mehr als 0,1 bar daneben: Manometer wechseln.</translation>
        </message>
        <message>
            <source>Vent vapour down to the stop pressure</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Dampf bis zum Stoppdruck ablassen</translation>
        </message>
        <message>
            <source>Vent from the top, slowly: 1 to 2 bar/min over the last 10 bar, one minute pauses at 20, 15, 10 and 7 bar g.</source>
            <translation>Von oben langsam ablassen: 1 bis 2 bar/min auf den letzten 10 bar, je eine Minute Pause bei 20, 15, 10 und 7 bar g.</translation>
        </message>
        <message>
            <source>Close at the stop pressure on the screen. It holds the altitude, the gauge class and the zero.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, stop pressure</translatorcomment>
            <translation>Beim Stoppdruck auf dem Bildschirm schließen. Er enthält Höhe, Manometerklasse und Null.</translation>
        </message>
        <message>
            <source>Stand out of line with plug, cap, cover and hose end.</source>
            <translation>Nicht in der Linie von Stopfen, Kappe, Deckel und Schlauchende stehen.</translation>
        </message>
        <message>
            <source>Never strike a plug, and never heat the middle of one: there is pressure on both sides.</source>
            <translation>Nie auf einen Pfropfen schlagen und nie seine Mitte erwärmen: auf beiden Seiten ist Druck.</translation>
        </message>
        <message>
            <source>Venting liquid from a low drain makes snow in the pipe at the outlet.</source>
            <translation>Flüssigkeit aus einem tiefen Ablauf abzulassen macht Schnee im Rohr am Austritt.</translation>
        </message>
        <message>
            <source>No repressurising of steel that is below its minimum temperature.</source>
            <translation>Keinen Druck auf Stahl geben, der unter seiner Mindesttemperatur ist.</translation>
        </message>
        <message>
            <source>The pressure stalls although flow is heard: liquid boils. It stalls and the flow stops: a plug, or the triple point shelf.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Der Druck stockt, obwohl Strömung zu hören ist: Flüssigkeit siedet. Er stockt und die Strömung endet: ein Pfropfen oder die Stufe am Tripelpunkt.</translation>
        </message>
        <message>
            <source>Snow blocks the outlet and lets go later.</source>
            <translation>Schnee verschließt den Austritt und löst sich später.</translation>
        </message>
        <message>
            <source>Still well above the stop pressure: a plug, much liquid, or a supply valve that passes.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Noch weit über dem Stoppdruck: ein Pfropfen, viel Flüssigkeit oder ein Zulaufventil mit Durchlass.</translation>
        </message>
        <message>
            <source>Hold tests: is there liquid left?</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Halteprüfungen: ist noch Flüssigkeit da?</translation>
        </message>
        <message>
            <source>Shut the vent, leave everything still, at least 10 minutes.</source>
            <translation>Ablass schließen, alles in Ruhe lassen, mindestens 10 Minuten.</translation>
        </message>
        <message>
            <source>A rise that goes on straight: liquid, a passing valve or oil. Warm the low points with air, vent in bursts back to the stop pressure, never lower.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Ein Anstieg, der gerade weitergeht: Flüssigkeit, ein Ventil mit Durchlass oder Öl. Die tiefen Punkte mit Luft erwärmen, stoßweise bis zum Stoppdruck ablassen, nie tiefer.</translation>
        </message>
        <message>
            <source>Repeat until two holds in a row show vapour only, with the lowest clamp at least 5 K above saturation. The prompt may already allow more after one: this job asks for the second.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, clamp</translatorcomment>
            <translation>Wiederholen, bis zwei Halte nacheinander nur Dampf zeigen, mit dem tiefsten Anlegefühler mindestens 5 K über Sättigung. Die Anweisung erlaubt vielleicht schon nach einem mehr: dieser Auftrag verlangt den zweiten.</translation>
        </message>
        <message>
            <source>The first minute of a rise is gas warming in every case. The late slope and the repeat tell.</source>
            <translation>Die erste Minute eines Anstiegs ist in jedem Fall Gas, das sich erwärmt. Die späte Steigung und die Wiederholung entscheiden.</translation>
        </message>
        <message>
            <source>Flat is not empty: cold metal gives no heat, a shut gauge valve gives no movement.</source>
            <translation>Flach ist nicht leer: kaltes Metall gibt keine Wärme, ein geschlossenes Manometerventil keine Bewegung.</translation>
        </message>
        <message>
            <source>No flame, no heat gun on a closed section.</source>
            <translation>Keine Flamme, keine Heißluftpistole an einem geschlossenen Abschnitt.</translation>
        </message>
        <message>
            <source>A novice reads the first rise as liquid, or a slow large section as empty.</source>
            <translation>Ein Anfänger hält den ersten Anstieg für Flüssigkeit, oder einen langsamen großen Abschnitt für leer.</translation>
        </message>
        <message>
            <source>A drier core holds liquid, oil gives off gas for an hour.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ein Trocknereinsatz hält Flüssigkeit zurück, Öl gibt eine Stunde lang Gas ab.</translation>
        </message>
        <message>
            <source>Liquid is still there or the holds can&apos;t show that it is gone: warm the low points, or look for a passing valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Es ist noch Flüssigkeit da, oder die Halte können nicht zeigen, dass sie weg ist: die tiefen Punkte erwärmen, oder ein Ventil mit Durchlass suchen.</translation>
        </message>
        <message>
            <source>The metal is as cold as the liquid would be: such a hold can&apos;t show liquid. Warm it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Das Metall ist so kalt, wie die Flüssigkeit wäre: so ein Halt kann Flüssigkeit nicht zeigen. Erwärmen.</translation>
        </message>
        <message>
            <source>Two-pressure hold, where a valve may pass</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Halt bei zwei Drücken, wo ein Ventil durchlassen kann</translation>
        </message>
        <message>
            <source>Hold again from about 10 bar g.</source>
            <translation>Noch einmal von etwa 10 bar g halten.</translation>
        </message>
        <message>
            <source>The same slope at both pressures: a valve passes. A smaller slope at the higher pressure: liquid.</source>
            <translation>Dieselbe Steigung bei beiden Drücken: ein Ventil lässt durch. Eine kleinere beim höheren Druck: Flüssigkeit.</translation>
        </message>
        <message>
            <source>A passing valve fills the section again while people work at it.</source>
            <translation>Ein Ventil mit Durchlass füllt den Abschnitt wieder, während daran gearbeitet wird.</translation>
        </message>
        <message>
            <source>Skipped, and the section comes up with the cover off.</source>
            <translation>Ausgelassen, und der Abschnitt kommt bei offenem Deckel hoch.</translation>
        </message>
        <message>
            <source>The section was not held near 10 bar g: do so, or skip this step and say why.</source>
            <translation>Der Abschnitt wurde nicht nahe 10 bar g gehalten: das tun, oder den Schritt auslassen und sagen, warum.</translation>
        </message>
        <message>
            <source>Through the triple point</source>
            <translation>Durch den Tripelpunkt</translation>
        </message>
        <message>
            <source>One calm pull from the stop pressure to 1 bar g, watching the local triple point on the screen.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Ein ruhiger Zug vom Stoppdruck bis 1 bar g, den örtlichen Tripelpunkt auf dem Bildschirm im Auge.</translation>
        </message>
        <message>
            <source>A shelf there means liquid was left and is freezing now: close, stop, treat it as dry ice.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Eine Stufe dort heißt, dass Flüssigkeit übrig war und jetzt gefriert: schließen, anhalten, als Trockeneis behandeln.</translation>
        </message>
        <message>
            <source>Never shut a section on snow: 1 kg closed in 10 litres ends at about 41 bar a at 20 degC.</source>
            <translation>Nie einen Abschnitt auf Schnee schließen: 1 kg in 10 Litern eingeschlossen endet bei etwa 41 bar a bei 20 °C.</translation>
        </message>
        <message>
            <source>Never strike a plug.</source>
            <translation>Nie auf einen Pfropfen schlagen.</translation>
        </message>
        <message>
            <source>63 % of the liquid at the shelf becomes snow and holds the job up for hours.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, shelf</translatorcomment>
            <translation>63 % der Flüssigkeit an der Stufe werden Schnee und halten die Arbeit stundenlang auf.</translation>
        </message>
        <message>
            <source>No hold says vapour only: do not go below the stop pressure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, stop pressure</translatorcomment>
            <translation>Kein Halt sagt nur Dampf: nicht unter den Stoppdruck gehen.</translation>
        </message>
        <message>
            <source>The pressure does not come down: a shelf, a plug or a valve that passes.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Der Druck geht nicht herunter: eine Stufe, ein Pfropfen oder ein Ventil mit Durchlass.</translation>
        </message>
        <message>
            <source>Hold at low pressure for dry ice</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Bei niedrigem Druck auf Trockeneis halten</translation>
        </message>
        <message>
            <source>Shut the vent near 1 bar g for at least 10 minutes. No time alone ends this hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ablass nahe 1 bar g für mindestens 10 Minuten schließen. Keine Zeit allein beendet diesen Halt.</translation>
        </message>
        <message>
            <source>A rise to the local triple point that stays there is dry ice. Leave it vented and let it warm.</source>
            <translation>Ein Anstieg bis zum örtlichen Tripelpunkt, der dort bleibt, ist Trockeneis. Ablass offen lassen und warm werden lassen.</translation>
        </message>
        <message>
            <source>Never shut a section on snow and walk away.</source>
            <translation>Nie einen Abschnitt auf Schnee schließen und weggehen.</translation>
        </message>
        <message>
            <source>A gauge at zero is not proof: snow at -78.5 degC sits at 0 bar g.</source>
            <translation>Null am Manometer ist kein Beweis: Schnee von -78,5 °C liegt bei 0 bar g.</translation>
        </message>
        <message>
            <source>Never strike a plug; keep out of line with it.</source>
            <translation>Nie auf einen Pfropfen schlagen; nicht in seiner Linie stehen.</translation>
        </message>
        <message>
            <source>The pressure stops at 4.2 bar g and somebody calls it stable.</source>
            <translation>Der Druck bleibt bei 4,2 bar g stehen und jemand nennt das stabil.</translation>
        </message>
        <message>
            <source>Dry ice is not ruled out: leave it vented, warm the metal, hold again.</source>
            <translation>Trockeneis ist nicht ausgeschlossen: Ablass offen lassen, das Metall erwärmen, erneut halten.</translation>
        </message>
        <message>
            <source>Zero, bleeds open at both ends</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Null, Entlüftungen an beiden Enden offen</translation>
        </message>
        <message>
            <source>Vent to zero. Open the bleeds at BOTH ends and leave them open.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Bis null ablassen. Die Entlüftungen an BEIDEN Enden öffnen und offen lassen.</translation>
        </message>
        <message>
            <source>Shut them for 5 minutes once more, see no rise, then open them again.</source>
            <translation>Sie noch einmal 5 Minuten schließen, keinen Anstieg sehen, dann wieder öffnen.</translation>
        </message>
        <message>
            <source>A plug between gauge and section keeps pressure in while the gauge shows zero.</source>
            <translation>Ein Pfropfen zwischen Manometer und Abschnitt hält Druck zurück, während das Manometer null zeigt.</translation>
        </message>
        <message>
            <source>Cavities and check-valve pockets: bleed each one.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Hohlräume und Taschen an Rückschlagventilen: jede entlüften.</translation>
        </message>
        <message>
            <source>A dial gauge is least to be trusted at zero: it may rest on a stop pin.</source>
            <translation>Ein Zeigermanometer verdient bei null das geringste Vertrauen: der Zeiger kann auf einem Anschlagstift liegen.</translation>
        </message>
        <message>
            <source>One bleed only: pressure is left behind a shut strainer valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed, strainer</translatorcomment>
            <translation>Nur eine Entlüftung: hinter einem geschlossenen Filterventil bleibt Druck.</translation>
        </message>
        <message>
            <source>Bleed at the first end open, seen and heard to pass freely</source>
            <translation>Entlüftung am ersten Ende offen, frei durchgängig gesehen und gehört</translation>
        </message>
        <message>
            <source>Bleed at the second end open, seen and heard to pass freely</source>
            <translation>Entlüftung am zweiten Ende offen, frei durchgängig gesehen und gehört</translation>
        </message>
        <message>
            <source>Cavities and check-valve pockets on the list bled, or none on this section</source>
            <translation>Hohlräume und Taschen an Rückschlagventilen der Liste entlüftet, oder keine an diesem Abschnitt</translation>
        </message>
        <message>
            <source>The pressure comes back: return to the hold tests.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Der Druck kommt wieder: zurück zu den Halteprüfungen.</translation>
        </message>
        <message>
            <source>Warm through</source>
            <translation>Durchwärmen</translation>
        </message>
        <message>
            <source>With the bleeds open, let the metal come up above 0 degC, better above the dew point.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Bei offenen Entlüftungen das Metall über 0 °C kommen lassen, besser über den Taupunkt.</translation>
        </message>
        <message>
            <source>Skin sticks to cold metal. No flame.</source>
            <translation>Haut klebt an kaltem Metall. Keine Flamme.</translation>
        </message>
        <message>
            <source>Wet air freezes inside and comes back as moisture in the vacuum test.</source>
            <translation>Feuchte Luft gefriert innen und kommt in der Vakuumprüfung als Feuchte wieder.</translation>
        </message>
        <message>
            <source>The metal stays cold: dry ice or liquid close by, or skip this step and say why.</source>
            <translation>Das Metall bleibt kalt: Trockeneis oder Flüssigkeit in der Nähe, oder diesen Schritt auslassen und sagen, warum.</translation>
        </message>
        <message>
            <source>Break the joint</source>
            <translation>Die Verbindung lösen</translation>
        </message>
        <message>
            <source>Stand beside the cover&apos;s axis. Slacken the far bolts first, crack the joint, wait, keep two bolts on until it is loose.</source>
            <translation>Neben der Achse des Deckels stehen. Die fernen Schrauben zuerst lockern, die Verbindung anlösen, warten, zwei Schrauben daran lassen, bis sie lose ist.</translation>
        </message>
        <message>
            <source>Springs under covers: use the long jacking bolts.</source>
            <translation>Federn unter Deckeln: die langen Abdrückschrauben benutzen.</translation>
        </message>
        <message>
            <source>A hiss: tighten again and go back to the low pressure hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ein Zischen: wieder anziehen und zurück zum Halt bei niedrigem Druck.</translation>
        </message>
        <message>
            <source>Out of line with plug and cover. 0.5 bar g on a 78 mm cover is 240 N.</source>
            <translation>Nicht in der Linie von Stopfen und Deckel. 0,5 bar g auf einem Deckel von 78 mm sind 240 N.</translation>
        </message>
        <message>
            <source>Stored force of springs under covers.</source>
            <translation>Gespeicherte Kraft von Federn unter Deckeln.</translation>
        </message>
        <message>
            <source>CO2 lies in the housing: no face in it. CO2 meter stays on.</source>
            <translation>CO2 liegt im Gehäuse: kein Gesicht hinein. CO2-Messgerät bleibt an.</translation>
        </message>
        <message>
            <source>Residual pressure, a spring, or snow behind the element.</source>
            <translation>Restdruck, eine Feder oder Schnee hinter dem Einsatz.</translation>
        </message>
        <message>
            <source>The supervisor has read the holds and agrees to the work (never one person alone)</source>
            <translation>Die Aufsicht hat die Halte gelesen und stimmt der Arbeit zu (nie eine Person allein)</translation>
        </message>
        <message>
            <source>Both bleeds are still open</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Beide Entlüftungen sind noch offen</translation>
        </message>
        <message>
            <source>The air is above 5000 ppm or nobody measured it: leave, ventilate.</source>
            <translation>Die Luft liegt über 5000 ppm oder niemand hat gemessen: hinausgehen, lüften.</translation>
        </message>
        <message>
            <source>Do the work</source>
            <translation>Die Arbeit tun</translation>
        </message>
        <message>
            <source>Change element or core quickly; a drier core stays sealed until it is fitted. Catch the oil, cap openings.</source>
            <translation>Einsatz oder Kern schnell wechseln; ein Trocknerkern bleibt bis zum Einbau verschlossen. Öl auffangen, Öffnungen verschließen.</translation>
        </message>
        <message>
            <source>Write down the parts and the time that the section was open.</source>
            <translation>Die Teile aufschreiben und die Zeit, in der der Abschnitt offen war.</translation>
        </message>
        <message>
            <source>A nitrogen purge suffocates without warning, and so does CO2 lying in the housing.</source>
            <translation>Eine Stickstoffspülung erstickt ohne Warnung, und CO2 im Gehäuse ebenso.</translation>
        </message>
        <message>
            <source>Oil gives off CO2 on skin and eyes. Dry ice may sit behind the element.</source>
            <translation>Öl gibt CO2 auf Haut und Augen ab. Hinter dem Einsatz kann Trockeneis sitzen.</translation>
        </message>
        <message>
            <source>More than 15 minutes open: moisture, and a long evacuation.</source>
            <translation>Mehr als 15 Minuten offen: Feuchte und ein langes Evakuieren.</translation>
        </message>
        <message>
            <source>Parts replaced, with number and batch</source>
            <translation>Ersetzte Teile, mit Nummer und Charge</translation>
        </message>
        <message>
            <source>Minutes open to air</source>
            <translation>Minuten zur Luft offen</translation>
        </message>
        <message>
            <source>Oil removed and added, kg</source>
            <translation>Öl entnommen und zugegeben, kg</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>New gasket, bolts crosswise to their torque, caps on.</source>
            <translation>Neue Dichtung, Schrauben über Kreuz mit ihrem Drehmoment, Kappen auf.</translation>
        </message>
        <message>
            <source>Springs under covers: draw down evenly with the jacking bolts.</source>
            <translation>Federn unter Deckeln: mit den Abdrückschrauben gleichmäßig anziehen.</translation>
        </message>
        <message>
            <source>An old or frozen gasket is the next leak.</source>
            <translation>Eine alte oder gefrorene Dichtung ist das nächste Leck.</translation>
        </message>
        <message>
            <source>New gasket, torque crosswise</source>
            <translation>Neue Dichtung, Drehmoment über Kreuz</translation>
        </message>
        <message>
            <source>Standing-pressure test</source>
            <translation>Standdruckprüfung</translation>
        </message>
        <message>
            <source>Dry nitrogen through a regulator with a relief valve, or CO2 vapour: 5 bar, then 25, 50, 75, 100 % of the test pressure, 5 minutes each.</source>
            <translation>Trockener Stickstoff über einen Druckminderer mit Sicherheitsventil, oder CO2-Dampf: 5 bar, dann 25, 50, 75, 100 % des Prüfdrucks, je 5 Minuten.</translation>
        </message>
        <message>
            <source>Wait 15 to 30 minutes for the heat of compression, then record pressure and two clamps in the shade, 30 minutes at least.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>15 bis 30 Minuten auf die Verdichtungswärme warten, dann Druck und zwei Anlegefühler im Schatten aufzeichnen, mindestens 30 Minuten.</translation>
        </message>
        <message>
            <source>Compressed nitrogen stores energy: nobody beside the section while it is raised.</source>
            <translation>Verdichteter Stickstoff speichert Energie: niemand neben dem Abschnitt, während der Druck steigt.</translation>
        </message>
        <message>
            <source>Never oxygen or air on oil.</source>
            <translation>Nie Sauerstoff oder Luft auf Öl.</translation>
        </message>
        <message>
            <source>Not above the rated pressure of the weakest part, and no steel below its minimum temperature under pressure.</source>
            <translation>Nicht über den zulässigen Druck des schwächsten Teils, und kein Stahl unter seiner Mindesttemperatur unter Druck.</translation>
        </message>
        <message>
            <source>Nitrogen asphyxiation: ventilate where it is let out.</source>
            <translation>Erstickung durch Stickstoff: lüften, wo er austritt.</translation>
        </message>
        <message>
            <source>Sun on the pipe: 10 K is 2 bar at 52 bar g. Without a clamp reading the test says nothing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Sonne auf dem Rohr: 10 K sind 2 bar bei 52 bar g. Ohne Anlegefühler sagt die Prüfung nichts.</translation>
        </message>
        <message>
            <source>Nitrogen leaks past a valve into the live side.</source>
            <translation>Stickstoff entweicht durch ein Ventil in die Anlagenseite.</translation>
        </message>
        <message>
            <source>Test pressure and gas</source>
            <translation>Prüfdruck und Gas</translation>
        </message>
        <message>
            <source>Not shown tight: find the leak, or hold longer with steadier temperature.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Nicht als dicht gezeigt: das Leck suchen, oder länger bei ruhigerer Temperatur halten.</translation>
        </message>
        <message>
            <source>Evacuate, then the vacuum-rise test</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: vacuum rise</translatorcomment>
            <translation>Evakuieren, dann die Vakuumanstiegsprüfung</translation>
        </message>
        <message>
            <source>Let the nitrogen out, evacuate from both ends to 500 micron (67 Pa, 0.67 mbar) or less at the far end.</source>
            <translation>Den Stickstoff ablassen, von beiden Enden auf 500 Mikron (67 Pa, 0,67 mbar) oder weniger am fernen Ende evakuieren.</translation>
        </message>
        <message>
            <source>Shut the pump off and watch for 10 minutes: not above 1500 micron (200 Pa, 2 mbar).</source>
            <translation>Die Pumpe abstellen und 10 Minuten beobachten: nicht über 1500 Mikron (200 Pa, 2 mbar).</translation>
        </message>
        <message>
            <source>Nitrogen asphyxiation where it is let out.</source>
            <translation>Erstickung durch Stickstoff, wo er austritt.</translation>
        </message>
        <message>
            <source>Open nothing to a section at vacuum: it draws air, or pump oil.</source>
            <translation>Zu einem Abschnitt im Vakuum nichts öffnen: er zieht Luft oder Pumpenöl.</translation>
        </message>
        <message>
            <source>500 micron does not dry metal colder than about -24 degC: warm it first.</source>
            <translation>500 Mikron trocknen kein Metall, das kälter als etwa -24 °C ist: zuerst erwärmen.</translation>
        </message>
        <message>
            <source>A straight rise is a leak; a rise that levels at the water pressure of the coldest metal is moisture; a first rise that levels low and is smaller the second time is outgassing.</source>
            <translation>Ein gerader Anstieg ist ein Leck; ein Anstieg, der beim Wasserdampfdruck des kältesten Metalls flach wird, ist Feuchte; ein erster Anstieg, der tief flach wird und beim zweiten Mal kleiner ist, ist Ausgasen.</translation>
        </message>
        <message>
            <source>A hot-wire gauge is made for air: it shows water vapour up to twice too high.</source>
            <translation>Ein Hitzdraht-Vakuummeter ist für Luft gemacht: es zeigt Wasserdampf bis zum Doppelten zu hoch.</translation>
        </message>
        <message>
            <source>Leak, moisture or outgassing: see what the curve says, then evacuate again.</source>
            <translation>Leck, Feuchte oder Ausgasen: sehen, was die Kurve sagt, dann erneut evakuieren.</translation>
        </message>
        <message>
            <source>Break the vacuum with vapour</source>
            <translation>Das Vakuum mit Dampf brechen</translation>
        </message>
        <message>
            <source>CO2 VAPOUR into the section up to about 10 bar g, metal above its minimum temperature.</source>
            <translation>CO2-DAMPF in den Abschnitt bis etwa 10 bar g, Metall über seiner Mindesttemperatur.</translation>
        </message>
        <message>
            <source>No liquid before the pressure is well above the triple point.</source>
            <translation>Keine Flüssigkeit, bevor der Druck weit über dem Tripelpunkt ist.</translation>
        </message>
        <message>
            <source>Liquid into a vacuum is an instant snow plug and cold, brittle steel.</source>
            <translation>Flüssigkeit in ein Vakuum ist sofort ein Schneepfropfen und kalter, spröder Stahl.</translation>
        </message>
        <message>
            <source>No repressurising of steel below its minimum temperature.</source>
            <translation>Keinen Druck auf Stahl unter seiner Mindesttemperatur geben.</translation>
        </message>
        <message>
            <source>A cylinder with a dip tube gives liquid: check which one it is.</source>
            <translation>Eine Flasche mit Tauchrohr gibt Flüssigkeit: prüfen, welche es ist.</translation>
        </message>
        <message>
            <source>The wrong cylinder, or the liquid valve first.</source>
            <translation>Die falsche Flasche, oder das Flüssigkeitsventil zuerst.</translation>
        </message>
        <message>
            <source>Still too near the triple point for liquid: go on with vapour.</source>
            <translation>Noch zu nah am Tripelpunkt für Flüssigkeit: mit Dampf weitermachen.</translation>
        </message>
        <message>
            <source>Metal below its minimum temperature, or not known: warm it, give its minimum.</source>
            <translation>Metall unter seiner Mindesttemperatur, oder nicht bekannt: erwärmen, die Mindesttemperatur angeben.</translation>
        </message>
        <message>
            <source>Leak check</source>
            <translation>Dichtheitsprüfung</translation>
        </message>
        <message>
            <source>Bubbles or a CO2 leak detector on every joint, 10 minutes at 10 bar g, again at plant pressure.</source>
            <translation>Blasen oder ein CO2-Lecksucher an jeder Verbindung, 10 Minuten bei 10 bar g, noch einmal bei Anlagendruck.</translation>
        </message>
        <message>
            <source>Stay out of line with plugs and covers while the pressure goes up.</source>
            <translation>Nicht in der Linie von Stopfen und Deckeln stehen, während der Druck steigt.</translation>
        </message>
        <message>
            <source>A new molecular-sieve core takes up CO2 and pulls the pressure down for minutes: not a leak.</source>
            <translation>Ein neuer Molekularsiebkern nimmt CO2 auf und zieht den Druck minutenlang herunter: kein Leck.</translation>
        </message>
        <message>
            <source>Every opened joint checked, no leak found</source>
            <translation>Jede geöffnete Verbindung geprüft, kein Leck gefunden</translation>
        </message>
        <message>
            <source>Return to service</source>
            <translation>Wieder in Betrieb nehmen</translation>
        </message>
        <message>
            <source>Crack the vapour or outlet side first, let it equalise slowly, then liquid.</source>
            <translation>Zuerst die Dampf- oder Auslassseite leicht öffnen, langsam ausgleichen lassen, dann Flüssigkeit.</translation>
        </message>
        <message>
            <source>Take off locks and tags in reverse order, reopen relief isolations, caps on.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Schlösser und Schilder in umgekehrter Reihenfolge abnehmen, Absperrungen vor Sicherheitsventilen öffnen, Kappen auf.</translation>
        </message>
        <message>
            <source>Liquid into a warm section can raise the pressure above its rating.</source>
            <translation>Flüssigkeit in einem warmen Abschnitt kann den Druck über den zulässigen heben.</translation>
        </message>
        <message>
            <source>Liquid hammer: slowly.</source>
            <translation>Flüssigkeitsschlag: langsam.</translation>
        </message>
        <message>
            <source>A relief isolation stays shut, a lock is forgotten.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Eine Absperrung vor einem Sicherheitsventil bleibt zu, ein Schloss wird vergessen.</translation>
        </message>
        <message>
            <source>All locks and tags taken off in reverse order</source>
            <translation>Alle Schlösser und Schilder in umgekehrter Reihenfolge abgenommen</translation>
        </message>
        <message>
            <source>Relief isolations open</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Absperrungen vor Sicherheitsventilen offen</translation>
        </message>
        <message>
            <source>CO2 charged, kg, kind (new, reused, recycled) and source</source>
            <translation>CO2 gefüllt, kg, Art (neu, wiederverwendet, aufbereitet) und Herkunft</translation>
        </message>
        <message>
            <source>Record and sign</source>
            <translation>Aufzeichnen und unterschreiben</translation>
        </message>
        <message>
            <source>Read the report, add what is missing, sign: the person who did it and the supervisor.</source>
            <translation>Den Bericht lesen, Fehlendes ergänzen, unterschreiben: wer es getan hat, und die Aufsicht.</translation>
        </message>
        <message>
            <source>Deviations told in the canteen instead of in the record.</source>
            <translation>Abweichungen, die in der Kantine erzählt werden statt im Protokoll.</translation>
        </message>
    </context>
    <context>
        <name>Text</name>
        <message>
            <source>margin: no reading yet</source>
            <translation>Abstand: noch kein Messwert</translation>
        </message>
        <message>
            <source>gauge: no reading yet</source>
            <translation>Manometer: noch kein Messwert</translation>
        </message>
        <message>
            <source>less than {least} ({percent} %)</source>
            <translation>weniger als {least} ({percent} %)</translation>
        </message>
        <message>
            <source>at most {high} ({percent} %)</source>
            <translation>höchstens {high} ({percent} %)</translation>
        </message>
        <message>
            <source>less than {least} % of the volume</source>
            <translation>weniger als {least} % des Volumens</translation>
        </message>
        <message>
            <source>STALE</source>
            <translation>VERALTET</translation>
        </message>
        <message>
            <source>Keep the vent closed and read the mechanical gauge until readings arrive.</source>
            <translation>Ablass geschlossen lassen und das mechanische Manometer ablesen, bis Messwerte kommen.</translation>
        </message>
        <message>
            <source>No reading yet</source>
            <translation>Noch kein Messwert</translation>
        </message>
        <message>
            <source>above the triple point</source>
            <translation>über dem Tripelpunkt</translation>
        </message>
        <message>
            <source>Close the vent and read the mechanical gauge; if it rises, vent. Nothing shown before counts any more.</source>
            <translation>Ablass schließen und das mechanische Manometer ablesen; steigt es, ablassen. Nichts vorher Gezeigtes gilt noch.</translation>
        </message>
        <message>
            <source>No reading for {age} s.</source>
            <translation>Seit {age} s kein Messwert.</translation>
        </message>
        <message>
            <source>Inside: unknown while there are no readings</source>
            <translation>Inhalt: unbekannt, solange Messwerte fehlen</translation>
        </message>
        <message>
            <source>AT the triple point</source>
            <translation>AM Tripelpunkt</translation>
        </message>
        <message>
            <source>BELOW the triple point</source>
            <translation>UNTER dem Tripelpunkt</translation>
        </message>
        <message>
            <source>gauge · {gap} above stop {stop}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Manometer · {gap} über Stopp {stop}</translation>
        </message>
        <message>
            <source>gauge · {gap} below stop {stop}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Manometer · {gap} unter Stopp {stop}</translation>
        </message>
        <message>
            <source>stop pressure in {time}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Stoppdruck in {time}</translation>
        </message>
        <message>
            <source>line temperature not measured</source>
            <translation>Rohrtemperatur nicht gemessen</translation>
        </message>
        <message>
            <source>line {temperature}</source>
            <translation>Rohr {temperature}</translation>
        </message>
        <message>
            <source>vent valve: not known</source>
            <translation>Ablassventil: unbekannt</translation>
        </message>
        <message>
            <source>vent valve: OPEN</source>
            <translation>Ablassventil: OFFEN</translation>
        </message>
        <message>
            <source>vent valve: CLOSED</source>
            <translation>Ablassventil: ZU</translation>
        </message>
        <message>
            <source>vent OPEN, by the pressure</source>
            <translation>Ablass OFFEN, nach dem Druck</translation>
        </message>
        <message>
            <source>vent CLOSED, by the pressure</source>
            <translation>Ablass ZU, nach dem Druck</translation>
        </message>
        <message>
            <source>vent valve: not recorded</source>
            <translation>Ablassventil: nicht aufgezeichnet</translation>
        </message>
        <message>
            <source>rate not known</source>
            <translation>Rate unbekannt</translation>
        </message>
        <message>
            <source>steady</source>
            <translation>gleichbleibend</translation>
        </message>
        <message>
            <source>falling {rate}/min</source>
            <translation>fällt {rate}/min</translation>
        </message>
        <message>
            <source>rising {rate}/min</source>
            <translation>steigt {rate}/min</translation>
        </message>
        <message>
            <source>no reading yet</source>
            <translation>noch kein Messwert</translation>
        </message>
        <message>
            <source>reading {age} min old</source>
            <translation>Messwert {age} min alt</translation>
        </message>
        <message>
            <source>reading {age} s old</source>
            <translation>Messwert {age} s alt</translation>
        </message>
        <message>
            <source>at least {least}, no upper bound</source>
            <translation>mindestens {least}, keine Obergrenze</translation>
        </message>
        <message>
            <source>no upper bound</source>
            <translation>keine Obergrenze</translation>
        </message>
        <message>
            <source>share of the volume: no upper bound</source>
            <translation>Anteil am Volumen: keine Obergrenze</translation>
        </message>
        <message>
            <source>Detection limit: not known yet</source>
            <translation>Nachweisgrenze: noch nicht bekannt</translation>
        </message>
        <message>
            <source>Before the vent: {time}</source>
            <translation>Vor dem Ablassen: {time}</translation>
        </message>
        <message>
            <source>{low} to {high} ({percent} %)</source>
            <translation>{low} bis {high} ({percent} %)</translation>
        </message>
        <message>
            <source>{best} ({low} to {high}, {percent} %)</source>
            <translation>{best} ({low} bis {high}, {percent} %)</translation>
        </message>
        <message>
            <source>{low} to {high} % of the volume</source>
            <translation>{low} bis {high} % des Volumens</translation>
        </message>
        <message>
            <source>Inside: no hold yet</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Inhalt: noch kein Halt</translation>
        </message>
        <message>
            <source>liquid, or leak-by</source>
            <translation>Flüssigkeit oder Durchlass</translation>
        </message>
        <message>
            <source>Inside: {state}</source>
            <translation>Inhalt: {state}</translation>
        </message>
        <message>
            <source>Liquid: {amount}</source>
            <translation>Flüssigkeit: {amount}</translation>
        </message>
        <message>
            <source>Dry ice: {amount}</source>
            <translation>Trockeneis: {amount}</translation>
        </message>
        <message>
            <source>This hold could see {least} or more</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Dieser Halt sieht ab {least}</translation>
        </message>
        <message>
            <source>Hold {number}: {time}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Halt {number}: {time}</translation>
        </message>
        <message>
            <source>{time} left at least</source>
            <translation>noch mindestens {time}</translation>
        </message>
        <message>
            <source>Inside: hidden</source>
            <translation>Inhalt: verborgen</translation>
        </message>
    </context>
    <context>
        <name>Tour</name>
        <message>
            <source>The band on top says what to do now, and under it why.</source>
            <translation>Das Band oben sagt, was jetzt zu tun ist, und darunter warum.</translation>
        </message>
        <message>
            <source>First figure: how far above the triple point. Below it liquid turns to dry ice.</source>
            <translation>Erste Zahl: Abstand über dem Tripelpunkt. Darunter wird Flüssigkeit zu Trockeneis.</translation>
        </message>
        <message>
            <source>Second figure: the gauge. Its caption: how far to the stop pressure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Zweite Zahl: das Manometer. Darunter: wie weit bis zum Stoppdruck.</translation>
        </message>
        <message>
            <source>The trace: holds are shaded; N jumps to the next thing that happened.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Die Kurve: Halte sind schattiert; N springt zum nächsten Ereignis.</translation>
        </message>
        <message>
            <source>The drawing: solid is surely liquid, hatched is possible, ? not known.</source>
            <translation>Die Zeichnung: voll ist sicher Flüssigkeit, schraffiert möglich, ? unbekannt.</translation>
        </message>
        <message>
            <source>V turns the pictures, F1 explains the prompt, M has everything else.</source>
            <translation>V wechselt die Bilder, F1 erklärt die Anweisung, M hat alles andere.</translation>
        </message>
        <message>
            <source>If readings stop, the digits are struck through: close the vent.</source>
            <translation>Bleiben Messwerte aus, sind die Ziffern durchgestrichen: Ablass schließen.</translation>
        </message>
    </context>
    <context>
        <name>WrongFile</name>
        <message>
            <source>{name} can&apos;t be opened: {why}.</source>
            <translation>{name} lässt sich nicht öffnen: {why}.</translation>
        </message>
        <message>
            <source>{name} is empty: there is nothing to show.</source>
            <translation>{name} ist leer: es gibt nichts zu zeigen.</translation>
        </message>
        <message>
            <source>{name} is not a readings log: it holds no text. Choose a CSV file.</source>
            <translation>{name} ist kein Messprotokoll: es enthält keinen Text. Eine CSV-Datei wählen.</translation>
        </message>
        <message>
            <source>{name}: {what}. The row above the readings must name each column with its unit, for instance {example}.</source>
            <translation>{name}: {what}. Die Zeile über den Messwerten muss jede Spalte mit ihrer Einheit nennen, zum Beispiel {example}.</translation>
        </message>
        <message>
            <source>there is no such file</source>
            <translation>diese Datei gibt es nicht</translation>
        </message>
        <message>
            <source>no permission to read it</source>
            <translation>keine Berechtigung zum Lesen</translation>
        </message>
        <message>
            <source>it is a folder</source>
            <translation>es ist ein Ordner</translation>
        </message>
        <message>
            <source>no column is known as the pressure</source>
            <translation>keine Spalte ist als Druck zu erkennen</translation>
        </message>
        <message>
            <source>no column is known as the time</source>
            <translation>keine Spalte ist als Zeit zu erkennen</translation>
        </message>
    </context>
</TS>
