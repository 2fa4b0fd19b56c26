<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message>
        <source>About Loamstead</source>
        <translation>Über Loamstead</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Loamstead %1&lt;/h3&gt;</source>
        <translation>&lt;h3&gt;Loamstead %1&lt;/h3&gt;</translation>
    </message>
    <message>
        <source>&lt;p&gt;Plans indoor enclosures for land turtles, tortoises, lizards, snakes and frogs, and costs them.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later, without any warranty.&lt;/p&gt;&lt;p&gt;Built with Qt %1; runs with Qt %2 on %3.&lt;/p&gt;</source>
        <translation>&lt;p&gt;Plant Terrarien für Landschildkröten, Dosenschildkröten, Echsen, Schlangen und Frösche und berechnet, was sie kosten.&lt;/p&gt;&lt;p&gt;Freie Software unter der GNU General Public License, Version 3 oder neuer, ohne jede Gewährleistung.&lt;/p&gt;&lt;p&gt;Erstellt mit Qt %1; läuft mit Qt %2 unter %3.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>What this program can&apos;t do for you</source>
        <translation>Was dieses Programm nicht leisten kann</translation>
    </message>
    <message>
        <source>&lt;ul&gt;&lt;li&gt;&lt;b&gt;Prove it before an animal moves in.&lt;/b&gt; The figures are predictions with a range. Run the finished enclosure empty for at least a week and read several thermometers.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Heat and fire.&lt;/b&gt; Keep every lamp and heater clear of anything that burns, guard what an animal can reach, use fittings rated for the heat, and fit a smoke alarm in the room.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Mains and water.&lt;/b&gt; Use a residual-current device, leave a drip loop in each cable, keep outlet strips above the water and never plug one strip into another. Leave electrical work to a licensed electrician.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Weight.&lt;/b&gt; A stand or floor has to be rated for the load; this is not a structural approval.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Animals.&lt;/b&gt; For illness and before any cool season ask a reptile vet. Wash hands after handling: reptiles and amphibians can carry Salmonella.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Law.&lt;/b&gt; Keeping, moving or buying a species may need papers where you live. Ask your local authority.&lt;/li&gt;&lt;/ul&gt;</source>
        <translation>&lt;ul&gt;&lt;li&gt;&lt;b&gt;Erproben, bevor ein Tier einzieht.&lt;/b&gt; Die Zahlen sind Vorhersagen mit einer Spanne. Das fertige Terrarium mindestens eine Woche leer laufen lassen und mehrere Thermometer ablesen.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Hitze und Feuer.&lt;/b&gt; Lampen und Heizer von allem Brennbaren fernhalten, was ein Tier erreichen kann, mit einem Schutzkorb sichern, hitzefeste Fassungen verwenden und im Raum einen Rauchmelder anbringen.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Strom und Wasser.&lt;/b&gt; Einen FI-Schutzschalter (RCD) verwenden, jedes Kabel in einer Tropfschlaufe hängen lassen, Steckdosenleisten oberhalb des Wassers anbringen und nie eine Leiste in eine andere stecken. Elektroarbeiten einer Elektrofachkraft überlassen.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Gewicht.&lt;/b&gt; Gestell und Fußboden müssen für die Last ausgelegt sein; dies ist kein statischer Nachweis.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Tiere.&lt;/b&gt; Bei Krankheit und vor jeder kühlen Zeit einen reptilienkundigen Tierarzt fragen. Nach jedem Kontakt die Hände waschen: Reptilien und Amphibien können Salmonellen übertragen.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Recht.&lt;/b&gt; Haltung, Transport oder Kauf einer Art können je nach Wohnort Papiere erfordern. Bei der zuständigen Behörde nachfragen.&lt;/li&gt;&lt;/ul&gt;</translation>
    </message>
    <message>
        <source>New South Wales</source>
        <translation>New South Wales</translation>
    </message>
    <message>
        <source>EU, laboratories</source>
        <translation>EU, Versuchstiere</translation>
    </message>
    <message>
        <source>other</source>
        <translation>Übriges</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>Von links</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>Lower edge above the base</source>
        <translation>Unterkante über der Bodenplatte</translation>
    </message>
    <message>
        <source>Height above the base</source>
        <translation>Höhe über der Bodenplatte</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Beam angle</source>
        <translation>Abstrahlwinkel</translation>
    </message>
    <message>
        <source>Clearance, by its maker</source>
        <translation>Mindestabstand laut Hersteller</translation>
    </message>
    <message>
        <source>Holder is rated for</source>
        <translation>Fassung zugelassen bis</translation>
    </message>
    <message>
        <source>Dome on the mesh, diameter</source>
        <translation>Reflektorschirm auf Gitter, Ø</translation>
    </message>
    <message>
        <source>Guarded</source>
        <translation>Mit Schutzkorb</translation>
    </message>
    <message>
        <source>Air gap below</source>
        <translation>Luftspalt darunter</translation>
    </message>
    <message>
        <source>Burnt so far</source>
        <translation>Bisherige Brenndauer</translation>
    </message>
    <message>
        <source>dimmer</source>
        <translation>Dimmer</translation>
    </message>
    <message>
        <source>thermostat</source>
        <translation>Thermostat</translation>
    </message>
    <message>
        <source>Control</source>
        <translation>Regelung</translation>
    </message>
    <message>
        <source>Dimmer level</source>
        <translation>Dimmereinstellung</translation>
    </message>
    <message>
        <source>Control is rated for</source>
        <translation>Regler zugelassen bis</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Eingestellt auf</translation>
    </message>
    <message>
        <source>It regulates by</source>
        <translation>Regelt durch</translation>
    </message>
    <message>
        <source>switching on and off</source>
        <translation>Ein- und Ausschalten</translation>
    </message>
    <message>
        <source>pulses</source>
        <translation>Impulse</translation>
    </message>
    <message>
        <source>dimming</source>
        <translation>Dimmen</translation>
    </message>
    <message>
        <source>Switching difference</source>
        <translation>Schaltdifferenz</translation>
    </message>
    <message>
        <source>not placed</source>
        <translation>nicht platziert</translation>
    </message>
    <message>
        <source>placed</source>
        <translation>platziert</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>Probe from the left</source>
        <translation>Fühler von links</translation>
    </message>
    <message>
        <source>Probe from the front</source>
        <translation>Fühler von vorn</translation>
    </message>
    <message>
        <source>Probe above the base</source>
        <translation>Fühler über der Bodenplatte</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Versorgung</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>zeitgeschaltet</translation>
    </message>
    <message>
        <source>always on</source>
        <translation>mit Dauerstrom</translation>
    </message>
    <message>
        <source>On strip</source>
        <translation>An Leiste</translation>
    </message>
    <message>
        <source>At a distance of</source>
        <translation>Im Abstand von</translation>
    </message>
    <message>
        <source>UV index</source>
        <translation>UV-Index</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Some of your guidance files were left out</source>
        <translation>Einige eigene Wissensdateien wurden ausgelassen</translation>
    </message>
    <message>
        <source>Your own guidance files have problems (%1). The files named under “Details” are not used; everything else is.</source>
        <translation>Die eigenen Wissensdateien enthalten Fehler (%1). Die unter „Details“ genannten Dateien werden nicht verwendet, alles Übrige schon.</translation>
    </message>
    <message>
        <source>Plans indoor enclosures for reptiles and amphibians.</source>
        <translation>Plant Terrarien für Reptilien und Amphibien.</translation>
    </message>
    <message>
        <source>The plan to open.</source>
        <translation>Der Plan, der geöffnet werden soll.</translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation>Kopie von %1</translation>
    </message>
    <message>
        <source>Export the drawing</source>
        <translation>Zeichnung exportieren</translation>
    </message>
    <message>
        <source>Scalable drawing (*.svg);;Picture (*.png)</source>
        <translation>Skalierbare Zeichnung (*.svg);;Bild (*.png)</translation>
    </message>
    <message>
        <source>drawing</source>
        <translation>zeichnung</translation>
    </message>
    <message>
        <source>The drawing was not saved</source>
        <translation>Die Zeichnung wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>Print sheets</source>
        <translation>Blätter drucken</translation>
    </message>
    <message>
        <source>Save sheets as PDF</source>
        <translation>Blätter als PDF speichern</translation>
    </message>
    <message>
        <source>sheets</source>
        <translation>blätter</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>The sheets were not saved</source>
        <translation>Die Blätter wurden nicht gespeichert</translation>
    </message>
    <message>
        <source>Comma separated (*.csv);;All files (*)</source>
        <translation>Kommagetrennt (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The table was not saved</source>
        <translation>Die Tabelle wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>Loamstead plans (*.loamstead.json);;All files (*)</source>
        <translation>Loamstead-Pläne (*.loamstead.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>New plan</source>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <source>Enclosure 1</source>
        <translation>Terrarium 1</translation>
    </message>
    <message>
        <source>Price lists (*.json *.csv);;All files (*)</source>
        <translation>Preislisten (*.json *.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>This price list can&apos;t be used</source>
        <translation>Diese Preisliste lässt sich nicht verwenden</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be used. The prices are as they were.</source>
        <translation>„%1“ lässt sich nicht verwenden. Die Preise sind unverändert.</translation>
    </message>
    <message>
        <source>Each plan is worked out by itself, with the same guidance and prices. The change is that of the likely values. What is not sure of the one plan is mostly not sure of the other either, so a change is mostly surer than the ranges beside it.</source>
        <translation>Jeder Plan wird für sich berechnet, nach demselben Wissensstand und mit denselben Preisen. Die Änderung ist die der wahrscheinlichen Werte. Was bei dem einen Plan unsicher ist, ist es meist auch bei dem anderen; eine Änderung ist deshalb meist sicherer als die Spannen daneben.</translation>
    </message>
    <message>
        <source>Other plan: %1</source>
        <translation>Anderer Plan: %1</translation>
    </message>
    <message>
        <source>This plan: %1</source>
        <translation>Dieser Plan: %1</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Usable floor</source>
        <translation>Nutzbare Fläche</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>no rule known</source>
        <translation>keine Regel bekannt</translation>
    </message>
    <message>
        <source>Inner floor of %1 less what animals can&apos;t walk on.</source>
        <translation>Innere Grundfläche von %1, abzüglich dessen, worauf Tiere nicht laufen können.</translation>
    </message>
    <message>
        <source>Governing rule: %1</source>
        <translation>Maßgebliche Regel: %1</translation>
    </message>
    <message>
        <source>grown: %1</source>
        <translation>ausgewachsen: %1</translation>
    </message>
    <message>
        <source>Heat balance of the enclosure, read as %1 (%2). Target of %3.</source>
        <translation>Wärmebilanz des Terrariums, abgelesen als: %1 (%2). Zielwert von: %3.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Warmth, %1</source>
        <translation>Wärme, %1</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>As the plan states it, or its bracket where it does not. Where the room&apos;s loss per kelvin is stated, what all boxes give off is added in summer.</source>
        <translation>Wie im Plan angegeben, sonst die angenommene Spanne. Ist der Wärmeverlust des Raums je Kelvin angegeben, kommt im Sommer hinzu, was alle Terrarien abgeben.</translation>
    </message>
    <message>
        <source>Warm side less cool side</source>
        <translation>Warme Seite minus kühle Seite</translation>
    </message>
    <message>
        <source>The same heat balance: ground level on the warm side less that on the cool side, about two thirds of the length apart. What moves both sides alike does not widen its range.</source>
        <translation>Dieselbe Wärmebilanz: in Bodennähe die warme Seite minus die kühle, rund zwei Drittel der Länge voneinander entfernt. Was beide Seiten gleich verschiebt, verbreitert die Spanne nicht.</translation>
    </message>
    <message>
        <source>Hottest wall within reach</source>
        <translation>Heißeste erreichbare Wand</translation>
    </message>
    <message>
        <source>The balance of each small piece of the walls with lamp light, air, radiation and its neighbours: the hottest one as high up as an animal reaches, mats apart.</source>
        <translation>Die Bilanz jedes kleinen Wandstücks mit Lampenlicht, Luft, Strahlung und den Nachbarstücken: das heißeste in der Höhe, bis zu der ein Tier reicht, Heizmatten ausgenommen.</translation>
    </message>
    <message>
        <source>Hottest place of the top</source>
        <translation>Heißeste Stelle der Oberseite</translation>
    </message>
    <message>
        <source>The balance of each small piece of what closes the top, covers included: the hottest face of them. Where it can be touched, mind it; what it is made of must bear it.</source>
        <translation>Die Bilanz jedes kleinen Stücks von allem, was oben schließt, Abdeckungen eingeschlossen: die heißeste Fläche davon. Wo man sie berühren kann, ist Vorsicht geboten; das Material muss die Hitze aushalten.</translation>
    </message>
    <message>
        <source>Hottest surface</source>
        <translation>Heißeste Oberfläche</translation>
    </message>
    <message>
        <source>The same heat balance: the hottest place that an animal can touch from above, furniture it can climb included, with the bed dry under the lamp.</source>
        <translation>Dieselbe Wärmebilanz: die heißeste Stelle, die ein Tier von oben berühren kann, bekletterbare Einrichtung eingeschlossen, bei trockenem Bodengrund unter der Lampe.</translation>
    </message>
    <message>
        <source>Hottest when digging</source>
        <translation>Heißeste Stelle beim Graben</translation>
    </message>
    <message>
        <source>The same heat balance: the hottest place that an animal reaches by digging, down to the base.</source>
        <translation>Dieselbe Wärmebilanz: die heißeste Stelle, die ein Tier beim Graben erreicht, bis hinunter zur Bodenplatte.</translation>
    </message>
    <message>
        <source>Lower air</source>
        <translation>Untere Luft</translation>
    </message>
    <message>
        <source>The same heat balance: the air of the lower half.</source>
        <translation>Dieselbe Wärmebilanz: die Luft der unteren Hälfte.</translation>
    </message>
    <message>
        <source>Power drawn</source>
        <translation>Leistungsaufnahme</translation>
    </message>
    <message>
        <source>What all devices draw on average in this case, their thermostats and dimmers included.</source>
        <translation>Was alle Geräte in diesem Fall im Mittel aufnehmen, ihre Thermostate und Dimmer eingerechnet.</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Moisture balance: bowl, bed and misting against what the top and the panes let out.</source>
        <translation>Feuchtebilanz: Was aus Wasserschale, Bodengrund und Sprühen kommt, wird gegen das aufgerechnet, was über Oberseite und Scheiben verloren geht.</translation>
    </message>
    <message>
        <source>Evaporation %1 a day.</source>
        <translation>Verdunstung: %1 am Tag.</translation>
    </message>
    <message>
        <source>warm side</source>
        <translation>warme Seite</translation>
    </message>
    <message>
        <source>The same vapour at the warm side&apos;s ground: warmer ground reads drier.</source>
        <translation>Dieselbe Dampfmenge am Boden der warmen Seite: Wo der Boden wärmer ist, ist die relative Feuchte niedriger.</translation>
    </message>
    <message>
        <source>What its moist floor gives off against what leaves by its entrance, by how much lighter moist air is. An animal in it makes it damper still.</source>
        <translation>Was der feuchte Boden darin abgibt, wird gegen das aufgerechnet, was durch den Eingang entweicht, weil feuchte Luft leichter ist. Ein Tier darin macht es noch feuchter.</translation>
    </message>
    <message>
        <source>lower air</source>
        <translation>untere Luft</translation>
    </message>
    <message>
        <source>The same vapour in the air of the lower half.</source>
        <translation>Dieselbe Dampfmenge in der Luft der unteren Hälfte.</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Hours of light a day</source>
        <translation>Lichtstunden am Tag</translation>
    </message>
    <message>
        <source>From the time the lamps go on to the time they go off.</source>
        <translation>Vom Einschalten der Lampen bis zum Ausschalten.</translation>
    </message>
    <message>
        <source>Daylight at your latitude: %1 in midsummer, %2 in midwinter.</source>
        <translation>Tageslicht auf diesem Breitengrad: %1 zur Sommersonnenwende, %2 zur Wintersonnenwende.</translation>
    </message>
    <message>
        <source>Electricity</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Connected load</source>
        <translation>Anschlussleistung</translation>
    </message>
    <message>
        <source>The power of all devices, added up.</source>
        <translation>Die Leistung aller Geräte zusammengezählt.</translation>
    </message>
    <message>
        <source>Energy a day</source>
        <translation>Energie am Tag</translation>
    </message>
    <message>
        <source>What each device draws by day and by night, on average over the year.</source>
        <translation>Was jedes Gerät bei Tag und bei Nacht aufnimmt, im Jahresmittel.</translation>
    </message>
    <message>
        <source>Outlets</source>
        <translation>Steckdosen</translation>
    </message>
    <message>
        <source>%1 timed, %2 always on</source>
        <translation>%1 zeitgeschaltet, %2 mit Dauerstrom</translation>
    </message>
    <message>
        <source>One for each device, by the supply it is planned on.</source>
        <translation>Je Gerät eine, nach der Versorgung, die für das Gerät geplant ist.</translation>
    </message>
    <message>
        <source>%1 in a year</source>
        <translation>%1 im Jahr</translation>
    </message>
    <message>
        <source>A winter day %1, a summer day %2.</source>
        <translation>Wintertag %1, Sommertag %2.</translation>
    </message>
    <message>
        <source>Energy in a year</source>
        <translation>Energie im Jahr</translation>
    </message>
    <message>
        <source>Bed and weight</source>
        <translation>Bodengrund und Gewicht</translation>
    </message>
    <message>
        <source>%1 to fill in</source>
        <translation>Einzufüllen: %1</translation>
    </message>
    <message>
        <source>Settled volume %1, and what settling takes.</source>
        <translation>Volumen nach dem Setzen %1, dazu, was durch das Setzen verloren geht.</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Leeres Terrarium</translation>
    </message>
    <message>
        <source>Volume of the panels times their density.</source>
        <translation>Volumen der Wände und Platten mal ihre Dichte.</translation>
    </message>
    <message>
        <source>Bed, damp</source>
        <translation>Bodengrund, feucht</translation>
    </message>
    <message>
        <source>Dry mass of the settled bed and the water that it holds.</source>
        <translation>Trockenmasse des gesetzten Bodengrunds und das Wasser, das er hält.</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Insgesamt</translation>
    </message>
    <message>
        <source>Shell, bed, water, animals and the furniture whose weight is stated.</source>
        <translation>Terrarium, Bodengrund, Wasser, Tiere und die Einrichtung, deren Gewicht angegeben ist.</translation>
    </message>
    <message>
        <source>Pressure under the footprint</source>
        <translation>Druck auf die Standfläche</translation>
    </message>
    <message>
        <source>The weight of all together over the floor it stands on.</source>
        <translation>Das Gesamtgewicht, geteilt durch die Fläche, auf der alles steht.</translation>
    </message>
    <message>
        <source>Shared by all enclosures</source>
        <translation>Allen Terrarien gemeinsam</translation>
    </message>
    <message>
        <source>%1 of what it may carry</source>
        <translation>%1 der zulässigen Last</translation>
    </message>
    <message>
        <source>Everything planned on this circuit, and what else is stated to run on it.</source>
        <translation>Alles, was an diesem Stromkreis geplant ist und was laut Angabe sonst daran läuft.</translation>
    </message>
    <message>
        <source>The power of all devices planned on this strip, added up.</source>
        <translation>Die Leistung aller Geräte, die an dieser Leiste geplant sind, zusammengezählt.</translation>
    </message>
    <message>
        <source>All enclosures that stand on it, with everything in them.</source>
        <translation>Alle Terrarien, die darauf stehen, samt Inhalt.</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>rating not known</source>
        <translation>Tragkraft nicht bekannt</translation>
    </message>
    <message>
        <source>Danger</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>Falls short</source>
        <translation>Reicht nicht</translation>
    </message>
    <message>
        <source>Tight</source>
        <translation>Knapp</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Noch nicht bekannt</translation>
    </message>
    <message>
        <source>Good to know</source>
        <translation>Gut zu wissen</translation>
    </message>
    <message>
        <source>read %1</source>
        <translation>abgelesen %1</translation>
    </message>
    <message>
        <source>Every uncertain input is moved within its spread until the readings are met as well as their accuracy and the model&apos;s own error make probable.</source>
        <translation>Jede unsichere Eingabe wird innerhalb ihrer Streuung verschoben, bis die Messwerte so gut getroffen sind, wie ihre Genauigkeit und der Fehler des Modells es erwarten lassen.</translation>
    </message>
    <message>
        <source>Expected %1 before any reading, %2 with them. Read less expected: %3 standard deviations of thermometer and model.</source>
        <translation>Erwartet ohne Messwerte %1, mit ihnen %2. Abgelesen minus erwartet: %3 Standardabweichungen von Thermometer und Modell.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>moved by readings</source>
        <translation>durch Messwerte verschoben</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1; target %2; %3</source>
        <translation>%1; Zielwert %2; %3</translation>
    </message>
    <message>
        <source>%1: %2
Now %3
Target %4</source>
        <translation>%1: %2
Jetzt %3
Zielwert %4</translation>
    </message>
    <message>
        <source>Findings (%1)</source>
        <translation>Befunde (%1)</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Depth of water in %1</source>
        <translation>Wassertiefe in %1</translation>
    </message>
    <message>
        <source>What is stated, against the body of the animals here and its height; the verdict counts the bowl&apos;s size too.</source>
        <translation>Die Angabe, verglichen mit Größe und Höhe der Tiere hier; das Urteil berücksichtigt auch die Größe der Schale.</translation>
    </message>
    <message>
        <source>Water in %1</source>
        <translation>Wassermenge in %1</translation>
    </message>
    <message>
        <source>Length by width by depth, less a fifth for round corners and sloped sides.</source>
        <translation>Länge mal Breite mal Tiefe, abzüglich eines Fünftels für runde Ecken und schräge Seiten.</translation>
    </message>
    <message>
        <source>To lift, %1 full</source>
        <translation>Zu heben: %1, gefüllt</translation>
    </message>
    <message>
        <source>A kilogram for each litre, and the bowl where its weight is stated.</source>
        <translation>Ein Kilogramm je Liter, dazu die Schale, wo ihr Gewicht angegeben ist.</translation>
    </message>
    <message>
        <source>Drawn from the mains a day</source>
        <translation>Aus der Leitung am Tag</translation>
    </message>
    <message>
        <source>From the source that is stated: %1. Reverse osmosis sends several times what it makes to the drain.</source>
        <translation>Nach der angegebenen Herkunft: %1. Eine Umkehrosmose leitet ein Mehrfaches ihres Reinwassers in den Abfluss.</translation>
    </message>
    <message>
        <source>It is not stated where the water comes from.</source>
        <translation>Es ist nicht angegeben, woher das Wasser kommt.</translation>
    </message>
    <message>
        <source>Water costs a year</source>
        <translation>Wasserkosten im Jahr</translation>
    </message>
    <message>
        <source>What is drawn, at the price that is stated.</source>
        <translation>Was entnommen wird, zum angegebenen Preis.</translation>
    </message>
    <message>
        <source>Filter cartridges a year</source>
        <translation>Filterkartuschen im Jahr</translation>
    </message>
    <message>
        <source>Litres that pass them over the litres one is good for. Their makers set a greatest age besides.</source>
        <translation>Die Liter, die hindurchlaufen, geteilt durch die Liter, für die eine reicht. Die Hersteller begrenzen außerdem das Alter.</translation>
    </message>
    <message>
        <source>Treated water a month</source>
        <translation>Aufbereitetes Wasser im Monat</translation>
    </message>
    <message>
        <source>All water for bowls, and for amphibians the mist.</source>
        <translation>Alles Wasser für die Schalen und bei Amphibien auch das zum Sprühen.</translation>
    </message>
    <message>
        <source>Conditioner for one fill</source>
        <translation>Wasseraufbereiter je Füllung</translation>
    </message>
    <message>
        <source>All bowls filled once, by the dose; the bottle&apos;s label counts.</source>
        <translation>Alle Schalen einmal gefüllt, nach der Dosierung; maßgeblich ist das Etikett der Flasche.</translation>
    </message>
    <message>
        <source>Conditioner a month</source>
        <translation>Wasseraufbereiter im Monat</translation>
    </message>
    <message>
        <source>The treated water by the dose.</source>
        <translation>Das aufbereitete Wasser, nach der Dosierung.</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation>Wasser am Tag</translation>
    </message>
    <message>
        <source>Bowls as often as they are changed, what evaporates from them, and what is misted.</source>
        <translation>Die Schalen, so oft ihr Wasser gewechselt wird, dazu, was aus ihnen verdunstet und was gesprüht wird.</translation>
    </message>
    <message>
        <source>Water a month</source>
        <translation>Wasser im Monat</translation>
    </message>
    <message>
        <source>The same over a month of 30.4 days.</source>
        <translation>Dasselbe über einen Monat von 30,4 Tagen.</translation>
    </message>
    <message>
        <source>Changes a day</source>
        <translation>Wasserwechsel am Tag</translation>
    </message>
    <message>
        <source>As stated, or as often as the species&apos; sheet asks for.</source>
        <translation>Wie angegeben, sonst so oft, wie das Datenblatt der Art es verlangt.</translation>
    </message>
    <message>
        <source>Topped up a day</source>
        <translation>Nachgefüllt am Tag</translation>
    </message>
    <message>
        <source>What evaporates from the bowls in the solved balance of heat and moisture, from winter to summer.</source>
        <translation>Was nach der gelösten Bilanz von Wärme und Feuchte aus den Schalen verdunstet, vom Winter bis zum Sommer.</translation>
    </message>
    <message>
        <source>What evaporates from still water of the bowls&apos; area, by published correlations.</source>
        <translation>Was aus stehendem Wasser auf der Fläche der Schalen verdunstet, nach veröffentlichten Formeln.</translation>
    </message>
    <message>
        <source>Poured into the bed a day</source>
        <translation>In den Bodengrund gegossen am Tag</translation>
    </message>
    <message>
        <source>What evaporates from bed and mist in the solved balance of heat and moisture, less what is misted and what condenses and drips back: so much keeps the bed as damp as planned. Below nought it gets wetter.</source>
        <translation>Was nach der gelösten Bilanz von Wärme und Feuchte aus Bodengrund und Sprühwasser verdunstet, abzüglich dessen, was gesprüht wird und was kondensiert und zurücktropft: So viel hält den Bodengrund so feucht wie geplant. Unter null wird er nasser.</translation>
    </message>
    <message>
        <source>Winter rest, %1</source>
        <translation>Winterruhe, %1</translation>
    </message>
    <message>
        <source>May it be cooled</source>
        <translation>Eignung für die Winterruhe</translation>
    </message>
    <message>
        <source>Only animals of species that rest, well, of full weight and past their first winter may be cooled.</source>
        <translation>Nur gesunde Tiere von Arten mit Winterruhe, die ihr volles Gewicht und ihren ersten Winter hinter sich haben, dürfen kühl gestellt werden.</translation>
    </message>
    <message>
        <source>Week of %1</source>
        <translation>Woche ab %1</translation>
    </message>
    <message>
        <source>Weight on %1</source>
        <translation>Gewicht am %1</translation>
    </message>
    <message>
        <source>Under this weight more is lost than one per cent a month: ask a vet. At the weight under “Target” the rest ends.</source>
        <translation>Unterhalb dieses Gewichts beträgt der Verlust mehr als ein Prozent im Monat: einen Tierarzt fragen. Bei dem Gewicht in der Spalte „Zielwert“ endet die Ruhe.</translation>
    </message>
    <message>
        <source>end below %1</source>
        <translation>beenden unter %1</translation>
    </message>
    <message>
        <source>To be bought: %1</source>
        <translation>Zu kaufen: %1</translation>
    </message>
    <message>
        <source>Already owned: %1</source>
        <translation>Schon vorhanden: %1</translation>
    </message>
    <message>
        <source>Cost: %1</source>
        <translation>Kosten: %1</translation>
    </message>
    <message>
        <source>No price is known, so it is not in the total.</source>
        <translation>Es ist kein Preis bekannt, daher in der Summe nicht enthalten.</translation>
    </message>
    <message>
        <source>It is changed or taken out under “Budget”.</source>
        <translation>Ändern oder herausnehmen lässt sich die Zeile unter „Budget“.</translation>
    </message>
    <message>
        <source>Nothing in the price list serves it, so it can&apos;t be ticked off.</source>
        <translation>Nichts in der Preisliste deckt diesen Bedarf, daher lässt sich die Zeile nicht abhaken.</translation>
    </message>
    <message>
        <source>In use for %1.</source>
        <translation>In Gebrauch seit: %1.</translation>
    </message>
    <message>
        <source>How long it has been in use is not stated: say so under “Budget”, for it tells when it has to be replaced.</source>
        <translation>Wie lange es schon in Gebrauch ist, ist nicht angegeben: unter „Budget“ eintragen, denn danach richtet sich, wann es ersetzt werden muss.</translation>
    </message>
    <message>
        <source>owned</source>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>kein Preis</translation>
    </message>
    <message>
        <source>%1, owned</source>
        <translation>%1, vorhanden</translation>
    </message>
    <message>
        <source>To buy: %1 of %2 lines</source>
        <translation>Zu kaufen: %1 von %2 Zeilen</translation>
    </message>
    <message>
        <source>%1, typically %2.</source>
        <translation>%1, üblich %2.</translation>
    </message>
    <message>
        <source>Tick what you have.</source>
        <translation>Abhaken, was vorhanden ist.</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>, ground of the cool side</source>
        <translation>, Boden der kühlen Seite</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre, wenn</translation>
    </message>
    <message>
        <source>The joint balance of heat and moisture, solved anew for the cover and the misting that are tried. Likely values; how wide the ranges are is taken from the plan as it is. Misting counts as spread over the day. Nothing in the plan changes until you take it, which is one step to undo.</source>
        <translation>Die gemeinsame Bilanz von Wärme und Feuchte, neu gelöst für die Abdeckung und die Sprühmenge, die ausprobiert werden. Es sind wahrscheinliche Werte; die Breite der Spannen stammt vom Plan, wie er ist. Das Sprühen gilt als über den Tag verteilt. Am Plan ändert sich nichts, bis der Versuch übernommen wird; das lässt sich in einem Schritt rückgängig machen.</translation>
    </message>
    <message>
        <source>A quarter of the top stays open for fresh air: cautious, our own.</source>
        <translation>Ein Viertel der Oberseite bleibt für frische Luft offen: vorsichtig gewählt, eigene Festlegung.</translation>
    </message>
    <message>
        <source>At a back %1 over the base, on %2, %3 from the left and %4 from the front.</source>
        <translation>An einem Rücken, %1 über der Bodenplatte; Standort: %2; %3 von links, %4 von vorn.</translation>
    </message>
    <message>
        <source>the bed</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>UV index at the basking place</source>
        <translation>UV-Index am Sonnenplatz</translation>
    </message>
    <message>
        <source>The strongest on a place of the animal&apos;s size under the basking lamp. From the distance table or the meter reading of each lamp, its beam, its age and the mesh; never from watts.</source>
        <translation>Der stärkste Wert auf einer Fläche von der Größe des Tieres unter der Sonnenplatzlampe. Aus der Abstandstabelle oder dem Messwert jeder Lampe, ihrem Lichtkegel, ihrem Alter und dem Gitter; nie aus der Wattzahl.</translation>
    </message>
    <message>
        <source>no need stated</source>
        <translation>kein Bedarf angegeben</translation>
    </message>
    <message>
        <source>Ferguson zone %1: %2. %3, by %4</source>
        <translation>Ferguson-Zone %1: %2. %3, nach %4</translation>
    </message>
    <message>
        <source>The most within reach</source>
        <translation>Höchstwert in Reichweite</translation>
    </message>
    <message>
        <source>The strongest at an animal&apos;s back on the bed and on everything it can stand on. Where a lamp&apos;s readings don&apos;t reach it is not known.</source>
        <translation>Der höchste Wert am Rücken eines Tieres, auf dem Bodengrund und auf allem, worauf es stehen kann. Wo die Messwerte einer Lampe nicht hinreichen, ist er nicht bekannt.</translation>
    </message>
    <message>
        <source>Floor without UV</source>
        <translation>Grundfläche ohne UV</translation>
    </message>
    <message>
        <source>The share of the floor where the index stays under a tenth, which a meter reads as none: under hides, under covers and beyond the light. The larger share counts what is not known as dark. Shade beside fittings is not counted.</source>
        <translation>Der Anteil der Grundfläche, auf dem der Index unter einem Zehntel bleibt, was ein Messgerät als null anzeigt: unter Verstecken, unter Abdeckungen und außerhalb des Lichts. Im größeren Anteil gilt als dunkel auch, was nicht bekannt ist. Schatten neben der Einrichtung zählt nicht mit.</translation>
    </message>
    <message>
        <source>Always a retreat without UV: Baines et al. 2016</source>
        <translation>Immer ein Rückzugsort ohne UV: Baines et al. 2016</translation>
    </message>
    <message>
        <source>Heights over the base at which the strongest UV of the basking place lies inside the target and nothing within reach passes its upper end, tried centimetre by centimetre.</source>
        <translation>Höhen über der Bodenplatte, bei denen das stärkste UV am Sonnenplatz im Zielbereich liegt und nichts in Reichweite über dessen oberes Ende hinausgeht; Zentimeter für Zentimeter durchprobiert.</translation>
    </message>
    <message>
        <source>Height of the lamp for its zone</source>
        <translation>Höhe der Lampe für ihre Zone</translation>
    </message>
    <message>
        <source>Height of %1 for its zone</source>
        <translation>Höhe von %1 für ihre Zone</translation>
    </message>
    <message>
        <source>The whole range of the index lies inside it there.</source>
        <translation>Dort liegt die ganze Spanne des Index im Zielbereich.</translation>
    </message>
    <message>
        <source>Only the likely index lies inside it there: the range is as wide.</source>
        <translation>Nur der wahrscheinliche Index liegt dort im Zielbereich; so breit ist die Spanne.</translation>
    </message>
    <message>
        <source>Nearest to %1</source>
        <translation>Geringster Abstand zu %1</translation>
    </message>
    <message>
        <source>From the lamp&apos;s face to the back of an animal on what it can stand on. Nearer than the safe distance even the upper end of its UV may pass the most that any animal was met in.</source>
        <translation>Von der Vorderseite der Lampe bis zum Rücken eines Tieres auf dem, worauf es stehen kann. Unterhalb des sicheren Abstands kann das obere Ende der UV-Spanne über dem höchsten Wert liegen, bei dem je ein Tier angetroffen wurde.</translation>
    </message>
    <message>
        <source>safe distance not known</source>
        <translation>sicherer Abstand nicht bekannt</translation>
    </message>
    <message>
        <source>UV index there: %1.</source>
        <translation>UV-Index dort: %1.</translation>
    </message>
    <message>
        <source>Its readings reach from %1 to %2.</source>
        <translation>Die Messwerte reichen von %1 bis %2.</translation>
    </message>
    <message>
        <source>Burning until the UV falls below the target</source>
        <translation>Brenndauer, bis das UV unter den Zielwert sinkt</translation>
    </message>
    <message>
        <source>What all its lamps lose for each thousand hours, by the sheet of their kind. A new reading with the hours burnt says more.</source>
        <translation>Was alle Lampen zusammen je tausend Stunden verlieren, nach dem Datenblatt ihrer Bauart. Ein neuer Messwert mit den Brennstunden sagt mehr.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>am %1</translation>
    </message>
    <message>
        <source>Earliest on %1, by the hours that it burns a day.</source>
        <translation>Frühestens am %1, nach den Brennstunden am Tag.</translation>
    </message>
    <message>
        <source>UV</source>
        <translation>UV</translation>
    </message>
    <message>
        <source>Too little is known of this box to try anything out.</source>
        <translation>Über dieses Terrarium ist zu wenig bekannt, um etwas auszuprobieren.</translation>
    </message>
    <message>
        <source>For this trial the balance found no solution.</source>
        <translation>Für diesen Versuch fand die Bilanz keine Lösung.</translation>
    </message>
    <message>
        <source>The top is no mesh: a cover would change nothing, so only misting can be tried.</source>
        <translation>Oben ist kein Gitter: Eine Abdeckung würde nichts ändern, daher lässt sich nur das Sprühen ausprobieren.</translation>
    </message>
    <message>
        <source>No cover keeps clear of the lamps, so only misting can be tried.</source>
        <translation>Keine Abdeckung hält genug Abstand zu den Lampen, daher lässt sich nur das Sprühen ausprobieren.</translation>
    </message>
    <message>
        <source>Ring: the plan. Dot: the trial. Hatched: target. Bar: range. Covers lie across the box from its ends, clear of what is hot, over %1 of the top at most.</source>
        <translation>Ring: der Plan. Punkt: der Versuch. Schraffiert: Zielwert. Balken: Spanne. Abdeckungen liegen von den Enden her quer über dem Terrarium, mit Abstand zu allem Heißen, auf höchstens %1 der Oberseite.</translation>
    </message>
    <message>
        <source>bed %1</source>
        <translation>Bodengrund %1</translation>
    </message>
    <message>
        <source>Floor, and the walls folded out around it; front below</source>
        <translation>Boden, die Wände ringsum ausgeklappt; vorn ist unten</translation>
    </message>
    <message>
        <source>Top, seen from above</source>
        <translation>Oberseite, von oben gesehen</translation>
    </message>
    <message>
        <source>Plan, seen from above; front below</source>
        <translation>Grundriss, von oben gesehen; vorn ist unten</translation>
    </message>
    <message>
        <source>Section, seen from the front</source>
        <translation>Schnitt, von vorn gesehen</translation>
    </message>
    <message>
        <source>floor and inner faces, likely</source>
        <translation>Boden und Innenflächen, wahrscheinlich</translation>
    </message>
    <message>
        <source>at ground level, likely</source>
        <translation>in Bodennähe, wahrscheinlich</translation>
    </message>
    <message>
        <source>middle %1 from the left, %2 from the front</source>
        <translation>Mitte %1 von links, %2 von vorn</translation>
    </message>
    <message>
        <source>%1 from the left, %2 from the front</source>
        <translation>%1 von links, %2 von vorn</translation>
    </message>
    <message>
        <source>; %1 × %2</source>
        <translation>; %1 × %2</translation>
    </message>
    <message>
        <source>; stands in: %1</source>
        <translation>; steht in: %1</translation>
    </message>
    <message>
        <source>condensation: %1, %2</source>
        <translation>Kondenswasser: %1, %2</translation>
    </message>
    <message>
        <source>condensation: coldest pane, %1</source>
        <translation>Kondenswasser: kälteste Scheibe, %1</translation>
    </message>
    <message>
        <source>at ground level, target %1</source>
        <translation>in Bodennähe, Zielwert %1</translation>
    </message>
    <message>
        <source>surface, by infrared</source>
        <translation>Oberfläche, mit Infrarotthermometer</translation>
    </message>
    <message>
        <source>ground level, shaded thermometer</source>
        <translation>Bodennähe, beschattetes Thermometer</translation>
    </message>
    <message>
        <source>felt by the back (operative)</source>
        <translation>am Rücken empfunden (operativ)</translation>
    </message>
    <message>
        <source>lamp light</source>
        <translation>Lampenlicht</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>upper air</source>
        <translation>obere Luft</translation>
    </message>
    <message>
        <source>UV index  %1</source>
        <translation>UV-Index  %1</translation>
    </message>
    <message>
        <source>at a back, over the base</source>
        <translation>an einem Rücken, über der Bodenplatte</translation>
    </message>
    <message>
        <source>inside the %1  none</source>
        <translation>innen (%1)  keiner</translation>
    </message>
    <message>
        <source>%1: open here</source>
        <translation>%1: hier offen</translation>
    </message>
    <message>
        <source>%1, inside</source>
        <translation>%1, innen</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>over the base</source>
        <translation>über der Bodenplatte</translation>
    </message>
    <message>
        <source>humidity at ground level, shaded</source>
        <translation>Luftfeuchte in Bodennähe, beschattet</translation>
    </message>
    <message>
        <source>temperature there</source>
        <translation>Temperatur dort</translation>
    </message>
    <message>
        <source>humidity of the lower air</source>
        <translation>Luftfeuchte der unteren Luft</translation>
    </message>
    <message>
        <source>dew point of the lower air</source>
        <translation>Taupunkt der unteren Luft</translation>
    </message>
    <message>
        <source>from before the last change</source>
        <translation>Stand vor der letzten Änderung</translation>
    </message>
    <message>
        <source>UVI %1</source>
        <translation>UVI %1</translation>
    </message>
    <message>
        <source>UVI not known</source>
        <translation>UVI nicht bekannt</translation>
    </message>
    <message>
        <source>basking place  %1</source>
        <translation>Sonnenplatz  %1</translation>
    </message>
    <message>
        <source>at an animal&apos;s back</source>
        <translation>am Rücken eines Tieres</translation>
    </message>
    <message>
        <source>nothing closed</source>
        <translation>nichts geschlossen</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Niedrig</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>My figure</source>
        <translation>Mein Betrag</translation>
    </message>
    <message>
        <source>To begin</source>
        <translation>Für den Anfang</translation>
    </message>
    <message>
        <source>Delivery, %1</source>
        <translation>Lieferung, %1</translation>
    </message>
    <message>
        <source>Tax on top, %1</source>
        <translation>Steuer zusätzlich, %1</translation>
    </message>
    <message>
        <source>Set aside for surprises</source>
        <translation>Reserve für Unvorhergesehenes</translation>
    </message>
    <message>
        <source>To begin, all together</source>
        <translation>Für den Anfang, insgesamt</translation>
    </message>
    <message>
        <source>Startup cost</source>
        <translation>Anschaffung</translation>
    </message>
    <message>
        <source>In a year</source>
        <translation>Im Jahr</translation>
    </message>
    <message>
        <source>In a year, all together</source>
        <translation>Im Jahr, insgesamt</translation>
    </message>
    <message>
        <source>Running cost</source>
        <translation>Laufende Kosten</translation>
    </message>
    <message>
        <source>What wears out counts with its price spread evenly over its life.</source>
        <translation>Was sich abnutzt, zählt mit seinem Preis, gleichmäßig auf seine Nutzungsdauer verteilt.</translation>
    </message>
    <message>
        <source>Electricity is not in it: price of a kWh</source>
        <translation>Strom ist nicht enthalten: Preis je kWh</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Done on</source>
        <translation>Erledigt am</translation>
    </message>
    <message>
        <source>%1 (its UV fades)</source>
        <translation>%1 (das UV lässt nach)</translation>
    </message>
    <message>
        <source>To replace in the first year</source>
        <translation>Im ersten Jahr zu ersetzen</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Spent in it</source>
        <translation>Ausgaben</translation>
    </message>
    <message>
        <source>So far, low</source>
        <translation>Bisher, niedrig</translation>
    </message>
    <message>
        <source>So far, typical</source>
        <translation>Bisher, üblich</translation>
    </message>
    <message>
        <source>So far, high</source>
        <translation>Bisher, hoch</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>Over the years</source>
        <translation>Über die Jahre</translation>
    </message>
    <message>
        <source>Net present cost at typical prices: %1.</source>
        <translation>Barwert der Kosten zu üblichen Preisen: %1.</translation>
    </message>
    <message>
        <source>That is as much as an even %1 a year.</source>
        <translation>Das entspricht gleichbleibend %1 im Jahr.</translation>
    </message>
    <message>
        <source>Budget sheet</source>
        <translation>Budgetblatt</translation>
    </message>
    <message>
        <source>The prices are invented for illustration. Write in your own.</source>
        <translation>Die Preise sind erfundene Beispiele. Die eigenen daneben eintragen.</translation>
    </message>
    <message>
        <source>All amounts in %1, prices of %2.</source>
        <translation>Alle Beträge in %1, Preise vom %2.</translation>
    </message>
    <message>
        <source>Without a price, to be added by hand</source>
        <translation>Ohne Preis, von Hand zu ergänzen</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>prices of %1</source>
        <translation>Preise vom %1</translation>
    </message>
    <message>
        <source>For: %1</source>
        <translation>Für: %1</translation>
    </message>
    <message>
        <source>Danger: mend this before anything is switched on</source>
        <translation>Gefahr: beheben, bevor irgendetwas eingeschaltet wird</translation>
    </message>
    <message>
        <source>Not stated yet: please fill in</source>
        <translation>Noch nicht angegeben: bitte eintragen</translation>
    </message>
    <message>
        <source>Predictions: run the finished enclosure empty for at least a week and read several thermometers before an animal moves in.</source>
        <translation>Vorhersagen: Das fertige Terrarium mindestens eine Woche leer laufen lassen und mehrere Thermometer ablesen, bevor ein Tier einzieht.</translation>
    </message>
    <message>
        <source>Fire: keep lamps and heaters clear of what burns, guarded, in heat-rated holders. Fit a smoke alarm.</source>
        <translation>Feuer: Lampen und Heizer von allem Brennbaren fernhalten, mit Schutzkorb, in hitzefesten Fassungen. Einen Rauchmelder anbringen.</translation>
    </message>
    <message>
        <source>Mains: use a residual-current device and drip loops, keep strips above the water, never chain them. Electrical work is for a licensed electrician; local codes decide.</source>
        <translation>Strom: FI-Schutzschalter (RCD) und Tropfschlaufen verwenden, Leisten oberhalb des Wassers anbringen, nie hintereinanderstecken. Elektroarbeiten sind Sache einer Elektrofachkraft; es gelten die örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Weight: stand and floor have to be rated for the load. This is no structural approval.</source>
        <translation>Gewicht: Gestell und Fußboden müssen für die Last ausgelegt sein. Dies ist kein statischer Nachweis.</translation>
    </message>
    <message>
        <source>Health: ask a reptile vet about illness and before any cool season. Wash hands after handling: reptiles and amphibians can carry Salmonella.</source>
        <translation>Gesundheit: bei Krankheit und vor jeder kühlen Zeit einen reptilienkundigen Tierarzt fragen. Nach jedem Kontakt die Hände waschen: Reptilien und Amphibien können Salmonellen übertragen.</translation>
    </message>
    <message>
        <source>Law: keeping or passing on a species may need papers. Ask your local authority.</source>
        <translation>Recht: Haltung oder Weitergabe einer Art können Papiere erfordern. Bei der zuständigen Behörde nachfragen.</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be written: %2.</source>
        <translation>„%1“ lässt sich nicht schreiben: %2.</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artikel</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Pack.</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Je Stück</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Bezahlt</translation>
    </message>
    <message>
        <source>Shopping sheet</source>
        <translation>Einkaufsblatt</translation>
    </message>
    <message>
        <source>Prices in %1, typical, as of %2.</source>
        <translation>Preise in %1, übliche, Stand %2.</translation>
    </message>
    <message>
        <source>This animal must not be cooled: %1. Keep it warm and fed through the winter. There is no plan for it.</source>
        <translation>Dieses Tier darf nicht kühl gestellt werden: %1. Den Winter über warm halten und füttern. Einen Plan dafür gibt es nicht.</translation>
    </message>
    <message>
        <source>No rest is planned: the dates that are stated are over or not of the calendar.</source>
        <translation>Es wird keine Ruhe geplant: Die angegebenen Tage sind vorbei oder stehen nicht im Kalender.</translation>
    </message>
    <message>
        <source>Whether this animal may be cooled is not known: %1. Until it is, no rest is planned.</source>
        <translation>Ob dieses Tier kühl gestellt werden darf, ist nicht bekannt: %1. Bis dahin wird keine Ruhe geplant.</translation>
    </message>
    <message>
        <source>Before it</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>A reptile vet sees the animal, with a faecal sample, within the eight weeks before the first day without food. An animal that is ill, thin or in its first winter stays warm.</source>
        <translation>Ein reptilienkundiger Tierarzt untersucht das Tier samt einer Kotprobe innerhalb der acht Wochen vor dem ersten Tag ohne Futter. Ein Tier, das krank oder mager ist oder seinen ersten Winter erlebt, bleibt warm.</translation>
    </message>
    <message>
        <source>Vet&apos;s check stated: %1.</source>
        <translation>Angegebene Untersuchung beim Tierarzt: %1.</translation>
    </message>
    <message>
        <source>Checked on, by</source>
        <translation>Untersucht am, von</translation>
    </message>
    <message>
        <source>Vet&apos;s telephone</source>
        <translation>Telefon des Tierarztes</translation>
    </message>
    <message>
        <source>Week of</source>
        <translation>Woche ab</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>By its end</source>
        <translation>Am Ende</translation>
    </message>
    <message>
        <source>Light and heat</source>
        <translation>Licht und Wärme</translation>
    </message>
    <message>
        <source>Lowest and highest read</source>
        <translation>Tiefst- und Höchstwert</translation>
    </message>
    <message>
        <source>Week by week</source>
        <translation>Woche für Woche</translation>
    </message>
    <message>
        <source>%1 — %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Weigh on</source>
        <translation>Wiegen am</translation>
    </message>
    <message>
        <source>Ask a vet below</source>
        <translation>Tierarzt unter</translation>
    </message>
    <message>
        <source>End the rest below</source>
        <translation>Ruhe beenden unter</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Gewichte</translation>
    </message>
    <message>
        <source>For an animal of %1 when the cold begins. If it weighs something else on that day, count anew: end the rest at a loss of %2, ask a vet at more than %3 a month. End it too if the animal is wet, wakes, or passes urine.</source>
        <translation>Für ein Tier, das zu Beginn der Kälte %1 wiegt. Wiegt es an diesem Tag etwas anderes, neu rechnen: bei einem Verlust von %2 die Ruhe beenden, bei mehr als %3 im Monat einen Tierarzt fragen. Die Ruhe auch beenden, wenn das Tier nass ist, aufwacht oder Harn absetzt.</translation>
    </message>
    <message>
        <source>Weights: %1</source>
        <translation>Gewichte: %1</translation>
    </message>
    <message>
        <source>Temperatures: %1</source>
        <translation>Temperaturen: %1</translation>
    </message>
    <message>
        <source>Winter rest</source>
        <translation>Winterruhe</translation>
    </message>
    <message>
        <source>%1 (%2), %3: %4</source>
        <translation>%1 (%2), %3: %4</translation>
    </message>
    <message>
        <source>No winter rest is asked for in this plan.</source>
        <translation>In diesem Plan wird keine Winterruhe verlangt.</translation>
    </message>
    <message>
        <source>%1, night</source>
        <translation>%1, nachts</translation>
    </message>
    <message>
        <source>Read with</source>
        <translation>Ablesen mit</translation>
    </message>
    <message>
        <source>Should be</source>
        <translation>Soll</translation>
    </message>
    <message>
        <source>My reading</source>
        <translation>Mein Messwert</translation>
    </message>
    <message>
        <source>Humidity, cool side</source>
        <translation>Luftfeuchte, kühle Seite</translation>
    </message>
    <message>
        <source>Hygrometer at ground level</source>
        <translation>Hygrometer in Bodennähe</translation>
    </message>
    <message>
        <source>Thermostat</source>
        <translation>Thermostat</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Lampen</translation>
    </message>
    <message>
        <source>Timer</source>
        <translation>Zeitschaltuhr</translation>
    </message>
    <message>
        <source>Lamps on and off</source>
        <translation>Lampen an und aus</translation>
    </message>
    <message>
        <source>Set-point of %1</source>
        <translation>Sollwert (%1)</translation>
    </message>
    <message>
        <source>Every day</source>
        <translation>Jeden Tag</translation>
    </message>
    <message>
        <source>Every week, and at intervals of some days</source>
        <translation>Jede Woche und alle paar Tage</translation>
    </message>
    <message>
        <source>Every month</source>
        <translation>Jeden Monat</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Last done on</source>
        <translation>Zuletzt erledigt am</translation>
    </message>
    <message>
        <source>When the power fails</source>
        <translation>Bei Stromausfall</translation>
    </message>
    <message>
        <source>%1: hours until it is too cold, not known</source>
        <translation>%1: nach wie vielen Stunden es zu kalt ist, ist nicht bekannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>When to call a reptile vet</source>
        <translation>Wann ein reptilienkundiger Tierarzt nötig ist</translation>
    </message>
    <message>
        <source>The same day: breathing with an open mouth or with bubbles; a prolapse; a burn; a leg that bears no weight; swollen eyes in an animal that hardly moves; a soft jaw or trembling; bleeding; a fall on the shell.</source>
        <translation>Noch am selben Tag: Atmen mit offenem Maul oder mit Bläschen; ein Vorfall an der Kloake; eine Verbrennung; ein Bein, das nicht belastet wird; geschwollene Augen bei einem Tier, das sich kaum bewegt; ein weicher Kiefer oder Zittern; eine Blutung; ein Sturz auf den Panzer.</translation>
    </message>
    <message>
        <source>Within days: no food for two weeks (a snake outside its shed: four to six); a tenth of the weight lost; shed skin left on eyes or toes; watery droppings for two days; a shell that softens.</source>
        <translation>Innerhalb weniger Tage: seit zwei Wochen nichts gefressen (bei einer Schlange außerhalb der Häutung vier bis sechs); ein Zehntel des Gewichts verloren; Häutungsreste an Augen oder Zehen; seit zwei Tagen wässriger Kot; ein Panzer, der weich wird.</translation>
    </message>
    <message>
        <source>Reptile vet, telephone</source>
        <translation>Reptilienkundiger Tierarzt, Telefon</translation>
    </message>
    <message>
        <source>At night and on holidays</source>
        <translation>Nachts und an Feiertagen</translation>
    </message>
    <message>
        <source>Who looks after them when I am away</source>
        <translation>Wer die Tiere versorgt, wenn ich weg bin</translation>
    </message>
    <message>
        <source>Running card</source>
        <translation>Pflegekarte</translation>
    </message>
    <message>
        <source>For the whole room</source>
        <translation>Für den ganzen Raum</translation>
    </message>
    <message>
        <source>%1; at the earliest on %2</source>
        <translation>%1; frühestens am %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month and year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>On the</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>Every month, from %1 on</source>
        <translation>Jeden Monat, ab %1</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>On single days</source>
        <translation>An einzelnen Tagen</translation>
    </message>
    <message>
        <source>The year</source>
        <translation>Das Jahr</translation>
    </message>
    <message>
        <source>What is done every day or every week stands on the running card. Replacements go by usual lives: sooner where a lamp fails, a meter reads too little or a bed smells. What is done on a day that a month lacks is done on its last.</source>
        <translation>Was jeden Tag oder jede Woche zu tun ist, steht auf der Pflegekarte. Ersetzt wird nach der üblichen Lebensdauer: früher, wenn eine Lampe ausfällt, ein Messgerät zu wenig anzeigt oder ein Bodengrund riecht. Was auf einen Tag fällt, den ein Monat nicht hat, wird an dessen letztem Tag erledigt.</translation>
    </message>
    <message>
        <source>see the year</source>
        <translation>siehe Jahr</translation>
    </message>
    <message>
        <source>Which sheets</source>
        <translation>Welche Blätter</translation>
    </message>
    <message>
        <source>Sheets to print or to save:</source>
        <translation>Zu druckende oder zu speichernde Blätter:</translation>
    </message>
    <message>
        <source>Scale 1:%1 when printed at 100% (not “fit to page”): the bar of %2 is then %3 long on the paper. Covers are hatched falling, mats crossed; lamps seen from above have a cross.</source>
        <translation>Maßstab 1:%1 bei Druck mit 100 % (nicht „An Seite anpassen“): Der Balken von %2 ist dann auf dem Papier %3 lang. Abdeckungen sind fallend schraffiert, Heizmatten gekreuzt; von oben gesehene Lampen haben ein Kreuz.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, turned left by %2</source>
        <translation>%1, um %2 nach links gedreht</translation>
    </message>
    <message>
        <source>sunk in</source>
        <translation>eingelassen</translation>
    </message>
    <message>
        <source>%1 long</source>
        <translation>%1 lang</translation>
    </message>
    <message>
        <source>Walls: %1</source>
        <translation>Wände: %1</translation>
    </message>
    <message>
        <source>Base: %1</source>
        <translation>Bodenplatte: %1</translation>
    </message>
    <message>
        <source>Top: %1</source>
        <translation>Oben: %1</translation>
    </message>
    <message>
        <source>%1 free</source>
        <translation>%1 frei</translation>
    </message>
    <message>
        <source>%1, %2 deep at the left and %3 at the right once settled</source>
        <translation>%1, gesetzt links %2 und rechts %3 hoch</translation>
    </message>
    <message>
        <source>%1, %2 deep once settled</source>
        <translation>%1, gesetzt %2 hoch</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Size or amount</source>
        <translation>Größe oder Menge</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Terrarium</translation>
    </message>
    <message>
        <source>Equipment and covers</source>
        <translation>Technik und Abdeckungen</translation>
    </message>
    <message>
        <source>Cover: %1</source>
        <translation>Abdeckung: %1</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberseite</translation>
    </message>
    <message>
        <source>Bed and fittings</source>
        <translation>Bodengrund und Einrichtung</translation>
    </message>
    <message>
        <source>Parts, and what goes where</source>
        <translation>Die Teile und ihre Plätze</translation>
    </message>
    <message>
        <source>Inside; lamps, heaters, panels: their middle and face, all else: left front corner.</source>
        <translation>Innenmaße; bei Lampen, Heizern und Paneelen bis zur Mitte und zur Abstrahlfläche, sonst bis zur linken vorderen Ecke.</translation>
    </message>
    <message>
        <source>Strips</source>
        <translation>Steckdosenleisten</translation>
    </message>
    <message>
        <source>%1: %2, %3 timed and %4 always-on outlets used: %5.</source>
        <translation>%1: %2, belegt sind %3 geschaltete Dosen und %4 mit Dauerstrom: %5.</translation>
    </message>
    <message>
        <source>Heat: nothing that burns within a lamp&apos;s clearance, and no towel under a lamp. Guards where an animal could touch. Fit a smoke alarm.</source>
        <translation>Hitze: nichts Brennbares innerhalb des Mindestabstands einer Lampe und kein Handtuch unter einer Lampe. Schutzkörbe, wo ein Tier herankommt. Einen Rauchmelder anbringen.</translation>
    </message>
    <message>
        <source>Mains and water: a residual-current device, drip loops, strips above the water and fixed, never one strip in another. Pull the plug before you reach in. Fixed wiring is for a licensed electrician; local codes decide.</source>
        <translation>Strom und Wasser: FI-Schutzschalter (RCD), Tropfschlaufen, Steckdosenleisten befestigt und oberhalb des Wassers, nie eine Leiste in einer anderen. Vor jedem Hineingreifen den Stecker ziehen. Feste Leitungen sind Sache einer Elektrofachkraft; es gelten die örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Load: stand and floor have to be rated for the filled box. This is no structural approval.</source>
        <translation>Last: Gestell und Boden müssen das gefüllte Terrarium tragen können. Dies ist kein statischer Nachweis.</translation>
    </message>
    <message>
        <source>Stand %1: what it is rated for is not stated. Ask its maker.</source>
        <translation>Gestell %1: Die Tragkraft ist nicht angegeben. Beim Hersteller erfragen.</translation>
    </message>
    <message>
        <source>thermostat at %1; probe: %2</source>
        <translation>Thermostat auf %1; Fühler: %2</translation>
    </message>
    <message>
        <source>thermostat at %1; probe %2 from the left, %3 from the front, %4 over the base</source>
        <translation>Thermostat auf %1; Fühler %2 von links, %3 von vorn, %4 über der Bodenplatte</translation>
    </message>
    <message>
        <source>dimmer at %1</source>
        <translation>Dimmer auf %1</translation>
    </message>
    <message>
        <source>Timer: on at, off at</source>
        <translation>Zeitschaltuhr: an um, aus um</translation>
    </message>
    <message>
        <source>Timer: on at %1, off at %2, moved through the year with the day outside.</source>
        <translation>Zeitschaltuhr: an um %1, aus um %2, im Jahreslauf dem Tag draußen nachgestellt.</translation>
    </message>
    <message>
        <source>Timer: on at %1, off at %2.</source>
        <translation>Zeitschaltuhr: an um %1, aus um %2.</translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>Nothing with a plug is planned.</source>
        <translation>Nichts mit Stecker ist geplant.</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Strip, outlet</source>
        <translation>Leiste, Dose</translation>
    </message>
    <message>
        <source>Control and set-point</source>
        <translation>Regelung und Sollwert</translation>
    </message>
    <message>
        <source>“Clear”: the distance that each keeps from all that burns.</source>
        <translation>„Abstand“: so weit muss jedes Gerät von allem Brennbaren entfernt bleiben.</translation>
    </message>
    <message>
        <source>Let paint, varnish and sealant cure as their makers say, until nothing smells. Take off sharp edges.</source>
        <translation>Farbe, Lack und Dichtstoff nach Herstellerangabe aushärten lassen, bis nichts mehr riecht. Scharfe Kanten brechen.</translation>
    </message>
    <message>
        <source>Set the empty box level on its stand. Try doors and lid: they open, and they lock.</source>
        <translation>Das leere Terrarium waagerecht auf sein Gestell stellen. Türen und Deckel probieren: Sie öffnen sich, und sie schließen ab.</translation>
    </message>
    <message>
        <source>Fix the mat outside, its whole face against the pane, and leave the gap below it free.</source>
        <translation>Die Heizmatte außen anbringen, vollflächig an der Scheibe, und den Spalt darunter frei lassen.</translation>
    </message>
    <message>
        <source>Fix linings and vents. Leave no gap that an animal gets into.</source>
        <translation>Verkleidungen und Lüftungen befestigen. Keinen Spalt lassen, in den ein Tier gerät.</translation>
    </message>
    <message>
        <source>Lay the mat on the base, its cable led out where nothing digs.</source>
        <translation>Die Heizmatte auf die Bodenplatte legen und ihr Kabel dort herausführen, wo nichts gräbt.</translation>
    </message>
    <message>
        <source>Stand heavy rocks and logs on the base or on blocks, not on loose bed: nothing may sink or roll.</source>
        <translation>Schwere Steine und Stämme auf die Bodenplatte oder auf Klötze stellen, nicht auf losen Bodengrund: Nichts darf einsinken oder rollen.</translation>
    </message>
    <message>
        <source>Hang lamps and heaters by their brackets, never by the cable, guarded, at the heights above. Measure each clearance.</source>
        <translation>Lampen und Heizer an ihren Halterungen aufhängen, nie am Kabel, mit Schutzkorb, in den Höhen von oben. Jeden Abstand nachmessen.</translation>
    </message>
    <message>
        <source>Fill in the bed layer by layer, damp it as planned, and let it settle.</source>
        <translation>Den Bodengrund lagenweise einfüllen, wie geplant anfeuchten und sich setzen lassen.</translation>
    </message>
    <message>
        <source>Set in the bowl to its rim, then hides, plants and the rest.</source>
        <translation>Die Wasserschale bis zum Rand einlassen, dann Verstecke, Pflanzen und das Übrige einsetzen.</translation>
    </message>
    <message>
        <source>Fix probes and thermometers where they are drawn or listed, so that they can&apos;t be moved.</source>
        <translation>Fühler und Thermometer dort befestigen, wo sie gezeichnet oder aufgeführt sind, sodass sie sich nicht verschieben lassen.</translation>
    </message>
    <message>
        <source>Lay on the covers, clear of every lamp.</source>
        <translation>Die Abdeckungen auflegen, mit Abstand zu jeder Lampe.</translation>
    </message>
    <message>
        <source>Plug in as listed, timed on the timer, the rest always on. Press the test button of the residual-current device: it trips.</source>
        <translation>Einstecken wie aufgeführt: Geschaltetes an die Zeitschaltuhr, alles andere an Dauerstrom. Die Prüftaste des FI-Schutzschalters (RCD) drücken: Er löst aus.</translation>
    </message>
    <message>
        <source>Switch on one device after the other, and see that each does what it should.</source>
        <translation>Ein Gerät nach dem anderen einschalten und nachsehen, ob jedes tut, was es soll.</translation>
    </message>
    <message>
        <source>Run it empty with the proving sheet.</source>
        <translation>Leer laufen lassen, mit dem Probelaufblatt.</translation>
    </message>
    <message>
        <source>Order of assembly</source>
        <translation>Reihenfolge beim Aufbau</translation>
    </message>
    <message>
        <source>Look at animals and thermometers, spot-clean</source>
        <translation>Nach Tieren und Thermometern sehen, Kot entfernen</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Füttern</translation>
    </message>
    <message>
        <source>Change the water, scrub the bowl</source>
        <translation>Wasser wechseln, Schale ausbürsten</translation>
    </message>
    <message>
        <source>Mist by hand</source>
        <translation>Von Hand sprühen</translation>
    </message>
    <message>
        <source>Weekly: weigh, clean, look over lamps, locks</source>
        <translation>Wöchentlich: wiegen, reinigen, Lampen und Schlösser kontrollieren</translation>
    </message>
    <message>
        <source>Monthly: disinfect, exchange part of the bed</source>
        <translation>Monatlich: desinfizieren, einen Teil des Bodengrunds tauschen</translation>
    </message>
    <message>
        <source>%1: outside %2 × %3 × %4, without lid and lamps. A door has to be clear by more than %5 one way and %6 the other; to turn it on end the ceiling has to be over %7.</source>
        <translation>%1: außen %2 × %3 × %4, ohne Deckel und Lampen. Eine Tür muss im Lichten in der einen Richtung mehr als %5 und in der anderen mehr als %6 messen; zum Hochkantstellen muss die Decke höher als %7 sein.</translation>
    </message>
    <message>
        <source>%1: outside, length × width × height, to be measured (inside %2 × %3 × %4)</source>
        <translation>%1: außen, Länge × Breite × Höhe, noch zu messen (innen %2 × %3 × %4)</translation>
    </message>
    <message>
        <source>%1: empty about %2, by its materials; filled %3. Carry it empty only, by two people or more.</source>
        <translation>%1: leer etwa %2, nach den Materialien gerechnet; gefüllt %3. Nur leer tragen, mindestens zu zweit.</translation>
    </message>
    <message>
        <source>%1: weight empty, to be asked or weighed</source>
        <translation>%1: Leergewicht, zu erfragen oder zu wiegen</translation>
    </message>
    <message>
        <source>Hours of care a week</source>
        <translation>Pflegestunden in der Woche</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>Times a week</source>
        <translation>Mal je Woche</translation>
    </message>
    <message>
        <source>Likely</source>
        <translation>Wahrscheinlich</translation>
    </message>
    <message>
        <source>Hours a week, all together</source>
        <translation>Stunden je Woche, insgesamt</translation>
    </message>
    <message>
        <source>An estimate: water and misting as planned, the rest as keepers commonly do it, times bracketed minutes (common practice, no source), the quick with the quick and the slow with the slow. Shopping and visits to a vet are not in it.</source>
        <translation>Eine Schätzung: Wasser und Sprühen wie geplant, das Übrige so oft, wie Halter es üblicherweise tun, mal Minuten als Spanne (gängige Praxis, ohne Quelle), schnell mit schnell und langsam mit langsam gerechnet. Einkäufe und Tierarztbesuche sind nicht enthalten.</translation>
    </message>
    <message>
        <source>Hours a week that I have, and who stands in for me</source>
        <translation>Stunden je Woche, die ich habe, und wer mich vertritt</translation>
    </message>
    <message>
        <source>Space beside the box: quarantine and eggs</source>
        <translation>Platz neben dem Terrarium: Quarantäne und Eier</translation>
    </message>
    <message>
        <source>That takes a second, simple heated box in another room, with tools of its own, served last.</source>
        <translation>Dafür braucht es ein zweites, einfaches, beheiztes Terrarium in einem anderen Raum, mit eigenem Werkzeug, das zuletzt versorgt wird.</translation>
    </message>
    <message>
        <source>Where it stands, and its size</source>
        <translation>Wo es steht, und seine Größe</translation>
    </message>
    <message>
        <source>%1: a female may lay eggs, even when she lives alone. The bed is %2 deep at most. Depth and place she needs, by a vet or breeder</source>
        <translation>%1: Ein Weibchen kann Eier legen, auch wenn es allein lebt. Der Bodengrund ist höchstens %2 tief. Nötige Tiefe und Stelle, laut Tierarzt oder Züchter</translation>
    </message>
    <message>
        <source>Through the door and up the stairs</source>
        <translation>Durch die Tür und die Treppe hinauf</translation>
    </message>
    <message>
        <source>Narrowest door, clear</source>
        <translation>Engste Tür, lichte Weite</translation>
    </message>
    <message>
        <source>Stairs, lift, corner, clear</source>
        <translation>Treppe, Aufzug, Ecke, lichte Weite</translation>
    </message>
    <message>
        <source>Who carries</source>
        <translation>Wer trägt</translation>
    </message>
    <message>
        <source>One animal, hygiene and law</source>
        <translation>Einzeltier, Hygiene und Recht</translation>
    </message>
    <message>
        <source>One animal is a valid choice. A second one needs more floor, hides and quarantine, and a second box at hand should the two not get on.</source>
        <translation>Ein einzelnes Tier ist eine gute Wahl. Ein zweites braucht mehr Fläche, Verstecke und eine Quarantäne, dazu ein zweites Terrarium, falls die beiden sich nicht vertragen.</translation>
    </message>
    <message>
        <source>Under 5, over 65, ill here</source>
        <translation>Hier unter 5, über 65, krank</translation>
    </message>
    <message>
        <source>Papers asked of, on</source>
        <translation>Papiere erfragt bei, am</translation>
    </message>
    <message>
        <source>Grown: length of the shell</source>
        <translation>Ausgewachsen: Panzerlänge</translation>
    </message>
    <message>
        <source>Grown: length from snout to vent</source>
        <translation>Ausgewachsen: Kopf-Rumpf-Länge</translation>
    </message>
    <message>
        <source>Grown: whole length</source>
        <translation>Ausgewachsen: Gesamtlänge</translation>
    </message>
    <message>
        <source>How long, and how large</source>
        <translation>Wie lange und wie groß</translation>
    </message>
    <message>
        <source>Of the species</source>
        <translation>Zur Art</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennzahl</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>Life span</source>
        <translation>Lebensdauer</translation>
    </message>
    <message>
        <source>Grown: weight</source>
        <translation>Ausgewachsen: Gewicht</translation>
    </message>
    <message>
        <source>No animal is in the plan yet. Species</source>
        <translation>Noch ist kein Tier im Plan. Art</translation>
    </message>
    <message>
        <source>Who takes it over if I can&apos;t keep it so long</source>
        <translation>Wer es übernimmt, wenn ich es nicht so lange halten kann</translation>
    </message>
    <message>
        <source>not foreseen, or not known</source>
        <translation>nicht abzusehen oder nicht bekannt</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>in %1 at the earliest</source>
        <translation>reicht noch mindestens %1</translation>
    </message>
    <message>
        <source>Floor space, now and grown</source>
        <translation>Fläche, jetzt und ausgewachsen</translation>
    </message>
    <message>
        <source>Enclosure</source>
        <translation>Terrarium</translation>
    </message>
    <message>
        <source>Its floor</source>
        <translation>Vorhandene Fläche</translation>
    </message>
    <message>
        <source>Asked now</source>
        <translation>Jetzt verlangt</translation>
    </message>
    <message>
        <source>Asked grown</source>
        <translation>Später verlangt</translation>
    </message>
    <message>
        <source>Outgrown</source>
        <translation>Zu klein</translation>
    </message>
    <message>
        <source>%1: “%2” (%3)</source>
        <translation>%1: „%2“ (%3)</translation>
    </message>
    <message>
        <source>The strictest rule that applies here decides. %1.</source>
        <translation>Es entscheidet die strengste Regel, die hier zutrifft. %1.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>What it costs</source>
        <translation>Was es kostet</translation>
    </message>
    <message>
        <source>Not known from the price list in use. Ten years</source>
        <translation>Aus der verwendeten Preisliste nicht bekannt. Zehn Jahre</translation>
    </message>
    <message>
        <source>In %1</source>
        <translation>In %1</translation>
    </message>
    <message>
        <source>Ten years, all together</source>
        <translation>Zehn Jahre, insgesamt</translation>
    </message>
    <message>
        <source>Ten years as the plan&apos;s budget has them, at today&apos;s prices.</source>
        <translation>Zehn Jahre, wie sie im Budget des Plans stehen, zu heutigen Preisen.</translation>
    </message>
    <message>
        <source>Ten years: to begin, and ten times a year, at today&apos;s prices; nothing discounted.</source>
        <translation>Zehn Jahre: die Anschaffung und zehnmal ein Jahr, zu heutigen Preisen, nichts abgezinst.</translation>
    </message>
    <message>
        <source>What has no price yet is not in it: %1 lines of the order.</source>
        <translation>Was noch keinen Preis hat, ist nicht enthalten: %1 Zeilen der Bestellung.</translation>
    </message>
    <message>
        <source>For the rest of the longest life (%1%2): %3, in round figures.</source>
        <translation>Für den Rest des längsten Lebens (%1%2): rund %3.</translation>
    </message>
    <message>
        <source> or longer</source>
        <translation> oder länger</translation>
    </message>
    <message>
        <source>Set aside for a vet in an emergency</source>
        <translation>Rücklage für einen Notfall beim Tierarzt</translation>
    </message>
    <message>
        <source>The decision</source>
        <translation>Die Entscheidung</translation>
    </message>
    <message>
        <source>Not keeping one, or waiting until place, money and time are there, is a good decision too.</source>
        <translation>Kein Tier zu halten oder zu warten, bis Platz, Geld und Zeit da sind, ist auch eine gute Entscheidung.</translation>
    </message>
    <message>
        <source>Yes, no, later</source>
        <translation>Ja, nein, später</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Entschieden von</translation>
    </message>
    <message>
        <source>To be read before anything is bought. What is not known is a line to fill in.</source>
        <translation>Zu lesen, bevor etwas gekauft wird. Was nicht bekannt ist, ist eine Zeile zum Ausfüllen.</translation>
    </message>
    <message>
        <source>Fresh water, bowl scrubbed; times a day: %1, about %2 each</source>
        <translation>Frisches Wasser, Schale ausgebürstet; am Tag: %1-mal, jeweils etwa %2</translation>
    </message>
    <message>
        <source>Fresh water, bowl scrubbed; times a day: %1</source>
        <translation>Frisches Wasser, Schale ausgebürstet; am Tag: %1-mal</translation>
    </message>
    <message>
        <source>The animal is there and well. Lamps on and off as below</source>
        <translation>Das Tier ist da und wohlauf. Lampen an und aus wie unten</translation>
    </message>
    <message>
        <source>All %1 animals are there and well. Lamps on and off as below</source>
        <translation>Alle %1 Tiere sind da und wohlauf. Lampen an und aus wie unten</translation>
    </message>
    <message>
        <source>Thermometers read what the table says</source>
        <translation>Die Thermometer zeigen, was in der Tabelle steht</translation>
    </message>
    <message>
        <source>Mist, or see that the mister did: %1 a day</source>
        <translation>Gesprüht, oder die Beregnungsanlage hat gesprüht: %1 pro Tag</translation>
    </message>
    <message>
        <source>Food as portioned; the rest out the same day</source>
        <translation>Futter wie vorbereitet; Reste noch am selben Tag heraus</translation>
    </message>
    <message>
        <source>Droppings out, doors locked, hands washed</source>
        <translation>Kot entfernt, Türen abgeschlossen, Hände gewaschen</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>So</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>Which days</source>
        <translation>An welchen Tagen</translation>
    </message>
    <message>
        <source>Where food and spare lamps lie</source>
        <translation>Wo Futter und Ersatzlampen liegen</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>By day</source>
        <translation>Am Tag</translation>
    </message>
    <message>
        <source>At night</source>
        <translation>In der Nacht</translation>
    </message>
    <message>
        <source>lamps on %1, off %2</source>
        <translation>Lampen an um %1, aus um %2</translation>
    </message>
    <message>
        <source>%1: thermostat at %2</source>
        <translation>%1: Thermostat auf %2</translation>
    </message>
    <message>
        <source>%1: dimmer at %2</source>
        <translation>%1: Dimmer auf %2</translation>
    </message>
    <message>
        <source>Set, and not to be turned: %1.</source>
        <translation>Eingestellt und nicht zu verstellen: %1.</translation>
    </message>
    <message>
        <source>%1, room at %2</source>
        <translation>%1, Raum bei %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Safe for how many hours: not known, ask the keeper</source>
        <translation>Wie viele Stunden es gut geht, ist nicht bekannt: den Halter fragen</translation>
    </message>
    <message>
        <source>When something fails</source>
        <translation>Wenn etwas ausfällt</translation>
    </message>
    <message>
        <source>Keep it shut, lamps and heaters off at the plug, blankets round the box; off with them before the power comes on. Bottles of warm water in cloth at one side. Never a flame.</source>
        <translation>Geschlossen halten, Lampen und Heizer ausstecken, Decken um das Terrarium legen; diese wieder abnehmen, bevor der Strom zurückkommt. Flaschen mit warmem Wasser, in Tücher gewickelt, auf eine Seite. Niemals offenes Feuer.</translation>
    </message>
    <message>
        <source>Plug out, let it cool, put in the spare of the same kind and power. No spare: a warm room.</source>
        <translation>Ausstecken, abkühlen lassen, Ersatz gleicher Art und Leistung einsetzen. Kein Ersatz da: für einen warmen Raum sorgen.</translation>
    </message>
    <message>
        <source>Too hot, smoke, or something trips: plug out, open up, call the keeper. Don&apos;t reach into wet wiring.</source>
        <translation>Zu heiß, Rauch, oder eine Sicherung löst aus: ausstecken, öffnen, den Halter anrufen. Nicht in nasse Kabel und Stecker greifen.</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Wen anrufen</translation>
    </message>
    <message>
        <source>A vet at once: gaping or bubbling breath, bleeding, burns, something hanging out behind, tremor, limp, a fall. Within a day: swollen eyes, watery droppings for two days, not eating or moving as the keeper said. Don&apos;t treat it yourself.</source>
        <translation>Sofort zum Tierarzt: Atmen mit offenem Maul oder mit Bläschen, Blutung, Verbrennung, ein Vorfall an der Kloake, Zittern, Lahmen, ein Sturz. Innerhalb eines Tages: geschwollene Augen, seit zwei Tagen wässriger Kot, frisst oder bewegt sich nicht so, wie es der Halter beschrieben hat. Nicht selbst behandeln.</translation>
    </message>
    <message>
        <source>Keeper; back on</source>
        <translation>Halter; zurück am</translation>
    </message>
    <message>
        <source>Reptile vet</source>
        <translation>Reptilientierarzt</translation>
    </message>
    <message>
        <source>Vet at night</source>
        <translation>Tierarzt, nachts</translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation>Jemand anderes</translation>
    </message>
    <message>
        <source>Day, time</source>
        <translation>Tag, Uhrzeit</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Target by day</source>
        <translation>Soll am Tag</translation>
    </message>
    <message>
        <source>Target at night</source>
        <translation>Soll nachts</translation>
    </message>
    <message>
        <source>Expected: winter day</source>
        <translation>Erwartet: Wintertag</translation>
    </message>
    <message>
        <source>… winter night</source>
        <translation>… Winternacht</translation>
    </message>
    <message>
        <source>… summer day</source>
        <translation>… Sommertag</translation>
    </message>
    <message>
        <source>Day %1, morning</source>
        <translation>Tag %1, morgens</translation>
    </message>
    <message>
        <source>Day %1, afternoon</source>
        <translation>Tag %1, nachmittags</translation>
    </message>
    <message>
        <source>Day %1, night</source>
        <translation>Tag %1, nachts</translation>
    </message>
    <message>
        <source>Run it as it will be kept, empty, for seven days at least; no animal moves in before all readings have been in their targets for so long. Read three times a day. Morning: two hours after the lamps come on. Afternoon: an hour before they go off. Night: the lowest since, from a thermometer with a memory. The basking spot is read at its surface with an infrared thermometer, the other places in the shade at ground level.</source>
        <translation>So laufen lassen, wie es später betrieben wird, leer und mindestens sieben Tage lang; kein Tier zieht ein, bevor alle Messwerte so lange im Zielbereich waren. Dreimal am Tag ablesen. Morgens: zwei Stunden nach dem Einschalten der Lampen. Nachmittags: eine Stunde vor dem Ausschalten. Nachts: der tiefste Wert seither, an einem Thermometer mit Speicher. Der Sonnenplatz wird mit einem Infrarotthermometer an der Oberfläche gemessen, die anderen Plätze im Schatten in Bodennähe.</translation>
    </message>
    <message>
        <source>“Expected” is what was worked out for this plan, as a range that should hold nine times in ten. A reading outside it is worth a second look even where the target is met.</source>
        <translation>„Erwartet“ ist, was für diesen Plan berechnet wurde, als Spanne, die in neun von zehn Fällen zutreffen soll. Liegt ein Messwert außerhalb, lohnt ein zweiter Blick, auch wenn der Zielwert erreicht ist.</translation>
    </message>
    <message>
        <source>Begun on; thermometers compared with each other on</source>
        <translation>Begonnen am; Thermometer miteinander verglichen am</translation>
    </message>
    <message>
        <source>It settles slowly: readings count from the second day.</source>
        <translation>Es pendelt sich langsam ein: Messwerte zählen ab dem zweiten Tag.</translation>
    </message>
    <message>
        <source>Warm and cool side come within %1 of where they settle about %2 after switching on.</source>
        <translation>Warme und kühle Seite liegen etwa %2 nach dem Einschalten bis auf %1 bei ihrem Endwert.</translation>
    </message>
    <message>
        <source>Log: %1</source>
        <translation>Protokoll: %1</translation>
    </message>
    <message>
        <source>Lamps are on from %1 to %2.</source>
        <translation>Die Lampen sind von %1 bis %2 an.</translation>
    </message>
    <message>
        <source>UV index at the back of a basking animal, target %1, by meter</source>
        <translation>UV-Index am Rücken des Tieres auf dem Sonnenplatz, Soll %1, mit Messgerät</translation>
    </message>
    <message>
        <source>%1 comes to harm over %2. Where every place of the box may get so warm, switch the heat off, and no animal moves in.</source>
        <translation>%1 nimmt über %2 Schaden. Wo jeder Platz im Terrarium so warm werden kann, die Heizung ausschalten; kein Tier zieht ein.</translation>
    </message>
    <message>
        <source>When a reading is out of its target</source>
        <translation>Wenn ein Messwert nicht im Zielbereich liegt</translation>
    </message>
    <message>
        <source>Change one thing at a time, wait until it has settled, and begin the seven days anew. Write the readings into the plan (chapter “Readings”): the program then says anew what to expect.</source>
        <translation>Immer nur eines ändern, warten, bis es sich eingependelt hat, und die sieben Tage von vorn beginnen. Die Messwerte in den Plan eintragen (Kapitel „Messwerte“): Das Programm sagt dann neu, was zu erwarten ist.</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Too high</source>
        <translation>Zu hoch</translation>
    </message>
    <message>
        <source>Too low</source>
        <translation>Zu niedrig</translation>
    </message>
    <message>
        <source>Basking spot</source>
        <translation>Sonnenplatz</translation>
    </message>
    <message>
        <source>Lamp higher, dimmed, or of less power.</source>
        <translation>Lampe höher hängen, dimmen oder eine schwächere nehmen.</translation>
    </message>
    <message>
        <source>Lamp lower, never within its clearance; or of more power, if its holder bears it.</source>
        <translation>Lampe tiefer hängen, nie unter ihren Mindestabstand; oder eine stärkere, wenn die Fassung sie verträgt.</translation>
    </message>
    <message>
        <source>Warm side</source>
        <translation>Warme Seite</translation>
    </message>
    <message>
        <source>Set-point down by %1. Less cover.</source>
        <translation>Sollwert um %1 senken. Weniger abdecken.</translation>
    </message>
    <message>
        <source>Set-point up by %1; see that the probe lies where it should. More cover, clear of lamps.</source>
        <translation>Sollwert um %1 erhöhen; nachsehen, ob der Fühler liegt, wo er soll. Mehr abdecken, mit Abstand zu Lampen.</translation>
    </message>
    <message>
        <source>Cool side</source>
        <translation>Kühle Seite</translation>
    </message>
    <message>
        <source>Heat further to the warm end. Less cover there. A cooler room; shade from the sun.</source>
        <translation>Wärme weiter zum warmen Ende rücken. Dort weniger abdecken. Kühlerer Raum; vor Sonne schützen.</translation>
    </message>
    <message>
        <source>A warmer room, or heat on a thermostat nearer to it.</source>
        <translation>Wärmerer Raum, oder näher daran Wärme mit Thermostat.</translation>
    </message>
    <message>
        <source>Heat off or lower at night, unless the target asks for it.</source>
        <translation>Wärme nachts aus oder niedriger, sofern der Zielwert sie nicht verlangt.</translation>
    </message>
    <message>
        <source>Heat without light, on a thermostat and always on.</source>
        <translation>Wärme ohne Licht, mit Thermostat und an Dauerstrom.</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Less misting, less cover, more air. Wet spots out of the bed.</source>
        <translation>Weniger sprühen, weniger abdecken, mehr lüften. Nasse Stellen aus dem Bodengrund nehmen.</translation>
    </message>
    <message>
        <source>Damp the lower bed, mist, or cover more of the top, clear of lamps.</source>
        <translation>Den unteren Bodengrund anfeuchten, sprühen oder oben mehr abdecken, mit Abstand zu Lampen.</translation>
    </message>
    <message>
        <source>Lamp higher. No animal until it is in its target.</source>
        <translation>Lampe höher hängen. Kein Tier, bevor der Wert im Zielbereich liegt.</translation>
    </message>
    <message>
        <source>Lamp lower within its clearance; a new one if it is worn out.</source>
        <translation>Lampe tiefer hängen, soweit ihr Mindestabstand es zulässt; eine neue, wenn sie verbraucht ist.</translation>
    </message>
    <message>
        <source>Heaters that glow, smell, hum or trip the residual-current device: plug out, and ask an electrician. What to do is common practice, no source.</source>
        <translation>Heizer, die glühen, riechen, brummen oder den FI-Schutzschalter (RCD) auslösen: ausstecken und eine Elektrofachkraft fragen. Was zu tun ist, ist gängige Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <source>All in target for seven days, from – to</source>
        <translation>Sieben Tage alles im Zielbereich, von – bis</translation>
    </message>
    <message>
        <source>Proved by: name, date, signature</source>
        <translation>Geprüft von: Name, Datum, Unterschrift</translation>
    </message>
    <message>
        <source>Loamstead %1 · plan “%2”, version %3 · worked out on %4</source>
        <translation>Loamstead %1 · Plan „%2“, Version %3 · berechnet am %4</translation>
    </message>
    <message>
        <source>Not stated yet: one input, listed on “%1”.</source>
        <translation>Noch nicht angegeben: eine Angabe, aufgeführt auf „%1“.</translation>
    </message>
    <message>
        <source>Not stated yet: %1 inputs, listed on “%2”.</source>
        <translation>Noch nicht angegeben: %1 Angaben, aufgeführt auf „%2“.</translation>
    </message>
    <message>
        <source>Paid: amount, date, by</source>
        <translation>Bezahlt: Betrag, Datum, von</translation>
    </message>
    <message>
        <source>Sign-off: name, date</source>
        <translation>Freigabe: Name, Datum</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Decision sheet</source>
        <translation>Entscheidungsblatt</translation>
    </message>
    <message>
        <source>Build sheet</source>
        <translation>Aufbaublatt</translation>
    </message>
    <message>
        <source>Proving sheet</source>
        <translation>Probelaufblatt</translation>
    </message>
    <message>
        <source>Holiday card</source>
        <translation>Vertretungskarte</translation>
    </message>
    <message>
        <source>On loan, to be given back, and so not to be bought: %1.</source>
        <translation>Geliehen und zurückzugeben, deshalb nicht zu kaufen: %1.</translation>
    </message>
    <message>
        <source>At low prices %1, at high prices %2, with delivery, tax and what is set aside. Lines without a price are not in it.</source>
        <translation>Bei niedrigen Preisen %1, bei hohen %2, mit Lieferung, Steuer und Rücklage. Zeilen ohne Preis sind nicht enthalten.</translation>
    </message>
    <message>
        <source>%1 smaller lines together</source>
        <translation>%1 kleinere Posten zusammen</translation>
    </message>
    <message>
        <source>Taken as</source>
        <translation>Gerechnet mit</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Richtig ist</translation>
    </message>
    <message>
        <source>Safety is not where to save: guards, heat-rated holders, thermostats, a residual-current device and a smoke alarm stay on the list.</source>
        <translation>An der Sicherheit wird nicht gespart: Schutzkörbe, hitzefeste Fassungen, Thermostate, FI-Schutzschalter und Rauchmelder bleiben auf der Liste.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>%1 is “%2”</source>
        <translation>%1 ist „%2“</translation>
    </message>
    <message>
        <source>In the column “For”, %1.</source>
        <translation>In der Spalte „Für“: %1.</translation>
    </message>
</context>
<context>
    <name>batch</name>
    <message>
        <source>The row has neither a name nor a number.</source>
        <translation>Die Zeile hat weder einen Namen noch eine Nummer.</translation>
    </message>
    <message>
        <source>This is longer than %1 characters.</source>
        <translation>Das ist länger als %1 Zeichen.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>“%1” is not one of %2.</source>
        <translation>„%1“ ist hier nicht möglich; zur Wahl stehen: %2.</translation>
    </message>
    <message>
        <source>“%1” is none of “metric”, “us” and “both”.</source>
        <translation>„%1“ ist weder „metric“ noch „us“ noch „both“.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>The price list has no item “%1”.</source>
        <translation>In der Preisliste gibt es keinen Artikel „%1“.</translation>
    </message>
    <message>
        <source>The price list has no item “%1”. Did you mean “%2”?</source>
        <translation>In der Preisliste gibt es keinen Artikel „%1“. Ist „%2“ gemeint?</translation>
    </message>
    <message>
        <source>There is no sheet of a species “%1”.</source>
        <translation>Für die Art „%1“ gibt es kein Datenblatt.</translation>
    </message>
    <message>
        <source>There is no sheet of a species “%1”. Did you mean “%2”?</source>
        <translation>Für die Art „%1“ gibt es kein Datenblatt. Ist „%2“ gemeint?</translation>
    </message>
    <message>
        <source>date (there: %1)</source>
        <translation>Datum (dort: %1)</translation>
    </message>
    <message>
        <source>The folder “%1” can&apos;t be made.</source>
        <translation>Der Ordner „%1“ lässt sich nicht anlegen.</translation>
    </message>
    <message>
        <source>“%1” holds sheets that were made with something else (%2). Nothing is written over: name another folder, or give what was given then.</source>
        <translation>„%1“ enthält Blätter, die mit anderen Vorgaben erstellt wurden (%2). Überschrieben wird nichts: einen anderen Ordner angeben oder dieselben Vorgaben wie damals.</translation>
    </message>
    <message>
        <source>“%1” holds other files. Name an empty folder or a new one.</source>
        <translation>„%1“ enthält andere Dateien. Einen leeren oder einen neuen Ordner angeben.</translation>
    </message>
    <message>
        <source>Another run works on “%1”. Wait for it; if there is none on any machine, remove “%2”.</source>
        <translation>Ein anderer Lauf arbeitet gerade in „%1“. Warten, bis er fertig ist; läuft auf keinem Rechner einer, „%2“ löschen.</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be written: %2.</source>
        <translation>„%1“ lässt sich nicht schreiben: %2.</translation>
    </message>
    <message>
        <source>The sheets of row %1 can&apos;t be written: %2.</source>
        <translation>Die Blätter zu Zeile %1 lassen sich nicht schreiben: %2.</translation>
    </message>
    <message>
        <source>The column “%1” is missing.</source>
        <translation>Die Spalte „%1“ fehlt.</translation>
    </message>
    <message>
        <source>A quantity must be above 0.</source>
        <translation>Eine Menge muss größer als 0 sein.</translation>
    </message>
    <message>
        <source>row %1, column %2: %3</source>
        <translation>Zeile %1, Spalte %2: %3</translation>
    </message>
    <message>
        <source>The column “%1” is not known and is passed over. Did you mean “%2”?</source>
        <translation>„%1“ ist keine bekannte Spalte und wird übergangen. Ist „%2“ gemeint?</translation>
    </message>
    <message>
        <source>The column “%1” is not known and is passed over.</source>
        <translation>„%1“ ist keine bekannte Spalte und wird übergangen.</translation>
    </message>
    <message>
        <source>The column “%1” stands there twice.</source>
        <translation>Die Spalte „%1“ kommt zweimal vor.</translation>
    </message>
    <message>
        <source>The first row must name the columns, and there is neither “name” nor “number” among them.</source>
        <translation>Die erste Zeile muss die Spalten benennen; darunter ist aber weder „name“ noch „number“.</translation>
    </message>
    <message>
        <source>The list is empty.</source>
        <translation>Die Liste ist leer.</translation>
    </message>
    <message>
        <source>There are no rows below the header.</source>
        <translation>Unter der Kopfzeile stehen keine Zeilen.</translation>
    </message>
    <message>
        <source>“%1” is not a number. Digits alone count, without a unit.</source>
        <translation>„%1“ ist keine Zahl. Es zählen nur Ziffern, ohne Einheit.</translation>
    </message>
    <message>
        <source>“%1” has too many digits.</source>
        <translation>„%1“ hat zu viele Ziffern.</translation>
    </message>
    <message>
        <source>“%1” can be read in two ways. Write it without a mark for thousands, or with another number of digits behind the decimal mark.</source>
        <translation>„%1“ lässt sich auf zwei Arten lesen. Ohne Tausendertrennzeichen schreiben oder mit einer anderen Zahl von Nachkommastellen.</translation>
    </message>
    <message>
        <source>%1, for adopters: %2</source>
        <translation>%1, für neue Halter: %2</translation>
    </message>
    <message>
        <source>The template has no enclosure “%1”.</source>
        <translation>In der Vorlage gibt es kein Terrarium „%1“.</translation>
    </message>
    <message>
        <source>“%1” says the same. One of the two must be empty.</source>
        <translation>„%1“ gibt dasselbe an. Eine der beiden Angaben muss leer sein.</translation>
    </message>
    <message>
        <source>The template has several enclosures. Name one in the column “enclosure”.</source>
        <translation>Die Vorlage hat mehrere Terrarien. Eines davon in der Spalte „enclosure“ nennen.</translation>
    </message>
    <message>
        <source>The template does not have one kind of animal here, so a number alone does not tell of which. Write as in “2 pantherophis-guttatus”.</source>
        <translation>Die Vorlage hat hier nicht genau eine Tierart; eine Zahl allein sagt also nicht, welche gemeint ist. So schreiben: „2 pantherophis-guttatus“.</translation>
    </message>
    <message>
        <source>“%1” is neither a number nor a list as in “1 python-regius + 2 pantherophis-guttatus”.</source>
        <translation>„%1“ ist weder eine Zahl noch eine Liste wie „1 python-regius + 2 pantherophis-guttatus“.</translation>
    </message>
    <message>
        <source>Row %1 says something else than when its sheets were made. Ask for that row alone to make them again, or name another folder.</source>
        <translation>In Zeile %1 steht etwas anderes als damals, als ihre Blätter erstellt wurden. Nur diese Zeile anfordern, um sie neu zu erstellen, oder einen anderen Ordner angeben.</translation>
    </message>
    <message>
        <source>Row %1 is not in the list, or has something wrong with it.</source>
        <translation>Zeile %1 steht nicht in der Liste oder ist fehlerhaft.</translation>
    </message>
</context>
<context>
    <name>catalog</name>
    <message>
        <source>African spurred tortoise</source>
        <translation>Spornschildkröte</translation>
    </message>
    <message>
        <source>Red-footed tortoise</source>
        <translation>Köhlerschildkröte</translation>
    </message>
    <message>
        <source>Crested gecko</source>
        <translation>Kronengecko</translation>
    </message>
    <message>
        <source>Green and black poison frog</source>
        <translation>Goldbaumsteiger</translation>
    </message>
    <message>
        <source>Dyeing poison frog</source>
        <translation>Färberfrosch</translation>
    </message>
    <message>
        <source>Leopard gecko</source>
        <translation>Leopardgecko</translation>
    </message>
    <message>
        <source>Western hognose snake</source>
        <translation>Westliche Hakennasennatter</translation>
    </message>
    <message>
        <source>Common kingsnake</source>
        <translation>Kettennatter</translation>
    </message>
    <message>
        <source>White&apos;s tree frog</source>
        <translation>Korallenfinger-Laubfrosch</translation>
    </message>
    <message>
        <source>Corn snake</source>
        <translation>Kornnatter</translation>
    </message>
    <message>
        <source>Central bearded dragon</source>
        <translation>Streifenköpfige Bartagame</translation>
    </message>
    <message>
        <source>Royal python</source>
        <translation>Königspython</translation>
    </message>
    <message>
        <source>Leopard tortoise</source>
        <translation>Pantherschildkröte</translation>
    </message>
    <message>
        <source>Eastern box turtle</source>
        <translation>Östliche Carolina-Dosenschildkröte</translation>
    </message>
    <message>
        <source>Three-toed box turtle</source>
        <translation>Dreizehen-Dosenschildkröte</translation>
    </message>
    <message>
        <source>Ornate box turtle</source>
        <translation>Schmuck-Dosenschildkröte</translation>
    </message>
    <message>
        <source>Spur-thighed tortoise</source>
        <translation>Maurische Landschildkröte</translation>
    </message>
    <message>
        <source>Hermann&apos;s tortoise</source>
        <translation>Griechische Landschildkröte</translation>
    </message>
    <message>
        <source>Horsfield&apos;s tortoise</source>
        <translation>Vierzehenschildkröte</translation>
    </message>
    <message>
        <source>Eastern blue-tongued skink</source>
        <translation>Gewöhnlicher Blauzungenskink</translation>
    </message>
    <message>
        <source>Glass pane as a cover or top</source>
        <translation>Glasscheibe als Abdeckung</translation>
    </message>
    <message>
        <source>Acrylic sheet (PMMA)</source>
        <translation>Acrylglasplatte (PMMA)</translation>
    </message>
    <message>
        <source>Cotton towel</source>
        <translation>Baumwollhandtuch</translation>
    </message>
    <message>
        <source>Aluminium foil</source>
        <translation>Alufolie</translation>
    </message>
    <message>
        <source>Fibreboard cover or top</source>
        <translation>Faserplatte als Abdeckung</translation>
    </message>
    <message>
        <source>Float glass</source>
        <translation>Floatglas</translation>
    </message>
    <message>
        <source>Foamed PVC sheet</source>
        <translation>PVC-Hartschaumplatte</translation>
    </message>
    <message>
        <source>Plywood</source>
        <translation>Sperrholz</translation>
    </message>
    <message>
        <source>Melamine-faced particleboard</source>
        <translation>Melaminbeschichtete Spanplatte</translation>
    </message>
    <message>
        <source>Fine coir</source>
        <translation>Kokoserde</translation>
    </message>
    <message>
        <source>Coir chips</source>
        <translation>Kokoschips</translation>
    </message>
    <message>
        <source>Topsoil without fertiliser</source>
        <translation>Mutterboden ohne Dünger</translation>
    </message>
    <message>
        <source>Play sand</source>
        <translation>Spielsand</translation>
    </message>
    <message>
        <source>Peat</source>
        <translation>Torf</translation>
    </message>
    <message>
        <source>Bark chips</source>
        <translation>Rindenstücke</translation>
    </message>
    <message>
        <source>Sphagnum moss</source>
        <translation>Sphagnum-Moos</translation>
    </message>
    <message>
        <source>Expanded clay pebbles (drainage layer)</source>
        <translation>Blähton (Drainageschicht)</translation>
    </message>
    <message>
        <source>Extruded polystyrene board</source>
        <translation>XPS-Hartschaumplatte</translation>
    </message>
    <message>
        <source>Cork underlay</source>
        <translation>Korkunterlage</translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two</source>
        <translation>Grundfläche 8 × 4 Panzerlängen für zwei</translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, red-foot</source>
        <translation>Grundfläche 8 × 4 Panzerlängen für zwei, Köhlerschildkröte</translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, taken for large tortoises by analogy</source>
        <translation>Grundfläche 8 × 4 Panzerlängen für zwei, sinngemäß für große Landschildkröten</translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, box turtle taken as a tortoise</source>
        <translation>Grundfläche 8 × 4 Panzerlängen für zwei, Dosenschildkröte wie Landschildkröte behandelt</translation>
    </message>
    <message>
        <source>Floor 5 by 2.5 shell lengths for two, box turtles</source>
        <translation>Grundfläche 5 × 2,5 Panzerlängen für zwei, Dosenschildkröten</translation>
    </message>
    <message>
        <source>Floor 5 by 5 shell lengths</source>
        <translation>Grundfläche 5 × 5 Panzerlängen</translation>
    </message>
    <message>
        <source>Floor 5 by 5 shell lengths, box turtle taken as a tortoise</source>
        <translation>Grundfläche 5 × 5 Panzerlängen, Dosenschildkröte wie Landschildkröte behandelt</translation>
    </message>
    <message>
        <source>Floor 5 by 3 shell lengths</source>
        <translation>Grundfläche 5 × 3 Panzerlängen</translation>
    </message>
    <message>
        <source>Fixed floor for small land tortoises (superseded)</source>
        <translation>Feste Grundfläche für kleine Landschildkröten (überholt)</translation>
    </message>
    <message>
        <source>Fixed floor for medium land tortoises (superseded)</source>
        <translation>Feste Grundfläche für mittelgroße Landschildkröten (überholt)</translation>
    </message>
    <message>
        <source>Fixed floor for large land tortoises (superseded)</source>
        <translation>Feste Grundfläche für große Landschildkröten (überholt)</translation>
    </message>
    <message>
        <source>Fixed floor for giant tortoises (superseded)</source>
        <translation>Feste Grundfläche für Riesenschildkröten (überholt)</translation>
    </message>
    <message>
        <source>Floor by shell length, Egyptian tortoise</source>
        <translation>Grundfläche nach Panzerlänge, Ägyptische Landschildkröte</translation>
    </message>
    <message>
        <source>Fixed floor for two, African spurred tortoise</source>
        <translation>Feste Grundfläche für zwei, Spornschildkröte</translation>
    </message>
    <message>
        <source>Fixed floor for two, giant tortoises</source>
        <translation>Feste Grundfläche für zwei, Riesenschildkröten</translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, veterinary column</source>
        <translation>Grundfläche 8 × 4 Panzerlängen für zwei, tierärztliche Kolumne</translation>
    </message>
    <message>
        <source>Floor about 8 by 4 shell lengths, European tortoises</source>
        <translation>Grundfläche etwa 8 × 4 Panzerlängen, europäische Landschildkröten</translation>
    </message>
    <message>
        <source>Indoor floor 36 by 24 in for one box turtle</source>
        <translation>Innenhaltung: Grundfläche 36 × 24 in für eine Dosenschildkröte</translation>
    </message>
    <message>
        <source>Indoor floor 36 by 12 in for a box turtle</source>
        <translation>Innenhaltung: Grundfläche 36 × 12 in für eine Dosenschildkröte</translation>
    </message>
    <message>
        <source>Floor 4 by 2 ft for a Horsfield tortoise</source>
        <translation>Grundfläche 4 × 2 ft für eine Vierzehenschildkröte</translation>
    </message>
    <message>
        <source>Floor 5 by 3 ft for a Horsfield tortoise</source>
        <translation>Grundfläche 5 × 3 ft für eine Vierzehenschildkröte</translation>
    </message>
    <message>
        <source>Floor 6 by 6 ft for an adult red-foot</source>
        <translation>Grundfläche 6 × 6 ft für eine ausgewachsene Köhlerschildkröte</translation>
    </message>
    <message>
        <source>Laboratory floor by body length, climbing frogs</source>
        <translation>Versuchstierhaltung: Grundfläche nach Körperlänge, kletternde Frösche</translation>
    </message>
    <message>
        <source>Laboratory floor by body length, semi-terrestrial frogs</source>
        <translation>Versuchstierhaltung: Grundfläche nach Körperlänge, semiterrestrische Frösche</translation>
    </message>
    <message>
        <source>Laboratory floor by body length, dart frogs by analogy</source>
        <translation>Versuchstierhaltung: Grundfläche nach Körperlänge, sinngemäß für Pfeilgiftfrösche</translation>
    </message>
    <message>
        <source>Box 50 by 50 by 50 cm for about five average dart frogs</source>
        <translation>Terrarium 50 × 50 × 50 cm für etwa fünf durchschnittliche Pfeilgiftfrösche</translation>
    </message>
    <message>
        <source>Box 50 by 50 by 50 cm for two large dart frogs</source>
        <translation>Terrarium 50 × 50 × 50 cm für zwei große Pfeilgiftfrösche</translation>
    </message>
    <message>
        <source>Box 45 by 45 by 60 cm for an adult White&apos;s tree frog</source>
        <translation>Terrarium 45 × 45 × 60 cm für einen ausgewachsenen Korallenfinger-Laubfrosch</translation>
    </message>
    <message>
        <source>Floor 4 by 3 body lengths (snout to vent) for a pair, leopard gecko</source>
        <translation>Grundfläche 4 × 3 Kopf-Rumpf-Längen für ein Paar, Leopardgecko</translation>
    </message>
    <message>
        <source>Floor 5 by 4 body lengths (snout to vent) for a pair, bearded dragon</source>
        <translation>Grundfläche 5 × 4 Kopf-Rumpf-Längen für ein Paar, Bartagame</translation>
    </message>
    <message>
        <source>Fixed floor and height for two, bearded dragons</source>
        <translation>Feste Grundfläche und Höhe für zwei, Bartagamen</translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, ground lizards</source>
        <translation>Grundfläche 3 × 2 Gesamtlängen, bodenbewohnende Echsen</translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, climbing lizards</source>
        <translation>Grundfläche 3 × 2 Gesamtlängen, kletternde Echsen</translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, height 1.5, ground lizards</source>
        <translation>Grundfläche 3 × 2 Gesamtlängen, Höhe 1,5, bodenbewohnende Echsen</translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, height 3, climbing lizards</source>
        <translation>Grundfläche 3 × 2 Gesamtlängen, Höhe 3, kletternde Echsen</translation>
    </message>
    <message>
        <source>Fixed floor for an adult bearded dragon, +50 % for the second</source>
        <translation>Feste Grundfläche für eine ausgewachsene Bartagame, +50 % für die zweite</translation>
    </message>
    <message>
        <source>Box 120 by 60 by 60 cm for one adult bearded dragon</source>
        <translation>Terrarium 120 × 60 × 60 cm für eine ausgewachsene Bartagame</translation>
    </message>
    <message>
        <source>Box 60 by 30 by 40 cm for one leopard gecko</source>
        <translation>Terrarium 60 × 30 × 40 cm für einen Leopardgecko</translation>
    </message>
    <message>
        <source>Box 90 by 40 by 40 cm for a leopard gecko</source>
        <translation>Terrarium 90 × 40 × 40 cm für einen Leopardgecko</translation>
    </message>
    <message>
        <source>Box 30 by 18 by 24 in for a leopard gecko</source>
        <translation>Terrarium 30 × 18 × 24 in für einen Leopardgecko</translation>
    </message>
    <message>
        <source>Box 45 by 45 by 60 cm for one crested gecko</source>
        <translation>Terrarium 45 × 45 × 60 cm für einen Kronengecko</translation>
    </message>
    <message>
        <source>Box 12 by 12 by 18 in for a crested gecko (older advice)</source>
        <translation>Terrarium 12 × 12 × 18 in für einen Kronengecko (ältere Empfehlung)</translation>
    </message>
    <message>
        <source>Floor 120 by 60 cm for a blue-tongue</source>
        <translation>Grundfläche 120 × 60 cm für einen Blauzungenskink</translation>
    </message>
    <message>
        <source>Length 1, width 0.5 of the total length, ground snakes</source>
        <translation>Länge 1, Breite 0,5 der Gesamtlänge, bodenbewohnende Schlangen</translation>
    </message>
    <message>
        <source>Length 1, width 0.5, height 1 of the total length, corn snake</source>
        <translation>Länge 1, Breite 0,5, Höhe 1 der Gesamtlänge, Kornnatter</translation>
    </message>
    <message>
        <source>Length 1, width 0.5, height 0.75 of the total length, royal python</source>
        <translation>Länge 1, Breite 0,5, Höhe 0,75 der Gesamtlänge, Königspython</translation>
    </message>
    <message>
        <source>Length 1, width and height a third of the total length, royal python</source>
        <translation>Länge 1, Breite und Höhe ein Drittel der Gesamtlänge, Königspython</translation>
    </message>
    <message>
        <source>Length 1, width and height a third of the total length, by analogy</source>
        <translation>Länge 1, Breite und Höhe ein Drittel der Gesamtlänge, sinngemäß</translation>
    </message>
    <message>
        <source>Length 3/4, width 1/3 of the total length, ground snakes</source>
        <translation>Länge 3/4, Breite 1/3 der Gesamtlänge, bodenbewohnende Schlangen</translation>
    </message>
    <message>
        <source>Length 3/4, width 1/3, height 1 of the total length, climbing snakes</source>
        <translation>Länge 3/4, Breite 1/3, Höhe 1 der Gesamtlänge, kletternde Schlangen</translation>
    </message>
    <message>
        <source>Length 1, width 2/3 of the total length, ground snakes</source>
        <translation>Länge 1, Breite 2/3 der Gesamtlänge, bodenbewohnende Schlangen</translation>
    </message>
    <message>
        <source>Length 1, width 2/3, height 1 of the total length, climbing snakes</source>
        <translation>Länge 1, Breite 2/3, Höhe 1 der Gesamtlänge, kletternde Schlangen</translation>
    </message>
    <message>
        <source>Length 0.70, width 0.40 of the total length, small ground pythons</source>
        <translation>Länge 0,70, Breite 0,40 der Gesamtlänge, kleine bodenbewohnende Pythons</translation>
    </message>
    <message>
        <source>Length 1, width 0.5 of the total length, ground boas</source>
        <translation>Länge 1, Breite 0,5 der Gesamtlänge, bodenbewohnende Boas</translation>
    </message>
    <message>
        <source>Length 0.75, width 0.3 of the total length, colubrids</source>
        <translation>Länge 0,75, Breite 0,3 der Gesamtlänge, Nattern</translation>
    </message>
    <message>
        <source>Floor by total length, ground snakes to 2.5 m</source>
        <translation>Grundfläche nach Gesamtlänge, bodenbewohnende Schlangen bis 2,5 m</translation>
    </message>
    <message>
        <source>Floor by total length, royal python</source>
        <translation>Grundfläche nach Gesamtlänge, Königspython</translation>
    </message>
    <message>
        <source>Floor by total length, corn snake</source>
        <translation>Grundfläche nach Gesamtlänge, Kornnatter</translation>
    </message>
    <message>
        <source>Floor by total length, climbing snakes to 2.5 m</source>
        <translation>Grundfläche nach Gesamtlänge, kletternde Schlangen bis 2,5 m</translation>
    </message>
    <message>
        <source>Laboratory floor by total length, snakes</source>
        <translation>Versuchstierhaltung: Grundfläche nach Gesamtlänge, Schlangen</translation>
    </message>
    <message>
        <source>Fixed floor for an adult jungle carpet python, +50 % for the second</source>
        <translation>Feste Grundfläche für einen ausgewachsenen Dschungel-Teppichpython, +50 % für den zweiten</translation>
    </message>
    <message>
        <source>Illustrative prices, invented from memory, not offers</source>
        <translation>Beispielpreise, aus dem Gedächtnis erfunden, keine Angebote</translation>
    </message>
    <message>
        <source>Glass enclosure, floor up to 0.27 m²</source>
        <translation>Glasterrarium, Grundfläche bis 0,27 m²</translation>
    </message>
    <message>
        <source>Glass enclosure, floor 0.28 to 0.41 m²</source>
        <translation>Glasterrarium, Grundfläche 0,28 bis 0,41 m²</translation>
    </message>
    <message>
        <source>Glass enclosure, floor 0.41 to 0.73 m²</source>
        <translation>Glasterrarium, Grundfläche 0,41 bis 0,73 m²</translation>
    </message>
    <message>
        <source>Glass enclosure, floor 0.73 to 1.1 m²</source>
        <translation>Glasterrarium, Grundfläche 0,73 bis 1,1 m²</translation>
    </message>
    <message>
        <source>Wooden enclosure, floor up to 0.41 m²</source>
        <translation>Holzterrarium, Grundfläche bis 0,41 m²</translation>
    </message>
    <message>
        <source>Wooden enclosure, floor 0.41 to 0.73 m²</source>
        <translation>Holzterrarium, Grundfläche 0,41 bis 0,73 m²</translation>
    </message>
    <message>
        <source>Wooden enclosure, floor 0.73 to 1.1 m²</source>
        <translation>Holzterrarium, Grundfläche 0,73 bis 1,1 m²</translation>
    </message>
    <message>
        <source>Wooden enclosure table, floor 1.1 to 2.9 m²</source>
        <translation>Tischgehege aus Holz, Grundfläche 1,1 bis 2,9 m²</translation>
    </message>
    <message>
        <source>Plastic enclosure, floor up to 0.41 m²</source>
        <translation>Kunststoffterrarium, Grundfläche bis 0,41 m²</translation>
    </message>
    <message>
        <source>Plastic enclosure, floor 0.41 to 0.73 m²</source>
        <translation>Kunststoffterrarium, Grundfläche 0,41 bis 0,73 m²</translation>
    </message>
    <message>
        <source>Plastic enclosure, floor 0.73 to 1.1 m²</source>
        <translation>Kunststoffterrarium, Grundfläche 0,73 bis 1,1 m²</translation>
    </message>
    <message>
        <source>Stand for a floor up to 0.41 m²</source>
        <translation>Gestell für Grundflächen bis 0,41 m²</translation>
    </message>
    <message>
        <source>Stand for a floor of 0.41 to 0.73 m²</source>
        <translation>Gestell für Grundflächen von 0,41 bis 0,73 m²</translation>
    </message>
    <message>
        <source>Stand for a floor of 0.73 to 1.1 m²</source>
        <translation>Gestell für Grundflächen von 0,73 bis 1,1 m²</translation>
    </message>
    <message>
        <source>Halogen reflector flood, up to 60 W</source>
        <translation>Halogen-Reflektorstrahler, bis 60 W</translation>
    </message>
    <message>
        <source>Halogen reflector flood, 61 to 100 W</source>
        <translation>Halogen-Reflektorstrahler, 61 bis 100 W</translation>
    </message>
    <message>
        <source>Reflector flood, 101 to 160 W</source>
        <translation>Reflektorstrahler, 101 bis 160 W</translation>
    </message>
    <message>
        <source>Ceramic heater, up to 100 W</source>
        <translation>Keramikheizer, bis 100 W</translation>
    </message>
    <message>
        <source>Ceramic heater, 101 to 250 W</source>
        <translation>Keramikheizer, 101 bis 250 W</translation>
    </message>
    <message>
        <source>Radiant heat panel, up to 60 W</source>
        <translation>Wärmepaneel, bis 60 W</translation>
    </message>
    <message>
        <source>Radiant heat panel, 61 to 150 W</source>
        <translation>Wärmepaneel, 61 bis 150 W</translation>
    </message>
    <message>
        <source>Heat mat, up to 12 W</source>
        <translation>Heizmatte, bis 12 W</translation>
    </message>
    <message>
        <source>Heat mat, 13 to 25 W</source>
        <translation>Heizmatte, 13 bis 25 W</translation>
    </message>
    <message>
        <source>Heat mat, 26 to 60 W</source>
        <translation>Heizmatte, 26 bis 60 W</translation>
    </message>
    <message>
        <source>UV-B tube, up to 24 W</source>
        <translation>UV-B-Röhre, bis 24 W</translation>
    </message>
    <message>
        <source>UV-B tube, 25 to 80 W</source>
        <translation>UV-B-Röhre, 25 bis 80 W</translation>
    </message>
    <message>
        <source>Compact UV-B lamp</source>
        <translation>UV-B-Kompaktlampe</translation>
    </message>
    <message>
        <source>Mercury vapour UV lamp, self-ballasted</source>
        <translation>Quecksilberdampf-UV-Lampe ohne externes Vorschaltgerät</translation>
    </message>
    <message>
        <source>Metal halide UV lamp</source>
        <translation>UV-Metalldampflampe</translation>
    </message>
    <message>
        <source>LED light strip</source>
        <translation>LED-Leiste</translation>
    </message>
    <message>
        <source>Fixture for a UV-B tube up to 24 W</source>
        <translation>Leuchte für eine UV-B-Röhre bis 24 W</translation>
    </message>
    <message>
        <source>Fixture for a UV-B tube of 25 to 80 W</source>
        <translation>Leuchte für eine UV-B-Röhre von 25 bis 80 W</translation>
    </message>
    <message>
        <source>Ballast for a metal halide lamp</source>
        <translation>Vorschaltgerät für eine Metalldampflampe</translation>
    </message>
    <message>
        <source>Ceramic lamp holder with dome, up to 100 W</source>
        <translation>Keramikfassung mit Reflektorschirm, bis 100 W</translation>
    </message>
    <message>
        <source>Ceramic lamp holder with dome, up to 250 W</source>
        <translation>Keramikfassung mit Reflektorschirm, bis 250 W</translation>
    </message>
    <message>
        <source>Wire guard for a lamp or heater</source>
        <translation>Schutzkorb für Lampe oder Heizer</translation>
    </message>
    <message>
        <source>Plug-in dimmer for resistive loads, up to 300 W</source>
        <translation>Steckdosendimmer für ohmsche Lasten, bis 300 W</translation>
    </message>
    <message>
        <source>Thermostat, on and off, up to 600 W</source>
        <translation>Ein-Aus-Thermostat, bis 600 W</translation>
    </message>
    <message>
        <source>Thermostat, on and off, 600 to 1500 W</source>
        <translation>Ein-Aus-Thermostat, 600 bis 1500 W</translation>
    </message>
    <message>
        <source>Dimming or pulse thermostat, up to 600 W</source>
        <translation>Dimm- oder Pulsthermostat, bis 600 W</translation>
    </message>
    <message>
        <source>Plug-in timer</source>
        <translation>Steckdosen-Zeitschaltuhr</translation>
    </message>
    <message>
        <source>Outlet strip, up to 4 outlets</source>
        <translation>Steckdosenleiste, bis 4 Steckdosen</translation>
    </message>
    <message>
        <source>Outlet strip, 5 to 6 outlets</source>
        <translation>Steckdosenleiste, 5 bis 6 Steckdosen</translation>
    </message>
    <message>
        <source>Outlet strip, 7 to 12 outlets, switched apart</source>
        <translation>Steckdosenleiste, 7 bis 12 Steckdosen, einzeln schaltbar</translation>
    </message>
    <message>
        <source>Plug-in residual current adapter</source>
        <translation>FI-Zwischenstecker (RCD)</translation>
    </message>
    <message>
        <source>Pump mister with nozzles</source>
        <translation>Beregnungsanlage mit Pumpe und Düsen</translation>
    </message>
    <message>
        <source>Small ventilator</source>
        <translation>Kleiner Lüfter</translation>
    </message>
    <message>
        <source>Filter cartridge or set of filters</source>
        <translation>Filterkartusche oder Filtersatz</translation>
    </message>
    <message>
        <source>Liquid water conditioner</source>
        <translation>Flüssiger Wasseraufbereiter</translation>
    </message>
    <message>
        <source>Digital thermometer with probe</source>
        <translation>Digitalthermometer mit Fühler</translation>
    </message>
    <message>
        <source>Digital hygrometer</source>
        <translation>Digitalhygrometer</translation>
    </message>
    <message>
        <source>Infrared thermometer</source>
        <translation>Infrarotthermometer</translation>
    </message>
    <message>
        <source>Kitchen scale, 1 g</source>
        <translation>Küchenwaage, 1 g</translation>
    </message>
    <message>
        <source>UV index meter</source>
        <translation>UV-Index-Messgerät</translation>
    </message>
    <message>
        <source>Fine coir, compressed</source>
        <translation>Kokoserde, gepresst</translation>
    </message>
    <message>
        <source>Coir chips, compressed</source>
        <translation>Kokoschips, gepresst</translation>
    </message>
    <message>
        <source>Washed play sand</source>
        <translation>Gewaschener Spielsand</translation>
    </message>
    <message>
        <source>Peat without fertiliser</source>
        <translation>Torf ohne Dünger</translation>
    </message>
    <message>
        <source>Expanded clay pebbles</source>
        <translation>Blähton</translation>
    </message>
    <message>
        <source>Glass cover pane, cut to size</source>
        <translation>Abdeckscheibe aus Glas, zugeschnitten</translation>
    </message>
    <message>
        <source>Acrylic cover sheet</source>
        <translation>Abdeckplatte aus Acrylglas</translation>
    </message>
    <message>
        <source>Fibreboard cover, cut to size</source>
        <translation>Abdeckung aus Faserplatte, zugeschnitten</translation>
    </message>
    <message>
        <source>Water bowl</source>
        <translation>Wasserschale</translation>
    </message>
    <message>
        <source>Hide</source>
        <translation>Versteck</translation>
    </message>
    <message>
        <source>Lidded box for a humid hide</source>
        <translation>Deckelbox für eine Wetbox</translation>
    </message>
    <message>
        <source>Flat rock</source>
        <translation>Flacher Stein</translation>
    </message>
    <message>
        <source>Log or branch</source>
        <translation>Stamm oder Ast</translation>
    </message>
    <message>
        <source>Potted or artificial plant</source>
        <translation>Topf- oder Kunstpflanze</translation>
    </message>
    <message>
        <source>Feeding dish or tile</source>
        <translation>Futterschale oder Futterplatte</translation>
    </message>
    <message>
        <source>Fresh greens and vegetables</source>
        <translation>Frisches Grünfutter und Gemüse</translation>
    </message>
    <message>
        <source>Feeder insects</source>
        <translation>Futterinsekten</translation>
    </message>
    <message>
        <source>Frozen mice</source>
        <translation>Frostmäuse</translation>
    </message>
    <message>
        <source>Frozen rats</source>
        <translation>Frostratten</translation>
    </message>
    <message>
        <source>Powdered fruit diet</source>
        <translation>Pulverfutter auf Fruchtbasis</translation>
    </message>
    <message>
        <source>Culture of fruit flies</source>
        <translation>Fruchtfliegenansatz</translation>
    </message>
    <message>
        <source>Calcium and vitamin powder</source>
        <translation>Calcium- und Vitaminpulver</translation>
    </message>
    <message>
        <source>Disinfectant safe for animals, ready to use</source>
        <translation>Tierverträgliches Desinfektionsmittel, gebrauchsfertig</translation>
    </message>
    <message>
        <source>Disposable gloves</source>
        <translation>Einweghandschuhe</translation>
    </message>
    <message>
        <source>Plastic tub for quarantine</source>
        <translation>Kunststoffwanne für die Quarantäne</translation>
    </message>
    <message>
        <source>Veterinary check with faecal test</source>
        <translation>Tierärztliche Untersuchung mit Kotprobe</translation>
    </message>
    <message>
        <source>Put aside for illness</source>
        <translation>Rücklage für Krankheit</translation>
    </message>
    <message>
        <source>Adoption fee</source>
        <translation>Schutzgebühr</translation>
    </message>
    <message>
        <source>Permit or registration</source>
        <translation>Genehmigung oder Anmeldung</translation>
    </message>
    <message>
        <source>one</source>
        <translation>einzeln</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>Paar</translation>
    </message>
    <message>
        <source>bottle of 250 mL</source>
        <translation>Flasche zu 250 mL</translation>
    </message>
    <message>
        <source>bottle of 500 mL</source>
        <translation>Flasche zu 500 mL</translation>
    </message>
    <message>
        <source>brick of 650 g</source>
        <translation>Ziegel zu 650 g</translation>
    </message>
    <message>
        <source>three bricks of 650 g</source>
        <translation>drei Ziegel zu 650 g</translation>
    </message>
    <message>
        <source>block of 5 kg</source>
        <translation>Block zu 5 kg</translation>
    </message>
    <message>
        <source>block of 4.5 kg</source>
        <translation>Block zu 4,5 kg</translation>
    </message>
    <message>
        <source>bag of 24 liquid quarts, loose</source>
        <translation>Sack zu 24 US-Flüssigquart, lose</translation>
    </message>
    <message>
        <source>bag of 72 liquid quarts, loose</source>
        <translation>Sack zu 72 US-Flüssigquart, lose</translation>
    </message>
    <message>
        <source>bag of 25 L</source>
        <translation>Sack zu 25 L</translation>
    </message>
    <message>
        <source>bag of 40 L</source>
        <translation>Sack zu 40 L</translation>
    </message>
    <message>
        <source>bag of 50 lb (half a cubic foot)</source>
        <translation>Sack zu 50 lb (ein halber Kubikfuß)</translation>
    </message>
    <message>
        <source>bag of 20 L</source>
        <translation>Sack zu 20 L</translation>
    </message>
    <message>
        <source>bag of 8 dry quarts</source>
        <translation>Sack zu 8 US-Trockenquart</translation>
    </message>
    <message>
        <source>bag of 24 dry quarts</source>
        <translation>Sack zu 24 US-Trockenquart</translation>
    </message>
    <message>
        <source>bag of 4 dry quarts, loosened</source>
        <translation>Sack zu 4 US-Trockenquart, aufgelockert</translation>
    </message>
    <message>
        <source>pressed bale of 150 g, soaked and loosened</source>
        <translation>Pressballen zu 150 g, eingeweicht und aufgelockert</translation>
    </message>
    <message>
        <source>bag of 10 L</source>
        <translation>Sack zu 10 L</translation>
    </message>
    <message>
        <source>pane of 0.25 m²</source>
        <translation>Scheibe von 0,25 m²</translation>
    </message>
    <message>
        <source>pane of 0.5 m²</source>
        <translation>Scheibe von 0,5 m²</translation>
    </message>
    <message>
        <source>sheet of 0.25 m²</source>
        <translation>Platte von 0,25 m²</translation>
    </message>
    <message>
        <source>sheet of 0.5 m²</source>
        <translation>Platte von 0,5 m²</translation>
    </message>
    <message>
        <source>towel of 50 x 100 cm</source>
        <translation>Handtuch von 50 × 100 cm</translation>
    </message>
    <message>
        <source>roll of 30 cm x 10 m</source>
        <translation>Rolle von 30 cm × 10 m</translation>
    </message>
    <message>
        <source>board of 0.5 m²</source>
        <translation>Platte von 0,5 m²</translation>
    </message>
    <message>
        <source>1 kg</source>
        <translation>1 kg</translation>
    </message>
    <message>
        <source>100 insects</source>
        <translation>100 Insekten</translation>
    </message>
    <message>
        <source>500 insects</source>
        <translation>500 Insekten</translation>
    </message>
    <message>
        <source>bag of 10</source>
        <translation>Beutel mit 10 Stück</translation>
    </message>
    <message>
        <source>tub of 60 g</source>
        <translation>Dose zu 60 g</translation>
    </message>
    <message>
        <source>tub of 230 g</source>
        <translation>Dose zu 230 g</translation>
    </message>
    <message>
        <source>one culture</source>
        <translation>ein Ansatz</translation>
    </message>
    <message>
        <source>tub of 90 g</source>
        <translation>Dose zu 90 g</translation>
    </message>
    <message>
        <source>bottle of 1 L</source>
        <translation>Flasche zu 1 L</translation>
    </message>
    <message>
        <source>box of 100</source>
        <translation>Schachtel mit 100 Stück</translation>
    </message>
    <message>
        <source>one visit</source>
        <translation>ein Besuch</translation>
    </message>
    <message>
        <source>one year</source>
        <translation>ein Jahr</translation>
    </message>
    <message>
        <source>one animal</source>
        <translation>ein Tier</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>erfunden</translation>
    </message>
</context>
<context>
    <name>costs</name>
    <message>
        <source>electricity</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
</context>
<context>
    <name>courses</name>
    <message>
        <source>All devices together draw %1 on such a day.</source>
        <translation>Alle Geräte zusammen verbrauchen an einem solchen Tag %1.</translation>
    </message>
    <message>
        <source>All devices together draw %1 in these %2.</source>
        <translation>In diesen %2 verbrauchen alle Geräte zusammen %1.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>While the lamps are on, %1 switches on every %2, for %3 each time: its probe swings from %4, the warm side from %5.</source>
        <translation>Bei eingeschalteten Lampen schaltet sich %1 alle %2 für jeweils %3 ein: Die Temperatur am Fühler schwankt von %4, die der warmen Seite von %5.</translation>
    </message>
    <message>
        <source>While the lamps are off, %1 switches on every %2, for %3 each time: its probe swings from %4, the warm side from %5.</source>
        <translation>Bei ausgeschalteten Lampen schaltet sich %1 alle %2 für jeweils %3 ein: Die Temperatur am Fühler schwankt von %4, die der warmen Seite von %5.</translation>
    </message>
    <message>
        <source>That is if it switches, and %1 apart, which the plan does not say.</source>
        <translation>Das gilt, wenn der Thermostat ein- und ausschaltet, mit einer Schaltdifferenz von %1; beides steht nicht im Plan.</translation>
    </message>
    <message>
        <source>So often wears a switch out, and a lamp: one that dims or pulses suits better.</source>
        <translation>So häufiges Schalten verschleißt den Schalter und eine Lampe ebenso: Besser eignet sich ein Thermostat, der dimmt oder pulst.</translation>
    </message>
    <message>
        <source>Lowest while the lamps are off: cool side %1, warm side %2.</source>
        <translation>Tiefstwerte bei ausgeschalteten Lampen: kühle Seite %1, warme Seite %2.</translation>
    </message>
    <message>
        <source>Highest: basking spot %1, warm side %2, cool side %3.</source>
        <translation>Höchstwerte: Sonnenplatz %1, warme Seite %2, kühle Seite %3.</translation>
    </message>
    <message>
        <source>The day does not come to repeat itself: it ends up to %1 from where it began.</source>
        <translation>Die Tage wiederholen sich nicht genau: Am Ende weicht der Tag um bis zu %1 von seinem Anfang ab.</translation>
    </message>
    <message>
        <source>%1: within %2 of its final %3 %4.</source>
        <translation>%1: %4 bis auf %2 am Endwert %3.</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation>von Anfang an</translation>
    </message>
    <message>
        <source>%1: has not settled after %2, when it is at %3.</source>
        <translation>%1: nach %2 noch nicht eingependelt, dann bei %3.</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 nach %2</translation>
    </message>
    <message>
        <source>%1 at the beginning</source>
        <translation>%1 am Anfang</translation>
    </message>
    <message>
        <source>Humidity at ground level on the cool side, likely: lowest %1, highest %2.</source>
        <translation>Luftfeuchte in Bodennähe auf der kühlen Seite, wahrscheinlich: tiefster Wert %1, höchster %2.</translation>
    </message>
    <message>
        <source>Misted at: %1.</source>
        <translation>Gesprüht nach: %1.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1: some place stays between %2 and %3, outside which it comes to harm, through these %4.</source>
        <translation>%1: Mindestens ein Platz bleibt während der ganzen %4 zwischen %2 und %3; außerhalb davon nimmt das Tier Schaden.</translation>
    </message>
    <message>
        <source>Hottest surface, likely: %1. Hottest when digging: %2.</source>
        <translation>Heißeste Fläche, wahrscheinlich: %1. Heißeste Stelle beim Graben: %2.</translation>
    </message>
    <message>
        <source>Coldest floor, likely: %1.</source>
        <translation>Kältester Boden, wahrscheinlich: %1.</translation>
    </message>
    <message>
        <source>winter day</source>
        <translation>Wintertag</translation>
    </message>
    <message>
        <source>summer day</source>
        <translation>Sommertag</translation>
    </message>
    <message>
        <source>warming up</source>
        <translation>Aufheizen</translation>
    </message>
    <message>
        <source>covers forgotten</source>
        <translation>Abdeckungen vergessen</translation>
    </message>
    <message>
        <source>The heat balance followed in time steps through days until one ends as it began; the room takes two hours to get from its night&apos;s temperature to its day&apos;s and back. The band is the range of the steady balance, laid about the likely course.</source>
        <translation>Die Wärmebilanz in Zeitschritten über mehrere Tage verfolgt, bis ein Tag so endet, wie er begann; der Raum braucht zwei Stunden von der Nacht- zur Tagestemperatur und ebenso lange zurück. Das Band ist die Spanne der stationären Bilanz, um den wahrscheinlichen Verlauf gelegt.</translation>
    </message>
    <message>
        <source>The heat balance followed in time steps, with everything switched on in a box that is as warm as the room.</source>
        <translation>Die Wärmebilanz in Zeitschritten verfolgt; dabei ist alles eingeschaltet, und das Terrarium ist anfangs so warm wie der Raum.</translation>
    </message>
    <message>
        <source>The heat balance followed in time steps from the steady state before the fault. The earliest time is that of the unfavourable end of the range.</source>
        <translation>Die Wärmebilanz in Zeitschritten verfolgt, ausgehend vom stationären Zustand vor dem Störfall. Der früheste Zeitpunkt gilt für das ungünstige Ende der Spanne.</translation>
    </message>
    <message>
        <source>%1: some place stays below %2, above which it comes to harm, through these %3.</source>
        <translation>%1: Mindestens ein Platz bleibt während der ganzen %3 unter %2; darüber nimmt das Tier Schaden.</translation>
    </message>
    <message>
        <source>%1: some place stays above %2, below which it comes to harm, through these %3.</source>
        <translation>%1: Mindestens ein Platz bleibt während der ganzen %3 über %2; darunter nimmt das Tier Schaden.</translation>
    </message>
    <message>
        <source>%1: even the coolest place may be over %2, where it comes to harm, %3</source>
        <translation>%1: Selbst der kühlste Platz kann über der schädlichen Grenze von %2 liegen, und zwar %3</translation>
    </message>
    <message>
        <source>%1: even the warmest place may be under %2, where it comes to harm, %3</source>
        <translation>%1: Selbst der wärmste Platz kann unter der schädlichen Grenze von %2 liegen, und zwar %3</translation>
    </message>
    <message>
        <source>after %1 at the earliest</source>
        <translation>frühestens nach %1</translation>
    </message>
    <message>
        <source>; likely not within these %1.</source>
        <translation>; wahrscheinlich nicht innerhalb dieser %1.</translation>
    </message>
    <message>
        <source>; likely after %1.</source>
        <translation>; wahrscheinlich nach %1.</translation>
    </message>
    <message>
        <source>; likely so from the beginning.</source>
        <translation>; wahrscheinlich schon von Anfang an.</translation>
    </message>
    <message>
        <source>Not known: the balance of heat found no solution over these hours.</source>
        <translation>Nicht bekannt: Für diese Stunden fand die Wärmebilanz keine Lösung.</translation>
    </message>
    <message>
        <source>It breaks off after %1: what follows is not known.</source>
        <translation>Der Verlauf bricht nach %1 ab: Was danach kommt, ist nicht bekannt.</translation>
    </message>
</context>
<context>
    <name>dry_spells</name>
    <message>
        <source>Unwatered in winter</source>
        <translation>Ohne Befeuchten im Winter</translation>
    </message>
    <message>
        <source>Unwatered in summer</source>
        <translation>Ohne Befeuchten im Sommer</translation>
    </message>
    <message>
        <source>no least humidity on file to compare with</source>
        <translation>keine Mindestluftfeuchte zum Vergleich hinterlegt</translation>
    </message>
    <message>
        <source>under %1 by day from the beginning</source>
        <translation>tagsüber von Anfang an unter %1</translation>
    </message>
    <message>
        <source>likely holds %1 by day for %2 and more; under it after %3 at the earliest</source>
        <translation>hält tagsüber wahrscheinlich %1 für %2 und länger; frühestens nach %3 darunter</translation>
    </message>
    <message>
        <source>holds %1 by day for %2 and more</source>
        <translation>hält tagsüber %1 für %2 und länger</translation>
    </message>
    <message>
        <source>under %1 by day after %2 to more than %3 (likely %4)</source>
        <translation>tagsüber nach %2 bis mehr als %3 unter %1 (wahrscheinlich %4)</translation>
    </message>
    <message>
        <source>under %1 by day after %2</source>
        <translation>tagsüber nach %2 unter %1</translation>
    </message>
    <message>
        <source>The steady day and night are worked out again step by step while the upper 10 cm of the bed lose their water, with nobody misting and the bowls kept filled. A bed gives off less once part of its water is gone (FAO Irrigation and Drainage Paper 56).</source>
        <translation>Der stationäre Tag und die stationäre Nacht werden Schritt für Schritt neu berechnet, während die oberen 10 cm des Bodengrunds ihr Wasser verlieren; niemand sprüht, und die Wasserschalen bleiben gefüllt. Ein Bodengrund gibt weniger ab, sobald ein Teil seines Wassers verdunstet ist (FAO Irrigation and Drainage Paper 56).</translation>
    </message>
</context>
<context>
    <name>files</name>
    <message>
        <source>“%1” is larger than %2, the most that is read. It is probably not the file you meant.</source>
        <translation>„%1“ ist größer als %2; größere Dateien werden nicht gelesen. Wahrscheinlich ist es nicht die gemeinte Datei.</translation>
    </message>
    <message>
        <source>“%1” does not exist.</source>
        <translation>„%1“ gibt es nicht.</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be read: %2.</source>
        <translation>„%1“ lässt sich nicht lesen: %2.</translation>
    </message>
    <message>
        <source>“%1” is a folder, not a file.</source>
        <translation>„%1“ ist ein Ordner, keine Datei.</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be written: %2.</source>
        <translation>„%1“ lässt sich nicht schreiben: %2.</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>Standardeingabe</translation>
    </message>
    <message>
        <source>The folder “%1” can&apos;t be made.</source>
        <translation>Der Ordner „%1“ lässt sich nicht anlegen.</translation>
    </message>
    <message>
        <source>“%1” is not one of the lists kept here.</source>
        <translation>„%1“ gehört nicht zu den hier abgelegten Listen.</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be deleted.</source>
        <translation>„%1“ lässt sich nicht löschen.</translation>
    </message>
</context>
<context>
    <name>labels</name>
    <message>
        <source>on a winter day</source>
        <translation>an einem Wintertag</translation>
    </message>
    <message>
        <source>on a winter night</source>
        <translation>in einer Winternacht</translation>
    </message>
    <message>
        <source>on a summer day</source>
        <translation>an einem Sommertag</translation>
    </message>
    <message>
        <source>on a summer night</source>
        <translation>in einer Sommernacht</translation>
    </message>
    <message>
        <source>in a heat wave</source>
        <translation>bei Hitzewelle</translation>
    </message>
    <message>
        <source>in a power cut</source>
        <translation>bei Stromausfall</translation>
    </message>
    <message>
        <source>with the lamp burnt out</source>
        <translation>bei durchgebrannter Lampe</translation>
    </message>
    <message>
        <source>if the mat sticks on</source>
        <translation>bei dauernd heizender Matte</translation>
    </message>
    <message>
        <source>with the covers forgotten off</source>
        <translation>bei vergessenen Abdeckungen</translation>
    </message>
    <message>
        <source>the winter day</source>
        <translation>der Wintertag</translation>
    </message>
    <message>
        <source>the summer day</source>
        <translation>der Sommertag</translation>
    </message>
    <message>
        <source>the first warming up</source>
        <translation>das erste Aufheizen</translation>
    </message>
    <message>
        <source>a power cut</source>
        <translation>ein Stromausfall</translation>
    </message>
    <message>
        <source>a burnt-out lamp</source>
        <translation>der Ausfall einer Lampe</translation>
    </message>
    <message>
        <source>a mat that sticks on</source>
        <translation>das Dauerheizen einer Matte</translation>
    </message>
    <message>
        <source>a heat wave</source>
        <translation>eine Hitzewelle</translation>
    </message>
    <message>
        <source>a box whose covers are forgotten off</source>
        <translation>ein Tag mit vergessenen Abdeckungen</translation>
    </message>
    <message>
        <source>in winter</source>
        <translation>im Winter</translation>
    </message>
    <message>
        <source>in summer</source>
        <translation>im Sommer</translation>
    </message>
    <message>
        <source>at the surface</source>
        <translation>an der Oberfläche</translation>
    </message>
    <message>
        <source>in the shade at ground level</source>
        <translation>im Schatten in Bodennähe</translation>
    </message>
    <message>
        <source>at the animal&apos;s back</source>
        <translation>am Rücken des Tieres</translation>
    </message>
    <message>
        <source>basking spot</source>
        <translation>Sonnenplatz</translation>
    </message>
    <message>
        <source>warm side</source>
        <translation>warme Seite</translation>
    </message>
    <message>
        <source>cool side</source>
        <translation>kühle Seite</translation>
    </message>
    <message>
        <source>night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>can burn</source>
        <translation>brennbar</translation>
    </message>
    <message>
        <source>can&apos;t burn</source>
        <translation>nicht brennbar</translation>
    </message>
    <message>
        <source>Its thermostat holds it.</source>
        <translation>Ein Thermostat begrenzt die Matte.</translation>
    </message>
    <message>
        <source>No thermostat holds it.</source>
        <translation>Kein Thermostat begrenzt die Matte.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>away from those that already live here</source>
        <translation>abseits der Tiere, die schon hier leben</translation>
    </message>
    <message>
        <source>also where it is the first</source>
        <translation>auch wenn es das erste ist</translation>
    </message>
    <message>
        <source>warm</source>
        <translation>warme Seite</translation>
    </message>
    <message>
        <source>cool</source>
        <translation>kühle Seite</translation>
    </message>
    <message>
        <source>longer side</source>
        <translation>längere Seite</translation>
    </message>
    <message>
        <source>shorter side</source>
        <translation>kürzere Seite</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>zeitgeschaltet</translation>
    </message>
    <message>
        <source>always-on</source>
        <translation>mit Dauerstrom</translation>
    </message>
    <message>
        <source>a plain heating load</source>
        <translation>eine reine Heizlast</translation>
    </message>
    <message>
        <source>a lamp with a ballast</source>
        <translation>eine Lampe mit Vorschaltgerät</translation>
    </message>
    <message>
        <source>an electronic load</source>
        <translation>eine elektronische Last</translation>
    </message>
    <message>
        <source>a motor</source>
        <translation>ein Motor</translation>
    </message>
    <message>
        <source>a wall</source>
        <translation>eine Wand</translation>
    </message>
    <message>
        <source>the base</source>
        <translation>die Bodenplatte</translation>
    </message>
    <message>
        <source>the top</source>
        <translation>die Oberseite</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>walls</source>
        <translation>Wände</translation>
    </message>
    <message>
        <source>base</source>
        <translation>Bodenplatte</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberseite</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>substrate</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>what lies below</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>statutory</source>
        <translation>gesetzlich</translation>
    </message>
    <message>
        <source>welfare advice</source>
        <translation>Tierschutzempfehlung</translation>
    </message>
    <message>
        <source>veterinary advice</source>
        <translation>tierärztliche Empfehlung</translation>
    </message>
    <message>
        <source>laboratory minimum</source>
        <translation>Mindestmaß für Labortiere</translation>
    </message>
    <message>
        <source>no particular place</source>
        <translation>kein bestimmter Ort</translation>
    </message>
    <message>
        <source>a material is not on file</source>
        <translation>ein Material ist nicht hinterlegt</translation>
    </message>
    <message>
        <source>a material&apos;s figures are incomplete</source>
        <translation>die Werte eines Materials sind unvollständig</translation>
    </message>
    <message>
        <source>something is not stated, and nothing on file stands in for it</source>
        <translation>etwas ist nicht angegeben, und kein hinterlegter Wert kann es ersetzen</translation>
    </message>
    <message>
        <source>a length or thickness is not possible</source>
        <translation>eine Länge oder Dicke ist nicht möglich</translation>
    </message>
    <message>
        <source>the power of a device is not known</source>
        <translation>die Leistung eines Geräts ist nicht bekannt</translation>
    </message>
    <message>
        <source>the lamp has no distance table or meter reading</source>
        <translation>zur Lampe gibt es weder Abstandstabelle noch Messwert</translation>
    </message>
    <message>
        <source>the animal comes nearer than the lamp&apos;s readings reach</source>
        <translation>das Tier kommt näher heran, als die Messwerte der Lampe reichen</translation>
    </message>
    <message>
        <source>the animal is further away than the lamp&apos;s readings reach</source>
        <translation>das Tier ist weiter entfernt, als die Messwerte der Lampe reichen</translation>
    </message>
    <message>
        <source>the place lies beside the lamp, and its beam is not known</source>
        <translation>der Platz liegt neben der Lampe, und ihr Abstrahlwinkel ist nicht bekannt</translation>
    </message>
    <message>
        <source>it has burnt for a while, and how fast it fades is not known</source>
        <translation>sie hat schon eine Weile gebrannt, und wie schnell sie nachlässt, ist nicht bekannt</translation>
    </message>
    <message>
        <source>a water bowl stands under a device</source>
        <translation>eine Wasserschale steht unter einem Gerät</translation>
    </message>
    <message>
        <source>a mister sprays in the box</source>
        <translation>eine Beregnungsanlage sprüht im Terrarium</translation>
    </message>
    <message>
        <source>there is water in the box</source>
        <translation>im Terrarium ist Wasser</translation>
    </message>
    <message>
        <source>its species does not rest through the winter, and the cold harms it</source>
        <translation>seine Art hält keine Winterruhe, und Kälte schadet ihr</translation>
    </message>
    <message>
        <source>it is ill</source>
        <translation>es ist krank</translation>
    </message>
    <message>
        <source>it is underweight</source>
        <translation>es ist untergewichtig</translation>
    </message>
    <message>
        <source>this is its first winter</source>
        <translation>es ist sein erster Winter</translation>
    </message>
    <message>
        <source>it is not stated whether it is well</source>
        <translation>ob es gesund ist, ist nicht angegeben</translation>
    </message>
    <message>
        <source>its age is not stated, and an animal in its first winter must stay warm</source>
        <translation>sein Alter ist nicht angegeben, und im ersten Winter muss ein Tier warm bleiben</translation>
    </message>
    <message>
        <source>its weight is not stated, and the rest ends by weight</source>
        <translation>sein Gewicht ist nicht angegeben, und nach dem Gewicht richtet sich das Ende der Ruhe</translation>
    </message>
    <message>
        <source>no temperatures for a rest are on file for its species; it does not need one</source>
        <translation>für seine Art sind keine Temperaturen für eine Ruhe hinterlegt; sie braucht keine</translation>
    </message>
    <message>
        <source>the rest that is stated is over; enter the next one</source>
        <translation>die angegebene Ruhe ist vorbei; die nächste eintragen</translation>
    </message>
    <message>
        <source>the latitude is not stated</source>
        <translation>der Breitengrad ist nicht angegeben</translation>
    </message>
    <message>
        <source>the species here have no hours of light on file that suit all</source>
        <translation>für die Arten hier ist keine Lichtdauer hinterlegt, die zu allen passt</translation>
    </message>
    <message>
        <source>its day is not in the calendar</source>
        <translation>dieser Tag steht nicht im Kalender</translation>
    </message>
    <message>
        <source>its day is still to come</source>
        <translation>dieser Tag liegt noch vor uns</translation>
    </message>
</context>
<context>
    <name>loam::desk::AnimalsPage</name>
    <message>
        <source>none planned</source>
        <translation>keine geplant</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Winter rest from</source>
        <translation>Winterruhe ab</translation>
    </message>
    <message>
        <source>Weeks in the cold</source>
        <translation>Wochen in der Kälte</translation>
    </message>
    <message>
        <source>Vet&apos;s check before it</source>
        <translation>Tierarzttermin davor</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Tiere</translation>
    </message>
    <message>
        <source>One animal is a sound choice: most of these species live alone.</source>
        <translation>Ein einzelnes Tier ist eine gute Wahl: Die meisten dieser Arten leben allein.</translation>
    </message>
    <message>
        <source>animal</source>
        <translation>Tier</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>well</source>
        <translation>gesund</translation>
    </message>
    <message>
        <source>underweight</source>
        <translation>untergewichtig</translation>
    </message>
    <message>
        <source>ill</source>
        <translation>krank</translation>
    </message>
    <message>
        <source>Length is of the shell for turtles and tortoises, from snout to vent for lizards and frogs, and the whole animal for snakes.</source>
        <translation>Gemeint ist bei Schildkröten die Panzerlänge, bei Echsen und Fröschen die Kopf-Rumpf-Länge, bei Schlangen die Gesamtlänge.</translation>
    </message>
    <message>
        <source>Measured over time</source>
        <translation>Über die Zeit gemessen</translation>
    </message>
    <message>
        <source>Of one animal, or the mean of the group. The newest length and weight count before those above; what they tell stands in the tab “Growth”.</source>
        <translation>Von einem Tier oder im Mittel der Gruppe. Die neueste Länge und das neueste Gewicht zählen vor den Angaben oben; was sie sagen, steht im Reiter „Wachstum“.</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Length then</source>
        <translation>Länge damals</translation>
    </message>
    <message>
        <source>Weight then</source>
        <translation>Gewicht damals</translation>
    </message>
</context>
<context>
    <name>loam::desk::BatchDialog</name>
    <message>
        <source>Sheets for a list of adopters</source>
        <translation>Blätter für eine Liste neuer Halter</translation>
    </message>
    <message>
        <source>The open plan, “%1”, is the template. Each row of the list changes what it names: room, box, animals, what is owned, language and units. An empty cell leaves the template as it is.</source>
        <translation>Der geöffnete Plan, „%1“, ist die Vorlage. Jede Zeile der Liste ändert, was sie nennt: Raum, Terrarium, Tiere, Vorhandenes, Sprache und Einheiten. Eine leere Zelle lässt die Vorlage, wie sie ist.</translation>
    </message>
    <message>
        <source>Rows of the list</source>
        <translation>Zeilen der Liste</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Adopter</source>
        <translation>Neuer Halter</translation>
    </message>
    <message>
        <source>What is wrong with it</source>
        <translation>Was daran nicht stimmt</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>%v of %m</source>
        <translation>%v von %m</translation>
    </message>
    <message>
        <source>&amp;List (CSV)</source>
        <translation>&amp;Liste (CSV)</translation>
    </message>
    <message>
        <source>What the club l&amp;ends (CSV)</source>
        <translation>Was der &amp;Verein verleiht (CSV)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>&amp;Folder for the sheets</source>
        <translation>&amp;Ordner für die Blätter</translation>
    </message>
    <message>
        <source>an empty one, or that of an earlier run</source>
        <translation>ein leerer oder der eines früheren Laufs</translation>
    </message>
    <message>
        <source>Reading the list…</source>
        <translation>Liste wird gelesen…</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Auswählen…</translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation>Auswählen: %1</translation>
    </message>
    <message>
        <source>&amp;Make the sheets</source>
        <translation>Blätter &amp;erstellen</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <source>&amp;Open the folder</source>
        <translation>Ordner ö&amp;ffnen</translation>
    </message>
    <message>
        <source>List of adopters</source>
        <translation>Liste der neuen Halter</translation>
    </message>
    <message>
        <source>CSV files (*.csv)</source>
        <translation>CSV-Dateien (*.csv)</translation>
    </message>
    <message>
        <source>What the club lends</source>
        <translation>Was der Verein verleiht</translation>
    </message>
    <message>
        <source>Folder for the sheets</source>
        <translation>Ordner für die Blätter</translation>
    </message>
    <message>
        <source>%1 rows, all of them good.</source>
        <translation>Zeilen: %1, alle in Ordnung.</translation>
    </message>
    <message>
        <source>%1 rows. %2 of them fail, and the others are made all the same.</source>
        <translation>Zeilen: %1, davon fehlerhaft: %2. Die übrigen werden trotzdem erstellt.</translation>
    </message>
    <message>
        <source>The program “loamstead-cli”, which does this work, is not beside the window&apos;s. Install it.</source>
        <translation>Das Programm „loamstead-cli“, das diese Arbeit übernimmt, liegt nicht neben dem Fensterprogramm. Es muss installiert werden.</translation>
    </message>
    <message>
        <source>All rows have their sheets. The order, the summary and the sheets lie in the folder.</source>
        <translation>Alle Zeilen haben ihre Blätter. Bestellung, Übersicht und Blätter liegen im Ordner.</translation>
    </message>
    <message>
        <source>All good rows have their sheets. “failed.csv” in the folder tells of the others.</source>
        <translation>Alle fehlerfreien Zeilen haben ihre Blätter. Über die anderen gibt „failed.csv“ im Ordner Auskunft.</translation>
    </message>
    <message>
        <source>Stopped. What is done is kept; start again to go on from there.</source>
        <translation>Angehalten. Was fertig ist, bleibt erhalten; ein neuer Start macht dort weiter.</translation>
    </message>
    <message>
        <source>Sheets are being made</source>
        <translation>Blätter werden gerade erstellt</translation>
    </message>
    <message>
        <source>Stop making them? What is done is kept; a later run goes on from there.</source>
        <translation>Das Erstellen anhalten? Was fertig ist, bleibt erhalten; ein späterer Lauf macht dort weiter.</translation>
    </message>
    <message>
        <source>What it changes</source>
        <translation>Was sie ändert</translation>
    </message>
</context>
<context>
    <name>loam::desk::BedPage</name>
    <message>
        <source>Bed, lowest layer first</source>
        <translation>Bodengrund, unterste Schicht zuerst</translation>
    </message>
    <message>
        <source>layer</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Settled depth</source>
        <translation>Einfüllhöhe, gesetzt</translation>
    </message>
    <message>
        <source>At the right, if sloped</source>
        <translation>Am rechten Ende, falls schräg</translation>
    </message>
    <message>
        <source>Water by volume</source>
        <translation>Wasseranteil (Volumen)</translation>
    </message>
</context>
<context>
    <name>loam::desk::BoxPage</name>
    <message>
        <source>Box</source>
        <translation>Terrarium</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation>Steht auf</translation>
    </message>
    <message>
        <source>Inner length</source>
        <translation>Innenlänge</translation>
    </message>
    <message>
        <source>Inner width, front to back</source>
        <translation>Innenbreite, vorn bis hinten</translation>
    </message>
    <message>
        <source>Inner height</source>
        <translation>Innenhöhe</translation>
    </message>
    <message>
        <source>Walls</source>
        <translation>Wände</translation>
    </message>
    <message>
        <source>Wall thickness</source>
        <translation>Wanddicke</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Bodenplatte</translation>
    </message>
    <message>
        <source>Base thickness</source>
        <translation>Dicke der Bodenplatte</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oberseite</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Open share of the mesh</source>
        <translation>Offener Anteil des Gitters</translation>
    </message>
    <message>
        <source>Covers on the top</source>
        <translation>Abdeckungen auf der Oberseite</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>Von links</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Vents</source>
        <translation>Lüftungen</translation>
    </message>
    <message>
        <source>vent</source>
        <translation>Lüftung</translation>
    </message>
    <message>
        <source>Free area</source>
        <translation>Freier Querschnitt</translation>
    </message>
    <message>
        <source>Height above the base</source>
        <translation>Höhe über der Bodenplatte</translation>
    </message>
    <message>
        <source>Walls of another make</source>
        <translation>Abweichende Wände</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Backdrops and insulation</source>
        <translation>Verkleidungen und Dämmung</translation>
    </message>
    <message>
        <source>lining</source>
        <translation>Verkleidung</translation>
    </message>
    <message>
        <source>Side of the wall</source>
        <translation>Wandseite</translation>
    </message>
    <message>
        <source>Takes over from</source>
        <translation>Löst ab</translation>
    </message>
    <message>
        <source>no other box</source>
        <translation>kein anderes Terrarium</translation>
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
        <translation>Titel</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Official rules of</source>
        <translation>Amtliche Regeln von</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>Years to look ahead</source>
        <translation>Betrachtete Jahre</translation>
    </message>
    <message>
        <source>Discount rate a year</source>
        <translation>Zinssatz im Jahr</translation>
    </message>
    <message>
        <source>Price level</source>
        <translation>Preisniveau</translation>
    </message>
    <message>
        <source>low</source>
        <translation>niedrig</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>the cheapest</source>
        <translation>am günstigsten</translation>
    </message>
    <message>
        <source>the fewest</source>
        <translation>möglichst wenige</translation>
    </message>
    <message>
        <source>the least left over</source>
        <translation>möglichst wenig Rest</translation>
    </message>
    <message>
        <source>as usual: the cheapest</source>
        <translation>wie üblich: am günstigsten</translation>
    </message>
    <message>
        <source>Bought at</source>
        <translation>Gekauft bei</translation>
    </message>
    <message>
        <source>wherever it is cheapest</source>
        <translation>wo es am günstigsten ist</translation>
    </message>
    <message>
        <source>Set aside for surprises</source>
        <translation>Reserve für Unvorhergesehenes</translation>
    </message>
    <message>
        <source>Already on the shelf</source>
        <translation>Schon vorhanden</translation>
    </message>
    <message>
        <source>owned item</source>
        <translation>vorhandener Artikel</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artikel</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>Left out or replaced</source>
        <translation>Weggelassen oder ersetzt</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: left out</source>
        <translation>%1: weggelassen</translation>
    </message>
    <message>
        <source>Need</source>
        <translation>Bedarf</translation>
    </message>
    <message>
        <source>Buy instead</source>
        <translation>Stattdessen kaufen</translation>
    </message>
    <message>
        <source>nothing: left out</source>
        <translation>nichts: weggelassen</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Lines of your own</source>
        <translation>Eigene Zeilen</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>Einzelpreis</translation>
    </message>
    <message>
        <source>Again after</source>
        <translation>Erneut nach</translation>
    </message>
</context>
<context>
    <name>loam::desk::CalendarDialog</name>
    <message>
        <source>Care calendar</source>
        <translation>Pflegekalender</translation>
    </message>
    <message>
        <source>First day of care</source>
        <translation>Erster Pflegetag</translation>
    </message>
    <message>
        <source>&amp;First day of care:</source>
        <translation>&amp;Erster Pflegetag:</translation>
    </message>
    <message>
        <source>What is done, how often, and first on which day</source>
        <translation>Was getan wird, wie oft und zuerst an welchem Tag</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Wie oft</translation>
    </message>
    <message>
        <source>First on</source>
        <translation>Zuerst am</translation>
    </message>
    <message>
        <source>What to do, and why</source>
        <translation>Was zu tun ist und warum</translation>
    </message>
    <message>
        <source>&amp;Save for a calendar program…</source>
        <translation>Für ein Kalenderprogramm &amp;speichern…</translation>
    </message>
    <message>
        <source>The file is read by calendar programs (iCalendar). Reading it in again replaces what it said before, as long as the plan&apos;s title stays the same. Give it a calendar of its own.</source>
        <translation>Kalenderprogramme lesen die Datei ein (iCalendar). Erneutes Einlesen ersetzt das Frühere, solange der Titel des Plans derselbe bleibt. Am besten einen eigenen Kalender dafür anlegen.</translation>
    </message>
    <message>
        <source>Save the calendar</source>
        <translation>Kalender speichern</translation>
    </message>
    <message>
        <source>Calendars (*.ics);;All files (*)</source>
        <translation>Kalender (*.ics);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>care</source>
        <translation>Pflege</translation>
    </message>
    <message>
        <source>The calendar was not saved</source>
        <translation>Der Kalender wurde nicht gespeichert</translation>
    </message>
</context>
<context>
    <name>loam::desk::CommandFinder</name>
    <message>
        <source>What do you want to do?</source>
        <translation>Was möchten Sie tun?</translation>
    </message>
    <message>
        <source>A word of it, for example: print</source>
        <translation>Ein Wort daraus, zum Beispiel: drucken</translation>
    </message>
    <message>
        <source>What to look for in the menus</source>
        <translation>Wonach in den Menüs gesucht wird</translation>
    </message>
    <message>
        <source>What the menus can do</source>
        <translation>Was die Menüs können</translation>
    </message>
</context>
<context>
    <name>loam::desk::ComparisonChoice</name>
    <message>
        <source>%1 as saved on %2</source>
        <translation>%1, gespeichert am %2</translation>
    </message>
    <message>
        <source>Compare with another plan</source>
        <translation>Mit einem anderen Plan vergleichen</translation>
    </message>
    <message>
        <source>%1 as kept at %2</source>
        <translation>%1, gemerkt um %2</translation>
    </message>
</context>
<context>
    <name>loam::desk::ComparisonView</name>
    <message>
        <source>Only what &amp;differs</source>
        <translation>Nur &amp;Unterschiede</translation>
    </message>
    <message>
        <source>C&amp;lose comparison</source>
        <translation>Vergleich &amp;schließen</translation>
    </message>
    <message>
        <source>This plan beside the other</source>
        <translation>Dieser Plan neben dem anderen</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennwert</translation>
    </message>
    <message>
        <source>Other plan</source>
        <translation>Anderer Plan</translation>
    </message>
    <message>
        <source>This plan</source>
        <translation>Dieser Plan</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Compared with %1</source>
        <translation>Vergleich mit %1</translation>
    </message>
    <message>
        <source>The other plan is being worked out…</source>
        <translation>Der andere Plan wird berechnet…</translation>
    </message>
    <message>
        <source>%1. The new figures are being worked out…</source>
        <translation>%1. Die neuen Zahlen werden berechnet…</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>dieser Plan</translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation>Keine Unterschiede.</translation>
    </message>
    <message>
        <source>The prices are invented examples.</source>
        <translation>Die Preise sind erfundene Beispiele.</translation>
    </message>
</context>
<context>
    <name>loam::desk::CostsView</name>
    <message>
        <source>Line: typical. Band: low to high.</source>
        <translation>Linie: üblich. Band: niedrig bis hoch.</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Cost, %1</source>
        <translation>Kosten, %1</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Niedrig</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>Typically %1 to begin, %2 a year.</source>
        <translation>Üblich sind %1 zu Beginn und %2 im Jahr.</translation>
    </message>
    <message>
        <source>The price list is in another currency than the plan, so nothing is costed.</source>
        <translation>Die Preisliste hat eine andere Währung als der Plan, deshalb werden keine Kosten berechnet.</translation>
    </message>
</context>
<context>
    <name>loam::desk::CourseChart</name>
    <message>
        <source>Temperatures over hours</source>
        <translation>Temperaturen über die Stunden</translation>
    </message>
    <message>
        <source>harmful over %1</source>
        <translation>schädlich über %1</translation>
    </message>
    <message>
        <source>harmful under %1</source>
        <translation>schädlich unter %1</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Hours since the lamps went on</source>
        <translation>Stunden nach „Lampen an“</translation>
    </message>
    <message>
        <source>Hours since switch-on</source>
        <translation>Stunden nach dem Einschalten</translation>
    </message>
    <message>
        <source>Hours since it began</source>
        <translation>Stunden seit dem Beginn</translation>
    </message>
</context>
<context>
    <name>loam::desk::CoursesView</name>
    <message>
        <source>Day or drill that the chart shows</source>
        <translation>Tag oder Störfall, den das Diagramm zeigt</translation>
    </message>
    <message>
        <source>Sho&amp;w:</source>
        <translation>An&amp;zeigen:</translation>
    </message>
    <message>
        <source>Band: range. Hatched: target. Bar on top: lamps on. Drop: misting.</source>
        <translation>Band: Spanne. Schraffiert: Zielwert. Balken oben: Lampen an. Tropfen: Sprühen.</translation>
    </message>
    <message>
        <source>The hours are worked out last; they come in a moment.</source>
        <translation>Die Stunden werden zuletzt berechnet; sie kommen gleich.</translation>
    </message>
    <message>
        <source>What the course comes to</source>
        <translation>Was der Verlauf ergibt</translation>
    </message>
    <message>
        <source>Nothing is known of the hours of this box: its balance of heat found no solution.</source>
        <translation>Über die Stunden in diesem Terrarium ist nichts bekannt: Die Wärmebilanz fand keine Lösung.</translation>
    </message>
</context>
<context>
    <name>loam::desk::DrawingView</name>
    <message>
        <source>Drawing of the enclosure to scale</source>
        <translation>Maßstäbliche Zeichnung des Terrariums</translation>
    </message>
    <message>
        <source>What the drawing shows over the floor</source>
        <translation>Was die Zeichnung auf der Grundfläche zeigt</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>UV index</source>
        <translation>UV-Index</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>&amp;Show:</source>
        <translation>&amp;Zeigen:</translation>
    </message>
    <message>
        <source>Case that the drawing shows</source>
        <translation>Fall, den die Zeichnung zeigt</translation>
    </message>
    <message>
        <source>&amp;on a:</source>
        <translation>&amp;Fall:</translation>
    </message>
    <message>
        <source>w&amp;alls</source>
        <translation>&amp;Wände</translation>
    </message>
    <message>
        <source>Fold out the walls, with the top beside them</source>
        <translation>Die Wände ausklappen, daneben die Oberseite</translation>
    </message>
    <message>
        <source>&amp;grid</source>
        <translation>&amp;Raster</translation>
    </message>
    <message>
        <source>Faint lines at round distances</source>
        <translation>Feine Linien in runden Abständen</translation>
    </message>
</context>
<context>
    <name>loam::desk::ElementList</name>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Add: %1</source>
        <translation>Hinzufügen: %1</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy: %1</source>
        <translation>Kopieren: %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove: %1</source>
        <translation>Entfernen: %1</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>Copy %1</source>
        <translation>%1 kopieren</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
</context>
<context>
    <name>loam::desk::EnclosureBar</name>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy this enclosure</source>
        <translation>Dieses Terrarium kopieren</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove this enclosure</source>
        <translation>Dieses Terrarium entfernen</translation>
    </message>
    <message>
        <source>Enclosure in view</source>
        <translation>Gezeigtes Terrarium</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Add an enclosure</source>
        <translation>Ein Terrarium hinzufügen</translation>
    </message>
    <message>
        <source>Enclosure %1</source>
        <translation>Terrarium %1</translation>
    </message>
    <message>
        <source>Add enclosure</source>
        <translation>Terrarium hinzufügen</translation>
    </message>
    <message>
        <source>%1, copy</source>
        <translation>%1, Kopie</translation>
    </message>
    <message>
        <source>Copy enclosure</source>
        <translation>Terrarium kopieren</translation>
    </message>
    <message>
        <source>Remove enclosure</source>
        <translation>Terrarium entfernen</translation>
    </message>
</context>
<context>
    <name>loam::desk::EquipmentPage</name>
    <message>
        <source>Lamps, heaters and other equipment</source>
        <translation>Lampen, Heizer und andere Technik</translation>
    </message>
    <message>
        <source>device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>power not stated</source>
        <translation>Leistung nicht angegeben</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>UV readings of the chosen lamp</source>
        <translation>UV-Messwerte der gewählten Lampe</translation>
    </message>
    <message>
        <source>From the maker&apos;s table or from a meter, without mesh between. One reading will do, a table says more. UV is never worked out from watts.</source>
        <translation>Aus der Tabelle des Herstellers oder mit einem Messgerät, ohne Gitter dazwischen. Ein Messwert genügt, eine Tabelle sagt mehr. UV wird nie aus der Wattzahl berechnet.</translation>
    </message>
    <message>
        <source>Burnt when read</source>
        <translation>Brennstunden bei der Messung</translation>
    </message>
    <message>
        <source>UVI %1 at %2</source>
        <translation>UVI %1 bei %2</translation>
    </message>
    <message>
        <source>UV reading</source>
        <translation>UV-Messwert</translation>
    </message>
</context>
<context>
    <name>loam::desk::FieldSet</name>
    <message>
        <source>Change “%1”</source>
        <translation>„%1“ ändern</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>“%1” is not an amount of money.</source>
        <translation>„%1“ ist kein Geldbetrag.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
</context>
<context>
    <name>loam::desk::FiguresView</name>
    <message>
        <source>Figures of the enclosure in view</source>
        <translation>Zahlen zum gezeigten Terrarium</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennwert</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Likely</source>
        <translation>Wahrsch.</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Zielwert</translation>
    </message>
    <message>
        <source>What decides the range</source>
        <translation>Was die Spanne bestimmt</translation>
    </message>
</context>
<context>
    <name>loam::desk::FindingsView</name>
    <message>
        <source>Findings, most serious first</source>
        <translation>Befunde, die schwerwiegendsten zuerst</translation>
    </message>
</context>
<context>
    <name>loam::desk::FirstSetup</name>
    <message>
        <source>%1 × %2, %3 high</source>
        <translation>%1 × %2, %3 hoch</translation>
    </message>
    <message>
        <source>A first plan</source>
        <translation>Ein erster Plan</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>We&amp;iter</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Who is to live in it? Everything else follows from that. One animal is a sound choice: most of these species live alone.</source>
        <translation>Wer soll darin leben? Daraus ergibt sich alles Übrige. Ein einzelnes Tier ist eine gute Wahl: Die meisten dieser Arten leben allein.</translation>
    </message>
    <message>
        <source>&amp;Species</source>
        <translation>A&amp;rt</translation>
    </message>
    <message>
        <source>How &amp;many</source>
        <translation>&amp;Anzahl</translation>
    </message>
    <message>
        <source>&amp;Length of each now</source>
        <translation>Jetzige &amp;Länge je Tier</translation>
    </message>
    <message>
        <source>Length is of the shell for turtles and tortoises, from snout to vent for lizards and frogs, and the whole animal for snakes. Leave it empty where you don&apos;t know it.</source>
        <translation>Gemeint ist bei Schildkröten die Panzerlänge, bei Echsen und Fröschen die Kopf-Rumpf-Länge, bei Schlangen die Gesamtlänge. Leer lassen, wenn sie nicht bekannt ist.</translation>
    </message>
    <message>
        <source>How warm is the room? A thermometer left there for some days tells. What stays empty is taken as a wide range, and the results are as wide.</source>
        <translation>Wie warm ist der Raum? Ein Thermometer, das einige Tage dort liegt, zeigt es. Was leer bleibt, wird als weite Spanne angenommen, und entsprechend weit sind die Ergebnisse.</translation>
    </message>
    <message>
        <source>Winter, by &amp;day</source>
        <translation>Winter, &amp;tags</translation>
    </message>
    <message>
        <source>Winter, by &amp;night</source>
        <translation>Winter, &amp;nachts</translation>
    </message>
    <message>
        <source>Summer, by d&amp;ay</source>
        <translation>Sommer, ta&amp;gs</translation>
    </message>
    <message>
        <source>Summer, by n&amp;ight</source>
        <translation>Sommer, na&amp;chts</translation>
    </message>
    <message>
        <source>In a &amp;heat wave</source>
        <translation>Bei &amp;Hitzewelle</translation>
    </message>
    <message>
        <source>the smallest usual size that is large enough</source>
        <translation>die kleinste übliche Größe, die ausreicht</translation>
    </message>
    <message>
        <source>a size of my own</source>
        <translation>eine eigene Größe</translation>
    </message>
    <message>
        <source>&amp;Length inside</source>
        <translation>&amp;Länge innen</translation>
    </message>
    <message>
        <source>Wi&amp;dth inside</source>
        <translation>&amp;Breite innen</translation>
    </message>
    <message>
        <source>&amp;Height inside</source>
        <translation>&amp;Höhe innen</translation>
    </message>
    <message>
        <source>What box is it to be? The floor has to be enough for the animals when they are grown.</source>
        <translation>Was für ein Terrarium soll es sein? Die Grundfläche muss für die ausgewachsenen Tiere reichen.</translation>
    </message>
    <message>
        <source>&amp;Size</source>
        <translation>&amp;Größe</translation>
    </message>
    <message>
        <source>&amp;Walls and base</source>
        <translation>&amp;Wände und Boden</translation>
    </message>
    <message>
        <source>Looking for equipment</source>
        <translation>Technik wird gesucht</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ergebnis der Suche</translation>
    </message>
    <message>
        <source>%1: first plan</source>
        <translation>%1: erster Plan</translation>
    </message>
    <message>
        <source>%1: enough for them by every space rule of their sheet.</source>
        <translation>%1: nach allen Platzregeln des Datenblatts groß genug.</translation>
    </message>
    <message>
        <source>%1: whether that is enough is not known, for no space rule applies.</source>
        <translation>%1: Ob das reicht, ist nicht bekannt, denn keine Platzregel trifft zu.</translation>
    </message>
    <message>
        <source>No usual size is enough for them. The largest, %1, falls short too: they need a room or a pen of their own, or fewer animals.</source>
        <translation>Keine übliche Größe reicht für sie. Auch die größte, %1, reicht nicht: Nötig sind ein eigener Raum oder ein Gehege, oder weniger Tiere.</translation>
    </message>
    <message>
        <source>%1 is too small for them by the rules of their sheet.</source>
        <translation>%1 ist nach den Regeln des Datenblatts zu klein für sie.</translation>
    </message>
    <message>
        <source>The animals</source>
        <translation>Die Tiere</translation>
    </message>
    <message>
        <source>The room</source>
        <translation>Der Raum</translation>
    </message>
    <message>
        <source>The box</source>
        <translation>Das Terrarium</translation>
    </message>
    <message>
        <source>What heats and lights it</source>
        <translation>Was heizt und beleuchtet</translation>
    </message>
    <message>
        <source>Step %1 of %2: %3</source>
        <translation>Schritt %1 von %2: %3</translation>
    </message>
    <message>
        <source>&amp;Make this plan</source>
        <translation>Diesen Plan &amp;anlegen</translation>
    </message>
    <message>
        <source>Without lamps and heaters: I choose them myself</source>
        <translation>Ohne Lampen und Heizung: Die wähle ich selbst</translation>
    </message>
    <message>
        <source>Looking for lamps and heaters that keep every place in its target, in winter and in summer. This takes some seconds; you need not wait for it.</source>
        <translation>Gesucht werden Lampen und Heizgeräte, mit denen jeder Platz im Winter wie im Sommer im Zielbereich bleibt. Das dauert einige Sekunden; man muss nicht darauf warten.</translation>
    </message>
    <message>
        <source>Nothing was found: too little is known for a prediction.</source>
        <translation>Nichts gefunden: Für eine Vorhersage ist zu wenig bekannt.</translation>
    </message>
    <message>
        <source>These keep every place in its target, by the likely figures. Prove them with thermometers before an animal moves in.</source>
        <translation>Damit bleibt nach den wahrscheinlichen Werten jeder Platz im Zielbereich. Vor dem Einzug eines Tieres mit Thermometern nachprüfen.</translation>
    </message>
    <message>
        <source>Nothing that was tried keeps every place in its target. These come nearest; the findings will say what is missing.</source>
        <translation>Nichts von dem, was versucht wurde, hält jeden Platz im Zielbereich. Dies kommt am nächsten; was fehlt, sagen die Befunde.</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>noch nicht gewählt</translation>
    </message>
</context>
<context>
    <name>loam::desk::FittingsPage</name>
    <message>
        <source>Bowls, hides and furniture</source>
        <translation>Schalen, Verstecke und Einrichtung</translation>
    </message>
    <message>
        <source>fitting</source>
        <translation>Einrichtungsteil</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>Von links</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Turned by</source>
        <translation>Gedreht um</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Water depth</source>
        <translation>Wassertiefe</translation>
    </message>
    <message>
        <source>Animals can walk on it</source>
        <translation>Begehbar für Tiere</translation>
    </message>
</context>
<context>
    <name>loam::desk::FormPanel</name>
    <message>
        <source>Chapters of the plan</source>
        <translation>Kapitel des Plans</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Tiere</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Terrarium</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>Furniture</source>
        <translation>Einrichtung</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Technik</translation>
    </message>
    <message>
        <source>Water and light</source>
        <translation>Wasser und Licht</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Site and room</source>
        <translation>Standort und Raum</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Budget</translation>
    </message>
</context>
<context>
    <name>loam::desk::GrowthChart</name>
    <message>
        <source>Lengths by day</source>
        <translation>Längen nach Tagen</translation>
    </message>
    <message>
        <source>Weights by day</source>
        <translation>Gewichte nach Tagen</translation>
    </message>
    <message>
        <source>Weight, %1</source>
        <translation>Gewicht, %1</translation>
    </message>
    <message>
        <source>Length, %1 (dashed: published growth)</source>
        <translation>Länge, %1 (gestrichelt: veröffentlicht)</translation>
    </message>
</context>
<context>
    <name>loam::desk::GrowthView</name>
    <message>
        <source>Animal</source>
        <translation>Tier</translation>
    </message>
    <message>
        <source>What the measurements tell</source>
        <translation>Was die Messungen sagen</translation>
    </message>
    <message>
        <source>Nothing has been measured over time yet. In the chapter “Animals” enter a day with length and weight, every month or so: growth is then set against what is published, and a loss of weight is told before it is a danger.</source>
        <translation>Noch wurde nichts über die Zeit gemessen. Im Kapitel „Tiere“ etwa jeden Monat einen Tag mit Länge und Gewicht eintragen: Dann wird das Wachstum mit veröffentlichten Werten verglichen, und ein Gewichtsverlust fällt auf, bevor er gefährlich wird.</translation>
    </message>
</context>
<context>
    <name>loam::desk::HideButton</name>
    <message>
        <source>Hide this line</source>
        <translation>Diese Zeile ausblenden</translation>
    </message>
</context>
<context>
    <name>loam::desk::HumidityStrip</name>
    <message>
        <source>Humidity at ground level over hours</source>
        <translation>Luftfeuchte in Bodennähe über die Stunden</translation>
    </message>
    <message>
        <source>Humidity at ground level, cool side</source>
        <translation>Luftfeuchte in Bodennähe, kühle Seite</translation>
    </message>
</context>
<context>
    <name>loam::desk::NewItemDialog</name>
    <message>
        <source>one</source>
        <translation>einzeln</translation>
    </message>
    <message>
        <source>New item</source>
        <translation>Neuer Artikel</translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation>&amp;Hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Bought for</source>
        <translation>&amp;Gekauft für</translation>
    </message>
    <message>
        <source>&amp;Name, without a brand</source>
        <translation>&amp;Name, ohne Marke</translation>
    </message>
    <message>
        <source>&amp;How it is sold</source>
        <translation>&amp;Verkaufsform</translation>
    </message>
    <message>
        <source>A pack h&amp;olds</source>
        <translation>&amp;Inhalt der Packung</translation>
    </message>
    <message>
        <source>A pack &amp;costs</source>
        <translation>&amp;Preis der Packung</translation>
    </message>
    <message>
        <source>Unit and useful life are taken from an item for the same purpose; the table shows them.</source>
        <translation>Einheit und Nutzungsdauer werden von einem Artikel für denselben Zweck übernommen; sie stehen in der Tabelle.</translation>
    </message>
    <message>
        <source>It needs a name, a pack with an amount above zero, and a price.</source>
        <translation>Nötig sind ein Name, eine Packung mit einer Menge über null und ein Preis.</translation>
    </message>
</context>
<context>
    <name>loam::desk::OverviewView</name>
    <message>
        <source>All enclosures</source>
        <translation>Alle Terrarien</translation>
    </message>
    <message>
        <source>Enclosure</source>
        <translation>Terrarium</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Grundfläche</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Benötigt</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Angeschlossen</translation>
    </message>
    <message>
        <source>Energy a year</source>
        <translation>Energie im Jahr</translation>
    </message>
    <message>
        <source>Its cost</source>
        <translation>Kosten dafür</translation>
    </message>
</context>
<context>
    <name>loam::desk::PlanDocument</name>
    <message>
        <source>Unnamed plan</source>
        <translation>Unbenannter Plan</translation>
    </message>
</context>
<context>
    <name>loam::desk::PlanFiles</name>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>“%1” has changes that are not saved.</source>
        <translation>„%1“ enthält Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Save them first?</source>
        <translation>Vorher speichern?</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Discard changes</source>
        <translation>Änderungen verwerfen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Open plan</source>
        <translation>Plan öffnen</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Save plan as</source>
        <translation>Plan speichern unter</translation>
    </message>
    <message>
        <source>The plan was not saved</source>
        <translation>Der Plan wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>Your work is still here. Save it under another name or in another folder.</source>
        <translation>Die Arbeit ist noch da. Unter einem anderen Namen oder in einem anderen Ordner speichern.</translation>
    </message>
    <message>
        <source>This plan can&apos;t be opened</source>
        <translation>Dieser Plan lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be opened. Nothing was changed.</source>
        <translation>„%1“ lässt sich nicht öffnen. Nichts wurde geändert.</translation>
    </message>
    <message numerus="yes">
        <source>… and %n more, listed under details.</source>
        <translation>
            <numerusform>… und %n weitere, unter Details aufgeführt.</numerusform>
            <numerusform>… und %n weitere, unter Details aufgeführt.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>loam::desk::Preferences</name>
    <message>
        <source>As the desktop</source>
        <translation>Wie der Desktop</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>The language changes when Loamstead is next started.</source>
        <translation>Die Sprache wechselt beim nächsten Start von Loamstead.</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>Metric (cm, kg, °C)</source>
        <translation>Metrisch (cm, kg, °C)</translation>
    </message>
    <message>
        <source>US (in, lb, °F)</source>
        <translation>US (in, lb, °F)</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>&amp;Darstellung</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>US Letter</translation>
    </message>
    <message>
        <source>Price l&amp;ists…</source>
        <translation>Preis&amp;listen …</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>%1, from the price list in use: “%2”</source>
        <translation>%1, aus der verwendeten Preisliste: „%2“</translation>
    </message>
    <message>
        <source>club, rescue or keeper; may stay empty</source>
        <translation>Verein, Auffangstation oder Halter; darf leer bleiben</translation>
    </message>
    <message>
        <source>how the reader reaches you</source>
        <translation>wie man Sie erreicht</translation>
    </message>
    <message>
        <source>Contact on printed sheets</source>
        <translation>Kontakt auf gedruckten Blättern</translation>
    </message>
    <message>
        <source>&amp;Name on sheets</source>
        <translation>&amp;Name auf Blättern</translation>
    </message>
    <message>
        <source>&amp;Contact</source>
        <translation>&amp;Kontakt</translation>
    </message>
    <message>
        <source>Start it again no&amp;w</source>
        <translation>Jetzt neu st&amp;arten</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceChoice</name>
    <message>
        <source>It is in %1 and the other one in %2. Lists of one currency can be used together.</source>
        <translation>Sie rechnet in %1, die andere in %2. Zusammen verwenden lassen sich nur Listen mit gleicher Währung.</translation>
    </message>
    <message>
        <source>Use a price list</source>
        <translation>Preisliste verwenden</translation>
    </message>
    <message>
        <source>Save the price list</source>
        <translation>Preisliste speichern</translation>
    </message>
    <message>
        <source>prices</source>
        <translation>Preise</translation>
    </message>
    <message>
        <source>The price list was not saved</source>
        <translation>Die Preisliste wurde nicht gespeichert</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceDifferenceDialog</name>
    <message>
        <source>Two price lists</source>
        <translation>Zwei Preislisten</translation>
    </message>
    <message>
        <source>First:</source>
        <translation>Erste:</translation>
    </message>
    <message>
        <source>Second:</source>
        <translation>Zweite:</translation>
    </message>
    <message>
        <source>What differs between the two price lists</source>
        <translation>Unterschiede der beiden Preislisten</translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation>Keine Unterschiede.</translation>
    </message>
    <message>
        <source>Rows that differ: %1.</source>
        <translation>Abweichende Zeilen: %1.</translation>
    </message>
    <message>
        <source>Export the difference</source>
        <translation>Unterschiede exportieren</translation>
    </message>
    <message>
        <source>price-difference</source>
        <translation>preisvergleich</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceEditor</name>
    <message>
        <source>What is wrong with the list</source>
        <translation>Was an der Liste nicht stimmt</translation>
    </message>
    <message>
        <source>&amp;Prices</source>
        <translation>&amp;Preise</translation>
    </message>
    <message>
        <source>&amp;List and terms</source>
        <translation>&amp;Liste und Bedingungen</translation>
    </message>
    <message>
        <source>Show rows with…</source>
        <translation>Zeilen zeigen mit …</translation>
    </message>
    <message>
        <source>Show only rows with this text</source>
        <translation>Nur Zeilen mit diesem Text zeigen</translation>
    </message>
    <message>
        <source>New &amp;item…</source>
        <translation>Neuer &amp;Artikel…</translation>
    </message>
    <message>
        <source>Further pac&amp;k</source>
        <translation>Weitere Pac&amp;kung</translation>
    </message>
    <message>
        <source>Another size of the item that is chosen</source>
        <translation>Eine andere Größe des gewählten Artikels</translation>
    </message>
    <message>
        <source>&amp;Take out</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Takes the chosen packs out of the list</source>
        <translation>Entfernt die gewählten Packungen aus der Liste</translation>
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
        <source>Prices, a row for each pack</source>
        <translation>Preise, eine Zeile je Packung</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Preisliste</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>First mend what is wrong with the list.</source>
        <translation>Zuerst beheben, was an der Liste nicht stimmt.</translation>
    </message>
    <message>
        <source>Further pack</source>
        <translation>Weitere Packung</translation>
    </message>
    <message>
        <source>New item</source>
        <translation>Neuer Artikel</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>The price list was not saved</source>
        <translation>Die Preisliste wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>Saved as “%1”.</source>
        <translation>Gespeichert als „%1“.</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>The price list has changes that are not saved.</source>
        <translation>Die Preisliste enthält Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>The price list has changes that are not saved, and can&apos;t be saved before what is wrong with it is mended.</source>
        <translation>Die Preisliste enthält Änderungen, die nicht gespeichert sind und sich erst speichern lassen, wenn die Fehler darin behoben sind.</translation>
    </message>
    <message>
        <source>&amp;Discard them</source>
        <translation>&amp;Verwerfen</translation>
    </message>
    <message>
        <source>Go on &amp;editing</source>
        <translation>&amp;Weiter bearbeiten</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceListsDialog</name>
    <message>
        <source>Price lists</source>
        <translation>Preislisten</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>In Gebrauch</translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation>&amp;Verwenden</translation>
    </message>
    <message>
        <source>Use it t&amp;oo</source>
        <translation>&amp;Mitverwenden</translation>
    </message>
    <message>
        <source>Buys from several lists, each a place of its own, wherever the whole comes cheapest</source>
        <translation>Kauft nach mehreren Listen ein, jede ein eigener Händler, so, wie es insgesamt am wenigsten kostet</translation>
    </message>
    <message>
        <source>&amp;Edit…</source>
        <translation>&amp;Bearbeiten…</translation>
    </message>
    <message>
        <source>&amp;Copy it</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>Beside the one in use…</source>
        <translation>Neben die verwendete stellen…</translation>
    </message>
    <message>
        <source>&amp;Take in a file…</source>
        <translation>&amp;Datei aufnehmen…</translation>
    </message>
    <message>
        <source>&amp;Write it to a file…</source>
        <translation>&amp;In eine Datei schreiben…</translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation>&amp;Löschen…</translation>
    </message>
    <message>
        <source>can&apos;t be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>in Gebrauch</translation>
    </message>
    <message>
        <source>Comes with the program; a copy of it can be changed.</source>
        <translation>Gehört zum Programm; eine Kopie davon lässt sich ändern.</translation>
    </message>
    <message>
        <source>Kept with the program as %1.</source>
        <translation>Beim Programm abgelegt als %1.</translation>
    </message>
    <message>
        <source>A file of its own: %1</source>
        <translation>Eine eigene Datei: %1</translation>
    </message>
    <message>
        <source>Prices of %1.</source>
        <translation>Preise vom %1.</translation>
    </message>
    <message>
        <source>Leave it &amp;off</source>
        <translation>&amp;Nicht mitverwenden</translation>
    </message>
    <message>
        <source>The price list was not saved</source>
        <translation>Die Preisliste wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>Take in a price list</source>
        <translation>Preisliste aufnehmen</translation>
    </message>
    <message>
        <source>Delete this price list?</source>
        <translation>Diese Preisliste löschen?</translation>
    </message>
    <message>
        <source>“%1” is deleted. It can be taken back from the waste bin where the desktop has one.</source>
        <translation>„%1“ wird gelöscht. Aus dem Papierkorb lässt sich die Liste zurückholen, wo der Desktop einen hat.</translation>
    </message>
    <message>
        <source>&amp;Delete it</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>&amp;Keep it</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <source>The price list was not deleted</source>
        <translation>Die Preisliste wurde nicht gelöscht</translation>
    </message>
    <message>
        <source>Nothing to compare with</source>
        <translation>Nichts zum Vergleichen</translation>
    </message>
    <message>
        <source>The list in use can&apos;t be read any more.</source>
        <translation>Die verwendete Liste lässt sich nicht mehr lesen.</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceTableModel</name>
    <message>
        <source>Change “%1”</source>
        <translation>„%1“ ändern</translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceTerms</name>
    <message>
        <source>“%1” is not an amount of money.</source>
        <translation>„%1“ ist kein Geldbetrag.</translation>
    </message>
    <message>
        <source>“%1” is not what delivery costs. Write one price, or the least, the typical and the most with dashes between.</source>
        <translation>„%1“ ist keine Angabe für Lieferkosten. Einen Preis schreiben oder den niedrigsten, den üblichen und den höchsten mit Strichen dazwischen.</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>Die Liste</translation>
    </message>
    <message>
        <source>How it is sold</source>
        <translation>Verkauf</translation>
    </message>
    <message>
        <source>Change “%1”</source>
        <translation>„%1“ ändern</translation>
    </message>
    <message>
        <source>&amp;Name of the list</source>
        <translation>&amp;Name der Liste</translation>
    </message>
    <message>
        <source>What you will know it by</source>
        <translation>Woran Sie die Liste wiedererkennen</translation>
    </message>
    <message>
        <source>&amp;Date of the prices</source>
        <translation>&amp;Datum der Preise</translation>
    </message>
    <message>
        <source>Year-month-day, for example 2026-11-01</source>
        <translation>Jahr-Monat-Tag, zum Beispiel 2026-11-01</translation>
    </message>
    <message>
        <source>&amp;Currency</source>
        <translation>&amp;Währung</translation>
    </message>
    <message>
        <source>Its three letters, for example EUR</source>
        <translation>Die drei Buchstaben, zum Beispiel EUR</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Ort</translation>
    </message>
    <message>
        <source>Where the prices were taken</source>
        <translation>Wo die Preise erhoben wurden</translation>
    </message>
    <message>
        <source>Bought &amp;at</source>
        <translation>Gekauft &amp;bei</translation>
    </message>
    <message>
        <source>What kind of place: shop, online, club. It stands beside each line of an order from several places.</source>
        <translation>Art der Bezugsquelle: Laden, online, Verein. Sie steht neben jeder Zeile einer Bestellung bei mehreren Händlern.</translation>
    </message>
    <message>
        <source>The prices are &amp;invented examples</source>
        <translation>Die Preise sind &amp;erfundene Beispiele</translation>
    </message>
    <message>
        <source>Every sheet with such prices says so</source>
        <translation>Jedes Blatt mit solchen Preisen weist darauf hin</translation>
    </message>
    <message>
        <source>Change whether the prices are invented</source>
        <translation>Ändern, ob die Preise erfunden sind</translation>
    </message>
    <message>
        <source>De&amp;livery</source>
        <translation>&amp;Lieferung</translation>
    </message>
    <message>
        <source>What it costs to have an order brought: one price, or least – typical – most. Empty: it is fetched.</source>
        <translation>Was die Lieferung einer Bestellung kostet: ein Preis oder niedrigster – üblicher – höchster. Leer: Es wird abgeholt.</translation>
    </message>
    <message>
        <source>&amp;Free from</source>
        <translation>&amp;Frei ab</translation>
    </message>
    <message>
        <source>Goods of this much are brought for nothing. Empty: never.</source>
        <translation>Ab diesem Warenwert ist die Lieferung kostenlos. Leer: nie.</translation>
    </message>
    <message>
        <source>First say what delivery costs, then from how much on it is free.</source>
        <translation>Zuerst angeben, was die Lieferung kostet, dann, ab wann sie frei ist.</translation>
    </message>
    <message>
        <source>Ta&amp;x on top</source>
        <translation>&amp;Steuer zusätzlich</translation>
    </message>
    <message>
        <source>In per cent of goods and delivery. Empty: it is in the prices.</source>
        <translation>In Prozent von Ware und Lieferung. Leer: in den Preisen enthalten.</translation>
    </message>
    <message>
        <source>“%1” is not a share in per cent.</source>
        <translation>„%1“ ist kein Anteil in Prozent.</translation>
    </message>
    <message>
        <source>Least o&amp;rder</source>
        <translation>&amp;Mindestbestellung</translation>
    </message>
    <message>
        <source>Smaller orders of goods are not taken. Empty: all are.</source>
        <translation>Bestellungen mit geringerem Warenwert werden nicht angenommen. Leer: alle werden angenommen.</translation>
    </message>
</context>
<context>
    <name>loam::desk::QuantityField</name>
    <message>
        <source>Not stated. The program uses %1 meanwhile.</source>
        <translation>Nicht angegeben. Das Programm rechnet einstweilen mit %1.</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>“%1” is not a figure in %2.</source>
        <translation>„%1“ ist keine Angabe in %2.</translation>
    </message>
    <message>
        <source>This must lie within %1.</source>
        <translation>Der Wert muss in diesem Bereich liegen: %1.</translation>
    </message>
</context>
<context>
    <name>loam::desk::ReadingPlot</name>
    <message>
        <source>Readings against what was expected</source>
        <translation>Messwerte und was erwartet wurde</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1: read %2, expected %3, %4</source>
        <translation>%1: abgelesen %2, erwartet %3, %4</translation>
    </message>
    <message>
        <source>Dot: read, with its accuracy; hollow: not used. Open bar: expected by the plan alone. Filled bar: expected with the readings.</source>
        <translation>Punkt: abgelesen, mit Genauigkeit; hohl: nicht verwendet. Offener Balken: allein nach dem Plan erwartet. Gefüllter Balken: mit den Messwerten erwartet.</translation>
    </message>
</context>
<context>
    <name>loam::desk::ReadingsPage</name>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Thermometer readings</source>
        <translation>Thermometer-Messwerte</translation>
    </message>
    <message>
        <source>Readings from the finished box, hours after anything was changed, narrow what is expected. They hold for the box as it is planned here: remove them when lamps, covers or places change.</source>
        <translation>Messwerte aus dem fertigen Terrarium, Stunden nach der letzten Änderung abgelesen, engen ein, was zu erwarten ist. Sie gelten für das Terrarium, wie es hier geplant ist: Sie sind zu entfernen, wenn sich Lampen, Abdeckungen oder Plätze ändern.</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>Von links</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <source>Accuracy, plus or minus</source>
        <translation>Genauigkeit, plus/minus</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Lampen</translation>
    </message>
    <message>
        <source>on</source>
        <translation>an</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>Room then</source>
        <translation>Raum dabei</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
</context>
<context>
    <name>loam::desk::ResultsPanel</name>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>Hour by hour</source>
        <translation>Stunde für Stunde</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre, wenn</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Shopping</source>
        <translation>Einkauf</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>All boxes</source>
        <translation>Alle Terrarien</translation>
    </message>
    <message>
        <source>Working out the new figures; these are the last ones.</source>
        <translation>Die neuen Zahlen werden berechnet; dies sind die vorigen.</translation>
    </message>
    <message>
        <source>Growth</source>
        <translation>Wachstum</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
</context>
<context>
    <name>loam::desk::Sheet</name>
    <message>
        <source>cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>Nothing is chosen. Tab goes from one thing to the next.</source>
        <translation>Nichts ist gewählt. Die Tabulatortaste führt von einem Teil zum nächsten.</translation>
    </message>
    <message>
        <source>Resize %1</source>
        <translation>Größe ändern: %1</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Verschieben: %1</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>Entfernen: %1</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>Drehen: %1</translation>
    </message>
    <message>
        <source>Align %1</source>
        <translation>Ausrichten: %1</translation>
    </message>
    <message>
        <source>&amp;Show in the form</source>
        <translation>Im &amp;Formular zeigen</translation>
    </message>
    <message>
        <source>&amp;Turn by a quarter</source>
        <translation>Um 90° &amp;drehen</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>D&amp;uplizieren</translation>
    </message>
    <message>
        <source>&amp;Align with</source>
        <translation>&amp;Ausrichten an</translation>
    </message>
    <message>
        <source>the &amp;left wall</source>
        <translation>der &amp;linken Wand</translation>
    </message>
    <message>
        <source>the &amp;right wall</source>
        <translation>der &amp;rechten Wand</translation>
    </message>
    <message>
        <source>the &amp;front</source>
        <translation>der &amp;Vorderseite</translation>
    </message>
    <message>
        <source>the &amp;back</source>
        <translation>der Rüc&amp;kseite</translation>
    </message>
    <message>
        <source>the middle of the l&amp;ength</source>
        <translation>der Mitte der Län&amp;ge</translation>
    </message>
    <message>
        <source>the middle of the &amp;width</source>
        <translation>der Mitte der &amp;Breite</translation>
    </message>
    <message>
        <source>Take &amp;out</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>&amp;Larger</source>
        <translation>&amp;Größer</translation>
    </message>
    <message>
        <source>S&amp;maller</source>
        <translation>&amp;Kleiner</translation>
    </message>
    <message>
        <source>&amp;Whole box</source>
        <translation>Ganzes &amp;Terrarium</translation>
    </message>
</context>
<context>
    <name>loam::desk::ShoppingView</name>
    <message>
        <source>&amp;Leave it out of the order</source>
        <translation>Aus der Bestellung &amp;weglassen</translation>
    </message>
    <message>
        <source>Shopping list; the space bar ticks off what you have</source>
        <translation>Einkaufsliste; die Leertaste hakt ab, was vorhanden ist</translation>
    </message>
    <message>
        <source>Have it? Item</source>
        <translation>Vorhanden? Artikel</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>Each, %1</source>
        <translation>Je Stück, %1</translation>
    </message>
    <message>
        <source>Total, %1</source>
        <translation>Summe, %1</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Bleibt übrig</translation>
    </message>
    <message>
        <source>Needed because</source>
        <translation>Nötig, weil</translation>
    </message>
</context>
<context>
    <name>loam::desk::SitePage</name>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>What you don&apos;t know, leave empty: the program then works with the range shown in grey and says so.</source>
        <translation>Was Sie nicht wissen, leer lassen: Das Programm rechnet dann mit der grau gezeigten Spanne und weist darauf hin.</translation>
    </message>
    <message>
        <source>Room in winter</source>
        <translation>Raum im Winter</translation>
    </message>
    <message>
        <source>Room in summer</source>
        <translation>Raum im Sommer</translation>
    </message>
    <message>
        <source>Bad days</source>
        <translation>Ausnahmetage</translation>
    </message>
    <message>
        <source>Room in a heat wave</source>
        <translation>Raum bei Hitzewelle</translation>
    </message>
    <message>
        <source>Sun reaches the box</source>
        <translation>Sonne trifft das Terrarium</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Place and electricity</source>
        <translation>Ort und Strom</translation>
    </message>
    <message>
        <source>Latitude, north is positive</source>
        <translation>Breitengrad, Norden positiv</translation>
    </message>
    <message>
        <source>Price of a kWh</source>
        <translation>Preis je kWh</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>tap</source>
        <translation>Leitungswasser</translation>
    </message>
    <message>
        <source>filtered</source>
        <translation>gefiltert</translation>
    </message>
    <message>
        <source>reverse osmosis</source>
        <translation>Umkehrosmose</translation>
    </message>
    <message>
        <source>To the drain for each part made</source>
        <translation>Abwasser je Teil Reinwasser</translation>
    </message>
    <message>
        <source>A cartridge is good for</source>
        <translation>Kartusche reicht für</translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation>Wasseraufbereiter</translation>
    </message>
    <message>
        <source>Price of a m³, drain included</source>
        <translation>Preis je m³ mit Abwasser</translation>
    </message>
    <message>
        <source>Circuits</source>
        <translation>Stromkreise</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>Stromkreis</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Breaker</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Everything else on it</source>
        <translation>Alles Übrige daran</translation>
    </message>
    <message>
        <source>Outlet strips</source>
        <translation>Steckdosenleisten</translation>
    </message>
    <message>
        <source>outlet strip</source>
        <translation>Steckdosenleiste</translation>
    </message>
    <message>
        <source>%1  on circuit %2</source>
        <translation>%1  an Stromkreis %2</translation>
    </message>
    <message>
        <source>On circuit</source>
        <translation>An Stromkreis</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Nennstrom</translation>
    </message>
    <message>
        <source>Timed outlets</source>
        <translation>Geschaltete Dosen</translation>
    </message>
    <message>
        <source>Always-on outlets</source>
        <translation>Dosen mit Dauerstrom</translation>
    </message>
    <message>
        <source>Residual-current protection</source>
        <translation>FI-Schutz (RCD)</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Gestelle</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>Gestell</translation>
    </message>
    <message>
        <source>Rated load, by its maker</source>
        <translation>Tragkraft laut Hersteller</translation>
    </message>
    <message>
        <source>Loss of the room per kelvin</source>
        <translation>Wärmeverlust je Kelvin</translation>
    </message>
</context>
<context>
    <name>loam::desk::TableBar</name>
    <message>
        <source>Co&amp;py as table</source>
        <translation>Als Tabelle &amp;kopieren</translation>
    </message>
    <message>
        <source>E&amp;xport CSV…</source>
        <translation>CSV e&amp;xportieren…</translation>
    </message>
    <message>
        <source>Copies the whole table, for a text or a spreadsheet</source>
        <translation>Kopiert die ganze Tabelle, für einen Text oder eine Tabellenkalkulation</translation>
    </message>
    <message>
        <source>Saves the whole table as a file for spreadsheets</source>
        <translation>Speichert die ganze Tabelle als Datei für Tabellenkalkulationen</translation>
    </message>
</context>
<context>
    <name>loam::desk::TermsDialog</name>
    <message>
        <source>What the words mean</source>
        <translation>Was die Wörter bedeuten</translation>
    </message>
    <message>
        <source>Find a word</source>
        <translation>Ein Wort suchen</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>Meaning</source>
        <translation>Bedeutung</translation>
    </message>
    <message>
        <source>Nothing here uses that word.</source>
        <translation>Dieses Wort kommt hier nicht vor.</translation>
    </message>
</context>
<context>
    <name>loam::desk::TourBar</name>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>We&amp;iter</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1 of %2.&lt;/b&gt; %3</source>
        <translation>&lt;b&gt;%1 von %2.&lt;/b&gt; %3</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation>&amp;Fertig</translation>
    </message>
</context>
<context>
    <name>loam::desk::WaterPage</name>
    <message>
        <source>Moisture and water</source>
        <translation>Feuchte und Wasser</translation>
    </message>
    <message>
        <source>Misting a day</source>
        <translation>Sprühmenge am Tag</translation>
    </message>
    <message>
        <source>In how many mistings</source>
        <translation>Verteilt auf Sprühgänge</translation>
    </message>
    <message>
        <source>Water changes a day</source>
        <translation>Wasserwechsel am Tag</translation>
    </message>
    <message>
        <source>Hours of light</source>
        <translation>Lichtstunden</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Lamps on at</source>
        <translation>Lampen an um</translation>
    </message>
    <message>
        <source>Lamps off at</source>
        <translation>Lampen aus um</translation>
    </message>
    <message>
        <source>Through the year</source>
        <translation>Im Jahreslauf</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>gleichbleibend</translation>
    </message>
    <message>
        <source>with the sky</source>
        <translation>wie draußen</translation>
    </message>
</context>
<context>
    <name>loam::desk::WelcomeBar</name>
    <message>
        <source>&lt;b&gt;This is an invented example.&lt;/b&gt; Change anything and watch the answers.</source>
        <translation>&lt;b&gt;Dies ist ein erfundenes Beispiel.&lt;/b&gt; Beliebiges ändern und zusehen, was herauskommt.</translation>
    </message>
    <message>
        <source>Start your own</source>
        <translation>Eigenen Plan beginnen</translation>
    </message>
    <message>
        <source>Open a plan…</source>
        <translation>Plan öffnen…</translation>
    </message>
    <message>
        <source>Show me around</source>
        <translation>Rundgang</translation>
    </message>
</context>
<context>
    <name>loam::desk::WhatIfView</name>
    <message>
        <source>Top &amp;covered</source>
        <translation>Oben &amp;abgedeckt</translation>
    </message>
    <message>
        <source>Share of the top that is covered</source>
        <translation>Abgedeckter Anteil der Oberseite</translation>
    </message>
    <message>
        <source>&amp;Misted a day</source>
        <translation>&amp;Gesprüht am Tag</translation>
    </message>
    <message>
        <source>Water misted a day</source>
        <translation>Sprühmenge am Tag</translation>
    </message>
    <message>
        <source>&amp;Take into the plan</source>
        <translation>In den Plan über&amp;nehmen</translation>
    </message>
    <message>
        <source>&amp;Back to the plan’s</source>
        <translation>&amp;Zurück zum Wert im Plan</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
</context>
<context>
    <name>loam::desk::WhyPane</name>
    <message>
        <source>Why this figure or finding</source>
        <translation>Warum dieser Wert oder Befund</translation>
    </message>
    <message>
        <source>Show in the plan</source>
        <translation>Im Plan zeigen</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>How it was worked out</source>
        <translation>So wurde gerechnet</translation>
    </message>
    <message>
        <source>With these numbers</source>
        <translation>Mit diesen Zahlen</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>Woher es stammt</translation>
    </message>
    <message>
        <source>Choose a line to see why it says what it says.</source>
        <translation>Eine Zeile wählen, um zu sehen, wie es zu ihrer Aussage kommt.</translation>
    </message>
</context>
<context>
    <name>loam::desk::Window</name>
    <message>
        <source>Leave it out of the order</source>
        <translation>Aus der Bestellung weglassen</translation>
    </message>
    <message>
        <source>Export the comparison</source>
        <translation>Vergleich exportieren</translation>
    </message>
    <message>
        <source>comparison</source>
        <translation>vergleich</translation>
    </message>
    <message>
        <source>Not changed.</source>
        <translation>Nicht geändert.</translation>
    </message>
    <message>
        <source>Take what was tried</source>
        <translation>Versuch übernehmen</translation>
    </message>
    <message>
        <source>Have “%1”</source>
        <translation>„%1“ vorhanden</translation>
    </message>
    <message>
        <source>Buy “%1”</source>
        <translation>„%1“ kaufen</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplizieren</translation>
    </message>
    <message>
        <source>Loamstead</source>
        <translation>Loamstead</translation>
    </message>
    <message>
        <source>Working out…</source>
        <translation>Wird berechnet…</translation>
    </message>
    <message>
        <source>Up to date</source>
        <translation>Aktuell</translation>
    </message>
    <message>
        <source>Looking for remedies…</source>
        <translation>Abhilfen werden gesucht…</translation>
    </message>
    <message>
        <source>Unsaved work was found</source>
        <translation>Ungespeicherte Arbeit gefunden</translation>
    </message>
    <message>
        <source>Loamstead did not end properly. There is unsaved work on “%1” from %2.</source>
        <translation>Loamstead wurde nicht ordentlich beendet. Es gibt nicht gespeicherte Arbeit an „%1“ vom %2.</translation>
    </message>
    <message>
        <source>Recover it</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Ask again next time</source>
        <translation>Nächstes Mal wieder fragen</translation>
    </message>
    <message>
        <source>Delete it</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;New plan</source>
        <translation>&amp;Neuer Plan</translation>
    </message>
    <message>
        <source>&amp;First plan, step by step…</source>
        <translation>&amp;Erster Plan, Schritt für Schritt…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Öffnen…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Open the e&amp;xample</source>
        <translation>Be&amp;ispiel öffnen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>&amp;Print sheets…</source>
        <translation>Blätter &amp;drucken…</translation>
    </message>
    <message>
        <source>Sheets as P&amp;DF…</source>
        <translation>Blätter als &amp;PDF…</translation>
    </message>
    <message>
        <source>&amp;Export the drawing…</source>
        <translation>Zeichnung e&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>The file is gone</source>
        <translation>Die Datei ist weg</translation>
    </message>
    <message>
        <source>“%1” is no longer there. It is taken off this list.</source>
        <translation>„%1“ ist nicht mehr da. Der Eintrag wird aus dieser Liste genommen.</translation>
    </message>
    <message>
        <source>Clear this list</source>
        <translation>Diese Liste leeren</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
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
        <source>&amp;Compare</source>
        <translation>&amp;Vergleichen</translation>
    </message>
    <message>
        <source>&amp;Keep as comparison</source>
        <translation>Als Vergleich &amp;merken</translation>
    </message>
    <message>
        <source>Remembers the plan as it stands, until the window is closed, and compares with it.</source>
        <translation>Merkt sich den Plan, wie er jetzt ist, bis das Fenster geschlossen wird, und vergleicht damit.</translation>
    </message>
    <message>
        <source>With this plan as last &amp;saved</source>
        <translation>Mit dem zuletzt ge&amp;speicherten Stand</translation>
    </message>
    <message>
        <source>With &amp;another plan…</source>
        <translation>Mit &amp;anderem Plan…</translation>
    </message>
    <message>
        <source>With the plan that was ke&amp;pt</source>
        <translation>Mit dem g&amp;emerkten Plan</translation>
    </message>
    <message>
        <source>&amp;Close the comparison</source>
        <translation>&amp;Vergleich schließen</translation>
    </message>
    <message>
        <source>&amp;Prices</source>
        <translation>&amp;Preise</translation>
    </message>
    <message>
        <source>Price &amp;lists…</source>
        <translation>Preis&amp;listen…</translation>
    </message>
    <message>
        <source>Which price list is in use; edit, copy, take in, write out, compare and delete lists.</source>
        <translation>Welche Preisliste verwendet wird; Listen bearbeiten, kopieren, aufnehmen, ausgeben, vergleichen und löschen.</translation>
    </message>
    <message>
        <source>&amp;Use a price list file…</source>
        <translation>Preislisten&amp;datei verwenden…</translation>
    </message>
    <message>
        <source>Use the &amp;invented prices</source>
        <translation>&amp;Erfundene Preise verwenden</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>&amp;Metric (cm, kg, °C)</source>
        <translation>&amp;Metrisch (cm, kg, °C)</translation>
    </message>
    <message>
        <source>&amp;US (in, lb, °F)</source>
        <translation>&amp;US (in, lb, °F)</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>&amp;Darstellung</translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
        <translation>Wie der &amp;Desktop</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>D&amp;unkel</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Find a command…</source>
        <translation>&amp;Befehl suchen…</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Warnhinweise</translation>
    </message>
    <message>
        <source>&amp;About Loamstead</source>
        <translation>&amp;Über Loamstead</translation>
    </message>
    <message>
        <source>One moment</source>
        <translation>Einen Moment</translation>
    </message>
    <message>
        <source>The figures are still being worked out. Try again in a moment.</source>
        <translation>Die Zahlen werden noch berechnet. Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Export the shopping list</source>
        <translation>Einkaufsliste exportieren</translation>
    </message>
    <message>
        <source>shopping</source>
        <translation>einkauf</translation>
    </message>
    <message>
        <source>Export the costs</source>
        <translation>Kosten exportieren</translation>
    </message>
    <message>
        <source>costs</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Saved as “%1”.</source>
        <translation>Gespeichert als „%1“.</translation>
    </message>
    <message>
        <source>The sheets were saved as “%1”.</source>
        <translation>Die Blätter wurden als „%1“ gespeichert.</translation>
    </message>
    <message>
        <source>&amp;Preferences…</source>
        <translation>&amp;Einstellungen …</translation>
    </message>
    <message>
        <source>&amp;Tour of the example</source>
        <translation>&amp;Rundgang durch das Beispiel</translation>
    </message>
    <message>
        <source>&amp;What the words mean</source>
        <translation>&amp;Was die Wörter bedeuten</translation>
    </message>
    <message>
        <source>Save the &amp;calendar…</source>
        <translation>&amp;Kalender speichern…</translation>
    </message>
    <message>
        <source>What has to be done on which day, as a list and as a file for calendar programs.</source>
        <translation>Was an welchem Tag zu tun ist, als Liste und als Datei für Kalenderprogramme.</translation>
    </message>
    <message>
        <source>For a list of adop&amp;ters…</source>
        <translation>Für eine Liste neuer &amp;Halter…</translation>
    </message>
    <message>
        <source>The sheets of each row of a list, with this plan as the template, and one order over all.</source>
        <translation>Blätter für jede Zeile einer Liste, mit diesem Plan als Vorlage, und eine gemeinsame Bestellung für alle.</translation>
    </message>
</context>
<context>
    <name>loam::desk::YearStrip</name>
    <message>
        <source>The year by months: hours of light and kilowatt-hours</source>
        <translation>Das Jahr nach Monaten: Lichtstunden und Kilowattstunden</translation>
    </message>
    <message>
        <source>Lamps on (filled), day outside (dashed)</source>
        <translation>Lampen an (Fläche), Tag draußen (Strich)</translation>
    </message>
    <message>
        <source>kWh a month, with its range</source>
        <translation>kWh im Monat, mit Spanne</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>Ruhe</translation>
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
        <translation>Die Lampen folgen dem Tag draußen, in den Grenzen, die das Datenblatt setzt, um die Mitte der angegebenen Zeiten.</translation>
    </message>
    <message>
        <source>The day outside on the 16th: %1.
</source>
        <translation>Der Tag draußen am 16.: %1.
</translation>
    </message>
    <message>
        <source>With the sky, on the 16th: %1 of light, from %2 to %3.</source>
        <translation>Wie draußen, am 16.: %1 Licht, von %2 bis %3.</translation>
    </message>
    <message>
        <source>The animals rest in the cold: on the 16th %1 of the usual light and heat runs.</source>
        <translation>Die Tiere ruhen in der Kälte: Am 16. laufen %1 von Licht und Wärme im Normalbetrieb.</translation>
    </message>
    <message>
        <source>Day length: Forsythe, Rykiel, Stahl, Wu &amp; Schoolfield 1995. Lag of the cold behind the sun: Trenberth 1983 (from memory). The cosine is our own.</source>
        <translation>Tageslänge: Forsythe, Rykiel, Stahl, Wu &amp; Schoolfield 1995. Nachlauf der Kälte hinter der Sonne: Trenberth 1983 (aus dem Gedächtnis). Die Kosinuskurve ist unser eigener Ansatz.</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>Ruhe</translation>
    </message>
    <message>
        <source>Hours of light and kilowatt-hours by month</source>
        <translation>Lichtstunden und Kilowattstunden nach Monaten</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>On</source>
        <translation>An</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>Light, h</source>
        <translation>Licht, h</translation>
    </message>
    <message>
        <source>Outside, h</source>
        <translation>Draußen, h</translation>
    </message>
    <message>
        <source>kWh</source>
        <translation>kWh</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Kosten</translation>
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
        <translation>Kosten über die Jahre</translation>
    </message>
    <message>
        <source>Spent so far, %1</source>
        <translation>Bisher ausgegeben, %1</translation>
    </message>
    <message>
        <source>Years; 0 is the start</source>
        <translation>Jahre; 0 ist der Anfang</translation>
    </message>
    <message>
        <source>After %1 years: %2</source>
        <translation>Nach %1 Jahren: %2</translation>
    </message>
</context>
<context>
    <name>names</name>
    <message>
        <source>basking spot</source>
        <translation>Sonnenplatz</translation>
    </message>
    <message>
        <source>warm side</source>
        <translation>warme Seite</translation>
    </message>
    <message>
        <source>cool side</source>
        <translation>kühle Seite</translation>
    </message>
    <message>
        <source>surface</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>ground level</source>
        <translation>Bodennähe</translation>
    </message>
    <message>
        <source>animal&apos;s back</source>
        <translation>Rücken des Tieres</translation>
    </message>
    <message>
        <source>infrared thermometer</source>
        <translation>Infrarotthermometer</translation>
    </message>
    <message>
        <source>shaded thermometer at ground level</source>
        <translation>beschattetes Thermometer in Bodennähe</translation>
    </message>
    <message>
        <source>computed, not read from an instrument</source>
        <translation>berechnet, nicht an einem Gerät abgelesen</translation>
    </message>
    <message>
        <source>used</source>
        <translation>verwendet</translation>
    </message>
    <message>
        <source>left out: doesn&apos;t fit</source>
        <translation>ausgelassen: passt nicht</translation>
    </message>
    <message>
        <source>not used: the readings don&apos;t fit together</source>
        <translation>nicht verwendet: Die Messwerte passen nicht zusammen</translation>
    </message>
    <message>
        <source>not used: outside the box</source>
        <translation>nicht verwendet: außerhalb des Terrariums</translation>
    </message>
    <message>
        <source>not used: lamps on or off?</source>
        <translation>nicht verwendet: Lampen an oder aus?</translation>
    </message>
    <message>
        <source>not used: at which dimmer level?</source>
        <translation>nicht verwendet: bei welcher Dimmereinstellung?</translation>
    </message>
    <message>
        <source>winter day</source>
        <translation>Wintertag</translation>
    </message>
    <message>
        <source>winter night</source>
        <translation>Winternacht</translation>
    </message>
    <message>
        <source>summer day</source>
        <translation>Sommertag</translation>
    </message>
    <message>
        <source>summer night</source>
        <translation>Sommernacht</translation>
    </message>
    <message>
        <source>heat wave</source>
        <translation>Hitzewelle</translation>
    </message>
    <message>
        <source>power cut</source>
        <translation>Stromausfall</translation>
    </message>
    <message>
        <source>lamp burnt out</source>
        <translation>Lampe durchgebrannt</translation>
    </message>
    <message>
        <source>mat stuck on</source>
        <translation>Heizmatte bleibt an</translation>
    </message>
    <message>
        <source>covers forgotten off</source>
        <translation>Abdeckungen vergessen</translation>
    </message>
    <message>
        <source>Enclosure</source>
        <translation>Terrarium</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Controls</source>
        <translation>Regelung</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>Furniture</source>
        <translation>Einrichtung</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation>Elektrik</translation>
    </message>
    <message>
        <source>Measuring</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>Hygiene</source>
        <translation>Hygiene</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>statutory figure</source>
        <translation>gesetzliche Vorgabe</translation>
    </message>
    <message>
        <source>welfare advice</source>
        <translation>Tierschutzempfehlung</translation>
    </message>
    <message>
        <source>veterinary advice</source>
        <translation>tierärztliche Empfehlung</translation>
    </message>
    <message>
        <source>laboratory minimum</source>
        <translation>Mindestmaß für Labortiere</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>bestätigt</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>abgeleitet</translation>
    </message>
    <message>
        <source>second-hand, unconfirmed</source>
        <translation>aus zweiter Hand, unbestätigt</translation>
    </message>
    <message>
        <source>from memory, unconfirmed</source>
        <translation>aus dem Gedächtnis, unbestätigt</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>gängige Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>electricity</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>replacement</source>
        <translation>Ersatz</translation>
    </message>
    <message>
        <source>substrate</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>health</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>other</source>
        <translation>Übriges</translation>
    </message>
    <message>
        <source>land turtles</source>
        <translation>Dosenschildkröten</translation>
    </message>
    <message>
        <source>tortoises</source>
        <translation>Landschildkröten</translation>
    </message>
    <message>
        <source>lizards</source>
        <translation>Echsen</translation>
    </message>
    <message>
        <source>snakes</source>
        <translation>Schlangen</translation>
    </message>
    <message>
        <source>frogs</source>
        <translation>Frösche</translation>
    </message>
    <message>
        <source>flood lamp</source>
        <translation>Reflektorstrahler</translation>
    </message>
    <message>
        <source>UV tube</source>
        <translation>UV-Röhre</translation>
    </message>
    <message>
        <source>compact UV lamp</source>
        <translation>UV-Kompaktlampe</translation>
    </message>
    <message>
        <source>mercury vapour lamp</source>
        <translation>Quecksilberdampflampe</translation>
    </message>
    <message>
        <source>metal halide lamp</source>
        <translation>Metalldampflampe</translation>
    </message>
    <message>
        <source>LED strip</source>
        <translation>LED-Leiste</translation>
    </message>
    <message>
        <source>ceramic heater</source>
        <translation>Keramikheizer</translation>
    </message>
    <message>
        <source>radiant panel</source>
        <translation>Wärmepaneel</translation>
    </message>
    <message>
        <source>heat mat</source>
        <translation>Heizmatte</translation>
    </message>
    <message>
        <source>mister</source>
        <translation>Beregnungsanlage</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>Lüfter</translation>
    </message>
    <message>
        <source>water bowl</source>
        <translation>Wasserschale</translation>
    </message>
    <message>
        <source>hide</source>
        <translation>Versteck</translation>
    </message>
    <message>
        <source>humid hide</source>
        <translation>Wetbox</translation>
    </message>
    <message>
        <source>rock</source>
        <translation>Stein</translation>
    </message>
    <message>
        <source>log</source>
        <translation>Baumstamm</translation>
    </message>
    <message>
        <source>plant</source>
        <translation>Pflanze</translation>
    </message>
    <message>
        <source>feeding dish</source>
        <translation>Futterschale</translation>
    </message>
    <message>
        <source>screen top</source>
        <translation>Gitterabdeckung</translation>
    </message>
    <message>
        <source>glass top</source>
        <translation>Glasabdeckung</translation>
    </message>
    <message>
        <source>board top</source>
        <translation>Plattenabdeckung</translation>
    </message>
    <message>
        <source>open top</source>
        <translation>oben offen</translation>
    </message>
    <message>
        <source>front wall</source>
        <translation>Vorderwand</translation>
    </message>
    <message>
        <source>back wall</source>
        <translation>Rückwand</translation>
    </message>
    <message>
        <source>left wall</source>
        <translation>linke Wand</translation>
    </message>
    <message>
        <source>right wall</source>
        <translation>rechte Wand</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberseite</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>lining inside the front wall</source>
        <translation>Verkleidung innen an der Vorderwand</translation>
    </message>
    <message>
        <source>lining outside the front wall</source>
        <translation>Verkleidung außen an der Vorderwand</translation>
    </message>
    <message>
        <source>lining inside the back wall</source>
        <translation>Verkleidung innen an der Rückwand</translation>
    </message>
    <message>
        <source>lining outside the back wall</source>
        <translation>Verkleidung außen an der Rückwand</translation>
    </message>
    <message>
        <source>lining inside the left wall</source>
        <translation>Verkleidung innen an der linken Wand</translation>
    </message>
    <message>
        <source>lining outside the left wall</source>
        <translation>Verkleidung außen an der linken Wand</translation>
    </message>
    <message>
        <source>lining inside the right wall</source>
        <translation>Verkleidung innen an der rechten Wand</translation>
    </message>
    <message>
        <source>lining outside the right wall</source>
        <translation>Verkleidung außen an der rechten Wand</translation>
    </message>
    <message>
        <source>overhead</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>under the base</source>
        <translation>unter der Bodenplatte</translation>
    </message>
    <message>
        <source>in the bed</source>
        <translation>im Bodengrund</translation>
    </message>
    <message>
        <source>on the back wall</source>
        <translation>an der Rückwand</translation>
    </message>
    <message>
        <source>on the front wall</source>
        <translation>an der Vorderwand</translation>
    </message>
    <message>
        <source>on the left wall</source>
        <translation>an der linken Wand</translation>
    </message>
    <message>
        <source>on the right wall</source>
        <translation>an der rechten Wand</translation>
    </message>
    <message>
        <source>sex not known</source>
        <translation>Geschlecht nicht bekannt</translation>
    </message>
    <message>
        <source>female</source>
        <translation>weiblich</translation>
    </message>
    <message>
        <source>male</source>
        <translation>männlich</translation>
    </message>
    <message>
        <source>Common practice, no source</source>
        <translation>Gängige Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Common practice, from memory</source>
        <translation>Gängige Praxis, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>From memory, not checked</source>
        <translation>Aus dem Gedächtnis, nicht nachgeprüft</translation>
    </message>
    <message>
        <source>No source</source>
        <translation>Ohne Quelle</translation>
    </message>
</context>
<context>
    <name>numbers</name>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation>1 Woche</translation>
    </message>
    <message>
        <source>1 month</source>
        <translation>1 Monat</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 Jahr</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1 (likely %2)</source>
        <translation>%1 (wahrscheinlich %2)</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>no target</source>
        <translation>kein Zielwert</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 pro Tag</translation>
    </message>
    <message>
        <source>%1, typically %2</source>
        <translation>%1, üblich %2</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>as QLocale writes dates</comment>
        <translation>d. MMM yyyy</translation>
    </message>
</context>
<context>
    <name>places</name>
    <message>
        <source>cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>substrate</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>animal</source>
        <translation>Tier</translation>
    </message>
    <message>
        <source>animals</source>
        <translation>Tiere</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>vent</source>
        <translation>Lüftung</translation>
    </message>
    <message>
        <source>enclosure</source>
        <translation>Terrarium</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>Stromkreis</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>Leiste</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>Gestell</translation>
    </message>
    <message>
        <source>owned item</source>
        <translation>vorhandener Artikel</translation>
    </message>
    <message>
        <source>change of needs</source>
        <translation>Änderung am Bedarf</translation>
    </message>
    <message>
        <source>title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>whose law applies</source>
        <translation>wessen Recht gilt</translation>
    </message>
    <message>
        <source>site</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>Breitengrad</translation>
    </message>
    <message>
        <source>price of electricity</source>
        <translation>Strompreis</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>where the water comes from</source>
        <translation>Herkunft des Wassers</translation>
    </message>
    <message>
        <source>litres to the drain for each litre made</source>
        <translation>Liter Abwasser je Liter Reinwasser</translation>
    </message>
    <message>
        <source>what a cartridge is good for</source>
        <translation>Reichweite einer Kartusche</translation>
    </message>
    <message>
        <source>whether conditioner goes into the water</source>
        <translation>ob Wasseraufbereiter ins Wasser kommt</translation>
    </message>
    <message>
        <source>price of a cubic metre of water</source>
        <translation>Preis je Kubikmeter Wasser</translation>
    </message>
    <message>
        <source>whether it is well</source>
        <translation>ob das Tier gesund ist</translation>
    </message>
    <message>
        <source>winter rest</source>
        <translation>Winterruhe</translation>
    </message>
    <message>
        <source>first day without food</source>
        <translation>erster Tag ohne Futter</translation>
    </message>
    <message>
        <source>weeks in the cold</source>
        <translation>Wochen in der Kälte</translation>
    </message>
    <message>
        <source>vet&apos;s check</source>
        <translation>Untersuchung beim Tierarzt</translation>
    </message>
    <message>
        <source>what the lamp holder may take</source>
        <translation>zulässige Leistung der Lampenfassung</translation>
    </message>
    <message>
        <source>how the thermostat regulates</source>
        <translation>Regelungsart des Thermostats</translation>
    </message>
    <message>
        <source>what the control may feed</source>
        <translation>zulässige Last am Regelgerät</translation>
    </message>
    <message>
        <source>hours of light through the year</source>
        <translation>Lichtstunden im Jahreslauf</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>winter</source>
        <translation>Winter</translation>
    </message>
    <message>
        <source>summer</source>
        <translation>Sommer</translation>
    </message>
    <message>
        <source>temperature by day</source>
        <translation>Temperatur am Tag</translation>
    </message>
    <message>
        <source>temperature at night</source>
        <translation>Temperatur in der Nacht</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>temperature in a heat wave</source>
        <translation>Temperatur bei Hitzewelle</translation>
    </message>
    <message>
        <source>power cut</source>
        <translation>Stromausfall</translation>
    </message>
    <message>
        <source>duration</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation>Raumtemperatur</translation>
    </message>
    <message>
        <source>what the room loses per kelvin</source>
        <translation>Wärmeverlust des Raums je Kelvin</translation>
    </message>
    <message>
        <source>whether sun reaches the enclosure</source>
        <translation>ob Sonne auf das Terrarium trifft</translation>
    </message>
    <message>
        <source>circuits</source>
        <translation>Stromkreise</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>rated current</source>
        <translation>Nennstrom</translation>
    </message>
    <message>
        <source>what else runs on it</source>
        <translation>was sonst daran läuft</translation>
    </message>
    <message>
        <source>outlet strips</source>
        <translation>Steckdosenleisten</translation>
    </message>
    <message>
        <source>timed outlets</source>
        <translation>Steckdosen mit Zeitschaltung</translation>
    </message>
    <message>
        <source>always-on outlets</source>
        <translation>Steckdosen mit Dauerstrom</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>gespeist aus</translation>
    </message>
    <message>
        <source>residual-current protection</source>
        <translation>FI-Schutz (RCD)</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>Gestelle</translation>
    </message>
    <message>
        <source>what it may carry</source>
        <translation>Tragkraft</translation>
    </message>
    <message>
        <source>enclosures</source>
        <translation>Terrarien</translation>
    </message>
    <message>
        <source>id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>box</source>
        <translation>Terrarium</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>walls</source>
        <translation>Wände</translation>
    </message>
    <message>
        <source>thickness of the walls</source>
        <translation>Dicke der Wände</translation>
    </message>
    <message>
        <source>base</source>
        <translation>Bodenplatte</translation>
    </message>
    <message>
        <source>thickness of the base</source>
        <translation>Dicke der Bodenplatte</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberseite</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>open share of the mesh</source>
        <translation>offener Anteil des Gitters</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>walls of another make</source>
        <translation>abweichende Wände</translation>
    </message>
    <message>
        <source>linings of walls</source>
        <translation>Wandverkleidungen</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>side of the wall</source>
        <translation>Wandseite</translation>
    </message>
    <message>
        <source>covers</source>
        <translation>Abdeckungen</translation>
    </message>
    <message>
        <source>material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>place along the length</source>
        <translation>Lage in der Länge</translation>
    </message>
    <message>
        <source>place towards the back</source>
        <translation>Lage nach hinten</translation>
    </message>
    <message>
        <source>height of the lower edge</source>
        <translation>Höhe der Unterkante</translation>
    </message>
    <message>
        <source>vents</source>
        <translation>Lüftungen</translation>
    </message>
    <message>
        <source>free area</source>
        <translation>freier Querschnitt</translation>
    </message>
    <message>
        <source>height above the base</source>
        <translation>Höhe über der Bodenplatte</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Einfüllhöhe</translation>
    </message>
    <message>
        <source>depth at the right end</source>
        <translation>Einfüllhöhe am rechten Ende</translation>
    </message>
    <message>
        <source>share of water</source>
        <translation>Wasseranteil</translation>
    </message>
    <message>
        <source>fittings</source>
        <translation>Einrichtung</translation>
    </message>
    <message>
        <source>rotation</source>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>depth of water</source>
        <translation>Wassertiefe</translation>
    </message>
    <message>
        <source>whether animals walk over it</source>
        <translation>ob Tiere darüberlaufen</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>Technik</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>where it sits</source>
        <translation>Anbringung</translation>
    </message>
    <message>
        <source>beam angle</source>
        <translation>Abstrahlwinkel</translation>
    </message>
    <message>
        <source>clearance from what can burn</source>
        <translation>Abstand zu Brennbarem</translation>
    </message>
    <message>
        <source>diameter of its dome</source>
        <translation>Durchmesser des Reflektorschirms</translation>
    </message>
    <message>
        <source>switching difference</source>
        <translation>Schaltdifferenz</translation>
    </message>
    <message>
        <source>mistings in a day</source>
        <translation>Sprühgänge am Tag</translation>
    </message>
    <message>
        <source>whether it has a guard</source>
        <translation>ob ein Schutzkorb vorhanden ist</translation>
    </message>
    <message>
        <source>air gap</source>
        <translation>Luftspalt</translation>
    </message>
    <message>
        <source>what lies below</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>hours burnt so far</source>
        <translation>bisherige Brennstunden</translation>
    </message>
    <message>
        <source>mesh in front of the meter</source>
        <translation>Gitter vor dem Messgerät</translation>
    </message>
    <message>
        <source>hours burnt when the UV was read</source>
        <translation>Brennstunden bei der UV-Messung</translation>
    </message>
    <message>
        <source>distance table</source>
        <translation>Abstandstabelle</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>UV index</source>
        <translation>UV-Index</translation>
    </message>
    <message>
        <source>timed or always on</source>
        <translation>zeitgeschaltet oder dauernd versorgt</translation>
    </message>
    <message>
        <source>control</source>
        <translation>Regelgerät</translation>
    </message>
    <message>
        <source>dimmer level</source>
        <translation>Dimmereinstellung</translation>
    </message>
    <message>
        <source>set temperature</source>
        <translation>Solltemperatur</translation>
    </message>
    <message>
        <source>place of the probe</source>
        <translation>Platz des Fühlers</translation>
    </message>
    <message>
        <source>light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>on</source>
        <translation>an</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>misting in a day</source>
        <translation>Sprühmenge am Tag</translation>
    </message>
    <message>
        <source>water changes in a day</source>
        <translation>Wasserwechsel am Tag</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>what is measured</source>
        <translation>was gemessen wird</translation>
    </message>
    <message>
        <source>temperature read</source>
        <translation>abgelesene Temperatur</translation>
    </message>
    <message>
        <source>accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>lamps on or off</source>
        <translation>Lampen an oder aus</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>what you own</source>
        <translation>was vorhanden ist</translation>
    </message>
    <message>
        <source>item</source>
        <translation>Artikel</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>years to look at</source>
        <translation>betrachtete Jahre</translation>
    </message>
    <message>
        <source>discount rate</source>
        <translation>Zinssatz</translation>
    </message>
    <message>
        <source>price level</source>
        <translation>Preisniveau</translation>
    </message>
    <message>
        <source>how packs are chosen</source>
        <translation>Auswahl der Packungen</translation>
    </message>
    <message>
        <source>changes of the needs</source>
        <translation>Änderungen am Bedarf</translation>
    </message>
    <message>
        <source>need</source>
        <translation>Bedarf</translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>lines of your own</source>
        <translation>eigene Zeilen</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>bought again after</source>
        <translation>erneut gekauft nach</translation>
    </message>
    <message>
        <source>where you buy</source>
        <translation>wo gekauft wird</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>enclosure that it takes over from</source>
        <translation>abgelöstes Terrarium</translation>
    </message>
    <message>
        <source>measurements</source>
        <translation>Messungen</translation>
    </message>
</context>
<context>
    <name>prices</name>
    <message>
        <source>A name can&apos;t be empty.</source>
        <translation>Ein Name darf nicht leer sein.</translation>
    </message>
    <message>
        <source>“%1” is not a price. Write a number such as %2.</source>
        <translation>„%1“ ist kein Preis. Eine Zahl wie %2 schreiben.</translation>
    </message>
    <message>
        <source>“%1” is not an amount. Write one number above zero, or the least, the likely and the most with dashes between: 55 – 60 – 65.</source>
        <translation>„%1“ ist keine Menge. Eine Zahl über null schreiben oder den kleinsten, den wahrscheinlichen und den größten Wert mit Strichen dazwischen: 55 – 60 – 65.</translation>
    </message>
    <message>
        <source>“%1” is not a span. Write it as 75 – 100, open to one side as 75 –, or leave it empty.</source>
        <translation>„%1“ ist kein Bereich. So schreiben: 75 – 100, oder nach einer Seite offen: 75 –, oder leer lassen.</translation>
    </message>
    <message>
        <source>“%1” is not a useful life. Write one number, the least, the likely and the most with dashes between, or leave it empty where it is not known.</source>
        <translation>„%1“ ist keine Nutzungsdauer. Eine Zahl schreiben, den kleinsten, den wahrscheinlichen und den größten Wert mit Strichen dazwischen, oder leer lassen, wenn nicht bekannt.</translation>
    </message>
    <message>
        <source>“%1” is not a weight.</source>
        <translation>„%1“ ist kein Gewicht.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artikel</translation>
    </message>
    <message>
        <source>A generic name, in all rows of this item</source>
        <translation>Ein allgemeiner Name, in allen Zeilen dieses Artikels</translation>
    </message>
    <message>
        <source>Bought for</source>
        <translation>Gekauft für</translation>
    </message>
    <message>
        <source>The kind of need that the item meets</source>
        <translation>Die Bedarfsart, die der Artikel deckt</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passt zu</translation>
    </message>
    <message>
        <source>Which lamp watts, floor area in m² or number of outlets it fits: 75 – 100, 75 –, or empty where it fits all</source>
        <translation>Für welche Lampenleistung in Watt, Grundfläche in m² oder Zahl von Steckdosen er passt: 75 – 100, 75 – oder leer, wenn er immer passt</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Packung</translation>
    </message>
    <message>
        <source>How it is sold, as it stands on the shelf</source>
        <translation>Wie es verkauft wird, so wie es im Regal steht</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>How much of the unit is in a pack: one number, or least – likely – most</source>
        <translation>Wie viel von der Einheit in einer Packung ist: eine Zahl oder mindestens – wahrscheinlich – höchstens</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>What the item is counted in</source>
        <translation>Worin der Artikel gezählt wird</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Niedrig</translation>
    </message>
    <message>
        <source>The least a pack costs</source>
        <translation>Was eine Packung mindestens kostet</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>What a pack costs most of the time</source>
        <translation>Was eine Packung meist kostet</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>The most a pack costs</source>
        <translation>Was eine Packung höchstens kostet</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>Lieferbar</translation>
    </message>
    <message>
        <source>Whether the pack can be bought now</source>
        <translation>Ob die Packung derzeit zu kaufen ist</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Of a pack as bought, for carrying it home</source>
        <translation>Gewicht einer Packung wie gekauft, für den Heimweg</translation>
    </message>
    <message>
        <source>Lasts, months</source>
        <translation>Hält, Monate</translation>
    </message>
    <message>
        <source>Useful life: one number, or least – likely – most; empty where it is not known</source>
        <translation>Nutzungsdauer: eine Zahl oder mindestens – wahrscheinlich – höchstens; leer, wenn nicht bekannt</translation>
    </message>
    <message>
        <source>Lasts, hours</source>
        <translation>Hält, Stunden</translation>
    </message>
    <message>
        <source>Useful life in hours of use: one number, or least – likely – most; empty where it is not known</source>
        <translation>Nutzungsdauer in Betriebsstunden: eine Zahl oder mindestens – wahrscheinlich – höchstens; leer, wenn nicht bekannt</translation>
    </message>
</context>
<context>
    <name>problems</name>
    <message>
        <source>lower-case letters and digits, in words joined by single hyphens</source>
        <translation>Kleinbuchstaben und Ziffern, in Wörtern mit einzelnen Bindestrichen dazwischen</translation>
    </message>
    <message>
        <source>letters, digits, hyphens and underscores, beginning with a letter or digit</source>
        <translation>Buchstaben, Ziffern, Binde- und Unterstriche, mit einem Buchstaben oder einer Ziffer am Anfang</translation>
    </message>
    <message>
        <source>a time of day such as 07:30</source>
        <translation>eine Uhrzeit wie 07:30</translation>
    </message>
    <message>
        <source>a date such as 2026-11-25</source>
        <translation>ein Datum wie 2026-11-25</translation>
    </message>
    <message>
        <source>of the form %1</source>
        <translation>von der Form %1</translation>
    </message>
    <message>
        <source>an object in braces</source>
        <translation>ein Objekt in geschweiften Klammern</translation>
    </message>
    <message>
        <source>a list in square brackets</source>
        <translation>eine Liste in eckigen Klammern</translation>
    </message>
    <message>
        <source>text in quotation marks</source>
        <translation>Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>„true“ oder „false“</translation>
    </message>
    <message>
        <source>null</source>
        <translation>null</translation>
    </message>
    <message>
        <source>the length from snout to vent</source>
        <translation>die Kopf-Rumpf-Länge</translation>
    </message>
    <message>
        <source>the length of the shell</source>
        <translation>die Panzerlänge</translation>
    </message>
    <message>
        <source>the total length</source>
        <translation>die Gesamtlänge</translation>
    </message>
    <message>
        <source>This is not right (%1).</source>
        <translation>Hier stimmt etwas nicht (%1).</translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>wider range</source>
        <translation>breitere Spanne</translation>
    </message>
    <message>
        <source>narrower range</source>
        <translation>engere Spanne</translation>
    </message>
    <message>
        <source>dearer</source>
        <translation>teurer</translation>
    </message>
    <message>
        <source>cheaper</source>
        <translation>günstiger</translation>
    </message>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>fewer</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>other verdict</source>
        <translation>anderes Urteil</translation>
    </message>
    <message>
        <source>better</source>
        <translation>besser</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>schlechter</translation>
    </message>
    <message>
        <source>larger</source>
        <translation>größer</translation>
    </message>
    <message>
        <source>smaller</source>
        <translation>kleiner</translation>
    </message>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Grundfläche</translation>
    </message>
    <message>
        <source>can be walked on</source>
        <translation>begehbar</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>verlangt</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Angeschlossen</translation>
    </message>
    <message>
        <source>Energy in a year</source>
        <translation>Energie im Jahr</translation>
    </message>
    <message>
        <source>on a winter day</source>
        <translation>an einem Wintertag</translation>
    </message>
    <message>
        <source>on a summer day</source>
        <translation>an einem Sommertag</translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation>Wasser am Tag</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>heavier</source>
        <translation>schwerer</translation>
    </message>
    <message>
        <source>lighter</source>
        <translation>leichter</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>can&apos;t be told</source>
        <translation>nicht zu sagen</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>entfallen</translation>
    </message>
    <message>
        <source>warmer</source>
        <translation>wärmer</translation>
    </message>
    <message>
        <source>colder</source>
        <translation>kälter</translation>
    </message>
    <message>
        <source>damper</source>
        <translation>feuchter</translation>
    </message>
    <message>
        <source>drier</source>
        <translation>trockener</translation>
    </message>
    <message>
        <source>(none)</source>
        <translation>(keines)</translation>
    </message>
    <message>
        <source>All in all</source>
        <translation>Alles in allem</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Costs, at typical prices</source>
        <translation>Kosten, zu üblichen Preisen</translation>
    </message>
    <message>
        <source>To start</source>
        <translation>Anschaffung</translation>
    </message>
    <message>
        <source>Net of what is owned; lines without a price are not in it.</source>
        <translation>Abzüglich dessen, was vorhanden ist; Zeilen ohne Preis sind nicht enthalten.</translation>
    </message>
    <message>
        <source>To run, per year</source>
        <translation>Laufende Kosten je Jahr</translation>
    </message>
    <message>
        <source>What is used up, and each replacement spread evenly over its life.</source>
        <translation>Was verbraucht wird, dazu jeder Ersatz, gleichmäßig auf seine Nutzungsdauer verteilt.</translation>
    </message>
    <message>
        <source>of that, electricity</source>
        <translation>davon Strom</translation>
    </message>
    <message>
        <source>Net present cost</source>
        <translation>Barwert der Kosten</translation>
    </message>
    <message>
        <source>As a sum each year</source>
        <translation>Als Betrag je Jahr</translation>
    </message>
    <message>
        <source>Without a price</source>
        <translation>Ohne Preis</translation>
    </message>
    <message>
        <source>Electricity in it</source>
        <translation>Strom darin enthalten</translation>
    </message>
    <message>
        <source>no: price not stated</source>
        <translation>nein: Preis nicht angegeben</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>Bought in different numbers</source>
        <translation>In anderer Anzahl gekauft</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Kennwert</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>%1 costs no more to start and no more to run.</source>
        <translation>%1 kostet weder in der Anschaffung noch im Betrieb mehr.</translation>
    </message>
    <message>
        <source>What %1 costs more to start comes back in %2 by what it costs less to run.</source>
        <translation>Was %1 in der Anschaffung mehr kostet, gleichen die niedrigeren laufenden Kosten wieder aus; das dauert %2.</translation>
    </message>
    <message>
        <source>%1 costs no less to start and no less to run: nothing comes back.</source>
        <translation>%1 kostet weder in der Anschaffung noch im Betrieb weniger: Die Ausgabe kommt nicht wieder herein.</translation>
    </message>
    <message>
        <source>%1 costs less to start and more to run: after %2 it has cost more.</source>
        <translation>%1 kostet in der Anschaffung weniger und im Betrieb mehr; bis der Vorteil aufgezehrt ist, dauert es %2.</translation>
    </message>
    <message>
        <source>Whether it pays back is not known: a tariff is missing, different things have no price, or the price list is in another currency.</source>
        <translation>Ob es sich rechnet, ist nicht bekannt: Ein Tarif fehlt, unterschiedliche Dinge haben keinen Preis, oder die Preisliste hat eine andere Währung.</translation>
    </message>
    <message>
        <source>Nothing: both orders are the same.</source>
        <translation>Nichts: Beide Bestellungen sind gleich.</translation>
    </message>
    <message>
        <source>First:  </source>
        <translation>Nr. 1: </translation>
    </message>
    <message>
        <source>Second: </source>
        <translation>Nr. 2: </translation>
    </message>
    <message>
        <source>Assessed as of %1.</source>
        <translation>Stand der Bewertung: %1.</translation>
    </message>
    <message>
        <source>the second</source>
        <translation>der zweite Plan</translation>
    </message>
    <message>
        <source>The prices are invented examples.</source>
        <translation>Die Preise sind erfundene Beispiele.</translation>
    </message>
    <message>
        <source>Due again about every %1.</source>
        <translation>Wieder fällig im Abstand von rund: %1.</translation>
    </message>
    <message>
        <source>of that, delivery by %1</source>
        <translation>davon Lieferung (%1)</translation>
    </message>
    <message>
        <source>As the price list states it; goods of enough may be brought for nothing.</source>
        <translation>Wie in der Preisliste angegeben; bei genügend Warenwert kann die Lieferung frei sein.</translation>
    </message>
    <message>
        <source>of that, tax at %1</source>
        <translation>davon Steuer (%1)</translation>
    </message>
    <message>
        <source>It comes on top of goods and delivery there.</source>
        <translation>Sie kommt dort auf Ware und Lieferung obendrauf.</translation>
    </message>
    <message>
        <source>To run, a year</source>
        <translation>Laufende Kosten im Jahr</translation>
    </message>
    <message>
        <source>The sum of the lines under “What runs up in a year”.</source>
        <translation>Die Summe der Zeilen unter „Was im Jahr anfällt“.</translation>
    </message>
    <message>
        <source>By the head, of %1 animals</source>
        <translation>Je Tier, bei %1 Tieren</translation>
    </message>
    <message>
        <source>What it costs to run, shared out evenly.</source>
        <translation>Die laufenden Kosten, gleichmäßig aufgeteilt.</translation>
    </message>
    <message>
        <source>What runs up in a year</source>
        <translation>Was im Jahr anfällt</translation>
    </message>
    <message>
        <source>Electricity</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>State the price of electricity under “Site and room”.</source>
        <translation>Den Strompreis unter „Standort und Raum“ angeben.</translation>
    </message>
    <message>
        <source>All payments of the horizon at typical prices, later ones discounted.</source>
        <translation>Alle Zahlungen im betrachteten Zeitraum zu üblichen Preisen, spätere abgezinst.</translation>
    </message>
    <message>
        <source>Equivalent annual cost</source>
        <translation>Annuität der Kosten</translation>
    </message>
    <message>
        <source>The even yearly payment that has the same net present cost.</source>
        <translation>Die gleichbleibende jährliche Zahlung mit demselben Barwert der Kosten.</translation>
    </message>
    <message>
        <source>For the rest of a life</source>
        <translation>Für den Rest eines Lebens</translation>
    </message>
    <message>
        <source>To start and to run at today&apos;s prices, nothing discounted, for %1: %2. In round figures, for nobody knows prices of decades ahead.</source>
        <translation>Anschaffung und laufende Kosten zu heutigen Preisen, nichts abgezinst, Zeitraum %1: %2. Gerundet, denn Preise in Jahrzehnten kennt niemand.</translation>
    </message>
    <message>
        <source>%1 or longer</source>
        <translation>%1 oder länger</translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation>Monat für Monat</translation>
    </message>
    <message>
        <source>The year ahead: electricity by the season, replacements whole in the month in which their likely life ends, the rest evenly.</source>
        <translation>Das kommende Jahr: Strom nach der Jahreszeit, Ersatz ganz in dem Monat, in dem die wahrscheinliche Nutzungsdauer endet, das Übrige gleichmäßig.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Typically: electricity %1, replaced %2, the rest %3.</source>
        <translation>Üblich: Strom %1, Ersatz %2, Übriges %3.</translation>
    </message>
    <message>
        <source>To replace within a year</source>
        <translation>Binnen eines Jahres zu ersetzen</translation>
    </message>
    <message>
        <source>What is worn out within the year ahead by its likely life.</source>
        <translation>Was nach der wahrscheinlichen Nutzungsdauer im kommenden Jahr verschlissen ist.</translation>
    </message>
    <message>
        <source>Due about %1</source>
        <translation>Fällig etwa %1</translation>
    </message>
    <message>
        <source>, perhaps from %1</source>
        <translation>, vielleicht ab %1</translation>
    </message>
    <message>
        <source>Its UV falls below what its animals need before it is worn out.</source>
        <translation>Das UV sinkt unter den Bedarf der Tiere, bevor die Lampe verschlissen ist.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>To begin</source>
        <translation>Für den Anfang</translation>
    </message>
    <message>
        <source>The sum of the shopping list, net of what is owned, and what is set aside for surprises. Lines without a price are not in it.</source>
        <translation>Die Summe der Einkaufsliste, abzüglich dessen, was vorhanden ist, dazu die Reserve für Unvorhergesehenes. Zeilen ohne Preis sind nicht enthalten.</translation>
    </message>
    <message>
        <source>electricity, whose price is not stated</source>
        <translation>Strom, dessen Preis nicht angegeben ist</translation>
    </message>
    <message>
        <source>Not in these sums, for want of a price: %1.</source>
        <translation>Mangels Preis nicht in diesen Summen: %1.</translation>
    </message>
    <message>
        <source>Prices of %1</source>
        <translation>Preise vom %1</translation>
    </message>
    <message>
        <source>, invented for illustration: put in your own before you decide.</source>
        <translation>, zur Veranschaulichung erfunden: vor einer Entscheidung die eigenen einsetzen.</translation>
    </message>
    <message>
        <source>Costs: %1</source>
        <translation>Kosten: %1</translation>
    </message>
    <message>
        <source>Cost, %1</source>
        <translation>Kosten, %1</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Niedrig</translation>
    </message>
    <message>
        <source>Typical</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>Things without a price, not in the total: %1.</source>
        <translation>Ohne Preis und nicht in der Summe: %1.</translation>
    </message>
    <message>
        <source>The prices are invented examples of %1. Put your own in their place.</source>
        <translation>Die Preise sind erfundene Beispiele vom %1. An ihrer Stelle die eigenen einsetzen.</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Insgesamt</translation>
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
        <translation>andere Einheit</translation>
    </message>
    <message>
        <source>amount %1 → %2</source>
        <translation>Menge %1 → %2</translation>
    </message>
    <message>
        <source>in stock again</source>
        <translation>wieder lieferbar</translation>
    </message>
    <message>
        <source>no longer in stock</source>
        <translation>nicht mehr lieferbar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the list is more than %1 months old; look its prices up again.</source>
        <translation>die Liste ist mehr als %1 Monate alt; die Preise neu nachsehen.</translation>
    </message>
    <message>
        <source>%1, after %2</source>
        <translation>%1, nach dem %2</translation>
    </message>
    <message>
        <source>%1, %2 months old on %3</source>
        <translation>%1, am %3 %2 Monate alt</translation>
    </message>
    <message>
        <source>Not in stock: %1.</source>
        <translation>Nicht lieferbar: %1.</translation>
    </message>
    <message>
        <source>No price for: %1.</source>
        <translation>Ohne Preis: %1.</translation>
    </message>
    <message>
        <source>Price list: </source>
        <translation>Preisliste: </translation>
    </message>
    <message>
        <source>Of:         </source>
        <translation>Stand:      </translation>
    </message>
    <message>
        <source>Place:      </source>
        <translation>Ort:        </translation>
    </message>
    <message>
        <source>Currency:   </source>
        <translation>Währung:    </translation>
    </message>
    <message>
        <source>Holds:      </source>
        <translation>Inhalt:     </translation>
    </message>
    <message>
        <source>items: %1, packs: %2</source>
        <translation>Artikel: %1, Packungen: %2</translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation>Warnung: </translation>
    </message>
    <message>
        <source>Not in stock</source>
        <translation>Nicht lieferbar</translation>
    </message>
    <message>
        <source>No price for</source>
        <translation>Ohne Preis</translation>
    </message>
    <message>
        <source>The first list is in %1 and the second in %2: their prices are not compared.</source>
        <translation>Die erste Liste rechnet in %1, die zweite in %2: Ihre Preise werden nicht verglichen.</translation>
    </message>
    <message>
        <source>%1 beside %2</source>
        <translation>%1 neben %2</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Was abweicht</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artikel</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Packung</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>only in the second list</source>
        <translation>nur in der zweiten Liste</translation>
    </message>
    <message>
        <source>only in the first list</source>
        <translation>nur in der ersten Liste</translation>
    </message>
    <message>
        <source>another need, unit or size</source>
        <translation>anderer Bedarf, andere Einheit oder Größe</translation>
    </message>
    <message>
        <source>another name or category</source>
        <translation>anderer Name oder andere Kategorie</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation>%1, %2, %3, %4</translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation>Keine Unterschiede.</translation>
    </message>
    <message>
        <source>Nothing else differs: items, packs, amounts and stock are the same.</source>
        <translation>Sonst weicht nichts ab: Artikel, Packungen, Mengen und Lieferbarkeit sind gleich.</translation>
    </message>
    <message>
        <source>Changed packs</source>
        <translation>Geänderte Packungen</translation>
    </message>
    <message>
        <source>Changed items</source>
        <translation>Geänderte Artikel</translation>
    </message>
    <message>
        <source>Only in the second list</source>
        <translation>Nur in der zweiten Liste</translation>
    </message>
    <message>
        <source>Only in the first list</source>
        <translation>Nur in der ersten Liste</translation>
    </message>
    <message>
        <source>Whole site</source>
        <translation>Gesamte Anlage</translation>
    </message>
    <message>
        <source>All enclosures</source>
        <translation>Alle Terrarien</translation>
    </message>
    <message>
        <source>owned</source>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>kein Preis</translation>
    </message>
    <message>
        <source>Shopping list: %1</source>
        <translation>Einkaufsliste: %1</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>Each, %1</source>
        <translation>Je Stück, %1</translation>
    </message>
    <message>
        <source>Total, %1</source>
        <translation>Summe, %1</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Bleibt übrig</translation>
    </message>
    <message>
        <source>Needed because</source>
        <translation>Nötig, weil</translation>
    </message>
    <message>
        <source>Total of these lines</source>
        <translation>Summe dieser Zeilen</translation>
    </message>
    <message>
        <source>Typical prices as of %1.</source>
        <translation>Übliche Preise, Stand %1.</translation>
    </message>
    <message>
        <source>the cheapest to buy</source>
        <translation>am günstigsten in der Anschaffung</translation>
    </message>
    <message>
        <source>the cheapest over the years</source>
        <translation>am günstigsten über die Jahre</translation>
    </message>
    <message>
        <source>the widest margin</source>
        <translation>mit dem größten Spielraum</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>watts not stated</source>
        <translation>Leistung nicht angegeben</translation>
    </message>
    <message>
        <source>thermostat at %1</source>
        <translation>Thermostat auf %1</translation>
    </message>
    <message>
        <source>dimmer</source>
        <translation>Dimmer</translation>
    </message>
    <message>
        <source>always on</source>
        <translation>mit Dauerstrom</translation>
    </message>
    <message>
        <source>by the timer</source>
        <translation>über die Zeitschaltuhr</translation>
    </message>
    <message>
        <source>  Box</source>
        <translation>  Terrarium</translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <translation>%1 × %2 × %3</translation>
    </message>
    <message>
        <source>  Top covered</source>
        <translation>  Oben abgedeckt</translation>
    </message>
    <message>
        <source>  Misting, a day</source>
        <translation>  Sprühen, am Tag</translation>
    </message>
    <message>
        <source>not known: the price list is in another currency</source>
        <translation>nicht bekannt: Die Preisliste hat eine andere Währung</translation>
    </message>
    <message>
        <source>Electricity is not in it: its price is not stated.</source>
        <translation>Strom ist nicht enthalten: Sein Preis ist nicht angegeben.</translation>
    </message>
    <message>
        <source>Margin, ranges and all</source>
        <translation>Spielraum samt Spannen</translation>
    </message>
    <message>
        <source>Missed, likely values</source>
        <translation>Verfehlt, wahrscheinlich</translation>
    </message>
    <message>
        <source> over all zones, every dimmer at one setting</source>
        <translation> über alle Zonen, jeder Dimmer auf einer Einstellung</translation>
    </message>
    <message>
        <source>What stands in the way:</source>
        <translation>Was im Weg steht:</translation>
    </message>
    <message>
        <source>Besides, what no equipment settles:</source>
        <translation>Außerdem, was keine Technik löst:</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>%1: the bed is too shallow for its animals; it was filled up to what they dig.</source>
        <translation>%1: Der Bodengrund ist für die Tiere zu flach; er wurde bis zur Grabtiefe aufgefüllt.</translation>
    </message>
    <message>
        <source>%1: the box is too small for its animals; a larger one of a usual size was taken.</source>
        <translation>%1: Das Terrarium ist für die Tiere zu klein; ein größeres in üblicher Größe wurde genommen.</translation>
    </message>
    <message>
        <source>%1: the box is too small for its animals, and stayed as it is: no usual size is enough, or it was to be kept.</source>
        <translation>%1: Das Terrarium ist für die Tiere zu klein und blieb, wie es ist: Keine übliche Größe reicht, oder es sollte bleiben.</translation>
    </message>
    <message>
        <source>%1: its climate can&apos;t be computed from what the plan states, so it was left as it is.</source>
        <translation>%1: Das Klima lässt sich aus den Angaben im Plan nicht berechnen, daher blieb alles, wie es ist.</translation>
    </message>
    <message>
        <source>Nothing that meets every target can be had for what may be spent. The least to begin with is %1.</source>
        <translation>Für den verfügbaren Betrag gibt es nichts, das alle Zielwerte einhält. Die günstigste Anschaffung kostet %1.</translation>
    </message>
    <message>
        <source>Nothing can be suggested.</source>
        <translation>Es lässt sich nichts vorschlagen.</translation>
    </message>
    <message>
        <source>These meet every target that equipment can meet, in winter and summer, by the likely value; no end of a range and no drill is a danger. Where an end of a range misses a target, the margin is negative.</source>
        <translation>Diese Vorschläge halten nach dem wahrscheinlichen Wert im Winter und im Sommer jeden Zielwert ein, den Technik einhalten kann; kein Ende einer Spanne und kein Störfall ist eine Gefahr. Wo ein Ende einer Spanne einen Zielwert verfehlt, ist der Spielraum negativ.</translation>
    </message>
    <message>
        <source>Nothing that was tried meets every target. These come nearest:</source>
        <translation>Nichts von dem, was versucht wurde, hält alle Zielwerte ein. Dies kommt am nächsten:</translation>
    </message>
    <message>
        <source>Sets of equipment that were worked out: %1.</source>
        <translation>Durchgerechnete Zusammenstellungen: %1.</translation>
    </message>
    <message>
        <source>Prove any of them with thermometers for several days before an animal moves in. Wiring is an electrician&apos;s work; an ill animal is a vet&apos;s.</source>
        <translation>Jede davon mehrere Tage lang mit Thermometern nachprüfen, bevor ein Tier einzieht. Verdrahten ist Sache einer Elektrofachkraft, ein krankes Tier Sache des Tierarztes.</translation>
    </message>
    <message>
        <source>cost not known: the price list is in another currency</source>
        <translation>Kosten nicht bekannt: Die Preisliste hat eine andere Währung</translation>
    </message>
    <message>
        <source>misting %1 a day</source>
        <translation>Sprühmenge %1 pro Tag</translation>
    </message>
    <message>
        <source>%1: %2 to begin</source>
        <translation>%1: Anschaffung %2</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>read</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>They narrow: %1.</source>
        <translation>Sie engen ein: %1.</translation>
    </message>
    <message>
        <source>Hour by hour</source>
        <translation>Stunde für Stunde</translation>
    </message>
    <message>
        <source>%1, of which %2 can be walked on</source>
        <translation>%1, davon %2 begehbar</translation>
    </message>
    <message>
        <source>; %1 asked for by “%2”</source>
        <translation>; „%2“ verlangt %1</translation>
    </message>
    <message>
        <source>may be outgrown in %1</source>
        <translation>reicht womöglich nur noch %1</translation>
    </message>
    <message>
        <source>range</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Zielwert</translation>
    </message>
    <message>
        <source>the balance of heat did not close: not known</source>
        <translation>die Wärmebilanz ging nicht auf: nicht bekannt</translation>
    </message>
    <message>
        <source>draws %1</source>
        <translation>Aufnahme %1</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>%1: fill in %2, %3 when damp</source>
        <translation>%1: %2 einfüllen, feucht %3</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>%1 connected, %2 a day</source>
        <translation>%1 angeschlossen, %2 am Tag</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>Temperaturen</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Lasten</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>Month, typical prices</source>
        <translation>Monat, übliche Preise</translation>
    </message>
    <message>
        <source>electricity</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>replaced</source>
        <translation>Ersatz</translation>
    </message>
    <message>
        <source>others</source>
        <translation>Übriges</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>insgesamt</translation>
    </message>
    <message>
        <source>  %1 %2</source>
        <translation>  %1 %2</translation>
    </message>
    <message>
        <source>For the rest of a life (%1, %2): about %3 in all at today&apos;s prices, in round figures.</source>
        <translation>Für den Rest eines Lebens (%1, %2): insgesamt rund %3 zu heutigen Preisen, gerundet.</translation>
    </message>
    <message>
        <source>Goods, %1</source>
        <translation>Ware, %1</translation>
    </message>
    <message>
        <source>Delivery, %1</source>
        <translation>Lieferung, %1</translation>
    </message>
    <message>
        <source>Tax on top, %1</source>
        <translation>Steuer zusätzlich, %1</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>The price list is in another currency than the plan, so nothing is costed.</source>
        <translation>Die Preisliste hat eine andere Währung als der Plan, deshalb werden keine Kosten berechnet.</translation>
    </message>
    <message>
        <source>  of that, electricity</source>
        <translation>  davon Strom</translation>
    </message>
    <message>
        <source>  by the head, of %1 animals</source>
        <translation>  je Tier, bei %1 Tieren</translation>
    </message>
    <message>
        <source>After the start</source>
        <translation>Nach der Anschaffung</translation>
    </message>
    <message>
        <source>Year %1, in all so far</source>
        <translation>Jahr %1, insgesamt bisher</translation>
    </message>
    <message>
        <source>The same as a sum each year</source>
        <translation>Dasselbe als Betrag je Jahr</translation>
    </message>
    <message>
        <source>The prices are invented examples. Put your own in their place.</source>
        <translation>Die Preise sind erfundene Beispiele. An ihrer Stelle die eigenen einsetzen.</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>Nothing.</source>
        <translation>Nichts.</translation>
    </message>
    <message>
        <source>in the place of %1, which is out of stock</source>
        <translation>statt %1 (nicht lieferbar)</translation>
    </message>
    <message>
        <source>Findings, the most serious first</source>
        <translation>Befunde, die schwerwiegendsten zuerst</translation>
    </message>
    <message>
        <source>Nothing falls short.</source>
        <translation>Nichts zu beanstanden.</translation>
    </message>
    <message>
        <source>Bear in mind</source>
        <translation>Zu bedenken</translation>
    </message>
    <message>
        <source>Not stated in the plan, and what was assumed</source>
        <translation>Nicht im Plan angegeben, und was dafür angenommen wurde</translation>
    </message>
    <message>
        <source>the bed</source>
        <translation>Bodengrund</translation>
    </message>
    <message>
        <source>%1 of the floor has none</source>
        <translation>%1 der Grundfläche ohne UV</translation>
    </message>
    <message>
        <source>%1 to %2 of the floor has none</source>
        <translation>%1 bis %2 der Grundfläche ohne UV</translation>
    </message>
    <message>
        <source>%1: %2 from a back on %3 at the nearest</source>
        <translation>%1: geringster Abstand zum Rücken eines Tieres %2 (Standort: %3)</translation>
    </message>
    <message>
        <source>; keep at least %1</source>
        <translation>; mindestens %1 einhalten</translation>
    </message>
    <message>
        <source>no height of the lamp puts it inside the target</source>
        <translation>bei keiner Höhe der Lampe liegt der Wert im Zielbereich</translation>
    </message>
    <message>
        <source>inside the target with %1 at %2 to %3 above the base</source>
        <translation>im Zielbereich, wenn %1 %2 bis %3 über der Bodenplatte hängt</translation>
    </message>
    <message>
        <source>likely inside the target with %1 at %2 to %3 above the base</source>
        <translation>wahrscheinlich im Zielbereich, wenn %1 %2 bis %3 über der Bodenplatte hängt</translation>
    </message>
    <message>
        <source>falls below the target after about %1 of burning</source>
        <translation>sinkt unter den Zielwert; Brenndauer bis dahin etwa %1</translation>
    </message>
    <message>
        <source>, on %1 (earliest %2)</source>
        <translation>, am %1 (frühestens %2)</translation>
    </message>
    <message>
        <source>UV index</source>
        <translation>UV-Index</translation>
    </message>
    <message>
        <source>%1; target %2: %3</source>
        <translation>%1; Zielwert %2: %3</translation>
    </message>
    <message>
        <source>the most within reach is %1, on %2</source>
        <translation>höchster erreichbarer Wert: %1 (Standort: %2)</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>Ruhe</translation>
    </message>
    <message>
        <source>weigh on</source>
        <translation>wiegen am</translation>
    </message>
    <message>
        <source>ask a vet below</source>
        <translation>Tierarzt unter</translation>
    </message>
    <message>
        <source>end it below</source>
        <translation>beenden unter</translation>
    </message>
    <message>
        <source>week of</source>
        <translation>Woche ab</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>by its end</source>
        <translation>am Ende</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>%1 a day, %2 a month: changed %3, topped up %4, misted %5</source>
        <translation>%1 am Tag, %2 im Monat: gewechselt %3, nachgefüllt %4, gesprüht %5</translation>
    </message>
    <message>
        <source>poured into the bed to keep it as damp: %1 a day</source>
        <translation>in den Bodengrund gegossen, damit er so feucht bleibt: %1 pro Tag</translation>
    </message>
    <message>
        <source>%1 holds %2 and weighs %3 full: %4</source>
        <translation>%1 fasst %2 und wiegt gefüllt %3: %4</translation>
    </message>
    <message>
        <source>conditioner %1 a fill, %2 a month for %3 of treated water</source>
        <translation>Wasseraufbereiter %1 je Füllung, %2 im Monat für %3 aufbereitetes Wasser</translation>
    </message>
    <message>
        <source>source: %1; drawn from the mains %2 a day</source>
        <translation>Herkunft: %1; aus der Leitung entnommen %2 am Tag</translation>
    </message>
    <message>
        <source>filter cartridges a year, by volume: %1</source>
        <translation>Filterkartuschen im Jahr, nach Menge: %1</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>sky, h</source>
        <translation>Tag, h</translation>
    </message>
    <message>
        <source>on</source>
        <translation>an</translation>
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
        <translation>Kosten</translation>
    </message>
    <message>
        <source>In a year</source>
        <translation>Im Jahr</translation>
    </message>
    <message>
        <source>Winter rest</source>
        <translation>Winterruhe</translation>
    </message>
    <message>
        <source>Growth: not known; it takes two lengths at least three months apart.</source>
        <translation>Wachstum: nicht bekannt; dazu braucht es zwei Längen im Abstand von mindestens drei Monaten.</translation>
    </message>
    <message>
        <source>Growth: %1 of its length a year; against what is published: %2.</source>
        <translation>Wachstum: %1 der Länge im Jahr; verglichen mit veröffentlichten Werten: %2.</translation>
    </message>
    <message>
        <source>Weight: not judged; it takes two weights within a year.</source>
        <translation>Gewicht: nicht beurteilt; dazu braucht es zwei Wägungen binnen eines Jahres.</translation>
    </message>
    <message>
        <source>Weight: nothing lost since %1.</source>
        <translation>Gewicht: seit %1 kein Verlust.</translation>
    </message>
    <message>
        <source>Weight: %1 less than the %2 of %3: %4.</source>
        <translation>Gewicht: %1 weniger als %2 am %3: %4.</translation>
    </message>
    <message>
        <source>Length by %1: %2 to %3.</source>
        <translation>Länge am %1: %2 bis %3.</translation>
    </message>
    <message>
        <source>Length by %1: at least %2.</source>
        <translation>Länge am %1: mindestens %2.</translation>
    </message>
    <message>
        <source>%1 over time</source>
        <translation>%1 über die Zeit</translation>
    </message>
</context>
<context>
    <name>seasons</name>
    <message>
        <source>winding down</source>
        <translation>Einwintern</translation>
    </message>
    <message>
        <source>cold</source>
        <translation>Kälte</translation>
    </message>
    <message>
        <source>warming up</source>
        <translation>Aufheizen</translation>
    </message>
    <message>
        <source>tap</source>
        <translation>Leitungswasser</translation>
    </message>
    <message>
        <source>filtered</source>
        <translation>gefiltert</translation>
    </message>
    <message>
        <source>reverse osmosis</source>
        <translation>Umkehrosmose</translation>
    </message>
    <message>
        <source>may be cooled</source>
        <translation>Winterruhe möglich</translation>
    </message>
    <message>
        <source>must not be cooled</source>
        <translation>keine Winterruhe</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>No food. Water to drink and a bath every other day, so that the gut empties. In the first half as warm as ever, in the second warmth and light fall evenly.</source>
        <translation>Kein Futter. Wasser zum Trinken und jeden zweiten Tag ein Bad, damit sich der Darm leert. In der ersten Hälfte so warm wie sonst, in der zweiten nehmen Wärme und Licht gleichmäßig ab.</translation>
    </message>
    <message>
        <source>Dark, and at an even temperature. Look at the thermometer&apos;s log every day, weigh every week, and let fresh air in each time.</source>
        <translation>Dunkel und bei gleichmäßiger Temperatur. Täglich die Aufzeichnung des Thermometers ansehen, jede Woche wiegen und dabei jedes Mal frische Luft hereinlassen.</translation>
    </message>
    <message>
        <source>Back to the usual warmth and light within days. A bath first, then food. If it does not eat within a week, see a vet.</source>
        <translation>Binnen Tagen zurück zu gewohnter Wärme und gewohntem Licht. Erst ein Bad, dann Futter. Frisst das Tier nicht innerhalb einer Woche, zum Tierarzt gehen.</translation>
    </message>
    <message>
        <source>What each device draws on a winter and on a summer day, joined by a cosine whose coldest day comes 27.5 days after the shortest; the range covers a lag from none to twice that.</source>
        <translation>Was jedes Gerät an einem Winter- und an einem Sommertag aufnimmt, verbunden durch eine Kosinuskurve, deren kältester Tag 27,5 Tage nach dem kürzesten liegt; die Spanne deckt einen Nachlauf von null bis zum Doppelten davon ab.</translation>
    </message>
    <message>
        <source>What each device draws on a winter and on a summer day. The latitude is not stated, so each month may be a winter&apos;s or a summer&apos;s, and the range covers both.</source>
        <translation>Was jedes Gerät an einem Winter- und an einem Sommertag aufnimmt. Der Breitengrad ist nicht angegeben, daher kann jeder Monat ein Winter- oder ein Sommermonat sein, und die Spanne deckt beides ab.</translation>
    </message>
</context>
<context>
    <name>sentences</name>
    <message>
        <source>the room on a winter day</source>
        <translation>der Raum an einem Wintertag</translation>
    </message>
    <message>
        <source>the room on a winter night</source>
        <translation>der Raum in einer Winternacht</translation>
    </message>
    <message>
        <source>the room&apos;s humidity in winter</source>
        <translation>die Luftfeuchte des Raums im Winter</translation>
    </message>
    <message>
        <source>the room on a summer day</source>
        <translation>der Raum an einem Sommertag</translation>
    </message>
    <message>
        <source>the room on a summer night</source>
        <translation>der Raum in einer Sommernacht</translation>
    </message>
    <message>
        <source>the room&apos;s humidity in summer</source>
        <translation>die Luftfeuchte des Raums im Sommer</translation>
    </message>
    <message>
        <source>the room in a heat wave</source>
        <translation>der Raum bei einer Hitzewelle</translation>
    </message>
    <message>
        <source>the length of a power cut</source>
        <translation>die Dauer eines Stromausfalls</translation>
    </message>
    <message>
        <source>the room in a power cut</source>
        <translation>der Raum bei einem Stromausfall</translation>
    </message>
    <message>
        <source>how far a room strays from what is stated</source>
        <translation>wie weit ein Raum von der Angabe abweicht</translation>
    </message>
    <message>
        <source>how far a room&apos;s humidity strays from what is stated</source>
        <translation>wie weit die Luftfeuchte eines Raums von der Angabe abweicht</translation>
    </message>
    <message>
        <source>what else runs on the circuit</source>
        <translation>was sonst am Stromkreis läuft</translation>
    </message>
    <message>
        <source>what a strip may carry</source>
        <translation>die zulässige Last einer Steckdosenleiste</translation>
    </message>
    <message>
        <source>timed outlets of a strip</source>
        <translation>Steckdosen mit Zeitschaltung an einer Leiste</translation>
    </message>
    <message>
        <source>always-on outlets of a strip</source>
        <translation>Steckdosen mit Dauerstrom an einer Leiste</translation>
    </message>
    <message>
        <source>the open share of the mesh</source>
        <translation>der offene Anteil des Gitters</translation>
    </message>
    <message>
        <source>the thickness of a panel</source>
        <translation>die Dicke einer Wandplatte</translation>
    </message>
    <message>
        <source>how large the entrance of a hide is</source>
        <translation>wie groß der Eingang eines Verstecks ist</translation>
    </message>
    <message>
        <source>how still the air in a hide is</source>
        <translation>wie still die Luft in einem Versteck steht</translation>
    </message>
    <message>
        <source>the height of a fitting</source>
        <translation>die Höhe eines Einrichtungsteils</translation>
    </message>
    <message>
        <source>the depth of water in a bowl</source>
        <translation>die Wassertiefe in einer Wasserschale</translation>
    </message>
    <message>
        <source>switching difference of a thermostat</source>
        <translation>Schaltdifferenz eines Thermostats</translation>
    </message>
    <message>
        <source>how full a bowl is</source>
        <translation>wie voll eine Wasserschale ist</translation>
    </message>
    <message>
        <source>how much water evaporates from a bowl</source>
        <translation>wie viel Wasser aus einer Wasserschale verdunstet</translation>
    </message>
    <message>
        <source>how much is misted</source>
        <translation>wie viel gesprüht wird</translation>
    </message>
    <message>
        <source>how often the water is changed</source>
        <translation>wie oft das Wasser gewechselt wird</translation>
    </message>
    <message>
        <source>what reverse osmosis sends to the drain</source>
        <translation>wie viel Abwasser die Umkehrosmose abgibt</translation>
    </message>
    <message>
        <source>the length of a bowl over that of the shell</source>
        <translation>die Länge einer Wasserschale im Verhältnis zur Panzerlänge</translation>
    </message>
    <message>
        <source>the width of a bowl over the length of the shell</source>
        <translation>die Breite einer Wasserschale im Verhältnis zur Panzerlänge</translation>
    </message>
    <message>
        <source>the weeks without food before the cold</source>
        <translation>die Wochen ohne Futter vor der Kälte</translation>
    </message>
    <message>
        <source>the weeks of warming up after the cold</source>
        <translation>die Wochen des Aufwärmens nach der Kälte</translation>
    </message>
    <message>
        <source>the loss of weight that ends a winter rest</source>
        <translation>der Gewichtsverlust, bei dem eine Winterruhe endet</translation>
    </message>
    <message>
        <source>the loss of weight in a month of rest</source>
        <translation>der Gewichtsverlust in einem Monat Ruhe</translation>
    </message>
    <message>
        <source>how long a vet&apos;s check counts</source>
        <translation>wie lange eine Untersuchung beim Tierarzt gilt</translation>
    </message>
    <message>
        <source>the dose of conditioner</source>
        <translation>die Dosierung des Wasseraufbereiters</translation>
    </message>
    <message>
        <source>the height of a lamp above the top</source>
        <translation>die Höhe einer Lampe über der Oberseite</translation>
    </message>
    <message>
        <source>how long a lamp has burnt</source>
        <translation>wie lange eine Lampe schon gebrannt hat</translation>
    </message>
    <message>
        <source>how the UV of a lamp falls with distance</source>
        <translation>wie das UV einer Lampe mit dem Abstand abnimmt</translation>
    </message>
    <message>
        <source>the air gap under a mat</source>
        <translation>der Luftspalt unter einer Heizmatte</translation>
    </message>
    <message>
        <source>how far a device strays from its rated power</source>
        <translation>wie weit ein Gerät von seiner Nennleistung abweicht</translation>
    </message>
    <message>
        <source>the accuracy of a thermometer</source>
        <translation>die Genauigkeit eines Thermometers</translation>
    </message>
    <message>
        <source>how much a bed settles</source>
        <translation>wie stark sich ein Bodengrund setzt</translation>
    </message>
    <message>
        <source>how far coir expands</source>
        <translation>wie stark Kokoserde aufquillt</translation>
    </message>
    <message>
        <source>which quart a bag means</source>
        <translation>welches Quart auf einem Sack gemeint ist</translation>
    </message>
    <message>
        <source>visits to the vet in a year</source>
        <translation>Tierarztbesuche im Jahr</translation>
    </message>
    <message>
        <source>disinfectant in a year</source>
        <translation>Desinfektionsmittel im Jahr</translation>
    </message>
    <message>
        <source>gloves in a year</source>
        <translation>Handschuhe im Jahr</translation>
    </message>
    <message>
        <source>calcium in a month</source>
        <translation>Kalzium im Monat</translation>
    </message>
    <message>
        <source>the years looked at</source>
        <translation>die betrachteten Jahre</translation>
    </message>
    <message>
        <source>the discount rate</source>
        <translation>der Zinssatz</translation>
    </message>
    <message>
        <source>the reserve for what always comes on top</source>
        <translation>die Reserve für das, was immer dazukommt</translation>
    </message>
    <message>
        <source>how well air takes heat from surfaces</source>
        <translation>wie gut die Luft Wärme von Oberflächen aufnimmt</translation>
    </message>
    <message>
        <source>how fast air passes through the top</source>
        <translation>wie schnell Luft durch die Oberseite strömt</translation>
    </message>
    <message>
        <source>how fast water evaporates</source>
        <translation>wie schnell Wasser verdunstet</translation>
    </message>
    <message>
        <source>how leaky the box is</source>
        <translation>wie undicht das Terrarium ist</translation>
    </message>
    <message>
        <source>how well the air in the box mixes</source>
        <translation>wie gut sich die Luft im Terrarium mischt</translation>
    </message>
    <message>
        <source>how much of the heat that the mesh catches comes back into the box</source>
        <translation>wie viel der Wärme, die das Gitter auffängt, ins Terrarium zurückkommt</translation>
    </message>
    <message>
        <source>what the model itself leaves open</source>
        <translation>was das Modell selbst offenlässt</translation>
    </message>
    <message>
        <source>the temperature of the room</source>
        <translation>die Temperatur des Raums</translation>
    </message>
    <message>
        <source>the humidity of the room</source>
        <translation>die Luftfeuchte des Raums</translation>
    </message>
    <message>
        <source>how damp the bed is</source>
        <translation>wie feucht der Bodengrund ist</translation>
    </message>
    <message>
        <source>how well {0} conducts heat</source>
        <translation>wie gut {0} Wärme leitet</translation>
    </message>
    <message>
        <source>how well damp {0} conducts heat</source>
        <translation>wie gut {0} in feuchtem Zustand Wärme leitet</translation>
    </message>
    <message>
        <source>how well {0} gives off radiant heat</source>
        <translation>wie gut {0} Wärme abstrahlt</translation>
    </message>
    <message>
        <source>how much lamp light {0} lets through</source>
        <translation>wie viel Lampenlicht {0} durchlässt</translation>
    </message>
    <message>
        <source>how much lamp light {0} takes up</source>
        <translation>wie viel Lampenlicht {0} aufnimmt</translation>
    </message>
    <message>
        <source>how much air {0} lets through</source>
        <translation>wie viel Luft {0} durchlässt</translation>
    </message>
    <message>
        <source>how damp {0} is kept</source>
        <translation>wie feucht {0} gehalten wird</translation>
    </message>
    <message>
        <source>how far {0} dries out under a lamp</source>
        <translation>wie stark {0} unter einer Lampe austrocknet</translation>
    </message>
    <message>
        <source>how wet the surface of {0} is</source>
        <translation>wie nass die Oberfläche von {0} ist</translation>
    </message>
    <message>
        <source>the power of {0}</source>
        <translation>die Leistung von {0}</translation>
    </message>
    <message>
        <source>how much of its power {0} radiates</source>
        <translation>welcher Anteil der Leistung von {0} als Strahlung abgeht</translation>
    </message>
    <message>
        <source>how much of its power {0} gives to the air</source>
        <translation>welcher Anteil der Leistung von {0} an die Luft geht</translation>
    </message>
    <message>
        <source>how wide the beam of {0} is</source>
        <translation>wie breit der Lichtkegel von {0} ist</translation>
    </message>
    <message>
        <source>“{0}” ({1}) must not be larger than “{2}” ({3}).</source>
        <translation>„{0}“ ({1}) darf nicht größer sein als „{2}“ ({3}).</translation>
    </message>
    <message>
        <source>Exactly one of these must stand here: {0}.</source>
        <translation>Genau eine dieser Angaben muss hier stehen: {0}.</translation>
    </message>
    <message>
        <source>“{0}” is not a format that is known. The file is left out.</source>
        <translation>„{0}“ ist kein bekanntes Format. Die Datei wird ausgelassen.</translation>
    </message>
    <message>
        <source>The size classes must ascend, and only the last may leave out its upper end.</source>
        <translation>Die Größenklassen müssen ansteigen, und nur bei der letzten darf die Obergrenze fehlen.</translation>
    </message>
    <message>
        <source>The shares add up to {0}, and they can&apos;t be more than 1 together.</source>
        <translation>Die Anteile ergeben zusammen {0}; mehr als 1 darf es nicht sein.</translation>
    </message>
    <message>
        <source>“{0}” is missing. It is needed for the use “{1}”.</source>
        <translation>„{0}“ fehlt. Die Angabe ist für die Verwendung „{1}“ nötig.</translation>
    </message>
    <message>
        <source>{0} has too many decimals: {1} has {2}.</source>
        <translation>{0} hat zu viele Nachkommastellen: {1} hat {2}.</translation>
    </message>
    <message>
        <source>“{0}” is not a kind of need. Write it as two parts with a point between them, such as “substrate.bark”.</source>
        <translation>„{0}“ ist keine Bedarfsart. Richtig sind zwei Teile mit einem Punkt dazwischen, etwa „substrate.bark“.</translation>
    </message>
    <message>
        <source>There is no such date: “{0}”.</source>
        <translation>Dieses Datum gibt es nicht: „{0}“.</translation>
    </message>
    <message>
        <source>It names the space rule “{0}”, which no file has.</source>
        <translation>Hier wird die Platzregel „{0}“ genannt, die in keiner Datei steht.</translation>
    </message>
    <message>
        <source>It names the material “{0}”, which no file has.</source>
        <translation>Hier wird das Material „{0}“ genannt, das in keiner Datei steht.</translation>
    </message>
    <message>
        <source>It names “{0}” as a substrate, and the material&apos;s file does not list that use.</source>
        <translation>Hier wird „{0}“ als Bodengrund genannt, doch die Datei des Materials führt diese Verwendung nicht auf.</translation>
    </message>
    <message>
        <source>It names the space rule “{0}”, which goes by {1:measure}, and the sheet gives {2:measure}.</source>
        <translation>Hier wird die Platzregel „{0}“ genannt (Maß: {1:measure}); das Datenblatt gibt aber {2:measure} an.</translation>
    </message>
    <message>
        <source>Nothing in the price list serves “{0}”.</source>
        <translation>Nichts in der Preisliste deckt „{0}“.</translation>
    </message>
    <message>
        <source>There are no figures for equipment of the kind “{0}”.</source>
        <translation>Für Geräte der Art „{0}“ liegen keine Zahlen vor.</translation>
    </message>
    <message>
        <source>A quotation mark is opened and never closed.</source>
        <translation>Ein Anführungszeichen wird geöffnet und nicht wieder geschlossen.</translation>
    </message>
    <message>
        <source>There is text beside a quoted cell. Put the whole cell in quotation marks, and double those inside it.</source>
        <translation>Neben einer Zelle in Anführungszeichen steht Text. Die ganze Zelle in Anführungszeichen setzen und die Anführungszeichen darin verdoppeln.</translation>
    </message>
    <message>
        <source>There are too many rows; at most {0} are read.</source>
        <translation>Es sind zu viele Zeilen; höchstens {0} werden gelesen.</translation>
    </message>
    <message>
        <source>This row has {0} cells, and the header has {1}.</source>
        <translation>Diese Zeile hat {0} Zellen, die Kopfzeile hat {1}.</translation>
    </message>
    <message>
        <source>The column “{0}” is missing.</source>
        <translation>Die Spalte „{0}“ fehlt.</translation>
    </message>
    <message>
        <source>“{0}” is not a known column.[ Did you mean “{1}”?]</source>
        <translation>„{0}“ ist keine bekannte Spalte.[ Ist „{1}“ gemeint?]</translation>
    </message>
    <message>
        <source>The column “{0}” stands here twice.</source>
        <translation>Die Spalte „{0}“ kommt hier zweimal vor.</translation>
    </message>
    <message>
        <source>“{0}” is not a number. Write it in digits with a point.</source>
        <translation>„{0}“ ist keine Zahl. Mit Ziffern und Dezimalpunkt schreiben.</translation>
    </message>
    <message>
        <source>“{0}” must be “true” or “false”.</source>
        <translation>„{0}“ muss „true“ oder „false“ sein.</translation>
    </message>
    <message>
        <source>“{0}” differs from “{1}” in the item&apos;s first row. All rows of an item must agree.</source>
        <translation>„{0}“ weicht von „{1}“ in der ersten Zeile des Artikels ab. Alle Zeilen eines Artikels müssen übereinstimmen.</translation>
    </message>
    <message>
        <source>There are no rows below the header.</source>
        <translation>Unter der Kopfzeile stehen keine Zeilen.</translation>
    </message>
    <message>
        <source>Reptiles and amphibians can carry salmonella. Wash your hands after each contact, keep their things out of the kitchen, and take extra care with small children and ill people.</source>
        <translation>Reptilien und Amphibien können Salmonellen übertragen. Nach jedem Kontakt die Hände waschen, ihre Sachen nicht in die Küche bringen und bei kleinen Kindern und Kranken besonders vorsichtig sein.</translation>
    </message>
    <message>
        <source>Keeping this species may need a permit or papers where you live ({species}). Ask the authority before you buy.</source>
        <translation>Die Haltung dieser Art kann je nach Wohnort eine Genehmigung oder Papiere erfordern ({species}). Vor dem Kauf bei der Behörde nachfragen.</translation>
    </message>
    <message>
        <source>Find a vet who treats reptiles and amphibians before an animal moves in. This program does not replace one.</source>
        <translation>Vor dem Einzug eines Tieres einen Tierarzt suchen, der Reptilien und Amphibien behandelt. Dieses Programm ersetzt ihn nicht.</translation>
    </message>
    <message>
        <source>Fixed wiring is an electrician&apos;s work. The figures here concern what is plugged in.</source>
        <translation>Feste Elektroinstallation ist Sache einer Elektrofachkraft. Die Zahlen hier betreffen nur, was eingesteckt ist.</translation>
    </message>
    <message>
        <source>The load is an estimate. It does not show that a floor or a piece of furniture holds it.</source>
        <translation>Das Gewicht ist geschätzt. Es belegt nicht, dass ein Fußboden oder ein Möbelstück es trägt.</translation>
    </message>
    <message>
        <source>Keep a new animal apart for at least {days_min}[, {resident}].</source>
        <translation>Ein neues Tier mindestens {days_min} getrennt halten[, {resident}].</translation>
    </message>
    <message>
        <source>Run the finished enclosure for at least {days_min} with thermometers in it before an animal moves in.</source>
        <translation>Das fertige Terrarium mindestens {days_min} mit Thermometern darin laufen lassen, bevor ein Tier einzieht.</translation>
    </message>
    <message>
        <source>This species may rest through the winter ({species}). The temperatures here are for animals that are awake and well.</source>
        <translation>Diese Art kann eine Winterruhe halten ({species}). Die Temperaturen hier gelten für wache, gesunde Tiere.</translation>
    </message>
    <message>
        <source>This is a long commitment[: a life of {band}] ({species}).</source>
        <translation>Das ist eine Entscheidung auf lange Zeit[: Lebensdauer {band}] ({species}).</translation>
    </message>
    <message>
        <source>{species}: {note}</source>
        <translation>{species}: {note}</translation>
    </message>
    <message>
        <source>Whether {animal} may be cooled for the winter is not known: {reason}. Until then no rest is planned.</source>
        <translation>Ob {animal} Winterruhe halten darf, ist nicht bekannt: {reason}. Bis dahin wird keine Ruhe geplant.</translation>
    </message>
    <message>
        <source>No vet&apos;s check is stated for {animal} before the winter rest. It belongs in the {days} before the first day without food.</source>
        <translation>Für {animal} ist keine Untersuchung beim Tierarzt vor der Winterruhe angegeben. Sie soll höchstens {days} vor dem ersten Tag ohne Futter stattfinden.</translation>
    </message>
    <message>
        <source>The vet&apos;s check of {animal} is not in the {days} before the first day without food, so it tells nothing of this rest.</source>
        <translation>Die Untersuchung von {animal} beim Tierarzt liegt nicht innerhalb der Frist ({days} vor dem ersten Tag ohne Futter) und sagt daher nichts über diese Ruhe aus.</translation>
    </message>
    <message>
        <source>The rest of {animal} is too long: {weeks} in the cold. At most {max} is on file ({species}).</source>
        <translation>Die Ruhe von {animal} ist zu lang: {weeks} in der Kälte. Hinterlegt sind höchstens {max} ({species}).</translation>
    </message>
    <message>
        <source>Winter rest of {animal}: no food from {begins}, at {band} from {cold_from} to {cold_until}, usual care from {ends}. Weigh it every week, and end the rest where it has lost {stop:percent}.</source>
        <translation>Winterruhe von {animal}: kein Futter ab {begins}, Kälte ({band}) von {cold_from} bis {cold_until}, gewohnte Pflege ab {ends}. Jede Woche wiegen und die Ruhe beenden, sobald der Gewichtsverlust {stop:percent} erreicht.</translation>
    </message>
    <message>
        <source>{animal} has to rest in a place that stays at {band} day and night, with a thermometer that logs it. A lived-in room is too warm[: this one is at {room} on a winter day].</source>
        <translation>{animal} muss an einem Ort ruhen, an dem Tag und Nacht {band} herrschen, mit einem aufzeichnenden Thermometer. Ein bewohnter Raum ist zu warm[: Dieser hat an einem Wintertag {room}].</translation>
    </message>
    <message>
        <source>{cover} ({material}) is {distance} from {lamp}. It should be at least {clearance} away: {short_by} more.</source>
        <translation>Abstand von {cover} ({material}) zu {lamp}: {distance}. Es sollten mindestens {clearance} sein, {short_by} mehr.</translation>
    </message>
    <message>
        <source>{cover} ({material}) can catch fire: it is only {distance} from {lamp} and should be at least {clearance} away.</source>
        <translation>{cover} ({material}) kann Feuer fangen: Der Abstand zu {lamp} beträgt nur {distance} und sollte mindestens {clearance} betragen.</translation>
    </message>
    <message>
        <source>How far {cover} ({material}) is from {lamp} is not known. It should be at least {clearance} away.</source>
        <translation>Der Abstand von {cover} ({material}) zu {lamp} ist nicht bekannt. Er sollte mindestens {clearance} betragen.</translation>
    </message>
    <message>
        <source>{lamp} is only {distance} from the {part} ({material}), which can scorch. It should be at least {clearance} away.</source>
        <translation>Zwischen {lamp} und {part} ({material}) liegen nur {distance}; das Material kann versengen. Der Abstand sollte mindestens {clearance} betragen.</translation>
    </message>
    <message>
        <source>{lamp} is only {distance} from the {part} ({material}), which can catch fire. It should be at least {clearance} away.</source>
        <translation>Zwischen {lamp} und {part} ({material}) liegen nur {distance}; das Material kann Feuer fangen. Der Abstand sollte mindestens {clearance} betragen.</translation>
    </message>
    <message>
        <source>How far {lamp} is from the {part} ({material}) is not known. It should be at least {clearance} away.</source>
        <translation>Der Abstand zwischen {lamp} und {part} ({material}) ist nicht bekannt. Er sollte mindestens {clearance} betragen.</translation>
    </message>
    <message>
        <source>An animal that digs down above {mat} meets {range} {case}. {regulated}</source>
        <translation>Ein Tier, das sich über {mat} eingräbt, trifft {case} auf {range}. {regulated}</translation>
    </message>
    <message>
        <source>An animal that digs down above {mat} meets {range} {case}. That is warmer than the {warn} it should lie on for long. {regulated}</source>
        <translation>Ein Tier, das sich über {mat} eingräbt, trifft {case} auf {range}. Das ist mehr als {warn}, die Grenze für längeres Liegen. {regulated}</translation>
    </message>
    <message>
        <source>An animal that digs down above {mat} can be burnt: it meets {range} {case}, and {max} is the limit. {regulated}</source>
        <translation>Ein Tier, das sich über {mat} eingräbt, kann sich verbrennen: Es trifft {case} auf {range}, die Grenze ist {max}. {regulated}</translation>
    </message>
    <message>
        <source>The pane at {mat} reaches {range} {case}; the limit is {max}.</source>
        <translation>Die Scheibe an {mat} erreicht {case} {range}; die Grenze ist {max}.</translation>
    </message>
    <message>
        <source>The pane at {mat} can burn an animal that leans on it: it reaches {range} {case}, and {max} is the limit.</source>
        <translation>An der Scheibe bei {mat} kann sich ein Tier verbrennen, das sich anlehnt: Sie erreicht {case} {range}, die Grenze ist {max}.</translation>
    </message>
    <message>
        <source>The wall beside {lamp} can burn an animal that leans on it: {height} above the base it reaches {range} {case}, and {max} is the limit.</source>
        <translation>An der Wand neben {lamp} kann sich ein Tier verbrennen, das sich anlehnt: {height} über der Bodenplatte erreicht sie {case} {range}, die Grenze ist {max}.</translation>
    </message>
    <message>
        <source>From {standing_on}, an animal reaches {reach} above the base and comes within {gap} of {lamp}. It should stay at least {needed} away.</source>
        <translation>Von {standing_on} aus reicht ein Tier bis {reach} über die Bodenplatte und kommt {lamp} bis auf {gap} nahe. Es sollten mindestens {needed} Abstand bleiben.</translation>
    </message>
    <message>
        <source>{lamp} burns at a touch and has no guard. From {standing_on}, an animal reaches {reach} above the base, {gap} from it.</source>
        <translation>{lamp} verbrennt bei Berührung und hat keinen Schutzkorb. Von {standing_on} aus reicht ein Tier bis {reach} über die Bodenplatte, {gap} davon entfernt.</translation>
    </message>
    <message>
        <source>Sun reaches the enclosure. Behind glass it can overheat an animal within a short time.</source>
        <translation>Das Terrarium wird von der Sonne beschienen. Hinter Glas kann sie ein Tier in kurzer Zeit überhitzen.</translation>
    </message>
    <message>
        <source>It is not stated whether sun reaches the enclosure. Behind glass it can overheat an animal within a short time.</source>
        <translation>Es ist nicht angegeben, ob die Sonne das Terrarium erreicht. Hinter Glas kann sie ein Tier in kurzer Zeit überhitzen.</translation>
    </message>
    <message>
        <source>No sun reaches the enclosure.</source>
        <translation>Das Terrarium bekommt keine Sonne.</translation>
    </message>
    <message>
        <source>For a while on {course} the hottest surface gets hotter than it stays: {range}, {hour} after the lamps go on. The limit for animals that stay on it is {max}.</source>
        <translation>Zeitweise ({course}) wird die heißeste Fläche heißer als im Dauerzustand: {range}, {hour} nach dem Einschalten der Lampen. Die Grenze für Tiere, die darauf liegen bleiben, ist {max}.</translation>
    </message>
    <message>
        <source>For a while on {course} a surface can burn an animal that stays on it: it reaches {range}, {hour} after the lamps go on, and {max} is the limit.</source>
        <translation>Zeitweise ({course}) kann sich ein Tier auf einer Fläche verbrennen, wenn es darauf liegen bleibt: Sie erreicht {range}, {hour} nach dem Einschalten der Lampen, die Grenze ist {max}.</translation>
    </message>
    <message>
        <source>Heated and dried by a lamp, the surface[ of {on}] reaches {range} {case}; the limit for animals that stay on it is {max}.</source>
        <translation>Von einer Lampe erhitzt und ausgetrocknet, erreicht die Oberfläche[ von {on}] {case} {range}; die Grenze für Tiere, die darauf liegen bleiben, ist {max}.</translation>
    </message>
    <message>
        <source>Heated and dried by a lamp, the surface[ of {on}] can burn an animal that stays on it: it reaches {range} {case}, and {max} is the limit.</source>
        <translation>An der Oberfläche[ von {on}], von einer Lampe erhitzt und ausgetrocknet, kann sich ein Tier verbrennen, das darauf liegen bleibt: Sie erreicht {case} {range}, die Grenze ist {max}.</translation>
    </message>
    <message>
        <source>The hottest surface that an animal can touch reaches {range} {case}; the limit is {max}.</source>
        <translation>Die heißeste Fläche, die ein Tier berühren kann, erreicht {case} {range}; die Grenze ist {max}.</translation>
    </message>
    <message>
        <source>The hottest surface that an animal can touch can burn it: {range} {case}, and {max} is the limit.</source>
        <translation>An der heißesten Fläche, die ein Tier berühren kann, kann es sich verbrennen: {case} {range}, die Grenze ist {max}.</translation>
    </message>
    <message>
        <source>There is no place cool enough {case}: the coolest is {range}, and {max} is the most an animal bears ({species}).</source>
        <translation>Es gibt {case} keinen Platz, der kühl genug ist: Der kühlste hat {range}, und {max} ist das Höchste, was ein Tier verträgt ({species}).</translation>
    </message>
    <message>
        <source>There is no place warm enough {case}: the warmest is {range}, and {min} is the least an animal bears ({species}).</source>
        <translation>Es gibt {case} keinen Platz, der warm genug ist: Der wärmste hat {range}, und {min} ist das Niedrigste, was ein Tier verträgt ({species}).</translation>
    </message>
    <message>
        <source>All of the box passes {limit}, what an animal bears ({species}), {case}: at worst after {earliest}.</source>
        <translation>Das ganze Terrarium überschreitet {case} die Grenze dessen, was ein Tier verträgt, {limit} ({species}): im schlimmsten Fall nach {earliest}.</translation>
    </message>
    <message>
        <source>The whole box is likely to grow too hot {case}: even the coolest place passes {limit}, the most an animal bears ({species})[, after {likely}], at worst after {earliest}.</source>
        <translation>Das ganze Terrarium wird {case} wahrscheinlich zu heiß: Selbst der kühlste Platz überschreitet {limit}, das Höchste, was ein Tier verträgt ({species})[, wahrscheinlich nach {likely}], im schlimmsten Fall nach {earliest}.</translation>
    </message>
    <message>
        <source>The whole box is likely to grow too cold {case}: even the warmest place falls below {limit}, the least an animal bears ({species})[, after {likely}], at worst after {earliest}.</source>
        <translation>Das ganze Terrarium wird {case} wahrscheinlich zu kalt: Selbst der wärmste Platz fällt unter {limit}, das Niedrigste, was ein Tier verträgt ({species})[, wahrscheinlich nach {likely}], im schlimmsten Fall nach {earliest}.</translation>
    </message>
    <message>
        <source>The whole box may grow too hot {case}: at worst even the coolest place passes {limit}, the most an animal bears ({species}), after {earliest}.</source>
        <translation>Das ganze Terrarium kann {case} zu heiß werden: Im schlimmsten Fall überschreitet selbst der kühlste Platz nach {earliest} die Grenze von {limit}, das Höchste, was ein Tier verträgt ({species}).</translation>
    </message>
    <message>
        <source>The whole box may grow too cold {case}: at worst even the warmest place falls below {limit}, the least an animal bears ({species}), after {earliest}.</source>
        <translation>Das ganze Terrarium kann {case} zu kalt werden: Im schlimmsten Fall fällt selbst der wärmste Platz nach {earliest} unter {limit}, das Niedrigste, was ein Tier verträgt ({species}).</translation>
    </message>
    <message>
        <source>{circuit} is overloaded: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation>{circuit} ist überlastet: Die Last beträgt über Stunden {range}, höchstens {max} sollten es sein ({rating} bei {voltage}).</translation>
    </message>
    <message>
        <source>{strip} is overloaded: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation>{strip} ist überlastet: Die Last beträgt über Stunden {range}, höchstens {max} sollten es sein ({rating} bei {voltage}).</translation>
    </message>
    <message>
        <source>{stand} is overloaded: it carries {range}, and it is rated for {max}.</source>
        <translation>{stand} ist überlastet: Die Last beträgt {range}, zulässig sind {max}.</translation>
    </message>
    <message>
        <source>UV from {lamp} is too strong at {distance}, the nearest an animal comes: UV index {range}, and {max} is the most it should meet ({species}).</source>
        <translation>UV von {lamp} ist zu stark bei {distance}, dem kleinsten Abstand eines Tieres: UV-Index {range}, und {max} ist das Höchste, was es abbekommen sollte ({species}).</translation>
    </message>
    <message>
        <source>{device} is too strong for its holder: {likely}, and the holder is rated for {max}. It overheats.</source>
        <translation>{device} ist zu stark für die Fassung: {likely}, die Fassung ist für {max} zugelassen. Sie überhitzt.</translation>
    </message>
    <message>
        <source>{device} is too strong for its control: {likely}, and the control is rated for {max}. It overheats.</source>
        <translation>{device} ist zu stark für den Regler: {likely}, der Regler ist für {max} zugelassen. Er überhitzt.</translation>
    </message>
    <message>
        <source>The water in {fitting} is {range} deep, deeper than the smallest animal here is high, {max} ({species}). An animal that can&apos;t climb out drowns.</source>
        <translation>Wasserstand in {fitting}: {range}, tiefer, als das kleinste Tier hier hoch ist, {max} ({species}). Ein Tier, das nicht herausklettern kann, ertrinkt.</translation>
    </message>
    <message>
        <source>How deep the water in {fitting} is is not stated. It may be deeper than the smallest animal here is high, {max} ({species}), which can drown it.</source>
        <translation>Wie tief das Wasser in {fitting} ist, ist nicht angegeben. Es kann tiefer sein, als das kleinste Tier hier hoch ist, {max} ({species}); dann kann es ertrinken.</translation>
    </message>
    <message>
        <source>{animal} must not be cooled for the winter: {reason}. No rest is planned, and all figures are for an animal that stays warm.</source>
        <translation>{animal} darf keine Winterruhe halten: {reason}. Es wird keine Ruhe geplant, und alle Zahlen gelten für ein Tier, das warm bleibt.</translation>
    </message>
    <message>
        <source>Let it run this long before you trust what its thermometers say, and run it for some days before an animal moves in.</source>
        <translation>So lange laufen lassen, bevor man den Thermometern darin traut, und einige Tage laufen lassen, bevor ein Tier einzieht.</translation>
    </message>
    <message>
        <source>Keep it shut. Wrap the box in blankets, away from lamps and heaters: they come on again with the power. Switch them off until the blankets are gone. Bottles of warm water, wrapped in cloth, may stand at one side. Never heat with a flame. An animal that is limp or doesn&apos;t respond should be seen by a vet who knows such animals; it is warmed slowly, never in hot water or on a hot surface.</source>
        <translation>Geschlossen halten. Das Terrarium in Decken einpacken, aber nicht an Lampen und Heizern: Sie gehen mit dem Strom wieder an. Ausschalten, bis die Decken weg sind. Flaschen mit warmem Wasser, in Tücher gewickelt, dürfen auf einer Seite stehen. Niemals mit offener Flamme heizen. Ein Tier, das schlaff ist oder nicht reagiert, gehört zu einem reptilienkundigen Tierarzt; es wird langsam gewärmt, nie in heißem Wasser oder auf einer heißen Fläche.</translation>
    </message>
    <message>
        <source>Keep a spare of each lamp that heats. Change it with the power off and the holder cold. Where no spare is at hand before the time named here, house the animal in a room that is warm enough. Ask a vet where it has been too cold for long or stops eating.</source>
        <translation>Für jede Lampe, die heizt, Ersatz bereithalten. Nur bei ausgeschaltetem Strom und kalter Fassung wechseln. Ist vor der hier genannten Zeit kein Ersatz da, das Tier in einem ausreichend warmen Raum unterbringen. War es zu lange zu kalt oder frisst es nicht mehr, den Tierarzt fragen.</translation>
    </message>
    <message>
        <source>Unplug the mat, and use it again only with another thermostat. Take the animal off it. Burns from below don&apos;t always show at once: have a vet look at an animal that lay on it. A cut-out of its own, apart from the thermostat, keeps this from happening.</source>
        <translation>Die Matte ausstecken und erst mit einem anderen Thermostat wieder benutzen. Das Tier von ihr herunternehmen. Verbrennungen von unten zeigen sich nicht immer sofort: Ein Tier, das darauf gelegen hat, vom Tierarzt ansehen lassen. Ein eigener Temperaturbegrenzer, getrennt vom Thermostat, verhindert so etwas.</translation>
    </message>
    <message>
        <source>Switch off what heats, keep only the light that is needed. Shade the room, let in air by night, offer fresh water. Before the time named here bring the animal to a cooler room. One that gapes, is frantic or goes limp needs a vet at once; on the way it is cooled gently, never with ice.</source>
        <translation>Alles ausschalten, was heizt, nur das nötige Licht anlassen. Den Raum beschatten, nachts lüften, frisches Wasser anbieten. Vor der hier genannten Zeit das Tier in einen kühleren Raum bringen. Ein Tier, das mit offenem Maul atmet, hektisch ist oder erschlafft, muss sofort zum Tierarzt; unterwegs wird es sanft gekühlt, nie mit Eis.</translation>
    </message>
    <message>
        <source>Put the covers back, clear of all lamps, and look again in a few hours. Where that may not be noticed in time, fix them so that they can&apos;t be left off.</source>
        <translation>Die Abdeckungen wieder auflegen, frei von allen Lampen, und nach einigen Stunden noch einmal nachsehen. Wo ihr Fehlen nicht rechtzeitig auffallen würde, die Abdeckungen so befestigen, dass sie nicht weggelassen werden können.</translation>
    </message>
    <message>
        <source>What else runs on {circuit} is not stated. The enclosures alone draw {likely}.</source>
        <translation>Was sonst an {circuit} läuft, ist nicht angegeben. Die Terrarien allein ziehen {likely}.</translation>
    </message>
    <message>
        <source>{circuit} is near its limit: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation>{circuit} ist nahe an der Grenze: Die Last beträgt über Stunden {range}, höchstens {max} sollten es sein ({rating} bei {voltage}).</translation>
    </message>
    <message>
        <source>What {strip} may carry is not stated. It feeds {likely}.</source>
        <translation>Wie viel {strip} tragen darf, ist nicht angegeben. Angeschlossen sind {likely}.</translation>
    </message>
    <message>
        <source>{strip} is near its limit: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation>{strip} ist nahe an der Grenze: Die Last beträgt über Stunden {range}, höchstens {max} sollten es sein ({rating} bei {voltage}).</translation>
    </message>
    <message>
        <source>{strip} has too few {supply} outlets: {used} are needed, and it has {outlets}.</source>
        <translation>{strip} hat zu wenige Steckdosen ({supply}): Gebraucht werden {used}, vorhanden sind {outlets}.</translation>
    </message>
    <message>
        <source>How many {supply} outlets {strip} has is not stated. Needed: {used}.</source>
        <translation>Wie viele Steckdosen ({supply}) {strip} hat, ist nicht angegeben. Gebraucht: {used}.</translation>
    </message>
    <message>
        <source>{strip} is plugged into {fed_from}. Strips fed by strips overheat at the plug.</source>
        <translation>{strip} steckt in {fed_from}. Hintereinander gesteckte Leisten überhitzen am Stecker.</translation>
    </message>
    <message>
        <source>{strip} has no residual-current protection, and there is water near it.</source>
        <translation>{strip} hat keinen FI-Schutz, und in der Nähe ist Wasser.</translation>
    </message>
    <message>
        <source>It is not stated whether {strip} has residual-current protection. Near water it should.</source>
        <translation>Es ist nicht angegeben, ob {strip} einen FI-Schutz hat. In der Nähe von Wasser sollte einer da sein.</translation>
    </message>
    <message>
        <source>{strip} names the circuit “{circuit}”, which is not in the plan.</source>
        <translation>{strip} nennt den Stromkreis „{circuit}“, der nicht im Plan steht.</translation>
    </message>
    <message>
        <source>It is not stated where {device} ({power}) is plugged in, so its load is on no strip and no circuit.</source>
        <translation>Es ist nicht angegeben, wo {device} ({power}) eingesteckt ist; die Last zählt daher bei keiner Leiste und keinem Stromkreis.</translation>
    </message>
    <message>
        <source>It is not stated whether {device} is timed or always on.</source>
        <translation>Es ist nicht angegeben, ob {device} zeitgeschaltet oder immer an ist.</translation>
    </message>
    <message>
        <source>The power of {device} is not stated. For its kind, {range} was taken.</source>
        <translation>Die Leistung von {device} ist nicht angegeben. Nach der Geräteart wurden {range} angenommen.</translation>
    </message>
    <message>
        <source>{device} should not run on a dimmer: it is {load}.</source>
        <translation>{device} sollte nicht an einem Dimmer laufen: Es ist {load}.</translation>
    </message>
    <message>
        <source>{device} should not run on a thermostat: it is {load}.</source>
        <translation>{device} sollte nicht an einem Thermostat laufen: Es ist {load}.</translation>
    </message>
    <message>
        <source>{device} gives light, and its thermostat switches it on and off. That flickers by day and shortens the lamp&apos;s life.</source>
        <translation>{device} gibt Licht, und der Thermostat schaltet es ein und aus. Das flackert am Tag und verkürzt die Lebensdauer der Lampe.</translation>
    </message>
    <message>
        <source>{device} ({power}) runs without a thermostat. Nothing stops it on a warm day.</source>
        <translation>{device} ({power}) läuft ohne Thermostat. An einem warmen Tag begrenzt nichts die Wärme.</translation>
    </message>
    <message>
        <source>It is not stated where the thermostat of {device} has its probe, so it counts as unregulated.</source>
        <translation>Es ist nicht angegeben, wo der Fühler des Thermostats von {device} sitzt; das Gerät gilt daher als ungeregelt.</translation>
    </message>
    <message>
        <source>It is not stated what temperature the thermostat of {device} is set to, so it counts as unregulated.</source>
        <translation>Es ist nicht angegeben, auf welche Temperatur der Thermostat von {device} eingestellt ist; das Gerät gilt daher als ungeregelt.</translation>
    </message>
    <message>
        <source>{device} is on the timer, so it is cold at night, when its warmth may be needed most.</source>
        <translation>{device} hängt an der Zeitschaltuhr und bleibt nachts kalt, wenn die Wärme vielleicht am nötigsten ist.</translation>
    </message>
    <message>
        <source>Water is near mains voltage: {reason}.</source>
        <translation>Wasser in der Nähe von Netzspannung: {reason}.</translation>
    </message>
    <message>
        <source>{device} ({power}) gets hot and needs a heat-rated holder.</source>
        <translation>{device} ({power}) wird heiß und braucht eine hitzefeste Fassung.</translation>
    </message>
    <message>
        <source>The file is too large: {1:bytes}, and at most {0:bytes} are read.</source>
        <translation>Die Datei ist zu groß: {1:bytes}, und höchstens {0:bytes} werden gelesen.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>Die Datei ist leer.</translation>
    </message>
    <message>
        <source>The text is not valid UTF-8 at line {0}, column {1}. Save it as UTF-8.</source>
        <translation>Der Text ist in Zeile {0}, Spalte {1} kein gültiges UTF-8. Als UTF-8 speichern.</translation>
    </message>
    <message>
        <source>This is not valid JSON at line {0}, column {1}. Look for a missing comma, quote or brace just before.</source>
        <translation>In Zeile {0}, Spalte {1} ist das kein gültiges JSON. Kurz davor nach einem fehlenden Komma, Anführungszeichen oder einer fehlenden Klammer suchen.</translation>
    </message>
    <message>
        <source>The file ends too early, at line {0}, column {1}. A part of it is missing.</source>
        <translation>Die Datei endet zu früh, in Zeile {0}, Spalte {1}. Ein Teil fehlt.</translation>
    </message>
    <message>
        <source>The number at line {0}, column {1} is not an ordinary number, or far too large.</source>
        <translation>Die Zahl in Zeile {0}, Spalte {1} ist keine gewöhnliche Zahl oder viel zu groß.</translation>
    </message>
    <message>
        <source>Lists and objects are nested too deeply; at most {0} levels are read.</source>
        <translation>Listen und Objekte sind zu tief verschachtelt; höchstens {0} Ebenen werden gelesen.</translation>
    </message>
    <message>
        <source>There are too many values; at most {0} are read.</source>
        <translation>Es sind zu viele Werte; höchstens {0} werden gelesen.</translation>
    </message>
    <message>
        <source>“{0}” stands here twice. Keep one of them.</source>
        <translation>„{0}“ steht hier zweimal. Nur einen Eintrag behalten.</translation>
    </message>
    <message>
        <source>“{0}” is not a known key.[ Did you mean “{1}”?] A key of your own must begin with “x_”.</source>
        <translation>„{0}“ ist kein bekannter Schlüssel.[ Ist „{1}“ gemeint?] Ein eigener Schlüssel muss mit „x_“ beginnen.</translation>
    </message>
    <message>
        <source>“{0}” is missing.</source>
        <translation>„{0}“ fehlt.</translation>
    </message>
    <message>
        <source>Here stands {1:type}, and {0:type} is needed.</source>
        <translation>Hier steht {1:type}, nötig ist {0:type}.</translation>
    </message>
    <message>
        <source>{0} is not a whole number.</source>
        <translation>{0} ist keine ganze Zahl.</translation>
    </message>
    <message>
        <source>{0} is too small. It must lie between {1} and {2}.</source>
        <translation>{0} ist zu klein. Der Wert muss zwischen {1} und {2} liegen.</translation>
    </message>
    <message>
        <source>{0} is too small. It must be more than {1} and at most {2}.</source>
        <translation>{0} ist zu klein. Der Wert muss größer als {1} und höchstens {2} sein.</translation>
    </message>
    <message>
        <source>{0} is too large. It must lie between {1} and {2}.</source>
        <translation>{0} ist zu groß. Der Wert muss zwischen {1} und {2} liegen.</translation>
    </message>
    <message>
        <source>{0} is not a plain decimal. Write it in digits with a point, without an exponent and with at most 12 decimals.</source>
        <translation>{0} ist keine einfache Dezimalzahl. Mit Ziffern und Dezimalpunkt schreiben, ohne Exponent und mit höchstens 12 Nachkommastellen.</translation>
    </message>
    <message>
        <source>This text is too short: {0} characters, and at least {1} are needed.</source>
        <translation>Dieser Text ist zu kurz: {0} Zeichen, mindestens {1} sind nötig.</translation>
    </message>
    <message>
        <source>This text is too long: {0} characters, and at most {1} are allowed.</source>
        <translation>Dieser Text ist zu lang: {0} Zeichen, höchstens {1} sind erlaubt.</translation>
    </message>
    <message>
        <source>“{0}” does not have the right form. It must be {1:pattern}.</source>
        <translation>„{0}“ hat nicht die richtige Form. Verlangt ist {1:pattern}.</translation>
    </message>
    <message>
        <source>This text holds a control character, such as a line break. Take it out.</source>
        <translation>Dieser Text enthält ein Steuerzeichen, etwa einen Zeilenumbruch. Entfernen.</translation>
    </message>
    <message>
        <source>“{0}” is not one of the choices.[ Did you mean “{2}”?] The choices are: {1}.</source>
        <translation>„{0}“ steht nicht zur Wahl.[ Ist „{2}“ gemeint?] Zur Wahl stehen: {1}.</translation>
    </message>
    <message>
        <source>“{0}” stands in this list twice. Once is enough.</source>
        <translation>„{0}“ steht zweimal in dieser Liste. Einmal genügt.</translation>
    </message>
    <message>
        <source>Here must stand {0}, and there is {1}.</source>
        <translation>Hier muss {0} stehen, es steht aber {1} da.</translation>
    </message>
    <message>
        <source>The list has too few entries: {0}, and at least {1} are needed.</source>
        <translation>Die Liste hat zu wenige Einträge: {0}, mindestens {1} sind nötig.</translation>
    </message>
    <message>
        <source>The list has too many entries: {0}, and at most {1} are allowed.</source>
        <translation>Die Liste hat zu viele Einträge: {0}, höchstens {1} sind erlaubt.</translation>
    </message>
    <message>
        <source>There are more problems that are not listed: {0}. Mend these first.</source>
        <translation>Es gibt weitere Fehler, die nicht aufgeführt sind: {0}. Erst diese hier beheben.</translation>
    </message>
    <message>
        <source>The file is of version {0}, and this program knows up to version {1}. Use a newer Loamstead.</source>
        <translation>Die Datei hat die Version {0}, dieses Programm kennt die Versionen bis {1}. Eine neuere Ausgabe von Loamstead verwenden.</translation>
    </message>
    <message>
        <source>The id “{0}” stands here a second time[; the first is at {1}]. Each needs its own.</source>
        <translation>Die Kennung „{0}“ kommt hier ein zweites Mal vor[; zuerst steht sie hier: {1}]. Jeder Eintrag braucht eine eigene.</translation>
    </message>
    <message>
        <source>There is no {0} with the id “{1}” in the plan.</source>
        <translation>Im Plan gibt es unter der Kennung „{1}“ nichts dieser Art: {0}.</translation>
    </message>
    <message>
        <source>There are two panels for the {0} wall. The first is {1}: remove one of them, or name another wall.</source>
        <translation>Für dieselbe Wand ({0}) gibt es zwei Wandplatten. Die erste ist {1}: eine davon entfernen oder eine andere Wand nennen.</translation>
    </message>
    <message>
        <source>These strips feed each other in a circle: {0}.</source>
        <translation>Diese Leisten speisen sich gegenseitig im Kreis: {0}.</translation>
    </message>
    <message>
        <source>“{0}” is missing. With “{1}” it must be given.</source>
        <translation>„{0}“ fehlt. Bei „{1}“ ist diese Angabe nötig.</translation>
    </message>
    <message>
        <source>“{0}” means nothing for the control “{1}”. Take it out, or choose another control.</source>
        <translation>„{0}“ hat beim Regler „{1}“ keine Bedeutung. Die Angabe entfernen oder einen anderen Regler wählen.</translation>
    </message>
    <message>
        <source>The distances must rise: {0} comes after {1}.</source>
        <translation>Die Abstände müssen ansteigen: {0} folgt auf {1}.</translation>
    </message>
    <message>
        <source>“{0}” lies wholly outside the box. Coordinates count from the front-left corner of the base.</source>
        <translation>„{0}“ liegt ganz außerhalb des Terrariums. Die Koordinaten zählen ab der vorderen linken Ecke der Bodenplatte.</translation>
    </message>
    <message>
        <source>The bed is {0} m deep, and the box is only {1} m high.</source>
        <translation>Der Bodengrund ist {0} m tief, das Terrarium aber nur {1} m hoch.</translation>
    </message>
    <message>
        <source>The lights go on and off at the same time, {0}.</source>
        <translation>Das Licht geht zur selben Zeit an und aus, {0}.</translation>
    </message>
    <message>
        <source>“{0}” is not a known currency. Write the three letters of ISO 4217, such as USD or EUR.</source>
        <translation>„{0}“ ist keine bekannte Währung. Die drei Buchstaben nach ISO 4217 schreiben, etwa USD oder EUR.</translation>
    </message>
    <message>
        <source>The basking spot is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation>Der Sonnenplatz hat {case} {range}, gemessen {measure}. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>The basking spot is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation>Der Sonnenplatz ist {case} zu heiß: {range}, gemessen {measure}. Zielwert: {band} ({species}); der wahrscheinliche Wert liegt {over_by} darüber.</translation>
    </message>
    <message>
        <source>The basking spot is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation>Der Sonnenplatz ist {case} zu kalt: {range}, gemessen {measure}. Zielwert: {band} ({species}); der wahrscheinliche Wert liegt {short_by} darunter.</translation>
    </message>
    <message>
        <source>The basking spot may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation>Der Sonnenplatz kann {case} zu heiß werden: {range}, gemessen {measure}. Zielwert: {band} ({species}); das obere Ende der Spanne liegt {over_by} darüber.</translation>
    </message>
    <message>
        <source>The basking spot may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation>Der Sonnenplatz kann {case} zu kalt werden: {range}, gemessen {measure}. Zielwert: {band} ({species}); das untere Ende der Spanne liegt {short_by} darunter.</translation>
    </message>
    <message>
        <source>The warm side is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation>Die warme Seite hat {case} {range}, gemessen {measure}. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>The warm side is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation>Die warme Seite ist {case} zu heiß: {range}, gemessen {measure}. Zielwert: {band} ({species}); der wahrscheinliche Wert liegt {over_by} darüber.</translation>
    </message>
    <message>
        <source>The warm side is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation>Die warme Seite ist {case} zu kalt: {range}, gemessen {measure}. Zielwert: {band} ({species}); der wahrscheinliche Wert liegt {short_by} darunter.</translation>
    </message>
    <message>
        <source>The warm side may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation>Die warme Seite kann {case} zu heiß werden: {range}, gemessen {measure}. Zielwert: {band} ({species}); das obere Ende der Spanne liegt {over_by} darüber.</translation>
    </message>
    <message>
        <source>The warm side may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation>Die warme Seite kann {case} zu kalt werden: {range}, gemessen {measure}. Zielwert: {band} ({species}); das untere Ende der Spanne liegt {short_by} darunter.</translation>
    </message>
    <message>
        <source>The cool side is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation>Die kühle Seite hat {case} {range}, gemessen {measure}. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>The cool side is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation>Die kühle Seite ist {case} zu heiß: {range}, gemessen {measure}. Zielwert: {band} ({species}); der wahrscheinliche Wert liegt {over_by} darüber.</translation>
    </message>
    <message>
        <source>The cool side is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation>Die kühle Seite ist {case} zu kalt: {range}, gemessen {measure}. Zielwert: {band} ({species}); der wahrscheinliche Wert liegt {short_by} darunter.</translation>
    </message>
    <message>
        <source>The cool side may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation>Die kühle Seite kann {case} zu heiß werden: {range}, gemessen {measure}. Zielwert: {band} ({species}); das obere Ende der Spanne liegt {over_by} darüber.</translation>
    </message>
    <message>
        <source>The cool side may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation>Die kühle Seite kann {case} zu kalt werden: {range}, gemessen {measure}. Zielwert: {band} ({species}); das untere Ende der Spanne liegt {short_by} darunter.</translation>
    </message>
    <message>
        <source>The box is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation>Das Terrarium hat {case} {range}, gemessen {measure}. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>The box is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation>Das Terrarium ist {case} zu heiß: {range}, gemessen {measure}. Zielwert: {band} ({species}); der wahrscheinliche Wert liegt {over_by} darüber.</translation>
    </message>
    <message>
        <source>The box is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation>Das Terrarium ist {case} zu kalt: {range}, gemessen {measure}. Zielwert: {band} ({species}); der wahrscheinliche Wert liegt {short_by} darunter.</translation>
    </message>
    <message>
        <source>The box may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation>Das Terrarium kann {case} zu heiß werden: {range}, gemessen {measure}. Zielwert: {band} ({species}); das obere Ende der Spanne liegt {over_by} darüber.</translation>
    </message>
    <message>
        <source>The box may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation>Das Terrarium kann {case} zu kalt werden: {range}, gemessen {measure}. Zielwert: {band} ({species}); das untere Ende der Spanne liegt {short_by} darunter.</translation>
    </message>
    <message>
        <source>The temperatures {case} are not known: the balance of heat did not close ({residual} were left over).</source>
        <translation>Die Temperaturen {case} sind nicht bekannt: Die Wärmebilanz ging nicht auf ({residual} blieben übrig).</translation>
    </message>
    <message>
        <source>No target temperature is on file for the {zone} ({species}), so it is not judged.</source>
        <translation>Keine Zieltemperatur hinterlegt ({zone}, {species}), daher kein Urteil.</translation>
    </message>
    <message>
        <source>How {course} runs hour by hour can&apos;t be told: no balance was found for a step.</source>
        <translation>Wie {course} Stunde für Stunde verläuft, lässt sich nicht sagen: Für einen Schritt wurde keine Bilanz gefunden.</translation>
    </message>
    <message>
        <source>The temperatures can&apos;t be computed: {reason}.</source>
        <translation>Die Temperaturen lassen sich nicht berechnen: {reason}.</translation>
    </message>
    <message>
        <source>{device} runs at its limit of {power} {case} and does not reach its set temperature.</source>
        <translation>{device} läuft {case} an der Leistungsgrenze von {power} und erreicht die eingestellte Temperatur nicht.</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>niedrigster Wert</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>höchster Wert</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>caution above</source>
        <translation>Vorsicht ab</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>zu viel</translation>
    </message>
    <message>
        <source>burnt so far</source>
        <translation>bisherige Brenndauer</translation>
    </message>
    <message>
        <source>burnt when read</source>
        <translation>Brenndauer bei der Messung</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>Sicherheitsabstand</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>gap needed</source>
        <translation>nötiger Abstand</translation>
    </message>
    <message>
        <source>reach</source>
        <translation>Reichweite</translation>
    </message>
    <message>
        <source>rated current</source>
        <translation>Nennstrom</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>usable floor</source>
        <translation>nutzbare Bodenfläche</translation>
    </message>
    <message>
        <source>animals</source>
        <translation>Tiere</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>at fast growth</source>
        <translation>bei schnellem Wachstum</translation>
    </message>
    <message>
        <source>at slow growth</source>
        <translation>bei langsamem Wachstum</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>body length</source>
        <translation>Körperlänge</translation>
    </message>
    <message>
        <source>clear width</source>
        <translation>lichte Weite</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>hides</source>
        <translation>Verstecke</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>males</source>
        <translation>Männchen</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Einfüllhöhe</translation>
    </message>
    <message>
        <source>after the lamps go on</source>
        <translation>nach Einschalten der Lampen</translation>
    </message>
    <message>
        <source>misting</source>
        <translation>Sprühen</translation>
    </message>
    <message>
        <source>heat left over</source>
        <translation>Rest der Wärmebilanz</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>coldest pane</source>
        <translation>kälteste Scheibe</translation>
    </message>
    <message>
        <source>dew point</source>
        <translation>Taupunkt</translation>
    </message>
    <message>
        <source>outlets in use</source>
        <translation>belegte Steckdosen</translation>
    </message>
    <message>
        <source>outlets</source>
        <translation>Steckdosen</translation>
    </message>
    <message>
        <source>set temperature</source>
        <translation>Solltemperatur</translation>
    </message>
    <message>
        <source>count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>use in a year</source>
        <translation>Jahresverbrauch</translation>
    </message>
    <message>
        <source>age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>new value</source>
        <translation>neuer Wert</translation>
    </message>
    <message>
        <source>present value</source>
        <translation>jetziger Wert</translation>
    </message>
    <message>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>goods</source>
        <translation>Warenwert</translation>
    </message>
    <message>
        <source>what an animal bears</source>
        <translation>was ein Tier verträgt</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>at the earliest</source>
        <translation>frühestens</translation>
    </message>
    <message>
        <source>read</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>standard deviations off</source>
        <translation>Abweichung in Standardabweichungen</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>room alike within</source>
        <translation>Raum gleich bis auf</translation>
    </message>
    <message>
        <source>chi-square</source>
        <translation>Chi-Quadrat</translation>
    </message>
    <message>
        <source>chance of a worse fit</source>
        <translation>Wahrscheinlichkeit einer schlechteren Anpassung</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>weeks in the cold</source>
        <translation>Wochen in der Kälte</translation>
    </message>
    <message>
        <source>loss that ends it</source>
        <translation>Gewichtsverlust, der sie beendet</translation>
    </message>
    <message>
        <source>UV index at the animal&apos;s back is {range} under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation>Der UV-Index am Rücken des Tieres beträgt {range} unter {lamp}, Abstand {distance}. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>UV is too strong: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation>UV ist zu stark: Index {range} am Rücken des Tieres unter {lamp}, Abstand {distance}. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>UV is too weak: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation>UV ist zu schwach: Index {range} am Rücken des Tieres unter {lamp}, Abstand {distance}. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>UV may be too strong: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation>UV kann zu stark sein: Index {range} am Rücken des Tieres unter {lamp}, Abstand {distance}. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>UV may be too weak: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation>UV kann zu schwach sein: Index {range} am Rücken des Tieres unter {lamp}, Abstand {distance}. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>The UV index at the animal&apos;s back is not known[ under {lamp}][ at {distance}]: {reason}.</source>
        <translation>Der UV-Index am Rücken des Tieres ist nicht bekannt[ unter {lamp}][, Abstand {distance}]: {reason}.</translation>
    </message>
    <message>
        <source>On {standing_on} UV reaches an index of {range} under {lamp}. The most for {species} is {max}.</source>
        <translation>Auf {standing_on} erreicht der UV-Index {range} unter {lamp}. Höchstwert für {species}: {max}.</translation>
    </message>
    <message>
        <source>UV is too strong on {standing_on}: index {range} at the animal&apos;s back under {lamp}. The most for {species} is {max}.</source>
        <translation>UV ist zu stark auf {standing_on}: Index {range} am Rücken des Tieres unter {lamp}. Höchstwert für {species}: {max}.</translation>
    </message>
    <message>
        <source>UV may be too strong on {standing_on}: index {range} at the animal&apos;s back under {lamp}. The most for {species} is {max}.</source>
        <translation>UV kann zu stark sein auf {standing_on}: Index {range} am Rücken des Tieres unter {lamp}. Höchstwert für {species}: {max}.</translation>
    </message>
    <message>
        <source>On {standing_on} an animal&apos;s back comes within {distance} of {lamp}, nearer than its UV readings reach. How strong it is there is not known.</source>
        <translation>Auf {standing_on} kommt der Rücken eines Tieres bis auf {distance} an {lamp} heran, näher, als die UV-Messwerte reichen. Wie stark UV dort ist, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The UV of {lamp} was read after {burnt_when_read} of burning, but it is said to have burnt {burnt} so far. It is taken as just read.</source>
        <translation>Das UV von {lamp} wurde bei einer Brenndauer von {burnt_when_read} gemessen, die bisherige Brenndauer ist aber mit {burnt} angegeben. Der Wert gilt als eben gemessen.</translation>
    </message>
    <message>
        <source>This species needs UV ({species}), and no lamp here gives any.</source>
        <translation>Diese Art braucht UV ({species}), und keine Lampe hier gibt welches ab.</translation>
    </message>
    <message>
        <source>{cover} keeps the UV of {lamp} from the animal.</source>
        <translation>{cover} hält das UV von {lamp} vom Tier ab.</translation>
    </message>
    <message>
        <source>No species here has a UV target on file, and {lamp} gives UV[: index {likely} at the animal&apos;s back].</source>
        <translation>Für keine Art hier ist ein UV-Zielwert hinterlegt, und {lamp} gibt UV ab[: Index {likely} am Rücken des Tieres].</translation>
    </message>
    <message>
        <source>There is hardly any shade from the UV of {lamp}: only {likely:percent} of the floor lies out of it.</source>
        <translation>Vor dem UV von {lamp} gibt es kaum Schatten: Nur {likely:percent} der Bodenfläche liegen außerhalb.</translation>
    </message>
    <message>
        <source>There may be too little shade from the UV of {lamp}: only {likely:percent} of the floor surely lies out of it.</source>
        <translation>Vor dem UV von {lamp} gibt es womöglich zu wenig Schatten: Nur {likely:percent} der Bodenfläche liegen sicher außerhalb.</translation>
    </message>
    <message>
        <source>{lamp} is a compact UV lamp. Its light is strong close by and weak a little further: measure it before you rely on it.</source>
        <translation>{lamp} ist eine UV-Kompaktlampe. Ihr Licht ist ganz nahe stark und etwas weiter weg schwach: Nachmessen, bevor man sich darauf verlässt.</translation>
    </message>
    <message>
        <source>Light a day: {likely}. The target is {band} ({species}).</source>
        <translation>Licht am Tag: {likely}. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>The day is too long: {likely} of light. The target is {band} ({species}).</source>
        <translation>Der Tag ist zu lang: {likely} Licht. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>The day is too short: {likely} of light. The target is {band} ({species}).</source>
        <translation>Der Tag ist zu kurz: {likely} Licht. Zielwert: {band} ({species}).</translation>
    </message>
    <message>
        <source>It is not stated when the lamps go on and off.</source>
        <translation>Es ist nicht angegeben, wann die Lampen an- und ausgehen.</translation>
    </message>
    <message>
        <source>{lamp} shines at night. Animals need dark nights.</source>
        <translation>{lamp} leuchtet nachts. Tiere brauchen dunkle Nächte.</translation>
    </message>
    <message>
        <source>The lamps go on at {on} and off at {off}: that is no day.</source>
        <translation>Die Lampen gehen um {on} an und um {off} aus: Das ist kein Tag.</translation>
    </message>
    <message>
        <source>The hours of light should follow the sky, and can&apos;t: {reason}. They are counted as the same on every day.</source>
        <translation>Die Lichtstunden sollten dem Himmel folgen und können es nicht: {reason}. Sie werden an jedem Tag gleich angesetzt.</translation>
    </message>
    <message>
        <source>Humidity near the ground is {range:percent} {case}. The target is {band:percent} ({species}).[ Misting counted in: {misting}.]</source>
        <translation>Die Luftfeuchte in Bodennähe beträgt {case} {range:percent}. Zielwert: {band:percent} ({species}).[ Sprühen mitgerechnet: {misting}.]</translation>
    </message>
    <message>
        <source>It is too damp {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the likely value is {over_by:percent} over it.</source>
        <translation>Es ist {case} zu feucht: {range:percent} in Bodennähe. Zielwert: {band:percent} ({species}); der wahrscheinliche Wert liegt {over_by:percent} darüber.</translation>
    </message>
    <message>
        <source>It is too dry {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the likely value is {short_by:percent} under it.[ Misting counted in: {misting}.]</source>
        <translation>Es ist {case} zu trocken: {range:percent} in Bodennähe. Zielwert: {band:percent} ({species}); der wahrscheinliche Wert liegt {short_by:percent} darunter.[ Sprühen mitgerechnet: {misting}.]</translation>
    </message>
    <message>
        <source>It may get too damp {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the upper end is {over_by:percent} over it.</source>
        <translation>Es kann {case} zu feucht werden: {range:percent} in Bodennähe. Zielwert: {band:percent} ({species}); das obere Ende der Spanne liegt {over_by:percent} darüber.</translation>
    </message>
    <message>
        <source>It may get too dry {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the lower end is {short_by:percent} under it.[ Misting counted in: {misting}.]</source>
        <translation>Es kann {case} zu trocken werden: {range:percent} in Bodennähe. Zielwert: {band:percent} ({species}); das untere Ende der Spanne liegt {short_by:percent} darunter.[ Sprühen mitgerechnet: {misting}.]</translation>
    </message>
    <message>
        <source>The humidity {case} is not known.</source>
        <translation>Die Luftfeuchte {case} ist nicht bekannt.</translation>
    </message>
    <message>
        <source>No target humidity is on file ({species}), so it is not judged.</source>
        <translation>Für die Luftfeuchte ist kein Zielwert hinterlegt ({species}), daher kein Urteil.</translation>
    </message>
    <message>
        <source>Water condenses on the coldest pane {case}: the pane is at {pane}[, and the air gives off water below {dew_point}].</source>
        <translation>An der kältesten Scheibe kondensiert {case} Wasser: Die Scheibe hat {pane}[, der Taupunkt der Luft liegt bei {dew_point}].</translation>
    </message>
    <message>
        <source>There is no dry place to rest {season}, by day or by night: humidity on the driest ground is about {likely:percent}, and {max:percent} is the most that suits ({species}). Mould grows in such air, and shell, skin and lungs suffer.</source>
        <translation>Es gibt {season} weder am Tag noch nachts einen trockenen Ruheplatz: Die Luftfeuchte am trockensten Boden beträgt etwa {likely:percent}, und höchstens {max:percent} sind geeignet ({species}). In solcher Luft wächst Schimmel, und Panzer, Haut und Lunge leiden.</translation>
    </message>
    <message>
        <source>How much is misted is not stated, so the humidity is only known within wide limits.</source>
        <translation>Wie viel gesprüht wird, ist nicht angegeben; die Luftfeuchte ist daher nur in weiten Grenzen bekannt.</translation>
    </message>
    <message>
        <source>More is misted than dries off: the bed gets wetter by {by}, until it is sodden.</source>
        <translation>Es wird mehr gesprüht, als abtrocknet: Der Bodengrund wird um {by} nasser, bis er durchweicht ist.</translation>
    </message>
    <message>
        <source>{fitting} is too small: its {side_name} is {side}, and {min} is what the largest animal needs to drink and bathe in it ({species}).</source>
        <translation>{fitting} ist zu klein ({side_name}: {side}); das größte Tier braucht {min}, um daraus zu trinken und darin zu baden ({species}).</translation>
    </message>
    <message>
        <source>{fitting} may be too small: its {side_name} is {side}, and a large animal needs {min} to drink and bathe in it ({species}).</source>
        <translation>{fitting} ist womöglich zu klein ({side_name}: {side}); ein großes Tier braucht {min}, um daraus zu trinken und darin zu baden ({species}).</translation>
    </message>
    <message>
        <source>The water in {fitting} is too deep: {range}. At most {max} is asked for ({species}).</source>
        <translation>Das Wasser in {fitting} ist zu tief: {range}. Verlangt sind höchstens {max} ({species}).</translation>
    </message>
    <message>
        <source>The water in {fitting} is too shallow to bathe in: {range}. At least {min} is asked for ({species}).</source>
        <translation>Das Wasser in {fitting} ist zum Baden zu flach: {range}. Verlangt sind mindestens {min} ({species}).</translation>
    </message>
    <message>
        <source>There is no water bowl, and this species needs one ({species}).</source>
        <translation>Es gibt keine Wasserschale, und diese Art braucht eine ({species}).</translation>
    </message>
    <message>
        <source>The tap water is not treated, and chlorine harms the skin of an amphibian ({species}).</source>
        <translation>Das Leitungswasser ist nicht aufbereitet, und Chlor schadet der Haut von Amphibien ({species}).</translation>
    </message>
    <message>
        <source>How much water a cartridge is good for is not stated, so how often it is due is not known. {likely} pass it in a day.</source>
        <translation>Für wie viel Wasser eine Kartusche reicht, ist nicht angegeben; wie oft sie fällig ist, ist daher nicht bekannt. Am Tag fließen {likely} hindurch.</translation>
    </message>
    <message>
        <source>The plan is in {plan_currency} and the price list in {list_currency}. Nothing is costed, since no rate is assumed.</source>
        <translation>Der Plan rechnet in {plan_currency}, die Preisliste in {list_currency}. Es werden keine Kosten berechnet, da kein Wechselkurs angenommen wird.</translation>
    </message>
    <message>
        <source>Things without a price in the list: {count}. The totals leave them out: {needs}.</source>
        <translation>Ohne Preis in der Liste: {count}. In den Summen nicht enthalten: {needs}.</translation>
    </message>
    <message>
        <source>The price of electricity is not stated, so the running costs leave it out. Use: {kwh_per_year} a year.</source>
        <translation>Der Strompreis ist nicht angegeben; die laufenden Kosten lassen ihn daher aus. Verbrauch: {kwh_per_year} im Jahr.</translation>
    </message>
    <message>
        <source>The prices are invented examples of {date}. Put your own shop&apos;s prices in their place before you decide.</source>
        <translation>Die Preise sind erfundene Beispiele vom {date}. Vor einer Entscheidung die Preise der eigenen Händler einsetzen.</translation>
    </message>
    <message>
        <source>The price list is of {date}, {age_months} old.</source>
        <translation>Die Preisliste ist vom {date}, {age_months} alt.</translation>
    </message>
    <message>
        <source>You own “{item}” ({quantity}), which the price list does not have. It is not set off against anything.</source>
        <translation>Vorhanden ist „{item}“ ({quantity}), doch die Preisliste führt es nicht. Es wird mit nichts verrechnet.</translation>
    </message>
    <message>
        <source>What is bought at “{channel}” comes to {goods}, less than it takes orders for.</source>
        <translation>Der Einkauf bei „{channel}“ kommt auf {goods}, das liegt unter dem Mindestbestellwert.</translation>
    </message>
    <message>
        <source>You want to buy at “{channel}”, which the price list does not know. Everything is bought wherever it is cheapest.</source>
        <translation>Gekauft werden soll bei „{channel}“, doch die Preisliste kennt diesen Händler nicht. Alles wird dort gekauft, wo es am billigsten ist.</translation>
    </message>
    <message>
        <source>A change of the needs meets nothing: the plan needs no {need}, or the price list has no such item in its unit ({item}).</source>
        <translation>Eine Änderung des Bedarfs greift nicht: Der Plan braucht das nicht ({need}), oder die Preisliste hat keinen solchen Artikel in dieser Einheit ({item}).</translation>
    </message>
    <message>
        <source>Left out of the order at your wish: {need}.</source>
        <translation>Auf Wunsch aus der Bestellung weggelassen: {need}.</translation>
    </message>
    <message>
        <source>Left out of the order at your wish, though safety hangs on it: {need}.</source>
        <translation>Auf Wunsch aus der Bestellung weggelassen, obwohl die Sicherheit davon abhängt: {need}.</translation>
    </message>
    <message>
        <source>A sum is too large to be computed exactly.</source>
        <translation>Eine Summe ist zu groß, um sie genau zu berechnen.</translation>
    </message>
    <message>
        <source>It can&apos;t be measured by itself; readings in the running box would narrow it.</source>
        <translation>Der Wert lässt sich nicht für sich messen; Messwerte aus dem laufenden Terrarium engen ihn ein.</translation>
    </message>
    <message>
        <source>It lies in the material; a data sheet that states it would narrow it.</source>
        <translation>Der Wert liegt am Material; ein Datenblatt, das ihn nennt, engt ihn ein.</translation>
    </message>
    <message>
        <source>A thermometer that keeps highest and lowest, left in the room for a week of that season, would narrow it.</source>
        <translation>Ein Minimum-Maximum-Thermometer, in dieser Jahreszeit eine Woche im Raum gelassen, engt den Wert ein.</translation>
    </message>
    <message>
        <source>A hygrometer left in the room for a week of that season would narrow it.</source>
        <translation>Ein Hygrometer, in dieser Jahreszeit eine Woche im Raum gelassen, engt den Wert ein.</translation>
    </message>
    <message>
        <source>Measuring it would narrow it: the gap over the gap and its wire, squared.</source>
        <translation>Nachmessen engt den Wert ein: lichte Maschenweite, geteilt durch Maschenweite plus Drahtdicke, das Ganze im Quadrat.</translation>
    </message>
    <message>
        <source>Keeping the bed evenly damp under the lamp, or dry, would narrow it.</source>
        <translation>Ein gleichmäßig feucht oder durchgehend trocken gehaltener Bodengrund unter der Lampe engt den Wert ein.</translation>
    </message>
    <message>
        <source>Stating how much is misted would narrow it.</source>
        <translation>Die Angabe, wie viel gesprüht wird, engt den Wert ein.</translation>
    </message>
    <message>
        <source>No entry of the plan narrows it; thermometers in the running box tell what is so.</source>
        <translation>Keine Angabe im Plan engt den Wert ein; Thermometer im laufenden Terrarium zeigen, wie es ist.</translation>
    </message>
    <message>
        <source>Sealing its gaps would narrow it.</source>
        <translation>Die Spalte abzudichten engt den Wert ein.</translation>
    </message>
    <message>
        <source>Weighing a litre of it as it is kept, and again when dried, would narrow it.</source>
        <translation>Ein Liter davon, im Gebrauchszustand und noch einmal getrocknet gewogen, engt den Wert ein.</translation>
    </message>
    <message>
        <source>Weighing a litre of it from under the lamp, and again when dried, would narrow it.</source>
        <translation>Ein Liter davon, unter der Lampe entnommen, gleich und noch einmal getrocknet gewogen, engt den Wert ein.</translation>
    </message>
    <message>
        <source>Measuring it with a power meter at the outlet would narrow it.</source>
        <translation>Eine Messung mit dem Strommessgerät an der Steckdose engt den Wert ein.</translation>
    </message>
    <message>
        <source>The maker&apos;s beam angle, entered with the lamp, would narrow it.</source>
        <translation>Der Abstrahlwinkel laut Hersteller, bei der Lampe eingetragen, engt den Wert ein.</translation>
    </message>
    <message>
        <source>adoption fee</source>
        <translation>Schutzgebühr</translation>
    </message>
    <message>
        <source>permit</source>
        <translation>Genehmigung</translation>
    </message>
    <message>
        <source>calcium powder</source>
        <translation>Calciumpulver</translation>
    </message>
    <message>
        <source>dimmer</source>
        <translation>Dimmer</translation>
    </message>
    <message>
        <source>dimming thermostat</source>
        <translation>Dimmthermostat</translation>
    </message>
    <message>
        <source>on/off thermostat</source>
        <translation>Ein-Aus-Thermostat</translation>
    </message>
    <message>
        <source>timer</source>
        <translation>Zeitschaltuhr</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>Lüfter</translation>
    </message>
    <message>
        <source>residual-current adapter</source>
        <translation>FI-Zwischenstecker</translation>
    </message>
    <message>
        <source>outlet strip</source>
        <translation>Steckdosenleiste</translation>
    </message>
    <message>
        <source>ballast</source>
        <translation>Vorschaltgerät</translation>
    </message>
    <message>
        <source>lamp guard</source>
        <translation>Lampenschutzkorb</translation>
    </message>
    <message>
        <source>heat-rated lamp holder</source>
        <translation>hitzefeste Lampenfassung</translation>
    </message>
    <message>
        <source>UV fixture</source>
        <translation>UV-Leuchte</translation>
    </message>
    <message>
        <source>fruit fly cultures</source>
        <translation>Fruchtfliegenansätze</translation>
    </message>
    <message>
        <source>greens</source>
        <translation>Grünfutter</translation>
    </message>
    <message>
        <source>insects</source>
        <translation>Futterinsekten</translation>
    </message>
    <message>
        <source>frozen mice</source>
        <translation>Frostmäuse</translation>
    </message>
    <message>
        <source>powdered food</source>
        <translation>Pulverfutter</translation>
    </message>
    <message>
        <source>frozen rats</source>
        <translation>Frostratten</translation>
    </message>
    <message>
        <source>reserve for illness</source>
        <translation>Rücklage für Krankheit</translation>
    </message>
    <message>
        <source>visit to the vet</source>
        <translation>Tierarztbesuch</translation>
    </message>
    <message>
        <source>disinfectant</source>
        <translation>Desinfektionsmittel</translation>
    </message>
    <message>
        <source>gloves</source>
        <translation>Handschuhe</translation>
    </message>
    <message>
        <source>quarantine box</source>
        <translation>Quarantänebecken</translation>
    </message>
    <message>
        <source>hygrometer</source>
        <translation>Hygrometer</translation>
    </message>
    <message>
        <source>infrared thermometer</source>
        <translation>Infrarotthermometer</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>UV index meter</source>
        <translation>UV-Index-Messgerät</translation>
    </message>
    <message>
        <source>glass box</source>
        <translation>Glasterrarium</translation>
    </message>
    <message>
        <source>plastic box</source>
        <translation>Kunststoffterrarium</translation>
    </message>
    <message>
        <source>wooden box</source>
        <translation>Holzterrarium</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>Gestell</translation>
    </message>
    <message>
        <source>water conditioner</source>
        <translation>Wasseraufbereiter</translation>
    </message>
    <message>
        <source>filter cartridge</source>
        <translation>Filterkartusche</translation>
    </message>
    <message>
        <source>mister</source>
        <translation>Beregnungsanlage</translation>
    </message>
    <message>
        <source>the box itself</source>
        <translation>das Terrarium selbst</translation>
    </message>
    <message>
        <source>carries the box</source>
        <translation>trägt das Terrarium</translation>
    </message>
    <message>
        <source>equipment of the plan</source>
        <translation>Technik im Plan</translation>
    </message>
    <message>
        <source>a line of your own</source>
        <translation>ein eigener Posten</translation>
    </message>
    <message>
        <source>a spare: warmth or UV hangs on this lamp</source>
        <translation>Ersatz: Wärme oder UV hängt an dieser Lampe</translation>
    </message>
    <message>
        <source>holds a hot lamp safely</source>
        <translation>hält eine heiße Lampe sicher</translation>
    </message>
    <message>
        <source>keeps animals off a hot lamp</source>
        <translation>hält Tiere von einer heißen Lampe fern</translation>
    </message>
    <message>
        <source>regulates a heater or lamp</source>
        <translation>regelt einen Heizer oder eine Lampe</translation>
    </message>
    <message>
        <source>switches the lamps on and off</source>
        <translation>schaltet die Lampen ein und aus</translation>
    </message>
    <message>
        <source>gives outlets enough</source>
        <translation>sorgt für genug Steckdosen</translation>
    </message>
    <message>
        <source>cuts the power near water before a shock harms</source>
        <translation>schaltet in Wassernähe den Strom ab, bevor ein Schlag schadet</translation>
    </message>
    <message>
        <source>to read the warm and the cool end</source>
        <translation>zum Ablesen am warmen und am kühlen Ende</translation>
    </message>
    <message>
        <source>to read the temperature of surfaces</source>
        <translation>zum Messen der Oberflächentemperatur</translation>
    </message>
    <message>
        <source>to read the humidity</source>
        <translation>zum Messen der Luftfeuchte</translation>
    </message>
    <message>
        <source>the bed, filled in before it settles</source>
        <translation>der Bodengrund, eingefüllt, bevor er sich setzt</translation>
    </message>
    <message>
        <source>covers a part of the top</source>
        <translation>deckt einen Teil der Oberseite ab</translation>
    </message>
    <message>
        <source>furniture of the plan</source>
        <translation>Einrichtung im Plan</translation>
    </message>
    <message>
        <source>a year of filtered water, by the cartridge&apos;s litres</source>
        <translation>ein Jahr gefiltertes Wasser, nach den Litern der Kartusche</translation>
    </message>
    <message>
        <source>a year of treated tap water</source>
        <translation>ein Jahr aufbereitetes Leitungswasser</translation>
    </message>
    <message>
        <source>to weigh the animals</source>
        <translation>zum Wiegen der Tiere</translation>
    </message>
    <message>
        <source>to keep a new animal apart at first</source>
        <translation>damit ein neues Tier anfangs getrennt bleibt</translation>
    </message>
    <message>
        <source>to clean with</source>
        <translation>zum Saubermachen</translation>
    </message>
    <message>
        <source>for hygiene</source>
        <translation>für die Hygiene</translation>
    </message>
    <message>
        <source>the first month</source>
        <translation>der erste Monat</translation>
    </message>
    <message>
        <source>a supplement to the food</source>
        <translation>eine Ergänzung zum Futter</translation>
    </message>
    <message>
        <source>the first year&apos;s visit</source>
        <translation>der Besuch im ersten Jahr</translation>
    </message>
    <message>
        <source>The {reading} doesn&apos;t fit: it says {value}, measured {measure}, where {range} is expected from all the rest. It is left out. Check the thermometer and its place, then what the plan says of lamps, covers and mesh.</source>
        <translation>{reading} passt nicht: abgelesen {value}, gemessen {measure}; nach allem Übrigen zu erwarten: {range}. Der Wert wird ausgelassen. Das Thermometer und seinen Platz prüfen, dann die Angaben im Plan zu Lampen, Abdeckungen und Gitter.</translation>
    </message>
    <message>
        <source>The {reading} is too warm to fit: it says {value}, measured {measure}, where {range} is expected from all the rest. It is left out, and if it is right, the box is warmer than told here. Check the thermometer and its place, then what the plan says of lamps, covers and mesh.</source>
        <translation>{reading} ist zu warm, um zu passen: abgelesen {value}, gemessen {measure}; nach allem Übrigen zu erwarten: {range}. Der Wert wird ausgelassen; stimmt er doch, ist das Terrarium wärmer als hier angegeben. Das Thermometer und seinen Platz prüfen, dann die Angaben im Plan zu Lampen, Abdeckungen und Gitter.</translation>
    </message>
    <message>
        <source>The {reading} is too cold to fit: it says {value}, measured {measure}, where {range} is expected from all the rest. It is left out, and if it is right, the box is colder than told here. Check the thermometer and its place, then what the plan says of lamps, covers and mesh.</source>
        <translation>{reading} ist zu kalt, um zu passen: abgelesen {value}, gemessen {measure}; nach allem Übrigen zu erwarten: {range}. Der Wert wird ausgelassen; stimmt er doch, ist das Terrarium kälter als hier angegeben. Das Thermometer und seinen Platz prüfen, dann die Angaben im Plan zu Lampen, Abdeckungen und Gitter.</translation>
    </message>
    <message>
        <source>The {reading} lies outside the floor of the box, so it is not used.</source>
        <translation>{reading} liegt außerhalb der Grundfläche des Terrariums und wird deshalb nicht verwendet.</translation>
    </message>
    <message>
        <source>The {reading}: whether the lamps were on is not stated, so it is not used.</source>
        <translation>{reading}: Ob die Lampen an waren, ist nicht angegeben. Der Wert wird deshalb nicht verwendet.</translation>
    </message>
    <message>
        <source>The {reading} was taken with a dimmer on whose level is not stated, so it is not used. State the level it was set to.</source>
        <translation>{reading}: Dabei lief ein Dimmer, dessen Einstellung nicht angegeben ist. Der Wert wird deshalb nicht verwendet. Die damalige Einstellung eintragen.</translation>
    </message>
    <message>
        <source>The {reading} was taken with the room at {room}. No case here has its lamps as then and a room within {alike_within} of that, so it narrows none.</source>
        <translation>{reading}: Bei der Messung hatte der Raum {room}. Kein Fall hier hat dieselben Lampen an und einen Raum, der höchstens {alike_within} davon abweicht; der Wert engt also keinen ein.</translation>
    </message>
    <message>
        <source>Readings used: {count}. With {needed} or more, one at the basking spot, one on the warm and one on the cool side, they tell more.</source>
        <translation>Verwendete Messwerte: {count}. Ab {needed} Werten sagen sie mehr aus: einer am Sonnenplatz, einer auf der warmen und einer auf der kühlen Seite.</translation>
    </message>
    <message>
        <source>The readings don&apos;t fit the box of this plan, all together ({chance:percent} chance of a worse fit if all were as assumed). None is used. Check whether the box still is as it was when they were taken.</source>
        <translation>Die Messwerte passen zusammengenommen nicht zum Terrarium dieses Plans (träfen alle Annahmen zu, wäre eine noch schlechtere Übereinstimmung zu {chance:percent} wahrscheinlich). Keiner wird verwendet. Prüfen, ob das Terrarium noch so ist wie bei der Messung.</translation>
    </message>
    <message>
        <source>The readings could not be compared with the box, so none is used.</source>
        <translation>Die Messwerte ließen sich nicht mit dem Terrarium vergleichen, deshalb wird keiner verwendet.</translation>
    </message>
    <message>
        <source>Make the box {by} longer, which makes {to}.</source>
        <translation>Das Terrarium um {by} länger machen, das ergibt {to}.</translation>
    </message>
    <message>
        <source>Make the box {by} wider, which makes {to}.</source>
        <translation>Das Terrarium um {by} breiter machen, das ergibt {to}.</translation>
    </message>
    <message>
        <source>Make the box {by} higher, which makes {to}.</source>
        <translation>Das Terrarium um {by} höher machen, das ergibt {to}.</translation>
    </message>
    <message>
        <source>Take a box with {by} more floor, which makes {to}.</source>
        <translation>Ein Terrarium mit {by} mehr Grundfläche nehmen, das ergibt {to}.</translation>
    </message>
    <message>
        <source>Take out fittings that cover {by} of floor, or let the animals walk over them.</source>
        <translation>Einrichtung herausnehmen, die {by} Grundfläche verdeckt, oder sie so aufstellen, dass die Tiere darüberlaufen können.</translation>
    </message>
    <message>
        <source>Add hides: {count}.</source>
        <translation>Verstecke ergänzen: {count}.</translation>
    </message>
    <message>
        <source>Move a hide to the {side} side, or add one there.</source>
        <translation>Ein Versteck auf diese Seite umstellen oder dort eines dazustellen: {side}.</translation>
    </message>
    <message>
        <source>Add a humid hide: a hide with damp moss in it.</source>
        <translation>Eine Wetbox dazustellen: ein Versteck mit feuchtem Moos.</translation>
    </message>
    <message>
        <source>Keep fewer animals in this box: {to}.</source>
        <translation>Weniger Tiere in diesem Terrarium halten: {to}.</translation>
    </message>
    <message>
        <source>Give them boxes of their own: {count} in all.</source>
        <translation>Jedem Tier ein eigenes Terrarium geben, insgesamt: {count}.</translation>
    </message>
    <message>
        <source>Move {fitting} inwards by {by}.</source>
        <translation>{fitting} um {by} nach innen rücken.</translation>
    </message>
    <message>
        <source>Make the bed {by} deeper, which makes {to}.</source>
        <translation>Den Bodengrund um {by} erhöhen, das ergibt {to}.</translation>
    </message>
    <message>
        <source>Make the bed no deeper than {to}.</source>
        <translation>Den Bodengrund höchstens {to} hoch einfüllen.</translation>
    </message>
    <message>
        <source>Use {material} in its place.</source>
        <translation>Stattdessen {material} verwenden.</translation>
    </message>
    <message>
        <source>Use a stand rated for {to} or more.</source>
        <translation>Ein Gestell nehmen, das für mindestens {to} ausgelegt ist.</translation>
    </message>
    <message>
        <source>Use {to} in place of {from} for {device}.</source>
        <translation>{device}: {to} statt {from} nehmen.</translation>
    </message>
    <message>
        <source>Add about {power} of heat over the warm side.</source>
        <translation>Über der warmen Seite etwa {power} Heizleistung ergänzen.</translation>
    </message>
    <message>
        <source>Dim {device} to {to:percent}[ {case}].</source>
        <translation>{device}[ {case}] auf {to:percent} dimmen.</translation>
    </message>
    <message>
        <source>Set the thermostat of {device} to {to}[ {case}].</source>
        <translation>Den Thermostat von {device}[ {case}] auf {to} stellen.</translation>
    </message>
    <message>
        <source>Run {device} through a thermostat, with its probe where the heat arrives.</source>
        <translation>{device} über einen Thermostat betreiben, mit dem Fühler dort, wo die Wärme ankommt.</translation>
    </message>
    <message>
        <source>Fix the probe where {device} heats, and enter its place in the plan.</source>
        <translation>Den Fühler dort befestigen, wo {device} heizt, und seinen Platz im Plan eintragen.</translation>
    </message>
    <message>
        <source>Move {device} to the outside of a wall, above the bed, and keep its thermostat.</source>
        <translation>{device} außen an einer Wand anbringen, oberhalb des Bodengrunds, und den Thermostat beibehalten.</translation>
    </message>
    <message>
        <source>Raise {device} by {by}, to {to} above the base.</source>
        <translation>{device} um {by} höher hängen, auf {to} über dem Boden des Terrariums.</translation>
    </message>
    <message>
        <source>Lower {device} by {by}, to {to} above the base.</source>
        <translation>{device} um {by} tiefer hängen, auf {to} über dem Boden des Terrariums.</translation>
    </message>
    <message>
        <source>Put a guard around {device}.</source>
        <translation>{device} mit einem Schutzkorb umgeben.</translation>
    </message>
    <message>
        <source>Move {device} {by} further away.</source>
        <translation>{device} um {by} weiter weg rücken.</translation>
    </message>
    <message>
        <source>Hang {device} inside, below the pane.</source>
        <translation>{device} innen aufhängen, unterhalb der Scheibe.</translation>
    </message>
    <message>
        <source>Make {fitting} lower by {by}.</source>
        <translation>{fitting} um {by} niedriger machen.</translation>
    </message>
    <message>
        <source>Move {fitting} away from beneath the lamp.</source>
        <translation>{fitting} unter der Lampe wegrücken.</translation>
    </message>
    <message>
        <source>Keep an insulated carrier and warmth that needs no mains ready, such as wrapped bottles of warm water beside the animals, and have them in it within {within}.</source>
        <translation>Eine isolierte Transportbox und Wärme ohne Netzstrom bereithalten, etwa umwickelte Flaschen mit warmem Wasser neben den Tieren, und die Tiere innerhalb von {within} dort hineinsetzen.</translation>
    </message>
    <message>
        <source>Switch the heat off at the plug, and keep a carrier and a cool room ready to have the animals there within {within}.</source>
        <translation>Die Heizung am Stecker abschalten. Eine Transportbox und einen kühlen Raum bereithalten, um die Tiere innerhalb von {within} dorthin zu bringen.</translation>
    </message>
    <message>
        <source>Keep the room {by} cooler {case}, at {to} or less.</source>
        <translation>Den Raum {case} um {by} kühler halten, bei höchstens {to}.</translation>
    </message>
    <message>
        <source>Keep the room {by} warmer {case}, at {to} or more.</source>
        <translation>Den Raum {case} um {by} wärmer halten, bei mindestens {to}.</translation>
    </message>
    <message>
        <source>Move the enclosure or shade the window, so that no sun reaches the glass at any season.</source>
        <translation>Das Terrarium umstellen oder das Fenster beschatten, damit zu keiner Jahreszeit Sonne auf das Glas fällt.</translation>
    </message>
    <message>
        <source>Add about {power} of heat without light for the night, on a thermostat.</source>
        <translation>Für die Nacht etwa {power} Wärme ohne Licht ergänzen, an einem Thermostat.</translation>
    </message>
    <message>
        <source>Measure it in the finished enclosure: what is predicted ranges as widely as the target, so a reading tells more than a change.</source>
        <translation>Im fertigen Terrarium messen: Die Vorhersage streut so weit wie der Zielbereich, ein Messwert sagt daher mehr als eine Änderung.</translation>
    </message>
    <message>
        <source>No single change that was tried does it without harm elsewhere. Change more than one thing, such as lamp, box and room, and look again.</source>
        <translation>Keine einzelne der geprüften Änderungen hilft, ohne anderswo zu schaden. Mehreres zugleich ändern, etwa Lampe, Terrarium und Raum, und dann neu ansehen.</translation>
    </message>
    <message>
        <source>Take {cover} away.</source>
        <translation>{cover} wegnehmen.</translation>
    </message>
    <message>
        <source>Move {cover} at least {by} further from the lamp.</source>
        <translation>{cover} mindestens {by} weiter von der Lampe wegrücken.</translation>
    </message>
    <message>
        <source>Hang {device} further from the wall, or take a weaker one, until the wall stays at {to} or less.</source>
        <translation>{device} weiter von der Wand weg hängen oder etwas Schwächeres nehmen, bis die Wand höchstens {to} warm wird.</translation>
    </message>
    <message>
        <source>Cover {area} more of the top, so that {fraction:percent} of it is covered, clear of the lamps.</source>
        <translation>{area} mehr von der Oberseite abdecken, sodass {fraction:percent} davon abgedeckt sind; von den Lampen Abstand halten.</translation>
    </message>
    <message>
        <source>Mist {by} more {case}, which makes {to}.</source>
        <translation>Mehr sprühen: {case} {by} mehr, das ergibt {to}.</translation>
    </message>
    <message>
        <source>Mist {by} less {case}, which makes {to}.</source>
        <translation>Weniger sprühen: {case} {by} weniger, das ergibt {to}.</translation>
    </message>
    <message>
        <source>Mist less, or uncover some of the top so that more dries off. Feel the bed at its base: water must not stand there.</source>
        <translation>Weniger sprühen oder einen Teil der Oberseite öffnen, damit mehr abtrocknet. Den Bodengrund ganz unten befühlen: Dort darf kein Wasser stehen.</translation>
    </message>
    <message>
        <source>While its probe is still cool a thermostat drives the lamp at full power: take a weaker lamp, or put the probe where the lamp warms it first.</source>
        <translation>Solange der Fühler noch kühl ist, betreibt der Thermostat die Lampe mit voller Leistung: eine schwächere Lampe nehmen oder den Fühler dort anbringen, wo die Lampe ihn zuerst wärmt.</translation>
    </message>
    <message>
        <source>Let the surface of the bed dry out, and damp only the hide that should be humid.</source>
        <translation>Die Oberfläche des Bodengrunds abtrocknen lassen und nur das Versteck befeuchten, das feucht sein soll.</translation>
    </message>
    <message>
        <source>Leave one corner of the bed dry, away from the water and the mist.</source>
        <translation>Eine Ecke des Bodengrunds trocken lassen, abseits von Wasserschale und Sprühnebel.</translation>
    </message>
    <message>
        <source>Take a bowl in place of {fitting} whose side is {by} longer, which makes {to}.</source>
        <translation>Statt {fitting} eine Wasserschale nehmen, deren Seite um {by} länger ist, das ergibt {to}.</translation>
    </message>
    <message>
        <source>Fill {fitting} no deeper than {to}, and put in a stone to climb out on.</source>
        <translation>{fitting} höchstens {to} tief füllen und einen Stein zum Herausklettern hineinlegen.</translation>
    </message>
    <message>
        <source>Fill {fitting} at least {to} deep.</source>
        <translation>{fitting} mindestens {to} tief füllen.</translation>
    </message>
    <message>
        <source>Add a water bowl.</source>
        <translation>Eine Wasserschale dazustellen.</translation>
    </message>
    <message>
        <source>Treat the water with conditioner, one that also binds chloramine where your supplier uses it.</source>
        <translation>Das Wasser mit Wasseraufbereiter behandeln; wo der Versorger Chloramin einsetzt, mit einem, der auch dieses bindet.</translation>
    </message>
    <message>
        <source>Keep {animal} warm and fed through the winter, and take the rest out of the plan. Ask a reptile vet if you are unsure.</source>
        <translation>{animal} den Winter über warm halten und weiterfüttern, die Winterruhe aus dem Plan nehmen. Im Zweifel einen reptilienkundigen Tierarzt fragen.</translation>
    </message>
    <message>
        <source>Have a reptile vet see {animal}, with a faecal sample, before its food is stopped.</source>
        <translation>{animal} samt einer Kotprobe vom reptilienkundigen Tierarzt untersuchen lassen, bevor das Füttern eingestellt wird.</translation>
    </message>
    <message>
        <source>Keep the rest of {animal} to {to} in the cold.</source>
        <translation>Winterruhe von {animal}: die Zeit in der Kälte auf {to} begrenzen.</translation>
    </message>
    <message>
        <source>Add a UV lamp made for Ferguson zone {zone}, with its maker&apos;s distance table.</source>
        <translation>Eine UV-Lampe für Ferguson-Zone {zone} ergänzen, zu der es eine Abstandstabelle des Herstellers gibt.</translation>
    </message>
    <message>
        <source>Enter the maker&apos;s distance table of {device}, or measure the UV index at {distance} and enter it.</source>
        <translation>Die Abstandstabelle des Herstellers für {device} eintragen, oder den UV-Index bei {distance} messen und eintragen.</translation>
    </message>
    <message>
        <source>No height of {device} does it. Use a lamp that gives {times} times its UV at the same distance.</source>
        <translation>Mit {device} geht es in keiner Höhe. Eine Lampe nehmen, die im selben Abstand das {times}-Fache an UV liefert.</translation>
    </message>
    <message>
        <source>Replace {device}: its UV has faded, and a new one reaches the target.</source>
        <translation>{device} ersetzen: Das UV hat nachgelassen, mit einer neuen Lampe wird der Zielwert erreicht.</translation>
    </message>
    <message>
        <source>Set the timer for {to} of light a day, a change of {by}.</source>
        <translation>Die Zeitschaltuhr auf {to} Licht am Tag stellen (Änderung: {by}).</translation>
    </message>
    <message>
        <source>Put {device} on a timer.</source>
        <translation>{device} an eine Zeitschaltuhr anschließen.</translation>
    </message>
    <message>
        <source>Take {by} off it.</source>
        <translation>Die Last dort um {by} verringern.</translation>
    </message>
    <message>
        <source>Move {by} to another circuit.</source>
        <translation>Last an einen anderen Stromkreis umstecken: {by}.</translation>
    </message>
    <message>
        <source>Provide more {supply} outlets: {count}.</source>
        <translation>Mehr Steckdosen vorsehen ({supply}): {count}.</translation>
    </message>
    <message>
        <source>Plug {strip} straight into the wall.</source>
        <translation>{strip} direkt in die Wandsteckdose stecken.</translation>
    </message>
    <message>
        <source>Feed {strip} through a residual-current device.</source>
        <translation>{strip} über einen FI-Schutzschalter (RCD) versorgen.</translation>
    </message>
    <message>
        <source>Run {device} without a dimmer.</source>
        <translation>{device} ohne Dimmer betreiben.</translation>
    </message>
    <message>
        <source>Use a dimming thermostat for {device}.</source>
        <translation>Für {device} einen Dimmthermostat nehmen.</translation>
    </message>
    <message>
        <source>Put {device} on an outlet that is always on.</source>
        <translation>{device} an eine Steckdose anschließen, die immer Strom führt.</translation>
    </message>
    <message>
        <source>Let each cable hang in a loop below its plug, and keep plugs above and away from the water.</source>
        <translation>Jedes Kabel unterhalb seines Steckers in einer Tropfschlaufe hängen lassen; Stecker oberhalb des Wassers und davon entfernt halten.</translation>
    </message>
    <message>
        <source>Use a ceramic or other heat-rated holder for {device}.</source>
        <translation>Für {device} eine Fassung aus Keramik oder eine andere hitzefeste Fassung nehmen.</translation>
    </message>
    <message>
        <source>Use a holder rated for {to} or more for {device}, or a weaker lamp.</source>
        <translation>Für {device} eine Fassung nehmen, die für mindestens {to} ausgelegt ist, oder eine schwächere Lampe.</translation>
    </message>
    <message>
        <source>Use a control rated for {to} or more for {device}.</source>
        <translation>Für {device} einen Regler nehmen, der für mindestens {to} ausgelegt ist.</translation>
    </message>
    <message>
        <source>Enter this in the plan: {where}.</source>
        <translation>Im Plan eintragen: {where}.</translation>
    </message>
    <message>
        <source>Add prices for these to the price list: {needs}.</source>
        <translation>In der Preisliste Preise dafür ergänzen: {needs}.</translation>
    </message>
    <message>
        <source>Put it back on the list: {need}.</source>
        <translation>Wieder auf die Liste setzen: {need}.</translation>
    </message>
    <message>
        <source>Use a price list in {currency}.</source>
        <translation>Eine Preisliste in {currency} verwenden.</translation>
    </message>
    <message>
        <source>The published floor rule, applied to the animals&apos; size and number. The usable floor leaves out what they can&apos;t walk on.</source>
        <translation>Die veröffentlichte Platzregel, angewandt auf Größe und Zahl der Tiere. In der nutzbaren Fläche fehlt, worauf sie nicht laufen können.</translation>
    </message>
    <message>
        <source>The same rule applied to the size that the published growth rates lead to, at slow and at fast growth.</source>
        <translation>Dieselbe Regel, angewandt auf die Größe, die sich aus den veröffentlichten Wachstumsraten ergibt, bei langsamem und bei schnellem Wachstum.</translation>
    </message>
    <message>
        <source>Each side of the box is compared with the animal&apos;s own length.</source>
        <translation>Jede Seite des Terrariums wird mit der Länge des Tieres verglichen.</translation>
    </message>
    <message>
        <source>The clear width beside the fittings is compared with what the animal needs to turn round.</source>
        <translation>Die freie Breite neben der Einrichtung wird damit verglichen, was das Tier zum Umdrehen braucht.</translation>
    </message>
    <message>
        <source>Common practice: along a short side, a warm and a cool end run into one another.</source>
        <translation>Gängige Praxis: Auf einer kurzen Strecke gehen warmes und kühles Ende ineinander über.</translation>
    </message>
    <message>
        <source>Common practice: one hide more than animals, one of them warm and one cool.</source>
        <translation>Gängige Praxis: ein Versteck mehr als Tiere, davon eines warm und eines kühl.</translation>
    </message>
    <message>
        <source>Compared with the band on the species&apos; sheet.</source>
        <translation>Verglichen mit der Spanne im Datenblatt der Art.</translation>
    </message>
    <message>
        <source>One species in each box: needs, germs and tempers differ.</source>
        <translation>Nur eine Art je Terrarium: Ansprüche, Keime und Temperament unterscheiden sich.</translation>
    </message>
    <message>
        <source>What the species&apos; sheet says about company.</source>
        <translation>Was das Datenblatt der Art zur Vergesellschaftung sagt.</translation>
    </message>
    <message>
        <source>Only materials with their properties on file can be computed.</source>
        <translation>Rechnen lässt sich nur mit Materialien, deren Eigenschaften hinterlegt sind.</translation>
    </message>
    <message>
        <source>The weight of box, damp bed, water, fittings and animals is compared with the maker&apos;s rating.</source>
        <translation>Das Gewicht von Terrarium, feuchtem Bodengrund, Wasser, Einrichtung und Tieren wird mit der Tragkraft laut Hersteller verglichen.</translation>
    </message>
    <message>
        <source>The heat that the equipment gives is balanced with what leaves through base, walls, top, air and evaporation. The range follows from the spread of the inputs.</source>
        <translation>Die Wärme, die die Technik abgibt, wird gegen das aufgerechnet, was durch Boden, Wände, Oberseite, Luft und Verdunstung verloren geht. Die Spanne ergibt sich aus der Streuung der Eingaben.</translation>
    </message>
    <message>
        <source>The hottest surface an animal can touch is compared with the temperature at which skin burns on long contact.</source>
        <translation>Die heißeste Fläche, die ein Tier berühren kann, wird mit der Temperatur verglichen, bei der Haut bei längerem Kontakt verbrennt.</translation>
    </message>
    <message>
        <source>The hottest place an animal can lie on or dig to is compared with what it should lie on for long.</source>
        <translation>Die heißeste Stelle, auf der ein Tier liegen oder zu der es graben kann, wird damit verglichen, worauf es längere Zeit liegen sollte.</translation>
    </message>
    <message>
        <source>The place an animal could retreat to is compared with what its body bears.</source>
        <translation>Die Stelle, an die sich ein Tier zurückziehen könnte, wird damit verglichen, was sein Körper verträgt.</translation>
    </message>
    <message>
        <source>The distance is compared with the maker&apos;s clearance or, where the maker gives none, a cautious one.</source>
        <translation>Der Abstand wird mit dem Mindestabstand laut Hersteller verglichen, oder, wo der fehlt, mit einem vorsichtig gewählten.</translation>
    </message>
    <message>
        <source>The nearest point an animal gets to is taken: the top of what it can climb, and its own height on it.</source>
        <translation>Es zählt der nächste Punkt, den ein Tier erreicht: die Oberkante dessen, worauf es klettern kann, und darauf seine eigene Höhe.</translation>
    </message>
    <message>
        <source>Sun through glass gives more heat than any lamp here, and no thermostat can take it away.</source>
        <translation>Sonne durch Glas bringt mehr Wärme als jede Lampe hier, und kein Thermostat kann sie wegnehmen.</translation>
    </message>
    <message>
        <source>What evaporates and is misted is balanced with what the air carries away and what condenses.</source>
        <translation>Was verdunstet und gesprüht wird, wird gegen das aufgerechnet, was die Luft fortträgt und was kondensiert.</translation>
    </message>
    <message>
        <source>Every uncertain input is moved within its spread until the readings are met as well as their accuracy and the model&apos;s own error make probable. What is learned counts for cases with the lamps as in a reading and the room near to its room.</source>
        <translation>Jede unsichere Eingabe wird innerhalb ihrer Streuung verschoben, bis die Messwerte so gut getroffen sind, wie ihre Genauigkeit und der Fehler des Modells es erwarten lassen. Das Ergebnis gilt für Fälle, in denen die Lampen wie bei einer Messung laufen und der Raum ähnlich warm ist wie dabei.</translation>
    </message>
    <message>
        <source>The coldest pane is compared with the dew point of the air in the box.</source>
        <translation>Die kälteste Scheibe wird mit dem Taupunkt der Luft im Terrarium verglichen.</translation>
    </message>
    <message>
        <source>Where it is damp everywhere, an animal can&apos;t dry off. Common practice asks for a dry corner.</source>
        <translation>Wo es überall feucht ist, kann ein Tier nicht abtrocknen. Gängige Praxis ist eine trockene Ecke.</translation>
    </message>
    <message>
        <source>The UV index at the animal&apos;s back is compared with the range of its Ferguson zone.</source>
        <translation>Der UV-Index am Rücken des Tieres wird mit der Spanne seiner Ferguson-Zone verglichen.</translation>
    </message>
    <message>
        <source>A UV index is taken from a meter or the maker&apos;s table only, never from watts, and never outside the table&apos;s distances.</source>
        <translation>Ein UV-Index stammt nur von einem Messgerät oder aus der Tabelle des Herstellers, nie aus der Wattzahl und nie von außerhalb der Abstände der Tabelle.</translation>
    </message>
    <message>
        <source>Glass, acrylic and closed covers let practically no UV-B through.</source>
        <translation>Glas, Acryl und geschlossene Abdeckungen lassen praktisch kein UV-B durch.</translation>
    </message>
    <message>
        <source>The planned hours of light are compared with the sheet.</source>
        <translation>Die geplante Lichtdauer wird mit dem Datenblatt verglichen.</translation>
    </message>
    <message>
        <source>A device that gives light and is always on leaves no dark night.</source>
        <translation>Ein Gerät, das Licht gibt und immer an ist, lässt keine dunkle Nacht.</translation>
    </message>
    <message>
        <source>What runs for three hours or more may take 80% of the rating. Everything else on it counts as well.</source>
        <translation>Was drei Stunden oder länger läuft, darf 80 % der zulässigen Last beanspruchen. Alles andere am selben Anschluss zählt mit.</translation>
    </message>
    <message>
        <source>One outlet for each device, counted apart for timed and always-on ones.</source>
        <translation>Je Gerät eine Steckdose, getrennt gezählt für zeitgeschaltete und für dauernd versorgte.</translation>
    </message>
    <message>
        <source>Each strip belongs straight into a wall outlet: the first one carries everything behind it.</source>
        <translation>Jede Leiste gehört direkt in eine Wandsteckdose: Die erste trägt alles, was dahinter hängt.</translation>
    </message>
    <message>
        <source>Near water, a residual-current device cuts the power before a shock can harm.</source>
        <translation>In Wassernähe schaltet ein FI-Schutzschalter (RCD) den Strom ab, bevor ein Schlag schaden kann.</translation>
    </message>
    <message>
        <source>What a dimmer or thermostat may feed depends on the kind of load.</source>
        <translation>Was ein Dimmer oder Thermostat versorgen darf, hängt von der Art der Last ab.</translation>
    </message>
    <message>
        <source>A thermostat holds the temperature only where its probe is.</source>
        <translation>Ein Thermostat hält die Temperatur nur dort, wo sein Fühler sitzt.</translation>
    </message>
    <message>
        <source>Water on a plug, holder or strip can give a shock or start a fire.</source>
        <translation>Wasser auf Stecker, Fassung oder Leiste kann einen Stromschlag oder einen Brand verursachen.</translation>
    </message>
    <message>
        <source>Hot lamps and heaters soften plastic holders.</source>
        <translation>Heiße Lampen und Heizer lassen Kunststofffassungen weich werden.</translation>
    </message>
    <message>
        <source>Only you can know this, so it is asked for and not assumed.</source>
        <translation>Das kann nur der Halter wissen, deshalb wird danach gefragt und nichts angenommen.</translation>
    </message>
    <message>
        <source>The needs follow from the plan; what you left out or replaced is set off against them.</source>
        <translation>Der Bedarf folgt aus dem Plan; was weggelassen oder ersetzt wurde, wird gegengerechnet.</translation>
    </message>
    <message>
        <source>Taken from the price list, whole packs only. A missing price is listed and never counted as zero.</source>
        <translation>Aus der Preisliste, nur ganze Packungen. Ein fehlender Preis wird aufgeführt und nie als null gezählt.</translation>
    </message>
    <message>
        <source>A price list older than a year is out of date.</source>
        <translation>Eine Preisliste, die älter als ein Jahr ist, gilt als veraltet.</translation>
    </message>
    <message>
        <source>General advice on hygiene with reptiles and amphibians.</source>
        <translation>Allgemeine Hinweise zur Hygiene bei Reptilien und Amphibien.</translation>
    </message>
    <message>
        <source>Laws differ from place to place and change. This program does not know them all.</source>
        <translation>Gesetze sind von Ort zu Ort verschieden und ändern sich. Dieses Programm kennt sie nicht alle.</translation>
    </message>
    <message>
        <source>General advice on care.</source>
        <translation>Allgemeine Hinweise zur Haltung.</translation>
    </message>
    <message>
        <source>Common practice: new animals are kept apart and watched first.</source>
        <translation>Gängige Praxis: Neue Tiere werden zunächst getrennt gehalten und beobachtet.</translation>
    </message>
    <message>
        <source>Common practice: an enclosure is measured over several days before it is used.</source>
        <translation>Gängige Praxis: Ein Terrarium wird mehrere Tage lang durchgemessen, bevor es benutzt wird.</translation>
    </message>
    <message>
        <source>A bowl has to let the animal get in, turn round and out: for turtles and tortoises one and a half shell lengths by one, for a snake the round that it lies coiled in.</source>
        <translation>Die Wasserschale muss so groß sein, dass das Tier hineinkommt, sich umdrehen kann und wieder herauskommt: bei Schildkröten anderthalb Panzerlängen mal eine, bei einer Schlange der Kreis, in dem sie zusammengerollt liegt.</translation>
    </message>
    <message>
        <source>The water&apos;s depth against the length and the height of the animal.</source>
        <translation>Die Wassertiefe im Verhältnis zu Länge und Höhe des Tieres.</translation>
    </message>
    <message>
        <source>What is misted and what drips back is balanced with what evaporates from the bed, over day and night, winter and summer.</source>
        <translation>Was gesprüht wird und zurücktropft, wird gegen das aufgerechnet, was aus dem Bodengrund verdunstet, über Tag und Nacht, Winter und Sommer.</translation>
    </message>
    <message>
        <source>What water needs before an animal lives in it.</source>
        <translation>Was Wasser braucht, bevor ein Tier darin lebt.</translation>
    </message>
    <message>
        <source>Only animals of species that rest, well, of full weight and past their first winter may be cooled, after a vet&apos;s check, and weighed every week.</source>
        <translation>Nur Tiere von Arten mit Winterruhe, die gesund sind, ihr volles Gewicht und den ersten Winter hinter sich haben, dürfen kühl gestellt werden, nach einer Untersuchung beim Tierarzt und mit wöchentlichem Wiegen.</translation>
    </message>
    <message>
        <source>Floor for the animals as they are: {usable} can be walked on, and “{rule_title}” ({rule_kind}) asks for {min}.</source>
        <translation>Grundfläche für die Tiere in ihrer jetzigen Größe: begehbar {usable}; „{rule_title}“ ({rule_kind}) verlangt {min}.</translation>
    </message>
    <message>
        <source>The floor of {floor} is too small for the animals as they are: “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more.</source>
        <translation>Die Grundfläche von {floor} ist für die Tiere in ihrer jetzigen Größe zu klein: „{rule_title}“ ({rule_kind}) verlangt {min}, also {short_by} mehr.</translation>
    </message>
    <message>
        <source>Floor for the animals once grown: {usable} can be walked on, and “{rule_title}” ({rule_kind}) asks for {min}.</source>
        <translation>Grundfläche für die ausgewachsenen Tiere: begehbar {usable}; „{rule_title}“ ({rule_kind}) verlangt {min}.</translation>
    </message>
    <message>
        <source>The floor will be too small for the animals once grown: {usable} can be walked on, and “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more.[ This may come in {years_fast}.]</source>
        <translation>Für die ausgewachsenen Tiere wird die Grundfläche zu klein sein: begehbar {usable}; „{rule_title}“ ({rule_kind}) verlangt {min}, also {short_by} mehr.[ Bis dahin dauert es womöglich nur {years_fast}.]</translation>
    </message>
    <message>
        <source>Whether the floor of {floor} is large enough is not known: “{rule_title}” needs {missing} ({species}).</source>
        <translation>Ob die Grundfläche von {floor} groß genug ist, ist nicht bekannt: Für „{rule_title}“ fehlt {missing} ({species}).</translation>
    </message>
    <message>
        <source>No published rule for floor space is on file ({species}). The floor of {floor} is not judged.</source>
        <translation>Für die Grundfläche ist keine veröffentlichte Regel hinterlegt ({species}). Die Fläche von {floor} wird nicht beurteilt.</translation>
    </message>
    <message>
        <source>Only a laboratory minimum is on file ({species}): “{rule_title}” asks for {min}, and the floor has {floor}. Such a minimum does not show that an animal has enough.</source>
        <translation>Hinterlegt ist nur ein Mindestmaß für die Versuchstierhaltung ({species}): „{rule_title}“ verlangt {min}, die Grundfläche hat {floor}. Ein solches Mindestmaß belegt nicht, dass ein Tier genug Platz hat.</translation>
    </message>
    <message>
        <source>By “{rule_title}” the box may be outgrown in {years_fast}[, at slow growth in {years_slow}] ({species}).</source>
        <translation>Nach „{rule_title}“ reicht das Terrarium womöglich nur noch {years_fast}[, bei langsamem Wachstum {years_slow}] ({species}).</translation>
    </message>
    <message>
        <source>The {side_name} is {side}, and “{rule_title}” ({rule_kind}) asks for {min}.</source>
        <translation>Die {side_name} beträgt {side}; „{rule_title}“ ({rule_kind}) verlangt {min}.</translation>
    </message>
    <message>
        <source>The {side_name} is {side}, and “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more.</source>
        <translation>Die {side_name} beträgt {side}; „{rule_title}“ ({rule_kind}) verlangt {min}, also {short_by} mehr.</translation>
    </message>
    <message>
        <source>The {side_name} is {side}, and the animal is {body} long ({species}). No side should be shorter than its body: {short_by} more is needed.</source>
        <translation>Die {side_name} beträgt {side}, das Tier ist {body} lang ({species}). Keine Seite sollte kürzer sein als das Tier: Nötig sind {short_by} mehr.</translation>
    </message>
    <message>
        <source>The clear width is {width}, and turning round takes {min} ({species}): {short_by} more is needed.</source>
        <translation>Die freie Breite beträgt {width}, zum Umdrehen sind {min} nötig ({species}): Es fehlen {short_by}.</translation>
    </message>
    <message>
        <source>The clear width is {width}, and turning round takes {min} ({species}).</source>
        <translation>Die freie Breite beträgt {width}, zum Umdrehen sind {min} nötig ({species}).</translation>
    </message>
    <message>
        <source>The height over the bed is {height}, and {min} is asked for ({species}): {short_by} more is needed.</source>
        <translation>Die Höhe über dem Bodengrund beträgt {height}, verlangt sind {min} ({species}): Es fehlen {short_by}.</translation>
    </message>
    <message>
        <source>The height over the bed is {height}, and {min} is asked for ({species}).</source>
        <translation>Die Höhe über dem Bodengrund beträgt {height}, verlangt sind {min} ({species}).</translation>
    </message>
    <message>
        <source>The box is {length} long. With less than {min}, a warm and a cool end are hard to keep apart.</source>
        <translation>Das Terrarium ist {length} lang. Unter {min} lassen sich ein warmes und ein kühles Ende kaum auseinanderhalten.</translation>
    </message>
    <message>
        <source>Number of hides: {hides}. At least {min} are advised, one more than animals.</source>
        <translation>Zahl der Verstecke: {hides}. Empfohlen sind mindestens {min}, eines mehr als Tiere.</translation>
    </message>
    <message>
        <source>There is no hide on the warm side. Without one, an animal must choose between warmth and cover.</source>
        <translation>Auf der warmen Seite gibt es kein Versteck. Ohne eines muss sich ein Tier zwischen Wärme und Deckung entscheiden.</translation>
    </message>
    <message>
        <source>There is no hide on the cool side. Without one, an animal must choose between cooling down and cover.</source>
        <translation>Auf der kühlen Seite gibt es kein Versteck. Ohne eines muss sich ein Tier zwischen Abkühlung und Deckung entscheiden.</translation>
    </message>
    <message>
        <source>There is no humid hide. This species needs one ({species}).</source>
        <translation>Es gibt keine Wetbox. Diese Art braucht eine ({species}).</translation>
    </message>
    <message>
        <source>{fitting} sticks out of the box by {over_by}.</source>
        <translation>{fitting} ragt um {over_by} aus dem Terrarium.</translation>
    </message>
    <message>
        <source>No animals are entered, so nothing can be judged against their needs.</source>
        <translation>Es sind keine Tiere eingetragen, deshalb lässt sich nichts nach ihren Ansprüchen beurteilen.</translation>
    </message>
    <message>
        <source>Keeping a single animal is a sound choice ({species}).</source>
        <translation>Ein einzelnes Tier zu halten ist eine gute Wahl ({species}).</translation>
    </message>
    <message>
        <source>Animals of this species live best alone ({species}). Entered here: {animals}.</source>
        <translation>Tiere dieser Art leben am besten allein ({species}). Hier eingetragen: {animals}.</translation>
    </message>
    <message>
        <source>Several species share this box ({species}, {other_species}). Their needs and germs differ: one box should hold one species.</source>
        <translation>Mehrere Arten teilen sich dieses Terrarium ({species}, {other_species}). Ihre Ansprüche und Keime unterscheiden sich: In ein Terrarium gehört nur eine Art.</translation>
    </message>
    <message>
        <source>Males of this species fight ({species}). Males in this box: {males}.</source>
        <translation>Männchen dieser Art bekämpfen sich ({species}). Männchen in diesem Terrarium: {males}.</translation>
    </message>
    <message>
        <source>Males of this species fight ({species}), and the sex is not stated for {animals} of the animals here.</source>
        <translation>Männchen dieser Art bekämpfen sich ({species}). Zahl der Tiere hier ohne Angabe des Geschlechts: {animals}.</translation>
    </message>
    <message>
        <source>There is no sheet for the species “{species}”. Its needs are not known.</source>
        <translation>Für die Art „{species}“ gibt es kein Datenblatt. Ihre Ansprüche sind nicht bekannt.</translation>
    </message>
    <message>
        <source>The material “{material}” ({part}) is not on file. What depends on it can&apos;t be computed.</source>
        <translation>Das Material „{material}“ ({part}) ist nicht hinterlegt. Was davon abhängt, lässt sich nicht berechnen.</translation>
    </message>
    <message>
        <source>No substrate is entered.</source>
        <translation>Es ist kein Bodengrund eingetragen.</translation>
    </message>
    <message>
        <source>The sheet does not list {material} as a substrate for this species ({species}). The first it lists is {best}.</source>
        <translation>Das Datenblatt führt {material} für diese Art nicht als Bodengrund auf ({species}). An erster Stelle steht dort {best}.</translation>
    </message>
    <message>
        <source>The bed is {depth} deep, and this species needs at least {min} ({species}): {short_by} more.</source>
        <translation>Der Bodengrund ist {depth} hoch, diese Art braucht mindestens {min} ({species}): {short_by} mehr.</translation>
    </message>
    <message>
        <source>The bed is {depth} deep in a box that is {height} high. Too little room is left above it.</source>
        <translation>Der Bodengrund ist {depth} hoch, das Terrarium {height}. Darüber bleibt zu wenig Platz.</translation>
    </message>
    <message>
        <source>What {stand} can carry is not stated. It has to carry {range}.</source>
        <translation>Wie viel {stand} tragen kann, ist nicht angegeben. Zu tragen sind {range}.</translation>
    </message>
    <message>
        <source>It is not stated what the box stands on. That has to carry {range}.</source>
        <translation>Worauf das Terrarium steht, ist nicht angegeben. Zu tragen sind {range}.</translation>
    </message>
    <message>
        <source>The adult is heavier than a person can lift and needs a heated room of its own. No indoor box lasts it.</source>
        <translation>Das ausgewachsene Tier ist schwerer, als ein Mensch heben kann, und braucht einen eigenen geheizten Raum. Kein Terrarium reicht auf Dauer.</translation>
    </message>
    <message>
        <source>The adult outgrows any usual indoor box. Plan for a room or an outdoor run.</source>
        <translation>Das ausgewachsene Tier sprengt jedes übliche Zimmerterrarium. Einen Raum oder ein Freigehege einplanen.</translation>
    </message>
    <message>
        <source>One study of hatchlings found flatter shells when they were reared humid. Its method is contested, so the figure is not settled.</source>
        <translation>Eine Studie an Schlüpflingen fand bei feuchter Aufzucht flachere Panzer. Ihre Methode ist umstritten, der Wert also nicht gesichert.</translation>
    </message>
    <message>
        <source>A heat mat gives background warmth at best. It warms itself from above.</source>
        <translation>Eine Heizmatte liefert allenfalls Grundwärme. Die Art wärmt sich von oben.</translation>
    </message>
    <message>
        <source>It eats mostly insects. The food costs here count mixed food by weight, as for greens.</source>
        <translation>Die Art frisst überwiegend Insekten. Die Futterkosten hier rechnen mit gemischtem Futter nach Gewicht, wie bei Grünfutter.</translation>
    </message>
    <message>
        <source>It eats insects or other animal food beside greens. The food costs here count the greens only.</source>
        <translation>Die Art frisst neben Grünfutter auch Insekten oder andere tierische Kost. Die Futterkosten hier zählen nur das Grünfutter.</translation>
    </message>
    <message>
        <source>A female that may lay needs a place with at least 20 cm (8 in) of soil to dig in, even when she lives alone.</source>
        <translation>Ein Weibchen, das Eier legen könnte, braucht eine Stelle mit mindestens 20 cm (8 in) Erde zum Graben, auch wenn es allein lebt.</translation>
    </message>
    <message>
        <source>Frozen food rodents can carry salmonella too. Thaw them fully, and outside the kitchen.</source>
        <translation>Auch Frostnager können Salmonellen übertragen. Vollständig auftauen, und zwar nicht in der Küche.</translation>
    </message>
    <message>
        <source>It gets through gaps that look too small. Lock the doors, and leave no gap wider than its head.</source>
        <translation>Die Art zwängt sich durch Spalten, die zu klein aussehen. Die Türen abschließen und keine Spalte breiter lassen als den Kopf.</translation>
    </message>
    <message>
        <source>Females fight each other as well. Keep one, or one pair.</source>
        <translation>Auch Weibchen bekämpfen sich. Ein Tier oder ein Paar halten.</translation>
    </message>
    <message>
        <source>It eats other snakes, its own kind too. Keep one to a box.</source>
        <translation>Die Art frisst andere Schlangen, auch Artgenossen. Nur ein Tier je Terrarium halten.</translation>
    </message>
    <message>
        <source>It has a mild venom, and a long bite can swell. See a doctor if you react to one.</source>
        <translation>Die Art ist schwach giftig, und ein langer Biss kann eine Schwellung verursachen. Bei einer Reaktion zum Arzt gehen.</translation>
    </message>
    <message>
        <source>Fine or dusty sand alone is suspected of blocking the gut. Mix it with soil.</source>
        <translation>Reiner feiner oder staubiger Sand steht im Verdacht, den Darm zu verstopfen. Mit Erde mischen.</translation>
    </message>
    <message>
        <source>It does not rest through the winter and must not be kept cold.</source>
        <translation>Die Art hält keine Winterruhe und darf nicht kalt gehalten werden.</translation>
    </message>
    <message>
        <source>Use water without chlorine only, for misting too: rain water, or tap water with a conditioner.</source>
        <translation>Nur chlorfreies Wasser verwenden, auch zum Sprühen: Regenwasser oder Leitungswasser mit Wasseraufbereiter.</translation>
    </message>
    <message>
        <source>Its skin takes up what touches it. Handle it rarely and with wet, rinsed gloves, and leave no cleaner behind.</source>
        <translation>Die Haut nimmt auf, was sie berührt. Selten anfassen, und dann mit nassen, abgespülten Handschuhen; keine Reste von Reinigungsmitteln zurücklassen.</translation>
    </message>
    <message>
        <source>Taking and keeping native box turtles is restricted or licensed in many places. Ask before you buy.</source>
        <translation>Heimische Dosenschildkröten der Natur zu entnehmen und zu halten ist vielerorts beschränkt oder genehmigungspflichtig. Vor dem Kauf nachfragen.</translation>
    </message>
    <message>
        <source>In the European Union it needs a certificate and a mark when it changes hands. Ask for the papers.</source>
        <translation>In der Europäischen Union braucht das Tier bei der Abgabe eine Bescheinigung und eine Kennzeichnung. Die Papiere verlangen.</translation>
    </message>
    <message>
        <source>Trade in it is controlled. Keep the proof of legal origin, and hand it on with the animal. What is asked differs by country.</source>
        <translation>Der Handel mit der Art ist geregelt. Den Herkunftsnachweis aufbewahren und mit dem Tier weitergeben. Was verlangt wird, ist von Land zu Land verschieden.</translation>
    </message>
    <message>
        <source>In Australia, keeping this native species needs a licence.</source>
        <translation>In Australien ist für die Haltung dieser heimischen Art eine Genehmigung nötig.</translation>
    </message>
    <message>
        <source>It overheats easily: a warm room can be too warm. Watch the upper end of the temperatures.</source>
        <translation>Die Art überhitzt leicht: Schon ein warmer Raum kann zu warm sein. Auf das obere Ende der Temperaturen achten.</translation>
    </message>
    <message>
        <source>It has no basking spot. A lamp that heats a surface is not wanted.</source>
        <translation>Die Art nutzt keinen Sonnenplatz. Eine Lampe, die eine Fläche aufheizt, ist nicht erwünscht.</translation>
    </message>
    <message>
        <source>how long a new box is proved</source>
        <translation>wie lange ein neues Terrarium erprobt wird</translation>
    </message>
    <message>
        <source>the error of a measured length</source>
        <translation>der Fehler einer gemessenen Länge</translation>
    </message>
    <message>
        <source>the loss of weight that is a matter for a vet</source>
        <translation>der Gewichtsverlust, der zum Tierarzt führt</translation>
    </message>
    <message>
        <source>An enclosure can&apos;t take over from itself ({0}).</source>
        <translation>Ein Terrarium kann sich nicht selbst ablösen ({0}).</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>am Tag</translation>
    </message>
    <message>
        <source>days, at most</source>
        <translation>Tage, höchstens</translation>
    </message>
    <message>
        <source>energy, at least</source>
        <translation>Energie, mindestens</translation>
    </message>
    <message>
        <source>energy, at most</source>
        <translation>Energie, höchstens</translation>
    </message>
    <message>
        <source>with both</source>
        <translation>mit beiden</translation>
    </message>
    <message>
        <source>with the new one alone</source>
        <translation>nur mit dem neuen</translation>
    </message>
    <message>
        <source>The newest length of {animal} is {length}. Its first length made {min}[ to {max}] expected ({species}).</source>
        <translation>Neueste Länge ({animal}): {length}. Nach der ersten Länge waren {min}[ bis {max}] zu erwarten ({species}).</translation>
    </message>
    <message>
        <source>{animal} has grown more slowly than expected: {length}, where its first length made {min}[ to {max}] expected ({species}).</source>
        <translation>Langsamer gewachsen als erwartet ({animal}): {length}, wo nach der ersten Länge {min}[ bis {max}] zu erwarten waren ({species}).</translation>
    </message>
    <message>
        <source>{animal} may have grown more slowly than expected: {length}, where its first length made {min}[ to {max}] expected ({species}).</source>
        <translation>Vielleicht langsamer gewachsen als erwartet ({animal}): {length}, wo nach der ersten Länge {min}[ bis {max}] zu erwarten waren ({species}).</translation>
    </message>
    <message>
        <source>{animal} has grown faster than published: {length}, where {min}[ to {max}] was expected ({species}). It needs more room sooner; ask whether it is fed too richly.</source>
        <translation>Schneller gewachsen als veröffentlicht ({animal}): {length}, wo {min}[ bis {max}] zu erwarten waren ({species}). Es wird eher mehr Platz gebraucht; prüfen, ob zu reich gefüttert wird.</translation>
    </message>
    <message>
        <source>{animal} has lost {lost:percent} of its weight: from {from} on {date} to {to}, within {days}.</source>
        <translation>Gewichtsverlust ({animal}): {lost:percent}, von {from} am {date} auf {to}, binnen {days}.</translation>
    </message>
    <message>
        <source>{old} keeps running while {new} is proved, {daily} a day: {energy_min} to {energy_max} over {days_min} to {days_max}. It is in the loads of circuits and strips, and in no running cost.</source>
        <translation>{old} läuft weiter, solange {new} erprobt wird, {daily} am Tag: {energy_min} bis {energy_max} in {days_min} bis {days_max}. Das steckt in der Last von Stromkreisen und Leisten und in keinen laufenden Kosten.</translation>
    </message>
    <message>
        <source>Too much hangs on {carrier} only while both boxes run: up to {both}, and {afterwards} once the old one has gone.</source>
        <translation>Nur solange beide Terrarien laufen, hängt zu viel an {carrier}: bis {both}, und {afterwards}, sobald das alte weg ist.</translation>
    </message>
    <message>
        <source>A measurement of {animal} is not used ({day}): {reason}.</source>
        <translation>Eine Messung wird nicht verwendet ({animal}, {day}): {reason}.</translation>
    </message>
    <message>
        <source>Measure again in the same way. If it is so, look at food, warmth and UV, and ask a reptile vet.</source>
        <translation>Auf dieselbe Weise noch einmal messen. Bestätigt es sich, Futter, Wärme und UV prüfen und einen reptilienkundigen Tierarzt fragen.</translation>
    </message>
    <message>
        <source>Feed one of the two from another circuit while the new one is proved; never chain strips for it.</source>
        <translation>Eines der beiden an einen anderen Stromkreis hängen, solange das neue erprobt wird; dafür nie Steckdosenleisten hintereinanderstecken.</translation>
    </message>
    <message>
        <source>Weigh again on the same scale. Eggs laid or an emptied gut can explain it; if nothing does, have a reptile vet see the animal within days.</source>
        <translation>Auf derselben Waage noch einmal wiegen. Eiablage oder ein entleerter Darm können es erklären; erklärt es nichts, das Tier binnen Tagen einem reptilienkundigen Tierarzt vorstellen.</translation>
    </message>
    <message>
        <source>The first length that was measured, followed at the slowest and the fastest growth that is published, not past the adult length, with the error of a measurement at either end.</source>
        <translation>Die erste gemessene Länge, fortgeführt mit dem langsamsten und dem schnellsten veröffentlichten Wachstum, nicht über die Adultlänge hinaus, mit dem Messfehler an beiden Enden.</translation>
    </message>
    <message>
        <source>The newest weight against the greatest of the year before it.</source>
        <translation>Das neueste Gewicht gegen das größte im Jahr davor.</translation>
    </message>
    <message>
        <source>days between two looks at the animals</source>
        <translation>Tage zwischen zwei Sichtkontrollen der Tiere</translation>
    </message>
    <message>
        <source>days between two weighings</source>
        <translation>Tage zwischen zwei Wägungen</translation>
    </message>
    <message>
        <source>days between two weighings of a new animal</source>
        <translation>Tage zwischen zwei Wägungen eines neuen Tieres</translation>
    </message>
    <message>
        <source>how long an animal counts as new</source>
        <translation>wie lange ein Tier als neu gilt</translation>
    </message>
    <message>
        <source>days between two checks of the body</source>
        <translation>Tage zwischen zwei Körperkontrollen</translation>
    </message>
    <message>
        <source>days between two baths</source>
        <translation>Tage zwischen zwei Bädern</translation>
    </message>
    <message>
        <source>days between two rounds of spot cleaning</source>
        <translation>Tage zwischen zwei Teilreinigungen</translation>
    </message>
    <message>
        <source>days between two disinfections</source>
        <translation>Tage zwischen zwei Desinfektionen</translation>
    </message>
    <message>
        <source>days until the bed is turned again</source>
        <translation>Tage bis zum nächsten Umgraben des Bodengrunds</translation>
    </message>
    <message>
        <source>days until a new animal sees a vet</source>
        <translation>Tage bis zum ersten Tierarztbesuch eines neuen Tieres</translation>
    </message>
    <message>
        <source>the days of a quarantine</source>
        <translation>Dauer einer Quarantäne in Tagen</translation>
    </message>
    <message>
        <source>days between two tests of a thermostat</source>
        <translation>Tage zwischen zwei Prüfungen eines Thermostats</translation>
    </message>
    <message>
        <source>days between two tests of a residual-current device</source>
        <translation>Tage zwischen zwei Prüfungen eines FI-Schutzschalters (RCD)</translation>
    </message>
    <message>
        <source>how long the battery of a thermometer lasts</source>
        <translation>wie lange die Batterie eines Thermometers hält</translation>
    </message>
    <message>
        <source>days between two cleanings of a mister</source>
        <translation>Tage zwischen zwei Reinigungen einer Beregnungsanlage</translation>
    </message>
    <message>
        <source>days between two readings of the UV</source>
        <translation>Tage zwischen zwei UV-Messungen</translation>
    </message>
    <message>
        <source>days between two tests of the smoke alarm</source>
        <translation>Tage zwischen zwei Prüfungen des Rauchmelders</translation>
    </message>
    <message>
        <source>Look at the animals and read the thermometers</source>
        <translation>Nach den Tieren sehen und die Thermometer ablesen</translation>
    </message>
    <message>
        <source>Change the water</source>
        <translation>Wasser wechseln</translation>
    </message>
    <message>
        <source>Top up the bowls</source>
        <translation>Wasserschalen auffüllen</translation>
    </message>
    <message>
        <source>Mist</source>
        <translation>Sprühen</translation>
    </message>
    <message>
        <source>Clean the mister</source>
        <translation>Beregnungsanlage reinigen</translation>
    </message>
    <message>
        <source>Water the bed</source>
        <translation>Bodengrund gießen</translation>
    </message>
    <message>
        <source>Remove droppings and leftovers</source>
        <translation>Kot und Futterreste entfernen</translation>
    </message>
    <message>
        <source>Clean and disinfect bowls and furnishings</source>
        <translation>Schalen und Einrichtung reinigen und desinfizieren</translation>
    </message>
    <message>
        <source>Sift and turn the bed, top it up</source>
        <translation>Bodengrund durchsieben, umgraben und auffüllen</translation>
    </message>
    <message>
        <source>Set the timer of the lamps: {on} to {off}</source>
        <translation>Zeitschaltuhr der Lampen einstellen: {on} bis {off}</translation>
    </message>
    <message>
        <source>The enclosure may be outgrown</source>
        <translation>Das Terrarium ist vielleicht zu klein geworden</translation>
    </message>
    <message>
        <source>Quarantine of a new animal may end</source>
        <translation>Die Quarantäne eines neuen Tieres kann enden</translation>
    </message>
    <message>
        <source>Feeding of {species}: decide how often</source>
        <translation>Fütterung ({species}): festlegen, wie oft</translation>
    </message>
    <message>
        <source>Feed {species}: {food}</source>
        <translation>Füttern ({species}): {food}</translation>
    </message>
    <message>
        <source>Food of {species} for a month</source>
        <translation>Futter für einen Monat: {species}</translation>
    </message>
    <message>
        <source>Bathe {species}</source>
        <translation>Baden: {species}</translation>
    </message>
    <message>
        <source>Weigh the new {species}</source>
        <translation>Wiegen (neues Tier): {species}</translation>
    </message>
    <message>
        <source>Weigh {species}</source>
        <translation>Wiegen: {species}</translation>
    </message>
    <message>
        <source>Check beak, claws and shell of {species}</source>
        <translation>Schnabel, Krallen und Panzer kontrollieren: {species}</translation>
    </message>
    <message>
        <source>Check claws, toes and skin of {species}</source>
        <translation>Krallen, Zehen und Haut kontrollieren: {species}</translation>
    </message>
    <message>
        <source>Check skin, eyes and mouth of {species}</source>
        <translation>Haut, Augen und Maul kontrollieren: {species}</translation>
    </message>
    <message>
        <source>Check skin and weight of {species}</source>
        <translation>Haut und Gewicht kontrollieren: {species}</translation>
    </message>
    <message>
        <source>First check of {species} by a reptile vet</source>
        <translation>Erste Untersuchung beim reptilienkundigen Tierarzt: {species}</translation>
    </message>
    <message>
        <source>Yearly check of {species} by a reptile vet</source>
        <translation>Jährliche Untersuchung beim reptilienkundigen Tierarzt: {species}</translation>
    </message>
    <message>
        <source>Vet&apos;s check of {species} before the winter rest</source>
        <translation>Untersuchung beim Tierarzt vor der Winterruhe: {species}</translation>
    </message>
    <message>
        <source>Winter rest of {species} begins: no food from today</source>
        <translation>Winterruhe beginnt, ab heute kein Futter: {species}</translation>
    </message>
    <message>
        <source>{species} goes into the cold</source>
        <translation>Einwintern, die Kälte beginnt: {species}</translation>
    </message>
    <message>
        <source>Weigh {species} in its winter rest</source>
        <translation>Wiegen in der Winterruhe: {species}</translation>
    </message>
    <message>
        <source>Begin to warm {species} up</source>
        <translation>Mit dem Aufwärmen beginnen: {species}</translation>
    </message>
    <message>
        <source>Winter rest of {species} is over</source>
        <translation>Winterruhe ist vorbei: {species}</translation>
    </message>
    <message>
        <source>Test the thermostat of {where}</source>
        <translation>Thermostat prüfen: {where}</translation>
    </message>
    <message>
        <source>Read the UV of {where} with a meter</source>
        <translation>UV mit einem Messgerät messen: {where}</translation>
    </message>
    <message>
        <source>Test the residual-current device</source>
        <translation>FI-Schutzschalter (RCD) prüfen</translation>
    </message>
    <message>
        <source>Test the smoke alarm</source>
        <translation>Rauchmelder prüfen</translation>
    </message>
    <message>
        <source>Change the batteries of thermometers and hygrometers</source>
        <translation>Batterien von Thermometern und Hygrometern wechseln</translation>
    </message>
    <message>
        <source>Change the cartridge of the water filter</source>
        <translation>Kartusche des Wasserfilters wechseln</translation>
    </message>
    <message>
        <source>Replace: {item}</source>
        <translation>Ersetzen: {item}</translation>
    </message>
    <message>
        <source>Replace: {item} (its UV fades)</source>
        <translation>Ersetzen: {item} (das UV lässt nach)</translation>
    </message>
    <message>
        <source>Replace the bed: {item}</source>
        <translation>Bodengrund wechseln: {item}</translation>
    </message>
    <message>
        <source>Renew the price list</source>
        <translation>Preisliste erneuern</translation>
    </message>
    <message>
        <source>Work the plan out anew and save the calendar again</source>
        <translation>Plan neu berechnen und Kalender neu speichern</translation>
    </message>
    <message>
        <source>Every animal is awake, breathes with its mouth closed and moves as usual; lamps and heaters work; both thermometers read what they should. A lamp that has failed is replaced the same day.</source>
        <translation>Jedes Tier ist wach, atmet mit geschlossenem Maul und bewegt sich wie gewohnt; Lampen und Heizer funktionieren; beide Thermometer zeigen, was sie sollen. Eine ausgefallene Lampe noch am selben Tag ersetzen.</translation>
    </message>
    <message>
        <source>Pour the bowls out, scrub and rinse them, and fill in {water} of fresh lukewarm water[, with {conditioner} of conditioner]. Change it at once where it is fouled.</source>
        <translation>Wasserschalen ausleeren, ausbürsten, ausspülen und {water} frisches, lauwarmes Wasser einfüllen[, dazu {conditioner} Wasseraufbereiter]. Verschmutztes Wasser sofort wechseln.</translation>
    </message>
    <message>
        <source>See that the water is clean and as deep as planned; about {water} a day evaporate.</source>
        <translation>Darauf achten, dass das Wasser sauber und so tief ist wie geplant; am Tag verdunsten etwa {water}.</translation>
    </message>
    <message>
        <source>Spray {water} a day[, in {times} goes], most of it over the cool side, and not on hot lamps or sockets. Between two mistings the top of the bed may dry.</source>
        <translation>Am Tag {water} sprühen[, verteilt auf {times} Sprühgänge], das meiste über der kühlen Seite und nicht auf heiße Lampen, Fassungen oder Steckdosen. Zwischen zwei Sprühgängen darf die Oberfläche des Bodengrunds abtrocknen.</translation>
    </message>
    <message>
        <source>Empty it, rinse the tank and the nozzles, and fill it with fresh water. It draws about {water} a day. Unplug it first.</source>
        <translation>Zuerst ausstecken. Die Anlage leeren, Tank und Düsen ausspülen und frisches Wasser einfüllen. Sie verbraucht etwa {water} am Tag.</translation>
    </message>
    <message>
        <source>Pour {water} into the bed on the cool side, away from lamps, mats and sockets. Feel the bed first: none where it is still wet.</source>
        <translation>Auf der kühlen Seite {water} in den Bodengrund gießen, abseits von Lampen, Heizmatten und Steckdosen. Den Bodengrund vorher befühlen: Wo er noch nass ist, nicht gießen.</translation>
    </message>
    <message>
        <source>Take out droppings, what is left of the food, and wet patches of the bed.</source>
        <translation>Kot, Futterreste und nasse Stellen des Bodengrunds herausnehmen.</translation>
    </message>
    <message>
        <source>Wash them outside the kitchen, disinfect them, and rinse until nothing smells. No phenols. The animal stays away from it until all is dry.</source>
        <translation>Außerhalb der Küche waschen, desinfizieren und nachspülen, bis nichts mehr riecht. Keine phenolhaltigen Mittel. Das Tier bleibt fern, bis alles trocken ist.</translation>
    </message>
    <message>
        <source>Sift out what is fouled, turn the upper part, and fill up to the planned depth. Change the whole bed at once where it smells or has mites or mould. Look for eggs and for a buried animal first.</source>
        <translation>Verschmutztes aussieben, die obere Schicht umgraben und bis zur geplanten Höhe auffüllen. Riecht der Bodengrund oder hat er Milben oder Schimmel, sofort alles wechseln. Vorher nach Eiern und nach einem eingegrabenen Tier suchen.</translation>
    </message>
    <message>
        <source>On at {on}, off at {off}, so that the hours of light follow the year.</source>
        <translation>An um {on}, aus um {off}, damit die Lichtdauer dem Jahr folgt.</translation>
    </message>
    <message>
        <source>By the fastest published growth the animals reach about now what this enclosure can hold. Measure them, state their length in the plan, and have it worked out anew.</source>
        <translation>Nach dem schnellsten veröffentlichten Wachstum erreichen die Tiere etwa jetzt die Größe, für die dieses Terrarium noch reicht. Die Tiere messen, ihre Länge im Plan eintragen und ihn neu berechnen lassen.</translation>
    </message>
    <message>
        <source>Only where an animal was new on the first day, has been by itself with tools of its own, and a vet has found nothing in its droppings: {days} are usual. The count begins anew when another animal joins.</source>
        <translation>Nur wenn ein Tier am ersten Tag neu war, für sich allein und mit eigenem Werkzeug gehalten wurde und ein Tierarzt in seinem Kot nichts gefunden hat. Üblich: {days}. Kommt ein weiteres Tier dazu, beginnt die Zählung von vorn.</translation>
    </message>
    <message>
        <source>Write down on which days {food} are given and how much. What is left is taken out the same day.</source>
        <translation>Aufschreiben, an welchen Tagen es Futter gibt ({food}) und wie viel. Reste noch am selben Tag herausnehmen.</translation>
    </message>
    <message>
        <source>One for each animal, {prey} in all, thawed outside the kitchen. None to an animal that is about to shed. What is not eaten is taken out the same day.</source>
        <translation>Ein Futtertier je Tier, insgesamt {prey}, außerhalb der Küche aufgetaut. Keines für ein Tier, das kurz vor der Häutung steht. Was nicht gefressen wird, noch am selben Tag herausnehmen.</translation>
    </message>
    <message>
        <source>For a month about {monthly} {food}[, and {calcium} of calcium powder].</source>
        <translation>Für einen Monat etwa {monthly} {food}[ und {calcium} Kalziumpulver].</translation>
    </message>
    <message>
        <source>Ten to fifteen minutes in shallow lukewarm water that it can stand in, never left alone. Hatchlings more often: ask a reptile vet.</source>
        <translation>Zehn bis fünfzehn Minuten in flachem, lauwarmem Wasser, in dem das Tier stehen kann, nie unbeaufsichtigt. Schlüpflinge öfter: einen reptilienkundigen Tierarzt fragen.</translation>
    </message>
    <message>
        <source>Write the weight down, always at the same time of day. A loss of a tenth is a reason for a reptile vet within days.</source>
        <translation>Das Gewicht aufschreiben, immer zur selben Tageszeit. Ein Zehntel weniger ist ein Grund, innerhalb weniger Tage zum reptilienkundigen Tierarzt zu gehen.</translation>
    </message>
    <message>
        <source>Write the weight down, always at the same time of day. A loss of a tenth is a reason for a reptile vet within days. Measure the length too, and state both in the plan.</source>
        <translation>Das Gewicht aufschreiben, immer zur selben Tageszeit. Ein Zehntel weniger ist ein Grund, innerhalb weniger Tage zum reptilienkundigen Tierarzt zu gehen. Auch die Länge messen und beides im Plan eintragen.</translation>
    </message>
    <message>
        <source>Beak and claws of the usual length, eyes and nose clear, the shell hard and without soft or smelling places. A vet trims what is too long.</source>
        <translation>Schnabel und Krallen normal lang, Augen und Nase klar, der Panzer hart und ohne weiche oder riechende Stellen. Was zu lang ist, kürzt ein Tierarzt.</translation>
    </message>
    <message>
        <source>Claws of the usual length, no remains of shed skin about toes and tail, jaw firm, eyes clear. A vet trims what is too long.</source>
        <translation>Krallen normal lang, keine Häutungsreste an Zehen und Schwanz, Kiefer fest, Augen klar. Was zu lang ist, kürzt ein Tierarzt.</translation>
    </message>
    <message>
        <source>The last shed skin in one piece with both eye caps and the tip of the tail, no mites, mouth closed and clean.</source>
        <translation>Die letzte Haut in einem Stück, mit beiden Augenkappen und der Schwanzspitze; keine Milben, Maul geschlossen und sauber.</translation>
    </message>
    <message>
        <source>Skin smooth and of the usual colour, no sores, belly neither sunken nor swollen. Touch it only with clean wet hands or rinsed gloves.</source>
        <translation>Haut glatt und von gewohnter Farbe, keine wunden Stellen, Bauch weder eingefallen noch geschwollen. Nur mit sauberen, nassen Händen oder abgespülten Handschuhen anfassen.</translation>
    </message>
    <message>
        <source>Where the animal is new, or no vet has seen it yet: within {days}, with a faecal sample. Bring its weights.</source>
        <translation>Wenn das Tier neu ist oder noch kein Tierarzt es gesehen hat: höchstens {days} damit warten, eine Kotprobe und die Gewichtsliste mitbringen.</translation>
    </message>
    <message>
        <source>With a faecal sample and the list of its weights. Usual visits in a year: {visits}.</source>
        <translation>Mit Kotprobe und Gewichtsliste. Übliche Besuche im Jahr: {visits}.</translation>
    </message>
    <message>
        <source>With a faecal sample. Without it, or where it is ill, thin or in its first winter, the animal stays warm.</source>
        <translation>Mit einer Kotprobe. Ohne Untersuchung bleibt das Tier warm, ebenso wenn es krank, mager oder in seinem ersten Winter ist.</translation>
    </message>
    <message>
        <source>Water to drink and baths go on, so that the gut empties. The sheet “Winter rest” has the weeks.</source>
        <translation>Trinkwasser und Bäder gibt es weiter, damit sich der Darm leert. Die Wochen stehen auf dem Blatt „Winterruhe“.</translation>
    </message>
    <message>
        <source>From today at {cold}, dark and even; read the thermometer every day.</source>
        <translation>Ab heute bei {cold}, dunkel und gleichmäßig; das Thermometer jeden Tag ablesen.</translation>
    </message>
    <message>
        <source>Ask a vet below {ask_below}; end the rest below {stop_below}. End it too where the animal is wet, wakes or passes urine.</source>
        <translation>Unter {ask_below} einen Tierarzt fragen, unter {stop_below} die Ruhe beenden. Sie auch beenden, wenn das Tier nass ist, aufwacht oder Urin absetzt.</translation>
    </message>
    <message>
        <source>Warmth and light rise evenly to the usual; water to drink and to bathe in first.</source>
        <translation>Wärme und Licht gleichmäßig auf das Gewohnte steigern; zuerst Wasser zum Trinken und Baden geben.</translation>
    </message>
    <message>
        <source>Food again. One that does not eat within a week or two sees a reptile vet.</source>
        <translation>Wieder Futter geben. Frisst ein Tier nach ein bis zwei Wochen noch nicht, zum reptilienkundigen Tierarzt gehen.</translation>
    </message>
    <message>
        <source>Warm the probe in your hand: the device has to switch off or grow dim. Lay it back exactly where it was[, set to {setpoint}]. One that goes on heating is unplugged and replaced the same day.</source>
        <translation>Den Fühler in der Hand wärmen: Das Gerät muss abschalten oder herunterregeln. Den Fühler genau an seinen alten Platz zurücklegen[, Thermostat auf {setpoint}]. Ein Gerät, das weiterheizt, noch am selben Tag ausstecken und ersetzen.</translation>
    </message>
    <message>
        <source>At the height of the animal&apos;s back in the basking place, after half an hour of burning; write it into the plan. Without a meter, go by the date of replacement. Do not look into the lamp.</source>
        <translation>In Rückenhöhe des Tieres am Sonnenplatz, nach einer halben Stunde Brenndauer; den Wert im Plan eintragen. Ohne Messgerät gilt das Datum für den Ersatz. Nicht in die Lampe sehen.</translation>
    </message>
    <message>
        <source>Push its test button: the power has to go off. Where it does not, unplug the enclosures and call a licensed electrician. Where there is none, have one fitted. Check the timers afterwards.</source>
        <translation>Die Prüftaste drücken: Der Strom muss abschalten. Tut er das nicht, die Terrarien ausstecken und eine Elektrofachkraft rufen. Fehlt ein solcher Schalter, einen einbauen lassen. Danach die Zeitschaltuhren kontrollieren.</translation>
    </message>
    <message>
        <source>Push the test button of the alarm in the room of the enclosures. Where there is none, fit one.</source>
        <translation>Die Prüftaste des Melders im Raum der Terrarien drücken. Fehlt einer, einen anbringen.</translation>
    </message>
    <message>
        <source>Afterwards lay them side by side for an hour: those that differ by more than a degree are replaced.</source>
        <translation>Danach eine Stunde lang nebeneinanderlegen: Geräte, die um mehr als ein Grad abweichen, ersetzen.</translation>
    </message>
    <message>
        <source>[It is good for {life}. ]Sooner where the maker says so or the water tastes of chlorine.</source>
        <translation>[Sie hält {life}. ]Früher, wenn der Hersteller es vorgibt oder das Wasser nach Chlor schmeckt.</translation>
    </message>
    <message>
        <source>By its usual life it is worn out now, at the earliest on {earliest}. Keep a spare of every lamp. Let lamps cool and unplug them first; lamps with mercury are hazardous waste.</source>
        <translation>Nach der üblichen Lebensdauer jetzt verbraucht, frühestens am {earliest}. Für jede Lampe eine Ersatzlampe bereithalten. Lampen vorher ausstecken und abkühlen lassen; quecksilberhaltige Lampen sind Sondermüll.</translation>
    </message>
    <message>
        <source>It still shines, but gives less UV than the animals need; at the earliest on {earliest}, and a meter tells. Let it cool and unplug it first; lamps with mercury are hazardous waste.</source>
        <translation>Leuchtet noch, gibt aber weniger UV ab, als die Tiere brauchen; frühestens am {earliest}, Gewissheit gibt ein Messgerät. Vorher ausstecken und abkühlen lassen; quecksilberhaltige Lampen sind Sondermüll.</translation>
    </message>
    <message>
        <source>[{bed} are filled in. ]At the earliest on {earliest}, and at once where it smells or has mites or mould. Switch off and unplug mats first, and do it outside the kitchen.</source>
        <translation>[Füllmenge: {bed}. ]Frühestens am {earliest}, und sofort, wenn er riecht oder Milben oder Schimmel hat. Vorher Heizmatten ausschalten und ausstecken; außerhalb der Küche arbeiten.</translation>
    </message>
    <message>
        <source>The prices are of {date}. Older than a year, they say little of what things cost.</source>
        <translation>Stand der Preise: {date}. Sind sie älter als ein Jahr, sagen sie wenig darüber, was etwas kostet.</translation>
    </message>
    <message>
        <source>State ages, lengths, weights and hours burnt. What has to be replaced is in this calendar until {date} only.</source>
        <translation>Alter, Längen, Gewichte und Brenndauern angeben. Was zu ersetzen ist, steht in diesem Kalender nur bis {date}.</translation>
    </message>
    <message>
        <source>minutes for the daily look</source>
        <translation>Minuten für den täglichen Blick</translation>
    </message>
    <message>
        <source>minutes for a feeding</source>
        <translation>Minuten für eine Fütterung</translation>
    </message>
    <message>
        <source>feedings of a land turtle in a week</source>
        <translation>Fütterungen einer Dosenschildkröte in der Woche</translation>
    </message>
    <message>
        <source>feedings of a tortoise in a week</source>
        <translation>Fütterungen einer Landschildkröte in der Woche</translation>
    </message>
    <message>
        <source>feedings of a lizard in a week</source>
        <translation>Fütterungen einer Echse in der Woche</translation>
    </message>
    <message>
        <source>feedings of a snake in a week</source>
        <translation>Fütterungen einer Schlange in der Woche</translation>
    </message>
    <message>
        <source>feedings of a frog in a week</source>
        <translation>Fütterungen eines Froschs in der Woche</translation>
    </message>
    <message>
        <source>minutes for a change of water</source>
        <translation>Minuten für einen Wasserwechsel</translation>
    </message>
    <message>
        <source>minutes for a misting by hand</source>
        <translation>Minuten für ein Sprühen von Hand</translation>
    </message>
    <message>
        <source>minutes for the weekly care</source>
        <translation>Minuten für die wöchentliche Pflege</translation>
    </message>
    <message>
        <source>minutes for the monthly care</source>
        <translation>Minuten für die monatliche Pflege</translation>
    </message>
</context>
<context>
    <name>speaker</name>
    <message>
        <source>less than %1</source>
        <translation>weniger als %1</translation>
    </message>
    <message>
        <source>1 percentage point</source>
        <translation>1 Prozentpunkt</translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation>%1 Prozentpunkte</translation>
    </message>
    <message>
        <source>Something was found that has no words yet (%1).</source>
        <translation>Gefunden wurde etwas, für das es noch keinen Text gibt (%1).</translation>
    </message>
    <message>
        <source>result: %1</source>
        <translation>Ergebnis: %1</translation>
    </message>
    <message>
        <source>compared with: %1</source>
        <translation>verglichen mit: %1</translation>
    </message>
    <message>
        <source>The range is mostly due to this: %1.</source>
        <translation>Die Spanne kommt vor allem daher: %1.</translation>
    </message>
    <message>
        <source>Figures: %1</source>
        <translation>Zahlen: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>%1, the thickness of its board</source>
        <translation>%1, Dicke der Platte</translation>
    </message>
    <message>
        <source>%1: not stated, and nothing could be assumed</source>
        <translation>%1: nicht angegeben, und nichts ließ sich annehmen</translation>
    </message>
    <message>
        <source>%1: counted both ways, yes and no</source>
        <translation>%1: beides durchgerechnet, ja und nein</translation>
    </message>
    <message>
        <source>%1: taken as %2</source>
        <translation>%1: angenommen ist %2</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1: was %2, now %3</source>
        <translation>%1: bisher %2, jetzt %3</translation>
    </message>
    <message>
        <source>%1 decides this range most (%2 of it).</source>
        <translation>Diese Spanne bestimmt vor allem eines: %1 (%2 davon).</translation>
    </message>
    <message>
        <source>yes and no</source>
        <translation>ja und nein</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 pro Tag</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>tasks</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>how often is not known</source>
        <translation>wie oft, ist nicht bekannt</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <source>%1 times a day</source>
        <translation>%1-mal am Tag</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>jeden Tag</translation>
    </message>
    <message>
        <source>every %1 days</source>
        <translation>alle %1 Tage</translation>
    </message>
    <message>
        <source>every week: %1</source>
        <translation>jede Woche: %1</translation>
    </message>
    <message>
        <source>every week</source>
        <translation>jede Woche</translation>
    </message>
    <message>
        <source>every %1 weeks</source>
        <translation>alle %1 Wochen</translation>
    </message>
    <message>
        <source>every month</source>
        <translation>jeden Monat</translation>
    </message>
    <message>
        <source>every %1 months</source>
        <translation>alle %1 Monate</translation>
    </message>
    <message>
        <source>every year</source>
        <translation>jedes Jahr</translation>
    </message>
    <message>
        <source>every %1 years</source>
        <translation>alle %1 Jahre</translation>
    </message>
    <message>
        <source>As the plan states it.</source>
        <translation>Wie im Plan angegeben.</translation>
    </message>
    <message>
        <source>Worked out from the plan.</source>
        <translation>Aus dem Plan berechnet.</translation>
    </message>
    <message>
        <source>How often is not in the guidance. Decide it, with a reptile vet or an experienced keeper, and write it down.</source>
        <translation>Wie oft, steht nicht in den Empfehlungen. Mit einem reptilienkundigen Tierarzt oder einem erfahrenen Halter festlegen und aufschreiben.</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Grund: %1</translation>
    </message>
    <message>
        <source>Usual are %1 between. Why: %2</source>
        <translation>Üblicher Abstand: %1. Grund: %2</translation>
    </message>
    <message>
        <source>Wash your hands with soap afterwards, and keep all this out of the kitchen.</source>
        <translation>Danach die Hände mit Seife waschen und alles hier von der Küche fernhalten.</translation>
    </message>
    <message>
        <source>animals</source>
        <translation>Tiere</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>cleaning</source>
        <translation>Reinigung</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>Technik</translation>
    </message>
    <message>
        <source>replacement</source>
        <translation>Ersatz</translation>
    </message>
    <message>
        <source>health</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>winter rest</source>
        <translation>Winterruhe</translation>
    </message>
    <message>
        <source>plan and prices</source>
        <translation>Plan und Preise</translation>
    </message>
</context>
<context>
    <name>terms</name>
    <message>
        <source>Warm and cool side</source>
        <translation>Warme und kühle Seite</translation>
    </message>
    <message>
        <source>An animal that can&apos;t make its own warmth has to choose it. Heat therefore goes to one end of the box, the other stays cooler, and the difference between the two is part of every target.</source>
        <translation>Ein Tier, das keine eigene Wärme erzeugt, muss sie wählen können. Darum kommt die Wärme an ein Ende des Terrariums, das andere bleibt kühler, und der Unterschied gehört zu jedem Zielwert.</translation>
    </message>
    <message>
        <source>Basking place</source>
        <translation>Sonnenplatz</translation>
    </message>
    <message>
        <source>Where a lamp warms an animal from above. Its figure is what a body lying there feels, not the air beside it.</source>
        <translation>Wo eine Lampe ein Tier von oben wärmt. Der Wert gilt für einen Körper, der dort liegt, nicht für die Luft daneben.</translation>
    </message>
    <message>
        <source>Operative temperature</source>
        <translation>Operative Temperatur</translation>
    </message>
    <message>
        <source>What a body exchanges heat with: the air and all that radiates on it, as one figure. A thermometer in a small black globe reads about this.</source>
        <translation>Womit ein Körper Wärme austauscht: die Luft und alles, was auf ihn strahlt, in einem Wert. Ein Thermometer in einer kleinen schwarzen Kugel zeigt ungefähr das.</translation>
    </message>
    <message>
        <source>Ground level</source>
        <translation>Bodenhöhe</translation>
    </message>
    <message>
        <source>The air just above the bed, where the animal lives. Lay a shaded thermometer or hygrometer there to compare.</source>
        <translation>Die Luft dicht über dem Bodengrund, wo das Tier lebt. Zum Vergleich ein beschattetes Thermometer oder Hygrometer dorthin legen.</translation>
    </message>
    <message>
        <source>Surface temperature</source>
        <translation>Oberflächentemperatur</translation>
    </message>
    <message>
        <source>What an infrared thermometer reads on the bed or a stone. Under a lamp it is far above the air.</source>
        <translation>Was ein Infrarotthermometer auf dem Bodengrund oder einem Stein misst. Unter einer Lampe liegt es weit über der Luft.</translation>
    </message>
    <message>
        <source>Range and likely value</source>
        <translation>Spanne und wahrscheinlicher Wert</translation>
    </message>
    <message>
        <source>Nothing here is exact. A figure is given from its least to its greatest plausible value, with the likeliest between. What is not stated in the plan widens it; a measurement narrows it.</source>
        <translation>Nichts ist hier genau. Jede Größe reicht vom kleinsten zum größten glaubhaften Wert, der wahrscheinlichste liegt dazwischen. Was im Plan nicht angegeben ist, macht die Spanne weiter; eine Messung macht sie enger.</translation>
    </message>
    <message>
        <source>fits, tight, falls short, danger, not known</source>
        <translation>passt, knapp, reicht nicht, Gefahr, nicht bekannt</translation>
    </message>
    <message>
        <source>The five verdicts. Tight: the likely value is within its target, an end of its range is not. Falls short: the likely value misses it. Danger: someone may be hurt. Not known: a figure is missing that can&apos;t be guessed safely.</source>
        <translation>Die fünf Urteile. Knapp: Der wahrscheinliche Wert liegt im Ziel, ein Ende seiner Spanne nicht. Reicht nicht: Der wahrscheinliche Wert verfehlt es. Gefahr: Jemand kann Schaden nehmen. Nicht bekannt: Es fehlt eine Angabe, die sich nicht sicher schätzen lässt.</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Relative Luftfeuchte</translation>
    </message>
    <message>
        <source>How much of the moisture that air can hold at its temperature is in it. Warm the same air and the figure falls.</source>
        <translation>Wie viel von der Feuchte, die Luft bei ihrer Temperatur halten kann, in ihr ist. Wird dieselbe Luft wärmer, sinkt der Wert.</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Taupunkt</translation>
    </message>
    <message>
        <source>The temperature at which the air&apos;s moisture begins to settle. A pane that is colder fogs.</source>
        <translation>Die Temperatur, bei der sich die Feuchte der Luft niederzuschlagen beginnt. Eine kältere Scheibe beschlägt.</translation>
    </message>
    <message>
        <source>UV index</source>
        <translation>UV-Index</translation>
    </message>
    <message>
        <source>Strength of ultraviolet light as it acts on skin. It can only be measured with a meter or read from the lamp&apos;s own table: watts say nothing about it.</source>
        <translation>Stärke des ultravioletten Lichts, wie es auf Haut wirkt. Sie lässt sich nur messen oder der Tabelle der Lampe entnehmen: Watt sagen darüber nichts.</translation>
    </message>
    <message>
        <source>Ferguson zone</source>
        <translation>Ferguson-Zone</translation>
    </message>
    <message>
        <source>One of four groups of species by the UV index they were met in, from shade dwellers to sun baskers. The target for a species comes from its zone.</source>
        <translation>Eine von vier Gruppen von Arten nach dem UV-Index, bei dem sie angetroffen wurden, von Schattenbewohnern bis zu Sonnenanbetern. Der Zielwert einer Art folgt aus ihrer Zone.</translation>
    </message>
    <message>
        <source>Open share of the mesh</source>
        <translation>Offener Anteil des Gitters</translation>
    </message>
    <message>
        <source>How much of a screen is holes. It decides how much light, UV and moisture pass.</source>
        <translation>Wie viel eines Gitters aus Löchern besteht. Davon hängt ab, wie viel Licht, UV und Feuchte hindurchgeht.</translation>
    </message>
    <message>
        <source>Timed and always on</source>
        <translation>Zeitgeschaltet und Dauerstrom</translation>
    </message>
    <message>
        <source>Timed: on an outlet that a timer switches, for lamps. Always on: with a thermostat or for what must not stop at night.</source>
        <translation>Zeitgeschaltet: an einer Steckdose, die eine Zeitschaltuhr schaltet, für Lampen. Dauerstrom: mit einem Thermostat oder für alles, was nachts nicht ausgehen darf.</translation>
    </message>
    <message>
        <source>Thermostat and probe</source>
        <translation>Thermostat und Fühler</translation>
    </message>
    <message>
        <source>The thermostat keeps the place where its probe lies at the set temperature, and only that place. The probe&apos;s place is therefore part of the plan.</source>
        <translation>Der Thermostat hält die Stelle, an der sein Fühler liegt, auf der eingestellten Temperatur, und nur diese Stelle. Darum gehört der Platz des Fühlers zum Plan.</translation>
    </message>
    <message>
        <source>Residual current protection</source>
        <translation>Fehlerstromschutz</translation>
    </message>
    <message>
        <source>A switch that cuts the mains when current leaks away, through water or a person. Where water and mains are near one another it is a must.</source>
        <translation>Ein Schalter, der den Strom abschaltet, wenn er durch Wasser oder einen Menschen abfließt. Wo Wasser und Netzspannung nahe beieinander sind, ist er Pflicht.</translation>
    </message>
    <message>
        <source>Carapace length, snout to vent, total length</source>
        <translation>Panzerlänge, Kopf-Rumpf-Länge, Gesamtlänge</translation>
    </message>
    <message>
        <source>How animals are measured: the shell in a straight line for turtles and tortoises, from the tip of the snout to the vent for lizards and frogs, the whole animal for snakes.</source>
        <translation>Wie Tiere gemessen werden: bei Schildkröten der Panzer in gerader Linie, bei Echsen und Fröschen von der Schnauzenspitze bis zur Kloake, bei Schlangen das ganze Tier.</translation>
    </message>
    <message>
        <source>Rule for the floor</source>
        <translation>Regel für die Fläche</translation>
    </message>
    <message>
        <source>A published least size: law where the plan names a country that has one, else the advice of welfare or veterinary bodies. All that are known are shown, and the strictest counts.</source>
        <translation>Eine veröffentlichte Mindestgröße: Gesetz, wo der Plan ein Land mit einem solchen nennt, sonst der Rat von Tierschutz- oder Tierarztverbänden. Alle bekannten werden gezeigt, die strengste zählt.</translation>
    </message>
    <message>
        <source>Settled depth</source>
        <translation>Einfüllhöhe, gesetzt</translation>
    </message>
    <message>
        <source>How deep the bed is after some weeks. Loose material sinks, so more is bought than the box seems to need.</source>
        <translation>Wie tief der Bodengrund nach einigen Wochen ist. Lockeres Material setzt sich, darum wird mehr gekauft, als das Terrarium zu brauchen scheint.</translation>
    </message>
    <message>
        <source>Startup and running cost</source>
        <translation>Anschaffung und laufende Kosten</translation>
    </message>
    <message>
        <source>Startup is what is bought before the animal comes. Running is a year of electricity, food, bedding, vet, and of each thing that wears out its price over its life.</source>
        <translation>Die Anschaffung ist, was vor dem Tier gekauft wird. Laufend ist ein Jahr Strom, Futter, Bodengrund, Tierarzt und von allem, was verschleißt, der Preis auf seine Lebensdauer verteilt.</translation>
    </message>
    <message>
        <source>Winter rest</source>
        <translation>Winterruhe</translation>
    </message>
    <message>
        <source>Weeks in the cold that some species need and others don&apos;t survive. The program plans one only where you ask, and refuses where a species, its age or its health forbid it.</source>
        <translation>Wochen in der Kälte, die manche Arten brauchen und andere nicht überleben. Das Programm plant sie nur auf Wunsch und lehnt sie ab, wo Art, Alter oder Gesundheit sie verbieten.</translation>
    </message>
    <message>
        <source>Proving</source>
        <translation>Erproben</translation>
    </message>
    <message>
        <source>Running the finished box empty for at least a week and reading its thermometers, before an animal moves in.</source>
        <translation>Das fertige Terrarium mindestens eine Woche leer laufen lassen und seine Thermometer ablesen, bevor ein Tier einzieht.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>What your thermometers show in the finished box. The program fits its uncertain inputs to them, and its ranges become narrower.</source>
        <translation>Was Ihre Thermometer im fertigen Terrarium zeigen. Das Programm passt seine unsicheren Größen daran an, und seine Spannen werden enger.</translation>
    </message>
    <message>
        <source>Heat wave, power cut, lamp burnt out</source>
        <translation>Hitzewelle, Stromausfall, ausgebrannte Lampe</translation>
    </message>
    <message>
        <source>Drills: the plan is tried on the day something goes wrong, and the hours are told until an animal is harmed.</source>
        <translation>Störfälle: Der Plan wird an dem Tag geprüft, an dem etwas schiefgeht, und es wird gesagt, nach wie vielen Stunden ein Tier Schaden nimmt.</translation>
    </message>
</context>
<context>
    <name>tour</name>
    <message>
        <source>On the left you say what there is: animals, box, bed, lamps, room, prices. What you don&apos;t know stays empty; it is then taken as a range, and said.</source>
        <translation>Links sagen Sie, was da ist: Tiere, Terrarium, Bodengrund, Lampen, Raum, Preise. Was Sie nicht wissen, bleibt leer; es wird dann als Spanne angenommen und genannt.</translation>
    </message>
    <message>
        <source>The drawing is to scale. Drag a lamp, a bowl or a hide, or choose it and use the arrow keys. Every change can be undone.</source>
        <translation>Die Zeichnung ist maßstäblich. Eine Lampe, eine Schale oder ein Versteck ziehen oder wählen und mit den Pfeiltasten bewegen. Jede Änderung lässt sich zurücknehmen.</translation>
    </message>
    <message>
        <source>Above the drawing choose what lies over the floor: warmth, humidity or UV. Point at a place to read it.</source>
        <translation>Über der Zeichnung wählen, was über der Fläche liegt: Wärme, Feuchte oder UV. Auf eine Stelle zeigen, um sie abzulesen.</translation>
    </message>
    <message>
        <source>Findings say what is the matter, most serious first. Choose one: the field is opened, its place marked, and beside it stands why, with source and range.</source>
        <translation>Befunde sagen, was nicht stimmt, das Ernsteste zuerst. Einen wählen: Das Feld öffnet sich, die Stelle wird markiert, und daneben steht warum, mit Quelle und Spanne.</translation>
    </message>
    <message>
        <source>Hour by hour shows a winter and a summer day, and the drills: power cut, burnt lamp, heat wave.</source>
        <translation>Stunde für Stunde zeigt einen Winter- und einen Sommertag und die Störfälle: Stromausfall, ausgebrannte Lampe, Hitzewelle.</translation>
    </message>
    <message>
        <source>What if: move a cover or mist more often, and see at once what it would do, before the plan is changed.</source>
        <translation>Was wäre, wenn: eine Abdeckung verschieben oder öfter sprühen und sofort sehen, was es bewirken würde, bevor der Plan geändert wird.</translation>
    </message>
    <message>
        <source>Shopping counts whole packs, less what you have; tick what is on the shelf already.</source>
        <translation>Der Einkauf zählt ganze Packungen, abzüglich des Vorhandenen; abhaken, was schon im Regal steht.</translation>
    </message>
    <message>
        <source>Costs stand by sum, month and year. The prices are invented: use a list of your own from the menu Prices. Sheets for the shop are under File.</source>
        <translation>Kosten stehen nach Summe, Monat und Jahr. Die Preise sind erfunden: Eine eigene Liste gibt es im Menü Preise. Blätter für den Laden stehen unter Datei.</translation>
    </message>
</context>
<context>
    <name>verdicts</name>
    <message>
        <source>too hot</source>
        <translation>zu heiß</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>zu kalt</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>zu feucht</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>zu trocken</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>zu groß</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>zu klein</translation>
    </message>
    <message>
        <source>too strong</source>
        <translation>zu stark</translation>
    </message>
    <message>
        <source>too weak</source>
        <translation>zu schwach</translation>
    </message>
    <message>
        <source>too long</source>
        <translation>zu lang</translation>
    </message>
    <message>
        <source>too short</source>
        <translation>zu kurz</translation>
    </message>
    <message>
        <source>too much load</source>
        <translation>zu hohe Last</translation>
    </message>
    <message>
        <source>too little load</source>
        <translation>zu geringe Last</translation>
    </message>
    <message>
        <source>too many</source>
        <translation>zu viele</translation>
    </message>
    <message>
        <source>too few</source>
        <translation>zu wenige</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>zu viel</translation>
    </message>
    <message>
        <source>too little</source>
        <translation>zu wenig</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>falls short</source>
        <translation>reicht nicht</translation>
    </message>
    <message>
        <source>danger</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1 (may be %2)</source>
        <translation>%1 (vielleicht %2)</translation>
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
        <translation>UV-B in µW/cm² lässt sich nicht in einen UV-Index umrechnen: %1 können je nach Spektrum der Lampe alles von %2 bis %3 bedeuten. Mit einem UV-Index-Messgerät messen.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
</context>
</TS>
