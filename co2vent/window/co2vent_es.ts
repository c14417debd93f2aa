<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
    <context>
        <name>Alarm</name>
        <message>
            <source>now</source>
            <translation>ahora</translation>
        </message>
        <message>
            <source>earlier</source>
            <translation>antes</translation>
        </message>
        <message>
            <source>not seen yet (A)</source>
            <translation>aún sin confirmar (A)</translation>
        </message>
        <message>
            <source>ALARM:</source>
            <translation>ALARMA:</translation>
        </message>
        <message>
            <source>silent for {time}</source>
            <translation>en silencio {time}</translation>
        </message>
        <message>
            <source>Below the triple point</source>
            <translation>Por debajo del punto triple</translation>
        </message>
        <message>
            <source>Dry ice</source>
            <translation>Hielo seco</translation>
        </message>
        <message>
            <source>No data</source>
            <translation>Sin datos</translation>
        </message>
        <message>
            <source>Pressure too high</source>
            <translation>Presión demasiado alta</translation>
        </message>
        <message>
            <source>Vent line</source>
            <translation>Línea de venteo</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>Manómetro</translation>
        </message>
        <message>
            <source>Close the vent</source>
            <translation>Cerrar el venteo</translation>
        </message>
        <message>
            <source>Not recording</source>
            <translation>Sin registrar</translation>
        </message>
    </context>
    <context>
        <name>Banner</name>
        <message>
            <source>REPLAY: a recording, not the gauge</source>
            <translation>REPRODUCCIÓN: un registro, no el manómetro</translation>
        </message>
        <message>
            <source>CLASS: an exercise, not a vent</source>
            <translation>CLASE: un ejercicio, no un venteo</translation>
        </message>
        <message>
            <source>SIMULATED: invented readings</source>
            <translation>SIMULADO: lecturas inventadas</translation>
        </message>
    </context>
    <context>
        <name>Blind</name>
        <message>
            <source>Help is hidden until the answer is given. B shows prompt, verdict and help.</source>
            <translation>La ayuda queda oculta hasta que se dé la respuesta. B muestra indicación, veredicto y ayuda.</translation>
        </message>
        <message>
            <source>Prompt and verdict are hidden. B shows them.</source>
            <translation>La indicación y el veredicto están ocultos. B los muestra.</translation>
        </message>
        <message>
            <source>name hidden (B)</source>
            <translation>nombre oculto (B)</translation>
        </message>
    </context>
    <context>
        <name>Calibrate</name>
        <message>
            <source>Lay a ruler on the screen and make the bar 100 mm long.</source>
            <translation>Ponga una regla en la pantalla y haga la barra de 100 mm.</translation>
        </message>
    </context>
    <context>
        <name>Charge</name>
        <message>
            <source>full of liquid</source>
            <translation>lleno de líquido</translation>
        </message>
        <message>
            <source>liquid and vapour</source>
            <translation>líquido y vapor</translation>
        </message>
        <message>
            <source>vapour only</source>
            <translation>solo vapor</translation>
        </message>
        <message>
            <source>dry ice</source>
            <translation>hielo seco</translation>
        </message>
        <message>
            <source>not known yet</source>
            <translation>aún no se sabe</translation>
        </message>
        <message>
            <source>no leak-by seen</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>sin paso de válvula visto</translation>
        </message>
        <message>
            <source>leak-by suspected</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>posible paso de válvula</translation>
        </message>
        <message>
            <source>leak-by not determined</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>paso de válvula sin determinar</translation>
        </message>
    </context>
    <context>
        <name>Class</name>
        <message>
            <source>Leave the class? This run and its score are lost.</source>
            <translation>¿Salir de la práctica? Se pierden esta prueba y su puntuación.</translation>
        </message>
        <message>
            <source>Committed {said}. Space goes on.</source>
            <translation>Respuesta {said}. Espacio continúa.</translation>
        </message>
        <message>
            <source>The truth has been shown: a prediction doesn&apos;t count any more.</source>
            <translation>La verdad ya se ha mostrado: una predicción ya no cuenta.</translation>
        </message>
        <message>
            <source>first run</source>
            <translation>primera vez</translation>
        </message>
        <message>
            <source>vent valve {percent} % open</source>
            <translation>válvula de venteo {percent} % abierta</translation>
        </message>
        <message>
            <source>vent valve CLOSED</source>
            <translation>válvula de venteo CERRADA</translation>
        </message>
        <message>
            <source>paused</source>
            <translation>en pausa</translation>
        </message>
        <message>
            <source>What is inside now? Decide before the trace goes on.</source>
            <translation>¿Qué hay dentro ahora? Decida antes de seguir.</translation>
        </message>
        <message>
            <source>random section {seed}</source>
            <translation>tramo al azar {seed}</translation>
        </message>
        <message>
            <source>{words}: write yes or no</source>
            <translation>{words}: escriba yes o no</translation>
        </message>
        <message>
            <source>{words}: write a number</source>
            <translation>{words}: escriba un número</translation>
        </message>
        <message>
            <source>Practise: simulated sections</source>
            <translation>Practicar: tramos simulados</translation>
        </message>
        <message>
            <source>Run again beside the first: change one thing</source>
            <translation>Otra vez junto a la primera: cambie una cosa</translation>
        </message>
        <message>
            <source>exercises</source>
            <translation>ejercicios</translation>
        </message>
        <message>
            <source>Random section</source>
            <translation>Tramo al azar</translation>
        </message>
        <message>
            <source>what to change</source>
            <translation>qué cambiar</translation>
        </message>
        <message>
            <source>its value, or the seed</source>
            <translation>su valor, o la semilla</translation>
        </message>
        <message>
            <source>A section drawn at random; the same seed gives the same section again.</source>
            <translation>Un tramo elegido al azar; la misma semilla da el mismo tramo.</translation>
        </message>
        <message>
            <source>seed</source>
            <translation>semilla</translation>
        </message>
        <message>
            <source>Watch: {what}</source>
            <translation>Observe: {what}</translation>
        </message>
        <message>
            <source>The seed is a whole number.</source>
            <translation>La semilla es un número entero.</translation>
        </message>
        <message>
            <source>Preparing the section… the first time takes up to a minute.</source>
            <translation>Preparando el tramo… la primera vez tarda hasta un minuto.</translation>
        </message>
        <message>
            <source>cannot be told yet</source>
            <translation>aún no se puede saber</translation>
        </message>
        <message>
            <source>at {time}: {answer}</source>
            <translation>en {time}: {answer}</translation>
        </message>
        <message>
            <source>Really inside: {pressure}</source>
            <translation>Dentro de verdad: {pressure}</translation>
        </message>
        <message>
            <source>Liquid {liquid}, dry ice {ice}, vapour {vapour}</source>
            <translation>Líquido {liquid}, hielo seco {ice}, vapor {vapour}</translation>
        </message>
        <message>
            <source>Gas {gas}, dry metal {dry}, wet metal {wet}</source>
            <translation>Gas {gas}, metal seco {dry}, metal mojado {wet}</translation>
        </message>
        <message>
            <source>Dry ice in the vent hose: {mass}</source>
            <translation>Hielo seco en la manguera: {mass}</translation>
        </message>
        <message>
            <source>CO2 in oil and desiccant: {mass}</source>
            <translation>CO2 en aceite y desecante: {mass}</translation>
        </message>
        <message>
            <source>The gauge showed {pressure}.</source>
            <translation>El manómetro marcaba {pressure}.</translation>
        </message>
        <message>
            <source>The program said: {state}. {reason}</source>
            <translation>El programa dijo: {state}. {reason}</translation>
        </message>
        <message>
            <source>The class said: {said}.</source>
            <translation>La clase dijo: {said}.</translation>
        </message>
        <message>
            <source>The class did not commit itself.</source>
            <translation>La clase no se decidió.</translation>
        </message>
        <message>
            <source>Expected: {words}</source>
            <translation>Esperado: {words}</translation>
        </message>
        <message>
            <source>A novice says: {words}</source>
            <translation>Un novato dice: {words}</translation>
        </message>
        <message>
            <source>What decides: {words}</source>
            <translation>Qué decide: {words}</translation>
        </message>
        <message>
            <source>Talk about: {words}</source>
            <translation>Para comentar: {words}</translation>
        </message>
        <message>
            <source>SIMULATED PRACTICE: not a job, nothing was vented</source>
            <translation>PRÁCTICA SIMULADA: no es un trabajo, no se venteó nada</translation>
        </message>
        <message>
            <source>Changed:</source>
            <translation>Cambiado:</translation>
        </message>
        <message>
            <source>dry ice</source>
            <translation>hielo seco</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>líquido</translation>
        </message>
        <message>
            <source>vapour</source>
            <translation>vapor</translation>
        </message>
        <message>
            <source>nothing: as it is</source>
            <translation>nada: tal como está</translation>
        </message>
        <message>
            <source>Change one thing:</source>
            <translation>Cambiar una cosa:</translation>
        </message>
        <message>
            <source>chosen</source>
            <translation>elegida</translation>
        </message>
        <message>
            <source>Leak-by {flow}</source>
            <translation>Paso de válvula {flow}</translation>
        </message>
    </context>
    <context>
        <name>Command</name>
        <message>
            <source>Run again</source>
            <translation>Otra vez</translation>
        </message>
        <message>
            <source>Show prompts</source>
            <translation>Mostrar indicaciones</translation>
        </message>
        <message>
            <source>Score sheet</source>
            <translation>Hoja de resultados</translation>
        </message>
        <message>
            <source>Test sound</source>
            <translation>Probar sonido</translation>
        </message>
        <message>
            <source>Withdraw note</source>
            <translation>Retirar nota</translation>
        </message>
        <message>
            <source>Theme</source>
            <translation>Tema</translation>
        </message>
        <message>
            <source>Units</source>
            <translation>Unidades</translation>
        </message>
        <message>
            <source>Text size</source>
            <translation>Tamaño de texto</translation>
        </message>
        <message>
            <source>Full screen</source>
            <translation>Pantalla completa</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Idioma</translation>
        </message>
        <message>
            <source>Job</source>
            <translation>Trabajo</translation>
        </message>
        <message>
            <source>Quit</source>
            <translation>Salir</translation>
        </message>
        <message>
            <source>Screen size</source>
            <translation>Medir pantalla</translation>
        </message>
        <message>
            <source>Tour</source>
            <translation>Recorrido</translation>
        </message>
        <message>
            <source>Blind replay</source>
            <translation>A ciegas</translation>
        </message>
        <message>
            <source>Compare a vent</source>
            <translation>Comparar</translation>
        </message>
        <message>
            <source>Nothing to compare</source>
            <translation>Nada que comparar</translation>
        </message>
        <message>
            <source>{name} has no hold to compare; nothing was changed.</source>
            <translation>{name} no tiene ninguna espera que comparar; no se ha cambiado nada.</translation>
        </message>
        <message>
            <source>Save picture</source>
            <translation>Guardar imagen</translation>
        </message>
        <message>
            <source>Save drawing</source>
            <translation>Guardar dibujo</translation>
        </message>
        <message>
            <source>Save readings</source>
            <translation>Guardar lecturas</translation>
        </message>
        <message>
            <source>Saved: {path}</source>
            <translation>Guardado: {path}</translation>
        </message>
        <message>
            <source>Could not be written: {path}</source>
            <translation>No se pudo escribir: {path}</translation>
        </message>
        <message>
            <source>Undo note</source>
            <translation>Deshacer nota</translation>
        </message>
    </context>
    <context>
        <name>Connect</name>
        <message>
            <source>Section</source>
            <translation>Tramo</translation>
        </message>
        <message>
            <source>Volume of the section, litres</source>
            <translation>Volumen del tramo, litros</translation>
        </message>
        <message>
            <source>Altitude, m</source>
            <translation>Altitud, m</translation>
        </message>
        <message>
            <source>Gauge full scale, with unit</source>
            <translation>Fondo de escala, con unidad</translation>
        </message>
        <message>
            <source>Gauge accuracy, % of full scale</source>
            <translation>Exactitud, % del fondo</translation>
        </message>
        <message>
            <source>Gauge reads open to air, with unit</source>
            <translation>Lectura al aire, con unidad</translation>
        </message>
        <message>
            <source>Relief setting, with unit</source>
            <translation>Ajuste de alivio, con unidad</translation>
        </message>
        <message>
            <source>Insulated: yes, or no for bare metal</source>
            <translation>Aislado: yes; metal desnudo: no</translation>
        </message>
        <message>
            <source>Highest allowed pressure, with unit</source>
            <translation>Presión máxima, con unidad</translation>
        </message>
        <message>
            <source>{field} (optional)</source>
            <translation>{field} (opcional)</translation>
        </message>
        <message>
            <source>e.g. {example}</source>
            <translation>p. ej. {example}</translation>
        </message>
        <message>
            <source>Connect a gauge</source>
            <translation>Conectar un manómetro</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Fuente</translation>
        </message>
        <message>
            <source>Folder for recordings</source>
            <translation>Carpeta de registros</translation>
        </message>
        <message>
            <source>Opening…</source>
            <translation>Abriendo…</translation>
        </message>
        <message>
            <source>Test the source</source>
            <translation>Probar la fuente</translation>
        </message>
        <message>
            <source>Columns, if it sends no names</source>
            <translation>Columnas, si no envía nombres</translation>
        </message>
        <message>
            <source>Stop the test</source>
            <translation>Detener la prueba</translation>
        </message>
        <message>
            <source>The section</source>
            <translation>El tramo</translation>
        </message>
        <message>
            <source>The source</source>
            <translation>La fuente</translation>
        </message>
        <message>
            <source>The test was stopped; the source is free again</source>
            <translation>La prueba se detuvo; la fuente vuelve a estar libre</translation>
        </message>
        <message>
            <source>Changed: test the source again</source>
            <translation>Cambiado: pruebe la fuente otra vez</translation>
        </message>
        <message>
            <source>The test is over; test again</source>
            <translation>La prueba ha terminado; pruebe otra vez</translation>
        </message>
    </context>
    <context>
        <name>Core</name>
        <message>
            <source>No hold in the record: nothing shows what is inside.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ninguna espera en el registro: nada muestra qué hay dentro.</translation>
        </message>
        <message>
            <source>Vapour only was shown, but no longer stands: {reason}</source>
            <translation>Se mostró solo vapor, pero ya no vale: {reason}</translation>
        </message>
        <message>
            <source>the gauge is at the top of its range</source>
            <translation>el manómetro está al final de su rango</translation>
        </message>
        <message>
            <source>the reading has not changed for {time}, though it used to show noise</source>
            <translation>la lectura no cambia desde hace {time}, aunque antes mostraba ruido</translation>
        </message>
        <message>
            <source>the reading jumped by {jump} with the vent closed</source>
            <translation>la lectura saltó {jump} con el venteo cerrado</translation>
        </message>
        <message>
            <source>No verdict: {fault}. Close the vent and compare with the mechanical gauge.</source>
            <translation>Sin veredicto: {fault}. Cierre el venteo y compare con el manómetro mecánico.</translation>
        </message>
        <message>
            <source>A 16 or 25 bar gauge behind an isolating valve, opened below its range, is better.</source>
            <translation>Es mejor un manómetro de 16 o 25 bar detrás de una válvula de aislamiento que se abra ya por debajo de su rango.</translation>
        </message>
        <message>
            <source>A plan advises. Only the gauge and the holds say what is left inside.</source>
            <translation>Un plan solo aconseja. Únicamente el manómetro y las esperas dicen qué queda dentro.</translation>
        </message>
        <message>
            <source>About {liquid} of liquid is in it already: vented straight down it would leave about {ice} of dry ice behind a gauge at zero. Hold above the triple point and boil it out.</source>
            <translation>Ya hay dentro unos {liquid} de líquido: venteado de una vez dejaría unos {ice} de hielo seco tras un manómetro a cero. Espere por encima del punto triple y deje que hierva.</translation>
        </message>
        <message>
            <source>About {liquid} of liquid is left at the stop pressure, {stop}: vented straight down it would leave about {ice} of dry ice behind a gauge at zero. Hold above the triple point and boil it out.</source>
            <translation>A la presión de parada, {stop}, quedan unos {liquid} de líquido: venteado de una vez dejaría unos {ice} de hielo seco tras un manómetro a cero. Espere por encima del punto triple y deje que hierva.</translation>
        </message>
        <message>
            <source>Air</source>
            <translation>Aire</translation>
        </message>
        <message>
            <source>All of it in the room is {total} when mixed, above the IDLH of {limit}: nobody may be in the room, and the vent must lead outdoors.</source>
            <translation>Todo ello en la sala da {total} una vez mezclado, por encima del IDLH de {limit}: nadie puede estar en la sala y el venteo debe ir al exterior.</translation>
        </message>
        <message>
            <source>All of it in the room is {total} when mixed, above the {name} of {limit} ({averaged}): lead the vent outdoors.</source>
            <translation>Todo ello en la sala da {total} una vez mezclado, por encima de {name} de {limit} ({averaged}): lleve el venteo al exterior.</translation>
        </message>
        <message>
            <source>Altitude not given: sea level, {pressure}, is assumed.</source>
            <translation>Altitud no indicada: se supone el nivel del mar, {pressure}.</translation>
        </message>
        <message>
            <source>An oxygen meter is not a CO2 alarm: at 40 000 ppm CO2, immediately dangerous, it still shows about {oxygen} oxygen. Wear a CO2 meter.</source>
            <translation>Un medidor de oxígeno no es una alarma de CO2: con 40 000 ppm de CO2, peligro inmediato, aún muestra un {oxygen} de oxígeno. Lleve un medidor de CO2.</translation>
        </message>
        <message>
            <source>Assumed</source>
            <translation>Supuesto</translation>
        </message>
        <message>
            <source>Boiling liquid at the stop pressure is at {temperature}, colder than the rated minimum of {metals}: never repressurise or strike it until it has warmed.</source>
            <translation>El líquido que hierve a la presión de parada está a {temperature}, más frío que el mínimo admisible de {metals}: no lo represurice ni lo golpee hasta que se haya calentado.</translation>
        </message>
        <message>
            <source>CO2 equivalent</source>
            <translation>Equivalente de CO2</translation>
        </message>
        <message>
            <source>CO2 in it</source>
            <translation>CO2 dentro</translation>
        </message>
        <message>
            <source>Gauge range and class not given.</source>
            <translation>Rango y clase del manómetro no indicados.</translation>
        </message>
        <message>
            <source>If it is left shut</source>
            <translation>Si se deja cerrado</translation>
        </message>
        <message>
            <source>It ends at {end} and the section holds {charge}: it would be damaged.</source>
            <translation>Termina en {end} y en el tramo hay {charge}: se dañaría.</translation>
        </message>
        <message>
            <source>It ends at {end}, below the stop pressure: it can&apos;t show it.</source>
            <translation>Termina en {end}, por debajo de la presión de parada: no puede mostrarla.</translation>
        </message>
        <message>
            <source>Liquid fraction not given: {share} of the volume is assumed.</source>
            <translation>Fracción de líquido no indicada: se supone {share} del volumen.</translation>
        </message>
        <message>
            <source>Liquid-full: there is no vapour space, and warming raises the pressure {slope} for each kelvin. Open a relief path before anything else.</source>
            <translation>Lleno de líquido: no hay espacio de vapor y al calentarse la presión sube {slope} por cada kelvin. Abra una vía de alivio antes que nada.</translation>
        </message>
        <message>
            <source>Nitrogen, {now}. Leave it still; the standing-pressure test judges it. Nitrogen smothers: air the place before the section is opened.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Nitrógeno, {now}. No lo toque; lo juzga la prueba de presión en reposo. El nitrógeno asfixia: ventile el lugar antes de abrir el tramo.</translation>
        </message>
        <message>
            <source>No liquid is planned for; the holds must still show it. Cores, oil and low legs hold CO2 that a plan can&apos;t see.</source>
            <translation>El plan no cuenta con líquido; aun así las esperas deben demostrarlo. Cartuchos, aceite y tramos bajos retienen CO2 que un plan no ve.</translation>
        </message>
        <message>
            <source>No room was given: vent outdoors, away from intakes, doors, pits and low ground.</source>
            <translation>No se ha indicado sala: ventee al exterior, lejos de tomas de aire, puertas, fosos y zonas bajas.</translation>
        </message>
        <message>
            <source>Outside surface not given: a cylinder eight diameters long is assumed.</source>
            <translation>Superficie exterior no indicada: se supone un cilindro de ocho diámetros de largo.</translation>
        </message>
        <message>
            <source>Oxygen would still read {oxygen} then.</source>
            <translation>El oxígeno marcaría entonces aún {oxygen}.</translation>
        </message>
        <message>
            <source>Section</source>
            <translation>Tramo</translation>
        </message>
        <message>
            <source>Shut in, this charge reaches the relief setting after {kelvin} of warming, before it is as warm as its surroundings: never leave it shut in unwatched.</source>
            <translation>Encerrada, esta carga alcanza el ajuste de alivio tras {kelvin} de calentamiento, antes de estar tan caliente como su entorno: no la deje nunca encerrada sin vigilancia.</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Atención</translation>
        </message>
        <message>
            <source>The charge is already at or below the stop pressure, {stop}: do not vent it while liquid may be there; let it warm first.</source>
            <translation>La carga ya está a la presión de parada o por debajo, {stop}: no la ventee mientras pueda haber líquido; deje primero que se caliente.</translation>
        </message>
        <message>
            <source>The charge is at {temperature}, colder than the rated minimum of {metals}: never repressurise or strike it until it has warmed.</source>
            <translation>La carga está a {temperature}, más fría que el mínimo admisible de {metals}: no lo represurice ni lo golpee hasta que se haya calentado.</translation>
        </message>
        <message>
            <source>After what warming this charge reaches the relief setting is not known here: take it that it does, and never leave it shut in unwatched.</source>
            <translation>No se sabe aquí tras qué calentamiento esta carga alcanza el ajuste de alivio: dé por hecho que lo alcanza y no la deje nunca encerrada sin vigilancia.</translation>
        </message>
        <message>
            <source>The charge is below the triple point: no liquid can exist there, and what is not vapour is dry ice. Do not shut it in: when it warms it reaches the boiling pressure of the surroundings, and hundreds of bar where it fills half the section or more. Keep it vented at both ends until it has sublimed.</source>
            <translation>La carga está por debajo del punto triple: ahí no puede haber líquido, y lo que no es vapor es hielo seco. No la encierre: al calentarse alcanza la presión de ebullición del entorno, y cientos de bar donde llena media sección o más. Manténgala venteada por ambos extremos hasta que haya sublimado.</translation>
        </message>
        <message>
            <source>The charge stands above 75 % of its scale.</source>
            <translation>La carga está por encima del 75 % de su escala.</translation>
        </message>
        <message>
            <source>The charge&apos;s pressure is at or above the relief setting: expect it to lift.</source>
            <translation>La presión de la carga está en el ajuste de alivio o por encima: cuente con que se abra.</translation>
        </message>
        <message>
            <source>The gauge&apos;s class is +-{error}: {share} of the {margin} kept above the triple point.</source>
            <translation>La clase del manómetro es de +-{error}: {share} de los {margin} que se guardan sobre el punto triple.</translation>
        </message>
        <message>
            <source>The liquid swells and fills the section after {kelvin} of warming, at {temperature}; from there every kelvin adds several bar.</source>
            <translation>El líquido se dilata y llena el tramo tras {kelvin} de calentamiento, a {temperature}; desde ahí cada kelvin añade varios bar.</translation>
        </message>
        <message>
            <source>The pressure is above the critical pressure, {critical} absolute: vapour and liquid can&apos;t be told apart and the charge is not known. Bring it down in the plant first.</source>
            <translation>La presión está por encima de la crítica, {critical} absolutos: no se distinguen vapor y líquido y la carga no se conoce. Bájela primero en la instalación.</translation>
        </message>
        <message>
            <source>The stop pressure had to be raised for it.</source>
            <translation>Hubo que subir la presión de parada por ello.</translation>
        </message>
        <message>
            <source>The surroundings are no warmer than liquid at the stop pressure: nothing boils it out, and a quiet hold proves nothing.</source>
            <translation>El entorno no está más caliente que el líquido a la presión de parada: nada lo hace hervir y una espera tranquila no demuestra nada.</translation>
        </message>
        <message>
            <source>The vent is open and the pressure stands at {now}: a plug of dry ice, a shut valve, a gauge cut off, or liquid that boils as fast as it leaves. Close the vent; keep out of line with hose and cover; no flame, no blows.</source>
            <translation>El venteo está abierto y la presión se queda en {now}: un tapón de hielo seco, una válvula cerrada, un manómetro aislado o líquido que hierve tan rápido como sale. Cierre el venteo; fuera de la línea de manguera y tapa; sin llama, sin golpes.</translation>
        </message>
        <message>
            <source>The volume may be {share} more or less, and every mass with it.</source>
            <translation>El volumen puede ser un {share} mayor o menor, y con él todas las masas.</translation>
        </message>
        <message>
            <source>Unmixed it lies on the floor: up to {most} in the lowest half metre, above the {name} of {limit} ({averaged}). Nobody kneels or sits there; mind pits and stairs down.</source>
            <translation>Sin mezclar queda en el suelo: hasta {most} en el medio metro más bajo, por encima de {name} de {limit} ({averaged}). Que nadie se arrodille ni se siente allí; cuidado con fosos y escaleras hacia abajo.</translation>
        </message>
        <message>
            <source>Vent</source>
            <translation>Venteo</translation>
        </message>
        <message>
            <source>What is left</source>
            <translation>Lo que queda</translation>
        </message>
        <message>
            <source>a quiet gauge only means that little heat comes in</source>
            <translation>un manómetro quieto solo significa que entra poco calor</translation>
        </message>
        <message>
            <source>about {snow} of it turns to snow at the outlet and can plug it; keep the section above the stop pressure, hose restrained and bonded, nobody downhill</source>
            <translation>cerca del {snow} se convierte en nieve en la salida y puede taponarla; mantenga el tramo por encima de la presión de parada, manguera sujeta y puesta a tierra, nadie cuesta abajo</translation>
        </message>
        <message>
            <source>air changes per hour</source>
            <translation>las renovaciones de aire por hora</translation>
        </message>
        <message>
            <source>all of it in {room}</source>
            <translation>todo ello en {room}</translation>
        </message>
        <message>
            <source>austenitic stainless 304L / 316L</source>
            <translation>acero inoxidable austenítico 304L / 316L</translation>
        </message>
        <message>
            <source>boiling there at</source>
            <translation>hierve allí a</translation>
        </message>
        <message>
            <source>carbon steel A106 / A53 grade B</source>
            <translation>acero al carbono A106 / A53 grado B</translation>
        </message>
        <message>
            <source>clear to {limit} in</source>
            <translation>despejado a {limit} en</translation>
        </message>
        <message>
            <source>copper</source>
            <translation>cobre</translation>
        </message>
        <message>
            <source>drain the liquid from a low point, outdoors only</source>
            <translation>drenar el líquido por un punto bajo, solo al exterior</translation>
        </message>
        <message>
            <source>dry ice if straight down</source>
            <translation>hielo seco si es de una vez</translation>
        </message>
        <message>
            <source>exceeded on the floor; {limit}</source>
            <translation>superado en el suelo; {limit}</translation>
        </message>
        <message>
            <source>exceeded; {limit}</source>
            <translation>superado; {limit}</translation>
        </message>
        <message>
            <source>fresh air, if vented indoors</source>
            <translation>aire fresco si es en interior</translation>
        </message>
        <message>
            <source>gauge</source>
            <translation>manómetro</translation>
        </message>
        <message>
            <source>give the charge&apos;s temperature or its pressure before the vent: one of them, not both</source>
            <translation>indique la temperatura de la carga o su presión antes del venteo: una de las dos, no ambas</translation>
        </message>
        <message>
            <source>heat to boil it out</source>
            <translation>calor para que hierva</translation>
        </message>
        <message>
            <source>hold and vent in short bursts while ambient heat boils it, bare pipe, its metal as cold as the liquid (warmer metal boils some of it sooner)</source>
            <translation>esperar y ventear a golpes cortos mientras el calor ambiente lo hierve, tubo sin aislar, metal tan frío como el líquido (metal más caliente hierve una parte antes)</translation>
        </message>
        <message>
            <source>immediately dangerous</source>
            <translation>peligro inmediato</translation>
        </message>
        <message>
            <source>it stays below that when mixed</source>
            <translation>mezclado queda por debajo</translation>
        </message>
        <message>
            <source>kept; {limit}</source>
            <translation>respetado; {limit}</translation>
        </message>
        <message>
            <source>limit {limit}</source>
            <translation>límite {limit}</translation>
        </message>
        <message>
            <source>liquid at the stop pressure</source>
            <translation>líquido a presión de parada</translation>
        </message>
        <message>
            <source>liquid-full</source>
            <translation>lleno de líquido</translation>
        </message>
        <message>
            <source>liquid-full, after</source>
            <translation>lleno de líquido, tras</translation>
        </message>
        <message>
            <source>low-temperature steel A333 grade 6</source>
            <translation>acero para baja temperatura A333 grado 6</translation>
        </message>
        <message>
            <source>metal too cold there</source>
            <translation>metal demasiado frío allí</translation>
        </message>
        <message>
            <source>none</source>
            <translation>nada</translation>
        </message>
        <message>
            <source>none of those compared</source>
            <translation>ninguno de los comparados</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>no se conoce</translation>
        </message>
        <message>
            <source>of it dry ice</source>
            <translation>de ello hielo seco</translation>
        </message>
        <message>
            <source>of it liquid</source>
            <translation>de ello líquido</translation>
        </message>
        <message>
            <source>pressure per kelvin not known at this temperature</source>
            <translation>presión por kelvin no conocida a esta temperatura</translation>
        </message>
        <message>
            <source>relief setting</source>
            <translation>ajuste de alivio</translation>
        </message>
        <message>
            <source>several bar</source>
            <translation>varios bar</translation>
        </message>
        <message>
            <source>stop at</source>
            <translation>parar en</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>temperatura</translation>
        </message>
        <message>
            <source>the ambient temperature</source>
            <translation>la temperatura ambiente</translation>
        </message>
        <message>
            <source>the charge pressure</source>
            <translation>la presión de la carga</translation>
        </message>
        <message>
            <source>the charge temperature</source>
            <translation>la temperatura de la carga</translation>
        </message>
        <message>
            <source>the discharge coefficient</source>
            <translation>el coeficiente de descarga</translation>
        </message>
        <message>
            <source>the liquid fraction (by volume)</source>
            <translation>la fracción de líquido (en volumen)</translation>
        </message>
        <message>
            <source>the metal stays at the boiling temperature: never repressurise it, never strike it</source>
            <translation>el metal sigue a la temperatura de ebullición: no lo represurice nunca, no lo golpee nunca</translation>
        </message>
        <message>
            <source>the relief setting</source>
            <translation>el ajuste de alivio</translation>
        </message>
        <message>
            <source>the room</source>
            <translation>la sala</translation>
        </message>
        <message>
            <source>the same, insulated pipe</source>
            <translation>lo mismo, tubo aislado</translation>
        </message>
        <message>
            <source>the vent bore</source>
            <translation>el orificio de venteo</translation>
        </message>
        <message>
            <source>the volume</source>
            <translation>el volumen</translation>
        </message>
        <message>
            <source>this charge fills it at</source>
            <translation>esta carga lo llena a</translation>
        </message>
        <message>
            <source>this charge, after</source>
            <translation>esta carga, tras</translation>
        </message>
        <message>
            <source>this log is simulated and the job is not: it would become practice that can&apos;t be signed; choose the real log</source>
            <translation>este registro es simulado y el trabajo no: se volvería práctica que no se puede firmar; elija el registro real</translation>
        </message>
        <message>
            <source>this section</source>
            <translation>este tramo</translation>
        </message>
        <message>
            <source>time to the stop pressure</source>
            <translation>tiempo a la presión de parada</translation>
        </message>
        <message>
            <source>triple point here</source>
            <translation>punto triple aquí</translation>
        </message>
        <message>
            <source>unmixed, lowest 0.5 m</source>
            <translation>sin mezclar, los 0,5 m bajos</translation>
        </message>
        <message>
            <source>vent open or watched: a shut section climbs; no flame; not hotter than the hand bears</source>
            <translation>venteo abierto o vigilado: un tramo cerrado sube; sin llama; no más caliente de lo que aguanta la mano</translation>
        </message>
        <message>
            <source>vented by then</source>
            <translation>venteado hasta entonces</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>volumen</translation>
        </message>
        <message>
            <source>warm air on the low points, {heat} into the metal</source>
            <translation>aire caliente en los puntos bajos, {heat} al metal</translation>
        </message>
        <message>
            <source>while vented, ventilated</source>
            <translation>al ventear, ventilado</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} días</translation>
        </message>
        <message>
            <source>{kelvin} of warming</source>
            <translation>{kelvin} de calentamiento</translation>
        </message>
        <message>
            <source>{mass} ({share} by volume)</source>
            <translation>{mass} ({share} en volumen)</translation>
        </message>
        <message>
            <source>{mass}, at {temperature}</source>
            <translation>{mass}, a {temperature}</translation>
        </message>
        <message>
            <source>{name} must be a number from {low} to {high}, not {value}</source>
            <translation>{name}: debe ser un número de {low} a {high}, no {value}</translation>
        </message>
        <message>
            <source>{now} is below the triple point ({triple}) and liquid was not excluded: it turns to dry ice. Close the vent and hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>{now} está por debajo del punto triple ({triple}) y no se excluyó líquido: se vuelve hielo seco. Cierre el venteo y espere.</translation>
        </message>
        <message>
            <source>{now}: {above} above the stop pressure of {stop}. Vapour from the top, slowly.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>{now}: {above} sobre la presión de parada de {stop}. Vapor desde arriba, despacio.</translation>
        </message>
        <message>
            <source>{temperature} is above the critical temperature of {critical}: there is no liquid surface and no saturation pressure, so neither the charge nor anything that follows from it is known. Let it cool first.</source>
            <translation>{temperature} está por encima de la temperatura crítica de {critical}: no hay superficie de líquido ni presión de saturación, así que no se conoce la carga ni nada que se derive de ella. Deje que se enfríe primero.</translation>
        </message>
        <message>
            <source>{time} through {bore}, fully open, at the least</source>
            <translation>{time} por {bore}, totalmente abierto, como mínimo</translation>
        </message>
        <message>
            <source>{time}; poorly mixed {poor}</source>
            <translation>{time}; mal mezclado {poor}</translation>
        </message>
        <message>
            <source>{value} is no reading of {quantity}: it lies between {least} and {most}. Read the instrument again.</source>
            <translation>{value} no es una lectura posible ({quantity}): está entre {least} y {most}. Lea de nuevo el instrumento.</translation>
        </message>
        <message>
            <source>{way}, not before {time}</source>
            <translation>{way}, no antes de {time}</translation>
        </message>
        <message>
            <source>{now}, closed in. With meter, second person, hose, outlet and protection in order: vent vapour from the top, slowly, to {stop}.</source>
            <translation>{now}, encerrado. Con medidor, segunda persona, manguera, salida y protección en orden: ventee vapor desde arriba, despacio, hasta {stop}.</translation>
        </message>
        <message>
            <source>The hold has begun: leave the vent shut and everything still.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>La espera ha empezado: deje el venteo cerrado y no toque nada.</translation>
        </message>
        <message>
            <source>no pressure</source>
            <translation>sin presión</translation>
        </message>
        <message>
            <source>No reading has come yet; rely on the mechanical gauge.</source>
            <translation>Aún no ha llegado ninguna lectura; fíese del manómetro mecánico.</translation>
        </message>
        <message>
            <source>Readings have stopped: close the vent and read the mechanical gauge; if it rises, vent.</source>
            <translation>Ya no llegan lecturas: cierre el venteo y lea el manómetro mecánico; si sube, ventee.</translation>
        </message>
        <message>
            <source>Closed in at {now}, over {limit}: 90 % of the lowest of relief setting, rated pressure and gauge range.</source>
            <translation>Encerrado a {now}, más de {limit}: el 90 % del menor entre ajuste de alivio, presión admisible y rango del manómetro.</translation>
        </message>
        <message>
            <source>The pressure stands at the triple point ({now}) with the vent open: liquid is freezing. Close the vent; keep out of line with hose and cover; never strike a plug.</source>
            <translation>La presión se queda en el punto triple ({now}) con el venteo abierto: el líquido se congela. Cierre el venteo; fuera de la línea de manguera y tapa; nunca golpee un tapón.</translation>
        </message>
        <message>
            <source>At {now} without a verdict before: snow can lie under a gauge at zero. Leave the vented side open, let it warm, keep out of line; a gauge at zero is no proof.</source>
            <translation>A {now} sin veredicto antes: puede haber nieve con el manómetro a cero. Deje abierto el lado venteado, deje que se caliente, fuera de la línea; un manómetro a cero no prueba nada.</translation>
        </message>
        <message>
            <source>At {now} after vapour only. Open both bleeds and leave them open; CO2 meter at the low spots; keep out of line of the cover. Then the site&apos;s own procedure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>A {now} tras solo vapor. Abra ambas purgas y déjelas abiertas; medidor de CO2 en los puntos bajos; fuera de la línea de la tapa. Después, el procedimiento propio del sitio.</translation>
        </message>
        <message>
            <source>Near 1 bar g ({now}): close and watch for a climb to {triple}, the sign of dry ice.</source>
            <translation>Cerca de 1 bar g ({now}): cierre y vigile una subida hasta {triple}, señal de hielo seco.</translation>
        </message>
        <message>
            <source>Now {now}. On to zero.</source>
            <translation>Ahora {now}. Siga a cero.</translation>
        </message>
        <message>
            <source>Now {now}. Stop near 1 bar g and hold for dry ice; a stand near {triple} means dry ice.</source>
            <translation>Ahora {now}. Pare cerca de 1 bar g y espere por hielo seco; si se queda cerca de {triple}, es hielo seco.</translation>
        </message>
        <message>
            <source>{now}{rate}; stop pressure {stop}, triple point {triple}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>{now}{rate}; presión de parada {stop}, punto triple {triple}.</translation>
        </message>
        <message>
            <source>{now}. A steep rise would mean liquid-full; {time} to see it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>{now}. Una subida brusca significaría lleno de líquido; {time} para verlo.</translation>
        </message>
        <message>
            <source>Open both bleeds and leave them open; keep out of line of the cover.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Abra ambas purgas y déjelas abiertas; fuera de la línea de la tapa.</translation>
        </message>
        <message>
            <source>hold {number} starts</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>empieza la espera {number}</translation>
        </message>
        <message>
            <source>no reading for more than {time}</source>
            <translation>sin lectura durante más de {time}</translation>
        </message>
        <message>
            <source>readings stopped</source>
            <translation>las lecturas se detuvieron</translation>
        </message>
        <message>
            <source>readings are back; a verdict starts from here</source>
            <translation>vuelven las lecturas; el veredicto empieza desde aquí</translation>
        </message>
        <message>
            <source>vapour only no longer stands: {why}</source>
            <translation>solo vapor ya no vale: {why}</translation>
        </message>
        <message>
            <source>hold {number}: {why}; its evidence starts anew</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>espera {number}: {why}; su prueba empieza de nuevo</translation>
        </message>
        <message>
            <source>check the gauge: {fault}</source>
            <translation>revise el manómetro: {fault}</translation>
        </message>
        <message>
            <source>the clock ran backwards</source>
            <translation>el reloj fue hacia atrás</translation>
        </message>
        <message>
            <source>no reading for {time}: close the vent and read the mechanical gauge</source>
            <translation>sin lectura desde hace {time}: cierre el venteo y lea el manómetro mecánico</translation>
        </message>
        <message>
            <source>Not known yet: {why}, so the hold&apos;s evidence starts anew.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Aún no se sabe: {why}; la prueba de la espera empieza de nuevo.</translation>
        </message>
        <message>
            <source>the metal at {now} is below its rated minimum of {least}: no blows, no repressurising until it has warmed</source>
            <translation>el metal a {now} está por debajo de su mínimo admisible de {least}: sin golpes y sin volver a presurizar hasta que se caliente</translation>
        </message>
        <message>
            <source>below the local triple point with vapour only standing: watch for the shelf</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>por debajo del punto triple local con solo vapor vigente: vigile el escalón</translation>
        </message>
        <message>
            <source>ALARM: below the local triple point before vapour only was shown; liquid left turns to dry ice</source>
            <translation>ALARMA: por debajo del punto triple local antes de mostrarse solo vapor; el líquido que quede se vuelve hielo seco</translation>
        </message>
        <message>
            <source>hold {number} ends: {charge}. {reason}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>termina la espera {number}: {charge}. {reason}</translation>
        </message>
        <message>
            <source>hold {number}: {charge}. {reason}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Espera {number}: {charge}. {reason}</translation>
        </message>
        <message>
            <source>the pressure stands at the triple point</source>
            <translation>la presión se queda en el punto triple</translation>
        </message>
        <message>
            <source>the clock ran backwards; the hold starts anew</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>el reloj fue hacia atrás; la espera empieza de nuevo</translation>
        </message>
        <message>
            <source>vent open</source>
            <translation>venteo abierto</translation>
        </message>
        <message>
            <source>vent open, found from the pressure</source>
            <translation>venteo abierto, deducido de la presión</translation>
        </message>
        <message>
            <source>vent closed</source>
            <translation>venteo cerrado</translation>
        </message>
        <message>
            <source>vent closed, found from the pressure</source>
            <translation>venteo cerrado, deducido de la presión</translation>
        </message>
        <message>
            <source>dry ice: {reason}</source>
            <translation>hielo seco: {reason}</translation>
        </message>
        <message>
            <source>dry ice shows</source>
            <translation>se ve hielo seco</translation>
        </message>
        <message>
            <source>line {line}: {reason}</source>
            <translation>línea {line}: {reason}</translation>
        </message>
        <message>
            <source>the gauge shows no value: {cell}</source>
            <translation>el manómetro no muestra valor: {cell}</translation>
        </message>
        <message>
            <source>the hold shows liquid</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>la espera muestra líquido</translation>
        </message>
        <message>
            <source>the gauge was out of range</source>
            <translation>el manómetro estaba fuera de rango</translation>
        </message>
        <message>
            <source>flow into the section is suspected</source>
            <translation>posible entrada de flujo al tramo</translation>
        </message>
        <message>
            <source>the hold no longer shows it</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>la espera ya no lo muestra</translation>
        </message>
        <message>
            <source>the two gauges differ by {difference}</source>
            <translation>los dos manómetros difieren en {difference}</translation>
        </message>
        <message>
            <source>the vent is open and the pressure does not fall: a plug, a gauge cut off, or liquid that boils as fast as it leaves</source>
            <translation>el venteo está abierto y la presión no baja: un tapón, un manómetro aislado o líquido que hierve tan rápido como sale</translation>
        </message>
        <message>
            <source>the pressure stands at the triple point with the vent open: liquid is freezing</source>
            <translation>la presión se queda en el punto triple con el venteo abierto: el líquido se congela</translation>
        </message>
        <message>
            <source>rising between {least} and {most}</source>
            <translation>subida entre {least} y {most}</translation>
        </message>
        <message>
            <source>{inside}: after {time} the pressure still rises {slope} and {why}.</source>
            <translation>{inside}: tras {time} la presión aún sube {slope} y {why}.</translation>
        </message>
        <message>
            <source>Not known yet: {between}; liquid would keep up {least} or more{given}.</source>
            <translation>Aún no se sabe: {between}; el líquido mantendría {least} o más{given}.</translation>
        </message>
        <message>
            <source>Hold on; if it does not settle, vent to the stop pressure and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Siga esperando; si no se asienta, ventee hasta la presión de parada y espere otra vez.</translation>
        </message>
        <message>
            <source>the clamp is only {drive} from saturation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>la sonda de pinza está a solo {drive} de la saturación</translation>
        </message>
        <message>
            <source>dry metal that warms gives at most {most}</source>
            <translation>un metal seco que se calienta da como mucho {most}</translation>
        </message>
        <message>
            <source>{inside}: {pressure} and rising {slope} is more than gas warming from {start} can reach ({bound}).</source>
            <translation>{inside}: {pressure} y una subida de {slope} es más de lo que alcanza un gas que se calienta desde {start} ({bound}).</translation>
        </message>
        <message>
            <source>Not known yet: {time} into the hold; the first rise is gas warming in every case.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Aún no se sabe: {time} de espera; la primera subida es siempre gas que se calienta.</translation>
        </message>
        <message>
            <source>Keep holding.</source>
            <translation>Siga esperando.</translation>
        </message>
        <message>
            <source>Not known: the reading has not moved since the vent closed; a gauge that is cut off looks the same. Crack the vent and see it answer.</source>
            <translation>No se sabe: la lectura no se ha movido desde que se cerró el venteo; un manómetro aislado se ve igual. Abra un poco el venteo y vea si responde.</translation>
        </message>
        <message>
            <source>Crack the vent and see the gauge answer.</source>
            <translation>Abra un poco el venteo y vea si el manómetro responde.</translation>
        </message>
        <message>
            <source>Not known: {pressure} is too near the triple point to tell a quiet gas from melting dry ice.</source>
            <translation>No se sabe: {pressure} está demasiado cerca del punto triple para distinguir un gas quieto de hielo seco que se funde.</translation>
        </message>
        <message>
            <source>Keep holding: dry ice that has melted lets the pressure climb on.</source>
            <translation>Siga esperando: cuando el hielo seco se ha fundido, la presión sigue subiendo.</translation>
        </message>
        <message>
            <source>Not known: {between}, but the section has been below the triple point, and dry ice that melts swallows the heat that would show liquid.</source>
            <translation>No se sabe: {between}, pero el tramo ha estado por debajo del punto triple, y el hielo seco que se funde absorbe el calor que mostraría líquido.</translation>
        </message>
        <message>
            <source>Warm the lowest point {drive} above saturation and hold 5 min.</source>
            <translation>Caliente el punto más bajo a {drive} sobre la saturación y espere 5 min.</translation>
        </message>
        <message>
            <source>Not known: rising about {slope}, less than the {gain} that the metal&apos;s warming gives shut-in gas by itself: an outward leak may hide boiling.</source>
            <translation>No se sabe: sube unos {slope}, menos que los {gain} que da por sí solo al gas encerrado el calentamiento del metal: una fuga hacia fuera puede ocultar la ebullición.</translation>
        </message>
        <message>
            <source>Vapour only: this hold has shown it, and after {time} nothing speaks against it: rising about {slope}, and liquid above the allowable amount would keep up {least} or more ({source}).</source>
            <translation>Solo vapor: esta espera lo ha mostrado y a los {time} nada lo contradice: sube unos {slope}, y líquido por encima de la cantidad admisible mantendría {least} o más ({source}).</translation>
        </message>
        <message>
            <source>Prove the vent and the joints tight, and hold again.</source>
            <translation>Compruebe que venteo y juntas son estancos, y espere otra vez.</translation>
        </message>
        <message>
            <source>Not known yet: {between}, but the curve is not that of a closed section left alone.</source>
            <translation>Aún no se sabe: {between}, pero la curva no es la de un tramo cerrado en reposo.</translation>
        </message>
        <message>
            <source>Leave the section still and hold again.</source>
            <translation>Deje el tramo quieto y espere otra vez.</translation>
        </message>
        <message>
            <source>Not known: {between}, but it rose to {pressure} first; gas rises less from the same pressure the next time, liquid as much again.</source>
            <translation>No se sabe: {between}, pero antes subió a {pressure}; desde la misma presión el gas sube menos la vez siguiente, el líquido otro tanto.</translation>
        </message>
        <message>
            <source>Vent to the stop pressure and hold again: the rise must be smaller.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Ventee hasta la presión de parada y espere otra vez: la subida debe ser menor.</translation>
        </message>
        <message>
            <source>The clamp is {drive} above saturation: warm the lowest point to {wanted} above it and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>La sonda de pinza está {drive} sobre la saturación: caliente el punto más bajo hasta {wanted} por encima y espere otra vez.</translation>
        </message>
        <message>
            <source>Put a clamp on the lowest point, or say that the metal is bare.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Ponga una sonda de pinza en el punto más bajo, o indique que el metal está desnudo.</translation>
        </message>
        <message>
            <source>Not known: {between}, and with no metal shown warm this hold has no power; insulated liquid can rise as slowly as {least}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>No se sabe: {between}, y sin metal que se muestre caliente esta espera no tiene poder; un líquido aislado puede subir tan despacio como {least}.</translation>
        </message>
        <message>
            <source>Vapour only: after {time} the pressure rises at most {most}; liquid above the allowable amount would keep up {least} or more{given}.</source>
            <translation>Solo vapor: tras {time} la presión sube como mucho {most}; líquido por encima de la cantidad admisible mantendría {least} o más{given}.</translation>
        </message>
        <message>
            <source>Not known: {between}, and the clamp cools though the vent is shut, or the upper one is at saturation: what is near it may boil.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>No se sabe: {between}, y la sonda de pinza se enfría aunque el venteo está cerrado, o la superior está en saturación: lo que hay cerca puede hervir.</translation>
        </message>
        <message>
            <source>Hold on until both clamps stand or warm.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Siga esperando hasta que las dos sondas de pinza se estabilicen o se calienten.</translation>
        </message>
        <message>
            <source>{most}, {part} of it the metal&apos;s warming</source>
            <translation>{most}, de ello {part} por el calentamiento del metal</translation>
        </message>
        <message>
            <source>Flow past a closed valve suspected: {here_slope} near {here} and {there_slope} near {there} are one mass flow at two pressures; boiling would change, unless the liquid takes in little heat.</source>
            <translation>Posible paso por una válvula cerrada: {here_slope} cerca de {here} y {there_slope} cerca de {there} son el mismo caudal másico a dos presiones; la ebullición cambiaría, salvo que el líquido reciba poco calor.</translation>
        </message>
        <message>
            <source>the pressure is higher than it was shown for; something came in</source>
            <translation>la presión es mayor que aquella para la que se mostró; algo entró</translation>
        </message>
        <message>
            <source>the vent valve is said to be shut while the section is vented; from here it is found from the pressure</source>
            <translation>se dice que la válvula de venteo está cerrada mientras la sección se ventea; desde aquí se deduce de la presión</translation>
        </message>
        <message>
            <source>the pressure rises with the vent open</source>
            <translation>la presión sube con el venteo abierto</translation>
        </message>
        <message>
            <source>Not known: {between}, but no clamp shows the lowest metal warm; boiling in balance with an outward leak stands as still, and after a vent it climbs back to {pressure}.</source>
            <translation>No se sabe: {between}, pero ninguna sonda de pinza muestra caliente el metal más bajo; una ebullición en equilibrio con una fuga al exterior se queda igual de quieta y tras un venteo vuelve a subir a {pressure}.</translation>
        </message>
        <message>
            <source>Put a clamp on the lowest point, or vent to the stop pressure and hold again: it must stay lower.</source>
            <translation>Ponga una sonda de pinza en el punto más bajo, o ventee hasta la presión de parada y vuelva a retener: debe quedar más baja.</translation>
        </message>
        <message>
            <source>the gauge does not answer the vent</source>
            <translation>el manómetro no responde al venteo</translation>
        </message>
        <message>
            <source>A vent that is open to the air can&apos;t stand at {now}: the gauge, its plug or its datum is wrong. Read the mechanical gauge.</source>
            <translation>Un venteo abierto al aire no puede estar a {now}: falla el manómetro, su conector o su referencia. Lea el manómetro mecánico.</translation>
        </message>
        <message>
            <source>No hold near 1 bar g was made: snow can lie under a gauge at zero.</source>
            <translation>No se retuvo cerca de 1 bar g: puede haber nieve bajo un manómetro en cero.</translation>
        </message>
        <message>
            <source>the lowest metal is at saturation</source>
            <translation>el metal más bajo está en saturación</translation>
        </message>
        <message>
            <source>The clamp&apos;s reading never changes, and metal cools in a vent: see that it is alive and on the lowest metal; touched, it must move.</source>
            <translation>La lectura de la sonda de pinza no cambia nunca, y el metal se enfría en un venteo: compruebe que funciona y que está en el metal más bajo; al tocarla debe moverse.</translation>
        </message>
        <message>
            <source>The clamp has jumped, as one that hangs in the air does: fix it to the lowest point again.</source>
            <translation>La sonda de pinza ha saltado, como una que cuelga en el aire: fijarla otra vez en el punto más bajo.</translation>
        </message>
        <message>
            <source>Flow past a closed valve suspected: it rises {late_slope} near {late}, as {early_slope} near {early} before, though the lowest metal is only {late_drive} above saturation now and was {early_drive}; boiling would fade.</source>
            <translation>Posible paso por una válvula cerrada: sube {late_slope} cerca de {late}, como antes {early_slope} cerca de {early}, aunque el metal más bajo está ahora solo {late_drive} sobre la saturación y estaba {early_drive}; la ebullición cedería.</translation>
        </message>
        <message>
            <source>{count} holds in a row rose alike, and what boils dwindles: see that the isolation valves are shut and tight before venting again.</source>
            <translation>{count} esperas seguidas subieron igual, y lo que hierve disminuye: comprobar que las válvulas de aislamiento están cerradas y no pasan antes de ventear otra vez.</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Líquido</translation>
        </message>
        <message>
            <source>Liquid or leak-by</source>
            <translation>Líquido o paso por válvula</translation>
        </message>
        <message>
            <source>Hold on for {time} more: two pressures tell liquid from flow past a valve.</source>
            <translation>Mantener {time} más: dos presiones distinguen el líquido del paso por una válvula.</translation>
        </message>
        <message>
            <source>the lowest metal is {drive} above saturation</source>
            <translation>el metal más bajo está {drive} sobre la saturación</translation>
        </message>
        <message>
            <source>the metal is bare</source>
            <translation>el metal está desnudo</translation>
        </message>
        <message>
            <source>{time}, within {width} of it</source>
            <translation>{time}, a menos de {width}</translation>
        </message>
        <message>
            <source>level for {time} after rising {rise}</source>
            <translation>nivelada {time} tras subir {rise}</translation>
        </message>
        <message>
            <source>Liquid-full: the closed section rises {detail}, far faster than liquid with vapour above it can; open the vent path at once.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>Lleno de líquido: el tramo cerrado sube {detail}, mucho más deprisa de lo que puede un líquido con vapor encima; abra ya la vía de venteo.</translation>
        </message>
        <message>
            <source>Not vented yet: a closed charge at saturation says nothing of how much liquid there is.</source>
            <translation>Aún sin ventear: una carga cerrada en saturación no dice cuánto líquido hay.</translation>
        </message>
        <message>
            <source>{slope}, {steepness} per kelvin</source>
            <translation>{slope}, {steepness} por kelvin</translation>
        </message>
        <message>
            <source>Not vented yet; rising {slope}: heat, or flow past a valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Aún sin ventear; sube {slope}: calor, o paso por una válvula.</translation>
        </message>
        <message>
            <source>Not known yet: rising between {least} and {most} at {pressure}; dry ice would go on climbing to the triple point.</source>
            <translation>Aún no se sabe: subida entre {least} y {most} a {pressure}; con hielo seco seguiría subiendo hasta el punto triple.</translation>
        </message>
        <message>
            <source>Nitrogen: a standing-pressure test, judged as one (see the job or report); nothing here tells of CO2.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Nitrógeno: una prueba de presión en reposo, juzgada como tal (vea el trabajo o el informe); nada aquí habla de CO2.</translation>
        </message>
        <message>
            <source>Not known: {fault}, so the hold proves nothing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>No se sabe: {fault}, así que la espera no prueba nada.</translation>
        </message>
        <message>
            <source>Dry ice: the pressure climbed to the triple point and stands there ({shelf}). Keep the vented side open, warm gently, keep clear; no time alone ends it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Hielo seco: la presión subió hasta el punto triple y se queda ahí ({shelf}). Mantenga abierto el lado venteado, caliente con suavidad, apártese; ningún tiempo por sí solo lo termina.</translation>
        </message>
        <message>
            <source>closed, before the first vent</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>cerrado, antes del primer venteo</translation>
        </message>
        <message>
            <source>the closed time before the vent ends: {reason}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>acaba el tiempo cerrado antes del venteo: {reason}</translation>
        </message>
        <message>
            <source>Vapour only: together with the holds before, at most {share} of the {least} that liquid above the allowable amount would keep up{given}; this hold, after {time}, shows {rising}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Solo vapor: junto con las esperas anteriores, como mucho el {share} de los {least} que mantendría líquido por encima de la cantidad admisible{given}; esta espera, tras {time}, muestra {rising}.</translation>
        </message>
        <message>
            <source>Not known: {between}, quieter than liquid, but nothing shows that the vent is shut; a vent that carries off what boils stands as still.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>No se sabe: {between}, más quieto que con líquido, pero nada muestra que el venteo esté cerrado; un venteo que se lleva lo que hierve queda igual de quieto.</translation>
        </message>
        <message>
            <source>Say when the vent is opened and when it is closed, and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Indique cuándo se abre y cuándo se cierra el venteo y espere otra vez.</translation>
        </message>
        <message>
            <source>Not known yet: {between}; a small loss by a leak, which would hide boiling, is not excluded.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Aún no se sabe: {between}; no se excluye una pequeña pérdida por una fuga, que ocultaría la ebullición.</translation>
        </message>
        <message>
            <source>Hold on; a longer hold, or one more like it, narrows it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Siga esperando; una espera más larga, u otra igual, lo acota.</translation>
        </message>
        <message>
            <source>Hold on: boiling that gathers pace will show.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Siga esperando: una ebullición que se acelera se verá.</translation>
        </message>
        <message>
            <source>Not known: rising at most {most}, but faster now than before; what warms dry gas fades, and only boiling gathers pace.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>No se sabe: sube como mucho {most}, pero ahora más deprisa que antes; lo que calienta el gas seco se apaga, solo la ebullición se acelera.</translation>
        </message>
        <message>
            <source>Hold on; if it does not settle, vent to the stop pressure and hold again. Give the section&apos;s volume: in a small one liquid would show more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Siga esperando; si no se asienta, ventee hasta la presión de parada y espere otra vez. Indique el volumen del tramo: en uno pequeño el líquido se notaría más.</translation>
        </message>
        <message>
            <source>Not known: {between}, but the hold before lost pressure, or gained less than its metal&apos;s warming gives: an outward leak may hide boiling.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>No se sabe: {between}, pero la espera anterior perdió presión o ganó menos de lo que da el calentamiento de su metal: una fuga hacia fuera puede ocultar la ebullición.</translation>
        </message>
        <message>
            <source>Not known: a gauge that stands at {pressure} can sit over dry ice; what it gives off leaves by a joint that leaks or a vent not quite shut.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>No se sabe: un manómetro quieto en {pressure} puede estar sobre hielo seco; lo que este desprende sale por una unión que fuga o un venteo mal cerrado.</translation>
        </message>
        <message>
            <source>Keep the vented side open and warm the lowest point; only a tight section well above zero can show it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Deje abierto el lado venteado y caliente el punto más bajo; solo un tramo estanco y bien por encima de cero puede mostrarlo.</translation>
        </message>
        <message>
            <source>Half of the simulated sections that rise like this are not boiled off before {time}; with {power} W of gentle warmth on the low point, not before {warmed}.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: boil off</translatorcomment>
            <translation>La mitad de los tramos simulados que suben así no se ha evaporado antes de {time}; con {power} W de calor suave en el punto bajo, no antes de {warmed}.</translation>
        </message>
        <message>
            <source>Not known: {between}, but it rose to {pressure}, further than gas as warm as the clamp ({clamp}) can: something boiled, and may yet.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>No se sabe: {between}, pero subió hasta {pressure}, más de lo que puede un gas tan caliente como la sonda de pinza ({clamp}): algo hirvió, y quizá aún hierva.</translation>
        </message>
        <message>
            <source>Not known: {between}, but a hold before showed that {lost} or more leaves the section; with that added, the {least} of liquid is not excluded.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>No se sabe: {between}, pero una espera anterior mostró que salen {lost} o más del tramo; sumado eso, no se excluyen los {least} del líquido.</translation>
        </message>
        <message>
            <source>Say whether the metal is insulated: were it bare, liquid would keep up {least}, and this hold would decide.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Indique si el metal está aislado: si estuviera desnudo, el líquido mantendría {least} y esta espera decidiría.</translation>
        </message>
        <message>
            <source>Not known yet: {time} into the hold; one before fell or gained too little, and before {needed} boiling in balance with a leak can&apos;t be told from quiet.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language</translatorcomment>
            <translation>Aún no se sabe: {time} de espera; una anterior bajó o ganó demasiado poco, y antes de {needed} no se distingue una ebullición en equilibrio con una fuga de la calma.</translation>
        </message>
        <message>
            <source>{time} s without the rise of gas shut in</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>{time} s sin la subida del gas encerrado</translation>
        </message>
        <message>
            <source>Not known yet: {time} into a hold that began below the triple point; dry ice would climb to {triple} and stand there.</source>
            <translation>Aún no se sabe: {time} de una espera que empezó bajo el punto triple; con hielo seco subiría hasta {triple} y se quedaría ahí.</translation>
        </message>
        <message>
            <source>, with metal {drive} above the triple point</source>
            <translation>, con metal {drive} sobre el punto triple</translation>
        </message>
        <message>
            <source>No dry ice shows: {time} at {pressure}{given}, rising at most {most}; dry ice would give {least} or more.</source>
            <translation>No se ve hielo seco: {time} a {pressure}{given}, subida de como mucho {most}; el hielo seco daría {least} o más.</translation>
        </message>
        <message>
            <source>Dry ice was seen and nothing shows it gone: {pressure}, rising {slope} (snow there is at {snow}).</source>
            <translation>Se vio hielo seco y nada muestra que haya desaparecido: {pressure}, subida {slope} (la nieve ahí está a {snow}).</translation>
        </message>
        <message>
            <source>Dry ice</source>
            <translation>Hielo seco</translation>
        </message>
        <message>
            <source>Dry ice, or flow past a closed valve</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Hielo seco, o paso por una válvula cerrada</translation>
        </message>
        <message>
            <source>{found}: below the triple point at {pressure} and still climbing {slope} after {time}; metal warming gives at most {most} (snow there is at {snow}).</source>
            <translation>{found}: bajo el punto triple a {pressure} y aún sube {slope} tras {time}; el calentamiento del metal da como mucho {most} (la nieve ahí está a {snow}).</translation>
        </message>
        <message>
            <source>Not known yet: the hold has just begun; the first rise is gas warming in every case.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Aún no se sabe: la espera acaba de empezar; la primera subida es siempre gas que se calienta.</translation>
        </message>
        <message>
            <source>Not known: the closed section loses pressure ({slope}); an outward leak or a vent not shut can hide boiling. Prove the vent shut and hold again.</source>
            <translation>No se sabe: el tramo cerrado pierde presión ({slope}); una fuga hacia fuera o un venteo mal cerrado puede ocultar ebullición. Compruebe que el venteo está cerrado y espere otra vez.</translation>
        </message>
        <message>
            <source>Hold on to {pressure} before venting again; mild warmth on the low point speeds it.</source>
            <translation>Siga esperando hasta {pressure} antes de ventear otra vez; un calor suave en el punto bajo lo acelera.</translation>
        </message>
        <message>
            <source>Hold on to {pressure}: two pressures tell liquid from flow past a valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: leak-by</translatorcomment>
            <translation>Siga esperando hasta {pressure}: dos presiones distinguen líquido de paso por una válvula.</translation>
        </message>
        <message>
            <source>pressure</source>
            <translation>presión</translation>
        </message>
        <message>
            <source>pressure with the vent shut and no metal as cold as dry ice</source>
            <translation>presión con el venteo cerrado y sin metal tan frío como el hielo seco</translation>
        </message>
        <message>
            <source>pressure above the triple point</source>
            <translation>presión sobre el punto triple</translation>
        </message>
        <message>
            <source>pressure above the stop pressure</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>presión sobre la presión de parada</translation>
        </message>
        <message>
            <source>pressure rise</source>
            <translation>subida de presión</translation>
        </message>
        <message>
            <source>line temperature</source>
            <translation>temperatura del tubo</translation>
        </message>
        <message>
            <source>upper temperature</source>
            <translation>temperatura superior</translation>
        </message>
        <message>
            <source>ambient temperature</source>
            <translation>temperatura ambiente</translation>
        </message>
        <message>
            <source>coldest clamp above the metal&apos;s minimum</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>sonda de pinza más fría sobre el mínimo del metal</translation>
        </message>
        <message>
            <source>lowest clamp above saturation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>sonda de pinza más baja sobre la saturación</translation>
        </message>
        <message>
            <source>CO2 in the air</source>
            <translation>CO2 en el aire</translation>
        </message>
        <message>
            <source>gauge open to air off zero by</source>
            <translation>desvío del cero del manómetro al aire</translation>
        </message>
        <message>
            <source>vacuum</source>
            <translation>vacío</translation>
        </message>
        <message>
            <source>hold running</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>espera en curso</translation>
        </message>
        <message>
            <source>latest holds in a row that show vapour only</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>últimas esperas seguidas que muestran solo vapor</translation>
        </message>
        <message>
            <source>latest low hold rules dry ice out</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>la última espera a baja presión descarta hielo seco</translation>
        </message>
        <message>
            <source>standing-pressure test says tight</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>la prueba de presión en reposo dice estanco</translation>
        </message>
        <message>
            <source>vacuum-rise test says tight and dry</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: vacuum rise</translatorcomment>
            <translation>la prueba de subida de vacío dice estanco y seco</translation>
        </message>
        <message>
            <source>, steady for {time}</source>
            <translation>, estable durante {time}</translation>
        </message>
        <message>
            <source>at least {value}</source>
            <translation>al menos {value}</translation>
        </message>
        <message>
            <source>at most {value}</source>
            <translation>como mucho {value}</translation>
        </message>
        <message>
            <source>{low} and {high}</source>
            <translation>{low} y {high}</translation>
        </message>
        <message>
            <source>write down: {what}</source>
            <translation>anote: {what}</translation>
        </message>
        <message>
            <source>still shut on the isolation list: {valves}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>aún cerradas en la lista de aislamiento: {valves}</translation>
        </message>
        <message>
            <source>the isolation list is empty: name each valve</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>la lista de aislamiento está vacía: nombre cada válvula</translation>
        </message>
        <message>
            <source>Simulated readings: this job is practice and can&apos;t be signed.</source>
            <translation>Lecturas simuladas: este trabajo es práctica y no se puede firmar.</translation>
        </message>
        <message>
            <source>give the name of the person who does this</source>
            <translation>indique el nombre de la persona que lo hace</translation>
        </message>
        <message>
            <source>too long: {most} characters at most</source>
            <translation>demasiado largo: {most} caracteres como mucho</translation>
        </message>
        <message>
            <source>that confirmation belongs to a later step</source>
            <translation>esa confirmación es de un paso posterior</translation>
        </message>
        <message>
            <source>write something, or leave the entry alone</source>
            <translation>escriba algo, o deje el campo</translation>
        </message>
        <message>
            <source>name the valve</source>
            <translation>nombre la válvula</translation>
        </message>
        <message>
            <source>{quantity}: must come from readings here</source>
            <translation>{quantity}: aquí debe venir de lecturas</translation>
        </message>
        <message>
            <source>{value} does not meet: {condition}</source>
            <translation>{value} no cumple: {condition}</translation>
        </message>
        <message>
            <source>the job has ended; nothing is left to do</source>
            <translation>el trabajo ha terminado; no queda nada por hacer</translation>
        </message>
        <message>
            <source>not yet: {lacks}</source>
            <translation>todavía no: {lacks}</translation>
        </message>
        <message>
            <source>the job has ended; nothing is left to skip</source>
            <translation>el trabajo ha terminado; no queda nada por omitir</translation>
        </message>
        <message>
            <source>&apos;{step}&apos; can&apos;t be skipped</source>
            <translation>«{step}» no se puede omitir</translation>
        </message>
        <message>
            <source>write something</source>
            <translation>escriba algo</translation>
        </message>
        <message>
            <source>give a reason</source>
            <translation>indique un motivo</translation>
        </message>
        <message>
            <source>no venting yet: {lacks}</source>
            <translation>aún no ventee: {lacks}</translation>
        </message>
        <message>
            <source>Close the vent until this is confirmed again.</source>
            <translation>Cierre el venteo hasta que se confirme otra vez.</translation>
        </message>
        <message>
            <source>Left out before the joint is broken: {steps}</source>
            <translation>Omitido antes de abrir la junta: {steps}</translation>
        </message>
        <message>
            <source>Stop pressure {kept}: {below} below it with liquid inside, {triple} of them below the triple point.</source>
            <translation>Presión de parada {kept}: {below} por debajo con líquido dentro, {triple} de ellos bajo el punto triple.</translation>
        </message>
        <message>
            <source>kept</source>
            <translation>respetada</translation>
        </message>
        <message>
            <source>NOT KEPT</source>
            <translation>NO RESPETADA</translation>
        </message>
        <message>
            <source>Dry ice made: {mass} at most.</source>
            <translation>Hielo seco formado: {mass} como mucho.</translation>
        </message>
        <message>
            <source>Left inside at the end: {left} of liquid and dry ice (allowable {allowable}).</source>
            <translation>Queda dentro al final: {left} de líquido y hielo seco (admisible {allowable}).</translation>
        </message>
        <message>
            <source>CO2 vented: {mass} in {time}.</source>
            <translation>CO2 venteado: {mass} en {time}.</translation>
        </message>
        <message>
            <source>You said: {state}. That was {judged}.</source>
            <translation>Usted dijo: {state}. Eso estaba {judged}.</translation>
        </message>
        <message>
            <source>right</source>
            <translation>bien</translation>
        </message>
        <message>
            <source>WRONG</source>
            <translation>MAL</translation>
        </message>
        <message>
            <source>DANGEROUS: the section was taken for empty with liquid or dry ice inside.</source>
            <translation>PELIGROSO: se dio por vacío el tramo con líquido o hielo seco dentro.</translation>
        </message>
        <message>
            <source>subcooled liquid</source>
            <translation>lleno de líquido</translation>
        </message>
        <message>
            <source>two phase</source>
            <translation>líquido y vapor</translation>
        </message>
        <message>
            <source>solid present</source>
            <translation>hielo seco</translation>
        </message>
        <message>
            <source>undetermined</source>
            <translation>indeterminado</translation>
        </message>
        <message>
            <source>readings come {time} late</source>
            <translation>las lecturas llegan {time} tarde</translation>
        </message>
        <message>
            <source>this program has a fault; use the mechanical gauge</source>
            <translation>este programa tiene un fallo; use el manómetro mecánico</translation>
        </message>
        <message>
            <source>more data than can be shown in time: {rows} rows were passed over</source>
            <translation>más datos de los que se pueden mostrar a tiempo: se omitieron {rows} filas</translation>
        </message>
        <message>
            <source>source lost: {reason}</source>
            <translation>fuente perdida: {reason}</translation>
        </message>
        <message>
            <source>source back: {label}</source>
            <translation>la fuente ha vuelto: {label}</translation>
        </message>
        <message>
            <source>cut short by another program</source>
            <translation>recortado por otro programa</translation>
        </message>
        <message>
            <source>replaced by another file</source>
            <translation>sustituido por otro archivo</translation>
        </message>
        <message>
            <source>not open</source>
            <translation>no abierto</translation>
        </message>
        <message>
            <source>disconnected</source>
            <translation>desconectado</translation>
        </message>
        <message>
            <source>no answer ({wrong})</source>
            <translation>sin respuesta ({wrong})</translation>
        </message>
        <message>
            <source>no answer</source>
            <translation>sin respuesta</translation>
        </message>
        <message>
            <source>disconnected ({error})</source>
            <translation>desconectado ({error})</translation>
        </message>
        <message>
            <source>{label}: {what}; check the cable, the program keeps trying</source>
            <translation>{label}: {what}; revise el cable, el programa sigue intentándolo</translation>
        </message>
        <message>
            <source>not connected</source>
            <translation>no conectado</translation>
        </message>
        <message>
            <source>the server closed the connection</source>
            <translation>el servidor cerró la conexión</translation>
        </message>
        <message>
            <source>Dry ice: the pressure came down to the triple point and stands there ({freezing}): the vent is open, and liquid freezes. Keep it open, warm gently, keep clear; no time alone ends it.</source>
            <translation>Hielo seco: la presión bajó hasta el punto triple y se queda ahí ({freezing}): el venteo está abierto y el líquido se congela. Déjelo abierto, caliente con suavidad, apártese; ningún tiempo por sí solo lo termina.</translation>
        </message>
        <message>
            <source>temperature {change} explains {effect}; loss {loss} over {time}</source>
            <translation>la temperatura {change} explica {effect}; pérdida {loss} en {time}</translation>
        </message>
        <message>
            <source>{loss} ({lower} to {upper}, 95 %)</source>
            <translation>{loss} ({lower} a {upper}, 95 %)</translation>
        </message>
        <message>
            <source>Can&apos;t tell yet: {seen}, {limit} allowed.</source>
            <translation>Aún no se puede decir: {seen}, {limit} admisible.</translation>
        </message>
        <message>
            <source>Hold longer: the bound narrows with time; steadier temperature helps.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Espere más: la cota se estrecha con el tiempo; ayuda una temperatura más estable.</translation>
        </message>
        <message>
            <source>{loss} without bounds</source>
            <translation>{loss} sin cotas</translation>
        </message>
        <message>
            <source>fewer than 10 readings</source>
            <translation>menos de 10 lecturas</translation>
        </message>
        <message>
            <source>Record pressure and clamp.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Registre presión y sonda de pinza.</translation>
        </message>
        <message>
            <source>no clamp reading beside every pressure: the temperature can&apos;t be told from a leak</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>no hay lectura de sonda de pinza junto a cada presión: la temperatura no se distingue de una fuga</translation>
        </message>
        <message>
            <source>Put a clamp on the section, in the shade, and hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Ponga una sonda de pinza en el tramo, a la sombra, y espere otra vez.</translation>
        </message>
        <message>
            <source>no test pressure, or it is gone: less than 0.5 bar above the air</source>
            <translation>sin presión de prueba, o se ha ido: menos de 0,5 bar sobre el aire</translation>
        </message>
        <message>
            <source>Raise the pressure and hold again.</source>
            <translation>Suba la presión y espere otra vez.</translation>
        </message>
        <message>
            <source>The pressure wanders too slowly to bound a loss in {time}.</source>
            <translation>La presión varía demasiado despacio para acotar una pérdida en {time}.</translation>
        </message>
        <message>
            <source>Hold longer.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Espere más.</translation>
        </message>
        <message>
            <source>Still settling: the loss is not the same in both halves; {seen}.</source>
            <translation>Aún se asienta: la pérdida no es igual en ambas mitades; {seen}.</translation>
        </message>
        <message>
            <source>Wait until the heat of filling has gone and the sun is off the pipe.</source>
            <translation>Espere a que se vaya el calor del llenado y el sol deje el tubo.</translation>
        </message>
        <message>
            <source>The pressure rises more than the temperature explains: {seen}. Gas flows in past a valve, or the clamp does not show the gas; an inflow hides a leak.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>La presión sube más de lo que explica la temperatura: {seen}. Entra gas por una válvula, o la sonda de pinza no muestra el gas; una entrada oculta una fuga.</translation>
        </message>
        <message>
            <source>Shut off the supply or double block, move the clamp, hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Cierre la alimentación o doble bloqueo, mueva la sonda de pinza, espere otra vez.</translation>
        </message>
        <message>
            <source>Leaking: {seen}, {limit} allowed.</source>
            <translation>Con fuga: {seen}, {limit} admisible.</translation>
        </message>
        <message>
            <source>Find the leak, mend, repeat.</source>
            <translation>Busque la fuga, repárela, repita.</translation>
        </message>
        <message>
            <source>Tight within the limit: {seen}, {limit} allowed.</source>
            <translation>Estanco dentro del límite: {seen}, {limit} admisible.</translation>
        </message>
        <message>
            <source>Not known: {why}.</source>
            <translation>No se sabe: {why}.</translation>
        </message>
        <message>
            <source>the pressure never moved: such a trace is also what a shut gauge valve gives</source>
            <translation>la presión nunca se movió: una válvula de manómetro cerrada da la misma traza</translation>
        </message>
        <message>
            <source>Bleed a little, see the gauge follow, and hold again.</source>
            <translation>Purgue un poco, vea que el manómetro responde y espere otra vez.</translation>
        </message>
        <message>
            <source>The pressure never moved beyond its noise: such a trace is also what a shut gauge valve gives.</source>
            <translation>La presión nunca se movió más que su ruido: una válvula de manómetro cerrada da la misma traza.</translation>
        </message>
        <message>
            <source>The pressure jumps up by {jump} within a minute: gas let in hides a leak.</source>
            <translation>La presión salta {jump} en un minuto: el gas que entra oculta una fuga.</translation>
        </message>
        <message>
            <source>Shut off and take off the supply, then hold again.</source>
            <translation>Cierre y desconecte el suministro y espere otra vez.</translation>
        </message>
        <message>
            <source>The two gauges part by {change} during the test: one does not show this section.</source>
            <translation>Los dos manómetros se separan {change} durante la prueba: uno no muestra este tramo.</translation>
        </message>
        <message>
            <source>Check both gauges and their valves, then hold again.</source>
            <translation>Revise los dos manómetros y sus válvulas y espere otra vez.</translation>
        </message>
        <message>
            <source>Test within that range.</source>
            <translation>Pruebe dentro de ese rango.</translation>
        </message>
        <message>
            <source>So far no loss above what is allowed, but only for {time}.</source>
            <translation>Hasta ahora sin pérdida sobre lo admisible, pero solo {time}.</translation>
        </message>
        <message>
            <source>Hold at least {time} more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Espere al menos {time} más.</translation>
        </message>
        <message>
            <source>{begin} to {end} in {time}</source>
            <translation>de {begin} a {end} en {time}</translation>
        </message>
        <message>
            <source>{micron} micron ({pascal}, {millibar})</source>
            <translation>{micron} micras ({pascal}, {millibar})</translation>
        </message>
        <message>
            <source>{rate} micron/min ({lower} to {upper})</source>
            <translation>{rate} micras/min ({lower} a {upper})</translation>
        </message>
        <message>
            <source>Too few independent readings to judge: {course}.</source>
            <translation>Muy pocas lecturas independientes para juzgar: {course}.</translation>
        </message>
        <message>
            <source>Hold {time} more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Espere {time} más.</translation>
        </message>
        <message>
            <source>Limit kept: {course}, {limit} allowed; late rise {rate}; water on this metal would go to {water}.</source>
            <translation>Límite respetado: {course}, {limit} admisible; subida tardía {rate}; el agua en este metal llegaría a {water}.</translation>
        </message>
        <message>
            <source>{rate} micron/min without bounds</source>
            <translation>{rate} micras/min sin cotas</translation>
        </message>
        <message>
            <source>The gauge never moved: {course}; a gauge that is shut off looks the same.</source>
            <translation>El vacuómetro nunca se movió: {course}; uno cerrado se ve igual.</translation>
        </message>
        <message>
            <source>Let the gauge see the pump once, then hold again.</source>
            <translation>Deje que el vacuómetro vea la bomba una vez y espere de nuevo.</translation>
        </message>
        <message>
            <source>The vacuum rose to {high} and fell back to {low}: the pump was on again, or gauge or metal cooled.</source>
            <translation>El vacío subió a {high} y volvió a bajar a {low}: la bomba de vacío estuvo otra vez en marcha, o se enfrió el vacuómetro o el metal.</translation>
        </message>
        <message>
            <source>Shut the valve to the pump once and hold; give the time when it was shut.</source>
            <translation>Cierre una sola vez la válvula hacia la bomba de vacío y espere; indique cuándo se cerró.</translation>
        </message>
        <message>
            <source>The limit is kept ({course}), but the rise levels as it does over ice on metal colder than the clamp: not shown dry.</source>
            <translation>El límite se cumple ({course}), pero la subida se nivela como sobre hielo en metal más frío que la sonda de pinza: no se demuestra que esté seco.</translation>
        </message>
        <message>
            <source>Measure the coldest metal and give its temperature, or evacuate again.</source>
            <translation>Mida el metal más frío e indique su temperatura, o evacúe otra vez.</translation>
        </message>
        <message>
            <source>The vacuum has not risen at all: {course}; with the pump still on it stands so too.</source>
            <translation>El vacío no ha subido nada: {course}; con la bomba aún en marcha se queda igual.</translation>
        </message>
        <message>
            <source>Shut the valve to the pump, see the vacuum rise a little, and hold on.</source>
            <translation>Cierre la válvula de la bomba, vea subir un poco el vacío y siga reteniendo.</translation>
        </message>
        <message>
            <source>The pressure falls: {course}. The pump is not shut off, or gauge or metal cools.</source>
            <translation>La presión baja: {course}. La bomba no está cerrada, o se enfría el vacuómetro o el metal.</translation>
        </message>
        <message>
            <source>Shut the valve to the pump and begin again.</source>
            <translation>Cierre la válvula de la bomba y empiece de nuevo.</translation>
        </message>
        <message>
            <source>Moisture: {course}, levels near the water vapour pressure of the coldest metal, {water} at {coldest} (a hot-wire gauge shows up to twice as much).</source>
            <translation>Humedad: {course}, se nivela cerca de la presión de vapor de agua del metal más frío, {water} a {coldest} (un vacuómetro de hilo caliente muestra hasta el doble).</translation>
        </message>
        <message>
            <source>Warm the metal, sweep with dry nitrogen, evacuate again.</source>
            <translation>Caliente el metal, barra con nitrógeno seco, haga vacío otra vez.</translation>
        </message>
        <message>
            <source>Leak: {course}, straight at {rate} and no bend.</source>
            <translation>Fuga: {course}, recta a {rate} y sin curva.</translation>
        </message>
        <message>
            <source>Find it with nitrogen pressure; look at hoses and the pump valve first.</source>
            <translation>Búsquela con presión de nitrógeno; mire primero mangueras y válvula de la bomba.</translation>
        </message>
        <message>
            <source>on metal this cold that is dry ice or CO2 out of oil or sieve, not water</source>
            <translation>en metal tan frío eso es hielo seco o CO2 de aceite o tamiz, no agua</translation>
        </message>
        <message>
            <source>not the water vapour pressure of the metal: outgassing, oil or CO2 left</source>
            <translation>no es la presión de vapor de agua del metal: desgasificación, aceite o CO2 restante</translation>
        </message>
        <message>
            <source>without the metal&apos;s temperature moisture can&apos;t be ruled out</source>
            <translation>sin la temperatura del metal no se descarta humedad</translation>
        </message>
        <message>
            <source>Levels too high: {course}; {what}.</source>
            <translation>Se nivela demasiado alto: {course}; {what}.</translation>
        </message>
        <message>
            <source>Evacuate again; a smaller rise the second time confirms outgassing.</source>
            <translation>Haga vacío otra vez; una subida menor la segunda vez confirma desgasificación.</translation>
        </message>
        <message>
            <source>The rise began at {begin}, above {limit}.</source>
            <translation>La subida empezó en {begin}, sobre {limit}.</translation>
        </message>
        <message>
            <source>Evacuate further, then shut the pump off.</source>
            <translation>Siga haciendo vacío y luego cierre la bomba.</translation>
        </message>
        <message>
            <source>So far {course}.</source>
            <translation>Hasta ahora {course}.</translation>
        </message>
        <message>
            <source>Above {limit}: {course}, and the curve is still bending.</source>
            <translation>Sobre {limit}: {course}, y la curva aún se dobla.</translation>
        </message>
        <message>
            <source>Hold longer: straight on is a leak, levelling is moisture or outgassing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Espere más: recto es fuga, nivelarse es humedad o desgasificación.</translation>
        </message>
        <message>
            <source>Below {limit}, but still rising at {rate}: {course}.</source>
            <translation>Bajo {limit}, pero aún sube a {rate}: {course}.</translation>
        </message>
        <message>
            <source>Hold longer: straight on is a leak, levelling is outgassing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Espere más: recto es fuga, nivelarse es desgasificación.</translation>
        </message>
        <message>
            <source>The limit is kept ({course}), but without the metal&apos;s temperature dry is not shown.</source>
            <translation>Se respeta el límite ({course}), pero sin la temperatura del metal no se muestra seco.</translation>
        </message>
        <message>
            <source>Put a clamp on the coldest metal or give its temperature.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Ponga una sonda de pinza en el metal más frío o indique su temperatura.</translation>
        </message>
        <message>
            <source>The limit is kept ({course}), but ice on metal at {coldest} has only {water}: not shown dry.</source>
            <translation>Se respeta el límite ({course}), pero el hielo en metal a {coldest} tiene solo {water}: no se muestra seco.</translation>
        </message>
        <message>
            <source>Warm the metal and repeat.</source>
            <translation>Caliente el metal y repita.</translation>
        </message>
        <message>
            <source>Not known: fewer than 20 vacuum readings since the pump was shut off.</source>
            <translation>No se sabe: menos de 20 lecturas de vacío desde que se cerró la bomba.</translation>
        </message>
        <message>
            <source>Record the vacuum gauge for the whole test.</source>
            <translation>Registre el vacuómetro durante toda la prueba.</translation>
        </message>
        <message>
            <source>{volume} for each {kg} vented</source>
            <translation>{volume} por cada {kg} venteado</translation>
        </message>
        <message>
            <source>{volume} for each {kg} vented; {flow} with the vent fully open</source>
            <translation>{volume} por cada {kg} venteado; {flow} con el venteo totalmente abierto</translation>
        </message>
        <message>
            <source>Fully open, the vent falls {fall} a minute on average: throttle it to {slow} to {calm} a minute over the last {end}.</source>
            <translation>Totalmente abierto, el venteo baja {fall} por minuto de media: redúzcalo a entre {slow} y {calm} por minuto en los últimos {end}.</translation>
        </message>
        <message>
            <source>vapour only</source>
            <translation>solo vapor</translation>
        </message>
        <message>
            <source>it refuses to answer ({wrong})</source>
            <translation>rechaza la consulta ({wrong})</translation>
        </message>
        <message>
            <source>{step}: the air may hold {limit} ppm of CO2. Over a working day the limit is 5000.</source>
            <translation>{step}: el aire puede tener {limit} ppm de CO2. Para una jornada de trabajo el límite es 5000 ppm.</translation>
        </message>
        <message>
            <source>No time shut is watched before the vent: a valve may pass unseen.</source>
            <translation>Antes del venteo no se observa ningún tiempo cerrado: una válvula puede dejar pasar sin que se note.</translation>
        </message>
        <message>
            <source>No zero of the gauge is asked for before the vent.</source>
            <translation>Antes del venteo no se pide el cero del manómetro.</translation>
        </message>
        <message>
            <source>One hold that shows vapour only is enough: no second is asked for.</source>
            <translation>Basta una espera que muestre solo vapor: no se pide una segunda.</translation>
        </message>
        <message>
            <source>No low hold has to rule dry ice out before the joint is broken.</source>
            <translation>Ninguna espera a baja presión tiene que descartar el hielo seco antes de abrir la junta.</translation>
        </message>
        <message>
            <source>The metal&apos;s minimum temperature is not asked for before it is pressurised.</source>
            <translation>No se pide la temperatura mínima del metal antes de presurizarlo.</translation>
        </message>
        <message>
            <source>, falling {fall}</source>
            <translation>, baja {fall}</translation>
        </message>
        <message>
            <source>air pressure here</source>
            <translation>presión del aire aquí</translation>
        </message>
        <message>
            <source>the metal&apos;s lowest rated temperature</source>
            <translation>la temperatura mínima admisible del metal</translation>
        </message>
    </context>
    <context>
        <name>Events</name>
        <message>
            <source>{count} rows lost, lines {first} to {last}: {reason}</source>
            <translation>{count} filas perdidas, líneas {first} a {last}: {reason}</translation>
        </message>
        <message>
            <source>{count} rows lost: {reason}</source>
            <translation>{count} filas perdidas: {reason}</translation>
        </message>
        <message>
            <source>; the evidence of the hold starts anew</source>
            <translation>; la prueba de la espera empieza de nuevo</translation>
        </message>
        <message>
            <source>Before the vent: {why}; the evidence starts anew</source>
            <translation>Antes del venteo: {why}; la prueba empieza de nuevo</translation>
        </message>
    </context>
    <context>
        <name>Exercises</name>
        <message>
            <source>Vapour only, warm metal</source>
            <translation>Solo vapor, metal caliente</translation>
        </message>
        <message>
            <source>Strainer section S-1, 10 litres, bare steel, shut in since the morning. The metal is some 50 K warmer than CO2 at the stop pressure. Vent to the stop pressure, close, and watch.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Tramo de filtro S-1, 10 litros, acero desnudo, cerrado desde la mañana. El metal está unos 50 K más caliente que el CO2 a la presión de parada. Ventee hasta la presión de parada, cierre y vigile.</translation>
        </message>
        <message>
            <source>How fast the rise dies away, and how much smaller it is the second time.</source>
            <translation>Con qué rapidez se apaga la subida, y cuánto menor es la segunda vez.</translation>
        </message>
        <message>
            <source>About half a bar in the first minute, then flat; the second hold rises far less.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Cerca de medio bar en el primer minuto, luego plano; la segunda espera sube mucho menos.</translation>
        </message>
        <message>
            <source>It rises, so there is liquid: vents needlessly, or lower than the stop pressure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Sube, luego hay líquido: ventea sin necesidad, o por debajo de la presión de parada.</translation>
        </message>
        <message>
            <source>What would the trace do in minute 8 if a cup of liquid were left? Compare with exercise 2.</source>
            <translation>¿Qué haría la traza en el minuto 8 si quedara una taza de líquido? Compare con el ejercicio 2.</translation>
        </message>
        <message>
            <source>Vent back to the same start and hold again: warmed gas hardly rises any more.</source>
            <translation>Ventee al mismo inicio y espere otra vez: el gas ya caliente apenas sube.</translation>
        </message>
        <message>
            <source>One per cent of liquid left</source>
            <translation>Queda un uno por ciento de líquido</translation>
        </message>
        <message>
            <source>The neighbour of exercise 1: the same 10 litres of bare steel. It held liquid and has been vented; about one per cent of its volume is still liquid, in the bottom of the strainer.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: strainer</translatorcomment>
            <translation>El vecino del ejercicio 1: los mismos 10 litros de acero desnudo. Tuvo líquido y se ha venteado; cerca del uno por ciento de su volumen aún es líquido, en el fondo del filtro.</translation>
        </message>
        <message>
            <source>The first minute looks like exercise 1. Minutes 3 to 8 do not.</source>
            <translation>El primer minuto se parece al ejercicio 1. Los minutos 3 a 8 no.</translation>
        </message>
        <message>
            <source>A first minute like gas, then a steady climb of hundreds of millibar a minute.</source>
            <translation>Un primer minuto como de gas, luego una subida constante de cientos de milibares por minuto.</translation>
        </message>
        <message>
            <source>The same first minute as exercise 1, so it is gas.</source>
            <translation>El mismo primer minuto que el ejercicio 1, luego es gas.</translation>
        </message>
        <message>
            <source>At which minute could you first tell this trace from exercise 1? Why not earlier?</source>
            <translation>¿En qué minuto se pudo distinguir esta traza del ejercicio 1? ¿Por qué no antes?</translation>
        </message>
        <message>
            <source>Wait: the late slope. Or vent again: the climb comes back as steep.</source>
            <translation>Esperar: la pendiente tardía. O ventear otra vez: la subida vuelve igual de empinada.</translation>
        </message>
        <message>
            <source>Ten per cent of liquid left</source>
            <translation>Queda un diez por ciento de líquido</translation>
        </message>
        <message>
            <source>The same section once more, now with ten per cent of its volume liquid: ten times as much as in exercise 2. Commit yourself before the trace goes on: will it rise faster or slower?</source>
            <translation>El mismo tramo otra vez, ahora con el diez por ciento de su volumen líquido: diez veces más que en el ejercicio 2. Comprométase antes de que siga la traza: ¿subirá más deprisa o más despacio?</translation>
        </message>
        <message>
            <source>The first minute, against exercise 2.</source>
            <translation>El primer minuto, frente al ejercicio 2.</translation>
        </message>
        <message>
            <source>A slower first minute than with one per cent: more liquid has more to warm.</source>
            <translation>Un primer minuto más lento que con el uno por ciento: más líquido tiene más que calentar.</translation>
        </message>
        <message>
            <source>Less rise, so less liquid.</source>
            <translation>Menos subida, luego menos líquido.</translation>
        </message>
        <message>
            <source>Which part of the trace tells how much liquid is left? (None does: only that it is there.)</source>
            <translation>¿Qué parte de la traza dice cuánto líquido queda? (Ninguna: solo que lo hay.)</translation>
        </message>
        <message>
            <source>None on the pressure alone: weigh, or vent and count what comes.</source>
            <translation>Ninguna solo con la presión: pesar, o ventear y contar lo que sale.</translation>
        </message>
        <message>
            <source>Liquid left, and all metal as cold as it</source>
            <translation>Queda líquido, y todo el metal tan frío como él</translation>
        </message>
        <message>
            <source>A 50 litre insulated section after a long, slow vent on a cold day. Frost all over. The gauge stands still.</source>
            <translation>Un tramo aislado de 50 litros tras un venteo largo y lento en un día frío. Escarcha por todas partes. El manómetro está quieto.</translation>
        </message>
        <message>
            <source>How far the metal is above the saturation temperature of the pressure.</source>
            <translation>Cuánto está el metal sobre la temperatura de saturación de la presión.</translation>
        </message>
        <message>
            <source>Next to no rise in ten minutes, with kilograms of liquid inside.</source>
            <translation>Casi sin subida en diez minutos, con kilogramos de líquido dentro.</translation>
        </message>
        <message>
            <source>Flat, so empty.</source>
            <translation>Plano, luego vacío.</translation>
        </message>
        <message>
            <source>What heat could have boiled any liquid here? What would have to be warm?</source>
            <translation>¿Qué calor pudo hervir aquí algún líquido? ¿Qué tendría que estar caliente?</translation>
        </message>
        <message>
            <source>Bring heat to the low points and hold again; until then the test has no power.</source>
            <translation>Lleve calor a los puntos bajos y espere otra vez; hasta entonces la prueba no tiene poder.</translation>
        </message>
        <message>
            <source>The supply valve leaks by</source>
            <translation>La válvula de alimentación deja pasar</translation>
        </message>
        <message>
            <source>Strainer section S-4. Nobody mentions that the isolation valve on the supply side has a scratch on its seat: a tenth of a gram a second comes past.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Tramo de filtro S-4. Nadie menciona que la válvula de aislamiento de la alimentación tiene un rayón en el asiento: pasa una décima de gramo por segundo.</translation>
        </message>
        <message>
            <source>Is the rise straight? Is it as steep at another pressure?</source>
            <translation>¿Es recta la subida? ¿Es igual de empinada a otra presión?</translation>
        </message>
        <message>
            <source>Straight from the first minutes on, and as steep from 9 bar g as from 5.</source>
            <translation>Recta desde los primeros minutos, y tan empinada desde 9 bar g como desde 5.</translation>
        </message>
        <message>
            <source>Liquid boiling: keeps venting for an hour, while the leak refills the section.</source>
            <translation>Líquido que hierve: ventea una hora mientras el paso vuelve a llenar el tramo.</translation>
        </message>
        <message>
            <source>Which of liquid and leak gets slower at a higher pressure, and why?</source>
            <translation>¿Cuál de líquido y paso de válvula se hace más lento a mayor presión, y por qué?</translation>
        </message>
        <message>
            <source>Hold at a second pressure; block and bleed the supply.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, bleed</translatorcomment>
            <translation>Espere a una segunda presión; doble bloqueo y purga en la alimentación.</translation>
        </message>
        <message>
            <source>Vented to 1 bar g with liquid left</source>
            <translation>Venteado a 1 bar g con líquido dentro</translation>
        </message>
        <message>
            <source>Somebody was in a hurry and vented straight to 1 bar g. Then the valve was closed, and now the pressure climbs and comes to rest at a little over 4 bar g.</source>
            <translation>Alguien tenía prisa y venteó directo a 1 bar g. Luego se cerró la válvula, y ahora la presión sube y se queda a algo más de 4 bar g.</translation>
        </message>
        <message>
            <source>Where the pressure lingers on the way down, and where it comes to rest on the way up.</source>
            <translation>Dónde se demora la presión al bajar, y dónde se queda al subir.</translation>
        </message>
        <message>
            <source>A shelf near 4.2 bar g both ways; it stays there for a quarter of an hour and more.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Un escalón cerca de 4,2 bar g en ambos sentidos; dura un cuarto de hora y más.</translation>
        </message>
        <message>
            <source>It has stabilised, so it is safe.</source>
            <translation>Se ha estabilizado, luego es seguro.</translation>
        </message>
        <message>
            <source>What pins the pressure at one value? What happens when the last dry ice has melted?</source>
            <translation>¿Qué fija la presión en un valor? ¿Qué pasa cuando se funde el último hielo seco?</translation>
        </message>
        <message>
            <source>Compare the resting pressure with the local triple point; wait, with the vent side open.</source>
            <translation>Compare la presión de reposo con el punto triple local; espere, con el lado de venteo abierto.</translation>
        </message>
        <message>
            <source>Dry ice at zero on the gauge</source>
            <translation>Hielo seco con el manómetro a cero</translation>
        </message>
        <message>
            <source>The gauge shows 0.0 bar g. The bleed was open all night and has just been closed. There is frost on the low point, and on nothing else.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>El manómetro marca 0,0 bar g. La purga estuvo abierta toda la noche y se acaba de cerrar. Hay escarcha en el punto bajo y en nada más.</translation>
        </message>
        <message>
            <source>The climb after closing, and the temperature of the low point.</source>
            <translation>La subida tras cerrar, y la temperatura del punto bajo.</translation>
        </message>
        <message>
            <source>From zero the pressure climbs along the sublimation line towards 4.2 bar g.</source>
            <translation>Desde cero la presión sube por la línea de sublimación hacia 4,2 bar g.</translation>
        </message>
        <message>
            <source>Zero means empty: open it.</source>
            <translation>Cero significa vacío: abrirlo.</translation>
        </message>
        <message>
            <source>What pressure has dry ice at -78 degC? What would the gauge show if the bleed stayed open?</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>¿Qué presión tiene el hielo seco a -78 °C? ¿Qué marcaría el manómetro con la purga abierta?</translation>
        </message>
        <message>
            <source>Close the bleed and watch for some minutes; feel for frost at the low point.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Cierre la purga y vigile unos minutos; busque escarcha en el punto bajo.</translation>
        </message>
        <message>
            <source>The gauge is shut off</source>
            <translation>El manómetro está cerrado</translation>
        </message>
        <message>
            <source>The valve at the gauge hose was bumped shut while the vent was closed. Liquid is left in the section.</source>
            <translation>La válvula de la manguera del manómetro se cerró de un golpe con el venteo cerrado. Queda líquido en el tramo.</translation>
        </message>
        <message>
            <source>The noise of the reading; what a short mini-vent does to it.</source>
            <translation>El ruido de la lectura; qué le hace un venteo muy corto.</translation>
        </message>
        <message>
            <source>A trace without any movement, not even noise; a mini-vent does not move it.</source>
            <translation>Una traza sin movimiento alguno, ni ruido; un venteo corto no la mueve.</translation>
        </message>
        <message>
            <source>A perfect hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Una espera perfecta.</translation>
        </message>
        <message>
            <source>What does a real gauge on a real section never do?</source>
            <translation>¿Qué no hace nunca un manómetro real en un tramo real?</translation>
        </message>
        <message>
            <source>Crack the vent for two seconds: a gauge that sees the section moves.</source>
            <translation>Abra el venteo dos segundos: un manómetro que ve el tramo se mueve.</translation>
        </message>
        <message>
            <source>An oil-rich strainer</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: strainer</translatorcomment>
            <translation>Un filtro rico en aceite</translation>
        </message>
        <message>
            <source>Section S-8 sits low behind an oil trap that was never drained. The liquid is gone, but the oil in the strainer still holds CO2.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, strainer</translatorcomment>
            <translation>El tramo S-8 queda bajo, tras una trampa de aceite nunca drenada. El líquido se fue, pero el aceite del filtro aún retiene CO2.</translation>
        </message>
        <message>
            <source>A slow curved tail, and how it shrinks from hold to hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Una cola lenta y curva, y cómo se encoge de espera en espera.</translation>
        </message>
        <message>
            <source>A tail that bends, well below saturation, and smaller after each vent.</source>
            <translation>Una cola que se curva, muy por debajo de la saturación, y menor tras cada venteo.</translation>
        </message>
        <message>
            <source>Liquid is still there. Or: the supply valve leaks.</source>
            <translation>Aún hay líquido. O: la válvula de alimentación deja pasar.</translation>
        </message>
        <message>
            <source>Which of liquid, leak and oil gives less every time? Why is it still not clear?</source>
            <translation>¿Cuál de líquido, paso y aceite da menos cada vez? ¿Por qué aún no está claro?</translation>
        </message>
        <message>
            <source>Vent again and hold: a source that runs down is neither liquid nor leak.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Ventee otra vez y espere: una fuente que se agota no es líquido ni paso de válvula.</translation>
        </message>
        <message>
            <source>A gauge that reads high, at 2000 m</source>
            <translation>Un manómetro que marca de más, a 2000 m</translation>
        </message>
        <message>
            <source>A mountain site at 2000 m. The gauge reads 0.3 bar high, nobody took its zero, and the card on the wall was printed for sea level: stop at 5.2 bar g.</source>
            <translation>Una planta de montaña a 2000 m. El manómetro marca 0,3 bar de más, nadie tomó su cero, y la tarjeta de la pared es para el nivel del mar: parar a 5,2 bar g.</translation>
        </message>
        <message>
            <source>The true distance from the triple point when the gauge shows 5.2 bar g.</source>
            <translation>La distancia real al punto triple cuando el manómetro marca 5,2 bar g.</translation>
        </message>
        <message>
            <source>The gauge shows 5.2 bar g; the section is only half a bar above the triple point.</source>
            <translation>El manómetro marca 5,2 bar g; el tramo está solo medio bar sobre el punto triple.</translation>
        </message>
        <message>
            <source>I have a full bar of margin.</source>
            <translation>Tengo un bar entero de margen.</translation>
        </message>
        <message>
            <source>Where is the triple point on a gauge at 2000 m? (4.39 bar g, not 4.17.)</source>
            <translation>¿Dónde está el punto triple en un manómetro a 2000 m? (4,39 bar g, no 4,17.)</translation>
        </message>
        <message>
            <source>Open the gauge to air and read its zero; give the altitude before the vent.</source>
            <translation>Abra el manómetro al aire y lea su cero; indique la altitud antes del venteo.</translation>
        </message>
        <message>
            <source>Vacuum on a wet section</source>
            <translation>Vacío en un tramo mojado</translation>
        </message>
        <message>
            <source>The core was changed in the rain. The pump runs, the vacuum gauge stops falling; the pump is shut off and the gauge rises.</source>
            <translation>El núcleo se cambió bajo la lluvia. La bomba funciona, el vacuómetro deja de bajar; se apaga la bomba y sube.</translation>
        </message>
        <message>
            <source>Where the pressure bends and comes to rest, and what the metal&apos;s temperature says to it.</source>
            <translation>Dónde se dobla y se queda la presión, y qué dice de ello la temperatura del metal.</translation>
        </message>
        <message>
            <source>It rests near the saturation pressure of water at the metal&apos;s temperature: 10 to 20 mbar.</source>
            <translation>Se queda cerca de la presión de saturación del agua a la temperatura del metal: 10 a 20 mbar.</translation>
        </message>
        <message>
            <source>There is a leak: looks for it for an hour.</source>
            <translation>Hay una fuga: la busca una hora.</translation>
        </message>
        <message>
            <source>What does a leak do that water does not? (It goes on in a straight line.)</source>
            <translation>¿Qué hace una fuga que el agua no hace? (Sigue en línea recta.)</translation>
        </message>
        <message>
            <source>Warm the section: water rises with it; a leak does not care.</source>
            <translation>Caliente el tramo: el agua sube con él; a una fuga le da igual.</translation>
        </message>
        <message>
            <source>Nitrogen standing test in the sun</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>Prueba con nitrógeno al sol</translation>
        </message>
        <message>
            <source>The section stands under nitrogen at 50 bar g for its standing-pressure test. It was filled in the cool morning; now the sun is on it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: standing-pressure test</translatorcomment>
            <translation>El tramo está con nitrógeno a 50 bar g para su prueba de presión en reposo. Se llenó en la mañana fresca; ahora le da el sol.</translation>
        </message>
        <message>
            <source>Pressure and temperature together.</source>
            <translation>Presión y temperatura juntas.</translation>
        </message>
        <message>
            <source>Two bar more in an hour, with no gas added: the metal has warmed by ten kelvin.</source>
            <translation>Dos bar más en una hora, sin añadir gas: el metal se ha calentado diez kelvin.</translation>
        </message>
        <message>
            <source>The supply leaks in. Or, when it cools: the section leaks.</source>
            <translation>La alimentación deja pasar. O, cuando se enfría: el tramo tiene fuga.</translation>
        </message>
        <message>
            <source>What is left of the rise when it is corrected for temperature?</source>
            <translation>¿Qué queda de la subida cuando se corrige por la temperatura?</translation>
        </message>
        <message>
            <source>Correct for the gas temperature with a real-gas factor; wait for the evening.</source>
            <translation>Corrija por la temperatura del gas con un factor de gas real; espere a la tarde.</translation>
        </message>
        <message>
            <source>The vent valve leaks out</source>
            <translation>La válvula de venteo fuga hacia fuera</translation>
        </message>
        <message>
            <source>Insulated section S-5 with kilograms of liquid. The vent valve is closed, but a grain sits on its seat: what boils leaves through it.</source>
            <translation>Tramo aislado S-5 con kilogramos de líquido. La válvula de venteo está cerrada, pero hay un grano en su asiento: lo que hierve sale por ella.</translation>
        </message>
        <message>
            <source>Frost and sound at the vent outlet while the gauge stands still.</source>
            <translation>Escarcha y ruido en la salida de venteo con el manómetro quieto.</translation>
        </message>
        <message>
            <source>A quiet gauge: what leaks out is what boils off.</source>
            <translation>Un manómetro quieto: lo que se fuga es lo que hierve.</translation>
        </message>
        <message>
            <source>Quiet, so empty.</source>
            <translation>Quieto, luego vacío.</translation>
        </message>
        <message>
            <source>What are the two ways for a gauge to stand still above liquid?</source>
            <translation>¿De qué dos formas puede un manómetro quedarse quieto sobre líquido?</translation>
        </message>
        <message>
            <source>Test the outlet for flow; cap it and hold again.</source>
            <translation>Compruebe si hay flujo en la salida; tápela y espere otra vez.</translation>
        </message>
        <message>
            <source>Shut in liquid-full</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>Cerrado lleno de líquido</translation>
        </message>
        <message>
            <source>Both valves of section S-3 were closed on liquid. It is two kelvin warmer than the liquid was. Nothing else has happened yet.</source>
            <translation>Ambas válvulas del tramo S-3 se cerraron con líquido. Está dos kelvin más caliente que el líquido. Aún no ha pasado nada más.</translation>
        </message>
        <message>
            <source>Bar per minute before the first vent, and what opening does.</source>
            <translation>Bar por minuto antes del primer venteo, y qué hace abrir.</translation>
        </message>
        <message>
            <source>The gauge climbs bars in a minute; on opening it drops to saturation at once.</source>
            <translation>El manómetro sube varios bar en un minuto; al abrir cae de golpe a la saturación.</translation>
        </message>
        <message>
            <source>The supply valve leaks: looks for the leak first.</source>
            <translation>La válvula de alimentación deja pasar: busca primero la fuga.</translation>
        </message>
        <message>
            <source>Ten bar for one kelvin: how long until the relief valve lifts?</source>
            <translation>Diez bar por un kelvin: ¿cuánto falta para que abra la válvula de alivio?</translation>
        </message>
        <message>
            <source>None: open the vent path at once.</source>
            <translation>Ninguna: abra ya la vía de venteo.</translation>
        </message>
        <message>
            <source>Air in the section</source>
            <translation>Aire en el tramo</translation>
        </message>
        <message>
            <source>Section S-6 was opened last week and not evacuated well. There is a bar of air in it besides the CO2, and liquid.</source>
            <translation>El tramo S-6 se abrió la semana pasada y no se hizo bien el vacío. Hay un bar de aire además del CO2, y líquido.</translation>
        </message>
        <message>
            <source>Pressure against the saturation pressure of the coldest metal.</source>
            <translation>La presión frente a la presión de saturación del metal más frío.</translation>
        </message>
        <message>
            <source>The gauge stands above the saturation pressure of the liquid&apos;s temperature.</source>
            <translation>El manómetro está sobre la presión de saturación de la temperatura del líquido.</translation>
        </message>
        <message>
            <source>Above saturation, so it must be liquid-full. Or: subcooled, so no boiling to fear.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: liquid-full</translatorcomment>
            <translation>Sobre la saturación, luego lleno de líquido. O: subenfriado, luego no hay ebullición que temer.</translation>
        </message>
        <message>
            <source>Which sign of liquid does air leave alone? (The late slope.)</source>
            <translation>¿Qué señal de líquido no cambia el aire? (La pendiente tardía.)</translation>
        </message>
        <message>
            <source>Vent and hold again: air leaves with the vapour; liquid does not.</source>
            <translation>Ventee y espere otra vez: el aire sale con el vapor; el líquido no.</translation>
        </message>
        <message>
            <source>Metal colder than the liquid</source>
            <translation>Metal más frío que el líquido</translation>
        </message>
        <message>
            <source>An hour ago the section was vented too low and stopped in time; since then liquid has come back in. The metal is still colder than the liquid.</source>
            <translation>Hace una hora el tramo se venteó demasiado y se paró a tiempo; desde entonces ha vuelto a entrar líquido. El metal aún está más frío que el líquido.</translation>
        </message>
        <message>
            <source>The delay: nothing happens at first.</source>
            <translation>El retraso: al principio no pasa nada.</translation>
        </message>
        <message>
            <source>Hardly a rise in the first minute or two, then it comes.</source>
            <translation>Apenas sube en el primer minuto o dos, luego llega.</translation>
        </message>
        <message>
            <source>A minute without a rise: empty.</source>
            <translation>Un minuto sin subida: vacío.</translation>
        </message>
        <message>
            <source>Where did the heat go in the first two minutes?</source>
            <translation>¿Adónde fue el calor en los dos primeros minutos?</translation>
        </message>
        <message>
            <source>Hold longer; a clamp at the low point colder than saturation voids the hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, clamp</translatorcomment>
            <translation>Espere más; una sonda de pinza en el punto bajo más fría que la saturación anula la espera.</translation>
        </message>
        <message>
            <source>Liquid through the drain: the hose plugs</source>
            <translation>Líquido por el drenaje: la manguera se tapona</translation>
        </message>
        <message>
            <source>The vent hose was put on the low drain, because it was nearer. Liquid comes, and turns to snow in the hose.</source>
            <translation>La manguera de venteo se puso en el drenaje bajo porque estaba más cerca. Sale líquido y se vuelve nieve en la manguera.</translation>
        </message>
        <message>
            <source>The flow dies with the valve open; the pressure stays.</source>
            <translation>El flujo muere con la válvula abierta; la presión queda.</translation>
        </message>
        <message>
            <source>The pressure stops falling, tens of bar above zero, with the valve open.</source>
            <translation>La presión deja de bajar, decenas de bar sobre cero, con la válvula abierta.</translation>
        </message>
        <message>
            <source>The flow has stopped, so it is empty.</source>
            <translation>El flujo ha parado, luego está vacío.</translation>
        </message>
        <message>
            <source>On which side of the plug is the pressure? Where do you stand?</source>
            <translation>¿En qué lado del tapón está la presión? ¿Dónde se pone usted?</translation>
        </message>
        <message>
            <source>Leave the valve open, keep clear, wait; vent from the top.</source>
            <translation>Deje la válvula abierta, apártese, espere; ventee desde arriba.</translation>
        </message>
        <message>
            <source>dry metal c</source>
            <translation>metal seco °C</translation>
        </message>
        <message>
            <source>wet metal c</source>
            <translation>metal mojado °C</translation>
        </message>
        <message>
            <source>liquid fraction</source>
            <translation>fracción de líquido</translation>
        </message>
        <message>
            <source>nitrogen bar</source>
            <translation>nitrógeno bar</translation>
        </message>
        <message>
            <source>oil kg</source>
            <translation>aceite kg</translation>
        </message>
        <message>
            <source>solid kg</source>
            <translation>hielo seco kg</translation>
        </message>
        <message>
            <source>water kg</source>
            <translation>agua kg</translation>
        </message>
        <message>
            <source>noise</source>
            <translation>ruido</translation>
        </message>
        <message>
            <source>step</source>
            <translation>resolución</translation>
        </message>
        <message>
            <source>stuck from s</source>
            <translation>atascado desde s</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>unidad</translation>
        </message>
        <message>
            <source>zero</source>
            <translation>cero</translation>
        </message>
        <message>
            <source>leak by g per s</source>
            <translation>paso de válvula g/s</translation>
        </message>
        <message>
            <source>leak out bore mm</source>
            <translation>fuga hacia fuera, orificio mm</translation>
        </message>
        <message>
            <source>supply liquid</source>
            <translation>alimentación líquida</translation>
        </message>
        <message>
            <source>altitude</source>
            <translation>altitud indicada</translation>
        </message>
        <message>
            <source>insulated</source>
            <translation>aislado</translation>
        </message>
        <message>
            <source>volume l</source>
            <translation>volumen L</translation>
        </message>
        <message>
            <source>altitude m</source>
            <translation>altitud m</translation>
        </message>
        <message>
            <source>ambient c</source>
            <translation>ambiente °C</translation>
        </message>
        <message>
            <source>pump l per min</source>
            <translation>bomba L/min</translation>
        </message>
        <message>
            <source>low point</source>
            <translation>punto bajo</translation>
        </message>
        <message>
            <source>plugs</source>
            <translation>se tapona</translation>
        </message>
    </context>
    <context>
        <name>Fault</name>
        <message>
            <source>Display fault: close the vent</source>
            <translation>Fallo de pantalla: cerrar el venteo</translation>
        </message>
        <message>
            <source>Display fault</source>
            <translation>Fallo de pantalla</translation>
        </message>
        <message>
            <source>Read the mechanical gauge; if it rises, vent. Readings are still being taken and recorded.</source>
            <translation>Lea el manómetro mecánico; si sube, ventee. Las lecturas se siguen tomando y registrando.</translation>
        </message>
        <message>
            <source>This program has a fault: {error}</source>
            <translation>Este programa tiene un fallo: {error}</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Reintentar</translation>
        </message>
        <message>
            <source>Start page</source>
            <translation>Página inicial</translation>
        </message>
    </context>
    <context>
        <name>Guide</name>
        <message>
            <source>Read the reveal, then More: run again with one thing changed.</source>
            <translation>Lea la solución; luego Más: otra vez con un cambio.</translation>
        </message>
        <message>
            <source>Press Reveal (R) to see what was really inside.</source>
            <translation>Solución (R) muestra qué había dentro de verdad.</translation>
        </message>
        <message>
            <source>Press Space to let the time go; - and + change its speed.</source>
            <translation>Espacio pone en marcha el tiempo; - y + cambian la velocidad.</translation>
        </message>
        <message>
            <source>Open the vent (O), a quarter a touch, and watch the margin.</source>
            <translation>Abra el venteo (O), un cuarto por toque, y vigile el margen.</translation>
        </message>
        <message>
            <source>The pressure falls. Slow down near the stop line.</source>
            <translation>La presión baja. Vaya despacio cerca de la línea de parada.</translation>
        </message>
        <message>
            <source>Near the stop line: close the vent (C).</source>
            <translation>Cerca de la línea de parada: cierre el venteo (C).</translation>
        </message>
        <message>
            <source>Is it flat or still rising? Commit yourself: Predict (G).</source>
            <translation>¿Plano o aún sube? Decídase: Predecir (G).</translation>
        </message>
        <message>
            <source>Hold: leave the vent shut and watch how the rise dies away, or not.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Espera: deje el venteo cerrado y vea si la subida se apaga o no.</translation>
        </message>
        <message>
            <source>Below the triple point: liquid that was left is dry ice now. Leave the vent shut and watch whether the pressure comes back.</source>
            <translation>Por debajo del punto triple: el líquido que quedaba es ahora hielo seco. Deje el venteo cerrado y observe si la presión vuelve a subir.</translation>
        </message>
        <message>
            <source>Below the triple point: liquid that is left turns to dry ice. This vent has gone too far: close it at once (C).</source>
            <translation>Por debajo del punto triple: el líquido que queda se convierte en hielo seco. Este venteo ha ido demasiado lejos: ciérrelo enseguida (C).</translation>
        </message>
        <message>
            <source>Below the stop line: close the vent at once (C).</source>
            <translation>Por debajo de la línea de parada: cierre el venteo enseguida (C).</translation>
        </message>
    </context>
    <context>
        <name>Job</name>
        <message>
            <source>Typed words are not kept yet. End without them?</source>
            <translation>Hay palabras escritas sin guardar. ¿Terminar sin ellas?</translation>
        </message>
        <message>
            <source>Log of the test</source>
            <translation>Registro de la prueba</translation>
        </message>
        <message>
            <source>Readings (*.csv)</source>
            <translation>Lecturas (*.csv)</translation>
        </message>
        <message>
            <source>Signed, digest </source>
            <translation>Firmado, resumen </translation>
        </message>
        <message>
            <source>Report: </source>
            <translation>Informe: </translation>
        </message>
        <message>
            <source>SIMULATED PRACTICE: never signed</source>
            <translation>PRÁCTICA SIMULADA: nunca se firma</translation>
        </message>
        <message>
            <source>Your name</source>
            <translation>Su nombre</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Dejar</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>Guardar aparte</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Step back</source>
            <translation>Paso atrás</translation>
        </message>
        <message>
            <source>Skip</source>
            <translation>Omitir</translation>
        </message>
        <message>
            <source>Report</source>
            <translation>Informe</translation>
        </message>
        <message>
            <source>Sign</source>
            <translation>Firmar</translation>
        </message>
        <message>
            <source>Step done</source>
            <translation>Paso hecho</translation>
        </message>
        <message>
            <source>Every step has ended</source>
            <translation>Todos los pasos han terminado</translation>
        </message>
        <message>
            <source>Write your name first (top right).</source>
            <translation>Escriba primero su nombre (arriba a la derecha).</translation>
        </message>
        <message>
            <source>Typed and not kept yet: “{words}”. Keep it, or clear it.</source>
            <translation>Escrito y sin guardar: «{words}». Guárdelo o bórrelo.</translation>
        </message>
        <message>
            <source>Why is this step left out? Enter keeps it</source>
            <translation>¿Por qué se omite este paso? Intro lo guarda</translation>
        </message>
        <message>
            <source>Why one step back? Enter keeps it</source>
            <translation>¿Por qué un paso atrás? Intro lo guarda</translation>
        </message>
        <message>
            <source>Why is it taken back? Enter keeps it</source>
            <translation>¿Por qué se retira? Intro lo guarda</translation>
        </message>
        <message>
            <source>Note for the record. Enter keeps it</source>
            <translation>Nota para el registro. Intro la guarda</translation>
        </message>
        <message>
            <source>Your role, such as technician. Enter signs</source>
            <translation>Su función, como técnico. Intro firma</translation>
        </message>
        <message>
            <source>Do</source>
            <translation>Hacer</translation>
        </message>
        <message>
            <source>Caution</source>
            <translation>Cuidado</translation>
        </message>
        <message>
            <source>What goes wrong here</source>
            <translation>Qué sale mal aquí</translation>
        </message>
        <message>
            <source>Sign: the one who did the work, and the supervisor.</source>
            <translation>Firmar: quien hizo el trabajo y el supervisor.</translation>
        </message>
        <message>
            <source>This was practice: it is reported as it is and never signed.</source>
            <translation>Esto era práctica: se informa tal cual y nunca se firma.</translation>
        </message>
        <message>
            <source>Report: writes the record as PDF into the job&apos;s folder. Read it.</source>
            <translation>Informe: escribe el registro en PDF en la carpeta del trabajo. Léalo.</translation>
        </message>
        <message>
            <source>Note: adds what is missing. Step back: opens the last step again.</source>
            <translation>Nota: añade lo que falta. Paso atrás: abre de nuevo el último paso.</translation>
        </message>
        <message>
            <source>Put away: closes the job. “Open a job” brings it back.</source>
            <translation>Guardar aparte: cierra el trabajo. «Abrir un trabajo» lo recupera.</translation>
        </message>
        <message>
            <source>What is left to do</source>
            <translation>Lo que queda por hacer</translation>
        </message>
        <message>
            <source>Read off</source>
            <translation>Leer</translation>
        </message>
        <message>
            <source>Write a plain number, such as 450 or 0.05.</source>
            <translation>Escriba un número simple, como 450 o 0,05.</translation>
        </message>
        <message>
            <source>not judged yet</source>
            <translation>aún sin juzgar</translation>
        </message>
        <message>
            <source>no fresh reading</source>
            <translation>sin lectura reciente</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source> (if there is any)</source>
            <translation> (si lo hay)</translation>
        </message>
        <message>
            <source>I saw the gauge move</source>
            <translation>Vi moverse el manómetro</translation>
        </message>
        <message>
            <source>Judge a log of this test</source>
            <translation>Juzgar un registro de esta prueba</translation>
        </message>
        <message>
            <source>Valve</source>
            <translation>Válvula</translation>
        </message>
        <message>
            <source>Lock</source>
            <translation>Candado</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Etiqueta</translation>
        </message>
        <message>
            <source>Shut, locked, tagged</source>
            <translation>Cerrada, bloqueada, etiquetada</translation>
        </message>
        <message>
            <source>Open again</source>
            <translation>Abierta otra vez</translation>
        </message>
        <message>
            <source>A job: plan, vent, prove, work, test, record</source>
            <translation>Un trabajo: planear, ventear, probar, trabajar, ensayar, registrar</translation>
        </message>
        <message>
            <source>Section</source>
            <translation>Tramo</translation>
        </message>
        <message>
            <source>Site</source>
            <translation>Emplazamiento</translation>
        </message>
        <message>
            <source>Unit or room</source>
            <translation>Equipo o sala</translation>
        </message>
        <message>
            <source>Drawing and revision</source>
            <translation>Plano y revisión</translation>
        </message>
        <message>
            <source>Work to be done</source>
            <translation>Trabajo por hacer</translation>
        </message>
        <message>
            <source>Technician</source>
            <translation>Técnico</translation>
        </message>
        <message>
            <source>Technician&apos;s certificate</source>
            <translation>Certificado del técnico</translation>
        </message>
        <message>
            <source>Second person</source>
            <translation>Segunda persona</translation>
        </message>
        <message>
            <source>Supervisor</source>
            <translation>Supervisor</translation>
        </message>
        <message>
            <source>Gauge: name, serial number</source>
            <translation>Manómetro: nombre, número de serie</translation>
        </message>
        <message>
            <source>Gauge: class and range</source>
            <translation>Manómetro: clase y rango</translation>
        </message>
        <message>
            <source>Gauge: calibrated on</source>
            <translation>Manómetro: calibrado el</translation>
        </message>
        <message>
            <source>Put the job&apos;s folder in</source>
            <translation>Poner la carpeta en</translation>
        </message>
        <message>
            <source>Your site&apos;s steps (TOML), empty for the usual</source>
            <translation>Pasos de su planta (TOML), vacío: los usuales</translation>
        </message>
        <message>
            <source>Open a job</source>
            <translation>Abrir un trabajo</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Empezar</translation>
        </message>
        <message>
            <source>Give the section and at least one name.</source>
            <translation>Indique el tramo y al menos un nombre.</translation>
        </message>
        <message>
            <source>A job&apos;s folder</source>
            <translation>Carpeta de un trabajo</translation>
        </message>
        <message>
            <source>triple point </source>
            <translation>punto triple </translation>
        </message>
        <message>
            <source>No readings come: look at the mechanical gauge.</source>
            <translation>No llegan lecturas: mire el manómetro mecánico.</translation>
        </message>
        <message>
            <source>, lock {name}</source>
            <translation>, candado {name}</translation>
        </message>
        <message>
            <source>, tag {name}</source>
            <translation>, etiqueta {name}</translation>
        </message>
        <message>
            <source>shut</source>
            <translation>cerrada</translation>
        </message>
        <message>
            <source>open</source>
            <translation>abierta</translation>
        </message>
        <message>
            <source>Tight</source>
            <translation>Estanco</translation>
        </message>
        <message>
            <source>Leaking</source>
            <translation>Con fuga</translation>
        </message>
        <message>
            <source>Not known yet</source>
            <translation>Aún no se sabe</translation>
        </message>
        <message>
            <source>Tight and dry</source>
            <translation>Estanco y seco</translation>
        </message>
        <message>
            <source>Leak</source>
            <translation>Fuga</translation>
        </message>
        <message>
            <source>Moisture</source>
            <translation>Humedad</translation>
        </message>
        <message>
            <source>Outgassing</source>
            <translation>Desgasificación</translation>
        </message>
        <message>
            <source>Take it</source>
            <translation>Tomarlo</translation>
        </message>
        <message>
            <source>Not this job&apos;s</source>
            <translation>No es de este trabajo</translation>
        </message>
        <message>
            <source>A vent is live. Is it this job&apos;s: take its readings?</source>
            <translation>Hay un venteo en curso. ¿Es de este trabajo: tomar sus lecturas?</translation>
        </message>
        <message>
            <source>SIMULATED readings come. Take them into this job? It is practice from then on and can&apos;t be signed.</source>
            <translation>Llegan lecturas SIMULADAS. ¿Tomarlas en este trabajo? Desde ese momento es práctica y no se puede firmar.</translation>
        </message>
        <message>
            <source>Show it</source>
            <translation>Mostrar</translation>
        </message>
        <message>
            <source>{count} missing. First: {what}</source>
            <translation>Faltan {count}. Primero: {what}</translation>
        </message>
        <message>
            <source>Missing: {what}</source>
            <translation>Falta: {what}</translation>
        </message>
        <message>
            <source>Nothing is missing here: Step done ends this step.</source>
            <translation>Aquí no falta nada: «Paso hecho» termina este paso.</translation>
        </message>
        <message>
            <source>The steps of this site ask less than those of the program.</source>
            <translation>Los pasos de esta instalación exigen menos que los del programa.</translation>
        </message>
    </context>
    <context>
        <name>Key</name>
        <message>
            <source>Back</source>
            <translation>Volver</translation>
        </message>
        <message>
            <source>Shorter</source>
            <translation>Más corta</translation>
        </message>
        <message>
            <source>Longer</source>
            <translation>Más larga</translation>
        </message>
        <message>
            <source>Start</source>
            <translation>Inicio</translation>
        </message>
        <message>
            <source>Leave</source>
            <translation>Dejar</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Abrir</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Slower</source>
            <translation>Lento</translation>
        </message>
        <message>
            <source>Faster</source>
            <translation>Rápido</translation>
        </message>
        <message>
            <source>Predict</source>
            <translation>Predecir</translation>
        </message>
        <message>
            <source>View</source>
            <translation>Vista</translation>
        </message>
        <message>
            <source>Reveal</source>
            <translation>Solución</translation>
        </message>
        <message>
            <source>More</source>
            <translation>Más</translation>
        </message>
        <message>
            <source>Zoom</source>
            <translation>Zoom</translation>
        </message>
        <message>
            <source>Why?</source>
            <translation>¿Por qué?</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Seguir</translation>
        </message>
        <message>
            <source>Pause</source>
            <translation>Pausa</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Empezar</translation>
        </message>
        <message>
            <source>Connect</source>
            <translation>Conectar</translation>
        </message>
        <message>
            <source>Vent open</source>
            <translation>Abierto</translation>
        </message>
        <message>
            <source>Vent closed</source>
            <translation>Cerrado</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Visto</translation>
        </message>
        <message>
            <source>Silence</source>
            <translation>Silencio</translation>
        </message>
        <message>
            <source>Play</source>
            <translation>Iniciar</translation>
        </message>
        <message>
            <source>Previous</source>
            <translation>Anterior</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>Siguiente</translation>
        </message>
        <message>
            <source>End tour</source>
            <translation>Salir del recorrido</translation>
        </message>
    </context>
    <context>
        <name>Keyboard</name>
        <message>
            <source>Space</source>
            <translation>Espacio</translation>
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
            <translation>¿Terminar el venteo y su registro?</translation>
        </message>
        <message>
            <source>End</source>
            <translation>Terminar</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Seguir</translation>
        </message>
        <message>
            <source>Ctrl+L: back to the vent</source>
            <translation>Ctrl+L: volver al venteo</translation>
        </message>
    </context>
    <context>
        <name>Loading</name>
        <message>
            <source>UNCHECKED</source>
            <translation>SIN COMPROBAR</translation>
        </message>
        <message>
            <source>UNCHECKED: {percent} % of the rows checked</source>
            <translation>SIN COMPROBAR: {percent} % de las filas comprobadas</translation>
        </message>
        <message>
            <source>The trace as it stands in the file, for looking only: no verdict, no saving yet.</source>
            <translation>La curva tal como está en el archivo, solo para mirar: aún sin veredicto y sin guardar.</translation>
        </message>
        <message>
            <source>Reading {name} row by row: {percent} % of {size} MB checked…</source>
            <translation>Leyendo {name} fila por fila: {percent} % de {size} MB comprobado…</translation>
        </message>
        <message>
            <source>Reading {name}, {size} MB…</source>
            <translation>Leyendo {name}, {size} MB…</translation>
        </message>
    </context>
    <context>
        <name>Note</name>
        <message>
            <source>Note for the record (empty: a mark)</source>
            <translation>Nota para el registro (vacío: una marca)</translation>
        </message>
        <message>
            <source>Keep (Enter)</source>
            <translation>Guardar (Intro)</translation>
        </message>
        <message>
            <source>Note on the moment {time}</source>
            <translation>Nota sobre el momento {time}</translation>
        </message>
        <message>
            <source>Your name</source>
            <translation>Su nombre</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>Apartar</translation>
        </message>
        <message>
            <source>This replay has no file beside which to keep it</source>
            <translation>Esta reproducción no tiene archivo junto al que guardarla</translation>
        </message>
        <message>
            <source>Note {number}: {words}</source>
            <translation>Nota {number}: {words}</translation>
        </message>
        <message>
            <source>The last change of the notes is undone</source>
            <translation>Se deshizo el último cambio de las notas</translation>
        </message>
        <message>
            <source>No change of the notes to undo</source>
            <translation>No hay cambios de las notas que deshacer</translation>
        </message>
        <message>
            <source>Kept; it shows when the replay is no longer blind</source>
            <translation>Guardada; se verá cuando la reproducción deje de ser a ciegas</translation>
        </message>
        <message>
            <source>Note kept: {path}</source>
            <translation>Nota guardada: {path}</translation>
        </message>
        <message>
            <source>Write a few words first</source>
            <translation>Escriba primero unas palabras</translation>
        </message>
        <message>
            <source>Note removed. Ctrl+Z brings it back</source>
            <translation>Nota quitada. Ctrl+Z la recupera</translation>
        </message>
        <message>
            <source>Your words stay in the line</source>
            <translation>Sus palabras quedan en la línea</translation>
        </message>
    </context>
    <context>
        <name>Plan</name>
        <message>
            <source>Volume, litres</source>
            <translation>Volumen, litros</translation>
        </message>
        <message>
            <source>Liquid, % of volume</source>
            <translation>Líquido, % vol.</translation>
        </message>
        <message>
            <source>Altitude, m</source>
            <translation>Altitud, m</translation>
        </message>
        <message>
            <source>Gauge accuracy, %</source>
            <translation>Exactitud, %</translation>
        </message>
        <message>
            <source>Vent bore, mm</source>
            <translation>Orificio, mm</translation>
        </message>
        <message>
            <source>Room, m³</source>
            <translation>Sala, m³</translation>
        </message>
        <message>
            <source>Air changes an hour</source>
            <translation>Renovaciones por hora</translation>
        </message>
        <message>
            <source>{field} not given: {value} is assumed.</source>
            <translation>{field} no indicado: se supone {value}.</translation>
        </message>
        <message>
            <source>{field}: {words} is not a number.</source>
            <translation>{field}: {words} no es un número.</translation>
        </message>
        <message>
            <source>Stop at {stop} (triple point {triple})</source>
            <translation>Parar a {stop} (punto triple {triple})</translation>
        </message>
        <message>
            <source>Dry ice if vented straight down: {mass}</source>
            <translation>Hielo seco si se ventea de golpe: {mass}</translation>
        </message>
        <message>
            <source>Stop pressure not before {time}, fully open</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Presión de parada no antes de {time}, abierta del todo</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>no se conoce</translation>
        </message>
        <message>
            <source>none</source>
            <translation>nada</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} días</translation>
        </message>
        <message>
            <source>Charge, {unit}</source>
            <translation>Carga, {unit}</translation>
        </message>
        <message>
            <source>or charge, {unit}</source>
            <translation>o carga, {unit}</translation>
        </message>
        <message>
            <source>Gauge range, {unit}</source>
            <translation>Rango, {unit}</translation>
        </message>
        <message>
            <source>Surroundings, {unit}</source>
            <translation>Entorno, {unit}</translation>
        </message>
        <message>
            <source>Relief setting, {unit}</source>
            <translation>Alivio, {unit}</translation>
        </message>
        <message>
            <source>Give the volume of the section, and the charge&apos;s {warmth} or {pressure}.</source>
            <translation>Indique el volumen del tramo y los {warmth} o {pressure} de la carga.</translation>
        </message>
    </context>
    <context>
        <name>Plot</name>
        <message>
            <source>rise, {unit}</source>
            <translation>subida, {unit}</translation>
        </message>
        <message>
            <source>time since the vent closed</source>
            <translation>tiempo desde el cierre</translation>
        </message>
        <message>
            <source>hold {number}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>espera {number}</translation>
        </message>
        <message>
            <source>before the vent</source>
            <translation>antes del venteo</translation>
        </message>
        <message>
            <source>{name}, before the vent</source>
            <translation>{name}, antes del venteo</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>líquido</translation>
        </message>
        <message>
            <source>vapour</source>
            <translation>vapor</translation>
        </message>
        <message>
            <source>dry ice</source>
            <translation>hielo seco</translation>
        </message>
        <message>
            <source>triple point</source>
            <translation>punto triple</translation>
        </message>
        <message>
            <source>stop</source>
            <translation>parada</translation>
        </message>
        <message>
            <source>stop in {early} to {late} ({percent} %)</source>
            <translation>parada en {early} a {late} ({percent} %)</translation>
        </message>
        <message>
            <source>liquid and vapour</source>
            <translation>líquido y vapor</translation>
        </message>
        <message>
            <source>dry ice and vapour</source>
            <translation>hielo seco y vapor</translation>
        </message>
        <message>
            <source>critical point</source>
            <translation>punto crítico</translation>
        </message>
        <message>
            <source>heat content, kJ/kg</source>
            <translation>entalpía, kJ/kg</translation>
        </message>
        <message>
            <source>heat content, Btu/lb</source>
            <translation>entalpía, Btu/lb</translation>
        </message>
        <message>
            <source>{value} = boiling liquid at {temperature}</source>
            <translation>{value} = líquido en ebullición a {temperature}</translation>
        </message>
        <message>
            <source>Measured: pressure, metal.</source>
            <translation>Medido: presión, metal.</translation>
        </message>
        <message>
            <source>Line: vapour assumed as warm as the metal.</source>
            <translation>Línea: vapor supuesto tan caliente como el metal.</translation>
        </message>
        <message>
            <source>Dots: saturated vapour assumed.</source>
            <translation>Puntos: se supone vapor saturado.</translation>
        </message>
        <message>
            <source>now: share not measured</source>
            <translation>ahora: proporción no medida</translation>
        </message>
        <message>
            <source>vapour by the metal temperature</source>
            <translation>vapor según la temperatura del metal</translation>
        </message>
        <message>
            <source>saturated vapour assumed</source>
            <translation>se supone vapor saturado</translation>
        </message>
        <message>
            <source>if vapour only</source>
            <translation>si solo hay vapor</translation>
        </message>
        <message>
            <source>least with liquid left</source>
            <translation>mínimo si queda líquido</translation>
        </message>
    </context>
    <context>
        <name>Prompt</name>
        <message>
            <source>Vent</source>
            <translation>Ventear</translation>
        </message>
        <message>
            <source>Close the vent and hold</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Cerrar y esperar</translation>
        </message>
        <message>
            <source>Keep holding</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Seguir esperando</translation>
        </message>
        <message>
            <source>Vent again</source>
            <translation>Ventear otra vez</translation>
        </message>
        <message>
            <source>Vapour only: vent to zero</source>
            <translation>Solo vapor: ventear a cero</translation>
        </message>
        <message>
            <source>Dry ice: hold, keep clear</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hielo seco: espere, apártese</translation>
        </message>
        <message>
            <source>Open the bleeds at both ends</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Abrir las purgas en ambos extremos</translation>
        </message>
        <message>
            <source>Vent now</source>
            <translation>Ventear ya</translation>
        </message>
        <message>
            <source>Check the isolation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Revisar el aislamiento</translation>
        </message>
        <message>
            <source>Check the vent line</source>
            <translation>Revisar la línea de venteo</translation>
        </message>
        <message>
            <source>Check the gauge</source>
            <translation>Revisar el manómetro</translation>
        </message>
        <message>
            <source>No data: close the vent</source>
            <translation>Sin datos: cerrar el venteo</translation>
        </message>
        <message>
            <source>Wait</source>
            <translation>Esperar</translation>
        </message>
        <message>
            <source>No data</source>
            <translation>Sin datos</translation>
        </message>
        <message>
            <source>Stop: dry ice forming</source>
            <translation>Alto: se forma hielo seco</translation>
        </message>
        <message>
            <source>Dry ice possible</source>
            <translation>Posible hielo seco</translation>
        </message>
        <message>
            <source>Close now: below the triple point</source>
            <translation>Cerrar ya: bajo el punto triple</translation>
        </message>
        <message>
            <source>Close: hold for dry ice</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Cerrar: esperar por hielo seco</translation>
        </message>
        <message>
            <source>Wait: watch the closed section</source>
            <translation>Esperar: vigilar el tramo cerrado</translation>
        </message>
        <message>
            <source>Vent when ready</source>
            <translation>Ventear cuando esté listo</translation>
        </message>
        <message>
            <source>Hold for dry ice</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Esperar por hielo seco</translation>
        </message>
        <message>
            <source>Liquid or leak-by: vent again</source>
            <translation>Líquido o paso por válvula: ventear otra vez</translation>
        </message>
        <message>
            <source>Liquid or leak-by: keep holding</source>
            <translation>Líquido o paso por válvula: seguir esperando</translation>
        </message>
        <message>
            <source>Liquid: vent again</source>
            <translation>Líquido: ventear otra vez</translation>
        </message>
        <message>
            <source>Liquid: keep holding</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Líquido: seguir esperando</translation>
        </message>
        <message>
            <source>Open the vent slowly and watch the margin above the triple point. Fall slowly for the last 10 bar. The prompt to close comes early enough for your hand to reach the valve; do not wait for the stop line itself.</source>
            <translation>Abra el venteo despacio y vigile el margen sobre el punto triple. Baje despacio los últimos 10 bar. La indicación de cerrar llega a tiempo para que la mano alcance la válvula; no espere a la línea de parada.</translation>
        </message>
        <message>
            <source>Shut the vent valve now and leave everything still. Below the triple point liquid turns to dry ice, and a gauge at zero would no longer prove anything.</source>
            <translation>Cierre ya la válvula de venteo y no toque nada. Por debajo del punto triple el líquido se vuelve hielo seco y un manómetro a cero ya no probaría nada.</translation>
        </message>
        <message>
            <source>Leave the valve shut. The first minute is gas warming up in every case; only the later slope, and the next hold, tell liquid from gas. The time left is the earliest that the hold can decide, not a time after which the section is empty.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Deje la válvula cerrada. El primer minuto es siempre gas que se calienta; solo la pendiente posterior y la espera siguiente distinguen líquido de gas. El tiempo restante es lo más pronto que la espera puede decidir, no un tiempo tras el cual el tramo esté vacío.</translation>
        </message>
        <message>
            <source>Liquid is indicated, or this hold could not exclude it. Vent from here back down towards the stop pressure, never lower, then hold again.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, stop pressure</translatorcomment>
            <translation>Hay indicio de líquido, o esta espera no pudo excluirlo. Ventee desde aquí hasta la presión de parada, nunca más abajo, y espere otra vez.</translation>
        </message>
        <message>
            <source>The hold shows no liquid above its detection limit. Vent down, stop near 1 bar gauge and hold for dry ice, then go on to zero. Watch for a shelf at the triple point: if the fall stalls there, close and treat it as dry ice.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>La espera no muestra líquido por encima de su límite de detección. Ventee, pare cerca de 1 bar manométrico y espere por hielo seco, luego siga a cero. Vigile un escalón en el punto triple: si la bajada se detiene ahí, cierre y trátelo como hielo seco.</translation>
        </message>
        <message>
            <source>Dry ice is indicated or not excluded. Keep out of line of hose and cover: pressure may stand on both sides of a plug. The sentence under the prompt says whether the vented side stays open. Let ambient heat work; never strike, blow out or warm a plug. Snow that is shut in can rise far above the rated pressure: watch the gauge. No time alone ends this hold, and a gauge at zero is not proof of empty.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Hay indicio de hielo seco o no se ha excluido. Manténgase fuera de la línea de manguera y tapa: puede haber presión a ambos lados de un tapón. La frase bajo la indicación dice si el lado venteado queda abierto. Deje actuar el calor ambiente; nunca golpee, sople ni caliente un tapón. La nieve encerrada puede subir muy por encima de la presión admisible: vigile el manómetro. Ningún tiempo por sí solo termina esta espera, y un manómetro a cero no prueba que esté vacío.</translation>
        </message>
        <message>
            <source>Open the bleeds at both ends and leave them open. A plug between the gauge and the section hides pressure. This is a reading, not permission to open.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Abra las purgas en ambos extremos y déjelas abiertas. Un tapón entre manómetro y tramo oculta presión. Esto es una lectura, no un permiso para abrir.</translation>
        </message>
        <message>
            <source>The closed-in pressure is near a limit, or rises as a liquid-full section does. Open the vent now; stand clear of the outlet.</source>
            <translation>La presión encerrada está cerca de un límite o sube como en un tramo lleno de líquido. Abra ya el venteo; apártese de la salida.</translation>
        </message>
        <message>
            <source>Pressure rises in a way that points to flow past a closed isolation valve. Re-seat and lock the valves, or double block and bleed. Venting alone will not end it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed, isolation</translatorcomment>
            <translation>La presión sube de un modo que apunta a paso por una válvula de aislamiento cerrada. Reasiente y bloquee las válvulas, o doble bloqueo y purga. Solo ventear no lo acabará.</translation>
        </message>
        <message>
            <source>The vent is open but the pressure does not fall: a plug of dry ice in the vent line, or the shelf at the triple point. Close the vent. Do not look into, strike or heat the outlet.</source>
            <translation>El venteo está abierto pero la presión no baja: un tapón de hielo seco en la línea o el escalón del punto triple. Cierre el venteo. No mire dentro, no golpee ni caliente la salida.</translation>
        </message>
        <message>
            <source>The gauge shows values that a live section would not, or has reached its limit. Compare with the mechanical gauge; check the line to the gauge for a plug.</source>
            <translation>El manómetro muestra valores que un tramo vivo no daría, o está en su límite. Compare con el manómetro mecánico; revise si hay un tapón en su línea.</translation>
        </message>
        <message>
            <source>Close the vent. Read the mechanical gauge. If it rises, vent. Nothing shown before the gap holds any longer: the hold starts again when readings are back.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Cierre el venteo. Lea el manómetro mecánico. Si sube, ventee. Nada de lo mostrado antes del hueco vale ya: la espera empieza de nuevo cuando vuelvan las lecturas.</translation>
        </message>
        <message>
            <source>Nothing to do before the vent starts.</source>
            <translation>Nada que hacer antes de empezar el venteo.</translation>
        </message>
        <message>
            <source>What would you do now?</source>
            <translation>¿Qué haría usted ahora?</translation>
        </message>
    </context>
    <context>
        <name>Replay</name>
        <message>
            <source>reading the record: {percent} %</source>
            <translation>leyendo el registro: {percent} %</translation>
        </message>
        <message>
            <source>rows lost: {count}</source>
            <translation>filas perdidas: {count}</translation>
        </message>
        <message>
            <source>cut off at the end</source>
            <translation>cortado al final</translation>
        </message>
        <message>
            <source>the record could not be judged to its end: {error}</source>
            <translation>el registro no pudo juzgarse hasta el final: {error}</translation>
        </message>
    </context>
    <context>
        <name>Samples</name>
        <message>
            <source>Simulated vents: invented readings, replayed at ten times speed</source>
            <translation>Venteos simulados: lecturas inventadas, a diez veces la velocidad</translation>
        </message>
        <message>
            <source>Liquid left, bare steel</source>
            <translation>Queda líquido, acero desnudo</translation>
        </message>
        <message>
            <source>Vapour only</source>
            <translation>Solo vapor</translation>
        </message>
        <message>
            <source>Liquid left, insulated</source>
            <translation>Queda líquido, aislado</translation>
        </message>
        <message>
            <source>Liquid left, quiet pressure</source>
            <translation>Queda líquido, presión quieta</translation>
        </message>
        <message>
            <source>A valve leaks by</source>
            <translation>Una válvula deja pasar</translation>
        </message>
        <message>
            <source>Dry ice</source>
            <translation>Hielo seco</translation>
        </message>
        <message>
            <source>Shut in full of liquid</source>
            <translation>Encerrado lleno de líquido</translation>
        </message>
        <message>
            <source>At 1600 m, gauge in psig</source>
            <translation>A 1600 m, manómetro en psig</translation>
        </message>
        <message>
            <source>Valve not recorded</source>
            <translation>Válvula no registrada</translation>
        </message>
        <message>
            <source>From another logger</source>
            <translation>De otro registrador</translation>
        </message>
    </context>
    <context>
        <name>Source</name>
        <message>
            <source>opening</source>
            <translation>abriendo</translation>
        </message>
        <message>
            <source>waiting for readings</source>
            <translation>esperando lecturas</translation>
        </message>
        <message>
            <source>live</source>
            <translation>en vivo</translation>
        </message>
        <message>
            <source>readings come late</source>
            <translation>las lecturas llegan tarde</translation>
        </message>
        <message>
            <source>source lost</source>
            <translation>fuente perdida</translation>
        </message>
        <message>
            <source>not readable</source>
            <translation>ilegible</translation>
        </message>
        <message>
            <source>the stream has ended</source>
            <translation>el flujo ha terminado</translation>
        </message>
        <message>
            <source>refused</source>
            <translation>rechazado</translation>
        </message>
        <message>
            <source>this program has a fault</source>
            <translation>este programa tiene un fallo</translation>
        </message>
    </context>
    <context>
        <name>SourceTest</name>
        <message>
            <source>how the newest row is read</source>
            <translation>cómo se lee la fila más reciente</translation>
        </message>
        <message>
            <source>The newest row is read as</source>
            <translation>La fila más reciente se lee como</translation>
        </message>
        <message>
            <source>Lines as they came</source>
            <translation>Líneas tal como llegaron</translation>
        </message>
        <message>
            <source>name the columns in the field above</source>
            <translation>nombre las columnas en el campo de arriba</translation>
        </message>
        <message>
            <source>Opening the source…</source>
            <translation>Abriendo la fuente…</translation>
        </message>
        <message>
            <source>The source is open; waiting for the first line…</source>
            <translation>La fuente está abierta; esperando la primera línea…</translation>
        </message>
        <message>
            <source>Data comes but no line ends: check baud rate and that the instrument ends its lines</source>
            <translation>Llegan datos pero ninguna línea termina: revise la velocidad en baudios y que el instrumento termine sus líneas</translation>
        </message>
        <message>
            <source>The names of the columns came, but no reading under them yet</source>
            <translation>Llegaron los nombres de las columnas, pero aún ninguna lectura</translation>
        </message>
        <message>
            <source>Data comes but it is no text: check baud rate, parity and cable</source>
            <translation>Llegan datos pero no son texto: revise baudios, paridad y cable</translation>
        </message>
        <message>
            <source>Lines come but no pressure column: type what each value is into the field above, such as {example}</source>
            <translation>Llegan líneas pero ninguna columna de presión: escriba arriba qué es cada valor, por ejemplo {example}</translation>
        </message>
        <message>
            <source>Lines come but a job would refuse them: {reason}</source>
            <translation>Llegan líneas, pero un trabajo las rechazaría: {reason}</translation>
        </message>
        <message>
            <source>Lines come but none is a reading: {reason}</source>
            <translation>Llegan líneas pero ninguna es una lectura: {reason}</translation>
        </message>
        <message>
            <source>Readings arrive, {rate}: pressure {pressure}</source>
            <translation>Llegan lecturas, {rate}: presión {pressure}</translation>
        </message>
        <message>
            <source>Readings arrive, {rate}: pressure {pressure}, but {rejected} of {lines} lines are none: {reason}</source>
            <translation>Llegan lecturas, {rate}: presión {pressure}, pero {rejected} de {lines} líneas no lo son: {reason}</translation>
        </message>
        <message>
            <source>Readings arrive too slowly, one in {interval} s; a job needs one at least every 2 s</source>
            <translation>Las lecturas llegan muy despacio, una cada {interval} s; un trabajo necesita al menos una cada 2 s</translation>
        </message>
        <message>
            <source>Readings have stopped: check cable and instrument. The last was {pressure}, {age} s ago</source>
            <translation>Las lecturas han cesado: revise cable e instrumento. La última fue {pressure}, hace {age} s</translation>
        </message>
        <message>
            <source>Reading what the file holds so far…</source>
            <translation>Leyendo lo que el archivo contiene hasta ahora…</translation>
        </message>
        <message>
            <source>The file can be read ({readings} readings) but nothing is added to it: is the other program recording?</source>
            <translation>El archivo se puede leer ({readings} lecturas) pero no se le añade nada: ¿está registrando el otro programa?</translation>
        </message>
        <message>
            <source>The source has gone: {lost}</source>
            <translation>La fuente ha desaparecido: {lost}</translation>
        </message>
        <message>
            <source>The stream has ended after {readings} readings</source>
            <translation>El flujo terminó tras {readings} lecturas</translation>
        </message>
        <message>
            <source>The file is empty: is the other program recording?</source>
            <translation>El archivo está vacío: ¿está registrando el otro programa?</translation>
        </message>
        <message>
            <source>The address answers but nothing comes: check that the instrument is on and sends</source>
            <translation>La dirección responde pero no llega nada: revise que el instrumento esté encendido y envíe</translation>
        </message>
        <message>
            <source>The port opens but nothing comes: check baud rate, cable, and that the instrument is on and sends</source>
            <translation>El puerto se abre pero no llega nada: revise baudios, cable y que el instrumento esté encendido y envíe</translation>
        </message>
        <message>
            <source>the first one</source>
            <translation>la primera</translation>
        </message>
        <message>
            <source>many a second</source>
            <translation>muchas por segundo</translation>
        </message>
        <message>
            <source>{rate} a second</source>
            <translation>{rate} por segundo</translation>
        </message>
        <message>
            <source>one in {interval} s</source>
            <translation>una cada {interval} s</translation>
        </message>
        <message>
            <source>age not known: the readings lay in the file before</source>
            <translation>antigüedad desconocida: las lecturas ya estaban en el archivo</translation>
        </message>
        <message>
            <source>{lines} lines, {readings} readings, {rejected} not understood</source>
            <translation>{lines} líneas, {readings} lecturas, {rejected} no entendidas</translation>
        </message>
        <message>
            <source>not used</source>
            <translation>no se usa</translation>
        </message>
        <message>
            <source>reply {reply}</source>
            <translation>respuesta {reply}</translation>
        </message>
        <message>
            <source>names of the columns</source>
            <translation>nombres de las columnas</translation>
        </message>
        <message>
            <source>about the section</source>
            <translation>sobre el tramo</translation>
        </message>
        <message>
            <source>as it came: {bytes}</source>
            <translation>tal como llegó: {bytes}</translation>
        </message>
        <message>
            <source>time</source>
            <translation>tiempo</translation>
        </message>
        <message>
            <source>date</source>
            <translation>fecha</translation>
        </message>
        <message>
            <source>pressure</source>
            <translation>presión</translation>
        </message>
        <message>
            <source>second gauge</source>
            <translation>segundo manómetro</translation>
        </message>
        <message>
            <source>line temperature</source>
            <translation>temperatura de línea</translation>
        </message>
        <message>
            <source>upper temperature</source>
            <translation>temperatura superior</translation>
        </message>
        <message>
            <source>air temperature</source>
            <translation>temperatura del aire</translation>
        </message>
        <message>
            <source>vent valve</source>
            <translation>válvula de venteo</translation>
        </message>
        <message>
            <source>vacuum</source>
            <translation>vacío</translation>
        </message>
        <message>
            <source>CO2 in the room</source>
            <translation>CO2 en la sala</translation>
        </message>
        <message>
            <source>note</source>
            <translation>nota</translation>
        </message>
        <message>
            <source>check sum</source>
            <translation>suma de control</translation>
        </message>
        <message>
            <source>empty</source>
            <translation>vacío</translation>
        </message>
        <message>
            <source>open</source>
            <translation>abierta</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>cerrada</translation>
        </message>
        <message>
            <source>right</source>
            <translation>correcta</translation>
        </message>
        <message>
            <source>neither open nor closed</source>
            <translation>ni abierta ni cerrada</translation>
        </message>
        <message>
            <source>no number</source>
            <translation>no es un número</translation>
        </message>
        <message>
            <source>out of range</source>
            <translation>fuera de rango</translation>
        </message>
        <message>
            <source>{rows} rows too fast to be taken</source>
            <translation>{rows} filas demasiado rápidas</translation>
        </message>
        <message>
            <source>The device answers but refuses ({exception}): check the unit number and the register map</source>
            <translation>El aparato responde, pero rechaza ({exception}): compruebe el número de unidad (unit) y el mapa de registros</translation>
        </message>
    </context>
    <context>
        <name>Spoken</name>
        <message>
            <source>alarms</source>
            <translation>alarmas</translation>
        </message>
        <message>
            <source>events</source>
            <translation>sucesos</translation>
        </message>
        <message>
            <source>headroom above the triple point</source>
            <translation>margen sobre el punto triple</translation>
        </message>
        <message>
            <source>pressure against heat content</source>
            <translation>presión frente al contenido de calor</translation>
        </message>
        <message>
            <source>holds over each other</source>
            <translation>esperas superpuestas</translation>
        </message>
        <message>
            <source>pressure against temperature</source>
            <translation>presión frente a la temperatura</translation>
        </message>
        <message>
            <source>note</source>
            <translation>nota</translation>
        </message>
        <message>
            <source>name of the writer, may be empty</source>
            <translation>nombre de quien escribe, puede quedar vacío</translation>
        </message>
        <message>
            <source>plan</source>
            <translation>plan</translation>
        </message>
        <message>
            <source>plan in full</source>
            <translation>plan completo</translation>
        </message>
        <message>
            <source>place in the recording</source>
            <translation>lugar en el registro</translation>
        </message>
        <message>
            <source>section: nothing known yet</source>
            <translation>tramo: aún no se sabe nada</translation>
        </message>
        <message>
            <source>section: {state}</source>
            <translation>tramo: {state}</translation>
        </message>
        <message>
            <source>age of the newest reading</source>
            <translation>antigüedad de la última lectura</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>temperatura</translation>
        </message>
        <message>
            <source>recording</source>
            <translation>registro</translation>
        </message>
        <message>
            <source>sound</source>
            <translation>sonido</translation>
        </message>
        <message>
            <source>source</source>
            <translation>fuente</translation>
        </message>
        <message>
            <source>pressure and temperature against time</source>
            <translation>presión y temperatura frente al tiempo</translation>
        </message>
        <message>
            <source>margin</source>
            <translation>margen</translation>
        </message>
        <message>
            <source>pressure</source>
            <translation>presión</translation>
        </message>
    </context>
    <context>
        <name>Start</name>
        <message>
            <source>Open a recorded vent</source>
            <translation>Abrir un venteo registrado</translation>
        </message>
        <message>
            <source>A readings log, from this program or another logger.</source>
            <translation>Un registro de este programa o de otro equipo.</translation>
        </message>
        <message>
            <source>Try a sample</source>
            <translation>Probar un ejemplo</translation>
        </message>
        <message>
            <source>Simulated vents that ship with the program, replayed.</source>
            <translation>Venteos simulados que vienen con el programa.</translation>
        </message>
        <message>
            <source>Connect a gauge</source>
            <translation>Conectar un manómetro</translation>
        </message>
        <message>
            <source>Watch a live vent with prompts, and record it.</source>
            <translation>Seguir un venteo en vivo con indicaciones y registrarlo.</translation>
        </message>
        <message>
            <source>Plan a vent</source>
            <translation>Planear un venteo</translation>
        </message>
        <message>
            <source>Charge, stop pressure, dry ice, room and time beforehand.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Carga, presión de parada, hielo seco, sala y tiempo.</translation>
        </message>
        <message>
            <source>Practise</source>
            <translation>Practicar</translation>
        </message>
        <message>
            <source>Work the valve of a simulated section; alone or with a class.</source>
            <translation>Maneje la válvula de un tramo simulado, solo o en clase.</translation>
        </message>
        <message>
            <source>A job</source>
            <translation>Un trabajo</translation>
        </message>
        <message>
            <source>Step by step from the permit to the signed record.</source>
            <translation>Paso a paso, del permiso al registro firmado.</translation>
        </message>
        <message>
            <source>Beside you while a trapped CO2 section is vented: what is left inside, how sure, and what to do next.</source>
            <translation>A su lado mientras se ventea un tramo de CO2 aislado: qué queda dentro, con qué certeza y qué hacer.</translation>
        </message>
        <message>
            <source>It advises from gauge readings. It never says that a section is safe to open: your procedure, your permit and the mechanical gauge decide.</source>
            <translation>Aconseja a partir de lecturas. Nunca dice que un tramo se pueda abrir sin peligro: deciden su procedimiento, su permiso y el manómetro mecánico.</translation>
        </message>
    </context>
    <context>
        <name>Status</name>
        <message>
            <source>recording; disk nearly full</source>
            <translation>registrando; disco casi lleno</translation>
        </message>
        <message>
            <source>recording: {lines} lines</source>
            <translation>registrando: {lines} líneas</translation>
        </message>
        <message>
            <source>NO SOUND</source>
            <translation>SIN SONIDO</translation>
        </message>
        <message>
            <source>recording</source>
            <translation>registrando</translation>
        </message>
        <message>
            <source>NOT RECORDING</source>
            <translation>SIN REGISTRAR</translation>
        </message>
    </context>
    <context>
        <name>Steps</name>
        <message>
            <source>Open a CO2 section for work and return it to service</source>
            <translation>Abrir un tramo de CO2 para trabajar y devolverlo al servicio</translation>
        </message>
        <message>
            <source>Plan and brief</source>
            <translation>Planificar e informar</translation>
        </message>
        <message>
            <source>Mark the section on the drawing: every valve, check valve, solenoid, regulator, relief valve, low point, top vent and oil pocket.</source>
            <translation>Marque el tramo en el plano: cada válvula, antirretorno, solenoide, regulador, válvula de alivio, punto bajo, venteo superior y bolsa de aceite.</translation>
        </message>
        <message>
            <source>Run the plan: charge, stop pressure for this altitude and gauge, room concentration if all of it is let out.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Calcule el plan: carga, presión de parada para esta altitud y manómetro, concentración en la sala si sale todo.</translation>
        </message>
        <message>
            <source>Agree who watches the gauge, who works the valve, the way out and the hand signals.</source>
            <translation>Acuerde quién vigila el manómetro, quién maneja la válvula, la salida y las señas.</translation>
        </message>
        <message>
            <source>Cavities and check-valve pockets are trapped volumes of their own: the gauge can&apos;t see them. Plan a bleed for each.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Las cavidades y bolsas de antirretornos son volúmenes atrapados propios: el manómetro no los ve. Prevea una purga para cada uno.</translation>
        </message>
        <message>
            <source>The relief path must not be isolated with the section. Find the relief valve of this section and keep its way open.</source>
            <translation>La vía de alivio no debe aislarse con el tramo. Localice la válvula de alivio de este tramo y mantenga su vía abierta.</translation>
        </message>
        <message>
            <source>Liquid shut between two valves rises by 7 to 16 bar per kelvin.</source>
            <translation>El líquido encerrado entre dos válvulas sube de 7 a 16 bar por kelvin.</translation>
        </message>
        <message>
            <source>A solenoid and a check valve in a row hide a trapped volume that nobody marked.</source>
            <translation>Un solenoide y un antirretorno en serie esconden un volumen atrapado que nadie marcó.</translation>
        </message>
        <message>
            <source>The relief valve sits on the other side of a valve that will be shut.</source>
            <translation>La válvula de alivio está al otro lado de una válvula que se va a cerrar.</translation>
        </message>
        <message>
            <source>Permit number</source>
            <translation>Número de permiso</translation>
        </message>
        <message>
            <source>Heaters, fans and defrost on this section, and how they are locked off</source>
            <translation>Resistencias, ventiladores y desescarche de este tramo, y cómo están bloqueados</translation>
        </message>
        <message>
            <source>Isolate, lock and tag</source>
            <translation>Aislar, bloquear y etiquetar</translation>
        </message>
        <message>
            <source>Lock off pump, compressor, fans, heaters and hot-gas defrost.</source>
            <translation>Bloquee bomba, compresor, ventiladores, resistencias y desescarche por gas caliente.</translation>
        </message>
        <message>
            <source>Shut the liquid supply valve first, let the plant pull the section down, then shut the outlet. Never shut both ends on liquid.</source>
            <translation>Cierre primero la válvula de líquido, deje que la planta vacíe el tramo y cierre luego la salida. Nunca cierre ambos extremos con líquido.</translation>
        </message>
        <message>
            <source>Write down each valve by name, lock it, tag it.</source>
            <translation>Anote cada válvula por su nombre, bloquéela, etiquétela.</translation>
        </message>
        <message>
            <source>A relief path must not be isolated with the section.</source>
            <translation>Una vía de alivio no debe aislarse con el tramo.</translation>
        </message>
        <message>
            <source>Stepper and solenoid valves hold in one direction only: shut the hand valve as well.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Las válvulas paso a paso y solenoides retienen en un solo sentido: cierre también la válvula manual.</translation>
        </message>
        <message>
            <source>If the pressure rises faster than 2 bar/min or passes 0.9 of the rated pressure, open the vent at once.</source>
            <translation>Si la presión sube más de 2 bar/min o pasa de 0,9 de la presión admisible, abra el venteo de inmediato.</translation>
        </message>
        <message>
            <source>Trapped liquid bursts a gasket within minutes; a gauge outside that pocket shows nothing.</source>
            <translation>El líquido atrapado revienta una junta en minutos; un manómetro fuera de esa bolsa no muestra nada.</translation>
        </message>
        <message>
            <source>A defrost or a controller opens a valve while the section is being vented.</source>
            <translation>Un desescarche o un controlador abre una válvula mientras se ventea el tramo.</translation>
        </message>
        <message>
            <source>Every valve on the isolation list is shut, locked and tagged</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Todas las válvulas de la lista de aislamiento están cerradas, bloqueadas y etiquetadas</translation>
        </message>
        <message>
            <source>The section&apos;s relief path is not isolated with the section</source>
            <translation>La vía de alivio del tramo no está aislada con el tramo</translation>
        </message>
        <message>
            <source>Prove the isolation</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Comprobar el aislamiento</translation>
        </message>
        <message>
            <source>Watch the pressure for 2 to 5 minutes with the clamp reading.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Vigile la presión de 2 a 5 minutos con la sonda de pinza puesta.</translation>
        </message>
        <message>
            <source>Pressure that follows the metal: tight. A straight rise that ignores the temperature: a supply valve passes.</source>
            <translation>Presión que sigue al metal: estanco. Una subida recta que ignora la temperatura: una válvula de alimentación deja pasar.</translation>
        </message>
        <message>
            <source>A valve that passes refills the section while the cover is off: double block and bleed, or stop the job.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Una válvula que deja pasar vuelve a llenar el tramo con la tapa quitada: doble bloqueo y purga, o pare el trabajo.</translation>
        </message>
        <message>
            <source>0.1 g/s past a supply valve looks like liquid boiling in a 10 litre section.</source>
            <translation>0,1 g/s por una válvula de alimentación parece líquido hirviendo en un tramo de 10 litros.</translation>
        </message>
        <message>
            <source>No closed time was seen: check that the readings arrive and that the vent is shut.</source>
            <translation>No se vio tiempo cerrado: compruebe que llegan lecturas y que el venteo está cerrado.</translation>
        </message>
        <message>
            <source>The pressure keeps rising: open the vent, find the valve that passes.</source>
            <translation>La presión sigue subiendo: abra el venteo, busque la válvula que deja pasar.</translation>
        </message>
        <message>
            <source>People, air and hose</source>
            <translation>Personas, aire y manguera</translation>
        </message>
        <message>
            <source>Go through the five points on the spot, with the second person present.</source>
            <translation>Repase los cinco puntos en el lugar, con la segunda persona presente.</translation>
        </message>
        <message>
            <source>Tie the hose down at its end and every metre. Bond it: blown snow charges it.</source>
            <translation>Sujete la manguera en su extremo y cada metro. Conéctela a tierra: la nieve soplada la carga.</translation>
        </message>
        <message>
            <source>An oxygen alarm is not a CO2 alarm: at 40 000 ppm CO2 it still reads 20.1 %, above its 19.5 % alarm.</source>
            <translation>Una alarma de oxígeno no es una alarma de CO2: con 40 000 ppm de CO2 aún marca 20,1 %, sobre su alarma de 19,5 %.</translation>
        </message>
        <message>
            <source>Cold CO2 is over twice as heavy as air: it lies in pits, wells and docks and runs down stairs.</source>
            <translation>El CO2 frío pesa más del doble que el aire: se queda en fosos, pozos y muelles y baja por escaleras.</translation>
        </message>
        <message>
            <source>No flame and no heat gun on a closed section; no spark near a snow jet.</source>
            <translation>Ni llama ni pistola de calor en un tramo cerrado; ninguna chispa cerca de un chorro de nieve.</translation>
        </message>
        <message>
            <source>A loose hose whips: 140 N of thrust from a 6.3 mm bore at 35 bar g.</source>
            <translation>Una manguera suelta da latigazos: 140 N de empuje por un orificio de 6,3 mm a 35 bar g.</translation>
        </message>
        <message>
            <source>The wind takes the cloud to an air intake or under a door.</source>
            <translation>El viento lleva la nube a una toma de aire o por debajo de una puerta.</translation>
        </message>
        <message>
            <source>CO2 meter on at the breathing zone, and low spots measured (an oxygen alarm is not a CO2 meter)</source>
            <translation>Medidor de CO2 encendido a la altura de la respiración y puntos bajos medidos (una alarma de oxígeno no es un medidor de CO2)</translation>
        </message>
        <message>
            <source>Second person in sight, knows the way out and does not come in after anybody without breathing apparatus</source>
            <translation>Segunda persona a la vista, conoce la salida y no entra a buscar a nadie sin equipo de respiración</translation>
        </message>
        <message>
            <source>Hose tied down at its end and every metre, and bonded</source>
            <translation>Manguera sujeta en su extremo y cada metro, y conectada a tierra</translation>
        </message>
        <message>
            <source>Outlet away from air intakes, pits, doors and people</source>
            <translation>Salida lejos de tomas de aire, fosos, puertas y personas</translation>
        </message>
        <message>
            <source>Face, hand and ear protection on</source>
            <translation>Protección de cara, manos y oídos puesta</translation>
        </message>
        <message>
            <source>The air is above 5000 ppm or nobody measured it: leave, ventilate, find out why.</source>
            <translation>El aire pasa de 5000 ppm o nadie lo midió: salga, ventile, averigüe por qué.</translation>
        </message>
        <message>
            <source>Connect the gauge and check its zero</source>
            <translation>Conectar el manómetro y revisar su cero</translation>
        </message>
        <message>
            <source>Connect gauges and vent at the top, vapour port. Take out core depressors, check-valve couplers and sight strainers.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: strainer</translatorcomment>
            <translation>Conecte manómetros y venteo arriba, en la toma de vapor. Quite depresores, acoples con antirretorno y filtros de visor.</translation>
        </message>
        <message>
            <source>Open the gauge to air once, note what it shows, give the altitude or the barometer.</source>
            <translation>Abra una vez el manómetro al aire, anote lo que marca, indique la altitud o el barómetro.</translation>
        </message>
        <message>
            <source>Purge the hose with the section&apos;s own vapour and see both gauges move when the valve is cracked.</source>
            <translation>Purgue la manguera con el propio vapor del tramo y vea moverse ambos manómetros al entreabrir la válvula.</translation>
        </message>
        <message>
            <source>Throttle at the open end. Anything narrower downstream is where a plug forms.</source>
            <translation>Estrangule en el extremo abierto. Donde haya algo más estrecho después se forma un tapón.</translation>
        </message>
        <message>
            <source>A gauge that shows 0.3 bar too much at 2000 m leaves half of the margin.</source>
            <translation>Un manómetro que marca 0,3 bar de más a 2000 m deja la mitad del margen.</translation>
        </message>
        <message>
            <source>Keep out of line with plugs, caps and covers.</source>
            <translation>Fuera de la línea de tapones, caperuzas y tapas.</translation>
        </message>
        <message>
            <source>A coupler with a check valve becomes the plug.</source>
            <translation>Un acople con antirretorno se convierte en el tapón.</translation>
        </message>
        <message>
            <source>The gauge&apos;s own valve is shut: a perfectly quiet trace that means nothing.</source>
            <translation>La válvula del propio manómetro está cerrada: una traza muy quieta que no significa nada.</translation>
        </message>
        <message>
            <source>The gauge was seen to move when the valve was cracked</source>
            <translation>Se vio moverse el manómetro al entreabrir la válvula</translation>
        </message>
        <message>
            <source>Zero not noted or off by more than 0.1 bar: change the gauge.</source>
            <translation>Cero sin anotar o desviado más de 0,1 bar: cambie el manómetro.</translation>
        </message>
        <message>
            <source>Vent vapour down to the stop pressure</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Ventear vapor hasta la presión de parada</translation>
        </message>
        <message>
            <source>Vent from the top, slowly: 1 to 2 bar/min over the last 10 bar, one minute pauses at 20, 15, 10 and 7 bar g.</source>
            <translation>Ventee desde arriba, despacio: de 1 a 2 bar/min en los últimos 10 bar, con pausas de un minuto a 20, 15, 10 y 7 bar g.</translation>
        </message>
        <message>
            <source>Close at the stop pressure on the screen. It holds the altitude, the gauge class and the zero.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, stop pressure</translatorcomment>
            <translation>Cierre a la presión de parada de la pantalla. Incluye la altitud, la clase del manómetro y el cero.</translation>
        </message>
        <message>
            <source>Stand out of line with plug, cap, cover and hose end.</source>
            <translation>Póngase fuera de la línea de tapón, caperuza, tapa y extremo de manguera.</translation>
        </message>
        <message>
            <source>Never strike a plug, and never heat the middle of one: there is pressure on both sides.</source>
            <translation>Nunca golpee un tapón ni caliente su centro: hay presión a ambos lados.</translation>
        </message>
        <message>
            <source>Venting liquid from a low drain makes snow in the pipe at the outlet.</source>
            <translation>Ventear líquido por un drenaje bajo hace nieve en el tubo de salida.</translation>
        </message>
        <message>
            <source>No repressurising of steel that is below its minimum temperature.</source>
            <translation>No vuelva a presurizar acero por debajo de su temperatura mínima.</translation>
        </message>
        <message>
            <source>The pressure stalls although flow is heard: liquid boils. It stalls and the flow stops: a plug, or the triple point shelf.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>La presión se detiene aunque se oye flujo: hierve líquido. Se detiene y el flujo cesa: un tapón, o el escalón del punto triple.</translation>
        </message>
        <message>
            <source>Snow blocks the outlet and lets go later.</source>
            <translation>La nieve tapa la salida y se suelta más tarde.</translation>
        </message>
        <message>
            <source>Still well above the stop pressure: a plug, much liquid, or a supply valve that passes.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Aún muy por encima de la presión de parada: un tapón, mucho líquido o una válvula de alimentación que deja pasar.</translation>
        </message>
        <message>
            <source>Hold tests: is there liquid left?</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Pruebas de espera: ¿queda líquido?</translation>
        </message>
        <message>
            <source>Shut the vent, leave everything still, at least 10 minutes.</source>
            <translation>Cierre el venteo, no toque nada, al menos 10 minutos.</translation>
        </message>
        <message>
            <source>A rise that goes on straight: liquid, a passing valve or oil. Warm the low points with air, vent in bursts back to the stop pressure, never lower.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Una subida que sigue recta: líquido, una válvula que deja pasar o aceite. Caliente los puntos bajos con aire, ventee a ráfagas hasta la presión de parada, nunca más abajo.</translation>
        </message>
        <message>
            <source>Repeat until two holds in a row show vapour only, with the lowest clamp at least 5 K above saturation. The prompt may already allow more after one: this job asks for the second.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, clamp</translatorcomment>
            <translation>Repita hasta que dos esperas seguidas muestren solo vapor, con la sonda de pinza más baja al menos 5 K sobre la saturación. La indicación puede permitir más tras una: este trabajo pide la segunda.</translation>
        </message>
        <message>
            <source>The first minute of a rise is gas warming in every case. The late slope and the repeat tell.</source>
            <translation>El primer minuto de una subida es siempre gas que se calienta. Deciden la pendiente tardía y la repetición.</translation>
        </message>
        <message>
            <source>Flat is not empty: cold metal gives no heat, a shut gauge valve gives no movement.</source>
            <translation>Plano no es vacío: el metal frío no da calor, una válvula de manómetro cerrada no da movimiento.</translation>
        </message>
        <message>
            <source>No flame, no heat gun on a closed section.</source>
            <translation>Ni llama ni pistola de calor en un tramo cerrado.</translation>
        </message>
        <message>
            <source>A novice reads the first rise as liquid, or a slow large section as empty.</source>
            <translation>Un novato toma la primera subida por líquido, o un tramo grande y lento por vacío.</translation>
        </message>
        <message>
            <source>A drier core holds liquid, oil gives off gas for an hour.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>El núcleo de un secador retiene líquido, el aceite suelta gas durante una hora.</translation>
        </message>
        <message>
            <source>Liquid is still there or the holds can&apos;t show that it is gone: warm the low points, or look for a passing valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Aún hay líquido o las esperas no pueden mostrar que se fue: caliente los puntos bajos, o busque una válvula que deja pasar.</translation>
        </message>
        <message>
            <source>The metal is as cold as the liquid would be: such a hold can&apos;t show liquid. Warm it.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>El metal está tan frío como estaría el líquido: una espera así no puede mostrar líquido. Caliéntelo.</translation>
        </message>
        <message>
            <source>Two-pressure hold, where a valve may pass</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Espera a dos presiones, donde una válvula puede dejar pasar</translation>
        </message>
        <message>
            <source>Hold again from about 10 bar g.</source>
            <translation>Espere otra vez desde unos 10 bar g.</translation>
        </message>
        <message>
            <source>The same slope at both pressures: a valve passes. A smaller slope at the higher pressure: liquid.</source>
            <translation>La misma pendiente a ambas presiones: una válvula deja pasar. Menor pendiente a la presión más alta: líquido.</translation>
        </message>
        <message>
            <source>A passing valve fills the section again while people work at it.</source>
            <translation>Una válvula que deja pasar vuelve a llenar el tramo mientras se trabaja en él.</translation>
        </message>
        <message>
            <source>Skipped, and the section comes up with the cover off.</source>
            <translation>Se omitió, y el tramo sube con la tapa quitada.</translation>
        </message>
        <message>
            <source>The section was not held near 10 bar g: do so, or skip this step and say why.</source>
            <translation>El tramo no se mantuvo cerca de 10 bar g: hágalo, u omita este paso y diga por qué.</translation>
        </message>
        <message>
            <source>Through the triple point</source>
            <translation>Pasar por el punto triple</translation>
        </message>
        <message>
            <source>One calm pull from the stop pressure to 1 bar g, watching the local triple point on the screen.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Una bajada tranquila de la presión de parada a 1 bar g, vigilando el punto triple local en la pantalla.</translation>
        </message>
        <message>
            <source>A shelf there means liquid was left and is freezing now: close, stop, treat it as dry ice.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>Un escalón ahí significa que quedó líquido y ahora se congela: cierre, pare, trátelo como hielo seco.</translation>
        </message>
        <message>
            <source>Never shut a section on snow: 1 kg closed in 10 litres ends at about 41 bar a at 20 degC.</source>
            <translation>Nunca cierre un tramo con nieve: 1 kg encerrado en 10 litros acaba en unos 41 bar a a 20 °C.</translation>
        </message>
        <message>
            <source>Never strike a plug.</source>
            <translation>Nunca golpee un tapón.</translation>
        </message>
        <message>
            <source>63 % of the liquid at the shelf becomes snow and holds the job up for hours.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, shelf</translatorcomment>
            <translation>El 63 % del líquido en el escalón se hace nieve y retrasa el trabajo horas.</translation>
        </message>
        <message>
            <source>No hold says vapour only: do not go below the stop pressure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold, stop pressure</translatorcomment>
            <translation>Ninguna espera dice solo vapor: no baje de la presión de parada.</translation>
        </message>
        <message>
            <source>The pressure does not come down: a shelf, a plug or a valve that passes.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: shelf</translatorcomment>
            <translation>La presión no baja: un escalón, un tapón o una válvula que deja pasar.</translation>
        </message>
        <message>
            <source>Hold at low pressure for dry ice</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Esperar a baja presión por hielo seco</translation>
        </message>
        <message>
            <source>Shut the vent near 1 bar g for at least 10 minutes. No time alone ends this hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Cierre el venteo cerca de 1 bar g al menos 10 minutos. Ningún tiempo por sí solo termina esta espera.</translation>
        </message>
        <message>
            <source>A rise to the local triple point that stays there is dry ice. Leave it vented and let it warm.</source>
            <translation>Una subida hasta el punto triple local que se queda ahí es hielo seco. Deje el venteo abierto y que se caliente.</translation>
        </message>
        <message>
            <source>Never shut a section on snow and walk away.</source>
            <translation>Nunca cierre un tramo con nieve y se marche.</translation>
        </message>
        <message>
            <source>A gauge at zero is not proof: snow at -78.5 degC sits at 0 bar g.</source>
            <translation>Un manómetro a cero no es prueba: la nieve a -78,5 °C está a 0 bar g.</translation>
        </message>
        <message>
            <source>Never strike a plug; keep out of line with it.</source>
            <translation>Nunca golpee un tapón; póngase fuera de su línea.</translation>
        </message>
        <message>
            <source>The pressure stops at 4.2 bar g and somebody calls it stable.</source>
            <translation>La presión se para en 4,2 bar g y alguien lo llama estable.</translation>
        </message>
        <message>
            <source>Dry ice is not ruled out: leave it vented, warm the metal, hold again.</source>
            <translation>No se descarta hielo seco: deje el venteo abierto, caliente el metal, espere otra vez.</translation>
        </message>
        <message>
            <source>Zero, bleeds open at both ends</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Cero, purgas abiertas en ambos extremos</translation>
        </message>
        <message>
            <source>Vent to zero. Open the bleeds at BOTH ends and leave them open.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Ventee a cero. Abra las purgas en AMBOS extremos y déjelas abiertas.</translation>
        </message>
        <message>
            <source>Shut them for 5 minutes once more, see no rise, then open them again.</source>
            <translation>Ciérrelas 5 minutos una vez más, vea que no sube, y vuelva a abrirlas.</translation>
        </message>
        <message>
            <source>A plug between gauge and section keeps pressure in while the gauge shows zero.</source>
            <translation>Un tapón entre manómetro y tramo guarda presión mientras el manómetro marca cero.</translation>
        </message>
        <message>
            <source>Cavities and check-valve pockets: bleed each one.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Cavidades y bolsas de antirretornos: purgue cada una.</translation>
        </message>
        <message>
            <source>A dial gauge is least to be trusted at zero: it may rest on a stop pin.</source>
            <translation>De un manómetro de aguja hay que fiarse menos en cero: puede apoyarse en un tope.</translation>
        </message>
        <message>
            <source>One bleed only: pressure is left behind a shut strainer valve.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed, strainer</translatorcomment>
            <translation>Una sola purga: queda presión tras una válvula de filtro cerrada.</translation>
        </message>
        <message>
            <source>Bleed at the first end open, seen and heard to pass freely</source>
            <translation>Purga del primer extremo abierta, vista y oída pasar libre</translation>
        </message>
        <message>
            <source>Bleed at the second end open, seen and heard to pass freely</source>
            <translation>Purga del segundo extremo abierta, vista y oída pasar libre</translation>
        </message>
        <message>
            <source>Cavities and check-valve pockets on the list bled, or none on this section</source>
            <translation>Cavidades y bolsas de antirretornos de la lista purgadas, o ninguna en este tramo</translation>
        </message>
        <message>
            <source>The pressure comes back: return to the hold tests.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>La presión vuelve: regrese a las pruebas de espera.</translation>
        </message>
        <message>
            <source>Warm through</source>
            <translation>Calentar del todo</translation>
        </message>
        <message>
            <source>With the bleeds open, let the metal come up above 0 degC, better above the dew point.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Con las purgas abiertas, deje que el metal pase de 0 °C, mejor del punto de rocío.</translation>
        </message>
        <message>
            <source>Skin sticks to cold metal. No flame.</source>
            <translation>La piel se pega al metal frío. Sin llama.</translation>
        </message>
        <message>
            <source>Wet air freezes inside and comes back as moisture in the vacuum test.</source>
            <translation>El aire húmedo se congela dentro y vuelve como humedad en la prueba de vacío.</translation>
        </message>
        <message>
            <source>The metal stays cold: dry ice or liquid close by, or skip this step and say why.</source>
            <translation>El metal sigue frío: hielo seco o líquido cerca, u omita este paso y diga por qué.</translation>
        </message>
        <message>
            <source>Break the joint</source>
            <translation>Abrir la junta</translation>
        </message>
        <message>
            <source>Stand beside the cover&apos;s axis. Slacken the far bolts first, crack the joint, wait, keep two bolts on until it is loose.</source>
            <translation>Póngase al lado del eje de la tapa. Afloje primero los tornillos lejanos, despegue la junta, espere, deje dos tornillos hasta que esté suelta.</translation>
        </message>
        <message>
            <source>Springs under covers: use the long jacking bolts.</source>
            <translation>Muelles bajo tapas: use los tornillos extractores largos.</translation>
        </message>
        <message>
            <source>A hiss: tighten again and go back to the low pressure hold.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Un silbido: apriete de nuevo y vuelva a la espera a baja presión.</translation>
        </message>
        <message>
            <source>Out of line with plug and cover. 0.5 bar g on a 78 mm cover is 240 N.</source>
            <translation>Fuera de la línea de tapón y tapa. 0,5 bar g en una tapa de 78 mm son 240 N.</translation>
        </message>
        <message>
            <source>Stored force of springs under covers.</source>
            <translation>Fuerza almacenada de muelles bajo tapas.</translation>
        </message>
        <message>
            <source>CO2 lies in the housing: no face in it. CO2 meter stays on.</source>
            <translation>Hay CO2 en la carcasa: no meta la cara. El medidor de CO2 sigue encendido.</translation>
        </message>
        <message>
            <source>Residual pressure, a spring, or snow behind the element.</source>
            <translation>Presión residual, un muelle o nieve detrás del elemento.</translation>
        </message>
        <message>
            <source>The supervisor has read the holds and agrees to the work (never one person alone)</source>
            <translation>El supervisor ha leído las esperas y aprueba el trabajo (nunca una persona sola)</translation>
        </message>
        <message>
            <source>Both bleeds are still open</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: bleed</translatorcomment>
            <translation>Ambas purgas siguen abiertas</translation>
        </message>
        <message>
            <source>The air is above 5000 ppm or nobody measured it: leave, ventilate.</source>
            <translation>El aire pasa de 5000 ppm o nadie lo midió: salga, ventile.</translation>
        </message>
        <message>
            <source>Do the work</source>
            <translation>Hacer el trabajo</translation>
        </message>
        <message>
            <source>Change element or core quickly; a drier core stays sealed until it is fitted. Catch the oil, cap openings.</source>
            <translation>Cambie rápido el elemento o núcleo; un núcleo secador sigue sellado hasta montarlo. Recoja el aceite, tape las aberturas.</translation>
        </message>
        <message>
            <source>Write down the parts and the time that the section was open.</source>
            <translation>Anote las piezas y el tiempo que el tramo estuvo abierto.</translation>
        </message>
        <message>
            <source>A nitrogen purge suffocates without warning, and so does CO2 lying in the housing.</source>
            <translation>Una purga con nitrógeno asfixia sin aviso, y también el CO2 en la carcasa.</translation>
        </message>
        <message>
            <source>Oil gives off CO2 on skin and eyes. Dry ice may sit behind the element.</source>
            <translation>El aceite suelta CO2 en piel y ojos. Puede haber hielo seco detrás del elemento.</translation>
        </message>
        <message>
            <source>More than 15 minutes open: moisture, and a long evacuation.</source>
            <translation>Más de 15 minutos abierto: humedad y un vacío largo.</translation>
        </message>
        <message>
            <source>Parts replaced, with number and batch</source>
            <translation>Piezas cambiadas, con número y lote</translation>
        </message>
        <message>
            <source>Minutes open to air</source>
            <translation>Minutos abierto al aire</translation>
        </message>
        <message>
            <source>Oil removed and added, kg</source>
            <translation>Aceite retirado y añadido, kg</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>New gasket, bolts crosswise to their torque, caps on.</source>
            <translation>Junta nueva, tornillos en cruz a su par, caperuzas puestas.</translation>
        </message>
        <message>
            <source>Springs under covers: draw down evenly with the jacking bolts.</source>
            <translation>Muelles bajo tapas: apriete por igual con los tornillos extractores.</translation>
        </message>
        <message>
            <source>An old or frozen gasket is the next leak.</source>
            <translation>Una junta vieja o congelada es la próxima fuga.</translation>
        </message>
        <message>
            <source>New gasket, torque crosswise</source>
            <translation>Junta nueva, par en cruz</translation>
        </message>
        <message>
            <source>Standing-pressure test</source>
            <translation>Prueba de presión en reposo</translation>
        </message>
        <message>
            <source>Dry nitrogen through a regulator with a relief valve, or CO2 vapour: 5 bar, then 25, 50, 75, 100 % of the test pressure, 5 minutes each.</source>
            <translation>Nitrógeno seco por un regulador con válvula de alivio, o vapor de CO2: 5 bar, luego 25, 50, 75, 100 % de la presión de prueba, 5 minutos cada uno.</translation>
        </message>
        <message>
            <source>Wait 15 to 30 minutes for the heat of compression, then record pressure and two clamps in the shade, 30 minutes at least.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Espere de 15 a 30 minutos por el calor de compresión, luego registre la presión y dos sondas de pinza a la sombra, al menos 30 minutos.</translation>
        </message>
        <message>
            <source>Compressed nitrogen stores energy: nobody beside the section while it is raised.</source>
            <translation>El nitrógeno comprimido almacena energía: nadie junto al tramo mientras sube.</translation>
        </message>
        <message>
            <source>Never oxygen or air on oil.</source>
            <translation>Nunca oxígeno ni aire sobre aceite.</translation>
        </message>
        <message>
            <source>Not above the rated pressure of the weakest part, and no steel below its minimum temperature under pressure.</source>
            <translation>No por encima de la presión admisible de la parte más débil, y ningún acero bajo su temperatura mínima con presión.</translation>
        </message>
        <message>
            <source>Nitrogen asphyxiation: ventilate where it is let out.</source>
            <translation>Asfixia por nitrógeno: ventile donde se suelta.</translation>
        </message>
        <message>
            <source>Sun on the pipe: 10 K is 2 bar at 52 bar g. Without a clamp reading the test says nothing.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: clamp</translatorcomment>
            <translation>Sol en el tubo: 10 K son 2 bar a 52 bar g. Sin lectura de una sonda de pinza la prueba no dice nada.</translation>
        </message>
        <message>
            <source>Nitrogen leaks past a valve into the live side.</source>
            <translation>El nitrógeno pasa por una válvula al lado vivo.</translation>
        </message>
        <message>
            <source>Test pressure and gas</source>
            <translation>Presión de prueba y gas</translation>
        </message>
        <message>
            <source>Not shown tight: find the leak, or hold longer with steadier temperature.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>No se mostró estanco: busque la fuga, o espere más con temperatura más estable.</translation>
        </message>
        <message>
            <source>Evacuate, then the vacuum-rise test</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: vacuum rise</translatorcomment>
            <translation>Hacer vacío y prueba de subida de vacío</translation>
        </message>
        <message>
            <source>Let the nitrogen out, evacuate from both ends to 500 micron (67 Pa, 0.67 mbar) or less at the far end.</source>
            <translation>Suelte el nitrógeno, haga vacío por ambos extremos hasta 500 micras (67 Pa, 0,67 mbar) o menos en el extremo lejano.</translation>
        </message>
        <message>
            <source>Shut the pump off and watch for 10 minutes: not above 1500 micron (200 Pa, 2 mbar).</source>
            <translation>Apague la bomba y vigile 10 minutos: no más de 1500 micras (200 Pa, 2 mbar).</translation>
        </message>
        <message>
            <source>Nitrogen asphyxiation where it is let out.</source>
            <translation>Asfixia por nitrógeno donde se suelta.</translation>
        </message>
        <message>
            <source>Open nothing to a section at vacuum: it draws air, or pump oil.</source>
            <translation>No abra nada hacia un tramo en vacío: aspira aire, o aceite de la bomba.</translation>
        </message>
        <message>
            <source>500 micron does not dry metal colder than about -24 degC: warm it first.</source>
            <translation>500 micras no secan metal más frío que unos -24 °C: caliéntelo antes.</translation>
        </message>
        <message>
            <source>A straight rise is a leak; a rise that levels at the water pressure of the coldest metal is moisture; a first rise that levels low and is smaller the second time is outgassing.</source>
            <translation>Una subida recta es una fuga; una que se nivela a la presión de agua del metal más frío es humedad; una primera subida que se nivela abajo y es menor la segunda vez es desgasificación.</translation>
        </message>
        <message>
            <source>A hot-wire gauge is made for air: it shows water vapour up to twice too high.</source>
            <translation>Un vacuómetro de hilo caliente está hecho para aire: muestra el vapor de agua hasta el doble.</translation>
        </message>
        <message>
            <source>Leak, moisture or outgassing: see what the curve says, then evacuate again.</source>
            <translation>Fuga, humedad o desgasificación: vea qué dice la curva y haga vacío otra vez.</translation>
        </message>
        <message>
            <source>Break the vacuum with vapour</source>
            <translation>Romper el vacío con vapor</translation>
        </message>
        <message>
            <source>CO2 VAPOUR into the section up to about 10 bar g, metal above its minimum temperature.</source>
            <translation>VAPOR de CO2 al tramo hasta unos 10 bar g, metal sobre su temperatura mínima.</translation>
        </message>
        <message>
            <source>No liquid before the pressure is well above the triple point.</source>
            <translation>Nada de líquido hasta que la presión esté muy por encima del punto triple.</translation>
        </message>
        <message>
            <source>Liquid into a vacuum is an instant snow plug and cold, brittle steel.</source>
            <translation>Líquido en un vacío es al instante un tapón de nieve y acero frío y frágil.</translation>
        </message>
        <message>
            <source>No repressurising of steel below its minimum temperature.</source>
            <translation>No vuelva a presurizar acero bajo su temperatura mínima.</translation>
        </message>
        <message>
            <source>A cylinder with a dip tube gives liquid: check which one it is.</source>
            <translation>Una botella con tubo sonda da líquido: compruebe cuál es.</translation>
        </message>
        <message>
            <source>The wrong cylinder, or the liquid valve first.</source>
            <translation>La botella equivocada, o la válvula de líquido primero.</translation>
        </message>
        <message>
            <source>Still too near the triple point for liquid: go on with vapour.</source>
            <translation>Aún demasiado cerca del punto triple para líquido: siga con vapor.</translation>
        </message>
        <message>
            <source>Metal below its minimum temperature, or not known: warm it, give its minimum.</source>
            <translation>Metal bajo su temperatura mínima, o desconocida: caliéntelo, indique su mínimo.</translation>
        </message>
        <message>
            <source>Leak check</source>
            <translation>Búsqueda de fugas</translation>
        </message>
        <message>
            <source>Bubbles or a CO2 leak detector on every joint, 10 minutes at 10 bar g, again at plant pressure.</source>
            <translation>Burbujas o un detector de fugas de CO2 en cada junta, 10 minutos a 10 bar g, otra vez a presión de planta.</translation>
        </message>
        <message>
            <source>Stay out of line with plugs and covers while the pressure goes up.</source>
            <translation>Fuera de la línea de tapones y tapas mientras sube la presión.</translation>
        </message>
        <message>
            <source>A new molecular-sieve core takes up CO2 and pulls the pressure down for minutes: not a leak.</source>
            <translation>Un núcleo nuevo de tamiz molecular absorbe CO2 y baja la presión durante minutos: no es una fuga.</translation>
        </message>
        <message>
            <source>Every opened joint checked, no leak found</source>
            <translation>Cada junta abierta revisada, sin fugas</translation>
        </message>
        <message>
            <source>Return to service</source>
            <translation>Devolver al servicio</translation>
        </message>
        <message>
            <source>Crack the vapour or outlet side first, let it equalise slowly, then liquid.</source>
            <translation>Entreabra primero el lado de vapor o salida, deje igualar despacio, luego el líquido.</translation>
        </message>
        <message>
            <source>Take off locks and tags in reverse order, reopen relief isolations, caps on.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Quite candados y etiquetas en orden inverso, reabra los aislamientos de alivio, caperuzas puestas.</translation>
        </message>
        <message>
            <source>Liquid into a warm section can raise the pressure above its rating.</source>
            <translation>Líquido en un tramo caliente puede subir la presión por encima de la admisible.</translation>
        </message>
        <message>
            <source>Liquid hammer: slowly.</source>
            <translation>Golpe de ariete: despacio.</translation>
        </message>
        <message>
            <source>A relief isolation stays shut, a lock is forgotten.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Un aislamiento de alivio queda cerrado, se olvida un candado.</translation>
        </message>
        <message>
            <source>All locks and tags taken off in reverse order</source>
            <translation>Todos los candados y etiquetas quitados en orden inverso</translation>
        </message>
        <message>
            <source>Relief isolations open</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: isolation</translatorcomment>
            <translation>Aislamientos de alivio abiertos</translation>
        </message>
        <message>
            <source>CO2 charged, kg, kind (new, reused, recycled) and source</source>
            <translation>CO2 cargado, kg, tipo (nuevo, reutilizado, reciclado) y origen</translation>
        </message>
        <message>
            <source>Record and sign</source>
            <translation>Registrar y firmar</translation>
        </message>
        <message>
            <source>Read the report, add what is missing, sign: the person who did it and the supervisor.</source>
            <translation>Lea el informe, añada lo que falte, firme: quien lo hizo y el supervisor.</translation>
        </message>
        <message>
            <source>Deviations told in the canteen instead of in the record.</source>
            <translation>Desviaciones contadas en la cantina en vez de en el registro.</translation>
        </message>
    </context>
    <context>
        <name>Text</name>
        <message>
            <source>margin: no reading yet</source>
            <translation>margen: aún sin lectura</translation>
        </message>
        <message>
            <source>gauge: no reading yet</source>
            <translation>manómetro: aún sin lectura</translation>
        </message>
        <message>
            <source>less than {least} ({percent} %)</source>
            <translation>menos de {least} ({percent} %)</translation>
        </message>
        <message>
            <source>at most {high} ({percent} %)</source>
            <translation>como máximo {high} ({percent} %)</translation>
        </message>
        <message>
            <source>less than {least} % of the volume</source>
            <translation>menos del {least} % del volumen</translation>
        </message>
        <message>
            <source>STALE</source>
            <translation>ANTIGUO</translation>
        </message>
        <message>
            <source>Keep the vent closed and read the mechanical gauge until readings arrive.</source>
            <translation>Mantenga el venteo cerrado y lea el manómetro mecánico hasta que lleguen lecturas.</translation>
        </message>
        <message>
            <source>No reading yet</source>
            <translation>Aún sin lectura</translation>
        </message>
        <message>
            <source>above the triple point</source>
            <translation>sobre el punto triple</translation>
        </message>
        <message>
            <source>Close the vent and read the mechanical gauge; if it rises, vent. Nothing shown before counts any more.</source>
            <translation>Cierre el venteo y lea el manómetro mecánico; si sube, ventee. Nada de lo mostrado antes vale ya.</translation>
        </message>
        <message>
            <source>No reading for {age} s.</source>
            <translation>Sin lectura desde hace {age} s.</translation>
        </message>
        <message>
            <source>Inside: unknown while there are no readings</source>
            <translation>Dentro: desconocido mientras no haya lecturas</translation>
        </message>
        <message>
            <source>AT the triple point</source>
            <translation>EN el punto triple</translation>
        </message>
        <message>
            <source>BELOW the triple point</source>
            <translation>BAJO el punto triple</translation>
        </message>
        <message>
            <source>gauge · {gap} above stop {stop}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>manómetro · {gap} sobre la parada {stop}</translation>
        </message>
        <message>
            <source>gauge · {gap} below stop {stop}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>manómetro · {gap} bajo la parada {stop}</translation>
        </message>
        <message>
            <source>stop pressure in {time}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>parada en {time}</translation>
        </message>
        <message>
            <source>line temperature not measured</source>
            <translation>temperatura no medida</translation>
        </message>
        <message>
            <source>line {temperature}</source>
            <translation>tubo {temperature}</translation>
        </message>
        <message>
            <source>vent valve: not known</source>
            <translation>venteo: no se sabe</translation>
        </message>
        <message>
            <source>vent valve: OPEN</source>
            <translation>venteo: ABIERTO</translation>
        </message>
        <message>
            <source>vent valve: CLOSED</source>
            <translation>venteo: CERRADO</translation>
        </message>
        <message>
            <source>vent OPEN, by the pressure</source>
            <translation>venteo ABIERTO, por la presión</translation>
        </message>
        <message>
            <source>vent CLOSED, by the pressure</source>
            <translation>venteo CERRADO, por la presión</translation>
        </message>
        <message>
            <source>vent valve: not recorded</source>
            <translation>venteo: no registrado</translation>
        </message>
        <message>
            <source>rate not known</source>
            <translation>ritmo desconocido</translation>
        </message>
        <message>
            <source>steady</source>
            <translation>estable</translation>
        </message>
        <message>
            <source>falling {rate}/min</source>
            <translation>baja {rate}/min</translation>
        </message>
        <message>
            <source>rising {rate}/min</source>
            <translation>sube {rate}/min</translation>
        </message>
        <message>
            <source>no reading yet</source>
            <translation>aún sin lectura</translation>
        </message>
        <message>
            <source>reading {age} min old</source>
            <translation>lectura de hace {age} min</translation>
        </message>
        <message>
            <source>reading {age} s old</source>
            <translation>lectura de hace {age} s</translation>
        </message>
        <message>
            <source>at least {least}, no upper bound</source>
            <translation>al menos {least}, sin cota superior</translation>
        </message>
        <message>
            <source>no upper bound</source>
            <translation>sin cota superior</translation>
        </message>
        <message>
            <source>share of the volume: no upper bound</source>
            <translation>parte del volumen: sin cota superior</translation>
        </message>
        <message>
            <source>Detection limit: not known yet</source>
            <translation>Límite de detección: aún no se sabe</translation>
        </message>
        <message>
            <source>Before the vent: {time}</source>
            <translation>Antes del venteo: {time}</translation>
        </message>
        <message>
            <source>{low} to {high} ({percent} %)</source>
            <translation>{low} a {high} ({percent} %)</translation>
        </message>
        <message>
            <source>{best} ({low} to {high}, {percent} %)</source>
            <translation>{best} ({low} a {high}, {percent} %)</translation>
        </message>
        <message>
            <source>{low} to {high} % of the volume</source>
            <translation>{low} a {high} % del volumen</translation>
        </message>
        <message>
            <source>Inside: no hold yet</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Dentro: aún sin espera</translation>
        </message>
        <message>
            <source>liquid, or leak-by</source>
            <translation>líquido o paso por válvula</translation>
        </message>
        <message>
            <source>Inside: {state}</source>
            <translation>Dentro: {state}</translation>
        </message>
        <message>
            <source>Liquid: {amount}</source>
            <translation>Líquido: {amount}</translation>
        </message>
        <message>
            <source>Dry ice: {amount}</source>
            <translation>Hielo seco: {amount}</translation>
        </message>
        <message>
            <source>This hold could see {least} or more</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Esta espera ve desde {least}</translation>
        </message>
        <message>
            <source>Hold {number}: {time}</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>Espera {number}: {time}</translation>
        </message>
        <message>
            <source>{time} left at least</source>
            <translation>al menos {time} más</translation>
        </message>
        <message>
            <source>Inside: hidden</source>
            <translation>Dentro: oculto</translation>
        </message>
    </context>
    <context>
        <name>Tour</name>
        <message>
            <source>The band on top says what to do now, and under it why.</source>
            <translation>La banda de arriba dice qué hacer ahora y, debajo, por qué.</translation>
        </message>
        <message>
            <source>First figure: how far above the triple point. Below it liquid turns to dry ice.</source>
            <translation>Primera cifra: cuánto sobre el punto triple. Por debajo el líquido se vuelve hielo seco.</translation>
        </message>
        <message>
            <source>Second figure: the gauge. Its caption: how far to the stop pressure.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: stop pressure</translatorcomment>
            <translation>Segunda cifra: el manómetro. Debajo: cuánto falta hasta la parada.</translation>
        </message>
        <message>
            <source>The trace: holds are shaded; N jumps to the next thing that happened.</source>
            <translatorcomment>term to be reviewed by a technician who speaks the language: hold</translatorcomment>
            <translation>La curva: las esperas van sombreadas; N salta al siguiente suceso.</translation>
        </message>
        <message>
            <source>The drawing: solid is surely liquid, hatched is possible, ? not known.</source>
            <translation>El dibujo: lleno es líquido seguro, rayado posible, ? no se sabe.</translation>
        </message>
        <message>
            <source>V turns the pictures, F1 explains the prompt, M has everything else.</source>
            <translation>V cambia las imágenes, F1 explica la indicación, M tiene lo demás.</translation>
        </message>
        <message>
            <source>If readings stop, the digits are struck through: close the vent.</source>
            <translation>Si faltan lecturas, las cifras se tachan: cierre el venteo.</translation>
        </message>
    </context>
    <context>
        <name>WrongFile</name>
        <message>
            <source>{name} can&apos;t be opened: {why}.</source>
            <translation>{name} no se puede abrir: {why}.</translation>
        </message>
        <message>
            <source>{name} is empty: there is nothing to show.</source>
            <translation>{name} está vacío: no hay nada que mostrar.</translation>
        </message>
        <message>
            <source>{name} is not a readings log: it holds no text. Choose a CSV file.</source>
            <translation>{name} no es un registro de lecturas: no contiene texto. Elija un archivo CSV.</translation>
        </message>
        <message>
            <source>{name}: {what}. The row above the readings must name each column with its unit, for instance {example}.</source>
            <translation>{name}: {what}. La fila sobre las lecturas debe nombrar cada columna con su unidad, por ejemplo {example}.</translation>
        </message>
        <message>
            <source>there is no such file</source>
            <translation>no existe ese archivo</translation>
        </message>
        <message>
            <source>no permission to read it</source>
            <translation>sin permiso para leerlo</translation>
        </message>
        <message>
            <source>it is a folder</source>
            <translation>es una carpeta</translation>
        </message>
        <message>
            <source>no column is known as the pressure</source>
            <translation>ninguna columna se reconoce como presión</translation>
        </message>
        <message>
            <source>no column is known as the time</source>
            <translation>ninguna columna se reconoce como tiempo</translation>
        </message>
    </context>
</TS>
