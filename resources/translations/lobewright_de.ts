<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>Arrangements</name>
    <message>
        <source>Design</source>
        <translation>Entwerfen</translation>
    </message>
    <message>
        <source>Lobes and their consequences</source>
        <translation>Kurvenform und ihre Folgen</translation>
    </message>
    <message>
        <source>Learn</source>
        <translation>Lernen</translation>
    </message>
    <message>
        <source>How the engine works, large and moving</source>
        <translation>Wie der Motor arbeitet: groß und in Bewegung</translation>
    </message>
    <message>
        <source>Port timing</source>
        <translation>Steuerzeiten</translation>
    </message>
    <message>
        <source>Timing, areas, limits and results</source>
        <translation>Steuerzeiten, Querschnitte, Grenzen und Ergebnisse</translation>
    </message>
    <message>
        <source>Performance</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Torque against speed and phase, supply and energy</source>
        <translation>Drehmoment über Drehzahl und Phase, Luftversorgung und Energie</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>Angaben prüfen</translation>
    </message>
    <message>
        <source>Durability and balance</source>
        <translation>Haltbarkeit und Ausgleich</translation>
    </message>
    <message>
        <source>Lobe shaping</source>
        <translation>Nockenform</translation>
    </message>
    <message>
        <source>Knots and laws, and whether the lobe can be cut and run</source>
        <translation>Stützpunkte, Bewegungsgesetze und ob sich der Nocken fertigen und betreiben lässt</translation>
    </message>
    <message>
        <source>Contact stress, lever arms, forces, bearings, shaking force</source>
        <translation>Kontaktpressung, Hebelarme, Kräfte, Lager, freie Massenkraft</translation>
    </message>
    <message>
        <source>Unknowns</source>
        <translation>Unbekannte</translation>
    </message>
    <message>
        <source>What is not known, how far results may be off, and what decides them</source>
        <translation>Was nicht bekannt ist, wie weit die Ergebnisse abweichen können und wovon das abhängt</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation>Üben</translation>
    </message>
    <message>
        <source>Predict, point and build, with hints and answers</source>
        <translation>Vorhersagen, zeigen und bauen, mit Hinweisen und Antworten</translation>
    </message>
    <message>
        <source>Published figures and statements beside arithmetic and this design</source>
        <translation>Veröffentlichte Werte und Aussagen im Vergleich mit Rechnung und Entwurf</translation>
    </message>
    <message>
        <source>Beside cranks</source>
        <translation>Kurbelvergleich</translation>
    </message>
    <message>
        <source>This engine beside the same pistons on cranks and a four-stroke</source>
        <translation>Dieser Motor im Vergleich mit denselben Kolben an Kurbeln und mit einem Viertakter</translation>
    </message>
</context>
<context>
    <name>Chapters</name>
    <message>
        <source>Operating point</source>
        <translation>Betriebspunkt</translation>
    </message>
    <message>
        <source>Speed, fired or motored</source>
        <translation>Drehzahl, gefeuert oder geschleppt</translation>
    </message>
    <message>
        <source>Inlet track</source>
        <translation>Einlassbahn</translation>
    </message>
    <message>
        <source>Moves the inlet pistons</source>
        <translation>Bewegt die Einlasskolben</translation>
    </message>
    <message>
        <source>Exhaust track</source>
        <translation>Auslassbahn</translation>
    </message>
    <message>
        <source>Moves the exhaust pistons</source>
        <translation>Bewegt die Auslasskolben</translation>
    </message>
    <message>
        <source>Inlet ports</source>
        <translation>Einlassschlitze</translation>
    </message>
    <message>
        <source>Exhaust ports</source>
        <translation>Auslassschlitze</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>Circle, bore, chamber, exhaust lead</source>
        <translation>Teilkreis, Bohrung, Brennraum, Auslassvoreilung</translation>
    </message>
    <message>
        <source>Adjuster</source>
        <translation>Versteller</translation>
    </message>
    <message>
        <source>Turns and shifts the exhaust track</source>
        <translation>Dreht und verschiebt die Auslassbahn</translation>
    </message>
    <message>
        <source>Pistons and rollers</source>
        <translation>Kolben und Rollen</translation>
    </message>
    <message>
        <source>Sizes and masses</source>
        <translation>Maße und Massen</translation>
    </message>
    <message>
        <source>Fuel and combustion</source>
        <translation>Kraftstoff und Verbrennung</translation>
    </message>
    <message>
        <source>Which fuel, when and how fast it burns</source>
        <translation>Welcher Kraftstoff, wann und wie schnell er brennt</translation>
    </message>
    <message>
        <source>Air supply</source>
        <translation>Luftversorgung</translation>
    </message>
    <message>
        <source>Where fresh air comes from</source>
        <translation>Woher die Frischluft kommt</translation>
    </message>
    <message>
        <source>Scavenging and walls</source>
        <translation>Spülung und Wandwärme</translation>
    </message>
    <message>
        <source>How gases mix and lose heat</source>
        <translation>Wie sich Gase mischen und Wärme abgeben</translation>
    </message>
    <message>
        <source>Friction</source>
        <translation>Reibung</translation>
    </message>
    <message>
        <source>Rings, guides, rollers, bearings</source>
        <translation>Ringe, Führungen, Rollen, Lager</translation>
    </message>
    <message>
        <source>Materials, oil, bearing</source>
        <translation>Werkstoffe, Öl, Lager</translation>
    </message>
    <message>
        <source>Track blank</source>
        <translation>Bahnrohling</translation>
    </message>
    <message>
        <source>The part that the track is cut in</source>
        <translation>Das Teil, in das die Bahn gefräst wird</translation>
    </message>
    <message>
        <source>Engines to compare with</source>
        <translation>Vergleichsmotoren</translation>
    </message>
    <message>
        <source>Cranks and a four-stroke of equal size</source>
        <translation>Kurbeltrieb und Viertakter gleicher Größe</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Title and notes</source>
        <translation>Titel und Notizen</translation>
    </message>
    <message>
        <source>What the design is and what it is for</source>
        <translation>Was der Entwurf ist und wozu er dient</translation>
    </message>
    <message>
        <source>Schedules over speed</source>
        <translation>Kennlinien über der Drehzahl</translation>
    </message>
    <message>
        <source>Inputs that follow the shaft speed</source>
        <translation>Eingaben, die der Wellendrehzahl folgen</translation>
    </message>
    <message>
        <source>Rows that the inlet piston uncovers</source>
        <translation>Reihen, die der Einlasskolben freigibt</translation>
    </message>
    <message>
        <source>Rows that the exhaust piston uncovers</source>
        <translation>Reihen, die der Auslasskolben freigibt</translation>
    </message>
    <message>
        <source>Properties on which contact results rest</source>
        <translation>Stoffwerte, auf denen die Kontaktergebnisse beruhen</translation>
    </message>
    <message>
        <source>Thresholds of warnings and errors</source>
        <translation>Schwellen für Warnungen und Fehler</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Moves the pistons</source>
        <translation>Bewegt die Kolben</translation>
    </message>
    <message>
        <source>Rows of inlet ports that the piston uncovers</source>
        <translation>Reihen von Einlassschlitzen, die der Kolben freigibt</translation>
    </message>
    <message>
        <source>Rows of exhaust ports that the piston uncovers</source>
        <translation>Reihen von Auslassschlitzen, die der Kolben freigibt</translation>
    </message>
    <message>
        <source>Circle, bore, chamber</source>
        <translation>Teilkreis, Bohrung, Brennraum</translation>
    </message>
    <message>
        <source>Shifts the track</source>
        <translation>Verschiebt die Bahn</translation>
    </message>
</context>
<context>
    <name>ComparisonPlot</name>
    <message>
        <source>lift</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>lever arm on the output shaft</source>
        <translation>Hebelarm an der Abtriebswelle</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>torque of the engine</source>
        <translation>Drehmoment des Motors</translation>
    </message>
    <message>
        <source>piston speed</source>
        <translation>Kolbengeschwindigkeit</translation>
    </message>
    <message>
        <source>piston acceleration</source>
        <translation>Kolbenbeschleunigung</translation>
    </message>
    <message>
        <source>brake torque</source>
        <translation>effektives Drehmoment</translation>
    </message>
    <message>
        <source>brake power</source>
        <translation>effektive Leistung</translation>
    </message>
    <message>
        <source>Piston position</source>
        <translation>Kolbenstellung</translation>
    </message>
    <message>
        <source>Lever arm</source>
        <translation>Hebelarm</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>p–V diagram</source>
        <translation>p-V-Diagramm</translation>
    </message>
    <message>
        <source>Piston speed</source>
        <translation>Kolbengeschwindigkeit</translation>
    </message>
    <message>
        <source>Piston acceleration</source>
        <translation>Kolbenbeschleunigung</translation>
    </message>
    <message>
        <source>Torque against speed</source>
        <translation>Drehmoment über der Drehzahl</translation>
    </message>
    <message>
        <source>Power against speed</source>
        <translation>Leistung über der Drehzahl</translation>
    </message>
    <message>
        <source>Torque over two revolutions</source>
        <translation>Drehmoment über zwei Umdrehungen</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>A rise moves the piston inward, a return outward; a dwell holds it.</source>
        <translation>Ein Anstieg bewegt den Kolben nach innen, ein Rückgang nach außen; eine Rast hält ihn.</translation>
    </message>
    <message>
        <source>Adjuster setting</source>
        <translation>Stellung des Verstellers</translation>
    </message>
    <message>
        <source>After-charge</source>
        <translation>Nachladung</translation>
    </message>
    <message>
        <source>After-cooler outlet</source>
        <translation>Austrittstemperatur des Ladeluftkühlers</translation>
    </message>
    <message>
        <source>Air in the chamber</source>
        <translation>Luft im Brennraum</translation>
    </message>
    <message>
        <source>Air pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>Air share of the trapped charge</source>
        <translation>Luftanteil der eingeschlossenen Ladung</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>Air through the inlet ports</source>
        <translation>Luft durch die Einlassschlitze</translation>
    </message>
    <message>
        <source>All losses as mean effective pressure</source>
        <translation>Alle Verluste als Mitteldruck</translation>
    </message>
    <message>
        <source>Allowable contact stress</source>
        <translation>Zulässige Kontaktpressung</translation>
    </message>
    <message>
        <source>Ambient pressure</source>
        <translation>Umgebungsdruck</translation>
    </message>
    <message>
        <source>Ambient temperature</source>
        <translation>Umgebungstemperatur</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Assumed from a fit where it is not given.</source>
        <translation>Fehlt die Angabe, wird ein Wert nach einer Näherungsformel angenommen.</translation>
    </message>
    <message>
        <source>At the highest speed given.</source>
        <translation>Bei der höchsten angegebenen Drehzahl.</translation>
    </message>
    <message>
        <source>Auxiliaries</source>
        <translation>Nebenaggregate</translation>
    </message>
    <message>
        <source>Auxiliary power</source>
        <translation>Leistung der Nebenaggregate</translation>
    </message>
    <message>
        <source>Axial shift</source>
        <translation>Axiale Verschiebung</translation>
    </message>
    <message>
        <source>Back thickness</source>
        <translation>Dicke hinter der Bahn</translation>
    </message>
    <message>
        <source>Blower displacement</source>
        <translation>Fördervolumen des Gebläses</translation>
    </message>
    <message>
        <source>Blower drive ratio</source>
        <translation>Übersetzung des Gebläses</translation>
    </message>
    <message>
        <source>Blower or compressor</source>
        <translation>Gebläse oder Verdichter</translation>
    </message>
    <message>
        <source>Blower with plenum</source>
        <translation>Gebläse mit Sammler</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Bore diameter</source>
        <translation>Bohrungsdurchmesser</translation>
    </message>
    <message>
        <source>Bore of the ring that the track is cut into. Empty: an open track is a tenth of the roller width wider than the roller on the inside; under the groove of a closed track stands half a roller width (own estimate).</source>
        <translation>Bohrung des Rings, in den die Bahn gefräst wird. Leer: Eine offene Bahn ist innen um ein Zehntel der Rollenbreite breiter als die Rolle; unter der Nut einer geschlossenen Bahn bleibt eine halbe Rollenbreite stehen (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Brake mean effective pressure</source>
        <translation>Effektiver Mitteldruck</translation>
    </message>
    <message>
        <source>Brake power</source>
        <translation>Effektive Leistung</translation>
    </message>
    <message>
        <source>Brake specific fuel consumption</source>
        <translation>Spezifischer Kraftstoffverbrauch</translation>
    </message>
    <message>
        <source>Brake torque</source>
        <translation>Effektives Drehmoment</translation>
    </message>
    <message>
        <source>Burnt gas in the chamber</source>
        <translation>Verbranntes Gas im Brennraum</translation>
    </message>
    <message>
        <source>Cam track</source>
        <translation>Kurvenbahn</translation>
    </message>
    <message>
        <source>Case-carburised steel, quality ME</source>
        <translation>Einsatzstahl, Qualität ME</translation>
    </message>
    <message>
        <source>Case-carburised steel, quality ML</source>
        <translation>Einsatzstahl, Qualität ML</translation>
    </message>
    <message>
        <source>Case-carburised steel, quality MQ</source>
        <translation>Einsatzstahl, Qualität MQ</translation>
    </message>
    <message>
        <source>Chamber pressure</source>
        <translation>Brennraumdruck</translation>
    </message>
    <message>
        <source>Chamber volume</source>
        <translation>Brennraum­volumen</translation>
    </message>
    <message>
        <source>Chambers</source>
        <translation>Brennräume</translation>
    </message>
    <message>
        <source>Supply pressure</source>
        <translation>Ladedruck</translation>
    </message>
    <message>
        <source>Charging efficiency (to ambient density × swept volume)</source>
        <translation>Liefergrad (bezogen auf Umgebungsdichte × Hubvolumen)</translation>
    </message>
    <message>
        <source>Chord of one port across the bore.</source>
        <translation>Sehnenbreite eines Schlitzes, quer zur Bohrungsachse gemessen.</translation>
    </message>
    <message>
        <source>Claim</source>
        <translation>Angabe</translation>
    </message>
    <message>
        <source>Closed solid for CAD; the track faces are B-splines.</source>
        <translation>Geschlossener Körper für CAD; die Bahnflächen sind B-Splines.</translation>
    </message>
    <message>
        <source>Closed track</source>
        <translation>Geschlossene Bahn</translation>
    </message>
    <message>
        <source>Coefficient of speed fluctuation</source>
        <translation>Ungleichförmigkeitsgrad</translation>
    </message>
    <message>
        <source>Combustion efficiency</source>
        <translation>Umsetzungsgrad</translation>
    </message>
    <message>
        <source>Composition and heating value after Heywood, table D.4.</source>
        <translation>Zusammensetzung und Heizwert nach Heywood, Tabelle D.4.</translation>
    </message>
    <message>
        <source>Compression ratio</source>
        <translation>Verdichtungs­verhältnis</translation>
    </message>
    <message>
        <source>Compression ratio of the four-stroke</source>
        <translation>Verdichtungs­verhältnis des Viertakters</translation>
    </message>
    <message>
        <source>Compression ratio, adjuster at rest</source>
        <translation>Verdichtungs­verhältnis, Versteller in Ruhe</translation>
    </message>
    <message>
        <source>Constant pressure</source>
        <translation>Gleichbleibender Druck</translation>
    </message>
    <message>
        <source>Contact ellipse over the loaded width</source>
        <translation>Länge der Kontaktellipse / tragende Breite</translation>
    </message>
    <message>
        <source>Contact force</source>
        <translation>Kontaktkraft</translation>
    </message>
    <message>
        <source>Contact force that the motion demands</source>
        <translation>Von der Bewegung verlangte Kontaktkraft</translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation>Eckenradius</translation>
    </message>
    <message>
        <source>Cranks, same piston speed</source>
        <translation>Kurbeln, gleiche Kolben­geschwin­digkeit</translation>
    </message>
    <message>
        <source>Cranks, same shaft speed</source>
        <translation>Kurbeln, gleiche Drehzahl</translation>
    </message>
    <message>
        <source>Critical duty number</source>
        <translation>Kritische Betriebskennzahl</translation>
    </message>
    <message>
        <source>Crown clearance</source>
        <translation>Bodenabstand</translation>
    </message>
    <message>
        <source>Crown temperature</source>
        <translation>Temperatur der Kolbenböden</translation>
    </message>
    <message>
        <source>Cutter path (CSV)</source>
        <translation>Fräserbahn (CSV)</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Arbeitsverfahren</translation>
    </message>
    <message>
        <source>Cycle angle from inner dead centre</source>
        <translation>Winkel im Arbeitsspiel ab innerem Totpunkt</translation>
    </message>
    <message>
        <source>Cycloidal</source>
        <translation>Geneigte Sinuslinie</translation>
    </message>
    <message>
        <source>Cylinder angles</source>
        <translation>Zylinderwinkel</translation>
    </message>
    <message>
        <source>Cylinders of the four-stroke</source>
        <translation>Zylinder des Viertakters</translation>
    </message>
    <message>
        <source>Cylinders that fire together</source>
        <translation>Gleichzeitig zündende Zylinder</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Delivery ratio (to ambient density × swept volume)</source>
        <translation>Luftaufwand (bezogen auf Umgebungsdichte × Hubvolumen)</translation>
    </message>
    <message>
        <source>Diesel (surrogate)</source>
        <translation>Diesel (Ersatzkraftstoff)</translation>
    </message>
    <message>
        <source>Discharge coefficient</source>
        <translation>Durchflussbeiwert</translation>
    </message>
    <message>
        <source>Discharge coefficient of the valves</source>
        <translation>Durchflussbeiwert der Ventile</translation>
    </message>
    <message>
        <source>Displaced fraction</source>
        <translation>Verdrängter Anteil</translation>
    </message>
    <message>
        <source>Displacement</source>
        <translation>Hubraum</translation>
    </message>
    <message>
        <source>Displacement, then mixing</source>
        <translation>Verdrängung, dann Mischung</translation>
    </message>
    <message>
        <source>Distance of the inner port edge from the crown at outer dead centre, measured inward. A larger edge opens earlier.</source>
        <translation>Abstand der inneren Schlitzkante (Steuerkante) vom Kolbenboden im äußeren Totpunkt, nach innen gemessen. Ein größerer Abstand öffnet früher.</translation>
    </message>
    <message>
        <source>Distance of the upper flank of this piston ring from the crown.</source>
        <translation>Abstand der oberen Flanke dieses Kolbenrings vom Kolbenboden.</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Triebwerksart</translation>
    </message>
    <message>
        <source>Dwell</source>
        <translation>Rast</translation>
    </message>
    <message>
        <source>Dynamic rating</source>
        <translation>Dynamische Tragzahl</translation>
    </message>
    <message>
        <source>Edge relief</source>
        <translation>Kantenrücknahme</translation>
    </message>
    <message>
        <source>Elastic modulus</source>
        <translation>Elastizitätsmodul</translation>
    </message>
    <message>
        <source>Equivalent load of the roller bearing</source>
        <translation>Äquivalente Belastung des Rollenlagers</translation>
    </message>
    <message>
        <source>Ethanol</source>
        <translation>Ethanol</translation>
    </message>
    <message>
        <source>Evaluations of the equations</source>
        <translation>Auswertungen der Gleichungen</translation>
    </message>
    <message>
        <source>Evenly spaced</source>
        <translation>Gleichmäßig verteilt</translation>
    </message>
    <message>
        <source>Exhaust closes</source>
        <translation>Auslass schließt</translation>
    </message>
    <message>
        <source>Exhaust crown temperature</source>
        <translation>Temperatur des Auslasskolbenbodens</translation>
    </message>
    <message>
        <source>Exhaust lead</source>
        <translation>Auslassvoreilung</translation>
    </message>
    <message>
        <source>Exhaust lead that leaves the least axial force</source>
        <translation>Auslassvoreilung mit der kleinsten Axialkraft</translation>
    </message>
    <message>
        <source>Exhaust open</source>
        <translation>Auslass offen</translation>
    </message>
    <message>
        <source>Exhaust opens</source>
        <translation>Auslass öffnet</translation>
    </message>
    <message>
        <source>Exhaust piston mass that leaves the least axial force</source>
        <translation>Auslasskolbenmasse mit der kleinsten Axialkraft</translation>
    </message>
    <message>
        <source>Exhaust valves</source>
        <translation>Auslassventile</translation>
    </message>
    <message>
        <source>Flame- or induction-hardened steel, quality ME</source>
        <translation>Flamm- oder induktionsgehärteter Stahl, Qualität ME</translation>
    </message>
    <message>
        <source>Flame- or induction-hardened steel, quality ML</source>
        <translation>Flamm- oder induktionsgehärteter Stahl, Qualität ML</translation>
    </message>
    <message>
        <source>Flame- or induction-hardened steel, quality MQ</source>
        <translation>Flamm- oder induktionsgehärteter Stahl, Qualität MQ</translation>
    </message>
    <message>
        <source>Floor of the groove between the flanks of a closed track, which opens outward. Empty: a tenth of the roller width inside the roller (own estimate).</source>
        <translation>Durchmesser des Nutgrunds zwischen den Flanken einer geschlossenen Bahn, deren Nut sich nach außen öffnet. Leer: ein Zehntel der Rollenbreite innerhalb der Rolle (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Four-stroke</source>
        <translation>Viertakter</translation>
    </message>
    <message>
        <source>Four-stroke, ambient air</source>
        <translation>Viertakter, Umgebungsluft</translation>
    </message>
    <message>
        <source>Four-stroke, same supply</source>
        <translation>Viertakter, gleiche Luftversorgung</translation>
    </message>
    <message>
        <source>Friction mean effective pressure</source>
        <translation>Reibmitteldruck</translation>
    </message>
    <message>
        <source>Friction of the crank bearings</source>
        <translation>Reibung der Kurbellager</translation>
    </message>
    <message>
        <source>Friction of the piston rings</source>
        <translation>Reibung der Kolbenringe</translation>
    </message>
    <message>
        <source>From the crown to the end of the skirt.</source>
        <translation>Vom Kolbenboden bis zum Ende des Schafts.</translation>
    </message>
    <message>
        <source>From the end of the guide to the roller axis; empty: the roller radius.</source>
        <translation>Vom Ende der Führung zur Rollenachse; leer: der Rollenradius.</translation>
    </message>
    <message>
        <source>Front thickness</source>
        <translation>Dicke vor der Bahn</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>Fuel flow</source>
        <translation>Kraftstoffstrom</translation>
    </message>
    <message>
        <source>Fuel heat not released</source>
        <translation>Nicht freigesetzte Kraftstoffwärme</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>Gas factor</source>
        <translation>Gasdruckfaktor</translation>
    </message>
    <message>
        <source>Gas force</source>
        <translation>Gaskraft</translation>
    </message>
    <message>
        <source>Gas-nitrided nitriding steel, quality MQ</source>
        <translation>Gasnitrierter Nitrierstahl, Qualität MQ</translation>
    </message>
    <message>
        <source>Gas-nitrided through-hardening steel, quality MQ</source>
        <translation>Gasnitrierter Vergütungsstahl, Qualität MQ</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Vorgegeben</translation>
    </message>
    <message>
        <source>Groove diameter</source>
        <translation>Nutdurchmesser</translation>
    </message>
    <message>
        <source>Guide friction</source>
        <translation>Führungsreibung</translation>
    </message>
    <message>
        <source>Guide length</source>
        <translation>Führungslänge</translation>
    </message>
    <message>
        <source>Guide overhang</source>
        <translation>Überhang über die Führung</translation>
    </message>
    <message>
        <source>Guides</source>
        <translation>Führungen</translation>
    </message>
    <message>
        <source>Half-width of the contact at the inner edge</source>
        <translation>Halbe Kontaktbreite an der Innenkante</translation>
    </message>
    <message>
        <source>Half-width of the contact at the middle</source>
        <translation>Halbe Kontaktbreite in der Mitte</translation>
    </message>
    <message>
        <source>Half-width of the contact at the outer edge</source>
        <translation>Halbe Kontaktbreite an der Außenkante</translation>
    </message>
    <message>
        <source>Harmonic</source>
        <translation>Einfache Sinuslinie</translation>
    </message>
    <message>
        <source>Heat to the walls</source>
        <translation>Wärme an die Wände</translation>
    </message>
    <message>
        <source>Height of the port along the cylinder.</source>
        <translation>Höhe des Schlitzes längs des Zylinders.</translation>
    </message>
    <message>
        <source>Helix pitch</source>
        <translation>Steigung der Steilverzahnung</translation>
    </message>
    <message>
        <source>Highest speed</source>
        <translation>Höchste Drehzahl</translation>
    </message>
    <message>
        <source>Hohenberg</source>
        <translation>Hohenberg</translation>
    </message>
    <message>
        <source>Hydrogen</source>
        <translation>Wasserstoff</translation>
    </message>
    <message>
        <source>Ignition</source>
        <translation>Zündung</translation>
    </message>
    <message>
        <source>In the words of the source.</source>
        <translation>Im Wortlaut der Quelle.</translation>
    </message>
    <message>
        <source>Indicated mean effective pressure</source>
        <translation>Indizierter Mitteldruck</translation>
    </message>
    <message>
        <source>Indicated power</source>
        <translation>Indizierte Leistung</translation>
    </message>
    <message>
        <source>Indicated work</source>
        <translation>Indizierte Arbeit</translation>
    </message>
    <message>
        <source>Inertia force</source>
        <translation>Massenkraft</translation>
    </message>
    <message>
        <source>Inlet closes</source>
        <translation>Einlass schließt</translation>
    </message>
    <message>
        <source>Inlet open</source>
        <translation>Einlass offen</translation>
    </message>
    <message>
        <source>Inlet opens</source>
        <translation>Einlass öffnet</translation>
    </message>
    <message>
        <source>Inlet valves</source>
        <translation>Einlassventile</translation>
    </message>
    <message>
        <source>Inner diameter of every cylinder.</source>
        <translation>Innendurchmesser jedes Zylinders.</translation>
    </message>
    <message>
        <source>Inner edge</source>
        <translation>Innenkante</translation>
    </message>
    <message>
        <source>Inspection points (CSV)</source>
        <translation>Messpunkte (CSV)</translation>
    </message>
    <message>
        <source>Isentropic efficiency</source>
        <translation>Isentroper Wirkungsgrad</translation>
    </message>
    <message>
        <source>Knock integral</source>
        <translation>Klopfintegral</translation>
    </message>
    <message>
        <source>Largest chamber volume</source>
        <translation>Größtes Brennraum­volumen</translation>
    </message>
    <message>
        <source>Largest pressure angle</source>
        <translation>Größter Pressungswinkel</translation>
    </message>
    <message>
        <source>Largest pressure × slip at one place</source>
        <translation>Größtes Produkt aus Pressung und Schlupf an einer Stelle</translation>
    </message>
    <message>
        <source>Largest rocking moment</source>
        <translation>Größtes freies Massenmoment</translation>
    </message>
    <message>
        <source>Largest shaking force</source>
        <translation>Größte freie Massenkraft</translation>
    </message>
    <message>
        <source>Largest slip over the width</source>
        <translation>Größter Schlupf über die Breite</translation>
    </message>
    <message>
        <source>Length and rings of the pistons, for the section and the port check; may be left out.</source>
        <translation>Länge und Ringe der Kolben für Schnitt und Schlitzprüfung; die Angabe ist freigestellt.</translation>
    </message>
    <message>
        <source>Length over which the piston is guided; empty: the bore.</source>
        <translation>Länge, über die der Kolben geführt wird; leer: die Bohrung.</translation>
    </message>
    <message>
        <source>Lever arm of the track</source>
        <translation>Hebelarm der Bahn</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Lift at the end</source>
        <translation>Weg am Ende</translation>
    </message>
    <message>
        <source>Lift table (CSV)</source>
        <translation>Wegtabelle (CSV)</translation>
    </message>
    <message>
        <source>Liner temperature</source>
        <translation>Temperatur der Laufbuchse</translation>
    </message>
    <message>
        <source>Listed</source>
        <translation>Aufgezählt</translation>
    </message>
    <message>
        <source>Lobes</source>
        <translation>Nocken</translation>
    </message>
    <message>
        <source>Longest firing interval</source>
        <translation>Längster Zündabstand</translation>
    </message>
    <message>
        <source>Lubricant</source>
        <translation>Schmierstoff</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Mass of an exhaust-side piston</source>
        <translation>Masse eines Auslasskolbens</translation>
    </message>
    <message>
        <source>Mass of an inlet-side piston</source>
        <translation>Masse eines Einlasskolbens</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Werkstoffe</translation>
    </message>
    <message>
        <source>Mean gas temperature</source>
        <translation>Mittlere Gastemperatur</translation>
    </message>
    <message>
        <source>Mean piston speed</source>
        <translation>Mittlere Kolben­geschwin­digkeit</translation>
    </message>
    <message>
        <source>Mean torque of gas, inertia and friction</source>
        <translation>Mittleres Drehmoment aus Gas, Trägheit und Reibung</translation>
    </message>
    <message>
        <source>Mechanism</source>
        <translation>Triebwerk</translation>
    </message>
    <message>
        <source>Mesh (STL)</source>
        <translation>Dreiecksnetz (STL)</translation>
    </message>
    <message>
        <source>Methane</source>
        <translation>Methan</translation>
    </message>
    <message>
        <source>Modified sine</source>
        <translation>Modifizierte Sinuslinie</translation>
    </message>
    <message>
        <source>Modified trapezoid</source>
        <translation>Modifiziertes Beschleunigungstrapez</translation>
    </message>
    <message>
        <source>Moment of inertia</source>
        <translation>Trägheitsmoment</translation>
    </message>
    <message>
        <source>Motion law</source>
        <translation>Bewegungsgesetz</translation>
    </message>
    <message>
        <source>Motored</source>
        <translation>Geschleppt</translation>
    </message>
    <message>
        <source>Name of the design.</source>
        <translation>Name des Entwurfs.</translation>
    </message>
    <message>
        <source>Nitrocarburised steel, quality MQ</source>
        <translation>Nitrocarburierter Stahl, Qualität MQ</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Not given</source>
        <translation>Nicht angegeben</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Number of cylinders around the shaft.</source>
        <translation>Zahl der Zylinder um die Welle.</translation>
    </message>
    <message>
        <source>Number of equal ports around the bore.</source>
        <translation>Zahl gleicher Schlitze rings um die Bohrung.</translation>
    </message>
    <message>
        <source>Octane number</source>
        <translation>Oktanzahl</translation>
    </message>
    <message>
        <source>Of one piston.</source>
        <translation>Für einen Kolben.</translation>
    </message>
    <message>
        <source>Oil viscosity at the liner</source>
        <translation>Ölviskosität an der Laufbuchse</translation>
    </message>
    <message>
        <source>Oil viscosity at the track</source>
        <translation>Ölviskosität an der Bahn</translation>
    </message>
    <message>
        <source>Open port area</source>
        <translation>Offener Schlitzquerschnitt</translation>
    </message>
    <message>
        <source>Outside diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>Outside of the ring that the track is cut into. Empty: a tenth of the roller width beyond the outermost contact (own estimate).</source>
        <translation>Außendurchmesser des Rings, in den die Bahn gefräst wird. Leer: ein Zehntel der Rollenbreite über den äußersten Kontakt hinaus (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Parabolic</source>
        <translation>Quadratische Parabel</translation>
    </message>
    <message>
        <source>Peak mean temperature</source>
        <translation>Höchste mittlere Temperatur</translation>
    </message>
    <message>
        <source>Peak piston speed</source>
        <translation>Höchste Kolben­geschwin­digkeit</translation>
    </message>
    <message>
        <source>Peak pressure</source>
        <translation>Höchstdruck</translation>
    </message>
    <message>
        <source>Peak-to-peak torque</source>
        <translation>Spitze-Spitze-Wert des Drehmoments</translation>
    </message>
    <message>
        <source>Perfect displacement</source>
        <translation>Vollkommene Verdrängung</translation>
    </message>
    <message>
        <source>Perfect mixing</source>
        <translation>Vollkommene Mischung</translation>
    </message>
    <message>
        <source>Petrol (surrogate)</source>
        <translation>Benzin (Ersatzkraftstoff)</translation>
    </message>
    <message>
        <source>Piston</source>
        <translation>Kolben</translation>
    </message>
    <message>
        <source>Piston jerk</source>
        <translation>Kolbenruck</translation>
    </message>
    <message>
        <source>Piston length</source>
        <translation>Kolbenlänge</translation>
    </message>
    <message>
        <source>Piston mass</source>
        <translation>Kolbenmasse</translation>
    </message>
    <message>
        <source>Piston rings</source>
        <translation>Kolbenringe</translation>
    </message>
    <message>
        <source>Piston velocity</source>
        <translation>Kolben­geschwin­digkeit</translation>
    </message>
    <message>
        <source>Pistons</source>
        <translation>Kolben</translation>
    </message>
    <message>
        <source>Pistons of all chambers together.</source>
        <translation>Kolben aller Brennräume zusammen.</translation>
    </message>
    <message>
        <source>Pitch curve and flanks unrolled from cylinders of chosen radii.</source>
        <translation>Rollenmittelpunktbahn und Flanken, von Zylindern gewählter Radien abgewickelt.</translation>
    </message>
    <message>
        <source>Pitch radius</source>
        <translation>Teilkreisradius der Zylinder</translation>
    </message>
    <message>
        <source>Plenum volume</source>
        <translation>Sammlervolumen</translation>
    </message>
    <message>
        <source>Points and normals of the flanks, with the error of the planar approximation.</source>
        <translation>Punkte und Normalen der Flanken, mit dem Fehler der ebenen Näherung.</translation>
    </message>
    <message>
        <source>Poisson&apos;s ratio</source>
        <translation>Querkontraktionszahl</translation>
    </message>
    <message>
        <source>Port height</source>
        <translation>Schlitzhöhe</translation>
    </message>
    <message>
        <source>Port width</source>
        <translation>Schlitzbreite</translation>
    </message>
    <message>
        <source>Ports fully open</source>
        <translation>Voll geöffnete Schlitze</translation>
    </message>
    <message>
        <source>Ports in the row</source>
        <translation>Schlitze in der Reihe</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Power of the blower or compressor</source>
        <translation>Leistung von Gebläse oder Verdichter</translation>
    </message>
    <message>
        <source>Prescribed slope; empty lets the spline choose and keeps the fourth derivative continuous.</source>
        <translation>Vorgegebene Steigung; leer: Der Spline wählt sie selbst, und die vierte Ableitung bleibt stetig.</translation>
    </message>
    <message>
        <source>Pressure angle</source>
        <translation>Pressungswinkel</translation>
    </message>
    <message>
        <source>Pressure angle at the pitch radius</source>
        <translation>Pressungswinkel am Teilkreisradius</translation>
    </message>
    <message>
        <source>Pressure at the last port closing</source>
        <translation>Druck beim Schließen des letzten Schlitzes</translation>
    </message>
    <message>
        <source>Under-piston pressure</source>
        <translation>Druck unter dem Kolben</translation>
    </message>
    <message>
        <source>Pressure × slip</source>
        <translation>Pressung × Schlupf</translation>
    </message>
    <message>
        <source>Pressure-viscosity coefficient</source>
        <translation>Druck-Viskositäts-Koeffizient</translation>
    </message>
    <message>
        <source>R: radius of the cylinder circle about the shaft axis, where the middle of every roller runs.</source>
        <translation>R: Radius des Teilkreises der Zylinder um die Wellenachse, auf dem die Mitte jeder Rolle läuft.</translation>
    </message>
    <message>
        <source>Radius of the four corners of each port.</source>
        <translation>Radius der vier Ecken jedes Schlitzes.</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Leistungsangabe</translation>
    </message>
    <message>
        <source>Rating life of the roller bearing</source>
        <translation>Nominelle Lebensdauer des Rollenlagers</translation>
    </message>
    <message>
        <source>Piston bowl volume</source>
        <translation>Volumen der Kolbenmulden</translation>
    </message>
    <message>
        <source>Reference engines</source>
        <translation>Vergleichsmotoren</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Relative Feuchte</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Rückgang</translation>
    </message>
    <message>
        <source>Ring boundary friction</source>
        <translation>Grenzreibung der Ringe</translation>
    </message>
    <message>
        <source>Ring distances</source>
        <translation>Ringabstände</translation>
    </message>
    <message>
        <source>Ring film friction</source>
        <translation>Filmreibung der Ringe</translation>
    </message>
    <message>
        <source>Ring height</source>
        <translation>Ringhöhe</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>Roller</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Roller bearing</source>
        <translation>Rollenlager</translation>
    </message>
    <message>
        <source>Roller bearing friction</source>
        <translation>Rollenlagerreibung</translation>
    </message>
    <message>
        <source>Roller crown radius</source>
        <translation>Balligkeitsradius</translation>
    </message>
    <message>
        <source>Roller life</source>
        <translation>Rollenlebensdauer</translation>
    </message>
    <message>
        <source>Roller radius</source>
        <translation>Rollenradius</translation>
    </message>
    <message>
        <source>Roller surface</source>
        <translation>Rollenoberfläche</translation>
    </message>
    <message>
        <source>Roller width</source>
        <translation>Rollenbreite</translation>
    </message>
    <message>
        <source>Rolling and roller bearings</source>
        <translation>Rollreibung und Rollenlager</translation>
    </message>
    <message>
        <source>Rolling resistance</source>
        <translation>Rollwiderstand</translation>
    </message>
    <message>
        <source>Rotary angle, axial and offset of a cutter whose axis is radial to the shaft.</source>
        <translation>Drehwinkel, Axialweg und Versatz eines Fräsers mit radialer Achse.</translation>
    </message>
    <message>
        <source>S: travel of the piston from outer to inner dead centre.</source>
        <translation>S: Weg des Kolbens vom äußeren zum inneren Totpunkt.</translation>
    </message>
    <message>
        <source>Same as the inlet track</source>
        <translation>Wie die Einlassbahn</translation>
    </message>
    <message>
        <source>Scales the heat transfer coefficient.</source>
        <translation>Faktor auf den Wärmeübergangskoeffizienten.</translation>
    </message>
    <message>
        <source>Scavenge ratio (to the trapped mass)</source>
        <translation>Spülluftverhältnis (bezogen auf die eingeschlossene Masse)</translation>
    </message>
    <message>
        <source>Scavenging</source>
        <translation>Spülung</translation>
    </message>
    <message>
        <source>Scavenging efficiency</source>
        <translation>Spülgrad</translation>
    </message>
    <message>
        <source>Scavenging model</source>
        <translation>Spülmodell</translation>
    </message>
    <message>
        <source>Scavenging overlap</source>
        <translation>Spülüberschneidung</translation>
    </message>
    <message>
        <source>Shaft bearing friction</source>
        <translation>Wellenlagerreibung</translation>
    </message>
    <message>
        <source>Shaft bearings</source>
        <translation>Wellenlager</translation>
    </message>
    <message>
        <source>Shaft speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>Shaking force along the shaft</source>
        <translation>Freie Massenkraft längs der Welle</translation>
    </message>
    <message>
        <source>Short-circuit fraction</source>
        <translation>Kurzschlussanteil</translation>
    </message>
    <message>
        <source>Shortest firing interval</source>
        <translation>Kürzester Zündabstand</translation>
    </message>
    <message>
        <source>Side force on the guide</source>
        <translation>Seitenkraft auf die Führung</translation>
    </message>
    <message>
        <source>Slip across the rollers</source>
        <translation>Schlupf über die Rollenbreite</translation>
    </message>
    <message>
        <source>Slip friction</source>
        <translation>Schlupfreibung</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <source>Smallest chamber volume</source>
        <translation>Kleinstes Brennraum­volumen</translation>
    </message>
    <message>
        <source>Solid (STEP)</source>
        <translation>Körper (STEP)</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Abschnittswinkel</translation>
    </message>
    <message>
        <source>Specific time-area of the blowdown</source>
        <translation>Spezifischer Zeitquerschnitt des Vorauslasses</translation>
    </message>
    <message>
        <source>Specific time-area of the exhaust</source>
        <translation>Spezifischer Zeitquerschnitt des Auslasses</translation>
    </message>
    <message>
        <source>Specific time-area of the inlet</source>
        <translation>Spezifischer Zeitquerschnitt des Einlasses</translation>
    </message>
    <message>
        <source>Static rating</source>
        <translation>Statische Tragzahl</translation>
    </message>
    <message>
        <source>Static safety of the roller bearing</source>
        <translation>Statische Tragsicherheit des Rollenlagers</translation>
    </message>
    <message>
        <source>Static stress in the roller bearing</source>
        <translation>Statische Pressung im Rollenlager</translation>
    </message>
    <message>
        <source>Steps of the integrator</source>
        <translation>Schritte des Integrators</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Kolbenhub</translation>
    </message>
    <message>
        <source>Supply power</source>
        <translation>Leistung der Luftversorgung</translation>
    </message>
    <message>
        <source>Supply power not counted</source>
        <translation>Leistung der Luftversorgung nicht eingerechnet</translation>
    </message>
    <message>
        <source>Supply temperature</source>
        <translation>Zulufttemperatur</translation>
    </message>
    <message>
        <source>Surface roughness</source>
        <translation>Oberflächenrauheit</translation>
    </message>
    <message>
        <source>Surface temperature of the exhaust crown; empty: as the other.</source>
        <translation>Oberflächentemperatur des Auslasskolbenbodens; leer: wie beim anderen Kolben.</translation>
    </message>
    <message>
        <source>Surface to volume at inner dead centre</source>
        <translation>Verhältnis Oberfläche/Volumen im inneren Totpunkt</translation>
    </message>
    <message>
        <source>Swept volume of a cylinder</source>
        <translation>Hubvolumen eines Zylinders</translation>
    </message>
    <message>
        <source>Swept volume of the whole engine, each chamber counted once.</source>
        <translation>Hubvolumen des ganzen Motors, jeder Brennraum einmal gezählt.</translation>
    </message>
    <message>
        <source>Temperature at the last port closing</source>
        <translation>Temperatur beim Schließen des letzten Schlitzes</translation>
    </message>
    <message>
        <source>Temperature behind the after-cooler; empty without one.</source>
        <translation>Temperatur hinter dem Ladeluftkühler; leer ohne Kühler.</translation>
    </message>
    <message>
        <source>Tension pressure</source>
        <translation>Anpressdruck</translation>
    </message>
    <message>
        <source>The lift curve is the spline through the knots less its lowest value.</source>
        <translation>Die Wegkurve ist der Spline durch die Stützpunkte, vermindert um seinen kleinsten Wert.</translation>
    </message>
    <message>
        <source>The track that moves the exhaust pistons: &quot;same&quot; as the inlet track, or a pattern of its own.</source>
        <translation>Die Bahn, die die Auslasskolben bewegt: wie die Einlassbahn oder mit eigener Kurve.</translation>
    </message>
    <message>
        <source>Through-hardened alloy steel, quality MQ</source>
        <translation>Legierter Vergütungsstahl, Qualität MQ</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Torque of all cylinders</source>
        <translation>Drehmoment aller Zylinder</translation>
    </message>
    <message>
        <source>Torque of one cylinder</source>
        <translation>Drehmoment eines Zylinders</translation>
    </message>
    <message>
        <source>Torque of one piston</source>
        <translation>Drehmoment eines Kolbens</translation>
    </message>
    <message>
        <source>Torque ripple, (max − min)/|mean|</source>
        <translation>Drehmomentschwankung, (max − min)/|Mittel|</translation>
    </message>
    <message>
        <source>Track blank</source>
        <translation>Bahnrohling</translation>
    </message>
    <message>
        <source>Track material</source>
        <translation>Bahnwerkstoff</translation>
    </message>
    <message>
        <source>Track surface</source>
        <translation>Bahnoberfläche</translation>
    </message>
    <message>
        <source>Tracks</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>Trapped compression ratio</source>
        <translation>Effektives Verdichtungs­verhältnis</translation>
    </message>
    <message>
        <source>Trapped mass</source>
        <translation>Eingeschlossene Masse</translation>
    </message>
    <message>
        <source>Trapping efficiency</source>
        <translation>Fanggrad</translation>
    </message>
    <message>
        <source>Unrolled drawing (DXF)</source>
        <translation>Abwicklung (DXF)</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Volumetric efficiency</source>
        <translation>Volumetrischer Wirkungsgrad</translation>
    </message>
    <message>
        <source>Wall heat</source>
        <translation>Wandwärme</translation>
    </message>
    <message>
        <source>Wall heat model</source>
        <translation>Wandwärmemodell</translation>
    </message>
    <message>
        <source>Wall heat multiplier</source>
        <translation>Faktor der Wandwärme</translation>
    </message>
    <message>
        <source>Watertight triangles, binary, in millimetres.</source>
        <translation>Geschlossenes Dreiecksnetz, binär, in Millimetern.</translation>
    </message>
    <message>
        <source>Energy-balance residual, share of the fuel heat</source>
        <translation>Restfehler der Energiebilanz, Anteil an der Kraftstoffwärme</translation>
    </message>
    <message>
        <source>What the statement is about; decides what is computed.</source>
        <translation>Worum es in der Aussage geht; entscheidet, was gerechnet wird.</translation>
    </message>
    <message>
        <source>Where the fresh air comes from.</source>
        <translation>Woher die Frischluft kommt.</translation>
    </message>
    <message>
        <source>Wiebe efficiency factor</source>
        <translation>Wiebe-Umsetzungsfaktor</translation>
    </message>
    <message>
        <source>Wiebe form factor</source>
        <translation>Wiebe-Formfaktor</translation>
    </message>
    <message>
        <source>Working chambers; two opposed pistons share one.</source>
        <translation>Arbeitsräume; zwei Gegenkolben teilen sich einen.</translation>
    </message>
    <message>
        <source>Woschni</source>
        <translation>Woschni</translation>
    </message>
    <message>
        <source>Yes: a second flank carries the roller on its outer side, so that the track can also pull. No: an open track can only push.</source>
        <translation>Ja: Eine zweite Flanke führt die Rolle an ihrer Außenseite, sodass die Bahn auch ziehen kann. Nein: Eine offene Bahn kann nur drücken.</translation>
    </message>
    <message>
        <source>a closed track holds the roller</source>
        <translation>eine geschlossene Bahn hält die Rolle</translation>
    </message>
    <message>
        <source>b: length of the roller along its axis; its middle stands at the pitch radius.</source>
        <translation>b: Länge der Rolle längs ihrer Achse; ihre Mitte läuft auf dem Teilkreisradius.</translation>
    </message>
    <message>
        <source>boosted</source>
        <translation>aufgeladen</translation>
    </message>
    <message>
        <source>boosted or not</source>
        <translation>aufgeladen oder nicht</translation>
    </message>
    <message>
        <source>c: share of the gas pressure that stands behind the ring.</source>
        <translation>c: Anteil des Gasdrucks, der hinter dem Ring wirkt.</translation>
    </message>
    <message>
        <source>cam track</source>
        <translation>Kurvenbahn</translation>
    </message>
    <message>
        <source>compression ignition</source>
        <translation>Selbstzündung</translation>
    </message>
    <message>
        <source>crank</source>
        <translation>Kurbel</translation>
    </message>
    <message>
        <source>deducted</source>
        <translation>abgezogen</translation>
    </message>
    <message>
        <source>diesel</source>
        <translation>Diesel</translation>
    </message>
    <message>
        <source>driven by the engine</source>
        <translation>vom Motor angetrieben</translation>
    </message>
    <message>
        <source>efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>equal displacement, equal shaft speed</source>
        <translation>gleicher Hubraum, gleiche Drehzahl</translation>
    </message>
    <message>
        <source>equal mean piston speed</source>
        <translation>gleiche mittlere Kolben­geschwin­digkeit</translation>
    </message>
    <message>
        <source>equal power, enlarged by cylinders</source>
        <translation>gleiche Leistung, durch weitere Zylinder vergrößert</translation>
    </message>
    <message>
        <source>ethanol</source>
        <translation>Ethanol</translation>
    </message>
    <message>
        <source>four-stroke</source>
        <translation>Viertakt</translation>
    </message>
    <message>
        <source>gross</source>
        <translation>brutto</translation>
    </message>
    <message>
        <source>h: axial height of the running face.</source>
        <translation>h: axiale Höhe der Lauffläche.</translation>
    </message>
    <message>
        <source>hydrogen</source>
        <translation>Wasserstoff</translation>
    </message>
    <message>
        <source>methane</source>
        <translation>Methan</translation>
    </message>
    <message>
        <source>naturally aspirated</source>
        <translation>nicht aufgeladen</translation>
    </message>
    <message>
        <source>net</source>
        <translation>netto</translation>
    </message>
    <message>
        <source>no correlation for this fuel, or motored</source>
        <translation>keine Korrelation für diesen Kraftstoff oder geschleppter Betrieb</translation>
    </message>
    <message>
        <source>no dynamic rating is given</source>
        <translation>keine dynamische Tragzahl angegeben</translation>
    </message>
    <message>
        <source>no fuel is burnt</source>
        <translation>kein Kraftstoff wird verbrannt</translation>
    </message>
    <message>
        <source>no inertia is given</source>
        <translation>kein Trägheitsmoment angegeben</translation>
    </message>
    <message>
        <source>no static rating is given</source>
        <translation>keine statische Tragzahl angegeben</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht eingerechnet</translation>
    </message>
    <message>
        <source>perfectly balanced</source>
        <translation>vollkommen ausgeglichen</translation>
    </message>
    <message>
        <source>petrol</source>
        <translation>Benzin</translation>
    </message>
    <message>
        <source>power per displacement</source>
        <translation>Leistung je Hubraum</translation>
    </message>
    <message>
        <source>power per mass</source>
        <translation>Leistung je Masse</translation>
    </message>
    <message>
        <source>q: pressure of the ring on the liner from its own tension.</source>
        <translation>q: Anpressdruck des Rings aus seiner eigenen Spannung.</translation>
    </message>
    <message>
        <source>r: the roller runs on the track with its axis radial to the shaft.</source>
        <translation>r: Die Rolle läuft mit radial zur Welle stehender Achse auf der Bahn.</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>spark ignition</source>
        <translation>Fremdzündung</translation>
    </message>
    <message>
        <source>the engine is motored</source>
        <translation>der Motor wird geschleppt</translation>
    </message>
    <message>
        <source>the roller is not crowned</source>
        <translation>die Rolle ist nicht ballig</translation>
    </message>
    <message>
        <source>torque per displacement</source>
        <translation>Drehmoment je Hubraum</translation>
    </message>
    <message>
        <source>turbocharger</source>
        <translation>Abgasturbolader</translation>
    </message>
    <message>
        <source>turbocharger with liquid after-cooler</source>
        <translation>Abgasturbolader mit flüssigkeitsgekühltem Ladeluftkühler</translation>
    </message>
    <message>
        <source>two-stroke</source>
        <translation>Zweitakt</translation>
    </message>
    <message>
        <source>Δ: turns the exhaust track against the inlet track, in shaft degrees; adds to the exhaust lead.</source>
        <translation>Δ: dreht die Auslassbahn gegenüber der Einlassbahn, in Wellengrad; kommt zur Auslassvoreilung hinzu.</translation>
    </message>
    <message>
        <source>δ: shaft degrees by which the exhaust piston runs ahead of the inlet piston.</source>
        <translation>δ: Wellengrad, um die der Auslasskolben dem Einlasskolben vorauseilt.</translation>
    </message>
    <message>
        <source>σ_allow of the track; empty: from the table of track materials.</source>
        <translation>σ_zul der Bahn; leer: aus der Tabelle der Bahnwerkstoffe.</translation>
    </message>
    <message>
        <source>ψ: place of this cylinder on the cylinder circle.</source>
        <translation>ψ: Ort dieses Zylinders auf dem Zylinderkreis.</translation>
    </message>
    <message>
        <source>&gt; %1 and ≤ %2</source>
        <translation>&gt; %1 und ≤ %2</translation>
    </message>
    <message>
        <source>Adjuster</source>
        <translation>Versteller</translation>
    </message>
    <message>
        <source>Air supply</source>
        <translation>Luftversorgung</translation>
    </message>
    <message>
        <source>Blowdown</source>
        <translation>Vorauslass</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Exhaust track</source>
        <translation>Auslassbahn</translation>
    </message>
    <message>
        <source>Friction</source>
        <translation>Reibung</translation>
    </message>
    <message>
        <source>Inlet track</source>
        <translation>Einlassbahn</translation>
    </message>
    <message>
        <source>Inner dead centre</source>
        <translation>Innerer Totpunkt</translation>
    </message>
    <message>
        <source>Oil film</source>
        <translation>Ölfilm</translation>
    </message>
    <message>
        <source>Outer dead centre</source>
        <translation>Äußerer Totpunkt</translation>
    </message>
    <message>
        <source>Piston acceleration</source>
        <translation>Kolben­beschleunigung</translation>
    </message>
    <message>
        <source>Rocking moment about x</source>
        <translation>Freies Massenmoment um x</translation>
    </message>
    <message>
        <source>Rocking moment about y</source>
        <translation>Freies Massenmoment um y</translation>
    </message>
    <message>
        <source>Operating point</source>
        <translation>Betriebspunkt</translation>
    </message>
    <message>
        <source>Shaft angle</source>
        <translation>Wellenwinkel</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>≥ %1 and &lt; %2</source>
        <translation>≥ %1 und &lt; %2</translation>
    </message>
    <message>
        <source>≥ %1 and ≤ %2</source>
        <translation>≥ %1 und ≤ %2</translation>
    </message>
    <message>
        <source>en</source>
        <comment>the language of these words</comment>
        <translation>de</translation>
    </message>
    <message>
        <source>Largest axial force to hold where the adjuster pushes the track along its helix</source>
        <translation>Größte zu haltende Axialkraft, wo der Versteller die Bahn längs der Steilverzahnung schiebt</translation>
    </message>
    <message>
        <source>Largest torque that the adjuster must hold</source>
        <translation>Größtes Drehmoment, das der Versteller halten muss</translation>
    </message>
    <message>
        <source>Mean torque that the adjuster must hold, forward positive</source>
        <translation>Mittleres Drehmoment, das der Versteller halten muss, vorwärts positiv</translation>
    </message>
    <message>
        <source>without a helix the track cannot be turned by pushing it</source>
        <translation>ohne Steilverzahnung lässt sich die Bahn nicht durch Verschieben drehen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not begin with a number; it must be %2</source>
        <translation>„%1“ beginnt nicht mit einer Zahl; verlangt ist %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a separator in the number; write 1500.5, with a point and no thousands separators</source>
        <translation>„%1“ hat ein Trennzeichen in der Zahl; schreiben Sie 1500.5, mit Punkt und ohne Tausendertrennzeichen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit; it must be %2</source>
        <translation>„%1“ hat keine Einheit; verlangt ist %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is %2</source>
        <translation>„%1“ %2 ist</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is %2; it must be %3</source>
        <translation>„%1“ ist %2; verlangt ist %3</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is given</source>
        <translation>„%1“ angegeben ist</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is given twice; it must be given once</source>
        <translation>„%1“ steht zweimal da; zulässig ist einmal</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a function</source>
        <translation>„%1“ ist keine Funktion</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a key here; %2</source>
        <translation>„%1“ ist hier kein Schlüssel; %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a key here; the nearest known key is &quot;%2&quot;</source>
        <translation>„%1“ ist hier kein Schlüssel; der nächstliegende bekannte ist „%2“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a unit known here; the nearest is &quot;%2&quot;; known: %3</source>
        <translation>„%1“ ist keine hier bekannte Einheit; am nächsten liegt „%2“; bekannt: %3</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not known</source>
        <translation>„%1“ ist unbekannt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is one of %2</source>
        <translation>„%1“ eines von %2 ist</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is the name of another snapshot; no two may be alike</source>
        <translation>„%1“ heißt schon eine andere Variante; jeder Name darf nur einmal vorkommen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too large</source>
        <translation>„%1“ ist zu groß</translation>
    </message>
    <message>
        <source>&quot;%1&quot; of %2 arguments is not known</source>
        <translation>„%1“ mit %2 Argumenten ist unbekannt</translation>
    </message>
    <message>
        <source>%1 % of one inlet-side piston&apos;s inertia force of the main order remains on the cylinder pair; torque reaction remains in any case.</source>
        <translation>%1 % der Massenkraft eines Einlasskolbens in der Hauptordnung bleiben am Kolbenpaar übrig; das Reaktionsmoment bleibt in jedem Fall.</translation>
    </message>
    <message>
        <source>%1 = %2 = %3 %4; claimed %5</source>
        <translation>%1 = %2 = %3 %4; angegeben %5</translation>
    </message>
    <message>
        <source>%1 K is outside %2 … %3 K</source>
        <translation>%1 K liegt außerhalb von %2 … %3 K</translation>
    </message>
    <message>
        <source>%1 angles are listed; there must be one for each of the %2 cylinders</source>
        <translation>%1 Winkel sind aufgezählt; für jeden der %2 Zylinder muss es einen geben</translation>
    </message>
    <message>
        <source>%1 bar + %2 bar</source>
        <translation>%1 bar + %2 bar</translation>
    </message>
    <message>
        <source>%1 bar + (0.97 + 0.15·%2 + 0.05·%3²) bar</source>
        <translation>%1 bar + (0,97 + 0,15·%2 + 0,05·%3²) bar</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 lässt sich nicht lesen: %2</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2</source>
        <translation>%1 lässt sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>%1 cannot make that many power strokes.</source>
        <translation>%1 kann nicht so viele Arbeitshübe machen.</translation>
    </message>
    <message>
        <source>%1 chambers·%2 reciprocations·%3 = %4</source>
        <translation>%1 Brennräume·%2 Doppelhübe·%3 = %4</translation>
    </message>
    <message>
        <source>%1 does not follow from the other figures.</source>
        <translation>%1 folgt nicht aus den anderen Zahlen.</translation>
    </message>
    <message>
        <source>%1 has %2 bytes; it must have at most %3</source>
        <translation>%1 hat %2 Byte; erlaubt sind höchstens %3</translation>
    </message>
    <message>
        <source>%1 has %2 entries; the number must be %3</source>
        <translation>%1 hat %2 Einträge; verlangte Anzahl: %3</translation>
    </message>
    <message>
        <source>%1 has %2 of %3; it must have exactly one</source>
        <translation>%1 hat %2 von %3; genau eines ist verlangt</translation>
    </message>
    <message>
        <source>%1 is &quot;%2&quot;; it must be &quot;%3&quot; or a group of keys</source>
        <translation>%1 ist „%2“; verlangt ist „%3“ oder eine Gruppe von Schlüsseln</translation>
    </message>
    <message>
        <source>%1 is %2, above %3: %4.</source>
        <translation>%1: %2, über %3. Abhilfe: %4.</translation>
    </message>
    <message>
        <source>%1 is %2, below %3: %4.</source>
        <translation>%1: %2, unter %3. Abhilfe: %4.</translation>
    </message>
    <message>
        <source>%1 is %2, written by a newer program; this one reads up to %3</source>
        <translation>%1 ist %2, von einem neueren Programm geschrieben; dieses liest bis %3</translation>
    </message>
    <message>
        <source>%1 is %2; it must be &quot;%3&quot;</source>
        <translation>%1 ist %2; verlangt ist „%3“</translation>
    </message>
    <message>
        <source>%1 is %2; it must be %3</source>
        <translation>%1 ist %2; verlangt ist %3</translation>
    </message>
    <message>
        <source>%1 is %2; it must be %3 %4 in SI units</source>
        <translation>%1 ist %2; verlangt ist %3 %4 in SI-Einheiten</translation>
    </message>
    <message>
        <source>%1 is %2; it must be a group of keys</source>
        <translation>%1 ist %2; verlangt ist eine Gruppe von Schlüsseln</translation>
    </message>
    <message>
        <source>%1 is %2; it must be a list</source>
        <translation>%1 ist %2; verlangt ist eine Liste</translation>
    </message>
    <message>
        <source>%1 is %2; it must be a number</source>
        <translation>%1 ist %2; verlangt ist eine Zahl</translation>
    </message>
    <message>
        <source>%1 is %2; it must be a single value</source>
        <translation>%1 ist %2; verlangt ist ein einzelner Wert</translation>
    </message>
    <message>
        <source>%1 is %2; it must be a text</source>
        <translation>%1 ist %2; verlangt ist ein Text</translation>
    </message>
    <message>
        <source>%1 is %2; it must be a whole number</source>
        <translation>%1 ist %2; verlangt ist eine ganze Zahl</translation>
    </message>
    <message>
        <source>%1 is %2; it must be a whole number from 1 to %3</source>
        <translation>%1 ist %2; verlangt ist eine ganze Zahl von 1 bis %3</translation>
    </message>
    <message>
        <source>%1 is %2; it must be one of %3; the nearest is &quot;%4&quot;</source>
        <translation>%1 ist %2; verlangt ist eines von %3; am nächsten liegt „%4“</translation>
    </message>
    <message>
        <source>%1 is %2; it must be true or false</source>
        <translation>%1 ist %2; verlangt ist true oder false</translation>
    </message>
    <message>
        <source>%1 is %2; it must be ≥ %3 and ≤ %4</source>
        <translation>%1 ist %2; verlangt ist ≥ %3 und ≤ %4</translation>
    </message>
    <message>
        <source>%1 is missing; &quot;%2&quot; must be given</source>
        <translation>%1 fehlt; „%2“ muss angegeben sein</translation>
    </message>
    <message>
        <source>%1 is not a number of JSON; numbers must be finite</source>
        <translation>%1 ist in JSON keine Zahl; Zahlen müssen endlich sein</translation>
    </message>
    <message>
        <source>%1 is used only where %2; leave it out</source>
        <translation>%1 gilt nur, wo %2; bitte weglassen</translation>
    </message>
    <message>
        <source>%1 junctions</source>
        <translation>%1 Übergängen</translation>
    </message>
    <message>
        <source>%1 kPa of dry air is outside 80 … 110 kPa</source>
        <translation>%1 kPa trockener Luft liegt außerhalb von 80 … 110 kPa</translation>
    </message>
    <message>
        <source>%1 knots are allowed, must be at least 3</source>
        <translation>Zulässig sind %1 Stützpunkte; nötig sind mindestens 3</translation>
    </message>
    <message>
        <source>%1 knots are wanted, must be 3 to %2</source>
        <translation>Gewünscht sind %1 Stützpunkte; möglich sind 3 bis %2</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <translation>%1 erforderlich</translation>
    </message>
    <message>
        <source>%1 or null</source>
        <translation>%1 oder null</translation>
    </message>
    <message>
        <source>%1 pistons/%2 chambers = %3</source>
        <translation>%1 Kolben/%2 Brennräume = %3</translation>
    </message>
    <message>
        <source>%1 track</source>
        <translation>%1bahn</translation>
    </message>
    <message>
        <source>%1, shaft order %2</source>
        <translation>%1, Wellenordnung %2</translation>
    </message>
    <message>
        <source>%1/(2π·%2) = %3 rpm; claimed %4 rpm</source>
        <translation>%1/(2π·%2) = %3/min; angegeben %4/min</translation>
    </message>
    <message>
        <source>%1: outside the limits of the standard</source>
        <translation>%1: außerhalb der Grenzen der Norm</translation>
    </message>
    <message>
        <source>%1; %2 L or %3 L; claimed %4 L</source>
        <translation>%1; %2 L oder %3 L; angegeben %4 L</translation>
    </message>
    <message>
        <source>%1; claimed %2</source>
        <translation>%1; angegeben %2</translation>
    </message>
    <message>
        <source>%1; ·%2 = %3 L; claimed %4 L</source>
        <translation>%1; ·%2 = %3 L; angegeben %4 L</translation>
    </message>
    <message>
        <source>(number + %1)·unit</source>
        <translation>(Zahl + %1)·Einheit</translation>
    </message>
    <message>
        <source>2π·%1·%2 = %3 kW; claimed %4 kW</source>
        <translation>2π·%1·%2 = %3 kW; angegeben %4 kW</translation>
    </message>
    <message>
        <source>&gt; %1 and &lt; %2</source>
        <translation>&gt; %1 und &lt; %2</translation>
    </message>
    <message>
        <source>A chamber has half a piston (double-acting), one, or two (opposed).</source>
        <translation>Ein Brennraum hat einen halben Kolben (doppeltwirkend), einen oder zwei (gegenläufig).</translation>
    </message>
    <message>
        <source>A figure with its unit and the conditions under which it was measured.</source>
        <translation>Ein Wert mit seiner Einheit und den Bedingungen, unter denen er gemessen wurde.</translation>
    </message>
    <message>
        <source>A piston makes %1 strokes for each power stroke.</source>
        <translation>Ein Kolben macht %1 Hübe für jeden Arbeitshub.</translation>
    </message>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>Allowable stress of %1</source>
        <translation>Zulässige Pressung: %1</translation>
    </message>
    <message>
        <source>Amplitude of cos(k·φ·lobes).</source>
        <translation>Amplitude von cos(k·φ·Nocken).</translation>
    </message>
    <message>
        <source>Amplitude of sin(k·φ·lobes).</source>
        <translation>Amplitude von sin(k·φ·Nocken).</translation>
    </message>
    <message>
        <source>Angle of cylinder</source>
        <translation>Winkel von Zylinder</translation>
    </message>
    <message>
        <source>Another supply pressure.</source>
        <translation>Ein anderer Ladedruck.</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Blair, Design and Simulation of Two-Stroke Engines; geometric area, no coefficient.</source>
        <translation>Blair, Design and Simulation of Two-Stroke Engines; geometrischer Querschnitt, kein Beiwert.</translation>
    </message>
    <message>
        <source>Blower or compressor, deducted</source>
        <translation>Gebläse oder Verdichter, abgezogen</translation>
    </message>
    <message>
        <source>Chamber volume when the last port closes</source>
        <translation>Brennraum­volumen beim Schließen des letzten Schlitzes</translation>
    </message>
    <message>
        <source>Change of blowdown</source>
        <translation>Änderung des Vorauslasses</translation>
    </message>
    <message>
        <source>Change of compression ratio</source>
        <translation>Änderung der Verdichtung</translation>
    </message>
    <message>
        <source>Change of overlap</source>
        <translation>Änderung der Überschneidung</translation>
    </message>
    <message>
        <source>Change of trapped compression ratio</source>
        <translation>Änderung der effektiven Verdichtung</translation>
    </message>
    <message>
        <source>Charging efficiency</source>
        <translation>Liefergrad</translation>
    </message>
    <message>
        <source>Required charging efficiency</source>
        <translation>Erforderlicher Liefergrad</translation>
    </message>
    <message>
        <source>Claim is missing; a statement needs its words</source>
        <translation>Der Wortlaut fehlt; eine Aussage braucht ihren Wortlaut</translation>
    </message>
    <message>
        <source>Combustion efficiency, the oxygen there is, and the rest of the Wiebe function.</source>
        <translation>Umsetzungsgrad, der vorhandene Sauerstoff und der Rest der Wiebe-Funktion.</translation>
    </message>
    <message>
        <source>Contact force there</source>
        <translation>Kontaktkraft dort</translation>
    </message>
    <message>
        <source>Cosine part</source>
        <translation>Kosinusanteil</translation>
    </message>
    <message>
        <source>Definition: (max − min)/|mean|.</source>
        <translation>Definition: (max − min)/|Mittel|.</translation>
    </message>
    <message>
        <source>Definition; of unequal lobes the lower one.</source>
        <translation>Definition; bei ungleichen Nocken der kleinere Wert.</translation>
    </message>
    <message>
        <source>Delivery ratio or volumetric efficiency, ambient density</source>
        <translation>Luftaufwand oder volumetrischer Wirkungsgrad, Umgebungsdichte</translation>
    </message>
    <message>
        <source>Design of the snapshot</source>
        <translation>Entwurf der Variante</translation>
    </message>
    <message>
        <source>Designs kept under a name to be compared and restored; they do not change what is computed.</source>
        <translation>Unter einem Namen gespeicherte Entwürfe zum Vergleichen und Zurückholen; sie ändern nichts an der Rechnung.</translation>
    </message>
    <message>
        <source>Displacement (or bore, stroke and pistons)</source>
        <translation>Hubraum (oder Bohrung, Kolbenhub und Kolben)</translation>
    </message>
    <message>
        <source>Distance of each piston ring from the crown, in ascending order.</source>
        <translation>Abstand jedes Kolbenrings vom Kolbenboden, aufsteigend.</translation>
    </message>
    <message>
        <source>Exhaust closing</source>
        <translation>Schließen des Auslasses</translation>
    </message>
    <message>
        <source>Exhaust opening</source>
        <translation>Öffnen des Auslasses</translation>
    </message>
    <message>
        <source>Exhaust ports</source>
        <translation>Auslassschlitze</translation>
    </message>
    <message>
        <source>Format is %1; it must be &quot;%2&quot;</source>
        <translation>Das Format ist %1; verlangt ist „%2“</translation>
    </message>
    <message>
        <source>Format version</source>
        <translation>Formatversion</translation>
    </message>
    <message>
        <source>Format version is %1; it must be a whole number from 1 to %2</source>
        <translation>Die Formatversion ist %1; verlangt ist eine ganze Zahl von 1 bis %2</translation>
    </message>
    <message>
        <source>Fresh gas kept at the last port closing</source>
        <translation>Frischgas, das beim Schließen des letzten Schlitzes im Zylinder bleibt</translation>
    </message>
    <message>
        <source>Friction added against the four-stroke, share of the fuel heat</source>
        <translation>Zusätzliche Reibung gegenüber dem Viertakter, Anteil an der Kraftstoffwärme</translation>
    </message>
    <message>
        <source>Friction of guides or skirts</source>
        <translation>Reibung von Führungen oder Schäften</translation>
    </message>
    <message>
        <source>Friction of rollers and bearings, or the whole fit</source>
        <translation>Reibung von Rollen und Lagern oder die ganze Näherung</translation>
    </message>
    <message>
        <source>Gap between the crowns at inner dead centre</source>
        <translation>Abstand der Kolbenböden im inneren Totpunkt</translation>
    </message>
    <message>
        <source>Gas constant of dry air</source>
        <translation>Gaskonstante trockener Luft</translation>
    </message>
    <message>
        <source>Geometry of the pair at inner dead centre.</source>
        <translation>Geometrie des Paares im inneren Totpunkt.</translation>
    </message>
    <message>
        <source>Geometry of the pair at outer dead centre.</source>
        <translation>Geometrie des Paares im äußeren Totpunkt.</translation>
    </message>
    <message>
        <source>Given in the design.</source>
        <translation>Im Entwurf angegeben.</translation>
    </message>
    <message>
        <source>Given numbers that do not fit each other</source>
        <translation>Vorgegebene Zahlen, die nicht zueinander passen</translation>
    </message>
    <message>
        <source>Half-width of the contact there</source>
        <translation>Halbe Kontaktbreite dort</translation>
    </message>
    <message>
        <source>Heat kept from the walls against the four-stroke, share of the fuel heat</source>
        <translation>Gegenüber dem Viertakter vermiedene Wandwärme, Anteil an der Kraftstoffwärme</translation>
    </message>
    <message>
        <source>Heat to the walls, share of the fuel heat</source>
        <translation>Wärme an die Wände, Anteil an der Kraftstoffwärme</translation>
    </message>
    <message>
        <source>Heywood, table D.4</source>
        <translation>Heywood, Tabelle D.4</translation>
    </message>
    <message>
        <source>Heywood, table D.4 (gasoline)</source>
        <translation>Heywood, Tabelle D.4 (Benzin)</translation>
    </message>
    <message>
        <source>Heywood, table D.4 (light diesel)</source>
        <translation>Heywood, Tabelle D.4 (leichter Diesel)</translation>
    </message>
    <message>
        <source>Holds for</source>
        <translation>Gilt für</translation>
    </message>
    <message>
        <source>Inlet closing</source>
        <translation>Schließen des Einlasses</translation>
    </message>
    <message>
        <source>Inlet opening</source>
        <translation>Öffnen des Einlasses</translation>
    </message>
    <message>
        <source>Inlet ports</source>
        <translation>Einlassschlitze</translation>
    </message>
    <message>
        <source>Jerk</source>
        <translation>Ruck</translation>
    </message>
    <message>
        <source>Largest lever arm</source>
        <translation>Größter Hebelarm</translation>
    </message>
    <message>
        <source>Largest shaking force along the cylinders</source>
        <translation>Größte freie Massenkraft längs der Zylinder</translation>
    </message>
    <message>
        <source>Largest side force of a piston</source>
        <translation>Größte Seitenkraft eines Kolbens</translation>
    </message>
    <message>
        <source>Lift as a sum of cosine and sine waves over the pattern.</source>
        <translation>Weg als Summe von Kosinus- und Sinuswellen über die Kurve.</translation>
    </message>
    <message>
        <source>Longest firing interval, output shaft</source>
        <translation>Längster Zündabstand, Abtriebswelle</translation>
    </message>
    <message>
        <source>Lower heating value of the fuel</source>
        <translation>Unterer Heizwert des Kraftstoffs</translation>
    </message>
    <message>
        <source>Masses and exhaust lead as built, weighed and measured.</source>
        <translation>Massen und Auslassvoreilung wie gebaut, gewogen und gemessen.</translation>
    </message>
    <message>
        <source>Mean effective pressure of %1</source>
        <translation>Mitteldruck: %1</translation>
    </message>
    <message>
        <source>Mean piston speed at the highest speed given</source>
        <translation>Mittlere Kolbengeschwindigkeit bei der höchsten angegebenen Drehzahl</translation>
    </message>
    <message>
        <source>Mean torque lost, all cylinders</source>
        <translation>Mittleres verlorenes Drehmoment, alle Zylinder</translation>
    </message>
    <message>
        <source>Mechanical friction, share of the fuel heat</source>
        <translation>Mechanische Reibung, Anteil an der Kraftstoffwärme</translation>
    </message>
    <message>
        <source>Name of the snapshot</source>
        <translation>Name der Variante</translation>
    </message>
    <message>
        <source>Net power, if auxiliaries and silencing take a tenth</source>
        <translation>Nettoleistung, wenn Nebenaggregate und Schalldämpfung ein Zehntel nehmen</translation>
    </message>
    <message>
        <source>Not empty, and no two alike.</source>
        <translation>Nicht leer und nicht doppelt vergeben.</translation>
    </message>
    <message>
        <source>Numbers not given, and what they would decide</source>
        <translation>Nicht angegebene Zahlen und was sie entscheiden würden</translation>
    </message>
    <message>
        <source>Open CASCADE could not translate the solid to STEP</source>
        <translation>Open CASCADE konnte den Körper nicht nach STEP übersetzen</translation>
    </message>
    <message>
        <source>Open CASCADE failed on the %1: %2</source>
        <translation>Open CASCADE scheiterte an der %1: %2</translation>
    </message>
    <message>
        <source>Opposed pistons cancel only with equal masses, equal tracks and no exhaust lead; neither lead nor masses are given.</source>
        <translation>Gegenläufige Kolben heben sich nur mit gleichen Massen, gleichen Bahnen und ohne Auslassvoreilung auf; weder Voreilung noch Massen sind angegeben.</translation>
    </message>
    <message>
        <source>P = ω·T ≤ ω·T_max, exact</source>
        <translation>P = ω·T ≤ ω·T_max, exakt</translation>
    </message>
    <message>
        <source>Peak piston acceleration</source>
        <translation>Höchste Kolben­beschleunigung</translation>
    </message>
    <message>
        <source>Pieces of the pattern in the order of rotation, from outer dead centre on.</source>
        <translation>Abschnitte der Kurve in Drehrichtung, ab dem äußeren Totpunkt.</translation>
    </message>
    <message>
        <source>Points of a free-form lobe, joined by a periodic spline of fifth degree.</source>
        <translation>Punkte eines frei geformten Nockens, verbunden durch einen periodischen Spline fünften Grades.</translation>
    </message>
    <message>
        <source>Power is torque times speed.</source>
        <translation>Leistung ist Drehmoment mal Drehzahl.</translation>
    </message>
    <message>
        <source>Power per displacement</source>
        <translation>Leistung je Hubraum</translation>
    </message>
    <message>
        <source>Power per mass</source>
        <translation>Leistung je Masse</translation>
    </message>
    <message>
        <source>Rating (gross or net)</source>
        <translation>Leistungsangabe (brutto oder netto)</translation>
    </message>
    <message>
        <source>Read where the last port closes.</source>
        <translation>Wert beim Schließen des letzten Schlitzes.</translation>
    </message>
    <message>
        <source>Reference air</source>
        <translation>Bezugsluft</translation>
    </message>
    <message>
        <source>Ring distance</source>
        <translation>Ringabstand</translation>
    </message>
    <message>
        <source>Rows of ports uncovered by the exhaust piston.</source>
        <translation>Schlitzreihen, die der Auslasskolben freigibt.</translation>
    </message>
    <message>
        <source>Rows of ports uncovered by the inlet piston.</source>
        <translation>Schlitzreihen, die der Einlasskolben freigibt.</translation>
    </message>
    <message>
        <source>Says what this file is.</source>
        <translation>Gibt an, was diese Datei enthält.</translation>
    </message>
    <message>
        <source>Shaking force</source>
        <translation>Freie Massenkraft</translation>
    </message>
    <message>
        <source>Shift of the exhaust track, outward</source>
        <translation>Verschiebung der Auslassbahn, nach außen</translation>
    </message>
    <message>
        <source>Shortest firing interval, output shaft</source>
        <translation>Kürzester Zündabstand, Abtriebswelle</translation>
    </message>
    <message>
        <source>Sine part</source>
        <translation>Sinusanteil</translation>
    </message>
    <message>
        <source>Speed of cam or crank</source>
        <translation>Drehzahl von Kurvenbahn oder Kurbel</translation>
    </message>
    <message>
        <source>Speed of the output shaft</source>
        <translation>Drehzahl der Abtriebswelle</translation>
    </message>
    <message>
        <source>Statements</source>
        <translation>Aussagen</translation>
    </message>
    <message>
        <source>Statements has %1 entries; the number must be ≤ %2</source>
        <translation>Es gibt %1 Aussagen; erlaubt sind höchstens %2</translation>
    </message>
    <message>
        <source>Statements is %1; it must be a list</source>
        <translation>Für die Aussagen steht %1; verlangt ist eine Liste</translation>
    </message>
    <message>
        <source>Stoichiometric air–fuel ratio</source>
        <translation>Stöchiometrischer Luftbedarf</translation>
    </message>
    <message>
        <source>Stroke of a piston</source>
        <translation>Kolbenhub</translation>
    </message>
    <message>
        <source>Sum of the losses.</source>
        <translation>Summe der Verluste.</translation>
    </message>
    <message>
        <source>The supply pressure.</source>
        <translation>Der Ladedruck.</translation>
    </message>
    <message>
        <source>The cycle, and lobes (or a crank).</source>
        <translation>Das Arbeitsverfahren und die Nocken (oder eine Kurbel).</translation>
    </message>
    <message>
        <source>The figure itself cannot be computed.</source>
        <translation>Der Wert selbst lässt sich nicht berechnen.</translation>
    </message>
    <message>
        <source>The number of chambers, the cycle, and lobes (or a crank).</source>
        <translation>Die Zahl der Brennräume, das Arbeitsverfahren und die Nocken (oder eine Kurbel).</translation>
    </message>
    <message>
        <source>The number of strokes is not given as a value.</source>
        <translation>Die Zahl der Hübe ist nicht als Wert angegeben.</translation>
    </message>
    <message>
        <source>The number.</source>
        <translation>Die Zahl.</translation>
    </message>
    <message>
        <source>The numbers listed as missing.</source>
        <translation>Die als fehlend aufgeführten Zahlen.</translation>
    </message>
    <message>
        <source>The track that moves the inlet pistons.</source>
        <translation>Die Bahn, die die Einlasskolben bewegt.</translation>
    </message>
    <message>
        <source>Total torque</source>
        <translation>Gesamtes Drehmoment</translation>
    </message>
    <message>
        <source>V_d as given</source>
        <translation>V_d wie angegeben</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Version of the format that this file follows.</source>
        <translation>Version des Formats, dem diese Datei folgt.</translation>
    </message>
    <message>
        <source>What follows from the numbers</source>
        <translation>Was aus den Zahlen folgt</translation>
    </message>
    <message>
        <source>[(99/%1)^%2·(%3/298)^%4]^%5, q_c = %6 mg/(L·cycle)</source>
        <translation>[(99/%1)^%2·(%3/298)^%4]^%5, q_c = %6 mg/(L·Arbeitsspiel)</translation>
    </message>
    <message>
        <source>a fired engine</source>
        <translation>ein gefeuerter Motor</translation>
    </message>
    <message>
        <source>a group of keys</source>
        <translation>eine Gruppe von Schlüsseln</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number or %1</source>
        <translation>eine Zahl oder %1</translation>
    </message>
    <message>
        <source>a parenthesis is not closed</source>
        <translation>Eine Klammer ist nicht geschlossen</translation>
    </message>
    <message>
        <source>a single value</source>
        <translation>ein einzelner Wert</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a tracer that enters with the supply and leaves with the outflow</source>
        <translation>ein Markierungsstoff (Tracer), der mit der Zuluft eintritt und mit dem ausströmenden Gas austritt</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>about a tenth of the power</source>
        <translation>etwa ein Zehntel der Leistung</translation>
    </message>
    <message>
        <source>agrees</source>
        <translation>trifft zu</translation>
    </message>
    <message>
        <source>air and charge needed, in proportion</source>
        <translation>erforderliche Luft und Ladung, im Verhältnis</translation>
    </message>
    <message>
        <source>ambitious</source>
        <translation>anspruchsvoll</translation>
    </message>
    <message>
        <source>angle is %1, must be a number</source>
        <translation>Der Winkel ist %1, verlangt ist eine Zahl</translation>
    </message>
    <message>
        <source>arithmetic</source>
        <translation>Rechnung</translation>
    </message>
    <message>
        <source>arrays of different shapes meet</source>
        <translation>Wertereihen verschiedener Form sind verknüpft</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>as given: %1</source>
        <translation>wie angegeben: %1</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>back thickness</source>
        <translation>Dicke hinter der Bahn</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>be positive</source>
        <translation>positiv sein</translation>
    </message>
    <message>
        <source>below the band: modest</source>
        <translation>unter dem Bereich: bescheiden</translation>
    </message>
    <message>
        <source>blown two-strokes</source>
        <translation>Zweitakter mit Gebläse</translation>
    </message>
    <message>
        <source>bmep = P/(V_d·c·n)</source>
        <translation>p_me = P/(V_d·c·n)</translation>
    </message>
    <message>
        <source>boosted four-strokes</source>
        <translation>aufgeladene Viertakter</translation>
    </message>
    <message>
        <source>boosted racing engines</source>
        <translation>aufgeladene Rennmotoren</translation>
    </message>
    <message>
        <source>bore diameter of the track blank</source>
        <translation>Bohrungsdurchmesser des Bahnrohlings</translation>
    </message>
    <message>
        <source>building the solid</source>
        <translation>Körper wird erzeugt</translation>
    </message>
    <message>
        <source>cancelled</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>cannot be judged</source>
        <translation>nicht zu beurteilen</translation>
    </message>
    <message>
        <source>car and truck diesels</source>
        <translation>Pkw- und Lkw-Diesel</translation>
    </message>
    <message>
        <source>car and truck diesels at their best</source>
        <translation>Pkw- und Lkw-Diesel in ihrem Bestpunkt</translation>
    </message>
    <message>
        <source>car diesels</source>
        <translation>Pkw-Diesel</translation>
    </message>
    <message>
        <source>claimed power</source>
        <translation>angegebene Leistung</translation>
    </message>
    <message>
        <source>claimed power, lowest speed</source>
        <translation>angegebene Leistung, niedrigste Drehzahl</translation>
    </message>
    <message>
        <source>claimed torque</source>
        <translation>angegebenes Drehmoment</translation>
    </message>
    <message>
        <source>compression</source>
        <translation>Selbst</translation>
    </message>
    <message>
        <source>compressor of isentropic efficiency %1: own estimate</source>
        <translation>Verdichter mit isentropem Wirkungsgrad %1: eigene Schätzung</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>confidence</source>
        <translation>Verlässlichkeit</translation>
    </message>
    <message>
        <source>contradictory</source>
        <translation>widersprüchlich</translation>
    </message>
    <message>
        <source>crankcase-scavenged two-strokes, charging efficiency</source>
        <translation>Zweitakter mit Kurbelkastenspülung, Liefergrad</translation>
    </message>
    <message>
        <source>crown radius</source>
        <translation>Balligkeitsradius</translation>
    </message>
    <message>
        <source>cycle</source>
        <translation>Arbeitsverfahren</translation>
    </message>
    <message>
        <source>disagrees</source>
        <translation>trifft nicht zu</translation>
    </message>
    <message>
        <source>dividing the faces</source>
        <translation>Flächen werden geteilt</translation>
    </message>
    <message>
        <source>dwell</source>
        <translation>Rast</translation>
    </message>
    <message>
        <source>edge relief</source>
        <translation>Kantenrücknahme</translation>
    </message>
    <message>
        <source>engines in general</source>
        <translation>Motoren allgemein</translation>
    </message>
    <message>
        <source>equal cycles in all cylinders</source>
        <translation>gleiche Arbeitsspiele in allen Zylindern</translation>
    </message>
    <message>
        <source>equal fired cycles</source>
        <translation>gleiche gefeuerte Arbeitsspiele</translation>
    </message>
    <message>
        <source>evenly spaced firing</source>
        <translation>gleichmäßig verteilte Zündungen</translation>
    </message>
    <message>
        <source>exact</source>
        <translation>exakt</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>Auslass</translation>
    </message>
    <message>
        <source>factor %1 is outside %2 … %3</source>
        <translation>Faktor %1 liegt außerhalb von %2 … %3</translation>
    </message>
    <message>
        <source>first point</source>
        <translation>erster Punkt</translation>
    </message>
    <message>
        <source>fitting the faces</source>
        <translation>Flächen werden angenähert</translation>
    </message>
    <message>
        <source>flow integrated by the solver, what flowed back deducted</source>
        <translation>Durchfluss, vom Löser integriert, Rückströmung abgezogen</translation>
    </message>
    <message>
        <source>fmep as given</source>
        <translation>p_mr wie angegeben</translation>
    </message>
    <message>
        <source>four-stroke diesels</source>
        <translation>Viertakt-Diesel</translation>
    </message>
    <message>
        <source>four-strokes with tuned intakes</source>
        <translation>Viertakter mit abgestimmtem Saugrohr</translation>
    </message>
    <message>
        <source>four-strokes, volumetric efficiency</source>
        <translation>Viertakter, volumetrischer Wirkungsgrad</translation>
    </message>
    <message>
        <source>from the composition of fuel and dry air</source>
        <translation>aus der Zusammensetzung von Kraftstoff und trockener Luft</translation>
    </message>
    <message>
        <source>front thickness</source>
        <translation>Dicke vor der Bahn</translation>
    </message>
    <message>
        <source>fuel assumed</source>
        <translation>Kraftstoff angenommen</translation>
    </message>
    <message>
        <source>gas cycle %1</source>
        <translation>Arbeitsspiel %1</translation>
    </message>
    <message>
        <source>groove diameter</source>
        <translation>Nutdurchmesser</translation>
    </message>
    <message>
        <source>guide friction blocks the pistons at the steepest rod; the ratio must be smaller</source>
        <translation>Die Führungsreibung blockiert die Kolben bei der größten Schrägstellung des Pleuels; das Verhältnis muss kleiner sein</translation>
    </message>
    <message>
        <source>has no rows of ports, needs one</source>
        <translation>hat keine Schlitzreihen, braucht eine</translation>
    </message>
    <message>
        <source>heating value and air needed</source>
        <translation>Heizwert und Luftbedarf</translation>
    </message>
    <message>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>highest speed</source>
        <translation>höchste Drehzahl</translation>
    </message>
    <message>
        <source>highly boosted four-strokes</source>
        <translation>hoch aufgeladene Viertakter</translation>
    </message>
    <message>
        <source>ignition</source>
        <translation>Zündung</translation>
    </message>
    <message>
        <source>imep = bmep + fmep</source>
        <translation>p_mi = p_me + p_mr</translation>
    </message>
    <message>
        <source>implausible</source>
        <translation>unglaubwürdig</translation>
    </message>
    <message>
        <source>inlet</source>
        <translation>Einlass</translation>
    </message>
    <message>
        <source>inner edge</source>
        <translation>Innenkante</translation>
    </message>
    <message>
        <source>is &quot;%1&quot;, which is not in the table of track materials, and no allowable stress is given</source>
        <translation>ist „%1“; das steht nicht in der Tabelle der Bahnwerkstoffe, und keine zulässige Pressung ist angegeben</translation>
    </message>
    <message>
        <source>it belongs in %1</source>
        <translation>er gehört in %1</translation>
    </message>
    <message>
        <source>joining the walls</source>
        <translation>Wände werden verbunden</translation>
    </message>
    <message>
        <source>judging the cutter</source>
        <translation>Fräser wird geprüft</translation>
    </message>
    <message>
        <source>keys</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>large diesels</source>
        <translation>große Diesel</translation>
    </message>
    <message>
        <source>large four-stroke diesels</source>
        <translation>große Viertakt-Diesel</translation>
    </message>
    <message>
        <source>large two-stroke diesels</source>
        <translation>große Zweitakt-Diesel</translation>
    </message>
    <message>
        <source>law comparison</source>
        <translation>Vergleich der Gesetze</translation>
    </message>
    <message>
        <source>lift is %1, must be a number</source>
        <translation>Der Weg ist %1, verlangt ist eine Zahl</translation>
    </message>
    <message>
        <source>light aircraft engines</source>
        <translation>leichte Flugmotoren</translation>
    </message>
    <message>
        <source>light diesels</source>
        <translation>leichte Diesel</translation>
    </message>
    <message>
        <source>line %1, column %2: %3</source>
        <translation>Zeile %1, Spalte %2: %3</translation>
    </message>
    <message>
        <source>lobes is %1, must be at least 1</source>
        <translation>Die Zahl der Nocken ist %1, verlangt ist mindestens 1</translation>
    </message>
    <message>
        <source>low</source>
        <translation>gering</translation>
    </message>
    <message>
        <source>low- to high-speed diesels</source>
        <translation>langsame bis schnelle Diesel</translation>
    </message>
    <message>
        <source>m = c, two-stroke</source>
        <translation>m = c, Zweitakt</translation>
    </message>
    <message>
        <source>m as given</source>
        <translation>m wie angegeben</translation>
    </message>
    <message>
        <source>mean piston speed</source>
        <translation>mittlere Kolben­geschwin­digkeit</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>more than one</source>
        <translation>mehr als eines</translation>
    </message>
    <message>
        <source>more than the displacement at ambient density: a blower has to deliver it</source>
        <translation>mehr als der Hubraum bei Umgebungsdichte: Ein Gebläse muss sie liefern</translation>
    </message>
    <message>
        <source>must be less than the bore</source>
        <translation>muss kleiner sein als die Bohrung</translation>
    </message>
    <message>
        <source>must be positive</source>
        <translation>muss positiv sein</translation>
    </message>
    <message>
        <source>must end higher than it starts</source>
        <translation>muss höher enden, als er beginnt</translation>
    </message>
    <message>
        <source>must end lower than it starts</source>
        <translation>muss niedriger enden, als er beginnt</translation>
    </message>
    <message>
        <source>must keep its lift</source>
        <translation>muss den Weg konstant halten</translation>
    </message>
    <message>
        <source>must lie between %1 and %2</source>
        <translation>muss zwischen %1 und %2 liegen</translation>
    </message>
    <message>
        <source>must not be negative</source>
        <translation>darf nicht negativ sein</translation>
    </message>
    <message>
        <source>must not exceed half of the width or height</source>
        <translation>darf die halbe Breite oder Höhe nicht übersteigen</translation>
    </message>
    <message>
        <source>no cyclic steady state after %1 cycles: the state still changes by %2 from one to the next</source>
        <translation>Kein eingeschwungener Zustand nach %1 Arbeitsspielen: Der Zustand ändert sich von einem zum nächsten noch um %2</translation>
    </message>
    <message>
        <source>no fired four-stroke to compare with</source>
        <translation>kein gefeuerter Viertakter zum Vergleich</translation>
    </message>
    <message>
        <source>no speeds are given</source>
        <translation>Es sind keine Drehzahlen angegeben</translation>
    </message>
    <message>
        <source>not available for this engine</source>
        <translation>für diesen Motor nicht verfügbar</translation>
    </message>
    <message>
        <source>not valid JSON near &quot;%1&quot;</source>
        <translation>kein gültiges JSON bei „%1“</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>number·%1</source>
        <translation>Zahl·%1</translation>
    </message>
    <message>
        <source>of the first cycle</source>
        <translation>des ersten Arbeitsspiels</translation>
    </message>
    <message>
        <source>one junction</source>
        <translation>einem Übergang</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>eines von %1</translation>
    </message>
    <message>
        <source>only with boost</source>
        <translation>nur mit Aufladung</translation>
    </message>
    <message>
        <source>order %1 is given before, must be given once</source>
        <translation>Die Ordnung %1 steht schon vorher da, sie darf nur einmal vorkommen</translation>
    </message>
    <message>
        <source>order is %1, must be within 1 … %2</source>
        <translation>Die Ordnung ist %1; sie muss zwischen 1 und %2 liegen</translation>
    </message>
    <message>
        <source>ordinary</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>outer edge</source>
        <translation>Außenkante</translation>
    </message>
    <message>
        <source>outside diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>outside the band of the named source</source>
        <translation>außerhalb des Bereichs der genannten Quelle</translation>
    </message>
    <message>
        <source>overturned</source>
        <translation>widerlegt</translation>
    </message>
    <message>
        <source>own estimate</source>
        <translation>eigene Schätzung</translation>
    </message>
    <message>
        <source>pattern has no rise, needs at least one rise and one return</source>
        <translation>Die Kurve hat keinen Anstieg; sie braucht mindestens einen Anstieg und einen Rückgang</translation>
    </message>
    <message>
        <source>petrol engines</source>
        <translation>Benzinmotoren</translation>
    </message>
    <message>
        <source>pitch radius</source>
        <translation>Teilkreisradius</translation>
    </message>
    <message>
        <source>placing points</source>
        <translation>Punkte werden gesetzt</translation>
    </message>
    <message>
        <source>placing the cutter</source>
        <translation>Fräser wird gesetzt</translation>
    </message>
    <message>
        <source>positive</source>
        <translation>positiv</translation>
    </message>
    <message>
        <source>power per displacement and mass, air and charge needed</source>
        <translation>Leistung je Hubraum und Masse, erforderliche Luft und Ladung</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>push</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>racing engines</source>
        <translation>Rennmotoren</translation>
    </message>
    <message>
        <source>racing four-strokes</source>
        <translation>Renn-Viertakter</translation>
    </message>
    <message>
        <source>racing two-strokes with tuned exhaust</source>
        <translation>Renn-Zweitakter mit Resonanzauspuff</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <source>rests on an assumption</source>
        <translation>beruht auf einer Annahme</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rückgang</translation>
    </message>
    <message>
        <source>rise</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>rolling and roller bearings</source>
        <translation>Rollreibung und Rollenlager</translation>
    </message>
    <message>
        <source>segment is %1, must be 0 to %2</source>
        <translation>Der Abschnitt ist %1, erlaubt ist 0 bis %2</translation>
    </message>
    <message>
        <source>slip across the rollers</source>
        <translation>Schlupf über die Rollenbreite</translation>
    </message>
    <message>
        <source>small and car engines</source>
        <translation>kleine und Pkw-Motoren</translation>
    </message>
    <message>
        <source>small and car engines at their best</source>
        <translation>kleine und Pkw-Motoren in ihrem Bestpunkt</translation>
    </message>
    <message>
        <source>small and car spark-ignition four-strokes</source>
        <translation>kleine und Pkw-Viertakter mit Fremdzündung</translation>
    </message>
    <message>
        <source>small two-strokes</source>
        <translation>kleine Zweitakter</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>spark</source>
        <translation>Fremd</translation>
    </message>
    <message>
        <source>spark-ignition four-strokes</source>
        <translation>Viertakter mit Fremdzündung</translation>
    </message>
    <message>
        <source>sports and racing engines</source>
        <translation>Sport- und Rennmotoren</translation>
    </message>
    <message>
        <source>sports engines</source>
        <translation>Sportmotoren</translation>
    </message>
    <message>
        <source>the best petrol engines</source>
        <translation>die besten Benzinmotoren</translation>
    </message>
    <message>
        <source>the blower or compressor</source>
        <translation>Gebläse oder Verdichter</translation>
    </message>
    <message>
        <source>the claim is a gross figure: published bands are mostly net</source>
        <translation>die Angabe ist ein Bruttowert: Veröffentlichte Bereiche sind meist netto</translation>
    </message>
    <message>
        <source>the design itself</source>
        <translation>der Entwurf selbst</translation>
    </message>
    <message>
        <source>the design of a snapshot holds snapshots; it must not</source>
        <translation>Der Entwurf einer Variante enthält Varianten; das darf er nicht</translation>
    </message>
    <message>
        <source>the file holds no group of keys; a design is one JSON object</source>
        <translation>Die Datei enthält keine Gruppe von Schlüsseln; ein Entwurf ist ein JSON-Objekt</translation>
    </message>
    <message>
        <source>the file is %1; it must be a group of keys</source>
        <translation>Die Datei ist %1; verlangt ist eine Gruppe von Schlüsseln</translation>
    </message>
    <message>
        <source>the file is empty; it must hold a design</source>
        <translation>Die Datei ist leer; sie muss einen Entwurf enthalten</translation>
    </message>
    <message>
        <source>the file keeps %1 snapshots already; delete one that is no longer needed</source>
        <translation>Die Datei enthält schon %1 Varianten; löschen Sie eine, die nicht mehr gebraucht wird</translation>
    </message>
    <message>
        <source>the formula ends too early</source>
        <translation>Die Formel endet zu früh</translation>
    </message>
    <message>
        <source>the gas cycle could not be solved</source>
        <translation>der Kreisprozess ließ sich nicht lösen</translation>
    </message>
    <message>
        <source>the gas cycle has no finite solution</source>
        <translation>Der Kreisprozess hat keine endliche Lösung</translation>
    </message>
    <message>
        <source>the gas cycle of the design could not be solved</source>
        <translation>der Kreisprozess des Entwurfs ließ sich nicht lösen</translation>
    </message>
    <message>
        <source>the guides</source>
        <translation>Führungen</translation>
    </message>
    <message>
        <source>the largest two-stroke diesels</source>
        <translation>die größten Zweitakt-Diesel</translation>
    </message>
    <message>
        <source>the line reads &quot;%1&quot;; it must begin with two numbers, angle in degrees and lift in millimetres</source>
        <translation>In der Zeile steht „%1“; sie muss mit zwei Zahlen beginnen, Winkel in Grad und Weg in Millimetern</translation>
    </message>
    <message>
        <source>the name of the snapshot is empty; it must say which design was kept</source>
        <translation>Der Name der Variante ist leer; er muss sagen, welcher Entwurf gespeichert wurde</translation>
    </message>
    <message>
        <source>the nearest known key is &quot;%1&quot;</source>
        <translation>der nächstliegende bekannte ist „%1“</translation>
    </message>
    <message>
        <source>the nesting is deeper than %1 levels; no design needs that</source>
        <translation>Die Verschachtelung ist tiefer als %1 Ebenen; kein Entwurf braucht das</translation>
    </message>
    <message>
        <source>the number is too large; numbers must be finite</source>
        <translation>Die Zahl ist zu groß; Zahlen müssen endlich sein</translation>
    </message>
    <message>
        <source>the number of points is %1, must be at least 2</source>
        <translation>Die Zahl der Punkte ist %1, verlangt sind mindestens 2</translation>
    </message>
    <message>
        <source>the parenthesis of &quot;%1&quot; is not closed</source>
        <translation>Die Klammer von „%1“ ist nicht geschlossen</translation>
    </message>
    <message>
        <source>the piston rings</source>
        <translation>Kolbenringe</translation>
    </message>
    <message>
        <source>the result is not finite</source>
        <translation>Das Ergebnis ist nicht endlich</translation>
    </message>
    <message>
        <source>the roller never presses on its track</source>
        <translation>die Rolle drückt nie auf ihre Bahn</translation>
    </message>
    <message>
        <source>the shaft bearings</source>
        <translation>Wellenlager</translation>
    </message>
    <message>
        <source>the table has %1 rows of numbers; it must have at least 4</source>
        <translation>Die Tabelle hat %1 Zeilen mit Zahlen; verlangt sind mindestens 4</translation>
    </message>
    <message>
        <source>the text ends before the design is complete</source>
        <translation>Der Text endet, bevor der Entwurf vollständig ist</translation>
    </message>
    <message>
        <source>the time is &quot;%1&quot;; it must be a date and time of ISO 8601, or empty</source>
        <translation>Die Zeit ist „%1“; verlangt sind Datum und Uhrzeit nach ISO 8601 oder ein leeres Feld</translation>
    </message>
    <message>
        <source>the time of the snapshot is &quot;%1&quot;; it must be a date and time of ISO 8601</source>
        <translation>Die Zeit der Variante ist „%1“; verlangt sind Datum und Uhrzeit nach ISO 8601</translation>
    </message>
    <message>
        <source>the top level</source>
        <translation>die oberste Ebene</translation>
    </message>
    <message>
        <source>the track has no segments that could take a law</source>
        <translation>Die Bahn hat keine Abschnitte, die ein Gesetz annehmen könnten</translation>
    </message>
    <message>
        <source>the warning stands at %1, beyond the error at %2; it must come first</source>
        <translation>Die Warngrenze %1 liegt jenseits der Fehlergrenze %2; sie muss vor ihr liegen</translation>
    </message>
    <message>
        <source>there are %1 angles and %2 lifts, must be as many</source>
        <translation>Es gibt %1 Winkel und %2 Wege; es müssen gleich viele sein</translation>
    </message>
    <message>
        <source>there are %1 knots, need at least 3</source>
        <translation>Es gibt %1 Stützpunkte, verlangt sind mindestens 3</translation>
    </message>
    <message>
        <source>there are %1 rows, need at least 4</source>
        <translation>Es gibt %1 Zeilen, verlangt sind mindestens 4</translation>
    </message>
    <message>
        <source>there are more problems than are listed here</source>
        <translation>Es gibt mehr Fehler, als hier aufgezählt sind</translation>
    </message>
    <message>
        <source>there is no figure &quot;%1&quot;</source>
        <translation>Es gibt kein Ergebnis „%1“</translation>
    </message>
    <message>
        <source>there is no file %1</source>
        <translation>Es gibt keine Datei %1</translation>
    </message>
    <message>
        <source>there is no snapshot %1</source>
        <translation>Es gibt keine Variante %1</translation>
    </message>
    <message>
        <source>this entry is %1; it must be a group of keys</source>
        <translation>Dieser Eintrag ist %1; verlangt ist eine Gruppe von Schlüsseln</translation>
    </message>
    <message>
        <source>this is %1; it must be a group of keys</source>
        <translation>Hier steht %1; verlangt ist eine Gruppe von Schlüsseln</translation>
    </message>
    <message>
        <source>truck diesels</source>
        <translation>Lkw-Diesel</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>turbocharged car diesels</source>
        <translation>Pkw-Diesel mit Abgasturbolader</translation>
    </message>
    <message>
        <source>turbocharged cars</source>
        <translation>Pkw mit Abgasturbolader</translation>
    </message>
    <message>
        <source>turbocharged truck diesels</source>
        <translation>Lkw-Diesel mit Abgasturbolader</translation>
    </message>
    <message>
        <source>turbocharged two-strokes</source>
        <translation>Zweitakter mit Abgasturbolader</translation>
    </message>
    <message>
        <source>two-strokes with tuned exhaust</source>
        <translation>Zweitakter mit Resonanzauspuff</translation>
    </message>
    <message>
        <source>unknown engine</source>
        <translation>unbekannter Motor</translation>
    </message>
    <message>
        <source>unknown kind of export</source>
        <translation>unbekannte Art von Export</translation>
    </message>
    <message>
        <source>unrolling a flank</source>
        <translation>Flanke wird abgewickelt</translation>
    </message>
    <message>
        <source>value is %1 (SI), %2</source>
        <translation>Der Wert ist %1 (SI), %2</translation>
    </message>
    <message>
        <source>whether a high pressure is ambitious or ordinary</source>
        <translation>ob ein hoher Druck anspruchsvoll oder üblich ist</translation>
    </message>
    <message>
        <source>which published bands apply</source>
        <translation>welche veröffentlichten Bereiche gelten</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>without brake power no size gives the same power</source>
        <translation>ohne effektive Leistung ergibt keine Größe dieselbe Leistung</translation>
    </message>
    <message>
        <source>writing STEP</source>
        <translation>STEP wird geschrieben</translation>
    </message>
    <message>
        <source>writing points</source>
        <translation>Punkte werden geschrieben</translation>
    </message>
    <message>
        <source>writing rows</source>
        <translation>Zeilen werden geschrieben</translation>
    </message>
    <message>
        <source>writing the file</source>
        <translation>Datei wird geschrieben</translation>
    </message>
    <message>
        <source>α_c = f_a^f_m, f_a = (99 kPa/p_d)^%1·(T/298 K)^%2, f_m from q_c</source>
        <translation>α_c = f_a^f_m, f_a = (99 kPa/p_d)^%1·(T/298 K)^%2, f_m aus q_c</translation>
    </message>
    <message>
        <source>η_b as given</source>
        <translation>η_b wie angegeben</translation>
    </message>
    <message>
        <source>λ = %1 is outside the model, which knows no unburnt products below λ = 0.9.</source>
        <translation>λ = %1 liegt außerhalb des Modells, das für λ &lt; 0,9 keine Produkte unvollständiger Verbrennung enthält.</translation>
    </message>
    <message>
        <source>π/4·(%1)²·%2 = %3 L a piston</source>
        <translation>π/4·(%1)²·%2 = %3 L je Kolben</translation>
    </message>
    <message>
        <source>√(1 + %1² − 2·%1·cos(%2·%3 rad)) = %4</source>
        <translation>√(1 + %1² − 2·%1·cos(%2·%3 rad)) = %4</translation>
    </message>
    <message>
        <source>∫ needs two arrays and two bounds</source>
        <translation>∫ braucht zwei Wertereihen und zwei Grenzen</translation>
    </message>
    <message>
        <source>∮ needs arrays of equal shape</source>
        <translation>∮ braucht Wertereihen gleicher Form</translation>
    </message>
    <message>
        <source>the gas cycle could not be solved; a report needs its solution</source>
        <translation>Der Kreisprozess ließ sich nicht lösen; ein Bericht braucht seine Lösung</translation>
    </message>
    <message>
        <source>the sample is missing in this program</source>
        <translation>Das Beispiel fehlt in diesem Programm</translation>
    </message>
    <message>
        <source>Lift at inner dead centre</source>
        <translation>Weg im inneren Totpunkt</translation>
    </message>
    <message>
        <source>Lift at outer dead centre</source>
        <translation>Weg im äußeren Totpunkt</translation>
    </message>
    <message>
        <source>Overlap</source>
        <translation>Überschneidung</translation>
    </message>
    <message>
        <source>air/trapping·[h(T₂) − h(T_amb)]</source>
        <translation>Luft/Fanggrad·[h(T₂) − h(T_amb)]</translation>
    </message>
    <message>
        <source>Adjuster&apos;s spline holds itself</source>
        <translation>Steilverzahnung des Verstellers ist selbsthemmend</translation>
    </message>
    <message>
        <source>&quot;%1&quot; could be read in two ways; put a space between the number and its unit</source>
        <translation>„%1“ lässt sich auf zwei Arten lesen; ein Leerzeichen zwischen Zahl und Einheit setzen</translation>
    </message>
    <message>
        <source>%1; %2 and %3</source>
        <translation>%1; %2 und %3</translation>
    </message>
    <message>
        <source>A cylinder fires</source>
        <translation>Ein Zylinder zündet</translation>
    </message>
    <message>
        <source>Acceleration of the exhaust piston with the best lead</source>
        <translation>Beschleunigung des Auslasskolbens bei bester Voreilung</translation>
    </message>
    <message>
        <source>Mean start of combustion</source>
        <translation>Mittlerer Brennbeginn</translation>
    </message>
    <message>
        <source>Change of the internal energy</source>
        <translation>Änderung der inneren Energie</translation>
    </message>
    <message>
        <source>Change of the mass in the chamber</source>
        <translation>Änderung der Masse im Brennraum</translation>
    </message>
    <message>
        <source>Conservation of mass over a cycle.</source>
        <translation>Massenerhaltung über ein Arbeitsspiel.</translation>
    </message>
    <message>
        <source>Counted by the solver.</source>
        <translation>Vom Löser gezählt.</translation>
    </message>
    <message>
        <source>Cylinders that fire there</source>
        <translation>Zylinder, die dort zünden</translation>
    </message>
    <message>
        <source>Definition: the margin is never negative.</source>
        <translation>Definition: Die Sicherheit ist nie negativ.</translation>
    </message>
    <message>
        <source>Distance of the leads</source>
        <translation>Abstand der Voreilungen</translation>
    </message>
    <message>
        <source>Dormand and Prince, where the equations are not stiff</source>
        <translation>Dormand und Prince, wo die Gleichungen nicht steif sind</translation>
    </message>
    <message>
        <source>Elliptic integral of the second kind</source>
        <translation>Elliptisches Integral zweiter Art</translation>
    </message>
    <message>
        <source>Enthalpy with the exhaust</source>
        <translation>Enthalpie des Abgases</translation>
    </message>
    <message>
        <source>Enthalpy with the supply</source>
        <translation>Enthalpie der Zuluft</translation>
    </message>
    <message>
        <source>Flow through the exhaust ports, outward</source>
        <translation>Durchfluss durch die Auslassschlitze, nach außen</translation>
    </message>
    <message>
        <source>Flow through the inlet ports, inward</source>
        <translation>Durchfluss durch die Einlassschlitze, nach innen</translation>
    </message>
    <message>
        <source>Fresh gas through the inlet ports</source>
        <translation>Frischgas durch die Einlassschlitze</translation>
    </message>
    <message>
        <source>Friction of the spline</source>
        <translation>Reibung der Steilverzahnung</translation>
    </message>
    <message>
        <source>Fuel burnt</source>
        <translation>Verbrannter Kraftstoff</translation>
    </message>
    <message>
        <source>Heat released</source>
        <translation>Freigesetzte Wärme</translation>
    </message>
    <message>
        <source>Heat transfer coefficient of the walls</source>
        <translation>Wärmeübergangskoeffizient der Wände</translation>
    </message>
    <message>
        <source>In through the inlet ports, net</source>
        <translation>Durch die Einlassschlitze hinein, netto</translation>
    </message>
    <message>
        <source>Last port closing</source>
        <translation>Schließen des letzten Schlitzes</translation>
    </message>
    <message>
        <source>Least squares: what the best mass leaves of the inlet piston&apos;s force.</source>
        <translation>Kleinste Quadrate: was die beste Masse von der Kraft des Einlasskolbens übrig lässt.</translation>
    </message>
    <message>
        <source>Mean of all cycles of a pattern.</source>
        <translation>Mittel aller Arbeitsspiele einer Kurve.</translation>
    </message>
    <message>
        <source>Mean piston speed as given</source>
        <translation>Mittlere Kolbengeschwindigkeit wie angegeben</translation>
    </message>
    <message>
        <source>Octane number of the fuel</source>
        <translation>Oktanzahl des Kraftstoffs</translation>
    </message>
    <message>
        <source>Out through the exhaust ports, net</source>
        <translation>Durch die Auslassschlitze hinaus, netto</translation>
    </message>
    <message>
        <source>Pressure angle there</source>
        <translation>Pressungswinkel dort</translation>
    </message>
    <message>
        <source>Radau, where a port equalises pressures at once</source>
        <translation>Radau, wo ein Schlitz die Drücke sofort ausgleicht</translation>
    </message>
    <message>
        <source>Short half-axis of the contact ellipse</source>
        <translation>Kurze Halbachse der Kontaktellipse</translation>
    </message>
    <message>
        <source>Steps of the explicit method</source>
        <translation>Schritte des expliziten Verfahrens</translation>
    </message>
    <message>
        <source>Steps of the implicit method</source>
        <translation>Schritte des impliziten Verfahrens</translation>
    </message>
    <message>
        <source>Supply power deducted</source>
        <translation>Leistung der Luftversorgung abgezogen</translation>
    </message>
    <message>
        <source>Supply power deducted from brake values</source>
        <translation>Leistung der Luftversorgung in effektiven Werten abgezogen</translation>
    </message>
    <message>
        <source>S̄p as given</source>
        <translation>S̄p wie angegeben</translation>
    </message>
    <message>
        <source>The ellipse is longest across the roller.</source>
        <translation>Die Ellipse ist quer zur Rolle am längsten.</translation>
    </message>
    <message>
        <source>The ellipse is longest along the roller.</source>
        <translation>Die Ellipse ist längs der Rolle am längsten.</translation>
    </message>
    <message>
        <source>The next fires</source>
        <translation>Der nächste zündet</translation>
    </message>
    <message>
        <source>The shaft drives the blower: its power is always deducted.</source>
        <translation>Die Welle treibt das Gebläse: Seine Leistung wird immer abgezogen.</translation>
    </message>
    <message>
        <source>Thrust of all rollers on the exhaust track, outward</source>
        <translation>Axialkraft aller Rollen auf die Auslassbahn, nach außen</translation>
    </message>
    <message>
        <source>Torque of all rollers on the exhaust track</source>
        <translation>Drehmoment aller Rollen an der Auslassbahn</translation>
    </message>
    <message>
        <source>Without a gas cycle the chamber stands at the under-piston pressure.</source>
        <translation>Ohne Kreisprozess herrscht im Brennraum derselbe Druck wie unter dem Kolben.</translation>
    </message>
    <message>
        <source>a start of combustion that is searched for</source>
        <translation>einen Brennbeginn, der gesucht wird</translation>
    </message>
    <message>
        <source>a piston that is never pushed</source>
        <translation>einen Kolben, der nie gedrückt wird</translation>
    </message>
    <message>
        <source>a whole degree</source>
        <translation>ein ganzer Grad</translation>
    </message>
    <message>
        <source>air at the last port closing over λ and the stoichiometric ratio; none when motored</source>
        <translation>Luft beim Schließen des letzten Schlitzes / (λ × stöchiometrischer Luftbedarf); geschleppt: kein Kraftstoff</translation>
    </message>
    <message>
        <source>at the last port closing</source>
        <translation>beim Schließen des letzten Schlitzes</translation>
    </message>
    <message>
        <source>complete, for this ellipse</source>
        <translation>vollständig, für diese Ellipse</translation>
    </message>
    <message>
        <source>cycle %1 of cylinder %2</source>
        <translation>Arbeitsspiel %1 von Zylinder %2</translation>
    </message>
    <message>
        <source>cycle %1 of the pattern</source>
        <translation>Arbeitsspiel %1 der Kurve</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>end less beginning of the cycle</source>
        <translation>Ende minus Anfang des Arbeitsspiels</translation>
    </message>
    <message>
        <source>from the ratio of both radii, by elliptic integrals</source>
        <translation>aus dem Verhältnis beider Radien, mit elliptischen Integralen</translation>
    </message>
    <message>
        <source>fuel heat; motored: pressure times volume at the last port closing</source>
        <translation>Kraftstoffwärme; geschleppt: Druck mal Volumen beim Schließen des letzten Schlitzes</translation>
    </message>
    <message>
        <source>in the middle of the roller</source>
        <translation>in der Mitte der Rolle</translation>
    </message>
    <message>
        <source>integrated by the solver</source>
        <translation>vom Löser integriert</translation>
    </message>
    <message>
        <source>largest shear on the axis of a line contact</source>
        <translation>größte Schubspannung auf der Achse eines Linienkontakts</translation>
    </message>
    <message>
        <source>largest shear on the axis of the ellipse</source>
        <translation>größte Schubspannung auf der Achse der Ellipse</translation>
    </message>
    <message>
        <source>lubricated steel on steel (common practice)</source>
        <translation>geschmierter Stahl auf Stahl (übliche Praxis)</translation>
    </message>
    <message>
        <source>the exhaust track has %1 lobes where the inlet track has %2: both tracks must have the same period</source>
        <translation>die Auslassbahn hat %1 Nocken, die Einlassbahn %2: Beide Bahnen müssen dieselbe Periode haben</translation>
    </message>
    <message>
        <source>the exhaust track has %1 rises per pattern where the inlet track has %2: both tracks must have the same number</source>
        <translation>die Auslassbahn hat %1 Anstiege je Kurve, die Einlassbahn %2: Beide Bahnen müssen gleich viele haben</translation>
    </message>
    <message>
        <source>the integral counts from here</source>
        <translation>ab hier zählt das Integral</translation>
    </message>
    <message>
        <source>the lift of the inlet track is constant: it must rise and return</source>
        <translation>der Weg der Einlassbahn ist konstant: Er muss steigen und wieder fallen</translation>
    </message>
    <message>
        <source>torque would fall %1 % from %2 to %3 rpm</source>
        <translation>das Drehmoment fiele um %1 % von %2 auf %3/min</translation>
    </message>
    <message>
        <source>torque would fall only %1 % from %2 to %3 rpm</source>
        <translation>das Drehmoment fiele nur um %1 % von %2 auf %3/min</translation>
    </message>
    <message>
        <source>∫ needs two arrays of equal shape</source>
        <translation>∫ braucht zwei Wertereihen gleicher Form</translation>
    </message>
    <message>
        <source>Delivery ratio %1: more than the displacement, a blower has to deliver it</source>
        <translation>Luftaufwand %1: mehr als der Hubraum; ein Gebläse muss die Luft liefern</translation>
    </message>
    <message>
        <source>%1 cannot be written: it is write-protected</source>
        <translation>%1 kann nicht geschrieben werden: Die Datei ist schreibgeschützt</translation>
    </message>
    <message>
        <source>%1 cannot be written: no file can be made in its folder: %2</source>
        <translation>%1 kann nicht geschrieben werden: Im Ordner lässt sich keine Datei anlegen: %2</translation>
    </message>
    <message>
        <source>%1 is a folder, not a file to read</source>
        <translation>%1 ist ein Ordner, keine lesbare Datei</translation>
    </message>
    <message>
        <source>%1 is what this command reads; name another file to write</source>
        <translation>%1 wird von diesem Befehl gelesen; zum Schreiben eine andere Datei angeben</translation>
    </message>
    <message>
        <source>%1 is written, but the disk does not confirm it: %2</source>
        <translation>%1 ist geschrieben, aber der Datenträger bestätigt es nicht: %2</translation>
    </message>
    <message>
        <source>folder %1 cannot be made: %2</source>
        <translation>Ordner %1 lässt sich nicht anlegen: %2</translation>
    </message>
    <message>
        <source>no file can be made in folder %1: %2</source>
        <translation>Im Ordner %1 lässt sich keine Datei anlegen: %2</translation>
    </message>
    <message>
        <source>the file has more than %1 bytes (1 MiB); no claims file is larger</source>
        <translation>Die Datei hat mehr als %1 Byte (1 MiB); so groß ist keine Datei mit Angaben</translation>
    </message>
    <message>
        <source>the file has more than %1 bytes (16 MiB); no design is larger</source>
        <translation>Die Datei hat mehr als %1 Byte (16 MiB); so groß ist kein Entwurf</translation>
    </message>
    <message>
        <source>the table has more than %1 bytes (16 MiB); no lift table is larger</source>
        <translation>Die Tabelle hat mehr als %1 Byte (16 MiB); so groß ist keine Wegtabelle</translation>
    </message>
    <message>
        <source>Definition: a closed track also carries the roller on its outer flank.</source>
        <translation>Definition: Eine geschlossene Bahn führt die Rolle auch an ihrer äußeren Flanke.</translation>
    </message>
    <message>
        <source>Force of gas and rings</source>
        <translation>Kraft von Gas und Ringen</translation>
    </message>
    <message>
        <source>Gas and rings pull the piston off where inertia does not press it on: no speed keeps contact.</source>
        <translation>Gas und Ringe ziehen den Kolben von der Bahn ab, wo die Trägheit ihn nicht andrückt: Bei keiner Drehzahl bleibt der Kontakt erhalten.</translation>
    </message>
    <message>
        <source>Highest speed with contact, fired (pressure trace held)</source>
        <translation>Höchste Drehzahl mit Kontakt, gefeuert (Druckverlauf festgehalten)</translation>
    </message>
    <message>
        <source>Highest speed with contact, motored (pressure trace held)</source>
        <translation>Höchste Drehzahl mit Kontakt, geschleppt (Druckverlauf festgehalten)</translation>
    </message>
    <message>
        <source>Lowest speed with contact, fired (pressure trace held)</source>
        <translation>Niedrigste Drehzahl mit Kontakt, gefeuert (Druckverlauf festgehalten)</translation>
    </message>
    <message>
        <source>Lowest speed with contact, motored (pressure trace held)</source>
        <translation>Niedrigste Drehzahl mit Kontakt, geschleppt (Druckverlauf festgehalten)</translation>
    </message>
    <message>
        <source>Rollers keep contact over the whole revolution</source>
        <translation>Rollen halten während der ganzen Umdrehung Kontakt</translation>
    </message>
    <message>
        <source>The speed at which the deceleration outweighs gas and rings, with the pressure trace of the motored engine held.</source>
        <translation>Die Drehzahl, bei der die Massenkraft der Verzögerung Gas und Ringe überwiegt, bei festgehaltenem Druckverlauf des geschleppten Motors.</translation>
    </message>
    <message>
        <source>The speed at which the deceleration outweighs gas and rings, with this pressure trace held.</source>
        <translation>Die Drehzahl, bei der die Massenkraft der Verzögerung Gas und Ringe überwiegt, bei festgehaltenem Druckverlauf.</translation>
    </message>
    <message>
        <source>The speed below which inertia presses less than gas and rings pull, with the pressure trace of the motored engine held.</source>
        <translation>Die Drehzahl, unter der die Trägheit weniger drückt, als Gas und Ringe ziehen, bei festgehaltenem Druckverlauf des geschleppten Motors.</translation>
    </message>
    <message>
        <source>The speed below which inertia presses less than gas and rings pull, with this pressure trace held.</source>
        <translation>Die Drehzahl, unter der die Trägheit weniger drückt, als Gas und Ringe ziehen, bei festgehaltenem Druckverlauf.</translation>
    </message>
    <message>
        <source>a closed track</source>
        <translation>eine geschlossene Bahn</translation>
    </message>
    <message>
        <source>no speed keeps contact: gas or ring friction pulls a piston off its track where inertia does not press it on</source>
        <translation>bei keiner Drehzahl bleibt der Kontakt erhalten: Gas oder Ringreibung zieht einen Kolben von seiner Bahn, wo die Trägheit ihn nicht andrückt</translation>
    </message>
    <message>
        <source>The cycle repeats itself to %1 and no better.</source>
        <translation>Der Kreisprozess wiederholt sich auf %1 genau und nicht genauer.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is listed twice; each option must be listed once</source>
        <translation>„%1“ ist zweimal aufgeführt; jede Möglichkeit muss einmal aufgeführt sein</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no choice of %2; it must be one of %3</source>
        <translation>„%1“ steht für %2 nicht zur Wahl; zulässig sind %3</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no input of this design that can have an origin</source>
        <translation>„%1“ bezeichnet keine Eingabe dieses Entwurfs, die eine Herkunft haben kann</translation>
    </message>
    <message>
        <source>%1 has only one limit; lower and upper limit must both be given</source>
        <translation>%1 hat nur eine Grenze; untere und obere Grenze müssen beide angegeben sein</translation>
    </message>
    <message>
        <source>%1 is &quot;%2&quot;; it must be one of its options, %3</source>
        <translation>%1 ist „%2“; der Wert muss unter den Möglichkeiten sein: %3</translation>
    </message>
    <message>
        <source>%1 is %2; it must lie within its range, %3 to %4</source>
        <translation>%1 ist %2; der Wert muss in seinem Bereich von %3 bis %4 liegen</translation>
    </message>
    <message>
        <source>%1 is no choice; it can have a range, not options</source>
        <translation>%1 ist keine Auswahl; möglich ist ein Bereich, keine Liste</translation>
    </message>
    <message>
        <source>%1 is no number; it can have options, not a range</source>
        <translation>%1 ist keine Zahl; möglich ist eine Liste, kein Bereich</translation>
    </message>
    <message>
        <source>%1 is not a number that can take any value</source>
        <translation>%1 ist keine Zahl, die jeden Wert annehmen kann</translation>
    </message>
    <message>
        <source>Given: published. Measured: off a picture or a part. Derived: follows from other inputs by a rule. Assumed: guessed. Chosen: a decision of one&apos;s own.</source>
        <translation>Veröffentlicht: aus einer Quelle. Gemessen: an einem Bild oder Teil. Abgeleitet: folgt nach einer Regel aus anderen Eingaben. Angenommen: geschätzt. Gewählt: eigene Entscheidung.</translation>
    </message>
    <message>
        <source>Inputs of one group move together within their ranges.</source>
        <translation>Eingaben einer Gruppe bewegen sich gemeinsam in ihren Bereichen.</translation>
    </message>
    <message>
        <source>Largest value that is plausible, in the unit of the input.</source>
        <translation>Größter plausibler Wert, in der Einheit der Eingabe.</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Untere Grenze</translation>
    </message>
    <message>
        <source>Name of the rule that a derived or assumed value follows.</source>
        <translation>Name der Regel, der ein abgeleiteter oder angenommener Wert folgt.</translation>
    </message>
    <message>
        <source>Of a choice: the words that are plausible.</source>
        <translation>Bei einer Auswahl: die plausiblen Möglichkeiten.</translation>
    </message>
    <message>
        <source>Origin and range of inputs, by JSON pointer; an input without an entry is chosen. Does not change what is computed.</source>
        <translation>Herkunft und Bereich der Eingaben, nach JSON-Zeiger; eine Eingabe ohne Eintrag ist gewählt. Ändert nichts an der Rechnung.</translation>
    </message>
    <message>
        <source>Smallest value that is plausible, in the unit of the input.</source>
        <translation>Kleinster plausibler Wert, in der Einheit der Eingabe.</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Obere Grenze</translation>
    </message>
    <message>
        <source>Where the value is published, measured or worked out.</source>
        <translation>Wo der Wert veröffentlicht, gemessen oder hergeleitet ist.</translation>
    </message>
    <message>
        <source>closing in</source>
        <translation>wird eingegrenzt</translation>
    </message>
    <message>
        <source>the engine cannot be built or run anywhere between %1 and %2: %3</source>
        <translation>zwischen %1 und %2 lässt sich der Motor nirgends bauen oder betreiben: %3</translation>
    </message>
    <message>
        <source>the lower limit of %1 is %2; it must be below the upper limit, %3</source>
        <translation>die untere Grenze von %1 ist %2; sie muss unter der oberen Grenze %3 liegen</translation>
    </message>
    <message>
        <source>the range is %1 to %2; it must ascend</source>
        <translation>der Bereich ist %1 bis %2; er muss ansteigen</translation>
    </message>
    <message>
        <source>the range of %1 is %2 to %3; its ends must be %4</source>
        <translation>der Bereich von %1 ist %2 bis %3; seine Enden müssen %4 sein</translation>
    </message>
    <message>
        <source>the range of %1 is %2 to %3; its limits must be %4</source>
        <translation>der Bereich von %1 ist %2 bis %3; seine Grenzen müssen %4 sein</translation>
    </message>
    <message>
        <source>the result is not available there</source>
        <translation>das Ergebnis ist dort nicht verfügbar</translation>
    </message>
    <message>
        <source>the target must be a finite number</source>
        <translation>das Ziel muss eine endliche Zahl sein</translation>
    </message>
    <message>
        <source>%1 has %2 characters; it must have at most %3</source>
        <translation>%1 hat %2 Zeichen; zulässig sind höchstens %3</translation>
    </message>
    <message>
        <source>%1 lobes</source>
        <translation>%1 Nocken</translation>
    </message>
    <message>
        <source>%1 times a four-stroke&apos;s mean effective pressure of friction at the same shaft speed.</source>
        <translation>Das %1-Fache des Reibmitteldrucks eines Viertakters bei gleicher Wellendrehzahl.</translation>
    </message>
    <message>
        <source>%1 times the power strokes of a four-stroke on a crank</source>
        <translation>%1-mal so viele Arbeitshübe wie bei einem Viertakter mit Kurbel</translation>
    </message>
    <message>
        <source>%1 times those of a two-stroke on a crank</source>
        <translation>%1-mal so viele wie bei einem Zweitakter mit Kurbel</translation>
    </message>
    <message>
        <source>%1 times those of the same cycle on a crank</source>
        <translation>%1-mal so viele wie bei demselben Arbeitsverfahren mit Kurbel</translation>
    </message>
    <message>
        <source>A motoring test with its conditions, or a solved design of the engine.</source>
        <translation>Ein Schleppversuch mit seinen Bedingungen oder ein gerechneter Entwurf des Motors.</translation>
    </message>
    <message>
        <source>A motoring test.</source>
        <translation>Ein Schleppversuch.</translation>
    </message>
    <message>
        <source>A test over a hundred hours with the oil weighed.</source>
        <translation>Ein Versuch über hundert Stunden mit gewogenem Öl.</translation>
    </message>
    <message>
        <source>An outline drawing.</source>
        <translation>Eine Umrisszeichnung.</translation>
    </message>
    <message>
        <source>Another cycle.</source>
        <translation>Ein anderes Arbeitsverfahren.</translation>
    </message>
    <message>
        <source>Another reference engine: each reading is shown.</source>
        <translation>Ein anderer Vergleichsmotor: Jede Lesart ist gezeigt.</translation>
    </message>
    <message>
        <source>At the speed below.</source>
        <translation>Bei der darunter genannten Drehzahl.</translation>
    </message>
    <message>
        <source>Bore, stroke and layout.</source>
        <translation>Bohrung, Kolbenhub und Bauart.</translation>
    </message>
    <message>
        <source>Both ends of the range are needed.</source>
        <translation>Beide Enden des Bereichs sind nötig.</translation>
    </message>
    <message>
        <source>Depth of the maximum shear stress</source>
        <translation>Tiefe der größten Schubspannung</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Firing interval</source>
        <translation>Zündabstand</translation>
    </message>
    <message>
        <source>From %1 to %2 the volume at inner dead centre shrinks to %3 of itself.</source>
        <translation>Von %1 bis %2 schrumpft das Volumen im inneren Totpunkt auf das %3-Fache.</translation>
    </message>
    <message>
        <source>Highest compression ratio</source>
        <translation>Höchstes Verdichtungsverhältnis</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Length and diameter.</source>
        <translation>Länge und Durchmesser.</translation>
    </message>
    <message>
        <source>Lowest compression ratio</source>
        <translation>Niedrigstes Verdichtungsverhältnis</translation>
    </message>
    <message>
        <source>Lowest specific film thickness Λ</source>
        <translation>Kleinste spezifische Schmierfilmdicke Λ</translation>
    </message>
    <message>
        <source>Mass of oil per brake work.</source>
        <translation>Ölmasse je effektiver Arbeit.</translation>
    </message>
    <message>
        <source>Maximum subsurface shear stress</source>
        <translation>Größte Schubspannung unter der Oberfläche</translation>
    </message>
    <message>
        <source>Neither length nor diameter is given.</source>
        <translation>Weder Länge noch Durchmesser ist angegeben.</translation>
    </message>
    <message>
        <source>No arithmetic on published figures gives the friction of an engine.</source>
        <translation>Keine Rechnung mit veröffentlichten Zahlen ergibt die Reibung eines Motors.</translation>
    </message>
    <message>
        <source>Of the range.</source>
        <translation>Des Bereichs.</translation>
    </message>
    <message>
        <source>Oil consumption</source>
        <translation>Ölverbrauch</translation>
    </message>
    <message>
        <source>Reference engine</source>
        <translation>Vergleichsmotor</translation>
    </message>
    <message>
        <source>Shaft angle from one firing to the next.</source>
        <translation>Wellenwinkel von einer Zündung zur nächsten.</translation>
    </message>
    <message>
        <source>Specific film thickness</source>
        <translation>Spezifische Schmierfilmdicke</translation>
    </message>
    <message>
        <source>Specific film thickness Λ</source>
        <translation>Spezifische Schmierfilmdicke Λ</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>The lowest and the highest ratio.</source>
        <translation>Das niedrigste und das höchste Verhältnis.</translation>
    </message>
    <message>
        <source>The oil consumption is not given.</source>
        <translation>Der Ölverbrauch ist nicht angegeben.</translation>
    </message>
    <message>
        <source>The open design is not supplied above ambient pressure.</source>
        <translation>Im geöffneten Entwurf liegt der Ladedruck nicht über dem Umgebungsdruck.</translation>
    </message>
    <message>
        <source>The open design is supplied above ambient pressure.</source>
        <translation>Im geöffneten Entwurf liegt der Ladedruck über dem Umgebungsdruck.</translation>
    </message>
    <message>
        <source>The open design is the engine claimed: no number given for it differs.</source>
        <translation>Der geöffnete Entwurf ist der angegebene Motor: Keine dazu genannte Zahl weicht ab.</translation>
    </message>
    <message>
        <source>The supply pressure of the engine as built.</source>
        <translation>Der Ladedruck des gebauten Motors.</translation>
    </message>
    <message>
        <source>The travel of the adjuster as built.</source>
        <translation>Der Weg des gebauten Verstellers.</translation>
    </message>
    <message>
        <source>Uneven spacing of the cylinders, or cylinders that fire together.</source>
        <translation>Ungleich verteilte Zylinder oder Zylinder, die zusammen zünden.</translation>
    </message>
    <message>
        <source>Which engine the usual one is; every reading is shown where it is not said.</source>
        <translation>Welcher Motor der übliche ist; wo das nicht gesagt ist, wird jede Lesart gezeigt.</translation>
    </message>
    <message>
        <source>a key has %1 bytes; keys have at most %2</source>
        <translation>Ein Schlüssel hat %1 Byte; zulässig sind höchstens %2</translation>
    </message>
    <message>
        <source>above the program&apos;s own estimate</source>
        <translation>über der eigenen Schätzung des Programms</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>firing interval</source>
        <translation>Zündabstand</translation>
    </message>
    <message>
        <source>four-stroke cycle: intake, compression, expansion, exhaust</source>
        <translation>Viertaktverfahren: Ansaugen, Verdichten, Arbeiten, Ausschieben</translation>
    </message>
    <message>
        <source>four-stroke on a crank</source>
        <translation>Viertakter mit Kurbel</translation>
    </message>
    <message>
        <source>friction as at the end of the fit</source>
        <translation>Reibung wie am Ende der Näherung</translation>
    </message>
    <message>
        <source>friction by the fit extended</source>
        <translation>Reibung nach der fortgesetzten Näherung</translation>
    </message>
    <message>
        <source>friction compared with a usual engine</source>
        <translation>Reibung verglichen mit einem üblichen Motor</translation>
    </message>
    <message>
        <source>oil consumption</source>
        <translation>Ölverbrauch</translation>
    </message>
    <message>
        <source>racing and light aircraft two-strokes</source>
        <translation>Zweitakter für Rennen und Leichtflugzeuge</translation>
    </message>
    <message>
        <source>range of the compression ratio</source>
        <translation>Bereich des Verdichtungsverhältnisses</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>swept volume is %1 m³ and crank radius / rod length %2; they must be positive, the ratio below 1</source>
        <translation>Hubvolumen ist %1 m³ und Kurbelradius / Pleuellänge %2; beide müssen positiv sein, das Verhältnis unter 1</translation>
    </message>
    <message>
        <source>the open design has %1 as it is set</source>
        <translation>der geöffnete Entwurf hat %1 in seiner Einstellung</translation>
    </message>
    <message>
        <source>the same cycle on a crank</source>
        <translation>dasselbe Arbeitsverfahren mit Kurbel</translation>
    </message>
    <message>
        <source>there are more than %1 blanks in a row</source>
        <translation>Mehr als %1 Leerzeichen stehen hintereinander</translation>
    </message>
    <message>
        <source>there are more than %1 values; no design needs that many</source>
        <translation>Die Datei hat mehr als %1 Werte; so viele braucht kein Entwurf</translation>
    </message>
    <message>
        <source>torque at low speed</source>
        <translation>Drehmoment bei niedriger Drehzahl</translation>
    </message>
    <message>
        <source>two-stroke cycle: compression and expansion</source>
        <translation>Zweitaktverfahren: Verdichten und Arbeiten</translation>
    </message>
    <message>
        <source>two-stroke on a crank</source>
        <translation>Zweitakter mit Kurbel</translation>
    </message>
    <message>
        <source>within the fit</source>
        <translation>in der Näherung</translation>
    </message>
    <message>
        <source>amplitude is %1, must be finite</source>
        <translation>Die Amplitude ist %1, sie muss endlich sein</translation>
    </message>
    <message>
        <source>amplitudes add up to %1, must be at least %2</source>
        <translation>Die Amplituden ergeben zusammen %1, verlangt sind mindestens %2</translation>
    </message>
    <message>
        <source>tolerance is %1, must be positive</source>
        <translation>Die Toleranz ist %1, sie muss positiv sein</translation>
    </message>
    <message>
        <source>angle is %1 after %2, must increase</source>
        <translation>Der Winkel %1 folgt auf %2; die Winkel müssen zunehmen</translation>
    </message>
    <message>
        <source>all lifts are %1, the lift must change</source>
        <translation>Alle Wege sind %1, der Weg muss sich ändern</translation>
    </message>
    <message>
        <source>lift is %1 where the table closes, must be that of the first row, %2, to %3</source>
        <translation>Der Weg ist %1, wo sich die Tabelle schließt; er muss auf %3 genau dem der ersten Zeile gleichen, %2</translation>
    </message>
    <message>
        <source>rows are up to %1 apart, must be at most %2 (a quarter of the period)</source>
        <translation>Die Zeilen stehen bis zu %1 auseinander, höchstens %2 sind erlaubt (ein Viertel der Periode)</translation>
    </message>
    <message>
        <source>lift of %1 within %2 rad is beyond the range of numbers</source>
        <translation>Ein Weg von %1 innerhalb von %2 rad liegt jenseits des Zahlenbereichs</translation>
    </message>
    <message>
        <source>span is %1, must be positive</source>
        <translation>Der Abschnittswinkel ist %1; er muss positiv sein</translation>
    </message>
    <message>
        <source>span is %1, must be at least %2</source>
        <translation>Der Abschnittswinkel ist %1, verlangt sind mindestens %2</translation>
    </message>
    <message>
        <source>%1 goes from %2 to %3, %4</source>
        <translation>%1 geht von %2 auf %3, %4</translation>
    </message>
    <message>
        <source>end lift is %1, must be within 0 … %2 (the stroke)</source>
        <translation>Der Weg am Ende ist %1; er muss zwischen 0 und %2 liegen (dem Kolbenhub)</translation>
    </message>
    <message>
        <source>highest lift is %1, the stroke is %2, one rise must reach it</source>
        <translation>Der größte Weg ist %1, der Kolbenhub %2; ein Anstieg muss ihn erreichen</translation>
    </message>
    <message>
        <source>pattern ends at lift %1, must end at 0 mm, where it starts</source>
        <translation>Die Kurve endet beim Weg %1; sie muss bei 0 mm enden, wo sie beginnt</translation>
    </message>
    <message>
        <source>stroke is %1, must be positive, at least %2</source>
        <translation>Der Kolbenhub ist %1, er muss positiv sein, mindestens %2</translation>
    </message>
    <message>
        <source>angle is %1, must be at least 0° and below the period of %2</source>
        <translation>Der Winkel ist %1, er muss mindestens 0° und kleiner als die Periode von %2 sein</translation>
    </message>
    <message>
        <source>angle is %1 after %2, must increase by at least %3</source>
        <translation>Der Winkel %1 folgt auf %2; er muss um mindestens %3 größer sein</translation>
    </message>
    <message>
        <source>lift is %1, must be finite</source>
        <translation>Der Weg ist %1, er muss endlich sein</translation>
    </message>
    <message>
        <source>slope is %1 per degree, must be finite</source>
        <translation>Die Steigung ist %1 je Grad, sie muss endlich sein</translation>
    </message>
    <message>
        <source>angle is %1, must stay %2 before the first knot of the next period</source>
        <translation>Der Winkel ist %1, er muss %2 vor dem ersten Stützpunkt der nächsten Periode bleiben</translation>
    </message>
    <message>
        <source>lift changes by %1, must change by at least %2</source>
        <translation>Der Weg ändert sich um %1, er muss sich um mindestens %2 ändern</translation>
    </message>
    <message>
        <source>cutter radius is %1, must be positive</source>
        <translation>Der Fräserradius ist %1, er muss positiv sein</translation>
    </message>
    <message>
        <source>position along the roller is %1, must be positive</source>
        <translation>Der Ort auf der Rolle ist %1, er muss positiv sein</translation>
    </message>
    <message>
        <source>%1 is %2, must %3</source>
        <translation>%1 ist %2, muss %3</translation>
    </message>
    <message>
        <source>exceed half the roller width of %1</source>
        <translation>die halbe Rollenbreite von %1 übersteigen</translation>
    </message>
    <message>
        <source>be at least 0 and less than half the width of %1</source>
        <translation>mindestens 0 und kleiner als die halbe Breite von %1 sein</translation>
    </message>
    <message>
        <source>leaves a gap of %1 between the crowns at %2 of the shaft, must be positive: the pistons collide</source>
        <translation>lässt %1 Abstand zwischen den Kolbenböden bei %2 der Welle, er muss positiv sein: Die Kolben stoßen zusammen</translation>
    </message>
    <message>
        <source>is %1, the piston never goes out that far: the ports never open</source>
        <translation>ist %1, so weit nach außen kommt der Kolben nie: Die Schlitze öffnen nie</translation>
    </message>
    <message>
        <source>is %1, the piston never comes in that far: the ports never close</source>
        <translation>ist %1, so weit nach innen kommt der Kolben nie: Die Schlitze schließen nie</translation>
    </message>
    <message>
        <source>is %1: the port is open at inner dead centre, %2 of the shaft</source>
        <translation>ist %1: Der Schlitz ist im inneren Totpunkt offen, bei %2 der Welle</translation>
    </message>
    <message>
        <source>is %1: the port must open and close once in the cycle from %2 to %3 of the shaft, opens %4 times</source>
        <translation>ist %1: Der Schlitz muss im Arbeitsspiel von %2 bis %3 der Welle einmal öffnen und schließen, öffnet %4-mal</translation>
    </message>
    <message>
        <source>no start of combustion between -60 and 20° gives a cyclic steady state</source>
        <translation>Bei keinem Brennbeginn zwischen −60° und 20° ergibt sich ein eingeschwungener Zustand</translation>
    </message>
    <message>
        <source>The gas reaches %1; the property fits end at %2.</source>
        <translation>Das Gas erreicht %1; die Stoffwerte gelten bis %2.</translation>
    </message>
    <message>
        <source>Supply power not counted: %1 to compress the air.</source>
        <translation>Leistung der Luftversorgung nicht eingerechnet: %1 zum Verdichten der Luft.</translation>
    </message>
    <message>
        <source>speed is %1, must be positive</source>
        <translation>Die Drehzahl ist %1, sie muss positiv sein</translation>
    </message>
    <message>
        <source>is %1 at each end of a roller %2 wide: no width is left to carry load</source>
        <translation>ist %1 an jedem Ende einer %2 breiten Rolle: Keine Breite bleibt, die trägt</translation>
    </message>
    <message>
        <source>the pitch radius is %1; it must exceed half the bore, %2, or the cylinders enclose the shaft</source>
        <translation>Der Teilkreisradius ist %1; er muss die halbe Bohrung, %2, übersteigen, sonst umschließen die Zylinder die Welle</translation>
    </message>
    <message>
        <source>neighbouring cylinder axes stand %1 apart; it must be more than the bore, %2</source>
        <translation>Benachbarte Zylinderachsen stehen %1 auseinander; es muss mehr sein als die Bohrung, %2</translation>
    </message>
    <message>
        <source>the roller is %1 wide; it must be less than twice the pitch radius, %2</source>
        <translation>Die Rolle ist %1 breit; sie muss schmaler sein als der doppelte Teilkreisradius, %2</translation>
    </message>
    <message>
        <source>the edge relief is %1; both together must be less than the roller width, %2</source>
        <translation>Die Kantenrücknahme ist %1; beide zusammen müssen kleiner sein als die Rollenbreite, %2</translation>
    </message>
    <message>
        <source>the flank between pattern angles %1 and %2 cannot be fitted within %3; ask for a coarser tolerance</source>
        <translation>Die Flanke zwischen den Kurvenwinkeln %1 und %2 lässt sich nicht auf %3 annähern; verlangen Sie eine gröbere Toleranz</translation>
    </message>
    <message>
        <source>radius is %1; it must lie on the face of the track, %2 to %3</source>
        <translation>Der Radius ist %1; er muss auf der Bahnfläche liegen, %2 bis %3</translation>
    </message>
    <message>
        <source>the faces of the %1 do not close to a valid solid at a tolerance of %2</source>
        <translation>Die Flächen der %1 schließen sich bei einer Toleranz von %2 nicht zu einem gültigen Körper</translation>
    </message>
    <message>
        <source>tolerance is %1; it must lie within %2 and %3</source>
        <translation>Die Toleranz ist %1; sie muss zwischen %2 und %3 liegen</translation>
    </message>
    <message>
        <source>the chord error is %1; it must be at least %2</source>
        <translation>Der Sehnenfehler ist %1; verlangt sind mindestens %2</translation>
    </message>
    <message>
        <source>the %1 is %2; it must %3</source>
        <translation>%1: %2; muss %3</translation>
    </message>
    <message>
        <source>not exceed %1, where the inner edge of the roller runs</source>
        <translation>höchstens %1 betragen, wo die Innenkante der Rolle läuft</translation>
    </message>
    <message>
        <source>exceed %1: this roller makes no flank further inside</source>
        <translation>%1 übersteigen: Weiter innen erzeugt diese Rolle keine Flanke</translation>
    </message>
    <message>
        <source>reach %1 to carry the outer edge of the roller everywhere</source>
        <translation>%1 erreichen, um die Außenkante der Rolle überall zu tragen</translation>
    </message>
    <message>
        <source>be less than the groove diameter, %1</source>
        <translation>kleiner sein als der Nutdurchmesser, %1</translation>
    </message>
    <message>
        <source>a roller of %1 radius undercuts the %2 flank of the %3: worst at pattern angle %4, %5 from the shaft axis, where the relative radius is %6; no cusp is cut up to a radius of %7, or by a gentler lift there</source>
        <translation>Eine Rolle mit dem Radius %1 unterschneidet die %2flanke der %3: am stärksten beim Kurvenwinkel %4, %5 von der Wellenachse, wo der Ersatzkrümmungsradius %6 beträgt; bis zu einem Radius von %7 oder mit sanfterem Wegverlauf dort entsteht keine Spitze</translation>
    </message>
    <message>
        <source>beside the roller, %1 from the shaft axis, the %2 flank of the %3 is undercut at pattern angle %4; the face must end closer to the roller</source>
        <translation>Neben der Rolle, %1 von der Wellenachse, ist die %2flanke der %3 beim Kurvenwinkel %4 unterschnitten; die Fläche muss näher an der Rolle enden</translation>
    </message>
    <message>
        <source>the cutter radius is %1; it must %2</source>
        <translation>Der Fräserradius ist %1; er muss %2</translation>
    </message>
    <message>
        <source>not exceed the roller radius, %1, to fit between the flanks of a closed track</source>
        <translation>höchstens der Rollenradius sein, %1, um zwischen die Flanken einer geschlossenen Bahn zu passen</translation>
    </message>
    <message>
        <source>be less than %1, or it gouges the hollow stretch of the %2 flank at pattern angle %3</source>
        <translation>kleiner sein als %1, sonst schneidet der Fräser beim Kurvenwinkel %3 in das hohle Stück der %2flanke</translation>
    </message>
    <message>
        <source>step is %1; it must lie within 0.001° and 90°</source>
        <translation>Der Schritt ist %1; er muss zwischen 0,001° und 90° liegen</translation>
    </message>
    <message>
        <source>leaves a gap of %1 between the crowns on cranks, must be positive: the pistons collide</source>
        <translation>lässt an Kurbeln %1 Abstand zwischen den Kolbenböden, er muss positiv sein: Die Kolben stoßen zusammen</translation>
    </message>
    <message>
        <source>an edge at %1 with a shift of %2 never opens or never closes within a stroke of %3</source>
        <translation>Eine Kante bei %1 mit einer Verschiebung von %2 öffnet oder schließt nie innerhalb eines Kolbenhubs von %3</translation>
    </message>
    <message>
        <source>a lead of %1 of the crank keeps a port open at inner dead centre</source>
        <translation>Eine Voreilung von %1 der Kurbel hält einen Schlitz im inneren Totpunkt offen</translation>
    </message>
    <message>
        <source>angles are %1 and %2, must lie within ±360°</source>
        <translation>Die Winkel sind %1 und %2, sie müssen innerhalb ±360° liegen</translation>
    </message>
    <message>
        <source>speeds are %1 and %2, both must be positive</source>
        <translation>Die Drehzahlen sind %1 und %2, beide müssen positiv sein</translation>
    </message>
    <message>
        <source>Pressure on the back of both pistons. Default 1 bar.</source>
        <translation>Druck auf der Rückseite beider Kolben. Vorgabe 1 bar.</translation>
    </message>
    <message>
        <source>I of everything that turns with the shaft; 0: not given.</source>
        <translation>I aller mit der Welle drehenden Teile; 0: nicht angegeben.</translation>
    </message>
    <message>
        <source>Date and time of ISO 8601; empty: not known.</source>
        <translation>Datum und Uhrzeit nach ISO 8601; leer: unbekannt.</translation>
    </message>
    <message>
        <source>f_b: friction coefficient where metals touch. Default 0.12.</source>
        <translation>f_b: Reibungszahl, wo sich Metalle berühren. Vorgabe 0,12.</translation>
    </message>
    <message>
        <source>f_h: factor of the square root of the duty number in the film regime. Default 2.5.</source>
        <translation>f_h: Faktor an der Wurzel der Betriebskennzahl bei Flüssigkeitsreibung. Vorgabe 2,5.</translation>
    </message>
    <message>
        <source>D_c: duty number above which the film carries the ring. Default 1e-4.</source>
        <translation>D_c: Betriebskennzahl, oberhalb der der Film den Ring trägt. Vorgabe 10⁻⁴.</translation>
    </message>
    <message>
        <source>η at liner temperature. Default 0.008 Pa·s.</source>
        <translation>η bei Temperatur der Laufbuchse. Vorgabe 0,008 Pa·s.</translation>
    </message>
    <message>
        <source>μ_guide between piston and bore under side force. Default 0.08.</source>
        <translation>μ_guide zwischen Kolben und Bohrung unter Seitenkraft. Vorgabe 0,08.</translation>
    </message>
    <message>
        <source>c_r of the roller on the track. Default 0.001.</source>
        <translation>c_r der Rolle auf der Bahn. Vorgabe 0,001.</translation>
    </message>
    <message>
        <source>μ_b at the mean bearing diameter. Default 0.0025 (bearing catalogues).</source>
        <translation>μ_b am mittleren Lagerdurchmesser. Vorgabe 0,0025 (Lagerkataloge).</translation>
    </message>
    <message>
        <source>μ_s: friction of the slip across the roller&apos;s width. Default 0.05.</source>
        <translation>μ_s: Reibungszahl des Schlupfs über die Rollenbreite. Vorgabe 0,05.</translation>
    </message>
    <message>
        <source>μ of the main bearings at the pitch radius taken as diameter. Default 0.0018.</source>
        <translation>μ der Hauptlager, mit dem Teilkreisradius als Lagerdurchmesser. Vorgabe 0,0018.</translation>
    </message>
    <message>
        <source>Pumps and whatever else the shaft drives. Default 0.</source>
        <translation>Pumpen und was die Welle sonst antreibt. Vorgabe 0.</translation>
    </message>
    <message>
        <source>E. Default 206 GPa, steel.</source>
        <translation>E. Vorgabe 206 GPa, Stahl.</translation>
    </message>
    <message>
        <source>ν. Default 0.30, steel.</source>
        <translation>ν. Vorgabe 0,30, Stahl.</translation>
    </message>
    <message>
        <source>Rq, root mean square. Default 0.2 µm for the track, 0.1 µm for the roller.</source>
        <translation>Rq, quadratisches Mittel. Vorgabe 0,2 µm für die Bahn, 0,1 µm für die Rolle.</translation>
    </message>
    <message>
        <source>η₀ at track temperature. Default 0.010 Pa·s.</source>
        <translation>η₀ bei Temperatur der Bahn. Vorgabe 0,010 Pa·s.</translation>
    </message>
    <message>
        <source>α_p. Default 20 1/GPa, mineral oil.</source>
        <translation>α_p. Vorgabe 20 1/GPa, Mineralöl.</translation>
    </message>
    <message>
        <source>C as a track roller (outer ring loaded, ISO 281); empty: no life is computed.</source>
        <translation>C für den Einsatz als Laufrolle (Außenring belastet, ISO 281); leer: keine Lebensdauer berechnet.</translation>
    </message>
    <message>
        <source>C₀ as a track roller (ISO 76); empty: no static safety is computed.</source>
        <translation>C₀ für den Einsatz als Laufrolle (ISO 76); leer: keine statische Tragsicherheit berechnet.</translation>
    </message>
    <message>
        <source>Cycle degrees from the inner dead centre of the pair; &quot;best-torque&quot; searches −60 to +20 for the highest net work.</source>
        <translation>Grad des Arbeitsspiels ab dem inneren Totpunkt des Paares; „bestes Drehmoment“ sucht von −60 bis +20 die größte Nettoarbeit.</translation>
    </message>
    <message>
        <source>Cycle degrees from the start to the end of the Wiebe function. Default 50 (own estimate).</source>
        <translation>Grad des Arbeitsspiels vom Anfang bis zum Ende der Wiebe-Funktion. Vorgabe 50 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>a: exp(−a) of the fuel never burns; 6.908 leaves 0.1 %.</source>
        <translation>a: exp(−a) des Kraftstoffs verbrennt nie; 6,908 lässt 0,1 % übrig.</translation>
    </message>
    <message>
        <source>η_v of the blower, held constant. Default 0.85 (own estimate).</source>
        <translation>η_v des Gebläses, gleichbleibend. Vorgabe 0,85 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>η_is of whatever compresses the supply. Default 0.65 (own estimate).</source>
        <translation>η_is dessen, was die Zuluft verdichtet. Vorgabe 0,65 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Reference for delivery ratio and supply power. Default 1 bar (ISO 15550).</source>
        <translation>Bezug für Luftaufwand und Leistung der Luftversorgung. Vorgabe 1 bar (ISO 15550).</translation>
    </message>
    <message>
        <source>Reference for delivery ratio and supply power. Default 298.15 K (ISO 15550).</source>
        <translation>Bezug für Luftaufwand und Leistung der Luftversorgung. Vorgabe 298,15 K (ISO 15550).</translation>
    </message>
    <message>
        <source>How fresh gas and residual gas leave (after Benson and Brandham 1969).</source>
        <translation>Wie Frischgas und Restgas den Zylinder verlassen (nach Benson und Brandham 1969).</translation>
    </message>
    <message>
        <source>d: share of the residual gas that leaves unmixed. Default 0.5 (own estimate).</source>
        <translation>d: Anteil des Restgases, der ungemischt austritt. Vorgabe 0,5 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Woschni, SAE 670931; Hohenberg, SAE 790825; or an adiabatic chamber.</source>
        <translation>Woschni, SAE 670931; Hohenberg, SAE 790825; oder ein adiabater Brennraum.</translation>
    </message>
    <message>
        <source>Surface temperature of both crowns. Default 480 K (own estimate).</source>
        <translation>Oberflächentemperatur beider Kolbenböden. Vorgabe 480 K (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Surface temperature of the exposed liner. Default 420 K (own estimate).</source>
        <translation>Oberflächentemperatur der freien Laufbuchse. Vorgabe 420 K (eigene Schätzung).</translation>
    </message>
    <message>
        <source>η_c: share of the heating value released by the fuel that burns. Default 0.97 (own estimate).</source>
        <translation>η_c: Anteil des Heizwerts, den der brennende Kraftstoff freisetzt. Vorgabe 0,97 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>For the knock figure of petrol; empty: as the fuel table says (95).</source>
        <translation>Für das Klopfintegral bei Benzin; leer: nach der Kraftstofftabelle (95).</translation>
    </message>
    <message>
        <source>Constant pressure behind the exhaust ports. Default 1 bar.</source>
        <translation>Gleichbleibender Druck hinter den Auslassschlitzen. Vorgabe 1 bar.</translation>
    </message>
    <message>
        <source>Moves the exhaust track without turning it, outward positive. Default 0.</source>
        <translation>Verschiebt die Auslassbahn ohne Drehung, nach außen positiv. Vorgabe 0.</translation>
    </message>
    <message>
        <source>Width at each edge that carries no load: L = width − 2·relief.</source>
        <translation>Breite an jeder Kante, die nicht trägt: L = Breite − 2·Rücknahme.</translation>
    </message>
    <message>
        <source>Place of each cylinder on the cylinder circle; empty for even spacing from 0.</source>
        <translation>Ort jedes Zylinders auf dem Zylinderkreis; leer für gleiche Abstände ab 0.</translation>
    </message>
    <message>
        <source>Crank degrees before top dead centre. Default 15.</source>
        <translation>Kurbelgrad vor dem oberen Totpunkt. Vorgabe 15.</translation>
    </message>
    <message>
        <source>Crank degrees after bottom dead centre. Default 50.</source>
        <translation>Kurbelgrad nach dem unteren Totpunkt. Vorgabe 50.</translation>
    </message>
    <message>
        <source>Crank degrees before bottom dead centre. Default 50.</source>
        <translation>Kurbelgrad vor dem unteren Totpunkt. Vorgabe 50.</translation>
    </message>
    <message>
        <source>Crank degrees after top dead centre. Default 15.</source>
        <translation>Kurbelgrad nach dem oberen Totpunkt. Vorgabe 15.</translation>
    </message>
    <message>
        <source>The displacement is that of the design; 0: as many cylinders as it has.</source>
        <translation>Der Hubraum ist der des Entwurfs; 0: so viele Zylinder wie dieser.</translation>
    </message>
    <message>
        <source>Default 1.</source>
        <translation>Vorgabe 1.</translation>
    </message>
    <message>
        <source>Geometric. Default 10.5.</source>
        <translation>Geometrisch. Vorgabe 10,5.</translation>
    </message>
    <message>
        <source>Mean effective pressure lost in the bearings of the pair on cranks. Default 0.2 bar (own estimate).</source>
        <translation>Mitteldruckverlust in den Lagern des Paares mit Kurbeln. Vorgabe 0,2 bar (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Shaft degrees of this segment. The spans of a pattern add up to 360° divided by the lobes.</source>
        <translation>Wellengrad dieses Abschnitts. Die Abschnittswinkel einer Kurve ergeben zusammen 360° geteilt durch die Nockenzahl.</translation>
    </message>
    <message>
        <source>How the lift runs over the span (laws of VDI 2143 part 1 and of Norton, Cam Design and Manufacturing Handbook).</source>
        <translation>Wie der Weg über den Abschnitt verläuft (Gesetze nach VDI 2143 Blatt 1 und Norton, Cam Design and Manufacturing Handbook).</translation>
    </message>
    <message>
        <source>Empty: a rise ends at the stroke, a return at 0.</source>
        <translation>Leer: Ein Anstieg endet beim Kolbenhub, ein Rückgang bei 0.</translation>
    </message>
    <message>
        <source>a power, e.g. &quot;90 kW&quot;</source>
        <translation>eine Leistung, z. B. „90 kW“</translation>
    </message>
    <message>
        <source>a torque, e.g. &quot;300 N·m&quot;</source>
        <translation>ein Drehmoment, z. B. „300 N·m“</translation>
    </message>
    <message>
        <source>a shaft speed, e.g. &quot;2400 rpm&quot;</source>
        <translation>eine Drehzahl, z. B. „2400 rpm“</translation>
    </message>
    <message>
        <source>a volume, e.g. &quot;1.8 L&quot;</source>
        <translation>ein Volumen, z. B. „1,8 L“</translation>
    </message>
    <message>
        <source>a length, e.g. &quot;64 mm&quot;</source>
        <translation>eine Länge, z. B. „64 mm“</translation>
    </message>
    <message>
        <source>a mass, e.g. &quot;85 kg&quot;</source>
        <translation>eine Masse, z. B. „85 kg“</translation>
    </message>
    <message>
        <source>a pressure, e.g. &quot;1.5 bar&quot;</source>
        <translation>ein Druck, z. B. „1,5 bar“</translation>
    </message>
    <message>
        <source>a temperature, e.g. &quot;25 °C&quot;</source>
        <translation>eine Temperatur, z. B. „25 °C“</translation>
    </message>
    <message>
        <source>a velocity, e.g. &quot;12 m/s&quot;</source>
        <translation>eine Geschwindigkeit, z. B. „12 m/s“</translation>
    </message>
    <message>
        <source>a fuel consumption, e.g. &quot;250 g/kWh&quot;</source>
        <translation>ein Kraftstoffverbrauch, z. B. „250 g/kWh“</translation>
    </message>
    <message>
        <source>an angle, e.g. &quot;6 °&quot;</source>
        <translation>ein Winkel, z. B. „6 °“</translation>
    </message>
    <message>
        <source>a number or a percentage, e.g. &quot;30 %&quot;</source>
        <translation>eine Zahl oder ein Prozentwert, z. B. „30 %“</translation>
    </message>
    <message>
        <source>above 1</source>
        <translation>über 1</translation>
    </message>
    <message>
        <source>above 0 and ≤ 1</source>
        <translation>über 0 und ≤ 1</translation>
    </message>
    <message>
        <source>within ±90°</source>
        <translation>innerhalb ±90°</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>The products hold no dissociated gas and no carbon monoxide: near λ = 1 the peak temperature is 100 to 250 K too high.</source>
        <translation>Die Verbrennungsprodukte sind ohne Dissoziation und ohne Kohlenmonoxid gerechnet: Nahe λ = 1 ist die höchste Temperatur um 100 bis 250 K zu hoch.</translation>
    </message>
    <message>
        <source>The start of combustion for the best torque is known to 8° of the cycle only: the engine settles too slowly, or not at all, at starts nearby.</source>
        <translation>Der Brennbeginn für das beste Drehmoment ist nur auf 8° des Arbeitsspiels genau bekannt: Bei benachbarten Werten schwingt sich der Motor zu langsam oder gar nicht ein.</translation>
    </message>
    <message>
        <source>there are 0 segments, need at least one rise and one return</source>
        <translation>Es gibt 0 Abschnitte, verlangt sind mindestens ein Anstieg und ein Rückgang</translation>
    </message>
    <message>
        <source>there are 0 harmonics, need at least 1</source>
        <translation>Es gibt 0 Harmonische, verlangt ist mindestens 1</translation>
    </message>
    <message>
        <source>must be at least 1</source>
        <translation>muss mindestens 1 sein</translation>
    </message>
    <message>
        <source>must be positive and at most 1</source>
        <translation>muss positiv und höchstens 1 sein</translation>
    </message>
    <message>
        <source>Net: with all auxiliaries of its use on [ISO 1585]; gross: without.</source>
        <translation>Netto: mit allen im Betrieb nötigen Nebenaggregaten [ISO 1585]; brutto: ohne.</translation>
    </message>
    <message>
        <source>%1, inlet side</source>
        <translation>%1, Einlassseite</translation>
    </message>
    <message>
        <source>%1, exhaust side</source>
        <translation>%1, Auslassseite</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Snapshot</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Ring</source>
        <translation>Ring</translation>
    </message>
    <message>
        <source>Segment</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Knot</source>
        <translation>Stützpunkt</translation>
    </message>
    <message>
        <source>Polynomial 3-4-5</source>
        <translation>Polynom 3-4-5</translation>
    </message>
    <message>
        <source>Polynomial 4-5-6-7</source>
        <translation>Polynom 4-5-6-7</translation>
    </message>
    <message>
        <source>is %1, %2</source>
        <translation>ist %1, %2</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Row of the table of track materials. Default: case-carburised steel of quality MQ (ISO 6336-5).</source>
        <translation>Zeile der Tabelle der Bahnwerkstoffe. Vorgabe: Einsatzstahl der Qualität MQ (ISO 6336-5).</translation>
    </message>
    <message>
        <source>The ring pack of one piston, from the crown on. Default: two compression rings and an oil ring (form after Stanley et al., SAE 1999-01-0974).</source>
        <translation>Das Ringpaket eines Kolbens, ab dem Kolbenboden. Vorgabe: zwei Verdichtungsringe und ein Ölring (Form nach Stanley u. a., SAE 1999-01-0974).</translation>
    </message>
    <message>
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>is %1, must be positive</source>
        <translation>ist %1, muss positiv sein</translation>
    </message>
    <message>
        <source>%1 (at the %2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The contact ellipse</source>
        <translation>Die Kontaktellipse</translation>
    </message>
    <message>
        <source>%1, port row %2</source>
        <translation>%1, Schlitzreihe %2</translation>
    </message>
    <message>
        <source>Pressure angle at the middle of the width</source>
        <translation>Pressungswinkel in der Mitte der Breite</translation>
    </message>
    <message>
        <source>references</source>
        <translation>Vergleichsmotoren</translation>
    </message>
    <message>
        <source>at %1 from the shaft axis, from the exact contact of roller and track</source>
        <translation>%1 von der Wellenachse, aus dem genauen Kontakt von Rolle und Bahn</translation>
    </message>
    <message>
        <source>h(%1) − h(%2) of air; outlet from the pressure ratio, γ = %3 and the isentropic efficiency</source>
        <translation>h(%1) − h(%2) von Luft; Austritt aus dem Druckverhältnis, γ = %3 und dem isentropen Wirkungsgrad</translation>
    </message>
    <message>
        <source>Enthalpy of what passes the inlet ports, from 25 °C</source>
        <translation>Enthalpie dessen, was die Einlassschlitze durchströmt, ab 25 °C</translation>
    </message>
    <message>
        <source>Enthalpy of the fresh gas, from 25 °C</source>
        <translation>Enthalpie des Frischgases, ab 25 °C</translation>
    </message>
    <message>
        <source>Enthalpy of what passes the exhaust ports, from 25 °C</source>
        <translation>Enthalpie dessen, was die Auslassschlitze durchströmt, ab 25 °C</translation>
    </message>
    <message>
        <source>the mean torque is below 1 % of the peak</source>
        <translation>das mittlere Drehmoment liegt unter 1 % der Spitze</translation>
    </message>
    <message>
        <source>Enthalpy with the supply, from 25 °C</source>
        <translation>Enthalpie der Zuluft, ab 25 °C</translation>
    </message>
    <message>
        <source>Enthalpy with the exhaust, from 25 °C</source>
        <translation>Enthalpie des Abgases, ab 25 °C</translation>
    </message>
    <message>
        <source>Knock integral (knock from 1)</source>
        <translation>Klopfintegral (Klopfen ab 1)</translation>
    </message>
    <message>
        <source>a multiple of 0.2°</source>
        <translation>ein Vielfaches von 0,2°</translation>
    </message>
    <message>
        <source>Hertz, elliptical contact (Johnson, Contact Mechanics, § 4.2; Hamrock, Fluid Film Lubrication).</source>
        <translation>Hertz, elliptischer Kontakt (Johnson, Contact Mechanics, § 4.2; Hamrock, Fluid Film Lubrication).</translation>
    </message>
    <message>
        <source>Johnson, Contact Mechanics, § 4.2: in half-widths under the surface.</source>
        <translation>Johnson, Contact Mechanics, § 4.2: in halben Kontaktbreiten unter der Oberfläche.</translation>
    </message>
    <message>
        <source>Newton&apos;s law of cooling for two crowns and the liner between them; coefficient of Woschni 1967 or Hohenberg 1979 (Heywood, § 12.4).</source>
        <translation>Newtonsches Abkühlungsgesetz für zwei Kolbenböden und die Laufbuchse dazwischen; Koeffizient nach Woschni 1967 oder Hohenberg 1979 (Heywood, § 12.4).</translation>
    </message>
    <message>
        <source>Livengood and Wu 1955 with the delay of Douaud and Eyzat 1978 (Heywood, eq. 9.59).</source>
        <translation>Livengood und Wu 1955 mit dem Zündverzug nach Douaud und Eyzat 1978 (Heywood, Gl. 9.59).</translation>
    </message>
    <message>
        <source>The solver searches between −60° and 20° of the cycle to 0.05°; three starts show the same to within their distance.</source>
        <translation>Der Löser sucht zwischen −60° und 20° des Arbeitsspiels auf 0,05° genau; drei Brennbeginne bestätigen das bis auf ihren Abstand.</translation>
    </message>
    <message>
        <source>Definition: both pistons sweep the one chamber, whatever the lead. 1000 mm³ are 1 cm³.</source>
        <translation>Definition: Beide Kolben verdrängen im selben Brennraum, gleich welche Voreilung. 1000 mm³ sind 1 cm³.</translation>
    </message>
    <message>
        <source>Definition (Heywood, Internal Combustion Engine Fundamentals, § 2.2).</source>
        <translation>Definition (Heywood, Internal Combustion Engine Fundamentals, § 2.2).</translation>
    </message>
    <message>
        <source>Definition (Heywood, § 2.2); of unequal lobes the lower one.</source>
        <translation>Definition (Heywood, § 2.2); bei ungleichen Nocken der kleinere Wert.</translation>
    </message>
    <message>
        <source>helix pitch × setting/360° + axial shift of the adjuster</source>
        <translation>Steigung der Steilverzahnung × Stellung/360° + axiale Verschiebung des Verstellers</translation>
    </message>
    <message>
        <source>Virtual work: turning the track by a radian moves it axially by the helix pitch/2π.</source>
        <translation>Virtuelle Arbeit: Eine Drehung der Bahn um einen Radiant verschiebt sie axial um Steigung der Steilverzahnung/2π.</translation>
    </message>
    <message>
        <source>Hertz, line contact (Johnson, Contact Mechanics, § 4.2); load spread evenly over the width, so nominal.</source>
        <translation>Hertz, Linienkontakt (Johnson, Contact Mechanics, § 4.2); Last gleichmäßig über die Breite verteilt, also ein Nennwert.</translation>
    </message>
    <message>
        <source>Definition: 1 where the track never pushes a moving piston.</source>
        <translation>Definition: 1, wo die Bahn nie einen bewegten Kolben drückt.</translation>
    </message>
    <message>
        <source>∮p dV of all cylinders; 1 bar·cm³ is 0.1 J.</source>
        <translation>∮p dV aller Zylinder; 1 bar·cm³ ist 0,1 J.</translation>
    </message>
    <message>
        <source>Johnson, Contact Mechanics, § 4.2: largest shear on the axis of a line contact.</source>
        <translation>Johnson, Contact Mechanics, § 4.2: größte Schubspannung auf der Achse eines Linienkontakts.</translation>
    </message>
    <message>
        <source>ISO 281: basic rating life, a₁ = 1, no lubrication factor.</source>
        <translation>ISO 281: nominelle Lebensdauer, a₁ = 1, kein Beiwert für die Schmierung.</translation>
    </message>
    <message>
        <source>Johnson, Contact Mechanics, § 4.2</source>
        <translation>Johnson, Contact Mechanics, § 4.2</translation>
    </message>
    <message>
        <source>Heywood, § 6.6, ratios to ambient density × swept volume.</source>
        <translation>Heywood, § 6.6, bezogen auf Umgebungsdichte × Hubvolumen.</translation>
    </message>
    <message>
        <source>Heywood, § 13.1.</source>
        <translation>Heywood, § 13.1.</translation>
    </message>
    <message>
        <source>Heywood, § 2.8.</source>
        <translation>Heywood, § 2.8.</translation>
    </message>
    <message>
        <source>No dissociation: high by 100 to 250 K near λ = 1 (Heywood, ch. 4).</source>
        <translation>Keine Dissoziation: nahe λ = 1 um 100 bis 250 K zu hoch (Heywood, Kap. 4).</translation>
    </message>
    <message>
        <source>8.314462618 J/(mol·K) over the molar mass of air</source>
        <translation>8,314462618 J/(mol·K) / molare Masse der Luft</translation>
    </message>
    <message>
        <source>Root, to 1e−10 rad, of lift less shift = inner edge of the port for an event, of dV/dθ = 0 or the middle of the common dwell for a dead centre; here brought into the first cycle.</source>
        <translation>Nullstelle, auf 1e−10 rad genau: Weg − Verschiebung = Innenkante des Schlitzes (Ereignis), dV/dθ = 0 oder Mitte der gemeinsamen Rast (Totpunkt); hier auf das erste Arbeitsspiel zurückgeführt.</translation>
    </message>
    <message>
        <source>wrap brings an angle into −180° … 180°.</source>
        <translation>wrap bringt einen Winkel in −180° … 180°.</translation>
    </message>
    <message>
        <source>%1, by turning the track</source>
        <translation>%1 durch Drehen der Bahn</translation>
    </message>
    <message>
        <source>%1, by moving the track</source>
        <translation>%1 durch Verschieben der Bahn</translation>
    </message>
    <message>
        <source>%1, from inner dead centre</source>
        <translation>%1, ab innerem Totpunkt</translation>
    </message>
    <message>
        <source>auxiliaries</source>
        <translation>Nebenaggregate</translation>
    </message>
    <message>
        <source>%1, cycle %2</source>
        <translation>%1, Arbeitsspiel %2</translation>
    </message>
    <message>
        <source>%1, exhaust track only turned</source>
        <translation>%1, Auslassbahn nur gedreht</translation>
    </message>
    <message>
        <source>%1, adjuster at rest</source>
        <translation>%1, Versteller in Ruhe</translation>
    </message>
    <message>
        <source>m = 1 on a crank</source>
        <translation>m = 1 mit Kurbel</translation>
    </message>
    <message>
        <source>m = 2·c, four-stroke</source>
        <translation>m = 2·c, Viertakt</translation>
    </message>
    <message>
        <source>V_d = pistons·π/4·bore²·stroke</source>
        <translation>V_d = Kolben·π/4·Bohrung²·Kolbenhub</translation>
    </message>
    <message>
        <source>Ambient air at 1 bar and 298.15 K where it is not given [ISO 15550].</source>
        <translation>Umgebungsluft von 1 bar und 298,15 K, wo nichts angegeben ist [ISO 15550].</translation>
    </message>
    <message>
        <source>bmep = 2π·T/(c·V_d)</source>
        <translation>p_me = 2π·T/(c·V_d)</translation>
    </message>
    <message>
        <source>trapping efficiency 0.8: own estimate</source>
        <translation>Fanggrad 0,8: eigene Schätzung</translation>
    </message>
    <message>
        <source>ideal gas; up to 8/7 of it with the clearance filled as well</source>
        <translation>ideales Gas; bis zu 8/7 davon, wenn auch der Verdichtungsraum gefüllt wird</translation>
    </message>
    <message>
        <source>Power at the reference air of ISO 1585</source>
        <translation>Leistung bei der Bezugsluft der ISO 1585</translation>
    </message>
    <message>
        <source>gross and net: ISO 15550; a tenth: own estimate</source>
        <translation>brutto und netto: ISO 15550; ein Zehntel: eigene Schätzung</translation>
    </message>
    <message>
        <source>Heywood 1988, Internal Combustion Engine Fundamentals, table 2.1</source>
        <translation>Heywood 1988, Internal Combustion Engine Fundamentals, Tabelle 2.1</translation>
    </message>
    <message>
        <source>Heywood 1988, Internal Combustion Engine Fundamentals, §2.10</source>
        <translation>Heywood 1988, Internal Combustion Engine Fundamentals, §2.10</translation>
    </message>
    <message>
        <source>Heywood 1988, Internal Combustion Engine Fundamentals, §6.6</source>
        <translation>Heywood 1988, Internal Combustion Engine Fundamentals, §6.6</translation>
    </message>
    <message>
        <source>%1, on a crank</source>
        <translation>%1, mit Kurbel</translation>
    </message>
    <message>
        <source>%1 = %2 = %3</source>
        <translation>%1 = %2 = %3</translation>
    </message>
    <message>
        <source>%1 = %2</source>
        <translation>%1 = %2</translation>
    </message>
    <message>
        <source>%1 is %2: %3</source>
        <translation>%1 ist %2: %3</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1·%2</source>
        <translation>%1·%2</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1 &gt; %2</source>
        <translation>%1 &gt; %2</translation>
    </message>
    <message>
        <source>cycle, ignition</source>
        <translation>Arbeitsverfahren, Zündung</translation>
    </message>
    <message>
        <source>%1 (fuel assumed)</source>
        <translation>%1 (Kraftstoff angenommen)</translation>
    </message>
    <message>
        <source>Blair 1996, Design and Simulation of Two-Stroke Engines, SAE R-161, ch. 6</source>
        <translation>Blair 1996, Design and Simulation of Two-Stroke Engines, SAE R-161, Kap. 6</translation>
    </message>
    <message>
        <source>%1 … %2 times a usual engine (%3).</source>
        <translation>Das %1 … %2-Fache eines üblichen Motors (%3).</translation>
    </message>
    <message>
        <source>Fuel diesel: none is given.</source>
        <translation>Kraftstoff Diesel: Keiner ist angegeben.</translation>
    </message>
    <message>
        <source>Fuel petrol: none is given.</source>
        <translation>Kraftstoff Benzin: Keiner ist angegeben.</translation>
    </message>
    <message>
        <source>When motored, the rollers keep contact only above about %1: at lower speed ring friction holds the pistons back as they move outward. Start with springs, supply pressure or a closed track.</source>
        <translation>Geschleppt halten die Rollen nur über etwa %1 Kontakt: Bei niedrigerer Drehzahl hält die Ringreibung die Kolben auf dem Weg nach außen zurück. Mit Federn, Ladedruck oder geschlossener Bahn starten.</translation>
    </message>
    <message>
        <source>0: gas and rings do not press the piston on.</source>
        <translation>0: Gas und Ringe drücken den Kolben nicht an.</translation>
    </message>
    <message>
        <source>0: gas and rings press the piston on at any speed.</source>
        <translation>0: Gas und Ringe drücken den Kolben bei jeder Drehzahl an.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no fuel of the program; it must be one of %2</source>
        <translation>„%1“ ist kein Kraftstoff des Programms; möglich sind %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no key of a duty; the nearest is &quot;%2&quot;</source>
        <translation>„%1“ ist kein Schlüssel der Anforderungen; der nächste ist „%2“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not of the form key=value</source>
        <translation>„%1“ hat nicht die Form Schlüssel=Wert</translation>
    </message>
    <message>
        <source>%1 is &quot;%2&quot;; it must be a number</source>
        <translation>%1 ist „%2“; es muss eine Zahl sein</translation>
    </message>
    <message>
        <source>%1 is given twice</source>
        <translation>%1 ist zweimal angegeben</translation>
    </message>
    <message>
        <source>%1 must be given with %2</source>
        <translation>%1 muss zusammen mit %2 angegeben werden</translation>
    </message>
    <message>
        <source>%1 must be positive</source>
        <translation>%1 muss positiv sein</translation>
    </message>
    <message>
        <source>Bore from displacement</source>
        <translation>Bohrung aus dem Hubraum</translation>
    </message>
    <message>
        <source>Bore from displacement and stroke</source>
        <translation>Bohrung aus Hubraum und Kolbenhub</translation>
    </message>
    <message>
        <source>Bore from power</source>
        <translation>Bohrung aus der Leistung</translation>
    </message>
    <message>
        <source>Brake thermal efficiency</source>
        <translation>Effektiver Wirkungsgrad</translation>
    </message>
    <message>
        <source>Combustion duration</source>
        <translation>Brenndauer</translation>
    </message>
    <message>
        <source>Default of the program</source>
        <translation>Vorgabe des Programms</translation>
    </message>
    <message>
        <source>Discharge coefficient of the ports</source>
        <translation>Durchflussbeiwert der Schlitze</translation>
    </message>
    <message>
        <source>Displacement from bore and stroke</source>
        <translation>Hubraum aus Bohrung und Kolbenhub</translation>
    </message>
    <message>
        <source>Displacement from power</source>
        <translation>Hubraum aus der Leistung</translation>
    </message>
    <message>
        <source>Dwell at inner dead centre</source>
        <translation>Rast im inneren Totpunkt</translation>
    </message>
    <message>
        <source>Dwell at outer dead centre</source>
        <translation>Rast im äußeren Totpunkt</translation>
    </message>
    <message>
        <source>Dynamic rating of the roller bearing</source>
        <translation>Dynamische Tragzahl des Rollenlagers</translation>
    </message>
    <message>
        <source>Excess-air ratio</source>
        <translation>Luftverhältnis</translation>
    </message>
    <message>
        <source>Exhaust back pressure</source>
        <translation>Abgasgegendruck</translation>
    </message>
    <message>
        <source>Exhaust port height</source>
        <translation>Höhe der Auslassschlitze</translation>
    </message>
    <message>
        <source>Exhaust ports, share of the circumference</source>
        <translation>Auslassschlitze, Anteil am Umfang</translation>
    </message>
    <message>
        <source>Geometric; the lower one where two are published.</source>
        <translation>Geometrisch; das niedrigere, wo zwei veröffentlicht sind.</translation>
    </message>
    <message>
        <source>Height of the exhaust ports</source>
        <translation>Höhe der Auslassschlitze</translation>
    </message>
    <message>
        <source>Height of the inlet ports</source>
        <translation>Höhe der Einlassschlitze</translation>
    </message>
    <message>
        <source>Inlet port height</source>
        <translation>Höhe der Einlassschlitze</translation>
    </message>
    <message>
        <source>Inlet ports, share of the circumference</source>
        <translation>Einlassschlitze, Anteil am Umfang</translation>
    </message>
    <message>
        <source>Lobes of the tracks</source>
        <translation>Nocken der Kurvenbahnen</translation>
    </message>
    <message>
        <source>Number of cylinders</source>
        <translation>Zahl der Zylinder</translation>
    </message>
    <message>
        <source>Outer diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>Piston mass with roller</source>
        <translation>Kolbenmasse mit Rolle</translation>
    </message>
    <message>
        <source>Pitch radius from outer diameter</source>
        <translation>Teilkreisradius aus dem Außendurchmesser</translation>
    </message>
    <message>
        <source>Power from torque</source>
        <translation>Leistung aus dem Drehmoment</translation>
    </message>
    <message>
        <source>Rated speed</source>
        <translation>Nenndrehzahl</translation>
    </message>
    <message>
        <source>Rating life of the rollers</source>
        <translation>Nominelle Lebensdauer der Rollen</translation>
    </message>
    <message>
        <source>Setting between the ratios</source>
        <translation>Stellung zwischen den Verhältnissen</translation>
    </message>
    <message>
        <source>Setting between the two compression ratios</source>
        <translation>Stellung zwischen den beiden Verdichtungsverhältnissen</translation>
    </message>
    <message>
        <source>Speed from piston speed</source>
        <translation>Drehzahl aus der Kolbengeschwindigkeit</translation>
    </message>
    <message>
        <source>Speed from power and torque</source>
        <translation>Drehzahl aus Leistung und Drehmoment</translation>
    </message>
    <message>
        <source>Start of combustion</source>
        <translation>Brennbeginn</translation>
    </message>
    <message>
        <source>Static rating of the roller bearing</source>
        <translation>Statische Tragzahl des Rollenlagers</translation>
    </message>
    <message>
        <source>Stroke from bore</source>
        <translation>Kolbenhub aus der Bohrung</translation>
    </message>
    <message>
        <source>Stroke from displacement and bore</source>
        <translation>Kolbenhub aus Hubraum und Bohrung</translation>
    </message>
    <message>
        <source>Stroke of one piston</source>
        <translation>Kolbenhub</translation>
    </message>
    <message>
        <source>V = P/(p_me·n·lobes)</source>
        <translation>V = P/(p_me·n·Nocken)</translation>
    </message>
    <message>
        <source>Where the compression can be adjusted: the other end.</source>
        <translation>Wo sich die Verdichtung verstellen lässt: das andere Ende.</translation>
    </message>
    <message>
        <source>Width of the exhaust ports</source>
        <translation>Breite der Auslassschlitze</translation>
    </message>
    <message>
        <source>Width of the inlet ports</source>
        <translation>Breite der Einlassschlitze</translation>
    </message>
    <message>
        <source>a duty must give its power or its torque</source>
        <translation>Zu den Anforderungen gehört eine Leistung oder ein Drehmoment</translation>
    </message>
    <message>
        <source>ambient and the silencer</source>
        <translation>Umgebung und Schalldämpfer</translation>
    </message>
    <message>
        <source>at the rated point; the published figure may be the highest at another speed</source>
        <translation>im Nennpunkt; die veröffentlichte Angabe kann der Höchstwert bei anderer Drehzahl sein</translation>
    </message>
    <message>
        <source>band of the claims check</source>
        <translation>Bereich der Prüfung von Angaben</translation>
    </message>
    <message>
        <source>by fuel</source>
        <translation>nach dem Kraftstoff</translation>
    </message>
    <message>
        <source>common practice for cam mechanisms</source>
        <translation>übliche Praxis bei Kurvengetrieben</translation>
    </message>
    <message>
        <source>common practice with opposed pistons</source>
        <translation>übliche Praxis bei Gegenkolben</translation>
    </message>
    <message>
        <source>definition of mean effective pressure</source>
        <translation>Definition des effektiven Mitteldrucks</translation>
    </message>
    <message>
        <source>displacement, then mixing (uniflow)</source>
        <translation>Verdrängung, dann Mischung (Gleichstrom)</translation>
    </message>
    <message>
        <source>follows from combustion, wall heat and friction, which are not fitted to it</source>
        <translation>folgt aus Verbrennung, Wandwärme und Reibung, die nicht daran angepasst sind</translation>
    </message>
    <message>
        <source>help of the input</source>
        <translation>Hilfe zur Eingabe</translation>
    </message>
    <message>
        <source>one, two and three lobes are compared</source>
        <translation>ein, zwei und drei Nocken werden verglichen</translation>
    </message>
    <message>
        <source>other liquid fuels and methane</source>
        <translation>andere flüssige Kraftstoffe und Methan</translation>
    </message>
    <message>
        <source>own estimate on pistons of engines; common practice</source>
        <translation>eigene Schätzung für Kolben von Motoren; übliche Praxis</translation>
    </message>
    <message>
        <source>perfect mixing … displacement</source>
        <translation>vollkommene Mischung … Verdrängung</translation>
    </message>
    <message>
        <source>pistons, rollers and tracks of this stroke need another length (estimate)</source>
        <translation>Kolben, Rollen und Bahnen dieses Kolbenhubs brauchen eine andere Länge (Schätzung)</translation>
    </message>
    <message>
        <source>see the help of the input</source>
        <translation>siehe Hilfe zur Eingabe</translation>
    </message>
    <message>
        <source>share of the circumference</source>
        <translation>Anteil am Umfang</translation>
    </message>
    <message>
        <source>share of the pattern</source>
        <translation>Anteil an der Kurve</translation>
    </message>
    <message>
        <source>the crowns would meet</source>
        <translation>die Kolbenböden würden sich berühren</translation>
    </message>
    <message>
        <source>the fuel of such engines</source>
        <translation>der Kraftstoff solcher Motoren</translation>
    </message>
    <message>
        <source>the life must be positive</source>
        <translation>die Lebensdauer muss positiv sein</translation>
    </message>
    <message>
        <source>the published band</source>
        <translation>der veröffentlichte Bereich</translation>
    </message>
    <message>
        <source>the supply pressure is given</source>
        <translation>der Ladedruck ist vorgegeben</translation>
    </message>
    <message>
        <source>typical full-complement track rollers, general values</source>
        <translation>typische vollrollige Laufrollen, allgemeine Werte</translation>
    </message>
    <message>
        <source>usual for the fuel</source>
        <translation>üblich für den Kraftstoff</translation>
    </message>
    <message>
        <source>ε = V_max/V_min with both pistons in their phase</source>
        <translation>ε = V_max/V_min mit beiden Kolben in ihrer Phase</translation>
    </message>
    <message>
        <source>ε(Δ) = lower compression ratio</source>
        <translation>ε(Δ) = kleineres Verdichtungsverhältnis</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Derived</source>
        <translation>Abgeleitet</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Gewählt</translation>
    </message>
    <message>
        <source>Uniform</source>
        <translation>Gleichverteilt</translation>
    </message>
    <message>
        <source>Triangular</source>
        <translation>Dreieckverteilt</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normalverteilt</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>Distribution</source>
        <translation>Verteilung</translation>
    </message>
    <message>
        <source>Uniform between the limits, triangular with its mode at the value, or normal with the limits as 5th and 95th percentile.</source>
        <translation>Gleichverteilt zwischen den Grenzen, dreieckverteilt mit der Spitze beim Wert oder normalverteilt mit den Grenzen als 5. und 95. Perzentil.</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Möglichkeiten</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Möglichkeit</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>Knowledge</source>
        <translation>Kenntnis</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>r/l of all cranks. Default 0.28 (own estimate).</source>
        <translation>r/l aller Kurbeln. Vorgabe 0,28 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>bores %1, rollers %2, pressure angle %3</source>
        <translation>Bohrungen %1, Rollen %2, Pressungswinkel %3</translation>
    </message>
    <message>
        <source>ε = %1 at %2, %3 at 0°</source>
        <translation>ε = %1 bei %2, %3 bei 0°</translation>
    </message>
    <message>
        <source>%1 too large; the nearest is %2</source>
        <translation>%1 zu groß; am nächsten kommt %2</translation>
    </message>
    <message>
        <source>%1 too long; the nearest is %2</source>
        <translation>%1 zu lang; am nächsten kommt %2</translation>
    </message>
    <message>
        <source>the nearest is %1</source>
        <translation>am nächsten kommt %1</translation>
    </message>
    <message>
        <source>nominal contact stress %1 at the rated point</source>
        <translation>nominelle Kontaktpressung %1 im Nennpunkt</translation>
    </message>
    <message>
        <source>between %1 and %2 of supply pressure the nearest is %3 at %4</source>
        <translation>bei einem Ladedruck zwischen %1 und %2 kommt %3 bei %4 am nächsten</translation>
    </message>
    <message>
        <source>brake power %1 at the rated speed</source>
        <translation>effektive Leistung %1 bei Nenndrehzahl</translation>
    </message>
    <message>
        <source>&lt; or =</source>
        <translation>&lt; oder =</translation>
    </message>
    <message>
        <source>time-area %1</source>
        <translation>Zeitquerschnitt %1</translation>
    </message>
    <message>
        <source>blowdown time-area %1</source>
        <translation>Zeitquerschnitt des Vorauslasses %1</translation>
    </message>
    <message>
        <source>z = V/0.35 dm³, from 2 to 6</source>
        <translation>z = V/0,35 dm³, von 2 bis 6</translation>
    </message>
    <message>
        <source>2 … 6</source>
        <translation>2 … 6</translation>
    </message>
    <message>
        <source>1 … 3</source>
        <translation>1 … 3</translation>
    </message>
    <message>
        <source>P = 2π·n·T</source>
        <translation>P = 2π·n·T</translation>
    </message>
    <message>
        <source>definition</source>
        <translation>Definition</translation>
    </message>
    <message>
        <source>x = 0.85 … 1.0</source>
        <translation>x = 0,85 … 1,0</translation>
    </message>
    <message>
        <source>n = c_m/(2·S·lobes)</source>
        <translation>n = c_m/(2·S·Nocken)</translation>
    </message>
    <message>
        <source>S = x·B</source>
        <translation>S = x·B</translation>
    </message>
    <message>
        <source>common practice; compare Heywood 1988, ch. 1 and 9</source>
        <translation>übliche Praxis; vergleiche Heywood 1988, Kap. 1 und 9</translation>
    </message>
    <message>
        <source>Δ</source>
        <translation>Δ</translation>
    </message>
    <message>
        <source>5° … 20°</source>
        <translation>5° … 20°</translation>
    </message>
    <message>
        <source>8° … 20° cycle</source>
        <translation>8° … 20° Arbeitsspiel</translation>
    </message>
    <message>
        <source>3 … 6 %</source>
        <translation>3 … 6 %</translation>
    </message>
    <message>
        <source>6 … 12 %</source>
        <translation>6 … 12 %</translation>
    </message>
    <message>
        <source>the largest of: bores and a wall, (B + w)/(2·sin(π/z)); rollers clear at their inner edge, r·1.05/sin(π/z) + b/2; pressure angle 30° at the steepest place, y′/tan 30°</source>
        <translation>der größte von: Bohrungen und eine Wand, (B + w)/(2·sin(π/z)); Rollen an der Innenkante frei, r·1,05/sin(π/z) + b/2; Pressungswinkel 30° an der steilsten Stelle, y′/tan 30°</translation>
    </message>
    <message>
        <source>R = D/2 − B/2 − w</source>
        <translation>R = D/2 − B/2 − w</translation>
    </message>
    <message>
        <source>wall w = 4 mm + 0.06 … 0.16 B</source>
        <translation>Wand w = 4 mm + 0,06 … 0,16 B</translation>
    </message>
    <message>
        <source>m = 3.5 kg/dm³·B³</source>
        <translation>m = 3,5 kg/dm³·B³</translation>
    </message>
    <message>
        <source>2.5 … 5 kg/dm³</source>
        <translation>2,5 … 5 kg/dm³</translation>
    </message>
    <message>
        <source>0.30 … 0.45 B</source>
        <translation>0,30 … 0,45 B</translation>
    </message>
    <message>
        <source>1,000 … 1,400 MPa</source>
        <translation>1000 … 1400 MPa</translation>
    </message>
    <message>
        <source>line contact [Johnson 1985]; allowable stress common practice</source>
        <translation>Linienkontakt [Johnson 1985]; zulässige Pressung nach üblicher Praxis</translation>
    </message>
    <message>
        <source>C₀ = 1.3·C</source>
        <translation>C₀ = 1,3·C</translation>
    </message>
    <message>
        <source>1.0 … 1.7 C</source>
        <translation>1,0 … 1,7 C</translation>
    </message>
    <message>
        <source>± 25 %</source>
        <translation>± 25 %</translation>
    </message>
    <message>
        <source>Blair 1996, ch. 6 (secondary value, not checked against the printed source)</source>
        <translation>Blair 1996, Kap. 6 (Sekundärwert, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>C_d</source>
        <translation>C_d</translation>
    </message>
    <message>
        <source>0.6 … 0.8</source>
        <translation>0,6 … 0,8</translation>
    </message>
    <message>
        <source>common practice; compare Heywood 1988, §6.6</source>
        <translation>übliche Praxis; vergleiche Heywood 1988, §6.6</translation>
    </message>
    <message>
        <source>common practice; compare Heywood 1988</source>
        <translation>übliche Praxis; vergleiche Heywood 1988</translation>
    </message>
    <message>
        <source>0 … 100 % of the Wiebe function</source>
        <translation>0 … 100 % der Wiebe-Funktion</translation>
    </message>
    <message>
        <source>35° … 70° cycle</source>
        <translation>35° … 70° Arbeitsspiel</translation>
    </message>
    <message>
        <source>common practice; compare Heywood 1988, §9.2</source>
        <translation>übliche Praxis; vergleiche Heywood 1988, §9.2</translation>
    </message>
    <message>
        <source>300 … 380 K</source>
        <translation>300 … 380 K</translation>
    </message>
    <message>
        <source>1.0 … 1.15 bar</source>
        <translation>1,0 … 1,15 bar</translation>
    </message>
    <message>
        <source>Benson and Brandham 1969</source>
        <translation>Benson und Brandham 1969</translation>
    </message>
    <message>
        <source>0.2 … 0.8</source>
        <translation>0,2 … 0,8</translation>
    </message>
    <message>
        <source>Rollers of neighbouring cylinders meet at their inner edges by %1 where both stand at the same height. Use a roller radius below %2, a larger pitch radius or fewer cylinders.</source>
        <translation>Rollen benachbarter Zylinder überschneiden sich an ihren Innenkanten um %1, wo beide auf gleicher Höhe stehen. Nehmen Sie einen Rollenradius unter %2, einen größeren Teilkreisradius oder weniger Zylinder.</translation>
    </message>
    <message>
        <source>%1 (secondary value, not checked against the printed source)</source>
        <translation>%1 (Sekundärwert, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>1 lobe</source>
        <translation>1 Nocken</translation>
    </message>
    <message>
        <source>the open design fires every %1 at the shortest</source>
        <translation>der geöffnete Entwurf zündet im kürzesten Fall alle %1</translation>
    </message>
    <message>
        <source>without bowls a piston or track has to move by %1</source>
        <translation>ohne Mulden muss sich ein Kolben oder eine Bahn um %1 bewegen</translation>
    </message>
    <message>
        <source>the bores of the open design alone need a diameter of %1</source>
        <translation>allein die Bohrungen des geöffneten Entwurfs brauchen einen Durchmesser von %1</translation>
    </message>
    <message>
        <source>strokes and pistons that cover their ports alone need %1 of length</source>
        <translation>allein Kolbenhübe und Kolben, die ihre Schlitze verdecken, brauchen %1 Länge</translation>
    </message>
    <message>
        <source>Brake mean effective pressure %1: %2.</source>
        <translation>Effektiver Mitteldruck %1: %2.</translation>
    </message>
    <message>
        <source>%1 at that speed</source>
        <translation>%1 bei dieser Drehzahl</translation>
    </message>
    <message>
        <source>%1; engines of this cycle seldom stay below %2 (common practice).</source>
        <translation>%1; Motoren dieses Verfahrens bleiben selten unter %2 (übliche Praxis).</translation>
    </message>
    <message>
        <source>Definition.</source>
        <translation>Definition.</translation>
    </message>
    <message>
        <source>the length of the scale must be positive</source>
        <translation>die Länge des Maßstabs muss positiv sein</translation>
    </message>
    <message>
        <source>the ends of the scale are %1 pixels apart; they must be at least %2 apart, and are best as far as the picture allows</source>
        <translation>die Enden des Maßstabs liegen %1 Pixel auseinander; es müssen mindestens %2 sein, am besten so weit, wie das Bild erlaubt</translation>
    </message>
    <message>
        <source>a circle needs at least three places on its edge</source>
        <translation>ein Kreis braucht mindestens drei Stellen auf seinem Rand</translation>
    </message>
    <message>
        <source>the places on the edge lie in a line</source>
        <translation>die Stellen auf dem Rand liegen auf einer Geraden</translation>
    </message>
    <message>
        <source>no circle comes near the places on the edge</source>
        <translation>kein Kreis kommt den Stellen auf dem Rand nahe</translation>
    </message>
    <message>
        <source>an arm of the angle is too short to be measured</source>
        <translation>ein Schenkel des Winkels ist zu kurz zum Messen</translation>
    </message>
    <message>
        <source>a lobe needs at least %1 places along its curve</source>
        <translation>ein Nocken braucht mindestens %1 Stellen entlang seiner Kurve</translation>
    </message>
    <message>
        <source>place %1 of the curve lies before the one before it; trace from one outer dead centre to the next</source>
        <translation>Stelle %1 der Kurve liegt vor der vorigen; von einem äußeren Totpunkt zum nächsten nachfahren</translation>
    </message>
    <message>
        <source>Space under the piston as pump</source>
        <translation>Raum unter dem Kolben als Pumpe</translation>
    </message>
    <message>
        <source>Injected after the ports have closed</source>
        <translation>Eingespritzt, nachdem die Schlitze geschlossen sind</translation>
    </message>
    <message>
        <source>Mixture through the ports</source>
        <translation>Gemisch durch die Schlitze</translation>
    </message>
    <message>
        <source>Inlet pistons</source>
        <translation>Einlasskolben</translation>
    </message>
    <message>
        <source>Both pistons</source>
        <translation>Beide Kolben</translation>
    </message>
    <message>
        <source>Reed area</source>
        <translation>Freier Querschnitt der Zunge</translation>
    </message>
    <message>
        <source>Free area of the reed valve when fully open, one pump chamber. Default 260 mm² (own estimate).</source>
        <translation>Freier Querschnitt des ganz geöffneten Zungenventils, je Pumpenkammer. Vorgabe 260 mm² (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Discharge coefficient of the reed</source>
        <translation>Durchflussbeiwert der Zunge</translation>
    </message>
    <message>
        <source>Cracking drop of the reed</source>
        <translation>Öffnungsdruckdifferenz der Zunge</translation>
    </message>
    <message>
        <source>Drop from ambient to the pump chamber at which the reed begins to open. Default 0.01 bar (own estimate).</source>
        <translation>Druckabfall von der Umgebung zur Pumpenkammer, bei dem die Zunge abhebt. Vorgabe 0,01 bar (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Further drop to fully open</source>
        <translation>Weiterer Abfall bis ganz offen</translation>
    </message>
    <message>
        <source>Drop beyond the cracking drop at which the reed is fully open; between them its area grows in proportion. Default 0.04 bar (own estimate).</source>
        <translation>Druckabfall über die Öffnungsdruckdifferenz hinaus, bei dem die Zunge ganz offen ist; dazwischen wächst ihr Querschnitt proportional. Vorgabe 0,04 bar (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Pistons that pump</source>
        <translation>Pumpende Kolben</translation>
    </message>
    <message>
        <source>Dead volume of the pump</source>
        <translation>Totraum der Pumpe</translation>
    </message>
    <message>
        <source>V_u with the pistons at outer dead centre, one chamber or the whole case, passages to the ports included. Default 130 cm³ (own estimate).</source>
        <translation>V_u mit den Kolben im äußeren Totpunkt, eine Kammer oder das ganze Gehäuse, Kanäle zu den Schlitzen eingeschlossen. Vorgabe 130 cm³ (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Area under the piston</source>
        <translation>Fläche unter dem Kolben</translation>
    </message>
    <message>
        <source>Share of the bore&apos;s area that pumps: 1 less that of a piston rod. Default 0.92 (own estimate).</source>
        <translation>Anteil der Bohrungsfläche, der pumpt: 1 minus Anteil einer Kolbenstange. Vorgabe 0,92 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Reed valve</source>
        <translation>Zungenventil</translation>
    </message>
    <message>
        <source>σ: share of the inflow that leaves at once through the exhaust ports. Default 0; of a one-sided engine 0.15 (own estimate), where loop-scavenged cylinders have 0.05 to 0.3.</source>
        <translation>σ: Anteil der Einströmung, der sofort durch die Auslassschlitze entweicht. Vorgabe 0; bei einem einseitigen Motor 0,15 (eigene Schätzung), wo umkehrgespülte Zylinder 0,05 bis 0,3 haben.</translation>
    </message>
    <message>
        <source>Head temperature</source>
        <translation>Temperatur des Zylinderkopfs</translation>
    </message>
    <message>
        <source>Surface temperature of the cylinder head; empty: as the crown.</source>
        <translation>Oberflächentemperatur des Zylinderkopfs; leer: wie der Kolbenboden.</translation>
    </message>
    <message>
        <source>Mixture</source>
        <translation>Gemischbildung</translation>
    </message>
    <message>
        <source>Injected: the fuel meets the trapped air. Mixture through the ports: fuel vapour comes with the fresh air, and what of it leaves through the exhaust is lost.</source>
        <translation>Eingespritzt: Der Kraftstoff trifft auf die eingeschlossene Luft. Gemisch durch die Schlitze: Kraftstoffdampf kommt mit der Frischluft, und was davon durch den Auslass entweicht, ist verloren.</translation>
    </message>
    <message>
        <source>Two pistons against each other</source>
        <translation>Zwei Kolben gegeneinander</translation>
    </message>
    <message>
        <source>One piston against a head</source>
        <translation>Ein Kolben gegen einen Zylinderkopf</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <translation>Bauform</translation>
    </message>
    <message>
        <source>Two opposed pistons on two tracks, or one piston on one track against a fixed flat head: then the inlet track and the inlet piston are the only ones, and both rows of ports lie in its way.</source>
        <translation>Zwei gegenläufige Kolben auf zwei Kurvenbahnen oder ein Kolben auf einer Bahn gegen einen festen, flachen Zylinderkopf: Dann gibt es nur die Einlassbahn und den Einlasskolben, und beide Schlitzreihen liegen in dessen Weg.</translation>
    </message>
    <message>
        <source>a one-sided engine has no exhaust track; export the inlet track</source>
        <translation>Ein einseitiger Motor hat keine Auslassbahn; zu exportieren ist die Einlassbahn</translation>
    </message>
    <message>
        <source>leaves no space under the piston at outer dead centre with the adjuster&apos;s shift, must be more</source>
        <translation>lässt mit der Verschiebung des Verstellers im äußeren Totpunkt keinen Raum unter dem Kolben, muss größer sein</translation>
    </message>
    <message>
        <source>Largest force on the thrust bearing</source>
        <translation>Größte Kraft auf das Axiallager</translation>
    </message>
    <message>
        <source>Mean force on the thrust bearing, away from the cylinders</source>
        <translation>Mittlere Kraft auf das Axiallager, von den Zylindern weg</translation>
    </message>
    <message>
        <source>Lowest pressure in the pump chamber</source>
        <translation>Niedrigster Druck in der Pumpenkammer</translation>
    </message>
    <message>
        <source>Highest pressure in the pump chamber</source>
        <translation>Höchster Druck in der Pumpenkammer</translation>
    </message>
    <message>
        <source>Compression ratio of the pump chamber</source>
        <translation>Verdichtungsverhältnis der Pumpenkammer</translation>
    </message>
    <message>
        <source>A table of samples has other columns than this design and these speeds give.</source>
        <translation>Eine Stichprobentabelle hat andere Spalten, als sich aus diesem Entwurf und diesen Drehzahlen ergeben.</translation>
    </message>
    <message>
        <source>Engine %1 of %2 is in none of the parts.</source>
        <translation>Motor %1 von %2 ist in keinem der Teile enthalten.</translation>
    </message>
    <message>
        <source>Engine %1 is in two of the parts.</source>
        <translation>Motor %1 ist in zwei Teilen enthalten.</translation>
    </message>
    <message>
        <source>%1 engines</source>
        <translation>%1 Motoren</translation>
    </message>
    <message>
        <source>%1: all of them have %2.</source>
        <translation>%1: bei allen %2.</translation>
    </message>
    <message>
        <source>%1: all of them lie between %2 and %3.</source>
        <translation>%1: bei allen zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>%1: all of them lie above %2.</source>
        <translation>%1: bei allen über %2.</translation>
    </message>
    <message>
        <source>%1: all of them lie below %2.</source>
        <translation>%1: bei allen unter %2.</translation>
    </message>
    <message>
        <source>%1 for certain</source>
        <translation>%1 mit Sicherheit</translation>
    </message>
    <message>
        <source>what decides the results</source>
        <translation>was die Ergebnisse bestimmt</translation>
    </message>
    <message>
        <source>Nominal contact stress, larger side</source>
        <translation>Nominelle Kontaktpressung, höher belastete Seite</translation>
    </message>
    <message>
        <source>Share of engines whose rollers lift off</source>
        <translation>Anteil der Motoren, deren Rollen abheben</translation>
    </message>
    <message>
        <source>Peak torque</source>
        <translation>Höchstes Drehmoment</translation>
    </message>
    <message>
        <source>Speed of peak torque</source>
        <translation>Drehzahl des höchsten Drehmoments</translation>
    </message>
    <message>
        <source>Peak power</source>
        <translation>Höchstleistung</translation>
    </message>
    <message>
        <source>Speed of peak power</source>
        <translation>Drehzahl der Höchstleistung</translation>
    </message>
    <message>
        <source>A curve needs at least three speeds.</source>
        <translation>Eine Kurve braucht mindestens drei Drehzahlen.</translation>
    </message>
    <message>
        <source>The speeds of the curve must be positive and ascend.</source>
        <translation>Die Drehzahlen der Kurve müssen positiv sein und ansteigen.</translation>
    </message>
    <message>
        <source>No input has a range or options: everything counts as known.</source>
        <translation>Keine Eingabe hat einen Bereich oder Möglichkeiten: Alles gilt als bekannt.</translation>
    </message>
    <message>
        <source>%1 of %2 engines</source>
        <translation>%1 von %2 Motoren</translation>
    </message>
    <message>
        <source>%1 (group %2)</source>
        <translation>%1 (Gruppe %2)</translation>
    </message>
    <message>
        <source>The library of statistics cannot be loaded: %1.</source>
        <translation>Die Statistikbibliothek kann nicht geladen werden: %1.</translation>
    </message>
    <message>
        <source>%1 is of another version of the program.</source>
        <translation>%1 gehört zu einer anderen Programmversion.</translation>
    </message>
    <message>
        <source>Head in the place of an exhaust piston</source>
        <translation>Zylinderkopf an der Stelle eines Auslasskolbens</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation>steht still</translation>
    </message>
    <message>
        <source>a one-sided engine has no second track to turn against the first</source>
        <translation>Ein einseitiger Motor hat keine zweite Kurvenbahn, die sich gegen die erste verdrehen ließe</translation>
    </message>
    <message>
        <source>Thrust of all rollers on the track, outward</source>
        <translation>Axialkraft aller Rollen auf die Kurvenbahn, nach außen</translation>
    </message>
    <message>
        <source>∮p_u dV_u with dV_u = f·A·v dt; bar·mm²·m/s are 0.1 W.</source>
        <translation>∮p_u dV_u mit dV_u = f·A·v dt; bar·mm²·m/s sind 0,1 W.</translation>
    </message>
    <message>
        <source>Largest volume of the pump chamber</source>
        <translation>Größtes Volumen der Pumpenkammer</translation>
    </message>
    <message>
        <source>Smallest volume of the pump chamber</source>
        <translation>Kleinstes Volumen der Pumpenkammer</translation>
    </message>
    <message>
        <source>dead volume + area factor · bore area · travel, searched over a period</source>
        <translation>Totraum + Flächenanteil · Bohrungsfläche · Weg, über eine Periode gesucht</translation>
    </message>
    <message>
        <source>a supply that the pistons do not pump</source>
        <translation>eine Luftversorgung, die nicht von den Kolben gepumpt wird</translation>
    </message>
    <message>
        <source>inlet pistons that pump alone</source>
        <translation>Einlasskolben, die allein pumpen</translation>
    </message>
    <message>
        <source>both pistons pumping</source>
        <translation>beide Kolben pumpen</translation>
    </message>
    <message>
        <source>fuel injected after the ports have closed</source>
        <translation>Kraftstoff, eingespritzt nach dem Schließen der Schlitze</translation>
    </message>
    <message>
        <source>its share of the fresh gas taken in</source>
        <translation>sein Anteil am aufgenommenen Frischgas</translation>
    </message>
    <message>
        <source>∮p dV of all cylinders, less what their pumps take; 1 bar·cm³ is 0.1 J.</source>
        <translation>∮p dV aller Zylinder, abzüglich was ihre Pumpen aufnehmen; 1 bar·cm³ ist 0,1 J.</translation>
    </message>
    <message>
        <source>port events less than half a cycle apart</source>
        <translation>Steuerereignisse, die weniger als ein halbes Arbeitsspiel auseinanderliegen</translation>
    </message>
    <message>
        <source>Centrifugal compressor with plenum</source>
        <translation>Radialverdichter mit Sammler</translation>
    </message>
    <message>
        <source>Gear on the shaft</source>
        <translation>Getriebe an der Welle</translation>
    </message>
    <message>
        <source>Turbine in the exhaust</source>
        <translation>Turbine im Abgas</translation>
    </message>
    <message>
        <source>Compressor wheel alone</source>
        <translation>Verdichterrad allein</translation>
    </message>
    <message>
        <source>Blower behind the wheel</source>
        <translation>Gebläse hinter dem Rad</translation>
    </message>
    <message>
        <source>Volume between blower or compressor and inlet ports. Default 3000 cm³ (own estimate).</source>
        <translation>Volumen zwischen Gebläse oder Verdichter und Einlassschlitzen. Vorgabe 3000 cm³ (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Wheel diameter</source>
        <translation>Raddurchmesser</translation>
    </message>
    <message>
        <source>D at the tip of the compressor wheel. Default 80 mm (own estimate).</source>
        <translation>D am Austritt des Verdichterrads. Vorgabe 80 mm (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Highest head coefficient</source>
        <translation>Größte Druckzahl</translation>
    </message>
    <message>
        <source>Flow coefficient of surge</source>
        <translation>Durchflusszahl der Pumpgrenze</translation>
    </message>
    <message>
        <source>Flow coefficient of the highest head</source>
        <translation>Durchflusszahl der größten Druckzahl</translation>
    </message>
    <message>
        <source>φ_p: from here the head falls as a parabola towards choke. Default 0.045 (own estimate).</source>
        <translation>φ_p: Von hier fällt die Druckzahl als Parabel zur Stopfgrenze. Vorgabe 0,045 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Flow coefficient of choke</source>
        <translation>Durchflusszahl der Stopfgrenze</translation>
    </message>
    <message>
        <source>φ_c: here no head is left. Default 0.105 (own estimate).</source>
        <translation>φ_c: Hier bleibt keine Druckerhöhung. Vorgabe 0,105 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Best efficiency of the wheel</source>
        <translation>Bester Wirkungsgrad des Rads</translation>
    </message>
    <message>
        <source>Highest isentropic efficiency. Default 0.78 (Cohen, Rogers and Saravanamuttoo, ch. 4; secondary value).</source>
        <translation>Größter isentroper Wirkungsgrad. Vorgabe 0,78 (Cohen, Rogers und Saravanamuttoo, Kap. 4; Sekundärwert).</translation>
    </message>
    <message>
        <source>Flow coefficient of the best efficiency</source>
        <translation>Durchflusszahl des besten Wirkungsgrads</translation>
    </message>
    <message>
        <source>φ_b: the efficiency is a parabola about it, η_b·(2·φ/φ_b − (φ/φ_b)²). Default 0.06 (the example of the same text runs at 0.061; secondary value).</source>
        <translation>φ_b: Der Wirkungsgrad ist eine Parabel darum, η_b·(2·φ/φ_b − (φ/φ_b)²). Vorgabe 0,06 (das Beispiel desselben Buchs läuft bei 0,061; Sekundärwert).</translation>
    </message>
    <message>
        <source>Gear ratio of the wheel</source>
        <translation>Übersetzung zum Rad</translation>
    </message>
    <message>
        <source>Exhaust plenum</source>
        <translation>Abgassammler</translation>
    </message>
    <message>
        <source>Volume between exhaust ports and nozzle; it loses no heat. Default 3000 cm³ (own estimate).</source>
        <translation>Volumen zwischen Auslassschlitzen und Düse; es verliert keine Wärme. Vorgabe 3000 cm³ (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Nozzle area of the turbine</source>
        <translation>Düsenfläche der Turbine</translation>
    </message>
    <message>
        <source>Effective area of nozzle and wheel as one orifice. Default 400 mm² (own estimate).</source>
        <translation>Wirksame Fläche von Düse und Rad als einer Drossel. Vorgabe 400 mm² (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Turbine wheel diameter</source>
        <translation>Durchmesser des Turbinenrads</translation>
    </message>
    <message>
        <source>Of the wheel where the gas enters it. Default 80 mm (own estimate).</source>
        <translation>Des Rads dort, wo das Gas eintritt. Vorgabe 80 mm (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Best efficiency of the turbine</source>
        <translation>Bester Wirkungsgrad der Turbine</translation>
    </message>
    <message>
        <source>Best speed ratio of the turbine</source>
        <translation>Beste Laufzahl der Turbine</translation>
    </message>
    <message>
        <source>Mechanical efficiency of the wheel shaft</source>
        <translation>Mechanischer Wirkungsgrad der Läuferwelle</translation>
    </message>
    <message>
        <source>η_m: what reaches the compressor of the turbine&apos;s power. Default 0.95 (own estimate).</source>
        <translation>η_m: was von der Leistung der Turbine den Verdichter erreicht. Vorgabe 0,95 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Drive of the wheel</source>
        <translation>Antrieb des Rads</translation>
    </message>
    <message>
        <source>Turbine</source>
        <translation>Turbine</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>Compressor wheel</source>
        <translation>Verdichterrad</translation>
    </message>
    <message>
        <source>no cyclic steady state with an idling wheel</source>
        <translation>kein eingeschwungener Zustand mit leerlaufendem Rad</translation>
    </message>
    <message>
        <source>no cyclic steady state</source>
        <translation>kein eingeschwungener Zustand</translation>
    </message>
    <message>
        <source>Flow coefficient of the compressor wheel</source>
        <translation>Durchflusszahl des Verdichterrads</translation>
    </message>
    <message>
        <source>Flow through the compressor</source>
        <translation>Durchfluss durch den Verdichter</translation>
    </message>
    <message>
        <source>Pressure in the exhaust plenum</source>
        <translation>Druck im Abgassammler</translation>
    </message>
    <message>
        <source>Temperature in the exhaust plenum</source>
        <translation>Temperatur im Abgassammler</translation>
    </message>
    <message>
        <source>Power of the turbine</source>
        <translation>Leistung der Turbine</translation>
    </message>
    <message>
        <source>Expansion ratio of the turbine, mean</source>
        <translation>Expansionsverhältnis der Turbine, Mittel</translation>
    </message>
    <message>
        <source>Speed ratio of the turbine</source>
        <translation>Laufzahl der Turbine</translation>
    </message>
    <message>
        <source>Mean pressure in the exhaust plenum</source>
        <translation>Mittlerer Druck im Abgassammler</translation>
    </message>
    <message>
        <source>Mean temperature in the exhaust plenum</source>
        <translation>Mittlere Temperatur im Abgassammler</translation>
    </message>
    <message>
        <source>Speed of the compressor wheel</source>
        <translation>Drehzahl des Verdichterrads</translation>
    </message>
    <message>
        <source>Tip speed of the compressor wheel</source>
        <translation>Umfangsgeschwindigkeit des Verdichterrads</translation>
    </message>
    <message>
        <source>Pressure ratio of the compressor, mean</source>
        <translation>Druckverhältnis des Verdichters, Mittel</translation>
    </message>
    <message>
        <source>Isentropic efficiency of the compressor</source>
        <translation>Isentroper Wirkungsgrad des Verdichters</translation>
    </message>
    <message>
        <source>Power that the compressor takes</source>
        <translation>Leistung, die der Verdichter aufnimmt</translation>
    </message>
    <message>
        <source>The gear turns the wheel.</source>
        <translation>Das Getriebe dreht das Rad.</translation>
    </message>
    <message>
        <source>Parabola about the best flow coefficient; never below a fifth of the best (own estimate).</source>
        <translation>Parabel um die beste Durchflusszahl; nie unter einem Fünftel des besten Werts (eigene Schätzung).</translation>
    </message>
    <message>
        <source>The shaft drives the wheel through the gear.</source>
        <translation>Die Welle treibt das Rad über das Getriebe.</translation>
    </message>
    <message>
        <source>The shaft drives wheel and blower: mass flow times the work of both.</source>
        <translation>Die Welle treibt Rad und Gebläse: Massenstrom mal Arbeit beider.</translation>
    </message>
    <message>
        <source>The shaft drives the blower, the exhaust the wheel: only the work of the blower.</source>
        <translation>Die Welle treibt das Gebläse, das Abgas das Rad: nur die Arbeit des Gebläses.</translation>
    </message>
    <message>
        <source>a compressor wheel without a blower behind it</source>
        <translation>ein Verdichterrad ohne Gebläse dahinter</translation>
    </message>
    <message>
        <source>a blower behind the compressor wheel</source>
        <translation>ein Gebläse hinter dem Verdichterrad</translation>
    </message>
    <message>
        <source>a geared wheel alone</source>
        <translation>ein Rad am Getriebe, allein</translation>
    </message>
    <message>
        <source>a geared wheel with a blower behind it</source>
        <translation>ein Rad am Getriebe mit Gebläse dahinter</translation>
    </message>
    <message>
        <source>a turbocharger with a blower behind it</source>
        <translation>ein Abgasturbolader mit Gebläse dahinter</translation>
    </message>
    <message>
        <source>a turbocharger alone</source>
        <translation>ein Abgasturbolader allein</translation>
    </message>
    <message>
        <source>a wheel that the exhaust drives</source>
        <translation>ein Rad, das vom Abgas getrieben wird</translation>
    </message>
    <message>
        <source>a wheel that the exhaust keeps turning</source>
        <translation>ein Rad, das vom Abgas in Gang gehalten wird</translation>
    </message>
    <message>
        <source>1 yes, 0 no; found by the search</source>
        <translation>1 ja, 0 nein; Ergebnis der Suche</translation>
    </message>
    <message>
        <source>Speed of the wheel</source>
        <translation>Drehzahl des Rads</translation>
    </message>
    <message>
        <source>searched by the solver; it idles where the exhaust is too weak</source>
        <translation>vom Löser gesucht; es läuft leer, wo das Abgas zu schwach ist</translation>
    </message>
    <message>
        <source>Flow through the turbine</source>
        <translation>Durchfluss durch die Turbine</translation>
    </message>
    <message>
        <source>Spouting velocity</source>
        <translation>Isentrope Ausflussgeschwindigkeit</translation>
    </message>
    <message>
        <source>√(2·c_p·T·(1 − (p_e/p_x)^((γ−1)/γ))) of the mean exhaust gas</source>
        <translation>√(2·c_p·T·(1 − (p_e/p_x)^((γ−1)/γ))) des mittleren Abgases</translation>
    </message>
    <message>
        <source>Head coefficient of the wheel</source>
        <translation>Druckzahl des Rads</translation>
    </message>
    <message>
        <source>ψ₀·(1 − ((φ − φ_p)/(φ_c − φ_p))²); left of φ_p nearly level</source>
        <translation>ψ₀·(1 − ((φ − φ_p)/(φ_c − φ_p))²); links von φ_p fast waagerecht</translation>
    </message>
    <message>
        <source>Work of the wheel on the air</source>
        <translation>Arbeit des Rads an der Luft</translation>
    </message>
    <message>
        <source>h(T₂) − h(T₁) with T₂ = T₁ + ψ·u²/(c_p·η)</source>
        <translation>h(T₂) − h(T₁) mit T₂ = T₁ + ψ·u²/(c_p·η)</translation>
    </message>
    <message>
        <source>Heat of air at constant pressure</source>
        <translation>Spezifische Wärmekapazität der Luft bei konstantem Druck</translation>
    </message>
    <message>
        <source>in the ambient state</source>
        <translation>im Umgebungszustand</translation>
    </message>
    <message>
        <source>γ/(γ − 1) of air</source>
        <translation>γ/(γ − 1) der Luft</translation>
    </message>
    <message>
        <source>Revolutions of the compressor wheel per shaft revolution. Default 15 (own estimate).</source>
        <translation>Umdrehungen des Verdichterrads je Wellenumdrehung. Vorgabe 15 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Definition: circumference of the wheel times its revolutions per second.</source>
        <translation>Definition: Umfang des Rads mal seine Umdrehungen je Sekunde.</translation>
    </message>
    <message>
        <source>Mass flow times the work of the wheel on it, which is constant over the revolution.</source>
        <translation>Massenstrom mal Arbeit des Rads an ihm, die über die Umdrehung gleich bleibt.</translation>
    </message>
    <message>
        <source>Coefficients</source>
        <translation>Kennzahlen</translation>
    </message>
    <message>
        <source>Measured points</source>
        <translation>Messpunkte</translation>
    </message>
    <message>
        <source>Corrected speed</source>
        <translation>Reduzierte Drehzahl</translation>
    </message>
    <message>
        <source>Speed of the wheel × √(reference temperature/inlet temperature).</source>
        <translation>Drehzahl des Rads × √(Bezugstemperatur/Eintrittstemperatur).</translation>
    </message>
    <message>
        <source>Corrected flow</source>
        <translation>Reduzierter Durchfluss</translation>
    </message>
    <message>
        <source>Mass flow × √(inlet temperature/reference temperature) × reference pressure/inlet pressure.</source>
        <translation>Massenstrom × √(Eintrittstemperatur/Bezugstemperatur) × Bezugsdruck/Eintrittsdruck.</translation>
    </message>
    <message>
        <source>Pressure ratio</source>
        <translation>Druckverhältnis</translation>
    </message>
    <message>
        <source>Reference pressure of the table</source>
        <translation>Bezugsdruck der Tabelle</translation>
    </message>
    <message>
        <source>To which its flows are corrected. Default 1 bar.</source>
        <translation>Auf den ihre Durchflüsse umgerechnet sind. Vorgabe 1 bar.</translation>
    </message>
    <message>
        <source>Reference temperature of the table</source>
        <translation>Bezugstemperatur der Tabelle</translation>
    </message>
    <message>
        <source>To which its speeds and flows are corrected. Default 298.15 K.</source>
        <translation>Auf die ihre Drehzahlen und Durchflüsse umgerechnet sind. Vorgabe 298,15 K.</translation>
    </message>
    <message>
        <source>Points in any order, at least three flows at each speed, from surge to choke.</source>
        <translation>Punkte in beliebiger Reihenfolge, mindestens drei Durchflüsse je Drehzahl, von der Pumpgrenze bis zur Stopfgrenze.</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Characteristic of the wheel</source>
        <translation>Kennfeld des Rads</translation>
    </message>
    <message>
        <source>Coefficients of a radial wheel, or measured points at several speeds.</source>
        <translation>Kennzahlen eines Radialrads oder Messpunkte bei mehreren Drehzahlen.</translation>
    </message>
    <message>
        <source>the line reads &quot;%1&quot;; it must begin with four numbers: speed in rpm, flow in kg/s, pressure ratio and efficiency</source>
        <translation>die Zeile lautet „%1“; sie muss mit vier Zahlen beginnen: Drehzahl in 1/min, Durchfluss in kg/s, Druckverhältnis und Wirkungsgrad</translation>
    </message>
    <message>
        <source>the table of the wheel has no rows</source>
        <translation>die Tabelle des Rads hat keine Zeilen</translation>
    </message>
    <message>
        <source>the line at %1 has fewer than three flows</source>
        <translation>die Linie bei %1 hat weniger als drei Durchflüsse</translation>
    </message>
    <message>
        <source>the pressure ratio at %1 does not fall to the right of its peak</source>
        <translation>das Druckverhältnis bei %1 fällt rechts von seinem Scheitel nicht</translation>
    </message>
    <message>
        <source>Read off the measured points, between speeds and flows.</source>
        <translation>Aus den Messpunkten abgelesen, zwischen Drehzahlen und Durchflüssen.</translation>
    </message>
    <message>
        <source>Isentropic efficiency of the wheel</source>
        <translation>Isentroper Wirkungsgrad des Rads</translation>
    </message>
    <message>
        <source>of the table at this speed and flow</source>
        <translation>der Tabelle bei dieser Drehzahl und diesem Durchfluss</translation>
    </message>
    <message>
        <source>Isentropic efficiency at this flow and speed.</source>
        <translation>Isentroper Wirkungsgrad bei diesem Durchfluss und dieser Drehzahl.</translation>
    </message>
    <message>
        <source>Thrust bearing</source>
        <translation>Axiallager</translation>
    </message>
    <message>
        <source>C of the roller thrust bearing that carries the track (ISO 281); empty: no life is computed.</source>
        <translation>C des Axial-Rollenlagers, das die Bahn trägt (ISO 281); leer: keine Lebensdauer berechnet.</translation>
    </message>
    <message>
        <source>Wall area of the pump</source>
        <translation>Wandfläche der Pumpe</translation>
    </message>
    <message>
        <source>Walls that the gas under the piston exchanges heat with. Default 0: adiabatic.</source>
        <translation>Wände, mit denen das Gas unter dem Kolben Wärme austauscht. Vorgabe 0: adiabat.</translation>
    </message>
    <message>
        <source>Heat transfer in the pump</source>
        <translation>Wärmeübergang in der Pumpe</translation>
    </message>
    <message>
        <source>Coefficient between gas and walls, constant over the cycle. Default 60 W/(m²·K) (own estimate).</source>
        <translation>Koeffizient zwischen Gas und Wänden, über das Arbeitsspiel konstant. Vorgabe 60 W/(m²·K) (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Wall temperature of the pump</source>
        <translation>Wandtemperatur der Pumpe</translation>
    </message>
    <message>
        <source>Surface temperature under the piston. Default 350 K (own estimate).</source>
        <translation>Oberflächentemperatur unter dem Kolben. Vorgabe 350 K (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Crown to roller axis</source>
        <translation>Kolbenboden bis Rollenachse</translation>
    </message>
    <message>
        <source>From the crown to the roller axis; empty: as far as skirt, roller and track need.</source>
        <translation>Vom Kolbenboden bis zur Rollenachse; leer: so weit, wie Schaft, Rolle und Bahn es brauchen.</translation>
    </message>
    <message>
        <source>Crown and head come within %1 of each other; expansion, play and deposits usually need %2 or more.</source>
        <translation>Kolbenboden und Zylinderkopf kommen sich bis auf %1 nahe; Wärmedehnung, Spiel und Ablagerungen brauchen üblicherweise %2 oder mehr.</translation>
    </message>
    <message>
        <source>The crowns come within %1 of each other; expansion, play and deposits usually need %2 or more.</source>
        <translation>Die Kolbenböden kommen sich bis auf %1 nahe; Wärmedehnung, Spiel und Ablagerungen brauchen üblicherweise %2 oder mehr.</translation>
    </message>
    <message>
        <source>Rating life of the thrust bearing</source>
        <translation>Nominelle Lebensdauer des Axiallagers</translation>
    </message>
    <message>
        <source>Equivalent load of the thrust bearing</source>
        <translation>Äquivalente Belastung des Axiallagers</translation>
    </message>
    <message>
        <source>inertia exceeds the gas force</source>
        <translation>Die Massenkraft übersteigt die Gaskraft</translation>
    </message>
    <message>
        <source>ring friction holds the piston back</source>
        <translation>Ringreibung hält den Kolben zurück</translation>
    </message>
    <message>
        <source>speeds are %1 and %2; both must be positive and the second larger</source>
        <translation>Die Drehzahlen sind %1 und %2; beide müssen positiv sein und die zweite größer</translation>
    </message>
    <message>
        <source>A closed track holds the rollers at every speed.</source>
        <translation>Eine geschlossene Bahn hält die Rollen bei jeder Drehzahl.</translation>
    </message>
    <message>
        <source>The rollers keep contact at no speed between %1 and %2.</source>
        <translation>Die Rollen halten bei keiner Drehzahl zwischen %1 und %2 Kontakt.</translation>
    </message>
    <message>
        <source>The rollers keep contact from %1 to %2.</source>
        <translation>Die Rollen halten Kontakt von %1 bis %2.</translation>
    </message>
    <message>
        <source>%1 of %2 speeds have no solution: %3</source>
        <translation>%1 von %2 Drehzahlen haben keine Lösung: %3</translation>
    </message>
    <message>
        <source>%1 is beyond piston engines: the largest two-stroke diesels reach about 55 % (common practice), and even the loss-free cycle of fuel and air stays near 60 % at the compression engines can use (Heywood 1988, ch. 5; secondary value, not checked against the printed source). Taken as impossible above %2 % (own estimate).</source>
        <translation>%1 liegt jenseits dessen, was Kolbenmotoren erreichen: Die größten Zweitaktdiesel erreichen etwa 55 % (übliche Praxis), und selbst der verlustfreie Prozess von Kraftstoff und Luft bleibt bei der Verdichtung, die Motoren nutzen können, bei etwa 60 % (Heywood 1988, Kap. 5; Sekundärwert, nicht am gedruckten Original geprüft). Mehr als %2 % gelten als unmöglich (eigene Schätzung).</translation>
    </message>
    <message>
        <source>fuel data: Heywood 1988, table D.4 (secondary values, not checked against the printed source)</source>
        <translation>Kraftstoffdaten: Heywood 1988, Tabelle D.4 (Sekundärwerte, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>ISO 1585:1992, 99 kPa of dry air at 298 K (secondary value, not checked against the printed source)</source>
        <translation>ISO 1585:1992, 99 kPa trockener Luft bei 298 K (Sekundärwert, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>ISO 6336-5:2003, table 1 (secondary value, not checked against the printed source)</source>
        <translation>ISO 6336-5:2003, Tabelle 1 (Sekundärwert, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>ISO 6336-5:2003, table 1, 0.740·HV + 602 (secondary value, not checked against the printed source)</source>
        <translation>ISO 6336-5:2003, Tabelle 1, 0,740·HV + 602 (Sekundärwert, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>ISO 6336-5:2003, table 1, 0.541·HV + 882 (secondary value, not checked against the printed source)</source>
        <translation>ISO 6336-5:2003, Tabelle 1, 0,541·HV + 882 (Sekundärwert, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>ISO 6336-5:2003, table 1, 0.505·HV + 1013 (secondary value, not checked against the printed source)</source>
        <translation>ISO 6336-5:2003, Tabelle 1, 0,505·HV + 1013 (Sekundärwert, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>ISO 6336-5:2003, table 1, 1.313·HV + 373 (secondary value, not checked against the printed source)</source>
        <translation>ISO 6336-5:2003, Tabelle 1, 1,313·HV + 373 (Sekundärwert, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>The inlet closes %1 of the cycle after the exhaust. Change the design until it is more than %2, and do not lose more than a twentieth of the %3.</source>
        <translation>Der Einlass schließt um %1 des Arbeitsspiels nach dem Auslass. Ändern Sie den Entwurf, bis es mehr als %2 sind, und verlieren Sie dabei höchstens ein Zwanzigstel des Drehmoments von %3.</translation>
    </message>
    <message>
        <source>Inlet ports that reach further inward close later: compare what each of the two costs in torque.</source>
        <translation>Einlassschlitze, die weiter nach innen reichen, schließen später: Vergleichen Sie, was jedes von beiden an Drehmoment kostet.</translation>
    </message>
    <message>
        <source>The roller carves the lobe</source>
        <translation>Die Rolle schneidet den Nocken</translation>
    </message>
    <message>
        <source>The track is what the roller leaves as it is led along the lift curve. Enlarge the roller, now %1, to within %2 of the radius at which it begins to carve the lobe away (undercut), but not beyond.</source>
        <translation>Die Bahn ist, was die Rolle übrig lässt, wenn sie die Wegkurve entlanggeführt wird. Vergrößern Sie die Rolle, jetzt %1, bis auf %2 an den Radius, bei dem sie den Nocken wegzuschneiden beginnt (Unterschnitt), aber nicht darüber hinaus.</translation>
    </message>
    <message>
        <source>Watch the unrolled track: a lobe that is undercut grows a pointed tip.</source>
        <translation>Beobachten Sie die abgewickelte Bahn: Ein unterschnittener Nocken bekommt eine Spitze.</translation>
    </message>
    <message>
        <source>A relative radius of curvature of 0 at the tip is the limit.</source>
        <translation>Ein Ersatzkrümmungsradius von 0 an der Spitze ist die Grenze.</translation>
    </message>
    <message>
        <source>A roller of %1 cuts no undercut; the limit is %2.</source>
        <translation>Mit einer Rolle von %1 entsteht kein Unterschnitt; die Grenze ist %2.</translation>
    </message>
    <message>
        <source>A roller of %1 carves into the lobe that it should run on; the limit is %2.</source>
        <translation>Eine Rolle von %1 schneidet in den Nocken, auf dem sie laufen soll; die Grenze ist %2.</translation>
    </message>
    <message>
        <source>Largest torque</source>
        <translation>Größtes Drehmoment</translation>
    </message>
    <message>
        <source>Turn the shaft to where its torque is largest.</source>
        <translation>Drehen Sie die Welle dorthin, wo ihr Drehmoment am größten ist.</translation>
    </message>
    <message>
        <source>Torque is force times lever arm. At the highest pressure the pistons hardly move, so that the arm is short.</source>
        <translation>Drehmoment ist Kraft mal Hebelarm. Beim höchsten Druck bewegen sich die Kolben kaum, der Arm ist kurz.</translation>
    </message>
    <message>
        <source>Look a little after inner dead centre, where the track is steep and the pressure still high.</source>
        <translation>Suchen Sie ein wenig nach dem inneren Totpunkt, wo die Bahn steil und der Druck noch hoch ist.</translation>
    </message>
    <message>
        <source>Here the torque is %1 of its largest value, %2, which it has at %3 of the shaft.</source>
        <translation>Hier beträgt das Drehmoment %1 seines größten Werts von %2, den es bei %3 der Welle hat.</translation>
    </message>
    <message>
        <source>Turn the shaft to where the exhaust ports of cylinder 1 begin to open.</source>
        <translation>Drehen Sie die Welle dorthin, wo die Auslassschlitze von Zylinder 1 zu öffnen beginnen.</translation>
    </message>
    <message>
        <source>The crown has to pass the inner edge of the exhaust ports, on the way out.</source>
        <translation>Der Kolbenboden muss auf dem Weg nach außen die Innenkante der Auslassschlitze überfahren.</translation>
    </message>
    <message>
        <source>The chamber pressure begins to fall fast there.</source>
        <translation>Dort beginnt der Druck im Brennraum schnell zu fallen.</translation>
    </message>
    <message>
        <source>The exhaust opens at %1 of the shaft, %2 later than here.</source>
        <translation>Der Auslass öffnet bei %1 der Welle, %2 später als hier.</translation>
    </message>
    <message>
        <source>The exhaust opens at %1 of the shaft, %2 earlier than here.</source>
        <translation>Der Auslass öffnet bei %1 der Welle, %2 früher als hier.</translation>
    </message>
    <message>
        <source>Steepest place</source>
        <translation>Steilste Stelle</translation>
    </message>
    <message>
        <source>Turn the shaft to where the roller of the inlet piston of cylinder 1 runs on the steepest place of its track.</source>
        <translation>Drehen Sie die Welle dorthin, wo die Rolle des Einlasskolbens von Zylinder 1 auf der steilsten Stelle ihrer Bahn läuft.</translation>
    </message>
    <message>
        <source>Steep means that the piston moves far for a small turn of the shaft.</source>
        <translation>Steil heißt, dass sich der Kolben bei einer kleinen Drehung der Welle weit bewegt.</translation>
    </message>
    <message>
        <source>Look for the place where the piston is fastest, about halfway.</source>
        <translation>Suchen Sie die Stelle, an der der Kolben am schnellsten ist, etwa auf halbem Weg.</translation>
    </message>
    <message>
        <source>Highest pressure</source>
        <translation>Höchster Druck</translation>
    </message>
    <message>
        <source>Turn the shaft to where the pressure in cylinder 1 is highest.</source>
        <translation>Drehen Sie die Welle dorthin, wo der Druck in Zylinder 1 am höchsten ist.</translation>
    </message>
    <message>
        <source>Combustion takes time: the pressure still rises while the pistons begin to part.</source>
        <translation>Verbrennung braucht Zeit: Der Druck steigt noch, während die Kolben schon auseinandergehen.</translation>
    </message>
    <message>
        <source>Look shortly after inner dead centre.</source>
        <translation>Suchen Sie kurz nach dem inneren Totpunkt.</translation>
    </message>
    <message>
        <source>The highest pressure is %1, at %2 of the shaft.</source>
        <translation>Der höchste Druck ist %1, bei %2 der Welle.</translation>
    </message>
    <message>
        <source>The changed engine cannot be solved.</source>
        <translation>Der geänderte Motor lässt sich nicht lösen.</translation>
    </message>
    <message>
        <source>Strokes of a cycle</source>
        <translation>Takte eines Arbeitsspiels</translation>
    </message>
    <message>
        <source>A stroke is one movement of a piston from one dead centre to the other. How many strokes does one cycle of the gas take here?</source>
        <translation>Ein Takt ist eine Bewegung eines Kolbens von einem Totpunkt zum anderen. Wie viele Takte braucht hier ein Arbeitsspiel des Gases?</translation>
    </message>
    <message>
        <source>Let the shaft turn from one firing to the next and count aloud.</source>
        <translation>Lassen Sie die Welle von einer Zündung zur nächsten drehen und zählen Sie laut mit.</translation>
    </message>
    <message>
        <source>Two strokes, once outward and once inward: a two-stroke. The ports do in passing what other engines need two more strokes for.</source>
        <translation>Zwei Takte, einmal nach außen, einmal nach innen: ein Zweitakter. Die Schlitze erledigen nebenbei, wofür andere Motoren zwei weitere Takte brauchen.</translation>
    </message>
    <message>
        <source>Firings per minute</source>
        <translation>Zündungen je Minute</translation>
    </message>
    <message>
        <source>The shaft turns at %1. How often does the whole engine fire in a minute?</source>
        <translation>Die Welle dreht mit %1. Wie oft zündet der ganze Motor in einer Minute?</translation>
    </message>
    <message>
        <source>Count the lobes of a track: each makes a cycle of its own in every cylinder.</source>
        <translation>Zählen Sie die Nocken einer Bahn: Jeder macht in jedem Zylinder ein eigenes Arbeitsspiel.</translation>
    </message>
    <message>
        <source>Cylinders times cycles per revolution times revolutions per minute.</source>
        <translation>Zylinder mal Arbeitsspiele je Umdrehung mal Umdrehungen je Minute.</translation>
    </message>
    <message>
        <source>%1 revolutions × %2 cycles per revolution × cylinders (%3) = %4 firings per minute.</source>
        <translation>%1 Umdrehungen × %2 Arbeitsspiele je Umdrehung × Zylinder (%3) = %4 Zündungen je Minute.</translation>
    </message>
    <message>
        <source>More exhaust lead</source>
        <translation>Mehr Auslassvoreilung</translation>
    </message>
    <message>
        <source>The exhaust track is turned %1 further ahead. By how many degrees of the cycle, counted from inner dead centre, does the exhaust open earlier?</source>
        <translation>Die Auslassbahn wird um %1 weiter vorgedreht. Um wie viele Grad des Arbeitsspiels, vom inneren Totpunkt gezählt, öffnet der Auslass früher?</translation>
    </message>
    <message>
        <source>Degrees of the shaft are not degrees of the cycle: the lobes multiply.</source>
        <translation>Grad der Welle sind nicht Grad des Arbeitsspiels: Die Nockenzahl ist der Faktor dazwischen.</translation>
    </message>
    <message>
        <source>Inner dead centre lies between the two pistons: it moves too, by about half.</source>
        <translation>Der innere Totpunkt liegt zwischen beiden Kolben: Er wandert mit, etwa um die Hälfte.</translation>
    </message>
    <message>
        <source>the exhaust piston is ahead</source>
        <translation>der Auslasskolben eilt voraus</translation>
    </message>
    <message>
        <source>inner dead centre moves ahead with it</source>
        <translation>der innere Totpunkt wandert mit</translation>
    </message>
    <message>
        <source>The exhaust opens %1 of the cycle earlier: %2 of the shaft are %3 of the cycle with %4 cycles per revolution, less what inner dead centre itself moves.</source>
        <translation>Der Auslass öffnet %1 des Arbeitsspiels früher: %2 der Welle sind bei %4 Arbeitsspielen je Umdrehung %3 des Arbeitsspiels, abzüglich dessen, was der innere Totpunkt selbst wandert.</translation>
    </message>
    <message>
        <source>More clearance</source>
        <translation>Mehr Bodenabstand</translation>
    </message>
    <message>
        <source>The trapped compression ratio is %1. What will it be when the clearance at inner dead centre grows by %2?</source>
        <translation>Das effektive Verdichtungsverhältnis beträgt %1. Wie groß wird es, wenn der Bodenabstand im inneren Totpunkt um %2 wächst?</translation>
    </message>
    <message>
        <source>The gap adds the same slice to the smallest and to the trapped volume.</source>
        <translation>Der größere Abstand fügt dem kleinsten und dem eingeschlossenen Volumen dieselbe Scheibe hinzu.</translation>
    </message>
    <message>
        <source>the smallest volume is larger</source>
        <translation>das kleinste Volumen ist größer</translation>
    </message>
    <message>
        <source>the trapped volume is larger too</source>
        <translation>das eingeschlossene Volumen ist auch größer</translation>
    </message>
    <message>
        <source>Faster</source>
        <translation>Schneller</translation>
    </message>
    <message>
        <source>The engine gives %1 at %2. What will it give at %3, with the same supply and the same start of combustion?</source>
        <translation>Der Motor leistet %1 bei %2. Was leistet er bei %3, mit derselben Luftversorgung und demselben Brennbeginn?</translation>
    </message>
    <message>
        <source>more revolutions at the same torque</source>
        <translation>mehr Umdrehungen bei gleichem Drehmoment</translation>
    </message>
    <message>
        <source>Other lobes</source>
        <translation>Andere Nocken</translation>
    </message>
    <message>
        <source>Each track has %1 lobes and the engine gives %2. What torque will it give with %3 lobes of the same shape and stroke, at the same speed of the shaft?</source>
        <translation>Jede Bahn hat %1 Nocken, und der Motor gibt %2 ab. Welches Drehmoment gibt er mit %3 Nocken gleicher Form und gleichen Hubs bei gleicher Drehzahl der Welle ab?</translation>
    </message>
    <message>
        <source>The exhaust lead stays the same in degrees of the shaft. What is it in degrees of the cycle?</source>
        <translation>Die Auslassvoreilung bleibt in Grad der Welle gleich. Was ist sie in Grad des Arbeitsspiels?</translation>
    </message>
    <message>
        <source>the lead, kept in shaft degrees, is another part of the cycle</source>
        <translation>die Voreilung, in Wellengrad beibehalten, ist ein anderer Teil des Arbeitsspiels</translation>
    </message>
    <message>
        <source>Enter your guess first.</source>
        <translation>Geben Sie zuerst Ihre Vermutung ein.</translation>
    </message>
    <message>
        <source>This engine has no such task.</source>
        <translation>Dieser Motor hat keine solche Aufgabe.</translation>
    </message>
    <message>
        <source>Mixture strength</source>
        <translation>Gemischzusammensetzung</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Share of full load, 0 to 1. Default 1.</source>
        <translation>Anteil der Volllast, 0 bis 1. Vorgabe 1.</translation>
    </message>
    <message>
        <source>Load by</source>
        <translation>Laststeuerung durch</translation>
    </message>
    <message>
        <source>Supply pressure: that of a constant supply, or that before the intake of blower, compressor or pump, falls from its full value to the floor. Mixture strength: the excess-air ratio is that of full load / load.</source>
        <translation>Ladedruck: Der Druck einer konstanten Versorgung oder der vor der Ansaugung von Gebläse, Verdichter oder Pumpe sinkt von seinem vollen Wert bis zum Mindestwert. Gemischzusammensetzung: Das Luftverhältnis ist das der Volllast / Last.</translation>
    </message>
    <message>
        <source>Pressure of load 0</source>
        <translation>Druck bei Last 0</translation>
    </message>
    <message>
        <source>Schedules over speed</source>
        <translation>Kennlinien über der Drehzahl</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Kennlinie</translation>
    </message>
    <message>
        <source>Input that follows the speed</source>
        <translation>Eingabe, die der Drehzahl folgt</translation>
    </message>
    <message>
        <source>JSON pointer of a number of the adjuster, of the gas side or of the operating point, but for the speed itself.</source>
        <translation>JSON-Zeiger auf eine Zahl des Verstellers, der Gasseite oder des Betriebspunkts, außer der Drehzahl selbst.</translation>
    </message>
    <message>
        <source>Speeds of the schedule</source>
        <translation>Drehzahlen der Kennlinie</translation>
    </message>
    <message>
        <source>Shaft speed of this point.</source>
        <translation>Wellendrehzahl dieses Punkts.</translation>
    </message>
    <message>
        <source>Values of the schedule</source>
        <translation>Werte der Kennlinie</translation>
    </message>
    <message>
        <source>One for each speed, in the unit of the input; between them a monotone cubic (Fritsch and Carlson 1980).</source>
        <translation>Einer je Drehzahl, in der Einheit der Eingabe; dazwischen ein monotones kubisches Polynom (Fritsch und Carlson 1980).</translation>
    </message>
    <message>
        <source>Value of the input at the speed of this point, in its unit.</source>
        <translation>Wert der Eingabe bei der Drehzahl dieses Punkts, in ihrer Einheit.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no number of the adjuster, of the gas side or of the operating point that can follow the speed</source>
        <translation>„%1“ nennt keine Zahl des Verstellers, der Gasseite oder des Betriebspunkts, die der Drehzahl folgen kann</translation>
    </message>
    <message>
        <source>%1 has a schedule already; an input can have only one</source>
        <translation>%1 hat schon eine Kennlinie; eine Eingabe kann nur eine haben</translation>
    </message>
    <message>
        <source>a schedule needs at least one speed with its value</source>
        <translation>eine Kennlinie braucht mindestens eine Drehzahl mit ihrem Wert</translation>
    </message>
    <message>
        <source>there are %1 values for %2 speeds; there must be one value for each speed</source>
        <translation>es gibt %1 Werte für %2 Drehzahlen; jede Drehzahl braucht einen Wert</translation>
    </message>
    <message>
        <source>%1 is %2 in the schedule; it must be %3</source>
        <translation>%1 ist in der Kennlinie %2; zulässig ist %3</translation>
    </message>
    <message>
        <source>the load is 0; by mixture it must be above 0: without fuel the engine is motored</source>
        <translation>die Last ist 0; bei Laststeuerung durch das Gemisch muss sie über 0 liegen: Ohne Kraftstoff wird der Motor geschleppt</translation>
    </message>
    <message>
        <source>the pressure of load 0 is %1; it must not exceed that of full load, %2</source>
        <translation>der Druck bei Last 0 ist %1; er darf den der Volllast, %2, nicht übersteigen</translation>
    </message>
    <message>
        <source>loads are %1 and %2, both must lie between 0 and 1</source>
        <translation>die Lasten sind %1 und %2, beide müssen zwischen 0 und 1 liegen</translation>
    </message>
    <message>
        <source>limits of knock integral and peak pressure must be positive</source>
        <translation>Grenzen für Klopfintegral und Höchstdruck müssen positiv sein</translation>
    </message>
    <message>
        <source>buys up to %1 torque from %2 to %3</source>
        <translation>bringt von %2 bis %3 bis zu %1 Drehmoment</translation>
    </message>
    <message>
        <source>costs up to %1 torque from %2 to %3</source>
        <translation>kostet von %2 bis %3 bis zu %1 Drehmoment</translation>
    </message>
    <message>
        <source>The schedule changes the torque by less than half a per cent.</source>
        <translation>Die Kennlinie ändert das Drehmoment um weniger als ein halbes Prozent.</translation>
    </message>
    <message>
        <source>The schedule buys up to %1 torque over the whole range.</source>
        <translation>Die Kennlinie bringt über den ganzen Bereich bis zu %1 Drehmoment.</translation>
    </message>
    <message>
        <source>The schedule costs up to %1 torque over the whole range.</source>
        <translation>Die Kennlinie kostet über den ganzen Bereich bis zu %1 Drehmoment.</translation>
    </message>
    <message>
        <source>The schedule buys up to %1 torque below %2 and costs up to %3 above.</source>
        <translation>Die Kennlinie bringt unter %2 bis zu %1 Drehmoment und kostet darüber bis zu %3.</translation>
    </message>
    <message>
        <source>The schedule costs up to %1 torque below %2 and buys up to %3 above.</source>
        <translation>Die Kennlinie kostet unter %2 bis zu %1 Drehmoment und bringt darüber bis zu %3.</translation>
    </message>
    <message>
        <source>The schedule buys up to %1 torque below %2 and costs up to %3 above %4.</source>
        <translation>Die Kennlinie bringt unter %2 bis zu %1 Drehmoment und kostet über %4 bis zu %3.</translation>
    </message>
    <message>
        <source>The schedule costs up to %1 torque below %2 and buys up to %3 above %4.</source>
        <translation>Die Kennlinie kostet unter %2 bis zu %1 Drehmoment und bringt über %4 bis zu %3.</translation>
    </message>
    <message>
        <source>The schedule %1.</source>
        <translation>Die Kennlinie %1.</translation>
    </message>
    <message>
        <source>%1 The fixed value exceeds a limit at %2 of %3 speeds.</source>
        <translation>%1 Der feste Wert überschreitet bei %2 von %3 Drehzahlen eine Grenze.</translation>
    </message>
    <message>
        <source>%1 At %2 of %3 speeds no value of the range keeps the limits.</source>
        <translation>%1 Bei %2 von %3 Drehzahlen hält kein Wert des Bereichs die Grenzen ein.</translation>
    </message>
    <message>
        <source>%1 follows the speed; remove its schedule to vary it</source>
        <translation>%1 folgt der Drehzahl; entfernen Sie die Kennlinie, um die Eingabe zu verändern</translation>
    </message>
    <message>
        <source>it is a two-stroke</source>
        <translation>er ist ein Zweitakter</translation>
    </message>
    <message>
        <source>it has cam tracks</source>
        <translation>er hat Kurvenbahnen</translation>
    </message>
    <message>
        <source>%1 %2, published %3</source>
        <translation>%1 %2, veröffentlicht %3</translation>
    </message>
    <message>
        <source>cylinders</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>lobes</source>
        <translation>Nocken</translation>
    </message>
    <message>
        <source>power strokes per revolution</source>
        <translation>Arbeitshübe je Umdrehung</translation>
    </message>
    <message>
        <source>displacement</source>
        <translation>Hubraum</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>stroke</source>
        <translation>Kolbenhub</translation>
    </message>
    <message>
        <source>given</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>the design: %1 given, %2 measured, %3 derived, %4 assumed, %5 chosen</source>
        <translation>Entwurf: %1 veröffentlicht, %2 gemessen, %3 abgeleitet, %4 angenommen, %5 gewählt</translation>
    </message>
    <message>
        <source>none: %1</source>
        <translation>keine Angabe: %1</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>this design</source>
        <translation>dieser Entwurf</translation>
    </message>
    <message>
        <source>rests on</source>
        <translation>beruht auf</translation>
    </message>
    <message>
        <source>Verdict, the weightiest first</source>
        <translation>Urteil, das Gewichtigste zuerst</translation>
    </message>
    <message>
        <source>Rows that %1 would decide: %2.</source>
        <translation>Zeilen, über die die Angabe „%1“ entscheiden würde: %2.</translation>
    </message>
    <message>
        <source>the open design has no such result</source>
        <translation>der geöffnete Entwurf hat kein solches Ergebnis</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>the open design has no such input</source>
        <translation>der geöffnete Entwurf hat keine solche Eingabe</translation>
    </message>
    <message>
        <source>%1, %2 % less</source>
        <translation>%1, %2 % weniger</translation>
    </message>
    <message>
        <source>%1, %2 % more</source>
        <translation>%1, %2 % mehr</translation>
    </message>
    <message>
        <source>the study of unknowns has not been made</source>
        <translation>die Untersuchung der Unbekannten fehlt noch</translation>
    </message>
    <message>
        <source>the study of unknowns has no such result</source>
        <translation>die Untersuchung der Unbekannten enthält dieses Ergebnis nicht</translation>
    </message>
    <message>
        <source>%1 … %2</source>
        <translation>%1 … %2</translation>
    </message>
    <message>
        <source>19 of 20 possible engines stay below %1: narrower or other ranges of its inputs.</source>
        <translation>19 von 20 möglichen Motoren bleiben unter %1: engere oder andere Bereiche der Eingaben.</translation>
    </message>
    <message>
        <source>19 of 20 possible engines lie above %1: narrower or other ranges of its inputs.</source>
        <translation>19 von 20 möglichen Motoren liegen über %1: engere oder andere Bereiche der Eingaben.</translation>
    </message>
    <message>
        <source>no design is open</source>
        <translation>kein Entwurf ist offen</translation>
    </message>
    <message>
        <source>the open design is another engine: %1</source>
        <translation>der geöffnete Entwurf ist ein anderer Motor: %1</translation>
    </message>
    <message>
        <source>Other values than were assumed: %1.</source>
        <translation>Andere Werte als angenommen: %1.</translation>
    </message>
    <message>
        <source>Another published value: %1.</source>
        <translation>Ein anderer veröffentlichter Wert: %1.</translation>
    </message>
    <message>
        <source>Power strokes counted from chambers and reciprocations</source>
        <translation>Arbeitshübe, aus Brennräumen und Doppelhüben gezählt</translation>
    </message>
    <message>
        <source>%1 chambers·%2 reciprocations·%3</source>
        <translation>%1 Brennräume·%2 Doppelhübe·%3</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>Viscosity of the oil</source>
        <translation>Viskosität des Öls</translation>
    </message>
    <message>
        <source>Closed track (1 yes, 0 no)</source>
        <translation>Geschlossene Kurvenbahn (1 ja, 0 nein)</translation>
    </message>
    <message>
        <source>the rollers would leave an open track at the rated point</source>
        <translation>die Rollen würden von einer offenen Bahn im Nennpunkt abheben</translation>
    </message>
    <message>
        <source>the rollers stay on an open track</source>
        <translation>die Rollen bleiben auf einer offenen Bahn</translation>
    </message>
    <message>
        <source>open, closed where the rollers would leave it at the rated point</source>
        <translation>offen; geschlossen, wo die Rollen im Nennpunkt abheben würden</translation>
    </message>
    <message>
        <source>0 or 1</source>
        <translation>0 oder 1</translation>
    </message>
    <message>
        <source>r = 0.37·B, larger where the widest roller is not enough</source>
        <translation>r = 0,37·B, größer, wo die breiteste Rolle nicht genügt</translation>
    </message>
    <message>
        <source>c = 15 … 28 N/mm²</source>
        <translation>c = 15 … 28 N/mm²</translation>
    </message>
    <message>
        <source>Blair 1996, ch. 6; 0.17: common practice (secondary value, not checked against the printed source)</source>
        <translation>Blair 1996, Kap. 6; 0,17: übliche Praxis (Sekundärwert, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>−20° … +2° cycle</source>
        <translation>−20° … +2° Arbeitsspiel</translation>
    </message>
    <message>
        <source>after compression and some cooling, more of it where the charge would knock</source>
        <translation>nach Verdichtung und etwas Kühlung; mehr davon, wo die Ladung klopfen würde</translation>
    </message>
    <message>
        <source>0.006 … 0.05 Pa·s</source>
        <translation>0,006 … 0,05 Pa·s</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>brake mean effective pressure</source>
        <translation>effektiver Mitteldruck</translation>
    </message>
    <message>
        <source>number of cylinders</source>
        <translation>Zylinderzahl</translation>
    </message>
    <message>
        <source>number of lobes</source>
        <translation>Nockenzahl</translation>
    </message>
    <message>
        <source>compression ratio</source>
        <translation>Verdichtungsverhältnis</translation>
    </message>
    <message>
        <source>highest compression ratio</source>
        <translation>höchstes Verdichtungsverhältnis</translation>
    </message>
    <message>
        <source>outer diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>excess-air ratio</source>
        <translation>Luftverhältnis</translation>
    </message>
    <message>
        <source>supply pressure</source>
        <translation>Ladedruck</translation>
    </message>
    <message>
        <source>charging</source>
        <translation>Aufladung</translation>
    </message>
    <message>
        <source>x = 0.45 … 1.1 opposed, 0.7 … 1.3 against a head</source>
        <translation>x = 0,45 … 1,1 gegenläufig, 0,7 … 1,3 gegen einen Zylinderkopf</translation>
    </message>
    <message>
        <source>own estimate on opposed-piston engines; common practice</source>
        <translation>eigene Schätzung für Gegenkolbenmotoren; übliche Praxis</translation>
    </message>
    <message>
        <source>B = √(4·V/(k·π·z·S))</source>
        <translation>B = √(4·V/(k·π·z·S))</translation>
    </message>
    <message>
        <source>S = 4·V/(k·π·z·B²)</source>
        <translation>S = 4·V/(k·π·z·B²)</translation>
    </message>
    <message>
        <source>0.6 … 0.75 opposed, 0.35 … 0.48 against a head</source>
        <translation>0,6 … 0,75 gegenläufig, 0,35 … 0,48 gegen einen Zylinderkopf</translation>
    </message>
    <message>
        <source>0.5 … 0.65 opposed, 0.25 … 0.35 against a head</source>
        <translation>0,5 … 0,65 gegenläufig, 0,25 … 0,35 gegen einen Zylinderkopf</translation>
    </message>
    <message>
        <source>Pressure before the compressor wheel</source>
        <translation>Druck vor dem Verdichterrad</translation>
    </message>
    <message>
        <source>ambient, less what a throttle takes at part load</source>
        <translation>Umgebungsdruck abzüglich dessen, was eine Drossel bei Teillast nimmt</translation>
    </message>
    <message>
        <source>Measured engines of this class that ordinarily reach %1.</source>
        <translation>Gemessene Motoren dieser Klasse, die gewöhnlich %1 erreichen.</translation>
    </message>
    <message>
        <source>the statement&apos;s own numbers</source>
        <translation>die Zahlen der Aussage selbst</translation>
    </message>
    <message>
        <source>δ = 14° cycle/lobes, up to 18° where the charge would knock</source>
        <translation>δ = 14° Arbeitsspiel/Nocken, bis 18°, wo die Ladung klopfen würde</translation>
    </message>
    <message>
        <source>up to 25 % more, where a broad roller needs it</source>
        <translation>bis 25 % mehr, wo eine breite Rolle es braucht</translation>
    </message>
    <message>
        <source>Pressure before the intake</source>
        <translation>Druck vor der Ansaugung</translation>
    </message>
    <message>
        <source>ambient, throttled as the load says</source>
        <translation>Umgebung, gedrosselt nach der Last</translation>
    </message>
    <message>
        <source>A crank makes one reciprocation per revolution, a cam track one for each lobe.</source>
        <translation>Eine Kurbel bewegt einen Kolben je Umdrehung einmal hin und her, eine Kurvenbahn so oft, wie sie Nocken hat.</translation>
    </message>
    <message>
        <source>Absolute, upstream of ports or valves.</source>
        <translation>Absolut, vor Schlitzen oder Ventilen.</translation>
    </message>
    <message>
        <source>Excess-air ratio λ</source>
        <translation>Luftverhältnis λ</translation>
    </message>
    <message>
        <source>Residual axial force with that lead</source>
        <translation>Mit dieser Voreilung verbleibende Axialkraft</translation>
    </message>
    <message>
        <source>Residual axial force with that lead and the best mass for it</source>
        <translation>Mit dieser Voreilung und der besten Masse dazu verbleibende Axialkraft</translation>
    </message>
    <message>
        <source>Residual axial force with that mass</source>
        <translation>Mit dieser Masse verbleibende Axialkraft</translation>
    </message>
    <message>
        <source>Residual axial force of one cylinder, share of the inlet piston&apos;s</source>
        <translation>Verbleibende Axialkraft, ein Zylinder, Anteil an der des Einlasskolbens</translation>
    </message>
    <message>
        <source>MBT timing</source>
        <translation>MBT-Zeitpunkt</translation>
    </message>
    <message>
        <source>What is claimed: boosted, balanced and the like.</source>
        <translation>Was behauptet wird: aufgeladen, ausgewuchtet und dergleichen.</translation>
    </message>
    <message>
        <source>Boosted: supplied above ambient pressure, by whatever means.</source>
        <translation>Aufgeladen: mit Luft über Umgebungsdruck versorgt, gleich womit.</translation>
    </message>
    <message>
        <source>Brake power divided by fuel mass flow and lower heating value.</source>
        <translation>Effektive Leistung, geteilt durch Kraftstoffstrom und unteren Heizwert.</translation>
    </message>
    <message>
        <source>Combustion</source>
        <translation>Verbrennung</translation>
    </message>
    <message>
        <source>Shaft angle by which the exhaust piston is ahead.</source>
        <translation>Wellenwinkel, um den der Auslasskolben vorauseilt.</translation>
    </message>
    <message>
        <source>Compressor or blower</source>
        <translation>Verdichter oder Gebläse</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Aufladung</translation>
    </message>
    <message>
        <source>Crank degrees from firing top dead centre; &quot;best-torque&quot; searches for the highest net work. Combustion lasts as many degrees of a reciprocation as in the design.</source>
        <translation>Kurbelgrad ab dem Zünd-Totpunkt; „bestes Drehmoment“ sucht die größte Nettoarbeit. Die Verbrennung dauert so viele Grad eines Doppelhubs wie beim Entwurf.</translation>
    </message>
    <message>
        <source>Determines the correction of a compression-ignition engine.</source>
        <translation>Entscheidet über die Umrechnung bei Selbstzündung.</translation>
    </message>
    <message>
        <source>Determines which published bands apply.</source>
        <translation>Entscheidet, welche veröffentlichten Bereiche gelten.</translation>
    </message>
    <message>
        <source>Cylinder diameter.</source>
        <translation>Durchmesser eines Zylinders.</translation>
    </message>
    <message>
        <source>Energy-balance residual, share of the fuel heat of a cycle</source>
        <translation>Restfehler der Energiebilanz, Anteil an der Kraftstoffwärme eines Arbeitsspiels</translation>
    </message>
    <message>
        <source>Energy fluctuation within a revolution</source>
        <translation>Energieschwankung innerhalb einer Umdrehung</translation>
    </message>
    <message>
        <source>All parts that move with the exhaust piston, roller included.</source>
        <translation>Alle Teile, die sich mit dem Auslasskolben bewegen, Rolle eingeschlossen.</translation>
    </message>
    <message>
        <source>All parts that move with the inlet piston, roller included.</source>
        <translation>Alle Teile, die sich mit dem Einlasskolben bewegen, Rolle eingeschlossen.</translation>
    </message>
    <message>
        <source>Exhaust seat diameter divided by bore</source>
        <translation>Auslasssitzdurchmesser durch Bohrung</translation>
    </message>
    <message>
        <source>Friction work per revolution</source>
        <translation>Reibarbeit einer Umdrehung</translation>
    </message>
    <message>
        <source>Gap between the two crowns with both pistons at inner dead centre and no exhaust lead.</source>
        <translation>Abstand der beiden Böden, wenn beide Kolben ohne Auslassvoreilung im inneren Totpunkt stehen.</translation>
    </message>
    <message>
        <source>Cycles per revolution and cylinder</source>
        <translation>Arbeitsspiele je Umdrehung und Zylinder</translation>
    </message>
    <message>
        <source>Gas work per revolution</source>
        <translation>Gasarbeit einer Umdrehung</translation>
    </message>
    <message>
        <source>Gas − friction − shaft work, share of the work exchanged</source>
        <translation>Gasarbeit − Reibarbeit − Wellenarbeit, Anteil an der umgesetzten Arbeit</translation>
    </message>
    <message>
        <source>Sets the heating value and the air required.</source>
        <translation>Bestimmt Heizwert und Luftbedarf.</translation>
    </message>
    <message>
        <source>Heat of the fuel per cycle</source>
        <translation>Kraftstoffwärme je Arbeitsspiel</translation>
    </message>
    <message>
        <source>Maximum brake power.</source>
        <translation>Höchste effektive Leistung.</translation>
    </message>
    <message>
        <source>Maximum brake torque.</source>
        <translation>Höchstes effektives Drehmoment.</translation>
    </message>
    <message>
        <source>Maximum contact force</source>
        <translation>Größte Kontaktkraft</translation>
    </message>
    <message>
        <source>Maximum side force on the guide</source>
        <translation>Größte Seitenkraft auf die Führung</translation>
    </message>
    <message>
        <source>Maximum torque over the revolution</source>
        <translation>Größtes Drehmoment einer Umdrehung</translation>
    </message>
    <message>
        <source>Maximum brake mean effective pressure.</source>
        <translation>Größter effektiver Mitteldruck.</translation>
    </message>
    <message>
        <source>How often the pattern repeats per revolution. A pattern of one lobe may hold several unequal rises and returns.</source>
        <translation>Wie oft sich die Kurve je Umdrehung wiederholt. Eine Kurve mit einem Nocken kann mehrere ungleiche Anstiege und Rückgänge enthalten.</translation>
    </message>
    <message>
        <source>Indicated thermal efficiency</source>
        <translation>Indizierter Wirkungsgrad</translation>
    </message>
    <message>
        <source>Inlet seat diameter divided by bore</source>
        <translation>Einlasssitzdurchmesser durch Bohrung</translation>
    </message>
    <message>
        <source>Own track</source>
        <translation>Eigene Bahn</translation>
    </message>
    <message>
        <source>Margin against jamming</source>
        <translation>Sicherheit gegen Klemmen</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Largest inertia force of one piston, for comparison</source>
        <translation>Größte Trägheitskraft eines Kolbens, zum Vergleich</translation>
    </message>
    <message>
        <source>Lift and its three derivatives over one revolution.</source>
        <translation>Weg und seine drei Ableitungen über eine Umdrehung.</translation>
    </message>
    <message>
        <source>Lift-off speed, motored</source>
        <translation>Abhebedrehzahl, geschleppt</translation>
    </message>
    <message>
        <source>Lift-off speed, this pressure trace held</source>
        <translation>Abhebedrehzahl, Druckverlauf festgehalten</translation>
    </message>
    <message>
        <source>Minimum contact force that the motion demands</source>
        <translation>Kleinste von der Bewegung verlangte Kontaktkraft</translation>
    </message>
    <message>
        <source>Minimum margin of the guide against jamming</source>
        <translation>Kleinste Sicherheit der Führung gegen Klemmen</translation>
    </message>
    <message>
        <source>Minimum torque over the revolution</source>
        <translation>Kleinstes Drehmoment einer Umdrehung</translation>
    </message>
    <message>
        <source>Mass-balance residual, share of the trapped mass</source>
        <translation>Restfehler der Massenbilanz, Anteil an der eingeschlossenen Masse</translation>
    </message>
    <message>
        <source>Material in front of the pull flank of a closed track at its highest point. Empty: the roller width (own estimate).</source>
        <translation>Werkstoff vor der Zugflanke einer geschlossenen Bahn an ihrer höchsten Stelle. Leer: die Rollenbreite (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Material behind the push flank at its lowest point. Empty: the roller width (own estimate).</source>
        <translation>Werkstoff hinter der Druckflanke an ihrer tiefsten Stelle. Leer: die Rollenbreite (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Mean supply pressure</source>
        <translation>Mittlerer Ladedruck</translation>
    </message>
    <message>
        <source>Mean roller speed</source>
        <translation>Mittlere Drehzahl der Rolle</translation>
    </message>
    <message>
        <source>Mean supply temperature</source>
        <translation>Mittlere Zulufttemperatur</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Nominal contact stress</source>
        <translation>Nominelle Kontaktpressung</translation>
    </message>
    <message>
        <source>Nominal contact stress at the inner edge</source>
        <translation>Nominelle Kontaktpressung an der Innenkante</translation>
    </message>
    <message>
        <source>Nominal contact stress at the middle</source>
        <translation>Nominelle Kontaktpressung in der Mitte</translation>
    </message>
    <message>
        <source>Nominal contact stress at the outer edge</source>
        <translation>Nominelle Kontaktpressung an der Außenkante</translation>
    </message>
    <message>
        <source>Peak nominal contact stress</source>
        <translation>Größte nominelle Kontaktpressung</translation>
    </message>
    <message>
        <source>Number of strokes, of events or of repetitions.</source>
        <translation>Zahl der Hübe, der Ereignisse oder der Wiederholungen.</translation>
    </message>
    <message>
        <source>Of the air to which the power refers, absolute.</source>
        <translation>Der Luft, auf die sich die Leistung bezieht, absolut.</translation>
    </message>
    <message>
        <source>Of the air to which the power refers.</source>
        <translation>Der Luft, auf die sich die Leistung bezieht.</translation>
    </message>
    <message>
        <source>Of the engine; say in the notes which accessories are included.</source>
        <translation>Des Motors; in den Notizen angeben, welche Anbauteile enthalten sind.</translation>
    </message>
    <message>
        <source>Publication that the figures are taken from.</source>
        <translation>Veröffentlichung, aus der die Angaben stammen.</translation>
    </message>
    <message>
        <source>Publication of the source.</source>
        <translation>Datum der Veröffentlichung.</translation>
    </message>
    <message>
        <source>Of the whole engine, per revolution of the output shaft.</source>
        <translation>Des ganzen Motors, je Umdrehung der Abtriebswelle.</translation>
    </message>
    <message>
        <source>Cycles to convergence</source>
        <translation>Arbeitsspiele bis zur Konvergenz</translation>
    </message>
    <message>
        <source>Piston strokes per cycle.</source>
        <translation>Kolbenhübe je Arbeitsspiel.</translation>
    </message>
    <message>
        <source>Position in the pattern, in shaft degrees; knots are in ascending order.</source>
        <translation>Stelle in der Kurve, in Wellengrad; Stützpunkte stehen aufsteigend.</translation>
    </message>
    <message>
        <source>Power strokes per revolution, all cylinders</source>
        <translation>Arbeitshübe je Umdrehung, alle Zylinder</translation>
    </message>
    <message>
        <source>Power strokes per revolution</source>
        <translation>Arbeitshübe je Umdrehung</translation>
    </message>
    <message>
        <source>Radius of the crowned profile across the width; empty for a cylindrical roller.</source>
        <translation>Radius des balligen Profils über die Breite; leer für eine zylindrische Rolle.</translation>
    </message>
    <message>
        <source>Reciprocations per revolution</source>
        <translation>Doppelhübe je Umdrehung</translation>
    </message>
    <message>
        <source>Relative radius of curvature of roller and track at the pitch radius</source>
        <translation>Ersatzkrümmungsradius von Rolle und Bahn am Teilkreisradius</translation>
    </message>
    <message>
        <source>Roller passes over each point of the track</source>
        <translation>Überrollungen je Bahnpunkt</translation>
    </message>
    <message>
        <source>Claimed</source>
        <translation>Behauptet</translation>
    </message>
    <message>
        <source>Shaft work per revolution</source>
        <translation>Wellenarbeit einer Umdrehung</translation>
    </message>
    <message>
        <source>Start of combustion from inner dead centre</source>
        <translation>Brennbeginn ab innerem Totpunkt</translation>
    </message>
    <message>
        <source>Start of combustion of the four-stroke</source>
        <translation>Brennbeginn des Viertakters</translation>
    </message>
    <message>
        <source>Stroke/bore ratio</source>
        <translation>Hub-Bohrungs-Verhältnis</translation>
    </message>
    <message>
        <source>The contact force changes sign %1 times per pattern: the rollers strike the other flank and reverse their spin. Raise the supply pressure or reduce the piston mass or the speed to keep them on the push flank.</source>
        <translation>Die Kontaktkraft wechselt %1-mal je Kurve das Vorzeichen: Die Rollen schlagen an die andere Flanke und kehren ihre Drehung um. Ladedruck erhöhen oder Kolbenmasse oder Drehzahl verringern, damit sie an der Druckflanke bleiben.</translation>
    </message>
    <message>
        <source>Smallest oil film thickness</source>
        <translation>Kleinste Schmierfilmdicke</translation>
    </message>
    <message>
        <source>Revolutions of the blower per shaft revolution.</source>
        <translation>Umdrehungen des Gebläses je Umdrehung der Welle.</translation>
    </message>
    <message>
        <source>Valve lift divided by seat diameter</source>
        <translation>Ventilhub durch Sitzdurchmesser</translation>
    </message>
    <message>
        <source>Volume of the bowls in both crowns together.</source>
        <translation>Volumen der Mulden beider Böden zusammen.</translation>
    </message>
    <message>
        <source>The quantity compared with a usual engine.</source>
        <translation>Die mit einem üblichen Motor verglichene Größe.</translation>
    </message>
    <message>
        <source>Remarks on the design.</source>
        <translation>Bemerkungen zum Entwurf.</translation>
    </message>
    <message>
        <source>When it was published or read.</source>
        <translation>Wann es veröffentlicht oder gelesen wurde.</translation>
    </message>
    <message>
        <source>Page, table or paragraph.</source>
        <translation>Seite, Tabelle oder Absatz.</translation>
    </message>
    <message>
        <source>Whether the supply power is deducted.</source>
        <translation>Ob die Leistung der Luftversorgung abgezogen ist.</translation>
    </message>
    <message>
        <source>Work-balance residual at the shaft, share of the work moved</source>
        <translation>Restfehler der Arbeitsbilanz an der Welle, Anteil an der umgesetzten Arbeit</translation>
    </message>
    <message>
        <source>Yes: the power to compress the supply is shown beside every brake value instead of being deducted.</source>
        <translation>Ja: Die Verdichtungsleistung der Luftversorgung steht neben jedem effektiven Wert, statt abgezogen zu werden.</translation>
    </message>
    <message>
        <source>Yes: driven from outside, without fuel.</source>
        <translation>Ja: von außen angetrieben, ohne Kraftstoff.</translation>
    </message>
    <message>
        <source>equal volume displaced per second</source>
        <translation>gleiches verdrängtes Volumen je Sekunde</translation>
    </message>
    <message>
        <source>number of strokes per cycle</source>
        <translation>Zahl der Takte je Arbeitsspiel</translation>
    </message>
    <message>
        <source>power strokes of the engine per revolution</source>
        <translation>Arbeitshübe des Motors je Umdrehung</translation>
    </message>
    <message>
        <source>power strokes per chamber and revolution</source>
        <translation>Arbeitshübe je Brennraum und Umdrehung</translation>
    </message>
    <message>
        <source>a multiple of a usual engine</source>
        <translation>ein Vielfaches eines üblichen Motors</translation>
    </message>
    <message>
        <source>Friction of the adjuster&apos;s spline less the force along it, minimum (at half the pitch radius)</source>
        <translation>Reibung der Steilverzahnung des Verstellers abzüglich der Kraft längs ihr, kleinster Wert (auf dem halben Teilkreisradius)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not allowed at the start of a term</source>
        <translation>&quot;%1&quot; darf nicht am Anfang eines Ausdrucks stehen</translation>
    </message>
    <message>
        <source>this design has no value &quot;%1&quot;</source>
        <translation>dieser Entwurf hat keinen Wert &quot;%1&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is in the place of a value</source>
        <translation>&quot;%1&quot; steht an der Stelle eines Werts</translation>
    </message>
    <message>
        <source>&quot;%1&quot; follows the end of the formula</source>
        <translation>&quot;%1&quot; folgt auf das Ende der Formel</translation>
    </message>
    <message>
        <source>%1 Boost is not required, but not ruled out.</source>
        <translation>%1 Aufladung ist nicht nötig, aber nicht ausgeschlossen.</translation>
    </message>
    <message>
        <source>%1, as given</source>
        <translation>%1, wie angegeben</translation>
    </message>
    <message>
        <source>%1 chambers·%2 reciprocations%3 = %4 per revolution; claimed %5</source>
        <translation>%1 Brennräume·%2 Doppelhübe%3 = %4 je Umdrehung; angegeben %5</translation>
    </message>
    <message>
        <source>%1 not given: compared with every type</source>
        <translation>%1 nicht angegeben: mit jeder Art verglichen</translation>
    </message>
    <message>
        <source>%1 power strokes per chamber and revolution.</source>
        <translation>%1 Arbeitshübe je Brennraum und Umdrehung.</translation>
    </message>
    <message>
        <source>%1 power strokes of the whole engine per revolution.</source>
        <translation>%1 Arbeitshübe je Umdrehung des ganzen Motors.</translation>
    </message>
    <message>
        <source>A brake thermal efficiency other than %1, an excess-air ratio other than %2, or another speed of peak power.</source>
        <translation>Ein anderer effektiver Wirkungsgrad als %1, ein anderes Luftverhältnis als %2 oder eine andere Drehzahl der höchsten Leistung.</translation>
    </message>
    <message>
        <source>A supply above ambient pressure is boost, whatever compresses it.</source>
        <translation>Luftversorgung über Umgebungsdruck ist Aufladung, gleich was sie verdichtet.</translation>
    </message>
    <message>
        <source>Another number of power strokes per chamber and revolution, or of lobes.</source>
        <translation>Eine andere Zahl von Arbeitshüben je Brennraum und Umdrehung, oder von Nocken.</translation>
    </message>
    <message>
        <source>A piston on a crank makes one reciprocation per revolution.</source>
        <translation>Ein Kolben an einer Kurbel geht je Umdrehung einmal hin und her.</translation>
    </message>
    <message>
        <source>Air required for the power</source>
        <translation>Erforderliche Luft für die Leistung</translation>
    </message>
    <message>
        <source>The fuel is the air divided by λ and by the stoichiometric ratio; 1 mg·MJ/kg is 1 J.</source>
        <translation>Der Kraftstoff ist die Luft, geteilt durch λ und das stöchiometrische Verhältnis; 1 mg·MJ/kg ist 1 J.</translation>
    </message>
    <message>
        <source>An engine cannot deliver more work than the heating value of its fuel.</source>
        <translation>Ein Motor kann nicht mehr Arbeit abgeben, als der Heizwert seines Kraftstoffs hergibt.</translation>
    </message>
    <message>
        <source>Another reference engine than: %1.</source>
        <translation>Ein anderer Vergleichsmotor als: %1.</translation>
    </message>
    <message>
        <source>Another number of chambers, lobes or strokes per cycle.</source>
        <translation>Eine andere Zahl von Brennräumen, Nocken oder Hüben je Arbeitsspiel.</translation>
    </message>
    <message>
        <source>Like the file itself, without format and snapshots.</source>
        <translation>Wie die Datei selbst, ohne Format und Varianten.</translation>
    </message>
    <message>
        <source>Brake thermal efficiency from the fuel consumption</source>
        <translation>Effektiver Wirkungsgrad aus dem Kraftstoffverbrauch</translation>
    </message>
    <message>
        <source>Brake thermal efficiency or fuel consumption</source>
        <translation>Effektiver Wirkungsgrad oder Kraftstoffverbrauch</translation>
    </message>
    <message>
        <source>Brake mean effective pressure at peak power</source>
        <translation>Effektiver Mitteldruck an der Leistungsspitze</translation>
    </message>
    <message>
        <source>Brake mean effective pressure at peak torque</source>
        <translation>Effektiver Mitteldruck an der Drehmomentspitze</translation>
    </message>
    <message>
        <source>Charging efficiency that the supply pressure allows</source>
        <translation>Liefergrad, den der Ladedruck zulässt</translation>
    </message>
    <message>
        <source>The cycles per chamber and revolution are not known.</source>
        <translation>Die Arbeitsspiele je Brennraum und Umdrehung sind nicht bekannt.</translation>
    </message>
    <message>
        <source>Definition (usual for two-strokes).</source>
        <translation>Definition (bei Zweitaktern üblich).</translation>
    </message>
    <message>
        <source>Definition: mass of air divided by the mass of all gas in the chamber at the last port closing.</source>
        <translation>Definition: Luftmasse, geteilt durch die gesamte Gasmasse im Brennraum beim Schließen des letzten Schlitzes.</translation>
    </message>
    <message>
        <source>Definition: inlet and exhaust ports both open.</source>
        <translation>Definition: Einlass- und Auslassschlitze zugleich offen.</translation>
    </message>
    <message>
        <source>Definition: cycle degrees are c times shaft degrees, counted from inner dead centre.</source>
        <translation>Definition: Grad des Arbeitsspiels sind c-mal Grad der Welle, ab dem inneren Totpunkt gezählt.</translation>
    </message>
    <message>
        <source>Definition: each cylinder counts once.</source>
        <translation>Definition: jeder Zylinder einmal gezählt.</translation>
    </message>
    <message>
        <source>Definition: each rise and return is one two-stroke cycle.</source>
        <translation>Definition: Jeder Anstieg mit seinem Rückgang ist ein Zweitakt-Arbeitsspiel.</translation>
    </message>
    <message>
        <source>Definition: from exhaust closes to inlet closes, signed.</source>
        <translation>Definition: von Auslass schließt bis Einlass schließt, mit Vorzeichen.</translation>
    </message>
    <message>
        <source>Definition: from exhaust opens to inlet opens, signed.</source>
        <translation>Definition: von Auslass öffnet bis Einlass öffnet, mit Vorzeichen.</translation>
    </message>
    <message>
        <source>Definition: maximum less minimum lift.</source>
        <translation>Definition: größter minus kleinster Weg.</translation>
    </message>
    <message>
        <source>Definition: volume at the last port closing divided by the smallest volume.</source>
        <translation>Definition: Volumen beim Schließen des letzten Schlitzes, geteilt durch das kleinste Volumen.</translation>
    </message>
    <message>
        <source>Required delivery ratio through ports</source>
        <translation>Erforderlicher Luftaufwand durch Schlitze</translation>
    </message>
    <message>
        <source>Depth divided by half-width</source>
        <translation>Tiefe durch halbe Kontaktbreite</translation>
    </message>
    <message>
        <source>Volume displaced per second</source>
        <translation>Verdrängtes Volumen je Sekunde</translation>
    </message>
    <message>
        <source>The displacement does not match the pistons.</source>
        <translation>Der Hubraum ist nicht der der Kolben.</translation>
    </message>
    <message>
        <source>The displacement is that of neither one nor two pistons per chamber.</source>
        <translation>Der Hubraum ist weder der von einem noch der von zwei Kolben je Brennraum.</translation>
    </message>
    <message>
        <source>Displacement of a four-stroke crank engine that displaces as much per revolution</source>
        <translation>Hubraum eines Viertakters mit Kurbel, der je Umdrehung ebenso viel verdrängt</translation>
    </message>
    <message>
        <source>Energy fluctuation divided by twice the kinetic energy of rotation (Norton, Design of Machinery, flywheels).</source>
        <translation>Energieschwankung, geteilt durch die doppelte Drehenergie (Norton, Design of Machinery, Schwungräder).</translation>
    </message>
    <message>
        <source>Enlargement by equal cylinders, factor</source>
        <translation>Vergrößerung um gleiche Zylinder, Faktor</translation>
    </message>
    <message>
        <source>Estimates only. A verdict compares published numbers with arithmetic and with the bands of the named sources; it says nothing about any engine that was built and releases none for use.</source>
        <translation>Nur Schätzungen. Ein Urteil vergleicht veröffentlichte Zahlen mit Rechnung und mit den Bereichen der genannten Quellen; es sagt nichts über einen gebauten Motor, und keines gibt einen frei.</translation>
    </message>
    <message>
        <source>Evenly spaced: the revolution divided by its power strokes.</source>
        <translation>Gleichmäßig verteilt: die Umdrehung, geteilt durch ihre Arbeitshübe.</translation>
    </message>
    <message>
        <source>Each roller passes every point of the track once per revolution.</source>
        <translation>Jede Rolle läuft einmal je Umdrehung über jeden Punkt der Bahn.</translation>
    </message>
    <message>
        <source>All gas in the chamber at the last port closing.</source>
        <translation>Das gesamte Gas im Brennraum beim Schließen des letzten Schlitzes.</translation>
    </message>
    <message>
        <source>Film thickness divided by the combined roughness of both surfaces (Hamrock, Fluid Film Lubrication).</source>
        <translation>Schmierfilmdicke, geteilt durch die gemeinsame Rauheit beider Oberflächen (Hamrock, Fluid Film Lubrication).</translation>
    </message>
    <message>
        <source>First law over one cycle.</source>
        <translation>Erster Hauptsatz über ein Arbeitsspiel.</translation>
    </message>
    <message>
        <source>Four strokes per cycle</source>
        <translation>Vier Takte je Arbeitsspiel</translation>
    </message>
    <message>
        <source>Fourier sum over the revolution, in shaft orders.</source>
        <translation>Fourier-Summe über die Umdrehung, in Wellenordnungen.</translation>
    </message>
    <message>
        <source>Fresh gas through the inlet ports per cycle</source>
        <translation>Frischgas durch die Einlassschlitze, je Arbeitsspiel</translation>
    </message>
    <message>
        <source>Cycles per chamber and revolution</source>
        <translation>Arbeitsspiele je Brennraum und Umdrehung</translation>
    </message>
    <message>
        <source>Heat per cycle divided by the lower heating value, times the cycles per hour.</source>
        <translation>Wärme je Arbeitsspiel, geteilt durch den unteren Heizwert, mal Arbeitsspiele je Stunde.</translation>
    </message>
    <message>
        <source>Maximum over the revolution.</source>
        <translation>Größter Wert über die Umdrehung.</translation>
    </message>
    <message>
        <source>Peak power at the highest speed: the speed of peak power is not given; pressures and charge per cycle are at least what is shown.</source>
        <translation>Höchste Leistung bei der höchsten Drehzahl: Die Drehzahl der höchsten Leistung ist nicht angegeben; Drücke und Ladung je Arbeitsspiel sind mindestens so groß wie gezeigt.</translation>
    </message>
    <message>
        <source>Peak power at the lowest speed at which the torque gives it: no speed is given; pressures and charge per cycle are at most what is shown.</source>
        <translation>Höchste Leistung bei der niedrigsten Drehzahl, bei der das Drehmoment sie ergibt: Keine Drehzahl ist angegeben; Drücke und Ladung je Arbeitsspiel sind höchstens so groß wie gezeigt.</translation>
    </message>
    <message>
        <source>Impossible: at the claimed speed even the peak torque gives less than the claimed power.</source>
        <translation>Unmöglich: Bei der angegebenen Drehzahl ergibt selbst das höchste Drehmoment weniger als die angegebene Leistung.</translation>
    </message>
    <message>
        <source>Indicated mean effective pressure at peak power</source>
        <translation>Indizierter Mitteldruck an der Leistungsspitze</translation>
    </message>
    <message>
        <source>Indicated mean effective pressure at peak torque</source>
        <translation>Indizierter Mitteldruck an der Drehmomentspitze</translation>
    </message>
    <message>
        <source>Largest magnitude over the revolution.</source>
        <translation>Größter Betrag über die Umdrehung.</translation>
    </message>
    <message>
        <source>Maximum over the revolution and the width.</source>
        <translation>Größter Wert über Umdrehung und Breite.</translation>
    </message>
    <message>
        <source>Maximum over the revolution, either piston.</source>
        <translation>Größter Wert über die Umdrehung, einer der beiden Kolben.</translation>
    </message>
    <message>
        <source>Minimum over the revolution, demanded by the motion.</source>
        <translation>Kleinster Wert über die Umdrehung, von der Bewegung verlangt.</translation>
    </message>
    <message>
        <source>Minimum over the revolution.</source>
        <translation>Kleinster Wert über die Umdrehung.</translation>
    </message>
    <message>
        <source>Least squares of the axial force of one cylinder over the revolution.</source>
        <translation>Kleinste Quadrate der Axialkraft eines Zylinders über eine Umdrehung.</translation>
    </message>
    <message>
        <source>Lowest possible speed of peak power</source>
        <translation>Niedrigste mögliche Drehzahl der höchsten Leistung</translation>
    </message>
    <message>
        <source>Mass flow times the enthalpy rise to the supply pressure.</source>
        <translation>Massenstrom mal Enthalpiezunahme bis zum Ladedruck.</translation>
    </message>
    <message>
        <source>Mean effective pressure times the volume swept per revolution.</source>
        <translation>Mitteldruck mal das je Umdrehung verdrängte Volumen.</translation>
    </message>
    <message>
        <source>More than one reciprocation per revolution.</source>
        <translation>Mehr als ein Doppelhub je Umdrehung.</translation>
    </message>
    <message>
        <source>Norton, Cam Design and Manufacturing Handbook, jamming of a guided follower, at the angle of its minimum.</source>
        <translation>Norton, Cam Design and Manufacturing Handbook, Klemmen eines geführten Stößels, beim Winkel des kleinsten Werts.</translation>
    </message>
    <message>
        <source>One piston per chamber: the number of pistons is not given.</source>
        <translation>Ein Kolben je Brennraum: Die Zahl der Kolben ist nicht angegeben.</translation>
    </message>
    <message>
        <source>One reciprocation per revolution, as on a crank: neither power strokes nor reciprocations per revolution are given; a cam track with m lobes makes m.</source>
        <translation>Ein Doppelhub je Umdrehung, wie bei einer Kurbel: Weder Arbeitshübe noch Doppelhübe je Umdrehung sind angegeben; eine Kurvenbahn mit m Nocken hätte m.</translation>
    </message>
    <message>
        <source>Path along the track divided by the circumference of the roller.</source>
        <translation>Weg längs der Bahn, geteilt durch den Umfang der Rolle.</translation>
    </message>
    <message>
        <source>Power at the speed of peak torque</source>
        <translation>Leistung an der Drehmomentspitze</translation>
    </message>
    <message>
        <source>Power divided by the volume swept per second.</source>
        <translation>Leistung, geteilt durch das je Sekunde verdrängte Volumen.</translation>
    </message>
    <message>
        <source>The power strokes per chamber and revolution follow from the cycle and the reciprocations per revolution, which are not both given.</source>
        <translation>Arbeitshübe je Brennraum und Umdrehung folgen aus dem Arbeitsspiel und den Doppelhüben je Umdrehung; nicht beides ist angegeben.</translation>
    </message>
    <message>
        <source>Power strokes per revolution = chambers·cycles per chamber and revolution: not all are given.</source>
        <translation>Arbeitshübe je Umdrehung = Brennräume·Arbeitsspiele je Brennraum und Umdrehung: Nicht alle sind angegeben.</translation>
    </message>
    <message>
        <source>Power strokes per revolution (with the number of chambers)</source>
        <translation>Arbeitshübe je Umdrehung (mit der Zahl der Brennräume)</translation>
    </message>
    <message>
        <source>Power strokes per cylinder and output revolution</source>
        <translation>Arbeitshübe je Zylinder und Umdrehung</translation>
    </message>
    <message>
        <source>Power strokes per second</source>
        <translation>Arbeitshübe je Sekunde</translation>
    </message>
    <message>
        <source>Power strokes per output revolution</source>
        <translation>Arbeitshübe je Umdrehung</translation>
    </message>
    <message>
        <source>Supply power, if the shaft provides it</source>
        <translation>Leistung der Luftversorgung, falls die Welle sie aufbringt</translation>
    </message>
    <message>
        <source>Reciprocations per revolution, power strokes per revolution and the number of chambers.</source>
        <translation>Doppelhübe je Umdrehung, Arbeitshübe je Umdrehung und die Zahl der Brennräume.</translation>
    </message>
    <message>
        <source>Rectangles less their rounded corners, all rows.</source>
        <translation>Rechtecke abzüglich der gerundeten Ecken, alle Reihen.</translation>
    </message>
    <message>
        <source>Relative radius of curvature of roller and track there</source>
        <translation>Ersatzkrümmungsradius von Rolle und Bahn dort</translation>
    </message>
    <message>
        <source>Enthalpy rise in the compressor</source>
        <translation>Enthalpiezunahme im Verdichter</translation>
    </message>
    <message>
        <source>Rises per pattern</source>
        <translation>Anstiege je Kurve</translation>
    </message>
    <message>
        <source>Root mean square of the axial force divided by that of the inlet piston alone.</source>
        <translation>Quadratisches Mittel der Axialkraft, geteilt durch das des Einlasskolbens allein.</translation>
    </message>
    <message>
        <source>The engine as it is, less the same with the exhaust track only turned.</source>
        <translation>Der Motor, wie er ist, minus derselbe mit nur gedrehter Auslassbahn.</translation>
    </message>
    <message>
        <source>The engine with the exhaust track only turned, less the same with the adjuster at rest.</source>
        <translation>Der Motor mit nur gedrehter Auslassbahn minus derselbe mit Versteller in Ruhe.</translation>
    </message>
    <message>
        <source>Start of combustion, degrees of a reciprocation</source>
        <translation>Brennbeginn, Grad eines Doppelhubs</translation>
    </message>
    <message>
        <source>The %1 lies above the highest speed.</source>
        <translation>Zu hoch, über der höchsten Drehzahl: %1.</translation>
    </message>
    <message>
        <source>The supply pressure is not above ambient; give it as an absolute pressure.</source>
        <translation>Der Ladedruck liegt nicht über dem Umgebungsdruck; bitte als absoluten Druck angeben.</translation>
    </message>
    <message>
        <source>The quantity and the number.</source>
        <translation>Die Größe und die Zahl.</translation>
    </message>
    <message>
        <source>Peak power cannot lie below the speed of peak torque: both torque and speed would be higher there.</source>
        <translation>Die Höchstleistung kann nicht unter der Drehzahl des höchsten Drehmoments liegen: Dort wären Drehmoment und Drehzahl beide höher.</translation>
    </message>
    <message>
        <source>The solver also evaluates between the samples.</source>
        <translation>Der Löser wertet auch zwischen den Stützstellen aus.</translation>
    </message>
    <message>
        <source>The solver integrates the work itself; the columns reproduce it to the accuracy of their step.</source>
        <translation>Der Löser integriert die Arbeit selbst; die Spalten geben sie so genau wieder, wie ihr Schritt es zulässt.</translation>
    </message>
    <message>
        <source>Peak torque times its speed exceeds the claimed peak power.</source>
        <translation>Höchstes Drehmoment mal seiner Drehzahl übersteigt die angegebene Höchstleistung.</translation>
    </message>
    <message>
        <source>The partial pressure of the water vapour would exceed the air pressure.</source>
        <translation>Der Teildruck des Wasserdampfs wäre höher als der Luftdruck.</translation>
    </message>
    <message>
        <source>It contains no number to compare with.</source>
        <translation>Sie enthält keine Zahl zum Vergleich.</translation>
    </message>
    <message>
        <source>Torque at the speed of peak power</source>
        <translation>Drehmoment an der Leistungsspitze</translation>
    </message>
    <message>
        <source>Torque integrated over the shaft angle of one revolution.</source>
        <translation>Drehmoment, über den Wellenwinkel einer Umdrehung integriert.</translation>
    </message>
    <message>
        <source>Two crowns and the liner between them; a piston bowl adds volume only.</source>
        <translation>Zwei Böden und die Laufbuchse dazwischen; eine Mulde vergrößert nur das Volumen.</translation>
    </message>
    <message>
        <source>Two strokes per cycle</source>
        <translation>Zwei Takte je Arbeitsspiel</translation>
    </message>
    <message>
        <source>The value without both shares of the adjuster.</source>
        <translation>Der Wert ohne beide Anteile des Verstellers.</translation>
    </message>
    <message>
        <source>The quantity compared with a usual engine and its factor are not both given.</source>
        <translation>Die mit einem üblichen Motor verglichene Größe und ihr Faktor sind nicht beide angegeben.</translation>
    </message>
    <message>
        <source>Mass through the inlet ports per cycle, times the cycles per hour.</source>
        <translation>Masse durch die Einlassschlitze je Arbeitsspiel, mal Arbeitsspiele je Stunde.</translation>
    </message>
    <message>
        <source>Work gained from the heat kept, at the indicated thermal efficiency, less added friction</source>
        <translation>Arbeit aus der ferngehaltenen Wärme mit dem indizierten Wirkungsgrad, abzüglich zusätzlicher Reibung</translation>
    </message>
    <message>
        <source>Work per revolution divided by 2π.</source>
        <translation>Arbeit je Umdrehung, geteilt durch 2π.</translation>
    </message>
    <message>
        <source>a few per cent of the power: the reference states of the standards differ</source>
        <translation>einige Prozent der Leistung: Die Bezugszustände der Normen sind verschieden</translation>
    </message>
    <message>
        <source>reduce the pressure angle or the friction, or lengthen the guide</source>
        <translation>kleinerer Pressungswinkel, weniger Reibung oder längere Führung</translation>
    </message>
    <message>
        <source>use a larger bearing, or lower the load or the speed</source>
        <translation>größeres Lager oder weniger Last oder Drehzahl</translation>
    </message>
    <message>
        <source>increase the pitch radius or reduce the acceleration of the lobe</source>
        <translation>größerer Teilkreisradius oder geringere Beschleunigung des Nockens</translation>
    </message>
    <message>
        <source>increase the pitch radius, lengthen the span or shorten the stroke</source>
        <translation>größerer Teilkreisradius, größerer Abschnittswinkel oder kürzerer Kolbenhub</translation>
    </message>
    <message>
        <source>start combustion later, lower the compression ratio or cool the supply</source>
        <translation>spätere Verbrennung, weniger Verdichtung oder kühlere Zuluft</translation>
    </message>
    <message>
        <source>use a wider or larger roller, a flatter crest or a harder track</source>
        <translation>breitere oder größere Rolle, flachere Kuppe oder härtere Bahn</translation>
    </message>
    <message>
        <source>a naturally aspirated engine can take that in</source>
        <translation>ein nicht aufgeladener Motor kann das ansaugen</translation>
    </message>
    <message>
        <source>c = power strokes per revolution/chambers</source>
        <translation>c = Arbeitshübe je Umdrehung/Brennräume</translation>
    </message>
    <message>
        <source>c = reciprocations per revolution, two-stroke</source>
        <translation>c = Doppelhübe je Umdrehung, Zweitakt</translation>
    </message>
    <message>
        <source>compressor or blower not given: none assumed</source>
        <translation>Verdichter oder Gebläse nicht angegeben: keines angenommen</translation>
    </message>
    <message>
        <source>charging efficiency/trapping efficiency</source>
        <translation>Liefergrad/Fanggrad</translation>
    </message>
    <message>
        <source>cycles per revolution, and with them all pressures and charges in proportion</source>
        <translation>Arbeitsspiele je Umdrehung, und damit im Verhältnis jeder Druck und jede Ladung</translation>
    </message>
    <message>
        <source>identical operation of all cylinders</source>
        <translation>gleicher Betrieb aller Zylinder</translation>
    </message>
    <message>
        <source>use fewer or narrower ports, so that the bridges carry the piston rings</source>
        <translation>weniger oder schmalere Schlitze, damit die Stege die Kolbenringe tragen</translation>
    </message>
    <message>
        <source>friction force times lever arm over the revolution, by quadrature between events</source>
        <translation>Reibkraft mal Hebelarm über die Umdrehung, durch Quadratur zwischen den Ereignissen</translation>
    </message>
    <message>
        <source>infinite jerk; use a law with continuous acceleration</source>
        <translation>unendlicher Ruck; ein Gesetz mit stetiger Beschleunigung wählen</translation>
    </message>
    <message>
        <source>k: waves per pattern; the shaft order is k times the number of lobes.</source>
        <translation>k: Wellen je Kurve; die Wellenordnung ist k mal die Zahl der Nocken.</translation>
    </message>
    <message>
        <source>lower the speed, the stroke or the number of lobes</source>
        <translation>weniger Drehzahl, Kolbenhub oder Nocken</translation>
    </message>
    <message>
        <source>lowest possible speed of peak power; mean effective pressure at peak torque</source>
        <translation>niedrigste mögliche Drehzahl der höchsten Leistung; Mitteldruck an der Drehmomentspitze</translation>
    </message>
    <message>
        <source>mean effective pressure and charge per cycle at peak power; whether power and torque agree</source>
        <translation>Mitteldruck und Ladung je Arbeitsspiel an der Leistungsspitze; ob Leistung und Drehmoment zusammenpassen</translation>
    </message>
    <message>
        <source>mean effective pressure, power per displacement, charging efficiency</source>
        <translation>Mitteldruck, Leistung je Hubraum, Liefergrad</translation>
    </message>
    <message>
        <source>increase the clearance, start combustion later or extend it, or lower the supply pressure</source>
        <translation>mehr Bodenabstand, spätere oder längere Verbrennung oder weniger Ladedruck</translation>
    </message>
    <message>
        <source>more than a naturally aspirated engine takes in</source>
        <translation>mehr, als ein nicht aufgeladener Motor ansaugt</translation>
    </message>
    <message>
        <source>no air to burn (%1 of the charge is fresh): check the ports, the supply pressure and the exhaust back pressure</source>
        <translation>Keine Luft zum Verbrennen (%1 der Ladung ist frisch): Schlitze, Ladedruck und Abgasgegendruck prüfen</translation>
    </message>
    <message>
        <source>no published band for this type with %1 ignition: compared with %2</source>
        <translation>kein veröffentlichter Bereich für diese Art mit %1zündung; verglichen: %2</translation>
    </message>
    <message>
        <source>no pressure trace to judge it by</source>
        <translation>kein Druckverlauf zur Beurteilung</translation>
    </message>
    <message>
        <source>not given: the bore</source>
        <translation>nicht angegeben: die Bohrung</translation>
    </message>
    <message>
        <source>not given: the roller radius</source>
        <translation>nicht angegeben: der Rollenradius</translation>
    </message>
    <message>
        <source>not counted in the claim; with it deducted the power is %1 kW</source>
        <translation>in der Angabe nicht eingerechnet; nach Abzug ist die Leistung %1 kW</translation>
    </message>
    <message>
        <source>no piston is ever decelerated</source>
        <translation>kein Kolben wird je verzögert</translation>
    </message>
    <message>
        <source>only engines with tuned pipes take that in without boost</source>
        <translation>das saugen ohne Aufladung nur Motoren mit abgestimmten Rohren an</translation>
    </message>
    <message>
        <source>p_supply/p_amb, cooled to ambient temperature</source>
        <translation>p_L/p_amb, auf Umgebungstemperatur gekühlt</translation>
    </message>
    <message>
        <source>the segment is a dwell; it must be a rise or return</source>
        <translation>Der Abschnitt ist eine Rast, verlangt ist ein Anstieg oder Rückgang</translation>
    </message>
    <message>
        <source>speed of peak power</source>
        <translation>Drehzahl der höchsten Leistung</translation>
    </message>
    <message>
        <source>speed of peak torque</source>
        <translation>Drehzahl des höchsten Drehmoments</translation>
    </message>
    <message>
        <source>the engine delivers no brake power</source>
        <translation>der Motor gibt keine effektive Leistung ab</translation>
    </message>
    <message>
        <source>the gas left the range of the model at the last port closing</source>
        <translation>Das Gas verließ beim Schließen des letzten Schlitzes den Gültigkeitsbereich des Modells</translation>
    </message>
    <message>
        <source>the piston would be struck; give neighbouring segments equal slope where they meet</source>
        <translation>Der Kolben bekäme einen Schlag; benachbarte Abschnitte mit gleicher Steigung aneinanderfügen</translation>
    </message>
    <message>
        <source>the result is an array over the revolution, not a number</source>
        <translation>Das Ergebnis ist eine Reihe über die Umdrehung, keine Zahl</translation>
    </message>
    <message>
        <source>use a more viscous oil or smoother surfaces, or raise the speed</source>
        <translation>zäheres Öl, glattere Oberflächen oder höhere Drehzahl</translation>
    </message>
    <message>
        <source>usual for most laws and harmless at moderate speed</source>
        <translation>bei den meisten Gesetzen üblich und bei mäßiger Drehzahl harmlos</translation>
    </message>
    <message>
        <source>whether the charge required is possible, and what it costs</source>
        <translation>ob die erforderliche Ladung zu haben ist, und was sie kostet</translation>
    </message>
    <message>
        <source>whether the supply power has still to be deducted</source>
        <translation>ob die Leistung der Luftversorgung noch abzuziehen ist</translation>
    </message>
    <message>
        <source>whether peak torque times its speed exceeds peak power</source>
        <translation>ob höchstes Drehmoment mal seiner Drehzahl die Höchstleistung übersteigt</translation>
    </message>
    <message>
        <source>Mass flow of the blower times the mean specific work of compression.</source>
        <translation>Massenstrom des Gebläses mal mittlere spezifische Verdichtungsarbeit.</translation>
    </message>
    <message>
        <source>Combustion starts</source>
        <translation>Brennbeginn</translation>
    </message>
    <message>
        <source>Cycle degrees are c times shaft degrees, counted from inner dead centre.</source>
        <translation>Grad des Arbeitsspiels sind c-mal Grad der Welle, ab dem inneren Totpunkt gezählt.</translation>
    </message>
    <message>
        <source>Definition: shaft angle between consecutive firings.</source>
        <translation>Definition: Wellenwinkel zwischen aufeinanderfolgenden Zündungen.</translation>
    </message>
    <message>
        <source>Definition: the maximum over the revolution.</source>
        <translation>Definition: der größte Wert über die Umdrehung.</translation>
    </message>
    <message>
        <source>Depth divided by the short half-axis</source>
        <translation>Tiefe durch kurze Halbachse</translation>
    </message>
    <message>
        <source>Distance between the starts of combustion</source>
        <translation>Abstand der Brennbeginne</translation>
    </message>
    <message>
        <source>Energy method: the load takes the mean torque; the difference accelerates and decelerates the shaft (Norton, Design of Machinery, flywheels).</source>
        <translation>Energieverfahren: Die Last nimmt das mittlere Drehmoment auf, die Differenz beschleunigt und verzögert die Welle (Norton, Design of Machinery, Schwungräder).</translation>
    </message>
    <message>
        <source>Energy fluctuation divided by the coefficient of fluctuation and the square of the speed (Norton, Design of Machinery, flywheels).</source>
        <translation>Energieschwankung, geteilt durch den Ungleichförmigkeitsgrad und das Quadrat der Drehzahl (Norton, Design of Machinery, Schwungräder).</translation>
    </message>
    <message>
        <source>Evaluations within steps</source>
        <translation>Auswertungen innerhalb der Schritte</translation>
    </message>
    <message>
        <source>Evaluations at events</source>
        <translation>Auswertungen an Ereignissen</translation>
    </message>
    <message>
        <source>Exhaust lead at the middle place</source>
        <translation>Auslassvoreilung an der mittleren Stelle</translation>
    </message>
    <message>
        <source>First law for the contents of the chamber over one cycle.</source>
        <translation>Erster Hauptsatz für den Inhalt des Brennraums über ein Arbeitsspiel.</translation>
    </message>
    <message>
        <source>Fresh gas per cycle times its mean enthalpy; 1 mg·kJ/kg is 1 mJ.</source>
        <translation>Frischgas je Arbeitsspiel mal seiner mittleren Enthalpie; 1 mg·kJ/kg ist 1 mJ.</translation>
    </message>
    <message>
        <source>Helix at half the pitch radius: friction across it less the force along it, minimum over the revolution.</source>
        <translation>Steilverzahnung auf dem halben Teilkreisradius: Reibung quer abzüglich der Kraft längs, kleinster Wert der Umdrehung.</translation>
    </message>
    <message>
        <source>Fuel per cycle times its lower heating value; 1 mg·MJ/kg is 1 J.</source>
        <translation>Kraftstoff je Arbeitsspiel mal seinem unteren Heizwert; 1 mg·MJ/kg ist 1 J.</translation>
    </message>
    <message>
        <source>Mean fuel mass per cycle</source>
        <translation>Mittlere Kraftstoffmasse je Arbeitsspiel</translation>
    </message>
    <message>
        <source>Maximum of all cycles of a pattern.</source>
        <translation>Größter Wert aller Arbeitsspiele einer Kurve.</translation>
    </message>
    <message>
        <source>Correlation of both accelerations</source>
        <translation>Korrelation beider Beschleunigungen</translation>
    </message>
    <message>
        <source>Long axis of the contact ellipse divided by the short one</source>
        <translation>Lange Achse der Kontaktellipse, geteilt durch die kurze</translation>
    </message>
    <message>
        <source>Mass flow times the specific work of compression; none below ambient pressure.</source>
        <translation>Massenstrom mal spezifische Verdichtungsarbeit; keine unter Umgebungsdruck.</translation>
    </message>
    <message>
        <source>Mean over the revolution.</source>
        <translation>Mittel über die Umdrehung.</translation>
    </message>
    <message>
        <source>Neither the charge required nor a mean effective pressure can be computed.</source>
        <translation>Weder die nötige Ladung noch ein Mitteldruck lässt sich berechnen.</translation>
    </message>
    <message>
        <source>90 % burnt</source>
        <translation>90 % verbrannt</translation>
    </message>
    <message>
        <source>No fuel burns: the residual is a share of the heat and work exchanged.</source>
        <translation>Es verbrennt kein Kraftstoff: Der Restfehler ist ein Anteil an umgesetzter Wärme und Arbeit.</translation>
    </message>
    <message>
        <source>Pitting safety factor (nominal)</source>
        <translation>Grübchensicherheit (Nennwert)</translation>
    </message>
    <message>
        <source>Nothing is delivered, so nothing is trapped.</source>
        <translation>Es wird nichts geliefert, also nichts eingeschlossen.</translation>
    </message>
    <message>
        <source>Of the cycle that comes closest to knock.</source>
        <translation>Des Arbeitsspiels, das dem Klopfen am nächsten kommt.</translation>
    </message>
    <message>
        <source>Of the cycle with the largest residual.</source>
        <translation>Des Arbeitsspiels mit dem größten Restfehler.</translation>
    </message>
    <message>
        <source>Cycles that did not repeat their state</source>
        <translation>Arbeitsspiele, die ihren Zustand nicht wiederholten</translation>
    </message>
    <message>
        <source>Power or torque, speed, displacement and cycles per revolution; or the supply pressure.</source>
        <translation>Leistung oder Drehmoment, Drehzahl, Hubraum und Arbeitsspiele je Umdrehung; oder der Ladedruck.</translation>
    </message>
    <message>
        <source>Supply pressure at the inlet ports</source>
        <translation>Ladedruck an den Einlassschlitzen</translation>
    </message>
    <message>
        <source>Found by search; a neighbouring start of combustion gives no cycle to compare with.</source>
        <translation>Durch Suche gefunden; ein benachbarter Brennbeginn ergibt kein Arbeitsspiel zum Vergleich.</translation>
    </message>
    <message>
        <source>Temperature of the unburnt gas</source>
        <translation>Temperatur des Unverbrannten</translation>
    </message>
    <message>
        <source>Supply temperature at the inlet ports</source>
        <translation>Zulufttemperatur an den Einlassschlitzen</translation>
    </message>
    <message>
        <source>The brake thermal efficiency behind this fuel consumption</source>
        <translation>Der effektive Wirkungsgrad hinter diesem Verbrauch</translation>
    </message>
    <message>
        <source>The walls of the design are adiabatic.</source>
        <translation>Die Wände des Entwurfs sind adiabat.</translation>
    </message>
    <message>
        <source>The design says whether supply power is counted.</source>
        <translation>Der Entwurf legt fest, ob die Leistung der Luftversorgung eingerechnet wird.</translation>
    </message>
    <message>
        <source>Peak torque and peak power lie within %1 % of each other in speed, which happens only where a governor cuts in.</source>
        <translation>Höchstes Drehmoment und Höchstleistung liegen in der Drehzahl innerhalb von %1 % beieinander; das gibt es nur, wo ein Regler eingreift.</translation>
    </message>
    <message>
        <source>The cycle that repeats its initial state is the solution, and the last one computed.</source>
        <translation>Das Arbeitsspiel, das seinen Anfangszustand wiederholt, ist die Lösung und das letzte gerechnete.</translation>
    </message>
    <message>
        <source>Mean torque lost times 2π.</source>
        <translation>Mittleres verlorenes Drehmoment mal 2π.</translation>
    </message>
    <message>
        <source>Torque at peak power would be close to peak torque: either the curve is flat up to there, or a governor cuts in. The speed of peak torque would decide.</source>
        <translation>Das Drehmoment bei Höchstleistung läge nahe am höchsten: Entweder ist die Kurve bis dahin flach, oder ein Regler greift ein. Die Drehzahl des höchsten Drehmoments würde es entscheiden.</translation>
    </message>
    <message>
        <source>Vertex of the parabola through the indicated mean effective pressures of three starts of combustion.</source>
        <translation>Scheitel der Parabel durch die indizierten Mitteldrücke dreier Brennbeginne.</translation>
    </message>
    <message>
        <source>Vertex of the parabola through the correlation of both accelerations at three leads, no farther than the outer two: the closer to 1, the smaller the residual force.</source>
        <translation>Scheitel der Parabel durch die Korrelation beider Beschleunigungen bei drei Voreilungen, höchstens bis zu den äußeren beiden: je näher an 1, desto kleiner die verbleibende Kraft.</translation>
    </message>
    <message>
        <source>Gas pushed back into the inlet returns with its enthalpy and cancels from the sum.</source>
        <translation>In den Einlass zurückgeschobenes Gas kehrt mit seiner Enthalpie zurück und hebt sich in der Summe auf.</translation>
    </message>
    <message>
        <source>Work exchanged</source>
        <translation>Umgesetzte Arbeit</translation>
    </message>
    <message>
        <source>Mean work per cycle times the cycles per revolution.</source>
        <translation>Mittlere Arbeit je Arbeitsspiel mal Arbeitsspiele je Umdrehung.</translation>
    </message>
    <message>
        <source>Work per revolution: gas work less friction work must equal shaft work.</source>
        <translation>Arbeit je Umdrehung: Gasarbeit minus Reibarbeit muss gleich der Wellenarbeit sein.</translation>
    </message>
    <message>
        <source>Specific work of compressing the supply</source>
        <translation>Spezifische Verdichtungsarbeit der Luftversorgung</translation>
    </message>
    <message>
        <source>engines reach that without boost</source>
        <translation>Motoren ohne Aufladung erreichen das</translation>
    </message>
    <message>
        <source>at port events, start and end of combustion, kinks of the motion and flow reversals</source>
        <translation>bei Schlitzereignissen, Beginn und Ende der Verbrennung, Knicken der Bewegung und Strömungsumkehr</translation>
    </message>
    <message>
        <source>found by search</source>
        <translation>durch die Suche gefunden</translation>
    </message>
    <message>
        <source>more than engines reach without boost</source>
        <translation>mehr, als Motoren ohne Aufladung erreichen</translation>
    </message>
    <message>
        <source>without boost only highly tuned engines reach that</source>
        <translation>das erreichen ohne Aufladung nur hochgezüchtete Motoren</translation>
    </message>
    <message>
        <source>the last one changed it by %1 of its size; at most %2 is allowed</source>
        <translation>das letzte änderte ihn um %1 seiner Größe; höchstens %2 sind zulässig</translation>
    </message>
    <message>
        <source>too little unburnt gas is left to knock beyond it; from the Wiebe function</source>
        <translation>danach bleibt zu wenig Unverbranntes zum Klopfen; aus der Wiebe-Funktion</translation>
    </message>
    <message>
        <source>rejected steps included</source>
        <translation>verworfene Schritte eingeschlossen</translation>
    </message>
    <message>
        <source>absolute torque of every piston, integrated over the revolution</source>
        <translation>Betrag des Drehmoments jedes Kolbens, über die Umdrehung integriert</translation>
    </message>
    <message>
        <source>adiabatic walls</source>
        <translation>adiabate Wände</translation>
    </message>
    <message>
        <source>A torque is judged by its mean effective pressure: torque, displacement and cycles per revolution are not all given.</source>
        <translation>Ein Drehmoment wird an seinem Mitteldruck gemessen: Drehmoment, Hubraum und Arbeitsspiele je Umdrehung sind nicht alle angegeben.</translation>
    </message>
    <message>
        <source>An even firing interval is 360° divided by the power strokes per revolution, which are not given.</source>
        <translation>Ein gleichmäßiger Zündabstand ist 360° geteilt durch die Arbeitshübe je Umdrehung, und die sind nicht angegeben.</translation>
    </message>
    <message>
        <source>Another number of lobes or of power strokes.</source>
        <translation>Eine andere Anzahl von Nocken oder Arbeitshüben.</translation>
    </message>
    <message>
        <source>Another number of power strokes per revolution, or supply pressure.</source>
        <translation>Eine andere Anzahl von Arbeitshüben je Umdrehung oder ein anderer Ladedruck.</translation>
    </message>
    <message>
        <source>Crank radius / rod length (r/l)</source>
        <translation>Kurbelradius / Pleuellänge (r/l)</translation>
    </message>
    <message>
        <source>No figure is given with which the size could be compared.</source>
        <translation>Keine Angabe, mit der sich die Größe vergleichen ließe.</translation>
    </message>
    <message>
        <source>Overall.</source>
        <translation>Über alles.</translation>
    </message>
    <message>
        <source>The interval, and the power strokes per revolution.</source>
        <translation>Der Abstand und die Arbeitshübe je Umdrehung.</translation>
    </message>
    <message>
        <source>Torque, displacement, and power strokes per revolution.</source>
        <translation>Drehmoment, Hubraum und Arbeitshübe je Umdrehung.</translation>
    </message>
    <message>
        <source>the fit ends at %1 rpm: beyond it only a range can be given</source>
        <translation>die Näherung endet bei %1/min: Darüber lässt sich nur ein Bereich angeben</translation>
    </message>
    <message>
        <source>the rows cover %1; they must cover at most the period of %2</source>
        <translation>Die Zeilen decken %1 ab, höchstens die Periode von %2 ist erlaubt</translation>
    </message>
    <message>
        <source>the spans add up to %1; they must add up to %2 (360° divided by the number of lobes)</source>
        <translation>Die Abschnittswinkel ergeben zusammen %1, verlangt sind %2 (360° geteilt durch die Zahl der Nocken)</translation>
    </message>
    <message>
        <source>combustion starts at a cycle angle of %1; it must start between the last port closing at %2 and the first opening at %3</source>
        <translation>Die Verbrennung beginnt beim Arbeitsspielwinkel %1; sie muss zwischen dem letzten Schließen bei %2 und dem ersten Öffnen bei %3 beginnen</translation>
    </message>
    <message>
        <source>the gas left the range of the model at a shaft angle of %1: %2, %3 in the chamber</source>
        <translation>Das Gas verließ beim Wellenwinkel %1 den Gültigkeitsbereich des Modells: %2, %3 im Brennraum</translation>
    </message>
    <message>
        <source>the gas equations could not be integrated beyond a shaft angle of %1: the steps became too small</source>
        <translation>Die Gasgleichungen ließen sich nicht über den Wellenwinkel %1 hinaus integrieren: Die Schritte wurden zu klein</translation>
    </message>
    <message>
        <source>the bridge between neighbouring ports is %1; it must be positive: the ports do not fit around the bore</source>
        <translation>Der Steg zwischen benachbarten Schlitzen ist %1; er muss positiv sein: Die Schlitze passen nicht um die Bohrung</translation>
    </message>
    <message>
        <source>the rows cover %1; they must cover one repetition, 360° divided by the number of lobes, or the number of lobes must be given</source>
        <translation>Die Zeilen decken %1 ab; sie müssen eine Wiederholung abdecken, eine Umdrehung geteilt durch die Nocken, oder die Zahl der Nocken muss angegeben sein</translation>
    </message>
    <message>
        <source>n: speed at which the design is computed. Default 1500 rpm.</source>
        <translation>n: Drehzahl, bei der der Entwurf gerechnet wird. Vorgabe 1500/min.</translation>
    </message>
    <message>
        <source>m: larger values release the heat later within the combustion duration; 2 is common practice.</source>
        <translation>m: Größere Werte setzen die Wärme später innerhalb der Brenndauer frei; 2 ist üblich.</translation>
    </message>
    <message>
        <source>Constant pressure upstream of the inlet ports. Default: ambient, 1 bar.</source>
        <translation>Gleichbleibender Druck vor den Einlassschlitzen. Vorgabe: Umgebung, 1 bar.</translation>
    </message>
    <message>
        <source>Temperature upstream of the inlet ports. Default 298.15 K.</source>
        <translation>Temperatur vor den Einlassschlitzen. Vorgabe 298,15 K.</translation>
    </message>
    <message>
        <source>Volume swept per revolution of the blower. Default 500 cm³ (own estimate).</source>
        <translation>Fördervolumen je Umdrehung des Gebläses. Vorgabe 500 cm³ (eigene Schätzung).</translation>
    </message>
    <message>
        <source>L: axial travel of the exhaust track per revolution of the adjuster, outward positive when turned forward. 0 is a pure phase change.</source>
        <translation>L: axialer Weg der Auslassbahn für eine Umdrehung des Verstellers, nach außen positiv beim Vordrehen. 0 ist reine Phasenverstellung.</translation>
    </message>
    <message>
        <source>Per cylinder. Default 2.</source>
        <translation>Je Zylinder. Vorgabe 2.</translation>
    </message>
    <message>
        <source>Largest lift divided by inner seat diameter; the lift follows a squared sine. Default 0.25.</source>
        <translation>Größter Ventilhub, geteilt durch inneren Sitzdurchmesser; der Hub folgt einem Sinusquadrat. Vorgabe 0,25.</translation>
    </message>
    <message>
        <source>C_d, referred to the curtain or seat area, whichever is smaller. Default 0.65.</source>
        <translation>C_d auf Spalt- oder Sitzfläche, je nachdem, welche kleiner ist. Vorgabe 0,65.</translation>
    </message>
    <message>
        <source>Of one piston, per shaft revolution: the number of lobes of a cam track; 1 for a crank.</source>
        <translation>Eines Kolbens, hin und her, je Wellenumdrehung: die Nocken einer Kurvenbahn; 1 bei einer Kurbel.</translation>
    </message>
    <message>
        <source>Air divided by stoichiometric air; 1 is assumed where it is not given.</source>
        <translation>Luft durch stöchiometrische Luft; 1 wird angenommen, wo nichts angegeben ist.</translation>
    </message>
    <message>
        <source>Of the air to which the power refers; 0 where it is not given.</source>
        <translation>Der Luft, auf die sich die Leistung bezieht; 0, wo nichts angegeben ist.</translation>
    </message>
    <message>
        <source>The exhaust closes %1 after the inlet, so fresh gas can still escape: increase the exhaust lead or lower the exhaust ports.</source>
        <translation>Der Auslass schließt %1 nach dem Einlass, sodass Frischgas noch entweichen kann: Auslassvoreilung vergrößern oder Auslassschlitze niedriger machen.</translation>
    </message>
    <message>
        <source>Supply power not counted: %1 would be required to fill the reservoir; every brake value is too high by that amount.</source>
        <translation>Luftversorgung nicht eingerechnet: %1 wären nötig, um den Speicher zu füllen; um so viel ist jeder effektive Wert zu hoch.</translation>
    </message>
    <message>
        <source>The inlet opens %1 before the exhaust, so there is no blowdown and burnt gas blows back into the inlet: move the exhaust edge further inward, the inlet edge further outward, or increase the exhaust lead.</source>
        <translation>Der Einlass öffnet %1 vor dem Auslass; es gibt keinen Vorauslass, und Verbranntes bläst in den Einlass zurück: Auslasskante weiter nach innen, Einlasskante weiter nach außen legen oder Auslassvoreilung vergrößern.</translation>
    </message>
    <message>
        <source>use a roller radius below %1</source>
        <translation>Rollenradius unter %1 wählen</translation>
    </message>
    <message>
        <source>%1 is %2 times as long as the loaded width, so the roller&apos;s edges carry more than shown: use a smaller crown radius or a wider roller.</source>
        <translation>%1: %2-mal so lang wie die tragende Breite, sodass die Kanten der Rolle mehr tragen als gezeigt. Kleineren Balligkeitsradius oder breitere Rolle wählen.</translation>
    </message>
    <message>
        <source>Margin of the guide against jamming</source>
        <translation>Sicherheit der Führung gegen Klemmen</translation>
    </message>
    <message>
        <source>Port bridge</source>
        <translation>Steg zwischen Schlitzen</translation>
    </message>
    <message>
        <source>Moment of inertia for a speed fluctuation of %1</source>
        <translation>Trägheitsmoment für einen Ungleichförmigkeitsgrad von %1</translation>
    </message>
    <message>
        <source>correlation over the revolution, exhaust lead %1</source>
        <translation>Korrelation über die Umdrehung, Auslassvoreilung %1</translation>
    </message>
    <message>
        <source>same engine, combustion from %1 of the cycle</source>
        <translation>derselbe Motor, Verbrennung ab %1 des Arbeitsspiels</translation>
    </message>
    <message>
        <source>Mass flow times its enthalpy, integrated over the revolution; 1 g/s·kJ/kg is 1 W, and the shaft turns 6·n degrees per second.</source>
        <translation>Massenstrom mal seiner Enthalpie, über die Umdrehung integriert; 1 g/s·kJ/kg ist 1 W, und die Welle dreht 6·n Grad je Sekunde.</translation>
    </message>
    <message>
        <source>The coefficient is a column; the shaft turns 6·n degrees per second.</source>
        <translation>Der Koeffizient ist eine Spalte; die Welle dreht 6·n Grad je Sekunde.</translation>
    </message>
    <message>
        <source>Heywood, § 2.2, with c reciprocations per revolution instead of one.</source>
        <translation>Heywood, § 2.2, mit c Doppelhüben je Umdrehung statt einem.</translation>
    </message>
    <message>
        <source>Minimum over the revolution; Dowson 1968 or Hamrock and Dowson 1977.</source>
        <translation>Kleinster Wert über die Umdrehung; Dowson 1968 oder Hamrock und Dowson 1977.</translation>
    </message>
    <message>
        <source>ISO 281: power mean with exponent 10/3 over the revolutions of the roller.</source>
        <translation>ISO 281: Potenzmittel mit dem Exponenten 10/3 über die Umdrehungen der Rolle.</translation>
    </message>
    <message>
        <source>ISO 76: 4000 MPa under the static rating; the stress is proportional to the root of the load.</source>
        <translation>ISO 76: 4000 MPa bei der statischen Tragzahl; die Pressung geht mit der Wurzel der Last.</translation>
    </message>
    <message>
        <source>Heywood, Internal Combustion Engine Fundamentals, § 2.7, with c cycles per revolution; 1 bar·cm³ is 0.1 J.</source>
        <translation>Heywood, Internal Combustion Engine Fundamentals, § 2.7, mit c Arbeitsspielen je Umdrehung; 1 bar·cm³ ist 0,1 J.</translation>
    </message>
    <message>
        <source>2·π·torque divided by the volume swept per revolution; 1 N·m/cm³ is 10 bar.</source>
        <translation>2·π·Drehmoment, geteilt durch das je Umdrehung verdrängte Volumen; 1 N·m/cm³ ist 10 bar.</translation>
    </message>
    <message>
        <source>Heywood, § 2.7: work per cycle divided by the swept volume, gas exchange included.</source>
        <translation>Heywood, § 2.7: Arbeit eines Arbeitsspiels durch das Hubvolumen, Ladungswechsel eingeschlossen.</translation>
    </message>
    <message>
        <source>Heywood, § 2.8: work divided by the lower heating value of the fuel.</source>
        <translation>Heywood, § 2.8: Arbeit durch den unteren Heizwert des Kraftstoffs.</translation>
    </message>
    <message>
        <source>The shaft turns 0.006·n degrees per millisecond.</source>
        <translation>Die Welle dreht in einer Millisekunde um 0,006·n Grad.</translation>
    </message>
    <message>
        <source>c = reciprocations per revolution/2, four-stroke</source>
        <translation>c = Doppelhübe je Umdrehung/2, Viertakt</translation>
    </message>
    <message>
        <source>Excess-air ratio λ = 1: none is given; a lean engine needs more air in proportion.</source>
        <translation>Luftverhältnis λ = 1: Keines ist angegeben; ein magerer Motor braucht im Verhältnis mehr Luft.</translation>
    </message>
    <message>
        <source>Brake thermal efficiency 30 %: neither efficiency nor fuel consumption is given [own estimate].</source>
        <translation>Effektiver Wirkungsgrad 30 %: Weder Wirkungsgrad noch Kraftstoffverbrauch sind angegeben [eigene Schätzung].</translation>
    </message>
    <message>
        <source>Strokes per cycle = 2·reciprocations/cycles, per chamber and revolution: reciprocations per revolution, power strokes per revolution and chambers are not all given.</source>
        <translation>Hübe je Arbeitsspiel = 2·Doppelhübe/Arbeitsspiele, je Brennraum und Umdrehung: Nicht alle von Doppelhüben je Umdrehung, Arbeitshüben je Umdrehung und Brennräumen sind angegeben.</translation>
    </message>
    <message>
        <source>The supply is above ambient pressure.</source>
        <translation>Der Ladedruck liegt über dem Umgebungsdruck.</translation>
    </message>
    <message>
        <source>The supply is not above ambient pressure.</source>
        <translation>Der Ladedruck liegt nicht über dem Umgebungsdruck.</translation>
    </message>
    <message>
        <source>at least this: the speed is only a bound</source>
        <translation>mindestens dies: Die Drehzahl ist nur eine Schranke</translation>
    </message>
    <message>
        <source>at most this: the speed is only a bound</source>
        <translation>höchstens dies: Die Drehzahl ist nur eine Schranke</translation>
    </message>
    <message>
        <source>%1 Per cycle and displacement it is %2 … %3 times.</source>
        <translation>%1 Je Arbeitsspiel und Hubraum ist es das %2 … %3-fache.</translation>
    </message>
    <message>
        <source>The fuel contains less energy than the work claimed</source>
        <translation>Der Kraftstoff enthält weniger Energie als die behauptete Arbeit</translation>
    </message>
    <message>
        <source>Efficiency and fuel consumption contradict each other</source>
        <translation>Wirkungsgrad und Kraftstoffverbrauch widersprechen sich</translation>
    </message>
    <message>
        <source>Definition: 1 where the speed is between its limits for this pressure trace.</source>
        <translation>Definition: 1, wo die Drehzahl zwischen ihren Grenzen für diesen Druckverlauf liegt.</translation>
    </message>
    <message>
        <source>Overall, of the whole engine.</source>
        <translation>Des Motors, über alles.</translation>
    </message>
    <message>
        <source>by supply</source>
        <translation>nach der Aufladung</translation>
    </message>
    <message>
        <source>half the charge</source>
        <translation>halbe Ladung</translation>
    </message>
    <message>
        <source>own value</source>
        <translation>eigener Wert</translation>
    </message>
    <message>
        <source>speed, stroke and lobes give another value; they were used</source>
        <translation>Drehzahl, Kolbenhub und Nocken ergeben eine andere; sie wurden übernommen</translation>
    </message>
    <message>
        <source>such that the engine delivers its power at its speed; otherwise usual for its supply</source>
        <translation>so, dass der Motor seine Leistung bei seiner Drehzahl erreicht; sonst üblich für seine Aufladung</translation>
    </message>
    <message>
        <source>the roller projects beyond the bore</source>
        <translation>die Rolle steht über die Bohrung hinaus</translation>
    </message>
    <message>
        <source>%1 cylinders of %2 bore and twice %3 stroke have %4; bore, stroke and cylinders were used</source>
        <translation>%1 Zylinder mit %2 Bohrung und zweimal %3 Kolbenhub haben %4; übernommen wurden Bohrung, Kolbenhub und Zylinderzahl</translation>
    </message>
    <message>
        <source>n = P/(2π·x·T), x: torque at peak power divided by peak torque</source>
        <translation>n = P/(2π·x·T), x: Drehmoment bei höchster Leistung durch höchstes Drehmoment</translation>
    </message>
    <message>
        <source>%1 evenly spaced power strokes per revolution fire every %2 of the shaft.</source>
        <translation>%1 gleichmäßig verteilte Arbeitshübe je Umdrehung zünden alle %2 der Welle.</translation>
    </message>
    <message>
        <source>Ratio of stresses; allowable stress after ISO 6336-5 unless given.</source>
        <translation>Verhältnis der Spannungen; zulässige Spannung nach ISO 6336-5, sofern nicht angegeben.</translation>
    </message>
    <message>
        <source>Pistons whose undersides change the volume of the pump chamber; a one-sided engine has only one.</source>
        <translation>Kolben, deren Unterseiten das Volumen der Pumpenkammer ändern; ein einseitiger Motor hat nur einen.</translation>
    </message>
    <message>
        <source>One crankcase for all cylinders</source>
        <translation>Ein Kurbelraum für alle Zylinder</translation>
    </message>
    <message>
        <source>No: a pump chamber for each cylinder. Yes: all pistons move in one crankcase, which pumps only the volume that their strokes do not cancel.</source>
        <translation>Nein: eine Pumpenkammer je Zylinder. Ja: Alle Kolben bewegen sich in einem Kurbelraum, der nur das Volumen pumpt, das sich aus ihren Hüben nicht aufhebt.</translation>
    </message>
    <message>
        <source>One piston uncovers both rows of ports, so the exhaust closes %1 after the inlet, by as much as it opens before it: this follows from the arrangement and is no fault of the design. A second piston that leads, or a valve in the exhaust, would close it earlier.</source>
        <translation>Ein Kolben legt beide Schlitzreihen frei; darum schließt der Auslass %1 nach dem Einlass, um ebenso viel, wie er vor ihm öffnet: Das liegt an der Bauform und ist kein Mangel des Entwurfs. Ein zweiter, voreilender Kolben oder ein Schieber im Auslass würde ihn früher schließen.</translation>
    </message>
    <message>
        <source>Fuel lost through the exhaust, share of the fuel supplied</source>
        <translation>Durch den Auslass verlorener Kraftstoff, Anteil am zugeführten</translation>
    </message>
    <message>
        <source>Work of a pump chamber on its pistons per cycle (negative: absorbed)</source>
        <translation>Arbeit einer Pumpenkammer an ihren Kolben, je Arbeitsspiel (negativ: aufgenommen)</translation>
    </message>
    <message>
        <source>This is not the summary of a part of a study over unknowns.</source>
        <translation>Dies ist nicht die Zusammenfassung eines Teils einer Studie über Unbekannte.</translation>
    </message>
    <message>
        <source>A table of samples belongs to another design or seed.</source>
        <translation>Eine Stichprobentabelle gehört zu einem anderen Entwurf oder Startwert.</translation>
    </message>
    <message>
        <source>No published figure can be compared with the results of the engines.</source>
        <translation>Keine veröffentlichte Angabe lässt sich mit den Ergebnissen der Motoren vergleichen.</translation>
    </message>
    <message>
        <source>Work per cycle that the pump takes from the backs of the pistons, times the cycles.</source>
        <translation>Arbeit je Arbeitsspiel, die die Pumpe den Unterseiten der Kolben entnimmt, mal Arbeitsspiele.</translation>
    </message>
    <message>
        <source>Definition: largest volume of the pump chamber divided by the smallest.</source>
        <translation>Definition: größtes Volumen der Pumpenkammer, geteilt durch das kleinste.</translation>
    </message>
    <message>
        <source>Definition: share of the fuel supplied that does not remain in the chamber.</source>
        <translation>Definition: Anteil des zugeführten Kraftstoffs, der nicht im Brennraum bleibt.</translation>
    </message>
    <message>
        <source>Mean fuel mass supplied per cycle</source>
        <translation>Mittlere zugeführte Kraftstoffmasse je Arbeitsspiel</translation>
    </message>
    <message>
        <source>Mean work per cycle, less that of the pump, times the cycles per revolution.</source>
        <translation>Mittlere Arbeit je Arbeitsspiel, abzüglich der der Pumpe, mal Arbeitsspiele je Umdrehung.</translation>
    </message>
    <message>
        <source>Work divided by the lower heating value of the fuel supplied, lost fuel included.</source>
        <translation>Arbeit, geteilt durch den unteren Heizwert des zugeführten Kraftstoffs, verlorener eingeschlossen.</translation>
    </message>
    <message>
        <source>Heat per cycle divided by the lower heating value, lost fuel included, times the cycles per hour.</source>
        <translation>Wärme je Arbeitsspiel, geteilt durch den unteren Heizwert, verlorener Kraftstoff eingeschlossen, mal Arbeitsspiele je Stunde.</translation>
    </message>
    <message>
        <source>The search compares 180 positions per pattern. Where accelerations jump, the lead is uncertain by up to half of that step.</source>
        <translation>Die Suche vergleicht 180 Stellungen je Kurve. Wo Beschleunigungen springen, ist die Voreilung um bis zu einen halben Schritt unsicher.</translation>
    </message>
    <message>
        <source>What drives the compressor wheel and so provides its power.</source>
        <translation>Was das Verdichterrad antreibt und seine Leistung aufbringt.</translation>
    </message>
    <message>
        <source>A blower downstream of the wheel delivers air before the wheel is up to speed: it starts a turbocharged engine.</source>
        <translation>Ein Gebläse hinter dem Rad liefert Luft, bevor das Rad auf Drehzahl ist: So läuft ein Motor mit Abgasturbolader an.</translation>
    </message>
    <message>
        <source>the turbine drives the compressor wheel beyond a tip speed of %1: enlarge the nozzle</source>
        <translation>Die Turbine treibt das Verdichterrad über %1 Umfangsgeschwindigkeit: Düse vergrößern</translation>
    </message>
    <message>
        <source>The compressor surges at %1 of the shaft, its wheel at %2: flow coefficient %3, surge below %4. Use a smaller or slower wheel or larger ports. The results are means of a flow that pulsates.</source>
        <translation>Der Verdichter pumpt bei %1 der Welle, sein Rad bei %2: Durchflusszahl %3, Pumpgrenze bei %4. Kleineres oder langsameres Rad oder größere Schlitze wählen. Die Ergebnisse sind Mittelwerte einer pulsierenden Strömung.</translation>
    </message>
    <message>
        <source>use a larger or faster wheel; this one is choked</source>
        <translation>größeres oder schnelleres Rad; dieses ist an der Stopfgrenze</translation>
    </message>
    <message>
        <source>At %1 of the shaft the turbocharger does not sustain itself: its wheel idles, and the blower alone delivers the air. A smaller nozzle or a hotter exhaust lowers that speed.</source>
        <translation>Bei %1 der Welle trägt sich der Abgasturbolader nicht selbst: Sein Rad läuft leer, und das Gebläse allein liefert die Luft. Eine kleinere Düse oder heißeres Abgas senkt diese Drehzahl.</translation>
    </message>
    <message>
        <source>The exhaust sustains the wheel</source>
        <translation>Das Abgas hält das Rad in Gang</translation>
    </message>
    <message>
        <source>Power of the turbine divided by that of an ideal one in the mean state</source>
        <translation>Leistung der Turbine durch die einer idealen im mittleren Zustand</translation>
    </message>
    <message>
        <source>Mass flow times the specific work of compression; 1 g/s·kJ/kg is 1 W.</source>
        <translation>Massenstrom mal spezifische Verdichtungsarbeit; 1 g/s·kJ/kg ist 1 W.</translation>
    </message>
    <message>
        <source>Speed at which the turbine covers compressor and bearings: ∮P_t·η_m = ∮P_c.</source>
        <translation>Drehzahl, bei der die Turbine Verdichter und Lager deckt: ∮P_t·η_m = ∮P_c.</translation>
    </message>
    <message>
        <source>Definition: mass flow divided by inlet density, tip speed and diameter squared (Dixon and Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, ch. 2).</source>
        <translation>Definition: Massenstrom durch Dichte am Eintritt, Umfangsgeschwindigkeit und Durchmesser zum Quadrat (Dixon und Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, Kap. 2).</translation>
    </message>
    <message>
        <source>In the steady state the flow through the ports equals that of the compressor.</source>
        <translation>Im stationären Zustand ist der Durchfluss der Schlitze gleich dem des Verdichters.</translation>
    </message>
    <message>
        <source>Isentropic enthalpy rise ψ·u² from the ambient state.</source>
        <translation>Isentrope Enthalpieerhöhung ψ·u² vom Umgebungszustand aus.</translation>
    </message>
    <message>
        <source>The exhaust drives the wheel; no shaft power is taken.</source>
        <translation>Das Abgas treibt das Rad; der Welle wird keine Leistung entnommen.</translation>
    </message>
    <message>
        <source>The exhaust drives the wheel; the power of everything on the shaft is always deducted.</source>
        <translation>Das Abgas treibt das Rad; die Leistung von allem an der Welle wird immer abgezogen.</translation>
    </message>
    <message>
        <source>At constant wheel speed the turbine power less bearing losses drives the compressor.</source>
        <translation>Bei konstanter Läuferdrehzahl treibt die Turbinenleistung abzüglich der Lagerverluste den Verdichter.</translation>
    </message>
    <message>
        <source>Mean pressure upstream of the turbine divided by that downstream.</source>
        <translation>Mittlerer Druck vor der Turbine, geteilt durch den dahinter.</translation>
    </message>
    <message>
        <source>Power divided by that of an isentropic expansion of the mean flow; pulses can raise it.</source>
        <translation>Leistung durch die einer isentropen Entspannung des mittleren Durchflusses; Druckstöße können sie heben.</translation>
    </message>
    <message>
        <source>A power balance of the wheel was found</source>
        <translation>Ein Leistungsgleichgewicht des Läufers wurde gefunden</translation>
    </message>
    <message>
        <source>Of the fuel supplied, %1 leaves through the exhaust ports unburnt, as hydrocarbons. Mixture pushed back through the inlet ports is taken in again and counts once. Fuel injected after the ports have closed is not lost.</source>
        <translation>Vom zugeführten Kraftstoff gehen %1 unverbrannt durch die Auslassschlitze, als Kohlenwasserstoffe. Was Zylinder durch die Einlassschlitze zurückschieben, wird wieder angesaugt und zählt einmal. Kraftstoff, der erst nach dem Schließen der Schlitze eingespritzt wird, geht nicht verloren.</translation>
    </message>
    <message>
        <source>The life of the roller bearings is not checked: the design gives no dynamic rating.</source>
        <translation>Die Lebensdauer der Rollenlager wird nicht geprüft: Der Entwurf nennt keine dynamische Tragzahl.</translation>
    </message>
    <message>
        <source>ISO 281: power mean with exponent 10/3 over the revolution.</source>
        <translation>ISO 281: Potenzmittel mit dem Exponenten 10/3 über die Umdrehung.</translation>
    </message>
    <message>
        <source>the chamber pressure is below the under-piston pressure</source>
        <translation>Der Druck im Brennraum liegt unter dem Druck unter dem Kolben</translation>
    </message>
    <message>
        <source>Heywood 1988, §13.2, motored spark-ignition engines, reciprocations in 1000 per minute (secondary value, not checked against the printed source)</source>
        <translation>Heywood 1988, §13.2, geschleppte Motoren mit Fremdzündung, Doppelhübe in 1000/min (Sekundärwert, nicht am gedruckten Original geprüft)</translation>
    </message>
    <message>
        <source>Inner seat diameter divided by bore. Default 0.36 (Heywood 1988, ch. 6; secondary value, not checked against the printed source).</source>
        <translation>Innerer Sitzdurchmesser durch Bohrung. Vorgabe 0,36 (Heywood 1988, Kap. 6; Sekundärwert, nicht am gedruckten Original geprüft).</translation>
    </message>
    <message>
        <source>Inner seat diameter divided by bore. Default 0.31 (Heywood 1988, ch. 6; secondary value, not checked against the printed source).</source>
        <translation>Innerer Sitzdurchmesser durch Bohrung. Vorgabe 0,31 (Heywood 1988, Kap. 6; Sekundärwert, nicht am gedruckten Original geprüft).</translation>
    </message>
    <message>
        <source>The further the exhaust piston runs ahead, the earlier the exhaust closes.</source>
        <translation>Je weiter der Auslasskolben voreilt, desto früher schließt der Auslass.</translation>
    </message>
    <message>
        <source>After-charge %1 of the cycle, torque %2 of the earlier value.</source>
        <translation>Nachladung %1 des Arbeitsspiels, Drehmoment %2 des früheren.</translation>
    </message>
    <message>
        <source>The track is %1 steep at most, at %2 of the shaft; there the piston is fastest, and a given force turns the shaft best.</source>
        <translation>Die Bahn ist höchstens %1 steil, bei %2 der Welle; dort ist der Kolben am schnellsten, und eine Kraft längs des Kolbens dreht die Welle am besten.</translation>
    </message>
    <message>
        <source>A slice of %1 across this bore has a volume of %2; the smallest volume is %3.</source>
        <translation>Eine Scheibe von %1 hat bei dieser Bohrung %2; das kleinste Volumen ist %3.</translation>
    </message>
    <message>
        <source>The ratio falls from %1 to %2: a small gap is a large part of the smallest volume and a small part of the trapped one.</source>
        <translation>Das Verhältnis fällt von %1 auf %2: Ein kleiner Spalt ist ein großer Teil des kleinsten Volumens und ein kleiner des eingeschlossenen.</translation>
    </message>
    <message>
        <source>If the torque stayed the same, power would grow in proportion to speed.</source>
        <translation>Bliebe das Drehmoment gleich, so wüchse die Leistung im Verhältnis der Drehzahl.</translation>
    </message>
    <message>
        <source>The ports are open for a shorter time, and friction grows.</source>
        <translation>Die Schlitze sind kürzer offen, und die Reibung wächst.</translation>
    </message>
    <message>
        <source>changed gas work per cycle</source>
        <translation>geänderte Gasarbeit je Arbeitsspiel</translation>
    </message>
    <message>
        <source>changed friction and pumping per revolution</source>
        <translation>geänderte Reibung und Ladungswechselarbeit je Umdrehung</translation>
    </message>
    <message>
        <source>It gives %1. The speed alone would make it %2; gas work per cycle and friction account for the rest.</source>
        <translation>Er leistet %1. Die Drehzahl allein ergäbe %2; den Rest machen Gasarbeit je Arbeitsspiel und Reibung aus.</translation>
    </message>
    <message>
        <source>Each lobe adds one power stroke per revolution of every cylinder.</source>
        <translation>Jeder Nocken fügt jedem Zylinder einen Arbeitshub je Umdrehung hinzu.</translation>
    </message>
    <message>
        <source>changed number of power strokes</source>
        <translation>geänderte Zahl von Arbeitshüben</translation>
    </message>
    <message>
        <source>changed time for gas exchange, heat and friction per cycle</source>
        <translation>geänderte Zeit für Ladungswechsel, Wärme und Reibung je Arbeitsspiel</translation>
    </message>
    <message>
        <source>It gives %1. The number of power strokes alone would make it %2; the lead, kept in shaft degrees, also changed the timing.</source>
        <translation>Er gibt %1. Die Zahl der Arbeitshübe allein ergäbe %2; die Voreilung, in Wellengrad, hat auch die Steuerzeiten geändert.</translation>
    </message>
    <message>
        <source>Inputs that follow the shaft speed instead of staying constant.</source>
        <translation>Eingaben, die der Wellendrehzahl folgen, statt fest zu stehen.</translation>
    </message>
    <message>
        <source>Shaft speeds of the points, ascending. Below the first and above the last the value is constant.</source>
        <translation>Wellendrehzahlen der Punkte, steigend. Unter der ersten und über der letzten bleibt der Wert stehen.</translation>
    </message>
    <message>
        <source>the speed is %1 after %2; speeds must ascend</source>
        <translation>auf %2 folgt die Drehzahl %1; Drehzahlen müssen steigen</translation>
    </message>
    <message>
        <source>Share of the revolution with the roller off its track</source>
        <translation>Anteil der Umdrehung, in dem die Rolle ihre Bahn verlässt</translation>
    </message>
    <message>
        <source>Definition: share of the revolution over which the track would have to pull.</source>
        <translation>Definition: Anteil des Winkels, in dem die Bahn ziehen müsste.</translation>
    </message>
    <message>
        <source>speeds must be positive and ascend</source>
        <translation>Drehzahlen müssen positiv sein und steigen</translation>
    </message>
    <message>
        <source>no result of a design applies to it</source>
        <translation>kein Ergebnis eines Entwurfs sagt etwas dazu</translation>
    </message>
    <message>
        <source>no band is computed for it</source>
        <translation>dafür wird kein Band berechnet</translation>
    </message>
    <message>
        <source>published numbers are only compared with each other</source>
        <translation>hier stehen nur veröffentlichte Zahlen einander gegenüber</translation>
    </message>
    <message>
        <source>no given figure shows whether the open design is this engine; chambers, lobes, displacement, bore or stroke would</source>
        <translation>keine Angabe zeigt, ob der offene Entwurf dieser Motor ist; Brennräume, Nocken, Hubraum, Bohrung oder Kolbenhub täten es</translation>
    </message>
    <message>
        <source>no arithmetic on published figures applies to it</source>
        <translation>keine Rechnung mit veröffentlichten Zahlen sagt etwas dazu</translation>
    </message>
    <message>
        <source>too few numbers are given for any computation</source>
        <translation>es fehlen Zahlen, um daraus etwas zu berechnen</translation>
    </message>
    <message>
        <source>middle of the ordinary range, lower where the rollers would not last</source>
        <translation>Mitte des üblichen Bereichs, niedriger, wo die Rollen nicht lange genug hielten</translation>
    </message>
    <message>
        <source>usual for the fuel, lower where the charge would knock</source>
        <translation>für den Kraftstoff üblich, niedriger, wo die Ladung klopfen würde</translation>
    </message>
    <message>
        <source>b such that the nominal contact stress is at most 1,200 MPa at the rated point, wider where pitting safety or bearing life require it: b ∝ σ²</source>
        <translation>b so, dass die nominelle Kontaktpressung im Nennpunkt höchstens 1200 MPa beträgt, breiter, wo Grübchensicherheit oder Lagerlebensdauer es verlangen: b ∝ σ²</translation>
    </message>
    <message>
        <source>C = c·2r·b, c = 24 N/mm²; more where the life requires it</source>
        <translation>C = c·2r·b, c = 24 N/mm²; mehr, wo die Lebensdauer es verlangt</translation>
    </message>
    <message>
        <source>8° before inner dead centre, later where the charge would knock or the peak pressure would be too high</source>
        <translation>8° vor dem inneren Totpunkt; später, wo die Ladung klopfen würde oder der Höchstdruck zu hoch wäre</translation>
    </message>
    <message>
        <source>more viscous where the film would be thinner than the roughness</source>
        <translation>zäher, wo der Schmierfilm dünner als die Rauheit wäre</translation>
    </message>
    <message>
        <source>B = √(8·P/(k·π·z·p_me·c_m)), k: pistons per cylinder</source>
        <translation>B = √(8·P/(k·π·z·p_me·c_m)), k: Kolben je Zylinder</translation>
    </message>
    <message>
        <source>V = z·(π/4)·B²·k·S, k: pistons per cylinder</source>
        <translation>V = z·(π/4)·B²·k·S, k: Kolben je Zylinder</translation>
    </message>
    <message>
        <source>B = ∛(4·V/(k·π·z·x)), k: pistons per cylinder, x: stroke of one divided by bore</source>
        <translation>B = ∛(4·V/(k·π·z·x)), k: Kolben je Zylinder, x: Kolbenhub durch Bohrung</translation>
    </message>
    <message>
        <source>Mean pressure in the plenum divided by that upstream of the wheel.</source>
        <translation>Mittlerer Druck im Sammler, geteilt durch den vor dem Rad.</translation>
    </message>
    <message>
        <source>blowdown time-area per swept volume (p_me − 1.81 bar)/8187 bar·m/s, at least 0.0002 s/m; at least 22 % of the stroke</source>
        <translation>Zeitquerschnitt des Vorauslasses je Hubvolumen (p_me − 1,81 bar)/8187 bar·m/s, mindestens 0,0002 s/m; mindestens 22 % des Kolbenhubs</translation>
    </message>
    <message>
        <source>middle of the ordinary range of this class, lower where the charge would knock</source>
        <translation>Mitte des üblichen Bereichs dieser Klasse, niedriger, wo die Ladung klopfen würde</translation>
    </message>
    <message>
        <source>time-area per swept volume of 0.009 s/m at 8 bar, in proportion to the mean effective pressure; at least 0.17 of the stroke, up to 0.26 where the charge would knock</source>
        <translation>Zeitquerschnitt je Hubvolumen 0,009 s/m bei 8 bar, im Verhältnis zum effektiven Mitteldruck; mindestens 0,17 des Kolbenhubs, bis 0,26, wo die Ladung klopfen würde</translation>
    </message>
    <message>
        <source>Hydrogen ignites in air between 4 and 75 % by volume, burns with an invisible flame and embrittles many steels. Ventilate the space under the pistons and the room, detect leaks, guard the intake against backfire and choose materials for hydrogen.</source>
        <translation>Wasserstoff zündet in Luft zwischen 4 und 75 Volumenprozent, brennt mit unsichtbarer Flamme und versprödet viele Stähle. Raum unter den Kolben und Aufstellraum belüften, Lecks überwachen, den Einlass gegen Rückzündung sichern und wasserstofftaugliche Werkstoffe wählen.</translation>
    </message>
    <message>
        <source>Methane ignites in air between 5 and 15 % by volume. Ventilate the space under the pistons and the room, detect leaks and guard the intake against backfire.</source>
        <translation>Methan zündet in Luft zwischen 5 und 15 Volumenprozent. Raum unter den Kolben und Aufstellraum belüften, Lecks überwachen und den Einlass gegen Rückzündung sichern.</translation>
    </message>
    <message>
        <source>If the load is lost with the fuel on, the engine reaches 1.2 times its speed within %1 (inertia as given, torque held). Fit an independent overspeed trip that shuts off the fuel.</source>
        <translation>Fällt bei offener Kraftstoffzufuhr die Last weg, erreicht der Motor in %1 das 1,2-Fache seiner Drehzahl (Trägheitsmoment wie angegeben, Drehmoment gehalten). Einen unabhängigen Überdrehzahlschutz vorsehen, der den Kraftstoff absperrt.</translation>
    </message>
    <message>
        <source>Estimates for comparison only; not a basis for manufacture, release or operation. No strength of pressure-containing or rotating parts is calculated. Local codes and regulations for pressure equipment, fuel gas, hydrogen and machinery take precedence; where the law requires it, have a licensed professional engineer approve the design. First runs: remote, behind guards, with independent overspeed trip and fuel shut-off; ventilate the crankcase; treat surfaces and exhaust as hot and toxic.</source>
        <translation>Schätzwerte, nur zum Vergleich; keine Grundlage für Fertigung, Freigabe oder Betrieb. Die Festigkeit drucktragender oder drehender Teile wird nicht berechnet. Örtliche Vorschriften und Regelwerke für Druckgeräte, Brenngas, Wasserstoff und Maschinen haben Vorrang; wo das Recht es verlangt, muss eine dazu befugte Fachkraft den Entwurf genehmigen. Erste Läufe: ferngesteuert, hinter Schutzwänden, mit unabhängigem Überdrehzahlschutz und Kraftstoffabsperrung; Kurbelraum belüften; Oberflächen und Abgas als heiß und giftig behandeln.</translation>
    </message>
    <message>
        <source>Estimates for comparison only; not a basis for manufacture, release or operation.</source>
        <translation>Schätzwerte, nur zum Vergleich; keine Grundlage für Fertigung, Freigabe oder Betrieb.</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>%1 leaves segment %2 %3; the span must be less than %4</source>
        <translation>%1 lässt Abschnitt %2 nur %3; die Spanne muss kleiner als %4 sein</translation>
    </message>
    <message>
        <source>Both tracks</source>
        <translation>Beide Bahnen</translation>
    </message>
    <message>
        <source>both tracks</source>
        <translation>beide Bahnen</translation>
    </message>
    <message>
        <source>inlet track</source>
        <translation>Einlassbahn</translation>
    </message>
    <message>
        <source>exhaust track</source>
        <translation>Auslassbahn</translation>
    </message>
    <message>
        <source>Add knot at %1 (%2)</source>
        <translation>Stützpunkt bei %1 setzen (%2)</translation>
    </message>
    <message>
        <source>Remove knot at %1 (%2)</source>
        <translation>Stützpunkt bei %1 entfernen (%2)</translation>
    </message>
    <message>
        <source>Free the slope at %1 (%2)</source>
        <translation>Steigung bei %1 freigeben (%2)</translation>
    </message>
    <message>
        <source>Turn into %1 knots, error %2 (%3)</source>
        <translation>In %1 Stützpunkte wandeln, Abweichung %2 (%3)</translation>
    </message>
    <message>
        <source>Give the exhaust track a curve of its own</source>
        <translation>Der Auslassbahn eine eigene Kurve geben</translation>
    </message>
    <message>
        <source>%1, boundary %2</source>
        <translation>%1, Abschnittsgrenze %2</translation>
    </message>
    <message>
        <source>%1, knot %2</source>
        <translation>%1, Stützpunkt %2</translation>
    </message>
    <message>
        <source>Move boundary %1 (%2)</source>
        <translation>Abschnittsgrenze %1 verschieben (%2)</translation>
    </message>
    <message>
        <source>Change slope at knot %1 (%2)</source>
        <translation>Steigung am Stützpunkt %1 ändern (%2)</translation>
    </message>
    <message>
        <source>Move knot %1 (%2)</source>
        <translation>Stützpunkt %1 verschieben (%2)</translation>
    </message>
    <message>
        <source>Split segment %1 into two with a stop between</source>
        <translation>Abschnitt %1 in zwei mit Halt dazwischen teilen</translation>
    </message>
    <message>
        <source>Add dwell after segment %1</source>
        <translation>Rast nach Abschnitt %1 einfügen</translation>
    </message>
    <message>
        <source>Add row after %1</source>
        <translation>Reihe nach %1 einfügen</translation>
    </message>
    <message>
        <source>Remove row %1</source>
        <translation>Reihe %1 entfernen</translation>
    </message>
    <message>
        <source>Move row %1 up</source>
        <translation>Reihe %1 nach oben</translation>
    </message>
    <message>
        <source>Move row %1 down</source>
        <translation>Reihe %1 nach unten</translation>
    </message>
    <message>
        <source>Split dwell %1</source>
        <translation>Rast %1 teilen</translation>
    </message>
    <message>
        <source>Describe the track by segments</source>
        <translation>Bahn durch Abschnitte beschreiben</translation>
    </message>
    <message>
        <source>Describe the track by harmonics</source>
        <translation>Bahn durch Harmonische beschreiben</translation>
    </message>
    <message>
        <source>a roller lifts off</source>
        <translation>eine Rolle hebt ab</translation>
    </message>
    <message>
        <source>peak pressure above its limit</source>
        <translation>Spitzendruck über seiner Grenze</translation>
    </message>
    <message>
        <source>knock</source>
        <translation>Klopfen</translation>
    </message>
    <message>
        <source>oil film below its limit</source>
        <translation>Ölfilm unter seiner Grenze</translation>
    </message>
    <message>
        <source>contact stress above its limit</source>
        <translation>Kontaktpressung über ihrer Grenze</translation>
    </message>
    <message>
        <source>mean piston speed above its limit</source>
        <translation>mittlere Kolbengeschwindigkeit über ihrer Grenze</translation>
    </message>
    <message>
        <source>not solved: %1</source>
        <translation>nicht gelöst: %1</translation>
    </message>
    <message>
        <source>a mesh within %1 has more than %2 million triangles; allow a coarser tolerance</source>
        <translation>ein Netz innerhalb von %1 hat mehr als %2 Millionen Dreiecke; eine gröbere Toleranz zulassen</translation>
    </message>
    <message>
        <source>without the adjuster&apos;s setting the design breaks a rule</source>
        <translation>ohne die Einstellung des Verstellers verletzt der Entwurf eine Regel</translation>
    </message>
    <message>
        <source>Reference energy</source>
        <translation>Bezugsenergie</translation>
    </message>
    <message>
        <source>Maximum shear stress divided by peak pressure</source>
        <translation>Größte Schubspannung, geteilt durch größte Pressung</translation>
    </message>
    <message>
        <source>with a lead of %1 in total the exhaust piston moves out as far as the inlet piston moves in, so that a cycle has no dead centre</source>
        <translation>Mit einer Voreilung von insgesamt %1 geht der Auslasskolben so weit auswärts, wie der Einlasskolben einwärts geht; ein Arbeitsspiel hat dann keinen Totpunkt</translation>
    </message>
    <message>
        <source>Values above this are reported. Default 35° and 45° (own estimate).</source>
        <translation>Größere Werte werden gemeldet. Vorgabe 35° und 45° (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Values above this are reported. Default 16 and 22 m/s (own estimate).</source>
        <translation>Größere Werte werden gemeldet. Vorgabe 16 und 22 m/s (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Values above this are reported. Default 120 and 180 bar (own estimate).</source>
        <translation>Größere Werte werden gemeldet. Vorgabe 120 und 180 bar (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Values below this are reported. Default 1 and 0.5 (own estimate).</source>
        <translation>Kleinere Werte werden gemeldet. Vorgabe 1 und 0,5 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Allowable divided by nominal contact stress; values below this are reported. Default 1.2 and 1.0 (own estimate).</source>
        <translation>Zulässige, geteilt durch nominelle Kontaktpressung; kleinere Werte werden gemeldet. Vorgabe 1,2 und 1,0 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Values below this are reported. Default 1000 and 100 hours (own estimate).</source>
        <translation>Kleinere Werte werden gemeldet. Vorgabe 1000 und 100 Stunden (eigene Schätzung).</translation>
    </message>
    <message>
        <source>cos α less the guide&apos;s friction share; values below this are reported. Default 0.3 and 0 (own estimate).</source>
        <translation>cos α minus Reibanteil der Führung; kleinere Werte werden gemeldet. Vorgabe 0,3 und 0 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>Values from this on are reported. Default 0.8 and 1 (Livengood and Wu 1955).</source>
        <translation>Werte ab hier werden gemeldet. Vorgabe 0,8 und 1 (Livengood und Wu 1955).</translation>
    </message>
    <message>
        <source>λ: trapped air divided by the air that the fuel needs; above 1 is lean. The gas model holds from 0.9 up.</source>
        <translation>λ: eingeschlossene Luft durch Luftbedarf des Kraftstoffs; über 1 ist mager. Das Gasmodell gilt ab 0,9.</translation>
    </message>
    <message>
        <source>C_d: effective area divided by geometric area; 0.6 to 0.8 is common practice.</source>
        <translation>C_d: wirksamer durch geometrischen Querschnitt; üblich sind 0,6 bis 0,8.</translation>
    </message>
    <message>
        <source>C_d: effective area divided by free area. Default 0.7 (own estimate).</source>
        <translation>C_d: wirksame durch freie Fläche. Vorgabe 0,7 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>ψ₀: isentropic rise of enthalpy divided by the square of the tip speed, at its peak. Default 0.73: radial blades, slip factor 0.9 × power input factor 1.04 × efficiency 0.78 (Cohen, Rogers and Saravanamuttoo, Gas Turbine Theory, ch. 4; secondary value).</source>
        <translation>ψ₀: isentrope Enthalpieerhöhung durch das Quadrat der Umfangsgeschwindigkeit, am Scheitel. Vorgabe 0,73: radial endende Schaufeln, Minderleistungszahl 0,9 × Leistungsfaktor 1,04 × Wirkungsgrad 0,78 (Cohen, Rogers und Saravanamuttoo, Gas Turbine Theory, Kap. 4; Sekundärwert).</translation>
    </message>
    <message>
        <source>φ_s: below it the wheel surges. φ is the mass flow divided by inlet density × tip speed × diameter squared. Default 0.04 (own estimate).</source>
        <translation>φ_s: Darunter pumpt das Rad. φ ist der Massenstrom durch Dichte am Eintritt × Umfangsgeschwindigkeit × Durchmesser zum Quadrat. Vorgabe 0,04 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>η_b of η = η_b·(2·ν − ν²), ν the speed ratio divided by the best one. Default 0.72 (own estimate).</source>
        <translation>η_b in η = η_b·(2·ν − ν²), ν die Laufzahl durch die beste. Vorgabe 0,72 (eigene Schätzung).</translation>
    </message>
    <message>
        <source>u/c₀ of the best efficiency: tip speed divided by spouting velocity. Default 0.7; an ideal radial wheel has 0.707 (Dixon and Hall, ch. 8; secondary value).</source>
        <translation>u/c₀ des besten Wirkungsgrads: Umfangsgeschwindigkeit durch isentrope Ausflussgeschwindigkeit. Vorgabe 0,7; ein ideales Radialrad hat 0,707 (Dixon und Hall, Kap. 8; Sekundärwert).</translation>
    </message>
    <message>
        <source>Tip speed divided by spouting velocity (Dixon and Hall, ch. 8).</source>
        <translation>Umfangsgeschwindigkeit durch isentrope Ausflussgeschwindigkeit (Dixon und Hall, Kap. 8).</translation>
    </message>
    <message>
        <source>Total pressure downstream of the wheel divided by that upstream.</source>
        <translation>Gesamtdruck hinter dem Rad, geteilt durch den davor.</translation>
    </message>
    <message>
        <source>ring %1 stands %2 from the crown; this must be less than the piston length, %3</source>
        <translation>Ring %1 liegt %2 unter dem Kolbenboden; das muss weniger sein als die Kolbenlänge, %3</translation>
    </message>
    <message>
        <source>ring %1 stands %2 from the crown; it must stand further than the ring before it, %3</source>
        <translation>Ring %1 liegt %2 unter dem Kolbenboden; er muss weiter davon entfernt sein als der Ring davor, %3</translation>
    </message>
    <message>
        <source>the draft gives none between 30 and 170 % of its speed</source>
        <translation>Der Vorentwurf hat zwischen 30 und 170 % seiner Drehzahl keines</translation>
    </message>
    <message>
        <source>the curve of the draft is highest there, with %1, and has %2 at the speed given: the heights of the ports shift it</source>
        <translation>Die Kurve des Vorentwurfs hat dort mit %1 ihr Maximum und bei der angegebenen Drehzahl %2: Die Höhen der Schlitze verschieben es</translation>
    </message>
    <message>
        <source>at %1; the draft is fitted to the power at the rated speed</source>
        <translation>bei %1; der Vorentwurf ist an die Leistung bei Nenndrehzahl angepasst</translation>
    </message>
    <message>
        <source>Width of one inlet port</source>
        <translation>Breite eines Einlassschlitzes</translation>
    </message>
    <message>
        <source>Width of one exhaust port</source>
        <translation>Breite eines Auslassschlitzes</translation>
    </message>
    <message>
        <source>L = S + 0.7·B: the skirt covers the ports at inner dead centre</source>
        <translation>L = S + 0,7·B: Der Schaft verdeckt die Schlitze im inneren Totpunkt</translation>
    </message>
    <message>
        <source>All %1 cylinders fire at the same moment, %2 times per revolution: the torque swings as that of one large cylinder. Another number of lobes or of cylinders, or other cylinder angles, spread the firing.</source>
        <translation>Alle %1 Zylinder zünden gleichzeitig, %2-mal je Umdrehung: Das Drehmoment schwankt wie das eines einzigen großen Zylinders. Eine andere Nocken- oder Zylinderzahl oder andere Zylinderwinkel verteilen die Zündungen.</translation>
    </message>
    <message>
        <source>%1 to within ±%2</source>
        <translation>%1 auf ±%2 genau</translation>
    </message>
    <message>
        <source>Measure one thing and this band is half as wide: %1.</source>
        <translation>Eine Messung macht dieses Band halb so breit: %1.</translation>
    </message>
    <message>
        <source>Measure two things and this band is half as wide: %1; %2. The first alone narrows it by %3.</source>
        <translation>Zwei Messungen machen dieses Band halb so breit: %1; %2. Die erste allein macht es um %3 schmaler.</translation>
    </message>
    <message>
        <source>Measure three things and this band is half as wide: %1; %2; %3. The first alone narrows it by %4.</source>
        <translation>Drei Messungen machen dieses Band halb so breit: %1; %2; %3. Die erste allein macht es um %4 schmaler.</translation>
    </message>
    <message>
        <source>No three measurements make this band half as wide. Measure this first; known exactly, it narrows the band by %2: %1.</source>
        <translation>Keine drei Messungen machen dieses Band halb so breit. Zuerst ist dies zu messen; genau bekannt, macht es das Band um %2 schmaler: %1.</translation>
    </message>
    <message>
        <source>Intake under the skirt</source>
        <translation>Einlass unter dem Schaft</translation>
    </message>
    <message>
        <source>A row that the lower end of the skirt uncovers near inner dead centre lets ambient gas in instead of the reed, and out again where the pump stands above ambient. Its edge is counted from that end at outer dead centre, inward.</source>
        <translation>Eine Reihe, die das untere Ende des Schafts nahe dem inneren Totpunkt freigibt, lässt anstelle der Zunge Umgebungsgas ein, und wieder hinaus, wo die Pumpe über Umgebungsdruck steht. Ihre Kante zählt von diesem Ende im äußeren Totpunkt nach innen.</translation>
    </message>
    <message>
        <source>the draft is fitted to the power at the rated speed; the speed of peak torque is not given</source>
        <translation>Der Vorentwurf ist an die Leistung bei Nenndrehzahl angepasst; die Drehzahl des größten Drehmoments ist nicht angegeben</translation>
    </message>
    <message>
        <source>Intercooler outlet temperature</source>
        <translation>Austritt des Zwischenkühlers</translation>
    </message>
    <message>
        <source>Temperature behind a cooler between wheel and blower, which then takes in denser air; empty without one.</source>
        <translation>Temperatur hinter einem Kühler zwischen Rad und Gebläse, das dann dichtere Luft ansaugt; leer ohne Kühler.</translation>
    </message>
    <message>
        <source>Transfer volume</source>
        <translation>Überströmvolumen</translation>
    </message>
    <message>
        <source>Volume of its own between the pump chamber and the inlet ports, filled and emptied through a passage; empty where the chamber itself stands at the ports.</source>
        <translation>Eigenes Volumen zwischen Pumpenraum und Einlassschlitzen, das sich durch einen Durchgang füllt und leert; leer, wo der Pumpenraum selbst an die Schlitze grenzt.</translation>
    </message>
    <message>
        <source>Passage to the transfer volume</source>
        <translation>Durchgang zum Überströmvolumen</translation>
    </message>
    <message>
        <source>Effective area C_d·A of the passage from the pump chamber, both ways. Default 600 mm² (own estimate).</source>
        <translation>Wirksame Fläche C_d·A des Durchgangs vom Pumpenraum, in beiden Richtungen. Vorgabe 600 mm² (eigene Schätzung).</translation>
    </message>
    <message>
        <source>the skirt would have to travel %1 to uncover the row; it must be less than the stroke, %2</source>
        <translation>Der Schaft müsste %1 zurücklegen, um die Reihe freizugeben; es muss weniger als der Hub sein, %2</translation>
    </message>
    <message>
        <source>the far edge of the row lies %1 above the end of the skirt at outer dead centre; it must be less than the piston length, %2, or the crown uncovers it</source>
        <translation>Die entfernte Kante der Reihe liegt im äußeren Totpunkt %1 über dem Ende des Schafts; es muss weniger als die Kolbenlänge sein, %2, sonst gibt der Kolbenboden sie frei</translation>
    </message>
    <message>
        <source>Pressure in the pump chamber</source>
        <translation>Druck im Pumpenraum</translation>
    </message>
    <message>
        <source>Flow through the compressor, corrected to the reference state</source>
        <translation>Durchfluss des Verdichters, auf den Bezugszustand umgerechnet</translation>
    </message>
    <message>
        <source>Share of its flow by which the compressor is clear of surge</source>
        <translation>Pumpgrenzabstand des Verdichters, als Anteil seines Durchflusses</translation>
    </message>
    <message>
        <source>Flow at the same flow coefficient and Mach number in the reference state (Cohen, Rogers and Saravanamuttoo, Gas Turbine Theory, ch. 4).</source>
        <translation>Durchfluss bei gleicher Durchflusszahl und Machzahl im Bezugszustand (Cohen, Rogers und Saravanamuttoo, Gas Turbine Theory, Kap. 4).</translation>
    </message>
    <message>
        <source>How much of the flow could be lost at this wheel speed before the wheel surges; below 0 it does.</source>
        <translation>Wie viel vom Durchfluss bei dieser Raddrehzahl fehlen dürfte, bevor das Rad pumpt; unter 0 tut es das.</translation>
    </message>
    <message>
        <source>Reference temperature of the wheel</source>
        <translation>Bezugstemperatur des Rads</translation>
    </message>
    <message>
        <source>of its table; 298.15 K unless given</source>
        <translation>seiner Tabelle; 298,15 K, wenn nicht angegeben</translation>
    </message>
    <message>
        <source>Reference pressure of the wheel</source>
        <translation>Bezugsdruck des Rads</translation>
    </message>
    <message>
        <source>of its table; 1 bar unless given</source>
        <translation>seiner Tabelle; 1 bar, wenn nicht angegeben</translation>
    </message>
    <message>
        <source>Flow coefficient at which the wheel surges</source>
        <translation>Durchflusszahl, bei der das Rad pumpt</translation>
    </message>
    <message>
        <source>of the wheel at this speed</source>
        <translation>des Rads bei dieser Drehzahl</translation>
    </message>
    <message>
        <source>Open area of the row under the skirt</source>
        <translation>Freie Fläche der Reihe unter dem Schaft</translation>
    </message>
    <message>
        <source>Conservation of mass over a cycle; the fuel comes in with the air.</source>
        <translation>Massenbilanz über ein Arbeitsspiel; der Kraftstoff kommt mit der Luft herein.</translation>
    </message>
    <message>
        <source>fuel that comes with the air</source>
        <translation>Kraftstoff, der mit der Luft kommt</translation>
    </message>
    <message>
        <source>Floor from which the pressure rises linearly with the load. Empty: with a constant supply, the exhaust back pressure; before the intake of a compressor wheel or of a pump that draws under its skirt, 0.8 of the ambient pressure; before that of any other blower or pump, a quarter of it (own estimates).</source>
        <translation>Mindestwert, von dem an der Druck linear mit der Last steigt. Leer: bei konstanter Versorgung der Abgasgegendruck; vor der Ansaugung eines Verdichterrads oder einer Pumpe, die unter dem Schaft ansaugt, 0,8 des Umgebungsdrucks; vor der jedes anderen Gebläses und jeder anderen Pumpe ein Viertel davon (eigene Schätzungen).</translation>
    </message>
    <message>
        <source>Moves the track without turning it, outward positive. Default 0.</source>
        <translation>Verschiebt die Bahn, ohne sie zu drehen, nach außen positiv. Vorgabe 0.</translation>
    </message>
    <message>
        <source>All parts that move with the piston, roller included.</source>
        <translation>Alle Teile, die sich mit dem Kolben bewegen, mit Rolle.</translation>
    </message>
    <message>
        <source>Rows of inlet ports uncovered by the piston.</source>
        <translation>Reihen von Einlassschlitzen, die der Kolben freigibt.</translation>
    </message>
    <message>
        <source>Rows of exhaust ports uncovered by the piston.</source>
        <translation>Reihen von Auslassschlitzen, die der Kolben freigibt.</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>The track that moves the pistons.</source>
        <translation>Die Bahn, die die Kolben bewegt.</translation>
    </message>
    <message>
        <source>track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Turn the shaft to where the roller of cylinder 1 runs on the steepest place of its track.</source>
        <translation>Drehen Sie die Welle dorthin, wo die Rolle von Zylinder 1 auf der steilsten Stelle ihrer Bahn läuft.</translation>
    </message>
    <message>
        <source>At outer dead centre the skirt %1 runs into the rim of its closed track by %2. Place the roller axis further behind the crown or shorten the skirt.</source>
        <translation>Im äußeren Totpunkt läuft der Schaft %1 um %2 in den Rand seiner geschlossenen Bahn. Rollenachse weiter hinter den Kolbenboden legen oder den Schaft kürzen.</translation>
    </message>
    <message>
        <source>The skirt %1 runs into its track beside the roller by %2. Place the roller axis further behind the crown or shorten the skirt.</source>
        <translation>Der Schaft %1 läuft neben der Rolle um %2 in seine Bahn. Rollenachse weiter hinter den Kolbenboden legen oder den Schaft kürzen.</translation>
    </message>
    <message>
        <source>%1 turns at up to %2; speed times outside diameter is %3 mm/min, above the %4 mm/min that bearings for track rollers usually allow. A larger roller on the same track does not help; less speed or a smaller pitch radius does.</source>
        <translation>%1 dreht mit bis zu %2; Drehzahl mal Außendurchmesser ist %3 mm/min, mehr als die %4 mm/min, die Lager von Laufrollen üblicherweise erlauben. Eine größere Rolle auf derselben Bahn hilft nicht, wohl aber weniger Drehzahl oder ein kleinerer Teilkreisradius.</translation>
    </message>
    <message>
        <source>At inner dead centre the skirt %1 uncovers its port row %2 by %3, so the ports open to the space under the piston: lengthen the piston by at least that much.</source>
        <translation>Im inneren Totpunkt gibt der Schaft %1 seine Schlitzreihe %2 um %3 frei, sodass die Schlitze zum Raum unter dem Kolben öffnen: Kolben um mindestens so viel verlängern.</translation>
    </message>
    <message>
        <source>Ring %1 %2 runs over ports of row %3 that are %4 wide, above %5 (0.4 of the bore, own estimate), and may catch in them: use more and narrower ports, or a bar across each.</source>
        <translation>Ring %1 %2 läuft über Schlitze der Reihe %3, die %4 breit sind, mehr als %5 (0,4 der Bohrung, eigene Schätzung), und kann sich darin verhaken: mehr und schmalere Schlitze oder einen Steg über jedem vorsehen.</translation>
    </message>
    <message>
        <source>%1 leaves its track: inertia exceeds the gas force, and following the track would take a pull of %2. Lower the speed, the piston mass or the deceleration, or close the track.</source>
        <translation>%1 verlässt ihre Bahn: Die Massenkraft übersteigt die Gaskraft, und der Bahn zu folgen erforderte %2 Zug. Drehzahl, Kolbenmasse oder Verzögerung verringern oder die Bahn schließen.</translation>
    </message>
    <message>
        <source>%1 leaves its track: the chamber pressure is below the under-piston pressure, and following the track would take a pull of %2. Raise the supply pressure, lower the under-piston pressure, add a spring or close the track.</source>
        <translation>%1 verlässt ihre Bahn: Der Druck im Brennraum liegt unter dem Druck unter dem Kolben, und der Bahn zu folgen erforderte %2 Zug. Ladedruck erhöhen, Druck unter dem Kolben verringern, eine Feder vorsehen oder die Bahn schließen.</translation>
    </message>
    <message>
        <source>%1 leaves its track: ring friction holds the piston back, and following the track would take a pull of %2. Raise the speed, lower the under-piston pressure or the ring friction, add a spring or close the track.</source>
        <translation>%1 verlässt ihre Bahn: Die Ringreibung hält den Kolben zurück, und der Bahn zu folgen erforderte %2 Zug. Drehzahl erhöhen, Druck unter dem Kolben oder Ringreibung verringern, eine Feder vorsehen oder die Bahn schließen.</translation>
    </message>
    <message>
        <source>%1 leaves its track: ring friction holds the piston back where inertia does not press it on, and following the track would take a pull of %2. Lower the under-piston pressure or the ring friction, add a spring or close the track.</source>
        <translation>%1 verlässt ihre Bahn: Die Ringreibung hält den Kolben zurück, wo die Trägheit ihn nicht andrückt, und der Bahn zu folgen erforderte %2 Zug. Druck unter dem Kolben oder Ringreibung verringern, eine Feder vorsehen oder die Bahn schließen.</translation>
    </message>
    <message>
        <source>%1 of the %2 jumps at %3, by up to %4 at track angle %5: %6.</source>
        <translation>%1 der %2 springt an %3, um bis zu %4 beim Bahnwinkel %5: %6.</translation>
    </message>
    <message>
        <source>The %1 flank of the %2 is undercut: relative radius of curvature %3 at track angle %4 and %5 from the shaft axis; %6.</source>
        <translation>Die %1flanke der %2 ist unterschnitten: Ersatzkrümmungsradius %3 beim Bahnwinkel %4 und %5 von der Wellenachse; %6.</translation>
    </message>
    <message>
        <source>of the piston</source>
        <translation>des Kolbens</translation>
    </message>
    <message>
        <source>of the inlet piston</source>
        <translation>des Einlasskolbens</translation>
    </message>
    <message>
        <source>of the exhaust piston</source>
        <translation>des Auslasskolbens</translation>
    </message>
    <message>
        <source>The roller</source>
        <translation>Die Rolle</translation>
    </message>
    <message>
        <source>The roller of the inlet side</source>
        <translation>Die Rolle der Einlassseite</translation>
    </message>
    <message>
        <source>The roller of the exhaust side</source>
        <translation>Die Rolle der Auslassseite</translation>
    </message>
    <message>
        <source>the roller</source>
        <translation>die Rolle</translation>
    </message>
    <message>
        <source>the roller of the inlet side</source>
        <translation>die Rolle der Einlassseite</translation>
    </message>
    <message>
        <source>the roller of the exhaust side</source>
        <translation>die Rolle der Auslassseite</translation>
    </message>
    <message>
        <source>Below %1 %2 leaves its track at a shaft angle of %3: %4.</source>
        <translation>Unter %1 verlässt %2 ihre Bahn bei einem Wellenwinkel von %3: %4.</translation>
    </message>
    <message>
        <source>Above %1 %2 leaves its track at a shaft angle of %3: %4.</source>
        <translation>Über %1 verlässt %2 ihre Bahn bei einem Wellenwinkel von %3: %4.</translation>
    </message>
    <message>
        <source>the gas under the piston left the range of the model: enlarge the pump chamber</source>
        <translation>Das Gas unter dem Kolben verließ den Gültigkeitsbereich des Modells: Pumpenkammer vergrößern</translation>
    </message>
    <message>
        <source>the gas in the transfer volume left the range of the model: enlarge the volume</source>
        <translation>Das Gas im Überströmvolumen verließ den Gültigkeitsbereich des Modells: Volumen vergrößern</translation>
    </message>
    <message>
        <source>the gas upstream of the turbine left the range of the model: enlarge the exhaust plenum</source>
        <translation>Das Gas vor der Turbine verließ den Gültigkeitsbereich des Modells: Abgassammler vergrößern</translation>
    </message>
    <message>
        <source>the plenum ran empty: the cylinders take in all air as soon as the blower delivers it; enlarge the plenum</source>
        <translation>Der Sammler lief leer: Die Zylinder nehmen alle Luft auf, sobald das Gebläse sie liefert; Sammler vergrößern</translation>
    </message>
    <message>
        <source>the turbocharger does not sustain itself, and nothing else delivers air: add a blower downstream of its wheel</source>
        <translation>der Abgasturbolader trägt sich nicht selbst, und nichts anderes liefert Luft: ein Gebläse hinter seinem Rad vorsehen</translation>
    </message>
</context>
<context>
    <name>Desktop</name>
    <message>
        <source>Design and judge cam-track engines.</source>
        <translation>Kurvenbahnmotoren entwerfen und beurteilen.</translation>
    </message>
    <message>
        <source>Design to open; each in a window of its own.</source>
        <translation>Zu öffnender Entwurf; jeder in einem eigenen Fenster.</translation>
    </message>
    <message>
        <source>File not opened</source>
        <translation>Datei nicht geöffnet</translation>
    </message>
    <message>
        <source>No further window can be opened for %1.</source>
        <translation>Für %1 kann kein weiteres Fenster geöffnet werden.</translation>
    </message>
    <message>
        <source>Displays version information.</source>
        <translation>Zeigt Versionsangaben an.</translation>
    </message>
    <message>
        <source>lobewright: there is no display to open a window on. Start it in a desktop session, or use lobewright-cli, which needs none.</source>
        <translation>lobewright: Es gibt keine Anzeige für ein Fenster. Starten Sie das Programm in einer Desktop-Sitzung oder verwenden Sie lobewright-cli, das keine braucht.</translation>
    </message>
</context>
<context>
    <name>Dialogs</name>
    <message>
        <source>Designs and judges cam-track engines: opposed pistons whose rollers run on undulating axial tracks around a shaft.</source>
        <translation>Entwirft und beurteilt Kurvenbahnmotoren: Gegenkolben, deren Rollen auf gewellten axialen Bahnen um eine Welle laufen.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or later; it comes without any warranty. Built with Qt, QCustomPlot and Eigen.</source>
        <translation>Freie Software unter der GNU General Public License, Version 3 oder später; ohne jede Gewährleistung. Gebaut mit Qt, QCustomPlot und Eigen.</translation>
    </message>
    <message>
        <source>About Lobewright</source>
        <translation>Über Lobewright</translation>
    </message>
    <message>
        <source>File not opened</source>
        <translation>Datei nicht geöffnet</translation>
    </message>
    <message>
        <source>%1 is not a usable design. The present design is unchanged.</source>
        <translation>%1 ist kein brauchbarer Entwurf. Der gegenwärtige Entwurf bleibt unverändert.</translation>
    </message>
    <message>
        <source>Place in the file</source>
        <translation>Stelle in der Datei</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>Problems</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>whole file</source>
        <translation>ganze Datei</translation>
    </message>
    <message>
        <source>Correlations, discharge coefficients and scavenging models are good to perhaps ±10 to 20 %. Contact figures are nominal: they compare designs and never release one for manufacture.</source>
        <translation>Korrelationen, Durchflussbeiwerte und Spülmodelle treffen auf vielleicht ±10 bis 20 % genau. Kontaktwerte sind Nennwerte: Sie vergleichen Entwürfe und geben nie einen zur Fertigung frei.</translation>
    </message>
    <message>
        <source>Have a qualified engineer review the design before metal is cut. Running engines burst, burn and throw parts.</source>
        <translation>Lassen Sie den Entwurf fachkundig prüfen, bevor Metall zerspant wird. Laufende Motoren bersten, brennen und schleudern Teile.</translation>
    </message>
</context>
<context>
    <name>EnginePainter</name>
    <message>
        <source>turns</source>
        <translation>dreht sich</translation>
    </message>
    <message>
        <source>slides</source>
        <translation>gleitet</translation>
    </message>
    <message>
        <source>gas pushes</source>
        <translation>Gas schiebt</translation>
    </message>
</context>
<context>
    <name>FigureHelp</name>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
</context>
<context>
    <name>FiguresPanel</name>
    <message>
        <source>not available</source>
        <translation>nicht verfügbar</translation>
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
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>%1 in the baseline</source>
        <translation>%1 im Bezugsentwurf</translation>
    </message>
    <message>
        <source>%1 against %2 of the baseline</source>
        <translation>%1 gegenüber %2 im Bezugsentwurf</translation>
    </message>
</context>
<context>
    <name>FileToWrite</name>
    <message>
        <source>“%1” is already in the folder %2. Replace it?</source>
        <translation>„%1“ gibt es im Ordner %2 schon. Ersetzen?</translation>
    </message>
    <message numerus="yes">
        <source>%n files of these names are already in the folder %1, “%2” among them. Replace them?</source>
        <translation>
            <numerusform>%n Datei dieses Namens gibt es im Ordner %1 schon: „%2“. Ersetzen?</numerusform>
            <numerusform>%n Dateien dieser Namen gibt es im Ordner %1 schon, darunter „%2“. Ersetzen?</numerusform>
        </translation>
    </message>
    <message>
        <source>Replace what is there?</source>
        <translation>Vorhandenes ersetzen?</translation>
    </message>
    <message>
        <source>&amp;Replace</source>
        <translation>E&amp;rsetzen</translation>
    </message>
</context>
<context>
    <name>FrameExport</name>
    <message>
        <source>%1 cannot be written.</source>
        <translation>%1 kann nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>Stopped after %1 of %2 pictures.</source>
        <translation>Nach %1 von %2 Bildern angehalten.</translation>
    </message>
</context>
<context>
    <name>LoadDesign</name>
    <message>
        <source>Reading %1</source>
        <translation>%1 wird gelesen</translation>
    </message>
</context>
<context>
    <name>LoopWork</name>
    <message>
        <source>∮p dV = %1 per cylinder and revolution: the area of the loop in the &lt;a href=&quot;view:pressure-volume&quot;&gt;p–V diagram&lt;/a&gt;.</source>
        <translation>∮p dV = %1 je Zylinder und Umdrehung: die Fläche der Schleife im &lt;a href=&quot;view:pressure-volume&quot;&gt;p-V-Diagramm&lt;/a&gt;.</translation>
    </message>
</context>
<context>
    <name>Origins</name>
    <message>
        <source>given</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>abgeleitet</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>g</source>
        <comment>mark of an input that is given</comment>
        <translation>v</translation>
    </message>
    <message>
        <source>m</source>
        <comment>mark of an input that was measured</comment>
        <translation>m</translation>
    </message>
    <message>
        <source>d</source>
        <comment>mark of an input that was derived</comment>
        <translation>b</translation>
    </message>
    <message>
        <source>a</source>
        <comment>mark of an input that is assumed</comment>
        <translation>a</translation>
    </message>
    <message>
        <source>%1, range %2</source>
        <translation>%1, Bereich %2</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>Angenommen: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Moves together with the others of its group</source>
        <translation>Ändert sich gemeinsam mit den anderen ihrer Gruppe</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number, origin</comment>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>Phase</name>
    <message>
        <source>compression</source>
        <translation>Verdichtung</translation>
    </message>
    <message>
        <source>combustion</source>
        <translation>Verbrennung</translation>
    </message>
    <message>
        <source>expansion</source>
        <translation>Expansion</translation>
    </message>
    <message>
        <source>blowdown</source>
        <translation>Vorauslass</translation>
    </message>
    <message>
        <source>inlet open first</source>
        <translation>Einlass zuerst offen</translation>
    </message>
    <message>
        <source>scavenging</source>
        <translation>Spülung</translation>
    </message>
    <message>
        <source>after-charge</source>
        <translation>Nachladung</translation>
    </message>
    <message>
        <source>exhaust open last</source>
        <translation>Auslass zuletzt offen</translation>
    </message>
</context>
<context>
    <name>Picture</name>
    <message>
        <source>%1 cannot be read as a PDF.</source>
        <translation>%1 lässt sich nicht als PDF lesen.</translation>
    </message>
    <message>
        <source>%1 is locked with a password.</source>
        <translation>%1 ist mit einem Passwort gesperrt.</translation>
    </message>
    <message>
        <source>%1 has no page %2.</source>
        <translation>%1 hat keine Seite %2.</translation>
    </message>
    <message>
        <source>Page %1 of %2 cannot be shown.</source>
        <translation>Seite %1 von %2 lässt sich nicht zeigen.</translation>
    </message>
    <message>
        <source>%1 cannot be read as a picture: %2.</source>
        <translation>%1 lässt sich nicht als Bild lesen: %2.</translation>
    </message>
    <message>
        <source>Pictures and PDF (*.png *.jpg *.jpeg *.bmp *.svg *.pdf);;All files (*)</source>
        <translation>Bilder und PDF (*.png *.jpg *.jpeg *.bmp *.svg *.pdf);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>&amp;Maßstab</translation>
    </message>
    <message>
        <source>Shaft a&amp;xis</source>
        <translation>&amp;Wellenachse</translation>
    </message>
    <message>
        <source>&amp;Distance</source>
        <translation>&amp;Abstand</translation>
    </message>
    <message>
        <source>A&amp;long the axis</source>
        <translation>&amp;Längs der Achse</translation>
    </message>
    <message>
        <source>A&amp;cross the axis</source>
        <translation>&amp;Quer zur Achse</translation>
    </message>
    <message>
        <source>&amp;From the axis</source>
        <translation>A&amp;bstand zur Achse</translation>
    </message>
    <message>
        <source>Ci&amp;rcle</source>
        <translation>&amp;Kreis</translation>
    </message>
    <message>
        <source>An&amp;gle</source>
        <translation>Win&amp;kel</translation>
    </message>
    <message>
        <source>Lob&amp;e</source>
        <translation>&amp;Nocken</translation>
    </message>
    <message>
        <source>Click two places whose distance is known, as far apart as possible, then type the distance.</source>
        <translation>Zwei Stellen mit bekanntem Abstand anklicken, möglichst weit auseinander, dann den Abstand eintippen.</translation>
    </message>
    <message>
        <source>Click two places on the axis of the shaft.</source>
        <translation>Zwei Stellen auf der Achse der Welle anklicken.</translation>
    </message>
    <message>
        <source>Click both ends.</source>
        <translation>Beide Enden anklicken.</translation>
    </message>
    <message>
        <source>Click both ends; only the part along the shaft counts: a stroke, a port height.</source>
        <translation>Beide Enden anklicken; es zählt nur der Anteil längs der Welle: ein Kolbenhub, eine Schlitzhöhe.</translation>
    </message>
    <message>
        <source>Click both ends; only the part square to the shaft counts: a bore.</source>
        <translation>Beide Enden anklicken; es zählt nur der Anteil quer zur Welle: eine Bohrung.</translation>
    </message>
    <message>
        <source>Click a place; how far it is off the shaft axis counts: the pitch radius at a cylinder&apos;s centre line.</source>
        <translation>Eine Stelle anklicken; es zählt ihr Abstand von der Wellenachse: der Teilkreisradius an der Mittellinie eines Zylinders.</translation>
    </message>
    <message>
        <source>Click three or more places on the edge, then press Enter.</source>
        <translation>Drei oder mehr Stellen am Rand anklicken, dann die Eingabetaste drücken.</translation>
    </message>
    <message>
        <source>Click one arm, the corner, then the other arm.</source>
        <translation>Einen Schenkel, den Scheitel, dann den anderen Schenkel anklicken.</translation>
    </message>
    <message>
        <source>Follow the unrolled track from one outer dead centre to the next with ten to fifty clicks, then press Enter.</source>
        <translation>Der abgewickelten Bahn mit zehn bis fünfzig Klicks von einem äußeren Totpunkt zum nächsten folgen, dann die Eingabetaste drücken.</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>Save picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>Picture (*.png);;Scalable drawing (*.svg);;Page (*.pdf)</source>
        <translation>Bild (*.png);;Skalierbare Zeichnung (*.svg);;Seite (*.pdf)</translation>
    </message>
    <message>
        <source>Picture not saved</source>
        <translation>Bild nicht gespeichert</translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation>%1 konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>&amp;Copy as picture</source>
        <translation>Als Bild &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Save picture…</source>
        <translation>Bild &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>shaft angle, °</source>
        <translation>Wellenwinkel, °</translation>
    </message>
    <message>
        <source>Save data</source>
        <translation>Daten speichern</translation>
    </message>
    <message>
        <source>Comma-separated values (*.csv)</source>
        <translation>Kommagetrennte Werte (*.csv)</translation>
    </message>
    <message>
        <source>Data not saved</source>
        <translation>Daten nicht gespeichert</translation>
    </message>
    <message>
        <source>Copy &amp;data</source>
        <translation>&amp;Daten kopieren</translation>
    </message>
    <message>
        <source>Sa&amp;ve data…</source>
        <translation>Daten sp&amp;eichern…</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>Untitled design</source>
        <translation>Entwurf ohne Titel</translation>
    </message>
    <message>
        <source>, at %1° of the shaft</source>
        <translation>, bei %1° der Welle</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>No checked limit exceeded (estimates); no remarks.</source>
        <translation>Keine geprüfte Grenze überschritten (Schätzungen); keine Hinweise.</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>motored</source>
        <translation>geschleppt</translation>
    </message>
    <message>
        <source>fired</source>
        <translation>gefeuert</translation>
    </message>
    <message>
        <source>Main results</source>
        <translation>Wichtigste Ergebnisse</translation>
    </message>
    <message>
        <source>Port timing and speed</source>
        <translation>Steuerzeiten und Drehzahl</translation>
    </message>
    <message>
        <source>One gas cycle, clockwise from inner dead centre (IDC). Outer arc: exhaust ports open; inner arc: inlet ports open; shaded: both. EO, EC exhaust opens, closes; IO, IC inlet opens, closes. Cycle degrees from IDC, shaft degrees below them.</source>
        <translation>Ein Arbeitsspiel, im Uhrzeigersinn ab dem inneren Totpunkt (IT). Äußerer Bogen: Auslassschlitze offen; innerer Bogen: Einlassschlitze offen; schattiert: beide. AÖ, AS Auslass öffnet, schließt; EÖ, ES Einlass öffnet, schließt. Grad des Arbeitsspiels ab IT, darunter Wellengrad.</translation>
    </message>
    <message>
        <source>Over one revolution</source>
        <translation>Über eine Umdrehung</translation>
    </message>
    <message>
        <source>Assumptions and sources</source>
        <translation>Annahmen und Quellen</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Inputs of the design</source>
        <translation>Eingaben des Entwurfs</translation>
    </message>
    <message>
        <source>Lobewright %1, %2</source>
        <translation>Lobewright %1, %2</translation>
    </message>
    <message>
        <source>Section through cylinder 1 at %1° of the shaft, %2° of the cycle after inner dead centre; scale 1 : %3. Inlet side at the left.</source>
        <translation>Schnitt durch Zylinder 1 bei %1° der Welle, %2° des Arbeitsspiels nach dem inneren Totpunkt; Maßstab 1 : %3. Einlassseite links.</translation>
    </message>
    <message>
        <source> Piston length assumed.</source>
        <translation> Kolbenlänge angenommen.</translation>
    </message>
    <message>
        <source>shaft speed, rpm</source>
        <translation>Wellendrehzahl, 1/min</translation>
    </message>
    <message>
        <source>brake torque</source>
        <translation>effektives Drehmoment</translation>
    </message>
    <message>
        <source>brake power</source>
        <translation>effektive Leistung</translation>
    </message>
    <message>
        <source>Torque and power against speed</source>
        <translation>Drehmoment und Leistung über der Drehzahl</translation>
    </message>
    <message>
        <source>Brake torque</source>
        <translation>Effektives Drehmoment</translation>
    </message>
    <message>
        <source>Brake power</source>
        <translation>Effektive Leistung</translation>
    </message>
    <message>
        <source>speed of this report, %1 rpm</source>
        <translation>Drehzahl dieses Berichts, %1/min</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Page %1</source>
        <translation>Seite %1</translation>
    </message>
    <message>
        <source>%1° shaft, %2° cycle</source>
        <translation>%1° Welle, %2° Arbeitsspiel</translation>
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
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Exhaust side, %1</source>
        <translation>Auslassseite, %1</translation>
    </message>
    <message>
        <source>Inlet side, %1</source>
        <translation>Einlassseite, %1</translation>
    </message>
    <message>
        <source>Gas cycle</source>
        <translation>Kreisprozess</translation>
    </message>
    <message>
        <source>Single zone; air and products of stoichiometric combustion, thermally perfect (GRI-Mech 3.0 polynomials). No dissociation and no carbon monoxide in the products: the peak temperature is high by 100 to 250 K near λ = 1 (Heywood, Internal Combustion Engine Fundamentals, ch. 4), and λ &lt; 0.9 is outside the model. Solved to cyclic steady state.</source>
        <translation>Eine Zone; Luft und Produkte der stöchiometrischen Verbrennung als ideale Gase mit temperaturabhängiger Wärmekapazität (Polynome aus GRI-Mech 3.0). Keine Dissoziation und kein Kohlenmonoxid in den Produkten: Die höchste Temperatur ist nahe λ = 1 um 100 bis 250 K zu hoch (Heywood, Internal Combustion Engine Fundamentals, Kap. 4), und λ &lt; 0,9 liegt außerhalb des Modells. Bis zum eingeschwungenen Zustand gerechnet.</translation>
    </message>
    <message>
        <source>Combustion</source>
        <translation>Verbrennung</translation>
    </message>
    <message>
        <source>Wiebe function, not normalised: the remainder exp(−a) never burns (Heywood, ch. 9). Start and duration are settings, not predictions.</source>
        <translation>Wiebe-Funktion, nicht normiert: Der Rest exp(−a) verbrennt nie (Heywood, Kap. 9). Beginn und Dauer sind Vorgaben, keine Vorhersagen.</translation>
    </message>
    <message>
        <source>Wall heat</source>
        <translation>Wandwärme</translation>
    </message>
    <message>
        <source>Woschni (SAE 670931; constants as in Heywood, § 12.4.3: secondary values, not checked against the printed source), wall temperatures as given.</source>
        <translation>Woschni (SAE 670931; Konstanten wie bei Heywood, § 12.4.3: Sekundärwerte, nicht am gedruckten Original geprüft), Wandtemperaturen wie angegeben.</translation>
    </message>
    <message>
        <source>Hohenberg (SAE 790825: secondary values, not checked against the printed source), wall temperatures as given.</source>
        <translation>Hohenberg (SAE 790825: Sekundärwerte, nicht am gedruckten Original geprüft), Wandtemperaturen wie angegeben.</translation>
    </message>
    <message>
        <source>None: the walls take no heat.</source>
        <translation>Keine: Die Wände nehmen keine Wärme auf.</translation>
    </message>
    <message>
        <source>Perfect mixing</source>
        <translation>Vollkommene Mischung</translation>
    </message>
    <message>
        <source>Perfect displacement</source>
        <translation>Vollkommene Verdrängung</translation>
    </message>
    <message>
        <source>Displacement, then mixing</source>
        <translation>Verdrängung, dann Mischung</translation>
    </message>
    <message>
        <source>Gas exchange</source>
        <translation>Ladungswechsel</translation>
    </message>
    <message>
        <source>%1 (after Benson and Brandham 1969), ports as isentropic orifices with the discharge coefficients given; no pressure waves in the ducts. Ratios refer to ambient density times swept volume (Heywood, § 6.6; ISO 15550 reference state unless given).</source>
        <translation>%1 (nach Benson und Brandham 1969), Schlitze als isentrope Drosseln mit den angegebenen Durchflussbeiwerten; keine Druckwellen in den Leitungen. Verhältnisse beziehen sich auf Umgebungsdichte mal Hubvolumen (Heywood, § 6.6; Bezugszustand nach ISO 15550, wenn nicht angegeben).</translation>
    </message>
    <message>
        <source>Air supply</source>
        <translation>Luftversorgung</translation>
    </message>
    <message>
        <source>Positive-displacement blower with constant volumetric and isentropic efficiency into an adiabatic plenum; its power is deducted from brake values.</source>
        <translation>Verdrängergebläse mit konstantem volumetrischem und isentropem Wirkungsgrad, das in einen adiabaten Sammler fördert; seine Leistung ist von effektiven Werten abgezogen.</translation>
    </message>
    <message>
        <source>Reservoir at constant pressure; supply power NOT counted in brake values.</source>
        <translation>Speicher mit gleichbleibendem Druck; Leistung der Luftversorgung in effektiven Werten NICHT eingerechnet.</translation>
    </message>
    <message>
        <source>Reservoir at constant pressure; what it takes to fill it above ambient pressure is deducted from brake values.</source>
        <translation>Speicher mit gleichbleibendem Druck; der Aufwand, ihn über Umgebungsdruck zu füllen, ist von effektiven Werten abgezogen.</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Lift curves in closed form after VDI 2143-1 and Norton, Cam Design and Manufacturing Handbook; rigid parts, the roller always on its track.</source>
        <translation>Wegkurven in geschlossener Form nach VDI 2143-1 und Norton, Cam Design and Manufacturing Handbook; starre Teile, die Rolle stets auf ihrer Bahn.</translation>
    </message>
    <message>
        <source>Roller on track</source>
        <translation>Rolle auf der Bahn</translation>
    </message>
    <message>
        <source>Exact spatial contact of a cylindrical roller with a radial axis; figures at the inner edge, the middle and the outer edge of the width.</source>
        <translation>Genauer räumlicher Kontakt einer zylindrischen Rolle mit radialer Achse; Werte an Innenkante, Mitte und Außenkante der Breite.</translation>
    </message>
    <message>
        <source>Knock</source>
        <translation>Klopfen</translation>
    </message>
    <message>
        <source>Livengood–Wu integral with the Douaud–Eyzat delay (SAE 780080; Heywood, eq. 9.59: secondary values, not checked against the printed source).</source>
        <translation>Livengood-Wu-Integral mit dem Zündverzug nach Douaud und Eyzat (SAE 780080; Heywood, Gl. 9.59: Sekundärwerte, nicht am gedruckten Original geprüft).</translation>
    </message>
    <message>
        <source>Friction</source>
        <translation>Reibung</translation>
    </message>
    <message>
        <source>Rings by a Stribeck-like law (form after Stanley et al., SAE 1999-01-0974; constants not checked against the printed source), guide, rolling, slip across the roller and bearings by coefficients; defaults are own estimates.</source>
        <translation>Ringe nach einem Stribeck-artigen Gesetz (Form nach Stanley u. a., SAE 1999-01-0974; Konstanten nicht am gedruckten Original geprüft), Führung, Rollen, Schlupf über die Rollenbreite und Lager mit Beiwerten; Vorgaben sind eigene Schätzungen.</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>Hertz (Johnson, Contact Mechanics, ch. 4), load spread evenly over the width, so nominal; film after Dowson 1968 or Hamrock and Dowson 1977; allowable stress as ISO 6336-5 lists it (secondary value, not checked against the printed source).</source>
        <translation>Hertz (Johnson, Contact Mechanics, Kap. 4), Last gleichmäßig über die Breite verteilt, also ein Nennwert; Schmierfilm nach Dowson 1968 oder Hamrock und Dowson 1977; zulässige Pressung wie in ISO 6336-5 aufgeführt (Sekundärwert, nicht am gedruckten Original geprüft).</translation>
    </message>
    <message>
        <source>Roller bearing</source>
        <translation>Rollenlager</translation>
    </message>
    <message>
        <source>ISO 281 rating life with exponent 10/3, a₁ = 1 and no lubrication factor; static limit after ISO 76.</source>
        <translation>Nominelle Lebensdauer nach ISO 281 mit Exponent 10/3, a₁ = 1 und ohne Schmierungsfaktor; statische Grenze nach ISO 76.</translation>
    </message>
    <message>
        <source>How exact</source>
        <translation>Wie genau</translation>
    </message>
    <message>
        <source>The equations are solved to about 1e−6; correlations, discharge coefficients and scavenging models are good to perhaps ±10 to 20 % (common practice).</source>
        <translation>Die Gleichungen sind auf etwa 1e−6 gelöst; Näherungsgleichungen, Durchflussbeiwerte und Spülmodelle stimmen auf vielleicht ±10 bis 20 % (übliche Praxis).</translation>
    </message>
    <message>
        <source>Have a qualified engineer review the design before metal is cut.</source>
        <translation>Vor der Fertigung muss ein qualifizierter Ingenieur den Entwurf prüfen.</translation>
    </message>
    <message>
        <source>Cam-track engine; cylinders: %1; cycles per cylinder and revolution: %2; %3 at %4 rpm. Computed by Lobewright %5 on %6.</source>
        <translation>Kurvenbahnmotor; Zylinder: %1; Arbeitsspiele je Zylinder und Umdrehung: %2; %3 bei %4/min. Berechnet von Lobewright %5 am %6.</translation>
    </message>
    <message>
        <source>Tracks</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>At the pitch radius, over one revolution. Undercut margin: how much larger the roller&apos;s radius may become before the track has a cusp anywhere on its width; negative: it is undercut.</source>
        <translation>Am Teilkreisradius, über eine Umdrehung der Welle. Abstand vom Unterschnitt: um wie viel der Rollenradius wachsen darf, ehe die Bahn irgendwo auf ihrer Breite eine Spitze hat; negativ: Sie ist unterschnitten.</translation>
    </message>
    <message>
        <source>Wedges on the lower edge: where the load of cylinder 1 leaves the push flank of the closed track (down) or comes back to it (up); the roller rattles there.</source>
        <translation>Keile am unteren Rand: wo die Last von Zylinder 1 die Druckflanke der geschlossenen Bahn verlässt (abwärts) oder zu ihr zurückkehrt (aufwärts); dort schlägt die Rolle um.</translation>
    </message>
    <message>
        <source>Tracks unrolled</source>
        <translation>Bahnen abgewickelt</translation>
    </message>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>Pressure angle</source>
        <translation>Pressungswinkel</translation>
    </message>
    <message>
        <source>Relative radius of curvature</source>
        <translation>Ersatzkrümmungsradius</translation>
    </message>
    <message>
        <source>%1 at %2° shaft</source>
        <translation>%1 bei %2° Welle</translation>
    </message>
    <message>
        <source>Smallest relative radius of curvature over the width</source>
        <translation>Kleinster Ersatzkrümmungsradius über die Breite</translation>
    </message>
    <message>
        <source>Smallest relative radius of curvature, pull flank</source>
        <translation>Kleinster Ersatzkrümmungsradius, Zugflanke</translation>
    </message>
    <message>
        <source>Undercut margin of the roller</source>
        <translation>Abstand der Rolle vom Unterschnitt</translation>
    </message>
    <message>
        <source>The same, pull flank</source>
        <translation>Dasselbe, Zugflanke</translation>
    </message>
    <message>
        <source>none reached</source>
        <translation>keiner erreicht</translation>
    </message>
    <message>
        <source>Lobes</source>
        <translation>Nocken</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Kolbenhub</translation>
    </message>
    <message>
        <source>Largest acceleration</source>
        <translation>Größte Beschleunigung</translation>
    </message>
    <message>
        <source>Largest pressure angle</source>
        <translation>Größter Pressungswinkel</translation>
    </message>
    <message>
        <source>Beside the baseline “%1”</source>
        <translation>Neben dem Bezugsentwurf „%1“</translation>
    </message>
    <message>
        <source>Inputs and results are the same.</source>
        <translation>Eingaben und Ergebnisse sind gleich.</translation>
    </message>
    <message>
        <source>Inputs that differ:</source>
        <translation>Abweichende Eingaben:</translation>
    </message>
    <message>
        <source>Results that differ:</source>
        <translation>Abweichende Ergebnisse:</translation>
    </message>
    <message>
        <source>%1, baseline %2</source>
        <translation>%1, Bezug %2</translation>
    </message>
    <message>
        <source>%1, not in the baseline</source>
        <translation>%1, im Bezugsentwurf nicht vorhanden</translation>
    </message>
    <message>
        <source>removed, baseline %1</source>
        <translation>entfallen, Bezug %1</translation>
    </message>
    <message>
        <source>Shaded: speeds at which the engine cannot be run (%1).</source>
        <translation>Schattiert: Drehzahlen, bei denen sich der Motor nicht betreiben lässt (%1).</translation>
    </message>
    <message>
        <source>What this rests on</source>
        <translation>Worauf dies beruht</translation>
    </message>
    <message>
        <source>The space under the pistons as pump: adiabatic, filled through a quasi-steady reed, emptied through the inlet ports, with instant mixing; no pipes. The work on the backs of the pistons is deducted from brake values.</source>
        <translation>Raum unter den Kolben als Pumpe: adiabat, durch eine quasistationäre Zunge gefüllt, durch die Einlassschlitze geleert, mit sofortiger Vermischung; ohne Rohrleitungen. Die Arbeit an den Rückseiten der Kolben wird von den effektiven Werten abgezogen.</translation>
    </message>
    <message>
        <source>Radial compressor wheel, quasi-steady on curves of head and efficiency over the flow coefficient (radial blades: Cohen, Rogers and Saravanamuttoo, Gas Turbine Theory, ch. 4: secondary values), into an adiabatic plenum.</source>
        <translation>Radialverdichterrad, quasistationär nach Kennlinien von Druckzahl und Wirkungsgrad über der Durchflusszahl (radial endende Schaufeln: Cohen, Rogers und Saravanamuttoo, Gas Turbine Theory, Kap. 4: Sekundärwerte), das in einen adiabaten Sammler fördert.</translation>
    </message>
    <message>
        <source>A positive-displacement blower follows the wheel.</source>
        <translation>Ein Verdrängergebläse folgt dem Rad.</translation>
    </message>
    <message>
        <source>A turbine behind an adiabatic exhaust plenum drives the wheel, its efficiency a parabola of the speed ratio; the wheel turns where the powers meet. What the shaft drives is deducted from brake values.</source>
        <translation>Eine Turbine hinter einem adiabaten Abgassammler treibt das Rad, ihr Wirkungsgrad ist eine Parabel der Laufzahl; das Rad dreht dort, wo die Leistungen gleich sind. Was die Welle treibt, wird von den effektiven Werten abgezogen.</translation>
    </message>
    <message>
        <source>The power is deducted from brake values.</source>
        <translation>Die Leistung wird von den effektiven Werten abgezogen.</translation>
    </message>
    <message>
        <source>No pipes modelled: a tuned exhaust can breathe better, or worse.</source>
        <translation>Rohrleitungen sind nicht abgebildet: Ein abgestimmter Auspuff kann die Füllung verbessern oder verschlechtern.</translation>
    </message>
    <message>
        <source>%1, follows the speed</source>
        <translation>%1, folgt der Drehzahl</translation>
    </message>
    <message>
        <source>Verdict on published figures</source>
        <translation>Urteil über veröffentlichte Angaben</translation>
    </message>
    <message>
        <source>Verdict on “%1”</source>
        <translation>Urteil über „%1“</translation>
    </message>
    <message>
        <source>A verdict compares published numbers with arithmetic, published bands and this design, not with any engine that was built.</source>
        <translation>Ein Urteil vergleicht veröffentlichte Zahlen mit Rechnungen, veröffentlichten Bereichen und diesem Entwurf, nicht mit einem gebauten Motor.</translation>
    </message>
    <message>
        <source>Contact figures are nominal: they compare designs and never release one for manufacture.</source>
        <translation>Kontaktwerte sind Nennwerte: Sie vergleichen Entwürfe und geben nie einen zur Fertigung frei.</translation>
    </message>
    <message>
        <source>Running engines burst, burn and throw parts.</source>
        <translation>Laufende Motoren bersten, brennen und schleudern Teile.</translation>
    </message>
    <message>
        <source>The space under the pistons as pump: filled through a row that the skirt uncovers, quasi-steady and both ways, emptied through the inlet ports, with instant mixing; no pipes. The work on the backs of the pistons is deducted from brake values.</source>
        <translation>Der Raum unter den Kolben als Pumpe: gefüllt durch eine Schlitzreihe, die der Schaft freigibt, quasistationär und in beiden Richtungen, entleert durch die Einlassschlitze, mit sofortiger Mischung; ohne Rohrleitungen. Die Arbeit an den Rückseiten der Kolben ist von den effektiven Werten abgezogen.</translation>
    </message>
</context>
<context>
    <name>ReportUnknowns</name>
    <message>
        <source>not known of any engine</source>
        <translation>von keinem Motor bekannt</translation>
    </message>
    <message>
        <source>; as designed %1</source>
        <translation>; wie entworfen %1</translation>
    </message>
    <message>
        <source>shaft speed, rpm</source>
        <translation>Wellendrehzahl, 1/min</translation>
    </message>
    <message>
        <source>What would have to be true</source>
        <translation>Was gelten müsste</translation>
    </message>
    <message>
        <source>None of %1 engines keeps to the published figures.</source>
        <translation>Keiner von %1 Motoren hält die veröffentlichten Angaben ein.</translation>
    </message>
    <message>
        <source>%1 % of the possible engines keep to the published figures.</source>
        <translation>%1 % der möglichen Motoren halten die veröffentlichten Angaben ein.</translation>
    </message>
    <message>
        <source>%1 of %2 %3</source>
        <translation>%1 aus %2 %3</translation>
    </message>
    <message>
        <source>9 of 10 of those that keep to them, of what was thought possible:</source>
        <translation>Neun von zehn derer, die sie einhalten, aus dem, was für möglich gehalten wurde:</translation>
    </message>
    <message>
        <source>What is not known</source>
        <translation>Was nicht bekannt ist</translation>
    </message>
    <message>
        <source>%1 engines drawn from the ranges of %2 inputs: %3 % run, %4 % cannot be built, %5 % cannot run. Filled: where 9 of 10 of them lie, darker half of them; the line is the design as it is.</source>
        <translation>%1 Motoren aus den Bereichen von %2 Eingaben gezogen: %3 % laufen, %4 % sind nicht baubar, %5 % laufen nicht. Gefüllt: wo neun von zehn liegen, dunkler die Hälfte; die Linie ist der Entwurf, wie er ist.</translation>
    </message>
    <message>
        <source>Results, 9 of 10 engines:</source>
        <translation>Ergebnisse, neun von zehn Motoren:</translation>
    </message>
    <message>
        <source>What decides this</source>
        <translation>Was dies bestimmt</translation>
    </message>
    <message>
        <source>The nearest misses by %1 %.</source>
        <translation>Der nächste verfehlt sie um %1 %.</translation>
    </message>
</context>
<context>
    <name>Samples</name>
    <message>
        <source>Biogas pump set</source>
        <translation>Biogas-Pumpensatz</translation>
    </message>
    <message>
        <source>Classroom model</source>
        <translation>Modell für den Unterricht</translation>
    </message>
    <message>
        <source>Hydrogen buoy generator</source>
        <translation>Bojengenerator mit Wasserstoffmotor</translation>
    </message>
    <message>
        <source>Sketched lobes with blower</source>
        <translation>Skizzierte Nocken mit Gebläse</translation>
    </message>
    <message>
        <source>Unequal lobes</source>
        <translation>Ungleiche Nocken</translation>
    </message>
    <message>
        <source>Invented, not a real engine. Two lobes sketched by hand as knots of a spline, four cylinders, and a positive-displacement blower with a plenum and an after-cooler instead of a given supply pressure. Look at: the knots on the unrolled track (drag one and every plot follows); the plenum pressure, which the blower builds up by itself and which rises with speed; the blower&apos;s share of the indicated work. A starter must turn it past about 210 rpm before the rollers keep contact.</source>
        <translation>Erfunden, kein wirklicher Motor. Zwei Nocken, von Hand als Stützpunkte eines Splines skizziert, vier Zylinder und ein Verdrängergebläse mit Sammler und Ladeluftkühler statt eines vorgegebenen Ladedrucks. Zu beachten: die Stützpunkte auf der abgewickelten Bahn (ziehen Sie an einem, und jedes Diagramm folgt); der Druck im Sammler, den das Gebläse von selbst aufbaut und der mit der Drehzahl steigt; der Anteil des Gebläses an der indizierten Arbeit. Ein Anlasser muss ihn über etwa 210/min drehen, bevor die Rollen Kontakt halten.</translation>
    </message>
    <message>
        <source>Harbour-crane auxiliary</source>
        <translation>Hilfsmotor eines Hafenkrans</translation>
    </message>
    <message>
        <source>Turbocharged works generator</source>
        <translation>Werksgenerator mit Abgasturbolader</translation>
    </message>
    <message>
        <source>Invented, not a real engine. Four cylinders on two-lobed tracks drive the generator of a workshop on methane. A turbine behind an exhaust plenum drives a compressor wheel, and a blower on the shaft follows the wheel: it brings the air to start with and at low speed. Look at: the air path with each stage, its power and who pays; the speed of the wheel, found where the powers meet; how little the blower costs once the wheel turns; the pressure in the exhaust plenum, against which the cylinders scavenge. The closed track holds the rollers while the starter turns it.</source>
        <translation>Erfunden, kein wirklicher Motor. Vier Zylinder auf Bahnen mit zwei Nocken treiben mit Methan den Generator einer Werkstatt. Eine Turbine hinter einem Abgassammler treibt ein Verdichterrad, und ein Gebläse an der Welle folgt dem Rad: Es bringt die Luft zum Anlassen und bei niedriger Drehzahl. Zu beachten: der Luftweg mit jeder Stufe, ihrer Leistung und wer sie aufbringt; die Drehzahl des Rads, die sich dort einstellt, wo die Leistungen gleich sind; wie wenig das Gebläse kostet, sobald das Rad dreht; der Druck im Abgassammler, gegen den die Zylinder spülen. Die geschlossene Bahn hält die Rollen, während der Anlasser dreht.</translation>
    </message>
    <message>
        <source>Fire pump with geared wheel</source>
        <translation>Feuerlöschpumpe mit Verdichterrad am Getriebe</translation>
    </message>
    <message>
        <source>Invented, not a real engine. Three cylinders on two-lobed tracks drive the pump of a fire brigade on methane. A centrifugal wheel, geared to the shaft, fills the plenum, so that the pressure of the supply grows with the square of the speed. The adjuster follows the speed by a schedule: its helix turns the exhaust track and moves it outward, for high compression at low speed and less where the wheel gives more, and the peak pressure stays below 55 bar. Look at: the strip below the torque curve, where the points of the schedule are dragged and the dashed line is the fixed setting; Find the best, which says what the schedule buys; the map over speed and load; the air path with the wheel and its power. The closed track holds the rollers while the starter turns it.</source>
        <translation>Erfunden, kein wirklicher Motor. Drei Zylinder auf Kurvenbahnen mit zwei Nocken treiben mit Methan die Pumpe einer Feuerwehr. Ein Verdichterrad, über ein Getriebe von der Welle angetrieben, füllt den Sammler, sodass der Ladedruck mit dem Quadrat der Drehzahl wächst. Der Versteller folgt der Drehzahl nach einer Kennlinie: Seine Steilverzahnung dreht die Auslassbahn und schiebt sie nach außen, für hohe Verdichtung bei niedriger Drehzahl und weniger dort, wo das Rad mehr liefert, und der Höchstdruck bleibt unter 55 bar. Zu beachten: der Streifen unter der Drehmomentkurve, auf dem die Punkte der Kennlinie gezogen werden und die gestrichelte Linie die feste Stellung ist; die Suche nach dem besten Wert, die sagt, was die Kennlinie bringt; das Kennfeld über Drehzahl und Last; der Luftweg mit dem Rad und seiner Leistung. Die geschlossene Bahn hält die Rollen, während der Anlasser dreht.</translation>
    </message>
    <message>
        <source>Invented, not a real engine. A demonstration model with one lobe and one cylinder, turned slowly by hand or motor without fuel. Look at: one revolution of the shaft is one cycle, so that shaft and cycle degrees are the same; the large ports, easy to see open and close, through which the faintest breath of a fan renews the charge many times over; the pressure, which rises and falls almost alike because nothing burns; the closed track, which also pulls the piston where gas and friction would lift it off.</source>
        <translation>Erfunden, kein wirklicher Motor. Ein Vorführmodell mit einem Nocken und einem Zylinder, von Hand oder Motor langsam und ohne Kraftstoff gedreht. Zu beachten: Eine Umdrehung der Welle ist ein Arbeitsspiel, sodass Grad der Welle und Grad des Arbeitsspiels dasselbe sind; die großen Schlitze, deren Öffnen und Schließen gut zu sehen ist und durch die schon der Hauch eines Lüfters die Ladung viele Male erneuert; der Druck, der fast gleich steigt und fällt, weil nichts brennt; die geschlossene Bahn, die den Kolben auch zieht, wo Gas und Reibung ihn abheben würden.</translation>
    </message>
    <message>
        <source>Invented, not a real engine. One pattern fills the whole revolution with two different lobes: a long one with a dwell at inner dead centre and a short, quick one. Every rise and return is a cycle of its own. Look at: the two cycles side by side in pressure and torque; the port events, listed for each cycle; what the quick lobe costs in pressure angle and contact stress, and what it gains in time for the gas to change. A starter must turn it past about 360 rpm before the rollers keep contact.</source>
        <translation>Erfunden, kein wirklicher Motor. Eine Kurve füllt die ganze Umdrehung mit zwei verschiedenen Nocken: einem langen mit einer Rast im inneren Totpunkt und einem kurzen, schnellen. Jeder Anstieg mit seinem Rückgang ist ein eigenes Arbeitsspiel. Zu beachten: die beiden Arbeitsspiele nebeneinander in Druck und Drehmoment; die Steuerereignisse, für jedes Arbeitsspiel aufgeführt; was der schnelle Nocken an Pressungswinkel und Kontaktpressung kostet und was er an Zeit für den Ladungswechsel gewinnt. Ein Anlasser muss ihn über etwa 360/min drehen, bevor die Rollen Kontakt halten.</translation>
    </message>
    <message>
        <source>Invented, not a real engine. One cylinder on three-lobed tracks charges the batteries of a measuring buoy on very lean hydrogen: three power strokes per revolution from a single chamber, slowly turning. Look at: three cycles in one revolution, so that 120 degrees of the shaft are 360 degrees of a cycle; the lean burn, short and cool, with a low peak pressure; the pressure angle, which three lobes on a small circle drive up (raise the stroke and watch the limit). The generator, used as a motor, starts it: the rollers keep contact above about 240 rpm only.</source>
        <translation>Erfunden, kein wirklicher Motor. Ein Zylinder an Bahnen mit drei Nocken lädt die Batterien einer Messboje mit sehr magerem Wasserstoff: drei Arbeitshübe je Umdrehung aus einem einzigen Brennraum, langsam gedreht. Zu beachten: drei Arbeitsspiele in einer Umdrehung, sodass 120 Grad der Welle 360 Grad eines Arbeitsspiels sind; die magere Verbrennung, kurz und kühl, mit niedrigem Höchstdruck; der Pressungswinkel, den drei Nocken auf kleinem Kreis hochtreiben (den Kolbenhub vergrößern und die Grenze beobachten). Der Generator startet ihn als Motor: Die Rollen halten nur über etwa 240/min Kontakt.</translation>
    </message>
    <message>
        <source>Invented, not a real engine. Three cylinders on two-lobed tracks drive an irrigation pump at a steady speed on cleaned biogas. Look at: the exhaust lead of 5 degrees, which opens the exhaust first and closes it first (drag it and watch blowdown and after-charge); the short dwell at inner dead centre, which holds the volume while the gas burns; six power strokes per revolution, which make torque smooth although every single piston pulses; the range of speed in which the rollers keep contact. It is started by a motor that turns it past about 330 rpm: below that, ring friction holds the pistons back on their way out.</source>
        <translation>Erfunden, kein wirklicher Motor. Drei Zylinder an Bahnen mit zwei Nocken treiben mit gereinigtem Biogas eine Bewässerungspumpe bei gleichbleibender Drehzahl. Zu beachten: die Auslassvoreilung von 5 Grad, die den Auslass zuerst öffnet und zuerst schließt (ziehen Sie daran und beobachten Sie Vorauslass und Nachladung); die kurze Rast im inneren Totpunkt, die das Volumen hält, während das Gas verbrennt; sechs Arbeitshübe je Umdrehung, die das Drehmoment gleichmäßig machen, obwohl jeder einzelne Kolben stößt; der Drehzahlbereich, in dem die Rollen Kontakt halten. Gestartet wird er von einem Motor, der ihn über etwa 330/min dreht: Darunter hält die Ringreibung die Kolben beim Auswärtsgang zurück.</translation>
    </message>
    <message>
        <source>Invented, not a real engine. One piston per cylinder works against a fixed head and uncovers both rows of ports; its back pumps the air through a reed valve and the inlet ports, so that no blower is needed. Look at: the section with its head and the ports side by side in one liner; the timing, the same before and after outer dead centre; the under-piston pressure beside that in the chamber; the delivery ratio of the pump and what it costs; the surface to volume that a head adds. The closed track holds the rollers while the starter turns it.</source>
        <translation>Erfunden, kein wirklicher Motor. Je Zylinder arbeitet ein Kolben gegen einen festen Zylinderkopf und legt beide Schlitzreihen frei; seine Rückseite pumpt die Luft durch ein Zungenventil und die Einlassschlitze, sodass kein Gebläse nötig ist. Zu beachten: der Schnitt mit seinem Kopf und den Schlitzen nebeneinander in einer Laufbuchse; die Steuerzeiten, vor und nach dem äußeren Totpunkt gleich; der Druck unter dem Kolben neben dem im Brennraum; der Luftaufwand der Pumpe und was er kostet; das Verhältnis von Oberfläche zu Volumen, das ein Kopf vergrößert. Die geschlossene Kurvenbahn hält die Rollen, während der Anlasser dreht.</translation>
    </message>
    <message>
        <source>Terrace sprayer</source>
        <translation>Terrassenspritze</translation>
    </message>
    <message>
        <source>Invented, not a real engine. Two small one-sided cylinders draw petrol and air as a mixture: the skirt uncovers its own row of ports near inner dead centre, the back of the piston pumps, and what of the mixture is not trapped leaves unburnt through the exhaust. Look at: the fuel lost and what it does to the specific consumption; the pressure under the piston, low until the skirt uncovers its row; the mixture that is pushed back before the row closes; the same engine with the fuel injected. The closed track holds the rollers while the cord turns it.</source>
        <translation>Erfunden, kein wirklicher Motor. Zwei kleine einseitige Zylinder saugen Benzin und Luft als Gemisch an: Der Schaft gibt nahe dem inneren Totpunkt seine eigene Schlitzreihe frei, die Rückseite des Kolbens pumpt, und was vom Gemisch nicht eingeschlossen wird, geht unverbrannt durch den Auslass. Zu beachten: der verlorene Kraftstoff und was er mit dem spezifischen Verbrauch macht; der Druck unter dem Kolben, niedrig, bis der Schaft seine Reihe freigibt; das Gemisch, das zurückgeschoben wird, bevor die Reihe schließt; derselbe Motor mit eingespritztem Kraftstoff. Die geschlossene Bahn hält die Rollen, während die Schnur ihn dreht.</translation>
    </message>
</context>
<context>
    <name>Scene</name>
    <message>
        <source>Inlet</source>
        <translation>Einlass</translation>
    </message>
    <message>
        <source>Exhaust</source>
        <translation>Auslass</translation>
    </message>
    <message>
        <source>rise</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>dwell</source>
        <translation>Rast</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rückgang</translation>
    </message>
</context>
<context>
    <name>SearchWords</name>
    <message>
        <source>compression ratio</source>
        <translation>Verdichtung Verdichtungsverhältnis Kompression</translation>
    </message>
    <message>
        <source>displacement swept volume capacity</source>
        <translation>Hubraum Hubvolumen</translation>
    </message>
    <message>
        <source>stroke travel amplitude</source>
        <translation>Kolbenhub Weg Amplitude</translation>
    </message>
    <message>
        <source>speed rpm revs</source>
        <translation>Drehzahl Geschwindigkeit Umdrehungen rpm</translation>
    </message>
    <message>
        <source>torque power output</source>
        <translation>Drehmoment Moment Leistung</translation>
    </message>
    <message>
        <source>overlap blowdown scavenge timing after-charge</source>
        <translation>Überschneidung Vorauslass Spülung Steuerzeiten Nachladung</translation>
    </message>
    <message>
        <source>boost turbo supercharger charge</source>
        <translation>Ladedruck Aufladung Lader Gebläse</translation>
    </message>
    <message>
        <source>mass weight</source>
        <translation>Masse Gewicht</translation>
    </message>
    <message>
        <source>flywheel</source>
        <translation>Schwungrad Schwungmasse</translation>
    </message>
    <message>
        <source>ignition spark advance</source>
        <translation>Zündung Zündzeitpunkt</translation>
    </message>
    <message>
        <source>mixture equivalence lambda</source>
        <translation>Gemisch Lambda Luftverhältnis</translation>
    </message>
    <message>
        <source>undercut pressure angle stress hertz</source>
        <translation>Unterschnitt Druckwinkel Pressung Hertz</translation>
    </message>
</context>
<context>
    <name>SectionPainter</name>
    <message>
        <source>lifts off</source>
        <translation>hebt ab</translation>
    </message>
</context>
<context>
    <name>Shortcuts</name>
    <message>
        <source>In drawings and plots</source>
        <translation>In Zeichnungen und Diagrammen</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Turn or stop the shaft</source>
        <translation>Welle drehen oder anhalten</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <source>Turn the shaft; Shift: fine, Ctrl: coarse</source>
        <translation>Welle drehen; Umschalt: fein, Strg: grob</translation>
    </message>
    <message>
        <source>Page Up, Page Down</source>
        <translation>Bild auf, Bild ab</translation>
    </message>
    <message>
        <source>Previous event, next event</source>
        <translation>Voriges Ereignis, nächstes Ereignis</translation>
    </message>
    <message>
        <source>Drag</source>
        <translation>Ziehen</translation>
    </message>
    <message>
        <source>Turn the shaft</source>
        <translation>Welle drehen</translation>
    </message>
    <message>
        <source>Home, double click</source>
        <translation>Pos1, Doppelklick</translation>
    </message>
    <message>
        <source>Show the whole turn</source>
        <translation>Ganze Umdrehung zeigen</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Mausrad</translation>
    </message>
    <message>
        <source>Zoom the angle; with Ctrl the values</source>
        <translation>Winkel vergrößern; mit Strg die Werte</translation>
    </message>
    <message>
        <source>Shift and drag</source>
        <translation>Umschalt und ziehen</translation>
    </message>
    <message>
        <source>Zoom to a range</source>
        <translation>Auf einen Bereich vergrößern</translation>
    </message>
    <message>
        <source>Middle button and drag</source>
        <translation>Mittlere Taste und ziehen</translation>
    </message>
    <message>
        <source>Move what is shown</source>
        <translation>Ausschnitt verschieben</translation>
    </message>
    <message>
        <source>At a handle</source>
        <translation>An einem Griff</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>To the next handle of a drawing</source>
        <translation>Zum nächsten Griff einer Zeichnung</translation>
    </message>
    <message>
        <source>Arrow keys</source>
        <translation>Pfeiltasten</translation>
    </message>
    <message>
        <source>Move the handle; Shift: fine</source>
        <translation>Griff bewegen; Umschalt: fein</translation>
    </message>
    <message>
        <source>Drag a diamond, dot or bar</source>
        <translation>Raute, Punkt oder Balken ziehen</translation>
    </message>
    <message>
        <source>Move a boundary, lift, knot or port edge; Shift: fine</source>
        <translation>Abschnittsgrenze, Weg, Stützpunkt oder Schlitzkante verschieben; Umschalt: fein</translation>
    </message>
    <message>
        <source>Enter, double click</source>
        <translation>Eingabe, Doppelklick</translation>
    </message>
    <message>
        <source>Exact number</source>
        <translation>Genaue Zahl</translation>
    </message>
    <message>
        <source>Double click on a curve of knots, or Insert</source>
        <translation>Doppelklick auf eine Kurve mit Stützpunkten oder Einfg</translation>
    </message>
    <message>
        <source>Put a knot there</source>
        <translation>Dort einen Stützpunkt setzen</translation>
    </message>
    <message>
        <source>Delete, Backspace on a knot</source>
        <translation>Entf, Rücktaste an einem Stützpunkt</translation>
    </message>
    <message>
        <source>Remove it; free its slope</source>
        <translation>Herausnehmen; seine Steigung freigeben</translation>
    </message>
    <message>
        <source>Drag a knot on velocity, acceleration</source>
        <translation>Stützpunkt auf Geschwindigkeit, Beschleunigung ziehen</translation>
    </message>
    <message>
        <source>Prescribe its slope; move its lift until the acceleration follows</source>
        <translation>Steigung vorgeben; Weg verschieben, bis die Beschleunigung folgt</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Leave the handle; during a drag: take the move back</source>
        <translation>Loslassen; beim Ziehen: zurück zum Anfang</translation>
    </message>
    <message>
        <source>In an input field</source>
        <translation>In einem Eingabefeld</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <source>Change it in steps; Shift: fine, Ctrl: coarse</source>
        <translation>Schrittweise ändern; Umschalt: fein, Strg: grob</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Restore the previous value</source>
        <translation>Den vorigen Wert wiederherstellen</translation>
    </message>
    <message>
        <source>In a pane</source>
        <translation>In einem Feld</translation>
    </message>
    <message>
        <source>Double click beside the name</source>
        <translation>Doppelklick neben dem Namen</translation>
    </message>
    <message>
        <source>Show only this view, or all again</source>
        <translation>Nur diese Ansicht zeigen oder wieder alle</translation>
    </message>
    <message>
        <source>Choose another view</source>
        <translation>Andere Ansicht wählen</translation>
    </message>
    <message>
        <source>Keyboard shortcuts</source>
        <translation>Tastenkürzel</translation>
    </message>
    <message>
        <source>Find a key or what it does</source>
        <translation>Taste oder Wirkung suchen</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Wirkung</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Options, Show another view here</source>
        <translation>Optionen &gt; Hier eine andere Ansicht zeigen</translation>
    </message>
</context>
<context>
    <name>SideWords</name>
    <message>
        <source>Track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Inlet track</source>
        <translation>Einlassbahn</translation>
    </message>
    <message>
        <source>Exhaust track</source>
        <translation>Auslassbahn</translation>
    </message>
    <message>
        <source>track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>inlet track</source>
        <translation>Einlassbahn</translation>
    </message>
    <message>
        <source>exhaust track</source>
        <translation>Auslassbahn</translation>
    </message>
    <message>
        <source>Piston</source>
        <translation>Kolben</translation>
    </message>
    <message>
        <source>Inlet piston</source>
        <translation>Einlasskolben</translation>
    </message>
    <message>
        <source>Exhaust piston</source>
        <translation>Auslasskolben</translation>
    </message>
</context>
<context>
    <name>StripPainter</name>
    <message>
        <source>Inlet track, unrolled</source>
        <translation>Einlassbahn, abgewickelt</translation>
    </message>
    <message>
        <source>Exhaust track, unrolled</source>
        <translation>Auslassbahn, abgewickelt</translation>
    </message>
    <message>
        <source>track moves</source>
        <translation>Bahn läuft</translation>
    </message>
    <message>
        <source>lifts off</source>
        <translation>hebt ab</translation>
    </message>
    <message>
        <source>↓ turns the shaft</source>
        <translation>↓ dreht die Welle</translation>
    </message>
    <message>
        <source>↑ slows the shaft</source>
        <translation>↑ bremst die Welle</translation>
    </message>
    <message>
        <source>Track, unrolled</source>
        <translation>Bahn, abgewickelt</translation>
    </message>
</context>
<context>
    <name>TrackHandles</name>
    <message>
        <source>lift</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Exhaust lead</source>
        <translation>Auslassvoreilung</translation>
    </message>
    <message>
        <source>ahead by</source>
        <translation>voraus um</translation>
    </message>
    <message>
        <source>Change exhaust lead</source>
        <translation>Auslassvoreilung ändern</translation>
    </message>
    <message>
        <source>track angle</source>
        <translation>Bahnwinkel</translation>
    </message>
    <message>
        <source>, plotted %1</source>
        <translation>, gezeichnet %1</translation>
    </message>
    <message>
        <source>
+ adjuster %1 = %2 in total</source>
        <translation>
+ Versteller %1 = %2 insgesamt</translation>
    </message>
    <message>
        <source>slope</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <source>acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
</context>
<context>
    <name>TurnEvents</name>
    <message>
        <source>IDC</source>
        <translation>IT</translation>
    </message>
    <message>
        <source>EO</source>
        <translation>AÖ</translation>
    </message>
    <message>
        <source>IO</source>
        <translation>EÖ</translation>
    </message>
    <message>
        <source>ODC</source>
        <translation>AT</translation>
    </message>
    <message>
        <source>EC</source>
        <translation>AS</translation>
    </message>
    <message>
        <source>IC</source>
        <translation>ES</translation>
    </message>
    <message>
        <source>inner dead centre</source>
        <translation>innerer Totpunkt</translation>
    </message>
    <message>
        <source>exhaust opens</source>
        <translation>Auslass öffnet</translation>
    </message>
    <message>
        <source>inlet opens</source>
        <translation>Einlass öffnet</translation>
    </message>
    <message>
        <source>outer dead centre</source>
        <translation>äußerer Totpunkt</translation>
    </message>
    <message>
        <source>exhaust closes</source>
        <translation>Auslass schließt</translation>
    </message>
    <message>
        <source>inlet closes</source>
        <translation>Einlass schließt</translation>
    </message>
</context>
<context>
    <name>Units</name>
    <message>
        <source>shaft °</source>
        <translation>° Welle</translation>
    </message>
    <message>
        <source>cycle °</source>
        <translation>° Arbeitsspiel</translation>
    </message>
    <message>
        <source>° cycle</source>
        <translation>° Arbeitsspiel</translation>
    </message>
    <message>
        <source>mm/rev</source>
        <translation>mm/U</translation>
    </message>
    <message>
        <source>in/rev</source>
        <translation>in/U</translation>
    </message>
    <message>
        <source>rpm</source>
        <translation>1/min</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source>Of %1 published figures and statements %2 are contradicted, %3 doubtful, %4 not contradicted, %5 not judged.</source>
        <translation>Von %1 veröffentlichten Angaben und Aussagen sind %2 widerlegt, %3 zweifelhaft, %4 nicht widerlegt, %5 nicht beurteilt.</translation>
    </message>
    <message>
        <source>Published</source>
        <translation>Veröffentlicht</translation>
    </message>
    <message>
        <source>Arithmetic</source>
        <translation>Rechnung</translation>
    </message>
    <message>
        <source>This design</source>
        <translation>Dieser Entwurf</translation>
    </message>
    <message>
        <source>Band, 5 to 95 %</source>
        <translation>Band, 5 bis 95 %</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>given: %1</source>
        <translation>veröffentlicht: %1</translation>
    </message>
    <message>
        <source>assumed: %1</source>
        <translation>angenommen: %1</translation>
    </message>
    <message>
        <source>the design: %1</source>
        <translation>Entwurf: %1</translation>
    </message>
    <message>
        <source>Rests on %1.</source>
        <translation>Beruht auf: %1.</translation>
    </message>
    <message>
        <source>Would be overturned by: %1</source>
        <translation>Widerlegt würde es durch: %1</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>confidence: %1</source>
        <translation>Verlässlichkeit: %1</translation>
    </message>
    <message>
        <source>the design, all of it chosen</source>
        <translation>dem Entwurf, ganz gewählt</translation>
    </message>
</context>
<context>
    <name>ViewThemes</name>
    <message>
        <source>&amp;Engine</source>
        <translation>&amp;Motor</translation>
    </message>
    <message>
        <source>&amp;Tracks and motion</source>
        <translation>&amp;Bahnen und Bewegung</translation>
    </message>
    <message>
        <source>&amp;Gas and ports</source>
        <translation>&amp;Gas und Schlitze</translation>
    </message>
    <message>
        <source>&amp;Loads and balance</source>
        <translation>&amp;Lasten und Ausgleich</translation>
    </message>
    <message>
        <source>&amp;Studies and claims</source>
        <translation>&amp;Studien und Angaben</translation>
    </message>
    <message>
        <source>L&amp;ists and custom plots</source>
        <translation>L&amp;isten und eigene Diagramme</translation>
    </message>
</context>
<context>
    <name>Walk</name>
    <message>
        <source>%1 of the shaft (%2 ms)</source>
        <translation>%1 der Welle (%2 ms)</translation>
    </message>
    <message>
        <source>%1 of the cycle before inner dead centre</source>
        <translation>%1 des Arbeitsspiels vor dem inneren Totpunkt</translation>
    </message>
    <message>
        <source>%1 of the cycle after inner dead centre</source>
        <translation>%1 des Arbeitsspiels nach dem inneren Totpunkt</translation>
    </message>
    <message>
        <source>The ports close</source>
        <translation>Die Schlitze schließen</translation>
    </message>
    <message>
        <source>The last port closes on %1 of gas at %2: from here on the charge is trapped.</source>
        <translation>Der letzte Schlitz schließt über %1 Gas bei %2: Von hier an ist die Ladung eingeschlossen.</translation>
    </message>
    <message>
        <source>The last port closes on %1 of gas: from here on the charge is trapped.</source>
        <translation>Der letzte Schlitz schließt über %1 Gas: Von hier an ist die Ladung eingeschlossen.</translation>
    </message>
    <message>
        <source>Both pistons now move inward and squeeze it to %1, a trapped compression ratio of %2.</source>
        <translation>Beide Kolben laufen nun nach innen und verdichten sie auf %1; das entspricht einem effektiven Verdichtungsverhältnis von %2.</translation>
    </message>
    <message>
        <source>Combustion starts</source>
        <translation>Brennbeginn</translation>
    </message>
    <message>
        <source>It burns for %1 of the cycle, so it has to start early for the pressure to be highest when the pistons begin to part.</source>
        <translation>Sie brennt über %1 des Arbeitsspiels und muss deshalb früh beginnen, damit der Druck am höchsten ist, wenn sich die Kolben zu trennen beginnen.</translation>
    </message>
    <message>
        <source>Inner dead centre</source>
        <translation>Innerer Totpunkt</translation>
    </message>
    <message>
        <source>There is no head: the two crowns and the bore are all that encloses the gas.</source>
        <translation>Einen Zylinderkopf gibt es nicht: Die beiden Kolbenböden und die Bohrung sind alles, was das Gas umschließt.</translation>
    </message>
    <message>
        <source>Pressure has risen to %1 by compression alone, because nothing burns.</source>
        <translation>Der Druck ist allein durch Verdichtung auf %1 gestiegen, denn nichts brennt.</translation>
    </message>
    <message>
        <source>Pressure is %1 and the flat top of the lobes holds the pistons here while the gas burns.</source>
        <translation>Der Druck beträgt %1, und die flache Kuppe der Kurve hält die Kolben hier, während das Gas brennt.</translation>
    </message>
    <message>
        <source>Highest pressure</source>
        <translation>Höchster Druck</translation>
    </message>
    <message>
        <source>Pressure peaks at %1, %2.</source>
        <translation>Der Druck erreicht seinen Höchstwert %1, %2.</translation>
    </message>
    <message>
        <source>It pushes both rollers onto their tracks, and where a track slopes away this force turns the shaft.</source>
        <translation>Er drückt beide Rollen auf ihre Bahnen, und wo eine Bahn abfällt, dreht diese Kraft die Welle.</translation>
    </message>
    <message>
        <source>The exhaust opens</source>
        <translation>Der Auslass öffnet</translation>
    </message>
    <message>
        <source>The exhaust piston uncovers its ports with %1 still in the chamber.</source>
        <translation>Der Auslasskolben gibt seine Schlitze frei, während noch %1 im Brennraum herrschen.</translation>
    </message>
    <message>
        <source>The exhaust piston uncovers its ports.</source>
        <translation>Der Auslasskolben gibt seine Schlitze frei.</translation>
    </message>
    <message>
        <source>For the next %1 burnt gas rushes out by its own pressure before the inlet opens: the blowdown.</source>
        <translation>Während der nächsten %1 strömt verbranntes Gas unter seinem eigenen Druck aus, bevor der Einlass öffnet: der Vorauslass.</translation>
    </message>
    <message>
        <source>The inlet opens</source>
        <translation>Der Einlass öffnet</translation>
    </message>
    <message>
        <source>The chamber pressure is still above the supply pressure, so some burnt gas first flows back into the inlet; more blowdown would avoid that.</source>
        <translation>Der Druck im Brennraum liegt noch über dem Ladedruck, sodass zuerst etwas verbranntes Gas in den Einlass zurückströmt; ein längerer Vorauslass würde das vermeiden.</translation>
    </message>
    <message>
        <source>Fresh gas flows in at this side and pushes burnt gas out at the other: scavenging.</source>
        <translation>Frischgas strömt auf dieser Seite ein und schiebt verbranntes Gas auf der anderen hinaus: die Spülung.</translation>
    </message>
    <message>
        <source>Outer dead centre</source>
        <translation>Äußerer Totpunkt</translation>
    </message>
    <message>
        <source>The pistons are farthest apart and the chamber volume is largest, %1.</source>
        <translation>Die Kolben stehen ganz außen, und der Brennraum ist am größten, %1.</translation>
    </message>
    <message>
        <source>Both rows of ports are open together for %1; by now %2 % of the gas inside is burnt gas.</source>
        <translation>Beide Schlitzreihen sind %1 lang gemeinsam offen; jetzt sind %2 % des Gases verbranntes Gas.</translation>
    </message>
    <message>
        <source>Both rows of ports are open together for %1, the time for scavenging.</source>
        <translation>Beide Schlitzreihen sind %1 lang gemeinsam offen, die Zeit für die Spülung.</translation>
    </message>
    <message>
        <source>The exhaust closes</source>
        <translation>Der Auslass schließt</translation>
    </message>
    <message>
        <source>The inlet closes</source>
        <translation>Der Einlass schließt</translation>
    </message>
    <message>
        <source>The exhaust ports close %1 before the inlet ports.</source>
        <translation>Die Auslassschlitze schließen %1 vor den Einlassschlitzen.</translation>
    </message>
    <message>
        <source>The inlet ports close %1 before the exhaust ports.</source>
        <translation>Die Einlassschlitze schließen %1 vor den Auslassschlitzen.</translation>
    </message>
    <message>
        <source>Until the inlet closes too, the supply can add charge that no longer escapes: the after-charge.</source>
        <translation>Bis auch der Einlass schließt, kann die Luftversorgung Ladung nachschieben, die nicht mehr entweicht: die Nachladung.</translation>
    </message>
    <message>
        <source>Until the exhaust closes too, fresh charge can escape: some exhaust lead would turn the order round.</source>
        <translation>Bis auch der Auslass schließt, kann Frischladung entweichen: Etwas Auslassvoreilung würde die Reihenfolge umkehren.</translation>
    </message>
    <message>
        <source>It burns for %1 of the cycle, while the pistons already part.</source>
        <translation>Sie brennt %1 des Arbeitsspiels lang, während sich die Kolben schon voneinander entfernen.</translation>
    </message>
    <message>
        <source>Pressure is %1; the flat tops of the lobes hold both pistons still for %2 of the cycle, combustion lasts %3.</source>
        <translation>Der Druck ist %1; die flachen Kuppen der Nocken halten beide Kolben %2 des Arbeitsspiels lang still, die Verbrennung dauert %3.</translation>
    </message>
    <message>
        <source>Pressure is %1; the pistons are never at rest together, so the volume changes throughout the combustion, which lasts %2 of the cycle.</source>
        <translation>Der Druck ist %1; in keinem Augenblick stehen beide Kolben zugleich still, das Volumen ändert sich also während der ganzen Verbrennung, die %2 des Arbeitsspiels dauert.</translation>
    </message>
    <message>
        <source>The inlet has been open for %1 already, so gas could leave through it: there is no blowdown.</source>
        <translation>Der Einlass ist schon seit %1 offen, Gas konnte also durch ihn entweichen: Einen Vorauslass gibt es nicht.</translation>
    </message>
    <message>
        <source>The exhaust back pressure is above the chamber pressure, so gas flows in from the exhaust until the inlet opens %1 later: this blowdown lets nothing out.</source>
        <translation>Der Abgasgegendruck ist höher als der Druck im Brennraum; deshalb strömt Gas aus dem Auslass herein, bis der Einlass %1 später öffnet: Dieser Vorauslass lässt nichts hinaus.</translation>
    </message>
    <message>
        <source>In the next %1, the blowdown, air first flows out and then back in, because the pressure of the growing chamber falls below the exhaust back pressure.</source>
        <translation>Während der nächsten %1, dem Vorauslass, strömt Luft erst hinaus und dann wieder herein, weil der Druck im größer werdenden Brennraum unter den Abgasgegendruck fällt.</translation>
    </message>
    <message>
        <source>In the next %1, the blowdown, burnt gas first rushes out and then comes back, because the pressure of the growing chamber falls below the exhaust back pressure.</source>
        <translation>Während der nächsten %1, dem Vorauslass, strömt verbranntes Gas erst hinaus und kommt dann zurück, weil der Druck im größer werdenden Brennraum unter den Abgasgegendruck fällt.</translation>
    </message>
    <message>
        <source>For the next %1 air flows out by its own pressure before the inlet opens: the blowdown.</source>
        <translation>Während der nächsten %1 strömt Luft unter ihrem eigenen Druck aus, bevor der Einlass öffnet: der Vorauslass.</translation>
    </message>
    <message>
        <source>The inlet piston uncovers its ports. Fresh gas can enter at this side and push the gas inside out at the other: scavenging.</source>
        <translation>Der Einlasskolben gibt seine Schlitze frei. Frischgas kann auf dieser Seite eintreten und das Gas im Zylinder auf der anderen hinausschieben: die Spülung.</translation>
    </message>
    <message>
        <source>The chamber pressure is still above the supply pressure, so some air first flows back into the inlet.</source>
        <translation>Der Druck im Brennraum liegt noch über dem Ladedruck; darum strömt zuerst etwas Luft in den Einlass zurück.</translation>
    </message>
    <message>
        <source>Fresh gas flows in at this side, and nothing leaves before the exhaust opens too.</source>
        <translation>Frischgas strömt auf dieser Seite ein, und nichts entweicht, bevor auch der Auslass öffnet.</translation>
    </message>
    <message>
        <source>Gas flows in at both sides, because the chamber pressure is below the exhaust back pressure too; it flows through only once the chamber has filled.</source>
        <translation>Gas strömt auf beiden Seiten ein, weil der Druck im Brennraum auch unter dem Abgasgegendruck liegt; hindurch strömt es erst, wenn der Brennraum gefüllt ist.</translation>
    </message>
    <message>
        <source>Fresh air flows in at this side and pushes the air inside out at the other, as scavenging does with burnt gas.</source>
        <translation>Frischluft strömt auf dieser Seite ein und schiebt die Luft im Zylinder auf der anderen hinaus, wie es die Spülung mit verbranntem Gas tut.</translation>
    </message>
    <message>
        <source>Both rows of ports are open together for %1; all that is inside is air, because nothing burns.</source>
        <translation>Beide Schlitzreihen sind %1 lang gemeinsam offen; im Brennraum ist nur Luft, weil nichts brennt.</translation>
    </message>
    <message>
        <source>Until the inlet closes too, charge flows back into the supply, because the pistons have already compressed the chamber above the supply pressure.</source>
        <translation>Bis auch der Einlass schließt, strömt Ladung in die Luftversorgung zurück, weil die Kolben den Druck im Brennraum schon über den Ladedruck gehoben haben.</translation>
    </message>
    <message>
        <source>Until the inlet closes too, the supply first adds charge that no longer escapes, the after-charge; then some flows back, because the pistons compress the chamber above the supply pressure.</source>
        <translation>Bis auch der Einlass schließt, schiebt die Luftversorgung zuerst Ladung nach, die nicht mehr entweicht, die Nachladung; dann strömt etwas zurück, weil die Kolben den Druck im Brennraum über den Ladedruck heben.</translation>
    </message>
    <message>
        <source>Until the exhaust closes too, gas comes back from it, because the chamber pressure is below the exhaust back pressure.</source>
        <translation>Bis auch der Auslass schließt, kommt Gas aus ihm zurück, weil der Druck im Brennraum unter dem Abgasgegendruck liegt.</translation>
    </message>
    <message>
        <source>Both tracks are fixed to the shaft and turn with it; the pistons only slide, each on a roller that its track pushes inward and the gas pushes back out.</source>
        <translation>Beide Bahnen sitzen fest auf der Welle und drehen sich mit ihr; die Kolben gleiten nur, jeder auf einer Rolle, die seine Bahn nach innen schiebt und das Gas wieder nach außen.</translation>
    </message>
    <message>
        <source>The exhaust track is %1 ahead of the inlet track.</source>
        <translation>Die Auslassbahn steht %1 vor der Einlassbahn.</translation>
    </message>
    <message>
        <source>The exhaust track is %1 behind the inlet track.</source>
        <translation>Die Auslassbahn steht %1 hinter der Einlassbahn.</translation>
    </message>
    <message>
        <source>Nothing has burned: what this pressure gives back on the way out is less than compression took, and the shaft has to be driven.</source>
        <translation>Nichts ist verbrannt: Was dieser Druck auf dem Weg nach außen zurückgibt, ist weniger, als das Verdichten kostete; die Welle muss angetrieben werden.</translation>
    </message>
    <message>
        <source>The charge, squeezed to %1 and %2, starts to burn %3.</source>
        <translation>Die auf %1 und %2 verdichtete Ladung beginnt %3 zu brennen.</translation>
    </message>
    <message>
        <source>The crowns stand %1 apart and the chamber is at its smallest, %2.</source>
        <translation>Die Kolbenböden stehen %1 auseinander, und der Brennraum ist am kleinsten, %2.</translation>
    </message>
    <message>
        <source>The rollers press on their tracks with %1 and %2, and where a track slopes away this force turns the shaft.</source>
        <translation>Die Rollen drücken mit %1 und %2 auf ihre Bahnen, und wo eine Bahn abfällt, dreht diese Kraft die Welle.</translation>
    </message>
    <message>
        <source>The inlet piston uncovers its ports with %1 in the chamber and %2 in the supply.</source>
        <translation>Der Einlasskolben gibt seine Schlitze frei bei %1 im Brennraum und %2 in der Luftversorgung.</translation>
    </message>
    <message>
        <source>The piston now moves inward and squeezes it to %1, a trapped compression ratio of %2.</source>
        <translation>Der Kolben bewegt sich nun nach innen und verdichtet sie auf %1; das entspricht einem effektiven Verdichtungsverhältnis von %2.</translation>
    </message>
    <message>
        <source>The crown stands %1 from the head and the chamber is at its smallest, %2.</source>
        <translation>Der Kolbenboden steht %1 vor dem Zylinderkopf, und der Brennraum ist mit %2 am kleinsten.</translation>
    </message>
    <message>
        <source>Crown, head and bore enclose the gas: the head is cold surface that two opposed pistons do without.</source>
        <translation>Kolbenboden, Zylinderkopf und Bohrung umschließen das Gas: Der Kopf ist kalte Oberfläche, die zwei gegenläufige Kolben sparen.</translation>
    </message>
    <message>
        <source>The track is fixed to the shaft and turns with it; the piston only slides, on a roller that the track pushes inward and the gas pushes back out. A fixed head closes the other end, and the one piston uncovers the exhaust ports and then the inlet ports.</source>
        <translation>Die Kurvenbahn sitzt fest auf der Welle und dreht sich mit ihr; der Kolben gleitet nur, auf einer Rolle, die die Bahn nach innen und das Gas wieder nach außen drückt. Ein fester Zylinderkopf schließt das andere Ende, und der eine Kolben gibt die Auslassschlitze und dann die Einlassschlitze frei.</translation>
    </message>
    <message>
        <source>The roller presses on its track with %1, and where the track slopes away this force turns the shaft.</source>
        <translation>Die Rolle drückt mit %1 auf ihre Bahn, und wo die Bahn abfällt, dreht diese Kraft die Welle.</translation>
    </message>
    <message>
        <source>The piston uncovers the exhaust ports with %1 still in the chamber.</source>
        <translation>Der Kolben gibt die Auslassschlitze frei, während noch %1 im Brennraum herrschen.</translation>
    </message>
    <message>
        <source>The piston uncovers the exhaust ports.</source>
        <translation>Der Kolben gibt die Auslassschlitze frei.</translation>
    </message>
    <message>
        <source>The piston is farthest from the head and the chamber volume is largest, %1.</source>
        <translation>Der Kolben ist am weitesten vom Zylinderkopf entfernt, und das Brennraumvolumen ist mit %1 am größten.</translation>
    </message>
    <message>
        <source>Why does the compression ratio count from here and not from outer dead centre?</source>
        <translation>Warum zählt das Verdichtungsverhältnis von hier an und nicht vom äußeren Totpunkt?</translation>
    </message>
    <message>
        <source>Before the last port closes nothing is enclosed: what the pistons displace goes out through the ports.</source>
        <translation>Bevor der letzte Schlitz schließt, ist nichts eingeschlossen: Was die Kolben verdrängen, geht durch die Schlitze hinaus.</translation>
    </message>
    <message>
        <source>What would be lost if it all burnt at once, exactly at inner dead centre?</source>
        <translation>Was ginge verloren, wenn alles auf einmal verbrennen würde, genau im inneren Totpunkt?</translation>
    </message>
    <message>
        <source>The pressure is high. How much does this cylinder turn the shaft now?</source>
        <translation>Der Druck ist hoch. Wie stark dreht dieser Zylinder jetzt die Welle?</translation>
    </message>
    <message>
        <source>Hardly at all: where the pistons stand still, the track is level, and a force straight onto it turns nothing.</source>
        <translation>Kaum: Wo die Kolben stillstehen, ist die Bahn eben, und eine Kraft gerade auf sie dreht nichts.</translation>
    </message>
    <message>
        <source>Is the torque largest where the pressure is?</source>
        <translation>Ist das Drehmoment dort am größten, wo der Druck es ist?</translation>
    </message>
    <message>
        <source>No: the track is still nearly level. Go on to where the shaft is pushed hardest.</source>
        <translation>Nein: Die Bahn ist noch fast eben. Gehen Sie weiter, dorthin, wo die Welle am stärksten angetrieben wird.</translation>
    </message>
    <message>
        <source>What would a steeper track change?</source>
        <translation>Was würde eine steilere Bahn ändern?</translation>
    </message>
    <message>
        <source>More torque from the same force, over a shorter part of the revolution, and more side force on the guides. The work stays that of the gas.</source>
        <translation>Mehr Drehmoment aus derselben Kraft, über einen kürzeren Teil der Umdrehung, und mehr Seitenkraft auf die Führungen. Die Arbeit bleibt die des Gases.</translation>
    </message>
    <message>
        <source>What does opening the exhaust earlier cost, and what does it bring?</source>
        <translation>Was kostet es, den Auslass früher zu öffnen, und was bringt es?</translation>
    </message>
    <message>
        <source>It costs the work that the gas would still do on the pistons; it brings time for the pressure to fall before the inlet opens.</source>
        <translation>Es kostet die Arbeit, die das Gas noch an den Kolben leisten würde; es bringt Zeit, in der der Druck fällt, bevor der Einlass öffnet.</translation>
    </message>
    <message>
        <source>Why should the exhaust open before the inlet?</source>
        <translation>Warum sollte der Auslass vor dem Einlass öffnen?</translation>
    </message>
    <message>
        <source>So that the pressure in the chamber has fallen below that of the supply; else burnt gas flows into the inlet.</source>
        <translation>Damit der Druck im Brennraum unter den Ladedruck gefallen ist; sonst strömt verbranntes Gas in den Einlass.</translation>
    </message>
    <message>
        <source>Count aloud: how many strokes has one cycle?</source>
        <translation>Zählen Sie laut mit: Wie viele Takte hat ein Arbeitsspiel?</translation>
    </message>
    <message>
        <source>Two strokes, once outward and once inward: a two-stroke.</source>
        <translation>Zwei Takte, einmal nach außen, einmal nach innen: ein Zweitakter.</translation>
    </message>
    <message>
        <source>Two strokes, once outward and once inward, both pistons at the same time: a two-stroke.</source>
        <translation>Zwei Takte, einmal nach außen, einmal nach innen, beide Kolben zugleich: ein Zweitakter.</translation>
    </message>
    <message>
        <source>Which side should close first, and why?</source>
        <translation>Welche Seite sollte zuerst schließen, und warum?</translation>
    </message>
    <message>
        <source>Here the shaft is pushed hardest, %1: the pressure has fallen to %2, but the track is now %3 steep.</source>
        <translation>Hier wird die Welle am stärksten angetrieben, %1: Der Druck ist auf %2 gefallen, aber die Bahn ist jetzt %3 steil.</translation>
    </message>
    <message>
        <source>This cylinder alone turns the shaft with %1.</source>
        <translation>Dieser Zylinder allein dreht die Welle mit %1.</translation>
    </message>
    <message>
        <source>None of the work, in theory, but the pressure would rise like a blow: a higher peak, more force on roller and track, more heat into the walls.</source>
        <translation>Von der Arbeit theoretisch nichts, aber der Druck stiege wie ein Schlag: höherer Höchstdruck, mehr Kraft auf Rolle und Bahn, mehr Wärme in die Wände.</translation>
    </message>
    <message>
        <source>The exhaust: then the supply can still add charge that no longer escapes. Without a lead of the exhaust piston the side that opens first closes last.</source>
        <translation>Der Auslass: Dann kann noch Ladung nachströmen, die nicht mehr entweicht. Ohne Voreilung des Auslasskolbens schließt die Seite zuletzt, die zuerst öffnet.</translation>
    </message>
    <message>
        <source>Hardest push</source>
        <translation>Stärkster Antrieb</translation>
    </message>
    <message>
        <source>Here the stroke is %1 on the inlet side and %2 on the exhaust side. Cylinders: %3; cycles of each per shaft revolution: %4; no cranks.</source>
        <translation>Hier beträgt der Kolbenhub %1 auf der Einlassseite und %2 auf der Auslassseite. Zylinder: %3; Arbeitsspiele eines jeden je Umdrehung der Welle: %4; keine Kurbeln.</translation>
    </message>
    <message>
        <source>Here the stroke is %1. Cylinders: %2; cycles of each per shaft revolution: %3; no cranks.</source>
        <translation>Hier beträgt der Kolbenhub %1. Zylinder: %2; Arbeitsspiele eines jeden je Umdrehung der Welle: %3; keine Kurbeln.</translation>
    </message>
    <message>
        <source>One piston closes both rows in the reverse of the order in which it opened them, so until the exhaust closes too, fresh charge can escape: that is the arrangement, no fault of the design.</source>
        <translation>Ein Kolben schließt beide Reihen in umgekehrter Reihenfolge; bis auch der Auslass schließt, kann darum Frischladung entweichen: Das liegt an der Bauform und ist kein Mangel des Entwurfs.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::AdjusterPanel</name>
    <message>
        <source>Compression ratio</source>
        <translation>Verdichtungsverhältnis</translation>
    </message>
    <message>
        <source>Trapped compression ratio</source>
        <translation>Effektives Verdichtungsverhältnis</translation>
    </message>
    <message>
        <source>Blowdown, shaft °</source>
        <translation>Vorauslass, ° Welle</translation>
    </message>
    <message>
        <source>Overlap, shaft °</source>
        <translation>Überschneidung, ° Welle</translation>
    </message>
    <message>
        <source>Exhaust opens, shaft °</source>
        <translation>Auslass öffnet, ° Welle</translation>
    </message>
    <message>
        <source>Inlet opens, shaft °</source>
        <translation>Einlass öffnet, ° Welle</translation>
    </message>
    <message>
        <source>Exhaust closes, shaft °</source>
        <translation>Auslass schließt, ° Welle</translation>
    </message>
    <message>
        <source>Inlet closes, shaft °</source>
        <translation>Einlass schließt, ° Welle</translation>
    </message>
    <message>
        <source>Adjuster</source>
        <translation>Versteller</translation>
    </message>
    <message>
        <source>&amp;Turn the exhaust track</source>
        <translation>Auslassbahn &amp;drehen</translation>
    </message>
    <message>
        <source>Turn the exhaust track</source>
        <translation>Auslassbahn drehen</translation>
    </message>
    <message>
        <source>&amp;Move it outward</source>
        <translation>Nach außen &amp;schieben</translation>
    </message>
    <message>
        <source>Move the exhaust track</source>
        <translation>Auslassbahn verschieben</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>By turning</source>
        <translation>Durch Drehen</translation>
    </message>
    <message>
        <source>By moving</source>
        <translation>Durch Schieben</translation>
    </message>
    <message>
        <source>Baseline</source>
        <translation>Bezugsentwurf</translation>
    </message>
    <message>
        <source>What the adjuster does</source>
        <translation>Was der Versteller bewirkt</translation>
    </message>
    <message>
        <source>Changes the design at once; the table shows what that does to compression and timing</source>
        <translation>Ändert den Entwurf sofort; die Tabelle zeigt, wie sich das auf Verdichtung und Steuerzeiten auswirkt</translation>
    </message>
    <message>
        <source>, exact</source>
        <translation>, genau</translation>
    </message>
    <message>
        <source>Not possible: %1</source>
        <translation>Nicht möglich: %1</translation>
    </message>
    <message>
        <source>Shaking force, largest</source>
        <translation>Freie Massenkraft, größte</translation>
    </message>
    <message>
        <source>Lead alone</source>
        <translation>Voreilung allein</translation>
    </message>
    <message>
        <source>With the exhaust lead as it is built and the adjuster at rest; what turning and moving add makes the value now</source>
        <translation>Mit der gebauten Auslassvoreilung und dem Versteller in Ruhe; was Drehen und Schieben hinzufügen, ergibt den Wert jetzt</translation>
    </message>
    <message>
        <source>Exhaust lead %1 + setting %2 = %3 ahead of the inlet track</source>
        <translation>Auslassvoreilung %1 + Stellung %2 = %3 vor der Einlassbahn</translation>
    </message>
    <message>
        <source>Follows the speed by a schedule, which is changed on the strip below the torque curve</source>
        <translation>Folgt der Drehzahl nach einer Kennlinie, die auf dem Streifen unter der Drehmomentkurve geändert wird</translation>
    </message>
    <message>
        <source>&amp;Move the track outward</source>
        <translation>Bahn nach außen &amp;verschieben</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ArrangementSheet</name>
    <message>
        <source>Arrangements</source>
        <translation>Anordnungen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::Autosave</name>
    <message>
        <source>the folder %1 cannot be written</source>
        <translation>in den Ordner %1 kann nicht geschrieben werden</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::BandsBehind</name>
    <message>
        <source>being computed</source>
        <translation>wird berechnet</translation>
    </message>
    <message>
        <source>Show &amp;bands</source>
        <translation>&amp;Bänder zeigen</translation>
    </message>
    <message>
        <source>Behind the curves of all plots: where the engines lie that the design may be, by the ranges of its inputs</source>
        <translation>Hinter den Kurven aller Diagramme: wo die Motoren liegen, die der Entwurf nach den Bereichen seiner Eingaben sein kann</translation>
    </message>
    <message>
        <source>9 of 10 possible engines; the stronger band: half of them</source>
        <translation>9 von 10 möglichen Motoren; das kräftigere Band: die Hälfte von ihnen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::BandsModel</name>
    <message>
        <source>none: no input has a range</source>
        <translation>keine: Keine Eingabe hat einen Bereich</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::BandsPlot</name>
    <message>
        <source>Torque and power as bands</source>
        <translation>Drehmoment und Leistung als Bänder</translation>
    </message>
    <message>
        <source>at</source>
        <translation>bei</translation>
    </message>
    <message>
        <source>%1 as designed</source>
        <translation>%1 wie entworfen</translation>
    </message>
    <message>
        <source>90 % of the engines</source>
        <translation>90 % der Motoren</translation>
    </message>
    <message>
        <source>half of them</source>
        <translation>die Hälfte</translation>
    </message>
    <message>
        <source>rollers lift off in</source>
        <translation>Rollen heben ab bei</translation>
    </message>
    <message>
        <source>Computing the first engines …</source>
        <translation>Die ersten Motoren werden berechnet …</translation>
    </message>
    <message>
        <source>%1 engines: %2 % run, %3 % cannot be built, %4 % cannot run</source>
        <translation>%1 Motoren: %2 % laufen, %3 % sind nicht baubar, %4 % laufen nicht</translation>
    </message>
    <message>
        <source>most often: %1</source>
        <translation>am häufigsten: %1</translation>
    </message>
    <message>
        <source>Nothing in this design has a range, so everything counts as known. Give the inputs that are not certain a range, or look at the scatter of manufacture.</source>
        <translation>Nichts in diesem Entwurf hat einen Bereich, also gilt alles als bekannt. Geben Sie den unsicheren Eingaben einen Bereich, oder betrachten Sie die Fertigungsstreuung.</translation>
    </message>
    <message>
        <source>shaft speed, rpm</source>
        <translation>Wellendrehzahl, 1/min</translation>
    </message>
    <message>
        <source>half lie above</source>
        <translation>die Hälfte liegt darüber</translation>
    </message>
    <message>
        <source>. The design (line) lies outside the band: its inputs stand at the edge of what is thought possible</source>
        <translation>. Der Entwurf (Linie) liegt außerhalb des Bandes: Seine Eingaben stehen am Rand des für möglich Gehaltenen</translation>
    </message>
    <message>
        <source>. Diamonds are the published figures</source>
        <translation>. Rauten sind die veröffentlichten Angaben</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::BarTable</name>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::BaselineCommands</name>
    <message>
        <source>&amp;Keep this design as baseline</source>
        <translation>Diesen Entwurf als Bezug &amp;behalten</translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <translation>Ctrl+B</translation>
    </message>
    <message>
        <source>&amp;Open a file as baseline…</source>
        <translation>&amp;Datei als Bezug öffnen…</translation>
    </message>
    <message>
        <source>A &amp;sample as baseline</source>
        <translation>Ein &amp;Beispiel als Bezug</translation>
    </message>
    <message>
        <source>&amp;Exchange design and baseline</source>
        <translation>Entwurf und Bezug &amp;tauschen</translation>
    </message>
    <message>
        <source>&amp;Forget the baseline</source>
        <translation>Bezug &amp;vergessen</translation>
    </message>
    <message>
        <source>Kept as baseline</source>
        <translation>Bezug gesetzt</translation>
    </message>
    <message>
        <source>Open as baseline</source>
        <translation>Als Bezug öffnen</translation>
    </message>
    <message>
        <source>Exchange with baseline</source>
        <translation>Mit Bezug tauschen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::BearingPlot</name>
    <message>
        <source>Main bearing loads</source>
        <translation>Lasten der Hauptlager</translation>
    </message>
    <message>
        <source>bearing load</source>
        <translation>Lagerlast</translation>
    </message>
    <message>
        <source>Radial bearing in the plane of this track&apos;s roller axes at outer dead centre, on the shaft.</source>
        <translation>Radiallager in der Ebene der Rollenachsen dieser Bahn im äußeren Totpunkt, auf die Welle.</translation>
    </message>
    <message>
        <source>Radial, inlet side</source>
        <translation>Radial, Einlassseite</translation>
    </message>
    <message>
        <source>Radial, exhaust side</source>
        <translation>Radial, Auslassseite</translation>
    </message>
    <message>
        <source>Thrust</source>
        <translation>Axial</translation>
    </message>
    <message>
        <source>The bearings are assumed one piston length behind each crown: enter the piston length to see their loads.</source>
        <translation>Die Lager werden eine Kolbenlänge hinter jedem Kolbenboden angenommen: Mit der Kolbenlänge werden ihre Lasten sichtbar.</translation>
    </message>
    <message>
        <source>Thrust bearing on the shaft, positive towards the exhaust side.</source>
        <translation>Axiallager auf die Welle, positiv zur Auslassseite hin.</translation>
    </message>
    <message>
        <source>Radial, at the track</source>
        <translation>Radial, an der Bahn</translation>
    </message>
    <message>
        <source>Radial, at the head</source>
        <translation>Radial, am Zylinderkopf</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::CandidateTable</name>
    <message>
        <source>not available</source>
        <translation>nicht verfügbar</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Shaft speed</source>
        <translation>Wellendrehzahl</translation>
    </message>
    <message>
        <source>Displacement</source>
        <translation>Hubraum</translation>
    </message>
    <message>
        <source>Outer diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>Supply pressure</source>
        <translation>Ladedruck</translation>
    </message>
    <message>
        <source>Contact stress</source>
        <translation>Kontaktpressung</translation>
    </message>
    <message>
        <source>1 lobe</source>
        <translation>1 Nocken</translation>
    </message>
    <message>
        <source>%1 lobes</source>
        <translation>%1 Nocken</translation>
    </message>
    <message>
        <source>1 cylinder</source>
        <translation>1 Zylinder</translation>
    </message>
    <message>
        <source>%1 cylinders</source>
        <translation>%1 Zylinder</translation>
    </message>
    <message>
        <source>boosted</source>
        <translation>aufgeladen</translation>
    </message>
    <message>
        <source>not boosted</source>
        <translation>nicht aufgeladen</translation>
    </message>
    <message>
        <source>no limit exceeded</source>
        <translation>keine Grenze überschritten</translation>
    </message>
    <message>
        <source>1 limit exceeded</source>
        <translation>1 Grenze überschritten</translation>
    </message>
    <message>
        <source>%1 limits exceeded</source>
        <translation>%1 Grenzen überschritten</translation>
    </message>
    <message>
        <source>Candidates</source>
        <translation>Entwürfe</translation>
    </message>
    <message>
        <source>Choose this candidate</source>
        <translation>Diesen Entwurf wählen</translation>
    </message>
    <message>
        <source>all fire at once</source>
        <translation>alle zünden gleichzeitig</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::CauseBars</name>
    <message>
        <source>Causes of the change</source>
        <translation>Ursachen der Änderung</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>Each bar is one cause; together they lead to the answer. The dashed line is your guess.</source>
        <translation>Jeder Balken ist eine Ursache; zusammen führen sie zur Antwort. Die gestrichelte Linie ist Ihre Vermutung.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ChannelPlot</name>
    <message>
        <source>%1, symbol %2</source>
        <translation>%1, Formelzeichen %2</translation>
    </message>
    <message>
        <source>&amp;Quantities</source>
        <translation>&amp;Größen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ClaimsForm</name>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Conditions of the power</source>
        <translation>Bedingungen der Leistung</translation>
    </message>
    <message>
        <source>Statements in words</source>
        <translation>Aussagen in Worten</translation>
    </message>
    <message>
        <source>Add a statement</source>
        <translation>Aussage hinzufügen</translation>
    </message>
    <message>
        <source>A published sentence, to be checked against physics</source>
        <translation>Ein veröffentlichter Satz, der an der Physik geprüft wird</translation>
    </message>
    <message>
        <source>New statement</source>
        <translation>Neue Aussage</translation>
    </message>
    <message>
        <source>Remove this statement</source>
        <translation>Diese Aussage entfernen</translation>
    </message>
    <message>
        <source>Remove a statement</source>
        <translation>Aussage entfernen</translation>
    </message>
    <message>
        <source>Published figures</source>
        <translation>Veröffentlichte Angaben</translation>
    </message>
    <message>
        <source>Show all of %1</source>
        <translation>Alles zeigen: %1</translation>
    </message>
    <message>
        <source>Show every entry of this group, or only what is filled in</source>
        <translation>Alle Einträge dieser Gruppe zeigen oder nur die ausgefüllten</translation>
    </message>
    <message>
        <source>decides %1</source>
        <translation>entscheidet: %1</translation>
    </message>
    <message>
        <source>would decide 1 row</source>
        <translation>würde 1 Zeile entscheiden</translation>
    </message>
    <message>
        <source>would decide %1 rows</source>
        <translation>würde %1 Zeilen entscheiden</translation>
    </message>
    <message>
        <source>Adding the %1 would decide 1 row.</source>
        <translation>Die Angabe „%1“ würde 1 Zeile entscheiden.</translation>
    </message>
    <message>
        <source>Adding the %1 would decide %2 rows.</source>
        <translation>Die Angabe „%1“ würde %2 Zeilen entscheiden.</translation>
    </message>
    <message>
        <source>fewer</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
    <message>
        <source>Statement %1</source>
        <translation>Aussage %1</translation>
    </message>
    <message>
        <source>Takes the statement out of the sheet; can be undone</source>
        <translation>Nimmt die Aussage aus dem Blatt; lässt sich rückgängig machen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ClaimsLine</name>
    <message>
        <source>%1, as it was published; empty: not published</source>
        <translation>%1, wie veröffentlicht; leer: nicht veröffentlicht</translation>
    </message>
    <message>
        <source>“%1” is not a number</source>
        <translation>„%1“ ist keine Zahl</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>ohne Angabe</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ClaimsPane</name>
    <message>
        <source>Claims check</source>
        <translation>Prüfung der Angaben</translation>
    </message>
    <message>
        <source>Estimates only: a verdict compares published numbers with arithmetic and published bands, not with any engine that was built.</source>
        <translation>Nur Schätzungen: Ein Urteil vergleicht veröffentlichte Zahlen mit Rechnung und veröffentlichten Bereichen, nicht mit einem gebauten Motor.</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <source>Open a claims file</source>
        <translation>Datei mit Angaben öffnen</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Speichern…</translation>
    </message>
    <message>
        <source>Save as a claims file</source>
        <translation>Als Datei mit Angaben speichern</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Beispiel</translation>
    </message>
    <message>
        <source>Fill in an invented example</source>
        <translation>Erfundenes Beispiel eintragen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Undo %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Redo %1</source>
        <translation>Wiederherstellen: %1</translation>
    </message>
    <message>
        <source>open a file</source>
        <translation>Datei öffnen</translation>
    </message>
    <message>
        <source>Open claims</source>
        <translation>Angaben öffnen</translation>
    </message>
    <message>
        <source>Claims (*.claims.json);;All files (*)</source>
        <translation>Angaben (*.claims.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Save claims</source>
        <translation>Angaben speichern</translation>
    </message>
    <message>
        <source>Claims (*.claims.json)</source>
        <translation>Angaben (*.claims.json)</translation>
    </message>
    <message>
        <source>fill in the example</source>
        <translation>Beispiel eintragen</translation>
    </message>
    <message>
        <source>&amp;Copy the report</source>
        <translation>Bericht &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Save the findings…</source>
        <translation>Befunde &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Print the findings…</source>
        <translation>Befunde &amp;drucken…</translation>
    </message>
    <message>
        <source>Save the findings</source>
        <translation>Befunde speichern</translation>
    </message>
    <message>
        <source>Findings (*.pdf *.txt *.json)</source>
        <translation>Befunde (*.pdf *.txt *.json)</translation>
    </message>
    <message>
        <source>C&amp;lear the sheet</source>
        <translation>Das Blatt &amp;leeren</translation>
    </message>
    <message>
        <source>clear the sheet</source>
        <translation>das Blatt leeren</translation>
    </message>
    <message>
        <source>Published figures</source>
        <translation>Veröffentlichte Angaben</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ClaimsReportView</name>
    <message>
        <source>Not given, and what it would decide</source>
        <translation>Nicht angegebene Werte und was sie entscheiden würden</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Estimates only: a verdict compares published numbers with arithmetic and published bands, not with any engine that was built.</source>
        <translation>Nur Schätzungen: Ein Urteil vergleicht veröffentlichte Zahlen mit Rechnung und veröffentlichten Bereichen, nicht mit einem gebauten Motor.</translation>
    </message>
    <message>
        <source>Verdict on the published sheet</source>
        <translation>Urteil über das veröffentlichte Blatt</translation>
    </message>
    <message>
        <source>▾ Fold the arithmetic</source>
        <translation>▾ Rechnungen einklappen</translation>
    </message>
    <message>
        <source>▸ Show all arithmetic</source>
        <translation>▸ Alle Rechnungen zeigen</translation>
    </message>
    <message>
        <source>What else follows from the numbers</source>
        <translation>Was außerdem aus den Zahlen folgt</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ClockView</name>
    <message>
        <source>Cam and crank synchronised</source>
        <translation>Kurvenbahn und Kurbel im Gleichlauf</translation>
    </message>
    <message>
        <source>Above: this engine. Below: the same pistons and ports on cranks, at the same moment. Drag to turn both.</source>
        <translation>Oben: dieser Motor. Unten: dieselben Kolben und Schlitze an Kurbeln, im selben Augenblick. Ziehen dreht beide.</translation>
    </message>
    <message>
        <source>Cranks at the same shaft speed</source>
        <translation>Kurbeln mit gleicher Wellendrehzahl</translation>
    </message>
    <message>
        <source>Cranks with as many power strokes per second</source>
        <translation>Kurbeln mit ebenso vielen Arbeitshüben je Sekunde</translation>
    </message>
    <message>
        <source>Cam tracks and cranks</source>
        <translation>Kurvenbahnen und Kurbeln</translation>
    </message>
    <message>
        <source>Cam tracks: shaft %1, gas cycle %2 of %3 per revolution</source>
        <translation>Kurvenbahnen: Welle %1, Arbeitsspiel %2 von %3 je Umdrehung</translation>
    </message>
    <message>
        <source>Cranks at the same shaft speed: %1 after inner dead centre, one power stroke per revolution</source>
        <translation>Kurbeln mit gleicher Wellendrehzahl: %1 nach dem inneren Totpunkt, ein Arbeitshub je Umdrehung</translation>
    </message>
    <message>
        <source>Cranks that turn %1 times as fast: %2 after inner dead centre</source>
        <translation>Kurbeln, die %1-mal so schnell drehen: %2 nach dem inneren Totpunkt</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ComparisonPane</name>
    <message>
        <source>Comparison with crank engines</source>
        <translation>Vergleich mit Kurbelmotoren</translation>
    </message>
    <message>
        <source>Stopped: an earlier comparison is shown</source>
        <translation>Abgebrochen: Gezeigt wird ein früherer Vergleich</translation>
    </message>
    <message>
        <source>What is made equal between this design and the four-stroke. Cranks stand at the same shaft speed and at the same piston speed in any case.</source>
        <translation>Was zwischen diesem Entwurf und dem Viertakter gleichgesetzt wird. Der Kurbeltrieb steht in jedem Fall bei gleicher Drehzahl und bei gleicher Kolbengeschwindigkeit daneben.</translation>
    </message>
    <message>
        <source>Made equal</source>
        <translation>Gleichgesetzt</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Gezeigt</translation>
    </message>
    <message>
        <source>The quantity compared</source>
        <translation>Die verglichene Größe</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Stop comparing; what is shown stays</source>
        <translation>Vergleich abbrechen; Gezeigtes bleibt stehen</translation>
    </message>
    <message>
        <source>Copy the &amp;table</source>
        <translation>&amp;Tabelle kopieren</translation>
    </message>
    <message>
        <source>%1 at %2 rpm</source>
        <translation>%1 bei %2/min</translation>
    </message>
    <message>
        <source>Shown: %1</source>
        <translation>Gezeigt: %1</translation>
    </message>
    <message>
        <source>Shown until the new comparison is ready: %1</source>
        <translation>Gezeigt, bis der neue Vergleich da ist: %1</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ComparisonPlot</name>
    <message>
        <source>Engines compared</source>
        <translation>Motoren im Vergleich</translation>
    </message>
    <message>
        <source>speed of the output shaft, rpm</source>
        <translation>Drehzahl der Abtriebswelle, 1/min</translation>
    </message>
    <message>
        <source>angle of the output shaft, °</source>
        <translation>Winkel der Abtriebswelle, °</translation>
    </message>
    <message>
        <source>chamber volume</source>
        <translation>Brennraumvolumen</translation>
    </message>
    <message>
        <source>angle from firing dead centre, one stroke out and back = 360°</source>
        <translation>Winkel vom Zünd-Totpunkt, ein Kolbenhub hin und zurück = 360°</translation>
    </message>
    <message>
        <source>The engines compared are being computed.</source>
        <translation>Die verglichenen Motoren werden berechnet.</translation>
    </message>
    <message>
        <source>%1 (outside: %2 at %3 rpm)</source>
        <translation>%1 (außerhalb: %2 bei %3/min)</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ComparisonTable</name>
    <message>
        <source>Results of the engines compared</source>
        <translation>Ergebnisse der verglichenen Motoren</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::CompressorPlot</name>
    <message>
        <source>Compressor over speed</source>
        <translation>Verdichter über der Drehzahl</translation>
    </message>
    <message>
        <source>The air supply has no compressor wheel.</source>
        <translation>Die Luftversorgung hat kein Verdichterrad.</translation>
    </message>
    <message>
        <source>Lines: corrected speed of the wheel in rpm. Left of the dashed line it surges.</source>
        <translation>Linien: umgerechnete Raddrehzahl in 1/min. Links der gestrichelten Linie pumpt es.</translation>
    </message>
    <message>
        <source>shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>rpm</source>
        <translation>1/min</translation>
    </message>
    <message>
        <source>wheel</source>
        <translation>Rad</translation>
    </message>
    <message>
        <source>corrected flow</source>
        <translation>umgerechneter Durchfluss</translation>
    </message>
    <message>
        <source>pressure ratio</source>
        <translation>Druckverhältnis</translation>
    </message>
    <message>
        <source>efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>surge margin</source>
        <translation>Pumpgrenzabstand</translation>
    </message>
    <message>
        <source>Import measured &amp;compressor points…</source>
        <translation>Gemessene &amp;Verdichterpunkte einlesen…</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ContactMapPlot</name>
    <message>
        <source>Nominal contact stress</source>
        <translation>Nominelle Kontaktpressung</translation>
    </message>
    <message>
        <source>Oil film</source>
        <translation>Ölfilm</translation>
    </message>
    <message>
        <source>Slip</source>
        <translation>Schlupf</translation>
    </message>
    <message>
        <source>Contact over angle and width</source>
        <translation>Kontakt über Winkel und Breite</translation>
    </message>
    <message>
        <source>shaft °</source>
        <translation>° Welle</translation>
    </message>
    <message>
        <source>from the middle of the track, outward</source>
        <translation>von der Bahnmitte nach außen</translation>
    </message>
    <message>
        <source>%1, %2: nothing presses</source>
        <translation>%1, %2: nichts drückt</translation>
    </message>
    <message>
        <source>%1, %2: minimum %3 at %4°, %5</source>
        <translation>%1, %2: kleinster Wert %3 bei %4°, %5</translation>
    </message>
    <message>
        <source>%1, %2: maximum %3 at %4°, %5</source>
        <translation>%1, %2: größter Wert %3 bei %4°, %5</translation>
    </message>
    <message>
        <source>&amp;Inlet track</source>
        <translation>&amp;Einlassbahn</translation>
    </message>
    <message>
        <source>&amp;Exhaust track</source>
        <translation>&amp;Auslassbahn</translation>
    </message>
    <message>
        <source>; crowned: one film per contact</source>
        <translation>; ballig: ein Film je Kontakt</translation>
    </message>
    <message>
        <source>Maximum subsurface shear stress</source>
        <translation>Größte Schubspannung unter der Oberfläche</translation>
    </message>
    <message>
        <source>Specific film thickness Λ</source>
        <translation>Spezifische Schmierfilmdicke Λ</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ContactRangeBox</name>
    <message>
        <source>Find contact speeds</source>
        <translation>Kontaktdrehzahlen suchen</translation>
    </message>
    <message>
        <source>Where the rollers really begin to leave their tracks, with the gas solved anew at each speed of this plot</source>
        <translation>Wo die Rollen wirklich beginnen, ihre Bahnen zu verlassen; das Gas wird bei jeder Drehzahl dieses Diagramms neu gerechnet</translation>
    </message>
    <message>
        <source>Speeds with contact</source>
        <translation>Drehzahlen mit Kontakt</translation>
    </message>
    <message>
        <source>searching … %1 %</source>
        <translation>wird gesucht … %1 %</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::CylinderCircle</name>
    <message>
        <source>End view of the cylinder circle</source>
        <translation>Stirnansicht des Zylinderkreises</translation>
    </message>
    <message>
        <source>Click a cylinder, or press its number, to see it in the section.</source>
        <translation>Zylinder anklicken oder seine Nummer drücken, um ihn im Schnitt zu sehen.</translation>
    </message>
    <message>
        <source>Order of inner dead centres</source>
        <translation>Folge der inneren Totpunkte</translation>
    </message>
    <message>
        <source>Firing order</source>
        <translation>Zündfolge</translation>
    </message>
    <message>
        <source>every %1 of the shaft</source>
        <translation>alle %1 der Welle</translation>
    </message>
    <message>
        <source>at uneven intervals</source>
        <translation>in ungleichen Abständen</translation>
    </message>
    <message>
        <source>Shaft %1, seen from the inlet side</source>
        <translation>Welle %1, von der Einlassseite gesehen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::DecidesView</name>
    <message>
        <source>What decides this</source>
        <translation>Was dies bestimmt</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>The result whose values are shown below</source>
        <translation>Das Ergebnis, dessen Werte unten gezeigt werden</translation>
    </message>
    <message>
        <source>Spread of the result</source>
        <translation>Streuung des Ergebnisses</translation>
    </message>
    <message>
        <source>90 % of the engines: %1 … %2 %3</source>
        <translation>90 % der Motoren: %1 … %2 %3</translation>
    </message>
    <message>
        <source>No engine has this result.</source>
        <translation>Kein Motor hat dieses Ergebnis.</translation>
    </message>
    <message>
        <source>; as designed (line): %1 %2</source>
        <translation>; wie entworfen (Linie): %1 %2</translation>
    </message>
    <message>
        <source>is known when all engines have been computed</source>
        <translation>ist bekannt, sobald alle Motoren berechnet sind</translation>
    </message>
    <message>
        <source>Alone %1 %</source>
        <translation>Allein %1 %</translation>
    </message>
    <message>
        <source> (± %1 %)</source>
        <translation> (± %1 %)</translation>
    </message>
    <message>
        <source>Shares of the inputs</source>
        <translation>Anteile der Eingaben</translation>
    </message>
    <message>
        <source>What to measure first</source>
        <translation>Was zuerst zu messen ist</translation>
    </message>
    <message>
        <source>Band of the result</source>
        <translation>Band des Ergebnisses</translation>
    </message>
    <message>
        <source> (%1 is the lowest speed computed: the peak lies there or below)</source>
        <translation> (%1 ist die niedrigste berechnete Drehzahl: der Höchstwert liegt dort oder darunter)</translation>
    </message>
    <message>
        <source>. The design lies outside the band: its inputs stand at the edge of what is thought possible</source>
        <translation>. Der Entwurf liegt außerhalb des Bandes: Seine Eingaben stehen am Rand des für möglich Gehaltenen</translation>
    </message>
    <message>
        <source>. Published (diamond): %1</source>
        <translation>. Veröffentlicht (Raute): %1</translation>
    </message>
    <message>
        <source>↗ raises the result, ↘ lowers it, ↝ does both.</source>
        <translation>↗ hebt das Ergebnis, ↘ senkt es, ↝ tut beides.</translation>
    </message>
    <message>
        <source>Share of the spread that this input causes, alone or together with others (Sobol&apos; total index).</source>
        <translation>Anteil der Streuung, den diese Eingabe verursacht, allein oder zusammen mit anderen (Totalindex nach Sobol).</translation>
    </message>
    <message>
        <source>Share of the spread that this input causes alone, from the engines themselves: no polynomial fits well enough.</source>
        <translation>Anteil der Streuung, den diese Eingabe allein verursacht, aus den Motoren selbst: Kein Polynom passt gut genug.</translation>
    </message>
    <message>
        <source>Computing the first engines …</source>
        <translation>Die ersten Motoren werden gerechnet …</translation>
    </message>
    <message>
        <source>Which inputs decide a result, and what to measure first, stands here once inputs of the design have a range.</source>
        <translation>Welche Eingaben ein Ergebnis entscheiden und was zuerst zu messen ist, steht hier, sobald Eingaben des Entwurfs einen Bereich haben.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::DesignFiles</name>
    <message>
        <source>Designs (*.lobewright.json);;JSON files (*.json);;All files (*)</source>
        <translation>Entwürfe (*.lobewright.json);;JSON-Dateien (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>New from &amp;sample</source>
        <translation>&amp;Neu aus Beispiel</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
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
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>&amp;Export results…</source>
        <translation>&amp;Ergebnisse exportieren…</translation>
    </message>
    <message>
        <source>Channels over one revolution as CSV, all results as JSON</source>
        <translation>Verläufe über eine Umdrehung als CSV, alle Ergebnisse als JSON</translation>
    </message>
    <message>
        <source>Opened %1</source>
        <translation>%1 geöffnet</translation>
    </message>
    <message>
        <source>Open a design</source>
        <translation>Entwurf öffnen</translation>
    </message>
    <message>
        <source>Save the design as</source>
        <translation>Entwurf speichern unter</translation>
    </message>
    <message>
        <source>Reloaded; Undo brings back what was here</source>
        <translation>Neu geladen; Rückgängig holt den vorigen Stand zurück</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>%1 gespeichert</translation>
    </message>
    <message>
        <source>Folder for the results</source>
        <translation>Ordner für die Ergebnisse</translation>
    </message>
    <message>
        <source>Not exported</source>
        <translation>Nicht exportiert</translation>
    </message>
    <message>
        <source>channels.csv and summary.json written to %1</source>
        <translation>channels.csv und summary.json in %1 geschrieben</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Nicht gespeicherte Änderungen</translation>
    </message>
    <message>
        <source>“%1” has unsaved changes.</source>
        <translation>„%1“ hat nicht gespeicherte Änderungen.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::DialogCommands</name>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Neu…</translation>
    </message>
    <message>
        <source>From published figures, a duty, a picture, a sample, or blank</source>
        <translation>Aus veröffentlichten Angaben, Anforderungen, einem Bild, einem Beispiel oder leer</translation>
    </message>
    <message>
        <source>Export a &amp;track…</source>
        <translation>&amp;Bahn exportieren…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>Solid, mesh, drawing, cutter path or tables of one track</source>
        <translation>Körper, Netz, Zeichnung, Fräserbahn oder Tabellen einer Bahn</translation>
    </message>
    <message>
        <source>Export &amp;pictures over one revolution…</source>
        <translation>&amp;Bilder über eine Umdrehung exportieren…</translation>
    </message>
    <message>
        <source>A drawing as numbered pictures that join into a loop</source>
        <translation>Eine Zeichnung als nummerierte Bilder, die sich zur Schleife schließen</translation>
    </message>
    <message>
        <source>&amp;Import a lift table…</source>
        <translation>&amp;Wegtabelle einlesen…</translation>
    </message>
    <message>
        <source>A table of angle and lift becomes knots of a track</source>
        <translation>Eine Tabelle von Winkel und Weg wird zu Stützpunkten einer Bahn</translation>
    </message>
    <message>
        <source>Import measured &amp;compressor points…</source>
        <translation>Gemessene &amp;Verdichterpunkte einlesen…</translation>
    </message>
    <message>
        <source>A table of speed, flow, pressure ratio and efficiency becomes the compressor wheel</source>
        <translation>Eine Tabelle aus Drehzahl, Durchfluss, Druckverhältnis und Wirkungsgrad wird zum Verdichterrad</translation>
    </message>
    <message>
        <source>&amp;Origin and range of an input…</source>
        <translation>&amp;Herkunft und Bereich einer Eingabe…</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>Given, measured, derived, assumed or chosen, and how far it may be off</source>
        <translation>Veröffentlicht, gemessen, abgeleitet, angenommen oder gewählt, und wie weit der Wert abweichen kann</translation>
    </message>
    <message>
        <source>Mea&amp;sure a picture…</source>
        <translation>Ein Bild aus&amp;messen…</translation>
    </message>
    <message>
        <source>Ctrl+M</source>
        <translation>Ctrl+M</translation>
    </message>
    <message>
        <source>Reads lengths, angles and lobes off a picture into inputs</source>
        <translation>Liest Längen, Winkel und Nocken aus einem Bild in Eingaben</translation>
    </message>
    <message>
        <source>&amp;Make a result…</source>
        <translation>Ein Ergebnis &amp;vorgeben…</translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <translation>Ctrl+G</translation>
    </message>
    <message>
        <source>Finds the value of an input that gives a result its target</source>
        <translation>Sucht den Wert einer Eingabe, mit dem ein Ergebnis sein Ziel erreicht</translation>
    </message>
    <message>
        <source>Sc&amp;hedule over speed…</source>
        <translation>&amp;Kennlinie über der Drehzahl…</translation>
    </message>
    <message>
        <source>Lets an input follow the shaft speed; finds its best value at each speed</source>
        <translation>Lässt eine Eingabe der Wellendrehzahl folgen; sucht bei jeder Drehzahl ihren besten Wert</translation>
    </message>
    <message>
        <source>Turn a track into &amp;knots…</source>
        <translation>Bahn in S&amp;tützpunkte umwandeln…</translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <translation>Ctrl+K</translation>
    </message>
    <message>
        <source>Any track becomes a free-form one; shows what the fit costs</source>
        <translation>Jede Bahn wird zur freien Form; zeigt, was die Anpassung kostet</translation>
    </message>
    <message>
        <source>The design is being computed; try again in a moment</source>
        <translation>Der Entwurf wird noch berechnet; gleich noch einmal versuchen</translation>
    </message>
    <message>
        <source>Put the keyboard into an input first: click it, or find it with Ctrl+F</source>
        <translation>Erst eine Eingabe anwählen: anklicken oder mit Strg+F suchen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::Document</name>
    <message>
        <source>Reload the file</source>
        <translation>Datei neu laden</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::DraftPicture</name>
    <message>
        <source>Cylinders about the shaft, and the lift of both tracks over one revolution</source>
        <translation>Zylinder um die Welle und der Weg beider Bahnen über eine Umdrehung</translation>
    </message>
    <message>
        <source>%1; with a blower</source>
        <translation>%1; mit Gebläse</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::DraftSteps</name>
    <message>
        <source>Numbers of the draft</source>
        <translation>Zahlen des Entwurfs</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>Type your own number over a value: the rest of the draft follows. An empty value is the rule&apos;s again.</source>
        <translation>Eine eigene Zahl über einen Wert schreiben: Der übrige Entwurf richtet sich danach. Ein leerer Wert folgt wieder der Regel.</translation>
    </message>
    <message>
        <source>%1 … %2</source>
        <translation>%1 … %2</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>Angenommen: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Given: %1</source>
        <translation>Veröffentlicht: %1</translation>
    </message>
    <message>
        <source>Choose a row to see how its number was derived.</source>
        <translation>Eine Zeile wählen, um zu sehen, wie ihre Zahl zustande kommt.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::DraftView</name>
    <message>
        <source>Drafting…</source>
        <translation>Entwürfe entstehen…</translation>
    </message>
    <message>
        <source>Not every candidate can be made: %1</source>
        <translation>Nicht jeder Entwurf ist möglich: %1</translation>
    </message>
    <message>
        <source>Every number below can be replaced by your own.</source>
        <translation>Jede Zahl darunter lässt sich durch eine eigene ersetzen.</translation>
    </message>
    <message>
        <source>%1: %2 wanted, %3 reached: %4</source>
        <translation>%1: gewünscht %2, erreicht %3: %4</translation>
    </message>
    <message>
        <source>An engine within the limits on its size has %1.</source>
        <translation>Ein Motor, der die Größenvorgaben einhält, hat %1.</translation>
    </message>
    <message>
        <source>Draft that instead</source>
        <translation>Stattdessen diesen entwerfen</translation>
    </message>
    <message>
        <source>Reached: %1.</source>
        <translation>Erreicht: %1.</translation>
    </message>
    <message>
        <source>It follows from: %1.</source>
        <translation>Es folgt aus: %1.</translation>
    </message>
    <message>
        <source>Choose a candidate: %1. Every number below can be replaced by your own.</source>
        <translation>Wählen Sie einen Kandidaten: %1. Jede Zahl darunter kann durch eine eigene ersetzt werden.</translation>
    </message>
    <message>
        <source>nothing given says how many lobes the tracks have, nor whether a blower or turbocharger supplies the air (drawn beside the cylinders); each is possible</source>
        <translation>Keine Angabe sagt, wie viele Nocken die Bahnen haben und ob ein Gebläse oder Abgasturbolader die Luft liefert (neben den Zylindern gezeichnet); alles ist möglich</translation>
    </message>
    <message>
        <source>nothing given says whether a blower or turbocharger supplies the air (drawn beside the cylinders); both are possible</source>
        <translation>Keine Angabe sagt, ob ein Gebläse oder Abgasturbolader die Luft liefert (neben den Zylindern gezeichnet); beides ist möglich</translation>
    </message>
    <message>
        <source>nothing given says how many lobes the tracks have</source>
        <translation>Keine Angabe sagt, wie viele Nocken die Bahnen haben</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::DutyPage</name>
    <message>
        <source>&amp;Power</source>
        <translation>&amp;Leistung</translation>
    </message>
    <message>
        <source>or &amp;torque</source>
        <translation>oder &amp;Drehmoment</translation>
    </message>
    <message>
        <source>&amp;Shaft speed</source>
        <translation>&amp;Wellendrehzahl</translation>
    </message>
    <message>
        <source>&amp;Diameter below</source>
        <translation>D&amp;urchmesser unter</translation>
    </message>
    <message>
        <source>&amp;Length below</source>
        <translation>Län&amp;ge unter</translation>
    </message>
    <message>
        <source>L&amp;ife above</source>
        <translation>Lebensdauer ü&amp;ber</translation>
    </message>
    <message>
        <source>&amp;Cylinders</source>
        <translation>&amp;Zylinder</translation>
    </message>
    <message>
        <source>L&amp;obes per track</source>
        <translation>&amp;Nocken je Bahn</translation>
    </message>
    <message>
        <source>Co&amp;mpression ratio</source>
        <translation>&amp;Verdichtung</translation>
    </message>
    <message>
        <source>S&amp;upply pressure</source>
        <translation>Lad&amp;edruck</translation>
    </message>
    <message>
        <source>What the engine shall do, each with its unit. Power or torque is enough.</source>
        <translation>Was der Motor leisten soll, jeweils mit Einheit. Leistung oder Drehmoment genügt.</translation>
    </message>
    <message>
        <source>e.g. %1</source>
        <translation>z. B. %1</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>&amp;Fuel</source>
        <translation>&amp;Kraftstoff</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::EnergyAudit</name>
    <message>
        <source>Energy and friction</source>
        <translation>Energie und Reibung</translation>
    </message>
    <message>
        <source>Heat in, per cycle</source>
        <translation>Zugeführte Wärme je Arbeitsspiel</translation>
    </message>
    <message>
        <source>Where it goes</source>
        <translation>Wohin sie geht</translation>
    </message>
    <message>
        <source>Energy-balance residual: %1 of the fuel heat.</source>
        <translation>Restfehler der Energiebilanz: %1 der Kraftstoffwärme.</translation>
    </message>
    <message>
        <source>Supply power is not counted.</source>
        <translation>Die Antriebsleistung der Luftversorgung ist nicht eingerechnet.</translation>
    </message>
    <message>
        <source>What becomes of the work, as mean effective pressure</source>
        <translation>Verbleib der Arbeit, als Mitteldruck</translation>
    </message>
    <message>
        <source>Losses together: %1.</source>
        <translation>Verluste zusammen: %1.</translation>
    </message>
    <message>
        <source>As &amp;bars, with the baseline</source>
        <translation>Als &amp;Balken, mit dem Bezugsentwurf</translation>
    </message>
    <message>
        <source>Baseline: %1</source>
        <translation>Bezugsentwurf: %1</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::EngineSolid</name>
    <message>
        <source>3D view of the engine</source>
        <translation>3D-Ansicht des Motors</translation>
    </message>
    <message>
        <source>Drag to rotate the view, turn the wheel to zoom.</source>
        <translation>Ziehen dreht die Ansicht, das Rad vergrößert.</translation>
    </message>
    <message>
        <source>Shaft %1</source>
        <translation>Welle %1</translation>
    </message>
    <message>
        <source>Piston: slides</source>
        <translation>Kolben: gleitet</translation>
    </message>
    <message>
        <source>Gas: pushes</source>
        <translation>Gas: drückt</translation>
    </message>
    <message>
        <source>Shaft: turns</source>
        <translation>Welle: dreht</translation>
    </message>
    <message>
        <source>Inlet ports</source>
        <translation>Einlassschlitze</translation>
    </message>
    <message>
        <source>Exhaust ports</source>
        <translation>Auslassschlitze</translation>
    </message>
    <message>
        <source>Roller: rolls</source>
        <translation>Rolle: rollt</translation>
    </message>
    <message>
        <source>Track: turns</source>
        <translation>Bahn: dreht</translation>
    </message>
    <message>
        <source>Inlet track: turns</source>
        <translation>Einlassbahn: dreht</translation>
    </message>
    <message>
        <source>Exhaust track: turns</source>
        <translation>Auslassbahn: dreht</translation>
    </message>
    <message>
        <source>Cylinder: fixed</source>
        <translation>Zylinder: fest</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ExactEntry</name>
    <message>
        <source>Exact value of %1</source>
        <translation>Genauer Wert: %1</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ExportDialog</name>
    <message>
        <source>Export a track</source>
        <translation>Bahn exportieren</translation>
    </message>
    <message>
        <source>Largest distance from the exact track</source>
        <translation>Größter Abstand von der genauen Bahn</translation>
    </message>
    <message>
        <source>both edges and middle of the roller</source>
        <translation>beide Kanten und Mitte der Rolle</translation>
    </message>
    <message>
        <source>Cylinders about the shaft, in %1, separated by blanks</source>
        <translation>Zylinder um die Welle, in %1, durch Leerzeichen getrennt</translation>
    </message>
    <message>
        <source>Degrees of the pattern between rows</source>
        <translation>Grad der Kurve zwischen den Zeilen</translation>
    </message>
    <message>
        <source>Only the roller&apos;s own radius makes the track exactly</source>
        <translation>Nur der Radius der Rolle selbst ergibt die genaue Bahn</translation>
    </message>
    <message>
        <source>&amp;Track</source>
        <translation>&amp;Bahn</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>T&amp;olerance</source>
        <translation>T&amp;oleranz</translation>
    </message>
    <message>
        <source>&amp;Radii in %1</source>
        <translation>&amp;Radien in %1</translation>
    </message>
    <message>
        <source>&amp;Step</source>
        <translation>&amp;Schritt</translation>
    </message>
    <message>
        <source>&amp;Cutter radius</source>
        <translation>&amp;Fräserradius</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>&amp;Write file…</source>
        <translation>Datei &amp;schreiben…</translation>
    </message>
    <message>
        <source>St&amp;op</source>
        <translation>An&amp;halten</translation>
    </message>
    <message>
        <source>0.5° (default)</source>
        <translation>0,5° (Vorgabe)</translation>
    </message>
    <message>
        <source>5° (default)</source>
        <translation>5° (Vorgabe)</translation>
    </message>
    <message>
        <source>as the tolerance asks</source>
        <translation>wie die Toleranz verlangt</translation>
    </message>
    <message>
        <source>The radii must be numbers in %1, separated by blanks.</source>
        <translation>Die Radien müssen Zahlen in %1 sein, durch Leerzeichen getrennt.</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Write the track as</source>
        <translation>Bahn schreiben als</translation>
    </message>
    <message>
        <source>Stopped; nothing was written.</source>
        <translation>Abgebrochen; nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Nicht geschrieben: %1</translation>
    </message>
    <message>
        <source>Written: %1 (%2)</source>
        <translation>Geschrieben: %1 (%2)</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::FieldBlock</name>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Add, remove, split or move this row</source>
        <translation>Diese Zeile ergänzen, entfernen, teilen oder verschieben</translation>
    </message>
    <message>
        <source>&amp;Split in two</source>
        <translation>In zwei &amp;teilen</translation>
    </message>
    <message>
        <source>Add &amp;dwell after it</source>
        <translation>&amp;Rast danach einfügen</translation>
    </message>
    <message>
        <source>&amp;Add another after it</source>
        <translation>&amp;Weitere danach einfügen</translation>
    </message>
    <message>
        <source>&amp;Remove the last</source>
        <translation>Letzte &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Move &amp;up</source>
        <translation>Nach &amp;oben</translation>
    </message>
    <message>
        <source>Move dow&amp;n</source>
        <translation>Nach &amp;unten</translation>
    </message>
    <message>
        <source>&amp;Split into two moves with a stop between</source>
        <translation>In zwei Bewegungen mit Halt dazwischen &amp;teilen</translation>
    </message>
    <message>
        <source>Every law starts and ends at rest, so the two halves meet at a stop halfway: accelerations about double. Knots keep the curve as it is.</source>
        <translation>Jedes Gesetz beginnt und endet in Ruhe, die beiden Hälften treffen sich also in einem Halt auf halbem Weg: Die Beschleunigungen verdoppeln sich etwa. Stützpunkte erhalten die Kurve, wie sie ist.</translation>
    </message>
    <message>
        <source>Turn the track into &amp;knots, which keep the curve…</source>
        <translation>Die Bahn in &amp;Stützpunkte verwandeln, die die Kurve erhalten…</translation>
    </message>
    <message>
        <source>Then points can be added anywhere on the curve without a stop</source>
        <translation>Dann lassen sich überall auf der Kurve Punkte ohne Halt hinzufügen</translation>
    </message>
    <message>
        <source>Origin: %1</source>
        <translation>Herkunft: %1</translation>
    </message>
    <message>
        <source>This value is my &amp;choice</source>
        <translation>Diesen Wert habe ich &amp;gewählt</translation>
    </message>
    <message>
        <source>&amp;Origin and range…</source>
        <translation>&amp;Herkunft und Bereich…</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>Origin and range of this input</source>
        <translation>Herkunft und Bereich dieser Eingabe</translation>
    </message>
    <message>
        <source>Follows the speed</source>
        <translation>Folgt der Drehzahl</translation>
    </message>
    <message>
        <source>Follows the speed by a schedule, points: %1. It is %2 at the present %3 rpm. Changed on the strip below the torque curve.</source>
        <translation>Folgt der Drehzahl nach einer Kennlinie, Punkte: %1. Bei den jetzigen %3/min ist der Wert %2. Geändert wird sie auf dem Streifen unter der Drehmomentkurve.</translation>
    </message>
    <message>
        <source>&amp;Show the schedule</source>
        <translation>Kennlinie &amp;zeigen</translation>
    </message>
    <message>
        <source>&amp;Remove the schedule</source>
        <translation>Kennlinie &amp;entfernen</translation>
    </message>
    <message>
        <source>Not used: %1</source>
        <translation>Nicht benutzt: %1</translation>
    </message>
    <message>
        <source>Show them: %1</source>
        <translation>Einblenden: %1</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::FieldEditor</name>
    <message>
        <source>Range: %1 %2</source>
        <translation>Bereich: %1 %2</translation>
    </message>
    <message>
        <source>given</source>
        <translation>vorgegeben</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::FiguresBar</name>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Peak</source>
        <translation>Höchstdruck</translation>
    </message>
    <message>
        <source>Compression</source>
        <translation>Verdichtung</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Baseline: %1</source>
        <translation>Bezugsentwurf: %1</translation>
    </message>
    <message>
        <source> (supply power not counted)</source>
        <translation> (Luftversorgung nicht eingerechnet)</translation>
    </message>
    <message>
        <source>Needs %1 to turn</source>
        <translation>Antriebsbedarf %1</translation>
    </message>
    <message>
        <source>Driven by %1</source>
        <translation>Angetrieben mit %1</translation>
    </message>
    <message>
        <source>Click to see the working, right-click to choose other results</source>
        <translation>Klicken zeigt den Rechenweg, Rechtsklick wählt andere Ergebnisse</translation>
    </message>
    <message>
        <source>Brake efficiency</source>
        <translation>Eff. Wirkungsgrad</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::FiguresPanel</name>
    <message>
        <source>Geometry</source>
        <translation>Geometrie</translation>
    </message>
    <message>
        <source>Port timing</source>
        <translation>Steuerzeiten</translation>
    </message>
    <message>
        <source>Performance</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Forces and torque</source>
        <translation>Kräfte und Drehmoment</translation>
    </message>
    <message>
        <source>Contact and life</source>
        <translation>Kontakt und Lebensdauer</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Massenausgleich</translation>
    </message>
    <message>
        <source>Numerical convergence</source>
        <translation>Numerische Konvergenz</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Click to see the working</source>
        <translation>Klicken zeigt den Rechenweg</translation>
    </message>
    <message>
        <source>Energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>Baseline</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>How it came about</source>
        <translation>Wie es zustande kommt</translation>
    </message>
    <message>
        <source>&amp;Make this…</source>
        <translation>Diesen Wert &amp;vorgeben…</translation>
    </message>
    <message>
        <source>Not used or without a value: %1</source>
        <translation>Nicht benutzt oder ohne Wert: %1</translation>
    </message>
    <message>
        <source>Click to show these results as well</source>
        <translation>Klicken blendet auch diese Ergebnisse ein</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::FiguresView</name>
    <message>
        <source>changed only</source>
        <translation>nur Geändertes</translation>
    </message>
    <message>
        <source>Find a result</source>
        <translation>Ergebnis suchen</translation>
    </message>
    <message>
        <source>Hide results that equal the baseline</source>
        <translation>Ergebnisse ausblenden, die mit dem Bezugsentwurf übereinstimmen</translation>
    </message>
    <message>
        <source>Shows only results whose names contain these words</source>
        <translation>Zeigt nur Ergebnisse, deren Namen diese Wörter enthalten</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::FileConflict</name>
    <message>
        <source>Snapshots</source>
        <translation>Varianten</translation>
    </message>
    <message>
        <source>File changed by another program</source>
        <translation>Datei von einem anderen Programm geändert</translation>
    </message>
    <message numerus="yes">
        <source>“%1” was changed by another window or program since it was opened or saved here. %n input(s) differ:</source>
        <translation>
            <numerusform>Die Datei „%1“ wurde von einem anderen Fenster oder Programm geändert, seit sie hier geöffnet oder gespeichert wurde. %n Eingabe weicht ab:</numerusform>
            <numerusform>Die Datei „%1“ wurde von einem anderen Fenster oder Programm geändert, seit sie hier geöffnet oder gespeichert wurde. %n Eingaben weichen ab:</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” was changed by another window or program since it was opened or saved here, and holds no usable design now: %2</source>
        <translation>Die Datei „%1“ wurde von einem anderen Fenster oder Programm geändert, seit sie hier geöffnet oder gespeichert wurde, und enthält nun keinen brauchbaren Entwurf: %2</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Abweichungen</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>In this window</source>
        <translation>In diesem Fenster</translation>
    </message>
    <message>
        <source>In the file</source>
        <translation>In der Datei</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Overwrite the file</source>
        <translation>Datei ü&amp;berschreiben</translation>
    </message>
    <message>
        <source>The design of this window is saved; what the file holds now is lost</source>
        <translation>Der Entwurf dieses Fensters wird gespeichert; der jetzige Inhalt der Datei geht verloren</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Both stay: this window goes into another file</source>
        <translation>Beides bleibt: dieses Fenster wird in eine andere Datei gespeichert</translation>
    </message>
    <message>
        <source>&amp;Reload the file</source>
        <translation>Datei neu &amp;laden</translation>
    </message>
    <message>
        <source>This window takes what the file holds; can be undone</source>
        <translation>Dieses Fenster übernimmt den Inhalt der Datei; lässt sich rückgängig machen</translation>
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
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::FramesDialog</name>
    <message>
        <source>Pictures over one revolution</source>
        <translation>Bilder über eine Umdrehung</translation>
    </message>
    <message>
        <source>Evenly spaced over one revolution; the last picture leads back to the first.</source>
        <translation>Gleichmäßig über eine Umdrehung der Welle; das letzte schließt an das erste an.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>&amp;Drawing</source>
        <translation>&amp;Zeichnung</translation>
    </message>
    <message>
        <source>&amp;Pictures</source>
        <translation>&amp;Bilder</translation>
    </message>
    <message>
        <source>Si&amp;ze in pixels</source>
        <translation>&amp;Größe in Pixeln</translation>
    </message>
    <message>
        <source>Numbered PNG files, from shaft angle 0° onward.</source>
        <translation>Nummerierte PNG-Dateien, ab Wellenwinkel 0°.</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>&amp;Write to a folder…</source>
        <translation>In einen &amp;Ordner schreiben…</translation>
    </message>
    <message>
        <source>St&amp;op</source>
        <translation>An&amp;halten</translation>
    </message>
    <message>
        <source>Folder for the pictures</source>
        <translation>Ordner für die Bilder</translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) written to %1.</source>
        <translation>
            <numerusform>%n Bild nach %1 geschrieben.</numerusform>
            <numerusform>%n Bilder nach %1 geschrieben.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lobewright::ui::FreeBody</name>
    <message>
        <source>gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>inertia</source>
        <translation>Trägheit</translation>
    </message>
    <message>
        <source>rings</source>
        <translation>Ringe</translation>
    </message>
    <message>
        <source>guide</source>
        <translation>Führung</translation>
    </message>
    <message>
        <source>track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Forces on the pistons</source>
        <translation>Kräfte an den Kolben</translation>
    </message>
    <message>
        <source>in balance: sum %1</source>
        <translation>geschlossen: Summe %1</translation>
    </message>
    <message>
        <source>not in balance by %1: the roller is off its track</source>
        <translation>offen um %1: die Rolle hat abgehoben</translation>
    </message>
    <message>
        <source>↑ inward, → with the rotation</source>
        <translation>↑ nach innen, → in Drehrichtung</translation>
    </message>
    <message>
        <source>shaft angle, °</source>
        <translation>Wellenwinkel, °</translation>
    </message>
    <message>
        <source>piston</source>
        <translation>Kolben</translation>
    </message>
    <message>
        <source>force</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>with the rotation</source>
        <translation>in Drehrichtung</translation>
    </message>
    <message>
        <source>inward</source>
        <translation>nach innen</translation>
    </message>
    <message>
        <source>inlet</source>
        <translation>Einlass</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>Auslass</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::GoalDialog</name>
    <message>
        <source>Make this…</source>
        <translation>Ergebnis vorgeben</translation>
    </message>
    <message>
        <source>Values that reach the target</source>
        <translation>Werte, die das Ziel erreichen</translation>
    </message>
    <message>
        <source>What else changes</source>
        <translation>Was sich außerdem ändert</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Dann</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>&amp;Apply</source>
        <translation>Ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>&amp;Make</source>
        <translation>Ergebni&amp;s</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>&amp;equal to</source>
        <translation>soll &amp;werden</translation>
    </message>
    <message>
        <source>by &amp;varying</source>
        <translation>durch Änderung &amp;von</translation>
    </message>
    <message>
        <source>Lower end of the range</source>
        <translation>Unteres Ende des Bereichs</translation>
    </message>
    <message>
        <source>Upper end of the range</source>
        <translation>Oberes Ende des Bereichs</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>&amp;between</source>
        <translation>&amp;zwischen</translation>
    </message>
    <message>
        <source>Target and range must be numbers.</source>
        <translation>Ziel und Bereich müssen Zahlen sein.</translation>
    </message>
    <message>
        <source>Searching…</source>
        <translation>Suche läuft…</translation>
    </message>
    <message>
        <source>Not reachable: the largest is %1 at %2.</source>
        <translation>Nicht erreichbar: Der größte Wert ist %1 bei %2.</translation>
    </message>
    <message>
        <source>Not reachable: the smallest is %1 at %2.</source>
        <translation>Nicht erreichbar: Der kleinste Wert ist %1 bei %2.</translation>
    </message>
    <message>
        <source>Not reachable: the nearest is %1 at %2.</source>
        <translation>Nicht erreichbar: Der nächste Wert ist %1 bei %2.</translation>
    </message>
    <message>
        <source>%1 values reach it.</source>
        <translation>%1 Werte erreichen es.</translation>
    </message>
    <message>
        <source>%1 of %2 values in the range cannot be built or run: %3</source>
        <translation>%1 von %2 Werten des Bereichs ergeben keinen Motor, der sich bauen oder betreiben lässt: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Make %1 %2</source>
        <translation>%1 auf %2 bringen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::HelpCommands</name>
    <message>
        <source>&amp;Help on this pane</source>
        <translation>&amp;Hilfe zu diesem Feld</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>The page of the pane that has the keyboard</source>
        <translation>Die Seite des Feldes, das die Tastatur hat</translation>
    </message>
    <message>
        <source>Help &amp;contents</source>
        <translation>&amp;Inhalt der Hilfe</translation>
    </message>
    <message>
        <source>&amp;First hint</source>
        <translation>&amp;Erster Hinweis</translation>
    </message>
    <message>
        <source>The hint shown at the first start</source>
        <translation>Der Hinweis, der beim ersten Start erscheint</translation>
    </message>
    <message>
        <source>&amp;Keyboard shortcuts…</source>
        <translation>&amp;Tastenkürzel…</translation>
    </message>
    <message>
        <source>Shift+F1</source>
        <translation>Shift+F1</translation>
    </message>
    <message>
        <source>&amp;About Lobewright</source>
        <translation>Ü&amp;ber Lobewright</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::HelpWindow</name>
    <message>
        <source>Help – Lobewright</source>
        <translation>Hilfe – Lobewright</translation>
    </message>
    <message>
        <source>Help pages</source>
        <translation>Hilfeseiten</translation>
    </message>
    <message>
        <source>Help pages; type above to show only those that contain the words</source>
        <translation>Seiten der Hilfe; eine Eingabe oben lässt die stehen, die die Wörter enthalten</translation>
    </message>
    <message>
        <source>Help page</source>
        <translation>Hilfeseite</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>To the page before</source>
        <translation>Zur vorigen Seite</translation>
    </message>
    <message>
        <source>&amp;Forward</source>
        <translation>&amp;Vor</translation>
    </message>
    <message>
        <source>To the page after</source>
        <translation>Zur nächsten Seite</translation>
    </message>
    <message>
        <source>&amp;Contents</source>
        <translation>&amp;Inhalt</translation>
    </message>
    <message>
        <source>To the contents</source>
        <translation>Zum Inhalt</translation>
    </message>
    <message>
        <source>Search all pages</source>
        <translation>Alle Seiten durchsuchen</translation>
    </message>
    <message>
        <source>Pages that contain all these words (Ctrl+F)</source>
        <translation>Seiten, die alle diese Wörter enthalten (Strg+F)</translation>
    </message>
    <message>
        <source>No page contains all these words</source>
        <translation>Keine Seite enthält alle diese Wörter</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::HintBar</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close this line</source>
        <translation>Diese Zeile schließen</translation>
    </message>
    <message>
        <source>Hint</source>
        <translation>Hinweis</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::KnotFitDialog</name>
    <message>
        <source>Turn a track into knots</source>
        <translation>Bahn in Stützpunkte umwandeln</translation>
    </message>
    <message>
        <source>Turn into &amp;knots</source>
        <translation>In &amp;Stützpunkte umwandeln</translation>
    </message>
    <message>
        <source>As many knots as a tolerance asks</source>
        <translation>So viele Stützpunkte, wie eine Toleranz verlangt</translation>
    </message>
    <message>
        <source>A number of knots</source>
        <translation>Eine Anzahl von Stützpunkten</translation>
    </message>
    <message>
        <source>Largest difference between the lifts</source>
        <translation>Größter Unterschied der Wege</translation>
    </message>
    <message>
        <source>Knots of one repetition of the pattern; fewer are easier to pull, more follow more closely</source>
        <translation>Stützpunkte je Wiederholung der Kurve; wenige lassen sich leichter ziehen, viele folgen genauer</translation>
    </message>
    <message>
        <source>&amp;Track</source>
        <translation>&amp;Bahn</translation>
    </message>
    <message>
        <source>&amp;Make</source>
        <translation>&amp;Vorgabe</translation>
    </message>
    <message>
        <source>T&amp;olerance</source>
        <translation>T&amp;oleranz</translation>
    </message>
    <message>
        <source>K&amp;nots</source>
        <translation>Stützp&amp;unkte</translation>
    </message>
    <message>
        <source>The jumps of its acceleration are rounded off: a spline has none.</source>
        <translation>Die Sprünge der Beschleunigung werden abgerundet: Ein Spline hat keine.</translation>
    </message>
    <message>
        <source>That is beyond the tolerance; more knots are not made.</source>
        <translation>Das liegt über der Toleranz; mehr Stützpunkte werden nicht gesetzt.</translation>
    </message>
    <message>
        <source>The design would break a rule: %1</source>
        <translation>Der Entwurf würde eine Regel verletzen: %1</translation>
    </message>
    <message>
        <source>%1 knots; they give the track as it is.</source>
        <translation>%1 Stützpunkte; sie geben die Bahn wieder, wie sie ist.</translation>
    </message>
    <message>
        <source>%1 knots. Off by at most: lift %2 at %3°; velocity %4 (%5 % of its peak) at %6°; acceleration %7 (%8 % of its peak) at %9°.</source>
        <translation>%1 Stützpunkte. Größte Abweichung: Weg %2 bei %3°; Geschwindigkeit %4 (%5 % der Spitze) bei %6°; Beschleunigung %7 (%8 % der Spitze) bei %9°.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::KnotFitPlot</name>
    <message>
        <source>Acceleration before and after, and what is left between the lifts</source>
        <translation>Beschleunigung vorher und nachher und verbleibender Unterschied der Wege</translation>
    </message>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>Angle on the track, °</source>
        <translation>Winkel auf der Bahn, °</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>wie jetzt</translation>
    </message>
    <message>
        <source>by knots</source>
        <translation>durch Stützpunkte</translation>
    </message>
    <message>
        <source>knots</source>
        <translation>Stützpunkte</translation>
    </message>
    <message>
        <source>Lift error</source>
        <translation>Wegabweichung</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::KnownDialog</name>
    <message>
        <source>Origin and range: %1</source>
        <translation>Herkunft und Bereich: %1</translation>
    </message>
    <message>
        <source>Given: published. Measured: off a picture or a part. Derived: follows from others by a rule. Assumed: guessed. Chosen: your own decision.</source>
        <translation>Veröffentlicht: aus einer Quelle. Gemessen: an einem Bild oder Teil. Abgeleitet: folgt nach einer Regel aus anderen. Angenommen: geschätzt. Gewählt: eigene Entscheidung.</translation>
    </message>
    <message>
        <source>&amp;Origin</source>
        <translation>&amp;Herkunft</translation>
    </message>
    <message>
        <source>Inputs of one group move together within their ranges</source>
        <translation>Eingaben einer Gruppe ändern sich gemeinsam innerhalb ihrer Bereiche</translation>
    </message>
    <message>
        <source>&amp;Group</source>
        <translation>&amp;Gruppe</translation>
    </message>
    <message>
        <source>Leaflet, page 2; side view; measured on the part</source>
        <translation>Prospekt, Seite 2; Seitenansicht; am Teil gemessen</translation>
    </message>
    <message>
        <source>&amp;Source</source>
        <translation>&amp;Quelle</translation>
    </message>
    <message>
        <source>&amp;Lower limit</source>
        <translation>&amp;Untere Grenze</translation>
    </message>
    <message>
        <source>&amp;Upper limit</source>
        <translation>&amp;Obere Grenze</translation>
    </message>
    <message>
        <source>all values alike</source>
        <translation>alle Werte gleich</translation>
    </message>
    <message>
        <source>triangular, mode at the value</source>
        <translation>Dreieck, Spitze beim Wert</translation>
    </message>
    <message>
        <source>normal, limits at 5 and 95 %</source>
        <translation>normal, Grenzen bei 5 und 95 %</translation>
    </message>
    <message>
        <source>&amp;Distribution</source>
        <translation>&amp;Verteilung</translation>
    </message>
    <message>
        <source>&amp;Possible</source>
        <translation>&amp;Möglich</translation>
    </message>
    <message>
        <source>The limits must be numbers.</source>
        <translation>Die Grenzen müssen Zahlen sein.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LawFrames</name>
    <message>
        <source>Normalised curves of all motion laws</source>
        <translation>Normierte Kurven aller Bewegungsgesetze</translation>
    </message>
    <message>
        <source>%1: C_v %2, C_a %3, C_j %4. Thick: lift; thin: velocity; dashed: acceleration; dotted: jerk, each to one scale in all frames. A bar: the acceleration jumps beside a dwell. Double click: use this law.</source>
        <translation>%1: C_v %2, C_a %3, C_j %4. Dick: Weg; dünn: Geschwindigkeit; gestrichelt: Beschleunigung; gepunktet: Ruck, jeweils in einem Maßstab für alle Felder. Ein Balken: Die Beschleunigung springt neben einer Rast. Doppelklick: dieses Gesetz verwenden.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LawPane</name>
    <message>
        <source>N min</source>
        <translation>N min</translation>
    </message>
    <message>
        <source>Law</source>
        <translation>Gesetz</translation>
    </message>
    <message>
        <source>Factors of the laws and what they mean for this design</source>
        <translation>Kennwerte der Gesetze und was sie für diesen Entwurf bedeuten</translation>
    </message>
    <message>
        <source>Segments that take the law</source>
        <translation>Abschnitte, die das Gesetz erhalten</translation>
    </message>
    <message>
        <source>The segments whose law is exchanged; lifts and spans stay</source>
        <translation>Die Abschnitte, deren Gesetz getauscht wird; Wege und Abschnittswinkel bleiben</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>v</source>
        <translation>v</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>a</source>
        <translation>a</translation>
    </message>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>j</source>
        <translation>j</translation>
    </message>
    <message>
        <source>Jerk</source>
        <translation>Ruck</translation>
    </message>
    <message>
        <source>%1 in the frames</source>
        <translation>%1 in den Feldern</translation>
    </message>
    <message>
        <source>Use this law</source>
        <translation>Dieses Gesetz verwenden</translation>
    </message>
    <message>
        <source>Gives the chosen law to these segments</source>
        <translation>Gibt diesen Abschnitten das gewählte Gesetz</translation>
    </message>
    <message>
        <source>%1: all rises and returns</source>
        <translation>%1: alle Anstiege und Rückgänge</translation>
    </message>
    <message>
        <source>%1: segment %2, rise over %3°</source>
        <translation>%1: Abschnitt %2, Anstieg über %3°</translation>
    </message>
    <message>
        <source>%1: segment %2, return over %3°</source>
        <translation>%1: Abschnitt %2, Rückgang über %3°</translation>
    </message>
    <message>
        <source>A free-form track takes no law. Below, the laws for the lift and span of its highest rise, %1 over %2°, and that rise itself.</source>
        <translation>Eine frei geformte Bahn folgt keinem Gesetz. Unten die Gesetze für Weg und Abschnittswinkel ihres höchsten Anstiegs, %1 über %2°, und dieser Anstieg selbst.</translation>
    </message>
    <message>
        <source>%1 cannot be used: %2</source>
        <translation>%1 ist nicht verwendbar: %2</translation>
    </message>
    <message>
        <source>%1 (present)</source>
        <translation>%1 (jetzt)</translation>
    </message>
    <message>
        <source>This lobe</source>
        <translation>Dieser Nocken</translation>
    </message>
    <message>
        <source>Use %1 (%2)</source>
        <translation>%1 verwenden (%2)</translation>
    </message>
    <message>
        <source>&amp;Copy the table</source>
        <translation>Tabelle &amp;kopieren</translation>
    </message>
    <message>
        <source>Motion laws side by side</source>
        <translation>Bewegungsgesetze nebeneinander</translation>
    </message>
    <message>
        <source>Angle, middle</source>
        <translation>Winkel, Mitte</translation>
    </message>
    <message>
        <source>R_rel, min</source>
        <translation>R_rel, kleinstes</translation>
    </message>
    <message>
        <source>Factors for unit lift over unit span; peak velocity and acceleration of the segments that take the law; of the whole track: largest pressure angle at the middle of the roller, smallest relative radius of curvature anywhere on its width, nominal contact stress and minimum contact force of the design solved with it. Bold: best of its column. Ctrl+C copies.</source>
        <translation>Kennwerte für Einheitsweg über Einheitswinkel; höchste Geschwindigkeit und Beschleunigung der Abschnitte, die das Gesetz übernehmen; von der ganzen Bahn: größter Pressungswinkel in der Rollenmitte, kleinster Ersatzkrümmungsradius irgendwo auf der Breite, nominelle Kontaktpressung und kleinste Kontaktkraft des damit gelösten Entwurfs. Fett: Bestwert der Spalte. Strg+C kopiert.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LessonPlot</name>
    <message>
        <source>Plot of the stage</source>
        <translation>Diagramm zum Abschnitt</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LeverPlot</name>
    <message>
        <source>lever arm</source>
        <translation>Hebelarm</translation>
    </message>
    <message>
        <source>−y&apos; = −dy/dθ: torque per axial force of one piston on the shaft.</source>
        <translation>−y&apos; = −dy/dθ: Drehmoment je Axialkraft eines Kolbens auf die Welle.</translation>
    </message>
    <message>
        <source> Here %1 / 2π = %2.</source>
        <translation> Hier: %1 / 2π = %2.</translation>
    </message>
    <message>
        <source>Lever arm compared with a crank</source>
        <translation>Hebelarm verglichen mit einer Kurbel</translation>
    </message>
    <message>
        <source>Geared crank</source>
        <translation>Übersetzte Kurbel</translation>
    </message>
    <message>
        <source>Crank with the inlet track&apos;s stroke and the reference rod, geared to as many cycles per shaft revolution as the track.</source>
        <translation>Kurbel mit dem Kolbenhub der Einlassbahn und der Bezugspleuelstange, übersetzt auf so viele Arbeitsspiele je Wellenumdrehung wie die Bahn.</translation>
    </message>
    <message>
        <source>Crank on its own shaft</source>
        <translation>Kurbel auf eigener Welle</translation>
    </message>
    <message>
        <source>The same crank without gear, one cycle per revolution of its own shaft, drawn at the same point of the cycle.</source>
        <translation>Dieselbe Kurbel ohne Übersetzung, ein Arbeitsspiel je Umdrehung ihrer eigenen Welle, an derselben Stelle des Arbeitsspiels gezeichnet.</translation>
    </message>
    <message>
        <source>Largest lever arm: track %1; crank geared to the same %2 cycles per revolution %3; the same crank on its own shaft, one cycle per revolution, %4. Track and gear make the lever %2 times as long, because a stroke takes 1/%2 of the shaft angle.</source>
        <translation>Größter Hebelarm: Bahn %1; Kurbel, auf dieselben %2 Arbeitsspiele je Umdrehung übersetzt, %3; dieselbe Kurbel auf eigener Welle, ein Arbeitsspiel je Umdrehung, %4. Bahn und Übersetzung machen den Hebel %2-mal so lang, weil ein Kolbenhub 1/%2 des Wellenwinkels braucht.</translation>
    </message>
    <message>
        <source>Largest lever arm: track %1; crank %2. Both make one cycle per revolution: only the motion law distinguishes them.</source>
        <translation>Größter Hebelarm: Bahn %1; Kurbel %2. Beide machen ein Arbeitsspiel je Umdrehung: Nur das Bewegungsgesetz unterscheidet sie.</translation>
    </message>
    <message>
        <source>The mean torque is the work per revolution divided by 2π, whatever the lever arm.</source>
        <translation>Das mittlere Drehmoment ist die Arbeit je Umdrehung, geteilt durch 2π, gleich welcher Hebelarm.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LiftHandles</name>
    <message>
        <source>Knots stand at least %1° apart.</source>
        <translation>Stützpunkte stehen mindestens %1° auseinander.</translation>
    </message>
    <message>
        <source>A track keeps at least three knots.</source>
        <translation>Eine Bahn behält mindestens drei Stützpunkte.</translation>
    </message>
    <message>
        <source>%1, by its lift</source>
        <translation>%1, durch den Weg</translation>
    </message>
    <message>
        <source>, plotted %1</source>
        <translation>, gezeichnet %1</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LiftImportDialog</name>
    <message>
        <source>Lift table to knots</source>
        <translation>Wegtabelle in Stützpunkte</translation>
    </message>
    <message>
        <source>&amp;Use as track</source>
        <translation>Als Bahn &amp;verwenden</translation>
    </message>
    <message>
        <source>from the table</source>
        <translation>aus der Tabelle</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>&amp;Track</source>
        <translation>&amp;Bahn</translation>
    </message>
    <message>
        <source>&amp;Lobes per revolution</source>
        <translation>&amp;Nocken je Umdrehung</translation>
    </message>
    <message>
        <source>T&amp;olerance</source>
        <translation>T&amp;oleranz</translation>
    </message>
    <message>
        <source>Maximum &amp;knots</source>
        <translation>Höchstzahl &amp;Stützpunkte</translation>
    </message>
    <message>
        <source>Open a lift table</source>
        <translation>Wegtabelle öffnen</translation>
    </message>
    <message>
        <source>Fitting…</source>
        <translation>Anpassung läuft…</translation>
    </message>
    <message>
        <source>%1 rows, %2 knots, lobes per revolution: %3. Largest residual %4 at %5°, root mean square %6.</source>
        <translation>%1 Zeilen, %2 Stützpunkte, Nocken je Umdrehung: %3. Größte Abweichung %4 bei %5°, quadratisches Mittel %6.</translation>
    </message>
    <message>
        <source>That is beyond the tolerance: allow more knots or a wider tolerance.</source>
        <translation>Das liegt über der Toleranz: mehr Stützpunkte oder eine weitere Toleranz zulassen.</translation>
    </message>
    <message>
        <source>Import a lift table</source>
        <translation>Wegtabelle einlesen</translation>
    </message>
    <message>
        <source>The design would break a rule: %1</source>
        <translation>Der Entwurf würde eine Regel verletzen: %1</translation>
    </message>
    <message>
        <source>A table of angle in degrees and lift in mm over one repetition of the pattern or a whole turn, measured or from elsewhere.</source>
        <translation>Eine Tabelle von Winkel in Grad und Weg in mm über eine Wiederholung der Kurve oder eine ganze Umdrehung, gemessen oder von anderswo.</translation>
    </message>
    <message>
        <source>Largest residual allowed; proposed from the noise measured in the table. Below the noise the fit follows it</source>
        <translation>Größte erlaubte Abweichung; vorgeschlagen nach dem in der Tabelle gemessenen Rauschen. Unterhalb davon folgt die Anpassung dem Rauschen</translation>
    </message>
    <message>
        <source>The tolerance is below what the noise explains, %1: the pattern follows noise.</source>
        <translation>Die Toleranz liegt unter dem, was das Rauschen erklärt, %1: Die Kurve folgt dem Rauschen.</translation>
    </message>
    <message>
        <source>Noise of the table %1. Acceleration up to %2, of which noise about %3: %4 at the running speed.</source>
        <translation>Rauschen der Tabelle %1. Beschleunigung bis %2, davon Rauschen etwa %3: %4 bei der Betriebsdrehzahl.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LiftImportPlot</name>
    <message>
        <source>lift</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>pattern angle, °</source>
        <translation>Kurvenwinkel, °</translation>
    </message>
    <message>
        <source>Table, pattern, acceleration and residual</source>
        <translation>Tabelle, Kurve, Beschleunigung und Abweichung</translation>
    </message>
    <message>
        <source>acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>pattern</source>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>noise of the table</source>
        <translation>Rauschen der Tabelle</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>Toleranz</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LimitsList</name>
    <message>
        <source>Error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>1 error</source>
        <translation>1 Fehler</translation>
    </message>
    <message>
        <source>%1 errors</source>
        <translation>%1 Fehler</translation>
    </message>
    <message>
        <source>1 warning</source>
        <translation>1 Warnung</translation>
    </message>
    <message>
        <source>%1 warnings</source>
        <translation>%1 Warnungen</translation>
    </message>
    <message>
        <source>%1, limit %2</source>
        <translation>%1, Grenze %2</translation>
    </message>
    <message>
        <source>, at %1° shaft, %2° cycle</source>
        <translation>, bei %1° Welle, %2° Arbeitsspiel</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>No checked limit exceeded (estimates)</source>
        <translation>Keine geprüfte Grenze überschritten (Schätzungen)</translation>
    </message>
    <message>
        <source>Click: go to the input and the angle; Ctrl+Return: show the working</source>
        <translation>Klicken: zur Eingabe und zum Winkel; Strg+Eingabe: Rechenweg zeigen</translation>
    </message>
    <message>
        <source>Show the &amp;working</source>
        <translation>&amp;Rechenweg zeigen</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation>Ctrl+Return</translation>
    </message>
    <message>
        <source>1 remark</source>
        <translation>1 Hinweis</translation>
    </message>
    <message>
        <source>%1 remarks</source>
        <translation>%1 Hinweise</translation>
    </message>
    <message>
        <source>%1, usual limit %2</source>
        <translation>%1, üblicher Grenzwert %2</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LinerMap</name>
    <message>
        <source>The bore unrolled, with ports and ring sweeps</source>
        <translation>Die Bohrung abgewickelt, mit Schlitzen und Ringwegen</translation>
    </message>
    <message>
        <source>ring %1</source>
        <translation>Ring %1</translation>
    </message>
    <message>
        <source>crown</source>
        <translation>Kolbenboden</translation>
    </message>
    <message>
        <source>skirt</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>The skirt uncovers inlet row %1 at inner dead centre.</source>
        <translation>Der Schaft gibt im inneren Totpunkt die Einlassreihe %1 frei.</translation>
    </message>
    <message>
        <source>The skirt uncovers exhaust row %1 at inner dead centre.</source>
        <translation>Der Schaft gibt im inneren Totpunkt die Auslassreihe %1 frei.</translation>
    </message>
    <message>
        <source>Ring %1 runs over the wide ports of inlet row %2.</source>
        <translation>Ring %1 läuft über die breiten Schlitze der Einlassreihe %2.</translation>
    </message>
    <message>
        <source>Ring %1 runs over the wide ports of exhaust row %2.</source>
        <translation>Ring %1 läuft über die breiten Schlitze der Auslassreihe %2.</translation>
    </message>
    <message>
        <source>Crowns come within %1</source>
        <translation>Kleinster Abstand der Kolbenböden %1</translation>
    </message>
    <message>
        <source>, %1 with the adjuster at rest</source>
        <translation>, %1 bei Versteller in Ruhe</translation>
    </message>
    <message>
        <source>Give the piston&apos;s length and rings to see their sweep</source>
        <translation>Mit Länge und Ringen des Kolbens werden ihre Wege sichtbar</translation>
    </message>
    <message>
        <source>Inlet port row %1</source>
        <translation>Einlassreihe %1</translation>
    </message>
    <message>
        <source>Exhaust port row %1</source>
        <translation>Auslassreihe %1</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Change inlet port width</source>
        <translation>Breite der Einlassschlitze ändern</translation>
    </message>
    <message>
        <source>Change exhaust port width</source>
        <translation>Breite der Auslassschlitze ändern</translation>
    </message>
    <message>
        <source>Skirts clear the nearest port by %1 at inner dead centre</source>
        <translation>Die Schäfte halten im inneren Totpunkt %1 Abstand zum nächsten Schlitz</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Zylinderkopf</translation>
    </message>
    <message>
        <source>The crown comes within %1 of the head</source>
        <translation>Der Kolbenboden kommt dem Zylinderkopf bis auf %1 nahe</translation>
    </message>
    <message>
        <source>The bore unrolled once around, inlet side above. Bars at the left show how far crown, rings and skirt travel; a triangle points to a travel that lies wholly outside the part drawn. Drag the side of a port to change the width of its row.</source>
        <translation>Die Bohrung einmal ringsum abgewickelt, Einlassseite oben. Balken links zeigen, wie weit Boden, Ringe und Schaft laufen; ein Dreieck weist auf einen Weg, der ganz außerhalb des gezeichneten Teils liegt. Ziehen an der Seite eines Schlitzes ändert die Breite seiner Reihe.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LoadMapPlot</name>
    <message>
        <source>Brake specific fuel consumption</source>
        <translation>Spezifischer Kraftstoffverbrauch</translation>
    </message>
    <message>
        <source>Peak pressure</source>
        <translation>Höchstdruck</translation>
    </message>
    <message>
        <source>Knock integral</source>
        <translation>Klopfintegral</translation>
    </message>
    <message>
        <source>Delivery ratio</source>
        <translation>Luftaufwand</translation>
    </message>
    <message>
        <source>Supply pressure</source>
        <translation>Ladedruck</translation>
    </message>
    <message>
        <source>Brake power</source>
        <translation>Effektive Leistung</translation>
    </message>
    <message>
        <source>Share of the revolution off the inlet track</source>
        <translation>Anteil der Umdrehung ohne Kontakt zur Einlassbahn</translation>
    </message>
    <message>
        <source>Share of the revolution off the exhaust track</source>
        <translation>Anteil der Umdrehung ohne Kontakt zur Auslassbahn</translation>
    </message>
    <message>
        <source>full load</source>
        <translation>Volllast</translation>
    </message>
    <message>
        <source>operating point</source>
        <translation>Betriebspunkt</translation>
    </message>
    <message>
        <source>a roller is off its track</source>
        <translation>eine Rolle ist abgehoben</translation>
    </message>
    <message>
        <source>shaft speed, rpm</source>
        <translation>Wellendrehzahl, 1/min</translation>
    </message>
    <message>
        <source>Map over speed and load</source>
        <translation>Kennfeld über Drehzahl und Last</translation>
    </message>
    <message>
        <source>brake torque</source>
        <translation>effektives Drehmoment</translation>
    </message>
    <message>
        <source>load by mixture</source>
        <translation>Laststeuerung durch Gemisch</translation>
    </message>
    <message>
        <source>load by supply</source>
        <translation>Laststeuerung durch Luftversorgung</translation>
    </message>
    <message>
        <source>at</source>
        <translation>bei</translation>
    </message>
    <message>
        <source>rpm</source>
        <translation>1/min</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Brake thermal efficiency</source>
        <translation>Effektiver Wirkungsgrad</translation>
    </message>
    <message>
        <source>Pressure ratio of the compressor</source>
        <translation>Druckverhältnis des Verdichters</translation>
    </message>
    <message>
        <source>Efficiency of the compressor</source>
        <translation>Wirkungsgrad des Verdichters</translation>
    </message>
    <message>
        <source>Surge margin of the compressor</source>
        <translation>Pumpgrenzabstand des Verdichters</translation>
    </message>
    <message>
        <source>Share of the revolution off the track</source>
        <translation>Anteil der Umdrehung ohne Kontakt zur Bahn</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::LobeFactors</name>
    <message>
        <source>rise</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rückgang</translation>
    </message>
    <message>
        <source>%1 from %2°</source>
        <translation>%1 ab %2°</translation>
    </message>
    <message>
        <source>free-form</source>
        <translation>freie Form</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Rise, return</source>
        <translation>Anstieg, Rückgang</translation>
    </message>
    <message>
        <source>Law</source>
        <translation>Gesetz</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Span, °</source>
        <translation>Abschnittswinkel, °</translation>
    </message>
    <message>
        <source>Junction</source>
        <translation>Übergang</translation>
    </message>
    <message>
        <source>At, °</source>
        <translation>Bei, °</translation>
    </message>
    <message>
        <source>Characteristic factors of every rise and return</source>
        <translation>Kennwerte jedes Anstiegs und Rückgangs</translation>
    </message>
    <message>
        <source>For unit lift over unit span: peak velocity C_v, acceleration C_a, jerk C_j (∞ where the acceleration jumps) and velocity × acceleration C_m; beside them the peaks at this speed. Click: go there. Ctrl+C copies.</source>
        <translation>Für Einheitsweg über Einheitswinkel: größte Geschwindigkeit C_v, Beschleunigung C_a, Ruck C_j (∞, wo die Beschleunigung springt) und Geschwindigkeit × Beschleunigung C_m; daneben die Spitzenwerte bei dieser Drehzahl. Klick: dorthin gehen. Strg+C kopiert.</translation>
    </message>
    <message>
        <source>Jumps where segments or knots meet</source>
        <translation>Sprünge, wo Abschnitte oder Stützpunkte zusammenstoßen</translation>
    </message>
    <message>
        <source>A jump of velocity is an error, of acceleration a warning, of jerk a remark. Click: go there. Ctrl+C copies.</source>
        <translation>Ein Sprung der Geschwindigkeit ist ein Fehler, der Beschleunigung eine Warnung, des Rucks ein Hinweis. Klick: dorthin gehen. Strg+C kopiert.</translation>
    </message>
    <message>
        <source>Jump of v</source>
        <translation>Sprung von v</translation>
    </message>
    <message>
        <source>of a</source>
        <translation>von a</translation>
    </message>
    <message>
        <source>of j</source>
        <translation>von j</translation>
    </message>
    <message>
        <source>inside %1</source>
        <translation>innerhalb %1</translation>
    </message>
    <message>
        <source>start of %1</source>
        <translation>Anfang von %1</translation>
    </message>
    <message>
        <source>Factors and junctions</source>
        <translation>Kennwerte und Übergänge</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Be&amp;enden</translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation>Ctrl+Q</translation>
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
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation>Ctrl+Y</translation>
    </message>
    <message>
        <source>&amp;Baseline</source>
        <translation>Be&amp;zug</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Show the &amp;whole turn</source>
        <translation>&amp;Ganze Umdrehung zeigen</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source> (not saved yet)</source>
        <translation> (noch nicht gespeichert)</translation>
    </message>
    <message>
        <source> – Lobewright</source>
        <translation> – Lobewright</translation>
    </message>
    <message>
        <source>&amp;Motion</source>
        <translation>Be&amp;wegung</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::NewEngineDialog</name>
    <message>
        <source>New engine</source>
        <translation>Neuer Motor</translation>
    </message>
    <message>
        <source>What is known</source>
        <translation>Was bekannt ist</translation>
    </message>
    <message>
        <source>&amp;Published figures</source>
        <translation>&amp;Veröffentlichte Angaben</translation>
    </message>
    <message>
        <source>A &amp;duty</source>
        <translation>An&amp;forderungen</translation>
    </message>
    <message>
        <source>A &amp;sample</source>
        <translation>Ein &amp;Beispiel</translation>
    </message>
    <message>
        <source>&amp;Blank</source>
        <translation>&amp;Leer</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Öff&amp;nen</translation>
    </message>
    <message>
        <source>The smallest engine that is valid: one cylinder on tracks of one lobe. Every number is yours to change.</source>
        <translation>Der kleinste gültige Motor: ein Zylinder auf Bahnen mit einem Nocken. Jede Zahl lässt sich ändern.</translation>
    </message>
    <message>
        <source>Candidates appear here as soon as one figure is given, with the rule behind every number.</source>
        <translation>Hier erscheinen Entwürfe, sobald eine Angabe eingetragen ist, mit der Regel hinter jeder Zahl.</translation>
    </message>
    <message>
        <source>Candidates appear here as soon as a power or a torque is given, with the rule behind every number.</source>
        <translation>Hier erscheinen Entwürfe, sobald eine Leistung oder ein Drehmoment eingetragen ist, mit der Regel hinter jeder Zahl.</translation>
    </message>
    <message>
        <source>Draft</source>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>A p&amp;icture</source>
        <translation>Ein B&amp;ild</translation>
    </message>
    <message>
        <source>Open begins with the smallest engine that is valid and a picture, or a page of a PDF, in which to measure: bore, stroke, pitch radius, ports, a lobe. What was measured goes to the inputs with its range; all others count as assumed.</source>
        <translation>Öffnen beginnt mit dem kleinsten gültigen Motor und einem Bild oder einer Seite eines PDF, in dem gemessen wird: Bohrung, Kolbenhub, Teilkreisradius, Schlitze, ein Nocken. Das Gemessene geht mit seinem Bereich an die Eingaben; alle anderen gelten als angenommen.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::NumberEdit</name>
    <message>
        <source>not given</source>
        <translation>ohne Angabe</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::NumberPanel</name>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Find an input</source>
        <translation>Eingabe suchen</translation>
    </message>
    <message>
        <source>By its name, its group, its explanation or its key in the file</source>
        <translation>Nach Name, Gruppe, Erklärung oder Schlüssel in der Datei</translation>
    </message>
    <message>
        <source>“%1” is not a number; the value stays as it was.</source>
        <translation>„%1“ ist keine Zahl; der Wert bleibt, wie er war.</translation>
    </message>
    <message>
        <source>This row cannot be changed that way: the track would not come back to where it starts.</source>
        <translation>So lässt sich diese Zeile nicht ändern: Die Bahn käme nicht zu ihrem Anfang zurück.</translation>
    </message>
    <message>
        <source>Where the inputs come from; click one to see only those</source>
        <translation>Woher die Eingaben stammen; anklicken zeigt nur diese</translation>
    </message>
    <message>
        <source>only %1 &lt;a href=&quot;origin:%2&quot;&gt;(show all)&lt;/a&gt;</source>
        <translation>nur %1 &lt;a href=&quot;origin:%2&quot;&gt;(alle zeigen)&lt;/a&gt;</translation>
    </message>
    <message>
        <source>Origin of %1</source>
        <translation>Herkunft von %1</translation>
    </message>
    <message>
        <source>%1 is a choice</source>
        <translation>%1 ist gewählt</translation>
    </message>
    <message>
        <source>Remove the schedule of %1</source>
        <translation>Kennlinie entfernen: %1</translation>
    </message>
    <message>
        <source>No input has “%1” in its name or its explanation.</source>
        <translation>Keine Eingabe hat „%1“ im Namen oder in der Erklärung.</translation>
    </message>
    <message>
        <source>Search the help</source>
        <translation>In der Hilfe suchen</translation>
    </message>
    <message>
        <source>Pages of the help that hold these words</source>
        <translation>Hilfeseiten, die diese Wörter enthalten</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::OrderBars</name>
    <message>
        <source>Force and torque orders</source>
        <translation>Ordnungen von Kraft und Drehmoment</translation>
    </message>
    <message>
        <source>Axial shaking force</source>
        <translation>Axiale freie Massenkraft</translation>
    </message>
    <message>
        <source>Rocking moment about x</source>
        <translation>Freies Massenmoment um x</translation>
    </message>
    <message>
        <source>Rocking moment about y</source>
        <translation>Freies Massenmoment um y</translation>
    </message>
    <message>
        <source>Total torque (order 0 is the mean)</source>
        <translation>Gesamtes Drehmoment (Ordnung 0 ist der Mittelwert)</translation>
    </message>
    <message>
        <source>shaft order %1</source>
        <translation>Wellenordnung %1</translation>
    </message>
    <message>
        <source>Balanced: no order above rounding error.</source>
        <translation>Ausgeglichen: keine Ordnung über der Rundung.</translation>
    </message>
    <message>
        <source>What would cancel the axial force of a cylinder</source>
        <translation>Was die Axialkraft eines Zylinders aufhöbe</translation>
    </message>
    <message>
        <source>Nothing is left to cancel.</source>
        <translation>Nichts bleibt aufzuheben.</translation>
    </message>
    <message>
        <source>Another mass of the exhaust piston cancels it.</source>
        <translation>Eine andere Masse des Auslasskolbens hebt sie auf.</translation>
    </message>
    <message>
        <source>Another exhaust lead cancels it, at the cost of the port timing.</source>
        <translation>Eine andere Auslassvoreilung hebt sie auf, auf Kosten der Steuerzeiten.</translation>
    </message>
    <message>
        <source>Only mass and exhaust lead together cancel it.</source>
        <translation>Nur Masse und Auslassvoreilung zusammen heben sie auf.</translation>
    </message>
    <message>
        <source>Neither mass nor exhaust lead cancels it; these leave the least.</source>
        <translation>Weder Masse noch Auslassvoreilung heben sie auf; diese lassen am wenigsten übrig.</translation>
    </message>
    <message>
        <source>Speed fluctuation within a revolution</source>
        <translation>Drehzahlschwankung innerhalb einer Umdrehung</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PairPlot</name>
    <message>
        <source>The two inputs that matter most</source>
        <translation>Die zwei wichtigsten Eingaben</translation>
    </message>
    <message>
        <source>Small and faint: engines that were thought possible. Large and strong: engines that keep to the published figures.</source>
        <translation>Klein und blass: Motoren, die für möglich gehalten wurden. Groß und kräftig: Motoren, die die veröffentlichten Angaben einhalten.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::Pane</name>
    <message>
        <source>Options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>Enlarge</source>
        <translation>Vergrößern</translation>
    </message>
    <message>
        <source>Show only this view, or all again</source>
        <translation>Nur diese Ansicht zeigen oder wieder alle</translation>
    </message>
    <message>
        <source>Back to all panes</source>
        <translation>Zurück zu allen Feldern</translation>
    </message>
    <message>
        <source>What this view can show, copy, save and print, and which view stands here</source>
        <translation>Was diese Ansicht zeigen, kopieren, speichern und drucken kann, und welche Ansicht hier steht</translation>
    </message>
    <message>
        <source>Options of %1</source>
        <translation>Optionen von %1</translation>
    </message>
    <message>
        <source>Show another view here</source>
        <translation>Hier eine andere Ansicht zeigen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PartNames</name>
    <message>
        <source>&amp;Names of the parts</source>
        <translation>&amp;Namen der Teile</translation>
    </message>
    <message>
        <source>What turns, what slides and what pushes, written beside the parts</source>
        <translation>Was dreht, was gleitet und was drückt, neben die Teile geschrieben</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PhasePlot</name>
    <message>
        <source>Results against phase</source>
        <translation>Ergebnisse über der Phase</translation>
    </message>
    <message>
        <source>exhaust lead as built, shaft °</source>
        <translation>gebaute Auslassvoreilung, ° Welle</translation>
    </message>
    <message>
        <source>adjuster setting, shaft °</source>
        <translation>Stellung des Verstellers, ° Welle</translation>
    </message>
    <message>
        <source>Over exhaust &amp;lead</source>
        <translation>Über der &amp;Auslassvoreilung</translation>
    </message>
    <message>
        <source>Over &amp;adjuster setting</source>
        <translation>Über der Stellung des &amp;Verstellers</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PictureDialog</name>
    <message>
        <source>Measure a picture</source>
        <translation>Ein Bild ausmessen</translation>
    </message>
    <message>
        <source>&amp;Apply to the inputs</source>
        <translation>Ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>&amp;Open a picture…</source>
        <translation>Bild ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Page </source>
        <translation>Seite </translation>
    </message>
    <message>
        <source>In a photograph near parts look larger: measure in the plane in which the scale was set.</source>
        <translation>Auf einem Foto wirkt Nahes größer: in der Ebene messen, in der der Maßstab gesetzt ist.</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Takes back the last click (Ctrl+Z)</source>
        <translation>Nimmt den letzten Klick zurück (Strg+Z)</translation>
    </message>
    <message>
        <source>Red&amp;o</source>
        <translation>Wied&amp;erherstellen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Strg+Umschalt+Z</translation>
    </message>
    <message>
        <source>S&amp;how all</source>
        <translation>Alles &amp;zeigen</translation>
    </message>
    <message>
        <source>Home; the wheel zooms, the right button moves the picture</source>
        <translation>Pos1; das Rad vergrößert, die rechte Taste verschiebt das Bild</translation>
    </message>
    <message>
        <source>Open a picture</source>
        <translation>Bild öffnen</translation>
    </message>
    <message>
        <source>One pixel is %1. Choose what to measure.</source>
        <translation>Ein Pixel ist %1. Wählen, was gemessen wird.</translation>
    </message>
    <message>
        <source>Set the scale first.</source>
        <translation>Zuerst den Maßstab setzen.</translation>
    </message>
    <message>
        <source>Sca&amp;le length</source>
        <translation>Länge des &amp;Maßstabs</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PictureView</name>
    <message>
        <source>Open a picture or a PDF, or drop one here</source>
        <translation>Ein Bild oder eine PDF-Datei öffnen oder hier ablegen</translation>
    </message>
    <message>
        <source>Picture to measure in</source>
        <translation>Bild, in dem gemessen wird</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PlaybackBar</name>
    <message>
        <source>Previous event</source>
        <translation>Voriges Ereignis</translation>
    </message>
    <message>
        <source>Next event</source>
        <translation>Nächstes Ereignis</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Shaft angle</source>
        <translation>Wellenwinkel</translation>
    </message>
    <message>
        <source>Angle of the shaft θ; 0 where the pattern of the inlet track begins</source>
        <translation>Winkel der Welle θ; 0, wo die Kurve der Einlassbahn beginnt</translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>Cycle %1°</source>
        <translation>Arbeitsspiel %1°</translation>
    </message>
    <message>
        <source>Cycle angle from inner dead centre of cylinder 1</source>
        <translation>Winkel im Arbeitsspiel ab dem inneren Totpunkt von Zylinder 1</translation>
    </message>
    <message>
        <source>Slow motion</source>
        <translation>Zeitlupe</translation>
    </message>
    <message>
        <source>How much slower than the shaft speed of the design</source>
        <translation>Wie viel langsamer als die Drehzahl des Entwurfs</translation>
    </message>
    <message>
        <source>True speed</source>
        <translation>Echte Drehzahl</translation>
    </message>
    <message>
        <source>Slowed 1 : %1</source>
        <translation>Zeitlupe 1 : %1</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Stop the shaft</source>
        <translation>Welle anhalten</translation>
    </message>
    <message>
        <source>Turn the shaft</source>
        <translation>Welle drehen</translation>
    </message>
    <message>
        <source>To the previous event: exhaust opens (EO) or closes (EC), inlet opens (IO) or closes (IC), inner (IDC) or outer dead centre (ODC)</source>
        <translation>Zum vorigen Ereignis: Auslass öffnet (AÖ) oder schließt (AS), Einlass öffnet (EÖ) oder schließt (ES), innerer (IT) oder äußerer Totpunkt (AT)</translation>
    </message>
    <message>
        <source>To the next event: exhaust opens (EO) or closes (EC), inlet opens (IO) or closes (IC), inner (IDC) or outer dead centre (ODC)</source>
        <translation>Zum nächsten Ereignis: Auslass öffnet (AÖ) oder schließt (AS), Einlass öffnet (EÖ) oder schließt (ES), innerer (IT) oder äußerer Totpunkt (AT)</translation>
    </message>
    <message>
        <source>Arrangements</source>
        <translation>Anordnungen</translation>
    </message>
    <message>
        <source>Ways to divide the window, one for each job</source>
        <translation>Aufteilungen des Fensters, nach dem, was zu tun ist</translation>
    </message>
    <message>
        <source>&amp;Play</source>
        <translation>&amp;Abspielen</translation>
    </message>
    <message>
        <source>F5</source>
        <translation>F5</translation>
    </message>
    <message>
        <source>Pre&amp;vious event</source>
        <translation>&amp;Voriges Ereignis</translation>
    </message>
    <message>
        <source>F7</source>
        <translation>F7</translation>
    </message>
    <message>
        <source>&amp;Next event</source>
        <translation>&amp;Nächstes Ereignis</translation>
    </message>
    <message>
        <source>F8</source>
        <translation>F8</translation>
    </message>
    <message>
        <source>&amp;Pause</source>
        <translation>An&amp;halten</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PortPlot</name>
    <message>
        <source>%1° shaft, %2° cycle</source>
        <translation>%1° Welle, %2° Arbeitsspiel</translation>
    </message>
    <message>
        <source>, %1 ms</source>
        <translation>, %1 ms</translation>
    </message>
    <message>
        <source>Port timing</source>
        <translation>Steuerzeiten</translation>
    </message>
    <message>
        <source>open area</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>Geometric area that the piston uncovers, all rows of one side.</source>
        <translation>Geometrischer Querschnitt, den der Kolben freigibt, alle Reihen einer Seite.</translation>
    </message>
    <message>
        <source>Inlet ports</source>
        <translation>Einlassschlitze</translation>
    </message>
    <message>
        <source>Exhaust ports</source>
        <translation>Auslassschlitze</translation>
    </message>
    <message>
        <source>Blowdown</source>
        <translation>Vorauslass</translation>
    </message>
    <message>
        <source>Overlap</source>
        <translation>Überschneidung</translation>
    </message>
    <message>
        <source>After-charge</source>
        <translation>Nachladung</translation>
    </message>
    <message>
        <source>From exhaust opens to inlet opens.</source>
        <translation>Von „Auslass öffnet“ bis „Einlass öffnet“.</translation>
    </message>
    <message>
        <source>Inlet and exhaust open.</source>
        <translation>Einlass und Auslass offen.</translation>
    </message>
    <message>
        <source>From exhaust closes to inlet closes; negative when the exhaust closes last.</source>
        <translation>Von „Auslass schließt“ bis „Einlass schließt“; negativ, wenn der Auslass zuletzt schließt.</translation>
    </message>
    <message>
        <source>Baseline over c&amp;ycle degrees</source>
        <translation>Bezug über &amp;Grad des Arbeitsspiels</translation>
    </message>
    <message>
        <source>Aligns both engines by cycle degrees, whatever their numbers of lobes</source>
        <translation>Legt gleiche Winkel im Arbeitsspiel beider Motoren übereinander, gleich wie viele Nocken sie haben</translation>
    </message>
    <message>
        <source> (was %1)</source>
        <translation> (war %1)</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PositionPlot</name>
    <message>
        <source>In the lift direction, at constant shaft speed. Pulling a knot up or down here prescribes its slope.</source>
        <translation>In Richtung des Kolbenwegs, bei gleichbleibender Drehzahl. Zieht man hier einen Stützpunkt auf oder ab, so gibt das seine Steigung vor.</translation>
    </message>
    <message>
        <source>In the lift direction, at constant shaft speed. Pulling a knot up or down here moves its lift until the acceleration follows.</source>
        <translation>In Richtung des Kolbenwegs, bei gleichbleibender Drehzahl. Zieht man hier einen Stützpunkt auf oder ab, so verschiebt sich sein Weg, bis die Beschleunigung folgt.</translation>
    </message>
    <message>
        <source>In the lift direction, at constant shaft speed.</source>
        <translation>In Richtung des Kolbenwegs, bei gleichbleibender Drehzahl.</translation>
    </message>
    <message>
        <source>Lift only</source>
        <translation>Nur Weg</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Acceleration</source>
        <translation>Beschleunigung</translation>
    </message>
    <message>
        <source>Jerk</source>
        <translation>Ruck</translation>
    </message>
    <message>
        <source>Piston position</source>
        <translation>Kolbenstellung</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Inward travel y of the piston from its outer dead centre.</source>
        <translation>Weg y des Kolbens nach innen ab seinem äußeren Totpunkt.</translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation>%1, Einlass</translation>
    </message>
    <message>
        <source>%1, exhaust</source>
        <translation>%1, Auslass</translation>
    </message>
    <message>
        <source>Jumps per revolution: %1, up to</source>
        <translation>Sprünge je Umdrehung: %1, bis</translation>
    </message>
    <message>
        <source>The piston would be struck: an error.</source>
        <translation>Der Kolben bekäme einen Schlag: ein Fehler.</translation>
    </message>
    <message>
        <source>Usual for most laws, harmless at moderate speed.</source>
        <translation>Bei den meisten Gesetzen üblich, bei mäßiger Drehzahl harmlos.</translation>
    </message>
    <message>
        <source>&amp;Add a knot at the shaft angle</source>
        <translation>Stützpunkt am Wellenwinkel &amp;setzen</translation>
    </message>
    <message>
        <source>&amp;Remove the chosen knot</source>
        <translation>Gewählten Stützpunkt &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Free the slope there</source>
        <translation>Steigung dort &amp;freigeben</translation>
    </message>
    <message>
        <source>Infinite jerk: use a law with continuous acceleration.</source>
        <translation>Unendlicher Ruck: ein Gesetz mit stetiger Beschleunigung wählen.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PreferenceCommands</name>
    <message>
        <source>U&amp;nits</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Farbschema</translation>
    </message>
    <message>
        <source>&amp;Metric</source>
        <translation>&amp;Metrisch</translation>
    </message>
    <message>
        <source>&amp;Inch</source>
        <translation>&amp;Zoll</translation>
    </message>
    <message>
        <source>Inches, psi, lb·ft and °F wherever numbers are shown or typed; files stay metric</source>
        <translation>Zoll, psi, lb·ft und °F, wo immer Zahlen gezeigt oder eingegeben werden; Dateien bleiben metrisch</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
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
        <source>&amp;Preferences…</source>
        <translation>&amp;Einstellungen…</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Ctrl+,</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PreferencesDialog</name>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>Units of every number shown and typed. Files stay metric.</source>
        <translation>Einheiten aller gezeigten und eingegebenen Zahlen. Dateien bleiben metrisch.</translation>
    </message>
    <message>
        <source>Metric: mm, bar, N·m, K</source>
        <translation>Metrisch: mm, bar, N·m, K</translation>
    </message>
    <message>
        <source>Inch: in, psi, lb·ft, °F</source>
        <translation>Zoll: in, psi, lb·ft, °F</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Farbschema</translation>
    </message>
    <message>
        <source>Light or dark ground for the whole program.</source>
        <translation>Heller oder dunkler Hintergrund für das ganze Programm.</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
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
        <source>Te&amp;xt size</source>
        <translation>Schrift&amp;größe</translation>
    </message>
    <message>
        <source>Size of all text, against the size that the system asks for.</source>
        <translation>Größe aller Texte gegenüber der Größe, die das System verlangt.</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Klein</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Groß</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Am größten</translation>
    </message>
    <message>
        <source>Suited to the shaft speed</source>
        <translation>Passend zur Drehzahl</translation>
    </message>
    <message>
        <source>&amp;Slow motion</source>
        <translation>&amp;Zeitlupe</translation>
    </message>
    <message>
        <source>How fast the shaft turns when a design is opened.</source>
        <translation>Wie schnell sich die Welle dreht, wenn ein Entwurf geöffnet wird.</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>Language of menus, labels, messages and help pages. Takes effect at the next start of the program.</source>
        <translation>Sprache der Menüs, Beschriftungen, Meldungen und Hilfeseiten. Wirkt beim nächsten Start des Programms.</translation>
    </message>
    <message>
        <source>&amp;Autosave every</source>
        <translation>Siche&amp;rung alle</translation>
    </message>
    <message>
        <source>Unsaved work is copied this often, to be offered again after a crash. Your file is written only when you save.</source>
        <translation>So oft wird nicht gespeicherte Arbeit kopiert und nach einem Absturz wieder angeboten. Die eigene Datei wird nur beim Speichern geschrieben.</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>&amp;Processor threads</source>
        <translation>&amp;Prozessor-Threads</translation>
    </message>
    <message>
        <source>Largest number of threads that sweeps, maps and comparisons may use.</source>
        <translation>Höchstzahl der Threads, die Drehzahlläufe, Kennfelder und Vergleiche nutzen dürfen.</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>&amp;Restore the window as it was left</source>
        <translation>&amp;Fenster wiederherstellen, wie es verlassen wurde</translation>
    </message>
    <message>
        <source>Size, panes and arrangement of the window at the next start.</source>
        <translation>Größe, Felder und Anordnung des Fensters beim nächsten Start.</translation>
    </message>
    <message>
        <source>All preferences as they were when the program was new</source>
        <translation>Alle Einstellungen wie beim neuen Programm</translation>
    </message>
    <message>
        <source>Start with the &amp;design of last time</source>
        <translation>Mit dem &amp;letzten Entwurf beginnen</translation>
    </message>
    <message>
        <source>Otherwise the program starts with a sample.</source>
        <translation>Sonst beginnt das Programm mit einem Beispiel.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PressureVolumePlot</name>
    <message>
        <source>p–V diagram</source>
        <translation>p-V-Diagramm</translation>
    </message>
    <message>
        <source>chamber volume</source>
        <translation>Brennraumvolumen</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Show the &amp;whole cycle</source>
        <translation>&amp;Ganzes Arbeitsspiel zeigen</translation>
    </message>
    <message>
        <source>%1, baseline</source>
        <translation>%1, Bezug</translation>
    </message>
    <message>
        <source>area %1, imep %2</source>
        <translation>Fläche %1, pmi %2</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::PublishedPage</name>
    <message>
        <source>Fill in what is published, each with its unit as printed (40 hp, 73 cu in); leave the rest empty.</source>
        <translation>Eintragen, was veröffentlicht ist, jeweils mit der gedruckten Einheit (40 hp, 73 cu in); alles andere bleibt leer.</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Weglassen: %1</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::RangesView</name>
    <message>
        <source>What is not known</source>
        <translation>Was nicht bekannt ist</translation>
    </message>
    <message>
        <source>input</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>low</source>
        <translation>von</translation>
    </message>
    <message>
        <source>high</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>What would have to be true?</source>
        <translation>Was müsste gelten?</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Scatter of manufacture</source>
        <translation>Fertigungsstreuung</translation>
    </message>
    <message>
        <source>Free to choose</source>
        <translation>Frei wählbar</translation>
    </message>
    <message>
        <source>Ranges</source>
        <translation>Bereiche</translation>
    </message>
    <message>
        <source>Looks among the possible engines for those that keep to the published figures of the claims check</source>
        <translation>Sucht unter den möglichen Motoren diejenigen, die die in der Prüfung der Angaben eingetragenen Werte einhalten</translation>
    </message>
    <message>
        <source>Stop computing; what is shown stays</source>
        <translation>Berechnung anhalten; das Gezeigte bleibt</translation>
    </message>
    <message>
        <source>%1 unknowns; the line is the design as it is. Click a row to see its input.</source>
        <translation>%1 Unbekannte; die Linie ist der Entwurf, wie er ist. Ein Klick auf eine Zeile zeigt ihre Eingabe.</translation>
    </message>
    <message>
        <source>Published figures entered in the claims check can be searched for here.</source>
        <translation>Veröffentlichte Werte, die in der Prüfung der Angaben eingetragen sind, können hier gesucht werden.</translation>
    </message>
    <message>
        <source>None of %1 engines keeps to the published figures.</source>
        <translation>Keiner von %1 Motoren hält die veröffentlichten Angaben ein.</translation>
    </message>
    <message>
        <source>The nearest misses by %1 %.</source>
        <translation>Der nächste verfehlt sie um %1 %.</translation>
    </message>
    <message>
        <source>%1 % of the possible engines keep to the published figures.</source>
        <translation>%1 % der möglichen Motoren halten die veröffentlichten Angaben ein.</translation>
    </message>
    <message>
        <source>Which ranges are varied: those of inputs that are not certain; the usual tolerances of lift (±0.05 mm), port edges and clearance (±0.1 mm); or those of inputs that may still be chosen</source>
        <translation>Welche Bereiche verändert werden: die der unsicheren Eingaben; die üblichen Toleranzen von Weg (±0,05 mm), Schlitzkanten und Bodenabstand (±0,1 mm); oder die der noch frei wählbaren Eingaben</translation>
    </message>
    <message>
        <source>Upper bar: what is thought possible. Lower bar: what would have to be true for the published figures. Click to see the input.</source>
        <translation>Oberer Balken: was für möglich gehalten wird. Unterer Balken: was für die veröffentlichten Angaben zutreffen müsste. Klicken führt zur Eingabe.</translation>
    </message>
    <message>
        <source>Values that came from a rule are recomputed with its inputs: stroke, rollers and ports, for instance, with the bore.</source>
        <translation>Werte, die aus einer Regel stammen, gehen mit deren Eingaben mit: mit der Bohrung etwa Kolbenhub, Rollen und Schlitze.</translation>
    </message>
    <message>
        <source>decides %1 %</source>
        <translation>entscheidet %1 %</translation>
    </message>
    <message>
        <source>Nothing in this design has a range. Give an input one with Ctrl+I in its field, or look at the scatter of manufacture above.</source>
        <translation>Nichts in diesem Entwurf hat einen Bereich. Geben Sie einer Eingabe in ihrem Feld mit Strg+I einen, oder betrachten Sie oben die Fertigungsstreuung.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ReadingsTable</name>
    <message>
        <source>Readings</source>
        <translation>Messungen</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Goes to</source>
        <translation>Geht an</translation>
    </message>
    <message>
        <source>Re&amp;move the reading</source>
        <translation>Messung ent&amp;fernen</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>%1 … %2</source>
        <translation>%1 … %2</translation>
    </message>
    <message>
        <source>%1 places</source>
        <translation>%1 Stellen</translation>
    </message>
    <message>
        <source>needs the axis</source>
        <translation>braucht die Achse</translation>
    </message>
    <message>
        <source>needs the scale</source>
        <translation>braucht den Maßstab</translation>
    </message>
    <message>
        <source>Input that the reading goes to</source>
        <translation>Eingabe, an die die Messung geht</translation>
    </message>
    <message>
        <source>nowhere</source>
        <translation>nirgendwohin</translation>
    </message>
    <message>
        <source>Measure a picture</source>
        <translation>Ein Bild ausmessen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ReadoutStrip</name>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::RecentFiles</name>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;Clear this list</source>
        <translation>Liste &amp;leeren</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ReportCommands</name>
    <message>
        <source>&amp;Report…</source>
        <translation>Be&amp;richt…</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>A PDF with drawing, results, plots, limits, assumptions and sources</source>
        <translation>Ein PDF mit Zeichnung, Ergebnissen, Diagrammen, Grenzen, Annahmen und Quellen</translation>
    </message>
    <message>
        <source>Print this pa&amp;ne…</source>
        <translation>&amp;Dieses Feld drucken…</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <translation>Ctrl+P</translation>
    </message>
    <message>
        <source>The view that has the keyboard, else the one under the pointer, on paper or as a PDF</source>
        <translation>Die Ansicht, die die Tastatur hat, sonst die unter dem Zeiger, auf Papier oder als PDF</translation>
    </message>
    <message>
        <source>Print the &amp;full report…</source>
        <translation>&amp;Ganzen Bericht drucken…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation>Ctrl+Shift+P</translation>
    </message>
    <message>
        <source>The pages of the report on paper</source>
        <translation>Die Seiten des Berichts auf Papier</translation>
    </message>
    <message>
        <source>Write a report</source>
        <translation>Bericht schreiben</translation>
    </message>
    <message>
        <source>Report (*.pdf)</source>
        <translation>Bericht (*.pdf)</translation>
    </message>
    <message>
        <source>Report written to %1</source>
        <translation>Bericht in %1 geschrieben</translation>
    </message>
    <message>
        <source>Report printed</source>
        <translation>Bericht gedruckt</translation>
    </message>
    <message>
        <source>No report</source>
        <translation>Kein Bericht</translation>
    </message>
    <message>
        <source>The gas cycle of this design could not be solved; a report needs its solution. The limits list says why.</source>
        <translation>Der Kreisprozess dieses Entwurfs konnte nicht gelöst werden; ein Bericht braucht die Lösung. Die Liste der Grenzen sagt warum.</translation>
    </message>
    <message>
        <source>Computing the torque curve and drawing the pages</source>
        <translation>Drehmomentkurve wird gerechnet, Seiten werden gezeichnet</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Report cancelled; nothing was written</source>
        <translation>Bericht abgebrochen; nichts wurde geschrieben</translation>
    </message>
    <message>
        <source>Report not written</source>
        <translation>Bericht nicht geschrieben</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ResultCard</name>
    <message>
        <source>%1 against the baseline</source>
        <translation>%1 gegenüber dem Bezugsentwurf</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::Safekeeping</name>
    <message>
        <source>No copies of unsaved work are kept: %1. What is not saved is lost if the program or the computer fails.</source>
        <translation>Ungespeicherte Arbeit wird nicht gesichert: %1. Was nicht gespeichert ist, geht verloren, wenn Programm oder Rechner ausfallen.</translation>
    </message>
    <message>
        <source>Recovery off</source>
        <translation>Sicherung aus</translation>
    </message>
    <message>
        <source>Unsaved work that cannot be read</source>
        <translation>Ungespeicherte Arbeit, die nicht lesbar ist</translation>
    </message>
    <message>
        <source>A copy of unsaved work (“%1”, %2) cannot be read by this version of the program: %3

It was not deleted. It is kept as %4</source>
        <translation>Eine Sicherung ungespeicherter Arbeit („%1“, %2) kann diese Version des Programms nicht lesen: %3

Sie wurde nicht gelöscht. Sie liegt unter %4</translation>
    </message>
    <message>
        <source>Unsaved work found</source>
        <translation>Ungespeicherte Arbeit gefunden</translation>
    </message>
    <message>
        <source>The program did not end properly while “%1” was being changed. The changes up to %2 are still there.</source>
        <translation>Das Programm wurde nicht ordentlich beendet, während „%1“ bearbeitet wurde. Die Änderungen bis %2 sind noch da.</translation>
    </message>
    <message>
        <source>&amp;Recover them</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;Discard them</source>
        <translation>&amp;Verwerfen</translation>
    </message>
    <message>
        <source>Ask again &amp;later</source>
        <translation>&amp;Später wieder fragen</translation>
    </message>
    <message>
        <source>“%1” was changed by another window or program. This window still shows the design as it was here.</source>
        <translation>Die Datei „%1“ wurde von einem anderen Fenster oder Programm geändert. Dieses Fenster zeigt den Entwurf noch so, wie er hier war.</translation>
    </message>
    <message>
        <source>Compare…</source>
        <translation>Vergleichen…</translation>
    </message>
    <message>
        <source>Nothing is unsaved.</source>
        <translation>Es ist nichts ungespeichert.</translation>
    </message>
    <message>
        <source>Save your work now: no copy for recovery could be written.</source>
        <translation>Bitte jetzt speichern: eine Sicherung konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>A copy of your unsaved work was written for recovery.</source>
        <translation>Die ungespeicherte Arbeit wurde gesichert.</translation>
    </message>
    <message>
        <source>Program error</source>
        <translation>Programmfehler</translation>
    </message>
    <message>
        <source>An internal error stopped one part of the program: %1

The design is unchanged and the program goes on. %2 If it happens again, undo the last change.</source>
        <translation>Ein interner Fehler hat einen Teil des Programms beendet: %1

Der Entwurf ist unverändert, und das Programm läuft weiter. %2 Falls es wieder geschieht, bitte die letzte Änderung rückgängig machen.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::SampleHints</name>
    <message>
        <source>New here? Drag a diamond on the lift curve or a port edge in the section: every plot follows. F5 turns the shaft, Ctrl+1 to Ctrl+0 change the arrangement, F1 explains the pane you are in. Help &gt; First hint brings this line back.</source>
        <translation>Neu hier? Ziehen Sie eine Raute auf der Wegkurve oder eine Schlitzkante im Schnitt: Alle Diagramme folgen. F5 dreht die Welle, Strg+1 bis Strg+0 wechseln die Anordnung, F1 erklärt das Feld, in dem Sie sind. Hilfe &gt; Erster Hinweis holt diese Zeile zurück.</translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>Erste Schritte</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Was zu sehen ist</translation>
    </message>
    <message>
        <source>Saved. Title and notes are still the sample&apos;s.</source>
        <translation>Gespeichert. Titel und Notizen sind noch die des Beispiels.</translation>
    </message>
    <message>
        <source>Title “%1”, notes empty</source>
        <translation>Titel „%1“, Notizen leer</translation>
    </message>
    <message>
        <source>Title and notes of its own</source>
        <translation>Eigener Titel, eigene Notizen</translation>
    </message>
    <message>
        <source>Write them…</source>
        <translation>Selbst schreiben…</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ScheduleCanvas</name>
    <message>
        <source>%1 rpm</source>
        <translation>%1/min</translation>
    </message>
    <message>
        <source>%1 against speed</source>
        <translation>%1 über der Drehzahl</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Move a point of the schedule of %1</source>
        <translation>Punkt der Kennlinie verschieben: %1</translation>
    </message>
    <message>
        <source>Add a point to the schedule of %1</source>
        <translation>Punkt zur Kennlinie hinzufügen: %1</translation>
    </message>
    <message>
        <source>Remove a point of the schedule of %1</source>
        <translation>Punkt der Kennlinie entfernen: %1</translation>
    </message>
    <message>
        <source>Point %1 of %2</source>
        <translation>Punkt %1 von %2</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Drehzahl</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ScheduleDialog</name>
    <message>
        <source>Schedule over speed</source>
        <translation>Kennlinie über der Drehzahl</translation>
    </message>
    <message>
        <source>&amp;Draw by hand</source>
        <translation>Von &amp;Hand zeichnen</translation>
    </message>
    <message>
        <source>Begin with a level schedule at the fixed value; its points are dragged below the torque curve</source>
        <translation>Mit einer waagerechten Kennlinie beim festen Wert beginnen; ihre Punkte werden unter der Drehmomentkurve gezogen</translation>
    </message>
    <message>
        <source>&amp;Apply</source>
        <translation>Ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>Let the input follow the speed as found</source>
        <translation>Die Eingabe der Drehzahl so folgen lassen, wie gefunden</translation>
    </message>
    <message>
        <source>Find the schedule of %1</source>
        <translation>Kennlinie suchen: %1</translation>
    </message>
    <message>
        <source>Input that follows the speed</source>
        <translation>Eingabe, die der Drehzahl folgt</translation>
    </message>
    <message>
        <source>A number of the adjuster, of the gas side or of the operating point</source>
        <translation>Eine Zahl des Verstellers, der Gasseite oder des Betriebspunkts</translation>
    </message>
    <message>
        <source>&amp;Vary</source>
        <translation>&amp;Verändern</translation>
    </message>
    <message>
        <source>&amp;between</source>
        <translation>&amp;zwischen</translation>
    </message>
    <message>
        <source>Lower end of the range</source>
        <translation>Unteres Ende des Bereichs</translation>
    </message>
    <message>
        <source>and</source>
        <translation>und</translation>
    </message>
    <message>
        <source>Upper end of the range</source>
        <translation>Oberes Ende des Bereichs</translation>
    </message>
    <message>
        <source>at s&amp;peeds from</source>
        <translation>bei &amp;Drehzahlen von</translation>
    </message>
    <message>
        <source>Lowest speed, rpm</source>
        <translation>Niedrigste Drehzahl, 1/min</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Highest speed, rpm</source>
        <translation>Höchste Drehzahl, 1/min</translation>
    </message>
    <message>
        <source>rpm, number:</source>
        <translation>1/min, Anzahl:</translation>
    </message>
    <message>
        <source>Number of speeds</source>
        <translation>Anzahl der Drehzahlen</translation>
    </message>
    <message>
        <source>with &amp;knock integral up to</source>
        <translation>mit &amp;Klopfintegral bis</translation>
    </message>
    <message>
        <source>Largest knock integral; empty: no limit</source>
        <translation>Größtes Klopfintegral; leer: keine Grenze</translation>
    </message>
    <message>
        <source>and peak pressure up to</source>
        <translation>und Höchstdruck bis</translation>
    </message>
    <message>
        <source>Largest peak pressure; empty: no limit</source>
        <translation>Größter Höchstdruck; leer: keine Grenze</translation>
    </message>
    <message>
        <source>Torque with the fixed value and with the schedule</source>
        <translation>Drehmoment mit dem festen Wert und mit der Kennlinie</translation>
    </message>
    <message>
        <source>fixed value</source>
        <translation>fester Wert</translation>
    </message>
    <message>
        <source>schedule</source>
        <translation>Kennlinie</translation>
    </message>
    <message>
        <source>shaft speed, rpm</source>
        <translation>Wellendrehzahl, 1/min</translation>
    </message>
    <message>
        <source>Fixed value and schedule at each speed</source>
        <translation>Fester Wert und Kennlinie bei jeder Drehzahl</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>Torque, fixed</source>
        <translation>Drehmoment, fest</translation>
    </message>
    <message>
        <source>Torque, schedule</source>
        <translation>Drehmoment, Kennlinie</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Ranges and limits must be numbers.</source>
        <translation>Bereiche und Grenzen müssen Zahlen sein.</translation>
    </message>
    <message>
        <source>The lowest speed must be below the highest.</source>
        <translation>Die niedrigste Drehzahl muss unter der höchsten liegen.</translation>
    </message>
    <message>
        <source>Searching…</source>
        <translation>Suche läuft…</translation>
    </message>
    <message>
        <source>The engine runs at none of these speeds: %1</source>
        <translation>Der Motor läuft bei keiner dieser Drehzahlen: %1</translation>
    </message>
    <message>
        <source>does not run</source>
        <translation>läuft nicht</translation>
    </message>
    <message>
        <source>fixed value exceeds one</source>
        <translation>fester Wert überschreitet eine</translation>
    </message>
    <message>
        <source>no value keeps them</source>
        <translation>kein Wert hält sie ein</translation>
    </message>
    <message>
        <source>%1 rpm</source>
        <translation>%1/min</translation>
    </message>
    <message>
        <source>brake torque</source>
        <translation>effektives Drehmoment</translation>
    </message>
    <message>
        <source>The input has no number to begin with.</source>
        <translation>Die Eingabe hat keine Zahl, mit der sich beginnen lässt.</translation>
    </message>
    <message>
        <source>Schedule of %1</source>
        <translation>Kennlinie: %1</translation>
    </message>
    <message>
        <source>Search for the value with the highest torque at each speed</source>
        <translation>Den Wert mit dem höchsten Drehmoment bei jeder Drehzahl suchen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::ScheduleStrip</name>
    <message>
        <source>Add a point to the schedule (Insert)</source>
        <translation>Der Kennlinie einen Punkt hinzufügen (Einfg)</translation>
    </message>
    <message>
        <source>Remove the chosen point (Delete)</source>
        <translation>Den gewählten Punkt entfernen (Entf)</translation>
    </message>
    <message>
        <source>Find the best…</source>
        <translation>Besten Wert suchen…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove this schedule: the input keeps its fixed value</source>
        <translation>Diese Kennlinie entfernen: Die Eingabe behält ihren festen Wert</translation>
    </message>
    <message>
        <source>Input that follows the speed</source>
        <translation>Eingabe, die der Drehzahl folgt</translation>
    </message>
    <message>
        <source>Inputs that follow the shaft speed; the dashed line is the fixed value without the schedule</source>
        <translation>Eingaben, die der Wellendrehzahl folgen; die gestrichelte Linie ist der feste Wert ohne Kennlinie</translation>
    </message>
    <message>
        <source>Remove the schedule of %1</source>
        <translation>Kennlinie entfernen: %1</translation>
    </message>
    <message>
        <source>Remove a schedule</source>
        <translation>Eine Kennlinie entfernen</translation>
    </message>
    <message>
        <source>Search for the value with the highest torque at each speed, within limits</source>
        <translation>Den Wert mit dem höchsten Drehmoment bei jeder Drehzahl suchen, innerhalb von Grenzen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::Scrubber</name>
    <message>
        <source>Shaft angle</source>
        <translation>Wellenwinkel</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::SearchLine</name>
    <message>
        <source>Progress of the search</source>
        <translation>Fortschritt der Suche</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>An&amp;halten</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::SectionView</name>
    <message>
        <source>Section through one cylinder</source>
        <translation>Schnitt durch einen Zylinder</translation>
    </message>
    <message>
        <source>Drag to turn the shaft. Drag the ends of a port to move or resize its row.</source>
        <translation>Ziehen dreht die Welle. Die Enden eines Schlitzes ziehen, um seine Reihe zu verschieben oder zu ändern.</translation>
    </message>
    <message>
        <source> (solving)</source>
        <translation> (rechnet)</translation>
    </message>
    <message>
        <source>gas not solved</source>
        <translation>Gas nicht gelöst</translation>
    </message>
    <message>
        <source>Shaft %1, cycle %2</source>
        <translation>Welle %1, Arbeitsspiel %2</translation>
    </message>
    <message>
        <source>Cylinder %1 of %2, gap %3</source>
        <translation>Zyl. %1/%2, Abstand %3</translation>
    </message>
    <message>
        <source>, piston length assumed</source>
        <translation>, Kolbenlänge angenommen</translation>
    </message>
    <message>
        <source>Inlet port row %1, inner edge</source>
        <translation>Einlassreihe %1, Innenkante</translation>
    </message>
    <message>
        <source>Exhaust port row %1, inner edge</source>
        <translation>Auslassreihe %1, Innenkante</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>Move inlet port edge</source>
        <translation>Kante der Einlassschlitze verschieben</translation>
    </message>
    <message>
        <source>Move exhaust port edge</source>
        <translation>Kante der Auslassschlitze verschieben</translation>
    </message>
    <message>
        <source>Inlet port row %1, height</source>
        <translation>Einlassreihe %1, Höhe</translation>
    </message>
    <message>
        <source>Exhaust port row %1, height</source>
        <translation>Auslassreihe %1, Höhe</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Change inlet port height</source>
        <translation>Höhe der Einlassschlitze ändern</translation>
    </message>
    <message>
        <source>Change exhaust port height</source>
        <translation>Höhe der Auslassschlitze ändern</translation>
    </message>
    <message>
        <source>Section through a cylinder</source>
        <translation>Schnitt durch einen Zylinder</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::SidePanel</name>
    <message>
        <source>Inputs</source>
        <translation>Eingaben</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Snapshots</source>
        <translation>Varianten</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Limits (%1)</source>
        <translation>Grenzen (%1)</translation>
    </message>
    <message>
        <source>&amp;Take a snapshot</source>
        <translation>Variante auf&amp;nehmen</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>Keep the present design in the file under a name</source>
        <translation>Den jetzigen Entwurf unter einem Namen in der Datei behalten</translation>
    </message>
    <message>
        <source>&amp;Find an input</source>
        <translation>Eingabe &amp;suchen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::SnapshotCommands</name>
    <message>
        <source>Take snapshot “%1”</source>
        <translation>Variante „%1“ aufnehmen</translation>
    </message>
    <message>
        <source>Rename snapshot “%1”</source>
        <translation>Variante „%1“ umbenennen</translation>
    </message>
    <message>
        <source>Delete snapshot “%1”</source>
        <translation>Variante „%1“ löschen</translation>
    </message>
    <message>
        <source>Restore snapshot “%1”</source>
        <translation>Variante „%1“ zurückholen</translation>
    </message>
    <message>
        <source>“%1” is the present design again</source>
        <translation>„%1“ ist wieder der jetzige Entwurf</translation>
    </message>
    <message>
        <source>“%1” is shown behind every plot as the baseline</source>
        <translation>„%1“ steht als Bezug hinter jedem Diagramm</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::SnapshotsPanel</name>
    <message>
        <source>Name of a new snapshot</source>
        <translation>Name einer neuen Variante</translation>
    </message>
    <message>
        <source>The present design is kept in the file under this name</source>
        <translation>Der jetzige Entwurf bleibt unter diesem Namen in der Datei</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>Keep the present design under this name</source>
        <translation>Den jetzigen Entwurf unter diesem Namen behalten</translation>
    </message>
    <message>
        <source>Snapshot</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Aufgenommen</translation>
    </message>
    <message>
        <source>Snapshots</source>
        <translation>Varianten</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Make it the baseline, behind every plot and result</source>
        <translation>Zum Bezugsentwurf hinter jedem Diagramm und Ergebnis machen</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Make it the present design again; can be undone</source>
        <translation>Wieder zum jetzigen Entwurf machen; kann rückgängig gemacht werden</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>Give it another name</source>
        <translation>Einen anderen Namen geben</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Remove it from the file; can be undone</source>
        <translation>Aus der Datei nehmen; kann rückgängig gemacht werden</translation>
    </message>
    <message>
        <source>as now</source>
        <translation>wie jetzt</translation>
    </message>
    <message>
        <source>%1, taken %2%3</source>
        <translation>%1, aufgenommen %2%3</translation>
    </message>
    <message>
        <source>; equal to the present design</source>
        <translation>; gleich dem jetzigen Entwurf</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>; shown behind every plot as baseline</source>
        <translation>; steht als Bezug hinter jedem Diagramm</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::SolvingState</name>
    <message>
        <source>Not solved: results are of the earlier input</source>
        <translation>Nicht lösbar: Ergebnisse der früheren Eingabe</translation>
    </message>
    <message>
        <source>Progress of solving</source>
        <translation>Fortschritt der Berechnung</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stop solving; the results stay those of the earlier input</source>
        <translation>Berechnung anhalten; die Ergebnisse bleiben die der früheren Eingabe</translation>
    </message>
    <message>
        <source>Solving: results are of the earlier input</source>
        <translation>Es wird gerechnet: Ergebnisse der früheren Eingabe</translation>
    </message>
    <message>
        <source>Solving</source>
        <translation>Rechnet</translation>
    </message>
    <message>
        <source>Results of the earlier input; solving</source>
        <translation>Ergebnisse der früheren Eingabe; es wird gerechnet</translation>
    </message>
    <message>
        <source>Stopped: results are of the earlier input</source>
        <translation>Angehalten: Ergebnisse der früheren Eingabe</translation>
    </message>
    <message>
        <source>Solve</source>
        <translation>Berechnen</translation>
    </message>
    <message>
        <source>Solve the present input after all</source>
        <translation>Die jetzige Eingabe doch berechnen</translation>
    </message>
    <message>
        <source>Solved in %1 ms</source>
        <translation>Gelöst in %1 ms</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::SpaceView</name>
    <message>
        <source>3D view of the engine</source>
        <translation>3D-Ansicht des Motors</translation>
    </message>
    <message>
        <source>Drag to rotate the view, turn the wheel to zoom.</source>
        <translation>Ziehen dreht die Ansicht, das Rad vergrößert.</translation>
    </message>
    <message>
        <source>This needs OpenGL, which this machine does not offer.</source>
        <translation>Dies braucht OpenGL, das dieser Rechner nicht bietet.</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Ganz</translation>
    </message>
    <message>
        <source>The whole engine, as at first (Home)</source>
        <translation>Der ganze Motor wie am Anfang (Pos1)</translation>
    </message>
    <message>
        <source>Along the shaft</source>
        <translation>Längs der Welle</translation>
    </message>
    <message>
        <source>Seen along the shaft: how the cylinders stand round it</source>
        <translation>Längs der Welle gesehen: wie die Zylinder um sie stehen</translation>
    </message>
    <message>
        <source>From the side</source>
        <translation>Von der Seite</translation>
    </message>
    <message>
        <source>Seen across the shaft: pistons between the two tracks</source>
        <translation>Quer zur Welle gesehen: Kolben zwischen den beiden Bahnen</translation>
    </message>
    <message>
        <source>On a roller</source>
        <translation>An einer Rolle</translation>
    </message>
    <message>
        <source>Exploded</source>
        <translation>Zerlegt</translation>
    </message>
    <message>
        <source>Tracks, pistons and rollers drawn apart along the shaft</source>
        <translation>Bahnen, Kolben und Rollen längs der Welle auseinandergezogen</translation>
    </message>
    <message>
        <source>Close to a roller of cylinder 1 on its track</source>
        <translation>Nah an einer Rolle von Zylinder 1 auf ihrer Bahn</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::StageStrip</name>
    <message>
        <source>Stages of the cycle</source>
        <translation>Abschnitte des Arbeitsspiels</translation>
    </message>
    <message>
        <source>No design to draw yet</source>
        <translation>Noch kein Entwurf zu zeichnen</translation>
    </message>
    <message>
        <source>%1. Click to turn the shaft there.</source>
        <translation>%1. Klicken dreht die Welle dorthin.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::StatusLine</name>
    <message>
        <source>Show the list of limits</source>
        <translation>Liste der Grenzen zeigen</translation>
    </message>
    <message>
        <source>Baseline: %1</source>
        <translation>Bezugsentwurf: %1</translation>
    </message>
    <message>
        <source>“%1” is shown behind every plot and result</source>
        <translation>„%1“ steht hinter jedem Diagramm und Ergebnis</translation>
    </message>
    <message>
        <source>Estimates only</source>
        <translation>Nur Schätzwerte</translation>
    </message>
    <message>
        <source>Estimates only: read the cautions</source>
        <translation>Nur Schätzungen: zu den Warnhinweisen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::StressPlot</name>
    <message>
        <source>Contact stress</source>
        <translation>Kontaktpressung</translation>
    </message>
    <message>
        <source>nominal contact stress</source>
        <translation>nominelle Kontaktpressung</translation>
    </message>
    <message>
        <source>Largest contact stress by Hertz&apos;s formulas on the contact line of cylinder 1, load spread evenly over the width: nominal, for comparing designs, never to release one for manufacture.</source>
        <translation>Größte Kontaktpressung nach den Formeln von Hertz auf der Berührlinie von Zylinder 1, Last gleichmäßig über die Breite: nominell, zum Vergleichen von Entwürfen, nie zur Freigabe für die Fertigung.</translation>
    </message>
    <message>
        <source>Force, inlet</source>
        <translation>Kraft, Einlass</translation>
    </message>
    <message>
        <source>Force, exhaust</source>
        <translation>Kraft, Auslass</translation>
    </message>
    <message>
        <source>Contact force N between roller and track.</source>
        <translation>Kontaktkraft N zwischen Rolle und Bahn.</translation>
    </message>
    <message>
        <source>inlet roller lifts off</source>
        <translation>Einlassrolle hebt ab</translation>
    </message>
    <message>
        <source>exhaust roller lifts off</source>
        <translation>Auslassrolle hebt ab</translation>
    </message>
    <message>
        <source>allowable %1</source>
        <translation>zulässig %1</translation>
    </message>
    <message>
        <source>contact force</source>
        <translation>Kontaktkraft</translation>
    </message>
    <message>
        <source>Contact &amp;forces</source>
        <translation>Kontakt&amp;kräfte</translation>
    </message>
    <message>
        <source>Contact force</source>
        <translation>Kontaktkraft</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::StudentWalk</name>
    <message>
        <source>Walk through one cycle</source>
        <translation>Gang durch ein Arbeitsspiel</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>To the step before (Page Up)</source>
        <translation>Zum vorigen Schritt (Bild auf)</translation>
    </message>
    <message>
        <source>Turn the shaft to the next event and tell what happens there (Page Down)</source>
        <translation>Welle zum nächsten Ereignis drehen und sagen, was dort geschieht (Bild ab)</translation>
    </message>
    <message>
        <source>One cycle, step by step</source>
        <translation>Ein Arbeitsspiel, Schritt für Schritt</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>&amp;From the start</source>
        <translation>Von &amp;vorn</translation>
    </message>
    <message>
        <source>%1 of %2, the shaft has been moved on by %3</source>
        <translation>%1 von %2, die Welle ist um %3 weitergedreht</translation>
    </message>
    <message>
        <source>&amp;Back to it</source>
        <translation>&amp;Zurück dorthin</translation>
    </message>
    <message>
        <source>Next turns the shaft to the first event of a cycle and tells what happens there and why.</source>
        <translation>„Weiter“ dreht die Welle zum ersten Ereignis eines Arbeitsspiels und sagt, was dort geschieht und warum.</translation>
    </message>
    <message>
        <source>&amp;Tasks</source>
        <translation>&amp;Aufgaben</translation>
    </message>
    <message>
        <source>Short tasks on this engine, with hints and answers</source>
        <translation>Kurze Aufgaben an diesem Motor, mit Hinweisen und Antworten</translation>
    </message>
    <message>
        <source>Show the answer</source>
        <translation>Antwort zeigen</translation>
    </message>
    <message>
        <source>Think first: then read the answer</source>
        <translation>Erst nachdenken, dann die Antwort lesen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::StudyPane</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stop this study; finished points stay</source>
        <translation>Diese Studie anhalten; die Punkte, die schon da sind, bleiben</translation>
    </message>
    <message>
        <source>solving … %1 of %2 points</source>
        <translation>rechnet … %1 von %2</translation>
    </message>
    <message>
        <source>stopped: some points are missing or of an earlier design</source>
        <translation>angehalten: einige Punkte fehlen oder gehören zu einem früheren Entwurf</translation>
    </message>
    <message>
        <source>not solved: %1 of %2 points</source>
        <translation>nicht gelöst: %1 von %2 Punkten</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::StudyPlot</name>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>at</source>
        <translation>bei</translation>
    </message>
    <message>
        <source>&amp;Results</source>
        <translation>&amp;Ergebnisse</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Range &amp;follows the design</source>
        <translation>Bereich &amp;folgt dem Entwurf</translation>
    </message>
    <message>
        <source>, minimum %1 at %2</source>
        <translation>, kleinster Wert %1 bei %2</translation>
    </message>
    <message>
        <source>, maximum %1 at %2</source>
        <translation>, größter Wert %1 bei %2</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>%1, baseline</source>
        <translation>%1, Bezug</translation>
    </message>
    <message>
        <source>now at</source>
        <translation>jetzt bei</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>baseline beyond the range</source>
        <translation>Bezugsentwurf außerhalb der Skala</translation>
    </message>
    <message>
        <source>bands</source>
        <translation>Bänder</translation>
    </message>
    <message>
        <source>hatched:</source>
        <translation>schraffiert:</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::SupplyStrip</name>
    <message>
        <source>Ambient</source>
        <translation>Umgebung</translation>
    </message>
    <message>
        <source>Behind the blower</source>
        <translation>Hinter dem Gebläse</translation>
    </message>
    <message>
        <source>Behind the compressor</source>
        <translation>Hinter dem Verdichter</translation>
    </message>
    <message>
        <source>blower</source>
        <translation>Gebläse</translation>
    </message>
    <message>
        <source>compressor</source>
        <translation>Verdichter</translation>
    </message>
    <message>
        <source>× %1
%2</source>
        <translation>× %1
%2</translation>
    </message>
    <message>
        <source>Cooled</source>
        <translation>Gekühlt</translation>
    </message>
    <message>
        <source>after-cooler</source>
        <translation>Ladeluftkühler</translation>
    </message>
    <message>
        <source>−%1 %2</source>
        <translation>−%1 %2</translation>
    </message>
    <message>
        <source>Plenum</source>
        <translation>Sammler</translation>
    </message>
    <message>
        <source>Reservoir</source>
        <translation>Speicher</translation>
    </message>
    <message>
        <source>Chamber, ports closed</source>
        <translation>Brennraum, Schlitze zu</translation>
    </message>
    <message>
        <source>ports</source>
        <translation>Schlitze</translation>
    </message>
    <message>
        <source>No compression: the supply pressure is at or below ambient, so it needs no power.</source>
        <translation>Keine Verdichtung: Der Ladedruck liegt bei oder unter dem Umgebungsdruck, kostet also keine Leistung.</translation>
    </message>
    <message>
        <source>Supply power not counted: %1 are left out of every brake value.</source>
        <translation>Leistung der Luftversorgung nicht eingerechnet: %1 sind in keinem effektiven Wert abgezogen.</translation>
    </message>
    <message>
        <source>The shaft pays %1, %2 of mean effective pressure; brake values deduct it.</source>
        <translation>Die Welle bringt %1 auf, das sind %2 Mitteldruck; in den effektiven Werten ist das abgezogen.</translation>
    </message>
    <message>
        <source>Air path</source>
        <translation>Luftweg</translation>
    </message>
    <message>
        <source>The gas cycle could not be solved.</source>
        <translation>Der Kreisprozess konnte nicht gelöst werden.</translation>
    </message>
    <message>
        <source>was %1</source>
        <translation>war %1</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht eingerechnet</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>reached by</source>
        <translation>erreicht durch</translation>
    </message>
    <message>
        <source>effect</source>
        <translation>Wirkung</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>Under the piston, mean</source>
        <translation>Unter dem Kolben, Mittel</translation>
    </message>
    <message>
        <source>reed</source>
        <translation>Zunge</translation>
    </message>
    <message>
        <source>%1 to %2
%3</source>
        <translation>%1 bis %2
%3</translation>
    </message>
    <message>
        <source>The pistons pump: their backs take %1, %2 of mean effective pressure; brake values deduct it. No pipes modelled: a tuned exhaust can breathe better, or worse.</source>
        <translation>Die Kolben pumpen: Ihre Rückseiten nehmen %1 auf, das sind %2 Mitteldruck; in den effektiven Werten ist das abgezogen. Rohrleitungen sind nicht abgebildet: Ein abgestimmter Auspuff kann die Füllung verbessern oder verschlechtern.</translation>
    </message>
    <message>
        <source>× %1
%2
%3</source>
        <translation>× %1
%2
%3</translation>
    </message>
    <message>
        <source>the exhaust pays</source>
        <translation>vom Abgas aufgebracht</translation>
    </message>
    <message>
        <source>the shaft pays</source>
        <translation>von der Welle aufgebracht</translation>
    </message>
    <message>
        <source>Exhaust plenum</source>
        <translation>Abgassammler</translation>
    </message>
    <message>
        <source>exhaust ports</source>
        <translation>Auslassschlitze</translation>
    </message>
    <message>
        <source>Behind the turbine</source>
        <translation>Hinter der Turbine</translation>
    </message>
    <message>
        <source>turbine</source>
        <translation>Turbine</translation>
    </message>
    <message>
        <source>÷ %1
%2</source>
        <translation>÷ %1
%2</translation>
    </message>
    <message>
        <source>No pipes modelled: a tuned exhaust can breathe better, or worse.</source>
        <translation>Rohrleitungen sind nicht abgebildet: Ein abgestimmter Auspuff kann die Füllung verbessern oder verschlechtern.</translation>
    </message>
    <message>
        <source>The exhaust pays %1 for the compressor and %2 for its bearings.</source>
        <translation>Das Abgas bringt %1 für den Verdichter und %2 für seine Lager auf.</translation>
    </message>
    <message>
        <source>The turbocharger does not sustain itself at this speed: its wheel idles.</source>
        <translation>Der Abgasturbolader trägt sich bei dieser Drehzahl nicht selbst: Sein Rad läuft leer.</translation>
    </message>
    <message>
        <source>The shaft pays %1 for the blower, %2 of mean effective pressure; brake values deduct it.</source>
        <translation>Die Welle bringt %1 für das Gebläse auf, das sind %2 Mitteldruck; in den effektiven Werten ist das abgezogen.</translation>
    </message>
    <message>
        <source>Cooled between stages</source>
        <translation>Zwischen den Stufen gekühlt</translation>
    </message>
    <message>
        <source>intercooler</source>
        <translation>Zwischenkühler</translation>
    </message>
    <message>
        <source>Transfer volume, mean</source>
        <translation>Überströmvolumen, Mittel</translation>
    </message>
    <message>
        <source>skirt ports</source>
        <translation>Schlitze unter dem Schaft</translation>
    </message>
    <message>
        <source>Import measured &amp;compressor points…</source>
        <translation>Gemessene &amp;Verdichterpunkte einlesen…</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::TableFile</name>
    <message>
        <source>File of the table</source>
        <translation>Datei der Tabelle</translation>
    </message>
    <message>
        <source>none opened yet</source>
        <translation>noch keine geöffnet</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt);;All files (*)</source>
        <translation>Tabellen (*.csv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 cannot be read as a table.</source>
        <translation>%1 lässt sich nicht als Tabelle lesen.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::TaskView</name>
    <message>
        <source>Tasks</source>
        <translation>Aufgaben</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>Every task of this engine; a tick says that it is solved</source>
        <translation>Alle Aufgaben dieses Motors; ein Haken sagt, dass sie gelöst ist</translation>
    </message>
    <message>
        <source>Lab &amp;sheet…</source>
        <translation>&amp;Laborblatt…</translation>
    </message>
    <message>
        <source>Save the tasks, your answers and what came out as a PDF</source>
        <translation>Aufgaben, Ihre Antworten und das Ergebnis als PDF speichern</translation>
    </message>
    <message>
        <source>Ne&amp;xt task</source>
        <translation>Nä&amp;chste Aufgabe</translation>
    </message>
    <message>
        <source>To the next task that is not solved</source>
        <translation>Zur nächsten Aufgabe, die nicht gelöst ist</translation>
    </message>
    <message>
        <source>&amp;Hint</source>
        <translation>&amp;Hinweis</translation>
    </message>
    <message>
        <source>Your guess</source>
        <translation>Ihre Vermutung</translation>
    </message>
    <message>
        <source>What you expect, before the program says it</source>
        <translation>Was Sie erwarten, bevor das Programm es sagt</translation>
    </message>
    <message>
        <source>A hint, and then another one</source>
        <translation>Ein Hinweis, und danach noch einer</translation>
    </message>
    <message>
        <source>Tasks appear here once an engine is solved.</source>
        <translation>Aufgaben erscheinen hier, sobald ein Motor gelöst ist.</translation>
    </message>
    <message>
        <source>Enter what you expect and lock it; then the program answers.</source>
        <translation>Geben Sie ein, was Sie erwarten, und legen Sie es fest; dann antwortet das Programm.</translation>
    </message>
    <message>
        <source>&amp;Lock</source>
        <translation>&amp;Festlegen</translation>
    </message>
    <message>
        <source>Lock the guess and see what comes out</source>
        <translation>Die Vermutung festlegen und sehen, was herauskommt</translation>
    </message>
    <message>
        <source>Turn the shaft: drag a drawing, use the bar below or the arrow keys.</source>
        <translation>Drehen Sie die Welle: Ziehen Sie an einer Zeichnung oder benutzen Sie die Leiste unten oder die Pfeiltasten.</translation>
    </message>
    <message>
        <source>&amp;Here</source>
        <translation>&amp;Hier</translation>
    </message>
    <message>
        <source>Say that the shaft stands at the place that is asked for</source>
        <translation>Sagen, dass die Welle an der gesuchten Stelle steht</translation>
    </message>
    <message>
        <source>&amp;Check</source>
        <translation>&amp;Prüfen</translation>
    </message>
    <message>
        <source>Look at the design as it is now</source>
        <translation>Den Entwurf ansehen, wie er jetzt ist</translation>
    </message>
    <message>
        <source>Solving…</source>
        <translation>Wird gerechnet…</translation>
    </message>
    <message>
        <source>shaft at %1</source>
        <translation>Welle bei %1</translation>
    </message>
    <message>
        <source>design changed</source>
        <translation>Entwurf geändert</translation>
    </message>
    <message>
        <source>✓ Right. %1</source>
        <translation>✓ Richtig. %1</translation>
    </message>
    <message>
        <source>✗ Not quite. %1</source>
        <translation>✗ Noch nicht. %1</translation>
    </message>
    <message>
        <source>%1 of %2 solved</source>
        <translation>%1 von %2 gelöst</translation>
    </message>
    <message>
        <source>Lab sheet</source>
        <translation>Laborblatt</translation>
    </message>
    <message>
        <source>Engine: %1. Date: %2. Name: ____________________</source>
        <translation>Motor: %1. Datum: %2. Name: ____________________</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>What came out</source>
        <translation>Was herauskam</translation>
    </message>
    <message>
        <source>Save the lab sheet</source>
        <translation>Laborblatt speichern</translation>
    </message>
    <message>
        <source>lab-sheet.pdf</source>
        <translation>laborblatt.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The file cannot be written.</source>
        <translation>Die Datei lässt sich nicht schreiben.</translation>
    </message>
    <message>
        <source>Save the lab sheet…</source>
        <translation>Laborblatt speichern…</translation>
    </message>
    <message>
        <source>Begin all tasks anew</source>
        <translation>Alle Aufgaben neu beginnen</translation>
    </message>
    <message>
        <source>Change inputs, or drag handles; Ctrl+Z takes a change back.</source>
        <translation>Ändern Sie Eingaben oder ziehen Sie an Griffen; Strg+Z nimmt es zurück.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::TimingCircle</name>
    <message>
        <source>Circular timing diagram</source>
        <translation>Steuerdiagramm</translation>
    </message>
    <message>
        <source>%1° shaft</source>
        <translation>%1° Welle</translation>
    </message>
    <message>
        <source>%1 %2°
%3° shaft</source>
        <translation>%1 %2°
%3° Welle</translation>
    </message>
    <message>
        <source>blowdown</source>
        <translation>Vorauslass</translation>
    </message>
    <message>
        <source>overlap</source>
        <translation>Überschneidung</translation>
    </message>
    <message>
        <source>after-charge</source>
        <translation>Nachladung</translation>
    </message>
    <message>
        <source>One gas cycle, clockwise from inner dead centre. Events in cycle degrees from inner dead centre, shaft degrees below them; spans in the middle with shaft degrees in brackets. Point at the letters of an event to have them spelt out. Drag to turn the shaft.</source>
        <translation>Ein Arbeitsspiel, im Uhrzeigersinn ab dem inneren Totpunkt. Ereignisse in Grad des Arbeitsspiels ab dem inneren Totpunkt, darunter Wellengrad; in der Mitte die Dauern mit Wellengrad in Klammern. Zeigen Sie auf die Buchstaben eines Ereignisses, dann werden sie ausgeschrieben. Ziehen dreht die Welle.</translation>
    </message>
    <message>
        <source>%1: %2, at %3° of the cycle from inner dead centre, %4° of the shaft</source>
        <translation>%1: %2, bei %3° des Arbeitsspiels ab innerem Totpunkt, %4° der Welle</translation>
    </message>
    <message>
        <source>event</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>shaft angle, °</source>
        <translation>Wellenwinkel, °</translation>
    </message>
    <message>
        <source>cycle angle, °</source>
        <translation>Winkel im Arbeitsspiel, °</translation>
    </message>
    <message>
        <source>shaft angle, °, baseline</source>
        <translation>Wellenwinkel, °, Bezug</translation>
    </message>
    <message>
        <source>cycle angle, °, baseline</source>
        <translation>Winkel im Arbeitsspiel, °, Bezug</translation>
    </message>
    <message>
        <source>%1° (%2°)</source>
        <translation>%1° (%2°)</translation>
    </message>
    <message>
        <source>baseline %1</source>
        <translation>Bezug %1</translation>
    </message>
    <message>
        <source>intake</source>
        <translation>Ansaugen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::TolerancesForm</name>
    <message>
        <source>Warm engine</source>
        <translation>Warmer Motor</translation>
    </message>
    <message>
        <source>Lift of a lobe ±</source>
        <translation>Weg eines Nockens ±</translation>
    </message>
    <message>
        <source>How far the lift of a lobe may be off</source>
        <translation>Wie weit der Weg eines Nockens abweichen kann</translation>
    </message>
    <message>
        <source>Port edges ±</source>
        <translation>Schlitzkanten ±</translation>
    </message>
    <message>
        <source>How far the edge of a port may be off</source>
        <translation>Wie weit eine Schlitzkante abweichen kann</translation>
    </message>
    <message>
        <source>Clearance ±</source>
        <translation>Bodenabstand ±</translation>
    </message>
    <message>
        <source>How far the cold crown clearance may be off</source>
        <translation>Wie weit der kalte Bodenabstand abweichen kann</translation>
    </message>
    <message>
        <source>Block, shaft and pistons have grown from 293 K, by ΔL = L·α·ΔT: the bands are those of the warm engine</source>
        <translation>Block, Welle und Kolben sind seit 293 K um ΔL = L·α·ΔT gewachsen: die Bänder sind die des warmen Motors</translation>
    </message>
    <message>
        <source>Distance of the tracks</source>
        <translation>Abstand der Kurvenbahnen</translation>
    </message>
    <message>
        <source>Between the two track planes; the shaft between them grows</source>
        <translation>Zwischen den beiden Bahnebenen; die Welle dazwischen wächst</translation>
    </message>
    <message>
        <source>Piston, roller to crown</source>
        <translation>Kolben, Rolle bis Boden</translation>
    </message>
    <message>
        <source>From the axis of the roller to the crown</source>
        <translation>Von der Rollenachse bis zum Kolbenboden</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Temperature of the block, aluminium</source>
        <translation>Temperatur des Blocks, Aluminium</translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>Temperature of the shaft, steel</source>
        <translation>Temperatur der Welle, Stahl</translation>
    </message>
    <message>
        <source>Pistons</source>
        <translation>Kolben</translation>
    </message>
    <message>
        <source>Mean temperature of the pistons, aluminium</source>
        <translation>Mittlere Temperatur der Kolben, Aluminium</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::TorqueCurve</name>
    <message>
        <source>Torque against speed</source>
        <translation>Drehmoment über der Drehzahl</translation>
    </message>
    <message>
        <source>shaft speed, rpm</source>
        <translation>Wellendrehzahl, 1/min</translation>
    </message>
    <message>
        <source>Let an input &amp;follow the speed…</source>
        <translation>Eine Eingabe der Drehzahl &amp;folgen lassen…</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::TorquePlot</name>
    <message>
        <source>Torque over one revolution</source>
        <translation>Drehmoment über eine Umdrehung</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Torque T of one piston of cylinder 1 on the shaft.</source>
        <translation>Drehmoment T eines Kolbens von Zylinder 1 auf die Welle.</translation>
    </message>
    <message>
        <source>Cylinder 1</source>
        <translation>Zylinder 1</translation>
    </message>
    <message>
        <source>Both pistons of cylinder 1.</source>
        <translation>Beide Kolben von Zylinder 1.</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>All cylinders at their angles, friction included.</source>
        <translation>Alle Zylinder mit ihren Winkeln auf dem Kreis, Reibung enthalten.</translation>
    </message>
    <message>
        <source>−dy/dθ: the track&apos;s equivalent of a crank throw; what turns force into torque.</source>
        <translation>−dy/dθ: das Gegenstück der Bahn zum Kurbelradius; macht aus Kraft Drehmoment.</translation>
    </message>
    <message>
        <source>Lever arm, inlet</source>
        <translation>Hebelarm, Einlass</translation>
    </message>
    <message>
        <source>Lever arm, exhaust</source>
        <translation>Hebelarm, Auslass</translation>
    </message>
    <message>
        <source>mean %1 %3, peak to peak %2 %3</source>
        <translation>Mittel %1 %3, Spitze-Spitze %2 %3</translation>
    </message>
    <message>
        <source>, ripple %1</source>
        <translation>, Welligkeit %1</translation>
    </message>
    <message>
        <source>lever arm</source>
        <translation>Hebelarm</translation>
    </message>
    <message>
        <source>Each &amp;piston of cylinder 1</source>
        <translation>Jeder &amp;Kolben von Zylinder 1</translation>
    </message>
    <message>
        <source>Each &amp;cylinder</source>
        <translation>Jeder &amp;Zylinder</translation>
    </message>
    <message>
        <source>&amp;Lever arm of the tracks</source>
        <translation>&amp;Hebelarm der Bahnen</translation>
    </message>
    <message>
        <source>torque of cylinder %1</source>
        <translation>Drehmoment von Zylinder %1</translation>
    </message>
    <message>
        <source>mean %1 (at the shaft %4), peak to peak %2 %3</source>
        <translation>Mittel %1 (Welle %4), Spitze-Spitze %2 %3</translation>
    </message>
    <message>
        <source>mean %1 %3 (a roller has lifted), peak to peak %2 %3</source>
        <translation>Mittel %1 %3 (eine Rolle hat abgehoben), Spitze-Spitze %2 %3</translation>
    </message>
    <message>
        <source>Lever arm</source>
        <translation>Hebelarm</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::TrackShapeChoice</name>
    <message>
        <source>Described by</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Segments</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>Knots</source>
        <translation>Stützpunkte</translation>
    </message>
    <message>
        <source>Harmonics</source>
        <translation>Harmonische</translation>
    </message>
    <message>
        <source>Inlet track described by</source>
        <translation>Einlassbahn beschrieben durch</translation>
    </message>
    <message>
        <source>Exhaust track described by</source>
        <translation>Auslassbahn beschrieben durch</translation>
    </message>
    <message>
        <source>Segments with motion laws, knots to pull by hand, or a sum of waves. The lift is carried over as nearly as it can be.</source>
        <translation>Abschnitte mit Bewegungsgesetzen, Stützpunkte zum Ziehen oder eine Summe von Wellen. Der Weg wird so genau wie möglich übernommen.</translation>
    </message>
    <message>
        <source>To knots…</source>
        <translation>Umwandeln…</translation>
    </message>
    <message>
        <source>Turn this track into knots by a tolerance or by number, and see how far lift, velocity and acceleration stray (Ctrl+K)</source>
        <translation>Diese Bahn nach Toleranz oder Anzahl in Stützpunkte umwandeln und sehen, wie weit Weg, Geschwindigkeit und Beschleunigung abweichen (Strg+K)</translation>
    </message>
    <message>
        <source>Turn the inlet track into knots</source>
        <translation>Einlassbahn in Stützpunkte umwandeln</translation>
    </message>
    <message>
        <source>Turn the exhaust track into knots</source>
        <translation>Auslassbahn in Stützpunkte umwandeln</translation>
    </message>
    <message>
        <source>Plots show lift = knot − %1: the lowest place of the curve counts as lift 0.</source>
        <translation>Die Kurven zeigen Weg = Stützpunkt − %1: Die tiefste Stelle der Kurve zählt als Weg 0.</translation>
    </message>
    <message>
        <source>Plots show lift = knot + %1: the lowest place of the curve counts as lift 0.</source>
        <translation>Die Kurven zeigen Weg = Stützpunkt + %1: Die tiefste Stelle der Kurve zählt als Weg 0.</translation>
    </message>
    <message>
        <source>Track described by</source>
        <translation>Bahn beschrieben durch</translation>
    </message>
    <message>
        <source>Turn the track into knots</source>
        <translation>Bahn in Stützpunkte umwandeln</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::TurnCanvas</name>
    <message>
        <source>shaft °</source>
        <translation>° Welle</translation>
    </message>
    <message>
        <source>cycle °</source>
        <translation>° ASP</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::TurnPlot</name>
    <message>
        <source>Zoom &amp;in</source>
        <translation>&amp;Vergrößern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>Show the &amp;whole turn</source>
        <translation>&amp;Ganze Umdrehung zeigen</translation>
    </message>
    <message>
        <source>flank changes per revolution</source>
        <translation>Flankenwechsel je Umdrehung</translation>
    </message>
    <message>
        <source>Wedges on the lower edge: where the load of cylinder 1 leaves the push flank of the closed track (down) or comes back to it (up); the roller rattles and its spin reverses</source>
        <translation>Keile am unteren Rand: wo die Last des Zylinders 1 die Druckflanke der geschlossenen Bahn verlässt (abwärts) oder zu ihr zurückkehrt (aufwärts); die Rolle schlägt um und kehrt ihren Drehsinn um</translation>
    </message>
    <message>
        <source>%1, baseline</source>
        <translation>%1, Bezug</translation>
    </message>
    <message>
        <source>%1: %2, at %3° of the shaft, %4° of the cycle</source>
        <translation>%1: %2, bei %3° der Welle, %4° des Arbeitsspiels</translation>
    </message>
    <message>
        <source>bands</source>
        <translation>Bänder</translation>
    </message>
    <message>
        <source>baseline beyond the range</source>
        <translation>Bezugsentwurf außerhalb der Skala</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::TurnView</name>
    <message>
        <source>No design to draw yet</source>
        <translation>Noch kein Entwurf zu zeichnen</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::UnrolledTracks</name>
    <message>
        <source>Both tracks unrolled over one revolution</source>
        <translation>Beide Bahnen über eine Umdrehung abgewickelt</translation>
    </message>
    <message>
        <source>, undercut</source>
        <translation>, Unterschnitt</translation>
    </message>
    <message>
        <source>inner edge</source>
        <translation>Innenkante</translation>
    </message>
    <message>
        <source>outer edge</source>
        <translation>Außenkante</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>%1 (same pattern)</source>
        <translation>%1 (gleiche Kurve)</translation>
    </message>
    <message>
        <source>: pressure angle up to %1 at the middle</source>
        <translation>: Pressungswinkel bis %1 in der Mitte</translation>
    </message>
    <message>
        <source>, undercut at %1</source>
        <translation>, Unterschnitt: %1</translation>
    </message>
    <message>
        <source>, relative radius down to %1 at %2</source>
        <translation>, Ersatzkrümmungsradius bis hinab zu %1: %2</translation>
    </message>
    <message>
        <source>: angle %1 (middle)</source>
        <translation>: Winkel %1 (Mitte)</translation>
    </message>
    <message>
        <source>, undercut (%1)</source>
        <translation>, Unterschnitt (%1)</translation>
    </message>
    <message>
        <source>, radius %1 (%2)</source>
        <translation>, Radius %1 (%2)</translation>
    </message>
    <message>
        <source>Drag a dot to move a segment boundary, its lift or a knot; drag the bar below to turn the exhaust track; Shift for fine. Double-click a dot to type its value, the curve of a track of knots to put a knot there; Delete takes the chosen knot out. Where two dots nearly coincide, Tab goes from one to the next, and the wheel enlarges them in Piston position.</source>
        <translation>Einen Punkt ziehen, um eine Abschnittsgrenze, ihren Weg oder einen Stützpunkt zu bewegen; den Balken unten ziehen, um die Auslassbahn zu drehen; Umschalt für fein. Doppelklick auf einen Punkt für eine genaue Zahl, auf die Kurve einer Bahn mit Stützpunkten, um dort einen zu setzen; Entf nimmt den gewählten heraus. Wo zwei Punkte fast zusammenfallen, führt die Tabulatortaste vom einen zum nächsten, und in der Kolbenstellung vergrößert sie das Rad.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::Views</name>
    <message>
        <source>Section through a cylinder</source>
        <translation>Schnitt durch einen Zylinder</translation>
    </message>
    <message>
        <source>Tracks unrolled</source>
        <translation>Bahnen abgewickelt</translation>
    </message>
    <message>
        <source>Cylinder circle</source>
        <translation>Zylinderkreis</translation>
    </message>
    <message>
        <source>Liner map</source>
        <translation>Laufbuchse abgewickelt</translation>
    </message>
    <message>
        <source>3D view</source>
        <translation>3D-Ansicht</translation>
    </message>
    <message>
        <source>Adjuster</source>
        <translation>Versteller</translation>
    </message>
    <message>
        <source>Walk through a cycle</source>
        <translation>Gang durch ein Arbeitsspiel</translation>
    </message>
    <message>
        <source>Timing diagram</source>
        <translation>Steuerdiagramm</translation>
    </message>
    <message>
        <source>Gas in the cylinder</source>
        <translation>Gas im Zylinder</translation>
    </message>
    <message>
        <source>p–V diagram</source>
        <translation>p-V-Diagramm</translation>
    </message>
    <message>
        <source>Contact and side forces</source>
        <translation>Kontakt- und Seitenkräfte</translation>
    </message>
    <message>
        <source>Shaking force</source>
        <translation>Freie Massenkraft</translation>
    </message>
    <message>
        <source>Custom plot</source>
        <translation>Eigenes Diagramm</translation>
    </message>
    <message>
        <source>Air path</source>
        <translation>Luftweg</translation>
    </message>
    <message>
        <source>Energy and friction</source>
        <translation>Energie und Reibung</translation>
    </message>
    <message>
        <source>Contact over angle and width</source>
        <translation>Kontakt über Winkel und Breite</translation>
    </message>
    <message>
        <source>Forces on the pistons</source>
        <translation>Kräfte an den Kolben</translation>
    </message>
    <message>
        <source>Force and torque orders</source>
        <translation>Ordnungen von Kraft und Drehmoment</translation>
    </message>
    <message>
        <source>Motion laws side by side</source>
        <translation>Bewegungsgesetze nebeneinander</translation>
    </message>
    <message>
        <source>Factors and junctions</source>
        <translation>Kennwerte und Übergänge</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Comparison with crank engines</source>
        <translation>Vergleich mit Kurbelmotoren</translation>
    </message>
    <message>
        <source>Claims check</source>
        <translation>Prüfung der Angaben</translation>
    </message>
    <message>
        <source>Cam and crank synchronised</source>
        <translation>Kurvenbahn und Kurbel im Gleichlauf</translation>
    </message>
    <message>
        <source>What is not known</source>
        <translation>Was nicht bekannt ist</translation>
    </message>
    <message>
        <source>Torque and power as bands</source>
        <translation>Drehmoment und Leistung als Bänder</translation>
    </message>
    <message>
        <source>What decides this</source>
        <translation>Was dies bestimmt</translation>
    </message>
    <message>
        <source>Stages of the cycle</source>
        <translation>Abschnitte des Arbeitsspiels</translation>
    </message>
    <message>
        <source>Plot of the stage</source>
        <translation>Diagramm zum Abschnitt</translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation>Aufgaben</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::WheelImportDialog</name>
    <message>
        <source>Open a table of compressor points</source>
        <translation>Tabelle von Verdichterpunkten öffnen</translation>
    </message>
    <message>
        <source>Measured points to compressor wheel</source>
        <translation>Messpunkte zum Verdichterrad</translation>
    </message>
    <message>
        <source>Pressure before the wheel to which flows and speeds of the table are corrected</source>
        <translation>Druck vor dem Rad, auf den Durchflüsse und Drehzahlen der Tabelle umgerechnet sind</translation>
    </message>
    <message>
        <source>Temperature before the wheel to which flows and speeds of the table are corrected</source>
        <translation>Temperatur vor dem Rad, auf die Durchflüsse und Drehzahlen der Tabelle umgerechnet sind</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Reference &amp;pressure</source>
        <translation>Bezugs&amp;druck</translation>
    </message>
    <message>
        <source>Reference &amp;temperature</source>
        <translation>Bezugs&amp;temperatur</translation>
    </message>
    <message>
        <source>&amp;Use as compressor wheel</source>
        <translation>Als Verdichterrad &amp;verwenden</translation>
    </message>
    <message>
        <source>A table with a row for each point: corrected speed in rpm, corrected flow in kg/s, pressure ratio and isentropic efficiency from 0 to 1. At least three flows at each speed.</source>
        <translation>Eine Tabelle mit einer Zeile für jeden Punkt: umgerechnete Drehzahl in 1/min, umgerechneter Durchfluss in kg/s, Druckverhältnis und isentroper Wirkungsgrad von 0 bis 1. Je Drehzahl mindestens drei Durchflüsse.</translation>
    </message>
    <message>
        <source>%1 points at %2 speeds.</source>
        <translation>%1 Punkte bei %2 Drehzahlen.</translation>
    </message>
    <message>
        <source>The air supply of the design becomes a compressor.</source>
        <translation>Die Luftversorgung des Entwurfs wird ein Verdichter.</translation>
    </message>
    <message>
        <source>Import compressor points</source>
        <translation>Verdichterpunkte einlesen</translation>
    </message>
    <message>
        <source>The design would break a rule: %1</source>
        <translation>Der Entwurf würde eine Regel verletzen: %1</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::WheelPlot</name>
    <message>
        <source>Pressure ratio of the compressor over its corrected flow</source>
        <translation>Druckverhältnis des Verdichters über seinem umgerechneten Durchfluss</translation>
    </message>
    <message>
        <source>surge line</source>
        <translation>Pumpgrenze</translation>
    </message>
    <message>
        <source>operating line</source>
        <translation>Betriebslinie</translation>
    </message>
    <message>
        <source>pressure ratio</source>
        <translation>Druckverhältnis</translation>
    </message>
    <message>
        <source>corrected flow</source>
        <translation>umgerechneter Durchfluss</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::WidthPlot</name>
    <message>
        <source>Relative radius of curvature of roller and track; 0 or less: the track is undercut there.</source>
        <translation>Ersatzkrümmungsradius von Rolle und Bahn; 0 oder weniger: Dort ist die Bahn unterschnitten.</translation>
    </message>
    <message>
        <source>Nominal contact stress times slip at the same place: heating and wear, for comparing designs.</source>
        <translation>Nominelle Kontaktpressung mal Schlupf an derselben Stelle: Erwärmung und Verschleiß, zum Vergleich von Entwürfen.</translation>
    </message>
    <message>
        <source>inner edge</source>
        <translation>Innenkante</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>outer edge</source>
        <translation>Außenkante</translation>
    </message>
    <message>
        <source>Pressure angle over the width</source>
        <translation>Pressungswinkel über die Breite</translation>
    </message>
    <message>
        <source>Relative radius of curvature over the width</source>
        <translation>Ersatzkrümmungsradius über die Breite</translation>
    </message>
    <message>
        <source>Undercut margin over the width</source>
        <translation>Abstand vom Unterschnitt über die Breite</translation>
    </message>
    <message>
        <source>Slip over the width</source>
        <translation>Schlupf über die Breite</translation>
    </message>
    <message>
        <source>Contact stress × slip over the width</source>
        <translation>Pressung × Schlupf über die Breite</translation>
    </message>
    <message>
        <source>Undercut, %1 at %2°:</source>
        <translation>Unterschnitt, %1 bei %2°:</translation>
    </message>
    <message>
        <source>Minimum, %1 at %2°:</source>
        <translation>Kleinster Wert, %1 bei %2°:</translation>
    </message>
    <message>
        <source>Maximum, %1 at %2°:</source>
        <translation>Größter Wert, %1 bei %2°:</translation>
    </message>
    <message>
        <source>planar rule:</source>
        <translation>ebene Regel:</translation>
    </message>
    <message>
        <source>&amp;Inlet track</source>
        <translation>&amp;Einlassbahn</translation>
    </message>
    <message>
        <source>E&amp;xhaust track</source>
        <translation>A&amp;uslassbahn</translation>
    </message>
    <message>
        <source>limit %1°</source>
        <translation>Grenze %1°</translation>
    </message>
    <message>
        <source>Pressure angle α at each place, tan α = y&apos;/ρ: steeper at the inner edge, so the contact line is twisted.</source>
        <translation>Pressungswinkel α an jeder Stelle, tan α = y&apos;/ρ: an der Innenkante steiler, die Berührlinie ist also verwunden.</translation>
    </message>
    <message>
        <source>How much larger the roller&apos;s radius may become before the track has a cusp there; a gap in the curve: any radius will do.</source>
        <translation>Um wie viel der Rollenradius wachsen darf, ehe die Bahn dort eine Spitze hat; eine Lücke in der Kurve: jeder Radius ist zulässig.</translation>
    </message>
    <message>
        <source>Sliding speed of the track&apos;s surface on the roller&apos;s, across and along the roller axis. At its middle the roller rolls without slip only across its axis; along it the track slides there too.</source>
        <translation>Gleitgeschwindigkeit der Bahnoberfläche auf der Rollenoberfläche, quer zur Rollenachse und längs. In ihrer Mitte rollt die Rolle nur quer zur Achse ohne Schlupf; längs der Achse gleitet die Bahn auch dort.</translation>
    </message>
    <message>
        <source>The relative radius from the curvature of the unrolled pitch curve alone. It neglects the twist of the contact line and can pass a track that is undercut.</source>
        <translation>Der Ersatzkrümmungsradius allein aus der Krümmung der abgewickelten Rollenmittelpunktbahn. Er lässt die Verwindung der Berührlinie außer Acht und kann eine unterschnittene Bahn gutheißen.</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::WindowLayout</name>
    <message>
        <source>S&amp;ide panel</source>
        <translation>Seiten&amp;leiste</translation>
    </message>
    <message>
        <source>F9</source>
        <translation>F9</translation>
    </message>
    <message>
        <source>&amp;Reset this arrangement</source>
        <translation>Anordnung &amp;zurücksetzen</translation>
    </message>
    <message>
        <source>Sho&amp;w in the lower right pane</source>
        <translation>Im Feld &amp;rechts unten zeigen</translation>
    </message>
    <message>
        <source>Ctrl+%1</source>
        <translation>Ctrl+%1</translation>
    </message>
    <message>
        <source>F&amp;ull screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>F11</source>
        <translation>F11</translation>
    </message>
</context>
<context>
    <name>lobewright::ui::WorkingView</name>
    <message>
        <source>column, %1</source>
        <translation>Spalte, %1</translation>
    </message>
    <message>
        <source>result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>input</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>column %1 of channels.csv</source>
        <translation>Spalte %1 von channels.csv</translation>
    </message>
    <message>
        <source>at %1° of the shaft</source>
        <translation>bei %1° der Welle</translation>
    </message>
    <message>
        <source>constant</source>
        <translation>Konstante</translation>
    </message>
    <message>
        <source>from the solver</source>
        <translation>vom Löser</translation>
    </message>
    <message>
        <source>Worked out from the channels and inputs shown: %1. The result itself comes from the solver, whose steps are finer than those of the channels.</source>
        <translation>Aus den gezeigten Spalten und Eingaben gerechnet: %1. Das Ergebnis selbst kommt vom Löser, dessen Schritte feiner sind als die der Spalten.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>To the previous result (Alt+Left)</source>
        <translation>Zum vorigen Ergebnis (Alt+Links)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Only the list of results</source>
        <translation>Nur die Liste der Ergebnisse</translation>
    </message>
    <message>
        <source>Working of the result</source>
        <translation>Rechenweg des Ergebnisses</translation>
    </message>
    <message>
        <source>Alt+Left</source>
        <translation>Alt+Left</translation>
    </message>
    <message>
        <source>It is taken directly from the solver: there is no formula to evaluate.</source>
        <translation>Das Ergebnis kommt unmittelbar vom Löser: Es gibt keine Formel, in die man Zahlen einsetzt.</translation>
    </message>
    <message>
        <source>Worked out from the channels and inputs shown: %1. This design changes too sharply for the step of the channels; the result itself comes from the solver, whose steps are finer.</source>
        <translation>Aus den gezeigten Spalten und Eingaben gerechnet: %1. Dieser Entwurf ändert sich für die Schrittweite der Spalten zu schnell; das Ergebnis selbst kommt vom Löser, dessen Schritte feiner sind.</translation>
    </message>
    <message>
        <source>The formula contains metric unit factors, so its numbers are metric; values in the units chosen are in brackets.</source>
        <translation>Die Formel enthält Faktoren metrischer Einheiten, darum sind ihre Zahlen metrisch; in den gewählten Einheiten stehen sie in Klammern.</translation>
    </message>
</context>
</TS>
