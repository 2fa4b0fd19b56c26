<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message>
        <source>About Loamstead</source>
        <translation>Acerca de Loamstead</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Loamstead %1&lt;/h3&gt;</source>
        <translation>&lt;h3&gt;Loamstead %1&lt;/h3&gt;</translation>
    </message>
    <message>
        <source>&lt;p&gt;Plans indoor enclosures for land turtles, tortoises, lizards, snakes and frogs, and costs them.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later, without any warranty.&lt;/p&gt;&lt;p&gt;Built with Qt %1; runs with Qt %2 on %3.&lt;/p&gt;</source>
        <translation>&lt;p&gt;Planifica terrarios de interior para tortugas terrestres y de tierra, lagartos, serpientes y ranas, y calcula lo que cuestan.&lt;/p&gt;&lt;p&gt;Software libre bajo la Licencia Pública General de GNU, versión 3 o posterior, sin garantía alguna.&lt;/p&gt;&lt;p&gt;Compilado con Qt %1; funciona con Qt %2 en %3.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>What this program can&apos;t do for you</source>
        <translation>Lo que este programa no puede hacer por usted</translation>
    </message>
    <message>
        <source>&lt;ul&gt;&lt;li&gt;&lt;b&gt;Prove it before an animal moves in.&lt;/b&gt; The figures are predictions with a range. Run the finished enclosure empty for at least a week and read several thermometers.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Heat and fire.&lt;/b&gt; Keep every lamp and heater clear of anything that burns, guard what an animal can reach, use fittings rated for the heat, and fit a smoke alarm in the room.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Mains and water.&lt;/b&gt; Use a residual-current device, leave a drip loop in each cable, keep outlet strips above the water and never plug one strip into another. Leave electrical work to a licensed electrician.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Weight.&lt;/b&gt; A stand or floor has to be rated for the load; this is not a structural approval.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Animals.&lt;/b&gt; For illness and before any cool season ask a reptile vet. Wash hands after handling: reptiles and amphibians can carry Salmonella.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Law.&lt;/b&gt; Keeping, moving or buying a species may need papers where you live. Ask your local authority.&lt;/li&gt;&lt;/ul&gt;</source>
        <translation>&lt;ul&gt;&lt;li&gt;&lt;b&gt;Comprobarlo antes de que entre un animal.&lt;/b&gt; Las cifras son previsiones con un intervalo. Tener el terrario terminado en marcha y vacío al menos una semana, y leer varios termómetros.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Calor y fuego.&lt;/b&gt; Mantener toda lámpara y todo calefactor lejos de lo que pueda arder, proteger lo que un animal pueda alcanzar, usar portalámparas aptos para ese calor e instalar un detector de humo en la habitación.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Corriente y agua.&lt;/b&gt; Usar un interruptor diferencial, dejar un bucle de goteo en cada cable, mantener las regletas por encima del agua y no enchufar nunca una regleta en otra. Dejar la instalación eléctrica en manos de un electricista autorizado.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Peso.&lt;/b&gt; El mueble y el suelo deben estar previstos para la carga; esto no es un dictamen estructural.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Animales.&lt;/b&gt; En caso de enfermedad, y antes de cualquier época fría, consultar a un veterinario de reptiles. Lavarse las manos después de tocarlos: los reptiles y anfibios pueden ser portadores de salmonela.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Ley.&lt;/b&gt; Tener, trasladar o comprar una especie puede requerir documentación en su lugar de residencia. Consultar a la autoridad local.&lt;/li&gt;&lt;/ul&gt;</translation>
    </message>
    <message>
        <source>New South Wales</source>
        <translation>Nueva Gales del Sur</translation>
    </message>
    <message>
        <source>EU, laboratories</source>
        <translation>UE, laboratorios</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otros</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>Desde la izquierda</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>Desde el frente</translation>
    </message>
    <message>
        <source>Lower edge above the base</source>
        <translation>Borde inferior sobre la base</translation>
    </message>
    <message>
        <source>Height above the base</source>
        <translation>Altura sobre la base</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Anchura</translation>
    </message>
    <message>
        <source>Beam angle</source>
        <translation>Ángulo del haz</translation>
    </message>
    <message>
        <source>Clearance, by its maker</source>
        <translation>Distancia según el fabricante</translation>
    </message>
    <message>
        <source>Holder is rated for</source>
        <translation>Portalámparas apto para</translation>
    </message>
    <message>
        <source>Dome on the mesh, diameter</source>
        <translation>Campana sobre la malla, diámetro</translation>
    </message>
    <message>
        <source>Guarded</source>
        <translation>Con protección</translation>
    </message>
    <message>
        <source>Air gap below</source>
        <translation>Hueco de aire debajo</translation>
    </message>
    <message>
        <source>Burnt so far</source>
        <translation>Horas de uso</translation>
    </message>
    <message>
        <source>dimmer</source>
        <translation>atenuador</translation>
    </message>
    <message>
        <source>thermostat</source>
        <translation>termostato</translation>
    </message>
    <message>
        <source>Control</source>
        <translation>Control</translation>
    </message>
    <message>
        <source>Dimmer level</source>
        <translation>Nivel del atenuador</translation>
    </message>
    <message>
        <source>Control is rated for</source>
        <translation>Control apto para</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Ajustado a</translation>
    </message>
    <message>
        <source>It regulates by</source>
        <translation>Regula por</translation>
    </message>
    <message>
        <source>switching on and off</source>
        <translation>encendido y apagado</translation>
    </message>
    <message>
        <source>pulses</source>
        <translation>pulsos</translation>
    </message>
    <message>
        <source>dimming</source>
        <translation>atenuación</translation>
    </message>
    <message>
        <source>Switching difference</source>
        <translation>Diferencia de conmutación</translation>
    </message>
    <message>
        <source>not placed</source>
        <translation>sin colocar</translation>
    </message>
    <message>
        <source>placed</source>
        <translation>colocada</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Sonda</translation>
    </message>
    <message>
        <source>Probe from the left</source>
        <translation>Sonda desde la izquierda</translation>
    </message>
    <message>
        <source>Probe from the front</source>
        <translation>Sonda desde el frente</translation>
    </message>
    <message>
        <source>Probe above the base</source>
        <translation>Sonda sobre la base</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Alimentación</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>con temporizador</translation>
    </message>
    <message>
        <source>always on</source>
        <translation>siempre con corriente</translation>
    </message>
    <message>
        <source>On strip</source>
        <translation>En la regleta</translation>
    </message>
    <message>
        <source>At a distance of</source>
        <translation>A una distancia de</translation>
    </message>
    <message>
        <source>UV index</source>
        <translation>índice UV</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Some of your guidance files were left out</source>
        <translation>Algunos de sus archivos de referencia se han omitido</translation>
    </message>
    <message>
        <source>Your own guidance files have problems (%1). The files named under “Details” are not used; everything else is.</source>
        <translation>Hay problemas en sus propios archivos de referencia (%1). Los archivos que figuran en «Detalles» no se usan; todo lo demás, sí.</translation>
    </message>
    <message>
        <source>Plans indoor enclosures for reptiles and amphibians.</source>
        <translation>Planifica terrarios de interior para reptiles y anfibios.</translation>
    </message>
    <message>
        <source>The plan to open.</source>
        <translation>El plan que se va a abrir.</translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation>Copia de %1</translation>
    </message>
    <message>
        <source>Export the drawing</source>
        <translation>Exportar el dibujo</translation>
    </message>
    <message>
        <source>Scalable drawing (*.svg);;Picture (*.png)</source>
        <translation>Dibujo vectorial (*.svg);;Imagen (*.png)</translation>
    </message>
    <message>
        <source>drawing</source>
        <translation>dibujo</translation>
    </message>
    <message>
        <source>The drawing was not saved</source>
        <translation>El dibujo no se ha guardado</translation>
    </message>
    <message>
        <source>Print sheets</source>
        <translation>Imprimir hojas</translation>
    </message>
    <message>
        <source>Save sheets as PDF</source>
        <translation>Guardar hojas como PDF</translation>
    </message>
    <message>
        <source>sheets</source>
        <translation>hojas</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The sheets were not saved</source>
        <translation>Las hojas no se han guardado</translation>
    </message>
    <message>
        <source>Comma separated (*.csv);;All files (*)</source>
        <translation>Valores separados por comas (*.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>The table was not saved</source>
        <translation>La tabla no se ha guardado</translation>
    </message>
    <message>
        <source>Loamstead plans (*.loamstead.json);;All files (*)</source>
        <translation>Planes de Loamstead (*.loamstead.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>New plan</source>
        <translation>Plan nuevo</translation>
    </message>
    <message>
        <source>Enclosure 1</source>
        <translation>Terrario 1</translation>
    </message>
    <message>
        <source>Price lists (*.json *.csv);;All files (*)</source>
        <translation>Listas de precios (*.json *.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>This price list can&apos;t be used</source>
        <translation>Esta lista de precios no se puede usar</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be used. The prices are as they were.</source>
        <translation>«%1» no se puede usar. Los precios siguen como estaban.</translation>
    </message>
    <message>
        <source>Each plan is worked out by itself, with the same guidance and prices. The change is that of the likely values. What is not sure of the one plan is mostly not sure of the other either, so a change is mostly surer than the ranges beside it.</source>
        <translation>Cada plan se calcula por separado, con los mismos datos de referencia y los mismos precios. El cambio es el de los valores probables. Lo que es incierto en un plan suele serlo también en el otro, así que el cambio suele ser más seguro que los intervalos que figuran al lado.</translation>
    </message>
    <message>
        <source>Other plan: %1</source>
        <translation>Otro plan: %1</translation>
    </message>
    <message>
        <source>This plan: %1</source>
        <translation>Este plan: %1</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Usable floor</source>
        <translation>Suelo útil</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>no rule known</source>
        <translation>sin regla conocida</translation>
    </message>
    <message>
        <source>Inner floor of %1 less what animals can&apos;t walk on.</source>
        <translation>Suelo interior de %1 menos lo que los animales no pueden pisar.</translation>
    </message>
    <message>
        <source>Governing rule: %1</source>
        <translation>Regla aplicable: %1</translation>
    </message>
    <message>
        <source>grown: %1</source>
        <translation>de adulto: %1</translation>
    </message>
    <message>
        <source>Heat balance of the enclosure, read as %1 (%2). Target of %3.</source>
        <translation>Balance de calor del terrario, leído como %1 (%2). Valor objetivo de %3.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Warmth, %1</source>
        <translation>Calor, %1</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Habitación</translation>
    </message>
    <message>
        <source>As the plan states it, or its bracket where it does not. Where the room&apos;s loss per kelvin is stated, what all boxes give off is added in summer.</source>
        <translation>Según lo indicado en el plan o, si no se indica, con su margen supuesto. Si se indica la pérdida de la habitación por kelvin, en verano se suma lo que desprenden todos los terrarios.</translation>
    </message>
    <message>
        <source>Warm side less cool side</source>
        <translation>Lado cálido menos lado fresco</translation>
    </message>
    <message>
        <source>The same heat balance: ground level on the warm side less that on the cool side, about two thirds of the length apart. What moves both sides alike does not widen its range.</source>
        <translation>El mismo balance de calor: el lado cálido a ras de suelo menos el lado fresco, separados unos dos tercios de la longitud. Lo que desplaza por igual ambos lados no amplía su intervalo.</translation>
    </message>
    <message>
        <source>Hottest wall within reach</source>
        <translation>Pared más caliente al alcance</translation>
    </message>
    <message>
        <source>The balance of each small piece of the walls with lamp light, air, radiation and its neighbours: the hottest one as high up as an animal reaches, mats apart.</source>
        <translation>El balance de cada pequeña porción de las paredes con la luz de las lámparas, el aire, la radiación y las porciones vecinas: la más caliente hasta la altura que alcanza un animal, sin contar las mantas térmicas.</translation>
    </message>
    <message>
        <source>Hottest place of the top</source>
        <translation>Punto más caliente de la tapa</translation>
    </message>
    <message>
        <source>The balance of each small piece of what closes the top, covers included: the hottest face of them. Where it can be touched, mind it; what it is made of must bear it.</source>
        <translation>El balance de cada pequeña porción de lo que cierra por arriba, cubiertas incluidas: la cara más caliente. Cuidado donde se pueda tocar; el material debe soportarlo.</translation>
    </message>
    <message>
        <source>Hottest surface</source>
        <translation>Superficie más caliente</translation>
    </message>
    <message>
        <source>The same heat balance: the hottest place that an animal can touch from above, furniture it can climb included, with the bed dry under the lamp.</source>
        <translation>El mismo balance de calor: el punto más caliente que un animal puede tocar desde arriba, incluido el mobiliario al que puede trepar, con el sustrato seco bajo la lámpara.</translation>
    </message>
    <message>
        <source>Hottest when digging</source>
        <translation>Lo más caliente al excavar</translation>
    </message>
    <message>
        <source>The same heat balance: the hottest place that an animal reaches by digging, down to the base.</source>
        <translation>El mismo balance de calor: el punto más caliente que un animal alcanza al excavar, hasta la base.</translation>
    </message>
    <message>
        <source>Lower air</source>
        <translation>Aire inferior</translation>
    </message>
    <message>
        <source>The same heat balance: the air of the lower half.</source>
        <translation>El mismo balance de calor: el aire de la mitad inferior.</translation>
    </message>
    <message>
        <source>Power drawn</source>
        <translation>Potencia consumida</translation>
    </message>
    <message>
        <source>What all devices draw on average in this case, their thermostats and dimmers included.</source>
        <translation>Lo que consumen de media todos los aparatos en este caso, con el efecto de sus termostatos y atenuadores.</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Moisture balance: bowl, bed and misting against what the top and the panes let out.</source>
        <translation>Balance de humedad: bebedero, sustrato y nebulización frente a lo que dejan escapar la tapa y los vidrios.</translation>
    </message>
    <message>
        <source>Evaporation %1 a day.</source>
        <translation>Evaporación: %1 al día.</translation>
    </message>
    <message>
        <source>warm side</source>
        <translation>lado cálido</translation>
    </message>
    <message>
        <source>The same vapour at the warm side&apos;s ground: warmer ground reads drier.</source>
        <translation>El mismo vapor a ras de suelo en el lado cálido: un suelo más caliente da una lectura más seca.</translation>
    </message>
    <message>
        <source>What its moist floor gives off against what leaves by its entrance, by how much lighter moist air is. An animal in it makes it damper still.</source>
        <translation>Lo que desprende su suelo húmedo frente a lo que sale por la entrada, porque el aire húmedo es más ligero. Un animal dentro lo humedece aún más.</translation>
    </message>
    <message>
        <source>lower air</source>
        <translation>aire inferior</translation>
    </message>
    <message>
        <source>The same vapour in the air of the lower half.</source>
        <translation>El mismo vapor en el aire de la mitad inferior.</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Hours of light a day</source>
        <translation>Horas de luz al día</translation>
    </message>
    <message>
        <source>From the time the lamps go on to the time they go off.</source>
        <translation>Desde que se encienden las lámparas hasta que se apagan.</translation>
    </message>
    <message>
        <source>Daylight at your latitude: %1 in midsummer, %2 in midwinter.</source>
        <translation>Luz natural en su latitud: %1 en pleno verano, %2 en pleno invierno.</translation>
    </message>
    <message>
        <source>Electricity</source>
        <translation>Electricidad</translation>
    </message>
    <message>
        <source>Connected load</source>
        <translation>Potencia conectada</translation>
    </message>
    <message>
        <source>The power of all devices, added up.</source>
        <translation>La potencia de todos los aparatos, sumada.</translation>
    </message>
    <message>
        <source>Energy a day</source>
        <translation>Energía al día</translation>
    </message>
    <message>
        <source>What each device draws by day and by night, on average over the year.</source>
        <translation>Lo que consume cada aparato de día y de noche, de media anual.</translation>
    </message>
    <message>
        <source>Outlets</source>
        <translation>Tomas</translation>
    </message>
    <message>
        <source>%1 timed, %2 always on</source>
        <translation>%1 con temporizador, %2 siempre con corriente</translation>
    </message>
    <message>
        <source>One for each device, by the supply it is planned on.</source>
        <translation>Una para cada aparato, según la alimentación prevista.</translation>
    </message>
    <message>
        <source>%1 in a year</source>
        <translation>%1 al año</translation>
    </message>
    <message>
        <source>A winter day %1, a summer day %2.</source>
        <translation>Un día de invierno %1, un día de verano %2.</translation>
    </message>
    <message>
        <source>Energy in a year</source>
        <translation>Energía al año</translation>
    </message>
    <message>
        <source>Bed and weight</source>
        <translation>Sustrato y peso</translation>
    </message>
    <message>
        <source>%1 to fill in</source>
        <translation>%1, para llenar</translation>
    </message>
    <message>
        <source>Settled volume %1, and what settling takes.</source>
        <translation>Volumen asentado: %1, más lo que se pierde al asentarse.</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Carcasa</translation>
    </message>
    <message>
        <source>Volume of the panels times their density.</source>
        <translation>El volumen de los paneles por su densidad.</translation>
    </message>
    <message>
        <source>Bed, damp</source>
        <translation>Sustrato húmedo</translation>
    </message>
    <message>
        <source>Dry mass of the settled bed and the water that it holds.</source>
        <translation>La masa seca del sustrato asentado y el agua que retiene.</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Todo junto</translation>
    </message>
    <message>
        <source>Shell, bed, water, animals and the furniture whose weight is stated.</source>
        <translation>Carcasa, sustrato, agua, animales y el mobiliario cuyo peso se indica.</translation>
    </message>
    <message>
        <source>Pressure under the footprint</source>
        <translation>Presión bajo la superficie de apoyo</translation>
    </message>
    <message>
        <source>The weight of all together over the floor it stands on.</source>
        <translation>El peso de todo junto entre el suelo sobre el que se apoya.</translation>
    </message>
    <message>
        <source>Shared by all enclosures</source>
        <translation>Común a todos los terrarios</translation>
    </message>
    <message>
        <source>%1 of what it may carry</source>
        <translation>%1 de lo que puede soportar</translation>
    </message>
    <message>
        <source>Everything planned on this circuit, and what else is stated to run on it.</source>
        <translation>Todo lo previsto en este circuito y lo demás que se indica que funciona en él.</translation>
    </message>
    <message>
        <source>The power of all devices planned on this strip, added up.</source>
        <translation>La potencia de todos los aparatos previstos en esta regleta, sumada.</translation>
    </message>
    <message>
        <source>All enclosures that stand on it, with everything in them.</source>
        <translation>Todos los terrarios que están encima, con todo lo que contienen.</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>rating not known</source>
        <translation>no se sabe cuánto admite</translation>
    </message>
    <message>
        <source>Danger</source>
        <translation>Peligro</translation>
    </message>
    <message>
        <source>Falls short</source>
        <translation>Insuficiente</translation>
    </message>
    <message>
        <source>Tight</source>
        <translation>Justo</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Aún no se sabe</translation>
    </message>
    <message>
        <source>Good to know</source>
        <translation>Conviene saberlo</translation>
    </message>
    <message>
        <source>read %1</source>
        <translation>leído %1</translation>
    </message>
    <message>
        <source>Every uncertain input is moved within its spread until the readings are met as well as their accuracy and the model&apos;s own error make probable.</source>
        <translation>Cada dato incierto se desplaza dentro de su margen hasta que las lecturas se cumplen tan bien como permiten esperar su exactitud y el error propio del modelo.</translation>
    </message>
    <message>
        <source>Expected %1 before any reading, %2 with them. Read less expected: %3 standard deviations of thermometer and model.</source>
        <translation>Se esperaba %1 antes de cualquier lectura y %2 con ellas. Lo leído menos lo esperado: %3 desviaciones típicas del termómetro y del modelo.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>moved by readings</source>
        <translation>desplazado por las lecturas</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1; target %2; %3</source>
        <translation>%1; valor objetivo %2; %3</translation>
    </message>
    <message>
        <source>%1: %2
Now %3
Target %4</source>
        <translation>%1: %2
Ahora %3
Valor objetivo %4</translation>
    </message>
    <message>
        <source>Findings (%1)</source>
        <translation>Hallazgos (%1)</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Depth of water in %1</source>
        <translation>Profundidad del agua en %1</translation>
    </message>
    <message>
        <source>What is stated, against the body of the animals here and its height; the verdict counts the bowl&apos;s size too.</source>
        <translation>Lo indicado, comparado con el cuerpo de los animales y su altura; el dictamen tiene en cuenta también el tamaño del bebedero.</translation>
    </message>
    <message>
        <source>Water in %1</source>
        <translation>Agua en %1</translation>
    </message>
    <message>
        <source>Length by width by depth, less a fifth for round corners and sloped sides.</source>
        <translation>Longitud por anchura por profundidad, menos un quinto por las esquinas redondeadas y los lados inclinados.</translation>
    </message>
    <message>
        <source>To lift, %1 full</source>
        <translation>Para levantar, %1 con agua</translation>
    </message>
    <message>
        <source>A kilogram for each litre, and the bowl where its weight is stated.</source>
        <translation>Un kilo por litro, y el bebedero si se indica su peso.</translation>
    </message>
    <message>
        <source>Drawn from the mains a day</source>
        <translation>Agua de red al día</translation>
    </message>
    <message>
        <source>From the source that is stated: %1. Reverse osmosis sends several times what it makes to the drain.</source>
        <translation>De la procedencia indicada: %1. La ósmosis inversa envía al desagüe varias veces lo que produce.</translation>
    </message>
    <message>
        <source>It is not stated where the water comes from.</source>
        <translation>No se indica de dónde procede el agua.</translation>
    </message>
    <message>
        <source>Water costs a year</source>
        <translation>Coste del agua al año</translation>
    </message>
    <message>
        <source>What is drawn, at the price that is stated.</source>
        <translation>Lo que se consume, al precio indicado.</translation>
    </message>
    <message>
        <source>Filter cartridges a year</source>
        <translation>Cartuchos de filtro al año</translation>
    </message>
    <message>
        <source>Litres that pass them over the litres one is good for. Their makers set a greatest age besides.</source>
        <translation>Los litros que pasan por ellos entre los litros que dura uno. Además, los fabricantes fijan una antigüedad máxima.</translation>
    </message>
    <message>
        <source>Treated water a month</source>
        <translation>Agua tratada al mes</translation>
    </message>
    <message>
        <source>All water for bowls, and for amphibians the mist.</source>
        <translation>Toda el agua de los bebederos y, para anfibios, la de la nebulización.</translation>
    </message>
    <message>
        <source>Conditioner for one fill</source>
        <translation>Acondicionador para un llenado</translation>
    </message>
    <message>
        <source>All bowls filled once, by the dose; the bottle&apos;s label counts.</source>
        <translation>Todos los bebederos llenos una vez, según la dosis; vale lo que diga la etiqueta del frasco.</translation>
    </message>
    <message>
        <source>Conditioner a month</source>
        <translation>Acondicionador al mes</translation>
    </message>
    <message>
        <source>The treated water by the dose.</source>
        <translation>El agua tratada, según la dosis.</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation>Agua al día</translation>
    </message>
    <message>
        <source>Bowls as often as they are changed, what evaporates from them, and what is misted.</source>
        <translation>Los bebederos tantas veces como se cambian, lo que se evapora de ellos y lo que se nebuliza.</translation>
    </message>
    <message>
        <source>Water a month</source>
        <translation>Agua al mes</translation>
    </message>
    <message>
        <source>The same over a month of 30.4 days.</source>
        <translation>Lo mismo en un mes de 30,4 días.</translation>
    </message>
    <message>
        <source>Changes a day</source>
        <translation>Cambios al día</translation>
    </message>
    <message>
        <source>As stated, or as often as the species&apos; sheet asks for.</source>
        <translation>Lo indicado, o tantos como pide la ficha de la especie.</translation>
    </message>
    <message>
        <source>Topped up a day</source>
        <translation>Agua repuesta al día</translation>
    </message>
    <message>
        <source>What evaporates from the bowls in the solved balance of heat and moisture, from winter to summer.</source>
        <translation>Lo que se evapora de los bebederos según el balance resuelto de calor y humedad, de invierno a verano.</translation>
    </message>
    <message>
        <source>What evaporates from still water of the bowls&apos; area, by published correlations.</source>
        <translation>Lo que se evapora del agua en reposo en la superficie de los bebederos, según correlaciones publicadas.</translation>
    </message>
    <message>
        <source>Poured into the bed a day</source>
        <translation>Agua vertida en el sustrato al día</translation>
    </message>
    <message>
        <source>What evaporates from bed and mist in the solved balance of heat and moisture, less what is misted and what condenses and drips back: so much keeps the bed as damp as planned. Below nought it gets wetter.</source>
        <translation>Lo que se evapora del sustrato y de la nebulización según el balance resuelto de calor y humedad, menos lo que se nebuliza y lo que se condensa y vuelve a gotear: esa cantidad mantiene el sustrato tan húmedo como está previsto. Por debajo de cero, se va mojando más.</translation>
    </message>
    <message>
        <source>Winter rest, %1</source>
        <translation>Hibernación, %1</translation>
    </message>
    <message>
        <source>May it be cooled</source>
        <translation>Si puede enfriarse</translation>
    </message>
    <message>
        <source>Only animals of species that rest, well, of full weight and past their first winter may be cooled.</source>
        <translation>Solo pueden enfriarse animales de especies que hibernan, sanos, con su peso completo y pasado su primer invierno.</translation>
    </message>
    <message>
        <source>Week of %1</source>
        <translation>Semana del %1</translation>
    </message>
    <message>
        <source>Weight on %1</source>
        <translation>Peso el %1</translation>
    </message>
    <message>
        <source>Under this weight more is lost than one per cent a month: ask a vet. At the weight under “Target” the rest ends.</source>
        <translation>Por debajo de este peso se pierde más del uno por ciento al mes: consultar a un veterinario. Con el peso de «Valor objetivo» termina la hibernación.</translation>
    </message>
    <message>
        <source>end below %1</source>
        <translation>terminar por debajo de %1</translation>
    </message>
    <message>
        <source>To be bought: %1</source>
        <translation>Por comprar: %1</translation>
    </message>
    <message>
        <source>Already owned: %1</source>
        <translation>Ya disponible: %1</translation>
    </message>
    <message>
        <source>Cost: %1</source>
        <translation>Coste: %1</translation>
    </message>
    <message>
        <source>No price is known, so it is not in the total.</source>
        <translation>No se conoce ningún precio, así que no entra en el total.</translation>
    </message>
    <message>
        <source>It is changed or taken out under “Budget”.</source>
        <translation>Se cambia o se quita en «Presupuesto».</translation>
    </message>
    <message>
        <source>Nothing in the price list serves it, so it can&apos;t be ticked off.</source>
        <translation>Nada en la lista de precios sirve para esto, así que no se puede marcar.</translation>
    </message>
    <message>
        <source>In use for %1.</source>
        <translation>En uso desde hace %1.</translation>
    </message>
    <message>
        <source>How long it has been in use is not stated: say so under “Budget”, for it tells when it has to be replaced.</source>
        <translation>No se indica cuánto tiempo lleva en uso: anotarlo en «Presupuesto», porque de eso depende cuándo hay que sustituirlo.</translation>
    </message>
    <message>
        <source>owned</source>
        <translation>ya disponible</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>%1, owned</source>
        <translation>%1, ya disponible</translation>
    </message>
    <message>
        <source>To buy: %1 of %2 lines</source>
        <translation>Por comprar: %1 de %2 líneas</translation>
    </message>
    <message>
        <source>%1, typically %2.</source>
        <translation>%1, por lo general %2.</translation>
    </message>
    <message>
        <source>Tick what you have.</source>
        <translation>Marque lo que ya tiene.</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>, ground of the cool side</source>
        <translation>, suelo del lado fresco</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>¿Y si…?</translation>
    </message>
    <message>
        <source>The joint balance of heat and moisture, solved anew for the cover and the misting that are tried. Likely values; how wide the ranges are is taken from the plan as it is. Misting counts as spread over the day. Nothing in the plan changes until you take it, which is one step to undo.</source>
        <translation>El balance conjunto de calor y humedad, resuelto de nuevo para la cubierta y la nebulización que se prueban. Valores probables; la amplitud de los intervalos se toma del plan tal como está. La nebulización se cuenta repartida a lo largo del día. Nada cambia en el plan hasta que se acepta la prueba, y eso se deshace en un solo paso.</translation>
    </message>
    <message>
        <source>A quarter of the top stays open for fresh air: cautious, our own.</source>
        <translation>Un cuarto de la tapa queda abierto para que entre aire fresco: valor prudente, nuestro.</translation>
    </message>
    <message>
        <source>At a back %1 over the base, on %2, %3 from the left and %4 from the front.</source>
        <translation>En un dorso a %1 sobre la base, encima de %2, a %3 de la izquierda y %4 del frente.</translation>
    </message>
    <message>
        <source>the bed</source>
        <translation>el sustrato</translation>
    </message>
    <message>
        <source>UV index at the basking place</source>
        <translation>Índice UV en la zona de asoleo</translation>
    </message>
    <message>
        <source>The strongest on a place of the animal&apos;s size under the basking lamp. From the distance table or the meter reading of each lamp, its beam, its age and the mesh; never from watts.</source>
        <translation>El más alto en un lugar del tamaño del animal bajo la lámpara de asoleo. Se obtiene de la tabla de distancias o de la lectura del medidor de cada lámpara, su haz, su antigüedad y la malla; nunca de los vatios.</translation>
    </message>
    <message>
        <source>no need stated</source>
        <translation>sin necesidad indicada</translation>
    </message>
    <message>
        <source>Ferguson zone %1: %2. %3, by %4</source>
        <translation>Zona de Ferguson %1: %2. %3, según %4</translation>
    </message>
    <message>
        <source>The most within reach</source>
        <translation>El máximo al alcance</translation>
    </message>
    <message>
        <source>The strongest at an animal&apos;s back on the bed and on everything it can stand on. Where a lamp&apos;s readings don&apos;t reach it is not known.</source>
        <translation>El más alto en el dorso de un animal sobre el sustrato y sobre todo aquello a lo que puede subirse. Donde no llegan las lecturas de una lámpara, no se sabe.</translation>
    </message>
    <message>
        <source>Floor without UV</source>
        <translation>Suelo sin UV</translation>
    </message>
    <message>
        <source>The share of the floor where the index stays under a tenth, which a meter reads as none: under hides, under covers and beyond the light. The larger share counts what is not known as dark. Shade beside fittings is not counted.</source>
        <translation>La parte del suelo donde el índice queda por debajo de una décima, que un medidor lee como cero: bajo refugios, bajo cubiertas y fuera de la luz. La proporción mayor cuenta como oscuro lo que no se sabe. La sombra junto a los accesorios no se cuenta.</translation>
    </message>
    <message>
        <source>Always a retreat without UV: Baines et al. 2016</source>
        <translation>Siempre un retiro sin UV: Baines et al. 2016</translation>
    </message>
    <message>
        <source>Heights over the base at which the strongest UV of the basking place lies inside the target and nothing within reach passes its upper end, tried centimetre by centimetre.</source>
        <translation>Alturas sobre la base con las que el UV más alto de la zona de asoleo queda dentro del valor objetivo y nada al alcance pasa de su extremo superior, probadas centímetro a centímetro.</translation>
    </message>
    <message>
        <source>Height of the lamp for its zone</source>
        <translation>Altura de la lámpara para su zona</translation>
    </message>
    <message>
        <source>Height of %1 for its zone</source>
        <translation>Altura de %1 para su zona</translation>
    </message>
    <message>
        <source>The whole range of the index lies inside it there.</source>
        <translation>Ahí queda dentro todo el intervalo del índice.</translation>
    </message>
    <message>
        <source>Only the likely index lies inside it there: the range is as wide.</source>
        <translation>Ahí solo queda dentro el índice probable: el intervalo es así de amplio.</translation>
    </message>
    <message>
        <source>Nearest to %1</source>
        <translation>Lo más cerca de %1</translation>
    </message>
    <message>
        <source>From the lamp&apos;s face to the back of an animal on what it can stand on. Nearer than the safe distance even the upper end of its UV may pass the most that any animal was met in.</source>
        <translation>De la cara de la lámpara al dorso de un animal subido a lo que pueda. Más cerca que la distancia segura, el extremo superior de su UV ya puede superar el máximo observado en animales.</translation>
    </message>
    <message>
        <source>safe distance not known</source>
        <translation>no se sabe la distancia segura</translation>
    </message>
    <message>
        <source>UV index there: %1.</source>
        <translation>Índice UV ahí: %1.</translation>
    </message>
    <message>
        <source>Its readings reach from %1 to %2.</source>
        <translation>Sus lecturas abarcan de %1 a %2.</translation>
    </message>
    <message>
        <source>Burning until the UV falls below the target</source>
        <translation>Uso hasta que el UV baje del valor objetivo</translation>
    </message>
    <message>
        <source>What all its lamps lose for each thousand hours, by the sheet of their kind. A new reading with the hours burnt says more.</source>
        <translation>Lo que pierden todas sus lámparas por cada mil horas, según la ficha de su tipo. Una lectura nueva con las horas de uso dice más.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>el %1</translation>
    </message>
    <message>
        <source>Earliest on %1, by the hours that it burns a day.</source>
        <translation>Como muy pronto el %1, según las horas que funciona al día.</translation>
    </message>
    <message>
        <source>UV</source>
        <translation>UV</translation>
    </message>
    <message>
        <source>Too little is known of this box to try anything out.</source>
        <translation>Se sabe demasiado poco de este recinto para probar algo.</translation>
    </message>
    <message>
        <source>For this trial the balance found no solution.</source>
        <translation>Para esta prueba, el balance no tiene solución.</translation>
    </message>
    <message>
        <source>The top is no mesh: a cover would change nothing, so only misting can be tried.</source>
        <translation>La tapa no es de malla: una cubierta no cambiaría nada, así que solo se puede probar la nebulización.</translation>
    </message>
    <message>
        <source>No cover keeps clear of the lamps, so only misting can be tried.</source>
        <translation>Ninguna cubierta queda a suficiente distancia de las lámparas, así que solo se puede probar la nebulización.</translation>
    </message>
    <message>
        <source>Ring: the plan. Dot: the trial. Hatched: target. Bar: range. Covers lie across the box from its ends, clear of what is hot, over %1 of the top at most.</source>
        <translation>Anillo: el plan. Punto: la prueba. Rayado: valor objetivo. Barra: intervalo. Las cubiertas van de lado a lado del recinto desde los extremos, lejos de lo que se calienta, y ocupan como máximo %1 de la tapa.</translation>
    </message>
    <message>
        <source>bed %1</source>
        <translation>sustrato %1</translation>
    </message>
    <message>
        <source>Floor, and the walls folded out around it; front below</source>
        <translation>Suelo, con las paredes desplegadas alrededor; el frente, abajo</translation>
    </message>
    <message>
        <source>Top, seen from above</source>
        <translation>Tapa, vista desde arriba</translation>
    </message>
    <message>
        <source>Plan, seen from above; front below</source>
        <translation>Planta, vista desde arriba; el frente, abajo</translation>
    </message>
    <message>
        <source>Section, seen from the front</source>
        <translation>Sección, vista desde el frente</translation>
    </message>
    <message>
        <source>floor and inner faces, likely</source>
        <translation>suelo y caras interiores, probable</translation>
    </message>
    <message>
        <source>at ground level, likely</source>
        <translation>a ras de suelo, probable</translation>
    </message>
    <message>
        <source>middle %1 from the left, %2 from the front</source>
        <translation>centro a %1 de la izquierda, %2 del frente</translation>
    </message>
    <message>
        <source>%1 from the left, %2 from the front</source>
        <translation>a %1 de la izquierda, %2 del frente</translation>
    </message>
    <message>
        <source>; %1 × %2</source>
        <translation>; %1 × %2</translation>
    </message>
    <message>
        <source>; stands in: %1</source>
        <translation>; se solapa con: %1</translation>
    </message>
    <message>
        <source>condensation: %1, %2</source>
        <translation>condensación: %1, %2</translation>
    </message>
    <message>
        <source>condensation: coldest pane, %1</source>
        <translation>condensación: vidrio más frío, %1</translation>
    </message>
    <message>
        <source>at ground level, target %1</source>
        <translation>a ras de suelo, valor objetivo %1</translation>
    </message>
    <message>
        <source>surface, by infrared</source>
        <translation>superficie, por infrarrojos</translation>
    </message>
    <message>
        <source>ground level, shaded thermometer</source>
        <translation>a ras de suelo, termómetro a la sombra</translation>
    </message>
    <message>
        <source>felt by the back (operative)</source>
        <translation>la que nota el dorso (operativa)</translation>
    </message>
    <message>
        <source>lamp light</source>
        <translation>luz de las lámparas</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>sustrato</translation>
    </message>
    <message>
        <source>upper air</source>
        <translation>aire superior</translation>
    </message>
    <message>
        <source>UV index  %1</source>
        <translation>índice UV  %1</translation>
    </message>
    <message>
        <source>at a back, over the base</source>
        <translation>en el dorso, sobre la base</translation>
    </message>
    <message>
        <source>inside the %1  none</source>
        <translation>interior (%1)  ninguno</translation>
    </message>
    <message>
        <source>%1: open here</source>
        <translation>%1: aquí está abierto</translation>
    </message>
    <message>
        <source>%1, inside</source>
        <translation>%1, por dentro</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>por fuera</translation>
    </message>
    <message>
        <source>over the base</source>
        <translation>sobre la base</translation>
    </message>
    <message>
        <source>humidity at ground level, shaded</source>
        <translation>humedad a ras de suelo, a la sombra</translation>
    </message>
    <message>
        <source>temperature there</source>
        <translation>temperatura en ese punto</translation>
    </message>
    <message>
        <source>humidity of the lower air</source>
        <translation>humedad del aire inferior</translation>
    </message>
    <message>
        <source>dew point of the lower air</source>
        <translation>punto de rocío del aire inferior</translation>
    </message>
    <message>
        <source>from before the last change</source>
        <translation>de antes del último cambio</translation>
    </message>
    <message>
        <source>UVI %1</source>
        <translation>UVI %1</translation>
    </message>
    <message>
        <source>UVI not known</source>
        <translation>UVI: no se sabe</translation>
    </message>
    <message>
        <source>basking place  %1</source>
        <translation>zona de asoleo  %1</translation>
    </message>
    <message>
        <source>at an animal&apos;s back</source>
        <translation>en el dorso de un animal</translation>
    </message>
    <message>
        <source>nothing closed</source>
        <translation>nada cerrado</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Bajo</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>Típico</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>My figure</source>
        <translation>Mi cifra</translation>
    </message>
    <message>
        <source>To begin</source>
        <translation>Para empezar</translation>
    </message>
    <message>
        <source>Delivery, %1</source>
        <translation>Envío, %1</translation>
    </message>
    <message>
        <source>Tax on top, %1</source>
        <translation>Impuestos aparte, %1</translation>
    </message>
    <message>
        <source>Set aside for surprises</source>
        <translation>Reserva para imprevistos</translation>
    </message>
    <message>
        <source>To begin, all together</source>
        <translation>Para empezar, todo junto</translation>
    </message>
    <message>
        <source>Startup cost</source>
        <translation>Coste inicial</translation>
    </message>
    <message>
        <source>In a year</source>
        <translation>En un año</translation>
    </message>
    <message>
        <source>In a year, all together</source>
        <translation>En un año, todo junto</translation>
    </message>
    <message>
        <source>Running cost</source>
        <translation>Costes corrientes</translation>
    </message>
    <message>
        <source>What wears out counts with its price spread evenly over its life.</source>
        <translation>Lo que se desgasta cuenta con su precio repartido por igual a lo largo de su vida útil.</translation>
    </message>
    <message>
        <source>Electricity is not in it: price of a kWh</source>
        <translation>No incluye la electricidad: precio del kWh</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Para cuándo</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Done on</source>
        <translation>Hecho el</translation>
    </message>
    <message>
        <source>%1 (its UV fades)</source>
        <translation>%1 (su UV decae)</translation>
    </message>
    <message>
        <source>To replace in the first year</source>
        <translation>Para sustituir en el primer año</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Spent in it</source>
        <translation>Gasto del año</translation>
    </message>
    <message>
        <source>So far, low</source>
        <translation>Hasta entonces, bajo</translation>
    </message>
    <message>
        <source>So far, typical</source>
        <translation>Hasta entonces, típico</translation>
    </message>
    <message>
        <source>So far, high</source>
        <translation>Hasta entonces, alto</translation>
    </message>
    <message>
        <source>start</source>
        <translation>inicio</translation>
    </message>
    <message>
        <source>Over the years</source>
        <translation>A lo largo de los años</translation>
    </message>
    <message>
        <source>Net present cost at typical prices: %1.</source>
        <translation>Coste actual neto a precios típicos: %1.</translation>
    </message>
    <message>
        <source>That is as much as an even %1 a year.</source>
        <translation>Equivale a %1 al año, siempre igual.</translation>
    </message>
    <message>
        <source>Budget sheet</source>
        <translation>Hoja de presupuesto</translation>
    </message>
    <message>
        <source>The prices are invented for illustration. Write in your own.</source>
        <translation>Los precios son ejemplos inventados. Anote los suyos.</translation>
    </message>
    <message>
        <source>All amounts in %1, prices of %2.</source>
        <translation>Todos los importes en %1, precios de %2.</translation>
    </message>
    <message>
        <source>Without a price, to be added by hand</source>
        <translation>Sin precio, para añadir a mano</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>prices of %1</source>
        <translation>precios de %1</translation>
    </message>
    <message>
        <source>For: %1</source>
        <translation>Para: %1</translation>
    </message>
    <message>
        <source>Danger: mend this before anything is switched on</source>
        <translation>Peligro: corregirlo antes de encender nada</translation>
    </message>
    <message>
        <source>Not stated yet: please fill in</source>
        <translation>Sin indicar todavía: rellenar, por favor</translation>
    </message>
    <message>
        <source>Predictions: run the finished enclosure empty for at least a week and read several thermometers before an animal moves in.</source>
        <translation>Previsiones: tener el terrario terminado en marcha y vacío al menos una semana, y leer varios termómetros, antes de que entre un animal.</translation>
    </message>
    <message>
        <source>Fire: keep lamps and heaters clear of what burns, guarded, in heat-rated holders. Fit a smoke alarm.</source>
        <translation>Fuego: mantener lámparas y calefactores lejos de lo que arde, con protección y en portalámparas resistentes al calor. Instalar un detector de humo.</translation>
    </message>
    <message>
        <source>Mains: use a residual-current device and drip loops, keep strips above the water, never chain them. Electrical work is for a licensed electrician; local codes decide.</source>
        <translation>Corriente: usar un interruptor diferencial y bucles de goteo, mantener las regletas por encima del agua y nunca conectarlas en cadena. La instalación eléctrica es trabajo de un electricista autorizado; rige la normativa local.</translation>
    </message>
    <message>
        <source>Weight: stand and floor have to be rated for the load. This is no structural approval.</source>
        <translation>Peso: el mueble y el suelo deben estar previstos para la carga. Esto no es un dictamen estructural.</translation>
    </message>
    <message>
        <source>Health: ask a reptile vet about illness and before any cool season. Wash hands after handling: reptiles and amphibians can carry Salmonella.</source>
        <translation>Salud: consultar a un veterinario de reptiles en caso de enfermedad y antes de cualquier época fría. Lavarse las manos después de tocarlos: los reptiles y anfibios pueden ser portadores de salmonela.</translation>
    </message>
    <message>
        <source>Law: keeping or passing on a species may need papers. Ask your local authority.</source>
        <translation>Ley: tener o ceder una especie puede requerir documentación. Consultar a la autoridad local.</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be written: %2.</source>
        <translation>«%1» no se puede escribir: %2.</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todos</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artículo</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Envases</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Cada uno</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pagado</translation>
    </message>
    <message>
        <source>Shopping sheet</source>
        <translation>Hoja de compra</translation>
    </message>
    <message>
        <source>Prices in %1, typical, as of %2.</source>
        <translation>Precios en %1, típicos, a fecha de %2.</translation>
    </message>
    <message>
        <source>This animal must not be cooled: %1. Keep it warm and fed through the winter. There is no plan for it.</source>
        <translation>Este animal no debe enfriarse: %1. Mantenerlo caliente y alimentado todo el invierno. No hay plan de hibernación para él.</translation>
    </message>
    <message>
        <source>No rest is planned: the dates that are stated are over or not of the calendar.</source>
        <translation>No se planifica la hibernación: las fechas indicadas ya han pasado o no existen en el calendario.</translation>
    </message>
    <message>
        <source>Whether this animal may be cooled is not known: %1. Until it is, no rest is planned.</source>
        <translation>No se sabe si este animal puede enfriarse: %1. Mientras no se sepa, no se planifica la hibernación.</translation>
    </message>
    <message>
        <source>Before it</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>A reptile vet sees the animal, with a faecal sample, within the eight weeks before the first day without food. An animal that is ill, thin or in its first winter stays warm.</source>
        <translation>Un veterinario de reptiles examina al animal, con una muestra de heces, en las ocho semanas anteriores al primer día sin comida. Un animal enfermo, delgado o en su primer invierno se mantiene caliente.</translation>
    </message>
    <message>
        <source>Vet&apos;s check stated: %1.</source>
        <translation>Revisión veterinaria indicada: %1.</translation>
    </message>
    <message>
        <source>Checked on, by</source>
        <translation>Revisado el / por</translation>
    </message>
    <message>
        <source>Vet&apos;s telephone</source>
        <translation>Teléfono del veterinario</translation>
    </message>
    <message>
        <source>Week of</source>
        <translation>Semana del</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>By its end</source>
        <translation>Al final de ella</translation>
    </message>
    <message>
        <source>Light and heat</source>
        <translation>Luz y calor</translation>
    </message>
    <message>
        <source>Lowest and highest read</source>
        <translation>Mínima y máxima leídas</translation>
    </message>
    <message>
        <source>Week by week</source>
        <translation>Semana a semana</translation>
    </message>
    <message>
        <source>%1 — %2</source>
        <translation>%1 — %2</translation>
    </message>
    <message>
        <source>Weigh on</source>
        <translation>Pesar el</translation>
    </message>
    <message>
        <source>Ask a vet below</source>
        <translation>Consultar al veterinario por debajo de</translation>
    </message>
    <message>
        <source>End the rest below</source>
        <translation>Terminar la hibernación por debajo de</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Pesos</translation>
    </message>
    <message>
        <source>For an animal of %1 when the cold begins. If it weighs something else on that day, count anew: end the rest at a loss of %2, ask a vet at more than %3 a month. End it too if the animal is wet, wakes, or passes urine.</source>
        <translation>Para un animal de %1 al empezar el frío. Si ese día pesa otra cosa, calcular de nuevo: terminar la hibernación con una pérdida de %2, consultar al veterinario con más de %3 al mes. Terminarla también si el animal está mojado, se despierta u orina.</translation>
    </message>
    <message>
        <source>Weights: %1</source>
        <translation>Pesos: %1</translation>
    </message>
    <message>
        <source>Temperatures: %1</source>
        <translation>Temperaturas: %1</translation>
    </message>
    <message>
        <source>Winter rest</source>
        <translation>Hibernación</translation>
    </message>
    <message>
        <source>%1 (%2), %3: %4</source>
        <translation>%1 (%2), %3: %4</translation>
    </message>
    <message>
        <source>No winter rest is asked for in this plan.</source>
        <translation>En este plan no se pide ninguna hibernación.</translation>
    </message>
    <message>
        <source>%1, night</source>
        <translation>%1, noche</translation>
    </message>
    <message>
        <source>Read with</source>
        <translation>Medir con</translation>
    </message>
    <message>
        <source>Should be</source>
        <translation>Debe marcar</translation>
    </message>
    <message>
        <source>My reading</source>
        <translation>Mi lectura</translation>
    </message>
    <message>
        <source>Humidity, cool side</source>
        <translation>Humedad, lado fresco</translation>
    </message>
    <message>
        <source>Hygrometer at ground level</source>
        <translation>Higrómetro a ras de suelo</translation>
    </message>
    <message>
        <source>Thermostat</source>
        <translation>Termostato</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Estado de las lámparas</translation>
    </message>
    <message>
        <source>Timer</source>
        <translation>Temporizador</translation>
    </message>
    <message>
        <source>Lamps on and off</source>
        <translation>Encendido y apagado de las lámparas</translation>
    </message>
    <message>
        <source>Set-point of %1</source>
        <translation>Temperatura de consigna: %1</translation>
    </message>
    <message>
        <source>Every day</source>
        <translation>Todos los días</translation>
    </message>
    <message>
        <source>Every week, and at intervals of some days</source>
        <translation>Cada semana y a intervalos de varios días</translation>
    </message>
    <message>
        <source>Every month</source>
        <translation>Cada mes</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>Last done on</source>
        <translation>Hecho por última vez</translation>
    </message>
    <message>
        <source>When the power fails</source>
        <translation>Si se corta la luz</translation>
    </message>
    <message>
        <source>%1: hours until it is too cold, not known</source>
        <translation>%1: no se sabe en cuántas horas hará demasiado frío</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>When to call a reptile vet</source>
        <translation>Cuándo llamar a un veterinario de reptiles</translation>
    </message>
    <message>
        <source>The same day: breathing with an open mouth or with bubbles; a prolapse; a burn; a leg that bears no weight; swollen eyes in an animal that hardly moves; a soft jaw or trembling; bleeding; a fall on the shell.</source>
        <translation>El mismo día: respiración con la boca abierta o con burbujas; un prolapso; una quemadura; una pata que no apoya; ojos hinchados en un animal que apenas se mueve; mandíbula blanda o temblores; una hemorragia; una caída sobre el caparazón.</translation>
    </message>
    <message>
        <source>Within days: no food for two weeks (a snake outside its shed: four to six); a tenth of the weight lost; shed skin left on eyes or toes; watery droppings for two days; a shell that softens.</source>
        <translation>En pocos días: dos semanas sin comer (una serpiente fuera de la muda: de cuatro a seis); una décima parte del peso perdida; restos de muda en los ojos o los dedos; heces líquidas durante dos días; un caparazón que se ablanda.</translation>
    </message>
    <message>
        <source>Reptile vet, telephone</source>
        <translation>Veterinario de reptiles, teléfono</translation>
    </message>
    <message>
        <source>At night and on holidays</source>
        <translation>De noche y en festivos</translation>
    </message>
    <message>
        <source>Who looks after them when I am away</source>
        <translation>Quién los cuida en mi ausencia</translation>
    </message>
    <message>
        <source>Running card</source>
        <translation>Hoja de manejo</translation>
    </message>
    <message>
        <source>For the whole room</source>
        <translation>Para toda la habitación</translation>
    </message>
    <message>
        <source>%1; at the earliest on %2</source>
        <translation>%1; como muy pronto el %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month and year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>On the</source>
        <translation>El día</translation>
    </message>
    <message>
        <source>Every month, from %1 on</source>
        <translation>Cada mes, a partir de %1</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>On single days</source>
        <translation>En días sueltos</translation>
    </message>
    <message>
        <source>The year</source>
        <translation>El año</translation>
    </message>
    <message>
        <source>What is done every day or every week stands on the running card. Replacements go by usual lives: sooner where a lamp fails, a meter reads too little or a bed smells. What is done on a day that a month lacks is done on its last.</source>
        <translation>Lo que se hace todos los días o todas las semanas está en la hoja de manejo. Las sustituciones siguen la vida útil habitual: antes si falla una lámpara, un medidor marca de menos o el sustrato huele. Lo que toca en un día que el mes no tiene se hace el último.</translation>
    </message>
    <message>
        <source>see the year</source>
        <translation>véase el año</translation>
    </message>
    <message>
        <source>Which sheets</source>
        <translation>Qué hojas</translation>
    </message>
    <message>
        <source>Sheets to print or to save:</source>
        <translation>Hojas que se imprimen o guardan:</translation>
    </message>
    <message>
        <source>Scale 1:%1 when printed at 100% (not “fit to page”): the bar of %2 is then %3 long on the paper. Covers are hatched falling, mats crossed; lamps seen from above have a cross.</source>
        <translation>Escala 1:%1 al imprimir al 100 % (no «ajustar a la página»): la barra de %2 mide entonces %3 en el papel. Las cubiertas llevan un rayado descendente, y las mantas, uno cruzado; las lámparas vistas desde arriba llevan una cruz.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, turned left by %2</source>
        <translation>%1, giro a la izquierda: %2</translation>
    </message>
    <message>
        <source>sunk in</source>
        <translation>hundido</translation>
    </message>
    <message>
        <source>%1 long</source>
        <translation>%1 de largo</translation>
    </message>
    <message>
        <source>Walls: %1</source>
        <translation>Paredes: %1</translation>
    </message>
    <message>
        <source>Base: %1</source>
        <translation>Base: %1</translation>
    </message>
    <message>
        <source>Top: %1</source>
        <translation>Tapa: %1</translation>
    </message>
    <message>
        <source>%1 free</source>
        <translation>libre: %1</translation>
    </message>
    <message>
        <source>%1, %2 deep at the left and %3 at the right once settled</source>
        <translation>%1, profundidad una vez asentado: %2 a la izquierda y %3 a la derecha</translation>
    </message>
    <message>
        <source>%1, %2 deep once settled</source>
        <translation>%1, profundidad una vez asentado: %2</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Núm.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Size or amount</source>
        <translation>Tamaño o cantidad</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izq.</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Frente</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Recinto</translation>
    </message>
    <message>
        <source>Equipment and covers</source>
        <translation>Equipos y cubiertas</translation>
    </message>
    <message>
        <source>Cover: %1</source>
        <translation>Cubierta: %1</translation>
    </message>
    <message>
        <source>top</source>
        <translation>tapa</translation>
    </message>
    <message>
        <source>Bed and fittings</source>
        <translation>Sustrato y accesorios</translation>
    </message>
    <message>
        <source>Parts, and what goes where</source>
        <translation>Piezas, y qué va dónde</translation>
    </message>
    <message>
        <source>Inside; lamps, heaters, panels: their middle and face, all else: left front corner.</source>
        <translation>Por dentro; de lámparas, calefactores y paneles, el centro y la cara emisora; de todo lo demás, la esquina frontal izquierda.</translation>
    </message>
    <message>
        <source>Strips</source>
        <translation>Regletas</translation>
    </message>
    <message>
        <source>%1: %2, %3 timed and %4 always-on outlets used: %5.</source>
        <translation>%1: %2; en uso, %3 tomas con temporizador y %4 permanentes: %5.</translation>
    </message>
    <message>
        <source>Heat: nothing that burns within a lamp&apos;s clearance, and no towel under a lamp. Guards where an animal could touch. Fit a smoke alarm.</source>
        <translation>Calor: nada que arda a menos de la distancia de seguridad de una lámpara, y ninguna toalla debajo de ella. Protectores donde un animal pueda tocar. Instalar un detector de humo.</translation>
    </message>
    <message>
        <source>Mains and water: a residual-current device, drip loops, strips above the water and fixed, never one strip in another. Pull the plug before you reach in. Fixed wiring is for a licensed electrician; local codes decide.</source>
        <translation>Electricidad y agua: un interruptor diferencial, bucles de goteo, regletas fijas y por encima del agua, nunca una enchufada en otra. Desenchufar antes de meter la mano. La instalación fija es cosa de un electricista autorizado; manda la normativa local.</translation>
    </message>
    <message>
        <source>Load: stand and floor have to be rated for the filled box. This is no structural approval.</source>
        <translation>Carga: el mueble y el suelo deben estar previstos para el recinto lleno. Esto no es una aprobación estructural.</translation>
    </message>
    <message>
        <source>Stand %1: what it is rated for is not stated. Ask its maker.</source>
        <translation>Mueble %1: no se indica qué carga admite. Preguntar al fabricante.</translation>
    </message>
    <message>
        <source>thermostat at %1; probe: %2</source>
        <translation>termostato a %1; sonda: %2</translation>
    </message>
    <message>
        <source>thermostat at %1; probe %2 from the left, %3 from the front, %4 over the base</source>
        <translation>termostato a %1; sonda a %2 de la izquierda, %3 del frente y %4 sobre la base</translation>
    </message>
    <message>
        <source>dimmer at %1</source>
        <translation>atenuador al %1</translation>
    </message>
    <message>
        <source>Timer: on at, off at</source>
        <translation>Temporizador: encendido a las, apagado a las</translation>
    </message>
    <message>
        <source>Timer: on at %1, off at %2, moved through the year with the day outside.</source>
        <translation>Temporizador: encendido a las %1, apagado a las %2; se ajusta a lo largo del año con el día de fuera.</translation>
    </message>
    <message>
        <source>Timer: on at %1, off at %2.</source>
        <translation>Temporizador: encendido a las %1, apagado a las %2.</translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation>Conexiones eléctricas</translation>
    </message>
    <message>
        <source>Nothing with a plug is planned.</source>
        <translation>No hay previsto nada que se enchufe.</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Aparato</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Distancia</translation>
    </message>
    <message>
        <source>Strip, outlet</source>
        <translation>Regleta, toma</translation>
    </message>
    <message>
        <source>Control and set-point</source>
        <translation>Control y consigna</translation>
    </message>
    <message>
        <source>“Clear”: the distance that each keeps from all that burns.</source>
        <translation>«Distancia»: la que cada uno guarda con todo lo que arde.</translation>
    </message>
    <message>
        <source>Let paint, varnish and sealant cure as their makers say, until nothing smells. Take off sharp edges.</source>
        <translation>Dejar curar pintura, barniz y sellador como indica el fabricante, hasta que nada huela. Eliminar los cantos vivos.</translation>
    </message>
    <message>
        <source>Set the empty box level on its stand. Try doors and lid: they open, and they lock.</source>
        <translation>Colocar el recinto vacío y a nivel sobre su mueble. Probar puertas y tapa: que abran y que cierren con seguro.</translation>
    </message>
    <message>
        <source>Fix the mat outside, its whole face against the pane, and leave the gap below it free.</source>
        <translation>Fijar la manta por fuera, con toda la cara contra el vidrio, y dejar libre el hueco de debajo.</translation>
    </message>
    <message>
        <source>Fix linings and vents. Leave no gap that an animal gets into.</source>
        <translation>Fijar revestimientos y rejillas de ventilación. No dejar ningún hueco en el que quepa un animal.</translation>
    </message>
    <message>
        <source>Lay the mat on the base, its cable led out where nothing digs.</source>
        <translation>Extender la manta sobre la base, con el cable saliendo por donde nada escarbe.</translation>
    </message>
    <message>
        <source>Stand heavy rocks and logs on the base or on blocks, not on loose bed: nothing may sink or roll.</source>
        <translation>Apoyar rocas y troncos pesados en la base o en bloques, no sobre sustrato suelto: nada debe hundirse ni rodar.</translation>
    </message>
    <message>
        <source>Hang lamps and heaters by their brackets, never by the cable, guarded, at the heights above. Measure each clearance.</source>
        <translation>Colgar lámparas y calefactores de sus soportes, nunca del cable, con protector y a las alturas indicadas arriba. Medir cada distancia de seguridad.</translation>
    </message>
    <message>
        <source>Fill in the bed layer by layer, damp it as planned, and let it settle.</source>
        <translation>Echar el sustrato capa por capa, humedecerlo según el plan y dejar que se asiente.</translation>
    </message>
    <message>
        <source>Set in the bowl to its rim, then hides, plants and the rest.</source>
        <translation>Hundir el bebedero hasta el borde; después, refugios, plantas y lo demás.</translation>
    </message>
    <message>
        <source>Fix probes and thermometers where they are drawn or listed, so that they can&apos;t be moved.</source>
        <translation>Fijar sondas y termómetros donde están dibujados o indicados, de modo que no se puedan mover.</translation>
    </message>
    <message>
        <source>Lay on the covers, clear of every lamp.</source>
        <translation>Colocar las cubiertas, lejos de todas las lámparas.</translation>
    </message>
    <message>
        <source>Plug in as listed, timed on the timer, the rest always on. Press the test button of the residual-current device: it trips.</source>
        <translation>Enchufar como se indica: lo temporizado en el temporizador, lo demás en tomas permanentes. Pulsar el botón de prueba del interruptor diferencial: debe saltar.</translation>
    </message>
    <message>
        <source>Switch on one device after the other, and see that each does what it should.</source>
        <translation>Encender los aparatos uno tras otro y ver que cada uno haga lo que debe.</translation>
    </message>
    <message>
        <source>Run it empty with the proving sheet.</source>
        <translation>Ponerlo en marcha vacío con la hoja de prueba.</translation>
    </message>
    <message>
        <source>Order of assembly</source>
        <translation>Orden de montaje</translation>
    </message>
    <message>
        <source>Look at animals and thermometers, spot-clean</source>
        <translation>Mirar animales y termómetros, limpieza puntual</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Dar de comer</translation>
    </message>
    <message>
        <source>Change the water, scrub the bowl</source>
        <translation>Cambiar el agua, fregar el bebedero</translation>
    </message>
    <message>
        <source>Mist by hand</source>
        <translation>Nebulizar a mano</translation>
    </message>
    <message>
        <source>Weekly: weigh, clean, look over lamps, locks</source>
        <translation>Cada semana: pesar, limpiar, revisar lámparas y cierres</translation>
    </message>
    <message>
        <source>Monthly: disinfect, exchange part of the bed</source>
        <translation>Cada mes: desinfectar, renovar parte del sustrato</translation>
    </message>
    <message>
        <source>%1: outside %2 × %3 × %4, without lid and lamps. A door has to be clear by more than %5 one way and %6 the other; to turn it on end the ceiling has to be over %7.</source>
        <translation>%1: por fuera %2 × %3 × %4, sin tapa ni lámparas. El paso libre de una puerta debe superar %5 en un sentido y %6 en el otro; para ponerlo de pie, el techo debe estar a más de %7.</translation>
    </message>
    <message>
        <source>%1: outside, length × width × height, to be measured (inside %2 × %3 × %4)</source>
        <translation>%1: por fuera, largo × ancho × alto, por medir (por dentro %2 × %3 × %4)</translation>
    </message>
    <message>
        <source>%1: empty about %2, by its materials; filled %3. Carry it empty only, by two people or more.</source>
        <translation>%1: vacío, unos %2, según sus materiales; lleno, %3. Llevarlo solo vacío, y entre dos personas o más.</translation>
    </message>
    <message>
        <source>%1: weight empty, to be asked or weighed</source>
        <translation>%1: peso en vacío, por preguntar o pesar</translation>
    </message>
    <message>
        <source>Hours of care a week</source>
        <translation>Horas de cuidado a la semana</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Tarea</translation>
    </message>
    <message>
        <source>Times a week</source>
        <translation>Veces por semana</translation>
    </message>
    <message>
        <source>Likely</source>
        <translation>Probable</translation>
    </message>
    <message>
        <source>Hours a week, all together</source>
        <translation>Horas a la semana, en total</translation>
    </message>
    <message>
        <source>An estimate: water and misting as planned, the rest as keepers commonly do it, times bracketed minutes (common practice, no source), the quick with the quick and the slow with the slow. Shopping and visits to a vet are not in it.</source>
        <translation>Una estimación: agua y nebulización según el plan, lo demás como suelen hacerlo los cuidadores, veces multiplicadas por intervalos de minutos (práctica habitual, sin fuente), lo rápido con lo rápido y lo lento con lo lento. No incluye compras ni visitas al veterinario.</translation>
    </message>
    <message>
        <source>Hours a week that I have, and who stands in for me</source>
        <translation>Horas a la semana de que dispongo, y quién me sustituye</translation>
    </message>
    <message>
        <source>Space beside the box: quarantine and eggs</source>
        <translation>Espacio además del recinto: cuarentena y huevos</translation>
    </message>
    <message>
        <source>That takes a second, simple heated box in another room, with tools of its own, served last.</source>
        <translation>Para eso hace falta un segundo recinto, sencillo y con calor, en otra habitación, con utensilios propios y atendido el último.</translation>
    </message>
    <message>
        <source>Where it stands, and its size</source>
        <translation>Dónde está, y su tamaño</translation>
    </message>
    <message>
        <source>%1: a female may lay eggs, even when she lives alone. The bed is %2 deep at most. Depth and place she needs, by a vet or breeder</source>
        <translation>%1: una hembra puede poner huevos aunque viva sola. El sustrato tiene como mucho %2 de profundidad. Profundidad y lugar que necesita, según un veterinario o criador</translation>
    </message>
    <message>
        <source>Through the door and up the stairs</source>
        <translation>Por la puerta y por la escalera</translation>
    </message>
    <message>
        <source>Narrowest door, clear</source>
        <translation>Puerta más estrecha, paso libre</translation>
    </message>
    <message>
        <source>Stairs, lift, corner, clear</source>
        <translation>Escalera, ascensor, esquina, paso libre</translation>
    </message>
    <message>
        <source>Who carries</source>
        <translation>Quién lo lleva</translation>
    </message>
    <message>
        <source>One animal, hygiene and law</source>
        <translation>Un solo animal, higiene y ley</translation>
    </message>
    <message>
        <source>One animal is a valid choice. A second one needs more floor, hides and quarantine, and a second box at hand should the two not get on.</source>
        <translation>Un solo animal es una elección válida. Un segundo necesita más suelo, refugios y cuarentena, y otro recinto a mano por si los dos no se llevan bien.</translation>
    </message>
    <message>
        <source>Under 5, over 65, ill here</source>
        <translation>Menores de 5, mayores de 65 y enfermos en casa</translation>
    </message>
    <message>
        <source>Papers asked of, on</source>
        <translation>Papeles consultados a, el</translation>
    </message>
    <message>
        <source>Grown: length of the shell</source>
        <translation>Adulto: longitud del caparazón</translation>
    </message>
    <message>
        <source>Grown: length from snout to vent</source>
        <translation>Adulto: longitud hocico-cloaca</translation>
    </message>
    <message>
        <source>Grown: whole length</source>
        <translation>Adulto: longitud total</translation>
    </message>
    <message>
        <source>How long, and how large</source>
        <translation>Cuánto vive y cuánto crece</translation>
    </message>
    <message>
        <source>Of the species</source>
        <translation>De la especie</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Cifra</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Certeza</translation>
    </message>
    <message>
        <source>Life span</source>
        <translation>Esperanza de vida</translation>
    </message>
    <message>
        <source>Grown: weight</source>
        <translation>Adulto: peso</translation>
    </message>
    <message>
        <source>No animal is in the plan yet. Species</source>
        <translation>Aún no hay ningún animal en el plan. Especie</translation>
    </message>
    <message>
        <source>Who takes it over if I can&apos;t keep it so long</source>
        <translation>Quién se hace cargo si no puedo tenerlo tanto tiempo</translation>
    </message>
    <message>
        <source>not foreseen, or not known</source>
        <translation>no previsto, o no se sabe</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>in %1 at the earliest</source>
        <translation>dentro de %1 como pronto</translation>
    </message>
    <message>
        <source>Floor space, now and grown</source>
        <translation>Superficie de suelo, ahora y de adulto</translation>
    </message>
    <message>
        <source>Enclosure</source>
        <translation>Terrario</translation>
    </message>
    <message>
        <source>Its floor</source>
        <translation>Su suelo</translation>
    </message>
    <message>
        <source>Asked now</source>
        <translation>Exigido ahora</translation>
    </message>
    <message>
        <source>Asked grown</source>
        <translation>Exigido de adulto</translation>
    </message>
    <message>
        <source>Outgrown</source>
        <translation>Se queda pequeño</translation>
    </message>
    <message>
        <source>%1: “%2” (%3)</source>
        <translation>%1: «%2» (%3)</translation>
    </message>
    <message>
        <source>The strictest rule that applies here decides. %1.</source>
        <translation>Decide la regla más estricta de las aplicables aquí. %1.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>What it costs</source>
        <translation>Lo que cuesta</translation>
    </message>
    <message>
        <source>Not known from the price list in use. Ten years</source>
        <translation>No se sabe con la lista de precios en uso. Diez años</translation>
    </message>
    <message>
        <source>In %1</source>
        <translation>En %1</translation>
    </message>
    <message>
        <source>Ten years, all together</source>
        <translation>Diez años, en total</translation>
    </message>
    <message>
        <source>Ten years as the plan&apos;s budget has them, at today&apos;s prices.</source>
        <translation>Diez años según el presupuesto del plan, a precios de hoy.</translation>
    </message>
    <message>
        <source>Ten years: to begin, and ten times a year, at today&apos;s prices; nothing discounted.</source>
        <translation>Diez años: el coste inicial y diez veces el de un año, a precios de hoy; sin descontar nada.</translation>
    </message>
    <message>
        <source>What has no price yet is not in it: %1 lines of the order.</source>
        <translation>Lo que aún no tiene precio no está incluido: %1 líneas del pedido.</translation>
    </message>
    <message>
        <source>For the rest of the longest life (%1%2): %3, in round figures.</source>
        <translation>Para el resto de la vida más larga (%1%2): %3, en cifras redondas.</translation>
    </message>
    <message>
        <source> or longer</source>
        <translation> o más</translation>
    </message>
    <message>
        <source>Set aside for a vet in an emergency</source>
        <translation>Reservado para una urgencia veterinaria</translation>
    </message>
    <message>
        <source>The decision</source>
        <translation>La decisión</translation>
    </message>
    <message>
        <source>Not keeping one, or waiting until place, money and time are there, is a good decision too.</source>
        <translation>No tener ninguno, o esperar a que haya sitio, dinero y tiempo, también es una buena decisión.</translation>
    </message>
    <message>
        <source>Yes, no, later</source>
        <translation>Sí, no, más adelante</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Decidido por</translation>
    </message>
    <message>
        <source>To be read before anything is bought. What is not known is a line to fill in.</source>
        <translation>Para leer antes de comprar nada. Lo que no se sabe es una línea por rellenar.</translation>
    </message>
    <message>
        <source>Fresh water, bowl scrubbed; times a day: %1, about %2 each</source>
        <translation>Agua limpia, bebedero fregado; veces al día: %1, unos %2 cada vez</translation>
    </message>
    <message>
        <source>Fresh water, bowl scrubbed; times a day: %1</source>
        <translation>Agua limpia, bebedero fregado; veces al día: %1</translation>
    </message>
    <message>
        <source>The animal is there and well. Lamps on and off as below</source>
        <translation>El animal está y se encuentra bien. Lámparas encendidas y apagadas como abajo</translation>
    </message>
    <message>
        <source>All %1 animals are there and well. Lamps on and off as below</source>
        <translation>Los %1 animales están y se encuentran bien. Lámparas encendidas y apagadas como abajo</translation>
    </message>
    <message>
        <source>Thermometers read what the table says</source>
        <translation>Los termómetros marcan lo que dice la tabla</translation>
    </message>
    <message>
        <source>Mist, or see that the mister did: %1 a day</source>
        <translation>Nebulizar, o ver que lo hizo el nebulizador: %1 al día</translation>
    </message>
    <message>
        <source>Food as portioned; the rest out the same day</source>
        <translation>Comida en raciones preparadas; los restos, fuera el mismo día</translation>
    </message>
    <message>
        <source>Droppings out, doors locked, hands washed</source>
        <translation>Heces fuera, puertas con seguro, manos lavadas</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>Lu</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>Ma</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>Ju</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>Vi</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>Sá</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Do</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Alimentación</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>Which days</source>
        <translation>Qué días</translation>
    </message>
    <message>
        <source>Where food and spare lamps lie</source>
        <translation>Dónde están la comida y las lámparas de repuesto</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Termómetro</translation>
    </message>
    <message>
        <source>By day</source>
        <translation>De día</translation>
    </message>
    <message>
        <source>At night</source>
        <translation>De noche</translation>
    </message>
    <message>
        <source>lamps on %1, off %2</source>
        <translation>lámparas encendidas a las %1, apagadas a las %2</translation>
    </message>
    <message>
        <source>%1: thermostat at %2</source>
        <translation>%1: termostato a %2</translation>
    </message>
    <message>
        <source>%1: dimmer at %2</source>
        <translation>%1: atenuador al %2</translation>
    </message>
    <message>
        <source>Set, and not to be turned: %1.</source>
        <translation>Ajustado, y no se toca: %1.</translation>
    </message>
    <message>
        <source>%1, room at %2</source>
        <translation>%1, habitación a %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Safe for how many hours: not known, ask the keeper</source>
        <translation>Cuántas horas sin peligro: no se sabe, preguntar al cuidador</translation>
    </message>
    <message>
        <source>When something fails</source>
        <translation>Cuando algo falla</translation>
    </message>
    <message>
        <source>Keep it shut, lamps and heaters off at the plug, blankets round the box; off with them before the power comes on. Bottles of warm water in cloth at one side. Never a flame.</source>
        <translation>Tenerlo cerrado, con lámparas y calefactores desenchufados y mantas alrededor del recinto; quitarlas antes de que vuelva la luz. Botellas de agua templada envueltas en tela, a un lado. Nunca una llama.</translation>
    </message>
    <message>
        <source>Plug out, let it cool, put in the spare of the same kind and power. No spare: a warm room.</source>
        <translation>Desenchufar, dejar enfriar y poner la de repuesto, de la misma clase y potencia. Si no hay repuesto: una habitación caliente.</translation>
    </message>
    <message>
        <source>Too hot, smoke, or something trips: plug out, open up, call the keeper. Don&apos;t reach into wet wiring.</source>
        <translation>Demasiado calor, humo o algo que salta: desenchufar, abrir y llamar al cuidador. No meter la mano en cables mojados.</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>A quién llamar</translation>
    </message>
    <message>
        <source>A vet at once: gaping or bubbling breath, bleeding, burns, something hanging out behind, tremor, limp, a fall. Within a day: swollen eyes, watery droppings for two days, not eating or moving as the keeper said. Don&apos;t treat it yourself.</source>
        <translation>Un veterinario de inmediato: respiración con la boca abierta o con burbujas, hemorragia, quemaduras, algo que asoma por detrás, temblores, cojera, una caída. En el plazo de un día: ojos hinchados, heces líquidas durante dos días, no comer o no moverse como dijo el cuidador. No tratarlo por cuenta propia.</translation>
    </message>
    <message>
        <source>Keeper; back on</source>
        <translation>Cuidador; vuelve el</translation>
    </message>
    <message>
        <source>Reptile vet</source>
        <translation>Veterinario de reptiles</translation>
    </message>
    <message>
        <source>Vet at night</source>
        <translation>Veterinario de noche</translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation>Otra persona</translation>
    </message>
    <message>
        <source>Day, time</source>
        <translation>Día, hora</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Target by day</source>
        <translation>Valor objetivo de día</translation>
    </message>
    <message>
        <source>Target at night</source>
        <translation>Valor objetivo de noche</translation>
    </message>
    <message>
        <source>Expected: winter day</source>
        <translation>Previsto: día de invierno</translation>
    </message>
    <message>
        <source>… winter night</source>
        <translation>… noche de invierno</translation>
    </message>
    <message>
        <source>… summer day</source>
        <translation>… día de verano</translation>
    </message>
    <message>
        <source>Day %1, morning</source>
        <translation>Día %1, mañana</translation>
    </message>
    <message>
        <source>Day %1, afternoon</source>
        <translation>Día %1, tarde</translation>
    </message>
    <message>
        <source>Day %1, night</source>
        <translation>Día %1, noche</translation>
    </message>
    <message>
        <source>Run it as it will be kept, empty, for seven days at least; no animal moves in before all readings have been in their targets for so long. Read three times a day. Morning: two hours after the lamps come on. Afternoon: an hour before they go off. Night: the lowest since, from a thermometer with a memory. The basking spot is read at its surface with an infrared thermometer, the other places in the shade at ground level.</source>
        <translation>Tenerlo en marcha tal como se va a mantener, vacío, durante al menos siete días; no entra ningún animal hasta que todas las lecturas hayan estado ese tiempo en su valor objetivo. Leer tres veces al día. Mañana: dos horas después de encenderse las lámparas. Tarde: una hora antes de que se apaguen. Noche: la mínima desde entonces, de un termómetro con memoria. La zona de asoleo se mide en su superficie con un termómetro infrarrojo; los demás lugares, a la sombra y a ras de suelo.</translation>
    </message>
    <message>
        <source>“Expected” is what was worked out for this plan, as a range that should hold nine times in ten. A reading outside it is worth a second look even where the target is met.</source>
        <translation>«Previsto» es lo que se ha calculado para este plan, como un intervalo que debería acertar nueve de cada diez veces. Una lectura fuera de él merece una segunda mirada, aunque se cumpla el valor objetivo.</translation>
    </message>
    <message>
        <source>Begun on; thermometers compared with each other on</source>
        <translation>Empezado el; termómetros comparados entre sí el</translation>
    </message>
    <message>
        <source>It settles slowly: readings count from the second day.</source>
        <translation>Tarda en estabilizarse: las lecturas cuentan a partir del segundo día.</translation>
    </message>
    <message>
        <source>Warm and cool side come within %1 of where they settle about %2 after switching on.</source>
        <translation>El lado cálido y el fresco llegan a menos de %1 de su valor estable unos %2 después de encender.</translation>
    </message>
    <message>
        <source>Log: %1</source>
        <translation>Registro: %1</translation>
    </message>
    <message>
        <source>Lamps are on from %1 to %2.</source>
        <translation>Las lámparas están encendidas de %1 a %2.</translation>
    </message>
    <message>
        <source>UV index at the back of a basking animal, target %1, by meter</source>
        <translation>Índice UV en el dorso de un animal que se asolea, valor objetivo %1, con medidor</translation>
    </message>
    <message>
        <source>%1 comes to harm over %2. Where every place of the box may get so warm, switch the heat off, and no animal moves in.</source>
        <translation>%1: sufre daños por encima de %2. Si todos los lugares del recinto pueden alcanzar esa temperatura, apagar el calor, y no entra ningún animal.</translation>
    </message>
    <message>
        <source>When a reading is out of its target</source>
        <translation>Cuando una lectura no está en su valor objetivo</translation>
    </message>
    <message>
        <source>Change one thing at a time, wait until it has settled, and begin the seven days anew. Write the readings into the plan (chapter “Readings”): the program then says anew what to expect.</source>
        <translation>Cambiar una sola cosa cada vez, esperar a que se estabilice y empezar de nuevo los siete días. Anotar las lecturas en el plan (capítulo «Lecturas»): el programa vuelve a decir entonces qué cabe esperar.</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Too high</source>
        <translation>Demasiado alta</translation>
    </message>
    <message>
        <source>Too low</source>
        <translation>Demasiado baja</translation>
    </message>
    <message>
        <source>Basking spot</source>
        <translation>Zona de asoleo</translation>
    </message>
    <message>
        <source>Lamp higher, dimmed, or of less power.</source>
        <translation>Lámpara más alta, atenuada o de menos potencia.</translation>
    </message>
    <message>
        <source>Lamp lower, never within its clearance; or of more power, if its holder bears it.</source>
        <translation>Lámpara más baja, nunca por debajo de su distancia de seguridad; o de más potencia, si el portalámparas la admite.</translation>
    </message>
    <message>
        <source>Warm side</source>
        <translation>Lado cálido</translation>
    </message>
    <message>
        <source>Set-point down by %1. Less cover.</source>
        <translation>Bajar la consigna %1. Menos cubierta.</translation>
    </message>
    <message>
        <source>Set-point up by %1; see that the probe lies where it should. More cover, clear of lamps.</source>
        <translation>Subir la consigna %1; ver que la sonda esté donde debe. Más cubierta, lejos de las lámparas.</translation>
    </message>
    <message>
        <source>Cool side</source>
        <translation>Lado fresco</translation>
    </message>
    <message>
        <source>Heat further to the warm end. Less cover there. A cooler room; shade from the sun.</source>
        <translation>El calor, más hacia el extremo cálido. Menos cubierta en el fresco. Una habitación más fresca; sombra contra el sol.</translation>
    </message>
    <message>
        <source>A warmer room, or heat on a thermostat nearer to it.</source>
        <translation>Una habitación más caliente, o calor con termostato más cerca de él.</translation>
    </message>
    <message>
        <source>Heat off or lower at night, unless the target asks for it.</source>
        <translation>Calor apagado o más bajo por la noche, salvo que el valor objetivo lo exija.</translation>
    </message>
    <message>
        <source>Heat without light, on a thermostat and always on.</source>
        <translation>Calor sin luz, con termostato y en toma permanente.</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Less misting, less cover, more air. Wet spots out of the bed.</source>
        <translation>Menos nebulización, menos cubierta, más aire. Retirar las partes mojadas del sustrato.</translation>
    </message>
    <message>
        <source>Damp the lower bed, mist, or cover more of the top, clear of lamps.</source>
        <translation>Humedecer el sustrato de abajo, nebulizar o cubrir más la tapa, lejos de las lámparas.</translation>
    </message>
    <message>
        <source>Lamp higher. No animal until it is in its target.</source>
        <translation>Lámpara más alta. Ningún animal hasta que esté en su valor objetivo.</translation>
    </message>
    <message>
        <source>Lamp lower within its clearance; a new one if it is worn out.</source>
        <translation>Lámpara más baja, respetando su distancia de seguridad; una nueva si está agotada.</translation>
    </message>
    <message>
        <source>Heaters that glow, smell, hum or trip the residual-current device: plug out, and ask an electrician. What to do is common practice, no source.</source>
        <translation>Calefactores que se ponen al rojo, huelen, zumban o hacen saltar el interruptor diferencial: desenchufar y consultar a un electricista. Lo que se aconseja es práctica habitual, sin fuente.</translation>
    </message>
    <message>
        <source>All in target for seven days, from – to</source>
        <translation>Todo en su valor objetivo durante siete días, del – al</translation>
    </message>
    <message>
        <source>Proved by: name, date, signature</source>
        <translation>Probado por: nombre, fecha, firma</translation>
    </message>
    <message>
        <source>Loamstead %1 · plan “%2”, version %3 · worked out on %4</source>
        <translation>Loamstead %1 · plan «%2», versión %3 · calculado el %4</translation>
    </message>
    <message>
        <source>Not stated yet: one input, listed on “%1”.</source>
        <translation>Sin indicar todavía: un dato, que figura en «%1».</translation>
    </message>
    <message>
        <source>Not stated yet: %1 inputs, listed on “%2”.</source>
        <translation>Sin indicar todavía: %1 datos, que figuran en «%2».</translation>
    </message>
    <message>
        <source>Paid: amount, date, by</source>
        <translation>Pagado: importe, fecha, por</translation>
    </message>
    <message>
        <source>Sign-off: name, date</source>
        <translation>Visto bueno: nombre, fecha</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Decision sheet</source>
        <translation>Hoja de decisión</translation>
    </message>
    <message>
        <source>Build sheet</source>
        <translation>Hoja de montaje</translation>
    </message>
    <message>
        <source>Proving sheet</source>
        <translation>Hoja de prueba</translation>
    </message>
    <message>
        <source>Holiday card</source>
        <translation>Tarjeta de vacaciones</translation>
    </message>
    <message>
        <source>On loan, to be given back, and so not to be bought: %1.</source>
        <translation>En préstamo, hay que devolverlo y por eso no se compra: %1.</translation>
    </message>
    <message>
        <source>At low prices %1, at high prices %2, with delivery, tax and what is set aside. Lines without a price are not in it.</source>
        <translation>A precios bajos, %1; a precios altos, %2, con envío, impuestos y lo reservado. Las líneas sin precio no están incluidas.</translation>
    </message>
    <message>
        <source>%1 smaller lines together</source>
        <translation>%1 partidas menores juntas</translation>
    </message>
    <message>
        <source>Taken as</source>
        <translation>Supuesto</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>Safety is not where to save: guards, heat-rated holders, thermostats, a residual-current device and a smoke alarm stay on the list.</source>
        <translation>En la seguridad no se ahorra: protectores, portalámparas resistentes al calor, termostatos, interruptor diferencial y detector de humo se quedan en la lista.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>%1 is “%2”</source>
        <translation>%1 es «%2»</translation>
    </message>
    <message>
        <source>In the column “For”, %1.</source>
        <translation>En la columna «Para»: %1.</translation>
    </message>
</context>
<context>
    <name>batch</name>
    <message>
        <source>The row has neither a name nor a number.</source>
        <translation>La fila no tiene ni nombre ni número.</translation>
    </message>
    <message>
        <source>This is longer than %1 characters.</source>
        <translation>Tiene más de %1 caracteres.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>“%1” is not one of %2.</source>
        <translation>«%1» no es una de estas opciones: %2.</translation>
    </message>
    <message>
        <source>“%1” is none of “metric”, “us” and “both”.</source>
        <translation>«%1» no es ni «metric», ni «us», ni «both».</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>The price list has no item “%1”.</source>
        <translation>La lista de precios no tiene ningún artículo «%1».</translation>
    </message>
    <message>
        <source>The price list has no item “%1”. Did you mean “%2”?</source>
        <translation>La lista de precios no tiene ningún artículo «%1». ¿Quería decir «%2»?</translation>
    </message>
    <message>
        <source>There is no sheet of a species “%1”.</source>
        <translation>No hay ficha de la especie «%1».</translation>
    </message>
    <message>
        <source>There is no sheet of a species “%1”. Did you mean “%2”?</source>
        <translation>No hay ficha de la especie «%1». ¿Quería decir «%2»?</translation>
    </message>
    <message>
        <source>date (there: %1)</source>
        <translation>fecha (allí: %1)</translation>
    </message>
    <message>
        <source>The folder “%1” can&apos;t be made.</source>
        <translation>No se puede crear la carpeta «%1».</translation>
    </message>
    <message>
        <source>“%1” holds sheets that were made with something else (%2). Nothing is written over: name another folder, or give what was given then.</source>
        <translation>«%1» contiene hojas hechas con otros datos (%2). No se sobrescribe nada: indique otra carpeta o los mismos datos que entonces.</translation>
    </message>
    <message>
        <source>“%1” holds other files. Name an empty folder or a new one.</source>
        <translation>«%1» contiene otros archivos. Indique una carpeta vacía o una nueva.</translation>
    </message>
    <message>
        <source>Another run works on “%1”. Wait for it; if there is none on any machine, remove “%2”.</source>
        <translation>Otra ejecución está trabajando en «%1». Espere a que acabe; si no hay ninguna en ningún equipo, elimine «%2».</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be written: %2.</source>
        <translation>«%1» no se puede escribir: %2.</translation>
    </message>
    <message>
        <source>The sheets of row %1 can&apos;t be written: %2.</source>
        <translation>No se pueden escribir las hojas de la fila %1: %2.</translation>
    </message>
    <message>
        <source>The column “%1” is missing.</source>
        <translation>Falta la columna «%1».</translation>
    </message>
    <message>
        <source>A quantity must be above 0.</source>
        <translation>Una cantidad debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>row %1, column %2: %3</source>
        <translation>fila %1, columna %2: %3</translation>
    </message>
    <message>
        <source>The column “%1” is not known and is passed over. Did you mean “%2”?</source>
        <translation>La columna «%1» no se conoce y se pasa por alto. ¿Quería decir «%2»?</translation>
    </message>
    <message>
        <source>The column “%1” is not known and is passed over.</source>
        <translation>La columna «%1» no se conoce y se pasa por alto.</translation>
    </message>
    <message>
        <source>The column “%1” stands there twice.</source>
        <translation>La columna «%1» figura dos veces.</translation>
    </message>
    <message>
        <source>The first row must name the columns, and there is neither “name” nor “number” among them.</source>
        <translation>La primera fila debe nombrar las columnas, y entre ellas no está ni «name» ni «number».</translation>
    </message>
    <message>
        <source>The list is empty.</source>
        <translation>La lista está vacía.</translation>
    </message>
    <message>
        <source>There are no rows below the header.</source>
        <translation>No hay filas debajo de la cabecera.</translation>
    </message>
    <message>
        <source>“%1” is not a number. Digits alone count, without a unit.</source>
        <translation>«%1» no es un número. Solo valen cifras, sin unidad.</translation>
    </message>
    <message>
        <source>“%1” has too many digits.</source>
        <translation>«%1» tiene demasiadas cifras.</translation>
    </message>
    <message>
        <source>“%1” can be read in two ways. Write it without a mark for thousands, or with another number of digits behind the decimal mark.</source>
        <translation>«%1» se puede leer de dos maneras. Escríbalo sin separador de millares o con otro número de decimales.</translation>
    </message>
    <message>
        <source>%1, for adopters: %2</source>
        <translation>%1, para adoptantes: %2</translation>
    </message>
    <message>
        <source>The template has no enclosure “%1”.</source>
        <translation>La plantilla no tiene ningún terrario «%1».</translation>
    </message>
    <message>
        <source>“%1” says the same. One of the two must be empty.</source>
        <translation>«%1» indica lo mismo. Una de las dos debe quedar vacía.</translation>
    </message>
    <message>
        <source>The template has several enclosures. Name one in the column “enclosure”.</source>
        <translation>La plantilla tiene varios terrarios. Indique uno en la columna «enclosure».</translation>
    </message>
    <message>
        <source>The template does not have one kind of animal here, so a number alone does not tell of which. Write as in “2 pantherophis-guttatus”.</source>
        <translation>Aquí la plantilla no tiene una sola clase de animal, así que un número por sí solo no dice de cuál. Escríbalo como en «2 pantherophis-guttatus».</translation>
    </message>
    <message>
        <source>“%1” is neither a number nor a list as in “1 python-regius + 2 pantherophis-guttatus”.</source>
        <translation>«%1» no es ni un número ni una lista como «1 python-regius + 2 pantherophis-guttatus».</translation>
    </message>
    <message>
        <source>Row %1 says something else than when its sheets were made. Ask for that row alone to make them again, or name another folder.</source>
        <translation>La fila %1 ya no dice lo mismo que cuando se hicieron sus hojas. Pida solo esa fila para rehacerlas, o indique otra carpeta.</translation>
    </message>
    <message>
        <source>Row %1 is not in the list, or has something wrong with it.</source>
        <translation>La fila %1 no está en la lista o contiene algún error.</translation>
    </message>
</context>
<context>
    <name>catalog</name>
    <message>
        <source>African spurred tortoise</source>
        <translation>Tortuga de espolones africana</translation>
    </message>
    <message>
        <source>Red-footed tortoise</source>
        <translation>Tortuga de patas rojas</translation>
    </message>
    <message>
        <source>Crested gecko</source>
        <translation>Gecko crestado</translation>
    </message>
    <message>
        <source>Green and black poison frog</source>
        <translation>Rana dardo verde y negra</translation>
    </message>
    <message>
        <source>Dyeing poison frog</source>
        <translation>Rana dardo tintorera</translation>
    </message>
    <message>
        <source>Leopard gecko</source>
        <translation>Gecko leopardo</translation>
    </message>
    <message>
        <source>Western hognose snake</source>
        <translation>Serpiente hocico de cerdo occidental</translation>
    </message>
    <message>
        <source>Common kingsnake</source>
        <translation>Serpiente rey común</translation>
    </message>
    <message>
        <source>White&apos;s tree frog</source>
        <translation>Rana arborícola de White</translation>
    </message>
    <message>
        <source>Corn snake</source>
        <translation>Serpiente del maizal</translation>
    </message>
    <message>
        <source>Central bearded dragon</source>
        <translation>Dragón barbudo central</translation>
    </message>
    <message>
        <source>Royal python</source>
        <translation>Pitón real</translation>
    </message>
    <message>
        <source>Leopard tortoise</source>
        <translation>Tortuga leopardo</translation>
    </message>
    <message>
        <source>Eastern box turtle</source>
        <translation>Tortuga de caja oriental</translation>
    </message>
    <message>
        <source>Three-toed box turtle</source>
        <translation>Tortuga de caja de tres dedos</translation>
    </message>
    <message>
        <source>Ornate box turtle</source>
        <translation>Tortuga de caja adornada</translation>
    </message>
    <message>
        <source>Spur-thighed tortoise</source>
        <translation>Tortuga mora</translation>
    </message>
    <message>
        <source>Hermann&apos;s tortoise</source>
        <translation>Tortuga mediterránea</translation>
    </message>
    <message>
        <source>Horsfield&apos;s tortoise</source>
        <translation>Tortuga rusa</translation>
    </message>
    <message>
        <source>Eastern blue-tongued skink</source>
        <translation>Escinco de lengua azul oriental</translation>
    </message>
    <message>
        <source>Glass pane as a cover or top</source>
        <translation>Panel de vidrio como cubierta o tapa</translation>
    </message>
    <message>
        <source>Acrylic sheet (PMMA)</source>
        <translation>Plancha acrílica (PMMA)</translation>
    </message>
    <message>
        <source>Cotton towel</source>
        <translation>Toalla de algodón</translation>
    </message>
    <message>
        <source>Aluminium foil</source>
        <translation>Papel de aluminio</translation>
    </message>
    <message>
        <source>Fibreboard cover or top</source>
        <translation>Cubierta o tapa de tablero de fibras</translation>
    </message>
    <message>
        <source>Float glass</source>
        <translation>Vidrio flotado</translation>
    </message>
    <message>
        <source>Foamed PVC sheet</source>
        <translation>Plancha de PVC espumado</translation>
    </message>
    <message>
        <source>Plywood</source>
        <translation>Contrachapado</translation>
    </message>
    <message>
        <source>Melamine-faced particleboard</source>
        <translation>Aglomerado melaminizado</translation>
    </message>
    <message>
        <source>Fine coir</source>
        <translation>Fibra de coco fina</translation>
    </message>
    <message>
        <source>Coir chips</source>
        <translation>Chips de coco</translation>
    </message>
    <message>
        <source>Topsoil without fertiliser</source>
        <translation>Tierra vegetal sin abono</translation>
    </message>
    <message>
        <source>Play sand</source>
        <translation>Arena de juego</translation>
    </message>
    <message>
        <source>Peat</source>
        <translation>Turba</translation>
    </message>
    <message>
        <source>Bark chips</source>
        <translation>Corteza troceada</translation>
    </message>
    <message>
        <source>Sphagnum moss</source>
        <translation>Musgo esfagno</translation>
    </message>
    <message>
        <source>Expanded clay pebbles (drainage layer)</source>
        <translation>Arcilla expandida (capa de drenaje)</translation>
    </message>
    <message>
        <source>Extruded polystyrene board</source>
        <translation>Plancha de poliestireno extruido</translation>
    </message>
    <message>
        <source>Cork underlay</source>
        <translation>Base de corcho</translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two</source>
        <translation>Suelo de 8 por 4 longitudes de caparazón para dos</translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, red-foot</source>
        <translation>Suelo de 8 por 4 longitudes de caparazón para dos, tortuga de patas rojas</translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, taken for large tortoises by analogy</source>
        <translation>Suelo de 8 por 4 longitudes de caparazón para dos, aplicado por analogía a tortugas de tierra grandes</translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, box turtle taken as a tortoise</source>
        <translation>Suelo de 8 por 4 longitudes de caparazón para dos, tortuga de caja tratada como tortuga de tierra</translation>
    </message>
    <message>
        <source>Floor 5 by 2.5 shell lengths for two, box turtles</source>
        <translation>Suelo de 5 por 2,5 longitudes de caparazón para dos, tortugas de caja</translation>
    </message>
    <message>
        <source>Floor 5 by 5 shell lengths</source>
        <translation>Suelo de 5 por 5 longitudes de caparazón</translation>
    </message>
    <message>
        <source>Floor 5 by 5 shell lengths, box turtle taken as a tortoise</source>
        <translation>Suelo de 5 por 5 longitudes de caparazón, tortuga de caja tratada como tortuga de tierra</translation>
    </message>
    <message>
        <source>Floor 5 by 3 shell lengths</source>
        <translation>Suelo de 5 por 3 longitudes de caparazón</translation>
    </message>
    <message>
        <source>Fixed floor for small land tortoises (superseded)</source>
        <translation>Suelo fijo para tortugas de tierra pequeñas (regla sustituida)</translation>
    </message>
    <message>
        <source>Fixed floor for medium land tortoises (superseded)</source>
        <translation>Suelo fijo para tortugas de tierra medianas (regla sustituida)</translation>
    </message>
    <message>
        <source>Fixed floor for large land tortoises (superseded)</source>
        <translation>Suelo fijo para tortugas de tierra grandes (regla sustituida)</translation>
    </message>
    <message>
        <source>Fixed floor for giant tortoises (superseded)</source>
        <translation>Suelo fijo para tortugas de tierra gigantes (regla sustituida)</translation>
    </message>
    <message>
        <source>Floor by shell length, Egyptian tortoise</source>
        <translation>Suelo según longitud del caparazón, tortuga egipcia</translation>
    </message>
    <message>
        <source>Fixed floor for two, African spurred tortoise</source>
        <translation>Suelo fijo para dos, tortuga de espolones africana</translation>
    </message>
    <message>
        <source>Fixed floor for two, giant tortoises</source>
        <translation>Suelo fijo para dos, tortugas gigantes</translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, veterinary column</source>
        <translation>Suelo de 8 por 4 longitudes de caparazón para dos, columna veterinaria</translation>
    </message>
    <message>
        <source>Floor about 8 by 4 shell lengths, European tortoises</source>
        <translation>Suelo de unas 8 por 4 longitudes de caparazón, tortugas de tierra europeas</translation>
    </message>
    <message>
        <source>Indoor floor 36 by 24 in for one box turtle</source>
        <translation>Suelo interior de 36 por 24 in para una tortuga de caja</translation>
    </message>
    <message>
        <source>Indoor floor 36 by 12 in for a box turtle</source>
        <translation>Suelo interior de 36 por 12 in para una tortuga de caja</translation>
    </message>
    <message>
        <source>Floor 4 by 2 ft for a Horsfield tortoise</source>
        <translation>Suelo de 4 por 2 ft para una tortuga rusa</translation>
    </message>
    <message>
        <source>Floor 5 by 3 ft for a Horsfield tortoise</source>
        <translation>Suelo de 5 por 3 ft para una tortuga rusa</translation>
    </message>
    <message>
        <source>Floor 6 by 6 ft for an adult red-foot</source>
        <translation>Suelo de 6 por 6 ft para una tortuga de patas rojas adulta</translation>
    </message>
    <message>
        <source>Laboratory floor by body length, climbing frogs</source>
        <translation>Suelo de laboratorio según longitud del cuerpo, ranas trepadoras</translation>
    </message>
    <message>
        <source>Laboratory floor by body length, semi-terrestrial frogs</source>
        <translation>Suelo de laboratorio según longitud del cuerpo, ranas semiterrestres</translation>
    </message>
    <message>
        <source>Laboratory floor by body length, dart frogs by analogy</source>
        <translation>Suelo de laboratorio según longitud del cuerpo, ranas dardo por analogía</translation>
    </message>
    <message>
        <source>Box 50 by 50 by 50 cm for about five average dart frogs</source>
        <translation>Recinto de 50 por 50 por 50 cm para unas cinco ranas dardo medianas</translation>
    </message>
    <message>
        <source>Box 50 by 50 by 50 cm for two large dart frogs</source>
        <translation>Recinto de 50 por 50 por 50 cm para dos ranas dardo grandes</translation>
    </message>
    <message>
        <source>Box 45 by 45 by 60 cm for an adult White&apos;s tree frog</source>
        <translation>Recinto de 45 por 45 por 60 cm para una rana arborícola de White adulta</translation>
    </message>
    <message>
        <source>Floor 4 by 3 body lengths (snout to vent) for a pair, leopard gecko</source>
        <translation>Suelo de 4 por 3 longitudes corporales (hocico-cloaca) para una pareja, gecko leopardo</translation>
    </message>
    <message>
        <source>Floor 5 by 4 body lengths (snout to vent) for a pair, bearded dragon</source>
        <translation>Suelo de 5 por 4 longitudes corporales (hocico-cloaca) para una pareja, dragón barbudo</translation>
    </message>
    <message>
        <source>Fixed floor and height for two, bearded dragons</source>
        <translation>Suelo y altura fijos para dos, dragones barbudos</translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, ground lizards</source>
        <translation>Suelo de 3 por 2 longitudes totales, lagartos terrestres</translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, climbing lizards</source>
        <translation>Suelo de 3 por 2 longitudes totales, lagartos trepadores</translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, height 1.5, ground lizards</source>
        <translation>Suelo de 3 por 2 longitudes totales, altura 1,5, lagartos terrestres</translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, height 3, climbing lizards</source>
        <translation>Suelo de 3 por 2 longitudes totales, altura 3, lagartos trepadores</translation>
    </message>
    <message>
        <source>Fixed floor for an adult bearded dragon, +50 % for the second</source>
        <translation>Suelo fijo para un dragón barbudo adulto, +50 % por el segundo</translation>
    </message>
    <message>
        <source>Box 120 by 60 by 60 cm for one adult bearded dragon</source>
        <translation>Recinto de 120 por 60 por 60 cm para un dragón barbudo adulto</translation>
    </message>
    <message>
        <source>Box 60 by 30 by 40 cm for one leopard gecko</source>
        <translation>Recinto de 60 por 30 por 40 cm para un gecko leopardo</translation>
    </message>
    <message>
        <source>Box 90 by 40 by 40 cm for a leopard gecko</source>
        <translation>Recinto de 90 por 40 por 40 cm para un gecko leopardo</translation>
    </message>
    <message>
        <source>Box 30 by 18 by 24 in for a leopard gecko</source>
        <translation>Recinto de 30 por 18 por 24 in para un gecko leopardo</translation>
    </message>
    <message>
        <source>Box 45 by 45 by 60 cm for one crested gecko</source>
        <translation>Recinto de 45 por 45 por 60 cm para un gecko crestado</translation>
    </message>
    <message>
        <source>Box 12 by 12 by 18 in for a crested gecko (older advice)</source>
        <translation>Recinto de 12 por 12 por 18 in para un gecko crestado (consejo antiguo)</translation>
    </message>
    <message>
        <source>Floor 120 by 60 cm for a blue-tongue</source>
        <translation>Suelo de 120 por 60 cm para un escinco de lengua azul</translation>
    </message>
    <message>
        <source>Length 1, width 0.5 of the total length, ground snakes</source>
        <translation>Largo 1, ancho 0,5 de la longitud total, serpientes terrestres</translation>
    </message>
    <message>
        <source>Length 1, width 0.5, height 1 of the total length, corn snake</source>
        <translation>Largo 1, ancho 0,5, alto 1 de la longitud total, serpiente del maizal</translation>
    </message>
    <message>
        <source>Length 1, width 0.5, height 0.75 of the total length, royal python</source>
        <translation>Largo 1, ancho 0,5, alto 0,75 de la longitud total, pitón real</translation>
    </message>
    <message>
        <source>Length 1, width and height a third of the total length, royal python</source>
        <translation>Largo 1, ancho y alto un tercio de la longitud total, pitón real</translation>
    </message>
    <message>
        <source>Length 1, width and height a third of the total length, by analogy</source>
        <translation>Largo 1, ancho y alto un tercio de la longitud total, por analogía</translation>
    </message>
    <message>
        <source>Length 3/4, width 1/3 of the total length, ground snakes</source>
        <translation>Largo 3/4, ancho 1/3 de la longitud total, serpientes terrestres</translation>
    </message>
    <message>
        <source>Length 3/4, width 1/3, height 1 of the total length, climbing snakes</source>
        <translation>Largo 3/4, ancho 1/3, alto 1 de la longitud total, serpientes trepadoras</translation>
    </message>
    <message>
        <source>Length 1, width 2/3 of the total length, ground snakes</source>
        <translation>Largo 1, ancho 2/3 de la longitud total, serpientes terrestres</translation>
    </message>
    <message>
        <source>Length 1, width 2/3, height 1 of the total length, climbing snakes</source>
        <translation>Largo 1, ancho 2/3, alto 1 de la longitud total, serpientes trepadoras</translation>
    </message>
    <message>
        <source>Length 0.70, width 0.40 of the total length, small ground pythons</source>
        <translation>Largo 0,70, ancho 0,40 de la longitud total, pitones terrestres pequeñas</translation>
    </message>
    <message>
        <source>Length 1, width 0.5 of the total length, ground boas</source>
        <translation>Largo 1, ancho 0,5 de la longitud total, boas terrestres</translation>
    </message>
    <message>
        <source>Length 0.75, width 0.3 of the total length, colubrids</source>
        <translation>Largo 0,75, ancho 0,3 de la longitud total, colúbridos</translation>
    </message>
    <message>
        <source>Floor by total length, ground snakes to 2.5 m</source>
        <translation>Suelo según longitud total, serpientes terrestres hasta 2,5 m</translation>
    </message>
    <message>
        <source>Floor by total length, royal python</source>
        <translation>Suelo según longitud total, pitón real</translation>
    </message>
    <message>
        <source>Floor by total length, corn snake</source>
        <translation>Suelo según longitud total, serpiente del maizal</translation>
    </message>
    <message>
        <source>Floor by total length, climbing snakes to 2.5 m</source>
        <translation>Suelo según longitud total, serpientes trepadoras hasta 2,5 m</translation>
    </message>
    <message>
        <source>Laboratory floor by total length, snakes</source>
        <translation>Suelo de laboratorio según longitud total, serpientes</translation>
    </message>
    <message>
        <source>Fixed floor for an adult jungle carpet python, +50 % for the second</source>
        <translation>Suelo fijo para una pitón alfombra de selva adulta, +50 % por la segunda</translation>
    </message>
    <message>
        <source>Illustrative prices, invented from memory, not offers</source>
        <translation>Precios ilustrativos, inventados de memoria, no ofertas</translation>
    </message>
    <message>
        <source>Glass enclosure, floor up to 0.27 m²</source>
        <translation>Recinto de vidrio, suelo hasta 0,27 m²</translation>
    </message>
    <message>
        <source>Glass enclosure, floor 0.28 to 0.41 m²</source>
        <translation>Recinto de vidrio, suelo de 0,28 a 0,41 m²</translation>
    </message>
    <message>
        <source>Glass enclosure, floor 0.41 to 0.73 m²</source>
        <translation>Recinto de vidrio, suelo de 0,41 a 0,73 m²</translation>
    </message>
    <message>
        <source>Glass enclosure, floor 0.73 to 1.1 m²</source>
        <translation>Recinto de vidrio, suelo de 0,73 a 1,1 m²</translation>
    </message>
    <message>
        <source>Wooden enclosure, floor up to 0.41 m²</source>
        <translation>Recinto de madera, suelo hasta 0,41 m²</translation>
    </message>
    <message>
        <source>Wooden enclosure, floor 0.41 to 0.73 m²</source>
        <translation>Recinto de madera, suelo de 0,41 a 0,73 m²</translation>
    </message>
    <message>
        <source>Wooden enclosure, floor 0.73 to 1.1 m²</source>
        <translation>Recinto de madera, suelo de 0,73 a 1,1 m²</translation>
    </message>
    <message>
        <source>Wooden enclosure table, floor 1.1 to 2.9 m²</source>
        <translation>Mesa de madera para terrario, suelo de 1,1 a 2,9 m²</translation>
    </message>
    <message>
        <source>Plastic enclosure, floor up to 0.41 m²</source>
        <translation>Recinto de plástico, suelo hasta 0,41 m²</translation>
    </message>
    <message>
        <source>Plastic enclosure, floor 0.41 to 0.73 m²</source>
        <translation>Recinto de plástico, suelo de 0,41 a 0,73 m²</translation>
    </message>
    <message>
        <source>Plastic enclosure, floor 0.73 to 1.1 m²</source>
        <translation>Recinto de plástico, suelo de 0,73 a 1,1 m²</translation>
    </message>
    <message>
        <source>Stand for a floor up to 0.41 m²</source>
        <translation>Mueble para un suelo de hasta 0,41 m²</translation>
    </message>
    <message>
        <source>Stand for a floor of 0.41 to 0.73 m²</source>
        <translation>Mueble para un suelo de 0,41 a 0,73 m²</translation>
    </message>
    <message>
        <source>Stand for a floor of 0.73 to 1.1 m²</source>
        <translation>Mueble para un suelo de 0,73 a 1,1 m²</translation>
    </message>
    <message>
        <source>Halogen reflector flood, up to 60 W</source>
        <translation>Foco reflector halógeno, hasta 60 W</translation>
    </message>
    <message>
        <source>Halogen reflector flood, 61 to 100 W</source>
        <translation>Foco reflector halógeno, de 61 a 100 W</translation>
    </message>
    <message>
        <source>Reflector flood, 101 to 160 W</source>
        <translation>Foco reflector, de 101 a 160 W</translation>
    </message>
    <message>
        <source>Ceramic heater, up to 100 W</source>
        <translation>Emisor cerámico, hasta 100 W</translation>
    </message>
    <message>
        <source>Ceramic heater, 101 to 250 W</source>
        <translation>Emisor cerámico, de 101 a 250 W</translation>
    </message>
    <message>
        <source>Radiant heat panel, up to 60 W</source>
        <translation>Panel radiante, hasta 60 W</translation>
    </message>
    <message>
        <source>Radiant heat panel, 61 to 150 W</source>
        <translation>Panel radiante, de 61 a 150 W</translation>
    </message>
    <message>
        <source>Heat mat, up to 12 W</source>
        <translation>Manta térmica, hasta 12 W</translation>
    </message>
    <message>
        <source>Heat mat, 13 to 25 W</source>
        <translation>Manta térmica, de 13 a 25 W</translation>
    </message>
    <message>
        <source>Heat mat, 26 to 60 W</source>
        <translation>Manta térmica, de 26 a 60 W</translation>
    </message>
    <message>
        <source>UV-B tube, up to 24 W</source>
        <translation>Tubo UV-B, hasta 24 W</translation>
    </message>
    <message>
        <source>UV-B tube, 25 to 80 W</source>
        <translation>Tubo UV-B, de 25 a 80 W</translation>
    </message>
    <message>
        <source>Compact UV-B lamp</source>
        <translation>Lámpara UV-B compacta</translation>
    </message>
    <message>
        <source>Mercury vapour UV lamp, self-ballasted</source>
        <translation>Lámpara UV de vapor de mercurio, con balasto incorporado</translation>
    </message>
    <message>
        <source>Metal halide UV lamp</source>
        <translation>Lámpara UV de halogenuros metálicos</translation>
    </message>
    <message>
        <source>LED light strip</source>
        <translation>Tira de luz LED</translation>
    </message>
    <message>
        <source>Fixture for a UV-B tube up to 24 W</source>
        <translation>Luminaria para tubo UV-B de hasta 24 W</translation>
    </message>
    <message>
        <source>Fixture for a UV-B tube of 25 to 80 W</source>
        <translation>Luminaria para tubo UV-B de 25 a 80 W</translation>
    </message>
    <message>
        <source>Ballast for a metal halide lamp</source>
        <translation>Balasto para lámpara de halogenuros metálicos</translation>
    </message>
    <message>
        <source>Ceramic lamp holder with dome, up to 100 W</source>
        <translation>Portalámparas cerámico con campana, hasta 100 W</translation>
    </message>
    <message>
        <source>Ceramic lamp holder with dome, up to 250 W</source>
        <translation>Portalámparas cerámico con campana, hasta 250 W</translation>
    </message>
    <message>
        <source>Wire guard for a lamp or heater</source>
        <translation>Protector de alambre para lámpara o calefactor</translation>
    </message>
    <message>
        <source>Plug-in dimmer for resistive loads, up to 300 W</source>
        <translation>Atenuador enchufable para cargas resistivas, hasta 300 W</translation>
    </message>
    <message>
        <source>Thermostat, on and off, up to 600 W</source>
        <translation>Termostato, de encendido y apagado, hasta 600 W</translation>
    </message>
    <message>
        <source>Thermostat, on and off, 600 to 1500 W</source>
        <translation>Termostato, de encendido y apagado, de 600 a 1500 W</translation>
    </message>
    <message>
        <source>Dimming or pulse thermostat, up to 600 W</source>
        <translation>Termostato de atenuación o de impulsos, hasta 600 W</translation>
    </message>
    <message>
        <source>Plug-in timer</source>
        <translation>Temporizador enchufable</translation>
    </message>
    <message>
        <source>Outlet strip, up to 4 outlets</source>
        <translation>Regleta, hasta 4 tomas</translation>
    </message>
    <message>
        <source>Outlet strip, 5 to 6 outlets</source>
        <translation>Regleta, de 5 a 6 tomas</translation>
    </message>
    <message>
        <source>Outlet strip, 7 to 12 outlets, switched apart</source>
        <translation>Regleta, de 7 a 12 tomas, con interruptores separados</translation>
    </message>
    <message>
        <source>Plug-in residual current adapter</source>
        <translation>Adaptador diferencial enchufable</translation>
    </message>
    <message>
        <source>Pump mister with nozzles</source>
        <translation>Nebulizador con bomba y boquillas</translation>
    </message>
    <message>
        <source>Small ventilator</source>
        <translation>Ventilador pequeño</translation>
    </message>
    <message>
        <source>Filter cartridge or set of filters</source>
        <translation>Cartucho de filtro o juego de filtros</translation>
    </message>
    <message>
        <source>Liquid water conditioner</source>
        <translation>Acondicionador de agua líquido</translation>
    </message>
    <message>
        <source>Digital thermometer with probe</source>
        <translation>Termómetro digital con sonda</translation>
    </message>
    <message>
        <source>Digital hygrometer</source>
        <translation>Higrómetro digital</translation>
    </message>
    <message>
        <source>Infrared thermometer</source>
        <translation>Termómetro infrarrojo</translation>
    </message>
    <message>
        <source>Kitchen scale, 1 g</source>
        <translation>Báscula de cocina, 1 g</translation>
    </message>
    <message>
        <source>UV index meter</source>
        <translation>medidor de índice UV</translation>
    </message>
    <message>
        <source>Fine coir, compressed</source>
        <translation>Fibra de coco fina, comprimida</translation>
    </message>
    <message>
        <source>Coir chips, compressed</source>
        <translation>Chips de coco, comprimidos</translation>
    </message>
    <message>
        <source>Washed play sand</source>
        <translation>Arena de juego lavada</translation>
    </message>
    <message>
        <source>Peat without fertiliser</source>
        <translation>Turba sin abono</translation>
    </message>
    <message>
        <source>Expanded clay pebbles</source>
        <translation>Arcilla expandida</translation>
    </message>
    <message>
        <source>Glass cover pane, cut to size</source>
        <translation>Panel de vidrio para cubierta, cortado a medida</translation>
    </message>
    <message>
        <source>Acrylic cover sheet</source>
        <translation>Plancha acrílica para cubierta</translation>
    </message>
    <message>
        <source>Fibreboard cover, cut to size</source>
        <translation>Cubierta de tablero de fibras, cortada a medida</translation>
    </message>
    <message>
        <source>Water bowl</source>
        <translation>Bebedero</translation>
    </message>
    <message>
        <source>Hide</source>
        <translation>Refugio</translation>
    </message>
    <message>
        <source>Lidded box for a humid hide</source>
        <translation>Caja con tapa para refugio húmedo</translation>
    </message>
    <message>
        <source>Flat rock</source>
        <translation>Piedra plana</translation>
    </message>
    <message>
        <source>Log or branch</source>
        <translation>Tronco o rama</translation>
    </message>
    <message>
        <source>Potted or artificial plant</source>
        <translation>Planta en maceta o artificial</translation>
    </message>
    <message>
        <source>Feeding dish or tile</source>
        <translation>Comedero o baldosa</translation>
    </message>
    <message>
        <source>Fresh greens and vegetables</source>
        <translation>Hojas verdes y verduras frescas</translation>
    </message>
    <message>
        <source>Feeder insects</source>
        <translation>Insectos de alimento</translation>
    </message>
    <message>
        <source>Frozen mice</source>
        <translation>Ratones congelados</translation>
    </message>
    <message>
        <source>Frozen rats</source>
        <translation>Ratas congeladas</translation>
    </message>
    <message>
        <source>Powdered fruit diet</source>
        <translation>Dieta de frutas en polvo</translation>
    </message>
    <message>
        <source>Culture of fruit flies</source>
        <translation>Cultivo de moscas de la fruta</translation>
    </message>
    <message>
        <source>Calcium and vitamin powder</source>
        <translation>Polvo de calcio y vitaminas</translation>
    </message>
    <message>
        <source>Disinfectant safe for animals, ready to use</source>
        <translation>Desinfectante seguro para animales, listo para usar</translation>
    </message>
    <message>
        <source>Disposable gloves</source>
        <translation>Guantes desechables</translation>
    </message>
    <message>
        <source>Plastic tub for quarantine</source>
        <translation>Caja de plástico para cuarentena</translation>
    </message>
    <message>
        <source>Veterinary check with faecal test</source>
        <translation>Revisión veterinaria con análisis de heces</translation>
    </message>
    <message>
        <source>Put aside for illness</source>
        <translation>Reserva para enfermedades</translation>
    </message>
    <message>
        <source>Adoption fee</source>
        <translation>Tasa de adopción</translation>
    </message>
    <message>
        <source>Permit or registration</source>
        <translation>Permiso o registro</translation>
    </message>
    <message>
        <source>one</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>par</translation>
    </message>
    <message>
        <source>bottle of 250 mL</source>
        <translation>botella de 250 mL</translation>
    </message>
    <message>
        <source>bottle of 500 mL</source>
        <translation>botella de 500 mL</translation>
    </message>
    <message>
        <source>brick of 650 g</source>
        <translation>ladrillo de 650 g</translation>
    </message>
    <message>
        <source>three bricks of 650 g</source>
        <translation>tres ladrillos de 650 g</translation>
    </message>
    <message>
        <source>block of 5 kg</source>
        <translation>bloque de 5 kg</translation>
    </message>
    <message>
        <source>block of 4.5 kg</source>
        <translation>bloque de 4,5 kg</translation>
    </message>
    <message>
        <source>bag of 24 liquid quarts, loose</source>
        <translation>bolsa de 24 cuartos líquidos (EE. UU.), suelto</translation>
    </message>
    <message>
        <source>bag of 72 liquid quarts, loose</source>
        <translation>bolsa de 72 cuartos líquidos (EE. UU.), suelto</translation>
    </message>
    <message>
        <source>bag of 25 L</source>
        <translation>bolsa de 25 L</translation>
    </message>
    <message>
        <source>bag of 40 L</source>
        <translation>bolsa de 40 L</translation>
    </message>
    <message>
        <source>bag of 50 lb (half a cubic foot)</source>
        <translation>bolsa de 50 lb (medio pie cúbico)</translation>
    </message>
    <message>
        <source>bag of 20 L</source>
        <translation>bolsa de 20 L</translation>
    </message>
    <message>
        <source>bag of 8 dry quarts</source>
        <translation>bolsa de 8 cuartos secos (EE. UU.)</translation>
    </message>
    <message>
        <source>bag of 24 dry quarts</source>
        <translation>bolsa de 24 cuartos secos (EE. UU.)</translation>
    </message>
    <message>
        <source>bag of 4 dry quarts, loosened</source>
        <translation>bolsa de 4 cuartos secos (EE. UU.), esponjado</translation>
    </message>
    <message>
        <source>pressed bale of 150 g, soaked and loosened</source>
        <translation>bala prensada de 150 g, remojada y esponjada</translation>
    </message>
    <message>
        <source>bag of 10 L</source>
        <translation>bolsa de 10 L</translation>
    </message>
    <message>
        <source>pane of 0.25 m²</source>
        <translation>panel de 0,25 m²</translation>
    </message>
    <message>
        <source>pane of 0.5 m²</source>
        <translation>panel de 0,5 m²</translation>
    </message>
    <message>
        <source>sheet of 0.25 m²</source>
        <translation>plancha de 0,25 m²</translation>
    </message>
    <message>
        <source>sheet of 0.5 m²</source>
        <translation>plancha de 0,5 m²</translation>
    </message>
    <message>
        <source>towel of 50 x 100 cm</source>
        <translation>toalla de 50 x 100 cm</translation>
    </message>
    <message>
        <source>roll of 30 cm x 10 m</source>
        <translation>rollo de 30 cm x 10 m</translation>
    </message>
    <message>
        <source>board of 0.5 m²</source>
        <translation>tablero de 0,5 m²</translation>
    </message>
    <message>
        <source>1 kg</source>
        <translation>1 kg</translation>
    </message>
    <message>
        <source>100 insects</source>
        <translation>100 insectos</translation>
    </message>
    <message>
        <source>500 insects</source>
        <translation>500 insectos</translation>
    </message>
    <message>
        <source>bag of 10</source>
        <translation>bolsa de 10</translation>
    </message>
    <message>
        <source>tub of 60 g</source>
        <translation>tarro de 60 g</translation>
    </message>
    <message>
        <source>tub of 230 g</source>
        <translation>tarro de 230 g</translation>
    </message>
    <message>
        <source>one culture</source>
        <translation>un cultivo</translation>
    </message>
    <message>
        <source>tub of 90 g</source>
        <translation>tarro de 90 g</translation>
    </message>
    <message>
        <source>bottle of 1 L</source>
        <translation>botella de 1 L</translation>
    </message>
    <message>
        <source>box of 100</source>
        <translation>caja de 100</translation>
    </message>
    <message>
        <source>one visit</source>
        <translation>una visita</translation>
    </message>
    <message>
        <source>one year</source>
        <translation>un año</translation>
    </message>
    <message>
        <source>one animal</source>
        <translation>un animal</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>inventado</translation>
    </message>
</context>
<context>
    <name>costs</name>
    <message>
        <source>electricity</source>
        <translation>electricidad</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
</context>
<context>
    <name>courses</name>
    <message>
        <source>All devices together draw %1 on such a day.</source>
        <translation>Todos los aparatos juntos consumen %1 en un día así.</translation>
    </message>
    <message>
        <source>All devices together draw %1 in these %2.</source>
        <translation>Todos los aparatos juntos consumen %1 en ese tiempo (%2).</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>While the lamps are on, %1 switches on every %2, for %3 each time: its probe swings from %4, the warm side from %5.</source>
        <translation>Con las lámparas encendidas, %1 se conecta cada %2, durante %3 cada vez: su sonda oscila de %4, el lado cálido de %5.</translation>
    </message>
    <message>
        <source>While the lamps are off, %1 switches on every %2, for %3 each time: its probe swings from %4, the warm side from %5.</source>
        <translation>Con las lámparas apagadas, %1 se conecta cada %2, durante %3 cada vez: su sonda oscila de %4, el lado cálido de %5.</translation>
    </message>
    <message>
        <source>That is if it switches, and %1 apart, which the plan does not say.</source>
        <translation>Eso, si funciona por conmutación y con una diferencia de %1, cosa que el plan no dice.</translation>
    </message>
    <message>
        <source>So often wears a switch out, and a lamp: one that dims or pulses suits better.</source>
        <translation>Con tanta frecuencia se desgastan un interruptor y una lámpara: conviene más uno que atenúe o dé pulsos.</translation>
    </message>
    <message>
        <source>Lowest while the lamps are off: cool side %1, warm side %2.</source>
        <translation>Mínima con las lámparas apagadas: lado fresco %1, lado cálido %2.</translation>
    </message>
    <message>
        <source>Highest: basking spot %1, warm side %2, cool side %3.</source>
        <translation>Máxima: zona de asoleo %1, lado cálido %2, lado fresco %3.</translation>
    </message>
    <message>
        <source>The day does not come to repeat itself: it ends up to %1 from where it began.</source>
        <translation>El día no llega a repetirse: termina hasta a %1 de donde empezó.</translation>
    </message>
    <message>
        <source>%1: within %2 of its final %3 %4.</source>
        <translation>%1: a menos de %2 de su valor final, %3, %4.</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>al cabo de %1</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>desde el principio</translation>
    </message>
    <message>
        <source>%1: has not settled after %2, when it is at %3.</source>
        <translation>%1: no se ha estabilizado al cabo de %2, cuando está a %3.</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 al cabo de %2</translation>
    </message>
    <message>
        <source>%1 at the beginning</source>
        <translation>%1 al principio</translation>
    </message>
    <message>
        <source>Humidity at ground level on the cool side, likely: lowest %1, highest %2.</source>
        <translation>Humedad a ras de suelo en el lado fresco, probable: mínima %1, máxima %2.</translation>
    </message>
    <message>
        <source>Misted at: %1.</source>
        <translation>Nebulización a: %1.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1: some place stays between %2 and %3, outside which it comes to harm, through these %4.</source>
        <translation>%1: algún lugar se mantiene entre %2 y %3, fuera de lo cual sufre daños, durante todo ese tiempo (%4).</translation>
    </message>
    <message>
        <source>Hottest surface, likely: %1. Hottest when digging: %2.</source>
        <translation>Superficie más caliente, probable: %1. Lo más caliente al excavar: %2.</translation>
    </message>
    <message>
        <source>Coldest floor, likely: %1.</source>
        <translation>Suelo más frío, probable: %1.</translation>
    </message>
    <message>
        <source>winter day</source>
        <translation>día de invierno</translation>
    </message>
    <message>
        <source>summer day</source>
        <translation>día de verano</translation>
    </message>
    <message>
        <source>warming up</source>
        <translation>calentamiento</translation>
    </message>
    <message>
        <source>covers forgotten</source>
        <translation>cubiertas olvidadas</translation>
    </message>
    <message>
        <source>The heat balance followed in time steps through days until one ends as it began; the room takes two hours to get from its night&apos;s temperature to its day&apos;s and back. The band is the range of the steady balance, laid about the likely course.</source>
        <translation>El balance de calor seguido paso a paso durante varios días, hasta que uno termina como empezó; la habitación tarda dos horas en pasar de su temperatura nocturna a la diurna y viceversa. La banda es el intervalo del balance estable, trazado en torno al curso probable.</translation>
    </message>
    <message>
        <source>The heat balance followed in time steps, with everything switched on in a box that is as warm as the room.</source>
        <translation>El balance de calor seguido paso a paso, con todo encendido en un recinto que está a la temperatura de la habitación.</translation>
    </message>
    <message>
        <source>The heat balance followed in time steps from the steady state before the fault. The earliest time is that of the unfavourable end of the range.</source>
        <translation>El balance de calor seguido paso a paso desde el estado estable anterior al fallo. El momento más temprano es el del extremo desfavorable del intervalo.</translation>
    </message>
    <message>
        <source>%1: some place stays below %2, above which it comes to harm, through these %3.</source>
        <translation>%1: algún lugar se mantiene por debajo de %2, por encima de lo cual sufre daños, durante todo ese tiempo (%3).</translation>
    </message>
    <message>
        <source>%1: some place stays above %2, below which it comes to harm, through these %3.</source>
        <translation>%1: algún lugar se mantiene por encima de %2, por debajo de lo cual sufre daños, durante todo ese tiempo (%3).</translation>
    </message>
    <message>
        <source>%1: even the coolest place may be over %2, where it comes to harm, %3</source>
        <translation>%1: hasta el lugar más fresco puede pasar de %2, donde sufre daños, %3</translation>
    </message>
    <message>
        <source>%1: even the warmest place may be under %2, where it comes to harm, %3</source>
        <translation>%1: hasta el lugar más cálido puede bajar de %2, donde sufre daños, %3</translation>
    </message>
    <message>
        <source>after %1 at the earliest</source>
        <translation>como muy pronto al cabo de %1</translation>
    </message>
    <message>
        <source>; likely not within these %1.</source>
        <translation>; no es probable en ese tiempo (%1).</translation>
    </message>
    <message>
        <source>; likely after %1.</source>
        <translation>; probablemente al cabo de %1.</translation>
    </message>
    <message>
        <source>; likely so from the beginning.</source>
        <translation>; probablemente ya desde el principio.</translation>
    </message>
    <message>
        <source>Not known: the balance of heat found no solution over these hours.</source>
        <translation>No se sabe: el balance de calor no tiene solución en esas horas.</translation>
    </message>
    <message>
        <source>It breaks off after %1: what follows is not known.</source>
        <translation>Se interrumpe al cabo de %1: lo que sigue no se sabe.</translation>
    </message>
</context>
<context>
    <name>dry_spells</name>
    <message>
        <source>Unwatered in winter</source>
        <translation>Sin regar en invierno</translation>
    </message>
    <message>
        <source>Unwatered in summer</source>
        <translation>Sin regar en verano</translation>
    </message>
    <message>
        <source>no least humidity on file to compare with</source>
        <translation>no consta una humedad mínima con la que comparar</translation>
    </message>
    <message>
        <source>under %1 by day from the beginning</source>
        <translation>por debajo de %1 de día desde el principio</translation>
    </message>
    <message>
        <source>likely holds %1 by day for %2 and more; under it after %3 at the earliest</source>
        <translation>probablemente mantiene %1 de día durante %2 o más; por debajo, como muy pronto al cabo de %3</translation>
    </message>
    <message>
        <source>holds %1 by day for %2 and more</source>
        <translation>mantiene %1 de día durante %2 o más</translation>
    </message>
    <message>
        <source>under %1 by day after %2 to more than %3 (likely %4)</source>
        <translation>por debajo de %1 de día al cabo de %2 a más de %3 (probable %4)</translation>
    </message>
    <message>
        <source>under %1 by day after %2</source>
        <translation>por debajo de %1 de día al cabo de %2</translation>
    </message>
    <message>
        <source>The steady day and night are worked out again step by step while the upper 10 cm of the bed lose their water, with nobody misting and the bowls kept filled. A bed gives off less once part of its water is gone (FAO Irrigation and Drainage Paper 56).</source>
        <translation>El día y la noche estables se calculan de nuevo paso a paso mientras los 10 cm superiores del sustrato pierden su agua, sin que nadie nebulice y con los bebederos llenos. Un sustrato desprende menos cuando ha perdido parte del agua (FAO, Estudio de riego y drenaje 56).</translation>
    </message>
</context>
<context>
    <name>files</name>
    <message>
        <source>“%1” is larger than %2, the most that is read. It is probably not the file you meant.</source>
        <translation>«%1» ocupa más de %2, el máximo que se lee. Probablemente no es el archivo que buscaba.</translation>
    </message>
    <message>
        <source>“%1” does not exist.</source>
        <translation>«%1» no existe.</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be read: %2.</source>
        <translation>«%1» no se puede leer: %2.</translation>
    </message>
    <message>
        <source>“%1” is a folder, not a file.</source>
        <translation>«%1» es una carpeta, no un archivo.</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be written: %2.</source>
        <translation>«%1» no se puede escribir: %2.</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>entrada estándar</translation>
    </message>
    <message>
        <source>The folder “%1” can&apos;t be made.</source>
        <translation>No se puede crear la carpeta «%1».</translation>
    </message>
    <message>
        <source>“%1” is not one of the lists kept here.</source>
        <translation>«%1» no es una de las listas que se guardan aquí.</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be deleted.</source>
        <translation>«%1» no se puede eliminar.</translation>
    </message>
</context>
<context>
    <name>labels</name>
    <message>
        <source>on a winter day</source>
        <translation>en un día de invierno</translation>
    </message>
    <message>
        <source>on a winter night</source>
        <translation>en una noche de invierno</translation>
    </message>
    <message>
        <source>on a summer day</source>
        <translation>en un día de verano</translation>
    </message>
    <message>
        <source>on a summer night</source>
        <translation>en una noche de verano</translation>
    </message>
    <message>
        <source>in a heat wave</source>
        <translation>en una ola de calor</translation>
    </message>
    <message>
        <source>in a power cut</source>
        <translation>en un corte de luz</translation>
    </message>
    <message>
        <source>with the lamp burnt out</source>
        <translation>con la lámpara fundida</translation>
    </message>
    <message>
        <source>if the mat sticks on</source>
        <translation>si la manta térmica se queda encendida</translation>
    </message>
    <message>
        <source>with the covers forgotten off</source>
        <translation>con las cubiertas olvidadas sin poner</translation>
    </message>
    <message>
        <source>the winter day</source>
        <translation>el día de invierno</translation>
    </message>
    <message>
        <source>the summer day</source>
        <translation>el día de verano</translation>
    </message>
    <message>
        <source>the first warming up</source>
        <translation>el primer calentamiento</translation>
    </message>
    <message>
        <source>a power cut</source>
        <translation>un corte de luz</translation>
    </message>
    <message>
        <source>a burnt-out lamp</source>
        <translation>una lámpara fundida</translation>
    </message>
    <message>
        <source>a mat that sticks on</source>
        <translation>una manta térmica que se queda encendida</translation>
    </message>
    <message>
        <source>a heat wave</source>
        <translation>una ola de calor</translation>
    </message>
    <message>
        <source>a box whose covers are forgotten off</source>
        <translation>un recinto con las cubiertas olvidadas sin poner</translation>
    </message>
    <message>
        <source>in winter</source>
        <translation>en invierno</translation>
    </message>
    <message>
        <source>in summer</source>
        <translation>en verano</translation>
    </message>
    <message>
        <source>at the surface</source>
        <translation>en la superficie</translation>
    </message>
    <message>
        <source>in the shade at ground level</source>
        <translation>a la sombra a ras de suelo</translation>
    </message>
    <message>
        <source>at the animal&apos;s back</source>
        <translation>en el dorso del animal</translation>
    </message>
    <message>
        <source>basking spot</source>
        <translation>zona de asoleo</translation>
    </message>
    <message>
        <source>warm side</source>
        <translation>lado cálido</translation>
    </message>
    <message>
        <source>cool side</source>
        <translation>lado fresco</translation>
    </message>
    <message>
        <source>night</source>
        <translation>noche</translation>
    </message>
    <message>
        <source>can burn</source>
        <translation>puede arder</translation>
    </message>
    <message>
        <source>can&apos;t burn</source>
        <translation>no puede arder</translation>
    </message>
    <message>
        <source>Its thermostat holds it.</source>
        <translation>Su termostato la regula.</translation>
    </message>
    <message>
        <source>No thermostat holds it.</source>
        <translation>Ningún termostato la regula.</translation>
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
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>away from those that already live here</source>
        <translation>lejos de los que ya viven aquí</translation>
    </message>
    <message>
        <source>also where it is the first</source>
        <translation>también cuando es el primero</translation>
    </message>
    <message>
        <source>warm</source>
        <translation>cálido</translation>
    </message>
    <message>
        <source>cool</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>longer side</source>
        <translation>lado más largo</translation>
    </message>
    <message>
        <source>shorter side</source>
        <translation>lado más corto</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>width</source>
        <translation>anchura</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>con temporizador</translation>
    </message>
    <message>
        <source>always-on</source>
        <translation>siempre con corriente</translation>
    </message>
    <message>
        <source>a plain heating load</source>
        <translation>una carga puramente calefactora</translation>
    </message>
    <message>
        <source>a lamp with a ballast</source>
        <translation>una lámpara con balasto</translation>
    </message>
    <message>
        <source>an electronic load</source>
        <translation>una carga electrónica</translation>
    </message>
    <message>
        <source>a motor</source>
        <translation>un motor</translation>
    </message>
    <message>
        <source>a wall</source>
        <translation>una pared</translation>
    </message>
    <message>
        <source>the base</source>
        <translation>la base</translation>
    </message>
    <message>
        <source>the top</source>
        <translation>la tapa</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>pared</translation>
    </message>
    <message>
        <source>walls</source>
        <translation>paredes</translation>
    </message>
    <message>
        <source>base</source>
        <translation>base</translation>
    </message>
    <message>
        <source>top</source>
        <translation>tapa</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>substrate</source>
        <translation>sustrato</translation>
    </message>
    <message>
        <source>what lies below</source>
        <translation>lo que hay debajo</translation>
    </message>
    <message>
        <source>statutory</source>
        <translation>norma legal</translation>
    </message>
    <message>
        <source>welfare advice</source>
        <translation>recomendación de bienestar</translation>
    </message>
    <message>
        <source>veterinary advice</source>
        <translation>recomendación veterinaria</translation>
    </message>
    <message>
        <source>laboratory minimum</source>
        <translation>mínimo de laboratorio</translation>
    </message>
    <message>
        <source>no particular place</source>
        <translation>ningún lugar en particular</translation>
    </message>
    <message>
        <source>a material is not on file</source>
        <translation>no hay datos de un material</translation>
    </message>
    <message>
        <source>a material&apos;s figures are incomplete</source>
        <translation>los datos de un material están incompletos</translation>
    </message>
    <message>
        <source>something is not stated, and nothing on file stands in for it</source>
        <translation>falta indicar algo, y no hay ningún dato que lo supla</translation>
    </message>
    <message>
        <source>a length or thickness is not possible</source>
        <translation>una longitud o un espesor no es posible</translation>
    </message>
    <message>
        <source>the power of a device is not known</source>
        <translation>no se sabe la potencia de un aparato</translation>
    </message>
    <message>
        <source>the lamp has no distance table or meter reading</source>
        <translation>la lámpara no tiene tabla de distancias ni lectura de medidor</translation>
    </message>
    <message>
        <source>the animal comes nearer than the lamp&apos;s readings reach</source>
        <translation>el animal se acerca más de lo que abarcan las lecturas de la lámpara</translation>
    </message>
    <message>
        <source>the animal is further away than the lamp&apos;s readings reach</source>
        <translation>el animal está más lejos de lo que abarcan las lecturas de la lámpara</translation>
    </message>
    <message>
        <source>the place lies beside the lamp, and its beam is not known</source>
        <translation>el lugar queda al lado de la lámpara, y no se sabe cómo es su haz</translation>
    </message>
    <message>
        <source>it has burnt for a while, and how fast it fades is not known</source>
        <translation>lleva un tiempo en uso, y no se sabe a qué ritmo decae</translation>
    </message>
    <message>
        <source>a water bowl stands under a device</source>
        <translation>hay un bebedero debajo de un aparato</translation>
    </message>
    <message>
        <source>a mister sprays in the box</source>
        <translation>hay un nebulizador que rocía dentro del recinto</translation>
    </message>
    <message>
        <source>there is water in the box</source>
        <translation>hay agua en el recinto</translation>
    </message>
    <message>
        <source>its species does not rest through the winter, and the cold harms it</source>
        <translation>su especie no hiberna, y el frío le hace daño</translation>
    </message>
    <message>
        <source>it is ill</source>
        <translation>está enfermo</translation>
    </message>
    <message>
        <source>it is underweight</source>
        <translation>está por debajo de su peso</translation>
    </message>
    <message>
        <source>this is its first winter</source>
        <translation>es su primer invierno</translation>
    </message>
    <message>
        <source>it is not stated whether it is well</source>
        <translation>no se indica si está sano</translation>
    </message>
    <message>
        <source>its age is not stated, and an animal in its first winter must stay warm</source>
        <translation>no se indica su edad, y un animal en su primer invierno debe seguir caliente</translation>
    </message>
    <message>
        <source>its weight is not stated, and the rest ends by weight</source>
        <translation>no se indica su peso, y la hibernación termina según el peso</translation>
    </message>
    <message>
        <source>no temperatures for a rest are on file for its species; it does not need one</source>
        <translation>no constan temperaturas de hibernación para su especie; no la necesita</translation>
    </message>
    <message>
        <source>the rest that is stated is over; enter the next one</source>
        <translation>la hibernación indicada ya ha pasado; introducir la siguiente</translation>
    </message>
    <message>
        <source>the latitude is not stated</source>
        <translation>no se indica la latitud</translation>
    </message>
    <message>
        <source>the species here have no hours of light on file that suit all</source>
        <translation>no constan horas de luz que convengan a todas las especies de aquí</translation>
    </message>
    <message>
        <source>its day is not in the calendar</source>
        <translation>ese día no existe en el calendario</translation>
    </message>
    <message>
        <source>its day is still to come</source>
        <translation>ese día aún no ha llegado</translation>
    </message>
</context>
<context>
    <name>loam::desk::AnimalsPage</name>
    <message>
        <source>none planned</source>
        <translation>no prevista</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Winter rest from</source>
        <translation>Hibernación desde</translation>
    </message>
    <message>
        <source>Weeks in the cold</source>
        <translation>Semanas en frío</translation>
    </message>
    <message>
        <source>Vet&apos;s check before it</source>
        <translation>Revisión veterinaria previa</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animales</translation>
    </message>
    <message>
        <source>One animal is a sound choice: most of these species live alone.</source>
        <translation>Un solo animal es una buena elección: la mayoría de estas especies viven en solitario.</translation>
    </message>
    <message>
        <source>animal</source>
        <translation>animal</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Especie</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Sexo</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>well</source>
        <translation>sano</translation>
    </message>
    <message>
        <source>underweight</source>
        <translation>bajo de peso</translation>
    </message>
    <message>
        <source>ill</source>
        <translation>enfermo</translation>
    </message>
    <message>
        <source>Length is of the shell for turtles and tortoises, from snout to vent for lizards and frogs, and the whole animal for snakes.</source>
        <translation>La longitud es la del caparazón en tortugas, del hocico a la cloaca en lagartos y ranas, y la total en serpientes.</translation>
    </message>
    <message>
        <source>Measured over time</source>
        <translation>Medido a lo largo del tiempo</translation>
    </message>
    <message>
        <source>Of one animal, or the mean of the group. The newest length and weight count before those above; what they tell stands in the tab “Growth”.</source>
        <translation>De un animal, o la media del grupo. La longitud y el peso más recientes valen más que los de arriba; lo que indican está en la pestaña «Crecimiento».</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>medición</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Length then</source>
        <translation>Longitud ese día</translation>
    </message>
    <message>
        <source>Weight then</source>
        <translation>Peso ese día</translation>
    </message>
</context>
<context>
    <name>loam::desk::BatchDialog</name>
    <message>
        <source>Sheets for a list of adopters</source>
        <translation>Hojas para una lista de adoptantes</translation>
    </message>
    <message>
        <source>The open plan, “%1”, is the template. Each row of the list changes what it names: room, box, animals, what is owned, language and units. An empty cell leaves the template as it is.</source>
        <translation>El plan abierto, «%1», es la plantilla. Cada fila de la lista cambia lo que nombra: habitación, recinto, animales, material ya disponible, idioma y unidades. Una celda vacía deja la plantilla como está.</translation>
    </message>
    <message>
        <source>Rows of the list</source>
        <translation>Filas de la lista</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Adopter</source>
        <translation>Adoptante</translation>
    </message>
    <message>
        <source>What is wrong with it</source>
        <translation>Qué está mal</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Progreso</translation>
    </message>
    <message>
        <source>%v of %m</source>
        <translation>%v de %m</translation>
    </message>
    <message>
        <source>&amp;List (CSV)</source>
        <translation>&amp;Lista (CSV)</translation>
    </message>
    <message>
        <source>What the club l&amp;ends (CSV)</source>
        <translation>Lo que p&amp;resta el club (CSV)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>&amp;Folder for the sheets</source>
        <translation>&amp;Carpeta para las hojas</translation>
    </message>
    <message>
        <source>an empty one, or that of an earlier run</source>
        <translation>una vacía o la de una ejecución anterior</translation>
    </message>
    <message>
        <source>Reading the list…</source>
        <translation>Leyendo la lista…</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Elegir…</translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation>Elegir: %1</translation>
    </message>
    <message>
        <source>&amp;Make the sheets</source>
        <translation>&amp;Hacer las hojas</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Detener</translation>
    </message>
    <message>
        <source>&amp;Open the folder</source>
        <translation>&amp;Abrir la carpeta</translation>
    </message>
    <message>
        <source>List of adopters</source>
        <translation>Lista de adoptantes</translation>
    </message>
    <message>
        <source>CSV files (*.csv)</source>
        <translation>Archivos CSV (*.csv)</translation>
    </message>
    <message>
        <source>What the club lends</source>
        <translation>Lo que presta el club</translation>
    </message>
    <message>
        <source>Folder for the sheets</source>
        <translation>Carpeta para las hojas</translation>
    </message>
    <message>
        <source>%1 rows, all of them good.</source>
        <translation>%1 filas, todas correctas.</translation>
    </message>
    <message>
        <source>%1 rows. %2 of them fail, and the others are made all the same.</source>
        <translation>%1 filas. Fallan %2, y las demás se hacen igualmente.</translation>
    </message>
    <message>
        <source>The program “loamstead-cli”, which does this work, is not beside the window&apos;s. Install it.</source>
        <translation>El programa «loamstead-cli», que hace este trabajo, no está junto al de la ventana. Instálelo.</translation>
    </message>
    <message>
        <source>All rows have their sheets. The order, the summary and the sheets lie in the folder.</source>
        <translation>Todas las filas tienen sus hojas. El pedido, el resumen y las hojas están en la carpeta.</translation>
    </message>
    <message>
        <source>All good rows have their sheets. “failed.csv” in the folder tells of the others.</source>
        <translation>Todas las filas correctas tienen sus hojas. «failed.csv», en la carpeta, informa de las demás.</translation>
    </message>
    <message>
        <source>Stopped. What is done is kept; start again to go on from there.</source>
        <translation>Detenido. Lo hecho se conserva; vuelva a iniciarlo para seguir desde ahí.</translation>
    </message>
    <message>
        <source>Sheets are being made</source>
        <translation>Se están haciendo las hojas</translation>
    </message>
    <message>
        <source>Stop making them? What is done is kept; a later run goes on from there.</source>
        <translation>¿Dejar de hacerlas? Lo hecho se conserva; una ejecución posterior sigue desde ahí.</translation>
    </message>
    <message>
        <source>What it changes</source>
        <translation>Lo que cambia</translation>
    </message>
</context>
<context>
    <name>loam::desk::BedPage</name>
    <message>
        <source>Bed, lowest layer first</source>
        <translation>Sustrato, de abajo arriba</translation>
    </message>
    <message>
        <source>layer</source>
        <translation>capa</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Settled depth</source>
        <translation>Profundidad asentada</translation>
    </message>
    <message>
        <source>At the right, if sloped</source>
        <translation>A la derecha, si hay pendiente</translation>
    </message>
    <message>
        <source>Water by volume</source>
        <translation>Agua en volumen</translation>
    </message>
</context>
<context>
    <name>loam::desk::BoxPage</name>
    <message>
        <source>Box</source>
        <translation>Recinto</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation>Apoyado en</translation>
    </message>
    <message>
        <source>Inner length</source>
        <translation>Longitud interior</translation>
    </message>
    <message>
        <source>Inner width, front to back</source>
        <translation>Anchura interior, de frente a fondo</translation>
    </message>
    <message>
        <source>Inner height</source>
        <translation>Altura interior</translation>
    </message>
    <message>
        <source>Walls</source>
        <translation>Paredes</translation>
    </message>
    <message>
        <source>Wall thickness</source>
        <translation>Espesor de las paredes</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Base thickness</source>
        <translation>Espesor de la base</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Tapa</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Open share of the mesh</source>
        <translation>Parte abierta de la malla</translation>
    </message>
    <message>
        <source>Covers on the top</source>
        <translation>Cubiertas sobre la tapa</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>Desde la izquierda</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>Desde el frente</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Anchura</translation>
    </message>
    <message>
        <source>Vents</source>
        <translation>Rejillas de ventilación</translation>
    </message>
    <message>
        <source>vent</source>
        <translation>rejilla de ventilación</translation>
    </message>
    <message>
        <source>Free area</source>
        <translation>Superficie libre</translation>
    </message>
    <message>
        <source>Height above the base</source>
        <translation>Altura sobre la base</translation>
    </message>
    <message>
        <source>Walls of another make</source>
        <translation>Paredes de otro material</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>pared</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Backdrops and insulation</source>
        <translation>Fondos decorativos y aislamiento</translation>
    </message>
    <message>
        <source>lining</source>
        <translation>revestimiento</translation>
    </message>
    <message>
        <source>Side of the wall</source>
        <translation>Cara de la pared</translation>
    </message>
    <message>
        <source>Takes over from</source>
        <translation>Sustituye a</translation>
    </message>
    <message>
        <source>no other box</source>
        <translation>ningún otro recinto</translation>
    </message>
</context>
<context>
    <name>loam::desk::BudgetPage</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Official rules of</source>
        <translation>Normas oficiales de</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Years to look ahead</source>
        <translation>Años que se prevén</translation>
    </message>
    <message>
        <source>Discount rate a year</source>
        <translation>Tasa de descuento anual</translation>
    </message>
    <message>
        <source>Price level</source>
        <translation>Nivel de precios</translation>
    </message>
    <message>
        <source>low</source>
        <translation>bajo</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>típico</translation>
    </message>
    <message>
        <source>high</source>
        <translation>alto</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Envases</translation>
    </message>
    <message>
        <source>the cheapest</source>
        <translation>los más baratos</translation>
    </message>
    <message>
        <source>the fewest</source>
        <translation>los menos posibles</translation>
    </message>
    <message>
        <source>the least left over</source>
        <translation>los que menos sobrante dejan</translation>
    </message>
    <message>
        <source>as usual: the cheapest</source>
        <translation>lo habitual: los más baratos</translation>
    </message>
    <message>
        <source>Bought at</source>
        <translation>Se compra en</translation>
    </message>
    <message>
        <source>wherever it is cheapest</source>
        <translation>donde salga más barato</translation>
    </message>
    <message>
        <source>Set aside for surprises</source>
        <translation>Reserva para imprevistos</translation>
    </message>
    <message>
        <source>Already on the shelf</source>
        <translation>Lo que ya hay en casa</translation>
    </message>
    <message>
        <source>owned item</source>
        <translation>artículo ya disponible</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artículo</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>Left out or replaced</source>
        <translation>Lo que queda fuera o se sustituye</translation>
    </message>
    <message>
        <source>change</source>
        <translation>cambio</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: left out</source>
        <translation>%1: queda fuera</translation>
    </message>
    <message>
        <source>Need</source>
        <translation>Necesidad</translation>
    </message>
    <message>
        <source>Buy instead</source>
        <translation>Comprar en su lugar</translation>
    </message>
    <message>
        <source>nothing: left out</source>
        <translation>nada: queda fuera</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Lines of your own</source>
        <translation>Líneas propias</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>Precio de uno</translation>
    </message>
    <message>
        <source>Again after</source>
        <translation>De nuevo tras</translation>
    </message>
</context>
<context>
    <name>loam::desk::CalendarDialog</name>
    <message>
        <source>Care calendar</source>
        <translation>Calendario de cuidados</translation>
    </message>
    <message>
        <source>First day of care</source>
        <translation>Primer día de cuidados</translation>
    </message>
    <message>
        <source>&amp;First day of care:</source>
        <translation>&amp;Primer día de cuidados:</translation>
    </message>
    <message>
        <source>What is done, how often, and first on which day</source>
        <translation>Qué se hace, con qué frecuencia y qué día por primera vez</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Con qué frecuencia</translation>
    </message>
    <message>
        <source>First on</source>
        <translation>Primera vez</translation>
    </message>
    <message>
        <source>What to do, and why</source>
        <translation>Qué hacer y por qué</translation>
    </message>
    <message>
        <source>&amp;Save for a calendar program…</source>
        <translation>&amp;Guardar para un programa de calendario…</translation>
    </message>
    <message>
        <source>The file is read by calendar programs (iCalendar). Reading it in again replaces what it said before, as long as the plan&apos;s title stays the same. Give it a calendar of its own.</source>
        <translation>Los programas de calendario leen el archivo (iCalendar). Leerlo de nuevo sustituye lo anterior mientras el título del plan sea el mismo. Conviene darle un calendario propio.</translation>
    </message>
    <message>
        <source>Save the calendar</source>
        <translation>Guardar el calendario</translation>
    </message>
    <message>
        <source>Calendars (*.ics);;All files (*)</source>
        <translation>Calendarios (*.ics);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>care</source>
        <translation>cuidados</translation>
    </message>
    <message>
        <source>The calendar was not saved</source>
        <translation>El calendario no se guardó</translation>
    </message>
</context>
<context>
    <name>loam::desk::CommandFinder</name>
    <message>
        <source>What do you want to do?</source>
        <translation>¿Qué quiere hacer?</translation>
    </message>
    <message>
        <source>A word of it, for example: print</source>
        <translation>Una palabra clave, por ejemplo: imprimir</translation>
    </message>
    <message>
        <source>What to look for in the menus</source>
        <translation>Qué buscar en los menús</translation>
    </message>
    <message>
        <source>What the menus can do</source>
        <translation>Lo que ofrecen los menús</translation>
    </message>
</context>
<context>
    <name>loam::desk::ComparisonChoice</name>
    <message>
        <source>%1 as saved on %2</source>
        <translation>%1, guardado el %2</translation>
    </message>
    <message>
        <source>Compare with another plan</source>
        <translation>Comparar con otro plan</translation>
    </message>
    <message>
        <source>%1 as kept at %2</source>
        <translation>%1, conservado a las %2</translation>
    </message>
</context>
<context>
    <name>loam::desk::ComparisonView</name>
    <message>
        <source>Only what &amp;differs</source>
        <translation>Solo las &amp;diferencias</translation>
    </message>
    <message>
        <source>C&amp;lose comparison</source>
        <translation>C&amp;errar la comparación</translation>
    </message>
    <message>
        <source>This plan beside the other</source>
        <translation>Este plan junto al otro</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Cifra</translation>
    </message>
    <message>
        <source>Other plan</source>
        <translation>Otro plan</translation>
    </message>
    <message>
        <source>This plan</source>
        <translation>Este plan</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Compared with %1</source>
        <translation>Comparado con %1</translation>
    </message>
    <message>
        <source>The other plan is being worked out…</source>
        <translation>Calculando el otro plan…</translation>
    </message>
    <message>
        <source>%1. The new figures are being worked out…</source>
        <translation>%1. Calculando las nuevas cifras…</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>este plan</translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation>No hay diferencias.</translation>
    </message>
    <message>
        <source>The prices are invented examples.</source>
        <translation>Los precios son ejemplos inventados.</translation>
    </message>
</context>
<context>
    <name>loam::desk::CostsView</name>
    <message>
        <source>Line: typical. Band: low to high.</source>
        <translation>Línea: típico. Banda: de bajo a alto.</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Costes</translation>
    </message>
    <message>
        <source>Cost, %1</source>
        <translation>Coste, %1</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Bajo</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>Típico</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Typically %1 to begin, %2 a year.</source>
        <translation>Por lo general, %1 para empezar y %2 al año.</translation>
    </message>
    <message>
        <source>The price list is in another currency than the plan, so nothing is costed.</source>
        <translation>La lista de precios está en otra moneda que el plan, así que no se calcula ningún coste.</translation>
    </message>
</context>
<context>
    <name>loam::desk::CourseChart</name>
    <message>
        <source>Temperatures over hours</source>
        <translation>Temperaturas por horas</translation>
    </message>
    <message>
        <source>harmful over %1</source>
        <translation>dañino por encima de %1</translation>
    </message>
    <message>
        <source>harmful under %1</source>
        <translation>dañino por debajo de %1</translation>
    </message>
    <message>
        <source>room</source>
        <translation>habitación</translation>
    </message>
    <message>
        <source>Hours since the lamps went on</source>
        <translation>Horas desde el encendido</translation>
    </message>
    <message>
        <source>Hours since switch-on</source>
        <translation>Horas desde el arranque</translation>
    </message>
    <message>
        <source>Hours since it began</source>
        <translation>Horas desde el inicio</translation>
    </message>
</context>
<context>
    <name>loam::desk::CoursesView</name>
    <message>
        <source>Day or drill that the chart shows</source>
        <translation>Día o simulacro que muestra el gráfico</translation>
    </message>
    <message>
        <source>Sho&amp;w:</source>
        <translation>M&amp;ostrar:</translation>
    </message>
    <message>
        <source>Band: range. Hatched: target. Bar on top: lamps on. Drop: misting.</source>
        <translation>Banda: intervalo. Rayado: valor objetivo. Barra superior: lámparas encendidas. Gota: nebulización.</translation>
    </message>
    <message>
        <source>The hours are worked out last; they come in a moment.</source>
        <translation>Las horas se calculan al final; llegan en un momento.</translation>
    </message>
    <message>
        <source>What the course comes to</source>
        <translation>Lo que resulta del curso</translation>
    </message>
    <message>
        <source>Nothing is known of the hours of this box: its balance of heat found no solution.</source>
        <translation>No se sabe nada de las horas de este recinto: su balance de calor no tiene solución.</translation>
    </message>
</context>
<context>
    <name>loam::desk::DrawingView</name>
    <message>
        <source>Drawing of the enclosure to scale</source>
        <translation>Dibujo del terrario a escala</translation>
    </message>
    <message>
        <source>What the drawing shows over the floor</source>
        <translation>Lo que muestra el dibujo sobre el suelo</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>UV index</source>
        <translation>índice UV</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>&amp;Show:</source>
        <translation>&amp;Mostrar:</translation>
    </message>
    <message>
        <source>Case that the drawing shows</source>
        <translation>Caso que muestra el dibujo</translation>
    </message>
    <message>
        <source>&amp;on a:</source>
        <translation>&amp;en:</translation>
    </message>
    <message>
        <source>w&amp;alls</source>
        <translation>p&amp;aredes</translation>
    </message>
    <message>
        <source>Fold out the walls, with the top beside them</source>
        <translation>Desplegar las paredes, con la tapa al lado</translation>
    </message>
    <message>
        <source>&amp;grid</source>
        <translation>&amp;cuadrícula</translation>
    </message>
    <message>
        <source>Faint lines at round distances</source>
        <translation>Líneas tenues a distancias redondas</translation>
    </message>
</context>
<context>
    <name>loam::desk::ElementList</name>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Add: %1</source>
        <translation>Añadir: %1</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Copy: %1</source>
        <translation>Copiar: %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove: %1</source>
        <translation>Quitar: %1</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Añadir %1</translation>
    </message>
    <message>
        <source>Copy %1</source>
        <translation>Copiar %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
</context>
<context>
    <name>loam::desk::EnclosureBar</name>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Copy this enclosure</source>
        <translation>Copiar este terrario</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove this enclosure</source>
        <translation>Quitar este terrario</translation>
    </message>
    <message>
        <source>Enclosure in view</source>
        <translation>Terrario a la vista</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Add an enclosure</source>
        <translation>Añadir un terrario</translation>
    </message>
    <message>
        <source>Enclosure %1</source>
        <translation>Terrario %1</translation>
    </message>
    <message>
        <source>Add enclosure</source>
        <translation>Añadir terrario</translation>
    </message>
    <message>
        <source>%1, copy</source>
        <translation>%1, copia</translation>
    </message>
    <message>
        <source>Copy enclosure</source>
        <translation>Copiar terrario</translation>
    </message>
    <message>
        <source>Remove enclosure</source>
        <translation>Quitar terrario</translation>
    </message>
</context>
<context>
    <name>loam::desk::EquipmentPage</name>
    <message>
        <source>Lamps, heaters and other equipment</source>
        <translation>Lámparas, calefactores y otros equipos</translation>
    </message>
    <message>
        <source>device</source>
        <translation>aparato</translation>
    </message>
    <message>
        <source>power not stated</source>
        <translation>potencia sin indicar</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>UV readings of the chosen lamp</source>
        <translation>Lecturas de UV de la lámpara elegida</translation>
    </message>
    <message>
        <source>From the maker&apos;s table or from a meter, without mesh between. One reading will do, a table says more. UV is never worked out from watts.</source>
        <translation>De la tabla del fabricante o de un medidor, sin malla de por medio. Basta una lectura; una tabla dice más. El UV nunca se calcula a partir de los vatios.</translation>
    </message>
    <message>
        <source>Burnt when read</source>
        <translation>Horas de uso al leer</translation>
    </message>
    <message>
        <source>UVI %1 at %2</source>
        <translation>UVI %1 a %2</translation>
    </message>
    <message>
        <source>UV reading</source>
        <translation>lectura de UV</translation>
    </message>
</context>
<context>
    <name>loam::desk::FieldSet</name>
    <message>
        <source>Change “%1”</source>
        <translation>Cambiar «%1»</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
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
        <source>“%1” is not an amount of money.</source>
        <translation>«%1» no es un importe.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
</context>
<context>
    <name>loam::desk::FiguresView</name>
    <message>
        <source>Figures of the enclosure in view</source>
        <translation>Cifras del terrario a la vista</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Cifra</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Dictamen</translation>
    </message>
    <message>
        <source>Likely</source>
        <translation>Probable</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Intervalo</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Valor objetivo</translation>
    </message>
    <message>
        <source>What decides the range</source>
        <translation>Lo que determina el intervalo</translation>
    </message>
</context>
<context>
    <name>loam::desk::FindingsView</name>
    <message>
        <source>Findings, most serious first</source>
        <translation>Hallazgos, los más graves primero</translation>
    </message>
</context>
<context>
    <name>loam::desk::FirstSetup</name>
    <message>
        <source>%1 × %2, %3 high</source>
        <translation>%1 × %2, %3 de alto</translation>
    </message>
    <message>
        <source>A first plan</source>
        <translation>Un primer plan</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Atrás</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Who is to live in it? Everything else follows from that. One animal is a sound choice: most of these species live alone.</source>
        <translation>¿Quién va a vivir en él? Todo lo demás depende de eso. Un solo animal es una buena elección: la mayoría de estas especies viven en solitario.</translation>
    </message>
    <message>
        <source>&amp;Species</source>
        <translation>&amp;Especie</translation>
    </message>
    <message>
        <source>How &amp;many</source>
        <translation>&amp;Cuántos</translation>
    </message>
    <message>
        <source>&amp;Length of each now</source>
        <translation>&amp;Longitud actual de cada uno</translation>
    </message>
    <message>
        <source>Length is of the shell for turtles and tortoises, from snout to vent for lizards and frogs, and the whole animal for snakes. Leave it empty where you don&apos;t know it.</source>
        <translation>La longitud es la del caparazón en tortugas, del hocico a la cloaca en lagartos y ranas, y la total en serpientes. Dejarla vacía si no se sabe.</translation>
    </message>
    <message>
        <source>How warm is the room? A thermometer left there for some days tells. What stays empty is taken as a wide range, and the results are as wide.</source>
        <translation>¿A qué temperatura está la habitación? Un termómetro colocado allí unos días lo dice. Lo que quede vacío se toma como un intervalo amplio, y los resultados serán igual de amplios.</translation>
    </message>
    <message>
        <source>Winter, by &amp;day</source>
        <translation>Invierno, de &amp;día</translation>
    </message>
    <message>
        <source>Winter, by &amp;night</source>
        <translation>Invierno, de &amp;noche</translation>
    </message>
    <message>
        <source>Summer, by d&amp;ay</source>
        <translation>&amp;Verano, de día</translation>
    </message>
    <message>
        <source>Summer, by n&amp;ight</source>
        <translation>V&amp;erano, de noche</translation>
    </message>
    <message>
        <source>In a &amp;heat wave</source>
        <translation>En una &amp;ola de calor</translation>
    </message>
    <message>
        <source>the smallest usual size that is large enough</source>
        <translation>el menor tamaño habitual que sea suficiente</translation>
    </message>
    <message>
        <source>a size of my own</source>
        <translation>un tamaño propio</translation>
    </message>
    <message>
        <source>&amp;Length inside</source>
        <translation>&amp;Longitud interior</translation>
    </message>
    <message>
        <source>Wi&amp;dth inside</source>
        <translation>Anc&amp;hura interior</translation>
    </message>
    <message>
        <source>&amp;Height inside</source>
        <translation>Alt&amp;ura interior</translation>
    </message>
    <message>
        <source>What box is it to be? The floor has to be enough for the animals when they are grown.</source>
        <translation>¿Qué recinto va a ser? El suelo debe bastar para los animales cuando sean adultos.</translation>
    </message>
    <message>
        <source>&amp;Size</source>
        <translation>&amp;Tamaño</translation>
    </message>
    <message>
        <source>&amp;Walls and base</source>
        <translation>&amp;Paredes y base</translation>
    </message>
    <message>
        <source>Looking for equipment</source>
        <translation>Búsqueda de equipos</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Lo que se ha encontrado</translation>
    </message>
    <message>
        <source>%1: first plan</source>
        <translation>%1: primer plan</translation>
    </message>
    <message>
        <source>%1: enough for them by every space rule of their sheet.</source>
        <translation>%1: suficiente para ellos según todas las reglas de espacio de su ficha.</translation>
    </message>
    <message>
        <source>%1: whether that is enough is not known, for no space rule applies.</source>
        <translation>%1: no se sabe si es suficiente, porque no hay regla de espacio aplicable.</translation>
    </message>
    <message>
        <source>No usual size is enough for them. The largest, %1, falls short too: they need a room or a pen of their own, or fewer animals.</source>
        <translation>Ningún tamaño habitual es suficiente para ellos. El mayor, %1, tampoco alcanza: necesitan una habitación o un cercado propio, o bien menos animales.</translation>
    </message>
    <message>
        <source>%1 is too small for them by the rules of their sheet.</source>
        <translation>%1 es demasiado pequeño para ellos según las reglas de su ficha.</translation>
    </message>
    <message>
        <source>The animals</source>
        <translation>Los animales</translation>
    </message>
    <message>
        <source>The room</source>
        <translation>La habitación</translation>
    </message>
    <message>
        <source>The box</source>
        <translation>El recinto</translation>
    </message>
    <message>
        <source>What heats and lights it</source>
        <translation>Lo que calienta e ilumina</translation>
    </message>
    <message>
        <source>Step %1 of %2: %3</source>
        <translation>Paso %1 de %2: %3</translation>
    </message>
    <message>
        <source>&amp;Make this plan</source>
        <translation>&amp;Crear este plan</translation>
    </message>
    <message>
        <source>Without lamps and heaters: I choose them myself</source>
        <translation>Sin lámparas ni calefactores: los elijo por mi cuenta</translation>
    </message>
    <message>
        <source>Looking for lamps and heaters that keep every place in its target, in winter and in summer. This takes some seconds; you need not wait for it.</source>
        <translation>Buscando lámparas y calefactores que mantengan cada lugar en su valor objetivo, en invierno y en verano. Tarda unos segundos; no hace falta esperar.</translation>
    </message>
    <message>
        <source>Nothing was found: too little is known for a prediction.</source>
        <translation>No se ha encontrado nada: se sabe demasiado poco para una previsión.</translation>
    </message>
    <message>
        <source>These keep every place in its target, by the likely figures. Prove them with thermometers before an animal moves in.</source>
        <translation>Con estos, cada lugar se mantiene en su valor objetivo, según las cifras probables. Comprobarlo con termómetros antes de que entre un animal.</translation>
    </message>
    <message>
        <source>Nothing that was tried keeps every place in its target. These come nearest; the findings will say what is missing.</source>
        <translation>Nada de lo probado mantiene cada lugar en su valor objetivo. Esto es lo que más se acerca; los resultados dirán qué falta.</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>sin elegir todavía</translation>
    </message>
</context>
<context>
    <name>loam::desk::FittingsPage</name>
    <message>
        <source>Bowls, hides and furniture</source>
        <translation>Bebederos, refugios y mobiliario</translation>
    </message>
    <message>
        <source>fitting</source>
        <translation>accesorio</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>Desde la izquierda</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>Desde el frente</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Anchura</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Turned by</source>
        <translation>Giro</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Water depth</source>
        <translation>Profundidad del agua</translation>
    </message>
    <message>
        <source>Animals can walk on it</source>
        <translation>Los animales pueden andar por encima</translation>
    </message>
</context>
<context>
    <name>loam::desk::FormPanel</name>
    <message>
        <source>Chapters of the plan</source>
        <translation>Capítulos del plan</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animales</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Recinto</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>Furniture</source>
        <translation>Mobiliario</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Equipos</translation>
    </message>
    <message>
        <source>Water and light</source>
        <translation>Agua y luz</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Site and room</source>
        <translation>Lugar y habitación</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Presupuesto</translation>
    </message>
</context>
<context>
    <name>loam::desk::GrowthChart</name>
    <message>
        <source>Lengths by day</source>
        <translation>Longitudes por día</translation>
    </message>
    <message>
        <source>Weights by day</source>
        <translation>Pesos por día</translation>
    </message>
    <message>
        <source>Weight, %1</source>
        <translation>Peso, %1</translation>
    </message>
    <message>
        <source>Length, %1 (dashed: published growth)</source>
        <translation>Longitud, %1 (discontinua: publicada)</translation>
    </message>
</context>
<context>
    <name>loam::desk::GrowthView</name>
    <message>
        <source>Animal</source>
        <translation>Animal</translation>
    </message>
    <message>
        <source>What the measurements tell</source>
        <translation>Lo que indican las mediciones</translation>
    </message>
    <message>
        <source>Nothing has been measured over time yet. In the chapter “Animals” enter a day with length and weight, every month or so: growth is then set against what is published, and a loss of weight is told before it is a danger.</source>
        <translation>Aún no se ha medido nada a lo largo del tiempo. En el capítulo «Animales», anote un día con longitud y peso cada mes más o menos: así el crecimiento se compara con lo publicado y una pérdida de peso se nota antes de ser un peligro.</translation>
    </message>
</context>
<context>
    <name>loam::desk::HideButton</name>
    <message>
        <source>Hide this line</source>
        <translation>Ocultar esta línea</translation>
    </message>
</context>
<context>
    <name>loam::desk::HumidityStrip</name>
    <message>
        <source>Humidity at ground level over hours</source>
        <translation>Humedad a ras de suelo por horas</translation>
    </message>
    <message>
        <source>Humidity at ground level, cool side</source>
        <translation>Humedad a ras de suelo, lado fresco</translation>
    </message>
</context>
<context>
    <name>loam::desk::NewItemDialog</name>
    <message>
        <source>one</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>New item</source>
        <translation>Artículo nuevo</translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation>&amp;Añadir</translation>
    </message>
    <message>
        <source>&amp;Bought for</source>
        <translation>Se compra &amp;para</translation>
    </message>
    <message>
        <source>&amp;Name, without a brand</source>
        <translation>&amp;Nombre, sin marca</translation>
    </message>
    <message>
        <source>&amp;How it is sold</source>
        <translation>&amp;Cómo se vende</translation>
    </message>
    <message>
        <source>A pack h&amp;olds</source>
        <translation>C&amp;ontenido del envase</translation>
    </message>
    <message>
        <source>A pack &amp;costs</source>
        <translation>Pr&amp;ecio del envase</translation>
    </message>
    <message>
        <source>Unit and useful life are taken from an item for the same purpose; the table shows them.</source>
        <translation>La unidad y la vida útil se toman de un artículo con el mismo fin; figuran en la tabla.</translation>
    </message>
    <message>
        <source>It needs a name, a pack with an amount above zero, and a price.</source>
        <translation>Hacen falta un nombre, un envase con una cantidad mayor que cero y un precio.</translation>
    </message>
</context>
<context>
    <name>loam::desk::OverviewView</name>
    <message>
        <source>All enclosures</source>
        <translation>Todos los terrarios</translation>
    </message>
    <message>
        <source>Enclosure</source>
        <translation>Terrario</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Dictamen</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Suelo</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Necesario</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Conectado</translation>
    </message>
    <message>
        <source>Energy a year</source>
        <translation>Energía al año</translation>
    </message>
    <message>
        <source>Its cost</source>
        <translation>Su coste</translation>
    </message>
</context>
<context>
    <name>loam::desk::PlanDocument</name>
    <message>
        <source>Unnamed plan</source>
        <translation>Plan sin nombre</translation>
    </message>
</context>
<context>
    <name>loam::desk::PlanFiles</name>
    <message>
        <source>Unsaved changes</source>
        <translation>Cambios sin guardar</translation>
    </message>
    <message>
        <source>“%1” has changes that are not saved.</source>
        <translation>«%1» tiene cambios sin guardar.</translation>
    </message>
    <message>
        <source>Save them first?</source>
        <translation>¿Guardarlos antes?</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Discard changes</source>
        <translation>Descartar los cambios</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Open plan</source>
        <translation>Abrir plan</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>Save plan as</source>
        <translation>Guardar plan como</translation>
    </message>
    <message>
        <source>The plan was not saved</source>
        <translation>El plan no se ha guardado</translation>
    </message>
    <message>
        <source>Your work is still here. Save it under another name or in another folder.</source>
        <translation>El trabajo sigue aquí. Guardarlo con otro nombre o en otra carpeta.</translation>
    </message>
    <message>
        <source>This plan can&apos;t be opened</source>
        <translation>No se puede abrir este plan</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be opened. Nothing was changed.</source>
        <translation>No se puede abrir «%1». No se ha cambiado nada.</translation>
    </message>
    <message numerus="yes">
        <source>… and %n more, listed under details.</source>
        <translation>
            <numerusform>… y %n más, en los detalles.</numerusform>
            <numerusform>… y %n más, en los detalles.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>loam::desk::Preferences</name>
    <message>
        <source>As the desktop</source>
        <translation>Como el escritorio</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>The language changes when Loamstead is next started.</source>
        <translation>El idioma cambia la próxima vez que se inicie Loamstead.</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unidades</translation>
    </message>
    <message>
        <source>Metric (cm, kg, °C)</source>
        <translation>Métrico (cm, kg, °C)</translation>
    </message>
    <message>
        <source>US (in, lb, °F)</source>
        <translation>EE. UU. (in, lb, °F)</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>&amp;Aspecto</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papel</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>Carta (EE. UU.)</translation>
    </message>
    <message>
        <source>Price l&amp;ists…</source>
        <translation>&amp;Listas de precios…</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>%1, from the price list in use: “%2”</source>
        <translation>%1, de la lista de precios en uso: «%2»</translation>
    </message>
    <message>
        <source>club, rescue or keeper; may stay empty</source>
        <translation>club, refugio o cuidador; puede quedar vacío</translation>
    </message>
    <message>
        <source>how the reader reaches you</source>
        <translation>cómo localizarle</translation>
    </message>
    <message>
        <source>Contact on printed sheets</source>
        <translation>Contacto en las hojas impresas</translation>
    </message>
    <message>
        <source>&amp;Name on sheets</source>
        <translation>&amp;Nombre en las hojas</translation>
    </message>
    <message>
        <source>&amp;Contact</source>
        <translation>&amp;Contacto</translation>
    </message>
    <message>
        <source>Start it again no&amp;w</source>
        <translation>&amp;Reiniciarlo ahora</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceChoice</name>
    <message>
        <source>It is in %1 and the other one in %2. Lists of one currency can be used together.</source>
        <translation>Está en %1 y la otra en %2. Solo se pueden usar juntas listas de una misma moneda.</translation>
    </message>
    <message>
        <source>Use a price list</source>
        <translation>Usar una lista de precios</translation>
    </message>
    <message>
        <source>Save the price list</source>
        <translation>Guardar la lista de precios</translation>
    </message>
    <message>
        <source>prices</source>
        <translation>precios</translation>
    </message>
    <message>
        <source>The price list was not saved</source>
        <translation>La lista de precios no se ha guardado</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceDifferenceDialog</name>
    <message>
        <source>Two price lists</source>
        <translation>Dos listas de precios</translation>
    </message>
    <message>
        <source>First:</source>
        <translation>Primera:</translation>
    </message>
    <message>
        <source>Second:</source>
        <translation>Segunda:</translation>
    </message>
    <message>
        <source>What differs between the two price lists</source>
        <translation>Diferencias entre las dos listas de precios</translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation>No hay diferencias.</translation>
    </message>
    <message>
        <source>Rows that differ: %1.</source>
        <translation>Filas que difieren: %1.</translation>
    </message>
    <message>
        <source>Export the difference</source>
        <translation>Exportar las diferencias</translation>
    </message>
    <message>
        <source>price-difference</source>
        <translation>diferencias-de-precios</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceEditor</name>
    <message>
        <source>What is wrong with the list</source>
        <translation>Errores de la lista</translation>
    </message>
    <message>
        <source>&amp;Prices</source>
        <translation>&amp;Precios</translation>
    </message>
    <message>
        <source>&amp;List and terms</source>
        <translation>&amp;Lista y condiciones</translation>
    </message>
    <message>
        <source>Show rows with…</source>
        <translation>Mostrar filas con…</translation>
    </message>
    <message>
        <source>Show only rows with this text</source>
        <translation>Mostrar solo las filas con este texto</translation>
    </message>
    <message>
        <source>New &amp;item…</source>
        <translation>Artículo &amp;nuevo…</translation>
    </message>
    <message>
        <source>Further pac&amp;k</source>
        <translation>&amp;Otro envase</translation>
    </message>
    <message>
        <source>Another size of the item that is chosen</source>
        <translation>Otro tamaño del artículo elegido</translation>
    </message>
    <message>
        <source>&amp;Take out</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Takes the chosen packs out of the list</source>
        <translation>Quita de la lista los envases elegidos</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>Prices, a row for each pack</source>
        <translation>Precios, una fila por envase</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Lista de precios</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>First mend what is wrong with the list.</source>
        <translation>Primero hay que corregir los errores de la lista.</translation>
    </message>
    <message>
        <source>Further pack</source>
        <translation>Otro envase</translation>
    </message>
    <message>
        <source>New item</source>
        <translation>Artículo nuevo</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>The price list was not saved</source>
        <translation>La lista de precios no se ha guardado</translation>
    </message>
    <message>
        <source>Saved as “%1”.</source>
        <translation>Guardado como «%1».</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Cambios sin guardar</translation>
    </message>
    <message>
        <source>The price list has changes that are not saved.</source>
        <translation>La lista de precios tiene cambios sin guardar.</translation>
    </message>
    <message>
        <source>The price list has changes that are not saved, and can&apos;t be saved before what is wrong with it is mended.</source>
        <translation>La lista de precios tiene cambios sin guardar, y no se puede guardar hasta que se corrijan sus errores.</translation>
    </message>
    <message>
        <source>&amp;Discard them</source>
        <translation>&amp;Descartarlos</translation>
    </message>
    <message>
        <source>Go on &amp;editing</source>
        <translation>Seguir &amp;editando</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceListsDialog</name>
    <message>
        <source>Price lists</source>
        <translation>Listas de precios</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Envases</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>En uso</translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation>&amp;Usar</translation>
    </message>
    <message>
        <source>Use it t&amp;oo</source>
        <translation>Usar t&amp;ambién</translation>
    </message>
    <message>
        <source>Buys from several lists, each a place of its own, wherever the whole comes cheapest</source>
        <translation>Compra con varias listas, cada una de un lugar distinto, donde el conjunto salga más barato</translation>
    </message>
    <message>
        <source>&amp;Edit…</source>
        <translation>&amp;Editar…</translation>
    </message>
    <message>
        <source>&amp;Copy it</source>
        <translation>&amp;Copiar</translation>
    </message>
    <message>
        <source>Beside the one in use…</source>
        <translation>Comparar con la que está en uso…</translation>
    </message>
    <message>
        <source>&amp;Take in a file…</source>
        <translation>&amp;Importar un archivo…</translation>
    </message>
    <message>
        <source>&amp;Write it to a file…</source>
        <translation>E&amp;xportar a un archivo…</translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation>E&amp;liminar…</translation>
    </message>
    <message>
        <source>can&apos;t be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>en uso</translation>
    </message>
    <message>
        <source>Comes with the program; a copy of it can be changed.</source>
        <translation>Viene con el programa; se puede modificar una copia.</translation>
    </message>
    <message>
        <source>Kept with the program as %1.</source>
        <translation>Guardada con el programa como %1.</translation>
    </message>
    <message>
        <source>A file of its own: %1</source>
        <translation>Un archivo aparte: %1</translation>
    </message>
    <message>
        <source>Prices of %1.</source>
        <translation>Precios de %1.</translation>
    </message>
    <message>
        <source>Leave it &amp;off</source>
        <translation>&amp;Dejar de usar</translation>
    </message>
    <message>
        <source>The price list was not saved</source>
        <translation>La lista de precios no se ha guardado</translation>
    </message>
    <message>
        <source>Take in a price list</source>
        <translation>Importar una lista de precios</translation>
    </message>
    <message>
        <source>Delete this price list?</source>
        <translation>¿Eliminar esta lista de precios?</translation>
    </message>
    <message>
        <source>“%1” is deleted. It can be taken back from the waste bin where the desktop has one.</source>
        <translation>Se va a eliminar «%1». Se puede recuperar de la papelera, si el escritorio tiene una.</translation>
    </message>
    <message>
        <source>&amp;Delete it</source>
        <translation>&amp;Eliminar</translation>
    </message>
    <message>
        <source>&amp;Keep it</source>
        <translation>&amp;Conservar</translation>
    </message>
    <message>
        <source>The price list was not deleted</source>
        <translation>La lista de precios no se ha eliminado</translation>
    </message>
    <message>
        <source>Nothing to compare with</source>
        <translation>No hay con qué comparar</translation>
    </message>
    <message>
        <source>The list in use can&apos;t be read any more.</source>
        <translation>La lista en uso ya no se puede leer.</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceTableModel</name>
    <message>
        <source>Change “%1”</source>
        <translation>Cambiar «%1»</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceTerms</name>
    <message>
        <source>“%1” is not an amount of money.</source>
        <translation>«%1» no es un importe.</translation>
    </message>
    <message>
        <source>“%1” is not what delivery costs. Write one price, or the least, the typical and the most with dashes between.</source>
        <translation>«%1» no es un coste de envío. Escribir un precio, o el mínimo, el típico y el máximo separados por guiones.</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>La lista</translation>
    </message>
    <message>
        <source>How it is sold</source>
        <translation>Cómo se vende</translation>
    </message>
    <message>
        <source>Change “%1”</source>
        <translation>Cambiar «%1»</translation>
    </message>
    <message>
        <source>&amp;Name of the list</source>
        <translation>&amp;Nombre de la lista</translation>
    </message>
    <message>
        <source>What you will know it by</source>
        <translation>El nombre con el que la reconocerá</translation>
    </message>
    <message>
        <source>&amp;Date of the prices</source>
        <translation>&amp;Fecha de los precios</translation>
    </message>
    <message>
        <source>Year-month-day, for example 2026-11-01</source>
        <translation>Año-mes-día, por ejemplo 2026-11-01</translation>
    </message>
    <message>
        <source>&amp;Currency</source>
        <translation>&amp;Moneda</translation>
    </message>
    <message>
        <source>Its three letters, for example EUR</source>
        <translation>Sus tres letras, por ejemplo EUR</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Lugar</translation>
    </message>
    <message>
        <source>Where the prices were taken</source>
        <translation>Dónde se tomaron los precios</translation>
    </message>
    <message>
        <source>Bought &amp;at</source>
        <translation>Se compra &amp;en</translation>
    </message>
    <message>
        <source>What kind of place: shop, online, club. It stands beside each line of an order from several places.</source>
        <translation>Qué clase de lugar: tienda, internet, club. Figura junto a cada línea de un pedido a varios lugares.</translation>
    </message>
    <message>
        <source>The prices are &amp;invented examples</source>
        <translation>Los precios son ejemplos &amp;inventados</translation>
    </message>
    <message>
        <source>Every sheet with such prices says so</source>
        <translation>Toda hoja con esos precios lo indica</translation>
    </message>
    <message>
        <source>Change whether the prices are invented</source>
        <translation>Cambiar si los precios son inventados</translation>
    </message>
    <message>
        <source>De&amp;livery</source>
        <translation>En&amp;vío</translation>
    </message>
    <message>
        <source>What it costs to have an order brought: one price, or least – typical – most. Empty: it is fetched.</source>
        <translation>Lo que cuesta que traigan un pedido: un precio, o mínimo – típico – máximo. Vacío: se recoge en persona.</translation>
    </message>
    <message>
        <source>&amp;Free from</source>
        <translation>&amp;Gratis desde</translation>
    </message>
    <message>
        <source>Goods of this much are brought for nothing. Empty: never.</source>
        <translation>A partir de este importe, el envío no cuesta nada. Vacío: nunca.</translation>
    </message>
    <message>
        <source>First say what delivery costs, then from how much on it is free.</source>
        <translation>Primero hay que indicar lo que cuesta el envío, y luego a partir de qué importe es gratis.</translation>
    </message>
    <message>
        <source>Ta&amp;x on top</source>
        <translation>Imp&amp;uesto aparte</translation>
    </message>
    <message>
        <source>In per cent of goods and delivery. Empty: it is in the prices.</source>
        <translation>En tanto por ciento de la mercancía y el envío. Vacío: incluido en los precios.</translation>
    </message>
    <message>
        <source>“%1” is not a share in per cent.</source>
        <translation>«%1» no es un tanto por ciento.</translation>
    </message>
    <message>
        <source>Least o&amp;rder</source>
        <translation>&amp;Pedido mínimo</translation>
    </message>
    <message>
        <source>Smaller orders of goods are not taken. Empty: all are.</source>
        <translation>No se aceptan pedidos de mercancía por debajo de este importe. Vacío: se aceptan todos.</translation>
    </message>
</context>
<context>
    <name>loam::desk::QuantityField</name>
    <message>
        <source>Not stated. The program uses %1 meanwhile.</source>
        <translation>Sin indicar. Mientras tanto, el programa usa %1.</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>«%1» no es un número.</translation>
    </message>
    <message>
        <source>“%1” is not a figure in %2.</source>
        <translation>«%1» no es una cifra en %2.</translation>
    </message>
    <message>
        <source>This must lie within %1.</source>
        <translation>El valor debe estar dentro de %1.</translation>
    </message>
</context>
<context>
    <name>loam::desk::ReadingPlot</name>
    <message>
        <source>Readings against what was expected</source>
        <translation>Lecturas frente a lo esperado</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1: read %2, expected %3, %4</source>
        <translation>%1: leído %2, esperado %3, %4</translation>
    </message>
    <message>
        <source>Dot: read, with its accuracy; hollow: not used. Open bar: expected by the plan alone. Filled bar: expected with the readings.</source>
        <translation>Punto: leído, con su exactitud; hueco: no se usa. Barra abierta: lo esperado solo por el plan. Barra llena: lo esperado con las lecturas.</translation>
    </message>
</context>
<context>
    <name>loam::desk::ReadingsPage</name>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Thermometer readings</source>
        <translation>Lecturas de termómetro</translation>
    </message>
    <message>
        <source>Readings from the finished box, hours after anything was changed, narrow what is expected. They hold for the box as it is planned here: remove them when lamps, covers or places change.</source>
        <translation>Las lecturas del terrario terminado, tomadas horas después del último cambio, acotan lo que cabe esperar. Valen para el terrario tal como está planificado aquí: quitarlas si cambian las lámparas, las cubiertas o los lugares.</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Lugar medido</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>Desde la izquierda</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>Desde el frente</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Accuracy, plus or minus</source>
        <translation>Exactitud, más o menos</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Estado de las lámparas</translation>
    </message>
    <message>
        <source>on</source>
        <translation>encendido</translation>
    </message>
    <message>
        <source>off</source>
        <translation>apagado</translation>
    </message>
    <message>
        <source>Room then</source>
        <translation>Habitación en ese momento</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
</context>
<context>
    <name>loam::desk::ResultsPanel</name>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>Hour by hour</source>
        <translation>Hora a hora</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>¿Y si…?</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Shopping</source>
        <translation>Compra</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Costes</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparación</translation>
    </message>
    <message>
        <source>All boxes</source>
        <translation>Todos los terrarios</translation>
    </message>
    <message>
        <source>Working out the new figures; these are the last ones.</source>
        <translation>Calculando las cifras nuevas; estas son las anteriores.</translation>
    </message>
    <message>
        <source>Growth</source>
        <translation>Crecimiento</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
</context>
<context>
    <name>loam::desk::Sheet</name>
    <message>
        <source>cover</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>Nothing is chosen. Tab goes from one thing to the next.</source>
        <translation>No hay nada elegido. El tabulador pasa de una cosa a la siguiente.</translation>
    </message>
    <message>
        <source>Resize %1</source>
        <translation>Cambiar el tamaño de %1</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Mover %1</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>Align %1</source>
        <translation>Alinear %1</translation>
    </message>
    <message>
        <source>&amp;Show in the form</source>
        <translation>&amp;Mostrar en el formulario</translation>
    </message>
    <message>
        <source>&amp;Turn by a quarter</source>
        <translation>&amp;Girar un cuarto de vuelta</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>&amp;Duplicar</translation>
    </message>
    <message>
        <source>&amp;Align with</source>
        <translation>&amp;Alinear con</translation>
    </message>
    <message>
        <source>the &amp;left wall</source>
        <translation>la pared &amp;izquierda</translation>
    </message>
    <message>
        <source>the &amp;right wall</source>
        <translation>la pared &amp;derecha</translation>
    </message>
    <message>
        <source>the &amp;front</source>
        <translation>el &amp;frente</translation>
    </message>
    <message>
        <source>the &amp;back</source>
        <translation>el f&amp;ondo</translation>
    </message>
    <message>
        <source>the middle of the l&amp;ength</source>
        <translation>el centro del &amp;largo</translation>
    </message>
    <message>
        <source>the middle of the &amp;width</source>
        <translation>el centro del &amp;ancho</translation>
    </message>
    <message>
        <source>Take &amp;out</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>&amp;Larger</source>
        <translation>A&amp;mpliar</translation>
    </message>
    <message>
        <source>S&amp;maller</source>
        <translation>&amp;Reducir</translation>
    </message>
    <message>
        <source>&amp;Whole box</source>
        <translation>&amp;Todo el recinto</translation>
    </message>
</context>
<context>
    <name>loam::desk::ShoppingView</name>
    <message>
        <source>&amp;Leave it out of the order</source>
        <translation>&amp;Dejar fuera del pedido</translation>
    </message>
    <message>
        <source>Shopping list; the space bar ticks off what you have</source>
        <translation>Lista de compra; la barra espaciadora marca lo que ya se tiene</translation>
    </message>
    <message>
        <source>Have it? Item</source>
        <translation>¿Ya lo tiene? Artículo</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Envases</translation>
    </message>
    <message>
        <source>Each, %1</source>
        <translation>Unidad, %1</translation>
    </message>
    <message>
        <source>Total, %1</source>
        <translation>Total, %1</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Sobrante</translation>
    </message>
    <message>
        <source>Needed because</source>
        <translation>Necesario porque</translation>
    </message>
</context>
<context>
    <name>loam::desk::SitePage</name>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Noche</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>What you don&apos;t know, leave empty: the program then works with the range shown in grey and says so.</source>
        <translation>Dejar vacío lo que no se sepa: el programa trabaja entonces con el intervalo que aparece en gris, y lo indica.</translation>
    </message>
    <message>
        <source>Room in winter</source>
        <translation>Habitación en invierno</translation>
    </message>
    <message>
        <source>Room in summer</source>
        <translation>Habitación en verano</translation>
    </message>
    <message>
        <source>Bad days</source>
        <translation>Días malos</translation>
    </message>
    <message>
        <source>Room in a heat wave</source>
        <translation>Habitación en una ola de calor</translation>
    </message>
    <message>
        <source>Sun reaches the box</source>
        <translation>El sol llega al terrario</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Place and electricity</source>
        <translation>Lugar y electricidad</translation>
    </message>
    <message>
        <source>Latitude, north is positive</source>
        <translation>Latitud, norte positivo</translation>
    </message>
    <message>
        <source>Price of a kWh</source>
        <translation>Precio del kWh</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Origen</translation>
    </message>
    <message>
        <source>tap</source>
        <translation>grifo</translation>
    </message>
    <message>
        <source>filtered</source>
        <translation>filtrada</translation>
    </message>
    <message>
        <source>reverse osmosis</source>
        <translation>ósmosis inversa</translation>
    </message>
    <message>
        <source>To the drain for each part made</source>
        <translation>Al desagüe por cada parte producida</translation>
    </message>
    <message>
        <source>A cartridge is good for</source>
        <translation>Un cartucho sirve para</translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation>Acondicionador</translation>
    </message>
    <message>
        <source>Price of a m³, drain included</source>
        <translation>Precio del m³, con desagüe</translation>
    </message>
    <message>
        <source>Circuits</source>
        <translation>Circuitos</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>circuito</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>Breaker</source>
        <translation>Disyuntor</translation>
    </message>
    <message>
        <source>Everything else on it</source>
        <translation>Todo lo demás conectado</translation>
    </message>
    <message>
        <source>Outlet strips</source>
        <translation>Regletas</translation>
    </message>
    <message>
        <source>outlet strip</source>
        <translation>regleta</translation>
    </message>
    <message>
        <source>%1  on circuit %2</source>
        <translation>%1  en el circuito %2</translation>
    </message>
    <message>
        <source>On circuit</source>
        <translation>En el circuito</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Corriente nominal</translation>
    </message>
    <message>
        <source>Timed outlets</source>
        <translation>Tomas con temporizador</translation>
    </message>
    <message>
        <source>Always-on outlets</source>
        <translation>Tomas permanentes</translation>
    </message>
    <message>
        <source>Residual-current protection</source>
        <translation>Protección diferencial</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Muebles</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>mueble</translation>
    </message>
    <message>
        <source>Rated load, by its maker</source>
        <translation>Carga nominal, según el fabricante</translation>
    </message>
    <message>
        <source>Loss of the room per kelvin</source>
        <translation>Pérdida de calor por kelvin</translation>
    </message>
</context>
<context>
    <name>loam::desk::TableBar</name>
    <message>
        <source>Co&amp;py as table</source>
        <translation>Co&amp;piar como tabla</translation>
    </message>
    <message>
        <source>E&amp;xport CSV…</source>
        <translation>E&amp;xportar CSV…</translation>
    </message>
    <message>
        <source>Copies the whole table, for a text or a spreadsheet</source>
        <translation>Copia toda la tabla, para un texto o una hoja de cálculo</translation>
    </message>
    <message>
        <source>Saves the whole table as a file for spreadsheets</source>
        <translation>Guarda toda la tabla como archivo para hojas de cálculo</translation>
    </message>
</context>
<context>
    <name>loam::desk::TermsDialog</name>
    <message>
        <source>What the words mean</source>
        <translation>Qué significan las palabras</translation>
    </message>
    <message>
        <source>Find a word</source>
        <translation>Buscar una palabra</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>Meaning</source>
        <translation>Significado</translation>
    </message>
    <message>
        <source>Nothing here uses that word.</source>
        <translation>Aquí nada usa esa palabra.</translation>
    </message>
</context>
<context>
    <name>loam::desk::TourBar</name>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Atrás</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1 of %2.&lt;/b&gt; %3</source>
        <translation>&lt;b&gt;%1 de %2.&lt;/b&gt; %3</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation>&amp;Listo</translation>
    </message>
</context>
<context>
    <name>loam::desk::WaterPage</name>
    <message>
        <source>Moisture and water</source>
        <translation>Humedad y agua</translation>
    </message>
    <message>
        <source>Misting a day</source>
        <translation>Nebulización al día</translation>
    </message>
    <message>
        <source>In how many mistings</source>
        <translation>En cuántas veces</translation>
    </message>
    <message>
        <source>Water changes a day</source>
        <translation>Cambios de agua al día</translation>
    </message>
    <message>
        <source>Hours of light</source>
        <translation>Horas de luz</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Lamps on at</source>
        <translation>Lámparas encendidas a las</translation>
    </message>
    <message>
        <source>Lamps off at</source>
        <translation>Lámparas apagadas a las</translation>
    </message>
    <message>
        <source>Through the year</source>
        <translation>A lo largo del año</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>siempre igual</translation>
    </message>
    <message>
        <source>with the sky</source>
        <translation>según el sol</translation>
    </message>
</context>
<context>
    <name>loam::desk::WelcomeBar</name>
    <message>
        <source>&lt;b&gt;This is an invented example.&lt;/b&gt; Change anything and watch the answers.</source>
        <translation>&lt;b&gt;Esto es un ejemplo inventado.&lt;/b&gt; Cambie lo que quiera y observe las respuestas.</translation>
    </message>
    <message>
        <source>Start your own</source>
        <translation>Empezar uno propio</translation>
    </message>
    <message>
        <source>Open a plan…</source>
        <translation>Abrir un plan…</translation>
    </message>
    <message>
        <source>Show me around</source>
        <translation>Visita guiada</translation>
    </message>
</context>
<context>
    <name>loam::desk::WhatIfView</name>
    <message>
        <source>Top &amp;covered</source>
        <translation>Tapa &amp;cubierta</translation>
    </message>
    <message>
        <source>Share of the top that is covered</source>
        <translation>Parte de la tapa que está cubierta</translation>
    </message>
    <message>
        <source>&amp;Misted a day</source>
        <translation>&amp;Nebulización al día</translation>
    </message>
    <message>
        <source>Water misted a day</source>
        <translation>Agua nebulizada al día</translation>
    </message>
    <message>
        <source>&amp;Take into the plan</source>
        <translation>&amp;Pasar al plan</translation>
    </message>
    <message>
        <source>&amp;Back to the plan’s</source>
        <translation>&amp;Volver a lo del plan</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
</context>
<context>
    <name>loam::desk::WhyPane</name>
    <message>
        <source>Why this figure or finding</source>
        <translation>El porqué de esta cifra o este resultado</translation>
    </message>
    <message>
        <source>Show in the plan</source>
        <translation>Mostrar en el plan</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>How it was worked out</source>
        <translation>Cómo se ha calculado</translation>
    </message>
    <message>
        <source>With these numbers</source>
        <translation>Con estos números</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde procede</translation>
    </message>
    <message>
        <source>Choose a line to see why it says what it says.</source>
        <translation>Elegir una línea para ver por qué dice lo que dice.</translation>
    </message>
</context>
<context>
    <name>loam::desk::Window</name>
    <message>
        <source>Leave it out of the order</source>
        <translation>Dejar fuera del pedido</translation>
    </message>
    <message>
        <source>Export the comparison</source>
        <translation>Exportar la comparación</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>comparación</translation>
    </message>
    <message>
        <source>Not changed.</source>
        <translation>Sin cambios.</translation>
    </message>
    <message>
        <source>Take what was tried</source>
        <translation>Aplicar lo probado</translation>
    </message>
    <message>
        <source>Have “%1”</source>
        <translation>Ya disponible: «%1»</translation>
    </message>
    <message>
        <source>Buy “%1”</source>
        <translation>Comprar «%1»</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Loamstead</source>
        <translation>Loamstead</translation>
    </message>
    <message>
        <source>Working out…</source>
        <translation>Calculando…</translation>
    </message>
    <message>
        <source>Up to date</source>
        <translation>Al día</translation>
    </message>
    <message>
        <source>Looking for remedies…</source>
        <translation>Buscando soluciones…</translation>
    </message>
    <message>
        <source>Unsaved work was found</source>
        <translation>Se ha encontrado trabajo sin guardar</translation>
    </message>
    <message>
        <source>Loamstead did not end properly. There is unsaved work on “%1” from %2.</source>
        <translation>Loamstead no se cerró correctamente. Hay trabajo sin guardar de «%1», del %2.</translation>
    </message>
    <message>
        <source>Recover it</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Ask again next time</source>
        <translation>Preguntar la próxima vez</translation>
    </message>
    <message>
        <source>Delete it</source>
        <translation>Eliminar</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;New plan</source>
        <translation>&amp;Nuevo plan</translation>
    </message>
    <message>
        <source>&amp;First plan, step by step…</source>
        <translation>Pri&amp;mer plan, paso a paso…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>Open the e&amp;xample</source>
        <translation>Abrir el &amp;ejemplo</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Guardar &amp;como…</translation>
    </message>
    <message>
        <source>&amp;Print sheets…</source>
        <translation>&amp;Imprimir hojas…</translation>
    </message>
    <message>
        <source>Sheets as P&amp;DF…</source>
        <translation>Hojas en P&amp;DF…</translation>
    </message>
    <message>
        <source>&amp;Export the drawing…</source>
        <translation>E&amp;xportar el dibujo…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>The file is gone</source>
        <translation>El archivo ya no está</translation>
    </message>
    <message>
        <source>“%1” is no longer there. It is taken off this list.</source>
        <translation>«%1» ya no está allí. Se quita de esta lista.</translation>
    </message>
    <message>
        <source>Clear this list</source>
        <translation>Vaciar esta lista</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Comparar</translation>
    </message>
    <message>
        <source>&amp;Keep as comparison</source>
        <translation>&amp;Guardar para comparar</translation>
    </message>
    <message>
        <source>Remembers the plan as it stands, until the window is closed, and compares with it.</source>
        <translation>Recuerda el plan tal como está, hasta que se cierre la ventana, y compara con él.</translation>
    </message>
    <message>
        <source>With this plan as last &amp;saved</source>
        <translation>Con este &amp;plan tal como se guardó por última vez</translation>
    </message>
    <message>
        <source>With &amp;another plan…</source>
        <translation>Con &amp;otro plan…</translation>
    </message>
    <message>
        <source>With the plan that was ke&amp;pt</source>
        <translation>Con el plan &amp;recordado</translation>
    </message>
    <message>
        <source>&amp;Close the comparison</source>
        <translation>&amp;Cerrar la comparación</translation>
    </message>
    <message>
        <source>&amp;Prices</source>
        <translation>&amp;Precios</translation>
    </message>
    <message>
        <source>Price &amp;lists…</source>
        <translation>&amp;Listas de precios…</translation>
    </message>
    <message>
        <source>Which price list is in use; edit, copy, take in, write out, compare and delete lists.</source>
        <translation>Qué lista de precios está en uso; editar, copiar, importar, exportar, comparar y eliminar listas.</translation>
    </message>
    <message>
        <source>&amp;Use a price list file…</source>
        <translation>&amp;Usar un archivo de lista de precios…</translation>
    </message>
    <message>
        <source>Use the &amp;invented prices</source>
        <translation>Usar los precios &amp;inventados</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unidades</translation>
    </message>
    <message>
        <source>&amp;Metric (cm, kg, °C)</source>
        <translation>&amp;Métricas (cm, kg, °C)</translation>
    </message>
    <message>
        <source>&amp;US (in, lb, °F)</source>
        <translation>&amp;EE. UU. (in, lb, °F)</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>&amp;Aspecto</translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation>Como el e&amp;scritorio</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;Find a command…</source>
        <translation>&amp;Buscar una orden…</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Precauciones</translation>
    </message>
    <message>
        <source>&amp;About Loamstead</source>
        <translation>&amp;Acerca de Loamstead</translation>
    </message>
    <message>
        <source>One moment</source>
        <translation>Un momento</translation>
    </message>
    <message>
        <source>The figures are still being worked out. Try again in a moment.</source>
        <translation>Aún se están calculando las cifras. Inténtelo de nuevo dentro de un momento.</translation>
    </message>
    <message>
        <source>Export the shopping list</source>
        <translation>Exportar la lista de compra</translation>
    </message>
    <message>
        <source>shopping</source>
        <translation>compra</translation>
    </message>
    <message>
        <source>Export the costs</source>
        <translation>Exportar los costes</translation>
    </message>
    <message>
        <source>costs</source>
        <translation>costes</translation>
    </message>
    <message>
        <source>Saved as “%1”.</source>
        <translation>Guardado como «%1».</translation>
    </message>
    <message>
        <source>The sheets were saved as “%1”.</source>
        <translation>Las hojas se han guardado como «%1».</translation>
    </message>
    <message>
        <source>&amp;Preferences…</source>
        <translation>&amp;Preferencias…</translation>
    </message>
    <message>
        <source>&amp;Tour of the example</source>
        <translation>&amp;Visita por el ejemplo</translation>
    </message>
    <message>
        <source>&amp;What the words mean</source>
        <translation>&amp;Qué significan las palabras</translation>
    </message>
    <message>
        <source>Save the &amp;calendar…</source>
        <translation>Guardar el &amp;calendario…</translation>
    </message>
    <message>
        <source>What has to be done on which day, as a list and as a file for calendar programs.</source>
        <translation>Lo que hay que hacer cada día, como lista y como archivo para programas de calendario.</translation>
    </message>
    <message>
        <source>For a list of adop&amp;ters…</source>
        <translation>Para una lista de adop&amp;tantes…</translation>
    </message>
    <message>
        <source>The sheets of each row of a list, with this plan as the template, and one order over all.</source>
        <translation>Las hojas de cada fila de una lista, con este plan como plantilla, y un solo pedido para todas.</translation>
    </message>
</context>
<context>
    <name>loam::desk::YearStrip</name>
    <message>
        <source>The year by months: hours of light and kilowatt-hours</source>
        <translation>El año por meses: horas de luz y kilovatios hora</translation>
    </message>
    <message>
        <source>Lamps on (filled), day outside (dashed)</source>
        <translation>Lámparas (relleno), día exterior (discontinuo)</translation>
    </message>
    <message>
        <source>kWh a month, with its range</source>
        <translation>kWh al mes, con su intervalo</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>reposo</translation>
    </message>
</context>
<context>
    <name>loam::desk::YearView</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The lamps follow the day outside, held within what the sheet asks for, about the middle of the times that are stated.</source>
        <translation>Las lámparas siguen el día exterior, dentro de lo que pide la ficha, centradas en las horas indicadas.</translation>
    </message>
    <message>
        <source>The day outside on the 16th: %1.
</source>
        <translation>El día en el exterior, el 16: %1.
</translation>
    </message>
    <message>
        <source>With the sky, on the 16th: %1 of light, from %2 to %3.</source>
        <translation>Según el sol, el 16: %1 de luz, de %2 a %3.</translation>
    </message>
    <message>
        <source>The animals rest in the cold: on the 16th %1 of the usual light and heat runs.</source>
        <translation>Los animales descansan en frío: el 16 funciona %1 de la luz y el calor habituales.</translation>
    </message>
    <message>
        <source>Day length: Forsythe, Rykiel, Stahl, Wu &amp; Schoolfield 1995. Lag of the cold behind the sun: Trenberth 1983 (from memory). The cosine is our own.</source>
        <translation>Duración del día: Forsythe, Rykiel, Stahl, Wu y Schoolfield 1995. Retraso del frío respecto al sol: Trenberth 1983 (de memoria). El coseno es nuestro.</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>reposo</translation>
    </message>
    <message>
        <source>Hours of light and kilowatt-hours by month</source>
        <translation>Horas de luz y kilovatios hora por mes</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Encendido</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Apagado</translation>
    </message>
    <message>
        <source>Light, h</source>
        <translation>Luz, h</translation>
    </message>
    <message>
        <source>Outside, h</source>
        <translation>Exterior, h</translation>
    </message>
    <message>
        <source>kWh</source>
        <translation>kWh</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Intervalo</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Costes</translation>
    </message>
    <message>
        <source>%1: %2 h, %3 kWh</source>
        <translation>%1: %2 h, %3 kWh</translation>
    </message>
</context>
<context>
    <name>loam::desk::YearsChart</name>
    <message>
        <source>Cost over the years</source>
        <translation>Coste a lo largo de los años</translation>
    </message>
    <message>
        <source>Spent so far, %1</source>
        <translation>Gastado hasta entonces, %1</translation>
    </message>
    <message>
        <source>Years; 0 is the start</source>
        <translation>Años; 0 es el inicio</translation>
    </message>
    <message>
        <source>After %1 years: %2</source>
        <translation>Tras %1 años: %2</translation>
    </message>
</context>
<context>
    <name>names</name>
    <message>
        <source>basking spot</source>
        <translation>zona de asoleo</translation>
    </message>
    <message>
        <source>warm side</source>
        <translation>lado cálido</translation>
    </message>
    <message>
        <source>cool side</source>
        <translation>lado fresco</translation>
    </message>
    <message>
        <source>surface</source>
        <translation>superficie</translation>
    </message>
    <message>
        <source>ground level</source>
        <translation>ras de suelo</translation>
    </message>
    <message>
        <source>animal&apos;s back</source>
        <translation>lomo</translation>
    </message>
    <message>
        <source>infrared thermometer</source>
        <translation>termómetro infrarrojo</translation>
    </message>
    <message>
        <source>shaded thermometer at ground level</source>
        <translation>termómetro a la sombra a ras de suelo</translation>
    </message>
    <message>
        <source>computed, not read from an instrument</source>
        <translation>calculado, no leído en un instrumento</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usada</translation>
    </message>
    <message>
        <source>left out: doesn&apos;t fit</source>
        <translation>descartada: no encaja</translation>
    </message>
    <message>
        <source>not used: the readings don&apos;t fit together</source>
        <translation>no usada: las lecturas no concuerdan entre sí</translation>
    </message>
    <message>
        <source>not used: outside the box</source>
        <translation>no usada: fuera del terrario</translation>
    </message>
    <message>
        <source>not used: lamps on or off?</source>
        <translation>no usada: ¿lámparas encendidas o apagadas?</translation>
    </message>
    <message>
        <source>not used: at which dimmer level?</source>
        <translation>no usada: ¿con qué nivel del atenuador?</translation>
    </message>
    <message>
        <source>winter day</source>
        <translation>día de invierno</translation>
    </message>
    <message>
        <source>winter night</source>
        <translation>noche de invierno</translation>
    </message>
    <message>
        <source>summer day</source>
        <translation>día de verano</translation>
    </message>
    <message>
        <source>summer night</source>
        <translation>noche de verano</translation>
    </message>
    <message>
        <source>heat wave</source>
        <translation>ola de calor</translation>
    </message>
    <message>
        <source>power cut</source>
        <translation>corte de luz</translation>
    </message>
    <message>
        <source>lamp burnt out</source>
        <translation>lámpara fundida</translation>
    </message>
    <message>
        <source>mat stuck on</source>
        <translation>manta térmica que no se apaga</translation>
    </message>
    <message>
        <source>covers forgotten off</source>
        <translation>cubiertas sin volver a poner</translation>
    </message>
    <message>
        <source>Enclosure</source>
        <translation>Terrario</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Controls</source>
        <translation>Regulación</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>Furniture</source>
        <translation>Mobiliario</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation>Electricidad</translation>
    </message>
    <message>
        <source>Measuring</source>
        <translation>Medición</translation>
    </message>
    <message>
        <source>Hygiene</source>
        <translation>Higiene</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Alimentación</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Salud</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Otros</translation>
    </message>
    <message>
        <source>statutory figure</source>
        <translation>cifra legal</translation>
    </message>
    <message>
        <source>welfare advice</source>
        <translation>recomendación de bienestar</translation>
    </message>
    <message>
        <source>veterinary advice</source>
        <translation>recomendación veterinaria</translation>
    </message>
    <message>
        <source>laboratory minimum</source>
        <translation>mínimo de laboratorio</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>confirmada</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>derivada</translation>
    </message>
    <message>
        <source>second-hand, unconfirmed</source>
        <translation>de segunda mano, sin confirmar</translation>
    </message>
    <message>
        <source>from memory, unconfirmed</source>
        <translation>de memoria, sin confirmar</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>electricity</source>
        <translation>electricidad</translation>
    </message>
    <message>
        <source>replacement</source>
        <translation>sustitución</translation>
    </message>
    <message>
        <source>substrate</source>
        <translation>sustrato</translation>
    </message>
    <message>
        <source>food</source>
        <translation>alimento</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>health</source>
        <translation>salud</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otros</translation>
    </message>
    <message>
        <source>land turtles</source>
        <translation>tortugas terrestres</translation>
    </message>
    <message>
        <source>tortoises</source>
        <translation>tortugas de tierra</translation>
    </message>
    <message>
        <source>lizards</source>
        <translation>lagartos</translation>
    </message>
    <message>
        <source>snakes</source>
        <translation>serpientes</translation>
    </message>
    <message>
        <source>frogs</source>
        <translation>ranas</translation>
    </message>
    <message>
        <source>flood lamp</source>
        <translation>foco reflector</translation>
    </message>
    <message>
        <source>UV tube</source>
        <translation>tubo UV</translation>
    </message>
    <message>
        <source>compact UV lamp</source>
        <translation>lámpara UV compacta</translation>
    </message>
    <message>
        <source>mercury vapour lamp</source>
        <translation>lámpara de vapor de mercurio</translation>
    </message>
    <message>
        <source>metal halide lamp</source>
        <translation>lámpara de halogenuros metálicos</translation>
    </message>
    <message>
        <source>LED strip</source>
        <translation>tira LED</translation>
    </message>
    <message>
        <source>ceramic heater</source>
        <translation>emisor cerámico</translation>
    </message>
    <message>
        <source>radiant panel</source>
        <translation>panel radiante</translation>
    </message>
    <message>
        <source>heat mat</source>
        <translation>manta térmica</translation>
    </message>
    <message>
        <source>mister</source>
        <translation>nebulizador</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>ventilador</translation>
    </message>
    <message>
        <source>water bowl</source>
        <translation>bebedero</translation>
    </message>
    <message>
        <source>hide</source>
        <translation>refugio</translation>
    </message>
    <message>
        <source>humid hide</source>
        <translation>refugio húmedo</translation>
    </message>
    <message>
        <source>rock</source>
        <translation>roca</translation>
    </message>
    <message>
        <source>log</source>
        <translation>tronco</translation>
    </message>
    <message>
        <source>plant</source>
        <translation>planta</translation>
    </message>
    <message>
        <source>feeding dish</source>
        <translation>comedero</translation>
    </message>
    <message>
        <source>screen top</source>
        <translation>tapa de malla</translation>
    </message>
    <message>
        <source>glass top</source>
        <translation>tapa de vidrio</translation>
    </message>
    <message>
        <source>board top</source>
        <translation>tapa de tablero</translation>
    </message>
    <message>
        <source>open top</source>
        <translation>sin tapa</translation>
    </message>
    <message>
        <source>front wall</source>
        <translation>pared frontal</translation>
    </message>
    <message>
        <source>back wall</source>
        <translation>pared del fondo</translation>
    </message>
    <message>
        <source>left wall</source>
        <translation>pared izquierda</translation>
    </message>
    <message>
        <source>right wall</source>
        <translation>pared derecha</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>suelo</translation>
    </message>
    <message>
        <source>top</source>
        <translation>tapa</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>interior</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>por fuera</translation>
    </message>
    <message>
        <source>lining inside the front wall</source>
        <translation>revestimiento interior de la pared frontal</translation>
    </message>
    <message>
        <source>lining outside the front wall</source>
        <translation>revestimiento exterior de la pared frontal</translation>
    </message>
    <message>
        <source>lining inside the back wall</source>
        <translation>revestimiento interior de la pared del fondo</translation>
    </message>
    <message>
        <source>lining outside the back wall</source>
        <translation>revestimiento exterior de la pared del fondo</translation>
    </message>
    <message>
        <source>lining inside the left wall</source>
        <translation>revestimiento interior de la pared izquierda</translation>
    </message>
    <message>
        <source>lining outside the left wall</source>
        <translation>revestimiento exterior de la pared izquierda</translation>
    </message>
    <message>
        <source>lining inside the right wall</source>
        <translation>revestimiento interior de la pared derecha</translation>
    </message>
    <message>
        <source>lining outside the right wall</source>
        <translation>revestimiento exterior de la pared derecha</translation>
    </message>
    <message>
        <source>overhead</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>under the base</source>
        <translation>bajo la base</translation>
    </message>
    <message>
        <source>in the bed</source>
        <translation>en el sustrato</translation>
    </message>
    <message>
        <source>on the back wall</source>
        <translation>en la pared del fondo</translation>
    </message>
    <message>
        <source>on the front wall</source>
        <translation>en la pared frontal</translation>
    </message>
    <message>
        <source>on the left wall</source>
        <translation>en la pared izquierda</translation>
    </message>
    <message>
        <source>on the right wall</source>
        <translation>en la pared derecha</translation>
    </message>
    <message>
        <source>sex not known</source>
        <translation>sexo desconocido</translation>
    </message>
    <message>
        <source>female</source>
        <translation>hembra</translation>
    </message>
    <message>
        <source>male</source>
        <translation>macho</translation>
    </message>
    <message>
        <source>Common practice, no source</source>
        <translation>Práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>Common practice, from memory</source>
        <translation>Práctica habitual, de memoria</translation>
    </message>
    <message>
        <source>From memory, not checked</source>
        <translation>De memoria, sin comprobar</translation>
    </message>
    <message>
        <source>No source</source>
        <translation>Sin fuente</translation>
    </message>
</context>
<context>
    <name>numbers</name>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation>1 semana</translation>
    </message>
    <message>
        <source>1 month</source>
        <translation>1 mes</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 año</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1 (likely %2)</source>
        <translation>%1 (probable %2)</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>no target</source>
        <translation>sin valor objetivo</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 al día</translation>
    </message>
    <message>
        <source>%1, typically %2</source>
        <translation>%1, normalmente %2</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semanas</translation>
    </message>
    <message>
        <source>months</source>
        <translation>meses</translation>
    </message>
    <message>
        <source>years</source>
        <translation>años</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>as QLocale writes dates</comment>
        <translation>d MMM yyyy</translation>
    </message>
</context>
<context>
    <name>places</name>
    <message>
        <source>cover</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>substrate</source>
        <translation>sustrato</translation>
    </message>
    <message>
        <source>animal</source>
        <translation>animal</translation>
    </message>
    <message>
        <source>animals</source>
        <translation>animales</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>vent</source>
        <translation>rejilla de ventilación</translation>
    </message>
    <message>
        <source>enclosure</source>
        <translation>terrario</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>circuito</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>regleta</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>mueble</translation>
    </message>
    <message>
        <source>owned item</source>
        <translation>artículo ya disponible</translation>
    </message>
    <message>
        <source>change of needs</source>
        <translation>cambio en las necesidades</translation>
    </message>
    <message>
        <source>title</source>
        <translation>título</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>moneda</translation>
    </message>
    <message>
        <source>whose law applies</source>
        <translation>legislación aplicable</translation>
    </message>
    <message>
        <source>site</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitud</translation>
    </message>
    <message>
        <source>price of electricity</source>
        <translation>precio de la electricidad</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>where the water comes from</source>
        <translation>origen del agua</translation>
    </message>
    <message>
        <source>litres to the drain for each litre made</source>
        <translation>litros al desagüe por cada litro producido</translation>
    </message>
    <message>
        <source>what a cartridge is good for</source>
        <translation>lo que rinde un cartucho</translation>
    </message>
    <message>
        <source>whether conditioner goes into the water</source>
        <translation>si se añade acondicionador al agua</translation>
    </message>
    <message>
        <source>price of a cubic metre of water</source>
        <translation>precio del metro cúbico de agua</translation>
    </message>
    <message>
        <source>whether it is well</source>
        <translation>si está sano</translation>
    </message>
    <message>
        <source>winter rest</source>
        <translation>hibernación</translation>
    </message>
    <message>
        <source>first day without food</source>
        <translation>primer día sin comida</translation>
    </message>
    <message>
        <source>weeks in the cold</source>
        <translation>semanas en frío</translation>
    </message>
    <message>
        <source>vet&apos;s check</source>
        <translation>revisión veterinaria</translation>
    </message>
    <message>
        <source>what the lamp holder may take</source>
        <translation>lo que admite el portalámparas</translation>
    </message>
    <message>
        <source>how the thermostat regulates</source>
        <translation>modo de regulación del termostato</translation>
    </message>
    <message>
        <source>what the control may feed</source>
        <translation>lo que admite el control</translation>
    </message>
    <message>
        <source>hours of light through the year</source>
        <translation>horas de luz a lo largo del año</translation>
    </message>
    <message>
        <source>room</source>
        <translation>habitación</translation>
    </message>
    <message>
        <source>winter</source>
        <translation>invierno</translation>
    </message>
    <message>
        <source>summer</source>
        <translation>verano</translation>
    </message>
    <message>
        <source>temperature by day</source>
        <translation>temperatura de día</translation>
    </message>
    <message>
        <source>temperature at night</source>
        <translation>temperatura de noche</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>temperature in a heat wave</source>
        <translation>temperatura en una ola de calor</translation>
    </message>
    <message>
        <source>power cut</source>
        <translation>corte de luz</translation>
    </message>
    <message>
        <source>duration</source>
        <translation>duración</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation>temperatura de la habitación</translation>
    </message>
    <message>
        <source>what the room loses per kelvin</source>
        <translation>lo que pierde la habitación por kelvin</translation>
    </message>
    <message>
        <source>whether sun reaches the enclosure</source>
        <translation>si el sol llega al terrario</translation>
    </message>
    <message>
        <source>circuits</source>
        <translation>circuitos</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>rated current</source>
        <translation>corriente nominal</translation>
    </message>
    <message>
        <source>what else runs on it</source>
        <translation>lo demás que tiene conectado</translation>
    </message>
    <message>
        <source>outlet strips</source>
        <translation>regletas</translation>
    </message>
    <message>
        <source>timed outlets</source>
        <translation>tomas con temporizador</translation>
    </message>
    <message>
        <source>always-on outlets</source>
        <translation>tomas permanentes</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>alimentación desde</translation>
    </message>
    <message>
        <source>residual-current protection</source>
        <translation>protección diferencial</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>muebles</translation>
    </message>
    <message>
        <source>what it may carry</source>
        <translation>lo que puede soportar</translation>
    </message>
    <message>
        <source>enclosures</source>
        <translation>terrarios</translation>
    </message>
    <message>
        <source>id</source>
        <translation>identificador</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>box</source>
        <translation>recinto</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>width</source>
        <translation>anchura</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>walls</source>
        <translation>paredes</translation>
    </message>
    <message>
        <source>thickness of the walls</source>
        <translation>grosor de las paredes</translation>
    </message>
    <message>
        <source>base</source>
        <translation>base</translation>
    </message>
    <message>
        <source>thickness of the base</source>
        <translation>grosor de la base</translation>
    </message>
    <message>
        <source>top</source>
        <translation>tapa</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>open share of the mesh</source>
        <translation>parte abierta de la malla</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>grosor</translation>
    </message>
    <message>
        <source>walls of another make</source>
        <translation>paredes de otro material</translation>
    </message>
    <message>
        <source>linings of walls</source>
        <translation>revestimientos de las paredes</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>pared</translation>
    </message>
    <message>
        <source>side of the wall</source>
        <translation>cara de la pared</translation>
    </message>
    <message>
        <source>covers</source>
        <translation>cubiertas</translation>
    </message>
    <message>
        <source>material</source>
        <translation>material</translation>
    </message>
    <message>
        <source>place along the length</source>
        <translation>posición a lo largo</translation>
    </message>
    <message>
        <source>place towards the back</source>
        <translation>posición hacia el fondo</translation>
    </message>
    <message>
        <source>height of the lower edge</source>
        <translation>altura del borde inferior</translation>
    </message>
    <message>
        <source>vents</source>
        <translation>aberturas de ventilación</translation>
    </message>
    <message>
        <source>free area</source>
        <translation>superficie libre</translation>
    </message>
    <message>
        <source>height above the base</source>
        <translation>altura sobre la base</translation>
    </message>
    <message>
        <source>species</source>
        <translation>especie</translation>
    </message>
    <message>
        <source>number</source>
        <translation>número</translation>
    </message>
    <message>
        <source>sex</source>
        <translation>sexo</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>peso</translation>
    </message>
    <message>
        <source>age</source>
        <translation>edad</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profundidad</translation>
    </message>
    <message>
        <source>depth at the right end</source>
        <translation>profundidad en el extremo derecho</translation>
    </message>
    <message>
        <source>share of water</source>
        <translation>proporción de agua</translation>
    </message>
    <message>
        <source>fittings</source>
        <translation>accesorios</translation>
    </message>
    <message>
        <source>rotation</source>
        <translation>giro</translation>
    </message>
    <message>
        <source>depth of water</source>
        <translation>profundidad del agua</translation>
    </message>
    <message>
        <source>whether animals walk over it</source>
        <translation>si los animales andan por encima</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>equipos</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>where it sits</source>
        <translation>ubicación</translation>
    </message>
    <message>
        <source>beam angle</source>
        <translation>ángulo del haz</translation>
    </message>
    <message>
        <source>clearance from what can burn</source>
        <translation>distancia a lo que puede arder</translation>
    </message>
    <message>
        <source>diameter of its dome</source>
        <translation>diámetro de la campana</translation>
    </message>
    <message>
        <source>switching difference</source>
        <translation>histéresis</translation>
    </message>
    <message>
        <source>mistings in a day</source>
        <translation>nebulizaciones al día</translation>
    </message>
    <message>
        <source>whether it has a guard</source>
        <translation>si lleva rejilla protectora</translation>
    </message>
    <message>
        <source>air gap</source>
        <translation>cámara de aire</translation>
    </message>
    <message>
        <source>what lies below</source>
        <translation>lo que hay debajo</translation>
    </message>
    <message>
        <source>hours burnt so far</source>
        <translation>horas de uso hasta ahora</translation>
    </message>
    <message>
        <source>mesh in front of the meter</source>
        <translation>malla delante del medidor</translation>
    </message>
    <message>
        <source>hours burnt when the UV was read</source>
        <translation>horas de uso cuando se midió el UV</translation>
    </message>
    <message>
        <source>distance table</source>
        <translation>tabla de distancias</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>distancia</translation>
    </message>
    <message>
        <source>UV index</source>
        <translation>índice UV</translation>
    </message>
    <message>
        <source>timed or always on</source>
        <translation>con temporizador o permanente</translation>
    </message>
    <message>
        <source>control</source>
        <translation>control</translation>
    </message>
    <message>
        <source>dimmer level</source>
        <translation>nivel del atenuador</translation>
    </message>
    <message>
        <source>set temperature</source>
        <translation>temperatura fijada</translation>
    </message>
    <message>
        <source>place of the probe</source>
        <translation>lugar de la sonda</translation>
    </message>
    <message>
        <source>light</source>
        <translation>luz</translation>
    </message>
    <message>
        <source>on</source>
        <translation>encendido</translation>
    </message>
    <message>
        <source>off</source>
        <translation>apagado</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>misting in a day</source>
        <translation>nebulización en un día</translation>
    </message>
    <message>
        <source>water changes in a day</source>
        <translation>cambios de agua en un día</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>lecturas</translation>
    </message>
    <message>
        <source>what is measured</source>
        <translation>qué se mide</translation>
    </message>
    <message>
        <source>temperature read</source>
        <translation>temperatura leída</translation>
    </message>
    <message>
        <source>accuracy</source>
        <translation>exactitud</translation>
    </message>
    <message>
        <source>lamps on or off</source>
        <translation>estado de las lámparas</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>what you own</source>
        <translation>lo que ya está disponible</translation>
    </message>
    <message>
        <source>item</source>
        <translation>artículo</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>budget</source>
        <translation>presupuesto</translation>
    </message>
    <message>
        <source>years to look at</source>
        <translation>años considerados</translation>
    </message>
    <message>
        <source>discount rate</source>
        <translation>tasa de descuento</translation>
    </message>
    <message>
        <source>price level</source>
        <translation>nivel de precios</translation>
    </message>
    <message>
        <source>how packs are chosen</source>
        <translation>criterio para elegir los envases</translation>
    </message>
    <message>
        <source>changes of the needs</source>
        <translation>cambios en las necesidades</translation>
    </message>
    <message>
        <source>need</source>
        <translation>necesidad</translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation>de dónde procede</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motivo</translation>
    </message>
    <message>
        <source>lines of your own</source>
        <translation>líneas propias</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>bought again after</source>
        <translation>se vuelve a comprar tras</translation>
    </message>
    <message>
        <source>where you buy</source>
        <translation>dónde se compra</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>reserva</translation>
    </message>
    <message>
        <source>enclosure that it takes over from</source>
        <translation>terrario al que sustituye</translation>
    </message>
    <message>
        <source>measurements</source>
        <translation>mediciones</translation>
    </message>
</context>
<context>
    <name>prices</name>
    <message>
        <source>A name can&apos;t be empty.</source>
        <translation>El nombre no puede estar vacío.</translation>
    </message>
    <message>
        <source>“%1” is not a price. Write a number such as %2.</source>
        <translation>«%1» no es un precio. Escribir un número, por ejemplo %2.</translation>
    </message>
    <message>
        <source>“%1” is not an amount. Write one number above zero, or the least, the likely and the most with dashes between: 55 – 60 – 65.</source>
        <translation>«%1» no es una cantidad. Escribir un número mayor que cero, o el mínimo, el probable y el máximo separados por guiones: 55 – 60 – 65.</translation>
    </message>
    <message>
        <source>“%1” is not a span. Write it as 75 – 100, open to one side as 75 –, or leave it empty.</source>
        <translation>«%1» no es un intervalo. Escribirlo como 75 – 100, abierto por un lado como 75 –, o dejarlo vacío.</translation>
    </message>
    <message>
        <source>“%1” is not a useful life. Write one number, the least, the likely and the most with dashes between, or leave it empty where it is not known.</source>
        <translation>«%1» no es una vida útil. Escribir un número, o el mínimo, el probable y el máximo separados por guiones, o dejarlo vacío si no se sabe.</translation>
    </message>
    <message>
        <source>“%1” is not a weight.</source>
        <translation>«%1» no es un peso.</translation>
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
        <source>Item</source>
        <translation>Artículo</translation>
    </message>
    <message>
        <source>A generic name, in all rows of this item</source>
        <translation>Un nombre genérico, en todas las filas de este artículo</translation>
    </message>
    <message>
        <source>Bought for</source>
        <translation>Se compra para</translation>
    </message>
    <message>
        <source>The kind of need that the item meets</source>
        <translation>El tipo de necesidad que cubre el artículo</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Apto para</translation>
    </message>
    <message>
        <source>Which lamp watts, floor area in m² or number of outlets it fits: 75 – 100, 75 –, or empty where it fits all</source>
        <translation>Para qué vatios de lámpara, superficie de suelo en m² o número de tomas sirve: 75 – 100, 75 –, o vacío si sirve para todo</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Envase</translation>
    </message>
    <message>
        <source>How it is sold, as it stands on the shelf</source>
        <translation>Cómo se vende, tal como está en el estante</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Contenido</translation>
    </message>
    <message>
        <source>How much of the unit is in a pack: one number, or least – likely – most</source>
        <translation>Cuánto de la unidad contiene un envase: un número, o mínimo – probable – máximo</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>What the item is counted in</source>
        <translation>En qué se cuenta el artículo</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Bajo</translation>
    </message>
    <message>
        <source>The least a pack costs</source>
        <translation>Lo mínimo que cuesta un envase</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>Típico</translation>
    </message>
    <message>
        <source>What a pack costs most of the time</source>
        <translation>Lo que suele costar un envase</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>The most a pack costs</source>
        <translation>Lo máximo que cuesta un envase</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>Disponible</translation>
    </message>
    <message>
        <source>Whether the pack can be bought now</source>
        <translation>Si el envase se puede comprar ahora</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Of a pack as bought, for carrying it home</source>
        <translation>De un envase tal como se compra, para llevarlo a casa</translation>
    </message>
    <message>
        <source>Lasts, months</source>
        <translation>Duración, meses</translation>
    </message>
    <message>
        <source>Useful life: one number, or least – likely – most; empty where it is not known</source>
        <translation>Vida útil: un número, o mínimo – probable – máximo; vacío si no se sabe</translation>
    </message>
    <message>
        <source>Lasts, hours</source>
        <translation>Duración, horas</translation>
    </message>
    <message>
        <source>Useful life in hours of use: one number, or least – likely – most; empty where it is not known</source>
        <translation>Vida útil en horas de uso: un número, o mínimo – probable – máximo; vacío si no se sabe</translation>
    </message>
</context>
<context>
    <name>problems</name>
    <message>
        <source>lower-case letters and digits, in words joined by single hyphens</source>
        <translation>minúsculas y cifras, en palabras unidas por un solo guion</translation>
    </message>
    <message>
        <source>letters, digits, hyphens and underscores, beginning with a letter or digit</source>
        <translation>letras, cifras, guiones y guiones bajos, empezando por una letra o una cifra</translation>
    </message>
    <message>
        <source>a time of day such as 07:30</source>
        <translation>una hora como 07:30</translation>
    </message>
    <message>
        <source>a date such as 2026-11-25</source>
        <translation>una fecha como 2026-11-25</translation>
    </message>
    <message>
        <source>of the form %1</source>
        <translation>de la forma %1</translation>
    </message>
    <message>
        <source>an object in braces</source>
        <translation>un objeto entre llaves</translation>
    </message>
    <message>
        <source>a list in square brackets</source>
        <translation>una lista entre corchetes</translation>
    </message>
    <message>
        <source>text in quotation marks</source>
        <translation>un texto entre comillas</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true o false</translation>
    </message>
    <message>
        <source>null</source>
        <translation>null</translation>
    </message>
    <message>
        <source>the length from snout to vent</source>
        <translation>la longitud hocico-cloaca</translation>
    </message>
    <message>
        <source>the length of the shell</source>
        <translation>la longitud del caparazón</translation>
    </message>
    <message>
        <source>the total length</source>
        <translation>la longitud total</translation>
    </message>
    <message>
        <source>This is not right (%1).</source>
        <translation>Esto no es correcto (%1).</translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>wider range</source>
        <translation>intervalo más amplio</translation>
    </message>
    <message>
        <source>narrower range</source>
        <translation>intervalo más estrecho</translation>
    </message>
    <message>
        <source>dearer</source>
        <translation>más caro</translation>
    </message>
    <message>
        <source>cheaper</source>
        <translation>más barato</translation>
    </message>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>fewer</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>other verdict</source>
        <translation>otro dictamen</translation>
    </message>
    <message>
        <source>better</source>
        <translation>mejor</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>peor</translation>
    </message>
    <message>
        <source>larger</source>
        <translation>más grande</translation>
    </message>
    <message>
        <source>smaller</source>
        <translation>más pequeño</translation>
    </message>
    <message>
        <source>less</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Suelo</translation>
    </message>
    <message>
        <source>can be walked on</source>
        <translation>transitable</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>exigido</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Conectado</translation>
    </message>
    <message>
        <source>Energy in a year</source>
        <translation>Energía al año</translation>
    </message>
    <message>
        <source>on a winter day</source>
        <translation>en un día de invierno</translation>
    </message>
    <message>
        <source>on a summer day</source>
        <translation>en un día de verano</translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation>Agua al día</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>heavier</source>
        <translation>más pesado</translation>
    </message>
    <message>
        <source>lighter</source>
        <translation>más ligero</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>same</source>
        <translation>igual</translation>
    </message>
    <message>
        <source>can&apos;t be told</source>
        <translation>no se puede saber</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nuevo</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>ya no está</translation>
    </message>
    <message>
        <source>warmer</source>
        <translation>más cálido</translation>
    </message>
    <message>
        <source>colder</source>
        <translation>más frío</translation>
    </message>
    <message>
        <source>damper</source>
        <translation>más húmedo</translation>
    </message>
    <message>
        <source>drier</source>
        <translation>más seco</translation>
    </message>
    <message>
        <source>(none)</source>
        <translation>(nada)</translation>
    </message>
    <message>
        <source>All in all</source>
        <translation>En conjunto</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Costs, at typical prices</source>
        <translation>Costes, a precios típicos</translation>
    </message>
    <message>
        <source>To start</source>
        <translation>Coste inicial</translation>
    </message>
    <message>
        <source>Net of what is owned; lines without a price are not in it.</source>
        <translation>Descontado lo ya disponible; no incluye las líneas sin precio.</translation>
    </message>
    <message>
        <source>To run, per year</source>
        <translation>Costes corrientes por año</translation>
    </message>
    <message>
        <source>What is used up, and each replacement spread evenly over its life.</source>
        <translation>Lo que se consume, y cada sustitución repartida por igual a lo largo de su vida útil.</translation>
    </message>
    <message>
        <source>of that, electricity</source>
        <translation>de ello, electricidad</translation>
    </message>
    <message>
        <source>Net present cost</source>
        <translation>Coste actual neto</translation>
    </message>
    <message>
        <source>As a sum each year</source>
        <translation>Como suma anual</translation>
    </message>
    <message>
        <source>Without a price</source>
        <translation>Sin precio</translation>
    </message>
    <message>
        <source>Electricity in it</source>
        <translation>Electricidad incluida</translation>
    </message>
    <message>
        <source>no: price not stated</source>
        <translation>no: precio sin indicar</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>Bought in different numbers</source>
        <translation>Se compra en distinto número</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparación</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Apartado</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Cifra</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>%1 costs no more to start and no more to run.</source>
        <translation>%1 no cuesta más, ni al empezar ni al año.</translation>
    </message>
    <message>
        <source>What %1 costs more to start comes back in %2 by what it costs less to run.</source>
        <translation>Lo que %1 cuesta de más al empezar se recupera en %2 con lo que cuesta de menos cada año.</translation>
    </message>
    <message>
        <source>%1 costs no less to start and no less to run: nothing comes back.</source>
        <translation>%1 no cuesta menos, ni al empezar ni al año: no se recupera nada.</translation>
    </message>
    <message>
        <source>%1 costs less to start and more to run: after %2 it has cost more.</source>
        <translation>%1 cuesta menos al empezar y más cada año: al cabo de %2 ha costado más.</translation>
    </message>
    <message>
        <source>Whether it pays back is not known: a tariff is missing, different things have no price, or the price list is in another currency.</source>
        <translation>No se sabe si se amortiza: falta una tarifa, hay cosas distintas sin precio o la lista de precios está en otra moneda.</translation>
    </message>
    <message>
        <source>Nothing: both orders are the same.</source>
        <translation>Nada: los dos pedidos son iguales.</translation>
    </message>
    <message>
        <source>First:  </source>
        <translation>Primero: </translation>
    </message>
    <message>
        <source>Second: </source>
        <translation>Segundo: </translation>
    </message>
    <message>
        <source>Assessed as of %1.</source>
        <translation>Evaluado a fecha de %1.</translation>
    </message>
    <message>
        <source>the second</source>
        <translation>el segundo</translation>
    </message>
    <message>
        <source>The prices are invented examples.</source>
        <translation>Los precios son ejemplos inventados.</translation>
    </message>
    <message>
        <source>Due again about every %1.</source>
        <translation>Vuelve a hacer falta cada %1, más o menos.</translation>
    </message>
    <message>
        <source>of that, delivery by %1</source>
        <translation>de ello, envío de %1</translation>
    </message>
    <message>
        <source>As the price list states it; goods of enough may be brought for nothing.</source>
        <translation>Según la lista de precios; a partir de cierto importe, el envío puede ser gratis.</translation>
    </message>
    <message>
        <source>of that, tax at %1</source>
        <translation>de ello, impuesto en %1</translation>
    </message>
    <message>
        <source>It comes on top of goods and delivery there.</source>
        <translation>Allí se suma a la mercancía y al envío.</translation>
    </message>
    <message>
        <source>To run, a year</source>
        <translation>Costes corrientes/año</translation>
    </message>
    <message>
        <source>The sum of the lines under “What runs up in a year”.</source>
        <translation>La suma de las líneas de «Lo que se acumula en un año».</translation>
    </message>
    <message>
        <source>By the head, of %1 animals</source>
        <translation>Por cabeza, de %1 animales</translation>
    </message>
    <message>
        <source>What it costs to run, shared out evenly.</source>
        <translation>Los costes corrientes, repartidos por igual.</translation>
    </message>
    <message>
        <source>What runs up in a year</source>
        <translation>Lo que se acumula en un año</translation>
    </message>
    <message>
        <source>Electricity</source>
        <translation>Electricidad</translation>
    </message>
    <message>
        <source>State the price of electricity under “Site and room”.</source>
        <translation>Indicar el precio de la electricidad en «Lugar y habitación».</translation>
    </message>
    <message>
        <source>All payments of the horizon at typical prices, later ones discounted.</source>
        <translation>Todos los pagos del periodo a precios típicos, descontados los posteriores.</translation>
    </message>
    <message>
        <source>Equivalent annual cost</source>
        <translation>Coste anual equivalente</translation>
    </message>
    <message>
        <source>The even yearly payment that has the same net present cost.</source>
        <translation>El pago anual constante que tiene el mismo coste actual neto.</translation>
    </message>
    <message>
        <source>For the rest of a life</source>
        <translation>Para el resto de una vida</translation>
    </message>
    <message>
        <source>To start and to run at today&apos;s prices, nothing discounted, for %1: %2. In round figures, for nobody knows prices of decades ahead.</source>
        <translation>Coste inicial y costes corrientes a precios de hoy, sin descontar nada, para %1: %2. En cifras redondas, pues nadie conoce los precios de dentro de unas décadas.</translation>
    </message>
    <message>
        <source>%1 or longer</source>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation>Mes a mes</translation>
    </message>
    <message>
        <source>The year ahead: electricity by the season, replacements whole in the month in which their likely life ends, the rest evenly.</source>
        <translation>El año que viene por delante: la electricidad según la estación, las sustituciones enteras en el mes en que acaba su vida útil probable, el resto por igual.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Typically: electricity %1, replaced %2, the rest %3.</source>
        <translation>Lo típico: electricidad %1, sustituciones %2, el resto %3.</translation>
    </message>
    <message>
        <source>To replace within a year</source>
        <translation>Por sustituir en menos de un año</translation>
    </message>
    <message>
        <source>What is worn out within the year ahead by its likely life.</source>
        <translation>Lo que se habrá gastado en el próximo año según su vida útil probable.</translation>
    </message>
    <message>
        <source>Due about %1</source>
        <translation>Toca hacia %1</translation>
    </message>
    <message>
        <source>, perhaps from %1</source>
        <translation>, quizá desde %1</translation>
    </message>
    <message>
        <source>Its UV falls below what its animals need before it is worn out.</source>
        <translation>Su UV cae por debajo de lo que necesitan sus animales antes de que se gaste.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>To begin</source>
        <translation>Para empezar</translation>
    </message>
    <message>
        <source>The sum of the shopping list, net of what is owned, and what is set aside for surprises. Lines without a price are not in it.</source>
        <translation>La suma de la lista de compra, descontado lo ya disponible, y lo reservado para imprevistos. No incluye las líneas sin precio.</translation>
    </message>
    <message>
        <source>electricity, whose price is not stated</source>
        <translation>la electricidad, cuyo precio no se indica</translation>
    </message>
    <message>
        <source>Not in these sums, for want of a price: %1.</source>
        <translation>Fuera de estas sumas, por falta de precio: %1.</translation>
    </message>
    <message>
        <source>Prices of %1</source>
        <translation>Precios de %1</translation>
    </message>
    <message>
        <source>, invented for illustration: put in your own before you decide.</source>
        <translation>, inventados a modo de ejemplo: poner los propios antes de decidir.</translation>
    </message>
    <message>
        <source>Costs: %1</source>
        <translation>Costes: %1</translation>
    </message>
    <message>
        <source>Cost, %1</source>
        <translation>Coste, %1</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Bajo</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>Típico</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Things without a price, not in the total: %1.</source>
        <translation>Cosas sin precio, no incluidas en el total: %1.</translation>
    </message>
    <message>
        <source>The prices are invented examples of %1. Put your own in their place.</source>
        <translation>Los precios son ejemplos inventados de %1. Poner los propios en su lugar.</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Todo junto</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>another unit</source>
        <translation>otra unidad</translation>
    </message>
    <message>
        <source>amount %1 → %2</source>
        <translation>cantidad %1 → %2</translation>
    </message>
    <message>
        <source>in stock again</source>
        <translation>de nuevo disponible</translation>
    </message>
    <message>
        <source>no longer in stock</source>
        <translation>ya no disponible</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the list is more than %1 months old; look its prices up again.</source>
        <translation>la lista tiene más de %1 meses; conviene volver a consultar los precios.</translation>
    </message>
    <message>
        <source>%1, after %2</source>
        <translation>%1, posterior al %2</translation>
    </message>
    <message>
        <source>%1, %2 months old on %3</source>
        <translation>%1, con %2 meses el %3</translation>
    </message>
    <message>
        <source>Not in stock: %1.</source>
        <translation>No disponible: %1.</translation>
    </message>
    <message>
        <source>No price for: %1.</source>
        <translation>Sin precio para: %1.</translation>
    </message>
    <message>
        <source>Price list: </source>
        <translation>Lista de precios: </translation>
    </message>
    <message>
        <source>Of:         </source>
        <translation>Fecha:            </translation>
    </message>
    <message>
        <source>Place:      </source>
        <translation>Lugar:            </translation>
    </message>
    <message>
        <source>Currency:   </source>
        <translation>Moneda:           </translation>
    </message>
    <message>
        <source>Holds:      </source>
        <translation>Contenido:        </translation>
    </message>
    <message>
        <source>items: %1, packs: %2</source>
        <translation>artículos: %1, envases: %2</translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation>Aviso: </translation>
    </message>
    <message>
        <source>Not in stock</source>
        <translation>No disponible</translation>
    </message>
    <message>
        <source>No price for</source>
        <translation>Sin precio para</translation>
    </message>
    <message>
        <source>The first list is in %1 and the second in %2: their prices are not compared.</source>
        <translation>La primera lista está en %1 y la segunda en %2: sus precios no se comparan.</translation>
    </message>
    <message>
        <source>%1 beside %2</source>
        <translation>%1 frente a %2</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Qué difiere</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artículo</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Envase</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>modificado</translation>
    </message>
    <message>
        <source>only in the second list</source>
        <translation>solo en la segunda lista</translation>
    </message>
    <message>
        <source>only in the first list</source>
        <translation>solo en la primera lista</translation>
    </message>
    <message>
        <source>another need, unit or size</source>
        <translation>otra necesidad, unidad o tamaño</translation>
    </message>
    <message>
        <source>another name or category</source>
        <translation>otro nombre o categoría</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation>%1, %2, %3, %4</translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation>No hay diferencias.</translation>
    </message>
    <message>
        <source>Nothing else differs: items, packs, amounts and stock are the same.</source>
        <translation>No difiere nada más: artículos, envases, cantidades y disponibilidad son iguales.</translation>
    </message>
    <message>
        <source>Changed packs</source>
        <translation>Envases modificados</translation>
    </message>
    <message>
        <source>Changed items</source>
        <translation>Artículos modificados</translation>
    </message>
    <message>
        <source>Only in the second list</source>
        <translation>Solo en la segunda lista</translation>
    </message>
    <message>
        <source>Only in the first list</source>
        <translation>Solo en la primera lista</translation>
    </message>
    <message>
        <source>Whole site</source>
        <translation>Todo el lugar</translation>
    </message>
    <message>
        <source>All enclosures</source>
        <translation>Todos los terrarios</translation>
    </message>
    <message>
        <source>owned</source>
        <translation>ya disponible</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>Shopping list: %1</source>
        <translation>Lista de compra: %1</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Envases</translation>
    </message>
    <message>
        <source>Each, %1</source>
        <translation>Unidad, %1</translation>
    </message>
    <message>
        <source>Total, %1</source>
        <translation>Total, %1</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Sobrante</translation>
    </message>
    <message>
        <source>Needed because</source>
        <translation>Necesario porque</translation>
    </message>
    <message>
        <source>Total of these lines</source>
        <translation>Total de estas líneas</translation>
    </message>
    <message>
        <source>Typical prices as of %1.</source>
        <translation>Precios típicos a fecha de %1.</translation>
    </message>
    <message>
        <source>the cheapest to buy</source>
        <translation>la compra más barata</translation>
    </message>
    <message>
        <source>the cheapest over the years</source>
        <translation>el menor coste a lo largo de los años</translation>
    </message>
    <message>
        <source>the widest margin</source>
        <translation>el margen más amplio</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>watts not stated</source>
        <translation>vatios sin indicar</translation>
    </message>
    <message>
        <source>thermostat at %1</source>
        <translation>termostato a %1</translation>
    </message>
    <message>
        <source>dimmer</source>
        <translation>atenuador</translation>
    </message>
    <message>
        <source>always on</source>
        <translation>siempre con corriente</translation>
    </message>
    <message>
        <source>by the timer</source>
        <translation>con temporizador</translation>
    </message>
    <message>
        <source>  Box</source>
        <translation>  Recinto</translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <translation>%1 × %2 × %3</translation>
    </message>
    <message>
        <source>  Top covered</source>
        <translation>  Tapa cubierta</translation>
    </message>
    <message>
        <source>  Misting, a day</source>
        <translation>  Nebulización al día</translation>
    </message>
    <message>
        <source>not known: the price list is in another currency</source>
        <translation>no se sabe: la lista de precios está en otra moneda</translation>
    </message>
    <message>
        <source>Electricity is not in it: its price is not stated.</source>
        <translation>No incluye la electricidad: su precio no se indica.</translation>
    </message>
    <message>
        <source>Margin, ranges and all</source>
        <translation>Margen con intervalos</translation>
    </message>
    <message>
        <source>Missed, likely values</source>
        <translation>Falta (valor probable)</translation>
    </message>
    <message>
        <source> over all zones, every dimmer at one setting</source>
        <translation> en el conjunto de zonas, con cada atenuador en una sola posición</translation>
    </message>
    <message>
        <source>What stands in the way:</source>
        <translation>Lo que lo impide:</translation>
    </message>
    <message>
        <source>Besides, what no equipment settles:</source>
        <translation>Además, lo que ningún equipo resuelve:</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>%1: the bed is too shallow for its animals; it was filled up to what they dig.</source>
        <translation>%1: el sustrato es poco profundo para sus animales; se ha aumentado hasta lo que excavan.</translation>
    </message>
    <message>
        <source>%1: the box is too small for its animals; a larger one of a usual size was taken.</source>
        <translation>%1: el recinto es demasiado pequeño para sus animales; se ha tomado uno mayor de tamaño habitual.</translation>
    </message>
    <message>
        <source>%1: the box is too small for its animals, and stayed as it is: no usual size is enough, or it was to be kept.</source>
        <translation>%1: el recinto es demasiado pequeño para sus animales y se ha dejado como estaba: ningún tamaño habitual es suficiente, o había que conservarlo.</translation>
    </message>
    <message>
        <source>%1: its climate can&apos;t be computed from what the plan states, so it was left as it is.</source>
        <translation>%1: su clima no se puede calcular con lo que indica el plan, así que se ha dejado como estaba.</translation>
    </message>
    <message>
        <source>Nothing that meets every target can be had for what may be spent. The least to begin with is %1.</source>
        <translation>Con lo que se puede gastar no hay nada que cumpla todos los valores objetivo. El coste inicial mínimo es %1.</translation>
    </message>
    <message>
        <source>Nothing can be suggested.</source>
        <translation>No se puede proponer nada.</translation>
    </message>
    <message>
        <source>These meet every target that equipment can meet, in winter and summer, by the likely value; no end of a range and no drill is a danger. Where an end of a range misses a target, the margin is negative.</source>
        <translation>Estas propuestas cumplen todos los valores objetivo que un equipo puede cumplir, en invierno y en verano, según el valor probable; ningún extremo de intervalo ni ningún simulacro supone un peligro. Si un extremo de intervalo no alcanza un valor objetivo, el margen es negativo.</translation>
    </message>
    <message>
        <source>Nothing that was tried meets every target. These come nearest:</source>
        <translation>Nada de lo probado cumple todos los valores objetivo. Esto es lo que más se acerca:</translation>
    </message>
    <message>
        <source>Sets of equipment that were worked out: %1.</source>
        <translation>Conjuntos de equipos calculados: %1.</translation>
    </message>
    <message>
        <source>Prove any of them with thermometers for several days before an animal moves in. Wiring is an electrician&apos;s work; an ill animal is a vet&apos;s.</source>
        <translation>Comprobar cualquiera de ellos con termómetros durante varios días antes de que entre un animal. La instalación eléctrica es trabajo de un electricista; un animal enfermo, de un veterinario.</translation>
    </message>
    <message>
        <source>cost not known: the price list is in another currency</source>
        <translation>coste desconocido: la lista de precios está en otra moneda</translation>
    </message>
    <message>
        <source>misting %1 a day</source>
        <translation>nebulización de %1 al día</translation>
    </message>
    <message>
        <source>%1: %2 to begin</source>
        <translation>%1: %2 de coste inicial</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>lugar medido</translation>
    </message>
    <message>
        <source>read</source>
        <translation>leído</translation>
    </message>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>after</source>
        <translation>después</translation>
    </message>
    <message>
        <source>off</source>
        <translation>apagado</translation>
    </message>
    <message>
        <source>They narrow: %1.</source>
        <translation>Acotan: %1.</translation>
    </message>
    <message>
        <source>Hour by hour</source>
        <translation>Hora a hora</translation>
    </message>
    <message>
        <source>%1, of which %2 can be walked on</source>
        <translation>%1, de los cuales %2 son transitables</translation>
    </message>
    <message>
        <source>; %1 asked for by “%2”</source>
        <translation>; «%2» pide %1</translation>
    </message>
    <message>
        <source>may be outgrown in %1</source>
        <translation>puede quedarse pequeño en %1</translation>
    </message>
    <message>
        <source>range</source>
        <translation>intervalo</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>target</source>
        <translation>valor objetivo</translation>
    </message>
    <message>
        <source>the balance of heat did not close: not known</source>
        <translation>el balance de calor no cuadró: no se sabe</translation>
    </message>
    <message>
        <source>draws %1</source>
        <translation>consume %1</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>%1: fill in %2, %3 when damp</source>
        <translation>%1: echar %2, %3 en húmedo</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>%1 connected, %2 a day</source>
        <translation>%1 conectados, %2 al día</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Temperaturas</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>Month, typical prices</source>
        <translation>Mes, precios típicos</translation>
    </message>
    <message>
        <source>electricity</source>
        <translation>electricidad</translation>
    </message>
    <message>
        <source>replaced</source>
        <translation>sustituido</translation>
    </message>
    <message>
        <source>others</source>
        <translation>otros</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en total</translation>
    </message>
    <message>
        <source>  %1 %2</source>
        <translation>  %1 %2</translation>
    </message>
    <message>
        <source>For the rest of a life (%1, %2): about %3 in all at today&apos;s prices, in round figures.</source>
        <translation>Para el resto de una vida (%1, %2): unos %3 en total a precios de hoy, en cifras redondas.</translation>
    </message>
    <message>
        <source>Goods, %1</source>
        <translation>Mercancía, %1</translation>
    </message>
    <message>
        <source>Delivery, %1</source>
        <translation>Envío, %1</translation>
    </message>
    <message>
        <source>Tax on top, %1</source>
        <translation>Impuestos aparte, %1</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Costes</translation>
    </message>
    <message>
        <source>The price list is in another currency than the plan, so nothing is costed.</source>
        <translation>La lista de precios está en otra moneda que el plan, así que no se calcula ningún coste.</translation>
    </message>
    <message>
        <source>  of that, electricity</source>
        <translation>  de ello, electricidad</translation>
    </message>
    <message>
        <source>  by the head, of %1 animals</source>
        <translation>  por cabeza, de %1 animales</translation>
    </message>
    <message>
        <source>After the start</source>
        <translation>Tras el inicio</translation>
    </message>
    <message>
        <source>Year %1, in all so far</source>
        <translation>Año %1, en total hasta entonces</translation>
    </message>
    <message>
        <source>The same as a sum each year</source>
        <translation>Lo mismo como suma anual</translation>
    </message>
    <message>
        <source>The prices are invented examples. Put your own in their place.</source>
        <translation>Los precios son ejemplos inventados. Poner los propios en su lugar.</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Para comprar</translation>
    </message>
    <message>
        <source>Nothing.</source>
        <translation>Nada.</translation>
    </message>
    <message>
        <source>in the place of %1, which is out of stock</source>
        <translation>en lugar de %1, que no está disponible</translation>
    </message>
    <message>
        <source>Findings, the most serious first</source>
        <translation>Hallazgos, los más graves primero</translation>
    </message>
    <message>
        <source>Nothing falls short.</source>
        <translation>Nada resulta insuficiente.</translation>
    </message>
    <message>
        <source>Bear in mind</source>
        <translation>A tener en cuenta</translation>
    </message>
    <message>
        <source>Not stated in the plan, and what was assumed</source>
        <translation>Sin indicar en el plan, y lo que se ha supuesto</translation>
    </message>
    <message>
        <source>the bed</source>
        <translation>el sustrato</translation>
    </message>
    <message>
        <source>%1 of the floor has none</source>
        <translation>%1 del suelo no recibe nada</translation>
    </message>
    <message>
        <source>%1 to %2 of the floor has none</source>
        <translation>entre %1 y %2 del suelo no recibe nada</translation>
    </message>
    <message>
        <source>%1: %2 from a back on %3 at the nearest</source>
        <translation>%1: a %2 del lomo de un animal sobre %3, en el punto más cercano</translation>
    </message>
    <message>
        <source>; keep at least %1</source>
        <translation>; mantener al menos %1</translation>
    </message>
    <message>
        <source>no height of the lamp puts it inside the target</source>
        <translation>ninguna altura de la lámpara lo deja dentro del valor objetivo</translation>
    </message>
    <message>
        <source>inside the target with %1 at %2 to %3 above the base</source>
        <translation>dentro del valor objetivo con %1 entre %2 y %3 sobre la base</translation>
    </message>
    <message>
        <source>likely inside the target with %1 at %2 to %3 above the base</source>
        <translation>probablemente dentro del valor objetivo con %1 entre %2 y %3 sobre la base</translation>
    </message>
    <message>
        <source>falls below the target after about %1 of burning</source>
        <translation>cae por debajo del valor objetivo tras aproximadamente %1 de uso</translation>
    </message>
    <message>
        <source>, on %1 (earliest %2)</source>
        <translation>, el %1 (como pronto, el %2)</translation>
    </message>
    <message>
        <source>UV index</source>
        <translation>índice UV</translation>
    </message>
    <message>
        <source>%1; target %2: %3</source>
        <translation>%1; valor objetivo %2: %3</translation>
    </message>
    <message>
        <source>the most within reach is %1, on %2</source>
        <translation>lo máximo a su alcance es %1, sobre %2</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>reposo</translation>
    </message>
    <message>
        <source>weigh on</source>
        <translation>pesar el</translation>
    </message>
    <message>
        <source>ask a vet below</source>
        <translation>veterinario si &lt;</translation>
    </message>
    <message>
        <source>end it below</source>
        <translation>terminar si &lt;</translation>
    </message>
    <message>
        <source>week of</source>
        <translation>semana del</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>etapa</translation>
    </message>
    <message>
        <source>by its end</source>
        <translation>al terminar</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>%1 a day, %2 a month: changed %3, topped up %4, misted %5</source>
        <translation>%1 al día, %2 al mes: cambiados %3, repuestos %4, nebulizados %5</translation>
    </message>
    <message>
        <source>poured into the bed to keep it as damp: %1 a day</source>
        <translation>vertido en el sustrato para mantenerlo igual de húmedo: %1 al día</translation>
    </message>
    <message>
        <source>%1 holds %2 and weighs %3 full: %4</source>
        <translation>%1: caben %2 y lleno pesa %3: %4</translation>
    </message>
    <message>
        <source>conditioner %1 a fill, %2 a month for %3 of treated water</source>
        <translation>acondicionador: %1 por llenado, %2 al mes para %3 de agua tratada</translation>
    </message>
    <message>
        <source>source: %1; drawn from the mains %2 a day</source>
        <translation>origen: %1; se toman de la red %2 al día</translation>
    </message>
    <message>
        <source>filter cartridges a year, by volume: %1</source>
        <translation>cartuchos de filtro al año, por volumen: %1</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>sky, h</source>
        <translation>cielo, h</translation>
    </message>
    <message>
        <source>on</source>
        <translation>encendido</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>kWh</source>
        <translation>kWh</translation>
    </message>
    <message>
        <source>costs</source>
        <translation>costes</translation>
    </message>
    <message>
        <source>In a year</source>
        <translation>En un año</translation>
    </message>
    <message>
        <source>Winter rest</source>
        <translation>Hibernación</translation>
    </message>
    <message>
        <source>Growth: not known; it takes two lengths at least three months apart.</source>
        <translation>Crecimiento: no se sabe; hacen falta dos longitudes con al menos tres meses entre ellas.</translation>
    </message>
    <message>
        <source>Growth: %1 of its length a year; against what is published: %2.</source>
        <translation>Crecimiento: %1 de su longitud al año; frente a lo publicado: %2.</translation>
    </message>
    <message>
        <source>Weight: not judged; it takes two weights within a year.</source>
        <translation>Peso: sin dictamen; hacen falta dos pesadas en un año.</translation>
    </message>
    <message>
        <source>Weight: nothing lost since %1.</source>
        <translation>Peso: sin pérdida desde el %1.</translation>
    </message>
    <message>
        <source>Weight: %1 less than the %2 of %3: %4.</source>
        <translation>Peso: %1 menos que %2 el %3: %4.</translation>
    </message>
    <message>
        <source>Length by %1: %2 to %3.</source>
        <translation>Longitud el %1: de %2 a %3.</translation>
    </message>
    <message>
        <source>Length by %1: at least %2.</source>
        <translation>Longitud el %1: al menos %2.</translation>
    </message>
    <message>
        <source>%1 over time</source>
        <translation>%1 a lo largo del tiempo</translation>
    </message>
</context>
<context>
    <name>seasons</name>
    <message>
        <source>winding down</source>
        <translation>descenso</translation>
    </message>
    <message>
        <source>cold</source>
        <translation>frío</translation>
    </message>
    <message>
        <source>warming up</source>
        <translation>calentamiento</translation>
    </message>
    <message>
        <source>tap</source>
        <translation>grifo</translation>
    </message>
    <message>
        <source>filtered</source>
        <translation>filtrada</translation>
    </message>
    <message>
        <source>reverse osmosis</source>
        <translation>ósmosis inversa</translation>
    </message>
    <message>
        <source>may be cooled</source>
        <translation>puede enfriarse</translation>
    </message>
    <message>
        <source>must not be cooled</source>
        <translation>no debe enfriarse</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>No food. Water to drink and a bath every other day, so that the gut empties. In the first half as warm as ever, in the second warmth and light fall evenly.</source>
        <translation>Sin comida. Agua para beber y un baño cada dos días, para que se vacíe el intestino. En la primera mitad, el calor de siempre; en la segunda, el calor y la luz bajan de manera uniforme.</translation>
    </message>
    <message>
        <source>Dark, and at an even temperature. Look at the thermometer&apos;s log every day, weigh every week, and let fresh air in each time.</source>
        <translation>A oscuras y a temperatura constante. Mirar el registro del termómetro todos los días, pesar cada semana y renovar el aire cada vez.</translation>
    </message>
    <message>
        <source>Back to the usual warmth and light within days. A bath first, then food. If it does not eat within a week, see a vet.</source>
        <translation>Vuelta al calor y la luz habituales en pocos días. Primero un baño, luego comida. Si no come en una semana, acudir al veterinario.</translation>
    </message>
    <message>
        <source>What each device draws on a winter and on a summer day, joined by a cosine whose coldest day comes 27.5 days after the shortest; the range covers a lag from none to twice that.</source>
        <translation>Lo que consume cada aparato en un día de invierno y en uno de verano, unidos por un coseno cuyo día más frío llega 27,5 días después del más corto; el intervalo abarca desde ningún retraso hasta el doble de ese.</translation>
    </message>
    <message>
        <source>What each device draws on a winter and on a summer day. The latitude is not stated, so each month may be a winter&apos;s or a summer&apos;s, and the range covers both.</source>
        <translation>Lo que consume cada aparato en un día de invierno y en uno de verano. La latitud no está indicada, así que cada mes puede ser de invierno o de verano, y el intervalo abarca ambos casos.</translation>
    </message>
</context>
<context>
    <name>sentences</name>
    <message>
        <source>the room on a winter day</source>
        <translation>la habitación en un día de invierno</translation>
    </message>
    <message>
        <source>the room on a winter night</source>
        <translation>la habitación en una noche de invierno</translation>
    </message>
    <message>
        <source>the room&apos;s humidity in winter</source>
        <translation>la humedad de la habitación en invierno</translation>
    </message>
    <message>
        <source>the room on a summer day</source>
        <translation>la habitación en un día de verano</translation>
    </message>
    <message>
        <source>the room on a summer night</source>
        <translation>la habitación en una noche de verano</translation>
    </message>
    <message>
        <source>the room&apos;s humidity in summer</source>
        <translation>la humedad de la habitación en verano</translation>
    </message>
    <message>
        <source>the room in a heat wave</source>
        <translation>la habitación en una ola de calor</translation>
    </message>
    <message>
        <source>the length of a power cut</source>
        <translation>la duración de un corte de luz</translation>
    </message>
    <message>
        <source>the room in a power cut</source>
        <translation>la habitación en un corte de luz</translation>
    </message>
    <message>
        <source>how far a room strays from what is stated</source>
        <translation>cuánto se aparta una habitación de lo indicado</translation>
    </message>
    <message>
        <source>how far a room&apos;s humidity strays from what is stated</source>
        <translation>cuánto se aparta la humedad de una habitación de lo indicado</translation>
    </message>
    <message>
        <source>what else runs on the circuit</source>
        <translation>lo demás conectado al circuito</translation>
    </message>
    <message>
        <source>what a strip may carry</source>
        <translation>lo que admite una regleta</translation>
    </message>
    <message>
        <source>timed outlets of a strip</source>
        <translation>las tomas con temporizador de una regleta</translation>
    </message>
    <message>
        <source>always-on outlets of a strip</source>
        <translation>las tomas permanentes de una regleta</translation>
    </message>
    <message>
        <source>the open share of the mesh</source>
        <translation>la parte abierta de la malla</translation>
    </message>
    <message>
        <source>the thickness of a panel</source>
        <translation>el grosor de un panel</translation>
    </message>
    <message>
        <source>how large the entrance of a hide is</source>
        <translation>el tamaño de la entrada de un refugio</translation>
    </message>
    <message>
        <source>how still the air in a hide is</source>
        <translation>lo quieto que está el aire en un refugio</translation>
    </message>
    <message>
        <source>the height of a fitting</source>
        <translation>la altura de un accesorio</translation>
    </message>
    <message>
        <source>the depth of water in a bowl</source>
        <translation>la profundidad del agua en un bebedero</translation>
    </message>
    <message>
        <source>switching difference of a thermostat</source>
        <translation>la histéresis de un termostato</translation>
    </message>
    <message>
        <source>how full a bowl is</source>
        <translation>lo lleno que está un bebedero</translation>
    </message>
    <message>
        <source>how much water evaporates from a bowl</source>
        <translation>cuánta agua se evapora de un bebedero</translation>
    </message>
    <message>
        <source>how much is misted</source>
        <translation>cuánto se nebuliza</translation>
    </message>
    <message>
        <source>how often the water is changed</source>
        <translation>cada cuánto se cambia el agua</translation>
    </message>
    <message>
        <source>what reverse osmosis sends to the drain</source>
        <translation>lo que la ósmosis inversa envía al desagüe</translation>
    </message>
    <message>
        <source>the length of a bowl over that of the shell</source>
        <translation>la longitud de un bebedero en relación con la del caparazón</translation>
    </message>
    <message>
        <source>the width of a bowl over the length of the shell</source>
        <translation>el ancho de un bebedero en relación con la longitud del caparazón</translation>
    </message>
    <message>
        <source>the weeks without food before the cold</source>
        <translation>las semanas sin comida antes del frío</translation>
    </message>
    <message>
        <source>the weeks of warming up after the cold</source>
        <translation>las semanas de recuperación del calor tras el frío</translation>
    </message>
    <message>
        <source>the loss of weight that ends a winter rest</source>
        <translation>la pérdida de peso que pone fin a una hibernación</translation>
    </message>
    <message>
        <source>the loss of weight in a month of rest</source>
        <translation>la pérdida de peso en un mes de hibernación</translation>
    </message>
    <message>
        <source>how long a vet&apos;s check counts</source>
        <translation>cuánto tiempo vale una revisión veterinaria</translation>
    </message>
    <message>
        <source>the dose of conditioner</source>
        <translation>la dosis de acondicionador</translation>
    </message>
    <message>
        <source>the height of a lamp above the top</source>
        <translation>la altura de una lámpara sobre la tapa</translation>
    </message>
    <message>
        <source>how long a lamp has burnt</source>
        <translation>cuánto lleva funcionando una lámpara</translation>
    </message>
    <message>
        <source>how the UV of a lamp falls with distance</source>
        <translation>cómo cae el UV de una lámpara con la distancia</translation>
    </message>
    <message>
        <source>the air gap under a mat</source>
        <translation>la cámara de aire bajo una manta térmica</translation>
    </message>
    <message>
        <source>how far a device strays from its rated power</source>
        <translation>cuánto se aparta un aparato de su potencia nominal</translation>
    </message>
    <message>
        <source>the accuracy of a thermometer</source>
        <translation>la exactitud de un termómetro</translation>
    </message>
    <message>
        <source>how much a bed settles</source>
        <translation>cuánto se asienta un sustrato</translation>
    </message>
    <message>
        <source>how far coir expands</source>
        <translation>cuánto se expande la fibra de coco</translation>
    </message>
    <message>
        <source>which quart a bag means</source>
        <translation>a qué cuarto de galón se refiere una bolsa</translation>
    </message>
    <message>
        <source>visits to the vet in a year</source>
        <translation>las visitas al veterinario en un año</translation>
    </message>
    <message>
        <source>disinfectant in a year</source>
        <translation>el desinfectante en un año</translation>
    </message>
    <message>
        <source>gloves in a year</source>
        <translation>los guantes en un año</translation>
    </message>
    <message>
        <source>calcium in a month</source>
        <translation>el calcio en un mes</translation>
    </message>
    <message>
        <source>the years looked at</source>
        <translation>los años considerados</translation>
    </message>
    <message>
        <source>the discount rate</source>
        <translation>la tasa de descuento</translation>
    </message>
    <message>
        <source>the reserve for what always comes on top</source>
        <translation>la reserva para los gastos que siempre se añaden</translation>
    </message>
    <message>
        <source>how well air takes heat from surfaces</source>
        <translation>lo bien que el aire toma calor de las superficies</translation>
    </message>
    <message>
        <source>how fast air passes through the top</source>
        <translation>la rapidez con que el aire pasa por la tapa</translation>
    </message>
    <message>
        <source>how fast water evaporates</source>
        <translation>la rapidez con que se evapora el agua</translation>
    </message>
    <message>
        <source>how leaky the box is</source>
        <translation>lo poco hermético que es el terrario</translation>
    </message>
    <message>
        <source>how well the air in the box mixes</source>
        <translation>lo bien que se mezcla el aire en el terrario</translation>
    </message>
    <message>
        <source>how much of the heat that the mesh catches comes back into the box</source>
        <translation>cuánto del calor que retiene la malla vuelve al terrario</translation>
    </message>
    <message>
        <source>what the model itself leaves open</source>
        <translation>lo que el propio modelo deja abierto</translation>
    </message>
    <message>
        <source>the temperature of the room</source>
        <translation>la temperatura de la habitación</translation>
    </message>
    <message>
        <source>the humidity of the room</source>
        <translation>la humedad de la habitación</translation>
    </message>
    <message>
        <source>how damp the bed is</source>
        <translation>lo húmedo que está el sustrato</translation>
    </message>
    <message>
        <source>how well {0} conducts heat</source>
        <translation>lo bien que conduce el calor {0}</translation>
    </message>
    <message>
        <source>how well damp {0} conducts heat</source>
        <translation>lo bien que conduce el calor {0} en húmedo</translation>
    </message>
    <message>
        <source>how well {0} gives off radiant heat</source>
        <translation>lo bien que irradia calor {0}</translation>
    </message>
    <message>
        <source>how much lamp light {0} lets through</source>
        <translation>cuánta luz de lámpara deja pasar {0}</translation>
    </message>
    <message>
        <source>how much lamp light {0} takes up</source>
        <translation>cuánta luz de lámpara absorbe {0}</translation>
    </message>
    <message>
        <source>how much air {0} lets through</source>
        <translation>cuánto aire deja pasar {0}</translation>
    </message>
    <message>
        <source>how damp {0} is kept</source>
        <translation>lo húmedo que se mantiene {0}</translation>
    </message>
    <message>
        <source>how far {0} dries out under a lamp</source>
        <translation>cuánto se seca {0} bajo una lámpara</translation>
    </message>
    <message>
        <source>how wet the surface of {0} is</source>
        <translation>la humedad de la superficie de {0}</translation>
    </message>
    <message>
        <source>the power of {0}</source>
        <translation>la potencia de {0}</translation>
    </message>
    <message>
        <source>how much of its power {0} radiates</source>
        <translation>qué parte de su potencia irradia {0}</translation>
    </message>
    <message>
        <source>how much of its power {0} gives to the air</source>
        <translation>qué parte de su potencia cede al aire {0}</translation>
    </message>
    <message>
        <source>how wide the beam of {0} is</source>
        <translation>la anchura del haz de {0}</translation>
    </message>
    <message>
        <source>“{0}” ({1}) must not be larger than “{2}” ({3}).</source>
        <translation>«{0}» ({1}) no debe ser mayor que «{2}» ({3}).</translation>
    </message>
    <message>
        <source>Exactly one of these must stand here: {0}.</source>
        <translation>Aquí debe figurar exactamente uno de estos: {0}.</translation>
    </message>
    <message>
        <source>“{0}” is not a format that is known. The file is left out.</source>
        <translation>«{0}» no es un formato conocido. El archivo se omite.</translation>
    </message>
    <message>
        <source>The size classes must ascend, and only the last may leave out its upper end.</source>
        <translation>Las clases de tamaño deben ir en orden ascendente, y solo la última puede carecer de límite superior.</translation>
    </message>
    <message>
        <source>The shares add up to {0}, and they can&apos;t be more than 1 together.</source>
        <translation>Las proporciones suman {0}, y juntas no pueden pasar de 1.</translation>
    </message>
    <message>
        <source>“{0}” is missing. It is needed for the use “{1}”.</source>
        <translation>Falta «{0}». Se necesita para el uso «{1}».</translation>
    </message>
    <message>
        <source>{0} has too many decimals: {1} has {2}.</source>
        <translation>{0} tiene demasiados decimales: {1} tiene {2}.</translation>
    </message>
    <message>
        <source>“{0}” is not a kind of need. Write it as two parts with a point between them, such as “substrate.bark”.</source>
        <translation>«{0}» no es un tipo de necesidad. Debe escribirse en dos partes separadas por un punto, por ejemplo «substrate.bark».</translation>
    </message>
    <message>
        <source>There is no such date: “{0}”.</source>
        <translation>Esa fecha no existe: «{0}».</translation>
    </message>
    <message>
        <source>It names the space rule “{0}”, which no file has.</source>
        <translation>Nombra la regla de espacio «{0}», que no está en ningún archivo.</translation>
    </message>
    <message>
        <source>It names the material “{0}”, which no file has.</source>
        <translation>Nombra el material «{0}», que no está en ningún archivo.</translation>
    </message>
    <message>
        <source>It names “{0}” as a substrate, and the material&apos;s file does not list that use.</source>
        <translation>Nombra «{0}» como sustrato, y el archivo del material no incluye ese uso.</translation>
    </message>
    <message>
        <source>It names the space rule “{0}”, which goes by {1:measure}, and the sheet gives {2:measure}.</source>
        <translation>Nombra la regla de espacio «{0}», que se rige por {1:measure}, y la ficha indica {2:measure}.</translation>
    </message>
    <message>
        <source>Nothing in the price list serves “{0}”.</source>
        <translation>Nada en la lista de precios sirve para «{0}».</translation>
    </message>
    <message>
        <source>There are no figures for equipment of the kind “{0}”.</source>
        <translation>No hay datos para equipos del tipo «{0}».</translation>
    </message>
    <message>
        <source>A quotation mark is opened and never closed.</source>
        <translation>Hay unas comillas que se abren y no se cierran.</translation>
    </message>
    <message>
        <source>There is text beside a quoted cell. Put the whole cell in quotation marks, and double those inside it.</source>
        <translation>Hay texto junto a una celda entrecomillada. Poner toda la celda entre comillas y duplicar las que haya dentro.</translation>
    </message>
    <message>
        <source>There are too many rows; at most {0} are read.</source>
        <translation>Hay demasiadas filas; se leen {0} como máximo.</translation>
    </message>
    <message>
        <source>This row has {0} cells, and the header has {1}.</source>
        <translation>Esta fila tiene {0} celdas, y la cabecera tiene {1}.</translation>
    </message>
    <message>
        <source>The column “{0}” is missing.</source>
        <translation>Falta la columna «{0}».</translation>
    </message>
    <message>
        <source>“{0}” is not a known column.[ Did you mean “{1}”?]</source>
        <translation>«{0}» no es una columna conocida.[ ¿Quería decir «{1}»?]</translation>
    </message>
    <message>
        <source>The column “{0}” stands here twice.</source>
        <translation>La columna «{0}» figura aquí dos veces.</translation>
    </message>
    <message>
        <source>“{0}” is not a number. Write it in digits with a point.</source>
        <translation>«{0}» no es un número. Debe escribirse en cifras y con punto decimal.</translation>
    </message>
    <message>
        <source>“{0}” must be “true” or “false”.</source>
        <translation>«{0}» debe ser «true» o «false».</translation>
    </message>
    <message>
        <source>“{0}” differs from “{1}” in the item&apos;s first row. All rows of an item must agree.</source>
        <translation>«{0}» no coincide con «{1}», que figura en la primera fila del artículo. Todas las filas de un artículo deben coincidir.</translation>
    </message>
    <message>
        <source>There are no rows below the header.</source>
        <translation>No hay filas debajo de la cabecera.</translation>
    </message>
    <message>
        <source>Reptiles and amphibians can carry salmonella. Wash your hands after each contact, keep their things out of the kitchen, and take extra care with small children and ill people.</source>
        <translation>Los reptiles y anfibios pueden ser portadores de salmonela. Lavarse las manos después de cada contacto, mantener sus cosas fuera de la cocina y extremar el cuidado con niños pequeños y personas enfermas.</translation>
    </message>
    <message>
        <source>Keeping this species may need a permit or papers where you live ({species}). Ask the authority before you buy.</source>
        <translation>Tener esta especie puede requerir un permiso o documentación en su lugar de residencia ({species}). Consultar a la autoridad antes de comprar.</translation>
    </message>
    <message>
        <source>Find a vet who treats reptiles and amphibians before an animal moves in. This program does not replace one.</source>
        <translation>Buscar un veterinario que atienda reptiles y anfibios antes de que llegue un animal. Este programa no lo sustituye.</translation>
    </message>
    <message>
        <source>Fixed wiring is an electrician&apos;s work. The figures here concern what is plugged in.</source>
        <translation>La instalación fija es trabajo de un electricista. Las cifras de aquí se refieren a lo que se enchufa.</translation>
    </message>
    <message>
        <source>The load is an estimate. It does not show that a floor or a piece of furniture holds it.</source>
        <translation>La carga es una estimación. No demuestra que un suelo o un mueble la soporte.</translation>
    </message>
    <message>
        <source>Keep a new animal apart for at least {days_min}[, {resident}].</source>
        <translation>Mantener apartado a un animal nuevo al menos {days_min}[, {resident}].</translation>
    </message>
    <message>
        <source>Run the finished enclosure for at least {days_min} with thermometers in it before an animal moves in.</source>
        <translation>Tener el terrario terminado en marcha al menos {days_min}, con termómetros dentro, antes de que entre un animal.</translation>
    </message>
    <message>
        <source>This species may rest through the winter ({species}). The temperatures here are for animals that are awake and well.</source>
        <translation>Esta especie puede hibernar ({species}). Las temperaturas de aquí son para animales despiertos y sanos.</translation>
    </message>
    <message>
        <source>This is a long commitment[: a life of {band}] ({species}).</source>
        <translation>Es un compromiso a largo plazo[: una vida de {band}] ({species}).</translation>
    </message>
    <message>
        <source>{species}: {note}</source>
        <translation>{species}: {note}</translation>
    </message>
    <message>
        <source>Whether {animal} may be cooled for the winter is not known: {reason}. Until then no rest is planned.</source>
        <translation>No se sabe si se puede enfriar a {animal} para el invierno: {reason}. Hasta entonces no se planifica ninguna hibernación.</translation>
    </message>
    <message>
        <source>No vet&apos;s check is stated for {animal} before the winter rest. It belongs in the {days} before the first day without food.</source>
        <translation>No se indica ninguna revisión veterinaria de {animal} antes de la hibernación. Corresponde hacerla en los {days} anteriores al primer día sin comida.</translation>
    </message>
    <message>
        <source>The vet&apos;s check of {animal} is not in the {days} before the first day without food, so it tells nothing of this rest.</source>
        <translation>La revisión veterinaria de {animal} no cae en los {days} anteriores al primer día sin comida, así que no dice nada sobre esta hibernación.</translation>
    </message>
    <message>
        <source>The rest of {animal} is too long: {weeks} in the cold. At most {max} is on file ({species}).</source>
        <translation>La hibernación de {animal} es demasiado larga: {weeks} en frío. El máximo que consta es {max} ({species}).</translation>
    </message>
    <message>
        <source>Winter rest of {animal}: no food from {begins}, at {band} from {cold_from} to {cold_until}, usual care from {ends}. Weigh it every week, and end the rest where it has lost {stop:percent}.</source>
        <translation>Hibernación de {animal}: sin comida desde {begins}, a {band} desde {cold_from} hasta {cold_until}, cuidados habituales desde {ends}. Pesar cada semana y poner fin a la hibernación si la pérdida de peso llega a {stop:percent}.</translation>
    </message>
    <message>
        <source>{animal} has to rest in a place that stays at {band} day and night, with a thermometer that logs it. A lived-in room is too warm[: this one is at {room} on a winter day].</source>
        <translation>{animal} tiene que hibernar en un lugar que se mantenga a {band} día y noche, con un termómetro que registre los valores. Una habitación habitada es demasiado cálida[: esta está a {room} en un día de invierno].</translation>
    </message>
    <message>
        <source>{cover} ({material}) is {distance} from {lamp}. It should be at least {clearance} away: {short_by} more.</source>
        <translation>{cover} ({material}) está a {distance} de {lamp}. Debería estar al menos a {clearance}: faltan {short_by}.</translation>
    </message>
    <message>
        <source>{cover} ({material}) can catch fire: it is only {distance} from {lamp} and should be at least {clearance} away.</source>
        <translation>{cover} ({material}) puede prenderse: está a solo {distance} de {lamp} y debería estar al menos a {clearance}.</translation>
    </message>
    <message>
        <source>How far {cover} ({material}) is from {lamp} is not known. It should be at least {clearance} away.</source>
        <translation>No se sabe a qué distancia de {lamp} está {cover} ({material}). Debería estar al menos a {clearance}.</translation>
    </message>
    <message>
        <source>{lamp} is only {distance} from the {part} ({material}), which can scorch. It should be at least {clearance} away.</source>
        <translation>{lamp} está a solo {distance} de una parte que puede chamuscarse: {part} ({material}). La distancia debería ser al menos de {clearance}.</translation>
    </message>
    <message>
        <source>{lamp} is only {distance} from the {part} ({material}), which can catch fire. It should be at least {clearance} away.</source>
        <translation>{lamp} está a solo {distance} de una parte que puede prenderse: {part} ({material}). La distancia debería ser al menos de {clearance}.</translation>
    </message>
    <message>
        <source>How far {lamp} is from the {part} ({material}) is not known. It should be at least {clearance} away.</source>
        <translation>No se sabe a qué distancia está {lamp} de esta parte: {part} ({material}). La distancia debería ser al menos de {clearance}.</translation>
    </message>
    <message>
        <source>An animal that digs down above {mat} meets {range} {case}. {regulated}</source>
        <translation>Un animal que excave sobre {mat} encuentra {range} {case}. {regulated}</translation>
    </message>
    <message>
        <source>An animal that digs down above {mat} meets {range} {case}. That is warmer than the {warn} it should lie on for long. {regulated}</source>
        <translation>Un animal que excave sobre {mat} encuentra {range} {case}. Eso supera {warn}, lo máximo sobre lo que conviene que permanezca mucho tiempo. {regulated}</translation>
    </message>
    <message>
        <source>An animal that digs down above {mat} can be burnt: it meets {range} {case}, and {max} is the limit. {regulated}</source>
        <translation>Un animal que excave sobre {mat} puede quemarse: encuentra {range} {case}, y el límite es {max}. {regulated}</translation>
    </message>
    <message>
        <source>The pane at {mat} reaches {range} {case}; the limit is {max}.</source>
        <translation>El panel de vidrio junto a {mat} alcanza {range} {case}; el límite es {max}.</translation>
    </message>
    <message>
        <source>The pane at {mat} can burn an animal that leans on it: it reaches {range} {case}, and {max} is the limit.</source>
        <translation>El panel de vidrio junto a {mat} puede quemar a un animal que se apoye en él: alcanza {range} {case}, y el límite es {max}.</translation>
    </message>
    <message>
        <source>The wall beside {lamp} can burn an animal that leans on it: {height} above the base it reaches {range} {case}, and {max} is the limit.</source>
        <translation>La pared junto a {lamp} puede quemar a un animal que se apoye en ella: a {height} sobre la base alcanza {range} {case}, y el límite es {max}.</translation>
    </message>
    <message>
        <source>From {standing_on}, an animal reaches {reach} above the base and comes within {gap} of {lamp}. It should stay at least {needed} away.</source>
        <translation>Desde {standing_on}, un animal alcanza {reach} sobre la base y llega a {gap} de {lamp}. Debería quedar al menos a {needed}.</translation>
    </message>
    <message>
        <source>{lamp} burns at a touch and has no guard. From {standing_on}, an animal reaches {reach} above the base, {gap} from it.</source>
        <translation>{lamp} quema al tocarse y no tiene protector. Desde {standing_on}, un animal alcanza {reach} sobre la base, a {gap} de distancia.</translation>
    </message>
    <message>
        <source>Sun reaches the enclosure. Behind glass it can overheat an animal within a short time.</source>
        <translation>Al terrario le da el sol. Detrás de un vidrio puede sobrecalentar a un animal en poco tiempo.</translation>
    </message>
    <message>
        <source>It is not stated whether sun reaches the enclosure. Behind glass it can overheat an animal within a short time.</source>
        <translation>No se indica si al terrario le da el sol. Detrás de un vidrio puede sobrecalentar a un animal en poco tiempo.</translation>
    </message>
    <message>
        <source>No sun reaches the enclosure.</source>
        <translation>Al terrario no le da el sol.</translation>
    </message>
    <message>
        <source>For a while on {course} the hottest surface gets hotter than it stays: {range}, {hour} after the lamps go on. The limit for animals that stay on it is {max}.</source>
        <translation>Por un tiempo ({course}), la superficie más caliente supera su temperatura estable: {range}, {hour} después de encenderse las lámparas. El límite para animales que permanecen sobre ella es {max}.</translation>
    </message>
    <message>
        <source>For a while on {course} a surface can burn an animal that stays on it: it reaches {range}, {hour} after the lamps go on, and {max} is the limit.</source>
        <translation>Por un tiempo ({course}), una superficie puede quemar a un animal que permanezca sobre ella: alcanza {range}, {hour} después de encenderse las lámparas, y el límite es {max}.</translation>
    </message>
    <message>
        <source>Heated and dried by a lamp, the surface[ of {on}] reaches {range} {case}; the limit for animals that stay on it is {max}.</source>
        <translation>Calentada y secada por una lámpara, la superficie[ de {on}] alcanza {range} {case}; el límite para animales que permanecen sobre ella es {max}.</translation>
    </message>
    <message>
        <source>Heated and dried by a lamp, the surface[ of {on}] can burn an animal that stays on it: it reaches {range} {case}, and {max} is the limit.</source>
        <translation>Calentada y secada por una lámpara, la superficie[ de {on}] puede quemar a un animal que permanezca sobre ella: alcanza {range} {case}, y el límite es {max}.</translation>
    </message>
    <message>
        <source>The hottest surface that an animal can touch reaches {range} {case}; the limit is {max}.</source>
        <translation>La superficie más caliente que puede tocar un animal alcanza {range} {case}; el límite es {max}.</translation>
    </message>
    <message>
        <source>The hottest surface that an animal can touch can burn it: {range} {case}, and {max} is the limit.</source>
        <translation>La superficie más caliente que puede tocar un animal puede quemarlo: {range} {case}, y el límite es {max}.</translation>
    </message>
    <message>
        <source>There is no place cool enough {case}: the coolest is {range}, and {max} is the most an animal bears ({species}).</source>
        <translation>No hay ningún lugar lo bastante fresco {case}: el más fresco está a {range}, y lo máximo que soporta un animal es {max} ({species}).</translation>
    </message>
    <message>
        <source>There is no place warm enough {case}: the warmest is {range}, and {min} is the least an animal bears ({species}).</source>
        <translation>No hay ningún lugar lo bastante cálido {case}: el más cálido está a {range}, y lo mínimo que soporta un animal es {min} ({species}).</translation>
    </message>
    <message>
        <source>All of the box passes {limit}, what an animal bears ({species}), {case}: at worst after {earliest}.</source>
        <translation>Todo el terrario rebasa {limit}, lo que soporta un animal ({species}), {case}: en el peor de los casos, al cabo de {earliest}.</translation>
    </message>
    <message>
        <source>The whole box is likely to grow too hot {case}: even the coolest place passes {limit}, the most an animal bears ({species})[, after {likely}], at worst after {earliest}.</source>
        <translation>Es probable que todo el terrario se caliente demasiado {case}: hasta el lugar más fresco pasa de {limit}, lo máximo que soporta un animal ({species})[, al cabo de {likely}]; en el peor de los casos, al cabo de {earliest}.</translation>
    </message>
    <message>
        <source>The whole box is likely to grow too cold {case}: even the warmest place falls below {limit}, the least an animal bears ({species})[, after {likely}], at worst after {earliest}.</source>
        <translation>Es probable que todo el terrario se enfríe demasiado {case}: hasta el lugar más cálido baja de {limit}, lo mínimo que soporta un animal ({species})[, al cabo de {likely}]; en el peor de los casos, al cabo de {earliest}.</translation>
    </message>
    <message>
        <source>The whole box may grow too hot {case}: at worst even the coolest place passes {limit}, the most an animal bears ({species}), after {earliest}.</source>
        <translation>Todo el terrario puede calentarse demasiado {case}: en el peor de los casos, hasta el lugar más fresco pasa de {limit}, lo máximo que soporta un animal ({species}), al cabo de {earliest}.</translation>
    </message>
    <message>
        <source>The whole box may grow too cold {case}: at worst even the warmest place falls below {limit}, the least an animal bears ({species}), after {earliest}.</source>
        <translation>Todo el terrario puede enfriarse demasiado {case}: en el peor de los casos, hasta el lugar más cálido baja de {limit}, lo mínimo que soporta un animal ({species}), al cabo de {earliest}.</translation>
    </message>
    <message>
        <source>{circuit} is overloaded: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation>Sobrecarga en {circuit}: tiene {range} conectados durante horas, y no debería pasar de {max} ({rating} a {voltage}).</translation>
    </message>
    <message>
        <source>{strip} is overloaded: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation>Sobrecarga en {strip}: tiene {range} conectados durante horas, y no debería pasar de {max} ({rating} a {voltage}).</translation>
    </message>
    <message>
        <source>{stand} is overloaded: it carries {range}, and it is rated for {max}.</source>
        <translation>Sobrecarga en {stand}: soporta {range}, y su carga admisible es {max}.</translation>
    </message>
    <message>
        <source>UV from {lamp} is too strong at {distance}, the nearest an animal comes: UV index {range}, and {max} is the most it should meet ({species}).</source>
        <translation>Los UV de {lamp} son demasiado intensos a {distance}, lo más cerca que llega un animal: índice UV {range}, y el máximo que debería recibir es {max} ({species}).</translation>
    </message>
    <message>
        <source>{device} is too strong for its holder: {likely}, and the holder is rated for {max}. It overheats.</source>
        <translation>{device} tiene demasiada potencia para su portalámparas: {likely}, y el portalámparas admite {max}. Se sobrecalienta.</translation>
    </message>
    <message>
        <source>{device} is too strong for its control: {likely}, and the control is rated for {max}. It overheats.</source>
        <translation>{device} tiene demasiada potencia para su regulador: {likely}, y el regulador admite {max}. Se sobrecalienta.</translation>
    </message>
    <message>
        <source>The water in {fitting} is {range} deep, deeper than the smallest animal here is high, {max} ({species}). An animal that can&apos;t climb out drowns.</source>
        <translation>El agua de {fitting} tiene {range} de profundidad, más que la altura del animal más pequeño de aquí, {max} ({species}). Un animal que no pueda salir se ahoga.</translation>
    </message>
    <message>
        <source>How deep the water in {fitting} is is not stated. It may be deeper than the smallest animal here is high, {max} ({species}), which can drown it.</source>
        <translation>No se indica qué profundidad tiene el agua de {fitting}. Puede superar la altura del animal más pequeño de aquí, {max} ({species}), y este puede ahogarse.</translation>
    </message>
    <message>
        <source>{animal} must not be cooled for the winter: {reason}. No rest is planned, and all figures are for an animal that stays warm.</source>
        <translation>No se debe enfriar a {animal} para el invierno: {reason}. No se planifica ninguna hibernación, y todas las cifras son para un animal que se mantiene caliente.</translation>
    </message>
    <message>
        <source>Let it run this long before you trust what its thermometers say, and run it for some days before an animal moves in.</source>
        <translation>Dejarlo funcionar este tiempo antes de fiarse de lo que marcan los termómetros, y unos días antes de que entre un animal.</translation>
    </message>
    <message>
        <source>Keep it shut. Wrap the box in blankets, away from lamps and heaters: they come on again with the power. Switch them off until the blankets are gone. Bottles of warm water, wrapped in cloth, may stand at one side. Never heat with a flame. An animal that is limp or doesn&apos;t respond should be seen by a vet who knows such animals; it is warmed slowly, never in hot water or on a hot surface.</source>
        <translation>Mantenerlo cerrado. Envolver el terrario en mantas, lejos de lámparas y calefactores, que vuelven a encenderse cuando vuelve la luz. Apagarlos hasta haber retirado las mantas. En un lado se pueden poner botellas de agua templada envueltas en un paño. No calentar nunca con una llama. Un animal flácido o que no responde debe verlo un veterinario que conozca estos animales; se calienta despacio, nunca en agua caliente ni sobre una superficie caliente.</translation>
    </message>
    <message>
        <source>Keep a spare of each lamp that heats. Change it with the power off and the holder cold. Where no spare is at hand before the time named here, house the animal in a room that is warm enough. Ask a vet where it has been too cold for long or stops eating.</source>
        <translation>Tener un repuesto de cada lámpara que calienta. Cambiarla con la corriente cortada y el portalámparas frío. Si no hay repuesto a mano antes del plazo indicado aquí, alojar al animal en una habitación lo bastante cálida. Consultar a un veterinario si ha pasado demasiado tiempo con frío o deja de comer.</translation>
    </message>
    <message>
        <source>Unplug the mat, and use it again only with another thermostat. Take the animal off it. Burns from below don&apos;t always show at once: have a vet look at an animal that lay on it. A cut-out of its own, apart from the thermostat, keeps this from happening.</source>
        <translation>Desenchufar la manta y no volver a usarla sin cambiar el termostato. Retirar de ella al animal. Las quemaduras desde abajo no siempre se ven enseguida: que un veterinario examine al animal que haya estado encima. Un limitador de temperatura propio, independiente del termostato, evita que esto ocurra.</translation>
    </message>
    <message>
        <source>Switch off what heats, keep only the light that is needed. Shade the room, let in air by night, offer fresh water. Before the time named here bring the animal to a cooler room. One that gapes, is frantic or goes limp needs a vet at once; on the way it is cooled gently, never with ice.</source>
        <translation>Apagar lo que calienta y dejar solo la luz necesaria. Dar sombra a la habitación, ventilar de noche, ofrecer agua fresca. Antes del plazo indicado aquí, llevar al animal a una habitación más fresca. Si boquea, está muy agitado o se queda flácido, necesita un veterinario de inmediato; por el camino se le enfría con suavidad, nunca con hielo.</translation>
    </message>
    <message>
        <source>Put the covers back, clear of all lamps, and look again in a few hours. Where that may not be noticed in time, fix them so that they can&apos;t be left off.</source>
        <translation>Volver a poner las cubiertas, apartadas de todas las lámparas, y revisar al cabo de unas horas. Si puede que nadie lo note a tiempo, fijarlas de modo que no puedan quedar sin poner.</translation>
    </message>
    <message>
        <source>What else runs on {circuit} is not stated. The enclosures alone draw {likely}.</source>
        <translation>No se indica qué más está conectado a {circuit}. Solo los terrarios consumen {likely}.</translation>
    </message>
    <message>
        <source>{circuit} is near its limit: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation>{circuit} está cerca de su límite: tiene {range} conectados durante horas, y no debería pasar de {max} ({rating} a {voltage}).</translation>
    </message>
    <message>
        <source>What {strip} may carry is not stated. It feeds {likely}.</source>
        <translation>No se indica cuánto admite {strip}. Alimenta {likely}.</translation>
    </message>
    <message>
        <source>{strip} is near its limit: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation>{strip} está cerca de su límite: tiene {range} conectados durante horas, y no debería pasar de {max} ({rating} a {voltage}).</translation>
    </message>
    <message>
        <source>{strip} has too few {supply} outlets: {used} are needed, and it has {outlets}.</source>
        <translation>{strip} no tiene tomas suficientes ({supply}): se necesitan {used} y hay {outlets}.</translation>
    </message>
    <message>
        <source>How many {supply} outlets {strip} has is not stated. Needed: {used}.</source>
        <translation>No se indica cuántas tomas tiene {strip} ({supply}). Se necesitan: {used}.</translation>
    </message>
    <message>
        <source>{strip} is plugged into {fed_from}. Strips fed by strips overheat at the plug.</source>
        <translation>{strip} se enchufa en {fed_from}. Las regletas enchufadas a otras regletas se sobrecalientan en la clavija.</translation>
    </message>
    <message>
        <source>{strip} has no residual-current protection, and there is water near it.</source>
        <translation>{strip} no tiene protección diferencial, y hay agua cerca.</translation>
    </message>
    <message>
        <source>It is not stated whether {strip} has residual-current protection. Near water it should.</source>
        <translation>No se indica si {strip} tiene protección diferencial. Cerca del agua debería tenerla.</translation>
    </message>
    <message>
        <source>{strip} names the circuit “{circuit}”, which is not in the plan.</source>
        <translation>{strip} nombra el circuito «{circuit}», que no está en el plan.</translation>
    </message>
    <message>
        <source>It is not stated where {device} ({power}) is plugged in, so its load is on no strip and no circuit.</source>
        <translation>No se indica dónde se enchufa {device} ({power}), así que su carga no se cuenta en ninguna regleta ni circuito.</translation>
    </message>
    <message>
        <source>It is not stated whether {device} is timed or always on.</source>
        <translation>No se indica si {device} funciona con temporizador o siempre.</translation>
    </message>
    <message>
        <source>The power of {device} is not stated. For its kind, {range} was taken.</source>
        <translation>No se indica la potencia de {device}. Por su tipo se ha tomado {range}.</translation>
    </message>
    <message>
        <source>{device} should not run on a dimmer: it is {load}.</source>
        <translation>{device} no debería funcionar con un atenuador: es {load}.</translation>
    </message>
    <message>
        <source>{device} should not run on a thermostat: it is {load}.</source>
        <translation>{device} no debería funcionar con un termostato: es {load}.</translation>
    </message>
    <message>
        <source>{device} gives light, and its thermostat switches it on and off. That flickers by day and shortens the lamp&apos;s life.</source>
        <translation>{device} da luz, y su termostato enciende y apaga esa luz. Eso produce parpadeos de día y acorta la vida de la lámpara.</translation>
    </message>
    <message>
        <source>{device} ({power}) runs without a thermostat. Nothing stops it on a warm day.</source>
        <translation>{device} ({power}) funciona sin termostato. Nada corta el calor en un día caluroso.</translation>
    </message>
    <message>
        <source>It is not stated where the thermostat of {device} has its probe, so it counts as unregulated.</source>
        <translation>No se indica dónde tiene la sonda el termostato de {device}, así que se considera sin regulación.</translation>
    </message>
    <message>
        <source>It is not stated what temperature the thermostat of {device} is set to, so it counts as unregulated.</source>
        <translation>No se indica a qué temperatura está ajustado el termostato de {device}, así que se considera sin regulación.</translation>
    </message>
    <message>
        <source>{device} is on the timer, so it is cold at night, when its warmth may be needed most.</source>
        <translation>{device} depende del temporizador, así que no calienta de noche, cuando más falta puede hacer su calor.</translation>
    </message>
    <message>
        <source>Water is near mains voltage: {reason}.</source>
        <translation>Hay agua cerca de la tensión de red: {reason}.</translation>
    </message>
    <message>
        <source>{device} ({power}) gets hot and needs a heat-rated holder.</source>
        <translation>{device} ({power}) se calienta mucho y necesita un portalámparas resistente al calor.</translation>
    </message>
    <message>
        <source>The file is too large: {1:bytes}, and at most {0:bytes} are read.</source>
        <translation>El archivo es demasiado grande: {1:bytes}, y se leen {0:bytes} como máximo.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>El archivo está vacío.</translation>
    </message>
    <message>
        <source>The text is not valid UTF-8 at line {0}, column {1}. Save it as UTF-8.</source>
        <translation>El texto no es UTF-8 válido en la línea {0}, columna {1}. Guardarlo como UTF-8.</translation>
    </message>
    <message>
        <source>This is not valid JSON at line {0}, column {1}. Look for a missing comma, quote or brace just before.</source>
        <translation>No es JSON válido en la línea {0}, columna {1}. Buscar justo antes una coma, comilla o llave que falte.</translation>
    </message>
    <message>
        <source>The file ends too early, at line {0}, column {1}. A part of it is missing.</source>
        <translation>El archivo se corta antes de tiempo, en la línea {0}, columna {1}. Falta una parte.</translation>
    </message>
    <message>
        <source>The number at line {0}, column {1} is not an ordinary number, or far too large.</source>
        <translation>El número de la línea {0}, columna {1} no es un número corriente o es demasiado grande.</translation>
    </message>
    <message>
        <source>Lists and objects are nested too deeply; at most {0} levels are read.</source>
        <translation>Hay demasiados niveles de listas y objetos anidados; se leen {0} niveles como máximo.</translation>
    </message>
    <message>
        <source>There are too many values; at most {0} are read.</source>
        <translation>Hay demasiados valores; se leen {0} como máximo.</translation>
    </message>
    <message>
        <source>“{0}” stands here twice. Keep one of them.</source>
        <translation>«{0}» figura aquí dos veces. Dejar solo uno.</translation>
    </message>
    <message>
        <source>“{0}” is not a known key.[ Did you mean “{1}”?] A key of your own must begin with “x_”.</source>
        <translation>«{0}» no es una clave conocida.[ ¿Quería decir «{1}»?] Una clave propia debe empezar por «x_».</translation>
    </message>
    <message>
        <source>“{0}” is missing.</source>
        <translation>Falta «{0}».</translation>
    </message>
    <message>
        <source>Here stands {1:type}, and {0:type} is needed.</source>
        <translation>Aquí hay {1:type}, y se necesita {0:type}.</translation>
    </message>
    <message>
        <source>{0} is not a whole number.</source>
        <translation>{0} no es un número entero.</translation>
    </message>
    <message>
        <source>{0} is too small. It must lie between {1} and {2}.</source>
        <translation>{0} es demasiado pequeño. Debe estar entre {1} y {2}.</translation>
    </message>
    <message>
        <source>{0} is too small. It must be more than {1} and at most {2}.</source>
        <translation>{0} es demasiado pequeño. Debe ser mayor que {1} y como máximo {2}.</translation>
    </message>
    <message>
        <source>{0} is too large. It must lie between {1} and {2}.</source>
        <translation>{0} es demasiado grande. Debe estar entre {1} y {2}.</translation>
    </message>
    <message>
        <source>{0} is not a plain decimal. Write it in digits with a point, without an exponent and with at most 12 decimals.</source>
        <translation>{0} no es un decimal corriente. Debe escribirse en cifras y con punto decimal, sin exponente y con 12 decimales como máximo.</translation>
    </message>
    <message>
        <source>This text is too short: {0} characters, and at least {1} are needed.</source>
        <translation>Este texto es demasiado corto: {0} caracteres, y se necesitan al menos {1}.</translation>
    </message>
    <message>
        <source>This text is too long: {0} characters, and at most {1} are allowed.</source>
        <translation>Este texto es demasiado largo: {0} caracteres, y se admiten {1} como máximo.</translation>
    </message>
    <message>
        <source>“{0}” does not have the right form. It must be {1:pattern}.</source>
        <translation>«{0}» no tiene la forma correcta. Debe ser {1:pattern}.</translation>
    </message>
    <message>
        <source>This text holds a control character, such as a line break. Take it out.</source>
        <translation>Este texto contiene un carácter de control, por ejemplo un salto de línea. Hay que quitarlo.</translation>
    </message>
    <message>
        <source>“{0}” is not one of the choices.[ Did you mean “{2}”?] The choices are: {1}.</source>
        <translation>«{0}» no es una de las opciones.[ ¿Quería decir «{2}»?] Las opciones son: {1}.</translation>
    </message>
    <message>
        <source>“{0}” stands in this list twice. Once is enough.</source>
        <translation>«{0}» figura dos veces en esta lista. Basta con una.</translation>
    </message>
    <message>
        <source>Here must stand {0}, and there is {1}.</source>
        <translation>Aquí debe figurar {0}, y figura {1}.</translation>
    </message>
    <message>
        <source>The list has too few entries: {0}, and at least {1} are needed.</source>
        <translation>La lista tiene muy pocos elementos: {0}, y se necesitan al menos {1}.</translation>
    </message>
    <message>
        <source>The list has too many entries: {0}, and at most {1} are allowed.</source>
        <translation>La lista tiene demasiados elementos: {0}, y se admiten {1} como máximo.</translation>
    </message>
    <message>
        <source>There are more problems that are not listed: {0}. Mend these first.</source>
        <translation>Hay más problemas que no se muestran: {0}. Corregir primero estos.</translation>
    </message>
    <message>
        <source>The file is of version {0}, and this program knows up to version {1}. Use a newer Loamstead.</source>
        <translation>El archivo es de la versión {0}, y este programa conoce hasta la versión {1}. Usar un Loamstead más reciente.</translation>
    </message>
    <message>
        <source>The id “{0}” stands here a second time[; the first is at {1}]. Each needs its own.</source>
        <translation>El identificador «{0}» figura aquí por segunda vez[; el primero está en {1}]. Cada elemento necesita el suyo.</translation>
    </message>
    <message>
        <source>There is no {0} with the id “{1}” in the plan.</source>
        <translation>En el plan no hay {0} con el identificador «{1}».</translation>
    </message>
    <message>
        <source>There are two panels for the {0} wall. The first is {1}: remove one of them, or name another wall.</source>
        <translation>Hay dos paneles para la misma pared ({0}). El primero es {1}: quitar uno de los dos o indicar otra pared.</translation>
    </message>
    <message>
        <source>These strips feed each other in a circle: {0}.</source>
        <translation>Estas regletas se alimentan unas a otras en círculo: {0}.</translation>
    </message>
    <message>
        <source>“{0}” is missing. With “{1}” it must be given.</source>
        <translation>Falta «{0}». Con «{1}» es obligatorio.</translation>
    </message>
    <message>
        <source>“{0}” means nothing for the control “{1}”. Take it out, or choose another control.</source>
        <translation>«{0}» no tiene sentido con el control «{1}». Quitarlo o elegir otro control.</translation>
    </message>
    <message>
        <source>The distances must rise: {0} comes after {1}.</source>
        <translation>Las distancias deben ir en aumento: {0} viene después de {1}.</translation>
    </message>
    <message>
        <source>“{0}” lies wholly outside the box. Coordinates count from the front-left corner of the base.</source>
        <translation>«{0}» queda por completo fuera del terrario. Las coordenadas se cuentan desde la esquina delantera izquierda de la base.</translation>
    </message>
    <message>
        <source>The bed is {0} m deep, and the box is only {1} m high.</source>
        <translation>El sustrato tiene {0} m de profundidad, y el terrario solo {1} m de altura.</translation>
    </message>
    <message>
        <source>The lights go on and off at the same time, {0}.</source>
        <translation>Las luces se encienden y se apagan a la misma hora, {0}.</translation>
    </message>
    <message>
        <source>“{0}” is not a known currency. Write the three letters of ISO 4217, such as USD or EUR.</source>
        <translation>«{0}» no es una moneda conocida. Escribir las tres letras de ISO 4217, por ejemplo USD o EUR.</translation>
    </message>
    <message>
        <source>The basking spot is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation>La zona de asoleo está a {range} {case}, medido {measure}. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>The basking spot is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation>La zona de asoleo está demasiado caliente {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el valor probable lo supera en {over_by}.</translation>
    </message>
    <message>
        <source>The basking spot is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation>La zona de asoleo está demasiado fría {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el valor probable queda {short_by} por debajo.</translation>
    </message>
    <message>
        <source>The basking spot may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation>La zona de asoleo puede calentarse demasiado {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el extremo superior lo supera en {over_by}.</translation>
    </message>
    <message>
        <source>The basking spot may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation>La zona de asoleo puede quedar demasiado fría {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el extremo inferior queda {short_by} por debajo.</translation>
    </message>
    <message>
        <source>The warm side is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation>El lado cálido está a {range} {case}, medido {measure}. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>The warm side is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation>El lado cálido está demasiado caliente {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el valor probable lo supera en {over_by}.</translation>
    </message>
    <message>
        <source>The warm side is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation>El lado cálido está demasiado frío {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el valor probable queda {short_by} por debajo.</translation>
    </message>
    <message>
        <source>The warm side may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation>El lado cálido puede calentarse demasiado {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el extremo superior lo supera en {over_by}.</translation>
    </message>
    <message>
        <source>The warm side may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation>El lado cálido puede quedar demasiado frío {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el extremo inferior queda {short_by} por debajo.</translation>
    </message>
    <message>
        <source>The cool side is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation>El lado fresco está a {range} {case}, medido {measure}. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>The cool side is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation>El lado fresco está demasiado caliente {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el valor probable lo supera en {over_by}.</translation>
    </message>
    <message>
        <source>The cool side is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation>El lado fresco está demasiado frío {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el valor probable queda {short_by} por debajo.</translation>
    </message>
    <message>
        <source>The cool side may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation>El lado fresco puede calentarse demasiado {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el extremo superior lo supera en {over_by}.</translation>
    </message>
    <message>
        <source>The cool side may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation>El lado fresco puede quedar demasiado frío {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el extremo inferior queda {short_by} por debajo.</translation>
    </message>
    <message>
        <source>The box is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation>El terrario está a {range} {case}, medido {measure}. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>The box is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation>El terrario está demasiado caliente {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el valor probable lo supera en {over_by}.</translation>
    </message>
    <message>
        <source>The box is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation>El terrario está demasiado frío {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el valor probable queda {short_by} por debajo.</translation>
    </message>
    <message>
        <source>The box may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation>El terrario puede calentarse demasiado {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el extremo superior lo supera en {over_by}.</translation>
    </message>
    <message>
        <source>The box may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation>El terrario puede quedar demasiado frío {case}: {range}, medido {measure}. El objetivo es {band} ({species}); el extremo inferior queda {short_by} por debajo.</translation>
    </message>
    <message>
        <source>The temperatures {case} are not known: the balance of heat did not close ({residual} were left over).</source>
        <translation>No se conocen las temperaturas {case}: el balance de calor no cuadró (sobraron {residual}).</translation>
    </message>
    <message>
        <source>No target temperature is on file for the {zone} ({species}), so it is not judged.</source>
        <translation>No consta ninguna temperatura objetivo ({zone}, {species}), así que no se evalúa.</translation>
    </message>
    <message>
        <source>How {course} runs hour by hour can&apos;t be told: no balance was found for a step.</source>
        <translation>No se puede decir cómo evoluciona hora a hora {course}: en un paso no se encontró ningún balance.</translation>
    </message>
    <message>
        <source>The temperatures can&apos;t be computed: {reason}.</source>
        <translation>No se pueden calcular las temperaturas: {reason}.</translation>
    </message>
    <message>
        <source>{device} runs at its limit of {power} {case} and does not reach its set temperature.</source>
        <translation>{device} funciona a su límite de {power} {case} y no alcanza la temperatura ajustada.</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>mínimo</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>máximo</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>como mínimo</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>como máximo</translation>
    </message>
    <message>
        <source>caution above</source>
        <translation>precaución por encima de</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>demasiado</translation>
    </message>
    <message>
        <source>burnt so far</source>
        <translation>uso hasta ahora</translation>
    </message>
    <message>
        <source>burnt when read</source>
        <translation>uso al medir</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>distancia</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>distancia de seguridad</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>separación</translation>
    </message>
    <message>
        <source>gap needed</source>
        <translation>separación necesaria</translation>
    </message>
    <message>
        <source>reach</source>
        <translation>alcance</translation>
    </message>
    <message>
        <source>rated current</source>
        <translation>corriente nominal</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>suelo</translation>
    </message>
    <message>
        <source>usable floor</source>
        <translation>suelo útil</translation>
    </message>
    <message>
        <source>animals</source>
        <translation>animales</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>at fast growth</source>
        <translation>con crecimiento rápido</translation>
    </message>
    <message>
        <source>at slow growth</source>
        <translation>con crecimiento lento</translation>
    </message>
    <message>
        <source>side</source>
        <translation>lado</translation>
    </message>
    <message>
        <source>body length</source>
        <translation>longitud corporal</translation>
    </message>
    <message>
        <source>clear width</source>
        <translation>anchura libre</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>hides</source>
        <translation>refugios</translation>
    </message>
    <message>
        <source>species</source>
        <translation>especie</translation>
    </message>
    <message>
        <source>males</source>
        <translation>machos</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profundidad</translation>
    </message>
    <message>
        <source>after the lamps go on</source>
        <translation>tras encenderse las lámparas</translation>
    </message>
    <message>
        <source>misting</source>
        <translation>nebulización</translation>
    </message>
    <message>
        <source>heat left over</source>
        <translation>calor sobrante</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>coldest pane</source>
        <translation>panel de vidrio más frío</translation>
    </message>
    <message>
        <source>dew point</source>
        <translation>punto de rocío</translation>
    </message>
    <message>
        <source>outlets in use</source>
        <translation>tomas en uso</translation>
    </message>
    <message>
        <source>outlets</source>
        <translation>tomas</translation>
    </message>
    <message>
        <source>set temperature</source>
        <translation>temperatura fijada</translation>
    </message>
    <message>
        <source>count</source>
        <translation>número</translation>
    </message>
    <message>
        <source>use in a year</source>
        <translation>consumo al año</translation>
    </message>
    <message>
        <source>age</source>
        <translation>edad</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>change</source>
        <translation>cambio</translation>
    </message>
    <message>
        <source>new value</source>
        <translation>valor nuevo</translation>
    </message>
    <message>
        <source>present value</source>
        <translation>valor actual</translation>
    </message>
    <message>
        <source>area</source>
        <translation>área</translation>
    </message>
    <message>
        <source>share</source>
        <translation>proporción</translation>
    </message>
    <message>
        <source>goods</source>
        <translation>artículos</translation>
    </message>
    <message>
        <source>what an animal bears</source>
        <translation>lo que soporta un animal</translation>
    </message>
    <message>
        <source>within</source>
        <translation>plazo</translation>
    </message>
    <message>
        <source>at the earliest</source>
        <translation>como muy pronto</translation>
    </message>
    <message>
        <source>read</source>
        <translation>leído</translation>
    </message>
    <message>
        <source>standard deviations off</source>
        <translation>desviaciones típicas de diferencia</translation>
    </message>
    <message>
        <source>room</source>
        <translation>habitación</translation>
    </message>
    <message>
        <source>room alike within</source>
        <translation>habitación igual, con margen de</translation>
    </message>
    <message>
        <source>chi-square</source>
        <translation>chi cuadrado</translation>
    </message>
    <message>
        <source>chance of a worse fit</source>
        <translation>probabilidad de un ajuste peor</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>zona</translation>
    </message>
    <message>
        <source>weeks in the cold</source>
        <translation>semanas en frío</translation>
    </message>
    <message>
        <source>loss that ends it</source>
        <translation>pérdida que le pone fin</translation>
    </message>
    <message>
        <source>UV index at the animal&apos;s back is {range} under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation>El índice UV en el dorso del animal es {range} bajo {lamp}, a {distance}. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>UV is too strong: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation>Los UV son demasiado intensos: índice {range} en el dorso del animal bajo {lamp}, a {distance}. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>UV is too weak: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation>Los UV son demasiado débiles: índice {range} en el dorso del animal bajo {lamp}, a {distance}. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>UV may be too strong: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation>Los UV pueden ser demasiado intensos: índice {range} en el dorso del animal bajo {lamp}, a {distance}. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>UV may be too weak: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation>Los UV pueden ser demasiado débiles: índice {range} en el dorso del animal bajo {lamp}, a {distance}. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>The UV index at the animal&apos;s back is not known[ under {lamp}][ at {distance}]: {reason}.</source>
        <translation>No se conoce el índice UV en el dorso del animal[ bajo {lamp}][ a {distance}]: {reason}.</translation>
    </message>
    <message>
        <source>On {standing_on} UV reaches an index of {range} under {lamp}. The most for {species} is {max}.</source>
        <translation>Sobre {standing_on}, los UV alcanzan un índice de {range} bajo {lamp}. Máximo para {species}: {max}.</translation>
    </message>
    <message>
        <source>UV is too strong on {standing_on}: index {range} at the animal&apos;s back under {lamp}. The most for {species} is {max}.</source>
        <translation>Los UV son demasiado intensos sobre {standing_on}: índice {range} en el dorso del animal bajo {lamp}. Máximo para {species}: {max}.</translation>
    </message>
    <message>
        <source>UV may be too strong on {standing_on}: index {range} at the animal&apos;s back under {lamp}. The most for {species} is {max}.</source>
        <translation>Los UV pueden ser demasiado intensos sobre {standing_on}: índice {range} en el dorso del animal bajo {lamp}. Máximo para {species}: {max}.</translation>
    </message>
    <message>
        <source>On {standing_on} an animal&apos;s back comes within {distance} of {lamp}, nearer than its UV readings reach. How strong it is there is not known.</source>
        <translation>Sobre {standing_on}, el dorso de un animal llega a {distance} de {lamp}, más cerca de lo que cubren sus lecturas de UV. No se sabe cuál es allí la intensidad.</translation>
    </message>
    <message>
        <source>The UV of {lamp} was read after {burnt_when_read} of burning, but it is said to have burnt {burnt} so far. It is taken as just read.</source>
        <translation>Los UV de {lamp} se midieron tras {burnt_when_read} de uso, pero según el plan su uso hasta ahora es de {burnt}. Se toman como recién medidos.</translation>
    </message>
    <message>
        <source>This species needs UV ({species}), and no lamp here gives any.</source>
        <translation>Esta especie necesita UV ({species}), y aquí no los da ninguna lámpara.</translation>
    </message>
    <message>
        <source>{cover} keeps the UV of {lamp} from the animal.</source>
        <translation>{cover} impide que los UV de {lamp} lleguen al animal.</translation>
    </message>
    <message>
        <source>No species here has a UV target on file, and {lamp} gives UV[: index {likely} at the animal&apos;s back].</source>
        <translation>Para ninguna especie de aquí consta un objetivo de UV, y {lamp} da UV[: índice {likely} en el dorso del animal].</translation>
    </message>
    <message>
        <source>There is hardly any shade from the UV of {lamp}: only {likely:percent} of the floor lies out of it.</source>
        <translation>Apenas hay sombra frente a los UV de {lamp}: solo {likely:percent} del suelo queda fuera de su alcance.</translation>
    </message>
    <message>
        <source>There may be too little shade from the UV of {lamp}: only {likely:percent} of the floor surely lies out of it.</source>
        <translation>Puede haber poca sombra frente a los UV de {lamp}: solo {likely:percent} del suelo queda con seguridad fuera de su alcance.</translation>
    </message>
    <message>
        <source>{lamp} is a compact UV lamp. Its light is strong close by and weak a little further: measure it before you rely on it.</source>
        <translation>{lamp} es una lámpara UV compacta. Su luz es intensa de cerca y débil un poco más lejos: medirla antes de confiar en ella.</translation>
    </message>
    <message>
        <source>Light a day: {likely}. The target is {band} ({species}).</source>
        <translation>Luz al día: {likely}. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>The day is too long: {likely} of light. The target is {band} ({species}).</source>
        <translation>El día es demasiado largo: {likely} de luz. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>The day is too short: {likely} of light. The target is {band} ({species}).</source>
        <translation>El día es demasiado corto: {likely} de luz. El objetivo es {band} ({species}).</translation>
    </message>
    <message>
        <source>It is not stated when the lamps go on and off.</source>
        <translation>No se indica cuándo se encienden y se apagan las lámparas.</translation>
    </message>
    <message>
        <source>{lamp} shines at night. Animals need dark nights.</source>
        <translation>{lamp} da luz de noche. Los animales necesitan noches oscuras.</translation>
    </message>
    <message>
        <source>The lamps go on at {on} and off at {off}: that is no day.</source>
        <translation>Las lámparas se encienden a las {on} y se apagan a las {off}: eso no es un día.</translation>
    </message>
    <message>
        <source>The hours of light should follow the sky, and can&apos;t: {reason}. They are counted as the same on every day.</source>
        <translation>Las horas de luz deberían seguir al cielo, pero no pueden: {reason}. Se cuentan iguales todos los días.</translation>
    </message>
    <message>
        <source>Humidity near the ground is {range:percent} {case}. The target is {band:percent} ({species}).[ Misting counted in: {misting}.]</source>
        <translation>La humedad cerca del suelo es {range:percent} {case}. El objetivo es {band:percent} ({species}).[ Nebulización incluida: {misting}.]</translation>
    </message>
    <message>
        <source>It is too damp {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the likely value is {over_by:percent} over it.</source>
        <translation>Hay demasiada humedad {case}: {range:percent} cerca del suelo. El objetivo es {band:percent} ({species}); el valor probable lo supera en {over_by:percent}.</translation>
    </message>
    <message>
        <source>It is too dry {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the likely value is {short_by:percent} under it.[ Misting counted in: {misting}.]</source>
        <translation>Hay muy poca humedad {case}: {range:percent} cerca del suelo. El objetivo es {band:percent} ({species}); el valor probable queda {short_by:percent} por debajo.[ Nebulización incluida: {misting}.]</translation>
    </message>
    <message>
        <source>It may get too damp {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the upper end is {over_by:percent} over it.</source>
        <translation>Puede haber demasiada humedad {case}: {range:percent} cerca del suelo. El objetivo es {band:percent} ({species}); el extremo superior lo supera en {over_by:percent}.</translation>
    </message>
    <message>
        <source>It may get too dry {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the lower end is {short_by:percent} under it.[ Misting counted in: {misting}.]</source>
        <translation>Puede haber muy poca humedad {case}: {range:percent} cerca del suelo. El objetivo es {band:percent} ({species}); el extremo inferior queda {short_by:percent} por debajo.[ Nebulización incluida: {misting}.]</translation>
    </message>
    <message>
        <source>The humidity {case} is not known.</source>
        <translation>No se conoce la humedad {case}.</translation>
    </message>
    <message>
        <source>No target humidity is on file ({species}), so it is not judged.</source>
        <translation>No consta ninguna humedad objetivo ({species}), así que no se evalúa.</translation>
    </message>
    <message>
        <source>Water condenses on the coldest pane {case}: the pane is at {pane}[, and the air gives off water below {dew_point}].</source>
        <translation>Se condensa agua en el panel de vidrio más frío {case}: está a {pane}[, y el aire cede agua por debajo de {dew_point}].</translation>
    </message>
    <message>
        <source>There is no dry place to rest {season}, by day or by night: humidity on the driest ground is about {likely:percent}, and {max:percent} is the most that suits ({species}). Mould grows in such air, and shell, skin and lungs suffer.</source>
        <translation>No hay ningún lugar seco donde descansar {season}, ni de día ni de noche: la humedad en el suelo más seco es de aproximadamente {likely:percent}, y el máximo adecuado es {max:percent} ({species}). En ese aire crece moho, y sufren el caparazón, la piel y los pulmones.</translation>
    </message>
    <message>
        <source>How much is misted is not stated, so the humidity is only known within wide limits.</source>
        <translation>No se indica cuánto se nebuliza, así que la humedad solo se conoce dentro de límites amplios.</translation>
    </message>
    <message>
        <source>More is misted than dries off: the bed gets wetter by {by}, until it is sodden.</source>
        <translation>Se nebuliza más de lo que se seca: el sustrato gana agua, {by}, hasta quedar encharcado.</translation>
    </message>
    <message>
        <source>{fitting} is too small: its {side_name} is {side}, and {min} is what the largest animal needs to drink and bathe in it ({species}).</source>
        <translation>El tamaño de {fitting} es insuficiente ({side_name}: {side}). El animal más grande necesita {min} para beber y bañarse ({species}).</translation>
    </message>
    <message>
        <source>{fitting} may be too small: its {side_name} is {side}, and a large animal needs {min} to drink and bathe in it ({species}).</source>
        <translation>El tamaño de {fitting} puede ser insuficiente ({side_name}: {side}). Un animal grande necesita {min} para beber y bañarse ({species}).</translation>
    </message>
    <message>
        <source>The water in {fitting} is too deep: {range}. At most {max} is asked for ({species}).</source>
        <translation>El agua de {fitting} es demasiado profunda: {range}. Se pide como máximo {max} ({species}).</translation>
    </message>
    <message>
        <source>The water in {fitting} is too shallow to bathe in: {range}. At least {min} is asked for ({species}).</source>
        <translation>El agua de {fitting} es poco profunda para bañarse: {range}. Se pide al menos {min} ({species}).</translation>
    </message>
    <message>
        <source>There is no water bowl, and this species needs one ({species}).</source>
        <translation>No hay bebedero, y esta especie necesita uno ({species}).</translation>
    </message>
    <message>
        <source>The tap water is not treated, and chlorine harms the skin of an amphibian ({species}).</source>
        <translation>El agua del grifo no está tratada, y el cloro daña la piel de los anfibios ({species}).</translation>
    </message>
    <message>
        <source>How much water a cartridge is good for is not stated, so how often it is due is not known. {likely} pass it in a day.</source>
        <translation>No se indica para cuánta agua sirve un cartucho, así que no se sabe cada cuánto hay que cambiarlo. Pasan por él {likely} al día.</translation>
    </message>
    <message>
        <source>The plan is in {plan_currency} and the price list in {list_currency}. Nothing is costed, since no rate is assumed.</source>
        <translation>El plan está en {plan_currency} y la lista de precios en {list_currency}. No se calcula ningún coste, porque no se supone ningún tipo de cambio.</translation>
    </message>
    <message>
        <source>Things without a price in the list: {count}. The totals leave them out: {needs}.</source>
        <translation>Artículos sin precio en la lista: {count}. Los totales no los incluyen: {needs}.</translation>
    </message>
    <message>
        <source>The price of electricity is not stated, so the running costs leave it out. Use: {kwh_per_year} a year.</source>
        <translation>No se indica el precio de la electricidad, así que los costes corrientes no la incluyen. Consumo: {kwh_per_year} al año.</translation>
    </message>
    <message>
        <source>The prices are invented examples of {date}. Put your own shop&apos;s prices in their place before you decide.</source>
        <translation>Los precios son ejemplos inventados, con fecha {date}. Sustituirlos por los de su propia tienda antes de decidir.</translation>
    </message>
    <message>
        <source>The price list is of {date}, {age_months} old.</source>
        <translation>La lista de precios, con fecha {date}, tiene {age_months}.</translation>
    </message>
    <message>
        <source>You own “{item}” ({quantity}), which the price list does not have. It is not set off against anything.</source>
        <translation>Usted ya dispone de «{item}» ({quantity}), que no está en la lista de precios. No se descuenta de nada.</translation>
    </message>
    <message>
        <source>What is bought at “{channel}” comes to {goods}, less than it takes orders for.</source>
        <translation>La compra en «{channel}» suma {goods}, menos de lo que exige como pedido mínimo.</translation>
    </message>
    <message>
        <source>You want to buy at “{channel}”, which the price list does not know. Everything is bought wherever it is cheapest.</source>
        <translation>Usted quiere comprar en «{channel}», que no está en la lista de precios. Todo se compra donde sea más barato.</translation>
    </message>
    <message>
        <source>A change of the needs meets nothing: the plan needs no {need}, or the price list has no such item in its unit ({item}).</source>
        <translation>Un cambio en las necesidades no se aplica a nada: el plan no necesita {need}, o la lista de precios no tiene ese artículo en su unidad ({item}).</translation>
    </message>
    <message>
        <source>Left out of the order at your wish: {need}.</source>
        <translation>Excluido del pedido por deseo suyo: {need}.</translation>
    </message>
    <message>
        <source>Left out of the order at your wish, though safety hangs on it: {need}.</source>
        <translation>Excluido del pedido por deseo suyo, aunque de ello depende la seguridad: {need}.</translation>
    </message>
    <message>
        <source>A sum is too large to be computed exactly.</source>
        <translation>Una suma es demasiado grande para calcularla con exactitud.</translation>
    </message>
    <message>
        <source>It can&apos;t be measured by itself; readings in the running box would narrow it.</source>
        <translation>No se puede medir por separado; lo acotarían lecturas tomadas con el terrario en marcha.</translation>
    </message>
    <message>
        <source>It lies in the material; a data sheet that states it would narrow it.</source>
        <translation>Depende del material; lo acotaría una ficha técnica que lo indique.</translation>
    </message>
    <message>
        <source>A thermometer that keeps highest and lowest, left in the room for a week of that season, would narrow it.</source>
        <translation>Lo acotaría un termómetro de máxima y mínima dejado en la habitación durante una semana de esa estación.</translation>
    </message>
    <message>
        <source>A hygrometer left in the room for a week of that season would narrow it.</source>
        <translation>Lo acotaría un higrómetro dejado en la habitación durante una semana de esa estación.</translation>
    </message>
    <message>
        <source>Measuring it would narrow it: the gap over the gap and its wire, squared.</source>
        <translation>Lo acotaría medirlo: el hueco dividido entre el hueco más su alambre, al cuadrado.</translation>
    </message>
    <message>
        <source>Keeping the bed evenly damp under the lamp, or dry, would narrow it.</source>
        <translation>Lo acotaría mantener el sustrato bajo la lámpara húmedo por igual, o seco.</translation>
    </message>
    <message>
        <source>Stating how much is misted would narrow it.</source>
        <translation>Lo acotaría indicar cuánto se nebuliza.</translation>
    </message>
    <message>
        <source>No entry of the plan narrows it; thermometers in the running box tell what is so.</source>
        <translation>Ningún dato del plan lo acota; los termómetros en el terrario en marcha dicen cómo es en realidad.</translation>
    </message>
    <message>
        <source>Sealing its gaps would narrow it.</source>
        <translation>Lo acotaría sellar sus rendijas.</translation>
    </message>
    <message>
        <source>Weighing a litre of it as it is kept, and again when dried, would narrow it.</source>
        <translation>Lo acotaría pesar un litro tal como se mantiene y de nuevo una vez seco.</translation>
    </message>
    <message>
        <source>Weighing a litre of it from under the lamp, and again when dried, would narrow it.</source>
        <translation>Lo acotaría pesar un litro tomado de debajo de la lámpara y de nuevo una vez seco.</translation>
    </message>
    <message>
        <source>Measuring it with a power meter at the outlet would narrow it.</source>
        <translation>Lo acotaría medirlo con un vatímetro en la toma.</translation>
    </message>
    <message>
        <source>The maker&apos;s beam angle, entered with the lamp, would narrow it.</source>
        <translation>Lo acotaría el ángulo de haz que da el fabricante, anotado con la lámpara.</translation>
    </message>
    <message>
        <source>adoption fee</source>
        <translation>tasa de adopción</translation>
    </message>
    <message>
        <source>permit</source>
        <translation>permiso</translation>
    </message>
    <message>
        <source>calcium powder</source>
        <translation>calcio en polvo</translation>
    </message>
    <message>
        <source>dimmer</source>
        <translation>atenuador</translation>
    </message>
    <message>
        <source>dimming thermostat</source>
        <translation>termostato de regulación gradual</translation>
    </message>
    <message>
        <source>on/off thermostat</source>
        <translation>termostato de encendido y apagado</translation>
    </message>
    <message>
        <source>timer</source>
        <translation>temporizador</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>ventilador</translation>
    </message>
    <message>
        <source>residual-current adapter</source>
        <translation>adaptador diferencial</translation>
    </message>
    <message>
        <source>outlet strip</source>
        <translation>regleta</translation>
    </message>
    <message>
        <source>ballast</source>
        <translation>balasto</translation>
    </message>
    <message>
        <source>lamp guard</source>
        <translation>protector de lámpara</translation>
    </message>
    <message>
        <source>heat-rated lamp holder</source>
        <translation>portalámparas resistente al calor</translation>
    </message>
    <message>
        <source>UV fixture</source>
        <translation>luminaria UV</translation>
    </message>
    <message>
        <source>fruit fly cultures</source>
        <translation>cultivos de mosca de la fruta</translation>
    </message>
    <message>
        <source>greens</source>
        <translation>verdura de hoja</translation>
    </message>
    <message>
        <source>insects</source>
        <translation>insectos</translation>
    </message>
    <message>
        <source>frozen mice</source>
        <translation>ratones congelados</translation>
    </message>
    <message>
        <source>powdered food</source>
        <translation>alimento en polvo</translation>
    </message>
    <message>
        <source>frozen rats</source>
        <translation>ratas congeladas</translation>
    </message>
    <message>
        <source>reserve for illness</source>
        <translation>reserva para enfermedades</translation>
    </message>
    <message>
        <source>visit to the vet</source>
        <translation>visita al veterinario</translation>
    </message>
    <message>
        <source>disinfectant</source>
        <translation>desinfectante</translation>
    </message>
    <message>
        <source>gloves</source>
        <translation>guantes</translation>
    </message>
    <message>
        <source>quarantine box</source>
        <translation>recinto de cuarentena</translation>
    </message>
    <message>
        <source>hygrometer</source>
        <translation>higrómetro</translation>
    </message>
    <message>
        <source>infrared thermometer</source>
        <translation>termómetro infrarrojo</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>báscula</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>termómetro</translation>
    </message>
    <message>
        <source>UV index meter</source>
        <translation>medidor de índice UV</translation>
    </message>
    <message>
        <source>glass box</source>
        <translation>recinto de vidrio</translation>
    </message>
    <message>
        <source>plastic box</source>
        <translation>recinto de plástico</translation>
    </message>
    <message>
        <source>wooden box</source>
        <translation>recinto de madera</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>mueble</translation>
    </message>
    <message>
        <source>water conditioner</source>
        <translation>acondicionador de agua</translation>
    </message>
    <message>
        <source>filter cartridge</source>
        <translation>cartucho de filtro</translation>
    </message>
    <message>
        <source>mister</source>
        <translation>nebulizador</translation>
    </message>
    <message>
        <source>the box itself</source>
        <translation>el propio recinto</translation>
    </message>
    <message>
        <source>carries the box</source>
        <translation>sostiene el recinto</translation>
    </message>
    <message>
        <source>equipment of the plan</source>
        <translation>equipo del plan</translation>
    </message>
    <message>
        <source>a line of your own</source>
        <translation>una línea propia</translation>
    </message>
    <message>
        <source>a spare: warmth or UV hangs on this lamp</source>
        <translation>un repuesto: de esta lámpara depende el calor o los UV</translation>
    </message>
    <message>
        <source>holds a hot lamp safely</source>
        <translation>sujeta con seguridad una lámpara caliente</translation>
    </message>
    <message>
        <source>keeps animals off a hot lamp</source>
        <translation>mantiene a los animales lejos de una lámpara caliente</translation>
    </message>
    <message>
        <source>regulates a heater or lamp</source>
        <translation>regula un calefactor o una lámpara</translation>
    </message>
    <message>
        <source>switches the lamps on and off</source>
        <translation>enciende y apaga las lámparas</translation>
    </message>
    <message>
        <source>gives outlets enough</source>
        <translation>da tomas suficientes</translation>
    </message>
    <message>
        <source>cuts the power near water before a shock harms</source>
        <translation>corta la corriente cerca del agua antes de que una descarga haga daño</translation>
    </message>
    <message>
        <source>to read the warm and the cool end</source>
        <translation>para leer la temperatura del extremo cálido y del fresco</translation>
    </message>
    <message>
        <source>to read the temperature of surfaces</source>
        <translation>para leer la temperatura de las superficies</translation>
    </message>
    <message>
        <source>to read the humidity</source>
        <translation>para leer la humedad</translation>
    </message>
    <message>
        <source>the bed, filled in before it settles</source>
        <translation>el sustrato, medido al echarlo, antes de que se asiente</translation>
    </message>
    <message>
        <source>covers a part of the top</source>
        <translation>cubre una parte de la tapa</translation>
    </message>
    <message>
        <source>furniture of the plan</source>
        <translation>mobiliario del plan</translation>
    </message>
    <message>
        <source>a year of filtered water, by the cartridge&apos;s litres</source>
        <translation>un año de agua filtrada, según los litros del cartucho</translation>
    </message>
    <message>
        <source>a year of treated tap water</source>
        <translation>un año de agua del grifo tratada</translation>
    </message>
    <message>
        <source>to weigh the animals</source>
        <translation>para pesar a los animales</translation>
    </message>
    <message>
        <source>to keep a new animal apart at first</source>
        <translation>para tener apartado al principio a un animal nuevo</translation>
    </message>
    <message>
        <source>to clean with</source>
        <translation>para limpiar</translation>
    </message>
    <message>
        <source>for hygiene</source>
        <translation>para la higiene</translation>
    </message>
    <message>
        <source>the first month</source>
        <translation>el primer mes</translation>
    </message>
    <message>
        <source>a supplement to the food</source>
        <translation>un complemento de la comida</translation>
    </message>
    <message>
        <source>the first year&apos;s visit</source>
        <translation>la visita del primer año</translation>
    </message>
    <message>
        <source>The {reading} doesn&apos;t fit: it says {value}, measured {measure}, where {range} is expected from all the rest. It is left out. Check the thermometer and its place, then what the plan says of lamps, covers and mesh.</source>
        <translation>La {reading} no encaja: indica {value}, medidos {measure}, y por todo lo demás cabría esperar {range}. Se descarta. Revisar el termómetro y su lugar, y después lo que dice el plan de lámparas, cubiertas y malla.</translation>
    </message>
    <message>
        <source>The {reading} is too warm to fit: it says {value}, measured {measure}, where {range} is expected from all the rest. It is left out, and if it is right, the box is warmer than told here. Check the thermometer and its place, then what the plan says of lamps, covers and mesh.</source>
        <translation>La {reading} es demasiado alta para encajar: indica {value}, medidos {measure}, y por todo lo demás cabría esperar {range}. Se descarta y, si es correcta, el terrario está más caliente de lo que aquí se dice. Revisar el termómetro y su lugar, y después lo que dice el plan de lámparas, cubiertas y malla.</translation>
    </message>
    <message>
        <source>The {reading} is too cold to fit: it says {value}, measured {measure}, where {range} is expected from all the rest. It is left out, and if it is right, the box is colder than told here. Check the thermometer and its place, then what the plan says of lamps, covers and mesh.</source>
        <translation>La {reading} es demasiado baja para encajar: indica {value}, medidos {measure}, y por todo lo demás cabría esperar {range}. Se descarta y, si es correcta, el terrario está más frío de lo que aquí se dice. Revisar el termómetro y su lugar, y después lo que dice el plan de lámparas, cubiertas y malla.</translation>
    </message>
    <message>
        <source>The {reading} lies outside the floor of the box, so it is not used.</source>
        <translation>La {reading} cae fuera del suelo del terrario, así que no se usa.</translation>
    </message>
    <message>
        <source>The {reading}: whether the lamps were on is not stated, so it is not used.</source>
        <translation>La {reading}: no se indica si las lámparas estaban encendidas, así que no se usa.</translation>
    </message>
    <message>
        <source>The {reading} was taken with a dimmer on whose level is not stated, so it is not used. State the level it was set to.</source>
        <translation>La {reading} se tomó con un atenuador en marcha cuyo nivel no se indica, así que no se usa. Indicar el nivel en que estaba.</translation>
    </message>
    <message>
        <source>The {reading} was taken with the room at {room}. No case here has its lamps as then and a room within {alike_within} of that, so it narrows none.</source>
        <translation>La {reading} se tomó con la habitación a {room}. Ningún caso de aquí tiene las lámparas como entonces y una habitación que difiera como mucho en {alike_within}, así que no acota ninguno.</translation>
    </message>
    <message>
        <source>Readings used: {count}. With {needed} or more, one at the basking spot, one on the warm and one on the cool side, they tell more.</source>
        <translation>Lecturas usadas: {count}. Con {needed} o más, una en la zona de asoleo, una en el lado cálido y otra en el fresco, dicen más.</translation>
    </message>
    <message>
        <source>The readings don&apos;t fit the box of this plan, all together ({chance:percent} chance of a worse fit if all were as assumed). None is used. Check whether the box still is as it was when they were taken.</source>
        <translation>Las lecturas, en conjunto, no encajan con el terrario de este plan (probabilidad de un ajuste peor si todo fuera como se supone: {chance:percent}). No se usa ninguna. Comprobar que el terrario sigue como estaba cuando se tomaron.</translation>
    </message>
    <message>
        <source>The readings could not be compared with the box, so none is used.</source>
        <translation>Las lecturas no se pudieron comparar con el terrario, así que no se usa ninguna.</translation>
    </message>
    <message>
        <source>Make the box {by} longer, which makes {to}.</source>
        <translation>Alargar el terrario {by}, hasta {to}.</translation>
    </message>
    <message>
        <source>Make the box {by} wider, which makes {to}.</source>
        <translation>Ensanchar el terrario {by}, hasta {to}.</translation>
    </message>
    <message>
        <source>Make the box {by} higher, which makes {to}.</source>
        <translation>Hacer el terrario {by} más alto, hasta {to}.</translation>
    </message>
    <message>
        <source>Take a box with {by} more floor, which makes {to}.</source>
        <translation>Elegir un terrario con {by} más de suelo, hasta {to}.</translation>
    </message>
    <message>
        <source>Take out fittings that cover {by} of floor, or let the animals walk over them.</source>
        <translation>Quitar accesorios que ocupen {by} de suelo, o dejar que los animales pasen por encima.</translation>
    </message>
    <message>
        <source>Add hides: {count}.</source>
        <translation>Añadir refugios: {count}.</translation>
    </message>
    <message>
        <source>Move a hide to the {side} side, or add one there.</source>
        <translation>Pasar un refugio al lado {side}, o añadir uno allí.</translation>
    </message>
    <message>
        <source>Add a humid hide: a hide with damp moss in it.</source>
        <translation>Añadir un refugio húmedo: un refugio con musgo mojado dentro.</translation>
    </message>
    <message>
        <source>Keep fewer animals in this box: {to}.</source>
        <translation>Tener menos animales en este terrario: {to}.</translation>
    </message>
    <message>
        <source>Give them boxes of their own: {count} in all.</source>
        <translation>Dar a cada uno su propio terrario: {count} en total.</translation>
    </message>
    <message>
        <source>Move {fitting} inwards by {by}.</source>
        <translation>Mover {fitting} hacia dentro {by}.</translation>
    </message>
    <message>
        <source>Make the bed {by} deeper, which makes {to}.</source>
        <translation>Aumentar el sustrato {by}, hasta {to} de profundidad.</translation>
    </message>
    <message>
        <source>Make the bed no deeper than {to}.</source>
        <translation>No hacer el sustrato más profundo de {to}.</translation>
    </message>
    <message>
        <source>Use {material} in its place.</source>
        <translation>Usar {material} en su lugar.</translation>
    </message>
    <message>
        <source>Use a stand rated for {to} or more.</source>
        <translation>Usar un mueble previsto para {to} o más.</translation>
    </message>
    <message>
        <source>Use {to} in place of {from} for {device}.</source>
        <translation>Usar {to} en lugar de {from} para {device}.</translation>
    </message>
    <message>
        <source>Add about {power} of heat over the warm side.</source>
        <translation>Añadir unos {power} de calor sobre el lado cálido.</translation>
    </message>
    <message>
        <source>Dim {device} to {to:percent}[ {case}].</source>
        <translation>Atenuar {device} al {to:percent}[ {case}].</translation>
    </message>
    <message>
        <source>Set the thermostat of {device} to {to}[ {case}].</source>
        <translation>Ajustar el termostato de {device} a {to}[ {case}].</translation>
    </message>
    <message>
        <source>Run {device} through a thermostat, with its probe where the heat arrives.</source>
        <translation>Regular {device} con un termostato, con la sonda donde llega el calor.</translation>
    </message>
    <message>
        <source>Fix the probe where {device} heats, and enter its place in the plan.</source>
        <translation>Fijar la sonda donde calienta {device} e introducir su lugar en el plan.</translation>
    </message>
    <message>
        <source>Move {device} to the outside of a wall, above the bed, and keep its thermostat.</source>
        <translation>Pasar {device} al exterior de una pared, por encima del sustrato, y mantener su termostato.</translation>
    </message>
    <message>
        <source>Raise {device} by {by}, to {to} above the base.</source>
        <translation>Subir {device} {by}, hasta {to} sobre la base.</translation>
    </message>
    <message>
        <source>Lower {device} by {by}, to {to} above the base.</source>
        <translation>Bajar {device} {by}, hasta {to} sobre la base.</translation>
    </message>
    <message>
        <source>Put a guard around {device}.</source>
        <translation>Poner un protector alrededor de {device}.</translation>
    </message>
    <message>
        <source>Move {device} {by} further away.</source>
        <translation>Alejar {device} {by}.</translation>
    </message>
    <message>
        <source>Hang {device} inside, below the pane.</source>
        <translation>Colgar {device} por dentro, debajo del panel de vidrio.</translation>
    </message>
    <message>
        <source>Make {fitting} lower by {by}.</source>
        <translation>Rebajar la altura de {fitting} {by}.</translation>
    </message>
    <message>
        <source>Move {fitting} away from beneath the lamp.</source>
        <translation>Apartar {fitting} de debajo de la lámpara.</translation>
    </message>
    <message>
        <source>Keep an insulated carrier and warmth that needs no mains ready, such as wrapped bottles of warm water beside the animals, and have them in it within {within}.</source>
        <translation>Tener a mano un transportín aislado y calor que no necesite la red, por ejemplo botellas de agua templada envueltas junto a los animales, y tenerlos dentro en un plazo de {within}.</translation>
    </message>
    <message>
        <source>Switch the heat off at the plug, and keep a carrier and a cool room ready to have the animals there within {within}.</source>
        <translation>Cortar el calor en el enchufe, y tener preparados un transportín y una habitación fresca para llevar allí a los animales en un plazo de {within}.</translation>
    </message>
    <message>
        <source>Keep the room {by} cooler {case}, at {to} or less.</source>
        <translation>Mantener la habitación {by} más fresca {case}, a {to} o menos.</translation>
    </message>
    <message>
        <source>Keep the room {by} warmer {case}, at {to} or more.</source>
        <translation>Mantener la habitación {by} más caliente {case}, a {to} o más.</translation>
    </message>
    <message>
        <source>Move the enclosure or shade the window, so that no sun reaches the glass at any season.</source>
        <translation>Cambiar de sitio el terrario o dar sombra a la ventana, para que el sol no llegue al vidrio en ninguna época del año.</translation>
    </message>
    <message>
        <source>Add about {power} of heat without light for the night, on a thermostat.</source>
        <translation>Añadir unos {power} de calor sin luz para la noche, con un termostato.</translation>
    </message>
    <message>
        <source>Measure it in the finished enclosure: what is predicted ranges as widely as the target, so a reading tells more than a change.</source>
        <translation>Medirlo en el terrario terminado: lo previsto abarca tanto como el valor objetivo, así que una lectura dice más que un cambio.</translation>
    </message>
    <message>
        <source>No single change that was tried does it without harm elsewhere. Change more than one thing, such as lamp, box and room, and look again.</source>
        <translation>Ningún cambio único de los probados lo logra sin perjudicar otra cosa. Cambiar más de una, como lámpara, terrario y habitación, y volver a mirar.</translation>
    </message>
    <message>
        <source>Take {cover} away.</source>
        <translation>Retirar {cover}.</translation>
    </message>
    <message>
        <source>Move {cover} at least {by} further from the lamp.</source>
        <translation>Alejar {cover} de la lámpara al menos {by}.</translation>
    </message>
    <message>
        <source>Hang {device} further from the wall, or take a weaker one, until the wall stays at {to} or less.</source>
        <translation>Colgar {device} más lejos de la pared, o elegir uno más débil, hasta que la pared no pase de {to}.</translation>
    </message>
    <message>
        <source>Cover {area} more of the top, so that {fraction:percent} of it is covered, clear of the lamps.</source>
        <translation>Cubrir {area} más de la tapa, de modo que quede cubierto el {fraction:percent}, sin tapar las lámparas.</translation>
    </message>
    <message>
        <source>Mist {by} more {case}, which makes {to}.</source>
        <translation>Nebulizar {by} más {case}, hasta {to}.</translation>
    </message>
    <message>
        <source>Mist {by} less {case}, which makes {to}.</source>
        <translation>Nebulizar {by} menos {case}, hasta {to}.</translation>
    </message>
    <message>
        <source>Mist less, or uncover some of the top so that more dries off. Feel the bed at its base: water must not stand there.</source>
        <translation>Nebulizar menos, o descubrir parte de la tapa para que se evapore más. Palpar el sustrato en el fondo: no debe quedar agua estancada.</translation>
    </message>
    <message>
        <source>While its probe is still cool a thermostat drives the lamp at full power: take a weaker lamp, or put the probe where the lamp warms it first.</source>
        <translation>Mientras su sonda sigue fría, un termostato mantiene la lámpara a plena potencia: elegir una lámpara más débil, o poner la sonda donde la lámpara la caliente primero.</translation>
    </message>
    <message>
        <source>Let the surface of the bed dry out, and damp only the hide that should be humid.</source>
        <translation>Dejar secar la superficie del sustrato y humedecer solo el refugio que debe ser húmedo.</translation>
    </message>
    <message>
        <source>Leave one corner of the bed dry, away from the water and the mist.</source>
        <translation>Dejar seca una esquina del sustrato, lejos del agua y de la nebulización.</translation>
    </message>
    <message>
        <source>Take a bowl in place of {fitting} whose side is {by} longer, which makes {to}.</source>
        <translation>En lugar de {fitting}, elegir un bebedero {by} más largo de lado, hasta {to}.</translation>
    </message>
    <message>
        <source>Fill {fitting} no deeper than {to}, and put in a stone to climb out on.</source>
        <translation>No llenar {fitting} a más de {to} de profundidad, y poner dentro una piedra para poder salir.</translation>
    </message>
    <message>
        <source>Fill {fitting} at least {to} deep.</source>
        <translation>Llenar {fitting} hasta {to} de profundidad como mínimo.</translation>
    </message>
    <message>
        <source>Add a water bowl.</source>
        <translation>Añadir un bebedero.</translation>
    </message>
    <message>
        <source>Treat the water with conditioner, one that also binds chloramine where your supplier uses it.</source>
        <translation>Tratar el agua con acondicionador, uno que también neutralice la cloramina si el suministro la usa.</translation>
    </message>
    <message>
        <source>Keep {animal} warm and fed through the winter, and take the rest out of the plan. Ask a reptile vet if you are unsure.</source>
        <translation>Mantener a {animal} caliente y alimentado durante el invierno, y quitar la hibernación del plan. Consultar a un veterinario de reptiles en caso de duda.</translation>
    </message>
    <message>
        <source>Have a reptile vet see {animal}, with a faecal sample, before its food is stopped.</source>
        <translation>Llevar a {animal} a un veterinario de reptiles, con una muestra de heces, antes de retirarle la comida.</translation>
    </message>
    <message>
        <source>Keep the rest of {animal} to {to} in the cold.</source>
        <translation>Limitar la hibernación de {animal} a {to} en frío.</translation>
    </message>
    <message>
        <source>Add a UV lamp made for Ferguson zone {zone}, with its maker&apos;s distance table.</source>
        <translation>Añadir una lámpara UV hecha para la zona de Ferguson {zone}, con la tabla de distancias del fabricante.</translation>
    </message>
    <message>
        <source>Enter the maker&apos;s distance table of {device}, or measure the UV index at {distance} and enter it.</source>
        <translation>Introducir la tabla de distancias del fabricante para {device}, o medir el índice UV a {distance} e introducirlo.</translation>
    </message>
    <message>
        <source>No height of {device} does it. Use a lamp that gives {times} times its UV at the same distance.</source>
        <translation>Ninguna altura de {device} lo logra. Usar una lámpara que dé {times} veces su UV a la misma distancia.</translation>
    </message>
    <message>
        <source>Replace {device}: its UV has faded, and a new one reaches the target.</source>
        <translation>Reemplazar {device}: su UV ha decaído, y una unidad nueva alcanza el valor objetivo.</translation>
    </message>
    <message>
        <source>Set the timer for {to} of light a day, a change of {by}.</source>
        <translation>Ajustar el temporizador a {to} de luz al día, un cambio de {by}.</translation>
    </message>
    <message>
        <source>Put {device} on a timer.</source>
        <translation>Poner {device} en un temporizador.</translation>
    </message>
    <message>
        <source>Take {by} off it.</source>
        <translation>Quitarle {by}.</translation>
    </message>
    <message>
        <source>Move {by} to another circuit.</source>
        <translation>Pasar {by} a otro circuito.</translation>
    </message>
    <message>
        <source>Provide more {supply} outlets: {count}.</source>
        <translation>Prever más tomas ({supply}): {count}.</translation>
    </message>
    <message>
        <source>Plug {strip} straight into the wall.</source>
        <translation>Enchufar {strip} directamente a la pared.</translation>
    </message>
    <message>
        <source>Feed {strip} through a residual-current device.</source>
        <translation>Alimentar {strip} a través de un interruptor diferencial.</translation>
    </message>
    <message>
        <source>Run {device} without a dimmer.</source>
        <translation>Hacer funcionar {device} sin atenuador.</translation>
    </message>
    <message>
        <source>Use a dimming thermostat for {device}.</source>
        <translation>Usar un termostato de atenuación para {device}.</translation>
    </message>
    <message>
        <source>Put {device} on an outlet that is always on.</source>
        <translation>Conectar {device} a una toma que tenga siempre corriente.</translation>
    </message>
    <message>
        <source>Let each cable hang in a loop below its plug, and keep plugs above and away from the water.</source>
        <translation>Dejar que cada cable cuelgue en un bucle por debajo de su enchufe, y mantener los enchufes por encima y lejos del agua.</translation>
    </message>
    <message>
        <source>Use a ceramic or other heat-rated holder for {device}.</source>
        <translation>Usar para {device} un portalámparas cerámico u otro apto para el calor.</translation>
    </message>
    <message>
        <source>Use a holder rated for {to} or more for {device}, or a weaker lamp.</source>
        <translation>Usar para {device} un portalámparas previsto para {to} o más, o una lámpara más débil.</translation>
    </message>
    <message>
        <source>Use a control rated for {to} or more for {device}.</source>
        <translation>Usar para {device} un regulador previsto para {to} o más.</translation>
    </message>
    <message>
        <source>Enter this in the plan: {where}.</source>
        <translation>Introducir esto en el plan: {where}.</translation>
    </message>
    <message>
        <source>Add prices for these to the price list: {needs}.</source>
        <translation>Añadir precios para esto en la lista de precios: {needs}.</translation>
    </message>
    <message>
        <source>Put it back on the list: {need}.</source>
        <translation>Volver a poner en la lista: {need}.</translation>
    </message>
    <message>
        <source>Use a price list in {currency}.</source>
        <translation>Usar una lista de precios en {currency}.</translation>
    </message>
    <message>
        <source>The published floor rule, applied to the animals&apos; size and number. The usable floor leaves out what they can&apos;t walk on.</source>
        <translation>La regla publicada de suelo, aplicada al tamaño y al número de los animales. El suelo útil no incluye lo que no pueden pisar.</translation>
    </message>
    <message>
        <source>The same rule applied to the size that the published growth rates lead to, at slow and at fast growth.</source>
        <translation>La misma regla aplicada al tamaño al que llevan las velocidades de crecimiento publicadas, con crecimiento lento y rápido.</translation>
    </message>
    <message>
        <source>Each side of the box is compared with the animal&apos;s own length.</source>
        <translation>Cada lado del terrario se compara con la longitud del propio animal.</translation>
    </message>
    <message>
        <source>The clear width beside the fittings is compared with what the animal needs to turn round.</source>
        <translation>La anchura libre junto a los accesorios se compara con la que el animal necesita para darse la vuelta.</translation>
    </message>
    <message>
        <source>Common practice: along a short side, a warm and a cool end run into one another.</source>
        <translation>Práctica habitual: con un lado corto, el extremo cálido y el fresco se confunden.</translation>
    </message>
    <message>
        <source>Common practice: one hide more than animals, one of them warm and one cool.</source>
        <translation>Práctica habitual: un refugio más que animales, uno en el lado cálido y otro en el fresco.</translation>
    </message>
    <message>
        <source>Compared with the band on the species&apos; sheet.</source>
        <translation>Se compara con el intervalo de la ficha de la especie.</translation>
    </message>
    <message>
        <source>One species in each box: needs, germs and tempers differ.</source>
        <translation>Una sola especie por terrario: difieren las necesidades, los gérmenes y el carácter.</translation>
    </message>
    <message>
        <source>What the species&apos; sheet says about company.</source>
        <translation>Lo que la ficha de la especie dice sobre la convivencia.</translation>
    </message>
    <message>
        <source>Only materials with their properties on file can be computed.</source>
        <translation>Solo se pueden calcular los materiales cuyas propiedades constan.</translation>
    </message>
    <message>
        <source>The weight of box, damp bed, water, fittings and animals is compared with the maker&apos;s rating.</source>
        <translation>El peso del recinto, el sustrato húmedo, el agua, los accesorios y los animales se compara con la carga que indica el fabricante.</translation>
    </message>
    <message>
        <source>The heat that the equipment gives is balanced with what leaves through base, walls, top, air and evaporation. The range follows from the spread of the inputs.</source>
        <translation>El calor que da el equipo se equilibra con el que sale por base, paredes, tapa, aire y evaporación. El intervalo se deriva del margen de los datos.</translation>
    </message>
    <message>
        <source>The hottest surface an animal can touch is compared with the temperature at which skin burns on long contact.</source>
        <translation>La superficie más caliente que un animal puede tocar se compara con la temperatura a la que la piel se quema en contacto prolongado.</translation>
    </message>
    <message>
        <source>The hottest place an animal can lie on or dig to is compared with what it should lie on for long.</source>
        <translation>El lugar más caliente en el que un animal puede tumbarse o al que puede excavar se compara con la temperatura sobre la que conviene que permanezca mucho tiempo.</translation>
    </message>
    <message>
        <source>The place an animal could retreat to is compared with what its body bears.</source>
        <translation>El lugar al que un animal podría retirarse se compara con lo que su cuerpo soporta.</translation>
    </message>
    <message>
        <source>The distance is compared with the maker&apos;s clearance or, where the maker gives none, a cautious one.</source>
        <translation>La distancia se compara con la separación que indica el fabricante o, si no indica ninguna, con una prudente.</translation>
    </message>
    <message>
        <source>The nearest point an animal gets to is taken: the top of what it can climb, and its own height on it.</source>
        <translation>Se toma el punto más cercano al que llega un animal: la parte superior de aquello a lo que puede subirse, más su propia altura.</translation>
    </message>
    <message>
        <source>Sun through glass gives more heat than any lamp here, and no thermostat can take it away.</source>
        <translation>El sol a través del vidrio da más calor que cualquier lámpara de aquí, y ningún termostato puede quitarlo.</translation>
    </message>
    <message>
        <source>What evaporates and is misted is balanced with what the air carries away and what condenses.</source>
        <translation>Lo que se evapora y se nebuliza se equilibra con lo que se lleva el aire y lo que se condensa.</translation>
    </message>
    <message>
        <source>Every uncertain input is moved within its spread until the readings are met as well as their accuracy and the model&apos;s own error make probable. What is learned counts for cases with the lamps as in a reading and the room near to its room.</source>
        <translation>Cada dato incierto se desplaza dentro de su margen hasta que las lecturas se cumplen tan bien como permiten esperar su exactitud y el error propio del modelo. Lo que se aprende vale para los casos con las lámparas como en una lectura y la habitación cerca de la de esa lectura.</translation>
    </message>
    <message>
        <source>The coldest pane is compared with the dew point of the air in the box.</source>
        <translation>El panel de vidrio más frío se compara con el punto de rocío del aire del terrario.</translation>
    </message>
    <message>
        <source>Where it is damp everywhere, an animal can&apos;t dry off. Common practice asks for a dry corner.</source>
        <translation>Donde todo está húmedo, un animal no puede secarse. La práctica habitual pide una esquina seca.</translation>
    </message>
    <message>
        <source>The UV index at the animal&apos;s back is compared with the range of its Ferguson zone.</source>
        <translation>El índice UV en el dorso del animal se compara con el intervalo de su zona de Ferguson.</translation>
    </message>
    <message>
        <source>A UV index is taken from a meter or the maker&apos;s table only, never from watts, and never outside the table&apos;s distances.</source>
        <translation>El índice UV se toma solo de un medidor o de la tabla del fabricante, nunca de los vatios ni fuera de las distancias de la tabla.</translation>
    </message>
    <message>
        <source>Glass, acrylic and closed covers let practically no UV-B through.</source>
        <translation>El vidrio, el acrílico y las cubiertas cerradas no dejan pasar prácticamente nada de UV-B.</translation>
    </message>
    <message>
        <source>The planned hours of light are compared with the sheet.</source>
        <translation>Las horas de luz previstas se comparan con la ficha.</translation>
    </message>
    <message>
        <source>A device that gives light and is always on leaves no dark night.</source>
        <translation>Un aparato que da luz y está siempre encendido no deja noche oscura.</translation>
    </message>
    <message>
        <source>What runs for three hours or more may take 80% of the rating. Everything else on it counts as well.</source>
        <translation>Lo que funciona tres horas o más puede usar el 80 % de la potencia nominal. También cuenta todo lo demás conectado.</translation>
    </message>
    <message>
        <source>One outlet for each device, counted apart for timed and always-on ones.</source>
        <translation>Una toma por aparato, contadas por separado las de temporizador y las que tienen siempre corriente.</translation>
    </message>
    <message>
        <source>Each strip belongs straight into a wall outlet: the first one carries everything behind it.</source>
        <translation>Cada regleta va directamente a una toma de pared: la primera lleva todo lo que hay detrás de ella.</translation>
    </message>
    <message>
        <source>Near water, a residual-current device cuts the power before a shock can harm.</source>
        <translation>Cerca del agua, un interruptor diferencial corta la corriente antes de que una descarga pueda hacer daño.</translation>
    </message>
    <message>
        <source>What a dimmer or thermostat may feed depends on the kind of load.</source>
        <translation>Lo que un atenuador o un termostato puede alimentar depende del tipo de carga.</translation>
    </message>
    <message>
        <source>A thermostat holds the temperature only where its probe is.</source>
        <translation>Un termostato mantiene la temperatura solo donde está su sonda.</translation>
    </message>
    <message>
        <source>Water on a plug, holder or strip can give a shock or start a fire.</source>
        <translation>El agua sobre un enchufe, un portalámparas o una regleta puede causar una descarga o un incendio.</translation>
    </message>
    <message>
        <source>Hot lamps and heaters soften plastic holders.</source>
        <translation>Las lámparas y los calefactores ablandan con el calor los portalámparas de plástico.</translation>
    </message>
    <message>
        <source>Only you can know this, so it is asked for and not assumed.</source>
        <translation>Solo usted puede saberlo, así que se pregunta y no se supone.</translation>
    </message>
    <message>
        <source>The needs follow from the plan; what you left out or replaced is set off against them.</source>
        <translation>Las necesidades se derivan del plan; lo que se ha omitido o sustituido se descuenta de ellas.</translation>
    </message>
    <message>
        <source>Taken from the price list, whole packs only. A missing price is listed and never counted as zero.</source>
        <translation>Tomado de la lista de precios, solo envases enteros. Un precio que falta se enumera y nunca cuenta como cero.</translation>
    </message>
    <message>
        <source>A price list older than a year is out of date.</source>
        <translation>Una lista de precios de más de un año está desactualizada.</translation>
    </message>
    <message>
        <source>General advice on hygiene with reptiles and amphibians.</source>
        <translation>Consejos generales de higiene con reptiles y anfibios.</translation>
    </message>
    <message>
        <source>Laws differ from place to place and change. This program does not know them all.</source>
        <translation>Las leyes varían de un lugar a otro y cambian. Este programa no las conoce todas.</translation>
    </message>
    <message>
        <source>General advice on care.</source>
        <translation>Consejos generales de cuidado.</translation>
    </message>
    <message>
        <source>Common practice: new animals are kept apart and watched first.</source>
        <translation>Práctica habitual: los animales nuevos se tienen apartados y se observan primero.</translation>
    </message>
    <message>
        <source>Common practice: an enclosure is measured over several days before it is used.</source>
        <translation>Práctica habitual: un terrario se mide durante varios días antes de usarlo.</translation>
    </message>
    <message>
        <source>A bowl has to let the animal get in, turn round and out: for turtles and tortoises one and a half shell lengths by one, for a snake the round that it lies coiled in.</source>
        <translation>Un bebedero debe permitir al animal entrar, darse la vuelta y salir: en tortugas, una longitud y media de caparazón por una; en una serpiente, el círculo en el que cabe enroscada.</translation>
    </message>
    <message>
        <source>The water&apos;s depth against the length and the height of the animal.</source>
        <translation>La profundidad del agua frente a la longitud y la altura del animal.</translation>
    </message>
    <message>
        <source>What is misted and what drips back is balanced with what evaporates from the bed, over day and night, winter and summer.</source>
        <translation>Lo que se nebuliza y lo que vuelve a gotear se equilibra con lo que se evapora del sustrato, de día y de noche, en invierno y en verano.</translation>
    </message>
    <message>
        <source>What water needs before an animal lives in it.</source>
        <translation>Lo que hace falta en el agua antes de que un animal viva en ella.</translation>
    </message>
    <message>
        <source>Only animals of species that rest, well, of full weight and past their first winter may be cooled, after a vet&apos;s check, and weighed every week.</source>
        <translation>Solo se puede enfriar a animales de especies que hibernan, sanos, con su peso completo y pasado su primer invierno, después de una revisión veterinaria y pesándolos cada semana.</translation>
    </message>
    <message>
        <source>Floor for the animals as they are: {usable} can be walked on, and “{rule_title}” ({rule_kind}) asks for {min}.</source>
        <translation>Suelo para los animales tal como son: se pueden pisar {usable}, y «{rule_title}» ({rule_kind}) pide {min}.</translation>
    </message>
    <message>
        <source>The floor of {floor} is too small for the animals as they are: “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more.</source>
        <translation>El suelo de {floor} es demasiado pequeño para los animales tal como son: «{rule_title}» ({rule_kind}) pide {min}, es decir, {short_by} más.</translation>
    </message>
    <message>
        <source>Floor for the animals once grown: {usable} can be walked on, and “{rule_title}” ({rule_kind}) asks for {min}.</source>
        <translation>Suelo para los animales ya adultos: se pueden pisar {usable}, y «{rule_title}» ({rule_kind}) pide {min}.</translation>
    </message>
    <message>
        <source>The floor will be too small for the animals once grown: {usable} can be walked on, and “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more.[ This may come in {years_fast}.]</source>
        <translation>El suelo será demasiado pequeño para los animales ya adultos: se pueden pisar {usable}, y «{rule_title}» ({rule_kind}) pide {min}, es decir, {short_by} más.[ Puede ocurrir en {years_fast}.]</translation>
    </message>
    <message>
        <source>Whether the floor of {floor} is large enough is not known: “{rule_title}” needs {missing} ({species}).</source>
        <translation>No se sabe si el suelo de {floor} es suficiente: para «{rule_title}» falta {missing} ({species}).</translation>
    </message>
    <message>
        <source>No published rule for floor space is on file ({species}). The floor of {floor} is not judged.</source>
        <translation>No consta ninguna regla publicada de superficie de suelo ({species}). El suelo de {floor} no se juzga.</translation>
    </message>
    <message>
        <source>Only a laboratory minimum is on file ({species}): “{rule_title}” asks for {min}, and the floor has {floor}. Such a minimum does not show that an animal has enough.</source>
        <translation>Solo consta un mínimo de laboratorio ({species}): «{rule_title}» pide {min}, y el suelo tiene {floor}. Un mínimo así no demuestra que un animal tenga suficiente.</translation>
    </message>
    <message>
        <source>By “{rule_title}” the box may be outgrown in {years_fast}[, at slow growth in {years_slow}] ({species}).</source>
        <translation>Según «{rule_title}», el terrario puede quedarse pequeño en {years_fast}[, con crecimiento lento en {years_slow}] ({species}).</translation>
    </message>
    <message>
        <source>The {side_name} is {side}, and “{rule_title}” ({rule_kind}) asks for {min}.</source>
        <translation>Medida del terrario, {side_name}: {side}. «{rule_title}» ({rule_kind}) pide {min}.</translation>
    </message>
    <message>
        <source>The {side_name} is {side}, and “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more.</source>
        <translation>Medida del terrario, {side_name}: {side}. «{rule_title}» ({rule_kind}) pide {min}, es decir, {short_by} más.</translation>
    </message>
    <message>
        <source>The {side_name} is {side}, and the animal is {body} long ({species}). No side should be shorter than its body: {short_by} more is needed.</source>
        <translation>Medida del terrario, {side_name}: {side}. El animal mide {body} ({species}). Ningún lado debería ser más corto que su cuerpo: faltan {short_by}.</translation>
    </message>
    <message>
        <source>The clear width is {width}, and turning round takes {min} ({species}): {short_by} more is needed.</source>
        <translation>La anchura libre es de {width}, y para darse la vuelta hacen falta {min} ({species}): faltan {short_by}.</translation>
    </message>
    <message>
        <source>The clear width is {width}, and turning round takes {min} ({species}).</source>
        <translation>La anchura libre es de {width}, y para darse la vuelta hacen falta {min} ({species}).</translation>
    </message>
    <message>
        <source>The height over the bed is {height}, and {min} is asked for ({species}): {short_by} more is needed.</source>
        <translation>La altura sobre el sustrato es de {height}, y se piden {min} ({species}): faltan {short_by}.</translation>
    </message>
    <message>
        <source>The height over the bed is {height}, and {min} is asked for ({species}).</source>
        <translation>La altura sobre el sustrato es de {height}, y se piden {min} ({species}).</translation>
    </message>
    <message>
        <source>The box is {length} long. With less than {min}, a warm and a cool end are hard to keep apart.</source>
        <translation>El terrario mide {length} de largo. Con menos de {min} es difícil mantener separados un extremo cálido y uno fresco.</translation>
    </message>
    <message>
        <source>Number of hides: {hides}. At least {min} are advised, one more than animals.</source>
        <translation>Número de refugios: {hides}. Se aconsejan al menos {min}, uno más que animales.</translation>
    </message>
    <message>
        <source>There is no hide on the warm side. Without one, an animal must choose between warmth and cover.</source>
        <translation>No hay ningún refugio en el lado cálido. Sin él, un animal tiene que elegir entre el calor y el cobijo.</translation>
    </message>
    <message>
        <source>There is no hide on the cool side. Without one, an animal must choose between cooling down and cover.</source>
        <translation>No hay ningún refugio en el lado fresco. Sin él, un animal tiene que elegir entre refrescarse y cobijarse.</translation>
    </message>
    <message>
        <source>There is no humid hide. This species needs one ({species}).</source>
        <translation>No hay ningún refugio húmedo. Esta especie necesita uno ({species}).</translation>
    </message>
    <message>
        <source>{fitting} sticks out of the box by {over_by}.</source>
        <translation>{fitting} sobresale {over_by} del terrario.</translation>
    </message>
    <message>
        <source>No animals are entered, so nothing can be judged against their needs.</source>
        <translation>No se ha introducido ningún animal, así que no se puede juzgar nada según sus necesidades.</translation>
    </message>
    <message>
        <source>Keeping a single animal is a sound choice ({species}).</source>
        <translation>Tener un solo animal es una buena opción ({species}).</translation>
    </message>
    <message>
        <source>Animals of this species live best alone ({species}). Entered here: {animals}.</source>
        <translation>Los animales de esta especie viven mejor solos ({species}). Aquí figuran: {animals}.</translation>
    </message>
    <message>
        <source>Several species share this box ({species}, {other_species}). Their needs and germs differ: one box should hold one species.</source>
        <translation>Varias especies comparten este terrario ({species}, {other_species}). Sus necesidades y gérmenes difieren: un terrario debería alojar una sola especie.</translation>
    </message>
    <message>
        <source>Males of this species fight ({species}). Males in this box: {males}.</source>
        <translation>Los machos de esta especie se pelean ({species}). Machos en este terrario: {males}.</translation>
    </message>
    <message>
        <source>Males of this species fight ({species}), and the sex is not stated for {animals} of the animals here.</source>
        <translation>Los machos de esta especie se pelean ({species}), y aquí no se indica el sexo de {animals} de los animales.</translation>
    </message>
    <message>
        <source>There is no sheet for the species “{species}”. Its needs are not known.</source>
        <translation>No hay ficha de la especie «{species}». No se saben sus necesidades.</translation>
    </message>
    <message>
        <source>The material “{material}” ({part}) is not on file. What depends on it can&apos;t be computed.</source>
        <translation>El material «{material}» ({part}) no consta. No se puede calcular lo que depende de él.</translation>
    </message>
    <message>
        <source>No substrate is entered.</source>
        <translation>No se ha introducido ningún sustrato.</translation>
    </message>
    <message>
        <source>The sheet does not list {material} as a substrate for this species ({species}). The first it lists is {best}.</source>
        <translation>La ficha no incluye {material} como sustrato para esta especie ({species}). El primero que incluye es {best}.</translation>
    </message>
    <message>
        <source>The bed is {depth} deep, and this species needs at least {min} ({species}): {short_by} more.</source>
        <translation>El sustrato tiene {depth} de profundidad, y esta especie necesita al menos {min} ({species}): {short_by} más.</translation>
    </message>
    <message>
        <source>The bed is {depth} deep in a box that is {height} high. Too little room is left above it.</source>
        <translation>El sustrato tiene {depth} de profundidad en un terrario de {height} de alto. Queda demasiado poco espacio por encima.</translation>
    </message>
    <message>
        <source>What {stand} can carry is not stated. It has to carry {range}.</source>
        <translation>No se indica cuánto puede soportar {stand}. Tiene que soportar {range}.</translation>
    </message>
    <message>
        <source>It is not stated what the box stands on. That has to carry {range}.</source>
        <translation>No se indica sobre qué está el terrario. Eso tiene que soportar {range}.</translation>
    </message>
    <message>
        <source>The adult is heavier than a person can lift and needs a heated room of its own. No indoor box lasts it.</source>
        <translation>El adulto pesa más de lo que una persona puede levantar y necesita una habitación propia con calefacción. Ningún recinto interior le sirve para siempre.</translation>
    </message>
    <message>
        <source>The adult outgrows any usual indoor box. Plan for a room or an outdoor run.</source>
        <translation>El adulto se queda sin sitio en cualquier recinto interior habitual. Prever una habitación o un cercado al aire libre.</translation>
    </message>
    <message>
        <source>One study of hatchlings found flatter shells when they were reared humid. Its method is contested, so the figure is not settled.</source>
        <translation>Un estudio con crías encontró caparazones más lisos cuando se criaron con humedad. Su método está discutido, así que el dato no es seguro.</translation>
    </message>
    <message>
        <source>A heat mat gives background warmth at best. It warms itself from above.</source>
        <translation>Una manta térmica da, en el mejor de los casos, calor de fondo. El animal se calienta desde arriba.</translation>
    </message>
    <message>
        <source>It eats mostly insects. The food costs here count mixed food by weight, as for greens.</source>
        <translation>Come sobre todo insectos. Los costes de comida de aquí cuentan la comida mezclada por peso, como la verdura.</translation>
    </message>
    <message>
        <source>It eats insects or other animal food beside greens. The food costs here count the greens only.</source>
        <translation>Come insectos u otro alimento animal además de verdura. Los costes de comida de aquí cuentan solo la verdura.</translation>
    </message>
    <message>
        <source>A female that may lay needs a place with at least 20 cm (8 in) of soil to dig in, even when she lives alone.</source>
        <translation>Una hembra que pueda poner huevos necesita un lugar con al menos 20 cm (8 in) de tierra para excavar, aunque viva sola.</translation>
    </message>
    <message>
        <source>Frozen food rodents can carry salmonella too. Thaw them fully, and outside the kitchen.</source>
        <translation>Los roedores congelados para alimento también pueden llevar salmonela. Descongelarlos por completo, y fuera de la cocina.</translation>
    </message>
    <message>
        <source>It gets through gaps that look too small. Lock the doors, and leave no gap wider than its head.</source>
        <translation>Pasa por huecos que parecen demasiado pequeños. Cerrar las puertas con llave y no dejar ningún hueco más ancho que su cabeza.</translation>
    </message>
    <message>
        <source>Females fight each other as well. Keep one, or one pair.</source>
        <translation>Las hembras también se pelean entre sí. Tener un ejemplar o una pareja.</translation>
    </message>
    <message>
        <source>It eats other snakes, its own kind too. Keep one to a box.</source>
        <translation>Come otras serpientes, también de su especie. Tener una por terrario.</translation>
    </message>
    <message>
        <source>It has a mild venom, and a long bite can swell. See a doctor if you react to one.</source>
        <translation>Tiene un veneno suave, y una mordedura larga puede causar hinchazón. Acudir a un médico en caso de reacción.</translation>
    </message>
    <message>
        <source>Fine or dusty sand alone is suspected of blocking the gut. Mix it with soil.</source>
        <translation>Se sospecha que la arena fina o polvorienta, sola, obstruye el intestino. Mezclarla con tierra.</translation>
    </message>
    <message>
        <source>It does not rest through the winter and must not be kept cold.</source>
        <translation>No hiberna y no se debe mantener en frío.</translation>
    </message>
    <message>
        <source>Use water without chlorine only, for misting too: rain water, or tap water with a conditioner.</source>
        <translation>Usar solo agua sin cloro, también para nebulizar: agua de lluvia o del grifo con acondicionador.</translation>
    </message>
    <message>
        <source>Its skin takes up what touches it. Handle it rarely and with wet, rinsed gloves, and leave no cleaner behind.</source>
        <translation>Su piel absorbe lo que la toca. Manipularla poco y con guantes mojados y enjuagados, y no dejar restos de limpiador.</translation>
    </message>
    <message>
        <source>Taking and keeping native box turtles is restricted or licensed in many places. Ask before you buy.</source>
        <translation>En muchos lugares está restringido o requiere licencia capturar y tener tortugas de caja autóctonas. Preguntar antes de comprar.</translation>
    </message>
    <message>
        <source>In the European Union it needs a certificate and a mark when it changes hands. Ask for the papers.</source>
        <translation>En la Unión Europea necesita un certificado y un marcaje al cambiar de dueño. Pedir la documentación.</translation>
    </message>
    <message>
        <source>Trade in it is controlled. Keep the proof of legal origin, and hand it on with the animal. What is asked differs by country.</source>
        <translation>Su comercio está controlado. Guardar la prueba de origen legal y entregarla junto con el animal. Lo que se exige varía según el país.</translation>
    </message>
    <message>
        <source>In Australia, keeping this native species needs a licence.</source>
        <translation>En Australia, tener esta especie autóctona requiere licencia.</translation>
    </message>
    <message>
        <source>It overheats easily: a warm room can be too warm. Watch the upper end of the temperatures.</source>
        <translation>Se sobrecalienta con facilidad: una habitación cálida puede ser demasiado. Vigilar el extremo superior de las temperaturas.</translation>
    </message>
    <message>
        <source>It has no basking spot. A lamp that heats a surface is not wanted.</source>
        <translation>No tiene zona de asoleo. No conviene una lámpara que caliente una superficie.</translation>
    </message>
    <message>
        <source>how long a new box is proved</source>
        <translation>cuánto tiempo se prueba un recinto nuevo</translation>
    </message>
    <message>
        <source>the error of a measured length</source>
        <translation>el error de una longitud medida</translation>
    </message>
    <message>
        <source>the loss of weight that is a matter for a vet</source>
        <translation>la pérdida de peso que es asunto del veterinario</translation>
    </message>
    <message>
        <source>An enclosure can&apos;t take over from itself ({0}).</source>
        <translation>Un terrario no puede sustituirse a sí mismo ({0}).</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdido</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>al día</translation>
    </message>
    <message>
        <source>days, at most</source>
        <translation>días, como máximo</translation>
    </message>
    <message>
        <source>energy, at least</source>
        <translation>energía, como mínimo</translation>
    </message>
    <message>
        <source>energy, at most</source>
        <translation>energía, como máximo</translation>
    </message>
    <message>
        <source>with both</source>
        <translation>con los dos</translation>
    </message>
    <message>
        <source>with the new one alone</source>
        <translation>solo con el nuevo</translation>
    </message>
    <message>
        <source>The newest length of {animal} is {length}. Its first length made {min}[ to {max}] expected ({species}).</source>
        <translation>Longitud más reciente ({animal}): {length}. La primera longitud hacía esperar {min}[ a {max}] ({species}).</translation>
    </message>
    <message>
        <source>{animal} has grown more slowly than expected: {length}, where its first length made {min}[ to {max}] expected ({species}).</source>
        <translation>Crecimiento más lento de lo esperado ({animal}): {length}, cuando la primera longitud hacía esperar {min}[ a {max}] ({species}).</translation>
    </message>
    <message>
        <source>{animal} may have grown more slowly than expected: {length}, where its first length made {min}[ to {max}] expected ({species}).</source>
        <translation>Posible crecimiento más lento de lo esperado ({animal}): {length}, cuando la primera longitud hacía esperar {min}[ a {max}] ({species}).</translation>
    </message>
    <message>
        <source>{animal} has grown faster than published: {length}, where {min}[ to {max}] was expected ({species}). It needs more room sooner; ask whether it is fed too richly.</source>
        <translation>Crecimiento más rápido que lo publicado ({animal}): {length}, cuando se esperaba {min}[ a {max}] ({species}). Necesitará más espacio antes; pregúntese si come demasiado rico.</translation>
    </message>
    <message>
        <source>{animal} has lost {lost:percent} of its weight: from {from} on {date} to {to}, within {days}.</source>
        <translation>Pérdida de peso ({animal}): {lost:percent}, de {from} el {date} a {to}, en {days}.</translation>
    </message>
    <message>
        <source>{old} keeps running while {new} is proved, {daily} a day: {energy_min} to {energy_max} over {days_min} to {days_max}. It is in the loads of circuits and strips, and in no running cost.</source>
        <translation>{old} sigue funcionando mientras se prueba {new}, {daily} al día: de {energy_min} a {energy_max} en {days_min} a {days_max}. Cuenta en la carga de circuitos y regletas, y en ningún coste corriente.</translation>
    </message>
    <message>
        <source>Too much hangs on {carrier} only while both boxes run: up to {both}, and {afterwards} once the old one has gone.</source>
        <translation>Solo mientras funcionan los dos recintos hay demasiada carga en {carrier}: hasta {both}, y {afterwards} cuando ya no esté el viejo.</translation>
    </message>
    <message>
        <source>A measurement of {animal} is not used ({day}): {reason}.</source>
        <translation>Una medición no se usa ({animal}, {day}): {reason}.</translation>
    </message>
    <message>
        <source>Measure again in the same way. If it is so, look at food, warmth and UV, and ask a reptile vet.</source>
        <translation>Medir de nuevo de la misma manera. Si se confirma, revisar comida, calor y UV, y preguntar a un veterinario de reptiles.</translation>
    </message>
    <message>
        <source>Feed one of the two from another circuit while the new one is proved; never chain strips for it.</source>
        <translation>Conectar uno de los dos a otro circuito mientras se prueba el nuevo; nunca encadenar regletas para ello.</translation>
    </message>
    <message>
        <source>Weigh again on the same scale. Eggs laid or an emptied gut can explain it; if nothing does, have a reptile vet see the animal within days.</source>
        <translation>Pesar de nuevo en la misma balanza. Una puesta o el intestino vacío pueden explicarlo; si nada lo explica, llevar el animal a un veterinario de reptiles en pocos días.</translation>
    </message>
    <message>
        <source>The first length that was measured, followed at the slowest and the fastest growth that is published, not past the adult length, with the error of a measurement at either end.</source>
        <translation>La primera longitud medida, seguida con el crecimiento publicado más lento y más rápido, sin pasar de la longitud adulta, con el error de una medición en ambos extremos.</translation>
    </message>
    <message>
        <source>The newest weight against the greatest of the year before it.</source>
        <translation>El peso más reciente frente al mayor del año anterior.</translation>
    </message>
    <message>
        <source>days between two looks at the animals</source>
        <translation>días entre dos vistazos a los animales</translation>
    </message>
    <message>
        <source>days between two weighings</source>
        <translation>días entre dos pesajes</translation>
    </message>
    <message>
        <source>days between two weighings of a new animal</source>
        <translation>días entre dos pesajes de un animal nuevo</translation>
    </message>
    <message>
        <source>how long an animal counts as new</source>
        <translation>cuánto tiempo se considera nuevo un animal</translation>
    </message>
    <message>
        <source>days between two checks of the body</source>
        <translation>días entre dos revisiones del cuerpo</translation>
    </message>
    <message>
        <source>days between two baths</source>
        <translation>días entre dos baños</translation>
    </message>
    <message>
        <source>days between two rounds of spot cleaning</source>
        <translation>días entre dos limpiezas puntuales</translation>
    </message>
    <message>
        <source>days between two disinfections</source>
        <translation>días entre dos desinfecciones</translation>
    </message>
    <message>
        <source>days until the bed is turned again</source>
        <translation>días hasta volver a remover el sustrato</translation>
    </message>
    <message>
        <source>days until a new animal sees a vet</source>
        <translation>días hasta que un animal nuevo va al veterinario</translation>
    </message>
    <message>
        <source>the days of a quarantine</source>
        <translation>los días de una cuarentena</translation>
    </message>
    <message>
        <source>days between two tests of a thermostat</source>
        <translation>días entre dos pruebas de un termostato</translation>
    </message>
    <message>
        <source>days between two tests of a residual-current device</source>
        <translation>días entre dos pruebas de un interruptor diferencial</translation>
    </message>
    <message>
        <source>how long the battery of a thermometer lasts</source>
        <translation>cuánto dura la pila de un termómetro</translation>
    </message>
    <message>
        <source>days between two cleanings of a mister</source>
        <translation>días entre dos limpiezas de un nebulizador</translation>
    </message>
    <message>
        <source>days between two readings of the UV</source>
        <translation>días entre dos lecturas del UV</translation>
    </message>
    <message>
        <source>days between two tests of the smoke alarm</source>
        <translation>días entre dos pruebas del detector de humo</translation>
    </message>
    <message>
        <source>Look at the animals and read the thermometers</source>
        <translation>Observar a los animales y leer los termómetros</translation>
    </message>
    <message>
        <source>Change the water</source>
        <translation>Cambiar el agua</translation>
    </message>
    <message>
        <source>Top up the bowls</source>
        <translation>Rellenar los bebederos</translation>
    </message>
    <message>
        <source>Mist</source>
        <translation>Nebulizar</translation>
    </message>
    <message>
        <source>Clean the mister</source>
        <translation>Limpiar el nebulizador</translation>
    </message>
    <message>
        <source>Water the bed</source>
        <translation>Regar el sustrato</translation>
    </message>
    <message>
        <source>Remove droppings and leftovers</source>
        <translation>Retirar heces y restos de comida</translation>
    </message>
    <message>
        <source>Clean and disinfect bowls and furnishings</source>
        <translation>Limpiar y desinfectar bebederos y mobiliario</translation>
    </message>
    <message>
        <source>Sift and turn the bed, top it up</source>
        <translation>Tamizar, remover y reponer el sustrato</translation>
    </message>
    <message>
        <source>Set the timer of the lamps: {on} to {off}</source>
        <translation>Ajustar el temporizador de las lámparas: {on} a {off}</translation>
    </message>
    <message>
        <source>The enclosure may be outgrown</source>
        <translation>El terrario puede haberse quedado pequeño</translation>
    </message>
    <message>
        <source>Quarantine of a new animal may end</source>
        <translation>Puede acabar la cuarentena de un animal nuevo</translation>
    </message>
    <message>
        <source>Feeding of {species}: decide how often</source>
        <translation>Alimentación ({species}): decidir cada cuánto</translation>
    </message>
    <message>
        <source>Feed {species}: {food}</source>
        <translation>Dar de comer ({species}): {food}</translation>
    </message>
    <message>
        <source>Food of {species} for a month</source>
        <translation>Comida para un mes: {species}</translation>
    </message>
    <message>
        <source>Bathe {species}</source>
        <translation>Bañar: {species}</translation>
    </message>
    <message>
        <source>Weigh the new {species}</source>
        <translation>Pesar el animal nuevo: {species}</translation>
    </message>
    <message>
        <source>Weigh {species}</source>
        <translation>Pesar: {species}</translation>
    </message>
    <message>
        <source>Check beak, claws and shell of {species}</source>
        <translation>Revisar pico, uñas y caparazón: {species}</translation>
    </message>
    <message>
        <source>Check claws, toes and skin of {species}</source>
        <translation>Revisar uñas, dedos y piel: {species}</translation>
    </message>
    <message>
        <source>Check skin, eyes and mouth of {species}</source>
        <translation>Revisar piel, ojos y boca: {species}</translation>
    </message>
    <message>
        <source>Check skin and weight of {species}</source>
        <translation>Revisar piel y peso: {species}</translation>
    </message>
    <message>
        <source>First check of {species} by a reptile vet</source>
        <translation>Primera revisión por un veterinario de reptiles: {species}</translation>
    </message>
    <message>
        <source>Yearly check of {species} by a reptile vet</source>
        <translation>Revisión anual por un veterinario de reptiles: {species}</translation>
    </message>
    <message>
        <source>Vet&apos;s check of {species} before the winter rest</source>
        <translation>Revisión veterinaria antes de la hibernación: {species}</translation>
    </message>
    <message>
        <source>Winter rest of {species} begins: no food from today</source>
        <translation>Empieza la hibernación ({species}): sin comida desde hoy</translation>
    </message>
    <message>
        <source>{species} goes into the cold</source>
        <translation>Pasar al frío: {species}</translation>
    </message>
    <message>
        <source>Weigh {species} in its winter rest</source>
        <translation>Pesar durante la hibernación: {species}</translation>
    </message>
    <message>
        <source>Begin to warm {species} up</source>
        <translation>Empezar a devolver el calor: {species}</translation>
    </message>
    <message>
        <source>Winter rest of {species} is over</source>
        <translation>Fin de la hibernación: {species}</translation>
    </message>
    <message>
        <source>Test the thermostat of {where}</source>
        <translation>Probar el termostato: {where}</translation>
    </message>
    <message>
        <source>Read the UV of {where} with a meter</source>
        <translation>Medir el UV con un medidor: {where}</translation>
    </message>
    <message>
        <source>Test the residual-current device</source>
        <translation>Probar el interruptor diferencial</translation>
    </message>
    <message>
        <source>Test the smoke alarm</source>
        <translation>Probar el detector de humo</translation>
    </message>
    <message>
        <source>Change the batteries of thermometers and hygrometers</source>
        <translation>Cambiar las pilas de termómetros e higrómetros</translation>
    </message>
    <message>
        <source>Change the cartridge of the water filter</source>
        <translation>Cambiar el cartucho del filtro de agua</translation>
    </message>
    <message>
        <source>Replace: {item}</source>
        <translation>Sustituir: {item}</translation>
    </message>
    <message>
        <source>Replace: {item} (its UV fades)</source>
        <translation>Sustituir: {item} (su UV decae)</translation>
    </message>
    <message>
        <source>Replace the bed: {item}</source>
        <translation>Cambiar el sustrato: {item}</translation>
    </message>
    <message>
        <source>Renew the price list</source>
        <translation>Renovar la lista de precios</translation>
    </message>
    <message>
        <source>Work the plan out anew and save the calendar again</source>
        <translation>Volver a calcular el plan y guardar de nuevo el calendario</translation>
    </message>
    <message>
        <source>Every animal is awake, breathes with its mouth closed and moves as usual; lamps and heaters work; both thermometers read what they should. A lamp that has failed is replaced the same day.</source>
        <translation>Todos los animales están despiertos, respiran con la boca cerrada y se mueven como siempre; las lámparas y los calefactores funcionan; los dos termómetros marcan lo que deben. Una lámpara que ha fallado se sustituye el mismo día.</translation>
    </message>
    <message>
        <source>Pour the bowls out, scrub and rinse them, and fill in {water} of fresh lukewarm water[, with {conditioner} of conditioner]. Change it at once where it is fouled.</source>
        <translation>Vaciar los bebederos, frotarlos, enjuagarlos y echar {water} de agua limpia y templada[, con {conditioner} de acondicionador]. Cambiarla en cuanto se ensucie.</translation>
    </message>
    <message>
        <source>See that the water is clean and as deep as planned; about {water} a day evaporate.</source>
        <translation>Comprobar que el agua está limpia y tiene la profundidad prevista; se evaporan unos {water} al día.</translation>
    </message>
    <message>
        <source>Spray {water} a day[, in {times} goes], most of it over the cool side, and not on hot lamps or sockets. Between two mistings the top of the bed may dry.</source>
        <translation>Pulverizar {water} al día[, en {times} veces], sobre todo en el lado fresco, y nunca sobre lámparas calientes ni enchufes. Entre dos nebulizaciones puede secarse la capa superior del sustrato.</translation>
    </message>
    <message>
        <source>Empty it, rinse the tank and the nozzles, and fill it with fresh water. It draws about {water} a day. Unplug it first.</source>
        <translation>Vaciarlo, enjuagar el depósito y las boquillas y llenarlo con agua limpia. Gasta unos {water} al día. Antes, desenchufarlo.</translation>
    </message>
    <message>
        <source>Pour {water} into the bed on the cool side, away from lamps, mats and sockets. Feel the bed first: none where it is still wet.</source>
        <translation>Verter {water} en el sustrato del lado fresco, lejos de lámparas, mantas y enchufes. Antes, palpar el sustrato: nada donde aún esté mojado.</translation>
    </message>
    <message>
        <source>Take out droppings, what is left of the food, and wet patches of the bed.</source>
        <translation>Retirar las heces, los restos de comida y las zonas mojadas del sustrato.</translation>
    </message>
    <message>
        <source>Wash them outside the kitchen, disinfect them, and rinse until nothing smells. No phenols. The animal stays away from it until all is dry.</source>
        <translation>Lavarlos fuera de la cocina, desinfectarlos y enjuagar hasta que nada huela. Sin fenoles. El animal no se acerca hasta que todo esté seco.</translation>
    </message>
    <message>
        <source>Sift out what is fouled, turn the upper part, and fill up to the planned depth. Change the whole bed at once where it smells or has mites or mould. Look for eggs and for a buried animal first.</source>
        <translation>Tamizar para quitar lo sucio, remover la parte superior y rellenar hasta la profundidad prevista. Cambiar todo el sustrato de inmediato si huele o tiene ácaros o moho. Antes, buscar huevos y comprobar que no haya un animal enterrado.</translation>
    </message>
    <message>
        <source>On at {on}, off at {off}, so that the hours of light follow the year.</source>
        <translation>Encendido a las {on}, apagado a las {off}, para que las horas de luz sigan el año.</translation>
    </message>
    <message>
        <source>By the fastest published growth the animals reach about now what this enclosure can hold. Measure them, state their length in the plan, and have it worked out anew.</source>
        <translation>Según el crecimiento publicado más rápido, los animales alcanzan más o menos ahora lo que admite este terrario. Medirlos, indicar su longitud en el plan y volver a calcularlo.</translation>
    </message>
    <message>
        <source>Only where an animal was new on the first day, has been by itself with tools of its own, and a vet has found nothing in its droppings: {days} are usual. The count begins anew when another animal joins.</source>
        <translation>Solo si el animal era nuevo el primer día, ha estado solo y con utensilios propios, y un veterinario no ha encontrado nada en sus heces: lo habitual es {days}. La cuenta vuelve a empezar si se incorpora otro animal.</translation>
    </message>
    <message>
        <source>Write down on which days {food} are given and how much. What is left is taken out the same day.</source>
        <translation>Anotar qué días se da la comida ({food}) y cuánta. Lo que sobra se retira el mismo día.</translation>
    </message>
    <message>
        <source>One for each animal, {prey} in all, thawed outside the kitchen. None to an animal that is about to shed. What is not eaten is taken out the same day.</source>
        <translation>Una presa por animal, {prey} en total, descongeladas fuera de la cocina. Ninguna a un animal que está a punto de mudar. Lo que no se coma se retira el mismo día.</translation>
    </message>
    <message>
        <source>For a month about {monthly} {food}[, and {calcium} of calcium powder].</source>
        <translation>Para un mes, aproximadamente {monthly} {food}[, y {calcium} de calcio en polvo].</translation>
    </message>
    <message>
        <source>Ten to fifteen minutes in shallow lukewarm water that it can stand in, never left alone. Hatchlings more often: ask a reptile vet.</source>
        <translation>De diez a quince minutos en agua templada y poco profunda, donde haga pie, sin dejarlo nunca solo. Las crías, más a menudo: consultar a un veterinario de reptiles.</translation>
    </message>
    <message>
        <source>Write the weight down, always at the same time of day. A loss of a tenth is a reason for a reptile vet within days.</source>
        <translation>Anotar el peso, siempre a la misma hora del día. Perder una décima parte es motivo para acudir en pocos días a un veterinario de reptiles.</translation>
    </message>
    <message>
        <source>Write the weight down, always at the same time of day. A loss of a tenth is a reason for a reptile vet within days. Measure the length too, and state both in the plan.</source>
        <translation>Anotar el peso, siempre a la misma hora del día. Perder una décima parte es motivo para acudir en pocos días a un veterinario de reptiles. Medir también la longitud e indicar ambos en el plan.</translation>
    </message>
    <message>
        <source>Beak and claws of the usual length, eyes and nose clear, the shell hard and without soft or smelling places. A vet trims what is too long.</source>
        <translation>Pico y uñas de longitud normal, ojos y nariz limpios, caparazón duro y sin zonas blandas ni malolientes. Si algo es demasiado largo, lo recorta un veterinario.</translation>
    </message>
    <message>
        <source>Claws of the usual length, no remains of shed skin about toes and tail, jaw firm, eyes clear. A vet trims what is too long.</source>
        <translation>Uñas de longitud normal, sin restos de muda en dedos ni cola, mandíbula firme, ojos limpios. Si algo es demasiado largo, lo recorta un veterinario.</translation>
    </message>
    <message>
        <source>The last shed skin in one piece with both eye caps and the tip of the tail, no mites, mouth closed and clean.</source>
        <translation>La última muda, de una pieza, con los dos capuchones oculares y la punta de la cola; sin ácaros; boca cerrada y limpia.</translation>
    </message>
    <message>
        <source>Skin smooth and of the usual colour, no sores, belly neither sunken nor swollen. Touch it only with clean wet hands or rinsed gloves.</source>
        <translation>Piel lisa y del color habitual, sin llagas, vientre ni hundido ni hinchado. Tocarlo solo con las manos limpias y mojadas o con guantes enjuagados.</translation>
    </message>
    <message>
        <source>Where the animal is new, or no vet has seen it yet: within {days}, with a faecal sample. Bring its weights.</source>
        <translation>Si el animal es nuevo o aún no lo ha visto ningún veterinario: en un plazo de {days}, con una muestra de heces. Llevar sus pesos anotados.</translation>
    </message>
    <message>
        <source>With a faecal sample and the list of its weights. Usual visits in a year: {visits}.</source>
        <translation>Con una muestra de heces y la lista de sus pesos. Visitas habituales al año: {visits}.</translation>
    </message>
    <message>
        <source>With a faecal sample. Without it, or where it is ill, thin or in its first winter, the animal stays warm.</source>
        <translation>Con una muestra de heces. Sin la revisión, o si está enfermo, delgado o en su primer invierno, el animal se queda al calor.</translation>
    </message>
    <message>
        <source>Water to drink and baths go on, so that the gut empties. The sheet “Winter rest” has the weeks.</source>
        <translation>El agua para beber y los baños siguen, para que se vacíe el intestino. La hoja «Hibernación» detalla las semanas.</translation>
    </message>
    <message>
        <source>From today at {cold}, dark and even; read the thermometer every day.</source>
        <translation>Desde hoy a {cold}, a oscuras y con temperatura constante; leer el termómetro cada día.</translation>
    </message>
    <message>
        <source>Ask a vet below {ask_below}; end the rest below {stop_below}. End it too where the animal is wet, wakes or passes urine.</source>
        <translation>Consultar a un veterinario por debajo de {ask_below}; poner fin a la hibernación por debajo de {stop_below}. También si el animal está mojado, se despierta u orina.</translation>
    </message>
    <message>
        <source>Warmth and light rise evenly to the usual; water to drink and to bathe in first.</source>
        <translation>El calor y la luz suben poco a poco hasta lo habitual; primero, agua para beber y para bañarse.</translation>
    </message>
    <message>
        <source>Food again. One that does not eat within a week or two sees a reptile vet.</source>
        <translation>De nuevo comida. Si no come en una semana o dos, acudir a un veterinario de reptiles.</translation>
    </message>
    <message>
        <source>Warm the probe in your hand: the device has to switch off or grow dim. Lay it back exactly where it was[, set to {setpoint}]. One that goes on heating is unplugged and replaced the same day.</source>
        <translation>Calentar la sonda en la mano: el aparato debe apagarse o bajar de potencia. Volver a dejarla justo donde estaba[, con la consigna en {setpoint}]. Uno que sigue calentando se desenchufa y se sustituye el mismo día.</translation>
    </message>
    <message>
        <source>At the height of the animal&apos;s back in the basking place, after half an hour of burning; write it into the plan. Without a meter, go by the date of replacement. Do not look into the lamp.</source>
        <translation>A la altura del lomo del animal en la zona de asoleo, tras media hora de encendido; anotarlo en el plan. Sin medidor, guiarse por la fecha de sustitución. No mirar directamente a la lámpara.</translation>
    </message>
    <message>
        <source>Push its test button: the power has to go off. Where it does not, unplug the enclosures and call a licensed electrician. Where there is none, have one fitted. Check the timers afterwards.</source>
        <translation>Pulsar el botón de prueba: la corriente debe cortarse. Si no, desenchufar los terrarios y llamar a un electricista autorizado. Si no hay ninguno, hacer que lo instalen. Después, comprobar los temporizadores.</translation>
    </message>
    <message>
        <source>Push the test button of the alarm in the room of the enclosures. Where there is none, fit one.</source>
        <translation>Pulsar el botón de prueba del detector en la habitación de los terrarios. Si no hay ninguno, instalarlo.</translation>
    </message>
    <message>
        <source>Afterwards lay them side by side for an hour: those that differ by more than a degree are replaced.</source>
        <translation>Después, dejarlos una hora uno junto a otro: los que difieran en más de un grado se sustituyen.</translation>
    </message>
    <message>
        <source>[It is good for {life}. ]Sooner where the maker says so or the water tastes of chlorine.</source>
        <translation>[Sirve para {life}. ]Antes si lo indica el fabricante o el agua sabe a cloro.</translation>
    </message>
    <message>
        <source>By its usual life it is worn out now, at the earliest on {earliest}. Keep a spare of every lamp. Let lamps cool and unplug them first; lamps with mercury are hazardous waste.</source>
        <translation>Según su vida útil habitual, toca el cambio ahora; como muy pronto el {earliest}. Tener repuesto de cada lámpara. Antes, dejar enfriar las lámparas y desenchufarlas; las que llevan mercurio son residuos peligrosos.</translation>
    </message>
    <message>
        <source>It still shines, but gives less UV than the animals need; at the earliest on {earliest}, and a meter tells. Let it cool and unplug it first; lamps with mercury are hazardous waste.</source>
        <translation>Aún luce, pero da menos UV del que necesitan los animales; como muy pronto el {earliest}, y un medidor lo dirá. Antes, dejarla enfriar y desenchufarla; las lámparas con mercurio son residuos peligrosos.</translation>
    </message>
    <message>
        <source>[{bed} are filled in. ]At the earliest on {earliest}, and at once where it smells or has mites or mould. Switch off and unplug mats first, and do it outside the kitchen.</source>
        <translation>[Para llenarlo: {bed}. ]Como muy pronto el {earliest}, y de inmediato si huele o tiene ácaros o moho. Antes, apagar y desenchufar las mantas, y hacerlo fuera de la cocina.</translation>
    </message>
    <message>
        <source>The prices are of {date}. Older than a year, they say little of what things cost.</source>
        <translation>Los precios son de {date}. Con más de un año, dicen poco de lo que cuestan las cosas.</translation>
    </message>
    <message>
        <source>State ages, lengths, weights and hours burnt. What has to be replaced is in this calendar until {date} only.</source>
        <translation>Indicar edades, longitudes, pesos y horas de uso. Lo que hay que sustituir figura en este calendario solo hasta el {date}.</translation>
    </message>
    <message>
        <source>minutes for the daily look</source>
        <translation>minutos para el vistazo diario</translation>
    </message>
    <message>
        <source>minutes for a feeding</source>
        <translation>minutos para dar de comer una vez</translation>
    </message>
    <message>
        <source>feedings of a land turtle in a week</source>
        <translation>comidas de una tortuga terrestre a la semana</translation>
    </message>
    <message>
        <source>feedings of a tortoise in a week</source>
        <translation>comidas de una tortuga de tierra a la semana</translation>
    </message>
    <message>
        <source>feedings of a lizard in a week</source>
        <translation>comidas de un lagarto a la semana</translation>
    </message>
    <message>
        <source>feedings of a snake in a week</source>
        <translation>comidas de una serpiente a la semana</translation>
    </message>
    <message>
        <source>feedings of a frog in a week</source>
        <translation>comidas de una rana a la semana</translation>
    </message>
    <message>
        <source>minutes for a change of water</source>
        <translation>minutos para un cambio de agua</translation>
    </message>
    <message>
        <source>minutes for a misting by hand</source>
        <translation>minutos para una nebulización a mano</translation>
    </message>
    <message>
        <source>minutes for the weekly care</source>
        <translation>minutos para los cuidados semanales</translation>
    </message>
    <message>
        <source>minutes for the monthly care</source>
        <translation>minutos para los cuidados mensuales</translation>
    </message>
</context>
<context>
    <name>speaker</name>
    <message>
        <source>less than %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>1 percentage point</source>
        <translation>1 punto porcentual</translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation>%1 puntos porcentuales</translation>
    </message>
    <message>
        <source>Something was found that has no words yet (%1).</source>
        <translation>Se encontró algo que aún no tiene texto (%1).</translation>
    </message>
    <message>
        <source>result: %1</source>
        <translation>resultado: %1</translation>
    </message>
    <message>
        <source>compared with: %1</source>
        <translation>comparado con: %1</translation>
    </message>
    <message>
        <source>The range is mostly due to this: %1.</source>
        <translation>El intervalo se debe sobre todo a esto: %1.</translation>
    </message>
    <message>
        <source>Figures: %1</source>
        <translation>Cifras: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>%1, the thickness of its board</source>
        <translation>%1, espesor de su tablero</translation>
    </message>
    <message>
        <source>%1: not stated, and nothing could be assumed</source>
        <translation>%1: sin indicar, y no se pudo suponer nada</translation>
    </message>
    <message>
        <source>%1: counted both ways, yes and no</source>
        <translation>%1: se cuenta de las dos formas, sí y no</translation>
    </message>
    <message>
        <source>%1: taken as %2</source>
        <translation>%1: se toma %2</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (de %2 a %3)</translation>
    </message>
    <message>
        <source>%1: was %2, now %3</source>
        <translation>%1: antes %2, ahora %3</translation>
    </message>
    <message>
        <source>%1 decides this range most (%2 of it).</source>
        <translation>%1 es lo que más determina este intervalo (%2 del total).</translation>
    </message>
    <message>
        <source>yes and no</source>
        <translation>sí y no</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 al día</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>tasks</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>how often is not known</source>
        <translation>no se sabe cada cuánto</translation>
    </message>
    <message>
        <source>once</source>
        <translation>una vez</translation>
    </message>
    <message>
        <source>%1 times a day</source>
        <translation>%1 veces al día</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>todos los días</translation>
    </message>
    <message>
        <source>every %1 days</source>
        <translation>cada %1 días</translation>
    </message>
    <message>
        <source>every week: %1</source>
        <translation>cada semana: %1</translation>
    </message>
    <message>
        <source>every week</source>
        <translation>cada semana</translation>
    </message>
    <message>
        <source>every %1 weeks</source>
        <translation>cada %1 semanas</translation>
    </message>
    <message>
        <source>every month</source>
        <translation>cada mes</translation>
    </message>
    <message>
        <source>every %1 months</source>
        <translation>cada %1 meses</translation>
    </message>
    <message>
        <source>every year</source>
        <translation>cada año</translation>
    </message>
    <message>
        <source>every %1 years</source>
        <translation>cada %1 años</translation>
    </message>
    <message>
        <source>As the plan states it.</source>
        <translation>Como lo indica el plan.</translation>
    </message>
    <message>
        <source>Worked out from the plan.</source>
        <translation>Calculado a partir del plan.</translation>
    </message>
    <message>
        <source>How often is not in the guidance. Decide it, with a reptile vet or an experienced keeper, and write it down.</source>
        <translation>Las pautas no dicen cada cuánto. Decidirlo con un veterinario de reptiles o un cuidador experimentado y anotarlo.</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Por qué: %1</translation>
    </message>
    <message>
        <source>Usual are %1 between. Why: %2</source>
        <translation>Intervalo habitual: %1. Por qué: %2</translation>
    </message>
    <message>
        <source>Wash your hands with soap afterwards, and keep all this out of the kitchen.</source>
        <translation>Después, lavarse las manos con jabón y mantener todo esto fuera de la cocina.</translation>
    </message>
    <message>
        <source>animals</source>
        <translation>animales</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>cleaning</source>
        <translation>limpieza</translation>
    </message>
    <message>
        <source>food</source>
        <translation>alimento</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>equipos</translation>
    </message>
    <message>
        <source>replacement</source>
        <translation>sustitución</translation>
    </message>
    <message>
        <source>health</source>
        <translation>salud</translation>
    </message>
    <message>
        <source>winter rest</source>
        <translation>hibernación</translation>
    </message>
    <message>
        <source>plan and prices</source>
        <translation>plan y precios</translation>
    </message>
</context>
<context>
    <name>terms</name>
    <message>
        <source>Warm and cool side</source>
        <translation>Lado cálido y lado fresco</translation>
    </message>
    <message>
        <source>An animal that can&apos;t make its own warmth has to choose it. Heat therefore goes to one end of the box, the other stays cooler, and the difference between the two is part of every target.</source>
        <translation>Un animal que no produce su propio calor tiene que poder elegirlo. Por eso el calor va a un extremo del recinto, el otro queda más fresco, y la diferencia entre ambos es parte de cada objetivo.</translation>
    </message>
    <message>
        <source>Basking place</source>
        <translation>Zona de asoleo</translation>
    </message>
    <message>
        <source>Where a lamp warms an animal from above. Its figure is what a body lying there feels, not the air beside it.</source>
        <translation>Donde una lámpara calienta al animal desde arriba. Su cifra es lo que siente un cuerpo allí tendido, no el aire de al lado.</translation>
    </message>
    <message>
        <source>Operative temperature</source>
        <translation>Temperatura operativa</translation>
    </message>
    <message>
        <source>What a body exchanges heat with: the air and all that radiates on it, as one figure. A thermometer in a small black globe reads about this.</source>
        <translation>Aquello con lo que un cuerpo intercambia calor: el aire y todo lo que irradia sobre él, en una sola cifra. Un termómetro en una bolita negra marca más o menos esto.</translation>
    </message>
    <message>
        <source>Ground level</source>
        <translation>A ras de suelo</translation>
    </message>
    <message>
        <source>The air just above the bed, where the animal lives. Lay a shaded thermometer or hygrometer there to compare.</source>
        <translation>El aire justo encima del sustrato, donde vive el animal. Para comparar, dejar allí un termómetro o higrómetro a la sombra.</translation>
    </message>
    <message>
        <source>Surface temperature</source>
        <translation>Temperatura superficial</translation>
    </message>
    <message>
        <source>What an infrared thermometer reads on the bed or a stone. Under a lamp it is far above the air.</source>
        <translation>Lo que lee un termómetro infrarrojo sobre el sustrato o una piedra. Bajo una lámpara está muy por encima del aire.</translation>
    </message>
    <message>
        <source>Range and likely value</source>
        <translation>Intervalo y valor probable</translation>
    </message>
    <message>
        <source>Nothing here is exact. A figure is given from its least to its greatest plausible value, with the likeliest between. What is not stated in the plan widens it; a measurement narrows it.</source>
        <translation>Aquí nada es exacto. Cada cifra va del menor al mayor valor plausible, con el más probable en medio. Lo que el plan no dice la ensancha; una medición la estrecha.</translation>
    </message>
    <message>
        <source>fits, tight, falls short, danger, not known</source>
        <translation>cumple, justo, insuficiente, peligro, no se sabe</translation>
    </message>
    <message>
        <source>The five verdicts. Tight: the likely value is within its target, an end of its range is not. Falls short: the likely value misses it. Danger: someone may be hurt. Not known: a figure is missing that can&apos;t be guessed safely.</source>
        <translation>Los cinco dictámenes. Justo: el valor probable está en su objetivo, un extremo de su intervalo no. Insuficiente: el valor probable no llega. Peligro: alguien puede resultar dañado. No se sabe: falta una cifra que no se puede suponer con seguridad.</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Humedad relativa</translation>
    </message>
    <message>
        <source>How much of the moisture that air can hold at its temperature is in it. Warm the same air and the figure falls.</source>
        <translation>Cuánta de la humedad que el aire puede contener a su temperatura hay en él. Si se calienta el mismo aire, la cifra baja.</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Punto de rocío</translation>
    </message>
    <message>
        <source>The temperature at which the air&apos;s moisture begins to settle. A pane that is colder fogs.</source>
        <translation>La temperatura a la que la humedad del aire empieza a depositarse. Un cristal más frío se empaña.</translation>
    </message>
    <message>
        <source>UV index</source>
        <translation>índice UV</translation>
    </message>
    <message>
        <source>Strength of ultraviolet light as it acts on skin. It can only be measured with a meter or read from the lamp&apos;s own table: watts say nothing about it.</source>
        <translation>Fuerza de la luz ultravioleta según actúa sobre la piel. Solo se puede medir con un medidor o leer en la tabla de la lámpara: los vatios no dicen nada de ella.</translation>
    </message>
    <message>
        <source>Ferguson zone</source>
        <translation>Zona de Ferguson</translation>
    </message>
    <message>
        <source>One of four groups of species by the UV index they were met in, from shade dwellers to sun baskers. The target for a species comes from its zone.</source>
        <translation>Uno de cuatro grupos de especies según el índice UV en que se las encontró, de las de sombra a las de pleno sol. El objetivo de una especie sale de su zona.</translation>
    </message>
    <message>
        <source>Open share of the mesh</source>
        <translation>Parte abierta de la malla</translation>
    </message>
    <message>
        <source>How much of a screen is holes. It decides how much light, UV and moisture pass.</source>
        <translation>Cuánto de una malla son huecos. Decide cuánta luz, UV y humedad pasan.</translation>
    </message>
    <message>
        <source>Timed and always on</source>
        <translation>Temporizado y siempre con corriente</translation>
    </message>
    <message>
        <source>Timed: on an outlet that a timer switches, for lamps. Always on: with a thermostat or for what must not stop at night.</source>
        <translation>Temporizado: en una toma que gobierna un temporizador, para lámparas. Siempre con corriente: con termostato o para lo que no debe parar de noche.</translation>
    </message>
    <message>
        <source>Thermostat and probe</source>
        <translation>Termostato y sonda</translation>
    </message>
    <message>
        <source>The thermostat keeps the place where its probe lies at the set temperature, and only that place. The probe&apos;s place is therefore part of the plan.</source>
        <translation>El termostato mantiene el lugar donde está su sonda a la temperatura fijada, y solo ese lugar. Por eso el sitio de la sonda es parte del plan.</translation>
    </message>
    <message>
        <source>Residual current protection</source>
        <translation>Protección diferencial</translation>
    </message>
    <message>
        <source>A switch that cuts the mains when current leaks away, through water or a person. Where water and mains are near one another it is a must.</source>
        <translation>Un interruptor que corta la corriente cuando se fuga por el agua o por una persona. Donde el agua y la red están cerca es imprescindible.</translation>
    </message>
    <message>
        <source>Carapace length, snout to vent, total length</source>
        <translation>Longitud del caparazón, hocico-cloaca, longitud total</translation>
    </message>
    <message>
        <source>How animals are measured: the shell in a straight line for turtles and tortoises, from the tip of the snout to the vent for lizards and frogs, the whole animal for snakes.</source>
        <translation>Cómo se miden los animales: el caparazón en línea recta en tortugas, de la punta del hocico a la cloaca en lagartos y ranas, el animal entero en serpientes.</translation>
    </message>
    <message>
        <source>Rule for the floor</source>
        <translation>Regla para la superficie</translation>
    </message>
    <message>
        <source>A published least size: law where the plan names a country that has one, else the advice of welfare or veterinary bodies. All that are known are shown, and the strictest counts.</source>
        <translation>Un tamaño mínimo publicado: ley donde el plan nombra un país que la tiene; si no, el consejo de entidades de bienestar o veterinarias. Se muestran todas las conocidas y cuenta la más estricta.</translation>
    </message>
    <message>
        <source>Settled depth</source>
        <translation>Profundidad asentada</translation>
    </message>
    <message>
        <source>How deep the bed is after some weeks. Loose material sinks, so more is bought than the box seems to need.</source>
        <translation>La profundidad del sustrato al cabo de unas semanas. El material suelto se asienta, por eso se compra más de lo que el recinto parece necesitar.</translation>
    </message>
    <message>
        <source>Startup and running cost</source>
        <translation>Coste inicial y costes corrientes</translation>
    </message>
    <message>
        <source>Startup is what is bought before the animal comes. Running is a year of electricity, food, bedding, vet, and of each thing that wears out its price over its life.</source>
        <translation>El coste inicial es lo que se compra antes de que llegue el animal. Los corrientes son un año de electricidad, comida, sustrato, veterinario y, de cada cosa que se gasta, su precio repartido en su vida útil.</translation>
    </message>
    <message>
        <source>Winter rest</source>
        <translation>Hibernación</translation>
    </message>
    <message>
        <source>Weeks in the cold that some species need and others don&apos;t survive. The program plans one only where you ask, and refuses where a species, its age or its health forbid it.</source>
        <translation>Semanas de frío que unas especies necesitan y otras no sobreviven. El programa solo las planifica si se piden, y se niega donde la especie, la edad o la salud lo prohíben.</translation>
    </message>
    <message>
        <source>Proving</source>
        <translation>Puesta a prueba</translation>
    </message>
    <message>
        <source>Running the finished box empty for at least a week and reading its thermometers, before an animal moves in.</source>
        <translation>Hacer funcionar el recinto terminado, vacío, al menos una semana y leer sus termómetros antes de que entre un animal.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>What your thermometers show in the finished box. The program fits its uncertain inputs to them, and its ranges become narrower.</source>
        <translation>Lo que marcan sus termómetros en el recinto terminado. El programa ajusta a ello sus valores inciertos, y sus intervalos se estrechan.</translation>
    </message>
    <message>
        <source>Heat wave, power cut, lamp burnt out</source>
        <translation>Ola de calor, corte de luz, lámpara fundida</translation>
    </message>
    <message>
        <source>Drills: the plan is tried on the day something goes wrong, and the hours are told until an animal is harmed.</source>
        <translation>Simulacros: el plan se prueba en el día en que algo falla, y se dice en cuántas horas sufre daño un animal.</translation>
    </message>
</context>
<context>
    <name>tour</name>
    <message>
        <source>On the left you say what there is: animals, box, bed, lamps, room, prices. What you don&apos;t know stays empty; it is then taken as a range, and said.</source>
        <translation>A la izquierda se dice lo que hay: animales, recinto, sustrato, lámparas, habitación, precios. Lo que no sepa queda vacío; entonces se toma como intervalo, y se dice.</translation>
    </message>
    <message>
        <source>The drawing is to scale. Drag a lamp, a bowl or a hide, or choose it and use the arrow keys. Every change can be undone.</source>
        <translation>El dibujo está a escala. Arrastre una lámpara, un bebedero o un refugio, o elíjalo y use las flechas. Todo cambio se puede deshacer.</translation>
    </message>
    <message>
        <source>Above the drawing choose what lies over the floor: warmth, humidity or UV. Point at a place to read it.</source>
        <translation>Encima del dibujo, elija qué cubre el suelo: calor, humedad o UV. Señale un lugar para leerlo.</translation>
    </message>
    <message>
        <source>Findings say what is the matter, most serious first. Choose one: the field is opened, its place marked, and beside it stands why, with source and range.</source>
        <translation>Los hallazgos dicen qué falla, lo más serio primero. Elija uno: se abre el campo, se marca el lugar y al lado está el porqué, con fuente e intervalo.</translation>
    </message>
    <message>
        <source>Hour by hour shows a winter and a summer day, and the drills: power cut, burnt lamp, heat wave.</source>
        <translation>Hora a hora muestra un día de invierno y uno de verano, y los simulacros: corte de luz, lámpara fundida, ola de calor.</translation>
    </message>
    <message>
        <source>What if: move a cover or mist more often, and see at once what it would do, before the plan is changed.</source>
        <translation>Qué pasaría si: mueva una cubierta o nebulice más a menudo y vea al momento qué haría, antes de cambiar el plan.</translation>
    </message>
    <message>
        <source>Shopping counts whole packs, less what you have; tick what is on the shelf already.</source>
        <translation>La compra cuenta envases enteros, menos lo que ya tiene; marque lo que ya está en la estantería.</translation>
    </message>
    <message>
        <source>Costs stand by sum, month and year. The prices are invented: use a list of your own from the menu Prices. Sheets for the shop are under File.</source>
        <translation>Los costes aparecen por suma, mes y año. Los precios son inventados: use una lista propia desde el menú Precios. Las hojas para la tienda están en Archivo.</translation>
    </message>
</context>
<context>
    <name>verdicts</name>
    <message>
        <source>too hot</source>
        <translation>demasiado calor</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>demasiado frío</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>demasiado húmedo</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>demasiado seco</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>demasiado grande</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>demasiado pequeño</translation>
    </message>
    <message>
        <source>too strong</source>
        <translation>demasiado fuerte</translation>
    </message>
    <message>
        <source>too weak</source>
        <translation>demasiado débil</translation>
    </message>
    <message>
        <source>too long</source>
        <translation>demasiado largo</translation>
    </message>
    <message>
        <source>too short</source>
        <translation>demasiado corto</translation>
    </message>
    <message>
        <source>too much load</source>
        <translation>demasiada carga</translation>
    </message>
    <message>
        <source>too little load</source>
        <translation>carga demasiado baja</translation>
    </message>
    <message>
        <source>too many</source>
        <translation>demasiados</translation>
    </message>
    <message>
        <source>too few</source>
        <translation>demasiado pocos</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>demasiado</translation>
    </message>
    <message>
        <source>too little</source>
        <translation>demasiado poco</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>cumple</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>justo</translation>
    </message>
    <message>
        <source>falls short</source>
        <translation>insuficiente</translation>
    </message>
    <message>
        <source>danger</source>
        <translation>peligro</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1 (may be %2)</source>
        <translation>%1 (puede ser %2)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>µW/cm² of UV-B can&apos;t be turned into a UV index: %1 may be anything from %2 to %3, as the lamp&apos;s colours lie. Read it with a UV index meter.</source>
        <translation>Los µW/cm² de UV-B no se pueden convertir en un índice UV: %1 puede ser cualquier valor de %2 a %3, según los colores de la lámpara. Leerlo con un medidor de índice UV.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
</context>
</TS>
