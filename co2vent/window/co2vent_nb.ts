<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="nb" sourcelanguage="en">
    <context>
        <name>Alarm</name>
        <message>
            <source>now</source>
            <translation>nå</translation>
        </message>
        <message>
            <source>has been</source>
            <translation>har vært</translation>
        </message>
        <message>
            <source>not acknowledged</source>
            <translation>ikke kvittert</translation>
        </message>
        <message>
            <source>ALARM:</source>
            <translation>ALARM:</translation>
        </message>
        <message>
            <source>silent for {time}</source>
            <translation>stille i {time}</translation>
        </message>
        <message>
            <source>Below the triple point</source>
            <translation>Under trippelpunktet</translation>
        </message>
        <message>
            <source>Dry ice</source>
            <translation>Tørris</translation>
        </message>
        <message>
            <source>No data</source>
            <translation>Ingen data</translation>
        </message>
        <message>
            <source>Pressure too high</source>
            <translation>For høyt trykk</translation>
        </message>
        <message>
            <source>Vent line</source>
            <translation>Avblåsningslinje</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>Manometer</translation>
        </message>
        <message>
            <source>Close the vent</source>
            <translation>Steng avblåsningen</translation>
        </message>
        <message>
            <source>Not recording</source>
            <translation>Ingen registrering</translation>
        </message>
    </context>
    <context>
        <name>Banner</name>
        <message>
            <source>REPLAY: a recording, not the gauge</source>
            <translation>AVSPILLING: et opptak, ikke manometeret</translation>
        </message>
        <message>
            <source>CLASS: an exercise, not a vent</source>
            <translation>KURS: en øvelse, ikke en avblåsning</translation>
        </message>
        <message>
            <source>SIMULATED: invented readings</source>
            <translation>SIMULERT: oppdiktede målinger</translation>
        </message>
    </context>
    <context>
        <name>Blind</name>
        <message>
            <source>Prompt and verdict are hidden. B shows them.</source>
            <translation>Anvisning og dom er skjult. B viser dem.</translation>
        </message>
    </context>
    <context>
        <name>Calibrate</name>
        <message>
            <source>Lay a ruler on the screen and make the bar 100 mm long.</source>
            <translation>Legg en linjal på skjermen og gjør streken 100 mm lang.</translation>
        </message>
    </context>
    <context>
        <name>Charge</name>
        <message>
            <source>full of liquid</source>
            <translation>full av væske</translation>
        </message>
        <message>
            <source>liquid and vapour</source>
            <translation>væske og damp</translation>
        </message>
        <message>
            <source>vapour only</source>
            <translation>bare damp</translation>
        </message>
        <message>
            <source>dry ice</source>
            <translation>tørris</translation>
        </message>
        <message>
            <source>undetermined</source>
            <translation>ikke bestemt</translation>
        </message>
        <message>
            <source>no leak-by seen</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>ingen ventillekkasje sett</translation>
        </message>
        <message>
            <source>leak-by suspected</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>mistanke om ventillekkasje</translation>
        </message>
        <message>
            <source>leak-by not determined</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>ventillekkasje ikke bestemt</translation>
        </message>
    </context>
    <context>
        <name>Class</name>
        <message>
            <source>Committed {said}. Space goes on.</source>
            <translation>Bestemt {said}. Mellomrom: videre.</translation>
        </message>
        <message>
            <source>first run</source>
            <translation>første gang</translation>
        </message>
        <message>
            <source>vent valve {percent} % open</source>
            <translation>avblåsningsventil {percent} % åpen</translation>
        </message>
        <message>
            <source>vent valve CLOSED</source>
            <translation>avblåsningsventil STENGT</translation>
        </message>
        <message>
            <source>paused</source>
            <translation>pause</translation>
        </message>
        <message>
            <source>What is inside now? Decide before the trace goes on.</source>
            <translation>Hva er inni nå? Bestem deg før det går videre.</translation>
        </message>
        <message>
            <source>random section {seed}</source>
            <translation>tilfeldig seksjon {seed}</translation>
        </message>
        <message>
            <source>{words}: write yes or no</source>
            <translation>{words}: skriv yes eller no</translation>
        </message>
        <message>
            <source>{words}: write a number</source>
            <translation>{words}: skriv et tall</translation>
        </message>
        <message>
            <source>Practise: simulated sections</source>
            <translation>Øve: simulerte seksjoner</translation>
        </message>
        <message>
            <source>Run again beside the first: change one thing</source>
            <translation>En gang til ved siden av den første: endre én ting</translation>
        </message>
        <message>
            <source>exercises</source>
            <translation>øvelser</translation>
        </message>
        <message>
            <source>Random section</source>
            <translation>Tilfeldig seksjon</translation>
        </message>
        <message>
            <source>what to change</source>
            <translation>hva som endres</translation>
        </message>
        <message>
            <source>its value, or the seed</source>
            <translation>verdien, eller startverdien</translation>
        </message>
        <message>
            <source>A section drawn at random; the same seed gives the same section again.</source>
            <translation>En tilfeldig trukket seksjon; samme startverdi gir samme seksjon.</translation>
        </message>
        <message>
            <source>seed</source>
            <translation>startverdi</translation>
        </message>
        <message>
            <source>Watch: {what}</source>
            <translation>Se etter: {what}</translation>
        </message>
        <message>
            <source>as it is</source>
            <translation>som den er</translation>
        </message>
        <message>
            <source>The seed is a whole number.</source>
            <translation>Startverdien er et heltall.</translation>
        </message>
        <message>
            <source>Preparing the section… the first time takes up to a minute.</source>
            <translation>Forbereder seksjonen… første gang tar det opptil ett minutt.</translation>
        </message>
        <message>
            <source>cannot be told yet</source>
            <translation>kan ikke sies ennå</translation>
        </message>
        <message>
            <source>at {time}: {answer}</source>
            <translation>ved {time}: {answer}</translation>
        </message>
        <message>
            <source>Really inside: {pressure}</source>
            <translation>Egentlig inni: {pressure}</translation>
        </message>
        <message>
            <source>Liquid {liquid}, dry ice {ice}, vapour {vapour}</source>
            <translation>Væske {liquid}, tørris {ice}, damp {vapour}</translation>
        </message>
        <message>
            <source>Gas {gas}, dry metal {dry}, wet metal {wet}</source>
            <translation>Gass {gas}, tørt metall {dry}, vått metall {wet}</translation>
        </message>
        <message>
            <source>Leak-by {grams} g/s</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Ventillekkasje {grams} g/s</translation>
        </message>
        <message>
            <source>Dry ice in the vent hose: {mass}</source>
            <translation>Tørris i avblåsningsslangen: {mass}</translation>
        </message>
        <message>
            <source>CO2 in oil and desiccant: {mass}</source>
            <translation>CO2 i olje og tørkemiddel: {mass}</translation>
        </message>
        <message>
            <source>The gauge showed {pressure}.</source>
            <translation>Manometeret viste {pressure}.</translation>
        </message>
        <message>
            <source>The program said: {state}. {reason}</source>
            <translation>Programmet sa: {state}. {reason}</translation>
        </message>
        <message>
            <source>The class said: {said}.</source>
            <translation>Klassen sa: {said}.</translation>
        </message>
        <message>
            <source>The class did not commit itself.</source>
            <translation>Klassen bestemte seg ikke.</translation>
        </message>
        <message>
            <source>Expected: {words}</source>
            <translation>Ventet: {words}</translation>
        </message>
        <message>
            <source>A novice says: {words}</source>
            <translation>En nybegynner sier: {words}</translation>
        </message>
        <message>
            <source>What decides: {words}</source>
            <translation>Hva avgjør: {words}</translation>
        </message>
        <message>
            <source>Talk about: {words}</source>
            <translation>Snakk om: {words}</translation>
        </message>
        <message>
            <source>SIMULATED PRACTICE: not a job, nothing was vented</source>
            <translation>SIMULERT ØVELSE: ingen jobb, ingenting ble blåst av</translation>
        </message>
        <message>
            <source>dry ice</source>
            <translation>tørris</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>væske</translation>
        </message>
        <message>
            <source>vapour</source>
            <translation>damp</translation>
        </message>
    </context>
    <context>
        <name>Command</name>
        <message>
            <source>Run again</source>
            <translation>En gang til</translation>
        </message>
        <message>
            <source>Show prompts</source>
            <translation>Vis anvisninger</translation>
        </message>
        <message>
            <source>Score sheet</source>
            <translation>Resultatark</translation>
        </message>
        <message>
            <source>Test sound</source>
            <translation>Test lyd</translation>
        </message>
        <message>
            <source>Withdraw note</source>
            <translation>Trekk notat tilbake</translation>
        </message>
        <message>
            <source>Theme</source>
            <translation>Tema</translation>
        </message>
        <message>
            <source>Units</source>
            <translation>Enheter</translation>
        </message>
        <message>
            <source>Text size</source>
            <translation>Tekststørrelse</translation>
        </message>
        <message>
            <source>Full screen</source>
            <translation>Fullskjerm</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Språk</translation>
        </message>
        <message>
            <source>Job</source>
            <translation>Jobb</translation>
        </message>
        <message>
            <source>Quit</source>
            <translation>Avslutt</translation>
        </message>
        <message>
            <source>Screen size</source>
            <translation>Skjermstørrelse</translation>
        </message>
        <message>
            <source>Tour</source>
            <translation>Omvisning</translation>
        </message>
        <message>
            <source>Blind replay</source>
            <translation>Blind avspilling</translation>
        </message>
        <message>
            <source>Compare a vent</source>
            <translation>Sammenlign</translation>
        </message>
        <message>
            <source>Nothing to compare</source>
            <translation>Ingenting å sammenligne</translation>
        </message>
        <message>
            <source>Save picture</source>
            <translation>Lagre bilde</translation>
        </message>
        <message>
            <source>Save drawing</source>
            <translation>Lagre tegning</translation>
        </message>
        <message>
            <source>Save readings</source>
            <translation>Lagre målinger</translation>
        </message>
        <message>
            <source>Saved: {path}</source>
            <translation>Lagret: {path}</translation>
        </message>
        <message>
            <source>Could not be written: {path}</source>
            <translation>Kunne ikke skrives: {path}</translation>
        </message>
        <message>
            <source>Undo note</source>
            <translation>Angre notat</translation>
        </message>
    </context>
    <context>
        <name>Connect</name>
        <message>
            <source>Section</source>
            <translation>Seksjon</translation>
        </message>
        <message>
            <source>Volume of the section, litres</source>
            <translation>Seksjonens volum, liter</translation>
        </message>
        <message>
            <source>Altitude, m</source>
            <translation>Høyde, m</translation>
        </message>
        <message>
            <source>Gauge full scale, with unit</source>
            <translation>Fullt utslag, med enhet</translation>
        </message>
        <message>
            <source>Gauge accuracy, % of full scale</source>
            <translation>Nøyaktighet, % av fullt utslag</translation>
        </message>
        <message>
            <source>Gauge reads open to air, with unit</source>
            <translation>Visning i friluft, med enhet</translation>
        </message>
        <message>
            <source>Relief setting, with unit</source>
            <translation>Sikkerhetsventil, med enhet</translation>
        </message>
        <message>
            <source>Highest allowed pressure, with unit</source>
            <translation>Høyeste tillatte trykk, med enhet</translation>
        </message>
        <message>
            <source>Connect a gauge</source>
            <translation>Koble til manometer</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Kilde</translation>
        </message>
        <message>
            <source>Folder for recordings</source>
            <translation>Mappe for opptak</translation>
        </message>
        <message>
            <source>Opening…</source>
            <translation>Åpner…</translation>
        </message>
        <message>
            <source>Test the source</source>
            <translation>Test kilden</translation>
        </message>
        <message>
            <source>Columns, if it sends no names</source>
            <translation>Kolonner, hvis uten navn</translation>
        </message>
        <message>
            <source>Stop the test</source>
            <translation>Stopp testen</translation>
        </message>
        <message>
            <source>The section</source>
            <translation>Seksjonen</translation>
        </message>
        <message>
            <source>The source</source>
            <translation>Kilden</translation>
        </message>
        <message>
            <source>The test was stopped; the source is free again</source>
            <translation>Testen ble stoppet; kilden er ledig igjen</translation>
        </message>
        <message>
            <source>Changed: test the source again</source>
            <translation>Endret: test kilden på nytt</translation>
        </message>
        <message>
            <source>The test is over; test again</source>
            <translation>Testen er over; test på nytt</translation>
        </message>
    </context>
    <context>
        <name>Fault</name>
        <message>
            <source>Display fault: close the vent</source>
            <translation>Skjermfeil: steng avblåsningen</translation>
        </message>
        <message>
            <source>Display fault</source>
            <translation>Skjermfeil</translation>
        </message>
        <message>
            <source>Read the mechanical gauge; if it rises, vent. Readings are still being taken and recorded.</source>
            <translation>Les av det mekaniske manometeret; stiger det, blås av. Målingene tas fortsatt og lagres.</translation>
        </message>
        <message>
            <source>This program has a fault: {error}</source>
            <translation>Dette programmet har en feil: {error}</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Prøv igjen</translation>
        </message>
        <message>
            <source>Start page</source>
            <translation>Startside</translation>
        </message>
    </context>
    <context>
        <name>Guide</name>
        <message>
            <source>Read the reveal, then More: run again with one thing changed.</source>
            <translation>Les fasiten, deretter Mer: en gang til med én endring.</translation>
        </message>
        <message>
            <source>Press Reveal (R) to see what was really inside.</source>
            <translation>Fasit (R) viser hva som egentlig var inni.</translation>
        </message>
        <message>
            <source>Press Space to let the time go; - and + change its speed.</source>
            <translation>Mellomrom starter tiden; - og + endrer farten.</translation>
        </message>
        <message>
            <source>Open the vent (O), a quarter a touch, and watch the margin.</source>
            <translation>Åpne avblåsningen (O), en kvart om gangen, og følg marginen.</translation>
        </message>
        <message>
            <source>The pressure falls. Slow down near the stop line.</source>
            <translation>Trykket faller. Sakte nær stopplinjen.</translation>
        </message>
        <message>
            <source>Near the stop line: close the vent (C).</source>
            <translation>Nær stopplinjen: steng avblåsningen (C).</translation>
        </message>
        <message>
            <source>Is it flat or still rising? Commit yourself: Predict (G).</source>
            <translation>Flatt, eller stiger det ennå? Bestem deg: Spå (G).</translation>
        </message>
        <message>
            <source>Hold: leave the vent shut and watch how the rise dies away, or not.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold: la avblåsningen være stengt og se om stigningen dør ut.</translation>
        </message>
    </context>
    <context>
        <name>Job</name>
        <message>
            <source>Log of the test</source>
            <translation>Logg for prøven</translation>
        </message>
        <message>
            <source>Readings (*.csv)</source>
            <translation>Målinger (*.csv)</translation>
        </message>
        <message>
            <source>Signed, digest </source>
            <translation>Signert, kontrollsum </translation>
        </message>
        <message>
            <source>Report: </source>
            <translation>Rapport: </translation>
        </message>
        <message>
            <source>SIMULATED PRACTICE: never signed</source>
            <translation>SIMULERT ØVELSE: signeres aldri</translation>
        </message>
        <message>
            <source>Your name</source>
            <translation>Navnet ditt</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Forlat</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>Legg bort</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notat</translation>
        </message>
        <message>
            <source>Step back</source>
            <translation>Steg tilbake</translation>
        </message>
        <message>
            <source>Skip</source>
            <translation>Hopp over</translation>
        </message>
        <message>
            <source>Report</source>
            <translation>Rapport</translation>
        </message>
        <message>
            <source>Sign</source>
            <translation>Signer</translation>
        </message>
        <message>
            <source>Step done</source>
            <translation>Steg utført</translation>
        </message>
        <message>
            <source>Every step has ended</source>
            <translation>Alle steg er avsluttet</translation>
        </message>
        <message>
            <source>Waits for: </source>
            <translation>Venter på: </translation>
        </message>
        <message>
            <source>Write your name first (top right).</source>
            <translation>Skriv navnet ditt først (øverst til høyre).</translation>
        </message>
        <message>
            <source>Why is this step left out? Enter keeps it</source>
            <translation>Hvorfor utelates steget? Enter lagrer</translation>
        </message>
        <message>
            <source>Why one step back? Enter keeps it</source>
            <translation>Hvorfor ett steg tilbake? Enter lagrer</translation>
        </message>
        <message>
            <source>Why is it taken back? Enter keeps it</source>
            <translation>Hvorfor trekkes det tilbake? Enter lagrer</translation>
        </message>
        <message>
            <source>Note for the record. Enter keeps it</source>
            <translation>Notat til loggen. Enter lagrer</translation>
        </message>
        <message>
            <source>Your role, such as technician. Enter signs</source>
            <translation>Rollen din, som tekniker. Enter signerer</translation>
        </message>
        <message>
            <source>Do</source>
            <translation>Gjør</translation>
        </message>
        <message>
            <source>Caution</source>
            <translation>Forsiktig</translation>
        </message>
        <message>
            <source>What goes wrong here</source>
            <translation>Hva som går galt her</translation>
        </message>
        <message>
            <source>Read off</source>
            <translation>Les av</translation>
        </message>
        <message>
            <source>no fresh reading</source>
            <translation>ingen fersk måling</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Behold</translation>
        </message>
        <message>
            <source> (if there is any)</source>
            <translation> (hvis det finnes)</translation>
        </message>
        <message>
            <source>I saw the gauge move</source>
            <translation>Jeg så manometeret bevege seg</translation>
        </message>
        <message>
            <source>Judge a log of this test</source>
            <translation>Bedøm en logg av denne prøven</translation>
        </message>
        <message>
            <source>Valve</source>
            <translation>Ventil</translation>
        </message>
        <message>
            <source>Lock</source>
            <translation>Lås</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Skilt</translation>
        </message>
        <message>
            <source>Shut, locked, tagged</source>
            <translation>Stengt, låst, merket</translation>
        </message>
        <message>
            <source>Open again</source>
            <translation>Åpen igjen</translation>
        </message>
        <message>
            <source>A job: plan, vent, prove, work, test, record</source>
            <translation>En jobb: planlegg, blås av, bevis, arbeid, prøv, noter</translation>
        </message>
        <message>
            <source>Section</source>
            <translation>Seksjon</translation>
        </message>
        <message>
            <source>Site</source>
            <translation>Sted</translation>
        </message>
        <message>
            <source>Unit or room</source>
            <translation>Anlegg eller rom</translation>
        </message>
        <message>
            <source>Drawing and revision</source>
            <translation>Tegning og revisjon</translation>
        </message>
        <message>
            <source>Work to be done</source>
            <translation>Arbeid som skal gjøres</translation>
        </message>
        <message>
            <source>Technician</source>
            <translation>Tekniker</translation>
        </message>
        <message>
            <source>Technician's certificate</source>
            <translation>Teknikerens sertifikat</translation>
        </message>
        <message>
            <source>Second person</source>
            <translation>Andre person</translation>
        </message>
        <message>
            <source>Supervisor</source>
            <translation>Ansvarlig</translation>
        </message>
        <message>
            <source>Gauge: name, serial number</source>
            <translation>Manometer: navn, serienummer</translation>
        </message>
        <message>
            <source>Gauge: class and range</source>
            <translation>Manometer: klasse og område</translation>
        </message>
        <message>
            <source>Gauge: calibrated on</source>
            <translation>Manometer: kalibrert</translation>
        </message>
        <message>
            <source>Put the job's folder in</source>
            <translation>Legg jobbens mappe i</translation>
        </message>
        <message>
            <source>Your site's steps (TOML), empty for the usual</source>
            <translation>Stedets steg (TOML), tomt: de vanlige</translation>
        </message>
        <message>
            <source>Open a job</source>
            <translation>Åpne en jobb</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Begynn</translation>
        </message>
        <message>
            <source>Give the section and at least one name.</source>
            <translation>Oppgi seksjonen og minst ett navn.</translation>
        </message>
        <message>
            <source>A job's folder</source>
            <translation>En jobbs mappe</translation>
        </message>
        <message>
            <source>triple point </source>
            <translation>trippelpunkt </translation>
        </message>
        <message>
            <source>No readings come: look at the mechanical gauge.</source>
            <translation>Ingen målinger kommer: se på det mekaniske manometeret.</translation>
        </message>
    </context>
    <context>
        <name>Key</name>
        <message>
            <source>Back</source>
            <translation>Tilbake</translation>
        </message>
        <message>
            <source>Shorter</source>
            <translation>Kortere</translation>
        </message>
        <message>
            <source>Longer</source>
            <translation>Lengre</translation>
        </message>
        <message>
            <source>Start</source>
            <translation>Start</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Forlat</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Åpne</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Steng</translation>
        </message>
        <message>
            <source>Slower</source>
            <translation>Sakte</translation>
        </message>
        <message>
            <source>Faster</source>
            <translation>Fort</translation>
        </message>
        <message>
            <source>Predict</source>
            <translation>Spå</translation>
        </message>
        <message>
            <source>View</source>
            <translation>Visning</translation>
        </message>
        <message>
            <source>Reveal</source>
            <translation>Fasit</translation>
        </message>
        <message>
            <source>More</source>
            <translation>Mer</translation>
        </message>
        <message>
            <source>Zoom</source>
            <translation>Zoom</translation>
        </message>
        <message>
            <source>Why?</source>
            <translation>Hvorfor?</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Videre</translation>
        </message>
        <message>
            <source>Pause</source>
            <translation>Pause</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Begynn</translation>
        </message>
        <message>
            <source>Connect</source>
            <translation>Koble til</translation>
        </message>
        <message>
            <source>Vent open</source>
            <translation>Åpen</translation>
        </message>
        <message>
            <source>Vent shut</source>
            <translation>Stengt</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notat</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Sett</translation>
        </message>
        <message>
            <source>Silence</source>
            <translation>Stille</translation>
        </message>
        <message>
            <source>Play</source>
            <translation>Spill av</translation>
        </message>
        <message>
            <source>Previous</source>
            <translation>Forrige</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>Neste</translation>
        </message>
    </context>
    <context>
        <name>Live</name>
        <message>
            <source>End the vent and its record?</source>
            <translation>Avslutte avblåsningen og opptaket?</translation>
        </message>
        <message>
            <source>End</source>
            <translation>Avslutt</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Videre</translation>
        </message>
        <message>
            <source>Ctrl+L: back to the vent</source>
            <translation>Ctrl+L: tilbake til avblåsningen</translation>
        </message>
    </context>
    <context>
        <name>Loading</name>
        <message>
            <source>UNCHECKED</source>
            <translation>IKKE KONTROLLERT</translation>
        </message>
        <message>
            <source>UNCHECKED: {percent} % of the rows checked</source>
            <translation>IKKE KONTROLLERT: {percent} % av radene er kontrollert</translation>
        </message>
        <message>
            <source>The trace as it stands in the file, for looking only: no verdict, no saving yet.</source>
            <translation>Kurven slik den står i filen, bare til å se på: ingen vurdering og ingen lagring ennå.</translation>
        </message>
        <message>
            <source>Reading {name} row by row: {percent} % of {size} MB checked…</source>
            <translation>Leser {name} rad for rad: {percent} % av {size} MB kontrollert…</translation>
        </message>
        <message>
            <source>Reading {name}, {size} MB…</source>
            <translation>Leser {name}, {size} MB…</translation>
        </message>
    </context>
    <context>
        <name>Note</name>
        <message>
            <source>Note for the record (empty: a mark)</source>
            <translation>Notat til opptaket (tomt: et merke)</translation>
        </message>
        <message>
            <source>Keep (Enter)</source>
            <translation>Behold (Enter)</translation>
        </message>
        <message>
            <source>Note on the moment {time}</source>
            <translation>Notat til tidspunktet {time}</translation>
        </message>
        <message>
            <source>Your name</source>
            <translation>Navnet ditt</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Behold</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Fjern</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>Legg bort</translation>
        </message>
        <message>
            <source>This replay has no file beside which to keep it</source>
            <translation>Denne avspillingen har ingen fil å legge det ved siden av</translation>
        </message>
        <message>
            <source>Note {number}: {words}</source>
            <translation>Notat {number}: {words}</translation>
        </message>
        <message>
            <source>The last change of the notes is undone</source>
            <translation>Siste endring av notatene er angret</translation>
        </message>
        <message>
            <source>No change of the notes to undo</source>
            <translation>Ingen endring av notatene å angre</translation>
        </message>
        <message>
            <source>Kept; it shows when the replay is no longer blind</source>
            <translation>Beholdt; det vises når avspillingen ikke lenger er blind</translation>
        </message>
        <message>
            <source>Note kept: {path}</source>
            <translation>Notat beholdt: {path}</translation>
        </message>
        <message>
            <source>Write a few words first</source>
            <translation>Skriv noen ord først</translation>
        </message>
        <message>
            <source>Note removed. Ctrl+Z brings it back</source>
            <translation>Notat fjernet. Ctrl+Z henter det tilbake</translation>
        </message>
        <message>
            <source>Your words stay in the line</source>
            <translation>Ordene dine blir stående i linjen</translation>
        </message>
    </context>
    <context>
        <name>Plan</name>
        <message>
            <source>Volume, litres</source>
            <translation>Volum, liter</translation>
        </message>
        <message>
            <source>Charge, °C</source>
            <translation>Fylling, °C</translation>
        </message>
        <message>
            <source>or charge, bar g</source>
            <translation>eller fylling, bar g</translation>
        </message>
        <message>
            <source>Liquid, % of volume</source>
            <translation>Væske, vol.-%</translation>
        </message>
        <message>
            <source>Altitude, m</source>
            <translation>Høyde, m</translation>
        </message>
        <message>
            <source>Gauge range, bar g</source>
            <translation>Måleområde, bar g</translation>
        </message>
        <message>
            <source>Gauge accuracy, %</source>
            <translation>Nøyaktighet, %</translation>
        </message>
        <message>
            <source>Vent bore, mm</source>
            <translation>Utløp, mm</translation>
        </message>
        <message>
            <source>Surroundings, °C</source>
            <translation>Omgivelser, °C</translation>
        </message>
        <message>
            <source>Relief setting, bar g</source>
            <translation>Sikkerhetsventil, bar g</translation>
        </message>
        <message>
            <source>Room, m³</source>
            <translation>Rom, m³</translation>
        </message>
        <message>
            <source>Air changes an hour</source>
            <translation>Luftskifter per time</translation>
        </message>
        <message>
            <source>Give the volume of the section, and the charge's °C or bar g.</source>
            <translation>Oppgi seksjonens volum, og fyllingens °C eller bar g.</translation>
        </message>
        <message>
            <source>{field} not given: {value} is assumed.</source>
            <translation>{field} ikke oppgitt: {value} er antatt.</translation>
        </message>
        <message>
            <source>{field}: {words} is not a number.</source>
            <translation>{field}: {words} er ikke et tall.</translation>
        </message>
        <message>
            <source>Stop at {stop} (triple point {triple})</source>
            <translation>Stopp ved {stop} (trippelpunkt {triple})</translation>
        </message>
        <message>
            <source>Dry ice if vented straight down: {mass}</source>
            <translation>Tørris ved avblåsning rett ned: {mass}</translation>
        </message>
        <message>
            <source>Stop pressure not before {time}, fully open</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Stopptrykk ikke før {time}, helt åpen</translation>
        </message>
    </context>
    <context>
        <name>Plot</name>
        <message>
            <source>if vapour only</source>
            <translation>hvis bare damp</translation>
        </message>
        <message>
            <source>least with liquid left</source>
            <translation>minst med væske igjen</translation>
        </message>
        <message>
            <source>rise, {unit}</source>
            <translation>stigning, {unit}</translation>
        </message>
        <message>
            <source>time since the vent closed</source>
            <translation>tid siden stengning</translation>
        </message>
        <message>
            <source>hold {number}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>hold {number}</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>væske</translation>
        </message>
        <message>
            <source>vapour</source>
            <translation>damp</translation>
        </message>
        <message>
            <source>dry ice</source>
            <translation>tørris</translation>
        </message>
        <message>
            <source>triple point</source>
            <translation>trippelpunkt</translation>
        </message>
        <message>
            <source>stop</source>
            <translation>stopp</translation>
        </message>
        <message>
            <source>stop in {early} to {late} ({percent} %)</source>
            <translation>stopp om {early} til {late} ({percent} %)</translation>
        </message>
        <message>
            <source>liquid and vapour</source>
            <translation>væske og damp</translation>
        </message>
        <message>
            <source>dry ice and vapour</source>
            <translation>tørris og damp</translation>
        </message>
        <message>
            <source>critical point</source>
            <translation>kritisk punkt</translation>
        </message>
        <message>
            <source>heat content, kJ/kg</source>
            <translation>entalpi, kJ/kg</translation>
        </message>
        <message>
            <source>heat content, Btu/lb</source>
            <translation>entalpi, Btu/lb</translation>
        </message>
        <message>
            <source>{value} = boiling liquid at {temperature}</source>
            <translation>{value} = kokende væske ved {temperature}</translation>
        </message>
        <message>
            <source>Measured: pressure, metal.</source>
            <translation>Målt: trykk, metall.</translation>
        </message>
        <message>
            <source>Line: vapour assumed as warm as the metal.</source>
            <translation>Linje: damp antatt like varm som metallet.</translation>
        </message>
        <message>
            <source>Dots: saturated vapour assumed.</source>
            <translation>Prikker: mettet damp antatt.</translation>
        </message>
        <message>
            <source>now: share not measured</source>
            <translation>nå: andel ikke målt</translation>
        </message>
        <message>
            <source>vapour by the metal temperature</source>
            <translation>damp etter metalltemperaturen</translation>
        </message>
        <message>
            <source>saturated vapour assumed</source>
            <translation>mettet damp antatt</translation>
        </message>
    </context>
    <context>
        <name>Prompt</name>
        <message>
            <source>Vent</source>
            <translation>Blås av</translation>
        </message>
        <message>
            <source>Close the vent and hold</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Steng og hold</translation>
        </message>
        <message>
            <source>Keep holding</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Fortsett å holde</translation>
        </message>
        <message>
            <source>Vent again</source>
            <translation>Blås av igjen</translation>
        </message>
        <message>
            <source>Vapour only: vent to zero</source>
            <translation>Bare damp: blås av til null</translation>
        </message>
        <message>
            <source>Dry ice: hold, keep clear</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Tørris: hold, hold avstand</translation>
        </message>
        <message>
            <source>Open the bleeds at both ends</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Åpne lufting i begge ender</translation>
        </message>
        <message>
            <source>Vent now</source>
            <translation>Blås av nå</translation>
        </message>
        <message>
            <source>Check the isolation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Sjekk avstengningen</translation>
        </message>
        <message>
            <source>Check the vent line</source>
            <translation>Sjekk avblåsningslinjen</translation>
        </message>
        <message>
            <source>Check the gauge</source>
            <translation>Sjekk manometeret</translation>
        </message>
        <message>
            <source>No data: close the vent</source>
            <translation>Ingen data: steng avblåsningen</translation>
        </message>
        <message>
            <source>Wait</source>
            <translation>Vent litt</translation>
        </message>
        <message>
            <source>No data</source>
            <translation>Ingen data</translation>
        </message>
        <message>
            <source>Stop: dry ice forming</source>
            <translation>Stopp: tørris dannes</translation>
        </message>
        <message>
            <source>Dry ice possible</source>
            <translation>Tørris mulig</translation>
        </message>
        <message>
            <source>Close now: below the triple point</source>
            <translation>Steng nå: under trippelpunktet</translation>
        </message>
        <message>
            <source>Close: hold for dry ice</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Steng: hold for tørris</translation>
        </message>
        <message>
            <source>Wait: watch the closed section</source>
            <translation>Vent litt: følg den stengte seksjonen</translation>
        </message>
        <message>
            <source>Vent when ready</source>
            <translation>Blås av når alt er klart</translation>
        </message>
        <message>
            <source>Hold for dry ice</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold for tørris</translation>
        </message>
        <message>
            <source>Liquid: vent again</source>
            <translation>Væske: blås av igjen</translation>
        </message>
        <message>
            <source>Liquid: keep holding</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Væske: fortsett å holde</translation>
        </message>
        <message>
            <source>Open the vent slowly and watch the margin above the triple point. Fall slowly for the last 10 bar. The prompt to close comes early enough for your hand to reach the valve; do not wait for the stop line itself.</source>
            <translation>Åpne avblåsningen sakte og følg marginen over trippelpunktet. Fall sakte de siste 10 bar. Anvisningen om å stenge kommer tidlig nok til at hånden rekker ventilen; ikke vent på selve stopplinjen.</translation>
        </message>
        <message>
            <source>Shut the vent valve now and leave everything still. Below the triple point liquid turns to dry ice, and a gauge at zero would no longer prove anything.</source>
            <translation>Steng avblåsningsventilen nå og la alt være i ro. Under trippelpunktet blir væske til tørris, og et manometer på null beviser da ingenting.</translation>
        </message>
        <message>
            <source>Leave the valve shut. The first minute is gas warming up in every case; only the later slope, and the next hold, tell liquid from gas. The time left is the earliest that the hold can decide, not a time after which the section is empty.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>La ventilen være stengt. Det første minuttet er alltid gass som varmes; først den senere stigningen og neste hold skiller væske fra gass. Tiden igjen er det tidligste holdet kan avgjøre, ikke en tid da seksjonen er tom.</translation>
        </message>
        <message>
            <source>Liquid is indicated, or this hold could not exclude it. Vent from here back down towards the stop pressure, never lower, then hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, stop pressure</translatorcomment>
            <translation>Væske er antydet, eller dette holdet kunne ikke utelukke det. Blås av herfra ned mot stopptrykket, aldri lavere, og hold igjen.</translation>
        </message>
        <message>
            <source>The hold shows no liquid above its detection limit. Vent down, stop near 1 bar gauge and hold for dry ice, then go on to zero. Watch for a shelf at the triple point: if the fall stalls there, close and treat it as dry ice.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Holdet viser ingen væske over sin deteksjonsgrense. Blås av, stopp nær 1 bar overtrykk og hold for tørris, deretter videre til null. Se etter et trinn ved trippelpunktet: stopper fallet der, steng og behandle det som tørris.</translation>
        </message>
        <message>
            <source>Dry ice is indicated or not excluded. Keep out of line of hose and cover: pressure may stand on both sides of a plug. The sentence under the prompt says whether the vented side stays open. Let ambient heat work; never strike, blow out or warm a plug. Snow that is shut in can rise far above the rated pressure: watch the gauge. No time alone ends this hold, and a gauge at zero is not proof of empty.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Tørris er antydet eller ikke utelukket. Hold deg unna linjen til slange og deksel: det kan være trykk på begge sider av en propp. Setningen under anvisningen sier om den avblåste siden skal stå åpen. La omgivelsesvarmen virke; slå, blås ut eller varm aldri en propp. Innestengt snø kan stige langt over tillatt trykk: følg manometeret. Ingen tid alene avslutter dette holdet, og et manometer på null er ikke bevis for tomt.</translation>
        </message>
        <message>
            <source>Open the bleeds at both ends and leave them open. A plug between the gauge and the section hides pressure. This is a reading, not permission to open.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Åpne luftingen i begge ender og la dem stå åpne. En propp mellom manometer og seksjon skjuler trykk. Dette er en måling, ikke en tillatelse til å åpne.</translation>
        </message>
        <message>
            <source>The closed-in pressure is near a limit, or rises as a liquid-full section does. Open the vent now; stand clear of the outlet.</source>
            <translation>Det innestengte trykket er nær en grense, eller stiger som i en væskefull seksjon. Åpne avblåsningen nå; hold avstand til utløpet.</translation>
        </message>
        <message>
            <source>Pressure rises in a way that points to flow past a closed isolation valve. Re-seat and lock the valves, or double block and bleed. Venting alone will not end it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed, isolation</translatorcomment>
            <translation>Trykket stiger slik at det tyder på lekkasje forbi en stengt avstengningsventil. Steng på nytt og lås ventilene, eller dobbel avstenging med lufting. Avblåsning alene gjør ikke slutt på det.</translation>
        </message>
        <message>
            <source>The vent is open but the pressure does not fall: a plug of dry ice in the vent line, or the shelf at the triple point. Close the vent. Do not look into, strike or heat the outlet.</source>
            <translation>Avblåsningen er åpen, men trykket faller ikke: en propp av tørris i linjen, eller trinnet ved trippelpunktet. Steng avblåsningen. Ikke se inn i, slå på eller varm utløpet.</translation>
        </message>
        <message>
            <source>The gauge shows values that a live section would not, or has reached its limit. Compare with the mechanical gauge; check the line to the gauge for a plug.</source>
            <translation>Manometeret viser verdier en levende seksjon ikke ville gitt, eller er ved grensen. Sammenlign med det mekaniske manometeret; sjekk linjen til manometeret for propp.</translation>
        </message>
        <message>
            <source>Close the vent. Read the mechanical gauge. If it rises, vent. Nothing shown before the gap holds any longer: the hold starts again when readings are back.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Steng avblåsningen. Les av det mekaniske manometeret. Stiger det, blås av. Ingenting vist før hullet gjelder lenger: holdet starter på nytt når målingene er tilbake.</translation>
        </message>
        <message>
            <source>Nothing to do before the vent starts.</source>
            <translation>Ingenting å gjøre før avblåsningen starter.</translation>
        </message>
        <message>
            <source>What would you do now?</source>
            <translation>Hva ville du gjort nå?</translation>
        </message>
    </context>
    <context>
        <name>Replay</name>
        <message>
            <source>reading the record: {percent} %</source>
            <translation>leser opptaket: {percent} %</translation>
        </message>
        <message>
            <source>the record could not be judged to its end: {error}</source>
            <translation>opptaket kunne ikke bedømmes til slutt: {error}</translation>
        </message>
    </context>
    <context>
        <name>Samples</name>
        <message>
            <source>Simulated vents: invented readings, replayed at ten times speed</source>
            <translation>Simulerte avblåsninger: oppdiktede målinger, ti ganger farten</translation>
        </message>
    </context>
    <context>
        <name>Source</name>
        <message>
            <source>opening</source>
            <translation>åpner</translation>
        </message>
        <message>
            <source>waiting for readings</source>
            <translation>venter på målinger</translation>
        </message>
        <message>
            <source>live</source>
            <translation>direkte</translation>
        </message>
        <message>
            <source>readings come late</source>
            <translation>målingene kommer sent</translation>
        </message>
        <message>
            <source>source lost</source>
            <translation>kilden er borte</translation>
        </message>
        <message>
            <source>not readable</source>
            <translation>ikke lesbar</translation>
        </message>
        <message>
            <source>the stream has ended</source>
            <translation>datastrømmen er slutt</translation>
        </message>
        <message>
            <source>refused</source>
            <translation>avvist</translation>
        </message>
        <message>
            <source>this program has a fault</source>
            <translation>dette programmet har en feil</translation>
        </message>
    </context>
    <context>
        <name>Start</name>
        <message>
            <source>Open a recorded vent</source>
            <translation>Åpne et opptak</translation>
        </message>
        <message>
            <source>A readings log, from this program or another logger.</source>
            <translation>En målelogg, fra dette programmet eller en annen logger.</translation>
        </message>
        <message>
            <source>Try a sample</source>
            <translation>Prøv et eksempel</translation>
        </message>
        <message>
            <source>Simulated vents that ship with the program, replayed.</source>
            <translation>Simulerte avblåsninger som følger med programmet.</translation>
        </message>
        <message>
            <source>Connect a gauge</source>
            <translation>Koble til manometer</translation>
        </message>
        <message>
            <source>Watch a live vent with prompts, and record it.</source>
            <translation>Følg en avblåsning direkte med anvisninger, og ta den opp.</translation>
        </message>
        <message>
            <source>Plan a vent</source>
            <translation>Planlegg en avblåsning</translation>
        </message>
        <message>
            <source>Charge, stop pressure, dry ice, room and time beforehand.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Fylling, stopptrykk, tørris, rom og tid på forhånd.</translation>
        </message>
        <message>
            <source>Practise</source>
            <translation>Øve</translation>
        </message>
        <message>
            <source>Work the valve of a simulated section; alone or with a class.</source>
            <translation>Betjen ventilen på en simulert seksjon, alene eller i kurs.</translation>
        </message>
        <message>
            <source>A job</source>
            <translation>En jobb</translation>
        </message>
        <message>
            <source>Step by step from the permit to the signed record.</source>
            <translation>Steg for steg fra tillatelse til signert protokoll.</translation>
        </message>
        <message>
            <source>Beside you while a trapped CO2 section is vented: what is left inside, how sure, and what to do next.</source>
            <translation>Ved siden av deg mens en avstengt CO2-seksjon blåses av: hva som er igjen, hvor sikkert, og hva du gjør nå.</translation>
        </message>
        <message>
            <source>It advises from gauge readings. It never says that a section is safe to open: your procedure, your permit and the mechanical gauge decide.</source>
            <translation>Det gir råd ut fra målinger. Det sier aldri at en seksjon er trygg å åpne: prosedyren, tillatelsen og det mekaniske manometeret avgjør.</translation>
        </message>
    </context>
    <context>
        <name>Status</name>
        <message>
            <source>recording; disk nearly full</source>
            <translation>tar opp; disken er nesten full</translation>
        </message>
        <message>
            <source>recording: {lines} lines</source>
            <translation>opptak: {lines} linjer</translation>
        </message>
        <message>
            <source>NO SOUND</source>
            <translation>INGEN LYD</translation>
        </message>
        <message>
            <source>recording</source>
            <translation>tar opp</translation>
        </message>
        <message>
            <source>NOT RECORDING</source>
            <translation>INGEN OPPTAK</translation>
        </message>
    </context>
    <context>
        <name>Text</name>
        <message>
            <source>STALE</source>
            <translation>GAMMELT</translation>
        </message>
        <message>
            <source>Keep the vent closed and read the mechanical gauge until readings arrive.</source>
            <translation>Hold avblåsningen stengt og les av det mekaniske manometeret til målinger kommer.</translation>
        </message>
        <message>
            <source>No reading yet</source>
            <translation>Ingen måling ennå</translation>
        </message>
        <message>
            <source>above the triple point</source>
            <translation>over trippelpunktet</translation>
        </message>
        <message>
            <source>Close the vent and read the mechanical gauge; if it rises, vent. Nothing shown before counts any more.</source>
            <translation>Steng avblåsningen og les av det mekaniske manometeret; stiger det, blås av. Ingenting vist før gjelder lenger.</translation>
        </message>
        <message>
            <source>No reading for {age} s.</source>
            <translation>Ingen måling på {age} s.</translation>
        </message>
        <message>
            <source>Inside: unknown while there are no readings</source>
            <translation>Inni: ukjent så lenge målinger mangler</translation>
        </message>
        <message>
            <source>AT the triple point</source>
            <translation>VED trippelpunktet</translation>
        </message>
        <message>
            <source>BELOW the triple point</source>
            <translation>UNDER trippelpunktet</translation>
        </message>
        <message>
            <source>{gap} above the stop pressure {stop}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>{gap} over stopptrykket {stop}</translation>
        </message>
        <message>
            <source>{gap} below the stop pressure {stop}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>{gap} under stopptrykket {stop}</translation>
        </message>
        <message>
            <source>stop pressure in {time}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>stopptrykk om {time}</translation>
        </message>
        <message>
            <source>line temperature not measured</source>
            <translation>rørtemperatur ikke målt</translation>
        </message>
        <message>
            <source>line {temperature}</source>
            <translation>rør {temperature}</translation>
        </message>
        <message>
            <source>vent valve: not known</source>
            <translation>avblåsning: ukjent</translation>
        </message>
        <message>
            <source>vent valve: OPEN</source>
            <translation>avblåsning: ÅPEN</translation>
        </message>
        <message>
            <source>vent valve: CLOSED</source>
            <translation>avblåsning: STENGT</translation>
        </message>
        <message>
            <source>rate not known</source>
            <translation>takt ukjent</translation>
        </message>
        <message>
            <source>steady</source>
            <translation>jevnt</translation>
        </message>
        <message>
            <source>falling {rate}/min</source>
            <translation>faller {rate}/min</translation>
        </message>
        <message>
            <source>rising {rate}/min</source>
            <translation>stiger {rate}/min</translation>
        </message>
        <message>
            <source>no reading yet</source>
            <translation>ingen måling ennå</translation>
        </message>
        <message>
            <source>reading {age} min old</source>
            <translation>måling {age} min gammel</translation>
        </message>
        <message>
            <source>reading {age} s old</source>
            <translation>måling {age} s gammel</translation>
        </message>
        <message>
            <source>at least {least}, no upper bound</source>
            <translation>minst {least}, ingen øvre grense</translation>
        </message>
        <message>
            <source>not bounded</source>
            <translation>ikke avgrenset</translation>
        </message>
        <message>
            <source>{low} to {high} ({percent} %)</source>
            <translation>{low} til {high} ({percent} %)</translation>
        </message>
        <message>
            <source>{best} ({low} to {high}, {percent} %)</source>
            <translation>{best} ({low} til {high}, {percent} %)</translation>
        </message>
        <message>
            <source>share not bounded</source>
            <translation>andel ikke avgrenset</translation>
        </message>
        <message>
            <source>{low} to {high} % of the volume</source>
            <translation>{low} til {high} % av volumet</translation>
        </message>
        <message>
            <source>Inside: no hold yet</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Inni: ingen hold ennå</translation>
        </message>
        <message>
            <source>Inside: {state}</source>
            <translation>Inni: {state}</translation>
        </message>
        <message>
            <source>Liquid: {amount}</source>
            <translation>Væske: {amount}</translation>
        </message>
        <message>
            <source>Dry ice: {amount}</source>
            <translation>Tørris: {amount}</translation>
        </message>
        <message>
            <source>This hold could see {least} or more</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Dette holdet ser fra {least}</translation>
        </message>
        <message>
            <source>This hold has no detection limit yet</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ingen deteksjonsgrense ennå</translation>
        </message>
        <message>
            <source>Hold {number}: {time}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold {number}: {time}</translation>
        </message>
        <message>
            <source>{time} left at least</source>
            <translation>minst {time} igjen</translation>
        </message>
        <message>
            <source>Inside: hidden</source>
            <translation>Inni: skjult</translation>
        </message>
    </context>
    <context>
        <name>Tour</name>
        <message>
            <source>(I: next)</source>
            <translation>(I: neste)</translation>
        </message>
        <message>
            <source>The band on top says what to do now, and under it why.</source>
            <translation>Båndet øverst sier hva du gjør nå, og under det hvorfor.</translation>
        </message>
        <message>
            <source>First figure: how far above the triple point. Below it liquid turns to dry ice.</source>
            <translation>Første tall: hvor langt over trippelpunktet. Under det blir væske til tørris.</translation>
        </message>
        <message>
            <source>Second figure: the gauge. Its caption: how far to the stop pressure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Andre tall: manometeret. Under: hvor langt til stopptrykket.</translation>
        </message>
        <message>
            <source>The trace: holds are shaded; N jumps to the next thing that happened.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Kurven: hold er skyggelagt; N hopper til neste hendelse.</translation>
        </message>
        <message>
            <source>The drawing: solid is surely liquid, hatched is possible, ? not known.</source>
            <translation>Tegningen: fylt er sikkert væske, skravert er mulig, ? ukjent.</translation>
        </message>
        <message>
            <source>V turns the pictures, F1 explains the prompt, M has everything else.</source>
            <translation>V bytter bilder, F1 forklarer anvisningen, M har alt annet.</translation>
        </message>
        <message>
            <source>If readings stop, the digits are struck through: close the vent.</source>
            <translation>Stopper målingene, strykes tallene over: steng avblåsningen.</translation>
        </message>
    </context>
    <context>
        <name>SourceTest</name>
        <message>
            <source>how the newest row is read</source>
            <translation>hvordan nyeste rad leses</translation>
        </message>
        <message>
            <source>The newest row is read as</source>
            <translation>Nyeste rad leses som</translation>
        </message>
        <message>
            <source>Lines as they came</source>
            <translation>Linjer slik de kom</translation>
        </message>
        <message>
            <source>name the columns in the field above</source>
            <translation>navngi kolonnene i feltet over</translation>
        </message>
        <message>
            <source>Opening the source…</source>
            <translation>Åpner kilden…</translation>
        </message>
        <message>
            <source>The source is open; waiting for the first line…</source>
            <translation>Kilden er åpen; venter på første linje…</translation>
        </message>
        <message>
            <source>Data comes but no line ends: check baud rate and that the instrument ends its lines</source>
            <translation>Data kommer, men ingen linje slutter: sjekk baudrate og at instrumentet avslutter linjene</translation>
        </message>
        <message>
            <source>The names of the columns came, but no reading under them yet</source>
            <translation>Kolonnenavnene kom, men ennå ingen måling under dem</translation>
        </message>
        <message>
            <source>Data comes but it is no text: check baud rate, parity and cable</source>
            <translation>Data kommer, men det er ikke tekst: sjekk baudrate, paritet og kabel</translation>
        </message>
        <message>
            <source>Lines come but no pressure column: type what each value is into the field above, such as {example}</source>
            <translation>Linjer kommer, men ingen trykkolonne: skriv i feltet over hva hver verdi er, for eksempel {example}</translation>
        </message>
        <message>
            <source>Lines come but a job would refuse them: {reason}</source>
            <translation>Linjer kommer, men en jobb ville avvise dem: {reason}</translation>
        </message>
        <message>
            <source>Lines come but none is a reading: {reason}</source>
            <translation>Linjer kommer, men ingen er en måling: {reason}</translation>
        </message>
        <message>
            <source>Readings arrive, {rate}: pressure {pressure}</source>
            <translation>Målinger kommer, {rate}: trykk {pressure}</translation>
        </message>
        <message>
            <source>Readings arrive, {rate}: pressure {pressure}, but {rejected} of {lines} lines are none: {reason}</source>
            <translation>Målinger kommer, {rate}: trykk {pressure}, men {rejected} av {lines} linjer er ingen: {reason}</translation>
        </message>
        <message>
            <source>Readings arrive too slowly, one in {interval} s; a job needs one at least every 2 s</source>
            <translation>Målinger kommer for sakte, én på {interval} s; en jobb trenger minst én hvert 2. s</translation>
        </message>
        <message>
            <source>Readings have stopped: check cable and instrument. The last was {pressure}, {age} s ago</source>
            <translation>Målingene har stanset: sjekk kabel og instrument. Den siste var {pressure}, for {age} s siden</translation>
        </message>
        <message>
            <source>Reading what the file holds so far…</source>
            <translation>Leser det filen inneholder så langt…</translation>
        </message>
        <message>
            <source>The file can be read ({readings} readings) but nothing is added to it: is the other program recording?</source>
            <translation>Filen kan leses ({readings} målinger), men ingenting kommer til: tar det andre programmet opp?</translation>
        </message>
        <message>
            <source>The source has gone: {lost}</source>
            <translation>Kilden er borte: {lost}</translation>
        </message>
        <message>
            <source>The stream has ended after {readings} readings</source>
            <translation>Datastrømmen sluttet etter {readings} målinger</translation>
        </message>
        <message>
            <source>The file is empty: is the other program recording?</source>
            <translation>Filen er tom: tar det andre programmet opp?</translation>
        </message>
        <message>
            <source>The address answers but nothing comes: check that the instrument is on and sends</source>
            <translation>Adressen svarer, men ingenting kommer: sjekk at instrumentet er på og sender</translation>
        </message>
        <message>
            <source>The port opens but nothing comes: check baud rate, cable, and that the instrument is on and sends</source>
            <translation>Porten åpner, men ingenting kommer: sjekk baudrate, kabel og at instrumentet er på og sender</translation>
        </message>
        <message>
            <source>the first one</source>
            <translation>den første</translation>
        </message>
        <message>
            <source>many a second</source>
            <translation>mange i sekundet</translation>
        </message>
        <message>
            <source>{rate} a second</source>
            <translation>{rate} i sekundet</translation>
        </message>
        <message>
            <source>one in {interval} s</source>
            <translation>én på {interval} s</translation>
        </message>
        <message>
            <source>age not known: the readings lay in the file before</source>
            <translation>alder ukjent: målingene lå i filen fra før</translation>
        </message>
        <message>
            <source>{lines} lines, {readings} readings, {rejected} not understood</source>
            <translation>{lines} linjer, {readings} målinger, {rejected} ikke forstått</translation>
        </message>
        <message>
            <source>not used</source>
            <translation>ikke brukt</translation>
        </message>
        <message>
            <source>reply {reply}</source>
            <translation>svar {reply}</translation>
        </message>
        <message>
            <source>names of the columns</source>
            <translation>navn på kolonnene</translation>
        </message>
        <message>
            <source>about the section</source>
            <translation>om seksjonen</translation>
        </message>
        <message>
            <source>as it came: {bytes}</source>
            <translation>slik det kom: {bytes}</translation>
        </message>
        <message>
            <source>time</source>
            <translation>tid</translation>
        </message>
        <message>
            <source>date</source>
            <translation>dato</translation>
        </message>
        <message>
            <source>pressure</source>
            <translation>trykk</translation>
        </message>
        <message>
            <source>second gauge</source>
            <translation>andre manometer</translation>
        </message>
        <message>
            <source>line temperature</source>
            <translation>rørtemperatur</translation>
        </message>
        <message>
            <source>upper temperature</source>
            <translation>øvre temperatur</translation>
        </message>
        <message>
            <source>air temperature</source>
            <translation>lufttemperatur</translation>
        </message>
        <message>
            <source>vent valve</source>
            <translation>avblåsningsventil</translation>
        </message>
        <message>
            <source>vacuum</source>
            <translation>vakuum</translation>
        </message>
        <message>
            <source>CO2 in the room</source>
            <translation>CO2 i rommet</translation>
        </message>
        <message>
            <source>note</source>
            <translation>notat</translation>
        </message>
        <message>
            <source>check sum</source>
            <translation>kontrollsum</translation>
        </message>
        <message>
            <source>empty</source>
            <translation>tom</translation>
        </message>
        <message>
            <source>open</source>
            <translation>åpen</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>stengt</translation>
        </message>
        <message>
            <source>right</source>
            <translation>stemmer</translation>
        </message>
        <message>
            <source>neither open nor closed</source>
            <translation>verken åpen eller stengt</translation>
        </message>
        <message>
            <source>no number</source>
            <translation>ikke et tall</translation>
        </message>
        <message>
            <source>out of range</source>
            <translation>utenfor området</translation>
        </message>
        <message>
            <source>{rows} rows too fast to be taken</source>
            <translation>{rows} rader for raske</translation>
        </message>
    </context>
</TS>
