<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message>
        <source>About Loamstead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;h3&gt;Loamstead %1&lt;/h3&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;p&gt;Plans indoor enclosures for land turtles, tortoises, lizards, snakes and frogs, and costs them.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later, without any warranty.&lt;/p&gt;&lt;p&gt;Built with Qt %1; runs with Qt %2 on %3.&lt;/p&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this program can&apos;t do for you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;ul&gt;&lt;li&gt;&lt;b&gt;Prove it before an animal moves in.&lt;/b&gt; The figures are predictions with a range. Run the finished enclosure empty for at least a week and read several thermometers.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Heat and fire.&lt;/b&gt; Keep every lamp and heater clear of anything that burns, guard what an animal can reach, use fittings rated for the heat, and fit a smoke alarm in the room.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Mains and water.&lt;/b&gt; Use a residual-current device, leave a drip loop in each cable, keep outlet strips above the water and never plug one strip into another. Leave electrical work to a licensed electrician.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Weight.&lt;/b&gt; A stand or floor has to be rated for the load; this is not a structural approval.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Animals.&lt;/b&gt; For illness and before any cool season ask a reptile vet. Wash hands after handling: reptiles and amphibians can carry Salmonella.&lt;/li&gt;&lt;li&gt;&lt;b&gt;Law.&lt;/b&gt; Keeping, moving or buying a species may need papers where you live. Ask your local authority.&lt;/li&gt;&lt;/ul&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New South Wales</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>EU, laboratories</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower edge above the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height above the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beam angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance, by its maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holder is rated for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dome on the mesh, diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guarded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air gap below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Burnt so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dimmer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dimmer level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control is rated for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It regulates by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switching on and off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dimming</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switching difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not placed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>placed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Probe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Probe from the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Probe from the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Probe above the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>always on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At a distance of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV index</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some of your guidance files were left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own guidance files have problems (%1). The files named under “Details” are not used; everything else is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plans indoor enclosures for reptiles and amphibians.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan to open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scalable drawing (*.svg);;Picture (*.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save sheets as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheets were not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comma separated (*.csv);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loamstead plans (*.loamstead.json);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enclosure 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price lists (*.json *.csv);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This price list can&apos;t be used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” can&apos;t be used. The prices are as they were.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each plan is worked out by itself, with the same guidance and prices. The change is that of the likely values. What is not sure of the one plan is mostly not sure of the other either, so a change is mostly surer than the ranges beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other plan: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This plan: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usable floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no rule known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inner floor of %1 less what animals can&apos;t walk on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Governing rule: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grown: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat balance of the enclosure, read as %1 (%2). Target of %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmth, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the plan states it, or its bracket where it does not. Where the room&apos;s loss per kelvin is stated, what all boxes give off is added in summer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm side less cool side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same heat balance: ground level on the warm side less that on the cool side, about two thirds of the length apart. What moves both sides alike does not widen its range.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hottest wall within reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance of each small piece of the walls with lamp light, air, radiation and its neighbours: the hottest one as high up as an animal reaches, mats apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hottest place of the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance of each small piece of what closes the top, covers included: the hottest face of them. Where it can be touched, mind it; what it is made of must bear it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hottest surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same heat balance: the hottest place that an animal can touch from above, furniture it can climb included, with the bed dry under the lamp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hottest when digging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same heat balance: the hottest place that an animal reaches by digging, down to the base.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same heat balance: the air of the lower half.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What all devices draw on average in this case, their thermostats and dimmers included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moisture balance: bowl, bed and misting against what the top and the panes let out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evaporation %1 a day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warm side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same vapour at the warm side&apos;s ground: warmer ground reads drier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What its moist floor gives off against what leaves by its entrance, by how much lighter moist air is. An animal in it makes it damper still.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same vapour in the air of the lower half.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours of light a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the time the lamps go on to the time they go off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Daylight at your latitude: %1 in midsummer, %2 in midwinter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electricity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connected load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The power of all devices, added up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What each device draws by day and by night, on average over the year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 timed, %2 always on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One for each device, by the supply it is planned on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A winter day %1, a summer day %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy in a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bed and weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to fill in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settled volume %1, and what settling takes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume of the panels times their density.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bed, damp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry mass of the settled bed and the water that it holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shell, bed, water, animals and the furniture whose weight is stated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure under the footprint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weight of all together over the floor it stands on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shared by all enclosures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of what it may carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything planned on this circuit, and what else is stated to run on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The power of all devices planned on this strip, added up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All enclosures that stand on it, with everything in them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rating not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Danger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Falls short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good to know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every uncertain input is moved within its spread until the readings are met as well as their accuracy and the model&apos;s own error make probable.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected %1 before any reading, %2 with them. Read less expected: %3 standard deviations of thermometer and model.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved by readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; target %2; %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2
Now %3
Target %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth of water in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is stated, against the body of the animals here and its height; the verdict counts the bowl&apos;s size too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length by width by depth, less a fifth for round corners and sloped sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To lift, %1 full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A kilogram for each litre, and the bowl where its weight is stated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn from the mains a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the source that is stated: %1. Reverse osmosis sends several times what it makes to the drain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not stated where the water comes from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water costs a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is drawn, at the price that is stated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter cartridges a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litres that pass them over the litres one is good for. Their makers set a greatest age besides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treated water a month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All water for bowls, and for amphibians the mist.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conditioner for one fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All bowls filled once, by the dose; the bottle&apos;s label counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conditioner a month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The treated water by the dose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bowls as often as they are changed, what evaporates from them, and what is misted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water a month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same over a month of 30.4 days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changes a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As stated, or as often as the species&apos; sheet asks for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Topped up a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What evaporates from the bowls in the solved balance of heat and moisture, from winter to summer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What evaporates from still water of the bowls&apos; area, by published correlations.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poured into the bed a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What evaporates from bed and mist in the solved balance of heat and moisture, less what is misted and what condenses and drips back: so much keeps the bed as damp as planned. Below nought it gets wetter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Winter rest, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May it be cooled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only animals of species that rest, well, of full weight and past their first winter may be cooled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under this weight more is lost than one per cent a month: ask a vet. At the weight under “Target” the rest ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end below %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be bought: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Already owned: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No price is known, so it is not in the total.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is changed or taken out under “Budget”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in the price list serves it, so it can&apos;t be ticked off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In use for %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long it has been in use is not stated: say so under “Budget”, for it tells when it has to be replaced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, owned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To buy: %1 of %2 lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, typically %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick what you have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, ground of the cool side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The joint balance of heat and moisture, solved anew for the cover and the misting that are tried. Likely values; how wide the ranges are is taken from the plan as it is. Misting counts as spread over the day. Nothing in the plan changes until you take it, which is one step to undo.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A quarter of the top stays open for fresh air: cautious, our own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At a back %1 over the base, on %2, %3 from the left and %4 from the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV index at the basking place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strongest on a place of the animal&apos;s size under the basking lamp. From the distance table or the meter reading of each lamp, its beam, its age and the mesh; never from watts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no need stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ferguson zone %1: %2. %3, by %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The most within reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strongest at an animal&apos;s back on the bed and on everything it can stand on. Where a lamp&apos;s readings don&apos;t reach it is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor without UV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The share of the floor where the index stays under a tenth, which a meter reads as none: under hides, under covers and beyond the light. The larger share counts what is not known as dark. Shade beside fittings is not counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Always a retreat without UV: Baines et al. 2016</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights over the base at which the strongest UV of the basking place lies inside the target and nothing within reach passes its upper end, tried centimetre by centimetre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height of the lamp for its zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height of %1 for its zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole range of the index lies inside it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only the likely index lies inside it there: the range is as wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the lamp&apos;s face to the back of an animal on what it can stand on. Nearer than the safe distance even the upper end of its UV may pass the most that any animal was met in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>safe distance not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV index there: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its readings reach from %1 to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Burning until the UV falls below the target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What all its lamps lose for each thousand hours, by the sheet of their kind. A new reading with the hours burnt says more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earliest on %1, by the hours that it burns a day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too little is known of this box to try anything out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For this trial the balance found no solution.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The top is no mesh: a cover would change nothing, so only misting can be tried.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No cover keeps clear of the lamps, so only misting can be tried.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ring: the plan. Dot: the trial. Hatched: target. Bar: range. Covers lie across the box from its ends, clear of what is hot, over %1 of the top at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bed %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor, and the walls folded out around it; front below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top, seen from above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan, seen from above; front below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section, seen from the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor and inner faces, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at ground level, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle %1 from the left, %2 from the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from the left, %2 from the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; %1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; stands in: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>condensation: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>condensation: coldest pane, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at ground level, target %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>surface, by infrared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground level, shaded thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>felt by the back (operative)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lamp light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV index  %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at a back, over the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside the %1  none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: open here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity at ground level, shaded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity of the lower air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dew point of the lower air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from before the last change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UVI %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UVI not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>basking place  %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at an animal&apos;s back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>My figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delivery, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tax on top, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set aside for surprises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To begin, all together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Startup cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a year, all together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What wears out counts with its price spread evenly over its life.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electricity is not in it: price of a kWh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (its UV fades)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To replace in the first year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spent in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So far, low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So far, typical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So far, high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net present cost at typical prices: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is as much as an even %1 a year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Budget sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The prices are invented for illustration. Write in your own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All amounts in %1, prices of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a price, to be added by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loamstead %1 · plan “%2” · worked out on %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>prices of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Danger: mend this before anything is switched on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not stated yet: one input, listed on the first sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not stated yet: %1 inputs, listed on the first sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not stated yet: please fill in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Predictions: run the finished enclosure empty for at least a week and read several thermometers before an animal moves in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fire: keep lamps and heaters clear of what burns, guarded, in heat-rated holders. Fit a smoke alarm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mains: use a residual-current device and drip loops, keep strips above the water, never chain them. Electrical work is for a licensed electrician; local codes decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight: stand and floor have to be rated for the load. This is no structural approval.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health: ask a reptile vet about illness and before any cool season. Wash hands after handling: reptiles and amphibians can carry Salmonella.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Law: keeping or passing on a species may need papers. Ask your local authority.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” can&apos;t be written: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shopping sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prices in %1, typical, as of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical %1; at low prices %2, at high prices %3. Lines without a price are not in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This animal must not be cooled: %1. Keep it warm and fed through the winter. There is no plan for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No rest is planned: the dates that are stated are over or not of the calendar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether this animal may be cooled is not known: %1. Until it is, no rest is planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reptile vet sees the animal, with a faecal sample, within the eight weeks before the first day without food. An animal that is ill, thin or in its first winter stays warm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vet&apos;s check stated: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked on, by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vet&apos;s telephone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By its end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light and heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest and highest read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week by week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 — %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask a vet below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the rest below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For an animal of %1 when the cold begins. If it weighs something else on that day, count anew: end the rest at a loss of %2, ask a vet at more than %3 a month. End it too if the animal is wet, wakes, or passes urine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Winter rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2), %3: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No winter rest is asked for in this plan.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>catalog</name>
    <message>
        <source>African spurred tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Red-footed tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crested gecko</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green and black poison frog</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dyeing poison frog</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leopard gecko</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Western hognose snake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common kingsnake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White&apos;s tree frog</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corn snake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Central bearded dragon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Royal python</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leopard tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eastern box turtle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three-toed box turtle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ornate box turtle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spur-thighed tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hermann&apos;s tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Horsfield&apos;s tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eastern blue-tongued skink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass pane as a cover or top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acrylic sheet (PMMA)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cotton towel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aluminium foil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibreboard cover or top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float glass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Foamed PVC sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plywood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Melamine-faced particleboard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fine coir</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coir chips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Topsoil without fertiliser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play sand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bark chips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sphagnum moss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expanded clay pebbles (drainage layer)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Extruded polystyrene board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cork underlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, red-foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, taken for large tortoises by analogy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, box turtle taken as a tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 5 by 2.5 shell lengths for two, box turtles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 5 by 5 shell lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 5 by 5 shell lengths, box turtle taken as a tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 5 by 3 shell lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed floor for small land tortoises (superseded)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed floor for medium land tortoises (superseded)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed floor for large land tortoises (superseded)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed floor for giant tortoises (superseded)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor by shell length, Egyptian tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed floor for two, African spurred tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed floor for two, giant tortoises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 8 by 4 shell lengths for two, veterinary column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor about 8 by 4 shell lengths, European tortoises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Indoor floor 36 by 24 in for one box turtle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Indoor floor 36 by 12 in for a box turtle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 4 by 2 ft for a Horsfield tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 5 by 3 ft for a Horsfield tortoise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 6 by 6 ft for an adult red-foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laboratory floor by body length, climbing frogs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laboratory floor by body length, semi-terrestrial frogs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laboratory floor by body length, dart frogs by analogy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box 50 by 50 by 50 cm for about five average dart frogs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box 50 by 50 by 50 cm for two large dart frogs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box 45 by 45 by 60 cm for an adult White&apos;s tree frog</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 4 by 3 body lengths (snout to vent) for a pair, leopard gecko</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 5 by 4 body lengths (snout to vent) for a pair, bearded dragon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed floor and height for two, bearded dragons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, ground lizards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, climbing lizards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, height 1.5, ground lizards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 3 by 2 total lengths, height 3, climbing lizards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed floor for an adult bearded dragon, +50 % for the second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box 120 by 60 by 60 cm for one adult bearded dragon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box 60 by 30 by 40 cm for one leopard gecko</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box 90 by 40 by 40 cm for a leopard gecko</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box 30 by 18 by 24 in for a leopard gecko</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box 45 by 45 by 60 cm for one crested gecko</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box 12 by 12 by 18 in for a crested gecko (older advice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor 120 by 60 cm for a blue-tongue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 1, width 0.5 of the total length, ground snakes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 1, width 0.5, height 1 of the total length, corn snake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 1, width 0.5, height 0.75 of the total length, royal python</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 1, width and height a third of the total length, royal python</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 1, width and height a third of the total length, by analogy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 3/4, width 1/3 of the total length, ground snakes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 3/4, width 1/3, height 1 of the total length, climbing snakes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 1, width 2/3 of the total length, ground snakes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 1, width 2/3, height 1 of the total length, climbing snakes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 0.70, width 0.40 of the total length, small ground pythons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 1, width 0.5 of the total length, ground boas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length 0.75, width 0.3 of the total length, colubrids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor by total length, ground snakes to 2.5 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor by total length, royal python</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor by total length, corn snake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor by total length, climbing snakes to 2.5 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laboratory floor by total length, snakes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed floor for an adult jungle carpet python, +50 % for the second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Illustrative prices, invented from memory, not offers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass enclosure, floor up to 0.27 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass enclosure, floor 0.28 to 0.41 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass enclosure, floor 0.41 to 0.73 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass enclosure, floor 0.73 to 1.1 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wooden enclosure, floor up to 0.41 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wooden enclosure, floor 0.41 to 0.73 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wooden enclosure, floor 0.73 to 1.1 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wooden enclosure table, floor 1.1 to 2.9 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plastic enclosure, floor up to 0.41 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plastic enclosure, floor 0.41 to 0.73 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plastic enclosure, floor 0.73 to 1.1 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand for a floor up to 0.41 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand for a floor of 0.41 to 0.73 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand for a floor of 0.73 to 1.1 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Halogen reflector flood, up to 60 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Halogen reflector flood, 61 to 100 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reflector flood, 101 to 160 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceramic heater, up to 100 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceramic heater, 101 to 250 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Radiant heat panel, up to 60 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Radiant heat panel, 61 to 150 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat mat, up to 12 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat mat, 13 to 25 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat mat, 26 to 60 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV-B tube, up to 24 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV-B tube, 25 to 80 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compact UV-B lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mercury vapour UV lamp, self-ballasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metal halide UV lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LED light strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixture for a UV-B tube up to 24 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixture for a UV-B tube of 25 to 80 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ballast for a metal halide lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceramic lamp holder with dome, up to 100 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceramic lamp holder with dome, up to 250 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wire guard for a lamp or heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plug-in dimmer for resistive loads, up to 300 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermostat, on and off, up to 600 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermostat, on and off, 600 to 1500 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dimming or pulse thermostat, up to 600 W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plug-in timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet strip, up to 4 outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet strip, 5 to 6 outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet strip, 7 to 12 outlets, switched apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plug-in residual current adapter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump mister with nozzles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Small ventilator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter cartridge or set of filters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid water conditioner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Digital thermometer with probe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Digital hygrometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Infrared thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kitchen scale, 1 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV index meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fine coir, compressed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coir chips, compressed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Washed play sand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peat without fertiliser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expanded clay pebbles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass cover pane, cut to size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acrylic cover sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibreboard cover, cut to size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water bowl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lidded box for a humid hide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flat rock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log or branch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Potted or artificial plant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feeding dish or tile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fresh greens and vegetables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feeder insects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frozen mice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frozen rats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Powdered fruit diet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture of fruit flies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calcium and vitamin powder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disinfectant safe for animals, ready to use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disposable gloves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plastic tub for quarantine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Veterinary check with faecal test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put aside for illness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adoption fee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Permit or registration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottle of 250 mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottle of 500 mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brick of 650 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>three bricks of 650 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block of 5 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block of 4.5 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 24 liquid quarts, loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 72 liquid quarts, loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 25 L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 40 L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 50 lb (half a cubic foot)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 20 L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 8 dry quarts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 24 dry quarts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 4 dry quarts, loosened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressed bale of 150 g, soaked and loosened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 10 L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pane of 0.25 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pane of 0.5 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sheet of 0.25 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sheet of 0.5 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>towel of 50 x 100 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>roll of 30 cm x 10 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>board of 0.5 m²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 insects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>500 insects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag of 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tub of 60 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tub of 230 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tub of 90 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottle of 1 L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box of 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one animal</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>courses</name>
    <message>
        <source>All devices together draw %1 on such a day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All devices together draw %1 in these %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While the lamps are on, %1 switches on every %2, for %3 each time: its probe swings from %4, the warm side from %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While the lamps are off, %1 switches on every %2, for %3 each time: its probe swings from %4, the warm side from %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is if it switches, and %1 apart, which the plan does not say.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So often wears a switch out, and a lamp: one that dims or pulses suits better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest while the lamps are off: cool side %1, warm side %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highest: basking spot %1, warm side %2, cool side %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day does not come to repeat itself: it ends up to %1 from where it began.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: within %2 of its final %3 %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: has not settled after %2, when it is at %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity at ground level on the cool side, likely: lowest %1, highest %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Misted at: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: some place stays between %2 and %3, outside which it comes to harm, through these %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hottest surface, likely: %1. Hottest when digging: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coldest floor, likely: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>winter day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>summer day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warming up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>covers forgotten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heat balance followed in time steps through days until one ends as it began; the room takes two hours to get from its night&apos;s temperature to its day&apos;s and back. The band is the range of the steady balance, laid about the likely course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heat balance followed in time steps, with everything switched on in a box that is as warm as the room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heat balance followed in time steps from the steady state before the fault. The earliest time is that of the unfavourable end of the range.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: some place stays below %2, above which it comes to harm, through these %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: some place stays above %2, below which it comes to harm, through these %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: even the coolest place may be over %2, where it comes to harm, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: even the warmest place may be under %2, where it comes to harm, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after %1 at the earliest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; likely not within these %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; likely after %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; likely so from the beginning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known: the balance of heat found no solution over these hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It breaks off after %1: what follows is not known.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>dry_spells</name>
    <message>
        <source>Unwatered in winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unwatered in summer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no least humidity on file to compare with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1 by day from the beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely holds %1 by day for %2 and more; under it after %3 at the earliest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds %1 by day for %2 and more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1 by day after %2 to more than %3 (likely %4)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1 by day after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The steady day and night are worked out again step by step while the upper 10 cm of the bed lose their water, with nobody misting and the bowls kept filled. A bed gives off less once part of its water is gone (FAO Irrigation and Drainage Paper 56).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>files</name>
    <message>
        <source>“%1” is larger than %2, the most that is read. It is probably not the file you meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” does not exist.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” can&apos;t be read: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is a folder, not a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” can&apos;t be written: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>standard input</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder “%1” can&apos;t be made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not one of the lists kept here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” can&apos;t be deleted.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>labels</name>
    <message>
        <source>on a winter day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a winter night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a summer day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a summer night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in a heat wave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in a power cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with the lamp burnt out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if the mat sticks on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with the covers forgotten off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the winter day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the summer day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first warming up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a power cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a burnt-out lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a mat that sticks on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a heat wave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a box whose covers are forgotten off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in summer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the shade at ground level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the animal&apos;s back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>basking spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warm side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cool side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can burn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can&apos;t burn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its thermostat holds it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No thermostat holds it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>away from those that already live here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>also where it is the first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longer side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shorter side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>always-on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a plain heating load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a lamp with a ballast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an electronic load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a motor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>substrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what lies below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>statutory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>welfare advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>veterinary advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>laboratory minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no particular place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a material is not on file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a material&apos;s figures are incomplete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something is not stated, and nothing on file stands in for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a length or thickness is not possible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the power of a device is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lamp has no distance table or meter reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the animal comes nearer than the lamp&apos;s readings reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the animal is further away than the lamp&apos;s readings reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place lies beside the lamp, and its beam is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it has burnt for a while, and how fast it fades is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a water bowl stands under a device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a mister sprays in the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is water in the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its species does not rest through the winter, and the cold harms it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is ill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is underweight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is its first winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is not stated whether it is well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its age is not stated, and an animal in its first winter must stay warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its weight is not stated, and the rest ends by weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no temperatures for a rest are on file for its species; it does not need one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first day is not a day of the calendar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rest that is stated is over; enter the next one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the latitude is not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the species here have no hours of light on file that suit all</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::AnimalsPage</name>
    <message>
        <source>none planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Winter rest from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks in the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vet&apos;s check before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Animals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One animal is a sound choice: most of these species live alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>animal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Species</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Condition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>underweight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length is of the shell for turtles and tortoises, from snout to vent for lizards and frogs, and the whole animal for snakes.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::BedPage</name>
    <message>
        <source>Bed, lowest layer first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settled depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the right, if sloped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water by volume</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::BoxPage</name>
    <message>
        <source>Box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inner length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inner width, front to back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inner height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wall thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open share of the mesh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Covers on the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height above the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walls of another make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backdrops and insulation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lining</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side of the wall</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::BudgetPage</name>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Official rules of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Years to look ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discount rate a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>typical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cheapest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fewest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the least left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as usual: the cheapest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wherever it is cheapest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set aside for surprises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Already on the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owned item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out or replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Need</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buy instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing: left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Again after</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::CommandFinder</name>
    <message>
        <source>What do you want to do?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A word of it, for example: print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to look for in the menus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the menus can do</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::ComparisonChoice</name>
    <message>
        <source>%1 as saved on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare with another plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 as kept at %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::ComparisonView</name>
    <message>
        <source>Only what &amp;differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;lose comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This plan beside the other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compared with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other plan is being worked out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. The new figures are being worked out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The prices are invented examples.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::CostsView</name>
    <message>
        <source>Line: typical. Band: low to high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typically %1 to begin, %2 a year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price list is in another currency than the plan, so nothing is costed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::CourseChart</name>
    <message>
        <source>Temperatures over hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>harmful over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>harmful under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours since the lamps went on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours since everything was switched on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours since it began</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::CoursesView</name>
    <message>
        <source>Day or drill that the chart shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sho&amp;w:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band: range. Hatched: target. Bar on top: lamps on. Drop: misting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hours are worked out last; they come in a moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the course comes to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is known of the hours of this box: its balance of heat found no solution.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::DrawingView</name>
    <message>
        <source>Drawing of the enclosure to scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the drawing shows over the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV index</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Show:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case that the drawing shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;on a:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>w&amp;alls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fold out the walls, with the top beside them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faint lines at round distances</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::ElementList</name>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::EnclosureBar</name>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy this enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove this enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enclosure in view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enclosure %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove enclosure</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::EquipmentPage</name>
    <message>
        <source>Lamps, heaters and other equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV readings of the chosen lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the maker&apos;s table or from a meter, without mesh between. One reading will do, a table says more. UV is never worked out from watts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Burnt when read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UVI %1 at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV reading</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::FieldSet</name>
    <message>
        <source>Change “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not an amount of money.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::FiguresView</name>
    <message>
        <source>Figures of the enclosure in view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What decides the range</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::FindingsView</name>
    <message>
        <source>Findings, most serious first</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::FirstSetup</name>
    <message>
        <source>%1 × %2, %3 high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A first plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is to live in it? Everything else follows from that. One animal is a sound choice: most of these species live alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Species</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How &amp;many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Length of each now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length is of the shell for turtles and tortoises, from snout to vent for lizards and frogs, and the whole animal for snakes. Leave it empty where you don&apos;t know it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How warm is the room? A thermometer left there for some days tells. What stays empty is taken as a wide range, and the results are as wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Winter, by &amp;day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Winter, by &amp;night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Summer, by d&amp;ay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Summer, by n&amp;ight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a &amp;heat wave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the smallest usual size that is large enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a size of my own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Length inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wi&amp;dth inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Height inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What box is it to be? The floor has to be enough for the animals when they are grown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Walls and base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: first plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: enough for them by every space rule of their sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: whether that is enough is not known, for no space rule applies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No usual size is enough for them. The largest, %1, falls short too: they need a room or a pen of their own, or fewer animals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is too small for them by the rules of their sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The animals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What heats and lights it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1 of %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Make this plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without lamps and heaters: I choose them myself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for lamps and heaters that keep every place in its target, in winter and in summer. This takes some seconds; you need not wait for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was found: too little is known for a prediction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These keep every place in its target, by the likely figures. Prove them with thermometers before an animal moves in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that was tried keeps every place in its target. These come nearest; the findings will say what is missing.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::FittingsPage</name>
    <message>
        <source>Bowls, hides and furniture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fitting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Animals can walk on it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::FormPanel</name>
    <message>
        <source>Chapters of the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Animals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Furniture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water and light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site and room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Budget</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::HideButton</name>
    <message>
        <source>Hide this line</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::HumidityStrip</name>
    <message>
        <source>Humidity at ground level over hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity at ground level, cool side</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::NewItemDialog</name>
    <message>
        <source>one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bought for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name, without a brand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;How it is sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pack h&amp;olds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pack &amp;costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit and useful life are taken from an item for the same purpose; the table shows them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs a name, a pack with an amount above zero, and a price.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::OverviewView</name>
    <message>
        <source>All enclosures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its cost</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::PlanDocument</name>
    <message>
        <source>Unnamed plan</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::PlanFiles</name>
    <message>
        <source>Unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” has changes that are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save them first?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save plan as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your work is still here. Save it under another name or in another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This plan can&apos;t be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” can&apos;t be opened. Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>… and %n more, listed under details.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceChoice</name>
    <message>
        <source>It is in %1 and the other one in %2. Lists of one currency can be used together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a price list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the price list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>prices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price list was not saved</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceDifferenceDialog</name>
    <message>
        <source>Two price lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What differs between the two price lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows that differ: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price-difference</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceEditor</name>
    <message>
        <source>What is wrong with the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Prices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;List and terms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show rows with…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show only rows with this text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;item…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Further pac&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another size of the item that is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes the chosen packs out of the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prices, a row for each pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First mend what is wrong with the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Further pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price list was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price list has changes that are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price list has changes that are not saved, and can&apos;t be saved before what is wrong with it is mended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Discard them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on &amp;editing</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceListsDialog</name>
    <message>
        <source>Price lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use it t&amp;oo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buys from several lists, each a place of its own, wherever the whole comes cheapest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside the one in use…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take in a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Write it to a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can&apos;t be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comes with the program; a copy of it can be changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept with the program as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A file of its own: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prices of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it &amp;off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price list was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a price list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete this price list?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is deleted. It can be taken back from the waste bin where the desktop has one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price list was not deleted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to compare with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list in use can&apos;t be read any more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceTableModel</name>
    <message>
        <source>Change “%1”</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::PriceTerms</name>
    <message>
        <source>“%1” is not an amount of money.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not what delivery costs. Write one price, or the least, the typical and the most with dashes between.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it is sold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name of the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you will know it by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Date of the prices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year-month-day, for example 2026-11-01</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its three letters, for example EUR</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the prices were taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought &amp;at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What kind of place: shop, online, club. It stands beside each line of an order from several places.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The prices are &amp;invented examples</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every sheet with such prices says so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change whether the prices are invented</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>De&amp;livery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it costs to have an order brought: one price, or least – typical – most. Empty: it is fetched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Free from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goods of this much are brought for nothing. Empty: never.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First say what delivery costs, then from how much on it is free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ta&amp;x on top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In per cent of goods and delivery. Empty: it is in the prices.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a share in per cent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least o&amp;rder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smaller orders of goods are not taken. Empty: all are.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::QuantityField</name>
    <message>
        <source>Not stated. The program uses %1 meanwhile.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a figure in %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This must lie within %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::ReadingsPage</name>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermometer readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings from the finished box, hours after anything was changed, narrow what is expected. They hold for the box as it is planned here: remove them when lamps, covers or places change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accuracy, plus or minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::ResultsPanel</name>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour by hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shopping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All boxes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working out the new figures; these are the last ones.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::Sheet</name>
    <message>
        <source>cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is chosen. Tab goes from one thing to the next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resize %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Show in the form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Turn by a quarter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Align with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the &amp;left wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the &amp;right wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the &amp;front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the &amp;back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the middle of the l&amp;ength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the middle of the &amp;width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;maller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Whole box</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::ShoppingView</name>
    <message>
        <source>&amp;Leave it out of the order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shopping list; the space bar ticks off what you have</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have it? Item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed because</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::SitePage</name>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you don&apos;t know, leave empty: the program then works with the range shown in grey and says so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room in winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room in summer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bad days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room in a heat wave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room&apos;s loss per kelvin, if boxes warm it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sun reaches the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place and electricity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latitude, north is positive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of a kWh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filtered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reverse osmosis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the drain for each part made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cartridge is good for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of a m³, drain included</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Circuits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breaker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything else on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet strips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  on circuit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timed outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Always-on outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Residual-current protection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated load, by its maker</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::TableBar</name>
    <message>
        <source>Co&amp;py as table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;xport CSV…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies the whole table, for a text or a spreadsheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saves the whole table as a file for spreadsheets</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::WaterPage</name>
    <message>
        <source>Moisture and water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Misting a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In how many mistings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water changes a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours of light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamps on at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamps off at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Through the year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with the sky</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::WelcomeBar</name>
    <message>
        <source>&lt;b&gt;This is an invented example.&lt;/b&gt; Change anything and watch the answers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a plan…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::WhatIfView</name>
    <message>
        <source>Top &amp;covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the top that is covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Misted a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water misted a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take into the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back to the plan’s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::WhyPane</name>
    <message>
        <source>Why this figure or finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show in the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it was worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With these numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a line to see why it says what it says.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::Window</name>
    <message>
        <source>Leave it out of the order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take what was tried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buy “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loamstead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for remedies…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loamstead did not end properly. There is unsaved work on “%1” from %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recover it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask again next time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;First plan, step by step…</source>
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
        <source>Open the e&amp;xample</source>
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
        <source>&amp;Print sheets…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets as P&amp;DF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Export the drawing…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no longer there. It is taken off this list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear this list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep as comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remembers the plan as it stands, until the window is closed, and compares with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With this plan as last &amp;saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With &amp;another plan…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the plan that was ke&amp;pt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close the comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Prices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price &amp;lists…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which price list is in use; edit, copy, take in, write out, compare and delete lists.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Use a price list file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the &amp;invented prices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Metric (cm, kg, °C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;US (in, lb, °F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the &amp;desktop</source>
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
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find a command…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Loamstead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One moment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The figures are still being worked out. Try again in a moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the shopping list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shopping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheets were saved as “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::YearStrip</name>
    <message>
        <source>The year by months: hours of light and kilowatt-hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamps on (filled), day outside (dashed)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kWh a month, with its range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::YearView</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lamps follow the day outside, held within what the sheet asks for, about the middle of the times that are stated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day outside on the 16th: %1.
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the sky, on the 16th: %1 of light, from %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The animals rest in the cold: on the 16th %1 of the usual light and heat runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day length: Forsythe, Rykiel, Stahl, Wu &amp; Schoolfield 1995. Lag of the cold behind the sun: Trenberth 1983 (from memory). The cosine is our own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours of light and kilowatt-hours by month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light, h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside, h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kWh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 h, %3 kWh</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>loam::desk::YearsChart</name>
    <message>
        <source>Cost over the years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spent so far, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Years; 0 is the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After %1 years: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>names</name>
    <message>
        <source>basking spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warm side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cool side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>animal&apos;s back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>infrared thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shaded thermometer at ground level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>computed, not read from an instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: doesn&apos;t fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: the readings don&apos;t fit together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: outside the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: lamps on or off?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: at which dimmer level?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>winter day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>winter night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>summer day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>summer night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat wave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lamp burnt out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mat stuck on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>covers forgotten off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Controls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Furniture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measuring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hygiene</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>statutory figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>welfare advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>veterinary advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>laboratory minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>derived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second-hand, unconfirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from memory, unconfirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>electricity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>replacement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>substrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>health</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>land turtles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tortoises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lizards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>snakes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frogs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flood lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV tube</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>compact UV lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mercury vapour lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metal halide lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LED strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ceramic heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>radiant panel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat mat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mister</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water bowl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humid hide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feeding dish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screen top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glass top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>board top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lining inside the front wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lining outside the front wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lining inside the back wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lining outside the back wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lining inside the left wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lining outside the left wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lining inside the right wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lining outside the right wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overhead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the back wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the front wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the left wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the right wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sex not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>female</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>male</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>numbers</name>
    <message>
        <source>1 day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (likely %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, typically %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>places</name>
    <message>
        <source>cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>substrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>animal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>animals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owned item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change of needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whose law applies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price of electricity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the water comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres to the drain for each litre made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what a cartridge is good for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether conditioner goes into the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price of a cubic metre of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether it is well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>winter rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first day without food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks in the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vet&apos;s check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the lamp holder may take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how the thermostat regulates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the control may feed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours of light through the year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>summer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature by day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature at night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature in a heat wave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>duration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the room loses per kelvin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether sun reaches the enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>circuits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rated current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what else runs on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet strips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timed outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>always-on outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fed from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>residual-current protection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it may carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enclosures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>id</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickness of the walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickness of the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open share of the mesh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>walls of another make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>linings of walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side of the wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>covers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place along the length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place towards the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height of the lower edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height above the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>species</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth at the right end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fittings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rotation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether animals walk over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where it sits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beam angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearance from what can burn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diameter of its dome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switching difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mistings in a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether it has a guard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what lies below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours burnt so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mesh in front of the meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours burnt when the UV was read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>distance table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV index</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timed or always on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>control</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dimmer level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place of the probe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>misting in a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water changes in a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accuracy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lamps on or off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what you own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>years to look at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>discount rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how packs are chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changes of the needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>need</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lines of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bought again after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where you buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reserve</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>prices</name>
    <message>
        <source>A name can&apos;t be empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a price. Write a number such as %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not an amount. Write one number above zero, or the least, the likely and the most with dashes between: 55 – 60 – 65.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a span. Write it as 75 – 100, open to one side as 75 –, or leave it empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a useful life. Write one number, the least, the likely and the most with dashes between, or leave it empty where it is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A generic name, in all rows of this item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kind of need that the item meets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which lamp watts, floor area in m² or number of outlets it fits: 75 – 100, 75 –, or empty where it fits all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it is sold, as it stands on the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the unit is in a pack: one number, or least – likely – most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the item is counted in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least a pack costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a pack costs most of the time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The most a pack costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the pack can be bought now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of a pack as bought, for carrying it home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lasts, months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Useful life: one number, or least – likely – most; empty where it is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lasts, hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Useful life in hours of use: one number, or least – likely – most; empty where it is not known</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>problems</name>
    <message>
        <source>lower-case letters and digits, in words joined by single hyphens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letters, digits, hyphens and underscores, beginning with a letter or digit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a time of day such as 07:30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a date such as 2026-11-25</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the form %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an object in braces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list in square brackets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>text in quotation marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>true or false</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>null</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the length from snout to vent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the length of the shell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the total length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not right (%1).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>%1 points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wider range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>narrower range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dearer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cheaper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>better</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smaller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can be walked on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy in a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a winter day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a summer day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heavier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lighter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can&apos;t be told</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warmer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>damper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(none)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Costs, at typical prices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net of what is owned; lines without a price are not in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To run, per year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is used up, and each replacement spread evenly over its life.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of that, electricity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net present cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As a sum each year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electricity in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no: price not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought in different numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 costs no more to start and no more to run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What %1 costs more to start comes back in %2 by what it costs less to run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 costs no less to start and no less to run: nothing comes back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 costs less to start and more to run: after %2 it has cost more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether it pays back is not known: a tariff is missing, different things have no price, or the price list is in another currency.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing: both orders are the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First:  </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assessed as of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The prices are invented examples.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due again about every %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of that, delivery by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the price list states it; goods of enough may be brought for nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of that, tax at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It comes on top of goods and delivery there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To run, a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sum of the lines under “What runs up in a year”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the head, of %1 animals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it costs to run, shared out evenly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What runs up in a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electricity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State the price of electricity under “Site and room”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All payments of the horizon at typical prices, later ones discounted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equivalent annual cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The even yearly payment that has the same net present cost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the rest of a life</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To start and to run at today&apos;s prices, nothing discounted, for %1: %2. In round figures, for nobody knows prices of decades ahead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The year ahead: electricity by the season, replacements whole in the month in which their likely life ends, the rest evenly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typically: electricity %1, replaced %2, the rest %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To replace within a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is worn out within the year ahead by its likely life.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, perhaps from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its UV falls below what its animals need before it is worn out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sum of the shopping list, net of what is owned, and what is set aside for surprises. Lines without a price are not in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>electricity, whose price is not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in these sums, for want of a price: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prices of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, invented for illustration: put in your own before you decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Costs: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Things without a price, not in the total: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The prices are invented examples of %1. Put your own in their place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>amount %1 → %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in stock again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no longer in stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the list is more than %1 months old; look its prices up again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 months old on %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in stock: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No price for: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price list: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of:         </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place:      </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Currency:   </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds:      </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>items: %1, packs: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No price for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first list is in %1 and the second in %2: their prices are not compared.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 beside %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only in the second list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only in the first list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another need, unit or size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another name or category</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing else differs: items, packs, amounts and stock are the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed packs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only in the second list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only in the first list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All enclosures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shopping list: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total of these lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical prices as of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cheapest to buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cheapest over the years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the widest margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>watts not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermostat at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dimmer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>always on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  Box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2 × %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  Top covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  Misting, a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known: the price list is in another currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electricity is not in it: its price is not stated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin, ranges and all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missed, likely values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> over all zones, every dimmer at one setting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stands in the way:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Besides, what no equipment settles:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the bed is too shallow for its animals; it was filled up to what they dig.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the box is too small for its animals; a larger one of a usual size was taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the box is too small for its animals, and stayed as it is: no usual size is enough, or it was to be kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: its climate can&apos;t be computed from what the plan states, so it was left as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that meets every target can be had for what may be spent. The least to begin with is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be suggested.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These meet every target that equipment can meet, in winter and summer, by the likely value; no end of a range and no drill is a danger. Where an end of a range misses a target, the margin is negative.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that was tried meets every target. These come nearest:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets of equipment that were worked out: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prove any of them with thermometers for several days before an animal moves in. Wiring is an electrician&apos;s work; an ill animal is a vet&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cost not known: the price list is in another currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>misting %1 a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 to begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They narrow: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour by hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, of which %2 can be walked on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; %1 asked for by “%2”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may be outgrown in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the balance of heat did not close: not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draws %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: fill in %2, %3 when damp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 connected, %2 a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month, typical prices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>electricity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the rest of a life (%1, %2): about %3 in all at today&apos;s prices, in round figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goods, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delivery, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tax on top, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price list is in another currency than the plan, so nothing is costed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  of that, electricity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  by the head, of %1 animals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year %1, in all so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same as a sum each year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The prices are invented examples. Put your own in their place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the place of %1, which is out of stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings, the most serious first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing falls short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bear in mind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not stated in the plan, and what was assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the floor has none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 of the floor has none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 from a back on %3 at the nearest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; keep at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no height of the lamp puts it inside the target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside the target with %1 at %2 to %3 above the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely inside the target with %1 at %2 to %3 above the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>falls below the target after about %1 of burning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, on %1 (earliest %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV index</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; target %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the most within reach is %1, on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weigh on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ask a vet below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end it below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>week of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by its end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 a day, %2 a month: changed %3, topped up %4, misted %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>poured into the bed to keep it as damp: %1 a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds %2 and weighs %3 full: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conditioner %1 a fill, %2 a month for %3 of treated water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>source: %1; drawn from the mains %2 a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filter cartridges a year, by volume: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sky, h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kWh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Winter rest</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>seasons</name>
    <message>
        <source>winding down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warming up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filtered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reverse osmosis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may be cooled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must not be cooled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No food. Water to drink and a bath every other day, so that the gut empties. In the first half as warm as ever, in the second warmth and light fall evenly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark, and at an even temperature. Look at the thermometer&apos;s log every day, weigh every week, and let fresh air in each time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the usual warmth and light within days. A bath first, then food. If it does not eat within a week, see a vet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What each device draws on a winter and on a summer day, joined by a cosine whose coldest day comes 27.5 days after the shortest; the range covers a lag from none to twice that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What each device draws on a winter and on a summer day. The latitude is not stated, so each month may be a winter&apos;s or a summer&apos;s, and the range covers both.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>sentences</name>
    <message>
        <source>the room on a winter day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the room on a winter night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the room&apos;s humidity in winter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the room on a summer day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the room on a summer night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the room&apos;s humidity in summer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the room in a heat wave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the length of a power cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the room in a power cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far a room strays from what is stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far a room&apos;s humidity strays from what is stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what else runs on the circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what a strip may carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timed outlets of a strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>always-on outlets of a strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the open share of the mesh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the thickness of a panel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how large the entrance of a hide is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how still the air in a hide is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the height of a fitting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the depth of water in a bowl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switching difference of a thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how full a bowl is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much water evaporates from a bowl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much is misted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how often the water is changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what reverse osmosis sends to the drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the length of a bowl over that of the shell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the width of a bowl over the length of the shell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the weeks without food before the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the weeks of warming up after the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the loss of weight that ends a winter rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the loss of weight in a month of rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how long a vet&apos;s check counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the dose of conditioner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the height of a lamp above the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how long a lamp has burnt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how the UV of a lamp falls with distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the air gap under a mat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far a device strays from its rated power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the accuracy of a thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much a bed settles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far coir expands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which quart a bag means</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visits to the vet in a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>disinfectant in a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gloves in a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calcium in a month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the years looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the discount rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the reserve for what always comes on top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how well air takes heat from surfaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how fast air passes through the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how fast water evaporates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how leaky the box is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how well the air in the box mixes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much of the heat that the mesh catches comes back into the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the model itself leaves open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the temperature of the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the humidity of the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how damp the bed is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how well {0} conducts heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how well damp {0} conducts heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how well {0} gives off radiant heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much lamp light {0} lets through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much lamp light {0} takes up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much air {0} lets through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how damp {0} is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far {0} dries out under a lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how wet the surface of {0} is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the power of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much of its power {0} radiates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much of its power {0} gives to the air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how wide the beam of {0} is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” ({1}) must not be larger than “{2}” ({3}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exactly one of these must stand here: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a format that is known. The file is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The size classes must ascend, and only the last may leave out its upper end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shares add up to {0}, and they can&apos;t be more than 1 together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is missing. It is needed for the use “{1}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has too many decimals: {1} has {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a kind of need. Write it as two parts with a point between them, such as “substrate.bark”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such date: “{0}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It names the space rule “{0}”, which no file has.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It names the material “{0}”, which no file has.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It names “{0}” as a substrate, and the material&apos;s file does not list that use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It names the space rule “{0}”, which goes by {1:measure}, and the sheet gives {2:measure}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in the price list serves “{0}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no figures for equipment of the kind “{0}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A quotation mark is opened and never closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is text beside a quoted cell. Put the whole cell in quotation marks, and double those inside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are too many rows; at most {0} are read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row has {0} cells, and the header has {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The column “{0}” is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a known column.[ Did you mean “{1}”?]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The column “{0}” stands here twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a number. Write it in digits with a point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” must be “true” or “false”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” differs from “{1}” in the item&apos;s first row. All rows of an item must agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no rows below the header.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reptiles and amphibians can carry salmonella. Wash your hands after each contact, keep their things out of the kitchen, and take extra care with small children and ill people.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeping this species may need a permit or papers where you live ({species}). Ask the authority before you buy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a vet who treats reptiles and amphibians before an animal moves in. This program does not replace one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed wiring is an electrician&apos;s work. The figures here concern what is plugged in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The load is an estimate. It does not show that a floor or a piece of furniture holds it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep a new animal apart for at least {days_min}[, {resident}].</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the finished enclosure for at least {days_min} with thermometers in it before an animal moves in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This species may rest through the winter ({species}). The temperatures here are for animals that are awake and well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a long commitment[: a life of {band}] ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{species}: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether {animal} may be cooled for the winter is not known: {reason}. Until then no rest is planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No vet&apos;s check is stated for {animal} before the winter rest. It belongs in the {days} before the first day without food.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vet&apos;s check of {animal} is not in the {days} before the first day without food, so it tells nothing of this rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rest of {animal} is too long: {weeks} in the cold. At most {max} is on file ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Winter rest of {animal}: no food from {begins}, at {band} from {cold_from} to {cold_until}, usual care from {ends}. Weigh it every week, and end the rest where it has lost {stop:percent}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{animal} has to rest in a place that stays at {band} day and night, with a thermometer that logs it. A lived-in room is too warm[: this one is at {room} on a winter day].</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cover} ({material}) is {distance} from {lamp}. It should be at least {clearance} away: {short_by} more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cover} ({material}) can catch fire: it is only {distance} from {lamp} and should be at least {clearance} away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far {cover} ({material}) is from {lamp} is not known. It should be at least {clearance} away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lamp} is only {distance} from the {part} ({material}), which can scorch. It should be at least {clearance} away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lamp} is only {distance} from the {part} ({material}), which can catch fire. It should be at least {clearance} away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far {lamp} is from the {part} ({material}) is not known. It should be at least {clearance} away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An animal that digs down above {mat} meets {range} {case}. {regulated}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An animal that digs down above {mat} meets {range} {case}. That is warmer than the {warn} it should lie on for long. {regulated}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An animal that digs down above {mat} can be burnt: it meets {range} {case}, and {max} is the limit. {regulated}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pane at {mat} reaches {range} {case}; the limit is {max}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pane at {mat} can burn an animal that leans on it: it reaches {range} {case}, and {max} is the limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wall beside {lamp} can burn an animal that leans on it: {height} above the base it reaches {range} {case}, and {max} is the limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {standing_on}, an animal reaches {reach} above the base and comes within {gap} of {lamp}. It should stay at least {needed} away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lamp} burns at a touch and has no guard. From {standing_on}, an animal reaches {reach} above the base, {gap} from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sun reaches the enclosure. Behind glass it can overheat an animal within a short time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not stated whether sun reaches the enclosure. Behind glass it can overheat an animal within a short time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sun reaches the enclosure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a while on {course} the hottest surface gets hotter than it stays: {range}, {hour} after the lamps go on. The limit for animals that stay on it is {max}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a while on {course} a surface can burn an animal that stays on it: it reaches {range}, {hour} after the lamps go on, and {max} is the limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heated and dried by a lamp, the surface[ of {on}] reaches {range} {case}; the limit for animals that stay on it is {max}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heated and dried by a lamp, the surface[ of {on}] can burn an animal that stays on it: it reaches {range} {case}, and {max} is the limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hottest surface that an animal can touch reaches {range} {case}; the limit is {max}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hottest surface that an animal can touch can burn it: {range} {case}, and {max} is the limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no place cool enough {case}: the coolest is {range}, and {max} is the most an animal bears ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no place warm enough {case}: the warmest is {range}, and {min} is the least an animal bears ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of the box passes {limit}, what an animal bears ({species}), {case}: at worst after {earliest}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole box is likely to grow too hot {case}: even the coolest place passes {limit}, the most an animal bears ({species})[, after {likely}], at worst after {earliest}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole box is likely to grow too cold {case}: even the warmest place falls below {limit}, the least an animal bears ({species})[, after {likely}], at worst after {earliest}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole box may grow too hot {case}: at worst even the coolest place passes {limit}, the most an animal bears ({species}), after {earliest}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole box may grow too cold {case}: at worst even the warmest place falls below {limit}, the least an animal bears ({species}), after {earliest}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{circuit} is overloaded: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{strip} is overloaded: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stand} is overloaded: it carries {range}, and it is rated for {max}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV from {lamp} is too strong at {distance}, the nearest an animal comes: UV index {range}, and {max} is the most it should meet ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{device} is too strong for its holder: {likely}, and the holder is rated for {max}. It overheats.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{device} is too strong for its control: {likely}, and the control is rated for {max}. It overheats.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water in {fitting} is {range} deep, deeper than the smallest animal here is high, {max} ({species}). An animal that can&apos;t climb out drowns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How deep the water in {fitting} is is not stated. It may be deeper than the smallest animal here is high, {max} ({species}), which can drown it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{animal} must not be cooled for the winter: {reason}. No rest is planned, and all figures are for an animal that stays warm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it run this long before you trust what its thermometers say, and run it for some days before an animal moves in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it shut. Wrap the box in blankets, away from lamps and heaters: they come on again with the power. Switch them off until the blankets are gone. Bottles of warm water, wrapped in cloth, may stand at one side. Never heat with a flame. An animal that is limp or doesn&apos;t respond should be seen by a vet who knows such animals; it is warmed slowly, never in hot water or on a hot surface.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep a spare of each lamp that heats. Change it with the power off and the holder cold. Where no spare is at hand before the time named here, house the animal in a room that is warm enough. Ask a vet where it has been too cold for long or stops eating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unplug the mat, and use it again only with another thermostat. Take the animal off it. Burns from below don&apos;t always show at once: have a vet look at an animal that lay on it. A cut-out of its own, apart from the thermostat, keeps this from happening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch off what heats, keep only the light that is needed. Shade the room, let in air by night, offer fresh water. Before the time named here bring the animal to a cooler room. One that gapes, is frantic or goes limp needs a vet at once; on the way it is cooled gently, never with ice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the covers back, clear of all lamps, and look again in a few hours. Where that may not be noticed in time, fix them so that they can&apos;t be left off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What else runs on {circuit} is not stated. The enclosures alone draw {likely}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{circuit} is near its limit: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What {strip} may carry is not stated. It feeds {likely}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{strip} is near its limit: {range} runs on it for hours, and {max} is the most that should ({rating} at {voltage}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{strip} has too few {supply} outlets: {used} are needed, and it has {outlets}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many {supply} outlets {strip} has is not stated. Needed: {used}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{strip} is plugged into {fed_from}. Strips fed by strips overheat at the plug.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{strip} has no residual-current protection, and there is water near it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not stated whether {strip} has residual-current protection. Near water it should.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{strip} names the circuit “{circuit}”, which is not in the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not stated where {device} ({power}) is plugged in, so its load is on no strip and no circuit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not stated whether {device} is timed or always on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The power of {device} is not stated. For its kind, {range} was taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{device} should not run on a dimmer: it is {load}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{device} should not run on a thermostat: it is {load}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{device} gives light, and its thermostat switches it on and off. That flickers by day and shortens the lamp&apos;s life.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{device} ({power}) runs without a thermostat. Nothing stops it on a warm day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not stated where the thermostat of {device} has its probe, so it counts as unregulated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not stated what temperature the thermostat of {device} is set to, so it counts as unregulated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{device} is on the timer, so it is cold at night, when its warmth may be needed most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water is near mains voltage: {reason}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{device} ({power}) gets hot and needs a heat-rated holder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is too large: {1:bytes}, and at most {0:bytes} are read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text is not valid UTF-8 at line {0}, column {1}. Save it as UTF-8.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not valid JSON at line {0}, column {1}. Look for a missing comma, quote or brace just before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file ends too early, at line {0}, column {1}. A part of it is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number at line {0}, column {1} is not an ordinary number, or far too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists and objects are nested too deeply; at most {0} levels are read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are too many values; at most {0} are read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” stands here twice. Keep one of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a known key.[ Did you mean “{1}”?] A key of your own must begin with “x_”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here stands {1:type}, and {0:type} is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is too small. It must lie between {1} and {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is too small. It must be more than {1} and at most {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is too large. It must lie between {1} and {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not a plain decimal. Write it in digits with a point, without an exponent and with at most 12 decimals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This text is too short: {0} characters, and at least {1} are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This text is too long: {0} characters, and at most {1} are allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” does not have the right form. It must be {1:pattern}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This text holds a control character, such as a line break. Take it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not one of the choices.[ Did you mean “{2}”?] The choices are: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” stands in this list twice. Once is enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here must stand {0}, and there is {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list has too few entries: {0}, and at least {1} are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list has too many entries: {0}, and at most {1} are allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are more problems that are not listed: {0}. Mend these first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is of version {0}, and this program knows up to version {1}. Use a newer Loamstead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The id “{0}” stands here a second time[; the first is at {1}]. Each needs its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no {0} with the id “{1}” in the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are two panels for the {0} wall. The first is {1}: remove one of them, or name another wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These strips feed each other in a circle: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is missing. With “{1}” it must be given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” means nothing for the control “{1}”. Take it out, or choose another control.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The distances must rise: {0} comes after {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” lies wholly outside the box. Coordinates count from the front-left corner of the base.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed is {0} m deep, and the box is only {1} m high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lights go on and off at the same time, {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a known currency. Write the three letters of ISO 4217, such as USD or EUR.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The basking spot is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The basking spot is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The basking spot is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The basking spot may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The basking spot may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm side is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm side is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm side is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm side may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm side may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cool side is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cool side is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cool side is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cool side may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cool side may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The box is {range} {case}, measured {measure}. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The box is too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {over_by} over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The box is too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the likely value is {short_by} under it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The box may get too hot {case}: {range}, measured {measure}. The target is {band} ({species}); the upper end is {over_by} over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The box may get too cold {case}: {range}, measured {measure}. The target is {band} ({species}); the lower end is {short_by} under it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperatures {case} are not known: the balance of heat did not close ({residual} were left over).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No target temperature is on file for the {zone} ({species}), so it is not judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How {course} runs hour by hour can&apos;t be told: no balance was found for a step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperatures can&apos;t be computed: {reason}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{device} runs at its limit of {power} {case} and does not reach its set temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caution above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>burnt so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>burnt when read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rated current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usable floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>animals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at fast growth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at slow growth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clear width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>species</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>males</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after the lamps go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>misting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coldest pane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlets in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use in a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>present value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what an animal bears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the earliest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>standard deviations off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room alike within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chi-square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chance of a worse fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks in the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loss that ends it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV index at the animal&apos;s back is {range} under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV is too strong: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV is too weak: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV may be too strong: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV may be too weak: index {range} at the animal&apos;s back under {lamp}, at {distance}. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The UV index at the animal&apos;s back is not known[ under {lamp}][ at {distance}]: {reason}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On {standing_on} UV reaches an index of {range} under {lamp}. The most for {species} is {max}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV is too strong on {standing_on}: index {range} at the animal&apos;s back under {lamp}. The most for {species} is {max}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV may be too strong on {standing_on}: index {range} at the animal&apos;s back under {lamp}. The most for {species} is {max}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On {standing_on} an animal&apos;s back comes within {distance} of {lamp}, nearer than its UV readings reach. How strong it is there is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The UV of {lamp} was read after {burnt_when_read} of burning, but it is said to have burnt {burnt} so far. It is taken as just read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This species needs UV ({species}), and no lamp here gives any.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cover} keeps the UV of {lamp} from the animal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No species here has a UV target on file, and {lamp} gives UV[: index {likely} at the animal&apos;s back].</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is hardly any shade from the UV of {lamp}: only {likely:percent} of the floor lies out of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There may be too little shade from the UV of {lamp}: only {likely:percent} of the floor surely lies out of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lamp} is a compact UV lamp. Its light is strong close by and weak a little further: measure it before you rely on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light a day: {likely}. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day is too long: {likely} of light. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day is too short: {likely} of light. The target is {band} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not stated when the lamps go on and off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lamp} shines at night. Animals need dark nights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lamps go on at {on} and off at {off}: that is no day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hours of light should follow the sky, and can&apos;t: {reason}. They are counted as the same on every day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity near the ground is {range:percent} {case}. The target is {band:percent} ({species}).[ Misting counted in: {misting}.]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is too damp {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the likely value is {over_by:percent} over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is too dry {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the likely value is {short_by:percent} under it.[ Misting counted in: {misting}.]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may get too damp {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the upper end is {over_by:percent} over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may get too dry {case}: {range:percent} near the ground. The target is {band:percent} ({species}); the lower end is {short_by:percent} under it.[ Misting counted in: {misting}.]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The humidity {case} is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No target humidity is on file ({species}), so it is not judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water condenses on the coldest pane {case}: the pane is at {pane}[, and the air gives off water below {dew_point}].</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no dry place to rest {season}, by day or by night: humidity on the driest ground is about {likely:percent}, and {max:percent} is the most that suits ({species}). Mould grows in such air, and shell, skin and lungs suffer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much is misted is not stated, so the humidity is only known within wide limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More is misted than dries off: the bed gets wetter by {by}, until it is sodden.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{fitting} is too small: its {side_name} is {side}, and {min} is what the largest animal needs to drink and bathe in it ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{fitting} may be too small: its {side_name} is {side}, and a large animal needs {min} to drink and bathe in it ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water in {fitting} is too deep: {range}. At most {max} is asked for ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water in {fitting} is too shallow to bathe in: {range}. At least {min} is asked for ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no water bowl, and this species needs one ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tap water is not treated, and chlorine harms the skin of an amphibian ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much water a cartridge is good for is not stated, so how often it is due is not known. {likely} pass it in a day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan is in {plan_currency} and the price list in {list_currency}. Nothing is costed, since no rate is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Things without a price in the list: {count}. The totals leave them out: {needs}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price of electricity is not stated, so the running costs leave it out. Use: {kwh_per_year} a year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The prices are invented examples of {date}. Put your own shop&apos;s prices in their place before you decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price list is of {date}, {age_months} old.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You own “{item}” ({quantity}), which the price list does not have. It is not set off against anything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is bought at “{channel}” comes to {goods}, less than it takes orders for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You want to buy at “{channel}”, which the price list does not know. Everything is bought wherever it is cheapest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A change of the needs meets nothing: the plan needs no {need}, or the price list has no such item in its unit ({item}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out of the order at your wish: {need}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out of the order at your wish, though safety hangs on it: {need}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sum is too large to be computed exactly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It can&apos;t be measured by itself; readings in the running box would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It lies in the material; a data sheet that states it would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thermometer that keeps highest and lowest, left in the room for a week of that season, would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hygrometer left in the room for a week of that season would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measuring it would narrow it: the gap over the gap and its wire, squared.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeping the bed evenly damp under the lamp, or dry, would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stating how much is misted would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No entry of the plan narrows it; thermometers in the running box tell what is so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealing its gaps would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighing a litre of it as it is kept, and again when dried, would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighing a litre of it from under the lamp, and again when dried, would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measuring it with a power meter at the outlet would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The maker&apos;s beam angle, entered with the lamp, would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adoption fee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>permit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calcium powder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dimmer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dimming thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on/off thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>residual-current adapter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ballast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lamp guard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat-rated lamp holder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV fixture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fruit fly cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>greens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>insects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frozen mice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>powdered food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frozen rats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reserve for illness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visit to the vet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>disinfectant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gloves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarantine box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hygrometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>infrared thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UV index meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glass box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plastic box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wooden box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water conditioner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filter cartridge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mister</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the box itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carries the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equipment of the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a line of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a spare: warmth or UV hangs on this lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds a hot lamp safely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keeps animals off a hot lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>regulates a heater or lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switches the lamps on and off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gives outlets enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cuts the power near water before a shock harms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to read the warm and the cool end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to read the temperature of surfaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to read the humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bed, filled in before it settles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>covers a part of the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>furniture of the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a year of filtered water, by the cartridge&apos;s litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a year of treated tap water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to weigh the animals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to keep a new animal apart at first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to clean with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for hygiene</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a supplement to the food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first year&apos;s visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {reading} doesn&apos;t fit: it says {value}, measured {measure}, where {range} is expected from all the rest. It is left out. Check the thermometer and its place, then what the plan says of lamps, covers and mesh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {reading} is too warm to fit: it says {value}, measured {measure}, where {range} is expected from all the rest. It is left out, and if it is right, the box is warmer than told here. Check the thermometer and its place, then what the plan says of lamps, covers and mesh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {reading} is too cold to fit: it says {value}, measured {measure}, where {range} is expected from all the rest. It is left out, and if it is right, the box is colder than told here. Check the thermometer and its place, then what the plan says of lamps, covers and mesh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {reading} lies outside the floor of the box, so it is not used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {reading}: whether the lamps were on is not stated, so it is not used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {reading} was taken with a dimmer on whose level is not stated, so it is not used. State the level it was set to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {reading} was taken with the room at {room}. No case here has its lamps as then and a room within {alike_within} of that, so it narrows none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings used: {count}. With {needed} or more, one at the basking spot, one on the warm and one on the cool side, they tell more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings don&apos;t fit the box of this plan, all together ({chance:percent} chance of a worse fit if all were as assumed). None is used. Check whether the box still is as it was when they were taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings could not be compared with the box, so none is used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the box {by} longer, which makes {to}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the box {by} wider, which makes {to}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the box {by} higher, which makes {to}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a box with {by} more floor, which makes {to}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out fittings that cover {by} of floor, or let the animals walk over them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add hides: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move a hide to the {side} side, or add one there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a humid hide: a hide with damp moss in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep fewer animals in this box: {to}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give them boxes of their own: {count} in all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {fitting} inwards by {by}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the bed {by} deeper, which makes {to}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the bed no deeper than {to}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use {material} in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a stand rated for {to} or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use {to} in place of {from} for {device}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add about {power} of heat over the warm side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dim {device} to {to:percent}[ {case}].</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the thermostat of {device} to {to}[ {case}].</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run {device} through a thermostat, with its probe where the heat arrives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fix the probe where {device} heats, and enter its place in the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {device} to the outside of a wall, above the bed, and keep its thermostat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise {device} by {by}, to {to} above the base.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower {device} by {by}, to {to} above the base.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a guard around {device}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {device} {by} further away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hang {device} inside, below the pane.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {fitting} lower by {by}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {fitting} away from beneath the lamp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep an insulated carrier and warmth that needs no mains ready, such as wrapped bottles of warm water beside the animals, and have them in it within {within}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch the heat off at the plug, and keep a carrier and a cool room ready to have the animals there within {within}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the room {by} cooler {case}, at {to} or less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the room {by} warmer {case}, at {to} or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the enclosure or shade the window, so that no sun reaches the glass at any season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add about {power} of heat without light for the night, on a thermostat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure it in the finished enclosure: what is predicted ranges as widely as the target, so a reading tells more than a change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No single change that was tried does it without harm elsewhere. Change more than one thing, such as lamp, box and room, and look again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take {cover} away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {cover} at least {by} further from the lamp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hang {device} further from the wall, or take a weaker one, until the wall stays at {to} or less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cover {area} more of the top, so that {fraction:percent} of it is covered, clear of the lamps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mist {by} more {case}, which makes {to}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mist {by} less {case}, which makes {to}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mist less, or uncover some of the top so that more dries off. Feel the bed at its base: water must not stand there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While its probe is still cool a thermostat drives the lamp at full power: take a weaker lamp, or put the probe where the lamp warms it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the surface of the bed dry out, and damp only the hide that should be humid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave one corner of the bed dry, away from the water and the mist.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a bowl in place of {fitting} whose side is {by} longer, which makes {to}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill {fitting} no deeper than {to}, and put in a stone to climb out on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill {fitting} at least {to} deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a water bowl.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treat the water with conditioner, one that also binds chloramine where your supplier uses it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep {animal} warm and fed through the winter, and take the rest out of the plan. Ask a reptile vet if you are unsure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have a reptile vet see {animal}, with a faecal sample, before its food is stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the rest of {animal} to {to} in the cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a UV lamp made for Ferguson zone {zone}, with its maker&apos;s distance table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the maker&apos;s distance table of {device}, or measure the UV index at {distance} and enter it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No height of {device} does it. Use a lamp that gives {times} times its UV at the same distance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace {device}: its UV has faded, and a new one reaches the target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the timer for {to} of light a day, a change of {by}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put {device} on a timer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take {by} off it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {by} to another circuit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Provide more {supply} outlets: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plug {strip} straight into the wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed {strip} through a residual-current device.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run {device} without a dimmer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a dimming thermostat for {device}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put {device} on an outlet that is always on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let each cable hang in a loop below its plug, and keep plugs above and away from the water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a ceramic or other heat-rated holder for {device}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a holder rated for {to} or more for {device}, or a weaker lamp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a control rated for {to} or more for {device}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter this in the plan: {where}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add prices for these to the price list: {needs}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it back on the list: {need}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a price list in {currency}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The published floor rule, applied to the animals&apos; size and number. The usable floor leaves out what they can&apos;t walk on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same rule applied to the size that the published growth rates lead to, at slow and at fast growth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each side of the box is compared with the animal&apos;s own length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clear width beside the fittings is compared with what the animal needs to turn round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice: along a short side, a warm and a cool end run into one another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice: one hide more than animals, one of them warm and one cool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compared with the band on the species&apos; sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One species in each box: needs, germs and tempers differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the species&apos; sheet says about company.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only materials with their properties on file can be computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weight of box, damp bed, water, fittings and animals is compared with the maker&apos;s rating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heat that the equipment gives is balanced with what leaves through base, walls, top, air and evaporation. The range follows from the spread of the inputs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hottest surface an animal can touch is compared with the temperature at which skin burns on long contact.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hottest place an animal can lie on or dig to is compared with what it should lie on for long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place an animal could retreat to is compared with what its body bears.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The distance is compared with the maker&apos;s clearance or, where the maker gives none, a cautious one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The nearest point an animal gets to is taken: the top of what it can climb, and its own height on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sun through glass gives more heat than any lamp here, and no thermostat can take it away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What evaporates and is misted is balanced with what the air carries away and what condenses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every uncertain input is moved within its spread until the readings are met as well as their accuracy and the model&apos;s own error make probable. What is learned counts for cases with the lamps as in a reading and the room near to its room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coldest pane is compared with the dew point of the air in the box.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it is damp everywhere, an animal can&apos;t dry off. Common practice asks for a dry corner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The UV index at the animal&apos;s back is compared with the range of its Ferguson zone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A UV index is taken from a meter or the maker&apos;s table only, never from watts, and never outside the table&apos;s distances.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass, acrylic and closed covers let practically no UV-B through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The planned hours of light are compared with the sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A device that gives light and is always on leaves no dark night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What runs for three hours or more may take 80% of the rating. Everything else on it counts as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One outlet for each device, counted apart for timed and always-on ones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each strip belongs straight into a wall outlet: the first one carries everything behind it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near water, a residual-current device cuts the power before a shock can harm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a dimmer or thermostat may feed depends on the kind of load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thermostat holds the temperature only where its probe is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water on a plug, holder or strip can give a shock or start a fire.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot lamps and heaters soften plastic holders.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only you can know this, so it is asked for and not assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The needs follow from the plan; what you left out or replaced is set off against them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken from the price list, whole packs only. A missing price is listed and never counted as zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A price list older than a year is out of date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>General advice on hygiene with reptiles and amphibians.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laws differ from place to place and change. This program does not know them all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>General advice on care.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice: new animals are kept apart and watched first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice: an enclosure is measured over several days before it is used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bowl has to let the animal get in, turn round and out: for turtles and tortoises one and a half shell lengths by one, for a snake the round that it lies coiled in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water&apos;s depth against the length and the height of the animal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is misted and what drips back is balanced with what evaporates from the bed, over day and night, winter and summer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What water needs before an animal lives in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only animals of species that rest, well, of full weight and past their first winter may be cooled, after a vet&apos;s check, and weighed every week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor for the animals as they are: {usable} can be walked on, and “{rule_title}” ({rule_kind}) asks for {min}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The floor of {floor} is too small for the animals as they are: “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor for the animals once grown: {usable} can be walked on, and “{rule_title}” ({rule_kind}) asks for {min}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The floor will be too small for the animals once grown: {usable} can be walked on, and “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more.[ This may come in {years_fast}.]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the floor of {floor} is large enough is not known: “{rule_title}” needs {missing} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No published rule for floor space is on file ({species}). The floor of {floor} is not judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a laboratory minimum is on file ({species}): “{rule_title}” asks for {min}, and the floor has {floor}. Such a minimum does not show that an animal has enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By “{rule_title}” the box may be outgrown in {years_fast}[, at slow growth in {years_slow}] ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {side_name} is {side}, and “{rule_title}” ({rule_kind}) asks for {min}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {side_name} is {side}, and “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {side_name} is {side}, and the animal is {body} long ({species}). No side should be shorter than its body: {short_by} more is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clear width is {width}, and turning round takes {min} ({species}): {short_by} more is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clear width is {width}, and turning round takes {min} ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The height over the bed is {height}, and {min} is asked for ({species}): {short_by} more is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The height over the bed is {height}, and {min} is asked for ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The box is {length} long. With less than {min}, a warm and a cool end are hard to keep apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number of hides: {hides}. At least {min} are advised, one more than animals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no hide on the warm side. Without one, an animal must choose between warmth and cover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no hide on the cool side. Without one, an animal must choose between cooling down and cover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no humid hide. This species needs one ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{fitting} sticks out of the box by {over_by}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No animals are entered, so nothing can be judged against their needs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeping a single animal is a sound choice ({species}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Animals of this species live best alone ({species}). Entered here: {animals}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several species share this box ({species}, {other_species}). Their needs and germs differ: one box should hold one species.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Males of this species fight ({species}). Males in this box: {males}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Males of this species fight ({species}), and the sex is not stated for {animals} of the animals here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no sheet for the species “{species}”. Its needs are not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The material “{material}” ({part}) is not on file. What depends on it can&apos;t be computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No substrate is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet does not list {material} as a substrate for this species ({species}). The first it lists is {best}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed is {depth} deep, and this species needs at least {min} ({species}): {short_by} more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed is {depth} deep in a box that is {height} high. Too little room is left above it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What {stand} can carry is not stated. It has to carry {range}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not stated what the box stands on. That has to carry {range}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The adult is heavier than a person can lift and needs a heated room of its own. No indoor box lasts it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The adult outgrows any usual indoor box. Plan for a room or an outdoor run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One study of hatchlings found flatter shells when they were reared humid. Its method is contested, so the figure is not settled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A heat mat gives background warmth at best. It warms itself from above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It eats mostly insects. The food costs here count mixed food by weight, as for greens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It eats insects or other animal food beside greens. The food costs here count the greens only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A female that may lay needs a place with at least 20 cm (8 in) of soil to dig in, even when she lives alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frozen food rodents can carry salmonella too. Thaw them fully, and outside the kitchen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It gets through gaps that look too small. Lock the doors, and leave no gap wider than its head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Females fight each other as well. Keep one, or one pair.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It eats other snakes, its own kind too. Keep one to a box.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has a mild venom, and a long bite can swell. See a doctor if you react to one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fine or dusty sand alone is suspected of blocking the gut. Mix it with soil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not rest through the winter and must not be kept cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use water without chlorine only, for misting too: rain water, or tap water with a conditioner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its skin takes up what touches it. Handle it rarely and with wet, rinsed gloves, and leave no cleaner behind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taking and keeping native box turtles is restricted or licensed in many places. Ask before you buy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the European Union it needs a certificate and a mark when it changes hands. Ask for the papers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trade in it is controlled. Keep the proof of legal origin, and hand it on with the animal. What is asked differs by country.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In Australia, keeping this native species needs a licence.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It overheats easily: a warm room can be too warm. Watch the upper end of the temperatures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has no basking spot. A lamp that heats a surface is not wanted.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>speaker</name>
    <message>
        <source>less than %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 percentage point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something was found that has no words yet (%1).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>result: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>compared with: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The range is mostly due to this: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, the thickness of its board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not stated, and nothing could be assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: counted both ways, yes and no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: taken as %2 a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: taken as %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: taken as %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: was %2, now %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 decides this range most (%2 of it).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>verdicts</name>
    <message>
        <source>too hot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too damp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too strong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too weak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too much load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too little load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too few</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too little</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>falls short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>danger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (may be %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>µW/cm² of UV-B can&apos;t be turned into a UV index: %1 may be anything from %2 to %3, as the lamp&apos;s colours lie. Read it with a UV index meter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
