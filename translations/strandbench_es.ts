<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>Air</name>
    <message>
        <source>Styrene</source>
        <translation>Estireno</translation>
    </message>
    <message>
        <source>Acetone</source>
        <translation>Acetona</translation>
    </message>
    <message>
        <source>Wax remover, as naphtha</source>
        <translation>Desengrasante, como nafta</translation>
    </message>
    <message>
        <source>mean of 8 hours</source>
        <translation>media de 8 horas</translation>
    </message>
    <message>
        <source>mean of 15 minutes</source>
        <translation>media de 15 minutos</translation>
    </message>
    <message>
        <source>at any time</source>
        <translation>en todo momento</translation>
    </message>
    <message>
        <source>mean of 5 minutes</source>
        <translation>media de 5 minutos</translation>
    </message>
    <message>
        <source>danger to life at once</source>
        <translation>peligro inmediato para la vida</translation>
    </message>
    <message>
        <source>under %1 ppm</source>
        <extracomment>so much of a vapour in the air; %1 is a figure</extracomment>
        <translation>menos de %1 ppm</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>from so much to so much of a vapour in the air</extracomment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <extracomment>a published limit: its name, what it is a mean of, how much</extracomment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Reckoned %1: above it. Ventilate now.</source>
        <translation>Calculado %1: por encima. Ventilar ya.</translation>
    </message>
    <message>
        <source>Reckoned %1: may be above it. Ventilate now.</source>
        <translation>Calculado %1: quizá por encima. Ventilar ya.</translation>
    </message>
    <message>
        <source>Reckoned %1: up to %2 of it</source>
        <translation>Calculado %1: hasta %2 del límite</translation>
    </message>
    <message>
        <source>Spray can: it can be lit at any temperature.</source>
        <translation>Aerosol: puede inflamarse a cualquier temperatura.</translation>
    </message>
    <message>
        <source>Flash point below %1 by its class: take it that it can be lit now.</source>
        <translation>Punto de inflamación bajo %1 por su clase: contar con que ya puede inflamarse.</translation>
    </message>
    <message>
        <source>Flash point %1; air not read yet.</source>
        <translation>Punto de inflamación %1; aire sin medir aún.</translation>
    </message>
    <message>
        <source>Flash point %1; the air is %2 below it, a warm spot may not be.</source>
        <translation>Punto de inflamación %1; el aire está %2 por debajo, una zona caliente quizá no.</translation>
    </message>
    <message>
        <source>Flash point %1: it can be lit now.</source>
        <translation>Punto de inflamación %1: ya puede inflamarse.</translation>
    </message>
</context>
<context>
    <name>AirScreen</name>
    <message>
        <source>What about the air?</source>
        <translation>¿Qué hay del aire?</translation>
    </message>
    <message>
        <source>Dew</source>
        <translation>Rocío</translation>
    </message>
    <message>
        <source>how far the panel was above its dew point, day by day</source>
        <translation>cuánto estuvo el panel sobre su punto de rocío, día a día</translation>
    </message>
    <message>
        <source>Vapour</source>
        <translation>Vapor</translation>
    </message>
    <message>
        <source>styrene and solvents in the room, beside published limits</source>
        <translation>estireno y disolventes en el local, junto a límites publicados</translation>
    </message>
    <message>
        <source>Fire</source>
        <translation>Fuego</translation>
    </message>
    <message>
        <source>flash points, and what can light them</source>
        <translation>puntos de inflamación y focos de ignición</translation>
    </message>
</context>
<context>
    <name>AnswerBar</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Stop and ask</source>
        <translation>Parar y preguntar</translation>
    </message>
</context>
<context>
    <name>AnswersScreen</name>
    <message>
        <source>Which answer was wrong?</source>
        <translation>¿Qué respuesta estaba mal?</translation>
    </message>
    <message>
        <source>These were the answers</source>
        <translation>Estas fueron las respuestas</translation>
    </message>
    <message>
        <source>All right: go on</source>
        <translation>Todo bien: seguir</translation>
    </message>
    <message>
        <source>More answers</source>
        <translation>Más respuestas</translation>
    </message>
    <message>
        <source>Finishing filler is on: the answers stand.</source>
        <translation>Ya hay masilla de acabado: valen las respuestas.</translation>
    </message>
    <message>
        <source>If one was wrong, stop and ask.</source>
        <translation>Si una estaba mal, parar y preguntar.</translation>
    </message>
</context>
<context>
    <name>AskScreen</name>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Change an answer</source>
        <translation>Cambiar respuesta</translation>
    </message>
    <message>
        <source>The mix on this panel goes on curing and its clock runs on.</source>
        <translation>La mezcla de este panel sigue curando y su reloj corre.</translation>
    </message>
    <message>
        <source>Nothing is lost: parked, it waits on the rail at this very step.</source>
        <translation>No se pierde nada: apartado, espera en la fila en este mismo paso.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Stop here and ask</source>
        <translation>Parar aquí y preguntar</translation>
    </message>
    <message>
        <source>Ask the supervisor before you go on.</source>
        <translation>Preguntar al supervisor antes de seguir.</translation>
    </message>
    <message>
        <source>The safety data sheet and the maker’s repair manual come first.</source>
        <translation>Primero, ficha de seguridad y manual de reparación del fabricante.</translation>
    </message>
    <message>
        <source>Answered: go on</source>
        <translation>Respondido: seguir</translation>
    </message>
    <message>
        <source>Park it</source>
        <translation>Apartar</translation>
    </message>
    <message>
        <source>Why is it parked?</source>
        <translation>¿Por qué se aparta?</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Park it: where, or with whom?</source>
        <translation>Apartar: ¿dónde o con quién?</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Apartado</translation>
    </message>
    <message>
        <source>Parked: %1</source>
        <translation>Apartado: %1</translation>
    </message>
    <message>
        <source>It was parked to ask.</source>
        <translation>Se apartó para preguntar.</translation>
    </message>
    <message>
        <source>Go on only when the answer is there.</source>
        <translation>Seguir solo cuando haya respuesta.</translation>
    </message>
    <message>
        <source>Taken up again, it goes on at the very step where it was.</source>
        <translation>Al retomarlo sigue en el mismo paso donde estaba.</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Retomarlo</translation>
    </message>
    <message>
        <source>When what was wrong has been put right, assess it again from the first question.</source>
        <translation>Cuando se corrija lo que estaba mal, evaluar de nuevo desde la primera pregunta.</translation>
    </message>
    <message>
        <source>Leave it parked</source>
        <translation>Dejar apartado</translation>
    </message>
    <message>
        <source>Assess again</source>
        <translation>Evaluar de nuevo</translation>
    </message>
</context>
<context>
    <name>AssessScreen</name>
    <message>
        <source>Keep this answer</source>
        <translation>Conservar respuesta</translation>
    </message>
    <message>
        <source>Show me how to tell</source>
        <translation>Mostrar cómo saberlo</translation>
    </message>
    <message>
        <source>More answers</source>
        <translation>Más respuestas</translation>
    </message>
    <message>
        <source>Back to the question</source>
        <translation>Volver a la pregunta</translation>
    </message>
    <message>
        <source>What did you go by?</source>
        <translation>¿Cómo se reconoció?</translation>
    </message>
</context>
<context>
    <name>Assumptions</name>
    <message>
        <source>Kneading, until spreading begins</source>
        <translation>Amasar, hasta empezar a extender</translation>
    </message>
    <message>
        <source>Spreading rate</source>
        <translation>Ritmo al extender</translation>
    </message>
    <message>
        <source>Clear the edges from, share of gel time</source>
        <translation>Bordes desde, parte del tiempo de gel</translation>
    </message>
    <message>
        <source>Laying puddle and bead</source>
        <translation>Poner torta y cordón</translation>
    </message>
    <message>
        <source>Sanding one lift</source>
        <translation>Lijar una capa</translation>
    </message>
    <message>
        <source>Turning the panel</source>
        <translation>Voltear el panel</translation>
    </message>
    <message>
        <source>Cure before primer, at 20 °C</source>
        <translation>Curar antes de imprimar, a 20 °C</translation>
    </message>
    <message>
        <source>Filler at the start, warmer than air by</source>
        <translation>Masilla al inicio, sobre el aire en</translation>
    </message>
    <message>
        <source>Mixing board, side</source>
        <translation>Tabla, lado</translation>
    </message>
    <message>
        <source>Mixing board, thickness</source>
        <translation>Tabla, espesor</translation>
    </message>
    <message>
        <source>Mixing board, density</source>
        <translation>Tabla, densidad</translation>
    </message>
    <message>
        <source>Mixing board, specific heat</source>
        <translation>Tabla, calor específico</translation>
    </message>
    <message>
        <source>Mixing board, conductivity</source>
        <translation>Tabla, conductividad</translation>
    </message>
    <message>
        <source>Left on the board, share</source>
        <translation>Queda en la tabla, parte</translation>
    </message>
    <message>
        <source>Left on the board, each batch</source>
        <translation>Queda en la tabla, por mezcla</translation>
    </message>
    <message>
        <source>Bridged first, share of a hole’s height</source>
        <translation>Puente previo, parte del alto del agujero</translation>
    </message>
    <message>
        <source>Built proud of the surface</source>
        <translation>Exceso sobre la superficie</translation>
    </message>
    <message>
        <source>Fibre filler left low</source>
        <translation>Masilla de fibra más baja</translation>
    </message>
    <message>
        <source>Skim beyond the opening</source>
        <translation>Capa fina fuera de la abertura</translation>
    </message>
    <message>
        <source>Backing laps by</source>
        <translation>Solape del respaldo</translation>
    </message>
    <message>
        <source>Backing, thickness</source>
        <translation>Respaldo, espesor</translation>
    </message>
    <message>
        <source>Panel below the cavity counts from</source>
        <translation>Panel bajo el hueco cuenta desde</translation>
    </message>
    <message>
        <source>Hole filled without backing, up to</source>
        <translation>Agujero sin respaldo, hasta</translation>
    </message>
    <message>
        <source>The same without reach from behind</source>
        <translation>Lo mismo sin acceso por detrás</translation>
    </message>
    <message>
        <source>Greatest hole filled</source>
        <translation>Mayor agujero a masillar</translation>
    </message>
    <message>
        <source>Greatest hole for dense short strand</source>
        <translation>Mayor agujero, fibra corta densa</translation>
    </message>
    <message>
        <source>Deepest dent filled in metal</source>
        <translation>Abolladura más honda en metal</translation>
    </message>
    <message>
        <source>Dent to aim at in metal</source>
        <translation>Abolladura objetivo en metal</translation>
    </message>
    <message>
        <source>Panel, coldest</source>
        <translation>Panel, mínimo</translation>
    </message>
    <message>
        <source>Panel, caution below</source>
        <translation>Panel, precaución bajo</translation>
    </message>
    <message>
        <source>Panel, hottest</source>
        <translation>Panel, máximo</translation>
    </message>
    <message>
        <source>Air, coldest</source>
        <translation>Aire, mínimo</translation>
    </message>
    <message>
        <source>Air, hottest</source>
        <translation>Aire, máximo</translation>
    </message>
    <message>
        <source>Panel above dew point by</source>
        <translation>Panel sobre el rocío en</translation>
    </message>
    <message>
        <source>Peak on laminate and SMC</source>
        <translation>Máximo en laminado y SMC</translation>
    </message>
    <message>
        <source>Peak on a bond seam</source>
        <translation>Máximo en junta pegada</translation>
    </message>
    <message>
        <source>Heat to the air in front</source>
        <translation>Calor al aire, delante</translation>
    </message>
    <message>
        <source>Heat to the air behind</source>
        <translation>Calor al aire, detrás</translation>
    </message>
    <message>
        <source>Laminate and SMC, density</source>
        <translation>Laminado y SMC, densidad</translation>
    </message>
    <message>
        <source>Laminate and SMC, specific heat</source>
        <translation>Laminado y SMC, calor específico</translation>
    </message>
    <message>
        <source>Laminate and SMC, conductivity</source>
        <translation>Laminado y SMC, conductividad</translation>
    </message>
    <message>
        <source>Steel, density</source>
        <translation>Acero, densidad</translation>
    </message>
    <message>
        <source>Steel, specific heat</source>
        <translation>Acero, calor específico</translation>
    </message>
    <message>
        <source>Steel, conductivity</source>
        <translation>Acero, conductividad</translation>
    </message>
    <message>
        <source>Aluminium, density</source>
        <translation>Aluminio, densidad</translation>
    </message>
    <message>
        <source>Aluminium, specific heat</source>
        <translation>Aluminio, calor específico</translation>
    </message>
    <message>
        <source>Aluminium, conductivity</source>
        <translation>Aluminio, conductividad</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a range: &quot;10 to 180 s&quot;</extracomment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Air of the room</source>
        <translation>Aire del local</translation>
    </message>
    <message>
        <source>Air of the room, changes an hour</source>
        <translation>Aire del local, renovaciones por hora</translation>
    </message>
    <message>
        <source>Solvent, each wiping down</source>
        <translation>Disolvente, cada limpieza</translation>
    </message>
    <message>
        <source>Solvent, gone after</source>
        <translation>Disolvente, se va en</translation>
    </message>
</context>
<context>
    <name>BeadScreen</name>
    <message>
        <source>Key in the hardener weighed</source>
        <translation>Teclear el endurecedor pesado</translation>
    </message>
    <message>
        <source>Key in the length of the bead laid</source>
        <translation>Teclear el largo del cordón puesto</translation>
    </message>
    <message>
        <source>Hardener %1 of filler.</source>
        <translation>Endurecedor: %1 de la masilla.</translation>
    </message>
    <message>
        <source>Within the sheet’s %1 to %2.</source>
        <translation>Dentro de la ficha: %1 a %2.</translation>
    </message>
    <message>
        <source>Little: it cures slowly and may stay soft at the edges.</source>
        <translation>Poco: cura despacio y puede quedar blando en los bordes.</translation>
    </message>
    <message>
        <source>Much: it gels early, and may bleed and pinhole.</source>
        <translation>Mucho: gelifica pronto, puede sangrar y dejar poros.</translation>
    </message>
    <message>
        <source>Outside %1 to %2: do not use this mix. Spread it thin to cure, mix anew.</source>
        <translation>Fuera de %1 a %2: no usar esta mezcla. Extenderla fina para que cure y mezclar otra.</translation>
    </message>
    <message>
        <source>How much hardener was weighed?</source>
        <translation>¿Cuánto endurecedor se pesó?</translation>
    </message>
    <message>
        <source>How long is the bead laid?</source>
        <translation>¿Qué largo tiene el cordón puesto?</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Con endurecedor: iniciar</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>pesado</translation>
    </message>
    <message>
        <source>laid</source>
        <translation>puesto</translation>
    </message>
</context>
<context>
    <name>BeadTrial</name>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Key in the length of the bead</source>
        <translation>Teclear el largo del cordón</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>Key in the mass of the bead</source>
        <translation>Teclear la masa del cordón</translation>
    </message>
    <message>
        <source>Lay it on card or foil, straight and at the usual push. Tare, then weigh.</source>
        <translation>Ponerlo en cartón o lámina, recto y con la presión de siempre. Tarar y pesar.</translation>
    </message>
    <message>
        <source>%1 cannot be: look at length and mass again.</source>
        <translation>%1 no puede ser: revisar largo y masa.</translation>
    </message>
    <message>
        <source>This bead: %1</source>
        <translation>Este cordón: %1</translation>
    </message>
    <message>
        <source>Hardener %1</source>
        <translation>Endurecedor %1</translation>
    </message>
    <message>
        <source>bead %1</source>
        <translation>cordón %1</translation>
    </message>
    <message>
        <source>Lay a straight bead, measure and weigh it</source>
        <translation>Poner un cordón recto, medirlo y pesarlo</translation>
    </message>
    <message>
        <source>Take this bead</source>
        <translation>Tomar este cordón</translation>
    </message>
    <message>
        <source>Bead by the calibration of %1: %2</source>
        <extracomment>%1 is a day, %2 a mass per length</extracomment>
        <translation>Cordón por la calibración del %1: %2</translation>
    </message>
    <message>
        <source>Bead by the sheet, not calibrated for this lot: %1</source>
        <translation>Cordón por la ficha, sin calibrar para este lote: %1</translation>
    </message>
    <message>
        <source>Bead by the sheet: %1</source>
        <translation>Cordón por la ficha: %1</translation>
    </message>
</context>
<context>
    <name>CalibrateScreen</name>
    <message>
        <source>Outline of a card, 85.6 by 54 mm</source>
        <translation>Contorno de tarjeta, 85,6 por 54 mm</translation>
    </message>
    <message>
        <source>Bank, identity or driving card: all have this width</source>
        <translation>Tarjeta bancaria, de identidad o de conducir: todas miden este ancho</translation>
    </message>
    <message>
        <source>Make the outline as wide as a card</source>
        <translation>Ajustar el contorno al ancho de la tarjeta</translation>
    </message>
    <message>
        <source>The card covers it</source>
        <translation>La tarjeta lo cubre</translation>
    </message>
    <message>
        <source>wider</source>
        <translation>más ancho</translation>
    </message>
    <message>
        <source>narrower</source>
        <translation>menos ancho</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Safety data sheets first.</source>
        <translation>Primero, fichas de seguridad.</translation>
    </message>
    <message>
        <source>Old paint dust.</source>
        <translation>Polvo de pintura vieja.</translation>
    </message>
    <message>
        <source>Keep metal dusts apart.</source>
        <translation>Separar polvos de metal.</translation>
    </message>
    <message>
        <source>Solvent burns.</source>
        <translation>El disolvente arde.</translation>
    </message>
    <message>
        <source>Rags into the lidded metal can.</source>
        <translation>Trapos al bidón metálico con tapa.</translation>
    </message>
    <message>
        <source>Acetone goes through thin gloves.</source>
        <translation>La acetona atraviesa guantes finos.</translation>
    </message>
    <message>
        <source>No lamp, no grinder, no spark.</source>
        <translation>Ni lámpara, ni amoladora, ni chispa.</translation>
    </message>
    <message>
        <source>Rotating tool.</source>
        <translation>Herramienta rotativa.</translation>
    </message>
    <message>
        <source>Goggles, dust mask.</source>
        <translation>Gafas, mascarilla antipolvo.</translation>
    </message>
    <message>
        <source>Extraction on, dust mask.</source>
        <translation>Aspiración y mascarilla antipolvo.</translation>
    </message>
    <message>
        <source>Hot metal.</source>
        <translation>Metal caliente.</translation>
    </message>
    <message>
        <source>No heat on wet solvent.</source>
        <translation>Sin calor con disolvente fresco.</translation>
    </message>
    <message>
        <source>Lay-up resin: its own catalyst.</source>
        <translation>Resina de laminar: su catalizador propio.</translation>
    </message>
    <message>
        <source>Styrene vapour.</source>
        <translation>Vapor de estireno.</translation>
    </message>
    <message>
        <source>Never at skin.</source>
        <translation>Nunca hacia la piel.</translation>
    </message>
    <message>
        <source>Lamp before filling only.</source>
        <translation>Lámpara solo antes de masillar.</translation>
    </message>
    <message>
        <source>Fill within the hour.</source>
        <translation>Masillar antes de una hora.</translation>
    </message>
    <message>
        <source>Nothing goes back into the tub.</source>
        <translation>Nada vuelve al bote.</translation>
    </message>
    <message>
        <source>What is left over gets hot.</source>
        <translation>Lo que sobra se calienta.</translation>
    </message>
    <message>
        <source>The vehicle maker’s repair manual and local codes come before this program.</source>
        <translation>Antes que este programa: manual de reparación del fabricante y normas locales.</translation>
    </message>
    <message>
        <source>It may hold lead or chromate: test it, and extraction on before sanding.</source>
        <translation>Puede tener plomo o cromato: analizar, y aspiración antes de lijar.</translation>
    </message>
    <message>
        <source>Aluminium and steel dust together can burn fiercely: own extractors.</source>
        <translation>Aluminio y acero en polvo, juntos, pueden arder con violencia: aspiradores propios.</translation>
    </message>
    <message>
        <source>Fresh air; no flame, no hot lamp, no grinding near it.</source>
        <translation>Aire fresco; cerca, ni llama, ni lámpara caliente, ni amolado.</translation>
    </message>
    <message>
        <source>Solvent rags can catch fire; never into the bin.</source>
        <translation>Los trapos con disolvente pueden arder; nunca a la basura.</translation>
    </message>
    <message>
        <source>Within minutes through thin nitrile: change them at once when wet.</source>
        <translation>En minutos atraviesa el nitrilo fino: cambiarlos enseguida si se mojan.</translation>
    </message>
    <message>
        <source>Wait until the vapour is gone, in the hollows too.</source>
        <translation>Esperar a que no quede vapor, tampoco en los huecos.</translation>
    </message>
    <message>
        <source>Goggles, no loose sleeves; let it stop before you put it down.</source>
        <translation>Gafas, sin mangas sueltas; dejar que pare antes de soltarla.</translation>
    </message>
    <message>
        <source>Glass dust: extraction on first, sleeves closed.</source>
        <translation>Polvo de vidrio: primero aspiración, mangas cerradas.</translation>
    </message>
    <message>
        <source>Before the first stroke, not after.</source>
        <translation>Antes de la primera pasada, no después.</translation>
    </message>
    <message>
        <source>Sparks fly: nothing that burns within reach, behind the panel too.</source>
        <translation>Saltan chispas: nada que arda cerca, tampoco detrás del panel.</translation>
    </message>
    <message>
        <source>A lamp only after the solvent has flashed off.</source>
        <translation>Lámpara solo cuando el disolvente se haya evaporado.</translation>
    </message>
    <message>
        <source>Never cream hardener in it; never peroxide onto an accelerator.</source>
        <translation>Nunca echarle endurecedor en crema; nunca peróxido sobre un acelerante.</translation>
    </message>
    <message>
        <source>It burns, and harms hearing and the unborn child: extraction, and the mask its sheet names.</source>
        <translation>Arde y daña el oído y al feto: extracción, y la mascarilla que indique su ficha.</translation>
    </message>
    <message>
        <source>Goggles and ear protection; guard others from chips.</source>
        <translation>Gafas y protección auditiva; proteger a otros de partículas.</translation>
    </message>
    <message>
        <source>A lamp warms the panel before filling, never wet filler.</source>
        <translation>La lámpara calienta el panel antes de masillar, nunca masilla fresca.</translation>
    </message>
    <message>
        <source>Bare metal rusts or tarnishes: after an hour, abrade again.</source>
        <translation>El metal desnudo se oxida o empaña: tras una hora, lijar de nuevo.</translation>
    </message>
    <message>
        <source>It burns the eye and makes skin allergic; its safety data sheet says more.</source>
        <translation>Quema el ojo y da alergia en la piel; más en su ficha de seguridad.</translation>
    </message>
    <message>
        <source>A trace of hardener sets the whole tub; close both.</source>
        <translation>Una traza de endurecedor cuaja todo el bote; cerrar ambos.</translation>
    </message>
    <message>
        <source>Spread it thin on metal or put it under water, never into the bin.</source>
        <translation>Extenderlo fino sobre metal o meterlo en agua; nunca a la basura.</translation>
    </message>
    <message>
        <source>Peroxide: goggles, gloves.</source>
        <translation>Peróxido: gafas cerradas, guantes.</translation>
    </message>
    <message>
        <source>In the eye: rinse, doctor.</source>
        <translation>En el ojo: enjuagar, médico.</translation>
    </message>
    <message>
        <source>At once and long, lids held open; its data sheet goes along.</source>
        <translation>Enseguida y largo, párpados abiertos; llevar su ficha.</translation>
    </message>
</context>
<context>
    <name>Consequences</name>
    <message>
        <source>It would be filled where it must stop: %1.</source>
        <translation>Se masillaría donde hay que parar: %1.</translation>
    </message>
    <message>
        <source>It would stop for nothing: %1.</source>
        <translation>Se pararía sin motivo: %1.</translation>
    </message>
    <message>
        <source>It would be put right for the wrong reason: %1, not: %2.</source>
        <translation>Se corregiría por la razón equivocada: %1, no: %2.</translation>
    </message>
    <message>
        <source>Another filler would go in: %1, not %2.</source>
        <translation>Iría otra masilla: %1, no %2.</translation>
    </message>
    <message>
        <source>%1 would be mixed, not %2.</source>
        <translation>Se mezclarían %1, no %2.</translation>
    </message>
    <message>
        <source>%1 of crack would stay, undrilled, and run on.</source>
        <translation>Quedarían %1 de grieta sin taladrar, y seguiría.</translation>
    </message>
    <message>
        <source>The plan would be the same; the record would be wrong.</source>
        <translation>El plan sería igual; el registro, erróneo.</translation>
    </message>
    <message>
        <source>It would lack: %1.</source>
        <translation>Faltaría: %1.</translation>
    </message>
    <message>
        <source>Work for nothing: %1.</source>
        <translation>Trabajo inútil: %1.</translation>
    </message>
    <message>
        <source>It spoils the bond or the panel: %1.</source>
        <translation>Estropea el agarre o el panel: %1.</translation>
    </message>
    <message>
        <source>%1: that comes before: %2.</source>
        <translation>%1: eso va antes de: %2.</translation>
    </message>
    <message>
        <source>The panel is only %1 above dew point, not %2: unseen dew, and no adhesion.</source>
        <translation>El panel está solo %1 sobre el rocío, no %2: rocío que no se ve, y sin adherencia.</translation>
    </message>
    <message>
        <source>Filler would hide it: %1.</source>
        <translation>La masilla lo taparía: %1.</translation>
    </message>
    <message>
        <source>A panel that could be filled would wait.</source>
        <translation>Esperaría un panel que se puede masillar.</translation>
    </message>
    <message>
        <source>It would still stand in the way: %1.</source>
        <translation>Seguiría estorbando: %1.</translation>
    </message>
    <message>
        <source>That does not put it right: %1.</source>
        <translation>Eso no lo corrige: %1.</translation>
    </message>
    <message>
        <source>%1 does not belong here: %2.</source>
        <translation>%1 no va aquí: %2.</translation>
    </message>
    <message>
        <source>%1 in one go reaches %2, above %3: it shrinks as it cools, and maps through.</source>
        <translation>%1 de una vez llega a %2, más de %3: merma al enfriar y se marca.</translation>
    </message>
    <message>
        <source>%1 in one go; its sheet ends at %2: it shrinks and maps.</source>
        <translation>%1 de una vez; su ficha acaba en %2: merma y se marca.</translation>
    </message>
    <message>
        <source>Nothing was laid: the damage is as it was.</source>
        <translation>No se puso nada: el daño sigue igual.</translation>
    </message>
    <message>
        <source>The face stays %1 too low.</source>
        <translation>La cara queda %1 demasiado baja.</translation>
    </message>
    <message>
        <source>The face stands %1 too high, all of it to sand off.</source>
        <translation>La cara queda %1 demasiado alta; todo eso se lija.</translation>
    </message>
    <message>
        <source>%1 are missing: the next batch meets a cold joint.</source>
        <translation>Faltan %1: con la próxima mezcla queda junta fría.</translation>
    </message>
    <message>
        <source>%1 are left over, and wasted.</source>
        <translation>Sobran %1, y se pierden.</translation>
    </message>
    <message>
        <source>The board gels after %1: %2 are wasted on it.</source>
        <translation>En la tabla gelifica tras %1: se pierden %2.</translation>
    </message>
    <message>
        <source>It sands after %1, not after %2.</source>
        <translation>Se lija tras %1, no tras %2.</translation>
    </message>
    <message>
        <source>It gels after %1, not after %2.</source>
        <translation>Gelifica tras %1, no tras %2.</translation>
    </message>
    <message>
        <source>With %1 hardener it never cures hard enough to sand.</source>
        <translation>Con %1 de endurecedor nunca cura lo bastante para lijar.</translation>
    </message>
    <message>
        <source>%1 hardener: no sheet and no model goes there.</source>
        <translation>%1 de endurecedor: ni ficha ni modelo llegan ahí.</translation>
    </message>
    <message>
        <source>The edges gel at %1: the repair grows, and must be ground back.</source>
        <translation>Los bordes gelifican a los %1: la reparación crece y hay que rebajarla.</translation>
    </message>
    <message>
        <source>Before %1 it still flows: the edges smear again.</source>
        <translation>Antes de %1 aún fluye: los bordes se ensucian otra vez.</translation>
    </message>
    <message>
        <source>Only %1 cured at the face, not %2: it drags and clogs until %3.</source>
        <translation>Solo %1 curado en superficie, no %2: tira y empasta la lija hasta %3.</translation>
    </message>
    <message>
        <source>After %1 it is hard as stone: the paper hardly bites.</source>
        <translation>Tras %1 está duro como piedra: la lija apenas muerde.</translation>
    </message>
    <message>
        <source>It was not sanded: nothing holds on it.</source>
        <translation>No se lijó: nada agarra encima.</translation>
    </message>
    <message>
        <source>The other face stays open: water gets in, and it breaks out.</source>
        <translation>La otra cara queda abierta: entra agua, y salta.</translation>
    </message>
    <message>
        <source>There is nothing to fill on the other face.</source>
        <translation>No hay nada que masillar en la otra cara.</translation>
    </message>
    <message>
        <source>A coat of %1 sinks and pinholes; at most %2.</source>
        <translation>Una mano de %1 se hunde y da poros; máximo %2.</translation>
    </message>
    <message>
        <source>%1 of finishing filler in all; it cracks beyond %2.</source>
        <translation>%1 de masilla de acabado en total; más de %2 se agrieta.</translation>
    </message>
    <message>
        <source>It stays %1 below the contour.</source>
        <translation>Queda %1 bajo el contorno.</translation>
    </message>
    <message>
        <source>It was not finished: strands show through primer.</source>
        <translation>Sin acabado: las fibras se ven bajo la imprimación.</translation>
    </message>
    <message>
        <source>It goes to paint unseen: %1.</source>
        <translation>Va a pintura sin revisar: %1.</translation>
    </message>
    <message>
        <source>Primed %1 too soon: what cures below shrinks, and maps.</source>
        <translation>Imprimado %1 antes de tiempo: lo que cura debajo merma y se marca.</translation>
    </message>
    <message>
        <source>By its product sheet: below %2 the film stays soft.</source>
        <extracomment>%1 is the share of hardener mixed, %2 the least</extracomment>
        <translation>Según su ficha: bajo %2 la película queda blanda.</translation>
    </message>
    <message>
        <source>By its product sheet: above %2 it bleeds and pinholes.</source>
        <extracomment>%1 is the share of hardener mixed, %2 the most</extracomment>
        <translation>Según su ficha: sobre %2 sangra y da poros.</translation>
    </message>
    <message>
        <source>It is damp: the filler does not hold on water.</source>
        <translation>Está húmedo: la masilla no agarra sobre agua.</translation>
    </message>
    <message>
        <source>At %1 the panel is colder than %2: it does not hold, nor cure through.</source>
        <extracomment>%1 is the panel&apos;s temperature, %2 the least</extracomment>
        <translation>A %1 el panel está más frío que %2: no agarra ni cura del todo.</translation>
    </message>
</context>
<context>
    <name>Deviations</name>
    <message>
        <source>panel %1 above dew point; at least %2</source>
        <translation>panel %1 sobre el rocío; mínimo %2</translation>
    </message>
    <message>
        <source>panel at %1; at least %2</source>
        <translation>panel a %1; mínimo %2</translation>
    </message>
    <message>
        <source>panel at %1; at most %2</source>
        <translation>panel a %1; máximo %2</translation>
    </message>
    <message>
        <source>air at %1; at least %2</source>
        <translation>aire a %1; mínimo %2</translation>
    </message>
    <message>
        <source>air at %1; at most %2</source>
        <translation>aire a %1; máximo %2</translation>
    </message>
    <message>
        <source>no reading before the hardener went in</source>
        <translation>sin lectura antes del endurecedor</translation>
    </message>
    <message>
        <source>last reading %1 old; at most %2</source>
        <translation>última lectura hace %1; máximo %2</translation>
    </message>
    <message>
        <source>bare metal filled after %1; at most %2</source>
        <translation>metal desnudo masillado tras %1; máximo %2</translation>
    </message>
    <message>
        <source>sands after %1; predicted %2</source>
        <translation>se lija tras %1; previsto %2</translation>
    </message>
    <message>
        <source>edges clear after %1; gel predicted at %2</source>
        <translation>bordes limpios tras %1; gel previsto tras %2</translation>
    </message>
    <message>
        <source>edges clear after %1; gel seen at %2</source>
        <translation>bordes limpios tras %1; gel visto tras %2</translation>
    </message>
    <message>
        <source>hardener %1; at least %2</source>
        <translation>endurecedor %1; mínimo %2</translation>
    </message>
    <message>
        <source>hardener %1; at most %2</source>
        <translation>endurecedor %1; máximo %2</translation>
    </message>
    <message>
        <source>lot of the filler not told</source>
        <translation>lote de la masilla sin indicar</translation>
    </message>
    <message>
        <source>lot of the hardener not told</source>
        <translation>lote del endurecedor sin indicar</translation>
    </message>
    <message>
        <source>mixed by a demo sheet: %1</source>
        <extracomment>%1 is the sheet&apos;s id</extracomment>
        <translation>mezclado con ficha de muestra: %1</translation>
    </message>
    <message>
        <source>changed after the plan: %1</source>
        <extracomment>%1 is a question: &quot;dry or damp&quot;</extracomment>
        <translation>cambiado tras el plan: %1</translation>
    </message>
    <message>
        <source>planned again: plan %1</source>
        <extracomment>%1 is the number of the plan</extracomment>
        <translation>planificado de nuevo: plan %1</translation>
    </message>
    <message>
        <source>parked: %1</source>
        <extracomment>%1 is where: &quot;to the supervisor&quot;</extracomment>
        <translation>apartado: %1</translation>
    </message>
    <message>
        <source>no photo: %1</source>
        <extracomment>%1 is a moment: &quot;as found&quot;</extracomment>
        <translation>sin foto: %1</translation>
    </message>
    <message>
        <source>acts without a name: %1</source>
        <translation>acciones sin nombre: %1</translation>
    </message>
    <message>
        <source>bench started again while a mix ran; %1 between two acts</source>
        <translation>el puesto se reinició con una mezcla en curso; %1 entre dos acciones</translation>
    </message>
    <message>
        <source>clock set forward by %1 while a mix ran</source>
        <translation>reloj adelantado %1 con una mezcla en curso</translation>
    </message>
    <message>
        <source>clock set back by %1 while a mix ran</source>
        <translation>reloj atrasado %1 con una mezcla en curso</translation>
    </message>
    <message>
        <source>no deviations</source>
        <translation>sin desviaciones</translation>
    </message>
    <message numerus="yes">
        <source>%n deviation(s)</source>
        <translation>
            <numerusform>%n desviación</numerusform>
            <numerusform>%n desviaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>overridden: %1. Reason: %2</source>
        <extracomment>%1 is a stop, %2 a reason: &quot;Damp&quot;, &quot;Proved by another test&quot;</extracomment>
        <translation>anulado: %1. Motivo: %2</translation>
    </message>
    <message>
        <source>laid %1 thick by its mass; at most %2 in one go</source>
        <translation>puesta con %1 de espesor según su masa; como mucho %2 de una vez</translation>
    </message>
    <message>
        <source>steps told as done almost at once: %1, in %2; planned %3</source>
        <extracomment>%1 is a number of steps, %2 and %3 are times</extracomment>
        <translation>pasos dados por hechos casi a la vez: %1, en %2; previsto %3</translation>
    </message>
    <message>
        <source>wait cut short, %1: %2; it needs %3</source>
        <extracomment>%1 is a step</extracomment>
        <translation>espera acortada, %1: %2; necesita %3</translation>
    </message>
</context>
<context>
    <name>Events</name>
    <message>
        <source>air %1, panel %2, humidity %3</source>
        <translation>aire %1, panel %2, humedad %3</translation>
    </message>
    <message>
        <source>%1 deep</source>
        <translation>%1 de hondo</translation>
    </message>
    <message>
        <source>panel %1</source>
        <translation>panel %1</translation>
    </message>
    <message>
        <source>bevel %1 : 1</source>
        <translation>bisel %1 : 1</translation>
    </message>
    <message>
        <source>Taken in: %1, %2</source>
        <translation>Recibido: %1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Changed. %1</source>
        <extracomment>%1 is an answer: &quot;Dry or damp: damp&quot;</extracomment>
        <translation>Cambiado. %1</translation>
    </message>
    <message>
        <source>Planned again: %1, %2, %3</source>
        <translation>Planificado de nuevo: %1, %2, %3</translation>
    </message>
    <message>
        <source>Plan accepted: %1, %2, %3</source>
        <translation>Plan aceptado: %1, %2, %3</translation>
    </message>
    <message>
        <source>Read: %1; panel %2 above dew point</source>
        <translation>Medido: %1; panel %2 sobre el rocío</translation>
    </message>
    <message>
        <source>%1: hardener in, %2 + %3</source>
        <translation>%1: con endurecedor, %2 + %3</translation>
    </message>
    <message>
        <source>%1: edges clear after %2</source>
        <translation>%1: bordes limpios tras %2</translation>
    </message>
    <message>
        <source>%1: set on the board after %2</source>
        <translation>%1: fraguó en la tabla tras %2</translation>
    </message>
    <message>
        <source>%1: set on the panel after %2</source>
        <translation>%1: fraguó en el panel tras %2</translation>
    </message>
    <message>
        <source>%1: sands after %2</source>
        <translation>%1: se lija tras %2</translation>
    </message>
    <message>
        <source>%1: sanded and dusted off</source>
        <translation>%1: lijado y desempolvado</translation>
    </message>
    <message>
        <source>Panel turned</source>
        <translation>Panel volteado</translation>
    </message>
    <message>
        <source>Parked: %1</source>
        <translation>Apartado: %1</translation>
    </message>
    <message>
        <source>Parked: %1. %2</source>
        <translation>Apartado: %1. %2</translation>
    </message>
    <message>
        <source>Assessed again from the first question</source>
        <translation>Evaluado de nuevo desde la primera pregunta</translation>
    </message>
    <message>
        <source>Taken up again</source>
        <translation>Retomado</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Photo: %1</source>
        <translation>Foto: %1</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Nota: %1</translation>
    </message>
    <message>
        <source>Finishing batch %1</source>
        <translation>Mezcla de acabado %1</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Mezcla %1</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>%1: by this reading sands from %2, before from %3</source>
        <translation>%1: según esta lectura se lija desde %2, antes desde %3</translation>
    </message>
    <message>
        <source>%1: alarm answered: %2</source>
        <translation>%1: alarma atendida: %2</translation>
    </message>
    <message>
        <source>Overridden by the supervisor: %1. Reason: %2</source>
        <translation>Anulado por el supervisor: %1. Motivo: %2</translation>
    </message>
    <message>
        <source>Signed off by the supervisor</source>
        <translation>Firmado por el supervisor</translation>
    </message>
    <message>
        <source>Correction of no. %1: %2</source>
        <extracomment>%1 is the number of the event that is put right, %2 what the supervisor wrote</extracomment>
        <translation>Corrección del n.º %1: %2</translation>
    </message>
    <message>
        <source>Changed. %1 (air by the instrument)</source>
        <translation>Cambiado. %1 (aire por el instrumento)</translation>
    </message>
    <message>
        <source>%1 (air by the instrument)</source>
        <translation>%1 (aire por el instrumento)</translation>
    </message>
    <message>
        <source>Read, air by the instrument: %1; panel %2 above dew point</source>
        <translation>Medido, aire por el instrumento: %1; panel %2 sobre el punto de rocío</translation>
    </message>
    <message>
        <source>%1: hardener in, %2 + %3 by the scale</source>
        <translation>%1: con endurecedor, %2 + %3 por la balanza</translation>
    </message>
    <message>
        <source>Taken in as rework of what was returned: %1, %2</source>
        <translation>Recibido como repaso de lo devuelto: %1, %2</translation>
    </message>
    <message>
        <source>Returned by the supervisor: %1</source>
        <extracomment>%1 is the reason</extracomment>
        <translation>Devuelto por el supervisor: %1</translation>
    </message>
    <message>
        <source>Its rework is taken in</source>
        <translation>Su repaso está recibido</translation>
    </message>
</context>
<context>
    <name>Evidence</name>
    <message>
        <source>From the front</source>
        <translation>De frente</translation>
    </message>
    <message>
        <source>From behind</source>
        <translation>Por detrás</translation>
    </message>
    <message>
        <source>Broken edge</source>
        <translation>Borde roto</translation>
    </message>
    <message>
        <source>Magnet</source>
        <translation>Imán</translation>
    </message>
    <message>
        <source>Zinc gauge</source>
        <translation>Medidor de zinc</translation>
    </message>
    <message>
        <source>Ohmmeter</source>
        <translation>Óhmetro</translation>
    </message>
    <message>
        <source>Tap it</source>
        <translation>Golpear</translation>
    </message>
    <message>
        <source>80 grit, a spot</source>
        <translation>Grano 80, un punto</translation>
    </message>
    <message>
        <source>Bend the edge</source>
        <translation>Doblar el borde</translation>
    </message>
    <message>
        <source>Drop of vinegar</source>
        <translation>Gota de vinagre</translation>
    </message>
    <message>
        <source>Cloth and solvent</source>
        <translation>Paño y disolvente</translation>
    </message>
    <message>
        <source>Nail in film</source>
        <translation>Uña en la película</translation>
    </message>
    <message>
        <source>Tap and wet</source>
        <translation>Golpear y mojar</translation>
    </message>
    <message>
        <source>Nail in adhesive</source>
        <translation>Uña en el adhesivo</translation>
    </message>
    <message>
        <source>Taped foil</source>
        <translation>Film pegado</translation>
    </message>
    <message>
        <source>What is near</source>
        <translation>Qué hay cerca</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>Air and panel</source>
        <translation>Aire y panel</translation>
    </message>
    <message>
        <source>Since when bare</source>
        <translation>Desde cuándo desnudo</translation>
    </message>
    <message>
        <source>a crack</source>
        <translation>una grieta</translation>
    </message>
    <message>
        <source>fine crazing in the paint</source>
        <translation>finas grietas en la pintura</translation>
    </message>
    <message>
        <source>a dish pressed in</source>
        <translation>una concavidad hundida</translation>
    </message>
    <message>
        <source>a furrow</source>
        <translation>un surco</translation>
    </message>
    <message>
        <source>a hole right through</source>
        <translation>un agujero de lado a lado</translation>
    </message>
    <message>
        <source>a hole with a brown, flaking rim</source>
        <translation>un agujero de borde pardo que se descascara</translation>
    </message>
    <message>
        <source>an unbroken weld bead</source>
        <translation>un cordón de soldadura sin cortes</translation>
    </message>
    <message>
        <source>a row of round pressed spots</source>
        <translation>una fila de puntos redondos hundidos</translation>
    </message>
    <message>
        <source>the line of a seam</source>
        <translation>la línea de una junta</translation>
    </message>
    <message>
        <source>a line of adhesive</source>
        <translation>una línea de adhesivo</translation>
    </message>
    <message>
        <source>adhesive squeezed out</source>
        <translation>adhesivo que rebosa</translation>
    </message>
    <message>
        <source>pores in the bead</source>
        <translation>poros en el cordón</translation>
    </message>
    <message>
        <source>brown specks on bright metal</source>
        <translation>motas pardas en metal brillante</translation>
    </message>
    <message>
        <source>nothing on it</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>even grey film, abraded</source>
        <translation>película gris uniforme, lijada</translation>
    </message>
    <message>
        <source>glossy film</source>
        <translation>película brillante</translation>
    </message>
    <message>
        <source>a patch of another colour in the film</source>
        <translation>una mancha de otro color en la película</translation>
    </message>
    <message>
        <source>thick rubbery film</source>
        <translation>película gruesa como goma</translation>
    </message>
    <message>
        <source>brown scale</source>
        <translation>costra parda</translation>
    </message>
    <message>
        <source>smooth black film</source>
        <translation>película negra lisa</translation>
    </message>
    <message>
        <source>thin tinted film, metal shows through</source>
        <translation>película fina teñida, se ve el metal</translation>
    </message>
    <message>
        <source>glassy drops along the joint</source>
        <translation>gotas vítreas a lo largo de la junta</translation>
    </message>
    <message>
        <source>A hand gets behind it.</source>
        <translation>La mano llega por detrás.</translation>
    </message>
    <message>
        <source>Only a mirror gets behind it.</source>
        <translation>Por detrás solo llega un espejo.</translation>
    </message>
    <message>
        <source>The back is closed: nothing is seen.</source>
        <translation>Por detrás está cerrado: no se ve nada.</translation>
    </message>
    <message>
        <source>rough, strands every way</source>
        <translation>áspero, hebras en todas direcciones</translation>
    </message>
    <message>
        <source>smooth, with moulded ribs</source>
        <translation>liso, con nervios moldeados</translation>
    </message>
    <message>
        <source>black woven cloth</source>
        <translation>tejido negro</translation>
    </message>
    <message>
        <source>thin pressed sheet</source>
        <translation>chapa fina estampada</translation>
    </message>
    <message>
        <source>thick cast ribs</source>
        <translation>nervios gruesos colados</translation>
    </message>
    <message>
        <source>short weld beads with gaps</source>
        <translation>cordones cortos con huecos</translation>
    </message>
    <message>
        <source>Marked: UP-GF</source>
        <extracomment>what is moulded into the back of a part, an abbreviation of ISO 1043</extracomment>
        <translation>Marca: UP-GF</translation>
    </message>
    <message>
        <source>Marked: PP-EPDM</source>
        <translation>Marca: PP-EPDM</translation>
    </message>
    <message>
        <source>Marked: PUR</source>
        <translation>Marca: PUR</translation>
    </message>
    <message>
        <source>Marked: PDCPD</source>
        <translation>Marca: PDCPD</translation>
    </message>
    <message>
        <source>Marked: Mg</source>
        <translation>Marca: Mg</translation>
    </message>
    <message>
        <source>layers, long strands stand out</source>
        <translation>capas, sobresalen hebras largas</translation>
    </message>
    <message>
        <source>short strands, evenly all through</source>
        <translation>hebras cortas, repartidas por igual</translation>
    </message>
    <message>
        <source>no strand anywhere</source>
        <translation>ninguna hebra</translation>
    </message>
    <message>
        <source>black woven threads</source>
        <translation>hilos negros tejidos</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>metal</translation>
    </message>
    <message>
        <source>Solid all through.</source>
        <translation>Macizo de lado a lado.</translation>
    </message>
    <message>
        <source>Between two skins: small cells.</source>
        <translation>Entre dos pieles: celdas pequeñas.</translation>
    </message>
    <message>
        <source>Between two skins: pale dry wood.</source>
        <translation>Entre dos pieles: madera clara y seca.</translation>
    </message>
    <message>
        <source>Between two skins: dark wood, wet to the finger.</source>
        <translation>Entre dos pieles: madera oscura, húmeda al dedo.</translation>
    </message>
    <message>
        <source>no pull</source>
        <translation>no tira</translation>
    </message>
    <message>
        <source>weak pull</source>
        <translation>tira poco</translation>
    </message>
    <message>
        <source>strong pull</source>
        <translation>tira fuerte</translation>
    </message>
    <message>
        <source>It rings.</source>
        <translation>Suena como campana.</translation>
    </message>
    <message>
        <source>A hard, short sound.</source>
        <translation>Un sonido duro y corto.</translation>
    </message>
    <message>
        <source>A dull sound.</source>
        <translation>Un sonido sordo.</translation>
    </message>
    <message>
        <source>Dead: no sound of its own.</source>
        <translation>Muerto: sin sonido propio.</translation>
    </message>
    <message>
        <source>It gives dry powder.</source>
        <translation>Da polvo seco.</translation>
    </message>
    <message>
        <source>It smears and gives strings.</source>
        <translation>Se embarra y hace hilos.</translation>
    </message>
    <message>
        <source>It gives soft crumbs.</source>
        <translation>Da migas blandas.</translation>
    </message>
    <message>
        <source>It gives black dust.</source>
        <translation>Da polvo negro.</translation>
    </message>
    <message>
        <source>Bright metal comes up.</source>
        <translation>Aparece metal brillante.</translation>
    </message>
    <message>
        <source>The cloth stays clean.</source>
        <translation>El paño queda limpio.</translation>
    </message>
    <message>
        <source>The cloth takes colour.</source>
        <translation>El paño toma color.</translation>
    </message>
    <message>
        <source>The film softens and smears.</source>
        <translation>La película se ablanda y se corre.</translation>
    </message>
    <message>
        <source>Hard: the nail slides off.</source>
        <translation>Duro: la uña resbala.</translation>
    </message>
    <message>
        <source>Rubbery: the nail springs back.</source>
        <translation>Como goma: la uña rebota.</translation>
    </message>
    <message>
        <source>Soft: the nail goes in and stays.</source>
        <translation>Blando: la uña entra y se queda.</translation>
    </message>
    <message>
        <source>Dry below the foil.</source>
        <translation>Seco bajo el film.</translation>
    </message>
    <message>
        <source>Beads of water below the foil.</source>
        <translation>Gotas de agua bajo el film.</translation>
    </message>
    <message>
        <source>pillar</source>
        <translation>pilar</translation>
    </message>
    <message>
        <source>chassis rail</source>
        <translation>larguero</translation>
    </message>
    <message>
        <source>brake mounting</source>
        <translation>anclaje del freno</translation>
    </message>
    <message>
        <source>steering mounting</source>
        <translation>anclaje de la dirección</translation>
    </message>
    <message>
        <source>suspension mounting</source>
        <translation>anclaje de la suspensión</translation>
    </message>
    <message>
        <source>belt mounting</source>
        <translation>anclaje del cinturón</translation>
    </message>
    <message>
        <source>seat mounting</source>
        <translation>anclaje del asiento</translation>
    </message>
    <message>
        <source>flange that glass is bonded to</source>
        <translation>pestaña donde se pega el vidrio</translation>
    </message>
    <message>
        <source>airbag cover</source>
        <translation>tapa de airbag</translation>
    </message>
    <message>
        <source>high-voltage part, orange cable</source>
        <translation>pieza de alta tensión, cable naranja</translation>
    </message>
    <message>
        <source>driver-assistance sensor behind it</source>
        <translation>sensor de asistencia detrás</translation>
    </message>
    <message>
        <source>wall of a tank</source>
        <translation>pared de un depósito</translation>
    </message>
    <message>
        <source>It cannot be tried here.</source>
        <translation>Aquí no se puede probar.</translation>
    </message>
    <message>
        <source>On it: %1.</source>
        <translation>Encima: %1.</translation>
    </message>
    <message>
        <source>Seen: %1. On it: %2.</source>
        <extracomment>both are lists: &quot;a crack, fine crazing in the paint&quot;, &quot;glossy film&quot;</extracomment>
        <translation>Se ve: %1. Encima: %2.</translation>
    </message>
    <message>
        <source>Seen: %1.</source>
        <translation>Se ve: %1.</translation>
    </message>
    <message>
        <source>No edge is broken or cut open.</source>
        <translation>No hay borde roto ni cortado.</translation>
    </message>
    <message>
        <source>At the damage: %1.</source>
        <translation>En el daño: %1.</translation>
    </message>
    <message>
        <source>At the damage: %1. On a spot ground bare: %2.</source>
        <translation>En el daño: %1. En un punto lijado a desnudo: %2.</translation>
    </message>
    <message>
        <source>%1 µm</source>
        <extracomment>a thickness: &quot;12 µm&quot;</extracomment>
        <translation>%1 µm</translation>
    </message>
    <message>
        <source>Beside it: %1.</source>
        <translation>Al lado: %1.</translation>
    </message>
    <message>
        <source>Nothing but skin within an arm’s length.</source>
        <translation>Solo piel exterior a un brazo de distancia.</translation>
    </message>
    <message>
        <source>%1, %2 away</source>
        <extracomment>%1 is a part of a vehicle, %2 how far off: &quot;belt mounting, 120 mm away&quot;</extracomment>
        <translation>%1, a %2</translation>
    </message>
    <message>
        <source>%1, right here</source>
        <translation>%1, aquí mismo</translation>
    </message>
    <message>
        <source>Long, as the eye has it: %1.</source>
        <translation>Largo, a la vista: %1.</translation>
    </message>
    <message>
        <source>Wide: %1.</source>
        <translation>Ancho: %1.</translation>
    </message>
    <message>
        <source>Deep: %1.</source>
        <translation>Hondo: %1.</translation>
    </message>
    <message>
        <source>Panel: %1.</source>
        <translation>Panel: %1.</translation>
    </message>
    <message>
        <source>It conducts.</source>
        <translation>Conduce.</translation>
    </message>
    <message>
        <source>Open: it does not conduct.</source>
        <translation>Abierto: no conduce.</translation>
    </message>
    <message>
        <source>It bends by hand and springs back.</source>
        <translation>Se dobla con la mano y vuelve.</translation>
    </message>
    <message>
        <source>It stays stiff.</source>
        <translation>Sigue rígido.</translation>
    </message>
    <message>
        <source>It fizzes.</source>
        <translation>Hace burbujas.</translation>
    </message>
    <message>
        <source>Nothing happens.</source>
        <translation>No pasa nada.</translation>
    </message>
    <message>
        <source>The nail leaves a mark.</source>
        <translation>La uña deja marca.</translation>
    </message>
    <message>
        <source>The nail leaves no mark.</source>
        <translation>La uña no deja marca.</translation>
    </message>
    <message>
        <source>From tip to tip: %1.</source>
        <translation>De punta a punta: %1.</translation>
    </message>
    <message>
        <source>No crack opens.</source>
        <translation>No se abre ninguna grieta.</translation>
    </message>
    <message>
        <source>Cut or ground bare %1 ago.</source>
        <translation>Cortado o lijado hace %1.</translation>
    </message>
    <message>
        <source>Nobody knows.</source>
        <translation>Nadie lo sabe.</translation>
    </message>
    <message>
        <source>Bevel to cut: %1 : 1.</source>
        <extracomment>run to depth, told by the shop: &quot;Bevel to cut: 4 : 1.&quot;</extracomment>
        <translation>Bisel que se hace: %1 : 1.</translation>
    </message>
</context>
<context>
    <name>Faults</name>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texto</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objeto</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>verdadero o falso</translation>
    </message>
    <message>
        <source>a file</source>
        <translation>un archivo</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Número de orden</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panel</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Panel’s material</source>
        <translation>Material del panel</translation>
    </message>
    <message>
        <source>Damage</source>
        <translation>Daño</translation>
    </message>
    <message>
        <source>Kind of damage</source>
        <translation>Tipo de daño</translation>
    </message>
    <message>
        <source>Kind of weld</source>
        <translation>Tipo de soldadura</translation>
    </message>
    <message>
        <source>Adhesive cured</source>
        <translation>Adhesivo curado</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Panel thickness</source>
        <translation>Espesor del panel</translation>
    </message>
    <message>
        <source>Bevel</source>
        <translation>Bisel</translation>
    </message>
    <message>
        <source>Reach from behind</source>
        <translation>Acceso por detrás</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Núcleo</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Temperatura del aire</translation>
    </message>
    <message>
        <source>Panel temperature</source>
        <translation>Temperatura del panel</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad del aire</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Masilla</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Endurecedor</translation>
    </message>
    <message>
        <source>Puddle</source>
        <translation>Torta</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Tarjeta</translation>
    </message>
    <message>
        <source>%1: missing</source>
        <translation>%1: falta</translation>
    </message>
    <message>
        <source>%1: missing; it must be one of: %2</source>
        <translation>%1: falta; debe ser uno de: %2</translation>
    </message>
    <message>
        <source>%1: missing; it must be %2</source>
        <translation>%1: falta; debe ser %2</translation>
    </message>
    <message>
        <source>%1: %2 is out of range; allowed is %3 to %4</source>
        <translation>%1: %2 está fuera de rango; se admite de %3 a %4</translation>
    </message>
    <message>
        <source>%1: not known; known here: %2</source>
        <translation>%1: desconocido; se conocen aquí: %2</translation>
    </message>
    <message>
        <source>%1: %2 does not fit; it must be %3</source>
        <translation>%1: %2 no encaja; debe ser %3</translation>
    </message>
    <message>
        <source>%1: %2 is not one of: %3</source>
        <translation>%1: %2 no es uno de: %3</translation>
    </message>
    <message>
        <source>%1: %2 cannot be read; it looks like: %3</source>
        <translation>%1: %2 no se puede leer; su forma es: %3</translation>
    </message>
    <message>
        <source>%1: must not be empty</source>
        <translation>%1: no debe estar vacío</translation>
    </message>
    <message>
        <source>%1: %2 is too long; at most %3 characters</source>
        <translation>%1: %2 es demasiado largo; máximo %3 caracteres</translation>
    </message>
    <message>
        <source>%1: %2 does not agree with %3: %4</source>
        <translation>%1: %2 no concuerda con %3: %4</translation>
    </message>
    <message>
        <source>%1: %2 is not there; there is: %3</source>
        <translation>%1: %2 no está; hay: %3</translation>
    </message>
    <message>
        <source>Bead</source>
        <translation>Cordón</translation>
    </message>
</context>
<context>
    <name>FigureChart</name>
    <message>
        <source>planned</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>Not identified</source>
        <translation>Sin identificar</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>&quot;9 of 12&quot;</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>took</source>
        <translation>duró</translation>
    </message>
    <message>
        <source>how often</source>
        <translation>cuántas veces</translation>
    </message>
    <message>
        <source>share up to here</source>
        <translation>proporción hasta aquí</translation>
    </message>
    <message>
        <source>Step from each gel to the next, with its limit</source>
        <translation>Salto de cada gel al siguiente, con su límite</translation>
    </message>
    <message>
        <source>Gel times over those of the sheet, one after the other, with mean, limits and moving mean</source>
        <translation>Tiempos de gel respecto a la ficha, uno tras otro, con media, límites y media móvil</translation>
    </message>
    <message numerus="yes">
        <source>+%n in the table</source>
        <translation>
            <numerusform>+%n en la tabla</numerusform>
            <numerusform>+%n en la tabla</numerusform>
        </translation>
    </message>
    <message>
        <source>mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>límite superior</translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation>límite inferior</translation>
    </message>
    <message>
        <source>moving mean</source>
        <translation>media móvil</translation>
    </message>
    <message>
        <source>its limit</source>
        <translation>su límite</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>gel</translation>
    </message>
    <message>
        <source>not by chance alone</source>
        <translation>no solo por azar</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mezclado</translation>
    </message>
    <message>
        <source>%1 too much</source>
        <extracomment>%1 is a share of what was mixed</extracomment>
        <translation>%1 de más</translation>
    </message>
    <message>
        <source>share, and where the true one may lie</source>
        <translation>proporción, y dónde puede estar la real</translation>
    </message>
</context>
<context>
    <name>FigureTable</name>
    <message>
        <source>Marked in the chart</source>
        <translation>Marcado en el gráfico</translation>
    </message>
</context>
<context>
    <name>FigureTold</name>
    <message>
        <source>Nothing was mixed in these days.</source>
        <translation>No se mezcló nada en estos días.</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>previsto %1</translation>
    </message>
    <message>
        <source>mixed %1</source>
        <translation>mezclado %1</translation>
    </message>
    <message>
        <source>beyond the plan %1, %2</source>
        <translation>de más %1, %2</translation>
    </message>
    <message>
        <source>Of %1 mixed, %2 went beyond the plan: %3. Most of that was %4.</source>
        <extracomment>%1 and %2 are masses, %3 a share, %4 a product</extracomment>
        <translation>De %1 mezclados, %2 fueron de más: %3. La mayor parte fue %4.</translation>
    </message>
    <message>
        <source>Of %1 mixed, nothing went beyond the plan.</source>
        <translation>De %1 mezclados, nada fue de más.</translation>
    </message>
    <message>
        <source>Other batches fell short of it by %1.</source>
        <translation>A otras mezclas les faltaron %1.</translation>
    </message>
    <message>
        <source>Between the substrates no difference is larger than chance.</source>
        <translation>Entre los sustratos ninguna diferencia supera el azar.</translation>
    </message>
    <message>
        <source>not identified</source>
        <translation>sin identificar</translation>
    </message>
    <message>
        <source>Less often with %1 than with %2, by more than chance.</source>
        <extracomment>%1 and %2 are substrates</extracomment>
        <translation>Menos a menudo con %1 que con %2, más de lo que da el azar.</translation>
    </message>
    <message>
        <source>No repair of these days was signed off or returned yet.</source>
        <translation>Ninguna reparación de estos días se ha firmado o devuelto aún.</translation>
    </message>
    <message>
        <source>Not identified</source>
        <translation>Sin identificar</translation>
    </message>
    <message>
        <source>%1 of %2 right the first time</source>
        <translation>%1 de %2 bien a la primera</translation>
    </message>
    <message>
        <source>may be %1 to %2</source>
        <extracomment>%1 and %2 are shares: the ends of an interval</extracomment>
        <translation>puede ser %1 a %2</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n repair(s) right the first time: %2. The true share may lie anywhere from %3 to %4.</source>
        <extracomment>%1 is a number, %2 to %4 are shares</extracomment>
        <translation>
            <numerusform>%1 de %n reparación bien a la primera: %2. La proporción real puede estar entre %3 y %4.</numerusform>
            <numerusform>%1 de %n reparaciones bien a la primera: %2. La proporción real puede estar entre %3 y %4.</numerusform>
        </translation>
    </message>
    <message>
        <source>No repair of these days was handed over with its times told.</source>
        <translation>Ninguna reparación de estos días se entregó con sus tiempos indicados.</translation>
    </message>
    <message>
        <source>took %1</source>
        <translation>duró %1</translation>
    </message>
    <message>
        <source>one in ten %1 or more</source>
        <translation>una de cada diez %1 o más</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n reparación</numerusform>
            <numerusform>%n reparaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Most is lost at ‘%1’: half of %n repair(s) took %2 or more, the plan said %3.</source>
        <translation>
            <numerusform>Se pierde más en «%1»: %n reparación duró %2 o más, el plan decía %3.</numerusform>
            <numerusform>Se pierde más en «%1»: la mitad de %n reparaciones duró %2 o más, el plan decía %3.</numerusform>
        </translation>
    </message>
    <message>
        <source>No part takes longer than the plan says, by the middle one of its repairs.</source>
        <translation>Ninguna parte dura más de lo que dice el plan, según la reparación del medio.</translation>
    </message>
    <message>
        <source>The records of these days hold no deviation.</source>
        <translation>El registro de estos días no contiene ninguna desviación.</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s)</source>
        <translation>
            <numerusform>%n vez</numerusform>
            <numerusform>%n veces</numerusform>
        </translation>
    </message>
    <message>
        <source>up to here %1</source>
        <extracomment>%1 is a share: of this row and those above</extracomment>
        <translation>hasta aquí %1</translation>
    </message>
    <message numerus="yes">
        <source>Most often: %1, %2 of %n deviation(s), %3.</source>
        <extracomment>%1 is a kind of deviation, %2 a number, %3 a share</extracomment>
        <translation>
            <numerusform>Lo más frecuente: %1, %2 de %n desviación, %3.</numerusform>
            <numerusform>Lo más frecuente: %1, %2 de %n desviaciones, %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The first %n kind(s) make up %1.</source>
        <translation>
            <numerusform>La primera clase suma %1.</numerusform>
            <numerusform>Las primeras %n clases suman %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Is a lot of hardener drifting?</source>
        <translation>¿Se desvía un lote de endurecedor?</translation>
    </message>
    <message>
        <source>How much is mixed beyond the plan?</source>
        <translation>¿Cuánto se mezcla de más?</translation>
    </message>
    <message>
        <source>How often is it right the first time?</source>
        <translation>¿Cuántas veces sale bien a la primera?</translation>
    </message>
    <message>
        <source>Where does the time go?</source>
        <translation>¿Adónde se va el tiempo?</translation>
    </message>
    <message>
        <source>What strays most often?</source>
        <translation>¿Qué se desvía más a menudo?</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s) cannot be read and are not counted.</source>
        <translation>
            <numerusform>%n reparación no se puede leer y no se cuenta.</numerusform>
            <numerusform>%n reparaciones no se pueden leer y no se cuentan.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FigureWords</name>
    <message>
        <source>Panel near dew point</source>
        <translation>Panel cerca del punto de rocío</translation>
    </message>
    <message>
        <source>Panel too cold</source>
        <translation>Panel muy frío</translation>
    </message>
    <message>
        <source>Panel too hot</source>
        <translation>Panel muy caliente</translation>
    </message>
    <message>
        <source>Air too cold</source>
        <translation>Aire muy frío</translation>
    </message>
    <message>
        <source>Air too hot</source>
        <translation>Aire muy caliente</translation>
    </message>
    <message>
        <source>No reading</source>
        <translation>Sin lectura</translation>
    </message>
    <message>
        <source>Old reading</source>
        <translation>Lectura vieja</translation>
    </message>
    <message>
        <source>Bare metal too long</source>
        <translation>Metal desnudo mucho rato</translation>
    </message>
    <message>
        <source>Sanded early</source>
        <translation>Lijado pronto</translation>
    </message>
    <message>
        <source>Edges after due gel</source>
        <translation>Bordes tras el gel previsto</translation>
    </message>
    <message>
        <source>Edges after gel</source>
        <translation>Bordes tras el gel</translation>
    </message>
    <message>
        <source>Hardener low</source>
        <translation>Poco endurecedor</translation>
    </message>
    <message>
        <source>Hardener high</source>
        <translation>Mucho endurecedor</translation>
    </message>
    <message>
        <source>Lift too thick</source>
        <translation>Capa muy gruesa</translation>
    </message>
    <message>
        <source>Steps skimmed</source>
        <translation>Pasos deprisa</translation>
    </message>
    <message>
        <source>Wait cut short</source>
        <translation>Espera acortada</translation>
    </message>
    <message>
        <source>No filler lot</source>
        <translation>Sin lote de masilla</translation>
    </message>
    <message>
        <source>No hardener lot</source>
        <translation>Sin lote de endurecedor</translation>
    </message>
    <message>
        <source>Demo sheet</source>
        <translation>Ficha de muestra</translation>
    </message>
    <message>
        <source>Answer changed</source>
        <translation>Respuesta cambiada</translation>
    </message>
    <message>
        <source>Planned again</source>
        <translation>Plan nuevo</translation>
    </message>
    <message>
        <source>Stop overridden</source>
        <translation>Alto anulado</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Apartado</translation>
    </message>
    <message>
        <source>No photo</source>
        <translation>Sin foto</translation>
    </message>
    <message>
        <source>No name</source>
        <translation>Sin nombre</translation>
    </message>
    <message>
        <source>Bench restarted</source>
        <translation>Puesto reiniciado</translation>
    </message>
    <message>
        <source>Clock set on</source>
        <translation>Reloj adelantado</translation>
    </message>
    <message>
        <source>Clock set back</source>
        <translation>Reloj atrasado</translation>
    </message>
    <message>
        <source>Preparing</source>
        <translation>Preparar</translation>
    </message>
    <message>
        <source>Laying</source>
        <translation>Aplicar</translation>
    </message>
    <message>
        <source>Curing</source>
        <translation>Curar</translation>
    </message>
    <message>
        <source>Sanding</source>
        <translation>Lijar</translation>
    </message>
    <message>
        <source>Finishing</source>
        <translation>Acabar</translation>
    </message>
    <message>
        <source>gel %1 lies outside the limits</source>
        <extracomment>%1 is the number of a gel, so in all of these</extracomment>
        <translation>el gel %1 está fuera de los límites</translation>
    </message>
    <message>
        <source>gel %1: two of three lie far off to one side</source>
        <translation>gel %1: dos de tres lejos hacia un lado</translation>
    </message>
    <message>
        <source>gel %1: four of five lie off to one side</source>
        <translation>gel %1: cuatro de cinco hacia un lado</translation>
    </message>
    <message>
        <source>gel %1: eight in a row lie on one side of the mean</source>
        <translation>gel %1: ocho seguidos a un lado de la media</translation>
    </message>
    <message>
        <source>gel %1: six in a row go the same way</source>
        <translation>gel %1: seis seguidos en el mismo sentido</translation>
    </message>
    <message>
        <source>gel %1: fourteen go up and down by turns</source>
        <translation>gel %1: catorce suben y bajan por turnos</translation>
    </message>
    <message>
        <source>as fast as the sheet</source>
        <translation>tan rápido como la ficha</translation>
    </message>
    <message>
        <source>%1 slower than the sheet</source>
        <translation>%1 más lento que la ficha</translation>
    </message>
    <message>
        <source>%1 faster than the sheet</source>
        <translation>%1 más rápido que la ficha</translation>
    </message>
</context>
<context>
    <name>FoundBy</name>
    <message>
        <source>magnet</source>
        <extracomment>what told one substrate from another, in a list: &quot;magnet, tap sound&quot;</extracomment>
        <translation>imán</translation>
    </message>
    <message>
        <source>zinc gauge</source>
        <translation>medidor de zinc</translation>
    </message>
    <message>
        <source>ohmmeter</source>
        <translation>óhmetro</translation>
    </message>
    <message>
        <source>broken edge</source>
        <translation>borde roto</translation>
    </message>
    <message>
        <source>marking on the back</source>
        <translation>marca por detrás</translation>
    </message>
    <message>
        <source>tap sound</source>
        <translation>sonido al golpear</translation>
    </message>
    <message>
        <source>%1 (told by %2)</source>
        <extracomment>%1 is what a panel is made of, %2 a list: &quot;SMC (told by broken edge, tap sound)&quot;</extracomment>
        <translation>%1 (por %2)</translation>
    </message>
</context>
<context>
    <name>GelTold</name>
    <message numerus="yes">
        <source>%n gel(s) marked, the newest: %1.</source>
        <extracomment>%1 is what is unusual with the newest of them: &quot;gel 31 lies outside the limits&quot;</extracomment>
        <translation>
            <numerusform>%n gel marcado, el último: %1.</numerusform>
            <numerusform>%n geles marcados, el último: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The moving mean was outside its limits until gel %1 and has come back.</source>
        <extracomment>%1 is the number of a gel</extracomment>
        <translation>La media móvil estuvo fuera de sus límites hasta el gel %1 y ha vuelto.</translation>
    </message>
    <message>
        <source>The moving mean is above its limits since gel %1: slower than the sheet.</source>
        <translation>La media móvil está sobre sus límites desde el gel %1: más lento que la ficha.</translation>
    </message>
    <message>
        <source>The moving mean is below its limits since gel %1: faster than the sheet.</source>
        <translation>La media móvil está bajo sus límites desde el gel %1: más rápido que la ficha.</translation>
    </message>
    <message numerus="yes">
        <source>%n gel(s), on average %1.</source>
        <extracomment>%1: &quot;12 % slower than the sheet&quot;</extracomment>
        <translation>
            <numerusform>%n gel, de media %1.</numerusform>
            <numerusform>%n geles, de media %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing says that it drifts.</source>
        <translation>Nada indica que se desvíe.</translation>
    </message>
    <message>
        <source>With so few the limits are rough.</source>
        <translation>Con tan pocos, los límites son aproximados.</translation>
    </message>
    <message>
        <source>Gel %1</source>
        <translation>Gel %1</translation>
    </message>
    <message>
        <source>%1 of the sheet’s time</source>
        <translation>%1 del tiempo de la ficha</translation>
    </message>
    <message>
        <source>moving mean %1</source>
        <translation>media móvil %1</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>salto %1</translation>
    </message>
    <message numerus="yes">
        <source>A control chart needs two gels of a lot; in these days %n was seen.</source>
        <translation>
            <numerusform>Un gráfico de control necesita dos geles de un lote; en estos días se vio %n.</numerusform>
            <numerusform>Un gráfico de control necesita dos geles de un lote; en estos días se vieron %n.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Glossary</name>
    <message>
        <source>Tough yellow fibre that fuzzes instead of breaking; it cannot be sanded clean.</source>
        <translation>Fibra amarilla y tenaz que se deshilacha en vez de romper; no se lija limpia.</translation>
    </message>
    <message>
        <source>Cloth and resin bonded behind a hole, so that the filler has something to lie on.</source>
        <translation>Tejido y resina pegados detrás de un agujero, para que la masilla se apoye.</translation>
    </message>
    <message>
        <source>What is mixed at one time, with one bead of hardener.</source>
        <translation>Lo que se mezcla de una vez, con un cordón de endurecedor.</translation>
    </message>
    <message>
        <source>The line of hardener paste pressed from its tube; its length is the measure.</source>
        <translation>La línea de pasta endurecedora que sale del tubo; su largo es la medida.</translation>
    </message>
    <message>
        <source>The slope ground round a hole or crack, which gives the filler area to hold on.</source>
        <translation>La rampa amolada alrededor de un agujero o grieta, que da agarre a la masilla.</translation>
    </message>
    <message>
        <source>Two panels joined by adhesive; it moves a little with heat and load.</source>
        <translation>Dos paneles unidos con adhesivo; se mueve algo con calor y carga.</translation>
    </message>
    <message>
        <source>Fine cracks like a net in paint, gel coat or a filler that got too hot.</source>
        <translation>Grietas finas como una red en pintura, gel coat o masilla recalentada.</translation>
    </message>
    <message>
        <source>The reaction that makes the paste hard; it gives off heat.</source>
        <translation>La reacción que endurece la pasta; desprende calor.</translation>
    </message>
    <message>
        <source>Tape or card behind a hole that keeps the filler in; it carries nothing.</source>
        <translation>Cinta o cartón tras un agujero que retiene la masilla; no aguanta nada.</translation>
    </message>
    <message>
        <source>Plies of a laminate that have come apart; they sound dull when tapped.</source>
        <translation>Capas de un laminado que se han separado; suenan sordas al golpear.</translation>
    </message>
    <message>
        <source>Where the work left a limit; it stands in the record and is looked at.</source>
        <translation>Donde el trabajo se salió de un límite; consta en el registro y se revisa.</translation>
    </message>
    <message>
        <source>How much warmer the panel is than the dew point of the air round it.</source>
        <translation>Cuánto más caliente está el panel que el punto de rocío del aire.</translation>
    </message>
    <message>
        <source>The temperature at which water comes out of the air onto a surface.</source>
        <translation>La temperatura a la que el agua del aire se posa en una superficie.</translation>
    </message>
    <message>
        <source>How sharply a painted surface mirrors; low spots and sand marks blur it.</source>
        <translation>Lo nítido que refleja una superficie pintada; bajos y rayas la enturbian.</translation>
    </message>
    <message>
        <source>The primer that a new metal part was dipped in; thin, hard, often grey or black.</source>
        <translation>Imprimación por inmersión de pieza metálica nueva; fina, dura, a menudo gris o negra.</translation>
    </message>
    <message>
        <source>Two-part primer that keeps water off metal; cured and abraded it carries filler.</source>
        <translation>Imprimación bicomponente que aísla el metal del agua; curada y lijada admite masilla.</translation>
    </message>
    <message>
        <source>Primer with acid that bites metal; polyester does not hold on it.</source>
        <translation>Imprimación con ácido que muerde el metal; el poliéster no agarra en ella.</translation>
    </message>
    <message>
        <source>The heat of the cure; a thick lump gets hotter than a thin layer.</source>
        <translation>El calor del curado; un bloque grueso se calienta más que una capa fina.</translation>
    </message>
    <message>
        <source>One side of the panel: front is what the customer sees.</source>
        <translation>Un lado del panel: el frente es lo que ve el cliente.</translation>
    </message>
    <message>
        <source>An edge sanded out until a hand cannot feel where it ends.</source>
        <translation>Un borde lijado hasta que la mano no nota dónde acaba.</translation>
    </message>
    <message>
        <source>Paste of polyester with powder or fibre that fills and is sanded.</source>
        <translation>Pasta de poliéster con polvo o fibra que rellena y se lija.</translation>
    </message>
    <message>
        <source>The wait in which a solvent leaves a surface, until nothing smells or feels cold.</source>
        <translation>La espera en que el disolvente se va, hasta que no huela ni se note frío.</translation>
    </message>
    <message>
        <source>Steel with a skin of zinc; sanded through, it rusts there.</source>
        <translation>Acero con piel de zinc; si se traspasa al lijar, ahí se oxida.</translation>
    </message>
    <message>
        <source>When the paste stops flowing and turns to rubber: no spreading from then on.</source>
        <translation>Cuando la pasta deja de fluir y se hace goma: ya no se extiende.</translation>
    </message>
    <message>
        <source>The unreinforced outer skin of a moulded laminate.</source>
        <translation>La piel exterior sin refuerzo de un laminado moldeado.</translation>
    </message>
    <message>
        <source>From hardener in to the gel; it follows from lot, warmth and share of hardener.</source>
        <translation>Del endurecedor al gel; depende de lote, calor y parte de endurecedor.</translation>
    </message>
    <message>
        <source>The number of an abrasive paper: the higher, the finer.</source>
        <translation>El número de un papel de lija: cuanto más alto, más fino.</translation>
    </message>
    <message>
        <source>A thin veil over the repair that stays in low spots while sanding.</source>
        <translation>Un velo fino sobre la reparación que queda en los bajos al lijar.</translation>
    </message>
    <message>
        <source>Glass cloth or mat laid by hand in resin; the cloth shows at a broken edge.</source>
        <translation>Tejido o mat de vidrio puesto a mano en resina; el tejido se ve en el borde roto.</translation>
    </message>
    <message>
        <source>The paste with peroxide that starts the cure; more of it is not harder.</source>
        <translation>La pasta con peróxido que inicia el curado; más no endurece más.</translation>
    </message>
    <message>
        <source>One layer of filler that is laid, cures and is sanded before the next.</source>
        <translation>Una capa de masilla que se pone, cura y se lija antes de la siguiente.</translation>
    </message>
    <message>
        <source>What was made at one time; its number stands on the package.</source>
        <translation>Lo fabricado de una vez; su número está en el envase.</translation>
    </message>
    <message>
        <source>When edge or sand marks of the repair show through the paint later.</source>
        <translation>Cuando el borde o las rayas de la reparación asoman luego en la pintura.</translation>
    </message>
    <message>
        <source>What works in the hardener; it burns eyes and feeds fire.</source>
        <translation>Lo que actúa en el endurecedor; quema los ojos y aviva el fuego.</translation>
    </message>
    <message>
        <source>A small open bubble in the sanded surface.</source>
        <translation>Una burbuja pequeña abierta en la superficie lijada.</translation>
    </message>
    <message>
        <source>How long a batch can be worked on the board.</source>
        <translation>Cuánto tiempo se puede trabajar una mezcla en la tabla.</translation>
    </message>
    <message>
        <source>The roughness that abrading leaves, for the filler to bite.</source>
        <translation>La rugosidad que deja el lijado, para que la masilla muerda.</translation>
    </message>
    <message>
        <source>The round of filler laid on the board; its width is the measure.</source>
        <translation>La torta redonda de masilla en la tabla; su ancho es la medida.</translation>
    </message>
    <message>
        <source>The firm support of the paper that keeps a surface flat.</source>
        <translation>El apoyo firme de la lija que mantiene plana la superficie.</translation>
    </message>
    <message>
        <source>To dull a surface lightly, so that the next coat holds.</source>
        <translation>Quitar el brillo ligeramente, para que agarre la capa siguiente.</translation>
    </message>
    <message>
        <source>What the maker says of a product, as the program reads it.</source>
        <translation>Lo que el fabricante dice de un producto, como lo lee el programa.</translation>
    </message>
    <message>
        <source>The thin last coat of finishing filler over lift and edge.</source>
        <translation>La última capa delgada de masilla de acabado sobre capa y borde.</translation>
    </message>
    <message>
        <source>Sheet moulding compound: short glass fibre pressed hot in a mould, flecks at the broken edge.</source>
        <translation>Compuesto prensado en caliente con fibra corta de vidrio; motas en el borde roto.</translation>
    </message>
    <message>
        <source>A hole at the tip of a crack, so that it runs no further.</source>
        <translation>Un agujero en la punta de la grieta, para que no siga.</translation>
    </message>
    <message>
        <source>The sticky film that air leaves on a cured face; it clogs paper.</source>
        <translation>Película pegajosa que el aire deja en la cara curada; empasta la lija.</translation>
    </message>
    <message>
        <source>One cloth wipes the solvent on, a clean dry one takes it off before it dries.</source>
        <translation>Un paño aplica el disolvente y otro limpio y seco lo quita antes de que seque.</translation>
    </message>
    <message>
        <source>Two panels joined by welding; only a solid, dressed one is ever filled over.</source>
        <translation>Dos paneles soldados; solo sobre soldadura continua y repasada se masilla.</translation>
    </message>
    <message>
        <source>Working resin in until every fibre is wet and no white is left.</source>
        <translation>Meter la resina hasta que toda fibra esté mojada y sin blanco.</translation>
    </message>
</context>
<context>
    <name>Hands</name>
    <message>
        <source>Hands: job %1 is still being spread.</source>
        <translation>Manos: la orden %1 aún se extiende.</translation>
    </message>
    <message>
        <source>Hands: job %1 needs its edges cleared now.</source>
        <translation>Manos: la orden %1 pide ya bordes limpios.</translation>
    </message>
    <message>
        <source>Hands: job %1 needs its edges cleared in %2.</source>
        <translation>Manos: la orden %1 pide bordes limpios en %2.</translation>
    </message>
    <message>
        <source>Hands: job %1 sands easily only until %2.</source>
        <translation>Manos: la orden %1 se lija fácil solo hasta %2.</translation>
    </message>
    <message>
        <source>spread it</source>
        <translation>extender</translation>
    </message>
    <message>
        <source>clear the edges</source>
        <translation>limpiar los bordes</translation>
    </message>
    <message>
        <source>sand it</source>
        <translation>lijar</translation>
    </message>
    <message>
        <source>Hold this batch back until %1: %2 to go.</source>
        <translation>Retener esta mezcla hasta %1: faltan %2.</translation>
    </message>
    <message>
        <source>Two jobs need hands now: first job %1, %2, then job %3.</source>
        <translation>Dos órdenes piden manos ya: primero %1, %2, luego %3.</translation>
    </message>
    <message>
        <source>In %1 two jobs need hands: first job %2, %3, then job %4.</source>
        <extracomment>%1 is a time, mm:ss; %2 and %4 job numbers; %3 what to do with the first</extracomment>
        <translation>En %1 dos órdenes piden manos: primero %2, %3, luego %4.</translation>
    </message>
    <message>
        <source>two jobs need hands, turn %1</source>
        <translation>dos órdenes piden manos, turno %1</translation>
    </message>
    <message>
        <source>Too hot for this lift: %1 of %2. Let the panel cool and read again.</source>
        <translation>Muy caliente para esta capa: %1 de %2. Dejar enfriar el panel y medir otra vez.</translation>
    </message>
    <message>
        <source>Too thick for this product: %1 of %2. Choose the product planned with.</source>
        <translation>Muy gruesa para este producto: %1 de %2. Usar el producto previsto.</translation>
    </message>
    <message>
        <source>The cure of this product cannot be worked out. Choose the product planned with.</source>
        <translation>El curado de este producto no se puede calcular. Usar el producto previsto.</translation>
    </message>
    <message>
        <source>Not this product here: %1 Choose the product planned with.</source>
        <translation>Este producto aquí no: %1 Usar el producto previsto.</translation>
    </message>
</context>
<context>
    <name>Harm</name>
    <message>
        <source>Polyester filler (styrene)</source>
        <translation>Masilla de poliéster (estireno)</translation>
    </message>
    <message>
        <source>Hardener paste (peroxide)</source>
        <translation>Endurecedor en pasta (peróxido)</translation>
    </message>
    <message>
        <source>Mixed filler left over</source>
        <translation>Masilla mezclada sobrante</translation>
    </message>
    <message>
        <source>Acetone</source>
        <translation>Acetona</translation>
    </message>
    <message>
        <source>Wax and grease remover</source>
        <translation>Desengrasante de ceras y grasas</translation>
    </message>
    <message>
        <source>Glass and laminate dust</source>
        <translation>Polvo de vidrio y laminado</translation>
    </message>
    <message>
        <source>Filler dust</source>
        <translation>Polvo de masilla</translation>
    </message>
    <message>
        <source>Old paint dust (lead, chromate)</source>
        <translation>Polvo de pintura vieja (plomo, cromato)</translation>
    </message>
    <message>
        <source>Steel dust</source>
        <translation>Polvo de acero</translation>
    </message>
    <message>
        <source>Aluminium dust</source>
        <translation>Polvo de aluminio</translation>
    </message>
    <message>
        <source>Compressed air</source>
        <translation>Aire comprimido</translation>
    </message>
    <message>
        <source>Lay-up resin (styrene)</source>
        <translation>Resina de laminar (estireno)</translation>
    </message>
    <message>
        <source>Lay-up catalyst (peroxide)</source>
        <translation>Catalizador de laminar (peróxido)</translation>
    </message>
    <message>
        <source>Accelerator</source>
        <translation>Acelerante</translation>
    </message>
    <message>
        <source>Guide coat (spray can)</source>
        <translation>Guía de lijado (aerosol)</translation>
    </message>
    <message>
        <source>Nitrile against splashes; styrene comes through: change when wet.</source>
        <translation>Nitrilo contra salpicaduras; el estireno lo atraviesa: cambiar si se moja.</translation>
    </message>
    <message>
        <source>Nitrile; change at once when wet.</source>
        <translation>Nitrilo; cambiar enseguida si se moja.</translation>
    </message>
    <message>
        <source>Butyl rubber, or what its sheet names; thin nitrile lasts minutes.</source>
        <translation>Caucho butilo, o lo que diga su ficha; el nitrilo fino dura minutos.</translation>
    </message>
    <message>
        <source>Heat-resistant gloves for a hot lump.</source>
        <translation>Guantes contra el calor para un resto caliente.</translation>
    </message>
    <message>
        <source>Against edges and fibres; nothing loose near a rotating tool.</source>
        <translation>Contra bordes y fibras; nada suelto cerca de una herramienta rotativa.</translation>
    </message>
    <message>
        <source>Thin gloves keep the dust off the skin.</source>
        <translation>Guantes finos que apartan el polvo de la piel.</translation>
    </message>
    <message>
        <source>None for the air itself; goggles and ear protection.</source>
        <translation>Ninguno por el aire; gafas y protección auditiva.</translation>
    </message>
    <message>
        <source>Extraction first; else a mask with organic vapour filters.</source>
        <translation>Primero extracción; si no, mascarilla con filtros de vapor orgánico.</translation>
    </message>
    <message>
        <source>None for the paste alone; the filler beside it has its own.</source>
        <translation>Ninguna por la pasta sola; la masilla tiene la suya.</translation>
    </message>
    <message>
        <source>Extraction first, and a particle mask (P2, N95 or better).</source>
        <translation>Primero aspiración, y mascarilla de partículas (P2, N95 o mejor).</translation>
    </message>
    <message>
        <source>Extraction first, and a P3 or P100 particle filter.</source>
        <translation>Primero aspiración, y filtro de partículas P3 o P100.</translation>
    </message>
    <message>
        <source>Skin: soap and water. Eyes: rinse long. Dizzy: fresh air, doctor.</source>
        <translation>Piel: agua y jabón. Ojos: enjuagar mucho rato. Mareo: aire fresco, médico.</translation>
    </message>
    <message>
        <source>Eyes: rinse at once, 15 minutes, lids open; doctor. Skin: wash off.</source>
        <translation>Ojos: enjuagar ya, 15 minutos, párpados abiertos; médico. Piel: lavar.</translation>
    </message>
    <message>
        <source>Burn: cool under running water, 20 minutes; doctor.</source>
        <translation>Quemadura: enfriar bajo agua corriente, 20 minutos; médico.</translation>
    </message>
    <message>
        <source>Swallowed: no vomiting, doctor at once. Skin: soap and water.</source>
        <translation>Ingerido: no provocar el vómito, médico ya. Piel: agua y jabón.</translation>
    </message>
    <message>
        <source>Eyes: rinse, do not rub. Skin: cool water, then wash.</source>
        <translation>Ojos: enjuagar, no frotar. Piel: agua fresca, luego lavar.</translation>
    </message>
    <message>
        <source>Eyes: do not rub; a splinter that stays is the doctor’s.</source>
        <translation>Ojos: no frotar; si queda una esquirla, al médico.</translation>
    </message>
    <message>
        <source>Wash hands and face before you eat, drink or smoke. Unwell: doctor.</source>
        <translation>Lavar manos y cara antes de comer, beber o fumar. Malestar: médico.</translation>
    </message>
    <message>
        <source>Air under the skin: hospital at once, however small it looks.</source>
        <translation>Aire bajo la piel: al hospital ya, por pequeño que parezca.</translation>
    </message>
    <message>
        <source>Let it cure, spread thin on metal. Uncured it is hazardous waste.</source>
        <translation>Dejar curar en capa fina sobre metal. Sin curar es residuo peligroso.</translation>
    </message>
    <message>
        <source>Never into the bin, never onto sawdust: apart, as its sheet says.</source>
        <translation>Nunca a la basura ni sobre serrín: aparte, como diga su ficha.</translation>
    </message>
    <message>
        <source>Thin on metal or under water, watched till cold; never the bin.</source>
        <translation>Fino sobre metal o bajo agua, vigilado hasta enfriar; nunca a la basura.</translation>
    </message>
    <message>
        <source>Rags into the lidded metal can; nothing down the drain.</source>
        <translation>Trapos al bidón metálico con tapa; nada al desagüe.</translation>
    </message>
    <message>
        <source>A bag of its own, as hazardous waste.</source>
        <translation>Bolsa propia, como residuo peligroso.</translation>
    </message>
    <message>
        <source>Aluminium and steel dust apart and dry: own extractors, own cans.</source>
        <translation>Polvo de aluminio y de acero aparte y seco: aspiradores y bidones propios.</translation>
    </message>
    <message>
        <source>Nothing is left over.</source>
        <translation>No sobra nada.</translation>
    </message>
    <message>
        <source>A container of its own, far from every peroxide.</source>
        <translation>Recipiente propio, lejos de todo peróxido.</translation>
    </message>
    <message>
        <source>Empty cans: never pierced, never into a fire.</source>
        <translation>Botes vacíos: nunca perforar, nunca al fuego.</translation>
    </message>
    <message>
        <source>Extraction on first.</source>
        <translation>Primero la aspiración.</translation>
    </message>
    <message>
        <source>No lamp, no grinder, no spark.</source>
        <translation>Ni lámpara, ni amoladora, ni chispa.</translation>
    </message>
    <message>
        <source>Fresh air.</source>
        <translation>Aire fresco.</translation>
    </message>
    <message>
        <source>Peroxide and accelerator: never together.</source>
        <translation>Peróxido y acelerante: nunca juntos.</translation>
    </message>
    <message>
        <source>Never at skin.</source>
        <translation>Nunca hacia la piel.</translation>
    </message>
    <message>
        <source>What is left over gets hot.</source>
        <translation>Lo que sobra se calienta.</translation>
    </message>
    <message>
        <source>Before the first stroke, not after.</source>
        <translation>Antes de la primera pasada, no después.</translation>
    </message>
    <message>
        <source>Until all of it has flashed off, in the hollows too.</source>
        <translation>Hasta que todo se haya evaporado, también en los huecos.</translation>
    </message>
    <message>
        <source>Extraction where there is vapour.</source>
        <translation>Extracción donde hay vapor.</translation>
    </message>
    <message>
        <source>Not in one cup, not on one shelf: it can go off.</source>
        <translation>Nunca en el mismo vaso ni estante: puede estallar.</translation>
    </message>
    <message>
        <source>Below 30 psi (2 bar), chips guarded: 29 CFR 1910.242(b).</source>
        <translation>Menos de 30 psi (2 bar), pantalla contra partículas: 29 CFR 1910.242(b).</translation>
    </message>
    <message>
        <source>Thin on metal, or under water; never into the bin.</source>
        <translation>Fino sobre metal, o bajo agua; nunca a la basura.</translation>
    </message>
    <message>
        <source>Danger</source>
        <translation>Peligro</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Atención</translation>
    </message>
    <message>
        <source>exploding bomb</source>
        <translation>bomba explotando</translation>
    </message>
    <message>
        <source>flame</source>
        <translation>llama</translation>
    </message>
    <message>
        <source>flame over circle</source>
        <translation>llama sobre círculo</translation>
    </message>
    <message>
        <source>gas cylinder</source>
        <translation>bombona de gas</translation>
    </message>
    <message>
        <source>corrosion</source>
        <translation>corrosión</translation>
    </message>
    <message>
        <source>skull and crossbones</source>
        <translation>calavera y tibias cruzadas</translation>
    </message>
    <message>
        <source>exclamation mark</source>
        <translation>signo de exclamación</translation>
    </message>
    <message>
        <source>health hazard</source>
        <translation>peligro para la salud</translation>
    </message>
    <message>
        <source>environment</source>
        <translation>medio ambiente</translation>
    </message>
    <message>
        <source>In the extractor’s bag, closed; extract first, never sweep.</source>
        <translation>En la bolsa del aspirador, cerrada; primero aspirar, nunca barrer.</translation>
    </message>
</context>
<context>
    <name>HarmScreen</name>
    <message>
        <source>Hazards</source>
        <translation>Peligros</translation>
    </message>
</context>
<context>
    <name>Headless</name>
    <message>
        <source>Dew point, margin, and whether filling may start.</source>
        <translation>Punto de rocío, margen y si se puede masillar.</translation>
    </message>
    <message>
        <source>Air temperature, −30 to 60 °C.</source>
        <translation>Temperatura del aire, −30 a 60 °C.</translation>
    </message>
    <message>
        <source>Relative humidity, above 0 to 100 %.</source>
        <translation>Humedad relativa, más de 0 a 100 %.</translation>
    </message>
    <message>
        <source>Panel temperature, −30 to 100 °C.</source>
        <translation>Temperatura del panel, −30 a 100 °C.</translation>
    </message>
    <message>
        <source>--%1: given %2 times; allowed is once</source>
        <translation>--%1: dado %2 veces; se admite una</translation>
    </message>
    <message>
        <source>--%1: must not be empty; it needs %2</source>
        <translation>--%1: no debe estar vacío; necesita %2</translation>
    </message>
    <message>
        <source>--%1: missing; it needs %2</source>
        <translation>--%1: falta; necesita %2</translation>
    </message>
    <message>
        <source>FILE: missing; it is a file, or - for standard input</source>
        <translation>FILE: falta; es un archivo, o - para la entrada estándar</translation>
    </message>
    <message>
        <source>FILE: must not be empty; it is a file, or - for standard input</source>
        <translation>FILE: no debe estar vacío; es un archivo, o - para la entrada estándar</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: one word too many</source>
        <translation>«%1»: sobra una palabra</translation>
    </message>
    <message>
        <source>Language of the texts: %1; otherwise en.</source>
        <translation>Idioma de los textos: %1; si no, en.</translation>
    </message>
    <message>
        <source>This help.</source>
        <translation>Esta ayuda.</translation>
    </message>
    <message>
        <source>The version.</source>
        <translation>La versión.</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: no such option; --help lists them</source>
        <translation>«%1»: no existe esa opción; --help las lista</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: its value is missing</source>
        <translation>«%1»: falta su valor</translation>
    </message>
    <message>
        <source>Usage: %1</source>
        <translation>Uso: %1</translation>
    </message>
    <message>
        <source>Without a command the bench opens.</source>
        <translation>Sin comando se abre el puesto.</translation>
    </message>
    <message>
        <source>The log that the bench opens.</source>
        <translation>El registro que abre el puesto.</translation>
    </message>
    <message>
        <source>A window of this size instead of the full screen.</source>
        <translation>Una ventana de este tamaño en vez de pantalla completa.</translation>
    </message>
    <message>
        <source>standard output cannot be written</source>
        <translation>no se puede escribir en la salida estándar</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: no such command; there is: %2</source>
        <translation>«%1»: no existe ese comando; hay: %2</translation>
    </message>
    <message>
        <source>A defect of the program: %1</source>
        <translation>Un defecto del programa: %1</translation>
    </message>
    <message>
        <source>FILE: &apos;%1&apos; cannot be read: %2</source>
        <translation>FILE: no se puede leer «%1»: %2</translation>
    </message>
    <message>
        <source>%1: it breaks here: %2: %3</source>
        <translation>%1: se rompe aquí: %2: %3</translation>
    </message>
    <message>
        <source>a name that no file has yet</source>
        <translation>un nombre aún sin archivo</translation>
    </message>
    <message>
        <source>--to: &apos;%1&apos; cannot be written: %2</source>
        <translation>--to: no se puede escribir «%1»: %2</translation>
    </message>
    <message>
        <source>Whether a log holds, and the first place where it breaks.</source>
        <translation>Si un registro es íntegro y el primer lugar donde se rompe.</translation>
    </message>
    <message>
        <source>The log.</source>
        <translation>El registro.</translation>
    </message>
    <message>
        <source>A head that the chain must hold: 64 hexadecimal digits.</source>
        <translation>Una cabeza que la cadena debe contener: 64 cifras hexadecimales.</translation>
    </message>
    <message>
        <source>A consistent copy of a log, verified after writing.</source>
        <translation>Copia coherente de un registro, verificada tras escribirla.</translation>
    </message>
    <message>
        <source>The log; the program may be running on it.</source>
        <translation>El registro; el programa puede estar usándolo.</translation>
    </message>
    <message>
        <source>The copy; a file that is there is never overwritten.</source>
        <translation>La copia; nunca se sobrescribe un archivo existente.</translation>
    </message>
    <message>
        <source>Bead and both masses for a puddle, or puddle and bead for a mass.</source>
        <translation>Cordón y ambas masas para una torta, o torta y cordón para una masa.</translation>
    </message>
    <message>
        <source>The puddle across, 5 to 500 mm.</source>
        <translation>Diámetro de la torta, 5 a 500 mm.</translation>
    </message>
    <message>
        <source>The mass of filler instead, 0.1 to 20000 g.</source>
        <translation>En su lugar, la masa de masilla, 0.1 a 20000 g.</translation>
    </message>
    <message>
        <source>The product sheet, by id or class; otherwise mixed strand.</source>
        <translation>La ficha de producto, por id o clase; si no, fibra mixta.</translation>
    </message>
    <message>
        <source>Plans the repair that FILE describes.</source>
        <translation>Planifica la reparación que describe FILE.</translation>
    </message>
    <message>
        <source>At %1 s the reaction runs away faster than time can be told apart.</source>
        <translation>A los %1 s la reacción se dispara más rápido de lo que el tiempo se distingue.</translation>
    </message>
    <message>
        <source>At %1 s the steps allowed were used up.</source>
        <translation>A los %1 s se agotaron los pasos permitidos.</translation>
    </message>
    <message>
        <source>Solves the cure case in FILE.</source>
        <translation>Resuelve el caso de curado de FILE.</translation>
    </message>
    <message>
        <source>--pdf: &apos;%1&apos; cannot be written: %2</source>
        <translation>--pdf: no se puede escribir «%1»: %2</translation>
    </message>
    <message>
        <source>One day&apos;s repairs with their records, as JSON, CSV or on paper.</source>
        <translation>Las reparaciones de un día con su registro, en JSON, CSV o papel.</translation>
    </message>
    <message>
        <source>JSON on standard output: the whole records.</source>
        <translation>JSON en la salida estándar: registros enteros.</translation>
    </message>
    <message>
        <source>CSV on standard output: one row a repair.</source>
        <translation>CSV en la salida estándar: una fila por reparación.</translation>
    </message>
    <message>
        <source>A PDF; a file that is there is never overwritten.</source>
        <translation>Un PDF; nunca se sobrescribe un archivo existente.</translation>
    </message>
    <message>
        <source>Of the PDF: a4 or letter; otherwise a4.</source>
        <translation>Del PDF: a4 o letter; si no, a4.</translation>
    </message>
    <message>
        <source>Of the PDF: metric or us; otherwise metric.</source>
        <translation>Del PDF: metric o us; si no, metric.</translation>
    </message>
    <message>
        <source>%1: refused, %2</source>
        <translation>%1: denegado, %2</translation>
    </message>
    <message>
        <source>; the next PIN is looked at in %1 s</source>
        <translation>; el próximo PIN se comprueba en %1 s</translation>
    </message>
    <message>
        <source>the refusal could not be written into the log</source>
        <translation>la denegación no se pudo escribir en el registro</translation>
    </message>
    <message>
        <source>A supervisor&apos;s act on a log that no bench has open; the PIN on standard input.</source>
        <translation>Una acción del supervisor en un registro que ningún puesto tiene abierto; el PIN por la entrada estándar.</translation>
    </message>
    <message>
        <source>Who does it.</source>
        <translation>Quién lo hace.</translation>
    </message>
    <message>
        <source>Of override: the stop.</source>
        <translation>De override: el alto.</translation>
    </message>
    <message>
        <source>Of correct: the entry that is put right.</source>
        <translation>De correct: la entrada que se corrige.</translation>
    </message>
    <message>
        <source>Of forget: the product&apos;s sheet.</source>
        <translation>De forget: la ficha del producto.</translation>
    </message>
    <message>
        <source>Of forget: the hardener&apos;s lot.</source>
        <translation>De forget: el lote del endurecedor.</translation>
    </message>
    <message>
        <source>%1: cannot be written</source>
        <translation>%1: no se puede escribir</translation>
    </message>
    <message>
        <source>pin: allowed are %1 to %2 digits, neither all alike nor in their order</source>
        <translation>pin: se admiten de %1 a %2 cifras, ni todas iguales ni en su orden</translation>
    </message>
    <message>
        <source>bench %1: the two logs tell different things from entry %2 on; its entries were left as they are here</source>
        <translation>puesto %1: a partir de la entrada %2 los dos registros cuentan cosas distintas; sus entradas quedaron como están aquí</translation>
    </message>
    <message>
        <source>--folder: &apos;%1&apos; cannot be written: %2</source>
        <translation>--folder: no se puede escribir «%1»: %2</translation>
    </message>
    <message>
        <source>not all of the log that was there could be taken along</source>
        <translation>no se pudo llevar todo lo que había en el registro anterior</translation>
    </message>
    <message>
        <source>%1 entries do not follow on the rest; they are in %2</source>
        <translation>%1 entradas no siguen a las demás; están en %2</translation>
    </message>
    <message>
        <source>A verified backup into a folder; the oldest there are given up.</source>
        <translation>Una copia comprobada en una carpeta; las más antiguas de allí se eliminan.</translation>
    </message>
    <message>
        <source>The folder: a stick, a share.</source>
        <translation>La carpeta: una memoria, un recurso compartido.</translation>
    </message>
    <message>
        <source>How many backups stay: 2 to 1000, 14 if not told.</source>
        <translation>Cuántas copias quedan: de 2 a 1000; 14 si no se indica.</translation>
    </message>
    <message>
        <source>Brings another bench’s log in; a second time adds nothing.</source>
        <translation>Incorpora el registro de otro puesto; una segunda vez no añade nada.</translation>
    </message>
    <message>
        <source>The log that takes in; no bench has it open.</source>
        <translation>El registro que recibe; ningún puesto lo tiene abierto.</translation>
    </message>
    <message>
        <source>The log that is brought in; it is only read.</source>
        <translation>El registro que se incorpora; solo se lee.</translation>
    </message>
    <message>
        <source>Only says what would be.</source>
        <translation>Solo dice lo que pasaría.</translation>
    </message>
    <message>
        <source>A backup in the place of the log; the PIN on standard input, if one is set.</source>
        <translation>Una copia en el lugar del registro; el PIN por la entrada estándar, si hay uno.</translation>
    </message>
    <message>
        <source>The log; it is kept in a folder beside.</source>
        <translation>El registro; se conserva en una carpeta al lado.</translation>
    </message>
    <message>
        <source>The backup.</source>
        <translation>La copia.</translation>
    </message>
    <message>
        <source>What can be read of a damaged log, as a new one.</source>
        <translation>Lo que se puede leer de un registro dañado, como uno nuevo.</translation>
    </message>
    <message>
        <source>The damaged log; it is only read.</source>
        <translation>El registro dañado; solo se lee.</translation>
    </message>
    <message>
        <source>The new log; a file that is there is never overwritten.</source>
        <translation>El registro nuevo; un archivo existente nunca se sobrescribe.</translation>
    </message>
    <message>
        <source>a folder that is there</source>
        <translation>una carpeta que exista</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; cannot be written: %3</source>
        <translation>%1: no se puede escribir «%2»: %3</translation>
    </message>
    <message>
        <source>The day, by the bench&apos;s own clock; or today or yesterday, by this machine&apos;s.</source>
        <translation>El día, según el reloj del puesto; o today o yesterday, según el de este equipo.</translation>
    </message>
    <message>
        <source>All three as day-YYYY-MM-DD.pdf, .csv and .json in a folder; none where one of them is there already.</source>
        <translation>Los tres como day-YYYY-MM-DD.pdf, .csv y .json en una carpeta; ninguno si ya existe uno de ellos.</translation>
    </message>
    <message>
        <source>sign_off, return, override, correct, forget or new_pin.</source>
        <translation>sign_off, return, override, correct, forget o new_pin.</translation>
    </message>
    <message>
        <source>Of sign_off, return, override, correct: the repair.</source>
        <translation>De sign_off, return, override, correct: la reparación.</translation>
    </message>
    <message>
        <source>Of correct: what is right; of return: what is to be mended.</source>
        <translation>De correct: lo correcto; de return: qué hay que arreglar.</translation>
    </message>
    <message>
        <source>Of return, override and forget: why.</source>
        <translation>De return, override y forget: por qué.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>The limits are the product sheet’s; where it is silent, the shop’s own assumptions.</source>
        <translation>Los límites son de la ficha del producto; si calla, los supuestos del taller.</translation>
    </message>
    <message>
        <source>The decision table says what is filled with what; each answer carries its reason.</source>
        <translation>La tabla de decisión dice qué se masilla con qué; cada respuesta lleva su razón.</translation>
    </message>
    <message>
        <source>The limits are the shop’s own and stand in bench set-up with their reason.</source>
        <translation>Los límites son del taller y están en los ajustes del puesto, con su razón.</translation>
    </message>
    <message>
        <source>The safety data sheet says what protects you; it comes before this program.</source>
        <translation>La ficha de seguridad dice cómo protegerse; va antes que este programa.</translation>
    </message>
    <message>
        <source>The vehicle maker’s repair manual, local codes and licensed practice come first.</source>
        <translation>El manual del fabricante del vehículo, las normas y la práctica autorizada van primero.</translation>
    </message>
    <message>
        <source>What was tapped stays in the log; a mistake is put right by a new entry.</source>
        <translation>Lo pulsado queda en el registro; un error se corrige con otra entrada.</translation>
    </message>
    <message>
        <source>Dew margin and range stand in bench set-up; a product sheet may ask for more.</source>
        <translation>Margen de rocío y rango están en los ajustes del puesto; una ficha puede pedir más.</translation>
    </message>
    <message>
        <source>Times come from sheet, air, panel and lot; what you see on the filler wins.</source>
        <translation>Los tiempos salen de ficha, aire, panel y lote; gana lo que se ve en la masilla.</translation>
    </message>
    <message>
        <source>Nothing of practice goes into the log of the shop.</source>
        <translation>Nada de la práctica va al registro del taller.</translation>
    </message>
    <message>
        <source>Where the bench stands</source>
        <translation>Cómo está el puesto</translation>
    </message>
    <message>
        <source>Every open repair has a card here; the running ones come first.</source>
        <translation>Cada reparación abierta tiene aquí su tarjeta; las que corren van primero.</translation>
    </message>
    <message>
        <source>Tap a card to go on at its next step, or take in a panel.</source>
        <translation>Pulsar una tarjeta para seguir en su próximo paso, o recibir un panel.</translation>
    </message>
    <message>
        <source>With nobody named at the bench, the log cannot say who did it.</source>
        <translation>Si no hay nadie nombrado en el puesto, el registro no dice quién lo hizo.</translation>
    </message>
    <message>
        <source>Taking in a panel</source>
        <translation>Recibir un panel</translation>
    </message>
    <message>
        <source>A repair begins with the job number and the name of the panel.</source>
        <translation>Una reparación empieza con el número de orden y el nombre del panel.</translation>
    </message>
    <message>
        <source>Key the number or scan it, then tap the panel.</source>
        <translation>Teclear el número o escanearlo, y pulsar el panel.</translation>
    </message>
    <message>
        <source>Two panels of one job are two repairs; one name for both mixes them up.</source>
        <translation>Dos paneles de una orden son dos reparaciones; un solo nombre las confunde.</translation>
    </message>
    <message>
        <source>Who is at the bench</source>
        <translation>Quién está en el puesto</translation>
    </message>
    <message>
        <source>Every act in the log carries the name that stands here.</source>
        <translation>Cada acción del registro lleva el nombre que está aquí.</translation>
    </message>
    <message>
        <source>Tap your name when you take the bench over.</source>
        <translation>Pulsar su nombre al tomar el puesto.</translation>
    </message>
    <message>
        <source>A name left over from the last shift signs for work it did not do.</source>
        <translation>Un nombre que queda del turno anterior firma un trabajo ajeno.</translation>
    </message>
    <message>
        <source>What the panel is made of</source>
        <translation>De qué está hecho el panel</translation>
    </message>
    <message>
        <source>The material decides whether it is filled, and with which filler.</source>
        <translation>El material decide si se masilla y con qué masilla.</translation>
    </message>
    <message>
        <source>Look at the broken edge and the rear face; use what tells it for sure.</source>
        <translation>Mirar el borde roto y la cara trasera; usar lo que lo demuestra.</translation>
    </message>
    <message>
        <source>Paint hides it. Guessed wrong, the filler lets go later.</source>
        <translation>La pintura lo esconde. Si se adivina mal, la masilla se suelta después.</translation>
    </message>
    <message>
        <source>What the damage is</source>
        <translation>Qué daño es</translation>
    </message>
    <message>
        <source>Kind of damage, weld or bond decide between filling and another repair.</source>
        <translation>El tipo de daño, la soldadura o el pegado deciden entre masillar y otra reparación.</translation>
    </message>
    <message>
        <source>Look from both faces where you can; a crack often runs on behind.</source>
        <translation>Mirar por las dos caras si se puede; una grieta suele seguir por detrás.</translation>
    </message>
    <message>
        <source>A joint is no damage: filler over it cracks.</source>
        <translation>Una junta no es un daño: la masilla encima se agrieta.</translation>
    </message>
    <message>
        <source>How large it is</source>
        <translation>Qué tamaño tiene</translation>
    </message>
    <message>
        <source>From the size follow the opening, the lifts and the masses of the plan.</source>
        <translation>Del tamaño salen la abertura, las capas y las masas del plan.</translation>
    </message>
    <message>
        <source>Measure the damage itself, not the bevel; the program adds that.</source>
        <translation>Medir el daño mismo, no el bisel; el programa lo añade.</translation>
    </message>
    <message>
        <source>Measured too small, there is too little in the puddle and you mix again.</source>
        <translation>Si se mide de menos, la torta es pequeña y se mezcla otra vez.</translation>
    </message>
    <message>
        <source>What lies on it, and where it is</source>
        <translation>Qué hay encima y dónde está</translation>
    </message>
    <message>
        <source>Filler holds on sound, bare, dry material only; the place must carry no load.</source>
        <translation>La masilla agarra solo en material sano, desnudo y seco, donde no haya carga.</translation>
    </message>
    <message>
        <source>Say what is there now; the plan takes it off in its steps.</source>
        <translation>Decir lo que hay ahora; el plan lo quita en sus pasos.</translation>
    </message>
    <message>
        <source>Damp or a soft coat below stays there, and the repair comes off.</source>
        <translation>La humedad o una capa blanda de debajo se queda, y la reparación se levanta.</translation>
    </message>
    <message>
        <source>Air, panel and humidity</source>
        <translation>Aire, panel y humedad</translation>
    </message>
    <message>
        <source>The reading says whether dew may form and how fast the filler gels.</source>
        <translation>La lectura dice si puede haber rocío y lo rápido que gelifica la masilla.</translation>
    </message>
    <message>
        <source>Probe on the panel beside the damage; wait until it stands still.</source>
        <translation>Sonda en el panel junto al daño; esperar a que se estabilice.</translation>
    </message>
    <message>
        <source>A reading of this morning says nothing about now.</source>
        <translation>Una lectura de esta mañana no dice nada de ahora.</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>El plan</translation>
    </message>
    <message>
        <source>It says how many lifts and batches, with what, and how long it takes.</source>
        <translation>Dice cuántas capas y mezclas, con qué y cuánto dura.</translation>
    </message>
    <message>
        <source>Read the reasons, look at the section, then accept it.</source>
        <translation>Leer las razones, mirar la sección y aceptarlo.</translation>
    </message>
    <message>
        <source>A wrong answer makes a wrong plan: change the answer, not the work.</source>
        <translation>Una respuesta errónea da un plan erróneo: cambiar la respuesta, no el trabajo.</translation>
    </message>
    <message>
        <source>Stop: not to be filled</source>
        <translation>Alto: no se masilla</translation>
    </message>
    <message>
        <source>It names what is wrong, why, and what to do instead.</source>
        <translation>Nombra lo que está mal, por qué y qué hacer en su lugar.</translation>
    </message>
    <message>
        <source>Park the repair and hand it to the place that is named.</source>
        <translation>Apartar la reparación y llevarla al lugar que se indica.</translation>
    </message>
    <message>
        <source>Filled all the same it looks right and fails where nobody sees it.</source>
        <translation>Si se masilla igual, parece bien y falla donde nadie lo ve.</translation>
    </message>
    <message>
        <source>Gear and tools</source>
        <translation>Equipo y herramientas</translation>
    </message>
    <message>
        <source>What protects you is on before the first dust or vapour.</source>
        <translation>Lo que protege está puesto antes del primer polvo o vapor.</translation>
    </message>
    <message>
        <source>Extraction on, then goggles, mask, gloves and closed sleeves.</source>
        <translation>Aspiración en marcha; luego gafas, mascarilla, guantes y mangas cerradas.</translation>
    </message>
    <message>
        <source>A disc that was on steel carries grit into aluminium, and it corrodes.</source>
        <translation>Un disco usado en acero lleva grano al aluminio, y se corroe.</translation>
    </message>
    <message>
        <source>Clean and dry</source>
        <translation>Limpio y seco</translation>
    </message>
    <message>
        <source>Wax, dust and solvent left behind keep the filler from holding.</source>
        <translation>La cera, el polvo y el disolvente que quedan impiden que la masilla agarre.</translation>
    </message>
    <message>
        <source>Two cloths, one way; then let it flash off until nothing smells.</source>
        <translation>Dos paños, en un sentido; luego dejar evaporar hasta que no huela.</translation>
    </message>
    <message>
        <source>Sanding before degreasing rubs the wax in.</source>
        <translation>Lijar antes de desengrasar mete la cera dentro.</translation>
    </message>
    <message>
        <source>Down to sound material</source>
        <translation>Hasta el material sano</translation>
    </message>
    <message>
        <source>Paint, loose fibre and crack tips come off, so that the filler sits on what holds.</source>
        <translation>Fuera pintura, fibra suelta y puntas de grieta: la masilla se apoya en lo firme.</translation>
    </message>
    <message>
        <source>Cut until the edge is firm all round; drill the tips the light shows.</source>
        <translation>Cortar hasta un borde firme; taladrar las puntas que muestra la luz.</translation>
    </message>
    <message>
        <source>A tip that is missed runs on under the filler.</source>
        <translation>Una punta olvidada sigue corriendo bajo la masilla.</translation>
    </message>
    <message>
        <source>The bevel</source>
        <translation>El bisel</translation>
    </message>
    <message>
        <source>A long, flat run gives the filler area to hold on and no step to show.</source>
        <translation>Una rampa larga y llana da superficie a la masilla y no deja escalón.</translation>
    </message>
    <message>
        <source>Grind to the run on the screen, even all round, no deeper than the damage.</source>
        <translation>Amolar hasta la medida de la pantalla, igual alrededor, no más hondo que el daño.</translation>
    </message>
    <message>
        <source>Too steep, and the edge maps through the paint later.</source>
        <translation>Demasiado empinado, y el borde se marca luego en la pintura.</translation>
    </message>
    <message>
        <source>Back-up and dam</source>
        <translation>Respaldo y tope</translation>
    </message>
    <message>
        <source>A hole needs something behind it before filler goes in.</source>
        <translation>Un agujero necesita algo detrás antes de la masilla.</translation>
    </message>
    <message>
        <source>Abrade the back, lap the backing past the edge, let it cure first.</source>
        <translation>Lijar el dorso, solapar el respaldo pasado el borde, dejar curar antes.</translation>
    </message>
    <message>
        <source>A dam only holds the filler in; it carries nothing and comes off again.</source>
        <translation>Un tope solo retiene la masilla; no aguanta nada y se quita.</translation>
    </message>
    <message>
        <source>Abrading for grip</source>
        <translation>Lijar para que agarre</translation>
    </message>
    <message>
        <source>Scratches of the grit named give the filler its hold.</source>
        <translation>Las rayas del grano indicado dan agarre a la masilla.</translation>
    </message>
    <message>
        <source>Dull all over, into the corners and past the edge; then dust off.</source>
        <translation>Mate en todo, en las esquinas y más allá del borde; luego desempolvar.</translation>
    </message>
    <message>
        <source>A shiny spot is a spot where it lets go.</source>
        <translation>Un punto brillante es un punto donde se suelta.</translation>
    </message>
    <message>
        <source>The mix</source>
        <translation>La mezcla</translation>
    </message>
    <message>
        <source>Puddle and bead give the mass and the share of hardener without guessing.</source>
        <translation>Torta y cordón dan la masa y la parte de endurecedor sin adivinar.</translation>
    </message>
    <message>
        <source>Lay both to size, tap hardener in, knead without air until one colour.</source>
        <translation>Poner ambos a medida, pulsar «Con endurecedor» y amasar sin aire a color parejo.</translation>
    </message>
    <message>
        <source>More hardener does not make it harder: it stains, gets hot and crazes.</source>
        <translation>Más endurecedor no la hace más dura: mancha, se calienta y se cuartea.</translation>
    </message>
    <message>
        <source>Mixing by weight</source>
        <translation>Mezclar por peso</translation>
    </message>
    <message>
        <source>The scale says what is on the board; the hardener follows from that.</source>
        <translation>La balanza dice lo que hay en la tabla; de ahí sale el endurecedor.</translation>
    </message>
    <message>
        <source>Tare the board, lay the filler, take the figure over, weigh the hardener.</source>
        <translation>Tarar la tabla, poner la masilla, tomar la cifra y pesar el endurecedor.</translation>
    </message>
    <message>
        <source>Forgetting the tare makes every figure too large.</source>
        <translation>Olvidar la tara hace demasiado grande cada cifra.</translation>
    </message>
    <message>
        <source>Lots and what they teach</source>
        <translation>Lotes y lo que enseñan</translation>
    </message>
    <message>
        <source>Every lot gels a little faster or slower than its sheet says.</source>
        <translation>Cada lote gelifica algo más rápido o lento que su ficha.</translation>
    </message>
    <message>
        <source>Tell which lot is in the hand; tap when it has gelled.</source>
        <translation>Indicar qué lote está en uso; pulsar cuando haya gelificado.</translation>
    </message>
    <message>
        <source>A wrong lot number teaches the wrong lot.</source>
        <translation>Un número falso enseña al lote equivocado.</translation>
    </message>
    <message>
        <source>Spreading</source>
        <translation>Extender</translation>
    </message>
    <message>
        <source>The filler has to be in place and its edges clear before it gels.</source>
        <translation>La masilla debe estar puesta y con bordes limpios antes de gelificar.</translation>
    </message>
    <message>
        <source>Press the first coat in, then build up; clear the edges when the clock says so.</source>
        <translation>Apretar la primera pasada y cargar; limpiar los bordes cuando lo diga el reloj.</translation>
    </message>
    <message>
        <source>Worked past gel it tears and drags; what is on the board is waste by then.</source>
        <translation>Tras el gel se rasga y se arrastra; lo de la tabla ya es residuo.</translation>
    </message>
    <message>
        <source>Hands off while it cures</source>
        <translation>Sin tocar mientras cura</translation>
    </message>
    <message>
        <source>Between gel and sanding the filler gets warm and hard.</source>
        <translation>Entre el gel y el lijado la masilla se calienta y endurece.</translation>
    </message>
    <message>
        <source>Leave it alone, no lamp; look after another repair meanwhile.</source>
        <translation>No tocarla, sin lámpara; atender otra reparación mientras tanto.</translation>
    </message>
    <message>
        <source>What is left over gets hot as well: spread it thin, away from what burns.</source>
        <translation>El sobrante también se calienta: extenderlo fino, lejos de lo que arde.</translation>
    </message>
    <message>
        <source>Sanding the lift</source>
        <translation>Lijar la capa</translation>
    </message>
    <message>
        <source>Each lift is sanded level so that the next one holds on it.</source>
        <translation>Cada capa se lija a nivel para que la siguiente agarre.</translation>
    </message>
    <message>
        <source>Try with the nail; sand on a block with extraction on; then dust off.</source>
        <translation>Probar con la uña; lijar con taco y aspiración; luego desempolvar.</translation>
    </message>
    <message>
        <source>Sanded too soon it clogs the paper and tears out at the edge.</source>
        <translation>Lijada demasiado pronto, empasta el papel y se arranca del borde.</translation>
    </message>
    <message>
        <source>Turning the panel</source>
        <translation>Voltear el panel</translation>
    </message>
    <message>
        <source>The other face is filled the same way; the dam comes off first.</source>
        <translation>La otra cara se masilla igual; primero se quita el tope.</translation>
    </message>
    <message>
        <source>Two people for a large panel; lay it on something soft.</source>
        <translation>Dos personas para un panel grande; ponerlo sobre algo blando.</translation>
    </message>
    <message>
        <source>Residue of the dam below the filler is a place without hold.</source>
        <translation>Donde quedan restos del tope, la masilla no agarra.</translation>
    </message>
    <message>
        <source>To the contour</source>
        <translation>Hasta el contorno</translation>
    </message>
    <message>
        <source>The guide coat shows what is high and low before the primer does.</source>
        <translation>La guía de lijado muestra altos y bajos antes que la imprimación.</translation>
    </message>
    <message>
        <source>Sand on a block until it is gone; go finer only when it is level.</source>
        <translation>Lijar con taco hasta que desaparezca; afinar solo si está a nivel.</translation>
    </message>
    <message>
        <source>Bare hands and soft pads follow a low spot instead of showing it.</source>
        <translation>Mano y almohadilla blanda siguen el bajo en vez de mostrarlo.</translation>
    </message>
    <message>
        <source>Looking before the primer</source>
        <translation>Mirar antes de la imprimación</translation>
    </message>
    <message>
        <source>What is found now costs minutes; under paint it costs the job.</source>
        <translation>Lo que se ve ahora cuesta minutos; bajo la pintura, todo el trabajo.</translation>
    </message>
    <message>
        <source>Raking light from the side, a clean dry hand, both ways.</source>
        <translation>Luz rasante de lado, mano limpia y seca, en ambos sentidos.</translation>
    </message>
    <message>
        <source>A pinhole that is painted over comes back as a crater.</source>
        <translation>Un poro pintado vuelve como cráter.</translation>
    </message>
    <message>
        <source>Handing over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Six tests say what was found; the paint shop goes by them.</source>
        <translation>Seis pruebas dicen lo encontrado; pintura se guía por ellas.</translation>
    </message>
    <message>
        <source>Do each on the panel, then tap what you found.</source>
        <translation>Hacer cada una en el panel y pulsar lo encontrado.</translation>
    </message>
    <message>
        <source>Tapped without testing, the record tells something that nobody saw.</source>
        <translation>Si se pulsa sin probar, el registro cuenta lo que nadie vio.</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>The repair is closed; the supervisor looks through its record.</source>
        <translation>La reparación está cerrada; el supervisor revisa su registro.</translation>
    </message>
    <message>
        <source>Its record and job sheet are under today’s work.</source>
        <translation>Su registro y su hoja están en el trabajo de hoy.</translation>
    </message>
    <message>
        <source>A fault that shows later is a rework, taken in anew.</source>
        <translation>Un fallo posterior es un repaso, recibido de nuevo.</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Apartado</translation>
    </message>
    <message>
        <source>A repair that cannot go on here waits, with its reason and its place.</source>
        <translation>Una reparación que no puede seguir espera, con su razón y su lugar.</translation>
    </message>
    <message>
        <source>Say why and where it goes; take it up again from its card.</source>
        <translation>Decir por qué y adónde va; retomarla desde su tarjeta.</translation>
    </message>
    <message>
        <source>A panel that was away may be damp or warm: it is read again.</source>
        <translation>Un panel que salió puede estar húmedo o caliente: se mide otra vez.</translation>
    </message>
    <message>
        <source>Returned by the supervisor</source>
        <translation>Devuelto por el supervisor</translation>
    </message>
    <message>
        <source>The supervisor found something; what it was stands here.</source>
        <translation>El supervisor encontró algo; aquí está qué.</translation>
    </message>
    <message>
        <source>Begin the rework: it is a repair of its own, from the first question.</source>
        <translation>Empezar el repaso: es una reparación propia, desde la primera pregunta.</translation>
    </message>
    <message>
        <source>Mended without a record it is not there at the next look.</source>
        <translation>Arreglado sin registro, no consta en la próxima revisión.</translation>
    </message>
    <message>
        <source>Stop and ask</source>
        <translation>Parar y preguntar</translation>
    </message>
    <message>
        <source>Whoever is in doubt stops here; running clocks go on.</source>
        <translation>Quien duda se para aquí; los relojes siguen.</translation>
    </message>
    <message>
        <source>Take a photo, write a note, or park the repair and fetch the supervisor.</source>
        <translation>Tomar una foto, escribir una nota, o apartar y llamar al supervisor.</translation>
    </message>
    <message>
        <source>Going on in doubt costs more than the wait.</source>
        <translation>Seguir con dudas cuesta más que esperar.</translation>
    </message>
    <message>
        <source>What can hurt here</source>
        <translation>Qué puede hacer daño aquí</translation>
    </message>
    <message>
        <source>It shows label, gloves, mask, first aid and waste of each material of this step.</source>
        <translation>Muestra etiqueta, guantes, mascarilla, primeros auxilios y residuos por material del paso.</translation>
    </message>
    <message>
        <source>Page through before you open the tin.</source>
        <translation>Pasar las páginas antes de abrir el bote.</translation>
    </message>
    <message>
        <source>What stands here in general does not replace the sheet of the product.</source>
        <translation>Lo general de aquí no sustituye la ficha del producto.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Four photos show what no word does: as found, bare, filled, guide coat.</source>
        <translation>Cuatro fotos muestran lo que no dicen palabras: como se halló, desnudo, masillado, guía.</translation>
    </message>
    <message>
        <source>Same place, same light, something beside it for the size.</source>
        <translation>Mismo lugar, misma luz, algo al lado para la medida.</translation>
    </message>
    <message>
        <source>A photo taken after the filler shows nothing of what lies below.</source>
        <translation>Una foto tras la masilla no muestra lo de debajo.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>A note keeps what no step asks: an old repair, a warmed panel.</source>
        <translation>Una nota guarda lo que ningún paso pregunta: una reparación vieja, un panel calentado.</translation>
    </message>
    <message>
        <source>Tap a sentence, or write your own words.</source>
        <translation>Pulsar una frase o escribir la propia.</translation>
    </message>
    <message>
        <source>A note cannot be taken back; write a second one.</source>
        <translation>Una nota no se retira; escribir otra.</translation>
    </message>
    <message>
        <source>Today’s work</source>
        <translation>El trabajo de hoy</translation>
    </message>
    <message>
        <source>Every repair that was worked on today, with how it stands.</source>
        <translation>Cada reparación trabajada hoy, con su estado.</translation>
    </message>
    <message>
        <source>Tap one for its record; look for older ones by a word or a lot.</source>
        <translation>Pulsar una para ver su registro; buscar anteriores por palabra o lote.</translation>
    </message>
    <message>
        <source>A repair without a sign-off stays on the supervisor’s list.</source>
        <translation>Una reparación sin firma sigue en la lista del supervisor.</translation>
    </message>
    <message>
        <source>The record</source>
        <translation>El registro de la reparación</translation>
    </message>
    <message>
        <source>It shows what was done, when and by whom, and where limits were left.</source>
        <translation>Muestra qué se hizo, cuándo y por quién, y dónde se salió de los límites.</translation>
    </message>
    <message>
        <source>Page through; time line and lots are a tap away.</source>
        <translation>Pasar las páginas; la cronología y los lotes están a un toque.</translation>
    </message>
    <message>
        <source>Nothing here can be wiped out; a correction stands beside what it corrects.</source>
        <translation>Nada se borra; una corrección queda junto a lo corregido.</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>En papel</translation>
    </message>
    <message>
        <source>The same figures as on the glass, to go with the panel or into a folder.</source>
        <translation>Las mismas cifras que en la pantalla, para el panel o la carpeta.</translation>
    </message>
    <message>
        <source>Choose the paper, then a folder or the printer.</source>
        <translation>Elegir el papel y luego una carpeta o la impresora.</translation>
    </message>
    <message>
        <source>A paper is of the moment it was made; the log goes on.</source>
        <translation>Un papel es de su momento; el registro sigue.</translation>
    </message>
    <message>
        <source>The air</source>
        <translation>El aire</translation>
    </message>
    <message>
        <source>It shows how far the panel is from dew, and what vapours do in this room.</source>
        <translation>Muestra a cuánto está el panel del rocío y qué hacen los vapores aquí.</translation>
    </message>
    <message>
        <source>Read air, panel and humidity close to the repair.</source>
        <translation>Medir aire, panel y humedad junto a la reparación.</translation>
    </message>
    <message>
        <source>The room is worked out as one box; near the tin it is always worse.</source>
        <translation>El local se calcula como una caja; junto al bote siempre es peor.</translation>
    </message>
    <message>
        <source>The supervisor’s acts</source>
        <translation>Acciones del supervisor</translation>
    </message>
    <message>
        <source>Overriding, correcting and signing off are the supervisor’s, by PIN.</source>
        <translation>Anular, corregir y firmar son del supervisor, con PIN.</translation>
    </message>
    <message>
        <source>Say the reason first; it stands in the log with the act.</source>
        <translation>Decir primero la razón; queda en el registro con la acción.</translation>
    </message>
    <message>
        <source>A PIN that is known to all signs for all.</source>
        <translation>Un PIN que todos conocen firma por todos.</translation>
    </message>
    <message>
        <source>Looking through the day</source>
        <translation>Repasar el día</translation>
    </message>
    <message>
        <source>What needs eyes stands on top: deviations, gaps, what is not signed off.</source>
        <translation>Arriba lo que pide ojos: desviaciones, huecos, lo no firmado.</translation>
    </message>
    <message>
        <source>Open a repair, read what its record lacks, sign it off or return it.</source>
        <translation>Abrir una reparación, leer lo que falta, firmarla o devolverla.</translation>
    </message>
    <message>
        <source>Signed off unread, a deviation is nobody’s any more.</source>
        <translation>Firmada sin leer, una desviación ya no es de nadie.</translation>
    </message>
    <message>
        <source>Figures over time</source>
        <translation>Cifras en el tiempo</translation>
    </message>
    <message>
        <source>Each figure answers one question over many repairs.</source>
        <translation>Cada cifra responde a una pregunta sobre muchas reparaciones.</translation>
    </message>
    <message>
        <source>Choose the period, tap a figure, then a bar to see its repairs.</source>
        <translation>Elegir el periodo, pulsar una cifra y una barra para ver sus reparaciones.</translation>
    </message>
    <message>
        <source>Few repairs say little: the count stands beside each figure.</source>
        <translation>Pocas reparaciones dicen poco: el número está junto a cada cifra.</translation>
    </message>
    <message>
        <source>Looking for a repair</source>
        <translation>Buscar una reparación</translation>
    </message>
    <message>
        <source>Job, panel, person, lot and words of notes of every day are searched.</source>
        <translation>Se busca en orden, panel, persona, lote y notas de todos los días.</translation>
    </message>
    <message>
        <source>Key the beginning of a word, or scan a lot; tap what is found.</source>
        <translation>Teclear el principio de una palabra o escanear un lote; pulsar lo hallado.</translation>
    </message>
    <message>
        <source>The middle of a word finds nothing; fewer letters find more.</source>
        <translation>El medio de una palabra no encuentra nada; menos letras, más.</translation>
    </message>
    <message>
        <source>The shelf</source>
        <translation>El estante</translation>
    </message>
    <message>
        <source>It counts what is there, by lot, and tells what is short, old or dry.</source>
        <translation>Cuenta lo que hay por lote y avisa de lo escaso, viejo o seco.</translation>
    </message>
    <message>
        <source>Book in what comes; each batch is taken off by itself.</source>
        <translation>Dar entrada a lo que llega; cada mezcla se descuenta sola.</translation>
    </message>
    <message>
        <source>What is spilled and not told makes the shelf look fuller than it is.</source>
        <translation>Lo derramado sin indicar hace parecer el estante más lleno.</translation>
    </message>
    <message>
        <source>Booking in</source>
        <translation>Registrar la entrada</translation>
    </message>
    <message>
        <source>A package gets its lot and its date, so that a batch can be traced to it.</source>
        <translation>Un envase recibe su lote y su fecha, para seguir una mezcla hasta él.</translation>
    </message>
    <message>
        <source>Scan or key the lot from the label, then its best-before day.</source>
        <translation>Escanear o teclear el lote de la etiqueta y su caducidad.</translation>
    </message>
    <message>
        <source>A lot from memory is a lot that a recall does not find.</source>
        <translation>Un lote de memoria no lo encuentra una retirada.</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Qué fue de ello</translation>
    </message>
    <message>
        <source>Count, spill, move or throw away: the shelf is put right by telling.</source>
        <translation>Contar, derramar, mover o tirar: se corrige diciéndolo.</translation>
    </message>
    <message>
        <source>Say what happened and how much; nothing is wiped out.</source>
        <translation>Decir qué pasó y cuánto; nada se borra.</translation>
    </message>
    <message>
        <source>Old peroxide is waste of its own; never into the bin or a warm corner.</source>
        <translation>El peróxido viejo es residuo aparte; nunca a la basura ni a un rincón caliente.</translation>
    </message>
    <message>
        <source>Product sheets</source>
        <translation>Fichas de producto</translation>
    </message>
    <message>
        <source>What a filler may and how fast it gels comes from its sheet.</source>
        <translation>Dónde vale una masilla y cuándo gelifica salen de su ficha.</translation>
    </message>
    <message>
        <source>Type it from the maker’s paper, or read it from a file.</source>
        <translation>Teclearla del papel del fabricante o leerla de un archivo.</translation>
    </message>
    <message>
        <source>A demo sheet is invented: never mend a customer’s panel by it.</source>
        <translation>Una ficha de muestra es inventada: nunca reparar con ella un panel de cliente.</translation>
    </message>
    <message>
        <source>Bench set-up</source>
        <translation>Ajustes del puesto</translation>
    </message>
    <message>
        <source>Language, units, glass, instruments and the shop’s own limits are set here.</source>
        <translation>Aquí se fijan idioma, unidades, pantalla, aparatos y límites del taller.</translation>
    </message>
    <message>
        <source>Measure the glass once with a card; then the drawn sizes are true.</source>
        <translation>Medir la pantalla una vez con una tarjeta; así las medidas dibujadas son reales.</translation>
    </message>
    <message>
        <source>A limit changed here changes every plan from now on.</source>
        <translation>Un límite cambiado aquí cambia todos los planes desde ahora.</translation>
    </message>
    <message>
        <source>Keeping the log</source>
        <translation>Conservar el registro</translation>
    </message>
    <message>
        <source>Backups, bringing in another bench’s log, and putting a backup back.</source>
        <translation>Copias, traer el registro de otro puesto y reponer una copia.</translation>
    </message>
    <message>
        <source>Choose the file; what would come of it is told before it is done.</source>
        <translation>Elegir el archivo; antes se dice qué resultaría.</translation>
    </message>
    <message>
        <source>A backup on the same disk is lost with the disk.</source>
        <translation>Una copia en el mismo disco se pierde con él.</translation>
    </message>
    <message>
        <source>Practising</source>
        <translation>Practicar</translation>
    </message>
    <message>
        <source>Invented panels to learn on: look, decide, mix by eye, and see what comes of it.</source>
        <translation>Paneles inventados para aprender: mirar, decidir, mezclar a ojo y ver qué resulta.</translation>
    </message>
    <message>
        <source>Answer from what the panel shows; marks and reasons come at the end.</source>
        <translation>Responder por lo que muestra el panel; la corrección y las razones, al final.</translation>
    </message>
    <message>
        <source>Help does not say here what is asked; the bench’s own help does.</source>
        <translation>La ayuda no dice aquí lo que se pregunta; la del puesto sí.</translation>
    </message>
</context>
<context>
    <name>Instruments</name>
    <message>
        <source>Nothing is plugged in at %1.</source>
        <translation>No hay nada conectado en %1.</translation>
    </message>
    <message>
        <source>Another program has %1.</source>
        <translation>Otro programa ocupa %1.</translation>
    </message>
    <message>
        <source>This account may not open %1.</source>
        <translation>Esta cuenta no puede abrir %1.</translation>
    </message>
    <message>
        <source>The instrument was pulled out.</source>
        <translation>Se desconectó el instrumento.</translation>
    </message>
    <message>
        <source>%1 does not open.</source>
        <translation>%1 no se abre.</translation>
    </message>
    <message>
        <source>Plug it in and switch it on: it is taken up by itself.</source>
        <translation>Conectarlo y encenderlo: se reconoce solo.</translation>
    </message>
    <message>
        <source>Close the other program: the port is taken up by itself.</source>
        <translation>Cerrar el otro programa: el puerto se toma solo.</translation>
    </message>
    <message>
        <source>Let the system’s keeper put this account in the group of serial ports.</source>
        <translation>Que el administrador ponga esta cuenta en el grupo de puertos serie.</translation>
    </message>
    <message>
        <source>The system says: %1.</source>
        <translation>El sistema dice: %1.</translation>
    </message>
    <message>
        <source>No instrument is set up.</source>
        <translation>No hay instrumento configurado.</translation>
    </message>
    <message>
        <source>No pattern is chosen for its lines.</source>
        <translation>No se eligió patrón para sus líneas.</translation>
    </message>
    <message>
        <source>The pattern cannot be used.</source>
        <translation>El patrón no sirve.</translation>
    </message>
    <message>
        <source>Connected: waiting for its lines.</source>
        <translation>Conectado: esperando sus líneas.</translation>
    </message>
    <message>
        <source>The instrument says nothing.</source>
        <translation>El instrumento no dice nada.</translation>
    </message>
    <message>
        <source>What comes is no plain text.</source>
        <translation>Lo que llega no es texto.</translation>
    </message>
    <message>
        <source>What it says cannot be.</source>
        <translation>Lo que dice no puede ser.</translation>
    </message>
    <message>
        <source>Its line does not fit the pattern.</source>
        <translation>Su línea no encaja en el patrón.</translation>
    </message>
    <message>
        <source>%1, not steady yet</source>
        <translation>%1, aún no estable</translation>
    </message>
    <message>
        <source>%1, steady</source>
        <translation>%1, estable</translation>
    </message>
    <message>
        <source>Its lines have stopped.</source>
        <translation>Sus líneas han cesado.</translation>
    </message>
    <message>
        <source>Choose one, or write it.</source>
        <translation>Elegir uno o escribirlo.</translation>
    </message>
    <message>
        <source>Look at cable and switch, and set it to send by itself.</source>
        <translation>Revisar cable e interruptor, y ponerlo a enviar solo.</translation>
    </message>
    <message>
        <source>Try another speed or frame.</source>
        <translation>Probar otra velocidad o trama.</translation>
    </message>
    <message>
        <source>Choose another pattern, or write one like the line.</source>
        <translation>Elegir otro patrón, o escribir uno como la línea.</translation>
    </message>
</context>
<context>
    <name>JobSheet</name>
    <message>
        <source>The safety data sheet, the vehicle maker’s repair manual, local codes and licensed practice come first.</source>
        <translation>Primero: ficha de seguridad, manual de reparación del fabricante, normas locales y práctica autorizada.</translation>
    </message>
    <message>
        <source>Log %1…, entries: %2</source>
        <extracomment>%1 is the beginning of a hash, %2 how many entries the log had</extracomment>
        <translation>Registro %1…, entradas: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of a sheet: &quot;1 of 3&quot;</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>End of the chain</source>
        <translation>Fin de la cadena</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Entradas</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Puesto</translation>
    </message>
    <message>
        <source>Work of %1</source>
        <extracomment>%1 is a day, &quot;2026-11-25&quot;</extracomment>
        <translation>Trabajo del %1</translation>
    </message>
    <message>
        <source>Nothing was recorded on this day.</source>
        <translation>Ese día no se registró nada.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panel</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Desviaciones</translation>
    </message>
    <message>
        <source>Job sheet · %1 · %2 · %3</source>
        <translation>Hoja de orden · %1 · %2 · %3</translation>
    </message>
    <message>
        <source>Day sheet · %1</source>
        <translation>Hoja del día · %1</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>From first to last act</source>
        <translation>De primera a última acción</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>%1 (before: %2)</source>
        <translation>%1 (antes: %2)</translation>
    </message>
    <message>
        <source>%1 (asked again later)</source>
        <translation>%1 (preguntado de nuevo)</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Lo que se encontró</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Pregunta</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Rocío</translation>
    </message>
    <message>
        <source>Panel above it</source>
        <translation>Panel por encima</translation>
    </message>
    <message>
        <source>lift %1, %2</source>
        <translation>capa %1, %2</translation>
    </message>
    <message>
        <source>coat %1</source>
        <translation>mano %1</translation>
    </message>
    <message>
        <source>%1 (demo sheet)</source>
        <translation>%1 (de muestra)</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Batches: what was mixed</source>
        <translation>Mezclas: lo mezclado</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Mezcla</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Filler lot</source>
        <translation>Lote masilla</translation>
    </message>
    <message>
        <source>Hardener lot</source>
        <translation>Lote endurecedor</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Previsto</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Mezclado</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Endurecedor</translation>
    </message>
    <message>
        <source>Hardener in</source>
        <translation>Con endurecedor</translation>
    </message>
    <message>
        <source>Batches: their clocks</source>
        <translation>Mezclas: sus relojes</translation>
    </message>
    <message>
        <source>From &apos;hardener in&apos;, as told / as predicted when it was mixed.</source>
        <translation>Desde «con endurecedor», indicado / previsto al mezclar.</translation>
    </message>
    <message>
        <source>Set on the board</source>
        <translation>Fraguó en la tabla</translation>
    </message>
    <message>
        <source>Edges clear</source>
        <translation>Bordes limpios</translation>
    </message>
    <message>
        <source>Set on the panel</source>
        <translation>Fraguó en el panel</translation>
    </message>
    <message>
        <source>Sands</source>
        <translation>Se lija</translation>
    </message>
    <message>
        <source>Sanded</source>
        <translation>Lijado</translation>
    </message>
    <message>
        <source>What was laid</source>
        <translation>Lo que se puso</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Capa puesta</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Masilla</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Mezclas</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Turn the panel</source>
        <translation>Voltear el panel</translation>
    </message>
    <message>
        <source>Panel turned</source>
        <translation>Panel volteado</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Told</source>
        <translation>Indicado</translation>
    </message>
    <message>
        <source>still parked</source>
        <translation>aún apartado</translation>
    </message>
    <message>
        <source>assessed again</source>
        <translation>evaluado de nuevo</translation>
    </message>
    <message>
        <source>taken up again</source>
        <translation>retomado</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Apartado</translation>
    </message>
    <message>
        <source>When, who</source>
        <translation>Cuándo, quién</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecho</translation>
    </message>
    <message>
        <source>Hand-over tests</source>
        <translation>Pruebas de entrega</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Sección</translation>
    </message>
    <message>
        <source>To scale; depth drawn %1 times as large as width.</source>
        <translation>A escala; profundidad ampliada %1 veces.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Plan %1</source>
        <translation>Plan %1</translation>
    </message>
    <message>
        <source>Accepted %1</source>
        <translation>Aceptado %1</translation>
    </message>
    <message>
        <source>Another plan took its place.</source>
        <translation>Otro plan tomó su lugar.</translation>
    </message>
    <message>
        <source>Filler in all</source>
        <translation>Masilla en total</translation>
    </message>
    <message>
        <source>Hardener in all</source>
        <translation>Endurecedor en total</translation>
    </message>
    <message>
        <source>Cavity</source>
        <translation>Hueco</translation>
    </message>
    <message>
        <source>Built proud</source>
        <translation>Exceso</translation>
    </message>
    <message>
        <source>Cure shrinkage</source>
        <translation>Merma de curado</translation>
    </message>
    <message>
        <source>Left on the board</source>
        <translation>Queda en la tabla</translation>
    </message>
    <message>
        <source>Heat limit</source>
        <translation>Límite de calor</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Acabado</translation>
    </message>
    <message>
        <source>%1, %2 in all; coats: %3; at most %4 a coat and %5 in all; %6</source>
        <translation>%1, %2 en total; manos: %3; máximo %4 por mano y %5 en total; %6</translation>
    </message>
    <message>
        <source>Ready for primer</source>
        <translation>Listo para imprimar</translation>
    </message>
    <message>
        <source>%1 after accepting</source>
        <translation>%1 tras aceptar</translation>
    </message>
    <message>
        <source>Times from</source>
        <translation>Tiempos de</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Hottest</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Puddle</source>
        <translation>Torta</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Bead</source>
        <translation>Cordón</translation>
    </message>
    <message>
        <source>Board sets</source>
        <translation>Fragua tabla</translation>
    </message>
    <message>
        <source>Panel sets</source>
        <translation>Fragua panel</translation>
    </message>
    <message>
        <source>Not %1: %2</source>
        <translation>No %1: %2</translation>
    </message>
    <message>
        <source>%1: the picture cannot be read</source>
        <translation>%1: la imagen no se puede leer</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>No photo: %1</source>
        <translation>Sin foto: %1</translation>
    </message>
    <message>
        <source>No code: what it would hold is too long for one.</source>
        <translation>Sin código: lo que contendría es demasiado largo.</translation>
    </message>
    <message>
        <source>In the code: what this sheet is of, and the end of the log’s chain when it was printed.</source>
        <translation>En el código: de qué es esta hoja y el final de la cadena del registro al imprimirla.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Técnico</translation>
    </message>
    <message>
        <source>Supervisor</source>
        <translation>Supervisor</translation>
    </message>
    <message>
        <source>Signed off by %1, %2</source>
        <extracomment>%1 is a person, %2 a day and a time</extracomment>
        <translation>Firmado por %1, %2</translation>
    </message>
    <message>
        <source>Returned by %1, %2: %3</source>
        <extracomment>%1 is a person, %2 a day and a time, %3 why</extracomment>
        <translation>Devuelto por %1, %2: %3</translation>
    </message>
    <message>
        <source>Its rework is not taken in yet</source>
        <extracomment>%1 is the id of a repair</extracomment>
        <translation>Su repaso aún no se ha recibido</translation>
    </message>
    <message>
        <source>Done again as repair %1</source>
        <translation>Hecho de nuevo como reparación %1</translation>
    </message>
    <message>
        <source>Not signed yet</source>
        <translation>Aún sin firmar</translation>
    </message>
    <message>
        <source>Rework of repair %1</source>
        <extracomment>%1 is the id of a repair</extracomment>
        <translation>Repaso de la reparación %1</translation>
    </message>
    <message>
        <source>Sign-off</source>
        <translation>Firmas</translation>
    </message>
    <message>
        <source>What the log says</source>
        <translation>Lo que dice el registro</translation>
    </message>
</context>
<context>
    <name>Keeping</name>
    <message numerus="yes">
        <source>%n act(s) do not follow on the restored log.</source>
        <translation>
            <numerusform>%n acción no sigue al registro restaurado.</numerusform>
            <numerusform>%n acciones no siguen al registro restaurado.</numerusform>
        </translation>
    </message>
    <message>
        <source>Note them in the repair by hand.</source>
        <translation>Anotarlas a mano en la reparación.</translation>
    </message>
</context>
<context>
    <name>KeepingScreens</name>
    <message>
        <source>The log there is damaged.</source>
        <translation>El registro que hay está dañado.</translation>
    </message>
    <message>
        <source>%1 of its entries can be read and do not follow.</source>
        <translation>%1 de sus entradas se leen, pero no siguen.</translation>
    </message>
    <message>
        <source>From one entry on it tells other things than the backup.</source>
        <translation>A partir de una entrada cuenta otras cosas que la copia.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Which backup?</source>
        <translation>¿Qué copia?</translation>
    </message>
    <message>
        <source>Which log is to be brought in?</source>
        <translation>¿Qué registro se incorpora?</translation>
    </message>
    <message>
        <source>There is none in this folder.</source>
        <translation>En esta carpeta no hay.</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Otra carpeta</translation>
    </message>
    <message>
        <source>bench %1 · %2 entries</source>
        <extracomment>%1 is a bench&apos;s name, %2 a number</extracomment>
        <translation>puesto %1 · %2 entradas</translation>
    </message>
    <message>
        <source>One moment …</source>
        <translation>Un momento…</translation>
    </message>
    <message>
        <source>Looking through both logs</source>
        <translation>Se revisan los dos registros</translation>
    </message>
    <message>
        <source>The backup takes the log’s place</source>
        <translation>La copia ocupa el lugar del registro</translation>
    </message>
    <message>
        <source>The log is brought in</source>
        <translation>Se incorpora el registro</translation>
    </message>
    <message>
        <source>Nothing is changed yet.</source>
        <translation>Todavía no se cambia nada.</translation>
    </message>
    <message>
        <source>Do not switch off. Running clocks go on.</source>
        <translation>No apagar. Los relojes en marcha siguen.</translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation>Incorporarlo</translation>
    </message>
    <message>
        <source>Bring this log in?</source>
        <translation>¿Incorporar este registro?</translation>
    </message>
    <message>
        <source>It was brought in</source>
        <translation>Se ha incorporado</translation>
    </message>
    <message>
        <source>There is nothing new in it</source>
        <translation>No trae nada nuevo</translation>
    </message>
    <message>
        <source>%1 entries, %2 repairs</source>
        <translation>%1 entradas, %2 reparaciones</translation>
    </message>
    <message>
        <source>Bench %1: both logs go on differently from entry %2. Its entries stay as they are here.</source>
        <translation>Puesto %1: desde la entrada %2 los registros difieren. Sus entradas quedan como están aquí.</translation>
    </message>
    <message>
        <source>Open at two benches: %1, %2.</source>
        <translation>Abierto en dos puestos: %1, %2.</translation>
    </message>
    <message>
        <source>Nothing that is here is changed. Repairs of another bench go on at that bench.</source>
        <translation>Nada de lo que hay aquí cambia. Las reparaciones de otro puesto siguen en ese puesto.</translation>
    </message>
    <message>
        <source>Restore it</source>
        <translation>Restaurarla</translation>
    </message>
    <message>
        <source>Put this backup in the log’s place?</source>
        <translation>¿Poner esta copia en lugar del registro?</translation>
    </message>
    <message>
        <source>The backup is in its place</source>
        <translation>La copia está en su lugar</translation>
    </message>
    <message>
        <source>Nothing is lost: %1 entries</source>
        <translation>No se pierde nada: %1 entradas</translation>
    </message>
    <message>
        <source>Not all can be kept: %1 entries</source>
        <translation>No se conserva todo: %1 entradas</translation>
    </message>
    <message>
        <source>The backup has %1 entries.</source>
        <translation>La copia tiene %1 entradas.</translation>
    </message>
    <message>
        <source>%1 newer ones come along from the log.</source>
        <translation>%1 más nuevas vienen del registro.</translation>
    </message>
    <message>
        <source>The log that is there now is kept in a folder beside it, whole.</source>
        <translation>El registro actual se conserva entero en una carpeta al lado.</translation>
    </message>
    <message>
        <source>The earlier log lies in %1.</source>
        <translation>El registro anterior está en %1.</translation>
    </message>
    <message>
        <source>It was not restored</source>
        <translation>No se restauró</translation>
    </message>
    <message>
        <source>It was not brought in</source>
        <translation>No se incorporó</translation>
    </message>
</context>
<context>
    <name>KeyPad</name>
    <message>
        <source>Clear</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Decimal point</source>
        <translation>Signo decimal</translation>
    </message>
</context>
<context>
    <name>LetterKeys</name>
    <message>
        <source>Space</source>
        <extracomment>short: a key of 20 mm</extracomment>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Erase</source>
        <extracomment>short: a key of 20 mm; takes the last letter away</extracomment>
        <translation>Borrar</translation>
    </message>
</context>
<context>
    <name>LogTrouble</name>
    <message>
        <source>the database file itself is damaged</source>
        <translation>el archivo de la base de datos está dañado</translation>
    </message>
    <message>
        <source>its tables are not those of this program</source>
        <translation>sus tablas no son las de este programa</translation>
    </message>
    <message>
        <source>an entry was changed, removed or put in</source>
        <translation>una entrada se cambió, se quitó o se añadió</translation>
    </message>
    <message>
        <source>an entry cannot be read, or cannot follow the one before</source>
        <translation>una entrada no se puede leer o no puede seguir a la anterior</translation>
    </message>
    <message>
        <source>a summary does not match its entries</source>
        <translation>un resumen no coincide con sus entradas</translation>
    </message>
    <message>
        <source>a stored sheet or table was changed</source>
        <translation>se cambió una ficha o tabla guardada</translation>
    </message>
    <message>
        <source>the expected end of the chain is not in it</source>
        <translation>no contiene el final esperado de la cadena</translation>
    </message>
    <message>
        <source>The log cannot be opened.</source>
        <translation>No se puede abrir el registro.</translation>
    </message>
    <message>
        <source>Check that its folder is there and may be used.</source>
        <translation>Comprobar que su carpeta está y se puede usar.</translation>
    </message>
    <message>
        <source>This file is not a log.</source>
        <translation>Este archivo no es un registro.</translation>
    </message>
    <message>
        <source>Choose another file; this one is left as it is.</source>
        <translation>Elegir otro archivo; este queda como está.</translation>
    </message>
    <message>
        <source>This database belongs to another program.</source>
        <translation>Esta base de datos es de otro programa.</translation>
    </message>
    <message>
        <source>A newer version of this program wrote the log.</source>
        <translation>Una versión más nueva del programa escribió el registro.</translation>
    </message>
    <message>
        <source>Use that version; the log is left as it is.</source>
        <translation>Usar esa versión; el registro queda como está.</translation>
    </message>
    <message>
        <source>The log can be read but not written.</source>
        <translation>El registro se puede leer, pero no escribir.</translation>
    </message>
    <message>
        <source>Give the right to write to the file and its folder.</source>
        <translation>Dar permiso de escritura al archivo y a su carpeta.</translation>
    </message>
    <message>
        <source>Another program holds the log.</source>
        <translation>Otro programa ocupa el registro.</translation>
    </message>
    <message>
        <source>Close it, then try again.</source>
        <translation>Cerrarlo y probar de nuevo.</translation>
    </message>
    <message>
        <source>The disk is full.</source>
        <translation>El disco está lleno.</translation>
    </message>
    <message>
        <source>Make room, then try again. The last confirmed step is kept.</source>
        <translation>Hacer sitio y probar de nuevo. Se conserva el último paso confirmado.</translation>
    </message>
    <message>
        <source>The log is damaged.</source>
        <translation>El registro está dañado.</translation>
    </message>
    <message>
        <source>Keep the file as it is and fetch the last backup.</source>
        <translation>Conservar el archivo como está y traer la última copia.</translation>
    </message>
    <message>
        <source>The disk does not answer.</source>
        <translation>El disco no responde.</translation>
    </message>
    <message>
        <source>Check disk and cable, then try again. The last confirmed step is kept.</source>
        <translation>Revisar disco y cable; probar de nuevo. Se conserva el último paso confirmado.</translation>
    </message>
    <message>
        <source>This panel is already open in this job.</source>
        <translation>Este panel ya está abierto en esta orden.</translation>
    </message>
    <message>
        <source>Open its card, or give this panel another name.</source>
        <translation>Abrir su tarjeta o dar otro nombre a este panel.</translation>
    </message>
    <message>
        <source>This step does not follow the last one.</source>
        <translation>Este paso no sigue al último.</translation>
    </message>
    <message>
        <source>Go back home and open the card again.</source>
        <translation>Volver al inicio y abrir otra vez la tarjeta.</translation>
    </message>
    <message>
        <source>Another copy of the program has this bench.</source>
        <translation>Otra copia del programa tiene este puesto.</translation>
    </message>
    <message>
        <source>Work there, or close it and try again.</source>
        <translation>Trabajar allí, o cerrarla y probar de nuevo.</translation>
    </message>
    <message>
        <source>This is the supervisor’s to do.</source>
        <translation>Esto le toca al supervisor.</translation>
    </message>
    <message>
        <source>It needs the supervisor’s PIN.</source>
        <translation>Hace falta el PIN del supervisor.</translation>
    </message>
    <message>
        <source>The log’s file is not all there.</source>
        <translation>El archivo del registro no está completo.</translation>
    </message>
    <message>
        <source>Copy it again from where it came, or fetch the last backup.</source>
        <translation>Copiarlo otra vez de su origen, o traer la última copia.</translation>
    </message>
    <message>
        <source>The log is no longer where it was.</source>
        <translation>El registro ya no está donde estaba.</translation>
    </message>
    <message>
        <source>Put its disk or its folder back. The last confirmed step is kept.</source>
        <translation>Devolver su disco o su carpeta. El último paso confirmado queda guardado.</translation>
    </message>
    <message>
        <source>Another log lies there now.</source>
        <translation>Ahora hay allí otro registro.</translation>
    </message>
    <message>
        <source>It lacks steps that were confirmed here. Put the right one back.</source>
        <translation>Le faltan pasos confirmados aquí. Volver a poner el correcto.</translation>
    </message>
    <message>
        <source>An older version of this program wrote the log.</source>
        <translation>Una versión anterior de este programa escribió el registro.</translation>
    </message>
    <message>
        <source>It can be brought up to this version. A copy as it is stays beside it, for the older program.</source>
        <translation>Se puede pasar a esta versión. Una copia tal como está queda al lado, para el programa anterior.</translation>
    </message>
</context>
<context>
    <name>LotListScreen</name>
    <message>
        <source>%1 · hardener lot %2</source>
        <translation>%1 · lote de endurecedor %2</translation>
    </message>
</context>
<context>
    <name>LotPageScreen</name>
    <message>
        <source>Why is it to be forgotten?</source>
        <translation>¿Por qué hay que olvidarlo?</translation>
    </message>
    <message>
        <source>What it taught</source>
        <translation>Lo que enseñó</translation>
    </message>
</context>
<context>
    <name>Lots</name>
    <message>
        <source>Lots were mixed up</source>
        <translation>Se confundieron los lotes</translation>
    </message>
    <message>
        <source>Gels were told too late or too early</source>
        <translation>Gel indicado tarde o antes de tiempo</translation>
    </message>
    <message>
        <source>Hardener was laid wrong</source>
        <translation>Endurecedor mal puesto</translation>
    </message>
    <message>
        <source>The tube has been too hot or too cold</source>
        <translation>El tubo estuvo muy caliente o muy frío</translation>
    </message>
    <message>
        <source>as the sheet says</source>
        <translation>como dice la ficha</translation>
    </message>
    <message>
        <source>cures as its sheet says</source>
        <translation>cura como dice su ficha</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>of how fast a batch cures: &quot;6 % slower to 23 % faster&quot;</extracomment>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>no gel told: teaches nothing</source>
        <translation>gel no indicado: no enseña nada</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>cuenta</translation>
    </message>
    <message>
        <source>counts: cured at least so fast</source>
        <translation>cuenta: curó al menos así de rápido</translation>
    </message>
    <message>
        <source>held: too far off, three in a row would count</source>
        <translation>retenido: muy lejos, tres seguidos contarían</translation>
    </message>
    <message>
        <source>no longer counts: the lot proved to be different</source>
        <translation>ya no cuenta: el lote resultó ser distinto</translation>
    </message>
    <message>
        <source>Test pat</source>
        <translation>Torta de prueba</translation>
    </message>
    <message>
        <source>board set after %1, by the sheet %2</source>
        <translation>en la tabla fraguó tras %1, según ficha %2</translation>
    </message>
    <message>
        <source>panel set after %1, by the sheet %2</source>
        <translation>en el panel fraguó tras %1, según ficha %2</translation>
    </message>
    <message>
        <source>sanded from %1, by the sheet %2</source>
        <translation>se lijó desde %1, según ficha %2</translation>
    </message>
    <message>
        <source>%1 faster</source>
        <translation>%1 más rápido</translation>
    </message>
    <message>
        <source>%1 slower</source>
        <translation>%1 más lento</translation>
    </message>
    <message>
        <source>cures %1 faster than its sheet</source>
        <translation>cura %1 más rápido que su ficha</translation>
    </message>
    <message>
        <source>cures %1 slower than its sheet</source>
        <translation>cura %1 más lento que su ficha</translation>
    </message>
</context>
<context>
    <name>MeasureScreen</name>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Key in the humidity of the air</source>
        <translation>Teclear la humedad del aire</translation>
    </message>
    <message>
        <source>Bevel</source>
        <translation>Bisel</translation>
    </message>
    <message>
        <source>Key in the bevel, run to depth</source>
        <translation>Teclear el bisel, largo a profundidad</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Key in the length</source>
        <translation>Teclear el largo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Key in the width</source>
        <translation>Teclear el ancho</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Key in the depth</source>
        <translation>Teclear la profundidad</translation>
    </message>
    <message>
        <source>Panel thickness</source>
        <translation>Espesor del panel</translation>
    </message>
    <message>
        <source>Key in the panel’s thickness</source>
        <translation>Teclear el espesor del panel</translation>
    </message>
    <message>
        <source>Deeper than the panel is thick: that is a hole.</source>
        <translation>Más hondo que el espesor del panel: es un agujero.</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Key in the air’s temperature</source>
        <translation>Teclear la temperatura del aire</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panel</translation>
    </message>
    <message>
        <source>Key in the panel’s temperature</source>
        <translation>Teclear la temperatura del panel</translation>
    </message>
    <message>
        <source>Dew point: not yet known</source>
        <translation>Punto de rocío: aún desconocido</translation>
    </message>
    <message>
        <source>Dew point %1, panel %2 above it</source>
        <translation>Punto de rocío %1, panel %2 por encima</translation>
    </message>
    <message>
        <source>Measured: go on</source>
        <translation>Medido: seguir</translation>
    </message>
    <message>
        <source>Read: go on</source>
        <translation>Medido: seguir</translation>
    </message>
    <message>
        <source>Read air and panel again</source>
        <translation>Medir otra vez aire y panel</translation>
    </message>
    <message>
        <source>Read air, and the panel beside the filler</source>
        <translation>Medir aire, y panel junto a la masilla</translation>
    </message>
    <message>
        <source>Air and humidity</source>
        <translation>Aire y humedad</translation>
    </message>
</context>
<context>
    <name>MessageScreen</name>
    <message>
        <source>hold 1 s</source>
        <translation>mantener 1 s</translation>
    </message>
</context>
<context>
    <name>Names</name>
    <message>
        <source>laminate</source>
        <extracomment>FRP: glass-fibre laminate</extracomment>
        <translation>laminado</translation>
    </message>
    <message>
        <source>SMC</source>
        <extracomment>sheet moulding compound; the trade&apos;s abbreviation</extracomment>
        <translation>SMC</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>acero</translation>
    </message>
    <message>
        <source>galvanised steel</source>
        <translation>galvanizado</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminio</translation>
    </message>
    <message>
        <source>thermoplastic</source>
        <translation>termoplástico</translation>
    </message>
    <message>
        <source>flexible polyurethane</source>
        <translation>poliuretano flexible</translation>
    </message>
    <message>
        <source>carbon fibre</source>
        <translation>fibra de carbono</translation>
    </message>
    <message>
        <source>cast plastic without fibre</source>
        <translation>plástico colado sin fibra</translation>
    </message>
    <message>
        <source>magnesium</source>
        <translation>magnesio</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>gouge</source>
        <translation>surco</translation>
    </message>
    <message>
        <source>dent</source>
        <translation>abolladura</translation>
    </message>
    <message>
        <source>crack</source>
        <translation>grieta</translation>
    </message>
    <message>
        <source>through hole</source>
        <translation>agujero pasante</translation>
    </message>
    <message>
        <source>rust hole</source>
        <translation>agujero de óxido</translation>
    </message>
    <message>
        <source>weld seam</source>
        <translation>junta soldada</translation>
    </message>
    <message>
        <source>bond seam</source>
        <translation>junta pegada</translation>
    </message>
    <message>
        <source>solid weld</source>
        <translation>soldadura continua</translation>
    </message>
    <message>
        <source>spot welds</source>
        <translation>puntos soldados</translation>
    </message>
    <message>
        <source>stitch welds</source>
        <translation>soldadura a tramos</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>desnuda</translation>
    </message>
    <message>
        <source>abraded epoxy primer</source>
        <translation>imprimación epoxi lijada</translation>
    </message>
    <message>
        <source>paint</source>
        <translation>pintura</translation>
    </message>
    <message>
        <source>old filler</source>
        <translation>masilla vieja</translation>
    </message>
    <message>
        <source>sealer or underseal</source>
        <translation>sellador o protector de bajos</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>óxido</translation>
    </message>
    <message>
        <source>rust converter</source>
        <translation>convertidor de óxido</translation>
    </message>
    <message>
        <source>acid-etch primer</source>
        <translation>imprimación ácida</translation>
    </message>
    <message>
        <source>uncured primer</source>
        <translation>imprimación sin curar</translation>
    </message>
    <message>
        <source>solder with flux</source>
        <translation>estaño con fundente</translation>
    </message>
    <message>
        <source>looks only</source>
        <translation>solo estética</translation>
    </message>
    <message>
        <source>carries load</source>
        <translation>soporta carga</translation>
    </message>
    <message>
        <source>belts, seats, airbags</source>
        <translation>cinturones, asientos, airbags</translation>
    </message>
    <message>
        <source>in front of a sensor</source>
        <translation>ante un sensor</translation>
    </message>
    <message>
        <source>holds fuel or pressure</source>
        <translation>con combustible o presión</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>damp</source>
        <translation>húmedo</translation>
    </message>
    <message>
        <source>no core</source>
        <extracomment>nothing between the skins of a laminate</extracomment>
        <translation>sin núcleo</translation>
    </message>
    <message>
        <source>foam</source>
        <translation>espuma</translation>
    </message>
    <message>
        <source>dry wood</source>
        <translation>madera seca</translation>
    </message>
    <message>
        <source>wet wood</source>
        <translation>madera mojada</translation>
    </message>
    <message>
        <source>short strand, dense</source>
        <translation>fibra corta, densa</translation>
    </message>
    <message>
        <source>short strand, light</source>
        <translation>fibra corta, ligera</translation>
    </message>
    <message>
        <source>mixed strand</source>
        <translation>fibra mixta</translation>
    </message>
    <message>
        <source>long strand</source>
        <translation>fibra larga</translation>
    </message>
    <message>
        <source>finishing, smooth</source>
        <translation>de acabado, lisa</translation>
    </message>
    <message>
        <source>finishing, fine</source>
        <translation>de acabado, fina</translation>
    </message>
    <message>
        <source>front face</source>
        <translation>frente</translation>
    </message>
    <message>
        <source>back face</source>
        <translation>dorso</translation>
    </message>
    <message>
        <source>knead</source>
        <extracomment>the phase of a running mix, on the ribbon: keep it short</extracomment>
        <translation>amasar</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>extender</translation>
    </message>
    <message>
        <source>clear edges</source>
        <translation>limpiar bordes</translation>
    </message>
    <message>
        <source>hands off</source>
        <translation>no tocar</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>lijar</translation>
    </message>
    <message>
        <source>sands hard</source>
        <extracomment>it still sands, but harder than before</extracomment>
        <translation>cuesta lijar</translation>
    </message>
    <message>
        <source>assess</source>
        <extracomment>what is next in a repair, on its job card: keep it short</extracomment>
        <translation>evaluar</translation>
    </message>
    <message>
        <source>decide</source>
        <translation>decidir</translation>
    </message>
    <message>
        <source>prepare</source>
        <translation>preparar</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezclar</translation>
    </message>
    <message>
        <source>turn the panel</source>
        <translation>voltear el panel</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>acabar</translation>
    </message>
    <message>
        <source>hand over</source>
        <translation>entregar</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>entregado</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>apartado</translation>
    </message>
    <message>
        <source>what the panel is made of</source>
        <translation>de qué está hecho el panel</translation>
    </message>
    <message>
        <source>kind of damage</source>
        <translation>tipo de daño</translation>
    </message>
    <message>
        <source>kind of weld</source>
        <translation>tipo de soldadura</translation>
    </message>
    <message>
        <source>whether the adhesive has cured</source>
        <translation>si el adhesivo ha curado</translation>
    </message>
    <message>
        <source>size of the damage</source>
        <translation>tamaño del daño</translation>
    </message>
    <message>
        <source>reach from behind</source>
        <translation>acceso por detrás</translation>
    </message>
    <message>
        <source>what is on the surface</source>
        <translation>qué hay en la superficie</translation>
    </message>
    <message>
        <source>what the zone is for</source>
        <translation>para qué es la zona</translation>
    </message>
    <message>
        <source>dry or damp</source>
        <translation>seco o húmedo</translation>
    </message>
    <message>
        <source>core of the laminate</source>
        <translation>núcleo del laminado</translation>
    </message>
    <message>
        <source>air, panel and humidity</source>
        <translation>aire, panel y humedad</translation>
    </message>
    <message>
        <source>returned</source>
        <extracomment>by the supervisor, to be done again</extracomment>
        <translation>devuelto</translation>
    </message>
</context>
<context>
    <name>Notes</name>
    <message>
        <source>As found</source>
        <translation>Como se halló</translation>
    </message>
    <message>
        <source>Bare</source>
        <translation>Desnudo</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Masillado</translation>
    </message>
    <message>
        <source>Guide coat</source>
        <translation>Guía de lijado</translation>
    </message>
    <message>
        <source>as found</source>
        <extracomment>in a list of photos: &quot;as found, bare, filled&quot;</extracomment>
        <translation>como se halló</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>desnudo</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>masillado</translation>
    </message>
    <message>
        <source>guide coat</source>
        <translation>guía de lijado</translation>
    </message>
    <message>
        <source>Deeper than it looked</source>
        <translation>Más hondo de lo que parecía</translation>
    </message>
    <message>
        <source>Crack ran further</source>
        <translation>La grieta seguía</translation>
    </message>
    <message>
        <source>Old repair found below</source>
        <translation>Reparación vieja debajo</translation>
    </message>
    <message>
        <source>Panel warmed first</source>
        <translation>Panel calentado antes</translation>
    </message>
    <message>
        <source>Filler from a new tub</source>
        <translation>Masilla de bote nuevo</translation>
    </message>
    <message>
        <source>Hardener from a new tube</source>
        <translation>Endurecedor de tubo nuevo</translation>
    </message>
    <message>
        <source>A mix was thrown away</source>
        <translation>Se tiró una mezcla</translation>
    </message>
    <message>
        <source>Edge lifted: cut back</source>
        <translation>Borde levantado: recortado</translation>
    </message>
    <message>
        <source>Pinholes opened and filled</source>
        <translation>Poros abiertos y rellenados</translation>
    </message>
    <message>
        <source>Second technician helped</source>
        <translation>Ayudó otro técnico</translation>
    </message>
    <message>
        <source>Supervisor had a look</source>
        <translation>El supervisor lo miró</translation>
    </message>
    <message>
        <source>Waits for a part</source>
        <translation>Espera una pieza</translation>
    </message>
    <message>
        <source>waits for a part</source>
        <translation>espera una pieza</translation>
    </message>
    <message>
        <source>waits for an answer</source>
        <translation>espera una respuesta</translation>
    </message>
    <message>
        <source>too cold or too damp</source>
        <translation>demasiado frío o húmedo</translation>
    </message>
    <message>
        <source>metal-work comes first</source>
        <translation>primero la chapa</translation>
    </message>
    <message>
        <source>other work comes first</source>
        <translation>otro trabajo va antes</translation>
    </message>
    <message>
        <source>the shift is over</source>
        <translation>terminó el turno</translation>
    </message>
    <message>
        <source>stays at this bench</source>
        <translation>queda en este puesto</translation>
    </message>
    <message>
        <source>to %1</source>
        <extracomment>%1 is a person: goes on after &quot;Parked:&quot;</extracomment>
        <translation>a %1</translation>
    </message>
</context>
<context>
    <name>NotesScreen</name>
    <message>
        <source>What is to be noted?</source>
        <translation>¿Qué hay que anotar?</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>Al paso actual</translation>
    </message>
    <message>
        <source>More notes</source>
        <translation>Más notas</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>Con palabras propias</translation>
    </message>
    <message>
        <source>No notes yet.</source>
        <translation>Aún no hay notas.</translation>
    </message>
    <message>
        <source>Older notes</source>
        <translation>Notas anteriores</translation>
    </message>
    <message>
        <source>Newest notes</source>
        <translation>Últimas notas</translation>
    </message>
    <message>
        <source>%1–%2 of %3</source>
        <extracomment>notes %1 to %2 of %3</extracomment>
        <translation>%1–%2 de %3</translation>
    </message>
    <message>
        <source>Write the note</source>
        <translation>Escribir la nota</translation>
    </message>
    <message>
        <source>Keep this note</source>
        <translation>Guardar esta nota</translation>
    </message>
    <message>
        <source>The code holds a control character.</source>
        <translation>El código tiene un carácter de control.</translation>
    </message>
    <message>
        <source>It is not written down.</source>
        <translation>No quedó anotado.</translation>
    </message>
    <message>
        <source>The note is empty.</source>
        <translation>La nota está vacía.</translation>
    </message>
    <message>
        <source>Write 1 to %1 characters.</source>
        <translation>Escribir de 1 a %1 caracteres.</translation>
    </message>
    <message>
        <source>Nothing written yet</source>
        <translation>Aún no hay nada escrito</translation>
    </message>
</context>
<context>
    <name>Outlooks</name>
    <message numerus="yes">
        <source>%n lift(s).</source>
        <translation>
            <numerusform>%n capa.</numerusform>
            <numerusform>%n capas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Gels in %1, sands from %2.</source>
        <translation>Gelifica en %1, se lija desde %2.</translation>
    </message>
    <message>
        <source>Its cure cannot be worked out.</source>
        <translation>No se puede calcular su curado.</translation>
    </message>
    <message>
        <source>Board sets in %1. Gels on the panel in %2, sands from %3. Hottest %4.</source>
        <translation>En la tabla fragua en %1. En el panel gelifica en %2, se lija desde %3. Máximo %4.</translation>
    </message>
    <message>
        <source>Gels in %1, before %2. Sands from %3, before %4.</source>
        <translation>Gelifica en %1, antes %2. Se lija desde %3, antes %4.</translation>
    </message>
</context>
<context>
    <name>PaperScreen</name>
    <message>
        <source>Documents</source>
        <translation>Documentos</translation>
    </message>
    <message>
        <source>USB stick</source>
        <translation>Memoria USB</translation>
    </message>
</context>
<context>
    <name>PhotosScreen</name>
    <message>
        <source>cannot be shown</source>
        <translation>no se puede mostrar</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>leyendo</translation>
    </message>
    <message>
        <source>Tap what the photo shows</source>
        <translation>Pulsar lo que muestra la foto</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>Al paso actual</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún ninguna</translation>
    </message>
    <message>
        <source>Use this folder</source>
        <translation>Usar esta carpeta</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>One up</source>
        <translation>Subir</translation>
    </message>
    <message>
        <source>camera or card</source>
        <translation>cámara o tarjeta</translation>
    </message>
</context>
<context>
    <name>Phrases</name>
    <message>
        <source>%1–%2 is fine</source>
        <translation>%1–%2 bien</translation>
    </message>
    <message>
        <source>batch %1 of %2</source>
        <translation>mezcla %1 de %2</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>paso %1 de %2</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message numerus="yes">
        <source>%n more mix(es) running</source>
        <translation>
            <numerusform>%n mezcla más en curso</numerusform>
            <numerusform>%n mezclas más en curso</numerusform>
        </translation>
    </message>
    <message>
        <source>air not read yet</source>
        <translation>aire sin medir aún</translation>
    </message>
    <message>
        <source>air %1, %2</source>
        <translation>aire %1, %2</translation>
    </message>
    <message>
        <source>panel %1</source>
        <translation>panel %1</translation>
    </message>
    <message>
        <source>%1 over dew point</source>
        <translation>%1 sobre rocío</translation>
    </message>
    <message>
        <source>%1 ago · %2</source>
        <translation>hace %1 · %2</translation>
    </message>
    <message numerus="yes">
        <source>from %n batch(es) of this lot</source>
        <translation>
            <numerusform>de %n mezcla de este lote</numerusform>
            <numerusform>de %n mezclas de este lote</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>from %n other lot(s) of this product</source>
        <translation>
            <numerusform>de %n otro lote de este producto</numerusform>
            <numerusform>de %n otros lotes de este producto</numerusform>
        </translation>
    </message>
    <message>
        <source>from the sheet</source>
        <translation>según la ficha</translation>
    </message>
</context>
<context>
    <name>PictureLabels</name>
    <message>
        <source>%1 over the bevel, %2 : 1</source>
        <translation>%1 sobre el bisel, %2 : 1</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>finish %1 (limit %2)</source>
        <translation>acabado %1 (límite %2)</translation>
    </message>
    <message>
        <source>%1 panel; depth drawn to the scale of the width</source>
        <translation>panel de %1; profundidad a la escala del ancho</translation>
    </message>
    <message>
        <source>%1 panel; depth drawn %2 times as large as width</source>
        <translation>panel de %1; profundidad ampliada %2 veces</translation>
    </message>
    <message>
        <source>True size</source>
        <translation>Tamaño real</translation>
    </message>
    <message>
        <source>not true size</source>
        <translation>no a tamaño real</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>Fibre filler</source>
        <translation>Masilla de fibra</translation>
    </message>
    <message>
        <source>Faces to fill</source>
        <translation>Caras por masillar</translation>
    </message>
    <message>
        <source>Lifts still to lay</source>
        <translation>Capas por poner</translation>
    </message>
    <message>
        <source>Batches still to mix</source>
        <translation>Mezclas por hacer</translation>
    </message>
    <message>
        <source>Fibre filler still to mix</source>
        <translation>Masilla de fibra por mezclar</translation>
    </message>
    <message>
        <source>Hardener for it</source>
        <translation>Su endurecedor</translation>
    </message>
    <message>
        <source>Finishing filler, thickness</source>
        <translation>Masilla de acabado, espesor</translation>
    </message>
    <message>
        <source>Steps of preparing to do</source>
        <translation>Pasos de preparación por hacer</translation>
    </message>
    <message>
        <source>gear on</source>
        <extracomment>a step of preparing in two or three words, in a list</extracomment>
        <translation>equipo puesto</translation>
    </message>
    <message>
        <source>own tools</source>
        <translation>útiles propios</translation>
    </message>
    <message>
        <source>wash</source>
        <translation>lavar</translation>
    </message>
    <message>
        <source>degrease</source>
        <translation>desengrasar</translation>
    </message>
    <message>
        <source>flash off</source>
        <translation>evaporar</translation>
    </message>
    <message>
        <source>strip paint</source>
        <translation>decapar</translation>
    </message>
    <message>
        <source>cut to sound</source>
        <translation>cortar a sano</translation>
    </message>
    <message>
        <source>find cracks</source>
        <translation>buscar grietas</translation>
    </message>
    <message>
        <source>stop-drill</source>
        <translation>taladrar puntas</translation>
    </message>
    <message>
        <source>squeeze-out off</source>
        <translation>quitar rebose</translation>
    </message>
    <message>
        <source>dress the weld</source>
        <translation>repasar soldadura</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>secar</translation>
    </message>
    <message>
        <source>bevel</source>
        <translation>biselar</translation>
    </message>
    <message>
        <source>bevel both faces</source>
        <translation>biselar ambas caras</translation>
    </message>
    <message>
        <source>open the gouge</source>
        <translation>abrir el surco</translation>
    </message>
    <message>
        <source>bevel the upper panel</source>
        <translation>biselar panel superior</translation>
    </message>
    <message>
        <source>abrade the back</source>
        <translation>lijar el dorso</translation>
    </message>
    <message>
        <source>bond a backing</source>
        <translation>pegar respaldo</translation>
    </message>
    <message>
        <source>dam</source>
        <translation>tope</translation>
    </message>
    <message>
        <source>80 grit</source>
        <translation>grano 80</translation>
    </message>
    <message>
        <source>dust off</source>
        <translation>desempolvar</translation>
    </message>
    <message>
        <source>wipe</source>
        <translation>limpiar</translation>
    </message>
    <message>
        <source>read the panel</source>
        <translation>medir el panel</translation>
    </message>
</context>
<context>
    <name>Practice</name>
    <message>
        <source>Rinse the open fibre with water</source>
        <translation>Enjuagar la fibra abierta con agua</translation>
    </message>
    <message>
        <source>Wipe the ground fibre with solvent</source>
        <translation>Limpiar la fibra amolada con disolvente</translation>
    </message>
    <message>
        <source>Blow it off at full line pressure</source>
        <translation>Soplar a plena presión de red</translation>
    </message>
    <message>
        <source>Put the lamp on the wet filler</source>
        <translation>Poner la lámpara a la masilla fresca</translation>
    </message>
    <message>
        <source>Grind it with the disc used on steel</source>
        <translation>Amolar con el disco usado en acero</translation>
    </message>
    <message>
        <source>Fill over the paint where it holds</source>
        <translation>Masillar sobre la pintura que agarra</translation>
    </message>
    <message>
        <source>A weld seam cannot be on this material.</source>
        <translation>No puede haber junta soldada en este material.</translation>
    </message>
    <message>
        <source>A rust hole cannot be in this material.</source>
        <translation>No puede haber agujero de óxido en este material.</translation>
    </message>
    <message>
        <source>The adhesive has not cured.</source>
        <translation>El adhesivo no ha curado.</translation>
    </message>
    <message>
        <source>It is a crack in metal.</source>
        <translation>Es una grieta en metal.</translation>
    </message>
    <message>
        <source>The dent is too deep for filler.</source>
        <translation>Abolladura demasiado honda para masilla.</translation>
    </message>
    <message>
        <source>The hole is too large for filler.</source>
        <translation>Agujero demasiado grande para masilla.</translation>
    </message>
    <message>
        <source>It is damp.</source>
        <translation>Está húmedo.</translation>
    </message>
    <message>
        <source>No filler fits here.</source>
        <translation>Ninguna masilla va aquí.</translation>
    </message>
    <message>
        <source>The panel is too near its dew point.</source>
        <translation>Panel demasiado cerca de su punto de rocío.</translation>
    </message>
    <message>
        <source>The panel is too cold.</source>
        <translation>Panel demasiado frío.</translation>
    </message>
    <message>
        <source>The panel is too hot.</source>
        <translation>Panel demasiado caliente.</translation>
    </message>
    <message>
        <source>The air is too cold.</source>
        <translation>Aire demasiado frío.</translation>
    </message>
    <message>
        <source>The air is too hot.</source>
        <translation>Aire demasiado caliente.</translation>
    </message>
    <message>
        <source>It would gel before it is spread.</source>
        <translation>Gelificaría antes de extenderse.</translation>
    </message>
    <message>
        <source>Even a thin lift would overheat.</source>
        <translation>Hasta una capa fina se recalentaría.</translation>
    </message>
    <message>
        <source>It would not sand.</source>
        <translation>No se podría lijar.</translation>
    </message>
    <message>
        <source>Something was not answered.</source>
        <translation>Algo quedó sin responder.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>masillar</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>parar</translation>
    </message>
    <message>
        <source>front face alone</source>
        <translation>solo el frente</translation>
    </message>
    <message>
        <source>both faces</source>
        <translation>ambas caras</translation>
    </message>
    <message>
        <source>zinc gauge</source>
        <translation>medidor de zinc</translation>
    </message>
    <message>
        <source>ohmmeter</source>
        <translation>óhmetro</translation>
    </message>
    <message>
        <source>broken edge</source>
        <translation>borde roto</translation>
    </message>
    <message>
        <source>back</source>
        <translation>dorso</translation>
    </message>
    <message>
        <source>tap sound</source>
        <translation>sonido al golpear</translation>
    </message>
    <message>
        <source>80 grit</source>
        <translation>grano 80</translation>
    </message>
    <message>
        <source>bending</source>
        <translation>flexión</translation>
    </message>
    <message>
        <source>vinegar</source>
        <translation>vinagre</translation>
    </message>
    <message>
        <source>magnet</source>
        <translation>imán</translation>
    </message>
    <message>
        <source>Guide coat gone</source>
        <translation>Sin restos de guía</translation>
    </message>
    <message>
        <source>Straightedge, both ways</source>
        <translation>Regla, en ambos sentidos</translation>
    </message>
    <message>
        <source>Pinholes in raking light</source>
        <translation>Poros con luz rasante</translation>
    </message>
    <message>
        <source>Nail and paper test</source>
        <translation>Prueba de uña y lija</translation>
    </message>
    <message>
        <source>Even tap sound</source>
        <translation>Sonido uniforme</translation>
    </message>
    <message>
        <source>No edge to be felt</source>
        <translation>No se nota borde</translation>
    </message>
    <message>
        <source>identify</source>
        <translation>identificar</translation>
    </message>
    <message>
        <source>decide</source>
        <translation>decidir</translation>
    </message>
    <message>
        <source>prepare</source>
        <translation>preparar</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezclar</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tiempos</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>acabar</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Kind of damage</source>
        <translation>Tipo de daño</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Kind of weld</source>
        <translation>Tipo de soldadura</translation>
    </message>
    <message>
        <source>Adhesive</source>
        <translation>Adhesivo</translation>
    </message>
    <message>
        <source>Reach from behind</source>
        <translation>Acceso por detrás</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Dry or damp</source>
        <translation>Seco o húmedo</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Núcleo</translation>
    </message>
    <message>
        <source>Fill or stop</source>
        <translation>Masillar o parar</translation>
    </message>
    <message>
        <source>Why stop</source>
        <translation>Por qué parar</translation>
    </message>
    <message>
        <source>What instead</source>
        <translation>Qué en su lugar</translation>
    </message>
    <message>
        <source>Which filler</source>
        <translation>Qué masilla</translation>
    </message>
    <message>
        <source>Steps left out</source>
        <translation>Pasos omitidos</translation>
    </message>
    <message>
        <source>Steps too many</source>
        <translation>Pasos de más</translation>
    </message>
    <message>
        <source>Order of steps</source>
        <translation>Orden de pasos</translation>
    </message>
    <message>
        <source>Thickness in one go</source>
        <translation>Espesor de una vez</translation>
    </message>
    <message>
        <source>Built up</source>
        <translation>Relleno</translation>
    </message>
    <message>
        <source>Amount mixed</source>
        <translation>Masilla mezclada</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Endurecedor</translation>
    </message>
    <message>
        <source>Edges cleared</source>
        <translation>Bordes limpios</translation>
    </message>
    <message>
        <source>When sanded</source>
        <translation>Cuándo se lijó</translation>
    </message>
    <message>
        <source>Other face</source>
        <translation>Otra cara</translation>
    </message>
    <message>
        <source>Finishing filler</source>
        <translation>Masilla de acabado</translation>
    </message>
    <message>
        <source>Inspection</source>
        <translation>Inspección</translation>
    </message>
    <message>
        <source>Wait before primer</source>
        <translation>Espera antes de imprimar</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>two times</extracomment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1, lift %2</source>
        <extracomment>%1 is a decision, %2 a number: &quot;Hardener, lift 2&quot;</extracomment>
        <translation>%1, capa %2</translation>
    </message>
    <message>
        <source>Not passed: it was filled where it must stop.</source>
        <translation>No superado: se masilló donde había que parar.</translation>
    </message>
    <message>
        <source>Not passed: it could have been filled.</source>
        <translation>No superado: se podía masillar.</translation>
    </message>
    <message>
        <source>Not passed: the wrong filler went in.</source>
        <translation>No superado: masilla equivocada.</translation>
    </message>
    <message>
        <source>Not passed: one mistake that no care makes good.</source>
        <translation>No superado: un error que ningún cuidado repara.</translation>
    </message>
    <message>
        <source>Passed.</source>
        <translation>Superado.</translation>
    </message>
    <message>
        <source>Not passed: more than one mistake in: %1.</source>
        <extracomment>%1 is a list of skills: &quot;mix, time&quot;</extracomment>
        <translation>No superado: más de un error en: %1.</translation>
    </message>
</context>
<context>
    <name>PracticeAsk</name>
    <message>
        <source>Look at the panel</source>
        <translation>Mirar el panel</translation>
    </message>
    <message>
        <source>More answers</source>
        <translation>Más respuestas</translation>
    </message>
    <message>
        <source>Fill it, or stop?</source>
        <translation>¿Masillar o parar?</translation>
    </message>
    <message>
        <source>Fill it</source>
        <translation>Masillar</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Parar aquí</translation>
    </message>
    <message>
        <source>What speaks against filling? All of it</source>
        <translation>¿Qué impide masillar? Indicar todo</translation>
    </message>
    <message>
        <source>That is all</source>
        <translation>Eso es todo</translation>
    </message>
    <message>
        <source>What is done instead?</source>
        <translation>¿Qué se hace en su lugar?</translation>
    </message>
    <message>
        <source>Which filler is put on first?</source>
        <translation>¿Qué masilla va primero?</translation>
    </message>
    <message>
        <source>Tap what is done, in its order</source>
        <translation>Pulsar lo que se hace, en su orden</translation>
    </message>
    <message>
        <source>Prepared</source>
        <translation>Preparado</translation>
    </message>
    <message>
        <source>How thick is the next lift?</source>
        <translation>¿Espesor de la próxima capa?</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Key in its thickness</source>
        <translation>Teclear el espesor</translation>
    </message>
    <message>
        <source>Mix for it</source>
        <translation>A mezclar</translation>
    </message>
    <message>
        <source>Another lift on this face</source>
        <translation>Otra capa en esta cara</translation>
    </message>
    <message>
        <source>Turn the panel, fill the back</source>
        <translation>Voltear el panel, masillar el dorso</translation>
    </message>
    <message>
        <source>Finishing filler</source>
        <translation>Masilla de acabado</translation>
    </message>
    <message>
        <source>It is sanded. What comes next?</source>
        <translation>Lijado. ¿Qué sigue?</translation>
    </message>
    <message>
        <source>Finishing filler: how many coats, how thick?</source>
        <translation>Masilla de acabado: ¿cuántas manos, qué espesor?</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>Manos</translation>
    </message>
    <message>
        <source>Key in how many</source>
        <translation>Teclear cuántas</translation>
    </message>
    <message>
        <source>Each coat</source>
        <translation>Cada mano</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Acabado</translation>
    </message>
    <message>
        <source>What do you look for before primer?</source>
        <translation>¿Qué se busca antes de imprimar?</translation>
    </message>
    <message>
        <source>How long after the last sanding comes primer?</source>
        <translation>Tras el último lijado, ¿cuándo se imprima?</translation>
    </message>
    <message>
        <source>Wait</source>
        <translation>Espera</translation>
    </message>
    <message>
        <source>Key in the minutes</source>
        <translation>Teclear los minutos</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Practice panel</source>
        <translation>Panel de práctica</translation>
    </message>
</context>
<context>
    <name>PracticeHome</name>
    <message>
        <source>Practice: nobody is at the bench</source>
        <translation>Práctica: nadie en el puesto</translation>
    </message>
    <message>
        <source>Practice: %1</source>
        <translation>Práctica: %1</translation>
    </message>
    <message>
        <source>Practise: nothing here is in the shop’s record</source>
        <translation>Practicar: nada de esto va al registro del taller</translation>
    </message>
    <message>
        <source>exercises: %1</source>
        <extracomment>%1 is a skill: &quot;mix&quot;</extracomment>
        <translation>practica: %1</translation>
    </message>
    <message>
        <source>Go on with the panel</source>
        <translation>Seguir con el panel</translation>
    </message>
    <message>
        <source>Next panel</source>
        <translation>Próximo panel</translation>
    </message>
    <message>
        <source>A panel made up</source>
        <translation>Un panel inventado</translation>
    </message>
    <message>
        <source>never the same again</source>
        <translation>nunca se repite</translation>
    </message>
    <message>
        <source>Skills</source>
        <translation>Destrezas</translation>
    </message>
    <message>
        <source>what is mastered</source>
        <translation>lo dominado</translation>
    </message>
    <message>
        <source>Tour</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>three minutes</source>
        <translation>tres minutos</translation>
    </message>
    <message>
        <source>not tried yet</source>
        <translation>aún sin probar</translation>
    </message>
    <message>
        <source>%1 of %2 right</source>
        <translation>%1 de %2 bien</translation>
    </message>
    <message>
        <source>%1, mastered</source>
        <extracomment>%1 is &quot;8 of 10 right&quot;</extracomment>
        <translation>%1, dominado</translation>
    </message>
    <message>
        <source>%1, not mastered yet</source>
        <translation>%1, aún no dominado</translation>
    </message>
</context>
<context>
    <name>PracticeRules</name>
    <message>
        <source>Every test on the panel must fit the material named.</source>
        <translation>Cada prueba del panel debe cuadrar con el material indicado.</translation>
    </message>
    <message>
        <source>One test speaks against it: %1.</source>
        <extracomment>%1 is a test: &quot;tap sound&quot;</extracomment>
        <translation>Una prueba lo desmiente: %1.</translation>
    </message>
    <message>
        <source>No test tells %1 materials apart here: that is unknown.</source>
        <extracomment>%1 is a number</extracomment>
        <translation>Ninguna prueba distingue aquí %1 materiales: es desconocido.</translation>
    </message>
    <message>
        <source>The kind of damage sets how it is cut and filled.</source>
        <translation>El tipo de daño decide cómo se corta y se masilla.</translation>
    </message>
    <message>
        <source>A length within %1 or %2, a width or depth within %3 or %4. A crack counts from tip to tip.</source>
        <extracomment>%1 and %3 are percentages, %2 and %4 lengths</extracomment>
        <translation>Largo con margen de %1 o %2; ancho o profundidad, de %3 o %4. Una grieta cuenta de punta a punta.</translation>
    </message>
    <message>
        <source>Only a solid weld is filled; look at both sides.</source>
        <translation>Solo se masilla una soldadura continua; mirar ambos lados.</translation>
    </message>
    <message>
        <source>A nail tells whether the adhesive has cured.</source>
        <translation>La uña dice si el adhesivo ha curado.</translation>
    </message>
    <message>
        <source>Reached from behind means by hand, not by a mirror.</source>
        <translation>Acceso por detrás es con la mano, no con espejo.</translation>
    </message>
    <message>
        <source>What is on the surface is told by cloth and nail.</source>
        <translation>Lo que hay en la superficie lo dicen paño y uña.</translation>
    </message>
    <message>
        <source>What carries load, restrains or sees reaches %1 round it.</source>
        <extracomment>%1 is a length</extracomment>
        <translation>Lo que soporta carga, retiene o ve abarca %1 a su alrededor.</translation>
    </message>
    <message>
        <source>A taped foil tells dry from damp.</source>
        <translation>Un film pegado distingue seco de húmedo.</translation>
    </message>
    <message>
        <source>An open edge shows what lies between the skins.</source>
        <translation>Un borde abierto muestra lo que hay entre las pieles.</translation>
    </message>
    <message>
        <source>The decision table says it for the answers given.</source>
        <translation>Lo dice la tabla de decisión para estas respuestas.</translation>
    </message>
    <message>
        <source>By the answers given, this stops it: %1.</source>
        <translation>Según las respuestas, lo para esto: %1.</translation>
    </message>
    <message>
        <source>By the answers given, nothing stops it.</source>
        <translation>Según las respuestas, nada lo para.</translation>
    </message>
    <message>
        <source>Whoever stops says what must be put right, all of it.</source>
        <translation>Al parar se dice todo lo que hay que corregir.</translation>
    </message>
    <message>
        <source>Each stop has its own way out.</source>
        <translation>Cada alto tiene su propia salida.</translation>
    </message>
    <message>
        <source>Best for this damage on this material: %1.</source>
        <extracomment>%1 is a filler</extracomment>
        <translation>Lo mejor para este daño en este material: %1.</translation>
    </message>
    <message>
        <source>It may be used, but another is better: %1.</source>
        <translation>Se puede usar, pero otra es mejor: %1.</translation>
    </message>
    <message>
        <source>The table refuses it here: %1.</source>
        <translation>La tabla de usos la rechaza: %1.</translation>
    </message>
    <message>
        <source>No step of the plan is left out.</source>
        <translation>No se omite ningún paso del plan.</translation>
    </message>
    <message>
        <source>Nothing is done that does not belong here.</source>
        <translation>No se hace nada que no corresponda aquí.</translation>
    </message>
    <message>
        <source>Each step comes before the one that would spoil it.</source>
        <translation>Cada paso va antes del que lo estropearía.</translation>
    </message>
    <message>
        <source>At most %1 in one go, and no hotter than %2.</source>
        <extracomment>%1 is a thickness, %2 a temperature</extracomment>
        <translation>Máximo %1 de una vez, y no pasar de %2.</translation>
    </message>
    <message>
        <source>The face is full to within %1.</source>
        <extracomment>%1 is a thickness</extracomment>
        <translation>La cara está llena, margen %1.</translation>
    </message>
    <message>
        <source>At most %1 too little or %2 too much.</source>
        <extracomment>%1 and %2 are percentages</extracomment>
        <translation>Como mucho, %1 de menos o %2 de más.</translation>
    </message>
    <message>
        <source>%1 hardener of filler mass, from %2 to %3.</source>
        <extracomment>three shares</extracomment>
        <translation>Endurecedor, %1 de la masa de masilla, de %2 a %3.</translation>
    </message>
    <message>
        <source>Edges are cleared from %1 of the gel time to the gel.</source>
        <extracomment>%1 is a share</extracomment>
        <translation>Los bordes se limpian desde %1 del tiempo de gel hasta el gel.</translation>
    </message>
    <message>
        <source>Sanding waits for %1 cured at the face, and is easy for a while.</source>
        <extracomment>%1 is a share</extracomment>
        <translation>Se lija con %1 curado en superficie; es fácil durante un rato.</translation>
    </message>
    <message>
        <source>A hole through a laminate is filled from both faces.</source>
        <translation>Un agujero pasante en laminado se masilla por ambas caras.</translation>
    </message>
    <message>
        <source>A coat at most %1, in all at most %2, full to within %3.</source>
        <extracomment>two thicknesses, and a tolerance</extracomment>
        <translation>Cada mano, máximo %1; en total, máximo %2; llena, margen %3.</translation>
    </message>
    <message>
        <source>All tests are made before primer.</source>
        <translation>Todas las pruebas, antes de imprimar.</translation>
    </message>
    <message>
        <source>Primer waits at least %1 after the last sanding.</source>
        <extracomment>%1 is a time</extracomment>
        <translation>La imprimación espera al menos %1 tras el último lijado.</translation>
    </message>
</context>
<context>
    <name>ProductFiles</name>
    <message>
        <source>This file is no sheet that can be used</source>
        <translation>Este archivo no es una ficha utilizable</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Otro archivo</translation>
    </message>
    <message>
        <source>Which product sheet is to be read?</source>
        <translation>¿Qué ficha de producto se lee?</translation>
    </message>
    <message>
        <source>There is no JSON and no CSV file in this folder.</source>
        <translation>En esta carpeta no hay archivos JSON ni CSV.</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Otra carpeta</translation>
    </message>
</context>
<context>
    <name>ProductSheets</name>
    <message>
        <source>Short name in files</source>
        <translation>Nombre corto en archivos</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Demo sheet</source>
        <translation>Ficha de muestra</translation>
    </message>
    <message>
        <source>Kind of filler</source>
        <translation>Tipo de masilla</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>Working time</source>
        <translation>Tiempo de trabajo</translation>
    </message>
    <message>
        <source>Working time, at least</source>
        <translation>Trabajo, mínimo</translation>
    </message>
    <message>
        <source>Working time, at most</source>
        <translation>Trabajo, máximo</translation>
    </message>
    <message>
        <source>Sands after</source>
        <translation>Se lija tras</translation>
    </message>
    <message>
        <source>Sands after, at least</source>
        <translation>Se lija tras, mínimo</translation>
    </message>
    <message>
        <source>Sands after, at most</source>
        <translation>Se lija tras, máximo</translation>
    </message>
    <message>
        <source>Sands easily for</source>
        <translation>Se lija fácil durante</translation>
    </message>
    <message>
        <source>Layer that was sanded</source>
        <translation>Capa que se lijó</translation>
    </message>
    <message>
        <source>Times stated at</source>
        <translation>Tiempos dados a</translation>
    </message>
    <message>
        <source>Heat of cure</source>
        <translation>Calor de curado</translation>
    </message>
    <message>
        <source>Specific heat</source>
        <translation>Calor específico</translation>
    </message>
    <message>
        <source>Conductivity</source>
        <translation>Conductividad</translation>
    </message>
    <message>
        <source>Greatest lift</source>
        <translation>Capa máxima</translation>
    </message>
    <message>
        <source>Greatest in all coats</source>
        <translation>Máximo en total</translation>
    </message>
    <message>
        <source>Shrinkage</source>
        <translation>Merma</translation>
    </message>
    <message>
        <source>Styrene</source>
        <translation>Estireno</translation>
    </message>
    <message>
        <source>Hardener share</source>
        <translation>Parte de endurecedor</translation>
    </message>
    <message>
        <source>Hardener, lowest</source>
        <translation>Endurecedor, mínimo</translation>
    </message>
    <message>
        <source>Hardener, highest</source>
        <translation>Endurecedor, máximo</translation>
    </message>
    <message>
        <source>With a caution from</source>
        <translation>Con aviso desde</translation>
    </message>
    <message>
        <source>With a caution up to</source>
        <translation>Con aviso hasta</translation>
    </message>
    <message>
        <source>Peroxide in hardener</source>
        <translation>Parte de peróxido</translation>
    </message>
    <message>
        <source>Hardener in a bead</source>
        <translation>Endurecedor por cordón</translation>
    </message>
    <message>
        <source>Panel, coldest</source>
        <translation>Panel, mínimo</translation>
    </message>
    <message>
        <source>Panel, hottest</source>
        <translation>Panel, máximo</translation>
    </message>
    <message>
        <source>Panel, with a caution</source>
        <translation>Panel, con aviso</translation>
    </message>
    <message>
        <source>Peak in the filler</source>
        <translation>Máximo en la masilla</translation>
    </message>
    <message>
        <source>Store from</source>
        <translation>Guardar desde</translation>
    </message>
    <message>
        <source>Store up to</source>
        <translation>Guardar hasta</translation>
    </message>
    <message>
        <source>Months sealed</source>
        <translation>Meses cerrado</translation>
    </message>
    <message>
        <source>Months opened</source>
        <translation>Meses abierto</translation>
    </message>
    <message>
        <source>Names zinc</source>
        <translation>Nombra el zinc</translation>
    </message>
    <message>
        <source>Activation energy</source>
        <translation>Energía de activación</translation>
    </message>
    <message>
        <source>Exponent m</source>
        <translation>Exponente m</translation>
    </message>
    <message>
        <source>Exponent n</source>
        <translation>Exponente n</translation>
    </message>
    <message>
        <source>Hardener exponent</source>
        <translation>Exponente del endurecedor</translation>
    </message>
    <message>
        <source>Cures to at most</source>
        <translation>Cura como máximo a</translation>
    </message>
    <message>
        <source>And for each kelvin</source>
        <translation>Y por cada kelvin</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Tiempos</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Endurecedor</translation>
    </message>
    <message>
        <source>Limits and store</source>
        <translation>Límites y almacén</translation>
    </message>
    <message>
        <source>Heat and make-up</source>
        <translation>Calor y composición</translation>
    </message>
    <message>
        <source>Law of cure</source>
        <translation>Ley de curado</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>demo sheet</source>
        <translation>ficha de muestra</translation>
    </message>
</context>
<context>
    <name>Questions</name>
    <message>
        <source>What is this panel made of?</source>
        <translation>¿De qué está hecho este panel?</translation>
    </message>
    <message>
        <source>What is wrong with it?</source>
        <translation>¿Qué daño tiene?</translation>
    </message>
    <message>
        <source>How is this seam welded?</source>
        <translation>¿Cómo está soldada esta junta?</translation>
    </message>
    <message>
        <source>Has the adhesive in this seam cured?</source>
        <translation>¿Ha curado el adhesivo de esta junta?</translation>
    </message>
    <message>
        <source>How large is the damage?</source>
        <translation>¿Qué tamaño tiene el daño?</translation>
    </message>
    <message>
        <source>Can you reach it from behind?</source>
        <translation>¿Hay acceso por detrás?</translation>
    </message>
    <message>
        <source>What is on the surface now?</source>
        <translation>¿Qué hay ahora en la superficie?</translation>
    </message>
    <message>
        <source>What is this part of the vehicle for?</source>
        <translation>¿Para qué es esta parte del vehículo?</translation>
    </message>
    <message>
        <source>Is it dry right through?</source>
        <translation>¿Está seco en todo su espesor?</translation>
    </message>
    <message>
        <source>What is inside the laminate?</source>
        <translation>¿Qué hay dentro del laminado?</translation>
    </message>
    <message>
        <source>Read the air, the panel and the humidity</source>
        <translation>Medir el aire, el panel y la humedad</translation>
    </message>
    <message>
        <source>glass cloth or mat at the broken edge</source>
        <extracomment>how to tell the answer: one line on its button</extracomment>
        <translation>tejido o mat de vidrio en el borde roto</translation>
    </message>
    <message>
        <source>short loose strands, smooth on both faces</source>
        <translation>fibras cortas sueltas, liso por ambas caras</translation>
    </message>
    <message>
        <source>a magnet holds, the zinc gauge reads nothing</source>
        <translation>el imán agarra, el medidor de zinc no marca</translation>
    </message>
    <message>
        <source>a magnet holds, the zinc gauge reads zinc</source>
        <translation>el imán agarra, el medidor marca zinc</translation>
    </message>
    <message>
        <source>no magnet holds, bright and soft under a file</source>
        <translation>el imán no agarra, brillante y blando a la lima</translation>
    </message>
    <message>
        <source>marked on the back, such as &gt;PP&lt; or &gt;ABS&lt;</source>
        <translation>marca en el dorso, como &gt;PP&lt; o &gt;ABS&lt;</translation>
    </message>
    <message>
        <source>bends in the hand, marked &gt;PUR&lt;</source>
        <translation>se dobla con la mano, marca &gt;PUR&lt;</translation>
    </message>
    <message>
        <source>black strands, the ohmmeter shows a path</source>
        <translation>fibras negras, el óhmetro muestra paso</translation>
    </message>
    <message>
        <source>breaks like china, no fibre at the edge</source>
        <translation>se rompe como loza, sin fibra en el borde</translation>
    </message>
    <message>
        <source>no magnet holds, very light, marked Mg</source>
        <translation>el imán no agarra, muy ligero, marca Mg</translation>
    </message>
    <message>
        <source>none of these is certain</source>
        <translation>nada de esto se sabe con certeza</translation>
    </message>
    <message>
        <source>a groove that does not go through</source>
        <translation>un surco que no atraviesa</translation>
    </message>
    <message>
        <source>pushed in, not torn</source>
        <translation>hundido, no rasgado</translation>
    </message>
    <message>
        <source>split, nothing missing</source>
        <translation>rajado, no falta nada</translation>
    </message>
    <message>
        <source>goes right through, material is missing</source>
        <translation>atraviesa del todo, falta material</translation>
    </message>
    <message>
        <source>rust has eaten through</source>
        <translation>el óxido lo ha perforado</translation>
    </message>
    <message>
        <source>sheets joined by welding</source>
        <translation>chapas unidas por soldadura</translation>
    </message>
    <message>
        <source>panels joined by adhesive</source>
        <translation>paneles unidos con adhesivo</translation>
    </message>
    <message>
        <source>one weld without a gap from end to end</source>
        <translation>una soldadura sin huecos de punta a punta</translation>
    </message>
    <message>
        <source>round spots, the sheets loose between them</source>
        <translation>puntos redondos, chapas sueltas entre ellos</translation>
    </message>
    <message>
        <source>short welds with gaps between them</source>
        <translation>soldaduras cortas con huecos entre ellas</translation>
    </message>
    <message>
        <source>the panel itself, nothing on it</source>
        <translation>el propio panel, sin nada encima</translation>
    </message>
    <message>
        <source>cured right through and sanded dull</source>
        <translation>curada del todo y lijada mate</translation>
    </message>
    <message>
        <source>any paint where filler is to go</source>
        <translation>cualquier pintura donde irá masilla</translation>
    </message>
    <message>
        <source>filler that nobody knows</source>
        <translation>masilla que nadie conoce</translation>
    </message>
    <message>
        <source>soft, takes a nail mark</source>
        <translation>blando, la uña deja marca</translation>
    </message>
    <message>
        <source>brown or black, in the pits too</source>
        <translation>marrón o negro, también en las picaduras</translation>
    </message>
    <message>
        <source>black or blue film over old rust</source>
        <translation>película negra o azul sobre óxido viejo</translation>
    </message>
    <message>
        <source>thin, acid, often yellow or grey-green</source>
        <translation>fina, ácida, a menudo amarilla o gris verdosa</translation>
    </message>
    <message>
        <source>smells, or smears under a solvent cloth</source>
        <translation>huele, o se corre con paño de disolvente</translation>
    </message>
    <message>
        <source>soft grey metal, brown residue</source>
        <translation>metal gris blando, residuo marrón</translation>
    </message>
    <message>
        <source>skin, skirt, fairing: nothing depends on it</source>
        <translation>piel, faldón, carenado: nada depende de ello</translation>
    </message>
    <message>
        <source>pillar, rail, or within 30 cm of brake, steering, suspension</source>
        <translation>pilar, larguero, o a menos de 30 cm de freno, dirección, suspensión</translation>
    </message>
    <message>
        <source>belt or seat mounting, glass flange, airbag, high voltage</source>
        <translation>anclaje de cinturón o asiento, pestaña de vidrio, airbag, alta tensión</translation>
    </message>
    <message>
        <source>radar, camera or ultrasound looks through it</source>
        <translation>radar, cámara o ultrasonido miran a través</translation>
    </message>
    <message>
        <source>tank, line or air vessel</source>
        <translation>depósito, tubería o tanque de aire</translation>
    </message>
    <message>
        <source>no mist under taped film, front and back</source>
        <translation>sin vaho bajo film pegado, frente y dorso</translation>
    </message>
    <message>
        <source>wet, dark, or mist under taped film</source>
        <translation>mojado, oscuro, o vaho bajo film pegado</translation>
    </message>
    <message>
        <source>solid laminate, nothing between two skins</source>
        <translation>laminado macizo, nada entre dos pieles</translation>
    </message>
    <message>
        <source>two skins with foam between them</source>
        <translation>dos pieles con espuma entre ellas</translation>
    </message>
    <message>
        <source>two skins with sound, dry wood</source>
        <translation>dos pieles con madera sana y seca</translation>
    </message>
    <message>
        <source>wood that is dark, soft or wet</source>
        <translation>madera oscura, blanda o mojada</translation>
    </message>
    <message>
        <source>Cured</source>
        <translation>Curado</translation>
    </message>
    <message>
        <source>Yes, both faces</source>
        <translation>Sí, ambas caras</translation>
    </message>
    <message>
        <source>Not cured</source>
        <translation>Sin curar</translation>
    </message>
    <message>
        <source>No, one face only</source>
        <translation>No, solo una cara</translation>
    </message>
    <message>
        <source>its sheet’s time is over, a nail leaves no mark</source>
        <translation>pasó el tiempo de su ficha, la uña no marca</translation>
    </message>
    <message>
        <source>hand and tool get there</source>
        <translation>llegan mano y herramienta</translation>
    </message>
    <message>
        <source>soft, or nobody knows when it was laid</source>
        <translation>blando, o nadie sabe cuándo se puso</translation>
    </message>
    <message>
        <source>closed behind, or too tight to work</source>
        <translation>cerrado por detrás, o muy estrecho para trabajar</translation>
    </message>
</context>
<context>
    <name>QuickCard</name>
    <message>
        <source>Quick card</source>
        <translation>Tarjeta rápida</translation>
    </message>
    <message>
        <source>Limits as they were set on %1; the glass shows those of now.</source>
        <extracomment>%1 is a day</extracomment>
        <translation>Límites fijados el %1; la pantalla muestra los de ahora.</translation>
    </message>
    <message>
        <source>The safety data sheets, the vehicle maker’s repair manual, local codes and licensed practice come before this card.</source>
        <translation>Las fichas de seguridad, el manual del fabricante del vehículo, las normas locales y la práctica autorizada van antes que esta tarjeta.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of several: &quot;1 of 3&quot;</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>The job in steps</source>
        <translation>El trabajo en pasos</translation>
    </message>
    <message>
        <source>Limits of this bench; a product’s own apply where they are narrower</source>
        <translation>Límites de este puesto; valen los del producto si son más estrechos</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Fijado en</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a range: &quot;1 % to 3 %&quot;</extracomment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Products in use, by their sheets</source>
        <translation>Productos en uso, según sus fichas</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Hardener, of the filler’s mass</source>
        <translation>Endurecedor, de la masa de masilla</translation>
    </message>
    <message>
        <source>Greatest lift</source>
        <translation>Capa máxima</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panel</translation>
    </message>
    <message numerus="yes">
        <source>%n more product(s) under bench set-up.</source>
        <translation>
            <numerusform>%n producto más en los ajustes del puesto.</numerusform>
            <numerusform>%n productos más en los ajustes del puesto.</numerusform>
        </translation>
    </message>
    <message>
        <source>Signs</source>
        <translation>Señales</translation>
    </message>
    <message>
        <source>Stop: do not go on here.</source>
        <translation>Alto: no seguir aquí.</translation>
    </message>
    <message>
        <source>Caution: it can hurt, or spoil the work.</source>
        <translation>Precaución: puede dañar o estropear el trabajo.</translation>
    </message>
    <message>
        <source>Done: it was told and is in the log.</source>
        <translation>Hecho: se indicó y está en el registro.</translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <source>Its resin wets the glass of a laminate.</source>
        <translation>Su resina moja el vidrio del laminado.</translation>
    </message>
    <message>
        <source>It holds on SMC that is abraded and free of dust.</source>
        <translation>Agarra en SMC lijado y sin polvo.</translation>
    </message>
    <message>
        <source>It holds on bare, abraded steel.</source>
        <translation>Agarra en acero desnudo y lijado.</translation>
    </message>
    <message>
        <source>It holds on aluminium filled within the hour.</source>
        <translation>Agarra en aluminio masillado antes de una hora.</translation>
    </message>
    <message>
        <source>On zinc only if its sheet names zinc, or over abraded epoxy primer.</source>
        <translation>En zinc, solo si su ficha lo nombra o sobre imprimación epoxi lijada.</translation>
    </message>
    <message>
        <source>Dense filler has the fewest pores over a ground weld.</source>
        <translation>La masilla densa es la de menos poros sobre soldadura amolada.</translation>
    </message>
    <message>
        <source>Dense filler shows the bond line least when it swells.</source>
        <translation>La masilla densa es la que menos marca el pegado al hincharse.</translation>
    </message>
    <message>
        <source>Its short strands hold only in a small hole.</source>
        <translation>Sus fibras cortas solo aguantan en un agujero pequeño.</translation>
    </message>
    <message>
        <source>Light filler holds poorly on SMC.</source>
        <translation>La masilla ligera agarra mal en SMC.</translation>
    </message>
    <message>
        <source>Light filler has pores that let water to the zinc.</source>
        <translation>La masilla ligera tiene poros que dejan pasar agua al zinc.</translation>
    </message>
    <message>
        <source>Light filler has pores that let water to the aluminium.</source>
        <translation>La masilla ligera tiene poros que dejan pasar agua al aluminio.</translation>
    </message>
    <message>
        <source>Light filler only over a weld without pores.</source>
        <translation>Masilla ligera, solo sobre soldadura sin poros.</translation>
    </message>
    <message>
        <source>It takes a bond seam whose adhesive has cured.</source>
        <translation>Admite una junta pegada con adhesivo curado.</translation>
    </message>
    <message>
        <source>Light filler cannot bridge a hole.</source>
        <translation>La masilla ligera no puede puentear un agujero.</translation>
    </message>
    <message>
        <source>Mixed strand bonds best to SMC.</source>
        <translation>La fibra mixta es la que mejor pega en SMC.</translation>
    </message>
    <message>
        <source>It takes a solid weld that is ground level.</source>
        <translation>Admite una soldadura continua amolada a ras.</translation>
    </message>
    <message>
        <source>Mixed strand bridges a hole and wets its edges.</source>
        <translation>La fibra mixta puentea un agujero y moja sus bordes.</translation>
    </message>
    <message>
        <source>Long strand builds bulk.</source>
        <translation>La fibra larga da volumen.</translation>
    </message>
    <message>
        <source>Long strand has too little resin to wet SMC.</source>
        <translation>La fibra larga tiene poca resina para mojar SMC.</translation>
    </message>
    <message>
        <source>Long strand is coarse and lets water to the zinc.</source>
        <translation>La fibra larga es basta y deja pasar agua al zinc.</translation>
    </message>
    <message>
        <source>Long strand is coarse and lets water to the aluminium.</source>
        <translation>La fibra larga es basta y deja pasar agua al aluminio.</translation>
    </message>
    <message>
        <source>Long strand leaves voids over a weld.</source>
        <translation>La fibra larga deja huecos sobre una soldadura.</translation>
    </message>
    <message>
        <source>Long strand leaves voids over a bond line.</source>
        <translation>La fibra larga deja huecos sobre una línea de pegado.</translation>
    </message>
    <message>
        <source>Long strand only bridges; mixed strand must go over it.</source>
        <translation>La fibra larga solo puentea; encima debe ir fibra mixta.</translation>
    </message>
    <message>
        <source>The table does not say that it may be used here.</source>
        <translation>La tabla de usos no dice que se pueda usar aquí.</translation>
    </message>
    <message>
        <source>No product sheet of this class is loaded.</source>
        <translation>No hay cargada ficha de producto de esta clase.</translation>
    </message>
    <message>
        <source>%1 suits better here.</source>
        <extracomment>%1 is a filler class: &quot;mixed strand&quot;</extracomment>
        <translation>%1 va mejor aquí.</translation>
    </message>
    <message>
        <source>The dent is %1 deep: metal-work aims at %2 or less.</source>
        <translation>La abolladura tiene %1 de hondo: en chapa se busca %2 o menos.</translation>
    </message>
    <message>
        <source>The panel is at %1, below %2: it cures slower and grips less.</source>
        <translation>El panel está a %1, bajo %2: cura más lento y agarra menos.</translation>
    </message>
    <message>
        <source>The hole is %1 across: bond a backing first, lapping %2.</source>
        <translation>El agujero mide %1: pegar antes un respaldo, con solape de %2.</translation>
    </message>
    <message>
        <source>No bevel is given: filler cracks out of square edges.</source>
        <translation>No se indicó bisel: la masilla salta de los cantos vivos.</translation>
    </message>
    <message>
        <source>%1 is too little to measure by a bead: weigh it to 0.01 g, or mix %2 and book the waste.</source>
        <translation>%1 es poco para medir con cordón: pesar a 0,01 g, o mezclar %2 y anotar el desperdicio.</translation>
    </message>
    <message>
        <source>The puddle is only %1 across, below %2: weigh instead.</source>
        <translation>La torta mide solo %1, menos de %2: mejor pesar.</translation>
    </message>
    <message>
        <source>The puddle is %1 across, above %2: split the batch.</source>
        <translation>La torta mide %1, más de %2: dividir la mezcla.</translation>
    </message>
    <message>
        <source>The puddle is %1 across, the board %2: split the batch.</source>
        <translation>La torta mide %1, la tabla %2: dividir la mezcla.</translation>
    </message>
    <message>
        <source>Demo sheet: its values are invented, not for work.</source>
        <translation>Ficha de muestra: sus valores son inventados, no para trabajar.</translation>
    </message>
    <message>
        <source>%1 in one go reaches %2, limit %3: %4 lifts.</source>
        <extracomment>%1 is a thickness, %2 and %3 temperatures, %4 a number above one</extracomment>
        <translation>%1 de una vez llega a %2, límite %3: %4 capas.</translation>
    </message>
    <message>
        <source>At most %1 in one go today: more would pass %2.</source>
        <translation>Hoy como mucho %1 de una vez: más pasaría de %2.</translation>
    </message>
    <message>
        <source>Nobody reaches behind it: %1 bridges the backing, %2 goes over it.</source>
        <extracomment>%1 is the hole&apos;s size, %2 how far the backing laps its edge</extracomment>
        <translation>Nadie llega por detrás: %1 puentea el respaldo, %2 va encima.</translation>
    </message>
    <message>
        <source>The hardener lot in hand cures %1 faster than its sheet: planned for that.</source>
        <extracomment>%1 is a share: &quot;8 %&quot;</extracomment>
        <translation>El lote de endurecedor en uso cura %1 más rápido que su ficha: así se planificó.</translation>
    </message>
    <message>
        <source>The hardener lot in hand cures %1 slower than its sheet: planned for that.</source>
        <translation>El lote de endurecedor en uso cura %1 más lento que su ficha: así se planificó.</translation>
    </message>
    <message>
        <source>Overridden by the supervisor: %1.</source>
        <extracomment>%1 is a stop: &quot;Damp&quot;</extracomment>
        <translation>Anulado por el supervisor: %1.</translation>
    </message>
</context>
<context>
    <name>RecallList</name>
    <message>
        <source>Recall list · %1 · lot %2</source>
        <extracomment>%1 is a product, %2 a lot</extracomment>
        <translation>Lista de retirada · %1 · lote %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of a list: &quot;1 of 3&quot;</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n mezcla</numerusform>
            <numerusform>%n mezclas</numerusform>
        </translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panel</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Mezcla</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Every batch that this bench’s log names with this lot; batches whose lot was not told are not among them.</source>
        <translation>Cada mezcla que el registro de este puesto nombra con este lote; las mezclas sin lote indicado no están.</translation>
    </message>
</context>
<context>
    <name>RecordScreen</name>
    <message>
        <source>Deviation</source>
        <translation>Desviación</translation>
    </message>
</context>
<context>
    <name>Review</name>
    <message>
        <source>at work</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>to sign off or return</source>
        <translation>por firmar o devolver</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>firmado</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>What the panel is made of was not found out.</source>
        <translation>No se averiguó de qué es el panel.</translation>
    </message>
    <message>
        <source>No photo: %1.</source>
        <extracomment>%1 is a moment: &quot;as found&quot;</extracomment>
        <translation>Sin foto: %1.</translation>
    </message>
    <message>
        <source>Lot of the filler not told.</source>
        <translation>Lote de la masilla no indicado.</translation>
    </message>
    <message>
        <source>Lot of the hardener not told.</source>
        <translation>Lote del endurecedor no indicado.</translation>
    </message>
    <message>
        <source>No reading of air and panel before the first hardener.</source>
        <translation>Sin lectura de aire y panel antes del primer endurecedor.</translation>
    </message>
    <message>
        <source>Air and humidity were keyed in, not read by an instrument.</source>
        <translation>Aire y humedad se teclearon, no los leyó un instrumento.</translation>
    </message>
    <message>
        <source>Filler and hardener were not weighed.</source>
        <translation>Masilla y endurecedor no se pesaron.</translation>
    </message>
    <message>
        <source>Not told when the edges were clear.</source>
        <translation>No se indicó cuándo estaban limpios los bordes.</translation>
    </message>
    <message>
        <source>Nail and paper test not told.</source>
        <translation>Prueba de uña y lija no indicada.</translation>
    </message>
    <message>
        <source>Tests of the hand-over not passed: %1.</source>
        <extracomment>%1 is a number</extracomment>
        <translation>Pruebas de entrega no superadas: %1.</translation>
    </message>
    <message>
        <source>Acts without a name: %1.</source>
        <extracomment>%1 is a number</extracomment>
        <translation>Acciones sin nombre: %1.</translation>
    </message>
    <message>
        <source>Not told who allowed: %1.</source>
        <extracomment>%1 is a stop: &quot;Damp&quot;</extracomment>
        <translation>No consta quién permitió: %1.</translation>
    </message>
    <message>
        <source>assessing</source>
        <translation>evaluar</translation>
    </message>
    <message>
        <source>preparing</source>
        <translation>preparar</translation>
    </message>
    <message>
        <source>laying</source>
        <translation>aplicar</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>curar</translation>
    </message>
    <message>
        <source>sanding</source>
        <translation>lijar</translation>
    </message>
    <message>
        <source>turning</source>
        <translation>voltear</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation>acabar</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>apartado</translation>
    </message>
    <message>
        <source>All repairs</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Puesto</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>This bench</source>
        <translation>Este puesto</translation>
    </message>
    <message>
        <source>Bench %1</source>
        <translation>Puesto %1</translation>
    </message>
    <message>
        <source>Not told by what the substrate was found out.</source>
        <translation>No se indicó cómo se reconoció el sustrato.</translation>
    </message>
</context>
<context>
    <name>ReviewChoices</name>
    <message>
        <source>Which repairs of the day?</source>
        <translation>¿Qué reparaciones del día?</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n reparación</numerusform>
            <numerusform>%n reparaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>No repair of that day has one.</source>
        <translation>Ninguna reparación de ese día tiene.</translation>
    </message>
    <message>
        <source>Why is it returned?</source>
        <translation>¿Por qué se devuelve?</translation>
    </message>
    <message>
        <source>More reasons</source>
        <translation>Más motivos</translation>
    </message>
</context>
<context>
    <name>Roles</name>
    <message>
        <source>edges due soon</source>
        <translation>bordes dentro de poco</translation>
    </message>
    <message>
        <source>it gels</source>
        <translation>gelifica</translation>
    </message>
    <message>
        <source>it sands</source>
        <translation>se puede lijar</translation>
    </message>
    <message>
        <source>sanding time over</source>
        <translation>fin del tiempo de lijado</translation>
    </message>
    <message>
        <source>Hands off: it gels</source>
        <translation>No tocar: gelifica</translation>
    </message>
    <message>
        <source>Sand: it is ready</source>
        <translation>Lijar: está listo</translation>
    </message>
    <message>
        <source>Sand now: it hardens</source>
        <translation>Lijar ya: se endurece</translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>firma</translation>
    </message>
    <message>
        <source>override of a stop</source>
        <translation>anulación de un alto</translation>
    </message>
    <message>
        <source>change of a product sheet</source>
        <translation>cambio de una ficha</translation>
    </message>
    <message>
        <source>restoring a backup</source>
        <translation>restauración de una copia</translation>
    </message>
    <message>
        <source>forgetting a lot</source>
        <translation>olvido de un lote</translation>
    </message>
    <message>
        <source>correction of a record</source>
        <translation>corrección de un registro</translation>
    </message>
    <message>
        <source>change of the PIN</source>
        <translation>cambio del PIN</translation>
    </message>
    <message>
        <source>without a PIN</source>
        <translation>sin PIN</translation>
    </message>
    <message>
        <source>wrong PIN</source>
        <translation>PIN erróneo</translation>
    </message>
    <message>
        <source>within the wait after wrong PINs</source>
        <translation>en la espera tras PIN erróneos</translation>
    </message>
    <message>
        <source>no PIN is set</source>
        <translation>no hay PIN</translation>
    </message>
    <message>
        <source>the try could not be counted</source>
        <translation>el intento no se pudo contar</translation>
    </message>
    <message>
        <source>Proved by another test</source>
        <translation>Probado con otro ensayo</translation>
    </message>
    <message>
        <source>The vehicle maker’s manual allows it</source>
        <translation>El manual del fabricante lo permite</translation>
    </message>
    <message>
        <source>A trial piece, not for a vehicle</source>
        <translation>Pieza de prueba, no para un vehículo</translation>
    </message>
    <message>
        <source>Clear the edges: %1</source>
        <extracomment>%1 is a time left: &quot;0:20&quot;</extracomment>
        <translation>Limpiar los bordes: %1</translation>
    </message>
    <message>
        <source>Clear the edges now</source>
        <translation>Limpiar ya los bordes</translation>
    </message>
    <message numerus="yes">
        <source>+%n more</source>
        <translation>
            <numerusform>+%n más</numerusform>
            <numerusform>+%n más</numerusform>
        </translation>
    </message>
    <message>
        <source>Clock set on by %1. Mixes run on.</source>
        <translation>Reloj adelantado %1. Las mezclas siguen.</translation>
    </message>
    <message>
        <source>Clock set back by %1. Mixes run on.</source>
        <translation>Reloj atrasado %1. Las mezclas siguen.</translation>
    </message>
    <message>
        <source>The machine slept %1. Mixes ran on.</source>
        <translation>Equipo suspendido %1. Las mezclas siguieron.</translation>
    </message>
    <message>
        <source>Local time goes on by %1. Mixes run on.</source>
        <translation>La hora local avanza %1. Las mezclas siguen.</translation>
    </message>
    <message>
        <source>Local time goes back by %1. Mixes run on.</source>
        <translation>La hora local retrocede %1. Las mezclas siguen.</translation>
    </message>
    <message>
        <source>The machine restarted after %1. Mixes ran on.</source>
        <translation>Equipo reiniciado tras %1. Las mezclas siguieron.</translation>
    </message>
    <message>
        <source>The clock stands %1 behind the log: set it.</source>
        <translation>El reloj va %1 por detrás del registro: ajustarlo.</translation>
    </message>
    <message>
        <source>Refused: %1, %2</source>
        <extracomment>%1 is an act, %2 why: &quot;sign-off&quot;, &quot;wrong PIN&quot;</extracomment>
        <translation>Denegado: %1, %2</translation>
    </message>
    <message>
        <source>Supervisor’s PIN set at the machine</source>
        <translation>PIN del supervisor fijado en el equipo</translation>
    </message>
    <message>
        <source>Supervisor’s PIN set</source>
        <translation>PIN del supervisor fijado</translation>
    </message>
    <message>
        <source>Log restored from a backup, whole: %1 entries</source>
        <translation>Registro restaurado de una copia, completo: %1 entradas</translation>
    </message>
    <message>
        <source>Log restored from a backup, as far as it could be read: %1 entries</source>
        <translation>Registro restaurado de una copia, hasta donde se pudo leer: %1 entradas</translation>
    </message>
    <message>
        <source>Log of bench %1 brought in: %2 entries</source>
        <extracomment>%1 is a bench&apos;s name, %2 a number</extracomment>
        <translation>Registro del puesto %1 incorporado: %2 entradas</translation>
    </message>
    <message>
        <source>Bead of hardener %1 calibrated: %2, scatter %3</source>
        <extracomment>%1 is a lot, %2 a mass per length, %3 a percentage</extracomment>
        <translation>Cordón del endurecedor %1 calibrado: %2, dispersión %3</translation>
    </message>
    <message>
        <source>Product sheet kept: %1</source>
        <extracomment>%1 is the sheet&apos;s id</extracomment>
        <translation>Ficha de producto guardada: %1</translation>
    </message>
    <message>
        <source>Product sheet laid aside: %1</source>
        <translation>Ficha de producto apartada: %1</translation>
    </message>
    <message>
        <source>return</source>
        <translation>devolución</translation>
    </message>
    <message>
        <source>The contour is not true</source>
        <translation>El contorno no es correcto</translation>
    </message>
    <message>
        <source>Pinholes</source>
        <translation>Poros</translation>
    </message>
    <message>
        <source>An edge shows or maps</source>
        <translation>Se ve o se marca un borde</translation>
    </message>
    <message>
        <source>Filler is soft</source>
        <translation>La masilla está blanda</translation>
    </message>
    <message>
        <source>Sounds hollow: it does not hold</source>
        <translation>Suena hueco: no agarra</translation>
    </message>
    <message>
        <source>Strayed too far from plan or sheet</source>
        <translation>Se apartó demasiado del plan o de la ficha</translation>
    </message>
    <message>
        <source>The record lacks what it must hold</source>
        <translation>Al registro le falta lo que debe tener</translation>
    </message>
    <message>
        <source>Something else: in words</source>
        <translation>Otra cosa: con palabras</translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>bench.ini: not allowed and left out: %1</source>
        <translation>bench.ini: no permitido, omitido: %1</translation>
    </message>
</context>
<context>
    <name>SideKey</name>
    <message>
        <source>Photo: %1</source>
        <extracomment>%1 is when: &quot;as found&quot;, &quot;bare&quot;, &quot;filled&quot;, &quot;guide coat&quot;</extracomment>
        <translation>Foto: %1</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>hecha %1</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún ninguna</translation>
    </message>
</context>
<context>
    <name>SkillsPaper</name>
    <message>
        <source>filled where it must stop</source>
        <translation>masillado pese al alto</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>superado</translation>
    </message>
    <message>
        <source>not passed</source>
        <translation>no superado</translation>
    </message>
    <message>
        <source>Practice · %1</source>
        <extracomment>%1 is a person</extracomment>
        <translation>Práctica · %1</translation>
    </message>
    <message>
        <source>Practice panels alone; nothing of this is in the shop’s record. It says what was practised, not what somebody may do.</source>
        <translation>Solo paneles de práctica; nada de esto está en el registro del taller. Dice qué se practicó, no qué está alguien autorizado a hacer.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of several: &quot;1 of 3&quot;</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Skill</source>
        <translation>Destreza</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Paneles</translation>
    </message>
    <message>
        <source>Likely known</source>
        <translation>Dominio probable</translation>
    </message>
    <message>
        <source>Mastered: known with a probability of 95 % by knowledge tracing (Corbett and Anderson, 1995).</source>
        <translation>Dominado: sabido con probabilidad del 95&#xa0;% según «knowledge tracing» (Corbett y Anderson, 1995).</translation>
    </message>
    <message>
        <source>Panels worked</source>
        <translation>Paneles hechos</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panel</translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation>Cómo acabó</translation>
    </message>
    <message>
        <source>Mistakes</source>
        <translation>Errores</translation>
    </message>
    <message>
        <source>Choose where the skills go</source>
        <translation>Elegir destino de las destrezas</translation>
    </message>
</context>
<context>
    <name>Statements</name>
    <message>
        <source>Extremely flammable aerosol.</source>
        <translation>Aerosol extremadamente inflamable.</translation>
    </message>
    <message>
        <source>Highly flammable liquid and vapour.</source>
        <translation>Líquido y vapores muy inflamables.</translation>
    </message>
    <message>
        <source>Flammable liquid and vapour.</source>
        <translation>Líquidos y vapores inflamables.</translation>
    </message>
    <message>
        <source>Flammable solid.</source>
        <translation>Sólido inflamable.</translation>
    </message>
    <message>
        <source>Pressurised container: may burst if heated.</source>
        <translation>Recipiente a presión: puede reventar si se calienta.</translation>
    </message>
    <message>
        <source>Heating may cause a fire or explosion.</source>
        <translation>Peligro de incendio o explosión en caso de calentamiento.</translation>
    </message>
    <message>
        <source>Heating may cause a fire.</source>
        <translation>Peligro de incendio en caso de calentamiento.</translation>
    </message>
    <message>
        <source>In contact with water releases flammable gases.</source>
        <translation>En contacto con el agua desprende gases inflamables.</translation>
    </message>
    <message>
        <source>May be corrosive to metals.</source>
        <translation>Puede ser corrosivo para los metales.</translation>
    </message>
    <message>
        <source>Toxic if swallowed.</source>
        <translation>Tóxico en caso de ingestión.</translation>
    </message>
    <message>
        <source>Harmful if swallowed.</source>
        <translation>Nocivo en caso de ingestión.</translation>
    </message>
    <message>
        <source>May be fatal if swallowed and enters airways.</source>
        <translation>Puede ser mortal en caso de ingestión y penetración en las vías respiratorias.</translation>
    </message>
    <message>
        <source>Harmful in contact with skin.</source>
        <translation>Nocivo en contacto con la piel.</translation>
    </message>
    <message>
        <source>Causes severe skin burns and eye damage.</source>
        <translation>Provoca quemaduras graves en la piel y lesiones oculares graves.</translation>
    </message>
    <message>
        <source>Causes skin irritation.</source>
        <translation>Provoca irritación cutánea.</translation>
    </message>
    <message>
        <source>May cause an allergic skin reaction.</source>
        <translation>Puede provocar una reacción alérgica en la piel.</translation>
    </message>
    <message>
        <source>Causes serious eye damage.</source>
        <translation>Provoca lesiones oculares graves.</translation>
    </message>
    <message>
        <source>Causes serious eye irritation.</source>
        <translation>Provoca irritación ocular grave.</translation>
    </message>
    <message>
        <source>Harmful if inhaled.</source>
        <translation>Nocivo en caso de inhalación.</translation>
    </message>
    <message>
        <source>May cause allergy or asthma symptoms or breathing difficulties if inhaled.</source>
        <translation>Puede provocar síntomas de alergia o asma o dificultades respiratorias en caso de inhalación.</translation>
    </message>
    <message>
        <source>May cause respiratory irritation.</source>
        <translation>Puede irritar las vías respiratorias.</translation>
    </message>
    <message>
        <source>May cause drowsiness or dizziness.</source>
        <translation>Puede provocar somnolencia o vértigo.</translation>
    </message>
    <message>
        <source>May cause cancer.</source>
        <translation>Puede provocar cáncer.</translation>
    </message>
    <message>
        <source>Suspected of causing cancer.</source>
        <translation>Se sospecha que provoca cáncer.</translation>
    </message>
    <message>
        <source>May damage fertility or the unborn child.</source>
        <translation>Puede perjudicar la fertilidad o dañar al feto.</translation>
    </message>
    <message>
        <source>Suspected of damaging fertility or the unborn child.</source>
        <translation>Se sospecha que perjudica la fertilidad o daña al feto.</translation>
    </message>
    <message>
        <source>Suspected of damaging the unborn child.</source>
        <translation>Se sospecha que daña al feto.</translation>
    </message>
    <message>
        <source>Causes damage to organs through prolonged or repeated exposure.</source>
        <translation>Provoca daños en los órganos tras exposiciones prolongadas o repetidas.</translation>
    </message>
    <message>
        <source>May cause damage to organs through prolonged or repeated exposure.</source>
        <translation>Puede provocar daños en los órganos tras exposiciones prolongadas o repetidas.</translation>
    </message>
    <message>
        <source>Very toxic to aquatic life.</source>
        <translation>Muy tóxico para los organismos acuáticos.</translation>
    </message>
    <message>
        <source>Very toxic to aquatic life with long lasting effects.</source>
        <translation>Muy tóxico para los organismos acuáticos, con efectos nocivos duraderos.</translation>
    </message>
    <message>
        <source>Toxic to aquatic life with long lasting effects.</source>
        <translation>Tóxico para los organismos acuáticos, con efectos nocivos duraderos.</translation>
    </message>
    <message>
        <source>Harmful to aquatic life with long lasting effects.</source>
        <translation>Nocivo para los organismos acuáticos, con efectos nocivos duraderos.</translation>
    </message>
    <message>
        <source>Repeated exposure may cause skin dryness or cracking.</source>
        <translation>La exposición repetida puede provocar sequedad o formación de grietas en la piel.</translation>
    </message>
    <message>
        <source>Obtain special instructions before use.</source>
        <translation>Solicitar instrucciones especiales antes del uso.</translation>
    </message>
    <message>
        <source>Do not handle until all safety precautions have been read and understood.</source>
        <translation>No manipular antes de haber leído y comprendido todas las precauciones de seguridad.</translation>
    </message>
    <message>
        <source>Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.</source>
        <translation>Mantener alejado del calor, de superficies calientes, de chispas, de llamas abiertas y de cualquier otra fuente de ignición. No fumar.</translation>
    </message>
    <message>
        <source>Do not allow contact with water.</source>
        <translation>Evitar el contacto con el agua.</translation>
    </message>
    <message>
        <source>Keep container tightly closed.</source>
        <translation>Mantener el recipiente herméticamente cerrado.</translation>
    </message>
    <message>
        <source>Keep only in original packaging.</source>
        <translation>Conservar únicamente en el embalaje original.</translation>
    </message>
    <message>
        <source>Keep cool.</source>
        <translation>Mantener fresco.</translation>
    </message>
    <message>
        <source>Do not breathe dust/fume/gas/mist/vapours/spray.</source>
        <translation>No respirar el polvo/el humo/el gas/la niebla/los vapores/el aerosol.</translation>
    </message>
    <message>
        <source>Avoid breathing dust/fume/gas/mist/vapours/spray.</source>
        <translation>Evitar respirar el polvo/el humo/el gas/la niebla/los vapores/el aerosol.</translation>
    </message>
    <message>
        <source>Use only outdoors or in a well-ventilated area.</source>
        <translation>Utilizar únicamente en exteriores o en un lugar bien ventilado.</translation>
    </message>
    <message>
        <source>Avoid release to the environment.</source>
        <translation>Evitar su liberación al medio ambiente.</translation>
    </message>
    <message>
        <source>Wear protective gloves/protective clothing/eye protection/face protection.</source>
        <translation>Llevar guantes/ropa de protección/equipo de protección para los ojos/la cara.</translation>
    </message>
    <message>
        <source>IF SWALLOWED: Immediately call a POISON CENTER/doctor.</source>
        <translation>EN CASO DE INGESTIÓN: Llamar inmediatamente a un CENTRO DE TOXICOLOGÍA/médico.</translation>
    </message>
    <message>
        <source>IF ON SKIN: Wash with plenty of water.</source>
        <translation>EN CASO DE CONTACTO CON LA PIEL: Lavar con abundante agua.</translation>
    </message>
    <message>
        <source>IF INHALED: Remove person to fresh air and keep comfortable for breathing.</source>
        <translation>EN CASO DE INHALACIÓN: Transportar a la persona al aire libre y mantenerla en una posición que le facilite la respiración.</translation>
    </message>
    <message>
        <source>IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.</source>
        <translation>EN CASO DE CONTACTO CON LOS OJOS: Enjuagar con agua cuidadosamente durante varios minutos. Quitar las lentes de contacto cuando estén presentes y pueda hacerse con facilidad. Proseguir con el lavado.</translation>
    </message>
    <message>
        <source>IF exposed or concerned: Get medical advice/attention.</source>
        <translation>EN CASO DE exposición manifiesta o presunta: Consultar a un médico.</translation>
    </message>
    <message>
        <source>Do NOT induce vomiting.</source>
        <translation>NO provocar el vómito.</translation>
    </message>
    <message>
        <source>If skin irritation or rash occurs: Get medical advice/attention.</source>
        <translation>En caso de irritación o erupción cutánea: Consultar a un médico.</translation>
    </message>
    <message>
        <source>If eye irritation persists: Get medical advice/attention.</source>
        <translation>Si persiste la irritación ocular: Consultar a un médico.</translation>
    </message>
    <message>
        <source>Store in a well-ventilated place. Keep cool.</source>
        <translation>Almacenar en un lugar bien ventilado. Mantener fresco.</translation>
    </message>
    <message>
        <source>Protect from sunlight. Do not expose to temperatures exceeding 50 °C/122 °F.</source>
        <translation>Proteger de la luz del sol. No exponer a temperaturas superiores a 50 °C/122 °F.</translation>
    </message>
    <message>
        <source>Store separately.</source>
        <translation>Almacenar separadamente.</translation>
    </message>
    <message>
        <source>Dispose of contents/container in accordance with local regulations.</source>
        <translation>Eliminar el contenido/el recipiente conforme a la normativa local.</translation>
    </message>
</context>
<context>
    <name>StationScreens</name>
    <message>
        <source>Sanding block</source>
        <translation>Taco de lijar</translation>
    </message>
    <message>
        <source>Sand the skim to the contour, 180 grit</source>
        <translation>Lijar la capa fina al contorno, grano 180</translation>
    </message>
    <message>
        <source>Sand level, 80 grit, extraction on</source>
        <translation>Lijar a ras, grano 80, con aspiración</translation>
    </message>
    <message>
        <source>Feather it out beyond the filler.</source>
        <translation>Difuminar más allá de la masilla.</translation>
    </message>
    <message>
        <source>Coarser paper only inside the filled area. Then dust off.</source>
        <translation>Lija más basta solo dentro de lo masillado. Luego desempolvar.</translation>
    </message>
    <message>
        <source>Sanded and dusted off</source>
        <translation>Lijado y desempolvado</translation>
    </message>
    <message>
        <source>Turn the panel</source>
        <translation>Voltear el panel</translation>
    </message>
    <message>
        <source>Strip the dam, then turn the panel over</source>
        <translation>Quitar el tope y voltear el panel</translation>
    </message>
    <message>
        <source>Residue of the dam off, 80 grit, dust off.</source>
        <translation>Quitar restos del tope, grano 80, desempolvar.</translation>
    </message>
    <message>
        <source>The other face is filled the same way.</source>
        <translation>La otra cara se masilla igual.</translation>
    </message>
    <message>
        <source>Turned and clean</source>
        <translation>Volteado y limpio</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Hand over for primer</source>
        <translation>Entregar para imprimar</translation>
    </message>
    <message>
        <source>All six tests are passed and in the log.</source>
        <translation>Las seis pruebas, superadas y en el registro.</translation>
    </message>
    <message>
        <source>Mixed: %1 of fibre filler, %2 of finishing filler, in %3.</source>
        <translation>Mezclado: %1 de masilla de fibra, %2 de acabado, en %3.</translation>
    </message>
    <message>
        <source>The paint system’s data sheet says when it may be primed.</source>
        <translation>La ficha del sistema de pintura dice cuándo se puede imprimar.</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>This repair is closed and in the log.</source>
        <translation>Esta reparación está cerrada y en el registro.</translation>
    </message>
    <message>
        <source>The supervisor signs it off with the day’s work.</source>
        <translation>El supervisor la firma con el trabajo del día.</translation>
    </message>
    <message>
        <source>To the rail</source>
        <translation>A la fila</translation>
    </message>
    <message>
        <source>No photo yet: %1.</source>
        <extracomment>%1 is a list of photos: &quot;as found, bare&quot;</extracomment>
        <translation>Aún sin foto: %1.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Turn the panel over</source>
        <translation>Voltear el panel</translation>
    </message>
    <message>
        <source>80 grit, dust off.</source>
        <translation>Grano 80, quitar el polvo.</translation>
    </message>
    <message>
        <source>Returned</source>
        <translation>Devuelto</translation>
    </message>
    <message>
        <source>Returned by the supervisor</source>
        <translation>Devuelto por el supervisor</translation>
    </message>
    <message>
        <source>%1, %2. The record of this repair stays as it is; its rework is taken in as a repair of its own, from the first question on.</source>
        <extracomment>%1 is a day, %2 a person</extracomment>
        <translation>%1, %2. El registro de esta reparación queda como está; su repaso se recibe como reparación propia, desde la primera pregunta.</translation>
    </message>
    <message>
        <source>Begin the rework</source>
        <translation>Empezar el repaso</translation>
    </message>
</context>
<context>
    <name>StationWords</name>
    <message>
        <source>%1 since hardener</source>
        <translation>%1 desde endurecedor</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>quedan %1</translation>
    </message>
    <message>
        <source>by choice</source>
        <translation>por elección</translation>
    </message>
</context>
<context>
    <name>StepScreen</name>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>Al paso actual</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1: less</source>
        <translation>%1: menos</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: más</translation>
    </message>
    <message>
        <source>not answered yet</source>
        <translation>sin responder aún</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, unit: %2</source>
        <translation>%1, unidad: %2</translation>
    </message>
</context>
<context>
    <name>Steps</name>
    <message>
        <source>Put your gear on and start the extraction</source>
        <translation>Ponerse el equipo y encender la aspiración</translation>
    </message>
    <message>
        <source>Goggles, mask, gloves, ear protection, closed sleeves. Read the safety data sheets of what you use.</source>
        <translation>Gafas cerradas, mascarilla, guantes, protección auditiva, mangas cerradas. Leer las fichas de seguridad de lo que se usa.</translation>
    </message>
    <message>
        <source>Gear is on</source>
        <translation>Equipo puesto</translation>
    </message>
    <message>
        <source>Fetch the tools that touch only aluminium</source>
        <translation>Traer las herramientas solo para aluminio</translation>
    </message>
    <message>
        <source>Own discs, own brush, own extractor. Steel grit in aluminium starts corrosion.</source>
        <translation>Discos, cepillo y aspirador propios. El polvo de acero inicia corrosión en el aluminio.</translation>
    </message>
    <message>
        <source>Own tools are here</source>
        <translation>Herramientas aquí</translation>
    </message>
    <message>
        <source>Wash the panel with soap and water</source>
        <translation>Lavar el panel con agua y jabón</translation>
    </message>
    <message>
        <source>Keep water off open fibre. Rinse, wipe, and let it dry.</source>
        <translation>No mojar la fibra abierta. Enjuagar, pasar un paño y dejar secar.</translation>
    </message>
    <message>
        <source>Washed and rinsed</source>
        <translation>Lavado y enjuagado</translation>
    </message>
    <message>
        <source>Wipe off wax and grease with solvent</source>
        <translation>Quitar cera y grasa con disolvente</translation>
    </message>
    <message>
        <source>Two cloths: one wipes it on, the other takes it off. Before any abrasive.</source>
        <translation>Dos paños: uno aplica, el otro retira. Antes de todo abrasivo.</translation>
    </message>
    <message>
        <source>Degreased with two cloths</source>
        <translation>Desengrasado con dos paños</translation>
    </message>
    <message>
        <source>Degrease with little acetone, away from open fibre</source>
        <translation>Desengrasar con poca acetona, lejos de fibra abierta</translation>
    </message>
    <message>
        <source>Two cloths, wipe on and off. Slow solvents soak into open fibre and stay.</source>
        <translation>Dos paños, aplicar y retirar. El disolvente lento penetra en fibra abierta y se queda.</translation>
    </message>
    <message>
        <source>Let the solvent flash off</source>
        <translation>Dejar evaporar el disolvente</translation>
    </message>
    <message>
        <source>Wait until nothing smells and nothing feels cold.</source>
        <translation>Esperar hasta que nada huela ni se sienta frío.</translation>
    </message>
    <message>
        <source>Solvent has flashed off</source>
        <translation>Disolvente evaporado</translation>
    </message>
    <message>
        <source>Strip the paint well beyond the repair</source>
        <translation>Quitar la pintura bien más allá de la reparación</translation>
    </message>
    <message>
        <source>%1 beyond the damage, edges feathered. Fibre filler never goes over paint.</source>
        <translation>%1 más allá del daño, bordes difuminados. La masilla de fibra nunca va sobre pintura.</translation>
    </message>
    <message>
        <source>Paint is off, edges feathered</source>
        <translation>Pintura fuera, bordes difuminados</translation>
    </message>
    <message>
        <source>Cut away everything loose, back to sound material</source>
        <translation>Cortar todo lo suelto hasta material sano</translation>
    </message>
    <message>
        <source>What is white or rattles is loose. Tap: it must ring alike all round.</source>
        <translation>Lo blanco o que traquetea está suelto. Golpear: debe sonar igual todo alrededor.</translation>
    </message>
    <message>
        <source>Cut to sound material</source>
        <translation>Cortado a material sano</translation>
    </message>
    <message>
        <source>Find every crack that runs out</source>
        <translation>Buscar cada grieta que sale del daño</translation>
    </message>
    <message>
        <source>Light from the side, and press gently. Mark each tip.</source>
        <translation>Luz lateral y presionar suave. Marcar cada punta.</translation>
    </message>
    <message>
        <source>All tips are marked</source>
        <translation>Todas las puntas marcadas</translation>
    </message>
    <message>
        <source>Drill a small hole just beyond each crack tip</source>
        <translation>Taladrar un agujero pequeño justo tras cada punta</translation>
    </message>
    <message>
        <source>Cracks run on under the gel coat. Hole %1 to %2, right through.</source>
        <translation>Las grietas siguen bajo el gel coat. Agujero de %1 a %2, pasante.</translation>
    </message>
    <message>
        <source>All tips drilled</source>
        <translation>Todas taladradas</translation>
    </message>
    <message>
        <source>Take the squeezed-out adhesive off</source>
        <translation>Quitar el adhesivo rebosado</translation>
    </message>
    <message>
        <source>Down to the panels, none pulled out of the joint.</source>
        <translation>Hasta los paneles, sin arrancarlo de la unión.</translation>
    </message>
    <message>
        <source>Squeeze-out is off</source>
        <translation>Rebose quitado</translation>
    </message>
    <message>
        <source>Grind the weld level with the contour</source>
        <translation>Amolar la soldadura a ras del contorno</translation>
    </message>
    <message>
        <source>Let it cool first. No pore may remain: weld it again where one does.</source>
        <translation>Dejar enfriar antes. No debe quedar poro: soldar de nuevo donde lo haya.</translation>
    </message>
    <message>
        <source>Level, cool, free of pores</source>
        <translation>A ras, fría, sin poros</translation>
    </message>
    <message>
        <source>Dry the panel and prove that it is dry</source>
        <translation>Secar el panel y comprobar que está seco</translation>
    </message>
    <message>
        <source>Front, edges and back. Tape clear film over it: no mist may form underneath.</source>
        <translation>Frente, bordes y dorso. Pegar film transparente encima: no debe formarse vaho debajo.</translation>
    </message>
    <message>
        <source>Proved dry</source>
        <translation>Comprobado: seco</translation>
    </message>
    <message>
        <source>Bevel the edge of the damage</source>
        <translation>Biselar el borde del daño</translation>
    </message>
    <message>
        <source>Run the bevel out over %1 all round. No square edge may remain.</source>
        <translation>Extender el bisel %1 todo alrededor. No debe quedar canto vivo.</translation>
    </message>
    <message>
        <source>Bevel is cut</source>
        <translation>Bisel hecho</translation>
    </message>
    <message>
        <source>Bevel the edge on both faces</source>
        <translation>Biselar el borde en ambas caras</translation>
    </message>
    <message>
        <source>On each face run the bevel out over %1 all round. The two meet in the middle.</source>
        <translation>En cada cara, extender el bisel %1 todo alrededor. Ambos se unen en el centro.</translation>
    </message>
    <message>
        <source>Both bevels are cut</source>
        <translation>Ambos biseles hechos</translation>
    </message>
    <message>
        <source>Open the gouge to a shallow V</source>
        <translation>Abrir el surco en V poco profunda</translation>
    </message>
    <message>
        <source>No loose fibre and no square edge may remain.</source>
        <translation>No debe quedar fibra suelta ni canto vivo.</translation>
    </message>
    <message>
        <source>Gouge is open</source>
        <translation>Surco abierto</translation>
    </message>
    <message>
        <source>Bevel the upper panel’s edge slightly</source>
        <translation>Biselar poco el borde del panel superior</translation>
    </message>
    <message>
        <source>At most %1 deep, half its thickness. Never into the bond line.</source>
        <translation>Máximo %1 de hondo, la mitad del espesor. Nunca hasta la línea de pegado.</translation>
    </message>
    <message>
        <source>Slight bevel is cut</source>
        <translation>Bisel leve hecho</translation>
    </message>
    <message>
        <source>Abrade the back around the hole</source>
        <translation>Lijar el dorso alrededor del agujero</translation>
    </message>
    <message>
        <source>80 grit, down to clean glass, then dust it off.</source>
        <translation>Grano 80, hasta fibra limpia; luego desempolvar.</translation>
    </message>
    <message>
        <source>Back is abraded</source>
        <translation>Dorso lijado</translation>
    </message>
    <message>
        <source>Bond a backing behind the hole</source>
        <translation>Pegar un respaldo detrás del agujero</translation>
    </message>
    <message>
        <source>Cloth and resin, or an offcut, lapping %1 all round. Let it cure.</source>
        <translation>Tejido y resina, o un recorte, con solape de %1 alrededor. Dejar curar.</translation>
    </message>
    <message>
        <source>Backing is on and cured</source>
        <translation>Respaldo puesto y curado</translation>
    </message>
    <message>
        <source>Pull a backing in through the hole and bond it</source>
        <translation>Meter un respaldo por el agujero y pegarlo</translation>
    </message>
    <message>
        <source>Close the hole with a dam of tape or card</source>
        <translation>Cerrar el agujero con un tope de cinta o cartón</translation>
    </message>
    <message>
        <source>Behind the missing area; tape on clean surface only.</source>
        <translation>Detrás de la zona que falta; cinta solo sobre superficie limpia.</translation>
    </message>
    <message>
        <source>Dam is on</source>
        <translation>Tope puesto</translation>
    </message>
    <message>
        <source>Abrade bevel and surround with 80 grit</source>
        <translation>Lijar bisel y entorno con grano 80</translation>
    </message>
    <message>
        <source>Dull all over, no shine left. Coarser only inside the filled area.</source>
        <translation>Mate en todo, sin brillo. Grano más basto solo dentro de lo masillado.</translation>
    </message>
    <message>
        <source>Dull all over</source>
        <translation>Todo mate</translation>
    </message>
    <message>
        <source>Abrade the bare metal with 80 grit</source>
        <translation>Lijar el metal desnudo con grano 80</translation>
    </message>
    <message>
        <source>Bright all over, no rust in the pits. The hour until filling starts now.</source>
        <translation>Brillante en todo, sin óxido en las picaduras. Ya corre la hora para masillar.</translation>
    </message>
    <message>
        <source>Bright all over</source>
        <translation>Todo brillante</translation>
    </message>
    <message>
        <source>Dust off with extraction, then with clean air</source>
        <translation>Desempolvar con aspiración, luego con aire limpio</translation>
    </message>
    <message>
        <source>Dry, oil-free, below 30 psi (2 bar), with chip guarding. No solvent on ground fibre.</source>
        <translation>Seco, sin aceite, menos de 30 psi (2 bar), con pantalla contra partículas. Sin disolvente en fibra amolada.</translation>
    </message>
    <message>
        <source>Free of dust</source>
        <translation>Sin polvo</translation>
    </message>
    <message>
        <source>Wipe the bare metal once, fast, and dry it</source>
        <translation>Limpiar el metal desnudo una vez, rápido, y secar</translation>
    </message>
    <message>
        <source>Solvent on one clean cloth, a dry one right behind it.</source>
        <translation>Disolvente en un paño limpio; enseguida, uno seco.</translation>
    </message>
    <message>
        <source>Wiped and dried</source>
        <translation>Limpio y seco</translation>
    </message>
    <message>
        <source>Let the metal flash off</source>
        <translation>Dejar orear el metal</translation>
    </message>
    <message>
        <source>Metal has flashed off</source>
        <translation>Metal oreado</translation>
    </message>
    <message>
        <source>Read air, panel and humidity again</source>
        <translation>Medir otra vez aire, panel y humedad</translation>
    </message>
    <message>
        <source>Probe on the bare panel beside the damage. The dew margin is computed again.</source>
        <translation>Sonda en el panel desnudo junto al daño. Se recalcula el margen de rocío.</translation>
    </message>
    <message>
        <source>Reading is taken</source>
        <translation>Lectura hecha</translation>
    </message>
    <message>
        <source>Probe on the bare metal beside the damage. The dew margin is computed again.</source>
        <translation>Sonda en el metal desnudo junto al daño. Se recalcula el margen de rocío.</translation>
    </message>
    <message>
        <source>Put a guide coat over the repair</source>
        <translation>Aplicar guía de lijado en la reparación</translation>
    </message>
    <message>
        <source>A thin, even veil; it shows what is high and what is low.</source>
        <translation>Un velo fino y parejo; muestra lo alto y lo bajo.</translation>
    </message>
    <message>
        <source>Guide coat is on</source>
        <translation>Guía aplicada</translation>
    </message>
    <message>
        <source>Sand to contour with 180 grit on a block</source>
        <translation>Lijar al contorno con grano 180 y taco</translation>
    </message>
    <message>
        <source>Stop when the guide coat is gone. Where it stays, it is low.</source>
        <translation>Parar cuando la guía desaparece. Donde queda, está bajo.</translation>
    </message>
    <message>
        <source>Sanded with 180</source>
        <translation>Lijado con 180</translation>
    </message>
    <message>
        <source>Sand out to the edges with 320 grit</source>
        <translation>Lijar hacia los bordes con grano 320</translation>
    </message>
    <message>
        <source>No scratch of the coarser grit and no edge may remain.</source>
        <translation>No debe quedar raya de grano más basto ni borde.</translation>
    </message>
    <message>
        <source>Sanded with 320</source>
        <translation>Lijado con 320</translation>
    </message>
    <message>
        <source>Dust off the whole panel</source>
        <translation>Desempolvar todo el panel</translation>
    </message>
    <message>
        <source>Extraction first, then clean, dry, oil-free air, below 30 psi (2 bar).</source>
        <translation>Primero aspiración; luego aire limpio, seco, sin aceite, menos de 30 psi (2 bar).</translation>
    </message>
    <message>
        <source>Inspect the surface in raking light</source>
        <translation>Inspeccionar la superficie con luz rasante</translation>
    </message>
    <message>
        <source>No pinhole at half a metre, no edge, no guide coat. Pinholes are opened and filled, never buried.</source>
        <translation>Ni poro a medio metro, ni borde, ni guía. Los poros se abren y se rellenan, nunca se tapan.</translation>
    </message>
    <message>
        <source>Inspected, nothing found</source>
        <translation>Inspeccionado, sin defectos</translation>
    </message>
    <message>
        <source>Let it cure before the primer</source>
        <translation>Dejar curar antes de imprimar</translation>
    </message>
    <message>
        <source>At least %1 after the last sanding, at this temperature.</source>
        <translation>Al menos %1 tras el último lijado, a esta temperatura.</translation>
    </message>
    <message>
        <source>It has cured</source>
        <translation>Ha curado</translation>
    </message>
    <message>
        <source>Look for guide coat that is left</source>
        <translation>Buscar restos de guía</translation>
    </message>
    <message>
        <source>What is left shows a low spot.</source>
        <translation>Lo que queda marca una zona baja.</translation>
    </message>
    <message>
        <source>Guide coat is gone</source>
        <translation>Sin restos de guía</translation>
    </message>
    <message>
        <source>Lay the straightedge across the repair, both ways</source>
        <translation>Poner la regla sobre la reparación, en ambos sentidos</translation>
    </message>
    <message>
        <source>On a curved panel, compare with the other side.</source>
        <translation>En panel curvo, comparar con el otro lado.</translation>
    </message>
    <message>
        <source>No gap, no rocking</source>
        <translation>Sin hueco ni balanceo</translation>
    </message>
    <message>
        <source>Look for pinholes in raking light</source>
        <translation>Buscar poros con luz rasante</translation>
    </message>
    <message>
        <source>From half a metre, light from the side. Pinholes are opened and filled, never buried.</source>
        <translation>A medio metro, luz lateral. Los poros se abren y se rellenan, nunca se tapan.</translation>
    </message>
    <message>
        <source>No pinhole</source>
        <translation>Sin poros</translation>
    </message>
    <message>
        <source>Press a nail in, then rub with paper</source>
        <translation>Apretar con la uña, luego frotar con lija</translation>
    </message>
    <message>
        <source>The nail leaves no mark, and the paper powders the filler rather than clogs.</source>
        <translation>La uña no marca; la lija saca polvo, no se empasta.</translation>
    </message>
    <message>
        <source>No mark, it powders</source>
        <translation>Sin marca, saca polvo</translation>
    </message>
    <message>
        <source>Tap with a coin over repair and surround</source>
        <translation>Golpear con moneda la reparación y su entorno</translation>
    </message>
    <message>
        <source>A dull spot is hollow.</source>
        <translation>Donde suena sordo, está hueco.</translation>
    </message>
    <message>
        <source>It rings alike all over</source>
        <translation>Suena igual en todo</translation>
    </message>
    <message>
        <source>Feel for the edge with a flat hand</source>
        <translation>Palpar el borde con la mano plana</translation>
    </message>
    <message>
        <source>Across it, through a thin cloth, eyes shut.</source>
        <translation>De través, con un paño fino, ojos cerrados.</translation>
    </message>
    <message>
        <source>No edge to feel</source>
        <translation>No se nota borde</translation>
    </message>
    <message>
        <source>Abrade the inside first. Wet cloth on a card, pulled up with wire, lapping %1, held until it cures.</source>
        <translation>Lijar antes el interior. Tejido impregnado sobre cartón, tirado con alambre, solape %1, sujeto hasta curar.</translation>
    </message>
</context>
<context>
    <name>Stock</name>
    <message>
        <source>Used up</source>
        <translation>Gastado</translation>
    </message>
    <message>
        <source>Skin on it</source>
        <translation>Con piel</translation>
    </message>
    <message>
        <source>Separated, kneading does not help</source>
        <translation>Separado, amasar no ayuda</translation>
    </message>
    <message>
        <source>Hard or crumbly</source>
        <translation>Duro o desmenuzado</translation>
    </message>
    <message>
        <source>Past its date</source>
        <translation>Caducado</translation>
    </message>
    <message>
        <source>Open for too long</source>
        <translation>Abierto demasiado tiempo</translation>
    </message>
    <message>
        <source>Spoilt otherwise</source>
        <translation>Estropeado de otro modo</translation>
    </message>
    <message>
        <source>Spilled</source>
        <translation>Derramado</translation>
    </message>
    <message>
        <source>Gone to another bench</source>
        <translation>Se fue a otro puesto</translation>
    </message>
    <message>
        <source>Come from another bench</source>
        <translation>Vino de otro puesto</translation>
    </message>
    <message>
        <source>Keyed in wrong</source>
        <translation>Mal tecleado</translation>
    </message>
    <message>
        <source>It was ended (%1): take another lot.</source>
        <extracomment>%1 is why: &quot;Skin on it&quot;</extracomment>
        <translation>Se dio por terminado (%1): tomar otro lote.</translation>
    </message>
    <message>
        <source>%1 more was used than was there: count it.</source>
        <translation>Se usó %1 más de lo que había: contarlo.</translation>
    </message>
    <message>
        <source>Too little: %1 is needed, %2 is left.</source>
        <translation>Muy poco: hacen falta %1, quedan %2.</translation>
    </message>
    <message>
        <source>Its date is past: it was good until %1.</source>
        <extracomment>%1 is a day</extracomment>
        <translation>Caducado: era válido hasta %1.</translation>
    </message>
    <message>
        <source>Open too long: since %1, its sheet allows %2 months.</source>
        <extracomment>%1 is a day, %2 a number of months</extracomment>
        <translation>Abierto demasiado: desde %1, su ficha admite %2 meses.</translation>
    </message>
    <message>
        <source>It still evens out with the air: %1 to go.</source>
        <translation>Aún se atempera con el aire: faltan %1.</translation>
    </message>
    <message>
        <source>It came from a colder or hotter place: read the air first.</source>
        <translation>Vino de un sitio más frío o caliente: medir antes el aire.</translation>
    </message>
    <message>
        <source>Its middle was at %1: it is mixed from %2 to %3.</source>
        <translation>Su centro estaba a %1: se mezcla de %2 a %3.</translation>
    </message>
    <message>
        <source>New lot: make a test pat before the first batch.</source>
        <translation>Lote nuevo: hacer una torta de prueba antes de la primera mezcla.</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Endurecedor</translation>
    </message>
    <message>
        <source>%1 · lot %2</source>
        <extracomment>%1 is a product, %2 a lot</extracomment>
        <translation>%1 · lote %2</translation>
    </message>
    <message>
        <source>Came in</source>
        <translation>Entrada</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contado</translation>
    </message>
    <message>
        <source>Package ended: %1</source>
        <extracomment>%1 is why: &quot;skin on it&quot;</extracomment>
        <translation>Envase terminado: %1</translation>
    </message>
    <message>
        <source>A batch</source>
        <translation>Una mezcla</translation>
    </message>
    <message>
        <source>Batch of job %1</source>
        <extracomment>%1 is a job&apos;s number</extracomment>
        <translation>Mezcla de la orden %1</translation>
    </message>
    <message>
        <source>Test pat</source>
        <translation>Torta de prueba</translation>
    </message>
</context>
<context>
    <name>StockForms</name>
    <message>
        <source>Stock of filler and hardener</source>
        <translation>Existencias de masilla y endurecedor</translation>
    </message>
    <message>
        <source>What is booked in?</source>
        <translation>¿A qué se da entrada?</translation>
    </message>
    <message>
        <source>More products</source>
        <translation>Más productos</translation>
    </message>
    <message>
        <source>How many packages, and how much in each?</source>
        <translation>¿Cuántos envases y cuánto en cada uno?</translation>
    </message>
    <message>
        <source>So many came in</source>
        <translation>Entraron estos</translation>
    </message>
    <message>
        <source>Packages</source>
        <translation>Envases</translation>
    </message>
    <message>
        <source>Key in how many packages</source>
        <translation>Teclear cuántos envases</translation>
    </message>
    <message>
        <source>Net mass of one</source>
        <translation>Masa neta de uno</translation>
    </message>
    <message>
        <source>Key in the net mass of one</source>
        <translation>Teclear la masa neta de uno</translation>
    </message>
    <message>
        <source>Is a date printed on it?</source>
        <translation>¿Lleva una fecha impresa?</translation>
    </message>
    <message>
        <source>Yes, a date</source>
        <translation>Sí, una fecha</translation>
    </message>
    <message>
        <source>best before, or use by</source>
        <translation>usar antes de, o caducidad</translation>
    </message>
    <message>
        <source>No date</source>
        <translation>Sin fecha</translation>
    </message>
    <message>
        <source>its sheet’s months count from today</source>
        <translation>los meses de su ficha cuentan desde hoy</translation>
    </message>
    <message>
        <source>Which date is printed?</source>
        <translation>¿Qué fecha lleva?</translation>
    </message>
    <message>
        <source>This date</source>
        <translation>Esta fecha</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Key in the year</source>
        <translation>Teclear el año</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>Key in the month</source>
        <translation>Teclear el mes</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Key in the day; where none is printed, the last of the month</source>
        <translation>Teclear el día; si no hay, el último del mes</translation>
    </message>
    <message>
        <source>Where no day is printed it is the last of the month.</source>
        <translation>Si no hay día, es el último del mes.</translation>
    </message>
    <message>
        <source>There is no such day.</source>
        <translation>Ese día no existe.</translation>
    </message>
    <message>
        <source>%1: past already</source>
        <translation>%1: ya pasó</translation>
    </message>
    <message>
        <source>How much of this lot is there, without the tubs?</source>
        <translation>¿Cuánto hay de este lote, sin los botes?</translation>
    </message>
    <message>
        <source>So much is there</source>
        <translation>Hay esta cantidad</translation>
    </message>
    <message>
        <source>Thought to be there: %1.</source>
        <translation>Previsto: %1.</translation>
    </message>
    <message>
        <source>%1 less than thought</source>
        <translation>%1 menos de lo previsto</translation>
    </message>
    <message>
        <source>%1 more than thought</source>
        <translation>%1 más de lo previsto</translation>
    </message>
    <message>
        <source>As thought.</source>
        <translation>Según lo previsto.</translation>
    </message>
    <message>
        <source>There</source>
        <translation>Hay</translation>
    </message>
    <message>
        <source>Key in how much is there</source>
        <translation>Teclear cuánto hay</translation>
    </message>
    <message>
        <source>Why is there more or less of it?</source>
        <translation>¿Por qué hay más o menos?</translation>
    </message>
    <message>
        <source>there is less</source>
        <translation>hay menos</translation>
    </message>
    <message>
        <source>there is more</source>
        <translation>hay más</translation>
    </message>
    <message>
        <source>%1: how much less is there?</source>
        <translation>%1: ¿cuánto menos hay?</translation>
    </message>
    <message>
        <source>%1: how much more is there?</source>
        <translation>%1: ¿cuánto más hay?</translation>
    </message>
    <message>
        <source>By so much</source>
        <translation>Esta cantidad</translation>
    </message>
    <message>
        <source>Key in by how much</source>
        <translation>Teclear cuánto</translation>
    </message>
    <message>
        <source>Why does the open one end?</source>
        <translation>¿Por qué termina el abierto?</translation>
    </message>
    <message>
        <source>More reasons</source>
        <translation>Más motivos</translation>
    </message>
    <message>
        <source>End this package</source>
        <translation>Terminar este envase</translation>
    </message>
    <message>
        <source>Waste of its kind, by the safety data sheet and local codes: never down the drain.</source>
        <translation>Residuo según su ficha de seguridad y las normas locales: nunca al desagüe.</translation>
    </message>
    <message>
        <source>Thrown away</source>
        <translation>Tirado</translation>
    </message>
    <message>
        <source>Key in how much</source>
        <translation>Teclear cuánto</translation>
    </message>
    <message>
        <source>What does the probe in its middle read?</source>
        <translation>¿Qué marca la sonda en su centro?</translation>
    </message>
    <message>
        <source>How cold or hot was the place it came from?</source>
        <translation>¿Qué frío o calor hacía donde estaba?</translation>
    </message>
    <message>
        <source>It reads this</source>
        <translation>Marca esto</translation>
    </message>
    <message>
        <source>It came from there</source>
        <translation>Vino de ahí</translation>
    </message>
    <message>
        <source>Its middle</source>
        <translation>Su centro</translation>
    </message>
    <message>
        <source>That place</source>
        <translation>Ese sitio</translation>
    </message>
    <message>
        <source>Key in the temperature</source>
        <translation>Teclear la temperatura</translation>
    </message>
    <message>
        <source>Below how much is it reordered? Nothing: never</source>
        <translation>¿Por debajo de cuánto se repone? Nada: nunca</translation>
    </message>
    <message>
        <source>This is the level</source>
        <translation>Este es el nivel</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Nivel</translation>
    </message>
    <message>
        <source>Key in the level</source>
        <translation>Teclear el nivel</translation>
    </message>
    <message>
        <source>Less by</source>
        <translation>De menos</translation>
    </message>
    <message>
        <source>More by</source>
        <translation>De más</translation>
    </message>
    <message>
        <source>How much is thrown away with it?</source>
        <translation>¿Cuánto se tira con él?</translation>
    </message>
</context>
<context>
    <name>StopWays</name>
    <message>
        <source>Look, measure, and answer the question.</source>
        <translation>Mirar, medir y responder la pregunta.</translation>
    </message>
    <message>
        <source>Weld the plastic, or replace the part.</source>
        <translation>Soldar el plástico o cambiar la pieza.</translation>
    </message>
    <message>
        <source>Repair it with a flexible system, or replace it.</source>
        <translation>Reparar con un sistema flexible o cambiar la pieza.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for carbon fibre.</source>
        <translation>Seguir el método del fabricante del vehículo para fibra de carbono.</translation>
    </message>
    <message>
        <source>Replace the part.</source>
        <translation>Cambiar la pieza.</translation>
    </message>
    <message>
        <source>Find out what it is before you touch it.</source>
        <translation>Averiguar qué es antes de tocarlo.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for this part.</source>
        <translation>Seguir el método del fabricante del vehículo para esta pieza.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for sensor areas.</source>
        <translation>Seguir el método del fabricante del vehículo para zonas de sensor.</translation>
    </message>
    <message>
        <source>Take it out of service and replace it.</source>
        <translation>Retirar de servicio y cambiar.</translation>
    </message>
    <message>
        <source>Strip it to the bare panel.</source>
        <translation>Decapar hasta el panel desnudo.</translation>
    </message>
    <message>
        <source>Blast or cut it back to bright metal.</source>
        <translation>Chorrear o amolar hasta metal brillante.</translation>
    </message>
    <message>
        <source>Let the primer cure, or strip it.</source>
        <translation>Dejar curar la imprimación o decaparla.</translation>
    </message>
    <message>
        <source>Wash the flux off and grind to bright metal.</source>
        <translation>Lavar el fundente y amolar a metal brillante.</translation>
    </message>
    <message>
        <source>Dry it, and prove that it is dry.</source>
        <translation>Secar y comprobar que está seco.</translation>
    </message>
    <message>
        <source>Clean, prime and seal it to the vehicle maker’s pattern.</source>
        <translation>Limpiar, imprimar y sellar según el fabricante del vehículo.</translation>
    </message>
    <message>
        <source>Look at the seam and the panel again.</source>
        <translation>Mirar otra vez la junta y el panel.</translation>
    </message>
    <message>
        <source>Look at the hole and the panel again.</source>
        <translation>Mirar otra vez el agujero y el panel.</translation>
    </message>
    <message>
        <source>Let the adhesive cure to its sheet.</source>
        <translation>Dejar curar el adhesivo según su ficha.</translation>
    </message>
    <message>
        <source>Cut back to bright metal, then weld or patch.</source>
        <translation>Cortar hasta metal brillante; luego soldar o poner parche.</translation>
    </message>
    <message>
        <source>Bring the metal up first.</source>
        <translation>Primero levantar el metal.</translation>
    </message>
    <message>
        <source>Laminate it, or let in a section.</source>
        <translation>Laminar o injertar un tramo.</translation>
    </message>
    <message>
        <source>Ask for a filler whose sheet allows it.</source>
        <translation>Pedir una masilla cuya ficha lo permita.</translation>
    </message>
    <message>
        <source>Wait for cooler air, or move to a cooler place.</source>
        <translation>Esperar aire más fresco o ir a un lugar más fresco.</translation>
    </message>
    <message>
        <source>Warm the panel right through, then read again.</source>
        <translation>Calentar el panel en todo su espesor; medir de nuevo.</translation>
    </message>
    <message>
        <source>Let the panel cool in the shade.</source>
        <translation>Dejar enfriar el panel a la sombra.</translation>
    </message>
    <message>
        <source>Warm the shop, the tub and the tube.</source>
        <translation>Calentar el taller, el bote y el tubo.</translation>
    </message>
    <message>
        <source>If you cannot tell, stop and ask.</source>
        <translation>Si no se sabe, parar y preguntar.</translation>
    </message>
    <message>
        <source>The marking on the back names the plastic.</source>
        <translation>La marca del dorso indica el plástico.</translation>
    </message>
    <message>
        <source>The repair must bend with the part.</source>
        <translation>La reparación debe flexionar con la pieza.</translation>
    </message>
    <message>
        <source>Damage inside must be found by those trained for it.</source>
        <translation>El daño interno lo busca personal formado para ello.</translation>
    </message>
    <message>
        <source>Do not sand or drill it meanwhile.</source>
        <translation>Mientras, no lijar ni taladrar.</translation>
    </message>
    <message>
        <source>Magnet, zinc gauge, ohmmeter, broken edge, back-face marking, tap sound.</source>
        <translation>Imán, medidor de zinc, óhmetro, borde roto, marca del dorso, sonido al golpe.</translation>
    </message>
    <message>
        <source>What carries load is restored, never filled over.</source>
        <translation>Lo que soporta carga se restaura, nunca se masilla.</translation>
    </message>
    <message>
        <source>The sensor may need calibrating afterwards.</source>
        <translation>Puede que luego haya que calibrar el sensor.</translation>
    </message>
    <message>
        <source>No grinding, drilling or heat near it.</source>
        <translation>No amolar, taladrar ni calentar cerca.</translation>
    </message>
    <message>
        <source>Well beyond the repair, edges feathered; then assess again.</source>
        <translation>Bien más allá de la reparación, bordes difuminados; luego evaluar de nuevo.</translation>
    </message>
    <message>
        <source>What is left thin or holed is cut out; then assess again.</source>
        <translation>Lo que queda fino o perforado se corta; luego evaluar de nuevo.</translation>
    </message>
    <message>
        <source>Cured epoxy that is abraded may stay; then assess again.</source>
        <translation>El epoxi curado y lijado puede quedar; luego evaluar de nuevo.</translation>
    </message>
    <message>
        <source>Then assess again.</source>
        <translation>Luego evaluar de nuevo.</translation>
    </message>
    <message>
        <source>Only where the maker’s method calls for a continuous weld: weld, dress, then assess again.</source>
        <translation>Solo si el método del fabricante pide soldadura continua: soldar, repasar y evaluar de nuevo.</translation>
    </message>
    <message>
        <source>One of the two answers is wrong.</source>
        <translation>Una de las dos respuestas es errónea.</translation>
    </message>
    <message>
        <source>Then take the squeeze-out off and assess again.</source>
        <translation>Luego quitar el rebose y evaluar de nuevo.</translation>
    </message>
    <message>
        <source>Then it is a seam or a low spot: assess again.</source>
        <translation>Entonces es junta o zona baja: evaluar de nuevo.</translation>
    </message>
    <message>
        <source>What stays low after that can be assessed again.</source>
        <translation>Lo que siga bajo se puede evaluar de nuevo.</translation>
    </message>
    <message>
        <source>On zinc, cured and abraded epoxy primer first is another way.</source>
        <translation>En zinc, otra vía: primero imprimación epoxi, curada y lijada.</translation>
    </message>
    <message>
        <source>Temperature is never corrected with hardener.</source>
        <translation>La temperatura nunca se corrige con endurecedor.</translation>
    </message>
    <message>
        <source>A lamp warms the panel before filling, never wet filler.</source>
        <translation>La lámpara calienta el panel antes de masillar, nunca masilla fresca.</translation>
    </message>
    <message>
        <source>From the cold they need hours to even out.</source>
        <translation>Del frío, necesitan horas para atemperarse.</translation>
    </message>
    <message>
        <source>to the plastics bench</source>
        <extracomment>goes on after &quot;Park it —&quot;</extracomment>
        <translation>al puesto de plásticos</translation>
    </message>
    <message>
        <source>to the laminate shop</source>
        <translation>al taller de laminado</translation>
    </message>
    <message>
        <source>to the parts counter</source>
        <translation>a repuestos</translation>
    </message>
    <message>
        <source>to the supervisor</source>
        <translation>al supervisor</translation>
    </message>
    <message>
        <source>to the body shop</source>
        <translation>a carrocería</translation>
    </message>
    <message>
        <source>to the stripping bay</source>
        <translation>a decapado</translation>
    </message>
    <message>
        <source>to the metal shop</source>
        <translation>al taller de chapa</translation>
    </message>
    <message>
        <source>to the warm room</source>
        <translation>al cuarto caliente</translation>
    </message>
    <message>
        <source>to the welding shop</source>
        <translation>al taller de soldadura</translation>
    </message>
    <message>
        <source>to a cool place</source>
        <translation>a un lugar fresco</translation>
    </message>
    <message>
        <source>Check the sheet’s times against its maker’s data sheet.</source>
        <translation>Comparar los tiempos con la ficha del fabricante.</translation>
    </message>
    <message>
        <source>Until it is right, use a filler whose sheet is.</source>
        <translation>Mientras tanto, usar una masilla con ficha correcta.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for these parts.</source>
        <translation>Seguir el método del fabricante para estas piezas.</translation>
    </message>
    <message>
        <source>Open it and renew the wet wood first.</source>
        <translation>Abrir y cambiar antes la madera mojada.</translation>
    </message>
    <message>
        <source>Have skin and core repaired as one.</source>
        <translation>Hacer reparar piel y núcleo juntos.</translation>
    </message>
    <message>
        <source>Airbags and high voltage only by those trained and licensed for them.</source>
        <translation>Airbags y alta tensión: solo personal formado y autorizado.</translation>
    </message>
    <message>
        <source>Tape clear film over it. When no mist forms underneath, assess again.</source>
        <translation>Pegar film transparente encima. Si no se forma vaho debajo, evaluar de nuevo.</translation>
    </message>
    <message>
        <source>Laminate the skin shut and prove it dry; then assess again.</source>
        <translation>Laminar hasta cerrar la piel y comprobar que está seco; luego evaluar de nuevo.</translation>
    </message>
    <message>
        <source>By the vehicle maker’s method, with a resin that leaves the foam whole.</source>
        <translation>Con el método del fabricante y una resina que no ataque la espuma.</translation>
    </message>
    <message>
        <source>Aim at half of that limit or less; then assess again.</source>
        <translation>Buscar la mitad de ese límite o menos; luego evaluar de nuevo.</translation>
    </message>
</context>
<context>
    <name>Stops</name>
    <message>
        <source>Do not fill this panel</source>
        <translation>No masillar este panel</translation>
    </message>
    <message>
        <source>Do not fill in this zone</source>
        <translation>No masillar en esta zona</translation>
    </message>
    <message>
        <source>Do not fill on this surface</source>
        <translation>No masillar esta superficie</translation>
    </message>
    <message>
        <source>Do not fill over this core</source>
        <translation>No masillar sobre este núcleo</translation>
    </message>
    <message>
        <source>Do not fill this seam</source>
        <translation>No masillar esta junta</translation>
    </message>
    <message>
        <source>Do not fill this hole</source>
        <translation>No masillar este agujero</translation>
    </message>
    <message>
        <source>Do not fill yet</source>
        <translation>No masillar aún</translation>
    </message>
    <message>
        <source>These answers do not fit together</source>
        <translation>Estas respuestas no encajan entre sí</translation>
    </message>
    <message>
        <source>Not assessed yet</source>
        <translation>Sin evaluar aún</translation>
    </message>
    <message>
        <source>Not assessed: %1.</source>
        <extracomment>%1 is a question of the assessment: &quot;kind of weld&quot;</extracomment>
        <translation>Sin evaluar: %1.</translation>
    </message>
    <message>
        <source>A question without an answer never counts as yes.</source>
        <translation>Una pregunta sin respuesta nunca cuenta como sí.</translation>
    </message>
    <message>
        <source>It is a thermoplastic.</source>
        <translation>Es un termoplástico.</translation>
    </message>
    <message>
        <source>Polyester does not bond to it and peels off as the panel bends.</source>
        <translation>El poliéster no se adhiere; se despega al flexionar el panel.</translation>
    </message>
    <message>
        <source>It is a flexible plastic.</source>
        <translation>Es un plástico flexible.</translation>
    </message>
    <message>
        <source>Hard filler cracks off a part that bends.</source>
        <translation>La masilla dura salta de la pieza que flexiona.</translation>
    </message>
    <message>
        <source>It is carbon fibre.</source>
        <translation>Es fibra de carbono.</translation>
    </message>
    <message>
        <source>Its fibres carry load, and filler hides damage between the plies.</source>
        <translation>Sus fibras soportan carga; la masilla oculta daños entre capas.</translation>
    </message>
    <message>
        <source>It is cast plastic without fibre.</source>
        <translation>Es plástico colado sin fibra.</translation>
    </message>
    <message>
        <source>It is brittle: the crack runs on beside the filler.</source>
        <translation>Es frágil: la grieta sigue junto a la masilla.</translation>
    </message>
    <message>
        <source>It is magnesium.</source>
        <translation>Es magnesio.</translation>
    </message>
    <message>
        <source>Its dust burns, and it corrodes under filler.</source>
        <translation>Su polvo arde, y se corroe bajo la masilla.</translation>
    </message>
    <message>
        <source>Nobody knows what it is made of.</source>
        <translation>Nadie sabe de qué está hecho.</translation>
    </message>
    <message>
        <source>The filler, the solvent and the tools all depend on it.</source>
        <translation>De ello dependen la masilla, el disolvente y las herramientas.</translation>
    </message>
    <message>
        <source>This part carries load.</source>
        <translation>Esta pieza soporta carga.</translation>
    </message>
    <message>
        <source>Filler has no strength in a crash and hides what failed.</source>
        <translation>La masilla no resiste choques y oculta lo que falló.</translation>
    </message>
    <message>
        <source>Belts, seats, glass, airbags or high voltage are here.</source>
        <translation>Aquí hay cinturones, asientos, vidrio, airbags o alta tensión.</translation>
    </message>
    <message>
        <source>People depend on this part as it was built.</source>
        <translation>Las personas dependen de esta pieza tal como se hizo.</translation>
    </message>
    <message>
        <source>A driver-assistance sensor looks through here.</source>
        <translation>Un sensor de asistencia al conductor mira por aquí.</translation>
    </message>
    <message>
        <source>Filler and thick paint bend or block its beam.</source>
        <translation>La masilla y la pintura gruesa desvían o tapan su haz.</translation>
    </message>
    <message>
        <source>It holds fuel or pressure.</source>
        <translation>Contiene combustible o presión.</translation>
    </message>
    <message>
        <source>Filler does not seal it, and grinding can set it alight.</source>
        <translation>La masilla no lo sella, y amolar puede incendiarlo.</translation>
    </message>
    <message>
        <source>There is paint where the filler goes.</source>
        <translation>Hay pintura donde va la masilla.</translation>
    </message>
    <message>
        <source>The filler holds only as well as the paint. Its edge shows later.</source>
        <translation>La masilla agarra solo lo que agarra la pintura. Su borde se nota después.</translation>
    </message>
    <message>
        <source>There is old filler of an unknown kind.</source>
        <translation>Hay masilla vieja de tipo desconocido.</translation>
    </message>
    <message>
        <source>Nobody knows what it is or how it holds.</source>
        <translation>Nadie sabe qué es ni cómo agarra.</translation>
    </message>
    <message>
        <source>There is sealer or underseal.</source>
        <translation>Hay sellador o protector de bajos.</translation>
    </message>
    <message>
        <source>It stays soft, and filler slides on it.</source>
        <translation>Queda blando, y la masilla resbala encima.</translation>
    </message>
    <message>
        <source>There is live rust.</source>
        <translation>Hay óxido activo.</translation>
    </message>
    <message>
        <source>It goes on growing under the filler and lifts it off.</source>
        <translation>Sigue creciendo bajo la masilla y la levanta.</translation>
    </message>
    <message>
        <source>There is rust converter.</source>
        <translation>Hay convertidor de óxido.</translation>
    </message>
    <message>
        <source>Its acid keeps the filler above it from curing.</source>
        <translation>Su ácido impide curar a la masilla de encima.</translation>
    </message>
    <message>
        <source>There is acid-etch primer.</source>
        <translation>Hay imprimación ácida.</translation>
    </message>
    <message>
        <source>The primer has not cured.</source>
        <translation>La imprimación no ha curado.</translation>
    </message>
    <message>
        <source>The filler softens it, and both come off together.</source>
        <translation>La masilla la ablanda y ambas se desprenden juntas.</translation>
    </message>
    <message>
        <source>There is solder with flux.</source>
        <translation>Hay estaño con fundente.</translation>
    </message>
    <message>
        <source>Flux is acid and greasy: nothing holds on it.</source>
        <translation>El fundente es ácido y graso: nada agarra encima.</translation>
    </message>
    <message>
        <source>Do not fill while it is damp</source>
        <translation>No masillar mientras esté húmedo</translation>
    </message>
    <message>
        <source>The panel is damp.</source>
        <translation>El panel está húmedo.</translation>
    </message>
    <message>
        <source>Water keeps the filler from wetting the surface, then makes blisters.</source>
        <translation>El agua impide que la masilla moje la superficie; luego forma ampollas.</translation>
    </message>
    <message>
        <source>There is a foam core under the laminate.</source>
        <translation>Hay núcleo de espuma bajo el laminado.</translation>
    </message>
    <message>
        <source>Styrene and heat attack foam, and the skin loses its support.</source>
        <translation>El estireno y el calor atacan la espuma; la piel pierde apoyo.</translation>
    </message>
    <message>
        <source>There is a wet wood core under the laminate.</source>
        <translation>Hay núcleo de madera mojada bajo el laminado.</translation>
    </message>
    <message>
        <source>The water stays in, and the wood rots on below.</source>
        <translation>El agua queda dentro y la madera se sigue pudriendo.</translation>
    </message>
    <message>
        <source>It is spot-welded: a joint, not damage.</source>
        <translation>Está soldado por puntos: es unión, no daño.</translation>
    </message>
    <message>
        <source>The panels move and hold water between the spots. The line shows through later, and rust creeps in.</source>
        <translation>Los paneles se mueven y retienen agua entre puntos. La línea se marca después y entra óxido.</translation>
    </message>
    <message>
        <source>It is stitch-welded: a joint, not damage.</source>
        <translation>Está soldado a tramos: es unión, no daño.</translation>
    </message>
    <message>
        <source>The panels move and hold water in the gaps. The line shows through later, and rust creeps in.</source>
        <translation>Los paneles se mueven y retienen agua en los huecos. La línea se marca después y entra óxido.</translation>
    </message>
    <message>
        <source>A weld seam cannot be on %1.</source>
        <translation>No puede haber junta soldada en %1.</translation>
    </message>
    <message>
        <source>Either the seam is bonded, or the panel is metal.</source>
        <translation>O la junta es pegada, o el panel es metal.</translation>
    </message>
    <message>
        <source>A rust hole cannot be in %1.</source>
        <translation>No puede haber agujero de óxido en %1.</translation>
    </message>
    <message>
        <source>Either the hole has another cause, or the panel is metal.</source>
        <translation>O el agujero tiene otra causa, o el panel es metal.</translation>
    </message>
    <message>
        <source>Do not fill this seam yet</source>
        <translation>No masillar aún esta junta</translation>
    </message>
    <message>
        <source>The adhesive has not cured.</source>
        <translation>El adhesivo no ha curado.</translation>
    </message>
    <message>
        <source>It still shrinks and swells, and its line shows through the paint.</source>
        <translation>Aún se contrae y se hincha; su línea se nota en la pintura.</translation>
    </message>
    <message>
        <source>Do not fill this crack</source>
        <translation>No masillar esta grieta</translation>
    </message>
    <message>
        <source>A crack in metal is fatigue or tearing.</source>
        <translation>Una grieta en metal es fatiga o desgarro.</translation>
    </message>
    <message>
        <source>It runs on under the filler and opens again.</source>
        <translation>Sigue bajo la masilla y se abre de nuevo.</translation>
    </message>
    <message>
        <source>It is a hole in metal.</source>
        <translation>Es un agujero en metal.</translation>
    </message>
    <message>
        <source>Sheet metal has no section to bevel, so nothing holds the filler.</source>
        <translation>La chapa no tiene espesor que biselar; nada sujeta la masilla.</translation>
    </message>
    <message>
        <source>Rust has eaten through the metal.</source>
        <translation>El óxido ha perforado el metal.</translation>
    </message>
    <message>
        <source>The metal around it is thin and goes on rusting from behind.</source>
        <translation>El metal de alrededor es fino y sigue oxidándose por detrás.</translation>
    </message>
    <message>
        <source>Do not fill this dent yet</source>
        <translation>No masillar aún esta abolladura</translation>
    </message>
    <message>
        <source>It is %1 deep; filling ends at %2.</source>
        <translation>Tiene %1 de hondo; se masilla hasta %2.</translation>
    </message>
    <message>
        <source>Thick filler on sheet metal shrinks, cracks and shows.</source>
        <translation>La masilla gruesa en chapa se contrae, se agrieta y se nota.</translation>
    </message>
    <message>
        <source>It is %1 across; filling ends at %2.</source>
        <translation>Mide %1 de ancho; se masilla hasta %2.</translation>
    </message>
    <message>
        <source>Filler does not replace that much of a panel.</source>
        <translation>La masilla no sustituye tanto panel.</translation>
    </message>
    <message>
        <source>No filler fits here</source>
        <translation>Ninguna masilla sirve aquí</translation>
    </message>
    <message>
        <source>No loaded filler suits %1 with this damage: %2.</source>
        <extracomment>%1 is a substrate, %2 a damage</extracomment>
        <translation>Ninguna masilla cargada sirve para %1 con este daño: %2.</translation>
    </message>
    <message>
        <source>No loaded sheet allows it, and nothing defaults to yes.</source>
        <translation>Ninguna ficha cargada lo permite; nada es sí por defecto.</translation>
    </message>
    <message>
        <source>It would gel in %1; kneading alone takes %2.</source>
        <translation>Gelificaría en %1; solo amasar lleva %2.</translation>
    </message>
    <message>
        <source>It would set before it is spread. Less hardener is not the way.</source>
        <translation>Fraguaría antes de extenderla. Menos endurecedor no es la solución.</translation>
    </message>
    <message>
        <source>The panel’s margin over the dew point is %1; it needs %2.</source>
        <translation>El margen del panel sobre el punto de rocío es %1; necesita %2.</translation>
    </message>
    <message>
        <source>Water you cannot see settles on it and keeps filler off.</source>
        <translation>Agua invisible se posa encima y separa la masilla.</translation>
    </message>
    <message>
        <source>The panel is at %1; filling starts at %2.</source>
        <translation>El panel está a %1; se masilla desde %2.</translation>
    </message>
    <message>
        <source>Filler on a cold panel stays soft and does not grip.</source>
        <translation>La masilla en panel frío queda blanda y no agarra.</translation>
    </message>
    <message>
        <source>The panel is at %1; filling ends at %2.</source>
        <translation>El panel está a %1; se masilla hasta %2.</translation>
    </message>
    <message>
        <source>Filler on a hot panel gels before it wets the surface.</source>
        <translation>La masilla en panel caliente gelifica antes de mojar la superficie.</translation>
    </message>
    <message>
        <source>The air is at %1; filling starts at %2.</source>
        <translation>El aire está a %1; se masilla desde %2.</translation>
    </message>
    <message>
        <source>Cold filler and hardener cure slowly and unevenly.</source>
        <translation>Masilla y endurecedor fríos curan lento y desigual.</translation>
    </message>
    <message>
        <source>The air is at %1; filling ends at %2.</source>
        <translation>El aire está a %1; se masilla hasta %2.</translation>
    </message>
    <message>
        <source>The mix gels on the board before it is spread.</source>
        <translation>La mezcla gelifica en la tabla antes de extenderla.</translation>
    </message>
    <message>
        <source>This sheet cannot be used</source>
        <translation>Esta ficha no sirve</translation>
    </message>
    <message>
        <source>Even a thin lift would pass %1 as it cures.</source>
        <translation>Hasta una capa fina pasaría de %1 al curar.</translation>
    </message>
    <message>
        <source>Too hot a lift shrinks, cracks and shows through later.</source>
        <translation>Una capa demasiado caliente merma, se agrieta y se marca después.</translation>
    </message>
    <message>
        <source>Filler that cures so slowly may stay soft.</source>
        <translation>Una masilla que cura tan lento puede quedar blanda.</translation>
    </message>
    <message>
        <source>No cure runs like that: a slip in one of the two times is likely.</source>
        <translation>Ningún curado va así: quizá hay un error en uno de los dos tiempos.</translation>
    </message>
    <message>
        <source>By its sheet it never cures enough to be sanded.</source>
        <translation>Según su ficha nunca cura bastante para lijar.</translation>
    </message>
    <message>
        <source>Its greatest conversion is too low: a slip in the sheet is likely.</source>
        <translation>Su conversión máxima es muy baja: quizá un error en la ficha.</translation>
    </message>
    <message>
        <source>Its cure could not be worked out beyond %1.</source>
        <translation>Su curado no se pudo calcular más allá de %1.</translation>
    </message>
    <message>
        <source>The sheet’s figures make it run away faster than can be told.</source>
        <translation>Con los datos de la ficha se dispara demasiado rápido.</translation>
    </message>
    <message>
        <source>It would not sand within %1.</source>
        <translation>No se podría lijar en %1.</translation>
    </message>
    <message>
        <source>Sanding from %1 to %2 would fit; its sheet says otherwise.</source>
        <extracomment>%1 and %2 are the earliest and the latest sanding time</extracomment>
        <translation>Cuadraría lijar de %1 a %2; su ficha dice otra cosa.</translation>
    </message>
</context>
<context>
    <name>SupervisorScreens</name>
    <message>
        <source>Why is this stop overridden?</source>
        <translation>¿Por qué se anula este alto?</translation>
    </message>
    <message>
        <source>Which entry is to be put right?</source>
        <translation>¿Qué entrada se corrige?</translation>
    </message>
    <message>
        <source>See what happened to the bench</source>
        <translation>Ver qué pasó en el puesto</translation>
    </message>
</context>
<context>
    <name>TakeInScreen</name>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Take in · %1</source>
        <translation>Recepción · %1</translation>
    </message>
    <message>
        <source>Key in the job number</source>
        <translation>Teclear el número de orden</translation>
    </message>
    <message>
        <source>That is the job</source>
        <translation>Esa es la orden</translation>
    </message>
    <message>
        <source>The job number is empty.</source>
        <translation>El número de orden está vacío.</translation>
    </message>
    <message>
        <source>Key in 1 to %1 digits.</source>
        <translation>Teclear de 1 a %1 cifras.</translation>
    </message>
    <message>
        <source>Skirt panel, right rear</source>
        <translation>Faldón, trasero der.</translation>
    </message>
    <message>
        <source>Skirt panel, left front</source>
        <translation>Faldón, delantero izq.</translation>
    </message>
    <message>
        <source>Bumper corner, left</source>
        <translation>Esquina parachoques, izq.</translation>
    </message>
    <message>
        <source>Bumper corner, right</source>
        <translation>Esquina parachoques, der.</translation>
    </message>
    <message>
        <source>Roof cap, front</source>
        <translation>Tapa de techo, frontal</translation>
    </message>
    <message>
        <source>Luggage door, left</source>
        <translation>Puerta maletero, izq.</translation>
    </message>
    <message>
        <source>Luggage door, right</source>
        <translation>Puerta maletero, der.</translation>
    </message>
    <message>
        <source>Wheel arch, left</source>
        <translation>Paso de rueda, izq.</translation>
    </message>
    <message>
        <source>Wheel arch, right</source>
        <translation>Paso de rueda, der.</translation>
    </message>
    <message>
        <source>Engine cover</source>
        <translation>Tapa de motor</translation>
    </message>
    <message>
        <source>Front apron</source>
        <translation>Faldón frontal</translation>
    </message>
    <message>
        <source>Battery door</source>
        <translation>Puerta de batería</translation>
    </message>
    <message>
        <source>Another panel</source>
        <translation>Otro panel</translation>
    </message>
    <message>
        <source>Technician 1</source>
        <translation>Técnico 1</translation>
    </message>
    <message>
        <source>Technician 2</source>
        <translation>Técnico 2</translation>
    </message>
    <message>
        <source>Technician 3</source>
        <translation>Técnico 3</translation>
    </message>
    <message>
        <source>Apprentice</source>
        <translation>Aprendiz</translation>
    </message>
    <message>
        <source>Which panel is it?</source>
        <translation>¿Qué panel es?</translation>
    </message>
    <message>
        <source>Who is at the bench?</source>
        <translation>¿Quién está en el puesto?</translation>
    </message>
    <message>
        <source>The code is empty.</source>
        <translation>El código está vacío.</translation>
    </message>
    <message>
        <source>The code holds a control character.</source>
        <translation>El código tiene un carácter de control.</translation>
    </message>
    <message>
        <source>The code has %1 characters.</source>
        <translation>El código tiene %1 caracteres.</translation>
    </message>
    <message>
        <source>Scan 1 to %1 letters and figures.</source>
        <translation>Escanear de 1 a %1 letras y cifras.</translation>
    </message>
</context>
<context>
    <name>Tour</name>
    <message>
        <source>One panel, one card, one step at a time</source>
        <translation>Un panel, una tarjeta, un paso cada vez</translation>
    </message>
    <message>
        <source>Every repair hangs on the rail as a card. Tap it: the glass shows the one step that is next. Several run at once; none is lost.</source>
        <translation>Cada reparación es una tarjeta en la fila. Al pulsarla, la pantalla muestra el único paso que sigue. Varias corren a la vez; ninguna se pierde.</translation>
    </message>
    <message>
        <source>First find out what it is</source>
        <translation>Primero, averiguar qué es</translation>
    </message>
    <message>
        <source>Magnet, gauge, edge and sound tell the material. What nobody can tell stays unknown, and unknown is a stop.</source>
        <translation>Imán, medidor, borde y sonido dicen el material. Lo que nadie puede decir queda desconocido, y desconocido es un alto.</translation>
    </message>
    <message>
        <source>A stop is an answer too</source>
        <translation>Un alto también es respuesta</translation>
    </message>
    <message>
        <source>Where filler does not belong, the glass says why, and what to do instead. You leave a stop by putting it right and assessing again.</source>
        <translation>Donde no va masilla, la pantalla dice por qué y qué hacer en su lugar. De un alto se sale corrigiendo y evaluando de nuevo.</translation>
    </message>
    <message>
        <source>Prepare in order, gear first</source>
        <translation>Preparar en orden, primero el equipo</translation>
    </message>
    <message>
        <source>Each step is confirmed when it is done. Most repairs that fail were lost here.</source>
        <translation>Cada paso se confirma al hacerlo. La mayoría de las reparaciones que fallan se perdió aquí.</translation>
    </message>
    <message>
        <source>Puddle and bead are drawn at true size</source>
        <translation>Torta y cordón, dibujados a tamaño real</translation>
    </message>
    <message>
        <source>Lay filler and hardener as drawn, or weigh them. The clock starts when the hardener meets the filler: tap &apos;Hardener in&apos;.</source>
        <translation>Poner masilla y endurecedor como en el dibujo, o pesarlos. El reloj arranca cuando el endurecedor toca la masilla: pulsar «Con endurecedor».</translation>
    </message>
    <message>
        <source>The clock counts to the next act</source>
        <translation>El reloj cuenta hasta la próxima acción</translation>
    </message>
    <message>
        <source>Spread, clear the edges before it gels, then hands off. Every mix that runs stays in the dark bar at the top: tap it to go there.</source>
        <translation>Extender, limpiar los bordes antes de que gelifique, y no tocar. Cada mezcla en curso sigue en la barra oscura de arriba: pulsarla para ir allí.</translation>
    </message>
    <message>
        <source>Sand when nail and paper say so</source>
        <translation>Lijar cuando uña y lija lo digan</translation>
    </message>
    <message>
        <source>No mark by the nail, powder on the paper. Then the next lift, the other face, or the finish.</source>
        <translation>Sin marca de la uña, polvo en la lija. Luego, la próxima capa, la otra cara o el acabado.</translation>
    </message>
    <message>
        <source>Now practise: nothing here is in the shop’s record</source>
        <translation>Ahora, practicar: nada de esto va al registro del taller</translation>
    </message>
    <message>
        <source>On a practice panel you decide alone, and see what it would have come to. Safety data sheet and the vehicle maker’s manual come first, at the bench as here.</source>
        <translation>En un panel de práctica se decide a solas y se ve en qué habría acabado. Primero van la ficha de seguridad y el manual del fabricante del vehículo, en el puesto y aquí.</translation>
    </message>
    <message>
        <source>Tour, %1 of %2</source>
        <translation>Recorrido, %1 de %2</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Skip the tour</source>
        <translation>Saltar recorrido</translation>
    </message>
</context>
<context>
    <name>Traps</name>
    <message>
        <source>The crack runs on past the crazing that is seen.</source>
        <translation>La grieta sigue más allá del cuarteado que se ve.</translation>
    </message>
    <message>
        <source>SMC passes for hand laminate until its edge is looked at.</source>
        <translation>El SMC pasa por laminado a mano hasta que se mira su borde.</translation>
    </message>
    <message>
        <source>It looks dry, and is too near its dew point.</source>
        <translation>Parece seco, y está demasiado cerca del punto de rocío.</translation>
    </message>
    <message>
        <source>Just above the dew point is not enough.</source>
        <translation>Apenas por encima del punto de rocío no basta.</translation>
    </message>
    <message>
        <source>A weak magnet means old filler over steel.</source>
        <translation>Imán flojo: masilla vieja sobre acero.</translation>
    </message>
    <message>
        <source>The weld is hot and full of pores.</source>
        <translation>La soldadura está caliente y con poros.</translation>
    </message>
    <message>
        <source>A spot-welded seam invites welding up: it is a joint.</source>
        <translation>Una junta por puntos invita a soldarla entera: es unión.</translation>
    </message>
    <message>
        <source>Only from behind it is seen that the weld is stitched.</source>
        <translation>Solo por detrás se ve que la soldadura es a tramos.</translation>
    </message>
    <message>
        <source>Black rust converter looks sound, and a belt is mounted near.</source>
        <translation>El convertidor negro parece firme, y hay un cinturón anclado cerca.</translation>
    </message>
    <message>
        <source>The zinc was ground away here; beside it the gauge finds it.</source>
        <translation>Aquí el zinc se amoló; al lado, el medidor lo encuentra.</translation>
    </message>
    <message>
        <source>Steel in aluminium corrodes overnight.</source>
        <translation>El acero en el aluminio corroe en una noche.</translation>
    </message>
    <message>
        <source>The squeezed-out adhesive is still soft.</source>
        <translation>El adhesivo rebosado sigue blando.</translation>
    </message>
    <message>
        <source>It rings hard under its paint, and sands to strings.</source>
        <translation>Suena duro bajo la pintura, y al lijar hace hilos.</translation>
    </message>
    <message>
        <source>Carbon under paint: only the ohmmeter tells.</source>
        <translation>Carbono bajo pintura: solo lo dice el óhmetro.</translation>
    </message>
    <message>
        <source>It powders like SMC, and has no fibre in it.</source>
        <translation>Saca polvo como el SMC, y no tiene fibra.</translation>
    </message>
    <message>
        <source>Etch primer looks good, and polyester does not hold on it.</source>
        <translation>La imprimación ácida se ve bien, y el poliéster no agarra en ella.</translation>
    </message>
    <message>
        <source>A sensor looks through here.</source>
        <translation>Un sensor mira por aquí.</translation>
    </message>
    <message>
        <source>It is the wall of a tank.</source>
        <translation>Es la pared de un depósito.</translation>
    </message>
    <message>
        <source>Under the skin there is foam.</source>
        <translation>Bajo la piel hay espuma.</translation>
    </message>
</context>
<context>
    <name>WeighScreen</name>
    <message>
        <source>Planned: %1. Tare the scale before each.</source>
        <translation>Previsto: %1. Tarar la balanza antes de cada uno.</translation>
    </message>
    <message>
        <source>How much was weighed of each?</source>
        <translation>¿Cuánto se pesó de cada uno?</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Con endurecedor: iniciar</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Masilla</translation>
    </message>
    <message>
        <source>Key in the filler weighed</source>
        <translation>Teclear la masilla pesada</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Endurecedor</translation>
    </message>
    <message>
        <source>Key in the hardener weighed</source>
        <translation>Teclear el endurecedor pesado</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>prepare</source>
        <translation>preparar</translation>
    </message>
    <message>
        <source>dry and flash off</source>
        <translation>secar y orear</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezclar</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>extender</translation>
    </message>
    <message>
        <source>hands off</source>
        <translation>no tocar</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>lijar</translation>
    </message>
    <message>
        <source>turn the panel</source>
        <translation>voltear el panel</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>acabar</translation>
    </message>
    <message>
        <source>guide coat dries</source>
        <translation>secar la guía</translation>
    </message>
    <message>
        <source>cure before primer</source>
        <translation>curar antes de imprimar</translation>
    </message>
    <message>
        <source>Nobody may override this.</source>
        <translation>Nadie puede anular esto.</translation>
    </message>
    <message>
        <source>Only the supervisor may override, with a reason.</source>
        <translation>Solo el supervisor puede anularlo, con un motivo.</translation>
    </message>
    <message>
        <source>Park it</source>
        <translation>Apartar</translation>
    </message>
    <message>
        <source>Park it — %1</source>
        <extracomment>%1 is where it goes: &quot;to the welding shop&quot;</extracomment>
        <translation>Apartar — %1</translation>
    </message>
    <message>
        <source>Job %1</source>
        <extracomment>%1 is the job&apos;s number</extracomment>
        <translation>Orden %1</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n mezcla</numerusform>
            <numerusform>%n mezclas</numerusform>
        </translation>
    </message>
    <message>
        <source>The maker’s repair manual, local codes and licensed practice come first.</source>
        <translation>Primero: manual de reparación del fabricante, normas locales y práctica autorizada.</translation>
    </message>
    <message>
        <source>input</source>
        <translation>entrada</translation>
    </message>
</context>
<context>
    <name>strandbench::BeadTrialScreen</name>
    <message>
        <source>Bead of the hardener’s tube</source>
        <translation>Cordón del tubo de endurecedor</translation>
    </message>
    <message>
        <source>Tell the hardener’s lot first</source>
        <translation>Indicar antes el lote de endurecedor</translation>
    </message>
    <message>
        <source>A nozzle belongs to its tube. Which lot of hardener is open was not told: tell it where a batch is mixed, then calibrate.</source>
        <translation>La boquilla es de su tubo. No se indicó qué lote de endurecedor está abierto: indicarlo al mezclar, luego calibrar.</translation>
    </message>
    <message>
        <source>What the beads come to</source>
        <translation>Lo que dan los cordones</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Guardarlo</translation>
    </message>
    <message>
        <source>Nothing to keep yet</source>
        <translation>Nada que guardar aún</translation>
    </message>
    <message>
        <source>%1: %2, %3, %4</source>
        <extracomment>%1 is a number, %2 a length, %3 a mass, %4 a mass per length: &quot;1: 100 mm, 2.31 g, 23.1 mg/mm&quot;</extracomment>
        <translation>%1: %2, %3, %4</translation>
    </message>
    <message>
        <source>Scatter %1, at most %2. It holds for this lot until another is opened.</source>
        <translation>Dispersión %1, como mucho %2. Vale para este lote hasta abrir otro.</translation>
    </message>
    <message>
        <source>%1 of at least %2 beads are laid.</source>
        <translation>%1 de al menos %2 cordones puestos.</translation>
    </message>
    <message>
        <source>The beads scatter by %1, at most %2 is of use. Lay them again, straight and at one push.</source>
        <translation>Los cordones se dispersan %1; sirve como mucho %2. Ponerlos de nuevo, rectos y de una vez.</translation>
    </message>
    <message>
        <source>One more bead</source>
        <translation>Un cordón más</translation>
    </message>
    <message>
        <source>Begin anew</source>
        <translation>Empezar de nuevo</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>mantener 1 s</translation>
    </message>
</context>
<context>
    <name>strandbench::BenchWindow</name>
    <message>
        <source>The set-up could not be saved.</source>
        <translation>No se pudieron guardar los ajustes.</translation>
    </message>
    <message>
        <source>It holds until the program is closed.</source>
        <translation>Valen hasta cerrar el programa.</translation>
    </message>
    <message>
        <source>Scanned %1: not wanted here.</source>
        <translation>Escaneado %1: aquí no se usa.</translation>
    </message>
    <message>
        <source>A scan came without its Enter. Set the scanner to end with Enter.</source>
        <translation>Un escaneo llegó sin Enter. Ajustar el lector para que termine con Enter.</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to sign off</source>
        <translation>PIN del supervisor, para firmar</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to override</source>
        <translation>PIN del supervisor, para anular</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to forget them</source>
        <translation>PIN del supervisor, para olvidarlas</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to put it right</source>
        <translation>PIN del supervisor, para corregir</translation>
    </message>
    <message>
        <source>The supervisor’s PIN</source>
        <translation>El PIN del supervisor</translation>
    </message>
    <message>
        <source>signs as %1</source>
        <translation>firma como %1</translation>
    </message>
    <message>
        <source>Give the PIN</source>
        <translation>Dar el PIN</translation>
    </message>
    <message>
        <source>What is right?</source>
        <translation>¿Qué es lo cierto?</translation>
    </message>
    <message>
        <source>Put it right</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>The PIN that holds now</source>
        <translation>El PIN que vale ahora</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Key in the new PIN</source>
        <translation>Teclear el PIN nuevo</translation>
    </message>
    <message>
        <source>Key in the new PIN again</source>
        <translation>Teclear otra vez el PIN nuevo</translation>
    </message>
    <message>
        <source>Set this PIN</source>
        <translation>Fijar este PIN</translation>
    </message>
    <message>
        <source>The two are not the same.</source>
        <translation>No son iguales.</translation>
    </message>
    <message>
        <source>Go back and key it in anew.</source>
        <translation>Volver atrás y teclearlo de nuevo.</translation>
    </message>
    <message>
        <source>This PIN is too easy to guess.</source>
        <translation>Este PIN se adivina fácilmente.</translation>
    </message>
    <message>
        <source>Go back and choose another.</source>
        <translation>Volver atrás y elegir otro.</translation>
    </message>
    <message>
        <source>Only looking: another copy of the program has this bench.</source>
        <translation>Solo se mira: otra copia del programa tiene este puesto.</translation>
    </message>
    <message>
        <source>In which folder are the pictures?</source>
        <translation>¿En qué carpeta están las fotos?</translation>
    </message>
    <message>
        <source>Into which folder do backups go?</source>
        <translation>¿En qué carpeta van las copias?</translation>
    </message>
    <message>
        <source>In which folder is it?</source>
        <translation>¿En qué carpeta está?</translation>
    </message>
    <message>
        <source>Something is being kept just now.</source>
        <translation>Ahora mismo se está guardando algo.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Volver a intentarlo en un momento.</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to restore</source>
        <translation>PIN del supervisor, para restaurar</translation>
    </message>
    <message>
        <source>Only looking: the log cannot be written.</source>
        <translation>Solo se mira: el registro no se puede escribir.</translation>
    </message>
    <message>
        <source>Log damaged, nothing is written: restore a backup.</source>
        <translation>Registro dañado, no se escribe: restaurar una copia.</translation>
    </message>
    <message numerus="yes">
        <source>%n act(s) wait.</source>
        <translation>
            <numerusform>%n acción espera.</numerusform>
            <numerusform>%n acciones esperan.</numerusform>
        </translation>
    </message>
    <message>
        <source>Product sheets</source>
        <translation>Fichas de producto</translation>
    </message>
    <message>
        <source>What kind of filler is it?</source>
        <translation>¿Qué tipo de masilla es?</translation>
    </message>
    <message>
        <source>Into which folder does the sheet go?</source>
        <translation>¿En qué carpeta va la ficha?</translation>
    </message>
    <message>
        <source>Written into %1: %2 as JSON and CSV.</source>
        <extracomment>%1 is a folder, %2 a file&apos;s name without its ending</extracomment>
        <translation>Escrito en %1: %2 en JSON y CSV.</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>No escrito: %1</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, for the product sheet</source>
        <translation>PIN del supervisor, para la ficha</translation>
    </message>
    <message>
        <source>No lot of hardener is known.</source>
        <translation>No se conoce ningún lote de endurecedor.</translation>
    </message>
    <message>
        <source>Book in the tube that is open, then try.</source>
        <translation>Dar entrada al tubo abierto y probar.</translation>
    </message>
    <message>
        <source>Into which folder does the recall list go?</source>
        <translation>¿A qué carpeta va la lista de retirada?</translation>
    </message>
    <message>
        <source>Returned by the supervisor</source>
        <translation>Devuelto por el supervisor</translation>
    </message>
    <message>
        <source>What is to be mended?</source>
        <translation>¿Qué hay que arreglar?</translation>
    </message>
    <message>
        <source>Return it</source>
        <translation>Devolverla</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to return it</source>
        <translation>PIN del supervisor, para devolverla</translation>
    </message>
</context>
<context>
    <name>strandbench::CameraScreen</name>
    <message>
        <source>Take it again</source>
        <translation>Repetir la foto</translation>
    </message>
    <message>
        <source>Another camera</source>
        <translation>Otra cámara</translation>
    </message>
    <message>
        <source>No camera is there.</source>
        <translation>No hay ninguna cámara.</translation>
    </message>
    <message>
        <source>Plug the camera in again, or choose from a folder.</source>
        <translation>Volver a conectar la cámara o elegir de una carpeta.</translation>
    </message>
    <message>
        <source>Point the camera: %1</source>
        <translation>Apuntar la cámara: %1</translation>
    </message>
    <message>
        <source>Waiting for the camera</source>
        <translation>Esperando la cámara</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Tomar la foto</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>Check the photo: %1</source>
        <translation>Revisar la foto: %1</translation>
    </message>
    <message>
        <source>Keep this photo</source>
        <translation>Guardar esta foto</translation>
    </message>
    <message>
        <source>The photo taken</source>
        <translation>La foto tomada</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Reintentar</translation>
    </message>
    <message>
        <source>%1 is not there any more.</source>
        <extracomment>%1 is what the camera calls itself</extracomment>
        <translation>%1 ya no está.</translation>
    </message>
    <message>
        <source>%1 is in use elsewhere.</source>
        <translation>%1 está en uso.</translation>
    </message>
    <message>
        <source>End what uses it, or choose from a folder.</source>
        <translation>Cerrar lo que la usa o elegir de una carpeta.</translation>
    </message>
    <message>
        <source>The bench may not use %1.</source>
        <translation>El puesto no puede usar %1.</translation>
    </message>
    <message>
        <source>Have it allowed, or choose from a folder.</source>
        <translation>Pedir permiso o elegir de una carpeta.</translation>
    </message>
    <message>
        <source>%1 gives no picture that can be kept.</source>
        <translation>%1 no da imágenes que se puedan guardar.</translation>
    </message>
    <message>
        <source>Take another camera, or choose from a folder.</source>
        <translation>Usar otra cámara o elegir de una carpeta.</translation>
    </message>
    <message>
        <source>%1 sends no picture.</source>
        <translation>%1 no envía imágenes.</translation>
    </message>
    <message>
        <source>%1 failed: %2.</source>
        <extracomment>%1 is what the camera calls itself, %2 what the system says</extracomment>
        <translation>%1 falló: %2.</translation>
    </message>
    <message>
        <source>Take it again, or choose from a folder.</source>
        <translation>Repetir la foto o elegir de una carpeta.</translation>
    </message>
    <message>
        <source>The photo is larger than %1 MB.</source>
        <translation>La foto supera los %1 MB.</translation>
    </message>
    <message>
        <source>%1 gave no whole picture.</source>
        <translation>%1 no dio una imagen completa.</translation>
    </message>
</context>
<context>
    <name>strandbench::ClockScreen</name>
    <message>
        <source>clock runs on</source>
        <translation>el reloj corre</translation>
    </message>
    <message>
        <source>from the sheet, not yet from this panel’s heat</source>
        <translation>de la ficha, aún no del calor de este panel</translation>
    </message>
    <message>
        <source>It has gelled</source>
        <translation>Ha gelificado</translation>
    </message>
    <message>
        <source>tap when it pulls and will not smear</source>
        <translation>pulsar cuando tira y no se deja extender</translation>
    </message>
    <message>
        <source>It sands already</source>
        <translation>Ya se lija</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>mantener 1 s</translation>
    </message>
    <message>
        <source>On the board</source>
        <translation>En la tabla</translation>
    </message>
    <message>
        <source>On the panel</source>
        <translation>En el panel</translation>
    </message>
    <message>
        <source>Phases of this batch to time scale</source>
        <translation>Fases de esta mezcla a escala de tiempo</translation>
    </message>
    <message>
        <source>the board has set</source>
        <translation>fraguó en la tabla</translation>
    </message>
    <message>
        <source>board sets in %1</source>
        <translation>en la tabla fragua en %1</translation>
    </message>
    <message>
        <source>Edges are clear</source>
        <translation>Bordes limpios</translation>
    </message>
    <message>
        <source>Knead firmly: no air, no streaks</source>
        <translation>Amasar con fuerza: sin aire ni vetas</translation>
    </message>
    <message>
        <source>until you spread</source>
        <translation>hasta extender</translation>
    </message>
    <message>
        <source>Press in firmly, wet the edges, fill to level</source>
        <translation>Apretar firme, mojar los bordes, llenar a ras</translation>
    </message>
    <message>
        <source>until the edges must be clear</source>
        <translation>hasta tener limpios los bordes</translation>
    </message>
    <message>
        <source>Clear the edges now</source>
        <translation>Limpiar ya los bordes</translation>
    </message>
    <message>
        <source>until it gels</source>
        <translation>hasta que gelifique</translation>
    </message>
    <message>
        <source>since hardener in</source>
        <translation>desde el endurecedor</translation>
    </message>
    <message>
        <source>Nail and paper say: it sands</source>
        <translation>Uña y lija lo dicen: se lija</translation>
    </message>
    <message>
        <source>Hands off: let it cure</source>
        <translation>No tocar: dejar curar</translation>
    </message>
    <message>
        <source>until it may be tested</source>
        <translation>hasta poder probarla</translation>
    </message>
    <message>
        <source>Nail leaves no mark, paper powders: then sand</source>
        <translation>La uña no marca, la lija saca polvo: lijar</translation>
    </message>
    <message>
        <source>of easy sanding left</source>
        <translation>restan de lijado fácil</translation>
    </message>
    <message>
        <source>since hardener in: it gets harder</source>
        <translation>desde endurecedor: se endurece</translation>
    </message>
    <message>
        <source>from the sheet, for this layer on this panel</source>
        <translation>de la ficha, para esta capa en este panel</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Curva</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>gels between %1 and %2</source>
        <translation>gelifica entre %1 y %2</translation>
    </message>
    <message>
        <source>sands from between %1 and %2</source>
        <translation>empieza a lijarse entre %1 y %2</translation>
    </message>
    <message>
        <source>As read at %1, before: %2.</source>
        <translation>Medido a las %1, antes: %2.</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Medir otra vez</translation>
    </message>
    <message>
        <source>It may have gelled: hands off</source>
        <translation>Puede haber gelificado: no tocar</translation>
    </message>
    <message>
        <source>until it sands, at the latest</source>
        <translation>hasta que se lija, como muy tarde</translation>
    </message>
</context>
<context>
    <name>strandbench::ClosingScreen</name>
    <message>
        <source>Deviation</source>
        <translation>Desviación</translation>
    </message>
    <message>
        <source>Reading …</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>The record holds what is asked for</source>
        <translation>El registro tiene lo que se pide</translation>
    </message>
    <message numerus="yes">
        <source>The record lacks %n thing(s)</source>
        <translation>
            <numerusform>Al registro le falta %n cosa</numerusform>
            <numerusform>Al registro le faltan %n cosas</numerusform>
        </translation>
    </message>
    <message>
        <source>Signed off: %1, %2</source>
        <translation>Firmado: %1, %2</translation>
    </message>
    <message>
        <source>Returned: %1. %2, %3</source>
        <extracomment>%1 is a reason, %2 a person, %3 a day and a time</extracomment>
        <translation>Devuelto: %1. %2, %3</translation>
    </message>
    <message>
        <source>Sign off</source>
        <translation>Firmar</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>supervisor</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Devolver</translation>
    </message>
    <message>
        <source>What it does again</source>
        <translation>La que repasa</translation>
    </message>
    <message>
        <source>Its rework</source>
        <translation>Su repaso</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Corregir</translation>
    </message>
</context>
<context>
    <name>strandbench::CurveScreen</name>
    <message>
        <source>What goes on inside this layer</source>
        <translation>Qué ocurre dentro de esta capa</translation>
    </message>
    <message>
        <source>clock runs on</source>
        <translation>el reloj corre</translation>
    </message>
    <message>
        <source>Back to the clock</source>
        <translation>Volver al reloj</translation>
    </message>
    <message>
        <source>hottest</source>
        <translation>máximo</translation>
    </message>
    <message>
        <source>face</source>
        <translation>cara</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>curado</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>gel</translation>
    </message>
    <message>
        <source>sands</source>
        <translation>se lija</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>Temperatures and cure of this layer against time</source>
        <translation>Temperaturas y curado de esta capa en el tiempo</translation>
    </message>
    <message>
        <source>Gels after</source>
        <translation>Gelifica tras</translation>
    </message>
    <message>
        <source>Sands after</source>
        <translation>Se lija tras</translation>
    </message>
    <message>
        <source>Hottest, limit %1</source>
        <translation>Máximo, límite %1</translation>
    </message>
    <message>
        <source>Hottest</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Cured by now</source>
        <translation>Curado hasta ahora</translation>
    </message>
</context>
<context>
    <name>strandbench::DayReviewScreen</name>
    <message>
        <source>Reading …</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>Nothing was worked on that day.</source>
        <translation>Ese día no se trabajó en nada.</translation>
    </message>
    <message>
        <source>Next to look through</source>
        <translation>Siguiente por revisar</translation>
    </message>
    <message>
        <source>Day before</source>
        <translation>Día antes</translation>
    </message>
    <message>
        <source>Day after</source>
        <translation>Día después</translation>
    </message>
    <message>
        <source>Narrow down</source>
        <translation>Acotar</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>Day’s sheets</source>
        <translation>Hojas del día</translation>
    </message>
    <message>
        <source>Reading %1 of %2 …</source>
        <extracomment>how many repairs of how many were read</extracomment>
        <translation>Leyendo %1 de %2…</translation>
    </message>
    <message numerus="yes">
        <source>%n to sign off or return</source>
        <translation>
            <numerusform>%n por firmar o devolver</numerusform>
            <numerusform>%n por firmar o devolver</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing to sign off</source>
        <translation>Nada por firmar</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n reparación</numerusform>
            <numerusform>%n reparaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n need eyes first</source>
        <translation>
            <numerusform>%n pide atención primero</numerusform>
            <numerusform>%n piden atención primero</numerusform>
        </translation>
    </message>
    <message>
        <source>mixed %1, planned %2</source>
        <extracomment>two masses of filler</extracomment>
        <translation>mezclado %1, previsto %2</translation>
    </message>
    <message>
        <source>work %1, planned %2</source>
        <extracomment>two times of work</extracomment>
        <translation>trabajo %1, previsto %2</translation>
    </message>
    <message>
        <source>A record that cannot be read</source>
        <translation>Un registro que no se puede leer</translation>
    </message>
    <message>
        <source>rework</source>
        <translation>repaso</translation>
    </message>
</context>
<context>
    <name>strandbench::DaySheetsScreen</name>
    <message>
        <source>Choose where the day’s sheets go</source>
        <translation>Elegir adónde van las hojas del día</translation>
    </message>
    <message>
        <source>A record of this day cannot be read.</source>
        <translation>Un registro de este día no se puede leer.</translation>
    </message>
</context>
<context>
    <name>strandbench::DewScreen</name>
    <message>
        <source>Panel above its dew point</source>
        <translation>Panel sobre su punto de rocío</translation>
    </message>
    <message>
        <source>The least margin follows the practice of ISO 8502-4 and ISO 12944-7; a sheet that asks for more comes first.</source>
        <translation>El margen mínimo sigue la práctica de ISO 8502-4 e ISO 12944-7; una ficha que pida más va primero.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing was read in the last %n day(s).</source>
        <translation>
            <numerusform>Nada medido en el último día.</numerusform>
            <numerusform>Nada medido en los últimos %n días.</numerusform>
        </translation>
    </message>
    <message>
        <source>Margin over the dew point against the time of day, %1</source>
        <translation>Margen sobre el punto de rocío según la hora, %1</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>límite %1</translation>
    </message>
    <message>
        <source>below the limit</source>
        <translation>bajo el límite</translation>
    </message>
    <message>
        <source>%1, last read at %2</source>
        <extracomment>a day, and the time of its last reading</extracomment>
        <translation>%1, última lectura a las %2</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>%1 above dew point</source>
        <translation>%1 sobre el punto de rocío</translation>
    </message>
    <message>
        <source>air %1, %2; panel %3; dew point %4</source>
        <translation>aire %1, %2; panel %3; punto de rocío %4</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s), each within the limit of %1.</source>
        <translation>
            <numerusform>%n lectura, dentro del límite de %1.</numerusform>
            <numerusform>%n lecturas, todas dentro del límite de %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) below the limit of %1</source>
        <translation>
            <numerusform>%n lectura bajo el límite de %1</numerusform>
            <numerusform>%n lecturas bajo el límite de %1</numerusform>
        </translation>
    </message>
    <message>
        <source>least %1 at %2: no filling then</source>
        <translation>mínimo %1 a las %2: entonces no se masilla</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
</context>
<context>
    <name>strandbench::FigureListScreen</name>
    <message>
        <source>gels of a lot against its sheet</source>
        <translation>geles de un lote frente a su ficha</translation>
    </message>
    <message>
        <source>planned and mixed, by product</source>
        <translation>previsto y mezclado, por producto</translation>
    </message>
    <message>
        <source>signed off, not returned, by substrate</source>
        <translation>firmadas, no devueltas, por sustrato</translation>
    </message>
    <message>
        <source>planned and actual, by part of the job</source>
        <translation>previsto y real, por parte de la orden</translation>
    </message>
    <message>
        <source>deviations, the most frequent first</source>
        <translation>desviaciones, las más frecuentes primero</translation>
    </message>
    <message>
        <source>Figures of this bench’s log</source>
        <translation>Cifras del registro de este puesto</translation>
    </message>
    <message>
        <source>What do you want to know?</source>
        <translation>¿Qué se quiere saber?</translation>
    </message>
</context>
<context>
    <name>strandbench::FigureLotScreen</name>
    <message>
        <source>Which lot? The newest gel first</source>
        <translation>¿Qué lote? El gel más reciente primero</translation>
    </message>
    <message>
        <source>In these days no gel was told of a batch whose hardener lot is known.</source>
        <translation>En estos días no se indicó ningún gel de una mezcla cuyo lote de endurecedor se conozca.</translation>
    </message>
    <message numerus="yes">
        <source>%n gel(s), the last on %1</source>
        <translation>
            <numerusform>%n gel, el último el %1</numerusform>
            <numerusform>%n geles, el último el %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::FigureScreen</name>
    <message>
        <source>Is lot %1 drifting?</source>
        <extracomment>%1 is a lot of hardener</extracomment>
        <translation>¿Se desvía el lote %1?</translation>
    </message>
    <message>
        <source>Show the chart</source>
        <translation>Ver el gráfico</translation>
    </message>
    <message>
        <source>Show the table</source>
        <translation>Ver la tabla</translation>
    </message>
    <message>
        <source>Moving range</source>
        <translation>Rango móvil</translation>
    </message>
    <message>
        <source>Single gels</source>
        <translation>Geles uno a uno</translation>
    </message>
    <message>
        <source>the step from gel to gel</source>
        <translation>el salto de gel a gel</translation>
    </message>
    <message>
        <source>with the moving mean</source>
        <translation>con la media móvil</translation>
    </message>
</context>
<context>
    <name>strandbench::FiguresScreen</name>
    <message>
        <source>%1 is not measured yet.</source>
        <translation>%1: sin medir aún.</translation>
    </message>
    <message>
        <source>Tap its figure to key it in.</source>
        <translation>Pulsar su valor para teclearlo.</translation>
    </message>
    <message>
        <source>Take this figure</source>
        <translation>Tomar este valor</translation>
    </message>
    <message>
        <source>%1: take over</source>
        <translation>%1: tomar</translation>
    </message>
    <message>
        <source>not within what is allowed here</source>
        <translation>fuera de lo admitido aquí</translation>
    </message>
    <message>
        <source>not steady yet</source>
        <translation>aún no estable</translation>
    </message>
</context>
<context>
    <name>strandbench::FindScreen</name>
    <message>
        <source>Job, panel, person, lot or words of a note</source>
        <translation>Orden, panel, persona, lote o palabras de una nota</translation>
    </message>
    <message>
        <source>What is looked for?</source>
        <translation>¿Qué se busca?</translation>
    </message>
    <message>
        <source>Look for it</source>
        <translation>Buscarlo</translation>
    </message>
    <message>
        <source>The code holds a control character.</source>
        <translation>El código contiene un carácter de control.</translation>
    </message>
    <message>
        <source>It is not looked for.</source>
        <translation>No se busca.</translation>
    </message>
</context>
<context>
    <name>strandbench::FireScreen</name>
    <message>
        <source>What can burn here</source>
        <translation>Qué puede arder aquí</translation>
    </message>
    <message>
        <source>The safety data sheet, local codes and licensed practice come first.</source>
        <translation>Primero van la ficha de seguridad, las normas locales y la práctica autorizada.</translation>
    </message>
    <message>
        <source>What lights vapour</source>
        <translation>Qué inflama el vapor</translation>
    </message>
    <message>
        <source>Sparks of grinder, drill, switch or plug.</source>
        <translation>Chispas de amoladora, taladro, interruptor o enchufe.</translation>
    </message>
    <message>
        <source>Static of dry rags, foil and spray: earth can and panel.</source>
        <translation>Electricidad estática de trapos secos, film y aerosol: poner a tierra bote y panel.</translation>
    </message>
    <message>
        <source>Heater, lamp, hot pipe, flame, cigarette.</source>
        <translation>Calefactor, lámpara, tubería caliente, llama, cigarrillo.</translation>
    </message>
    <message>
        <source>The vapours are heavier than air: they lie low and creep far.</source>
        <translation>Los vapores pesan más que el aire: quedan abajo y llegan lejos.</translation>
    </message>
    <message>
        <source>What heats up by itself</source>
        <translation>Qué se calienta solo</translation>
    </message>
</context>
<context>
    <name>strandbench::FoundScreen</name>
    <message>
        <source>Looked for: %1</source>
        <translation>Buscado: %1</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation>Buscando…</translation>
    </message>
    <message>
        <source>Look for something else</source>
        <translation>Buscar otra cosa</translation>
    </message>
    <message>
        <source>Nothing found</source>
        <translation>Nada encontrado</translation>
    </message>
    <message>
        <source>The newest first: tap one</source>
        <translation>Lo más nuevo primero: pulsar uno</translation>
    </message>
    <message>
        <source>No repair holds all of these words. Fewer letters find more: words are found by their beginning.</source>
        <translation>Ninguna reparación tiene todas estas palabras. Con menos letras se encuentra más: vale el comienzo.</translation>
    </message>
    <message>
        <source>every repair that took of this lot</source>
        <translation>cada reparación que usó este lote</translation>
    </message>
    <message>
        <source>Older ones</source>
        <translation>Anteriores</translation>
    </message>
</context>
<context>
    <name>strandbench::GlossaryScreen</name>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Words of the trade</source>
        <translation>Palabras del oficio</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Volver al trabajo</translation>
    </message>
</context>
<context>
    <name>strandbench::HarmScreen</name>
    <message>
        <source>What can hurt here</source>
        <translation>Qué puede hacer daño aquí</translation>
    </message>
    <message>
        <source>The safety data sheet, local codes and licensed practice come first.</source>
        <translation>Primero van la ficha de seguridad, las normas locales y la práctica autorizada.</translation>
    </message>
    <message>
        <source>Back to the step</source>
        <translation>Volver al paso</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>By the safety data sheet of %1</source>
        <extracomment>%1 is a product as the shop calls it</extracomment>
        <translation>Según la ficha de seguridad de %1</translation>
    </message>
    <message>
        <source>In general; the product’s own sheet may say more.</source>
        <translation>En general; la ficha del producto puede decir más.</translation>
    </message>
    <message>
        <source>Gloves: %1</source>
        <translation>Guantes: %1</translation>
    </message>
    <message>
        <source>Mask: %1</source>
        <translation>Mascarilla: %1</translation>
    </message>
    <message>
        <source>First aid: %1</source>
        <translation>Primeros auxilios: %1</translation>
    </message>
    <message>
        <source>Waste: %1</source>
        <translation>Residuos: %1</translation>
    </message>
    <message>
        <source>Its sheet states no hazard.</source>
        <translation>Su ficha no indica ningún peligro.</translation>
    </message>
</context>
<context>
    <name>strandbench::HelpScreen</name>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Volver al trabajo</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>of the trade</source>
        <translation>del oficio</translation>
    </message>
    <message>
        <source>Legend</source>
        <translation>Leyenda</translation>
    </message>
    <message>
        <source>hatches and signs</source>
        <translation>tramas y señales</translation>
    </message>
    <message>
        <source>Quick card</source>
        <translation>Tarjeta rápida</translation>
    </message>
    <message>
        <source>one page, to print</source>
        <translation>una página, a imprimir</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
</context>
<context>
    <name>strandbench::HomeScreen</name>
    <message>
        <source>Take in a panel</source>
        <translation>Recibir un panel</translation>
    </message>
    <message>
        <source>job number and panel</source>
        <translation>número de orden y panel</translation>
    </message>
    <message>
        <source>At the bench</source>
        <translation>En el puesto</translation>
    </message>
    <message>
        <source>nobody yet: tap</source>
        <translation>nadie aún: pulsar</translation>
    </message>
    <message>
        <source>More jobs</source>
        <translation>Más órdenes</translation>
    </message>
    <message>
        <source>Bench set-up</source>
        <translation>Ajustes del puesto</translation>
    </message>
    <message numerus="yes">
        <source>%n in all</source>
        <translation>
            <numerusform>%n en total</numerusform>
            <numerusform>%n en total</numerusform>
        </translation>
    </message>
    <message>
        <source>Today’s work</source>
        <translation>Trabajo de hoy</translation>
    </message>
    <message>
        <source>! backup overdue</source>
        <translation>! copia atrasada</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation>Practicar</translation>
    </message>
    <message>
        <source>on a practice panel</source>
        <translation>con un panel de práctica</translation>
    </message>
    <message>
        <source>No repair is open. Take in a panel: the program asks what there is, plans, and keeps time and record.</source>
        <translation>No hay ninguna reparación abierta. Recibir un panel: el programa pregunta qué hay, planifica y lleva tiempo y registro.</translation>
    </message>
</context>
<context>
    <name>strandbench::LegendScreen</name>
    <message>
        <source>crossed hatch</source>
        <translation>trama cruzada</translation>
    </message>
    <message>
        <source>short flecks</source>
        <translation>motas cortas</translation>
    </message>
    <message>
        <source>close slanted hatch</source>
        <translation>trama inclinada densa</translation>
    </message>
    <message>
        <source>as steel, with a pale skin</source>
        <translation>como el acero, con piel clara</translation>
    </message>
    <message>
        <source>pale, rows of dashes</source>
        <translation>claro, filas de rayas</translation>
    </message>
    <message>
        <source>pale, rows of dots</source>
        <translation>claro, filas de puntos</translation>
    </message>
    <message>
        <source>Fibre filler</source>
        <translation>Masilla de fibra</translation>
    </message>
    <message>
        <source>short strokes</source>
        <translation>trazos cortos</translation>
    </message>
    <message>
        <source>The next lift</source>
        <translation>La capa siguiente</translation>
    </message>
    <message>
        <source>fewer strokes, paler</source>
        <translation>menos trazos, más claro</translation>
    </message>
    <message>
        <source>Not laid yet</source>
        <translation>Aún sin poner</translation>
    </message>
    <message>
        <source>dashed outline</source>
        <translation>contorno de rayas</translation>
    </message>
    <message>
        <source>Finishing filler</source>
        <translation>Masilla de acabado</translation>
    </message>
    <message>
        <source>pale, without hatch</source>
        <translation>claro, sin trama</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Endurecedor</translation>
    </message>
    <message>
        <source>the bead on the board</source>
        <translation>el cordón en la tabla</translation>
    </message>
    <message>
        <source>Adhesive</source>
        <translation>Adhesivo</translation>
    </message>
    <message>
        <source>upright strokes</source>
        <translation>trazos verticales</translation>
    </message>
    <message>
        <source>Weld</source>
        <translation>Soldadura</translation>
    </message>
    <message>
        <source>grey, without hatch</source>
        <translation>gris, sin trama</translation>
    </message>
    <message>
        <source>Paint</source>
        <translation>Pintura</translation>
    </message>
    <message>
        <source>blue, without hatch</source>
        <translation>azul, sin trama</translation>
    </message>
    <message>
        <source>Tape of a dam</source>
        <translation>Cinta de un tope</translation>
    </message>
    <message>
        <source>yellow, without hatch</source>
        <translation>amarillo, sin trama</translation>
    </message>
    <message>
        <source>Octagon: stop</source>
        <translation>Octógono: alto</translation>
    </message>
    <message>
        <source>Do not go on here.</source>
        <translation>No seguir aquí.</translation>
    </message>
    <message>
        <source>Triangle: caution</source>
        <translation>Triángulo: precaución</translation>
    </message>
    <message>
        <source>It can hurt, or spoil the work.</source>
        <translation>Puede dañar o estropear el trabajo.</translation>
    </message>
    <message>
        <source>Blue key: do</source>
        <translation>Tecla azul: hacer</translation>
    </message>
    <message>
        <source>The way on; it records what was done.</source>
        <translation>El paso siguiente; registra lo hecho.</translation>
    </message>
    <message>
        <source>Green key: go</source>
        <translation>Tecla verde: adelante</translation>
    </message>
    <message>
        <source>The way on where all that is asked is there.</source>
        <translation>El paso siguiente si está todo lo que se pide.</translation>
    </message>
    <message>
        <source>Disc with a tick: done</source>
        <translation>Disco con marca: hecho</translation>
    </message>
    <message>
        <source>It was told and is in the log.</source>
        <translation>Se indicó y está en el registro.</translation>
    </message>
    <message>
        <source>A tap on a section leads here</source>
        <translation>Un toque en una sección lleva aquí</translation>
    </message>
    <message>
        <source>Hatches and signs</source>
        <translation>Tramas y señales</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Volver al trabajo</translation>
    </message>
    <message>
        <source>dark, in squares</source>
        <translation>oscuro, en cuadros</translation>
    </message>
</context>
<context>
    <name>strandbench::LotKeys</name>
    <message>
        <source>Clear</source>
        <translation>Borrar</translation>
    </message>
</context>
<context>
    <name>strandbench::LotListScreen</name>
    <message>
        <source>Hardener lots of this bench</source>
        <translation>Lotes de endurecedor de este puesto</translation>
    </message>
    <message>
        <source>Tap a lot to see what it taught</source>
        <translation>Pulsar un lote para ver qué enseñó</translation>
    </message>
    <message>
        <source>No batch yet whose hardener lot was told. It is told at the mix.</source>
        <translation>Aún no hay mezcla con lote de endurecedor indicado. Se indica al mezclar.</translation>
    </message>
    <message>
        <source>its sheet is not loaded</source>
        <translation>su ficha no está cargada</translation>
    </message>
</context>
<context>
    <name>strandbench::LotPageScreen</name>
    <message>
        <source>What this lot taught</source>
        <translation>Lo que enseñó este lote</translation>
    </message>
    <message>
        <source>To the test pat</source>
        <translation>A la torta de prueba</translation>
    </message>
    <message>
        <source>Make a test pat</source>
        <translation>Hacer una torta de prueba</translation>
    </message>
    <message>
        <source>The sheet of this product is not loaded.</source>
        <translation>La ficha de este producto no está cargada.</translation>
    </message>
    <message>
        <source>forgotten</source>
        <translation>olvidado</translation>
    </message>
    <message>
        <source>Nothing was mixed of this lot yet.</source>
        <translation>De este lote aún no se mezcló nada.</translation>
    </message>
    <message>
        <source>The next batch, most likely:</source>
        <translation>La próxima mezcla, lo más probable:</translation>
    </message>
    <message>
        <source>%1 of batches: %2</source>
        <translation>%1 de las mezclas: %2</translation>
    </message>
    <message>
        <source>Forgotten on %1 by %2: %3</source>
        <translation>Olvidado el %1 por %2: %3</translation>
    </message>
    <message>
        <source>nobody told</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Forget these</source>
        <translation>Olvidar estas</translation>
    </message>
    <message>
        <source>supervisor: hold 1 s</source>
        <translation>supervisor: mantener 1 s</translation>
    </message>
    <message>
        <source>Calibrate its bead</source>
        <translation>Calibrar su cordón</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>by an earlier version of the sheet: it does not count</source>
        <translation>por una versión anterior de la ficha: no cuenta</translation>
    </message>
</context>
<context>
    <name>strandbench::LotScreen</name>
    <message>
        <source>Which product is in your hand?</source>
        <translation>¿Qué producto hay en la mano?</translation>
    </message>
    <message>
        <source>Which lot of filler is open?</source>
        <translation>¿Qué lote de masilla está abierto?</translation>
    </message>
    <message>
        <source>Which lot of hardener is open?</source>
        <translation>¿Qué lote de endurecedor está abierto?</translation>
    </message>
    <message>
        <source>These are in hand</source>
        <translation>Estos están en uso</translation>
    </message>
    <message>
        <source>Key in or scan the lot of filler</source>
        <translation>Teclear o escanear el lote de masilla</translation>
    </message>
    <message>
        <source>Key in or scan the lot of hardener</source>
        <translation>Teclear o escanear el lote de endurecedor</translation>
    </message>
    <message>
        <source>Take this lot</source>
        <translation>Usar este lote</translation>
    </message>
    <message>
        <source>Scanned: lot %1. What is it?</source>
        <translation>Escaneado: lote %1. ¿Qué es?</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>its sheet is not loaded</source>
        <translation>su ficha no está cargada</translation>
    </message>
    <message>
        <source>Lot of filler</source>
        <translation>Lote de masilla</translation>
    </message>
    <message>
        <source>Lot of hardener</source>
        <translation>Lote de endurecedor</translation>
    </message>
    <message>
        <source>planned with</source>
        <translation>el previsto</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>en uso</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Another lot</source>
        <translation>Otro lote</translation>
    </message>
    <message>
        <source>Remove lot %1</source>
        <translation>Quitar lote %1</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>mantener 1 s</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Masilla</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Endurecedor</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>terminado</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>quedan %1</translation>
    </message>
</context>
<context>
    <name>strandbench::LotTraceScreen</name>
    <message>
        <source>Looking …</source>
        <translation>Buscando…</translation>
    </message>
    <message>
        <source>Recall list as files</source>
        <translation>Lista de retirada en archivos</translation>
    </message>
    <message>
        <source>Nothing was mixed of this lot</source>
        <extracomment>%1 is &quot;3 batches&quot;</extracomment>
        <translation>No se mezcló nada de este lote</translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n repair(s)</source>
        <translation>
            <numerusform>%1 en %n reparación</numerusform>
            <numerusform>%1 en %n reparaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>The recall list is being written …</source>
        <translation>Escribiendo la lista de retirada…</translation>
    </message>
    <message>
        <source>Cancelled: nothing was written.</source>
        <translation>Cancelado: no se escribió nada.</translation>
    </message>
    <message>
        <source>Written as CSV and PDF: %1</source>
        <extracomment>%1 is a file’s name without its ending</extracomment>
        <translation>Escrito en CSV y PDF: %1</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>No escrito: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::MarkScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Panel de práctica</translation>
    </message>
    <message>
        <source>Back to the marks</source>
        <translation>Volver a la corrección</translation>
    </message>
    <message>
        <source>You: %1</source>
        <extracomment>what the apprentice decided</extracomment>
        <translation>Respuesta: %1</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>Correcto: %1</translation>
    </message>
    <message>
        <source>It was not reached.</source>
        <translation>No se llegó ahí.</translation>
    </message>
    <message>
        <source>hottest</source>
        <translation>máximo</translation>
    </message>
    <message>
        <source>face</source>
        <translation>cara</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>curado</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>gel</translation>
    </message>
    <message>
        <source>sands</source>
        <translation>se lija</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
</context>
<context>
    <name>strandbench::MarksScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Panel de práctica</translation>
    </message>
    <message>
        <source>Working out what it comes to …</source>
        <translation>Calculando en qué acaba…</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Replay</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>beside the model answer</source>
        <translation>junto a la respuesta modelo</translation>
    </message>
    <message>
        <source>right</source>
        <translation>correcto</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>no alcanzado</translation>
    </message>
</context>
<context>
    <name>strandbench::MixByEyeScreen</name>
    <message>
        <source>Lay filler and hardener on the board</source>
        <translation>Poner masilla y endurecedor en la tabla</translation>
    </message>
    <message>
        <source>Hardener in — start</source>
        <translation>Con endurecedor: iniciar</translation>
    </message>
    <message>
        <source>Puddle and bead at true size</source>
        <translation>Torta y cordón a tamaño real</translation>
    </message>
    <message>
        <source>Puddle smaller</source>
        <translation>Reducir torta</translation>
    </message>
    <message>
        <source>Puddle larger</source>
        <translation>Ampliar torta</translation>
    </message>
    <message>
        <source>Bead shorter</source>
        <translation>Acortar cordón</translation>
    </message>
    <message>
        <source>Bead longer</source>
        <translation>Alargar cordón</translation>
    </message>
    <message>
        <source>True size</source>
        <translation>Tamaño real</translation>
    </message>
    <message>
        <source>not true size</source>
        <translation>no a tamaño real</translation>
    </message>
</context>
<context>
    <name>strandbench::MixScreen</name>
    <message>
        <source>Knead both, then weigh these two</source>
        <translation>Amasar ambos, luego pesar estos dos</translation>
    </message>
    <message>
        <source>Knead both, then lay this puddle and bead</source>
        <translation>Amasar ambos, luego poner esta torta y cordón</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Con endurecedor: iniciar</translation>
    </message>
    <message>
        <source>Puddle and bead, drawn to size</source>
        <translation>Torta y cordón a tamaño real</translation>
    </message>
    <message>
        <source>Hold the board beside the glass. Straight bead, puddle %1 high.</source>
        <translation>Poner la tabla junto a la pantalla. Cordón recto, torta de %1 de alto.</translation>
    </message>
    <message>
        <source>Weigh: filler + hardener</source>
        <translation>Pesar: masilla + endurecedor</translation>
    </message>
    <message>
        <source>Under %1: bead too coarse</source>
        <translation>Bajo %1: cordón impreciso</translation>
    </message>
    <message>
        <source>Puddle across</source>
        <translation>Diámetro de torta</translation>
    </message>
    <message>
        <source>Hardener bead (%1)</source>
        <translation>Cordón (%1)</translation>
    </message>
    <message>
        <source>or weigh</source>
        <translation>o pesar</translation>
    </message>
    <message>
        <source>board sets in about %1</source>
        <translation>fragua en tabla en unos %1</translation>
    </message>
    <message>
        <source>More or less hardener?</source>
        <translation>¿Más o menos endurecedor?</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>%1 · lot not told: tap</source>
        <translation>%1 · lote sin indicar: pulsar</translation>
    </message>
    <message>
        <source>%1 · lot %2 · hardener %3</source>
        <translation>%1 · lote %2 · endurecedor %3</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>not the product planned with</source>
        <translation>no es el producto previsto</translation>
    </message>
    <message>
        <source>Hold it back</source>
        <translation>Retenerla</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Medir otra vez</translation>
    </message>
    <message>
        <source>Plan again as read</source>
        <translation>Planificar con lo medido</translation>
    </message>
    <message>
        <source>Hardener in anyway</source>
        <translation>Endurecedor igualmente</translation>
    </message>
    <message>
        <source>go to job %1</source>
        <translation>ir a la orden %1</translation>
    </message>
    <message>
        <source>Hardener bead</source>
        <translation>Cordón de endurecedor</translation>
    </message>
    <message>
        <source>%1 · lot? · hardener %2</source>
        <extracomment>%1 is a product, %2 a lot of hardener; the filler&apos;s lot is asked for: a key of 29 mm</extracomment>
        <translation>%1 · ¿lote? · endurecedor %2</translation>
    </message>
    <message>
        <source>Scale: %1</source>
        <translation>Balanza: %1</translation>
    </message>
    <message>
        <source>steady: take as filler</source>
        <translation>estable: tomar como masilla</translation>
    </message>
    <message>
        <source>not steady yet</source>
        <translation>aún no estable</translation>
    </message>
    <message>
        <source>Weighed?</source>
        <translation>¿Pesado?</translation>
    </message>
    <message>
        <source>nothing from the scale</source>
        <translation>nada de la balanza</translation>
    </message>
</context>
<context>
    <name>strandbench::MixesScreen</name>
    <message>
        <source>Every mix that runs: the most urgent first</source>
        <translation>Mezclas en curso: primero la más urgente</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message numerus="yes">
        <source>%n in all</source>
        <translation>
            <numerusform>%n en total</numerusform>
            <numerusform>%n en total</numerusform>
        </translation>
    </message>
    <message>
        <source>No mix runs</source>
        <translation>Sin mezcla activa</translation>
    </message>
</context>
<context>
    <name>strandbench::PagedKeys</name>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>strandbench::PagedRows</name>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of a list: &quot;1 of 3&quot;</extracomment>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>strandbench::PanelLookScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Panel de práctica</translation>
    </message>
    <message>
        <source>Look at it, and try what you need</source>
        <translation>Mirarlo y probar lo que haga falta</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is what was tried, %2 what it finds: &quot;Magnet: no pull.&quot;</extracomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>strandbench::PaperScreen</name>
    <message>
        <source>US Letter</source>
        <translation>Carta US</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>The sheet could not be written.</source>
        <translation>La hoja no se pudo escribir.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <extracomment>%1 is the path of a file</extracomment>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>The file beside the sheet could not be written.</source>
        <translation>El archivo junto a la hoja no se pudo escribir.</translation>
    </message>
    <message>
        <source>Being written …</source>
        <translation>Escribiendo…</translation>
    </message>
    <message>
        <source>Cancelled: nothing was written.</source>
        <translation>Cancelado: no se escribió nada.</translation>
    </message>
    <message>
        <source>No printer is set up on this machine.</source>
        <translation>No hay ninguna impresora en este equipo.</translation>
    </message>
    <message>
        <source>Write the sheet to a stick, and print it elsewhere.</source>
        <translation>Escribir la hoja en una memoria USB e imprimirla en otro sitio.</translation>
    </message>
    <message>
        <source>Being printed …</source>
        <translation>Imprimiendo…</translation>
    </message>
    <message>
        <source>Cancelled: nothing was printed.</source>
        <translation>Cancelado: no se imprimió nada.</translation>
    </message>
    <message>
        <source>The printer does not take the sheet.</source>
        <translation>La impresora no acepta la hoja.</translation>
    </message>
    <message>
        <source>Look at the printer, and try again.</source>
        <translation>Mirar la impresora y probar de nuevo.</translation>
    </message>
    <message>
        <source>Given to the printer</source>
        <extracomment>%1 is the name of a printer</extracomment>
        <translation>Enviado a la impresora</translation>
    </message>
    <message>
        <source>Given to the printer: %1</source>
        <translation>Enviado a la impresora: %1</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>strandbench::PatScreen</name>
    <message>
        <source>Watch the pat: tap when it pulls and will not smear</source>
        <translation>Torta: pulsar si tira y no se extiende</translation>
    </message>
    <message>
        <source>Knead both, then lay this puddle and bead</source>
        <translation>Amasar ambos, luego poner esta torta y cordón</translation>
    </message>
    <message>
        <source>Puddle and bead, drawn to size</source>
        <translation>Torta y cordón a tamaño real</translation>
    </message>
    <message>
        <source>A pat on the board tells how fast this lot gels before a panel hangs on it.</source>
        <translation>Una torta en la tabla dice qué tan rápido gelifica el lote antes de arriesgar un panel.</translation>
    </message>
    <message>
        <source>Reckoned for air of %1, read %2 ago.</source>
        <translation>Calculado para aire de %1, medido hace %2.</translation>
    </message>
    <message>
        <source>No air was read yet: read it at a repair first.</source>
        <translation>Aún no se midió el aire: medirlo primero en una reparación.</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Con endurecedor: iniciar</translation>
    </message>
    <message>
        <source>Expected between %1 and %2; by the sheet after %3.</source>
        <translation>Se espera entre %1 y %2; según la ficha tras %3.</translation>
    </message>
    <message>
        <source>It was thrown away: mix a new one</source>
        <translation>Se tiró: mezclar otra</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>mantener 1 s</translation>
    </message>
    <message>
        <source>clock runs on</source>
        <translation>el reloj corre</translation>
    </message>
    <message>
        <source>It has gelled</source>
        <translation>Ha gelificado</translation>
    </message>
    <message>
        <source>since hardener in</source>
        <translation>desde el endurecedor</translation>
    </message>
</context>
<context>
    <name>strandbench::PhotoPickScreen</name>
    <message>
        <source>Choose the photo: %1</source>
        <translation>Elegir la foto: %1</translation>
    </message>
    <message>
        <source>Newer</source>
        <extracomment>short: keys of 20 mm, to the pictures taken later and earlier</extracomment>
        <translation>Nuevas</translation>
    </message>
    <message>
        <source>Older</source>
        <translation>Viejas</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Otra carpeta</translation>
    </message>
    <message>
        <source>Picture of %1, %2</source>
        <extracomment>%1 is when, %2 the file&apos;s name</extracomment>
        <translation>Imagen de %1, %2</translation>
    </message>
    <message>
        <source>No pictures in this folder yet. New ones show by themselves.</source>
        <translation>Aún no hay imágenes en esta carpeta. Las nuevas aparecen solas.</translation>
    </message>
    <message>
        <source>This folder cannot be read. Choose another one.</source>
        <translation>Esta carpeta no se puede leer. Elegir otra.</translation>
    </message>
    <message>
        <source>%1 cannot be read. %2</source>
        <translation>%1 no se puede leer. %2</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MB.</source>
        <translation>%1 pasa de %2 MB.</translation>
    </message>
    <message>
        <source>%1 is a %2 file. Only JPEG and PNG are kept.</source>
        <translation>%1 es un archivo %2. Solo se guardan JPEG y PNG.</translation>
    </message>
    <message>
        <source>%1 is no whole picture. Take it again, or wait until it is written.</source>
        <translation>%1 no es una imagen entera. Hacerla otra vez o esperar a que se escriba.</translation>
    </message>
    <message>
        <source>no picture to be seen</source>
        <translation>no se ve imagen</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>leyendo</translation>
    </message>
    <message>
        <source>Camera</source>
        <extracomment>short: a key of 20 mm, to the live picture of a camera</extracomment>
        <translation>Cámara</translation>
    </message>
</context>
<context>
    <name>strandbench::PickScreen</name>
    <message>
        <source>number %1</source>
        <translation>número %1</translation>
    </message>
</context>
<context>
    <name>strandbench::PinScreen</name>
    <message numerus="yes">
        <source>%n digit(s)</source>
        <translation>
            <numerusform>%n cifra</numerusform>
            <numerusform>%n cifras</numerusform>
        </translation>
    </message>
    <message>
        <source>The PIN is looked at</source>
        <translation>Se comprueba el PIN</translation>
    </message>
    <message>
        <source>No PIN is set on this bench.</source>
        <translation>En este puesto no hay PIN.</translation>
    </message>
    <message>
        <source>Set it: bench set-up, people.</source>
        <translation>Fijarlo: ajustes del puesto, personas.</translation>
    </message>
    <message>
        <source>The try cannot be counted, so it was not looked at.</source>
        <translation>El intento no se puede contar y no se comprobó.</translation>
    </message>
    <message>
        <source>Check the disk and the PIN’s file.</source>
        <translation>Revisar el disco y el archivo del PIN.</translation>
    </message>
    <message>
        <source>The wait was not over: it was not looked at.</source>
        <translation>La espera no había acabado: no se comprobó.</translation>
    </message>
    <message>
        <source>Key it in again.</source>
        <translation>Teclearlo otra vez.</translation>
    </message>
    <message>
        <source>That is not the PIN.</source>
        <translation>Ese no es el PIN.</translation>
    </message>
    <message>
        <source>The try is in the log.</source>
        <translation>El intento consta en el registro.</translation>
    </message>
    <message>
        <source>Wrong PINs were given. The next in %1.</source>
        <translation>Se dieron PIN erróneos. El próximo, en %1.</translation>
    </message>
</context>
<context>
    <name>strandbench::PlanScreen</name>
    <message>
        <source>%1, %2: fill both faces</source>
        <translation>%1, %2: masillar ambas caras</translation>
    </message>
    <message>
        <source>%1, %2: fill it</source>
        <translation>%1, %2: masillar</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>Al paso actual</translation>
    </message>
    <message>
        <source>Right: prepare it</source>
        <translation>Correcto: preparar</translation>
    </message>
    <message>
        <source>Section of this repair, to scale</source>
        <translation>Sección de esta reparación, a escala</translation>
    </message>
    <message>
        <source>Mix of fibre and finishing filler</source>
        <translation>Mezcla de masilla de fibra y de acabado</translation>
    </message>
    <message>
        <source>%1 + %2 in %3</source>
        <translation>%1 + %2 en %3</translation>
    </message>
    <message>
        <source>Ready for primer</source>
        <translation>Listo para imprimar</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>aprox. %1</translation>
    </message>
    <message>
        <source>why this one?</source>
        <translation>¿por qué esta?</translation>
    </message>
    <message>
        <source>Hottest as it cures %1, limit %2</source>
        <translation>Máximo %1, límite %2</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Respuestas</translation>
    </message>
    <message>
        <source>look, or change one</source>
        <translation>ver o cambiar una</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Existencias</translation>
    </message>
    <message numerus="yes">
        <source>! %n to mind</source>
        <translation>
            <numerusform>! %n asunto</numerusform>
            <numerusform>! %n asuntos</numerusform>
        </translation>
    </message>
    <message>
        <source>enough</source>
        <translation>basta</translation>
    </message>
</context>
<context>
    <name>strandbench::PracticeClockScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Panel de práctica</translation>
    </message>
    <message>
        <source>Press it in, build it up, clear the edges</source>
        <translation>Apretar, rellenar, limpiar los bordes</translation>
    </message>
    <message>
        <source>Hands off until it sands</source>
        <translation>No tocar hasta poder lijar</translation>
    </message>
    <message>
        <source>Edges are clear</source>
        <translation>Bordes limpios</translation>
    </message>
    <message>
        <source>Sand it now</source>
        <translation>Lijar ahora</translation>
    </message>
    <message>
        <source>since the hardener went in</source>
        <translation>desde el endurecedor</translation>
    </message>
    <message>
        <source>faster, or as in the shop</source>
        <translation>más rápido o como en el taller</translation>
    </message>
    <message>
        <source>Nail and paper</source>
        <translation>Uña y lija</translation>
    </message>
    <message>
        <source>try whether it sands</source>
        <translation>probar si se lija</translation>
    </message>
    <message>
        <source>Another batch</source>
        <translation>Otra mezcla</translation>
    </message>
    <message>
        <source>for the same lift</source>
        <translation>para la misma capa</translation>
    </message>
    <message>
        <source>Clock: %1 times</source>
        <extracomment>how many times as fast as the shop&apos;s clock</extracomment>
        <translation>Reloj: %1 veces</translation>
    </message>
    <message>
        <source>It spreads easily.</source>
        <translation>Se extiende bien.</translation>
    </message>
    <message>
        <source>It drags behind the spreader.</source>
        <translation>Se arrastra tras la espátula.</translation>
    </message>
    <message>
        <source>What is left on the board has set: it tears.</source>
        <translation>Lo que queda en la tabla fraguó: se desgarra.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Volver a intentarlo en un momento.</translation>
    </message>
    <message>
        <source>It is wet: it smears.</source>
        <translation>Está fresco: embarra.</translation>
    </message>
    <message>
        <source>The nail leaves a mark, the paper clogs.</source>
        <translation>La uña marca, la lija se empasta.</translation>
    </message>
    <message>
        <source>The nail leaves no mark, the paper powders it.</source>
        <translation>La uña no marca, la lija saca polvo.</translation>
    </message>
    <message>
        <source>Hard as stone: the paper hardly bites.</source>
        <translation>Duro como piedra: la lija apenas muerde.</translation>
    </message>
</context>
<context>
    <name>strandbench::PracticeFlow</name>
    <message>
        <source>This line of the practice record is left out; it stays in its file.</source>
        <translation>Esta línea del registro de práctica se omite; sigue en su archivo.</translation>
    </message>
    <message>
        <source>To the question</source>
        <translation>A la pregunta</translation>
    </message>
    <message>
        <source>The practice record was not written: %1</source>
        <translation>El registro de práctica no se escribió: %1</translation>
    </message>
    <message>
        <source>The marks hold until the program is closed.</source>
        <translation>La corrección vale hasta cerrar el programa.</translation>
    </message>
</context>
<context>
    <name>strandbench::ProductEditScreen</name>
    <message>
        <source>Product sheets</source>
        <translation>Fichas de producto</translation>
    </message>
    <message>
        <source>a new sheet</source>
        <translation>una ficha nueva</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>no encaja</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supuesto</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>the model’s own</source>
        <translation>el del modelo</translation>
    </message>
    <message>
        <source>What it comes to</source>
        <translation>Lo que resulta</translation>
    </message>
    <message>
        <source>next page</source>
        <translation>página siguiente</translation>
    </message>
    <message>
        <source>What is assumed is common for such fillers, without a source. Put in what your data sheet says.</source>
        <translation>Lo supuesto es común en estas masillas, sin fuente. Poner lo que dice la ficha técnica.</translation>
    </message>
    <message>
        <source>What kind of filler is it?</source>
        <translation>¿Qué tipo de masilla es?</translation>
    </message>
    <message>
        <source>Still missing or wrong: %1</source>
        <translation>Aún falta o está mal: %1</translation>
    </message>
    <message>
        <source>What the engine makes of this sheet</source>
        <translation>Qué resulta de esta ficha</translation>
    </message>
    <message>
        <source>Keep this sheet</source>
        <translation>Guardar esta ficha</translation>
    </message>
    <message>
        <source>asks for the supervisor’s PIN</source>
        <translation>pide el PIN del supervisor</translation>
    </message>
    <message>
        <source>Allowed: %1 to %2</source>
        <extracomment>a range: &quot;0.3 g/ml to 4 g/ml&quot;</extracomment>
        <translation>Permitido: %1 a %2</translation>
    </message>
    <message>
        <source>below 0: −</source>
        <translation>bajo 0: −</translation>
    </message>
    <message>
        <source>Take it, or leave it empty</source>
        <translation>Tomar, o dejar vacío</translation>
    </message>
    <message>
        <source>Take this figure</source>
        <translation>Tomar este valor</translation>
    </message>
    <message>
        <source>Write the product’s name</source>
        <translation>Escribir el nombre del producto</translation>
    </message>
    <message>
        <source>Take this name</source>
        <translation>Tomar este nombre</translation>
    </message>
</context>
<context>
    <name>strandbench::ProductOutlook</name>
    <message>
        <source>One moment: the engine works out what this sheet means …</source>
        <translation>Un momento: se calcula qué significa esta ficha…</translation>
    </message>
    <message>
        <source>at</source>
        <translation>a</translation>
    </message>
    <message>
        <source>gels after</source>
        <translation>gelifica tras</translation>
    </message>
    <message>
        <source>sands after</source>
        <translation>se lija tras</translation>
    </message>
    <message>
        <source>greatest lift</source>
        <translation>capa máxima</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <extracomment>a lift: &quot;20 mm or more&quot;</extracomment>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source>Reckoned on the sheet’s own test pieces, its peak below %1. The sheet allows %2 in one go; the lower of the two holds.</source>
        <translation>Calculado en las probetas de la ficha, máximo bajo %1. La ficha permite %2 de una vez; vale el menor.</translation>
    </message>
</context>
<context>
    <name>strandbench::ProductPageScreen</name>
    <message>
        <source>Product sheets</source>
        <translation>Fichas de producto</translation>
    </message>
    <message>
        <source>What the engine makes of this sheet</source>
        <translation>Qué resulta de esta ficha</translation>
    </message>
    <message>
        <source>Change this sheet</source>
        <translation>Cambiar esta ficha</translation>
    </message>
    <message>
        <source>%1 min (%2 to %3)</source>
        <extracomment>a stated time with its range: &quot;5 min (4 to 6)&quot;</extracomment>
        <translation>%1 min (%2 a %3)</translation>
    </message>
    <message>
        <source>It states, at %1: working time %2, sands after %3.</source>
        <translation>Dice, a %1: tiempo de trabajo %2, se lija tras %3.</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <extracomment>a version of a sheet: %1 when, %2 who</extracomment>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>nobody told</source>
        <translation>sin indicar</translation>
    </message>
    <message numerus="yes">
        <source>and %n earlier</source>
        <translation>
            <numerusform>y %n anterior</numerusform>
            <numerusform>y %n anteriores</numerusform>
        </translation>
    </message>
    <message>
        <source>Demo sheet: invented values. Type in the sheet of the tub in your hand.</source>
        <translation>Ficha de muestra: valores inventados. Teclear la ficha del bote en uso.</translation>
    </message>
    <message>
        <source>Versions:</source>
        <translation>Versiones:</translation>
    </message>
    <message>
        <source>Laid aside. Versions:</source>
        <translation>Apartada. Versiones:</translation>
    </message>
    <message>
        <source>Write to a folder</source>
        <translation>Escribir en carpeta</translation>
    </message>
    <message>
        <source>Lay aside</source>
        <translation>Apartar</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>mantener 1 s</translation>
    </message>
</context>
<context>
    <name>strandbench::QuickCardScreen</name>
    <message>
        <source>Choose where the quick card goes</source>
        <translation>Elegir adónde va la tarjeta rápida</translation>
    </message>
</context>
<context>
    <name>strandbench::ReadingButton</name>
    <message>
        <source>Air: %1</source>
        <translation>Aire: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::RecordScreen</name>
    <message>
        <source>See what happened</source>
        <translation>Ver lo que pasó</translation>
    </message>
    <message>
        <source>Job sheet as PDF</source>
        <translation>Hoja de orden en PDF</translation>
    </message>
    <message>
        <source>This record cannot be read.</source>
        <translation>Este registro no se puede leer.</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>supervisor</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Cronología</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Firmado</translation>
    </message>
    <message>
        <source>Returned</source>
        <translation>Devuelto</translation>
    </message>
    <message>
        <source>Sign off, return</source>
        <translation>Firmar, devolver</translation>
    </message>
</context>
<context>
    <name>strandbench::RefusalScreen</name>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Assess again</source>
        <translation>Evaluar de nuevo</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>mantener 1 s</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>Also: %1</source>
        <translation>También: %1</translation>
    </message>
    <message>
        <source>What to do instead</source>
        <translation>Qué hacer en su lugar</translation>
    </message>
    <message>
        <source>Override</source>
        <translation>Anular</translation>
    </message>
    <message>
        <source>supervisor: hold 1 s</source>
        <translation>supervisor: mantener 1 s</translation>
    </message>
    <message>
        <source>There is nothing to plan here, whoever decides.</source>
        <translation>Aquí no hay nada que planear, decida quien decida.</translation>
    </message>
</context>
<context>
    <name>strandbench::ReorderScreen</name>
    <message>
        <source>Stock of filler and hardener</source>
        <translation>Existencias de masilla y endurecedor</translation>
    </message>
    <message>
        <source>Reorder list: tap a product to set its level</source>
        <translation>Reposición: pulsar un producto para fijar su nivel</translation>
    </message>
    <message>
        <source>Back to the stock</source>
        <translation>Volver a existencias</translation>
    </message>
    <message>
        <source>reorder: %1 left, level %2</source>
        <extracomment>%1 and %2 are masses</extracomment>
        <translation>reponer: quedan %1, nivel %2</translation>
    </message>
    <message>
        <source>%1 left, level %2</source>
        <translation>quedan %1, nivel %2</translation>
    </message>
    <message>
        <source>%1 left, never reordered</source>
        <translation>quedan %1, no se repone</translation>
    </message>
</context>
<context>
    <name>strandbench::RepairLotsScreen</name>
    <message>
        <source>Lots that went into it</source>
        <translation>Lotes que se usaron</translation>
    </message>
    <message>
        <source>No lot was told</source>
        <translation>No se indicó ningún lote</translation>
    </message>
    <message>
        <source>every repair of this lot</source>
        <translation>todas las reparaciones de este lote</translation>
    </message>
</context>
<context>
    <name>strandbench::RepairsScreen</name>
    <message>
        <source>Stop reading</source>
        <translation>Dejar de leer</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>up to today; tap: %n day(s)</source>
        <translation>
            <numerusform>hasta hoy; pulsar: %n día</numerusform>
            <numerusform>hasta hoy; pulsar: %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>Repairs worked on from %1 to %2</source>
        <extracomment>%1 and %2 are days</extracomment>
        <translation>Reparaciones trabajadas del %1 al %2</translation>
    </message>
    <message numerus="yes">
        <source>Reading the records: %1 of %n repair(s)</source>
        <translation>
            <numerusform>Leyendo el registro: %1 de %n reparación</numerusform>
            <numerusform>Leyendo el registro: %1 de %n reparaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading the records …</source>
        <translation>Leyendo el registro…</translation>
    </message>
</context>
<context>
    <name>strandbench::ReplanScreen</name>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>An answer changed: this is the plan now</source>
        <translation>Cambió una respuesta: este es ahora el plan</translation>
    </message>
    <message>
        <source>Right: go on with it</source>
        <translation>Correcto: seguir con él</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <extracomment>what it was, and what it is now</extracomment>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>No figure changes.</source>
        <translation>No cambia ningún valor.</translation>
    </message>
    <message>
        <source>Preparing to do, or to do again</source>
        <translation>Preparación por hacer o repetir</translation>
    </message>
    <message>
        <source>No longer to do</source>
        <translation>Ya no se hace</translation>
    </message>
    <message>
        <source>Stays as it is laid</source>
        <translation>Queda como se puso</translation>
    </message>
    <message>
        <source>Why this plan</source>
        <translation>Por qué este plan</translation>
    </message>
    <message>
        <source>What was answered</source>
        <translation>Las respuestas</translation>
    </message>
</context>
<context>
    <name>strandbench::ReplayScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Panel de práctica</translation>
    </message>
    <message>
        <source>What you did, below the model answer</source>
        <translation>Lo hecho, bajo la respuesta modelo</translation>
    </message>
    <message>
        <source>Back to the marks</source>
        <translation>Volver a la corrección</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modelo</translation>
    </message>
    <message>
        <source>you</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>lo hecho</translation>
    </message>
    <message>
        <source>edges clear</source>
        <translation>bordes limpios</translation>
    </message>
    <message>
        <source>gelled</source>
        <translation>gelificado</translation>
    </message>
    <message>
        <source>The model answer stops here: nothing is mixed.</source>
        <translation>La respuesta modelo para aquí: no se mezcla nada.</translation>
    </message>
    <message>
        <source>You stopped here: nothing was mixed.</source>
        <translation>Aquí se paró: no se mezcló nada.</translation>
    </message>
    <message>
        <source>From the first step on. Edges and gel of your batches are marked below.</source>
        <translation>Desde el primer paso. Abajo, bordes y gel de las mezclas hechas.</translation>
    </message>
</context>
<context>
    <name>strandbench::Ribbon</name>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>No sound</source>
        <translation>Sin sonido</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpAssumptionScreen</name>
    <message>
        <source>Bench set-up</source>
        <translation>Ajustes del puesto</translation>
    </message>
    <message>
        <source>tap to key it in</source>
        <translation>pulsar para teclear</translation>
    </message>
    <message>
        <source>A published figure; change it for another material.</source>
        <translation>Valor publicado; cambiarlo para otro material.</translation>
    </message>
    <message>
        <source>Ours: no source.</source>
        <translation>Propio: sin fuente.</translation>
    </message>
    <message>
        <source>Allowed: %1. %2 New plans and clocks go by it; what runs keeps its times.</source>
        <translation>Permitido: %1. %2 Vale para planes y relojes nuevos; lo que corre conserva sus tiempos.</translation>
    </message>
    <message>
        <source>Back to default</source>
        <translation>Valor por defecto</translation>
    </message>
    <message>
        <source>Key in the figure</source>
        <translation>Teclear el valor</translation>
    </message>
    <message>
        <source>Change the figure, or put the default back</source>
        <translation>Cambiarlo o volver al valor por defecto</translation>
    </message>
    <message>
        <source>Take this figure</source>
        <translation>Tomar este valor</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>%1’s own: %2</source>
        <extracomment>%1 is a person, %2 a rate: &quot;Mara’s own: 38 g/min&quot;</extracomment>
        <translation>Propio de %1: %2</translation>
    </message>
    <message>
        <source>the last %1 batches: %2 to %3</source>
        <translation>últimas %1 mezclas: %2 a %3</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpAssumptionsScreen</name>
    <message>
        <source>ours: no source; published: from a table</source>
        <translation>propio: sin fuente; publicado: de tabla</translation>
    </message>
    <message>
        <source>Tap an assumption to change it</source>
        <translation>Pulsar un supuesto para cambiarlo</translation>
    </message>
    <message>
        <source>%1, was %2</source>
        <extracomment>a row of the assumptions that was changed: &quot;60 s, was 45 s&quot;</extracomment>
        <translation>%1, antes %2</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publicado</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>propio</translation>
    </message>
    <message>
        <source>on each sheet</source>
        <translation>en cada ficha</translation>
    </message>
    <message>
        <source>in each step</source>
        <translation>en cada paso</translation>
    </message>
    <message>
        <source>Hardener for a length of bead: the nozzle’s</source>
        <translation>Endurecedor por largo de cordón: la boquilla</translation>
    </message>
    <message>
        <source>Hands-on times</source>
        <translation>Tiempos de trabajo</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpBenchScreen</name>
    <message>
        <source>Set up the bench</source>
        <translation>Ajustar el puesto</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Noche</translation>
    </message>
    <message>
        <source>Answers for</source>
        <translation>Respuestas para</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Mano derecha</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Mano izquierda</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Movimiento</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Completo</translation>
    </message>
    <message>
        <source>In steps</source>
        <translation>Por pasos</translation>
    </message>
    <message>
        <source>Foot switch</source>
        <translation>Pedal</translation>
    </message>
    <message>
        <source>Any key</source>
        <translation>Cualquiera</translation>
    </message>
    <message>
        <source>One key</source>
        <translation>Una tecla</translation>
    </message>
    <message>
        <source>Press now</source>
        <translation>Pulsar ya</translation>
    </message>
    <message>
        <source>Press the foot switch now</source>
        <translation>Pulsar ahora el pedal</translation>
    </message>
    <message>
        <source>This key has no name of its own.</source>
        <translation>Esta tecla no tiene nombre propio.</translation>
    </message>
    <message>
        <source>Set the foot switch to send another one.</source>
        <translation>Ajustar el pedal para que envíe otra.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpInstrumentBase</name>
    <message>
        <source>Scale</source>
        <translation>Balanza</translation>
    </message>
    <message>
        <source>Thermo-hygrometer</source>
        <translation>Termohigrómetro</translation>
    </message>
    <message>
        <source>Bench set-up</source>
        <translation>Ajustes del puesto</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpInstrumentTextScreen</name>
    <message>
        <source>Write the line with names in braces</source>
        <translation>Escribir la línea con nombres entre llaves</translation>
    </message>
    <message>
        <source>Write the path of the port</source>
        <translation>Escribir la ruta del puerto</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Tomarlo</translation>
    </message>
    <message>
        <source>A path begins with a slash.</source>
        <translation>Una ruta empieza con barra.</translation>
    </message>
    <message>
        <source>Such as /dev/ttyUSB0.</source>
        <translation>Como /dev/ttyUSB0.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpInstrumentsScreen</name>
    <message>
        <source>no line has come yet</source>
        <translation>aún no llegó ninguna línea</translation>
    </message>
    <message>
        <source>reads %1</source>
        <translation>lee %1</translation>
    </message>
    <message>
        <source>does not fit the line</source>
        <translation>no encaja en la línea</translation>
    </message>
    <message>
        <source>Connect the scale</source>
        <translation>Conectar la balanza</translation>
    </message>
    <message>
        <source>Connect the thermo-hygrometer</source>
        <translation>Conectar el termohigrómetro</translation>
    </message>
    <message>
        <source>none: all is keyed in</source>
        <translation>ninguno: todo se teclea</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>aún sin elegir</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Puerto</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>Pattern of a line</source>
        <translation>Patrón de línea</translation>
    </message>
    <message>
        <source>Calibrate the bead</source>
        <translation>Calibrar el cordón</translation>
    </message>
    <message>
        <source>No line has come yet.</source>
        <translation>Aún no llegó ninguna línea.</translation>
    </message>
    <message>
        <source>Last line: %1</source>
        <translation>Última línea: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpNameScreen</name>
    <message>
        <source>Bench set-up</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Write the new name</source>
        <translation>Escribir el nombre</translation>
    </message>
    <message>
        <source>Put it on the list</source>
        <translation>Ponerlo en la lista</translation>
    </message>
    <message>
        <source>The name is empty.</source>
        <translation>El nombre está vacío.</translation>
    </message>
    <message>
        <source>Write 1 to %1 characters.</source>
        <translation>Escribir de 1 a %1 caracteres.</translation>
    </message>
    <message>
        <source>%1 is on the list already.</source>
        <translation>%1 ya está en la lista.</translation>
    </message>
    <message>
        <source>Write it so that the two can be told apart.</source>
        <translation>Escribirlo de modo que se distingan.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpPatternScreen</name>
    <message>
        <source>Which pattern fits its lines?</source>
        <translation>¿Qué patrón encaja con sus líneas?</translation>
    </message>
    <message>
        <source>Write one, or change it</source>
        <translation>Escribir uno o cambiarlo</translation>
    </message>
    <message>
        <source>No line has come yet.</source>
        <translation>Aún no llegó ninguna línea.</translation>
    </message>
    <message>
        <source>Last line: %1</source>
        <translation>Última línea: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpPeopleScreen</name>
    <message>
        <source>Who works here?</source>
        <translation>¿Quién trabaja aquí?</translation>
    </message>
    <message>
        <source>at the bench</source>
        <translation>en el puesto</translation>
    </message>
    <message>
        <source>Add a name</source>
        <translation>Añadir nombre</translation>
    </message>
    <message>
        <source>%1 names are the most</source>
        <translation>%1 nombres como máximo</translation>
    </message>
    <message>
        <source>Take a name off the list</source>
        <translation>Quitar un nombre de la lista</translation>
    </message>
    <message>
        <source>Take %1 off the list</source>
        <translation>Quitar %1 de la lista</translation>
    </message>
    <message>
        <source>tap a name first</source>
        <translation>pulsar antes un nombre</translation>
    </message>
    <message>
        <source>the last name stays</source>
        <translation>el último nombre se queda</translation>
    </message>
    <message>
        <source>hold 1 s; what is logged keeps the name</source>
        <translation>mantener 1 s; lo registrado conserva el nombre</translation>
    </message>
    <message>
        <source>Supervisor’s PIN</source>
        <translation>PIN del supervisor</translation>
    </message>
    <message>
        <source>set: change it</source>
        <translation>fijado: cambiarlo</translation>
    </message>
    <message>
        <source>not set yet</source>
        <translation>sin fijar</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpPortScreen</name>
    <message>
        <source>Where is it plugged in?</source>
        <translation>¿Dónde está conectado?</translation>
    </message>
    <message>
        <source>None: all is keyed in</source>
        <translation>Ninguno: todo se teclea</translation>
    </message>
    <message>
        <source>Write its path</source>
        <translation>Escribir su ruta</translation>
    </message>
    <message>
        <source>No serial port is found on this machine now.</source>
        <translation>No se encuentra puerto serie en este equipo ahora.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpRecordScreen</name>
    <message>
        <source>By hand</source>
        <translation>A mano</translation>
    </message>
    <message>
        <source>How is the record kept safe?</source>
        <translation>¿Cómo se guarda el registro?</translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation>Carpeta de copias</translation>
    </message>
    <message>
        <source>none yet: a stick is best</source>
        <translation>aún ninguna: mejor una memoria</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Copiar ahora</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Cada cuánto</translation>
    </message>
    <message>
        <source>How many stay</source>
        <translation>Cuántas quedan</translation>
    </message>
    <message>
        <source>Check the log</source>
        <translation>Comprobar</translation>
    </message>
    <message>
        <source>Bring in a log</source>
        <translation>Incorporar</translation>
    </message>
    <message>
        <source>of another bench</source>
        <translation>de otro puesto</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurar</translation>
    </message>
    <message>
        <source>from a backup</source>
        <translation>de una copia</translation>
    </message>
    <message>
        <source>choose a folder first</source>
        <translation>elegir antes una carpeta</translation>
    </message>
    <message>
        <source>newest: %1</source>
        <translation>última: %1</translation>
    </message>
    <message>
        <source>none in this session yet</source>
        <translation>aún ninguna en esta sesión</translation>
    </message>
    <message>
        <source>every entry, by its hash</source>
        <translation>cada entrada, por su hash</translation>
    </message>
    <message>
        <source>%1: it holds, %2 entries</source>
        <translation>%1: válido, %2 entradas</translation>
    </message>
    <message>
        <source>one moment …</source>
        <translation>un momento…</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpScreen</name>
    <message>
        <source>Bench set-up</source>
        <translation>Ajustes del puesto</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Puesto</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Sound and glass</source>
        <translation>Sonido y pantalla</translation>
    </message>
    <message>
        <source>Assumptions</source>
        <translation>Supuestos</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>next part of the set-up</source>
        <translation>parte siguiente de los ajustes</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>Page after</source>
        <translation>Página siguiente</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>Product sheets</source>
        <translation>Fichas de producto</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpSheetsScreen</name>
    <message>
        <source>What the fillers of this shop are</source>
        <translation>Las masillas de este taller</translation>
    </message>
    <message>
        <source>Type in a sheet</source>
        <translation>Escribir una ficha</translation>
    </message>
    <message>
        <source>Read one from a file</source>
        <translation>Leer una de un archivo</translation>
    </message>
    <message>
        <source>demo sheet</source>
        <translation>ficha de muestra</translation>
    </message>
    <message numerus="yes">
        <source>%n version(s)</source>
        <translation>
            <numerusform>%n versión</numerusform>
            <numerusform>%n versiones</numerusform>
        </translation>
    </message>
    <message>
        <source>laid aside</source>
        <translation>apartada</translation>
    </message>
    <message>
        <source>Only demo sheets yet: type in your own</source>
        <translation>Solo hay fichas inventadas: teclear las del taller</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpSoundScreen</name>
    <message>
        <source>Test the speaker and the size of the glass</source>
        <translation>Probar el altavoz y el tamaño de la pantalla</translation>
    </message>
    <message>
        <source>Sound test</source>
        <translation>Prueba de sonido</translation>
    </message>
    <message>
        <source>three rising tones</source>
        <translation>tres tonos ascendentes</translation>
    </message>
    <message>
        <source>Calibrate the glass</source>
        <translation>Calibrar la pantalla</translation>
    </message>
    <message>
        <source>with a bank card</source>
        <translation>con tarjeta bancaria</translation>
    </message>
    <message>
        <source>This bench was started without sound.</source>
        <translation>Este puesto se abrió sin sonido.</translation>
    </message>
    <message>
        <source>Go by the glass alone.</source>
        <translation>Guiarse solo por la pantalla.</translation>
    </message>
    <message>
        <source>Not tested since the set-up was opened.</source>
        <translation>Sin probar desde que se abrieron los ajustes.</translation>
    </message>
    <message>
        <source>Sound is never the only alarm: what the glass shows counts, heard or not.</source>
        <translation>El sonido nunca es la única alarma: cuenta lo que muestra la pantalla, se oiga o no.</translation>
    </message>
    <message>
        <source>Heard it</source>
        <translation>Se oyó</translation>
    </message>
    <message>
        <source>Heard nothing</source>
        <translation>No se oyó</translation>
    </message>
    <message>
        <source>Heard: the speaker works.</source>
        <translation>Se oyó: el altavoz funciona.</translation>
    </message>
    <message>
        <source>Sound only adds to what the glass shows.</source>
        <translation>El sonido solo complementa la pantalla.</translation>
    </message>
    <message>
        <source>The device played it, but nobody heard it.</source>
        <translation>El aparato sonó, pero nadie lo oyó.</translation>
    </message>
    <message>
        <source>Look at plug, switch and volume of the speaker and test again. Until then go by the glass alone.</source>
        <translation>Mirar enchufe, interruptor y volumen del altavoz y probar de nuevo. Hasta entonces, guiarse solo por la pantalla.</translation>
    </message>
    <message>
        <source>Playing. Listen.</source>
        <translation>Suena. Escuchar.</translation>
    </message>
    <message>
        <source>Go by the glass alone until it is mended: no alarm will sound.</source>
        <translation>Guiarse solo por la pantalla hasta arreglarlo: no sonará alarma.</translation>
    </message>
    <message>
        <source>It says: %1.</source>
        <translation>Dice: %1.</translation>
    </message>
    <message>
        <source>The device says that it played. Heard it?</source>
        <translation>El aparato dice que sonó. ¿Se oyó?</translation>
    </message>
    <message>
        <source>No sound here: the sound library is missing.</source>
        <translation>Sin sonido: falta la biblioteca de sonido.</translation>
    </message>
    <message>
        <source>No sound here: no sound device opens.</source>
        <translation>Sin sonido: ningún aparato de sonido se abre.</translation>
    </message>
    <message>
        <source>Not played: the sound device opened and then failed.</source>
        <translation>No sonó: el aparato de sonido se abrió y luego falló.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpSpeedScreen</name>
    <message>
        <source>How fast does it send? See its manual</source>
        <translation>¿A qué velocidad envía? Ver su manual</translation>
    </message>
    <message>
        <source>bit/s</source>
        <translation>bit/s</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Trama</translation>
    </message>
</context>
<context>
    <name>strandbench::SheetScreen</name>
    <message>
        <source>Choose where the job sheet goes</source>
        <translation>Elegir destino de la hoja de orden</translation>
    </message>
    <message>
        <source>This record cannot be read.</source>
        <translation>Este registro no se puede leer.</translation>
    </message>
</context>
<context>
    <name>strandbench::SkillsScreen</name>
    <message>
        <source>Nobody named</source>
        <translation>Sin nombre</translation>
    </message>
    <message numerus="yes">
        <source>%n panel(s) worked</source>
        <translation>
            <numerusform>%n panel hecho</numerusform>
            <numerusform>%n paneles hechos</numerusform>
        </translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>En papel</translation>
    </message>
    <message>
        <source>To a panel</source>
        <translation>A un panel</translation>
    </message>
    <message>
        <source>No practice panel was worked yet. Each one that is, counts towards these skills.</source>
        <translation>Aún no se ha trabajado ningún panel de práctica. Cada uno cuenta para estas destrezas.</translation>
    </message>
</context>
<context>
    <name>strandbench::StockListScreen</name>
    <message>
        <source>%1 left</source>
        <translation>quedan %1</translation>
    </message>
    <message>
        <source>open since %1</source>
        <extracomment>%1 is a day</extracomment>
        <translation>abierto desde %1</translation>
    </message>
    <message numerus="yes">
        <source>%n unopened</source>
        <translation>
            <numerusform>%n sin abrir</numerusform>
            <numerusform>%n sin abrir</numerusform>
        </translation>
    </message>
    <message>
        <source>Stock of filler and hardener</source>
        <translation>Existencias de masilla y endurecedor</translation>
    </message>
    <message>
        <source>Tap a lot, or scan it</source>
        <translation>Pulsar un lote o escanearlo</translation>
    </message>
    <message>
        <source>Book in a package</source>
        <translation>Dar entrada a un envase</translation>
    </message>
    <message>
        <source>Nothing is on the shelf yet. Book in what stands there: from then on each batch is taken off, and what runs short, out of date or dry is told with the plan.</source>
        <translation>Aún no hay nada registrado. Dar entrada a lo que hay: desde entonces cada mezcla se descuenta, y lo que falta, caduca o se seca se dice con el plan.</translation>
    </message>
    <message>
        <source>Reorder list</source>
        <translation>Lista de reposición</translation>
    </message>
    <message numerus="yes">
        <source>%n product(s) to reorder</source>
        <translation>
            <numerusform>reponer %n producto</numerusform>
            <numerusform>reponer %n productos</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing to reorder</source>
        <translation>nada que reponer</translation>
    </message>
    <message>
        <source>ended: %1</source>
        <translation>terminado: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::StockLotNumberScreen</name>
    <message>
        <source>Key in or scan its lot</source>
        <translation>Teclear o escanear su lote</translation>
    </message>
    <message>
        <source>This is its lot</source>
        <translation>Este es su lote</translation>
    </message>
</context>
<context>
    <name>strandbench::StockLotScreen</name>
    <message>
        <source>Ended: %1</source>
        <translation>Terminado: %1</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>quedan %1</translation>
    </message>
    <message>
        <source>Book in more of it</source>
        <translation>Dar entrada a más</translation>
    </message>
    <message numerus="yes">
        <source>%n unopened</source>
        <translation>
            <numerusform>%n sin abrir</numerusform>
            <numerusform>%n sin abrir</numerusform>
        </translation>
    </message>
    <message>
        <source>open since %1</source>
        <extracomment>%1 is a day</extracomment>
        <translation>abierto desde %1</translation>
    </message>
    <message>
        <source>A package: %1</source>
        <translation>Un envase: %1</translation>
    </message>
    <message>
        <source>Good until %1, as printed</source>
        <translation>Válido hasta %1, según el envase</translation>
    </message>
    <message>
        <source>Good until %1, by the sheet’s months</source>
        <translation>Válido hasta %1, según los meses de la ficha</translation>
    </message>
    <message>
        <source>The open one until %1</source>
        <translation>El abierto hasta %1</translation>
    </message>
    <message>
        <source>Open the next</source>
        <translation>Abrir el siguiente</translation>
    </message>
    <message>
        <source>Count it</source>
        <translation>Contarlo</translation>
    </message>
    <message>
        <source>stock-take</source>
        <translation>recuento</translation>
    </message>
    <message>
        <source>More or less</source>
        <translation>Más o menos</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>corregir</translation>
    </message>
    <message>
        <source>End this tube</source>
        <translation>Terminar el tubo</translation>
    </message>
    <message>
        <source>End this tub</source>
        <translation>Terminar el bote</translation>
    </message>
    <message>
        <source>skin, hard, empty</source>
        <translation>piel, duro, vacío</translation>
    </message>
    <message>
        <source>From the cold</source>
        <translation>Viene del frío</translation>
    </message>
    <message>
        <source>or the heat</source>
        <translation>o del calor</translation>
    </message>
    <message>
        <source>Probe it</source>
        <translation>Medir con sonda</translation>
    </message>
    <message>
        <source>its middle</source>
        <translation>su centro</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Qué cambió</translation>
    </message>
    <message>
        <source>Test pat</source>
        <translation>Torta de prueba</translation>
    </message>
    <message>
        <source>tried</source>
        <translation>probado</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
</context>
<context>
    <name>strandbench::StockMovesScreen</name>
    <message>
        <source>What changed, the newest first</source>
        <translation>Qué cambió, lo último primero</translation>
    </message>
    <message>
        <source>%1: %2, %3 left</source>
        <extracomment>%1 is what happened, %2 and %3 are masses: &quot;Batch of job 4421: − 43.0 g, 620 g left&quot;</extracomment>
        <translation>%1: %2, quedan %3</translation>
    </message>
    <message>
        <source>Every repair of this lot</source>
        <translation>Cada reparación de este lote</translation>
    </message>
</context>
<context>
    <name>strandbench::StockNotesScreen</name>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message numerus="yes">
        <source>! %n to mind</source>
        <translation>
            <numerusform>! %n asunto</numerusform>
            <numerusform>! %n asuntos</numerusform>
        </translation>
    </message>
    <message>
        <source>in order</source>
        <translation>en orden</translation>
    </message>
    <message>
        <source>What the shelf says of this plan</source>
        <translation>Qué dicen las existencias de este plan</translation>
    </message>
    <message>
        <source>Nothing is to be told of the lots in the hand. Of lots that were never booked in or counted nothing is known.</source>
        <translation>Nada que decir de los lotes en uso. De los lotes sin entrada ni recuento no se sabe nada.</translation>
    </message>
    <message>
        <source>To the stock</source>
        <translation>A existencias</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Volver al plan</translation>
    </message>
</context>
<context>
    <name>strandbench::TimelineScreen</name>
    <message>
        <source>Planned and done</source>
        <translation>Previsto y hecho</translation>
    </message>
    <message>
        <source>Section of the repair</source>
        <translation>Sección de la reparación</translation>
    </message>
    <message>
        <source>The whole job</source>
        <translation>Todo el trabajo</translation>
    </message>
    <message>
        <source>Mix to sanding</source>
        <translation>De mezcla a lijado</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>told</source>
        <translation>indicado</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>desviación</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>a part of the work and how long it took</extracomment>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>strandbench::TodayScreen</name>
    <message>
        <source>Tap a job to see its record</source>
        <translation>Pulsar una orden para ver su registro</translation>
    </message>
    <message>
        <source>A record that cannot be read</source>
        <translation>Un registro que no se puede leer</translation>
    </message>
    <message>
        <source>Hardener lots</source>
        <translation>Lotes de endurecedor</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>firmado</translation>
    </message>
    <message>
        <source>to sign off</source>
        <translation>por firmar</translation>
    </message>
    <message>
        <source>This bench</source>
        <translation>Este puesto</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies): clocks, refused acts, PIN</source>
        <translation>
            <numerusform>%n entrada: relojes, acciones denegadas, PIN</numerusform>
            <numerusform>%n entradas: relojes, acciones denegadas, PIN</numerusform>
        </translation>
    </message>
    <message>
        <source>Look for</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>a job, a lot, a word of any day</source>
        <translation>orden, lote o palabra de cualquier día</translation>
    </message>
    <message>
        <source>Look through</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>sign off, return, figures</source>
        <translation>firmar, devolver, cifras</translation>
    </message>
    <message>
        <source>Nothing was worked on today. Every repair that is, stands here with its record.</source>
        <translation>Hoy no se ha trabajado en nada. Cada reparación trabajada está aquí con su registro.</translation>
    </message>
    <message>
        <source>Take in a panel</source>
        <translation>Recibir un panel</translation>
    </message>
    <message>
        <source>job number and panel</source>
        <translation>número de orden y panel</translation>
    </message>
    <message>
        <source>No repair today</source>
        <translation>Ninguna reparación hoy</translation>
    </message>
</context>
<context>
    <name>strandbench::TroubleWindow</name>
    <message>
        <source>The log cannot be opened</source>
        <translation>No se puede abrir el registro</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Close the program</source>
        <translation>Cerrar el programa</translation>
    </message>
    <message>
        <source>This bench is in use</source>
        <translation>Este puesto está en uso</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Intentar otra vez</translation>
    </message>
    <message>
        <source>Look only</source>
        <translation>Solo mirar</translation>
    </message>
    <message>
        <source>The log is of an older version</source>
        <translation>El registro es de una versión anterior</translation>
    </message>
    <message>
        <source>Save what holds</source>
        <translation>Salvar lo sano</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurar copia</translation>
    </message>
    <message>
        <source>Bring it up</source>
        <translation>Actualizarlo</translation>
    </message>
    <message>
        <source>One moment …</source>
        <translation>Un momento…</translation>
    </message>
    <message>
        <source>Nothing could be saved: %1</source>
        <translation>No se pudo salvar nada: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n entries that hold are saved in %1.</source>
        <translation>
            <numerusform>%n entrada sana está salvada en %1.</numerusform>
            <numerusform>%n entradas sanas están salvadas en %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more can be read and stand as text beside it.</source>
        <translation>
            <numerusform>%n más se lee y está como texto al lado.</numerusform>
            <numerusform>%n más se leen y están como texto al lado.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::VapourScreen</name>
    <message>
        <source>A reason to ventilate, never a clearance</source>
        <translation>Razón para ventilar, nunca un permiso</translation>
    </message>
    <message>
        <source>Beside the panel it is more. A measurement, the safety data sheet and local codes come first.</source>
        <translation>Junto al panel hay más. Primero van una medición, la ficha de seguridad y las normas locales.</translation>
    </message>
    <message>
        <source>now %1; highest mean of 15 min %2, of 8 h %3</source>
        <translation>ahora %1; media más alta de 15 min %2, de 8 h %3</translation>
    </message>
    <message>
        <source>Nothing was mixed or wiped down here in the last 24 hours. What else gives off vapour is not known.</source>
        <translation>Aquí no se mezcló ni se limpió con disolvente en las últimas 24 horas. Qué más da vapor no se sabe.</translation>
    </message>
    <message>
        <source>Together at most %1 of the OSHA PEL of a mixture.</source>
        <translation>Juntos, como mucho un %1 del PEL de OSHA de una mezcla.</translation>
    </message>
    <message>
        <source>Reckoned for %1 of well-mixed air that changes %2 times an hour: assumptions, see bench set-up.</source>
        <translation>Calculado para %1 de aire bien mezclado que se renueva %2 veces por hora: supuestos, ver ajustes del puesto.</translation>
    </message>
    <message>
        <source>Styrene from what worked-in resin gives off to what gel coat does, by 40 CFR 63 VVVV Table 3; none was found for filler. Solvent: all of it.</source>
        <translation>Estireno: entre lo que da resina trabajada y lo que da gel coat, según 40 CFR 63 VVVV tabla 3; de masilla no se halló. Disolvente: todo.</translation>
    </message>
    <message>
        <source>Counted: batches, test pats and wiping down told here in the last 24 hours. Not guide coat, lay-up resin or other work.</source>
        <translation>Contado: mezclas, tortas de prueba y limpiezas indicadas aquí en las últimas 24 horas. No: guía de lijado, resina de laminar, otros trabajos.</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es) whose sheet is not loaded: not counted.</source>
        <translation>
            <numerusform>%n mezcla cuya ficha no está cargada: no contada.</numerusform>
            <numerusform>%n mezclas cuya ficha no está cargada: no contadas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
</context>
<context>
    <name>strandbench::WhyScreen</name>
    <message>
        <source>Why %1</source>
        <translation>Por qué %1</translation>
    </message>
    <message>
        <source>Why none of the others</source>
        <translation>Por qué ninguna otra</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Volver al plan</translation>
    </message>
</context>
</TS>
