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
            <source>earlier</source>
            <translation>tidligere</translation>
        </message>
        <message>
            <source>not seen yet (A)</source>
            <translation>ikke kvittert ennå (A)</translation>
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
            <source>Help is hidden until the answer is given. B shows prompt, verdict and help.</source>
            <translation>Hjelpen er skjult til svaret er gitt. B viser anvisning, dom og hjelp.</translation>
        </message>
        <message>
            <source>Prompt and verdict are hidden. B shows them.</source>
            <translation>Anvisning og dom er skjult. B viser dem.</translation>
        </message>
        <message>
            <source>name hidden (B)</source>
            <translation>navn skjult (B)</translation>
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
            <source>not known yet</source>
            <translation>ikke kjent ennå</translation>
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
            <source>Leave the class? This run and its score are lost.</source>
            <translation>Forlate øvelsen? Denne kjøringen og poengene går tapt.</translation>
        </message>
        <message>
            <source>Committed {said}. Space goes on.</source>
            <translation>Bestemt {said}. Mellomrom: videre.</translation>
        </message>
        <message>
            <source>The truth has been shown: a prediction doesn&apos;t count any more.</source>
            <translation>Sannheten er vist: en spådom teller ikke lenger.</translation>
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
            <source>Changed:</source>
            <translation>Endret:</translation>
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
        <message>
            <source>nothing: as it is</source>
            <translation>ingenting: som den er</translation>
        </message>
        <message>
            <source>Change one thing:</source>
            <translation>Endre én ting:</translation>
        </message>
        <message>
            <source>chosen</source>
            <translation>valgt</translation>
        </message>
        <message>
            <source>Leak-by {flow}</source>
            <translation>Ventillekkasje {flow}</translation>
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
            <source>{name} has no hold to compare; nothing was changed.</source>
            <translation>{name} har ikke noe hold å sammenligne; ingenting er endret.</translation>
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
            <source>Insulated: yes, or no for bare metal</source>
            <translation>Isolert: yes, bart metall: no</translation>
        </message>
        <message>
            <source>Highest allowed pressure, with unit</source>
            <translation>Høyeste tillatte trykk, med enhet</translation>
        </message>
        <message>
            <source>{field} (optional)</source>
            <translation>{field} (valgfritt)</translation>
        </message>
        <message>
            <source>e.g. {example}</source>
            <translation>f.eks. {example}</translation>
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
        <name>Core</name>
        <message>
            <source>No hold in the record: nothing shows what is inside.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ingen hold i opptaket: ingenting viser hva som er inni.</translation>
        </message>
        <message>
            <source>Vapour only was shown, but no longer stands: {reason}</source>
            <translation>Bare damp ble vist, men gjelder ikke lenger: {reason}</translation>
        </message>
        <message>
            <source>the gauge is at the top of its range</source>
            <translation>manometeret er øverst i måleområdet</translation>
        </message>
        <message>
            <source>the reading has not changed for {time}, though it used to show noise</source>
            <translation>målingen har ikke endret seg på {time}, enda den før viste støy</translation>
        </message>
        <message>
            <source>the reading jumped by {jump} with the vent closed</source>
            <translation>målingen hoppet {jump} med stengt avblåsning</translation>
        </message>
        <message>
            <source>No verdict: {fault}. Close the vent and compare with the mechanical gauge.</source>
            <translation>Ingen dom: {fault}. Steng avblåsningen og sammenlign med det mekaniske manometeret.</translation>
        </message>
        <message>
            <source>A 16 or 25 bar gauge behind an isolating valve, opened below its range, is better.</source>
            <translation>Bedre er et manometer på 16 eller 25 bar bak en avstengningsventil som åpnes først under måleområdets topp.</translation>
        </message>
        <message>
            <source>A plan advises. Only the gauge and the holds say what is left inside.</source>
            <translation>En plan gir råd. Bare manometeret og holdene sier hva som er igjen inne.</translation>
        </message>
        <message>
            <source>About {liquid} of liquid is in it already: vented straight down it would leave about {ice} of dry ice behind a gauge at zero. Hold above the triple point and boil it out.</source>
            <translation>Omtrent {liquid} væske er alt i den: avblåst rett ned ville den etterlate omtrent {ice} tørris bak et manometer på null. Hold over trippelpunktet og kok den ut.</translation>
        </message>
        <message>
            <source>About {liquid} of liquid is left at the stop pressure, {stop}: vented straight down it would leave about {ice} of dry ice behind a gauge at zero. Hold above the triple point and boil it out.</source>
            <translation>Ved stopptrykket, {stop}, er omtrent {liquid} væske igjen: avblåst rett ned ville den etterlate omtrent {ice} tørris bak et manometer på null. Hold over trippelpunktet og kok den ut.</translation>
        </message>
        <message>
            <source>Air</source>
            <translation>Luft</translation>
        </message>
        <message>
            <source>All of it in the room is {total} when mixed, above the IDLH of {limit}: nobody may be in the room, and the vent must lead outdoors.</source>
            <translation>Alt i rommet gir {total} når det er blandet, over IDLH på {limit}: ingen får være i rommet, og avblåsningen må føres ut i det fri.</translation>
        </message>
        <message>
            <source>All of it in the room is {total} when mixed, above the {name} of {limit} ({averaged}): lead the vent outdoors.</source>
            <translation>Alt i rommet gir {total} når det er blandet, over {name} på {limit} ({averaged}): før avblåsningen ut i det fri.</translation>
        </message>
        <message>
            <source>Altitude not given: sea level, {pressure}, is assumed.</source>
            <translation>Høyde over havet ikke oppgitt: havnivå, {pressure}, er antatt.</translation>
        </message>
        <message>
            <source>An oxygen meter is not a CO2 alarm: at 40 000 ppm CO2, immediately dangerous, it still shows about {oxygen} oxygen. Wear a CO2 meter.</source>
            <translation>En oksygenmåler er ingen CO2-alarm: ved 40 000 ppm CO2, umiddelbart farlig, viser den fortsatt omtrent {oxygen} oksygen. Bær en CO2-måler.</translation>
        </message>
        <message>
            <source>Assumed</source>
            <translation>Antatt</translation>
        </message>
        <message>
            <source>Boiling liquid at the stop pressure is at {temperature}, colder than the rated minimum of {metals}: never repressurise or strike it until it has warmed.</source>
            <translation>Kokende væske ved stopptrykket er på {temperature}, kaldere enn tillatt minimum for {metals}: sett den aldri under trykk igjen og slå aldri på den før den er varm.</translation>
        </message>
        <message>
            <source>CO2 equivalent</source>
            <translation>CO2-ekvivalent</translation>
        </message>
        <message>
            <source>CO2 in it</source>
            <translation>CO2 i den</translation>
        </message>
        <message>
            <source>Gauge range and class not given.</source>
            <translation>Manometerets område og klasse er ikke oppgitt.</translation>
        </message>
        <message>
            <source>If it is left shut</source>
            <translation>Hvis den blir stående stengt</translation>
        </message>
        <message>
            <source>It ends at {end} and the section holds {charge}: it would be damaged.</source>
            <translation>Det slutter ved {end}, og i seksjonen står {charge}: det ville bli skadet.</translation>
        </message>
        <message>
            <source>It ends at {end}, below the stop pressure: it can&apos;t show it.</source>
            <translation>Det slutter ved {end}, under stopptrykket: det kan ikke vise det.</translation>
        </message>
        <message>
            <source>Liquid fraction not given: {share} of the volume is assumed.</source>
            <translation>Væskeandel ikke oppgitt: {share} av volumet er antatt.</translation>
        </message>
        <message>
            <source>Liquid-full: there is no vapour space, and warming raises the pressure {slope} for each kelvin. Open a relief path before anything else.</source>
            <translation>Helt full av væske: det finnes ikke noe damprom, og oppvarming øker trykket {slope} for hver kelvin. Åpne en avlastningsvei før alt annet.</translation>
        </message>
        <message>
            <source>Nitrogen, {now}. Leave it still; the standing-pressure test judges it. Nitrogen smothers: air the place before the section is opened.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Nitrogen, {now}. La det være i ro; stående trykkprøve bedømmer det. Nitrogen kveler: luft ut stedet før seksjonen åpnes.</translation>
        </message>
        <message>
            <source>No liquid is planned for; the holds must still show it. Cores, oil and low legs hold CO2 that a plan can&apos;t see.</source>
            <translation>Det er ikke regnet med væske; holdene må likevel vise det. Kjerner, olje og lave strekk holder CO2 som en plan ikke ser.</translation>
        </message>
        <message>
            <source>No room was given: vent outdoors, away from intakes, doors, pits and low ground.</source>
            <translation>Ikke noe rom oppgitt: blås av i det fri, unna luftinntak, dører, groper og lavt terreng.</translation>
        </message>
        <message>
            <source>Outside surface not given: a cylinder eight diameters long is assumed.</source>
            <translation>Utvendig flate ikke oppgitt: en sylinder på åtte diametre er antatt.</translation>
        </message>
        <message>
            <source>Oxygen would still read {oxygen} then.</source>
            <translation>Oksygen ville da fortsatt vise {oxygen}.</translation>
        </message>
        <message>
            <source>Section</source>
            <translation>Seksjon</translation>
        </message>
        <message>
            <source>Shut in, this charge reaches the relief setting after {kelvin} of warming, before it is as warm as its surroundings: never leave it shut in unwatched.</source>
            <translation>Innestengt når denne fyllingen avlastningstrykket etter {kelvin} oppvarming, før den er like varm som omgivelsene: la den aldri stå innestengt uten tilsyn.</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Pass på</translation>
        </message>
        <message>
            <source>The charge is already at or below the stop pressure, {stop}: do not vent it while liquid may be there; let it warm first.</source>
            <translation>Fyllingen er alt ved eller under stopptrykket, {stop}: ikke blås av så lenge det kan være væske der; la den bli varmere først.</translation>
        </message>
        <message>
            <source>The charge is at {temperature}, colder than the rated minimum of {metals}: never repressurise or strike it until it has warmed.</source>
            <translation>Fyllingen er på {temperature}, kaldere enn tillatt minimum for {metals}: sett den aldri under trykk igjen og slå aldri på den før den er varm.</translation>
        </message>
        <message>
            <source>After what warming this charge reaches the relief setting is not known here: take it that it does, and never leave it shut in unwatched.</source>
            <translation>Etter hvilken oppvarming denne fyllingen når avlastningsinnstillingen, er ikke kjent her: regn med at den gjør det, og la den aldri stå innestengt uten tilsyn.</translation>
        </message>
        <message>
            <source>The charge is below the triple point: no liquid can exist there, and what is not vapour is dry ice. Do not shut it in: when it warms it reaches the boiling pressure of the surroundings, and hundreds of bar where it fills half the section or more. Keep it vented at both ends until it has sublimed.</source>
            <translation>Fyllingen er under trippelpunktet: væske kan ikke finnes der, og det som ikke er damp, er tørris. Steng den ikke inne: når den varmes, når den omgivelsenes koketrykk, og hundrevis av bar der den fyller halve seksjonen eller mer. Hold den åpen i begge ender til den har sublimert.</translation>
        </message>
        <message>
            <source>The charge stands above 75 % of its scale.</source>
            <translation>Fyllingen står over 75 % av skalaen.</translation>
        </message>
        <message>
            <source>The charge&apos;s pressure is at or above the relief setting: expect it to lift.</source>
            <translation>Fyllingens trykk er ved eller over avlastningstrykket: regn med at ventilen åpner.</translation>
        </message>
        <message>
            <source>The gauge&apos;s class is +-{error}: {share} of the {margin} kept above the triple point.</source>
            <translation>Manometerets klasse er +-{error}: {share} av de {margin} som holdes over trippelpunktet.</translation>
        </message>
        <message>
            <source>The liquid swells and fills the section after {kelvin} of warming, at {temperature}; from there every kelvin adds several bar.</source>
            <translation>Væsken utvider seg og fyller seksjonen etter {kelvin} oppvarming, ved {temperature}; derfra gir hver kelvin flere bar.</translation>
        </message>
        <message>
            <source>The pressure is above the critical pressure, {critical} absolute: vapour and liquid can&apos;t be told apart and the charge is not known. Bring it down in the plant first.</source>
            <translation>Trykket er over det kritiske, {critical} absolutt: damp og væske kan ikke skilles, og fyllingen er ikke kjent. Ta det ned i anlegget først.</translation>
        </message>
        <message>
            <source>The stop pressure had to be raised for it.</source>
            <translation>Stopptrykket måtte heves på grunn av det.</translation>
        </message>
        <message>
            <source>The surroundings are no warmer than liquid at the stop pressure: nothing boils it out, and a quiet hold proves nothing.</source>
            <translation>Omgivelsene er ikke varmere enn væske ved stopptrykket: ingenting koker den ut, og et rolig hold beviser ingenting.</translation>
        </message>
        <message>
            <source>The vent is open and the pressure stands at {now}: a plug of dry ice, a shut valve, a gauge cut off, or liquid that boils as fast as it leaves. Close the vent; keep out of line with hose and cover; no flame, no blows.</source>
            <translation>Avblåsningen er åpen og trykket står på {now}: en propp av tørris, en stengt ventil, et avstengt manometer, eller væske som koker like fort som den slipper ut. Steng avblåsningen; hold deg unna linjen til slange og deksel; ingen flamme, ingen slag.</translation>
        </message>
        <message>
            <source>The volume may be {share} more or less, and every mass with it.</source>
            <translation>Volumet kan være {share} større eller mindre, og hver masse med det.</translation>
        </message>
        <message>
            <source>Unmixed it lies on the floor: up to {most} in the lowest half metre, above the {name} of {limit} ({averaged}). Nobody kneels or sits there; mind pits and stairs down.</source>
            <translation>Ublandet ligger det langs gulvet: opptil {most} i den nederste halvmeteren, over {name} på {limit} ({averaged}). Ingen kneler eller sitter der; pass på groper og trapper ned.</translation>
        </message>
        <message>
            <source>Vent</source>
            <translation>Avblåsning</translation>
        </message>
        <message>
            <source>What is left</source>
            <translation>Det som er igjen</translation>
        </message>
        <message>
            <source>a quiet gauge only means that little heat comes in</source>
            <translation>et rolig manometer betyr bare at lite varme kommer inn</translation>
        </message>
        <message>
            <source>about {snow} of it turns to snow at the outlet and can plug it; keep the section above the stop pressure, hose restrained and bonded, nobody downhill</source>
            <translation>omtrent {snow} av det blir til snø ved utløpet og kan tette det; hold seksjonen over stopptrykket, slangen sikret og jordet, ingen nedenfor</translation>
        </message>
        <message>
            <source>air changes per hour</source>
            <translation>luftskifter per time</translation>
        </message>
        <message>
            <source>all of it in {room}</source>
            <translation>alt i {room}</translation>
        </message>
        <message>
            <source>austenitic stainless 304L / 316L</source>
            <translation>austenittisk rustfritt 304L / 316L</translation>
        </message>
        <message>
            <source>boiling there at</source>
            <translation>koker der ved</translation>
        </message>
        <message>
            <source>carbon steel A106 / A53 grade B</source>
            <translation>karbonstål A106 / A53 grade B</translation>
        </message>
        <message>
            <source>clear to {limit} in</source>
            <translation>ned til {limit} på</translation>
        </message>
        <message>
            <source>copper</source>
            <translation>kobber</translation>
        </message>
        <message>
            <source>drain the liquid from a low point, outdoors only</source>
            <translation>tapp væsken fra et lavpunkt, bare i det fri</translation>
        </message>
        <message>
            <source>dry ice if straight down</source>
            <translation>tørris hvis rett ned</translation>
        </message>
        <message>
            <source>exceeded on the floor; {limit}</source>
            <translation>overskredet ved gulvet; {limit}</translation>
        </message>
        <message>
            <source>exceeded; {limit}</source>
            <translation>overskredet; {limit}</translation>
        </message>
        <message>
            <source>fresh air, if vented indoors</source>
            <translation>friskluft ved avblåsning inne</translation>
        </message>
        <message>
            <source>gauge</source>
            <translation>manometer</translation>
        </message>
        <message>
            <source>give the charge&apos;s temperature or its pressure before the vent: one of them, not both</source>
            <translation>oppgi fyllingens temperatur eller trykk før avblåsningen: én av dem, ikke begge</translation>
        </message>
        <message>
            <source>heat to boil it out</source>
            <translation>varme for å koke den ut</translation>
        </message>
        <message>
            <source>hold and vent in short bursts while ambient heat boils it, bare pipe, its metal as cold as the liquid (warmer metal boils some of it sooner)</source>
            <translation>hold og blås av i korte støt mens omgivelsesvarme koker den, uisolert rør, metallet like kaldt som væsken (varmere metall koker noe av den tidligere)</translation>
        </message>
        <message>
            <source>immediately dangerous</source>
            <translation>umiddelbart farlig</translation>
        </message>
        <message>
            <source>it stays below that when mixed</source>
            <translation>det holder seg under når det er blandet</translation>
        </message>
        <message>
            <source>kept; {limit}</source>
            <translation>overholdt; {limit}</translation>
        </message>
        <message>
            <source>limit {limit}</source>
            <translation>grense {limit}</translation>
        </message>
        <message>
            <source>liquid at the stop pressure</source>
            <translation>væske ved stopptrykket</translation>
        </message>
        <message>
            <source>liquid-full</source>
            <translation>helt full av væske</translation>
        </message>
        <message>
            <source>liquid-full, after</source>
            <translation>full av væske, etter</translation>
        </message>
        <message>
            <source>low-temperature steel A333 grade 6</source>
            <translation>lavtemperaturstål A333 grade 6</translation>
        </message>
        <message>
            <source>metal too cold there</source>
            <translation>metall for kaldt der</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ingen</translation>
        </message>
        <message>
            <source>none of those compared</source>
            <translation>ingen av de sammenlignede</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>ikke kjent</translation>
        </message>
        <message>
            <source>of it dry ice</source>
            <translation>derav tørris</translation>
        </message>
        <message>
            <source>of it liquid</source>
            <translation>derav væske</translation>
        </message>
        <message>
            <source>pressure per kelvin not known at this temperature</source>
            <translation>trykk per kelvin ikke kjent ved denne temperaturen</translation>
        </message>
        <message>
            <source>relief setting</source>
            <translation>avlastningstrykk</translation>
        </message>
        <message>
            <source>several bar</source>
            <translation>flere bar</translation>
        </message>
        <message>
            <source>stop at</source>
            <translation>stopp ved</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>temperatur</translation>
        </message>
        <message>
            <source>the ambient temperature</source>
            <translation>omgivelsestemperaturen</translation>
        </message>
        <message>
            <source>the charge pressure</source>
            <translation>fyllingens trykk</translation>
        </message>
        <message>
            <source>the charge temperature</source>
            <translation>fyllingens temperatur</translation>
        </message>
        <message>
            <source>the discharge coefficient</source>
            <translation>utstrømningskoeffisienten</translation>
        </message>
        <message>
            <source>the liquid fraction (by volume)</source>
            <translation>væskeandelen (av volumet)</translation>
        </message>
        <message>
            <source>the metal stays at the boiling temperature: never repressurise it, never strike it</source>
            <translation>metallet blir på koketemperaturen: sett det aldri under trykk igjen, slå aldri på det</translation>
        </message>
        <message>
            <source>the relief setting</source>
            <translation>avlastningstrykket</translation>
        </message>
        <message>
            <source>the room</source>
            <translation>rommet</translation>
        </message>
        <message>
            <source>the same, insulated pipe</source>
            <translation>det samme, isolert rør</translation>
        </message>
        <message>
            <source>the vent bore</source>
            <translation>avblåsningsboringen</translation>
        </message>
        <message>
            <source>the volume</source>
            <translation>volumet</translation>
        </message>
        <message>
            <source>this charge fills it at</source>
            <translation>denne fyllingen fyller den ved</translation>
        </message>
        <message>
            <source>this charge, after</source>
            <translation>denne fyllingen, etter</translation>
        </message>
        <message>
            <source>this log is simulated and the job is not: it would become practice that can&apos;t be signed; choose the real log</source>
            <translation>denne loggen er simulert og jobben er det ikke: den ville blitt øvelse som ikke kan signeres; velg den ekte loggen</translation>
        </message>
        <message>
            <source>this section</source>
            <translation>denne seksjonen</translation>
        </message>
        <message>
            <source>time to the stop pressure</source>
            <translation>tid til stopptrykket</translation>
        </message>
        <message>
            <source>triple point here</source>
            <translation>trippelpunkt her</translation>
        </message>
        <message>
            <source>unmixed, lowest 0.5 m</source>
            <translation>ublandet, nederste 0,5 m</translation>
        </message>
        <message>
            <source>vent open or watched: a shut section climbs; no flame; not hotter than the hand bears</source>
            <translation>avblåsning åpen eller under tilsyn: en stengt seksjon stiger; ingen flamme; ikke varmere enn hånden tåler</translation>
        </message>
        <message>
            <source>vented by then</source>
            <translation>avblåst innen da</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>volum</translation>
        </message>
        <message>
            <source>warm air on the low points, {heat} into the metal</source>
            <translation>varmluft på lavpunktene, {heat} inn i metallet</translation>
        </message>
        <message>
            <source>while vented, ventilated</source>
            <translation>under avblåsning, ventilert</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} døgn</translation>
        </message>
        <message>
            <source>{kelvin} of warming</source>
            <translation>{kelvin} oppvarming</translation>
        </message>
        <message>
            <source>{mass} ({share} by volume)</source>
            <translation>{mass} ({share} av volumet)</translation>
        </message>
        <message>
            <source>{mass}, at {temperature}</source>
            <translation>{mass}, ved {temperature}</translation>
        </message>
        <message>
            <source>{name} must be a number from {low} to {high}, not {value}</source>
            <translation>{name} må være et tall fra {low} til {high}, ikke {value}</translation>
        </message>
        <message>
            <source>{now} is below the triple point ({triple}) and liquid was not excluded: it turns to dry ice. Close the vent and hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>{now} er under trippelpunktet ({triple}) og væske var ikke utelukket: den blir til tørris. Steng avblåsningen og hold.</translation>
        </message>
        <message>
            <source>{now}: {above} above the stop pressure of {stop}. Vapour from the top, slowly.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>{now}: {above} over stopptrykket på {stop}. Damp fra toppen, sakte.</translation>
        </message>
        <message>
            <source>{temperature} is above the critical temperature of {critical}: there is no liquid surface and no saturation pressure, so neither the charge nor anything that follows from it is known. Let it cool first.</source>
            <translation>{temperature} er over den kritiske temperaturen på {critical}: det finnes ikke noe væskespeil og ikke noe metningstrykk, så verken fyllingen eller noe som følger av den er kjent. La den kjølne først.</translation>
        </message>
        <message>
            <source>{time} through {bore}, fully open, at the least</source>
            <translation>{time} gjennom {bore}, helt åpen, minst</translation>
        </message>
        <message>
            <source>{time}; poorly mixed {poor}</source>
            <translation>{time}; dårlig blandet {poor}</translation>
        </message>
        <message>
            <source>{value} is no reading of {quantity}: it lies between {least} and {most}. Read the instrument again.</source>
            <translation>{value} er ingen mulig måling ({quantity}): den ligger mellom {least} og {most}. Les av instrumentet på nytt.</translation>
        </message>
        <message>
            <source>{way}, not before {time}</source>
            <translation>{way}, ikke før {time}</translation>
        </message>
        <message>
            <source>{now}, closed in. With meter, second person, hose, outlet and protection in order: vent vapour from the top, slowly, to {stop}.</source>
            <translation>{now}, innestengt. Når måler, andre person, slange, utløp og verneutstyr er i orden: blås av damp fra toppen, sakte, til {stop}.</translation>
        </message>
        <message>
            <source>The hold has begun: leave the vent shut and everything still.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Holdet har begynt: la avblåsningen være stengt og alt i ro.</translation>
        </message>
        <message>
            <source>no pressure</source>
            <translation>intet trykk</translation>
        </message>
        <message>
            <source>No reading has come yet; rely on the mechanical gauge.</source>
            <translation>Ingen måling er kommet ennå; stol på det mekaniske manometeret.</translation>
        </message>
        <message>
            <source>Readings have stopped: close the vent and read the mechanical gauge; if it rises, vent.</source>
            <translation>Målingene har stoppet: steng avblåsningen og les av det mekaniske manometeret; stiger det, blås av.</translation>
        </message>
        <message>
            <source>Closed in at {now}, over {limit}: 90 % of the lowest of relief setting, rated pressure and gauge range.</source>
            <translation>Innestengt ved {now}, over {limit}: 90 % av det laveste av sikkerhetsventilens åpningstrykk, tillatt trykk og manometerets område.</translation>
        </message>
        <message>
            <source>The pressure stands at the triple point ({now}) with the vent open: liquid is freezing. Close the vent; keep out of line with hose and cover; never strike a plug.</source>
            <translation>Trykket står på trippelpunktet ({now}) med åpen avblåsning: væske fryser. Steng avblåsningen; hold deg unna linjen til slange og deksel; slå aldri på en propp.</translation>
        </message>
        <message>
            <source>At {now} without a verdict before: snow can lie under a gauge at zero. Leave the vented side open, let it warm, keep out of line; a gauge at zero is no proof.</source>
            <translation>Ved {now} uten dom først: det kan ligge snø selv om manometeret viser null. La den avblåste siden stå åpen, la det varmes, hold deg unna linjen; null på manometeret er ikke bevis.</translation>
        </message>
        <message>
            <source>At {now} after vapour only. Open both bleeds and leave them open; CO2 meter at the low spots; keep out of line of the cover. Then the site&apos;s own procedure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Ved {now} etter bare damp. Åpne begge luftingene og la dem stå åpne; CO2-måler ved lavpunktene; hold deg unna linjen til dekselet. Deretter anleggets egen prosedyre.</translation>
        </message>
        <message>
            <source>Near 1 bar g ({now}): close and watch for a climb to {triple}, the sign of dry ice.</source>
            <translation>Nær 1 bar g ({now}): steng og se etter en stigning til {triple}, tegnet på tørris.</translation>
        </message>
        <message>
            <source>Now {now}. On to zero.</source>
            <translation>Nå {now}. Videre til null.</translation>
        </message>
        <message>
            <source>Now {now}. Stop near 1 bar g and hold for dry ice; a stand near {triple} means dry ice.</source>
            <translation>Nå {now}. Stopp nær 1 bar g og hold for tørris; blir det stående nær {triple}, er det tørris.</translation>
        </message>
        <message>
            <source>{now}{rate}; stop pressure {stop}, triple point {triple}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>{now}{rate}; stopptrykk {stop}, trippelpunkt {triple}.</translation>
        </message>
        <message>
            <source>{now}. A steep rise would mean liquid-full; {time} to see it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>{now}. En bratt stigning ville bety full av væske; {time} for å se det.</translation>
        </message>
        <message>
            <source>Open both bleeds and leave them open; keep out of line of the cover.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Åpne begge luftingene og la dem stå åpne; hold deg unna linjen til dekselet.</translation>
        </message>
        <message>
            <source>hold {number} starts</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>hold {number} begynner</translation>
        </message>
        <message>
            <source>no reading for more than {time}</source>
            <translation>ingen måling på mer enn {time}</translation>
        </message>
        <message>
            <source>readings stopped</source>
            <translation>målingene stoppet</translation>
        </message>
        <message>
            <source>readings are back; a verdict starts from here</source>
            <translation>målingene er tilbake; en dom begynner herfra</translation>
        </message>
        <message>
            <source>vapour only no longer stands: {why}</source>
            <translation>bare damp gjelder ikke lenger: {why}</translation>
        </message>
        <message>
            <source>hold {number}: {why}; its evidence starts anew</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>hold {number}: {why}; bevisføringen begynner på nytt</translation>
        </message>
        <message>
            <source>check the gauge: {fault}</source>
            <translation>sjekk manometeret: {fault}</translation>
        </message>
        <message>
            <source>the clock ran backwards</source>
            <translation>klokken gikk bakover</translation>
        </message>
        <message>
            <source>no reading for {time}: close the vent and read the mechanical gauge</source>
            <translation>ingen måling på {time}: steng avblåsningen og les av det mekaniske manometeret</translation>
        </message>
        <message>
            <source>Not known yet: {why}, so the hold&apos;s evidence starts anew.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ikke kjent ennå: {why}, så holdets bevisføring begynner på nytt.</translation>
        </message>
        <message>
            <source>the metal at {now} is below its rated minimum of {least}: no blows, no repressurising until it has warmed</source>
            <translation>metallet på {now} er under sin tillatte minimumstemperatur på {least}: ingen slag, ikke sett trykk på før det er varmt</translation>
        </message>
        <message>
            <source>below the local triple point with vapour only standing: watch for the shelf</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>under det lokale trippelpunktet mens bare damp gjelder: se etter trinnet</translation>
        </message>
        <message>
            <source>ALARM: below the local triple point before vapour only was shown; liquid left turns to dry ice</source>
            <translation>ALARM: under det lokale trippelpunktet før bare damp var vist; væske som er igjen blir til tørris</translation>
        </message>
        <message>
            <source>hold {number} ends: {charge}. {reason}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>hold {number} slutter: {charge}. {reason}</translation>
        </message>
        <message>
            <source>hold {number}: {charge}. {reason}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold {number}: {charge}. {reason}</translation>
        </message>
        <message>
            <source>the pressure stands at the triple point</source>
            <translation>trykket står på trippelpunktet</translation>
        </message>
        <message>
            <source>the clock ran backwards; the hold starts anew</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>klokken gikk bakover; holdet begynner på nytt</translation>
        </message>
        <message>
            <source>vent open</source>
            <translation>avblåsning åpen</translation>
        </message>
        <message>
            <source>vent open, found from the pressure</source>
            <translation>avblåsning åpen, funnet av trykket</translation>
        </message>
        <message>
            <source>vent closed</source>
            <translation>avblåsning stengt</translation>
        </message>
        <message>
            <source>vent closed, found from the pressure</source>
            <translation>avblåsning stengt, funnet av trykket</translation>
        </message>
        <message>
            <source>dry ice: {reason}</source>
            <translation>tørris: {reason}</translation>
        </message>
        <message>
            <source>dry ice shows</source>
            <translation>tørris viser seg</translation>
        </message>
        <message>
            <source>line {line}: {reason}</source>
            <translation>linje {line}: {reason}</translation>
        </message>
        <message>
            <source>the gauge shows no value: {cell}</source>
            <translation>manometeret viser ingen verdi: {cell}</translation>
        </message>
        <message>
            <source>the hold shows liquid</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>holdet viser væske</translation>
        </message>
        <message>
            <source>the gauge was out of range</source>
            <translation>manometeret var utenfor måleområdet</translation>
        </message>
        <message>
            <source>flow into the section is suspected</source>
            <translation>mistanke om strømning inn i seksjonen</translation>
        </message>
        <message>
            <source>the hold no longer shows it</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>holdet viser det ikke lenger</translation>
        </message>
        <message>
            <source>the two gauges differ by {difference}</source>
            <translation>de to manometrene avviker med {difference}</translation>
        </message>
        <message>
            <source>the vent is open and the pressure does not fall: a plug, a gauge cut off, or liquid that boils as fast as it leaves</source>
            <translation>avblåsningen er åpen og trykket faller ikke: en propp, et avstengt manometer, eller væske som koker like fort som den slipper ut</translation>
        </message>
        <message>
            <source>the pressure stands at the triple point with the vent open: liquid is freezing</source>
            <translation>trykket står på trippelpunktet med åpen avblåsning: væske fryser</translation>
        </message>
        <message>
            <source>rising between {least} and {most}</source>
            <translation>stigning mellom {least} og {most}</translation>
        </message>
        <message>
            <source>{inside}: after {time} the pressure still rises {slope} and {why}.</source>
            <translation>{inside}: etter {time} stiger trykket fortsatt {slope}, og {why}.</translation>
        </message>
        <message>
            <source>Not known yet: {between}; liquid would keep up {least} or more{given}.</source>
            <translation>Ikke kjent ennå: {between}; væske ville holde minst {least}{given}.</translation>
        </message>
        <message>
            <source>Hold on; if it does not settle, vent to the stop pressure and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Fortsett å holde; roer det seg ikke, blås av til stopptrykket og hold igjen.</translation>
        </message>
        <message>
            <source>the clamp is only {drive} from saturation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>klemmeføleren er bare {drive} fra metning</translation>
        </message>
        <message>
            <source>dry metal that warms gives at most {most}</source>
            <translation>tørt metall som varmes, gir høyst {most}</translation>
        </message>
        <message>
            <source>{inside}: {pressure} and rising {slope} is more than gas warming from {start} can reach ({bound}).</source>
            <translation>{inside}: {pressure} og en stigning på {slope} er mer enn gass som varmes fra {start}, kan nå ({bound}).</translation>
        </message>
        <message>
            <source>Not known yet: {time} into the hold; the first rise is gas warming in every case.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ikke kjent ennå: {time} ut i holdet; den første stigningen er alltid gass som varmes.</translation>
        </message>
        <message>
            <source>Keep holding.</source>
            <translation>Fortsett å holde.</translation>
        </message>
        <message>
            <source>Not known: the reading has not moved since the vent closed; a gauge that is cut off looks the same. Crack the vent and see it answer.</source>
            <translation>Ikke kjent: målingen har ikke rørt seg siden avblåsningen ble stengt; et avstengt manometer ser likt ut. Åpne avblåsningen så vidt og se om det svarer.</translation>
        </message>
        <message>
            <source>Crack the vent and see the gauge answer.</source>
            <translation>Åpne avblåsningen så vidt og se om manometeret svarer.</translation>
        </message>
        <message>
            <source>Not known: {pressure} is too near the triple point to tell a quiet gas from melting dry ice.</source>
            <translation>Ikke kjent: {pressure} er for nær trippelpunktet til å skille rolig gass fra tørris som smelter.</translation>
        </message>
        <message>
            <source>Keep holding: dry ice that has melted lets the pressure climb on.</source>
            <translation>Fortsett å holde: når tørrisen har smeltet, stiger trykket videre.</translation>
        </message>
        <message>
            <source>Not known: {between}, but the section has been below the triple point, and dry ice that melts swallows the heat that would show liquid.</source>
            <translation>Ikke kjent: {between}, men seksjonen har vært under trippelpunktet, og tørris som smelter, sluker varmen som ville vist væske.</translation>
        </message>
        <message>
            <source>Warm the lowest point {drive} above saturation and hold 5 min.</source>
            <translation>Varm det laveste punktet til {drive} over metning og hold i 5 min.</translation>
        </message>
        <message>
            <source>Not known: rising about {slope}, less than the {gain} that the metal&apos;s warming gives shut-in gas by itself: an outward leak may hide boiling.</source>
            <translation>Ikke kjent: stiger omtrent {slope}, mindre enn de {gain} som oppvarmingen av metallet alene gir innestengt gass: en lekkasje ut kan skjule koking.</translation>
        </message>
        <message>
            <source>Vapour only: this hold has shown it, and after {time} nothing speaks against it: rising about {slope}, and liquid above the allowable amount would keep up {least} or more ({source}).</source>
            <translation>Bare damp: dette holdet har vist det, og etter {time} taler ingenting imot: stiger omtrent {slope}; væske over tillatt mengde ville holde minst {least} ({source}).</translation>
        </message>
        <message>
            <source>Prove the vent and the joints tight, and hold again.</source>
            <translation>Vis at avblåsning og koblinger er tette, og hold igjen.</translation>
        </message>
        <message>
            <source>Not known yet: {between}, but the curve is not that of a closed section left alone.</source>
            <translation>Ikke kjent ennå: {between}, men kurven er ikke den til en stengt seksjon i ro.</translation>
        </message>
        <message>
            <source>Leave the section still and hold again.</source>
            <translation>La seksjonen være i ro og hold igjen.</translation>
        </message>
        <message>
            <source>Not known: {between}, but it rose to {pressure} first; gas rises less from the same pressure the next time, liquid as much again.</source>
            <translation>Ikke kjent: {between}, men først steg det til {pressure}; gass stiger mindre fra samme trykk neste gang, væske like mye igjen.</translation>
        </message>
        <message>
            <source>Vent to the stop pressure and hold again: the rise must be smaller.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Blås av til stopptrykket og hold igjen: stigningen må være mindre.</translation>
        </message>
        <message>
            <source>The clamp is {drive} above saturation: warm the lowest point to {wanted} above it and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Klemmeføleren er {drive} over metning: varm det laveste punktet til {wanted} over og hold igjen.</translation>
        </message>
        <message>
            <source>Put a clamp on the lowest point, or say that the metal is bare.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Sett en klemmeføler på det laveste punktet, eller oppgi at metallet er uisolert.</translation>
        </message>
        <message>
            <source>Not known: {between}, and with no metal shown warm this hold has no power; insulated liquid can rise as slowly as {least}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ikke kjent: {between}, og uten metall som er vist varmt, har dette holdet ingen beviskraft; isolert væske kan stige så sakte som {least}.</translation>
        </message>
        <message>
            <source>Vapour only: after {time} the pressure rises at most {most}; liquid above the allowable amount would keep up {least} or more{given}.</source>
            <translation>Bare damp: etter {time} stiger trykket høyst {most}; væske over tillatt mengde ville holde minst {least}{given}.</translation>
        </message>
        <message>
            <source>Not known: {between}, and the clamp cools though the vent is shut, or the upper one is at saturation: what is near it may boil.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Ikke kjent: {between}, og klemmeføleren blir kaldere enda avblåsningen er stengt, eller den øvre er ved metning: det som er nær den, kan koke.</translation>
        </message>
        <message>
            <source>Hold on until both clamps stand or warm.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Fortsett å holde til begge klemmefølerne står eller blir varmere.</translation>
        </message>
        <message>
            <source>{most}, {part} of it the metal&apos;s warming</source>
            <translation>{most}, av dette {part} fra oppvarmingen av metallet</translation>
        </message>
        <message>
            <source>Flow past a closed valve suspected: {here_slope} near {here} and {there_slope} near {there} are one mass flow at two pressures; boiling would change, unless the liquid takes in little heat.</source>
            <translation>Mistanke om lekkasje forbi en stengt ventil: {here_slope} nær {here} og {there_slope} nær {there} er samme massestrøm ved to trykk; koking ville endret seg, med mindre væsken tar opp lite varme.</translation>
        </message>
        <message>
            <source>the pressure is higher than it was shown for; something came in</source>
            <translation>trykket er høyere enn det ble vist for; noe kom inn</translation>
        </message>
        <message>
            <source>the vent valve is said to be shut while the section is vented; from here it is found from the pressure</source>
            <translation>avblåsningsventilen sies å være stengt mens seksjonen blåses av; herfra finnes den av trykket</translation>
        </message>
        <message>
            <source>the pressure rises with the vent open</source>
            <translation>trykket stiger med åpen avblåsning</translation>
        </message>
        <message>
            <source>Not known: {between}, but no clamp shows the lowest metal warm; boiling in balance with an outward leak stands as still, and after a vent it climbs back to {pressure}.</source>
            <translation>Ikke kjent: {between}, men ingen klemmeføler viser at det laveste metallet er varmt; koking i balanse med en lekkasje utover står like stille og stiger etter en avblåsning tilbake til {pressure}.</translation>
        </message>
        <message>
            <source>Put a clamp on the lowest point, or vent to the stop pressure and hold again: it must stay lower.</source>
            <translation>Sett en klemmeføler på det laveste punktet, eller blås av til stopptrykket og hold igjen: Trykket må bli liggende lavere.</translation>
        </message>
        <message>
            <source>the gauge does not answer the vent</source>
            <translation>manometeret svarer ikke på avblåsningen</translation>
        </message>
        <message>
            <source>A vent that is open to the air can&apos;t stand at {now}: the gauge, its plug or its datum is wrong. Read the mechanical gauge.</source>
            <translation>En avblåsning som er åpen mot luft, kan ikke stå på {now}: manometeret, pluggen eller referansen er feil. Les av det mekaniske manometeret.</translation>
        </message>
        <message>
            <source>No hold near 1 bar g was made: snow can lie under a gauge at zero.</source>
            <translation>Det ble ikke holdt nær 1 bar g: snø kan ligge under et manometer på null.</translation>
        </message>
        <message>
            <source>the lowest metal is at saturation</source>
            <translation>det laveste metallet er ved metning</translation>
        </message>
        <message>
            <source>The clamp&apos;s reading never changes, and metal cools in a vent: see that it is alive and on the lowest metal; touched, it must move.</source>
            <translation>Verdien fra klemmeføleren endrer seg aldri, og metall kjølner i en avblåsning: se at den virker og sitter på det laveste metallet; når du tar på den, må den røre seg.</translation>
        </message>
        <message>
            <source>The clamp has jumped, as one that hangs in the air does: fix it to the lowest point again.</source>
            <translation>Klemmeføleren har hoppet, som en som henger i luften: fest den til det laveste punktet igjen.</translation>
        </message>
        <message>
            <source>Flow past a closed valve suspected: it rises {late_slope} near {late}, as {early_slope} near {early} before, though the lowest metal is only {late_drive} above saturation now and was {early_drive}; boiling would fade.</source>
            <translation>Mistanke om lekkasje forbi en stengt ventil: det stiger {late_slope} nær {late}, som {early_slope} nær {early} før, selv om det laveste metallet nå er bare {late_drive} over metning og var {early_drive}; koking ville avta.</translation>
        </message>
        <message>
            <source>{count} holds in a row rose alike, and what boils dwindles: see that the isolation valves are shut and tight before venting again.</source>
            <translation>{count} holdetider på rad steg likt, og det som koker, minker: se etter at avstengningsventilene er stengt og tette før neste avblåsning.</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Væske</translation>
        </message>
        <message>
            <source>Liquid or leak-by</source>
            <translation>Væske eller lekkasje</translation>
        </message>
        <message>
            <source>Hold on for {time} more: two pressures tell liquid from flow past a valve.</source>
            <translation>Hold {time} til: to trykk skiller væske fra lekkasje forbi en ventil.</translation>
        </message>
        <message>
            <source>the lowest metal is {drive} above saturation</source>
            <translation>det laveste metallet er {drive} over metning</translation>
        </message>
        <message>
            <source>the metal is bare</source>
            <translation>metallet er uisolert</translation>
        </message>
        <message>
            <source>{time}, within {width} of it</source>
            <translation>{time}, innenfor {width}</translation>
        </message>
        <message>
            <source>level for {time} after rising {rise}</source>
            <translation>jevnt i {time} etter en stigning på {rise}</translation>
        </message>
        <message>
            <source>Liquid-full: the closed section rises {detail}, far faster than liquid with vapour above it can; open the vent path at once.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>Full av væske: den stengte seksjonen stiger {detail}, mye raskere enn væske med damp over kan; åpne avblåsningsveien straks.</translation>
        </message>
        <message>
            <source>Not vented yet: a closed charge at saturation says nothing of how much liquid there is.</source>
            <translation>Ikke blåst av ennå: en stengt fylling ved metning sier ikke hvor mye væske det er.</translation>
        </message>
        <message>
            <source>{slope}, {steepness} per kelvin</source>
            <translation>{slope}, {steepness} per kelvin</translation>
        </message>
        <message>
            <source>Not vented yet; rising {slope}: heat, or flow past a valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Ikke blåst av ennå; stiger {slope}: varme, eller lekkasje forbi en ventil.</translation>
        </message>
        <message>
            <source>Not known yet: rising between {least} and {most} at {pressure}; dry ice would go on climbing to the triple point.</source>
            <translation>Ikke kjent ennå: stigning mellom {least} og {most} ved {pressure}; tørris ville stige videre til trippelpunktet.</translation>
        </message>
        <message>
            <source>Nitrogen: a standing-pressure test, judged as one (see the job or report); nothing here tells of CO2.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Nitrogen: en stående trykkprøve, bedømt som det (se jobben eller rapporten); ingenting her sier noe om CO2.</translation>
        </message>
        <message>
            <source>Not known: {fault}, so the hold proves nothing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ikke kjent: {fault}, så holdet beviser ingenting.</translation>
        </message>
        <message>
            <source>Dry ice: the pressure climbed to the triple point and stands there ({shelf}). Keep the vented side open, warm gently, keep clear; no time alone ends it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Tørris: trykket steg til trippelpunktet og står der ({shelf}). La den avblåste siden stå åpen, varm forsiktig, hold avstand; ingen tid alene avslutter det.</translation>
        </message>
        <message>
            <source>closed, before the first vent</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>stengt, før første avblåsning</translation>
        </message>
        <message>
            <source>the closed time before the vent ends: {reason}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>den stengte tiden før avblåsningen er over: {reason}</translation>
        </message>
        <message>
            <source>Vapour only: together with the holds before, at most {share} of the {least} that liquid above the allowable amount would keep up{given}; this hold, after {time}, shows {rising}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Bare damp: sammen med de tidligere holdene høyst {share} av de {least} som væske over tillatt mengde ville holde{given}; dette holdet viser {rising} etter {time}.</translation>
        </message>
        <message>
            <source>Not known: {between}, quieter than liquid, but nothing shows that the vent is shut; a vent that carries off what boils stands as still.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Ikke kjent: {between}, roligere enn væske, men ingenting viser at avblåsningen er stengt; en som fører bort det som koker, står like stille.</translation>
        </message>
        <message>
            <source>Say when the vent is opened and when it is closed, and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Si fra når avblåsningen åpnes og stenges, og hold igjen.</translation>
        </message>
        <message>
            <source>Not known yet: {between}; a small loss by a leak, which would hide boiling, is not excluded.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Ikke kjent ennå: {between}; et lite tap gjennom en lekkasje, som ville skjule koking, er ikke utelukket.</translation>
        </message>
        <message>
            <source>Hold on; a longer hold, or one more like it, narrows it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Hold videre; et lengre hold, eller ett til, snevrer det inn.</translation>
        </message>
        <message>
            <source>Hold on: boiling that gathers pace will show.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Hold videre: koking som tar fart, vil vise seg.</translation>
        </message>
        <message>
            <source>Not known: rising at most {most}, but faster now than before; what warms dry gas fades, and only boiling gathers pace.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Ikke kjent: stiger høyst {most}, men raskere nå enn før; det som varmer tørr gass avtar, bare koking tar fart.</translation>
        </message>
        <message>
            <source>Hold on; if it does not settle, vent to the stop pressure and hold again. Give the section&apos;s volume: in a small one liquid would show more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Fortsett å holde; roer det seg ikke, blås av til stopptrykket og hold igjen. Oppgi volumet av seksjonen: i en liten ville væske vist seg tydeligere.</translation>
        </message>
        <message>
            <source>Not known: {between}, but the hold before lost pressure, or gained less than its metal&apos;s warming gives: an outward leak may hide boiling.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Ikke kjent: {between}, men forrige hold tapte trykk eller fikk mindre enn oppvarmingen av metallet gir: en lekkasje utover kan skjule koking.</translation>
        </message>
        <message>
            <source>Not known: a gauge that stands at {pressure} can sit over dry ice; what it gives off leaves by a joint that leaks or a vent not quite shut.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Ikke kjent: et manometer som står på {pressure} kan stå over tørris; det den avgir går ut gjennom en utett skjøt eller en avblåsning som ikke er tett.</translation>
        </message>
        <message>
            <source>Keep the vented side open and warm the lowest point; only a tight section well above zero can show it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>La den avblåste siden stå åpen og varm det laveste punktet; bare en tett seksjon godt over null kan vise det.</translation>
        </message>
        <message>
            <source>Half of the simulated sections that rise like this are not boiled off before {time}; with {power} W of gentle warmth on the low point, not before {warmed}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: boil off</translatorcomment>
            <translation>Halvparten av de simulerte seksjonene som stiger slik, er ikke kokt av før {time}; med {power} W mild varme på det laveste punktet, ikke før {warmed}.</translation>
        </message>
        <message>
            <source>Not known: {between}, but it rose to {pressure}, further than gas as warm as the clamp ({clamp}) can: something boiled, and may yet.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Ikke kjent: {between}, men det steg til {pressure}, lenger enn gass som er så varm som klemmeføleren ({clamp}), kan: noe kokte, og koker kanskje ennå.</translation>
        </message>
        <message>
            <source>Not known: {between}, but a hold before showed that {lost} or more leaves the section; with that added, the {least} of liquid is not excluded.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Ikke kjent: {between}, men et tidligere hold viste at {lost} eller mer forlater seksjonen; med det lagt til er væskens {least} ikke utelukket.</translation>
        </message>
        <message>
            <source>Say whether the metal is insulated: were it bare, liquid would keep up {least}, and this hold would decide.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Si om metallet er isolert: var det bart, ville væske holdt oppe {least}, og dette holdet ville avgjort.</translation>
        </message>
        <message>
            <source>Not known yet: {time} into the hold; one before fell or gained too little, and before {needed} boiling in balance with a leak can&apos;t be told from quiet.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Ennå ikke kjent: {time} inn i holdet; et tidligere falt eller steg for lite, og før {needed} kan koking i likevekt med en lekkasje ikke skilles fra ro.</translation>
        </message>
        <message>
            <source>{time} s without the rise of gas shut in</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>{time} s uten stigningen fra innestengt gass</translation>
        </message>
        <message>
            <source>Not known yet: {time} into a hold that began below the triple point; dry ice would climb to {triple} and stand there.</source>
            <translation>Ikke kjent ennå: {time} inn i en holdetid som begynte under trippelpunktet; tørris ville stige til {triple} og bli stående der.</translation>
        </message>
        <message>
            <source>, with metal {drive} above the triple point</source>
            <translation>, med metall {drive} over trippelpunktet</translation>
        </message>
        <message>
            <source>No dry ice shows: {time} at {pressure}{given}, rising at most {most}; dry ice would give {least} or more.</source>
            <translation>Ingen tørris å se: {time} ved {pressure}{given}, stigning høyst {most}; tørris ville gitt minst {least}.</translation>
        </message>
        <message>
            <source>Dry ice was seen and nothing shows it gone: {pressure}, rising {slope} (snow there is at {snow}).</source>
            <translation>Tørris er sett, og ingenting viser at den er borte: {pressure}, stigning {slope} (snø der har {snow}).</translation>
        </message>
        <message>
            <source>Dry ice</source>
            <translation>Tørris</translation>
        </message>
        <message>
            <source>Dry ice, or flow past a closed valve</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Tørris, eller lekkasje forbi en stengt ventil</translation>
        </message>
        <message>
            <source>{found}: below the triple point at {pressure} and still climbing {slope} after {time}; metal warming gives at most {most} (snow there is at {snow}).</source>
            <translation>{found}: under trippelpunktet ved {pressure} og stiger fortsatt {slope} etter {time}; oppvarming av metallet gir høyst {most} (snø der har {snow}).</translation>
        </message>
        <message>
            <source>Not known yet: the hold has just begun; the first rise is gas warming in every case.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ikke kjent ennå: holdet har nettopp begynt; den første stigningen er alltid gass som varmes.</translation>
        </message>
        <message>
            <source>Not known: the closed section loses pressure ({slope}); an outward leak or a vent not shut can hide boiling. Prove the vent shut and hold again.</source>
            <translation>Ikke kjent: den stengte seksjonen taper trykk ({slope}); en lekkasje utover eller en avblåsning som ikke er tett, kan skjule koking. Vis at avblåsningen er stengt, og hold igjen.</translation>
        </message>
        <message>
            <source>Hold on to {pressure} before venting again; mild warmth on the low point speeds it.</source>
            <translation>Fortsett å holde til {pressure} før du blåser av igjen; mild varme på lavpunktet gjør det raskere.</translation>
        </message>
        <message>
            <source>Hold on to {pressure}: two pressures tell liquid from flow past a valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Fortsett å holde til {pressure}: to trykk skiller væske fra lekkasje forbi en ventil.</translation>
        </message>
        <message>
            <source>pressure</source>
            <translation>trykk</translation>
        </message>
        <message>
            <source>pressure with the vent shut and no metal as cold as dry ice</source>
            <translation>trykk med avblåsningen stengt og uten metall så kaldt som tørris</translation>
        </message>
        <message>
            <source>pressure above the triple point</source>
            <translation>trykk over trippelpunktet</translation>
        </message>
        <message>
            <source>pressure above the stop pressure</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>trykk over stopptrykket</translation>
        </message>
        <message>
            <source>pressure rise</source>
            <translation>trykkstigning</translation>
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
            <source>ambient temperature</source>
            <translation>omgivelsestemperatur</translation>
        </message>
        <message>
            <source>coldest clamp above the metal&apos;s minimum</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>kaldeste klemmeføler over metallets minimum</translation>
        </message>
        <message>
            <source>lowest clamp above saturation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>laveste klemmeføler over metning</translation>
        </message>
        <message>
            <source>CO2 in the air</source>
            <translation>CO2 i luften</translation>
        </message>
        <message>
            <source>gauge open to air off zero by</source>
            <translation>manometerets nullavvik mot luft</translation>
        </message>
        <message>
            <source>vacuum</source>
            <translation>vakuum</translation>
        </message>
        <message>
            <source>hold running</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>hold i gang</translation>
        </message>
        <message>
            <source>latest holds in a row that show vapour only</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>siste hold på rad som viser bare damp</translation>
        </message>
        <message>
            <source>latest low hold rules dry ice out</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>siste hold ved lavt trykk utelukker tørris</translation>
        </message>
        <message>
            <source>standing-pressure test says tight</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>stående trykkprøve sier tett</translation>
        </message>
        <message>
            <source>vacuum-rise test says tight and dry</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: vacuum rise</translatorcomment>
            <translation>vakuumstigeprøven sier tett og tørr</translation>
        </message>
        <message>
            <source>, steady for {time}</source>
            <translation>, stabilt i {time}</translation>
        </message>
        <message>
            <source>at least {value}</source>
            <translation>minst {value}</translation>
        </message>
        <message>
            <source>at most {value}</source>
            <translation>høyst {value}</translation>
        </message>
        <message>
            <source>{low} and {high}</source>
            <translation>{low} og {high}</translation>
        </message>
        <message>
            <source>write down: {what}</source>
            <translation>skriv opp: {what}</translation>
        </message>
        <message>
            <source>still shut on the isolation list: {valves}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>fortsatt stengt på avstengningslisten: {valves}</translation>
        </message>
        <message>
            <source>the isolation list is empty: name each valve</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>avstengningslisten er tom: nevn hver ventil</translation>
        </message>
        <message>
            <source>Simulated readings: this job is practice and can&apos;t be signed.</source>
            <translation>Simulerte målinger: denne jobben er øvelse og kan ikke signeres.</translation>
        </message>
        <message>
            <source>give the name of the person who does this</source>
            <translation>oppgi navnet på den som gjør dette</translation>
        </message>
        <message>
            <source>too long: {most} characters at most</source>
            <translation>for langt: høyst {most} tegn</translation>
        </message>
        <message>
            <source>that confirmation belongs to a later step</source>
            <translation>den bekreftelsen hører til et senere steg</translation>
        </message>
        <message>
            <source>write something, or leave the entry alone</source>
            <translation>skriv noe, eller la feltet være</translation>
        </message>
        <message>
            <source>name the valve</source>
            <translation>nevn ventilen</translation>
        </message>
        <message>
            <source>{quantity}: must come from readings here</source>
            <translation>{quantity}: må komme fra målinger her</translation>
        </message>
        <message>
            <source>{value} does not meet: {condition}</source>
            <translation>{value} oppfyller ikke: {condition}</translation>
        </message>
        <message>
            <source>the job has ended; nothing is left to do</source>
            <translation>jobben er avsluttet; ingenting gjenstår</translation>
        </message>
        <message>
            <source>not yet: {lacks}</source>
            <translation>ikke ennå: {lacks}</translation>
        </message>
        <message>
            <source>the job has ended; nothing is left to skip</source>
            <translation>jobben er avsluttet; ingenting igjen å hoppe over</translation>
        </message>
        <message>
            <source>&apos;{step}&apos; can&apos;t be skipped</source>
            <translation>«{step}» kan ikke hoppes over</translation>
        </message>
        <message>
            <source>write something</source>
            <translation>skriv noe</translation>
        </message>
        <message>
            <source>give a reason</source>
            <translation>oppgi en grunn</translation>
        </message>
        <message>
            <source>no venting yet: {lacks}</source>
            <translation>ikke blås av ennå: {lacks}</translation>
        </message>
        <message>
            <source>Close the vent until this is confirmed again.</source>
            <translation>Steng avblåsningen til dette er bekreftet igjen.</translation>
        </message>
        <message>
            <source>Left out before the joint is broken: {steps}</source>
            <translation>Hoppet over før koblingen åpnes: {steps}</translation>
        </message>
        <message>
            <source>Stop pressure {kept}: {below} below it with liquid inside, {triple} of them below the triple point.</source>
            <translation>Stopptrykk {kept}: {below} under det med væske inni, av dem {triple} under trippelpunktet.</translation>
        </message>
        <message>
            <source>kept</source>
            <translation>holdt</translation>
        </message>
        <message>
            <source>NOT KEPT</source>
            <translation>IKKE HOLDT</translation>
        </message>
        <message>
            <source>Dry ice made: {mass} at most.</source>
            <translation>Tørris dannet: høyst {mass}.</translation>
        </message>
        <message>
            <source>Left inside at the end: {left} of liquid and dry ice (allowable {allowable}).</source>
            <translation>Igjen inni til slutt: {left} væske og tørris (tillatt {allowable}).</translation>
        </message>
        <message>
            <source>CO2 vented: {mass} in {time}.</source>
            <translation>CO2 blåst av: {mass} på {time}.</translation>
        </message>
        <message>
            <source>You said: {state}. That was {judged}.</source>
            <translation>Du sa: {state}. Det var {judged}.</translation>
        </message>
        <message>
            <source>right</source>
            <translation>riktig</translation>
        </message>
        <message>
            <source>WRONG</source>
            <translation>FEIL</translation>
        </message>
        <message>
            <source>DANGEROUS: the section was taken for empty with liquid or dry ice inside.</source>
            <translation>FARLIG: seksjonen ble tatt for tom med væske eller tørris inni.</translation>
        </message>
        <message>
            <source>subcooled liquid</source>
            <translation>full av væske</translation>
        </message>
        <message>
            <source>two phase</source>
            <translation>væske og damp</translation>
        </message>
        <message>
            <source>solid present</source>
            <translation>tørris</translation>
        </message>
        <message>
            <source>undetermined</source>
            <translation>ikke bestemt</translation>
        </message>
        <message>
            <source>readings come {time} late</source>
            <translation>målingene kommer {time} for sent</translation>
        </message>
        <message>
            <source>this program has a fault; use the mechanical gauge</source>
            <translation>dette programmet har en feil; bruk det mekaniske manometeret</translation>
        </message>
        <message>
            <source>more data than can be shown in time: {rows} rows were passed over</source>
            <translation>mer data enn som kan vises i tide: {rows} rader ble hoppet over</translation>
        </message>
        <message>
            <source>source lost: {reason}</source>
            <translation>kilden er borte: {reason}</translation>
        </message>
        <message>
            <source>source back: {label}</source>
            <translation>kilden er tilbake: {label}</translation>
        </message>
        <message>
            <source>cut short by another program</source>
            <translation>avkortet av et annet program</translation>
        </message>
        <message>
            <source>replaced by another file</source>
            <translation>erstattet av en annen fil</translation>
        </message>
        <message>
            <source>not open</source>
            <translation>ikke åpen</translation>
        </message>
        <message>
            <source>disconnected</source>
            <translation>frakoblet</translation>
        </message>
        <message>
            <source>no answer ({wrong})</source>
            <translation>ikke svar ({wrong})</translation>
        </message>
        <message>
            <source>no answer</source>
            <translation>ikke svar</translation>
        </message>
        <message>
            <source>disconnected ({error})</source>
            <translation>frakoblet ({error})</translation>
        </message>
        <message>
            <source>{label}: {what}; check the cable, the program keeps trying</source>
            <translation>{label}: {what}; sjekk kabelen, programmet prøver videre</translation>
        </message>
        <message>
            <source>not connected</source>
            <translation>ikke tilkoblet</translation>
        </message>
        <message>
            <source>the server closed the connection</source>
            <translation>serveren lukket forbindelsen</translation>
        </message>
        <message>
            <source>Dry ice: the pressure came down to the triple point and stands there ({freezing}): the vent is open, and liquid freezes. Keep it open, warm gently, keep clear; no time alone ends it.</source>
            <translation>Tørris: trykket falt til trippelpunktet og står der ({freezing}): avblåsningen er åpen, og væske fryser. La den stå åpen, varm forsiktig, hold avstand; ingen tid alene avslutter det.</translation>
        </message>
        <message>
            <source>temperature {change} explains {effect}; loss {loss} over {time}</source>
            <translation>temperatur {change} forklarer {effect}; tap {loss} over {time}</translation>
        </message>
        <message>
            <source>{loss} ({lower} to {upper}, 95 %)</source>
            <translation>{loss} ({lower} til {upper}, 95 %)</translation>
        </message>
        <message>
            <source>Can&apos;t tell yet: {seen}, {limit} allowed.</source>
            <translation>Kan ikke si ennå: {seen}, {limit} tillatt.</translation>
        </message>
        <message>
            <source>Hold longer: the bound narrows with time; steadier temperature helps.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold lenger: grensen blir trangere med tiden; jevnere temperatur hjelper.</translation>
        </message>
        <message>
            <source>{loss} without bounds</source>
            <translation>{loss} uten grenser</translation>
        </message>
        <message>
            <source>fewer than 10 readings</source>
            <translation>færre enn 10 målinger</translation>
        </message>
        <message>
            <source>Record pressure and clamp.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Ta opp trykk og klemmeføler.</translation>
        </message>
        <message>
            <source>no clamp reading beside every pressure: the temperature can&apos;t be told from a leak</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>ikke klemmefølermåling ved hvert trykk: temperatur kan ikke skilles fra lekkasje</translation>
        </message>
        <message>
            <source>Put a clamp on the section, in the shade, and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Sett en klemmeføler på seksjonen, i skyggen, og hold igjen.</translation>
        </message>
        <message>
            <source>no test pressure, or it is gone: less than 0.5 bar above the air</source>
            <translation>intet prøvetrykk, eller det er borte: under 0,5 bar over luften</translation>
        </message>
        <message>
            <source>Raise the pressure and hold again.</source>
            <translation>Hev trykket og hold igjen.</translation>
        </message>
        <message>
            <source>The pressure wanders too slowly to bound a loss in {time}.</source>
            <translation>Trykket vandrer for sakte til å avgrense et tap på {time}.</translation>
        </message>
        <message>
            <source>Hold longer.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold lenger.</translation>
        </message>
        <message>
            <source>Still settling: the loss is not the same in both halves; {seen}.</source>
            <translation>Roer seg fortsatt: tapet er ikke likt i begge halvdeler; {seen}.</translation>
        </message>
        <message>
            <source>Wait until the heat of filling has gone and the sun is off the pipe.</source>
            <translation>Vent til fyllvarmen er borte og solen er av røret.</translation>
        </message>
        <message>
            <source>The pressure rises more than the temperature explains: {seen}. Gas flows in past a valve, or the clamp does not show the gas; an inflow hides a leak.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Trykket stiger mer enn temperaturen forklarer: {seen}. Gass strømmer inn forbi en ventil, eller klemmeføleren viser ikke gassen; en innstrømning skjuler en lekkasje.</translation>
        </message>
        <message>
            <source>Shut off the supply or double block, move the clamp, hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Steng tilførselen eller steng dobbelt, flytt klemmeføleren, hold igjen.</translation>
        </message>
        <message>
            <source>Leaking: {seen}, {limit} allowed.</source>
            <translation>Lekker: {seen}, {limit} tillatt.</translation>
        </message>
        <message>
            <source>Find the leak, mend, repeat.</source>
            <translation>Finn lekkasjen, utbedre, gjenta.</translation>
        </message>
        <message>
            <source>Tight within the limit: {seen}, {limit} allowed.</source>
            <translation>Tett innenfor grensen: {seen}, {limit} tillatt.</translation>
        </message>
        <message>
            <source>Not known: {why}.</source>
            <translation>Ikke kjent: {why}.</translation>
        </message>
        <message>
            <source>the pressure never moved: such a trace is also what a shut gauge valve gives</source>
            <translation>trykket rørte seg aldri: en stengt manometerventil gir samme kurve</translation>
        </message>
        <message>
            <source>Bleed a little, see the gauge follow, and hold again.</source>
            <translation>Luft litt, se at manometeret følger, og hold igjen.</translation>
        </message>
        <message>
            <source>The pressure never moved beyond its noise: such a trace is also what a shut gauge valve gives.</source>
            <translation>Trykket rørte seg aldri utover støyen: en stengt manometerventil gir samme kurve.</translation>
        </message>
        <message>
            <source>The pressure jumps up by {jump} within a minute: gas let in hides a leak.</source>
            <translation>Trykket hopper {jump} opp innen ett minutt: gass som slippes inn, skjuler en lekkasje.</translation>
        </message>
        <message>
            <source>Shut off and take off the supply, then hold again.</source>
            <translation>Steng og koble fra tilførselen, og hold igjen.</translation>
        </message>
        <message>
            <source>The two gauges part by {change} during the test: one does not show this section.</source>
            <translation>De to manometrene skiller seg med {change} under prøven: det ene viser ikke denne seksjonen.</translation>
        </message>
        <message>
            <source>Check both gauges and their valves, then hold again.</source>
            <translation>Kontroller begge manometrene og ventilene deres, og hold igjen.</translation>
        </message>
        <message>
            <source>Test within that range.</source>
            <translation>Prøv innenfor det området.</translation>
        </message>
        <message>
            <source>So far no loss above what is allowed, but only for {time}.</source>
            <translation>Så langt intet tap over det tillatte, men bare i {time}.</translation>
        </message>
        <message>
            <source>Hold at least {time} more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold minst {time} til.</translation>
        </message>
        <message>
            <source>{begin} to {end} in {time}</source>
            <translation>{begin} til {end} på {time}</translation>
        </message>
        <message>
            <source>{micron} micron ({pascal}, {millibar})</source>
            <translation>{micron} mikron ({pascal}, {millibar})</translation>
        </message>
        <message>
            <source>{rate} micron/min ({lower} to {upper})</source>
            <translation>{rate} mikron/min ({lower} til {upper})</translation>
        </message>
        <message>
            <source>Too few independent readings to judge: {course}.</source>
            <translation>For få uavhengige målinger til å dømme: {course}.</translation>
        </message>
        <message>
            <source>Hold {time} more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold {time} til.</translation>
        </message>
        <message>
            <source>Limit kept: {course}, {limit} allowed; late rise {rate}; water on this metal would go to {water}.</source>
            <translation>Grensen holdt: {course}, {limit} tillatt; sen stigning {rate}; vann på dette metallet ville gå til {water}.</translation>
        </message>
        <message>
            <source>{rate} micron/min without bounds</source>
            <translation>{rate} mikron/min uten grenser</translation>
        </message>
        <message>
            <source>The gauge never moved: {course}; a gauge that is shut off looks the same.</source>
            <translation>Vakuummeteret rørte seg aldri: {course}; et avstengt ser likt ut.</translation>
        </message>
        <message>
            <source>Let the gauge see the pump once, then hold again.</source>
            <translation>La vakuummeteret se pumpen én gang, og hold igjen.</translation>
        </message>
        <message>
            <source>The vacuum rose to {high} and fell back to {low}: the pump was on again, or gauge or metal cooled.</source>
            <translation>Vakuumet steg til {high} og falt tilbake til {low}: vakuumpumpen gikk igjen, eller vakuummeteret eller metallet ble kaldere.</translation>
        </message>
        <message>
            <source>Shut the valve to the pump once and hold; give the time when it was shut.</source>
            <translation>Steng ventilen til vakuumpumpen én gang og hold; oppgi når den ble stengt.</translation>
        </message>
        <message>
            <source>The limit is kept ({course}), but the rise levels as it does over ice on metal colder than the clamp: not shown dry.</source>
            <translation>Grensen er holdt ({course}), men stigningen flater ut som over is på metall kaldere enn klemmeføleren: ikke vist tørt.</translation>
        </message>
        <message>
            <source>Measure the coldest metal and give its temperature, or evacuate again.</source>
            <translation>Mål det kaldeste metallet og oppgi temperaturen, eller evakuer igjen.</translation>
        </message>
        <message>
            <source>The vacuum has not risen at all: {course}; with the pump still on it stands so too.</source>
            <translation>Vakuumet har ikke steget i det hele tatt: {course}; med pumpen fortsatt på står det likt.</translation>
        </message>
        <message>
            <source>Shut the valve to the pump, see the vacuum rise a little, and hold on.</source>
            <translation>Steng ventilen til pumpen, se vakuumet stige litt, og hold videre.</translation>
        </message>
        <message>
            <source>The pressure falls: {course}. The pump is not shut off, or gauge or metal cools.</source>
            <translation>Trykket faller: {course}. Pumpen er ikke stengt av, eller vakuummeter eller metall kjøles.</translation>
        </message>
        <message>
            <source>Shut the valve to the pump and begin again.</source>
            <translation>Steng ventilen til pumpen og begynn på nytt.</translation>
        </message>
        <message>
            <source>Moisture: {course}, levels near the water vapour pressure of the coldest metal, {water} at {coldest} (a hot-wire gauge shows up to twice as much).</source>
            <translation>Fukt: {course}, flater ut nær vanndamptrykket til det kaldeste metallet, {water} ved {coldest} (en glødetrådmåler viser opptil det dobbelte).</translation>
        </message>
        <message>
            <source>Warm the metal, sweep with dry nitrogen, evacuate again.</source>
            <translation>Varm metallet, skyll med tørr nitrogen, evakuer igjen.</translation>
        </message>
        <message>
            <source>Leak: {course}, straight at {rate} and no bend.</source>
            <translation>Lekkasje: {course}, rett med {rate} og ingen bøy.</translation>
        </message>
        <message>
            <source>Find it with nitrogen pressure; look at hoses and the pump valve first.</source>
            <translation>Finn den med nitrogentrykk; se på slanger og pumpeventilen først.</translation>
        </message>
        <message>
            <source>on metal this cold that is dry ice or CO2 out of oil or sieve, not water</source>
            <translation>på så kaldt metall er det tørris eller CO2 fra olje eller sil, ikke vann</translation>
        </message>
        <message>
            <source>not the water vapour pressure of the metal: outgassing, oil or CO2 left</source>
            <translation>ikke vanndamptrykket til metallet: avgassing, olje eller CO2 igjen</translation>
        </message>
        <message>
            <source>without the metal&apos;s temperature moisture can&apos;t be ruled out</source>
            <translation>uten metallets temperatur kan fukt ikke utelukkes</translation>
        </message>
        <message>
            <source>Levels too high: {course}; {what}.</source>
            <translation>Flater ut for høyt: {course}; {what}.</translation>
        </message>
        <message>
            <source>Evacuate again; a smaller rise the second time confirms outgassing.</source>
            <translation>Evakuer igjen; en mindre stigning andre gang bekrefter avgassing.</translation>
        </message>
        <message>
            <source>The rise began at {begin}, above {limit}.</source>
            <translation>Stigningen begynte ved {begin}, over {limit}.</translation>
        </message>
        <message>
            <source>Evacuate further, then shut the pump off.</source>
            <translation>Evakuer videre, og steng av pumpen.</translation>
        </message>
        <message>
            <source>So far {course}.</source>
            <translation>Så langt {course}.</translation>
        </message>
        <message>
            <source>Above {limit}: {course}, and the curve is still bending.</source>
            <translation>Over {limit}: {course}, og kurven bøyer fortsatt av.</translation>
        </message>
        <message>
            <source>Hold longer: straight on is a leak, levelling is moisture or outgassing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold lenger: rett fram er lekkasje, utflating er fukt eller avgassing.</translation>
        </message>
        <message>
            <source>Below {limit}, but still rising at {rate}: {course}.</source>
            <translation>Under {limit}, men stiger fortsatt med {rate}: {course}.</translation>
        </message>
        <message>
            <source>Hold longer: straight on is a leak, levelling is outgassing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold lenger: rett fram er lekkasje, utflating er avgassing.</translation>
        </message>
        <message>
            <source>The limit is kept ({course}), but without the metal&apos;s temperature dry is not shown.</source>
            <translation>Grensen er holdt ({course}), men uten metallets temperatur er tørt ikke vist.</translation>
        </message>
        <message>
            <source>Put a clamp on the coldest metal or give its temperature.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Sett en klemmeføler på det kaldeste metallet, eller oppgi temperaturen.</translation>
        </message>
        <message>
            <source>The limit is kept ({course}), but ice on metal at {coldest} has only {water}: not shown dry.</source>
            <translation>Grensen er holdt ({course}), men is på metall ved {coldest} har bare {water}: ikke vist tørt.</translation>
        </message>
        <message>
            <source>Warm the metal and repeat.</source>
            <translation>Varm metallet og gjenta.</translation>
        </message>
        <message>
            <source>Not known: fewer than 20 vacuum readings since the pump was shut off.</source>
            <translation>Ikke kjent: færre enn 20 vakuummålinger siden pumpen ble stengt av.</translation>
        </message>
        <message>
            <source>Record the vacuum gauge for the whole test.</source>
            <translation>Ta opp vakuummeteret gjennom hele prøven.</translation>
        </message>
        <message>
            <source>{volume} for each {kg} vented</source>
            <translation>{volume} for hvert {kg} avblåst</translation>
        </message>
        <message>
            <source>{volume} for each {kg} vented; {flow} with the vent fully open</source>
            <translation>{volume} for hvert {kg} avblåst; {flow} med helt åpen avblåsning</translation>
        </message>
        <message>
            <source>Fully open, the vent falls {fall} a minute on average: throttle it to {slow} to {calm} a minute over the last {end}.</source>
            <translation>Helt åpen faller avblåsningen {fall} i minuttet i snitt: strup den til {slow} til {calm} i minuttet over de siste {end}.</translation>
        </message>
        <message>
            <source>vapour only</source>
            <translation>bare damp</translation>
        </message>
        <message>
            <source>it refuses to answer ({wrong})</source>
            <translation>den avviser forespørselen ({wrong})</translation>
        </message>
        <message>
            <source>{step}: the air may hold {limit} ppm of CO2. Over a working day the limit is 5000.</source>
            <translation>{step}: luften kan inneholde {limit} ppm CO2. Over en arbeidsdag er grensen 5000 ppm.</translation>
        </message>
        <message>
            <source>No time shut is watched before the vent: a valve may pass unseen.</source>
            <translation>Ingen lukket tid følges før avblåsningen: en ventil kan lekke uten at det merkes.</translation>
        </message>
        <message>
            <source>No zero of the gauge is asked for before the vent.</source>
            <translation>Manometerets nullpunkt kreves ikke før avblåsningen.</translation>
        </message>
        <message>
            <source>One hold that shows vapour only is enough: no second is asked for.</source>
            <translation>Ett hold som viser bare damp, er nok: et nummer to kreves ikke.</translation>
        </message>
        <message>
            <source>No low hold has to rule dry ice out before the joint is broken.</source>
            <translation>Ingen hold ved lavt trykk må utelukke tørris før koblingen åpnes.</translation>
        </message>
        <message>
            <source>The metal&apos;s minimum temperature is not asked for before it is pressurised.</source>
            <translation>Metallets laveste temperatur kreves ikke før det settes under trykk.</translation>
        </message>
        <message>
            <source>, falling {fall}</source>
            <translation>, faller {fall}</translation>
        </message>
        <message>
            <source>air pressure here</source>
            <translation>lufttrykk her</translation>
        </message>
        <message>
            <source>the metal&apos;s lowest rated temperature</source>
            <translation>metallets laveste tillatte temperatur</translation>
        </message>
    </context>
    <context>
        <name>Events</name>
        <message>
            <source>{count} rows lost, lines {first} to {last}: {reason}</source>
            <translation>{count} rader tapt, linje {first} til {last}: {reason}</translation>
        </message>
        <message>
            <source>{count} rows lost: {reason}</source>
            <translation>{count} rader tapt: {reason}</translation>
        </message>
        <message>
            <source>; the evidence of the hold starts anew</source>
            <translation>; holdets bevisføring begynner på nytt</translation>
        </message>
        <message>
            <source>Before the vent: {why}; the evidence starts anew</source>
            <translation>Før avblåsningen: {why}; bevisføringen begynner på nytt</translation>
        </message>
    </context>
    <context>
        <name>Exercises</name>
        <message>
            <source>Vapour only, warm metal</source>
            <translation>Bare damp, varmt metall</translation>
        </message>
        <message>
            <source>Strainer section S-1, 10 litres, bare steel, shut in since the morning. The metal is some 50 K warmer than CO2 at the stop pressure. Vent to the stop pressure, close, and watch.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Filterseksjon S-1, 10 liter, uisolert stål, stengt siden i morges. Metallet er rundt 50 K varmere enn CO2 ved stopptrykket. Blås av til stopptrykket, steng, og følg med.</translation>
        </message>
        <message>
            <source>How fast the rise dies away, and how much smaller it is the second time.</source>
            <translation>Hvor raskt stigningen dør ut, og hvor mye mindre den er andre gang.</translation>
        </message>
        <message>
            <source>About half a bar in the first minute, then flat; the second hold rises far less.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Omtrent en halv bar i det første minuttet, så flatt; det andre holdet stiger langt mindre.</translation>
        </message>
        <message>
            <source>It rises, so there is liquid: vents needlessly, or lower than the stop pressure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Det stiger, altså er det væske: blåser av unødig, eller lavere enn stopptrykket.</translation>
        </message>
        <message>
            <source>What would the trace do in minute 8 if a cup of liquid were left? Compare with exercise 2.</source>
            <translation>Hva ville kurven gjøre i minutt 8 om en kopp væske var igjen? Sammenlign med øvelse 2.</translation>
        </message>
        <message>
            <source>Vent back to the same start and hold again: warmed gas hardly rises any more.</source>
            <translation>Blås av til samme start og hold igjen: varmet gass stiger nesten ikke mer.</translation>
        </message>
        <message>
            <source>One per cent of liquid left</source>
            <translation>Én prosent væske igjen</translation>
        </message>
        <message>
            <source>The neighbour of exercise 1: the same 10 litres of bare steel. It held liquid and has been vented; about one per cent of its volume is still liquid, in the bottom of the strainer.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: strainer</translatorcomment>
            <translation>Naboen til øvelse 1: de samme 10 literne uisolert stål. Den hadde væske og er blåst av; omtrent én prosent av volumet er fortsatt væske, i bunnen av filteret.</translation>
        </message>
        <message>
            <source>The first minute looks like exercise 1. Minutes 3 to 8 do not.</source>
            <translation>Det første minuttet ligner øvelse 1. Minuttene 3 til 8 gjør ikke det.</translation>
        </message>
        <message>
            <source>A first minute like gas, then a steady climb of hundreds of millibar a minute.</source>
            <translation>Et første minutt som gass, så en jevn stigning på hundrevis av millibar i minuttet.</translation>
        </message>
        <message>
            <source>The same first minute as exercise 1, so it is gas.</source>
            <translation>Samme første minutt som øvelse 1, altså gass.</translation>
        </message>
        <message>
            <source>At which minute could you first tell this trace from exercise 1? Why not earlier?</source>
            <translation>I hvilket minutt kunne denne kurven først skilles fra øvelse 1? Hvorfor ikke før?</translation>
        </message>
        <message>
            <source>Wait: the late slope. Or vent again: the climb comes back as steep.</source>
            <translation>Vent: den sene stigningen. Eller blås av igjen: stigningen kommer like bratt tilbake.</translation>
        </message>
        <message>
            <source>Ten per cent of liquid left</source>
            <translation>Ti prosent væske igjen</translation>
        </message>
        <message>
            <source>The same section once more, now with ten per cent of its volume liquid: ten times as much as in exercise 2. Commit yourself before the trace goes on: will it rise faster or slower?</source>
            <translation>Samme seksjon en gang til, nå med ti prosent av volumet væske: ti ganger så mye som i øvelse 2. Bestem deg før kurven går videre: stiger den raskere eller saktere?</translation>
        </message>
        <message>
            <source>The first minute, against exercise 2.</source>
            <translation>Det første minuttet, mot øvelse 2.</translation>
        </message>
        <message>
            <source>A slower first minute than with one per cent: more liquid has more to warm.</source>
            <translation>Et saktere første minutt enn med én prosent: mer væske har mer å varme.</translation>
        </message>
        <message>
            <source>Less rise, so less liquid.</source>
            <translation>Mindre stigning, altså mindre væske.</translation>
        </message>
        <message>
            <source>Which part of the trace tells how much liquid is left? (None does: only that it is there.)</source>
            <translation>Hvilken del av kurven sier hvor mye væske som er igjen? (Ingen: bare at den er der.)</translation>
        </message>
        <message>
            <source>None on the pressure alone: weigh, or vent and count what comes.</source>
            <translation>Ingen på trykket alene: vei, eller blås av og tell det som kommer.</translation>
        </message>
        <message>
            <source>Liquid left, and all metal as cold as it</source>
            <translation>Væske igjen, og alt metall like kaldt som den</translation>
        </message>
        <message>
            <source>A 50 litre insulated section after a long, slow vent on a cold day. Frost all over. The gauge stands still.</source>
            <translation>En isolert seksjon på 50 liter etter en lang, sakte avblåsning på en kald dag. Rim overalt. Manometeret står stille.</translation>
        </message>
        <message>
            <source>How far the metal is above the saturation temperature of the pressure.</source>
            <translation>Hvor langt metallet er over metningstemperaturen for trykket.</translation>
        </message>
        <message>
            <source>Next to no rise in ten minutes, with kilograms of liquid inside.</source>
            <translation>Nesten ingen stigning på ti minutter, med kilogram av væske inni.</translation>
        </message>
        <message>
            <source>Flat, so empty.</source>
            <translation>Flatt, altså tomt.</translation>
        </message>
        <message>
            <source>What heat could have boiled any liquid here? What would have to be warm?</source>
            <translation>Hvilken varme kunne ha kokt væske her? Hva måtte være varmt?</translation>
        </message>
        <message>
            <source>Bring heat to the low points and hold again; until then the test has no power.</source>
            <translation>Før varme til lavpunktene og hold igjen; til da har prøven ingen beviskraft.</translation>
        </message>
        <message>
            <source>The supply valve leaks by</source>
            <translation>Tilførselsventilen lekker forbi</translation>
        </message>
        <message>
            <source>Strainer section S-4. Nobody mentions that the isolation valve on the supply side has a scratch on its seat: a tenth of a gram a second comes past.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Filterseksjon S-4. Ingen nevner at avstengningsventilen på tilførselen har en ripe i setet: en tidels gram i sekundet kommer forbi.</translation>
        </message>
        <message>
            <source>Is the rise straight? Is it as steep at another pressure?</source>
            <translation>Er stigningen rett? Er den like bratt ved et annet trykk?</translation>
        </message>
        <message>
            <source>Straight from the first minutes on, and as steep from 9 bar g as from 5.</source>
            <translation>Rett fra de første minuttene, og like bratt fra 9 bar g som fra 5.</translation>
        </message>
        <message>
            <source>Liquid boiling: keeps venting for an hour, while the leak refills the section.</source>
            <translation>Væske som koker: blåser av i en time, mens lekkasjen fyller seksjonen igjen.</translation>
        </message>
        <message>
            <source>Which of liquid and leak gets slower at a higher pressure, and why?</source>
            <translation>Hvilken av væske og lekkasje blir saktere ved høyere trykk, og hvorfor?</translation>
        </message>
        <message>
            <source>Hold at a second pressure; block and bleed the supply.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, bleed</translatorcomment>
            <translation>Hold ved et annet trykk; dobbel avstenging med lufting på tilførselen.</translation>
        </message>
        <message>
            <source>Vented to 1 bar g with liquid left</source>
            <translation>Blåst av til 1 bar g med væske igjen</translation>
        </message>
        <message>
            <source>Somebody was in a hurry and vented straight to 1 bar g. Then the valve was closed, and now the pressure climbs and comes to rest at a little over 4 bar g.</source>
            <translation>Noen hadde det travelt og blåste rett av til 1 bar g. Så ble ventilen stengt, og nå stiger trykket og blir stående litt over 4 bar g.</translation>
        </message>
        <message>
            <source>Where the pressure lingers on the way down, and where it comes to rest on the way up.</source>
            <translation>Hvor trykket nøler på vei ned, og hvor det blir stående på vei opp.</translation>
        </message>
        <message>
            <source>A shelf near 4.2 bar g both ways; it stays there for a quarter of an hour and more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Et trinn nær 4,2 bar g begge veier; det blir der et kvarter og mer.</translation>
        </message>
        <message>
            <source>It has stabilised, so it is safe.</source>
            <translation>Det har stabilisert seg, altså er det trygt.</translation>
        </message>
        <message>
            <source>What pins the pressure at one value? What happens when the last dry ice has melted?</source>
            <translation>Hva låser trykket på én verdi? Hva skjer når den siste tørrisen har smeltet?</translation>
        </message>
        <message>
            <source>Compare the resting pressure with the local triple point; wait, with the vent side open.</source>
            <translation>Sammenlign hviletrykket med det lokale trippelpunktet; vent, med den avblåste siden åpen.</translation>
        </message>
        <message>
            <source>Dry ice at zero on the gauge</source>
            <translation>Tørris ved null på manometeret</translation>
        </message>
        <message>
            <source>The gauge shows 0.0 bar g. The bleed was open all night and has just been closed. There is frost on the low point, and on nothing else.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Manometeret viser 0,0 bar g. Luftingen sto åpen hele natten og er nettopp stengt. Det er rim på lavpunktet, og ikke noe annet sted.</translation>
        </message>
        <message>
            <source>The climb after closing, and the temperature of the low point.</source>
            <translation>Stigningen etter stenging, og temperaturen på lavpunktet.</translation>
        </message>
        <message>
            <source>From zero the pressure climbs along the sublimation line towards 4.2 bar g.</source>
            <translation>Fra null stiger trykket langs sublimasjonslinjen mot 4,2 bar g.</translation>
        </message>
        <message>
            <source>Zero means empty: open it.</source>
            <translation>Null betyr tomt: åpne det.</translation>
        </message>
        <message>
            <source>What pressure has dry ice at -78 degC? What would the gauge show if the bleed stayed open?</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Hvilket trykk har tørris ved -78 °C? Hva ville manometeret vist om luftingen sto åpen?</translation>
        </message>
        <message>
            <source>Close the bleed and watch for some minutes; feel for frost at the low point.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Steng luftingen og følg med noen minutter; kjenn etter rim på lavpunktet.</translation>
        </message>
        <message>
            <source>The gauge is shut off</source>
            <translation>Manometeret er avstengt</translation>
        </message>
        <message>
            <source>The valve at the gauge hose was bumped shut while the vent was closed. Liquid is left in the section.</source>
            <translation>Ventilen på manometerslangen ble dyttet igjen mens avblåsningen var stengt. Det er væske igjen i seksjonen.</translation>
        </message>
        <message>
            <source>The noise of the reading; what a short mini-vent does to it.</source>
            <translation>Støyen i målingen; hva en kort avblåsning gjør med den.</translation>
        </message>
        <message>
            <source>A trace without any movement, not even noise; a mini-vent does not move it.</source>
            <translation>En kurve uten bevegelse, ikke engang støy; en kort avblåsning rører den ikke.</translation>
        </message>
        <message>
            <source>A perfect hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Et perfekt hold.</translation>
        </message>
        <message>
            <source>What does a real gauge on a real section never do?</source>
            <translation>Hva gjør et virkelig manometer på en virkelig seksjon aldri?</translation>
        </message>
        <message>
            <source>Crack the vent for two seconds: a gauge that sees the section moves.</source>
            <translation>Åpne avblåsningen i to sekunder: et manometer som ser seksjonen, rører seg.</translation>
        </message>
        <message>
            <source>An oil-rich strainer</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: strainer</translatorcomment>
            <translation>Et oljerikt filter</translation>
        </message>
        <message>
            <source>Section S-8 sits low behind an oil trap that was never drained. The liquid is gone, but the oil in the strainer still holds CO2.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, strainer</translatorcomment>
            <translation>Seksjon S-8 ligger lavt bak en oljefelle som aldri er tappet. Væsken er borte, men oljen i filteret holder fortsatt på CO2.</translation>
        </message>
        <message>
            <source>A slow curved tail, and how it shrinks from hold to hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>En sakte, bøyd hale, og hvordan den krymper fra hold til hold.</translation>
        </message>
        <message>
            <source>A tail that bends, well below saturation, and smaller after each vent.</source>
            <translation>En hale som bøyer av, godt under metning, og mindre etter hver avblåsning.</translation>
        </message>
        <message>
            <source>Liquid is still there. Or: the supply valve leaks.</source>
            <translation>Det er fortsatt væske der. Eller: tilførselsventilen lekker.</translation>
        </message>
        <message>
            <source>Which of liquid, leak and oil gives less every time? Why is it still not clear?</source>
            <translation>Hvilken av væske, lekkasje og olje gir mindre hver gang? Hvorfor er det fortsatt ikke klart?</translation>
        </message>
        <message>
            <source>Vent again and hold: a source that runs down is neither liquid nor leak.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Blås av igjen og hold: en kilde som tar slutt, er verken væske eller lekkasje.</translation>
        </message>
        <message>
            <source>A gauge that reads high, at 2000 m</source>
            <translation>Et manometer som viser for mye, på 2000 m</translation>
        </message>
        <message>
            <source>A mountain site at 2000 m. The gauge reads 0.3 bar high, nobody took its zero, and the card on the wall was printed for sea level: stop at 5.2 bar g.</source>
            <translation>Et fjellanlegg på 2000 m. Manometeret viser 0,3 bar for mye, ingen tok nullpunktet, og kortet på veggen er trykt for havnivå: stopp ved 5,2 bar g.</translation>
        </message>
        <message>
            <source>The true distance from the triple point when the gauge shows 5.2 bar g.</source>
            <translation>Den virkelige avstanden til trippelpunktet når manometeret viser 5,2 bar g.</translation>
        </message>
        <message>
            <source>The gauge shows 5.2 bar g; the section is only half a bar above the triple point.</source>
            <translation>Manometeret viser 5,2 bar g; seksjonen er bare en halv bar over trippelpunktet.</translation>
        </message>
        <message>
            <source>I have a full bar of margin.</source>
            <translation>Jeg har en hel bar i margin.</translation>
        </message>
        <message>
            <source>Where is the triple point on a gauge at 2000 m? (4.39 bar g, not 4.17.)</source>
            <translation>Hvor er trippelpunktet på et manometer på 2000 m? (4,39 bar g, ikke 4,17.)</translation>
        </message>
        <message>
            <source>Open the gauge to air and read its zero; give the altitude before the vent.</source>
            <translation>Åpne manometeret mot luft og les av nullpunktet; oppgi høyden før avblåsningen.</translation>
        </message>
        <message>
            <source>Vacuum on a wet section</source>
            <translation>Vakuum på en våt seksjon</translation>
        </message>
        <message>
            <source>The core was changed in the rain. The pump runs, the vacuum gauge stops falling; the pump is shut off and the gauge rises.</source>
            <translation>Kjernen ble byttet i regn. Pumpen går, vakuummeteret slutter å falle; pumpen stenges av og det stiger.</translation>
        </message>
        <message>
            <source>Where the pressure bends and comes to rest, and what the metal&apos;s temperature says to it.</source>
            <translation>Hvor trykket bøyer av og blir stående, og hva temperaturen på metallet sier til det.</translation>
        </message>
        <message>
            <source>It rests near the saturation pressure of water at the metal&apos;s temperature: 10 to 20 mbar.</source>
            <translation>Det blir stående nær metningstrykket for vann ved metallets temperatur: 10 til 20 mbar.</translation>
        </message>
        <message>
            <source>There is a leak: looks for it for an hour.</source>
            <translation>Det er en lekkasje: leter etter den i en time.</translation>
        </message>
        <message>
            <source>What does a leak do that water does not? (It goes on in a straight line.)</source>
            <translation>Hva gjør en lekkasje som vann ikke gjør? (Den fortsetter i en rett linje.)</translation>
        </message>
        <message>
            <source>Warm the section: water rises with it; a leak does not care.</source>
            <translation>Varm seksjonen: vann stiger med den; en lekkasje bryr seg ikke.</translation>
        </message>
        <message>
            <source>Nitrogen standing test in the sun</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Stående nitrogenprøve i solen</translation>
        </message>
        <message>
            <source>The section stands under nitrogen at 50 bar g for its standing-pressure test. It was filled in the cool morning; now the sun is on it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Seksjonen står med nitrogen på 50 bar g til sin stående trykkprøve. Den ble fylt i den kjølige morgenen; nå står solen på den.</translation>
        </message>
        <message>
            <source>Pressure and temperature together.</source>
            <translation>Trykk og temperatur sammen.</translation>
        </message>
        <message>
            <source>Two bar more in an hour, with no gas added: the metal has warmed by ten kelvin.</source>
            <translation>To bar mer på en time, uten tilført gass: metallet er blitt ti kelvin varmere.</translation>
        </message>
        <message>
            <source>The supply leaks in. Or, when it cools: the section leaks.</source>
            <translation>Tilførselen lekker inn. Eller, når det kjøles: seksjonen lekker.</translation>
        </message>
        <message>
            <source>What is left of the rise when it is corrected for temperature?</source>
            <translation>Hva er igjen av stigningen når den er korrigert for temperatur?</translation>
        </message>
        <message>
            <source>Correct for the gas temperature with a real-gas factor; wait for the evening.</source>
            <translation>Korriger for gasstemperaturen med en realgassfaktor; vent til kvelden.</translation>
        </message>
        <message>
            <source>The vent valve leaks out</source>
            <translation>Avblåsningsventilen lekker ut</translation>
        </message>
        <message>
            <source>Insulated section S-5 with kilograms of liquid. The vent valve is closed, but a grain sits on its seat: what boils leaves through it.</source>
            <translation>Isolert seksjon S-5 med kilogram av væske. Avblåsningsventilen er stengt, men et korn ligger på setet: det som koker, går ut der.</translation>
        </message>
        <message>
            <source>Frost and sound at the vent outlet while the gauge stands still.</source>
            <translation>Rim og lyd ved utløpet mens manometeret står stille.</translation>
        </message>
        <message>
            <source>A quiet gauge: what leaks out is what boils off.</source>
            <translation>Et rolig manometer: det som lekker ut, er det som koker av.</translation>
        </message>
        <message>
            <source>Quiet, so empty.</source>
            <translation>Rolig, altså tomt.</translation>
        </message>
        <message>
            <source>What are the two ways for a gauge to stand still above liquid?</source>
            <translation>På hvilke to måter kan et manometer stå stille over væske?</translation>
        </message>
        <message>
            <source>Test the outlet for flow; cap it and hold again.</source>
            <translation>Sjekk om det strømmer ved utløpet; tett det og hold igjen.</translation>
        </message>
        <message>
            <source>Shut in liquid-full</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>Stengt full av væske</translation>
        </message>
        <message>
            <source>Both valves of section S-3 were closed on liquid. It is two kelvin warmer than the liquid was. Nothing else has happened yet.</source>
            <translation>Begge ventilene på seksjon S-3 ble stengt på væske. Den er to kelvin varmere enn væsken var. Ikke noe annet har skjedd ennå.</translation>
        </message>
        <message>
            <source>Bar per minute before the first vent, and what opening does.</source>
            <translation>Bar per minutt før første avblåsning, og hva åpning gjør.</translation>
        </message>
        <message>
            <source>The gauge climbs bars in a minute; on opening it drops to saturation at once.</source>
            <translation>Manometeret stiger flere bar i minuttet; ved åpning faller det straks til metning.</translation>
        </message>
        <message>
            <source>The supply valve leaks: looks for the leak first.</source>
            <translation>Tilførselsventilen lekker: leter først etter lekkasjen.</translation>
        </message>
        <message>
            <source>Ten bar for one kelvin: how long until the relief valve lifts?</source>
            <translation>Ti bar for én kelvin: hvor lenge til sikkerhetsventilen åpner?</translation>
        </message>
        <message>
            <source>None: open the vent path at once.</source>
            <translation>Ingen: åpne avblåsningsveien straks.</translation>
        </message>
        <message>
            <source>Air in the section</source>
            <translation>Luft i seksjonen</translation>
        </message>
        <message>
            <source>Section S-6 was opened last week and not evacuated well. There is a bar of air in it besides the CO2, and liquid.</source>
            <translation>Seksjon S-6 ble åpnet forrige uke og ikke godt evakuert. Det er en bar luft i den i tillegg til CO2, og væske.</translation>
        </message>
        <message>
            <source>Pressure against the saturation pressure of the coldest metal.</source>
            <translation>Trykket mot metningstrykket til det kaldeste metallet.</translation>
        </message>
        <message>
            <source>The gauge stands above the saturation pressure of the liquid&apos;s temperature.</source>
            <translation>Manometeret står over metningstrykket for væskens temperatur.</translation>
        </message>
        <message>
            <source>Above saturation, so it must be liquid-full. Or: subcooled, so no boiling to fear.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>Over metning, altså full av væske. Eller: underkjølt, altså ingen koking å frykte.</translation>
        </message>
        <message>
            <source>Which sign of liquid does air leave alone? (The late slope.)</source>
            <translation>Hvilket tegn på væske lar luft være i fred? (Den sene stigningen.)</translation>
        </message>
        <message>
            <source>Vent and hold again: air leaves with the vapour; liquid does not.</source>
            <translation>Blås av og hold igjen: luft går ut med dampen; væske gjør ikke det.</translation>
        </message>
        <message>
            <source>Metal colder than the liquid</source>
            <translation>Metall kaldere enn væsken</translation>
        </message>
        <message>
            <source>An hour ago the section was vented too low and stopped in time; since then liquid has come back in. The metal is still colder than the liquid.</source>
            <translation>For en time siden ble seksjonen blåst av for lavt og stoppet i tide; siden er væske kommet inn igjen. Metallet er fortsatt kaldere enn væsken.</translation>
        </message>
        <message>
            <source>The delay: nothing happens at first.</source>
            <translation>Forsinkelsen: først skjer ingenting.</translation>
        </message>
        <message>
            <source>Hardly a rise in the first minute or two, then it comes.</source>
            <translation>Nesten ingen stigning det første minuttet eller to, så kommer den.</translation>
        </message>
        <message>
            <source>A minute without a rise: empty.</source>
            <translation>Et minutt uten stigning: tomt.</translation>
        </message>
        <message>
            <source>Where did the heat go in the first two minutes?</source>
            <translation>Hvor ble varmen av de første to minuttene?</translation>
        </message>
        <message>
            <source>Hold longer; a clamp at the low point colder than saturation voids the hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, clamp</translatorcomment>
            <translation>Hold lenger; en klemmeføler på lavpunktet kaldere enn metning gjør holdet ugyldig.</translation>
        </message>
        <message>
            <source>Liquid through the drain: the hose plugs</source>
            <translation>Væske gjennom avløpet: slangen tettes</translation>
        </message>
        <message>
            <source>The vent hose was put on the low drain, because it was nearer. Liquid comes, and turns to snow in the hose.</source>
            <translation>Avblåsningsslangen ble satt på det lave avløpet, fordi det var nærmere. Det kommer væske, og den blir til snø i slangen.</translation>
        </message>
        <message>
            <source>The flow dies with the valve open; the pressure stays.</source>
            <translation>Strømningen dør med åpen ventil; trykket blir.</translation>
        </message>
        <message>
            <source>The pressure stops falling, tens of bar above zero, with the valve open.</source>
            <translation>Trykket slutter å falle, titalls bar over null, med åpen ventil.</translation>
        </message>
        <message>
            <source>The flow has stopped, so it is empty.</source>
            <translation>Strømningen har stoppet, altså er det tomt.</translation>
        </message>
        <message>
            <source>On which side of the plug is the pressure? Where do you stand?</source>
            <translation>På hvilken side av proppen er trykket? Hvor står du?</translation>
        </message>
        <message>
            <source>Leave the valve open, keep clear, wait; vent from the top.</source>
            <translation>La ventilen stå åpen, hold avstand, vent; blås av fra toppen.</translation>
        </message>
        <message>
            <source>dry metal c</source>
            <translation>tørt metall °C</translation>
        </message>
        <message>
            <source>wet metal c</source>
            <translation>vått metall °C</translation>
        </message>
        <message>
            <source>liquid fraction</source>
            <translation>væskeandel</translation>
        </message>
        <message>
            <source>nitrogen bar</source>
            <translation>nitrogen, bar</translation>
        </message>
        <message>
            <source>oil kg</source>
            <translation>olje kg</translation>
        </message>
        <message>
            <source>solid kg</source>
            <translation>tørris kg</translation>
        </message>
        <message>
            <source>water kg</source>
            <translation>vann kg</translation>
        </message>
        <message>
            <source>noise</source>
            <translation>støy</translation>
        </message>
        <message>
            <source>step</source>
            <translation>oppløsning</translation>
        </message>
        <message>
            <source>stuck from s</source>
            <translation>henger fra s</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>enhet</translation>
        </message>
        <message>
            <source>zero</source>
            <translation>nullpunkt</translation>
        </message>
        <message>
            <source>leak by g per s</source>
            <translation>ventillekkasje g/s</translation>
        </message>
        <message>
            <source>leak out bore mm</source>
            <translation>lekkasje ut, boring mm</translation>
        </message>
        <message>
            <source>supply liquid</source>
            <translation>tilførsel av væske</translation>
        </message>
        <message>
            <source>altitude</source>
            <translation>høyde oppgitt</translation>
        </message>
        <message>
            <source>insulated</source>
            <translation>isolert</translation>
        </message>
        <message>
            <source>volume l</source>
            <translation>volum L</translation>
        </message>
        <message>
            <source>altitude m</source>
            <translation>høyde m</translation>
        </message>
        <message>
            <source>ambient c</source>
            <translation>omgivelser °C</translation>
        </message>
        <message>
            <source>pump l per min</source>
            <translation>pumpe L/min</translation>
        </message>
        <message>
            <source>low point</source>
            <translation>lavpunkt</translation>
        </message>
        <message>
            <source>plugs</source>
            <translation>tettes</translation>
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
        <message>
            <source>Below the triple point: liquid that was left is dry ice now. Leave the vent shut and watch whether the pressure comes back.</source>
            <translation>Under trippelpunktet: væske som var igjen, er tørris nå. La avblåsningen være stengt, og se om trykket kommer tilbake.</translation>
        </message>
        <message>
            <source>Below the triple point: liquid that is left turns to dry ice. This vent has gone too far: close it at once (C).</source>
            <translation>Under trippelpunktet: væske som er igjen, blir til tørris. Denne avblåsningen gikk for langt: steng med en gang (C).</translation>
        </message>
        <message>
            <source>Below the stop line: close the vent at once (C).</source>
            <translation>Under stopplinjen: steng avblåsningen med en gang (C).</translation>
        </message>
    </context>
    <context>
        <name>Job</name>
        <message>
            <source>Typed words are not kept yet. End without them?</source>
            <translation>Skrevne ord er ikke beholdt ennå. Avslutte uten dem?</translation>
        </message>
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
            <source>Write your name first (top right).</source>
            <translation>Skriv navnet ditt først (øverst til høyre).</translation>
        </message>
        <message>
            <source>Typed and not kept yet: “{words}”. Keep it, or clear it.</source>
            <translation>Skrevet og ikke beholdt ennå: «{words}». Behold det eller slett det.</translation>
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
            <source>Sign: the one who did the work, and the supervisor.</source>
            <translation>Signer: den som gjorde arbeidet, og den ansvarlige.</translation>
        </message>
        <message>
            <source>This was practice: it is reported as it is and never signed.</source>
            <translation>Dette var øvelse: den rapporteres som den er og signeres aldri.</translation>
        </message>
        <message>
            <source>Report: writes the record as PDF into the job&apos;s folder. Read it.</source>
            <translation>Rapport: skriver protokollen som PDF i jobbens mappe. Les den.</translation>
        </message>
        <message>
            <source>Note: adds what is missing. Step back: opens the last step again.</source>
            <translation>Notat: legger til det som mangler. Steg tilbake: åpner det siste steget igjen.</translation>
        </message>
        <message>
            <source>Put away: closes the job. “Open a job” brings it back.</source>
            <translation>Legg bort: lukker jobben. «Åpne en jobb» henter den fram igjen.</translation>
        </message>
        <message>
            <source>What is left to do</source>
            <translation>Det som gjenstår</translation>
        </message>
        <message>
            <source>Read off</source>
            <translation>Les av</translation>
        </message>
        <message>
            <source>Write a plain number, such as 450 or 0.05.</source>
            <translation>Skriv et enkelt tall, for eksempel 450 eller 0,05.</translation>
        </message>
        <message>
            <source>not judged yet</source>
            <translation>ikke vurdert ennå</translation>
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
            <source>Technician&apos;s certificate</source>
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
            <source>Put the job&apos;s folder in</source>
            <translation>Legg jobbens mappe i</translation>
        </message>
        <message>
            <source>Your site&apos;s steps (TOML), empty for the usual</source>
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
            <source>A job&apos;s folder</source>
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
        <message>
            <source>, lock {name}</source>
            <translation>, lås {name}</translation>
        </message>
        <message>
            <source>, tag {name}</source>
            <translation>, merke {name}</translation>
        </message>
        <message>
            <source>shut</source>
            <translation>stengt</translation>
        </message>
        <message>
            <source>open</source>
            <translation>åpen</translation>
        </message>
        <message>
            <source>Tight</source>
            <translation>Tett</translation>
        </message>
        <message>
            <source>Leaking</source>
            <translation>Lekker</translation>
        </message>
        <message>
            <source>Not known yet</source>
            <translation>Ikke kjent ennå</translation>
        </message>
        <message>
            <source>Tight and dry</source>
            <translation>Tett og tørt</translation>
        </message>
        <message>
            <source>Leak</source>
            <translation>Lekkasje</translation>
        </message>
        <message>
            <source>Moisture</source>
            <translation>Fukt</translation>
        </message>
        <message>
            <source>Outgassing</source>
            <translation>Avgassing</translation>
        </message>
        <message>
            <source>Take it</source>
            <translation>Ta den med</translation>
        </message>
        <message>
            <source>Not this job&apos;s</source>
            <translation>Hører ikke hit</translation>
        </message>
        <message>
            <source>A vent is live. Is it this job&apos;s: take its readings?</source>
            <translation>En avblåsning pågår. Hører den til denne jobben: ta med målingene?</translation>
        </message>
        <message>
            <source>SIMULATED readings come. Take them into this job? It is practice from then on and can&apos;t be signed.</source>
            <translation>SIMULERTE målinger kommer. Ta dem med i denne jobben? Den er øvelse fra da av og kan ikke signeres.</translation>
        </message>
        <message>
            <source>Show it</source>
            <translation>Vis det</translation>
        </message>
        <message>
            <source>{count} missing. First: {what}</source>
            <translation>{count} mangler. Først: {what}</translation>
        </message>
        <message>
            <source>Missing: {what}</source>
            <translation>Mangler: {what}</translation>
        </message>
        <message>
            <source>Nothing is missing here: Step done ends this step.</source>
            <translation>Her mangler ingenting: «Steg utført» avslutter steget.</translation>
        </message>
        <message>
            <source>The steps of this site ask less than those of the program.</source>
            <translation>Stegene for dette anlegget krever mindre enn programmets egne.</translation>
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
            <source>Vent closed</source>
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
        <message>
            <source>End tour</source>
            <translation>Avslutt omvisning</translation>
        </message>
    </context>
    <context>
        <name>Keyboard</name>
        <message>
            <source>Space</source>
            <translation>Mellomrom</translation>
        </message>
        <message>
            <source>Ctrl</source>
            <translation>Ctrl</translation>
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
            <source>Liquid, % of volume</source>
            <translation>Væske, vol.-%</translation>
        </message>
        <message>
            <source>Altitude, m</source>
            <translation>Høyde, m</translation>
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
            <source>Room, m³</source>
            <translation>Rom, m³</translation>
        </message>
        <message>
            <source>Air changes an hour</source>
            <translation>Luftskifter per time</translation>
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
        <message>
            <source>not known</source>
            <translation>ikke kjent</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ingen</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} døgn</translation>
        </message>
        <message>
            <source>Charge, {unit}</source>
            <translation>Fylling, {unit}</translation>
        </message>
        <message>
            <source>or charge, {unit}</source>
            <translation>eller fylling, {unit}</translation>
        </message>
        <message>
            <source>Gauge range, {unit}</source>
            <translation>Måleområde, {unit}</translation>
        </message>
        <message>
            <source>Surroundings, {unit}</source>
            <translation>Omgivelser, {unit}</translation>
        </message>
        <message>
            <source>Relief setting, {unit}</source>
            <translation>Sikkerhetsventil, {unit}</translation>
        </message>
        <message>
            <source>Give the volume of the section, and the charge&apos;s {warmth} or {pressure}.</source>
            <translation>Oppgi seksjonens volum, og fyllingens {warmth} eller {pressure}.</translation>
        </message>
    </context>
    <context>
        <name>Plot</name>
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
            <source>before the vent</source>
            <translation>før avblåsningen</translation>
        </message>
        <message>
            <source>{name}, before the vent</source>
            <translation>{name}, før avblåsning</translation>
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
        <message>
            <source>if vapour only</source>
            <translation>hvis bare damp</translation>
        </message>
        <message>
            <source>least with liquid left</source>
            <translation>minst hvis væske er igjen</translation>
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
            <source>Liquid or leak-by: vent again</source>
            <translation>Væske eller lekkasje: blås av igjen</translation>
        </message>
        <message>
            <source>Liquid or leak-by: keep holding</source>
            <translation>Væske eller lekkasje: fortsett å holde</translation>
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
            <source>rows lost: {count}</source>
            <translation>tapte rader: {count}</translation>
        </message>
        <message>
            <source>cut off at the end</source>
            <translation>kuttet av på slutten</translation>
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
        <message>
            <source>Liquid left, bare steel</source>
            <translation>Væske igjen, bart stål</translation>
        </message>
        <message>
            <source>Vapour only</source>
            <translation>Bare damp</translation>
        </message>
        <message>
            <source>Liquid left, insulated</source>
            <translation>Væske igjen, isolert</translation>
        </message>
        <message>
            <source>Liquid left, quiet pressure</source>
            <translation>Væske igjen, rolig trykk</translation>
        </message>
        <message>
            <source>A valve leaks by</source>
            <translation>En ventil lekker gjennom</translation>
        </message>
        <message>
            <source>Dry ice</source>
            <translation>Tørris</translation>
        </message>
        <message>
            <source>Shut in full of liquid</source>
            <translation>Innestengt full av væske</translation>
        </message>
        <message>
            <source>At 1600 m, gauge in psig</source>
            <translation>På 1600 m, manometer i psig</translation>
        </message>
        <message>
            <source>Valve not recorded</source>
            <translation>Ventil ikke registrert</translation>
        </message>
        <message>
            <source>From another logger</source>
            <translation>Fra en annen logger</translation>
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
        <message>
            <source>The device answers but refuses ({exception}): check the unit number and the register map</source>
            <translation>Enheten svarer, men avviser ({exception}): kontroller enhetsnummeret (unit) og registerkartet</translation>
        </message>
    </context>
    <context>
        <name>Spoken</name>
        <message>
            <source>alarms</source>
            <translation>alarmer</translation>
        </message>
        <message>
            <source>events</source>
            <translation>hendelser</translation>
        </message>
        <message>
            <source>headroom above the triple point</source>
            <translation>avstand over trippelpunktet</translation>
        </message>
        <message>
            <source>pressure against heat content</source>
            <translation>trykk mot varmeinnhold</translation>
        </message>
        <message>
            <source>holds over each other</source>
            <translation>hold over hverandre</translation>
        </message>
        <message>
            <source>pressure against temperature</source>
            <translation>trykk mot temperatur</translation>
        </message>
        <message>
            <source>note</source>
            <translation>notat</translation>
        </message>
        <message>
            <source>name of the writer, may be empty</source>
            <translation>navn på den som skriver, kan stå tomt</translation>
        </message>
        <message>
            <source>plan</source>
            <translation>plan</translation>
        </message>
        <message>
            <source>plan in full</source>
            <translation>hele planen</translation>
        </message>
        <message>
            <source>place in the recording</source>
            <translation>sted i opptaket</translation>
        </message>
        <message>
            <source>section: nothing known yet</source>
            <translation>seksjon: ingenting kjent ennå</translation>
        </message>
        <message>
            <source>section: {state}</source>
            <translation>seksjon: {state}</translation>
        </message>
        <message>
            <source>age of the newest reading</source>
            <translation>alder på nyeste avlesning</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>temperatur</translation>
        </message>
        <message>
            <source>recording</source>
            <translation>opptak</translation>
        </message>
        <message>
            <source>sound</source>
            <translation>lyd</translation>
        </message>
        <message>
            <source>source</source>
            <translation>kilde</translation>
        </message>
        <message>
            <source>pressure and temperature against time</source>
            <translation>trykk og temperatur mot tid</translation>
        </message>
        <message>
            <source>margin</source>
            <translation>margin</translation>
        </message>
        <message>
            <source>pressure</source>
            <translation>trykk</translation>
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
        <name>Steps</name>
        <message>
            <source>Open a CO2 section for work and return it to service</source>
            <translation>Åpne en CO2-seksjon for arbeid og ta den i drift igjen</translation>
        </message>
        <message>
            <source>Plan and brief</source>
            <translation>Planlegg og orienter</translation>
        </message>
        <message>
            <source>Mark the section on the drawing: every valve, check valve, solenoid, regulator, relief valve, low point, top vent and oil pocket.</source>
            <translation>Merk seksjonen på tegningen: hver ventil, tilbakeslagsventil, magnetventil, regulator, sikkerhetsventil, lavpunkt, topplufting og oljelomme.</translation>
        </message>
        <message>
            <source>Run the plan: charge, stop pressure for this altitude and gauge, room concentration if all of it is let out.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Regn planen: fylling, stopptrykk for denne høyden og dette manometeret, konsentrasjon i rommet om alt slippes ut.</translation>
        </message>
        <message>
            <source>Agree who watches the gauge, who works the valve, the way out and the hand signals.</source>
            <translation>Avtal hvem som følger manometeret, hvem som bruker ventilen, veien ut og håndsignalene.</translation>
        </message>
        <message>
            <source>Cavities and check-valve pockets are trapped volumes of their own: the gauge can&apos;t see them. Plan a bleed for each.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Hulrom og lommer ved tilbakeslagsventiler er egne innestengte volumer: manometeret ser dem ikke. Planlegg lufting for hver.</translation>
        </message>
        <message>
            <source>The relief path must not be isolated with the section. Find the relief valve of this section and keep its way open.</source>
            <translation>Avlastningsveien må ikke stenges av med seksjonen. Finn sikkerhetsventilen til denne seksjonen og hold veien åpen.</translation>
        </message>
        <message>
            <source>Liquid shut between two valves rises by 7 to 16 bar per kelvin.</source>
            <translation>Væske stengt mellom to ventiler stiger 7 til 16 bar per kelvin.</translation>
        </message>
        <message>
            <source>A solenoid and a check valve in a row hide a trapped volume that nobody marked.</source>
            <translation>En magnetventil og en tilbakeslagsventil på rad skjuler et innestengt volum som ingen har merket.</translation>
        </message>
        <message>
            <source>The relief valve sits on the other side of a valve that will be shut.</source>
            <translation>Sikkerhetsventilen sitter på den andre siden av en ventil som skal stenges.</translation>
        </message>
        <message>
            <source>Permit number</source>
            <translation>Nummer på arbeidstillatelsen</translation>
        </message>
        <message>
            <source>Heaters, fans and defrost on this section, and how they are locked off</source>
            <translation>Varmeelementer, vifter og avriming på denne seksjonen, og hvordan de er låst</translation>
        </message>
        <message>
            <source>Isolate, lock and tag</source>
            <translation>Steng av, lås og merk</translation>
        </message>
        <message>
            <source>Lock off pump, compressor, fans, heaters and hot-gas defrost.</source>
            <translation>Lås pumpe, kompressor, vifter, varmeelementer og varmgassavriming.</translation>
        </message>
        <message>
            <source>Shut the liquid supply valve first, let the plant pull the section down, then shut the outlet. Never shut both ends on liquid.</source>
            <translation>Steng væsketilførselen først, la anlegget suge ned seksjonen, og steng så utløpet. Steng aldri begge ender på væske.</translation>
        </message>
        <message>
            <source>Write down each valve by name, lock it, tag it.</source>
            <translation>Skriv opp hver ventil med navn, lås den, merk den.</translation>
        </message>
        <message>
            <source>A relief path must not be isolated with the section.</source>
            <translation>En avlastningsvei må ikke stenges av med seksjonen.</translation>
        </message>
        <message>
            <source>Stepper and solenoid valves hold in one direction only: shut the hand valve as well.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Steppermotor- og magnetventiler holder bare én vei: steng håndventilen også.</translation>
        </message>
        <message>
            <source>If the pressure rises faster than 2 bar/min or passes 0.9 of the rated pressure, open the vent at once.</source>
            <translation>Stiger trykket raskere enn 2 bar/min eller over 0,9 av tillatt trykk, åpne avblåsningen straks.</translation>
        </message>
        <message>
            <source>Trapped liquid bursts a gasket within minutes; a gauge outside that pocket shows nothing.</source>
            <translation>Innestengt væske sprenger en pakning på minutter; et manometer utenfor den lommen viser ingenting.</translation>
        </message>
        <message>
            <source>A defrost or a controller opens a valve while the section is being vented.</source>
            <translation>En avriming eller en regulator åpner en ventil mens seksjonen blåses av.</translation>
        </message>
        <message>
            <source>Every valve on the isolation list is shut, locked and tagged</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Hver ventil på avstengningslisten er stengt, låst og merket</translation>
        </message>
        <message>
            <source>The section&apos;s relief path is not isolated with the section</source>
            <translation>Seksjonens avlastningsvei er ikke stengt av med seksjonen</translation>
        </message>
        <message>
            <source>Prove the isolation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Vis at avstengningen er tett</translation>
        </message>
        <message>
            <source>Watch the pressure for 2 to 5 minutes with the clamp reading.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Følg trykket i 2 til 5 minutter med klemmeføleren på.</translation>
        </message>
        <message>
            <source>Pressure that follows the metal: tight. A straight rise that ignores the temperature: a supply valve passes.</source>
            <translation>Trykk som følger metallet: tett. En rett stigning uten hensyn til temperaturen: en tilførselsventil lekker.</translation>
        </message>
        <message>
            <source>A valve that passes refills the section while the cover is off: double block and bleed, or stop the job.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>En ventil som lekker, fyller seksjonen igjen mens dekselet er av: dobbel avstenging med lufting, eller stopp jobben.</translation>
        </message>
        <message>
            <source>0.1 g/s past a supply valve looks like liquid boiling in a 10 litre section.</source>
            <translation>0,1 g/s forbi en tilførselsventil ligner kokende væske i en seksjon på 10 liter.</translation>
        </message>
        <message>
            <source>No closed time was seen: check that the readings arrive and that the vent is shut.</source>
            <translation>Det ble ikke sett noen stengt tid: sjekk at målingene kommer og at avblåsningen er stengt.</translation>
        </message>
        <message>
            <source>The pressure keeps rising: open the vent, find the valve that passes.</source>
            <translation>Trykket stiger videre: åpne avblåsningen, finn ventilen som lekker.</translation>
        </message>
        <message>
            <source>People, air and hose</source>
            <translation>Folk, luft og slange</translation>
        </message>
        <message>
            <source>Go through the five points on the spot, with the second person present.</source>
            <translation>Gå gjennom de fem punktene på stedet, med den andre personen til stede.</translation>
        </message>
        <message>
            <source>Tie the hose down at its end and every metre. Bond it: blown snow charges it.</source>
            <translation>Bind fast slangen i enden og hver meter. Jord den: blåst snø lader den opp.</translation>
        </message>
        <message>
            <source>An oxygen alarm is not a CO2 alarm: at 40 000 ppm CO2 it still reads 20.1 %, above its 19.5 % alarm.</source>
            <translation>En oksygenalarm er ingen CO2-alarm: ved 40 000 ppm CO2 viser den ennå 20,1 %, over alarmgrensen på 19,5 %.</translation>
        </message>
        <message>
            <source>Cold CO2 is over twice as heavy as air: it lies in pits, wells and docks and runs down stairs.</source>
            <translation>Kald CO2 er over dobbelt så tung som luft: den ligger i groper, sjakter og ramper og renner ned trapper.</translation>
        </message>
        <message>
            <source>No flame and no heat gun on a closed section; no spark near a snow jet.</source>
            <translation>Ingen flamme og ingen varmluftpistol på en stengt seksjon; ingen gnist nær en snøstråle.</translation>
        </message>
        <message>
            <source>A loose hose whips: 140 N of thrust from a 6.3 mm bore at 35 bar g.</source>
            <translation>En løs slange pisker: 140 N skyv fra 6,3 mm boring ved 35 bar g.</translation>
        </message>
        <message>
            <source>The wind takes the cloud to an air intake or under a door.</source>
            <translation>Vinden tar skyen til et luftinntak eller under en dør.</translation>
        </message>
        <message>
            <source>CO2 meter on at the breathing zone, and low spots measured (an oxygen alarm is not a CO2 meter)</source>
            <translation>CO2-måler på i pustehøyde, og lavpunkter målt (en oksygenalarm er ingen CO2-måler)</translation>
        </message>
        <message>
            <source>Second person in sight, knows the way out and does not come in after anybody without breathing apparatus</source>
            <translation>Andre person i sikte, kjenner veien ut og går ikke inn etter noen uten pusteapparat</translation>
        </message>
        <message>
            <source>Hose tied down at its end and every metre, and bonded</source>
            <translation>Slangen bundet fast i enden og hver meter, og jordet</translation>
        </message>
        <message>
            <source>Outlet away from air intakes, pits, doors and people</source>
            <translation>Utløpet unna luftinntak, groper, dører og folk</translation>
        </message>
        <message>
            <source>Face, hand and ear protection on</source>
            <translation>Ansikts-, hånd- og hørselvern på</translation>
        </message>
        <message>
            <source>The air is above 5000 ppm or nobody measured it: leave, ventilate, find out why.</source>
            <translation>Luften er over 5000 ppm eller ingen har målt den: gå ut, luft ut, finn ut hvorfor.</translation>
        </message>
        <message>
            <source>Connect the gauge and check its zero</source>
            <translation>Koble til manometeret og sjekk nullpunktet</translation>
        </message>
        <message>
            <source>Connect gauges and vent at the top, vapour port. Take out core depressors, check-valve couplers and sight strainers.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: strainer</translatorcomment>
            <translation>Koble manometre og avblåsning øverst, på damputtaket. Ta ut ventilnåltrykkere, koblinger med tilbakeslag og siler.</translation>
        </message>
        <message>
            <source>Open the gauge to air once, note what it shows, give the altitude or the barometer.</source>
            <translation>Åpne manometeret mot luft én gang, noter hva det viser, oppgi høyden eller barometeret.</translation>
        </message>
        <message>
            <source>Purge the hose with the section&apos;s own vapour and see both gauges move when the valve is cracked.</source>
            <translation>Skyll slangen med seksjonens egen damp og se at begge manometrene rører seg når ventilen åpnes så vidt.</translation>
        </message>
        <message>
            <source>Throttle at the open end. Anything narrower downstream is where a plug forms.</source>
            <translation>Strup i den åpne enden. Der det er trangere etterpå, dannes en propp.</translation>
        </message>
        <message>
            <source>A gauge that shows 0.3 bar too much at 2000 m leaves half of the margin.</source>
            <translation>Et manometer som viser 0,3 bar for mye på 2000 m, lar halve marginen være igjen.</translation>
        </message>
        <message>
            <source>Keep out of line with plugs, caps and covers.</source>
            <translation>Hold deg unna linjen til plugger, hetter og deksler.</translation>
        </message>
        <message>
            <source>A coupler with a check valve becomes the plug.</source>
            <translation>En kobling med tilbakeslagsventil blir proppen.</translation>
        </message>
        <message>
            <source>The gauge&apos;s own valve is shut: a perfectly quiet trace that means nothing.</source>
            <translation>Manometerets egen ventil er stengt: en helt rolig kurve som ikke betyr noe.</translation>
        </message>
        <message>
            <source>The gauge was seen to move when the valve was cracked</source>
            <translation>Manometeret ble sett å røre seg da ventilen ble åpnet så vidt</translation>
        </message>
        <message>
            <source>Zero not noted or off by more than 0.1 bar: change the gauge.</source>
            <translation>Nullpunktet er ikke notert eller mer enn 0,1 bar feil: bytt manometer.</translation>
        </message>
        <message>
            <source>Vent vapour down to the stop pressure</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Blås av damp ned til stopptrykket</translation>
        </message>
        <message>
            <source>Vent from the top, slowly: 1 to 2 bar/min over the last 10 bar, one minute pauses at 20, 15, 10 and 7 bar g.</source>
            <translation>Blås av fra toppen, sakte: 1 til 2 bar/min over de siste 10 bar, ett minutts pause ved 20, 15, 10 og 7 bar g.</translation>
        </message>
        <message>
            <source>Close at the stop pressure on the screen. It holds the altitude, the gauge class and the zero.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, stop pressure</translatorcomment>
            <translation>Steng ved stopptrykket på skjermen. Det tar med høyden, manometerklassen og nullpunktet.</translation>
        </message>
        <message>
            <source>Stand out of line with plug, cap, cover and hose end.</source>
            <translation>Stå utenfor linjen til plugg, hette, deksel og slangeende.</translation>
        </message>
        <message>
            <source>Never strike a plug, and never heat the middle of one: there is pressure on both sides.</source>
            <translation>Slå aldri på en propp, og varm aldri midten av den: det er trykk på begge sider.</translation>
        </message>
        <message>
            <source>Venting liquid from a low drain makes snow in the pipe at the outlet.</source>
            <translation>Å blåse av væske fra et lavt avløp lager snø i røret ved utløpet.</translation>
        </message>
        <message>
            <source>No repressurising of steel that is below its minimum temperature.</source>
            <translation>Ikke sett trykk på stål som er under sin minimumstemperatur.</translation>
        </message>
        <message>
            <source>The pressure stalls although flow is heard: liquid boils. It stalls and the flow stops: a plug, or the triple point shelf.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Trykket stopper opp selv om strømning høres: væske koker. Det stopper og strømningen slutter: en propp, eller trinnet ved trippelpunktet.</translation>
        </message>
        <message>
            <source>Snow blocks the outlet and lets go later.</source>
            <translation>Snø tetter utløpet og løsner senere.</translation>
        </message>
        <message>
            <source>Still well above the stop pressure: a plug, much liquid, or a supply valve that passes.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Fortsatt godt over stopptrykket: en propp, mye væske, eller en tilførselsventil som lekker.</translation>
        </message>
        <message>
            <source>Hold tests: is there liquid left?</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Holdprøver: er det væske igjen?</translation>
        </message>
        <message>
            <source>Shut the vent, leave everything still, at least 10 minutes.</source>
            <translation>Steng avblåsningen, la alt være i ro, minst 10 minutter.</translation>
        </message>
        <message>
            <source>A rise that goes on straight: liquid, a passing valve or oil. Warm the low points with air, vent in bursts back to the stop pressure, never lower.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>En stigning som fortsetter rett: væske, en ventil som lekker, eller olje. Varm lavpunktene med luft, blås av i støt ned til stopptrykket, aldri lavere.</translation>
        </message>
        <message>
            <source>Repeat until two holds in a row show vapour only, with the lowest clamp at least 5 K above saturation. The prompt may already allow more after one: this job asks for the second.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, clamp</translatorcomment>
            <translation>Gjenta til to hold på rad viser bare damp, med den laveste klemmeføleren minst 5 K over metning. Anvisningen kan tillate mer etter ett: denne jobben ber om det andre.</translation>
        </message>
        <message>
            <source>The first minute of a rise is gas warming in every case. The late slope and the repeat tell.</source>
            <translation>Det første minuttet av en stigning er alltid gass som varmes. Den sene stigningen og gjentakelsen avgjør.</translation>
        </message>
        <message>
            <source>Flat is not empty: cold metal gives no heat, a shut gauge valve gives no movement.</source>
            <translation>Flatt er ikke tomt: kaldt metall gir ingen varme, en stengt manometerventil gir ingen bevegelse.</translation>
        </message>
        <message>
            <source>No flame, no heat gun on a closed section.</source>
            <translation>Ingen flamme, ingen varmluftpistol på en stengt seksjon.</translation>
        </message>
        <message>
            <source>A novice reads the first rise as liquid, or a slow large section as empty.</source>
            <translation>En nybegynner leser den første stigningen som væske, eller en treg, stor seksjon som tom.</translation>
        </message>
        <message>
            <source>A drier core holds liquid, oil gives off gas for an hour.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>En tørkerkjerne holder på væske, olje gir fra seg gass i en time.</translation>
        </message>
        <message>
            <source>Liquid is still there or the holds can&apos;t show that it is gone: warm the low points, or look for a passing valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Det er fortsatt væske der, eller holdene kan ikke vise at den er borte: varm lavpunktene, eller se etter en ventil som lekker.</translation>
        </message>
        <message>
            <source>The metal is as cold as the liquid would be: such a hold can&apos;t show liquid. Warm it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Metallet er like kaldt som væsken ville vært: et slikt hold kan ikke vise væske. Varm det.</translation>
        </message>
        <message>
            <source>Two-pressure hold, where a valve may pass</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold ved to trykk, der en ventil kan lekke</translation>
        </message>
        <message>
            <source>Hold again from about 10 bar g.</source>
            <translation>Hold igjen fra omtrent 10 bar g.</translation>
        </message>
        <message>
            <source>The same slope at both pressures: a valve passes. A smaller slope at the higher pressure: liquid.</source>
            <translation>Samme stigning ved begge trykk: en ventil lekker. Mindre stigning ved det høyere trykket: væske.</translation>
        </message>
        <message>
            <source>A passing valve fills the section again while people work at it.</source>
            <translation>En ventil som lekker, fyller seksjonen igjen mens folk arbeider på den.</translation>
        </message>
        <message>
            <source>Skipped, and the section comes up with the cover off.</source>
            <translation>Hoppet over, og seksjonen stiger med dekselet av.</translation>
        </message>
        <message>
            <source>The section was not held near 10 bar g: do so, or skip this step and say why.</source>
            <translation>Seksjonen ble ikke holdt nær 10 bar g: gjør det, eller hopp over steget og si hvorfor.</translation>
        </message>
        <message>
            <source>Through the triple point</source>
            <translation>Gjennom trippelpunktet</translation>
        </message>
        <message>
            <source>One calm pull from the stop pressure to 1 bar g, watching the local triple point on the screen.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Ett rolig drag fra stopptrykket til 1 bar g, med øye på det lokale trippelpunktet på skjermen.</translation>
        </message>
        <message>
            <source>A shelf there means liquid was left and is freezing now: close, stop, treat it as dry ice.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Et trinn der betyr at væske var igjen og fryser nå: steng, stopp, behandle det som tørris.</translation>
        </message>
        <message>
            <source>Never shut a section on snow: 1 kg closed in 10 litres ends at about 41 bar a at 20 degC.</source>
            <translation>Steng aldri en seksjon på snø: 1 kg stengt inne i 10 liter ender på omtrent 41 bar a ved 20 °C.</translation>
        </message>
        <message>
            <source>Never strike a plug.</source>
            <translation>Slå aldri på en propp.</translation>
        </message>
        <message>
            <source>63 % of the liquid at the shelf becomes snow and holds the job up for hours.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, shelf</translatorcomment>
            <translation>63 % av væsken ved trinnet blir snø og holder jobben opp i timer.</translation>
        </message>
        <message>
            <source>No hold says vapour only: do not go below the stop pressure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, stop pressure</translatorcomment>
            <translation>Ingen hold sier bare damp: ikke gå under stopptrykket.</translation>
        </message>
        <message>
            <source>The pressure does not come down: a shelf, a plug or a valve that passes.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Trykket kommer ikke ned: et trinn, en propp eller en ventil som lekker.</translation>
        </message>
        <message>
            <source>Hold at low pressure for dry ice</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hold ved lavt trykk for tørris</translation>
        </message>
        <message>
            <source>Shut the vent near 1 bar g for at least 10 minutes. No time alone ends this hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Steng avblåsningen nær 1 bar g i minst 10 minutter. Ingen tid alene avslutter dette holdet.</translation>
        </message>
        <message>
            <source>A rise to the local triple point that stays there is dry ice. Leave it vented and let it warm.</source>
            <translation>En stigning til det lokale trippelpunktet som blir der, er tørris. La avblåsningen stå åpen og la det varmes.</translation>
        </message>
        <message>
            <source>Never shut a section on snow and walk away.</source>
            <translation>Steng aldri en seksjon på snø og gå fra den.</translation>
        </message>
        <message>
            <source>A gauge at zero is not proof: snow at -78.5 degC sits at 0 bar g.</source>
            <translation>Null på manometeret er ikke bevis: snø på -78,5 °C ligger ved 0 bar g.</translation>
        </message>
        <message>
            <source>Never strike a plug; keep out of line with it.</source>
            <translation>Slå aldri på en propp; hold deg unna linjen dens.</translation>
        </message>
        <message>
            <source>The pressure stops at 4.2 bar g and somebody calls it stable.</source>
            <translation>Trykket stopper på 4,2 bar g, og noen kaller det stabilt.</translation>
        </message>
        <message>
            <source>Dry ice is not ruled out: leave it vented, warm the metal, hold again.</source>
            <translation>Tørris er ikke utelukket: la avblåsningen stå åpen, varm metallet, hold igjen.</translation>
        </message>
        <message>
            <source>Zero, bleeds open at both ends</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Null, lufting åpen i begge ender</translation>
        </message>
        <message>
            <source>Vent to zero. Open the bleeds at BOTH ends and leave them open.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Blås av til null. Åpne luftingen i BEGGE ender og la den stå åpen.</translation>
        </message>
        <message>
            <source>Shut them for 5 minutes once more, see no rise, then open them again.</source>
            <translation>Steng dem i 5 minutter én gang til, se at det ikke stiger, og åpne dem igjen.</translation>
        </message>
        <message>
            <source>A plug between gauge and section keeps pressure in while the gauge shows zero.</source>
            <translation>En propp mellom manometer og seksjon holder på trykk mens manometeret viser null.</translation>
        </message>
        <message>
            <source>Cavities and check-valve pockets: bleed each one.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Hulrom og lommer ved tilbakeslagsventiler: luft hver av dem.</translation>
        </message>
        <message>
            <source>A dial gauge is least to be trusted at zero: it may rest on a stop pin.</source>
            <translation>Et viserinstrument er minst å stole på ved null: viseren kan hvile på en stoppepinne.</translation>
        </message>
        <message>
            <source>One bleed only: pressure is left behind a shut strainer valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed, strainer</translatorcomment>
            <translation>Bare én lufting: det er trykk igjen bak en stengt filterventil.</translation>
        </message>
        <message>
            <source>Bleed at the first end open, seen and heard to pass freely</source>
            <translation>Lufting i første ende åpen, sett og hørt å gå fritt</translation>
        </message>
        <message>
            <source>Bleed at the second end open, seen and heard to pass freely</source>
            <translation>Lufting i andre ende åpen, sett og hørt å gå fritt</translation>
        </message>
        <message>
            <source>Cavities and check-valve pockets on the list bled, or none on this section</source>
            <translation>Hulrom og lommer ved tilbakeslagsventiler på listen luftet, eller ingen på denne seksjonen</translation>
        </message>
        <message>
            <source>The pressure comes back: return to the hold tests.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Trykket kommer tilbake: gå tilbake til holdprøvene.</translation>
        </message>
        <message>
            <source>Warm through</source>
            <translation>Varm gjennom</translation>
        </message>
        <message>
            <source>With the bleeds open, let the metal come up above 0 degC, better above the dew point.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>La metallet komme over 0 °C med luftingene åpne, helst over duggpunktet.</translation>
        </message>
        <message>
            <source>Skin sticks to cold metal. No flame.</source>
            <translation>Hud kleber til kaldt metall. Ingen flamme.</translation>
        </message>
        <message>
            <source>Wet air freezes inside and comes back as moisture in the vacuum test.</source>
            <translation>Fuktig luft fryser inni og kommer tilbake som fukt i vakuumprøven.</translation>
        </message>
        <message>
            <source>The metal stays cold: dry ice or liquid close by, or skip this step and say why.</source>
            <translation>Metallet forblir kaldt: tørris eller væske i nærheten, eller hopp over steget og si hvorfor.</translation>
        </message>
        <message>
            <source>Break the joint</source>
            <translation>Åpne koblingen</translation>
        </message>
        <message>
            <source>Stand beside the cover&apos;s axis. Slacken the far bolts first, crack the joint, wait, keep two bolts on until it is loose.</source>
            <translation>Stå ved siden av dekselets akse. Løsne de fjerneste boltene først, åpne koblingen så vidt, vent, la to bolter stå til det er løst.</translation>
        </message>
        <message>
            <source>Springs under covers: use the long jacking bolts.</source>
            <translation>Fjærer under deksler: bruk de lange avtrykksboltene.</translation>
        </message>
        <message>
            <source>A hiss: tighten again and go back to the low pressure hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>En hvesing: stram igjen og gå tilbake til holdet ved lavt trykk.</translation>
        </message>
        <message>
            <source>Out of line with plug and cover. 0.5 bar g on a 78 mm cover is 240 N.</source>
            <translation>Utenfor linjen til plugg og deksel. 0,5 bar g på et deksel på 78 mm er 240 N.</translation>
        </message>
        <message>
            <source>Stored force of springs under covers.</source>
            <translation>Lagret kraft i fjærer under deksler.</translation>
        </message>
        <message>
            <source>CO2 lies in the housing: no face in it. CO2 meter stays on.</source>
            <translation>CO2 ligger i huset: ikke ansiktet inn i det. CO2-måleren er fortsatt på.</translation>
        </message>
        <message>
            <source>Residual pressure, a spring, or snow behind the element.</source>
            <translation>Resttrykk, en fjær, eller snø bak elementet.</translation>
        </message>
        <message>
            <source>The supervisor has read the holds and agrees to the work (never one person alone)</source>
            <translation>Arbeidslederen har lest holdene og er enig i arbeidet (aldri én person alene)</translation>
        </message>
        <message>
            <source>Both bleeds are still open</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Begge luftingene er fortsatt åpne</translation>
        </message>
        <message>
            <source>The air is above 5000 ppm or nobody measured it: leave, ventilate.</source>
            <translation>Luften er over 5000 ppm eller ingen har målt den: gå ut, luft ut.</translation>
        </message>
        <message>
            <source>Do the work</source>
            <translation>Gjør arbeidet</translation>
        </message>
        <message>
            <source>Change element or core quickly; a drier core stays sealed until it is fitted. Catch the oil, cap openings.</source>
            <translation>Bytt element eller kjerne raskt; en tørkerkjerne er forseglet til den monteres. Samle opp oljen, tett åpninger.</translation>
        </message>
        <message>
            <source>Write down the parts and the time that the section was open.</source>
            <translation>Skriv opp delene og hvor lenge seksjonen var åpen.</translation>
        </message>
        <message>
            <source>A nitrogen purge suffocates without warning, and so does CO2 lying in the housing.</source>
            <translation>Nitrogenspyling kveler uten varsel, og det gjør CO2 i huset også.</translation>
        </message>
        <message>
            <source>Oil gives off CO2 on skin and eyes. Dry ice may sit behind the element.</source>
            <translation>Olje gir fra seg CO2 på hud og øyne. Tørris kan sitte bak elementet.</translation>
        </message>
        <message>
            <source>More than 15 minutes open: moisture, and a long evacuation.</source>
            <translation>Mer enn 15 minutter åpen: fukt, og en lang evakuering.</translation>
        </message>
        <message>
            <source>Parts replaced, with number and batch</source>
            <translation>Byttede deler, med nummer og parti</translation>
        </message>
        <message>
            <source>Minutes open to air</source>
            <translation>Minutter åpen mot luft</translation>
        </message>
        <message>
            <source>Oil removed and added, kg</source>
            <translation>Olje tatt ut og fylt på, kg</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Lukk</translation>
        </message>
        <message>
            <source>New gasket, bolts crosswise to their torque, caps on.</source>
            <translation>Ny pakning, bolter på kryss til sitt moment, hetter på.</translation>
        </message>
        <message>
            <source>Springs under covers: draw down evenly with the jacking bolts.</source>
            <translation>Fjærer under deksler: trekk jevnt ned med avtrykksboltene.</translation>
        </message>
        <message>
            <source>An old or frozen gasket is the next leak.</source>
            <translation>En gammel eller frossen pakning er den neste lekkasjen.</translation>
        </message>
        <message>
            <source>New gasket, torque crosswise</source>
            <translation>Ny pakning, moment på kryss</translation>
        </message>
        <message>
            <source>Standing-pressure test</source>
            <translation>Stående trykkprøve</translation>
        </message>
        <message>
            <source>Dry nitrogen through a regulator with a relief valve, or CO2 vapour: 5 bar, then 25, 50, 75, 100 % of the test pressure, 5 minutes each.</source>
            <translation>Tørr nitrogen gjennom en regulator med sikkerhetsventil, eller CO2-damp: 5 bar, så 25, 50, 75, 100 % av prøvetrykket, 5 minutter hver.</translation>
        </message>
        <message>
            <source>Wait 15 to 30 minutes for the heat of compression, then record pressure and two clamps in the shade, 30 minutes at least.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Vent 15 til 30 minutter på kompresjonsvarmen, ta så opp trykk og to klemmefølere i skyggen, minst 30 minutter.</translation>
        </message>
        <message>
            <source>Compressed nitrogen stores energy: nobody beside the section while it is raised.</source>
            <translation>Komprimert nitrogen lagrer energi: ingen ved seksjonen mens trykket heves.</translation>
        </message>
        <message>
            <source>Never oxygen or air on oil.</source>
            <translation>Aldri oksygen eller luft på olje.</translation>
        </message>
        <message>
            <source>Not above the rated pressure of the weakest part, and no steel below its minimum temperature under pressure.</source>
            <translation>Ikke over tillatt trykk for den svakeste delen, og ikke stål under minimumstemperaturen med trykk på.</translation>
        </message>
        <message>
            <source>Nitrogen asphyxiation: ventilate where it is let out.</source>
            <translation>Kvelning av nitrogen: luft ut der den slippes ut.</translation>
        </message>
        <message>
            <source>Sun on the pipe: 10 K is 2 bar at 52 bar g. Without a clamp reading the test says nothing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Sol på røret: 10 K er 2 bar ved 52 bar g. Uten måling fra klemmeføler sier prøven ingenting.</translation>
        </message>
        <message>
            <source>Nitrogen leaks past a valve into the live side.</source>
            <translation>Nitrogen lekker forbi en ventil inn i anleggssiden.</translation>
        </message>
        <message>
            <source>Test pressure and gas</source>
            <translation>Prøvetrykk og gass</translation>
        </message>
        <message>
            <source>Not shown tight: find the leak, or hold longer with steadier temperature.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ikke vist tett: finn lekkasjen, eller hold lenger med jevnere temperatur.</translation>
        </message>
        <message>
            <source>Evacuate, then the vacuum-rise test</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: vacuum rise</translatorcomment>
            <translation>Evakuer, deretter vakuumstigeprøven</translation>
        </message>
        <message>
            <source>Let the nitrogen out, evacuate from both ends to 500 micron (67 Pa, 0.67 mbar) or less at the far end.</source>
            <translation>Slipp ut nitrogenet, evakuer fra begge ender til 500 mikron (67 Pa, 0,67 mbar) eller mindre i den fjerne enden.</translation>
        </message>
        <message>
            <source>Shut the pump off and watch for 10 minutes: not above 1500 micron (200 Pa, 2 mbar).</source>
            <translation>Steng av pumpen og følg med i 10 minutter: ikke over 1500 mikron (200 Pa, 2 mbar).</translation>
        </message>
        <message>
            <source>Nitrogen asphyxiation where it is let out.</source>
            <translation>Kvelning av nitrogen der den slippes ut.</translation>
        </message>
        <message>
            <source>Open nothing to a section at vacuum: it draws air, or pump oil.</source>
            <translation>Åpne ingenting mot en seksjon i vakuum: den suger luft, eller pumpeolje.</translation>
        </message>
        <message>
            <source>500 micron does not dry metal colder than about -24 degC: warm it first.</source>
            <translation>500 mikron tørker ikke metall kaldere enn omtrent -24 °C: varm det først.</translation>
        </message>
        <message>
            <source>A straight rise is a leak; a rise that levels at the water pressure of the coldest metal is moisture; a first rise that levels low and is smaller the second time is outgassing.</source>
            <translation>En rett stigning er en lekkasje; en stigning som flater ut ved vanntrykket til det kaldeste metallet, er fukt; en første stigning som flater ut lavt og er mindre andre gang, er avgassing.</translation>
        </message>
        <message>
            <source>A hot-wire gauge is made for air: it shows water vapour up to twice too high.</source>
            <translation>En glødetrådmåler er laget for luft: den viser vanndamp opptil dobbelt så høyt.</translation>
        </message>
        <message>
            <source>Leak, moisture or outgassing: see what the curve says, then evacuate again.</source>
            <translation>Lekkasje, fukt eller avgassing: se hva kurven sier, og evakuer igjen.</translation>
        </message>
        <message>
            <source>Break the vacuum with vapour</source>
            <translation>Bryt vakuumet med damp</translation>
        </message>
        <message>
            <source>CO2 VAPOUR into the section up to about 10 bar g, metal above its minimum temperature.</source>
            <translation>CO2-DAMP inn i seksjonen opp til omtrent 10 bar g, metallet over sin minimumstemperatur.</translation>
        </message>
        <message>
            <source>No liquid before the pressure is well above the triple point.</source>
            <translation>Ingen væske før trykket er godt over trippelpunktet.</translation>
        </message>
        <message>
            <source>Liquid into a vacuum is an instant snow plug and cold, brittle steel.</source>
            <translation>Væske inn i vakuum er straks en snøpropp og kaldt, sprøtt stål.</translation>
        </message>
        <message>
            <source>No repressurising of steel below its minimum temperature.</source>
            <translation>Ikke sett trykk på stål under sin minimumstemperatur.</translation>
        </message>
        <message>
            <source>A cylinder with a dip tube gives liquid: check which one it is.</source>
            <translation>En flaske med stigerør gir væske: sjekk hvilken det er.</translation>
        </message>
        <message>
            <source>The wrong cylinder, or the liquid valve first.</source>
            <translation>Feil flaske, eller væskeventilen først.</translation>
        </message>
        <message>
            <source>Still too near the triple point for liquid: go on with vapour.</source>
            <translation>Fortsatt for nær trippelpunktet for væske: fortsett med damp.</translation>
        </message>
        <message>
            <source>Metal below its minimum temperature, or not known: warm it, give its minimum.</source>
            <translation>Metallet er under sin minimumstemperatur, eller ikke kjent: varm det, oppgi minimum.</translation>
        </message>
        <message>
            <source>Leak check</source>
            <translation>Lekkasjesøk</translation>
        </message>
        <message>
            <source>Bubbles or a CO2 leak detector on every joint, 10 minutes at 10 bar g, again at plant pressure.</source>
            <translation>Bobler eller en CO2-lekkasjesøker på hver kobling, 10 minutter ved 10 bar g, igjen ved anleggstrykk.</translation>
        </message>
        <message>
            <source>Stay out of line with plugs and covers while the pressure goes up.</source>
            <translation>Hold deg unna linjen til plugger og deksler mens trykket stiger.</translation>
        </message>
        <message>
            <source>A new molecular-sieve core takes up CO2 and pulls the pressure down for minutes: not a leak.</source>
            <translation>En ny molekylsilkjerne tar opp CO2 og drar trykket ned i minutter: ingen lekkasje.</translation>
        </message>
        <message>
            <source>Every opened joint checked, no leak found</source>
            <translation>Hver åpnet kobling sjekket, ingen lekkasje funnet</translation>
        </message>
        <message>
            <source>Return to service</source>
            <translation>Ta i drift igjen</translation>
        </message>
        <message>
            <source>Crack the vapour or outlet side first, let it equalise slowly, then liquid.</source>
            <translation>Åpne damp- eller utløpssiden så vidt først, la det utjevnes sakte, deretter væske.</translation>
        </message>
        <message>
            <source>Take off locks and tags in reverse order, reopen relief isolations, caps on.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Ta av låser og merker i omvendt rekkefølge, åpne avstengninger foran sikkerhetsventiler, hetter på.</translation>
        </message>
        <message>
            <source>Liquid into a warm section can raise the pressure above its rating.</source>
            <translation>Væske inn i en varm seksjon kan heve trykket over det tillatte.</translation>
        </message>
        <message>
            <source>Liquid hammer: slowly.</source>
            <translation>Væskeslag: sakte.</translation>
        </message>
        <message>
            <source>A relief isolation stays shut, a lock is forgotten.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>En avstengning foran en sikkerhetsventil forblir stengt, en lås glemmes.</translation>
        </message>
        <message>
            <source>All locks and tags taken off in reverse order</source>
            <translation>Alle låser og merker tatt av i omvendt rekkefølge</translation>
        </message>
        <message>
            <source>Relief isolations open</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Avstengninger foran sikkerhetsventiler åpne</translation>
        </message>
        <message>
            <source>CO2 charged, kg, kind (new, reused, recycled) and source</source>
            <translation>CO2 fylt, kg, type (ny, gjenbrukt, resirkulert) og kilde</translation>
        </message>
        <message>
            <source>Record and sign</source>
            <translation>Før protokoll og signer</translation>
        </message>
        <message>
            <source>Read the report, add what is missing, sign: the person who did it and the supervisor.</source>
            <translation>Les rapporten, legg til det som mangler, signer: den som gjorde det, og arbeidslederen.</translation>
        </message>
        <message>
            <source>Deviations told in the canteen instead of in the record.</source>
            <translation>Avvik som fortelles i kantina i stedet for i protokollen.</translation>
        </message>
    </context>
    <context>
        <name>Text</name>
        <message>
            <source>margin: no reading yet</source>
            <translation>margin: ingen måling ennå</translation>
        </message>
        <message>
            <source>gauge: no reading yet</source>
            <translation>manometer: ingen måling ennå</translation>
        </message>
        <message>
            <source>less than {least} ({percent} %)</source>
            <translation>mindre enn {least} ({percent} %)</translation>
        </message>
        <message>
            <source>at most {high} ({percent} %)</source>
            <translation>høyst {high} ({percent} %)</translation>
        </message>
        <message>
            <source>less than {least} % of the volume</source>
            <translation>mindre enn {least} % av volumet</translation>
        </message>
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
            <source>gauge · {gap} above stop {stop}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>manometer · {gap} over stopp {stop}</translation>
        </message>
        <message>
            <source>gauge · {gap} below stop {stop}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>manometer · {gap} under stopp {stop}</translation>
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
            <source>vent OPEN, by the pressure</source>
            <translation>avblåsning ÅPEN, etter trykket</translation>
        </message>
        <message>
            <source>vent CLOSED, by the pressure</source>
            <translation>avblåsning STENGT, etter trykket</translation>
        </message>
        <message>
            <source>vent valve: not recorded</source>
            <translation>avblåsning: ikke registrert</translation>
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
            <source>no upper bound</source>
            <translation>ingen øvre grense</translation>
        </message>
        <message>
            <source>share of the volume: no upper bound</source>
            <translation>andel av volumet: ingen øvre grense</translation>
        </message>
        <message>
            <source>Detection limit: not known yet</source>
            <translation>Påvisningsgrense: ikke kjent ennå</translation>
        </message>
        <message>
            <source>Before the vent: {time}</source>
            <translation>Før avblåsningen: {time}</translation>
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
            <source>{low} to {high} % of the volume</source>
            <translation>{low} til {high} % av volumet</translation>
        </message>
        <message>
            <source>Inside: no hold yet</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Inni: ingen hold ennå</translation>
        </message>
        <message>
            <source>liquid, or leak-by</source>
            <translation>væske eller lekkasje</translation>
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
        <name>WrongFile</name>
        <message>
            <source>{name} can&apos;t be opened: {why}.</source>
            <translation>{name} kan ikke åpnes: {why}.</translation>
        </message>
        <message>
            <source>{name} is empty: there is nothing to show.</source>
            <translation>{name} er tom: det er ingenting å vise.</translation>
        </message>
        <message>
            <source>{name} is not a readings log: it holds no text. Choose a CSV file.</source>
            <translation>{name} er ingen målelogg: den inneholder ikke tekst. Velg en CSV-fil.</translation>
        </message>
        <message>
            <source>{name}: {what}. The row above the readings must name each column with its unit, for instance {example}.</source>
            <translation>{name}: {what}. Raden over målingene må navngi hver kolonne med sin enhet, for eksempel {example}.</translation>
        </message>
        <message>
            <source>there is no such file</source>
            <translation>filen finnes ikke</translation>
        </message>
        <message>
            <source>no permission to read it</source>
            <translation>ingen tillatelse til å lese den</translation>
        </message>
        <message>
            <source>it is a folder</source>
            <translation>det er en mappe</translation>
        </message>
        <message>
            <source>no column is known as the pressure</source>
            <translation>ingen kolonne kjennes igjen som trykket</translation>
        </message>
        <message>
            <source>no column is known as the time</source>
            <translation>ingen kolonne kjennes igjen som tiden</translation>
        </message>
    </context>
</TS>
